//! From a book to text, always in the same order and layout.
//!
//! Every struct is taken apart field by field, so that a field that the book gains does not compile until it is written.

mod layout;
mod recipe;

use layout::{Layout, quoted};

use super::{FORMAT, LONGEST_TEXT, format_v1 as file};
use crate::book::{
    AllergenStatement, Axis, Basis, Book, CarbohydrateKind, Closure, Composition, CoolingReading,
    CoolingRun, Diet, EarlierPrice, EnergyUnit, Filling, FlavourStrength, HighPotencyAmount,
    HouseMade, Ingredient, Instruments, LabelUnits, Measure, NamedLevel, Nominal, Nutrient, Price,
    Reading, SaltUnit, Serviceware, ServicewareKind, Settings, Shape, Shelf, StepSetting,
    SugarProfile, TemperatureWindow, TextMeasure, Vessel, Written,
};

/// The text of a book. The same book gives the same text, and reading it gives the same book.
pub fn write(book: &Book) -> String {
    write_counting(book).0
}

/// The text of a book, and how many of its numbers are not finite and could not be read back.
pub(super) fn write_counting(book: &Book) -> (String, usize) {
    let Book {
        settings: shop,
        ingredients,
        measures,
        vessels,
        recipes,
    } = book;
    let mut layout = Layout::default();
    layout.group("", |layout| {
        layout.field("format", &FORMAT.to_string());
        layout.group("settings: ", |layout| settings(layout, shop));
        layout.list("ingredients", ingredients, |layout, item| {
            layout.group("", |layout| ingredient(layout, item));
        });
        layout.list("measures", measures, |layout, item| {
            layout.group("", |layout| measure(layout, item));
        });
        layout.list("vessels", vessels, |layout, item| {
            layout.group("", |layout| vessel(layout, item));
        });
        layout.list("recipes", recipes, |layout, item| {
            layout.group("", |layout| recipe::recipe(layout, item));
        });
    });
    layout.finish()
}

/// How the text of a book is measured, and the longest that can be opened again.
pub fn text_measure() -> TextMeasure {
    TextMeasure {
        written,
        most: LONGEST_TEXT,
    }
}

/// What [`write`] would give, item by item: nothing that a known book has just so is written again.
fn written(book: &Book, known: Option<(&Book, Written)>) -> Written {
    let nothing = Book::default();
    let other = known.map_or(&nothing, |(other, _)| other);
    let (frame, items) = (frame(book), items_unlike(book, other));
    let Some((_, before)) = known else {
        return Written {
            bytes: frame.bytes + items.bytes,
            not_finite: frame.not_finite + items.not_finite,
        };
    };
    let (old_frame, gone) = (self::frame(other), items_unlike(other, book));
    Written {
        bytes: (before.bytes + frame.bytes + items.bytes)
            .saturating_sub(old_frame.bytes + gone.bytes),
        not_finite: (before.not_finite + frame.not_finite + items.not_finite)
            .saturating_sub(old_frame.not_finite + gone.not_finite),
    }
}

/// The text of a book without the items of its shelves.
fn frame(book: &Book) -> Written {
    let without_items = Book {
        settings: book.settings.clone(),
        ..Book::default()
    };
    let (text, not_finite) = write_counting(&without_items);
    let mut lists = Layout::at_depth(1);
    for (name, is_empty) in [
        ("ingredients", book.ingredients.is_empty()),
        ("measures", book.measures.is_empty()),
        ("vessels", book.vessels.is_empty()),
        ("recipes", book.recipes.is_empty()),
    ] {
        if !is_empty {
            lists.block(&format!("{name}: "), ('[', ']'), |_| ());
        }
    }
    Written {
        bytes: (text.len() + lists.finish().0.len()) as u64,
        not_finite,
    }
}

/// The text of the items that another book does not have just so.
fn items_unlike(book: &Book, other: &Book) -> Written {
    fn add<T: crate::book::Item>(
        written: &mut Written,
        shelf: &Shelf<T>,
        other: &Shelf<T>,
        write: impl Fn(&mut Layout, &T),
    ) {
        for item in shelf.unlike(other) {
            let mut layout = Layout::at_depth(2);
            layout.group("", |layout| write(layout, item));
            let (text, not_finite) = layout.finish();
            written.bytes += text.len() as u64;
            written.not_finite += not_finite;
        }
    }
    let mut written = Written {
        bytes: 0,
        not_finite: 0,
    };
    add(
        &mut written,
        &book.ingredients,
        &other.ingredients,
        ingredient,
    );
    add(&mut written, &book.measures, &other.measures, measure);
    add(&mut written, &book.vessels, &other.vessels, vessel);
    add(&mut written, &book.recipes, &other.recipes, recipe::recipe);
    written
}

/// Numbers are always written, so that a book does not change when a later program assumes other ones.
fn settings(layout: &mut Layout, settings: &Settings) {
    let Settings {
        shop,
        note,
        currency,
        room_temperature,
        refrigerator_temperature,
        ice_temperature,
        hot_drinking_temperature,
        iced_drinking_temperature,
        hot_window,
        iced_window,
        ice_bulk_density,
        ice_melt_rate,
        sales_tax_percent,
        instruments: measured_with,
        steps,
        yardsticks,
        sugar_levels,
        ice_levels,
    } = settings;
    layout.text_unless_empty("shop", shop);
    layout.text_unless_empty("note", note);
    layout.text("currency", currency);
    layout.number("room_temperature", *room_temperature);
    layout.number("refrigerator_temperature", *refrigerator_temperature);
    layout.number("ice_temperature", *ice_temperature);
    layout.number("hot_drinking_temperature", *hot_drinking_temperature);
    layout.number("iced_drinking_temperature", *iced_drinking_temperature);
    window(layout, "hot_window", *hot_window);
    window(layout, "iced_window", *iced_window);
    layout.number("ice_bulk_density", *ice_bulk_density);
    layout.optional_number("ice_melt_rate", *ice_melt_rate);
    layout.optional_number("sales_tax_percent", *sales_tax_percent);
    instruments(layout, *measured_with);
    layout.list("steps", steps, step_setting);
    layout.list("yardsticks", yardsticks, |layout, yardstick| {
        layout.item(file::Yardstick::word(*yardstick));
    });
    layout.list("sugar_levels", sugar_levels, named_level);
    layout.list("ice_levels", ice_levels, named_level);
}

fn instruments(layout: &mut Layout, instruments: Instruments) {
    let Instruments {
        scale_grams,
        thermometer_kelvin,
        jug_percent,
    } = instruments;
    if instruments != Instruments::default() {
        let fields = [
            ("scale_grams", layout.optional_figures(scale_grams)),
            (
                "thermometer_kelvin",
                layout.optional_figures(thermometer_kelvin),
            ),
            ("jug_percent", layout.optional_figures(jug_percent)),
        ];
        layout.field("instruments", &Layout::inline(&fields));
    }
}

fn window(layout: &mut Layout, name: &str, window: TemperatureWindow) {
    let TemperatureWindow { from, to } = window;
    let fields = [
        ("from", Some(layout.figures(from))),
        ("to", Some(layout.figures(to))),
    ];
    layout.field(name, &Layout::inline(&fields));
}

fn named_level(layout: &mut Layout, level: &NamedLevel) {
    let NamedLevel { name, percent } = level;
    let fields = [
        ("name", Some(quoted(name))),
        ("percent", Some(layout.figures(*percent))),
    ];
    layout.item(&Layout::inline(&fields));
}

fn step_setting(layout: &mut Layout, step: &StepSetting) {
    let StepSetting {
        axis,
        fraction,
        floor,
        weight,
    } = step;
    let axis = match axis {
        Axis::Sweetness => "Sweetness".to_owned(),
        Axis::TeaStrength => "TeaStrength".to_owned(),
        Axis::Flavour(name) => format!("Flavour({})", quoted(name)),
        Axis::Creaminess => "Creaminess".to_owned(),
        Axis::Acidity => "Acidity".to_owned(),
        Axis::Body => "Body".to_owned(),
        Axis::Temperature => "Temperature".to_owned(),
        Axis::Volume => "Volume".to_owned(),
    };
    let fields = [
        ("axis", Some(axis)),
        ("fraction", Some(layout.figures(*fraction))),
        ("floor", Some(layout.figures(*floor))),
        ("weight", Some(layout.figures(*weight))),
    ];
    layout.item(&Layout::inline(&fields));
}

fn ingredient(layout: &mut Layout, ingredient: &Ingredient) {
    let Ingredient {
        id,
        name,
        brand,
        supplier,
        lot,
        form,
        role,
        composition: consists_of,
        density,
        bulk_density,
        temperature,
        statement,
        allergens,
        diet: suits,
        opened_life_hours,
        price: costs,
        earlier_prices,
        house_made: made,
        note,
    } = ingredient;
    layout.text("id", id.as_str());
    layout.text("name", name);
    layout.text_unless_empty("brand", brand);
    layout.text_unless_empty("supplier", supplier);
    layout.text_unless_empty("lot", lot);
    layout.field("form", file::Form::word(*form));
    layout.field("role", file::Role::word(*role));
    if *consists_of != Composition::default() {
        layout.group("composition: ", |layout| composition(layout, consists_of));
    }
    layout.optional_figure("density", *density);
    layout.optional_figure("bulk_density", *bulk_density);
    layout.optional_number("temperature", *temperature);
    layout.text_unless_empty("statement", statement);
    if let Some(stated) = allergens {
        layout.field("allergens", &allergen_statement(stated));
    }
    diet(layout, *suits);
    layout.optional_number("opened_life_hours", *opened_life_hours);
    if let Some(costs) = costs {
        price(layout, costs);
    }
    layout.list("earlier_prices", earlier_prices, earlier_price);
    if let Some(made) = made {
        house_made(layout, made);
    }
    layout.text_unless_empty("note", note);
}

/// An empty "contains" is written: it states that there are none, which is not the same as no statement.
fn allergen_statement(statement: &AllergenStatement) -> String {
    let AllergenStatement {
        contains,
        may_contain,
    } = statement;
    let words = |allergens: &[_]| {
        let words: Vec<&str> = allergens
            .iter()
            .map(|allergen| file::Allergen::word(*allergen))
            .collect();
        format!("[{}]", words.join(", "))
    };
    let traces = (!may_contain.is_empty()).then(|| words(may_contain));
    Layout::inline(&[("contains", Some(words(contains))), ("may_contain", traces)])
}

fn diet(layout: &mut Layout, diet: Diet) {
    let Diet { vegan, dairy_free } = diet;
    if vegan.is_some() || dairy_free.is_some() {
        let word = |stated: Option<bool>| stated.map(|stated| stated.to_string());
        layout.field(
            "diet",
            &Layout::inline(&[("vegan", word(vegan)), ("dairy_free", word(dairy_free))]),
        );
    }
}

fn price(layout: &mut Layout, price: &Price) {
    let Price {
        pack,
        grams,
        waste_percent,
        date,
    } = price;
    let fields = [
        ("pack", Some(layout.figures(*pack))),
        ("grams", Some(layout.figures(*grams))),
        ("waste_percent", Some(layout.figures(*waste_percent))),
        ("date", date.as_deref().map(quoted)),
    ];
    layout.field("price", &Layout::inline(&fields));
}

fn earlier_price(layout: &mut Layout, price: &EarlierPrice) {
    let EarlierPrice {
        pack,
        grams,
        date,
        supplier,
    } = price;
    let fields = [
        ("pack", Some(layout.figures(*pack))),
        ("grams", Some(layout.figures(*grams))),
        ("date", date.as_deref().map(quoted)),
        ("supplier", (!supplier.is_empty()).then(|| quoted(supplier))),
    ];
    layout.item(&Layout::inline(&fields));
}

fn house_made(layout: &mut Layout, made: &HouseMade) {
    let HouseMade {
        recipe,
        yield_grams,
        extraction,
        shelf_life_hours,
        waste_percent,
    } = made;
    layout.group("house_made: ", |layout| {
        layout.text("recipe", recipe.as_str());
        layout.optional_figure("yield_grams", Some(*yield_grams));
        layout.optional_figure("extraction", *extraction);
        layout.optional_number("shelf_life_hours", *shelf_life_hours);
        layout.number("waste_percent", *waste_percent);
    });
}

fn composition(layout: &mut Layout, composition: &Composition) {
    let Composition {
        basis,
        carbohydrate_kind,
        printed,
        units: LabelUnits { energy, salt },
        polyol,
        sugar_profile: divides,
        free_sugar_fraction,
        flavours,
        high_potency: sweeteners,
    } = composition;
    match *basis {
        Basis::Per100Grams => {}
        Basis::Per100Millilitres => layout.field("basis", "Per100Millilitres"),
        Basis::PerServing(grams) => {
            let grams = layout.figures(grams);
            layout.field("basis", &format!("PerServing({grams})"));
        }
    }
    if *carbohydrate_kind != CarbohydrateKind::default() {
        layout.field(
            "carbohydrate_kind",
            file::CarbohydrateKind::word(*carbohydrate_kind),
        );
    }
    if *energy != EnergyUnit::default() {
        layout.field("energy_in", file::EnergyUnit::word(*energy));
    }
    if *salt != SaltUnit::default() {
        layout.field("salt_as", file::SaltUnit::word(*salt));
    }
    for (nutrient, figure) in printed {
        layout.optional_figure(nutrient_field(*nutrient), Some(*figure));
    }
    if let Some(polyol) = polyol {
        layout.field("polyol", file::PolyolKind::word(*polyol));
    }
    if let Some(divides) = divides {
        let value = sugar_profile(layout, divides);
        layout.field("sugar_profile", &value);
    }
    layout.optional_number("free_sugar_fraction", *free_sugar_fraction);
    layout.list(
        "flavours",
        flavours,
        |layout, FlavourStrength { name, per_gram }| {
            let strength = per_gram.map(|figure| layout.figure(figure));
            layout.item(&Layout::inline(&[
                ("name", Some(quoted(name))),
                ("per_gram", strength),
            ]));
        },
    );
    layout.list(
        "high_potency",
        sweeteners,
        |layout,
         HighPotencyAmount {
             sweetener,
             milligrams,
         }| {
            let word = file::HighPotencySweetener::word(*sweetener).to_owned();
            let amount = milligrams.map(|figure| layout.figure(figure));
            layout.item(&Layout::inline(&[
                ("sweetener", Some(word)),
                ("milligrams", amount),
            ]));
        },
    );
}

fn nutrient_field(nutrient: Nutrient) -> &'static str {
    match nutrient {
        Nutrient::Energy => "energy",
        Nutrient::Water => "water",
        Nutrient::Fat => "fat",
        Nutrient::Saturates => "saturates",
        Nutrient::Carbohydrate => "carbohydrate",
        Nutrient::Sugars => "sugars",
        Nutrient::Polyols => "polyols",
        Nutrient::Fibre => "fibre",
        Nutrient::Protein => "protein",
        Nutrient::Salt => "salt",
        Nutrient::Acid => "acid",
        Nutrient::TeaSolids => "tea_solids",
        Nutrient::Insoluble => "insoluble",
        Nutrient::Caffeine => "caffeine",
        Nutrient::Brix => "brix",
    }
}

fn sugar_profile(layout: &mut Layout, profile: &SugarProfile) -> String {
    match *profile {
        SugarProfile::Sucrose => "Sucrose".to_owned(),
        SugarProfile::Invert => "Invert".to_owned(),
        SugarProfile::Hfcs42 => "Hfcs42".to_owned(),
        SugarProfile::Hfcs55 => "Hfcs55".to_owned(),
        SugarProfile::Fructose => "Fructose".to_owned(),
        SugarProfile::Glucose => "Glucose".to_owned(),
        SugarProfile::Lactose => "Lactose".to_owned(),
        SugarProfile::Honey => "Honey".to_owned(),
        SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        } => {
            format!(
                "GlucoseSyrup(dextrose_equivalent: {})",
                layout.figures(dextrose_equivalent)
            )
        }
        SugarProfile::Own {
            sucrose,
            glucose,
            fructose,
            lactose,
            maltose,
            other,
        } => {
            let mut part = |value: f64| (value != 0.0).then(|| layout.figures(value));
            let fractions = [
                ("sucrose", part(sucrose)),
                ("glucose", part(glucose)),
                ("fructose", part(fructose)),
                ("lactose", part(lactose)),
                ("maltose", part(maltose)),
                ("other", part(other)),
            ];
            format!("Own{}", Layout::inline(&fractions))
        }
    }
}

fn measure(layout: &mut Layout, measure: &Measure) {
    let Measure {
        id,
        name,
        kind,
        nominal,
        filling,
        increment,
        temperature,
        readings,
        note,
    } = measure;
    layout.text("id", id.as_str());
    layout.text("name", name);
    layout.field("kind", file::MeasureKind::word(*kind));
    if let Some(nominal) = nominal {
        let (word, value) = match *nominal {
            Nominal::Volume(millilitres) => ("Volume", millilitres),
            Nominal::Mass(grams) => ("Mass", grams),
        };
        let value = layout.figures(value);
        layout.field("nominal", &format!("{word}({value})"));
    }
    if *filling != Filling::default() {
        layout.field("filling", file::Filling::word(*filling));
    }
    layout.optional_number("increment", *increment);
    layout.optional_number("temperature", *temperature);
    layout.list(
        "readings",
        readings,
        |layout,
         Reading {
             ingredient,
             uses,
             grams,
             date,
         }| {
            let fields = [
                (
                    "ingredient",
                    ingredient.as_ref().map(|id| quoted(id.as_str())),
                ),
                ("uses", Some(uses.to_string())),
                ("grams", Some(layout.figures(*grams))),
                ("date", date.as_deref().map(quoted)),
            ];
            layout.item(&Layout::inline(&fields));
        },
    );
    layout.text_unless_empty("note", note);
}

fn vessel(layout: &mut Layout, vessel: &Vessel) {
    let Vessel {
        id,
        name,
        kind,
        capacity,
        shape,
        mass,
        specific_heat,
        temperature,
        cooling_minutes,
        cooling_run: run,
        price,
        closures,
        serviceware,
        note,
    } = vessel;
    layout.text("id", id.as_str());
    layout.text("name", name);
    layout.field("kind", file::VesselKind::word(*kind));
    layout.number("capacity", *capacity);
    if let Some(Shape {
        height,
        bottom,
        top,
    }) = *shape
    {
        let fields = [("height", height), ("bottom", bottom), ("top", top)];
        let fields = fields.map(|(name, value)| (name, Some(layout.figures(value))));
        layout.field("shape", &Layout::inline(&fields));
    }
    layout.optional_number("mass", *mass);
    layout.optional_number("specific_heat", *specific_heat);
    layout.optional_number("temperature", *temperature);
    layout.optional_number("cooling_minutes", *cooling_minutes);
    if let Some(run) = run {
        layout.group("cooling_run: ", |layout| cooling_run(layout, run));
    }
    layout.optional_number("price", *price);
    layout.list(
        "closures",
        closures,
        |layout,
         Closure {
             kind,
             price,
             head_room,
             cooling_factor,
         }| {
            let fields = [
                ("kind", Some(file::ClosureKind::word(*kind).to_owned())),
                ("price", layout.optional_figures(*price)),
                ("head_room", Some(layout.figures(*head_room))),
                ("cooling_factor", layout.optional_figures(*cooling_factor)),
            ];
            layout.item(&Layout::inline(&fields));
        },
    );
    layout.list(
        "serviceware",
        serviceware,
        |layout, Serviceware { kind, price }| {
            let kind = match kind {
                ServicewareKind::Straw { wide } => format!("Straw(wide: {wide})"),
                ServicewareKind::Sleeve => "Sleeve".to_owned(),
            };
            let price = layout.optional_figures(*price);
            layout.item(&Layout::inline(&[("kind", Some(kind)), ("price", price)]));
        },
    );
    layout.text_unless_empty("note", note);
}

fn cooling_run(layout: &mut Layout, run: &CoolingRun) {
    let CoolingRun {
        room,
        millilitres,
        readings,
    } = run;
    layout.number("room", *room);
    layout.optional_number("millilitres", *millilitres);
    layout.list(
        "readings",
        readings,
        |layout, CoolingReading { minutes, celsius }| {
            let fields = [
                ("minutes", Some(layout.figures(*minutes))),
                ("celsius", Some(layout.figures(*celsius))),
            ];
            layout.item(&Layout::inline(&fields));
        },
    );
}
