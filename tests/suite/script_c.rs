//! The lesson of the invented shop *Millrace Tea*, from the wall screen to the sheets of paper, through the accessibility tree,
//! with what the trainer's hands do counted.

use std::path::{Path, PathBuf};
use std::sync::Arc;

use egui::Role;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{AxisDifference, Taste};
use evensip::book::{Book, IngredientId, RecipeId};
use evensip::book_file::parse;
use evensip::cards::{
    Block, CardOptions, CardRequest, Document, Drink, Fonts, Mark, Paper, TaughtSwap, Typesetter,
    card,
};
use evensip::say::{Language, Speaker};
use evensip::swap::{Question, answer, walk};
use evensip::ui::Area;

use crate::at_the_window::{
    Hands, NARROW, TALL, Window, WindowBuilder, book, choose_folder, click, click_on, eventually,
    go, hands, has, row, rows, says, settle, show,
};
use crate::played_day::Picks;

const SHOP: &str = include_str!("../shops/millrace.ron");

fn millrace() -> Book {
    let (book, findings) = parse(SHOP).unwrap();
    let errors: Vec<_> = findings
        .iter()
        .filter(|finding| finding.severity == evensip::book::Severity::Error)
        .collect();
    assert!(errors.is_empty(), "{errors:?}");
    book
}

fn barley() -> TaughtSwap {
    TaughtSwap {
        drink: Drink {
            recipe: RecipeId::new("barley-lantern").unwrap(),
            version: None,
        },
        replace: IngredientId::new("thornby-barley").unwrap(),
        with: IngredientId::new("aldgrave-barley").unwrap(),
    }
}

/// What each step comes to, as the engine has it.
fn steps(book: &Book) -> Vec<Vec<AxisDifference>> {
    let TaughtSwap {
        drink,
        replace,
        with,
    } = barley();
    let question = Question {
        recipe: drink.recipe,
        version: None,
        replace,
        with,
        adjust: None,
    };
    let answer = answer(book, &question).unwrap();
    let steps = walk(book, &answer, &answer.suggestions[0]);
    let counted = steps.iter().skip(1);
    counted
        .map(|step| step.difference.counted().cloned().collect())
        .collect()
}

/// Presses and keys so far; a text that is typed counts as one entry.
fn done(window: &Window) -> (u32, u32) {
    let Hands {
        presses,
        keys,
        texts,
    } = hands(window);
    (presses + keys, texts)
}

#[test]
fn four_learners_expect_at_the_wall_the_reveal_says_why_and_the_next_drink_is_one_click_away() {
    let mut window = WindowBuilder::of(NARROW).with_book(millrace()).open();
    show(&mut window, "barley-lantern", None);
    let before = book(&window);
    let steps = steps(&before);
    go(&mut window, Area::Lesson);
    click(&mut window, "Replace Thornby roasted barley powder");
    click(&mut window, "With Aldgrave roasted barley powder");
    click(&mut window, "Show on a wall screen");
    assert!((2.0..=2.5).contains(&window.ctx.zoom_factor()));
    let begun = done(&window);
    assert!(begun.0 <= 3, "{begun:?}");
    let speaker = Speaker::new(&before);
    let (mut right, mut asked) = (0, 0);
    for (at, axes) in steps.iter().enumerate() {
        // The group agrees on what the sugar does and guesses at the body; it is right about the first.
        let mut of_step = (0, 0);
        for came in axes {
            let guess = match came.axis {
                evensip::book::Axis::Sweetness => came.taste().unwrap(),
                evensip::book::Axis::Body => Taste::More,
                _ => continue,
            };
            let button = format!(
                "{}: {}",
                speaker.axis(&came.axis),
                speaker.taste(guess, &came.axis)
            );
            click(&mut window, &button);
            of_step.1 += 1;
            of_step.0 += u32::from(came.taste() == Some(guess));
        }
        click(&mut window, "Reveal");
        let score = format!("{} of {} predicted correctly", of_step.0, of_step.1);
        assert!(has(&window, &score), "{score}");
        right += of_step.0;
        asked += of_step.1;
        // What is off is said with its figures and the line behind it.
        for came in axes {
            if came.taste().is_some_and(|taste| taste != Taste::Same) {
                let verdict = speaker.against_standard(came);
                assert!(says(&window, &verdict), "{verdict}");
                assert!(says(&window, "; one step is "));
            }
        }
        if at == 0 {
            assert!(says(&window, "Aldgrave roasted barley powder brings"));
        }
        if at + 1 < steps.len() {
            click(&mut window, "Next step");
        }
    }
    let whole = format!("In all steps {right} of {asked} predicted correctly");
    assert!(has(&window, &whole), "{whole}");
    let (clicks, texts) = done(&window);
    // Two predictions, a reveal and a step on for each step; nothing is typed.
    let most = 3 + 4 * u32::try_from(steps.len()).unwrap();
    assert!(
        clicks <= most && texts == 0,
        "{clicks} of {most}, {texts} texts"
    );
    let next = row(&window, "Next drink: ");
    assert_eq!(
        next, "Next drink: Barley Mill",
        "the next that has this powder"
    );
    click(&mut window, &next);
    assert!(says(&window, "Barley Mill: Aldgrave roasted barley powder"));
    assert!(
        rows(&window, "1 of ")
            .iter()
            .any(|words| words.contains("Plain swap"))
    );
    assert_eq!(*book(&window), *before, "a lesson changes nothing");
    go(&mut window, Area::Recipe);
    assert!((window.ctx.zoom_factor() - 1.0).abs() < 1e-6);
    let strip = window.query_by_role_and_label(Role::Button, "Keyboard");
    assert!(strip.is_some_and(|node| !node.accesskit_node().is_disabled()));
}

/// Writes what is chosen and waits for the file.
fn write(window: &mut Window, count: usize, folder: &Path) {
    click(window, "Write the card");
    eventually(window, "the file", |_| {
        pdfs(folder).iter().filter(|path| is_whole(path)).count() == count
    });
}

fn pdfs(folder: &Path) -> Vec<PathBuf> {
    let files = std::fs::read_dir(folder).unwrap();
    let files = files.map(|entry| entry.unwrap().path());
    files
        .filter(|path| path.extension().is_some_and(|extension| extension == "pdf"))
        .collect()
}

fn is_whole(path: &Path) -> bool {
    std::fs::read(path).is_ok_and(|bytes| bytes.starts_with(b"%PDF-"))
}

/// From the lesson to four sheets of paper: the exercise, its answers, and how the drink is made, in two languages.
#[test]
fn the_exercise_its_answers_and_the_training_sheets_are_written_with_twelve_presses_and_no_text() {
    let folder = tempfile::tempdir().unwrap();
    let picks = Picks {
        folder: folder.path().to_owned(),
        list: None,
    };
    let mut window = WindowBuilder::of(TALL)
        .with_book(millrace())
        .with_picker(Arc::new(picks))
        .with_any_letters()
        .open();
    show(&mut window, "barley-lantern", None);
    go(&mut window, Area::Lesson);
    click(&mut window, "Replace Thornby roasted barley powder");
    click(&mut window, "With Aldgrave roasted barley powder");
    click(&mut window, "Exercise on paper…");
    choose_folder(&mut window);
    write(&mut window, 1, folder.path());
    click_on(
        &mut window,
        Role::RadioButton,
        "Answers to the swap exercise",
    );
    write(&mut window, 2, folder.path());
    click_on(&mut window, Role::RadioButton, "Training sheet");
    write(&mut window, 3, folder.path());
    let language = window.get_by_role_and_label(Role::ComboBox, "Language of the card");
    language.click();
    settle(&mut window);
    click(&mut window, "Tiếng Việt");
    write(&mut window, 4, folder.path());
    let (presses, texts) = done(&window);
    assert!(
        presses <= 12 && texts == 0,
        "{presses} presses, {texts} texts"
    );
}

fn options(language: &str) -> CardOptions {
    CardOptions {
        date: "2026-11-30".to_owned(),
        language: Language::from_code(language).unwrap(),
        ..CardOptions::default()
    }
}

fn texts(document: &Document) -> String {
    document.texts().join("\n")
}

#[test]
fn the_exercise_for_four_is_one_sheet_with_boxes_and_a_line_for_the_name_and_the_answers_are_another()
 {
    let book = millrace();
    for code in ["en", "vi", "de", "zh-Hans"] {
        let options = options(code);
        let speaker = Speaker::new(&book).in_language(options.language);
        let sheet = card(&book, &CardRequest::Exercise(barley()), &options).unwrap();
        let answers = card(&book, &CardRequest::Answers(barley()), &options).unwrap();
        let name = speaker.word("training-name");
        let has_line = sheet.blocks.iter().any(|block| match block {
            Block::Facts(facts) => facts
                .iter()
                .any(|fact| fact.is_to_fill_in && fact.name == name),
            _ => false,
        });
        assert!(has_line, "{code}");
        assert!(!texts(&sheet).contains("[ "), "{code}: boxes are drawn");
        for came in steps(&book).iter().flatten() {
            let verdict = speaker.against_standard(came);
            assert!(texts(&answers).contains(&verdict), "{code}: {verdict}");
            if came.taste() != Some(Taste::Same) {
                assert!(!texts(&sheet).contains(&verdict), "{code}: {verdict}");
            }
        }
        let cautions = |document: &Document| {
            let blocks = document.blocks.iter();
            blocks
                .filter(|block| matches!(block, Block::Cautions(_)))
                .cloned()
                .collect::<Vec<_>>()
        };
        assert_eq!(cautions(&sheet), cautions(&answers), "{code}");
        if code.starts_with("zh") {
            continue;
        }
        for paper in [Paper::A4, Paper::Letter] {
            let mut setter = Typesetter::new(Fonts::bundled(), code);
            let pages = setter.pages(&sheet, paper);
            let boxes = pages.iter().flat_map(|page| &page.marks);
            let boxes = boxes
                .filter(|mark| matches!(mark, Mark::Frame { .. }))
                .count();
            let rows: usize = steps(&book).iter().map(Vec::len).sum();
            assert_eq!(boxes, 3 * rows, "{code} {paper:?}");
        }
    }
}

#[test]
fn the_training_sheet_is_there_in_vietnamese_and_in_english() {
    let book = millrace();
    for code in ["vi", "en"] {
        let request = CardRequest::Training(barley().drink);
        let sheet = card(&book, &request, &options(code)).unwrap();
        let speaker = Speaker::new(&book).in_language(options(code).language);
        assert!(
            texts(&sheet).contains(speaker.word("training-how")),
            "{code}"
        );
        assert!(
            !texts(&sheet).contains("____"),
            "{code}: a line to write on is drawn"
        );
    }
}

/// The shop as a file, for whoever wants to see it.
#[test]
fn the_shop_opens_from_its_file() {
    let path = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/shops/millrace.ron");
    let window = WindowBuilder::of(NARROW).with_file(path).open();
    assert!(!says(&window, "unknown word"));
    assert_eq!(book(&window).settings.shop, "Millrace Tea");
}
