//! What of a text is not seen as it is meant: hidden characters, those that no font here can show, and two directions of
//! writing in one line, which the window does not put in order.

use std::collections::BTreeSet;

use egui::{Context, Label, RichText, Ui};
use unicode_bidi::{BidiClass, bidi_class};

use super::theme::{self, TypeStyle};
use super::words;
use crate::quantity::is_hidden;
use crate::say::{Speaker, say};

/// Most characters that are named.
const NAMED: usize = 6;

/// A sentence below a text that is not wholly what it seems, set in by `indent` points; nothing below any other text. `what`
/// names it: "the name".
pub(super) fn unseen_ui(ui: &mut Ui, indent: f32, what: &str, text: &str, style: TypeStyle) {
    if text.is_ascii() && !text.chars().any(is_hidden) {
        return;
    }
    let palette = theme::palette(ui.visuals());
    for sentence in sentences(ui.ctx(), what, text, style) {
        let sentence = RichText::new(sentence)
            .font(TypeStyle::Small.font_id())
            .color(palette.caution);
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = 0.0;
            ui.add_space(indent);
            ui.add(Label::new(sentence).wrap());
        });
    }
}

fn sentences(ctx: &Context, what: &str, text: &str, style: TypeStyle) -> Vec<String> {
    let hidden: BTreeSet<char> = text.chars().filter(|one| is_hidden(*one)).collect();
    let font = style.font_id();
    let without_font: BTreeSet<char> = text
        .chars()
        .filter(|one| !one.is_ascii() && !is_hidden(*one) && !one.is_whitespace())
        .filter(|one| !ctx.fonts_mut(|fonts| fonts.has_glyph(&font, *one)))
        .collect();
    let speaker = words::speaker(ctx);
    let hidden = (!hidden.is_empty()).then(|| {
        let characters = codes(speaker, &hidden);
        say!(speaker, "shell-unseen-hidden", what: what, characters: characters)
    });
    let without_font = (!without_font.is_empty()).then(|| {
        let characters = codes(speaker, &without_font);
        say!(speaker, "shell-unseen-no-font", what: what, characters: characters)
    });
    let directions =
        runs_both_ways(text).then(|| say!(speaker, "shell-unseen-directions", what: what));
    [hidden, without_font, directions]
        .into_iter()
        .flatten()
        .collect()
}

/// Whether letters that are written from right to left stand beside others or beside numbers.
fn runs_both_ways(text: &str) -> bool {
    let has = |wanted: &[BidiClass]| text.chars().any(|one| wanted.contains(&bidi_class(one)));
    has(&[BidiClass::R, BidiClass::AL]) && has(&[BidiClass::L, BidiClass::EN, BidiClass::AN])
}

/// "U+202E, U+0007": the characters themselves could not be seen here either.
fn codes(speaker: Speaker<'_>, characters: &BTreeSet<char>) -> String {
    let mut codes: Vec<String> = characters
        .iter()
        .take(NAMED)
        .map(|one| format!("U+{:04X}", u32::from(*one)))
        .collect();
    if characters.len() > NAMED {
        let more = characters.len() - NAMED;
        codes.push(say!(speaker, "shell-unseen-more", count: more));
    }
    codes.join(", ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_a_font_lacks_is_told_from_what_is_hidden() {
        let ctx = Context::default();
        theme::install(&ctx);
        ctx.run_ui(egui::RawInput::default(), |ui| {
            let said = |name| sentences(ui.ctx(), "the name", name, TypeStyle::Title);
            assert!(said("Crème brûlée ½ — hot").is_empty());
            assert_eq!(
                said("Pear\u{202e}\u{e123}"),
                [
                    "the name contains invisible characters: U+202E",
                    "no font here can show a part of the name: U+E123"
                ]
            );
        })
        .drop_without_applying_deltas();
    }

    #[test]
    fn two_directions_in_one_text_are_said_and_one_is_not() {
        for (text, both) in [
            ("黑糖珍珠 500 ml", false),
            ("شاي أسود", false),
            ("שוקו", false),
            ("شاي 500 مل", true),
            ("Hob & שוקו", true),
        ] {
            assert_eq!(runs_both_ways(text), both, "{text}");
        }
    }

    #[test]
    fn characters_are_named_by_their_numbers() {
        let codes = |characters| codes(Speaker::without_book(), &characters);
        assert_eq!(codes("\u{7}\u{202e}".chars().collect()), "U+0007, U+202E");
        assert!(codes(('\u{e000}'..'\u{e010}').collect()).ends_with("10 more"));
    }
}
