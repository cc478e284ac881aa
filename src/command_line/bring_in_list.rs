//! What a list would do to a book: its reading, its rows, and what the drinks would cost.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use super::{BringInArguments, Failure, speaker};
use crate::book::{Book, Form};
use crate::edit::{Edit, EditError, apply};
use crate::exchange::{
    CostEffect, DecimalSign, DecimalSigns, Delimiter, KnownCost, ListChoices, Review, ReviewLine,
    RowMatch, cost_effects, edits_of, guess_mapping, read_table, review_price_list,
};
use crate::quantity::show_number;
use crate::say::{Speaker, say};

pub(super) fn failed(book: &Book, error: &EditError) -> Failure {
    Failure::Book(Speaker::new(book).edit_error(error))
}

/// What a person types for the sign between cells.
fn delimiter_key(delimiter: Delimiter) -> &'static str {
    match delimiter {
        Delimiter::Comma => "comma",
        Delimiter::Semicolon => "semicolon",
        Delimiter::Tab => "tab",
        Delimiter::Bar => "vertical bar",
    }
}

fn delimiter(text: &str) -> Result<Delimiter, Failure> {
    Delimiter::ALL
        .into_iter()
        .find(|delimiter| delimiter_key(*delimiter) == text)
        .ok_or_else(|| {
            let words = Delimiter::ALL.map(delimiter_key).join(", ");
            let text = text.escape_debug().to_string();
            Failure::Usage(say!(speaker(), "command-enter-delimiter", text: text, words: words))
        })
}

pub(super) fn price_list(
    book: &Book,
    arguments: &BringInArguments,
    bytes: &[u8],
) -> Result<(String, Option<Edit>), Failure> {
    let delimiter = arguments.delimiter.as_deref().map(delimiter).transpose()?;
    let speaker = Speaker::new(book);
    let table = read_table(bytes, delimiter, arguments.headings)
        .map_err(|error| Failure::Book(speaker.table_error(&error)))?;
    let rows = || table.rows.iter().map(|(line, _)| *line);
    if let Some(line) = arguments.headings {
        let above = table.above.iter().map(|(line, _)| *line);
        is_among(line, above.chain([table.heading_line]).chain(rows()))?;
    }
    let mapping = guess_mapping(&table.headings);
    let chosen = match (arguments.decimal_comma, arguments.decimal_point) {
        (true, _) => Some(DecimalSign::Comma),
        (false, true) => Some(DecimalSign::Point),
        (false, false) => None,
    };
    let signs = DecimalSigns::of(&table, &mapping, chosen);
    let choices = list_choices(book, arguments)?;
    for line in choices.rows.keys().chain(&arguments.tick) {
        is_among(*line, rows())?;
    }
    let review = review_price_list(book, &table, &mapping, &signs, &choices);
    let said = say!(
        speaker,
        "command-table",
        rows: table.rows.len(),
        delimiter: speaker.delimiter(table.delimiter),
        sign: chosen.or(signs.found).map_or_else(
            || speaker.word("command-sign-not-told"),
            |sign| speaker.decimal_sign(sign)
        ),
        encoding: speaker.encoding(table.encoding),
    );
    let mut text = format!("{said}\n");
    for (heading, field) in table.headings.iter().zip(&mapping.columns) {
        let field = field.map_or_else(
            || speaker.word("command-column-left-out"),
            |field| speaker.field(field),
        );
        let _ = writeln!(text, "  {heading}: {field}");
    }
    text.push_str(&review_text(speaker, &review));
    // Nobody can be asked here, and half of a row is not what its writer meant.
    let is_taken = |line: &ReviewLine| {
        line.is_sure() || line.is_change() && arguments.tick.contains(&line.line)
    };
    let refused = |line: &&ReviewLine| line.is_change() && !is_taken(line);
    let refused: Vec<String> = review
        .lines
        .iter()
        .filter(refused)
        .map(|line| line.line.to_string())
        .collect();
    if !refused.is_empty() {
        let (count, lines) = (refused.len(), refused.join(", "));
        let left_out = say!(speaker, "command-unsure-left-out", count: count, lines: lines);
        let _ = writeln!(text, "{left_out}");
    }
    let taken = |at: usize| review.lines.get(at).is_some_and(is_taken);
    let edit = edits_of(book, &review, taken).map_err(|error| failed(book, &error))?;
    if let Some(edit) = &edit {
        let after = apply(book, edit).map_err(|error| failed(book, &error))?;
        text.push_str(&effects_text(speaker, &cost_effects(book, &after)));
    }
    Ok((text, edit))
}

/// Refuses a line that is none of the rows: whoever names one that is not there means another.
pub(super) fn is_among(line: u64, rows: impl Iterator<Item = u64> + Clone) -> Result<(), Failure> {
    if rows.clone().any(|row| row == line) {
        return Ok(());
    }
    let rows: Vec<String> = rows.map(|row| row.to_string()).collect();
    let known = rows.iter().map(String::as_str);
    Err(super::unknown("command-no-row", &line.to_string(), known))
}

/// What a person says of a list on the command line.
fn list_choices(book: &Book, arguments: &BringInArguments) -> Result<ListChoices, Failure> {
    let mut choices = ListChoices {
        date: arguments.date.clone().unwrap_or_default(),
        supplier: arguments.supplier.clone().unwrap_or_default(),
        form: arguments.form.as_deref().map(form).transpose()?,
        rows: BTreeMap::new(),
    };
    for text in &arguments.map {
        let (line, to) = row_matched(book, text)?;
        choices.rows.insert(line, to);
    }
    Ok(choices)
}

/// "LINE=INGREDIENT"; an empty right side leaves the line out.
pub(super) fn row_matched(book: &Book, text: &str) -> Result<(u64, RowMatch), Failure> {
    let wanted = || {
        let text = text.escape_debug().to_string();
        Failure::Usage(say!(speaker(), "command-enter-row", text: text))
    };
    let (line, ours) = text.split_once('=').ok_or_else(wanted)?;
    let line: u64 = line.trim().parse().map_err(|_| wanted())?;
    let to = if ours.is_empty() {
        RowMatch::LeftOut
    } else {
        RowMatch::Ours(super::ingredient_called(book, ours)?)
    };
    Ok((line, to))
}

fn form(text: &str) -> Result<Form, Failure> {
    let found = Form::ALL.into_iter().find(|form| form.word() == text);
    found.ok_or_else(|| {
        let words = Form::ALL.map(Form::word).join(", ");
        let text = text.escape_debug().to_string();
        Failure::Usage(say!(speaker(), "command-enter-form", text: text, words: words))
    })
}

/// What the drinks would cost.
fn effects_text(speaker: Speaker<'_>, effects: &[CostEffect]) -> String {
    let cost = |cost: Option<KnownCost>| {
        cost.map_or_else(
            || speaker.word("command-not-known").to_owned(),
            |cost| {
                let sign = if cost.is_partial { "≥ " } else { "" };
                format!("{sign}{}", show_number(cost.known, 2))
            },
        )
    };
    let mut text = String::new();
    for effect in effects {
        let said = say!(
            speaker,
            "command-cost-effect",
            drink: speaker.drink(&effect.recipe, effect.version.as_ref()),
            before: cost(effect.before),
            after: cost(effect.after),
            currency: &speaker.book.settings.currency,
        );
        let _ = writeln!(text, "  {said}");
    }
    text
}

fn review_text(speaker: Speaker<'_>, review: &Review) -> String {
    let mut text = String::new();
    for line in &review.lines {
        let details = speaker.outcome_details(line);
        let (at, outcome) = (line.line.to_string(), speaker.outcome(&line.outcome));
        let said = if details.is_empty() {
            say!(speaker, "command-review-line", line: at, name: &line.name, outcome: outcome)
        } else {
            say!(
                speaker,
                "command-review-line-details",
                line: at,
                name: &line.name,
                outcome: outcome,
                details: details,
            )
        };
        let _ = writeln!(text, "{said}");
        for doubt in &line.doubts {
            let _ = writeln!(text, "    {}", speaker.doubt(doubt));
        }
        if line.moves_price_far() {
            let _ = writeln!(text, "    {}", speaker.word("command-price-far"));
        }
        if line.sells_again() {
            let _ = writeln!(text, "    {}", speaker.word("command-sold-again"));
        }
    }
    let [new, changed, same, skipped] = review.counts();
    let counts = say!(
        speaker,
        "command-review-counts",
        new: new,
        changed: changed,
        same: same,
        skipped: skipped,
    );
    let _ = writeln!(text, "{counts}");
    text
}
