//! Puts rows onto pages: a heading stays with what follows it, the head of a table stands again on the next page, a row that
//! is higher than a page is divided.
//!
//! Every page takes a row or a part of one that no other page has, whatever the document: the line at the foot and a head
//! that stands again leave room for it.

use std::collections::VecDeque;

use super::Paper;
use super::block_rows::{rows_of, small_print};
use super::foot::Foot;
use super::page::{Mark, Page, Part, RowKind};
use super::rows::Row;
use super::typesetter::{TextLine, Typesetter};
use crate::cards::document::Document;

/// Room above the line at the foot, pt.
const FOOT_GAP: f32 = 6.0;

/// Fewest points that a part of a divided row may have: more than any line of text is high.
const SMALLEST_PART: f32 = 40.0;

/// Most of a page that the head of a table takes where it stands again; a higher one stands once.
const REPEATED_HEAD: f32 = 0.33;

impl Typesetter {
    /// The pages of a document on this paper, in the largest of its sizes that needs only one, else in the smallest. There is
    /// at least one page, and none without something of its own.
    pub fn pages(&mut self, document: &Document, paper: Paper) -> Vec<Page> {
        let sizes = paper.text_sizes(document.orientation);
        let mut pages = self.pages_in(document, paper, sizes[0]);
        for size in &sizes[1..] {
            if pages.len() > 1 {
                break;
            }
            let larger = self.pages_in(document, paper, *size);
            if larger.len() > 1 {
                break;
            }
            pages = larger;
        }
        pages
    }

    fn pages_in(&mut self, document: &Document, paper: Paper, size: f32) -> Vec<Page> {
        let (page_width, page_height) = paper.points(document.orientation);
        let margin = paper.margin();
        let width = page_width - 2.0 * margin;
        let mut rows = rows_of(self, document, size, width);
        let foot = Foot::of(self, document, width);
        if foot.is_cut {
            rows.push(small_print(self, &Foot::in_full(document), size, width));
        }
        for (at, row) in rows.iter_mut().enumerate() {
            row.number = Some(at);
        }
        let last = Part {
            row: rows.len(),
            cell: 0,
            cells: 1,
            kind: RowKind::Paragraph,
            begins: false,
        };
        let frame = PageFrame {
            page_width,
            page_height,
            margin,
            width,
            bottom: page_height - margin - foot.height() - FOOT_GAP,
        };
        if document.kind.has_slips() {
            keep_slips_whole(&mut rows, frame.height());
        }
        let mut pages = flow(rows, &frame);
        let count = pages.len();
        for (at, page) in pages.iter_mut().enumerate() {
            let number = Foot::number(self, at + 1, count);
            let top = frame.page_height - frame.margin - foot.height();
            // It is read once, behind everything else.
            let part = Some(last).filter(|_| at == 0);
            draw_lines(page, &foot.lines, margin, top, part);
            draw_lines(page, &number, margin + width - Foot::NUMBERS, top, None);
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
    /// From the top of a page to where its rows end, pt.
    fn height(&self) -> f32 {
        self.bottom - self.margin
    }

    fn page(&self) -> Page {
        Page {
            width: self.page_width,
            height: self.page_height,
            marks: Vec::new(),
        }
    }
}

fn draw_lines(page: &mut Page, lines: &[TextLine], left: f32, top: f32, part: Option<Part>) {
    let mut y = top;
    for line in lines {
        page.marks.extend(line.runs.iter().map(|run| {
            let mut run = run.clone();
            run.x += left;
            run.baseline += y;
            run.part = part;
            Mark::Glyphs(run)
        }));
        y += line.height;
    }
}

/// Keeps what stands from a heading to the next one on a page, where a page is high enough.
fn keep_slips_whole(rows: &mut [Row], page_height: f32) {
    let is_heading = |row: &Row| matches!(row.kind, RowKind::Heading(2));
    for slip in rows.chunk_by_mut(|_, next| !is_heading(next)) {
        let height: f32 = slip.iter().map(|row| row.gap + row.height()).sum();
        if let Some((_, others)) = slip.split_last_mut()
            && height <= page_height
        {
            for row in others {
                row.keep_with_next = true;
            }
        }
    }
}

fn flow(rows: Vec<Row>, frame: &PageFrame) -> Vec<Page> {
    let mut rows: VecDeque<Row> = rows.into();
    let mut pages = Vec::new();
    let mut page = frame.page();
    let mut y = frame.margin;
    // Whether nothing of its own stands on the page yet: a head that stands again is not its own.
    let mut is_fresh = true;
    let mut table_head: Option<Row> = None;
    while let Some(mut row) = rows.pop_front() {
        if row.is_table_head() {
            // Where it stands again, it is read no second time.
            table_head = Some(Row {
                number: None,
                ..row.clone()
            });
        } else if !row.is_in_table {
            table_head = None;
        }
        let gap = if is_fresh { 0.0 } else { row.gap };
        let room = frame.bottom - y - gap;
        let fits = row.height() <= room;
        if fits && (is_fresh || needed(&row, &rows, frame.height()) <= room) {
            row.draw(&mut page, frame.margin, y + gap, frame.width);
            y += gap + row.height();
            is_fresh = false;
            continue;
        }
        // What goes onto no page whole is divided where it stands; on a page without anything else it has to be.
        if !fits && (is_fresh || row.height() > frame.height() && room > SMALLEST_PART) {
            let part = row.split_at(room);
            part.draw(&mut page, frame.margin, y + gap, frame.width);
            y += gap + part.height();
            is_fresh = false;
            if !row.is_empty() {
                rows.push_front(row);
            }
            continue;
        }
        pages.push(std::mem::replace(&mut page, frame.page()));
        y = frame.margin;
        is_fresh = true;
        let again = table_head
            .as_ref()
            .filter(|head| !row.is_table_head() && head.height() <= REPEATED_HEAD * frame.height());
        if let Some(head) = again {
            head.draw(&mut page, frame.margin, y, frame.width);
            y += head.height();
        }
        rows.push_front(row);
    }
    pages.push(page);
    pages
}

/// Room for a row and, for one that must not stand last, for what it stays with: the beginning of a row that is divided.
fn needed(row: &Row, following: &VecDeque<Row>, page_height: f32) -> f32 {
    let mut height = row.height();
    let mut last = row;
    for next in following {
        if !last.keep_with_next {
            break;
        }
        let is_divided = next.height() > page_height;
        height += next.gap
            + if is_divided {
                SMALLEST_PART
            } else {
                next.height()
            };
        last = next;
    }
    height
}
