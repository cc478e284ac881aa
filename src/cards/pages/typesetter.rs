//! Sets texts into lines of glyphs.

use std::borrow::Cow;
use std::ops::Range;
use std::sync::Arc;

use super::fonts::{Fonts, MissingCharacter};
use super::page::{GlyphRun, Ink, PlacedGlyph};
use crate::cards::document::{Align, Document};
use parley::{
    Alignment, AlignmentOptions, FontFamily, FontWeight, Language, Layout, LayoutContext,
    LineHeight, OverflowWrap, PositionedLayoutItem, StyleProperty,
};
use unicode_segmentation::UnicodeSegmentation as _;

/// Family of the words; the fallback for other scripts is found by script.
const SANS: &str = "'Evensip Sans', sans-serif";

/// Family of titles.
const SERIF: &str = "'Evensip Serif', 'Evensip Sans', serif";

/// A line of text is so many times as high as its letters are large.
const LINE_HEIGHT: f32 = 1.32;

/// Most bytes that are laid out at once: `parley` counts the bytes of a stretch of one font in 16 bits and gives wrong places
/// beyond, and its memory grows with the text. What is longer is set piece by piece, each from a new line.
const MOST_BYTES: usize = 16_000;

/// Most characters that join into one, such as a letter with its marks: `parley` counts them in 8 bits. No script comes near.
const MOST_JOINED: usize = 60;

/// How a text looks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Look {
    pub(super) size: f32,
    pub(super) bold: bool,
    pub(super) serif: bool,
    pub(super) ink: Ink,
    pub(super) align: Align,
}

impl Look {
    pub(super) fn plain(size: f32) -> Self {
        Self {
            size,
            bold: false,
            serif: false,
            ink: Ink::BLACK,
            align: Align::Start,
        }
    }

    pub(super) fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub(super) fn serif(self) -> Self {
        Self {
            serif: true,
            bold: true,
            ..self
        }
    }

    pub(super) fn quiet(self) -> Self {
        Self {
            ink: Ink::QUIET,
            ..self
        }
    }

    pub(super) fn aligned(self, align: Align) -> Self {
        Self { align, ..self }
    }
}

/// One line of a text: its runs stand relative to the left end and the top of the line.
#[derive(Clone, Debug, Default)]
pub(super) struct TextLine {
    pub(super) height: f32,
    pub(super) runs: Vec<GlyphRun>,
}

/// Sets texts; keeps what it has found out about fonts, so that one serves many cards.
pub struct Typesetter {
    fonts: Fonts,
    layouts: LayoutContext<()>,
    language: Option<Language>,
}

impl Typesetter {
    /// A typesetter with these fonts. The language decides between the Chinese and the Japanese form of a character, say.
    pub fn new(fonts: Fonts, language: &str) -> Self {
        Self {
            fonts,
            layouts: LayoutContext::new(),
            language: Language::parse(language).ok(),
        }
    }

    fn layout(&mut self, text: &str, look: Look) -> Layout<()> {
        let mut builder = self
            .layouts
            .ranged_builder(&mut self.fonts.context, text, 1.0, false);
        let family = if look.serif { SERIF } else { SANS };
        builder.push_default(StyleProperty::FontFamily(FontFamily::Source(family.into())));
        builder.push_default(StyleProperty::FontSize(look.size));
        builder.push_default(StyleProperty::LineHeight(LineHeight::FontSizeRelative(
            LINE_HEIGHT,
        )));
        builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::Anywhere));
        builder.push_default(StyleProperty::Locale(self.language));
        if look.bold {
            builder.push_default(StyleProperty::FontWeight(FontWeight::SEMI_BOLD));
        }
        builder.build(text)
    }

    /// Widths of a text without any break and of its longest word.
    pub(super) fn widths(&mut self, text: &str, look: Look) -> (f32, f32) {
        let mut widths = (0.0_f32, 0.0_f32);
        for piece in pieces(&without_overrides(text)) {
            let (widest, word) = self.widths_of_piece(piece, look);
            widths = (widths.0.max(widest), widths.1.max(word));
        }
        widths
    }

    fn widths_of_piece(&mut self, text: &str, look: Look) -> (f32, f32) {
        let widest = self.layout(text, look).calculate_content_widths().max;
        // The longest word, not the narrowest that a break anywhere would allow.
        let longest = text
            .split_whitespace()
            .map(|word| word.chars().count())
            .max()
            .unwrap_or(0);
        let words: Vec<&str> = text
            .split_whitespace()
            .filter(|word| word.chars().count() + 2 >= longest)
            .collect();
        let mut word = 0.0_f32;
        for candidate in words {
            word = word.max(self.layout(candidate, look).calculate_content_widths().max);
        }
        (widest, word)
    }

    /// A text in lines of at most this width.
    pub(super) fn lines(&mut self, text: &str, look: Look, width: f32) -> Vec<TextLine> {
        let mut lines = Vec::new();
        for piece in pieces(&without_overrides(text)) {
            lines.append(&mut self.lines_of_piece(piece, look, width));
        }
        lines
    }

    fn lines_of_piece(&mut self, text: &str, look: Look, width: f32) -> Vec<TextLine> {
        let mut layout = self.layout(text, look);
        break_lines(&mut layout, width);
        let alignment = match look.align {
            Align::Start => Alignment::Start,
            Align::Right => Alignment::Right,
        };
        layout.align(alignment, AlignmentOptions::default());
        let shared: Arc<str> = Arc::from(text);
        layout
            .lines()
            .map(|line| {
                let metrics = line.metrics();
                let mut text_line = TextLine {
                    height: metrics.line_height,
                    runs: Vec::new(),
                };
                for item in line.items() {
                    let PositionedLayoutItem::GlyphRun(run) = item else {
                        continue;
                    };
                    let top = metrics.block_min_coord;
                    text_line.runs.push(glyph_run(
                        &run,
                        run.baseline() - top,
                        look.ink,
                        shared.clone(),
                    ));
                }
                if look.align == Align::Right {
                    text_line.keep_within(width);
                }
                text_line
            })
            .collect()
    }

    /// The characters that no font has, each once, in the order in which they are met.
    pub fn missing(&mut self, texts: &[&str]) -> Vec<MissingCharacter> {
        let mut missing: Vec<MissingCharacter> = Vec::new();
        for text in texts.iter().filter(|text| !text.is_ascii()) {
            for line in self.lines(text, Look::plain(10.0), f32::MAX) {
                for run in line.runs {
                    let gaps = run.glyphs.iter().filter(|glyph| glyph.id == 0);
                    for character in gaps.flat_map(|glyph| run.text[glyph.bytes.clone()].chars()) {
                        let is_new = missing.iter().all(|known| known.character != character);
                        if is_new && !character.is_control() && !character.is_whitespace() {
                            missing.push(MissingCharacter {
                                character,
                                text: (*text).to_owned(),
                            });
                        }
                    }
                }
            }
        }
        missing
    }
}

impl Fonts {
    /// The characters of a document that no font has, each once, in the order in which they are met.
    pub fn missing(&self, document: &Document) -> Vec<MissingCharacter> {
        Typesetter::new(self.clone(), document.language.code()).missing(&document.texts())
    }
}

impl TextLine {
    /// Moves a line to the left that ends beyond this width: it is aligned by what `parley` counts, see [`break_lines`].
    fn keep_within(&mut self, width: f32) {
        let ends = self.runs.iter().map(|run| {
            let advances = run.glyphs.iter().map(|glyph| glyph.advance);
            run.x + advances.sum::<f32>()
        });
        let starts = self.runs.iter().map(|run| run.x);
        let room = starts.fold(f32::INFINITY, f32::min).max(0.0);
        let beyond = (ends.fold(0.0, f32::max) - width).clamp(0.0, room);
        for run in &mut self.runs {
            run.x -= beyond;
        }
    }
}

/// How often lines that are too long are broken again.
const TRIES: usize = 12;

/// Breaks a text into lines of at most this width. Marks without a letter are wider on the line than `parley` counts when it
/// breaks it: where a line is too long for the width, all are broken again, earlier by that much.
fn break_lines(layout: &mut Layout<()>, width: f32) {
    let mut limit = width;
    for _ in 0..TRIES {
        layout.break_all_lines(Some(limit));
        let widths = layout.lines().map(|line| {
            let all: f32 = line.runs().map(|run| run.advance()).sum();
            all - line.metrics().trailing_whitespace
        });
        let excess = widths.fold(0.0, f32::max) - width;
        // A letter can be wider than its line, and then no break helps.
        if excess < 0.5 || limit < 1.0 {
            return;
        }
        limit = (limit - excess - 0.5).max(limit / 2.0);
    }
}

/// A text whose embeddings and overrides of direction (U+202A to U+202E) are written out: they reach beyond the text that
/// holds them, and `parley` puts lines that are full of them off the paper. Scripts and isolates turn a text as ever.
fn without_overrides(text: &str) -> Cow<'_, str> {
    let turns = |character: &char| matches!(character, '\u{202a}'..='\u{202e}');
    if !text.chars().any(|character| turns(&character)) {
        return Cow::Borrowed(text);
    }
    let mut written = String::with_capacity(text.len());
    for character in text.chars() {
        if turns(&character) {
            written.extend(character.escape_unicode());
        } else {
            written.push(character);
        }
    }
    Cow::Owned(written)
}

/// What ends a line of a text: `parley` holds these for nothing else, and panics where a mark is joined to one.
const LINE_ENDS: [char; 4] = ['\n', '\r', '\u{2028}', '\u{2029}'];

/// A text in pieces that can be laid out: its lines, cut behind white space where there is any and within characters that join
/// without end. An empty line is a space.
fn pieces(text: &str) -> impl Iterator<Item = &str> {
    let is_cut = !text.is_empty();
    let lines = text.split("\r\n").flat_map(|lines| lines.split(LINE_ENDS));
    let lines = lines.filter(move |_| is_cut);
    lines.flat_map(|line| pieces_of_line(if line.is_empty() { " " } else { line }))
}

fn pieces_of_line(line: &str) -> impl Iterator<Item = &str> {
    let mut rest = line;
    std::iter::from_fn(move || {
        if rest.is_empty() {
            return None;
        }
        let (piece, after) = rest.split_at(piece_end(rest));
        rest = after;
        Some(piece)
    })
}

/// Where the first piece of a text ends, in bytes; above 0 for a text that is not empty.
fn piece_end(text: &str) -> usize {
    let end = short_end(text);
    if text.as_bytes()[..end].is_ascii() {
        return end;
    }
    let mut begin = 0;
    for joined in text[..end].graphemes(true) {
        if let Some((cut, _)) = joined.char_indices().nth(MOST_JOINED) {
            return begin + cut;
        }
        begin += joined.len();
    }
    end
}

fn short_end(text: &str) -> usize {
    if text.len() <= MOST_BYTES {
        return text.len();
    }
    let end = text.floor_char_boundary(MOST_BYTES);
    let mut spaces = text[..end].char_indices().rev();
    spaces
        .find(|(_, character)| character.is_whitespace())
        .map_or(end, |(at, space)| at + space.len_utf8())
}

/// The bytes of whole characters: where marks are joined to letters of other directions, `parley` ends within one.
fn whole_characters(text: &str, bytes: Range<usize>) -> Range<usize> {
    let start = text.floor_char_boundary(bytes.start);
    start..text.ceil_char_boundary(bytes.end.max(start))
}

/// A run of the layout with the bytes that each glyph stands for. A ligature stands for all of its letters.
fn glyph_run(run: &parley::GlyphRun<'_, ()>, baseline: f32, ink: Ink, text: Arc<str>) -> GlyphRun {
    let of = run.run();
    let mut glyphs: Vec<PlacedGlyph> = Vec::new();
    for cluster in of.visual_clusters() {
        let bytes = whole_characters(&text, cluster.text_range());
        if cluster.is_ligature_continuation() {
            if let Some(last) = glyphs.last_mut() {
                last.bytes.start = last.bytes.start.min(bytes.start);
                last.bytes.end = last.bytes.end.max(bytes.end);
            }
            continue;
        }
        glyphs.extend(cluster.glyphs().map(|glyph| PlacedGlyph {
            id: glyph.id,
            advance: glyph.advance,
            x: glyph.x,
            y: glyph.y,
            bytes: bytes.clone(),
        }));
    }
    GlyphRun {
        font: of.font().clone(),
        variations: of
            .synthesis()
            .variation_settings()
            .iter()
            .map(|(tag, value)| (tag.into_bytes(), *value))
            .collect(),
        normalized: of.normalized_coords().to_vec(),
        size: of.font_size(),
        x: run.offset(),
        baseline,
        ink,
        text,
        glyphs,
        part: None,
    }
}
