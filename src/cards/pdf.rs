//! Cards as PDF: the pages as they are previewed, with every font embedded as the part of it that is used.
//!
//! Glyphs carry the text that they stand for, so that a reader can find, copy and read aloud what is printed, and the file is
//! tagged: its headings, lists and tables stand in the order of reading, as PDF/UA-1 (ISO 14289-1) wants them.

use std::collections::BTreeMap;
use std::sync::Arc;

use krilla::SerializeSettings;
use krilla::color::luma;
use krilla::configure::{Accessibility, Configuration, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::error::KrillaError;
use krilla::geom::{PathBuilder, Point, Rect};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ArtifactType, ContentTag, Identifier, SpanTag};
use krilla::text::{Font, GlyphId, KrillaGlyph, Tag};

use super::document::Document;
use super::pages::{Element, GlyphRun, Ink, Mark, Page, reading, words};
use super::pdf_tags::{Tagged, tag_tree};
use crate::quantity::excerpt;
use crate::say::{Speaker, say};

/// Why there is no PDF.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PdfError {
    /// A font of the machine can't be read.
    Font {
        /// The beginning of the text that needs it.
        text: String,
    },
    /// The file could not be put together.
    Writer(String),
}

impl PdfError {
    /// The reason, and what to do.
    pub fn words(&self, speaker: &Speaker<'_>) -> String {
        match self {
            Self::Font { text } => say!(speaker, "pdf-font", text: text),
            Self::Writer(reason) => say!(speaker, "pdf-writer", reason: reason),
        }
    }
}

/// Most characters of a property of the file; in full they stand on its pages.
const MOST_IN_PROPERTIES: usize = 200;

/// The fonts that have been prepared for embedding, by data, face and variation.
type Prepared = BTreeMap<(u64, u32, Vec<([u8; 4], u32)>), Font>;

/// The pages of documents as one PDF. The first document gives title and language.
///
/// The file says that it is PDF/UA-1 when it is: not where a character has no font, say.
pub fn pdf(document: &Document, pages: &[Page]) -> Result<Vec<u8>, PdfError> {
    let accessible = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish();
    if let Ok(accessible) = accessible {
        let file = put_together(document, pages, accessible)?;
        match file.finish() {
            Err(KrillaError::Validation(_)) => {}
            done => return done.map_err(|error| PdfError::Writer(format!("{error:?}"))),
        }
    }
    let file = put_together(document, pages, Configuration::default())?;
    file.finish()
        .map_err(|error| PdfError::Writer(format!("{error:?}")))
}

fn put_together(
    document: &Document,
    pages: &[Page],
    configuration: Configuration,
) -> Result<krilla::Document, PdfError> {
    let mut file = krilla::Document::new_with(SerializeSettings {
        configuration,
        ..SerializeSettings::default()
    });
    file.set_metadata(metadata(document));
    let mut fonts = Prepared::new();
    let mut tagged = Tagged::new();
    for (at, page) in pages.iter().enumerate() {
        let Some(settings) = PageSettings::from_wh(page.width, page.height) else {
            continue;
        };
        let mut sheet = file.start_page_with(settings);
        let mut surface = sheet.surface();
        for (place, mark) in page.marks.iter().enumerate() {
            let id = begin(&mut surface, mark);
            match mark {
                Mark::Glyphs(run) => draw_run(&mut surface, run, &mut fonts)?,
                Mark::Fill { corners, ink } => draw_fill(&mut surface, *corners, *ink),
                Mark::Frame {
                    corners,
                    width,
                    ink,
                } => draw_frame(&mut surface, *corners, *width, *ink),
            }
            surface.end_tagged();
            if let Some(id) = id {
                tagged.insert((at, place), id);
            }
        }
        surface.finish();
        sheet.finish();
    }
    let elements = reading(pages);
    file.set_outline(outline(&elements, pages));
    file.set_tag_tree(tag_tree(&elements, pages, &tagged, document.language));
    Ok(file)
}

fn metadata(document: &Document) -> Metadata {
    let title = if document.subtitle.is_empty() {
        document.title.clone()
    } else {
        format!("{} — {}", document.title, document.subtitle)
    };
    let title = if title.trim().is_empty() {
        document.kind.words(&document.speaker()).to_owned()
    } else {
        title
    };
    let metadata = Metadata::new()
        .title(excerpt(&title, MOST_IN_PROPERTIES))
        .language(document.language.code().to_owned())
        .creator("Evensip".to_owned());
    if document.shop.is_empty() {
        return metadata;
    }
    metadata.authors(vec![excerpt(&document.shop, MOST_IN_PROPERTIES)])
}

/// Begins what is drawn next: a text that is read aloud, or something that only the eye wants.
fn begin(surface: &mut Surface<'_>, mark: &Mark) -> Option<Identifier> {
    match mark {
        Mark::Glyphs(run) if run.part.is_some() => {
            Some(surface.start_tagged(ContentTag::Span(SpanTag::empty())))
        }
        mark => {
            let kind = match mark {
                Mark::Glyphs(_) => ArtifactType::PaginationOther,
                Mark::Fill { .. } | Mark::Frame { .. } => ArtifactType::Layout,
            };
            surface.start_tagged(ContentTag::Artifact(Artifact::with_kind(kind)));
            None
        }
    }
}

/// The title and the headings below it, to go to.
fn outline(elements: &[Element], pages: &[Page]) -> Outline {
    let mut outline = Outline::new();
    for element in elements {
        let Element::Heading { texts, .. } = element else {
            continue;
        };
        let run = texts.iter().flat_map(|text| &text.runs).next();
        if let Some((page, mark)) = run
            && let Mark::Glyphs(run) = &pages[*page].marks[*mark]
        {
            let top = Point::from_xy(run.x, run.baseline - run.size);
            let words = excerpt(&words(texts, pages), MOST_IN_PROPERTIES);
            outline.push_child(OutlineNode::new(words, XyzDestination::new(*page, top)));
        }
    }
    outline
}

fn fill_of(ink: Ink) -> Fill {
    Fill {
        paint: luma::Color::new(ink.0).into(),
        opacity: NormalizedF32::ONE,
        rule: FillRule::NonZero,
    }
}

fn draw_run(
    surface: &mut Surface<'_>,
    run: &GlyphRun,
    fonts: &mut Prepared,
) -> Result<(), PdfError> {
    let variations = run
        .variations
        .iter()
        .map(|(tag, value)| (*tag, value.to_bits()))
        .collect();
    let key = (run.font.data.id(), run.font.index, variations);
    let font = if let Some(font) = fonts.get(&key) {
        font.clone()
    } else {
        let font = prepare(run)?;
        fonts.insert(key, font.clone());
        font
    };
    let (text, place) = with_plain_spaces(&run.text);
    let glyphs: Vec<KrillaGlyph> = run
        .glyphs
        .iter()
        .map(|glyph| {
            KrillaGlyph::new(
                GlyphId::new(glyph.id),
                glyph.advance / run.size,
                glyph.x / run.size,
                -glyph.y / run.size,
                0.0,
                place(glyph.bytes.start)..place(glyph.bytes.end),
                None,
            )
        })
        .collect();
    surface.set_fill(Some(fill_of(run.ink)));
    surface.set_stroke(None);
    surface.draw_glyphs(
        Point::from_xy(run.x, run.baseline),
        &glyphs,
        font,
        &text,
        run.size,
        false,
    );
    Ok(())
}

/// A text with plain spaces in place of those that hold a line together, and where a byte of it has come to stand. They have
/// one glyph in most fonts, and a glyph that stands for two characters needs a text of its own each time, behind which some
/// programs that read aloud lose the unit.
fn with_plain_spaces(text: &Arc<str>) -> (Arc<str>, impl Fn(usize) -> usize) {
    let holds_together = ['\u{a0}', '\u{202f}'];
    let found: Vec<(usize, usize)> = text
        .match_indices(holds_together)
        .map(|(at, space)| (at, space.len() - 1))
        .collect();
    let plain = if found.is_empty() {
        text.clone()
    } else {
        text.replace(holds_together, " ").into()
    };
    let place = move |byte: usize| {
        let before = found.iter().take_while(|(at, _)| *at < byte);
        byte - before.map(|(_, saved)| saved).sum::<usize>()
    };
    (plain, place)
}

fn prepare(run: &GlyphRun) -> Result<Font, PdfError> {
    let variations: Vec<(Tag, f32)> = run
        .variations
        .iter()
        .map(|(tag, value)| (Tag::new(tag), *value))
        .collect();
    let data: std::sync::Arc<dyn AsRef<[u8]> + Send + Sync> =
        std::sync::Arc::new(run.font.data.clone());
    Font::new_variable(data.into(), run.font.index, &variations).ok_or_else(|| PdfError::Font {
        text: run.text.chars().take(40).collect(),
    })
}

fn draw_fill(surface: &mut Surface<'_>, [left, top, right, bottom]: [f32; 4], ink: Ink) {
    let mut path = PathBuilder::new();
    if let Some(rect) = Rect::from_ltrb(left, top, right, bottom) {
        path.push_rect(rect);
    }
    if let Some(path) = path.finish() {
        surface.set_fill(Some(fill_of(ink)));
        surface.set_stroke(None);
        surface.draw_path(&path);
    }
}

fn draw_frame(
    surface: &mut Surface<'_>,
    [left, top, right, bottom]: [f32; 4],
    width: f32,
    ink: Ink,
) {
    let mut path = PathBuilder::new();
    if let Some(rect) = Rect::from_ltrb(left, top, right, bottom) {
        path.push_rect(rect);
    }
    if let Some(path) = path.finish() {
        surface.set_fill(None);
        surface.set_stroke(Some(Stroke {
            paint: luma::Color::new(ink.0).into(),
            width,
            ..Stroke::default()
        }));
        surface.draw_path(&path);
    }
}
