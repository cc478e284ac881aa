//! The lines of the drink: which may move, and from how little to how much.

use egui::{Align, Checkbox, RichText, Sense, Ui, vec2};

use super::conditions::{FIELD, quiet_ui};
use crate::book::{Amount, Line, LineId, Resolved};
use crate::quantity::{show_compact, show_count};
use crate::say::Speaker;
use crate::swap::{Adjustable, Answer, Demands, LineLimit};
use crate::ui::Screen;
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::Drafts;
use crate::ui::wording::ingredient_name;
use crate::workbench::Action;

/// A line that could move.
struct Row<'answer> {
    line: &'answer Line,
    /// How it moves when it does.
    adjustable: Option<&'answer Adjustable>,
    /// Whether the recipe does not have it.
    added: bool,
}

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
        quiet_ui(ui, "The lines appear here when the search is done.");
        return;
    };
    let rows = rows(&answer.plain.resolved, answer);
    egui::Grid::new("limits")
        .num_columns(5)
        .spacing([grid::EASY, 0.0])
        .show(ui, |ui| {
            for head in ["may change", "now", "at least", "at most", ""] {
                ui.label(RichText::new(head).color(palette.text_quiet));
            }
            ui.end_row();
            for row in &rows {
                row_ui(ui, screen, row, demands, drafts, actions);
                ui.end_row();
            }
        });
    copy_ui(ui, "what may move", || as_table(screen, &rows, demands));
    for row in &rows {
        for end in End::BOTH {
            draft_error_ui(ui, drafts, &end.key(screen, row.line));
        }
    }
    let add = "a house sweetener may be added that the drink does not have";
    ui.add(Checkbox::new(&mut demands.may_add_sweetener, add));
    let leave_out = "a sweetener may be left out altogether";
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
    let name = ingredient_name(screen.book, &row.line.ingredient);
    let mut moves = may_move(row, demands);
    let before = moves;
    let checkbox = Checkbox::new(&mut moves, &name);
    ui.add(checkbox)
        .on_hover_text("When this is off, the amount stays as in the plain swap.");
    if moves != before {
        demands.locked.retain(|other| other != id);
        demands.unlocked.retain(|other| other != id);
        if moves {
            demands.unlocked.push(id.clone());
        } else {
            demands.locked.push(id.clone());
        }
    }
    ui.label(RichText::new(now_words(screen, row)).color(palette.text_normal));
    for end in End::BOTH {
        ui.add_enabled_ui(moves, |ui| {
            end_ui(ui, screen, row, end, demands, drafts, actions);
        });
    }
    let unit = unit_word(screen, &row.line.amount);
    ui.label(RichText::new(unit).color(palette.text_quiet));
}

fn may_move(row: &Row<'_>, demands: &Demands) -> bool {
    let id = &row.line.id;
    let is_asked = demands.unlocked.contains(id);
    !demands.locked.contains(id) && (row.adjustable.is_some() || is_asked)
}

/// How much there is of it in the plain swap.
fn now_words(screen: &Screen<'_>, row: &Row<'_>) -> String {
    if row.added {
        return "not in it".to_owned();
    }
    screen.book.amount_words_in(&row.line.amount, screen.units)
}

/// The lines for a spreadsheet, each between what is asked of it or, where nobody asks, what is searched.
fn as_table(screen: &Screen<'_>, rows: &[Row<'_>], demands: &Demands) -> Table {
    let heads = [
        "ingredient",
        "may change",
        "now",
        "at least",
        "at most",
        "unit",
    ];
    let mut table = Table::new(heads);
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
            Cell::figure(end.as_deref().unwrap_or("any"))
        });
        let moves = if may_move(row, demands) { "yes" } else { "no" };
        let [name, now] = [
            ingredient_name(screen.book, &row.line.ingredient),
            now_words(screen, row),
        ];
        let cells = [&*name, moves, &now].map(Cell::words);
        let unit = Cell::words(&unit_word(screen, &row.line.amount));
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

    fn words(self) -> &'static str {
        match self {
            Self::Least => "Least",
            Self::Most => "Most",
        }
    }

    fn key(self, screen: &Screen<'_>, line: &Line) -> String {
        let recipe = &screen.recipe.id;
        format!("field swap {} {recipe}/{}", self.words(), line.id)
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
    let name = format!(
        "{} of {}",
        end.words(),
        ingredient_name(screen.book, &row.line.ingredient)
    );
    let at = demands
        .limits
        .iter()
        .position(|limit| limit.line == row.line.id);
    let asked = at.and_then(|at| *end.of(&mut demands.limits[at]));
    // Where nobody says anything, the range that is searched stands there.
    let searched = end.searched(row);
    let searched = searched.map(|number| show_end(screen, row.line, number));
    let (rect, _) = ui.allocate_exact_size(vec2(FIELD, grid::TARGET), Sense::hover());
    let field = Field {
        align: Align::Max,
        ..Field::new(
            key.clone(),
            &name,
            asked.map_or_else(String::new, |number| show_end(screen, row.line, number)),
        )
        .underlined()
        .hint(searched.as_deref().unwrap_or("any"))
    };
    let outcome = field.show(ui, rect, drafts, actions);
    let read = |text: &str| read_limit(screen, row.line, text);
    if let Some(value) = outcome.read(&key, drafts, read) {
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
fn read_limit(screen: &Screen<'_>, line: &Line, text: &str) -> Result<Option<f64>, String> {
    let book = screen.book;
    if text.trim().is_empty() {
        return Ok(None);
    }
    let ingredient = book.ingredient(&line.ingredient).map(AsRef::as_ref);
    let amount = book
        .amount_from_text_in(text, ingredient, Some(&line.amount), screen.units)
        .map_err(|error| {
            Speaker::new(book)
                .in_units(screen.units)
                .amount_error(&error)
        })?;
    let same_unit = match (&amount, &line.amount) {
        (Amount::Count(_, one), Amount::Count(_, other)) => one == other,
        (one, other) => std::mem::discriminant(one) == std::mem::discriminant(other),
    };
    match amount.number().filter(|_| same_unit) {
        Some(number) => Ok(Some(number)),
        None => Err(format!(
            "this line is counted in {}",
            unit_word(screen, &line.amount)
        )),
    }
}

/// The number of a limit as it is shown: that of a volume in the unit that is read.
fn show_end(screen: &Screen<'_>, line: &Line, number: f64) -> String {
    match line.amount {
        Amount::Millilitres(_) | Amount::FillTo(_) => screen.units.of("ml").trimmed(number, 1),
        _ => show_count(number),
    }
}

fn unit_word(screen: &Screen<'_>, amount: &Amount) -> String {
    match amount {
        Amount::Count(_, measure) => screen
            .book
            .measure(measure)
            .map_or_else(String::new, |measure| measure.words().1.to_owned()),
        Amount::Grams(_) => "g".to_owned(),
        Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => {
            screen.units.of("ml").symbol.to_owned()
        }
    }
}
