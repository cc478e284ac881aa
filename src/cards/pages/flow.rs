//! Puts rows onto pages: a heading stays with what follows it, the head of a table stands again on the next page, a row that
//! is higher than a page is divided.

use std::collections::VecDeque;

use super::block_rows::rows_of;
use super::rows::Row;
use super::typesetter::{Look, TextLine, Typesetter};
use super::{Mark, Page, Paper};
use crate::cards::document::{Align, Document};

/// Size of the line at the foot, pt.
const FOOT_SIZE: f32 = 7.0;

/// Room above the line at the foot, pt.
const FOOT_GAP: f32 = 6.0;

/// Fewest points that a part of a divided row may have.
const SMALLEST_PART: f32 = 40.0;

impl Typesetter {
    /// The pages of a document on this paper. There is at least one.
    pub fn pages(&mut self, document: &Document, paper: Paper) -> Vec<Page> {
        let (page_width, page_height) = paper.points(document.orientation);
        let margin = paper.margin();
        let width = page_width - 2.0 * margin;
        let size = paper.text_size(document.orientation);
        let rows = rows_of(self, document, size, width);
        let foot = self.lines(
            &document.foot(),
            Look::plain(FOOT_SIZE).quiet(),
            width - 60.0,
        );
        let foot_height: f32 = foot.iter().map(|line| line.height).sum();
        let frame = PageFrame {
            page_width,
            page_height,
            margin,
            width,
            bottom: page_height - margin - foot_height - FOOT_GAP,
        };
        let mut pages = flow(rows, &frame);
        let count = pages.len();
        for (at, page) in pages.iter_mut().enumerate() {
            let number = self.lines(
                &format!("{} / {count}", at + 1),
                Look::plain(FOOT_SIZE).quiet().aligned(Align::Right),
                56.0,
            );
            let top = frame.page_height - frame.margin - foot_height;
            draw_lines(page, &foot, margin, top);
            draw_lines(page, &number, margin + width - 56.0, top);
        }
        pages
    }
}

struct PageFrame {
    page_width: f32,
    page_height: f32,
    margin: f32,
    width: f32,
    /// Where the rows end, pt.
    bottom: f32,
}

impl PageFrame {
    fn page(&self) -> Page {
        Page {
            width: self.page_width,
            height: self.page_height,
            marks: Vec::new(),
        }
    }
}

fn draw_lines(page: &mut Page, lines: &[TextLine], left: f32, top: f32) {
    let mut y = top;
    for line in lines {
        page.marks.extend(line.runs.iter().map(|run| {
            let mut run = run.clone();
            run.x += left;
            run.baseline += y;
            Mark::Glyphs(run)
        }));
        y += line.height;
    }
}

fn flow(rows: Vec<Row>, frame: &PageFrame) -> Vec<Page> {
    let mut rows: VecDeque<Row> = rows.into();
    let mut pages = vec![frame.page()];
    let mut y = frame.margin;
    let mut table_head: Option<Row> = None;
    while let Some(mut row) = rows.pop_front() {
        if row.is_table_head {
            table_head = Some(row.clone());
        } else if !row.is_in_table {
            table_head = None;
        }
        let at_top = y <= frame.margin;
        let gap = if at_top { 0.0 } else { row.gap };
        let room = frame.bottom - y - gap;
        if needed(&row, &rows) <= room {
            let Some(page) = pages.last_mut() else { break };
            row.draw(page, frame.margin, y + gap, frame.width);
            y += gap + row.height();
            continue;
        }
        let repeated = table_head
            .as_ref()
            .filter(|_| !row.is_table_head)
            .map_or(0.0, Row::height);
        let whole_page = frame.bottom - frame.margin - repeated;
        // A row higher than a page is divided where it stands; at the very top it has to be, whatever the room.
        if row.height() > whole_page && (room > SMALLEST_PART || at_top) {
            if let Some(head) = row.split_at(room) {
                let Some(page) = pages.last_mut() else { break };
                head.draw(page, frame.margin, y + gap, frame.width);
                y += gap + head.height();
                if !row.is_empty() {
                    rows.push_front(row);
                }
                continue;
            }
            if at_top {
                // Not even one line fits: it is drawn all the same rather than lost.
                let Some(page) = pages.last_mut() else { break };
                row.draw(page, frame.margin, y, frame.width);
                y = frame.bottom;
                continue;
            }
        }
        if at_top {
            let Some(page) = pages.last_mut() else { break };
            row.draw(page, frame.margin, y, frame.width);
            y += row.height();
            continue;
        }
        pages.push(frame.page());
        y = frame.margin;
        if let (Some(head), false) = (&table_head, row.is_table_head) {
            let Some(page) = pages.last_mut() else { break };
            head.draw(page, frame.margin, y, frame.width);
            y += head.height();
        }
        rows.push_front(row);
    }
    pages
}

/// Room for a row and, for one that must not stand last, for what it stays with.
fn needed(row: &Row, following: &VecDeque<Row>) -> f32 {
    let mut height = row.height();
    let mut last = row;
    for next in following {
        if !last.keep_with_next {
            break;
        }
        height += next.gap + next.height();
        last = next;
    }
    height
}
