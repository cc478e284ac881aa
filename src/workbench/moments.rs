//! Moments and days as a person reads them.

use crate::say::Speaker;
use jiff::Timestamp;
use jiff::tz::TimeZone;

/// A moment in the time of this place: "4 May 2026, 10:22".
pub fn moment_words(speaker: Speaker<'_>, moment: Timestamp) -> String {
    told(speaker, "safekeeping-moment", "%H:%M", moment)
}

/// The same to the second, where several may fall into one minute: "4 May 2026, 10:22:31", with a short month.
pub fn exact_moment_words(speaker: Speaker<'_>, moment: Timestamp) -> String {
    told(speaker, "safekeeping-exact-moment", "%H:%M:%S", moment)
}

fn told(speaker: Speaker<'_>, message: &str, clock: &str, moment: Timestamp) -> String {
    let at = moment.to_zoned_datetime(TimeZone::system());
    let arguments = [
        ("day", at.day().to_string().into()),
        ("month", u32::from(at.month().unsigned_abs()).into()),
        ("year", at.year().to_string().into()),
        ("time", at.strftime(clock).to_string().into()),
    ];
    speaker.say(message, &arguments)
}

/// Today, `2026-05-04`, by the clock of the machine.
pub fn today() -> String {
    jiff::ZonedDateTime::now().date().to_string()
}
