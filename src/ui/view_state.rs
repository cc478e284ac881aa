//! What a person has in hand on the screen: kept by the views, neither undone nor saved in the book.

use std::collections::BTreeMap;
use std::path::PathBuf;

use super::area::{Area, Navigation};
use super::dialog::Dialog;
use super::theme::Appearance;
use crate::balance::Lens;
use crate::book::{Book, IngredientId, LineId, RecipeId, VersionId};
use crate::edit::Focus;
use crate::quantity::DisplayUnits;
use crate::say::{Language, Speaker};
use crate::swap::{Demands, Question};
use crate::workbench::Shown;

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
    of: BTreeMap<Focus, Draft>,
    /// The field that has the keyboard, and what the book had for it when the keyboard came.
    in_hand: Option<(Focus, String)>,
}

impl Drafts {
    /// The draft of a field.
    pub fn get(&self, field: &Focus) -> Option<&Draft> {
        self.of.get(field)
    }

    /// Why the text of a field could not be read.
    pub fn error(&self, field: &Focus) -> Option<&str> {
        self.of.get(field)?.error.as_deref()
    }

    /// Tells whether the keyboard has just come to a field; `shown` is what the book has for it.
    pub(super) fn keyboard_comes(&mut self, field: &Focus, shown: &str) -> bool {
        let comes = self
            .in_hand
            .as_ref()
            .is_none_or(|(before, _)| before != field);
        if comes {
            self.in_hand = Some((field.clone(), shown.to_owned()));
        }
        comes
    }

    /// The keyboard is not in this field; what the book had for it when the keyboard came, if it was there till now.
    pub(super) fn keyboard_goes(&mut self, field: &Focus) -> Option<String> {
        self.in_hand
            .take_if(|(before, _)| before == field)
            .map(|(_, shown)| shown)
    }

    /// Keeps the text of a field.
    pub fn keep(&mut self, field: &Focus, text: String) {
        let error = self.of.get(field).and_then(|draft| draft.error.clone());
        self.of.insert(field.clone(), Draft { text, error });
    }

    /// Says why the text of a field could not be read, or that it could.
    pub fn judge(&mut self, field: &Focus, error: Option<String>) {
        if let Some(draft) = self.of.get_mut(field) {
            draft.error = error;
        }
    }

    /// What was left in a field is refused: it shows what it had, with the reason below.
    pub(super) fn refuse(&mut self, field: &Focus, had: &str, reason: &str) {
        self.keep(field, had.to_owned());
        self.judge(field, Some(reason.to_owned()));
    }

    /// The field shows the book again.
    pub fn drop(&mut self, field: &Focus) {
        self.of.remove(field);
    }

    /// All fields show the book again.
    pub fn clear(&mut self) {
        self.of.clear();
    }
}

/// A swap as it is asked for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AskedSwap {
    /// The question. While nothing is chosen that comes, `with` is what goes.
    pub question: Option<Question>,
    /// What is asked beside it.
    pub demands: Demands,
    /// Whether what goes comes back as it is now: the drink has drifted and is brought back to its standard.
    pub brings_back: bool,
    /// The list of all recipes comes first: those that have drifted, or those that use what goes.
    pub everywhere: bool,
}

impl AskedSwap {
    /// A drink that has drifted is brought back.
    pub fn bringing_back(question: Question) -> Self {
        Self {
            brings_back: true,
            ..Self::asking(question)
        }
    }

    /// Every drink that has drifted is, one of them first.
    pub fn bringing_all_back(question: Question) -> Self {
        Self {
            everywhere: true,
            ..Self::bringing_back(question)
        }
    }

    /// Another ingredient goes, and what comes is chosen next.
    pub(super) fn goes(&mut self, recipe: RecipeId, version: Option<VersionId>, id: IngredientId) {
        self.brings_back = false;
        self.everywhere = false;
        self.question = Some(Question {
            recipe,
            version,
            with: id.clone(),
            replace: id,
            adjust: None,
        });
    }

    /// An ingredient goes from every recipe that uses it; what comes is chosen next. The question begins at one of them.
    pub(super) fn going_everywhere(
        recipe: RecipeId,
        version: Option<VersionId>,
        id: IngredientId,
    ) -> Self {
        let mut asked = Self::default();
        asked.goes(recipe, version, id);
        Self {
            everywhere: true,
            ..asked
        }
    }

    /// A question without more to it.
    pub fn asking(question: Question) -> Self {
        Self {
            question: Some(question),
            ..Self::default()
        }
    }

    /// The question once both ingredients are chosen.
    pub(super) fn complete(&self) -> Option<&Question> {
        self.question
            .as_ref()
            .filter(|question| self.brings_back || question.with != question.replace)
    }
}

/// What all areas share of what a person has in hand.
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
    /// The zoom of the window while everything is larger on a wall: what comes back, and what is remembered.
    pub(super) own_zoom: Option<f32>,
    /// Whether the list of drinks is open; by the width of the window while nobody has chosen.
    pub list_open: Option<bool>,
    /// The line whose details are open.
    pub line_in_hand: Option<LineId>,
    /// The line that is lit up in this frame.
    pub lit: Option<LineId>,
    /// The line that will be lit up in the next frame.
    pub lit_next: Option<LineId>,
    /// Half-typed text.
    pub drafts: Drafts,
    /// The language whose words for the texts of the book are in hand; none while no form shows them.
    pub(super) other_language: Option<Language>,
    /// The dialog that is open.
    pub(super) dialog: Option<Dialog>,
    /// Where the keyboard should go.
    pub focus_wanted: Option<Focus>,
    /// The swap that was asked last: *Swap* answers it and *Lesson* teaches it.
    pub swap: AskedSwap,
    /// Where somebody wants to be led.
    pub(super) navigation: Vec<Navigation>,
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

    /// The recipe and version in hand, or the first drink of the book when what was in hand is gone; `None` for an empty book.
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
        // A drink, where there is one: batches stand below the drinks in every list.
        let mut recipes = book.recipes.iter();
        let first = recipes
            .find(|recipe| recipe.cup.is_some())
            .or_else(|| book.recipes.iter().next())?;
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
        }
        self.shown = Some(shown);
    }

    /// Leads somewhere once the frame has been drawn.
    pub(super) fn go(&mut self, area: Area, to: Navigation) {
        self.area = area;
        self.navigation.push(to);
    }

    /// Takes a recipe in hand, unless it is in hand already or gone.
    pub(super) fn show_recipe(&mut self, book: &Book, recipe: &RecipeId) {
        let is_in_hand = self
            .shown_in(book)
            .is_some_and(|shown| shown.recipe == *recipe);
        if !is_in_hand && book.recipe(recipe).is_some() {
            self.show(Shown {
                recipe: recipe.clone(),
                version: None,
            });
        }
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
        self.area = Area::Recipe;
        self.swap = AskedSwap::default();
        self.navigation.clear();
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
        let amount = Focus::Question("amount".into());
        drafts.keep(&amount, "2 sc".into());
        drafts.judge(&amount, Some("no measure".into()));
        drafts.keep(&amount, "2 sco".into());
        assert_eq!(drafts.error(&amount), Some("no measure"));
        drafts.judge(&amount, None);
        assert_eq!(drafts.error(&amount), None);
    }
}
