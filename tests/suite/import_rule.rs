//! Which module may know which: the table in the crate documentation, enforced.

use std::path::{Path, PathBuf};

/// What each module may import of this crate; a module that is not listed may import everything.
const ALLOWED: [(&str, &[&str]); 16] = [
    ("quantity", &[]),
    ("optimiser", &[]),
    ("book", &["quantity"]),
    ("edit", &["book", "quantity"]),
    ("balance", &["book", "quantity"]),
    (
        "swap",
        &["balance", "optimiser", "edit", "book", "quantity"],
    ),
    ("tasting", &["balance", "book", "quantity"]),
    ("cups", &["tasting", "balance", "book", "quantity"]),
    (
        "record",
        &["cups", "tasting", "balance", "book", "quantity"],
    ),
    (
        "say",
        &[
            "quantity",
            "book",
            "edit",
            "balance",
            "swap",
            "tasting",
            "cups",
            "record",
            "book_file",
            "exchange",
        ],
    ),
    (
        "cards",
        &["say", "swap", "tasting", "balance", "book", "quantity"],
    ),
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
            "tasting",
            "cups",
            "record",
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
            "tasting",
            "cups",
            "record",
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
            "tasting",
            "cups",
            "record",
            "say",
            "cards",
            "exchange",
            "workbench",
        ],
    ),
];

/// Words that only some places may use, and why.
const RESERVED: [(&str, &[&str], &str); 7] = [
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
        "std::thread",
        &[
            "workbench/job.rs",
            "workbench/keeper.rs",
            "workbench/file_watch.rs",
            "ui/start.rs",
        ],
        "work in the background is a job, but for what never ends by itself and the first frame of the window",
    ),
    (
        "serde",
        &["book_file", "command_line", "ui", "cards", "exchange"],
        "the document and the engine are not serialisable by design",
    ),
];

/// Functions of a path that ask the disk, whatever module they come from.
const ASK_THE_DISK: [&str; 10] = [
    "exists",
    "try_exists",
    "is_file",
    "is_dir",
    "is_symlink",
    "metadata",
    "symlink_metadata",
    "canonicalize",
    "read_dir",
    "read_link",
];

/// Who may make such calls beside the book file, and for what.
const MAY_ASK_THE_DISK: [(&str, &str); 7] = [
    ("main.rs", "whether there is a book to open"),
    (
        "command_line/mod.rs",
        "whether a word is a file or a mistyped command",
    ),
    (
        "command_line/out_file.rs",
        "what a written file may replace",
    ),
    ("workbench/saving.rs", "what a save would replace"),
    ("workbench/disk_change.rs", "a free name for a copy"),
    ("workbench/recovery.rs", "whether left work has a file yet"),
    ("workbench/file_watch.rs", "the folder that is watched"),
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

/// Each source file with its module and its text without comments, tests and groups of imports.
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
                relative.display().to_string().replace('\\', "/"),
                ungrouped(&code.join("\n")),
            )
        })
        .collect()
}

/// The text with its grouped imports written out: `a::{b, c::{d, e}}` as `a::b, a::c::d, a::c::e`.
fn ungrouped(code: &str) -> String {
    let mut code = code.to_owned();
    // The last group that opens has none within.
    while let Some(at) = code.rfind("::{") {
        let end = code[at..].find('}').map_or(code.len(), |end| at + end);
        let is_path = |c: char| c.is_alphanumeric() || c == '_' || c == ':';
        let start = code[..at]
            .rfind(|c| !is_path(c))
            .map_or(0, |before| before + 1);
        let path = &code[start..at];
        let names = code[at + "::{".len()..end].split(',').map(str::trim);
        let written: Vec<String> = names
            .filter(|name| !name.is_empty())
            .map(|name| format!("{path}::{name}"))
            .collect();
        code.replace_range(start..(end + 1).min(code.len()), &written.join(", "));
    }
    code
}

/// Names behind `crate::` in a text without groups.
fn crate_imports(code: &str) -> Vec<String> {
    code.match_indices("crate::")
        .map(|(at, found)| {
            let rest = code[at + found.len()..].chars();
            rest.take_while(|c| c.is_alphanumeric() || *c == '_')
                .collect()
        })
        .collect()
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
                !uses(&code, word)
                    || places.contains(&module.as_str())
                    || places.contains(&file.as_str()),
                "{file}: {why}; found `{word}`"
            );
        }
    }
}

#[test]
fn only_the_book_file_and_named_places_ask_the_disk() {
    let mut asking = Vec::new();
    for (module, file, code) in modules() {
        let found = ASK_THE_DISK.iter().find(|name| {
            let forms = [format!(".{name}()"), format!("Path::{name}")];
            forms.iter().any(|form| code.contains(form))
        });
        let Some(name) = found.filter(|_| module != "book_file") else {
            continue;
        };
        assert!(
            MAY_ASK_THE_DISK.iter().any(|(place, _)| *place == file),
            "{file}: only the book file touches the disk; found `{name}`"
        );
        asking.push(file);
    }
    for (name, what_for) in MAY_ASK_THE_DISK {
        assert!(
            asking.iter().any(|file| file == name),
            "{name} no longer asks the disk ({what_for}): take it off the list"
        );
    }
}

/// What works something out from a book, and the stamp of the memo that keeps it.
const WORKS_OUT: [&str; 18] = [
    "balance::Kitchen",
    "balance::balance",
    "balance::cooling",
    "balance::declaration",
    "balance::difference",
    "balance::figures",
    "balance::margin",
    "balance::per_gram",
    "balance::portion",
    "balance::prepare",
    "balance::standard_balance",
    "balance::standing",
    "balance::yardstick_reading",
    "book::difference_of_books",
    "book::findings",
    "book::merge",
    "workbench::BookStamp",
    "Option<Arc<Book>>",
];

#[test]
fn the_screen_works_nothing_out_of_the_book_and_keeps_nothing_of_it() {
    for (module, file, code) in modules() {
        let found = WORKS_OUT.iter().find(|word| code.contains(**word));
        assert!(
            module != "ui" || found.is_none(),
            "{file}: the workbench answers questions about the book, each once; found `{found:?}`"
        );
    }
}

#[test]
fn groups_of_imports_are_seen() {
    for (code, written) in [
        ("use std::{fs, io};", "use std::fs, std::io;"),
        (
            "use crate::{\n    book::{Book, Recipe},\n    say,\n};",
            "use crate::book::Book, crate::book::Recipe, crate::say;",
        ),
        (
            "use std::{thread::{self, JoinHandle}};",
            "use std::thread::self, std::thread::JoinHandle;",
        ),
        ("fn plain() {}", "fn plain() {}"),
    ] {
        assert_eq!(ungrouped(code), written);
    }
    assert_eq!(
        crate_imports(&ungrouped("use crate::{book::Book, say};")),
        ["book", "say"]
    );
    assert!(uses(&ungrouped("use std::{io, thread};"), "std::thread"));
}

#[test]
fn the_engine_has_no_clock_and_no_chance() {
    for (module, file, code) in modules() {
        if matches!(
            module.as_str(),
            "quantity"
                | "book"
                | "edit"
                | "balance"
                | "optimiser"
                | "swap"
                | "tasting"
                | "cards"
                | "exchange"
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
