//! What comes in: reviewed before it is taken, nothing guessed, nothing lost; and recipes that go from shop to shop.

use std::collections::BTreeMap;

use evensip::balance::{Measurand, balance_version, standard_balance};
use evensip::book::{
    Amount, Book, Carried, Change, Entry, Form, IngredientId, Line, LineId, MeasureId, Nominal,
    Nutrient, Recipe, RecipeId,
};
use evensip::book_file;
use evensip::cards::{CardOptions, json_ld};
use evensip::edit::{Edit, apply};
use evensip::exchange::{
    Becomes, DecimalSign, DecimalSigns, Delimiter, FieldChange, ForeignEntry, ForeignRecipe,
    Household, JsonLdError, ListChoices, MappedTo, NoGrams, Outcome, ReadRecipe,
    RecipeExchangeError, RecipeQuestion, Review, ReviewLine, Skip, Span, UnclearAmount,
    WrittenAmount, WrittenArrival, arrival, edits_of, guess_mapping, propose_mappings,
    read_json_ld, read_recipe, read_table, review_price_list, write_recipe,
};
use evensip::quantity::{NumberError, PackUnit};
use evensip::say::Speaker;

use crate::cards::drink;
use crate::sample::sample;

fn review_of(book: &Book, text: &str, sign: DecimalSign) -> Review {
    let table = read_table(text.as_bytes(), None, None).unwrap();
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, Some(sign));
    review_price_list(
        book,
        &table,
        &mapping,
        &signs,
        &ListChoices::of_day("2026-11-25"),
    )
}

fn arrive(read: &ReadRecipe, book: &Book) -> WrittenArrival {
    let speaker = Speaker::new(book);
    let (name, nothing) = (speaker.read_recipe_name(read), BTreeMap::new());
    let arrival = read.arrive(book, &name, &nothing, &|new| speaker.new_measure(new));
    arrival.unwrap()
}

fn chestnut(book: &Book) -> IngredientId {
    book.ingredients
        .iter()
        .find(|item| item.full_name() == "Tambrel chestnut powder")
        .unwrap()
        .id
        .clone()
}

/// A thousandth or a whole: what "mg/100 g" means decides by a factor of a thousand.
#[test]
fn figures_are_read_in_the_unit_and_for_the_amount_that_cell_or_heading_state() {
    let book = sample();
    let text = "name;form;sodium mg/100 g;fat (g/100 g);sugars per 100 ml;energy;caffeine (mg/100g);price;pack\n\
        Plum powder;powder;30;3;12;400 O;12;8,5O;1 kg\n\
        Fig powder;powder;30 mg/100 g;3 g/100 g;12 g;100 kcal/100 g;12;8,50 €;1 kg\n";
    let review = review_of(&book, text, DecimalSign::Comma);
    let [plum, fig] = [0, 1].map(|at| match &review.lines[at].outcome {
        Outcome::New(item) => item.as_ref().clone(),
        other => panic!("{other:?}"),
    });
    for item in [&plum, &fig] {
        let of = |nutrient| item.composition.get(nutrient).map(|figure| figure.value);
        // Salt is sodium × 2.5 (Regulation (EU) 1169/2011, Annex I): 30 mg are 0.075 g.
        assert!((of(Nutrient::Salt).unwrap() - 0.075).abs() < 1e-9);
        assert!((of(Nutrient::Fat).unwrap() - 3.0).abs() < 1e-9);
        assert!((of(Nutrient::Caffeine).unwrap() - 12.0).abs() < 1e-9);
        assert_eq!(of(Nutrient::Sugars), None, "per 100 ml is not per 100 g");
    }
    assert!(plum.composition.get(Nutrient::Energy).is_none());
    let energy = fig.composition.get(Nutrient::Energy).unwrap().value;
    assert!((energy - 418.4).abs() < 1e-9);
    assert!(plum.price.is_none(), "an O is no zero");
    assert!((fig.price.as_ref().unwrap().pack - 8.5).abs() < 1e-9);
    let doubts = doubts_of(&review.lines[0]);
    for said in ["per 100 ml", "use kJ or kcal", "is it a digit?"] {
        assert!(doubts.contains(said), "{doubts}");
    }
}

#[test]
fn a_price_list_with_decimal_commas_is_reviewed_as_new_changed_same_and_skipped() {
    let book = sample();
    let text = "Bezeichnung;Marke;Preis (€);Gebinde;Fett (g);Zucker (g)\n\
                chestnut powder;Tambrel;21,50;1 kg;;\n\
                Plum powder;Velm;1.234,50;2,5 kg;3,2;61,5\n\
                Plum powder;Velm;9,00;1 kg;;\n\
                ;Velm;9,00;1 kg;;\n";
    let review = review_of(&book, text, DecimalSign::Comma);
    assert_eq!(review.counts(), [1, 1, 0, 2], "{review:?}");
    let Outcome::Changed {
        ingredient,
        changes,
    } = &review.lines[0].outcome
    else {
        panic!("{:?}", review.lines[0])
    };
    let price = ingredient.price.as_ref().unwrap();
    assert!((price.pack - 21.5).abs() < 1e-9 && (price.content.whole() - 1000.0).abs() < 1e-9);
    assert_eq!(price.date.as_deref(), Some("2026-11-25"));
    assert!(
        changes
            .iter()
            .any(|change| matches!(change, FieldChange::Price { .. })),
        "{changes:?}"
    );
    // An empty cell states nothing: what the book knew stays.
    let before = book.ingredient(&chestnut(&book)).unwrap();
    assert_eq!(ingredient.composition, before.composition);
    let Outcome::New(new) = &review.lines[1].outcome else {
        panic!("{:?}", review.lines[1])
    };
    assert!((new.price.as_ref().unwrap().pack - 1234.5).abs() < 1e-9);
    assert!((new.price.as_ref().unwrap().content.whole() - 2500.0).abs() < 1e-9);
    assert!((new.composition.get(Nutrient::Sugars).unwrap().value - 61.5).abs() < 1e-9);
    assert_eq!(
        new.composition.get(Nutrient::Protein),
        None,
        "not stated is not zero"
    );
    assert_eq!(new.allergens, None);
    for (at, why) in [(2, Skip::Again { before: 3 }), (3, Skip::NoName)] {
        assert_eq!(review.lines[at].outcome, Outcome::Skipped(why));
    }
}

#[test]
fn nothing_is_taken_but_what_is_accepted_and_that_in_one_step() {
    let book = sample();
    let text = "name,brand,price,pack,fat (g)\nPlum powder,Velm,9.50,1 kg,3\nFig powder,Velm,8.50,1 kg,2\n";
    let review = review_of(&book, text, DecimalSign::Point);
    assert_eq!(review.counts(), [2, 0, 0, 0]);
    assert_eq!(edits_of(&book, &review, |_| false).unwrap(), None);
    let edit = edits_of(&book, &review, |at| at == 1).unwrap().unwrap();
    let after = apply(&book, &edit).unwrap();
    assert_eq!(after.ingredients.len(), book.ingredients.len() + 1);
    assert!(
        after
            .ingredients
            .iter()
            .any(|item| item.name == "Fig powder")
    );
    assert!(
        !after
            .ingredients
            .iter()
            .any(|item| item.name == "Plum powder")
    );
    // The same list again changes nothing.
    let again = review_of(&after, text, DecimalSign::Point);
    assert_eq!(
        again.lines[1].outcome,
        Outcome::Same,
        "{:?}",
        again.lines[1]
    );
}

#[test]
fn what_can_not_be_read_is_said_cell_by_cell_and_left_out() {
    let book = sample();
    let text = "name,brand,price,pack,fat,sugars,sodium (mg),energy kcal,caffeine,form\n\
                Plum powder,Velm,cheap,10,<0.5,120,400,100,5,dust\n";
    let review = review_of(&book, text, DecimalSign::Point);
    let line = &review.lines[0];
    let Outcome::New(new) = &line.outcome else {
        panic!("{line:?}")
    };
    let doubts = doubts_of(line);
    for says in [
        "cheap",
        "no unit",
        "a bound",
        "more than 100 g",
        "mg or g",
        "not a form: enter liquid",
    ] {
        assert!(doubts.contains(says), "{says}: {doubts}");
    }
    assert_eq!(new.price, None);
    assert_eq!(new.composition.get(Nutrient::Fat), None);
    assert_eq!(new.composition.get(Nutrient::Sugars), None);
    // 400 mg of sodium are 1 g of salt; 100 kcal are 418.4 kJ.
    assert!((new.composition.get(Nutrient::Salt).unwrap().value - 1.0).abs() < 1e-9);
    assert!((new.composition.get(Nutrient::Energy).unwrap().value - 418.4).abs() < 1e-9);
}

#[test]
fn the_delimiter_can_be_set_and_a_table_without_a_name_is_skipped_with_a_reason() {
    let book = sample();
    let table = read_table(b"a|b\n1|2\n", Some(Delimiter::Bar), None).unwrap();
    let review = review_price_list(
        &book,
        &table,
        &guess_mapping(&table.headings),
        &DecimalSigns::default(),
        &ListChoices::default(),
    );
    let Outcome::Skipped(reason) = &review.lines[0].outcome else {
        panic!("{review:?}")
    };
    assert_eq!(*reason, Skip::NoNameColumn);
}

fn doubts_of(line: &ReviewLine) -> String {
    let speaker = Speaker::without_book();
    let doubts: Vec<String> = line
        .doubts
        .iter()
        .map(|doubt| speaker.doubt(doubt))
        .collect();
    doubts.join("; ")
}

/// What a list says without being told how it writes its numbers.
fn told(text: &str) -> Review {
    let table = read_table(text.as_bytes(), None, None).unwrap();
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, None);
    review_price_list(
        &Book::default(),
        &table,
        &mapping,
        &signs,
        &ListChoices {
            form: Some(Form::Powder),
            ..ListChoices::default()
        },
    )
}

fn new_one(review: &Review, at: usize) -> &evensip::book::Ingredient {
    match &review.lines[at].outcome {
        Outcome::New(new) => new,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_thousand_or_one_is_told_by_the_column_by_the_list_or_is_asked() {
    let pack = |review: &Review, at| new_one(review, at).price.as_ref().map(|price| price.pack);
    // The price of another row has a decimal comma.
    let by_column = told("name;price;pack\nPlum;1.250;1 kg\nFig;12,50;1 kg\n");
    assert_eq!(pack(&by_column, 0), Some(1250.0));
    // So has another column.
    let by_list = told("name;price;pack;fat\nPlum;1.250;1 kg;3,25\n");
    assert_eq!(pack(&by_list, 0), Some(1250.0));
    // A column tells more of its numbers than the rest of the list.
    let both = told("name;price;pack;fat\nPlum;1,250;1 kg;3,25\nFig;8.50;1 kg;2,5\n");
    assert_eq!(pack(&both, 0), Some(1250.0));
    assert!(
        (new_one(&both, 0)
            .composition
            .get(Nutrient::Fat)
            .unwrap()
            .value
            - 3.25)
            .abs()
            < 1e-9
    );
    for text in [
        "name;price;pack\nPlum;1.250;1 kg\n",
        "name;price;pack\nPlum;9;1.250 g\n",
        // The rows contradict each other.
        "name;price;pack\nPlum;1.250;1 kg\nFig;12,50;1 kg\nLime;12.50;1 kg\n",
    ] {
        let asked = told(text);
        assert_eq!(pack(&asked, 0), None, "{text}");
        let doubts = doubts_of(&asked.lines[0]);
        assert!(doubts.contains("1250 or 1.2500?"), "{doubts}");
    }
}

#[test]
fn packs_are_read_in_ounces_and_pounds() {
    let review = told(
        "name,density,price,pack\nPlum,,9.50,2 lb\nFig,,9.50,8 oz\nLime,1.25,9.50,10 fl oz\n\
         Pear,,9.50,10 fl oz\n",
    );
    let content = |at: usize| new_one(&review, at).price.as_ref().unwrap().content;
    let ten_ounces = 295.735_295_625;
    for (at, expected, unit) in [
        (0, 907.184_74, PackUnit::Grams),
        (1, 226.796_185, PackUnit::Grams),
        (2, ten_ounces, PackUnit::Millilitres),
        (3, ten_ounces, PackUnit::Millilitres),
    ] {
        let content = content(at);
        assert!((content.whole() - expected).abs() < 1e-6, "{content:?}");
        assert_eq!(content.unit, unit);
    }
}

#[test]
fn an_amount_that_may_be_two_things_is_asked_and_not_guessed() {
    let text = r#"{"@type": "Recipe", "name": "Plum", "recipeIngredient":
        ["1,000 ml milk", "2 500 g plums", "1.5 l water", "7,25 g salt", "1 1/2 l tea"]}"#;
    let read = read_json_ld(text).unwrap();
    let arrived = arrive(&read, &Book::default());
    let amounts: Vec<Option<f64>> = arrived
        .lines
        .iter()
        .map(|line| match &line.becomes {
            Becomes::Line { amount, .. } => amount.number(),
            _ => None,
        })
        .collect();
    assert_eq!(
        amounts,
        [None, None, Some(1500.0), Some(7.25), Some(1500.0)]
    );
    let questions = arrived.lines.into_iter().flat_map(|line| line.questions);
    let asked = questions.filter_map(|one| match one {
        RecipeQuestion::UnclearAmount(why) => Some(why),
        _ => None,
    });
    let number = NumberError::Ambiguous {
        found: "1,000".to_owned(),
        thousands: "1000".to_owned(),
        decimals: "1.0000".to_owned(),
    };
    let two = UnclearAmount::TwoCounts {
        first: "2".to_owned(),
        second: "500".to_owned(),
    };
    let asked: Vec<UnclearAmount> = asked.collect();
    assert_eq!(asked, [UnclearAmount::Number(number), two]);
}

#[test]
fn a_recipe_in_json_ld_comes_back_with_its_grams_and_sentences() {
    let book = sample();
    let ember = drink("hob-and-ember", None);
    let written = json_ld(&book, &ember, &CardOptions::default()).unwrap();
    let read = read_json_ld(&written.value.to_string()).unwrap();
    let recipe = book.recipe(&ember.recipe).unwrap();
    let balance = balance_version(&book, recipe, None).unwrap();
    assert_eq!(read.name, recipe.name);
    let lines: Vec<_> = balance.resolved.lines().collect();
    assert_eq!(read.ingredients.len(), lines.len());
    for (ingredient, line) in read.ingredients.iter().zip(&lines) {
        assert_eq!(
            ingredient.full_name,
            book.ingredient(&line.ingredient).unwrap().full_name()
        );
        let share = balance
            .lines
            .iter()
            .find(|share| share.line == line.id && !share.carried);
        let grams = share.unwrap().grams.unwrap();
        match &ingredient.amount {
            WrittenAmount::Grams(read) => assert!(
                (read.middle() - grams).abs() <= grams * 0.05 + 0.5,
                "{ingredient:?}: {grams}"
            ),
            other => panic!("{other:?}"),
        }
    }
    for entry in &balance.resolved.entries {
        if let Entry::Instruction(instruction) = entry {
            assert!(read.instructions.contains(&instruction.text));
        }
    }
    // Taken over, it is a draft whose ingredients are those of the book.
    let arrived = arrive(&read, &book);
    let after = apply(&book, &arrived.edit).unwrap();
    assert_eq!(after.ingredients.len(), book.ingredients.len());
    let new = after.recipes.iter().last().unwrap();
    assert_eq!(new.name, recipe.name);
    let questions = arrived.lines.iter().flat_map(|line| &line.questions);
    assert_eq!(questions.count(), 0);
    let taken = balance_version(&after, new, None).unwrap();
    let mass = |balance: &evensip::balance::Balance| balance.figures.get(Measurand::Mass).unwrap();
    assert!((mass(&taken) / mass(&balance) - 1.0).abs() < 0.02);
}

#[test]
fn json_ld_of_others_is_read_in_its_many_shapes() {
    let text = r#"{"@context":"https://schema.org","@graph":[{"@type":"WebPage"},{"@type":["Recipe","Thing"],"name":"Plum cooler",
        "recipeIngredient":["200 ml of plum juice","1/2 l water","a pinch of love"],
        "recipeInstructions":[{"@type":"HowToSection","itemListElement":[{"@type":"HowToStep","text":"Stir."}]},"Serve."],
        "cookTime":"PT5M","nutrition":{"@type":"NutritionInformation","calories":"90 kcal"}}]}"#;
    let read = read_json_ld(text).unwrap();
    assert_eq!(read.name, "Plum cooler");
    let millilitres = |number| WrittenAmount::Millilitres(Span::of(number));
    assert_eq!(read.ingredients[0].amount, millilitres(200.0));
    assert_eq!(read.ingredients[0].name, "plum juice");
    assert_eq!(read.ingredients[1].amount, millilitres(500.0));
    let pinch = WrittenAmount::Household {
        count: Span::of(1.0),
        of: Household::Pinch,
        is_heaped: false,
    };
    assert_eq!(read.ingredients[2].amount, pinch);
    assert_eq!(read.instructions, ["Stir.", "Serve."]);
    assert_eq!(
        read.nutrition,
        [("calories".to_owned(), "90 kcal".to_owned())]
    );
    assert_eq!(read.left_out, ["cookTime: PT5M"]);
    let arrived = arrive(&read, &Book::default());
    let book = apply(&Book::default(), &arrived.edit).unwrap();
    assert_eq!(book.ingredients.len(), 3);
    let household = RecipeQuestion::Household(Household::Pinch);
    assert!(arrived.lines[2].questions.contains(&household));
    // What nobody has stated is not known, and not nothing.
    let recipe = book.recipes.iter().next().unwrap();
    let balance = balance_version(&book, recipe, None).unwrap();
    assert!(balance.figures.complete(Measurand::TotalSugar).is_none());
    for (text, error) in [
        ("no json", JsonLdError::NotJson { line: 1, column: 2 }),
        ("{\"@type\":\"Person\"}", JsonLdError::NoRecipe),
    ] {
        assert_eq!(read_json_ld(text), Err(error));
    }
}

#[test]
fn nothing_of_a_recipe_in_parts_is_dropped_in_silence() {
    let text = r#"{"@type":"Recipe","name":"Plum cooler",
        "recipeIngredient":[["200 ml plum juice","1 g salt"],{"@type":"HowToItem","text":"2 g tea"},{"@value":"3 g figs"},
            {"amount":{"value":3}},true,null," ","1 cup\n  water"],
        "recipeInstructions":[{"@type":"HowToSection","name":"For the tea","itemListElement":[
            {"@type":"HowToStep","name":"Steep","text":"Pour on the water."},{"@type":"HowToStep","name":"Stir…","text":"Stir it well."}]}]}"#;
    let read = read_json_ld(text).unwrap();
    let texts: Vec<&str> = read
        .ingredients
        .iter()
        .map(|line| line.text.as_str())
        .collect();
    assert_eq!(
        texts,
        [
            "200 ml plum juice",
            "1 g salt",
            "2 g tea",
            "3 g figs",
            "1 cup   water"
        ]
    );
    assert_eq!(read.ingredients[4].name, "water");
    assert_eq!(read.left_out, [r#"{"amount":{"value":3}}"#, "true"]);
    assert_eq!(
        read.instructions,
        [
            "For the tea",
            "Steep",
            "Pour on the water.",
            "Stir it well."
        ]
    );
}

#[test]
fn a_recipe_for_another_shop_is_a_book_of_grams_without_measures_and_prices() {
    let book = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let passed = write_recipe(&book, &id, None).unwrap();
    let text = book_file::write(&passed);
    let (passed, _) = book_file::parse(&text).unwrap();
    assert_eq!(passed.measures.len(), 0);
    assert!(
        passed
            .ingredients
            .iter()
            .all(|item| item.price.is_none() && item.supplier.is_empty())
    );
    let recipe = passed.recipe(&id).unwrap();
    for line in recipe.plain().lines() {
        assert!(matches!(line.amount, Amount::Grams(_)), "{line:?}");
    }
    // It is the same drink.
    let ours = book.recipe(&id).unwrap();
    let (before, _) = standard_balance(&book, ours, None).unwrap();
    let (after, _) = standard_balance(&passed, recipe, None).unwrap();
    for measurand in [
        Measurand::Mass,
        Measurand::TotalSugar,
        Measurand::Sweetness,
        Measurand::ServingTemperature,
    ] {
        let (one, two) = (
            before.figures.get(measurand).unwrap(),
            after.figures.get(measurand).unwrap(),
        );
        assert!(
            (one - two).abs() < 0.02 * one.abs() + 0.05,
            "{}: {one} {two}",
            measurand.key()
        );
    }
    let draft = book
        .recipes
        .iter()
        .find(|recipe| recipe.approvals.is_empty())
        .unwrap();
    assert!(matches!(
        write_recipe(&book, &draft.id, None),
        Err(RecipeExchangeError::NotApproved(_))
    ));
}

/// The sample as another shop: nothing of the flavour of the drink but another brand of it.
fn other_shop() -> Book {
    let book = sample();
    let mut other = book.clone();
    "Quenby".clone_into(&mut other.settings.shop);
    other.ingredients.remove(&chestnut(&book));
    other.recipes = evensip::book::Shelf::default();
    other
}

#[test]
fn a_recipe_that_comes_in_is_re_expressed_and_brought_back_by_the_search() {
    let home = sample();
    let id = home
        .recipes
        .iter()
        .find(|recipe| {
            !recipe.approvals.is_empty()
                && recipe
                    .approvals
                    .last()
                    .unwrap()
                    .resolved
                    .lines()
                    .any(|line| line.ingredient == chestnut(&home))
        })
        .unwrap()
        .id
        .clone();
    let foreign = read_recipe(write_recipe(&home, &id, None).unwrap()).unwrap();
    let other = other_shop();
    let mappings = propose_mappings(&other, &foreign);
    assert_eq!(mappings.len(), foreign.lines.len());
    let powder = mappings
        .iter()
        .find(|mapping| mapping.foreign.name == "Tambrel chestnut powder")
        .unwrap();
    let MappedTo::Ours(ours) = &powder.to else {
        panic!("{powder:?}")
    };
    assert!(
        other
            .ingredient(ours)
            .unwrap()
            .full_name()
            .to_lowercase()
            .contains("chestnut"),
        "{ours}"
    );
    let arrived = arrival(&other, &foreign, &mappings).unwrap();
    assert!(arrived.added.is_empty(), "{:?}", arrived.added);
    let line = arrived
        .recipe
        .entries
        .iter()
        .filter_map(Entry::line)
        .find(|line| line.ingredient == *ours)
        .unwrap();
    assert!(
        matches!(line.amount, Amount::Count(..)),
        "in this shop's own measure: {line:?}"
    );
    let (plain, back) = (
        arrived.plain.distance.unwrap(),
        arrived.difference.distance.unwrap(),
    );
    assert!(back <= plain + 1e-9, "{plain} then {back}");
    // Accepting it is one step; the book stays well formed.
    let note = Speaker::new(&other).arrival_note(&arrived);
    let edit = arrived.edit(&other, note).unwrap();
    assert!(matches!(edit, Edit::PutBook { .. }));
    let after = apply(&other, &edit).unwrap();
    let new = after.recipe(&arrived.recipe.id).unwrap();
    assert!(new.approvals.is_empty() && new.note.contains("approved there"));
    // What was wrong with the other book before is no business of the recipe.
    let errors = |book: &Book| {
        evensip::book::findings(book)
            .into_iter()
            .filter(|finding| finding.severity == evensip::book::Severity::Error)
            .collect::<Vec<_>>()
    };
    assert_eq!(errors(&after), errors(&other));
}

#[test]
fn what_no_shelf_has_is_added_with_its_composition() {
    let home = sample();
    let id = RecipeId::new("hob-and-ember").unwrap();
    let foreign = read_recipe(write_recipe(&home, &id, None).unwrap()).unwrap();
    let empty = Book::default();
    let mappings = propose_mappings(&empty, &foreign);
    assert!(mappings.iter().all(|mapping| mapping.to == MappedTo::Added));
    let arrived = arrival(&empty, &foreign, &mappings).unwrap();
    assert_eq!(arrived.added.len(), foreign.lines.len());
    let after = apply(&empty, &arrived.edit(&empty, String::new()).unwrap()).unwrap();
    let balance = balance_version(&after, after.recipe(&arrived.recipe.id).unwrap(), None).unwrap();
    assert!(balance.figures.get(Measurand::TotalSugar).unwrap() > 0.0);
    assert!(matches!(
        read_recipe(Book::default()),
        Err(RecipeExchangeError::NotOneRecipe(0))
    ));
}

/// A book of whose drinks only one is left, approved as it stands, with its own measures.
fn with_one_drink(book: &Book, id: &RecipeId) -> Book {
    let mut one = book.clone();
    for recipe in &book.recipes {
        if recipe.cup.is_some() && recipe.id != *id {
            one.recipes.remove(&recipe.id);
        }
    }
    approved_as_it_stands(&one, id)
}

fn approved_as_it_stands(book: &Book, id: &RecipeId) -> Book {
    let recipe = book.recipe(id).unwrap();
    let approval = evensip::book::Approval {
        version: None,
        date: "2026-05-04".into(),
        by: "Ida".into(),
        reason: String::new(),
        tasted_at: None,
        resolved: recipe.plain(),
        tasted_with: None,
    };
    let edit = Edit::Approve {
        recipe: id.clone(),
        approval,
    };
    apply(book, &edit).unwrap()
}

fn grams_there(foreign: &ForeignRecipe) -> Vec<(Line, f64)> {
    let lines = foreign.entries.iter().filter_map(|entry| match entry {
        ForeignEntry::Line(line, grams) => Some((line.clone(), grams.value())),
        ForeignEntry::Instruction(_) => None,
    });
    lines.collect()
}

/// Two scoops weigh what two scoops weigh there, whatever a scoop of ours holds.
#[test]
fn counts_and_millilitres_are_weighed_as_the_other_shop_weighs_them() {
    let home = sample();
    let first_steps = book_file::parse(include_str!("../../sample-books/first-steps.ron"))
        .unwrap()
        .0;
    let mut taken = 0;
    for book in [&home, &first_steps] {
        // Our own measures hold twice as much, under the same ids.
        let mut doubled = book.clone();
        for measure in &book.measures {
            let mut larger = measure.as_ref().clone();
            for reading in &mut larger.readings {
                reading.amount = reading.amount.with_number(2.0 * reading.amount.number());
            }
            doubled.measures.put(larger);
        }
        for recipe in book.recipes.iter().filter(|recipe| recipe.cup.is_some()) {
            let foreign = match read_recipe(with_one_drink(book, &recipe.id)) {
                Ok(foreign) => foreign,
                Err(RecipeExchangeError::NotInGrams { lines, .. }) => {
                    assert!(!lines.is_empty());
                    continue;
                }
                Err(error) => panic!("{}: {error:?}", recipe.id),
            };
            taken += 1;
            let there = balance_version(book, recipe, None).unwrap();
            for (line, grams) in grams_there(&foreign) {
                let is_share =
                    |share: &&evensip::balance::LineShare| share.line == line.id && !share.carried;
                let share = there.lines.iter().find(is_share).unwrap();
                assert!((share.grams.unwrap() - grams).abs() < 1e-9, "{}", line.id);
            }
            let mappings = propose_mappings(&doubled, &foreign);
            let arrived = arrival(&doubled, &foreign, &mappings).unwrap();
            let here = {
                let after =
                    apply(&doubled, &arrived.edit(&doubled, String::new()).unwrap()).unwrap();
                balance_version(&after, after.recipe(&arrived.recipe.id).unwrap(), None).unwrap()
            };
            for (line, grams) in grams_there(&foreign) {
                if arrived.moves.iter().any(|moved| moved.line == line.id) {
                    continue;
                }
                let share = here
                    .lines
                    .iter()
                    .find(|share| share.line == line.id && !share.carried)
                    .unwrap();
                let (found, count) = (share.grams.unwrap(), share.count);
                let step = match &arrived.line(&line.id).unwrap().amount {
                    Amount::Count(_, measure) => doubled.measure(measure).unwrap().step(),
                    Amount::Millilitres(_) => 5.0,
                    _ => 1.0,
                };
                let one_step = found / count * step;
                // Half a step off at most, or one step where that is more than there is.
                assert!(
                    (found - grams).abs() <= one_step / 2.0 + 1e-6 || grams < one_step,
                    "{} of {}: {found} g instead of {grams} g",
                    line.id,
                    recipe.id
                );
            }
        }
    }
    assert!(taken >= 5, "{taken}");
}

fn first_steps_drink() -> (Book, RecipeId) {
    let book = book_file::parse(include_str!("../../sample-books/first-steps.ron"))
        .unwrap()
        .0;
    let recipe = book.recipes.iter().find(|recipe| recipe.cup.is_some());
    let id = recipe.unwrap().id.clone();
    (book, id)
}

/// The drink with one line changed, and what is said of it.
fn refused(change: impl FnOnce(&mut Book, &mut Recipe)) -> (Vec<NoGrams>, String) {
    let (mut book, id) = first_steps_drink();
    let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
    change(&mut book, &mut recipe);
    book.recipes.put(recipe);
    let error = read_recipe(with_one_drink(&book, &id)).unwrap_err();
    let text = Speaker::new(&book).recipe_exchange_error(&error);
    let RecipeExchangeError::NotInGrams { lines, .. } = error else {
        panic!("{text}")
    };
    (lines.into_iter().map(|line| line.why).collect(), text)
}

fn counted_line(recipe: &Recipe) -> (LineId, IngredientId, MeasureId) {
    recipe
        .entries
        .iter()
        .filter_map(Entry::line)
        .find_map(|line| match &line.amount {
            Amount::Count(_, measure) => {
                Some((line.id.clone(), line.ingredient.clone(), measure.clone()))
            }
            _ => None,
        })
        .unwrap()
}

fn set_amount(recipe: &mut Recipe, line: &LineId, amount: Amount) {
    evensip::book::put_change(recipe, None, &Change::Amount(line.clone(), amount)).unwrap();
}

#[test]
fn what_can_not_be_weighed_is_refused_with_its_line_and_what_to_do() {
    for fill in [Amount::FillToRim, Amount::FillTo(300.0)] {
        let (why, text) = refused(|_, recipe| {
            let (line, ..) = counted_line(recipe);
            set_amount(recipe, &line, fill);
        });
        assert_eq!(why, [NoGrams::Fills]);
        assert!(text.contains("Recipe for another shop"), "{text}");
    }
    let (why, text) = refused(|book, recipe| {
        let (line, _, measure) = counted_line(recipe);
        book.measures.remove(&measure);
        assert!(recipe.entries.iter().any(|entry| *entry.id() == line));
    });
    assert!(why.contains(&NoGrams::NoMeasure), "{text}");
    // Called to hold 5 ml, and weighed by nobody: a guess is no weight.
    let (why, _) = refused(|book, recipe| {
        let (_, _, measure) = counted_line(recipe);
        let mut unweighed = book.measure(&measure).unwrap().as_ref().clone();
        unweighed.readings.clear();
        unweighed.nominal = Some(Nominal::Volume(5.0));
        book.measures.put(unweighed);
    });
    assert!(why.contains(&NoGrams::NotWeighed));
    let (why, _) = refused(|book, recipe| {
        let (line, ingredient, _) = counted_line(recipe);
        let mut powder = book.ingredient(&ingredient).unwrap().as_ref().clone();
        powder.form = evensip::book::Form::Powder;
        powder.bulk_density = None;
        book.ingredients.put(powder);
        set_amount(recipe, &line, Amount::Millilitres(10.0));
    });
    assert_eq!(why, [NoGrams::NoDensity]);
    let (why, _) = refused(|_, recipe| {
        let (line, ..) = counted_line(recipe);
        set_amount(recipe, &line, Amount::Grams(-1.0));
    });
    assert_eq!(why, [NoGrams::NoAmount]);
}

#[test]
fn the_approved_lines_are_taken_over_with_their_syrups_and_nothing_stays_nothing() {
    let (book, id) = first_steps_drink();
    let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
    let (line, ingredient, measure) = counted_line(&recipe);
    set_amount(&mut recipe, &line, Amount::Count(0.0, measure));
    let other = recipe
        .entries
        .iter()
        .filter_map(Entry::line)
        .find(|other| other.id != line)
        .unwrap()
        .id
        .clone();
    let carried = Carried {
        ingredient,
        grams: 12.5,
    };
    let comes_along = Change::Carried(other.clone(), Some(carried.clone()));
    evensip::book::put_change(&mut recipe, None, &comes_along).unwrap();
    let mut with_recipe = book.clone();
    with_recipe.recipes.put(recipe.clone());
    let approved = with_one_drink(&with_recipe, &id);
    // What was changed since the approval is the other shop's draft.
    let mut changed = approved.recipe(&id).unwrap().as_ref().clone();
    set_amount(&mut changed, &other, Amount::Grams(999.0));
    changed.entries.truncate(2);
    let mut later = approved.clone();
    later.recipes.put(changed);
    let foreign = read_recipe(later).unwrap();
    assert_eq!(
        grams_there(&foreign),
        grams_there(&read_recipe(approved).unwrap())
    );
    let mappings = propose_mappings(&book, &foreign);
    let arrived = arrival(&book, &foreign, &mappings).unwrap();
    let lines = recipe.entries.iter().filter_map(Entry::line).count();
    assert_eq!(
        arrived
            .recipe
            .entries
            .iter()
            .filter_map(Entry::line)
            .count(),
        lines
    );
    assert_eq!(arrived.line(&other).unwrap().carried, Some(carried));
    let nothing = arrived.line(&line).unwrap();
    let is_sweetener = nothing.role == evensip::book::Role::Sweetener;
    assert!(
        nothing.amount.number() == Some(0.0) || is_sweetener,
        "{nothing:?}"
    );
}
