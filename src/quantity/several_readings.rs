//! A figure that was measured: its readings typed one after another, "1.31 1.32 1.30".

use super::number_text::{NumberError, parse_up_to};
use super::uncertain::{RECTANGULAR, Uncertain};

/// The mean of readings with its standard uncertainty: their scatter (Type A, JCGM 100:2008, 4.2.3) and the last place that
/// they were read to. `None` for a text that is not two or more numbers.
pub fn parse_readings(text: &str, unit: &str, most: f64) -> Option<Result<Uncertain, NumberError>> {
    // Three digits behind a blank are thousands: "1 250" is one number.
    if parse_up_to(text.trim(), most).is_ok() {
        return None;
    }
    let apart = |c: char| c.is_whitespace() || c == ';';
    let typed: Vec<&str> = text
        .split(apart)
        .map(|part| part.strip_suffix(unit).unwrap_or(part).trim())
        .filter(|part| !part.is_empty())
        .collect();
    let is_number = |part: &&str| part.chars().next().is_some_and(|c| c.is_ascii_digit());
    if typed.len() < 2 || !typed.iter().all(is_number) {
        return None;
    }
    let read: Result<Vec<f64>, NumberError> =
        typed.iter().map(|part| parse_up_to(part, most)).collect();
    let resolution = half_of_last_place(&typed) * RECTANGULAR;
    let measured = |values: Vec<f64>| {
        let (value, scatter) = Uncertain::mean_of(&values)?;
        let u = scatter?.hypot(resolution);
        Some(Uncertain { value, u })
    };
    read.map(measured).transpose()
}

/// Half of the last place of the reading that was read most closely.
fn half_of_last_place(typed: &[&str]) -> f64 {
    let decimals = |text: &&str| {
        let behind = text.split_once(['.', ',']).map_or("", |(_, behind)| behind);
        behind.chars().filter(char::is_ascii_digit).count()
    };
    let most = typed.iter().map(decimals).max().unwrap_or(0);
    0.5 * 0.1_f64.powf(most as f64)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_are_a_mean_with_their_scatter_and_never_surer_than_they_were_read() {
        let read = parse_readings("1.31 1.33 1.32", "g/ml", 999.0)
            .unwrap()
            .unwrap();
        assert!((read.value - 1.32).abs() < 1e-12);
        let expected = (0.01_f64 / 3.0_f64.sqrt()).hypot(0.005 * RECTANGULAR);
        assert!((read.u - expected).abs() < 1e-9, "{}", read.u);
        let same = parse_readings("12,5; 12,5;12,5", "g", 999.0)
            .unwrap()
            .unwrap();
        assert!((same.u - 0.05 * RECTANGULAR).abs() < 1e-12, "{}", same.u);
        let with_units = parse_readings("8.9 g 9.1 g", "g", 999.0).unwrap().unwrap();
        assert!((with_units.value - 9.0).abs() < 1e-12);
    }

    #[test]
    fn a_single_number_is_no_measurement() {
        for text in [
            "",
            "1.3",
            "1.3 g/ml",
            "1 250",
            "1 1/2",
            "not known",
            "1.3 or so",
        ] {
            assert!(parse_readings(text, "g/ml", 1e6).is_none(), "{text}");
        }
        assert!(parse_readings("1.3 1.x", "g/ml", 999.0).unwrap().is_err());
    }
}
