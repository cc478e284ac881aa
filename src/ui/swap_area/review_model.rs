//! The reviewed list as plain values: what may be taken, and the edits that take it in one step.

use std::collections::BTreeMap;
use std::collections::btree_map::Entry;

use super::model::{changes_in_words, distance_cell, version_name};
use super::state::{Chosen, Reviewed};
use crate::book::{Book, Recipe, RecipeId, State};
use crate::edit::Edit;
use crate::quantity::Uncertain;
use crate::say::{Speaker, say};
use crate::swap::{Demands, ReviewItem, Suggestion};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, head};
use crate::ui::value::{self, Value};
use crate::ui::widgets::level::overall_words;

/// Decimals of money that are shown at most: a tenth of a cent is what a gram of powder costs.
const MONEY_DECIMALS: i32 = 3;

/// Demands that mean something in every recipe: those on single lines belong to one.
pub(super) fn demands_for_all(demands: &Demands) -> Demands {
    Demands {
        locked: Vec::new(),
        unlocked: Vec::new(),
        limits: Vec::new(),
        ..demands.clone()
    }
}

/// The recipe or version of an item.
pub(super) fn place(item: &ReviewItem) -> Reviewed {
    (item.recipe.clone(), item.version.clone())
}

/// "Hazelthwaite, iced" and "approved".
pub(super) fn title(speaker: Speaker<'_>, item: &ReviewItem) -> (String, &'static str) {
    let name = speaker.drink(&item.recipe, item.version.as_ref());
    let Some(recipe) = speaker.book.recipe(&item.recipe) else {
        return (name, "");
    };
    (name, speaker.state_of(recipe, item.version.as_ref()))
}

/// How many versions the book has.
pub(super) fn versions(book: &Book) -> usize {
    let recipes = book.recipes.iter();
    recipes.map(|recipe| recipe.versions.len()).sum()
}

/// Whether an item is ticked: as somebody has left it or, untouched, when it is level on every axis and is made still. What is
/// off somewhere is for a person to decide.
pub(super) fn is_ticked(book: &Book, item: &ReviewItem, chosen: &Chosen) -> bool {
    let is_made = || {
        let recipe = book.recipe(&item.recipe);
        let state = recipe.and_then(|recipe| recipe.state_of(item.version.as_ref()));
        state != Some(State::Retired)
    };
    let by_hand = chosen.get(&place(item)).copied();
    item.can_be_taken() && by_hand.unwrap_or_else(|| item.is_level() && is_made())
}

/// How much more the items cost than now, one of each taken together.
pub(super) struct CostInSum {
    /// The sum over those of which it is known.
    known: Uncertain,
    /// How many it is known of.
    count: usize,
    /// How many there are.
    all: usize,
}

/// Adds up what items cost more. The drinks share measures and packs: their doubts are taken as acting alike, which is the most
/// that they can come to.
pub(super) fn cost_in_sum<'item>(items: impl Iterator<Item = &'item ReviewItem>) -> CostInSum {
    let mut sum = CostInSum {
        known: Uncertain { value: 0.0, u: 0.0 },
        count: 0,
        all: 0,
    };
    for item in items {
        sum.all += 1;
        if let Some(more) = item.more_cost {
            sum.known.value += more.value;
            sum.known.u += more.u;
            sum.count += 1;
        }
    }
    sum
}

/// The sum in words; nothing where there is nothing to add up.
pub(super) fn cost_in_sum_words(speaker: Speaker<'_>, sum: &CostInSum) -> Option<String> {
    if sum.all == 0 {
        return None;
    }
    if sum.count == 0 {
        return Some(
            speaker
                .word("swap-screen-review-cost-not-stated")
                .to_owned(),
        );
    }
    let (more, missing) = (money(speaker, sum.known), sum.all - sum.count);
    Some(if missing == 0 {
        say!(speaker, "swap-screen-review-cost-sum", count: sum.all, more: more)
    } else {
        say!(speaker, "swap-screen-review-cost-part", count: sum.count, more: more, missing: missing)
    })
}

/// What an item costs more than now: "+0.03 ± 0.01 EUR".
pub(super) fn cost_words(speaker: Speaker<'_>, item: &ReviewItem) -> String {
    let unknown = || {
        speaker
            .word("swap-screen-review-cost-not-stated")
            .to_owned()
    };
    item.more_cost.map_or_else(
        unknown,
        |more| say!(speaker, "swap-screen-review-cost", more: money(speaker, more)),
    )
}

fn money(speaker: Speaker<'_>, more: Uncertain) -> String {
    let digits = value::more(speaker, more, MONEY_DECIMALS);
    format!("{digits}\u{a0}{}", speaker.book.settings.currency)
}

/// How many of the items are level on every axis, of all that have a suggestion or none.
pub(super) fn level_count(items: &[ReviewItem]) -> usize {
    items.iter().filter(|item| item.is_level()).count()
}

/// What a suggestion changes of the recipe or version of an item, in counter measures.
pub(super) fn changes(
    screen: &Screen<'_>,
    item: &ReviewItem,
    suggestion: &Suggestion,
) -> Vec<String> {
    let Some(recipe) = screen.book.recipe(&item.recipe) else {
        return Vec::new();
    };
    let (before, _) = crate::book::resolve(recipe, item.version.as_ref());
    let after = &suggestion.balance.resolved;
    changes_in_words(screen.speaker, &before, after)
}

/// The list for a spreadsheet, with what is ticked and why there is no suggestion.
pub(super) fn as_table(screen: &Screen<'_>, items: &[ReviewItem], chosen: &Chosen) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "swap-screen-table-drink",
        "swap-screen-table-state",
        "swap-screen-table-selected",
        "swap-screen-table-overall",
        "swap-screen-table-result",
    ];
    let cost = head(
        speaker.word("swap-screen-table-cost"),
        &screen.book.settings.currency,
    );
    let heads = heads.map(|head| speaker.word(head)).into_iter();
    let behind = [
        cost.as_str(),
        "±",
        speaker.word("swap-screen-table-changes"),
    ];
    let mut table = Table::new(heads.chain(behind));
    for item in items {
        let (name, state) = title(speaker, item);
        let suggestion = item.answer.suggestions.first();
        let distance = suggestion.and_then(|suggestion| suggestion.difference.distance);
        let in_words = suggestion.map_or_else(
            || {
                let reasons = speaker.swap_reasons(&item.answer.reasons);
                say!(speaker, "swap-screen-table-no-suggestion", reason: reasons)
            },
            |suggestion| overall_words(&suggestion.difference, screen.speaker),
        );
        let changes = suggestion.map(|suggestion| changes(screen, item, suggestion).join(", "));
        let taken = match (&item.already, item.can_be_taken()) {
            (Some(_), _) => speaker.word("swap-screen-review-already"),
            (None, false) => "",
            _ if is_ticked(screen.book, item, chosen) => speaker.word("swap-screen-yes"),
            _ => speaker.word("swap-screen-no"),
        };
        let more = item
            .more_cost
            .map(|more| Value::known(more, MONEY_DECIMALS));
        let [more_cost, doubt] = Cell::figure_and_doubt(&more.unwrap_or_default());
        table.row([
            Cell::words(&name),
            Cell::words(state),
            Cell::words(taken),
            distance_cell(speaker, distance),
            Cell::words(&in_words),
            more_cost,
            doubt,
            Cell::words(&changes.unwrap_or_default()),
        ]);
    }
    table
}

/// What is ticked, each with the suggestion that is taken.
pub(super) fn taken<'item>(
    book: &'item Book,
    items: &'item [ReviewItem],
    chosen: &'item Chosen,
) -> impl Iterator<Item = (&'item ReviewItem, &'item Suggestion)> {
    let ticked = items
        .iter()
        .filter(move |item| is_ticked(book, item, chosen));
    ticked.filter_map(|item| Some((item, item.answer.suggestions.first()?)))
}

/// The edits of everything that is ticked, each a new version with a name that no other has. Nothing that is there changes.
pub(super) fn edits(speaker: Speaker<'_>, items: &[ReviewItem], chosen: &Chosen) -> Vec<Edit> {
    // The recipes with what was added to them so far.
    let mut grown: BTreeMap<&RecipeId, Recipe> = BTreeMap::new();
    let mut edits = Vec::new();
    for (item, suggestion) in taken(speaker.book, items, chosen) {
        let recipe = match grown.entry(&item.recipe) {
            Entry::Occupied(known) => known.into_mut(),
            Entry::Vacant(new) => {
                let Some(recipe) = speaker.book.recipe(&item.recipe) else {
                    continue;
                };
                new.insert(recipe.as_ref().clone())
            }
        };
        let name = version_name(recipe, &speaker.swapped_version(&item.answer));
        let (edit, _) = item.answer.accept(recipe, &suggestion.changes, &name);
        if let Edit::AddVersion { version, .. } = &edit {
            recipe.versions.push(version.clone());
        }
        edits.push(edit);
    }
    edits
}
