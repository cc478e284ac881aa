//! Every level of sugar in every size with every amount of ice, as one table: chosen, kept at once, printed.

use egui::{Button, Checkbox, Grid, RichText, Ui};

use super::model;
use crate::book::{ItemId, Level, Recipe, VesselId};
use crate::edit::{Edit, Focus};
use crate::say::say;
use crate::swap::{Adapted, Matrix, MatrixColumn, MatrixIce, Means, Rung, Unadaptable};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::icons::{self, Icon};
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::swap_area::{Parts, progress_ui, version_name};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::level::overall_words;
use crate::ui::words::{paragraph_ui, quiet_ui};
use crate::workbench::{Action, Look, Shown};

/// Room for the name of a column, in points.
const COLUMN: f32 = 30.0 * grid::STEP;

/// What is remembered of the table.
#[derive(Default)]
pub(super) struct MatrixState {
    /// Whether it is open: nothing is looked for while it is not.
    pub(super) is_open: bool,
    /// The drink that the cells are of.
    of: Option<Shown>,
    /// The cells that a person has chosen or left out against what is usual.
    turned: Vec<CellKey>,
}

impl MatrixState {
    /// Another drink has cells of its own.
    pub(super) fn follow(&mut self, shown: Option<&Shown>) {
        if self.of.as_ref() != shown {
            self.of = shown.cloned();
            self.turned.clear();
        }
    }

    fn is_turned(&self, cell: &CellKey) -> bool {
        self.turned.contains(cell)
    }

    fn turn(&mut self, cell: CellKey) {
        match self.turned.iter().position(|turned| *turned == cell) {
            Some(at) => {
                self.turned.swap_remove(at);
            }
            None => self.turned.push(cell),
        }
    }
}

/// A cell by what it stands for: a level that is added or taken away moves no tick to another one.
#[derive(Clone, Debug, PartialEq)]
struct CellKey {
    cup: Option<VesselId>,
    ice: MatrixIce,
    level: Level,
}

/// The drink of a cell and by what it is had where whole measures miss the level; else why there is none.
fn drink_of(rung: &Rung) -> Result<(&Adapted, Option<&Means>), &Unadaptable> {
    match (&rung.drink, rung.offers.first()) {
        (Ok(drink), _) => Ok((drink, None)),
        (Err(_), Some(offer)) => Ok((&offer.drink, Some(&offer.means))),
        (Err(reason), None) => Err(reason),
    }
}

/// The table, folded away until it is wanted.
pub(super) fn matrix_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    look: &Look<Option<Matrix>>,
    state: &mut MatrixState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let (icon, words) = if state.is_open {
            (Icon::ChevronDown, "variations-matrix-hide")
        } else {
            (Icon::ChevronRight, "variations-matrix-show")
        };
        let words = speaker.word(words);
        if icons::icon_button(ui, icon, words, words).clicked() {
            state.is_open = !state.is_open;
        }
        let palette = theme::palette(ui.visuals());
        let words = RichText::new(speaker.word("variations-matrix"));
        ui.label(
            words
                .font(TypeStyle::Heading.font_id())
                .color(palette.text_strong),
        );
    });
    if !state.is_open {
        return;
    }
    quiet_ui(ui, speaker.word("variations-matrix-what"));
    progress_ui(ui, look.state, Parts::Variations, actions);
    let Some(matrix) = look.current().and_then(Option::as_ref) else {
        return;
    };
    let mut chosen: Vec<(String, &Adapted)> = Vec::new();
    egui::ScrollArea::horizontal()
        .id_salt("matrix")
        .show(ui, |ui| {
            Grid::new("matrix")
                .spacing(egui::vec2(grid::EASY, grid::NEAR))
                .show(ui, |ui| {
                    ui.label("");
                    for level in &matrix.levels {
                        let name = speaker.level_name(level);
                        ui.label(RichText::new(name).font(TypeStyle::Strong.font_id()));
                    }
                    ui.end_row();
                    for column in &matrix.columns {
                        column_ui(ui, screen, column, state, &mut chosen);
                        ui.end_row();
                    }
                });
        });
    ui.horizontal_wrapped(|ui| {
        let count = chosen.len();
        let words = say!(speaker, "variations-matrix-keep", count: count);
        if ui.add_enabled(count > 0, Button::new(words)).clicked() {
            keep_all(screen, &chosen, actions);
            state.turned.clear();
        }
        if ui.button(speaker.word("variations-matrix-print")).clicked() {
            view.go(Area::Cards, Navigation::MatrixCard);
        }
        let table = speaker.word("variations-matrix-table");
        copy_ui(ui, table, || as_table(screen, matrix));
    });
}

/// A size with an amount of ice: a row, since there are more of them than of levels.
fn column_ui<'matrix>(
    ui: &mut Ui,
    screen: &Screen<'_>,
    column: &'matrix MatrixColumn,
    state: &mut MatrixState,
    chosen: &mut Vec<(String, &'matrix Adapted)>,
) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let name = speaker.matrix_column(column);
    ui.allocate_ui(egui::vec2(COLUMN, grid::TARGET), |ui| {
        ui.set_min_width(COLUMN);
        ui.add(egui::Label::new(RichText::new(&name).color(palette.text_strong)).wrap());
    });
    let rungs = match &column.rungs {
        Ok(rungs) => rungs,
        Err(reason) => {
            let reason = speaker.unadaptable(reason);
            let words = say!(speaker, "variations-not-possible", reason: reason);
            paragraph_ui(ui, words, palette.caution);
            return;
        }
    };
    for rung in rungs {
        let level_name = speaker.level_name(&rung.level);
        let (drink, means) = match drink_of(rung) {
            Ok(found) => found,
            Err(reason) => {
                let reason = speaker.unadaptable(reason);
                let words = say!(speaker, "variations-not-possible", reason: reason);
                ui.label(RichText::new("–").color(palette.text_quiet))
                    .accessible_name(&words)
                    .on_hover_text(&words);
                continue;
            }
        };
        let sugar = match model::sugar(&drink.balance) {
            Some(sugar) => speaker.in_unit(sugar, "g", 1),
            None => speaker.word("variations-not-known").to_owned(),
        };
        let mut words = vec![model::amounts(screen, drink)];
        words.extend(means.map(|means| speaker.means(means)));
        words.push(overall_words(&drink.difference, speaker));
        let hover = words.join("\n");
        if drink.changes.is_empty() {
            ui.label(RichText::new(sugar).color(palette.text_quiet))
                .on_hover_text(speaker.word("variations-nothing-changes"));
            continue;
        }
        // What whole measures miss is kept only by who wants it.
        let usual = means.is_none();
        let cell = CellKey {
            cup: column.cup.clone(),
            ice: column.ice.clone(),
            level: rung.level.clone(),
        };
        let mut is_chosen = usual != state.is_turned(&cell);
        let shown = match means {
            None => sugar,
            Some(_) => say!(speaker, "variations-matrix-by-other-means", sugar: sugar),
        };
        let label = say!(speaker, "variations-matrix-choose", variation: &name, level: &level_name, sugar: &shown);
        let checkbox = ui
            .add(Checkbox::new(&mut is_chosen, shown))
            .accessible_name(&label)
            .on_hover_text(hover);
        if checkbox.changed() {
            state.turn(cell);
        }
        if is_chosen {
            let level = model::level_version(speaker, &level_name);
            let wanted = say!(speaker, "variations-matrix-version", variation: &name, level: level);
            chosen.push((wanted, drink));
        }
    }
}

/// Keeps drinks as versions, in one step.
fn keep_all(screen: &Screen<'_>, chosen: &[(String, &Adapted)], actions: &mut Vec<Action>) {
    let mut recipe: Recipe = screen.recipe.clone();
    let mut edits = Vec::new();
    for (wanted, drink) in chosen {
        let name = version_name(&recipe, wanted);
        let (edit, _) = drink.accept(&recipe, screen.shown.version.as_ref(), &name);
        if let Edit::AddVersion { version, .. } = &edit {
            recipe.versions.push(version.clone());
        }
        edits.push(edit);
    }
    let focus = Focus::Item(ItemId::Recipe(recipe.id));
    actions.push(Action::Edit { edits, focus });
}

/// The matrix for a spreadsheet: a line for each cell.
fn as_table(screen: &Screen<'_>, matrix: &Matrix) -> Table {
    let speaker = screen.speaker;
    let heads = [
        "variations-column-variation",
        "variations-column-level",
        "variations-column-sugar",
        "variations-column-amounts",
        "variations-column-taste-target",
        "variations-column-remark",
    ];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for column in &matrix.columns {
        let name = speaker.matrix_column(column);
        let impossible = |reason: &Unadaptable| {
            let reason = speaker.unadaptable(reason);
            Cell::words(&say!(speaker, "variations-not-possible-cell", reason: reason))
        };
        let rungs = match &column.rungs {
            Ok(rungs) => rungs,
            Err(reason) => {
                table.row([Cell::words(&name), impossible(reason)]);
                continue;
            }
        };
        for rung in rungs {
            let level = Cell::words(&speaker.level_name(&rung.level));
            match drink_of(rung) {
                Ok((drink, means)) => {
                    let sugar = match model::sugar(&drink.balance) {
                        Some(sugar) => Cell::figure(&crate::quantity::show_number(sugar, 1)),
                        None => Cell::words(speaker.word("variations-not-known")),
                    };
                    let remark = means.map(|means| speaker.means(means));
                    table.row([
                        Cell::words(&name),
                        level,
                        sugar,
                        Cell::words(&model::amounts(screen, drink)),
                        Cell::words(&overall_words(&drink.difference, speaker)),
                        Cell::words(&remark.unwrap_or_default()),
                    ]);
                }
                Err(reason) => table.row([Cell::words(&name), level, impossible(reason)]),
            }
        }
    }
    table
}
