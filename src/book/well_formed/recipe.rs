//! Checks of a recipe, its versions and its approvals.

use std::collections::{BTreeMap, BTreeSet};

use super::checklist::Checklist;
use super::counter::{PRICES, PRICES_IN_WORDS};
use crate::book::{
    Amount, Book, Change, Entry, FindingKind, Form, Line, LineId, Place, Recipe, Stage, Version,
    VersionId, resolve,
};

/// Largest amount of one line, in g, ml or uses: ten litres are more than any cup of a counter holds.
pub(crate) const LARGEST_AMOUNT: f64 = 10_000.0;

/// Circles with more members are reported once, not from the place of each member.
const REPORTED_BY_EACH: usize = 20;

pub(super) fn check(book: &Book, item: &Recipe, list: &mut Checklist) {
    duplicate_ids(item, list);
    list.name(Place::Recipe(item.id.clone(), "name"), &item.name);
    if let Some(price) = item.menu_price {
        let at = Place::Recipe(item.id.clone(), "menu_price");
        list.in_range(at, "the menu price", price, PRICES, PRICES_IN_WORDS);
    }
    if let Some(celsius) = item.drinking_temperature {
        let at = Place::Recipe(item.id.clone(), "drinking_temperature");
        let what = "the drinking temperature";
        list.in_range(at, what, celsius, (-10.0, 100.0), "−10 to 100 °C");
    }
    let known: BTreeSet<&VersionId> = item.versions.iter().map(|version| &version.id).collect();
    let bases = bases(item);
    version_circles(item, &known, &bases, list);
    resolved(book, item, None, 0, list);
    for (version, lineage) in item.versions.iter().zip(lineages(item, &bases)) {
        resolved(book, item, Some(version), lineage.work(item), list);
    }
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
}

/// For each version the index of the one that it builds on.
fn bases(item: &Recipe) -> Vec<Option<usize>> {
    let mut index_of = BTreeMap::new();
    for (index, version) in item.versions.iter().enumerate() {
        index_of.entry(&version.id).or_insert(index);
    }
    item.versions
        .iter()
        .map(|version| index_of.get(version.builds_on.as_ref()?).copied())
        .collect()
}

/// What stands behind a version: how many versions, and how many changes they have together.
#[derive(Clone, Copy, Default)]
struct Lineage {
    depth: u64,
    changes: u64,
}

impl Lineage {
    /// What it takes to resolve the version: the lineage looks through itself and, for each member, through the versions; each
    /// change looks through the entries, of which it may add one.
    fn work(self, item: &Recipe) -> u64 {
        let (entries, versions) = (item.entries.len() as u64, item.versions.len() as u64);
        let finding = self
            .depth
            .saturating_mul(self.depth.saturating_add(versions));
        finding.saturating_add(entries).saturating_add(
            self.changes
                .saturating_mul(entries.saturating_add(self.changes)),
        )
    }
}

/// The lineage of each version, in as many steps as there are versions. Versions in a circle, and on one, count as if all of
/// them stood behind each.
fn lineages(item: &Recipe, bases: &[Option<usize>]) -> Vec<Lineage> {
    let all = Lineage {
        depth: bases.len() as u64,
        changes: item
            .versions
            .iter()
            .map(|version| version.changes.len() as u64)
            .sum(),
    };
    let mut known: Vec<Option<Lineage>> = vec![None; bases.len()];
    let mut is_on_path = vec![false; bases.len()];
    for start in 0..bases.len() {
        let mut path = Vec::new();
        let mut next = Some(start);
        while let Some(index) = next.filter(|index| known[*index].is_none() && !is_on_path[*index])
        {
            is_on_path[index] = true;
            path.push(index);
            next = bases[index];
        }
        let mut behind = next.map_or_else(Lineage::default, |index| known[index].unwrap_or(all));
        for index in path.into_iter().rev() {
            is_on_path[index] = false;
            behind.depth += 1;
            behind.changes += item.versions[index].changes.len() as u64;
            known[index] = Some(behind);
        }
    }
    known
        .into_iter()
        .map(|lineage| lineage.unwrap_or(all))
        .collect()
}

/// Checks what a version comes to when its changes are carried out.
fn resolved(
    book: &Book,
    item: &Recipe,
    version: Option<&Version>,
    work: u64,
    list: &mut Checklist,
) {
    let whole = || match version {
        None => Place::Recipe(item.id.clone(), "lines"),
        Some(version) => Place::Version(item.id.clone(), version.id.clone()),
    };
    if !list.may_take(work) {
        return list.warning(
            Place::Recipe(item.id.clone(), "versions"),
            FindingKind::TooManyToCheck,
        );
    }
    let (resolved, resolve_findings) = resolve(item, version.map(|version| &version.id));
    // A missing version is reported elsewhere, with the ids that look like it.
    let from_changes = |kind: &FindingKind| !matches!(kind, FindingKind::Dangling { .. });
    for finding in resolve_findings
        .into_iter()
        .filter(|finding| from_changes(&finding.kind))
    {
        list.push(finding);
    }
    if resolved.lines().filter(|line| line.amount.fills()).count() > 1 {
        list.error(whole(), FindingKind::SeveralFillAmounts);
    }
    let vessels = [&resolved.cup, &resolved.shaker];
    for id in vessels.into_iter().flatten() {
        list.dangling(whole(), "vessel", &book.vessels, id);
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
                "ingredient",
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
            list.dangling(at(id), "ingredient", &book.ingredients, ingredient);
        }
        Change::Amount(id, to) => amount(book, at(id), to, list),
        Change::Temperature(id, Some(celsius)) => {
            list.in_range(
                at(id),
                "the temperature",
                *celsius,
                (-40.0, 100.0),
                "−40 to 100 °C",
            );
        }
        Change::MenuPrice(Some(price)) => {
            let at = Place::Version(item.id.clone(), version.id.clone());
            list.in_range(at, "the menu price", *price, PRICES, PRICES_IN_WORDS);
        }
        Change::DrinkingTemperature(Some(celsius)) => {
            let at = Place::Version(item.id.clone(), version.id.clone());
            let what = "the drinking temperature";
            list.in_range(at, what, *celsius, (-10.0, 100.0), "−10 to 100 °C");
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
    list.dangling(place(), "ingredient", &book.ingredients, &found.ingredient);
    amount(book, place(), &found.amount, list);
    let item = book.ingredient(&found.ingredient);
    if found.stage == Stage::Steeped && item.is_some_and(|item| item.form != Form::Leaf) {
        list.warning(place(), FindingKind::NotALeaf);
    }
    if let Some(celsius) = found.temperature {
        list.in_range(
            place(),
            "the temperature",
            celsius,
            (-40.0, 100.0),
            "−40 to 100 °C",
        );
    }
    if let Some(carried) = &found.carried {
        list.dangling(
            place(),
            "ingredient",
            &book.ingredients,
            &carried.ingredient,
        );
        list.in_range(
            place(),
            "the syrup that comes along",
            carried.grams,
            (0.0, 1000.0),
            "0 to 1000 g",
        );
    }
}

fn amount(book: &Book, place: Place, amount: &Amount, list: &mut Checklist) {
    if let Some(number) = amount.number() {
        list.in_range(
            place.clone(),
            "the amount",
            number,
            (0.0, LARGEST_AMOUNT),
            "0 to 10 000",
        );
    }
    if let Amount::Count(_, measure) = amount {
        list.dangling(place, "measure", &book.measures, measure);
    }
}
