//! What is said of a swap: what a suggestion does, and why nothing, or not enough, can be suggested.

use super::{Speaker, say};
use crate::balance::{Balance, Difference, Measurand};
use crate::book::{Amount, Axis, Resolved};
use crate::swap::{
    Answer, Bound, CapKind, ComparedDrink, Forbidden, Hindrance, Impossible, LineMove, Obstacle,
    Reason, Suggestion, SuggestionKind, Unheld,
};

impl Speaker<'_> {
    /// What a suggestion is best at.
    pub fn suggestion_kind(&self, kind: SuggestionKind) -> &'static str {
        self.word(match kind {
            SuggestionKind::FewestChanges => "suggestion-fewest-changes",
            SuggestionKind::ClosestTaste => "suggestion-closest-taste",
            SuggestionKind::Cheapest => "suggestion-cheapest",
            SuggestionKind::LeastSugar => "suggestion-least-sugar",
        })
    }

    /// "Hob house sweetener 1 → ½ spoon". The line has the name that it ends with: `lines` are looked through in order.
    pub fn line_move(&self, moved: &LineMove, lines: &[&Resolved]) -> String {
        let line = lines.iter().find_map(|resolved| resolved.line(&moved.line));
        let name = line.map_or_else(
            || moved.line.to_string(),
            |line| self.ingredient(&line.ingredient),
        );
        let amount = |amount: &Amount| self.amount(amount);
        let (from, to) = match (&moved.from, &moved.to) {
            (None, None) => return name,
            (None, Some(to)) => (self.word("line-none").to_owned(), amount(to)),
            (Some(from), None) => (amount(from), self.word("line-none").to_owned()),
            (Some(from), Some(to)) => {
                let number = from.number().filter(|_| self.same_unit(from, to));
                let from = number.map_or_else(|| amount(from), |number| self.bare(from, number));
                (from, amount(to))
            }
        };
        say!(self, "line-changes", ingredient: name, from: from, to: to)
    }

    /// The number of an amount without its unit.
    fn bare(&self, amount: &Amount, number: f64) -> String {
        match amount {
            Amount::Millilitres(_) | Amount::FillTo(_) => {
                self.localised(&self.units.volume_number(number), number)
            }
            _ => self.count(number),
        }
    }

    fn same_unit(&self, one: &Amount, other: &Amount) -> bool {
        let kind = |measure| self.book.measure(measure).map(|measure| measure.kind);
        match (one, other) {
            (Amount::Count(_, one), Amount::Count(_, other)) => kind(one) == kind(other),
            _ if one.fills() => other.fills(),
            _ => std::mem::discriminant(one) == std::mem::discriminant(other),
        }
    }

    /// The name that a new version gets at first.
    pub fn swapped_version(&self, answer: &Answer) -> String {
        let question = &answer.question;
        let with = if question.brings_back() {
            self.word("swap-version-brought-back").to_owned()
        } else {
            self.ingredient(&question.with)
        };
        let version = question.version.as_ref();
        let known = version.and_then(|id| self.book.recipe(&question.recipe)?.version(id));
        match known {
            Some(version) => format!("{}, {with}", version.name),
            None if question.brings_back() => with,
            None => say!(self, "swap-version-name", ingredient: with),
        }
    }

    /// What the plain swap does and what a suggestion makes of it, in sentences.
    pub fn suggestion(&self, answer: &Answer, suggestion: &Suggestion) -> String {
        let message = if answer.question.brings_back() {
            "swap-as-it-is-made"
        } else {
            "swap-equal-measures"
        };
        let first = say!(self, message,
            ingredient: self.ingredient(&answer.question.with),
            swap: self.sugar_of(&answer.plain),
            standard: self.sugar_of(&answer.standard));
        let mut sentences = vec![first, self.suggestion_result(answer, suggestion)];
        let not_known = self.axes(suggestion.difference.not_compared());
        if !not_known.is_empty() && !suggestion.difference.is_level() {
            sentences.push(say!(self, "swap-axes-not-known", axes: not_known));
        }
        sentences.extend(self.suggestion_gain(answer, suggestion));
        sentences.join(" ")
    }

    fn suggestion_result(&self, answer: &Answer, suggestion: &Suggestion) -> String {
        let lines = [
            &suggestion.balance.resolved,
            &answer.plain.resolved,
            &answer.standard.resolved,
        ];
        let moves = suggestion.moves.iter();
        let moves: Vec<String> = moves.map(|moved| self.line_move(moved, &lines)).collect();
        let changed = if moves.is_empty() { "nothing" } else { "lines" };
        let moves = self.and(&moves);
        let difference = &suggestion.difference;
        let Some((axis, steps)) = largest(difference) else {
            return say!(self, "swap-result-not-compared", changed: changed, moves: moves);
        };
        if difference.is_level() {
            return say!(self, "swap-result-level", changed: changed, moves: moves);
        }
        let (change, steps) = (self.comparative(axis, steps), self.number(steps.abs(), 1));
        match difference.within_one_step() {
            Some(false) => {
                say!(self, "swap-result-beyond", changed: changed, moves: moves, change: change, steps: steps)
            }
            Some(true) => {
                say!(self, "swap-result-within", changed: changed, moves: moves, change: change, steps: steps)
            }
            None => {
                say!(self, "swap-result-within-known", changed: changed, moves: moves, change: change, steps: steps)
            }
        }
    }

    fn suggestion_gain(&self, answer: &Answer, suggestion: &Suggestion) -> Option<String> {
        let (standard, suggested) = (&answer.standard, &suggestion.balance);
        match suggestion.kind {
            SuggestionKind::Cheapest => {
                let cost = |balance: &Balance| balance.figures.of[Measurand::Cost.slot()];
                let missing = |balance: &Balance| balance.reported(Measurand::Cost).missing;
                // What costs an unknown amount in both falls out of the difference.
                if missing(standard) != missing(suggested) {
                    return Some(self.word("swap-gain-cheapest").to_owned());
                }
                let saved = cost(standard) - cost(suggested);
                let change = if saved >= 0.0 { "less" } else { "more" };
                Some(say!(self, "swap-gain-cost", amount: self.money(saved.abs()), change: change))
            }
            SuggestionKind::LeastSugar => {
                Some(say!(self, "swap-gain-sugar", sugar: self.sugar_of(suggested)))
            }
            SuggestionKind::FewestChanges | SuggestionKind::ClosestTaste => None,
        }
    }

    /// "13.6 g", or "at least 13.6 g" where an ingredient states nothing.
    pub(super) fn sugar_of(&self, balance: &Balance) -> String {
        let is_known = balance.figures.complete(Measurand::TotalSugar).is_some();
        let sugar = self.in_unit(balance.figures.of[Measurand::TotalSugar.slot()], "g", 1);
        if is_known {
            sugar
        } else {
            say!(self, "swap-at-least", amount: sugar)
        }
    }

    /// An amount in the currency of the book, with two decimals.
    pub fn money(&self, amount: f64) -> String {
        // A currency is the shop's own word, whatever unit it may look like.
        let money = format!("{} {}", self.number(amount, 2), self.book.settings.currency);
        money.trim_end().to_owned()
    }

    pub(super) fn axes<'axis>(&self, axes: impl Iterator<Item = &'axis Axis>) -> String {
        let words: Vec<String> = axes.map(|axis| self.axis(axis)).collect();
        self.and(&words)
    }

    /// Why nothing, or not enough, can be suggested: a clause without a capital and a stop.
    pub fn swap_reason(&self, reason: &Reason) -> String {
        match reason {
            Reason::NotInVersion(id) => {
                say!(self, "swap-not-in-version", ingredient: self.ingredient(id))
            }
            Reason::NotWeighed(line) => self.no_mass(&line.ingredient, line.measure.as_ref()),
            Reason::SweetnessNotKnown { drink, missing } => {
                let drink = match drink {
                    ComparedDrink::Standard => "standard",
                    ComparedDrink::PlainSwap => "swap",
                };
                say!(self, "swap-sweetness-not-known", drink: drink, ingredients: self.ingredients(missing))
            }
            Reason::NotVegan {
                ingredients,
                is_known,
            } => {
                let known = if *is_known { "yes" } else { "no" };
                say!(self, "swap-not-vegan", count: ingredients.len(), known: known,
                    ingredients: self.ingredients(ingredients))
            }
            Reason::Contains {
                ingredients,
                allergen,
            } => {
                say!(self, "swap-contains", count: ingredients.len(), allergen: self.allergen(*allergen),
                    ingredients: self.ingredients(ingredients))
            }
            Reason::AllergensNotStated {
                ingredients,
                allergens,
            } => {
                let allergens: Vec<&str> =
                    allergens.iter().map(|one| self.allergen(*one)).collect();
                say!(self, "swap-allergens-not-stated", count: ingredients.len(), allergens: self.or(&allergens),
                    ingredients: self.ingredients(ingredients))
            }
            Reason::MayContain {
                ingredients,
                allergen,
            } => {
                say!(self, "swap-may-contain", allergen: self.allergen(*allergen), ingredients: self.ingredients(ingredients))
            }
            Reason::Impossible(impossible) => self.swap_impossible(impossible),
            Reason::NotReached { axis, steps, why } => {
                say!(self, "swap-not-reached", axis: self.axis(axis), change: self.comparative(axis, *steps),
                    steps: self.number(steps.abs(), 1), why: self.hindrance(why))
            }
            Reason::KeptTo(bounds) => {
                let limits: Vec<String> = bounds.iter().map(|bound| self.limit(*bound)).collect();
                say!(self, "swap-kept-to", count: limits.len(), limits: self.and(&limits))
            }
            Reason::NotCompared { with, axes } => {
                say!(self, "swap-not-compared", ingredient: self.ingredient(with), axes: self.axes(axes.iter()))
            }
            Reason::Unheld(unheld) => self.unheld(unheld),
        }
    }

    /// Several reasons, as a list of clauses.
    pub fn swap_reasons(&self, reasons: &[Reason]) -> String {
        let clauses: Vec<String> = reasons.iter().map(|one| self.swap_reason(one)).collect();
        clauses.join("; ")
    }

    /// Why no amounts are allowed: a clause without a capital and a stop.
    pub fn swap_impossible(&self, impossible: &Impossible) -> String {
        match impossible {
            Impossible::Forbidden(forbidden) => self.forbidden(forbidden),
            Impossible::LeastOverfills { fill, room } => {
                let (fill, room) = (self.in_unit(*fill, "%", 0), self.in_unit(*room, "%", 0));
                say!(self, "swap-least-overfills", fill: fill, room: room)
            }
            Impossible::AllConditions => self.word("swap-all-conditions").to_owned(),
        }
    }

    /// Which condition amounts break: a clause without a capital and a stop.
    pub fn forbidden(&self, forbidden: &Forbidden) -> String {
        match forbidden.obstacle {
            Obstacle::FillOutOfReach => self.word("swap-fill-out-of-reach").to_owned(),
            Obstacle::Cup { fill, room } => {
                let (fill, room) = (self.in_unit(fill, "%", 0), self.in_unit(room, "%", 0));
                say!(self, "swap-overfills", fill: fill, room: room)
            }
            Obstacle::Temperature { celsius, window } => {
                say!(self, "swap-outside-window", temperature: self.temperature(celsius, 1),
                    from: self.temperature(window.from, 0), to: self.temperature(window.to, 0))
            }
            Obstacle::IceLeft { left, wanted } => {
                let grams = |grams| self.in_unit(grams, "g", 0);
                say!(self, "swap-ice-melts", left: grams(left), wanted: grams(wanted))
            }
            Obstacle::Cap { kind, found, most } => self.over_cap(forbidden, kind, found, most),
            Obstacle::HotWater {
                hot,
                powder,
                needed,
            } => {
                say!(self, "swap-undissolved", hot: self.in_unit(hot, "g", 0),
                    powder: self.in_unit(powder, "g", 0), needed: self.in_unit(needed, "g", 1))
            }
        }
    }

    fn over_cap(&self, forbidden: &Forbidden, kind: CapKind, found: f64, most: f64) -> String {
        let amount = |amount: f64, decimals: usize| match kind {
            CapKind::Sugar => self.in_unit(amount, "g", decimals),
            CapKind::Energy => self.in_unit(amount, "kJ", decimals),
            CapKind::Cost => self.money(amount),
        };
        let decimals = usize::from(kind == CapKind::Sugar);
        let (found, most) = (amount(found, decimals), amount(most, decimals));
        let (alone, ingredient, share) = match &forbidden.carrier {
            Some(carrier) => {
                let decimals = if carrier.amount < 1.0 { 2 } else { 1 };
                let share = amount(carrier.amount, decimals);
                ("known", self.ingredient(&carrier.ingredient), share)
            }
            None => ("not-known", String::new(), String::new()),
        };
        match kind {
            CapKind::Sugar => {
                say!(self, "swap-over-sugar", most: most, found: found, alone: alone, ingredient: ingredient, share: share)
            }
            CapKind::Energy => {
                say!(self, "swap-over-energy", most: most, found: found, alone: alone, ingredient: ingredient, share: share)
            }
            CapKind::Cost => {
                say!(self, "swap-over-cost", most: most, found: found, alone: alone, ingredient: ingredient, share: share)
            }
        }
    }

    /// "at most 5.0 g of sugar per 100 ml".
    fn limit(&self, bound: Bound) -> String {
        match bound {
            Bound::Sugar(most) => {
                say!(self, "swap-limit-sugar", most: self.in_unit(most, "g", 1))
            }
            Bound::Energy(most) => {
                say!(self, "swap-limit-energy", most: self.in_unit(most, "kJ", 0))
            }
            Bound::Cost(most) => say!(self, "swap-limit-cost", most: self.money(most)),
            Bound::Temperature(window) => {
                say!(self, "swap-limit-temperature", from: self.temperature(window.from, 0),
                    to: self.temperature(window.to, 0))
            }
            Bound::Cup => self.word("swap-limit-cup").to_owned(),
        }
    }

    /// What can't be held against a drink, and for want of what: a clause without a capital and a stop.
    fn unheld(&self, unheld: &Unheld) -> String {
        let (count, ingredients) = (unheld.missing.len(), self.ingredients(&unheld.missing));
        match unheld.bound {
            Bound::Sugar(most) => {
                say!(self, "swap-sugar-not-known", most: self.in_unit(most, "g", 1), count: count, ingredients: ingredients)
            }
            Bound::Energy(most) => {
                say!(self, "swap-energy-not-known", most: self.in_unit(most, "kJ", 0), count: count, ingredients: ingredients)
            }
            Bound::Cost(most) => {
                say!(self, "swap-cost-not-known", most: self.money(most), count: count, ingredients: ingredients)
            }
            Bound::Temperature(window) => {
                say!(self, "swap-temperature-not-known", from: self.temperature(window.from, 0),
                    to: self.temperature(window.to, 0), count: count, ingredients: ingredients)
            }
            Bound::Cup => {
                say!(self, "swap-fill-not-known", count: count, ingredients: ingredients)
            }
        }
    }

    /// What stands in the way of an axis: a clause without a capital and a stop.
    pub fn hindrance(&self, hindrance: &Hindrance) -> String {
        let amount = |amount: &Amount| self.amount(amount);
        let direction = |more: bool| if more { "more" } else { "less" };
        match hindrance {
            Hindrance::AtMost {
                ingredient,
                amount: most,
                ..
            } => {
                say!(self, "hindrance-at-most", ingredient: self.ingredient(ingredient), amount: amount(most))
            }
            Hindrance::AtLeast {
                ingredient,
                amount: least,
                ..
            } => {
                say!(self, "hindrance-at-least", ingredient: self.ingredient(ingredient), amount: amount(least))
            }
            Hindrance::Forbidden {
                ingredient,
                more,
                obstacle,
                ..
            } => {
                let what = match obstacle {
                    Obstacle::FillOutOfReach => "fill",
                    Obstacle::Cup { .. } => "cup",
                    Obstacle::Temperature { .. } => "temperature",
                    Obstacle::IceLeft { .. } => "ice",
                    Obstacle::Cap { kind, .. } => match kind {
                        CapKind::Sugar => "sugar",
                        CapKind::Energy => "energy",
                        CapKind::Cost => "cost",
                    },
                    Obstacle::HotWater { .. } => "powder",
                };
                say!(self, "hindrance-forbidden", change: direction(*more),
                    ingredient: self.ingredient(ingredient), what: what)
            }
            Hindrance::PushesOthers {
                ingredient,
                more,
                axes,
                ..
            } => {
                say!(self, "hindrance-pushes-others", change: direction(*more),
                    ingredient: self.ingredient(ingredient), axes: self.axes(axes.iter()))
            }
            Hindrance::TooCoarse {
                ingredient, step, ..
            } => {
                say!(self, "hindrance-too-coarse", ingredient: self.ingredient(ingredient), amount: amount(step))
            }
            Hindrance::BringsSugar { ingredient, grams } => {
                say!(self, "hindrance-brings-sugar", ingredient: self.ingredient(ingredient),
                    amount: self.in_unit(*grams, "g", 1))
            }
            Hindrance::NoLine => self.word("hindrance-no-line").to_owned(),
        }
    }
}

/// The axis that differs most of those that count.
pub(super) fn largest(difference: &Difference) -> Option<(&Axis, f64)> {
    let counted = difference.axes.iter().filter(|axis| axis.weight > 0.0);
    counted
        .filter_map(|axis| Some((&axis.axis, axis.steps?)))
        .max_by(|one, other| one.1.abs().total_cmp(&other.1.abs()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Allergen, IngredientId, TemperatureWindow};
    use crate::quantity::{DisplayUnits, TemperatureUnit, VolumeUnit};
    use crate::swap::Carrier;

    fn ids(names: &[&str]) -> Vec<IngredientId> {
        let ids = names.iter().map(|name| IngredientId::new(name).unwrap());
        ids.collect()
    }

    #[test]
    fn reasons_are_told_with_names_figures_and_the_units_that_are_read() {
        let us = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            volume: VolumeUnit::FluidOunces,
        };
        let speaker = Speaker::without_book();
        let window = TemperatureWindow {
            from: 50.0,
            to: 60.0,
        };
        let warm = Reason::Impossible(Impossible::Forbidden(Forbidden {
            obstacle: Obstacle::Temperature {
                celsius: 70.0,
                window,
            },
            carrier: None,
        }));
        assert_eq!(
            speaker.in_units(us).swap_reason(&warm),
            "it would be served at 158.0\u{a0}°F, outside the serving window of 122\u{a0}°F to 140\u{a0}°F: change the water, the tea or the window"
        );
        let sweet = Forbidden {
            obstacle: Obstacle::Cap {
                kind: CapKind::Sugar,
                found: 6.3,
                most: 5.0,
            },
            carrier: Some(Carrier {
                ingredient: IngredientId::new("powder").unwrap(),
                amount: 13.6,
            }),
        };
        assert_eq!(
            speaker.forbidden(&sweet),
            "a limit of 5.0\u{a0}g of sugar per 100 ml can’t be met: without it, the closest taste has 6.3\u{a0}g; powder alone brings 13.6\u{a0}g"
        );
        for (names, words) in [
            (
                &["milk"][..],
                "milk contains milk: replace it in the same swap",
            ),
            (
                &["creamer", "milk"][..],
                "creamer and milk contain milk: replace them in the same swap",
            ),
        ] {
            let reason = Reason::Contains {
                ingredients: ids(names),
                allergen: Allergen::Milk,
            };
            assert_eq!(speaker.swap_reason(&reason), words);
        }
        for (missing, words) in [
            (
                &[][..],
                "whether it costs at most 2.00  is not known: the cup or what goes with it has no price",
            ),
            (
                &["milk"][..],
                "whether it costs at most 2.00  is not known: there is no price for milk",
            ),
        ] {
            let unheld = Unheld {
                bound: Bound::Cost(2.0),
                missing: ids(missing),
            };
            let said = speaker.swap_reason(&Reason::Unheld(unheld));
            assert_eq!(said.replace(&speaker.book.settings.currency, ""), words);
        }
        let short = Reason::NotReached {
            axis: Axis::Sweetness,
            steps: -1.26,
            why: Hindrance::Forbidden {
                line: crate::book::LineId::new("syrup").unwrap(),
                ingredient: IngredientId::new("syrup").unwrap(),
                more: true,
                obstacle: Obstacle::FillOutOfReach,
            },
        };
        assert_eq!(
            speaker.swap_reason(&short),
            "sweetness can’t be matched: still less sweet by 1.3 noticeable steps with the best amounts of the lines that may change; more syrup would leave no room for what fills the cup"
        );
    }

    #[test]
    fn axes_that_move_are_told_in_steps() {
        let speaker = Speaker::without_book();
        let said = |steps| {
            speaker.against_standard(&crate::balance::AxisDifference {
                axis: Axis::Flavour("plum".to_owned()),
                standard: Some(2.0),
                value: steps,
                step: 1.0,
                weight: 1.0,
                steps,
                u_steps: None,
                scatter_steps: None,
            })
        };
        assert_eq!(said(Some(3.0)), "more plum by 3.0 steps");
        assert_eq!(said(Some(-1.02)), "less plum by 1.02 steps");
        assert_eq!(said(Some(-0.9)), "the same");
        assert_eq!(said(None), "not known");
    }
}
