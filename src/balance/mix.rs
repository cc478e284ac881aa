//! The sum of a drink: component masses, heat and cost that add up line by line.
//!
//! This is the one place where lines are added up. Every figure is a function of such a sum.

use std::ops::AddAssign;

use super::number::Number;

/// How many named flavours one drink carries.
pub const FLAVOUR_SLOTS: usize = 8;

/// How many high-potency sweeteners one drink carries.
pub const HIGH_POTENCY_SLOTS: usize = 4;

const NAMED: usize = 32;

/// Number of components in a [`Mix`].
pub const COMPONENTS: usize = NAMED + FLAVOUR_SLOTS + HIGH_POTENCY_SLOTS;

/// What a [`Mix`] counts.
///
/// Some are parts of others (sugars of carbohydrate, sucrose of sugars, saturates of fat): they are counted beside them,
/// so that an unknown part does not hide a known whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[repr(u8)]
pub enum Component {
    /// Everything, g; ice included.
    Mass,
    /// Liquid water, g.
    Water,
    /// Ice as it went in, g.
    Ice,
    /// Sugars, g.
    Sugars,
    /// Sucrose, g.
    Sucrose,
    /// Glucose, g.
    Glucose,
    /// Fructose, g.
    Fructose,
    /// Lactose, g.
    Lactose,
    /// Maltose, g.
    Maltose,
    /// Other sugars, g.
    OtherSugar,
    /// Sugars that are added or come from honey, syrup or juice, g.
    FreeSugars,
    /// Carbohydrate without fibre, g; sugars and polyols are part of it.
    Carbohydrate,
    /// Polyols, g.
    Polyols,
    /// Fibre, g.
    Fibre,
    /// Protein, g.
    Protein,
    /// Fat, g.
    Fat,
    /// Saturates, g.
    Saturates,
    /// Salt, g.
    Salt,
    /// Organic acid as citric, g.
    Acid,
    /// Tea solids, g.
    TeaSolids,
    /// Solids that do not dissolve, g.
    Insoluble,
    /// Caffeine, mg.
    Caffeine,
    /// Mass of the lines that dilute (water, tea, ice), g.
    Diluting,
    /// Cost, in the book's currency.
    Cost,
    /// Enthalpy against liquid water and dissolved solids at 0 °C, kJ.
    Heat,
    /// Energy, kJ.
    EnergyKj,
    /// Energy, kcal.
    EnergyKcal,
    /// Sucrose that would be as sweet as the polyols, g.
    PolyolSweetness,
    /// Sucrose by which it is sweeter than its sugars and polyols by tastings, g; below 0 where it is less sweet. Never incomplete.
    TastedSweetness,
    /// Dissolved particles that lower the freezing point, mmol.
    Particles,
    /// Air in a foam, ml.
    Air,
    /// High-potency sweeteners that are named and not put in figures, mg: always 0, and incomplete where there is one.
    HiddenSweetener,
}

impl Component {
    /// Every named component, in the order of the slots.
    pub const ALL: [Self; NAMED] = [
        Self::Mass,
        Self::Water,
        Self::Ice,
        Self::Sugars,
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::Lactose,
        Self::Maltose,
        Self::OtherSugar,
        Self::FreeSugars,
        Self::Carbohydrate,
        Self::Polyols,
        Self::Fibre,
        Self::Protein,
        Self::Fat,
        Self::Saturates,
        Self::Salt,
        Self::Acid,
        Self::TeaSolids,
        Self::Insoluble,
        Self::Caffeine,
        Self::Diluting,
        Self::Cost,
        Self::Heat,
        Self::EnergyKj,
        Self::EnergyKcal,
        Self::PolyolSweetness,
        Self::TastedSweetness,
        Self::Particles,
        Self::Air,
        Self::HiddenSweetener,
    ];

    /// The kinds that sugars divide into.
    pub const SUGAR_KINDS: [Self; 6] = [
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::Lactose,
        Self::Maltose,
        Self::OtherSugar,
    ];

    /// Its place in the vector.
    pub const fn slot(self) -> usize {
        self as usize
    }

    /// Its bit in the set of what is incomplete.
    pub const fn bit(self) -> u64 {
        1 << self.slot()
    }
}

/// Place of a flavour in the vector.
pub const fn flavour_slot(flavour: usize) -> usize {
    NAMED + flavour
}

/// Place of a high-potency sweetener in the vector, in mg.
pub const fn high_potency_slot(sweetener: usize) -> usize {
    NAMED + FLAVOUR_SLOTS + sweetener
}

/// Component masses per drink and, bit by bit, which of them are incomplete.
///
/// Mixes add: associative, commutative, with [`Mix::EMPTY`] as identity. `times(0.0)` is the identity, bits too.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mix<N = f64> {
    /// The amounts, in the units of [`Component`].
    pub of: [N; COMPONENTS],
    /// Bit `n` is set when `of[n]` is only the known part.
    pub unknown: u64,
}

impl Mix {
    /// A mix of which nothing is known.
    pub(super) const UNKNOWN: Self = Self {
        unknown: (1 << COMPONENTS) - 1,
        ..Self::EMPTY
    };
}

impl<N: Number> Mix<N> {
    /// Nothing.
    pub const EMPTY: Self = Self {
        of: [N::ZERO; COMPONENTS],
        unknown: 0,
    };

    /// The amount of a component (its known part).
    pub fn get(&self, component: Component) -> N {
        self.of[component.slot()]
    }

    /// The same with all of its ice as water.
    #[must_use]
    pub fn melted(&self) -> Self {
        let mut melted = *self;
        let water = self.get(Component::Water) + self.get(Component::Ice);
        melted.set(Component::Water, water);
        melted.set(Component::Ice, N::ZERO);
        melted
    }

    /// Sets the amount of a component.
    pub fn set(&mut self, component: Component, amount: N) {
        self.of[component.slot()] = amount;
    }

    /// Marks a component as incomplete.
    pub fn mark_unknown(&mut self, component: Component) {
        self.unknown |= component.bit();
    }

    /// Whether the amount of a component is complete.
    pub fn knows(&self, component: Component) -> bool {
        self.unknown & component.bit() == 0
    }

    /// So many of this mix; none at all is the identity.
    #[must_use]
    pub fn times(&self, count: f64) -> Self {
        if count == 0.0 {
            return Self::EMPTY;
        }
        let mut product = *self;
        for amount in &mut product.of {
            *amount = *amount * count;
        }
        product
    }

    /// Adds so many of another mix.
    pub fn add_times(&mut self, other: &Self, count: f64) {
        if count == 0.0 {
            return;
        }
        for (sum, amount) in self.of.iter_mut().zip(&other.of) {
            *sum += *amount * count;
        }
        self.unknown |= other.unknown;
    }

    /// The mix with plain amounts, as others that do not move.
    pub(in crate::balance) fn lifted(plain: &Mix) -> Self {
        Self {
            of: plain.of.map(N::from),
            unknown: plain.unknown,
        }
    }

    /// Puts plain amounts in place of its own, as others that do not move.
    pub(in crate::balance) fn put_plain(&mut self, plain: &Mix) {
        for (own, plain) in self.of.iter_mut().zip(&plain.of) {
            *own = N::from(*plain);
        }
        self.unknown = plain.unknown;
    }

    /// Adds so many of a mix of plain amounts, as many as that count comes to.
    pub(in crate::balance) fn add_plain(&mut self, plain: &Mix, count: N) {
        for (sum, amount) in self.of.iter_mut().zip(&plain.of) {
            *sum += count * *amount;
        }
        self.unknown |= plain.unknown;
    }

    /// Solids that are not stated by name: what is left of the mass when water, ice and every stated solid is taken off, g.
    pub fn undeclared_solids(&self) -> N {
        let named = [
            Component::Water,
            Component::Ice,
            Component::Carbohydrate,
            Component::Fibre,
            Component::Protein,
            Component::Fat,
            Component::Salt,
            Component::Acid,
            Component::TeaSolids,
        ];
        let stated = named
            .into_iter()
            .fold(N::ZERO, |sum, component| sum + self.get(component));
        (self.get(Component::Mass) - stated).max(N::ZERO)
    }

    /// Everything but water and ice, g.
    pub fn dry_matter(&self) -> N {
        self.get(Component::Mass) - self.get(Component::Water) - self.get(Component::Ice)
    }
}

impl<N: Number> AddAssign<&Self> for Mix<N> {
    fn add_assign(&mut self, other: &Self) {
        for (sum, amount) in self.of.iter_mut().zip(&other.of) {
            *sum += *amount;
        }
        self.unknown |= other.unknown;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mix(sugars: f64, unknown: u64) -> Mix {
        let mut mix: Mix = Mix {
            unknown,
            ..Mix::EMPTY
        };
        mix.set(Component::Sugars, sugars);
        mix
    }

    #[test]
    fn none_of_a_mix_is_the_identity_bits_too() {
        let powder = mix(58.0, Component::Fibre.bit());
        assert_eq!(powder.times(0.0), Mix::EMPTY);
        let mut sum = mix(1.0, 0);
        sum += &powder.times(0.0);
        assert_eq!(sum, mix(1.0, 0));
    }

    #[test]
    fn what_is_unknown_in_a_part_is_unknown_in_the_sum() {
        let mut sum = mix(1.0, Component::Acid.bit());
        sum += &mix(2.0, Component::Fibre.bit());
        assert!((sum.get(Component::Sugars) - 3.0).abs() < 1e-12);
        assert!(
            !sum.knows(Component::Acid)
                && !sum.knows(Component::Fibre)
                && sum.knows(Component::Sugars)
        );
    }

    #[test]
    fn every_component_has_its_own_bit() {
        assert_eq!(
            Component::ALL.map(Component::slot).to_vec(),
            (0..NAMED).collect::<Vec<_>>()
        );
        const { assert!(COMPONENTS <= 64) };
    }
}
