//! What is looked for in the background: swaps with their walks, one swap over the whole book, sugar levels, sizes and ice.

use std::sync::Arc;

use super::action::Shown;
use super::measure_first::{MeasureFirst, measure_first};
use super::open_book::Workbench;
use super::search::Look;
use super::searches::{Review, SwapFound, Variation, VariationKind};
use super::whole_menu::WholeMenu;
use crate::book::{Book, Recipe, VesselId, VesselKind, resolve};
use crate::cups::{Cups, CupsQuestion, draw_cups};
use crate::say::Language;
use crate::swap::{
    Adapted, Demands, Drifted, Ladder, Matrix, Nearby, Question, ReviewItem, Unadaptable, Watch,
    all_brought_back, answer_watched, cups_in_use, drifted_watched, everywhere_watched, has_ice,
    hot, ice_level_watched, iced_watched, ladder_watched, matrix, resize_watched,
};

impl Workbench {
    /// The answer to a swap with its demands.
    pub fn swap(&mut self, question: &Question, demands: &Demands) -> Look<Option<SwapFound>> {
        let key = (question.clone(), demands.clone());
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (look, begun) =
            self.jobs
                .searches
                .swap
                .look(book, stamp, &key, &self.jobs.wake, find_swap);
        self.count_engine_calls(begun);
        look
    }

    /// One swap over the whole book.
    pub fn review(&mut self, review: &Review) -> Look<Vec<ReviewItem>> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) = searches
            .review
            .look(book, stamp, review, &self.jobs.wake, find_review);
        self.count_engine_calls(begun);
        look
    }

    /// The same with another ingredient that comes, to be read beside it.
    pub fn review_beside(&mut self, review: &Review) -> Look<Vec<ReviewItem>> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) =
            searches
                .review_beside
                .look(book, stamp, review, &self.jobs.wake, find_review);
        self.count_engine_calls(begun);
        look
    }

    /// The approved drinks that no longer taste as they were approved.
    pub fn drifted(&mut self) -> Look<Vec<Drifted>> {
        let find = |book: &Arc<Book>, (): &(), watch: &Watch| drifted_watched(book, watch);
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) = searches
            .drifted
            .look(book, stamp, &(), &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// What brings each of them back.
    pub fn all_brought_back(&mut self, demands: &Demands) -> Look<Vec<ReviewItem>> {
        let find = |book: &Arc<Book>, demands: &Demands, watch: &Watch| {
            all_brought_back(book, demands, watch)
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) = searches
            .brought_back
            .look(book, stamp, demands, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// The figures of everything on the menu.
    pub fn whole_menu(&mut self) -> Look<WholeMenu> {
        let voice = self.voice;
        let find = move |book: &Arc<Book>, _: &Language, watch: &Watch| {
            WholeMenu::of(voice.about(book), watch)
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) = searches
            .menu
            .look(book, stamp, &voice.language, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// What to measure first.
    pub fn measure_first(&mut self) -> Look<MeasureFirst> {
        let find = |book: &Arc<Book>, (): &(), watch: &Watch| measure_first(book, watch);
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let searches = &mut self.jobs.searches;
        let (look, begun) = searches
            .measure_first
            .look(book, stamp, &(), &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// The sugar ladder of a version, in the levels that the shop names.
    pub fn ladder(&mut self, shown: &Shown) -> Look<Option<Ladder>> {
        let find = |book: &Arc<Book>, shown: &Shown, watch: &Watch| {
            let recipe = book.recipe(&shown.recipe)?;
            let levels = book.settings.sugar_levels();
            ladder_watched(book, recipe, shown.version.as_ref(), &levels, watch)
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (look, begun) =
            self.jobs
                .searches
                .ladder
                .look(book, stamp, shown, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// A version in other sizes, hot or iced, and with other amounts of ice.
    pub fn variations(&mut self, shown: &Shown) -> Look<Vec<Variation>> {
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (look, begun) = self.jobs.searches.variations.look(
            book,
            stamp,
            shown,
            &self.jobs.wake,
            find_variations,
        );
        self.count_engine_calls(begun);
        look
    }

    /// A version at every level of sugar in every size with every amount of ice.
    pub fn matrix(&mut self, shown: &Shown) -> Look<Option<Matrix>> {
        let find = |book: &Arc<Book>, shown: &Shown, watch: &Watch| {
            let recipe = book.recipe(&shown.recipe)?;
            matrix(book, recipe, shown.version.as_ref(), watch)
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (look, begun) =
            self.jobs
                .searches
                .matrix
                .look(book, stamp, shown, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// A hundred cups of a version as the counter makes them.
    pub fn cups(&mut self, shown: &Shown) -> Look<Option<Cups>> {
        let find = |book: &Arc<Book>, shown: &Shown, watch: &Watch| {
            let recipe = book.recipe(&shown.recipe)?;
            let (version, question) = (shown.version.as_ref(), CupsQuestion::default());
            draw_cups(book, recipe, version, question, &|| watch.is_stopped())
        };
        let (book, stamp) = (self.document.history.book(), self.stamp());
        let (look, begun) = self
            .jobs
            .searches
            .cups
            .look(book, stamp, shown, &self.jobs.wake, find);
        self.count_engine_calls(begun);
        look
    }

    /// A drink near a suggestion, with amounts that a person has set; the last one is kept.
    pub fn nearby(&mut self, found: &Arc<Option<SwapFound>>, point: &[i32]) -> Option<Arc<Nearby>> {
        if let Some((of, known)) = &self.jobs.searches.nearby
            && Arc::ptr_eq(of, found)
            && known.as_ref().is_some_and(|known| known.point == point)
        {
            return known.clone();
        }
        self.count_engine_calls(true);
        let swap = found.as_ref().as_ref()?;
        let nearby = swap
            .answer
            .nearby(self.document.history.book(), point)
            .map(Arc::new);
        self.jobs.searches.nearby = Some((found.clone(), nearby.clone()));
        nearby
    }

    /// Whether something is looked for in the background.
    pub fn is_searching(&self) -> bool {
        let searches = &self.jobs.searches;
        searches.swap.is_running()
            || searches.review.is_running()
            || searches.review_beside.is_running()
            || searches.brought_back.is_running()
            || searches.menu.is_running()
            || searches.ladder.is_running()
            || searches.variations.is_running()
            || searches.matrix.is_running()
            || searches.cups.is_running()
            || self.jobs.bringing_in.is_searching()
    }

    /// Stops what is looked for.
    pub(super) fn stop_searching(&mut self) {
        self.jobs.searches.swap.stop();
        self.jobs.searches.review.stop();
        self.jobs.searches.review_beside.stop();
        self.jobs.searches.brought_back.stop();
        self.jobs.searches.menu.stop();
        self.jobs.searches.ladder.stop();
        self.jobs.searches.variations.stop();
        self.jobs.searches.matrix.stop();
        self.jobs.searches.cups.stop();
    }

    /// Begins again what was stopped.
    pub(super) fn search_again(&mut self) {
        self.jobs.searches.swap.go_on();
        self.jobs.searches.review.go_on();
        self.jobs.searches.review_beside.go_on();
        self.jobs.searches.brought_back.go_on();
        self.jobs.searches.menu.go_on();
        self.jobs.searches.ladder.go_on();
        self.jobs.searches.variations.go_on();
        self.jobs.searches.matrix.go_on();
        self.jobs.searches.cups.go_on();
    }
}

fn find_review(book: &Arc<Book>, review: &Review, watch: &Watch) -> Vec<ReviewItem> {
    everywhere_watched(book, &review.replace, &review.with, &review.demands, watch)
}

fn find_swap(
    book: &Arc<Book>,
    (question, demands): &(Question, Demands),
    watch: &Watch,
) -> Option<SwapFound> {
    answer_watched(book, question, demands, watch).map(|answer| SwapFound::new(book, answer))
}

fn find_variations(book: &Arc<Book>, shown: &Shown, watch: &Watch) -> Vec<Variation> {
    let Some(recipe) = book.recipe(&shown.recipe) else {
        return Vec::new();
    };
    let (lines, _) = resolve(recipe, shown.version.as_ref());
    let is_iced = has_ice(&lines);
    let mut kinds = sizes(book, lines.cup.as_ref());
    if is_iced {
        let levels = book.settings.ice_levels().into_iter();
        kinds.extend(
            levels
                .filter(|level| (level.percent - 100.0).abs() > 1e-9)
                .map(VariationKind::Ice),
        );
    }
    let others = cups_in_use(book, !is_iced);
    let other = |cup: &VesselId| {
        if is_iced {
            VariationKind::Hot(cup.clone())
        } else {
            VariationKind::Iced(cup.clone())
        }
    };
    kinds.extend(others.iter().map(other));
    watch.expect(kinds.len());
    let mut variations = Vec::new();
    for kind in kinds {
        if watch.is_stopped() {
            break;
        }
        let drink = variation(book, recipe, shown, &kind, watch);
        variations.extend(drink.map(|drink| Variation { kind, drink }));
        watch.done();
    }
    variations
}

fn variation(
    book: &Book,
    recipe: &Recipe,
    shown: &Shown,
    kind: &VariationKind,
    watch: &Watch,
) -> Option<Result<Adapted, Unadaptable>> {
    let version = shown.version.as_ref();
    match kind {
        VariationKind::Size(cup) => resize_watched(book, recipe, version, cup, watch),
        VariationKind::Iced(cup) => iced_watched(book, recipe, version, Some(cup), watch),
        VariationKind::Hot(cup) => hot(book, recipe, version, Some(cup), watch),
        VariationKind::Ice(level) => ice_level_watched(book, recipe, version, level.percent, watch),
    }
}

/// The other cups of the shop.
fn sizes(book: &Book, now: Option<&VesselId>) -> Vec<VariationKind> {
    let cups = book.vessels.iter();
    cups.filter(|vessel| vessel.kind == VesselKind::Cup && Some(&vessel.id) != now)
        .map(|vessel| VariationKind::Size(vessel.id.clone()))
        .collect()
}
