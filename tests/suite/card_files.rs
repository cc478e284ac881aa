//! Cards as files: the command, the export beside the window, and both commands that bring something in.

use std::path::Path;
use std::process::{Command, Output};
use std::sync::Arc;
use std::time::{Duration, Instant};

use evensip::book::Book;
use evensip::book_file::write_beside_others;
use evensip::cards::{CardError, CardOptions, CardRequest, OnMenu, Paper, drinks_of_menu};
use evensip::say::{Language, Speaker};
use evensip::workbench::{
    CardFormat, Export, ExportOrder, ExportState, PreviewOrder, Previewing, SharedFonts,
};

use crate::cards::options;
use crate::sample::sample;

const SAMPLE: &str = "sample-books/harrowmere.ron";

fn evensip(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_evensip"))
        .args(arguments)
        .current_dir(env!("CARGO_MANIFEST_DIR"))
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY")
        .output()
        .expect("the program starts")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

#[test]
fn the_command_writes_each_format_by_the_ending_of_the_file() {
    let folder = tempfile::tempdir().unwrap();
    for (name, begins) in [
        ("card.pdf", "%PDF-"),
        ("card.html", "<!DOCTYPE html>"),
        ("card.md", "# Hob"),
        ("card.csv", "\u{feff}title"),
        ("card.json", "{"),
    ] {
        let path = folder.path().join(name);
        let output = evensip(&[
            "card",
            SAMPLE,
            "--recipe",
            "hob-and-ember",
            "--date",
            "2026-11-25",
            "--out",
            path.to_str().unwrap(),
        ]);
        assert!(output.status.success(), "{name}: {}", text(&output.stderr));
        let bytes = std::fs::read(&path).unwrap();
        assert!(text(&bytes).starts_with(begins), "{name}");
    }
    // Nothing is left beside them.
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 5);
}

#[test]
fn wrong_usage_is_said_in_a_sentence_with_code_2_and_writes_nothing() {
    let folder = tempfile::tempdir().unwrap();
    let out = folder.path().join("card.pdf");
    let out = out.to_str().unwrap();
    let odd = folder.path().join("card.xyz");
    for (arguments, says) in [
        (
            vec!["card", SAMPLE, "--out", out],
            "name it with `--recipe ID`",
        ),
        (
            vec!["card", SAMPLE, "--recipe", "nothing", "--out", out],
            "there is no recipe",
        ),
        (
            vec![
                "card",
                SAMPLE,
                "--recipe",
                "hob-and-ember",
                "--kind",
                "comparison",
                "--out",
                out,
            ],
            "2 to 4",
        ),
        (
            vec![
                "card",
                SAMPLE,
                "--recipe",
                "hob-and-ember",
                "--out",
                odd.to_str().unwrap(),
            ],
            "the format can't be told",
        ),
    ] {
        let output = evensip(&arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        assert!(
            text(&output.stderr).contains(says),
            "{}",
            text(&output.stderr)
        );
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 0);
}

#[test]
fn every_drink_of_the_menu_gets_a_file_of_its_own() {
    let folder = tempfile::tempdir().unwrap();
    let output = evensip(&[
        "card",
        SAMPLE,
        "--all",
        "--format",
        "md",
        "--out",
        folder.path().to_str().unwrap(),
    ]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    let files = std::fs::read_dir(folder.path()).unwrap().count();
    assert_eq!(files, drinks_of_menu(&sample()).len());
}

#[test]
fn a_price_list_is_shown_and_written_only_when_it_is_accepted() {
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book.ron");
    std::fs::copy(Path::new(env!("CARGO_MANIFEST_DIR")).join(SAMPLE), &book).unwrap();
    let before = std::fs::read(&book).unwrap();
    let list = folder.path().join("prices.csv");
    std::fs::write(&list, "name;brand;price;pack\nPlum powder;Velm;9,50;1 kg\n").unwrap();
    let (book_path, list) = (book.to_str().unwrap(), list.to_str().unwrap());
    let output = evensip(&["bring-in", book_path, list]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(text(&output.stdout).contains("1 new, 0 changed, 0 the same, 0 skipped"));
    assert_eq!(std::fs::read(&book).unwrap(), before);
    let output = evensip(&["bring-in", book_path, list, "--accept"]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(text(&std::fs::read(&book).unwrap()).contains("Plum powder"));
}

#[test]
fn a_recipe_goes_from_book_to_book_by_the_commands() {
    let folder = tempfile::tempdir().unwrap();
    let passed = folder.path().join("passed.ron");
    let book = folder.path().join("book.ron");
    std::fs::copy(Path::new(env!("CARGO_MANIFEST_DIR")).join(SAMPLE), &book).unwrap();
    let output = evensip(&[
        "card",
        SAMPLE,
        "--recipe",
        "hob-and-ember",
        "--kind",
        "other-shop",
        "--out",
        passed.to_str().unwrap(),
    ]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    let output = evensip(&[
        "bring-in",
        book.to_str().unwrap(),
        passed.to_str().unwrap(),
        "--accept",
    ]);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(
        text(&output.stdout).contains("brought back"),
        "{}",
        text(&output.stdout)
    );
    assert!(text(&std::fs::read(&book).unwrap()).contains("approved there"));
}

fn wait_for_end(export: &mut Export) -> (usize, Option<String>) {
    let begun = Instant::now();
    loop {
        if let ExportState::Ended { written, stopped } = export.state() {
            return (written.len(), stopped);
        }
        assert!(begun.elapsed() < Duration::from_mins(5), "it never ends");
        std::thread::sleep(Duration::from_millis(5));
    }
}

/// So many counter cards of the sample into a folder.
fn start(folder: &Path, count: usize) -> Export {
    let book = Arc::new(sample());
    let drinks = drinks_of_menu(&book);
    let requests = drinks
        .into_iter()
        .cycle()
        .take(count)
        .map(CardRequest::Counter);
    let order = ExportOrder {
        requests: requests.collect(),
        options: options(),
        paper: Paper::A5,
        format: CardFormat::Pdf,
        folder: folder.to_owned(),
    };
    let voice = Speaker::without_book();
    let wake: Arc<dyn Fn() + Send + Sync> = Arc::new(|| ());
    Export::start(book, order, SharedFonts::bundled(), voice, &wake)
}

#[test]
fn an_export_tells_how_far_it_is_and_writes_every_card() {
    let folder = tempfile::tempdir().unwrap();
    let mut export = start(folder.path(), 30);
    assert_eq!(wait_for_end(&mut export), (30, None));
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 30);
}

/// The language of the card is that of whoever reads the card; why there is none is for whoever asks for it.
#[test]
fn why_there_is_no_card_is_told_in_the_language_of_the_window() {
    let folder = tempfile::tempdir().unwrap();
    let book = Arc::new(Book::default());
    let language = |code| Language::from_code(code).unwrap();
    let options = CardOptions {
        language: language("fr"),
        ..options()
    };
    let voice = Speaker::without_book().in_language(language("de"));
    let wake: Arc<dyn Fn() + Send + Sync> = Arc::new(|| ());
    let order = ExportOrder {
        requests: vec![CardRequest::Menu(OnMenu::All)],
        options: options.clone(),
        paper: Paper::A4,
        format: CardFormat::Html,
        folder: folder.path().to_owned(),
    };
    let fonts = SharedFonts::bundled();
    let mut export = Export::start(book.clone(), order, fonts.clone(), voice, &wake);
    let reason = CardError::EmptyMenu.words(&voice);
    assert_eq!(wait_for_end(&mut export), (0, Some(reason.clone())));
    let order = PreviewOrder {
        request: CardRequest::Menu(OnMenu::All),
        options,
        paper: Paper::A4,
    };
    let previewing = Previewing::start(book, order, fonts, voice, &wake);
    let preview = loop {
        if let Some(preview) = previewing.poll() {
            break preview;
        }
        std::thread::sleep(Duration::from_millis(1));
    };
    assert_eq!(preview.unwrap_err(), reason);
}

#[test]
fn a_stopped_export_keeps_whole_files_only() {
    let folder = tempfile::tempdir().unwrap();
    let mut export = start(folder.path(), 500);
    while matches!(export.state(), ExportState::Running { done: 0, .. }) {
        std::thread::sleep(Duration::from_millis(1));
    }
    export.cancel();
    let (written, stopped) = wait_for_end(&mut export);
    assert!(written < 500, "{written}");
    assert!(stopped.unwrap().contains("stopped"));
    for entry in std::fs::read_dir(folder.path()).unwrap() {
        let bytes = std::fs::read(entry.unwrap().path()).unwrap();
        assert!(bytes.starts_with(b"%PDF-") && bytes.trim_ascii_end().ends_with(b"%%EOF"));
    }
}

#[test]
fn an_export_into_nowhere_says_so() {
    let folder = tempfile::tempdir().unwrap();
    let mut export = start(&folder.path().join("missing"), 3);
    let (written, stopped) = wait_for_end(&mut export);
    assert_eq!(written, 0);
    assert!(stopped.unwrap().contains("folder"));
}

#[test]
fn a_file_that_is_there_is_never_overwritten() {
    let folder = tempfile::tempdir().unwrap();
    let mut names = Vec::new();
    for round in 0..3 {
        let mut export = start(folder.path(), 4);
        assert_eq!(wait_for_end(&mut export), (4, None));
        let ExportState::Ended { written, .. } = export.state() else {
            panic!("it has ended")
        };
        for card in &written {
            // Those of the first round may have one name as well.
            assert!(round == 0 || card.was_taken.is_some(), "{card:?}");
            assert!(!names.contains(&card.path), "{card:?}");
            names.push(card.path.clone());
        }
    }
    assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 12);
    // Neither a person's own file, a folder nor a link that leads nowhere gives way.
    std::fs::write(folder.path().join("card.md"), "mine").unwrap();
    std::fs::create_dir(folder.path().join("card-2.md")).unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink("nowhere", folder.path().join("card-3.md")).unwrap();
    let path = write_beside_others(folder.path(), "card.md", b"new").unwrap();
    assert!(
        path.ends_with("card-4.md") || !cfg!(unix),
        "{}",
        path.display()
    );
    assert_eq!(
        std::fs::read(folder.path().join("card.md")).unwrap(),
        b"mine"
    );
}

#[test]
fn an_exercise_asks_for_every_step_and_its_answers_have_a_sheet_of_their_own() {
    let folder = tempfile::tempdir().unwrap();
    let out = folder.path().join("exercise.md");
    let run = |kind: &str, replace: &str| {
        std::process::Command::new(env!("CARGO_BIN_EXE_evensip"))
            .args([
                "card",
                "sample-books/harrowmere.ron",
                "--recipe",
                "hazelthwaite",
            ])
            .args(["--kind", kind, "--replace", replace])
            .args(["--with", "ketterby-chestnut", "--out"])
            .arg(&out)
            .current_dir(env!("CARGO_MANIFEST_DIR"))
            .output()
            .unwrap()
    };
    let written = |kind: &str| {
        let output = run(kind, "tambrel-chestnut");
        assert!(output.status.success(), "{output:?}");
        std::fs::read_to_string(&out).unwrap()
    };
    let sheet = written("exercise");
    assert!(
        sheet.contains("☐ sweeter") && sheet.contains("☐ the same"),
        "{sheet}"
    );
    assert!(sheet.contains("- name: \\_"), "{sheet}");
    assert!(
        !sheet.contains("steps |") && !sheet.contains("answer"),
        "{sheet}"
    );
    let answers = written("answers");
    assert!(answers.contains("answers for the trainer"), "{answers}");
    assert!(answers.contains("sweeter by 1.9 steps"), "{answers}");
    assert!(
        answers.contains("g/100 ml") && !answers.contains('☐'),
        "{answers}"
    );
    let refused = run("exercise", "copper-plum-syrup-that-is-not-there");
    assert_eq!(refused.status.code(), Some(2), "{refused:?}");
}
