//! What a thermometer showed in the cup, typed in beside the curve that rests on it.

use egui::{RichText, Ui, vec2};

use super::sheet;
use super::typed::{self, LABEL, Range, TypedError};
use crate::book::{CoolingReading, CoolingRun, ItemId, Vessel, VesselId};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::{DisplayUnits, TemperatureUnit, name_as_shown, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::field::{FieldOutcome, draft_error_ui};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::NumberRow;
use crate::ui::words;
use crate::workbench::Action;

/// Times that a reading may have been taken at.
const MINUTES: Range = Range {
    from: 0.0,
    to: 1440.0,
    unit: "min",
};
/// Temperatures that a drink may have.
const CELSIUS: Range = Range {
    from: -10.0,
    to: 110.0,
    unit: "°C",
};
/// Temperatures that a room may have.
const ROOM: Range = Range {
    from: -10.0,
    to: 60.0,
    unit: "°C",
};
/// Volumes that a cup may have held.
const MILLILITRES: Range = Range {
    from: 1.0,
    to: 20_000.0,
    unit: "ml",
};
/// Room for the number of a reading, in points.
const NUMBER: f32 = 8.0 * grid::STEP;

/// A reading of which only one half has been typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct BegunReading {
    cup: Option<VesselId>,
    /// Minutes and temperature as typed.
    text: [String; 2],
}

impl BegunReading {
    /// What has been begun for a cup; another cup begins anew.
    fn of(&mut self, cup: &VesselId) -> &mut [String; 2] {
        if self.cup.as_ref() != Some(cup) {
            *self = Self {
                cup: Some(cup.clone()),
                text: [String::new(), String::new()],
            };
        }
        &mut self.text
    }
}

/// What the readings may change while they are drawn.
pub(super) struct InReadings<'view> {
    pub(super) begun: &'view mut BegunReading,
    pub(super) drafts: &'view mut Drafts,
}

/// The readings of the cup of the version in hand.
pub(super) fn readings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut InReadings<'_>,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    words::subheading_ui(ui, speaker.word("serving-readings"));
    let cup = screen
        .balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| screen.book.vessel(id));
    let Some(cup) = cup else {
        sheet::quiet_ui(ui, speaker.word("serving-readings-no-cup"));
        return;
    };
    sheet::quiet_ui(
        ui,
        say!(speaker, "serving-readings-how", cup: name_as_shown(&cup.name)),
    );
    let run = cup.cooling_run.clone().unwrap_or_else(|| CoolingRun {
        room: screen.book.settings.room_temperature.celsius(),
        millilitres: None,
        readings: Vec::new(),
    });
    circumstances_ui(ui, screen, cup, &run, view, actions);
    head_ui(ui, speaker);
    for at in 0..=run.readings.len() {
        reading_ui(ui, screen, cup, &run, at, view, actions);
    }
    if !run.readings.is_empty() {
        let table = speaker.word("serving-readings-table");
        copy_ui(ui, table, || as_table(speaker, &run));
    }
}

fn as_table(speaker: Speaker<'_>, run: &CoolingRun) -> Table {
    let units = speaker.units;
    let temperature = speaker.word("serving-head-temperature");
    let temperature = spreadsheet::head(temperature, units.of("°C").symbol);
    let minutes = speaker.word("serving-head-minutes");
    let mut table = Table::new([minutes, temperature.as_str()]);
    for reading in &run.readings {
        table.row(Half::BOTH.map(|half| Cell::figure(&half.shown(reading, speaker.units))));
    }
    table
}

/// A field of the readings of a cup.
fn focus(screen: &Screen<'_>, cup: &Vessel, name: impl Into<FieldName>) -> Focus {
    screen.serving(ItemId::Vessel(cup.id.clone()), name)
}

fn put(cup: &Vessel, run: Option<CoolingRun>, focus: &Focus) -> Action {
    Action::edit(
        Edit::PutVessel(Vessel {
            cooling_run: run,
            ..cup.clone()
        }),
        focus.clone(),
    )
}

fn circumstances_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    cup: &Vessel,
    run: &CoolingRun,
    view: &mut InReadings<'_>,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let units = speaker.units;
    let celsius = units.of("°C");
    let room = NumberRow {
        focus: focus(screen, cup, "room"),
        words: speaker.word("serving-readings-room"),
        words_width: LABEL,
        term: None,
        name: speaker.word("serving-readings-room-named"),
        shown: celsius.digits(run.room, 1),
        hint: "",
        unit: celsius.symbol,
    };
    let key = room.focus.clone();
    let read = |text: &str| ROOM.read_needed_in(text, units);
    if let Some(room) = room.ask_ui(ui, view.drafts, actions, read) {
        let run = CoolingRun {
            room,
            ..run.clone()
        };
        actions.push(put(cup, Some(run), &key));
    }
    let unit = say!(speaker, "serving-readings-volume-unit", unit: units.of("ml").symbol);
    let volume = NumberRow {
        focus: focus(screen, cup, "volume"),
        words: speaker.word("serving-readings-volume"),
        words_width: LABEL,
        term: None,
        name: speaker.word("serving-readings-volume-named"),
        shown: run
            .millilitres
            .map(|millilitres| units.of("ml").digits(millilitres, 0))
            .unwrap_or_default(),
        hint: speaker.word("serving-readings-volume-hint"),
        unit: &unit,
    };
    let key = volume.focus.clone();
    let read = |text: &str| MILLILITRES.read_in(text, units);
    if let Some(millilitres) = volume.ask_ui(ui, view.drafts, actions, read) {
        let run = CoolingRun {
            millilitres,
            ..run.clone()
        };
        actions.push(put(cup, Some(run), &key));
    }
}

fn head_ui(ui: &mut Ui, speaker: Speaker<'_>) {
    let palette = theme::palette(ui.visuals());
    let quiet = |words: &str| {
        RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet)
    };
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        ui.allocate_space(vec2(NUMBER, grid::STEP));
        typed::column_head_ui(ui, quiet(speaker.word("serving-head-minutes")));
        typed::column_head_ui(ui, quiet(speaker.units.of("°C").symbol));
    });
}

/// The two halves of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Half {
    Minutes,
    Celsius,
}

impl Half {
    const BOTH: [Self; 2] = [Self::Minutes, Self::Celsius];

    /// Its field in a row, from 0.
    fn field(self, at: usize) -> FieldName {
        let name = match self {
            Self::Minutes => "reading-minutes",
            Self::Celsius => "reading-temperature",
        };
        FieldName::at(name, at)
    }

    /// The name of its field in the row of this number.
    fn named(self, speaker: Speaker<'_>, number: usize) -> String {
        let number = number.to_string();
        match self {
            Self::Minutes => say!(speaker, "serving-readings-minutes-named", number: number),
            Self::Celsius => say!(speaker, "serving-readings-celsius-named", number: number),
        }
    }

    fn read(self, text: &str, units: DisplayUnits) -> Result<f64, TypedError> {
        match self {
            Self::Minutes => MINUTES.read_needed_in(text, units),
            Self::Celsius => CELSIUS.read_needed_in(text, units),
        }
    }

    /// As it is shown: the shortest digits that were typed.
    fn shown(self, reading: &CoolingReading, units: DisplayUnits) -> String {
        match self {
            Self::Minutes => trimmed(reading.minutes),
            Self::Celsius if units.temperature == TemperatureUnit::Celsius => {
                trimmed(reading.celsius)
            }
            Self::Celsius => units.of("°C").trimmed(reading.celsius, 1),
        }
    }
}

/// One row; the one behind the last reading takes a new one.
fn reading_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    cup: &Vessel,
    run: &CoolingRun,
    at: usize,
    view: &mut InReadings<'_>,
    actions: &mut Vec<Action>,
) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let known = run.readings.get(at);
    let key = |half: Half| focus(screen, cup, half.field(at));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        let number = RichText::new((at + 1).to_string()).font(TypeStyle::Small.font_id());
        let size = vec2(NUMBER, grid::TARGET);
        ui.add_sized(
            size,
            egui::Label::new(number.color(palette.text_quiet)).selectable(false),
        );
        for half in Half::BOTH {
            let shown = match known {
                Some(reading) => half.shown(reading, speaker.units),
                None => view.begun.of(&cup.id)[half as usize].clone(),
            };
            let name = half.named(speaker, at + 1);
            let outcome = typed::cell_ui(ui, key(half), &name, shown, view.drafts, actions);
            take_over(cup, run, at, half, &outcome, view, actions);
        }
        if known.is_some() {
            let number = (at + 1).to_string();
            let words = say!(speaker, "serving-readings-remove", number: number);
            if icon_button(ui, Icon::Delete, &words, &words).clicked() {
                for half in Half::BOTH {
                    view.drafts.drop(&key(half));
                }
                actions.push(put(cup, without(run, at), &key(Half::Minutes)));
            }
        }
    });
    for half in Half::BOTH {
        draft_error_ui(ui, view.drafts, &key(half));
    }
}

/// "58" and "58.5", as it was typed.
fn trimmed(value: f64) -> String {
    let text = show_number(value, 2);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// The run without a reading; none at all without its last one.
fn without(run: &CoolingRun, at: usize) -> Option<CoolingRun> {
    let mut run = run.clone();
    run.readings.remove(at);
    (!run.readings.is_empty()).then_some(run)
}

fn take_over(
    cup: &Vessel,
    run: &CoolingRun,
    at: usize,
    half: Half,
    outcome: &FieldOutcome,
    view: &mut InReadings<'_>,
    actions: &mut Vec<Action>,
) {
    let is_new = at == run.readings.len();
    if let Some(text) = outcome.changed.as_ref().filter(|_| is_new) {
        view.begun.of(&cup.id)[half as usize].clone_from(text);
        if text.trim().is_empty() {
            // Nothing has been begun yet, so nothing is missing.
            view.drafts.judge(&outcome.focus, None);
            return;
        }
    }
    let units = words::speaker(&outcome.response.ctx).units;
    let Some(value) = outcome.read(view.drafts, |text| half.read(text, units)) else {
        return;
    };
    let mut run = run.clone();
    if let Some(reading) = run.readings.get_mut(at) {
        match half {
            Half::Minutes => reading.minutes = value,
            Half::Celsius => reading.celsius = value,
        }
    } else {
        let text = view.begun.of(&cup.id);
        let (Ok(minutes), Ok(celsius)) = (
            Half::Minutes.read(&text[0], units),
            Half::Celsius.read(&text[1], units),
        ) else {
            return;
        };
        run.readings.push(CoolingReading { minutes, celsius });
        *view.begun = BegunReading::default();
    }
    actions.push(put(cup, Some(run), &outcome.focus));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_reading_takes_the_run_with_it() {
        let reading = CoolingReading {
            minutes: 1.0,
            celsius: 80.0,
        };
        let run = CoolingRun {
            room: 22.0,
            millilitres: None,
            readings: vec![reading, reading],
        };
        let one = without(&run, 0).unwrap();
        assert_eq!(one.readings, [reading]);
        assert_eq!(without(&one, 0), None);
    }

    #[test]
    fn a_reading_is_shown_as_it_was_typed() {
        assert_eq!(
            [trimmed(58.0), trimmed(58.5), trimmed(0.0), trimmed(100.0)],
            ["58", "58.5", "0", "100"]
        );
    }
}
