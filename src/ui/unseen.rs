//! Characters of a name that nobody sees: hidden ones, and those that no font here can show.

use std::collections::BTreeSet;

use egui::{Context, Label, RichText, Ui};

use super::theme::{self, TypeStyle};
use crate::quantity::is_hidden;

/// Most characters that are named.
const NAMED: usize = 6;

/// A sentence below a name that is not wholly what it seems; nothing below any other.
pub(super) fn unseen_ui(ui: &mut Ui, name: &str, style: TypeStyle) {
    let palette = theme::palette(ui.visuals());
    for sentence in sentences(ui.ctx(), name, style) {
        let text = RichText::new(sentence)
            .font(TypeStyle::Small.font_id())
            .color(palette.caution);
        ui.add(Label::new(text).wrap());
    }
}

fn sentences(ctx: &Context, name: &str, style: TypeStyle) -> Vec<String> {
    let hidden: BTreeSet<char> = name.chars().filter(|one| is_hidden(*one)).collect();
    let font = style.font_id();
    let without_font: BTreeSet<char> = name
        .chars()
        .filter(|one| !one.is_ascii() && !is_hidden(*one) && !one.is_whitespace())
        .filter(|one| !ctx.fonts_mut(|fonts| fonts.has_glyph(&font, *one)))
        .collect();
    [
        (hidden, "the name holds characters that nobody sees"),
        (without_font, "no font here can show a part of the name"),
    ]
    .into_iter()
    .filter(|(characters, _)| !characters.is_empty())
    .map(|(characters, words)| format!("{words}: {}", codes(&characters)))
    .collect()
}

/// "U+202E, U+0007": the characters themselves could not be seen here either.
fn codes(characters: &BTreeSet<char>) -> String {
    let mut codes: Vec<String> = characters
        .iter()
        .take(NAMED)
        .map(|one| format!("U+{:04X}", u32::from(*one)))
        .collect();
    if characters.len() > NAMED {
        codes.push(format!("{} more", characters.len() - NAMED));
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
            let said = |name| sentences(ui.ctx(), name, TypeStyle::Title);
            assert!(said("Crème brûlée ½ — hot").is_empty());
            assert_eq!(
                said("Pear\u{202e}\u{e123}"),
                [
                    "the name holds characters that nobody sees: U+202E",
                    "no font here can show a part of the name: U+E123"
                ]
            );
        })
        .drop_without_applying_deltas();
    }

    #[test]
    fn characters_are_named_by_their_numbers() {
        assert_eq!(codes(&"\u{7}\u{202e}".chars().collect()), "U+0007, U+202E");
        assert!(codes(&('\u{e000}'..'\u{e010}').collect()).ends_with("10 more"));
    }
}
