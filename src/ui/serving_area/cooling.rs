//! How warm the drink is handed over, whether that is where the shop wants it, and when it has cooled.

use egui::Ui;

use super::InServing;
use super::sheet::Fact;
use super::{cooling_plot, readings, sheet};
use std::fmt::Write as _;

use crate::balance::{
    Cooling, CoolingBasis, CoolingLine, CoolingMilestone, CoolingQuestion, Measurand,
    POURED_CELSIUS,
};
use crate::book::{ClosureKind, TemperatureWindow, Vessel};
use crate::quantity::{DisplayUnits, Uncertain, rounded_at_most, show_number};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::workbench::{Action, CoolingCourse, Serving};

pub(super) fn cooling_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    view: &mut InServing<'_>,
    actions: &mut Vec<Action>,
) {
    let celsius = Value::of(
        screen.speaker,
        screen.balance,
        Measurand::ServingTemperature,
        1,
    );
    sheet::figure_ui(
        ui,
        screen,
        "when served",
        &celsius,
        screen.speaker.units.of("°C").symbol,
        Measurand::ServingTemperature,
    );
    window_ui(ui, screen);
    match &serving.cooling {
        Ok(course) => {
            milestones_ui(ui, screen, &course.cooling);
            ui.add_space(grid::NEAR);
            cooling_plot::cooling_plot_ui(ui, course, serving.run.as_ref(), screen.speaker.units);
            copy_ui(ui, "cooling", || as_table(screen, course));
            sheet::quiet_ui(ui, basis_words(screen, &course.cooling));
        }
        Err(reason) if screen.balance.iced => {
            let reason = Speaker::without_book().word(reason.message());
            sheet::quiet_ui(ui, format!("No cooling curve: {reason}."));
        }
        Err(reason) => {
            let reason = Speaker::without_book().word(reason.message());
            sheet::fact_ui(
                ui,
                "to drinking temperature",
                &Value::not_known(reason),
                "min",
            );
        }
    }
    if let Some(run) = &serving.run
        && let Some(error) = run.error.as_ref().filter(|_| !run.readings.is_empty())
    {
        let error = Speaker::new(screen.book)
            .in_units(screen.speaker.units)
            .cooling_error(error);
        sheet::quiet_ui(ui, format!("The readings give no curve yet: {error}."));
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
    let (words, is_inside) = window_words(kind, window, celsius, screen.speaker.units);
    let said = if is_inside {
        sheet::words_ui(ui, words)
    } else {
        sheet::off_ui(ui, words)
    };
    said.explained(Term::ServingWindow);
}

fn window_words(
    kind: &str,
    window: TemperatureWindow,
    celsius: f64,
    units: DisplayUnits,
) -> (String, bool) {
    let unit = units.of("°C");
    let shop = format!(
        "the serving window of {} to {} {} for {kind} drinks",
        unit.trimmed(window.from, 1),
        unit.trimmed(window.to, 1),
        unit.symbol
    );
    if celsius > window.to {
        (
            format!("{} above {shop}.", units.kelvin(celsius - window.to, 1)),
            false,
        )
    } else if celsius < window.from {
        (
            format!("{} below {shop}.", units.kelvin(window.from - celsius, 1)),
            false,
        )
    } else {
        (format!("Within {shop}."), true)
    }
}

/// A line of temperature with its name: "drinking temperature, 58 °C".
pub(super) fn line_words(milestone: &CoolingMilestone, units: DisplayUnits) -> String {
    let at = units.temperature(milestone.celsius, 0);
    match milestone.line {
        CoolingLine::VeryHot => format!("below {at}, no longer very hot"),
        CoolingLine::Drinking => format!("to drinking temperature, {at}"),
        CoolingLine::Lukewarm => format!("to lukewarm, {at}"),
    }
}

/// The lines that are passed, each with its minutes.
fn milestones<'a>(screen: &Screen<'_>, cooling: &'a Cooling) -> Vec<Fact<'a>> {
    let served = screen.balance.figures.get(Measurand::ServingTemperature);
    let fact = |milestone: &CoolingMilestone| {
        // Someone drinks by the end of very hot, so its figure is the late one, even when it is likely to be past.
        let latest = milestone
            .interval
            .filter(|_| milestone.line == CoolingLine::VeryHot)
            .map(|[_, latest]| latest.ceil())
            .filter(|latest| *latest >= 1.0);
        let value = match (milestone.minutes, latest) {
            (None, _) => Value::not_known("the room is no cooler than that"),
            (Some(_), Some(latest)) => Value::digits(show_number(latest, 0))
                .with_gap(Speaker::without_book().about_and_latest(milestone)),
            (Some(_), None) if served.is_some_and(|served| served <= milestone.celsius) => {
                Value::digits("0").with_gap(Some("already this cool when served".to_owned()))
            }
            (Some(minutes), None) => Value::known(minutes, i32::from(minutes.value < 10.0)),
        };
        (line_words(milestone, screen.speaker.units), value, "min")
    };
    cooling.milestones.iter().map(fact).collect()
}

fn milestones_ui(ui: &mut Ui, screen: &Screen<'_>, cooling: &Cooling) {
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in milestones(screen, cooling) {
            sheet::fact_ui(ui, &name, &value, unit);
        }
    });
}

/// The lines that are passed, then the curve point by point.
fn as_table(screen: &Screen<'_>, course: &CoolingCourse) -> Table {
    let unit = screen.speaker.units.of("°C");
    let temperature = spreadsheet::head("temperature", unit.symbol);
    let mut curve = Table::new(["minutes", temperature.as_str(), "±"]);
    for point in &course.points {
        let at = Uncertain {
            value: point.celsius,
            u: point.u,
        };
        let [figure, doubt] = Cell::figure_and_doubt(&Value::shown(at, &unit, 1));
        curve.row([Cell::figure(&show_number(point.minutes, 1)), figure, doubt]);
    }
    sheet::facts_as_table(screen.speaker, milestones(screen, &course.cooling)).then(curve)
}

/// What the curve rests on, how fast it is, and what would make it surer.
fn basis_words(screen: &Screen<'_>, cooling: &Cooling) -> String {
    let curve = &cooling.curve;
    let temperature = |celsius: f64| screen.speaker.units.temperature(celsius, 0);
    let mut words = match cooling.basis {
        CoolingBasis::Readings(count) => format!(
            "Rests on {count} thermometer readings of the cup, weighed against published cups. The largest miss of a reading is {}.",
            screen.speaker.units.kelvin(curve.largest_miss(), 1)
        ),
        CoolingBasis::TimeConstant => {
            "Rests on the time constant that is stated for the cup, weighed against published cups."
                .to_owned()
        }
        CoolingBasis::PublishedCups => {
            "Rests on published cups alone: nothing is stated of how this one cools.".to_owned()
        }
    };
    if let Some(constant) = curve.time_constant() {
        let minutes = rounded_at_most(constant.value, Some(constant.u), 0);
        let u = minutes.u.map_or_else(String::new, |u| format!(" ± {u}"));
        let fill = show_number(100.0 * curve.fill(), 0);
        let _ = write!(
            words,
            " {fill} % full{}, it would fall from {} by 63 % of the way to a room of {} in {}{u} min.",
            closure_words(screen),
            temperature(POURED_CELSIUS),
            temperature(curve.room()),
            minutes.value
        );
    }
    if let Some(cup) = cup_of(screen) {
        let question = CoolingQuestion::of(cup, screen.balance.drinking_temperature);
        let _ = write!(
            words,
            " To narrow it: {}.",
            Speaker::without_book().cooling_question(question)
        );
    }
    words
}

fn cup_of<'a>(screen: &Screen<'a>) -> Option<&'a Vessel> {
    let id = screen.balance.resolved.cup.as_ref()?;
    screen.book.vessel(id).map(AsRef::as_ref)
}

/// " with its lid on"; nothing for an open cup.
fn closure_words(screen: &Screen<'_>) -> &'static str {
    let closure = cup_of(screen).and_then(|cup| cup.usual_closure());
    match closure.filter(|closure| closure.cooling_factor.is_none_or(|factor| factor < 1.0)) {
        Some(closure) if closure.kind == ClosureKind::Lid => " with its lid on",
        Some(closure) if closure.kind == ClosureKind::Film => " under its film",
        _ => "",
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
        assert_eq!(
            window_words("hot", window, 65.0, DisplayUnits::METRIC),
            (
                "Within the serving window of 50 to 65 °C for hot drinks.".into(),
                true
            )
        );
        assert!(
            window_words("hot", window, 67.4, DisplayUnits::METRIC)
                .0
                .starts_with("2.4 K above")
        );
        assert!(!window_words("hot", window, 49.9, DisplayUnits::METRIC).1);
    }
}
