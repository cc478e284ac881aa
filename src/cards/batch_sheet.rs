//! What so many drinks need: to buy, to brew and to make beforehand, with what is left over.

use super::document::{Block, Column, Document, Fact, Table};
use super::figure_words::with_uncertainty;
use super::recipe_blocks::{Made, cautions_of_all, footnotes};
use super::request::{BatchItem, CardError};
use crate::balance::{BatchToMake, FromTap, Need, Shopping, TeaToBrew, shopping};
use crate::book::{ClosureKind, ServicewareKind};
use crate::say::{Speaker, say};

/// Most drinks that one sheet is made for: more is a slip of the finger.
const MOST_DRINKS: u32 = 100_000;

pub(super) fn document(speaker: Speaker<'_>, items: &[BatchItem]) -> Result<Document, CardError> {
    let total: u64 = items.iter().map(|item| u64::from(item.count)).sum();
    if total == 0 || total > u64::from(MOST_DRINKS) {
        return Err(CardError::NothingToMake { most: MOST_DRINKS });
    }
    let mut made = Vec::new();
    for item in items.iter().filter(|item| item.count > 0) {
        made.push((Made::new(speaker, &item.drink)?, item.count));
    }
    let drinks = made.iter().map(|(made, count)| (&made.balance, *count));
    let shopping = shopping(speaker.book, drinks);
    let mut blocks = vec![
        Block::Heading(speaker.word("batch-drinks").to_owned()),
        Block::Table(table_of_drinks(&speaker, &made)),
    ];
    let part = |heading, table: Table| {
        let heading = Block::Heading(speaker.word(heading).to_owned());
        [heading, Block::Table(table)]
    };
    if !shopping.batches.is_empty() {
        blocks.extend(part("batch-make", to_make(&speaker, &shopping.batches)));
        blocks.push(Block::Table(parts(&speaker, &shopping.batches)));
    }
    if !shopping.teas.is_empty() {
        blocks.extend(part("batch-brew", to_brew(&speaker, &shopping.teas)));
    }
    if !shopping.from_tap.is_empty() {
        blocks.extend(part("batch-tap", from_tap(&speaker, &shopping.from_tap)));
    }
    blocks.extend(part("batch-buy", to_buy(&speaker, &shopping)));
    if !(shopping.teas.is_empty() && shopping.from_tap.is_empty()) {
        let cost = sum_words(&speaker, shopping.cost());
        let name = speaker.word("batch-cost-of-all");
        blocks.push(Block::Facts(vec![Fact::new(name, cost)]));
    }
    let service = serviceware(&speaker, &made);
    if !service.rows.is_empty() {
        blocks.push(Block::Heading(speaker.word("batch-serve").to_owned()));
        blocks.push(Block::Table(service));
    }
    let of_all: Vec<&Made<'_>> = made.iter().map(|(made, _)| made).collect();
    blocks.push(Block::Cautions(cautions_of_all(&of_all)));
    let mut notes = vec![speaker.word("batch-note").to_owned()];
    if !shopping.teas.is_empty() {
        notes.push(speaker.word("batch-brew-note").to_owned());
    }
    blocks.push(Block::Footnotes(notes));
    blocks.push(footnotes(&speaker));
    let title = match made.as_slice() {
        [(one, _)] => one.recipe_name().to_owned(),
        _ => speaker.word("batch-title").to_owned(),
    };
    let is_unapproved = !of_all.iter().all(|made| made.is_approved());
    Ok(Document {
        title,
        subtitle: say!(speaker, "batch-for", count: total),
        revision: match made.as_slice() {
            [(one, _)] => one.revision(),
            _ if is_unapproved => speaker.word("menu-with-unapproved").to_owned(),
            _ => String::new(),
        },
        is_unapproved,
        blocks,
        ..Document::default()
    })
}

/// "17.6 g", "2.35 kg".
fn mass_words(speaker: &Speaker<'_>, grams: f64) -> String {
    if grams >= 1000.0 {
        speaker.in_unit(grams / 1000.0, "kg", 2)
    } else if grams >= 100.0 {
        speaker.in_unit(grams, "g", 0)
    } else {
        speaker.in_unit(grams, "g", 1)
    }
}

fn need_words(speaker: &Speaker<'_>, need: &Need) -> String {
    let mass = mass_words(speaker, need.grams);
    match (need.is_least, need.grams > 0.0) {
        (false, _) => mass,
        (true, true) => say!(speaker, "card-figure-least", figure: mass),
        (true, false) => speaker.word("weight-not-known").to_owned(),
    }
}

fn table_of_drinks(speaker: &Speaker<'_>, made: &[(Made<'_>, u32)]) -> Table {
    let rows = made
        .iter()
        .map(|(made, count)| vec![made.name(), made.revision(), count.to_string()]);
    Table {
        caption: speaker.word("batch-drinks-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-drink")),
            Column::text(speaker.word("column-state")),
            Column::number(speaker.word("column-drinks")),
        ],
        rows: rows.collect(),
    }
}

/// A mass, as far as it is known.
fn known_mass_words(speaker: &Speaker<'_>, grams: Option<f64>) -> String {
    grams.map_or_else(
        || speaker.word("card-figure-not-known").to_owned(),
        |grams| mass_words(speaker, grams),
    )
}

fn to_make(speaker: &Speaker<'_>, batches: &[BatchToMake]) -> Table {
    let rows = batches.iter().map(|batch| {
        let made = match batch.count {
            None => speaker.word("card-figure-not-known").to_owned(),
            Some(count) if batch.need.is_least => {
                say!(speaker, "card-figure-least", figure: speaker.count(count))
            }
            Some(count) => speaker.count(count),
        };
        vec![
            speaker.ingredient(&batch.need.ingredient),
            need_words(speaker, &batch.need),
            mass_words(speaker, batch.usable),
            made,
            known_mass_words(speaker, batch.left_over()),
            batch.keeps_hours.map_or_else(
                || speaker.word("card-figure-unstated").to_owned(),
                |hours| say!(speaker, "hours", hours: speaker.count(hours)),
            ),
        ]
    });
    Table {
        caption: speaker.word("batch-make-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-house-made")),
            Column::number(speaker.word("column-needed")),
            Column::number(speaker.word("column-one-batch")),
            Column::number(speaker.word("column-batches")),
            Column::number(speaker.word("column-left-over")),
            Column::number(speaker.word("column-keeps")),
        ],
        rows: rows.collect(),
    }
}

fn parts(speaker: &Speaker<'_>, batches: &[BatchToMake]) -> Table {
    let rows = batches.iter().flat_map(|batch| {
        batch.parts.iter().map(|(part, grams)| {
            vec![
                speaker.ingredient(&batch.need.ingredient),
                speaker.ingredient(part),
                known_mass_words(speaker, *grams),
            ]
        })
    });
    Table {
        caption: speaker.word("batch-parts-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-for")),
            Column::text(speaker.word("column-ingredient")),
            Column::number(speaker.word("column-all-batches")),
        ],
        rows: rows.collect(),
    }
}

fn to_brew(speaker: &Speaker<'_>, teas: &[TeaToBrew]) -> Table {
    let not_known = || speaker.word("card-figure-not-known").to_owned();
    let rows = teas.iter().map(|tea| {
        let (leaf, water) = tea.brew.map_or_else(
            || (not_known(), not_known()),
            |brew| {
                let leaf = with_uncertainty(speaker, brew.leaf.value, Some(brew.leaf.u), "g");
                (leaf, mass_words(speaker, brew.water))
            },
        );
        vec![
            speaker.ingredient(&tea.need.ingredient),
            need_words(speaker, &tea.need),
            mass_words(speaker, tea.ready),
            leaf,
            water,
            cost_words(speaker, tea.cost),
        ]
    });
    Table {
        caption: speaker.word("batch-brew-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-tea")),
            Column::number(speaker.word("column-needed")),
            Column::number(speaker.word("column-brewed")),
            Column::number(speaker.word("column-leaf")),
            Column::number(speaker.word("column-water")),
            Column::number(speaker.word("column-cost")),
        ],
        rows: rows.collect(),
    }
}

fn from_tap(speaker: &Speaker<'_>, drawn: &[FromTap]) -> Table {
    let rows = drawn.iter().map(|drawn| {
        vec![
            speaker.ingredient(&drawn.need.ingredient),
            need_words(speaker, &drawn.need),
            cost_words(speaker, drawn.cost),
        ]
    });
    Table {
        caption: speaker.word("batch-tap-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-ingredient")),
            Column::number(speaker.word("column-needed")),
            Column::number(speaker.word("column-cost")),
        ],
        rows: rows.collect(),
    }
}

fn money(speaker: &Speaker<'_>, sum: f64) -> String {
    let currency = &speaker.book.settings.currency;
    format!("{currency}\u{a0}{}", speaker.number(sum, 2))
}

fn cost_words(speaker: &Speaker<'_>, cost: Option<f64>) -> String {
    cost.map_or_else(
        || speaker.word("price-not-stated").to_owned(),
        |cost| money(speaker, cost),
    )
}

/// A sum, which may be less than it will be.
fn sum_words(speaker: &Speaker<'_>, (sum, is_least): (f64, bool)) -> String {
    let sum = money(speaker, sum);
    if is_least {
        say!(speaker, "card-figure-least", figure: sum)
    } else {
        sum
    }
}

fn to_buy(speaker: &Speaker<'_>, shopping: &Shopping) -> Table {
    let mut rows: Vec<Vec<String>> = Vec::new();
    for purchase in &shopping.bought {
        let need = &purchase.need;
        let item = speaker.book.ingredient(&need.ingredient);
        let supplier = item.map_or_else(String::new, |item| item.supplier.clone());
        let mut row = vec![
            speaker.ingredient(&need.ingredient),
            supplier,
            need_words(speaker, need),
        ];
        row.extend(match purchase.packs {
            None => [
                speaker.word("price-not-stated").to_owned(),
                String::new(),
                String::new(),
                speaker.word("card-figure-not-known").to_owned(),
            ],
            Some(packs) => [
                speaker.pack(packs.content),
                speaker.count(packs.count),
                known_mass_words(speaker, purchase.left_over()),
                money(speaker, packs.cost),
            ],
        });
        rows.push(row);
    }
    let mut total = vec![String::new(); 7];
    speaker.word("batch-total").clone_into(&mut total[0]);
    total[6] = sum_words(speaker, shopping.cost_of_packs());
    rows.push(total);
    Table {
        caption: speaker.word("batch-buy-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-ingredient")),
            Column::text(speaker.word("column-supplier")),
            Column::number(speaker.word("column-needed")),
            Column::number(speaker.word("column-one-pack")),
            Column::number(speaker.word("column-packs")),
            Column::number(speaker.word("column-left-over")),
            Column::number(speaker.word("column-cost")),
        ],
        rows,
    }
}

fn serviceware(speaker: &Speaker<'_>, made: &[(Made<'_>, u32)]) -> Table {
    let book = speaker.book;
    let mut counts: Vec<(String, u64)> = Vec::new();
    let mut add =
        |name: String, count: u32| match counts.iter_mut().find(|(known, _)| *known == name) {
            Some((_, so_far)) => *so_far += u64::from(count),
            None => counts.push((name, u64::from(count))),
        };
    for (made, count) in made {
        let cup = made.balance.resolved.cup.as_ref();
        let Some(cup) = cup.and_then(|id| book.vessel(id)) else {
            continue;
        };
        let name = speaker.vessel(&cup.id);
        add(name.clone(), *count);
        match cup.usual_closure().map(|closure| closure.kind) {
            Some(ClosureKind::Lid) => add(say!(speaker, "serve-lid", cup: &name), *count),
            Some(ClosureKind::Film) => add(say!(speaker, "serve-film", cup: &name), *count),
            Some(ClosureKind::Open) | None => {}
        }
        for service in &cup.serviceware {
            let name = match service.kind {
                ServicewareKind::Straw { wide: true } => "serve-wide-straw",
                ServicewareKind::Straw { wide: false } => "serve-straw",
                ServicewareKind::Sleeve => "serve-sleeve",
            };
            add(speaker.word(name).to_owned(), *count);
        }
    }
    Table {
        caption: speaker.word("batch-serve-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-item")),
            Column::number(speaker.word("column-pieces")),
        ],
        rows: counts
            .into_iter()
            .map(|(name, count)| vec![name, count.to_string()])
            .collect(),
    }
}
