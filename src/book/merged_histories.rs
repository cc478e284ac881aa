//! What a merge does with the histories of items, so that no standard moves.
//!
//! Each side counts the revisions of an item on its own: what one of them tasted as revision 1 is another state than revision 1 of
//! the other. So every approval and every cup of a tasting gets back the states that it had in the book that it is from. Where that
//! book had not kept a state because nothing there had been tasted with it, or had it as the item of now, the merged item keeps it.

use std::collections::{BTreeMap, BTreeSet};

use super::{Book, Item, ItemId, RecipeId, Resolved, Shelf, Tasted, TastedWith, TastingId};

/// Something that was tasted, in the merged book.
struct Record {
    place: Place,
    day: String,
    /// What entered it.
    with: Option<TastedWith>,
    is_mine: bool,
    is_theirs: bool,
    /// What entered it, as those have it whose record it is.
    items: BTreeSet<ItemId>,
}

/// Where a record stands.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Place {
    /// So many approvals of a recipe stand before it.
    Approval(RecipeId, usize),
    /// So many cups of a tasting stand before it.
    Cup(TastingId, usize),
}

/// Gives every approval and every cup of a merged book the states of items back that it was tasted with.
pub(super) fn keep_standards(base: &Book, mine: &Book, theirs: &Book, merged: &mut Book) {
    let mut records = records(mine, theirs, merged);
    let before: Vec<Option<TastedWith>> =
        records.iter().map(|record| record.with.clone()).collect();
    on_shelf(
        [&base.ingredients, &mine.ingredients, &theirs.ingredients],
        &mut merged.ingredients,
        (
            ItemId::Ingredient,
            |with| &with.ingredients,
            |with| &mut with.ingredients,
        ),
        &mut records,
    );
    on_shelf(
        [&base.measures, &mine.measures, &theirs.measures],
        &mut merged.measures,
        (
            ItemId::Measure,
            |with| &with.measures,
            |with| &mut with.measures,
        ),
        &mut records,
    );
    on_shelf(
        [&base.vessels, &mine.vessels, &theirs.vessels],
        &mut merged.vessels,
        (
            ItemId::Vessel,
            |with| &with.vessels,
            |with| &mut with.vessels,
        ),
        &mut records,
    );
    on_shelf(
        [&base.recipes, &mine.recipes, &theirs.recipes],
        &mut merged.recipes,
        (
            ItemId::Recipe,
            |with| &with.recipes,
            |with| &mut with.recipes,
        ),
        &mut records,
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
        &mut records,
    );
    if let Some(settings) = settings {
        merged.settings = settings;
    }
    for (record, before) in records.into_iter().zip(before) {
        if record.with != before {
            put_back(merged, record);
        }
    }
}

fn put_back(merged: &mut Book, record: Record) {
    match &record.place {
        Place::Approval(id, at) => {
            let Some(recipe) = merged.recipe(id) else {
                return;
            };
            let mut recipe = recipe.as_ref().clone();
            if let Some(approval) = recipe.approvals.get_mut(*at) {
                approval.tasted_with = record.with;
            }
            merged.recipes.put(recipe);
        }
        Place::Cup(id, at) => {
            let Some(tasting) = merged.tasting(id) else {
                return;
            };
            let mut tasting = tasting.as_ref().clone();
            if let Some(cup) = tasting.cups.get_mut(*at) {
                cup.tasted_with = record.with;
            }
            merged.tastings.put(tasting);
        }
    }
}

/// What was tasted in the merged book, by day and place: an order that does not ask whose it is.
fn records(mine: &Book, theirs: &Book, merged: &Book) -> Vec<Record> {
    let mut records = Vec::new();
    let mut add =
        |place, day: &str, lines: &Resolved, with: Option<&TastedWith>, is_in: [bool; 2]| {
            let [is_mine, is_theirs] = is_in;
            let sides = [(is_mine, mine), (is_theirs, theirs)];
            let sides = sides.into_iter().filter(|(is_in, _)| *is_in);
            records.push(Record {
                place,
                day: day.to_owned(),
                with: with.cloned(),
                is_mine,
                is_theirs,
                items: sides
                    .flat_map(|(_, book)| book.entered(lines, with))
                    .collect(),
            });
        };
    for recipe in &merged.recipes {
        for (at, approval) in recipe.approvals.iter().enumerate() {
            let is_in = [mine, theirs].map(|book| {
                let recipe = book.recipe(&recipe.id);
                recipe.is_some_and(|recipe| recipe.approvals.contains(approval))
            });
            let with = approval.tasted_with.as_ref();
            let place = Place::Approval(recipe.id.clone(), at);
            add(place, &approval.date, &approval.resolved, with, is_in);
        }
    }
    for tasting in &merged.tastings {
        for (at, cup) in tasting.cups.iter().enumerate() {
            let is_in = [mine, theirs].map(|book| {
                let tasting = book.tasting(&tasting.id);
                tasting.is_some_and(|tasting| tasting.cups.contains(cup))
            });
            let with = cup.tasted_with.as_ref();
            let place = Place::Cup(tasting.id.clone(), at);
            add(place, &tasting.date, &cup.lines, with, is_in);
        }
    }
    records.sort_by_cached_key(|record| (record.day.clone(), record.place.clone()));
    records
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
    records: &mut [Record],
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
            records,
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
        records: &mut [Record],
    ) -> Option<T> {
        let revision_of = |record: &Record| {
            let with = record.with.as_ref();
            with.map_or(0, &revision)
        };
        let enters = |record: &&Record| record.items.contains(id);
        let shared = records.iter().filter(enters);
        let shared = shared.filter(|record| record.is_mine && record.is_theirs);
        let begun: Vec<Begun<T::Kept>> = shared
            .filter_map(|record| {
                let revision = revision_of(record);
                let [mine, theirs] = [self.mine, self.theirs].map(|item| at(item, revision));
                let was = at(self.base?, revision);
                Some(Begun { was, mine, theirs })
            })
            .collect();
        let with_it = records.iter_mut();
        let with_it = with_it.filter(|record| record.items.contains(id));
        let mut wanted: Vec<(&mut Record, u32, T::Kept)> = with_it
            .map(|record| {
                let revision = revision_of(record);
                let state = self.tasted(record, revision, &begun);
                (record, revision, state)
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
        for (record, revision, state) in &mut wanted {
            if at(&item, *revision) == *state {
                continue;
            }
            let earlier = item.earlier();
            let kept = earlier.states.iter().find(|kept| kept.was == *state);
            let to = kept.map_or(earlier.revision, |kept| kept.revision);
            set(record.with.get_or_insert_default(), to);
        }
        Some(item)
    }

    /// The state that an approval had at a revision. What one side has put right is right for the other one, too.
    fn tasted(&self, record: &Record, revision: u32, begun: &[Begun<T::Kept>]) -> T::Kept {
        let [mine, theirs] = [self.mine, self.theirs].map(|item| at(item, revision));
        match (record.is_mine, record.is_theirs) {
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
