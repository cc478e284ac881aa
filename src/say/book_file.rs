//! Why a book or a list can't be read or saved, and where in a file something stands.

use std::path::Path;

use super::{Speaker, say};
use crate::book::{IdError, LONGEST_ID, MOST_LINES, nearest};
use crate::book_file::{
    FORMAT, FilePlace, Found, LONGEST_LIST, LONGEST_TEXT, LoadError, LoadErrorLine, LoadProblem,
    MOST_LISTED, ReadError, SaveError, SetAside, Step, TextFault, Wanted, WorkFault,
};
use crate::quantity::excerpt;

const MEGABYTE: u64 = 1024 * 1024;

/// Longest excerpt of a file, in characters.
const EXCERPT: usize = 40;

impl Speaker<'_> {
    /// Why a file can't be opened.
    pub fn load_error(&self, error: &LoadError) -> String {
        let lines = error.lines();
        let said: Vec<String> = lines
            .iter()
            .map(|line| self.load_error_line(line))
            .collect();
        said.join("\n")
    }

    /// A line of it.
    pub fn load_error_line(&self, line: &LoadErrorLine<'_>) -> String {
        match line {
            LoadErrorLine::Whole(error) => self.unread(error),
            LoadErrorLine::Only(problem, path) => {
                let problem = self.load_problem(problem);
                say!(self, "load-error-problem", problem: problem, path: shown(path))
            }
            LoadErrorLine::Count(count) => say!(self, "load-error-problems", count: *count),
            LoadErrorLine::Problem(problem) => format!("- {}", self.load_problem(problem)),
            LoadErrorLine::More(count) => {
                format!("- {}", say!(self, "load-error-more", count: *count))
            }
            LoadErrorLine::File(path) => say!(self, "load-error-file", path: shown(path)),
        }
    }

    fn unread(&self, error: &LoadError) -> String {
        match error {
            LoadError::Missing { path } => say!(self, "load-error-missing", path: shown(path)),
            LoadError::Directory { path } => {
                say!(self, "load-error-directory", path: shown(path))
            }
            LoadError::NotAFile { path } => {
                say!(self, "load-error-not-a-file", path: shown(path))
            }
            LoadError::NoPermission { path } => {
                say!(self, "load-error-no-permission", path: shown(path))
            }
            LoadError::Read { path, source } => {
                say!(self, "load-error-read", reason: source.to_string(), path: shown(path))
            }
            LoadError::NotUtf8 { path, line } => {
                say!(self, "load-error-not-utf8", line: *line, path: shown(path))
            }
            LoadError::Problems { path, .. } => {
                say!(self, "load-error-file", path: shown(path))
            }
        }
    }

    /// Why a text can't become a book, a line for each problem.
    pub fn load_problems(&self, problems: &[LoadProblem]) -> String {
        let said: Vec<String> = problems.iter().map(|one| self.load_problem(one)).collect();
        said.join("\n")
    }

    /// Why a text can't become a book.
    pub fn load_problem(&self, problem: &LoadProblem) -> String {
        match problem {
            LoadProblem::TooLong { bytes } => say!(
                self,
                "load-problem-too-long",
                megabytes: bytes.div_ceil(MEGABYTE),
                most: LONGEST_TEXT / MEGABYTE,
            ),
            LoadProblem::NoFormat => say!(self, "load-problem-no-format", format: FORMAT),
            LoadProblem::BadFormat { found } => say!(
                self,
                "load-problem-bad-format",
                found: excerpt(found, EXCERPT),
                format: FORMAT,
            ),
            LoadProblem::NewerFormat { found } => say!(
                self,
                "load-problem-newer-format",
                found: found.to_string(),
                format: FORMAT,
            ),
            LoadProblem::Text {
                fault,
                line,
                column,
            } => say!(
                self,
                "load-problem-text",
                fault: self.text_fault(fault),
                line: *line,
                column: *column,
            ),
            LoadProblem::DuplicateId {
                kind,
                id,
                first,
                second,
            } => say!(
                self,
                "load-problem-duplicate-id",
                kind: kind.key(),
                id: excerpt(id, EXCERPT),
                first: self.file_place(first),
                second: self.file_place(second),
            ),
            LoadProblem::BadId { error, place } => say!(
                self,
                "load-problem-bad-id",
                error: self.id_error(error),
                place: self.file_place(place),
            ),
            LoadProblem::TooMany { count, place } => say!(
                self,
                "load-problem-too-many",
                count: *count,
                most: MOST_LINES,
                place: self.file_place(place),
            ),
            LoadProblem::PackContent { place } => {
                say!(self, "load-problem-pack-content", place: self.file_place(place))
            }
            LoadProblem::NotFinite { found, place } => say!(
                self,
                "load-problem-not-finite",
                found: found.to_string(),
                place: self.file_place(place),
            ),
        }
    }

    fn text_fault(&self, fault: &TextFault) -> String {
        match fault {
            TextFault::Ended => self.word("text-ended").to_owned(),
            TextFault::OpenString => self.word("text-open-string").to_owned(),
            TextFault::OpenComment => self.word("text-open-comment").to_owned(),
            TextFault::TooDeep => self.word("text-too-deep").to_owned(),
            TextFault::UnknownField { found, known } => {
                let words = self.known_words(known);
                let shown = excerpt(found, EXCERPT);
                match near(found, known) {
                    None => say!(self, "text-unknown-field", found: shown, words: words),
                    Some(near) => {
                        say!(self, "text-unknown-field-near", found: shown, near: near, words: words)
                    }
                }
            }
            TextFault::UnknownWord { found, known } => {
                let words = self.known_words(known);
                let shown = excerpt(found, EXCERPT);
                match near(found, known) {
                    None => say!(self, "text-unknown-word", found: shown, words: words),
                    Some(near) => {
                        say!(self, "text-unknown-word-near", found: shown, near: near, words: words)
                    }
                }
            }
            TextFault::MissingField { field } => say!(self, "text-missing-field", field: *field),
            TextFault::FieldTwice { field } => say!(self, "text-field-twice", field: *field),
            TextFault::WrongKind { found, wanted } => say!(
                self,
                "text-wrong-kind",
                found: self.found(found),
                wanted: self.wanted(wanted),
            ),
        }
    }

    fn known_words(&self, words: &[&'static str]) -> String {
        if words.is_empty() {
            return self.word("text-no-words").to_owned();
        }
        let quoted: Vec<String> = words.iter().map(|word| format!("`{word}`")).collect();
        self.or(&quoted)
    }

    fn found(&self, found: &Found) -> String {
        match found {
            Found::Text(text) => say!(self, "found-text", text: text),
            Found::Values(count) => say!(self, "found-values", count: *count),
            Found::NoWholeNumber => self.word("found-no-whole-number").to_owned(),
            Found::Reader(words) => words.clone(),
        }
    }

    fn wanted(&self, wanted: &Wanted) -> String {
        let message = match wanted {
            Wanted::List => "wanted-list",
            Wanted::EndOfList => "wanted-end-of-list",
            Wanted::Group => "wanted-group",
            Wanted::EndOfGroup => "wanted-end-of-group",
            Wanted::Colon => "wanted-colon",
            Wanted::Comma => "wanted-comma",
            Wanted::Number => "wanted-number",
            Wanted::WholeNumber => "wanted-whole-number",
            Wanted::Count => "wanted-count",
            Wanted::Text => "wanted-text",
            Wanted::Word => "wanted-word",
            Wanted::YesOrNo => "wanted-yes-or-no",
            Wanted::EndOfBook => "wanted-end-of-book",
            Wanted::Figure => "wanted-figure",
            Wanted::Reader(words) => return words.clone(),
        };
        self.word(message).to_owned()
    }

    /// Why a text is no id.
    pub fn id_error(&self, error: &IdError) -> String {
        match error {
            IdError::Empty => self.word("id-error-empty").to_owned(),
            IdError::TooLong { found, length } => {
                say!(self, "id-error-too-long", found: found, count: *length, most: LONGEST_ID)
            }
            IdError::Character { found, character } => {
                say!(self, "id-error-character", found: found, character: character)
            }
        }
    }

    /// Where in a file something stands.
    pub fn file_place(&self, place: &FilePlace) -> String {
        let mut parts: Vec<String> = Vec::new();
        for step in &place.steps {
            match step {
                Step::Field(name) => parts.push((*name).to_owned()),
                Step::Item { index, label } => {
                    let list = parts.pop().unwrap_or_default();
                    parts.push(if label.is_empty() {
                        say!(self, "file-place-item", list: list, number: index + 1)
                    } else {
                        let id = excerpt(label, EXCERPT);
                        say!(self, "file-place-item-called", list: list, id: id)
                    });
                }
            }
        }
        let way = parts.join(", ");
        match place.line {
            None => way,
            Some(line) if way.is_empty() => say!(self, "file-place-line", line: line),
            Some(line) => say!(self, "file-place", line: line, way: way),
        }
    }

    /// Why a list can't be read.
    pub fn read_error(&self, error: &ReadError) -> String {
        match error {
            ReadError::NotAFile { path } => {
                say!(self, "read-error-not-a-file", path: shown(path))
            }
            ReadError::TooLong { path } => say!(
                self,
                "read-error-too-long",
                most: LONGEST_LIST / MEGABYTE,
                path: shown(path),
            ),
            ReadError::Read { path, source } => {
                say!(self, "read-error-read", reason: source.to_string(), path: shown(path))
            }
        }
    }

    /// Why a book can't be saved.
    pub fn save_error(&self, error: &SaveError) -> String {
        match error {
            SaveError::Directory { path } => {
                say!(self, "save-error-directory", path: shown(path))
            }
            SaveError::NotAFile { path } => {
                say!(self, "save-error-not-a-file", path: shown(path))
            }
            SaveError::NoFolder { path } => say!(self, "save-error-no-folder", path: shown(path)),
            SaveError::NoPermission { path } => {
                say!(self, "save-error-no-permission", path: shown(path))
            }
            SaveError::NoPermissionInFolder { path } => {
                say!(self, "save-error-no-permission-in-folder", path: shown(path))
            }
            SaveError::ReadOnlyDisk { path } => {
                say!(self, "save-error-read-only-disk", path: shown(path))
            }
            SaveError::NotFinite { path, count } => {
                say!(self, "save-error-not-finite", count: *count, path: shown(path))
            }
            SaveError::TooLong { path, bytes } => say!(
                self,
                "save-error-too-long",
                megabytes: bytes.div_ceil(MEGABYTE),
                most: LONGEST_TEXT / MEGABYTE,
                path: shown(path),
            ),
            SaveError::ChangedOnDisk { path } => {
                say!(self, "save-error-changed-on-disk", path: shown(path))
            }
            SaveError::DiskFull { path, .. } => {
                say!(self, "save-error-disk-full", path: shown(path))
            }
            SaveError::Write { path, source } => {
                say!(self, "save-error-write", reason: source.to_string(), path: shown(path))
            }
        }
    }

    /// Unsaved work that can't be read, and where it is kept.
    pub fn set_aside(&self, set_aside: &SetAside) -> String {
        let reason = self.work_fault(&set_aside.reason);
        say!(self, "set-aside", reason: reason, path: shown(&set_aside.path))
    }

    fn work_fault(&self, fault: &WorkFault) -> String {
        let message = match fault {
            WorkFault::NoWholeChange => "work-no-whole-change",
            WorkFault::EndsEarly => "work-ends-early",
            WorkFault::NoOwner => "work-no-owner",
            WorkFault::FirstLineDamaged => "work-first-line-damaged",
            WorkFault::PartMissing => "work-part-missing",
            WorkFault::TimeDamaged => "work-time-damaged",
            WorkFault::ChangeDamaged => "work-change-damaged",
            WorkFault::NoBook(problems) => {
                return self.load_problems(&problems[..problems.len().min(MOST_LISTED)]);
            }
            WorkFault::Unreadable(error) => return self.load_error(error),
            WorkFault::System(error) => return error.to_string(),
        };
        self.word(message).to_owned()
    }
}

fn shown(path: &Path) -> String {
    path.display().to_string()
}

/// The word that was probably meant; none when there is none like it or what stands there is too long to be a slip.
fn near(found: &str, known: &[&'static str]) -> Option<String> {
    if found.len() > EXCERPT {
        return None;
    }
    nearest(found, known.iter().copied()).into_iter().next()
}

#[cfg(test)]
mod tests {
    use std::path::PathBuf;

    use super::*;
    use crate::book::IdKind;

    #[test]
    fn a_file_that_is_no_book_is_told_with_what_to_do_and_where() {
        let place = FilePlace {
            line: Some(38),
            steps: vec![
                Step::Field("recipes"),
                Step::Item {
                    index: 0,
                    label: "pear-drift".into(),
                },
                Step::Field("entries"),
                Step::Item {
                    index: 2,
                    label: String::new(),
                },
                Step::Field("amount"),
            ],
        };
        let first = FilePlace {
            line: None,
            steps: Vec::new(),
        };
        let text = |fault| LoadProblem::Text {
            fault,
            line: 8,
            column: 13,
        };
        let speaker = Speaker::without_book();
        for (problem, words) in [
            (
                LoadProblem::NotFinite {
                    found: f64::INFINITY,
                    place: place.clone(),
                },
                "a number is inf; enter a finite number such as 12.5, in line 38, recipe `pear-drift`, line 3, amount",
            ),
            (
                LoadProblem::DuplicateId {
                    kind: IdKind::Recipe,
                    id: "pear-drift".into(),
                    first,
                    second: place,
                },
                "the recipe `pear-drift` is in the book twice; give one of the two another id: ; line 38, recipe `pear-drift`, \
                 line 3, amount",
            ),
            (
                text(TextFault::UnknownWord {
                    found: "Sirup".into(),
                    known: vec!["Liquid", "Syrup"],
                }),
                "unknown word `Sirup` (did you mean `Syrup`?); use `Liquid` or `Syrup`, at line 8, column 13",
            ),
            (
                text(TextFault::WrongKind {
                    found: Found::Values(1),
                    wanted: Wanted::Figure,
                }),
                "found 1 value in brackets instead of a figure such as `(8.0, Label)` or `(8.0, Measured, 0.2)`, at line 8, \
                 column 13",
            ),
        ] {
            assert_eq!(speaker.load_problem(&problem), words);
        }
    }

    #[test]
    fn many_problems_are_listed_and_the_rest_is_counted() {
        let error = LoadError::Problems {
            path: PathBuf::from("book.ron"),
            problems: vec![LoadProblem::NoFormat; MOST_LISTED + 2],
        };
        let said = Speaker::without_book().load_error(&error);
        let lines: Vec<&str> = said.lines().collect();
        assert_eq!(lines.len(), MOST_LISTED + 3);
        assert_eq!(lines[0], "the book has 22 problems:");
        assert_eq!(lines[MOST_LISTED + 1], "- and 2 more");
        assert_eq!(lines[MOST_LISTED + 2], "file: book.ron");
    }

    #[test]
    fn an_error_of_the_system_is_told_in_its_own_words() {
        let error = SaveError::Write {
            path: PathBuf::from("book.ron"),
            source: std::io::ErrorKind::TimedOut.into(),
        };
        assert_eq!(
            Speaker::without_book().save_error(&error),
            "the book could not be written (timed out); save again or choose another place: book.ron"
        );
        let set_aside = SetAside {
            path: PathBuf::from("unsaved.damaged"),
            reason: std::sync::Arc::new(WorkFault::NoOwner),
        };
        assert_eq!(
            Speaker::without_book().set_aside(&set_aside),
            "unsaved work can't be read (its first line does not say whose work it is); it is kept as unsaved.damaged"
        );
    }
}
