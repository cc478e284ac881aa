//! Laws of brews: what comes off the leaf and what is left behind is what went in, for every component and for the money; planner,
//! batch and shopping say the same; and who knows the leaf by its volume knows it no better than that.

use evensip::balance::{
    Brew, BrewMethod, Component, HouseBrew, Infusion, Kitchen, LEAF_BULK_DENSITY, Measurand,
    batches_for, brew_for, brew_yield, house_brew,
};
use evensip::book::{
    Amount, Book, Composition, Entry, Evidence, Figure, Form, HouseMade, Ingredient, IngredientId,
    Nutrient, Price, Recipe, RecipeId, Role, Stage,
};
use evensip::cards::{CardRequest, card, markdown};
use evensip::quantity::Uncertain;
use proptest::prelude::*;

use crate::cards::{drink, options};
use crate::sample::{balance_of, book, ingredient, line, recipe, water};

/// A brew with everything that a shop may state of it.
#[derive(Clone, Copy, Debug)]
struct Stated {
    water: f64,
    leaf: f64,
    extraction: f64,
    /// The part of what the leaf can leave that is weighed as ready.
    ready_part: f64,
    waste_percent: f64,
    price_per_gram: f64,
    water_price: f64,
    caffeine: f64,
}

fn any_brew() -> impl Strategy<Value = Stated> {
    (
        (50.0..8000.0_f64, 0.004..0.15_f64, 0.02..0.5_f64),
        (0.2..1.0_f64, 0.0..60.0_f64),
        (0.0..0.5_f64, 0.0..0.01_f64, 0.0..40.0_f64),
    )
        .prop_map(
            |((water, ratio, extraction), (ready_part, waste_percent), prices)| Stated {
                water,
                leaf: water * ratio,
                extraction,
                ready_part,
                waste_percent,
                price_per_gram: prices.0,
                water_price: prices.1,
                caffeine: prices.2,
            },
        )
}

fn id(text: &str) -> IngredientId {
    IngredientId::new(text).unwrap()
}

impl Stated {
    /// All the liquor that there is, in the tea and in the leaf.
    fn liquor(self) -> f64 {
        self.water + self.leaf * self.extraction
    }

    fn ready(self) -> f64 {
        self.liquor() * self.ready_part
    }

    fn price(pack_of_a_kilogram: f64) -> Price {
        Price {
            pack: pack_of_a_kilogram,
            content: evensip::quantity::Pack::of_grams(1000.0),
            waste_percent: 0.0,
            date: None,
        }
    }

    /// A shop that brews it, and has a drink of so many grams of it.
    fn shop(self, drunk: f64) -> Book {
        let mut leaf = ingredient("leaf", Form::Leaf, Role::Tea, &[]);
        leaf.composition = Composition::default();
        let caffeine = Figure::new(100.0 * self.caffeine, Evidence::Label);
        leaf.composition.state(Nutrient::Caffeine, caffeine);
        leaf.price = Some(Self::price(1000.0 * self.price_per_gram));
        let water = Ingredient {
            price: Some(Self::price(1000.0 * self.water_price)),
            ..water()
        };
        let tea = Ingredient {
            composition: Composition::default(),
            price: None,
            house_made: Some(HouseMade {
                recipe: RecipeId::new("pot").unwrap(),
                yield_grams: Figure::new(self.ready(), Evidence::Measured),
                extraction: Some(Figure::new(self.extraction, Evidence::Measured)),
                steep_minutes: Some(6.0),
                shelf_life_hours: None,
                waste_percent: self.waste_percent,
            }),
            ..ingredient("tea", Form::Liquid, Role::Tea, &[])
        };
        let drink = recipe(vec![line("tea", "tea", drunk, 20.0, Role::Tea)]);
        let mut book = book(vec![water, leaf, tea], Vec::new(), drink);
        // A fifth of a gram of leaf is weighed on no scale that shows whole grams.
        book.settings.instruments.scale_grams = Some(0.01);
        let mut leaf = line("leaf", "leaf", self.leaf, 20.0, Role::Tea);
        if let Entry::Line(line) = &mut leaf {
            line.stage = Stage::Steeped;
        }
        book.recipes.put(Recipe {
            entries: vec![line("water", "water", self.water, 95.0, Role::Water), leaf],
            ..Recipe::new(RecipeId::new("pot").unwrap(), "pot".to_owned())
        });
        book
    }
}

fn brew_of(book: &Book) -> HouseBrew {
    house_brew(book, book.ingredient(&id("tea")).unwrap()).unwrap()
}

fn near(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-9 * (1.0 + one.abs().max(other.abs()))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 300, failure_persistence: None, ..ProptestConfig::default() })]

    /// The tea of a batch and the wet leaf that is left are, together, the water and the leaf that went in.
    #[test]
    fn what_is_ready_and_what_is_left_behind_is_what_went_in(stated in any_brew()) {
        let book = stated.shop(100.0);
        let gram = Kitchen::new(&book).gram(book.ingredient(&id("tea")).unwrap());
        let ready = |component| gram.get(component) * stated.ready();
        prop_assert!(near(ready(Component::Mass), stated.ready()));
        // The leaf keeps liquor of the same strength.
        let kept = stated.liquor() - stated.ready();
        let dissolved = stated.leaf * stated.extraction;
        let kept_solids = dissolved * kept / stated.liquor();
        prop_assert!(near(ready(Component::TeaSolids) + kept_solids, dissolved));
        let kept_water = kept - kept_solids;
        prop_assert!(near(ready(Component::Water) + kept_water, stated.water));
        let spent = stated.leaf - dissolved + kept;
        prop_assert!(near(stated.ready() + spent, stated.water + stated.leaf));
        // Whatever a label says of the dry leaf: nothing but extract and caffeine gets into the water.
        for none in [Component::Fat, Component::Sugars, Component::Protein, Component::Fibre, Component::Ice] {
            prop_assert!(gram.get(none) == 0.0 && gram.knows(none), "{none:?}");
        }
        // The planner, asked for the same brew, says the same.
        let house = brew_of(&book);
        let found = brew_yield(&house.brew, &house.method).unwrap();
        prop_assert!(near(found.ready.value, stated.ready()), "{found:?}");
        prop_assert!(near(found.spent.value, spent), "{found:?}");
        prop_assert!(near(found.tea_solids.value, ready(Component::TeaSolids)), "{found:?}");
        prop_assert!(near(found.strength.value, 100.0 * gram.get(Component::TeaSolids)), "{found:?}");
    }

    /// All that a batch costs is paid for by what is drunk of it, with what is thrown away.
    #[test]
    fn the_money_of_a_batch_is_the_money_of_its_tea(stated in any_brew()) {
        let usable = stated.ready() * (1.0 - stated.waste_percent / 100.0);
        let book = stated.shop(usable);
        let batch = balance_of(&book, "pot", None).figures.complete(Measurand::Cost).unwrap();
        let paid = stated.leaf * stated.price_per_gram + stated.water * stated.water_price;
        prop_assert!(near(batch, paid), "{batch} and {paid}");
        let drunk = balance_of(&book, "drink", None).figures.complete(Measurand::Cost).unwrap();
        prop_assert!(near(drunk, paid), "{drunk} and {paid}");
    }

    /// What the wet leaf takes along is as hot as the water around it: the tea is no hotter for it, however much leaf there is.
    #[test]
    fn tea_is_as_hot_as_the_water_that_it_was_brewed_with(stated in any_brew(), first in proptest::bool::ANY) {
        let mut book = stated.shop(100.0);
        if first {
            let mut pot = book.recipe(&RecipeId::new("pot").unwrap()).unwrap().as_ref().clone();
            pot.entries.reverse();
            book.recipes.put(pot);
        }
        let pot = balance_of(&book, "pot", None);
        let hot = pot.figures.complete(Measurand::ServingTemperature).unwrap();
        prop_assert!((hot - 95.0).abs() < 1e-6, "{hot} °C");
        let u = pot.uncertainty(Measurand::ServingTemperature.slot());
        prop_assert!(u > 0.0 && u < 10.0, "± {u} K");
    }

    /// What the planner, the batch and the shopping list say that so much tea takes is one thing.
    #[test]
    fn planner_and_shopping_need_the_same_leaf(stated in any_brew(), wanted in 1.0..50_000.0_f64) {
        let stated = Stated { waste_percent: 0.0, ..stated };
        let book = stated.shop(100.0);
        let needs = batches_for(&book, &id("tea"), wanted).unwrap();
        let grams = |of: &str, parts: &evensip::balance::BatchesFor| -> f64 {
            let parts = parts.parts.iter().filter(|part| part.ingredient == id(of));
            parts.map(|part| part.grams.unwrap()).sum()
        };
        let house = brew_of(&book);
        let strength = brew_yield(&house.brew, &house.method).unwrap().strength.value;
        if let Ok(planned) = brew_for(wanted, strength, &house.method) {
            prop_assert!((planned.leaf / grams("leaf", &needs) - 1.0).abs() < 1e-6, "{planned:?} {needs:?}");
            prop_assert!((planned.water / grams("water", &needs) - 1.0).abs() < 1e-6, "{planned:?} {needs:?}");
        }
        let (whole, left_over) = needs.whole();
        prop_assert!(whole.batches.fract() == 0.0 && whole.batches + 1e-6 >= needs.batches);
        prop_assert!(near(grams("leaf", &whole), whole.batches * stated.leaf));
        prop_assert!((wanted + left_over - whole.batches * stated.ready()).abs() < 1e-6 * (1.0 + wanted));
    }

    /// Leaf that is taken by volume is no surer than its poured density, in the planner and in a batch.
    #[test]
    fn leaf_by_volume_carries_its_doubt(stated in any_brew()) {
        let mut book = stated.shop(100.0);
        let millilitres = stated.leaf / LEAF_BULK_DENSITY.value;
        let mut pot = book.recipe(&RecipeId::new("pot").unwrap()).unwrap().as_ref().clone();
        for entry in &mut pot.entries {
            if let Entry::Line(line) = entry && line.stage == Stage::Steeped {
                line.amount = Amount::Millilitres(millilitres);
            }
        }
        book.recipes.put(pot);
        let house = brew_of(&book);
        prop_assert!(near(house.brew.leaf, stated.leaf));
        let relative = LEAF_BULK_DENSITY.u / LEAF_BULK_DENSITY.value;
        prop_assert!(house.brew.leaf_u >= relative * house.brew.leaf * 0.999, "{house:?}");
        let sure = |stated: Stated| {
            let balance = balance_of(&stated.shop(100.0), "drink", None);
            balance.uncertainty(Measurand::TeaSolids.slot())
        };
        let unsure = balance_of(&book, "drink", None);
        let u = unsure.uncertainty(Measurand::TeaSolids.slot());
        let solids = unsure.figures.complete(Measurand::TeaSolids).unwrap();
        prop_assert!(u > sure(stated), "{u} and {}", sure(stated));
        prop_assert!(u >= 0.5 * relative * solids, "{u} of {solids}");
    }
}

#[test]
fn a_cup_of_water_on_six_grams_is_the_brew_that_the_shop_weighed() {
    // Common practice, no source: 125 ml of water on a spoon of leaf gives about 100 ml.
    let brew = Brew {
        water: 125.0,
        leaf: 6.0,
        leaf_u: 0.0,
        caffeine_per_gram: None,
    };
    let found = brew_yield(&brew, &Infusion::Hot.usual()).unwrap();
    assert!(
        (found.ready.value - 100.0).abs() < found.ready.u * 2.0,
        "{found:?}"
    );
    // What is weighed says how much the leaf keeps back, whatever is usual.
    let stated = Stated {
        water: 125.0,
        leaf: 6.0,
        extraction: 0.26,
        ready_part: 100.0 / (125.0 + 6.0 * 0.26),
        waste_percent: 0.0,
        price_per_gram: 0.027,
        water_price: 0.0,
        caffeine: 25.0,
    };
    let house = brew_of(&stated.shop(100.0));
    assert!(
        (house.method.retention.value - 4.37).abs() < 0.01,
        "{house:?}"
    );
    assert!((house.method.steep_minutes - 6.0).abs() < 1e-9);
    let no_doubt = BrewMethod {
        retention: Uncertain::exact(house.method.retention.value),
        ..house.method
    };
    let by_weight = brew_yield(&house.brew, &no_doubt).unwrap();
    assert!(near(by_weight.ready.value, 100.0));
}

/// Who makes a batch reads on its card how long the leaf steeps, where somebody says so.
#[test]
fn the_card_of_a_batch_says_how_long_it_steeps() {
    let stated = Stated {
        water: 1000.0,
        leaf: 20.0,
        extraction: 0.26,
        ready_part: 0.9,
        waste_percent: 0.0,
        price_per_gram: 0.0,
        water_price: 0.0,
        caffeine: 20.0,
    };
    let mut book = stated.shop(100.0);
    let on_card = |book: &Book| {
        let request = CardRequest::Counter(drink("pot", None));
        markdown(&card(book, &request, &options()).unwrap())
    };
    let text = on_card(&book);
    assert!(text.contains("Steeped for 6 min and taken out"), "{text}");
    let mut tea = book.ingredient(&id("tea")).unwrap().as_ref().clone();
    if let Some(made) = &mut tea.house_made {
        made.steep_minutes = None;
    }
    book.ingredients.put(tea);
    let text = on_card(&book);
    assert!(text.contains("Steeped and taken out"), "{text}");
}
