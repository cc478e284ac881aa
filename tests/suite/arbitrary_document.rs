//! Documents at random: every kind of block, texts from empty to far too long.

use evensip::cards::{
    Block, CautionLine, Column, Document, Fact, Orientation, StageSteps, StepRow, Table,
};

use crate::arbitrary_book::Dice;

/// A text: mostly short, now and then far longer than its place, with and without spaces, of one or more scripts.
fn text(dice: &mut Dice) -> String {
    let count = match dice.below(24) {
        0 => 0,
        1 => 160 + dice.below(400),
        2 => 1500 + dice.below(1500),
        _ => 1 + dice.below(30),
    };
    let letters: &[&str] = match dice.below(8) {
        0 => &["m"],
        1 => &["é", "m", " "],
        2 => &["a", "b", "i", " ", "\n"],
        3 => &["W", "-", "1", "e\u{301}", "\u{301}", "\u{200d}"],
        4 => &["\u{301}", "e", "\u{1100}", "\u{202e}"],
        _ => &["t", "e", "a", " ", "s", "o", "n"],
    };
    (0..count).map(|_| dice.pick(letters)).collect()
}

fn texts(dice: &mut Dice, most: usize) -> Vec<String> {
    (0..dice.below(most + 1)).map(|_| text(dice)).collect()
}

fn table(dice: &mut Dice) -> Table {
    let count = 1 + if dice.below(6) == 0 {
        dice.below(40)
    } else {
        dice.below(8)
    };
    let columns = (0..count).map(|_| {
        let title = text(dice);
        match dice.below(3) {
            0 => Column::text(title),
            1 => Column::boxes(title),
            _ => Column::number(title),
        }
    });
    let columns = columns.collect();
    let rows = (0..dice.below(5)).map(|_| (0..count).map(|_| text(dice)).collect());
    Table {
        caption: String::new(),
        columns,
        rows: rows.collect(),
    }
}

fn step(dice: &mut Dice) -> StepRow {
    if dice.coin() {
        return StepRow::Instruction(text(dice));
    }
    StepRow::Line {
        amount: text(dice),
        measure: text(dice),
        name: text(dice),
        grams: text(dice),
        remarks: texts(dice, 2),
    }
}

/// A block of any kind.
pub(crate) fn block(dice: &mut Dice) -> Block {
    match dice.below(7) {
        0 => Block::Heading(text(dice)),
        1 => {
            let facts = (0..dice.below(5)).map(|_| match dice.below(4) {
                0 => Fact::to_fill_in(text(dice)),
                _ => Fact::new(text(dice), text(dice)),
            });
            Block::Facts(facts.collect())
        }
        2 => Block::Table(table(dice)),
        3 => {
            let rows = (0..dice.below(4)).map(|_| step(dice)).collect();
            let title = text(dice);
            Block::Steps(vec![StageSteps { title, rows }])
        }
        4 => {
            let cautions = (0..dice.below(4)).map(|_| CautionLine {
                kind: text(dice),
                text: text(dice),
            });
            Block::Cautions(cautions.collect())
        }
        5 => Block::Paragraphs(texts(dice, 3)),
        _ => Block::Footnotes(texts(dice, 3)),
    }
}

/// A document of up to four blocks of any kind, its texts thrown like everything else.
pub(crate) fn document(dice: &mut Dice) -> Document {
    Document {
        title: text(dice),
        subtitle: text(dice),
        shop: text(dice),
        revision: text(dice),
        date: text(dice),

        orientation: if dice.coin() {
            Orientation::Wide
        } else {
            Orientation::Upright
        },
        blocks: (0..dice.below(5)).map(|_| block(dice)).collect(),
        ..Document::default()
    }
}
