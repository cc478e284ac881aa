//! The column on the right: how the version stands to the standard, its figures, and the cup.

use egui::{Label, RichText, ScrollArea, Ui, vec2};

use super::cups_sheet::cups_sheet_ui;
use super::state::CupsState;
use crate::book::State;
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::dialog::Dialog;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::{cup, figure_list, level};
use crate::ui::words::heading_ui;
use crate::workbench::{Action, Standard};

/// Part of the height of the column that the cup takes, and the bounds of it in points.
const CUP_PART: f32 = 0.42;
const CUP: std::ops::RangeInclusive<f32> = 232.0..=300.0;

pub(super) fn level_column_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    with_cup: bool,
    state: (&mut CupsState, &mut ViewState),
    actions: &mut Vec<Action>,
) {
    ScrollArea::vertical()
        .id_salt("level column")
        .auto_shrink(false)
        .show(ui, |ui| {
            level_and_figures_ui(ui, screen, with_cup, state, actions);
        });
}

/// The same below the recipe, where a window has no room for two columns.
pub(super) fn level_below_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: (&mut CupsState, &mut ViewState),
    actions: &mut Vec<Action>,
) {
    level_and_figures_ui(ui, screen, true, state, actions);
}

fn level_and_figures_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    with_cup: bool,
    (cups, view): (&mut CupsState, &mut ViewState),
    actions: &mut Vec<Action>,
) {
    let room = ui.clip_rect().height();
    match screen.standard {
        Some(standard) => {
            standard_ui(ui, screen, standard);
            level::level_ui(
                ui,
                &standard.difference,
                screen.speaker.word("shell-the-standard"),
                screen.speaker,
            );
        }
        None => nothing_approved_ui(ui, screen, view),
    }
    if screen.balance.resolved.lines().next().is_some() {
        ui.add_space(grid::TIGHT);
        cups_sheet_ui(ui, screen, cups, actions);
    }
    ui.add_space(grid::APART);
    // Before the figures: behind them a low window would not show it.
    if with_cup && screen.balance.resolved.cup.is_some() {
        let height = (room * CUP_PART).clamp(*CUP.start(), *CUP.end());
        let size = vec2(ui.available_width(), height);
        if let Some(line) = cup::cup_ui(ui, screen, size) {
            view.line_in_hand = Some(line);
        }
        ui.add_space(grid::APART);
    }
    figure_list::figure_list_ui(ui, screen);
    ui.add_space(grid::EASY);
}

/// The cup in a column of its own.
pub(super) fn cup_column_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState) {
    if screen.balance.resolved.cup.is_none() {
        return;
    }
    let width = ui.available_width();
    let size = vec2(
        width,
        (width * 1.05)
            .min(ui.available_height() - grid::EASY)
            .max(220.0),
    );
    if let Some(line) = cup::cup_ui(ui, screen, size) {
        view.line_in_hand = Some(line);
    }
}

/// Which version is the standard, who approved it and why.
fn standard_ui(ui: &mut Ui, screen: &Screen<'_>, standard: &Standard) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let (date, by) = (&standard.date, &standard.by);
    let words = match &standard.version {
        None => say!(speaker, "shell-compared-with-original", date: date, by: by),
        Some(id) => {
            let name = screen.recipe.version(id).map_or_else(
                || id.to_string(),
                |version| name_as_shown(&version.name).into_owned(),
            );
            say!(speaker, "shell-compared-with", version: name, date: date, by: by)
        }
    };
    let quiet = |words: String| {
        RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet)
    };
    let response = ui
        .add(Label::new(quiet(words)).wrap())
        .explained(Term::Standard);
    let mut more = Vec::new();
    if !standard.reason.is_empty() {
        more.push(standard.reason.as_str());
    }
    if !standard.knows_its_figures {
        more.push(speaker.word("shell-standard-of-first-figures"));
    }
    if !more.is_empty() {
        response.on_hover_text(more.join("\n"));
    }
    ui.add_space(grid::TIGHT);
}

fn nothing_approved_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    heading_ui(ui, screen.speaker.word("shell-no-standard")).explained(Term::Standard);
    let is_empty = screen.balance.resolved.lines().next().is_none();
    let recipe = screen.recipe;
    let marked = || {
        let mut versions = recipe.versions.iter().map(|version| Some(&version.id));
        recipe.is_only_marked(None) || versions.any(|version| recipe.is_only_marked(version))
    };
    let words = screen.speaker.word(if is_empty {
        "shell-no-standard-empty"
    } else if recipe.is_only_marked(screen.shown.version.as_ref()) {
        "shell-no-standard-marked"
    } else if marked() {
        "shell-no-standard-other-marked"
    } else {
        "shell-no-standard-why"
    });
    ui.add(Label::new(RichText::new(words).color(palette.text_quiet)).wrap());
    let retired = screen.recipe.state_of(screen.shown.version.as_ref()) == Some(State::Retired);
    let approve = screen.speaker.word("shell-approve-version");
    if !retired && !is_empty && ui.button(approve).clicked() {
        view.dialog = Some(Dialog::approve(screen));
    }
}
