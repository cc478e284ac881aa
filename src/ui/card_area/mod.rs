//! Cards: what is printed for the counter, page by page as it will come out, and what is brought in from elsewhere.

mod batch;
mod bring_in;
mod choose;
mod export;
mod frame;
mod languages;
mod list_reading;
mod list_review;
mod match_menu;
mod model;
mod named_row;
mod other_shop;
mod pages;
mod review;
mod tasting;
mod written_recipe;

pub use batch::BatchOrder;
pub use frame::CardFrame;
pub use model::CardState;
pub use review::ReviewLooks;

use egui::{Label, RichText, Ui};

use crate::cards::CardKind;
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::area::Navigation;
use crate::ui::area_of_work::{AreaOfWork, Desk};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::name::name_ui;
use crate::ui::words::speaker;
use crate::workbench::{Action, PreviewShown, Shown, Workbench};

/// From this width on the pages stand beside what is chosen, in points.
const BESIDE: f32 = 640.0;

/// Width of the column of choices, in points.
const CHOICES: f32 = 300.0;

/// The area in the window.
#[derive(Default)]
pub(super) struct CardArea {
    state: CardState,
    frame: CardFrame,
}

impl AreaOfWork for CardArea {
    fn look(&mut self, workbench: &mut Workbench, shown: Option<&Shown>, view: &mut ViewState) {
        if let Some(folder) = workbench.take_folder() {
            self.state.folder = folder.display().to_string();
        }
        let order = shown.and_then(|shown| self.state.order(shown, view.units));
        self.frame = CardFrame::take(workbench, order.as_ref(), &self.state);
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        if let Some(screen) = desk.drink {
            card_area_ui(ui, screen, &self.frame, &mut self.state, view, actions);
        }
    }

    /// The review of what is brought in begins at its top.
    fn page(&self) -> u8 {
        u8::from(self.frame.list.is_some())
    }

    fn go(&mut self, to: &Navigation) {
        if let Navigation::Exercise(replace, with) = to {
            self.state.kind = CardKind::Exercise;
            self.state.exercise = Some((replace.clone(), with.clone()));
            self.state.page = 0;
        }
        if let Navigation::FiguresCard(also_unapproved) = to {
            self.state.kind = CardKind::Figures;
            self.state.also_unapproved = *also_unapproved;
            self.state.page = 0;
        }
        if matches!(to, Navigation::MatrixCard) {
            self.state.kind = CardKind::Matrix;
            self.state.page = 0;
        }
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// The area.
fn card_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    state.begin(screen, &frame.today);
    let before = actions.len();
    contents_ui(ui, screen, frame, state, view, actions);
    // What was asked for is done when the frame has been drawn, and shows in the next one.
    if actions.len() > before {
        ui.request_repaint();
    }
}

fn contents_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if let Some(list) = &frame.list {
        bring_in::bring_in_ui(ui, screen, frame, list, state, actions);
        ui.add_space(grid::APART);
        return;
    }
    state.review.forget();
    title_ui(ui, screen);
    let width = ui.available_width();
    if width < BESIDE {
        choices_ui(ui, screen, frame, state, view, actions);
        ui.add_space(grid::APART);
        pages::pages_ui(ui, &frame.preview, state);
    } else {
        ui.horizontal_top(|ui| {
            let usual = ui.spacing().item_spacing.x;
            ui.spacing_mut().item_spacing.x = grid::FAR;
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = usual;
                ui.set_width(CHOICES);
                choices_ui(ui, screen, frame, state, view, actions);
            });
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = usual;
                pages::pages_ui(ui, &frame.preview, state);
            });
        });
    }
    ui.add_space(grid::APART);
    if !frame.preview.is_current {
        ui.request_repaint_after(std::time::Duration::from_millis(100));
    }
}

fn title_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let name = RichText::new(speaker.word("cards-screen-title")).font(TypeStyle::Title.font_id());
    ui.label(name.color(palette.text_strong));
    let words = say!(
        speaker,
        "cards-screen-drink",
        recipe: name_as_shown(&screen.recipe.name),
        version: choose::version_name(screen, screen.shown.version.as_ref()),
    );
    name_ui(
        ui,
        &words,
        TypeStyle::Body,
        palette.text_quiet,
        f32::INFINITY,
    );
    ui.add_space(grid::EASY);
}

fn choices_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    frame: &CardFrame,
    state: &mut CardState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    choose::choose_ui(ui, screen, state);
    languages::own_language_ui(ui, screen, actions);
    languages::confirmation_ui(ui, screen, &frame.today, state, actions);
    missing_ui(ui, &frame.preview);
    if let Some(Ok(preview)) = &frame.preview.preview {
        let document = &preview.document;
        let texts = &document.untranslated;
        languages::untranslated_ui(ui, screen, document.language, texts, view);
    }
    ui.add_space(grid::EASY);
    export::export_ui(ui, screen, frame, state, actions);
    ui.add_space(grid::APART);
    bring_in::begin_ui(ui, frame, state, actions);
}

/// Characters that would be empty boxes on paper.
fn missing_ui(ui: &mut Ui, preview: &PreviewShown) {
    let Some(Ok(preview)) = &preview.preview else {
        return;
    };
    if preview.missing.is_empty() {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let speaker = speaker(ui.ctx());
    ui.add_space(grid::EASY);
    let strong = |words: &str| {
        RichText::new(words)
            .font(TypeStyle::Strong.font_id())
            .color(palette.off_level)
    };
    ui.label(strong(speaker.word("cards-screen-no-font")));
    for missing in &preview.missing {
        // The character itself may be missing on the screen as well, so its number comes first.
        let words = format!("U+{:04X}", u32::from(missing.character));
        let text = name_as_shown(&missing.text);
        ui.label(words)
            .on_hover_text(say!(speaker, "cards-screen-no-font-in", text: text));
    }
    let words = speaker.word("cards-screen-no-font-what");
    ui.add(
        Label::new(
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        )
        .wrap(),
    );
}
