//! The areas of work: the one place that knows them all.

use super::area::Area;
use super::area_of_work::AreaOfWork;
use super::card_area::CardArea;
use super::compare_area::CompareState;
use super::counter_area::CounterState;
use super::findings_area::FindingsState;
use super::ladder_area::LadderState;
use super::lesson_area::LessonState;
use super::recipe_area::RecipeState;
use super::serving_area::ServingState;
use super::swap_area::SwapArea;
use super::view_state::ViewState;
use crate::book::Book;
use crate::edit::{Focus, Which};
use crate::say::Language;

/// Every area with what it remembers between frames.
#[derive(Default)]
pub struct Areas {
    pub(super) recipe: RecipeState,
    pub(super) swap: SwapArea,
    pub(super) variations: LadderState,
    /// Drinks side by side.
    pub compare: CompareState,
    pub(super) lesson: LessonState,
    pub(super) serving: ServingState,
    /// What the shop has.
    pub counter: CounterState,
    pub(super) cards: CardArea,
    pub(super) findings: FindingsState,
}

impl Areas {
    /// One of them.
    pub(super) fn of(&mut self, area: Area) -> &mut dyn AreaOfWork {
        match area {
            Area::Recipe => &mut self.recipe,
            Area::Swap => &mut self.swap,
            Area::Variations => &mut self.variations,
            Area::Compare => &mut self.compare,
            Area::Lesson => &mut self.lesson,
            Area::Serving => &mut self.serving,
            Area::Counter => &mut self.counter,
            Area::Cards => &mut self.cards,
            Area::Findings => &mut self.findings,
        }
    }

    /// Goes to where a step was that was undone or done again.
    pub(super) fn go_to(&mut self, focus: Focus, book: &Book, view: &mut ViewState) {
        if let Some(recipe) = focus.recipe() {
            view.show_recipe(book, recipe);
        }
        let Some(area) = Area::of(&focus) else {
            return;
        };
        view.area = area;
        if let Focus::Field(_, field) = &focus
            && let Which::Words(language, _) = &field.which
        {
            view.other_language = Language::of_id(language);
        }
        // What belongs to a line is in sight while the line is in hand.
        view.line_in_hand = focus.line().cloned().or(view.line_in_hand.take());
        self.of(area).open(&focus);
        // An item as a whole is open then; none of its fields was meant.
        view.focus_wanted = Some(focus).filter(|focus| !matches!(focus, Focus::Item(_)));
    }

    /// Those that are not in front.
    pub(super) fn all_but(&mut self, front: Area) -> impl Iterator<Item = &mut dyn AreaOfWork> {
        let front = front as usize;
        let all = self.all().into_iter().enumerate();
        all.filter(move |(at, _)| *at != front)
            .map(|(_, area)| area)
    }

    /// All of them, in the order of [`Area`].
    pub(super) fn all(&mut self) -> [&mut dyn AreaOfWork; 9] {
        [
            &mut self.recipe,
            &mut self.swap,
            &mut self.variations,
            &mut self.compare,
            &mut self.lesson,
            &mut self.serving,
            &mut self.counter,
            &mut self.cards,
            &mut self.findings,
        ]
    }
}
