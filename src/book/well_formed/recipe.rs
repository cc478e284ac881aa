//! Checks of a recipe, its versions and its approvals.

use std::collections::BTreeSet;

use super::checklist::Checklist;
use super::counter::PRICES;
use super::ranges::{DOUBT_TIMES, DRINKING_TEMPERATURE, FOOD_TEMPERATURE, LEVEL};
use crate::book::{
    Amount, Book, Change, Entry, FigureName, FigureRange, FindingKind, Form, IdKind, Line, LineId,
    Place, Recipe, Resolved, Stage, Standing, State, Version, VersionId, resolve,
};

/// Largest amount of one line, in g, ml or uses: ten litres are more than any cup of a counter holds.
pub const LARGEST_AMOUNT: f64 = 10_000.0;

/// Syrup that sticks to what is added.
const CARRIED_SYRUP: FigureRange = FigureRange::new(0.0, 1000.0, "g");

/// Circles with more members are reported once, not from the place of each member.
const REPORTED_BY_EACH: usize = 20;

pub(super) fn check(book: &Book, item: &Recipe, list: &mut Checklist) {
    duplicate_ids(item, list);
    list.name(Place::Recipe(item.id.clone(), "name"), &item.name);
    if let Some(price) = item.menu_price {
        let at = Place::Recipe(item.id.clone(), "menu_price");
        list.in_range(at, FigureName::MenuPrice, price, PRICES);
    }
    if let Some(celsius) = item.drinking_temperature {
        let at = Place::Recipe(item.id.clone(), "drinking_temperature");
        let what = FigureName::DrinkingTemperature;
        list.in_range(at, what, celsius, DRINKING_TEMPERATURE);
    }
    if let Some(percent) = item.sugar_level {
        let at = Place::Recipe(item.id.clone(), "sugar_level");
        list.in_range(at, FigureName::SugarLevel, percent, LEVEL);
    }
    let known: BTreeSet<&VersionId> = item.versions.iter().map(|version| &version.id).collect();
    version_circles(item, &known, &item.bases(), list);
    resolved(book, item, None, &item.plain(), list);
    versions(book, item, list);
    for entry in &item.entries {
        if let Entry::Line(found) = entry {
            line(book, item, None, found, list);
        }
    }
    for version in &item.versions {
        let at = Place::Version(item.id.clone(), version.id.clone());
        list.name(at, &version.name);
        for change in &version.changes {
            changed(book, item, version, change, list);
        }
    }
    approvals(book, item, &known, list);
    readings(item, list);
}

/// Checks what every version comes to. What is in a circle, or builds on one, is resolved by itself.
fn versions(book: &Book, item: &Recipe, list: &mut Checklist) {
    let mut is_too_much = false;
    let in_circles = item.each_resolved(|version, lines, findings| {
        let work = lines.entries.len() as u64 * (1 + version.changes.len() as u64);
        if list.may_take(work) {
            for finding in findings {
                list.push(finding);
            }
            resolved(book, item, Some(version), lines, list);
        } else {
            is_too_much = true;
        }
    });
    let changes: usize = item.versions.iter().map(|one| one.changes.len()).sum();
    let each = (item.versions.len() + changes) as u64 * (1 + item.entries.len() as u64);
    for version in in_circles {
        if is_too_much || !list.may_take(each) {
            is_too_much = true;
            break;
        }
        let (lines, findings) = resolve(item, Some(&version.id));
        // A missing version is reported elsewhere, with the ids that look like it.
        let from_changes = |kind: &FindingKind| !matches!(kind, FindingKind::Dangling { .. });
        for finding in findings
            .into_iter()
            .filter(|finding| from_changes(&finding.kind))
        {
            list.push(finding);
        }
        resolved(book, item, Some(version), &lines, list);
    }
    if is_too_much {
        let place = Place::Recipe(item.id.clone(), "versions");
        list.warning(place, FindingKind::TooManyToCheck);
    }
}

/// Checks what a version comes to when its changes are carried out.
fn resolved(
    book: &Book,
    item: &Recipe,
    version: Option<&Version>,
    resolved: &Resolved,
    list: &mut Checklist,
) {
    let whole = || match version {
        None => Place::Recipe(item.id.clone(), "lines"),
        Some(version) => Place::Version(item.id.clone(), version.id.clone()),
    };
    if resolved.lines().filter(|line| line.amount.fills()).count() > 1 {
        list.error(whole(), FindingKind::SeveralFillAmounts);
    }
    let vessels = [&resolved.cup, &resolved.shaker];
    for id in vessels.into_iter().flatten() {
        list.dangling(whole(), IdKind::Vessel, &book.vessels, id);
    }
    let state = version.map_or(item.state, |version| version.state);
    match item.standing_in(state, version.map(|version| &version.id), resolved) {
        Standing::MarkedOnly => list.warning(state_of(item, version), FindingKind::MarkedOnly),
        Standing::ChangedSince(approval) => {
            let date = approval.date.clone();
            let kind = FindingKind::ChangedSinceApproval { date };
            list.warning(state_of(item, version), kind);
        }
        _ => {}
    }
    if state != State::Retired {
        no_longer_sold(book, resolved, whole, list);
    }
}

/// Where the state of a recipe or version stands.
fn state_of(item: &Recipe, version: Option<&Version>) -> Place {
    match version {
        None => Place::Recipe(item.id.clone(), "state"),
        Some(version) => Place::Version(item.id.clone(), version.id.clone()),
    }
}

/// Reports what nobody sells any more and a drink still needs; a line of nothing needs nothing.
fn no_longer_sold(
    book: &Book,
    resolved: &Resolved,
    whole: impl Fn() -> Place,
    list: &mut Checklist,
) {
    for ingredient in resolved.ingredients() {
        if book
            .ingredient(ingredient)
            .is_some_and(|item| item.no_longer_sold)
        {
            let ingredient = ingredient.clone();
            list.warning(whole(), FindingKind::NoLongerSold { ingredient });
        }
    }
}

/// What can be read of a cup, in the unit of what was read.
const READING: FigureRange = FigureRange::new(-100.0, 10_000.0, "");

/// Standard uncertainties of readings, and of what was foretold of them.
const READING_DOUBT: FigureRange = FigureRange::new(0.0, 10_000.0, "");

fn readings(item: &Recipe, list: &mut Checklist) {
    let place = || Place::Recipe(item.id.clone(), "readings");
    for reading in &item.readings {
        list.date(place(), Some(&reading.date));
        for value in [reading.value, reading.foretold] {
            list.in_range(place(), FigureName::Reading, value, READING);
        }
        for u in [reading.u, reading.foretold_u, reading.of_class] {
            list.in_range(place(), FigureName::Uncertainty, u, READING_DOUBT);
        }
        list.in_range(place(), FigureName::DoubtTimes, reading.times, DOUBT_TIMES);
    }
}

fn approvals(book: &Book, item: &Recipe, known: &BTreeSet<&VersionId>, list: &mut Checklist) {
    for (at, approval) in item.approvals.iter().enumerate() {
        let place = Place::Approval(item.id.clone(), at + 1);
        list.date(place.clone(), Some(&approval.date));
        if let Some(id) = &approval.version {
            list.dangling_version(place.clone(), item, id, known);
        }
        for approved in approval.resolved.lines() {
            list.dangling(
                place.clone(),
                IdKind::Ingredient,
                &book.ingredients,
                &approved.ingredient,
            );
        }
    }
}

fn duplicate_ids(item: &Recipe, list: &mut Checklist) {
    let place = |field| Place::Recipe(item.id.clone(), field);
    let mut seen = BTreeSet::new();
    for entry in &item.entries {
        if !seen.insert(entry.id().clone()) {
            list.error(
                place("lines"),
                FindingKind::DuplicateInRecipe {
                    id: entry.id().to_string(),
                },
            );
        }
    }
    let mut seen = BTreeSet::new();
    for version in &item.versions {
        if !seen.insert(version.id.clone()) {
            let kind = FindingKind::DuplicateInRecipe {
                id: version.id.to_string(),
            };
            list.error(place("versions"), kind);
        }
    }
}

/// Versions that build on each other in a circle. Only the members of the circle report it, each from its own place.
fn version_circles(
    item: &Recipe,
    known: &BTreeSet<&VersionId>,
    bases: &[Option<usize>],
    list: &mut Checklist,
) {
    let place = |version: &Version| Place::Version(item.id.clone(), version.id.clone());
    for version in &item.versions {
        if let Some(base) = &version.builds_on {
            list.dangling_version(place(version), item, base, known);
        }
    }
    let mut circle_of: Vec<Option<Vec<usize>>> = vec![None; bases.len()];
    for circle in circles(bases) {
        let reported = if circle.len() > REPORTED_BY_EACH {
            1
        } else {
            circle.len()
        };
        for first in 0..reported {
            let mut turned = circle.clone();
            turned.rotate_left(first);
            circle_of[circle[first]] = Some(turned);
        }
    }
    for (version, circle) in item.versions.iter().zip(circle_of) {
        if let Some(circle) = circle {
            let chain = circle
                .iter()
                .chain(circle.first())
                .map(|index| item.versions[*index].id.to_string())
                .collect();
            list.error(place(version), FindingKind::VersionCycle { chain });
        }
    }
}

/// The circles of a graph in which each node has at most one way on.
fn circles(bases: &[Option<usize>]) -> Vec<Vec<usize>> {
    let mut walk_of: Vec<Option<usize>> = vec![None; bases.len()];
    let mut circles = Vec::new();
    for start in 0..bases.len() {
        let mut path = Vec::new();
        let mut next = Some(start);
        while let Some(index) = next.filter(|index| walk_of[*index].is_none()) {
            walk_of[index] = Some(start);
            path.push(index);
            next = bases[index];
        }
        // The walk ended where it had been itself: from there on it goes round.
        if let Some(entry) = next.filter(|index| walk_of[*index] == Some(start))
            && let Some(at) = path.iter().position(|index| *index == entry)
        {
            circles.push(path.split_off(at));
        }
    }
    circles
}

fn changed(book: &Book, item: &Recipe, version: &Version, change: &Change, list: &mut Checklist) {
    let at = |line: &LineId| Place::Line(item.id.clone(), Some(version.id.clone()), line.clone());
    match change {
        Change::Ingredient(id, ingredient) => {
            list.dangling(at(id), IdKind::Ingredient, &book.ingredients, ingredient);
        }
        Change::Amount(id, to) => amount(book, at(id), to, list),
        Change::Temperature(id, Some(stated)) => {
            let what = FigureName::Temperature;
            list.temperature_in_range(&at(id), &what, *stated, FOOD_TEMPERATURE);
        }
        Change::MenuPrice(Some(price)) => {
            let at = Place::Version(item.id.clone(), version.id.clone());
            list.in_range(at, FigureName::MenuPrice, *price, PRICES);
        }
        Change::SugarLevel(Some(percent)) => {
            let at = Place::Version(item.id.clone(), version.id.clone());
            list.in_range(at, FigureName::SugarLevel, *percent, LEVEL);
        }
        Change::DrinkingTemperature(Some(celsius)) => {
            let at = Place::Version(item.id.clone(), version.id.clone());
            let what = FigureName::DrinkingTemperature;
            list.in_range(at, what, *celsius, DRINKING_TEMPERATURE);
        }
        Change::Add(_, Entry::Line(added)) => line(book, item, Some(version), added, list),
        _ => {}
    }
}

fn line(book: &Book, item: &Recipe, version: Option<&Version>, found: &Line, list: &mut Checklist) {
    let place = || {
        Place::Line(
            item.id.clone(),
            version.map(|version| version.id.clone()),
            found.id.clone(),
        )
    };
    list.dangling(
        place(),
        IdKind::Ingredient,
        &book.ingredients,
        &found.ingredient,
    );
    amount(book, place(), &found.amount, list);
    let item = book.ingredient(&found.ingredient);
    if found.stage == Stage::Steeped && item.is_some_and(|item| item.form != Form::Leaf) {
        list.warning(place(), FindingKind::NotALeaf);
    }
    if let Some(stated) = found.temperature {
        let what = FigureName::Temperature;
        list.temperature_in_range(&place(), &what, stated, FOOD_TEMPERATURE);
    }
    if let Some(carried) = &found.carried {
        list.dangling(
            place(),
            IdKind::Ingredient,
            &book.ingredients,
            &carried.ingredient,
        );
        let what = FigureName::CarriedSyrup;
        list.in_range(place(), what, carried.grams, CARRIED_SYRUP);
    }
}

pub(super) fn amount(book: &Book, place: Place, amount: &Amount, list: &mut Checklist) {
    if let Some(number) = amount.number() {
        let unit = match amount {
            Amount::Grams(_) => "g",
            Amount::Millilitres(_) | Amount::FillTo(_) => "ml",
            Amount::FillToRim | Amount::Count(..) => "",
        };
        let range = FigureRange::new(0.0, LARGEST_AMOUNT, unit);
        list.in_range(place.clone(), FigureName::Amount, number, range);
    }
    if let Amount::Count(_, measure) = amount {
        list.dangling(place, IdKind::Measure, &book.measures, measure);
    }
}
