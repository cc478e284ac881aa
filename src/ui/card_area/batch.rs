//! What the shopping is for: so many of each of several drinks.

use egui::{RichText, TextEdit, Ui};

use crate::book::Book;
use crate::cards::{BatchItem, Drink};
use crate::say::say;
use crate::ui::Screen;
use crate::ui::drink_menu::drinks_ui;
use crate::ui::field::select_when_pressed;
use crate::ui::icons::{Icon, icon_button};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::name::name_ui;
use crate::workbench::Shown;

/// Most drinks that a batch may be typed for.
const MOST_DRINKS: u32 = 100_000;
/// Most kinds of drinks on one sheet: more is no list that a person types.
const MOST_KINDS: usize = 200;
/// How many of a drink are meant until somebody says otherwise.
const USUAL: &str = "20";
/// Width of the field for a number, in points.
const FIELD: f32 = 15.0 * grid::STEP;

/// So many of each of several drinks, as typed.
#[derive(Clone, Debug, Default)]
pub struct BatchOrder {
    /// The drinks, and how many of each.
    pub rows: Vec<(Shown, String)>,
    /// Whether a person has put it together; until then it is for the drink in hand.
    is_chosen: bool,
    find: String,
}

impl BatchOrder {
    /// Leaves out what the book does not hold any more, and is for the drink in hand while nobody has chosen.
    pub(super) fn follow(&mut self, book: &Book, shown: &Shown) {
        self.rows.retain(|(drink, _)| is_in(book, drink));
        self.is_chosen &= !self.rows.is_empty();
        if !self.is_chosen {
            self.rows = vec![(shown.clone(), USUAL.to_owned())];
        }
    }

    /// So many more of a drink.
    pub(super) fn add(&mut self, shown: Shown) {
        if !self.holds(&shown) && self.rows.len() < MOST_KINDS {
            self.rows.push((shown, USUAL.to_owned()));
            self.is_chosen = true;
        }
    }

    fn holds(&self, shown: &Shown) -> bool {
        self.rows.iter().any(|(drink, _)| drink == shown)
    }

    /// What is asked for; `None` while something typed is no number of drinks.
    pub(super) fn items(&self) -> Option<Vec<BatchItem>> {
        let item = |(shown, typed): &(Shown, String)| {
            let drink = Drink {
                recipe: shown.recipe.clone(),
                version: shown.version.clone(),
            };
            let count = count(typed)?;
            Some(BatchItem { drink, count })
        };
        let items: Vec<BatchItem> = self.rows.iter().map(item).collect::<Option<_>>()?;
        let all: u64 = items.iter().map(|item| u64::from(item.count)).sum();
        (1..=u64::from(MOST_DRINKS)).contains(&all).then_some(items)
    }
}

fn is_in(book: &Book, drink: &Shown) -> bool {
    book.recipe(&drink.recipe).is_some_and(|recipe| {
        let version = drink.version.as_ref();
        version.is_none_or(|id| recipe.version(id).is_some())
    })
}

fn count(typed: &str) -> Option<u32> {
    let count = typed.trim().parse().ok()?;
    (0..=MOST_DRINKS).contains(&count).then_some(count)
}

/// The drinks with a field for each, and the way to add another one.
pub(super) fn batch_ui(ui: &mut Ui, screen: &Screen<'_>, order: &mut BatchOrder) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let (mut taken_away, is_one) = (None, order.rows.len() == 1);
    for (at, (shown, typed)) in order.rows.iter_mut().enumerate() {
        let drink = speaker.drink(&shown.recipe, shown.version.as_ref());
        ui.horizontal(|ui| {
            let field = TextEdit::singleline(typed).desired_width(FIELD);
            let words = say!(speaker, "cards-screen-drinks-of", drink: &drink);
            let field = ui.push_id(at, |ui| ui.add(field)).inner;
            select_when_pressed(ui, &field, typed);
            order.is_chosen |= field.accessible_name(words).changed();
            let room = ui.available_width() - grid::TARGET - grid::NEAR;
            let colour = palette.text_normal;
            name_ui(ui, &drink, TypeStyle::Body, colour, room);
            let remove = say!(speaker, "cards-screen-drinks-remove", drink: drink);
            if !is_one && icon_button(ui, Icon::Delete, &remove, &remove).clicked() {
                taken_away = Some(at);
            }
        });
    }
    if let Some(at) = taken_away {
        order.rows.remove(at);
        order.is_chosen = true;
    }
    ui.horizontal_wrapped(|ui| {
        if !order.holds(screen.shown) {
            let Shown { recipe, version } = screen.shown;
            let drink = speaker.drink(recipe, version.as_ref());
            let words = say!(speaker, "cards-screen-drinks-add", drink: drink);
            if ui.button(words).clicked() {
                order.add(screen.shown.clone());
            }
        }
        let BatchOrder { rows, find, .. } = &mut *order;
        let is_chosen = |shown: &Shown| rows.iter().any(|(drink, _)| drink == shown);
        let name = |drink: &str| say!(speaker, "cards-screen-drinks-add", drink: drink);
        let words = speaker.word("compare-another");
        let added = ui.menu_button(words, |ui| drinks_ui(ui, screen, find, is_chosen, name));
        if let Some(shown) = added.inner.flatten() {
            order.add(shown);
        }
    });
    if order.items().is_none() {
        let words = say!(
            speaker,
            "cards-screen-drinks-out-of-range",
            most: MOST_DRINKS.to_string(),
        );
        ui.label(RichText::new(words).color(palette.off_level));
    }
    ui.add_space(grid::NEAR);
}
