//! Answers of people, each of whom counts once.

use std::collections::BTreeSet;

/// How many people answered, and how many of them right.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counted {
    /// People, each counted once however often they tasted.
    pub people: u32,
    /// People whose first answer was right; in a two-sided pair, for the first sample.
    pub right: u32,
    /// Further answers of the same people, which are not counted.
    pub repeated: u32,
}

/// Counts the first answer of each person.
///
/// Further rounds of the same people say more of those people and nothing of others: counted as if more people had answered, they
/// would make a result surer than it is.
pub fn counted<Person: Ord>(answers: impl IntoIterator<Item = (Person, bool)>) -> Counted {
    let mut known = BTreeSet::new();
    let mut counted = Counted::default();
    for (person, right) in answers {
        if known.insert(person) {
            counted.people += 1;
            counted.right += u32::from(right);
        } else {
            counted.repeated += 1;
        }
    }
    counted
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn who_tastes_again_is_no_further_person() {
        let answers = [("Ada", true), ("Bo", false), ("Ada", false), ("Ada", true)];
        let expected = Counted {
            people: 2,
            right: 1,
            repeated: 2,
        };
        assert_eq!(counted(answers), expected);
        assert_eq!(counted::<&str>([]), Counted::default());
    }
}
