//! What the sheet says, without drawing: the rows of a recipe in words and figures, and the places that rows move to.

use crate::balance::{Balance, Component, Lens, LineShare, Slots, per_gram, portion};
use crate::book::{
    Amount, Book, Change, Entry, Evidence, Form, Ingredient, Line, LineId, Measure, Role,
};
use crate::quantity::{DisplayUnits, Uncertain, name_as_shown, show_count, show_number};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table};
use crate::ui::value::Value;
use crate::ui::wording::ingredient_name;
use std::borrow::Cow;

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
    /// "78 °C", and whether the line states it itself.
    pub temperature: Option<(String, bool)>,
}

/// The rows of a balance, in order, with the entries that they belong to.
pub(super) fn line_row<'frame>(
    book: &'frame Book,
    balance: &'frame Balance,
    line: &'frame Line,
    units: DisplayUnits,
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
        ingredient: book.ingredient(&line.ingredient).map(AsRef::as_ref),
        share,
        carried: of_line(true),
        amount: book.amount_words_in(&line.amount, units),
        temperature: share.map(|share| {
            (
                units.temperature(share.celsius, 0),
                line.temperature.is_some(),
            )
        }),
    }
}

/// The lines for a spreadsheet.
pub(super) fn as_table(screen: &Screen<'_>) -> Table {
    let lens = screen.lens;
    let currency = &screen.book.settings.currency;
    let unit = if lens == Lens::Cost {
        currency
    } else {
        lens.unit()
    };
    let mut table = Table::new([
        "stage".to_owned(),
        "ingredient".to_owned(),
        "amount".to_owned(),
        spreadsheet::head("temperature", screen.units.of("°C").symbol),
        spreadsheet::head("mass", "g"),
        "±".to_owned(),
        spreadsheet::head(lens.word(), unit),
    ]);
    for line in screen.balance.resolved.lines() {
        let row = line_row(screen.book, screen.balance, line, screen.units);
        let share = row.share;
        let mass = share.and_then(|share| Some((share.grams?, share.u_grams)));
        let mass = mass.map_or_else(
            || Value::not_known("mass not known"),
            |(value, u)| {
                let u = u.unwrap_or(0.0);
                Value::known(Uncertain { value, u }, 1)
            },
        );
        let temperature = share.map(|share| screen.units.of("°C").digits(share.celsius, 0));
        let part = share.and_then(|share| share.through(lens));
        let part = part.map_or_else(
            || Cell::words(gap_words(lens)),
            |part| Cell::figure(&show_number(part, 2)),
        );
        let [grams, doubt] = Cell::figure_and_doubt(&mass);
        table.row([
            Cell::words(Speaker::without_book().stage(line.stage)),
            Cell::words(&ingredient_name(screen.book, &line.ingredient)),
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
pub(super) fn mass_words(share: &LineShare) -> (String, String) {
    let Some(grams) = share.grams else {
        return ("mass not known".to_owned(), String::new());
    };
    let decimals = usize::from(grams.abs() < 1000.0);
    let spread = share
        .u_grams
        .filter(|u| *u >= 0.05)
        .map(|u| format!("± {}", show_number(u, 1)));
    (
        format!("{} g", show_number(grams, decimals)),
        spread.unwrap_or_default(),
    )
}

/// A share through a lens as text, with words instead of a number when it is not known.
pub(super) fn share_words(share: Option<f64>, lens: Lens, currency: &str) -> String {
    let Some(share) = share else {
        return gap_words(lens).to_owned();
    };
    match lens {
        Lens::Cost => format!("{} {currency}", show_number(share, 2)),
        Lens::Energy => format!("{} kJ", show_number(share, 0)),
        Lens::Tea | Lens::Uncertainty => format!("{} g", show_number(share, 2)),
        Lens::Heat => format!("{} kJ", show_number(share, 1)),
        Lens::Sugar | Lens::Sweetness => format!("{} g", show_number(share, 1)),
    }
}

fn gap_words(lens: Lens) -> &'static str {
    match lens {
        Lens::Cost => "no price",
        Lens::Heat => "mass not known",
        _ => "not stated",
    }
}

/// What the whole row says to a screen reader.
pub(super) fn spoken(row: &LineRow<'_>, lens: Lens, currency: &str) -> String {
    let share = share_words(
        row.share.and_then(|share| share.through(lens)),
        lens,
        currency,
    );
    format!("{}, {} {share}", row.name(), lens.word())
}

/// The length that a full bar stands for: the whole for what adds up, the largest for heat that comes and goes.
pub(super) fn full_scale(balance: &Balance, lens: Lens) -> f64 {
    let shares = || {
        balance
            .lines
            .iter()
            .filter_map(|line| line.through(lens))
            .map(f64::abs)
    };
    if lens == Lens::Heat {
        shares().fold(0.0, f64::max)
    } else {
        shares().sum()
    }
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

/// What one use of the line's measure weighs and what that rests on: "1 spoon = 9.7 g, weighed 3 times".
pub(super) fn use_words(book: &Book, line: &Line, celsius: f64) -> Option<String> {
    let Amount::Count(_, id) = &line.amount else {
        return None;
    };
    let (measure, ingredient) = (book.measure(id)?, book.ingredient(&line.ingredient)?);
    let mut slots = Slots::default();
    let mix = per_gram(ingredient, &mut slots).mix;
    let word = measure.words().0;
    let Some(portion) = portion(
        book,
        ingredient,
        &mix,
        &Amount::Count(1.0, id.clone()),
        celsius,
    ) else {
        return Some(format!(
            "the weight of 1 {word} is not known: weigh ten together"
        ));
    };
    let evidence = evidence_words(measure, ingredient, portion.evidence);
    Some(format!(
        "1 {word} ({}) = {} g, {evidence}",
        measure.name,
        show_number(portion.grams, 1)
    ))
}

fn evidence_words(measure: &Measure, ingredient: &Ingredient, evidence: Evidence) -> String {
    let times = |count: usize| match count {
        1 => "once".to_owned(),
        2 => "twice".to_owned(),
        more => format!("{more} times"),
    };
    if let Some(weighed) = measure.calibration(Some(&ingredient.id)) {
        return format!("weighed {}", times(weighed.readings));
    }
    if let Some(water) = measure.calibration(None) {
        return format!(
            "its volume measured with water {}, density from {}",
            times(water.readings),
            evidence.word()
        );
    }
    "from the measure's stated size, not weighed".to_owned()
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
pub(super) fn same_measure(book: &Book, line: &Line, celsius: f64) -> Vec<SameMeasure> {
    if line.role != Role::Sweetener || !matches!(line.amount, Amount::Count(..)) {
        return Vec::new();
    }
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
        if let Some(sugar) = sugar_in(book, ingredient, &line.amount, celsius) {
            let own = ingredient.id == line.ingredient;
            held.push(SameMeasure {
                form: ingredient.form,
                name: name_as_shown(&ingredient.name).into_owned(),
                sugar,
                own,
            });
        }
    }
    held
}

/// Sugar of an amount of an ingredient, g; `None` when its label or its mass is not known.
fn sugar_in(book: &Book, ingredient: &Ingredient, amount: &Amount, celsius: f64) -> Option<f64> {
    let mut slots = Slots::default();
    let mix = per_gram(ingredient, &mut slots).mix;
    let known = mix.knows(Component::Sugars) && ingredient.house_made.is_none();
    let grams = portion(book, ingredient, &mix, amount, celsius)?.grams * amount.number()?;
    (known && mix.get(Component::Sugars) > 0.0).then(|| grams * mix.get(Component::Sugars))
}

/// "the same spoon: 7.5 g of sugar as syrup · 5.9 g as crystals (Sugar crystals)".
pub(super) fn same_measure_words(book: &Book, line: &Line, held: &[SameMeasure]) -> Option<String> {
    let Amount::Count(count, id) = &line.amount else {
        return None;
    };
    if held.len() < 2 {
        return None;
    }
    let (one, many) = book.measure(id)?.words();
    let measure = if *count <= 1.0 {
        format!("the same {one}")
    } else {
        format!("the same {} {many}", show_count(*count))
    };
    let parts: Vec<String> = held
        .iter()
        .enumerate()
        .map(|(at, held)| {
            let of = if at == 0 { " of sugar" } else { "" };
            let name = if held.own {
                String::new()
            } else {
                format!(" ({})", held.name)
            };
            format!(
                "{} {} g{of}{name}",
                held.form.word(),
                show_number(held.sugar, 1)
            )
        })
        .collect();
    Some(format!("{measure}: {}", parts.join(" · ")))
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
        assert_eq!(share_words(None, Lens::Sugar, "€"), "not stated");
        assert_eq!(share_words(None, Lens::Cost, "€"), "no price");
        assert_eq!(share_words(Some(0.0), Lens::Sugar, "€"), "0.0 g");
    }
}
