//! What the table of the whole menu remembers between frames, which of its rows are shown, and in which order.

use std::collections::BTreeSet;
use std::hash::{Hash, Hasher};
use std::sync::Arc;

use crate::balance::{Reported, Verdict};
use crate::book::{Allergen, ApprovalMark, State, WantedWords};
use crate::cards::MenuRow;
use crate::ui::sorted_list::{Column, Sort, numbers, words};
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED, Look, Shown, WholeMenu};

/// Most drinks beside the first.
pub(super) const MOST_BESIDE: usize = 3;

/// The columns behind the name.
pub(super) const COLUMNS: [Column; 8] = [
    words("column-state", 76.0, 5),
    numbers("column-cost", 112.0, "compare-menu-not-stated", 1),
    numbers("column-menu-price", 84.0, "compare-menu-not-stated", 6),
    numbers("column-margin", 124.0, "compare-menu-not-stated", 0),
    numbers("column-total-sugar", 108.0, "compare-menu-not-stated", 2),
    numbers("column-energy", 104.0, "compare-menu-not-stated", 7),
    words("compare-contains", 190.0, 4),
    numbers("compare-menu-off-standard", 116.0, "compare-not-known", 3),
];

pub(super) const STATE: usize = 0;
pub(super) const COST: usize = 1;
pub(super) const PRICE: usize = 2;
pub(super) const MARGIN: usize = 3;
pub(super) const SUGAR: usize = 4;
pub(super) const ENERGY: usize = 5;
pub(super) const CONTAINS: usize = 6;
pub(super) const OFF: usize = 7;

/// Which drinks are shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub(super) enum Shows {
    /// Those that are what was approved.
    #[default]
    Approved,
    /// Those on trial.
    OnTrial,
    /// Those that are being worked on.
    Drafts,
    /// All that are made.
    All,
}

impl Shows {
    pub(super) const ALL: [Self; 4] = [Self::Approved, Self::OnTrial, Self::Drafts, Self::All];

    /// The message of its words.
    pub(super) fn message(self) -> &'static str {
        match self {
            Self::Approved => "compare-menu-approved",
            Self::OnTrial => "compare-menu-on-trial",
            Self::Drafts => "compare-menu-drafts",
            Self::All => "compare-menu-all",
        }
    }

    fn has(self, row: &MenuRow) -> bool {
        match self {
            Self::Approved => row.is_approved(),
            Self::OnTrial => row.state == State::OnTrial,
            Self::Drafts => row.state == State::Draft,
            Self::All => true,
        }
    }
}

/// What the table remembers between frames.
#[derive(Clone, Debug, Default)]
pub(super) struct MenuState {
    pub(super) shows: Shows,
    /// What is typed to find a drink, by its name or what is in it.
    pub(super) find: String,
    /// What the drinks that are shown must be free of.
    pub(super) without: BTreeSet<Allergen>,
    pub(super) sort: Option<Sort>,
    /// Drinks that are ticked to be set side by side, in the order of the ticks.
    pub(super) ticked: Vec<Shown>,
    /// The first column behind the name, where there is no room for all.
    pub(super) first_column: usize,
    /// The row that the keyboard is on.
    pub(super) row: usize,
    pub(super) focus_row: bool,
    /// How far the rows are scrolled, in points.
    pub(super) scrolled: f32,
    /// What has been worked out so far.
    pub(super) look: Look<WholeMenu>,
}

impl MenuState {
    /// Ticks a drink or takes the tick away; four can stand side by side.
    pub(super) fn toggle(&mut self, drink: &Shown) {
        if self.ticked.contains(drink) {
            self.ticked.retain(|other| other != drink);
        } else if self.has_room() {
            self.ticked.push(drink.clone());
        }
    }

    /// Whether another drink can be ticked.
    pub(super) fn has_room(&self) -> bool {
        self.ticked.len() <= MOST_BESIDE
    }
}

/// The drink of a row.
pub(super) fn drink_of(row: &MenuRow) -> Shown {
    Shown {
        recipe: row.drink.recipe.clone(),
        version: row.drink.version.clone(),
    }
}

/// Rows that were worked out: two are the same when they are the same in memory.
#[derive(Clone, Debug)]
pub(super) struct RowsOfMenu(pub(super) Arc<WholeMenu>);

impl PartialEq for RowsOfMenu {
    fn eq(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.0, &other.0)
    }
}

impl Eq for RowsOfMenu {}

impl Hash for RowsOfMenu {
    fn hash<H: Hasher>(&self, state: &mut H) {
        Arc::as_ptr(&self.0).hash(state);
    }
}

/// Which of the rows are shown, and in which order.
#[derive(Clone, PartialEq, Eq, Hash)]
pub(super) struct OrderOfMenu {
    pub(super) rows: RowsOfMenu,
    pub(super) shows: Shows,
    pub(super) find: String,
    pub(super) without: BTreeSet<Allergen>,
    pub(super) sort: Option<Sort>,
}

impl BookQuestion for OrderOfMenu {
    type Answer = Arc<Vec<usize>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, _: Answers<'_>) -> Self::Answer {
        let menu = &self.rows.0;
        let rows = &menu.rows;
        let wanted = WantedWords::of(&self.find);
        let is_shown = |at: usize| {
            let row = &rows[at];
            let is_free = |allergen: &Allergen| is_free_of(row, *allergen);
            self.shows.has(row)
                && self.without.iter().all(is_free)
                && (wanted.is_empty() || menu.is_found(at, &wanted))
        };
        let mut shown: Vec<usize> = (0..rows.len()).filter(|at| is_shown(*at)).collect();
        if let Some(sort) = self.sort {
            put_in_order(&mut shown, rows, sort, |at| menu.sorted_by(at));
        }
        Arc::new(shown)
    }
}

/// Whether every pack states that an allergen is neither in a drink nor may be: what is not stated is not free.
fn is_free_of(row: &MenuRow, allergen: Allergen) -> bool {
    let summary = &row.allergens;
    summary.free_of(allergen) == Verdict::Yes && !summary.may_contain.contains(&allergen)
}

/// Puts rows in order. What is known only as a bound stands behind what is known, and what is not known last, whichever way.
fn put_in_order<'menu>(
    shown: &mut [usize],
    rows: &[MenuRow],
    sort: Sort,
    name: impl Fn(usize) -> &'menu str,
) {
    let Some(column) = sort.column else {
        shown.sort_by(|a, b| sort.way(name(*a).cmp(name(*b))));
        return;
    };
    shown.sort_by(|a, b| {
        let (a, b) = (known(&rows[*a], column), known(&rows[*b], column));
        let order = a.number().total_cmp(&b.number());
        a.class().cmp(&b.class()).then(sort.way(order))
    });
}

/// How far a figure of a row is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Known {
    Whole(f64),
    /// It is no less, or no more, than this.
    Bound(f64),
    Not,
}

impl Known {
    fn class(self) -> u8 {
        match self {
            Self::Whole(_) => 0,
            Self::Bound(_) => 1,
            Self::Not => 2,
        }
    }

    fn number(self) -> f64 {
        match self {
            Self::Whole(value) | Self::Bound(value) => value,
            Self::Not => 0.0,
        }
    }

    fn reported(reported: &Reported) -> Self {
        match reported.value {
            Some(value) if reported.missing.is_empty() && reported.reason.is_none() => {
                Self::Whole(value)
            }
            // The known part of nothing says nothing.
            Some(value) if value > 0.0 => Self::Bound(value),
            _ => Self::Not,
        }
    }

    fn stated(value: Option<f64>) -> Self {
        value.map_or(Self::Not, Self::Whole)
    }
}

/// What a row is sorted by in a column.
pub(super) fn known(row: &MenuRow, column: usize) -> Known {
    match column {
        STATE => {
            let mark = match row.mark {
                Some(ApprovalMark::AsApproved) => -10.0,
                Some(ApprovalMark::ChangedSince) | None => 0.0,
                Some(ApprovalMark::Nothing) => 0.5,
            };
            Known::Whole(f64::from(row.state as u8) + mark)
        }
        COST => Known::reported(&row.cost),
        PRICE => Known::stated(row.menu_price),
        MARGIN => match &row.margin {
            Some(margin) if margin.is_at_most => Known::Bound(margin.margin.value),
            margin => Known::stated(margin.as_ref().map(|margin| margin.margin.value)),
        },
        SUGAR => Known::reported(&row.sugar),
        ENERGY => Known::reported(&row.energy),
        CONTAINS if !row.allergens.is_complete() => Known::Not,
        CONTAINS => Known::Whole(row.allergens.contains.len() as f64),
        OFF => match row.distance {
            Some(steps) if row.distance_is_least => Known::Bound(steps),
            steps => Known::stated(steps),
        },
        _ => Known::Not,
    }
}

#[cfg(test)]
mod tests {
    use std::cmp::Ordering;

    use super::*;
    use crate::cards::menu_figures;

    /// The sample book with some prices, menu prices and sugars taken out.
    fn rows() -> Vec<MenuRow> {
        let text = include_str!("../../../sample-books/harrowmere.ron");
        let mut book = crate::book_file::parse(text).unwrap().0;
        let silent: Vec<_> = book.ingredients.iter().cloned().collect();
        for item in silent.iter().step_by(5) {
            let mut item = item.as_ref().clone();
            item.price = None;
            item.composition
                .printed
                .remove(&crate::book::Nutrient::Sugars);
            book.ingredients.put(item);
        }
        menu_figures(&book)
    }

    #[test]
    fn what_is_not_known_comes_last_and_never_stands_for_zero_whichever_way() {
        let rows = rows();
        for column in 0..COLUMNS.len() {
            for descending in [false, true] {
                let mut shown: Vec<usize> = (0..rows.len()).collect();
                let sort = Sort {
                    column: Some(column),
                    descending,
                };
                put_in_order(&mut shown, &rows, sort, |_| "");
                let keys: Vec<Known> = shown.iter().map(|at| known(&rows[*at], column)).collect();
                for pair in keys.windows(2) {
                    assert!(pair[0].class() <= pair[1].class(), "{column} {pair:?}");
                    if pair[0].class() == pair[1].class() {
                        let order = pair[0].number().total_cmp(&pair[1].number());
                        let wrong = if descending {
                            Ordering::Less
                        } else {
                            Ordering::Greater
                        };
                        assert_ne!(order, wrong, "{column} {pair:?}");
                    }
                }
            }
        }
        let classes: BTreeSet<u8> = rows.iter().map(|row| known(row, COST).class()).collect();
        assert!(classes.len() > 1, "some costs are known and some are not");
    }
}
