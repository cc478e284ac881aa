//! Finding an ingredient while typing: to add a line, or to put another ingredient into one.

use std::sync::Arc;

use egui::{
    Align, Key, Layout, Popup, PopupCloseBehavior, Response, RichText, ScrollArea, Sense, Ui, vec2,
};

use crate::book::{Book, Change, Entry, Ingredient, Line, LineId, Resolved, Role, WantedWords};
use crate::edit::Edit;
use crate::quantity::name_as_shown;
use crate::swap::add_line_for;
use crate::ui::Screen;
use crate::ui::commands::UiCommand;
use crate::ui::counter_area;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::role_colour;
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
pub(in crate::ui) struct FinderState {
    purpose: Option<Purpose>,
    text: String,
    chosen: usize,
    just_opened: bool,
}

impl FinderState {
    /// Opens it to add a line behind another one.
    pub(in crate::ui) fn open_to_add(&mut self, after: Option<LineId>) {
        self.open(Purpose::Add(after));
    }

    /// Opens it to put another ingredient into a line.
    pub(in crate::ui) fn open_to_replace(&mut self, line: LineId) {
        self.open(Purpose::Replace(line));
    }

    fn open(&mut self, purpose: Purpose) {
        *self = Self {
            purpose: Some(purpose),
            just_opened: true,
            ..Self::default()
        };
    }

    /// Closes it.
    pub(in crate::ui) fn close(&mut self) {
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

/// Most rows that are listed; whoever does not find it types another letter.
const MOST_ROWS: usize = 60;

/// Shows the list below a response while it is open.
pub(super) fn finder_ui(
    below: &Response,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let mut open = true;
    Popup::from_response(below)
        .id(egui::Id::unique("ingredient finder"))
        .open_bool(&mut open)
        .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
        .width(380.0)
        .show(|ui| list_ui(ui, screen, view, actions));
    if !open && !view.finder.just_opened {
        view.finder.close();
    }
}

fn list_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    ui.set_width(380.0);
    let current = replaced(screen, &view.finder);
    if current.is_some() {
        replace_words_ui(ui, screen, view, actions);
        if view.finder.purpose.is_none() {
            return;
        }
    }
    let found = matching(screen.book, &view.finder.text, current);
    let step = ui.input(|input| {
        i32::from(input.key_pressed(Key::ArrowDown)) - i32::from(input.key_pressed(Key::ArrowUp))
    });
    let new = new_name(screen.book, &view.finder.text);
    let begin = |name: &str| Some(counter_area::new_ingredient(screen.book, name));
    let last = (found.len() + usize::from(new.is_some())).saturating_sub(1);
    view.finder.chosen = match step {
        1.. => (view.finder.chosen + 1).min(last),
        0 => view.finder.chosen.min(last),
        _ => view.finder.chosen.saturating_sub(1),
    };
    let field = egui::TextEdit::singleline(&mut view.finder.text)
        .id(egui::Id::unique("find an ingredient"))
        .hint_text("type a name or a brand")
        .desired_width(f32::INFINITY);
    let response = ui.add(field).accessible_name("Find an ingredient");
    // The first pass only measures the list, so the wish stands until the field has the keyboard.
    if response.has_focus() {
        view.finder.just_opened = false;
    } else if view.finder.just_opened {
        response.request_focus();
        ui.ctx().request_repaint();
    }
    if response.changed() {
        view.finder.chosen = 0;
    }
    let entered = response.lost_focus() && ui.input(|input| input.key_pressed(Key::Enter));
    let mut taken = if entered {
        let known = found.get(view.finder.chosen).map(|found| (*found).clone());
        known.or_else(|| begin(new.as_deref()?))
    } else {
        None
    };
    ScrollArea::vertical()
        .max_height(300.0)
        .auto_shrink([false, true])
        .show(ui, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            for (at, ingredient) in found.iter().enumerate() {
                let chosen = at == view.finder.chosen;
                let is_current = current.is_some_and(|current| current.id == ingredient.id);
                let response = ingredient_ui(ui, ingredient, chosen, is_current);
                if chosen && step != 0 {
                    response.scroll_to_me(None);
                }
                if response.clicked() {
                    taken = Some((*ingredient).clone());
                }
            }
            if let Some(name) = new.as_deref() {
                let chosen = view.finder.chosen == found.len();
                let response = new_ui(ui, name, chosen);
                if chosen && step != 0 {
                    response.scroll_to_me(None);
                }
                if response.clicked() {
                    taken = begin(name);
                }
            } else if found.is_empty() {
                ui.label("No ingredients in this book yet: type the name of the first");
            }
        });
    if let Some(ingredient) = taken {
        take(screen, &ingredient, view, actions);
    } else if ui.input(|input| input.key_pressed(Key::Escape)) {
        view.finder.close();
    }
}

/// What is typed, when it is the name of nothing in the book.
fn new_name(book: &Book, text: &str) -> Option<String> {
    let name = text.trim();
    let is_known = |known: &Arc<Ingredient>| {
        let known = [known.name.to_lowercase(), known.full_name().to_lowercase()];
        known.contains(&name.to_lowercase())
    };
    (!name.is_empty() && !book.ingredients.iter().any(is_known)).then(|| name.to_owned())
}

/// The last row: an ingredient that the book does not have yet.
fn new_ui(ui: &mut Ui, name: &str, chosen: bool) -> Response {
    let words = format!("New ingredient “{}”", name_as_shown(name));
    row_ui(ui, chosen, None, &words, |row, palette| {
        let text = RichText::new(&words).color(palette.accent);
        row.add(egui::Label::new(text).selectable(false).truncate());
    })
    .on_hover_text("Nothing is stated of it until you write down its label at the counter")
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
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let words = "Replace by equal measures; to bring the taste back use";
        ui.label(
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        let swap = RichText::new("Swap…")
            .font(TypeStyle::Small.font_id())
            .color(palette.accent);
        let button = egui::Button::new(swap).frame_when_inactive(false);
        if ui
            .add(button)
            .on_hover_text(UiCommand::SwapLine.tooltip())
            .clicked()
        {
            view.finder.close();
            super::carry_out(
                UiCommand::SwapLine,
                screen.recipe,
                screen.shown,
                &screen.balance.resolved,
                view,
                actions,
            );
        }
    });
}

/// What can be chosen: names that begin with what was typed first, of the role that is wanted first, and what stands in the
/// line before all while nothing is typed. The order of the book stays otherwise.
fn matching<'book>(
    book: &'book Book,
    text: &str,
    current: Option<&Ingredient>,
) -> Vec<&'book Ingredient> {
    let wanted = WantedWords::of(text);
    let mut found: Vec<&Ingredient> = book
        .ingredients
        .iter()
        .map(AsRef::as_ref)
        .filter(|ingredient| wanted.are_in(&format!("{} {}", ingredient.name, ingredient.brand)))
        .collect();
    let is_current =
        |ingredient: &Ingredient| current.is_some_and(|current| current.id == ingredient.id);
    let same_role =
        |ingredient: &Ingredient| current.is_some_and(|current| current.role == ingredient.role);
    found.sort_by_key(|ingredient| {
        (
            !(wanted.is_empty() && is_current(ingredient)),
            !wanted.begin(&ingredient.name),
            !same_role(ingredient),
        )
    });
    found.truncate(MOST_ROWS);
    found
}

fn ingredient_ui(ui: &mut Ui, ingredient: &Ingredient, chosen: bool, is_current: bool) -> Response {
    let (name, brand) = (
        name_as_shown(&ingredient.name),
        name_as_shown(&ingredient.brand),
    );
    let words = format!("{name} {brand}");
    row_ui(
        ui,
        chosen,
        Some(ingredient.role),
        words.trim(),
        |row, palette| {
            let name = RichText::new(name).color(palette.text_strong);
            row.add(egui::Label::new(name).selectable(false));
            let quiet = format!("{brand} · {}", ingredient.form.word());
            let quiet = if is_current {
                format!("{quiet} · in the drink now")
            } else {
                quiet
            };
            let quiet = RichText::new(quiet.trim_start_matches(" · "))
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet);
            row.add(egui::Label::new(quiet).selectable(false).truncate());
        },
    )
}

/// A row of the list: a mark of the role where there is one, then the contents; `words` are what a screen reader says.
fn row_ui(
    ui: &mut Ui,
    chosen: bool,
    role: Option<Role>,
    words: &str,
    contents: impl FnOnce(&mut Ui, &theme::Palette),
) -> Response {
    let palette = theme::palette(ui.visuals());
    let (rect, response) =
        ui.allocate_exact_size(vec2(ui.available_width(), grid::TARGET), Sense::click());
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::Button, true, chosen, words));
    if ui.is_rect_visible(rect) {
        let corner = egui::CornerRadius::same(grid::CORNER);
        if chosen {
            ui.painter().rect_filled(rect, corner, palette.selection);
        } else if response.hovered() {
            ui.painter().rect_filled(rect, corner, palette.hover);
        }
        if let Some(role) = role {
            let mark = egui::Rect::from_min_size(
                rect.min + vec2(4.0, 7.0),
                vec2(4.0, rect.height() - 14.0),
            );
            ui.painter()
                .rect_filled(mark, 2.0, role_colour(palette, role));
        }
        let inner = rect
            .with_min_x(rect.left() + 16.0)
            .with_max_x(rect.right() - 8.0);
        let builder = egui::UiBuilder::new()
            .max_rect(inner)
            .layout(Layout::left_to_right(Align::Center));
        contents(&mut ui.new_child(builder), palette);
    }
    response
}

/// Puts the ingredient that was found, or begun, where it was wanted.
fn take(
    screen: &Screen<'_>,
    ingredient: &Ingredient,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let purpose = view.finder.purpose.clone();
    view.finder.close();
    let is_new = screen.book.ingredient(&ingredient.id).is_none();
    let new = is_new.then(|| Edit::PutIngredient(ingredient.clone()));
    let recipe = &screen.recipe.id;
    let resolved = &screen.balance.resolved;
    let (change, focus) = match purpose {
        Some(Purpose::Replace(line)) => {
            let focus = super::lines::row_focus(recipe, &line);
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
            view.focus_wanted = Some(super::lines::amount_focus(recipe, &id));
            view.line_in_hand = Some(id.clone());
            let focus = super::lines::row_focus(recipe, &id);
            (Change::Add(after, Entry::Line(line)), focus)
        }
        None => return,
    };
    let edits = new.into_iter().chain([screen.shown.change(change)]);
    actions.push(Action::Edit {
        edits: edits.collect(),
        focus,
    });
}

/// A line with a little of the ingredient: one use of the measure that it was weighed with, else 10 g or 50 ml.
fn new_line(screen: &Screen<'_>, ingredient: &Ingredient, resolved: &Resolved) -> Line {
    let stage = match ingredient.role {
        Role::Topping => crate::book::Stage::Topping,
        Role::Garnish => crate::book::Stage::OnTop,
        _ => crate::book::Stage::Mixed,
    };
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

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_list_that_replaces_begins_with_what_stands_there_and_goes_on_with_its_role() {
        let book = crate::book_file::parse(include_str!("../../../sample-books/harrowmere.ron"))
            .unwrap()
            .0;
        let current = book
            .ingredients
            .iter()
            .find(|ingredient| ingredient.name.contains("Chestnut"))
            .unwrap();
        let names = |text: &str| -> Vec<(String, crate::book::Role)> {
            let found = matching(&book, text, Some(current));
            found
                .iter()
                .map(|found| (found.id.to_string(), found.role))
                .collect()
        };
        let all = names("");
        assert_eq!(all[0].0, current.id.to_string());
        assert_eq!(all[1].1, current.role);
        let last_same = all
            .iter()
            .rposition(|(_, role)| *role == current.role)
            .unwrap();
        assert!(
            all[..=last_same]
                .iter()
                .all(|(_, role)| *role == current.role)
        );
        assert!(
            names("whole milk")
                .iter()
                .all(|(id, _)| *id != current.id.to_string())
        );
    }
}
