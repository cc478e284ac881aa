//! A list under review: what would become of each row, what it is about, and what taking the ticked ones does to the drinks.

use std::collections::BTreeSet;
use std::sync::Arc;

use egui::{Button, Label, RichText, Ui};

use super::match_menu::{Asked, MatchMenu, match_menu_ui, match_words};
use super::review::{ReviewLooks, ReviewState, away_ui, working_ui};
use crate::exchange::{CostEffect, KnownCost, Outcome, Review, ReviewLine, RowMatch, Skip};
use crate::quantity::{name_as_shown, show_number};
use crate::say::{Speaker, say};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, grid};
use crate::ui::value::Value;
use crate::ui::widgets::figure_table::{Column, TableRow, figure_table_ui};
use crate::ui::words::{heading_ui, quiet_ui, speaker};
use crate::workbench::{Action, Answers, Command, TableReview};

/// Drinks that are listed at first.
const FIRST_EFFECTS: usize = 8;

/// Width of the column with the names of drinks, in points.
const DRINKS: f32 = 260.0;

/// The list, line by line, what it does to the drinks, and the button that takes what is ticked.
pub(super) fn list_ui(
    ui: &mut Ui,
    answers: Answers<'_>,
    looks: &ReviewLooks,
    reviewed: &Arc<Result<TableReview, String>>,
    state: &mut ReviewState,
    actions: &mut Vec<Action>,
) {
    let Ok(table) = reviewed.as_ref() else { return };
    let speaker = speaker(ui.ctx()).about(table.book());
    state.follow_list(reviewed);
    let palette = theme::palette(ui.visuals());
    let review = &table.review;
    heading_ui(ui, speaker.word("cards-screen-changes"));
    let [new, changed, same, skipped] = table.counts;
    let counts = say!(
        speaker,
        "cards-screen-changes-counted",
        new: new.to_string(),
        changed: changed.to_string(),
        same: same.to_string(),
        skipped: skipped.to_string(),
    );
    ui.label(RichText::new(counts).color(palette.text_quiet));
    if table.unsure > 0 {
        let words = say!(speaker, "cards-screen-changes-unsure", count: table.unsure);
        ui.add(Label::new(RichText::new(words).color(palette.caution)).wrap());
    }
    ui.add_space(grid::TIGHT);
    take_ui(ui, speaker, looks, state, actions);
    ui.add_space(grid::NEAR);
    effects_ui(ui, speaker, looks, state);
    let (mut ticked, mut matched) = (None, None);
    let (taken, mut rows) = (state.taken().clone(), std::mem::take(&mut state.rows));
    let menu = &mut state.menu;
    rows.in_sheet_ui(ui, review.lines.len(), |ui, at| {
        let line = &review.lines[at];
        if line_ui(ui, speaker, line, taken.contains(&at)) {
            ticked = Some(at);
        }
        if let Some(to) = about_ui(ui, (speaker, answers), menu, at, line) {
            matched = Some((at, line.line, to));
        }
    });
    state.rows = rows;
    if let Some(at) = ticked {
        state.tick(at);
    }
    if let Some((at, line, to)) = matched {
        state.match_row(at, line, to);
    }
    copy_ui(ui, speaker.word("cards-screen-changes-table"), || {
        list_as_table(speaker, review, &taken)
    });
}

fn take_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    looks: &ReviewLooks,
    state: &ReviewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal(|ui| {
        let count = state.taken().len();
        let words = say!(speaker, "cards-screen-changes-take", count: count.to_string());
        let words = RichText::new(words).color(palette.on_accent);
        let button = Button::new(words).fill(palette.accent);
        // What is still being looked through may differ from what stands there.
        let is_ready = count > 0 && !looks.is_taking && looks.table.current().is_some();
        if ui.add_enabled(is_ready, button).clicked()
            && let Some(taking) = state.taking()
        {
            actions.push(Action::Command(Command::TakeList(taking)));
        }
        away_ui(ui, speaker.word("cards-screen-leave"), actions);
        if looks.is_taking {
            let words = RichText::new(speaker.word("cards-screen-changes-taking"));
            ui.label(words.color(palette.text_quiet));
        }
    });
}

/// What taking the ticked lines does to the cost of the drinks.
fn effects_ui(ui: &mut Ui, speaker: Speaker<'_>, looks: &ReviewLooks, state: &mut ReviewState) {
    if state.taken().is_empty() {
        return;
    }
    heading_ui(ui, speaker.word("cards-screen-effects"));
    let palette = theme::palette(ui.visuals());
    match looks.effects.current() {
        None => working_ui(ui, speaker.word("cards-screen-effects-looking")),
        Some(Err(error)) => {
            ui.add(Label::new(RichText::new(error).color(palette.off_level)).wrap());
        }
        Some(Ok(effects)) => {
            let rows: Vec<TableRow> = effects
                .iter()
                .filter_map(|effect| effect_row(speaker, effect))
                .collect();
            if rows.is_empty() {
                quiet_ui(ui, speaker.word("cards-screen-effects-none"));
            } else {
                let shown = if state.lists_all_effects {
                    rows.len()
                } else {
                    rows.len().min(FIRST_EFFECTS)
                };
                let currency = &speaker.book.settings.currency;
                let column = |name: &str, unit: &str| Column {
                    name: speaker.word(name).to_owned(),
                    unit: unit.to_owned(),
                    term: None,
                };
                let columns = [
                    column("cards-screen-effects-now", currency),
                    column("cards-screen-effects-then", currency),
                    column("cards-screen-effects-change", currency),
                    column("cards-screen-effects-percent", "%"),
                ];
                let of = speaker.word("cards-screen-effects-table");
                let first = speaker.word("cards-screen-effects-drink");
                figure_table_ui(ui, of, (first, DRINKS), &columns, &rows[..shown]);
                let more = rows.len() - shown;
                let words = say!(speaker, "cards-screen-effects-more", count: more);
                if more > 0 && ui.button(words).clicked() {
                    state.lists_all_effects = true;
                }
            }
        }
    }
    ui.add_space(grid::EASY);
}

/// A drink whose cost changes as far as the digits of a price show; `None` for others.
fn effect_row(speaker: Speaker<'_>, effect: &CostEffect) -> Option<TableRow> {
    let cents = |cost: f64| (cost * 100.0).round() / 100.0;
    let not_known = || Value::not_known(speaker.word("serving-cost-no-price-stated"));
    let value = |cost: Option<KnownCost>| {
        cost.map_or_else(not_known, |cost| {
            let value = Value::digits(show_number(cents(cost.known), 2));
            if cost.is_partial {
                value.at_least()
            } else {
                value
            }
        })
    };
    let signed = |number: f64, decimals: usize| {
        let sign = if number > 0.0 { "+" } else { "" };
        Value::digits(format!("{sign}{}", show_number(number, decimals)))
    };
    let (change, percent) = match (effect.before, effect.after, effect.difference) {
        (Some(before), Some(after), Some(difference)) => {
            // As the two beside it differ, which are rounded.
            let change = cents(after.known) - cents(before.known);
            if change.abs() < 0.005 {
                return None;
            }
            let percent = 100.0 * difference / before.known;
            // Of a part of the cost no part is known.
            let is_known = percent.is_finite() && !before.is_partial;
            let percent = is_known.then(|| signed(percent, 1));
            (signed(change, 2), percent.unwrap_or_default())
        }
        _ => (Value::default(), Value::default()),
    };
    Some(TableRow {
        name: speaker.drink(&effect.recipe, effect.version.as_ref()),
        is_part: false,
        cells: vec![value(effect.before), value(effect.after), change, percent],
        unit: String::new(),
    })
}

/// A line of the list; `true` when it is ticked or unticked.
fn line_ui(ui: &mut Ui, speaker: Speaker<'_>, line: &ReviewLine, is_taken: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let mut changed = false;
    ui.horizontal_wrapped(|ui| {
        let number = line.line.to_string();
        let name = if line.name.is_empty() {
            say!(speaker, "cards-screen-line", line: number)
        } else {
            let name = name_as_shown(&line.name);
            say!(speaker, "cards-screen-line-of", name: name, line: number)
        };
        if line.is_change() {
            let mut is_ticked = is_taken;
            changed = ui.checkbox(&mut is_ticked, name).changed();
        } else {
            ui.label(RichText::new(name).color(palette.text_quiet));
        }
        let outcome = speaker.outcome(&line.outcome);
        let words = match speaker.outcome_details(line) {
            details if details.is_empty() => outcome.to_owned(),
            details => {
                say!(speaker, "cards-screen-outcome", outcome: outcome, details: details)
            }
        };
        ui.add(Label::new(words).wrap());
    });
    for doubt in doubts(speaker, line) {
        ui.indent("doubt", |ui| {
            ui.add(Label::new(RichText::new(doubt).color(palette.caution)).wrap());
        });
    }
    changed
}

/// Why a line is not ticked by itself: what was left out or assumed of its row, a price that moves far, and a mark that it
/// would take away.
fn doubts(speaker: Speaker<'_>, line: &ReviewLine) -> Vec<String> {
    let others = [
        (line.moves_price_far(), "cards-screen-price-far"),
        (line.sells_again(), "cards-screen-sold-again"),
    ];
    let others = others.into_iter().filter(|(is_so, _)| *is_so);
    let others = others.map(|(_, words)| speaker.word(words).to_owned());
    let doubts = line.doubts.iter().map(|doubt| speaker.doubt(doubt));
    doubts.chain(others).collect()
}

/// What a row is about, as far as it can be said; tells what was chosen instead.
fn about_ui(
    ui: &mut Ui,
    (speaker, answers): (Speaker<'_>, Answers<'_>),
    menu: &mut MatchMenu,
    at: usize,
    line: &ReviewLine,
) -> Option<RowMatch> {
    let now = match (&line.about, &line.outcome) {
        (Some(id), _) => match_words(speaker, &RowMatch::Ours(id.clone())),
        (None, Outcome::New(new)) => match_words(speaker, &RowMatch::New(new.form)),
        (None, Outcome::Skipped(Skip::LeftOut)) => match_words(speaker, &RowMatch::LeftOut),
        (None, Outcome::Skipped(Skip::NoForm | Skip::Several { .. } | Skip::Error(_))) => {
            speaker.word("cards-screen-match-choose").to_owned()
        }
        (None, _) => return None,
    };
    let mut chosen = None;
    ui.indent("about", |ui| {
        let asked = Asked {
            at,
            name: &line.name,
            now: &now,
        };
        chosen = match_menu_ui(ui, (speaker, answers), menu, &asked);
    });
    chosen
}

/// The list line by line, with what is ticked.
fn list_as_table(speaker: Speaker<'_>, review: &Review, taken: &BTreeSet<usize>) -> Table {
    let heads = [
        "cards-screen-changes-table-line",
        "cards-screen-changes-table-ingredient",
        "cards-screen-changes-table-taken",
        "cards-screen-changes-table-outcome",
        "cards-screen-changes-table-details",
        "cards-screen-changes-table-doubts",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for (at, line) in review.lines.iter().enumerate() {
        let taken = match (line.is_change(), taken.contains(&at)) {
            (false, _) => "",
            (true, false) => speaker.word("cards-screen-no"),
            (true, true) => speaker.word("cards-screen-yes"),
        };
        table.row([
            Cell::figure(&line.line.to_string()),
            Cell::words(&name_as_shown(&line.name)),
            Cell::words(taken),
            Cell::words(speaker.outcome(&line.outcome)),
            Cell::words(&speaker.outcome_details(line)),
            Cell::words(&doubts(speaker, line).join("; ")),
        ]);
    }
    table
}
