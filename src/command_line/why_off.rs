//! `evensip why-off`: what most likely went wrong with one cup that was weighed or read.

use std::process::ExitCode;

use serde_json::{Value, json};

use super::json::uncertain;
use super::{
    Failure, WhyOffArguments, facts, open, print, print_json, recipe_called, report_errors,
    speaker, version_called,
};
use crate::book::{Book, Recipe, VersionId};
use crate::cups::{CupDoctor, CupReading, LikelyFault, Measured, OffBy, WhyOff, WhyOffRemark};
use crate::say::Speaker;
use crate::tasting::{BrixReading, USUAL_LIMITS_BRIX, soluble_solids};

pub(super) fn run(arguments: &WhyOffArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let recipe = recipe_called(&book, &arguments.recipe)?;
    let version = version_called(recipe, arguments.version.as_deref())?;
    let Some(doctor) = CupDoctor::of(&book, recipe, version.as_ref()) else {
        return Err(Failure::Usage(
            speaker().word("command-no-drink").to_owned(),
        ));
    };
    let why = doctor.why_off(&readings(&book, &doctor, arguments)?);
    if arguments.json {
        print_json(&document(&book, recipe, version.as_ref(), &why))?;
    } else {
        let speaker = Speaker::new(&book);
        let remarks = why.remarks();
        let said = remarks.iter();
        let said: Vec<String> = said
            .map(|remark| speaker.why_off_remark(&why, remark))
            .collect();
        print(&said.join("\n"))?;
    }
    Ok(report_errors(&book, &findings))
}

/// What was read, each with what its instrument may be off by.
fn readings(
    book: &Book,
    doctor: &CupDoctor,
    arguments: &WhyOffArguments,
) -> Result<Vec<CupReading>, Failure> {
    let reading = |measured: Measured, value: Option<f64>| {
        value.map(|value| doctor.reading(book, measured, value))
    };
    let brix = arguments.brix.map(|brix| {
        let reading = BrixReading {
            brix,
            celsius: arguments.brix_at,
            limits: USUAL_LIMITS_BRIX,
            misleading: Vec::new(),
        };
        soluble_solids(&reading).map_err(|outside| Failure::Usage(speaker().brix_outside(&outside)))
    });
    let brix = brix.transpose()?.map(|read| read.solids.value);
    let readings = [
        reading(Measured::Weight, arguments.weight),
        reading(Measured::Temperature, arguments.celsius),
        reading(Measured::Brix, brix),
        reading(Measured::Ice, arguments.ice),
    ];
    Ok(readings.into_iter().flatten().collect())
}

fn document(book: &Book, recipe: &Recipe, version: Option<&VersionId>, why: &WhyOff) -> Value {
    let speaker = Speaker::new(book);
    let remarks = why.remarks();
    let said = |remark: &WhyOffRemark| {
        let text = speaker.why_off_remark(why, remark);
        facts::why_off_remark(remark).beside(json!({ "text": text }))
    };
    let cause = |likely: &LikelyFault| {
        facts::likely_fault(likely).beside(json!({
            "text": speaker.fault(&why.balance, likely),
            "probability": likely.probability,
        }))
    };
    json!({
        "recipe": recipe.id.as_str(),
        "version": version.map(VersionId::as_str),
        "readings": why.readings.iter().map(off_by).collect::<Vec<_>>(),
        "told": why.told().is_some(),
        "unexplained": why.is_unexplained,
        "causes": why.causes.iter().map(cause).collect::<Vec<_>>(),
        "next": why.next.map(|next| json!({
            "measure": next.measured.word(),
            "likeliest_then": next.likely,
        })),
        "remarks": remarks.iter().map(said).collect::<Vec<_>>(),
    })
}

fn off_by(off: &OffBy) -> Value {
    let measured = off.reading.measured;
    json!({
        "measured": measured.word(),
        "unit": measured.measurand().unit(),
        "read": uncertain(off.reading.read),
        "should": off.should.map(uncertain),
        "apart": off.apart,
    })
}
