//! `evensip cups`: how many of a hundred cups taste like the standard, and what would help.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::json::uncertain;
use super::{
    CupsArguments, Failure, facts, open, print, print_json, recipe_called, report_errors, speaker,
    version_called,
};
use crate::book::{Book, Recipe, VersionId};
use crate::cups::{
    AxisCups, Cups, CupsQuestion, CupsRemark, HeldTo, Helps, OfAHundred, Share, draw_cups,
};
use crate::say::{Speaker, say};

pub(super) fn run(arguments: &CupsArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let version = version_called(recipe, arguments.version.as_deref())?;
    let question = CupsQuestion {
        seed: arguments.seed,
        shifts: arguments.shifts as usize,
        ..CupsQuestion::default()
    };
    let Some(cups) = draw_cups(&book, recipe, version.as_ref(), question, &|| false) else {
        return Err(Failure::Usage(
            speaker().word("command-no-drink").to_owned(),
        ));
    };
    if arguments.json {
        print_json(&document(&book, recipe, version.as_ref(), &cups))?;
    } else {
        print(&sheet(&book, &cups))?;
    }
    Ok(report_errors(&book, &findings))
}

fn document(book: &Book, recipe: &Recipe, version: Option<&VersionId>, cups: &Cups) -> Value {
    let speaker = Speaker::new(book);
    let remarks = cups.remarks();
    let said = |remark: &CupsRemark| {
        let text = speaker.cups_remark(cups, remark);
        facts::cups_remark(cups, remark).beside(json!({ "text": text }))
    };
    json!({
        "recipe": recipe.id.as_str(),
        "version": version.map(VersionId::as_str),
        "held_to": match &cups.held_to {
            HeldTo::Standard(day) => json!({ "standard": day }),
            HeldTo::Itself => json!("recipe"),
        },
        "seed": cups.question.seed,
        "shifts": cups.question.shifts,
        "cups_per_shift": cups.question.per_shift,
        "within": cups.within.map(share),
        "worst_and_best_shift": cups.shifts,
        "recipe_is_level": cups.recipe_is_level,
        "axes": cups.axes.iter().map(axis).collect::<Vec<_>>(),
        "drawn": facts::drawn_causes(&cups.drawn),
        "helps": cups.helps.iter().map(|helps| help(speaker, cups, helps)).collect::<Vec<_>>(),
        "remarks": remarks.iter().map(said).collect::<Vec<_>>(),
    })
}

/// A share from 0 to 1.
fn share(share: Share) -> Value {
    json!({ "value": share.value, "u": share.u })
}

fn axis(axis: &AxisCups) -> Value {
    let [less, more] = axis.off;
    json!({
        "axis": axis.axis.word(),
        "unit": axis.axis.unit(),
        "aim": axis.aim,
        "step": axis.step,
        "counts": axis.counts,
        "recipe_steps": axis.nominal,
        "within": axis.within.map(share),
        "less": axis.within.map(|_| less),
        "more": axis.within.map(|_| more),
        "steps_of_100_cups": axis.quantiles,
    })
}

fn help(speaker: Speaker<'_>, cups: &Cups, helps: &Helps) -> Value {
    let remark = CupsRemark::Helps(helps.clone());
    facts::cups_remark(cups, &remark).beside(json!({
        "text": speaker.cups_remark(cups, &remark),
        "within": helps.share,
        "gain": uncertain(helps.gain),
    }))
}

fn sheet(book: &Book, cups: &Cups) -> String {
    let speaker = Speaker::new(book);
    let mut sheet = String::new();
    for remark in cups.remarks() {
        let _ = writeln!(sheet, "{}", speaker.cups_remark(cups, &remark));
    }
    for axis in cups.axes.iter().filter(|axis| axis.counts) {
        let [less, more] = axis
            .off
            .map(|share| speaker.of_a_hundred(OfAHundred::of(share)));
        let within = axis.within.map_or(0.0, |share| share.value);
        let line = say!(
            speaker,
            "command-cups-axis",
            within: speaker.of_a_hundred(OfAHundred::of(within)),
            less: less,
            more: more,
        );
        let _ = write!(sheet, "\n{:<24}{line}", speaker.axis(&axis.axis));
    }
    sheet
}
