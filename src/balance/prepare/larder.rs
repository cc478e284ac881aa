//! What drinks have taken of the ingredients of a book, kept as long as ingredient and settings are the same: one gram of each by its
//! label, and what a unit of it brings. A few ingredients are in many drinks, and each would be read again for every one of them.
//!
//! It rests on values alone, so what was kept is what would be worked out again, to the last bit.

use std::cell::RefCell;
use std::collections::BTreeMap;
use std::rc::Rc;
use std::sync::Arc;

use super::pack::gram_at_its_price;
use super::per_gram::{PerGram, Sensitivity};
use super::unit::{Asked, Unit};
use crate::balance::mix::{
    FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
use crate::balance::slots::Slots;
use crate::book::{Amount, Book, Ingredient, IngredientId, Measure, Settings};

/// Larders that are kept: under the settings of today, and under those with which standards were tasted.
const LARDERS: usize = 4;

/// Most ingredients in a larder; a shop with more has some of them read again.
const MOST_STOCKED: usize = 4096;

/// States of an ingredient that are kept: as it is, and as it was when standards were tasted.
const STATES: usize = 4;

/// Most units of an ingredient that are kept.
const MOST_UNITS: usize = 64;

thread_local! {
    static KEPT: RefCell<Vec<Rc<Larder>>> = const { RefCell::new(Vec::new()) };
}

/// The ingredients under some settings.
pub(super) struct Larder {
    settings: Settings,
    stocks: RefCell<BTreeMap<IngredientId, Vec<State>>>,
}

/// An ingredient as it is or was, and what there is of it.
struct State {
    item: Arc<Ingredient>,
    stock: Rc<Stock>,
}

impl Larder {
    /// The larder under these settings, the one that was asked for last in front.
    pub(super) fn of(settings: &Settings) -> Rc<Self> {
        KEPT.with_borrow_mut(|kept| {
            let known = kept.iter().position(|larder| larder.settings == *settings);
            if let Some(at) = known {
                kept[..=at].rotate_right(1);
            } else {
                kept.truncate(LARDERS - 1);
                let new = Self {
                    settings: settings.clone(),
                    stocks: RefCell::new(BTreeMap::new()),
                };
                kept.insert(0, Rc::new(new));
            }
            kept[0].clone()
        })
    }

    /// What there is of an ingredient by its label; `None` where it has more flavours or sweeteners than are told apart.
    pub(super) fn stock(&self, book: &Book, item: &Ingredient) -> Option<Rc<Stock>> {
        let is_it = |kept: &Arc<Ingredient>| std::ptr::eq(kept.as_ref(), item) || **kept == *item;
        let stocks = self.stocks.borrow();
        let mut states = stocks.get(&item.id).into_iter().flatten();
        if let Some(state) = states.find(|state| is_it(&state.item)) {
            return Some(state.stock.clone());
        }
        drop(stocks);
        let mut slots = Slots::default();
        let gram = gram_at_its_price(book, item, &mut slots);
        let stock = Rc::new(Stock::new(slots, Rc::new(gram))?);
        let in_book = book.ingredient(&item.id);
        let in_book = in_book.filter(|known| std::ptr::eq(known.as_ref(), item));
        let item = in_book.map_or_else(|| Arc::new(item.clone()), Arc::clone);
        let mut stocks = self.stocks.borrow_mut();
        if stocks.len() >= MOST_STOCKED && !stocks.contains_key(&item.id) {
            stocks.clear();
        }
        let states = stocks.entry(item.id.clone()).or_default();
        states.truncate(STATES - 1);
        let new = State {
            item,
            stock: stock.clone(),
        };
        states.insert(0, new);
        Some(stock)
    }
}

/// What is kept of an ingredient or a batch.
pub(super) struct Stock {
    /// The flavours and sweeteners in it, in the order in which they get their slots.
    slots: Slots,
    /// One gram of it, with these slots.
    gram: Rc<PerGram>,
    /// The units that have been asked for, with these slots.
    units: RefCell<Vec<KeptUnit>>,
}

impl Stock {
    /// `None` where a slot may have been wanting.
    pub(super) fn new(slots: Slots, gram: Rc<PerGram>) -> Option<Self> {
        let has_room =
            slots.flavours.len() < FLAVOUR_SLOTS && slots.sweeteners.len() < HIGH_POTENCY_SLOTS;
        has_room.then(|| Self {
            slots,
            gram,
            units: RefCell::new(Vec::new()),
        })
    }

    /// The flavours and sweeteners in it.
    pub(super) fn slots(&self) -> &Slots {
        &self.slots
    }

    /// A unit of it, as it was kept or to be kept.
    fn unit(&self, book: &Book, item: &Ingredient, asked: &Asked<'_>) -> Option<Rc<Unit>> {
        let key = UnitKey::of(book, asked)?;
        let mut kept = self.units.borrow_mut();
        if let Some(kept) = kept.iter().find(|kept| kept.key.is(&key)) {
            return kept.unit.clone();
        }
        let unit = Unit::of(book, item, &self.gram, asked).map(Rc::new);
        if kept.len() >= MOST_UNITS {
            kept.clear();
        }
        kept.push(KeptUnit {
            key,
            unit: unit.clone(),
        });
        unit
    }
}

struct KeptUnit {
    key: UnitKey,
    /// `None` where nobody knows what it weighs.
    unit: Option<Rc<Unit>>,
}

/// All that a unit rests on beside the ingredient and the settings.
struct UnitKey {
    measured: Measured,
    /// Temperatures and whether there is doubt in them, to the bit.
    bits: [u64; 3],
    flags: [bool; 3],
}

/// What a unit is a unit of.
enum Measured {
    Grams,
    Millilitres,
    Uses(Arc<Measure>),
}

impl UnitKey {
    /// `None` without the measure.
    fn of(book: &Book, asked: &Asked<'_>) -> Option<Self> {
        let measured = match asked.of {
            Amount::Grams(_) => Measured::Grams,
            Amount::Millilitres(_) | Amount::FillTo(_) | Amount::FillToRim => Measured::Millilitres,
            Amount::Count(_, id) => Measured::Uses(book.measure(id)?.clone()),
        };
        let kelvin = asked.warmer.unwrap_or(0.0);
        Some(Self {
            measured,
            bits: [asked.celsius, asked.leaves_at, kelvin].map(f64::to_bits),
            flags: [asked.warmer.is_some(), asked.dilutes, asked.is_steeped],
        })
    }

    fn is(&self, other: &Self) -> bool {
        let is_same_measure = match (&self.measured, &other.measured) {
            (Measured::Grams, Measured::Grams) | (Measured::Millilitres, Measured::Millilitres) => {
                true
            }
            (Measured::Uses(one), Measured::Uses(other)) => Arc::ptr_eq(one, other) || one == other,
            _ => false,
        };
        is_same_measure && self.bits == other.bits && self.flags == other.flags
    }
}

/// One gram of an ingredient as a drink takes it, and what is kept of the ingredient.
#[derive(Clone)]
pub(super) struct Taken {
    /// One gram, with the slots of the drink.
    pub(super) gram: Rc<PerGram>,
    /// What it was taken from, and where its flavours and sweeteners are in the drink; `None` where nothing is kept of it.
    from: Option<(Rc<Stock>, Option<Rc<Places>>)>,
}

impl Taken {
    /// A gram of which nothing is kept.
    pub(super) fn afresh(gram: PerGram) -> Self {
        Self::of_gram(Rc::new(gram))
    }

    /// The same of a gram that others have, too.
    pub(super) fn of_gram(gram: Rc<PerGram>) -> Self {
        Self { gram, from: None }
    }

    /// A gram from a stock; `None` where the drink has no slots left for what is in it.
    pub(super) fn of(stock: &Rc<Stock>, drink: &mut Slots) -> Option<Self> {
        let places = Places::of(&stock.slots, drink)?;
        Some(Self::with_places(stock, places))
    }

    /// A gram from a stock that has its places in the drink.
    pub(super) fn with_places(stock: &Rc<Stock>, places: Places) -> Self {
        let gram = places.moved(&stock.gram);
        let places = (!places.is_as_it_was()).then(|| Rc::new(places));
        Self {
            gram,
            from: Some((stock.clone(), places)),
        }
    }

    /// A unit of it, and where its flavours and sweeteners are in the drink if they are not where the unit has them.
    pub(super) fn unit(
        &self,
        book: &Book,
        item: &Ingredient,
        asked: &Asked<'_>,
    ) -> Option<(Rc<Unit>, Option<Rc<Places>>)> {
        match &self.from {
            Some((stock, places)) => Some((stock.unit(book, item, asked)?, places.clone())),
            None => Some((Rc::new(Unit::of(book, item, &self.gram, asked)?), None)),
        }
    }
}

/// Which slots of a drink the flavours and sweeteners of an ingredient or a batch have.
#[derive(Clone)]
pub(super) struct Places {
    flavours: Vec<usize>,
    sweeteners: Vec<usize>,
}

impl Places {
    /// Gives each of them a slot of the drink; `None` where there is no room for all of them.
    pub(super) fn of(batch: &Slots, drink: &mut Slots) -> Option<Self> {
        let flavours = batch.flavours.iter().map(|name| drink.flavour(name));
        let flavours: Vec<Option<usize>> = flavours.collect();
        let sweeteners = batch.sweeteners.iter();
        let sweeteners: Vec<Option<usize>> = sweeteners.map(|one| drink.sweetener(*one)).collect();
        Some(Self {
            flavours: flavours.into_iter().collect::<Option<_>>()?,
            sweeteners: sweeteners.into_iter().collect::<Option<_>>()?,
        })
    }

    /// Whether each is in the drink where it is by itself.
    fn is_as_it_was(&self) -> bool {
        let stays = |(from, to): (usize, &usize)| from == *to;
        let mut flavours = self.flavours.iter().enumerate();
        let mut sweeteners = self.sweeteners.iter().enumerate();
        flavours.all(stays) && sweeteners.all(stays)
    }

    /// A gram with the slots of the drink.
    pub(super) fn moved(&self, gram: &Rc<PerGram>) -> Rc<PerGram> {
        if self.is_as_it_was() {
            return gram.clone();
        }
        let sensitivities = gram.sensitivities.iter().map(|sensitivity| Sensitivity {
            cause: sensitivity.cause.clone(),
            change: self.moved_mix(&sensitivity.change),
        });
        Rc::new(PerGram {
            mix: self.moved_mix(&gram.mix),
            sensitivities: sensitivities.collect(),
            assumptions: gram.assumptions.clone(),
        })
    }

    /// A mix with the slots of the drink.
    pub(super) fn moved_mix(&self, mix: &Mix) -> Mix {
        let mut moved = *mix;
        let (flavours, sweeteners) = (flavour_slot(0), high_potency_slot(0));
        move_slots(mix, &mut moved, &self.flavours, flavours, FLAVOUR_SLOTS);
        move_slots(
            mix,
            &mut moved,
            &self.sweeteners,
            sweeteners,
            HIGH_POTENCY_SLOTS,
        );
        moved
    }
}

/// Moves the amounts of some slots, of which at least one is free in the batch, to their places in the drink.
fn move_slots(mix: &Mix, moved: &mut Mix, places: &[usize], first: usize, count: usize) {
    let bit = |slot: usize| 1_u64 << (first + slot);
    // What the batch does not have is nothing or, like all of it, not known.
    let others_are_unknown = mix.unknown & bit(places.len()) != 0;
    for slot in 0..count {
        moved.of[first + slot] = 0.0;
        moved.unknown &= !bit(slot);
        if others_are_unknown {
            moved.unknown |= bit(slot);
        }
    }
    for (from, to) in places.iter().enumerate() {
        moved.of[first + to] = mix.of[first + from];
        moved.unknown &= !bit(*to);
        if mix.unknown & bit(from) != 0 {
            moved.unknown |= bit(*to);
        }
    }
}
