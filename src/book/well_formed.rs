//! Everything that is wrong with a book, in the order of the book.

use std::collections::BTreeSet;

use super::{
    Amount, Book, Change, Composition, Entry, Figure, Finding, FindingKind, Ingredient, Item, Line, LineId, Measure,
    MeasureKind, Nominal, Nutrient, Place, Recipe, Severity, Shelf, SugarProfile, VersionId, Vessel, resolve,
};

/// Largest amount of one line, in g, ml or uses: ten litres are more than any cup of a counter holds.
const LARGEST_AMOUNT: f64 = 10_000.0;

/// How far a spoon may be from what it is called before the check says so.
const SPOON_TOLERANCE: f64 = 0.15;

/// Volumes that a spoon is usually called by, ml: metric 5 and 15 (and the US labelling values, 21 CFR 101.9(b)(5)(viii)).
const CALLED_SPOONS: [f64; 2] = [5.0, 15.0];

/// Every finding of a book.
pub fn findings(book: &Book) -> Vec<Finding> {
    let mut findings = Vec::new();
    settings(book, &mut findings);
    for item in &book.ingredients {
        ingredient(book, item, &mut findings);
    }
    for item in &book.measures {
        measure(book, item, &mut findings);
    }
    for item in &book.vessels {
        vessel(item, &mut findings);
    }
    for item in &book.recipes {
        recipe(book, item, &mut findings);
    }
    house_made_cycles(book, &mut findings);
    findings
}

fn settings(book: &Book, findings: &mut Vec<Finding>) {
    let settings = &book.settings;
    for (what, celsius) in [
        ("the room temperature", settings.room_temperature),
        ("the refrigerator temperature", settings.refrigerator_temperature),
        ("the hot drinking temperature", settings.hot_drinking_temperature),
        ("the iced drinking temperature", settings.iced_drinking_temperature),
    ] {
        in_range(findings, Place::Settings, what, celsius, (-10.0, 100.0), "−10 to 100 °C");
    }
    in_range(findings, Place::Settings, "the ice temperature", settings.ice_temperature, (-40.0, 0.0), "−40 to 0 °C");
    let bulk = settings.ice_bulk_density;
    in_range(findings, Place::Settings, "the bulk density of ice", bulk, (0.2, 0.917), "0.2 to 0.917 g/ml");
    if let Some(rate) = settings.ice_melt_rate {
        in_range(findings, Place::Settings, "the melt rate of ice", rate, (0.0, 100.0), "0 to 100 g/min");
    }
    for step in &settings.steps {
        let what = format!("the noticeable step of {}", step.axis.word());
        in_range(findings, Place::Settings, &what, step.fraction, (0.0, 2.0), "0 to 2");
        in_range(findings, Place::Settings, &what, step.floor, (0.0, 1000.0), "0 or more");
        if step.fraction <= 0.0 && step.floor <= 0.0 {
            out_of_range(findings, Place::Settings, what, "0".to_owned(), "a fraction or a floor above 0");
        }
    }
}

fn ingredient(book: &Book, item: &Ingredient, findings: &mut Vec<Finding>) {
    let place = |field| Place::Ingredient(item.id.clone(), field);
    composition(item, &item.composition, findings);
    for (field, figure, expected, range) in [
        ("density", item.density, "0.5 to 2 g/ml", (0.5, 2.0)),
        ("bulk density", item.bulk_density, "0.02 to 1.6 g/ml", (0.02, 1.6)),
    ] {
        if let Some(figure) = figure {
            in_range(findings, place(field), &format!("the {field}"), figure.value, range, expected);
            uncertainty(findings, place(field), figure);
        }
    }
    if let Some(celsius) = item.temperature {
        in_range(findings, place("temperature"), "the temperature", celsius, (-40.0, 100.0), "−40 to 100 °C");
    }
    if let Some(price) = &item.price {
        in_range(findings, place("price"), "the price of a pack", price.pack, (0.0, 1e6), "0 or more");
        in_range(findings, place("price"), "the content of a pack", price.grams, (1e-3, 1e7), "more than 0 g");
        in_range(findings, place("price"), "waste", price.waste_percent, (0.0, 99.0), "0 to 99 %");
        date(findings, place("price"), price.date.as_deref());
    }
    if let Some(made) = &item.house_made {
        dangling(findings, place("house_made"), "recipe", &book.recipes, &made.recipe);
        in_range(findings, place("house_made"), "the yield", made.yield_grams.value, (1e-3, 1e6), "more than 0 g");
        in_range(findings, place("house_made"), "waste", made.waste_percent, (0.0, 99.0), "0 to 99 %");
    }
}

fn composition(item: &Ingredient, composition: &Composition, findings: &mut Vec<Finding>) {
    let place = || Place::Ingredient(item.id.clone(), "composition");
    for (nutrient, figure) in &composition.figures {
        let (range, expected) = match nutrient {
            Nutrient::Energy => ((0.0, 4000.0), "0 to 4000 kJ"),
            Nutrient::Caffeine => ((0.0, 100_000.0), "0 to 100 000 mg"),
            // A syrup per 100 ml or a serving may hold more than 100 g in its basis.
            _ => ((0.0, 200.0), "0 to 200 g"),
        };
        in_range(findings, place(), nutrient.word(), figure.value, range, expected);
        uncertainty(findings, place(), *figure);
    }
    let value = |nutrient| composition.get(nutrient).map(|figure: Figure| figure.value);
    for (part, whole) in [(Nutrient::Sugars, Nutrient::Carbohydrate), (Nutrient::Saturates, Nutrient::Fat)] {
        if let (Some(part_value), Some(whole_value)) = (value(part), value(whole))
            && part_value > whole_value
        {
            let kind =
                FindingKind::PartOverWhole { part: part.word(), part_value, whole: whole.word(), whole_value };
            findings.push(Finding::warning(place(), kind));
        }
    }
    let solids = [Nutrient::Fat, Nutrient::Carbohydrate, Nutrient::Protein, Nutrient::Salt];
    let sum: f64 = solids.iter().filter_map(|nutrient| value(*nutrient)).sum();
    // Each printed figure may be rounded up by half a unit.
    if composition.basis == super::Basis::Per100Grams && sum > 102.0 {
        let parts = "fat, carbohydrate, protein and salt";
        findings.push(Finding::warning(place(), FindingKind::SumOver100 { parts, sum }));
    }
    if let Some(SugarProfile::Own { sucrose, glucose, fructose, lactose, maltose, other }) = composition.sugar_profile
    {
        let fractions = [sucrose, glucose, fructose, lactose, maltose, other];
        let sum: f64 = fractions.iter().sum();
        if fractions.iter().any(|fraction| *fraction < 0.0) || (sum - 1.0).abs() > 0.011 {
            let what = "the sum of the sugar fractions".to_owned();
            out_of_range(findings, place(), what, format!("{sum:.3}"), "fractions of 0 or more that sum to 1");
        }
    }
    if let Some(SugarProfile::GlucoseSyrup { dextrose_equivalent }) = composition.sugar_profile {
        in_range(findings, place(), "the dextrose equivalent", dextrose_equivalent, (0.0, 100.0), "0 to 100");
    }
    if let Some(fraction) = composition.free_sugar_fraction {
        in_range(findings, place(), "the free part of the sugars", fraction, (0.0, 1.0), "0 to 1");
    }
}

fn measure(book: &Book, item: &Measure, findings: &mut Vec<Finding>) {
    let place = |field| Place::Measure(item.id.clone(), field);
    match item.nominal {
        Some(Nominal::Volume(millilitres)) => {
            in_range(findings, place("nominal"), "its volume", millilitres, (0.01, 5000.0), "0.01 to 5000 ml");
        }
        Some(Nominal::Mass(grams)) => {
            in_range(findings, place("nominal"), "its mass", grams, (0.01, 5000.0), "0.01 to 5000 g");
        }
        None => {}
    }
    if let Some(increment) = item.increment {
        in_range(findings, place("increment"), "the increment", increment, (0.01, 100.0), "0.01 to 100 uses");
    }
    for reading in &item.readings {
        if let Some(id) = &reading.ingredient {
            dangling(findings, place("readings"), "ingredient", &book.ingredients, id);
        }
        in_range(findings, place("readings"), "a reading", reading.grams, (1e-3, 1e5), "more than 0 g");
        in_range(findings, place("readings"), "uses in a reading", f64::from(reading.uses), (1.0, 1e4), "1 or more");
        date(findings, place("readings"), reading.date.as_deref());
    }
    if item.readings.is_empty() && item.kind != MeasureKind::Button {
        findings.push(Finding::warning(place("readings"), FindingKind::NeverCalibrated));
    }
    if let Some(spoon) = implausible_spoon(book, item) {
        let Spoon { nominal_ml, found_ml } = spoon;
        let kind = FindingKind::SpoonNotAsCalled { name: item.name.clone(), nominal_ml, found_ml };
        findings.push(Finding::warning(place("readings"), kind));
    }
}

/// A spoon whose readings do not agree with what it is called.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spoon {
    /// What it is called to hold, ml.
    pub nominal_ml: f64,
    /// What it holds by its readings, ml.
    pub found_ml: f64,
}

/// Compares a spoon called 5 or 15 ml with its readings; `None` when they agree within 15 % or say nothing of volume.
pub fn implausible_spoon(book: &Book, item: &Measure) -> Option<Spoon> {
    let Some(Nominal::Volume(nominal_ml)) = item.nominal else { return None };
    if item.kind != MeasureKind::Spoon || !CALLED_SPOONS.iter().any(|called| (called - nominal_ml).abs() < 0.25) {
        return None;
    }
    let volumes = item.readings.iter().filter_map(|reading| {
        let density = match &reading.ingredient {
            None => Some(1.0),
            Some(id) => book.ingredient(id).and_then(|found| {
                if found.form.is_dry() { found.bulk_density } else { found.density }.map(|figure| figure.value)
            }),
        }?;
        (density > 0.0 && reading.uses > 0).then(|| reading.grams / f64::from(reading.uses) / density)
    });
    let off = |found_ml: &f64| (found_ml / nominal_ml - 1.0).abs() > SPOON_TOLERANCE;
    volumes.into_iter().find(off).map(|found_ml| Spoon { nominal_ml, found_ml })
}

fn vessel(item: &Vessel, findings: &mut Vec<Finding>) {
    let place = |field| Place::Vessel(item.id.clone(), field);
    in_range(findings, place("capacity"), "the capacity", item.capacity, (1.0, 20_000.0), "1 to 20 000 ml");
    for (field, value, range, expected) in [
        ("mass", item.mass, (0.0, 5000.0), "0 to 5000 g"),
        ("specific_heat", item.specific_heat, (0.0, 5.0), "0 to 5 kJ/(kg K)"),
        ("temperature", item.temperature, (-40.0, 100.0), "−40 to 100 °C"),
        ("cooling_minutes", item.cooling_minutes, (0.5, 2000.0), "0.5 to 2000 min"),
        ("price", item.price, (0.0, 1e5), "0 or more"),
    ] {
        if let Some(value) = value {
            in_range(findings, place(field), &format!("the {}", field.replace('_', " ")), value, range, expected);
        }
    }
    if let Some(run) = &item.cooling_run {
        let at = || place("cooling_run");
        in_range(findings, at(), "the room temperature", run.room, (-10.0, 60.0), "−10 to 60 °C");
        if let Some(millilitres) = run.millilitres {
            in_range(findings, at(), "the volume", millilitres, (1.0, 20_000.0), "1 to 20 000 ml");
        }
        for reading in &run.readings {
            in_range(findings, at(), "the time of a reading", reading.minutes, (0.0, 1440.0), "0 to 1440 min");
            in_range(findings, at(), "a reading", reading.celsius, (-10.0, 110.0), "−10 to 110 °C");
        }
    }
    if let Some(shape) = item.shape {
        for (what, millimetres) in
            [("the height", shape.height), ("the bottom", shape.bottom), ("the top", shape.top)]
        {
            in_range(findings, place("shape"), what, millimetres, (1.0, 1000.0), "1 to 1000 mm");
        }
    }
    for closure in &item.closures {
        let room = closure.head_room;
        in_range(findings, place("closures"), "the head room", room, (0.0, item.capacity), "0 to the capacity");
    }
}

fn recipe(book: &Book, item: &Recipe, findings: &mut Vec<Finding>) {
    duplicate_ids(item, findings);
    version_cycles(item, findings);
    let versions = item.versions.iter().map(|version| Some(version.id.clone()));
    for version in std::iter::once(None).chain(versions) {
        let (resolved, resolve_findings) = resolve(item, version.as_ref());
        // A missing version is reported below, with the ids that look like it.
        let from_changes = |finding: &Finding| !matches!(finding.kind, FindingKind::Dangling { .. });
        for finding in resolve_findings.into_iter().filter(from_changes) {
            push_once(findings, finding);
        }
        let whole = || match &version {
            None => Place::Recipe(item.id.clone(), "lines"),
            Some(version) => Place::Version(item.id.clone(), version.clone()),
        };
        if resolved.lines().filter(|line| line.amount.fills()).count() > 1 {
            findings.push(Finding::error(whole(), FindingKind::SeveralFillAmounts));
        }
        let vessels = [&resolved.cup, &resolved.shaker];
        for id in vessels.into_iter().flatten() {
            dangling(findings, whole(), "vessel", &book.vessels, id);
        }
    }
    for entry in &item.entries {
        if let Entry::Line(found) = entry {
            line(book, item, None, found, findings);
        }
    }
    for version in &item.versions {
        for change in &version.changes {
            changed(book, item, version, change, findings);
        }
    }
    for (at, approval) in item.approvals.iter().enumerate() {
        let place = Place::Approval(item.id.clone(), at + 1);
        date(findings, place.clone(), Some(&approval.date));
        if let Some(id) = &approval.version {
            dangling_version(findings, place.clone(), item, id);
        }
        for approved in approval.resolved.lines() {
            dangling(findings, place.clone(), "ingredient", &book.ingredients, &approved.ingredient);
        }
    }
}

fn duplicate_ids(item: &Recipe, findings: &mut Vec<Finding>) {
    let place = |field| Place::Recipe(item.id.clone(), field);
    let mut seen = BTreeSet::new();
    for entry in &item.entries {
        if !seen.insert(entry.id().clone()) {
            findings.push(Finding::error(
                place("lines"),
                FindingKind::DuplicateInRecipe { id: entry.id().to_string() },
            ));
        }
    }
    let mut seen = BTreeSet::new();
    for version in &item.versions {
        if !seen.insert(version.id.clone()) {
            let kind = FindingKind::DuplicateInRecipe { id: version.id.to_string() };
            findings.push(Finding::error(place("versions"), kind));
        }
    }
}

fn version_cycles(item: &Recipe, findings: &mut Vec<Finding>) {
    for version in &item.versions {
        let place = Place::Version(item.id.clone(), version.id.clone());
        if let Some(base) = &version.builds_on {
            dangling_version(findings, place.clone(), item, base);
        }
        let chain: Vec<String> =
            item.lineage(Some(&version.id)).into_iter().flatten().map(|id| id.to_string()).collect();
        let last = chain.last().and_then(|id| item.versions.iter().find(|version| version.id.as_str() == id));
        let back_to = last.and_then(|last| last.builds_on.as_ref()).map(ToString::to_string);
        // Only the members of the circle report it, each from its own place.
        if back_to.as_deref() == Some(version.id.as_str()) {
            let chain = chain.into_iter().chain(back_to).collect();
            findings.push(Finding::error(place, FindingKind::VersionCycle { chain }));
        }
    }
}

fn changed(book: &Book, item: &Recipe, version: &super::Version, change: &Change, findings: &mut Vec<Finding>) {
    let at = |line: &LineId| Place::Line(item.id.clone(), Some(version.id.clone()), line.clone());
    match change {
        Change::Ingredient(id, ingredient) => {
            dangling(findings, at(id), "ingredient", &book.ingredients, ingredient);
        }
        Change::Amount(id, to) => amount(book, at(id), to, findings),
        Change::Temperature(id, Some(celsius)) => {
            in_range(findings, at(id), "the temperature", *celsius, (-40.0, 100.0), "−40 to 100 °C");
        }
        Change::Add(_, Entry::Line(added)) => line(book, item, Some(version), added, findings),
        _ => {}
    }
}

fn line(
    book: &Book,
    item: &Recipe,
    version: Option<&super::Version>,
    found: &Line,
    findings: &mut Vec<Finding>,
) {
    let place = || Place::Line(item.id.clone(), version.map(|version| version.id.clone()), found.id.clone());
    dangling(findings, place(), "ingredient", &book.ingredients, &found.ingredient);
    amount(book, place(), &found.amount, findings);
    if let Some(celsius) = found.temperature {
        in_range(findings, place(), "the temperature", celsius, (-40.0, 100.0), "−40 to 100 °C");
    }
    if let Some(carried) = &found.carried {
        dangling(findings, place(), "ingredient", &book.ingredients, &carried.ingredient);
        in_range(findings, place(), "the syrup that comes along", carried.grams, (0.0, 1000.0), "0 to 1000 g");
    }
}

fn amount(book: &Book, place: Place, amount: &Amount, findings: &mut Vec<Finding>) {
    if let Some(number) = amount.number() {
        in_range(findings, place.clone(), "the amount", number, (0.0, LARGEST_AMOUNT), "0 to 10 000");
    }
    if let Amount::Count(_, measure) = amount {
        dangling(findings, place, "measure", &book.measures, measure);
    }
}

fn house_made_cycles(book: &Book, findings: &mut Vec<Finding>) {
    for item in &book.ingredients {
        if let Some(chain) = cycle_through(book, item) {
            let place = Place::Ingredient(item.id.clone(), "house_made");
            findings.push(Finding::error(place, FindingKind::HouseMadeCycle { chain }));
        }
    }
}

/// The chain of house-made ingredients that leads from this one back to itself.
fn cycle_through(book: &Book, start: &Ingredient) -> Option<Vec<String>> {
    let mut stack = vec![(start, vec![start.id.to_string()])];
    let mut seen = BTreeSet::new();
    while let Some((item, chain)) = stack.pop() {
        let Some(recipe) = item.house_made.as_ref().and_then(|made| book.recipe(&made.recipe)) else { continue };
        for line in recipe.entries.iter().filter_map(Entry::line) {
            let mut longer = chain.clone();
            longer.push(line.ingredient.to_string());
            if line.ingredient == start.id {
                return Some(longer);
            }
            if seen.insert(line.ingredient.clone())
                && let Some(next) = book.ingredient(&line.ingredient)
            {
                stack.push((next, longer));
            }
        }
    }
    None
}

fn uncertainty(findings: &mut Vec<Finding>, place: Place, figure: Figure) {
    if let Some(u) = figure.u {
        in_range(findings, place, "an uncertainty", u, (0.0, 1e6), "0 or more");
    }
}

fn in_range(
    findings: &mut Vec<Finding>,
    place: Place,
    what: &str,
    value: f64,
    range: (f64, f64),
    expected: &'static str,
) {
    if !(range.0..=range.1).contains(&value) {
        out_of_range(findings, place, what.to_owned(), value.to_string(), expected);
    }
}

fn out_of_range(findings: &mut Vec<Finding>, place: Place, what: String, found: String, expected: &'static str) {
    findings.push(Finding::error(place, FindingKind::OutOfRange { what, found, expected }));
}

fn date(findings: &mut Vec<Finding>, place: Place, text: Option<&str>) {
    if let Some(text) = text
        && !is_date(text)
    {
        let kind = FindingKind::NoDate { found: text.escape_debug().to_string() };
        findings.push(Finding { severity: Severity::Warning, place, kind });
    }
}

/// Whether a text is a day of the Gregorian calendar as ISO 8601 writes it, `2026-05-04`.
fn is_date(text: &str) -> bool {
    let parts: Vec<&str> = text.split('-').collect();
    let [year, month, day] = parts.as_slice() else { return false };
    if (year.len(), month.len(), day.len()) != (4, 2, 2) {
        return false;
    }
    let (Ok(year), Ok(month), Ok(day)) = (year.parse::<u32>(), month.parse::<u32>(), day.parse::<u32>()) else {
        return false;
    };
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    let days = match month {
        2 => 28 + u32::from(leap),
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    };
    (1..=12).contains(&month) && (1..=days).contains(&day)
}

fn dangling<T: Item>(findings: &mut Vec<Finding>, place: Place, kind: &'static str, shelf: &Shelf<T>, id: &T::Id)
where
    T::Id: AsRef<str>,
{
    if !shelf.contains(id) {
        let nearest = nearest(id.as_ref(), shelf.iter().map(|item| item.id().as_ref()));
        push_once(findings, Finding::error(place, FindingKind::Dangling { kind, id: id.as_ref().to_owned(), nearest }));
    }
}

fn dangling_version(findings: &mut Vec<Finding>, place: Place, item: &Recipe, id: &VersionId) {
    if item.version(id).is_none() {
        let nearest = nearest(id.as_ref(), item.versions.iter().map(|version| version.id.as_ref()));
        let kind = FindingKind::Dangling { kind: "version", id: id.to_string(), nearest };
        push_once(findings, Finding::error(place, kind));
    }
}

/// The same finding may come from a recipe and from each of its versions.
fn push_once(findings: &mut Vec<Finding>, finding: Finding) {
    if !findings.contains(&finding) {
        findings.push(finding);
    }
}

/// The ids that look most like a mistyped one, at most three.
pub fn nearest<'book>(id: &str, known: impl Iterator<Item = &'book str>) -> Vec<String> {
    let mut near: Vec<(usize, &str)> = known
        .map(|other| (edit_distance(id, other), other))
        .filter(|(distance, other)| *distance <= 2.max(id.len() / 4) || other.contains(id) || id.contains(other))
        .collect();
    near.sort_unstable();
    near.into_iter().take(3).map(|(_, other)| other.to_owned()).collect()
}

/// Levenshtein distance between two ids (ASCII, so bytes are characters).
fn edit_distance(one: &str, other: &str) -> usize {
    let other = other.as_bytes();
    let mut row: Vec<usize> = (0..=other.len()).collect();
    for (i, a) in one.bytes().enumerate() {
        let mut diagonal = row[0];
        row[0] = i + 1;
        for (j, b) in other.iter().enumerate() {
            let replaced = diagonal + usize::from(a != *b);
            diagonal = row[j + 1];
            row[j + 1] = replaced.min(row[j] + 1).min(row[j + 1] + 1);
        }
    }
    row[other.len()]
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_days_of_the_calendar_are_dates() {
        assert!(is_date("2026-05-04") && is_date("2024-02-29") && is_date("2000-02-29"));
        for text in ["2026-02-29", "1900-02-29", "2026-13-01", "2026-00-01", "2026-1-1", "yesterday", ""] {
            assert!(!is_date(text), "{text}");
        }
    }

    #[test]
    fn a_mistyped_id_finds_its_neighbours() {
        let known = ["pear-syrup", "plum-syrup", "oolong"];
        assert_eq!(nearest("paer-syrup", known.into_iter()), ["pear-syrup"]);
        assert_eq!(nearest("quite-different", known.into_iter()), Vec::<String>::new());
        assert_eq!(edit_distance("kitten", "sitting"), 3);
    }
}
