//! What so many drinks need: to buy, and to make beforehand, with what the house makes followed down to what is bought.

use super::document::{Block, Column, Document, Table};
use super::figure_words::name_of;
use super::recipe_blocks::{Made, cautions_of_all, footnotes};
use super::request::{BatchItem, CardError};
use crate::balance::balance_version;
use crate::book::{Book, ClosureKind, Ingredient, IngredientId, ServicewareKind};
use crate::quantity::{show_count, show_number};

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

pub(super) fn document(book: &Book, items: &[BatchItem]) -> Result<Document, CardError> {
    let total: u64 = items.iter().map(|item| u64::from(item.count)).sum();
    if total == 0 || total > u64::from(MOST_DRINKS) {
        return Err(CardError::NothingToMake);
    }
    let mut made = Vec::new();
    for item in items.iter().filter(|item| item.count > 0) {
        made.push((Made::new(book, &item.drink)?, item.count));
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
    let bought = follow(book, needs, &mut batches, &mut lines);
    let mut blocks = vec![
        Block::Heading("The drinks".to_owned()),
        Block::Table(drinks(&made)),
    ];
    if !batches.is_empty() {
        blocks.push(Block::Heading("To make beforehand".to_owned()));
        blocks.push(Block::Table(to_make(book, &batches)));
        blocks.push(Block::Table(Table {
            caption: "what goes into all batches together".to_owned(),
            columns: vec![
                Column::text("for"),
                Column::text("ingredient"),
                Column::number("for all batches"),
            ],
            rows: lines,
        }));
    }
    blocks.push(Block::Heading("To buy".to_owned()));
    blocks.push(Block::Table(to_buy(book, &bought)));
    let service = serviceware(book, &made);
    if !service.rows.is_empty() {
        blocks.push(Block::Heading("To serve in".to_owned()));
        blocks.push(Block::Table(service));
    }
    let drinks: Vec<&Made<'_>> = made.iter().map(|(made, _)| made).collect();
    blocks.push(Block::Cautions(cautions_of_all(&drinks)));
    blocks.push(Block::Footnotes(vec![
        "Amounts are what the recipes need, without a reserve. Packs and batches are rounded up to whole ones; what a batch \
         or pack loses as waste is added."
            .to_owned(),
    ]));
    blocks.push(footnotes());
    let title = match made.as_slice() {
        [(one, _)] => one.recipe.name.clone(),
        _ => "Shopping and batches".to_owned(),
    };
    Ok(Document {
        title,
        subtitle: format!(
            "for {total} {}",
            if total == 1 { "drink" } else { "drinks" }
        ),
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
    book: &Book,
    mut needs: Needs,
    batches: &mut Vec<Batch>,
    lines: &mut Vec<Vec<String>>,
) -> Vec<Need> {
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
                    ingredient.full_name(),
                    name_of(book, &share.ingredient),
                    grams.map_or_else(|| "not known".to_owned(), mass_words),
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
fn mass_words(grams: f64) -> String {
    if grams >= 1000.0 {
        format!("{}\u{a0}kg", show_number(grams / 1000.0, 2))
    } else if grams >= 100.0 {
        format!("{}\u{a0}g", show_number(grams, 0))
    } else {
        format!("{}\u{a0}g", show_number(grams, 1))
    }
}

fn need_words(need: &Need) -> String {
    match (need.incomplete, need.grams > 0.0) {
        (false, _) => mass_words(need.grams),
        (true, true) => format!("at least {}", mass_words(need.grams)),
        (true, false) => "weight not known".to_owned(),
    }
}

fn drinks(made: &[(Made<'_>, u32)]) -> Table {
    let rows = made
        .iter()
        .map(|(made, count)| vec![made.name(), made.revision(), count.to_string()]);
    Table {
        caption: "the drinks that are made".to_owned(),
        columns: vec![
            Column::text("drink"),
            Column::text("state"),
            Column::number("drinks"),
        ],
        rows: rows.collect(),
    }
}

fn to_make(book: &Book, batches: &[Batch]) -> Table {
    let rows = batches.iter().map(|batch| {
        let made = batch.made().map_or_else(
            || "not known".to_owned(),
            |made| {
                let least = if batch.need.incomplete {
                    "at least "
                } else {
                    ""
                };
                format!("{least}{}", show_count(made))
            },
        );
        vec![
            name_of(book, &batch.need.ingredient),
            need_words(&batch.need),
            mass_words(batch.usable),
            made,
            batch.keeps_hours.map_or_else(
                || "not stated".to_owned(),
                |hours| format!("{}\u{a0}h", show_count(hours)),
            ),
        ]
    });
    Table {
        caption: "what the house makes beforehand".to_owned(),
        columns: vec![
            Column::text("house-made"),
            Column::number("needed"),
            Column::number("one batch, less waste"),
            Column::number("batches"),
            Column::number("keeps"),
        ],
        rows: rows.collect(),
    }
}

fn to_buy(book: &Book, needs: &[Need]) -> Table {
    let currency = &book.settings.currency;
    let mut total = 0.0;
    let mut incomplete = false;
    let mut rows: Vec<Vec<String>> = Vec::new();
    for need in needs {
        let ingredient = book.ingredient(&need.ingredient);
        let price = ingredient.and_then(|ingredient| ingredient.price.as_ref());
        let price = price.filter(|price| price.grams > 0.0 && price.waste_percent < 100.0);
        let supplier = ingredient.map_or_else(String::new, |item| item.supplier.clone());
        let cells = price.map_or_else(
            || {
                [
                    "price not stated".to_owned(),
                    String::new(),
                    "not known".to_owned(),
                ]
            },
            |price| {
                let usable = price.grams * (1.0 - price.waste_percent / 100.0);
                let packs = (need.grams / usable - LITTLE).ceil().max(0.0);
                total += packs * price.pack;
                [
                    mass_words(price.grams),
                    show_count(packs),
                    format!("{currency}\u{a0}{}", show_number(packs * price.pack, 2)),
                ]
            },
        );
        incomplete |= price.is_none() || need.incomplete;
        let mut row = vec![name_of(book, &need.ingredient), supplier, need_words(need)];
        row.extend(cells);
        rows.push(row);
    }
    let least = if incomplete { "at least " } else { "" };
    rows.push(vec![
        "total".to_owned(),
        String::new(),
        String::new(),
        String::new(),
        String::new(),
        format!("{least}{currency}\u{a0}{}", show_number(total, 2)),
    ]);
    Table {
        caption: "what is bought".to_owned(),
        columns: vec![
            Column::text("ingredient"),
            Column::text("supplier"),
            Column::number("needed"),
            Column::number("one pack"),
            Column::number("packs"),
            Column::number("cost"),
        ],
        rows,
    }
}

fn serviceware(book: &Book, made: &[(Made<'_>, u32)]) -> Table {
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
        add(cup.name.clone(), *count);
        match cup.usual_closure().map(|closure| closure.kind) {
            Some(ClosureKind::Lid) => add(format!("lid for {}", cup.name), *count),
            Some(ClosureKind::Film) => add(format!("film for {}", cup.name), *count),
            Some(ClosureKind::Open) | None => {}
        }
        for service in &cup.serviceware {
            let name = match service.kind {
                ServicewareKind::Straw { wide: true } => "wide straw",
                ServicewareKind::Straw { wide: false } => "straw",
                ServicewareKind::Sleeve => "sleeve",
            };
            add(name.to_owned(), *count);
        }
    }
    Table {
        caption: "cups and what goes with them".to_owned(),
        columns: vec![Column::text("item"), Column::number("pieces")],
        rows: counts
            .into_iter()
            .map(|(name, count)| vec![name, count.to_string()])
            .collect(),
    }
}
