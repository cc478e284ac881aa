//! The figures of the whole menu on paper: what each drink costs and leaves, its sugar and energy, its allergens.

use super::document::{Block, Column, Document, Table};
use super::figure_words::{figure_words, unit_of};
use super::menu_figures::MenuRow;
use super::menu_matrix::{left_out_words, name, on_menu as made_on_menu, sheet};
use super::recipe_blocks::{Made, cautions_of_all, footnotes};
use super::request::{CardError, OnMenu, drinks_of_menu};
use crate::balance::{Measurand, VersionBalances};
use crate::say::{Speaker, say};

pub(super) fn document(speaker: Speaker<'_>, on_menu: OnMenu) -> Result<Document, CardError> {
    let drinks = drinks_of_menu(speaker.book);
    let (made, left_out) = made_on_menu(speaker, &drinks, on_menu)?;
    let mut marks = vec![speaker.word("figures-marks").to_owned()];
    marks.extend(left_out_words(&speaker, &left_out));
    let blocks = vec![
        Block::Table(table(&speaker, &made)),
        Block::Footnotes(marks),
        Block::Heading(speaker.word("card-cautions").to_owned()),
        Block::Cautions(cautions_of_all(&made.iter().collect::<Vec<_>>())),
        footnotes(&speaker),
    ];
    Ok(sheet(&speaker, "figures-title", (on_menu, &made), blocks))
}

fn table(speaker: &Speaker<'_>, made: &[Made<'_>]) -> Table {
    let mut rows = Vec::with_capacity(made.len());
    for of_recipe in made.chunk_by(|a, b| a.recipe.id == b.recipe.id) {
        let mut balances = VersionBalances::new(speaker.book, of_recipe[0].recipe);
        rows.extend(of_recipe.iter().map(|made| {
            let standard = balances.standard(made.drink.version.as_ref());
            let (drink, balance) = (made.drink, &made.balance);
            let row = MenuRow::new(
                speaker.book,
                made.recipe,
                drink,
                balance,
                standard.as_deref(),
            );
            cells(speaker, name(made), &row)
        }));
    }
    let of = |name: &str| speaker.word(name);
    Table {
        caption: of("figures-caption").to_owned(),
        columns: vec![
            Column::text(of("column-drink")),
            Column::number(of("column-cost")),
            Column::number(of("column-menu-price")),
            Column::number(of("column-margin")),
            Column::number(of("column-total-sugar")),
            Column::number(of("column-energy")),
            Column::text_with_strong(of("fact-contains"), of("fact-contains")),
            Column::text(of("fact-may-contain")),
            Column::number(of("column-off-standard")),
        ],
        rows,
    }
}

fn cells(speaker: &Speaker<'_>, name: String, row: &MenuRow) -> Vec<String> {
    let currency = &speaker.book.settings.currency;
    let figure =
        |reported, measurand| figure_words(speaker, reported, unit_of(speaker.book, measurand));
    let not_stated = || speaker.word("allergen-not-stated").to_owned();
    let margin = row.margin.as_ref().map_or_else(not_stated, |margin| {
        let figure = speaker.uncertain(margin.margin, currency);
        if margin.is_at_most {
            say!(speaker, "figures-at-most", figure: figure)
        } else {
            figure
        }
    });
    let (contains, may_contain) = allergens(speaker, row);
    vec![
        name,
        figure(&row.cost, Measurand::Cost),
        row.menu_price
            .map_or_else(not_stated, |price| speaker.money(price)),
        margin,
        figure(&row.sugar, Measurand::TotalSugar),
        figure(&row.energy, Measurand::EnergyKj),
        contains,
        may_contain,
        match (row.distance, row.has_standard) {
            (Some(steps), _) if row.distance_is_least => {
                say!(speaker, "card-figure-least", figure: speaker.number(steps, 1))
            }
            (Some(steps), _) => speaker.number(steps, 1),
            (None, true) => speaker.word("card-figure-not-known").to_owned(),
            (None, false) => speaker.word("figures-no-standard").to_owned(),
        },
    ]
}

/// What it contains and what it may contain; what some packs are silent about stands behind what others name.
fn allergens(speaker: &Speaker<'_>, row: &MenuRow) -> (String, String) {
    let summary = &row.allergens;
    let silent = (!summary.is_complete()).then(|| speaker.word("figures-some-silent").to_owned());
    let listed = |named: &std::collections::BTreeSet<_>| {
        let named = (!named.is_empty()).then(|| speaker.allergens(named));
        let all: Vec<String> = named.into_iter().chain(silent.clone()).collect();
        if all.is_empty() {
            speaker.word("figures-none-named").to_owned()
        } else {
            all.join("; ")
        }
    };
    (listed(&summary.contains), listed(&summary.may_contain))
}
