//! How warm the drink is handed over, whether that is where the shop wants it, and when it has cooled.

use egui::Ui;

use super::cooling_plot::{self, line_words};
use super::readings::{self, InReadings};
use super::sheet;
use crate::balance::{
    Cooling, CoolingBasis, CoolingLine, CoolingMilestone, CoolingQuestion, Measurand,
    POURED_CELSIUS,
};
use crate::book::{ClosureKind, TemperatureWindow, Vessel};
use crate::quantity::{Uncertain, rounded_at_most, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::widgets::facts::{Fact, fact_ui, facts_as_table, figure_ui};
use crate::workbench::{Action, CoolingCourse, Serving};

pub(super) fn cooling_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    view: &mut InReadings<'_>,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let served = Measurand::ServingTemperature;
    let celsius = Value::of(speaker, screen.balance, served, 1);
    let name = speaker.word("serving-cooling-served");
    let symbol = speaker.units.of("°C").symbol;
    figure_ui(ui, screen, name, &celsius, symbol, served);
    window_ui(ui, screen);
    match &serving.cooling {
        Ok(course) => {
            milestones_ui(ui, screen, &course.cooling);
            ui.add_space(grid::NEAR);
            cooling_plot::cooling_plot_ui(ui, course, serving.run.as_ref(), speaker);
            let table = speaker.word("serving-cooling-table");
            copy_ui(ui, table, || as_table(screen, course));
            sheet::quiet_ui(ui, basis_words(screen, &course.cooling));
        }
        Err(reason) if screen.balance.iced => {
            let reason = speaker.word(reason.message());
            sheet::quiet_ui(
                ui,
                say!(speaker, "serving-cooling-no-curve", reason: reason),
            );
        }
        Err(reason) => {
            let name = speaker.word("serving-cooling-to-drinking");
            let value = Value::not_known(speaker.word(reason.message()));
            fact_ui(ui, name, &value, "min");
        }
    }
    if let Some(run) = &serving.run
        && let Some(error) = run.error.as_ref().filter(|_| !run.readings.is_empty())
    {
        let reason = speaker.cooling_error(error);
        sheet::quiet_ui(
            ui,
            say!(speaker, "serving-readings-no-curve", reason: reason),
        );
    }
    if !screen.balance.iced {
        readings::readings_ui(ui, screen, view, actions);
    }
}

/// Where the shop wants drinks of this kind, and where this one is.
fn window_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let (kind, window) = if screen.balance.iced {
        ("iced", screen.book.settings.iced_window)
    } else {
        ("hot", screen.book.settings.hot_window)
    };
    let Some(celsius) = screen.balance.figures.get(Measurand::ServingTemperature) else {
        return;
    };
    let (words, is_inside) = window_words(screen.speaker, kind, window, celsius);
    let said = if is_inside {
        sheet::words_ui(ui, words)
    } else {
        sheet::off_ui(ui, words)
    };
    said.explained(Term::ServingWindow);
}

fn window_words(
    speaker: Speaker<'_>,
    kind: &str,
    window: TemperatureWindow,
    celsius: f64,
) -> (String, bool) {
    let from = speaker.units.of("°C").trimmed(window.from, 1);
    let from = speaker.digits(&from);
    let to = speaker.trimmed(window.to, "°C", 1);
    if celsius > window.to {
        let by = speaker.kelvin(celsius - window.to, 1);
        let words = say!(speaker, "serving-cooling-above", kind: kind, by: by, from: from, to: to);
        (words, false)
    } else if celsius < window.from {
        let by = speaker.kelvin(window.from - celsius, 1);
        let words = say!(speaker, "serving-cooling-below", kind: kind, by: by, from: from, to: to);
        (words, false)
    } else {
        let words = say!(speaker, "serving-cooling-within", kind: kind, from: from, to: to);
        (words, true)
    }
}

/// The lines that are passed, each with its minutes.
fn milestones<'a>(screen: &Screen<'_>, cooling: &'a Cooling) -> Vec<Fact<'a>> {
    let speaker = screen.speaker;
    let served = screen.balance.figures.get(Measurand::ServingTemperature);
    let fact = |milestone: &CoolingMilestone| {
        // Someone drinks by the end of very hot, so its figure is the late one, even when it is likely to be past.
        let latest = milestone
            .interval
            .filter(|_| milestone.line == CoolingLine::VeryHot)
            .map(|[_, latest]| latest.ceil())
            .filter(|latest| *latest >= 1.0);
        let value = match (milestone.minutes, latest) {
            (None, _) => Value::not_known(speaker.word("serving-cooling-room-no-cooler")),
            (Some(_), Some(latest)) => {
                Value::digits(show_number(latest, 0)).with_gap(speaker.about_and_latest(milestone))
            }
            (Some(_), None) if served.is_some_and(|served| served <= milestone.celsius) => {
                let gap = speaker.word("serving-cooling-already");
                Value::digits("0").with_gap(Some(gap.to_owned()))
            }
            (Some(minutes), None) => Value::known(minutes, i32::from(minutes.value < 10.0)),
        };
        (line_words(speaker, milestone), value, "min")
    };
    cooling.milestones.iter().map(fact).collect()
}

fn milestones_ui(ui: &mut Ui, screen: &Screen<'_>, cooling: &Cooling) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in milestones(screen, cooling) {
            fact_ui(ui, &name, &value, unit);
        }
    });
}

/// The lines that are passed, then the curve point by point.
fn as_table(screen: &Screen<'_>, course: &CoolingCourse) -> Table {
    let speaker = screen.speaker;
    let unit = speaker.units.of("°C");
    let temperature = spreadsheet::head(speaker.word("serving-head-temperature"), unit.symbol);
    let minutes = speaker.word("serving-head-minutes");
    let mut curve = Table::new([minutes, temperature.as_str(), "±"]);
    for point in &course.points {
        let at = Uncertain {
            value: point.celsius,
            u: point.u,
        };
        let [figure, doubt] = Cell::figure_and_doubt(&Value::shown(at, &unit, 1));
        curve.row([Cell::figure(&show_number(point.minutes, 1)), figure, doubt]);
    }
    facts_as_table(speaker, milestones(screen, &course.cooling)).then(curve)
}

/// What the curve rests on, how fast it is, and what would make it surer.
fn basis_words(screen: &Screen<'_>, cooling: &Cooling) -> String {
    let (speaker, curve) = (screen.speaker, &cooling.curve);
    let mut sentences = vec![match cooling.basis {
        CoolingBasis::Readings(count) => say!(
            speaker,
            "serving-cooling-basis-readings",
            count: count,
            miss: speaker.kelvin(curve.largest_miss(), 1)
        ),
        CoolingBasis::TimeConstant => speaker.word("serving-cooling-basis-constant").to_owned(),
        CoolingBasis::PublishedCups => speaker.word("serving-cooling-basis-published").to_owned(),
    }];
    if let Some(constant) = curve.time_constant() {
        let minutes = rounded_at_most(constant.value, Some(constant.u), 0);
        let doubt = minutes.u.map(|u| format!(" ± {}", speaker.digits(&u)));
        sentences.push(say!(
            speaker,
            "serving-cooling-speed",
            fill: speaker.in_unit(100.0 * curve.fill(), "%", 0),
            closure: closure_key(screen),
            from: speaker.temperature(POURED_CELSIUS, 0),
            room: speaker.temperature(curve.room(), 0),
            minutes: speaker.digits(&minutes.value) + &doubt.unwrap_or_default()
        ));
    }
    if let Some(cup) = cup_of(screen) {
        let question = CoolingQuestion::of(cup, screen.balance.drinking_temperature);
        let request = speaker.cooling_question(question);
        sentences.push(say!(speaker, "serving-cooling-narrow", request: request));
    }
    sentences.join(" ")
}

fn cup_of<'a>(screen: &Screen<'a>) -> Option<&'a Vessel> {
    let id = screen.balance.resolved.cup.as_ref()?;
    screen.book.vessel(id).map(AsRef::as_ref)
}

/// What keeps the drink warm, as messages choose by it.
fn closure_key(screen: &Screen<'_>) -> &'static str {
    let closure = cup_of(screen).and_then(|cup| cup.usual_closure());
    match closure.filter(|closure| closure.cooling_factor.is_none_or(|factor| factor < 1.0)) {
        Some(closure) if closure.kind == ClosureKind::Lid => "lid",
        Some(closure) if closure.kind == ClosureKind::Film => "film",
        _ => "open",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_window_of_the_shop_is_told_with_the_distance_from_it() {
        let window = TemperatureWindow {
            from: 50.0,
            to: 65.0,
        };
        let words = |celsius| window_words(Speaker::without_book(), "hot", window, celsius);
        assert_eq!(
            words(65.0),
            (
                "Within the serving window of 50 to 65\u{a0}°C for hot drinks.".into(),
                true
            )
        );
        assert!(words(67.4).0.starts_with("2.4\u{a0}K above"));
        assert!(!words(49.9).1);
    }
}
