//! From a prepared version to its figures. Nothing is allocated here: the search calls this for every candidate.

use super::measurand::{MEASURANDS, Measurand, flavour_figure};
use super::mix::{
    Component, FLAVOUR_SLOTS, HIGH_POTENCY_SLOTS, Mix, flavour_slot, high_potency_slot,
};
use super::physics::{Equilibrium, Wall, enthalpy, equilibrium, ice_volume, liquid_volume};
use super::prepare::{Fill, Prepared, PreparedLine, Scaling, Setup, SetupChange};
use super::published::{energy, sweetness};
use crate::book::{HighPotencySweetener, Stage};

/// Temperature to which concentrations and density refer, °C.
pub(super) const REFERENCE_CELSIUS: f64 = 20.0;

/// A fill amount is found when a step changes the volume by less than this, ml.
const FILL_TOLERANCE: f64 = 1e-6;

/// The figures of a drink as plain numbers.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figures {
    /// The values, by [`Measurand::slot`] and [`flavour_figure`]; the known part where something is missing.
    pub of: [f64; MEASURANDS],
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
pub struct Sums {
    /// What dissolves into the drink.
    pub mixed: Mix,
    /// What sits in the cup.
    pub toppings: Mix,
    /// What floats on top.
    pub on_top: Mix,
}

/// What comes out of pouring everything together.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Poured {
    /// The mixed drink in the cup; ice that stayed behind in the shaker is taken off.
    pub drink: Mix,
    /// Its temperature, with cup and toppings, and the ice left in it.
    pub served: Equilibrium,
    /// Grams of its ice that have melted.
    pub melted: f64,
}

/// The figures of a prepared version with the counts of its lines.
pub fn figures(prepared: &Prepared) -> Figures {
    figures_with(prepared, &|line, _| line.count)
}

/// The figures with other counts; `count` gives that of a line and its index.
pub fn figures_with(prepared: &Prepared, count: &impl Fn(&PreparedLine, usize) -> f64) -> Figures {
    let sums = solved_sums(prepared, &prepared.setup, count, None);
    evaluate(&sums, &prepared.setup)
}

/// The figures when one cause is off by `times` its standard uncertainty.
pub(super) fn figures_when_off(prepared: &Prepared, cause: usize, times: f64) -> Figures {
    let setup = changed_setup(&prepared.setup, &prepared.setup_changes, cause, times);
    let off = Off::One(cause, times);
    let sums = solved_sums(
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
    let sums = solved_sums(
        prepared,
        &setup,
        &|line: &PreparedLine, _| line.count,
        Some(off),
    );
    evaluate(&sums, &setup)
}

/// The count of every line, amounts that fill included.
pub fn solved_count(prepared: &Prepared, line: usize) -> f64 {
    let count = |line: &PreparedLine, _: usize| line.count;
    match prepared.lines.iter().position(|line| line.fill.is_some()) {
        Some(filling) if filling == line => {
            fill_count(prepared, &prepared.setup, &count, None, filling)
        }
        _ => prepared.lines[line].count,
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
}

/// Which causes are off, and by how many standard uncertainties.
#[derive(Clone, Copy)]
enum Off<'times> {
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

fn changed_setup(
    setup: &Setup,
    changes: &[(usize, SetupChange)],
    cause: usize,
    times: f64,
) -> Setup {
    let mut setup = *setup;
    for (_, change) in changes.iter().filter(|(index, _)| *index == cause) {
        match *change {
            SetupChange::CupHeat(heat) => setup.cup.heat_capacity += heat * times,
            SetupChange::ShakerHeat(heat) => {
                if let Some(shaker) = &mut setup.shaker {
                    shaker.heat_capacity += heat * times;
                }
            }
            SetupChange::WallTemperature {
                cup,
                shaker,
                kelvin,
            } => {
                setup.cup.celsius += if cup { kelvin * times } else { 0.0 };
                if let (Some(wall), true) = (&mut setup.shaker, shaker) {
                    wall.celsius += kelvin * times;
                }
            }
            SetupChange::Sweetness(slot, u) => setup.sweetness[slot] += u * times,
            SetupChange::CoolingTime(relative) => setup.cooling_time_factor += relative * times,
        }
    }
    setup
}

fn solved_sums(
    prepared: &Prepared,
    setup: &Setup,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
) -> Sums {
    let filling = prepared.lines.iter().position(|line| line.fill.is_some());
    let filled = filling.map(|line| {
        let count = fill_count(prepared, setup, count, off, line);
        Filled {
            line,
            count,
            is_poured: true,
        }
    });
    sums_with(prepared, count, off, filled)
}

/// The count of the line that fills.
#[derive(Clone, Copy)]
struct Filled {
    line: usize,
    count: f64,
    /// Whether it has been poured; else the count is still being searched.
    is_poured: bool,
}

fn sums_with(
    prepared: &Prepared,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
    filled: Option<Filled>,
) -> Sums {
    let mut sums = Sums {
        mixed: Mix::EMPTY,
        toppings: Mix::EMPTY,
        on_top: Mix::EMPTY,
    };
    for (at, line) in prepared.lines.iter().enumerate() {
        let count = match filled {
            Some(filled) if filled.line == at => filled.count,
            // A second amount that fills has nothing left to take.
            _ if line.fill.is_some() => 0.0,
            _ => count(line, at),
        };
        let sum = match line.stage {
            Stage::Mixed => &mut sums.mixed,
            Stage::Topping => &mut sums.toppings,
            Stage::OnTop => &mut sums.on_top,
        };
        sum.add_times(&line.per_unit, count);
        if let Some(off) = off {
            // Who pours to a mark believes the mark: it is the eye that is off, not the search for it.
            let believes = filled.is_some_and(|filled| filled.line == at && !filled.is_poured);
            let felt = |scaling: Scaling| scaling != Scaling::Once || !believes;
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
    sums
}

/// How many units the amount that fills takes: volume grows with the count, so a secant search in a bracket finds it.
/// None when the other lines already fill the volume.
fn fill_count(
    prepared: &Prepared,
    setup: &Setup,
    count: &impl Fn(&PreparedLine, usize) -> f64,
    off: Option<Off<'_>>,
    filling: usize,
) -> f64 {
    let line = &prepared.lines[filling];
    let (Some(fill), true) = (line.fill, line.grams_per_unit > 0.0) else {
        return 0.0;
    };
    let target = match fill {
        Fill::Volume(millilitres) => millilitres,
        Fill::Rim => setup.capacity.unwrap_or(0.0) - setup.head_room,
    };
    let short = |units: f64| {
        let sums = sums_with(
            prepared,
            count,
            off,
            Some(Filled {
                line: filling,
                count: units,
                is_poured: false,
            }),
        );
        let poured = pour(&sums, setup);
        target
            - match fill {
                // Ice that is heaped up to a mark is a bed with gaps in it, as it is at the rim: to take its own volume for
                // liquid would ask for nearly twice the ice that the vessel takes. Where there is liquid enough to fill the
                // gaps, the liquid with the ice in it reaches the mark first. A liquid that is poured over ice goes into the
                // gaps, so for it only what the ice itself takes up counts.
                Fill::Volume(_) if is_ice(line) => {
                    drink_volume(&poured).max(ice_bed(&poured, setup))
                }
                Fill::Volume(_) => drink_volume(&poured),
                Fill::Rim => filled_volume(&sums, &poured, setup),
            }
    };
    let (mut low, mut at_low) = (0.0, short(0.0));
    if at_low <= 0.0 {
        return 0.0;
    }
    let mut high = target.max(1.0) / line.grams_per_unit * 1.3;
    let mut at_high = short(high);
    for _ in 0..60 {
        let secant = (low * at_high - high * at_low) / (at_high - at_low);
        let middle = f64::midpoint(low, high);
        // A secant that creeps along one end is pulled towards the middle.
        let next = if secant > low && secant < high {
            0.9 * secant + 0.1 * middle
        } else {
            middle
        };
        let at_next = short(next);
        if at_next.abs() < FILL_TOLERANCE || (high - low) * line.grams_per_unit < FILL_TOLERANCE {
            return next;
        }
        if at_next > 0.0 {
            (low, at_low) = (next, at_next);
        } else {
            (high, at_high) = (next, at_next);
        }
    }
    f64::midpoint(low, high)
}

/// Mixes, shakes, pours and serves: solves with the shaker, pours at that temperature (strained ice stays behind), and
/// solves with the cup and its toppings. What floats on top keeps its own temperature.
pub fn pour(sums: &Sums, setup: &Setup) -> Poured {
    let mut drink = sums.mixed;
    if let Some(shaker) = setup.shaker {
        let mixed = equilibrium(&drink, shaker);
        let ice = drink.get(Component::Ice);
        let (water, kept) = (
            ice - mixed.ice_left,
            if setup.strained { 0.0 } else { mixed.ice_left },
        );
        drink.set(Component::Water, drink.get(Component::Water) + water);
        drink.set(Component::Ice, kept);
        drink.set(
            Component::Mass,
            drink.get(Component::Mass) - (mixed.ice_left - kept),
        );
        drink.set(
            Component::Diluting,
            drink.get(Component::Diluting) - (mixed.ice_left - kept),
        );
        drink.set(Component::Heat, enthalpy(&drink, mixed.celsius));
    }
    // Toppings exchange heat with the drink but keep their own water and sugar.
    let mut in_cup = drink;
    in_cup += &sums.toppings;
    let served = equilibrium(&in_cup, setup.cup);
    let melted = drink.get(Component::Ice) - served.ice_left;
    Poured {
        drink,
        served,
        melted,
    }
}

/// Volume of the liquid and the ice that it carries, at the serving temperature, ml.
fn drink_volume(poured: &Poured) -> f64 {
    let Equilibrium { celsius, ice_left } = poured.served;
    liquid_volume(&poured.drink, poured.melted, celsius) + ice_volume(ice_left, celsius)
}

/// What the cup has to hold, ml: the drink, what sits in it and what floats on top, or the bed of ice as it was poured,
/// whichever reaches higher.
fn filled_volume(sums: &Sums, poured: &Poured, setup: &Setup) -> f64 {
    let celsius = poured.served.celsius;
    let toppings = liquid_volume(&sums.toppings, 0.0, celsius);
    let on_top = liquid_volume(
        &sums.on_top,
        sums.on_top.get(Component::Ice),
        REFERENCE_CELSIUS,
    );
    let level = drink_volume(poured) + toppings + on_top;
    level.max(ice_bed(poured, setup) + toppings)
}

/// Volume of the ice as it was poured, gaps included, ml.
fn ice_bed(poured: &Poured, setup: &Setup) -> f64 {
    poured.drink.get(Component::Ice) / setup.ice_bulk_density.max(0.05)
}

/// Whether a line is mostly ice.
fn is_ice(line: &PreparedLine) -> bool {
    line.per_unit.get(Component::Ice) > 0.5 * line.grams_per_unit
}

/// The figures of a sum.
pub(super) fn evaluate(sums: &Sums, setup: &Setup) -> Figures {
    let poured = pour(sums, setup);
    let mut whole = poured.drink;
    whole += &sums.toppings;
    whole += &sums.on_top;
    let mut figures = Figures {
        of: [0.0; MEASURANDS],
        unknown_mixed: poured.drink.unknown,
        unknown_whole: whole.unknown,
        not_given: 0,
    };
    let mut sheet = Sheet {
        figures: &mut figures,
    };
    sheet.amounts(&whole, setup);
    sheet.mixed_drink(&poured, setup);
    sheet.temperature_and_fill(sums, &poured, setup);
    figures
}

/// Where the figures are written.
struct Sheet<'figures> {
    figures: &'figures mut Figures,
}

impl Sheet<'_> {
    fn put(&mut self, measurand: Measurand, value: f64) {
        // An empty drink has no concentration; a figure is never NaN.
        if value.is_finite() {
            self.figures.of[measurand.slot()] = value;
        } else {
            self.not_given(measurand);
        }
    }

    fn not_given(&mut self, measurand: Measurand) {
        self.figures.not_given |= 1 << measurand.slot();
    }

    fn amounts(&mut self, whole: &Mix, setup: &Setup) {
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
        self.put(
            Measurand::EnergyKj,
            energy_of(whole, |factor| factor.kj_per_g),
        );
        self.put(
            Measurand::EnergyKcal,
            energy_of(whole, |factor| factor.kcal_per_g),
        );
        self.put(
            Measurand::Cost,
            whole.get(Component::Cost) + setup.serviceware_cost,
        );
        if !setup.serviceware_cost_known {
            self.figures.unknown_whole |= Component::Cost.bit();
        }
    }

    fn mixed_drink(&mut self, poured: &Poured, setup: &Setup) {
        let Poured {
            drink,
            served,
            melted,
        } = poured;
        let volume = liquid_volume(drink, *melted, REFERENCE_CELSIUS);
        let mass = drink.get(Component::Mass) - served.ice_left;
        let per_100_ml = |amount: f64| amount / volume * 100.0;
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
        for flavour in 0..FLAVOUR_SLOTS {
            let strength = per_100_ml(drink.of[flavour_slot(flavour)]);
            self.figures.of[flavour_figure(flavour)] =
                if strength.is_finite() { strength } else { 0.0 };
        }
    }

    fn temperature_and_fill(&mut self, sums: &Sums, poured: &Poured, setup: &Setup) {
        let celsius = poured.served.celsius;
        self.put(Measurand::ServingTemperature, celsius);
        self.put(Measurand::IceLeft, poured.served.ice_left);
        let minutes = || {
            setup
                .cooling?
                .minutes_between(celsius, setup.drinking, setup.room)
        };
        if setup.iced || celsius <= setup.drinking {
            self.put(Measurand::MinutesToDrinkable, 0.0);
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

/// Energy by the factors of Regulation (EU) 1169/2011, Annex XIV; polyols are part of carbohydrate and count by their own.
pub(super) fn energy_of(mix: &Mix, per_gram: impl Fn(&energy::EnergyFactor) -> f64) -> f64 {
    let polyols = mix.get(Component::Polyols);
    (mix.get(Component::Carbohydrate) - polyols) * per_gram(&energy::CARBOHYDRATE)
        + polyols * per_gram(&energy::POLYOLS)
        + mix.get(Component::Protein) * per_gram(&energy::PROTEIN)
        + mix.get(Component::Fat) * per_gram(&energy::FAT)
        + mix.get(Component::Fibre) * per_gram(&energy::FIBRE)
        + mix.get(Component::Acid) * per_gram(&energy::ORGANIC_ACID)
}

/// Energy of a mix, kJ.
pub(super) fn energy_kj(mix: &Mix) -> f64 {
    energy_of(mix, |factor| factor.kj_per_g)
}

/// Sucrose-equivalent concentration, g/100 ml: Σ cᵢ·RSᵢ(T) of the sugars, with high-potency sweeteners added as equivalent
/// concentrations.
pub(super) fn sweetness_of(drink: &Mix, volume: f64, setup: &Setup) -> f64 {
    let [glucose, fructose, lactose, maltose, other, polyol] = setup.sweetness;
    let equivalent = drink.get(Component::Sucrose)
        + drink.get(Component::Glucose) * glucose
        + drink.get(Component::Fructose) * fructose
        + drink.get(Component::Lactose) * lactose
        + drink.get(Component::Maltose) * maltose
        + drink.get(Component::OtherSugar) * other
        + drink.get(Component::Polyols) * polyol;
    let sugars = equivalent / volume * 100.0;
    let mut concentrations = [(HighPotencySweetener::Sucralose, 0.0); HIGH_POTENCY_SLOTS];
    for (slot, concentration) in concentrations.iter_mut().enumerate() {
        if let Some(sweetener) = setup.sweeteners[slot] {
            // mg in ml is g/l; the curves want mg/l.
            *concentration = (
                sweetener,
                drink.of[high_potency_slot(slot)] / volume * 1000.0,
            );
        }
    }
    sweetness::combined(sugars, &concentrations)
}

/// The heat that a line brings to the drink as it is served, kJ: negative when it cools.
pub(super) fn heat_brought(line: &PreparedLine, count: f64, served: f64) -> f64 {
    let mix = line.per_unit.times(count);
    let all_liquid = {
        let mut melted = mix;
        melted.set(
            Component::Water,
            mix.get(Component::Water) + mix.get(Component::Ice),
        );
        melted.set(Component::Ice, 0.0);
        enthalpy(&melted, served)
    };
    mix.get(Component::Heat) - all_liquid
}

/// The heat that a wall brings, kJ.
pub(super) fn heat_of_wall(wall: Wall, served: f64) -> f64 {
    wall.heat_capacity * (wall.celsius - served)
}
