//! Noticeable steps: the published or assumed one of every axis with its source, and the shop's own in its place.

use egui::{Label, RichText, Ui};

use super::item::Counter;
use crate::balance::noticeable_step;
use crate::balance::published::noticeable::{self, NoticeableStep};
use crate::book::{Axis, Settings, StepSetting};
use crate::edit::{FieldName, Which};
use crate::quantity::{DisplayUnits, ShownUnit};
use crate::say::{Speaker, say};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::form::{
    Entry, Sheet, cell_ui, link_ui, number_heading_ui, plain, section_ui, words_ui,
};
use crate::ui::widgets::name::name_ui;
use crate::ui::words::{self, quiet_ui};

/// Widths of the axis, a number, and the unit, in points.
const AXIS: f32 = 26.0 * grid::STEP;
const NUMBER: f32 = 14.0 * grid::STEP;
const UNIT: f32 = 16.0 * grid::STEP;

pub(super) fn steps_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Settings>,
    before: &Settings,
) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-steps")).explained(Term::NoticeableStep);
    quiet_ui(ui, speaker.word("counter-steps-about"));
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        words_ui(ui, speaker.word("counter-step-axis"), AXIS);
        number_heading_ui(ui, speaker.word("counter-step-part-percent"), NUMBER);
        number_heading_ui(ui, speaker.word("counter-step-floor"), NUMBER)
            .explained(Term::StepFloor);
        words_ui(ui, "", UNIT);
        number_heading_ui(ui, speaker.word("counter-step-weight"), NUMBER);
    });
    let mut said = String::new();
    let axes = counter.book.axes();
    for axis in &axes {
        step_ui(ui, sheet, before, axis);
        // All flavours rest on the same source, which is said once.
        let source = speaker.step_source(axis);
        if source != said {
            let palette = theme::palette(ui.visuals());
            let text = RichText::new(source.as_str())
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet);
            ui.add(Label::new(text).wrap());
            ui.add_space(grid::NEAR);
            said = source;
        }
    }
    copy_ui(ui, speaker.word("counter-steps-table"), || {
        as_table(before, speaker, &axes)
    });
}

/// The steps for a spreadsheet: the shop's own, or what holds in its place, and whose each is.
fn as_table(settings: &Settings, speaker: Speaker<'_>, axes: &[Axis]) -> Table {
    let part = spreadsheet::head(speaker.word("counter-step-part"), "%");
    let heads = [
        speaker.word("counter-step-axis"),
        part.as_str(),
        speaker.word("counter-step-floor"),
        speaker.word("counter-step-unit"),
        speaker.word("counter-step-weight"),
        speaker.word("counter-step-whose"),
    ];
    let digits = |value: f64| speaker.digits(&plain(value));
    let mut table = Table::new(heads);
    for axis in axes {
        let own = settings.steps.iter().find(|step| step.axis == *axis);
        let source = || speaker.step_source(axis);
        let whose = own.map_or_else(source, |_| speaker.word("counter-step-own").to_owned());
        let first = first_step(settings, axis);
        let step = own.unwrap_or(&first);
        table.row([
            Cell::words(&speaker.axis(axis)),
            Cell::figure(&digits(100.0 * step.fraction)),
            Cell::figure(&digits(step.floor)),
            Cell::words(speaker.unit(floor_unit(speaker.units, axis).symbol)),
            Cell::figure(&digits(step.weight)),
            Cell::words(&whose),
        ]);
    }
    table
}

/// The step that holds as long as the shop has none of its own.
fn first_step(settings: &Settings, axis: &Axis) -> StepSetting {
    let default = default_of(axis);
    let without = Settings {
        steps: Vec::new(),
        ..settings.clone()
    };
    StepSetting {
        axis: axis.clone(),
        fraction: default.fraction,
        floor: default.floor,
        weight: noticeable_step(&without, axis, 0.0).1,
    }
}

/// The floor of a step is a difference.
fn floor_unit(units: DisplayUnits, axis: &Axis) -> ShownUnit<'_> {
    match axis {
        Axis::Temperature => units.of("K"),
        other => units.of(other.unit()),
    }
}

fn default_of(axis: &Axis) -> NoticeableStep {
    match axis {
        Axis::Sweetness => noticeable::SWEETNESS,
        Axis::TeaStrength => noticeable::TEA_STRENGTH,
        Axis::Flavour(_) => noticeable::FLAVOUR,
        Axis::Creaminess => noticeable::CREAMINESS,
        Axis::Acidity => noticeable::ACIDITY,
        Axis::Body => noticeable::BODY,
        Axis::Temperature => noticeable::TEMPERATURE,
        Axis::Volume => noticeable::VOLUME,
    }
}

/// The three numbers of a step. Those of the default stand there as hints until one of them is typed over.
fn step_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Settings>, before: &Settings, axis: &Axis) {
    let palette = theme::palette(ui.visuals());
    let own = before.steps.iter().find(|step| step.axis == *axis);
    let first = first_step(before, axis);
    let speaker = words::speaker(ui.ctx()).in_units(sheet.units);
    let field = |name| FieldName::of(name, Which::Axis(axis.clone()));
    let word = speaker.axis(axis);
    let unit = floor_unit(sheet.units, axis);
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        cell_ui(ui, AXIS, |ui| {
            let colour = if own.is_some() {
                palette.text_strong
            } else {
                palette.text_normal
            };
            name_ui(ui, &word, TypeStyle::Body, colour, AXIS)
                .explained(Term::of_axis(axis))
                .on_hover_text(speaker.step_source(axis));
        });
        number_ui(
            ui,
            sheet,
            (
                field("step-part"),
                &say!(speaker, "counter-step-part-named", axis: &word),
            ),
            own.map(|own| 100.0 * own.fraction),
            100.0 * first.fraction,
            {
                let first = first.clone();
                move |item, value| own_step(item, &first).fraction = value / 100.0
            },
        );
        number_ui(
            ui,
            sheet,
            (
                field("step-floor"),
                &say!(speaker, "counter-step-floor-named", axis: &word),
            ),
            own.map(|own| own.floor),
            first.floor,
            {
                let first = first.clone();
                move |item, value| own_step(item, &first).floor = value
            },
        );
        words_ui(ui, speaker.unit(unit.symbol), UNIT);
        number_ui(
            ui,
            sheet,
            (
                field("step-weight"),
                &say!(speaker, "counter-step-weight-named", axis: &word),
            ),
            own.map(|own| own.weight),
            first.weight,
            {
                let first = first.clone();
                move |item, value| own_step(item, &first).weight = value
            },
        );
        if own.is_some() && link_ui(ui, speaker.word("counter-step-reset")).clicked() {
            sheet.change(field("step-part"), |item| {
                item.steps.retain(|step| step.axis != *axis);
            });
        }
    });
    sheet.errors_ui(ui, AXIS);
}

/// The shop's own step of an axis; it begins as the default.
fn own_step<'settings>(
    settings: &'settings mut Settings,
    first: &StepSetting,
) -> &'settings mut StepSetting {
    let known = settings
        .steps
        .iter()
        .position(|step| step.axis == first.axis);
    let at = known.unwrap_or_else(|| {
        settings.steps.push(first.clone());
        settings.steps.len() - 1
    });
    &mut settings.steps[at]
}

fn number_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Settings>,
    (field, name): (FieldName, &str),
    own: Option<f64>,
    default: f64,
    put: impl FnOnce(&mut Settings, f64),
) {
    let hint = plain(default);
    let spot = Entry::number(field, name).width(NUMBER).hint(&hint);
    sheet.number(ui, &spot, own, |item, value| {
        // An emptied field takes the default again; the two beside it stay.
        put(item, value.unwrap_or(default));
    });
}
