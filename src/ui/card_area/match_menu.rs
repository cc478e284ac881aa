//! The menu in which a person says what something that comes in is: an ingredient of the book, found by typing, or something
//! else that is offered.

use std::sync::Arc;

use egui::{Key, Popup, PopupCloseBehavior, Ui};

use crate::book::{Form, Role, WantedWords};
use crate::exchange::RowMatch;
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::name_button_ui;
use crate::ui::widgets::pick_list::{self, PickList};
use crate::ui::words::Spoken;
use crate::workbench::{Answers, BookQuestion, KEPT_OF_TYPED};

/// The most that the list takes before it scrolls, in points.
const LIST: f32 = 75.0 * grid::STEP;

/// Width of the menu, in points.
const WIDTH: f32 = 340.0;

/// The menu that is open, of all of a review.
#[derive(Clone, Debug, Default)]
pub(super) struct MatchMenu {
    /// The number of what is asked about.
    open: Option<usize>,
    list: PickList,
}

/// What stands there now, and for what.
pub(super) struct Asked<'text> {
    /// The number of what is asked about.
    pub(super) at: usize,
    /// What it is called where it comes from.
    pub(super) name: &'text str,
    /// What it is for now.
    pub(super) now: &'text str,
}

/// The button with what something is for now, and the menu while it is open; tells what was chosen.
pub(super) fn match_menu_ui(
    ui: &mut Ui,
    (speaker, answers): (Speaker<'_>, Answers<'_>),
    menu: &mut MatchMenu,
    asked: &Asked<'_>,
) -> Option<RowMatch> {
    let palette = theme::palette(ui.visuals());
    let colour = palette.text_normal;
    let button = name_button_ui(ui, asked.now, TypeStyle::Small, colour, true);
    let name = name_as_shown(asked.name);
    let said = say!(speaker, "cards-screen-match-field", name: name, now: asked.now);
    let button = button.accessible_name(said);
    if button.clicked() {
        menu.open = Some(asked.at);
        menu.list = PickList::default();
        menu.list.open();
    }
    if menu.open != Some(asked.at) {
        return None;
    }
    let mut open = true;
    let mut chosen = None;
    Popup::from_response(&button)
        .id(egui::Id::unique("what a row is"))
        .open_bool(&mut open)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(WIDTH)
        .show(|ui| {
            ui.set_width(WIDTH);
            chosen = list_ui(ui, speaker, answers, &mut menu.list);
            if ui.input(|input| input.key_pressed(Key::Escape)) {
                menu.open = None;
            }
        });
    if chosen.is_some() || !open && !menu.list.is_opening() {
        menu.open = None;
    }
    chosen
}

fn list_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    answers: Answers<'_>,
    list: &mut PickList,
) -> Option<RowMatch> {
    let found = answers.to(&MatchesFor {
        spoken: Spoken::by(speaker),
        typed: list.text.clone(),
    });
    list.walk(ui, found.len());
    let field = list.field_ui(
        ui,
        "find-what-a-row-is",
        speaker.word("cards-screen-match-find"),
        speaker.word("cards-screen-match-find-hint"),
    );
    let entered = list.entered(ui, &field);
    let clicked = list.rows_ui(ui, LIST, found.len(), grid::TARGET, |ui, at, is_chosen| {
        let Match { words, role, .. } = &*found[at];
        pick_list::words_row_ui(ui, is_chosen, words, *role)
    });
    if found.is_empty() {
        ui.label(speaker.word("cards-screen-match-none"));
    }
    let taken = entered.or(clicked).and_then(|at| found.get(at));
    taken.map(|found| found.to.clone())
}

/// Something that is offered, with its words.
struct Match {
    to: RowMatch,
    words: String,
    /// The role of an ingredient of the book.
    role: Option<Role>,
}

/// What is offered by its words, whatever is typed.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
struct MatchesOfBook(Spoken);

impl BookQuestion for MatchesOfBook {
    type Answer = Arc<Vec<Arc<Match>>>;

    /// The ingredients of the book, then what else something may be.
    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let speaker = self.0.about(book);
        let ours = book.ingredients.iter();
        let ours = ours.map(|item| (RowMatch::Ours(item.id.clone()), Some(item.role)));
        let new = Form::ALL.map(|form| (RowMatch::New(form), None));
        let all = ours.chain(new).chain([(RowMatch::LeftOut, None)]);
        let named = all.map(|(to, role)| {
            let words = match_words(speaker, &to);
            Arc::new(Match { to, words, role })
        });
        Arc::new(named.collect())
    }
}

/// What is offered for what is typed.
#[derive(Clone, PartialEq, Eq, Hash)]
struct MatchesFor {
    spoken: Spoken,
    typed: String,
}

impl BookQuestion for MatchesFor {
    type Answer = Arc<Vec<Arc<Match>>>;
    const KEPT: usize = KEPT_OF_TYPED;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let all = answers.to(&MatchesOfBook(self.spoken));
        let wanted = WantedWords::of(&self.typed);
        if wanted.is_empty() {
            return all;
        }
        let fitting = all.iter().filter(|found| wanted.are_in(&found.words));
        Arc::new(fitting.cloned().collect())
    }
}

/// What something is taken for.
pub(super) fn match_words(speaker: Speaker<'_>, to: &RowMatch) -> String {
    match to {
        RowMatch::Ours(id) => name_as_shown(&speaker.ingredient(id)).into_owned(),
        RowMatch::New(form) => {
            say!(speaker, "cards-screen-match-new", form: speaker.form(*form))
        }
        RowMatch::LeftOut => speaker.word("cards-screen-match-left-out").to_owned(),
    }
}
