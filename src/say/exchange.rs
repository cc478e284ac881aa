//! What is said of what is brought in from elsewhere and passed on.

use super::{Speaker, say};
use crate::book::{Amount, Article, Form, Ingredient, IngredientId, Nutrient, Price, Role};
use crate::exchange::{
    Arrival, CellFault, Delimiter, Doubt, Encoding, Field, FieldChange, JsonLdError, LineMapping,
    LineWithoutGrams, MOST_IN_CELL, MOST_ROWS, MappingReason, NoGrams, NotUtf8, Outcome,
    ReadRecipe, RecipeExchangeError, ReviewLine, RowFault, Skip, TableError, UnitsOf,
};
use crate::quantity::{DecimalSign, show_compact};

impl Speaker<'_> {
    /// What a column of a list means.
    pub fn field(&self, field: Field) -> &'static str {
        self.word(match field {
            Field::Name => "field-name",
            Field::Brand => "field-brand",
            Field::Supplier => "field-supplier",
            Field::Article => "field-article",
            Field::Form => "field-form",
            Field::Role => "field-role",
            Field::PackPrice => "field-pack-price",
            Field::PackContent => "field-pack-content",
            Field::Waste => "field-waste",
            Field::PriceDate => "field-price-date",
            Field::Density => "field-density",
            Field::Nutrient(nutrient) => return self.nutrient(nutrient),
            Field::EnergyKcal => "field-energy-kcal",
            Field::Sodium => "field-sodium",
            Field::Statement => "field-statement",
            Field::Note => "field-note",
        })
    }

    /// The sign between cells.
    pub fn delimiter(&self, delimiter: Delimiter) -> &'static str {
        self.word(match delimiter {
            Delimiter::Comma => "delimiter-comma",
            Delimiter::Semicolon => "delimiter-semicolon",
            Delimiter::Tab => "delimiter-tab",
            Delimiter::Bar => "delimiter-bar",
        })
    }

    /// The sign before decimals, with a number that has it: "comma (1,5)".
    pub fn decimal_sign(&self, sign: DecimalSign) -> &'static str {
        self.word(match sign {
            DecimalSign::Point => "decimal-sign-point",
            DecimalSign::Comma => "decimal-sign-comma",
        })
    }

    /// How the bytes of a list became letters.
    pub fn encoding(&self, encoding: Encoding) -> &'static str {
        self.word(match encoding {
            Encoding::Utf8 => "encoding-utf-8",
            Encoding::Utf16 => "encoding-utf-16",
            Encoding::SingleByte => "encoding-single-byte",
        })
    }

    /// What would become of a row, in a word or two.
    pub fn outcome(&self, outcome: &Outcome) -> &'static str {
        self.word(match outcome {
            Outcome::New(_) => "outcome-new",
            Outcome::Changed { .. } => "outcome-changed",
            Outcome::Same => "outcome-same",
            Outcome::Skipped(_) => "outcome-skipped",
        })
    }

    /// What is new, what changes, or why a row is left out; empty for what stays the same.
    pub fn outcome_details(&self, line: &ReviewLine) -> String {
        match &line.outcome {
            Outcome::New(ingredient) => self.figures_of(ingredient),
            Outcome::Changed { changes, .. } => {
                let changes: Vec<String> =
                    changes.iter().map(|one| self.field_change(one)).collect();
                changes.join("; ")
            }
            Outcome::Skipped(why) => self.skip(why),
            Outcome::Same => String::new(),
        }
    }

    /// The figures of a new ingredient: "sugars: 71 g; price: 9.50 for 1000 g".
    fn figures_of(&self, ingredient: &Ingredient) -> String {
        let mut figures = Vec::new();
        for nutrient in Nutrient::ALL {
            if let Some(figure) = ingredient.composition.get(nutrient) {
                let value = self.figure_in(figure.value, nutrient.unit());
                figures
                    .push(say!(self, "figure-new", figure: self.nutrient(nutrient), value: value));
            }
        }
        if let Some(density) = ingredient.density {
            let value = self.figure_in(density.value, "g/ml");
            figures
                .push(say!(self, "figure-new", figure: self.word("figure-density"), value: value));
        }
        if let Some(price) = &ingredient.price {
            let value = self.pack_price(price);
            figures.push(say!(self, "figure-new", figure: self.word("figure-price"), value: value));
        }
        if figures.is_empty() {
            return self.word("figure-none").to_owned();
        }
        figures.join("; ")
    }

    /// As many decimals as a label has, up to a thousandth.
    fn figure_in(&self, value: f64, unit: &str) -> String {
        let value = (value * 1000.0).round() / 1000.0;
        format!("{} {unit}", self.localised(&show_compact(value), value))
    }

    /// "9.50 for 1 kg".
    fn pack_price(&self, price: &Price) -> String {
        say!(self, "ingredient-price-for", price: self.number(price.pack, 2), content: self.pack(price.content))
    }

    fn field_change(&self, change: &FieldChange) -> String {
        let not_stated = || self.word("figure-not-stated").to_owned();
        let (figure, before, after) = match change {
            FieldChange::Figure {
                nutrient,
                before,
                after,
            } => {
                let value = |value: f64| self.figure_in(value, nutrient.unit());
                (
                    self.nutrient(*nutrient),
                    before.map_or_else(not_stated, value),
                    value(*after),
                )
            }
            FieldChange::Density { before, after } => {
                let value = |value: f64| self.figure_in(value, "g/ml");
                (
                    self.word("figure-density"),
                    before.map_or_else(not_stated, value),
                    value(*after),
                )
            }
            FieldChange::Price { before, after, .. } => {
                let value = |price: &Price| self.pack_price(price);
                (
                    self.word("figure-price"),
                    before.as_ref().map_or_else(not_stated, value),
                    value(after),
                )
            }
            FieldChange::Article { article, held_by } => {
                return self.article_change(article, held_by);
            }
            FieldChange::SoldAgain => return self.word("figure-sold-again").to_owned(),
            FieldChange::Text { field, after } => {
                return say!(self, "figure-new", figure: self.field(*field), value: after);
            }
        };
        let Some(percent) = change.percent() else {
            return say!(self, "figure-changed", figure: figure, before: before, after: after);
        };
        let sign = if percent > 0.0 { "+" } else { "" };
        let percent = format!("{sign}{}", self.number(percent, 1));
        say!(self, "figure-price-changed", figure: figure, before: before, after: after, percent: percent)
    }

    /// An article that a supplier's next list is recognised by.
    fn article_change(&self, article: &Article, held_by: &[IngredientId]) -> String {
        let names: Vec<String> = held_by.iter().map(|id| self.ingredient(id)).collect();
        say!(
            self,
            "article-remembered",
            named: if article.supplier.is_empty() { "no" } else { "yes" },
            supplier: &article.supplier,
            article: &article.article,
            held: held_by.len(),
            others: self.and(&names),
        )
    }

    /// Why a row is left out.
    fn skip(&self, skip: &Skip) -> String {
        match skip {
            Skip::NoNameColumn => self.word("row-no-name-column").to_owned(),
            Skip::NoName => self.word("row-no-name").to_owned(),
            Skip::LeftOut => self.word("row-left-out").to_owned(),
            Skip::NoPrice => self.word("row-no-price").to_owned(),
            Skip::NoForm => self.word("row-no-form").to_owned(),
            Skip::NothingRead => self.word("row-nothing-read").to_owned(),
            Skip::SameIngredient { before } => {
                say!(self, "row-same-ingredient", line: before.to_string())
            }
            Skip::Again { before } => say!(self, "row-again", line: before.to_string()),
            Skip::Several { ingredients } => {
                let names: Vec<String> = ingredients.iter().map(|id| self.ingredient(id)).collect();
                say!(self, "row-several", ingredients: self.or(&names))
            }
            Skip::Error(kind) => self.finding_kind(kind),
            Skip::Row(fault) => self.row_fault(fault),
        }
    }

    /// Why a row is not what it seems.
    pub fn row_fault(&self, fault: &RowFault) -> String {
        match fault {
            RowFault::NeverClosed { from, to } => {
                say!(self, "row-quote-not-closed", from: from.to_string(), to: to.to_string())
            }
            RowFault::BehindQuote { line } => {
                say!(self, "row-text-after-quote", line: line.to_string())
            }
            RowFault::NeverOpened { line } => {
                say!(self, "row-quote-not-opened", line: line.to_string())
            }
            RowFault::HoldsRow { from, to } => {
                say!(self, "row-in-quotes", from: from.to_string(), to: to.to_string())
            }
            RowFault::TooWide { cells, headings } => {
                say!(self, "row-too-wide", cells: *cells, headings: *headings)
            }
            RowFault::TooNarrow { cells, headings } => {
                say!(self, "row-too-narrow", cells: *cells, headings: *headings)
            }
        }
    }

    /// A cell that is left out, or what was assumed of its row.
    pub fn doubt(&self, doubt: &Doubt) -> String {
        match doubt {
            Doubt::Cell { heading, cell, why } => {
                say!(self, "doubt-cell", heading: heading, cell: cell, why: self.cell_fault(*why))
            }
            Doubt::Ambiguous {
                heading,
                cell,
                thousands,
                decimals,
            } => {
                say!(self, "doubt-ambiguous", heading: heading, cell: cell, thousands: thousands, decimals: decimals)
            }
            Doubt::FormByName(form) => say!(self, "doubt-form-by-name", form: self.form(*form)),
        }
    }

    fn cell_fault(&self, fault: CellFault) -> String {
        let message = match fault {
            CellFault::NotANumber(Some(sign)) => {
                return say!(self, "cell-not-a-number-with", sign: self.decimal_sign(sign));
            }
            CellFault::OutOfRange => {
                return say!(self, "cell-out-of-range", most: show_compact(MOST_IN_CELL));
            }
            CellFault::NotAForm => {
                let words = Form::ALL.map(Form::word);
                return say!(self, "cell-not-a-form", words: self.or(&words));
            }
            CellFault::NotARole => {
                let words = Role::ALL.map(Role::word);
                return say!(self, "cell-not-a-role", words: self.or(&words));
            }
            CellFault::NotANumber(None) => "cell-not-a-number",
            CellFault::PerHundredMillilitres => "cell-per-100-ml",
            CellFault::Bound => "cell-bound",
            CellFault::MoreThanAll => "cell-more-than-all",
            CellFault::MilligramsOrGrams => "cell-mg-or-g",
            CellFault::Unit(UnitsOf::Mass) => "cell-unit-of-mass",
            CellFault::Unit(UnitsOf::Energy) => "cell-unit-of-energy",
            CellFault::Unit(UnitsOf::Share) => "cell-unit-of-share",
            CellFault::Unit(UnitsOf::Pack) => "cell-unit-of-pack",
            CellFault::NoPackUnit => "cell-no-pack-unit",
            CellFault::WithPacking => "cell-with-packing",
            CellFault::LetterBesideNumber => "cell-letter-beside-number",
            CellFault::NoPackContent => "cell-no-pack-content",
            CellFault::PackOfBook => "cell-pack-of-book",
            CellFault::PricePerAmount => "cell-price-per-amount",
            CellFault::WithSalesTax => "cell-with-sales-tax",
            CellFault::AnotherCurrency => "cell-another-currency",
            CellFault::NotADay => "cell-not-a-day",
        };
        self.word(message).to_owned()
    }

    /// Why a file is no table.
    pub fn table_error(&self, error: &TableError) -> String {
        match error {
            TableError::Empty => self.word("table-empty").to_owned(),
            TableError::NoRows => self.word("table-no-rows").to_owned(),
            TableError::NotText { at } => say!(self, "table-not-text", at: at.to_string()),
            TableError::HalfALetter { at } => say!(self, "table-cut", at: at.to_string()),
            TableError::TooLong => say!(self, "table-too-long", most: MOST_ROWS.to_string()),
            TableError::Unreadable { line } => {
                say!(self, "table-unreadable", line: line.to_string())
            }
            TableError::Headings(fault) => {
                say!(self, "table-headings", why: self.row_fault(fault))
            }
        }
    }

    /// Why a file is no text.
    pub fn not_utf8(&self, error: NotUtf8) -> String {
        say!(self, "file-not-utf-8", line: error.line.to_string())
    }

    /// Why a file is no schema.org recipe.
    pub fn json_ld_error(&self, error: JsonLdError) -> String {
        match error {
            JsonLdError::NotJson { line, column } => {
                say!(self, "file-not-json", line: line.to_string(), column: column.to_string())
            }
            JsonLdError::NoRecipe => self.word("file-without-recipe").to_owned(),
        }
    }

    /// The name that a schema.org recipe gets in the book.
    pub fn read_recipe_name(&self, read: &ReadRecipe) -> String {
        if read.name.is_empty() {
            self.word("recipe-without-name").to_owned()
        } else {
            read.name.clone()
        }
    }

    /// Why an ingredient of the book stands for a foreign one, or none does.
    pub fn mapping_reason(&self, mapping: &LineMapping) -> String {
        let message = match mapping.why {
            MappingReason::SameRole(role) => {
                return say!(self, "mapping-same-role", role: self.role(role));
            }
            MappingReason::NotDescribed => "mapping-not-described",
            MappingReason::SameName => "mapping-same-name",
            MappingReason::NothingAlike => "mapping-nothing-alike",
            MappingReason::Chosen => "mapping-chosen",
        };
        self.word(message).to_owned()
    }

    /// Why a recipe can't leave or enter a shop.
    pub fn recipe_exchange_error(&self, error: &RecipeExchangeError) -> String {
        match error {
            RecipeExchangeError::NoRecipe(id) => say!(self, "exchange-no-recipe", id: id.as_str()),
            RecipeExchangeError::NotApproved(name) => {
                say!(self, "exchange-not-approved", recipe: name)
            }
            RecipeExchangeError::NoWeight(id) => {
                say!(self, "exchange-no-weight", ingredient: self.ingredient(id))
            }
            RecipeExchangeError::BeyondMeasure(id) => {
                say!(self, "exchange-beyond-measure", ingredient: self.ingredient(id))
            }
            RecipeExchangeError::NotInGrams { recipe, lines } => {
                let lines: Vec<String> = lines
                    .iter()
                    .map(|line| self.line_without_grams(line))
                    .collect();
                say!(self, "exchange-not-in-grams", recipe: recipe, lines: lines.join("; "))
            }
            RecipeExchangeError::NotOneRecipe(count) => {
                say!(self, "exchange-not-one-recipe", count: *count)
            }
            RecipeExchangeError::NoIngredient(id) => {
                say!(self, "exchange-no-ingredient", id: id.as_str())
            }
            RecipeExchangeError::Edit(error) => self.edit_error(error),
        }
    }

    fn line_without_grams(&self, line: &LineWithoutGrams) -> String {
        let why = self.word(match line.why {
            NoGrams::Fills => "no-grams-fills",
            NoGrams::NoMeasure => "no-grams-no-measure",
            NoGrams::NotWeighed => "no-grams-not-weighed",
            NoGrams::NoDensity => "no-grams-no-density",
            NoGrams::NoIngredient => "no-grams-no-ingredient",
            NoGrams::NoAmount => "no-grams-no-amount",
            NoGrams::SameId => "no-grams-same-id",
        });
        let amount = match &line.amount {
            Amount::Count(count, _) => self.uses(*count, line.measure),
            amount => self.amount(amount),
        };
        say!(self, "line-without-grams", ingredient: &line.ingredient, amount: amount,
            line: line.line.as_str(), why: why)
    }

    /// What became of a recipe of another shop, in sentences.
    pub fn arrival(&self, arrival: &Arrival) -> String {
        match &arrival.brought {
            Ok(drink) => self.adapted(drink),
            Err(reason) => {
                say!(self, "arrival-left-as-it-is", reason: self.unadaptable(reason))
            }
        }
    }

    /// The note of a recipe of another shop: where it is from, what became of it, and the note that it had there.
    pub fn arrival_note(&self, arrival: &Arrival) -> String {
        let origin = &arrival.origin;
        let named = if origin.shop.trim().is_empty() {
            "no"
        } else {
            "yes"
        };
        let from =
            say!(self, "arrival-from", named: named, shop: &origin.shop, day: &origin.approved);
        let parts = [from, self.arrival(arrival), origin.note.trim().to_owned()];
        let parts: Vec<String> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        parts.join(" ")
    }

    /// The note of a book that passes a recipe of this shop on.
    pub fn passed_on(&self) -> String {
        let shop = &self.book.settings.shop;
        let named = if shop.trim().is_empty() { "no" } else { "yes" };
        say!(self, "recipe-passed-on", named: named, shop: shop)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_wrong_with_a_list_is_told_with_its_place_and_what_to_do() {
        let speaker = Speaker::without_book();
        let doubt = |why| Doubt::Cell {
            heading: "Fat (g)".to_owned(),
            cell: "x".to_owned(),
            why,
        };
        for (why, words) in [
            (
                CellFault::NotANumber(Some(DecimalSign::Comma)),
                "Fat (g) “x”: not a number with a decimal comma (1,5)",
            ),
            (
                CellFault::OutOfRange,
                "Fat (g) “x”: out of range: enter 0 to 1000000",
            ),
        ] {
            assert_eq!(speaker.doubt(&doubt(why)), words);
        }
        let wide = |cells| RowFault::TooWide { cells, headings: 2 };
        assert_eq!(
            speaker.row_fault(&wide(3)),
            "3 cells stand under 2 headings: put a text or number that contains the separator in quotes"
        );
        assert_eq!(
            speaker.table_error(&TableError::Headings(RowFault::NeverOpened { line: 1 })),
            "the headings can’t be read: a quote is closed but never opened in line 1: open it or remove it"
        );
    }
}
