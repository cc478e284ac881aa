//! Where the items of the shop are used: recipes and versions, approvals, and readings of measures.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::item::CounterItem;
use crate::book::{
    Amount, Book, Change, Entry, Item, Line, MeasureId, Recipe, RecipeId, Resolved, VersionId,
};
use crate::say::{Speaker, say};
use crate::workbench::{Answers, BookQuestion};

/// A place that needs an item.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Use {
    /// A recipe as written, or one of its versions.
    Recipe(RecipeId, Option<VersionId>),
    /// An approval of a recipe, which keeps its lines for ever.
    Approval(RecipeId),
    /// Readings of a measure.
    Readings(MeasureId),
}

/// Where everything is used.
#[derive(Clone, Copy, PartialEq, Eq, Hash)]
pub(super) struct UsesOfBook;

impl BookQuestion for UsesOfBook {
    type Answer = Arc<Uses>;
    const STAYS_FOR: Option<fn(&Self::Answer, &Book) -> bool> = Some(|uses, now| {
        let of = &uses.of;
        of.recipes == now.recipes && of.measures == now.measures
    });

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        Arc::new(Uses::of(answers.book()))
    }
}

/// All uses of a book.
#[derive(Debug)]
pub(super) struct Uses {
    of: Arc<Book>,
    places: BTreeMap<CounterItem, Vec<Use>>,
}

impl Uses {
    /// Looks through the recipes and the measures once.
    fn of(book: &Arc<Book>) -> Self {
        let mut uses = Self {
            of: book.clone(),
            places: BTreeMap::new(),
        };
        for recipe in &book.recipes {
            uses.note_recipe(recipe);
        }
        for measure in &book.measures {
            for reading in &measure.readings {
                if let Some(ingredient) = &reading.ingredient {
                    uses.note(
                        CounterItem::Ingredient(ingredient.clone()),
                        &Use::Readings(measure.id().clone()),
                    );
                }
            }
        }
        uses
    }

    /// Where an item is used, in the order of the book.
    pub(super) fn list(&self, item: &CounterItem) -> &[Use] {
        self.places.get(item).map_or(&[], Vec::as_slice)
    }

    /// How many recipes use an item, each counted once.
    pub(super) fn recipes(&self, item: &CounterItem) -> usize {
        let mut recipes: Vec<&RecipeId> = self.list(item).iter().filter_map(Use::recipe).collect();
        recipes.dedup();
        recipes.len()
    }

    fn note(&mut self, item: CounterItem, at: &Use) {
        let list = self.places.entry(item).or_default();
        if !list.contains(at) {
            list.push(at.clone());
        }
    }

    fn note_recipe(&mut self, recipe: &Recipe) {
        let written = Use::Recipe(recipe.id.clone(), None);
        self.note_resolved(&recipe.plain(), &written);
        for version in &recipe.versions {
            let at = Use::Recipe(recipe.id.clone(), Some(version.id.clone()));
            for change in &version.changes {
                self.note_change(change, &at);
            }
        }
        for approval in &recipe.approvals {
            self.note_resolved(&approval.resolved, &Use::Approval(recipe.id.clone()));
        }
    }

    fn note_resolved(&mut self, resolved: &Resolved, at: &Use) {
        for line in resolved.lines() {
            self.note_line(line, at);
        }
        for vessel in [&resolved.cup, &resolved.shaker].into_iter().flatten() {
            self.note(CounterItem::Vessel(vessel.clone()), at);
        }
    }

    fn note_line(&mut self, line: &Line, at: &Use) {
        self.note(CounterItem::Ingredient(line.ingredient.clone()), at);
        if let Some(carried) = &line.carried {
            self.note(CounterItem::Ingredient(carried.ingredient.clone()), at);
        }
        self.note_amount(&line.amount, at);
    }

    fn note_amount(&mut self, amount: &Amount, at: &Use) {
        if let Amount::Count(_, measure) = amount {
            self.note(CounterItem::Measure(measure.clone()), at);
        }
    }

    fn note_change(&mut self, change: &Change, at: &Use) {
        match change {
            Change::Ingredient(_, ingredient) => {
                self.note(CounterItem::Ingredient(ingredient.clone()), at);
            }
            Change::Carried(_, Some(carried)) => {
                self.note(CounterItem::Ingredient(carried.ingredient.clone()), at);
            }
            Change::Amount(_, amount) => self.note_amount(amount, at),
            Change::Add(_, Entry::Line(line)) => self.note_line(line, at),
            Change::Cup(vessel) | Change::Shaker(Some(vessel)) => {
                self.note(CounterItem::Vessel(vessel.clone()), at);
            }
            _ => {}
        }
    }
}

impl Use {
    fn recipe(&self) -> Option<&RecipeId> {
        match self {
            Self::Recipe(recipe, _) | Self::Approval(recipe) => Some(recipe),
            Self::Readings(_) => None,
        }
    }

    /// "Hob & Ember, vegan", "an approval of Hob & Ember", "readings of the brown scoop".
    pub(super) fn words(&self, speaker: Speaker<'_>) -> String {
        match self {
            Self::Recipe(recipe, None) => speaker.recipe(recipe),
            Self::Recipe(recipe, Some(version)) => say!(
                speaker,
                "counter-use-version",
                recipe: speaker.recipe(recipe),
                version: speaker.version(recipe, version),
            ),
            Self::Approval(recipe) => {
                say!(speaker, "counter-use-approval", recipe: speaker.recipe(recipe))
            }
            Self::Readings(measure) => {
                say!(speaker, "counter-use-readings", measure: speaker.measure(measure))
            }
        }
    }
}

/// Most places that are named in one sentence.
const MOST_NAMED: usize = 3;

/// Why an item can't be taken out of the book; `None` when nothing needs it.
pub(super) fn refusal(
    speaker: Speaker<'_>,
    uses: &[Use],
    item: &CounterItem,
    name: &str,
) -> Option<String> {
    if uses.is_empty() {
        return None;
    }
    let mut named: Vec<String> = uses
        .iter()
        .take(MOST_NAMED)
        .map(|place| place.words(speaker))
        .collect();
    if uses.len() > MOST_NAMED {
        named.push(say!(speaker, "counter-uses-more", count: uses.len() - MOST_NAMED));
    }
    let last = named.pop().unwrap_or_default();
    // Names of versions have commas in them: a list with commas would not tell them apart.
    let before = named
        .into_iter()
        .reduce(|before, after| say!(speaker, "clauses", before: before, after: after));
    let list = match before {
        Some(before) => say!(speaker, "counter-uses-last", before: before, last: last),
        None => last,
    };
    let kind = item.kind().key();
    Some(say!(speaker, "counter-refusal", kind: kind, name: name, uses: list))
}
