//! Why a drink is as it was revealed: the figures of drink and standard, and the line behind the difference.

use crate::balance::{AxisDifference, Balance};
use crate::book::{Axis, IngredientId};
use crate::say::{Speaker, say};
use crate::swap::driver;
use crate::ui::widgets::level::AxisFigures;

/// "9.1 instead of 7.2 g/100 ml; one step is 1.0."
pub(super) fn figures_words(speaker: Speaker<'_>, came: &AxisDifference) -> String {
    let AxisFigures {
        standard,
        digits: [drink, step],
        ..
    } = AxisFigures::of(came, speaker);
    say!(speaker, "lesson-why", drink: drink, standard: standard, step: step)
}

/// "Brook powder brings 13.4 g of fat; Hill powder brought 10.2 g": the line that moved a drink away from another on an axis.
pub(super) fn cause_words(
    speaker: Speaker<'_>,
    from: &Balance,
    drink: &Balance,
    came: &AxisDifference,
) -> Option<String> {
    let what = what(speaker, &came.axis)?;
    let driver = driver(from, drink, came)?;
    let name = |id: &IngredientId| speaker.ingredient(id);
    let amount = |amount: f64| amount_words(speaker, &came.axis, amount);
    Some(match (&driver.before, &driver.now) {
        (Some((old, before)), Some((new, now))) => {
            let (before, now) = (amount(*before), amount(*now));
            if before == now {
                return None;
            }
            if old == new {
                say!(speaker, "lesson-why-line", ingredient: name(new), now: now, what: what, before: before)
            } else {
                say!(speaker, "lesson-why-swap", with: name(new), now: now, what: what, replace: name(old), before: before)
            }
        }
        (None, Some((new, now))) => {
            say!(speaker, "lesson-why-new", ingredient: name(new), now: amount(*now), what: what)
        }
        (Some((old, before)), None) => {
            say!(speaker, "lesson-why-gone", ingredient: name(old), before: amount(*before), what: what)
        }
        (None, None) => return None,
    })
}

/// What a line brings to an axis.
fn what(speaker: Speaker<'_>, axis: &Axis) -> Option<String> {
    let message = match axis {
        Axis::Flavour(name) => {
            return Some(say!(speaker, "lesson-what-flavour", flavour: speaker.shop_word(name)));
        }
        Axis::Sweetness => "lesson-what-sweetness",
        Axis::TeaStrength => "lesson-what-tea",
        Axis::Creaminess => "lesson-what-fat",
        Axis::Acidity => "lesson-what-acid",
        Axis::Body => "lesson-what-body",
        Axis::Volume => "lesson-what-volume",
        Axis::Temperature => return None,
    };
    Some(speaker.word(message).to_owned())
}

fn amount_words(speaker: Speaker<'_>, axis: &Axis, amount: f64) -> String {
    match axis {
        Axis::Flavour(_) => say!(speaker, "lesson-units", number: speaker.number(amount, 0)),
        Axis::Volume => speaker.volume(amount, 0),
        Axis::TeaStrength | Axis::Acidity => speaker.in_unit(amount, "g", 2),
        _ => speaker.in_unit(amount, "g", 1),
    }
}
