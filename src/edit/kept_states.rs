//! What items were when drinks were approved with them: an edit that changes an item keeps what it was.
//!
//! An edit says what an item is now. That the product changed is the safe reading of it: approved drinks stay what was tasted.
//! That the figure was wrong has to be said ([`super::Edit::PutRight`]).

use crate::book::{
    Book, EarlierStates, Ingredient, Item, ItemId, Measure, Recipe, Settings, Shelf, Tasted, Vessel,
};

/// An item of a kind that stands on a shelf of the book.
pub(super) trait OnShelf: Item + Tasted {
    /// The shelf.
    fn shelf(book: &Book) -> &Shelf<Self>;

    /// The same, to be changed.
    fn shelf_mut(book: &mut Book) -> &mut Shelf<Self>;

    /// The item among items of all kinds.
    fn item_id(id: &Self::Id) -> ItemId;
}

macro_rules! on_shelf {
    ($($item:ident on $shelf:ident),+) => {
        $(impl OnShelf for $item {
            fn shelf(book: &Book) -> &Shelf<Self> {
                &book.$shelf
            }

            fn shelf_mut(book: &mut Book) -> &mut Shelf<Self> {
                &mut book.$shelf
            }

            fn item_id(id: &Self::Id) -> ItemId {
                ItemId::$item(id.clone())
            }
        })+
    };
}

on_shelf!(Ingredient on ingredients, Measure on measures, Vessel on vessels, Recipe on recipes);

/// Puts an item in place of another state of it, which is kept when a drink was approved with that and may come out otherwise
/// now. The history is that of the book, whatever a form hands back.
pub(super) fn put<T: OnShelf>(book: &mut Book, mut item: T) {
    let was = T::shelf(book).get(item.id()).cloned();
    let id = item.id().clone();
    let earlier = was.as_ref().map(|was| was.earlier().clone());
    *item.earlier_mut() = earlier.unwrap_or_default();
    T::shelf_mut(book).put(item);
    if let Some(was) = was {
        keep(book, &id, was.as_ref());
    }
}

/// The same of the settings.
pub(super) fn put_settings(book: &mut Book, settings: Settings) {
    let earlier = std::mem::take(&mut book.settings.earlier);
    let was = std::mem::replace(
        &mut book.settings,
        Settings {
            earlier,
            ..settings
        },
    );
    keep_settings(book, &was);
}

/// Keeps what the items of a book were that another state of it has otherwise.
pub(super) fn keep_all(before: &Book, after: &mut Book) {
    fn on_shelf<T: OnShelf>(before: &Book, after: &mut Book) {
        let changed = T::shelf(after).unlike(T::shelf(before));
        let changed: Vec<T::Id> = changed.map(|item| item.id().clone()).collect();
        for id in changed {
            if let Some(was) = T::shelf(before).get(&id) {
                keep(after, &id, was.as_ref());
            }
        }
    }
    on_shelf::<Ingredient>(before, after);
    on_shelf::<Measure>(before, after);
    on_shelf::<Vessel>(before, after);
    on_shelf::<Recipe>(before, after);
    keep_settings(after, &before.settings);
}

fn keep<T: OnShelf>(book: &mut Book, id: &T::Id, was: &T) {
    let now = T::shelf(book).get(id);
    if let Some(kept) = now.and_then(|now| keeping(book, &T::item_id(id), was, now.as_ref())) {
        T::shelf_mut(book).put(kept);
    }
}

fn keep_settings(book: &mut Book, was: &Settings) {
    if let Some(kept) = keeping(book, &ItemId::Settings, was, &book.settings) {
        book.settings = kept;
    }
}

/// The item of now that keeps what it was; `None` when its history stays. Typed back to what was kept, it never was otherwise.
fn keeping<T: Tasted>(book: &Book, id: &ItemId, was: &T, now: &T) -> Option<T> {
    if !now.is_another_in_drinks(was) {
        return None;
    }
    let mut item = now.clone();
    let earlier = item.earlier_mut();
    if let Some(revision) = book.revision_tasted(id) {
        earlier.keep(was.for_keeping(), revision);
    } else {
        let kept = earlier.latest()?;
        if kept.was != now.for_keeping() {
            return None;
        }
        earlier.put_right();
    }
    Some(item)
}

/// What is done to the history of an item.
pub(super) enum Revising<'edit> {
    /// The latest state that was kept was wrong.
    PutRight,
    /// From when that state was no longer so.
    Date {
        until: Option<&'edit str>,
        lot: &'edit str,
    },
}

/// Changes the history of an item; `None` when the book has no such item with one.
pub(super) fn revise(book: &mut Book, id: &ItemId, how: &Revising<'_>) -> Option<()> {
    fn on_shelf<T: OnShelf>(book: &mut Book, id: &T::Id, how: &Revising<'_>) -> Option<()> {
        let mut item = T::shelf(book).get(id)?.as_ref().clone();
        history(item.earlier_mut(), how)?;
        T::shelf_mut(book).put(item);
        Some(())
    }
    fn history<K>(earlier: &mut EarlierStates<K>, how: &Revising<'_>) -> Option<()> {
        earlier.latest()?;
        match how {
            Revising::PutRight => earlier.put_right(),
            Revising::Date { until, lot } => earlier.date_latest(*until, lot),
        }
        Some(())
    }
    match id {
        ItemId::Settings => history(book.settings.earlier_mut(), how),
        ItemId::Ingredient(id) => on_shelf::<Ingredient>(book, id, how),
        ItemId::Measure(id) => on_shelf::<Measure>(book, id, how),
        ItemId::Vessel(id) => on_shelf::<Vessel>(book, id, how),
        ItemId::Recipe(id) => on_shelf::<Recipe>(book, id, how),
        ItemId::Tasting(_) => None,
    }
}

/// Says of everything that another state of a book keeps more of than the one before that it has been otherwise since today, and
/// since the lot in use. That is no edit of its own: a step is called by what somebody did, and joined by it.
pub(super) fn date_kept(before: &Book, after: &mut Book, today: fn() -> String) {
    fn keeps_more<T: Tasted>(before: &T, after: &T) -> bool {
        after.earlier().states.len() > before.earlier().states.len()
    }
    fn on_shelf<T: OnShelf>(before: &Book, after: &Book, lot: fn(&T) -> &str, dated: &mut Dated) {
        for item in T::shelf(after).unlike(T::shelf(before)) {
            let was = T::shelf(before).get(item.id());
            if was.is_some_and(|was| keeps_more(was.as_ref(), item.as_ref())) {
                dated.push((T::item_id(item.id()), lot(item).to_owned()));
            }
        }
    }
    let mut dated = Dated::new();
    on_shelf::<Ingredient>(before, after, |item| &item.lot, &mut dated);
    on_shelf::<Measure>(before, after, |_| "", &mut dated);
    on_shelf::<Vessel>(before, after, |_| "", &mut dated);
    on_shelf::<Recipe>(before, after, |_| "", &mut dated);
    if keeps_more(&before.settings, &after.settings) {
        dated.push((ItemId::Settings, String::new()));
    }
    for (item, lot) in dated {
        let how = Revising::Date {
            until: Some(&today()),
            lot: &lot,
        };
        revise(after, &item, &how);
    }
}

/// Items, and the lots of them that are in use.
type Dated = Vec<(ItemId, String)>;
