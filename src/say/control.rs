//! What a control chart of a measure shows.

use super::{Speaker, say};
use crate::balance::{ChartDay, ControlChart, FIRM, RUN, Shift, Signal, TooFewDays};
use crate::book::{IngredientId, MeasureId};
use crate::swap::Drifted;

/// Most decimals of a use in grams.
const DECIMALS: i32 = 3;

impl Speaker<'_> {
    /// "white pump, pear syrup": a measure with what was weighed in it, water for `None`.
    pub fn measured(&self, measure: &MeasureId, ingredient: Option<&IngredientId>) -> String {
        let ingredient = match ingredient {
            Some(id) => self.ingredient(id),
            None => self.word("control-water").to_owned(),
        };
        say!(self, "control-name", measure: self.measure(measure), ingredient: ingredient)
    }

    /// A mass of one use of a chart, to the digits that its day can tell.
    pub fn chart_mass(&self, chart: &ControlChart, day: &ChartDay, grams: f64) -> String {
        let u = chart.scatter / f64::from(day.uses).sqrt();
        self.rounded(grams, Some(u), DECIMALS, "g")
    }

    /// The last day of a chart with its limits, and what they rest on.
    pub fn chart_limits(&self, chart: &ControlChart, last: &ChartDay) -> String {
        let [least, most] = last.mean.limits;
        say!(
            self,
            "control-limits",
            day: &last.date,
            mean: self.chart_mass(chart, last, last.mean.value),
            least: self.chart_mass(chart, last, least),
            most: self.chart_mass(chart, last, most),
            days: chart.base_days(),
        )
    }

    /// That limits are rough; `None` where they are firm.
    pub fn chart_rough(&self, chart: &ControlChart) -> Option<String> {
        let firm = FIRM.to_string();
        (!chart.is_firm()).then(|| say!(self, "control-rough", firm: firm))
    }

    /// What a day shows.
    pub fn chart_signal(&self, signal: Signal) -> String {
        say!(self, "control-signal", signal: signal.word(), run: RUN.to_string())
    }

    /// Since when a measure has dosed otherwise, or that nothing shows.
    pub fn chart_shift(&self, shift: Option<&Shift>) -> String {
        let Some(shift) = shift else {
            return self.word("control-steady").to_owned();
        };
        let percent = 100.0 * shift.relative();
        let direction = if percent < 0.0 { "less" } else { "more" };
        say!(
            self,
            "control-shift",
            day: &shift.since,
            now: self.uncertain(shift.now, "g"),
            before: self.uncertain(shift.before, "g"),
            percent: self.in_unit(percent.abs(), "%", 1),
            direction: direction,
            reason: self.chart_signal(shift.signal),
        )
    }

    /// How far a drink moves with a measure.
    pub fn moved_drink(&self, moved: &Drifted) -> String {
        let drink = self.drink(&moved.recipe, moved.version.as_ref());
        match moved.difference.distance {
            Some(steps) => say!(self, "control-moved", drink: drink, steps: self.steps(steps)),
            None => say!(self, "control-moved-unknown", drink: drink),
        }
    }

    /// That no approved drink moves with a measure.
    pub fn none_moved(&self) -> &'static str {
        self.word("control-none-moved")
    }

    /// Why there is no chart yet.
    pub fn too_few_days(&self, few: &TooFewDays) -> String {
        say!(self, "control-too-few", days: few.days, wanted: few.wanted.to_string())
    }
}
