//! What changed from one state of a recipe's lines to another, as the changes that lead from one to the other.

use super::{Amount, Book, Carried, Change, Entry, IngredientId, Line, LineId, Resolved, VesselId};
use crate::quantity::{excerpt, show_number};

/// Longest note or instruction that is repeated in a sentence, in characters.
const TEXT: usize = 80;

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

    /// A sentence for each change, in the words of the counter.
    pub fn sentences(&self, book: &Book) -> Vec<String> {
        let mut sentences: Vec<String> = self
            .changes
            .iter()
            .map(|change| self.sentence(book, change))
            .collect();
        if self.cup_taken_away {
            sentences.push(format!(
                "no cup instead of {}",
                vessel_name(book, self.before.cup.as_ref())
            ));
        }
        sentences
    }

    fn sentence(&self, book: &Book, change: &Change) -> String {
        match change {
            Change::Ingredient(id, to) => {
                let from = self
                    .before
                    .line(id)
                    .map(|line| ingredient_name(book, &line.ingredient));
                format!(
                    "{} instead of {}",
                    ingredient_name(book, to),
                    from.unwrap_or_default()
                )
            }
            Change::Instruction(id, to) => {
                format!(
                    "instruction “{}” instead of “{}”",
                    excerpt(to, TEXT),
                    self.instruction(id)
                )
            }
            Change::Add(behind, entry) => {
                format!(
                    "{} added{}",
                    entry_words(book, entry),
                    self.place_words(book, behind.as_ref())
                )
            }
            Change::Remove(id) => match self.before.line(id) {
                Some(line) => format!(
                    "{} left out ({})",
                    self.name_of(book, id),
                    book.amount_words(&line.amount)
                ),
                None => format!("instruction “{}” left out", self.instruction(id)),
            },
            Change::Move(id, None) => format!("{} moved to the beginning", self.name_of(book, id)),
            Change::Move(id, behind) => {
                format!(
                    "{} moved{}",
                    self.name_of(book, id),
                    self.place_words(book, behind.as_ref())
                )
            }
            Change::Cup(to) => instead(
                "cup",
                &vessel_name(book, Some(to)),
                &vessel_name(book, self.before.cup.as_ref()),
            ),
            Change::Shaker(to) => instead(
                "shaker",
                &vessel_name(book, to.as_ref()),
                &vessel_name(book, self.before.shaker.as_ref()),
            ),
            Change::Strained(true) => "the ice stays behind in the shaker".to_owned(),
            Change::Strained(false) => "the ice comes along from the shaker".to_owned(),
            Change::DrinkingTemperature(to) => {
                let words = |celsius: Option<f64>| {
                    celsius.map_or_else(|| "the shop's".to_owned(), celsius_words)
                };
                instead(
                    "drinking temperature",
                    &words(*to),
                    &words(self.before.drinking_temperature),
                )
            }
            Change::MenuPrice(to) => {
                let words = |price: Option<f64>| {
                    price.map_or_else(
                        || "none".to_owned(),
                        |price| format!("{} {}", book.settings.currency, show_number(price, 2)),
                    )
                };
                instead("menu price", &words(*to), &words(self.before.menu_price))
            }
            Change::Amount(id, _)
            | Change::Temperature(id, _)
            | Change::Role(id, _)
            | Change::Stage(id, _)
            | Change::Carried(id, _)
            | Change::Note(id, _) => self.line_sentence(book, id, change),
        }
    }

    /// A change of one field of a line.
    fn line_sentence(&self, book: &Book, id: &LineId, change: &Change) -> String {
        let name = self.name_of(book, id);
        let Some(before) = self.before.line(id) else {
            return name;
        };
        match change {
            Change::Amount(_, to) => instead(
                &name,
                &book.amount_words(to),
                &book.amount_words(&before.amount),
            ),
            Change::Temperature(_, to) => {
                let words = |celsius: Option<f64>| {
                    celsius.map_or_else(|| "as it comes".to_owned(), celsius_words)
                };
                instead(
                    &format!("temperature of {name}"),
                    &words(*to),
                    &words(before.temperature),
                )
            }
            Change::Role(_, to) => {
                instead(&format!("role of {name}"), to.word(), before.role.word())
            }
            Change::Stage(_, to) => {
                instead(&format!("place of {name}"), to.word(), before.stage.word())
            }
            Change::Carried(_, to) => {
                let words = |carried: Option<&Carried>| carried_words(book, carried);
                instead(
                    &format!("with {name}"),
                    &words(to.as_ref()),
                    &words(before.carried.as_ref()),
                )
            }
            Change::Note(_, to) => instead(
                &format!("note on {name}"),
                &note_words(to),
                &note_words(&before.note),
            ),
            _ => name,
        }
    }

    /// The ingredient of a line as it is in the second state, or "an instruction".
    fn name_of(&self, book: &Book, id: &LineId) -> String {
        let line = self.after.line(id).or_else(|| self.before.line(id));
        line.map_or_else(
            || format!("instruction “{}”", self.instruction(id)),
            |line| ingredient_name(book, &line.ingredient),
        )
    }

    fn instruction(&self, id: &LineId) -> String {
        let entries = self.before.entries.iter().chain(&self.after.entries);
        let text = entries.filter_map(|entry| match entry {
            Entry::Instruction(instruction) if instruction.id == *id => {
                Some(instruction.text.as_str())
            }
            _ => None,
        });
        excerpt(text.into_iter().next().unwrap_or_default(), TEXT)
    }

    fn place_words(&self, book: &Book, behind: Option<&LineId>) -> String {
        match behind {
            None => " at the beginning".to_owned(),
            Some(id) => format!(" behind {}", self.name_of(book, id)),
        }
    }
}

fn instead(what: &str, now: &str, before: &str) -> String {
    format!("{what}: {now} instead of {before}")
}

fn entry_words(book: &Book, entry: &Entry) -> String {
    match entry {
        Entry::Line(line) => {
            format!(
                "{}, {},",
                ingredient_name(book, &line.ingredient),
                book.amount_words(&line.amount)
            )
        }
        Entry::Instruction(instruction) => {
            format!("instruction “{}”", excerpt(&instruction.text, TEXT))
        }
    }
}

fn ingredient_name(book: &Book, id: &IngredientId) -> String {
    book.ingredient(id)
        .map_or_else(|| id.to_string(), |item| excerpt(&item.full_name(), TEXT))
}

fn vessel_name(book: &Book, id: Option<&VesselId>) -> String {
    id.map_or_else(
        || "none".to_owned(),
        |id| {
            book.vessel(id)
                .map_or_else(|| id.to_string(), |item| excerpt(&item.name, TEXT))
        },
    )
}

fn celsius_words(celsius: f64) -> String {
    format!("{} °C", show_number(celsius, 1))
}

fn carried_words(book: &Book, carried: Option<&Carried>) -> String {
    carried.map_or_else(
        || "nothing".to_owned(),
        |carried| {
            let grams = book.amount_words(&Amount::Grams(carried.grams));
            format!("{grams} of {}", ingredient_name(book, &carried.ingredient))
        },
    )
}

fn note_words(note: &str) -> String {
    if note.is_empty() {
        "none".to_owned()
    } else {
        format!("“{}”", excerpt(note, TEXT))
    }
}

#[cfg(test)]
mod tests {
    use super::super::{Role, Stage};
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

    #[test]
    fn a_sentence_says_both_amounts_in_counter_words() {
        let (before, mut after) = (resolved("ab"), resolved("ba"));
        after.entries[1] = line("a", 2.5);
        let book = Book::default();
        assert_eq!(
            differences_between(&before, &after).sentences(&book),
            ["a: 2½ g instead of 1 g", "b moved to the beginning"]
        );
    }
}
