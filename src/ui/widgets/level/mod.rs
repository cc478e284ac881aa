//! The level: a drink against its standard, drawn the same way everywhere.
//!
//! One line is the standard. Each axis of taste is a short stretch of that line, lifted or lowered by its difference in
//! noticeable steps; a drink that tastes the same is one unbroken line. A whisker shows the uncertainty, the band what
//! nobody tastes.

mod labels;
mod model;
mod paint;

pub use model::{
    LevelMark, MOST_STEPS, Standing, level_words, marks_of, moved_words, overall_words,
};

use egui::{Rect, Response, Role, Sense, Ui, WidgetInfo, vec2};

use self::paint::{Drawing, Drawn, paint_strip};
use crate::balance::{AxisDifference, Difference};
use crate::book::Axis;
use crate::quantity::{DisplayUnits, show_number};
use crate::say::Speaker;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::{self, TypeStyle, grid};

/// The narrowest level, in points; a container that is narrower scrolls.
const LEAST_WIDTH: f32 = 65.0 * grid::STEP;
/// Beyond this the stretches no longer read as one line, in points.
const MOST_WIDTH: f32 = 210.0 * grid::STEP;
/// Size of the compact level, in points.
const STRIP: egui::Vec2 = vec2(30.0 * grid::STEP, grid::TARGET);

/// How long a mark takes to its new place, in seconds.
const MOVING: f32 = 0.35;

/// The level with its words, as wide as there is room. `standard_words` says what the line is: "the standard of 4 May".
pub fn level_ui(
    ui: &mut Ui,
    difference: &Difference,
    standard_words: &str,
    units: DisplayUnits,
) -> Response {
    let words = level_words(difference, standard_words);
    show(ui, difference, standard_words, &words, units, |_, _| {
        Drawn::Still
    })
}

/// The level of a drink that has just changed: every mark that moves goes from where it was, and an empty mark stays there.
pub fn level_moved_ui(
    ui: &mut Ui,
    difference: &Difference,
    before: &Difference,
    standard_words: &str,
    units: DisplayUnits,
) -> Response {
    let moved = moved_words(before, difference).join("; ");
    let moved = if moved.is_empty() {
        "No mark moves".to_owned()
    } else {
        format!("Moved: {moved}")
    };
    let words = format!("{}. {moved}", level_words(difference, standard_words));
    let marks_before = marks_of(before);
    show(ui, difference, standard_words, &words, units, |ui, mark| {
        let was = marks_before
            .iter()
            .find(|was| was.axis == mark.axis)
            .and_then(LevelMark::drawn_at);
        let (Some(was), Some(is)) = (was, mark.drawn_at()) else {
            return Drawn::Still;
        };
        let id = egui::Id::unique(("level mark", mark.axis.word().to_owned()));
        #[expect(clippy::cast_possible_truncation, reason = "a place on the screen")]
        let at = ui.animate_value_with_time(id, is as f32, MOVING);
        let at = f64::from(at);
        Drawn::Moving { was, at }
    })
}

fn show(
    ui: &mut Ui,
    difference: &Difference,
    standard_words: &str,
    words: &str,
    units: DisplayUnits,
    drawn: impl Fn(&Ui, &LevelMark) -> Drawn,
) -> Response {
    let marks = marks_of(difference);
    let drawn: Vec<Drawn> = marks.iter().map(|mark| drawn(ui, mark)).collect();
    let width = ui.available_width().clamp(LEAST_WIDTH, MOST_WIDTH);
    let drawing = Drawing::arrange(
        ui,
        &marks,
        width,
        standard_words,
        &overall_words(difference),
    );
    let (rect, response) = ui.allocate_exact_size(vec2(width, drawing.height()), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, words));
    if ui.is_rect_visible(rect) {
        drawing.paint(ui.painter(), rect, theme::palette(ui.visuals()), &drawn);
    }
    for (index, (mark, axis)) in marks.iter().zip(&difference.axes).enumerate() {
        explain_on_hover(
            ui,
            &response,
            drawing.column(rect, index),
            index,
            (mark, axis),
            units,
        );
    }
    response
}

/// A level without labels for a row of a list; its words are in its name and its tooltip.
pub fn level_strip_ui(ui: &mut Ui, difference: &Difference, standard_words: &str) -> Response {
    let (rect, response) = ui.allocate_exact_size(STRIP, Sense::hover());
    let words = level_words(difference, standard_words);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, &words));
    if ui.is_rect_visible(rect) {
        paint_strip(
            ui.painter(),
            rect,
            &marks_of(difference),
            theme::palette(ui.visuals()),
        );
    }
    response.explained(Term::Level).on_hover_ui(|ui| {
        for mark in marks_of(difference) {
            ui.label(format!("{}: {}", mark.axis.word(), mark.words()));
        }
        ui.label(overall_words(difference));
    })
}

fn explain_on_hover(
    ui: &Ui,
    whole: &Response,
    column: Rect,
    index: usize,
    (mark, axis): (&LevelMark, &AxisDifference),
    units: DisplayUnits,
) {
    let response = ui.interact(column, whole.id.with(index), Sense::hover());
    response.on_hover_ui(|ui| {
        ui.label(
            egui::RichText::new(format!("{}: {}", axis.axis.word(), mark.words()))
                .text_style(TypeStyle::Strong.into()),
        );
        let unit = units.of(axis.axis.unit());
        let figure = |value: Option<f64>| {
            value.map_or_else(
                || "not known".to_owned(),
                |value| format!("{} {}", show_fine(unit.value(value)), unit.symbol),
            )
        };
        ui.label(format!(
            "standard {}, this drink {}",
            figure(axis.standard),
            figure(axis.value)
        ));
        ui.label(format!(
            "one noticeable step is {} {}",
            show_fine(unit.difference(axis.step)),
            unit.symbol
        ));
        if let (Some(u), Some(scatter)) = (axis.u_steps, axis.scatter_steps) {
            ui.label(format!(
                "uncertainty: ± {} steps; the counter's own scatter: {} steps",
                show_number(u, 1),
                show_number(scatter, 1)
            ));
        }
        if let Some(term) = Term::of_axis(&axis.axis) {
            ui.label(term.sentence(crate::ui::words::speaker(ui.ctx())));
        }
        let source =
            egui::RichText::new(source_of(&axis.axis, units)).text_style(TypeStyle::Small.into());
        ui.label(source.color(theme::palette(ui.visuals()).text_quiet));
    });
}

/// Two decimals below ten, one below a hundred, none above.
fn show_fine(value: f64) -> String {
    let decimals = match value.abs() {
        size if size < 10.0 => 2,
        size if size < 100.0 => 1,
        _ => 0,
    };
    show_number(value, decimals)
}

fn source_of(axis: &Axis, units: DisplayUnits) -> String {
    let source = Speaker::without_book().in_units(units).step_source(axis);
    format!("Step, unless the shop has set its own: {source}")
}
