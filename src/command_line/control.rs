//! `evensip control`: whether measures still dose as they did, by their dated readings, and which approved drinks move with them.

use std::fmt::Write as _;
use std::process::ExitCode;

use clap::Args;
use serde_json::{Value, json};

use super::{Failure, facts, open, print, print_json, report_errors, unknown};
use crate::balance::{ChartDay, ChartKind, ControlChart, Signal, TooFewDays, control_charts};
use crate::book::{Book, IngredientId, Measure, MeasureId};
use crate::say::Speaker;
use crate::swap::{Drifted, moved_as_charted};

/// Arguments of `control`.
#[derive(Debug, Args)]
pub struct ControlArguments {
    /// The book
    book: std::path::PathBuf,
    /// Id of the measure; every measure with readings of two days or more when none is given
    #[arg(long)]
    measure: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// A chart of a measure with what it leads to.
struct Charted<'book> {
    measure: &'book Measure,
    chart: ControlChart,
    moved: Vec<Drifted>,
}

pub(super) fn run(arguments: &ControlArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let measures = measures(&book, arguments.measure.as_deref())?;
    let (mut charted, mut too_few) = (Vec::new(), Vec::new());
    for measure in measures {
        for chart in control_charts(measure) {
            match chart {
                Ok(chart) => charted.push(Charted::new(&book, measure, chart)),
                Err(few) => too_few.push((measure, few)),
            }
        }
    }
    let speaker = Speaker::new(&book);
    if arguments.json {
        let charts: Vec<Value> = charted.iter().map(|one| one.document(&speaker)).collect();
        let few = too_few.iter().map(|(measure, few)| {
            facts::too_few_days(few).beside(json!({
                "measure": measure.id.as_str(),
                "text": speaker.too_few_days(few),
            }))
        });
        print_json(&json!({ "charts": charts, "too_few": few.collect::<Vec<_>>() }))?;
    } else {
        let charts = charted.iter().map(|one| one.text(&speaker));
        let few = too_few.iter();
        let few = few.map(|(measure, few)| too_few_text(&speaker, measure, few));
        let texts: Vec<String> = charts.chain(few).collect();
        print(&if texts.is_empty() {
            super::speaker().word("command-control-none").to_owned()
        } else {
            texts.join("\n\n")
        })?;
    }
    Ok(report_errors(&book, &findings))
}

fn measures<'book>(book: &'book Book, asked: Option<&str>) -> Result<Vec<&'book Measure>, Failure> {
    let all = || book.measures.iter().map(AsRef::as_ref);
    let Some(text) = asked else {
        return Ok(all().collect());
    };
    let found = MeasureId::new(text).ok().and_then(|id| book.measure(&id));
    found.map(|measure| vec![measure.as_ref()]).ok_or_else(|| {
        let known = book.measures.iter().map(|measure| measure.id.as_str());
        unknown("command-no-measure", text, known)
    })
}

fn too_few_text(speaker: &Speaker<'_>, measure: &Measure, few: &TooFewDays) -> String {
    let name = speaker.measured(&measure.id, few.ingredient.as_ref());
    format!("{name}\n{}", speaker.too_few_days(few))
}

impl<'book> Charted<'book> {
    fn new(book: &Book, measure: &'book Measure, chart: ControlChart) -> Self {
        let moved = moved_as_charted(book, measure, &chart);
        Self {
            measure,
            chart,
            moved,
        }
    }

    fn text(&self, speaker: &Speaker<'_>) -> String {
        let chart = &self.chart;
        let ingredient = chart.ingredient.as_ref();
        let mut text = speaker.measured(&self.measure.id, ingredient);
        for day in &chart.days {
            let mass = |grams| speaker.chart_mass(chart, day, grams);
            let signals = day.signals.iter();
            let signals: Vec<String> = signals.map(|one| speaker.chart_signal(*one)).collect();
            let [least, most] = day.mean.limits;
            let row = format!(
                "\n  {}  {}  ({} – {})  {}",
                day.date,
                mass(day.mean.value),
                mass(least),
                mass(most),
                signals.join("; ")
            );
            text.push_str(row.trim_end());
        }
        for (said, _) in self.remarks(speaker) {
            let _ = write!(text, "\n{said}");
        }
        if !self.moved.is_empty() {
            let _ = write!(text, "\n{}", super::speaker().word("control-moved-about"));
            for moved in &self.moved {
                let _ = write!(text, "\n  {}", speaker.moved_drink(moved));
            }
        } else if chart.shift().is_some() {
            let _ = write!(text, "\n{}", speaker.none_moved());
        }
        text
    }

    /// What is said of it, with its fact.
    fn remarks(&self, speaker: &Speaker<'_>) -> Vec<(String, facts::Fact)> {
        let chart = &self.chart;
        let shift = chart.shift();
        let last = chart.days.last();
        let limits = last.map(|last| {
            let said = speaker.chart_limits(chart, last);
            (said, facts::chart_limits(chart, last))
        });
        let rough = speaker.chart_rough(chart);
        let rough = rough.map(|said| (said, facts::chart_rough(chart)));
        let shift = (
            speaker.chart_shift(shift.as_ref()),
            facts::chart_shift(shift.as_ref()),
        );
        limits.into_iter().chain(rough).chain([shift]).collect()
    }

    fn document(&self, speaker: &Speaker<'_>) -> Value {
        let chart = &self.chart;
        let remarks = self.remarks(speaker).into_iter();
        let remarks = remarks.map(|(said, fact)| fact.beside(json!({ "text": said })));
        let moved = self.moved.iter().map(|moved| {
            facts::moved_drink(moved).beside(json!({ "text": speaker.moved_drink(moved) }))
        });
        json!({
            "measure": self.measure.id.as_str(),
            "ingredient": chart.ingredient.as_ref().map(IngredientId::as_str),
            "spread_by": spread_word(chart.kind),
            "centre": chart.centre,
            "scatter": chart.scatter,
            "unit": "g",
            "days": chart.days.iter().map(day).collect::<Vec<_>>(),
            "remarks": remarks.collect::<Vec<_>>(),
            "moved": moved.collect::<Vec<_>>(),
        })
    }
}

fn spread_word(kind: ChartKind) -> &'static str {
    match kind {
        ChartKind::Range => "range",
        ChartKind::Deviation => "standard-deviation",
        ChartKind::MovingRange => "moving-range",
    }
}

fn day(day: &ChartDay) -> Value {
    let signals = day.signals.iter().copied().map(Signal::word);
    json!({
        "date": day.date,
        "readings": day.readings,
        "uses": day.uses,
        "mean": day.mean.value,
        "limits": day.mean.limits,
        "spread": day.spread.map(|spread| spread.value),
        "spread_limits": day.spread.map(|spread| spread.limits),
        "sets_limits": day.is_base,
        "signals": signals.collect::<Vec<_>>(),
    })
}
