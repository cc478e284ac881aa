//! What tastings show of an ingredient: the figure that they propose, what it would do to the drinks, and what was taken over.

use egui::Ui;

use crate::book::{Book, Ingredient, TastedFigure};
use crate::edit::Edit;
use crate::quantity::{Uncertain, name_as_shown};
use crate::say::{Speaker, say};
use crate::tasting::{Learned, Proposal};
use crate::ui::counter_area::item::Counter;
use crate::ui::field::take_keyboard;
use crate::ui::theme::{self, grid};
use crate::ui::widgets::form::{Sheet, section_ui, wrapped_link_ui};
use crate::ui::words::{paragraph_ui, quiet_ui};
use crate::workbench::{EffectOfTaking, WhatTastingsSay, taking_over, today};

/// How many drinks are told before the rest is counted.
const DRINKS: usize = 8;

/// Nothing while no tasting says anything of it.
pub(super) fn tasted_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    item: &Ingredient,
) {
    let speaker = counter.speaker;
    let found = counter.answers.to(&WhatTastingsSay);
    let proposals = found.proposals.iter();
    let own = proposals.filter(|proposal| proposal.factor.ingredient == item.id);
    let own: Vec<&Proposal> = own.collect();
    if own.is_empty() && item.tasted.is_empty() {
        return;
    }
    section_ui(ui, speaker.word("ingredient-tasted"));
    let palette = theme::palette(ui.visuals());
    if let Some(why) = speaker.not_learned(&found).filter(|_| !own.is_empty()) {
        paragraph_ui(ui, why, palette.off_level);
    }
    for proposal in own {
        proposal_ui(ui, counter, sheet, &found, proposal);
    }
    let mut said: Vec<&TastedFigure> = Vec::new();
    for figure in item.tasted.iter().rev() {
        if said.iter().any(|known| known.what == figure.what) {
            continue;
        }
        said.push(figure);
        taken_ui(ui, speaker, sheet, item, figure);
    }
    ui.add_space(grid::NEAR);
}

fn proposal_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    found: &Learned,
    proposal: &Proposal,
) {
    let speaker = counter.speaker;
    let palette = theme::palette(ui.visuals());
    paragraph_ui(ui, speaker.tasting_proposal(proposal), palette.text_normal);
    for weighed in &found.tastings {
        let is_of_it = proposal.tastings.contains(&weighed.tasting);
        if let Some(words) = speaker.weighed_tasting(weighed).filter(|_| is_of_it) {
            paragraph_ui(ui, words, palette.off_level);
        }
    }
    let by = tasters(counter.book, proposal);
    let edit = taking_over(found, proposal, &today(), &by, "");
    let Some(edit) = edit.filter(|_| proposal.is_news()) else {
        return;
    };
    let effects = counter.answers.to(&EffectOfTaking(proposal.factor.clone()));
    for effect in effects.iter().take(DRINKS) {
        quiet_ui(ui, &speaker.drink_effect(effect));
    }
    if effects.is_empty() {
        quiet_ui(ui, speaker.no_effect());
    }
    if effects.len() > DRINKS {
        let count = effects.len() - DRINKS;
        quiet_ui(ui, &say!(speaker, "ingredient-tasted-more", count: count));
    }
    let take = wrapped_link_ui(ui, speaker.word("ingredient-tasted-take"));
    take_keyboard(ui, &sheet.focus("tasted"), &take);
    let hint = speaker.word("ingredient-tasted-take-hint");
    if take.on_hover_text(hint).clicked() {
        sheet.edit("tasted", edit);
    }
    ui.add_space(grid::TIGHT);
}

/// Who tasted, each once, as the shop writes it.
fn tasters(book: &Book, proposal: &Proposal) -> String {
    let mut people: Vec<&str> = Vec::new();
    let tastings = proposal.tastings.iter().filter_map(|id| book.tasting(id));
    for person in tastings.flat_map(|tasting| &tasting.people) {
        if !people.contains(&person.as_str()) {
            people.push(person);
        }
    }
    people.join(", ")
}

fn taken_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    item: &Ingredient,
    figure: &TastedFigure,
) {
    let times = Uncertain {
        value: figure.times,
        u: figure.u,
    };
    let (what, times) = (
        speaker.tasted_factor(&figure.what),
        speaker.uncertain(times, ""),
    );
    let (date, by) = (name_as_shown(&figure.date), name_as_shown(&figure.by));
    let words = if by.trim().is_empty() {
        say!(speaker, "ingredient-tasted-taken", what: what, times: times, date: date)
    } else {
        say!(speaker, "ingredient-tasted-taken-by", what: what, times: times, date: date, by: by)
    };
    let palette = theme::palette(ui.visuals());
    paragraph_ui(ui, words, palette.text_normal);
    let give_up = wrapped_link_ui(ui, speaker.word("ingredient-tasted-give-up"));
    take_keyboard(ui, &sheet.focus("tasted-give-up"), &give_up);
    if give_up.clicked() {
        let edit = Edit::DropTasted {
            ingredient: item.id.clone(),
            what: figure.what.clone(),
        };
        sheet.edit("tasted-give-up", edit);
    }
}
