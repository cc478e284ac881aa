//! Ingredients and allergens of the whole menu: a row for each drink, a column for each allergen.

use super::document::{Block, Column, Document, Orientation, Table};
use super::figure_words::names_of;
use super::recipe_blocks::{Made, cautions_of_all, footnotes};
use super::request::{CardError, drinks_of_menu};
use crate::book::{Allergen, Book, IngredientId};

/// What stands in a cell when the packs of all ingredients are silent about an allergen although they state others.
const NOT_NAMED: &str = "–";

/// Most drinks of a menu that is printed as one card: some fifty pages. A board of more is no menu.
pub const MOST_ON_MENU: usize = 1000;

pub(super) fn document(book: &Book) -> Result<Document, CardError> {
    let drinks = drinks_of_menu(book);
    if drinks.is_empty() {
        return Err(CardError::EmptyMenu);
    }
    if drinks.len() > MOST_ON_MENU {
        return Err(CardError::MenuTooLong {
            drinks: drinks.len(),
            most: MOST_ON_MENU,
        });
    }
    let made = Made::each(book, &drinks)?;
    Ok(Document {
        title: "Ingredients and allergens".to_owned(),
        subtitle: "the whole menu".to_owned(),
        revision: String::new(),
        orientation: Orientation::Wide,
        blocks: vec![
            Block::Table(allergens(&made)),
            Block::Footnotes(vec![format!(
                "“contains” and “may contain”: as a pack of one of the ingredients states it. “not stated”: at least one pack says \
                 nothing of allergens. “{NOT_NAMED}”: every pack states its allergens and none names this one."
            )]),
            Block::Heading("What is in them".to_owned()),
            Block::Table(ingredients(book, &made)),
            Block::Heading("Cautions".to_owned()),
            Block::Cautions(cautions_of_all(&made.iter().collect::<Vec<_>>())),
            footnotes(),
        ],
        ..Document::default()
    })
}

fn allergens(made: &[Made<'_>]) -> Table {
    let mut columns = vec![Column::text("drink")];
    columns.extend(
        Allergen::ALL
            .iter()
            .map(|allergen| Column::text(allergen.word())),
    );
    let rows = made.iter().map(|made| {
        let summary = &made.balance.allergens;
        let cell = |allergen: &Allergen| {
            let word = if summary.contains.contains(allergen) {
                "contains"
            } else if summary.may_contain.contains(allergen) {
                "may contain"
            } else if summary.not_stated.is_empty() {
                NOT_NAMED
            } else {
                "not stated"
            };
            word.to_owned()
        };
        std::iter::once(made.name())
            .chain(Allergen::ALL.iter().map(cell))
            .collect()
    });
    Table {
        caption: "allergens of every drink".to_owned(),
        columns,
        rows: rows.collect(),
    }
}

fn ingredients(book: &Book, made: &[Made<'_>]) -> Table {
    let rows = made.iter().map(|made| {
        let unstated = &made.balance.allergens.not_stated;
        let unstated = if unstated.is_empty() {
            "all state them".to_owned()
        } else {
            names_of(book, unstated)
        };
        vec![
            made.name(),
            names_of(book, &by_weight(made)),
            made.balance.vegan.word().to_owned(),
            unstated,
        ]
    });
    Table {
        caption: "ingredients of every drink".to_owned(),
        columns: vec![
            Column::text("drink"),
            Column::text("ingredients, the heaviest first"),
            Column::text("vegan, by ingredients"),
            Column::text("allergens not stated by"),
        ],
        rows: rows.collect(),
    }
}

/// The ingredients of which there is some, the heaviest first; those whose weight is not known come last.
fn by_weight(made: &Made<'_>) -> Vec<IngredientId> {
    let mut weights: Vec<(IngredientId, Option<f64>)> = Vec::new();
    let shares = made.balance.lines.iter();
    for share in shares.filter(|share| share.count != 0.0) {
        match weights.iter_mut().find(|(id, _)| *id == share.ingredient) {
            Some((_, grams)) => *grams = grams.zip(share.grams).map(|(one, two)| one + two),
            None => weights.push((share.ingredient.clone(), share.grams)),
        }
    }
    weights.sort_by(|one, other| {
        let grams = |weight: &Option<f64>| weight.unwrap_or(f64::NEG_INFINITY);
        grams(&other.1).total_cmp(&grams(&one.1))
    });
    weights.into_iter().map(|(id, _)| id).collect()
}
