//! Everything the engine says of one version.

use super::axes::{AxisValue, axes_of, measurand_of, noticeable_step, slot_of};
use super::caution::{Caution, Facts, cautions};
use super::share::{Lens, LineShare, WholeDrink, line_share};
use super::unstated::{Unstated, unstated};
use crate::balance::assumption::Assumption;
use crate::balance::cause::Cause;
use crate::balance::diet::{AllergenSummary, Claims, Verdict, claims};
use crate::balance::measurand::{MEASURANDS, Measurand};
use crate::balance::prepare::prepare;
use crate::balance::slots::Slots;
use crate::balance::solve::figures::{
    Figures, evaluate, heat_of_wall, layers_when_off, pour, solved_count, sums,
};
use crate::balance::solve::prepared::Prepared;
use crate::balance::solve::slopes::{effects, effects_on_layers};
use crate::book::{
    Axis, Book, Finding, FindingKind, IngredientId, LineId, MeasureId, Place, Recipe, Resolved,
    VersionId, resolve,
};
use crate::quantity::Uncertain;

/// What one cause does to every figure when it is off by its standard uncertainty.
#[derive(Clone, Debug, PartialEq)]
pub struct Contribution {
    /// The cause.
    pub cause: Cause,
    /// Change of each figure, by slot, in the unit of the figure; signed, so that shared causes can cancel.
    pub effect: [f64; MEASURANDS],
}

/// An amount of which nobody knows what it weighs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unweighed {
    /// What is measured.
    pub ingredient: IngredientId,
    /// What it is counted in; `None` for millilitres.
    pub measure: Option<MeasureId>,
}

/// A figure as it is reported.
#[derive(Clone, Debug, PartialEq)]
pub struct Reported {
    /// The value; the known part of an additive figure when something is missing.
    pub value: Option<f64>,
    /// Standard uncertainty of the value.
    pub u: Option<f64>,
    /// Ingredients that do not state what the figure needs.
    pub missing: Vec<IngredientId>,
    /// Why there is no value or only a part of it, when it is not for want of an ingredient's statement.
    pub reason: Option<NoFigure>,
}

/// Why a figure can't be given, or only a part of it, when it is not for want of an ingredient's statement.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum NoFigure {
    /// With ice in it, it gets only warmer while it stands.
    WarmerOnly,
    /// No cup is named, or the room is no cooler than the drinking temperature.
    CupOrWarmRoom,
    /// No cup is named.
    Cup,
    /// The price of the cup, of its closure or of what goes with it is not stated.
    Price,
    /// There is nothing but water, tea and ice to dilute.
    OnlyWater,
    /// There is nothing in the cup.
    Empty,
}

/// What floats on top, and what becomes of the drink when it is stirred in.
#[derive(Clone, Debug, PartialEq)]
pub struct Layers {
    /// What floats on top alone, as the first sip brings it.
    pub first_sip: Layer,
    /// Everything stirred together.
    pub stirred: Layer,
}

/// The figures of a part of the drink that is tasted for itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Layer {
    /// The figures; those of the cup and of heat mean nothing here.
    pub figures: Figures,
    /// Their standard uncertainties, by slot.
    pub u: [f64; MEASURANDS],
}

impl Layer {
    /// The figures by which a layer is tasted.
    pub const TASTED: [Measurand; 6] = [
        Measurand::Sweetness,
        Measurand::TeaStrength,
        Measurand::Creaminess,
        Measurand::Acidity,
        Measurand::Body,
        Measurand::SugarPer100Ml,
    ];

    /// A figure with its standard uncertainty; `None` when something is missing for it.
    pub fn get(&self, measurand: Measurand) -> Option<Uncertain> {
        let value = self.figures.complete(measurand)?;
        let u = self.u[measurand.slot()];
        Some(Uncertain { value, u })
    }
}

/// Everything the engine says of one version.
#[derive(Clone, Debug, PartialEq)]
pub struct Balance {
    /// The plain lines that were balanced.
    pub resolved: Resolved,
    /// The figures as plain numbers.
    pub figures: Figures,
    /// What every cause of uncertainty does to them.
    pub contributions: Vec<Contribution>,
    /// Names of the flavours, in the order of their slots.
    pub flavours: Vec<String>,
    /// Where the drink stands on each axis.
    pub axes: Vec<AxisValue>,
    /// What each line brings.
    pub lines: Vec<LineShare>,
    /// Heat that cup and shaker bring to the drink as served, kJ (mostly negative in a hot drink).
    pub heat_of_vessels: f64,
    /// What is not stated, line by line.
    pub unstated: Vec<Unstated>,
    /// Whether it is vegan by its ingredients.
    pub vegan: Verdict,
    /// Whether it is free of milk by its ingredients.
    pub dairy_free: Verdict,
    /// Its allergens.
    pub allergens: AllergenSummary,
    /// Its cautions.
    pub cautions: Vec<Caution>,
    /// What could not be resolved or looked up.
    pub findings: Vec<Finding>,
    /// Temperature at which sweetness is given, °C.
    pub drinking_temperature: f64,
    /// What is taken for granted of its ingredients, because packs do not print it.
    pub assumptions: Vec<(IngredientId, Assumption)>,
    /// The first sip and the stirred drink, where something floats on top.
    pub layers: Option<Layers>,
    /// Whether there is ice in it.
    pub iced: bool,
    /// Capacity of the cup, ml.
    pub capacity: Option<f64>,
    /// Temperature at which its own standard was tasted, °C.
    pub tasted_at: Option<f64>,
    /// What another drink is held to instead of these figures, see [`super::held`]; nothing but for a standard.
    pub aims: Vec<(Axis, f64)>,
}

impl Balance {
    /// The lines of which nobody knows what they weigh.
    pub fn unweighed(&self) -> impl Iterator<Item = Unweighed> {
        let kinds = self.findings.iter().map(|finding| &finding.kind);
        kinds.filter_map(|kind| match kind {
            FindingKind::NoMass {
                ingredient,
                measure,
            } => Some(Unweighed {
                ingredient: ingredient.clone(),
                measure: measure.clone(),
            }),
            _ => None,
        })
    }

    /// The first of these ingredients of which nobody knows what it weighs.
    pub fn unweighed_of(&self, ingredients: &[IngredientId]) -> Option<Unweighed> {
        let mut unweighed = self.unweighed();
        unweighed.find(|line| ingredients.contains(&line.ingredient))
    }

    /// A figure with its uncertainty and what is missing for it.
    pub fn reported(&self, measurand: Measurand) -> Reported {
        let value = self.figures.get(measurand);
        let missing_bits = self.figures.missing(measurand);
        let missing = self.missing_for(missing_bits);
        Reported {
            u: value.map(|_| self.uncertainty(measurand.slot())),
            // Bits without a name are not an ingredient's: for cost, that of the cup and what goes with it.
            reason: (missing.is_empty() && (value.is_none() || missing_bits != 0))
                .then(|| reason(measurand, self.iced)),
            missing,
            value,
        }
    }

    /// The ingredients that do not state what these components need.
    pub fn missing_for(&self, components: u64) -> Vec<IngredientId> {
        let mut missing: Vec<IngredientId> = Vec::new();
        for unstated in &self.unstated {
            if unstated.component.bit() & components != 0 && !missing.contains(&unstated.ingredient)
            {
                missing.push(unstated.ingredient.clone());
            }
        }
        missing
    }

    /// Standard uncertainty of a figure by its slot: the root of the summed squares of the effects of all causes
    /// (JCGM 100:2008, 5.1.2; the causes are independent of each other).
    pub fn uncertainty(&self, slot: usize) -> f64 {
        self.contributions
            .iter()
            .map(|contribution| contribution.effect[slot].powi(2))
            .sum::<f64>()
            .sqrt()
    }

    /// The causes that matter most for a figure, the largest first, each with its part of the variance.
    pub fn largest_causes(&self, slot: usize, at_most: usize) -> Vec<(&Cause, f64)> {
        let variance = self.uncertainty(slot).powi(2);
        if variance <= 0.0 {
            return Vec::new();
        }
        let mut causes: Vec<(&Cause, f64)> = self
            .contributions
            .iter()
            .map(|contribution| {
                (
                    &contribution.cause,
                    contribution.effect[slot].powi(2) / variance,
                )
            })
            .filter(|(_, part)| *part > 0.0)
            .collect();
        causes.sort_by(|one, other| other.1.total_cmp(&one.1));
        causes.truncate(at_most);
        causes
    }

    /// The figure behind an axis; `None` when something is missing for it.
    pub(super) fn value_on(&self, axis: &Axis) -> Option<f64> {
        match measurand_of(axis) {
            Some(measurand) => self.figures.complete(measurand),
            // A flavour that no ingredient of the drink names is not in it.
            None => Some(slot_of(&self.flavours, axis).map_or(0.0, |slot| self.figures.of[slot])),
        }
    }

    /// What another drink is held to on an axis.
    pub fn aim_on(&self, axis: &Axis) -> Option<f64> {
        let known = self.value_on(axis)?;
        let mut aims = self.aims.iter();
        let aim = aims.find(|(aimed, _)| aimed == axis);
        Some(aim.map_or(known, |(_, value)| *value))
    }

    /// The value on an axis.
    pub fn axis(&self, axis: &Axis) -> Option<&AxisValue> {
        self.axes.iter().find(|value| value.axis == *axis)
    }

    /// The sum of what the lines bring through a lens, as far as it is known, and of how large it is without signs.
    pub fn total_through(&self, lens: Lens) -> (f64, f64) {
        let shares = self.lines.iter().filter_map(|line| line.through(lens));
        shares.fold((0.0, 0.0), |(sum, size), share| {
            (sum + share, size + share.abs())
        })
    }

    /// What a drink has through a lens beside what its lines bring: the heat of cup and shaker, the price of what it is handed
    /// over in. `None` where everything is of the lines.
    pub fn rest_through(&self, lens: Lens) -> Option<f64> {
        match lens {
            Lens::Heat => Some(self.heat_of_vessels),
            Lens::Cost => {
                let (lines, _) = self.total_through(Lens::Cost);
                Some(self.figures.of[Measurand::Cost.slot()] - lines)
            }
            _ => None,
        }
    }

    /// The whole that the shares through a lens are parts of, the rest among them. Heat comes and goes: what is brought, or
    /// what is taken where that is more.
    pub fn whole_through(&self, lens: Lens) -> f64 {
        let lines = self.lines.iter().filter_map(|line| line.through(lens));
        let (brought, taken) = lines.chain(self.rest_through(lens)).fold(
            (0.0, 0.0),
            |(brought, taken): (f64, f64), share| {
                (brought + share.max(0.0), taken - share.min(0.0))
            },
        );
        brought.max(taken)
    }
}

fn reason(measurand: Measurand, iced: bool) -> NoFigure {
    match measurand {
        Measurand::MinutesToDrinkable if iced => NoFigure::WarmerOnly,
        Measurand::MinutesToDrinkable => NoFigure::CupOrWarmRoom,
        Measurand::Fill => NoFigure::Cup,
        Measurand::Cost => NoFigure::Price,
        Measurand::Dilution => NoFigure::OnlyWater,
        _ => NoFigure::Empty,
    }
}

/// The balance of a version; `None` when there is no such version.
pub fn balance_version(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
) -> Option<Balance> {
    if let Some(id) = version {
        recipe.version(id)?;
    }
    let (resolved, findings) = resolve(recipe, version);
    let balance = balance_resolved(book, recipe, version, resolved, findings);
    let standard = recipe.standard_for(version);
    Some(Balance {
        tasted_at: standard.and_then(|standard| standard.tasted_at),
        ..balance
    })
}

/// The balance of what a version comes to, with what was found on the way.
pub(super) fn balance_resolved(
    book: &Book,
    recipe: &Recipe,
    version: Option<&VersionId>,
    resolved: Resolved,
    mut findings: Vec<Finding>,
) -> Balance {
    let place = match version {
        None => Place::Recipe(recipe.id.clone(), "lines"),
        Some(version) => Place::Version(recipe.id.clone(), version.clone()),
    };
    let mut balance = balance(book, resolved, &place);
    findings.append(&mut balance.findings);
    balance.findings = findings;
    balance
}

/// The balance of plain lines. `place` says where its findings belong.
pub fn balance(book: &Book, resolved: Resolved, place: &Place) -> Balance {
    let mut slots = Slots::default();
    let prepared = prepare(book, &resolved, &mut slots, place);
    let sums = sums(&prepared);
    let figures = evaluate(&sums, &prepared.setup);
    let contributions = contributions(&prepared);
    let served = figures.of[Measurand::ServingTemperature.slot()];
    let drink = WholeDrink {
        mixed: &pour(&sums, &prepared.setup).drink,
        volume: figures.of[Measurand::Volume.slot()],
        served,
    };
    let lines: Vec<LineShare> = prepared
        .lines
        .iter()
        .enumerate()
        .map(|(at, line)| line_share(&prepared, line, solved_count(&prepared, at), &drink))
        .collect();
    let mut findings = prepared.findings.clone();
    findings.extend(out_of_reach(&prepared, place));
    let unstated = unstated(&prepared, &lines);
    let claims = claims(book, &resolved);
    let facts = Facts {
        book,
        resolved: &resolved,
        figures: &figures,
        mixed: &sums.mixed,
        lines: &lines,
        unstated: &unstated,
        claims: &claims,
    };
    let cautions = cautions(&facts);
    let Claims {
        vegan,
        dairy_free,
        allergens,
        ..
    } = claims;
    let shaker = prepared
        .setup
        .shaker
        .map_or(0.0, |shaker| heat_of_wall(shaker, served));
    let mut balance = Balance {
        figures,
        contributions,
        flavours: slots.flavours,
        axes: Vec::new(),
        unstated,
        lines,
        heat_of_vessels: shaker + heat_of_wall(prepared.setup.cup, served),
        vegan,
        dairy_free,
        allergens,
        cautions,
        drinking_temperature: prepared.setup.drinking,
        iced: prepared.setup.iced,
        layers: layers(&prepared),
        capacity: prepared.setup.capacity,
        tasted_at: None,
        aims: Vec::new(),
        assumptions: assumptions(&prepared),
        findings,
        resolved,
    };
    balance.axes = axis_values(book, &balance);
    balance
}

/// An amount that fills and never gets there is not known.
fn out_of_reach(prepared: &Prepared, place: &Place) -> Option<Finding> {
    let at = prepared.lines.iter().position(|line| line.fill.is_some())?;
    let line = prepared.lines[at].id.clone();
    let place = match place {
        Place::Recipe(recipe, _) => Place::Line(recipe.clone(), None, line),
        Place::Version(recipe, version) => Place::Line(recipe.clone(), Some(version.clone()), line),
        other => other.clone(),
    };
    let is_solved = solved_count(prepared, at).is_some();
    (!is_solved).then(|| Finding::error(place, FindingKind::FillOutOfReach))
}

/// What is taken for granted of the ingredients that are in the drink.
fn assumptions(prepared: &Prepared) -> Vec<(IngredientId, Assumption)> {
    let is_there = |id: &LineId| {
        prepared
            .lines
            .iter()
            .any(|line| line.id == *id && (line.count > 0.0 || line.fill.is_some()))
    };
    let mut assumptions = Vec::new();
    for assumed in prepared
        .assumptions
        .iter()
        .filter(|assumed| is_there(&assumed.line))
    {
        let entry = (assumed.whose.clone(), assumed.assumption);
        if !assumptions.contains(&entry) {
            assumptions.push(entry);
        }
    }
    assumptions
}

/// The layers with the uncertainty that every cause brings to them.
fn layers(prepared: &Prepared) -> Option<Layers> {
    let [first_sip, stirred] = layers_when_off(prepared, None)?;
    let mut squares = [[0.0; MEASURANDS]; 2];
    for effects in effects_on_layers(prepared) {
        for (squares, effect) in squares.iter_mut().zip(&effects) {
            for (square, effect) in squares.iter_mut().zip(effect) {
                *square += effect.powi(2);
            }
        }
    }
    let layer = |figures, squares: [f64; MEASURANDS]| Layer {
        figures,
        u: squares.map(f64::sqrt),
    };
    Some(Layers {
        first_sip: layer(first_sip, squares[0]),
        stirred: layer(stirred, squares[1]),
    })
}

fn contributions(prepared: &Prepared) -> Vec<Contribution> {
    let causes = prepared.causes.iter().cloned();
    causes
        .zip(effects(prepared))
        .map(|(cause, effect)| Contribution { cause, effect })
        .collect()
}

fn axis_values(book: &Book, balance: &Balance) -> Vec<AxisValue> {
    axes_of(&balance.flavours)
        .into_iter()
        .map(|axis| {
            let value = balance.value_on(&axis);
            let (step, weight) = noticeable_step(&book.settings, &axis, value.unwrap_or(0.0));
            let slot = slot_of(&balance.flavours, &axis);
            let u = value.and(slot).map(|slot| balance.uncertainty(slot));
            AxisValue {
                axis,
                value,
                u,
                step,
                weight,
            }
        })
        .collect()
}
