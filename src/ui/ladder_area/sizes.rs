//! Other sizes, hot or iced, and levels of ice: each held to the taste of the standard.

use egui::{RichText, Ui};

use super::{keep, model, name_ui, words_ui};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::swap_area::progress_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::level::overall_words;
use crate::ui::widgets::level_strip_ui;
use crate::ui::words::{heading_ui, subheading_ui};
use crate::workbench::{Action, Look, Variation, VariationKind};

/// A heading, and what stands under it.
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
    heading_ui(ui, "Sizes and ice");
    progress_ui(ui, look.state, "variations", actions);
    let Some(variations) = look.current() else {
        return;
    };
    let groups: [Group; 4] = [
        ("In another cup", |kind| {
            matches!(kind, VariationKind::Size(_))
        }),
        ("With less ice", |kind| {
            matches!(kind, VariationKind::Ice(_))
        }),
        ("Iced instead of hot", |kind| {
            matches!(kind, VariationKind::Iced(_))
        }),
        ("Hot instead of iced", |kind| {
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
        subheading_ui(ui, words);
        for variation in group {
            variation_ui(ui, screen, variation, view, actions);
        }
    }
    if !variations.is_empty() {
        copy_ui(ui, "sizes and ice", || as_table(screen, variations));
    }
}

/// The variations for a spreadsheet.
fn as_table(screen: &Screen<'_>, variations: &[Variation]) -> Table {
    let mut table = Table::new([
        "variation",
        "amounts",
        "taste against the standard",
        "remark",
    ]);
    let speaker = Speaker::new(screen.book).in_units(screen.units);
    for variation in variations {
        let (title, _) = model::variation_names(screen.book, &variation.kind, screen.units);
        let title = Cell::words(&title);
        match &variation.drink {
            Ok(drink) => table.row([
                title,
                Cell::words(&model::amounts(screen, drink)),
                Cell::words(&overall_words(&drink.difference)),
                Cell::words(&speaker.adapted(drink)),
            ]),
            Err(reason) => {
                let reason = format!("can't be made: {}", speaker.unadaptable(reason));
                table.row([title, Cell::words(&reason)]);
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
    let (title, version) = model::variation_names(screen.book, &variation.kind, screen.units);
    let speaker = Speaker::new(screen.book).in_units(screen.units);
    let drink = match &variation.drink {
        Ok(drink) => drink,
        Err(reason) => {
            name_ui(ui, &title, ui.available_width());
            ui.indent(("variation", &title), |ui| {
                let words = format!("Can't be made: {}.", speaker.unadaptable(reason));
                words_ui(ui, words, palette.caution);
            });
            return;
        }
    };
    ui.horizontal(|ui| {
        name_ui(ui, &title, NAME);
        level_strip_ui(ui, &drink.difference, "the standard, in this size");
        let keep_name = format!("Keep {title} as a new version");
        let button = ui
            .add(egui::Button::new("Keep"))
            .accessible_name(&keep_name)
            .on_hover_text(&keep_name);
        if button.clicked() {
            keep(screen, drink, &version, view, actions);
        }
    });
    ui.indent(("variation", &title), |ui| {
        words_ui(ui, model::amounts(screen, drink), palette.text_strong);
        let small = RichText::new(speaker.adapted(drink)).font(TypeStyle::Small.font_id());
        ui.add(egui::Label::new(small.color(palette.text_quiet)).wrap());
    });
    ui.add_space(grid::TIGHT);
}
