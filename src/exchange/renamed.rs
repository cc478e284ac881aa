//! The things of another shop beside ours, under ids that nothing of ours has.

use crate::book::{
    Amount, Book, Entry, IngredientId, Measure, MeasureId, Recipe, RecipeId, Resolved, Vessel,
    VesselId,
};

/// What their ids have become.
pub(super) struct Renamed {
    ingredients: Vec<(IngredientId, IngredientId)>,
    measures: Vec<(MeasureId, MeasureId)>,
    vessels: Vec<(VesselId, VesselId)>,
}

fn new_id<I: Clone + PartialEq>(known: &[(I, I)], id: &I) -> I {
    let found = known.iter().find(|(before, _)| before == id);
    found.map_or_else(|| id.clone(), |(_, after)| after.clone())
}

impl Renamed {
    pub(super) fn ingredient(&self, id: &IngredientId) -> IngredientId {
        new_id(&self.ingredients, id)
    }

    pub(super) fn resolved(&self, resolved: &Resolved) -> Resolved {
        let mut renamed = resolved.clone();
        for entry in &mut renamed.entries {
            if let Entry::Line(line) = entry {
                line.ingredient = self.ingredient(&line.ingredient);
                if let Amount::Count(_, measure) = &mut line.amount {
                    *measure = new_id(&self.measures, measure);
                }
                if let Some(carried) = &mut line.carried {
                    carried.ingredient = self.ingredient(&carried.ingredient);
                }
            }
        }
        let vessel = |id: &VesselId| new_id(&self.vessels, id);
        renamed.cup = renamed.cup.as_ref().map(vessel);
        renamed.shaker = renamed.shaker.as_ref().map(vessel);
        renamed
    }

    /// A measure of theirs, which their house-made batches are counted in.
    fn measure(&self, measure: &Measure) -> Measure {
        let mut renamed = measure.clone();
        renamed.id = new_id(&self.measures, &measure.id);
        for reading in &mut renamed.readings {
            reading.ingredient = reading.ingredient.as_ref().map(|id| self.ingredient(id));
        }
        renamed
    }
}

/// A recipe of these lines under another name, without its versions and approvals.
pub(super) fn plain_recipe(recipe: &Recipe, name: String, resolved: &Resolved) -> Recipe {
    Recipe {
        entries: resolved.entries.clone(),
        cup: resolved.cup.clone(),
        shaker: resolved.shaker.clone(),
        strained: resolved.strained,
        drinking_temperature: resolved.drinking_temperature,
        sugar_level: resolved.sugar_level,
        translations: recipe.translations.clone(),
        ..Recipe::new(recipe.id.clone(), name)
    }
}

/// Puts the things of another shop beside ours, under ids that nothing of ours has.
pub(super) fn put_theirs(both: &mut Book, theirs: &Book) -> Renamed {
    let mut renamed = Renamed {
        ingredients: Vec::new(),
        measures: Vec::new(),
        vessels: Vec::new(),
    };
    for item in &theirs.ingredients {
        let id = IngredientId::from_name(item.id.as_str(), |id| {
            both.ingredient(id).is_some()
                || renamed.ingredients.iter().any(|(_, known)| known == id)
        });
        renamed.ingredients.push((item.id.clone(), id));
    }
    for item in &theirs.vessels {
        let id = VesselId::from_name(item.id.as_str(), |id| {
            both.vessel(id).is_some() || renamed.vessels.iter().any(|(_, known)| known == id)
        });
        both.vessels.put(Vessel {
            id: id.clone(),
            ..(**item).clone()
        });
        renamed.vessels.push((item.id.clone(), id));
    }
    for item in &theirs.measures {
        let id = MeasureId::from_name(item.id.as_str(), |id| {
            both.measure(id).is_some() || renamed.measures.iter().any(|(_, known)| known == id)
        });
        renamed.measures.push((item.id.clone(), id));
    }
    for item in &theirs.measures {
        both.measures.put(renamed.measure(item));
    }
    let mut recipes = Vec::new();
    for recipe in theirs.recipes.iter().filter(|recipe| recipe.cup.is_none()) {
        let id = RecipeId::from_name(recipe.id.as_str(), |id| both.recipe(id).is_some());
        let lines = renamed.resolved(&recipe.plain());
        let mut house = plain_recipe(recipe, recipe.name.clone(), &lines);
        house.id = id.clone();
        both.recipes.put(house);
        recipes.push((recipe.id.clone(), id));
    }
    for item in &theirs.ingredients {
        let mut ingredient = (**item).clone();
        ingredient.id = renamed.ingredient(&item.id);
        if let Some(made) = &mut ingredient.house_made
            && let Some((_, id)) = recipes.iter().find(|(before, _)| *before == made.recipe)
        {
            made.recipe = id.clone();
        }
        both.ingredients.put(ingredient);
    }
    renamed
}
