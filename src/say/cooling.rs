//! How cups cool.

use super::{Speaker, say};
use crate::balance::{CoolingError, CoolingMilestone, CoolingQuestion, LEAST_READINGS};

impl Speaker<'_> {
    /// What would tell more of how a cup cools, as a request: "keep reading, down to drinking temperature".
    pub fn cooling_question(&self, question: CoolingQuestion) -> &'static str {
        self.word(match question {
            CoolingQuestion::Readings => "cooling-read",
            CoolingQuestion::Volume => "cooling-note-volume",
            CoolingQuestion::Cover => "cooling-time-cover",
            CoolingQuestion::LaterReadings => "cooling-read-later",
            CoolingQuestion::AnotherRun => "cooling-read-another",
        })
    }

    /// Why readings give no curve, as a clause without a full stop.
    pub fn cooling_error(&self, error: &CoolingError) -> String {
        match error {
            CoolingError::TooFew { found, room } => say!(
                self,
                "cooling-too-few-readings",
                readings: *found,
                least: LEAST_READINGS,
                room: self.temperature(*room, 0)
            ),
            CoolingError::NotFalling { room } => {
                say!(self, "cooling-not-falling", room: self.temperature(*room, 0))
            }
            CoolingError::NoCapacity => self.word("cooling-no-capacity").to_owned(),
        }
    }

    /// The minutes for someone who drinks by them: "about 12 min, at the latest 17 min"; `None` when the room is no cooler.
    pub fn about_and_latest(&self, milestone: &CoolingMilestone) -> Option<String> {
        let (minutes, [_, latest]) = (milestone.minutes?, milestone.interval?);
        Some(say!(
            self,
            "cooling-about-and-latest",
            likely: self.in_unit(minutes.value, "min", 0),
            latest: self.in_unit(latest.ceil(), "min", 0)
        ))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::CoolingLine;
    use crate::quantity::Uncertain;

    #[test]
    fn readings_and_times_are_told_with_their_units() {
        let speaker = Speaker::without_book();
        let too_few = |found| CoolingError::TooFew { found, room: 22.0 };
        assert_eq!(
            speaker.cooling_error(&too_few(1)),
            "only 1 reading is usable; take at least 3 at different minutes, above the 22\u{a0}°C of the room"
        );
        assert!(
            speaker
                .cooling_error(&too_few(2))
                .starts_with("only 2 readings are usable;")
        );
        let milestone = CoolingMilestone {
            line: CoolingLine::Drinking,
            celsius: 58.0,
            minutes: Some(Uncertain {
                value: 12.3,
                u: 2.0,
            }),
            interval: Some([8.0, 16.2]),
        };
        assert_eq!(
            speaker.about_and_latest(&milestone).as_deref(),
            Some("about 12\u{a0}min, at the latest 17\u{a0}min")
        );
    }
}
