//! Book files: every sample opens and saves to the same bytes, and what is saved is what is read.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fs;
use std::path::{Path, PathBuf};

use evensip::book::{
    Amount, Book, Change, Entry, FindingKind, IngredientId, Item as _, Place, Severity,
    StatedClaim, VersionId, findings, put_change,
};
use evensip::book_file::{SaveError, built_in_book, load, parse, save, write};
use proptest::prelude::*;

fn samples() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("sample-books");
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "ron"))
        .collect();
    paths.sort();
    assert!(paths.len() >= 3, "{paths:?}");
    paths
}

fn main_book() -> Book {
    built_in_book().unwrap()
}

#[test]
fn every_sample_opens_without_an_error() {
    for path in samples() {
        let loaded = load(&path).unwrap_or_else(|error| panic!("{error:?}"));
        for finding in &loaded.findings {
            assert!(
                finding.severity < Severity::Error,
                "{}: {finding:?}",
                path.display()
            );
        }
        assert!(!loaded.text_has_comments, "{}", path.display());
    }
}

#[test]
fn every_sample_saves_to_the_same_bytes() {
    let mut different = Vec::new();
    for path in samples() {
        let text = fs::read_to_string(&path).unwrap();
        let written = write(&load(&path).unwrap().book);
        if written != text {
            let kept = Path::new(env!("CARGO_TARGET_TMPDIR")).join(path.file_name().unwrap());
            fs::write(&kept, &written).unwrap();
            let at = text
                .lines()
                .zip(written.lines())
                .position(|(one, two)| one != two);
            different.push(format!(
                "{} from line {at:?}; it would save as {}",
                path.display(),
                kept.display()
            ));
        }
    }
    assert!(different.is_empty(), "{different:#?}");
}

/// The book has a creamer that is sold as non-dairy and contains milk, on purpose: the check must not overlook it.
#[test]
fn the_built_in_book_has_only_the_warning_that_it_is_to_show_and_says_that_it_is_invented() {
    let book = main_book();
    let found = findings(&book);
    assert_eq!(found.len(), 1, "{found:?}");
    let creamer = IngredientId::new("ondry-creamer").unwrap();
    assert_eq!(found[0].place, Place::Ingredient(creamer, "diet"));
    assert!(
        matches!(
            found[0].kind,
            FindingKind::ClaimNotCarried {
                claim: StatedClaim::DairyFree,
                ..
            }
        ),
        "{found:?}"
    );
    assert!(book.settings.note.contains("invented"));
    assert!(book.recipes.len() >= 8 && book.ingredients.len() >= 30);
}

/// Sugar of a drink by hand: grams of each line times the sugars of its label.
fn sugar_of(book: &Book, recipe: &str, version: Option<&str>) -> f64 {
    let recipe = book
        .recipes
        .iter()
        .find(|item| item.id().as_str() == recipe)
        .unwrap();
    let version = version.map(|id| VersionId::new(id).unwrap());
    let (resolved, findings) = evensip::book::resolve(recipe, version.as_ref());
    assert_eq!(findings, []);
    let grams = |line: &evensip::book::Line| match &line.amount {
        Amount::Grams(grams) => *grams,
        Amount::Count(uses, measure) => {
            uses * book
                .measure(measure)
                .unwrap()
                .calibration(Some(&line.ingredient))
                .unwrap()
                .grams
        }
        // Of what is poured by volume here, only milk and plant drinks hold sugar.
        Amount::Millilitres(millilitres) => {
            millilitres
                * book
                    .ingredient(&line.ingredient)
                    .unwrap()
                    .density
                    .unwrap()
                    .value
        }
        Amount::FillTo(_) | Amount::FillToRim => 0.0,
    };
    let sugars = |line: &evensip::book::Line| {
        let label = &book.ingredient(&line.ingredient).unwrap().composition;
        label
            .get(evensip::book::Nutrient::Sugars)
            .map_or(0.0, |figure| figure.value / 100.0)
    };
    resolved
        .lines()
        .map(|line| grams(line) * sugars(line))
        .sum()
}

#[test]
fn the_sample_drinks_hold_the_sugar_that_was_reckoned_by_hand() {
    let book = main_book();
    for (recipe, version, grams) in [
        // 2½ × 8.8 × 58 % + 2 × 7.4 × 9 % + 10.0 × 62 %.
        ("hob-and-ember", None, 12.76 + 1.332 + 6.2),
        ("hob-and-ember", Some("ketterby"), 17.04 + 1.332 + 6.2),
        ("hob-and-ember", Some("ketterby-two"), 13.632 + 1.332 + 6.2),
        // 3 × 12.4 × 74 %.
        ("pear-drift", None, 27.528),
        ("pear-drift", Some("hot"), 27.528),
    ] {
        let found = sugar_of(&book, recipe, version);
        assert!(
            (found - grams).abs() < 0.01,
            "{recipe} {version:?}: {found} instead of {grams}"
        );
    }
    let difference =
        |recipe, one, other| sugar_of(&book, recipe, one) - sugar_of(&book, recipe, other);
    // The other chestnut brings 2 × (9.6 × 71 % − 8.8 × 58 %) = 3.42 g, half a spoon less takes 9.7/2 × 77 % = 3.73 g.
    assert!((difference("hazelthwaite", Some("ketterby"), None) - 3.424).abs() < 0.01);
    assert!(
        (difference("hazelthwaite", Some("ketterby-levelled"), None) - (3.424 - 3.7345)).abs()
            < 0.01
    );
    // One spoon: 9.7 × 77 % as syrup, 5.9 g as crystals; the small spoon 6.93 × 77 % and 4.21 g.
    for (version, grams) in [
        ("crystals", 5.9),
        ("small-spoon", 5.336),
        ("small-spoon-crystals", 4.21),
    ] {
        let found = difference("snowgate", Some(version), None) + 7.469;
        assert!(
            (found - grams).abs() < 0.01,
            "{version}: {found} instead of {grams}"
        );
    }
}

/// One small edit of a book, chosen by numbers.
fn edited(mut book: Book, which: usize, number: f64, text: &str) -> Book {
    let mut recipe = (**book.recipes.iter().nth(which % book.recipes.len()).unwrap()).clone();
    let mut ingredient = (**book
        .ingredients
        .iter()
        .nth(which % book.ingredients.len())
        .unwrap())
    .clone();
    let mut measure = (**book
        .measures
        .iter()
        .nth(which % book.measures.len())
        .unwrap())
    .clone();
    let line = recipe.entries.iter().find_map(Entry::line).unwrap().clone();
    match which % 7 {
        0 => text.clone_into(&mut ingredient.name),
        1 => ingredient
            .composition
            .printed
            .values_mut()
            .for_each(|figure| figure.u = Some(number)),
        2 => ingredient.temperature = Some(number.into()),
        3 => measure
            .readings
            .iter_mut()
            .for_each(|reading| reading.amount = reading.amount.with_number(number)),
        4 => recipe.entries.reverse(),
        5 => {
            let id = VersionId::from_name("new", |id| recipe.version(id).is_some());
            recipe.versions.push(evensip::book::Version::draft(
                id.clone(),
                text.to_owned(),
                None,
            ));
            for change in [
                Change::Amount(line.id.clone(), Amount::Grams(number)),
                Change::Temperature(line.id.clone(), None),
                Change::Move(
                    line.id.clone(),
                    recipe.entries.last().map(|entry| entry.id().clone()),
                ),
                Change::Note(line.id, text.to_owned()),
                Change::Shaker(None),
                Change::DrinkingTemperature(Some(number)),
                Change::MenuPrice(None),
                Change::SugarLevel(Some(number)),
            ] {
                let _ = put_change(&mut recipe, Some(&id), &change);
            }
        }
        _ => text.clone_into(&mut book.settings.note),
    }
    book.recipes.put(recipe);
    book.ingredients.put(ingredient);
    book.measures.put(measure);
    book
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_is_written_is_read_back_the_same(which in 0_usize..500, number in prop::num::f64::NORMAL, text in any::<String>()) {
        let book = edited(main_book(), which, number, &text);
        let written = write(&book);
        let read = parse(&written).map_err(|problems| TestCaseError::fail(format!("{problems:?}")))?.0;
        prop_assert!(read == book, "differs after edit {which}");
        prop_assert_eq!(write(&read), written);
    }
}

#[test]
fn the_samples_and_an_empty_book_are_read_back_the_same() {
    for path in samples() {
        let book = load(&path).unwrap().book;
        assert!(
            parse(&write(&book)).unwrap().0 == book,
            "{}",
            path.display()
        );
    }
    assert!(parse(&write(&Book::default())).unwrap().0 == Book::default());
}

#[test]
fn one_changed_amount_is_one_changed_line() {
    let book = main_book();
    let mut recipe = (**book.recipes.iter().next().unwrap()).clone();
    let line = recipe.entries.iter_mut().find_map(|entry| match entry {
        Entry::Line(line) => Some(line),
        Entry::Instruction(_) => None,
    });
    line.unwrap().amount = Amount::Millilitres(121.5);
    let mut changed = book.clone();
    changed.recipes.put(recipe);
    let (before, after) = (write(&book), write(&changed));
    assert_eq!(before.lines().count(), after.lines().count());
    assert_eq!(
        before
            .lines()
            .zip(after.lines())
            .filter(|(one, two)| one != two)
            .count(),
        1
    );
}

#[test]
fn a_saved_book_opens_the_same_and_leaves_nothing_beside_it() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let book = main_book();
    save(&path, &book).unwrap();
    save(&path, &book).unwrap();
    assert!(load(&path).unwrap().book == book);
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 1);
}

#[test]
fn comments_are_noticed_when_a_book_is_opened() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    fs::write(&path, "// by hand\n(format: 1)").unwrap();
    assert!(load(&path).unwrap().text_has_comments);
}

#[test]
fn a_book_that_could_not_be_opened_again_is_not_saved_over_a_good_one() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    save(&path, &main_book()).unwrap();
    let before = fs::read(&path).unwrap();
    let mut broken = main_book();
    broken.settings.room_temperature = f64::NAN.into();
    assert!(matches!(
        save(&path, &broken),
        Err(SaveError::NotFinite { count: 1, .. })
    ));
    assert_eq!(fs::read(&path).unwrap(), before);
}

#[test]
fn what_can_not_be_saved_is_said_and_nothing_is_left_behind() {
    let folder = tempfile::tempdir().unwrap();
    let book = Book::default();
    assert!(matches!(
        save(folder.path(), &book),
        Err(SaveError::Directory { .. })
    ));
    assert!(matches!(
        save(&folder.path().join("none/book.ron"), &book),
        Err(SaveError::NoFolder { .. })
    ));
    assert_eq!(fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[cfg(unix)]
mod unix {
    use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _, symlink};

    use super::*;

    fn mode(path: &Path) -> u32 {
        fs::metadata(path).unwrap().permissions().mode() & 0o7777
    }

    #[test]
    fn an_existing_file_keeps_its_permissions() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("book.ron");
        for wanted in [0o640, 0o600, 0o664] {
            fs::write(&path, "old").unwrap();
            fs::set_permissions(&path, fs::Permissions::from_mode(wanted)).unwrap();
            save(&path, &Book::default()).unwrap();
            assert_eq!(mode(&path), wanted);
        }
    }

    #[test]
    fn a_new_file_gets_the_permissions_of_any_new_file() {
        let folder = tempfile::tempdir().unwrap();
        let (path, usual) = (folder.path().join("book.ron"), folder.path().join("usual"));
        fs::write(&usual, "").unwrap();
        save(&path, &Book::default()).unwrap();
        assert_eq!(mode(&path), mode(&usual));
    }

    #[test]
    fn a_link_stays_a_link_and_its_target_is_replaced_in_one_step() {
        let folder = tempfile::tempdir().unwrap();
        fs::create_dir(folder.path().join("inner")).unwrap();
        let (target, link) = (
            folder.path().join("inner/book.ron"),
            folder.path().join("link.ron"),
        );
        symlink("inner/book.ron", &link).unwrap();
        // Once with a link that leads to nothing yet, once with a book behind it.
        for _ in 0..2 {
            save(&link, &main_book()).unwrap();
            assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
            assert!(load(&target).unwrap().book == main_book());
        }
        // A file that was open before still shows the old book: the new one is another file.
        let before = fs::metadata(&target).unwrap().ino();
        save(&link, &Book::default()).unwrap();
        assert_ne!(fs::metadata(&target).unwrap().ino(), before);
    }

    #[test]
    fn links_in_a_circle_are_refused() {
        let folder = tempfile::tempdir().unwrap();
        let (one, two) = (folder.path().join("one"), folder.path().join("two"));
        symlink(&two, &one).unwrap();
        symlink(&one, &two).unwrap();
        assert!(save(&one, &Book::default()).is_err());
        assert!(load(&one).is_err());
    }
}
