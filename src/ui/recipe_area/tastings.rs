//! Below the approvals: who tasted the drink when, what came out and what it shows, and the entry of another tasting.
//!
//! Everything is typed or chosen by the keyboard: an entry is a sheet over the tasting, which Tab and Enter lead through.

use egui::{Checkbox, Ui};

use crate::book::{
    Axis, ItemId, TasteNote, TastedCup, Tasting, TastingId, TastingOutcome, VersionId,
};
use crate::edit::{Edit, Focus};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::area::{Area, Navigation};
use crate::ui::field::take_keyboard;
use crate::ui::theme::{self, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::form::{Entry, Sheet, read_date, wrapped_link_ui};
use crate::ui::words::{capitalised, paragraph_ui, quiet_ui, small_heading_ui};
use crate::workbench::{Action, WhatTastingsSay, today, verdict_of};

/// The tastings of the recipe in hand, the newest first; `open` is the one whose entry is open.
pub(super) fn tastings_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    open: &mut Option<TastingId>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    ui.add_space(grid::EASY);
    small_heading_ui(ui, speaker.word("tastings"));
    let of_drink = screen.book.tastings.iter();
    let of_drink = of_drink.filter(|tasting| tasting.is_of(&screen.recipe.id));
    for tasting in of_drink.rev() {
        let is_open = open.as_ref() == Some(&tasting.id);
        let outcome = speaker.tasting_outcome(tasting.outcome);
        let name = speaker.name_of_tasting(tasting);
        let words = say!(speaker, "tastings-row", tasting: name, outcome: outcome);
        if wrapped_link_ui(ui, &capitalised(&words)).clicked() {
            *open = (!is_open).then(|| tasting.id.clone());
        }
        if is_open {
            ui.indent(("tasting", tasting.id.as_str()), |ui| {
                entry_ui(ui, screen, tasting, view, actions);
            });
        }
    }
    let add = wrapped_link_ui(ui, speaker.word("tastings-add"));
    if add.clicked() {
        let tasting = new_tasting(screen);
        *open = Some(tasting.id.clone());
        let item = ItemId::Tasting(tasting.id.clone());
        view.focus_wanted = Some(Focus::Field(item.clone(), "taster".into()));
        let focus = Focus::Field(item, "taster".into());
        actions.push(Action::edit(Edit::PutTasting(tasting), focus));
    }
}

/// The version in hand beside what it was made from, as nothing but said yet.
fn new_tasting(screen: &Screen<'_>) -> Tasting {
    let today = today();
    let id = TastingId::from_name(&today, |taken| screen.book.tasting(taken).is_some());
    let cup = |version: Option<&VersionId>| {
        TastedCup::of_drink(screen.book, &screen.recipe.id, version).unwrap_or_default()
    };
    Tasting {
        cups: vec![cup(None), cup(screen.shown.version.as_ref())],
        axis: Some(Axis::Sweetness),
        counts: true,
        ..Tasting::new(id, today)
    }
}

fn entry_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tasting: &Tasting,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let place = ItemId::Tasting(tasting.id.clone());
    let mut sheet = Sheet::new(
        tasting.clone(),
        speaker.units,
        place,
        Edit::PutTasting,
        &mut view.drafts,
        actions,
    );
    people_ui(ui, speaker, &mut sheet, tasting);
    cups_ui(ui, screen, &mut sheet, tasting);
    outcome_ui(ui, speaker, &mut sheet, tasting);
    notes_ui(ui, speaker, &mut sheet, tasting);
    let remove = wrapped_link_ui(ui, speaker.word("tastings-remove"));
    take_keyboard(ui, &sheet.focus("remove"), &remove);
    if remove.clicked() {
        sheet.edit("remove", Edit::RemoveTasting(tasting.id.clone()));
    }
    drop(sheet);
    shows_ui(ui, screen, tasting, view);
    ui.add_space(grid::NEAR);
}

fn people_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Tasting>, before: &Tasting) {
    let words = speaker.word("tastings-people");
    sheet.row(ui, words, |sheet, ui| {
        let spot = Entry::wide("taster", speaker.word("tastings-people-named"));
        let spot = spot.hint(speaker.word("tastings-people-hint"));
        let read = |text: &str| Ok::<_, String>(text.trim().to_owned());
        if let Some(person) = sheet.take(ui, &spot, read).filter(|one| !one.is_empty()) {
            sheet.change("taster", |item| item.people.push(person));
        }
    });
    if !before.people.is_empty() {
        quiet_ui(ui, &speaker.tasters(before));
        let fewer = wrapped_link_ui(ui, speaker.word("tastings-people-fewer"));
        if fewer.clicked() {
            sheet.change("taster", |item| {
                item.people.pop();
            });
        }
    }
    sheet.row(ui, speaker.word("tastings-date"), |sheet, ui| {
        let spot = Entry::wide("date", speaker.word("tastings-date-named"));
        let read = |text: &str| match read_date(speaker, text)? {
            Some(day) if day > today() => Err(say!(speaker, "tastings-in-future", day: day)),
            day => Ok(day.unwrap_or_else(today)),
        };
        sheet.read(ui, &spot, &before.date, read, |item, day| item.date = day);
    });
    sheet.row(ui, speaker.word("tastings-reason"), |sheet, ui| {
        let spot = Entry::wide("reason", speaker.word("tastings-reason-named"));
        sheet.text(ui, &spot, &before.reason, |item, text| item.reason = text);
    });
}

fn cups_ui(ui: &mut Ui, screen: &Screen<'_>, sheet: &mut Sheet<'_, Tasting>, before: &Tasting) {
    let speaker = screen.speaker;
    let versions = screen.recipe.versions.iter();
    let versions = versions.map(|version| Some(version.id.clone()));
    let all: Vec<Option<VersionId>> = std::iter::once(None).chain(versions).collect();
    let word = |version: &Option<VersionId>| match version {
        None => speaker.word("version-original").to_owned(),
        Some(id) => speaker.version(&screen.recipe.id, id),
    };
    for (at, cup) in before.cups.iter().enumerate() {
        let number = at + 1;
        let words = say!(speaker, "tastings-cup", number: number);
        sheet.row(ui, &words, |sheet, ui| {
            if cup.recipe.as_ref() != Some(&screen.recipe.id) {
                quiet_ui(ui, &speaker.tasted_cup(cup));
                return;
            }
            let spot = Entry::wide(["first-cup", "second-cup"][at.min(1)], &words);
            sheet.choice(ui, &spot, &cup.version, &all, word, |item, version| {
                let chosen = TastedCup::of_drink(screen.book, &screen.recipe.id, version.as_ref());
                item.cups[at] = chosen.unwrap_or_default();
            });
        });
    }
    let flavours = screen.balance.flavours.iter().cloned().map(Axis::Flavour);
    let asked = [None, Some(Axis::Sweetness)].into_iter();
    let asked: Vec<Option<Axis>> = asked.chain(flavours.map(Some)).collect();
    sheet.row(ui, speaker.word("tastings-axis"), |sheet, ui| {
        let spot = Entry::wide("axis", speaker.word("tastings-axis-named"));
        let word = |axis: &Option<Axis>| match axis {
            None => speaker.word("tastings-no-axis").to_owned(),
            Some(axis) => speaker.axis(axis),
        };
        sheet.choice(ui, &spot, &before.axis, &asked, word, |item, axis| {
            item.axis = axis;
        });
    });
}

/// An outcome of a kind with what was counted before, as far as it goes with it.
fn outcome_of(kind: &str, before: TastingOutcome) -> TastingOutcome {
    let mut kinds = TastingOutcome::KINDS.into_iter();
    let found = kinds.find(|one| one.word() == kind);
    let (people, right) = (before.people().unwrap_or(1), before.right().unwrap_or(0));
    found.unwrap_or_default().counting(people, right)
}

fn outcome_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Tasting>, before: &Tasting) {
    let outcome = before.outcome;
    sheet.row(ui, speaker.word("tastings-outcome"), |sheet, ui| {
        let spot = Entry::wide("outcome", speaker.word("tastings-outcome-named"));
        let word = |kind: &&str| say!(speaker, "tastings-outcome-kind", kind: *kind);
        let kinds = TastingOutcome::KINDS.map(TastingOutcome::word);
        sheet.choice(ui, &spot, &outcome.word(), &kinds, word, |item, kind| {
            item.outcome = outcome_of(kind, outcome);
        });
    });
    if let Some(people) = outcome.people() {
        sheet.row(ui, speaker.word("tastings-counted"), |sheet, ui| {
            let spot = Entry::number("people", speaker.word("tastings-counted-named"));
            let put = |item: &mut Tasting, number: f64| {
                let right = item.outcome.right().unwrap_or(0);
                item.outcome = item.outcome.counting(count(number), right);
            };
            sheet.required(ui, &spot, f64::from(people), put);
        });
    }
    if let Some(right) = outcome.right() {
        sheet.row(ui, speaker.word("tastings-right"), |sheet, ui| {
            let spot = Entry::number("right", speaker.word("tastings-right-named"));
            let put = |item: &mut Tasting, number: f64| {
                let people = item.outcome.people().unwrap_or(0);
                item.outcome = item.outcome.counting(people, count(number));
            };
            sheet.required(ui, &spot, f64::from(right), put);
        });
    }
    if let TastingOutcome::About { people, times } = outcome {
        sheet.row(ui, speaker.word("tastings-times"), |sheet, ui| {
            let spot = Entry::number("times", speaker.word("tastings-times-named"));
            sheet.required(ui, &spot, times, |item, times| {
                item.outcome = TastingOutcome::About { people, times };
            });
        });
    }
    let mut counts = before.counts;
    let words = speaker.word("tastings-counts");
    if ui.add(Checkbox::new(&mut counts, words)).changed() {
        sheet.change("counts", |item| item.counts = counts);
    }
}

/// A typed number of people.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the number is rounded and bounded before"
)]
fn count(number: f64) -> u32 {
    number.round().clamp(0.0, 100_000.0) as u32
}

fn notes_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Tasting>, before: &Tasting) {
    for note in &before.notes {
        let (person, text) = (name_as_shown(&note.person), name_as_shown(&note.text));
        let number = note.cup.to_string();
        let words = if person.is_empty() {
            say!(speaker, "tastings-said", number: number, text: text)
        } else {
            say!(speaker, "tastings-said-by", person: person, number: number, text: text)
        };
        quiet_ui(ui, &words);
    }
    let cups = before.cups.len();
    sheet.row(ui, speaker.word("tastings-note"), |sheet, ui| {
        let spot = Entry::wide("said", speaker.word("tastings-note-named"));
        let spot = spot.hint(speaker.word("tastings-note-hint"));
        let read = |text: &str| Ok::<_, String>(note_of(text, cups));
        if let Some(note) = sheet
            .take(ui, &spot, read)
            .filter(|note| !note.text.is_empty())
        {
            sheet.change("said", |item| item.notes.push(note));
        }
    });
}

/// "AB 2: a little flat": who, which cup, what; without a number of the cup that was held against the first one.
fn note_of(typed: &str, cups: usize) -> TasteNote {
    let second = u32::try_from(cups.min(2)).unwrap_or(2);
    let Some((head, text)) = typed.split_once(':') else {
        return TasteNote {
            cup: second,
            text: typed.trim().to_owned(),
            ..TasteNote::default()
        };
    };
    let (person, cup) = match head.trim().rsplit_once(' ') {
        Some((person, number)) => match number.parse::<u32>() {
            Ok(cup) if cup >= 1 && cup as usize <= cups => (person, cup),
            _ => (head, second),
        },
        None => (head, second),
    };
    TasteNote {
        person: person.trim().to_owned(),
        cup,
        axis: None,
        text: text.trim().to_owned(),
    }
}

/// What it shows by itself, and what it says of ingredients with all others.
fn shows_ui(ui: &mut Ui, screen: &Screen<'_>, tasting: &Tasting, view: &mut ViewState) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    for remark in verdict_of(tasting.outcome) {
        paragraph_ui(ui, speaker.tasting_remark(&remark), palette.text_normal);
    }
    if !tasting.counts || tasting.outcome == TastingOutcome::Said {
        return;
    }
    let found = screen.answers.to(&WhatTastingsSay);
    let weighed = found.tastings.iter().find(|one| one.tasting == tasting.id);
    if let Some(words) = weighed.and_then(|one| speaker.weighed_tasting(one)) {
        paragraph_ui(ui, words, palette.off_level);
    }
    let proposals = found.proposals.iter();
    for proposal in proposals.filter(|one| one.tastings.contains(&tasting.id)) {
        paragraph_ui(ui, speaker.tasting_proposal(proposal), palette.text_normal);
        if proposal.is_news() {
            let id = &proposal.factor.ingredient;
            let name = speaker.ingredient(id);
            let words = say!(speaker, "tastings-take-over", ingredient: name);
            if wrapped_link_ui(ui, &words).clicked() {
                let item = ItemId::Ingredient(id.clone());
                view.go(Area::Counter, Navigation::Form(item));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_note_says_who_which_cup_and_what_as_far_as_it_is_typed() {
        let of = |typed: &str| {
            let note = note_of(typed, 2);
            (note.person, note.cup, note.text)
        };
        let said = |person: &str, cup: u32, text: &str| (person.to_owned(), cup, text.to_owned());
        assert_eq!(of("flat"), said("", 2, "flat"));
        assert_eq!(of("AB: flat"), said("AB", 2, "flat"));
        assert_eq!(of("AB 1: flat"), said("AB", 1, "flat"));
        assert_eq!(of("AB 7: flat"), said("AB 7", 2, "flat"));
    }

    #[test]
    fn every_kind_of_outcome_is_offered_and_keeps_what_was_counted() {
        let before = TastingOutcome::Triangle {
            people: 6,
            right: 5,
        };
        for kind in TastingOutcome::KINDS.map(TastingOutcome::word) {
            let outcome = outcome_of(kind, before);
            assert_eq!(outcome.word(), kind);
            assert!(outcome.people().is_none_or(|people| people == 6));
            assert!(outcome.right().is_none_or(|right| right == 5));
        }
    }
}
