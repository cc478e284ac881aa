//! Whether an ingredient can still be bought, and the way to a swap in every recipe once it can't.

use egui::Ui;

use crate::book::{Ingredient, IngredientId, resolve};
use crate::ui::counter_area::item::{Counter, CounterItem};
use crate::ui::counter_area::removal::Going;
use crate::ui::counter_area::uses::{Use, UsesOfBook};
use crate::ui::widgets::form::{Entry, Sheet, wrapped_link_ui};
use crate::ui::words::capitalised;
use crate::workbench::{Answers, BookQuestion, Shown};

pub(super) fn sold_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    before: &Ingredient,
    going: &mut Option<Going>,
) {
    let speaker = counter.speaker;
    let name = speaker.word("ingredient-sold");
    sheet.row(ui, name, |sheet, ui| {
        let name = capitalised(name);
        let word = |gone: &bool| speaker.sold(*gone).to_owned();
        sheet.choice(
            ui,
            &Entry::wide("no-longer-sold", &name),
            &before.no_longer_sold,
            &[false, true],
            word,
            |item, gone| item.no_longer_sold = gone,
        );
    });
    if !before.no_longer_sold {
        return;
    }
    if let Some(drink) = counter.answers.to(&FirstWith(before.id.clone())) {
        let link = wrapped_link_ui(ui, speaker.word("ingredient-swap-everywhere"));
        let hint = speaker.word("ingredient-swap-everywhere-hint");
        if link.on_hover_text(hint).clicked() {
            *going = Some(Going::SwapEverywhere(drink));
        }
    }
}

/// The first recipe or version with a line of an ingredient, at which a swap in all of them begins.
#[derive(Clone, PartialEq, Eq, Hash)]
struct FirstWith(IngredientId);

impl BookQuestion for FirstWith {
    type Answer = Option<Shown>;

    fn work_out(&self, answers: Answers<'_>) -> Self::Answer {
        let uses = answers.to(&UsesOfBook);
        let places = uses.list(&CounterItem::Ingredient(self.0.clone()));
        places.iter().find_map(|place| {
            let Use::Recipe(recipe, version) = place else {
                return None;
            };
            let found = answers.book().recipe(recipe)?;
            let (lines, _) = resolve(found, version.as_ref());
            let has_it = lines.lines().any(|line| line.ingredient == self.0);
            has_it.then(|| Shown {
                recipe: recipe.clone(),
                version: version.clone(),
            })
        })
    }
}
