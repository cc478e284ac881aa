//! `evensip last-sip`: what becomes of a drink from the counter to the last sip.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::{Value, json};

use super::json::uncertain;
use super::{
    Failure, LastSipArguments, facts, open, print, print_json, recipe_called, report_errors,
    speaker, version_called,
};
use crate::balance::{
    LastSip, LastSipRemark, OtherWay, Sip, balance_version, last_sip, other_ways, standard_balance,
};
use crate::book::{Axis, Book, Recipe, VersionId};
use crate::quantity::Uncertain;
use crate::say::{Speaker, say};

/// Minutes between two rows for people.
const ROWS: usize = 5;

pub(super) fn run(arguments: &LastSipArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let version = version_called(recipe, arguments.version.as_deref())?;
    let no_drink = || Failure::Usage(speaker().word("command-no-course").to_owned());
    let balance = balance_version(&book, recipe, version.as_ref()).ok_or_else(no_drink)?;
    let standard = standard_balance(&book, recipe, version.as_ref()).map(|found| found.0);
    let minutes: Vec<f64> = (0..=arguments.minutes).map(f64::from).collect();
    let course = last_sip(&book, &balance, standard.as_ref(), &minutes).ok_or_else(no_drink)?;
    let others = other_ways(&book, &balance, standard.as_ref(), &minutes);
    let mut remarks = course.remarks();
    let on_the_way = arguments.on_the_way.map(f64::from);
    remarks.extend(on_the_way.and_then(|minutes| course.arrival(minutes)));
    if arguments.json {
        let drink = (recipe, version.as_ref());
        print_json(&document(&book, drink, &course, &remarks, &others))?;
    } else {
        print(&sheet(&book, &course, &remarks, &others))?;
    }
    Ok(report_errors(&book, &findings))
}

fn document(
    book: &Book,
    (recipe, version): (&Recipe, Option<&VersionId>),
    course: &LastSip,
    remarks: &[LastSipRemark],
    others: &[(OtherWay, LastSip)],
) -> Value {
    let speaker = Speaker::new(book);
    let said = |remark: &LastSipRemark| {
        let text = speaker.last_sip_remark(remark);
        facts::last_sip_remark(remark).beside(json!({ "text": text }))
    };
    let other = |(way, course): &(OtherWay, LastSip)| {
        facts::other_way(way).beside(json!({
            "text": speaker.last_sip_otherwise(way, course),
            "level_between": course.level_between(),
            "best_after": course.best().map(|sip| sip.minutes),
        }))
    };
    json!({
        "recipe": recipe.id.as_str(),
        "version": version.map(VersionId::as_str),
        "axes": LastSip::AXES.iter().map(Axis::word).collect::<Vec<_>>(),
        "aims": course.aims,
        "steps": course.step,
        "level_between": course.level_between(),
        "best_after": course.best().map(|sip| sip.minutes),
        "melt_rate": course.melt_rate.map(|rate| json!({
            "grams_per_minute": uncertain(rate.grams_per_minute),
            "stated": rate.is_stated,
        })),
        "sips": course.sips.iter().map(sip).collect::<Vec<_>>(),
        "remarks": remarks.iter().map(said).collect::<Vec<_>>(),
        "otherwise": others.iter().map(other).collect::<Vec<_>>(),
    })
}

fn sip(sip: &Sip) -> Value {
    json!({
        "minutes": sip.minutes,
        "temperature": uncertain(sip.temperature),
        "ice": uncertain(sip.ice),
        "sweetness": sip.sweetness.map(uncertain),
        "tea_strength": sip.tea_strength.map(uncertain),
        "off_by_steps": sip.steps,
        "distance": sip.distance,
    })
}

fn sheet(
    book: &Book,
    course: &LastSip,
    remarks: &[LastSipRemark],
    others: &[(OtherWay, LastSip)],
) -> String {
    let speaker = Speaker::new(book);
    let mut sheet = String::new();
    for remark in remarks {
        let _ = writeln!(sheet, "{}", speaker.last_sip_remark(remark));
    }
    for (way, course) in others {
        if let Some(said) = speaker.last_sip_otherwise(way, course) {
            let _ = writeln!(sheet, "{said}");
        }
    }
    let not_known = || speaker.word("command-not-known").to_owned();
    let known = |figure: Option<Uncertain>, unit: &str| {
        figure.map_or_else(not_known, |figure| speaker.uncertain(figure, unit))
    };
    for sip in course.sips.iter().step_by(ROWS) {
        let row = say!(
            speaker,
            "command-sip",
            temperature: speaker.uncertain(sip.temperature, "°C"),
            sweetness: known(sip.sweetness, "g/100 ml"),
            tea: known(sip.tea_strength, "g/100 ml"),
            distance: sip.distance.map_or_else(not_known, |distance| speaker.steps(distance)),
        );
        let minutes = speaker.in_unit(sip.minutes, "min", 0);
        let _ = write!(sheet, "\n{minutes:<8}{row}");
    }
    sheet
}
