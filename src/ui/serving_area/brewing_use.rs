//! What a planned brew becomes in the book: a house-made tea of its leaf, its batch, or the figures of a tea that is bought ready.

use egui::Ui;

use super::brewing_model::{self, BrewPlan, TeaInHand};
use super::sheet;
use crate::balance::{Brew, HouseBrew};
use crate::book::{Figure, Form, Ingredient, IngredientId, ItemId};
use crate::edit::{Edit, Focus};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::Screen;
use crate::ui::counter_area::brewed_tea;
use crate::ui::field::take_keyboard;
use crate::ui::theme::grid;
use crate::workbench::{Action, begin_brew, brew_otherwise};

/// The button that carries the brew into the book; tells which tea was begun.
pub(super) fn use_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tea: TeaInHand<'_>,
    plan: &BrewPlan,
    actions: &mut Vec<Action>,
) -> Option<IngredientId> {
    let item = tea.tea?;
    let speaker = screen.speaker;
    let name = item.full_name();
    let name = name_as_shown(&name);
    match (tea.house, item.form) {
        (Some(house), _) => {
            batch_of_ui(ui, screen, item, house, plan, actions);
        }
        (None, _) if item.house_made.is_some() => {
            sheet::quiet_ui(ui, say!(speaker, "serving-brewing-house-made", tea: name));
        }
        (None, Form::Leaf) => return begun_ui(ui, screen, item, plan, actions),
        (None, form) if form.is_dry() => {
            sheet::quiet_ui(ui, say!(speaker, "serving-brewing-dry", tea: name));
        }
        (None, _) => figures_ui(ui, screen, item, plan, actions),
    }
    None
}

/// One pot of the plan: what is brewed at once.
fn pot(plan: &BrewPlan) -> Brew {
    plan.batches.map_or(plan.whole, |batches| batches.each)
}

/// A button with what it does below it; tells whether it was clicked.
fn button_ui(ui: &mut Ui, words: String, does: String, focus: &Focus) -> bool {
    ui.add_space(grid::TIGHT);
    let response = ui.button(words).on_hover_text(&does);
    take_keyboard(ui, focus, &response);
    sheet::quiet_ui(ui, does);
    response.clicked()
}

/// Begins a tea that the house brews of a leaf.
fn begun_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    leaf: &Ingredient,
    plan: &BrewPlan,
    actions: &mut Vec<Action>,
) -> Option<IngredientId> {
    let (book, speaker) = (screen.book, screen.speaker);
    let tea = brewed_tea(book, speaker, leaf);
    let name = tea.name.clone();
    let words = say!(speaker, "serving-brewing-begin", tea: name_as_shown(&name));
    let does = speaker.word("serving-brewing-begin-does").to_owned();
    let focus = screen.serving(ItemId::Ingredient(leaf.id.clone()), "brewing");
    if !button_ui(ui, words, does, &focus) {
        return None;
    }
    let names = (name.as_str(), speaker.word("house-made-water"));
    let begun = begin_brew(book, tea, &leaf.id, (&pot(plan), &plan.method), names)?;
    actions.push(Action::Edit {
        edits: begun.edits,
        focus,
    });
    Some(begun.ingredient)
}

/// Makes the plan the batch of a tea that the house brews.
fn batch_of_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tea: &Ingredient,
    house: &HouseBrew,
    plan: &BrewPlan,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let name = tea.full_name();
    let name = name_as_shown(&name);
    let Some((mut changed, mut edits)) = brew_otherwise(tea, house, &pot(plan), &plan.method)
    else {
        sheet::quiet_ui(ui, say!(speaker, "serving-brewing-house-made", tea: name));
        return;
    };
    let evidence = plan.evidence();
    if let Some(made) = &mut changed.house_made {
        if plan.method.extraction != house.method.extraction {
            made.extraction = Some(Figure {
                value: plan.method.extraction.value,
                evidence,
                u: Some(plan.method.extraction.u),
            });
        }
        if (plan.method.steep_minutes - house.method.steep_minutes).abs() > 0.0 {
            made.steep_minutes = Some(plan.method.steep_minutes);
        }
    }
    if edits.is_empty() && changed == *tea {
        sheet::quiet_ui(ui, say!(speaker, "serving-brewing-is-batch", tea: name));
        return;
    }
    let words = say!(speaker, "serving-brewing-batch", tea: name);
    let does = speaker.word("serving-brewing-batch-does").to_owned();
    let focus = screen.serving(ItemId::Ingredient(tea.id.clone()), "brewing");
    if button_ui(ui, words, does, &focus) {
        edits.push(Edit::PutIngredient(changed));
        actions.push(Action::Edit { edits, focus });
    }
}

/// Carries the strength into every drink that is made with a tea that comes ready.
fn figures_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tea: &Ingredient,
    plan: &BrewPlan,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let name = tea.full_name();
    let name = name_as_shown(&name);
    let Some(changed) = brewing_model::with_figures(tea, plan) else {
        sheet::quiet_ui(ui, say!(speaker, "serving-brewing-no-density", tea: name));
        return;
    };
    let evidence = speaker.evidence_kind(plan.evidence());
    let words = say!(speaker, "serving-brewing-use", tea: name);
    let does = say!(speaker, "serving-brewing-use-does", evidence: evidence);
    let focus = screen.serving(ItemId::Ingredient(tea.id.clone()), "brewing");
    if button_ui(ui, words, does, &focus) {
        actions.push(Action::edit(Edit::PutIngredient(changed), focus));
    }
}
