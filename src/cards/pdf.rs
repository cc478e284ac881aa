//! Cards as PDF: the pages as they are previewed, with every font embedded as the part of it that is used.
//!
//! Glyphs carry the text that they stand for, so that a reader can find, copy and read aloud what is printed.

use std::collections::BTreeMap;

use krilla::color::luma;
use krilla::geom::{PathBuilder, Point, Rect};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, Stroke};
use krilla::surface::Surface;
use krilla::text::{Font, GlyphId, KrillaGlyph, Tag};

use super::document::Document;
use super::pages::{GlyphRun, Ink, Mark, Page};
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
pub fn pdf(document: &Document, pages: &[Page]) -> Result<Vec<u8>, PdfError> {
    let mut file = krilla::Document::new();
    let title = if document.subtitle.is_empty() {
        document.title.clone()
    } else {
        format!("{} — {}", document.title, document.subtitle)
    };
    let mut metadata = Metadata::new()
        .title(excerpt(&title, MOST_IN_PROPERTIES))
        .language(document.language.code().to_owned())
        .creator("Evensip".to_owned());
    if !document.shop.is_empty() {
        metadata = metadata.authors(vec![excerpt(&document.shop, MOST_IN_PROPERTIES)]);
    }
    file.set_metadata(metadata);
    let mut fonts = Prepared::new();
    for page in pages {
        let Some(settings) = PageSettings::from_wh(page.width, page.height) else {
            continue;
        };
        let mut sheet = file.start_page_with(settings);
        let mut surface = sheet.surface();
        for mark in &page.marks {
            match mark {
                Mark::Glyphs(run) => draw_run(&mut surface, run, &mut fonts)?,
                Mark::Fill { corners, ink } => draw_fill(&mut surface, *corners, *ink),
                Mark::Frame {
                    corners,
                    width,
                    ink,
                } => draw_frame(&mut surface, *corners, *width, *ink),
            }
        }
        surface.finish();
        sheet.finish();
    }
    file.finish()
        .map_err(|error| PdfError::Writer(format!("{error:?}")))
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
                glyph.bytes.clone(),
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
        &run.text,
        run.size,
        false,
    );
    Ok(())
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
