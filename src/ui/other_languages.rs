//! A fold of the forms: what the texts of an item are in other languages, each in a field beside the text that it is for.

use std::collections::BTreeSet;

use egui::{ComboBox, RichText, Ui, vec2};

use super::field::Field;
use super::icons::{Icon, icon_button};
use super::theme::{self, TypeStyle, grid};
use super::view_state::Drafts;
use super::words::{quiet_ui, subheading_ui};
use crate::book::{Book, ItemId, LanguageId, TextKind, Translation, translated};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::{excerpt, name_as_shown};
use crate::say::{Language, Speaker, say};
use crate::workbench::Action;

/// Longest text that the name of a field repeats, in characters.
const REPEATED: usize = 60;

/// The field of the words for a text; `None` when the item does not have it.
pub(super) fn field_of(
    book: &Book,
    item: &ItemId,
    language: Language,
    text: &str,
) -> Option<Focus> {
    let at = book.texts_of(item).iter().position(|(_, of)| *of == text)?;
    Some(focus(item, language, at))
}

/// The field of the words for a text, by its place among the texts of the item.
fn focus(item: &ItemId, language: Language, at: usize) -> Focus {
    Focus::Field(item.clone(), FieldName::words(language.id(), at))
}

/// The languages that a book can be told in beside the one that it is written in.
fn languages(book: &Book) -> impl Iterator<Item = Language> {
    Language::all().filter(|language| !book.is_written_in(language.code()))
}

/// The fold; `chosen` is the language in hand, none while it is closed.
pub(super) fn other_languages_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    item: &ItemId,
    chosen: &mut Option<Language>,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let book = speaker.book;
    head_ui(ui, speaker, book.translations_of(item), chosen);
    let Some(asked) = *chosen else { return };
    let known = languages(book).find(|language| *language == asked);
    let Some(language) = known.or_else(|| languages(book).next()) else {
        return;
    };
    choice_ui(ui, speaker, language, chosen);
    quiet_ui(ui, speaker.word("other-languages-what"));
    let translations = book.translations_of(item);
    let texts = book.texts_of(item);
    let is_there = |of: &str| texts.iter().any(|(_, text)| *text == of);
    let lost: Vec<&Translation> = translations
        .iter()
        .filter(|known| known.language.is(language.code()) && !is_there(&known.of))
        .collect();
    let mut fields = Fields {
        speaker,
        item,
        language,
        drafts,
        actions,
        goes_on: false,
    };
    for (at, (kind, text)) in texts.iter().enumerate() {
        let kind = text_kind(speaker, *kind);
        let now = translated(translations, language.code(), text).unwrap_or_default();
        fields.field_ui(ui, at, kind, text, now);
    }
    if !lost.is_empty() {
        subheading_ui(ui, speaker.word("other-languages-lost"));
    }
    for (at, known) in lost.into_iter().enumerate() {
        let kind = speaker.word("other-languages-was");
        fields.field_ui(ui, texts.len() + at, kind, &known.of, &known.text);
    }
    ui.add_space(grid::NEAR);
}

/// What the fold is, and in how many languages there are words.
fn head_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    translations: &[Translation],
    chosen: &mut Option<Language>,
) {
    let palette = theme::palette(ui.visuals());
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let (icon, words) = if chosen.is_some() {
            (Icon::ChevronDown, "other-languages-hide")
        } else {
            (Icon::ChevronRight, "other-languages-show")
        };
        let words = speaker.word(words);
        if icon_button(ui, icon, words, words).clicked() {
            *chosen = match *chosen {
                Some(_) => None,
                None => first_choice(speaker, translations),
            };
        }
        ui.label(speaker.word("other-languages-title"));
        // Their names would make the window look for fonts of every script.
        let known: BTreeSet<&LanguageId> =
            translations.iter().map(|known| &known.language).collect();
        if !known.is_empty() {
            let count = say!(speaker, "other-languages-count", count: known.len());
            ui.label(RichText::new(count).color(palette.text_quiet));
        }
    });
}

/// The language that there are words in already, else that of the window, else the first.
fn first_choice(speaker: Speaker<'_>, translations: &[Translation]) -> Option<Language> {
    let all = || languages(speaker.book);
    let begun = translations.first().map(|known| &known.language);
    all()
        .find(|language| begun.is_some_and(|begun| begun.is(language.code())))
        .or_else(|| all().find(|language| *language == speaker.language))
        .or_else(|| all().next())
}

fn choice_ui(ui: &mut Ui, speaker: Speaker<'_>, language: Language, chosen: &mut Option<Language>) {
    let combo = ComboBox::from_id_salt("other language")
        .selected_text(language.name())
        .width(160.0)
        .show_ui(ui, |ui| {
            for other in languages(speaker.book) {
                if ui
                    .selectable_label(other == language, other.name())
                    .clicked()
                {
                    *chosen = Some(other);
                }
            }
        });
    let name = speaker.word("other-languages-language");
    combo.response.accessible_name(name);
}

/// What a text is.
fn text_kind(speaker: Speaker<'_>, kind: TextKind) -> &'static str {
    speaker.word(match kind {
        TextKind::Name => "other-languages-name",
        TextKind::VersionName => "other-languages-version-name",
        TextKind::Instruction => "other-languages-instruction",
        TextKind::LineNote => "other-languages-line-note",
        TextKind::Note => "other-languages-note",
        TextKind::Flavour => "other-languages-flavour",
        TextKind::Level => "other-languages-level",
    })
}

/// The fields of one language, one after the other.
struct Fields<'frame, 'book> {
    speaker: Speaker<'book>,
    item: &'frame ItemId,
    language: Language,
    drafts: &'frame mut Drafts,
    actions: &'frame mut Vec<Action>,
    /// Whether Enter was pressed in the field before, so that the keyboard goes on to the next one.
    goes_on: bool,
}

impl Fields<'_, '_> {
    /// A text, and the field of its words.
    fn field_ui(&mut self, ui: &mut Ui, at: usize, kind: &str, text: &str, now: &str) {
        let (speaker, language) = (self.speaker, self.language);
        let shown = name_as_shown(text);
        quiet_ui(
            ui,
            &say!(speaker, "other-languages-text", kind: kind, text: shown.as_ref()),
        );
        let name = say!(
            speaker,
            "other-languages-field",
            language: language.name(),
            kind: kind,
            text: excerpt(text, REPEATED),
        );
        let key = focus(self.item, language, at);
        let field = Field::new(key.clone(), &name, now)
            .hint(language.name())
            .style(TypeStyle::Body)
            .several_rows()
            .underlined();
        let width = (ui.available_width() - grid::TIGHT).max(grid::FAR);
        let height = field.height(ui, self.drafts, width);
        let outcome = field.show_in(ui, vec2(width, height), self.drafts, self.actions);
        if std::mem::take(&mut self.goes_on) {
            outcome.response.request_focus();
            ui.ctx().request_repaint();
        }
        self.goes_on = outcome.entered;
        if let Some(typed) = outcome.changed {
            let is_blank = typed.trim().is_empty();
            let edit = Edit::Translate {
                item: self.item.clone(),
                translation: Translation {
                    language: language.id(),
                    of: text.to_owned(),
                    text: if is_blank { String::new() } else { typed },
                },
            };
            self.actions.push(Action::edit(edit, key));
        }
    }
}
