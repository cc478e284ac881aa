//! Ingredients of recipes as people write them, in English and German: each comes in as a line with its amount, or says why not.

use std::collections::BTreeMap;

use evensip::balance::{Measurand, balance_version};
use evensip::book::{
    Amount, Book, Entry, Form, Ingredient, IngredientId, Measure, MeasureId, MeasureKind, Nominal,
    Role, Stage, Temperature,
};
use evensip::edit::apply;
use evensip::exchange::{
    Becomes, Household, ReadRecipe, RecipeQuestion, RowMatch, Span, UnclearAmount, WrittenAmount,
    WrittenArrival, read_json_ld, read_line,
};
use evensip::say::{Language, Speaker};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::fuzz_laws::new_errors;
use crate::sample::sample;

/// What a sentence asks for, in few words.
#[derive(Clone, Copy, Debug)]
enum Asks {
    G(f64),
    Ml(f64),
    /// From and to.
    MlRange(f64, f64),
    Spoons(f64, Household),
    Heaped(f64, Household),
    /// From and to.
    SpoonRange(f64, f64, Household),
    Pieces(f64, &'static str),
    Fill,
    Nothing,
}

use Asks::{Fill, G, Heaped, Ml, MlRange, Nothing, Pieces, SpoonRange, Spoons};
use Household::{Cup, Dash, KnifeTip, Pinch, Splash, Tablespoon, Tasse, Teaspoon};

const OUNCE: f64 = 28.349_523_125;

const LINES: &[(&str, Asks, &str)] = &[
    // The eight of the desk.
    ("2 Tbsp honey", Spoons(2.0, Tablespoon), "honey"),
    ("½ cup plum purée", Spoons(0.5, Cup), "plum purée"),
    ("1 cup (240 ml) tea", Ml(240.0), "tea"),
    (
        "1 (14 oz) can coconut cream",
        G(14.0 * OUNCE),
        "coconut cream",
    ),
    ("200–250 ml oat drink", MlRange(200.0, 250.0), "oat drink"),
    ("ice to fill", Fill, "ice"),
    ("a pinch of salt", Spoons(1.0, Pinch), "salt"),
    (
        "1 1/2 cups black tea, chilled",
        Spoons(1.5, Cup),
        "black tea",
    ),
    // English.
    (
        "1½ tsp roasted barley powder",
        Spoons(1.5, Teaspoon),
        "roasted barley powder",
    ),
    (
        "1 ½ tablespoons quince syrup",
        Spoons(1.5, Tablespoon),
        "quince syrup",
    ),
    (
        "2-3 Tbsp. quince syrup",
        SpoonRange(2.0, 3.0, Tablespoon),
        "quince syrup",
    ),
    (
        "2 to 3 tablespoons maple sugar",
        SpoonRange(2.0, 3.0, Tablespoon),
        "maple sugar",
    ),
    (
        "½–1 tsp lime juice",
        SpoonRange(0.5, 1.0, Teaspoon),
        "lime juice",
    ),
    ("about 200 ml water", Ml(200.0), "water"),
    ("c. 200 ml water", Ml(200.0), "water"),
    (
        "2 to c. 3 tablespoons honey",
        SpoonRange(2.0, 3.0, Tablespoon),
        "honey",
    ),
    ("1 c. milk", Spoons(1.0, Cup), "milk"),
    ("2 c milk", Spoons(2.0, Cup), "milk"),
    ("vitamin C 200 mg", G(0.2), "vitamin C"),
    ("~150ml milk", Ml(150.0), "milk"),
    (
        "1/4 teaspoon ground cinnamon",
        Spoons(0.25, Teaspoon),
        "ground cinnamon",
    ),
    ("1⁄2 cup tea", Spoons(0.5, Cup), "tea"),
    ("¾ cup milk (any kind)", Spoons(0.75, Cup), "milk"),
    (
        "2 heaping tablespoons chestnut powder",
        Heaped(2.0, Tablespoon),
        "chestnut powder",
    ),
    ("1 level tsp salt", Spoons(1.0, Teaspoon), "salt"),
    ("half a cup of pear juice", Spoons(0.5, Cup), "pear juice"),
    ("one cup water", Spoons(1.0, Cup), "water"),
    ("1 cup plus 2 tablespoons milk", Spoons(1.125, Cup), "milk"),
    ("1 cup/240 ml cream", Ml(240.0), "cream"),
    ("240 ml (1 cup) cream", Ml(240.0), "cream"),
    ("100 g (½ cup) sugar", G(100.0), "sugar"),
    (
        "1 cup (packed) brown sugar",
        Spoons(1.0, Cup),
        "brown sugar",
    ),
    ("2 (large) plums", Pieces(2.0, ""), "plums"),
    ("60 g brown sugar (packed), sifted", G(60.0), "brown sugar"),
    ("2 T honey", Spoons(2.0, Tablespoon), "honey"),
    ("1 t salt", Spoons(1.0, Teaspoon), "salt"),
    ("8 fl oz milk", Ml(8.0 * 29.573_529_562_5), "milk"),
    ("2 lb plums", G(2.0 * 453.592_37), "plums"),
    ("1 quart milk", Ml(32.0 * 29.573_529_562_5), "milk"),
    ("½ gallon of water", Ml(64.0 * 29.573_529_562_5), "water"),
    (
        "1 14-oz can coconut cream",
        G(14.0 * OUNCE),
        "coconut cream",
    ),
    ("1 can (400 ml) coconut cream", Ml(400.0), "coconut cream"),
    ("2 (400 ml) cans coconut cream", Ml(800.0), "coconut cream"),
    ("2 x 400 g cans of plums", G(800.0), "plums"),
    (
        "2 scoops barley powder",
        Pieces(2.0, "scoops"),
        "barley powder",
    ),
    ("4 ice cubes", Pieces(4.0, ""), "ice cubes"),
    ("1 lemon", Pieces(1.0, ""), "lemon"),
    ("2 slices of pear", Pieces(2.0, "slices"), "pear"),
    ("10–12 mint leaves", Pieces(11.0, ""), "mint leaves"),
    ("1 shot espresso", Pieces(1.0, "shot"), "espresso"),
    ("2 tea bags black tea", Pieces(2.0, "tea bags"), "black tea"),
    ("1 splash of rose water", Spoons(1.0, Splash), "rose water"),
    ("2 dashes bitters", Spoons(2.0, Dash), "bitters"),
    ("pinch of salt", Spoons(1.0, Pinch), "salt"),
    ("crushed ice, to fill the glass", Fill, "crushed ice"),
    ("top up with sparkling water", Fill, "sparkling water"),
    ("enough water to fill", Fill, "water"),
    ("Milk: 200 ml", Ml(200.0), "Milk"),
    (
        "1\u{a0}½ tablespoons honey",
        Spoons(1.5, Tablespoon),
        "honey",
    ),
    ("1\u{202f}1/2 cups tea", Spoons(1.5, Cup), "tea"),
    ("1  ½ cups tea", Spoons(1.5, Cup), "tea"),
    ("• 2 Tbsp honey", Spoons(2.0, Tablespoon), "honey"),
    ("salt to taste", Nothing, "salt to taste"),
    (
        "mint leaves for garnish",
        Nothing,
        "mint leaves for garnish",
    ),
    // German.
    ("3 EL Quittensirup", Spoons(3.0, Tablespoon), "Quittensirup"),
    ("1 ½ EL Honig", Spoons(1.5, Tablespoon), "Honig"),
    (
        "1 bis 2 EL Sirup",
        SpoonRange(1.0, 2.0, Tablespoon),
        "Sirup",
    ),
    ("½ TL Zimt", Spoons(0.5, Teaspoon), "Zimt"),
    ("1 gehäufter TL Kakao", Heaped(1.0, Teaspoon), "Kakao"),
    ("2 gestrichene EL Zucker", Spoons(2.0, Tablespoon), "Zucker"),
    ("1 Prise Salz", Spoons(1.0, Pinch), "Salz"),
    ("eine Prise Kardamom", Spoons(1.0, Pinch), "Kardamom"),
    ("1 Msp. Zimt", Spoons(1.0, KnifeTip), "Zimt"),
    ("ein Schuss Rosenwasser", Spoons(1.0, Splash), "Rosenwasser"),
    ("1 Tasse (200 ml) Schwarztee", Ml(200.0), "Schwarztee"),
    ("eine halbe Tasse Milch", Spoons(0.5, Tasse), "Milch"),
    ("zwei Tassen Wasser", Spoons(2.0, Tasse), "Wasser"),
    ("ca. 200 ml Wasser", Ml(200.0), "Wasser"),
    ("0,5 l Milch", Ml(500.0), "Milch"),
    ("1 Dose Kokoscreme (400 ml)", Ml(400.0), "Kokoscreme"),
    ("2 Dosen (je 400 ml) Kokoscreme", Ml(800.0), "Kokoscreme"),
    ("2 x 400-g-Dosen Pflaumen", G(800.0), "Pflaumen"),
    ("1 400-ml-Dose Kokoscreme", Ml(400.0), "Kokoscreme"),
    ("1 Glas Pflaumenmus", Pieces(1.0, "Glas"), "Pflaumenmus"),
    (
        "2 Messlöffel Gerstenpulver",
        Pieces(2.0, "Messlöffel"),
        "Gerstenpulver",
    ),
    ("3 Scheiben Birne", Pieces(3.0, "Scheiben"), "Birne"),
    ("8 Eiswürfel", Pieces(8.0, ""), "Eiswürfel"),
    ("Eis zum Auffüllen", Fill, "Eis"),
    ("mit Mineralwasser auffüllen", Fill, "Mineralwasser"),
    ("Zucker 20 g", G(20.0), "Zucker"),
    ("Honig, 2 EL", Spoons(2.0, Tablespoon), "Honig"),
    ("Zucker nach Geschmack", Nothing, "Zucker nach Geschmack"),
];

fn agrees(asks: Asks, found: &WrittenAmount) -> bool {
    let is = |span: &Span, from: f64, to: f64| {
        (span.from - from).abs() < 1e-6 && (span.to - to).abs() < 1e-6
    };
    match (asks, found) {
        (G(number), WrittenAmount::Grams(span))
        | (Ml(number), WrittenAmount::Millilitres(span)) => is(span, number, number),
        (MlRange(from, to), WrittenAmount::Millilitres(span)) => is(span, from, to),
        (
            Spoons(number, wanted),
            WrittenAmount::Household {
                count,
                of,
                is_heaped: false,
            },
        )
        | (
            Heaped(number, wanted),
            WrittenAmount::Household {
                count,
                of,
                is_heaped: true,
            },
        ) => is(count, number, number) && *of == wanted,
        (
            SpoonRange(from, to, wanted),
            WrittenAmount::Household {
                count,
                of,
                is_heaped: false,
            },
        ) => is(count, from, to) && *of == wanted,
        (Pieces(number, wanted), WrittenAmount::Counted { count, word }) => {
            (count.middle() - number).abs() < 1e-6 && word == wanted
        }
        (Fill, WrittenAmount::Fill) | (Nothing, WrittenAmount::NotStated) => true,
        _ => false,
    }
}

fn recipe(lines: &[&str]) -> ReadRecipe {
    let value =
        serde_json::json!({"@type": "Recipe", "name": "Written", "recipeIngredient": lines});
    read_json_ld(&value.to_string()).unwrap()
}

fn arrive(read: &ReadRecipe, book: &Book, chosen: &BTreeMap<usize, RowMatch>) -> WrittenArrival {
    let speaker = Speaker::new(book);
    let arrival = read.arrive(book, "Written", chosen, &|new| speaker.new_measure(new));
    arrival.unwrap()
}

fn nothing() -> BTreeMap<usize, RowMatch> {
    BTreeMap::new()
}

fn shop() -> Book {
    let mut book = Book::default();
    for (name, form, role) in [
        ("Honey", Form::Syrup, Role::Sweetener),
        ("Tap water", Form::Liquid, Role::Water),
        ("Ice", Form::Ice, Role::Ice),
        ("Roasted barley powder", Form::Powder, Role::Flavour),
        ("Milk", Form::Liquid, Role::Creamer),
    ] {
        let id = IngredientId::from_name(name, |id| book.ingredient(id).is_some());
        book.ingredients.put(Ingredient {
            form,
            role,
            ..Ingredient::new(id, name.to_owned())
        });
    }
    let spoon = MeasureId::new("our-tablespoon").unwrap();
    book.measures.put(Measure {
        nominal: Some(Nominal::Volume(14.0)),
        ..Measure::new(
            spoon,
            "Tablespoon of the bar".to_owned(),
            MeasureKind::Spoon,
        )
    });
    book
}

#[test]
fn sentences_are_read_as_they_are_written() {
    assert!(LINES.len() >= 60, "{}", LINES.len());
    for (text, asks, name) in LINES {
        let read = read_line(text);
        assert!(agrees(*asks, &read.amount), "{text}: {read:?}");
        assert_eq!(read.name, *name, "{text}: {read:?}");
    }
}

#[test]
fn each_of_them_becomes_a_line_or_says_why_not() {
    for book in [Book::default(), shop(), sample()] {
        let lines: Vec<&str> = LINES.iter().map(|(text, ..)| *text).collect();
        let arrived = arrive(&recipe(&lines), &book, &nothing());
        let after = apply(&book, &arrived.edit).unwrap();
        assert_eq!(after, *arrived.after);
        assert_eq!(new_errors(&book, &after), Vec::<String>::new());
        let speaker = Speaker::new(&after);
        let mut is_filled = false;
        for (line, (text, asks, _)) in arrived.lines.iter().zip(LINES) {
            let says = speaker.becomes(line);
            let has_filled = is_filled;
            is_filled |= matches!(asks, Fill);
            match (&line.becomes, asks) {
                (Becomes::Line { .. }, Nothing) | (Becomes::LeftOut, _) => {
                    panic!("{text}: {says}")
                }
                (
                    Becomes::Line {
                        ingredient, why, ..
                    },
                    _,
                ) => {
                    // What nobody knew comes in empty, and is said to be new.
                    let item = after.ingredient(ingredient).unwrap();
                    let is_new = book.ingredient(ingredient).is_none();
                    assert_eq!(is_new, why.is_none(), "{text}");
                    if is_new {
                        assert!(item.composition.printed.is_empty() && item.price.is_none());
                        assert!(item.allergens.is_none() && item.density.is_none());
                    }
                }
                (Becomes::Instruction, Nothing) => {
                    assert_eq!(line.questions, [RecipeQuestion::NoAmount], "{text}");
                }
                // A cup is filled once.
                (Becomes::Instruction, Fill) if has_filled => {
                    assert_eq!(line.questions, [RecipeQuestion::SecondFill], "{text}");
                }
                (Becomes::Instruction, _) => panic!("{text}: {says}"),
            }
        }
    }
}

#[test]
fn a_spoon_of_the_shop_is_used_and_a_cup_is_added_as_the_law_has_it_with_its_doubt() {
    let lines = [
        "2 Tbsp honey",
        "1 cup milk",
        "½ cup roasted barley powder",
        "a pinch of salt",
        "2 heaping Tbsp honey",
    ];
    let arrived = arrive(&recipe(&lines), &shop(), &nothing());
    let after = &arrived.after;
    let measure = |at: usize| match &arrived.lines[at].becomes {
        Becomes::Line {
            amount: Amount::Count(_, id),
            ..
        } => after.measure(id).unwrap(),
        other => panic!("{other:?}"),
    };
    assert_eq!(measure(0).id.as_str(), "our-tablespoon");
    assert!(arrived.lines[0].questions.is_empty());
    let held = |at: usize| measure(at).nominal;
    assert_eq!(held(1), Some(Nominal::Volume(240.0)));
    assert_eq!(held(2), Some(Nominal::Volume(240.0)));
    assert_ne!(measure(1).id, measure(2).id, "a cup of powder is less sure");
    let doubt = |at: usize| measure(at).assumed_relative_uncertainty();
    assert!(doubt(1) < doubt(2) && doubt(2) < doubt(4));
    assert!(measure(1).note.contains("21 CFR 101.9(b)(5)(viii)"));
    assert!(measure(3).note.contains("no source"));
    assert!(
        arrived.lines[1]
            .questions
            .contains(&RecipeQuestion::Household(Cup))
    );
    // A range is not surer than it was written.
    let arrived = arrive(&recipe(&["200–250 ml milk"]), &shop(), &nothing());
    let range = RecipeQuestion::Range(Span {
        from: 200.0,
        to: 250.0,
    });
    assert!(arrived.lines[0].questions.contains(&range));
    let recipe = arrived.after.recipes.iter().next().unwrap();
    let line = recipe.entries[0].line().unwrap().clone();
    assert_eq!(line.amount, Amount::Millilitres(225.0));
    assert_eq!(line.note, "200–250 ml milk");
}

#[test]
fn pieces_that_nobody_has_weighed_weigh_something_that_is_not_known() {
    let arrived = arrive(
        &recipe(&["2 slices of pear", "200 g milk"]),
        &shop(),
        &nothing(),
    );
    assert!(
        arrived.lines[0]
            .questions
            .contains(&RecipeQuestion::NotWeighed)
    );
    let recipe = arrived.after.recipes.iter().next().unwrap();
    let balance = balance_version(&arrived.after, recipe, None).unwrap();
    assert_eq!(balance.figures.complete(Measurand::Mass), None);
}

#[test]
fn a_new_ingredient_has_the_form_that_its_name_or_what_it_is_counted_in_tells() {
    for (text, form, role, stage) in [
        (
            "2 slices of pear",
            Form::Pieces,
            Role::Garnish,
            Stage::OnTop,
        ),
        (
            "3 Scheiben Birne",
            Form::Pieces,
            Role::Garnish,
            Stage::OnTop,
        ),
        (
            "50 g tapioca pearls",
            Form::Pieces,
            Role::Topping,
            Stage::Topping,
        ),
        (
            "30 g whipped topping",
            Form::Foam,
            Role::Topping,
            Stage::OnTop,
        ),
        (
            "2 Messlöffel Gerstenpulver",
            Form::Powder,
            Role::Flavour,
            Stage::Mixed,
        ),
        (
            "20 ml plum cordial",
            Form::Liquid,
            Role::Flavour,
            Stage::Mixed,
        ),
    ] {
        let arrived = arrive(&recipe(&[text]), &shop(), &nothing());
        let Becomes::Line {
            ingredient, why, ..
        } = &arrived.lines[0].becomes
        else {
            panic!("{text}: {:?}", arrived.lines);
        };
        assert_eq!(*why, None, "{text}");
        let item = arrived.after.ingredient(ingredient).unwrap();
        assert_eq!((item.form, item.role), (form, role), "{text}");
        let told = RecipeQuestion::NewIngredient {
            form,
            is_told: true,
        };
        assert!(arrived.lines[0].questions.contains(&told), "{text}");
        let recipe = arrived.after.recipes.iter().next().unwrap();
        assert_eq!(recipe.entries[0].line().unwrap().stage, stage, "{text}");
    }
}

#[test]
fn a_sentence_that_no_recipe_has_stays_as_it_stands_and_costs_no_time() {
    let before = std::time::Instant::now();
    for piece in [
        "1g+", "1 g and ", "(", "1(", "2 x ", "about ", "½", "1/", "(1 oz, ", "to fill ",
    ] {
        let text = piece.repeat(1_000_000 / piece.len());
        let read = read_line(&text);
        assert_eq!(read.amount, WrittenAmount::Unclear(UnclearAmount::TooLong));
        assert_eq!(read.name, text.trim_start_matches(['•', '*', '-']).trim());
        // The longest that is read at all.
        read_line(&text[..text.floor_char_boundary(500)]);
    }
    assert!(before.elapsed().as_secs() < 20, "{:?}", before.elapsed());
    let long = format!("2 Tbsp honey {}", "and more of it ".repeat(40));
    let arrived = arrive(&recipe(&[&long, "1 g salt"]), &shop(), &nothing());
    assert_eq!(arrived.lines[0].becomes, Becomes::Instruction);
    assert_eq!(
        arrived.lines[0].questions,
        [RecipeQuestion::UnclearAmount(UnclearAmount::TooLong)]
    );
    let recipe = arrived.after.recipes.iter().next().unwrap();
    assert!(
        recipe
            .entries
            .iter()
            .any(|entry| { matches!(entry, Entry::Instruction(step) if step.text == long.trim()) })
    );
}

#[test]
fn letters_whose_small_form_is_longer_or_shorter_shift_nothing() {
    // The small form of "İ" takes a byte more, that of the Kelvin sign two bytes less.
    for (text, name) in [
        ("İİ ice to fill \u{212a}", "İİ ice"),
        ("ice İİ to fill\u{212a}", ""),
        ("Top up with İİ\u{212a} water", "İİ\u{212a} water"),
        ("ẞẞ Eis zum Auffüllen", "ẞẞ Eis"),
    ] {
        let read = read_line(text);
        if name.is_empty() {
            assert_eq!(read.amount, WrittenAmount::NotStated, "{text}: {read:?}");
        } else {
            assert_eq!(
                (read.amount, read.name.as_str()),
                (WrittenAmount::Fill, name)
            );
        }
    }
}

#[test]
fn what_a_sentence_says_of_its_temperature_weighs_what_it_pours() {
    let book = shop();
    let line = |text: &str| {
        let arrived = arrive(&recipe(&[text]), &book, &nothing());
        let recipe = arrived.after.recipes.iter().next().unwrap().clone();
        let balance = balance_version(&arrived.after, &recipe, None).unwrap();
        let line = recipe.entries[0].line().unwrap().clone();
        (line, balance.figures.complete(Measurand::Mass).unwrap())
    };
    // Water weighs 961.9 g a litre at 95 °C and 998.2 g at 20 °C (CIPM 2001).
    let (hot, grams) = line("125 ml hot water (95 °C)");
    assert_eq!(hot.temperature, Some(95.0.into()));
    assert!((grams - 120.2).abs() < 0.2, "{grams}");
    let (range, grams) = line("125 ml Wasser, 75 bis 80 °C");
    assert_eq!(range.temperature.map(Temperature::ends), Some([75.0, 80.0]));
    assert!((grams - 121.7).abs() < 0.2, "{grams}");
    let (large, _) = line("200 g (2 large) honey");
    assert_eq!(large.note, "200 g (2 large) honey");
    // Nobody says how hot: it is weighed as the shop's water, and the word stays beside the line.
    let (plain, grams) = line("125 ml hot water");
    assert_eq!(
        (plain.temperature, plain.note.as_str()),
        (None, "125 ml hot water")
    );
    assert!((grams - 124.8).abs() < 0.2, "{grams}");
}

#[test]
fn a_match_is_said_by_the_name_of_its_measure() {
    let book = shop();
    let said = |text: &str| {
        let arrived = arrive(&recipe(&[text]), &book, &nothing());
        let speaker = Speaker::new(&arrived.after);
        speaker.becomes(&arrived.lines[0])
    };
    assert_eq!(said("½ cup milk"), "½ × cup (240 ml): Milk");
    assert_eq!(said("2 Tbsp honey"), "2 × Tablespoon of the bar: Honey");
    assert_eq!(said("200 ml milk"), "200 ml Milk");
}

#[test]
fn what_a_person_says_of_a_sentence_is_what_comes_in() {
    let book = shop();
    let honey = IngredientId::new("honey").unwrap();
    let read = recipe(&["2 Tbsp heather nectar", "1 cup quince mash", "salt 1 g"]);
    let chosen = BTreeMap::from([
        (0, RowMatch::Ours(honey.clone())),
        (1, RowMatch::New(Form::Paste)),
        (2, RowMatch::LeftOut),
    ]);
    let arrived = arrive(&read, &book, &chosen);
    let recipe = arrived.after.recipes.iter().next().unwrap();
    assert_eq!(recipe.entries.len(), 2);
    assert_eq!(recipe.entries[0].line().unwrap().ingredient, honey);
    let mash = &recipe.entries[1].line().unwrap().ingredient;
    assert_eq!(arrived.after.ingredient(mash).unwrap().form, Form::Paste);
    assert_eq!(arrived.lines[2].becomes, Becomes::LeftOut);
}

#[test]
fn german_speaks_of_every_sentence_too() {
    let german = Language::from_code("de").unwrap();
    let lines: Vec<&str> = LINES.iter().map(|(text, ..)| *text).collect();
    let book = shop();
    let speaker = Speaker::new(&book).in_language(german);
    let arrived = recipe(&lines)
        .arrive(&book, "Rezept", &nothing(), &|new| speaker.new_measure(new))
        .unwrap();
    let after = speaker.about(&arrived.after);
    for line in &arrived.lines {
        assert!(!after.becomes(line).is_empty());
        for question in &line.questions {
            let said = after.recipe_question(question);
            assert!(!said.contains(" is ") && !said.is_empty(), "{said}");
        }
    }
}

#[test]
fn a_bracket_that_was_opened_before_the_amount_is_no_part_of_the_name() {
    assert_eq!(
        read_line("400-g-Dosen) 75 bis 80 Grad ,\u{a0}water").name,
        "water"
    );
    assert_eq!(read_line("2 g ), honey").name, "honey");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    /// Pieces of sentences in any order: never a panic, never an error in the book, and never less than what was written.
    #[test]
    fn any_sentence_comes_in_whole_or_as_it_stands(seed in any::<u64>(), letters in ".{0,12}") {
        let mut dice = Dice(seed);
        let amounts = [
            "2", "½", "1 1/2", "200–250", "1,000", "2 500", "ml", "g", "Tbsp", "cup", "EL", "can", "(14 oz)", "(240 ml)", "(",
            ")", "/", "-", "x", "of", "a", "half", "plus", "to fill", "Prise", "1/0", "½½", "999999999", "÷", "•", "c.", "quart",
            "95 °C", "75 bis 80 Grad", "°", "-18 °F", "400-g-Dosen", "+", ",", "(,)",
        ];
        let names = ["honey", "Quittensirup", "chilled", "packed", "hot", "water", "brewed", "ß", "İ", "\u{212a}", "Ice"];
        let mut text = String::new();
        for _ in 0..=dice.below(7) {
            match dice.below(8) {
                0..5 => text.push_str(dice.pick(&amounts)),
                5 | 6 => text.push_str(dice.pick(&names)),
                _ => text.push_str(&letters),
            }
            text.push_str(dice.pick(&[" ", " ", "", "\u{a0}", " (", ") ", ", "]));
        }
        let read = read_line(&text);
        prop_assert!(text.contains(&read.text));
        // What is read is of the text: no word of a name comes from elsewhere.
        for word in read.name.split_whitespace() {
            prop_assert!(text.contains(word), "{text:?}: {read:?}");
        }
        let book = shop();
        let speaker = Speaker::new(&book);
        let written = recipe(&[text.as_str(), "1 g salt"]);
        let arrived = written.arrive(&book, "Written", &nothing(), &|new| speaker.new_measure(new));
        // One sentence never keeps the others out.
        let arrived = arrived.map_err(|error| TestCaseError::fail(format!("{text:?}: {error:?}")))?;
        prop_assert_eq!(new_errors(&book, &arrived.after), Vec::<String>::new(), "{}", text);
        let recipe = arrived.after.recipes.iter().next().unwrap();
        for (line, entry) in arrived.lines.iter().zip(&recipe.entries) {
            let kept = match (&line.becomes, entry) {
                (Becomes::Line { amount, ingredient, .. }, Entry::Line(kept)) => {
                    let number = amount.number().unwrap_or(0.0);
                    prop_assert!(number.is_finite() && number >= 0.0, "{text:?}: {amount:?}");
                    format!("{} {}", arrived.after.ingredient(ingredient).unwrap().name, kept.note)
                }
                (Becomes::Instruction, Entry::Instruction(step)) => step.text.clone(),
                other => return Err(TestCaseError::fail(format!("{text:?}: {other:?}"))),
            };
            let kept = kept.to_lowercase();
            for name in names.iter().filter(|name| name.len() > 3 && line.text.contains(**name)) {
                prop_assert!(kept.contains(&name.to_lowercase()), "{text:?}: {name} of {line:?} is not in {kept:?}");
            }
        }
    }
}
