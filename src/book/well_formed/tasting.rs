//! Checks of a tasting.

use super::checklist::Checklist;
use super::recipe;
use crate::book::{
    Book, FigureName, FigureRange, FindingKind, IdKind, Place, TastedCup, Tasting, TastingOutcome,
    Unfinished,
};

/// People in a tasting.
const PEOPLE: FigureRange = FigureRange::new(1.0, 1e5, "");

/// How many times as much one cup has as another.
const TIMES: FigureRange = FigureRange::new(0.01, 100.0, "");

pub(super) fn check(book: &Book, item: &Tasting, list: &mut Checklist) {
    let place = |field| Place::Tasting(item.id.clone(), field);
    list.date(place("date"), Some(&item.date));
    for person in &item.people {
        list.name(place("people"), person);
    }
    for cup in &item.cups {
        check_cup(book, cup, &place("cups"), list);
    }
    check_outcome(item, list);
    let cups = item.cups.len();
    for note in &item.notes {
        list.name(place("notes"), &note.person);
        if note.cup == 0 || note.cup as usize > cups {
            let what = Unfinished::NoSuchCup {
                cup: note.cup,
                cups,
            };
            list.unfinished(place("notes"), what);
        }
    }
}

fn check_cup(book: &Book, cup: &TastedCup, place: &Place, list: &mut Checklist) {
    let lost = |kind, id: &str| FindingKind::Dangling {
        kind,
        id: id.to_owned(),
        nearest: Vec::new(),
    };
    // The cup keeps its own lines: a drink that is gone leaves it without a name, no more.
    if let Some(id) = &cup.recipe {
        match (book.recipe(id), &cup.version) {
            (None, _) => list.warning(place.clone(), lost(IdKind::Recipe, id.as_str())),
            (Some(recipe), Some(version)) if recipe.version(version).is_none() => {
                list.warning(place.clone(), lost(IdKind::Version, version.as_str()));
            }
            _ => {}
        }
    }
    for line in cup.lines.lines() {
        let id = &line.ingredient;
        list.dangling(place.clone(), IdKind::Ingredient, &book.ingredients, id);
        recipe::amount(book, place.clone(), &line.amount, list);
    }
}

fn check_outcome(item: &Tasting, list: &mut Checklist) {
    let place = |field| Place::Tasting(item.id.clone(), field);
    let Some(people) = item.outcome.people() else {
        return;
    };
    let (at, what) = (place("outcome"), FigureName::Tasters);
    list.in_range(at, what, f64::from(people), PEOPLE);
    if let TastingOutcome::About { times, .. } = item.outcome {
        let (at, what) = (place("outcome"), FigureName::TimesAsMuch);
        list.in_range(at, what, times, TIMES);
    }
    if let Some(right) = item.outcome.right().filter(|right| *right > people) {
        let what = Unfinished::MoreRightThanPeople { people, right };
        list.unfinished(place("outcome"), what);
    }
    if item.cups.len() != 2 {
        let what = Unfinished::NotTwoCups {
            cups: item.cups.len(),
        };
        list.unfinished(place("cups"), what);
    }
    let named = item.people.len();
    if named > 0 && people as usize > named {
        let kind = FindingKind::MoreAnswersThanPeople {
            answers: people,
            named,
        };
        list.warning(place("people"), kind);
    }
}
