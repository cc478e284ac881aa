//! Not stated is never zero: whatever changes a figure of a drink when it changes leaves that figure incomplete, or resting on a
//! named assumption, when nobody states it.

use evensip::balance::{Assumed, Balance, Measurand, balance};
use evensip::book::{
    Amount, Book, Carried, Entry, Evidence, Figure, FlavourStrength, Form, HighPotencyAmount,
    HighPotencySweetener, HouseMade, Ingredient, IngredientId, Line, Nutrient, Place, PolyolKind,
    Recipe, RecipeId, Resolved, Role, Stage, SugarProfile, VesselId,
};
use evensip::quantity::Uncertain;

use crate::sample::{book, cup, ingredient, line, recipe, water};

/// One thing that an ingredient may state.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Statement {
    Figure(Nutrient),
    Density,
    BulkDensity,
    Flavour,
    Sweetener,
    SweetenerAmount,
    SugarProfile,
    FreeSugars,
    Polyol,
}

impl Statement {
    fn all() -> Vec<Self> {
        let others = [
            Self::Density,
            Self::BulkDensity,
            Self::Flavour,
            Self::Sweetener,
            Self::SweetenerAmount,
            Self::SugarProfile,
            Self::FreeSugars,
            Self::Polyol,
        ];
        Nutrient::ALL
            .map(Self::Figure)
            .into_iter()
            .chain(others)
            .collect()
    }

    /// The ingredient with another value of it.
    fn changed(self, item: &Ingredient) -> Ingredient {
        let mut item = item.clone();
        let composition = &mut item.composition;
        let more = |figure: &mut Figure| figure.value = figure.value * 1.2 + 0.01;
        match self {
            Self::Figure(nutrient) => {
                composition.printed.entry(nutrient).and_modify(more);
            }
            Self::Density => item.density.iter_mut().for_each(more),
            Self::BulkDensity => item.bulk_density.iter_mut().for_each(more),
            Self::Flavour => composition.flavours[0].per_gram.iter_mut().for_each(more),
            Self::Sweetener | Self::SweetenerAmount => {
                composition.high_potency[0]
                    .milligrams
                    .iter_mut()
                    .for_each(more);
            }
            Self::SugarProfile => composition.sugar_profile = Some(SugarProfile::Glucose),
            Self::FreeSugars => composition.free_sugar_fraction = Some(0.1),
            Self::Polyol => composition.polyol = Some(PolyolKind::Erythritol),
        }
        item
    }

    /// The ingredient without it.
    fn left_out(self, item: &Ingredient) -> Ingredient {
        let mut item = item.clone();
        let composition = &mut item.composition;
        match self {
            Self::Figure(nutrient) => {
                composition.printed.remove(&nutrient);
            }
            Self::Density => item.density = None,
            Self::BulkDensity => item.bulk_density = None,
            Self::Flavour => composition.flavours[0].per_gram = None,
            Self::Sweetener => composition.high_potency.clear(),
            Self::SweetenerAmount => composition.high_potency[0].milligrams = None,
            Self::SugarProfile => composition.sugar_profile = None,
            Self::FreeSugars => composition.free_sugar_fraction = None,
            Self::Polyol => composition.polyol = None,
        }
        item
    }

    /// Whether an assumption stands in for it.
    fn is_assumed_by(self, assumed: Assumed) -> bool {
        match self {
            Self::Figure(Nutrient::Water) => {
                matches!(
                    assumed,
                    Assumed::Moisture | Assumed::Figure(Nutrient::Water)
                )
            }
            Self::Figure(nutrient) => assumed == Assumed::Figure(nutrient),
            Self::Density => assumed == Assumed::Density,
            Self::BulkDensity => matches!(assumed, Assumed::Packing | Assumed::PouredDensity),
            Self::Flavour => assumed == Assumed::Flavour(0),
            Self::Sweetener | Self::SweetenerAmount => assumed == Assumed::NoSweetener,
            Self::SugarProfile => assumed == Assumed::SugarSplit,
            Self::FreeSugars => assumed == Assumed::FreeSugars,
            Self::Polyol => assumed == Assumed::PolyolKind,
        }
    }
}

/// Ingredients that state everything, of every form and role.
fn exemplars() -> Vec<Ingredient> {
    let mut all = Vec::new();
    for form in Form::ALL {
        for role in Role::ALL {
            for statement in ["", "sugar, starch, flavouring"] {
                all.push(exemplar(form, role, statement));
            }
        }
    }
    all
}

fn exemplar(form: Form, role: Role, statement: &str) -> Ingredient {
    let wet = form.rest_is_water() || matches!(form, Form::Paste | Form::Pieces);
    let scale = if wet { 0.2 } else { 1.0 };
    let mut figures = vec![
        (Nutrient::Fat, 6.0 * scale),
        (Nutrient::Saturates, 3.0 * scale),
        (Nutrient::Carbohydrate, 60.0 * scale),
        (Nutrient::Sugars, 40.0 * scale),
        (Nutrient::Polyols, 3.0 * scale),
        (Nutrient::Fibre, 4.0 * scale),
        (Nutrient::Protein, 8.0 * scale),
        (Nutrient::Salt, 1.0 * scale),
        (Nutrient::Acid, 1.5 * scale),
        (Nutrient::TeaSolids, 2.0 * scale),
        (Nutrient::Insoluble, 2.0 * scale),
        (Nutrient::Caffeine, 50.0 * scale),
    ];
    let solids: f64 = 83.5 * scale;
    figures.push((Nutrient::Water, if wet { 100.0 - solids } else { 5.0 }));
    let mut item = ingredient("it", form, role, &figures);
    statement.clone_into(&mut item.statement);
    item.density = Some(Figure::new(
        if form == Form::Foam { 0.5 } else { 1.06 },
        Evidence::Measured,
    ));
    item.bulk_density = form
        .lies_in_pieces()
        .then_some(Figure::new(0.6, Evidence::Measured));
    item.composition.flavours = vec![FlavourStrength {
        name: "chestnut".to_owned(),
        per_gram: Some(Figure::new(1.4, Evidence::Measured)),
    }];
    item.composition.high_potency = vec![HighPotencyAmount {
        sweetener: HighPotencySweetener::Sucralose,
        milligrams: Some(Figure::new(30.0, Evidence::SpecSheet)),
    }];
    item.composition.polyol = Some(PolyolKind::Maltitol);
    item
}

/// Where in a drink it is.
#[derive(Clone, Copy, Debug)]
enum At {
    Stage(Stage),
    /// Mixed in by a volume.
    Millilitres,
    /// It fills the drink up.
    Fill,
    /// Part of a batch, which goes in so many levels down.
    Batch(usize),
    /// By volume in a batch.
    BatchByVolume,
    /// It fills a batch up.
    FillsBatch,
    /// A topping brings it along.
    Carried,
    /// A topping of a batch brings it along.
    CarriedInBatch,
}

const PLACES: [At; 11] = [
    At::Stage(Stage::Mixed),
    At::Stage(Stage::Topping),
    At::Stage(Stage::OnTop),
    At::Millilitres,
    At::Fill,
    At::Batch(1),
    At::Batch(2),
    At::BatchByVolume,
    At::FillsBatch,
    At::Carried,
    At::CarriedInBatch,
];

fn it(amount: Amount, stage: Stage) -> Entry {
    let Entry::Line(found) = line("it", "it", 0.0, 20.0, Role::Base) else {
        unreachable!("a line is a line");
    };
    Entry::Line(Line {
        amount,
        stage,
        ..found
    })
}

fn batch_recipe(id: &str, entries: Vec<Entry>) -> Recipe {
    Recipe {
        id: RecipeId::new(id).unwrap(),
        cup: None,
        ..recipe(entries)
    }
}

fn made(id: &str, from: &str, grams: f64) -> Ingredient {
    let mut item = ingredient(id, Form::Liquid, Role::Base, &[]);
    item.composition = evensip::book::Composition::default();
    item.house_made = Some(HouseMade {
        recipe: RecipeId::new(from).unwrap(),
        yield_grams: Figure::new(grams, Evidence::Measured),
        extraction: None,
        steep_minutes: None,
        shelf_life_hours: None,
        waste_percent: 0.0,
    });
    item
}

/// A drink with the ingredient at a place.
fn drink(item: &Ingredient, at: At) -> Balance {
    let mut lines = vec![line("hot", "water", 150.0, 70.0, Role::Water)];
    let mut shelf = vec![water(), item.clone()];
    let mut recipes = Vec::new();
    let grams = Amount::Grams(30.0);
    let base = || line("w", "water", 100.0, 20.0, Role::Water);
    let with_carried = || {
        let Entry::Line(mut found) = line("pearls", "water", 20.0, 20.0, Role::Topping) else {
            unreachable!("a line is a line");
        };
        found.stage = Stage::Topping;
        found.carried = Some(Carried {
            ingredient: item.id.clone(),
            grams: 8.0,
        });
        Entry::Line(found)
    };
    let mut in_batch = |entries: Vec<Entry>, shelf: &mut Vec<Ingredient>| {
        recipes.push(batch_recipe("batch", entries));
        shelf.push(made("batch", "batch", 120.0));
    };
    match at {
        At::Stage(stage) => lines.push(it(grams, stage)),
        At::Millilitres => lines.push(it(Amount::Millilitres(30.0), Stage::Mixed)),
        At::Fill => lines.push(it(Amount::FillTo(220.0), Stage::Mixed)),
        At::Batch(_) => in_batch(vec![base(), it(grams, Stage::Mixed)], &mut shelf),
        At::BatchByVolume => {
            in_batch(
                vec![base(), it(Amount::Millilitres(30.0), Stage::Mixed)],
                &mut shelf,
            );
        }
        At::FillsBatch => {
            in_batch(
                vec![base(), it(Amount::FillTo(125.0), Stage::Mixed)],
                &mut shelf,
            );
        }
        At::Carried => lines.push(with_carried()),
        At::CarriedInBatch => in_batch(vec![base(), with_carried()], &mut shelf),
    }
    let of = |id: &str| line("part", id, 60.0, 20.0, Role::Base);
    match at {
        At::Batch(2) => {
            recipes.push(batch_recipe("outer", vec![base(), of("batch")]));
            shelf.push(made("outer", "outer", 150.0));
            lines.push(of("outer"));
        }
        At::Batch(_) | At::BatchByVolume | At::FillsBatch | At::CarriedInBatch => {
            lines.push(of("batch"));
        }
        _ => {}
    }
    let mut book: Book = book(shelf, vec![cup("cup", 12.0, 1.4)], recipe(Vec::new()));
    for recipe in recipes {
        book.recipes.put(recipe);
    }
    let resolved = Resolved {
        entries: lines,
        cup: Some(VesselId::new("cup").unwrap()),
        ..Resolved::default()
    };
    balance(&book, resolved, &Place::Settings)
}

/// What is told by the rest of the label: leaving it out loses nothing.
fn is_told_by_the_rest(statement: Statement, item: &Ingredient) -> bool {
    match statement {
        // Where every solid is stated, the rest of a liquid is water.
        Statement::Figure(Nutrient::Water) => item.form.rest_is_water(),
        // A statement of ingredients has to name sweeteners.
        Statement::Sweetener => !item.statement.is_empty(),
        // How ice lies is a setting of the shop.
        Statement::BulkDensity => item.form == Form::Ice,
        _ => false,
    }
}

/// Whether a figure of a drink is incomplete, or rests on an assumption that stands in for a statement.
///
/// What nobody states still weighs, warms and takes room: for figures that it moves in that way alone, the rest of the ingredient is
/// assumed, and the doubt of the figure has to cover what the statement would have made of it.
fn is_marked(
    stated: &Balance,
    left_out: &Balance,
    measurand: Measurand,
    statement: Statement,
    id: &IngredientId,
) -> bool {
    let figures = &left_out.figures;
    let Some(value) = figures.complete(measurand) else {
        return true;
    };
    let mut named = left_out.assumptions.iter().filter(|(whose, _)| whose == id);
    if named
        .clone()
        .any(|(_, assumption)| statement.is_assumed_by(assumption.what))
    {
        return true;
    }
    let off = (value - stated.figures.of[measurand.slot()]).abs();
    let covers = off <= 2.0 * left_out.uncertainty(measurand.slot());
    covers && named.any(|(_, assumption)| assumption.what == Assumed::Rest)
}

#[test]
fn what_is_left_out_marks_every_figure_that_it_would_have_changed() {
    // All places of all exemplars take minutes; a part of them, a different one for each exemplar, finds what is wrong as well.
    let every_place = std::env::var_os("EVENSIP_EVERY_PLACE").is_some();
    let mut wrong = std::collections::BTreeMap::<String, (usize, String)>::new();
    let mut tried = 0;
    for (number, item) in exemplars().into_iter().enumerate() {
        for (place, at) in PLACES.into_iter().enumerate() {
            if !every_place && (number * 5 + place) % PLACES.len() > 1 {
                continue;
            }
            // Leaf, ice and what is dry fill nothing up.
            let by_volume = matches!(at, At::Fill | At::FillsBatch);
            if by_volume && (item.form.is_dry() || item.form == Form::Ice) {
                continue;
            }
            let stated = drink(&item, at);
            for statement in Statement::all() {
                if is_told_by_the_rest(statement, &item) {
                    continue;
                }
                let changed = drink(&statement.changed(&item), at);
                let left_out = drink(&statement.left_out(&item), at);
                for measurand in Measurand::ALL {
                    let (Some(before), Some(after)) = (
                        stated.figures.get(measurand),
                        changed.figures.get(measurand),
                    ) else {
                        continue;
                    };
                    tried += 1;
                    let differs = (after - before).abs() > 1e-6 * (1.0 + before.abs());
                    if differs && !is_marked(&stated, &left_out, measurand, statement, &item.id) {
                        let case = format!("{statement:?} moves {measurand:?}");
                        let example = format!("{:?} {:?} {at:?}", item.form, item.role);
                        wrong.entry(case).or_insert((0, example)).0 += 1;
                    }
                }
            }
        }
    }
    assert!(tried > 100_000, "{tried}");
    assert!(wrong.is_empty(), "of {tried}: {wrong:#?}");
}

/// A published food, what it holds of something, and what its kind would be taken to hold.
pub(crate) struct Held {
    pub(crate) name: String,
    pub(crate) published: f64,
    pub(crate) assumed: Uncertain,
}

/// What published foods hold of everything that would be assumed of them if it were not stated. Foods of USDA SR28 and `FoodData`
/// Central, in `assets/published-ingredients.ron`.
pub(crate) fn held_and_assumed() -> Vec<Held> {
    let published = evensip::workbench::published_ingredients().expect("the tables open");
    let mut all = Vec::new();
    for item in &published.ingredients {
        for nutrient in Nutrient::ALL {
            let Some(figure) = item.composition.get(nutrient) else {
                continue;
            };
            let mut silent = Statement::Figure(nutrient).left_out(item);
            silent.id = IngredientId::new("it").unwrap();
            let found = drink(&silent, At::Stage(Stage::Mixed));
            let its_own = found
                .assumptions
                .iter()
                .filter(|(whose, _)| *whose == silent.id);
            let assumed = its_own
                .map(|(_, assumption)| assumption)
                .find_map(|assumption| {
                    let moisture =
                        nutrient == Nutrient::Water && assumption.what == Assumed::Moisture;
                    let same = assumption.what == Assumed::Figure(nutrient) || moisture;
                    assumption.figure.filter(|_| same)
                });
            all.extend(assumed.map(|assumed| Held {
                name: format!("{} {}", item.name, nutrient.word()),
                published: figure.value,
                assumed,
            }));
        }
    }
    all
}

/// The figures that an assumption stands in for, against what published foods of that kind hold: 19 of 20 lie within two standard
/// uncertainties.
#[test]
fn an_assumption_covers_nineteen_of_twenty_published_foods_of_its_kind() {
    let all = held_and_assumed();
    let missed: Vec<String> = all
        .iter()
        // Tables print two places.
        .filter(|held| (held.published - held.assumed.value).abs() > 2.0 * held.assumed.u + 0.005)
        .map(|held| {
            format!(
                "{}: {} against {} ± {}",
                held.name, held.published, held.assumed.value, held.assumed.u
            )
        })
        .collect();
    assert!(all.len() > 60, "{}", all.len());
    assert!(
        missed.len() * 20 <= all.len(),
        "{} of {}: {missed:#?}",
        missed.len(),
        all.len()
    );
}

/// Moisture of published powders and limits of standards, in g per 100 g: USDA SR26 as NDB numbers, Codex standards (207-1999,
/// 105-1981, 212-1999), makers' sheets for matcha.
#[test]
fn the_moisture_of_a_kind_of_powder_covers_published_ones() {
    let cases: [(&str, Form, Role, &[f64]); 5] = [
        // NDB 01069, 01212, 01091, 01092; limit 5.
        (
            "creamer",
            Form::Powder,
            Role::Creamer,
            &[2.21, 2.47, 3.16, 3.96, 5.0],
        ),
        // NDB 19165, 19166, 14214, 14370; limit of cocoa 7.
        (
            "cocoa",
            Form::Powder,
            Role::Flavour,
            &[3.0, 2.7, 3.1, 0.13, 7.0],
        ),
        // NDB 14366, 14368; matcha 5 and 8.
        ("tea", Form::Powder, Role::Tea, &[5.09, 4.3, 5.0, 8.0]),
        // NDB 19334, 19908; limit of white sugar 0.1.
        ("sugar", Form::Crystals, Role::Sweetener, &[1.34, 0.03, 0.1]),
        // Dry tapioca pearls, NDB 20068; maize starch, NDB 20027.
        ("pearls", Form::Pieces, Role::Topping, &[10.99, 8.32]),
    ];
    for (name, form, role, published) in cases {
        let mut item = ingredient("it", form, role, &[(Nutrient::Sugars, 60.0)]);
        item.name = name.to_owned();
        let found = drink(&item, At::Stage(Stage::Mixed));
        let assumed = found
            .assumptions
            .iter()
            .find(|(whose, assumption)| *whose == item.id && assumption.what == Assumed::Moisture)
            .and_then(|(_, assumption)| assumption.figure)
            .expect("a powder has an assumed moisture");
        for moisture in published {
            let off = (moisture - assumed.value).abs();
            assert!(
                off <= 2.1 * assumed.u,
                "{name}: {moisture} against {} ± {}",
                assumed.value,
                assumed.u
            );
        }
    }
}
