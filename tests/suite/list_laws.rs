//! Lists whose quotes or commas are wrong: no row is taken for another one without a word.

use std::process::Command;

use evensip::book_file::{built_in, load, write};
use evensip::exchange::{
    DecimalSigns, Delimiter, ListChoices, Outcome, RowFault, Skip, TableError, TextTable,
    guess_mapping, read_json_ld, read_table, review_price_list, utf8_text,
};
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::sample::sample;

/// A cell as a person writes it: it begins with a letter or digit.
fn cell(dice: &mut Dice) -> String {
    let mut cell = dice.pick(&["Plum", "Fig", "é", "1", "27"]).to_owned();
    for _ in 0..dice.below(5) {
        cell.push_str(dice.pick(&[" a", ",5", ";b", "\"", "\nc", " \"d\" ", "\r\ne", "x", "0"]));
    }
    cell.trim().to_owned()
}

fn table(dice: &mut Dice) -> (Delimiter, Vec<Vec<String>>) {
    let columns = 2 + dice.below(4);
    let mut rows = vec![(0..columns).map(|at| format!("column {at}")).collect()];
    for _ in 0..=dice.below(5) {
        rows.push((0..columns).map(|_| cell(dice)).collect());
    }
    (dice.pick(&[Delimiter::Comma, Delimiter::Semicolon]), rows)
}

/// As a spreadsheet writes it.
fn text_of(delimiter: Delimiter, rows: &[Vec<String>]) -> String {
    let sign = if delimiter == Delimiter::Comma {
        b','
    } else {
        b';'
    };
    let mut writer = csv::WriterBuilder::new()
        .delimiter(sign)
        .from_writer(Vec::new());
    for row in rows {
        writer.write_record(row).unwrap();
    }
    String::from_utf8(writer.into_inner().unwrap()).unwrap()
}

/// The rows that are not refused.
fn taken(table: &TextTable) -> Vec<&Vec<String>> {
    let rows = table.rows.iter();
    rows.filter(|(line, _)| !table.faults.contains_key(line))
        .map(|(_, cells)| cells)
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 6000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_list_is_read_as_it_was_written(seed in any::<u64>()) {
        let (delimiter, rows) = table(&mut Dice(seed));
        let text = text_of(delimiter, &rows);
        let read = read_table(text.as_bytes(), Some(delimiter), None).unwrap();
        prop_assert_eq!(&read.headings, &rows[0]);
        prop_assert_eq!(read.rows.len(), rows.len() - 1);
        for ((line, cells), wanted) in read.rows.iter().zip(&rows[1..]) {
            prop_assert_eq!(cells, wanted);
            let fault = read.faults.get(line);
            // A cell with line breaks and many commas may be refused, and for no other reason.
            prop_assert!(
                matches!(fault, None | Some(RowFault::HoldsRow { .. })),
                "{:?}: {}", fault, text
            );
            if !wanted.iter().any(|cell| cell.contains('\n')) {
                prop_assert_eq!(fault, None);
            }
        }
    }

    #[test]
    fn a_lost_quote_is_never_passed_over(seed in any::<u64>()) {
        let mut dice = Dice(seed);
        let (delimiter, rows) = table(&mut dice);
        let text = text_of(delimiter, &rows);
        let quotes: Vec<usize> = text.match_indices('"').map(|(at, _)| at).collect();
        if quotes.is_empty() {
            return Ok(());
        }
        let at = quotes[dice.below(quotes.len())];
        let broken = format!("{}{}", &text[..at], &text[at + 1..]);
        let read = match read_table(broken.as_bytes(), Some(delimiter), None) {
            Ok(read) => read,
            Err(TableError::Headings(_) | TableError::NoRows) => return Ok(()),
            Err(error) => return Err(TestCaseError::fail(format!("{error:?}"))),
        };
        let without = |cells: &Vec<String>| -> Vec<String> {
            cells.iter().map(|cell| cell.replace(['"', ' '], "")).collect()
        };
        let written: Vec<Vec<String>> = rows.iter().map(without).collect();
        let is_whole = taken(&read)
            .iter()
            .all(|cells| written.contains(&without(cells)));
        prop_assert!(is_whole || !read.faults.is_empty(), "{broken}\n{:?}", read.rows);
    }

    #[test]
    fn half_a_letter_is_refused_and_no_sign_stands_for_it(bytes in proptest::collection::vec(any::<u8>(), 0..60)) {
        for mark in [&b"\xff\xfe"[..], b"\xfe\xff"] {
            let bytes = [mark, &bytes].concat();
            if let Ok(table) = read_table(&bytes, None, None) {
                let cells = table.rows.iter().flat_map(|(_, cells)| cells).chain(&table.headings);
                let units: Vec<u16> = "\u{fffd}".encode_utf16().collect();
                let has_sign = bytes.chunks(2).any(|pair| {
                    let pair = [pair[0], *pair.get(1).unwrap_or(&0)];
                    units.contains(&u16::from_le_bytes(pair)) || units.contains(&u16::from_be_bytes(pair))
                });
                for cell in cells {
                    prop_assert!(has_sign || !cell.contains('\u{fffd}'), "{cell}");
                }
            }
        }
    }
}

#[test]
fn a_row_that_is_not_what_it_seems_is_refused_with_its_lines() {
    let book = sample();
    for (text, wanted) in [
        (
            "name,brand,price,pack g\n\"plum,x,1,1000\nfig,x,1,1000\n",
            RowFault::NeverClosed { from: 2, to: 4 },
        ),
        (
            "name,brand,price,pack g\n\"plum,x,1,1000\nfig\",x,1,1000\n",
            RowFault::HoldsRow { from: 2, to: 3 },
        ),
        (
            "name,brand,price,pack g\nplum,x,\"1,1000\nfig,x,1,1000\nlime,x\",1\n",
            RowFault::HoldsRow { from: 2, to: 4 },
        ),
        (
            "name,brand,price,pack g\nplum\",x,1,1000\n",
            RowFault::NeverOpened { line: 2 },
        ),
        (
            "name,brand,price,pack g\nplum,x,1,50,1000\n",
            RowFault::TooWide {
                cells: 5,
                headings: 4,
            },
        ),
        (
            "name,brand,price,pack g\nplum,x,1000\n",
            RowFault::TooNarrow {
                cells: 3,
                headings: 4,
            },
        ),
    ] {
        let table = read_table(text.as_bytes(), None, None).unwrap();
        let mapping = guess_mapping(&table.headings);
        let signs = DecimalSigns::of(&table, &mapping, None);
        let review = review_price_list(&book, &table, &mapping, &signs, &ListChoices::of_day(""));
        let Outcome::Skipped(Skip::Row(fault)) = &review.lines[0].outcome else {
            panic!("{text}: {review:?}");
        };
        assert_eq!(*fault, wanted, "{text}");
    }
}

#[test]
fn another_encoding_is_refused_where_it_can_t_be_told() {
    assert_eq!(utf8_text(b"\xef\xbb\xbf{}").unwrap(), "{}");
    assert_eq!(utf8_text(b"a\nTh\xe9").unwrap_err().line, 2);
    let folder = tempfile::tempdir().unwrap();
    let book = folder.path().join("book.ron");
    std::fs::write(&book, built_in()).unwrap();
    let recipe = b"{\"@context\":\"https://schema.org\",\"@type\":\"Recipe\",\"name\":\"Th\xe9\",\"recipeIngredient\":[\"1 g tea\"]}";
    assert!(read_json_ld(&String::from_utf8_lossy(recipe)).is_ok());
    for (name, bytes) in [
        ("recipe.json", recipe.to_vec()),
        (
            "recipe.ron",
            write(&sample()).replace("Hob", "H\u{1}b").into_bytes(),
        ),
    ] {
        let list = folder.path().join(name);
        let bytes: Vec<u8> = bytes
            .iter()
            .map(|byte| if *byte == 1 { 0xe9 } else { *byte })
            .collect();
        std::fs::write(&list, bytes).unwrap();
        let output = Command::new(env!("CARGO_BIN_EXE_evensip"))
            .args([
                "bring-in",
                book.to_str().unwrap(),
                list.to_str().unwrap(),
                "--accept",
            ])
            .output()
            .unwrap();
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(1), "{said}");
        assert!(said.contains("is not UTF-8 text"), "{said}");
        assert_eq!(std::fs::read_to_string(&book).unwrap(), built_in());
    }
}

#[test]
fn the_command_shows_what_is_new_and_leaves_out_what_may_be_two_things() {
    let folder = tempfile::tempdir().unwrap();
    let (book, list) = (
        folder.path().join("book.ron"),
        folder.path().join("list.csv"),
    );
    std::fs::write(&book, built_in()).unwrap();
    std::fs::write(
        &list,
        "name;brand;form;price;pack;sugars\nPlum powder;Velm;powder;1,234;1 kg;71\nFig powder;Velm;powder;2;500 g;64\n",
    )
    .unwrap();
    let run = |more: &[&str]| {
        let output = Command::new(env!("CARGO_BIN_EXE_evensip"))
            .args(["bring-in", book.to_str().unwrap(), list.to_str().unwrap()])
            .args(more)
            .output()
            .unwrap();
        assert_eq!(output.status.code(), Some(0), "{output:?}");
        String::from_utf8(output.stdout).unwrap()
    };
    let said = run(&[]);
    assert!(
        said.contains("Velm Fig powder: new: sugars: 64 g; price: 2.00 for 500\u{a0}g"),
        "{said}"
    );
    assert!(said.contains("1234 or 1.2340?"), "{said}");
    let has = |name: &str| {
        let book = load(&book).unwrap().book;
        book.ingredients.iter().any(|item| item.name == name)
    };
    let said = run(&["--accept"]);
    assert!(said.contains("line 2 is left out"), "{said}");
    assert!(has("Fig powder") && !has("Plum powder"));
    run(&["--accept", "--decimal-comma"]);
    assert!(has("Plum powder"));
}
