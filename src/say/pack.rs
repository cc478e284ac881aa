//! What a pack holds, as it is printed, and why a text says it of none.

use super::{Speaker, say};
use crate::quantity::{Pack, PackError, show_editable};

impl Speaker<'_> {
    /// "12 × 1 kg", "750 ml", "2.5 lb": a text that is read back as it is.
    pub fn pack(&self, pack: Pack) -> String {
        let digits = |number: f64| self.digits(&show_editable(number, 4));
        let (each, unit) = pack.each_as_printed();
        let each = format!("{}\u{a0}{unit}", digits(each));
        if (pack.count - 1.0).abs() < 1e-9 {
            each
        } else {
            format!("{}\u{a0}×\u{a0}{each}", digits(pack.count))
        }
    }

    /// Why a text is no content of a pack.
    pub fn pack_error(&self, error: &PackError, found: &str) -> String {
        match error {
            PackError::Number(error) => self.number_error(error),
            PackError::NoUnit => say!(self, "ingredient-price-without-unit", found: found),
            PackError::NotUnderstood { found } => {
                say!(self, "ingredient-pack-not-read", found: found)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::parse_pack;
    use crate::say::Language;

    #[test]
    fn a_pack_is_said_as_it_is_sold_and_read_back_in_every_language() {
        for (typed, said) in [
            ("1 kg", "1 kg"),
            ("1000 g", "1 kg"),
            ("0,75 l", "750 ml"),
            ("12 x 1 kg", "12 × 1 kg"),
            ("2.5 lb", "2.5 lb"),
            ("40 fl oz", "40 fl oz"),
            ("case of 6 × 750 ml", "6 × 750 ml"),
            ("1134 g", "1134 g"),
            ("14 oz", "14 oz"),
            ("1.5 l", "1.5 l"),
            ("0.5 g", "0.5 g"),
        ] {
            let pack = parse_pack(typed, None, "").unwrap();
            let speaker = Speaker::without_book();
            assert_eq!(speaker.pack(pack).replace('\u{a0}', " "), said, "{typed}");
            for language in Language::all() {
                let text = speaker.in_language(language).pack(pack);
                let read = parse_pack(&text, None, "").unwrap();
                assert!((read.whole() - pack.whole()).abs() < 1e-6, "{text}");
                assert_eq!(read.unit, pack.unit, "{text}");
            }
        }
    }
}
