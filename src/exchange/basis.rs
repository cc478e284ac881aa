//! What a figure of a label is stated for: "400 mg/100 g" is 400 mg, for 100 g.

/// The amount that a figure is stated for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Basis {
    /// It isn't said; lists of ingredients mean 100 g.
    Unstated,
    /// "/100 g", "per 100 g".
    HundredGrams,
    /// "/100 ml", "per 100 ml".
    HundredMillilitres,
}

/// What stands before the amount: a sign, or the word of a language that labels are written in.
pub(super) const LEADS: [&str; 9] = ["/", "(", "[", "per", "pro", "je", "pour", "por", "auf"];

/// A figure or a heading without the amount that it is stated for, in small letters.
pub(super) fn without_basis(text: &str) -> (String, Basis) {
    let text = text.trim().to_lowercase();
    let whole = || (text.clone(), Basis::Unstated);
    let Some((before, after)) = text.rsplit_once("100") else {
        return whole();
    };
    let basis = match after
        .trim_start_matches([' ', '\u{a0}'])
        .trim_end_matches([')', ']'])
    {
        "g" | "gr" | "gram" | "grams" | "gramm" => Basis::HundredGrams,
        "ml" => Basis::HundredMillilitres,
        _ => return whole(),
    };
    let before = before.trim_end();
    let without_lead = |lead: &&str| {
        let rest = before.strip_suffix(*lead)?;
        // A word stands by itself: "super" ends like "per".
        let is_apart =
            !lead.starts_with(char::is_alphabetic) || !rest.ends_with(char::is_alphanumeric);
        is_apart.then(|| rest.trim_end())
    };
    let Some(before) = LEADS.iter().find_map(without_lead) else {
        return whole();
    };
    // "(per 100 g)" leaves its bracket.
    let before = before.trim_end_matches(['(', '[', ',']).trim_end();
    (before.to_owned(), basis)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_figure_is_for_is_taken_off_it_and_an_amount_stays() {
        use Basis::{HundredGrams, HundredMillilitres, Unstated};
        for (text, figure, basis) in [
            ("400 mg/100 g", "400 mg", HundredGrams),
            ("Sodium mg / 100g", "sodium mg", HundredGrams),
            ("Fat (g/100 ml)", "fat (g", HundredMillilitres),
            ("Fat (g) per 100 g", "fat (g)", HundredGrams),
            ("Zucker je 100 ml", "zucker", HundredMillilitres),
            ("Fat (100 g)", "fat", HundredGrams),
            ("100 g", "100 g", Unstated),
            ("1 kg", "1 kg", Unstated),
            ("Super 100 g", "super 100 g", Unstated),
            ("12 of 1000 g", "12 of 1000 g", Unstated),
        ] {
            assert_eq!(without_basis(text), (figure.to_owned(), basis), "{text}");
        }
    }
}
