//! Ingredients and prices from a table, as a list for review.
//!
//! A cell that is empty states nothing and changes nothing; it is never zero. Units are taken as found: in the cell, else
//! in the heading; where neither states one and the field has several, the row says so and leaves the figure out.

use std::collections::{BTreeMap, BTreeSet};

use super::basis::{Basis, without_basis};
use super::doubt::{CellFault, Doubt, MOST_IN_CELL, Skip, UnitsOf};
use super::field::{Field, Mapping};
use super::number::{DecimalSigns, number_and_unit};
use super::review::{FieldChange, Outcome, Review, ReviewLine};
use super::table::TextTable;
use crate::book::{
    Book, Composition, Day, Evidence, Figure, Form, Ingredient, IngredientId, Nutrient, Price,
    Role, is_same_content, new_errors_of,
};
use crate::quantity::{
    KILOJOULES_PER_KILOCALORIE, NumberError, Pack, PackError, excerpt, parse_pack,
};

/// Salt in a gram of sodium, g/g (Regulation (EU) 1169/2011, Annex I).
const SALT_PER_SODIUM: f64 = 2.5;

/// Longest name in a sentence, in characters.
const NAME: usize = 60;

/// What a table would do to a book, with its numbers read by the decimal signs. `date` is the day of prices that state none; empty for none.
pub fn review_price_list(
    book: &Book,
    table: &TextTable,
    mapping: &Mapping,
    signs: &DecimalSigns,
    date: &str,
) -> Review {
    let mut review = Review::default();
    let known = KnownNames::of(book);
    let mut seen: BTreeMap<String, u64> = BTreeMap::new();
    let mut taken: BTreeSet<IngredientId> = BTreeSet::new();
    for (line, cells) in &table.rows {
        let mut row = RowReader {
            table,
            mapping,
            cells,
            signs,
            doubts: Vec::new(),
        };
        let name = row.text(Field::Name);
        let brand = row.text(Field::Brand);
        let key = format!("{}|{}", brand.to_lowercase(), name.to_lowercase());
        let outcome = if let Some(fault) = table.faults.get(line) {
            Outcome::Skipped(Skip::Row(fault.clone()))
        } else if mapping.column(Field::Name).is_none() {
            Outcome::Skipped(Skip::NoNameColumn)
        } else if name.is_empty() {
            Outcome::Skipped(Skip::NoName)
        } else if let Some(before) = seen.get(&key) {
            Outcome::Skipped(Skip::Again { before: *before })
        } else {
            seen.insert(key, *line);
            match known.find(&brand, &name) {
                Found::One(known) => row.changed(known, date),
                Found::None => {
                    let ingredient = row.new_ingredient(book, &name, &brand, &mut taken, date);
                    Outcome::New(Box::new(ingredient))
                }
                Found::Several(ingredients) => Outcome::Skipped(Skip::Several { ingredients }),
            }
        };
        let outcome = without_errors(book, outcome);
        let full = if brand.is_empty() {
            name
        } else {
            [brand, name].join(" ")
        };
        review.lines.push(ReviewLine {
            line: *line,
            name: excerpt(&full, NAME),
            outcome,
            doubts: row.doubts,
        });
    }
    review
}

/// A row that would bring an error into the book is left out, with the reason: the others can be taken.
fn without_errors(book: &Book, outcome: Outcome) -> Outcome {
    let (Outcome::New(ingredient) | Outcome::Changed { ingredient, .. }) = &outcome else {
        return outcome;
    };
    match new_errors_of(book, ingredient).into_iter().next() {
        Some(error) => Outcome::Skipped(Skip::Error(Box::new(error.kind))),
        None => outcome,
    }
}

enum Found<'book> {
    None,
    One(&'book Ingredient),
    Several(Vec<IngredientId>),
}

/// The ingredients of a book by what a table may call them; a list of thousands would else go through all of them per row.
struct KnownNames<'book> {
    book: &'book Book,
    /// In small letters, brand and name together and the name alone; each ingredient once per name, in the order of the book.
    by_name: BTreeMap<String, Vec<&'book Ingredient>>,
}

impl<'book> KnownNames<'book> {
    fn of(book: &'book Book) -> Self {
        let mut by_name: BTreeMap<String, Vec<&Ingredient>> = BTreeMap::new();
        for item in &book.ingredients {
            let (full, alone) = (folded(&item.full_name()), folded(&item.name));
            if full != alone {
                by_name.entry(alone).or_default().push(item);
            }
            by_name.entry(full).or_default().push(item);
        }
        Self { book, by_name }
    }

    /// The ingredient that a row is about: by id, by brand and name, or by name alone when the row states no brand.
    fn find(&self, brand: &str, name: &str) -> Found<'book> {
        let by_id = IngredientId::new(name).ok();
        if let Some(known) = by_id.and_then(|id| self.book.ingredient(&id)) {
            return Found::One(known);
        }
        let full = if brand.is_empty() {
            folded(name)
        } else {
            folded(&[brand, name].join(" "))
        };
        let (alone, brand) = (folded(name), folded(brand));
        let fits = |item: &&&Ingredient| {
            folded(&item.full_name()) == full
                || folded(&item.name) == alone && (brand.is_empty() || folded(&item.brand) == brand)
        };
        let called = |name: &str| self.by_name.get(name).map_or(&[][..], Vec::as_slice);
        let by_full = called(&full).iter().filter(fits);
        let by_alone = called(&alone).iter().filter(|_| full != alone).filter(fits);
        let mut matching: Vec<&Ingredient> = Vec::new();
        for item in by_full.chain(by_alone) {
            if !matching.iter().any(|known| known.id == item.id) {
                matching.push(item);
            }
        }
        match matching.as_slice() {
            [] => Found::None,
            [one] => Found::One(one),
            several => Found::Several(several.iter().map(|item| item.id.clone()).collect()),
        }
    }
}

/// A name as it is compared: without space around it, in small letters.
fn folded(name: &str) -> String {
    name.trim().to_lowercase()
}

struct RowReader<'table> {
    table: &'table TextTable,
    mapping: &'table Mapping,
    cells: &'table [String],
    signs: &'table DecimalSigns,
    doubts: Vec<Doubt>,
}

impl RowReader<'_> {
    fn text(&self, field: Field) -> String {
        let column = self.mapping.column(field);
        let cell = column.and_then(|column| self.cells.get(column));
        let text = cell.map_or("", |cell| cell.trim());
        // An export that made a formula harmless put an apostrophe in front.
        let formula = text
            .strip_prefix('\'')
            .filter(|rest| rest.starts_with(['=', '+', '-', '@']));
        formula.unwrap_or(text).to_owned()
    }

    /// The heading of a field and what stands below it, shortened.
    fn heading_and_cell(&self, field: Field) -> (String, String) {
        let column = self.mapping.column(field).unwrap_or(0);
        let heading = self.table.headings.get(column).map_or("", String::as_str);
        let cell = self.cells.get(column).map_or("", String::as_str);
        (excerpt(heading, NAME), excerpt(cell, NAME))
    }

    fn doubt(&mut self, field: Field, why: CellFault) {
        let (heading, cell) = self.heading_and_cell(field);
        self.doubts.push(Doubt::Cell { heading, cell, why });
    }

    /// A number and its unit, that of the cell before that of the heading; `None` for an empty cell or one in doubt.
    fn number(&mut self, field: Field) -> Option<(f64, String)> {
        let text = self.text(field);
        self.number_in(field, &text)
    }

    /// A figure of a label with its unit. Per 100 ml it is none of the list's: what 100 ml weigh is not known here.
    fn figure_in_100_g(&mut self, field: Field) -> Option<(f64, String)> {
        let (text, of_cell) = without_basis(&self.text(field));
        let (number, unit) = self.number_in(field, &text)?;
        // What the cell says comes before what stands above the column.
        let basis = match of_cell {
            Basis::Unstated => without_basis(self.heading_unit(field)).1,
            stated => stated,
        };
        if basis == Basis::HundredMillilitres {
            self.doubt(field, CellFault::PerHundredMillilitres);
            return None;
        }
        Some((number, without_basis(&unit).0))
    }

    /// The unit in the heading of a field; empty where none stands.
    fn heading_unit(&self, field: Field) -> &str {
        let column = self.mapping.column(field);
        let unit = column.and_then(|column| self.mapping.units.get(column));
        unit.map_or("", String::as_str)
    }

    fn number_in(&mut self, field: Field, text: &str) -> Option<(f64, String)> {
        if text.is_empty() || ["-", "–", "—", "n/a", "na", "?"].contains(&text) {
            return None;
        }
        // "<0.5" on a label is a bound, and no number that adds up.
        if text.starts_with(['<', '>', '~']) {
            self.doubt(field, CellFault::Bound);
            return None;
        }
        let sign = self
            .mapping
            .column(field)
            .and_then(|column| self.signs.in_column(column));
        let (number, beside) = match number_and_unit(text, sign) {
            Ok(read) => read,
            Err(NumberError::Ambiguous {
                thousands,
                decimals,
                ..
            }) => {
                let (heading, cell) = self.heading_and_cell(field);
                self.doubts.push(Doubt::Ambiguous {
                    heading,
                    cell,
                    thousands,
                    decimals,
                });
                return None;
            }
            Err(_) => {
                self.doubt(field, CellFault::NotANumber(sign));
                return None;
            }
        };
        if !(0.0..MOST_IN_CELL).contains(&number) {
            self.doubt(field, CellFault::OutOfRange);
            return None;
        }
        let unit = if beside.is_empty() {
            self.heading_unit(field).to_owned()
        } else {
            beside
        };
        Some((number, unit.to_lowercase()))
    }

    /// A figure of the composition in the unit that the book keeps it in.
    fn figure(&mut self, nutrient: Nutrient) -> Option<f64> {
        if nutrient == Nutrient::Energy {
            return self
                .energy(Field::Nutrient(nutrient), 1.0)
                .or_else(|| self.energy(Field::EnergyKcal, KILOJOULES_PER_KILOCALORIE));
        }
        let (field, factor) = match nutrient {
            Nutrient::Salt
                if self
                    .mapping
                    .column(Field::Nutrient(Nutrient::Salt))
                    .is_none() =>
            {
                (Field::Sodium, SALT_PER_SODIUM)
            }
            _ => (Field::Nutrient(nutrient), 1.0),
        };
        let (number, unit) = self.figure_in_100_g(field)?;
        let in_milligrams = nutrient == Nutrient::Caffeine;
        let unit = match (unit.as_str(), in_milligrams) {
            ("mg", true) | ("g" | "%" | "", false) => 1.0,
            ("g", true) => 1000.0,
            ("mg", false) => 0.001,
            ("", true) => {
                self.doubt(field, CellFault::MilligramsOrGrams);
                return None;
            }
            _ => {
                self.doubt(field, CellFault::Unit(UnitsOf::Mass));
                return None;
            }
        };
        let value = number * unit * factor;
        if !in_milligrams && value > 100.0 {
            self.doubt(field, CellFault::MoreThanAll);
            return None;
        }
        Some(value)
    }

    /// Energy in kilojoules; `usual` is what a number without a unit is in, kJ.
    fn energy(&mut self, field: Field, usual: f64) -> Option<f64> {
        let (number, unit) = self.figure_in_100_g(field)?;
        match unit.as_str() {
            "" => Some(number * usual),
            "kj" => Some(number),
            "kcal" => Some(number * KILOJOULES_PER_KILOCALORIE),
            _ => {
                self.doubt(field, CellFault::Unit(UnitsOf::Energy));
                None
            }
        }
    }

    /// What a pack costs. One letter beside the number is a slip ("8,5O") sooner than a currency.
    fn pack_price(&mut self) -> Option<f64> {
        let (pack, currency) = self.number(Field::PackPrice)?;
        let mut letters = currency.chars();
        if let (Some(letter), None) = (letters.next(), letters.next())
            && letter.is_alphabetic()
        {
            self.doubt(Field::PackPrice, CellFault::LetterBesideNumber);
            return None;
        }
        Some(pack)
    }

    /// The share of a pack that can't be used, percent.
    fn waste(&mut self) -> Option<f64> {
        let (waste, unit) = self.number(Field::Waste)?;
        if !matches!(unit.as_str(), "" | "%") {
            self.doubt(Field::Waste, CellFault::Unit(UnitsOf::Share));
            return None;
        }
        Some(waste)
    }

    /// Content of a pack.
    fn pack_content(&mut self) -> Option<Pack> {
        let text = self.text(Field::PackContent);
        if text.is_empty() {
            return None;
        }
        let column = self.mapping.column(Field::PackContent);
        let sign = column.and_then(|column| self.signs.in_column(column));
        let usual = self.heading_unit(Field::PackContent).to_owned();
        match parse_pack(&text, sign, &usual) {
            Ok(pack) => Some(pack),
            Err(PackError::NoUnit) => {
                self.doubt(Field::PackContent, CellFault::NoPackUnit);
                None
            }
            Err(PackError::Number(NumberError::Ambiguous {
                thousands,
                decimals,
                ..
            })) => {
                let (heading, cell) = self.heading_and_cell(Field::PackContent);
                self.doubts.push(Doubt::Ambiguous {
                    heading,
                    cell,
                    thousands,
                    decimals,
                });
                None
            }
            Err(PackError::Number(_)) => {
                self.doubt(Field::PackContent, CellFault::NotANumber(sign));
                None
            }
            Err(PackError::NotUnderstood { .. }) => {
                self.doubt(Field::PackContent, CellFault::Unit(UnitsOf::Pack));
                None
            }
        }
    }

    fn price(&mut self, before: Option<&Price>, date: &str) -> Option<Price> {
        let pack = self.pack_price();
        let content = self
            .pack_content()
            .or_else(|| before.map(|before| before.content));
        let waste = self.waste();
        let pack = pack.or_else(|| before.map(|before| before.pack))?;
        let Some(content) = content else {
            if !self.text(Field::PackPrice).is_empty() {
                self.doubt(Field::PackPrice, CellFault::NoPackContent);
            }
            return None;
        };
        let stated = self.text(Field::PriceDate);
        let stated = if stated.is_empty() {
            date.to_owned()
        } else if Day::from_text(&stated).is_some() {
            stated
        } else {
            self.doubt(Field::PriceDate, CellFault::NotADay);
            date.to_owned()
        };
        let date = (!stated.is_empty()).then_some(stated);
        let price = Price {
            pack,
            content,
            waste_percent: waste
                .or_else(|| before.map(|before| before.waste_percent))
                .filter(|waste| *waste < 100.0)
                .unwrap_or(0.0),
            date,
        };
        // A price that did not change keeps the day on which it was looked up.
        match before {
            Some(before)
                if is_same(before.pack, price.pack)
                    && is_same_content(before.content, price.content) =>
            {
                Some(Price {
                    date: before.date.clone().or(price.date),
                    ..price
                })
            }
            _ => Some(price),
        }
    }

    fn changed(&mut self, known: &Ingredient, date: &str) -> Outcome {
        let mut ingredient = known.clone();
        let mut changes = Vec::new();
        for nutrient in Nutrient::ALL {
            let Some(value) = self.figure(nutrient) else {
                continue;
            };
            let before = known.composition.get(nutrient).map(|figure| figure.value);
            let same = before.is_some_and(|before| is_same(before, value));
            if same {
                continue;
            }
            changes.push(FieldChange::Figure {
                nutrient,
                before,
                after: value,
            });
            let figure = Figure::new(value, Evidence::Label);
            ingredient.composition.state(nutrient, figure);
        }
        if let Some((density, _)) = self.number(Field::Density) {
            let before = known.density.map(|figure| figure.value);
            if before != Some(density) && density > 0.0 {
                changes.push(FieldChange::Density {
                    before,
                    after: density,
                });
                ingredient.density = Some(Figure::new(density, Evidence::SpecSheet));
            }
        }
        if let Some(price) = self.price(known.price.as_ref(), date)
            && known.price.as_ref() != Some(&price)
        {
            changes.push(FieldChange::Price {
                before: known.price.clone(),
                after: price.clone(),
            });
            ingredient.bring_in_price(price, &self.text(Field::Supplier));
        }
        for (field, place) in [
            (Field::Supplier, &mut ingredient.supplier),
            (Field::Statement, &mut ingredient.statement),
            (Field::Note, &mut ingredient.note),
        ] {
            let text = self.text(field);
            if !text.is_empty() && text != *place {
                let after = excerpt(&text, NAME);
                changes.push(FieldChange::Text { field, after });
                *place = text;
            }
        }
        if changes.is_empty() {
            Outcome::Same
        } else {
            Outcome::Changed {
                ingredient: Box::new(ingredient),
                changes,
            }
        }
    }

    fn new_ingredient(
        &mut self,
        book: &Book,
        name: &str,
        brand: &str,
        taken: &mut BTreeSet<IngredientId>,
        date: &str,
    ) -> Ingredient {
        let id = IngredientId::from_name(&[brand, name].join(" "), |id| {
            book.ingredient(id).is_some() || taken.contains(id)
        });
        taken.insert(id.clone());
        let form = self.word(Field::Form, &Form::ALL, Form::word, CellFault::NotAForm);
        let form = form.unwrap_or({
            // Said, so that a person looks at it: the form decides what the rest to 100 g is.
            Form::Powder
        });
        if self.text(Field::Form).is_empty() {
            self.doubts.push(Doubt::NoForm);
        }
        let role = self.word(Field::Role, &Role::ALL, Role::word, CellFault::NotARole);
        let role = role.unwrap_or(Role::Flavour);
        let mut composition = Composition::default();
        for nutrient in Nutrient::ALL {
            if let Some(value) = self.figure(nutrient) {
                composition.state(nutrient, Figure::new(value, Evidence::Label));
            }
        }
        let density = self.number(Field::Density).map(|(density, _)| density);
        let density = density.filter(|density| *density > 0.0);
        let price = self.price(None, date);
        Ingredient {
            brand: brand.to_owned(),
            supplier: self.text(Field::Supplier),
            form,
            role,
            composition,
            density: density.map(|density| Figure::new(density, Evidence::SpecSheet)),
            statement: self.text(Field::Statement),
            price,
            note: self.text(Field::Note),
            ..Ingredient::new(id, name.to_owned())
        }
    }

    /// A word of a list; in doubt when it is none of them.
    fn word<T: Copy>(
        &mut self,
        field: Field,
        all: &[T],
        word: fn(T) -> &'static str,
        why: CellFault,
    ) -> Option<T> {
        let text = self.text(field).to_lowercase();
        if text.is_empty() {
            return None;
        }
        let found = all.iter().copied().find(|item| word(*item) == text);
        if found.is_none() {
            self.doubt(field, why);
        }
        found
    }
}

/// Whether two numbers are one, but for the last digits of the arithmetic.
fn is_same(one: f64, two: f64) -> bool {
    (one - two).abs() <= 1e-9 * two.abs()
}
