//! Ingredients and allergens of the whole menu: a row for each drink, a column for each allergen.

use std::collections::BTreeSet;

use super::document::{Block, Column, Document, Orientation, Table};
use super::recipe_blocks::{Made, beside_english, cautions_of_all, footnotes, needs_english};
use super::request::{CardError, Drink, OnMenu, drinks_of_menu};
use crate::book::{Allergen, AllergenList, IngredientId};
use crate::say::{Speaker, say};

/// What stands in a cell when the packs of all ingredients are silent about an allergen although they state others.
const NOT_NAMED: &str = "–";

/// Most drinks of a menu that is printed as one card: some fifty pages. A board of more is no menu.
pub const MOST_ON_MENU: usize = 1000;

/// Most allergens that have a column beside each other: the words of more would be broken into letters.
const MOST_BESIDE: usize = 15;

pub(super) fn document(speaker: Speaker<'_>, on_menu: OnMenu) -> Result<Document, CardError> {
    let drinks = drinks_of_menu(speaker.book);
    let (made, left_out) = self::on_menu(speaker, &drinks, on_menu)?;
    let listed = speaker.book.settings.listed_allergens();
    let tables = listed.len().div_ceil(MOST_BESIDE);
    let beside = listed.len().div_ceil(tables.max(1));
    let matrix = listed.chunks(beside.max(1));
    let mut blocks: Vec<Block> = matrix
        .map(|listed| Block::Table(allergens(&speaker, &made, listed)))
        .collect();
    blocks.extend([
        Block::Footnotes(marks(&speaker, &left_out)),
        Block::Heading(speaker.word("menu-ingredients").to_owned()),
        Block::Table(ingredients(&speaker, &made)),
        Block::Heading(speaker.word("card-cautions").to_owned()),
        Block::Cautions(cautions_of_all(&made.iter().collect::<Vec<_>>())),
        footnotes(&speaker),
    ]);
    Ok(sheet(&speaker, "menu-title", (on_menu, &made), blocks))
}

/// A sheet of the menu: which drinks stand on it, and whether all of them are approved.
pub(super) fn sheet(
    speaker: &Speaker<'_>,
    title: &str,
    (on_menu, made): (OnMenu, &[Made<'_>]),
    blocks: Vec<Block>,
) -> Document {
    let is_unapproved = !made.iter().all(Made::is_approved);
    Document {
        title: speaker.word(title).to_owned(),
        subtitle: speaker
            .word(match on_menu {
                OnMenu::Approved => "menu-subtitle-approved",
                OnMenu::All => "menu-subtitle",
            })
            .to_owned(),
        revision: if is_unapproved {
            speaker.word("menu-with-unapproved").to_owned()
        } else {
            String::new()
        },
        is_unapproved,
        orientation: Orientation::Wide,
        blocks,
        ..Document::default()
    }
}

/// The drinks that stand on a sheet of the menu, and those that are left out because they are not approved as they stand.
pub(super) fn on_menu<'book>(
    speaker: Speaker<'book>,
    drinks: &'book [Drink],
    on_menu: OnMenu,
) -> Result<(Vec<Made<'book>>, Vec<Made<'book>>), CardError> {
    if drinks.is_empty() {
        return Err(CardError::EmptyMenu);
    }
    if drinks.len() > MOST_ON_MENU {
        return Err(CardError::MenuTooLong {
            drinks: drinks.len(),
            most: MOST_ON_MENU,
        });
    }
    let (made, left_out): (Vec<_>, Vec<_>) = Made::each(speaker, drinks)?
        .into_iter()
        .partition(|made| on_menu == OnMenu::All || made.is_approved());
    if made.is_empty() {
        return Err(CardError::NothingApproved);
    }
    Ok((made, left_out))
}

/// The drinks that are left out, in a sentence; none where all of them stand there.
pub(super) fn left_out_words(speaker: &Speaker<'_>, left_out: &[Made<'_>]) -> Option<String> {
    if left_out.is_empty() {
        return None;
    }
    let names: Vec<String> = left_out.iter().map(Made::name).collect();
    let names: Vec<&str> = names.iter().map(String::as_str).collect();
    Some(say!(speaker, "menu-left-out", drinks: speaker.and(&names)))
}

/// What the marks mean and, in another language, the English of every heading: beside it there is no room for a second name.
fn marks(speaker: &Speaker<'_>, left_out: &[Made<'_>]) -> Vec<String> {
    let mut lines = vec![say!(speaker, "menu-marks", sign: NOT_NAMED)];
    lines.extend(left_out_words(speaker, left_out));
    let settings = &speaker.book.settings;
    let lists = settings.allergen_lists();
    if lists != [AllergenList::EuropeanUnion] {
        let names: Vec<&str> = lists
            .into_iter()
            .map(|list| speaker.allergen_list(list))
            .collect();
        lines.push(say!(speaker, "menu-lists", lists: speaker.and(&names)));
    }
    if needs_english(speaker) {
        let listed = settings.listed_allergens().into_iter();
        let both: Vec<String> = listed
            .map(|allergen| {
                beside_english(speaker, |speaker| speaker.allergen(allergen).to_owned())
            })
            .collect();
        lines.push(both.join(" · "));
    }
    lines
}

/// The name of a drink; with its state where that is no approval.
pub(super) fn name(made: &Made<'_>) -> String {
    if made.is_approved() {
        return made.name();
    }
    format!("{}, {}", made.recipe_name(), made.revision())
}

fn allergens(speaker: &Speaker<'_>, made: &[Made<'_>], listed: &[Allergen]) -> Table {
    let contains = speaker.word("fact-contains");
    let mut columns = vec![Column::text(speaker.word("column-drink"))];
    columns.extend(
        listed
            .iter()
            .map(|allergen| Column::text_with_strong(speaker.allergen(*allergen), contains)),
    );
    let rows = made.iter().map(|made| {
        let summary = &made.balance.allergens;
        let cell = |allergen: &Allergen| {
            if summary.contains.contains(allergen) {
                contains.to_owned()
            } else if summary.may_contain.contains(allergen) {
                speaker.word("fact-may-contain").to_owned()
            } else if summary.is_stated(*allergen) {
                NOT_NAMED.to_owned()
            } else {
                speaker.word("allergen-not-stated").to_owned()
            }
        };
        std::iter::once(name(made))
            .chain(listed.iter().map(cell))
            .collect()
    });
    Table {
        caption: speaker.word("menu-allergens-caption").to_owned(),
        columns,
        rows: rows.collect(),
    }
}

fn ingredients(speaker: &Speaker<'_>, made: &[Made<'_>]) -> Table {
    let rows = made.iter().map(|made| {
        let summary = &made.balance.allergens;
        let unstated = if summary.is_complete() {
            speaker.word("allergens-all-stated").to_owned()
        } else {
            let some = summary.silent_on.values().flatten();
            let silent: BTreeSet<_> = some.chain(&summary.not_stated).collect();
            speaker.ingredients(silent)
        };
        vec![
            name(made),
            speaker.ingredients(&by_weight(made)),
            speaker.verdict(made.balance.vegan).to_owned(),
            unstated,
        ]
    });
    Table {
        caption: speaker.word("menu-ingredients-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-drink")),
            Column::text(speaker.word("column-ingredients")),
            Column::text(speaker.word("fact-vegan")),
            Column::text(speaker.word("fact-allergens-not-stated")),
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
