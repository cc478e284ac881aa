//! The lines of the drink: which may move, and from how little to how much.

use egui::{Checkbox, RichText, Ui, vec2};

use crate::book::{Amount, Line, LineId, Resolved};
use crate::edit::{FieldName, Focus, Which};
use crate::quantity::{show_compact, show_count};
use crate::say::{Speaker, say};
use crate::swap::{Adjustable, Answer, Demands, LineLimit};
use crate::ui::Screen;
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::Drafts;
use crate::ui::words::{capitalised, paragraph_ui};
use crate::workbench::Action;

/// A line that could move.
struct Row<'answer> {
    line: &'answer Line,
    /// How it moves when it does.
    adjustable: Option<&'answer Adjustable>,
    /// Whether the recipe does not have it.
    added: bool,
}

/// Width of a field for a number, in points.
const FIELD: f32 = 18.0 * grid::STEP;

/// A row for each line whose amount is a number of something.
pub(super) fn limits_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: Option<&Answer>,
    demands: &mut Demands,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let Some(answer) = answer else {
        let words = capitalised(screen.speaker.word("swap-screen-lines-later"));
        paragraph_ui(ui, words, palette.text_quiet);
        return;
    };
    let speaker = screen.speaker;
    let rows = rows(&answer.plain.resolved, answer);
    egui::Grid::new("limits")
        .num_columns(5)
        .spacing([grid::EASY, 0.0])
        .show(ui, |ui| {
            for head in [
                "swap-screen-column-may-change",
                "swap-screen-column-now",
                "swap-screen-column-least",
                "swap-screen-column-most",
            ] {
                ui.label(RichText::new(speaker.word(head)).color(palette.text_quiet));
            }
            ui.end_row();
            for row in &rows {
                row_ui(ui, screen, row, demands, drafts, actions);
                ui.end_row();
            }
        });
    copy_ui(ui, speaker.word("swap-screen-lines"), || {
        as_table(screen, &rows, demands)
    });
    for row in &rows {
        for end in End::BOTH {
            draft_error_ui(ui, drafts, &end.key(screen, row.line));
        }
    }
    let add = speaker.word("swap-screen-may-add");
    ui.add(Checkbox::new(&mut demands.may_add_sweetener, add));
    let leave_out = speaker.word("swap-screen-may-leave-out");
    ui.add(Checkbox::new(
        &mut demands.may_leave_out_sweetener,
        leave_out,
    ));
}

/// The lines of the drink after the plain swap, and those that may be added.
fn rows<'answer>(plain: &'answer Resolved, answer: &'answer Answer) -> Vec<Row<'answer>> {
    let adjustable = |id: &LineId| answer.adjustable.iter().find(|one| one.line.id == *id);
    let there = plain
        .lines()
        .filter(|line| !line.amount.fills())
        .map(|line| Row {
            line,
            adjustable: adjustable(&line.id),
            added: false,
        });
    let added = answer.adjustable.iter().filter(|one| one.added);
    there
        .chain(added.map(|one| Row {
            line: &one.line,
            adjustable: Some(one),
            added: true,
        }))
        .collect()
}

fn row_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &Row<'_>,
    demands: &mut Demands,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let id = &row.line.id;
    let speaker = screen.speaker;
    let name = speaker.ingredient(&row.line.ingredient);
    let mut moves = may_move(row, demands);
    let before = moves;
    let checkbox = Checkbox::new(&mut moves, &name);
    ui.add(checkbox)
        .on_hover_text(speaker.word("swap-screen-may-change-hint"));
    if moves != before {
        demands.locked.retain(|other| other != id);
        demands.unlocked.retain(|other| other != id);
        if moves {
            demands.unlocked.push(id.clone());
        } else {
            demands.locked.push(id.clone());
        }
    }
    ui.label(RichText::new(now_words(speaker, row)).color(palette.text_normal));
    for end in End::BOTH {
        ui.add_enabled_ui(moves, |ui| {
            end_ui(ui, screen, row, end, demands, drafts, actions);
        });
    }
    let unit = unit_word(speaker, &row.line.amount);
    ui.label(RichText::new(unit).color(palette.text_quiet));
}

fn may_move(row: &Row<'_>, demands: &Demands) -> bool {
    let id = &row.line.id;
    let is_asked = demands.unlocked.contains(id);
    !demands.locked.contains(id) && (row.adjustable.is_some() || is_asked)
}

/// How much there is of it in the plain swap.
fn now_words(speaker: Speaker<'_>, row: &Row<'_>) -> String {
    if row.added {
        return speaker.word("swap-screen-not-in-drink").to_owned();
    }
    speaker.amount(&row.line.amount)
}

/// The lines for a spreadsheet, each between what is asked of it or, where nobody asks, what is searched.
fn as_table(screen: &Screen<'_>, rows: &[Row<'_>], demands: &Demands) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "swap-screen-column-ingredient",
        "swap-screen-column-may-change",
        "swap-screen-column-now",
        "swap-screen-column-least",
        "swap-screen-column-most",
        "swap-screen-column-unit",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for row in rows {
        let limit = demands
            .limits
            .iter()
            .find(|limit| limit.line == row.line.id);
        let ends = End::BOTH.map(|end| {
            let asked = limit.and_then(|limit| *end.of(&mut limit.clone()));
            // A spreadsheet does not count in the fractions of the counter.
            let digits = |number: f64| match row.line.amount {
                Amount::Count(..) => show_compact((1000.0 * number).round() / 1000.0),
                _ => show_end(screen, row.line, number),
            };
            let end = asked.or_else(|| end.searched(row)).map(digits);
            Cell::figure(
                end.as_deref()
                    .unwrap_or_else(|| speaker.word("swap-screen-any")),
            )
        });
        let moves = speaker.word(if may_move(row, demands) {
            "swap-screen-yes"
        } else {
            "swap-screen-no"
        });
        let name = speaker.ingredient(&row.line.ingredient);
        let now = now_words(speaker, row);
        let cells = [&*name, moves, &now].map(Cell::words);
        let unit = Cell::words(&unit_word(speaker, &row.line.amount));
        table.row(cells.into_iter().chain(ends).chain([unit]));
    }
    table
}

/// The two ends of what a line may take.
#[derive(Clone, Copy)]
enum End {
    Least,
    Most,
}

impl End {
    const BOTH: [Self; 2] = [Self::Least, Self::Most];

    /// Its field for a line.
    fn key(self, screen: &Screen<'_>, line: &Line) -> Focus {
        let name = match self {
            Self::Least => "least",
            Self::Most => "most",
        };
        let which = Which::Line(screen.recipe.id.clone(), line.id.clone());
        Focus::Question(FieldName::of(name, which))
    }

    /// "Least of House sweetener", the name of its field.
    fn name(self, speaker: Speaker<'_>, line: &Line) -> String {
        let ingredient = speaker.ingredient(&line.ingredient);
        match self {
            Self::Least => say!(speaker, "swap-screen-least-of", ingredient: ingredient),
            Self::Most => say!(speaker, "swap-screen-most-of", ingredient: ingredient),
        }
    }

    /// The end of the range that is searched as long as nobody says anything.
    fn searched(self, row: &Row<'_>) -> Option<f64> {
        let one = row.adjustable?;
        let steps = match self {
            Self::Least => one.range.low,
            Self::Most => one.range.high,
        };
        Some(f64::from(steps) * one.step)
    }

    fn of(self, limit: &mut LineLimit) -> &mut Option<f64> {
        match self {
            Self::Least => &mut limit.least,
            Self::Most => &mut limit.most,
        }
    }
}

fn end_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    row: &Row<'_>,
    end: End,
    demands: &mut Demands,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let key = end.key(screen, row.line);
    let speaker = screen.speaker;
    let name = end.name(speaker, row.line);
    let at = demands
        .limits
        .iter()
        .position(|limit| limit.line == row.line.id);
    let asked = at.and_then(|at| *end.of(&mut demands.limits[at]));
    // Where nobody says anything, the range that is searched stands there.
    let searched = end.searched(row);
    let searched = searched.map(|number| show_end(screen, row.line, number));
    let shown = asked.map_or_else(String::new, |number| show_end(screen, row.line, number));
    let hint = searched
        .as_deref()
        .unwrap_or_else(|| speaker.word("swap-screen-any"));
    let outcome = Field::number(key, &name, shown).hint(hint).show_in(
        ui,
        vec2(FIELD, grid::TARGET),
        drafts,
        actions,
    );
    let read = |text: &str| read_limit(speaker, row.line, text);
    if let Some(value) = outcome.read(drafts, read) {
        let at = at.unwrap_or_else(|| {
            demands.limits.push(LineLimit {
                line: row.line.id.clone(),
                least: None,
                most: None,
                increment: None,
            });
            demands.limits.len() - 1
        });
        *end.of(&mut demands.limits[at]) = value;
        demands
            .limits
            .retain(|limit| limit.least.is_some() || limit.most.is_some());
    }
}

/// Reads an amount in the unit of the line; `None` for an empty text.
fn read_limit(speaker: Speaker<'_>, line: &Line, text: &str) -> Result<Option<f64>, String> {
    if text.trim().is_empty() {
        return Ok(None);
    }
    let ingredient = speaker.book.ingredient(&line.ingredient);
    let ingredient = ingredient.map(AsRef::as_ref);
    let amount = speaker.read_amount(text, ingredient, Some(&line.amount))?;
    let same_unit = match (&amount, &line.amount) {
        (Amount::Count(_, one), Amount::Count(_, other)) => one == other,
        (one, other) => std::mem::discriminant(one) == std::mem::discriminant(other),
    };
    let number = amount.number().filter(|_| same_unit);
    number.map(Some).ok_or_else(|| {
        let unit = unit_word(speaker, &line.amount);
        say!(speaker, "swap-screen-counted-in", unit: unit)
    })
}

/// The number of a limit as it is shown: that of a volume in the unit that is read.
fn show_end(screen: &Screen<'_>, line: &Line, number: f64) -> String {
    match line.amount {
        Amount::Millilitres(_) | Amount::FillTo(_) => {
            screen.speaker.units.of("ml").trimmed(number, 1)
        }
        _ => show_count(number),
    }
}

fn unit_word(speaker: Speaker<'_>, amount: &Amount) -> String {
    match amount {
        Amount::Count(_, measure) => {
            let measure = speaker.book.measure(measure);
            measure.map_or_else(String::new, |measure| speaker.uses_word(measure.kind))
        }
        Amount::Grams(_) => "g".to_owned(),
        Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => {
            speaker.units.of("ml").symbol.to_owned()
        }
    }
}
