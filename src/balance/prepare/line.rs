//! From a line to what one unit of it brings to the drink, and what is uncertain in that.

use super::larder::Places;
use super::portion::{mark_uncertainty, offset};
use super::preparation::Preparation;
use super::setup::temperature_uncertainty;
use super::unit::{Asked, Unit};
use crate::balance::cause::Cause;
use crate::balance::mix::Mix;
use crate::balance::slots::Slots;
use crate::balance::solve::prepared::{
    AssumedIn, Fill, LineSensitivity, Prepared, PreparedLine, Scaling, Setup,
};
use crate::book::{
    Amount, Book, Finding, FindingKind, Form, Ingredient, IngredientId, Line, LineId, Place,
    Resolved, Role, Stage, Temperature,
};

/// Where a line is put.
#[derive(Clone, Copy, Default)]
struct Put<'line> {
    /// `None` for what a topping brings along.
    stage: Option<Stage>,
    /// What it steeps in, if it does.
    steeps_in: Option<&'line Line>,
}

/// The line that leaf steeps in: the last water that is poured before it, or else the next one; without water, whatever else is
/// mixed there.
fn steeps_in<'line>(resolved: &'line Resolved, leaf: &Line) -> Option<&'line Line> {
    let at = resolved.lines().position(|line| line.id == leaf.id)?;
    let mixed: Vec<&Line> = resolved.lines().collect();
    let (before, behind) = mixed.split_at(at);
    let nearest = |fits: &dyn Fn(&Line) -> bool| {
        let is_around = |line: &&&Line| line.stage == Stage::Mixed && fits(line);
        let last = before.iter().rev().find(is_around);
        last.or_else(|| behind.iter().find(is_around)).copied()
    };
    nearest(&|line| line.role == Role::Water).or_else(|| nearest(&|line| line.role != Role::Ice))
}

impl Preparation<'_> {
    /// The lines of a version; what a topping brings along is a line of its own.
    pub(super) fn lines(
        &mut self,
        resolved: &Resolved,
        setup: &Setup,
        slots: &mut Slots,
    ) -> Prepared {
        let mut prepared = Prepared::new(setup);
        prepared.lines.reserve(resolved.lines().count());
        for line in resolved.lines() {
            let steeps_in = (line.stage == Stage::Steeped).then(|| steeps_in(resolved, line));
            self.add(
                line,
                &line.ingredient,
                &line.amount,
                Put {
                    stage: Some(line.stage),
                    steeps_in: steeps_in.flatten(),
                },
                slots,
                &mut prepared,
            );
            if let Some(carried) = &line.carried {
                // Syrup that clings to a topping dissolves into the drink. It is a part of what the topping is taken by.
                let amount = Amount::Grams(carried.grams);
                self.add(
                    line,
                    &carried.ingredient,
                    &amount,
                    Put::default(),
                    slots,
                    &mut prepared,
                );
            }
        }
        prepared
    }

    /// Adds a line, or with no stage what it brings along.
    fn add(
        &mut self,
        line: &Line,
        ingredient: &IngredientId,
        amount: &Amount,
        put: Put<'_>,
        slots: &mut Slots,
        prepared: &mut Prepared,
    ) {
        let mut entry = PreparedLine {
            id: line.id.clone(),
            carried: put.stage.is_none(),
            ingredient: ingredient.clone(),
            role: line.role,
            stage: put.stage.unwrap_or(Stage::Mixed),
            per_unit: Mix::UNKNOWN,
            grams_per_unit: 0.0,
            count: amount
                .number()
                .filter(|_| !amount.fills())
                .unwrap_or(0.0)
                .max(0.0),
            fill: match amount {
                Amount::FillTo(millilitres) => Some(Fill::Volume(*millilitres)),
                Amount::FillToRim => Some(Fill::Rim),
                _ => None,
            },
            celsius: self.book.settings.room_temperature.celsius(),
            is_ice: false,
            sensitivities: Vec::new(),
        };
        if let Some(found) = self.book.ingredient(ingredient) {
            let lines = (line, put.steeps_in);
            self.look_up(lines, found, amount, &mut entry, slots, prepared);
        }
        // An amount that fills and can't be worked out is not nothing.
        if entry.fill.is_some() && entry.grams_per_unit == 0.0 {
            entry.fill = None;
            entry.count = 1.0;
        }
        // What is not known about nothing does not matter.
        if entry.count == 0.0 && entry.fill.is_none() && entry.grams_per_unit == 0.0 {
            entry.per_unit = Mix::EMPTY;
        }
        prepared.lines.push(entry);
    }

    fn look_up(
        &mut self,
        (line, steeps_in): (&Line, Option<&Line>),
        found: &Ingredient,
        amount: &Amount,
        entry: &mut PreparedLine,
        slots: &mut Slots,
        prepared: &mut Prepared,
    ) {
        let (stated, temperature_cause) = self.temperature(line, amount, found);
        let celsius = stated.celsius();
        entry.celsius = celsius;
        entry.is_ice = found.form == Form::Ice;
        let taken = self.take(found, slots);
        let assumed = taken
            .gram
            .assumptions
            .iter()
            .map(|(whose, assumption)| AssumedIn {
                line: line.id.clone(),
                whose: whose.clone(),
                assumption: *assumption,
            });
        prepared.assumptions.extend(assumed);
        let is_steeped = entry.stage == Stage::Steeped;
        let mut leaves_at = (celsius, stated, temperature_cause);
        // What the wet leaf takes along has come to the temperature of the water around it. What the dry leaf itself takes to get as
        // hot is left out: a kelvin for six grams in a cup.
        let water =
            steeps_in.and_then(|water| Some((water, self.book.ingredient(&water.ingredient)?)));
        if let (Some((water, item)), true) = (water, is_steeped) {
            let (stated, cause) = self.temperature(water, &water.amount, item);
            leaves_at = (stated.celsius(), stated, cause);
        }
        if *amount == Amount::FillToRim && prepared.setup.capacity.is_none() {
            let finding = Finding::error(self.place.clone(), FindingKind::NoCup);
            prepared.findings.push(finding);
            return;
        }
        let (leaves_at, stated, temperature_cause) = leaves_at;
        let asked = Asked {
            of: amount,
            celsius,
            leaves_at,
            warmer: temperature_cause
                .as_ref()
                .map(|_| temperature_uncertainty(self.book, stated)),
            dilutes: matches!(entry.role, Role::Water | Role::Tea | Role::Ice),
            is_steeped,
        };
        match taken.unit(self.book, found, &asked) {
            Some((unit, places)) => {
                let of_line = OfLine {
                    book: self.book,
                    item: found,
                    amount,
                    unit: &unit,
                    places: places.as_deref(),
                };
                of_line.put_into(entry, temperature_cause, prepared);
            }
            None => prepared.findings.push(self.no_mass(line, found, amount)),
        }
    }

    /// Temperature of a line: its own, that of the button it comes from, that of the ingredient, or that of the room.
    fn temperature(
        &self,
        line: &Line,
        amount: &Amount,
        item: &Ingredient,
    ) -> (Temperature, Option<Cause>) {
        let settings = &self.book.settings;
        let poured = match amount {
            Amount::Count(_, id) => self
                .book
                .measure(id)
                .and_then(|measure| measure.temperature)
                .map(|stated| (stated, Cause::MeasureTemperature(id.clone()))),
            _ => None,
        };
        let of_line = line
            .temperature
            .map(|stated| (stated, Cause::LineTemperature(line.id.clone())));
        let of_item = item
            .temperature
            .map(|stated| (stated, Cause::Temperature(item.id.clone())));
        let stated = of_line.or(poured).or(of_item);
        if item.form == Form::Ice {
            let (stated, cause) = stated.unwrap_or((
                settings.ice_temperature.into(),
                Cause::Temperature(item.id.clone()),
            ));
            // Ice above its melting point would be water; warmer ice is ice that begins to melt.
            let [from, to] = stated.ends().map(|end| end.min(0.0));
            return (Temperature::between(from, to), Some(cause));
        }
        let (stated, cause) = stated.unwrap_or((settings.room_temperature, Cause::RoomTemperature));
        (stated, Some(cause))
    }

    fn no_mass(&self, line: &Line, item: &Ingredient, amount: &Amount) -> Finding {
        let measure = match amount {
            Amount::Count(_, measure) => Some(measure.clone()),
            _ => None,
        };
        let place = match &self.place {
            Place::Recipe(recipe, _) => Place::Line(recipe.clone(), None, line.id.clone()),
            Place::Version(recipe, version) => {
                Place::Line(recipe.clone(), Some(version.clone()), line.id.clone())
            }
            other => other.clone(),
        };
        let ingredient = item.id.clone();
        Finding::warning(
            place,
            FindingKind::NoMass {
                ingredient,
                measure,
            },
        )
    }
}

/// What is known of a line when all has been looked up.
struct OfLine<'line> {
    book: &'line Book,
    item: &'line Ingredient,
    amount: &'line Amount,
    unit: &'line Unit,
    /// Where the flavours and sweeteners of the unit are in the drink, if somewhere else.
    places: Option<&'line Places>,
}

impl OfLine<'_> {
    fn put_into(
        &self,
        entry: &mut PreparedLine,
        temperature_cause: Option<Cause>,
        prepared: &mut Prepared,
    ) {
        let unit = self.unit;
        let in_drink = |mix: &Mix| self.places.map_or(*mix, |places| places.moved_mix(mix));
        entry.per_unit = in_drink(&unit.mix);
        entry.grams_per_unit = unit.portion.grams;
        // Beside those of the unit that of the temperature, and at most three of the amount.
        entry.sensitivities.reserve_exact(unit.changes.len() + 4);
        let mut enter = |prepared: &mut Prepared, cause: Cause, change: &Mix, scaling: Scaling| {
            entry.sensitivities.push(LineSensitivity {
                cause: prepared.cause(cause),
                change: in_drink(change),
                scaling,
            });
        };
        for sensitivity in &unit.changes {
            let cause = sensitivity.cause.clone();
            enter(prepared, cause, &sensitivity.change, Scaling::PerUnit);
        }
        if let (Some(cause), Some(change)) = (temperature_cause, &unit.warmer) {
            enter(prepared, cause, change, Scaling::PerUnit);
        }
        let rim = entry.fill.filter(|fill| *fill == Fill::Rim);
        self.enter_amount(&entry.id, rim, prepared, enter);
    }

    /// What is uncertain in how much of it goes in.
    fn enter_amount(
        &self,
        line: &LineId,
        rim: Option<Fill>,
        prepared: &mut Prepared,
        mut enter: impl FnMut(&mut Prepared, Cause, &Mix, Scaling),
    ) {
        let portion = &self.unit.portion;
        let scaled = |grams: f64| Mix {
            unknown: 0,
            ..self.unit.gram.times(grams)
        };
        if let Amount::Count(_, measure) = self.amount {
            let with = portion.is_weighed_with_it.then(|| self.item.id.clone());
            let cause = Cause::Calibration(measure.clone(), with);
            let change = scaled(portion.grams * portion.calibration);
            enter(prepared, cause, &change, Scaling::PerUnit);
            let change = scaled(portion.scatter);
            let cause = Cause::UseScatter(line.clone());
            enter(prepared, cause, &change, Scaling::PerRootUnit);
        }
        if let Some((relative, cause)) = portion.density_cause(&self.item.id) {
            let change = scaled(portion.grams * relative);
            enter(prepared, cause, &change, Scaling::PerUnit);
        }
        // The rim is a mark like any other.
        let rim = rim.and_then(|fill| fill.mark(&prepared.setup));
        let of_rim = mark_uncertainty(self.book) * rim.unwrap_or(0.0) * portion.grams;
        let offset = offset(self.book, self.amount, portion.grams) + of_rim;
        if offset > 0.0 {
            let cause = Cause::Reading(line.clone());
            enter(prepared, cause, &scaled(offset), Scaling::Once);
        }
    }
}
