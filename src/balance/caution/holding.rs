//! How long things may stand, and how warm: the shop's own rules, and the lines of published codes as advice.

use super::Facts;
use crate::balance::diet::contained_in;
use crate::balance::published::serving::{
    BREWED_TEA_HOURS, COLD_HOLDING_UK_CELSIUS, COLD_HOLDING_US_CELSIUS, HOT_HOLDING_UK_CELSIUS,
    HOT_HOLDING_US_CELSIUS,
};
use crate::book::{Allergen, Form, Ingredient, Role};
use crate::quantity::show_number;

/// What keeps longer than this needs no reminder on a drink, hours (assumed: a day's work).
const REMIND_UP_TO_HOURS: f64 = 24.0;

/// Time alone may stand in for temperature up to this, hours: FDA Food Code 3-501.19.
const TIME_AS_CONTROL_HOURS: f64 = 4.0;

/// Below this something is kept cold, above it warm, °C (assumed).
const COLD_OR_WARM: f64 = 30.0;

/// Until when what is in the drink may be used.
pub(super) fn holding_times(facts: &Facts<'_>) -> Option<String> {
    let mut rules: Vec<String> = Vec::new();
    for ingredient in ingredients(facts) {
        if let Some(rule) = rule_of(ingredient).filter(|rule| !rules.contains(rule)) {
            rules.push(rule);
        }
    }
    (!rules.is_empty()).then(|| {
        format!(
            "{}; by the shop's own rules, and follow your local code",
            rules.join("; ")
        )
    })
}

fn rule_of(ingredient: &Ingredient) -> Option<String> {
    let name = ingredient.full_name();
    let hours = |hours: f64| show_number(hours, usize::from(hours.fract() != 0.0));
    if is_brewed(ingredient) {
        let made = ingredient
            .house_made
            .as_ref()
            .and_then(|made| made.shelf_life_hours);
        return Some(match ingredient.opened_life_hours.or(made) {
            Some(rule) if rule > BREWED_TEA_HOURS => format!(
                "{name}: use within {} h of brewing by the shop's rule, longer than the {BREWED_TEA_HOURS:.0} h of the Tea Council \
                 of the USA after the CDC memo of 1996",
                hours(rule)
            ),
            Some(rule) => format!("{name}: use within {} h of brewing", hours(rule)),
            None => format!(
                "{name}: no holding rule is stated; the Tea Council of the USA says {BREWED_TEA_HOURS:.0} h after brewing at most"
            ),
        });
    }
    if let Some(made) = &ingredient.house_made {
        return Some(match made.shelf_life_hours {
            Some(rule) => format!("{name}: use within {} h of making", hours(rule)),
            None => format!("{name}: made in the house, and no shelf life is stated"),
        });
    }
    let open = ingredient
        .opened_life_hours
        .filter(|hours| *hours <= REMIND_UP_TO_HOURS)?;
    Some(format!("{name}: use within {} h of opening", hours(open)))
}

/// What is kept warm but not hot enough, or cold but not cold enough, by the temperature of the ingredient. That of a line may
/// be one to which it is steamed or cooled for the drink, and says nothing of holding.
pub(super) fn holding_temperatures(facts: &Facts<'_>) -> Option<String> {
    let mut texts: Vec<String> = Vec::new();
    for ingredient in ingredients(facts) {
        let text = ingredient
            .temperature
            .and_then(|celsius| temperature_of(ingredient, celsius));
        if let Some(text) = text.filter(|text| !texts.contains(text)) {
            texts.push(text);
        }
    }
    (!texts.is_empty()).then(|| format!("{}; follow your local code", texts.join("; ")))
}

fn temperature_of(ingredient: &Ingredient, celsius: f64) -> Option<String> {
    let by_time = ingredient
        .opened_life_hours
        .is_some_and(|hours| hours <= TIME_AS_CONTROL_HOURS);
    if !is_perishable(ingredient) || by_time {
        return None;
    }
    let name = ingredient.full_name();
    if celsius > COLD_OR_WARM {
        return (celsius < HOT_HOLDING_UK_CELSIUS).then(|| {
            format!(
                "{name} comes at {celsius:.0} °C; where it is kept at that, hot holding begins at {HOT_HOLDING_UK_CELSIUS:.0} °C (UK) or \
                 {HOT_HOLDING_US_CELSIUS:.0} °C (US)"
            )
        });
    }
    (celsius > COLD_HOLDING_US_CELSIUS).then(|| {
        format!(
            "{name} comes at {celsius:.0} °C; where it is kept at that, cold holding ends at {COLD_HOLDING_UK_CELSIUS:.0} °C (UK) or \
             {COLD_HOLDING_US_CELSIUS:.0} °C (US)"
        )
    })
}

/// Brewed tea: a liquid in the role of tea.
fn is_brewed(ingredient: &Ingredient) -> bool {
    ingredient.role == Role::Tea && ingredient.form == Form::Liquid
}

/// Wet, and of a kind that spoils: dairy and its like, toppings, what the house makes, what has an opened life of days.
fn is_perishable(ingredient: &Ingredient) -> bool {
    let wet = matches!(ingredient.form, Form::Liquid | Form::Pieces);
    let milk = contained_in(ingredient).contains(&Allergen::Milk);
    let kept = ingredient.house_made.is_some() || ingredient.opened_life_hours.is_some() || milk;
    let role = matches!(
        ingredient.role,
        Role::Tea | Role::Creamer | Role::Topping | Role::Base
    );
    wet && kept && role
}

fn ingredients<'facts>(facts: &Facts<'facts>) -> impl Iterator<Item = &'facts Ingredient> {
    let (book, lines) = (facts.book, facts.lines);
    let present = lines.iter().filter(|share| share.count > 0.0);
    present
        .filter_map(move |share| book.ingredient(&share.ingredient))
        .map(AsRef::as_ref)
}
