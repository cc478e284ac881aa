//! What holds for the whole shop.

use super::{
    Allergen, AllergenList, DoubtClass, EarlierStates, LanguageId, RescaledDoubt, Temperature,
    Translation,
};

/// One dimension of taste that is compared with the standard.
///
/// A flavour axis is named by the shop ("chestnut"); the others are fixed.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Axis {
    /// Sucrose-equivalent concentration, g/100 ml.
    Sweetness,
    /// Tea solids, g/100 ml.
    TeaStrength,
    /// A named flavour, house units per 100 ml.
    Flavour(String),
    /// Fat, g/100 ml.
    Creaminess,
    /// Organic acid as citric, g/100 ml.
    Acidity,
    /// Solids that are not sugars, g/100 ml.
    Body,
    /// Serving temperature, °C.
    Temperature,
    /// Volume of the mixed drink, ml.
    Volume,
}

impl Axis {
    /// The axes that every drink has, in the order in which they are shown; flavours come after sweetness and tea.
    pub const FIXED: [Self; 7] = [
        Self::Sweetness,
        Self::TeaStrength,
        Self::Creaminess,
        Self::Acidity,
        Self::Body,
        Self::Temperature,
        Self::Volume,
    ];

    /// Its key in reports; a flavour's own name.
    pub fn word(&self) -> &str {
        match self {
            Self::Sweetness => "sweetness",
            Self::TeaStrength => "tea strength",
            Self::Flavour(name) => name,
            Self::Creaminess => "creaminess",
            Self::Acidity => "acidity",
            Self::Body => "body",
            Self::Temperature => "temperature",
            Self::Volume => "volume",
        }
    }

    /// The unit of a value on this axis.
    pub fn unit(&self) -> &'static str {
        match self {
            Self::Sweetness | Self::TeaStrength | Self::Creaminess | Self::Acidity | Self::Body => {
                "g/100 ml"
            }
            Self::Flavour(_) => "house units/100 ml",
            Self::Temperature => "°C",
            Self::Volume => "ml",
        }
    }
}

/// A shop's own noticeable step for an axis, in place of the default.
#[derive(Clone, Debug, PartialEq)]
pub struct StepSetting {
    /// The axis.
    pub axis: Axis,
    /// Weber fraction of the standard's value (0.1 is 10 %).
    pub fraction: f64,
    /// The smallest step, in the unit of the axis.
    pub floor: f64,
    /// Weight of the axis in the distance; 1 by default.
    pub weight: f64,
}

/// A level as the shop names it: "half", "less ice".
#[derive(Clone, Debug, PartialEq)]
pub struct NamedLevel {
    /// What it is called at the counter.
    pub name: String,
    /// Part of what the drink usually has, percent.
    pub percent: f64,
}

/// A level of sugar or ice that a drink is made at.
#[derive(Clone, Debug, PartialEq)]
pub struct Level {
    /// What it is called.
    pub name: LevelName,
    /// Part of what the drink usually has, percent.
    pub percent: f64,
}

/// What a level is called.
#[derive(Clone, Debug, PartialEq)]
pub enum LevelName {
    /// By the shop.
    OfShop(String),
    /// By its percentage.
    Percent,
    /// A usual level of ice.
    Ice(UsualIce),
}

/// The levels of ice of a shop that names none (common practice, no source).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum UsualIce {
    /// More than half of it.
    Less,
    /// Less than half of it.
    Little,
    /// None.
    No,
}

impl UsualIce {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Less, Self::Little, Self::No];

    /// The key that it is found by.
    pub fn word(self) -> &'static str {
        match self {
            Self::Less => "less ice",
            Self::Little => "little ice",
            Self::No => "no ice",
        }
    }

    fn percent(self) -> f64 {
        match self {
            Self::Less => 60.0,
            Self::Little => 30.0,
            Self::No => 0.0,
        }
    }
}

impl From<&NamedLevel> for Level {
    fn from(named: &NamedLevel) -> Self {
        Self {
            name: LevelName::OfShop(named.name.clone()),
            percent: named.percent,
        }
    }
}

/// The serving temperatures that a shop wants for a kind of drink, in °C.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TemperatureWindow {
    /// Coolest.
    pub from: f64,
    /// Hottest.
    pub to: f64,
}

/// How well the shop measures, where it knows; what is usual at a counter is assumed otherwise.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Instruments {
    /// Steps of the display of the scale, g.
    pub scale_grams: Option<f64>,
    /// How far a stated temperature may be off, K.
    pub thermometer_kelvin: Option<f64>,
    /// How far a volume that is poured to a mark may be off, percent of it.
    pub jug_percent: Option<f64>,
}

/// That somebody of the shop has read the allergens and cautions in a language and found them right.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Confirmation {
    /// The language.
    pub language: LanguageId,
    /// Who.
    pub by: String,
    /// Day, `2026-05-04`.
    pub date: String,
}

/// A published yardstick that a shop may hold its drinks against.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Yardstick {
    /// The beverage grade of Singapore.
    SingaporeGrade,
    /// The front-of-pack bands of the United Kingdom, for drinks.
    UkFrontOfPack,
    /// The free-sugars guideline of the World Health Organization.
    WhoFreeSugars,
    /// The free-sugars recommendation of the United Kingdom.
    UkFreeSugars,
}

impl Yardstick {
    /// All of them, in the order in which they are shown.
    pub const ALL: [Self; 4] = [
        Self::SingaporeGrade,
        Self::UkFrontOfPack,
        Self::WhoFreeSugars,
        Self::UkFreeSugars,
    ];
}

/// What holds for the whole shop.
#[derive(Clone, Debug, PartialEq)]
pub struct Settings {
    /// Name of the shop.
    pub shop: String,
    /// A note on the book as a whole (where invented figures come from, say).
    pub note: String,
    /// Currency sign or code of every price.
    pub currency: String,
    /// Temperature of the room and of what stands in it.
    pub room_temperature: Temperature,
    /// Temperature of what comes from the refrigerator, °C.
    pub refrigerator_temperature: f64,
    /// Temperature of the ice as it goes into the cup, °C.
    pub ice_temperature: f64,
    /// Temperature at which a hot drink is tasted and compared, °C.
    pub hot_drinking_temperature: f64,
    /// Temperature at which an iced drink is tasted and compared, °C.
    pub iced_drinking_temperature: f64,
    /// Serving temperatures of hot drinks that the shop accepts.
    pub hot_window: TemperatureWindow,
    /// Serving temperatures of iced drinks that the shop accepts.
    pub iced_window: TemperatureWindow,
    /// Bulk density of the shop's ice as it lies in the cup, g/ml.
    pub ice_bulk_density: f64,
    /// Ice that melts in a drink while it stands, g a minute; an assumed rate when none is stated.
    pub ice_melt_rate: Option<f64>,
    /// Ice that a drink is to have left when it is handed over, as it lies, percent of the cup; a usual part when none is stated.
    pub ice_left: Option<f64>,
    /// Sales tax that is contained in the menu price, percent.
    pub sales_tax_percent: Option<f64>,
    /// How well the shop measures.
    pub instruments: Instruments,
    /// Doubts that were re-scaled from the record of readings.
    pub doubts: Vec<RescaledDoubt>,
    /// The shop's own noticeable steps.
    pub steps: Vec<StepSetting>,
    /// Yardsticks that the shop wants to see.
    pub yardsticks: Vec<Yardstick>,
    /// Levels of sugar that guests can ask for, as parts of the added sweetness; the usual ones when none is stated.
    pub sugar_levels: Vec<NamedLevel>,
    /// Levels of ice that guests can ask for; the usual ones when none is stated.
    pub ice_levels: Vec<NamedLevel>,
    /// What they were before, as far as a drink was approved with that.
    pub earlier: EarlierStates<Self>,
    /// The language that the book is written in; taken for English when none is stated.
    pub language: Option<LanguageId>,
    /// What words of the whole shop are in other languages: levels, flavours.
    pub translations: Vec<Translation>,
    /// In which languages the allergens and cautions of the program are confirmed.
    pub confirmations: Vec<Confirmation>,
    /// The lists of allergens that the shop names to its guests; that of the European Union when none is stated.
    pub allergen_lists: Vec<AllergenList>,
}

/// Ice that a shop leaves in the cup which does not say how much, percent of the cup (common practice, no source).
const USUAL_ICE_LEFT: f64 = 40.0;

impl Settings {
    /// Ice that a drink is to have left in a cup that holds so many millilitres, g.
    pub fn ice_left_in(&self, capacity: f64) -> f64 {
        let percent = self.ice_left.unwrap_or(USUAL_ICE_LEFT);
        percent / 100.0 * capacity * self.ice_bulk_density
    }

    /// What the doubts of a class are multiplied with: what was accepted last, else 1.
    pub fn doubt_times(&self, class: DoubtClass) -> f64 {
        let accepted = self.doubts.iter().rev().find(|one| one.class == class);
        accepted.map_or(1.0, |one| one.times)
    }

    /// The same settings with the doubts of a class re-scaled, or as they are without a record.
    #[must_use]
    pub fn rescaled(&self, class: DoubtClass, by: Option<RescaledDoubt>) -> Self {
        let mut settings = self.clone();
        settings.doubts.retain(|known| known.class != class);
        settings.doubts.extend(by);
        settings
    }

    /// The lists of allergens that the shop goes by.
    pub fn allergen_lists(&self) -> Vec<AllergenList> {
        if self.allergen_lists.is_empty() {
            return vec![AllergenList::EuropeanUnion];
        }
        let all = AllergenList::ALL.into_iter();
        all.filter(|list| self.allergen_lists.contains(list))
            .collect()
    }

    /// What these lists name, each once.
    pub fn listed_allergens(&self) -> Vec<Allergen> {
        let lists = self.allergen_lists();
        let is_listed =
            |allergen: &Allergen| lists.iter().any(|list| list.items().contains(allergen));
        Allergen::ALL.into_iter().filter(is_listed).collect()
    }

    /// What they name beyond the annex, of which a pack says nothing unless somebody has asked.
    pub fn further_allergens(&self) -> impl Iterator<Item = Allergen> + use<> {
        let listed = self.listed_allergens().into_iter();
        listed.filter(|allergen| !allergen.is_in_annex())
    }

    /// Who has confirmed the allergens and cautions in the language of a code.
    pub fn confirmation_in(&self, code: &str) -> Option<&Confirmation> {
        let mut confirmations = self.confirmations.iter();
        confirmations.find(|known| known.language.is(code) && !known.by.trim().is_empty())
    }

    /// The same settings with the allergens and cautions in a language confirmed, or no longer.
    #[must_use]
    pub fn confirmed(&self, language: &LanguageId, by: Option<Confirmation>) -> Self {
        let mut settings = self.clone();
        settings
            .confirmations
            .retain(|known| known.language != *language);
        settings.confirmations.extend(by);
        settings
    }

    /// The levels of sugar that the shop names, else five usual ones (common practice, no source).
    pub fn sugar_levels(&self) -> Vec<Level> {
        let usual = [100.0, 75.0, 50.0, 25.0, 0.0].map(|percent| Level {
            name: LevelName::Percent,
            percent,
        });
        named_or(&self.sugar_levels, usual)
    }

    /// The levels of ice that the shop names, else the usual ones.
    pub fn ice_levels(&self) -> Vec<Level> {
        let usual = UsualIce::ALL.map(|usual| Level {
            name: LevelName::Ice(usual),
            percent: usual.percent(),
        });
        named_or(&self.ice_levels, usual)
    }
}

fn named_or<const N: usize>(named: &[NamedLevel], usual: [Level; N]) -> Vec<Level> {
    if named.is_empty() {
        usual.into()
    } else {
        named.iter().map(Level::from).collect()
    }
}

impl Default for Settings {
    /// Common practice, no source, except the drinking temperature of hot drinks: 57.8 °C is the optimum between scald
    /// hazard and preference of Brown & Diller, Burns 2008;34:648–654. Bulk density of ice 0.55 g/ml is assumed.
    fn default() -> Self {
        Self {
            shop: String::new(),
            note: String::new(),
            currency: "€".to_owned(),
            room_temperature: Temperature::at(22.0),
            refrigerator_temperature: 5.0,
            ice_temperature: -5.0,
            hot_drinking_temperature: 57.8,
            iced_drinking_temperature: 5.0,
            hot_window: TemperatureWindow {
                from: 50.0,
                to: 65.0,
            },
            iced_window: TemperatureWindow {
                from: -2.0,
                to: 12.0,
            },
            ice_bulk_density: 0.55,
            ice_melt_rate: None,
            ice_left: None,
            sales_tax_percent: None,
            instruments: Instruments::default(),
            doubts: Vec::new(),
            steps: Vec::new(),
            yardsticks: Vec::new(),
            sugar_levels: Vec::new(),
            ice_levels: Vec::new(),
            earlier: EarlierStates::default(),
            language: None,
            translations: Vec::new(),
            confirmations: Vec::new(),
            allergen_lists: Vec::new(),
        }
    }
}
