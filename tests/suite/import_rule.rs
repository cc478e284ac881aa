//! Which module may know which: the table in the crate documentation, enforced.

use std::path::{Path, PathBuf};

/// What each module may import of this crate; a module that is not listed may import everything.
const ALLOWED: [(&str, &[&str]); 13] = [
    ("quantity", &[]),
    ("optimiser", &[]),
    ("book", &["quantity"]),
    ("edit", &["book", "quantity"]),
    ("balance", &["book", "quantity"]),
    (
        "swap",
        &["balance", "optimiser", "edit", "book", "quantity"],
    ),
    (
        "say",
        &[
            "quantity",
            "book",
            "edit",
            "balance",
            "swap",
            "book_file",
            "exchange",
        ],
    ),
    ("cards", &["say", "swap", "balance", "book", "quantity"]),
    ("exchange", &["swap", "balance", "edit", "book", "quantity"]),
    ("book_file", &["book", "quantity"]),
    (
        "workbench",
        &[
            "quantity",
            "optimiser",
            "book",
            "edit",
            "balance",
            "swap",
            "say",
            "cards",
            "exchange",
            "book_file",
        ],
    ),
    (
        "command_line",
        &[
            "quantity",
            "optimiser",
            "book",
            "edit",
            "balance",
            "swap",
            "say",
            "cards",
            "exchange",
            "book_file",
            "workbench",
        ],
    ),
    (
        "ui",
        &[
            "quantity",
            "optimiser",
            "book",
            "edit",
            "balance",
            "swap",
            "say",
            "cards",
            "exchange",
            "workbench",
        ],
    ),
];

/// Words that only some places may use, and why.
const RESERVED: [(&str, &[&str], &str); 6] = [
    (
        "jiff",
        &["book", "book_file", "workbench"],
        "the book knows the calendar, the workbench and its files the clock",
    ),
    ("egui", &["ui"], "only the screen knows egui"),
    ("eframe", &["ui"], "only the screen knows eframe"),
    (
        "ron::",
        &["book_file"],
        "only the book file knows its notation",
    ),
    (
        "std::fs",
        &["book_file"],
        "only the book file touches the disk",
    ),
    (
        "serde",
        &["book_file", "command_line", "ui", "cards", "exchange"],
        "the document and the engine are not serialisable by design",
    ),
];

fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    let mut entries: Vec<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

/// Each source file with its module and its text without comments and tests.
fn modules() -> Vec<(String, String, String)> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    sources(&root, &mut found);
    found
        .into_iter()
        .map(|path| {
            let relative = path.strip_prefix(&root).unwrap();
            let module = relative
                .components()
                .next()
                .unwrap()
                .as_os_str()
                .to_string_lossy();
            let text = std::fs::read_to_string(&path).unwrap();
            let code = text.split("#[cfg(test)]\nmod tests").next().unwrap();
            let code: Vec<&str> = code
                .lines()
                .filter(|line| !line.trim_start().starts_with("//"))
                .collect();
            (
                module.trim_end_matches(".rs").to_owned(),
                relative.display().to_string(),
                code.join("\n"),
            )
        })
        .collect()
}

/// Names behind `crate::` in a text, those in braces included.
fn crate_imports(code: &str) -> Vec<String> {
    let mut names = Vec::new();
    for (at, _) in code.match_indices("crate::") {
        let rest = &code[at + "crate::".len()..];
        let head: String = rest
            .chars()
            .take_while(|c| c.is_alphanumeric() || *c == '_')
            .collect();
        if !head.is_empty() {
            names.push(head);
        }
    }
    names
}

/// Whether a text uses a word that is no part of a longer one or of a sentence in quotes.
fn uses(code: &str, word: &str) -> bool {
    code.match_indices(word).any(|(at, _)| {
        let before = code[..at].chars().next_back();
        !before.is_some_and(|c| c.is_alphanumeric() || c == '_' || c == '"')
    })
}

#[test]
fn modules_import_only_what_the_table_allows() {
    for (module, file, code) in modules() {
        let Some((_, allowed)) = ALLOWED.iter().find(|(name, _)| *name == module) else {
            continue;
        };
        for import in crate_imports(&code) {
            assert!(
                import == module || allowed.contains(&import.as_str()),
                "{file}: `{module}` may import only {allowed:?} of this crate (see the table in lib.rs), not `{import}`"
            );
        }
    }
}

#[test]
fn reserved_words_stay_in_their_place() {
    for (module, file, code) in modules() {
        for (word, places, why) in RESERVED {
            assert!(
                !uses(&code, word) || places.contains(&module.as_str()),
                "{file}: {why}; found `{word}`"
            );
        }
    }
}

#[test]
fn the_engine_has_no_clock_and_no_chance() {
    for (module, file, code) in modules() {
        if matches!(
            module.as_str(),
            "quantity" | "book" | "edit" | "balance" | "optimiser" | "swap" | "cards" | "exchange"
        ) {
            for word in [
                "std::time",
                "Instant::now",
                "SystemTime",
                "rand::",
                "HashMap",
                "HashSet",
                "std::thread",
                "jiff::Zoned",
                "jiff::Timestamp",
                "jiff::tz",
            ] {
                assert!(
                    !uses(&code, word),
                    "{file}: the engine is pure; found `{word}`"
                );
            }
        }
    }
}

#[test]
fn every_file_opens_with_what_it_is_and_stays_readable() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut found = Vec::new();
    sources(&root, &mut found);
    for path in found {
        let text = std::fs::read_to_string(&path).unwrap();
        assert!(
            text.starts_with("//! "),
            "{}: a file opens with one sentence on what it is",
            path.display()
        );
        assert!(
            text.lines().count() <= 800,
            "{}: split files above 800 lines",
            path.display()
        );
    }
}
