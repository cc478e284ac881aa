//! The languages that Evensip speaks: the folders of `assets/languages`.

use std::fmt;
use std::sync::{LazyLock, OnceLock};

use include_dir::{Dir, include_dir};

use super::catalogue::Catalogue;
use crate::book::LanguageId;

static FOLDERS: Dir<'_> = include_dir!("$CARGO_MANIFEST_DIR/assets/languages");

/// A catalogue is read when its language is first spoken; in the order of the codes.
static CATALOGUES: LazyLock<Vec<(&'static str, OnceLock<Catalogue>)>> = LazyLock::new(|| {
    let folders = FOLDERS.dirs();
    let codes = folders.filter_map(|folder| folder.path().to_str());
    let mut catalogues: Vec<_> = codes.map(|code| (code, OnceLock::new())).collect();
    catalogues.sort_unstable_by_key(|(code, _)| *code);
    catalogues
});

/// A language that there is a catalogue of.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Language(&'static str);

impl Language {
    /// The language that every message is written in first, and that stands in where another has none.
    pub const ENGLISH: Self = Self("en");

    /// The files that are of English alone: the commands speak no other language.
    pub const OF_ENGLISH_ALONE: [&'static str; 1] = ["command-line.ftl"];

    /// All of them, by code.
    pub fn all() -> impl Iterator<Item = Self> {
        CATALOGUES.iter().map(|(code, _)| Self(code))
    }

    /// The language of a code as BCP 47 writes it, in any case: "en", "zh-Hant".
    pub fn from_code(code: &str) -> Option<Self> {
        Self::all().find(|language| language.0.eq_ignore_ascii_case(code))
    }

    /// Its code as BCP 47 writes it.
    pub fn code(self) -> &'static str {
        self.0
    }

    /// What its speakers call it.
    pub fn name(self) -> &'static str {
        self.catalogue().word("language-name").unwrap_or(self.0)
    }

    /// The language that a book names; `None` for one that there is no catalogue of.
    pub fn of_id(id: &LanguageId) -> Option<Self> {
        Self::from_code(id.as_str())
    }

    /// How a book names it.
    pub fn id(self) -> LanguageId {
        let code = self.0.to_ascii_lowercase();
        LanguageId::new(&code).unwrap_or_else(|_| LanguageId::from_name(&code, |_| false))
    }

    /// What the speakers of a language call it; of one that there is no catalogue of, its code.
    pub fn name_of(id: &LanguageId) -> &str {
        match Self::of_id(id) {
            Some(language) => language.name(),
            None => id.as_str(),
        }
    }

    /// Whether it has all the files that English has, but for those of English alone, so that the window can speak it. Others
    /// have what is printed.
    pub fn is_whole(self) -> bool {
        let count = |language: Self| {
            let names = FOLDERS.get_dir(language.0)?.files();
            let names = names.filter_map(|file| file.path().file_name()?.to_str());
            Some(
                names
                    .filter(|name| !Self::OF_ENGLISH_ALONE.contains(name))
                    .count(),
            )
        };
        count(self) == count(Self::ENGLISH)
    }

    pub(super) fn catalogue(self) -> &'static Catalogue {
        let of = |wanted: &str| CATALOGUES.iter().find(|(code, _)| *code == wanted);
        let place = of(self.0).or_else(|| of("en")).map(|(_, place)| place);
        // The folder of English is part of the program; without it there would be nothing to say.
        let place = place.unwrap_or_else(|| {
            static NONE: OnceLock<Catalogue> = OnceLock::new();
            &NONE
        });
        place.get_or_init(|| {
            let folder = FOLDERS.get_dir(self.0);
            let files = folder.into_iter().flat_map(Dir::files);
            let texts = files.filter_map(include_dir::File::contents_utf8);
            Catalogue::new(self.0, texts)
        })
    }
}

impl fmt::Debug for Language {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(self.0)
    }
}

impl Default for Language {
    fn default() -> Self {
        Self::ENGLISH
    }
}
