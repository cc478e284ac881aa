//! Lines of an ingredient that turns out to be of another form: what stands where it usually went goes where it usually goes now.

use crate::book::{Book, Change, Entry, Ingredient, Line, Stage};
use crate::edit::Edit;

/// The edits that move the lines of an ingredient from where it usually went to where it usually goes: a foam to the top. Lines
/// that stand somewhere else were put there on purpose.
pub fn lines_to_usual_stage(book: &Book, before: &Ingredient, after: &Ingredient) -> Vec<Edit> {
    let (was, now) = (before.usual_stage(), after.usual_stage());
    let goes_along = |line: &&Line| line.ingredient == after.id && line.stage == was;
    let mut edits = Vec::new();
    if was == now {
        return edits;
    }
    for recipe in &book.recipes {
        let moves = |version, line: &Line, stage: Stage| Edit::Change {
            recipe: recipe.id.clone(),
            version,
            change: Change::Stage(line.id.clone(), stage),
        };
        let own = recipe.entries.iter().filter_map(Entry::line);
        edits.extend(own.filter(goes_along).map(|line| moves(None, line, now)));
        for version in &recipe.versions {
            let added = version.changes.iter().filter_map(|change| match change {
                Change::Add(_, Entry::Line(line)) => Some(line),
                _ => None,
            });
            let id = || Some(version.id.clone());
            edits.extend(added.filter(goes_along).map(|line| moves(id(), line, now)));
        }
    }
    edits
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{
        Amount, Form, IngredientId, LineId, Recipe, RecipeId, Role, Version, VersionId, resolve,
    };
    use crate::edit::apply_soundly;

    fn line(id: &str, stage: Stage) -> Entry {
        Entry::Line(Line {
            id: LineId::new(id).unwrap(),
            ingredient: IngredientId::new("cloud").unwrap(),
            amount: Amount::Grams(30.0),
            temperature: None,
            role: Role::Creamer,
            stage,
            carried: None,
            note: String::new(),
        })
    }

    #[test]
    fn what_turns_out_to_be_a_foam_floats_in_every_drink_unless_it_was_put_elsewhere() {
        let mut book = Book::default();
        let mut cloud = Ingredient::new(IngredientId::new("cloud").unwrap(), "Oat cloud".into());
        (cloud.form, cloud.role) = (Form::Liquid, Role::Creamer);
        let mut recipe = Recipe::new(RecipeId::new("drink").unwrap(), "Drink".into());
        recipe.entries = vec![line("mixed", Stage::Mixed), line("apart", Stage::Topping)];
        let mut version = Version::draft(VersionId::new("more").unwrap(), "More".into(), None);
        let added = line("added", Stage::Mixed);
        version.changes.push(Change::Add(None, added));
        recipe.versions.push(version);
        book.recipes.put(recipe);
        book.ingredients.put(cloud.clone());
        let foam = Ingredient {
            form: Form::Foam,
            ..cloud.clone()
        };
        let mut edits = lines_to_usual_stage(&book, &cloud, &foam);
        edits.push(Edit::PutIngredient(foam.clone()));
        let after = apply_soundly(&book, &edits).unwrap();
        let recipe = after.recipe(&RecipeId::new("drink").unwrap()).unwrap();
        let stages = |version: Option<&VersionId>| -> Vec<(String, Stage)> {
            let lines = resolve(recipe, version).0;
            let stages = lines.lines().map(|line| (line.id.to_string(), line.stage));
            stages.collect()
        };
        let stage = |id: &str, stage| (id.to_owned(), stage);
        let mut all = stages(Some(&recipe.versions[0].id));
        all.sort();
        let expected = [
            stage("added", Stage::OnTop),
            stage("apart", Stage::Topping),
            stage("mixed", Stage::OnTop),
        ];
        assert_eq!(all, expected);
        assert_eq!(lines_to_usual_stage(&after, &foam, &foam), Vec::new());
    }
}
