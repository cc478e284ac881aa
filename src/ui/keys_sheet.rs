//! The sheet of the keys: what each of them does, in groups, side by side where the window has the room.

use egui::{Label, RichText, ScrollArea, Ui};

use super::area::Area;
use super::commands::UiCommand;
use super::modal::{main_button_ui, title_ui};
use super::spreadsheet::{Cell, Table, copy_ui};
use super::theme::{self, TypeStyle, grid};
use super::words::small_heading_ui;
use crate::say::Speaker;

/// A row of a group.
#[derive(Clone, Copy)]
enum Row {
    /// A command with its keys.
    Of(UiCommand),
    /// Keys that belong to no command of ours: the messages of which, and of what they do.
    Other(&'static str, &'static str),
}

/// Rows under a heading.
struct Group {
    /// Its message.
    heading: &'static str,
    rows: &'static [Row],
}

const BOOK: Group = Group {
    heading: "keys-of-book",
    rows: &[
        Row::Of(UiCommand::NewBook),
        Row::Of(UiCommand::OpenBook),
        Row::Of(UiCommand::Save),
        Row::Of(UiCommand::SaveAs),
        Row::Of(UiCommand::LookUp),
        Row::Of(UiCommand::Undo),
        Row::Of(UiCommand::Redo),
    ],
};

const DRINK: Group = Group {
    heading: "keys-of-drink",
    rows: &[
        Row::Of(UiCommand::NewRecipe),
        Row::Of(UiCommand::AddLine),
        Row::Of(UiCommand::AddInstruction),
        Row::Of(UiCommand::LineAbove),
        Row::Of(UiCommand::LineBelow),
        Row::Other("keys-enter-or-type", "keys-enter-or-type-does"),
        Row::Of(UiCommand::MoveLineUp),
        Row::Of(UiCommand::MoveLineDown),
        Row::Of(UiCommand::SwapLine),
        Row::Of(UiCommand::RemoveLine),
    ],
};

const AREAS: Group = Group {
    heading: "keys-of-areas",
    rows: &[
        Row::Of(UiCommand::GoTo(Area::Recipe)),
        Row::Of(UiCommand::GoTo(Area::Swap)),
        Row::Of(UiCommand::GoTo(Area::Variations)),
        Row::Of(UiCommand::GoTo(Area::Compare)),
        Row::Of(UiCommand::GoTo(Area::Lesson)),
        Row::Of(UiCommand::GoTo(Area::Serving)),
        Row::Of(UiCommand::GoTo(Area::Counter)),
        Row::Of(UiCommand::GoTo(Area::Cards)),
        Row::Of(UiCommand::GoTo(Area::Findings)),
    ],
};

const WINDOW: Group = Group {
    heading: "keys-of-window",
    rows: &[
        Row::Of(UiCommand::Back),
        Row::Other("keys-tab", "keys-tab-does"),
        Row::Other("keys-zoom", "keys-zoom-does"),
        Row::Of(UiCommand::OtherDegrees),
        Row::Of(UiCommand::OtherVolumes),
        Row::Of(UiCommand::ShowKeys),
    ],
};

/// The groups of each column.
const COLUMNS: [&[Group]; 2] = [&[BOOK, AREAS], &[DRINK, WINDOW]];

/// Width of the keys in front of what they do, in points.
const KEYS: f32 = 48.0 * grid::STEP;
/// Width of a column, in points.
const COLUMN: f32 = 106.0 * grid::STEP;
/// Room for the title above the keys, the buttons below them and the edges of the window, in points.
const AROUND: f32 = 42.0 * grid::STEP;

/// Width of the sheet in a window of this width, in points: one column or two.
pub(super) fn width(window: f32) -> f32 {
    let edges = grid::APART + grid::EASY;
    let two = 2.0 * COLUMN + grid::APART + edges;
    if window >= two + 2.0 * grid::FAR {
        two
    } else {
        COLUMN + edges
    }
}

/// The keys; `false` when the sheet should close.
pub(super) fn keys_ui(ui: &mut Ui, speaker: Speaker<'_>) -> bool {
    title_ui(ui, speaker.word("keys-title"));
    // Where the window is low they scroll, so that the way out stays in sight.
    let most = ui.ctx().content_rect().height() - AROUND;
    ScrollArea::vertical().max_height(most).show(ui, |ui| {
        ui.spacing_mut().item_spacing.y = grid::TIGHT;
        if ui.available_width() >= 2.0 * COLUMN {
            ui.horizontal_top(|ui| {
                ui.spacing_mut().item_spacing.x = grid::APART;
                for groups in COLUMNS {
                    ui.vertical(|ui| groups_ui(ui, speaker, groups));
                }
            });
        } else {
            // The bar floats over the keys; it gets a margin of its own.
            ui.set_width(ui.available_width() - grid::EASY);
            for groups in COLUMNS {
                groups_ui(ui, speaker, groups);
            }
        }
    });
    ui.add_space(grid::NEAR);
    ui.horizontal(|ui| {
        let stays = !main_button_ui(ui, speaker.word("keys-close"), true);
        copy_ui(ui, speaker.word("keys-table"), || as_table(speaker));
        stays
    })
    .inner
}

fn as_table(speaker: Speaker<'_>) -> Table {
    let heads = ["keys-column", "keys-column-does"];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    let groups = COLUMNS.into_iter().flatten();
    for row in groups.flat_map(|group| group.rows) {
        let (keys, words) = words_of(speaker, *row);
        table.row([Cell::words(&keys), Cell::words(words)]);
    }
    table
}

fn groups_ui(ui: &mut Ui, speaker: Speaker<'_>, groups: &[Group]) {
    let palette = theme::palette(ui.visuals());
    ui.set_width(COLUMN.min(ui.available_width()));
    for group in groups {
        ui.add_space(grid::TIGHT);
        small_heading_ui(ui, speaker.word(group.heading));
        for row in group.rows {
            let (keys, words) = words_of(speaker, *row);
            ui.horizontal_top(|ui| {
                ui.spacing_mut().item_spacing.x = 0.0;
                ui.allocate_ui(egui::vec2(KEYS, grid::ICON), |ui| {
                    ui.set_width(KEYS);
                    ui.label(
                        RichText::new(keys)
                            .font(TypeStyle::Body.font_id())
                            .color(palette.text_strong),
                    );
                });
                ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
            });
        }
        ui.add_space(grid::TIGHT);
    }
}

/// The keys of a row and what they do; an area of work is named and needs no sentence.
fn words_of(speaker: Speaker<'_>, row: Row) -> (String, &'static str) {
    match row {
        Row::Of(command @ UiCommand::GoTo(_)) => {
            (command.keys_in_words(speaker), command.label(speaker))
        }
        Row::Of(command) => (command.keys_in_words(speaker), command.explanation(speaker)),
        Row::Other(keys, words) => (speaker.word(keys).to_owned(), speaker.word(words)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_command_stands_in_one_group() {
        let shown: Vec<UiCommand> = COLUMNS
            .into_iter()
            .flatten()
            .flat_map(|group| group.rows)
            .filter_map(|row| match row {
                Row::Of(command) => Some(*command),
                Row::Other(..) => None,
            })
            .collect();
        for command in UiCommand::ALL {
            let times = shown.iter().filter(|other| **other == command).count();
            assert_eq!(times, 1, "{command:?}");
        }
        assert_eq!(shown.len(), UiCommand::ALL.len());
    }

    #[test]
    fn the_keys_stand_in_two_columns_from_a_small_window_on() {
        assert!(width(1024.0) > 2.0 * COLUMN);
        assert!(width(860.0) < 2.0 * COLUMN);
    }
}
