//! Names of what is in the book. An id that names nothing is told as it is.

use super::{Speaker, say};
use crate::book::{
    IngredientId, ItemId, MeasureId, RecipeId, Tasting, TastingId, VersionId, VesselId,
};
use crate::quantity::{excerpt, name_as_shown};

/// Longest reason of a tasting that is repeated, in characters.
const REASON: usize = 60;

impl Speaker<'_> {
    /// Brand and name of an ingredient.
    pub fn ingredient(&self, id: &IngredientId) -> String {
        let name = self.book.ingredient(id).map(|item| {
            let of = || ItemId::Ingredient(id.clone());
            self.translation(of, &item.translations, &item.name)
                .map_or_else(|| item.full_name(), |name| item.full_name_as(name))
        });
        shown(name, id)
    }

    /// Brands and names, as a list that ends with "and".
    pub fn ingredients<'id>(&self, ids: impl IntoIterator<Item = &'id IngredientId>) -> String {
        let names: Vec<String> = ids.into_iter().map(|id| self.ingredient(id)).collect();
        self.and(&names)
    }

    /// The name of a measure.
    pub fn measure(&self, id: &MeasureId) -> String {
        let name = self.book.measure(id).map(|item| {
            let of = || ItemId::Measure(id.clone());
            self.translation(of, &item.translations, &item.name)
                .unwrap_or(&item.name)
        });
        shown(name, id)
    }

    /// The name of a vessel.
    pub fn vessel(&self, id: &VesselId) -> String {
        let name = self.book.vessel(id).map(|item| {
            let of = || ItemId::Vessel(id.clone());
            self.translation(of, &item.translations, &item.name)
                .unwrap_or(&item.name)
        });
        shown(name, id)
    }

    /// The name of a recipe.
    pub fn recipe(&self, id: &RecipeId) -> String {
        let recipe = self.book.recipe(id);
        shown(
            recipe.map(|recipe| self.recipe_text(recipe, &recipe.name)),
            id,
        )
    }

    /// The name of a drink: "Hazelthwaite, iced". A version that the recipe lacks is left out.
    pub fn drink(&self, recipe: &RecipeId, version: Option<&VersionId>) -> String {
        let name = self.recipe(recipe);
        let known = self.book.recipe(recipe);
        match version.filter(|id| known.is_some_and(|known| known.version(id).is_some())) {
            None => name,
            Some(id) => {
                say!(self, "drink-and-version", recipe: name, version: self.version(recipe, id))
            }
        }
    }

    /// The name of an item of any kind.
    pub fn item(&self, item: &ItemId) -> String {
        match item {
            ItemId::Settings => self.word("named-settings").to_owned(),
            ItemId::Ingredient(id) => self.ingredient(id),
            ItemId::Measure(id) => self.measure(id),
            ItemId::Vessel(id) => self.vessel(id),
            ItemId::Recipe(id) => self.recipe(id),
            ItemId::Tasting(id) => self.tasting(id),
        }
    }

    /// What tells a tasting apart: "the tasting of 2026-05-04 (new chestnut)".
    pub fn tasting(&self, id: &TastingId) -> String {
        match self.book.tasting(id) {
            Some(tasting) => self.name_of_tasting(tasting),
            None => id.to_string(),
        }
    }

    /// The same of one that need not be in the book.
    pub fn name_of_tasting(&self, tasting: &Tasting) -> String {
        let date = shown(Some(&tasting.date), &tasting.id);
        let reason = tasting.reason.trim();
        if reason.is_empty() {
            say!(self, "named-tasting", date: date)
        } else {
            say!(self, "named-tasting-for", date: date, reason: excerpt(reason, REASON))
        }
    }

    /// The name of a version.
    pub fn version(&self, recipe: &RecipeId, id: &VersionId) -> String {
        let recipe = self.book.recipe(recipe);
        let version = recipe.and_then(|recipe| Some((recipe, recipe.version(id)?)));
        let name = version.map(|(recipe, version)| self.recipe_text(recipe, &version.name));
        shown(name, id)
    }

    /// "a, b and c".
    pub fn and(&self, items: &[impl AsRef<str>]) -> String {
        self.catalogue().and(&texts(items))
    }

    /// "a, b or c".
    pub fn or(&self, items: &[impl AsRef<str>]) -> String {
        self.catalogue().or(&texts(items))
    }
}

fn texts(items: &[impl AsRef<str>]) -> Vec<&str> {
    items.iter().map(AsRef::as_ref).collect()
}

fn shown(name: Option<impl AsRef<str>>, id: &impl ToString) -> String {
    match name {
        Some(name) => name_as_shown(name.as_ref()).into_owned(),
        None => id.to_string(),
    }
}
