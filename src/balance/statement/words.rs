//! What to look for in a statement of ingredients: words and E numbers, and what each of them is a sign of.
//!
//! Additives by their numbers as in Regulation (EC) 1333/2008, Annex II; the mentions that the law asks for from Regulation
//! (EU) 1169/2011, Annex III, and Regulation (EC) 1333/2008, Annex V (values from memory).

use super::StatementKind as Kind;
use crate::book::Allergen;

/// A word or several in a row, singular and in lower case, and what they are a sign of.
pub(super) struct Term {
    pub(super) words: &'static [&'static str],
    pub(super) kinds: &'static [Kind],
}

const fn term(words: &'static [&'static str], kinds: &'static [Kind]) -> Term {
    Term { words, kinds }
}

const MILK: &[Kind] = &[Kind::Allergen(Allergen::Milk)];
const EGG: &[Kind] = &[Kind::Allergen(Allergen::Eggs)];
const GLUTEN: &[Kind] = &[Kind::Allergen(Allergen::Gluten)];
const SOY: &[Kind] = &[Kind::Allergen(Allergen::Soybeans)];
const NUT: &[Kind] = &[Kind::Allergen(Allergen::Nuts)];
const PEANUT: &[Kind] = &[Kind::Allergen(Allergen::Peanuts)];
const SESAME: &[Kind] = &[Kind::Allergen(Allergen::Sesame)];
const FISH: &[Kind] = &[Kind::Allergen(Allergen::Fish)];
const CRUSTACEAN: &[Kind] = &[Kind::Allergen(Allergen::Crustaceans)];
const MOLLUSC: &[Kind] = &[Kind::Allergen(Allergen::Molluscs)];
const SULPHITE: &[Kind] = &[Kind::Allergen(Allergen::Sulphites)];
const ANIMAL: &[Kind] = &[Kind::Animal];
const PERHAPS_ANIMAL: &[Kind] = &[Kind::PerhapsAnimal];
const SWEETENER: &[Kind] = &[Kind::Sweetener];
const POLYOL: &[Kind] = &[Kind::Polyol, Kind::Sweetener];
const PHENYLALANINE: &[Kind] = &[Kind::Phenylalanine, Kind::Sweetener];
const AZO: &[Kind] = &[Kind::ChildrenColour];

/// The words.
pub(super) const TERMS: &[Term] = &[
    term(&["milk"], MILK),
    term(&["caseinate"], MILK),
    term(&["casein"], MILK),
    term(&["whey"], MILK),
    term(&["lactose"], MILK),
    term(&["lactalbumin"], MILK),
    term(&["lactoglobulin"], MILK),
    term(&["buttermilk"], MILK),
    term(&["butter"], MILK),
    term(&["butterfat"], MILK),
    term(&["ghee"], MILK),
    term(&["cream"], MILK),
    term(&["cheese"], MILK),
    term(&["yogurt"], MILK),
    term(&["yoghurt"], MILK),
    term(&["egg"], EGG),
    term(&["albumen"], EGG),
    term(&["wheat"], GLUTEN),
    term(&["rye"], GLUTEN),
    term(&["barley"], GLUTEN),
    term(&["oat"], GLUTEN),
    term(&["spelt"], GLUTEN),
    term(&["khorasan"], GLUTEN),
    term(&["malt"], GLUTEN),
    term(&["semolina"], GLUTEN),
    term(&["soy"], SOY),
    term(&["soya"], SOY),
    term(&["soybean"], SOY),
    term(&["soyabean"], SOY),
    term(&["almond"], NUT),
    term(&["hazelnut"], NUT),
    term(&["walnut"], NUT),
    term(&["cashew"], NUT),
    term(&["pecan"], NUT),
    term(&["brazil", "nut"], NUT),
    term(&["pistachio"], NUT),
    term(&["macadamia"], NUT),
    term(&["peanut"], PEANUT),
    term(&["groundnut"], PEANUT),
    term(&["sesame"], SESAME),
    term(&["tahini"], SESAME),
    term(&["fish"], FISH),
    term(&["anchovy"], FISH),
    term(&["isinglass"], FISH),
    term(&["crustacean"], CRUSTACEAN),
    term(&["shrimp"], CRUSTACEAN),
    term(&["prawn"], CRUSTACEAN),
    term(&["mollusc"], MOLLUSC),
    term(&["oyster"], MOLLUSC),
    term(&["celery"], &[Kind::Allergen(Allergen::Celery)]),
    term(&["celeriac"], &[Kind::Allergen(Allergen::Celery)]),
    term(&["mustard"], &[Kind::Allergen(Allergen::Mustard)]),
    term(&["lupin"], &[Kind::Allergen(Allergen::Lupin)]),
    term(&["sulphite"], SULPHITE),
    term(&["sulfite"], SULPHITE),
    term(&["metabisulphite"], SULPHITE),
    term(&["metabisulfite"], SULPHITE),
    term(&["bisulphite"], SULPHITE),
    term(&["bisulfite"], SULPHITE),
    term(&["sulphur", "dioxide"], SULPHITE),
    term(&["sulfur", "dioxide"], SULPHITE),
    term(&["gelatine"], ANIMAL),
    term(&["gelatin"], ANIMAL),
    term(&["honey"], ANIMAL),
    term(&["royal", "jelly"], ANIMAL),
    term(&["beeswax"], ANIMAL),
    term(&["shellac"], ANIMAL),
    term(&["carmine"], ANIMAL),
    term(&["cochineal"], ANIMAL),
    term(&["collagen"], ANIMAL),
    term(&["lard"], ANIMAL),
    term(&["tallow"], ANIMAL),
    term(&["rennet"], ANIMAL),
    term(&["aspartame"], PHENYLALANINE),
    term(&["sucralose"], SWEETENER),
    term(&["acesulfame"], SWEETENER),
    term(&["saccharin"], SWEETENER),
    term(&["cyclamate"], SWEETENER),
    term(&["neotame"], SWEETENER),
    term(&["advantame"], SWEETENER),
    term(&["thaumatin"], SWEETENER),
    term(&["stevia"], SWEETENER),
    term(&["steviol"], SWEETENER),
    term(&["stevioside"], SWEETENER),
    term(&["rebaudioside"], SWEETENER),
    term(&["sweetener"], SWEETENER),
    term(&["sorbitol"], POLYOL),
    term(&["mannitol"], POLYOL),
    term(&["isomalt"], POLYOL),
    term(&["maltitol"], POLYOL),
    term(&["lactitol"], POLYOL),
    term(&["xylitol"], POLYOL),
    term(&["erythritol"], POLYOL),
    term(&["tartrazine"], AZO),
    term(&["quinoline", "yellow"], AZO),
    term(&["sunset", "yellow"], AZO),
    term(&["azorubine"], AZO),
    term(&["carmoisine"], AZO),
    term(&["ponceau"], AZO),
    term(&["allura", "red"], AZO),
    term(&["quinine"], &[Kind::Quinine]),
    term(&["caffeine"], &[Kind::Caffeine]),
    term(&["guarana"], &[Kind::Caffeine]),
];

/// E numbers (without letter) and what they are a sign of.
pub(super) const NUMBERS: &[(std::ops::RangeInclusive<u16>, &[Kind])] = &[
    (102..=102, AZO),
    (104..=104, AZO),
    (110..=110, AZO),
    (122..=122, AZO),
    (124..=124, AZO),
    (129..=129, AZO),
    (120..=120, ANIMAL),
    (220..=224, SULPHITE),
    (226..=228, SULPHITE),
    (441..=441, ANIMAL),
    (901..=901, ANIMAL),
    (904..=904, ANIMAL),
    (
        966..=966,
        &[
            Kind::Polyol,
            Kind::Sweetener,
            Kind::Allergen(Allergen::Milk),
        ],
    ),
    (1105..=1105, EGG),
    (422..=422, PERHAPS_ANIMAL),
    (470..=472, PERHAPS_ANIMAL),
    (631..=631, PERHAPS_ANIMAL),
    (920..=920, PERHAPS_ANIMAL),
    (420..=421, POLYOL),
    (953..=953, POLYOL),
    (965..=965, POLYOL),
    (967..=968, POLYOL),
    (951..=951, PHENYLALANINE),
    (962..=962, PHENYLALANINE),
    (950..=950, SWEETENER),
    (952..=952, SWEETENER),
    (954..=955, SWEETENER),
    (957..=957, SWEETENER),
    (959..=961, SWEETENER),
    (969..=969, SWEETENER),
];

/// Milk, butter and cream of these are none: "coconut milk", "cocoa butter".
pub(super) const PLANTS: &[&str] = &[
    "coconut",
    "almond",
    "oat",
    "soy",
    "soya",
    "rice",
    "cashew",
    "hazelnut",
    "pea",
    "hemp",
    "cocoa",
    "shea",
    "peanut",
    "nut",
    "plant",
    "vegan",
    "sesame",
    "macadamia",
    "pistachio",
    "kokum",
    "apple",
    "vegetable",
    "flavoured",
];

/// What [`PLANTS`] make something else of.
pub(super) const PLANT_COUNTERPARTS: &[&str] =
    &["milk", "butter", "cream", "yogurt", "yoghurt", "cheese"];
