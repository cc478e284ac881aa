//! Laws of reading numbers: whatever country wrote them, a number is read as it was meant or refused.

use evensip::quantity::{
    Beside, DecimalSign, NumberError, Uncertain, parse_number, parse_up_to, parse_with_sign,
    rounded_beside, show_editable,
};
use proptest::prelude::*;

/// How a country writes a number: the sign before the decimals and what parts thousands.
const STYLES: [(char, Option<char>); 9] = [
    ('.', None),
    (',', None),
    ('.', Some(',')),
    (',', Some('.')),
    ('.', Some('\'')),
    ('.', Some('’')),
    (',', Some(' ')),
    (',', Some('\u{a0}')),
    ('.', Some('\u{202f}')),
];

/// A number of thousandths as a country writes it.
fn written(thousandths: u64, decimals: usize, (decimal, group): (char, Option<char>)) -> String {
    let whole = (thousandths / 1000).to_string();
    let mut text = String::new();
    for (at, digit) in whole.chars().enumerate() {
        let left = whole.len() - at;
        if at > 0 && left.is_multiple_of(3) {
            text.extend(group);
        }
        text.push(digit);
    }
    let fraction = format!("{:03}", thousandths % 1000);
    if decimals > 0 {
        text.push(decimal);
        text.push_str(&fraction[..decimals]);
    }
    text
}

/// Digits as thousandths.
fn thousandths(digits: &str) -> f64 {
    let plain = digits.replace('−', "-").replace('+', "");
    (plain.parse::<f64>().unwrap() * 1000.0).round()
}

/// Decimals that are shown.
fn decimals(digits: &str) -> usize {
    digits
        .split_once('.')
        .map_or(0, |(_, decimals)| decimals.len())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 4000, failure_persistence: None, ..ProptestConfig::default() })]

    /// What stands side by side adds up, digit by digit, whatever is known of it.
    #[test]
    fn a_figure_and_its_difference_give_the_figure_beside_it(
        figures in prop::collection::vec((-5.0..5.0_f64, -4.0..1.0_f64, -4.0..1.0_f64, 0..6_u8), 1..5),
        size in -1..4_i32,
        most in 0..4_i32,
    ) {
        let scale = 10.0_f64.powi(size);
        let given: Vec<(Option<Uncertain>, Option<f64>)> = figures
            .iter()
            .enumerate()
            .map(|(at, (value, u, doubt, known))| {
                let u = 10.0_f64.powf(*u) * scale;
                let one = (*known > 0).then_some(Uncertain { value: value * scale, u });
                let doubt = (at > 0 && *known > 1).then_some(10.0_f64.powf(*doubt) * scale);
                (one, doubt)
            })
            .collect();
        let shown = rounded_beside(&given, most);
        prop_assert_eq!(shown.len(), given.len());
        let first = shown[0].as_ref();
        for ((one, doubt), shown) in given.iter().zip(&shown) {
            prop_assert_eq!(one.is_some(), shown.is_some());
            let (Some(one), Some(Beside { figure, more })) = (one, shown) else { continue };
            let unit = 10.0_f64.powi(-i32::try_from(decimals(&figure.value)).unwrap());
            let coarse = unit.max(one.u);
            prop_assert!((thousandths(&figure.value) / 1000.0 - one.value).abs() <= coarse);
            prop_assert!(decimals(&figure.value) <= usize::try_from(most).unwrap());
            prop_assert_eq!(more.is_some(), first.is_some() && doubt.is_some());
            if let (Some(first), Some(more)) = (first, more) {
                let sum = thousandths(&first.figure.value) + thousandths(&more.value);
                let adds_up = (sum - thousandths(&figure.value)).abs() < 0.5;
                prop_assert!(adds_up, "{:?} {:?} {:?}", first, more, figure);
            }
        }
    }

    #[test]
    fn a_number_is_read_as_it_was_meant_or_refused(
        thousandths in prop_oneof![0_u64..10_000, 0_u64..999_999_999],
        decimals in 0_usize..4,
        style in prop::sample::select(&STYLES[..]),
    ) {
        let text = written(thousandths, decimals, style);
        let kept = 10_u64.pow(3 - u32::try_from(decimals).unwrap());
        let meant = (thousandths / kept * kept) as f64 / 1000.0;
        let close = |read: f64| (read - meant).abs() < 1e-9 * meant.max(1.0);
        match parse_number(&text) {
            Ok(read) => prop_assert!(close(read), "{text}: {read}"),
            Err(NumberError::Ambiguous { .. }) => {}
            Err(error) => prop_assert!(false, "{text}: {error:?}"),
        }
        let sign = if style.0 == '.' { DecimalSign::Point } else { DecimalSign::Comma };
        let read = parse_with_sign(&text, Some(sign));
        prop_assert!(read.clone().is_ok_and(close), "{text}: {read:?}");
        // With the other sign it is another number only where that is written the same.
        let other = if sign == DecimalSign::Point { DecimalSign::Comma } else { DecimalSign::Point };
        if let Ok(read) = parse_with_sign(&text, Some(other))
            && !close(read)
        {
            let refused = matches!(parse_number(&text), Err(NumberError::Ambiguous { .. }));
            prop_assert!(refused || text.matches(style.1.unwrap_or('x')).count() > 0, "{text}: {read}");
        }
    }

    #[test]
    fn what_stands_in_a_field_is_read_back(value in -1e5..1e5_f64, decimals in 0_usize..5) {
        let text = show_editable(value, decimals);
        let read = parse_number(&text);
        let off = 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap()) + 1e-9;
        prop_assert!(read.clone().is_ok_and(|read| (read - value).abs() <= off), "{text}: {read:?}");
    }

    #[test]
    fn no_text_is_read_as_two_numbers(text in "[0-9.,'’ \u{a0}½/-]{0,12}") {
        // What needs no sign is the same with the sign that it has, and a range never makes another number of it.
        if let Ok(read) = parse_number(&text) {
            let with_signs = DecimalSign::ALL.map(|sign| parse_with_sign(&text, Some(sign)));
            prop_assert!(with_signs.contains(&Ok(read)), "{text}: {with_signs:?}");
            prop_assert_eq!(parse_up_to(&text, 1.0), Ok(read));
        }
    }
}
