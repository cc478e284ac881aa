//! Days of the calendar as books write them: the one place that knows which there are.

use jiff::Unit;
use jiff::civil::{Date, DateDifference};

/// A day of the Gregorian calendar; later days are larger.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Day(Date);

impl Day {
    /// Reads a day as ISO 8601 writes it with hyphens, `2026-05-04`; `None` for every other way to write it and for what is no
    /// day, such as `2026-02-31`.
    pub fn from_text(text: &str) -> Option<Self> {
        let date: Date = text.parse().ok()?;
        // The parser also takes `20260504`, a time behind the day and years of six digits.
        (date.to_string() == text).then_some(Self(date))
    }

    /// Full months from this day to a later one; 0 when that is not later.
    pub fn months_until(self, later: Self) -> u32 {
        let months = DateDifference::new(later.0).largest(Unit::Month);
        self.0
            .until(months)
            .ok()
            .and_then(|span| u32::try_from(span.get_months()).ok())
            .unwrap_or(0)
    }
}

#[cfg(test)]
mod tests {
    use super::Day;

    #[test]
    fn only_days_of_the_calendar_are_dates() {
        let is_day = |text| Day::from_text(text).is_some();
        assert!(is_day("2026-05-04") && is_day("2024-02-29") && is_day("2000-02-29"));
        for text in [
            "2026-02-31",
            "2026-02-29",
            "1900-02-29",
            "2026-04-31",
            "2026-13-01",
            "2026-00-01",
            "2026-01-00",
            "2026-1-1",
            "20260504",
            "2026-05-04T10:00",
            "+002026-05-04",
            "+026-01-01",
            " 2026-05-04",
            "4.5.2026",
            "yesterday",
            "",
            "-",
        ] {
            assert!(!is_day(text), "{text}");
        }
    }

    #[test]
    fn a_month_is_over_on_its_day() {
        let months = |from, to| {
            Day::from_text(from)
                .unwrap()
                .months_until(Day::from_text(to).unwrap())
        };
        assert_eq!(months("2025-05-04", "2026-05-03"), 11);
        assert_eq!(months("2025-05-04", "2026-05-04"), 12);
        assert_eq!(months("2026-05-04", "2025-05-04"), 0);
    }
}
