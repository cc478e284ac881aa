//! How warm the drink is handed over, whether that is where the shop wants it, and when it has cooled.

use egui::Ui;

use super::{cooling_plot, readings, sheet};
use crate::balance::{
    Cooling, CoolingBasis, CoolingLine, CoolingMilestone, CoolingModel, Measurand,
};
use crate::book::{ClosureKind, TemperatureWindow};
use crate::quantity::{rounded_at_most, show_number};
use crate::ui::Screen;
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::view_state::ViewState;
use crate::workbench::{Action, Serving};

pub(super) fn cooling_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let celsius = Value::of(
        screen.book,
        screen.balance,
        Measurand::ServingTemperature,
        1,
    );
    sheet::figure_ui(
        ui,
        screen,
        "as it is handed over",
        &celsius,
        "°C",
        Measurand::ServingTemperature,
    );
    window_ui(ui, screen);
    match &serving.cooling {
        Ok(course) => {
            milestones_ui(ui, screen, &course.cooling);
            ui.add_space(grid::NEAR);
            cooling_plot::cooling_plot_ui(ui, course, serving.run.as_ref());
            sheet::quiet_ui(ui, basis_words(screen, &course.cooling));
        }
        Err(reason) if screen.balance.iced => {
            sheet::quiet_ui(ui, format!("No cooling curve: {reason}."));
        }
        Err(reason) => {
            let reason = reason.to_string();
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
    let (words, is_inside) = window_words(kind, window, celsius);
    if is_inside {
        sheet::words_ui(ui, words);
    } else {
        sheet::off_ui(ui, words);
    }
}

fn window_words(kind: &str, window: TemperatureWindow, celsius: f64) -> (String, bool) {
    let at = |celsius: f64| show_number(celsius, usize::from(celsius.fract() != 0.0));
    let shop = format!(
        "the {} to {} °C that the shop wants of {kind} drinks",
        at(window.from),
        at(window.to)
    );
    if celsius > window.to {
        (
            format!("{} K above {shop}.", show_number(celsius - window.to, 1)),
            false,
        )
    } else if celsius < window.from {
        (
            format!("{} K below {shop}.", show_number(window.from - celsius, 1)),
            false,
        )
    } else {
        (format!("Within {shop}."), true)
    }
}

/// A line of temperature with its name: "drinking temperature, 58 °C".
pub(super) fn line_words(milestone: &CoolingMilestone) -> String {
    let celsius = show_number(milestone.celsius, 0);
    match milestone.line {
        CoolingLine::VeryHot => format!("below {celsius} °C, no longer very hot"),
        CoolingLine::Drinking => format!("to drinking temperature, {celsius} °C"),
        CoolingLine::Lukewarm => format!("to lukewarm, {celsius} °C"),
    }
}

fn milestones_ui(ui: &mut Ui, screen: &Screen<'_>, cooling: &Cooling) {
    let served = screen.balance.figures.get(Measurand::ServingTemperature);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for milestone in &cooling.milestones {
            let value = match milestone.minutes {
                Some(_) if served.is_some_and(|served| served <= milestone.celsius) => {
                    Value::digits("0")
                        .with_gap(Some("it is handed over no warmer than that".to_owned()))
                }
                Some(minutes) => Value::known(minutes, i32::from(minutes.value < 10.0)),
                None => Value::not_known("the room is no cooler than that"),
            };
            sheet::fact_ui(ui, &line_words(milestone), &value, "min");
        }
    });
}

/// What the curve rests on.
fn basis_words(screen: &Screen<'_>, cooling: &Cooling) -> String {
    let curve = &cooling.curve;
    let constants: Vec<String> = curve
        .time_constants()
        .iter()
        .map(|constant| {
            let digits = rounded_at_most(constant.value, Some(constant.u), 1);
            digits.u.map_or_else(
                || digits.value.clone(),
                |u| format!("{} ± {u}", digits.value),
            )
        })
        .collect();
    let constants = constants.join(" and ");
    let room = show_number(curve.room(), 0);
    let closure = closure_words(screen);
    match cooling.basis {
        CoolingBasis::Readings(count) => {
            let model = match curve.model() {
                CoolingModel::OneConstant => "one exponential",
                CoolingModel::TwoConstants => "two exponentials, drink and wall of the cup",
            };
            format!(
                "Rests on {count} thermometer readings of the cup: {model}, {constants} min{closure}, towards a room of {room} °C. \
                 The largest miss of a reading is {} K.",
                show_number(curve.largest_miss(), 1)
            )
        }
        CoolingBasis::TimeConstant => format!(
            "Rests on the time constant that is stated for the cup: one exponential, {constants} min{closure}, towards a room of \
             {room} °C. Readings of a thermometer are better."
        ),
    }
}

/// " with its lid on"; nothing for an open cup.
fn closure_words(screen: &Screen<'_>) -> &'static str {
    let cup = screen
        .balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| screen.book.vessel(id));
    let closure = cup.and_then(|cup| cup.usual_closure());
    match closure.filter(|closure| closure.cooling_factor.is_some_and(|factor| factor < 1.0)) {
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
            window_words("hot", window, 65.0),
            (
                "Within the 50 to 65 °C that the shop wants of hot drinks.".into(),
                true
            )
        );
        assert!(
            window_words("hot", window, 67.4)
                .0
                .starts_with("2.4 K above")
        );
        assert!(!window_words("hot", window, 49.9).1);
    }
}
