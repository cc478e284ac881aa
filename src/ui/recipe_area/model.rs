//! What the sheet says, without drawing: the rows of a recipe in words and figures, and the places that rows move to.

use crate::balance::{Balance, Component, Lens, LineShare};
use crate::book::{
    Amount, Carried, Change, Entry, Evidence, Form, Ingredient, IngredientId, Line, LineId,
    Measure, Role, Temperature,
};
use crate::quantity::{Uncertain, name_as_shown, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table};
use crate::ui::value::Value;
use crate::workbench::{Answers, GramOf, OneUseOf};
use std::borrow::Cow;

/// The entries above and below.
pub(super) type Neighbours = [Option<LineId>; 2];

/// A line in words.
pub(super) struct LineRow<'frame> {
    /// The line.
    pub line: &'frame Line,
    /// Its ingredient, if the book has it.
    pub ingredient: Option<&'frame Ingredient>,
    /// What the engine says of it.
    pub share: Option<&'frame LineShare>,
    /// What it brings along.
    pub carried: Option<&'frame LineShare>,
    /// "2½ scoops".
    pub amount: String,
    /// Its temperature, and whether the line states it itself.
    pub temperature: Option<(Temperature, bool)>,
}

/// The rows of a balance, in order, with the entries that they belong to.
pub(super) fn line_row<'frame>(
    speaker: Speaker<'frame>,
    balance: &'frame Balance,
    line: &'frame Line,
) -> LineRow<'frame> {
    let of_line = |carried: bool| {
        balance
            .lines
            .iter()
            .find(move |share| share.line == line.id && share.carried == carried)
    };
    let share = of_line(false);
    LineRow {
        line,
        ingredient: speaker.book.ingredient(&line.ingredient).map(AsRef::as_ref),
        share,
        carried: of_line(true),
        amount: speaker.amount(&line.amount),
        temperature: share.map(|share| {
            let stated = speaker.book.stated_temperature(line);
            (
                stated.unwrap_or(share.celsius.into()),
                line.temperature.is_some(),
            )
        }),
    }
}

/// The lines for a spreadsheet.
pub(super) fn as_table(screen: &Screen<'_>) -> Table {
    let (lens, speaker) = (screen.lens, screen.speaker);
    let currency = &screen.book.settings.currency;
    let unit = if lens == Lens::Cost {
        currency
    } else {
        lens.unit()
    };
    let mut table = Table::new([
        speaker.word("recipe-sheet-table-stage").to_owned(),
        speaker.word("recipe-sheet-table-ingredient").to_owned(),
        speaker.word("recipe-sheet-table-amount").to_owned(),
        spreadsheet::head(
            speaker.word("recipe-sheet-table-temperature"),
            screen.speaker.units.of("°C").symbol,
        ),
        spreadsheet::head(speaker.word("recipe-sheet-mass"), "g"),
        "±".to_owned(),
        spreadsheet::head(speaker.lens(lens), unit),
    ]);
    for line in screen.balance.resolved.lines() {
        let row = line_row(speaker, screen.balance, line);
        let share = row.share;
        let mass = share.and_then(|share| Some((share.grams?, share.u_grams)));
        let mass = mass.map_or_else(
            || Value::not_known(speaker.word("recipe-sheet-mass-not-known")),
            |(value, u)| {
                let u = u.unwrap_or(0.0);
                Value::known(Uncertain { value, u }, 1)
            },
        );
        let temperature = share.map(|share| screen.speaker.units.of("°C").digits(share.celsius, 0));
        let part = share.and_then(|share| share.through(lens));
        let part = part.map_or_else(
            || Cell::words(gap_words(speaker, lens)),
            |part| Cell::figure(&show_number(part, 2)),
        );
        let [grams, doubt] = Cell::figure_and_doubt(&mass);
        table.row([
            Cell::words(speaker.stage(line.stage)),
            Cell::words(&speaker.ingredient(&line.ingredient)),
            Cell::words(&row.amount),
            Cell::figure(temperature.as_deref().unwrap_or_default()),
            grams,
            doubt,
            part,
        ]);
    }
    table
}

impl LineRow<'_> {
    /// The name of the ingredient, or its id when the book has none such.
    pub(super) fn name(&self) -> Cow<'_, str> {
        self.ingredient
            .map_or(self.line.ingredient.as_str().into(), |ingredient| {
                name_as_shown(&ingredient.name)
            })
    }

    /// The brand, if there is any.
    pub(super) fn brand(&self) -> Cow<'_, str> {
        self.ingredient
            .map_or("".into(), |ingredient| name_as_shown(&ingredient.brand))
    }
}

/// "22.0 g" and "± 0.7"; words when nobody knows what it weighs.
pub(super) fn mass_words(speaker: Speaker<'_>, share: &LineShare) -> (String, String) {
    let Some(mass) = known_mass(speaker, share) else {
        let words = speaker.word("recipe-sheet-mass-not-known");
        return (words.to_owned(), String::new());
    };
    let spread = share
        .u_grams
        .filter(|u| *u >= 0.05)
        .map(|u| format!("± {}", speaker.number(u, 1)));
    (mass, spread.unwrap_or_default())
}

fn known_mass(speaker: Speaker<'_>, share: &LineShare) -> Option<String> {
    let grams = share.grams?;
    let decimals = usize::from(grams.abs() < 1000.0);
    Some(speaker.in_unit(grams, "g", decimals))
}

/// What a line brings along: "brings along 5.0 g of Brown sugar syrup".
pub(super) fn carried_words(speaker: Speaker<'_>, carried: &Carried, share: &LineShare) -> String {
    let ingredient = short_name(speaker, &carried.ingredient);
    match known_mass(speaker, share) {
        Some(mass) => {
            say!(speaker, "recipe-sheet-brings-along", mass: mass, ingredient: ingredient)
        }
        None => say!(speaker, "recipe-sheet-brings-along-unknown", ingredient: ingredient),
    }
}

/// The name of an ingredient without its brand, or its id when the book has none such.
pub(super) fn short_name(speaker: Speaker<'_>, id: &IngredientId) -> String {
    speaker.book.ingredient(id).map_or_else(
        || id.to_string(),
        |found| name_as_shown(&found.name).into_owned(),
    )
}

/// An amount of money in the currency of the shop, which is a word of its own, whatever unit it may look like.
pub(super) fn price_words(speaker: Speaker<'_>, price: f64) -> String {
    let currency = &speaker.book.settings.currency;
    format!("{}\u{a0}{currency}", speaker.number(price, 2))
}

/// A share through a lens as text, with words instead of a number when it is not known.
pub(super) fn share_words(speaker: Speaker<'_>, share: Option<f64>, lens: Lens) -> String {
    let Some(share) = share else {
        return gap_words(speaker, lens).to_owned();
    };
    let decimals = match lens {
        Lens::Cost => return price_words(speaker, share),
        Lens::Energy => 0,
        Lens::Tea | Lens::Uncertainty => 2,
        Lens::Heat | Lens::Sugar | Lens::Sweetness => 1,
    };
    speaker.in_unit(share, lens.unit(), decimals)
}

fn gap_words(speaker: Speaker<'_>, lens: Lens) -> &'static str {
    speaker.word(match lens {
        Lens::Cost => "recipe-sheet-no-price",
        Lens::Heat => "recipe-sheet-mass-not-known",
        _ => "recipe-sheet-not-stated",
    })
}

/// What the whole row says to a screen reader.
pub(super) fn spoken(speaker: Speaker<'_>, row: &LineRow<'_>, lens: Lens) -> String {
    let share = row.share.and_then(|share| share.through(lens));
    let share = share_words(speaker, share, lens);
    say!(
        speaker,
        "recipe-sheet-line",
        ingredient: row.name(),
        lens: speaker.lens(lens),
        share: share,
    )
}

/// The change that moves an entry one place up; `None` when it stands first.
pub(super) fn move_up(entries: &[Entry], id: &LineId) -> Option<Change> {
    let at = entries.iter().position(|entry| entry.id() == id)?;
    let behind = at.checked_sub(1)?;
    let after = behind.checked_sub(1).map(|at| entries[at].id().clone());
    Some(Change::Move(id.clone(), after))
}

/// The change that moves an entry one place down; `None` when it stands last.
pub(super) fn move_down(entries: &[Entry], id: &LineId) -> Option<Change> {
    let at = entries.iter().position(|entry| entry.id() == id)?;
    let after = entries.get(at + 1)?.id().clone();
    Some(Change::Move(id.clone(), Some(after)))
}

/// The change that puts an entry before the one at a place (behind the last for the count of them); `None` when it stays.
pub(super) fn move_before(entries: &[Entry], id: &LineId, place: usize) -> Option<Change> {
    let at = entries.iter().position(|entry| entry.id() == id)?;
    if place == at || place == at + 1 {
        return None;
    }
    let after = place
        .checked_sub(1)
        .and_then(|at| entries.get(at))
        .map(|entry| entry.id().clone());
    Some(Change::Move(id.clone(), after))
}

/// What one use of the line's measure weighs and what that rests on: "1 spoon (Bar spoon) = 9.7 g, weighed 3 times".
pub(super) fn use_words(screen: &Screen<'_>, line: &Line, celsius: f64) -> Option<String> {
    let (book, speaker) = (screen.book, screen.speaker);
    let Amount::Count(_, id) = &line.amount else {
        return None;
    };
    let (measure, ingredient) = (book.measure(id)?, book.ingredient(&line.ingredient)?);
    let one_use = speaker.uses(1.0, Some(measure.kind));
    let asked = OneUseOf::new(&line.ingredient, id, celsius);
    let Some(portion) = screen.answers.to(&asked) else {
        return Some(say!(speaker, "recipe-sheet-weight-not-known", use: one_use));
    };
    let mass = speaker.in_unit(portion.grams, "g", 1);
    let evidence = portion.evidence;
    Some(weight_words(
        speaker, measure, ingredient, one_use, mass, evidence,
    ))
}

fn weight_words(
    speaker: Speaker<'_>,
    measure: &Measure,
    ingredient: &Ingredient,
    one_use: String,
    mass: String,
    evidence: Evidence,
) -> String {
    let name = name_as_shown(&measure.name);
    if let Some(weighed) = measure.calibration(Some(&ingredient.id)) {
        return say!(
            speaker,
            "recipe-sheet-weight-weighed",
            use: one_use,
            measure: name,
            mass: mass,
            count: weighed.readings,
        );
    }
    if let Some(water) = measure.calibration(None) {
        return say!(
            speaker,
            "recipe-sheet-weight-water",
            use: one_use,
            measure: name,
            mass: mass,
            count: water.readings,
            evidence: speaker.evidence_kind(evidence),
        );
    }
    say!(speaker, "recipe-sheet-weight-stated", use: one_use, measure: name, mass: mass)
}

/// What the same measure would hold of another form of sweetener.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SameMeasure {
    /// The form.
    pub form: Form,
    /// The ingredient of that form.
    pub name: String,
    /// Sugar in the same number of uses, g.
    pub sugar: f64,
    /// Whether it is what the line has.
    pub own: bool,
}

/// Sugar that the same uses of a sweetener's measure would hold, one ingredient for each form of sweetener in the book, its
/// own first; empty when the line is no sweetener or counts no measure.
pub(super) fn same_measure(answers: Answers<'_>, line: &Line, celsius: f64) -> Vec<SameMeasure> {
    let Amount::Count(count, measure) = &line.amount else {
        return Vec::new();
    };
    if line.role != Role::Sweetener {
        return Vec::new();
    }
    let book = answers.book();
    let own = book.ingredient(&line.ingredient).into_iter();
    let others = book
        .ingredients
        .iter()
        .filter(|other| other.role == Role::Sweetener && other.id != line.ingredient);
    let mut held: Vec<SameMeasure> = Vec::new();
    for ingredient in own.chain(others) {
        if held.iter().any(|known| known.form == ingredient.form) {
            continue;
        }
        let one_use = OneUseOf::new(&ingredient.id, measure, celsius);
        if let Some(sugar) = sugar_in(answers, ingredient, &one_use) {
            let own = ingredient.id == line.ingredient;
            held.push(SameMeasure {
                form: ingredient.form,
                name: name_as_shown(&ingredient.name).into_owned(),
                sugar: count * sugar,
                own,
            });
        }
    }
    held
}

/// Sugar of one use of an ingredient, g; `None` when its label or its mass is not known.
fn sugar_in(answers: Answers<'_>, ingredient: &Ingredient, one_use: &OneUseOf) -> Option<f64> {
    let gram = answers.to(&GramOf(ingredient.id.clone()))?;
    let mix = &gram.mix;
    let known = mix.knows(Component::Sugars) && ingredient.house_made.is_none();
    let grams = answers.to(one_use)?.grams;
    (known && mix.get(Component::Sugars) > 0.0).then(|| grams * mix.get(Component::Sugars))
}

/// "the same spoon: 7.5 g of sugar as syrup · 5.9 g as crystals (Sugar crystals)".
pub(super) fn same_measure_words(
    speaker: Speaker<'_>,
    line: &Line,
    held: &[SameMeasure],
) -> Option<String> {
    let Amount::Count(count, id) = &line.amount else {
        return None;
    };
    if held.len() < 2 {
        return None;
    }
    let kind = speaker.book.measure(id)?.kind;
    let held: Vec<String> = held
        .iter()
        .enumerate()
        .map(|(at, held)| held_words(speaker, held, at == 0))
        .collect();
    let held = held.join(" · ");
    Some(if *count <= 1.0 {
        let kind = kind.word().replace(' ', "-");
        say!(speaker, "recipe-sheet-same-use", kind: kind, held: held)
    } else {
        let uses = speaker.uses(*count, Some(kind));
        say!(speaker, "recipe-sheet-same-uses", uses: uses, held: held)
    })
}

fn held_words(speaker: Speaker<'_>, held: &SameMeasure, is_first: bool) -> String {
    let form = speaker.form(held.form);
    let mass = speaker.in_unit(held.sugar, "g", 1);
    if is_first && held.own {
        return say!(speaker, "recipe-sheet-held-first", form: form, mass: mass);
    }
    let name = held.name.as_str();
    if is_first {
        return say!(
            speaker,
            "recipe-sheet-held-first-named",
            form: form,
            mass: mass,
            name: name,
        );
    }
    say!(speaker, "recipe-sheet-held", form: form, mass: mass, name: name)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::Instruction;

    fn entries() -> Vec<Entry> {
        ["a", "b", "c"]
            .map(|id| {
                Entry::Instruction(Instruction {
                    id: LineId::new(id).unwrap(),
                    text: String::new(),
                })
            })
            .to_vec()
    }

    fn order_after(change: Option<Change>) -> String {
        let mut resolved = crate::book::Resolved {
            entries: entries(),
            ..Default::default()
        };
        if let Some(change) = change {
            assert!(resolved.apply(&change));
        }
        resolved
            .entries
            .iter()
            .map(|entry| entry.id().as_str())
            .collect()
    }

    #[test]
    fn moving_up_and_down_changes_places_with_the_neighbour() {
        let id = |text| LineId::new(text).unwrap();
        assert_eq!(order_after(move_up(&entries(), &id("c"))), "acb");
        assert_eq!(order_after(move_up(&entries(), &id("b"))), "bac");
        assert_eq!(order_after(move_up(&entries(), &id("a"))), "abc");
        assert_eq!(order_after(move_down(&entries(), &id("a"))), "bac");
        assert_eq!(order_after(move_down(&entries(), &id("c"))), "abc");
    }

    #[test]
    fn a_dropped_row_stands_where_it_was_dropped() {
        let id = |text| LineId::new(text).unwrap();
        for (moved, place, expected) in [
            ("a", 3, "bca"),
            ("a", 2, "bac"),
            ("c", 0, "cab"),
            ("c", 1, "acb"),
            ("b", 1, "abc"),
            ("b", 2, "abc"),
        ] {
            assert_eq!(
                order_after(move_before(&entries(), &id(moved), place)),
                expected,
                "{moved} to {place}"
            );
        }
    }

    #[test]
    fn what_is_not_known_is_said_and_never_zero() {
        let speaker = Speaker::without_book();
        assert_eq!(share_words(speaker, None, Lens::Sugar), "not stated");
        assert_eq!(share_words(speaker, None, Lens::Cost), "no price");
        assert_eq!(share_words(speaker, Some(0.0), Lens::Sugar), "0.0\u{a0}g");
    }
}
