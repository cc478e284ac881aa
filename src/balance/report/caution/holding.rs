//! How long things may stand, and how warm: the shop's own rules, and the lines of published codes as advice.

use super::fact::{CautionFact, KeptAt, Since, UseWithin};
use super::facts::Facts;
use crate::balance::diet::contained_in;
use crate::balance::published::serving::{COLD_HOLDING_US_CELSIUS, HOT_HOLDING_UK_CELSIUS};
use crate::book::{Allergen, Form, Ingredient, Role, Temperature};

/// What keeps longer than this needs no reminder on a drink, hours (assumed: a day's work).
const REMIND_UP_TO_HOURS: f64 = 24.0;

/// Time alone may stand in for temperature up to this, hours: FDA Food Code 3-501.19.
const TIME_AS_CONTROL_HOURS: f64 = 4.0;

/// Below this something is kept cold, above it warm, °C (assumed).
const COLD_OR_WARM: f64 = 30.0;

/// Until when what is in the drink may be used.
pub(super) fn holding_times(facts: &Facts<'_>) -> Option<CautionFact> {
    let mut rules: Vec<UseWithin> = Vec::new();
    for ingredient in ingredients(facts) {
        rules.extend(rule_of(ingredient).filter(|rule| !rules.contains(rule)));
    }
    (!rules.is_empty()).then_some(CautionFact::UseWithin(rules))
}

fn rule_of(ingredient: &Ingredient) -> Option<UseWithin> {
    let rule = |since, hours| UseWithin {
        ingredient: ingredient.id.clone(),
        since,
        hours,
    };
    let made = ingredient.house_made.as_ref();
    if is_brewed(ingredient) {
        let made = made.and_then(|made| made.shelf_life_hours);
        return Some(rule(Since::Brewing, ingredient.opened_life_hours.or(made)));
    }
    if let Some(made) = made {
        return Some(rule(Since::Making, made.shelf_life_hours));
    }
    let open = ingredient
        .opened_life_hours
        .filter(|hours| *hours <= REMIND_UP_TO_HOURS)?;
    Some(rule(Since::Opening, Some(open)))
}

/// What is kept warm but not hot enough, or cold but not cold enough, by the temperature of the ingredient. That of a line may
/// be one to which it is steamed or cooled for the drink, and says nothing of holding.
pub(super) fn holding_temperatures(facts: &Facts<'_>) -> Option<CautionFact> {
    let mut kept: Vec<KeptAt> = Vec::new();
    for ingredient in ingredients(facts) {
        // Of a range the end counts at which it is not held.
        let ends = ingredient.temperature.map(Temperature::ends);
        let mut ends = ends.into_iter().flatten();
        let found = ends.find_map(|celsius| kept_at(ingredient, celsius));
        kept.extend(found.filter(|found| !kept.contains(found)));
    }
    (!kept.is_empty()).then_some(CautionFact::KeptAt(kept))
}

fn kept_at(ingredient: &Ingredient, celsius: f64) -> Option<KeptAt> {
    let by_time = ingredient
        .opened_life_hours
        .is_some_and(|hours| hours <= TIME_AS_CONTROL_HOURS);
    if !is_perishable(ingredient) || by_time {
        return None;
    }
    let is_warm = celsius > COLD_OR_WARM;
    let is_held = if is_warm {
        celsius >= HOT_HOLDING_UK_CELSIUS
    } else {
        celsius <= COLD_HOLDING_US_CELSIUS
    };
    (!is_held).then(|| KeptAt {
        ingredient: ingredient.id.clone(),
        celsius,
        is_warm,
    })
}

/// Brewed tea: a liquid in the role of tea.
fn is_brewed(ingredient: &Ingredient) -> bool {
    ingredient.role == Role::Tea && ingredient.form == Form::Liquid
}

/// Wet, and of a kind that spoils: dairy and its like, toppings, what the house makes, what has an opened life of days.
fn is_perishable(ingredient: &Ingredient) -> bool {
    let wet = matches!(ingredient.form, Form::Liquid | Form::Pieces);
    let role = matches!(
        ingredient.role,
        Role::Tea | Role::Creamer | Role::Topping | Role::Base
    );
    wet && role
        && (ingredient.house_made.is_some()
            || ingredient.opened_life_hours.is_some()
            || contained_in(ingredient).contains(&Allergen::Milk))
}

fn ingredients<'facts>(facts: &Facts<'facts>) -> impl Iterator<Item = &'facts Ingredient> {
    let (book, lines) = (facts.book, facts.lines);
    let present = lines.iter().filter(|share| share.count > 0.0);
    present
        .filter_map(move |share| book.ingredient(&share.ingredient))
        .map(AsRef::as_ref)
}
