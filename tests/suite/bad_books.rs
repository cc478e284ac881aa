//! Books that are wrong: each says what is wrong in the words that stand beside it, and none is changed by the attempt.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};

use evensip::book_file::{LONGEST_TEXT, LoadError, LoadProblem, TextFault, load, parse};
use evensip::say::Speaker;

use crate::growth::{TENFOLD, growth};

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bad-books")
}

/// Everything that is said of a book, one thing a line, without the path.
fn said_of(path: &Path) -> String {
    let mut said = String::new();
    match load(path) {
        Ok(loaded) => {
            let speaker = Speaker::new(&loaded.book);
            for finding in loaded.findings {
                let _ = writeln!(
                    said,
                    "{}: {}",
                    finding.severity.word(),
                    speaker.finding(&finding)
                );
            }
        }
        Err(LoadError::Problems { problems, .. }) => {
            for problem in problems {
                let problem = Speaker::without_book().load_problem(&problem);
                let _ = writeln!(said, "can't open: {problem}");
            }
        }
        Err(error) => {
            said = format!(
                "can't open: {}\n",
                Speaker::without_book().load_error(&error)
            );
        }
    }
    said
}

#[test]
fn every_bad_book_gives_its_message_and_stays_as_it_is() {
    let mut different = String::new();
    let mut count = 0;
    let mut paths: Vec<PathBuf> = fs::read_dir(folder())
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    paths.sort();
    for path in paths
        .into_iter()
        .filter(|path| path.extension().is_some_and(|ending| ending == "ron"))
    {
        count += 1;
        let before = fs::read(&path).unwrap();
        let said = said_of(&path);
        assert_eq!(fs::read(&path).unwrap(), before, "{}", path.display());
        assert!(!said.is_empty(), "nothing is wrong with {}", path.display());
        let expected = fs::read_to_string(path.with_extension("expected.txt")).unwrap_or_default();
        if said != expected {
            let _ = write!(
                different,
                "{}\nsays:\n{said}expected:\n{expected}\n",
                path.display()
            );
            let kept = path.with_extension("expected.txt");
            let kept = Path::new(env!("CARGO_TARGET_TMPDIR")).join(kept.file_name().unwrap());
            fs::write(kept, said).unwrap();
        }
    }
    assert!(count >= 30, "{count} bad books");
    assert!(different.is_empty(), "{different}");
}

#[test]
fn a_message_says_what_to_do() {
    for entry in fs::read_dir(folder()).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_some_and(|ending| ending == "txt") {
            for line in fs::read_to_string(&path).unwrap().lines() {
                let advises = [
                    "add ",
                    "base one",
                    "begins with",
                    "delete one",
                    "did you mean",
                    "enter ",
                    "give one",
                    "instead of",
                    "must be",
                    "open ",
                    "use ",
                ];
                assert!(
                    advises.iter().any(|advice| line.contains(advice)),
                    "{}: {line}",
                    path.display()
                );
            }
        }
    }
}

/// The only problem of a text that is no book.
fn problem(text: &str) -> LoadProblem {
    let problems = parse(text).expect_err("a bad book was opened");
    assert_eq!(problems.len(), 1, "{problems:?}");
    problems.into_iter().next().unwrap()
}

fn said(text: &str) -> String {
    Speaker::without_book().load_problem(&problem(text))
}

fn is_too_deep(problem: &LoadProblem) -> bool {
    matches!(
        problem,
        LoadProblem::Text {
            fault: TextFault::TooDeep | TextFault::WrongKind { .. },
            ..
        }
    )
}

#[test]
fn deep_nesting_is_refused_without_a_stack_overflow() {
    const DEEP: usize = 200_000;
    for bracket in ["(", "[", "{", "Some(", "Line(", "((", "[(", "/*"] {
        for before in [
            "(format: 1, ingredients: ",
            "(format: 1, ingredients: [(id: ",
            "(format: 1, recipes: [(id: \"a\", name: \"a\", cup: ",
            "(format: 1, recipes: [(id: \"a\", name: \"a\", entries: [",
            "(format: 1, settings: (sales_tax_percent: ",
            "(format: 1, unknown: ",
            "",
        ] {
            let text = format!("{before}{}", bracket.repeat(DEEP));
            assert!(parse(&text).is_err());
        }
    }
    let some = format!(
        "(format: 1, recipes: [(id: \"a\", name: \"a\", cup: {}",
        "Some(".repeat(DEEP)
    );
    assert!(is_too_deep(&problem(&some)), "{:?}", problem(&some));
}

#[test]
fn a_line_of_ten_megabytes_is_read_or_refused_in_linear_time() {
    let [short, long] = [1, 10].map(|megabytes| megabytes * 1024 * 1024);
    let ratio = growth([&short, &long], |&length| {
        let note = format!(
            "(format: 1, settings: (note: \"{}\"))",
            "long ".repeat(length / 5)
        );
        assert!(parse(&note).unwrap().0.settings.note.len() >= length - 5);
        let open = format!("(format: 1, settings: (note: \"{}", "x".repeat(length));
        assert!(said(&open).len() < 300);
        let word = format!("(format: 1, settings: ({}: 1))", "x".repeat(length));
        assert!(said(&word).len() < 600);
        let id = format!(
            "(format: 1, vessels: [(id: \"{}\", name: \"\", kind: Cup, capacity: 1)])",
            "x".repeat(length)
        );
        assert!(said(&id).len() < 300);
        let number = format!(
            "(format: 1, vessels: [(id: \"a\", name: \"\", kind: Cup, capacity: {})])",
            "9".repeat(length)
        );
        assert!(said(&number).len() < 300);
        let format = format!("(format: {})", "9".repeat(length));
        assert!(said(&format).len() < 300);
    });
    assert!(ratio < TENFOLD, "{ratio}");
}

#[test]
fn very_many_problems_are_found_in_linear_time() {
    let [some, many] = [10_000, 100_000].map(|count| {
        let item = "(id: \"a\", name: \"\", kind: Cup, capacity: NaN),\n";
        format!("(format: 1, vessels: [{}])", item.repeat(count))
    });
    let ratio = growth([&some, &many], |text| {
        let problems = parse(text).expect_err("a bad book was opened");
        assert!((100..=2000).contains(&problems.len()), "{}", problems.len());
    });
    assert!(ratio < TENFOLD, "{ratio}");
}

#[test]
fn text_over_the_limit_is_refused() {
    let text = " ".repeat(usize::try_from(LONGEST_TEXT).unwrap() + 1);
    assert_eq!(
        problem(&text),
        LoadProblem::TooLong {
            bytes: LONGEST_TEXT + 1
        }
    );
    assert_eq!(
        said(&text),
        "the text has 65 MB, but at most 64 MB can be opened; divide the book"
    );
}

/// An error of a file that has no text to keep as a sample.
fn load_error(path: &Path) -> String {
    Speaker::without_book().load_error(&load(path).expect_err("a bad file was opened"))
}

#[test]
fn a_file_that_can_not_be_read_gets_a_sentence_with_its_path_last() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("book.ron");
    let shown = path.display();
    assert_eq!(
        load_error(&path),
        format!("this file does not exist; check its name and folder: {shown}")
    );
    fs::create_dir(&path).unwrap();
    assert_eq!(
        load_error(&path),
        format!("this is a folder; choose a book file: {shown}")
    );
    fs::remove_dir(&path).unwrap();
    fs::write(&path, b"(\n  format: 1,\n  settings: (shop: \"caf\xe9\"))").unwrap();
    assert_eq!(
        load_error(&path),
        format!("line 3 is not UTF-8 text; save the file as UTF-8 and open it again: {shown}")
    );
    fs::write(&path, "(format: 9)").unwrap();
    assert!(load_error(&path).ends_with(&format!(": {shown}")));
}

#[test]
fn a_byte_order_mark_is_no_fault() {
    assert!(parse("\u{feff}(format: 1)").is_ok());
}

#[cfg(unix)]
#[test]
fn a_device_is_no_book() {
    assert!(load_error(Path::new("/dev/zero")).starts_with("this is not an ordinary file"));
}

/// Root may read everything, so the program itself is run as somebody else.
#[cfg(unix)]
#[test]
fn a_file_that_this_user_may_not_read_is_said_so() {
    use std::os::unix::fs::{MetadataExt as _, PermissionsExt as _};
    use std::os::unix::process::CommandExt as _;

    const NOBODY: u32 = 65_534;

    let folder = tempfile::Builder::new()
        .permissions(fs::Permissions::from_mode(0o755))
        .tempdir()
        .unwrap();
    let (path, program) = (
        folder.path().join("book.ron"),
        folder.path().join("evensip"),
    );
    fs::write(&path, "(format: 1)").unwrap();
    fs::set_permissions(&path, fs::Permissions::from_mode(0o000)).unwrap();
    // The program may lie where nobody else may look, so a copy is run.
    fs::copy(env!("CARGO_BIN_EXE_evensip"), &program).unwrap();
    fs::set_permissions(&program, fs::Permissions::from_mode(0o755)).unwrap();
    let mut command = std::process::Command::new(&program);
    command.arg("check").arg(&path).current_dir(folder.path());
    if fs::metadata(folder.path()).unwrap().uid() == 0 {
        command.uid(NOBODY).gid(NOBODY);
    }
    let output = command.output().unwrap();
    let said = String::from_utf8_lossy(&output.stderr);
    assert!(!output.status.success(), "{said}");
    assert!(
        said.contains("you don't have permission to read this file"),
        "{said}"
    );
    assert!(!said.contains("panicked"), "{said}");
    assert_eq!(fs::metadata(&path).unwrap().len(), 11);
}
