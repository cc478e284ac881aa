//! What is done with an item as a whole: added, duplicated as another brand, deleted when nothing needs it, left for a recipe.

use egui::{Align, Label, Layout, Rect, RichText, Sense, Ui, UiBuilder, vec2};

use super::item::{Counter, CounterItem, Kind};
use super::state::CounterState;
use super::uses::{Use, UsesOfBook, refusal};
use crate::book::{
    Book, Composition, FlavourStrength, Form, Ingredient, IngredientId, Measure, MeasureId,
    MeasureKind, RecipeId, Role, VersionId, Vessel, VesselId, VesselKind, millilitres_in_name,
};
use crate::edit::{Edit, FieldName, Focus};
use crate::exchange::{form_told, role_told};
use crate::say::{Language, Speaker, say};
use crate::ui::area::Area;
use crate::ui::theme::{self, grid};
use crate::ui::view_state::{AskedSwap, ViewState};
use crate::ui::widgets::form::link_ui;
use crate::ui::words::{self, capitalised};
use crate::workbench::{Action, Begun, Shown, published_ingredients};

/// Where a click in an editor leads.
pub(super) enum Going {
    /// To a recipe or one of its versions.
    Recipe(RecipeId, Option<VersionId>),
    /// To another item.
    Item(CounterItem),
    /// To a swap of it in every recipe that uses it, of which this is one.
    SwapEverywhere(Shown),
    /// To a field of the item itself.
    Field(FieldName),
    /// Into what the house makes of the item from now on, and whether that leads to the recipe.
    Begun(Begun, bool),
    /// A copy of the item.
    Duplicate,
    /// The item goes.
    Delete,
}

/// Takes the room for duplicate and delete, below the name; under it stands the reason when an item can't be deleted.
///
/// They are drawn last, by [`commands_ui`]: Tab goes from the name into the next field, and a blank of a name that is typed
/// there presses no button.
pub(super) fn commands_room(
    ui: &mut Ui,
    counter: Counter<'_>,
    item: &CounterItem,
    state: &CounterState,
) -> Rect {
    let size = vec2(ui.available_width(), grid::TARGET);
    let (room, _) = ui.allocate_exact_size(size, Sense::hover());
    if state.refused.as_ref() == Some(item) {
        let palette = theme::palette(ui.visuals());
        let uses = counter.answers.to(&UsesOfBook);
        let uses = uses.list(item);
        if let Some(sentence) = refusal(counter.speaker, uses, item, &name_of(counter, item)) {
            let sentence = capitalised(&sentence);
            ui.add(Label::new(RichText::new(sentence).color(palette.off_level)).wrap());
        }
    }
    room
}

/// Duplicate and delete.
pub(super) fn commands_ui(ui: &mut Ui, room: Rect, copy: &str) -> Option<Going> {
    let mut going = None;
    let layout = Layout::left_to_right(Align::Center);
    // A child of its own: what comes behind in the sheet does not follow this row.
    let mut row = ui.new_child(UiBuilder::new().max_rect(room).layout(layout));
    row.spacing_mut().item_spacing.x = grid::TIGHT;
    if link_ui(&mut row, copy).clicked() {
        going = Some(Going::Duplicate);
    }
    if link_ui(&mut row, words::speaker(ui.ctx()).word("counter-delete")).clicked() {
        going = Some(Going::Delete);
    }
    going
}

/// Places that use an item, as links.
pub(super) fn uses_ui(ui: &mut Ui, counter: Counter<'_>, uses: &[Use]) -> Option<Going> {
    let mut going = None;
    if uses.is_empty() {
        words::quiet_ui(ui, counter.speaker.word("counter-used-nowhere"));
    }
    // An approval is named where the recipe that it belongs to needs the item no more.
    let is_said = |place: &Use| match place {
        Use::Approval(recipe) => uses
            .iter()
            .any(|other| matches!(other, Use::Recipe(known, _) if known == recipe)),
        Use::Recipe(..) | Use::Readings(_) => false,
    };
    for place in uses.iter().filter(|place| !is_said(place)) {
        let words = place.words(counter.speaker);
        match place {
            Use::Recipe(recipe, version) => {
                if link_ui(ui, &words).clicked() {
                    going = Some(Going::Recipe(recipe.clone(), version.clone()));
                }
            }
            Use::Approval(recipe) => {
                if link_ui(ui, &words).clicked() {
                    going = Some(Going::Recipe(recipe.clone(), None));
                }
            }
            Use::Readings(measure) => {
                if link_ui(ui, &words).clicked() {
                    going = Some(Going::Item(CounterItem::Measure(measure.clone())));
                }
            }
        }
    }
    going
}

/// Goes where a click leads.
pub(super) fn carry_out(
    going: Going,
    counter: Counter<'_>,
    item: &CounterItem,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    match going {
        Going::Recipe(recipe, version) => {
            view.show(Shown { recipe, version });
            view.area = Area::Recipe;
        }
        Going::Item(item) => state.show(item),
        Going::SwapEverywhere(shown) => {
            if let CounterItem::Ingredient(id) = item {
                let (recipe, version) = (shown.recipe.clone(), shown.version.clone());
                view.swap = AskedSwap::going_everywhere(recipe, version, id.clone());
                view.show(shown);
                view.area = Area::Swap;
            }
        }
        Going::Field(field) => view.focus_wanted = Some(Focus::Field(item.id(), field)),
        Going::Begun(begun, leads_there) => {
            let focus = Focus::Field(item.id(), "made".into());
            actions.push(Action::Edit {
                edits: begun.edits,
                focus,
            });
            if leads_there {
                view.show(Shown {
                    recipe: begun.recipe,
                    version: None,
                });
                view.area = Area::Recipe;
            }
        }
        Going::Duplicate => duplicate(counter, item, state, view, actions),
        Going::Delete if counter.answers.to(&UsesOfBook).list(item).is_empty() => {
            let edit = match item.clone() {
                CounterItem::Ingredient(id) => Edit::RemoveIngredient(id),
                CounterItem::Measure(id) => Edit::RemoveMeasure(id),
                CounterItem::Vessel(id) => Edit::RemoveVessel(id),
            };
            actions.push(Action::edit(edit, Focus::Item(item.id())));
            state.step_back();
        }
        Going::Delete => state.refused = Some(item.clone()),
    }
}

fn name_of(counter: Counter<'_>, item: &CounterItem) -> String {
    match item {
        CounterItem::Ingredient(id) => counter.speaker.ingredient(id),
        CounterItem::Measure(id) => counter.speaker.measure(id),
        CounterItem::Vessel(id) => counter.speaker.vessel(id),
    }
}

/// A new item of the kind in hand, open and ready to be named; one that nobody found keeps the name it was looked for by.
pub(super) fn add_new(
    counter: Counter<'_>,
    name: Option<&str>,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let speaker = counter.speaker;
    let (item, edit) = match state.kind {
        Kind::Ingredients => {
            let new = new_ingredient(
                counter.book,
                name.unwrap_or(speaker.word("counter-new-ingredient")),
            );
            (
                CounterItem::Ingredient(new.id.clone()),
                Edit::PutIngredient(new),
            )
        }
        Kind::Measures => {
            let new = new_measure(counter, name.unwrap_or(speaker.word("counter-new-measure")));
            (CounterItem::Measure(new.id.clone()), Edit::PutMeasure(new))
        }
        Kind::Vessels => {
            let new = new_vessel(counter, name.unwrap_or(speaker.word("counter-new-cup")));
            (CounterItem::Vessel(new.id.clone()), Edit::PutVessel(new))
        }
        Kind::Shop => return,
    };
    put(item, edit, FieldName::NAME, state, view, actions);
}

/// An ingredient with the figures of a published table, ready to get its brand.
pub(super) fn add_published(
    counter: Counter<'_>,
    id: &IngredientId,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let Ok(published) = published_ingredients() else {
        return;
    };
    let Some(found) = published.ingredient(id) else {
        return;
    };
    let id = free_ingredient(counter.book, &found.name);
    let copy = Ingredient {
        id: id.clone(),
        ..found.as_ref().clone()
    };
    put(
        CounterItem::Ingredient(id),
        Edit::PutIngredient(copy),
        FieldName::BRAND,
        state,
        view,
        actions,
    );
}

/// Puts an item into the book, opens it and gives one of its fields the keyboard.
fn put(
    item: CounterItem,
    edit: Edit,
    field: FieldName,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    actions.push(Action::edit(edit, Focus::Item(item.id())));
    view.focus_wanted = Some(Focus::Field(item.id(), field));
    state.find.clear();
    state.wanted = Some(item);
}

fn free_ingredient(book: &Book, name: &str) -> IngredientId {
    IngredientId::from_name(name, |id| book.ingredients.contains(id))
}

fn free_measure(counter: Counter<'_>, name: &str) -> MeasureId {
    MeasureId::from_name(name, |id| counter.book.measures.contains(id))
}

fn free_vessel(counter: Counter<'_>, name: &str) -> VesselId {
    VesselId::from_name(name, |id| counter.book.vessels.contains(id))
}

/// An ingredient of which nothing is stated. The words of its name say what it is: "plum syrup", "oat creamer powder", "dried
/// pear slice".
pub(in crate::ui) fn new_ingredient(book: &Book, name: &str) -> Ingredient {
    let role = named_by(name, Role::ALL, Speaker::role).or_else(|| role_told(name));
    let form = form_told(name).or_else(|| named_by(name, Form::ALL, Speaker::form));
    let form = form.unwrap_or(match role {
        Some(Role::Water | Role::Tea) => Form::Liquid,
        _ => Form::Powder,
    });
    let new = Ingredient::new(free_ingredient(book, name), name.to_owned());
    Ingredient {
        form,
        role: role.unwrap_or(new.role),
        ..new
    }
}

/// The one whose word stands last in a name, in any language that there is a catalogue of; where one word ends like another,
/// that of the longer: "ice scoop".
fn named_by<T: Copy>(
    name: &str,
    all: impl IntoIterator<Item = T>,
    word: impl Fn(&Speaker<'static>, T) -> &'static str,
) -> Option<T> {
    let name = name.to_lowercase();
    let words: Vec<&str> = name.split_whitespace().collect();
    let last_place = |word: &str| {
        let word = word.to_lowercase();
        let parts: Vec<&str> = word.split_whitespace().collect();
        let starts = 0..=words.len().checked_sub(parts.len())?;
        let start = starts.rev().find(|at| words[*at..].starts_with(&parts))?;
        Some((start + parts.len(), parts.len()))
    };
    let mut found: Option<((usize, usize), T)> = None;
    for one in all {
        for language in Language::all() {
            let speaker = Speaker::without_book().in_language(language);
            if let Some(place) = last_place(word(&speaker, one))
                && found.is_none_or(|(before, _)| place > before)
            {
                found = Some((place, one));
            }
        }
    }
    found.map(|(_, one)| one)
}

/// What is brewed of a leaf is called: "Dark Kelby, brewed"; the word for leaf goes without saying.
fn brewed_name(speaker: Speaker<'_>, leaf: &Ingredient) -> String {
    let name = leaf.full_name();
    let name = name.trim();
    let of_leaf = name
        .rsplit_once(' ')
        .filter(|(_, last)| named_by(last, [Form::Leaf], Speaker::form).is_some());
    let name = of_leaf.map_or(name, |(before, _)| before);
    say!(speaker, "house-made-brewed-name", leaf: name)
}

/// The tea that the house brews of a leaf, as an ingredient that the book does not have yet.
pub(in crate::ui) fn brewed_tea(
    book: &Book,
    speaker: Speaker<'_>,
    leaf: &Ingredient,
) -> Ingredient {
    let name = brewed_name(speaker, leaf);
    Ingredient::new(free_ingredient(book, &name), name)
}

fn new_measure(counter: Counter<'_>, name: &str) -> Measure {
    Measure::new(
        free_measure(counter, name),
        name.to_owned(),
        named_by(name, MeasureKind::ALL, Speaker::measure_kind).unwrap_or(MeasureKind::Scoop),
    )
}

/// Capacity of a cup that has just been added, ml (common practice, no source): one cannot be without any.
const FIRST_CAPACITY: f64 = 500.0;

fn new_vessel(counter: Counter<'_>, name: &str) -> Vessel {
    let kinds = [VesselKind::Cup, VesselKind::Shaker, VesselKind::Jug];
    Vessel::new(
        free_vessel(counter, name),
        name.to_owned(),
        named_by(name, kinds, Speaker::vessel_kind).unwrap_or(VesselKind::Cup),
        millilitres_in_name(name).unwrap_or(FIRST_CAPACITY),
    )
}

/// The same of another brand: its name, kind, flavour and role. What its pack says, what was measured of it and what it costs is
/// its own.
fn another_brand(from: &Ingredient, id: IngredientId) -> Ingredient {
    let flavour = |flavour: &FlavourStrength| FlavourStrength {
        name: flavour.name.clone(),
        per_gram: None,
    };
    Ingredient {
        form: from.form,
        role: from.role,
        temperature: from.temperature,
        composition: Composition {
            flavours: from.composition.flavours.iter().map(flavour).collect(),
            ..Composition::default()
        },
        translations: from
            .translations
            .iter()
            .filter(|text| text.of == from.name)
            .cloned()
            .collect(),
        ..Ingredient::new(id, from.name.clone())
    }
}

/// A copy under an id of its own. What belongs to one pack or one thing alone stays behind: brand, lot and readings.
fn duplicate(
    counter: Counter<'_>,
    item: &CounterItem,
    state: &mut CounterState,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    match item {
        CounterItem::Ingredient(id) => {
            let Some(from) = counter.book.ingredient(id) else {
                return;
            };
            let id = free_ingredient(counter.book, &from.name);
            let copy = another_brand(from, id.clone());
            put(
                CounterItem::Ingredient(id),
                Edit::PutIngredient(copy),
                FieldName::BRAND,
                state,
                view,
                actions,
            );
        }
        CounterItem::Measure(id) => {
            let Some(from) = counter.book.measure(id) else {
                return;
            };
            let id = free_measure(counter, &from.name);
            let name = say!(counter.speaker, "counter-name-of-copy", name: &from.name);
            let copy = Measure {
                id: id.clone(),
                name,
                readings: Vec::new(),
                ..from.as_ref().clone()
            };
            put(
                CounterItem::Measure(id),
                Edit::PutMeasure(copy),
                FieldName::NAME,
                state,
                view,
                actions,
            );
        }
        CounterItem::Vessel(id) => {
            let Some(from) = counter.book.vessel(id) else {
                return;
            };
            let id = free_vessel(counter, &from.name);
            let name = say!(counter.speaker, "counter-name-of-copy", name: &from.name);
            let copy = Vessel {
                id: id.clone(),
                name,
                cooling_run: None,
                ..from.as_ref().clone()
            };
            put(
                CounterItem::Vessel(id),
                Edit::PutVessel(copy),
                FieldName::NAME,
                state,
                view,
                actions,
            );
        }
    }
}
