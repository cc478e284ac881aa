//! Which ids look like a mistyped one.

/// The ids that look most like a mistyped one, at most three.
pub fn nearest<'book>(id: &str, known: impl Iterator<Item = &'book str>) -> Vec<String> {
    let mut near: Vec<(usize, &str)> = known
        .map(|other| (edit_distance(id, other), other))
        .filter(|(distance, other)| {
            *distance <= 2.max(id.len() / 4) || other.contains(id) || id.contains(other)
        })
        .collect();
    near.sort_unstable();
    near.into_iter()
        .take(3)
        .map(|(_, other)| other.to_owned())
        .collect()
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
    fn a_mistyped_id_finds_its_neighbours() {
        let known = ["pear-syrup", "plum-syrup", "oolong"];
        assert_eq!(nearest("paer-syrup", known.into_iter()), ["pear-syrup"]);
        assert_eq!(
            nearest("quite-different", known.into_iter()),
            Vec::<String>::new()
        );
        assert_eq!(edit_distance("kitten", "sitting"), 3);
    }
}
