//! What a merge does with the histories of items, so that no standard moves.
//!
//! Each side counts the revisions of an item on its own: what one of them tasted as revision 1 is another state than revision 1 of
//! the other. So every approval in the merged book gets back the states that it had in the book that it is from. Where that book
//! had not kept a state because nothing there had been tasted with it, or had it as the item of now, the merged item keeps it.

use std::collections::{BTreeMap, BTreeSet};

use super::{Approval, Book, Item, ItemId, RecipeId, Shelf, Tasted, TastedWith};

/// An approval in the merged book.
struct Tasting {
    recipe: RecipeId,
    /// Its place among the approvals of its recipe.
    at: usize,
    approval: Approval,
    is_mine: bool,
    is_theirs: bool,
    /// What entered the drink, as those have it whose approval it is.
    items: BTreeSet<ItemId>,
}

/// Gives every approval of a merged book the states of items back that it was tasted with.
pub(super) fn keep_standards(base: &Book, mine: &Book, theirs: &Book, merged: &mut Book) {
    let mut tastings = tastings(mine, theirs, merged);
    let before: Vec<Option<TastedWith>> = tastings
        .iter()
        .map(|tasting| tasting.approval.tasted_with.clone())
        .collect();
    on_shelf(
        [&base.ingredients, &mine.ingredients, &theirs.ingredients],
        &mut merged.ingredients,
        (
            ItemId::Ingredient,
            |with| &with.ingredients,
            |with| &mut with.ingredients,
        ),
        &mut tastings,
    );
    on_shelf(
        [&base.measures, &mine.measures, &theirs.measures],
        &mut merged.measures,
        (
            ItemId::Measure,
            |with| &with.measures,
            |with| &mut with.measures,
        ),
        &mut tastings,
    );
    on_shelf(
        [&base.vessels, &mine.vessels, &theirs.vessels],
        &mut merged.vessels,
        (
            ItemId::Vessel,
            |with| &with.vessels,
            |with| &mut with.vessels,
        ),
        &mut tastings,
    );
    on_shelf(
        [&base.recipes, &mine.recipes, &theirs.recipes],
        &mut merged.recipes,
        (
            ItemId::Recipe,
            |with| &with.recipes,
            |with| &mut with.recipes,
        ),
        &mut tastings,
    );
    let settings = States {
        base: Some(&base.settings),
        mine: &mine.settings,
        theirs: &theirs.settings,
        merged: &merged.settings,
    };
    let settings = settings.reconciled(
        &ItemId::Settings,
        |with| with.settings,
        |with, revision| with.settings = revision,
        &mut tastings,
    );
    if let Some(settings) = settings {
        merged.settings = settings;
    }
    for (tasting, before) in tastings.into_iter().zip(before) {
        if tasting.approval.tasted_with == before {
            continue;
        }
        if let Some(recipe) = merged.recipe(&tasting.recipe) {
            let mut recipe = recipe.as_ref().clone();
            if let Some(approval) = recipe.approvals.get_mut(tasting.at) {
                *approval = tasting.approval;
            }
            merged.recipes.put(recipe);
        }
    }
}

/// The approvals of the merged book, by day and recipe: an order that does not ask whose they are.
fn tastings(mine: &Book, theirs: &Book, merged: &Book) -> Vec<Tasting> {
    let mut tastings = Vec::new();
    for recipe in &merged.recipes {
        for (at, approval) in recipe.approvals.iter().enumerate() {
            let has = |book: &Book| {
                let recipe = book.recipe(&recipe.id);
                recipe.is_some_and(|recipe| recipe.approvals.contains(approval))
            };
            let (is_mine, is_theirs) = (has(mine), has(theirs));
            let sides = [(is_mine, mine), (is_theirs, theirs)];
            let sides = sides.into_iter().filter(|(is_in, _)| *is_in);
            tastings.push(Tasting {
                recipe: recipe.id.clone(),
                at,
                approval: approval.clone(),
                is_mine,
                is_theirs,
                items: sides.flat_map(|(_, book)| book.entered(approval)).collect(),
            });
        }
    }
    tastings.sort_by_cached_key(|tasting| {
        let day = tasting.approval.date.clone();
        (day, tasting.recipe.clone(), tasting.at)
    });
    tastings
}

/// How items of a kind are named, and where their revisions stand.
type Kind<T> = (
    fn(<T as Item>::Id) -> ItemId,
    fn(&TastedWith) -> &BTreeMap<<T as Item>::Id, u32>,
    fn(&mut TastedWith) -> &mut BTreeMap<<T as Item>::Id, u32>,
);

fn on_shelf<T: Item + Tasted>(
    [base, mine, theirs]: [&Shelf<T>; 3],
    merged: &mut Shelf<T>,
    (item_id, revisions, revisions_mut): Kind<T>,
    tastings: &mut [Tasting],
) {
    let ids: Vec<T::Id> = mine.unlike(theirs).map(|item| item.id().clone()).collect();
    for id in ids {
        let both = mine.get(&id).zip(theirs.get(&id));
        let (Some((mine, theirs)), Some(now)) = (both, merged.get(&id)) else {
            continue;
        };
        let states = States {
            base: base.get(&id).map(AsRef::as_ref),
            mine: mine.as_ref(),
            theirs: theirs.as_ref(),
            merged: now.as_ref(),
        };
        let item = states.reconciled(
            &item_id(id.clone()),
            |with| revisions(with).get(&id).copied().unwrap_or(0),
            |with, revision| {
                revisions_mut(with).insert(id.clone(), revision);
            },
            tastings,
        );
        if let Some(item) = item {
            merged.put(item);
        }
    }
}

/// An item in all the books.
struct States<'book, T> {
    /// `None` where both sides have added it.
    base: Option<&'book T>,
    mine: &'book T,
    theirs: &'book T,
    merged: &'book T,
}

/// What an item was at a revision.
fn at<T: Tasted>(item: &T, revision: u32) -> T::Kept {
    let kept = item.earlier().at(revision).cloned();
    kept.unwrap_or_else(|| item.for_keeping())
}

impl<T: Tasted> States<'_, T> {
    /// The merged item with every state in its history that an approval in the merged book was tasted with, and the approvals
    /// with its revisions; `None` where they agree already.
    fn reconciled(
        &self,
        id: &ItemId,
        revision: impl Fn(&TastedWith) -> u32,
        set: impl Fn(&mut TastedWith, u32),
        tastings: &mut [Tasting],
    ) -> Option<T> {
        let revision_of = |tasting: &Tasting| {
            let with = tasting.approval.tasted_with.as_ref();
            with.map_or(0, &revision)
        };
        let enters = |tasting: &&Tasting| tasting.items.contains(id);
        let shared = tastings.iter().filter(enters);
        let shared = shared.filter(|tasting| tasting.is_mine && tasting.is_theirs);
        let begun: Vec<Begun<T::Kept>> = shared
            .filter_map(|tasting| {
                let revision = revision_of(tasting);
                let [mine, theirs] = [self.mine, self.theirs].map(|item| at(item, revision));
                let was = at(self.base?, revision);
                Some(Begun { was, mine, theirs })
            })
            .collect();
        let with_it = tastings.iter_mut();
        let with_it = with_it.filter(|tasting| tasting.items.contains(id));
        let mut wanted: Vec<(&mut Tasting, u32, T::Kept)> = with_it
            .map(|tasting| {
                let revision = revision_of(tasting);
                let state = self.tasted(tasting, revision, &begun);
                (tasting, revision, state)
            })
            .collect();
        if wanted
            .iter()
            .all(|(_, revision, state)| at(self.merged, *revision) == *state)
        {
            return None;
        }
        let mut item = self.merged.clone();
        let now = item.for_keeping();
        for (_, _, state) in &wanted {
            let earlier = item.earlier_mut();
            let is_kept = earlier.states.iter().any(|kept| kept.was == *state);
            if *state != now && !is_kept {
                earlier.keep(state.clone(), earlier.revision);
            }
        }
        for (tasting, revision, state) in &mut wanted {
            if at(&item, *revision) == *state {
                continue;
            }
            let earlier = item.earlier();
            let kept = earlier.states.iter().find(|kept| kept.was == *state);
            let to = kept.map_or(earlier.revision, |kept| kept.revision);
            set(tasting.approval.tasted_with.get_or_insert_default(), to);
        }
        Some(item)
    }

    /// The state that an approval had at a revision. What one side has put right is right for the other one, too.
    fn tasted(&self, tasting: &Tasting, revision: u32, begun: &[Begun<T::Kept>]) -> T::Kept {
        let [mine, theirs] = [self.mine, self.theirs].map(|item| at(item, revision));
        match (tasting.is_mine, tasting.is_theirs) {
            (true, false) => {
                let right = begun
                    .iter()
                    .find(|one| one.was == mine && one.theirs != mine);
                right.map_or(mine, |one| one.theirs.clone())
            }
            (false, true) => {
                let right = begun
                    .iter()
                    .find(|one| one.was == theirs && one.mine != theirs);
                right.map_or(theirs, |one| one.mine.clone())
            }
            _ if mine == theirs => mine,
            _ => {
                let was = self.base.map(|base| at(base, revision));
                match (was.as_ref() == Some(&theirs), was.as_ref() == Some(&mine)) {
                    (true, _) => mine,
                    (_, true) => theirs,
                    _ => at(self.merged, revision),
                }
            }
        }
    }
}

/// What an approval of both sides was tasted with: in the book that both began with, and on each side since. They differ where a
/// side has put right what was wrong: what a product was before it changed is kept.
struct Begun<K> {
    was: K,
    mine: K,
    theirs: K,
}
