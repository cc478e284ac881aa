//! The figures of a composition and what they rest on.

/// Where a figure comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Evidence {
    /// Printed on the pack.
    Label,
    /// From the maker's specification sheet.
    SpecSheet,
    /// Measured in the shop.
    Measured,
    /// From a published table.
    Published,
    /// Nobody has measured or printed it.
    Assumed,
}

impl Evidence {
    /// All kinds, the strongest first.
    pub const ALL: [Self; 5] = [
        Self::Measured,
        Self::SpecSheet,
        Self::Label,
        Self::Published,
        Self::Assumed,
    ];

    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Label => "label",
            Self::SpecSheet => "specification sheet",
            Self::Measured => "measured",
            Self::Published => "published table",
            Self::Assumed => "assumed",
        }
    }

    /// Relative standard uncertainty of a figure that states none (assumed).
    ///
    /// For a label this is the fifth by which the law lets most figures be off, as a rectangular distribution: 0.2/√3 = 0.115.
    /// [`super::Composition::standard_uncertainty`] knows the rule of each figure.
    pub fn usual_relative_uncertainty(self) -> f64 {
        match self {
            Self::Measured => 0.03,
            Self::SpecSheet => 0.05,
            Self::Label => 0.115,
            Self::Published => 0.10,
            Self::Assumed => 0.25,
        }
    }
}

/// A figure with its evidence and, where stated, its standard uncertainty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// The value; the unit goes with what it is a figure of.
    pub value: f64,
    /// Where it comes from.
    pub evidence: Evidence,
    /// Standard uncertainty in the unit of `value`; the usual one of the evidence when not stated.
    pub u: Option<f64>,
}

impl Figure {
    /// A figure that states no uncertainty of its own.
    pub fn new(value: f64, evidence: Evidence) -> Self {
        Self {
            value,
            evidence,
            u: None,
        }
    }

    /// Standard uncertainty: the stated one, else the usual one of the evidence.
    pub fn standard_uncertainty(&self) -> f64 {
        let usual = (self.value * self.evidence.usual_relative_uncertainty()).abs();
        self.u.unwrap_or(usual)
    }
}

/// A figure of a composition.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Nutrient {
    /// Energy as printed, kJ: counts where the other figures don't give it.
    Energy,
    /// Water, g.
    Water,
    /// Fat, g.
    Fat,
    /// Saturated fatty acids, g, part of fat.
    Saturates,
    /// Carbohydrate, g; whether fibre is part of it the composition says.
    Carbohydrate,
    /// Sugars (mono- and disaccharides), g, part of carbohydrate.
    Sugars,
    /// Polyols, g, part of carbohydrate.
    Polyols,
    /// Dietary fibre, g.
    Fibre,
    /// Protein, g.
    Protein,
    /// Salt (sodium × 2.5), g.
    Salt,
    /// Organic acid as citric acid, g.
    Acid,
    /// Solids extracted from tea leaf, g.
    TeaSolids,
    /// Solids that do not dissolve (cocoa, sesame, leaf), g; part of the others.
    Insoluble,
    /// Caffeine, mg.
    Caffeine,
    /// Soluble solids by refractometer, mass percent.
    Brix,
}

impl Nutrient {
    /// All of them, in the order of a label.
    pub const ALL: [Self; 15] = [
        Self::Energy,
        Self::Water,
        Self::Fat,
        Self::Saturates,
        Self::Carbohydrate,
        Self::Sugars,
        Self::Polyols,
        Self::Fibre,
        Self::Protein,
        Self::Salt,
        Self::Acid,
        Self::TeaSolids,
        Self::Insoluble,
        Self::Caffeine,
        Self::Brix,
    ];

    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Energy => "energy",
            Self::Water => "water",
            Self::Fat => "fat",
            Self::Saturates => "saturates",
            Self::Carbohydrate => "carbohydrate",
            Self::Sugars => "sugars",
            Self::Polyols => "polyols",
            Self::Fibre => "fibre",
            Self::Protein => "protein",
            Self::Salt => "salt",
            Self::Acid => "acid",
            Self::TeaSolids => "tea solids",
            Self::Insoluble => "insoluble solids",
            Self::Caffeine => "caffeine",
            Self::Brix => "°Brix",
        }
    }

    /// Whether it is a mass in grams, so that 100 g hold 100 of it at most.
    pub fn is_mass(self) -> bool {
        !matches!(self, Self::Energy | Self::Caffeine | Self::Brix)
    }

    /// The unit of the figure, per 100 g or per 100 ml.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Energy => "kJ",
            Self::Caffeine => "mg",
            Self::Brix => "%",
            _ => "g",
        }
    }
}
