//! Other sizes, hot or iced, and levels of ice: each held to the taste of the standard.

use egui::{RichText, Ui};

use super::kept::{keep, name_ui};
use super::model;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::swap_area::{Parts, progress_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::level::overall_words;
use crate::ui::widgets::level_strip_ui;
use crate::ui::words::{heading_ui, paragraph_ui, subheading_ui};
use crate::workbench::{Action, Look, Variation, VariationKind};

/// The message of a heading, and what stands under it.
type Group = (&'static str, fn(&VariationKind) -> bool);

/// Room for the name of a variation, in points.
const NAME: f32 = 50.0 * grid::STEP;

/// The list, in groups.
pub(super) fn sizes_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    look: &Look<Vec<Variation>>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("variations-sizes"));
    progress_ui(ui, look.state, Parts::Variations, actions);
    let Some(variations) = look.current() else {
        return;
    };
    let groups: [Group; 4] = [
        ("variations-in-another-cup", |kind| {
            matches!(kind, VariationKind::Size(_))
        }),
        ("variations-with-less-ice", |kind| {
            matches!(kind, VariationKind::Ice(_))
        }),
        ("variations-iced-instead", |kind| {
            matches!(kind, VariationKind::Iced(_))
        }),
        ("variations-hot-instead", |kind| {
            matches!(kind, VariationKind::Hot(_))
        }),
    ];
    for (words, belongs) in groups {
        let mut group = variations
            .iter()
            .filter(|variation| belongs(&variation.kind))
            .peekable();
        if group.peek().is_none() {
            continue;
        }
        subheading_ui(ui, speaker.word(words));
        for variation in group {
            variation_ui(ui, screen, variation, view, actions);
        }
    }
    if !variations.is_empty() {
        let table = speaker.word("variations-sizes-table");
        copy_ui(ui, table, || as_table(screen, variations));
    }
}

/// The variations for a spreadsheet.
fn as_table(screen: &Screen<'_>, variations: &[Variation]) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "variations-column-variation",
        "variations-column-amounts",
        "variations-column-taste-standard",
        "variations-column-remark",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for variation in variations {
        let (title, _) = model::variation_names(speaker, &variation.kind);
        let title = Cell::words(&title);
        match &variation.drink {
            Ok(drink) => table.row([
                title,
                Cell::words(&model::amounts(screen, drink)),
                Cell::words(&overall_words(&drink.difference, screen.speaker)),
                Cell::words(&speaker.adapted(drink)),
            ]),
            Err(reason) => {
                let reason = speaker.unadaptable(reason);
                let words = say!(speaker, "variations-not-possible-cell", reason: reason);
                table.row([title, Cell::words(&words)]);
            }
        }
    }
    table
}

fn variation_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    variation: &Variation,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let (title, version) = model::variation_names(speaker, &variation.kind);
    let drink = match &variation.drink {
        Ok(drink) => drink,
        Err(reason) => {
            name_ui(ui, &title, ui.available_width());
            ui.indent(("variation", &title), |ui| {
                let reason = speaker.unadaptable(reason);
                let words = say!(speaker, "variations-not-possible", reason: reason);
                paragraph_ui(ui, words, palette.caution);
            });
            return;
        }
    };
    ui.horizontal(|ui| {
        name_ui(ui, &title, NAME);
        let target = speaker.word("variations-size-target");
        level_strip_ui(ui, &drink.difference, target, speaker);
        let keep_name = say!(speaker, "variations-keep-as-version", name: &title);
        let button = ui
            .add(egui::Button::new(speaker.word("variations-keep")))
            .accessible_name(&keep_name)
            .on_hover_text(&keep_name);
        if button.clicked() {
            keep(screen, drink, &version, view, actions);
        }
    });
    ui.indent(("variation", &title), |ui| {
        paragraph_ui(ui, model::amounts(screen, drink), palette.text_strong);
        let small = RichText::new(speaker.adapted(drink)).font(TypeStyle::Small.font_id());
        ui.add(egui::Label::new(small.color(palette.text_quiet)).wrap());
    });
    ui.add_space(grid::TIGHT);
}
