//! Cards written to files on a thread of their own, with progress and a way to stop.

use std::ffi::OsStr;
use std::path::PathBuf;
use std::sync::{Arc, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use super::job::{BrokeDown, Job, Wake};
use crate::book::Book;
use crate::book_file;
use crate::cards::{
    CardOptions, CardRequest, Document, Fonts, MissingCharacter, Page, Paper, Typesetter, card,
    csv, file_name, html, json, markdown, pdf,
};
use crate::say::Speaker;
use crate::swap::Watch;

/// The format of an exported card.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CardFormat {
    /// Pages with embedded fonts.
    #[default]
    Pdf,
    /// A page for a browser.
    Html,
    /// Markdown.
    Markdown,
    /// Comma-separated values.
    Csv,
    /// The card as data.
    Json,
}

impl CardFormat {
    /// All formats, in the order in which they are offered.
    pub const ALL: [Self; 5] = [Self::Pdf, Self::Html, Self::Markdown, Self::Csv, Self::Json];

    /// The word on screens.
    pub fn word(self) -> &'static str {
        match self {
            Self::Pdf => "PDF",
            Self::Html => "HTML",
            Self::Markdown => "Markdown",
            Self::Csv => "CSV",
            Self::Json => "JSON",
        }
    }

    /// The ending of a file name.
    pub fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Html => "html",
            Self::Markdown => "md",
            Self::Csv => "csv",
            Self::Json => "json",
        }
    }

    /// A document in this format. Only a PDF needs the typesetter.
    pub fn bytes(
        self,
        document: &Document,
        paper: Paper,
        setter: &mut Typesetter,
        speaker: Speaker<'_>,
    ) -> Result<Vec<u8>, String> {
        Ok(match self {
            Self::Pdf => {
                let pages = setter.pages(document, paper);
                pdf(document, &pages).map_err(|error| error.words(&speaker))?
            }
            Self::Html => html(document, paper).into_bytes(),
            Self::Markdown => markdown(document).into_bytes(),
            Self::Csv => csv(document),
            Self::Json => format!("{:#}\n", json(document)).into_bytes(),
        })
    }
}

/// Cards that are to be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ExportOrder {
    /// What is asked for, a file each.
    pub requests: Vec<CardRequest>,
    /// Date and language.
    pub options: CardOptions,
    /// The paper.
    pub paper: Paper,
    /// The format.
    pub format: CardFormat,
    /// The folder.
    pub folder: PathBuf,
}

/// A file that was written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct WrittenCard {
    /// Where it is.
    pub path: PathBuf,
    /// The name that it would have if no other file had it already.
    pub was_taken: Option<String>,
}

/// How far an export is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ExportState {
    /// So many of so many are written.
    Running {
        /// Written.
        done: usize,
        /// Of so many.
        of: usize,
    },
    /// It has ended.
    Ended {
        /// The files that were written.
        written: Vec<WrittenCard>,
        /// Why it ended before its end; `None` when everything was written.
        stopped: Option<String>,
    },
}

/// An export on its thread. Dropped, it stops after the card in hand.
pub struct Export {
    of: usize,
    written: Arc<Mutex<Vec<WrittenCard>>>,
    job: Option<Job<(), Result<(), String>>>,
    /// How it ended, once it has.
    end: Result<(), String>,
    voice: Speaker<'static>,
}

impl Export {
    /// Begins to write; `wake` is called whenever there is something new to show.
    pub fn start(
        book: Arc<Book>,
        order: ExportOrder,
        fonts: SharedFonts,
        voice: Speaker<'static>,
        wake: &Wake,
    ) -> Self {
        let (of, written) = (order.requests.len(), Arc::default());
        let (list, tell): (Arc<Mutex<Vec<WrittenCard>>>, _) = (Arc::clone(&written), wake.clone());
        let work = move |watch: &Watch| {
            let note = |card| {
                lock(&list).push(card);
                tell();
            };
            write_all(voice.about(&book), &order, &fonts, watch, &note)
        };
        Self {
            of,
            written,
            job: Some(Job::start((), wake, work)),
            end: Ok(()),
            voice,
        }
    }

    /// Stops it after the card in hand.
    pub fn cancel(&self) {
        if let Some(job) = &self.job {
            job.watch().stop();
        }
    }

    /// How far it is.
    pub fn state(&mut self) -> ExportState {
        if let Some(((), end)) = Job::take_ended(&mut self.job, Duration::ZERO) {
            let broke_down = |BrokeDown| Err(self.voice.word("export-broke-down").to_owned());
            self.end = end.unwrap_or_else(broke_down);
        }
        let written = lock(&self.written);
        if self.job.is_some() {
            ExportState::Running {
                done: written.len(),
                of: self.of,
            }
        } else {
            ExportState::Ended {
                written: written.clone(),
                stopped: self.end.clone().err(),
            }
        }
    }
}

/// Pushing to a list leaves it whole, whatever happens.
fn lock(written: &Mutex<Vec<WrittenCard>>) -> MutexGuard<'_, Vec<WrittenCard>> {
    written.lock().unwrap_or_else(PoisonError::into_inner)
}

/// Writes one card after the other; `Err` says why it ended early.
fn write_all(
    speaker: Speaker<'_>,
    order: &ExportOrder,
    fonts: &SharedFonts,
    watch: &Watch,
    note: &dyn Fn(WrittenCard),
) -> Result<(), String> {
    let book = speaker.book;
    let mut setter = Typesetter::new(fonts.get(), order.options.language.code());
    for request in &order.requests {
        if watch.is_stopped() {
            return Err(speaker.word("export-stopped").to_owned());
        }
        let document =
            card(book, request, &order.options).map_err(|error| error.words(&speaker))?;
        let name = file_name(&document, order.format.ending());
        let bytes = order
            .format
            .bytes(&document, order.paper, &mut setter, speaker)?;
        let path = book_file::write_beside_others(&order.folder, &name, &bytes)
            .map_err(|error| speaker.save_error(&error))?;
        note(WrittenCard {
            was_taken: (path.file_name() != Some(OsStr::new(&name))).then_some(name),
            path,
        });
    }
    Ok(())
}

/// The fonts of the machine, looked up once, by whoever needs them first.
#[derive(Clone, Default)]
pub struct SharedFonts {
    found: Arc<Mutex<Option<Fonts>>>,
    bundled_only: bool,
}

impl SharedFonts {
    /// The fonts of the program alone: the same on every machine.
    pub fn bundled() -> Self {
        Self {
            bundled_only: true,
            ..Self::default()
        }
    }

    /// The fonts; the first call may take a while.
    pub fn get(&self) -> Fonts {
        let Ok(mut found) = self.found.lock() else {
            return Fonts::bundled();
        };
        found
            .get_or_insert_with(|| {
                if self.bundled_only {
                    Fonts::bundled()
                } else {
                    Fonts::installed()
                }
            })
            .clone()
    }
}

impl std::fmt::Debug for SharedFonts {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        formatter
            .debug_struct("SharedFonts")
            .finish_non_exhaustive()
    }
}

/// A card as it is previewed.
#[derive(Clone, Debug)]
pub struct CardPreview {
    /// The layout model.
    pub document: Document,
    /// Its pages.
    pub pages: Vec<Page>,
    /// Characters that no font has.
    pub missing: Vec<MissingCharacter>,
}

/// What a preview is of.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PreviewOrder {
    /// What is asked for.
    pub request: CardRequest,
    /// Date and language.
    pub options: CardOptions,
    /// The paper.
    pub paper: Paper,
}

/// A preview that is being made on its thread.
pub struct Previewing {
    job: Job<(), Result<CardPreview, String>>,
    voice: Speaker<'static>,
}

impl Previewing {
    /// Begins to lay a card out.
    pub fn start(
        book: Arc<Book>,
        order: PreviewOrder,
        fonts: SharedFonts,
        voice: Speaker<'static>,
        wake: &Wake,
    ) -> Self {
        let work = move |_: &Watch| preview(voice.about(&book), &order, fonts.get());
        Self {
            job: Job::start((), wake, work),
            voice,
        }
    }

    /// The preview, once it is there.
    pub fn poll(&self) -> Option<Result<CardPreview, String>> {
        let preview = self.job.poll(Duration::ZERO)?;
        let broke_down = |BrokeDown| Err(self.voice.word("preview-broke-down").to_owned());
        Some(preview.unwrap_or_else(broke_down))
    }
}

fn preview(
    speaker: Speaker<'_>,
    order: &PreviewOrder,
    fonts: Fonts,
) -> Result<CardPreview, String> {
    let document = card(speaker.book, &order.request, &order.options)
        .map_err(|error| error.words(&speaker))?;
    let mut setter = Typesetter::new(fonts, order.options.language.code());
    Ok(CardPreview {
        pages: setter.pages(&document, order.paper),
        missing: setter.missing(&document.texts()),
        document,
    })
}
