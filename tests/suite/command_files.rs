//! What commands write: first the file and then the words, nothing over what another hand wrote, and nothing in place of
//! what is no card.

use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::time::Duration;

use evensip::book_file::{built_in, load, write};
use evensip::cards::{Document, Paper, csv, html, is_card_like, json, markdown, pdf};
use proptest::prelude::*;

use crate::arbitrary_book::{self, Dice};
use crate::cards::every_kind;
use crate::sample::sample;

fn command(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_evensip"));
    command
        .args(arguments)
        .env_remove("DISPLAY")
        .env_remove("WAYLAND_DISPLAY");
    command
}

fn evensip(arguments: &[&str]) -> Output {
    command(arguments).output().unwrap()
}

fn said(output: &Output) -> String {
    String::from_utf8_lossy(&output.stderr).into_owned()
}

/// A folder with the built-in book and a price list of so many new ingredients.
fn book_and_list(rows: usize) -> (tempfile::TempDir, PathBuf, PathBuf) {
    let folder = tempfile::tempdir().unwrap();
    let (book, list) = (
        folder.path().join("book.ron"),
        folder.path().join("list.csv"),
    );
    fs::write(&book, built_in()).unwrap();
    let mut text = "name,brand,form,price,pack g\n".to_owned();
    for row in 0..rows {
        let _ = writeln!(text, "Plum powder {row},Velm,powder,9.50,1000");
    }
    fs::write(&list, text).unwrap();
    (folder, book, list)
}

fn bring_in<'path>(book: &'path Path, list: &'path Path) -> [&'path str; 4] {
    [
        "bring-in",
        book.to_str().unwrap(),
        list.to_str().unwrap(),
        "--accept",
    ]
}

#[test]
fn what_is_accepted_is_written_although_nobody_listens() {
    let (_folder, book, list) = book_and_list(2000);
    let mut child = command(&bring_in(&book, &list))
        .stdout(Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    assert_eq!(child.wait().unwrap().code(), Some(0));
    assert!(
        fs::read_to_string(&book)
            .unwrap()
            .contains("Plum powder 1999")
    );
}

#[test]
fn what_another_hand_writes_meanwhile_is_never_lost() {
    let mut refused = 0;
    for round in 0..60 {
        let (_folder, book, list) = book_and_list(1500);
        let child = command(&bring_in(&book, &list))
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .unwrap();
        std::thread::sleep(Duration::from_millis(8 * round));
        let theirs = built_in().replacen("note: \"", "note: \"THEIRS ", 1);
        assert!(theirs.contains("THEIRS"));
        let beside = book.with_extension("new");
        fs::write(&beside, &theirs).unwrap();
        fs::rename(&beside, &book).unwrap();
        let output = child.wait_with_output().unwrap();
        let text = fs::read_to_string(&book).unwrap();
        assert!(text.contains("THEIRS"), "round {round}: {}", said(&output));
        if output.status.code() == Some(1) {
            assert!(
                said(&output).contains("in the meantime"),
                "{}",
                said(&output)
            );
            assert_eq!(text, theirs);
            refused += 1;
        }
        if refused >= 2 && round >= 10 {
            return;
        }
    }
    assert!(refused > 0, "no change fell between reading and writing");
}

#[test]
fn comments_are_not_dropped_without_a_word() {
    let (_folder, book, list) = book_and_list(1);
    let text = format!("// from the old binder\n{}", built_in());
    fs::write(&book, &text).unwrap();
    let output = evensip(&bring_in(&book, &list));
    assert_eq!(output.status.code(), Some(2), "{}", said(&output));
    assert!(
        said(&output).contains("--drop-comments"),
        "{}",
        said(&output)
    );
    assert_eq!(fs::read_to_string(&book).unwrap(), text);
    let output = evensip(&[&bring_in(&book, &list)[..], &["--drop-comments"]].concat());
    assert_eq!(output.status.code(), Some(0), "{}", said(&output));
    assert!(load(&book).is_ok_and(|loaded| !loaded.text_has_comments));
}

#[test]
fn a_book_that_has_errors_after_a_list_was_brought_in_ends_with_1() {
    let (_folder, book, list) = book_and_list(1);
    let text = fs::read_to_string(&book).unwrap();
    assert!(text.contains("waste_percent: 2.0"));
    fs::write(
        &book,
        text.replacen("waste_percent: 2.0", "waste_percent: 120.0", 1),
    )
    .unwrap();
    let output = evensip(&bring_in(&book, &list));
    assert_eq!(output.status.code(), Some(1), "{}", said(&output));
    assert!(said(&output).contains("error in"), "{}", said(&output));
    let errors = load(&book).unwrap().findings;
    assert!(!errors.is_empty());
}

fn card(book: &Path, out: &Path, more: &[&str]) -> Output {
    let mut arguments = vec!["card", book.to_str().unwrap(), "--recipe", "hob-and-ember"];
    arguments.extend(["--out", out.to_str().unwrap()]);
    arguments.extend(more);
    evensip(&arguments)
}

#[test]
fn a_card_replaces_a_card_and_nothing_else_unasked() {
    let (folder, book, list) = book_and_list(1);
    let other = folder.path().join("other.ron");
    fs::write(&other, built_in()).unwrap();
    let list_text = fs::read(&list).unwrap();
    for (out, kind) in [
        (&other, vec!["--format", "pdf"]),
        (&other, vec!["--kind", "other-shop"]),
        (&list, vec![]),
    ] {
        let before = fs::read(out).unwrap();
        let output = card(&book, out, &kind);
        assert_eq!(output.status.code(), Some(2), "{}", said(&output));
        assert!(said(&output).contains("--overwrite"), "{}", said(&output));
        assert_eq!(fs::read(out).unwrap(), before);
    }
    assert_eq!(fs::read(&list).unwrap(), list_text);
    for name in ["card.pdf", "card.html", "card.md", "card.csv", "card.json"] {
        let out = folder.path().join(name);
        for date in ["2026-11-27", "2026-11-28"] {
            let output = card(&book, &out, &["--date", date]);
            assert_eq!(output.status.code(), Some(0), "{name}: {}", said(&output));
        }
        // Words of a person in its place stay.
        fs::write(&out, "my own words\n").unwrap();
        assert_eq!(card(&book, &out, &[]).status.code(), Some(2), "{name}");
        assert_eq!(fs::read(&out).unwrap(), b"my own words\n");
        let output = card(&book, &out, &["--overwrite"]);
        assert_eq!(output.status.code(), Some(0), "{name}: {}", said(&output));
    }
    // The book itself stays whatever is said.
    let output = card(&book, &book, &["--format", "pdf", "--overwrite"]);
    assert_eq!(output.status.code(), Some(2), "{}", said(&output));
    assert_eq!(fs::read_to_string(&book).unwrap(), built_in());
}

#[test]
fn a_recipe_for_others_is_written_in_no_format_but_its_own() {
    let (folder, book, _) = book_and_list(1);
    for (kind, format, name) in [
        ("recipe", "html", "out.html"),
        ("recipe", "pdf", "out.json"),
        ("other-shop", "json", "out.ron"),
    ] {
        let out = folder.path().join(name);
        let output = card(&book, &out, &["--kind", kind, "--format", format]);
        assert_eq!(output.status.code(), Some(2), "{kind} {format}");
        assert!(
            said(&output).contains("only written as"),
            "{}",
            said(&output)
        );
        assert!(!out.exists());
    }
    let out = folder.path().join("out.html");
    assert_eq!(
        card(&book, &out, &["--kind", "recipe"]).status.code(),
        Some(2)
    );
    let out = folder.path().join("out.json");
    assert_eq!(
        card(&book, &out, &["--kind", "recipe"]).status.code(),
        Some(0)
    );
    assert_eq!(
        card(&book, &out, &["--kind", "recipe"]).status.code(),
        Some(0)
    );
}

#[cfg(unix)]
#[test]
fn a_link_is_written_through_and_what_is_no_file_stays() {
    use std::os::unix::fs::{FileTypeExt as _, symlink};
    let (folder, book, _) = book_and_list(1);
    let (link, target) = (folder.path().join("link.md"), folder.path().join("deep.md"));
    symlink("deep.md", &link).unwrap();
    for _ in 0..2 {
        let output = card(&book, &link, &[]);
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
        assert!(fs::symlink_metadata(&link).unwrap().is_symlink());
        assert!(fs::read_to_string(&target).unwrap().starts_with("# Hob"));
    }
    let socket = folder.path().join("socket.md");
    let _listener = std::os::unix::net::UnixListener::bind(&socket).unwrap();
    for more in [&[][..], &["--overwrite"]] {
        let output = card(&book, &socket, more);
        assert_eq!(output.status.code(), Some(1), "{}", said(&output));
        assert!(
            said(&output).contains("not an ordinary file"),
            "{}",
            said(&output)
        );
        let kind = fs::symlink_metadata(&socket).unwrap().file_type();
        assert!(kind.is_socket());
    }
}

#[test]
fn a_mistyped_command_is_named_with_what_was_probably_meant() {
    for arguments in [&["chekc"][..], &["chekc", "book.ron"], &["blance", "--all"]] {
        let output = evensip(arguments);
        assert_eq!(output.status.code(), Some(2), "{}", said(&output));
        assert!(
            said(&output).contains("neither a command nor a book")
                && said(&output).contains("did you mean"),
            "{}",
            said(&output)
        );
    }
    for help in [
        &["--help"][..],
        &["check", "--help"],
        &["bring-in", "--help"],
        &["help"],
    ] {
        let output = evensip(help);
        assert_eq!(output.status.code(), Some(0), "{}", said(&output));
        let text = String::from_utf8(output.stdout).unwrap();
        assert!(text.contains("Exit codes: 0 on success"), "{text}");
    }
}

/// The text formats of a document.
fn written(document: &Document) -> Vec<Vec<u8>> {
    vec![
        html(document, Paper::A5).into_bytes(),
        markdown(document).into_bytes(),
        csv(document),
        format!("{:#}\n", json(document)).into_bytes(),
        pdf(document, &[]).unwrap(),
    ]
}

/// Bytes that are no card, many of them like one.
fn no_card(dice: &mut Dice) -> Vec<u8> {
    let lines: [&[u8]; 12] = [
        b"%PDF-1.7\n",
        b"<!DOCTYPE html>\n",
        b"{\n",
        b"}\n",
        b"  \"kind\": \"counter\"\n",
        b"# \n",
        b"title,\n",
        b"name;brand\n",
        b"(format: 1)\n",
        b"\xff\xfe\0",
        b"Evensip\n",
        b"words of a person\n",
    ];
    let count = 1 + dice.below(6);
    (0..count)
        .flat_map(|_| dice.pick(&lines).to_vec())
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn only_a_card_gives_way_to_a_card(seed in any::<u64>()) {
        static CARDS: std::sync::OnceLock<Vec<Vec<Vec<u8>>>> = std::sync::OnceLock::new();
        let cards = CARDS.get_or_init(|| every_kind(&sample()).iter().map(written).collect());
        let mut dice = Dice(seed);
        let of = &cards[dice.below(cards.len())];
        let format = dice.below(of.len());
        let card = &of[format];
        let other = no_card(&mut dice);
        prop_assert!(!is_card_like(&other, card), "{}", String::from_utf8_lossy(&other));
        if seed % 20 == 0 {
            let book = write(&arbitrary_book::book(seed));
            prop_assert!(!is_card_like(book.as_bytes(), card));
        }
        // Another format of the same card is another file of a person's, but for what has the sign of the program.
        let in_other_format = &of[(format + 1 + dice.below(of.len() - 1)) % of.len()];
        prop_assert!(!is_card_like(in_other_format, card));
        prop_assert!(is_card_like(card, card) && is_card_like(b" \n", card));
    }
}
