//! Rows: cells beside each other that go onto a page together, or are divided when they are higher than one.

use super::page::{Ink, Mark, Page, Part, RowKind};
use super::typesetter::TextLine;

/// Lines of text at a place in a row.
#[derive(Clone, Debug, Default)]
pub(super) struct RowCell {
    /// From the left end of the row, pt.
    pub(super) x: f32,
    pub(super) lines: Vec<TextLine>,
    /// What is drawn with it.
    pub(super) drawn: Option<Drawn>,
}

/// What is drawn with a cell for a pen.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Drawn {
    /// A box of so many points in front of the first line, and the room between.
    Box { side: f32, between: f32 },
    /// A line of so many points to write on.
    Line(f32),
}

impl Drawn {
    fn draw(self, page: &mut Page, left: f32, top: f32, bottom: f32, first_line: f32) {
        match self {
            Self::Box { side, between } => {
                let right = left - between;
                let top = top + (first_line - side) / 2.0;
                page.marks.push(Mark::Frame {
                    corners: [right - side, top, right, top + side],
                    width: 0.8,
                    ink: Ink::BLACK,
                });
            }
            Self::Line(width) => page.marks.push(Mark::Fill {
                corners: [left, bottom - 0.7, left + width, bottom],
                ink: Ink::BLACK,
            }),
        }
    }
}

impl RowCell {
    /// How many of its lines go into so much room.
    fn fitting(&self, room: f32) -> usize {
        let mut height = 0.0;
        let fits = |line: &&TextLine| {
            height += line.height;
            height <= room
        };
        self.lines.iter().take_while(fits).count()
    }
}

/// What is drawn around a row.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) enum Surround {
    /// Nothing.
    #[default]
    Bare,
    /// A line below.
    RuleBelow(Ink, f32),
    /// A shaded box with a bar at its left, across the whole width; rows in sequence join.
    Boxed,
    /// A strong line all around.
    Framed,
}

/// Width of a strong line all around, pt.
const FRAME: f32 = 1.6;

/// Cells beside each other.
#[derive(Clone, Debug, Default)]
pub(super) struct Row {
    pub(super) cells: Vec<RowCell>,
    pub(super) surround: Surround,
    /// Room above and below the cells, pt.
    pub(super) above: f32,
    pub(super) below: f32,
    /// Room before the row that falls away at the top of a page, pt.
    pub(super) gap: f32,
    /// What it is to those who have the page read to them.
    pub(super) kind: RowKind,
    /// Whether it begins a list or a table, even behind another.
    pub(super) begins: bool,
    /// Its number in the document; `None` for one that only stands again.
    pub(super) number: Option<usize>,
    /// Whether it must not be the last on a page: a heading, the head of a table.
    pub(super) keep_with_next: bool,
    /// Rows that belong under the head of a table.
    pub(super) is_in_table: bool,
}

impl Row {
    /// Whether it is repeated at the top of the next page when the rows that follow go on there.
    pub(super) fn is_table_head(&self) -> bool {
        self.kind == RowKind::TableHead
    }

    /// Height with its own room, without the gap, pt.
    pub(super) fn height(&self) -> f32 {
        self.above + self.text_height() + self.below
    }

    fn text_height(&self) -> f32 {
        let heights = self
            .cells
            .iter()
            .map(|cell| cell.lines.iter().map(|line| line.height).sum::<f32>());
        heights.fold(0.0, f32::max)
    }

    /// Takes off what goes into so much room: at least a line of what has the most, whatever the room.
    pub(super) fn split_at(&mut self, room: f32) -> Self {
        let room = room - self.above - self.below;
        let most = self.cells.iter().map(|cell| cell.lines.len()).max();
        let fitting: Vec<usize> = self.cells.iter().map(|cell| cell.fitting(room)).collect();
        let is_stuck = fitting.iter().all(|count| *count == 0);
        let mut part = Self {
            cells: Vec::new(),
            ..self.clone()
        };
        for (cell, fitting) in self.cells.iter_mut().zip(fitting) {
            let is_highest = Some(cell.lines.len()) == most;
            let fitting = fitting.max(usize::from(is_stuck && is_highest));
            let rest = cell.lines.split_off(fitting.min(cell.lines.len()));
            let lines = std::mem::replace(&mut cell.lines, rest);
            part.cells.push(RowCell {
                x: cell.x,
                lines,
                drawn: cell.drawn.take(),
            });
        }
        part
    }

    pub(super) fn is_empty(&self) -> bool {
        self.cells.iter().all(|cell| cell.lines.is_empty())
    }

    /// Draws it with its top left corner here.
    pub(super) fn draw(&self, page: &mut Page, left: f32, top: f32, width: f32) {
        let bottom = top + self.height();
        match self.surround {
            Surround::Bare => {}
            Surround::RuleBelow(ink, thickness) => page.marks.push(Mark::Fill {
                corners: [left, bottom - thickness, left + width, bottom],
                ink,
            }),
            Surround::Framed => page.marks.push(Mark::Frame {
                corners: [
                    left + FRAME / 2.0,
                    top + FRAME / 2.0,
                    left + width - FRAME / 2.0,
                    bottom - FRAME / 2.0,
                ],
                width: FRAME,
                ink: Ink::BLACK,
            }),
            Surround::Boxed => {
                page.marks.push(Mark::Fill {
                    corners: [left, top, left + width, bottom],
                    ink: Ink::SHADE,
                });
                page.marks.push(Mark::Fill {
                    corners: [left, top, left + 2.5, bottom],
                    ink: Ink::BLACK,
                });
            }
        }
        for (at, cell) in self.cells.iter().enumerate() {
            let part = self.number.map(|row| Part {
                row,
                cell: at,
                cells: self.cells.len(),
                kind: self.kind,
                begins: self.begins,
            });
            let mut y = top + self.above;
            if let Some(drawn) = cell.drawn {
                let first_line = cell.lines.first().map_or(0.0, |line| line.height);
                drawn.draw(page, left + cell.x, y, bottom - self.below, first_line);
            }
            for line in &cell.lines {
                page.marks.extend(line.runs.iter().map(|run| {
                    let mut run = run.clone();
                    run.x += left + cell.x;
                    run.baseline += y;
                    run.part = part;
                    Mark::Glyphs(run)
                }));
                y += line.height;
            }
        }
    }
}
