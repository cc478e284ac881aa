//! The catalogues of messages: whole in every language, used, and the only place with sentences.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use evensip::book::{Axis, Book};
use evensip::say::{Language, Speaker};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};

/// Folders below `src` that contain no sentence: facts, of which `say` makes the sentences, and views, which ask the speaker.
const WITHOUT_SENTENCES: [&str; 25] = [
    "book",
    "balance",
    "optimiser",
    "swap",
    "tasting",
    "cups",
    "exchange",
    "edit",
    "workbench",
    "book_file",
    "cards",
    "command_line",
    "quantity",
    "ui/card_area",
    "ui/compare_area",
    "ui/counter_area",
    "ui/ladder_area",
    "ui/lesson_area",
    "ui/recipe_area",
    "ui/safekeeping",
    "ui/serving_area",
    "ui/shell",
    "ui/swap_area",
    "ui/theme",
    "ui/widgets",
];

/// What lists of other programs hold and people type, as it is read from them.
const READ: &[&str] = &[
    "matières grasses",
    "pack size",
    "price date",
    "fl oz",
    "oz fl",
    "fluid ounce",
    "fluid ounces",
    "the rim",
    "the top",
    "zum rand",
    "zum becherrand",
    "inc vat",
    "with vat",
    "mit mwst",
    "article number",
    "artikel nr",
    "art. nr",
    "item no",
    "item number",
    "item code",
    "order code",
    "product code",
    "article no",
    "valid from",
    "gültig ab",
    "preis vom",
    "ice cube",
    "ice cubes",
    "tea leaves",
    "loose tea",
    "tea bag",
    "tea bags",
    "whipped cream",
    "to fill the glass",
    "to fill the cup",
    "to fill up",
    "to fill",
    "to top up",
    "to top it up",
    "to top off",
    "to the rim",
    "to the top",
    "to top",
    "for topping up",
    "fill up with",
    "fill with",
    "top up with",
    "top with",
    "top off with",
    "zum auffüllen",
    "zum aufgießen",
    "auffüllen mit",
    "mit auffüllen",
    "bis zum rand",
    "bis oben",
];

/// What only programs read: values in JSON, the first lines of files, families of fonts.
const FOR_PROGRAMS: [&str; 26] = [
    "vertical bar",
    "single dose",
    "at most",
    "less than",
    "honey sugars",
    "milk sugars",
    "not dairy-free",
    "every part",
    "allergen of part",
    "perhaps animal",
    "not known",
    "not stated",
    "time constant",
    "published cups",
    "heat through the wall and by evaporation",
    "below very hot",
    "drinking temperature",
    "fewest changes",
    "closest taste",
    "least sugar",
    "house units/g",
    "// Unsaved changes of Evensip: ",
    "// Unsaved work of Evensip: ",
    "Evensip Sans",
    "Evensip Sans SemiBold",
    "Evensip Serif",
];

/// Keys of what a book holds, in reports and in the names of messages; the words for them are messages.
const KEYS: [&str; 17] = [
    "cereals containing gluten",
    "pine nuts",
    "on top",
    "ice scoop",
    "ice scoops",
    "specification sheet",
    "published table",
    "tea solids",
    "insoluble solids",
    "on trial",
    "tea strength",
    "less ice",
    "little ice",
    "no ice",
    "the book",
    "sugar level",
    "ice level",
];

/// What a number is written as that has no digits; a speaker has its own words for it.
const NO_DIGITS: &str = "(out of range)";

/// What the window knows fields, lists and sheets by; besides those that begin with "field ".
const PLACES: [&str; 8] = [
    "counter list",
    "counter item",
    "disk change",
    "changed on disk",
    "earlier copies",
    "unsaved work",
    "replace a file",
    "new drink",
];

/// Families of fonts, as a style sheet names them.
const FONTS: [&str; 2] = [
    "'Evensip Sans', sans-serif",
    "'Evensip Serif', 'Evensip Sans', serif",
];

/// Messages that are found by the word of a fact: `role-` and `powder`.
const BEGINNINGS: [&str; 12] = [
    "measurand-",
    "item-field-",
    "evidence-",
    "form-",
    "nutrient-",
    "polyol-",
    "measure-kind-",
    "vessel-kind-",
    "state-",
    "lens-",
    "found-",
    "severity-",
];

pub(crate) fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

pub(crate) fn files(folder: &Path, ending: &str, found: &mut Vec<PathBuf>) {
    let mut entries: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            files(&path, ending, found);
        } else if path.extension().is_some_and(|found| found == ending) {
            found.push(path);
        }
    }
}

fn arguments(pattern: &Pattern<String>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            expression_arguments(expression, found);
        }
    }
}

fn expression_arguments(expression: &Expression<String>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => inline_arguments(inline, found),
        Expression::Select { selector, variants } => {
            inline_arguments(selector, found);
            for variant in variants {
                arguments(&variant.value, found);
            }
        }
    }
}

fn inline_arguments(inline: &InlineExpression<String>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.clone());
        }
        InlineExpression::Placeable { expression } => expression_arguments(expression, found),
        _ => {}
    }
}

/// The messages of a language with the names of their arguments, and the file that each stands in.
fn messages(language: Language) -> BTreeMap<String, (BTreeSet<String>, String)> {
    let mut paths = Vec::new();
    let folder = root().join("assets/languages").join(language.code());
    files(&folder, "ftl", &mut paths);
    let mut found = BTreeMap::new();
    for path in paths {
        let text = fs::read_to_string(&path).unwrap();
        let resource = fluent_syntax::parser::parse(text)
            .unwrap_or_else(|(_, errors)| panic!("{}: {errors:?}", path.display()));
        for entry in resource.body {
            let Entry::Message(message) = entry else {
                continue;
            };
            let mut names = BTreeSet::new();
            arguments(message.value.as_ref().unwrap(), &mut names);
            let file = path.file_name().unwrap().to_string_lossy().into_owned();
            let before = found.insert(message.id.name.clone(), (names, file));
            assert!(before.is_none(), "{} stands twice", message.id.name);
        }
    }
    found
}

/// The source without comments and without the tests at its foot.
fn code(path: &Path) -> String {
    let text = fs::read_to_string(path).unwrap();
    let text = text.split("#[cfg(test)]\nmod tests").next().unwrap();
    let lines = text.lines();
    lines
        .filter(|line| !line.trim_start().starts_with("//"))
        .collect::<Vec<_>>()
        .join("\n")
}

/// The texts between quotes of a source.
fn literals(code: &str) -> Vec<String> {
    let mut found = Vec::new();
    let mut characters = code.chars().peekable();
    while let Some(character) = characters.next() {
        match character {
            // A character between apostrophes, which may be a quote; a lifetime has no second one.
            '\'' => {
                let mut ahead = characters.clone();
                let first = ahead.next();
                if first == Some('\\') {
                    ahead.next();
                }
                if ahead.next() == Some('\'') {
                    characters = ahead;
                }
            }
            '"' => {
                let mut literal = String::new();
                while let Some(character) = characters.next() {
                    match character {
                        '"' => break,
                        '\\' => literal.extend(characters.next()),
                        other => literal.push(other),
                    }
                }
                found.push(literal);
            }
            _ => {}
        }
    }
    found
}

/// What stands between the brackets of a call, divided at its commas, and how many bytes it has with the second bracket.
fn parts(code: &str) -> (Vec<String>, usize) {
    let mut depth = 1;
    let mut parts = vec![String::new()];
    let mut is_quoted = false;
    for (at, character) in code.char_indices() {
        match character {
            '"' => is_quoted = !is_quoted,
            '(' | '[' | '{' if !is_quoted => depth += 1,
            ')' | ']' | '}' if !is_quoted => depth -= 1,
            ',' if !is_quoted && depth == 1 => {
                parts.push(String::new());
                continue;
            }
            _ => {}
        }
        if depth == 0 {
            return (parts, at + 1);
        }
        if let Some(last) = parts.last_mut() {
            last.push(character);
        }
    }
    (parts, code.len())
}

/// Calls of `say!` in a source: the message, and the names of its arguments.
fn calls(code: &str) -> Vec<(String, BTreeSet<String>)> {
    let mut found = Vec::new();
    for (at, call) in code.match_indices("say!(") {
        let (parts, _) = parts(&code[at + call.len()..]);
        let message = parts.get(1).map(|part| part.trim()).unwrap_or_default();
        let Some(message) = message
            .strip_prefix('"')
            .and_then(|rest| rest.strip_suffix('"'))
        else {
            continue;
        };
        let names = parts[2..]
            .iter()
            .filter_map(|part| Some(part.split_once(':')?.0));
        found.push((
            message.to_owned(),
            names.map(|name| name.trim().to_owned()).collect(),
        ));
    }
    found
}

/// Without what only whoever works on the program reads.
fn without_panics(code: &str) -> String {
    let mut rest = code.to_owned();
    for call in [
        "assert!(",
        "assert_eq!(",
        "panic!(",
        "unreachable!(",
        ".expect(",
        // What the window knows a part of it by.
        "Id::unique(",
        "Id::new(",
        "id_salt(",
        "push_id(",
    ] {
        while let Some(at) = rest.find(call) {
            let (_, length) = parts(&rest[at + call.len()..]);
            rest.replace_range(at..at + call.len() + length, "");
        }
    }
    rest
}

/// A literal without what is put into it between braces.
fn without_values(literal: &str) -> String {
    let mut parts = literal.split('{');
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |text, part| {
        text + part.split_once('}').map_or(part, |(_, rest)| rest)
    })
}

/// The files that every language has: what is printed. One that has all files can be chosen for the window.
const OF_EVERY_LANGUAGE: [&str; 9] = [
    "allergen.ftl",
    "cards.ftl",
    "caution.ftl",
    "cooling.ftl",
    "figure.ftl",
    "lists.ftl",
    "names.ftl",
    "stage.ftl",
    "taste.ftl",
];

#[test]
fn every_file_of_a_language_has_every_message_with_the_same_arguments() {
    let english = messages(Language::ENGLISH);
    assert_eq!(Language::all().count(), 8);
    for language in Language::all() {
        let own = messages(language);
        let files: BTreeSet<&str> = own.values().map(|(_, file)| file.as_str()).collect();
        for file in OF_EVERY_LANGUAGE {
            assert!(files.contains(file), "{language:?} has no {file}");
        }
        let is_english = language == Language::ENGLISH;
        for file in Language::OF_ENGLISH_ALONE {
            assert_eq!(files.contains(file), is_english, "{language:?}: {file}");
        }
        for (message, wanted) in &english {
            let found = own.get(message);
            assert!(
                found == Some(wanted) || found.is_none() && !files.contains(wanted.1.as_str()),
                "{language:?}: {message} is {found:?}, and {wanted:?} in English"
            );
        }
        let added = own.keys().filter(|message| !english.contains_key(*message));
        assert_eq!(
            added.collect::<Vec<_>>(),
            Vec::<&String>::new(),
            "{language:?}"
        );
        assert_eq!(
            Language::from_code(&language.code().to_uppercase()),
            Some(language)
        );
    }
    let names: BTreeSet<&str> = Language::all().map(Language::name).collect();
    assert_eq!(names.len(), 8, "{names:?}");
}

#[test]
fn every_message_is_said_with_its_arguments_and_none_is_kept_that_is_not_said() {
    let english = messages(Language::ENGLISH);
    let mut sources = Vec::new();
    files(&root().join("src"), "rs", &mut sources);
    let mut said: BTreeSet<String> = BTreeSet::new();
    for path in sources {
        let code = code(&path);
        for (message, names) in calls(&code) {
            let wanted = english.get(&message);
            let wanted = wanted.unwrap_or_else(|| panic!("no {message}: {}", path.display()));
            assert_eq!(wanted.0, names, "{message}: {}", path.display());
        }
        said.extend(literals(&code));
    }
    let silent = english.keys().filter(|message| {
        !said.contains(*message) && !BEGINNINGS.iter().any(|word| message.starts_with(word))
    });
    assert_eq!(silent.collect::<Vec<_>>(), Vec::<&String>::new());
}

/// The text of a literal without tags and style sheets, which only a browser reads.
fn without_markup(literal: &str) -> String {
    let is_style_sheet = literal.starts_with("\n:root {");
    let mut rest = if is_style_sheet { "" } else { literal };
    let mut text = String::new();
    while let Some((before, tag)) = rest.split_once('<') {
        text.push_str(before);
        let (end, length) = if tag.starts_with("style>") {
            ("</style>", 8)
        } else {
            (">", 1)
        };
        // A literal may end within a tag.
        rest = tag.find(end).map_or("", |at| &tag[at + length..]);
    }
    text + rest
}

/// Whether a literal of a view is a label: a single word with a capital.
fn is_label(literal: &str) -> bool {
    let mut letters = literal.chars();
    letters.next().is_some_and(char::is_uppercase)
        && literal.len() > 1
        && letters.all(|letter| letter.is_lowercase() || letter == '…')
}

#[test]
fn markup_is_told_from_text_and_a_label_from_a_key() {
    for (literal, text) in [
        ("<dt>{}</dt><dd dir=\"auto\">{}</dd>", "{}{}"),
        ("<aside aria-label=\"", ""),
        ("<p>not <b>known</b> here</p>", "not known here"),
        (
            "<style>main { margin: 0 }</style>\nnot known",
            "\nnot known",
        ),
        ("not known", "not known"),
    ] {
        assert_eq!(without_markup(literal), text);
    }
    assert_eq!(without_values("{name} in {place}"), " in ");
    for (literal, label) in [
        ("Paper", true),
        ("Choose…", true),
        ("paper", false),
        ("A4", false),
    ] {
        assert_eq!(is_label(literal), label, "{literal}");
    }
}

#[test]
fn facts_hold_no_sentences() {
    let mut sentences = Vec::new();
    for folder in WITHOUT_SENTENCES {
        let mut sources = Vec::new();
        files(&root().join("src").join(folder), "rs", &mut sources);
        for path in sources {
            let code = code(&path);
            // Why a lint does not hold is the last thing in its line.
            let lines: Vec<&str> = code
                .lines()
                .map(|line| line.split("reason = \"").next().unwrap_or(line))
                .collect();
            for literal in literals(&without_panics(&lines.join("\n"))) {
                // A unit such as "kcal/100 ml".
                let is_unit = literal.ends_with("/100 ml") && !literal.starts_with(' ');
                let known = [READ, &FOR_PROGRAMS, &KEYS, &PLACES, &FONTS, &[NO_DIGITS]].concat();
                let is_known = known.contains(&literal.as_str());
                if is_unit || is_known {
                    continue;
                }
                let text = without_values(&without_markup(&literal));
                let words = text.split_whitespace();
                let words =
                    words.filter(|word| word.chars().filter(|c| c.is_lowercase()).count() > 1);
                if words.count() > 1
                    || folder.starts_with("ui/") && folder != "ui/theme" && is_label(&literal)
                {
                    sentences.push(format!("{}: {literal}", path.display()));
                }
            }
        }
    }
    assert!(sentences.is_empty(), "{}", sentences.join("\n"));
}

#[test]
fn a_plural_follows_the_number_that_is_shown() {
    let book = Book::default();
    let french = Speaker::new(&book).in_language(Language::from_code("fr").unwrap());
    for (steps, said) in [
        (1.94, "plus sucré de 1,9 cran"),
        (1.96, "plus sucré de 2,0 crans"),
        (2.1, "plus sucré de 2,1 crans"),
    ] {
        assert_eq!(french.axis_change(&Axis::Sweetness, steps), said);
    }
}

#[test]
fn numbers_and_lists_are_written_as_the_language_writes_them() {
    let book = Book::default();
    let speaker = Speaker::new(&book);
    assert_eq!(speaker.number(-1234.5, 1), "−1234.5");
    assert_eq!(speaker.number(0.04, 1), "0.0");
    assert_eq!(speaker.and(&["a", "b", "c"]), "a, b and c");
    assert_eq!(speaker.or(&["a", "b"]), "a or b");
    for (code, number, list) in [
        ("de", "−1234,5", "a, b und c"),
        ("fr", "−1234,5", "a, b et c"),
        ("es", "−1234,5", "a, b y c"),
        ("vi", "−1234,5", "a, b và c"),
        ("zh-Hans", "−1234.5", "a、b和c"),
        ("zh-Hant", "−1234.5", "a、b和c"),
        ("ko", "−1234.5", "a, b 및 c"),
    ] {
        let speaker = speaker.in_language(Language::from_code(code).unwrap());
        assert_eq!(speaker.number(-1234.5, 1), number, "{code}");
        assert_eq!(speaker.and(&["a", "b", "c"]), list, "{code}");
    }
}
