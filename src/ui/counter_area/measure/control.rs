//! The control chart of a measure: its days with their limits, what they show, and which approved drinks move with it.

use std::sync::Arc;

use egui::{Label, RichText, Role, Ui, WidgetInfo, vec2};
use egui_plot::{AxisHints, Line, LineStyle, MarkerShape, PlotPoints, PlotUi, Points};

use crate::balance::{
    ChartDay, ControlChart, Limited, Shift, Signal, TooFewDays, control_charts, since_day,
};
use crate::book::{IngredientId, Measure, MeasureId, Reading};
use crate::quantity::rounded;
use crate::say::{Speaker, say};
use crate::swap::{Drifted, moved_as_charted};
use crate::ui::counter_area::item::Counter;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, Palette, TypeStyle, grid};
use crate::ui::widgets::form::section_ui;
use crate::ui::widgets::still_plot::{axis_name, still_plot};
use crate::ui::words::quiet_ui;
use crate::workbench::{Answers, BookQuestion};

/// Heights of the pictures of means and of spreads, in points.
const MEANS: f32 = 36.0 * grid::STEP;
const SPREADS: f32 = 22.0 * grid::STEP;
/// Radius of a day, in points.
const DAY: f32 = 4.0;
/// Free room above and below what is drawn, as a part of it.
const MARGIN: f64 = 0.12;

/// The charts of a measure.
#[derive(Clone, PartialEq, Eq, Hash)]
struct ChartsOf(MeasureId);

/// A chart, or why there is none yet, with the drinks that move.
type Charted = (Result<ControlChart, TooFewDays>, Vec<Drifted>);

impl BookQuestion for ChartsOf {
    type Answer = Arc<Vec<Charted>>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let book = answers.book();
        let Some(measure) = book.measure(&self.0) else {
            return Arc::default();
        };
        let charts = control_charts(measure).into_iter();
        // Two days are told of by their difference, above; nobody needs to hear each time that a chart would take more.
        let charts =
            charts.filter(|chart| chart.as_ref().map_or_else(|few| few.days > 2, |_| true));
        let charted = charts.map(|chart| {
            let of_chart = |chart| moved_as_charted(book, measure, chart);
            let moved = chart.as_ref().map_or_else(|_| Vec::new(), of_chart);
            (chart, moved)
        });
        Arc::new(charted.collect())
    }
}

/// The charts; the readings that stay when the measure is to count as it doses now.
pub(super) fn control_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    measure: &Measure,
) -> Option<Vec<Reading>> {
    let charts = counter.answers.to(&ChartsOf(measure.id.clone()));
    let mut kept = None;
    if charts.is_empty() {
        return kept;
    }
    section_ui(ui, counter.speaker.word("control-title"));
    for (chart, moved) in charts.iter() {
        match chart {
            Err(few) => too_few_ui(ui, counter.speaker, &measure.id, few),
            Ok(chart) => {
                let asked = chart_ui(ui, counter, &measure.id, chart, moved);
                kept = kept.or(asked.map(|since| {
                    let ingredient = chart.ingredient.as_ref();
                    since_day(measure, ingredient, &since).readings
                }));
            }
        }
        ui.add_space(grid::NEAR);
    }
    kept
}

fn name_ui(ui: &mut Ui, speaker: Speaker<'_>, id: &MeasureId, ingredient: Option<&IngredientId>) {
    let name = speaker.measured(id, ingredient);
    ui.add(Label::new(RichText::new(name).font(TypeStyle::Strong.font_id())).wrap());
}

fn too_few_ui(ui: &mut Ui, speaker: Speaker<'_>, id: &MeasureId, few: &TooFewDays) {
    name_ui(ui, speaker, id, few.ingredient.as_ref());
    quiet_ui(ui, &speaker.too_few_days(few));
}

/// A chart; the day since which the readings are to stay, when that is pressed.
fn chart_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    id: &MeasureId,
    chart: &ControlChart,
    moved: &[Drifted],
) -> Option<String> {
    let speaker = counter.speaker;
    let palette = theme::palette(ui.visuals());
    let last = chart.days.last()?;
    let name = speaker.measured(id, chart.ingredient.as_ref());
    let shift = chart.shift();
    let limits = speaker.chart_limits(chart, last);
    let shown = speaker.chart_shift(shift.as_ref());
    name_ui(ui, speaker, id, chart.ingredient.as_ref());
    let means: Vec<Option<Limited>> = chart.days.iter().map(|day| Some(day.mean)).collect();
    let spreads: Vec<Option<Limited>> = chart.days.iter().map(|day| day.spread).collect();
    let is_shown = |day: &ChartDay, of_spread: bool| {
        let mut signals = day.signals.iter();
        signals.any(|signal| (*signal == Signal::Spread) == of_spread)
    };
    let picture = say!(
        speaker,
        "control-picture",
        name: &name,
        count: chart.days.len(),
        limits: &limits,
        shift: &shown,
    );
    let half = |word: &str, values: Vec<Option<Limited>>, of_spread: bool| Half {
        axis: spreadsheet::head(speaker.word(word), "g"),
        values,
        signals: chart
            .days
            .iter()
            .map(|day| is_shown(day, of_spread))
            .collect(),
        centre: (!of_spread).then_some(chart.centre),
        dates: chart.days.iter().map(|day| day.date.clone()).collect(),
    };
    half("control-mean", means, false).ui(ui, (&name, "mean"), MEANS, palette, &picture);
    half("control-spread", spreads, true).ui(ui, (&name, "spread"), SPREADS, palette, &picture);
    quiet_ui(ui, speaker.word("control-legend"));
    wrapped_ui(ui, &limits, palette.text_normal);
    if let Some(rough) = speaker.chart_rough(chart) {
        quiet_ui(ui, &rough);
    }
    let colour = if shift.is_some() {
        palette.off_level
    } else {
        palette.text_normal
    };
    wrapped_ui(ui, &shown, colour);
    let asked = shift
        .as_ref()
        .and_then(|shift| moved_ui(ui, speaker, shift, moved));
    copy_ui(ui, speaker.word("control-table"), || {
        as_table(speaker, chart)
    });
    asked
}

fn wrapped_ui(ui: &mut Ui, words: &str, colour: egui::Color32) {
    let text = RichText::new(words).font(TypeStyle::Small.font_id());
    ui.add(Label::new(text.color(colour)).wrap());
}

/// Which drinks move, and the way to let the measure count as it doses now.
fn moved_ui(ui: &mut Ui, speaker: Speaker<'_>, shift: &Shift, moved: &[Drifted]) -> Option<String> {
    if moved.is_empty() {
        quiet_ui(ui, speaker.none_moved());
    } else {
        quiet_ui(ui, speaker.word("control-moved-about"));
        let colour = theme::palette(ui.visuals()).text_normal;
        for drink in moved {
            wrapped_ui(ui, &speaker.moved_drink(drink), colour);
        }
    }
    let words = say!(speaker, "control-keep", day: &shift.since);
    let button = ui.button(words);
    let button = button.on_hover_text(speaker.word("control-keep-hint"));
    button.clicked().then(|| shift.since.clone())
}

/// One half of a chart.
struct Half {
    axis: String,
    values: Vec<Option<Limited>>,
    signals: Vec<bool>,
    centre: Option<f64>,
    dates: Vec<String>,
}

impl Half {
    fn ui(&self, ui: &mut Ui, id: (&str, &str), height: f32, palette: &Palette, picture: &str) {
        let all = || self.values.iter().flatten();
        let ends = all().flat_map(|one| [one.value, one.limits[0], one.limits[1]]);
        let (low, high) = ends.fold((f64::MAX, f64::MIN), |(low, high), one| {
            (low.min(one), high.max(one))
        });
        if low > high {
            return;
        }
        let margin = MARGIN * (high - low).max(f64::EPSILON);
        let axis = axis_name(&self.axis, palette);
        let days = self.values.len() as f64;
        let dates = self.dates.clone();
        // Days stand in even steps; the month and the day are what tells them apart.
        let date = move |mark: egui_plot::GridMark, _: &std::ops::RangeInclusive<f64>| {
            let is_marked = |(day, _): &(u32, &String)| (f64::from(*day) - mark.value).abs() < 1e-6;
            let marked = (1..).zip(&dates).find(is_marked);
            let date = marked.map(|(_, date)| date.get(5..).unwrap_or(date).to_owned());
            date.unwrap_or_default()
        };
        let size = vec2(ui.available_width(), height);
        let (x, y) = ((0.5, days + 0.5), (low - margin, high + margin));
        let response = still_plot(id, size, x, y, palette)
            .custom_x_axes(vec![AxisHints::new_x().formatter(date)])
            .custom_y_axes(vec![AxisHints::new_y().label(axis)])
            .show(ui, |plot| self.draw(plot, palette))
            .response;
        response.widget_info(|| WidgetInfo::labeled(Role::Image, true, picture));
    }

    fn draw(&self, plot: &mut PlotUi<'_>, palette: &Palette) {
        let at = |of: &dyn Fn(&Limited) -> f64| -> Vec<[f64; 2]> {
            let values = (1..).zip(&self.values);
            values
                .filter_map(|(day, one)| Some([f64::from(day), of(one.as_ref()?)]))
                .collect()
        };
        for (name, limit) in [("lower", 0), ("upper", 1)] {
            let line = Line::new(name, PlotPoints::from(at(&|one| one.limits[limit])));
            let line = line.color(palette.text_quiet).width(grid::HAIRLINE);
            plot.line(line.style(LineStyle::dashed_dense()).allow_hover(false));
        }
        if let Some(centre) = self.centre {
            let line = Line::new("centre", PlotPoints::from(at(&|_| centre)));
            plot.line(
                line.color(palette.outline)
                    .width(grid::HAIRLINE)
                    .allow_hover(false),
            );
        }
        let line = Line::new("days", PlotPoints::from(at(&|one| one.value)));
        plot.line(line.color(palette.accent).width(1.5).allow_hover(false));
        for is_signal in [false, true] {
            let points = (1..).zip(self.values.iter().zip(&self.signals));
            let points: Vec<[f64; 2]> = points
                .filter(|(_, (_, signal))| **signal == is_signal)
                .filter_map(|(day, (one, _))| Some([f64::from(day), one.as_ref()?.value]))
                .collect();
            let colour = if is_signal {
                palette.off_level
            } else {
                palette.accent
            };
            let name = if is_signal { "shown" } else { "within" };
            let points = Points::new(name, PlotPoints::from(points))
                .shape(MarkerShape::Circle)
                .filled(is_signal)
                .radius(DAY)
                .color(colour)
                .allow_hover(false);
            plot.points(points);
        }
    }
}

fn as_table(speaker: Speaker<'_>, chart: &ControlChart) -> Table {
    let head = |word| spreadsheet::head(speaker.word(word), "g");
    let heads = [
        speaker.word("control-day").to_owned(),
        head("control-mean"),
        head("control-lower"),
        head("control-upper"),
        head("control-spread"),
        speaker.word("control-shows").to_owned(),
    ];
    let mut table = Table::new(heads);
    for day in &chart.days {
        let [least, most] = day.mean.limits;
        let signals = day.signals.iter();
        let signals: Vec<String> = signals.map(|one| speaker.chart_signal(*one)).collect();
        let u = chart.scatter / f64::from(day.uses).sqrt();
        let figure = |grams: f64| Cell::figure(&rounded(grams, Some(u)).value);
        table.row([
            Cell::words(&day.date),
            figure(day.mean.value),
            figure(least),
            figure(most),
            day.spread
                .map_or_else(Cell::default, |spread| figure(spread.value)),
            Cell::words(&signals.join("; ")),
        ]);
    }
    table
}
