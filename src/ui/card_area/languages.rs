//! The languages of a card: that of the book, who has confirmed the words of the program in the one that is printed, and the
//! texts of the book that have none in it.

use egui::{Button, ComboBox, Label, RichText, TextEdit, Ui};

use super::model::CardState;
use super::named_row::row_ui;
use crate::book::{Confirmation, ItemId, Settings};
use crate::edit::{Edit, Focus};
use crate::quantity::{excerpt, name_as_shown};
use crate::say::{Language, UntranslatedText, say};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::other_languages;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::quiet_ui;
use crate::workbench::{Action, Command, Shown};

/// Most texts without words that are listed.
const LISTED: usize = 12;

/// Longest text that is listed, in characters.
const TEXT: usize = 80;

/// The language that the book is written in.
pub(super) fn own_language_ui(ui: &mut Ui, screen: &Screen<'_>, actions: &mut Vec<Action>) {
    let speaker = screen.speaker;
    let now = Language::all().find(|language| screen.book.is_written_in(language.code()));
    let own = screen.book.settings.language.as_ref();
    let own = own.map_or("", |id| id.as_str());
    row_ui(ui, speaker.word("cards-screen-own-language"), |ui| {
        let combo = ComboBox::from_id_salt("own-language")
            .selected_text(now.map_or(own, |now| now.name()))
            .width(ui.available_width().min(180.0))
            .show_ui(ui, |ui| {
                for language in Language::all() {
                    let is_now = now == Some(language);
                    if ui.selectable_label(is_now, language.name()).clicked() && !is_now {
                        let settings = Settings {
                            language: Some(language.id()),
                            ..screen.book.settings.clone()
                        };
                        actions.push(Action::edit(Edit::SetSettings(settings), Focus::Book));
                        actions.push(Action::Command(Command::CloseStep));
                    }
                }
            });
        let name = speaker.word("cards-screen-own-language-field");
        combo.response.accessible_name(name);
    });
    if let Some(id) = &screen.book.settings.language
        && Language::of_id(id).is_none()
    {
        let palette = theme::palette(ui.visuals());
        let words = say!(speaker, "cards-screen-no-catalogue", language: id.as_str());
        let words = RichText::new(words).color(palette.caution);
        ui.add(Label::new(words).wrap());
    }
}

/// Who of the shop has confirmed the allergens and cautions in the language of the card; the English stands beside them until
/// somebody has.
pub(super) fn confirmation_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    today: &str,
    state: &mut CardState,
    actions: &mut Vec<Action>,
) {
    let (speaker, language) = (screen.speaker, state.language);
    if language == Language::ENGLISH {
        return;
    }
    let settings = &screen.book.settings;
    let put = |by: Option<Confirmation>, actions: &mut Vec<Action>| {
        let settings = settings.confirmed(&language.id(), by);
        actions.push(Action::edit(Edit::SetSettings(settings), Focus::Book));
        actions.push(Action::Command(Command::CloseStep));
    };
    ui.add_space(grid::TIGHT);
    if let Some(Confirmation { by, date, .. }) = settings.confirmation_in(language.code()) {
        let by = name_as_shown(by);
        let words = say!(
            speaker,
            "cards-screen-confirmed",
            language: language.name(),
            person: by.as_ref(),
            day: date,
        );
        quiet_ui(ui, &words);
        if ui
            .button(speaker.word("cards-screen-confirmed-withdraw"))
            .clicked()
        {
            put(None, actions);
        }
        return;
    }
    let words = say!(speaker, "cards-screen-not-confirmed", language: language.name());
    quiet_ui(ui, &words);
    ui.horizontal_wrapped(|ui| {
        let field = TextEdit::singleline(&mut state.confirmed_by)
            .hint_text(speaker.word("cards-screen-confirm-by-hint"))
            .desired_width(140.0);
        ui.add(field)
            .accessible_name(speaker.word("cards-screen-confirm-by"));
        let by = state.confirmed_by.trim();
        let button = ui
            .add_enabled(
                !by.is_empty(),
                Button::new(speaker.word("cards-screen-confirm")),
            )
            .on_hover_text(speaker.word("cards-screen-confirm-does"));
        if button.clicked() {
            let confirmation = Confirmation {
                language: language.id(),
                by: by.to_owned(),
                date: today.to_owned(),
            };
            put(Some(confirmation), actions);
        }
    });
}

/// Texts that are printed as they are written, each with the way to where its words are typed.
pub(super) fn untranslated_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    language: Language,
    texts: &[UntranslatedText],
    view: &mut ViewState,
) {
    if texts.is_empty() {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    ui.add_space(grid::EASY);
    let heading = say!(
        speaker,
        "cards-screen-untranslated",
        count: texts.len(),
        language: language.name(),
    );
    let heading = RichText::new(heading).font(TypeStyle::Strong.font_id());
    ui.add(Label::new(heading.color(palette.text_strong)).wrap());
    let mut taken = None;
    for found in texts.iter().take(LISTED) {
        let text = excerpt(&found.text, TEXT);
        let words = RichText::new(name_as_shown(&text)).color(palette.accent);
        let button = Button::new(words).frame_when_inactive(false).wrap();
        let does = say!(
            speaker,
            "cards-screen-untranslated-go",
            language: language.name(),
            text: &text,
        );
        let response = ui.scope(|ui| {
            ui.spacing_mut().button_padding.x = 0.0;
            ui.add(button)
        });
        let response = response.inner.on_hover_text(&does).accessible_name(&does);
        if response.clicked() {
            taken = Some(found);
        }
    }
    if let Some(found) = taken {
        go_to_words(screen, language, found, view);
    }
    if texts.len() > LISTED {
        let more = say!(speaker, "cards-screen-untranslated-more", count: texts.len() - LISTED);
        ui.label(RichText::new(more).color(palette.text_quiet));
    }
}

/// Opens the form of the item, with the keyboard where the words of the text are typed.
fn go_to_words(
    screen: &Screen<'_>,
    language: Language,
    found: &UntranslatedText,
    view: &mut ViewState,
) {
    let item = &found.item;
    view.other_language = Some(language);
    match item {
        ItemId::Recipe(recipe) => {
            if screen.shown.recipe != *recipe {
                view.show(Shown {
                    recipe: recipe.clone(),
                    version: None,
                });
            }
            view.area = Area::Recipe;
        }
        item => {
            view.go(Area::Counter, Navigation::Form(item.clone()));
        }
    }
    view.focus_wanted = other_languages::field_of(screen.book, item, language, &found.text);
}
