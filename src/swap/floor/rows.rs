//! What a floor is a sum of: squared deviations, limits, and an amount to be made small, as linear forms of the counts.
//!
//! A deviation of a concentration from its target, times the volume, is linear: `(p − p*)·V = 100·A − p*·V`. That of the
//! temperature, times the heat capacity, is the excess of heat at the target. A limit `p ≤ c` is `100·A − c·V ≤ 0` alike.

use crate::balance::{Component, Mix, Prepared};

use super::drink::{Lines, Over};
use super::enclosure::{Enclosed, Regime};
use super::filled::FilledEnclosure;
use super::form::{Form, Interval};
use super::heat::excess;

/// A volume that rows are scaled with, ml; its size matters for the speed of the search alone.
const USUAL_VOLUME: f64 = 300.0;

/// What a target is a figure of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::swap) enum Of {
    /// A component per 100 ml.
    Component(Component),
    /// A flavour or other numbered place of the mix, per 100 ml.
    Place(usize),
    /// Sucrose-equivalent concentration.
    Sweetness,
    /// Dry matter that is not sugar, per 100 ml.
    Body,
    /// Serving temperature, °C.
    Temperature,
    /// Volume at 20 °C, ml.
    Volume,
}

/// A figure that should be near a value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::swap) struct Term {
    pub(in crate::swap) of: Of,
    pub(in crate::swap) value: f64,
    pub(in crate::swap) step: f64,
    pub(in crate::swap) weight: f64,
    /// How many steps it may be off at most, when it is limited.
    pub(in crate::swap) limit: Option<f64>,
}

/// A cap that a drink must keep.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(in crate::swap) enum Cap {
    /// Sugars of the mixed drink, g per 100 ml of it.
    SugarPer100Ml(f64),
    /// Sugars of the whole drink, g.
    Sugar(f64),
    /// Energy, kJ.
    EnergyKj(f64),
    /// Cost of the ingredients, in the book's currency.
    Cost(f64),
    /// Serving temperature at most, °C.
    Hottest(f64),
    /// Serving temperature at least, °C.
    Coolest(f64),
    /// Part of the cup that may be filled, ml.
    Level(f64),
}

/// A linear form with what it may be off in a box.
#[derive(Clone, Copy, Debug)]
pub(super) struct Row {
    pub(super) form: Form,
    on_volume: f64,
    on_heat: f64,
    on_fill: f64,
}

impl Row {
    /// How far the true value is from the form, anywhere in a box.
    pub(super) fn offset(&self, enclosed: &Enclosed) -> Interval {
        let volume = enclosed.volume.times(self.on_volume);
        volume
            .plus(enclosed.heat.times(self.on_heat))
            .plus(enclosed.fill.times(self.on_fill))
    }

    pub(super) fn plus(self, other: &Self) -> Self {
        Self {
            form: self.form.plus(&other.form, 1.0),
            on_volume: self.on_volume + other.on_volume,
            on_heat: self.on_heat + other.on_heat,
            on_fill: self.on_fill + other.on_fill,
        }
    }

    pub(super) fn times(self, factor: f64) -> Self {
        Self {
            form: self.form.times(factor),
            on_volume: self.on_volume * factor,
            on_heat: self.on_heat * factor,
            on_fill: self.on_fill * factor,
        }
    }
}

/// What turns the deviation of a row into that of a figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Per {
    /// The volume.
    Volume,
    /// The heat capacity.
    HeatCapacity,
    /// Nothing: it is the deviation itself.
    One,
}

/// A weighted square of a deviation, in steps.
#[derive(Clone, Copy, Debug)]
pub(super) struct Square {
    pub(super) row: Row,
    pub(super) weight: f64,
    pub(super) per: Per,
}

/// The rows of one regime; see [`super::enclosure::Regime`].
#[derive(Clone, Debug)]
pub(super) struct Rows {
    pub(super) squares: Vec<Square>,
    /// Each must not be above zero; scaled to about a noticeable step.
    pub(super) limits: Vec<Row>,
    pub(super) volume: Row,
    /// Sweetness with high-potency sweeteners, which no form describes.
    pub(super) curved: Option<CurvedSweetness>,
    /// What should be small, if anything is.
    pub(super) objective: Option<Row>,
    /// Heat capacity at most, kJ/K.
    pub(super) capacity: Row,
}

/// What the sweetness of sugars with high-potency sweeteners depends on.
#[derive(Clone, Debug)]
pub(super) struct CurvedSweetness {
    pub(super) term: Term,
    /// Sugars by their sweetness, g per 100 ml when divided by the volume.
    pub(super) sugars: Row,
    /// Slot and milligrams of each sweetener.
    pub(super) sweeteners: Vec<(usize, Row)>,
}

/// Makes rows of one regime.
pub(super) struct RowMaker<'question> {
    pub(super) prepared: &'question Prepared,
    pub(super) lines: &'question Lines,
    pub(super) enclosure: &'question FilledEnclosure,
    pub(super) regime: Regime,
}

impl RowMaker<'_> {
    fn volume(&self) -> &Form {
        if self.regime == Regime::Melted {
            &self.enclosure.drink.volume_melted
        } else {
            &self.enclosure.drink.volume_partly
        }
    }

    fn row(&self, form: Form, on_volume: f64, on_heat: f64) -> Row {
        let place = self.lines.dimensions;
        match self.enclosure.fill_form(self.regime) {
            Some(fill) => Row {
                on_fill: form.per[place],
                form: form.substitute(place, fill),
                on_volume,
                on_heat,
            },
            None => Row {
                form,
                on_volume,
                on_heat,
                on_fill: 0.0,
            },
        }
    }

    /// `form + factor · volume`.
    fn with_volume(&self, form: Form, factor: f64) -> Row {
        self.row(form.plus(self.volume(), factor), factor, 0.0)
    }

    fn amount(&self, of: Of) -> Option<Form> {
        let mixed = |of: &dyn Fn(&Mix) -> f64| Some(self.lines.form(Over::Mixed, of));
        match of {
            Of::Component(component) => mixed(&|mix| mix.get(component)),
            Of::Place(place) => mixed(&|mix| mix.of[place]),
            Of::Body => mixed(&|mix| mix.dry_matter() - mix.get(Component::Sugars)),
            Of::Sweetness => {
                let relative = self.prepared.setup.sweetness;
                mixed(&|mix| {
                    let kinds = [
                        Component::Glucose,
                        Component::Fructose,
                        Component::Lactose,
                        Component::Maltose,
                        Component::OtherSugar,
                    ];
                    let others: f64 = kinds
                        .iter()
                        .zip(relative)
                        .map(|(kind, sweet)| mix.get(*kind) * sweet)
                        .sum();
                    let stated = mix.get(Component::PolyolSweetness);
                    let tasted = mix.get(Component::TastedSweetness);
                    mix.get(Component::Sucrose) + others + stated + tasted
                })
            }
            Of::Temperature | Of::Volume => None,
        }
    }

    /// Whether the engine may find ice in the drink; then the temperature is that of freezing and no form describes it.
    fn frozen(&self) -> bool {
        self.regime != Regime::Melted
    }

    pub(super) fn rows(
        &self,
        terms: &[Term],
        caps: &[Cap],
        objective: Option<&Form>,
        has_ice: bool,
    ) -> Rows {
        let curved = self.curved(terms);
        let linear = |term: &&Term| term.of != Of::Sweetness || curved.is_none();
        let mut limits: Vec<Row> = caps
            .iter()
            .filter_map(|cap| self.cap(*cap, has_ice))
            .collect();
        for term in terms.iter().filter(linear) {
            self.limit(term, has_ice, &mut limits);
        }
        Rows {
            squares: terms
                .iter()
                .filter(linear)
                .filter_map(|term| self.square(term))
                .collect(),
            limits,
            volume: self.with_volume(Form::ZERO, 1.0),
            objective: objective.map(|form| self.row(*form, 0.0, 0.0)),
            capacity: self.row(self.enclosure.drink.capacity_most, 0.0, 0.0),
            curved,
        }
    }

    fn curved(&self, terms: &[Term]) -> Option<CurvedSweetness> {
        let term = terms.iter().find(|term| term.of == Of::Sweetness)?;
        let sweeteners: Vec<(usize, Row)> = (0..crate::balance::HIGH_POTENCY_SLOTS)
            .filter_map(|slot| {
                let place = crate::balance::high_potency_slot(slot);
                let form = self
                    .amount(Of::Place(place))
                    .filter(|form| !form.is_zero())?;
                Some((slot, self.row(form, 0.0, 0.0)))
            })
            .collect();
        let sugars = self.row(self.amount(Of::Sweetness)?.times(100.0), 0.0, 0.0);
        (!sweeteners.is_empty()).then_some(CurvedSweetness {
            term: *term,
            sugars,
            sweeteners,
        })
    }

    fn square(&self, term: &Term) -> Option<Square> {
        let weight = term.weight / (term.step * term.step);
        if weight <= 0.0 {
            return None;
        }
        match term.of {
            Of::Volume => {
                let row = self.row(self.volume().plus_constant(-term.value), 1.0, 0.0);
                Some(Square {
                    row,
                    weight,
                    per: Per::One,
                })
            }
            Of::Temperature if self.frozen() => None,
            Of::Temperature => {
                let row = self.row(self.excess(term.value), 0.0, 1.0);
                Some(Square {
                    row,
                    weight,
                    per: Per::HeatCapacity,
                })
            }
            of => {
                let row = self.with_volume(self.amount(of)?.times(100.0), -term.value);
                Some(Square {
                    row,
                    weight,
                    per: Per::Volume,
                })
            }
        }
    }

    fn excess(&self, celsius: f64) -> Form {
        excess(self.lines, Over::InCup, self.prepared.setup.cup, celsius)
    }

    /// Both sides of "not further off than so many steps". Below its freezing point a drink keeps ice instead of cooling,
    /// so with ice about only the warm side says something of the heat.
    fn limit(&self, term: &Term, has_ice: bool, limits: &mut Vec<Row>) {
        let Some(most) = term.limit.map(|steps| (steps + 1e-9) * term.step) else {
            return;
        };
        match term.of {
            Of::Volume => {
                let row = self.row(self.volume().plus_constant(-term.value), 1.0, 0.0);
                for sign in [1.0, -1.0] {
                    let mut side = row.times(sign / term.step);
                    side.form.constant -= most / term.step;
                    limits.push(side);
                }
            }
            Of::Temperature => {
                limits.extend(self.cap(Cap::Hottest(term.value + most), has_ice));
                limits.extend(self.cap(Cap::Coolest(term.value - most), has_ice));
            }
            of => {
                let Some(amount) = self.amount(of).map(|amount| amount.times(100.0)) else {
                    return;
                };
                let scale = 1.0 / (term.step * USUAL_VOLUME);
                limits.push(self.with_volume(amount, -(term.value + most)).times(scale));
                limits.push(
                    self.with_volume(amount.times(-1.0), term.value - most)
                        .times(scale),
                );
            }
        }
    }

    fn cap(&self, cap: Cap, has_ice: bool) -> Option<Row> {
        let whole = |component| self.lines.component(Over::Whole, component);
        let below = |form: Form, most: f64, scale: f64| {
            Some(
                self.row(form.plus_constant(-most), 0.0, 0.0)
                    .times(1.0 / scale.max(1e-6)),
            )
        };
        match cap {
            Cap::SugarPer100Ml(most) => {
                let sugars = self.lines.component(Over::Mixed, Component::Sugars);
                let row = self.with_volume(sugars.times(100.0), -most);
                Some(row.times(1.0 / (0.5 * USUAL_VOLUME)))
            }
            Cap::Sugar(most) => below(whole(Component::Sugars), most, 1.0),
            Cap::EnergyKj(most) => below(whole(Component::EnergyKj), most, 40.0),
            Cap::Cost(most) => below(whole(Component::Cost), most, 0.05),
            // The engine's temperature is found to 1e-9 K; a drink below its freezing point is warmer than all melted.
            Cap::Hottest(celsius) if celsius >= 0.0 => {
                let row = self.row(self.excess(celsius), 0.0, 1.0).times(1.0 / 3.0);
                Some(row)
            }
            Cap::Coolest(celsius) if !has_ice => Some(
                self.row(self.excess(celsius).times(-1.0), 0.0, -1.0)
                    .times(1.0 / 3.0),
            ),
            Cap::Hottest(_) | Cap::Coolest(_) => None,
            // At the serving temperature it takes at least 0.98 of its volume at 20 °C, ice and toppings left aside.
            Cap::Level(most) => {
                let mut row = self.with_volume(Form::ZERO, 0.98).times(1.0 / 20.0);
                row.form.constant -= most / 20.0;
                Some(row)
            }
        }
    }
}
