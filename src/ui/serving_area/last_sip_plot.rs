//! The pictures of a drink from the counter to the last sip: a strip each for temperature, sweetness and tea, over the same minutes.

use std::ops::RangeInclusive;

use egui::{Color32, Role, Sense, Shape, Ui, WidgetInfo, vec2};
use egui_plot::{
    AxisHints, FilledArea, GridMark, HLine, Line, LineStyle, MarkerShape, PlotPoints, PlotUi,
    Points, VLine,
};

use crate::balance::{LastSip, Measurand, Sip};
use crate::quantity::{ShownUnit, Uncertain, show_number};
use crate::say::{Speaker, say};
use crate::ui::spreadsheet::head;
use crate::ui::theme::{self, Palette, grid};
use crate::ui::widgets::facts::MOST_WIDTH;
use crate::ui::widgets::still_plot::{axis_name, still_plot};
use crate::ui::words;
use crate::workbench::{LAST_SIP_MINUTES, Standings};

/// Height of a strip, in points, and that of the minutes below the last one.
const HEIGHT: f32 = 26.0 * grid::STEP;
const MINUTES_HEIGHT: f32 = 9.0 * grid::STEP;
/// Room for the figures beside a strip, so that the minutes of all strips stand below each other, in points.
const FIGURES: f32 = 12.0 * grid::STEP;
/// Standard uncertainties to either side of what is so in 95 of 100 cases (JCGM 100:2008, table G.1).
const COVERAGE: f64 = 1.96;
/// Free room above and below what is drawn, as a part of it.
const MARGIN: f64 = 0.08;
/// Decimals of the figures beside a strip.
const MOST_DECIMALS: usize = 4;
/// How much of its colour a haze keeps.
const HAZE_PART: f32 = 0.22;
/// How much of its colour the time on the way keeps.
const WAY_PART: f32 = 0.16;
/// Radius of the mark at the best sip, in points.
const BEST: f32 = 4.0;
/// Length of the piece of a line beside its name, in points.
const SAMPLE: f32 = 8.0 * grid::STEP;

/// How a line is drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Stroke {
    Dashed,
    Dotted,
}

impl Stroke {
    /// That of the other way at this place.
    pub(super) const fn of_other(at: usize) -> Self {
        if at == 0 { Self::Dashed } else { Self::Dotted }
    }

    fn style(self) -> LineStyle {
        match self {
            Self::Dashed => LineStyle::Dashed { length: 8.0 },
            Self::Dotted => LineStyle::Dotted { spacing: 5.0 },
        }
    }
}

/// A piece of such a line.
pub(super) fn sample_ui(ui: &mut Ui, stroke: Stroke) {
    let palette = theme::palette(ui.visuals());
    let line = ui.text_style_height(&egui::TextStyle::Body);
    let (rect, _) = ui.allocate_exact_size(vec2(SAMPLE, line), Sense::hover());
    let ends = [rect.left_center(), rect.right_center()];
    let painter = ui.painter();
    match stroke {
        Stroke::Dashed => {
            painter.extend(Shape::dashed_line(
                &ends,
                (1.5, palette.text_normal),
                8.0,
                4.0,
            ));
        }
        Stroke::Dotted => {
            painter.extend(Shape::dotted_line(&ends, palette.text_normal, 5.0, 1.0));
        }
    }
}

/// What a strip shows.
#[derive(Clone, Copy)]
struct Strip {
    /// Where it stands among [`LastSip::AXES`].
    at: usize,
    measurand: Measurand,
    unit: &'static str,
    figure: fn(&Sip) -> Option<Uncertain>,
    /// Decimals of a figure that is read aloud.
    decimals: usize,
}

const STRIPS: [Strip; 3] = [
    Strip {
        at: 0,
        measurand: Measurand::ServingTemperature,
        unit: "°C",
        figure: |sip| Some(sip.temperature),
        decimals: 0,
    },
    Strip {
        at: 1,
        measurand: Measurand::Sweetness,
        unit: "g/100 ml",
        figure: |sip| sip.sweetness,
        decimals: 1,
    },
    Strip {
        at: 2,
        measurand: Measurand::TeaStrength,
        unit: "g/100 ml",
        figure: |sip| sip.tea_strength,
        decimals: 2,
    },
];

impl Strip {
    fn name(self, speaker: Speaker<'_>) -> &'static str {
        if self.measurand == Measurand::ServingTemperature {
            speaker.word("serving-head-temperature")
        } else {
            speaker.measurand(self.measurand)
        }
    }

    /// The lowest and the highest of what is drawn, in the unit of the strip.
    fn range(self, standings: &Standings, unit: &ShownUnit<'_>) -> Option<(f64, f64)> {
        let course = &standings.course;
        let band = course.aims[self.at].map(|aim| {
            let step = course.step[self.at];
            [aim - step, aim + step]
        });
        let haze = course.sips.iter().filter_map(self.figure);
        let haze = haze.flat_map(|figure| {
            let half = COVERAGE * figure.u;
            [figure.value - half, figure.value + half]
        });
        let others = standings.others.iter().flat_map(|(_, other)| &other.sips);
        let others = others.filter_map(self.figure).map(|figure| figure.value);
        let all = band.into_iter().flatten().chain(haze).chain(others);
        let (low, high) = all.fold((f64::MAX, f64::MIN), |(low, high), value| {
            (low.min(value), high.max(value))
        });
        if low > high {
            return None;
        }
        let margin = MARGIN * (high - low).max(1e-6);
        Some((unit.value(low - margin), unit.value(high + margin)))
    }

    fn points(self, course: &LastSip, unit: &ShownUnit<'_>) -> Vec<[f64; 2]> {
        let known = course
            .sips
            .iter()
            .filter_map(|sip| Some((sip.minutes, (self.figure)(sip)?)));
        known
            .map(|(minutes, figure)| [minutes, unit.value(figure.value)])
            .collect()
    }
}

/// The strips below each other; those of which nothing is known are left out.
pub(super) fn strips_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    standings: &Standings,
    on_the_way: Option<f64>,
) {
    let known: Vec<Strip> = STRIPS
        .into_iter()
        .filter(|strip| {
            standings
                .course
                .sips
                .iter()
                .any(|sip| (strip.figure)(sip).is_some())
        })
        .collect();
    for (at, strip) in known.iter().enumerate() {
        strip_ui(
            ui,
            speaker,
            *strip,
            standings,
            on_the_way,
            at + 1 == known.len(),
        );
    }
}

fn strip_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    strip: Strip,
    standings: &Standings,
    on_the_way: Option<f64>,
    is_last: bool,
) {
    let palette = theme::palette(ui.visuals());
    let unit = speaker.units.of(strip.unit);
    let Some((low, high)) = strip.range(standings, &unit) else {
        return;
    };
    words::quiet_ui(ui, &head(strip.name(speaker), unit.symbol));
    let width = ui.available_width().min(MOST_WIDTH);
    let minutes = f64::from(LAST_SIP_MINUTES);
    let height = HEIGHT + if is_last { MINUTES_HEIGHT } else { 0.0 };
    let whole = |mark: GridMark, _: &RangeInclusive<f64>| show_number(mark.value, 0);
    let figures = |mark: GridMark, _: &RangeInclusive<f64>| {
        let mut step = mark.step_size;
        let mut decimals = 0;
        while step < 0.999 && decimals < MOST_DECIMALS {
            step *= 10.0;
            decimals += 1;
        }
        speaker.digits(&show_number(mark.value, decimals))
    };
    let x_axes = if is_last {
        let name = axis_name(speaker.word("serving-head-minutes"), palette);
        vec![AxisHints::new_x().label(name).formatter(whole)]
    } else {
        Vec::new()
    };
    let size = vec2(width, height);
    let response = still_plot(strip.at, size, (0.0, minutes), (low, high), palette)
        .custom_x_axes(x_axes)
        .custom_y_axes(vec![
            AxisHints::new_y()
                .formatter(figures)
                .min_thickness(FIGURES)
                .label_spacing(20.0..=40.0),
        ])
        .show(ui, |plot| {
            ground_ui(plot, strip, &standings.course, palette, &unit);
            if let Some(arrival) = on_the_way {
                way_ui(plot, arrival, (low, high), palette);
            }
            curves_ui(plot, strip, standings, palette, &unit);
        })
        .response;
    response.widget_info(|| {
        WidgetInfo::labeled(Role::Image, true, said(speaker, strip, &standings.course))
    });
}

/// What the drink is held to.
fn ground_ui(
    plot: &mut PlotUi<'_>,
    strip: Strip,
    course: &LastSip,
    palette: &Palette,
    unit: &ShownUnit<'_>,
) {
    let Some(aim) = course.aims[strip.at] else {
        return;
    };
    let step = course.step[strip.at];
    let ends = [0.0, f64::from(LAST_SIP_MINUTES)];
    area(
        plot,
        "level",
        &ends,
        [[unit.value(aim - step); 2], [unit.value(aim + step); 2]].map(Vec::from),
        palette.level_band,
    );
    // A haze of the same colour may lie over the band: its edges stay to be seen.
    for (name, value, style) in [
        ("aim", aim, LineStyle::Solid),
        ("below", aim - step, LineStyle::dotted_dense()),
        ("above", aim + step, LineStyle::dotted_dense()),
    ] {
        let line = HLine::new(name, unit.value(value))
            .color(palette.outline)
            .width(grid::HAIRLINE)
            .style(style)
            .allow_hover(false);
        plot.hline(line);
    }
}

/// The time on the way to the guest.
fn way_ui(plot: &mut PlotUi<'_>, arrival: f64, (low, high): (f64, f64), palette: &Palette) {
    let colour = palette.text_quiet.gamma_multiply(WAY_PART);
    let edges = [[low; 2], [high; 2]].map(Vec::from);
    area(plot, "on-the-way", &[0.0, arrival], edges, colour);
}

fn area(
    plot: &mut PlotUi<'_>,
    name: &str,
    minutes: &[f64],
    [low, high]: [Vec<f64>; 2],
    colour: Color32,
) {
    let area = FilledArea::new(name, minutes, &low, &high)
        .fill_color(colour)
        .stroke(egui::Stroke::NONE)
        .allow_hover(false);
    plot.add(area);
}

fn curves_ui(
    plot: &mut PlotUi<'_>,
    strip: Strip,
    standings: &Standings,
    palette: &Palette,
    unit: &ShownUnit<'_>,
) {
    let course = &standings.course;
    let known = course.sips.iter().filter_map(|sip| {
        let figure = (strip.figure)(sip)?;
        Some((sip.minutes, figure.value, COVERAGE * figure.u))
    });
    let known: Vec<(f64, f64, f64)> = known.collect();
    let minutes: Vec<f64> = known.iter().map(|(minutes, ..)| *minutes).collect();
    let edges = [-1.0, 1.0].map(|side| {
        let edge = known
            .iter()
            .map(|(_, value, half)| unit.value(value + side * half));
        edge.collect()
    });
    area(
        plot,
        "haze",
        &minutes,
        edges,
        palette.accent.gamma_multiply(HAZE_PART),
    );
    for (at, (_, other)) in standings.others.iter().enumerate() {
        let line = Line::new(
            format!("other-{at}"),
            PlotPoints::from(strip.points(other, unit)),
        );
        plot.line(
            line.color(palette.text_normal)
                .width(1.5)
                .style(Stroke::of_other(at).style())
                .allow_hover(false),
        );
    }
    let line = Line::new("drink", PlotPoints::from(strip.points(course, unit)));
    plot.line(line.color(palette.accent).width(2.0).allow_hover(false));
    let Some((best, figure)) = course
        .best()
        .and_then(|best| Some((best, (strip.figure)(best)?)))
    else {
        return;
    };
    let upright = VLine::new("best", best.minutes)
        .color(palette.accent)
        .width(grid::HAIRLINE)
        .allow_hover(false);
    plot.vline(upright);
    let at = vec![[best.minutes, unit.value(figure.value)]];
    let mark = Points::new("best-sip", PlotPoints::from(at))
        .shape(MarkerShape::Circle)
        .filled(true)
        .radius(BEST)
        .color(palette.text_strong)
        .allow_hover(false);
    plot.points(mark);
}

/// A strip in a sentence.
fn said(speaker: Speaker<'_>, strip: Strip, course: &LastSip) -> String {
    let figure = |sip: Option<&Sip>| {
        let figure = sip.and_then(strip.figure);
        figure.map_or_else(String::new, |figure| speaker.uncertain(figure, strip.unit))
    };
    let (first, last) = (figure(course.sips.first()), figure(course.sips.last()));
    let minutes = speaker.in_unit(f64::from(LAST_SIP_MINUTES), "min", 0);
    let name = strip.name(speaker);
    match course.aims[strip.at] {
        Some(aim) => say!(
            speaker,
            "last-sip-picture",
            figure: name,
            minutes: minutes,
            first: first,
            last: last,
            aim: speaker.in_unit(aim, strip.unit, strip.decimals)
        ),
        None => say!(
            speaker,
            "last-sip-picture-without-aim",
            figure: name,
            minutes: minutes,
            first: first,
            last: last
        ),
    }
}
