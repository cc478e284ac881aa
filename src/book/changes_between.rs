//! What changed from one state of a recipe's lines to another, as the changes that lead from one to the other.

use super::{Change, Entry, Line, LineId, Resolved};

/// Two states of a recipe's lines and what leads from the first to the second.
#[derive(Clone, Debug, PartialEq)]
pub struct Differences {
    /// The first state.
    pub before: Resolved,
    /// The second state.
    pub after: Resolved,
    /// Carried out one after the other they make the first state the second, but for a cup that was taken away.
    pub changes: Vec<Change>,
    /// The first state has a cup and the second has none, which no change of a version can say.
    pub cup_taken_away: bool,
}

/// Compares two states. Lines are the same when they have the same id.
pub fn differences_between(before: &Resolved, after: &Resolved) -> Differences {
    let mut changes = Vec::new();
    let kept = |entry: &&Entry| {
        after
            .entries
            .iter()
            .any(|other| is_same_entry(entry, other))
    };
    let staying: Vec<&Entry> = before.entries.iter().filter(kept).collect();
    let gone = before.entries.iter().filter(|entry| !kept(entry));
    changes.extend(gone.map(|entry| Change::Remove(entry.id().clone())));
    for entry in &staying {
        if let Some(other) = after
            .entries
            .iter()
            .find(|other| is_same_entry(entry, other))
        {
            field_changes(entry, other, &mut changes);
        }
    }
    order_changes(&staying, &after.entries, &mut changes);
    if let Some(cup) = after
        .cup
        .as_ref()
        .filter(|cup| before.cup.as_ref() != Some(cup))
    {
        changes.push(Change::Cup(cup.clone()));
    }
    if before.shaker != after.shaker {
        changes.push(Change::Shaker(after.shaker.clone()));
    }
    if before.strained != after.strained {
        changes.push(Change::Strained(after.strained));
    }
    if before.drinking_temperature != after.drinking_temperature {
        changes.push(Change::DrinkingTemperature(after.drinking_temperature));
    }
    if before.menu_price != after.menu_price {
        changes.push(Change::MenuPrice(after.menu_price));
    }
    if before.sugar_level != after.sugar_level {
        changes.push(Change::SugarLevel(after.sugar_level));
    }
    let cup_taken_away = before.cup.is_some() && after.cup.is_none();
    Differences {
        before: before.clone(),
        after: after.clone(),
        changes,
        cup_taken_away,
    }
}

/// The same id, and still a line or still an instruction.
fn is_same_entry(one: &Entry, other: &Entry) -> bool {
    one.id() == other.id() && one.line().is_some() == other.line().is_some()
}

fn field_changes(before: &Entry, after: &Entry, changes: &mut Vec<Change>) {
    let (before, after) = match (before, after) {
        (Entry::Line(before), Entry::Line(after)) => (before, after),
        (Entry::Instruction(before), Entry::Instruction(after)) => {
            if before.text != after.text {
                changes.push(Change::Instruction(after.id.clone(), after.text.clone()));
            }
            return;
        }
        _ => return,
    };
    let Line {
        id,
        ingredient,
        amount,
        temperature,
        role,
        stage,
        carried,
        note,
    } = after;
    let fields = [
        (before.ingredient != *ingredient)
            .then(|| Change::Ingredient(id.clone(), ingredient.clone())),
        (before.amount != *amount).then(|| Change::Amount(id.clone(), amount.clone())),
        (before.temperature != *temperature).then(|| Change::Temperature(id.clone(), *temperature)),
        (before.role != *role).then(|| Change::Role(id.clone(), *role)),
        (before.stage != *stage).then(|| Change::Stage(id.clone(), *stage)),
        (before.carried != *carried).then(|| Change::Carried(id.clone(), carried.clone())),
        (before.note != *note).then(|| Change::Note(id.clone(), note.clone())),
    ];
    changes.extend(fields.into_iter().flatten());
}

/// Adds what is new and moves what has another place. As many entries as possible stay where they are.
fn order_changes(staying: &[&Entry], after: &[Entry], changes: &mut Vec<Change>) {
    let places: Vec<Option<usize>> = after
        .iter()
        .map(|entry| staying.iter().position(|other| is_same_entry(other, entry)))
        .collect();
    let unmoved = longest_rising(&places);
    let mut behind: Option<&LineId> = None;
    for (at, entry) in after.iter().enumerate() {
        if places[at].is_none() {
            changes.push(Change::Add(behind.cloned(), entry.clone()));
        } else if !unmoved.contains(&at) {
            changes.push(Change::Move(entry.id().clone(), behind.cloned()));
        }
        behind = Some(entry.id());
    }
}

/// Positions of a longest rising subsequence; what has no place is passed over.
fn longest_rising(places: &[Option<usize>]) -> Vec<usize> {
    // The longest one that ends at each position, and the position before it.
    let mut best: Vec<(usize, Option<usize>)> = Vec::with_capacity(places.len());
    for (at, place) in places.iter().enumerate() {
        let before = place.and_then(|place| {
            let smaller = (0..at).filter(|other| places[*other].is_some_and(|other| other < place));
            smaller.max_by_key(|other| (best[*other].0, std::cmp::Reverse(*other)))
        });
        let length = usize::from(place.is_some()) + before.map_or(0, |before| best[before].0);
        best.push((length, before));
    }
    let mut rising = Vec::new();
    let mut next = (0..places.len())
        .filter(|at| places[*at].is_some())
        .max_by_key(|at| best[*at].0);
    while let Some(at) = next {
        rising.push(at);
        next = best[at].1;
    }
    rising
}

impl Differences {
    /// Whether the two states are the same.
    pub fn is_empty(&self) -> bool {
        self.changes.is_empty() && !self.cup_taken_away
    }

    /// A line as it is in the second state, or as it was.
    pub fn line(&self, id: &LineId) -> Option<&Line> {
        self.after.line(id).or_else(|| self.before.line(id))
    }

    /// The text of an instruction as it was in the first state, or as it is.
    pub fn instruction(&self, id: &LineId) -> Option<&str> {
        let mut entries = self.before.entries.iter().chain(&self.after.entries);
        entries.find_map(|entry| match entry {
            Entry::Instruction(instruction) if instruction.id == *id => {
                Some(instruction.text.as_str())
            }
            _ => None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Amount, IngredientId, Role, Stage};
    use super::*;

    fn line(id: &str, grams: f64) -> Entry {
        Entry::Line(Line {
            id: LineId::new(id).unwrap(),
            ingredient: IngredientId::new(id).unwrap(),
            amount: Amount::Grams(grams),
            temperature: None,
            role: Role::Water,
            stage: Stage::Mixed,
            carried: None,
            note: String::new(),
        })
    }

    fn resolved(ids: &str) -> Resolved {
        Resolved {
            entries: ids.chars().map(|id| line(&id.to_string(), 1.0)).collect(),
            ..Resolved::default()
        }
    }

    #[test]
    fn the_changes_lead_from_one_to_the_other() {
        for (from, to, count) in [
            ("abc", "abc", 0),
            ("abc", "cab", 1),
            ("abc", "cba", 2),
            ("abc", "axbyc", 2),
            ("abcdef", "fbxda", 5),
            ("", "ab", 2),
            ("ab", "", 2),
        ] {
            let (before, after) = (resolved(from), resolved(to));
            let differences = differences_between(&before, &after);
            let mut led = before;
            assert!(
                differences.changes.iter().all(|change| led.apply(change)),
                "{from} to {to}"
            );
            assert_eq!(led, after, "{from} to {to}");
            assert_eq!(
                differences.changes.len(),
                count,
                "{from} to {to}: {:?}",
                differences.changes
            );
        }
    }
}
