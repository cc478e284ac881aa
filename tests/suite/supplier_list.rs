//! The list of a supplier as it comes on a Saturday: Windows-1252, semicolons, decimal commas, two lines of title, names of its
//! own, cases and sacks, and prices that are missing, negative or of another pack.

use std::collections::{BTreeMap, BTreeSet};
use std::process::Command;

use evensip::book::{
    Amount, Article, Book, Composition, Entry, Evidence, Figure, Form, Ingredient, IngredientId,
    Line, LineId, Nutrient, Price, Recipe, RecipeId, Role, Shelf, Stage, Vessel, VesselId,
    VesselKind,
};
use evensip::book_file::{load, parse, write};
use evensip::edit::apply;
use evensip::exchange::{
    CellFault, DecimalSigns, Doubt, Encoding, Field, FieldChange, ListChoices, Outcome, Review,
    ReviewLine, RowMatch, Skip, TextTable, cost_effects, edits_of, guess_mapping, read_table,
    review_price_list,
};
use evensip::quantity::Pack;
use evensip::say::Speaker;
use proptest::prelude::*;

use crate::arbitrary_book::Dice;

pub(crate) const SUPPLIER: &str = "Kestrel & Söhne";

pub(crate) const LIST: &str = "\
Kestrel & Söhne · Preisliste Winter;;;;\r\n\
Alle Preise zzgl. USt., gültig für Geschäftskunden;;;;\r\n\
Artikel;Marke;Inhalt;Preis netto;gültig ab\r\n\
Röstgerstenpulver;Thornby;12 x 1 kg;131,40;01.12.2026\r\n\
Gerste geröstet, Pulver;Aldgrave;20 kg Sack;172,00;01.12.2026\r\n\
Creamerpulver;Ostley;1 kg;;01.12.2026\r\n\
Quince syrup;Pellow;6 × 750 ml;55,20;01.12.2026\r\n\
Quince syrup;Hurst;1 l;27,30;01.12.2026\r\n\
Holunderblütensirup;Pellow;6 × 750 ml;49,80;01.12.2026\r\n\
Trinkhalme;Bask;1000 Stück;12,50;01.12.2026\r\n\
Oat creamer powder;Ostley;1 kg;-31,00;01.12.2026\r\n";

pub(crate) fn windows_1252(text: &str) -> Vec<u8> {
    text.chars()
        .map(|c| u8::try_from(u32::from(c)).unwrap())
        .collect()
}

fn ingredient(
    name: &str,
    brand: &str,
    form: Form,
    brix: Option<f64>,
    price: (f64, f64),
) -> Ingredient {
    let mut composition = Composition::default();
    if let Some(brix) = brix {
        composition.state(Nutrient::Brix, Figure::new(brix, Evidence::Label));
    }
    Ingredient {
        brand: brand.to_owned(),
        form,
        composition,
        price: Some(Price {
            pack: price.0,
            content: Pack::of_grams(price.1),
            waste_percent: 0.0,
            date: Some("2026-06-01".to_owned()),
        }),
        ..Ingredient::new(id(&format!("{brand} {name}")), name.to_owned())
    }
}

fn id(name: &str) -> IngredientId {
    IngredientId::from_name(name, |_| false)
}

fn put<T: evensip::book::Item>(shelf: &mut Shelf<T>, item: T) {
    shelf.put(item);
}

/// The shop before the list comes: two barley powders, creamers and syrups, and a drink.
fn millrace() -> Book {
    let mut book = Book::default();
    for item in [
        ingredient(
            "Roasted barley powder",
            "Thornby",
            Form::Powder,
            None,
            (10.40, 1000.0),
        ),
        ingredient(
            "Roasted barley powder",
            "Aldgrave",
            Form::Powder,
            None,
            (109.0, 12_000.0),
        ),
        ingredient(
            "Creamer powder",
            "Ostley",
            Form::Powder,
            None,
            (6.20, 1000.0),
        ),
        ingredient(
            "Oat creamer powder",
            "Ostley",
            Form::Powder,
            None,
            (7.10, 1000.0),
        ),
        // 66 and 58 °Brix weigh about 1.32 and 1.28 g/ml.
        ingredient(
            "Quince syrup",
            "Pellow",
            Form::Syrup,
            Some(66.0),
            (8.60, 992.0),
        ),
        ingredient(
            "Quince syrup",
            "Hurst",
            Form::Syrup,
            Some(58.0),
            (9.10, 1275.0),
        ),
    ] {
        put(&mut book.ingredients, item);
    }
    let cup = VesselId::new("cup").unwrap();
    put(
        &mut book.vessels,
        Vessel::new(cup.clone(), "cup".to_owned(), VesselKind::Cup, 500.0),
    );
    let line = |name: &str, amount| {
        Entry::Line(Line {
            id: LineId::from_name(name, |_| false),
            ingredient: id(name),
            amount,
            temperature: None,
            role: Role::Flavour,
            stage: Stage::Mixed,
            carried: None,
            note: String::new(),
        })
    };
    let lantern = Recipe {
        entries: vec![
            line("Thornby Roasted barley powder", Amount::Grams(18.0)),
            line("Ostley Creamer powder", Amount::Grams(15.0)),
            line("Pellow Quince syrup", Amount::Grams(20.0)),
        ],
        cup: Some(cup),
        ..Recipe::new(
            RecipeId::new("barley-lantern").unwrap(),
            "Barley Lantern".to_owned(),
        )
    };
    put(&mut book.recipes, lantern);
    // It can be written and opened.
    parse(&write(&book)).unwrap().0
}

fn table() -> TextTable {
    read_table(&windows_1252(LIST), None, None).unwrap()
}

fn reviewed(book: &Book, choices: &ListChoices) -> Review {
    let table = table();
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, None);
    review_price_list(book, &table, &mapping, &signs, choices)
}

fn of_supplier(rows: BTreeMap<u64, RowMatch>) -> ListChoices {
    ListChoices {
        supplier: SUPPLIER.to_owned(),
        rows,
        ..ListChoices::of_day("2026-12-05")
    }
}

/// What the owner says of the German names.
fn by_hand() -> ListChoices {
    of_supplier(BTreeMap::from([
        (4, RowMatch::Ours(id("Thornby Roasted barley powder"))),
        (5, RowMatch::Ours(id("Aldgrave Roasted barley powder"))),
        (6, RowMatch::Ours(id("Ostley Creamer powder"))),
        (9, RowMatch::New(Form::Syrup)),
        (10, RowMatch::LeftOut),
    ]))
}

fn percent(line: &ReviewLine) -> f64 {
    let Outcome::Changed { changes, .. } = &line.outcome else {
        panic!("{line:?}");
    };
    changes.iter().find_map(FieldChange::percent).unwrap()
}

#[test]
fn the_titles_are_skipped_and_the_headings_found() {
    let table = table();
    assert_eq!(table.encoding, Encoding::SingleByte);
    assert_eq!(
        (table.above.len(), table.heading_line, table.rows.len()),
        (2, 3, 8)
    );
    let columns = guess_mapping(&table.headings).columns;
    let wanted = [
        Field::Name,
        Field::Brand,
        Field::PackContent,
        Field::PackPrice,
        Field::PriceDate,
    ];
    assert_eq!(columns, wanted.map(Some));
    assert_eq!(table.rows[0].1[0], "Röstgerstenpulver");
    // Another row can be chosen.
    let chosen = read_table(&windows_1252(LIST), None, Some(2)).unwrap();
    assert_eq!((chosen.above.len(), chosen.rows.len()), (1, 9));
}

#[test]
fn nothing_is_ticked_that_was_read_by_half_or_moves_a_price_far() {
    let book = millrace();
    let review = reviewed(&book, &by_hand());
    let sure: Vec<u64> = review
        .lines
        .iter()
        .filter(|line| line.is_sure())
        .map(|line| line.line)
        .collect();
    // Both powders and both syrups; the creamer is recognised from now on.
    assert_eq!(sure, [4, 5, 6, 7, 9], "{review:?}");
    let at = |line: u64| {
        let lines = review.lines.iter();
        lines.into_iter().find(|one| one.line == line).unwrap()
    };
    // 131.40 for 12 kg is 10.95 a kilogram; 172 for 20 kg is 8.60 against 9.083; six bottles at 9.20.
    assert!((percent(at(4)) - 100.0 * (10.95 / 10.40 - 1.0)).abs() < 1e-6);
    assert!((percent(at(5)) - 100.0 * (8.60 / (109.0 / 12.0) - 1.0)).abs() < 1e-6);
    assert!((percent(at(7)) - 100.0 * (9.20 / 8.60 - 1.0)).abs() < 0.5);
    let Outcome::Changed { ingredient, .. } = &at(7).outcome else {
        panic!();
    };
    let price = ingredient.price.as_ref().unwrap();
    let bottles = Pack {
        count: 6.0,
        ..Pack::of_millilitres(750.0)
    };
    assert_eq!(price.content, bottles);
    assert_eq!(price.date.as_deref(), Some("2026-12-01"));
    // Three times the price is said, and not ticked.
    assert!(at(8).moves_price_far() && at(8).is_change());
    // No price, a negative one.
    let Outcome::Changed { changes, .. } = &at(6).outcome else {
        panic!();
    };
    assert!(changes.iter().all(|change| change.percent().is_none()));
    assert!(matches!(
        at(11).outcome,
        Outcome::Skipped(Skip::NothingRead)
    ));
    assert!(matches!(
        at(11).doubts[0],
        Doubt::Cell {
            why: CellFault::OutOfRange,
            ..
        }
    ));
    assert!(matches!(at(10).outcome, Outcome::Skipped(Skip::LeftOut)));
    // A new one comes in empty.
    let Outcome::New(new) = &at(9).outcome else {
        panic!();
    };
    assert!(new.composition.printed.is_empty() && new.allergens.is_none());
    assert_eq!(new.form, Form::Syrup);
    // Nobody has said anything yet: names that the book has not are new, of a form that is not stated. It is taken for what the
    // name says, and asked for where it says nothing.
    let review = reviewed(&book, &of_supplier(BTreeMap::new()));
    let at = |line: u64| review.lines.iter().find(|one| one.line == line).unwrap();
    for (line, form) in [(4, Form::Powder), (5, Form::Powder), (9, Form::Syrup)] {
        let line = at(line);
        let is_of_form = matches!(&line.outcome, Outcome::New(new) if new.form == form);
        assert!(is_of_form && !line.is_sure(), "{line:?}");
        assert_eq!(line.doubts, [Doubt::FormByName(form)]);
    }
    assert_eq!(at(10).outcome, Outcome::Skipped(Skip::NoForm));
    assert!(!Speaker::new(&book).outcome_details(at(10)).is_empty());
    let skipped = |at: usize| review.lines[at].outcome.clone();
    assert!(matches!(skipped(7), Outcome::Skipped(Skip::NothingRead)));
}

#[test]
fn a_content_or_price_that_is_not_read_leaves_the_other_alone() {
    let book = millrace();
    for row in [
        "Quince syrup;Pellow;ein Karton;112,80;",
        "Quince syrup;Pellow;6 x 750 ml;-31,00;",
        "Quince syrup;Pellow;6 x 750 ml;8,9O;",
        "Quince syrup;Pellow;6 x 750 ml;8,90 $;",
        "Quince syrup;Pellow;6 x 750 ml;8,90 €/l;",
    ] {
        let text = format!("Artikel;Marke;Inhalt;Preis netto;gültig ab\n{row}\n");
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, None);
        let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::default());
        let line = &review.lines[0];
        assert_eq!(line.outcome, Outcome::Skipped(Skip::NothingRead), "{row}");
        assert!(!line.doubts.is_empty(), "{row}");
    }
    let empty = "Artikel;Marke;Inhalt;Preis netto;gültig ab\nQuince syrup;Pellow;;9,90;\n";
    let table = read_table(empty.as_bytes(), None, None).unwrap();
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, None);
    let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::default());
    assert!(review.lines[0].is_change() && !review.lines[0].is_sure());
}

/// The review of a list with these lines, of which nobody has said anything.
fn review_of(book: &Book, text: &str) -> Review {
    let table = read_table(text.as_bytes(), None, None).unwrap();
    let mapping = guess_mapping(&table.headings);
    let signs = DecimalSigns::of(&table, &mapping, None);
    review_price_list(book, &table, &mapping, &signs, &ListChoices::default())
}

#[test]
fn a_price_with_tax_or_for_an_amount_is_never_the_price_of_a_pack() {
    let book = millrace();
    for (heading, cell, why) in [
        ("Preis", "9,20 € brutto", Some(CellFault::WithSalesTax)),
        ("Preis", "9,20 inkl. MwSt.", Some(CellFault::WithSalesTax)),
        ("Preis", "9,20 €/100 ml", Some(CellFault::PricePerAmount)),
        ("Preis (€/100 g)", "9,20", Some(CellFault::PricePerAmount)),
        ("Preis je 100 g", "9,20", Some(CellFault::PricePerAmount)),
        ("Preis pro 100 ml", "9,20", Some(CellFault::PricePerAmount)),
        ("Preis je Liter", "9,20", Some(CellFault::PricePerAmount)),
        ("Literpreis", "9,20", Some(CellFault::PricePerAmount)),
        // The column is left out.
        ("Preis (brutto)", "9,20", None),
        ("Preis € (inkl. 19 %)", "9,20", None),
        ("Bruttopreis", "9,20", None),
        ("Price [gross]", "9,20", None),
        ("Prix (€ TTC)", "9,20", None),
    ] {
        let review = review_of(
            &book,
            &format!("Artikel;Marke;Inhalt;{heading}\nQuince syrup;Pellow;750 ml;{cell}\n"),
        );
        let line = &review.lines[0];
        let faults = line.doubts.iter().map(|doubt| match doubt {
            Doubt::Cell { why, .. } => Some(*why),
            _ => None,
        });
        assert_eq!(faults.flatten().next(), why, "{heading} {cell}: {line:?}");
        assert!(!line.is_change(), "{heading} {cell}: {line:?}");
    }
    // The weight with the bottle buys no syrup, and its price is not that of the pack in the book.
    for (heading, cell) in [("Inhalt (brutto)", "1,2 kg"), ("Inhalt", "1,2 kg brutto")] {
        let list = format!("Artikel;Marke;{heading};Preis\nQuince syrup;Pellow;{cell};9,20\n");
        let review = review_of(&book, &list);
        let why = match &review.lines[0].doubts[..] {
            [Doubt::Cell { why, .. }] => *why,
            other => panic!("{other:?}"),
        };
        assert_eq!(why, CellFault::WithPacking, "{list}");
        assert!(!review.lines[0].is_change(), "{list}");
    }
    for heading in ["Preis netto", "Preis (EUR/Karton)", "Preis €/Stk"] {
        let review = review_of(
            &book,
            &format!("Artikel;Marke;Inhalt;{heading}\nQuince syrup;Pellow;750 ml;9,20\n"),
        );
        assert!(review.lines[0].is_sure(), "{heading}: {review:?}");
    }
}

#[test]
fn a_dash_states_nothing_in_any_column() {
    let book = millrace();
    for nothing in ["-", "–", "—", "n/a", "N/A", "k. A.", "?"] {
        let text = format!(
            "Artikel;Artikelnr;Marke;Lieferant;Inhalt;Preis;Zutaten;Note\n\
             Fig powder;{nothing};Velm;{nothing};1 kg;9,90;{nothing};{nothing}\n\
             {nothing};7;Velm;Tarn;1 kg;9,90;Figs;dried\n\
             Quince syrup;{nothing};Pellow;{nothing};{nothing};{nothing};{nothing};{nothing}\n"
        );
        let review = review_of(&book, &text);
        let Outcome::New(new) = &review.lines[0].outcome else {
            panic!("{nothing}: {review:?}");
        };
        assert_eq!(new.articles, [], "{nothing}");
        for stated in [&new.supplier, &new.statement, &new.note] {
            assert_eq!(stated, "", "{nothing}");
        }
        // Matched by hand it is remembered by its name, not by a dash that the next row has, too.
        assert_eq!(
            review.lines[0].article.article, "Velm Fig powder",
            "{nothing}"
        );
        assert_eq!(review.lines[1].outcome, Outcome::Skipped(Skip::NoName));
        assert_eq!(review.lines[2].outcome, Outcome::Skipped(Skip::NoPrice));
        assert_eq!(review.lines[2].doubts, [], "{nothing}");
    }
}

#[test]
fn a_list_that_sells_again_what_is_marked_offers_to_take_the_mark_away() {
    let mut book = millrace();
    let quince = id("Pellow Quince syrup");
    let mut marked = book.ingredient(&quince).unwrap().as_ref().clone();
    marked.no_longer_sold = true;
    put(&mut book.ingredients, marked);
    for (row, is_offered) in [
        ("Quince syrup;Pellow;750 ml;9,20", true),
        // The price of the book: nothing changes but the mark.
        ("Quince syrup;Pellow;992 g;8,60", true),
        // No price sells nothing.
        ("Quince syrup;Pellow;750 ml;", false),
        ("Quince syrup;Pellow;ein Karton;9,20", false),
        ("Quince syrup;Hurst;1 l;9,20", false),
    ] {
        let review = review_of(&book, &format!("Artikel;Marke;Inhalt;Preis netto\n{row}\n"));
        let line = &review.lines[0];
        assert_eq!(line.sells_again(), is_offered, "{row}: {line:?}");
        if !is_offered {
            continue;
        }
        assert!(!line.is_sure(), "a person has said that it is not sold");
        let details = Speaker::new(&book).outcome_details(line);
        assert!(details.contains("sold again"), "{details}");
        let edit = edits_of(&book, &review, |_| true).unwrap().unwrap();
        let after = apply(&book, &edit).unwrap();
        assert!(!after.ingredient(&quince).unwrap().no_longer_sold, "{row}");
        assert!(book.ingredient(&quince).unwrap().no_longer_sold);
    }
}

#[test]
fn what_was_matched_is_recognised_in_the_next_list_of_the_supplier_and_kept_in_the_book() {
    let book = millrace();
    let review = reviewed(&book, &by_hand());
    let sure = |at: usize| review.lines[at].is_sure();
    let edit = edits_of(&book, &review, sure).unwrap().unwrap();
    let after = apply(&book, &edit).unwrap();
    let after = parse(&write(&after)).unwrap().0;
    let again = reviewed(&after, &of_supplier(BTreeMap::new()));
    assert_eq!(
        again.lines[0].about,
        Some(id("Thornby Roasted barley powder"))
    );
    assert_eq!(again.lines[0].outcome, Outcome::Same);
    assert_eq!(again.lines[1].outcome, Outcome::Same);
    assert_eq!(again.lines[2].outcome, Outcome::Skipped(Skip::NoPrice));
    // Another supplier may mean something else by it.
    let other = reviewed(&after, &ListChoices::default());
    assert!(matches!(other.lines[0].outcome, Outcome::New(_)));
    // The name goes over to another ingredient when a person says so, and the one that had it loses it.
    let other = of_supplier(BTreeMap::from([(
        4,
        RowMatch::Ours(id("Ostley Oat creamer powder")),
    )]));
    let review = reviewed(&after, &other);
    let edit = edits_of(&after, &review, |at| at == 0).unwrap().unwrap();
    let moved = apply(&after, &edit).unwrap();
    let article = Article {
        supplier: SUPPLIER.to_owned(),
        article: "Thornby Röstgerstenpulver".to_owned(),
    };
    let has = |name: &str| {
        moved
            .ingredient(&id(name))
            .unwrap()
            .articles
            .contains(&article)
    };
    assert!(has("Ostley Oat creamer powder") && !has("Thornby Roasted barley powder"));
}

#[test]
fn the_effect_on_the_drinks_is_told_before_anything_is_taken() {
    let book = millrace();
    let review = reviewed(&book, &by_hand());
    let sure = |at: usize| review.lines[at].is_sure();
    let edit = edits_of(&book, &review, sure).unwrap().unwrap();
    let after = apply(&book, &edit).unwrap();
    let effects = cost_effects(&book, &after);
    assert_eq!(effects.len(), 1, "{effects:?}");
    // 18 g of powder that is 0.55 a kilogram dearer, 20 g of syrup that is 0.6 a bottle dearer.
    let wanted = 0.018 * 0.55 + 20.0 / 992.0 * 0.6;
    assert!(
        (effects[0].difference.unwrap() - wanted).abs() < 0.002,
        "{effects:?}"
    );
    assert!(cost_effects(&book, &book).is_empty());
}

#[test]
fn a_difference_is_told_where_the_same_lines_of_the_drink_are_priced() {
    let mut book = millrace();
    let mut unpriced = |name: &str| {
        let item = book.ingredient(&id(name)).unwrap();
        let item = Ingredient {
            price: None,
            ..(**item).clone()
        };
        put(&mut book.ingredients, item);
    };
    // A line of the drink, and something that is in no drink.
    unpriced("Ostley Creamer powder");
    unpriced("Ostley Oat creamer powder");
    let priced = |name: &str, pack: f64| {
        let item = book.ingredient(&id(name)).unwrap();
        Ingredient {
            price: Some(Price {
                pack,
                content: Pack::of_grams(1000.0),
                waste_percent: 0.0,
                date: None,
            }),
            ..(**item).clone()
        }
    };
    let dearer = [
        priced("Thornby Roasted barley powder", 11.40),
        priced("Ostley Oat creamer powder", 7.0),
    ];
    let mut after = book.clone();
    for item in dearer {
        put(&mut after.ingredients, item);
    }
    let effects = cost_effects(&book, &after);
    assert!(effects[0].before.unwrap().is_partial, "{effects:?}");
    let difference = effects[0].difference.unwrap();
    assert!((difference - 0.018).abs() < 1e-9, "{effects:?}");
    // What was not priced before makes nothing dearer.
    put(&mut after.ingredients, priced("Ostley Creamer powder", 6.0));
    let effects = cost_effects(&book, &after);
    assert_eq!(effects[0].difference, None, "{effects:?}");
}

#[test]
fn the_command_takes_what_is_sure_and_says_what_it_leaves_out() {
    let folder = tempfile::tempdir().unwrap();
    let (book, list) = (
        folder.path().join("book.ron"),
        folder.path().join("list.csv"),
    );
    std::fs::write(&book, write(&millrace())).unwrap();
    std::fs::write(&list, windows_1252(LIST)).unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_evensip"))
        .args(["bring-in", book.to_str().unwrap(), list.to_str().unwrap()])
        .args(["--accept", "--supplier", SUPPLIER, "--tick", "8"])
        .args(["--map", "4=thornby-roasted-barley-powder", "--map", "10="])
        .output()
        .unwrap();
    let said = String::from_utf8(output.stdout).unwrap();
    assert_eq!(output.status.code(), Some(0), "{said}");
    assert!(said.contains("lines 5, 6, 9 are left out"), "{said}");
    assert!(said.contains("(+5.3 % for the same amount)"), "{said}");
    assert!(said.contains("more than a third"), "{said}");
    assert!(said.contains("Barley Lantern: "), "{said}");
    let after = load(&book).unwrap().book;
    let price = |name: &str| after.ingredient(&id(name)).unwrap().price.clone().unwrap();
    assert!((price("Thornby Roasted barley powder").content.whole() - 12_000.0).abs() < 1e-9);
    assert!((price("Hurst Quince syrup").pack - 27.3).abs() < 1e-9);
    assert_eq!(after.ingredients.len(), millrace().ingredients.len());
}

#[test]
fn the_command_refuses_a_line_that_the_file_has_not() {
    let folder = tempfile::tempdir().unwrap();
    let in_folder = |name: &str| folder.path().join(name);
    let (book, list, recipe) = (in_folder("b.ron"), in_folder("l.csv"), in_folder("r.json"));
    std::fs::write(&book, write(&millrace())).unwrap();
    std::fs::write(&list, windows_1252(LIST)).unwrap();
    let written =
        r#"{"@type":"Recipe","name":"Lantern","recipeIngredient":["1 g salt","2 g figs"]}"#;
    std::fs::write(&recipe, written).unwrap();
    let before = std::fs::read_to_string(&book).unwrap();
    let salt = "1=thornby-roasted-barley-powder";
    for (file, arguments, line, is_there) in [
        (&list, ["--tick", "12"], "12", false),
        (&list, ["--tick", "3"], "3", false),
        (&list, ["--tick", "11"], "", true),
        (&list, ["--map", "400="], "400", false),
        (&list, ["--map", "11="], "", true),
        (&list, ["--headings", "40"], "40", false),
        (&list, ["--headings", "0"], "0", false),
        (&list, ["--headings", "3"], "", true),
        (&recipe, ["--map", "3="], "3", false),
        (&recipe, ["--map", "0="], "0", false),
        (&recipe, ["--map", salt], "", true),
    ] {
        let output = Command::new(env!("CARGO_BIN_EXE_evensip"))
            .args(["bring-in", book.to_str().unwrap(), file.to_str().unwrap()])
            .args(arguments)
            .output()
            .unwrap();
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(
            output.status.code(),
            Some(if is_there { 0 } else { 2 }),
            "{arguments:?}: {said}"
        );
        let names_line = said.contains(&format!("there is no row in line {line} of the file"));
        assert!(is_there || names_line, "{arguments:?}: {said}");
        assert_eq!(std::fs::read_to_string(&book).unwrap(), before);
    }
}

/// A cell as lists have them, with slips.
fn cell(dice: &mut Dice, column: usize) -> String {
    let cells: &[&str] = match column {
        0 => &[
            "Quince syrup",
            "Creamer powder",
            "Röstgerstenpulver",
            "Roasted barley powder",
            "",
        ],
        1 => &["Pellow", "Hurst", "Ostley", "Thornby", "Bask", ""],
        2 => &[
            "12 x 1 kg",
            "6 × 750 ml",
            "20 kg Sack",
            "1 kg",
            "Karton",
            "1000 Stück",
            "",
            "ca. 1 kg",
        ],
        3 => &[
            "8,60", "131,40", "-31,00", "8,9O", "", "27,30", "1.250", "9 €/kg", "6,20",
        ],
        _ => &["01.12.2026", "2026-12-01", "bald", ""],
    };
    dice.pick(cells).to_owned()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 800, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_is_ticked_was_read_whole_and_what_is_taken_is_what_was_shown(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let book = millrace();
        let mut text = "Artikel;Marke;Inhalt;Preis netto;gültig ab\n".to_owned();
        let rows = 1 + dice.below(6);
        for _ in 0..rows {
            let cells: Vec<String> = (0..5).map(|column| cell(&mut dice, column)).collect();
            text.push_str(&cells.join(";"));
            text.push('\n');
        }
        let Ok(table) = read_table(text.as_bytes(), None, None) else {
            return Ok(());
        };
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, None);
        let ids: Vec<IngredientId> = book.ingredients.iter().map(|item| item.id.clone()).collect();
        let mut matched = BTreeMap::new();
        for (line, _) in &table.rows {
            match dice.below(5) {
                0 => drop(matched.insert(*line, RowMatch::Ours(dice.pick(&ids)))),
                1 => drop(matched.insert(*line, RowMatch::New(dice.pick(&Form::ALL)))),
                2 => drop(matched.insert(*line, RowMatch::LeftOut)),
                _ => {}
            }
        }
        let review = review_price_list(&book, &table, &mapping, &signs, &of_supplier(matched));
        for line in &review.lines {
            if line.is_sure() {
                prop_assert!(line.doubts.is_empty(), "{line:?}");
                if let Outcome::Changed { changes, .. } = &line.outcome {
                    for percent in changes.iter().filter_map(FieldChange::percent) {
                        prop_assert!(percent.abs() <= 100.0 / 3.0 + 1e-9, "{line:?}");
                    }
                }
            }
            // A price never comes from one half of a row and one half of the book.
            if let Outcome::Changed { changes, .. } = &line.outcome {
                for change in changes {
                    if let FieldChange::Price { after, .. } = change {
                        let cells = &table.rows.iter().find(|(at, _)| *at == line.line).unwrap().1;
                        prop_assert!(!cells[3].is_empty(), "{line:?}");
                        let packs = [12_000.0, 20_000.0, 1000.0, 4500.0];
                        let is_of_book = cells[2].is_empty();
                        prop_assert!(is_of_book || packs.contains(&after.content.whole()), "{line:?}");
                    }
                }
            }
            prop_assert!(!Speaker::new(&book).outcome(&line.outcome).is_empty());
        }
        let taken: BTreeSet<usize> = (0..review.lines.len()).filter(|_| dice.coin()).collect();
        let edit = edits_of(&book, &review, |at| taken.contains(&at));
        let Ok(Some(edit)) = edit else { return Ok(()) };
        let after = apply(&book, &edit).unwrap();
        let mut shown = book.clone();
        for at in &taken {
            if let Outcome::New(item) | Outcome::Changed { ingredient: item, .. } = &review.lines[*at].outcome {
                shown.ingredients.put((**item).clone());
            }
        }
        for (taken, shown) in after.ingredients.iter().zip(shown.ingredients.iter()) {
            prop_assert_eq!(taken, shown);
        }
        prop_assert_eq!(after.ingredients.len(), shown.ingredients.len());
        prop_assert_eq!(&after.recipes, &book.recipes);
    }
}
