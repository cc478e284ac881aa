//! What a person has in hand on the screen: kept by the views, neither undone nor saved in the book.

use std::collections::BTreeMap;
use std::path::PathBuf;

use super::card_area::CardState;
use super::compare_area::CompareState;
use super::counter_area::CounterState;
use super::dialogs::Dialog;
use super::ladder_area::LadderState;
use super::lesson_area::LessonState;
use super::look_up::LookUpState;
use super::recipe_area::FinderState;
use super::safekeeping::SafekeepingState;
use super::serving_area::ServingState;
use super::shell::DrinkRows;
use super::swap_area::SwapState;
use super::tall_list::TallList;
use super::theme::Appearance;
use crate::balance::Lens;
use crate::book::{Book, LineId};
use crate::quantity::DisplayUnits;
use crate::say::{Language, Speaker};
use crate::workbench::Shown;

/// The areas of work.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Area {
    /// The recipe as it is made.
    #[default]
    Recipe,
    /// One ingredient for another.
    Swap,
    /// Less sugar, another size, hot or iced.
    Variations,
    /// Drinks side by side.
    Compare,
    /// A swap for a group that learns.
    Lesson,
    /// How the drink is served: warm or cold, declared, sold, brewed for.
    Serving,
    /// What the shop has.
    Counter,
    /// What is printed, and what is brought in.
    Cards,
    /// What is wrong with the book.
    Findings,
}

impl Area {
    /// Those that have a tab, from left to right; what is wrong with the book is shown where there is something.
    pub const TABS: [Self; 8] = [
        Self::Recipe,
        Self::Swap,
        Self::Variations,
        Self::Compare,
        Self::Lesson,
        Self::Serving,
        Self::Counter,
        Self::Cards,
    ];
}

/// Text in a field that is being typed in, or that could not be read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Draft {
    /// What stands in the field.
    pub text: String,
    /// Why it could not be read; `None` while it can.
    pub error: Option<String>,
}

/// Drafts by the field that they stand in. A field without one shows the book.
#[derive(Clone, Debug, Default)]
pub struct Drafts {
    of: BTreeMap<String, Draft>,
    /// The field that has the keyboard, and what the book had for it when the keyboard came.
    in_hand: Option<(String, String)>,
}

impl Drafts {
    /// The draft of a field.
    pub fn get(&self, field: &str) -> Option<&Draft> {
        self.of.get(field)
    }

    /// Why the text of a field could not be read.
    pub fn error(&self, field: &str) -> Option<&str> {
        self.of.get(field)?.error.as_deref()
    }

    /// Tells whether the keyboard has just come to a field; `shown` is what the book has for it.
    pub(super) fn keyboard_comes(&mut self, field: &str, shown: &str) -> bool {
        let comes = self
            .in_hand
            .as_ref()
            .is_none_or(|(before, _)| before != field);
        if comes {
            self.in_hand = Some((field.to_owned(), shown.to_owned()));
        }
        comes
    }

    /// The keyboard is not in this field; what the book had for it when the keyboard came, if it was there till now.
    pub(super) fn keyboard_goes(&mut self, field: &str) -> Option<String> {
        self.in_hand
            .take_if(|(before, _)| before == field)
            .map(|(_, shown)| shown)
    }

    /// Keeps the text of a field.
    pub fn keep(&mut self, field: &str, text: String) {
        let error = self.of.get(field).and_then(|draft| draft.error.clone());
        self.of.insert(field.to_owned(), Draft { text, error });
    }

    /// Says why the text of a field could not be read, or that it could.
    pub fn judge(&mut self, field: &str, error: Option<String>) {
        if let Some(draft) = self.of.get_mut(field) {
            draft.error = error;
        }
    }

    /// What was left in a field is refused: it shows what it had, with the reason below.
    pub(super) fn refuse(&mut self, field: &str, had: &str, reason: &str) {
        self.keep(field, had.to_owned());
        self.judge(field, Some(reason.to_owned()));
    }

    /// The field shows the book again.
    pub fn drop(&mut self, field: &str) {
        self.of.remove(field);
    }

    /// All fields show the book again.
    pub fn clear(&mut self) {
        self.of.clear();
    }
}

/// Everything that the views remember between frames.
#[derive(Default)]
pub struct ViewState {
    /// The recipe and version in hand.
    pub shown: Option<Shown>,
    /// The area of work.
    pub area: Area,
    /// What the person looks at.
    pub lens: Lens,
    /// By day or by night.
    pub appearance: Appearance,
    /// What temperatures and volumes are read in.
    pub units: DisplayUnits,
    /// The language of the window.
    pub language: Language,
    /// What is searched for in the list of drinks.
    pub search: String,
    /// The rows of the list of drinks.
    pub(super) drinks: DrinkRows,
    /// Whether the list of drinks is open; by the width of the window while nobody has chosen.
    pub list_open: Option<bool>,
    /// The line whose details are open.
    pub line_in_hand: Option<LineId>,
    /// The line that is lit up in this frame.
    pub lit: Option<LineId>,
    /// The line that will be lit up in the next frame.
    pub lit_next: Option<LineId>,
    /// The line that is being dragged.
    pub dragged: Option<LineId>,
    /// Half-typed text.
    pub drafts: Drafts,
    /// The list in which an ingredient is found.
    pub(super) finder: FinderState,
    /// What is typed to find anything in the book.
    pub(super) look_up: LookUpState,
    /// The dialog that is open.
    pub(super) dialog: Option<Dialog>,
    /// What is asked about files, earlier books and approvals.
    pub(super) safekeeping: SafekeepingState,
    /// Where the keyboard should go, as the name of a field or a row.
    pub focus_wanted: Option<String>,
    /// The swap that is asked for.
    pub swap: SwapState,
    /// What is open of the variations.
    pub(super) ladder: LadderState,
    /// What stands beside the drink in hand.
    pub compare: CompareState,
    /// The rows of what is wrong with the book.
    pub(super) findings: TallList,
    /// How far a lesson is.
    pub(super) lesson: LessonState,
    /// What is typed about how the drink is served.
    pub(super) serving: ServingState,
    /// What is looked at of the counter.
    pub counter: CounterState,
    /// What is chosen for a card.
    pub cards: CardState,
    /// Books that were open before, the latest first.
    pub recent: Vec<PathBuf>,
}

/// Most books that are remembered.
const MOST_RECENT: usize = 8;

impl ViewState {
    /// Speaks about a book in the units and the language of the window.
    pub fn speaker<'book>(&self, book: &'book Book) -> Speaker<'book> {
        Speaker::new(book)
            .in_units(self.units)
            .in_language(self.language)
    }

    /// The recipe and version in hand, or the first of the book when what was in hand is gone; `None` for an empty book.
    pub fn shown_in(&self, book: &Book) -> Option<Shown> {
        if let Some(shown) = &self.shown
            && let Some(recipe) = book.recipe(&shown.recipe)
        {
            let version = shown
                .version
                .clone()
                .filter(|version| recipe.version(version).is_some());
            return Some(Shown {
                recipe: shown.recipe.clone(),
                version,
            });
        }
        let first = book.recipes.iter().next()?;
        Some(Shown {
            recipe: first.id.clone(),
            version: None,
        })
    }

    /// Takes another recipe or version in hand.
    pub fn show(&mut self, shown: Shown) {
        let same_recipe = self
            .shown
            .as_ref()
            .is_some_and(|before| before.recipe == shown.recipe);
        if !same_recipe {
            self.line_in_hand = None;
            self.finder.close();
        }
        self.shown = Some(shown);
    }

    /// Puts a book at the top of those that were open before.
    pub fn remember_book(&mut self, path: PathBuf) {
        self.recent.retain(|other| *other != path);
        self.recent.insert(0, path);
        self.recent.truncate(MOST_RECENT);
    }

    /// Forgets what belongs to a book that is no longer open.
    pub fn forget_book(&mut self) {
        self.shown = None;
        self.line_in_hand = None;
        self.lit = None;
        self.drafts.clear();
        self.finder.close();
        self.look_up = LookUpState::default();
        self.area = Area::Recipe;
        self.swap = SwapState::default();
        self.counter = CounterState::default();
        self.ladder = LadderState::default();
        self.compare = CompareState::default();
        self.serving = ServingState::default();
        self.safekeeping.forget_book();
        self.cards = CardState::default();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_book_that_is_opened_again_stands_first_and_once() {
        let mut view = ViewState::default();
        for name in ["a", "b", "c", "a"] {
            view.remember_book(PathBuf::from(name));
        }
        assert_eq!(view.recent, ["a", "c", "b"].map(PathBuf::from));
        for number in 0..20 {
            view.remember_book(PathBuf::from(number.to_string()));
        }
        assert_eq!(view.recent.len(), MOST_RECENT);
    }

    #[test]
    fn a_draft_keeps_its_error_until_it_is_judged_again() {
        let mut drafts = Drafts::default();
        drafts.keep("amount", "2 sc".into());
        drafts.judge("amount", Some("no measure".into()));
        drafts.keep("amount", "2 sco".into());
        assert_eq!(drafts.error("amount"), Some("no measure"));
        drafts.judge("amount", None);
        assert_eq!(drafts.error("amount"), None);
    }
}
