//! What the level shows, as plain values: one mark for each axis, and the words that go with it.

use crate::balance::{AxisDifference, Difference};
use crate::book::Axis;
use crate::quantity::show_number;

/// Marks beyond this many steps are drawn here with an open end.
pub const MOST_STEPS: f64 = 4.0;

/// Most axes that are named in the sentence beneath.
const MOST_NAMED: usize = 3;

/// Below this a difference rounds to nothing in words, in steps.
const NOTHING: f64 = crate::balance::LEVEL_STEPS;

/// How a mark stands to the band of one noticeable step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Standing {
    /// On the line, as far as the words go.
    Level,
    /// Off the line, within one step.
    Within,
    /// More than one step away.
    Off,
    /// Different on purpose (iced against hot), or of no weight to the shop: shown, and no part of the distance.
    NotCounted,
    /// Something that the axis needs is not stated.
    NotKnown,
}

/// One axis on the level.
#[derive(Clone, Debug, PartialEq)]
pub struct LevelMark {
    /// The axis.
    pub axis: Axis,
    /// Steps above (+) or below (−) the standard.
    pub steps: Option<f64>,
    /// Standard uncertainty of the steps.
    pub u_steps: f64,
    /// How it stands to the band.
    pub standing: Standing,
}

impl LevelMark {
    fn new(difference: &AxisDifference) -> Self {
        let steps = difference.steps.filter(|steps| steps.is_finite());
        let standing = match steps.map(f64::abs) {
            None => Standing::NotKnown,
            Some(size) if size < NOTHING => Standing::Level,
            Some(_) if difference.weight <= 0.0 => Standing::NotCounted,
            Some(size) if size <= 1.0 => Standing::Within,
            Some(_) => Standing::Off,
        };
        let u_steps = difference.u_steps.filter(|u| u.is_finite()).unwrap_or(0.0);
        Self {
            axis: difference.axis.clone(),
            steps,
            u_steps,
            standing,
        }
    }

    /// "sweeter by 2.1 steps", "sweeter by 0.4 of a step", "level", "not known".
    pub fn words(&self) -> String {
        let Some(steps) = self.steps else {
            return "not known".to_owned();
        };
        if self.standing == Standing::Level {
            return "level".to_owned();
        }
        let unit = if steps.abs() > 1.0 {
            "steps"
        } else {
            "of a step"
        };
        let aside = if self.standing == Standing::NotCounted {
            ", which does not count"
        } else {
            ""
        };
        format!(
            "{} by {} {unit}{aside}",
            self.comparative(),
            size_words(steps)
        )
    }

    /// "2.1 sweeter", "level", "not known".
    pub fn short_words(&self) -> String {
        match self.steps {
            None => "not known".to_owned(),
            Some(_) if self.standing == Standing::Level => "level".to_owned(),
            Some(steps) => format!("{} {}", size_words(steps), self.comparative()),
        }
    }

    /// "+2.1", "−0.4".
    pub fn signed_number(&self) -> String {
        let steps = self.steps.unwrap_or(0.0);
        let sign = if steps > 0.0 { "+" } else { "−" };
        format!("{sign}{}", size_words(steps))
    }

    /// Whether the mark lies beyond what is drawn.
    pub fn is_beyond(&self) -> bool {
        self.steps.is_some_and(|steps| steps.abs() > MOST_STEPS)
    }

    /// Where the mark is drawn, in steps; `None` for a gap.
    pub fn drawn_at(&self) -> Option<f64> {
        self.steps.map(|steps| steps.clamp(-MOST_STEPS, MOST_STEPS))
    }

    /// Lower and upper end of its whisker, in steps, within what is drawn.
    pub fn whisker(&self) -> Option<(f64, f64)> {
        let steps = self
            .steps
            .filter(|_| self.u_steps > 0.0 && !self.is_beyond())?;
        let end = |at: f64| at.clamp(-MOST_STEPS, MOST_STEPS);
        Some((end(steps - self.u_steps), end(steps + self.u_steps)))
    }

    fn size(&self) -> f64 {
        self.steps.map_or(0.0, f64::abs)
    }

    fn comparative(&self) -> String {
        let (more, less) = self.axis.comparatives();
        if self.steps.is_some_and(|steps| steps > 0.0) {
            more
        } else {
            less
        }
    }

    /// A word of at most six letters, the same at every width of the level; a flavour keeps its name.
    pub fn short_name(&self) -> &str {
        match &self.axis {
            Axis::Sweetness => "sweet",
            Axis::TeaStrength => "tea",
            Axis::Creaminess => "cream",
            Axis::Acidity => "acid",
            Axis::Body => "body",
            Axis::Temperature => "heat",
            Axis::Volume => "volume",
            Axis::Flavour(name) => name,
        }
    }
}

/// The size of a difference with one decimal; with two just beyond a step, so that nothing off the level reads as "1.0".
fn size_words(steps: f64) -> String {
    let size = steps.abs();
    show_number(size, if size > 1.0 && size < 1.05 { 2 } else { 1 })
}

/// The marks, in the order of the axes.
pub fn marks_of(difference: &Difference) -> Vec<LevelMark> {
    difference.axes.iter().map(LevelMark::new).collect()
}

/// The sentence beneath the level.
pub fn overall_words(difference: &Difference) -> String {
    let not_known: Vec<&str> = difference.not_compared().map(Axis::word).collect();
    let Some(distance) = difference.distance.filter(|distance| distance.is_finite()) else {
        return "no axis can be compared with the standard yet".to_owned();
    };
    let far = size_words(distance);
    if difference.is_level() {
        return "level on every axis".to_owned();
    }
    let verdict = match difference.within_one_step() {
        Some(true) => return format!("every axis is within one step ({far} overall)"),
        Some(false) => format!("not level: {far} steps overall, {}", off_words(difference)),
        None => format!("every known axis is within one step ({far} overall)"),
    };
    if not_known.is_empty() {
        verdict
    } else {
        format!("{verdict}; not known: {}", not_known.join(", "))
    }
}

/// The axes that are off the level, the furthest first.
fn off_words(difference: &Difference) -> String {
    let mut off: Vec<LevelMark> = marks_of(difference)
        .into_iter()
        .filter(|mark| mark.standing == Standing::Off)
        .collect();
    off.sort_by(|one, other| other.size().total_cmp(&one.size()));
    let named: Vec<String> = off.iter().take(MOST_NAMED).map(LevelMark::words).collect();
    let named = named.join(", ");
    match off.len().saturating_sub(MOST_NAMED) {
        0 => named,
        more => format!("{named} and {more} more"),
    }
}

/// What moves from one drink to the other, axis by axis: "sweetness: sweeter by 2.1 steps → level".
pub fn moved_words(before: &Difference, after: &Difference) -> Vec<String> {
    let was = marks_of(before);
    let moved = |mark: &LevelMark| {
        let was = was.iter().find(|was| was.axis == mark.axis)?;
        let (from, to) = (was.words(), mark.words());
        (from != to).then(|| format!("{}: {from} → {to}", mark.axis.word()))
    };
    marks_of(after).iter().filter_map(moved).collect()
}

/// The whole level in words, axis by axis.
pub fn level_words(difference: &Difference, standard_words: &str) -> String {
    let axes: Vec<String> = marks_of(difference)
        .iter()
        .map(|mark| format!("{}: {}", mark.axis.word(), mark.words()))
        .collect();
    format!(
        "Level against {standard_words}. {}. {}",
        axes.join("; "),
        overall_words(difference)
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn axis(axis: Axis, steps: Option<f64>, u: f64) -> AxisDifference {
        AxisDifference {
            axis,
            standard: Some(1.0),
            value: steps.map(|steps| 1.0 + steps),
            step: 1.0,
            weight: 1.0,
            steps,
            u_steps: steps.map(|_| u),
            scatter_steps: steps.map(|_| 0.0),
        }
    }

    fn of(axes: Vec<AxisDifference>) -> Difference {
        let distance =
            crate::balance::overall_distance(axes.iter().map(|axis| (axis.steps, axis.weight)));
        Difference { axes, distance }
    }

    #[test]
    fn what_differs_on_purpose_is_shown_and_not_called_off_the_level() {
        let cold = AxisDifference {
            weight: 0.0,
            ..axis(Axis::Temperature, Some(-17.6), 0.3)
        };
        let mark = LevelMark::new(&cold);
        assert_eq!(mark.standing, Standing::NotCounted);
        assert_eq!(mark.words(), "cooler by 17.6 steps, which does not count");
    }

    #[test]
    fn a_hair_beyond_a_step_does_not_read_as_one_step() {
        assert_eq!(
            LevelMark::new(&axis(Axis::Body, Some(1.03), 0.0)).words(),
            "fuller by 1.03 steps"
        );
    }

    #[test]
    fn words_say_direction_and_size_without_any_colour() {
        for (steps, words, short) in [
            (Some(2.13), "sweeter by 2.1 steps", "2.1 sweeter"),
            (Some(-1.5), "less sweet by 1.5 steps", "1.5 less sweet"),
            (Some(-0.4), "less sweet by 0.4 of a step", "0.4 less sweet"),
            (Some(0.03), "level", "level"),
            (None, "not known", "not known"),
            (Some(f64::NAN), "not known", "not known"),
        ] {
            let mark = LevelMark::new(&axis(Axis::Sweetness, steps, 0.2));
            assert_eq!(
                (mark.words().as_str(), mark.short_words().as_str()),
                (words, short)
            );
        }
    }

    #[test]
    fn one_step_is_still_within_the_band_and_a_hair_more_is_not() {
        let standing = |steps| LevelMark::new(&axis(Axis::Body, Some(steps), 0.0)).standing;
        assert_eq!(standing(1.0), Standing::Within);
        assert_eq!(standing(-1.001), Standing::Off);
    }

    #[test]
    fn a_mark_far_away_is_drawn_at_the_edge_with_an_open_end_and_its_own_number() {
        let mark = LevelMark::new(&axis(Axis::Volume, Some(-7.26), 9.0));
        assert_eq!(mark.drawn_at(), Some(-MOST_STEPS));
        assert!(mark.is_beyond());
        assert_eq!(mark.whisker(), None);
        assert_eq!(mark.signed_number(), "−7.3");
    }

    #[test]
    fn a_whisker_stays_inside_what_is_drawn() {
        let mark = LevelMark::new(&axis(Axis::Body, Some(3.0), 2.5));
        assert_eq!(mark.whisker(), Some((0.5, MOST_STEPS)));
    }

    #[test]
    fn marks_keep_the_order_of_the_axes() {
        let marks = marks_of(&of(vec![
            axis(Axis::Sweetness, Some(0.0), 0.1),
            axis(Axis::Flavour("pear".into()), None, 0.0),
            axis(Axis::Volume, Some(3.0), 0.1),
        ]));
        let words: Vec<&str> = marks.iter().map(|mark| mark.axis.word()).collect();
        assert_eq!(words, ["sweetness", "pear", "volume"]);
    }

    #[test]
    fn the_sentence_beneath_never_calls_level_what_is_not_known() {
        let known = |steps| axis(Axis::Body, Some(steps), 0.1);
        let gap = || axis(Axis::Sweetness, None, 0.0);
        for (axes, words) in [
            (vec![known(0.01)], "level on every axis"),
            (
                vec![known(0.4)],
                "every axis is within one step (0.4 overall)",
            ),
            (
                vec![known(2.4)],
                "not level: 2.4 steps overall, fuller by 2.4 steps",
            ),
            (
                vec![gap(), known(0.4)],
                "every known axis is within one step (0.4 overall); not known: sweetness",
            ),
            (
                vec![gap(), known(-3.0)],
                "not level: 3.0 steps overall, thinner by 3.0 steps; not known: sweetness",
            ),
            (vec![gap()], "no axis can be compared with the standard yet"),
        ] {
            assert_eq!(overall_words(&of(axes)), words);
        }
    }
}
