//! What an ingredient plainly is, and what can be taken from that where its pack is silent.
//!
//! Packs print seven figures. Nobody prints that milk holds no tea, or sugar no caffeine: such a figure is taken from the kind of
//! the ingredient, is marked as an assumption, and carries a doubt that covers 19 of 20 published foods of its kind (a test
//! holds it against them). What the kind does not settle stays unknown. A word in the name or the statement of
//! ingredients that makes something likely ([`hints_of`]) always leaves it unknown.

use std::rc::Rc;

use crate::balance::assumption::{Because, Kind};
use crate::balance::statement::{Hints, NamedSweetener, hints_of};
use crate::book::{
    Allergen, Composition, Form, Ingredient, Nutrient, PolyolKind, Role, SugarProfile,
};
use crate::quantity::Uncertain;

/// What is known of an ingredient besides its figures.
pub(super) struct Nature {
    pub(super) kind: Kind,
    pub(super) hints: Rc<Hints>,
    has_statement: bool,
}

/// A part of the carbohydrate that sugars make up at least in what is sweet by its sugars (assumed).
const SWEET_BY_SUGARS: f64 = 0.3;

/// Carbohydrate of milk and cream at most, g per 100 g (whole milk has 5, condensed milk is no milk here).
const MOST_CARBOHYDRATE_OF_MILK: f64 = 8.0;

impl Nature {
    pub(super) fn of(item: &Ingredient) -> Self {
        Self {
            kind: kind_of(item),
            hints: hints_of(item),
            has_statement: !item.statement.trim().is_empty(),
        }
    }

    /// What a figure that nobody has stated is taken for, per 100 g; `None` when the kind does not settle it.
    pub(super) fn assumed(
        &self,
        nutrient: Nutrient,
        label: &Composition,
    ) -> Option<(Uncertain, Because)> {
        let hints = &self.hints;
        let is_likely = match nutrient {
            Nutrient::Caffeine => !(hints.caffeine.is_empty() && hints.tea.is_empty()),
            Nutrient::TeaSolids => !hints.tea.is_empty(),
            Nutrient::Acid => !hints.acid.is_empty() && self.kind != Kind::Milk,
            Nutrient::Polyols => !hints.polyols.is_empty(),
            _ => false,
        };
        if is_likely && self.kind != Kind::Water {
            return None;
        }
        let assume = |(value, u): (f64, f64), because| (Uncertain { value, u }, because);
        let named = self.has_statement && self.is_named_where_added(nutrient);
        if let Some(figure) = self.kind.figure(nutrient) {
            return Some(assume(figure, Because::Kind(self.kind)));
        }
        if named {
            return Some(assume((0.0, 0.1), Because::StatementNamesNone));
        }
        let sweet_by_sugars = nutrient == Nutrient::Polyols
            && self.kind != Kind::Sweetener
            && is_sweet_by_sugars(label);
        sweet_by_sugars.then(|| assume((0.0, 0.0), Because::Kind(self.kind)))
    }

    /// Whether a statement of ingredients would name what holds this, so that a silent one says that there is none.
    fn is_named_where_added(&self, nutrient: Nutrient) -> bool {
        match nutrient {
            Nutrient::Polyols => true,
            Nutrient::Acid => matches!(self.kind, Kind::FlavourSyrup | Kind::Juice),
            _ => false,
        }
    }

    /// Whether it may hold a high-potency sweetener that nobody has put in figures.
    ///
    /// Its statement names one that the composition does not hold; or it has no statement, is there to sweeten, and nothing that is
    /// stated does so.
    pub(super) fn hides_sweetener(&self, composition: &Composition) -> bool {
        let listed = |named: NamedSweetener| {
            let amounts = &composition.high_potency;
            amounts
                .iter()
                .any(|amount| named.kinds().contains(&amount.sweetener))
        };
        if self
            .hints
            .sweeteners
            .iter()
            .any(|(named, _)| !listed(*named))
        {
            return true;
        }
        !self.has_statement && self.kind == Kind::Sweetener && composition.high_potency.is_empty()
    }

    /// The polyol that it holds: the stated one, else the only one that its statement or name names.
    pub(super) fn polyol(&self, composition: &Composition) -> Option<PolyolKind> {
        let named = self.hints.polyol_kinds();
        composition.polyol.or_else(|| match named.len() {
            1 => named.first()?.kind(),
            _ => None,
        })
    }

    /// Moisture of a dry ingredient that states none, g per 100 g.
    ///
    /// Rectangular distributions up to the limits of standards and of the trade: milk powders from nothing to 5 (Codex 207-1999), cocoa,
    /// and other powders with it, from nothing to 7 (Codex 105-1981), tea from 3 as it is made to 8, where it spoils (trade), crystals of
    /// glucose to 10, with their water of crystallisation (Codex 212-1999, from memory). White sugar is below 0.1 and soft sugars are below
    /// 3 to 4.5 (the same); starch in pearls is between 6 and 15 (assumed; flour of cassava is below 13, Codex 176-1989, from memory).
    pub(super) fn moisture(&self, item: &Ingredient) -> Uncertain {
        let (value, u) = match (self.kind, item.form) {
            (Kind::Sugar | Kind::Sweetener, _)
                if item.composition.sugar_profile == Some(SugarProfile::Glucose) =>
            {
                (5.0, 2.9)
            }
            (Kind::Sugar | Kind::Sweetener, _) => (0.5, 0.5),
            (Kind::Creamer | Kind::Milk, _) => (2.5, 1.4),
            (Kind::Leaf | Kind::TeaPowder, _) => (5.0, 1.5),
            (Kind::Pieces, _) => (11.0, 4.0),
            _ => (3.5, 2.0),
        };
        Uncertain { value, u }
    }

    /// How the sugars divide where nobody says it, and how they would if that were off by its standard uncertainty:
    /// fractions of sucrose, glucose, fructose, lactose, maltose and others (assumed).
    pub(super) fn sugars(&self, item: &Ingredient) -> ([f64; 6], [f64; 6]) {
        if let Some(profile) = self.hints.sugars {
            let fractions = super::sugar_profile::profile_fractions(profile, 0.0);
            return (
                fractions,
                super::sugar_profile::profile_fractions(profile, 0.05),
            );
        }
        match self.kind {
            Kind::Water => (
                [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
                [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
            ),
            Kind::Milk => (
                [0.0, 0.0, 0.0, 1.0, 0.0, 0.0],
                [0.0, 0.0, 0.0, 1.0, 0.0, 0.0],
            ),
            // Most are glucose syrup solids, whose sugars are glucose and maltose; some are sugared or hold milk powder.
            Kind::Creamer if has_milk(item) => (
                [0.25, 0.15, 0.0, 0.4, 0.2, 0.0],
                [0.55, 0.15, 0.0, 0.1, 0.2, 0.0],
            ),
            Kind::Creamer => (
                [0.2, 0.35, 0.0, 0.0, 0.45, 0.0],
                [0.5, 0.25, 0.0, 0.0, 0.25, 0.0],
            ),
            Kind::Sugar if item.form == Form::Crystals => (
                [0.95, 0.03, 0.02, 0.0, 0.0, 0.0],
                [0.7, 0.15, 0.15, 0.0, 0.0, 0.0],
            ),
            Kind::Sugar | Kind::Sweetener | Kind::FlavourSyrup => (
                [0.7, 0.15, 0.15, 0.0, 0.0, 0.0],
                [0.3, 0.35, 0.35, 0.0, 0.0, 0.0],
            ),
            // Fruit: sucrose, glucose and fructose in about equal parts, differently from fruit to fruit.
            Kind::Juice | Kind::Pieces => (
                [0.3, 0.33, 0.37, 0.0, 0.0, 0.0],
                [0.05, 0.4, 0.55, 0.0, 0.0, 0.0],
            ),
            Kind::FlavourPowder | Kind::Paste => (
                [0.9, 0.05, 0.0, 0.05, 0.0, 0.0],
                [0.65, 0.2, 0.0, 0.15, 0.0, 0.0],
            ),
            Kind::BrewedTea | Kind::Leaf | Kind::TeaPowder => (
                [0.4, 0.3, 0.3, 0.0, 0.0, 0.0],
                [0.1, 0.4, 0.5, 0.0, 0.0, 0.0],
            ),
        }
    }

    /// The part of the sugars that counts as free where nobody says it, with its doubt; `None` where the kind does not
    /// settle it. Sugars of milk are not free; those that are added, and those of honey, syrup and juice, are
    /// (World Health Organization, Guideline: Sugars intake, 2015).
    pub(super) fn free_sugars(&self, item: &Ingredient) -> Option<Uncertain> {
        let exact = |value| Some(Uncertain { value, u: 0.0 });
        match self.kind {
            Kind::Milk => exact(0.0),
            Kind::Water | Kind::Sugar | Kind::Sweetener | Kind::FlavourSyrup => exact(1.0),
            Kind::Creamer if has_milk(item) => Some(Uncertain { value: 0.7, u: 0.2 }),
            Kind::Creamer | Kind::FlavourPowder | Kind::Juice => Some(Uncertain {
                value: 0.95,
                u: 0.1,
            }),
            Kind::BrewedTea | Kind::Leaf | Kind::TeaPowder | Kind::Paste | Kind::Pieces => None,
        }
    }
}

fn kind_of(item: &Ingredient) -> Kind {
    match (item.form, item.role) {
        (Form::Ice, _) | (_, Role::Water) => Kind::Water,
        (Form::Leaf, _) => Kind::Leaf,
        (Form::Liquid | Form::Foam, Role::Tea) => Kind::BrewedTea,
        (_, Role::Tea) => Kind::TeaPowder,
        (Form::Pieces, _) => Kind::Pieces,
        (_, Role::Sweetener) if !item.composition.flavours.is_empty() => match item.form {
            Form::Liquid => Kind::Juice,
            Form::Powder | Form::Crystals => Kind::FlavourPowder,
            _ => Kind::FlavourSyrup,
        },
        (_, Role::Sweetener) if is_sweet_by_sugars(&item.composition) => Kind::Sugar,
        (_, Role::Sweetener) => Kind::Sweetener,
        (Form::Liquid | Form::Foam, _) if is_milk(item) => Kind::Milk,
        (_, Role::Creamer) => Kind::Creamer,
        (Form::Syrup, _) => Kind::FlavourSyrup,
        (Form::Liquid | Form::Foam, _) => Kind::Juice,
        (Form::Paste, _) => Kind::Paste,
        (Form::Powder | Form::Crystals, _) => Kind::FlavourPowder,
    }
}

fn has_milk(item: &Ingredient) -> bool {
    item.allergens
        .as_ref()
        .is_some_and(|stated| stated.contains.contains(&Allergen::Milk))
        || item.composition.sugar_profile == Some(SugarProfile::Lactose)
}

/// Milk or cream: a liquid of the creamer's or the base's role that holds milk and no more carbohydrate than milk has.
fn is_milk(item: &Ingredient) -> bool {
    let carbohydrate = item
        .composition
        .get(Nutrient::Carbohydrate)
        .or_else(|| item.composition.get(Nutrient::Sugars));
    matches!(item.role, Role::Creamer | Role::Base | Role::Topping)
        && has_milk(item)
        && item.composition.flavours.is_empty()
        && carbohydrate.is_none_or(|figure| figure.value <= MOST_CARBOHYDRATE_OF_MILK)
}

/// Whether sugars (or, for a syrup that is given by its °Brix alone, what is soluble) make up much of the carbohydrate.
fn is_sweet_by_sugars(label: &Composition) -> bool {
    let value = |nutrient| label.get(nutrient).map(|figure| figure.value);
    let carbohydrate = value(Nutrient::Carbohydrate);
    match (value(Nutrient::Sugars), carbohydrate, value(Nutrient::Brix)) {
        (Some(sugars), carbohydrate, _) => {
            sugars > 0.0 && sugars >= SWEET_BY_SUGARS * carbohydrate.unwrap_or(sugars)
        }
        (None, None, Some(brix)) => brix > 0.0,
        (None, ..) => false,
    }
}

impl Kind {
    /// What every ingredient of this kind holds of something that packs do not print, per 100 g with its standard uncertainty;
    /// `None` where they differ too much to say.
    ///
    /// Milk: titratable acidity of some 0.15 % as lactic acid, 0.1 as citric (common practice, no source). Honey holds the most acid
    /// among sweeteners, some 0.3 % as citric (value from memory). Brewed tea: USDA SR28, NDB 14355, 14278, 14185.
    #[expect(
        clippy::match_same_arms,
        reason = "one row for each kind and figure, as in a table"
    )]
    fn figure(self, nutrient: Nutrient) -> Option<(f64, f64)> {
        use Nutrient as N;
        Some(match (self, nutrient) {
            (_, N::Energy | N::Brix | N::Water) => return None,
            (Self::Water, _) => (0.0, 0.0),
            (Self::Leaf, _) => return None,
            (Self::BrewedTea | Self::TeaPowder, N::TeaSolids | N::Caffeine) => return None,
            (_, N::TeaSolids | N::Caffeine) => (0.0, 0.0),
            (Self::Sugar, N::Fat | N::Fibre) => (0.0, 0.2),
            (Self::Sugar, N::Saturates) => (0.0, 0.05),
            (Self::Sugar, N::Protein) => (0.0, 0.2),
            (Self::Sugar, N::Salt) => (0.0, 0.08),
            (Self::Sugar, N::Acid) => (0.0, 0.15),
            (Self::Sugar, N::Polyols) => (0.0, 0.0),
            (Self::Sugar, N::Insoluble) => (0.0, 0.05),
            (Self::Sweetener, N::Fat | N::Protein) => (0.0, 0.2),
            (Self::Sweetener, N::Saturates | N::Insoluble) => (0.0, 0.05),
            (Self::Sweetener, N::Salt) => (0.0, 0.1),
            (Self::Sweetener, N::Acid) => (0.0, 0.15),
            (Self::Milk, N::Fibre | N::Polyols | N::Insoluble) => (0.0, 0.0),
            (Self::Milk, N::Acid) => (0.1, 0.03),
            (Self::Creamer, N::Polyols) => (0.0, 0.0),
            (Self::Creamer, N::Acid) => (0.0, 0.1),
            (Self::Creamer, N::Insoluble) => (0.0, 0.2),
            (Self::BrewedTea, N::Carbohydrate | N::Sugars) => (0.0, 0.05),
            (Self::BrewedTea, N::Protein) => (0.0, 0.12),
            (Self::BrewedTea, N::Fat | N::Saturates | N::Fibre) => (0.0, 0.01),
            (Self::BrewedTea, N::Polyols) => (0.0, 0.0),
            (Self::BrewedTea, N::Salt) => (0.0, 0.01),
            (Self::BrewedTea, N::Acid) => (0.0, 0.03),
            (Self::BrewedTea, N::Insoluble) => (0.0, 0.02),
            (Self::TeaPowder, N::Acid) => (0.0, 0.5),
            (Self::FlavourSyrup, N::Fat | N::Protein) => (0.0, 0.15),
            (Self::FlavourSyrup, N::Saturates) => (0.0, 0.05),
            (Self::FlavourSyrup, N::Fibre) => (0.0, 0.3),
            (Self::FlavourSyrup, N::Salt) => (0.0, 0.08),
            (Self::FlavourSyrup, N::Insoluble) => (0.0, 0.3),
            (Self::Juice, N::Insoluble) => (0.3, 0.3),
            (Self::Juice, N::Polyols) => (0.0, 0.4),
            (Self::FlavourPowder, N::Acid) => (0.0, 0.1),
            (Self::Paste, N::Acid) => (0.0, 0.2),
            (Self::Paste, N::Polyols) => (0.0, 0.0),
            (Self::Pieces, N::Acid) => (0.2, 0.3),
            (Self::Pieces, N::Polyols) => (0.0, 0.2),
            _ => return None,
        })
    }
}
