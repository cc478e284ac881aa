//! What a column of a foreign table may mean, guessed from its heading and set by a person.

use std::collections::BTreeMap;

use super::basis::{Basis, without_basis};
use crate::book::Nutrient;

/// What a column means.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Field {
    /// The name of the ingredient.
    Name,
    /// Its brand.
    Brand,
    /// Who sells it.
    Supplier,
    /// The number that the supplier has for it.
    Article,
    /// Its form: powder, syrup …
    Form,
    /// Its usual role: sweetener, tea …
    Role,
    /// Price of a pack.
    PackPrice,
    /// Usable content of a pack, with its unit.
    PackContent,
    /// What is lost of a pack, percent.
    Waste,
    /// Day of the price.
    PriceDate,
    /// Density, g/ml.
    Density,
    /// A figure per 100 g or 100 ml.
    Nutrient(Nutrient),
    /// Energy in kilocalories.
    EnergyKcal,
    /// Sodium instead of salt.
    Sodium,
    /// The statement of ingredients.
    Statement,
    /// A note.
    Note,
}

impl Field {
    /// All of them, in the order in which they are offered.
    pub fn all() -> Vec<Self> {
        let mut all = vec![
            Self::Name,
            Self::Brand,
            Self::Supplier,
            Self::Article,
            Self::Form,
            Self::Role,
            Self::PackPrice,
            Self::PackContent,
            Self::Waste,
            Self::PriceDate,
            Self::Density,
            Self::EnergyKcal,
            Self::Sodium,
            Self::Statement,
            Self::Note,
        ];
        all.extend(Nutrient::ALL.map(Self::Nutrient));
        all
    }

    /// Whether its cells are numbers.
    pub fn is_number(self) -> bool {
        matches!(
            self,
            Self::PackPrice
                | Self::PackContent
                | Self::Waste
                | Self::Density
                | Self::Nutrient(_)
                | Self::EnergyKcal
                | Self::Sodium
        )
    }
}

/// What each column means, and the unit that its heading states.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Mapping {
    /// A field for each column; `None` leaves the column out.
    pub columns: Vec<Option<Field>>,
    /// Units from the headings: "g" of "fat (g)"; empty where none stands.
    pub units: Vec<String>,
}

impl Mapping {
    /// The columns by their fields, each field by the first that has it.
    pub(super) fn by_field(&self) -> BTreeMap<Field, usize> {
        let columns = self.columns.iter().enumerate().rev();
        columns
            .filter_map(|(at, field)| Some(((*field)?, at)))
            .collect()
    }

    /// The column of a field.
    pub fn column(&self, field: Field) -> Option<usize> {
        self.columns
            .iter()
            .position(|column| *column == Some(field))
    }
}

/// Words of a heading and what they mean, the more specific first. Plain words of the label and of trade lists in five
/// languages.
const WORDS: &[(&str, Field)] = &[
    ("artikelnummer", Field::Article),
    ("artikelnr", Field::Article),
    ("artikel-nr", Field::Article),
    ("artikel nr", Field::Article),
    ("art.-nr", Field::Article),
    ("art. nr", Field::Article),
    ("art-nr", Field::Article),
    ("bestellnummer", Field::Article),
    ("bestell-nr", Field::Article),
    ("article no", Field::Article),
    ("article number", Field::Article),
    ("item no", Field::Article),
    ("item number", Field::Article),
    ("item code", Field::Article),
    ("order code", Field::Article),
    ("product code", Field::Article),
    ("valid from", Field::PriceDate),
    ("gültig ab", Field::PriceDate),
    ("preis vom", Field::PriceDate),
    ("saturat", Field::Nutrient(Nutrient::Saturates)),
    ("gesättigt", Field::Nutrient(Nutrient::Saturates)),
    ("saturé", Field::Nutrient(Nutrient::Saturates)),
    ("sugar", Field::Nutrient(Nutrient::Sugars)),
    ("zucker", Field::Nutrient(Nutrient::Sugars)),
    ("sucre", Field::Nutrient(Nutrient::Sugars)),
    ("azúcar", Field::Nutrient(Nutrient::Sugars)),
    ("zuccher", Field::Nutrient(Nutrient::Sugars)),
    ("carbohydrate", Field::Nutrient(Nutrient::Carbohydrate)),
    ("kohlenhydrat", Field::Nutrient(Nutrient::Carbohydrate)),
    ("glucide", Field::Nutrient(Nutrient::Carbohydrate)),
    ("hidratos", Field::Nutrient(Nutrient::Carbohydrate)),
    ("carboidrat", Field::Nutrient(Nutrient::Carbohydrate)),
    ("fibre", Field::Nutrient(Nutrient::Fibre)),
    ("fiber", Field::Nutrient(Nutrient::Fibre)),
    ("ballaststoff", Field::Nutrient(Nutrient::Fibre)),
    ("protein", Field::Nutrient(Nutrient::Protein)),
    ("eiweiß", Field::Nutrient(Nutrient::Protein)),
    ("protéine", Field::Nutrient(Nutrient::Protein)),
    ("sodium", Field::Sodium),
    ("natrium", Field::Sodium),
    ("salt", Field::Nutrient(Nutrient::Salt)),
    ("salz", Field::Nutrient(Nutrient::Salt)),
    ("caffeine", Field::Nutrient(Nutrient::Caffeine)),
    ("koffein", Field::Nutrient(Nutrient::Caffeine)),
    ("polyol", Field::Nutrient(Nutrient::Polyols)),
    ("brix", Field::Nutrient(Nutrient::Brix)),
    ("kcal", Field::EnergyKcal),
    ("calorie", Field::EnergyKcal),
    ("energ", Field::Nutrient(Nutrient::Energy)),
    ("brennwert", Field::Nutrient(Nutrient::Energy)),
    ("matières grasses", Field::Nutrient(Nutrient::Fat)),
    ("grassi", Field::Nutrient(Nutrient::Fat)),
    ("grasas", Field::Nutrient(Nutrient::Fat)),
    ("fett", Field::Nutrient(Nutrient::Fat)),
    ("fat", Field::Nutrient(Nutrient::Fat)),
    ("moisture", Field::Nutrient(Nutrient::Water)),
    ("density", Field::Density),
    ("dichte", Field::Density),
    ("waste", Field::Waste),
    ("schwund", Field::Waste),
    ("price", Field::PackPrice),
    ("preis", Field::PackPrice),
    ("prix", Field::PackPrice),
    ("precio", Field::PackPrice),
    ("content", Field::PackContent),
    ("pack size", Field::PackContent),
    ("inhalt", Field::PackContent),
    ("gebinde", Field::PackContent),
    ("supplier", Field::Supplier),
    ("lieferant", Field::Supplier),
    ("brand", Field::Brand),
    ("marke", Field::Brand),
    ("form", Field::Form),
    ("role", Field::Role),
    ("note", Field::Note),
];

/// Headings that mean one thing as a whole.
const WHOLE: &[(&str, Field)] = &[
    ("sku", Field::Article),
    ("code", Field::Article),
    ("description", Field::Name),
    ("artikelbezeichnung", Field::Name),
    ("produkt", Field::Name),
    ("ware", Field::Name),
    ("hersteller", Field::Brand),
    ("maker", Field::Brand),
    ("packung", Field::PackContent),
    ("verpackung", Field::PackContent),
    ("einheit", Field::PackContent),
    ("unit", Field::PackContent),
    ("stand", Field::PriceDate),
    ("name", Field::Name),
    ("ingredient", Field::Name),
    ("item", Field::Name),
    ("product", Field::Name),
    ("article", Field::Name),
    ("artikel", Field::Name),
    ("bezeichnung", Field::Name),
    ("zutat", Field::Name),
    ("nom", Field::Name),
    ("nombre", Field::Name),
    ("名称", Field::Name),
    ("pack", Field::PackContent),
    ("size", Field::PackContent),
    ("date", Field::PriceDate),
    ("price date", Field::PriceDate),
    ("datum", Field::PriceDate),
    ("ingredients", Field::Statement),
    ("statement", Field::Statement),
    ("zutaten", Field::Statement),
    ("water", Field::Nutrient(Nutrient::Water)),
    ("acid", Field::Nutrient(Nutrient::Acid)),
];

/// Guesses what the columns mean; each field goes to the first column that fits.
pub fn guess_mapping(headings: &[String]) -> Mapping {
    let mut mapping = Mapping::default();
    for heading in headings {
        let (words, unit) = heading_and_unit(heading);
        let whole = WHOLE
            .iter()
            .find(|(word, _)| *word == words)
            .map(|(_, field)| *field);
        let field = whole.or_else(|| {
            WORDS
                .iter()
                .find(|(word, _)| words.contains(word))
                .map(|(_, field)| *field)
        });
        let field = match (field, unit.as_str()) {
            (Some(Field::Nutrient(Nutrient::Energy)), "kcal" | "kcal/100 ml") => {
                Some(Field::EnergyKcal)
            }
            (Some(Field::EnergyKcal), "kj" | "kj/100 ml") => {
                Some(Field::Nutrient(Nutrient::Energy))
            }
            (field, _) => field,
        };
        // A price with sales tax is none of the book's, which are without.
        let has_tax = names_gross(&words) || names_gross(&unit);
        let field = field.filter(|field| *field != Field::PackPrice || !has_tax);
        let field = field.filter(|field| !mapping.columns.contains(&Some(*field)));
        mapping.columns.push(field);
        mapping.units.push(unit);
    }
    mapping
}

/// Words for a price with sales tax, or for a weight with the packing.
const GROSS: [&str; 9] = [
    "brutto", "gross", "incl", "inkl", "inc. ", "inc vat", "with vat", "mit mwst", "ttc",
];

/// Whether a text in small letters says that sales tax or packing is part of a figure.
pub(super) fn names_gross(text: &str) -> bool {
    GROSS.iter().any(|word| text.contains(word))
}

/// "Fat (g)" is "fat" and "g"; "Energy kcal" is "energy" and "kcal"; "price, €" is "price" and "€"; "sodium mg/100 g" is "sodium"
/// and "mg", while "/100 ml" stays with the unit, because a list is of 100 g.
fn heading_and_unit(heading: &str) -> (String, String) {
    let (heading, basis) = without_basis(heading);
    let (words, unit) = words_and_unit(&heading);
    match basis {
        Basis::HundredMillilitres => (words, format!("{unit}/100 ml")),
        Basis::HundredGrams | Basis::Unstated => (words, unit),
    }
}

/// Units that a heading may end with, without brackets.
const UNITS: [&str; 13] = [
    "g", "mg", "kg", "oz", "lb", "ml", "l", "kj", "kcal", "%", "€", "$", "£",
];

fn words_and_unit(heading: &str) -> (String, String) {
    if let Some((words, rest)) = heading.split_once(['(', '[']) {
        let unit = rest.trim_end_matches([')', ']']).trim();
        return (words.trim().to_owned(), unit.to_owned());
    }
    if let Some((words, unit)) = heading.rsplit_once([',', '/', ' ', '_'])
        && UNITS.contains(&unit.trim())
    {
        let words = words.trim().trim_end_matches([',', '/']);
        return (words.replace('_', " "), unit.trim().to_owned());
    }
    (heading.replace('_', " "), String::new())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_are_understood_with_their_units() {
        let headings = [
            "Bezeichnung",
            "Marke",
            "Preis (€)",
            "Gebinde",
            "Energy kcal",
            "Fett (g/100 g)",
            "davon gesättigte Fettsäuren",
            "Lagerort",
            "Sodium mg/100g",
            "Salt per 100 ml",
        ]
        .map(str::to_owned);
        let mapping = guess_mapping(&headings);
        let expected = [
            Some(Field::Name),
            Some(Field::Brand),
            Some(Field::PackPrice),
            Some(Field::PackContent),
            Some(Field::EnergyKcal),
            Some(Field::Nutrient(Nutrient::Fat)),
            Some(Field::Nutrient(Nutrient::Saturates)),
            None,
            Some(Field::Sodium),
            Some(Field::Nutrient(Nutrient::Salt)),
        ];
        assert_eq!(mapping.columns, expected);
        assert_eq!(mapping.units[2], "€");
        assert_eq!(mapping.units[5], "g");
        assert_eq!(mapping.units[8], "mg");
        assert_eq!(mapping.units[9], "/100 ml");
    }
}
