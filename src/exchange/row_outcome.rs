//! What becomes of a row: an ingredient of the book with other figures, or a new one with what the row states and nothing else.

use super::doubt::{CellFault, Doubt, Skip};
use super::field::Field;
use super::likely::form_told;
use super::review::{FieldChange, Outcome};
use super::row_price::grams_per_millilitre;
use super::row_reader::{NAME, RowReader};
use crate::book::{
    Article, Book, Composition, Evidence, Figure, Form, Ingredient, IngredientId, Nutrient, Price,
    Role, dearer_by, is_same_figure,
};
use crate::quantity::excerpt;

impl RowReader<'_> {
    /// A row about an ingredient of the book. An article that is to be remembered comes with the ingredients that have it now.
    pub(super) fn changed(
        &mut self,
        book: &Book,
        known: &Ingredient,
        supplier: &str,
        remembered: Option<(&Article, Vec<IngredientId>)>,
        date: &str,
    ) -> Outcome {
        let mut ingredient = known.clone();
        let mut changes = Vec::new();
        if let Some((article, held_by)) = remembered {
            ingredient.articles.push(article.clone());
            changes.push(FieldChange::Article {
                article: article.clone(),
                held_by,
            });
        }
        for nutrient in Nutrient::ALL {
            let Some(value) = self.figure(nutrient) else {
                continue;
            };
            let before = known.composition.get(nutrient).map(|figure| figure.value);
            let same = before.is_some_and(|before| is_same_figure(before, value));
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
        let price = self.price(book, &ingredient, date);
        if known.no_longer_sold && price.is_some() && self.states(Field::PackPrice) {
            changes.push(FieldChange::SoldAgain);
            ingredient.no_longer_sold = false;
        }
        if let Some(price) = price
            && known.price.as_ref() != Some(&price)
        {
            let before = known.price.as_ref();
            changes.push(FieldChange::Price {
                percent: before.and_then(|before| {
                    let of = |price: &Price| (price.pack, price.content);
                    let is_asked = before.content.unit != price.content.unit;
                    let weighs = is_asked.then(|| grams_per_millilitre(book, &ingredient));
                    dearer_by(of(before), of(&price), weighs.flatten())
                }),
                before: known.price.clone(),
                after: price.clone(),
            });
            ingredient.bring_in_price(price, supplier);
        }
        let texts = [Field::Statement, Field::Note].map(|field| (field, self.text(field)));
        // Whoever sells the list is who sells it only where the list has a price of it.
        let sells = self.states(Field::Supplier)
            || changes
                .iter()
                .any(|one| matches!(one, FieldChange::Price { .. }));
        let supplier = if sells { supplier } else { "" };
        let of_list = (Field::Supplier, supplier.to_owned());
        for (field, text) in std::iter::once(of_list).chain(texts) {
            let place = match field {
                Field::Supplier => &mut ingredient.supplier,
                Field::Statement => &mut ingredient.statement,
                _ => &mut ingredient.note,
            };
            if !text.is_empty() && text != *place {
                let after = excerpt(&text, NAME);
                changes.push(FieldChange::Text { field, after });
                *place = text;
            }
        }
        if !changes.is_empty() {
            return Outcome::Changed {
                ingredient: Box::new(ingredient),
                changes,
            };
        }
        if !self.doubts.is_empty() {
            return Outcome::Skipped(Skip::NothingRead);
        }
        if self.has_column(Field::PackPrice) && !self.states(Field::PackPrice) {
            return Outcome::Skipped(Skip::NoPrice);
        }
        Outcome::Same
    }

    /// A row about an ingredient that the book does not have: with what the row states, and of a form that it, a person or its name
    /// tells.
    pub(super) fn new_ingredient(
        &mut self,
        book: &Book,
        id: IngredientId,
        (brand, name): (&str, &str),
        article: &Article,
        form: Option<Form>,
        date: &str,
    ) -> Result<Ingredient, Skip> {
        let stated = self.word(Field::Form, &Form::ALL, Form::word, CellFault::NotAForm);
        let form = match (stated.or(form), form_told(name)) {
            (Some(form), _) => form,
            (None, Some(form)) => {
                // Said, so that a person looks at it: the form decides what the rest to 100 g is.
                self.doubts.push(Doubt::FormByName(form));
                form
            }
            (None, None) => return Err(Skip::NoForm),
        };
        let role = self.word(Field::Role, &Role::ALL, Role::word, CellFault::NotARole);
        let mut composition = Composition::default();
        for nutrient in Nutrient::ALL {
            if let Some(value) = self.figure(nutrient) {
                composition.state(nutrient, Figure::new(value, Evidence::Label));
            }
        }
        let density = self.number(Field::Density).map(|(density, _)| density);
        let density = density.filter(|density| *density > 0.0);
        let empty = Ingredient::new(id, name.to_owned());
        let mut new = Ingredient {
            brand: brand.to_owned(),
            supplier: article.supplier.clone(),
            form,
            role: role.unwrap_or(empty.role),
            composition,
            density: density.map(|density| Figure::new(density, Evidence::SpecSheet)),
            statement: self.text(Field::Statement),
            note: self.text(Field::Note),
            ..empty
        };
        if self.states(Field::Article) {
            new.articles.push(article.clone());
        }
        new.price = self.price(book, &new, date);
        Ok(new)
    }
}
