//! What nobody may overlook on a card: whether it is approved, what it contains, how hot the water is; and what a wall needs.

use evensip::balance::balance_version;
use evensip::book::{Book, Role, State};
use evensip::cards::{
    Block, CardError, CardKind, CardRequest, Document, Drink, Fonts, Mark, OnMenu, Orientation,
    Paper, StepRow, Typesetter, card, drinks_of_menu, html, markdown,
};

use crate::cards::{every_kind, options};
use crate::sample::sample;

fn counter(book: &Book, drink: Drink) -> Document {
    card(book, &CardRequest::Counter(drink), &options()).unwrap()
}

/// The drinks of the menu that are what was approved, and the others.
fn by_approval(book: &Book) -> (Vec<Drink>, Vec<Drink>) {
    drinks_of_menu(book)
        .into_iter()
        .partition(|drink| !counter(book, drink.clone()).is_unapproved)
}

/// The book before anything in it was approved.
fn all_drafts(book: &Book) -> Book {
    let mut drafts = book.clone();
    for recipe in &book.recipes {
        let mut recipe = (**recipe).clone();
        recipe.approvals.clear();
        recipe.state = State::Draft;
        for version in &mut recipe.versions {
            version.state = State::Draft;
        }
        drafts.recipes.put(recipe);
    }
    drafts
}

#[test]
fn a_card_of_what_is_not_approved_says_so_below_its_title_in_every_format() {
    let book = sample();
    let (approved, others) = by_approval(&book);
    assert!(!approved.is_empty() && !others.is_empty());
    for drink in approved.into_iter().chain(others) {
        let document = counter(&book, drink.clone());
        let state = book
            .recipe(&drink.recipe)
            .unwrap()
            .state_of(drink.version.as_ref());
        if state != Some(State::Approved) {
            assert!(document.is_unapproved, "{drink:?}");
            assert!(
                document.revision.contains("not approved"),
                "{}",
                document.revision
            );
        }
        let pages = Typesetter::new(Fonts::bundled(), "en").pages(&document, Paper::A5);
        let framed = pages[0]
            .marks
            .iter()
            .any(|mark| matches!(mark, Mark::Frame { .. }));
        assert_eq!(framed, document.is_unapproved, "{drink:?}");
        let page = html(&document, Paper::A5);
        assert_eq!(
            page.contains("class=\"unapproved\""),
            document.is_unapproved
        );
        assert_eq!(markdown(&document).contains("> **"), {
            let cautions = document
                .blocks
                .iter()
                .any(|block| matches!(block, Block::Cautions(cautions) if !cautions.is_empty()));
            document.is_unapproved || cautions
        });
    }
}

#[test]
fn a_card_of_any_kind_says_that_its_drink_is_not_approved() {
    let drafts = all_drafts(&sample());
    let documents = every_kind(&drafts);
    for kind in CardKind::ALL {
        let document = documents.iter().find(|document| document.kind == kind);
        let document = document.unwrap_or_else(|| panic!("no card of the kind {kind:?}"));
        assert!(document.is_unapproved, "{kind:?}");
        assert!(
            document.revision.contains("not approved"),
            "{kind:?}: {}",
            document.revision
        );
    }
}

#[test]
fn the_menu_has_the_approved_drinks_and_names_the_others() {
    let book = sample();
    let (approved, others) = by_approval(&book);
    let menu = |on_menu| card(&book, &CardRequest::Menu(on_menu), &options()).unwrap();
    let rows = |document: &Document| -> Vec<String> {
        let Block::Table(table) = &document.blocks[0] else {
            panic!("the matrix comes first")
        };
        table.rows.iter().map(|row| row[0].clone()).collect()
    };
    let short = menu(OnMenu::Approved);
    assert_eq!(rows(&short).len(), approved.len());
    assert!(!short.is_unapproved);
    let texts = short.texts();
    let left_out = texts
        .iter()
        .find(|text| text.starts_with("Not on this sheet"));
    let left_out = left_out.unwrap();
    for drink in &others {
        let name = &book.recipe(&drink.recipe).unwrap().name;
        assert!(left_out.contains(name.as_str()), "{name}: {left_out}");
    }
    let long = menu(OnMenu::All);
    assert_eq!(rows(&long).len(), approved.len() + others.len());
    assert!(long.is_unapproved);
    let marked = rows(&long)
        .into_iter()
        .filter(|name| name.contains("approv"));
    assert_eq!(marked.count(), others.len());
    let drafts = all_drafts(&book);
    let request = CardRequest::Menu(OnMenu::Approved);
    assert_eq!(
        card(&drafts, &request, &options()),
        Err(CardError::NothingApproved)
    );
}

#[test]
fn water_says_how_hot_it_is_and_what_comes_from_a_shelf_does_not() {
    let book = sample();
    let room = book.settings.room_temperature.celsius();
    let mut told = 0;
    for drink in drinks_of_menu(&book) {
        let recipe = book.recipe(&drink.recipe).unwrap();
        let balance = balance_version(&book, recipe, drink.version.as_ref()).unwrap();
        let document = counter(&book, drink.clone());
        let Block::Steps(stages) = &document.blocks[0] else {
            panic!("the steps come first")
        };
        let rows = stages.iter().flat_map(|stage| &stage.rows);
        let rows = rows.filter_map(|row| match row {
            StepRow::Line { remarks, .. } => Some(remarks),
            StepRow::Instruction(_) => None,
        });
        for (line, remarks) in balance.resolved.lines().zip(rows) {
            let share = balance
                .lines
                .iter()
                .find(|share| share.line == line.id && !share.carried);
            let celsius = share.unwrap().celsius;
            let says = remarks.iter().any(|remark| remark.ends_with("°C"));
            let is_hot = celsius > room + 0.5;
            let is_told = is_hot
                || (line.temperature.is_some() || line.role == Role::Water)
                    && (celsius - room).abs() > 0.5;
            assert_eq!(says, is_told, "{drink:?} {}: {celsius}", line.ingredient);
            told += usize::from(says);
        }
    }
    assert!(told > 0);
}

#[test]
fn what_a_drink_contains_is_bold_and_the_facts_beside_it_are_not() {
    let book = sample();
    let mut contain = 0;
    for drink in drinks_of_menu(&book) {
        for block in counter(&book, drink).blocks {
            if let Block::Facts(facts) = block {
                for fact in facts {
                    assert_eq!(
                        fact.is_strong,
                        fact.name == "contains" && !fact.value.starts_with("none")
                    );
                    contain += usize::from(fact.is_strong);
                }
            }
        }
    }
    assert!(contain > 0);
    let menu = card(&book, &CardRequest::Menu(OnMenu::All), &options()).unwrap();
    let page = html(&menu, Paper::A4);
    assert!(page.contains("<td dir=\"auto\"><strong>contains</strong></td>"));
    assert!(!page.contains("<strong>may contain</strong>"));
}

/// The smallest words of a page apart from its foot and the small print, pt.
fn size_of_words(document: &Document, paper: Paper) -> (usize, f32) {
    let pages = Typesetter::new(Fonts::bundled(), "en").pages(document, paper);
    let runs = pages
        .iter()
        .flat_map(|page| &page.marks)
        .filter_map(|mark| match mark {
            Mark::Glyphs(run) => Some(run),
            _ => None,
        });
    // The facts and the steps are set in the size of the page.
    let names = ["serving temperature", "cup"];
    let sizes = runs
        .filter(|run| names.contains(&&*run.text))
        .map(|run| run.size);
    (pages.len(), sizes.fold(f32::INFINITY, f32::min))
}

#[test]
fn a_card_for_the_wall_is_read_from_where_one_stands() {
    let book = sample();
    for drink in drinks_of_menu(&book) {
        let document = counter(&book, drink);
        let (_, beside) = size_of_words(&document, Paper::A5);
        for wall in [Paper::Wall, Paper::LetterWall] {
            let (pages, size) = size_of_words(&document, wall);
            assert!(
                size >= 12.5 && size >= 1.3 * beside,
                "{size} beside {beside}"
            );
            // A larger size than the smallest is only taken when everything stays on one page.
            assert!(pages == 1 || size < 13.0, "{pages} pages at {size}");
        }
    }
    for document in every_kind(&book) {
        if document.orientation == Orientation::Wide {
            let pages = Typesetter::new(Fonts::bundled(), "en").pages(&document, Paper::Wall);
            assert!(!pages.is_empty());
        }
    }
}
