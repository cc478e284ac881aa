//! The review of a recipe of another shop: what stands for its ingredients here, and what comes of it.

use egui::{Button, ComboBox, Grid, Label, RichText, Ui};

use super::review::{ReviewState, away_ui, working_ui};
use crate::edit::Edit;
use crate::exchange::{Arrival, ForeignRecipe, LineMapping, MappedTo};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, grid};
use crate::ui::words::heading_ui;
use crate::workbench::{Action, ArrivalReview, Command, Look};

/// The mappings of a recipe of another shop, and what comes of them.
pub(super) fn other_shop_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    foreign: &ForeignRecipe,
    look: &Look<ArrivalReview>,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let theirs = foreign.book.recipe(&foreign.recipe);
    let unnamed = speaker.word("cards-screen-other-shop-recipe");
    let name = theirs.map_or(unnamed.into(), |recipe| name_as_shown(&recipe.name));
    heading_ui(ui, &name);
    let shop = name_as_shown(&foreign.book.settings.shop);
    let from = say!(speaker, "cards-screen-other-shop-from", shop: shop);
    ui.label(RichText::new(from).color(palette.text_quiet));
    ui.add_space(grid::NEAR);
    let is_current = look.current().is_some();
    // What was found for the choice before stays there while the next one is worked out.
    if let Some(found) = &look.found {
        mappings_ui(ui, screen, &found.mappings, state);
        ui.add_space(grid::EASY);
    }
    if !is_current {
        working_ui(ui, speaker.word("cards-screen-arrival-looking"));
    }
    match look.found.as_deref().map(|found| &found.arrival) {
        Some(Ok((arrived, edit))) => {
            arrival_ui(ui, screen, arrived, edit, is_current, actions);
        }
        Some(Err(reason)) => {
            ui.add(Label::new(RichText::new(reason).color(palette.off_level)).wrap());
            away_ui(ui, speaker.word("cards-screen-leave"), actions);
        }
        None => away_ui(ui, speaker.word("cards-screen-leave"), actions),
    }
}

fn mappings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    mappings: &[LineMapping],
    state: &mut ReviewState,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    Grid::new("other-shop")
        .spacing(egui::vec2(grid::APART, grid::NEAR))
        .show(ui, |ui| {
            for (at, mapping) in mappings.iter().enumerate() {
                ui.label(name_as_shown(&mapping.foreign.name).as_ref());
                let name = |to: &MappedTo| mapped_words(speaker, to);
                let chosen = state.mapped().get(&mapping.foreign.ingredient);
                let now = chosen.unwrap_or(&mapping.to).clone();
                let combo = ComboBox::from_id_salt(("mapping", at))
                    .selected_text(name(&now))
                    .width(240.0)
                    .show_ui(ui, |ui| {
                        let ours = mapping.candidates.iter().cloned().map(MappedTo::Ours);
                        for to in ours.chain([MappedTo::Added]) {
                            if ui.selectable_label(now == to, name(&to)).clicked() {
                                let theirs = mapping.foreign.ingredient.clone();
                                state.map_theirs(theirs, to);
                            }
                        }
                    });
                let name = name_as_shown(&mapping.foreign.name);
                combo
                    .response
                    .accessible_name(say!(speaker, "cards-screen-mapping-field", ingredient: name));
                let why = RichText::new(speaker.mapping_reason(mapping));
                ui.label(why.color(palette.text_quiet));
                ui.end_row();
            }
        });
    copy_ui(ui, speaker.word("cards-screen-mappings-table"), || {
        let heads = [
            "cards-screen-mappings-table-theirs",
            "cards-screen-mappings-table-here",
            "cards-screen-mappings-table-why",
        ];
        let mut table = Table::new(heads.map(|head| speaker.word(head)));
        for mapping in mappings {
            table.row([
                Cell::words(&name_as_shown(&mapping.foreign.name)),
                Cell::words(&mapped_words(speaker, &mapping.to)),
                Cell::words(&speaker.mapping_reason(mapping)),
            ]);
        }
        table
    });
}

/// What stands for an ingredient of another shop.
fn mapped_words(speaker: Speaker<'_>, to: &MappedTo) -> String {
    match to {
        MappedTo::Ours(id) => speaker.ingredient(id),
        MappedTo::Added => speaker.word("cards-screen-mapping-added").to_owned(),
    }
}

/// Amount and ingredient of each line, as this shop would make it.
fn arrived_lines(screen: &Screen<'_>, arrived: &Arrival) -> Vec<[String; 2]> {
    let entries = arrived.recipe.entries.iter();
    let words = |line: &crate::book::Line| {
        let ours = screen.book.ingredient(&line.ingredient).map(AsRef::as_ref);
        let mut added = arrived.added.iter();
        let item = ours.or_else(|| added.find(|item| item.id == line.ingredient));
        let name = item.map_or_else(
            || line.ingredient.to_string(),
            |item| name_as_shown(&item.full_name()).into_owned(),
        );
        [screen.speaker.amount(&line.amount), name]
    };
    entries
        .filter_map(|entry| entry.line())
        .map(words)
        .collect()
}

fn arrival_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    arrived: &Arrival,
    edit: &Edit,
    is_current: bool,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("cards-screen-arrival"));
    let lines = arrived_lines(screen, arrived);
    for [amount, name] in &lines {
        ui.label(say!(speaker, "cards-screen-arrival-line", amount: amount, ingredient: name));
    }
    copy_ui(ui, speaker.word("cards-screen-arrival-table"), || {
        let heads = [
            "cards-screen-arrival-table-amount",
            "cards-screen-arrival-table-ingredient",
        ];
        let mut table = Table::new(heads.map(|head| speaker.word(head)));
        for line in &lines {
            table.row(line.each_ref().map(|words| Cell::words(words)));
        }
        table
    });
    ui.add_space(grid::TIGHT);
    ui.label(difference_words(speaker, arrived));
    let words = RichText::new(speaker.arrival(arrived)).color(palette.text_quiet);
    ui.add(Label::new(words).wrap());
    ui.add_space(grid::EASY);
    ui.horizontal(|ui| {
        let words = RichText::new(speaker.word("cards-screen-add-recipe"));
        let button = Button::new(words.color(palette.on_accent)).fill(palette.accent);
        if ui.add_enabled(is_current, button).clicked() {
            actions.push(Action::Command(Command::TakeRecipe(Box::new(edit.clone()))));
        }
        away_ui(ui, speaker.word("cards-screen-leave"), actions);
    });
}

/// How far the recipe is from the standard of the other shop, with the amounts as they are now and as they were.
fn difference_words(speaker: Speaker<'_>, arrived: &Arrival) -> String {
    let (after, before) = (arrived.difference.distance, arrived.plain.distance);
    let known = match (after, before) {
        (Some(_), Some(_)) => "both",
        (Some(_), None) => "after",
        (None, Some(_)) => "before",
        (None, None) => "neither",
    };
    let steps =
        |distance: Option<f64>| distance.map_or_else(String::new, |steps| speaker.number(steps, 2));
    say!(
        speaker,
        "cards-screen-arrival-difference",
        known: known,
        steps: steps(after),
        before: steps(before),
    )
}
