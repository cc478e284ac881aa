//! What the level shows, as plain values: one mark for each axis, and the words that go with it.

use crate::balance::{AxisDifference, Difference, Taste};
use crate::book::Axis;
use crate::say::{Speaker, say};

/// Marks beyond this many steps are drawn here with an open end.
pub const MOST_STEPS: f64 = 2.5;

/// Most axes that are named in the sentence beneath.
const MOST_NAMED: usize = 3;

/// Below this a difference rounds to nothing in words, in steps.
const NOTHING: f64 = crate::balance::LEVEL_STEPS;

/// How a mark stands to the band of one noticeable step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MarkStanding {
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
    pub standing: MarkStanding,
}

impl LevelMark {
    fn new(difference: &AxisDifference) -> Self {
        let steps = difference.steps.filter(|steps| steps.is_finite());
        let standing = match (difference.taste(), steps) {
            (None, _) | (_, None) => MarkStanding::NotKnown,
            (_, Some(steps)) if steps.abs() < NOTHING => MarkStanding::Level,
            _ if difference.weight <= 0.0 => MarkStanding::NotCounted,
            (Some(Taste::Same), _) => MarkStanding::Within,
            (Some(Taste::Less | Taste::More), _) => MarkStanding::Off,
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
    pub fn words(&self, speaker: Speaker<'_>) -> String {
        let Some(steps) = self.steps else {
            return speaker.word("widget-not-known").to_owned();
        };
        if self.standing == MarkStanding::Level {
            return speaker.word("widget-mark-level").to_owned();
        }
        let message = match (self.standing, steps.abs() > 1.0) {
            (MarkStanding::NotCounted, true) => "widget-mark-steps-not-counted",
            (MarkStanding::NotCounted, false) => "widget-mark-part-not-counted",
            (_, true) => "widget-mark-steps",
            (_, false) => "widget-mark-part",
        };
        let change = self.comparative(speaker);
        say!(speaker, message, change: change, steps: speaker.steps(steps))
    }

    /// "2.1 sweeter", "level", "not known".
    pub fn short_words(&self, speaker: Speaker<'_>) -> String {
        match self.steps {
            None => speaker.word("widget-not-known").to_owned(),
            Some(_) if self.standing == MarkStanding::Level => {
                speaker.word("widget-mark-level").to_owned()
            }
            Some(steps) => {
                let change = self.comparative(speaker);
                say!(speaker, "widget-mark-short", change: change, steps: speaker.steps(steps))
            }
        }
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

    fn comparative(&self, speaker: Speaker<'_>) -> String {
        if self.steps.is_some_and(|steps| steps > 0.0) {
            speaker.more(&self.axis)
        } else {
            speaker.less(&self.axis)
        }
    }

    /// A word of six letters or so, the same at every width of the level; a flavour keeps its name.
    pub fn short_name(&self, speaker: Speaker<'_>) -> &str {
        Self::name_of(&self.axis, speaker)
    }

    /// The same of an axis.
    pub fn name_of<'axis>(axis: &'axis Axis, speaker: Speaker<'_>) -> &'axis str {
        speaker.word(match axis {
            Axis::Sweetness => "widget-axis-sweetness",
            Axis::TeaStrength => "widget-axis-tea-strength",
            Axis::Creaminess => "widget-axis-creaminess",
            Axis::Acidity => "widget-axis-acidity",
            Axis::Body => "widget-axis-body",
            Axis::Temperature => "widget-axis-temperature",
            Axis::Volume => "widget-axis-volume",
            Axis::Flavour(name) => return name,
        })
    }

    /// "sweetness: sweeter by 2.1 steps".
    pub fn sentence(&self, speaker: Speaker<'_>) -> String {
        let difference = self.words(speaker);
        say!(speaker, "widget-mark-of-axis", axis: speaker.axis(&self.axis), difference: difference)
    }
}

/// The marks, in the order of the axes.
pub fn marks_of(difference: &Difference) -> Vec<LevelMark> {
    difference.axes.iter().map(LevelMark::new).collect()
}

/// The sentence beneath the level.
pub fn overall_words(difference: &Difference, speaker: Speaker<'_>) -> String {
    let Some(distance) = difference.distance.filter(|distance| distance.is_finite()) else {
        return speaker.word("widget-level-nothing-compared").to_owned();
    };
    let far = speaker.steps(distance);
    if difference.is_level() {
        return speaker.word("widget-level-even").to_owned();
    }
    let verdict = match difference.within_one_step() {
        Some(true) => return say!(speaker, "widget-level-within", far: far),
        Some(false) => {
            let axes = off_words(difference, speaker);
            say!(speaker, "widget-level-off", far: far, axes: axes)
        }
        None => say!(speaker, "widget-level-within-as-known", far: far),
    };
    let not_known = difference.not_compared().map(|axis| speaker.axis(axis));
    let not_known: Vec<String> = not_known.collect();
    if not_known.is_empty() {
        verdict
    } else {
        let axes = not_known.join(", ");
        say!(speaker, "widget-level-some-not-known", verdict: verdict, axes: axes)
    }
}

/// The axes that are off the level, the furthest first.
fn off_words(difference: &Difference, speaker: Speaker<'_>) -> String {
    let mut off: Vec<LevelMark> = marks_of(difference)
        .into_iter()
        .filter(|mark| mark.standing == MarkStanding::Off)
        .collect();
    off.sort_by(|one, other| other.size().total_cmp(&one.size()));
    let named = off.iter().take(MOST_NAMED);
    let mut named: Vec<String> = named.map(|mark| mark.words(speaker)).collect();
    match off.len().saturating_sub(MOST_NAMED) {
        0 => named.join(", "),
        more => {
            named.push(say!(speaker, "widget-level-more-axes", count: more));
            speaker.and(&named)
        }
    }
}

/// What moves from one drink to the other, axis by axis: "sweetness: sweeter by 2.1 steps → level".
pub fn moved_words(before: &Difference, after: &Difference, speaker: Speaker<'_>) -> Vec<String> {
    let was = marks_of(before);
    let moved = |mark: &LevelMark| {
        let was = was.iter().find(|was| was.axis == mark.axis)?;
        let (from, to) = (was.words(speaker), mark.words(speaker));
        let axis = speaker.axis(&mark.axis);
        (from != to).then(|| say!(speaker, "widget-mark-moved", axis: axis, from: from, to: to))
    };
    marks_of(after).iter().filter_map(moved).collect()
}

/// The whole level in words, axis by axis.
pub fn level_words(difference: &Difference, standard_words: &str, speaker: Speaker<'_>) -> String {
    let marks = marks_of(difference);
    let axes: Vec<String> = marks.iter().map(|mark| mark.sentence(speaker)).collect();
    say!(
        speaker,
        "widget-level",
        standard: standard_words,
        axes: axes.join("; "),
        overall: overall_words(difference, speaker)
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    fn speaker() -> Speaker<'static> {
        Speaker::without_book()
    }

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
        assert_eq!(mark.standing, MarkStanding::NotCounted);
        assert_eq!(
            mark.words(speaker()),
            "cooler by 17.6 steps, which does not count"
        );
    }

    #[test]
    fn a_hair_beyond_a_step_does_not_read_as_one_step() {
        assert_eq!(
            LevelMark::new(&axis(Axis::Body, Some(1.03), 0.0)).words(speaker()),
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
                (
                    mark.words(speaker()).as_str(),
                    mark.short_words(speaker()).as_str()
                ),
                (words, short)
            );
        }
    }

    #[test]
    fn one_step_is_still_within_the_band_and_a_hair_more_is_not() {
        let standing = |steps| LevelMark::new(&axis(Axis::Body, Some(steps), 0.0)).standing;
        assert_eq!(standing(1.0), MarkStanding::Within);
        assert_eq!(standing(-1.001), MarkStanding::Off);
    }

    #[test]
    fn a_mark_far_away_is_drawn_at_the_edge_with_an_open_end_and_its_own_number() {
        let mark = LevelMark::new(&axis(Axis::Volume, Some(-7.26), 9.0));
        assert_eq!(mark.drawn_at(), Some(-MOST_STEPS));
        assert!(mark.is_beyond());
        assert_eq!(mark.whisker(), None);
        assert!(mark.short_words(speaker()).starts_with("7.3"));
    }

    #[test]
    fn a_whisker_stays_inside_what_is_drawn() {
        let mark = LevelMark::new(&axis(Axis::Body, Some(2.0), 1.5));
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
            assert_eq!(overall_words(&of(axes), speaker()), words);
        }
    }
}
