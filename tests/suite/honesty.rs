//! The table of honesty: whether published figures lie as far from those of the engine as its standard uncertainties say.
//!
//! A width never comes from the rows that check it: each group of `published-cases/honesty.ron` says where it does come from.

use std::fmt::Write as _;

use evensip::quantity::Uncertain;
use serde::Deserialize;

use crate::honesty_answers::{Ask, answer, by_concentration};
use crate::{cooling_ahead, engine_reference, not_stated, published_cases};

/// Within these, the root mean square of deviation over uncertainty is honest.
const HONEST: std::ops::RangeInclusive<f64> = 0.5..=1.5;

/// Fewer figures than this say nothing about a width.
const LEAST: usize = 5;

/// How many standard uncertainties, and the part of a normal law that lies within them.
const WITHIN: [(f64, f64); 4] = [(0.5, 0.383), (1.0, 0.683), (2.0, 0.954), (3.0, 0.997)];

const ONE_OVER_SQRT_3: f64 = 0.577_350_269_189_625_8;

#[derive(Deserialize)]
struct Group {
    name: String,
    unit: String,
    source: String,
    width: String,
    #[serde(default)]
    apart: Option<String>,
    rows: Vec<Row>,
}

#[derive(Deserialize)]
struct Row {
    of: String,
    ask: Ask,
    published: f64,
    u: f64,
}

/// A line of the table.
struct Judged {
    name: String,
    /// Why it does not count, if it doesn't.
    apart: Option<String>,
    deviations: Vec<f64>,
}

impl Judged {
    fn new(name: &str, deviations: Vec<f64>) -> Self {
        Self {
            name: name.to_owned(),
            apart: None,
            deviations,
        }
    }

    fn apart(self, why: &str) -> Self {
        Self {
            apart: Some(why.to_owned()),
            ..self
        }
    }

    fn within(&self, times: f64) -> f64 {
        let inside = self.deviations.iter().filter(|off| off.abs() < times);
        inside.count() as f64 / self.deviations.len() as f64
    }

    fn root_mean_square(&self) -> f64 {
        let squares: f64 = self.deviations.iter().map(|off| off * off).sum();
        (squares / self.deviations.len() as f64).sqrt()
    }

    fn is_asserted(&self) -> bool {
        self.apart.is_none() && self.deviations.len() >= LEAST
    }

    fn is_honest(&self) -> bool {
        HONEST.contains(&self.root_mean_square())
    }

    fn line(&self) -> String {
        let shares: Vec<String> = WITHIN
            .iter()
            .map(|(times, _)| format!("{:5.1}", 100.0 * self.within(*times)))
            .collect();
        let note = match &self.apart {
            Some(why) => format!("  {why}"),
            None if self.deviations.len() < LEAST => "  too few to judge".to_owned(),
            None if self.is_honest() => String::new(),
            None => "  OUTSIDE".to_owned(),
        };
        format!(
            "{:52} {:4}   {}   {:4.2}{note}",
            self.name,
            self.deviations.len(),
            shares.join("  "),
            self.root_mean_square()
        )
    }
}

fn groups() -> Vec<Group> {
    ron::from_str(include_str!("../published-cases/honesty.ron"))
        .expect("the case file is well formed")
}

/// Deviation over uncertainty; `None` where both figures are exact and alike, which says nothing about a width.
fn deviation(engine: Uncertain, published: Uncertain) -> Option<f64> {
    let off = engine.value - published.value;
    let u = engine.u.hypot(published.u);
    (u > 0.0 || off.abs() > 1e-12).then(|| off / u)
}

fn judged(group: &Group, details: &mut String) -> Judged {
    writeln!(
        details,
        "\n{}, {}: {}\n  width: {}",
        group.name, group.unit, group.source, group.width
    )
    .unwrap();
    let mut deviations = Vec::new();
    for row in &group.rows {
        let engine = answer(&row.ask);
        let published = Uncertain {
            value: row.published,
            u: row.u,
        };
        if let Some(off) = deviation(engine, published) {
            deviations.push(off);
            writeln!(
                details,
                "  {:60.60} {:9.4} ± {:7.4}  published {:9.4} ± {:7.4}  {off:+.2}",
                row.of, engine.value, engine.u, published.value, published.u
            )
            .unwrap();
        }
    }
    Judged {
        apart: group.apart.clone(),
        ..Judged::new(&group.name, deviations)
    }
}

#[derive(Deserialize)]
struct Printed {
    of: String,
    printed: Vec<(String, f64, f64)>,
}

/// What the rule of the constants makes of printed ranges: the median of their middles, and all figures as drawn from one rectangular
/// distribution, of which `n` span `(n − 1)/(n + 1)` on average.
fn by_the_rule(ranges: &[(f64, f64)]) -> Uncertain {
    let mut middles: Vec<f64> = ranges
        .iter()
        .map(|(low, high)| f64::midpoint(*low, *high))
        .collect();
    middles.sort_by(f64::total_cmp);
    let half = middles.len() / 2;
    let value = if middles.len().is_multiple_of(2) {
        f64::midpoint(middles[half - 1], middles[half])
    } else {
        middles[half]
    };
    let lowest = ranges.iter().map(|range| range.0).fold(f64::MAX, f64::min);
    let highest = ranges.iter().map(|range| range.1).fold(f64::MIN, f64::max);
    let figures: f64 = ranges
        .iter()
        .map(|(low, high)| if low < high { 2.0 } else { 1.0 })
        .sum();
    let widened = (figures + 1.0) / (figures - 1.0);
    Uncertain {
        value,
        u: widened * (highest - lowest) / 2.0 * ONE_OVER_SQRT_3,
    }
}

/// Each table of relative sweetness told from all others by the rule that the constants of the engine were made by. A table whose
/// others agree to the last digit can't be told with a width.
fn sweetness_of_each_table() -> Vec<f64> {
    let all: Vec<Printed> = ron::from_str(include_str!("../published-cases/sweetness_tables.ron"))
        .expect("the case file is well formed");
    let mut deviations = Vec::new();
    for substance in &all {
        assert!(substance.printed.len() > 2, "{}", substance.of);
        for (source, low, high) in &substance.printed {
            let others: Vec<(f64, f64)> = substance
                .printed
                .iter()
                .filter(|(other, ..)| other != source)
                .map(|(_, low, high)| (*low, *high))
                .collect();
            let told = by_the_rule(&others);
            let published = Uncertain {
                value: f64::midpoint(*low, *high),
                u: (high - low) / 2.0 * ONE_OVER_SQRT_3,
            };
            if told.u > 0.0 {
                deviations.extend(deviation(told, published));
            }
        }
    }
    deviations
}

#[test]
fn the_constants_of_sweetness_are_what_their_tables_and_the_rule_give() {
    let all: Vec<Printed> = ron::from_str(include_str!("../published-cases/sweetness_tables.ron"))
        .expect("the case file is well formed");
    for substance in all {
        let ranges: Vec<(f64, f64)> = substance
            .printed
            .iter()
            .map(|(_, low, high)| (*low, *high))
            .collect();
        let by_rule = by_the_rule(&ranges);
        let known = answer(&Ask::Sweetness(substance.of.clone()));
        assert!(
            (by_rule.value - known.value).abs() < 0.006 && (by_rule.u - known.u).abs() < 0.001,
            "{}: {by_rule:?} by the rule, {known:?} in the engine",
            substance.of
        );
    }
}

fn table() -> (Vec<Judged>, String) {
    let mut details = String::new();
    let mut all: Vec<Judged> = groups()
        .iter()
        .map(|group| judged(group, &mut details))
        .collect();
    all.push(Judged::new(
        "relative sweetness, each table told from the others",
        sweetness_of_each_table(),
    ));
    for first in [4, 8] {
        all.push(Judged::new(
            &format!("cooling of published cups from {first} readings"),
            cooling_ahead::off_ahead(first),
        ));
    }
    let assumed = not_stated::held_and_assumed();
    let of_foods = assumed.iter().filter_map(|held| {
        let published = Uncertain {
            value: held.published,
            // Tables print two places.
            u: 0.005 * ONE_OVER_SQRT_3,
        };
        (held.assumed.u > 0.0).then(|| deviation(held.assumed, published))?
    });
    all.push(
        Judged::new("what a kind holds where nobody says it", of_foods.collect())
            .apart("its widths were set to cover these foods"),
    );
    let energies = engine_reference::energies().into_iter();
    let of_energies = energies.filter_map(|(kcal, engine)| {
        deviation(
            engine,
            Uncertain {
                value: kcal,
                u: 0.5 * ONE_OVER_SQRT_3,
            },
        )
    });
    all.push(Judged::new(
        "energy of foods from their composition",
        of_energies.collect(),
    ));
    (all, details)
}

/// Prints the table (`--nocapture` shows it) and holds every group that counts against its widths.
#[test]
#[expect(clippy::print_stdout, reason = "the table is the point of this test")]
fn deviations_from_published_figures_are_as_large_as_the_uncertainties_say() {
    let (all, details) = table();
    let mut text = details;
    let heads: Vec<String> = WITHIN
        .iter()
        .map(|(times, share)| format!("<{times} u (normal {:.1} %)", 100.0 * share))
        .collect();
    writeln!(
        text,
        "\nshare of deviations in %: {}; then their root mean square in u, honest from {} to {}",
        heads.join(", "),
        HONEST.start(),
        HONEST.end()
    )
    .unwrap();
    let (counting, apart): (Vec<&Judged>, Vec<&Judged>) =
        all.iter().partition(|judged| judged.apart.is_none());
    for judged in &counting {
        writeln!(text, "{}", judged.line()).unwrap();
    }
    text.push_str("apart, and not counted:\n");
    for judged in &apart {
        writeln!(text, "{}", judged.line()).unwrap();
    }
    text.push_str("held by a tolerance, since the code carries the formula of the source:\n");
    for (name, figures) in published_cases::held_by_tolerance() {
        writeln!(text, "{name:52} {figures:4}").unwrap();
    }
    println!("{text}");
    let dishonest: Vec<String> = counting
        .iter()
        .filter(|judged| judged.is_asserted() && !judged.is_honest())
        .map(|judged| judged.line())
        .collect();
    assert!(
        counting
            .iter()
            .filter(|judged| judged.is_asserted())
            .count()
            >= 8,
        "groups that count"
    );
    assert!(dishonest.is_empty(), "{dishonest:#?}");
}

/// Adding what each sweetener tastes of alone misses published mixtures by less than adding concentrations and reading one curve.
#[test]
fn sums_of_sweetness_miss_published_mixtures_by_less_than_sums_of_concentrations() {
    let (mut by_sum, mut by_curve, mut mixtures) = (0.0, 0.0, 0);
    for row in groups().iter().flat_map(|group| &group.rows) {
        if let Some(concentrations) = by_concentration(&row.ask) {
            by_sum += (answer(&row.ask).value / row.published).ln().powi(2);
            by_curve += (concentrations / row.published).ln().powi(2);
            mixtures += 1;
        }
    }
    assert!(mixtures >= 5, "{mixtures}");
    assert!(by_sum < by_curve, "{by_sum} against {by_curve}");
}
