//! Published yardsticks that the shop holds its drinks against: words and figures, with whose they are and what they count.

use egui::Ui;

use super::sheet;
use crate::balance::{Level, Outcome, YardstickLine, YardstickReading};
use crate::book::{ItemId, Settings, Yardstick};
use crate::edit::{Edit, FieldName, Which};
use crate::quantity::rounded;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::field::take_keyboard;
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::widgets::facts::{Fact, facts_ui};
use crate::ui::words;
use crate::workbench::{Action, Serving};

pub(super) fn yardsticks_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let turned_on = &screen.book.settings.yardsticks;
    for reading in &serving.yardsticks {
        let mut is_on = turned_on.contains(&reading.yardstick);
        let response = ui.checkbox(&mut is_on, name_of_yardstick(speaker, reading.yardstick));
        let which = Which::Yardstick(reading.yardstick);
        let focus = screen.serving(ItemId::Settings, FieldName::of("yardstick", which));
        take_keyboard(ui, &focus, &response);
        if response.changed() {
            let settings = with_yardstick(&screen.book.settings, reading.yardstick, is_on);
            actions.push(Action::edit(Edit::SetSettings(settings), focus));
        }
    }
    if turned_on.is_empty() {
        sheet::quiet_ui(ui, speaker.word("serving-yardsticks-none"));
    }
    for reading in serving
        .yardsticks
        .iter()
        .filter(|reading| turned_on.contains(&reading.yardstick))
    {
        reading_ui(ui, screen, reading);
    }
}

/// The settings with a yardstick turned on or off, in the order in which they are shown.
fn with_yardstick(settings: &Settings, yardstick: Yardstick, is_on: bool) -> Settings {
    let wanted = |other: &Yardstick| {
        if *other == yardstick {
            is_on
        } else {
            settings.yardsticks.contains(other)
        }
    };
    Settings {
        yardsticks: Yardstick::ALL.into_iter().filter(wanted).collect(),
        ..settings.clone()
    }
}

fn reading_ui(ui: &mut Ui, screen: &Screen<'_>, reading: &YardstickReading) {
    let speaker = screen.speaker;
    words::subheading_ui(ui, &name_of_yardstick(speaker, reading.yardstick));
    let fact = |line| (name_of(speaker, line), value_of(speaker, line), line.unit);
    let facts: Vec<Fact<'_>> = reading.lines.iter().map(fact).collect();
    facts_ui(ui, speaker.yardstick(reading.yardstick), &facts);
    ui.add_space(grid::TIGHT);
    sheet::quiet_ui(
        ui,
        say!(
            speaker,
            "serving-yardsticks-source",
            publisher: speaker.yardstick_publisher(reading.yardstick),
            definition: speaker.yardstick_definition(reading.yardstick)
        ),
    );
}

fn name_of_yardstick(speaker: Speaker<'_>, yardstick: Yardstick) -> String {
    words::capitalised(speaker.yardstick(yardstick))
}

/// "sugar without lactose: B"; what can't be told is said beside the figure.
fn name_of(speaker: Speaker<'_>, line: &YardstickLine) -> String {
    let part = speaker.yardstick_part(line.part);
    match line.outcome {
        // Without a figure of its own the row says "not known" in its place.
        Outcome::NotKnown if line.value.is_none_or(|value| value <= 0.0) => part,
        Outcome::Is(Level::Grams(_)) | Outcome::AtLeast(Level::Grams(_)) => part,
        _ if line.value.is_none() => part,
        outcome => {
            let outcome = speaker.yardstick_outcome(outcome);
            say!(speaker, "value-known", name: part, figure: outcome)
        }
    }
}

fn value_of(speaker: Speaker<'_>, line: &YardstickLine) -> Value {
    let gap = (!line.missing.is_empty()).then(|| {
        let ingredients = speaker.ingredients(&line.missing);
        say!(speaker, "value-not-stated", ingredients: ingredients)
    });
    let is_partial = !line.missing.is_empty() && !matches!(line.outcome, Outcome::Is(_));
    match (line.value, line.outcome) {
        (None, Outcome::NotKnown) => Value {
            gap,
            ..Value::default()
        },
        (None, outcome) => Value {
            gap,
            ..Value::digits(speaker.yardstick_outcome(outcome))
        },
        (Some(value), Outcome::NotKnown) if value <= 0.0 => Value {
            gap,
            ..Value::default()
        },
        (Some(value), _) => {
            let digits = Value::digits(rounded(value, None).value);
            Value {
                gap,
                ..if is_partial {
                    digits.at_least()
                } else {
                    digits
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_yardstick_is_turned_on_in_its_place_and_off_again() {
        let none = Settings::default();
        let one = with_yardstick(&none, Yardstick::UkFreeSugars, true);
        let two = with_yardstick(&one, Yardstick::SingaporeGrade, true);
        assert_eq!(
            two.yardsticks,
            [Yardstick::SingaporeGrade, Yardstick::UkFreeSugars]
        );
        assert_eq!(
            with_yardstick(&two, Yardstick::SingaporeGrade, false).yardsticks,
            one.yardsticks
        );
    }
}
