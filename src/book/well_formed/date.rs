//! Days of the calendar as books write them.

/// A day of the Gregorian calendar; later days are larger.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct CalendarDate {
    year: u32,
    month: u32,
    day: u32,
}

impl CalendarDate {
    /// Reads a day as ISO 8601 writes it, `2026-05-04`; `None` when it is none.
    pub(super) fn from_text(text: &str) -> Option<Self> {
        let parts: Vec<&str> = text.splitn(4, '-').collect();
        let [year, month, day] = parts.as_slice() else {
            return None;
        };
        let of_digits = |text: &str, count| {
            text.len() == count && text.bytes().all(|byte| byte.is_ascii_digit())
        };
        if !(of_digits(year, 4) && of_digits(month, 2) && of_digits(day, 2)) {
            return None;
        }
        let found = Self {
            year: year.parse().ok()?,
            month: month.parse().ok()?,
            day: day.parse().ok()?,
        };
        found.is_of_the_calendar().then_some(found)
    }

    fn is_of_the_calendar(self) -> bool {
        let year = self.year;
        let leap =
            year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let days = match self.month {
            2 => 28 + u32::from(leap),
            4 | 6 | 9 | 11 => 30,
            _ => 31,
        };
        (1..=12).contains(&self.month) && (1..=days).contains(&self.day)
    }

    /// Full months from this day to a later one.
    pub(super) fn months_until(self, later: Self) -> u32 {
        let months = |day: Self| day.year * 12 + day.month;
        let begun = months(later).saturating_sub(months(self));
        begun.saturating_sub(u32::from(later.day < self.day))
    }
}

#[cfg(test)]
mod tests {
    use super::CalendarDate;

    #[test]
    fn only_days_of_the_calendar_are_dates() {
        let is_date = |text| CalendarDate::from_text(text).is_some();
        assert!(is_date("2026-05-04") && is_date("2024-02-29") && is_date("2000-02-29"));
        for text in [
            "2026-02-29",
            "1900-02-29",
            "2026-13-01",
            "2026-00-01",
            "2026-1-1",
            "+026-01-01",
            "yesterday",
            "",
            "-",
        ] {
            assert!(!is_date(text), "{text}");
        }
    }

    #[test]
    fn a_month_is_over_on_its_day() {
        let months = |from, to| {
            CalendarDate::from_text(from)
                .unwrap()
                .months_until(CalendarDate::from_text(to).unwrap())
        };
        assert_eq!(months("2025-05-04", "2026-05-03"), 11);
        assert_eq!(months("2025-05-04", "2026-05-04"), 12);
        assert_eq!(months("2026-05-04", "2025-05-04"), 0);
    }
}
