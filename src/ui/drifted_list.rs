//! Approved drinks that no longer taste as they were approved: how far each is off, through what, and the way back.

use egui::{Label, RichText, Ui};

use super::area::Area;
use super::theme::{self, TypeStyle, grid};
use super::view_state::{AskedSwap, ViewState};
use super::widgets::form::link_ui;
use super::widgets::level::overall_words;
use super::words::{capitalised, heading_ui, quiet_ui};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::swap::Drifted;
use crate::workbench::Shown;

/// The list; nothing where no drink has drifted.
pub(super) fn drifted_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    drifted: &[Drifted],
    view: &mut ViewState,
) {
    if drifted.is_empty() {
        return;
    }
    ui.add_space(grid::NEAR);
    heading_ui(ui, speaker.word("shell-drifted"));
    quiet_ui(ui, speaker.word("shell-drifted-about"));
    ui.add_space(grid::TIGHT);
    for drink in drifted {
        drink_ui(ui, speaker, drink, view);
    }
    let mut can_be_brought_back = drifted.iter().filter(|drink| drink.replace.is_some());
    if let (Some(first), Some(_)) = (can_be_brought_back.next(), can_be_brought_back.next())
        && let Some(question) = first.question()
        && link_ui(ui, speaker.word("shell-drifted-bring-all-back")).clicked()
    {
        go_to_swap(view, first, AskedSwap::bringing_all_back(question));
    }
}

fn drink_ui(ui: &mut Ui, speaker: Speaker<'_>, drink: &Drifted, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    let name = speaker.drink(&drink.recipe, drink.version.as_ref());
    ui.add(Label::new(RichText::new(&name).color(palette.text_strong)).wrap());
    let causes: Vec<String> = drink.causes.iter().map(|item| speaker.item(item)).collect();
    let off = overall_words(&drink.difference, speaker);
    let words = say!(speaker, "shell-drifted-why", off: off, causes: speaker.and(&causes));
    let small = RichText::new(capitalised(&words)).font(TypeStyle::Small.font_id());
    ui.add(Label::new(small.color(palette.text_normal)).wrap());
    if let Some(question) = drink.question() {
        let way = say!(speaker, "shell-drifted-bring-back", name: name_as_shown(&name));
        if link_ui(ui, &way).clicked() {
            go_to_swap(view, drink, AskedSwap::bringing_back(question));
        }
    }
    ui.add_space(grid::TIGHT);
}

fn go_to_swap(view: &mut ViewState, drink: &Drifted, swap: AskedSwap) {
    view.show(Shown {
        recipe: drink.recipe.clone(),
        version: drink.version.clone(),
    });
    view.swap = swap;
    view.area = Area::Swap;
}
