//! The sugar ladder as a table: a row for each level that the shop names, with the part that can't be taken out.

use egui::{Color32, Rect, RichText, Sense, Stroke, Ui, WidgetInfo, pos2, vec2};

use super::kept::{keep, name_ui};
use super::model;
use crate::balance::Measurand;
use crate::quantity::show_number;
use crate::say::{Speaker, say};
use crate::swap::{Adapted, Ladder, Offer, Rung};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::swap_area::{Parts, progress_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::level::overall_words;
use crate::ui::widgets::level_strip_ui;
use crate::ui::words::{heading_ui, paragraph_ui};
use crate::workbench::{Action, Look};

/// Room for the name of a level, in points.
const NAME: f32 = 22.0 * grid::STEP;
/// Room for the bar of sugar, in points.
const BAR: f32 = 36.0 * grid::STEP;
/// Room for the figure behind the bar, in points.
const FIGURE: f32 = 25.0 * grid::STEP;
/// Height of the bar, in points.
const BAR_HEIGHT: f32 = 3.0 * grid::STEP;

/// The whole table.
pub(super) fn rungs_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    look: &Look<Option<Ladder>>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    heading_ui(ui, speaker.word("variations-ladder"));
    progress_ui(ui, look.state, Parts::Levels, actions);
    let Some(ladder) = look.current().and_then(Option::as_ref) else {
        return;
    };
    for reason in &ladder.reasons {
        let reason = speaker.no_levels(reason);
        let words = say!(speaker, "variations-no-levels", reason: reason);
        paragraph_ui(ui, words, palette.caution);
    }
    if ladder.rungs.is_empty() {
        return;
    }
    paragraph_ui(ui, model::floor_words(speaker, ladder), palette.text_normal);
    legend_ui(ui, speaker);
    ui.add_space(grid::NEAR);
    for rung in &ladder.rungs {
        rung_ui(ui, screen, ladder, rung, view, actions);
        ui.add_space(grid::NEAR);
    }
    let table = speaker.word("variations-ladder-table");
    copy_ui(ui, table, || as_table(screen, ladder));
    ui.add_space(grid::NEAR);
}

/// The levels for a spreadsheet.
fn as_table(screen: &Screen<'_>, ladder: &Ladder) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "variations-column-level",
        "variations-column-sugar",
        "variations-column-floor",
        "variations-column-sweetness",
        "variations-column-target",
        "variations-column-amounts",
        "variations-column-taste-target",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    let figure = |value: Option<f64>| match value {
        Some(value) => Cell::figure(&show_number(value, 1)),
        None => Cell::words(speaker.word("variations-not-known")),
    };
    for rung in &ladder.rungs {
        let level = Cell::words(&screen.speaker.level_name(&rung.level));
        match &rung.drink {
            Ok(drink) => table.row([
                level,
                figure(model::sugar(&drink.balance)),
                figure(model::sugar(&ladder.floor)),
                figure(drink.balance.figures.complete(Measurand::Sweetness)),
                figure(Some(rung.aim)),
                Cell::words(&model::amounts(screen, drink)),
                Cell::words(&overall_words(&drink.difference, screen.speaker)),
            ]),
            Err(reason) => {
                let reason = speaker.unadaptable(reason);
                let words = say!(speaker, "variations-not-possible-cell", reason: reason);
                table.row([level, Cell::words(&words)]);
            }
        }
    }
    table
}

/// What the two parts of a bar are.
fn legend_ui(ui: &mut Ui, speaker: Speaker<'_>) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        for (colour, words, term) in [
            (
                palette.roles.flavour,
                "variations-legend-floor",
                Some(Term::SugarFloor),
            ),
            (palette.roles.sweetener, "variations-legend-sweetener", None),
        ] {
            let (rect, _) = ui.allocate_exact_size(vec2(grid::EASY, grid::EASY), Sense::hover());
            ui.painter().rect_filled(rect.shrink(1.0), 2.0, colour);
            let words = RichText::new(speaker.word(words)).font(TypeStyle::Small.font_id());
            ui.label(words.color(palette.text_quiet)).explained(term);
            ui.add_space(grid::NEAR);
        }
    });
}

fn rung_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    ladder: &Ladder,
    rung: &Rung,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let level = &speaker.level_name(&rung.level);
    let wanted = model::level_version(speaker, level);
    let mut keep_clicked = |drink| keep(screen, drink, &wanted, view, actions);
    let reason = match &rung.drink {
        Ok(drink) => {
            let row = Row {
                drink,
                aim: rung.aim,
                name: Some(level),
                keep: say!(speaker, "variations-keep-as-version", name: level),
                words: model::amounts(screen, drink),
            };
            if row_ui(ui, speaker, ladder, &row) {
                keep_clicked(drink);
            }
            return;
        }
        Err(reason) => speaker.unadaptable(reason),
    };
    ui.label(RichText::new(level).font(TypeStyle::Strong.font_id()));
    let words = say!(speaker, "variations-not-possible", reason: reason);
    paragraph_ui(ui, words, palette.caution);
    for Offer { means, drink } in &rung.offers {
        let means = speaker.means(means);
        let amounts = model::amounts(screen, drink);
        let row = Row {
            drink,
            aim: rung.aim,
            name: None,
            keep: say!(speaker, "variations-keep-by-means", name: level, means: &means),
            words: say!(speaker, "variations-offer", means: means, amounts: amounts),
        };
        if row_ui(ui, speaker, ladder, &row) {
            keep_clicked(drink);
        }
    }
}

/// A drink at a level, or one that comes near a level that whole measures miss.
struct Row<'frame> {
    drink: &'frame Adapted,
    /// Sweetness that the level asks for, g/100 ml.
    aim: f64,
    /// What stands before the bar; `None` under a level that is named above.
    name: Option<&'frame str>,
    /// What the button does, as a screen reader says it.
    keep: String,
    /// How the drink is had.
    words: String,
}

/// The row of a drink; tells whether it is to be kept.
fn row_ui(ui: &mut Ui, speaker: Speaker<'_>, ladder: &Ladder, row: &Row<'_>) -> bool {
    let palette = theme::palette(ui.visuals());
    let drink = row.drink;
    let button = ui.horizontal(|ui| {
        match row.name {
            Some(name) => name_ui(ui, name, NAME),
            None => {
                ui.allocate_exact_size(vec2(NAME, grid::TARGET), Sense::hover());
            }
        }
        bar_ui(ui, speaker, ladder, drink);
        let target = speaker.word("variations-level-target");
        level_strip_ui(ui, &drink.difference, target, speaker);
        let button = egui::Button::new(speaker.word("variations-keep"));
        ui.add_enabled(!drink.changes.is_empty(), button)
            .accessible_name(&row.keep)
            .on_hover_text(&row.keep)
            .on_disabled_hover_text(speaker.word("variations-nothing-changes"))
    });
    ui.indent(("rung", &row.keep), |ui| {
        paragraph_ui(ui, &row.words, palette.text_strong);
        let reached = drink.balance.figures.complete(Measurand::Sweetness);
        let sweetness = match reached {
            Some(sweetness) => speaker.number(sweetness, 1),
            None => speaker.word("variations-not-known").to_owned(),
        };
        let words = say!(speaker, "variations-level-words",
            sweetness: sweetness,
            target: speaker.number(row.aim, 1),
            compared: overall_words(&drink.difference, speaker));
        let small = RichText::new(words).font(TypeStyle::Small.font_id());
        ui.add(egui::Label::new(small.color(palette.text_quiet)).wrap());
    });
    button.inner.clicked()
}

/// The drinks whose bars stand in the rows of a level.
fn drinks_of(rung: &Rung) -> impl Iterator<Item = &Adapted> {
    let offered = rung.offers.iter().map(|offer| &offer.drink);
    rung.drink.iter().chain(offered)
}

/// The sugar of a rung beside the most of all: what can't be taken out, and what the sweetener adds.
fn bar_ui(ui: &mut Ui, speaker: Speaker<'_>, ladder: &Ladder, drink: &Adapted) {
    let palette = theme::palette(ui.visuals());
    let size = vec2(BAR + FIGURE, grid::TARGET);
    let (rect, response) = ui.allocate_exact_size(size, Sense::hover());
    let (Some(sugar), Some(floor)) = (model::sugar(&drink.balance), model::sugar(&ladder.floor))
    else {
        let words = speaker.word("variations-bar-not-known");
        response.widget_info(|| WidgetInfo::labeled(egui::Role::Label, true, words));
        return;
    };
    let grams = |sugar: f64| speaker.in_unit(sugar, "g", 1);
    let words = say!(speaker, "variations-bar-words", sugar: grams(sugar), floor: grams(floor));
    response.widget_info(|| WidgetInfo::labeled(egui::Role::Label, true, &words));
    let response = response.on_hover_text(&words);
    let most = ladder
        .rungs
        .iter()
        .flat_map(drinks_of)
        .filter_map(|drink| model::sugar(&drink.balance))
        .fold(sugar.max(1e-9), f64::max);
    #[expect(clippy::cast_possible_truncation, reason = "a place on the screen")]
    let x = |grams: f64| rect.left() + BAR * (grams / most).clamp(0.0, 1.0) as f32;
    let part = |from: f32, to: f32, colour: Color32| {
        let part = Rect::from_min_max(
            pos2(from, rect.center().y - BAR_HEIGHT / 2.0),
            pos2(to, rect.center().y + BAR_HEIGHT / 2.0),
        );
        ui.painter().rect_filled(part, 2.0, colour);
    };
    part(rect.left(), rect.left() + BAR, palette.fill);
    part(rect.left(), x(sugar), palette.roles.sweetener);
    part(rect.left(), x(floor.min(sugar)), palette.roles.flavour);
    let stroke = Stroke::new(grid::HAIRLINE, palette.text_strong);
    let (top, bottom) = (rect.center().y - BAR_HEIGHT, rect.center().y + BAR_HEIGHT);
    ui.painter().vline(x(floor), top..=bottom, stroke);
    ui.painter().text(
        pos2(response.rect.right(), rect.center().y),
        egui::Align2::RIGHT_CENTER,
        say!(speaker, "variations-bar", sugar: grams(sugar)),
        TypeStyle::Body.font_id(),
        palette.text_strong,
    );
}
