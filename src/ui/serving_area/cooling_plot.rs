//! The picture of a drink that cools: curve, uncertainty, thermometer readings, and the lines that it passes.

use egui::{Align2, Color32, RichText, Role, Stroke, Ui, WidgetInfo, vec2};
use egui_plot::{
    AxisHints, FilledArea, HLine, Line, LineStyle, MarkerShape, PlotPoint, PlotPoints, PlotUi,
    Points, Text,
};

use crate::balance::{CoolingLine, CoolingMilestone};
use crate::quantity::{ShownUnit, show_number};
use crate::say::{Speaker, say};
use crate::ui::theme::{self, Palette, TypeStyle, grid};
use crate::ui::widgets::facts::MOST_WIDTH;
use crate::ui::widgets::still_plot::{axis_name, still_plot};
use crate::workbench::{CoolingCourse, CoursePoint, RunCourse};

/// Height of the picture, in points.
const HEIGHT: f32 = 62.0 * grid::STEP;
/// Free room above the highest and below the lowest thing that is drawn, K.
const MARGIN: f64 = 4.0;
/// Free room before the handing over, as a part of the whole time, so that a reading at 0 is seen whole.
const BEFORE: f64 = 0.015;
/// How much of its colour the band keeps.
const BAND_PART: f32 = 0.22;
/// Radius of a reading, in points.
const READING: f32 = 4.0;

pub(super) fn cooling_plot_ui(
    ui: &mut Ui,
    course: &CoolingCourse,
    run: Option<&RunCourse>,
    speaker: Speaker<'_>,
) {
    let unit = speaker.units.of("°C");
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width().min(MOST_WIDTH);
    let minutes = course.points.last().map_or(1.0, |point| point.minutes);
    let (low, high) = range(course, run, &unit);
    let axis = |words: &str| axis_name(words, palette);
    let whole =
        |mark: egui_plot::GridMark, _: &std::ops::RangeInclusive<f64>| show_number(mark.value, 0);
    let x = (-BEFORE * minutes, minutes);
    let response = still_plot("cooling", vec2(width, HEIGHT), x, (low, high), palette)
        .custom_x_axes(vec![
            AxisHints::new_x()
                .label(axis(speaker.word("serving-head-minutes")))
                .formatter(whole),
        ])
        .custom_y_axes(vec![
            AxisHints::new_y().label(axis(unit.symbol)).formatter(whole),
        ])
        .show(ui, |plot| {
            lines_ui(plot, course, palette, minutes, speaker);
            if let Some(run) = run {
                run_ui(plot, run, palette, &unit);
            }
            curve_ui(plot, course, palette, &unit);
        })
        .response;
    response.widget_info(|| WidgetInfo::labeled(Role::Image, true, words(speaker, course, run)));
    legend_ui(ui, speaker, run, palette);
}

/// What is drawn, from the coldest to the hottest, in the unit of the axis.
fn range(course: &CoolingCourse, run: Option<&RunCourse>, unit: &ShownUnit<'_>) -> (f64, f64) {
    let lines = course
        .cooling
        .milestones
        .iter()
        .map(|milestone| milestone.celsius);
    let readings = run
        .iter()
        .flat_map(|run| run.readings.iter().map(|reading| reading.celsius));
    let band = course.points.iter().flat_map(|point| point.interval);
    let (low, high) = lines
        .chain(readings)
        .chain(band)
        .fold((f64::MAX, f64::MIN), |(low, high), value| {
            (low.min(value), high.max(value))
        });
    (unit.value(low - MARGIN), unit.value(high + MARGIN))
}

/// The named lines; their names stand on them.
fn lines_ui(
    plot: &mut PlotUi<'_>,
    course: &CoolingCourse,
    palette: &Palette,
    minutes: f64,
    speaker: Speaker<'_>,
) {
    for milestone in &course.cooling.milestones {
        let at = speaker.temperature(milestone.celsius, 0);
        let name = match milestone.line {
            CoolingLine::VeryHot => say!(speaker, "serving-cooling-line-very-hot", at: at),
            CoolingLine::Drinking => say!(speaker, "serving-cooling-line-drinking", at: at),
            CoolingLine::Lukewarm => say!(speaker, "serving-cooling-line-lukewarm", at: at),
        };
        let colour = if milestone.line == CoolingLine::Drinking {
            palette.accent
        } else {
            palette.outline
        };
        let y = speaker.units.of("°C").value(milestone.celsius);
        let line = HLine::new(format!("{:?}", milestone.line), y)
            .color(colour)
            .width(grid::HAIRLINE)
            .allow_hover(false);
        plot.hline(line);
        let text = RichText::new(name)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        // The curve comes from the upper left and goes to the lower right: a name stands where it is not.
        let (at, anchor) = if milestone.line == CoolingLine::Lukewarm {
            (0.0, Align2::LEFT_BOTTOM)
        } else {
            (minutes, Align2::RIGHT_BOTTOM)
        };
        let at = PlotPoint::new(at, y);
        let name = Text::new(format!("name-{:?}", milestone.line), at, text);
        plot.text(name.anchor(anchor).allow_hover(false));
    }
}

fn curve_ui(
    plot: &mut PlotUi<'_>,
    course: &CoolingCourse,
    palette: &Palette,
    unit: &ShownUnit<'_>,
) {
    let minutes: Vec<f64> = course.points.iter().map(|point| point.minutes).collect();
    let edge = |end: usize| -> Vec<f64> {
        let points = course.points.iter();
        points
            .map(|point| unit.value(point.interval[end]))
            .collect()
    };
    let colour = palette.accent;
    let band = FilledArea::new("uncertainty", &minutes, &edge(0), &edge(1))
        .fill_color(colour.gamma_multiply(BAND_PART))
        .stroke(Stroke::NONE)
        .allow_hover(false);
    plot.add(band);
    plot.line(curve("drink", &course.points, colour, unit).width(2.0));
}

fn curve(
    name: &str,
    points: &[CoursePoint],
    colour: Color32,
    unit: &ShownUnit<'_>,
) -> Line<'static> {
    let points: Vec<[f64; 2]> = points
        .iter()
        .map(|point| [point.minutes, unit.value(point.celsius)])
        .collect();
    Line::new(name, PlotPoints::from(points))
        .color(colour)
        .allow_hover(false)
}

/// The readings as they were taken, and the curve through them.
fn run_ui(plot: &mut PlotUi<'_>, run: &RunCourse, palette: &Palette, unit: &ShownUnit<'_>) {
    if !run.points.is_empty() {
        let line = curve("run", &run.points, palette.text_quiet, unit);
        plot.line(line.width(grid::HAIRLINE).style(LineStyle::dashed_dense()));
    }
    let points: Vec<[f64; 2]> = run
        .readings
        .iter()
        .map(|reading| [reading.minutes, unit.value(reading.celsius)])
        .collect();
    let readings = Points::new("readings", PlotPoints::from(points))
        .shape(MarkerShape::Circle)
        .filled(true)
        .radius(READING)
        .color(palette.text_strong)
        .allow_hover(false);
    plot.points(readings);
}

/// What the marks mean, in words.
fn legend_ui(ui: &mut Ui, speaker: Speaker<'_>, run: Option<&RunCourse>, palette: &Palette) {
    let has_readings = run.is_some_and(|run| !run.readings.is_empty());
    let words = speaker.word(if has_readings {
        "serving-cooling-legend-readings"
    } else {
        "serving-cooling-legend"
    });
    ui.scope(|ui| {
        ui.set_max_width(MOST_WIDTH);
        ui.label(
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
    });
}

/// The picture in a sentence.
fn words(speaker: Speaker<'_>, course: &CoolingCourse, run: Option<&RunCourse>) -> String {
    let passed = course.cooling.milestones.iter().filter_map(|milestone| {
        let minutes = if milestone.line == CoolingLine::VeryHot {
            speaker.about_and_latest(milestone)?
        } else {
            speaker.in_unit(milestone.minutes?.value, "min", 0)
        };
        let line = line_words(speaker, milestone);
        Some(say!(speaker, "serving-cooling-picture-line", line: line, minutes: minutes))
    });
    say!(
        speaker,
        "serving-cooling-picture",
        unit: speaker.units.of("°C").symbol,
        lines: passed.collect::<Vec<_>>().join(", "),
        readings: run.map_or(0, |run| run.readings.len())
    )
}

/// A line of temperature with its name: "to drinking temperature, 58 °C".
pub(super) fn line_words(speaker: Speaker<'_>, milestone: &CoolingMilestone) -> String {
    let at = speaker.temperature(milestone.celsius, 0);
    match milestone.line {
        CoolingLine::VeryHot => say!(speaker, "serving-cooling-to-very-hot", at: at),
        CoolingLine::Drinking => say!(speaker, "serving-cooling-to-drinking-at", at: at),
        CoolingLine::Lukewarm => say!(speaker, "serving-cooling-to-lukewarm", at: at),
    }
}
