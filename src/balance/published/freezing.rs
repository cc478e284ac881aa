//! The freezing point of a drink from what is dissolved in its water.
//!
//! `t_f = −K_f · Σ νᵢ·nᵢ / m_water`: the law of dilute solutions, with the cryoscopic constant `K_f` of water, `n` moles of each solute
//! and `ν` particles from each molecule.

use crate::balance::number::Number;

/// Cryoscopic constant of water, K·kg/mol.
///
/// CRC Handbook of Chemistry and Physics (value from memory). Exact at infinite dilution. Valid to about 1 mol/kg: the true freezing point of
/// sucrose solutions is 0.03 K lower at 10 % by mass, 0.1 K at 20 %, 0.3 K at 30 %.
pub const CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL: f64 = 1.86;

/// No answer goes below this, °C: about where a sucrose solution freezes as a whole (eutectic, value from memory).
///
/// The dilute law has no bottom, and a drink that is nearly all syrup would otherwise be asked to cool to any temperature.
pub const LOWEST_FREEZING_POINT_CELSIUS: f64 = -14.0;

/// What lowers the freezing point when it is dissolved.
///
/// Molar masses are sums of the standard atomic weights. A sugar whose kind is not known is best taken as glucose, which lowers
/// the freezing point most, or as sucrose, which lowers it least; proteins and starches are too large to count.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Solute {
    /// Sucrose.
    Sucrose,
    /// Glucose, counted without water of crystallisation.
    Glucose,
    /// Fructose.
    Fructose,
    /// Galactose.
    Galactose,
    /// Lactose, counted without water of crystallisation.
    Lactose,
    /// Maltose, counted without water of crystallisation.
    Maltose,
    /// Erythritol.
    Erythritol,
    /// Xylitol.
    Xylitol,
    /// Sorbitol or mannitol; also stands for a polyol whose kind is not known (assumed).
    Sorbitol,
    /// Maltitol.
    Maltitol,
    /// Citric acid, taken as undissociated: in a drink of pH 3 fewer than one molecule in two loses an ion.
    CitricAcid,
    /// Salt (sodium chloride), which falls apart into two ions.
    Salt,
}

impl Solute {
    /// Every solute.
    pub const ALL: [Self; 12] = [
        Self::Sucrose,
        Self::Glucose,
        Self::Fructose,
        Self::Galactose,
        Self::Lactose,
        Self::Maltose,
        Self::Erythritol,
        Self::Xylitol,
        Self::Sorbitol,
        Self::Maltitol,
        Self::CitricAcid,
        Self::Salt,
    ];

    /// Molar mass, g/mol.
    pub const fn molar_mass_g_per_mol(self) -> f64 {
        match self {
            Self::Sucrose | Self::Lactose | Self::Maltose => 342.30,
            Self::Glucose | Self::Fructose | Self::Galactose => 180.16,
            Self::Erythritol => 122.12,
            Self::Xylitol => 152.15,
            Self::Sorbitol => 182.17,
            Self::Maltitol => 344.31,
            Self::CitricAcid => 192.12,
            Self::Salt => 58.44,
        }
    }

    /// Particles of so many grams, mmol.
    pub fn particles_mmol(self, grams: f64) -> f64 {
        1000.0 * self.particles() * grams / self.molar_mass_g_per_mol()
    }

    /// Particles that one molecule becomes in water.
    pub const fn particles(self) -> f64 {
        match self {
            Self::Salt => 2.0,
            _ => 1.0,
        }
    }
}

/// Freezing point, °C, of `water_g` grams of water with these grams of each solute; `None` without water.
///
/// Never above 0 and never below [`LOWEST_FREEZING_POINT_CELSIUS`]. A negative amount counts as nothing dissolved.
pub fn freezing_point_celsius(solutes_g: &[(Solute, f64)], water_g: f64) -> Option<f64> {
    if !(water_g > 0.0 && water_g.is_finite()) {
        return None;
    }
    let particles_mmol: f64 = solutes_g
        .iter()
        .filter(|(_, grams)| *grams > 0.0)
        .map(|(solute, grams)| solute.particles_mmol(*grams))
        .sum();
    Some(freezing_point_of_particles(particles_mmol, water_g))
}

/// Freezing point, °C, of so many millimoles of dissolved particles in so many grams of water.
///
/// Never above 0 and never below [`LOWEST_FREEZING_POINT_CELSIUS`], where a drop of water among many particles ends.
pub fn freezing_point_of_particles<N: Number>(particles_mmol: N, water_g: N) -> N {
    if particles_mmol.value() <= 0.0 {
        return particles_mmol.bend_at_zero();
    }
    // Millimoles in a gram are moles in a kilogram.
    let lowering_kelvin =
        particles_mmol * CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL / water_g.max(N::from(1e-9));
    // Subtracted from zero, so that pure water freezes at 0 and not at −0.
    (N::ZERO - lowering_kelvin).max(N::from(LOWEST_FREEZING_POINT_CELSIUS))
}

/// Water that is left liquid, g, when so many millimoles of particles are cooled below their freezing point in more of it; none below
/// [`LOWEST_FREEZING_POINT_CELSIUS`].
pub fn liquid_water_g(particles_mmol: f64, t_celsius: f64) -> f64 {
    if t_celsius <= LOWEST_FREEZING_POINT_CELSIUS {
        return 0.0;
    }
    CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL * particles_mmol / (0.0 - t_celsius).max(1e-9)
}

/// Relative standard uncertainty of how far a freezing point is lowered.
///
/// What the law of dilute solutions leaves out: nothing in a thin drink, and 11 % in a solution of 30 % of sucrose, where the activity of
/// water by Norrish 1966 gives −2.62 °C (6 % for glucose and fructose; constants from memory). Read as the end of a rectangular
/// distribution from nothing.
pub const RELATIVE_UNCERTAINTY: f64 = 0.06;

/// What minerals that no label prints lower it by beside that, K: potassium and sodium of whole milk (132 and 43 mg in 88 g of water,
/// USDA SR28, NDB 01211; potassium from memory) with as many anions come to 0.22, read as the end of a rectangular distribution from
/// nothing.
pub const UNDECLARED_MINERALS_KELVIN: f64 = 0.13;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn pure_water_freezes_at_zero_and_no_water_has_no_freezing_point() {
        assert_eq!(freezing_point_celsius(&[], 250.0), Some(0.0));
        assert_eq!(
            freezing_point_celsius(&[(Solute::Sucrose, 10.0)], 0.0),
            None
        );
        assert_eq!(freezing_point_celsius(&[], f64::NAN), None);
    }

    #[test]
    fn a_drop_of_water_in_syrup_stops_at_the_eutectic() {
        let syrup = [(Solute::Sucrose, 500.0)];
        assert_eq!(
            freezing_point_celsius(&syrup, 1.0),
            Some(LOWEST_FREEZING_POINT_CELSIUS)
        );
    }
}
