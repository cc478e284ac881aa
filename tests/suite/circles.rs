//! Within a folder files read as a line: each uses what stands below it, and none of what stands above.
//!
//! The sources are read, and every `use` and every path in the code is followed to the file that defines what it names; a
//! re-export is only a signpost. At each level the files and folders must have an order in which nothing points upwards: a
//! folder counts as one with everything in it, and a `mod.rs` with code of its own as a file beside its children.
//!
//! # Limitations
//!
//! - A method is called without its path, so an `impl` in another file than its type is not followed.
//! - What a macro writes is not seen.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

/// Folders without circles.
const IN_LINE: [&str; 14] = [
    "quantity",
    "optimiser",
    "book",
    "edit",
    "balance",
    "swap",
    "tasting",
    "cups",
    "record",
    "cards",
    "workbench",
    "ui",
    "exchange",
    "book_file",
];

/// A module by its path below `src`.
type Module = Vec<String>;

/// A path that a `use` names.
struct Use {
    path: Vec<String>,
    /// What it is called here.
    name: String,
    is_public: bool,
}

/// A source file: what it uses, and its words without that.
#[derive(Default)]
struct Source {
    uses: Vec<Use>,
    words: Vec<String>,
}

struct Sources {
    files: BTreeMap<Module, Source>,
}

/// Which file points to which, and by what name.
type Arrows = BTreeMap<(Module, Module), BTreeSet<String>>;

/// The words and signs of a text, without comments, quoted text and what is only compiled for tests.
fn words_of(text: &str) -> Vec<String> {
    let characters: Vec<char> = text.chars().collect();
    let mut words: Vec<String> = Vec::new();
    let mut at = 0;
    while at < characters.len() {
        let rest = &characters[at..];
        at += match rest {
            ['/', '/', ..] => rest.iter().position(|c| *c == '\n').unwrap_or(rest.len()),
            ['/', '*', ..] => length_until(rest, &['*', '/']),
            ['r', '"', ..] | ['r', '#', '"' | '#', ..] if !ends_in_a_word(&characters[..at]) => {
                let signs = rest[1..].iter().take_while(|c| **c == '#').count();
                let end: Vec<char> = ['"'].into_iter().chain(vec!['#'; signs]).collect();
                signs + 2 + length_until(&rest[signs + 2..], &end)
            }
            ['"', ..] | ['\'', '\\', ..] => quoted(rest),
            ['\'', _, '\'', ..] => 3,
            [':', ':', ..] => {
                words.push("::".to_owned());
                2
            }
            [first, ..] if is_of_a_word(*first) => {
                let word: String = rest
                    .iter()
                    .copied()
                    .take_while(|c| is_of_a_word(*c))
                    .collect();
                let length = word.chars().count();
                words.push(word);
                length
            }
            [sign, ..] => {
                if !sign.is_whitespace() {
                    words.push(sign.to_string());
                }
                1
            }
            [] => 1,
        };
    }
    without_tests(&words)
}

fn is_of_a_word(character: char) -> bool {
    character.is_alphanumeric() || character == '_'
}

fn ends_in_a_word(characters: &[char]) -> bool {
    characters.last().is_some_and(|c| is_of_a_word(*c))
}

fn length_until(characters: &[char], end: &[char]) -> usize {
    let found = characters.windows(end.len()).position(|piece| piece == end);
    found.map_or(characters.len(), |at| at + end.len())
}

/// Length of a text or a character between quotation marks, these included.
fn quoted(characters: &[char]) -> usize {
    let mut at = 1;
    while at < characters.len() && characters[at] != characters[0] {
        at += if characters[at] == '\\' { 2 } else { 1 };
    }
    at + 1
}

/// Without the items behind `#[cfg(test)]`.
fn without_tests(words: &[String]) -> Vec<String> {
    let mark = ["#", "[", "cfg", "(", "test", ")", "]"];
    let mut kept = Vec::new();
    let mut at = 0;
    while at < words.len() {
        if words[at..].iter().take(mark.len()).eq(mark) {
            at = end_of_item(words, at + mark.len());
        } else {
            kept.push(words[at].clone());
            at += 1;
        }
    }
    kept
}

/// Behind the `;` or the brace that ends an item.
fn end_of_item(words: &[String], from: usize) -> usize {
    let mut depth = 0_usize;
    for (at, word) in words.iter().enumerate().skip(from) {
        match word.as_str() {
            "{" => depth += 1,
            "}" if depth <= 1 => return at + 1,
            "}" => depth -= 1,
            ";" if depth == 0 => return at + 1,
            _ => {}
        }
    }
    words.len()
}

impl Source {
    fn of(text: &str) -> Self {
        let words = words_of(text);
        let mut source = Self::default();
        let mut is_public = false;
        let mut at = 0;
        while at < words.len() {
            match words[at].as_str() {
                "pub" => {
                    is_public = true;
                    at += 1;
                    if words.get(at).is_some_and(|word| word == "(") {
                        // Who may see it is no use.
                        at += words[at..].iter().position(|word| word == ")").unwrap_or(0) + 1;
                    }
                    continue;
                }
                // Not the name of what a message is told.
                "use" if words.get(at + 1).is_some_and(|word| word != ":") => {
                    let end = at + words[at..].iter().position(|word| word == ";").unwrap_or(0);
                    leaves(&words[at + 1..end], &[], &mut |path, name| {
                        source.uses.push(Use {
                            path,
                            name,
                            is_public,
                        });
                    });
                    at = end;
                }
                "mod" => at += 1,
                word => source.words.push(word.to_owned()),
            }
            is_public = false;
            at += 1;
        }
        source
    }

    /// Paths in the code.
    fn paths(&self) -> Vec<Vec<String>> {
        let mut paths = Vec::new();
        let mut at = 0;
        while at < self.words.len() {
            let mut end = at + 1;
            let is_word = |at: usize| {
                self.words
                    .get(at)
                    .is_some_and(|word| word.chars().all(is_of_a_word))
            };
            while self.words.get(end).is_some_and(|word| word == "::") && is_word(end + 1) {
                end += 2;
            }
            let goes_on = at > 0 && self.words[at - 1] == "::";
            if end > at + 1 && is_word(at) && !goes_on {
                paths.push(self.words[at..end].iter().step_by(2).cloned().collect());
            }
            at = end;
        }
        paths
    }

    /// Whether the code names something without a path: a type, or a function that it calls.
    fn names(&self, name: &str) -> bool {
        let is_type = name.starts_with(char::is_uppercase);
        let word = |at: usize| self.words.get(at).map_or("", String::as_str);
        self.words.iter().enumerate().any(|(at, found)| {
            let before = if at == 0 { "" } else { word(at - 1) };
            found == name
                && !matches!(before, "::" | "." | "fn")
                && (is_type || word(at + 1) == "(")
        })
    }
}

/// The paths of a `use`, braces taken apart.
fn leaves(words: &[String], head: &[String], found: &mut impl FnMut(Vec<String>, String)) {
    let mut depth = 0_usize;
    let pieces = words.split(|word| {
        match word.as_str() {
            "{" => depth += 1,
            "}" => depth -= 1,
            _ => {}
        }
        depth == 0 && word == ","
    });
    for piece in pieces.filter(|piece| !piece.is_empty()) {
        let parts = |piece: &[String]| -> Vec<String> {
            let named = piece.iter().filter(|word| *word != "::");
            head.iter().chain(named).cloned().collect()
        };
        if let Some(brace) = piece.iter().position(|word| word == "{") {
            let inside = &piece[brace + 1..piece.len() - 1];
            found_in_braces(inside, &parts(&piece[..brace]), found);
            continue;
        }
        let renamed = piece.iter().position(|word| word == "as");
        let mut path = parts(&piece[..renamed.unwrap_or(piece.len())]);
        if path.len() > 1 && path.last().is_some_and(|last| last == "self") {
            path.pop();
        }
        let name = renamed.map_or_else(|| path.last().cloned(), |at| piece.get(at + 1).cloned());
        found(path, name.unwrap_or_default());
    }
}

fn found_in_braces(words: &[String], head: &[String], found: &mut dyn FnMut(Vec<String>, String)) {
    leaves(words, head, &mut |path, name| found(path, name));
}

impl Sources {
    fn read() -> Self {
        let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
        let mut files = BTreeMap::new();
        read_folder(&root, &Vec::new(), &mut files);
        Self { files }
    }

    fn has_child(&self, module: &[String], name: &str) -> bool {
        let child: Module = module.iter().cloned().chain([name.to_owned()]).collect();
        self.files.contains_key(&child)
    }

    /// A path from the top; `None` for one of another crate.
    fn absolute(&self, module: &[String], path: &[String]) -> Option<Vec<String>> {
        let first = path.first()?.as_str();
        let (base, rest) = match first {
            "crate" => (&module[..0], &path[1..]),
            "self" => (module, &path[1..]),
            "super" => {
                let up = path.iter().take_while(|part| *part == "super").count();
                (&module[..module.len().checked_sub(up)?], &path[up..])
            }
            _ if self.has_child(module, first) => (module, path),
            _ => return None,
        };
        Some(base.iter().chain(rest).cloned().collect())
    }

    /// The file that defines what a path from the top names, through all re-exports.
    fn definition(&self, path: &[String], depth: usize) -> Option<Module> {
        let length = (1..=path.len())
            .rev()
            .find(|length| self.files.contains_key(&path[..*length]))?;
        let module = &path[..length];
        let Some(name) = path.get(length) else {
            return Some(module.to_vec());
        };
        let source = &self.files[module];
        let Some(import) = source.uses.iter().find(|import| import.name == *name) else {
            return Some(module.to_vec());
        };
        if depth > 8 {
            return None;
        }
        let mut next = self.absolute(module, &import.path)?;
        next.extend(path[length + 1..].iter().cloned());
        self.definition(&next, depth + 1)
    }

    fn arrows(&self) -> Arrows {
        let mut arrows = Arrows::new();
        for (module, source) in &self.files {
            let mut point = |path: &[String]| {
                let to = self
                    .absolute(module, path)
                    .and_then(|path| self.definition(&path, 0));
                if let Some(to) = to.filter(|to| to != module) {
                    let names = arrows.entry((module.clone(), to)).or_default();
                    names.extend(path.last().cloned());
                }
            };
            for import in &source.uses {
                if !import.is_public || source.names(&import.name) {
                    point(&import.path);
                }
            }
            let is_imported = |name: &String| source.uses.iter().any(|import| import.name == *name);
            for path in source.paths() {
                let is_plain = matches!(path[0].as_str(), "crate" | "super" | "self");
                if is_plain || !is_imported(&path[0]) {
                    point(&path);
                }
            }
        }
        arrows
    }
}

fn read_folder(folder: &Path, module: &Module, files: &mut BTreeMap<Module, Source>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        let name = path.file_stem().unwrap().to_string_lossy().into_owned();
        let mut inner = module.clone();
        if name != "mod" {
            inner.push(name);
        }
        if path.is_dir() {
            read_folder(&path, &inner, files);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            let text = std::fs::read_to_string(&path).unwrap();
            files.insert(inner, Source::of(&text));
        }
    }
}

/// What is left of arrows between boxes when all that nothing stands below, or above, is taken away: the circles, and what
/// lies between two of them.
fn circles(mut arrows: BTreeSet<(String, String)>) -> BTreeSet<(String, String)> {
    loop {
        let count = arrows.len();
        let starts: BTreeSet<String> = arrows.iter().map(|(from, _)| from.clone()).collect();
        let ends: BTreeSet<String> = arrows.iter().map(|(_, to)| to.clone()).collect();
        arrows.retain(|(from, to)| ends.contains(from) && starts.contains(to));
        if arrows.len() == count {
            return arrows;
        }
    }
}

/// What a module counts as at the level of a folder: a child, or the `mod.rs` itself.
fn place_in(folder: &[String], module: &[String]) -> Option<String> {
    let is_inside = module.starts_with(folder);
    let child = module.get(folder.len());
    is_inside.then(|| child.cloned().unwrap_or_else(|| "mod".to_owned()))
}

/// The arrows that make circles in a folder or in one below it, with the names that they follow.
fn circles_below(top: &str, arrows: &Arrows) -> Vec<String> {
    let modules = arrows.keys().flat_map(|(from, to)| [from, to]);
    let folders: BTreeSet<&[String]> = modules
        .filter(|module| module[0] == top)
        .flat_map(|module| (1..=module.len()).map(|length| &module[..length]))
        .collect();
    let mut found = Vec::new();
    for folder in folders {
        let mut here: BTreeMap<(String, String), Vec<String>> = BTreeMap::new();
        for ((from, to), names) in arrows {
            if let (Some(start), Some(end)) = (place_in(folder, from), place_in(folder, to))
                && start != end
            {
                let names: Vec<String> = names.iter().cloned().collect();
                here.entry((start, end)).or_default().push(format!(
                    "{} uses {} of {}",
                    from.join("/"),
                    names.join(", "),
                    to.join("/")
                ));
            }
        }
        for arrow in circles(here.keys().cloned().collect()) {
            found.extend(here[&arrow].iter().cloned());
        }
    }
    found
}

#[test]
fn the_files_of_a_folder_stand_in_a_line() {
    let arrows = Sources::read().arrows();
    for folder in IN_LINE {
        let found = circles_below(folder, &arrows);
        assert!(
            found.is_empty(),
            "`{folder}`: these uses make a circle; put what both files need into one below them:\n{}",
            found.join("\n")
        );
    }
}

#[test]
fn a_circle_is_found_through_re_exports_groups_and_paths() {
    let module = |path: &str| -> Module { path.split('/').map(str::to_owned).collect() };
    let arrows_of = |files: &[(&str, &str)]| {
        let read = files
            .iter()
            .map(|(path, text)| (module(path), Source::of(text)));
        Sources {
            files: read.collect(),
        }
        .arrows()
    };
    let top = (
        "top",
        "mod one; mod two; pub use one::One; pub use two::{Two, Three};",
    );
    for (one, two, count) in [
        ("use super::Two;", "use super::one::One as First;", 2),
        (
            "fn f() { crate::top::two::g() }",
            "use std::{fmt, io};\nuse super::{One};",
            2,
        ),
        ("use super::{Three, two::Two};", "pub struct Two;", 0),
        (
            "// use super::Two;\nconst A: &str = \"super::Two\";",
            "use super::One;",
            0,
        ),
        (
            "#[cfg(test)]\nmod tests { use super::super::Two; }",
            "use super::One;",
            0,
        ),
        ("pub(in crate::top) struct One;", "use super::One;", 0),
        ("pub use super::Two;", "use super::One;", 0),
    ] {
        let arrows = arrows_of(&[top, ("top/one", one), ("top/two", two)]);
        let found = circles_below("top", &arrows);
        assert_eq!(found.len(), count, "{one}\n{two}\n{found:?}");
    }
    // A folder counts as one with all that is in it.
    let nested = arrows_of(&[
        ("top", "mod low; mod high;"),
        ("top/low", "mod part; mod other;"),
        ("top/low/part", "use crate::top::high::High;"),
        ("top/low/other", "pub struct Other;"),
        ("top/high", "use super::low::other::Other; pub struct High;"),
    ]);
    assert_eq!(circles_below("top", &nested).len(), 2);
}
