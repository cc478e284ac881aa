//! Ingredients from a file.

use super::{Checker, file};
use crate::book::{
    AllergenStatement, Basis, Composition, Diet, EarlierPrice, FlavourStrength, HighPotencyAmount,
    HouseMade, Ingredient, LabelUnits, Nutrient, Price, SugarProfile,
};

pub(super) fn ingredient(checker: &mut Checker<'_>, found: file::Ingredient) -> Ingredient {
    Ingredient {
        id: checker.id("id", &found.id),
        name: found.name,
        brand: found.brand,
        supplier: found.supplier,
        lot: found.lot,
        form: found.form.into(),
        role: found.role.into(),
        composition: checker.within("composition", |checker| {
            composition(checker, found.composition)
        }),
        density: found
            .density
            .map(|figure| checker.figure("density", &figure)),
        bulk_density: found
            .bulk_density
            .map(|figure| checker.figure("bulk_density", &figure)),
        temperature: checker.optional_number("temperature", found.temperature),
        statement: found.statement,
        allergens: found.allergens.map(|statement| AllergenStatement {
            contains: statement.contains.into_iter().map(Into::into).collect(),
            may_contain: statement.may_contain.into_iter().map(Into::into).collect(),
        }),
        diet: Diet {
            vegan: found.diet.vegan,
            dairy_free: found.diet.dairy_free,
        },
        opened_life_hours: checker.optional_number("opened_life_hours", found.opened_life_hours),
        price: found
            .price
            .map(|found| checker.within("price", |checker| price(checker, found))),
        earlier_prices: checker.items(
            "earlier_prices",
            found.earlier_prices,
            |_| "",
            earlier_price,
        ),
        house_made: found
            .house_made
            .map(|found| checker.within("house_made", |checker| house_made(checker, &found))),
        note: found.note,
    }
}

fn price(checker: &mut Checker<'_>, found: file::Price) -> Price {
    Price {
        pack: checker.number("pack", found.pack),
        grams: checker.number("grams", found.grams),
        waste_percent: checker.number("waste_percent", found.waste_percent),
        date: found.date,
    }
}

fn earlier_price(checker: &mut Checker<'_>, found: file::EarlierPrice) -> EarlierPrice {
    EarlierPrice {
        pack: checker.number("pack", found.pack),
        grams: checker.number("grams", found.grams),
        date: found.date,
        supplier: found.supplier,
    }
}

fn house_made(checker: &mut Checker<'_>, found: &file::HouseMade) -> HouseMade {
    HouseMade {
        recipe: checker.id("recipe", &found.recipe),
        yield_grams: checker.figure("yield_grams", &found.yield_grams),
        extraction: found
            .extraction
            .as_ref()
            .map(|figure| checker.figure("extraction", figure)),
        shelf_life_hours: checker.optional_number("shelf_life_hours", found.shelf_life_hours),
        waste_percent: checker.number("waste_percent", found.waste_percent),
    }
}

fn composition(checker: &mut Checker<'_>, found: file::Composition) -> Composition {
    let figures = [
        (Nutrient::Energy, "energy", found.energy),
        (Nutrient::Water, "water", found.water),
        (Nutrient::Fat, "fat", found.fat),
        (Nutrient::Saturates, "saturates", found.saturates),
        (Nutrient::Carbohydrate, "carbohydrate", found.carbohydrate),
        (Nutrient::Sugars, "sugars", found.sugars),
        (Nutrient::Polyols, "polyols", found.polyols),
        (Nutrient::Fibre, "fibre", found.fibre),
        (Nutrient::Protein, "protein", found.protein),
        (Nutrient::Salt, "salt", found.salt),
        (Nutrient::Acid, "acid", found.acid),
        (Nutrient::TeaSolids, "tea_solids", found.tea_solids),
        (Nutrient::Insoluble, "insoluble", found.insoluble),
        (Nutrient::Caffeine, "caffeine", found.caffeine),
        (Nutrient::Brix, "brix", found.brix),
    ];
    let stated = figures
        .into_iter()
        .filter_map(|(nutrient, field, figure)| Some((nutrient, field, figure?)));
    Composition {
        basis: found
            .basis
            .map(|basis| amount_of_basis(checker, &basis))
            .unwrap_or_default(),
        carbohydrate_kind: found.carbohydrate_kind.map(Into::into).unwrap_or_default(),
        printed: stated
            .map(|(nutrient, field, figure)| (nutrient, checker.figure(field, &figure)))
            .collect(),
        units: LabelUnits {
            energy: found.energy_in.map(Into::into).unwrap_or_default(),
            salt: found.salt_as.map(Into::into).unwrap_or_default(),
        },
        polyol: found.polyol.map(Into::into),
        sugar_profile: found.sugar_profile.map(|profile| {
            checker.within("sugar_profile", |checker| sugar_profile(checker, &profile))
        }),
        free_sugar_fraction: checker
            .optional_number("free_sugar_fraction", found.free_sugar_fraction),
        flavours: checker.items(
            "flavours",
            found.flavours,
            |flavour| &flavour.name,
            |checker, flavour| {
                let per_gram = flavour
                    .per_gram
                    .map(|figure| checker.figure("per_gram", &figure));
                FlavourStrength {
                    name: flavour.name,
                    per_gram,
                }
            },
        ),
        high_potency: checker.items(
            "high_potency",
            found.high_potency,
            |_| "",
            |checker, amount| HighPotencyAmount {
                sweetener: amount.sweetener.into(),
                milligrams: amount
                    .milligrams
                    .map(|figure| checker.figure("milligrams", &figure)),
            },
        ),
    }
}

fn amount_of_basis(checker: &mut Checker<'_>, found: &file::Basis) -> Basis {
    match *found {
        file::Basis::Per100Grams => Basis::Per100Grams,
        file::Basis::Per100Millilitres => Basis::Per100Millilitres,
        file::Basis::PerServing(grams) => Basis::PerServing(checker.number("basis", grams)),
    }
}

fn sugar_profile(checker: &mut Checker<'_>, found: &file::SugarProfile) -> SugarProfile {
    match *found {
        file::SugarProfile::Sucrose => SugarProfile::Sucrose,
        file::SugarProfile::Invert => SugarProfile::Invert,
        file::SugarProfile::Hfcs42 => SugarProfile::Hfcs42,
        file::SugarProfile::Hfcs55 => SugarProfile::Hfcs55,
        file::SugarProfile::Fructose => SugarProfile::Fructose,
        file::SugarProfile::Glucose => SugarProfile::Glucose,
        file::SugarProfile::Lactose => SugarProfile::Lactose,
        file::SugarProfile::Honey => SugarProfile::Honey,
        file::SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        } => SugarProfile::GlucoseSyrup {
            dextrose_equivalent: checker.number("dextrose_equivalent", dextrose_equivalent),
        },
        file::SugarProfile::Own {
            sucrose,
            glucose,
            fructose,
            lactose,
            maltose,
            other,
        } => SugarProfile::Own {
            sucrose: checker.number("sucrose", sucrose),
            glucose: checker.number("glucose", glucose),
            fructose: checker.number("fructose", fructose),
            lactose: checker.number("lactose", lactose),
            maltose: checker.number("maltose", maltose),
            other: checker.number("other", other),
        },
    }
}
