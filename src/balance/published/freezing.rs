//! The freezing point of a drink from what is dissolved in its water.
//!
//! `t_f = −K_f · Σ νᵢ·nᵢ / m_water`: the law of dilute solutions, with the cryoscopic constant `K_f` of water, `n` moles of each solute
//! and `ν` particles from each molecule.

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
    let particles_mol: f64 = solutes_g
        .iter()
        .filter(|(_, grams)| *grams > 0.0)
        .map(|(solute, grams)| solute.particles() * grams / solute.molar_mass_g_per_mol())
        .sum();
    let molality_mol_per_kg = particles_mol / (water_g / 1000.0);
    let lowering_kelvin = CRYOSCOPIC_CONSTANT_KELVIN_KG_PER_MOL * molality_mol_per_kg;
    // Subtracted from zero, so that pure water freezes at 0 and not at −0.
    Some((0.0 - lowering_kelvin).max(LOWEST_FREEZING_POINT_CELSIUS))
}

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
