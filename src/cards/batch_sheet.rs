//! What so many drinks need: to buy, and to make beforehand, with what the house makes followed down to what is bought.

use super::document::{Block, Column, Document, Table};
use super::recipe_blocks::{Made, cautions_of_all, footnotes};
use super::request::{BatchItem, CardError};
use crate::balance::{Slots, balance_version, per_gram, usable_grams};
use crate::book::{Book, ClosureKind, Ingredient, IngredientId, ServicewareKind};
use crate::say::{Speaker, say};

/// Most drinks that one sheet is made for: more is a slip of the finger.
const MOST_DRINKS: u32 = 100_000;

/// How deep something house-made may be made of something house-made.
const DEEPEST: usize = 8;

/// Part of a batch that is no reason to make another one.
const LITTLE: f64 = 1e-6;

/// How much of an ingredient is needed.
#[derive(Clone, Debug)]
struct Need {
    ingredient: IngredientId,
    /// Grams, as far as they are known.
    grams: f64,
    /// Whether some line does not say what it weighs.
    incomplete: bool,
}

#[derive(Default)]
struct Needs(Vec<Need>);

impl Needs {
    fn add(&mut self, ingredient: &IngredientId, grams: Option<f64>) {
        let at = self
            .0
            .iter()
            .position(|need| need.ingredient == *ingredient)
            .unwrap_or_else(|| {
                self.0.push(Need {
                    ingredient: ingredient.clone(),
                    grams: 0.0,
                    incomplete: false,
                });
                self.0.len() - 1
            });
        let need = &mut self.0[at];
        need.grams += grams.unwrap_or(0.0);
        need.incomplete |= grams.is_none();
    }
}

/// Something that the house makes beforehand.
struct Batch {
    need: Need,
    /// Batches that are needed, as a fraction; `None` when nobody knows what one yields.
    wanted: Option<f64>,
    /// What one batch gives, less what is thrown away, g.
    usable: f64,
    keeps_hours: Option<f64>,
}

impl Batch {
    /// Whole batches that are made.
    fn made(&self) -> Option<f64> {
        self.wanted.map(|wanted| (wanted - LITTLE).ceil())
    }
}

pub(super) fn document(speaker: Speaker<'_>, items: &[BatchItem]) -> Result<Document, CardError> {
    let total: u64 = items.iter().map(|item| u64::from(item.count)).sum();
    if total == 0 || total > u64::from(MOST_DRINKS) {
        return Err(CardError::NothingToMake { most: MOST_DRINKS });
    }
    let mut made = Vec::new();
    for item in items.iter().filter(|item| item.count > 0) {
        made.push((Made::new(speaker, &item.drink)?, item.count));
    }
    let mut needs = Needs::default();
    for (made, count) in &made {
        for share in &made.balance.lines {
            let grams = share.grams.map(|grams| grams * f64::from(*count));
            needs.add(&share.ingredient, grams);
        }
    }
    let mut batches = Vec::new();
    let mut lines = Vec::new();
    let bought = follow(&speaker, needs, &mut batches, &mut lines);
    let mut blocks = vec![
        Block::Heading(speaker.word("batch-drinks").to_owned()),
        Block::Table(drinks(&speaker, &made)),
    ];
    if !batches.is_empty() {
        blocks.push(Block::Heading(speaker.word("batch-make").to_owned()));
        blocks.push(Block::Table(to_make(&speaker, &batches)));
        blocks.push(Block::Table(Table {
            caption: speaker.word("batch-parts-caption").to_owned(),
            columns: vec![
                Column::text(speaker.word("column-for")),
                Column::text(speaker.word("column-ingredient")),
                Column::number(speaker.word("column-all-batches")),
            ],
            rows: lines,
        }));
    }
    blocks.push(Block::Heading(speaker.word("batch-buy").to_owned()));
    blocks.push(Block::Table(to_buy(&speaker, &bought)));
    let service = serviceware(&speaker, &made);
    if !service.rows.is_empty() {
        blocks.push(Block::Heading(speaker.word("batch-serve").to_owned()));
        blocks.push(Block::Table(service));
    }
    let drinks: Vec<&Made<'_>> = made.iter().map(|(made, _)| made).collect();
    blocks.push(Block::Cautions(cautions_of_all(&drinks)));
    blocks.push(Block::Footnotes(vec![
        speaker.word("batch-note").to_owned(),
    ]));
    blocks.push(footnotes(&speaker));
    let title = match made.as_slice() {
        [(one, _)] => one.recipe_name().to_owned(),
        _ => speaker.word("batch-title").to_owned(),
    };
    Ok(Document {
        title,
        subtitle: say!(speaker, "batch-for", count: total),
        revision: match made.as_slice() {
            [(one, _)] => one.revision(),
            _ => String::new(),
        },
        blocks,
        ..Document::default()
    })
}

/// Takes what the house makes apart into whole batches until only what is bought is left.
fn follow(
    speaker: &Speaker<'_>,
    mut needs: Needs,
    batches: &mut Vec<Batch>,
    lines: &mut Vec<Vec<String>>,
) -> Vec<Need> {
    let book = speaker.book;
    for _ in 0..DEEPEST {
        let is_made = |need: &Need| house_recipe(book, &need.ingredient).is_some();
        let (to_make, bought): (Vec<Need>, Vec<Need>) = needs.0.into_iter().partition(is_made);
        needs = Needs(bought);
        if to_make.is_empty() {
            break;
        }
        for need in to_make {
            let Some((ingredient, made)) = house_recipe(book, &need.ingredient) else {
                continue;
            };
            let usable = made.yield_grams.value * (1.0 - made.waste_percent / 100.0);
            let batch = Batch {
                wanted: (usable > 0.0).then(|| need.grams / usable),
                usable,
                keeps_hours: made.shelf_life_hours,
                need: need.clone(),
            };
            let parts = book
                .recipe(&made.recipe)
                .and_then(|recipe| balance_version(book, recipe, None));
            let times = batch.made();
            for share in parts.iter().flat_map(|balance| &balance.lines) {
                let grams = share.grams.zip(times).map(|(grams, times)| grams * times);
                needs.add(&share.ingredient, grams);
                lines.push(vec![
                    speaker.ingredient(&ingredient.id),
                    speaker.ingredient(&share.ingredient),
                    grams.map_or_else(
                        || speaker.word("card-figure-not-known").to_owned(),
                        |grams| mass_words(speaker, grams),
                    ),
                ]);
            }
            batches.push(batch);
        }
    }
    needs.0
}

fn house_recipe<'book>(
    book: &'book Book,
    id: &IngredientId,
) -> Option<(&'book Ingredient, &'book crate::book::HouseMade)> {
    let ingredient = book.ingredient(id)?;
    let made = ingredient.house_made.as_ref()?;
    book.recipe(&made.recipe)?;
    Some((ingredient, made))
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
    match (need.incomplete, need.grams > 0.0) {
        (false, _) => mass,
        (true, true) => say!(speaker, "card-figure-least", figure: mass),
        (true, false) => speaker.word("weight-not-known").to_owned(),
    }
}

fn drinks(speaker: &Speaker<'_>, made: &[(Made<'_>, u32)]) -> Table {
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

fn to_make(speaker: &Speaker<'_>, batches: &[Batch]) -> Table {
    let rows = batches.iter().map(|batch| {
        let made = match batch.made() {
            None => speaker.word("card-figure-not-known").to_owned(),
            Some(made) if batch.need.incomplete => {
                say!(speaker, "card-figure-least", figure: speaker.count(made))
            }
            Some(made) => speaker.count(made),
        };
        vec![
            speaker.ingredient(&batch.need.ingredient),
            need_words(speaker, &batch.need),
            mass_words(speaker, batch.usable),
            made,
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
            Column::number(speaker.word("column-keeps")),
        ],
        rows: rows.collect(),
    }
}

fn to_buy(speaker: &Speaker<'_>, needs: &[Need]) -> Table {
    let book = speaker.book;
    let currency = &book.settings.currency;
    let money = |sum: f64| format!("{currency}\u{a0}{}", speaker.number(sum, 2));
    let mut total = 0.0;
    let mut incomplete = false;
    let mut rows: Vec<Vec<String>> = Vec::new();
    for need in needs {
        let ingredient = book.ingredient(&need.ingredient);
        let price = ingredient.and_then(|ingredient| ingredient.price.as_ref());
        let bought = ingredient.zip(price).and_then(|(item, price)| {
            let gram = per_gram(item, &mut Slots::default()).mix;
            Some((price, usable_grams(book, item, &gram, price)?))
        });
        let supplier = ingredient.map_or_else(String::new, |item| item.supplier.clone());
        let cells = bought.map_or_else(
            || {
                [
                    speaker.word("price-not-stated").to_owned(),
                    String::new(),
                    speaker.word("card-figure-not-known").to_owned(),
                ]
            },
            |(price, usable)| {
                let packs = (need.grams / usable - LITTLE).ceil().max(0.0);
                total += packs * price.pack;
                [
                    speaker.pack(price.content),
                    speaker.count(packs),
                    money(packs * price.pack),
                ]
            },
        );
        incomplete |= bought.is_none() || need.incomplete;
        let mut row = vec![
            speaker.ingredient(&need.ingredient),
            supplier,
            need_words(speaker, need),
        ];
        row.extend(cells);
        rows.push(row);
    }
    let sum = if incomplete {
        say!(speaker, "card-figure-least", figure: money(total))
    } else {
        money(total)
    };
    rows.push(vec![
        speaker.word("batch-total").to_owned(),
        String::new(),
        String::new(),
        String::new(),
        String::new(),
        sum,
    ]);
    Table {
        caption: speaker.word("batch-buy-caption").to_owned(),
        columns: vec![
            Column::text(speaker.word("column-ingredient")),
            Column::text(speaker.word("column-supplier")),
            Column::number(speaker.word("column-needed")),
            Column::number(speaker.word("column-one-pack")),
            Column::number(speaker.word("column-packs")),
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
