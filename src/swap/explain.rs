//! The sentences that go with a swap.

use crate::balance::{Balance, Difference, LineShare, Measurand};
use crate::book::{Amount, Axis, Book, LineId, Resolved};
use crate::quantity::{DisplayUnits, show_count, show_number};

use super::answer::{Answer, Suggestion, SuggestionKind};
use super::changes::LineMove;
use super::demands::Demands;
use super::problem::Problem;
use super::shortfall::Hindrance;

/// "house sweetener 1 → ½ spoon". The line has the name that it ends with: `lines` are looked through in order.
pub fn move_words(book: &Book, moved: &LineMove, lines: &[&Resolved]) -> String {
    move_words_in(book, moved, lines, DisplayUnits::METRIC)
}

/// The same with volumes in the unit that a person reads.
pub fn move_words_in(
    book: &Book,
    moved: &LineMove,
    lines: &[&Resolved],
    units: DisplayUnits,
) -> String {
    let words = |amount: &Amount| book.amount_words_in(amount, units);
    let line = lines.iter().find_map(|resolved| resolved.line(&moved.line));
    let name = line
        .and_then(|line| book.ingredient(&line.ingredient))
        .map_or_else(
            || moved.line.to_string(),
            |ingredient| ingredient.full_name(),
        );
    match (&moved.from, &moved.to) {
        (None, Some(to)) => format!("{name} none → {}", words(to)),
        (Some(from), None) => format!("{name} {} → none", words(from)),
        (Some(from), Some(to)) => {
            let same_word = unit_word(book, from) == unit_word(book, to);
            let from = match from.number().filter(|_| same_word) {
                Some(number) => match from {
                    Amount::Millilitres(_) | Amount::FillTo(_) => units.volume_number(number),
                    _ => show_count(number),
                },
                None => words(from),
            };
            format!("{name} {from} → {}", words(to))
        }
        (None, None) => name,
    }
}

fn unit_word(book: &Book, amount: &Amount) -> String {
    match amount {
        Amount::Count(_, measure) => book
            .measure(measure)
            .map_or_else(String::new, |measure| measure.words().0.into()),
        Amount::Grams(_) => "g".to_owned(),
        Amount::Millilitres(_) => "ml".to_owned(),
        Amount::FillTo(_) | Amount::FillToRim => "fill".to_owned(),
    }
}

/// What the plain swap does and what the suggestion makes of it.
pub(super) fn explain(
    book: &Book,
    answer: &Answer,
    kind: SuggestionKind,
    moves: &[LineMove],
    suggested: &Balance,
    difference: &Difference,
) -> String {
    let sugar = |balance: &Balance| {
        let is_known = balance.figures.complete(Measurand::TotalSugar).is_some();
        let grams = show_number(balance.figures.of[Measurand::TotalSugar.slot()], 1);
        let least = if is_known { "" } else { "at least " };
        format!("{least}{grams} g")
    };
    let name = book.ingredient(&answer.question.with).map_or_else(
        || "the other ingredient".to_owned(),
        |item| item.full_name(),
    );
    let first = format!(
        "{name} by equal measures gives {} of sugar instead of {}.",
        sugar(&answer.plain),
        sugar(&answer.standard)
    );
    let lines = [
        &suggested.resolved,
        &answer.plain.resolved,
        &answer.standard.resolved,
    ];
    let words: Vec<String> = moves
        .iter()
        .map(|one| move_words(book, one, &lines))
        .collect();
    let with = if words.is_empty() {
        "Left as it is,".to_owned()
    } else {
        format!("With {},", words.join(" and "))
    };
    let gain = match kind {
        SuggestionKind::Cheapest => {
            let cost = |balance: &Balance| balance.figures.of[Measurand::Cost.slot()];
            let missing = |balance: &Balance| balance.reported(Measurand::Cost).missing;
            let saved = cost(&answer.standard) - cost(suggested);
            let word = if saved >= 0.0 { "less" } else { "more" };
            // What costs an unknown amount in both falls out of the difference.
            if missing(&answer.standard) == missing(suggested) {
                format!(
                    " and it costs {} {} {word} than the standard",
                    show_number(saved.abs(), 2),
                    book.settings.currency
                )
            } else {
                " and it costs the least that is possible".to_owned()
            }
        }
        SuggestionKind::LeastSugar => {
            format!(" and it holds {} of sugar", sugar(suggested))
        }
        SuggestionKind::FewestChanges | SuggestionKind::ClosestTaste => String::new(),
    };
    format!("{first} {with} {}{gain}.", largest_difference(difference))
}

fn largest_difference(difference: &Difference) -> String {
    let largest = difference
        .axes
        .iter()
        .filter(|axis| axis.weight > 0.0)
        .filter_map(|axis| axis.steps.map(|steps| (axis, steps)))
        .max_by(|one, other| one.1.abs().total_cmp(&other.1.abs()));
    let Some((axis, steps)) = largest else {
        return "nothing can be compared".to_owned();
    };
    let (more, less) = axis.axis.comparatives();
    let word = if steps > 0.0 { more } else { less };
    if difference.is_level() {
        return "it is level with the standard on every axis".to_owned();
    }
    let size = show_number(steps.abs(), 1);
    let largest = match difference.within_one_step() {
        Some(false) => format!("the largest difference left is {word} by {size} noticeable steps"),
        Some(true) => format!(
            "no difference reaches a noticeable step; the largest is {word} by {size} of a step"
        ),
        None => format!(
            "no difference that is known reaches a noticeable step; the largest is {word} by {size} of a step"
        ),
    };
    let not_known: Vec<&str> = difference.not_compared().map(Axis::word).collect();
    if not_known.is_empty() {
        largest
    } else {
        format!("{largest}; not known: {}", not_known.join(", "))
    }
}

/// Why a swap can't be compensated for want of a figure: it names what to read, and does not guess.
pub(super) fn gap_reason(book: &Book, answer: &Answer) -> Option<String> {
    for (balance, what) in [
        (&answer.standard, "the standard"),
        (&answer.plain, "the swap"),
    ] {
        let reported = balance.reported(Measurand::Sweetness);
        if !reported.missing.is_empty() {
            let names: Vec<String> = reported
                .missing
                .iter()
                .map(|id| {
                    book.ingredient(id)
                        .map_or_else(|| id.to_string(), |item| item.full_name())
                })
                .collect();
            return Some(format!(
                "the sweetness of {what} is not known: read the sugars (and their kind) on the label of {}, or measure its °Brix",
                names.join(" and ")
            ));
        }
    }
    None
}

/// Which axis the best answer does not reach, and why.
pub(super) fn short_reason(
    book: &Book,
    answer: &Answer,
    suggestion: &Suggestion,
    problem: &Problem,
    demands: &Demands,
) -> Vec<String> {
    let mut reasons: Vec<String> = suggestion
        .difference
        .axes
        .iter()
        // What differs on purpose, an iced drink from its hot standard, is not to be reached.
        .filter(|axis| axis.weight > 0.0)
        .filter_map(|axis| {
            let steps = axis.steps.filter(|steps| steps.abs() > 1.0)?;
            let (more, less) = axis.axis.comparatives();
            let word = if steps > 0.0 { more } else { less };
            Some(format!(
                "{} can't be reached: {word} by {} noticeable steps with the closest amounts of the lines that may move{}",
                axis.axis.word(),
                show_number(steps.abs(), 1),
                why_short(book, suggestion, problem, &axis.axis)
            ))
        })
        .collect();
    if let (false, Some(caps)) = (reasons.is_empty(), caps_in_words(book, demands)) {
        reasons.push(format!(
            "the taste was looked for under {caps}; without that it may come closer"
        ));
    }
    let not_compared: Vec<&str> = suggestion
        .difference
        .not_compared()
        .map(crate::book::Axis::word)
        .collect();
    if !not_compared.is_empty() {
        let name = book
            .ingredient(&answer.question.with)
            .map_or_else(|| "an ingredient".to_owned(), |item| item.full_name());
        reasons.push(format!(
            "not compared, because {name} or another ingredient does not state it: {}",
            not_compared.join(", ")
        ));
    }
    reasons
}

/// What stands in the way of an axis: the line that brings most of the sugar and can't be taken back, or what another step runs
/// into.
fn why_short(book: &Book, suggestion: &Suggestion, problem: &Problem, axis: &Axis) -> String {
    let mut shortfalls = suggestion.shortfalls.iter();
    let Some(short) = shortfalls.find(|short| short.axis == *axis) else {
        // A flavour that nothing in the drink has any more is not even looked for.
        return format!("; {}", Hindrance::NoLine.words(book, &problem.lines));
    };
    if *axis == Axis::Sweetness && short.steps > 0.0 {
        let sugar = |share: &LineShare| share.sugar.unwrap_or(0.0);
        let most = suggestion
            .balance
            .lines
            .iter()
            .max_by(|one, other| sugar(one).total_cmp(&sugar(other)));
        if let Some(share) = most.filter(|share| !may_shrink(problem, suggestion, &share.line)) {
            let name = book
                .ingredient(&share.ingredient)
                .map_or_else(|| share.ingredient.to_string(), |item| item.full_name());
            return format!(
                "; {name} alone carries {} g of sugar",
                show_number(sugar(share), 1)
            );
        }
    }
    format!("; {}", short.why.words(book, &problem.lines))
}

/// Whether there may be less of a line than a suggestion has.
fn may_shrink(problem: &Problem, suggestion: &Suggestion, line: &LineId) -> bool {
    let moving = problem.adjustable.iter().zip(&suggestion.point);
    moving
        .filter(|(adjustable, _)| adjustable.line.id == *line)
        .any(|(adjustable, steps)| *steps > adjustable.range.low)
}

/// "at most 5.0 g of sugar in 100 ml and at most 600 kJ"; `None` without caps.
fn caps_in_words(book: &Book, demands: &Demands) -> Option<String> {
    let caps: Vec<String> = [
        demands
            .most_sugar_per_100_ml
            .map(|most| format!("at most {} g of sugar in 100 ml", show_number(most, 1))),
        demands
            .most_energy_kj
            .map(|most| format!("at most {} kJ", show_number(most, 0))),
        demands.most_cost.map(|most| {
            format!(
                "at most {} {}",
                show_number(most, 2),
                book.settings.currency
            )
        }),
    ]
    .into_iter()
    .flatten()
    .collect();
    (!caps.is_empty()).then(|| caps.join(" and "))
}
