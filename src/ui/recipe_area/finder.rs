//! Finding an ingredient while typing: to add a line, or to put another ingredient into one.

use egui::{Key, Popup, PopupCloseBehavior, Response, RichText, Ui};

use super::found::{choice_ui, choices};
use super::line_command::line_command;
use crate::book::{Change, Entry, Ingredient, Line, LineId, Resolved};
use crate::edit::{Edit, LineField};
use crate::swap::add_line_for;
use crate::ui::Screen;
use crate::ui::commands::UiCommand;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::pick_list::PickList;
use crate::workbench::Action;

/// What is done with the ingredient that is found.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Purpose {
    /// A new line behind another one; at the end for `None`.
    Add(Option<LineId>),
    /// Another ingredient in a line.
    Replace(LineId),
}

/// The list in which an ingredient is found.
#[derive(Clone, Debug, Default)]
pub(super) struct FinderState {
    purpose: Option<Purpose>,
    list: PickList,
}

impl FinderState {
    /// Opens it to add a line behind another one.
    pub(super) fn open_to_add(&mut self, after: Option<LineId>) {
        self.open(Purpose::Add(after));
    }

    /// Opens it to put another ingredient into a line.
    pub(super) fn open_to_replace(&mut self, line: LineId) {
        self.open(Purpose::Replace(line));
    }

    fn open(&mut self, purpose: Purpose) {
        *self = Self {
            purpose: Some(purpose),
            ..Self::default()
        };
        self.list.open();
    }

    /// Closes it.
    pub(super) fn close(&mut self) {
        *self = Self::default();
    }

    /// Whether it is open to replace the ingredient of this line.
    pub(super) fn replaces(&self, line: &LineId) -> bool {
        matches!(&self.purpose, Some(Purpose::Replace(open)) if open == line)
    }

    /// Whether it is open to add a line.
    pub(super) fn adds(&self) -> bool {
        matches!(self.purpose, Some(Purpose::Add(_)))
    }
}

/// The most that the list takes before it scrolls, in points.
const LIST: f32 = 75.0 * grid::STEP;

/// Shows the list below a response while it is open.
pub(super) fn finder_ui(
    below: &Response,
    screen: &Screen<'_>,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let mut open = true;
    Popup::from_response(below)
        .id(egui::Id::unique("ingredient finder"))
        .open_bool(&mut open)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(380.0)
        .show(|ui| list_ui(ui, screen, finder, view, actions));
    if !open && !finder.list.is_opening() {
        finder.close();
    }
}

fn list_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.set_width(380.0);
    let current = replaced(screen, finder);
    if current.is_some() {
        replace_words_ui(ui, screen, finder, view, actions);
        if finder.purpose.is_none() {
            return;
        }
    }
    let found = choices(screen.book, &finder.list.text, current);
    finder.list.walk(ui, found.len());
    let speaker = screen.speaker;
    let field = finder.list.field_ui(
        ui,
        "find-an-ingredient",
        speaker.word("recipe-sheet-find"),
        speaker.word("recipe-sheet-find-hint"),
    );
    let entered = finder.list.entered(ui, &field);
    let clicked = finder
        .list
        .rows_ui(ui, LIST, found.len(), grid::TARGET, |ui, at, is_chosen| {
            choice_ui(ui, speaker, &found[at], is_chosen, current)
        });
    if found.is_empty() {
        ui.label(speaker.word("recipe-sheet-find-none"));
    }
    let taken = entered.or(clicked).and_then(|at| found.get(at));
    let taken = taken.and_then(|choice| choice.taken(screen.book, speaker));
    if let Some((ingredient, edits)) = taken {
        take(screen, &ingredient, edits, finder, view, actions);
    } else if ui.input(|input| input.key_pressed(Key::Escape)) {
        finder.close();
    }
}

/// The ingredient that another one would replace.
fn replaced<'screen>(
    screen: &'screen Screen<'_>,
    finder: &FinderState,
) -> Option<&'screen Ingredient> {
    let Some(Purpose::Replace(line)) = &finder.purpose else {
        return None;
    };
    let line = screen.balance.resolved.line(line)?;
    screen.book.ingredient(&line.ingredient).map(AsRef::as_ref)
}

/// What a choice in the list does, and the way to a swap for those who want more than that.
fn replace_words_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let words = screen.speaker.word("recipe-sheet-equal-measures");
        ui.label(
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        let swap = RichText::new(screen.speaker.word("recipe-sheet-swap"))
            .font(TypeStyle::Small.font_id())
            .color(palette.accent);
        let button = egui::Button::new(swap).frame_when_inactive(false);
        if ui
            .add(button)
            .on_hover_text(UiCommand::SwapLine.tooltip(screen.speaker))
            .clicked()
        {
            finder.close();
            line_command(UiCommand::SwapLine, screen, view, actions);
        }
    });
}

/// Puts the ingredient that was found, or begun, where it was wanted.
fn take(
    screen: &Screen<'_>,
    ingredient: &Ingredient,
    mut edits: Vec<Edit>,
    finder: &mut FinderState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let purpose = finder.purpose.clone();
    finder.close();
    let resolved = &screen.balance.resolved;
    let (change, focus) = match purpose {
        Some(Purpose::Replace(line)) => {
            let focus = screen.row(&line);
            view.focus_wanted = Some(focus.clone());
            let stands_there = |line: &Line| line.ingredient == ingredient.id;
            if resolved.line(&line).is_some_and(stands_there) {
                return;
            }
            (Change::Ingredient(line, ingredient.id.clone()), focus)
        }
        Some(Purpose::Add(after)) => {
            let after = after.filter(|id| resolved.entries.iter().any(|entry| entry.id() == id));
            let after = after.or_else(|| resolved.entries.last().map(|entry| entry.id().clone()));
            let line = new_line(screen, ingredient, resolved);
            let id = line.id.clone();
            view.focus_wanted = Some(screen.field_of(&id, LineField::Amount));
            view.line_in_hand = Some(id.clone());
            let focus = screen.row(&id);
            (Change::Add(after, Entry::Line(line)), focus)
        }
        None => return,
    };
    edits.push(screen.shown.change(change));
    actions.push(Action::Edit { edits, focus });
}

/// A line with a little of the ingredient: one use of the measure that it was weighed with, else 10 g or 50 ml.
fn new_line(screen: &Screen<'_>, ingredient: &Ingredient, resolved: &Resolved) -> Line {
    let stage = ingredient.usual_stage();
    let taken = |id: &LineId| {
        screen.recipe.has_entry_id(id) || resolved.entries.iter().any(|entry| entry.id() == id)
    };
    let mut line = add_line_for(screen.book, ingredient, ingredient.role, stage, taken);
    let first = match &line.amount {
        crate::book::Amount::Count(..) => 1.0,
        crate::book::Amount::Millilitres(_) => 50.0,
        _ => 10.0,
    };
    line.amount = line.amount.with_number(first);
    line
}
