//! The strip on top: the book and its menu, one step back and forth, the areas of work, day or night.

use egui::{Align, Button, Layout, RichText, Ui, vec2};

use super::book_commands::carry_out;
use super::state::SLIM;
use crate::book::Severity;
use crate::quantity::{TemperatureUnit, VolumeUnit, cut_in_the_middle, name_as_shown};
use crate::say::{Language, Speaker, say};
use crate::ui::area::Area;
use crate::ui::book_in_hand::BookInHand;
use crate::ui::commands::UiCommand;
use crate::ui::icons::{Icon, icon_button, paint};
use crate::ui::safekeeping;
use crate::ui::theme::{self, Appearance, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name::width_of;
use crate::ui::words::small_heading_ui;
use crate::workbench::{Action, Command, Intent, Sample};

/// The part of the strip that the name of the book may take.
const TITLE: f32 = 0.2;
/// Room for the menu of the areas that do not fit, in points.
const MORE: f32 = 27.0 * grid::STEP;

pub(super) fn top_strip_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = in_hand.speaker;
    ui.horizontal_centered(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        list_toggle_ui(ui, speaker, view);
        book_menu_ui(ui, in_hand, view, actions);
        ui.add_space(grid::NEAR);
        step_button_ui(ui, speaker, Step::Undo, in_hand.undo, actions);
        step_button_ui(ui, speaker, Step::Redo, in_hand.redo, actions);
        let hover = UiCommand::LookUp.tooltip(speaker);
        let name = speaker.word("strip-find");
        if icon_button(ui, Icon::Find, name, &hover).clicked() {
            carry_out(UiCommand::LookUp, in_hand.book, view, in_hand.home, actions);
        }
        ui.add_space(grid::EASY);
        // From left to right like the rest, so that Tab goes the way the eye does.
        let button = egui::TextStyle::Button.resolve(ui.style());
        let keyboard = speaker.word("strip-keyboard");
        let keys_width = width_of(ui, keyboard, &button) + 2.0 * ui.spacing().button_padding.x;
        let needed = keys_width + grid::TIGHT + grid::TARGET + grid::NEAR;
        area_tabs_ui(ui, in_hand, view, needed);
        ui.add_space((ui.available_width() - needed).max(0.0));
        ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
            if ui
                .add(Button::new(keyboard).frame_when_inactive(false))
                .on_hover_text(UiCommand::ShowKeys.tooltip(speaker))
                .clicked()
            {
                carry_out(
                    UiCommand::ShowKeys,
                    in_hand.book,
                    view,
                    in_hand.home,
                    actions,
                );
            }
            let (icon, message) = match view.appearance {
                Appearance::Light => (Icon::Moon, "strip-show-dark"),
                Appearance::Dark => (Icon::Contrast, "strip-show-contrast"),
                Appearance::Contrast => (Icon::Contrast, "strip-show-contrast-by-day"),
                Appearance::ContrastByDay => (Icon::Sun, "strip-show-light"),
            };
            let words = speaker.word(message);
            if icon_button(ui, icon, words, words).clicked() {
                view.appearance = view.appearance.next();
                ui.ctx().request_repaint();
            }
        });
    });
}

fn list_toggle_ui(ui: &mut Ui, speaker: Speaker<'_>, view: &mut ViewState) {
    let open = view
        .list_open
        .unwrap_or(ui.ctx().content_rect().width() >= SLIM);
    let words = speaker.word(if open {
        "strip-hide-list"
    } else {
        "strip-show-list"
    });
    if icon_button(ui, Icon::SideColumn, words, words).clicked() {
        view.list_open = Some(!open);
    }
}

/// The title of the book opens its menu.
fn book_menu_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let shop = &in_hand.book.settings.shop;
    let name = if shop.is_empty() {
        in_hand.title.as_str()
    } else {
        shop.as_str()
    };
    let font = TypeStyle::Heading.font_id();
    let (whole, room) = (name_as_shown(name), ui.available_width() * TITLE);
    let name = cut_in_the_middle(&whole, |name| width_of(ui, name, &font) <= room);
    // Room for the sign behind the name.
    let title = RichText::new(format!("{name}\u{a0}\u{a0}\u{a0}\u{a0}\u{a0}"))
        .font(TypeStyle::Heading.font_id())
        .color(palette.text_strong);
    let button = Button::new(title).frame_when_inactive(false);
    let menu = egui::containers::menu::MenuButton::from_button(button);
    let (response, _) = menu.ui(ui, |ui| menu_items_ui(ui, in_hand, view, actions));
    chevron(ui, &response, palette.text_quiet);
    let response = response
        .accessible_name(in_hand.speaker.word("strip-book"))
        .on_hover_text(say!(in_hand.speaker, "strip-book-does", book: &in_hand.title));
    if *name != *whole {
        response.on_hover_text(&*whole);
    }
}

fn menu_items_ui(
    ui: &mut Ui,
    in_hand: &BookInHand<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.set_min_width(260.0);
    let speaker = in_hand.speaker;
    for command in [
        UiCommand::NewBook,
        UiCommand::OpenBook,
        UiCommand::Save,
        UiCommand::SaveAs,
        UiCommand::LookUp,
    ] {
        let item = Button::new(command.label(speaker)).shortcut_text(command.menu_keys(speaker));
        if ui.add(item).clicked() {
            carry_out(command, in_hand.book, view, in_hand.home, actions);
        }
    }
    safekeeping::menu_items_ui(ui, in_hand.has_left_work, view, actions);
    units_ui(ui, speaker, view);
    languages_ui(ui, speaker, view);
    heading_ui(ui, speaker.word("strip-samples"));
    for sample in Sample::ALL {
        if ui.button(sample.name(speaker)).clicked() {
            actions.push(Action::Command(Command::Do(Intent::OpenSample(sample))));
        }
    }
    if !view.recent.is_empty() {
        heading_ui(ui, speaker.word("strip-recent"));
    }
    for path in &view.recent {
        let name = path.file_name().map_or_else(
            || path.display().to_string(),
            |name| name.to_string_lossy().into_owned(),
        );
        if ui
            .button(name)
            .on_hover_text(path.display().to_string())
            .clicked()
        {
            actions.push(Action::Command(Command::Do(Intent::Open(path.clone()))));
        }
    }
}

/// What temperatures and volumes are read in.
fn units_ui(ui: &mut Ui, speaker: Speaker<'_>, view: &mut ViewState) {
    heading_ui(ui, speaker.word("strip-units"));
    ui.horizontal(|ui| {
        let before = view.units;
        for unit in TemperatureUnit::ALL {
            let words = say!(speaker, "strip-temperatures-in", unit: unit.symbol());
            ui.selectable_value(&mut view.units.temperature, unit, unit.symbol())
                .accessible_name(words)
                .on_hover_text(UiCommand::OtherDegrees.tooltip(speaker));
        }
        ui.add_space(grid::EASY);
        for unit in VolumeUnit::ALL {
            let words = say!(speaker, "strip-volumes-in", unit: unit.symbol());
            ui.selectable_value(&mut view.units.volume, unit, unit.symbol())
                .accessible_name(words)
                .on_hover_text(UiCommand::OtherVolumes.tooltip(speaker));
        }
        if view.units != before {
            // What is half typed was meant in the other unit.
            view.drafts.clear();
        }
    });
}

/// The languages that have every message; nothing is asked while there is only one.
fn languages_ui(ui: &mut Ui, speaker: Speaker<'_>, view: &mut ViewState) {
    let languages: Vec<Language> = Language::all().filter(|one| one.is_whole()).collect();
    if languages.len() < 2 {
        return;
    }
    heading_ui(ui, speaker.word("strip-language"));
    ui.horizontal_wrapped(|ui| {
        for language in languages {
            ui.selectable_value(&mut view.language, language, language.name());
        }
    });
}

fn heading_ui(ui: &mut Ui, words: &str) {
    ui.add_space(grid::NEAR);
    small_heading_ui(ui, words);
}

/// A way through the steps.
#[derive(Clone, Copy)]
enum Step {
    Undo,
    Redo,
}

/// Undo or redo; the tooltip names the step.
fn step_button_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    way: Step,
    step: Option<&str>,
    actions: &mut Vec<Action>,
) {
    let (icon, command, action) = match way {
        Step::Undo => (Icon::Undo, UiCommand::Undo, Command::Undo),
        Step::Redo => (Icon::Redo, UiCommand::Redo, Command::Redo),
    };
    let keys = command.menu_keys(speaker);
    let words = match (way, step.map(name_as_shown)) {
        (Step::Undo, Some(step)) => say!(speaker, "strip-undo", step: step, keys: keys),
        (Step::Redo, Some(step)) => say!(speaker, "strip-redo", step: step, keys: keys),
        (Step::Undo, None) => speaker.word("strip-nothing-to-undo").to_owned(),
        (Step::Redo, None) => speaker.word("strip-nothing-to-redo").to_owned(),
    };
    ui.add_enabled_ui(step.is_some(), |ui| {
        if icon_button(ui, icon, command.label(speaker), &words)
            .on_disabled_hover_text(&words)
            .clicked()
        {
            actions.push(Action::Command(action));
        }
    });
}

/// The areas of work; those that have no room stand in a menu behind the others, `reserved` being kept for what follows.
fn area_tabs_ui(ui: &mut Ui, in_hand: &BookInHand<'_>, view: &mut ViewState, reserved: f32) {
    let speaker = in_hand.speaker;
    let mut tabs: Vec<(Area, String)> = Area::TABS
        .map(|area| (area, UiCommand::GoTo(area).label(speaker).to_owned()))
        .into();
    let has_errors = in_hand
        .findings
        .iter()
        .any(|finding| finding.severity == Severity::Error);
    let count = in_hand.findings.len() + in_hand.drifted.len();
    if count > 0 {
        let words = say!(speaker, "strip-findings", count: count);
        tabs.push((Area::Findings, words));
    }
    let around = 2.0 * ui.spacing().button_padding.x + ui.spacing().item_spacing.x;
    let widths: Vec<f32> = tabs
        .iter()
        .map(|(_, words)| width_of(ui, words, &TypeStyle::Strong.font_id()) + around)
        .collect();
    let room = ui.available_width() - reserved;
    let fitting = fitting(&widths, room, MORE);
    for (area, words) in &tabs[..fitting] {
        let warns = *area == Area::Findings && has_errors;
        let tab = tab_ui(ui, words, view.area == *area, warns);
        let keys = UiCommand::GoTo(*area).keys_in_words(speaker);
        if tab.on_hover_text(keys).clicked() {
            view.area = *area;
        }
    }
    let Some(hidden) = tabs.get(fitting..).filter(|hidden| !hidden.is_empty()) else {
        return;
    };
    let open = hidden.iter().find(|(area, _)| *area == view.area);
    let words = open.map_or(speaker.word("strip-more"), |(_, words)| words.as_str());
    let palette = theme::palette(ui.visuals());
    let colour = if open.is_some() {
        palette.text_strong
    } else {
        palette.text_quiet
    };
    // Room for the sign behind the word.
    let text = RichText::new(format!("{words}\u{a0}\u{a0}\u{a0}\u{a0}\u{a0}")).color(colour);
    let menu = ui.menu_button(text, |ui| {
        for (area, words) in hidden {
            let keys = UiCommand::GoTo(*area).keys_in_words(speaker);
            let tab = ui.selectable_label(view.area == *area, words);
            if tab.on_hover_text(keys).clicked() {
                view.area = *area;
                ui.close();
            }
        }
    });
    let response = menu.response;
    chevron(ui, &response, palette.text_quiet);
    response.accessible_name(speaker.word("strip-more-screens"));
}

/// The sign of a menu at the end of its button.
fn chevron(ui: &Ui, button: &egui::Response, colour: egui::Color32) {
    let middle = egui::pos2(
        button.rect.right() - grid::EASY - grid::NEAR,
        button.rect.center().y + 1.0,
    );
    let rect = egui::Rect::from_center_size(middle, vec2(14.0, 14.0));
    paint(ui.painter(), rect, Icon::ChevronDown, colour);
}

/// How many of these widths fit side by side, when what does not fit needs `more` behind them.
fn fitting(widths: &[f32], room: f32, more: f32) -> usize {
    if widths.iter().sum::<f32>() <= room {
        return widths.len();
    }
    let mut taken = 0.0;
    let fits = |width: &&f32| {
        taken += **width;
        taken + more <= room
    };
    widths.iter().take_while(fits).count()
}

/// A word with a line under it when it is the one that is open.
fn tab_ui(ui: &mut Ui, words: &str, open: bool, warns: bool) -> egui::Response {
    let palette = theme::palette(ui.visuals());
    let colour = match (open, warns) {
        (_, true) => palette.off_level,
        (true, _) => palette.text_strong,
        _ => palette.text_quiet,
    };
    let style = if open {
        TypeStyle::Strong
    } else {
        TypeStyle::Body
    };
    let text = RichText::new(words).font(style.font_id()).color(colour);
    let response = ui.add(
        Button::selectable(open, text)
            .frame_when_inactive(false)
            .fill(egui::Color32::TRANSPARENT),
    );
    if open {
        let line = response.rect.x_range().shrink(grid::EASY);
        ui.painter().hline(
            line,
            response.rect.bottom(),
            egui::Stroke::new(2.0, palette.accent),
        );
    }
    response
}

#[cfg(test)]
mod tests {
    use super::fitting;

    #[test]
    fn the_menu_gets_its_room_only_when_it_is_needed() {
        assert_eq!(fitting(&[50.0, 50.0, 50.0], 150.0, 40.0), 3);
        assert_eq!(fitting(&[50.0, 50.0, 50.0], 149.0, 40.0), 2);
        assert_eq!(fitting(&[50.0, 50.0, 50.0], 100.0, 60.0), 0);
    }
}
