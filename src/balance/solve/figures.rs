//! From a prepared version to its figures. Nothing is allocated here: the search calls this for every candidate.

use super::physics::{
    Equilibrium, Wall, enthalpy, equilibrium, ice_volume, liquid_volume, temperature_beside_ice,
};
use super::prepared::{Fill, Prepared, PreparedLine, Scaling, Setup, SetupChange};
use crate::balance::measurand::{MEASURANDS, Measurand, flavour_figure};
use crate::balance::mix::{
    Component, FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
use crate::balance::number::Number;
use crate::book::Stage;

/// Temperature to which concentrations and density refer, °C.
pub(in crate::balance) const REFERENCE_CELSIUS: f64 = 20.0;

/// A fill amount is found when a step changes the volume by less than this, ml.
const FILL_TOLERANCE: f64 = 1e-6;

/// How many times what it fills a fill amount may take, g per ml, before it counts as out of reach.
const MOST_PER_MILLILITRE: f64 = 1000.0;

/// Steps of the search after which every second one halves the bracket: a secant that creeps along a kink does not get there.
const SECANTS: u32 = 8;

/// The figures of a drink as plain numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figures<N = f64> {
    /// The values, by [`Measurand::slot`] and [`flavour_figure`]; the known part where something is missing.
    pub of: [N; MEASURANDS],
    /// Components that are incomplete in the mixed drink.
    pub unknown_mixed: u64,
    /// Components that are incomplete in the whole drink.
    pub unknown_whole: u64,
    /// Figures that can't be given at all, by slot, for a reason other than a missing component.
    pub not_given: u64,
}

impl Figures {
    /// The value or its known part; `None` when it can't be given.
    pub fn get(&self, measurand: Measurand) -> Option<f64> {
        let missing = self.missing(measurand) != 0 && !measurand.is_additive();
        let given = self.not_given & (1 << measurand.slot()) == 0;
        (given && !missing).then(|| self.of[measurand.slot()])
    }

    /// The value when nothing is missing.
    pub fn complete(&self, measurand: Measurand) -> Option<f64> {
        self.get(measurand).filter(|_| self.missing(measurand) == 0)
    }

    /// Components that are missing for a figure, as bits.
    pub fn missing(&self, measurand: Measurand) -> u64 {
        let unknown = if measurand.is_of_mixed_drink() {
            self.unknown_mixed
        } else {
            self.unknown_whole
        };
        unknown & measurand.needs()
    }
}

/// The sums of a drink, stage by stage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sums<N = f64> {
    /// What dissolves into the drink.
    pub mixed: Mix<N>,
    /// Loose ice that meets the drink in the cup: among toppings, or on top.
    pub cup_ice: Mix<N>,
    /// What sits in the cup.
    pub toppings: Mix<N>,
    /// What floats on top.
    pub on_top: Mix<N>,
    /// Loose ice of all of them, g: it lies as a bed with gaps, which frozen fruit and purée do not.
    pub loose_ice: N,
}

impl<N: Number> Sums<N> {
    /// Puts plain numbers in place of all of them, which do not move.
    pub(super) fn put_plain(&mut self, plain: &Sums) {
        self.mixed.put_plain(&plain.mixed);
        self.cup_ice.put_plain(&plain.cup_ice);
        self.toppings.put_plain(&plain.toppings);
        self.on_top.put_plain(&plain.on_top);
        self.loose_ice = N::from(plain.loose_ice);
    }

    /// The sums with plain numbers, as others that do not move.
    pub(super) fn lifted(plain: &Sums) -> Self {
        Self {
            mixed: Mix::lifted(&plain.mixed),
            cup_ice: Mix::lifted(&plain.cup_ice),
            toppings: Mix::lifted(&plain.toppings),
            on_top: Mix::lifted(&plain.on_top),
            loose_ice: N::from(plain.loose_ice),
        }
    }

    /// Everything together.
    pub fn whole(&self) -> Mix<N> {
        let mut whole = self.mixed;
        whole += &self.cup_ice;
        whole += &self.toppings;
        whole += &self.on_top;
        whole
    }
}

/// What comes out of pouring everything together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poured<N = f64> {
    /// The mixed drink in the cup, with the ice that it meets there; ice that stayed behind in the shaker is taken off.
    pub drink: Mix<N>,
    /// Its temperature, with cup and toppings, and the ice left in the drink itself.
    pub served: Equilibrium<N>,
    /// Grams of the drink's ice that have melted.
    pub melted: N,
    /// Ice left in toppings that were frozen, g: what melts of it stays in them.
    pub ice_in_toppings: N,
    /// Loose ice as it was put into the cup, g.
    pub loose_ice: N,
}

/// The figures of a prepared version with the counts of its lines.
pub fn figures(prepared: &Prepared) -> Figures {
    figures_with(prepared, &|line, _| line.count)
}

/// The figures with other counts; `count` gives that of a line and its index.
pub fn figures_with(prepared: &Prepared, count: &impl Fn(&PreparedLine, usize) -> f64) -> Figures {
    let (sums, _) = solved_sums(prepared, &prepared.setup, count, None);
    evaluate(&sums, &prepared.setup)
}

/// The figures of what floats on top tasted alone, as the first sip brings it, and of everything stirred together, when the air
/// of a foam has left it; `None` when nothing floats on top. One cause may be off by so many standard uncertainties.
pub(in crate::balance) fn layers_when_off(
    prepared: &Prepared,
    off: Option<(usize, f64)>,
) -> Option<[Figures; 2]> {
    let setup = off.map_or(prepared.setup, |(cause, times)| {
        changed_setup(&prepared.setup, &prepared.setup_changes, cause, times)
    });
    let off = off.map(|(cause, times)| Off::One(cause, times));
    let (sums, _) = solved_sums(prepared, &setup, &|line: &PreparedLine, _| line.count, off);
    layers_of(&sums, &setup)
}

/// The same from the sums of a drink.
pub(super) fn layers_of<N: Number>(sums: &Sums<N>, setup: &Setup<N>) -> Option<[Figures<N>; 2]> {
    if sums.on_top.get(Component::Mass).value() <= 0.0 && sums.on_top.unknown == 0 {
        return None;
    }
    let none = Mix::EMPTY;
    let alone = Sums {
        mixed: sums.on_top,
        cup_ice: none,
        toppings: none,
        on_top: none,
        loose_ice: N::ZERO,
    };
    let mut stirred = Sums {
        on_top: none,
        ..*sums
    };
    stirred.mixed += &sums.on_top;
    let apart = Setup {
        shaker: None,
        strained: false,
        cup: Wall::default(),
        ..*setup
    };
    Some([evaluate(&alone, &apart), evaluate(&stirred, setup)])
}

/// The figures when one cause is off by `times` its standard uncertainty.
pub(in crate::balance) fn figures_when_off(
    prepared: &Prepared,
    cause: usize,
    times: f64,
) -> Figures {
    let setup = changed_setup(&prepared.setup, &prepared.setup_changes, cause, times);
    let off = Off::One(cause, times);
    let (sums, _) = solved_sums(
        prepared,
        &setup,
        &|line: &PreparedLine, _| line.count,
        Some(off),
    );
    evaluate(&sums, &setup)
}

/// The figures when every cause is off at once, each by its multiple of its standard uncertainty; causes beyond the end of
/// `times` are not off. One draw of the propagation of distributions (JCGM 101:2008) is one call.
pub fn figures_when_all_off(prepared: &Prepared, times: &[f64]) -> Figures {
    let mut setup = prepared.setup;
    for (cause, times) in times.iter().enumerate() {
        setup = changed_setup(&setup, &prepared.setup_changes, cause, *times);
    }
    let off = Off::All(times);
    let (sums, _) = solved_sums(
        prepared,
        &setup,
        &|line: &PreparedLine, _| line.count,
        Some(off),
    );
    evaluate(&sums, &setup)
}

/// The count of every line, amounts that fill included; `None` where no amount fills as far as it should.
pub fn solved_count(prepared: &Prepared, line: usize) -> Option<f64> {
    let count = |line: &PreparedLine, _: usize| line.count;
    match prepared.lines.iter().position(|line| line.fill.is_some()) {
        Some(filling) if filling == line => {
            fill_count(prepared, &prepared.setup, &count, None, filling)
        }
        _ => Some(prepared.lines[line].count),
    }
}

/// The sums of the version, stage by stage.
pub fn sums(prepared: &Prepared) -> Sums {
    solved_sums(
        prepared,
        &prepared.setup,
        &|line: &PreparedLine, _| line.count,
        None,
    )
    .0
}

/// Which causes are off, and by how many standard uncertainties.
#[derive(Clone, Copy)]
pub(in crate::balance) enum Off<'times> {
    /// One of them.
    One(usize, f64),
    /// Each by its own multiple.
    All(&'times [f64]),
}

impl Off<'_> {
    fn times(self, cause: usize) -> f64 {
        match self {
            Self::One(one, times) if one == cause => times,
            Self::One(..) => 0.0,
            Self::All(times) => times.get(cause).copied().unwrap_or(0.0),
        }
    }
}

pub(super) fn changed_setup<N: Number>(
    setup: &Setup<N>,
    changes: &[(usize, SetupChange)],
    cause: usize,
    times: N,
) -> Setup<N> {
    let mut setup = *setup;
    for (_, change) in changes.iter().filter(|(index, _)| *index == cause) {
        match *change {
            SetupChange::CupHeat(heat) => setup.cup.heat_capacity += times * heat,
            SetupChange::ShakerHeat(heat) => {
                if let Some(shaker) = &mut setup.shaker {
                    shaker.heat_capacity += times * heat;
                }
            }
            SetupChange::WallTemperature {
                cup,
                shaker,
                kelvin,
            } => {
                if cup {
                    setup.cup.celsius += times * kelvin;
                }
                if let (Some(wall), true) = (&mut setup.shaker, shaker) {
                    wall.celsius += times * kelvin;
                }
            }
            SetupChange::Sweetness(slot, u) => setup.sweetness[slot] += times * u,
            SetupChange::CoolingTime(relative) => setup.cooling_time_factor += times * relative,
            SetupChange::Potency(slot, relative) => setup.potency[slot] += times * relative,
            SetupChange::Mixture(relative) => setup.mixture += times * relative,
            SetupChange::Freezing { relative, kelvin } => {
                setup.freezing.factor += times * relative;
                setup.freezing.kelvin += times * kelvin;
            }
            SetupChange::Unmelted(part) => setup.unmelted += times * part,
            SetupChange::HeatLost(part) => setup.heat_lost += times * part,
            SetupChange::Volume(relative) => setup.volume += times * relative,
        }
    }
    setup
}

/// The sums with the amount that fills, and whether there is one that does. Where none is, nobody knows how much of it goes in:
/// everything that it brings is marked as incomplete.
pub(in crate::balance) fn solved_sums(
    prepared: &Prepared,
    setup: &Setup,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
) -> (Sums, bool) {
    let Some(line) = prepared.lines.iter().position(|line| line.fill.is_some()) else {
        return (sums_with(prepared, count, off, None), true);
    };
    let solved = fill_count(prepared, setup, count, off, line);
    let filled = Filled {
        line,
        count: solved.unwrap_or(0.0),
        is_poured: true,
    };
    let mut sums = sums_with(prepared, count, off, Some(filled));
    if solved.is_none() {
        let per_unit = &prepared.lines[line].per_unit;
        let mut unknown = per_unit.unknown | Component::Mass.bit();
        for (slot, amount) in per_unit.of.iter().enumerate() {
            if *amount != 0.0 {
                unknown |= 1 << slot;
            }
        }
        sums.stage_of(&prepared.lines[line]).unknown |= unknown;
    }
    (sums, solved.is_some())
}

impl<N: Number> Sums<N> {
    /// Where a line belongs.
    pub(super) fn stage_of(&mut self, line: &PreparedLine) -> &mut Mix<N> {
        match line.stage {
            Stage::Mixed | Stage::Steeped => &mut self.mixed,
            Stage::Topping | Stage::OnTop if line.is_ice => &mut self.cup_ice,
            Stage::Topping => &mut self.toppings,
            Stage::OnTop => &mut self.on_top,
        }
    }
}

/// The count of the line that fills.
#[derive(Clone, Copy)]
pub(super) struct Filled {
    pub(super) line: usize,
    pub(super) count: f64,
    /// Whether it has been poured; else the count is still being searched.
    pub(super) is_poured: bool,
}

pub(super) fn sums_with(
    prepared: &Prepared,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
    filled: Option<Filled>,
) -> Sums {
    let mut sums = Sums {
        mixed: Mix::EMPTY,
        cup_ice: Mix::EMPTY,
        toppings: Mix::EMPTY,
        on_top: Mix::EMPTY,
        loose_ice: 0.0,
    };
    for (at, line) in prepared.lines.iter().enumerate() {
        let (count, is_poured) = match filled {
            Some(filled) if filled.line == at => (filled.count, filled.is_poured),
            // A second amount that fills has nothing left to take.
            _ if line.fill.is_some() => (0.0, true),
            _ => (count(line, at), true),
        };
        sums.add(line, count, off, is_poured);
    }
    sums
}

impl Sums {
    /// Adds so many units of a line; `is_poured` is whether the count has been found, where it is searched.
    fn add(&mut self, line: &PreparedLine, count: f64, off: Option<Off<'_>>, is_poured: bool) {
        if line.is_ice {
            self.loose_ice += line.per_unit.get(Component::Ice) * count;
        }
        let sum = self.stage_of(line);
        sum.add_times(&line.per_unit, count);
        let Some(off) = off else { return };
        // Who pours to a mark believes the mark: it is the eye that is off, not the search for it.
        let felt = |scaling: Scaling| scaling != Scaling::Once || is_poured;
        for sensitivity in line
            .sensitivities
            .iter()
            .filter(|sensitivity| felt(sensitivity.scaling))
        {
            let times = off.times(sensitivity.cause);
            sum.add_times(&sensitivity.change, sensitivity.scaling.of(count) * times);
        }
    }
}

/// How many units the amount that fills takes: volume grows with the count, nearly straight, so a secant search in a bracket finds it.
/// The bracket is widened until it holds the answer; `None` when nothing does. 0 when the other lines already fill the volume.
fn fill_count(
    prepared: &Prepared,
    setup: &Setup,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
    filling: usize,
) -> Option<f64> {
    let line = &prepared.lines[filling];
    let (Some(fill), true) = (line.fill, line.grams_per_unit > 0.0) else {
        return None;
    };
    let target = fill.mark(setup)?;
    let nothing_yet = Filled {
        line: filling,
        count: 0.0,
        is_poured: false,
    };
    let others = sums_with(prepared, count, off, Some(nothing_yet));
    let short = |units: f64| {
        let mut sums = others;
        sums.add(line, units, off, false);
        let poured = pour(&sums, setup);
        target - reached(&sums, &poured, setup, line, fill)
    };
    let (mut low, mut at_low) = (0.0, short(0.0));
    if at_low <= 0.0 {
        return Some(0.0);
    }
    // As if a gram took a millilitre, and a little more.
    let mut high = (at_low * 1.1).max(1.0) / line.grams_per_unit;
    let mut at_high = short(high);
    let most = target.max(1.0) * MOST_PER_MILLILITRE / line.grams_per_unit;
    while at_high > 0.0 {
        if high >= most {
            return None;
        }
        (low, at_low) = (high, at_high);
        high *= 2.0;
        at_high = short(high);
    }
    // The two counts tried last, and what was short with them.
    let (mut before, mut last) = ((low, at_low), (high, at_high));
    for step in 0..100 {
        let slope = (last.1 - before.1) / (last.0 - before.0);
        let secant = last.0 - last.1 / slope;
        let creeps = step > SECANTS && step % 2 == 0;
        let next = if secant > low && secant < high && !creeps {
            secant
        } else {
            f64::midpoint(low, high)
        };
        let at_next = short(next);
        if at_next.abs() < FILL_TOLERANCE || (high - low) * line.grams_per_unit < FILL_TOLERANCE {
            return Some(next);
        }
        if at_next > 0.0 {
            low = next;
        } else {
            high = next;
        }
        (before, last) = (last, (next, at_next));
    }
    Some(f64::midpoint(low, high))
}

/// How far a drink reaches towards the mark of an amount that fills, ml.
///
/// A volume is that of the mixed drink. Ice that is heaped up to a mark is a bed with gaps in it, as it is at the rim: to take its
/// own volume for liquid would ask for nearly twice the ice that the vessel takes. Where there is liquid enough to fill the gaps, the
/// liquid with the ice in it reaches the mark first. A liquid that is poured over ice goes into the gaps, so for it only what the ice
/// itself takes up counts. What sits in the cup or floats on top fills the cup, not the drink.
pub(super) fn reached<N: Number>(
    sums: &Sums<N>,
    poured: &Poured<N>,
    setup: &Setup<N>,
    line: &PreparedLine,
    fill: Fill,
) -> N {
    let is_ice = line.is_ice;
    match fill {
        Fill::Volume(_) if is_ice => drink_volume(poured, setup).max(ice_bed(poured, setup)),
        Fill::Volume(_) if matches!(line.stage, Stage::Topping | Stage::OnTop) => {
            filled_volume(sums, poured, setup)
        }
        Fill::Volume(_) => drink_volume(poured, setup),
        Fill::Rim => filled_volume(sums, poured, setup),
    }
}

/// Mixes, shakes, pours and serves: solves with the shaker, pours at that temperature (strained ice stays behind), and
/// solves with the cup, the ice that is in it and the toppings. What floats on top keeps its own temperature.
pub fn pour<N: Number>(sums: &Sums<N>, setup: &Setup<N>) -> Poured<N> {
    let mut drink = sums.mixed;
    let mut loose_ice = sums.loose_ice;
    if let Some(shaker) = setup.shaker {
        let mixed = equilibrium(&drink, shaker, setup.freezing);
        let ice = drink.get(Component::Ice);
        let (water, kept) = (
            ice - mixed.ice_left,
            if setup.strained {
                N::ZERO
            } else {
                mixed.ice_left
            },
        );
        drink.set(Component::Water, drink.get(Component::Water) + water);
        drink.set(Component::Ice, kept);
        let behind = mixed.ice_left - kept;
        drink.set(Component::Mass, drink.get(Component::Mass) - behind);
        drink.set(Component::Diluting, drink.get(Component::Diluting) - behind);
        drink.set(Component::Heat, enthalpy(&drink, mixed.celsius));
        let in_the_cup = sums.cup_ice.get(Component::Ice);
        loose_ice = (loose_ice - in_the_cup).min(kept).max(N::ZERO) + in_the_cup;
    }
    drink += &sums.cup_ice;
    // Toppings exchange heat with the drink but keep their own water and sugar.
    let mut in_cup = drink;
    in_cup += &sums.toppings;
    let mut served = equilibrium(&in_cup, setup.cup, setup.freezing);
    // What is frozen in toppings freezes lower than the drink and melts first.
    let ice = drink.get(Component::Ice);
    let bound = sums.toppings.get(Component::Ice);
    let ice_in_toppings = (served.ice_left - ice).min(bound).max(N::ZERO);
    served.ice_left = served.ice_left - ice_in_toppings;
    let mut melted = ice - served.ice_left;
    if melted.value() > 0.0 && setup.unmelted.value() == 0.0 {
        // It has melted as far as it does, which is where it begins to have melted less: a bend.
        let bend = setup.unmelted.bend_at_zero();
        melted += bend;
        served.ice_left += bend;
        served.celsius += bend;
    } else if melted.value() > 0.0 {
        melted = (melted * (-setup.unmelted + 1.0)).min(ice);
        served.ice_left = ice - melted;
        served.celsius =
            temperature_beside_ice(&in_cup, setup.cup, served.ice_left + ice_in_toppings);
    }
    served.celsius += setup.heat_lost * (-served.celsius + setup.room);
    Poured {
        drink,
        served,
        melted,
        ice_in_toppings,
        loose_ice,
    }
}

/// Volume of the liquid and the ice that it carries, at the serving temperature, ml.
fn drink_volume<N: Number>(poured: &Poured<N>, setup: &Setup<N>) -> N {
    let Equilibrium { celsius, ice_left } = poured.served;
    liquid_volume(&poured.drink, poured.melted, celsius) * setup.volume
        + ice_volume(ice_left, celsius)
}

/// What the cup has to hold, ml: the drink, what sits in it and what floats on top with its air, or the bed of ice as it was
/// poured, whichever reaches higher.
fn filled_volume<N: Number>(sums: &Sums<N>, poured: &Poured<N>, setup: &Setup<N>) -> N {
    let celsius = poured.served.celsius;
    let frozen = sums.toppings.get(Component::Ice);
    let toppings =
        liquid_volume(&sums.toppings, frozen, celsius) + sums.toppings.get(Component::Air);
    let on_top = liquid_volume(
        &sums.on_top,
        sums.on_top.get(Component::Ice),
        N::from(REFERENCE_CELSIUS),
    ) + sums.on_top.get(Component::Air);
    let level = drink_volume(poured, setup) + toppings + on_top;
    level.max(ice_bed(poured, setup) + toppings)
}

/// Volume of the loose ice as it was poured, gaps included, ml.
fn ice_bed<N: Number>(poured: &Poured<N>, setup: &Setup<N>) -> N {
    poured.loose_ice / setup.ice_bulk_density.max(0.05)
}

/// The figures of a sum.
pub(in crate::balance) fn evaluate<N: Number>(sums: &Sums<N>, setup: &Setup<N>) -> Figures<N> {
    let poured = pour(sums, setup);
    let mut whole = poured.drink;
    whole += &sums.toppings;
    whole += &sums.on_top;
    let mut figures = Figures {
        of: [N::ZERO; MEASURANDS],
        unknown_mixed: poured.drink.unknown,
        unknown_whole: whole.unknown,
        not_given: 0,
    };
    figures.amounts(&whole, setup);
    figures.mixed_drink(&poured, setup);
    figures.temperature_and_fill(sums, &poured, setup);
    figures
}

impl<N: Number> Figures<N> {
    fn put(&mut self, measurand: Measurand, value: N) {
        // An empty drink has no concentration; a figure is never NaN.
        if value.value().is_finite() {
            self.of[measurand.slot()] = value;
        } else {
            self.not_given(measurand);
        }
    }

    fn not_given(&mut self, measurand: Measurand) {
        self.not_given |= 1 << measurand.slot();
    }

    fn amounts(&mut self, whole: &Mix<N>, setup: &Setup<N>) {
        for (measurand, component) in [
            (Measurand::Mass, Component::Mass),
            (Measurand::TotalSugar, Component::Sugars),
            (Measurand::FreeSugars, Component::FreeSugars),
            (Measurand::Sucrose, Component::Sucrose),
            (Measurand::Glucose, Component::Glucose),
            (Measurand::Fructose, Component::Fructose),
            (Measurand::Lactose, Component::Lactose),
            (Measurand::Maltose, Component::Maltose),
            (Measurand::OtherSugar, Component::OtherSugar),
            (Measurand::Fat, Component::Fat),
            (Measurand::Saturates, Component::Saturates),
            (Measurand::Carbohydrate, Component::Carbohydrate),
            (Measurand::Polyols, Component::Polyols),
            (Measurand::Fibre, Component::Fibre),
            (Measurand::Protein, Component::Protein),
            (Measurand::Salt, Component::Salt),
            (Measurand::Caffeine, Component::Caffeine),
            (Measurand::TeaSolids, Component::TeaSolids),
            (Measurand::Acid, Component::Acid),
        ] {
            self.put(measurand, whole.get(component));
        }
        self.put(Measurand::DryMatter, whole.dry_matter());
        self.put(Measurand::EnergyKj, whole.get(Component::EnergyKj));
        self.put(Measurand::EnergyKcal, whole.get(Component::EnergyKcal));
        self.put(
            Measurand::Cost,
            whole.get(Component::Cost) + setup.serviceware_cost,
        );
        if !setup.serviceware_cost_known {
            self.unknown_whole |= Component::Cost.bit();
        }
    }

    fn mixed_drink(&mut self, poured: &Poured<N>, setup: &Setup<N>) {
        let Poured {
            drink,
            served,
            melted,
            ..
        } = poured;
        let reference = N::from(REFERENCE_CELSIUS);
        let volume = liquid_volume(drink, *melted, reference) * setup.volume;
        let mass = drink.get(Component::Mass) - served.ice_left;
        let per_100_ml = |amount: N| amount / volume * 100.0;
        self.put(Measurand::Volume, volume);
        self.put(Measurand::Density, mass / volume);
        let diluting = drink.get(Component::Diluting) - served.ice_left;
        self.put(Measurand::Dilution, diluting / (mass - diluting));
        let insoluble = drink.get(Component::Insoluble) + drink.get(Component::Fat);
        self.put(
            Measurand::Brix,
            (drink.dry_matter() - insoluble) / mass * 100.0,
        );
        self.put(Measurand::Sweetness, sweetness_of(drink, volume, setup));
        self.put(
            Measurand::TeaStrength,
            per_100_ml(drink.get(Component::TeaSolids)),
        );
        self.put(Measurand::Creaminess, per_100_ml(drink.get(Component::Fat)));
        self.put(Measurand::Acidity, per_100_ml(drink.get(Component::Acid)));
        self.put(
            Measurand::Body,
            per_100_ml(drink.dry_matter() - drink.get(Component::Sugars)),
        );
        for (measurand, component) in Measurand::PER_100_ML {
            self.put(measurand, per_100_ml(drink.get(component)));
        }
        for flavour in 0..FLAVOUR_SLOTS {
            let strength = per_100_ml(drink.of[flavour_slot(flavour)]);
            self.of[flavour_figure(flavour)] = if strength.value().is_finite() {
                strength
            } else {
                N::ZERO
            };
        }
    }

    fn temperature_and_fill(&mut self, sums: &Sums<N>, poured: &Poured<N>, setup: &Setup<N>) {
        let celsius = poured.served.celsius;
        self.put(Measurand::ServingTemperature, celsius);
        self.put(Measurand::IceLeft, poured.served.ice_left);
        let drinking = N::from(setup.drinking);
        let minutes = || {
            let curve = setup.cooling?;
            curve.minutes_between(celsius, setup.drinking, setup.room)
        };
        if celsius.value() <= setup.drinking {
            let bend = if setup.iced {
                N::ZERO
            } else {
                (celsius - drinking).bend_at_zero()
            };
            self.put(Measurand::MinutesToDrinkable, bend);
        } else if setup.iced {
            // It only gets warmer while it stands.
            self.not_given(Measurand::MinutesToDrinkable);
        } else if let Some(minutes) = minutes() {
            self.put(
                Measurand::MinutesToDrinkable,
                minutes * setup.cooling_time_factor,
            );
        } else {
            self.not_given(Measurand::MinutesToDrinkable);
        }
        match setup.capacity {
            Some(capacity) => {
                self.put(
                    Measurand::Fill,
                    filled_volume(sums, poured, setup) / capacity * 100.0,
                );
            }
            None => self.not_given(Measurand::Fill),
        }
    }
}

/// Sucrose-equivalent concentration, g/100 ml: Σ cᵢ·RSᵢ(T) of the sugars and polyols, and what high-potency sweeteners taste of
/// alone.
pub(in crate::balance) fn sweetness_of<N: Number>(
    drink: &Mix<N>,
    volume: N,
    setup: &Setup<N>,
) -> N {
    let [glucose, fructose, lactose, maltose, other] = setup.sweetness;
    let equivalent = drink.get(Component::Sucrose)
        + drink.get(Component::Glucose) * glucose
        + drink.get(Component::Fructose) * fructose
        + drink.get(Component::Lactose) * lactose
        + drink.get(Component::Maltose) * maltose
        + drink.get(Component::OtherSugar) * other
        + drink.get(Component::PolyolSweetness)
        + drink.get(Component::TastedSweetness);
    equivalent / volume * 100.0 + intense_sweetness(drink, volume, setup)
}

/// What the high-potency sweeteners of a drink taste of, g of sucrose in 100 ml.
fn intense_sweetness<N: Number>(drink: &Mix<N>, volume: N, setup: &Setup<N>) -> N {
    let (mut sum, mut kinds) = (N::ZERO, 0);
    for slot in 0..HIGH_POTENCY_SLOTS {
        let response = intense_response(drink, volume, setup, slot);
        sum += response;
        if response.value() > 0.0 {
            kinds += 1;
        }
    }
    if kinds > 1 { sum * setup.mixture } else { sum }
}

fn intense_response<N: Number>(drink: &Mix<N>, volume: N, setup: &Setup<N>, slot: usize) -> N {
    // mg in ml is g/l; the curves want mg/l.
    let concentration = drink.of[high_potency_slot(slot)] / volume * 1000.0;
    setup.sweeteners[slot].map_or(N::ZERO, |sweetener| {
        sweetener.response_percent(concentration) * setup.potency[slot]
    })
}

/// Grams of sucrose as sweet as the high-potency sweeteners of a line are in this drink: of each its part of what is in the drink.
pub(in crate::balance) fn intense_share(
    line: &Mix,
    drink: &Mix,
    volume: f64,
    setup: &Setup,
) -> f64 {
    (0..HIGH_POTENCY_SLOTS)
        .map(|slot| {
            let place = high_potency_slot(slot);
            let part = line.of[place] / drink.of[place].max(f64::MIN_POSITIVE);
            part * intense_response(drink, volume, setup, slot) * volume / 100.0
        })
        .sum()
}

/// The heat that a line brings to the drink as it is served, kJ: negative when it cools.
pub(in crate::balance) fn heat_brought(line: &PreparedLine, count: f64, served: f64) -> f64 {
    let mix = line.per_unit.times(count);
    mix.get(Component::Heat) - enthalpy(&mix.melted(), served)
}

/// The heat that a wall brings, kJ.
pub(in crate::balance) fn heat_of_wall(wall: Wall, served: f64) -> f64 {
    wall.heat_capacity * (wall.celsius - served)
}

/// The part of the cup that a drink fills; `None` when something in it has no known volume.
pub(in crate::balance) fn fill_of(figures: &Figures) -> Option<f64> {
    let percent = figures.complete(Measurand::Fill)?;
    (percent.is_finite() && percent > 0.0).then_some(percent / 100.0)
}
