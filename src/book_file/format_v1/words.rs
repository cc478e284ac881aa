//! The words of a file for the plain choices of the book.

use serde::Deserialize;

use crate::book;

/// Defines the words of a file for an enum of the book, and both directions; a variant that the book gains or loses does
/// not compile until it has a word here.
macro_rules! words {
    ($($name:ident { $($variant:ident),+ $(,)? })+) => {
        $(
            #[derive(Clone, Copy, Deserialize)]
            pub(crate) enum $name { $($variant),+ }

            impl $name {
                /// The word that stands in the file.
                pub(crate) fn word(value: book::$name) -> &'static str {
                    match value { $(book::$name::$variant => stringify!($variant)),+ }
                }
            }

            impl From<$name> for book::$name {
                fn from(word: $name) -> Self {
                    match word { $($name::$variant => Self::$variant),+ }
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
        Molluscs,
    }
    MeasureKind { Scoop, Pump, Spoon, Jug, IceScoop, Button }
    Filling { Levelled, Heaped }
    VesselKind { Cup, Shaker, Jug }
    ClosureKind { Open, Lid, Film }
    Role { Base, Flavour, Creamer, Sweetener, Tea, Water, Ice, Topping, Garnish }
    Stage { Mixed, Topping, OnTop, Steeped }
    State { Draft, OnTrial, Approved, Retired }
    Yardstick { SingaporeGrade, UkFrontOfPack, WhoFreeSugars, UkFreeSugars }
}
