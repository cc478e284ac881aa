//! The level: a drink against its standard, drawn the same way everywhere.
//!
//! One line is the standard. Each axis of taste is a short stretch of that line, lifted or lowered by its difference in
//! noticeable steps; a drink that tastes the same is one unbroken line. A whisker shows the uncertainty, the band what
//! nobody tastes.

mod labels;
mod model;
mod paint;

pub use labels::LevelWords;
pub use model::{
    LevelMark, MOST_STEPS, MarkStanding, level_words, marks_of, moved_words, overall_words,
};

use egui::{Rect, Response, Role, Sense, Ui, WidgetInfo, vec2};

use self::paint::{Drawing, Drawn, paint_strip};
use crate::balance::{AxisDifference, Difference};
use crate::say::{Speaker, say};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::theme::{self, TypeStyle, grid};

/// The narrowest level, in points; a container that is narrower scrolls.
const LEAST_WIDTH: f32 = 56.0 * grid::STEP;
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
    speaker: Speaker<'_>,
) -> Response {
    level_with_ui(ui, difference, standard_words, LevelWords::Below, speaker)
}

/// The same, with the words of the marks where they are wanted.
pub fn level_with_ui(
    ui: &mut Ui,
    difference: &Difference,
    standard_words: &str,
    labels: LevelWords,
    speaker: Speaker<'_>,
) -> Response {
    let words = || level_words(difference, standard_words, speaker);
    show(
        ui,
        difference,
        (standard_words, &words, labels),
        speaker,
        |_, _| Drawn::Still,
    )
}

/// How high a level is in a room of this width, in points: levels side by side end in one line.
pub fn level_height(
    ui: &Ui,
    difference: &Difference,
    standard_words: &str,
    width: f32,
    speaker: Speaker<'_>,
) -> f32 {
    Drawing::arrange(
        ui,
        &marks_of(difference),
        width.clamp(LEAST_WIDTH, MOST_WIDTH),
        standard_words,
        &overall_words(difference, speaker),
        LevelWords::Below,
        speaker,
    )
    .height()
}

/// The level of a drink that has just changed: every mark that moves goes from where it was, and an empty mark stays there.
pub fn level_moved_ui(
    ui: &mut Ui,
    difference: &Difference,
    before: &Difference,
    standard_words: &str,
    labels: LevelWords,
    speaker: Speaker<'_>,
) -> Response {
    let words = || {
        let level = level_words(difference, standard_words, speaker);
        let moved = moved_words(before, difference, speaker).join("; ");
        if moved.is_empty() {
            say!(speaker, "widget-level-nothing-moves", level: level)
        } else {
            say!(speaker, "widget-level-moved", level: level, moved: moved)
        }
    };
    let marks_before = marks_of(before);
    show(
        ui,
        difference,
        (standard_words, &words, labels),
        speaker,
        |ui, mark| {
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
        },
    )
}

fn show(
    ui: &mut Ui,
    difference: &Difference,
    (standard_words, read_aloud, labels): (&str, &dyn Fn() -> String, LevelWords),
    speaker: Speaker<'_>,
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
        &overall_words(difference, speaker),
        labels,
        speaker,
    );
    let (rect, response) = ui.allocate_exact_size(vec2(width, drawing.height()), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, read_aloud()));
    if ui.is_rect_visible(rect) {
        drawing.paint(ui.painter(), rect, theme::palette(ui.visuals()), &drawn);
    }
    for (part, term, area) in [
        ("legend", Term::Level, drawing.legend(rect)),
        ("overall", Term::Distance, drawing.overall(rect)),
    ] {
        ui.interact(area, response.id.with(part), Sense::hover())
            .explained(term);
    }
    for (index, (mark, axis)) in marks.iter().zip(&difference.axes).enumerate() {
        explain_on_hover(
            ui,
            &response,
            drawing.column(rect, index),
            index,
            (mark, axis),
            speaker,
        );
    }
    response
}

/// A level without labels for a row of a list; its words are in its name and its tooltip.
pub fn level_strip_ui(
    ui: &mut Ui,
    difference: &Difference,
    standard_words: &str,
    speaker: Speaker<'_>,
) -> Response {
    let (rect, response) = ui.allocate_exact_size(STRIP, Sense::hover());
    // The words are read aloud and nowhere drawn.
    let words = || level_words(difference, standard_words, speaker);
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, words()));
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
            ui.label(mark.sentence(speaker));
        }
        ui.label(overall_words(difference, speaker));
    })
}

fn explain_on_hover(
    ui: &Ui,
    whole: &Response,
    column: Rect,
    index: usize,
    (mark, axis): (&LevelMark, &AxisDifference),
    speaker: Speaker<'_>,
) {
    let response = ui.interact(column, whole.id.with(index), Sense::hover());
    response.on_hover_ui(|ui| {
        ui.label(egui::RichText::new(mark.sentence(speaker)).text_style(TypeStyle::Strong.into()));
        let figures = AxisFigures::of(axis, speaker);
        ui.label(say!(
            speaker,
            "widget-mark-figures",
            standard: figures.standard,
            drink: figures.drink
        ));
        ui.label(say!(speaker, "widget-mark-step", step: figures.step));
        if let (Some(u), Some(scatter)) = (axis.u_steps, axis.scatter_steps) {
            ui.label(say!(
                speaker,
                "widget-mark-doubt",
                u: speaker.number(u, 1),
                scatter: speaker.number(scatter, 1)
            ));
            ui.label(Term::Whisker.sentence(crate::ui::words::speaker(ui.ctx())));
        }
        if let Some(term) = Term::of_axis(&axis.axis) {
            ui.label(term.sentence(crate::ui::words::speaker(ui.ctx())));
        }
        let source = speaker.step_source(&axis.axis);
        let source = say!(speaker, "widget-mark-step-source", source: source);
        let source = egui::RichText::new(source).text_style(TypeStyle::Small.into());
        ui.label(source.color(theme::palette(ui.visuals()).text_quiet));
    });
}

/// The figures behind a mark, with their unit.
pub struct AxisFigures {
    /// What the standard has.
    pub standard: String,
    /// What the drink has.
    pub drink: String,
    /// One noticeable step.
    pub step: String,
    /// The same as [`Self::drink`] and [`Self::step`], without their unit.
    pub digits: [String; 2],
}

impl AxisFigures {
    /// Those of an axis.
    pub fn of(axis: &AxisDifference, speaker: Speaker<'_>) -> Self {
        let unit = speaker.units.of(axis.axis.unit());
        let with_unit = |digits: &String| {
            let symbol = speaker.unit(unit.symbol);
            format!("{digits}\u{a0}{symbol}").trim_end().to_owned()
        };
        // What is read beside each other has the same decimals.
        let values = [axis.standard, axis.value].map(|value| value.map(|value| unit.value(value)));
        let largest = values.iter().flatten().copied().map(f64::abs);
        let decimals = fine_decimals(largest.fold(0.0, f64::max));
        let digits = values.map(|value| value.map(|value| speaker.number(value, decimals)));
        let not_known = || speaker.word("widget-not-known").to_owned();
        let [standard, drink] = digits
            .each_ref()
            .map(|digits| digits.as_ref().map_or_else(not_known, with_unit));
        let step = unit.difference(axis.step);
        let step = speaker.number(step, fine_decimals(step));
        let [_, of_drink] = digits;
        Self {
            standard,
            drink,
            step: with_unit(&step),
            digits: [of_drink.unwrap_or_else(not_known), step],
        }
    }
}

/// Two decimals below ten, one below a hundred, none above.
fn fine_decimals(value: f64) -> usize {
    match value.abs() {
        size if size < 10.0 => 2,
        size if size < 100.0 => 1,
        _ => 0,
    }
}
