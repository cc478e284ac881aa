//! The words of a file for the plain choices of the book.

use serde::{Deserialize, Serialize};

use super::super::checker::Checker;
use super::stored::Stored;
use crate::book;

/// Defines the words of a file for an enum of the book, and both directions; a variant that the book gains or loses does
/// not compile until it has a word here.
macro_rules! words {
    ($($name:ident { $($variant:ident),+ $(,)? })+) => {
        $(
            #[derive(Clone, Copy, Deserialize, PartialEq, Serialize)]
            pub(crate) enum $name { $($variant),+ }

            impl Stored<book::$name> for $name {
                fn from_book(value: &book::$name) -> Self {
                    match value { $(book::$name::$variant => Self::$variant),+ }
                }

                fn into_book(self, _: &mut Checker<'_>) -> book::$name {
                    match self { $(Self::$variant => book::$name::$variant),+ }
                }
            }
        )+
    };
}

words! {
    Evidence { Label, SpecSheet, Measured, Published, Assumed }
    Form { Liquid, Syrup, Powder, Crystals, Paste, Leaf, Ice, Pieces, Foam }
    CarbohydrateKind { WithoutFibre, WithFibre }
    EnergyUnit { Kilojoules, Kilocalories }
    SaltUnit { Salt, SodiumMilligrams }
    PolyolKind { Erythritol, Xylitol, Sorbitol, Mannitol, Maltitol, Lactitol, Isomalt }
    HighPotencySweetener { Sucralose, Aspartame, AcesulfameK, RebaudiosideA, Stevioside, Saccharin }
    Allergen {
        Gluten, Crustaceans, Eggs, Fish, Peanuts, Soybeans, Milk, Nuts, Celery, Mustard, Sesame, Sulphites, Lupin,
        Molluscs, Buckwheat, Wheat, Mango, Peach, Tomato, Coconut, Walnuts, PineNuts, Mackerel, Crab, Shrimp, Squid,
        Shellfish, Pork, Chicken, Beef,
    }
    AllergenList { EuropeanUnion, Taiwan, China, HongKong, SouthKorea }
    MeasureKind { Scoop, Pump, Spoon, Jug, IceScoop, Button, Piece }
    Filling { Levelled, Heaped }
    VesselKind { Cup, Shaker, Jug }
    ClosureKind { Open, Lid, Film }
    Role { Base, Flavour, Creamer, Sweetener, Tea, Water, Ice, Topping, Garnish }
    Stage { Mixed, Topping, OnTop, Steeped }
    State { Draft, OnTrial, Approved, Retired }
    DoubtClass { Dose, Temperature, Composition, Sweetness, Flavour }
    CupQuantity { Temperature, Brix, Weight }
    Yardstick { SingaporeGrade, UkFrontOfPack, WhoFreeSugars, UkFreeSugars }
}
