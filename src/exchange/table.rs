//! Text from a file as a table: which bytes are letters, which sign parts the cells, which row is the heading.

use std::collections::BTreeMap;

use super::delimiter::Delimiter;
use super::field::guess_mapping;
use super::row_fault::{RowFault, quote_fault};

/// Most rows that are read: a price list of a wholesaler has some ten thousand.
pub const MOST_ROWS: usize = 100_000;

/// How the bytes of a file become letters.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Encoding {
    /// UTF-8, with or without a mark at the beginning.
    Utf8,
    /// UTF-16, as a mark at the beginning says.
    Utf16,
    /// One byte a letter, as older office programs write: taken for Windows-1252.
    SingleByte,
}

/// A table of texts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TextTable {
    /// How the bytes were read.
    pub encoding: Encoding,
    /// The sign between cells.
    pub delimiter: Delimiter,
    /// Rows above the headings, such as the title of the list, each with its line in the file, from 1.
    pub above: Vec<(u64, Vec<String>)>,
    /// The line of the headings, from 1.
    pub heading_line: u64,
    /// The cells of that row.
    pub headings: Vec<String>,
    /// The rows below it, each with its line in the file, from 1.
    pub rows: Vec<(u64, Vec<String>)>,
    /// Rows that are not what they seem, by their line.
    pub faults: BTreeMap<u64, RowFault>,
}

/// Why a file is no table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum TableError {
    /// There is nothing in it.
    Empty,
    /// There are headings and nothing else.
    NoRows,
    /// It is not text: it has a zero byte.
    NotText {
        /// Byte, from 1.
        at: usize,
    },
    /// It begins as UTF-16 and is none.
    HalfALetter {
        /// Byte, from 1.
        at: usize,
    },
    /// It has more rows than any list of ingredients, see [`MOST_ROWS`].
    TooLong,
    /// A line is no row.
    Unreadable {
        /// Line, from 1.
        line: u64,
    },
    /// The row of headings is not what it seems.
    Headings(RowFault),
}

/// Reads a table. Without a delimiter the one is taken that parts the most rows into the same number of cells; without a line
/// of the headings, the first row that reads like headings.
pub fn read_table(
    bytes: &[u8],
    delimiter: Option<Delimiter>,
    heading_line: Option<u64>,
) -> Result<TextTable, TableError> {
    let (encoding, text) = decode(bytes)?;
    if text.trim().is_empty() {
        return Err(TableError::Empty);
    }
    let delimiter = delimiter.unwrap_or_else(|| guess_delimiter(&text));
    let mut reader = csv::ReaderBuilder::new()
        .delimiter(delimiter.byte())
        .has_headers(false)
        .flexible(true)
        .from_reader(text.as_bytes());
    let mut rows = Vec::new();
    let mut begins: Vec<(u64, usize)> = Vec::new();
    for record in reader.records() {
        let record = record.map_err(|error| TableError::Unreadable {
            line: error.position().map_or(0, csv::Position::line),
        })?;
        let (line, byte) = record
            .position()
            .map_or((0, 0), |position| (position.line(), position.byte()));
        let byte = usize::try_from(byte).unwrap_or(text.len());
        // The reader counts a row from behind the return of the one before it: the line feed, and empty lines, are before it.
        let rest = text.get(byte..).unwrap_or_default();
        let begin = rest.trim_start_matches(['\r', '\n']);
        let between = &rest[..rest.len() - begin.len()];
        let line = line + between.matches('\n').count() as u64;
        begins.push((line, byte + between.len()));
        let cells: Vec<String> = record.iter().map(|cell| cell.trim().to_owned()).collect();
        if cells.iter().all(String::is_empty) {
            continue;
        }
        if rows.len() > MOST_ROWS {
            return Err(TableError::TooLong);
        }
        rows.push((line, cells));
    }
    if rows.is_empty() {
        return Err(TableError::Empty);
    }
    let at = heading_line
        .and_then(|line| rows.iter().position(|(at, _)| *at == line))
        .unwrap_or_else(|| row_of_headings(&rows));
    let mut above = rows;
    let rows = above.split_off(at + 1);
    let (heading_line, headings) = above.pop().unwrap_or_default();
    if rows.is_empty() {
        return Err(TableError::NoRows);
    }
    let ends = begins.iter().skip(1).map(|(_, begin)| *begin);
    let raw = begins
        .iter()
        .zip(ends.chain([text.len()]))
        .map(|((line, begin), end)| (*line, text.get(*begin..end).unwrap_or_default()));
    let mut faults: BTreeMap<u64, RowFault> = raw
        .filter_map(|(line, raw)| Some((line, quote_fault(raw, line, delimiter, headings.len())?)))
        .collect();
    // A quote that is wrong further up may have swallowed the headings.
    if let Some((_, fault)) = faults.range(..=heading_line).next() {
        return Err(TableError::Headings(fault.clone()));
    }
    for (line, cells) in &rows {
        let mut behind = cells.iter().skip(headings.len());
        let (cells, headings) = (cells.len(), headings.len());
        if behind.any(|cell| !cell.is_empty()) {
            let fault = RowFault::TooWide { cells, headings };
            faults.entry(*line).or_insert(fault);
        } else if cells < headings {
            let fault = RowFault::TooNarrow { cells, headings };
            faults.entry(*line).or_insert(fault);
        }
    }
    Ok(TextTable {
        encoding,
        delimiter,
        above,
        heading_line,
        headings,
        rows,
        faults,
    })
}

fn decode(bytes: &[u8]) -> Result<(Encoding, String), TableError> {
    if let Some(rest) = bytes.strip_prefix(&[0xff, 0xfe]) {
        return Ok((Encoding::Utf16, utf16(rest, u16::from_le_bytes)?));
    }
    if let Some(rest) = bytes.strip_prefix(&[0xfe, 0xff]) {
        return Ok((Encoding::Utf16, utf16(rest, u16::from_be_bytes)?));
    }
    if let Some(at) = bytes.iter().position(|byte| *byte == 0) {
        return Err(TableError::NotText { at: at + 1 });
    }
    let bytes = bytes.strip_prefix(&[0xef, 0xbb, 0xbf]).unwrap_or(bytes);
    match std::str::from_utf8(bytes) {
        Ok(text) => Ok((Encoding::Utf8, text.to_owned())),
        Err(_) => Ok((
            Encoding::SingleByte,
            bytes.iter().map(|byte| windows_1252(*byte)).collect(),
        )),
    }
}

/// Letters of two bytes or of twice two; half of one is refused rather than replaced by a sign that says nothing.
fn utf16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> Result<String, TableError> {
    let pairs = bytes.chunks_exact(2);
    if !pairs.remainder().is_empty() {
        return Err(TableError::HalfALetter {
            at: bytes.len() + 2,
        });
    }
    let mut text = String::with_capacity(bytes.len());
    // The mark at the beginning has two bytes.
    let mut at = 3;
    for letter in char::decode_utf16(pairs.map(|pair| unit([pair[0], pair[1]]))) {
        let letter = letter.map_err(|_| TableError::HalfALetter { at })?;
        at += 2 * letter.len_utf16();
        text.push(letter);
    }
    Ok(text)
}

/// The letters of Windows-1252 where it differs from Latin-1 (WHATWG Encoding Standard, index windows-1252).
fn windows_1252(byte: u8) -> char {
    const FROM_80: [char; 32] = [
        '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž',
        '\u{8f}', '\u{90}', '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}',
        'ž', 'Ÿ',
    ];
    match byte {
        0x80..=0x9f => FROM_80[usize::from(byte - 0x80)],
        _ => char::from(byte),
    }
}

/// Rows that are looked at to tell the delimiter and the headings.
const SAMPLE_ROWS: usize = 40;

/// The row that the headings stand in: the first one without a number in which two words are columns of a list; where no words
/// are known, the first with two cells.
fn row_of_headings(rows: &[(u64, Vec<String>)]) -> usize {
    let sample = || rows.iter().take(SAMPLE_ROWS).map(|(_, cells)| cells);
    let has_number = |cells: &[String]| cells.iter().any(|cell| begins_as_number(cell));
    let known = |cells: &&Vec<String>| {
        !has_number(cells) && guess_mapping(cells).columns.iter().flatten().count() >= 2
    };
    let written = |cells: &&Vec<String>| cells.iter().filter(|cell| !cell.is_empty()).count() >= 2;
    let at = |is_wanted: &dyn Fn(&&Vec<String>) -> bool| sample().position(|row| is_wanted(&row));
    // The last row can't be headings: nothing would stand below them.
    let at = at(&known).or_else(|| at(&written)).unwrap_or(0);
    if at + 1 < rows.len() { at } else { 0 }
}

fn begins_as_number(cell: &str) -> bool {
    let cell = cell.trim_start_matches(['-', '−', '€', '$', '£', ' ']);
    cell.starts_with(|c: char| c.is_ascii_digit())
}

fn guess_delimiter(text: &str) -> Delimiter {
    // Rows of one width speak for a sign; a decimal comma makes them uneven, and titles have no width.
    let score = |delimiter: Delimiter| {
        let mut reader = csv::ReaderBuilder::new()
            .delimiter(delimiter.byte())
            .has_headers(false)
            .flexible(true)
            .from_reader(text.as_bytes());
        let widths: Vec<usize> = reader
            .records()
            .take(SAMPLE_ROWS)
            .filter_map(Result::ok)
            .map(|record| record.len())
            .collect();
        let rows_of = |width: usize| widths.iter().filter(|other| **other == width).count();
        let usual = widths.iter().filter(|width| **width >= 2);
        let Some(usual) = usual.max_by_key(|width| (rows_of(**width), **width)) else {
            return (0, 0);
        };
        (rows_of(*usual) * 100 / widths.len(), *usual)
    };
    Delimiter::ALL
        .into_iter()
        .rev()
        .max_by_key(|delimiter| score(*delimiter))
        .unwrap_or(Delimiter::Comma)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_sign_between_cells_is_found_even_beside_decimal_commas() {
        for (text, delimiter) in [
            ("name;fat\na;1,5\nb;2,5\n", Delimiter::Semicolon),
            ("name,fat\na,1.5\n", Delimiter::Comma),
            ("name\tfat\na\t1,5\n", Delimiter::Tab),
            ("name|fat\na|1,5\n", Delimiter::Bar),
            ("name,fat\n\"a; b\",\"1,5\"\n", Delimiter::Comma),
        ] {
            let table = read_table(text.as_bytes(), None, None).unwrap();
            assert_eq!(table.delimiter, delimiter, "{text}");
            assert_eq!(table.headings, ["name", "fat"], "{text}");
        }
    }

    #[test]
    fn letters_are_read_as_they_were_written() {
        let utf16: Vec<u8> = "\u{feff}name;brand\nThé;é"
            .encode_utf16()
            .flat_map(u16::to_le_bytes)
            .collect();
        for bytes in [
            "\u{feff}name;brand\nThé;é".as_bytes().to_vec(),
            utf16,
            b"name;brand\nTh\xe9;\xe9".to_vec(),
        ] {
            let table = read_table(&bytes, None, None).unwrap();
            assert_eq!(table.rows[0].1, ["Thé", "é"]);
        }
    }

    #[test]
    fn rows_have_the_lines_that_an_editor_shows() {
        for text in ["a;b\n1;2\n\n3;4\n", "a;b\r\n1;2\r\n\r\n3;4\r\n"] {
            let table = read_table(text.as_bytes(), None, None).unwrap();
            let lines: Vec<u64> = table.rows.iter().map(|(line, _)| *line).collect();
            assert_eq!((table.heading_line, lines), (1, vec![2, 4]), "{text:?}");
        }
    }

    #[test]
    fn titles_above_the_headings_are_not_rows() {
        for (text, line, above) in [
            ("Preise 2026;;\nArtikel;Marke;Preis\nPflaume;Velm;2\n", 2, 1),
            ("Prices\n\nname;price\nplum;2\n", 3, 1),
            ("Who, what\nname;price\nplum;2\n", 2, 1),
            ("名字;数量\n李子;2\n", 1, 0),
            ("a;b\n1;2\n", 1, 0),
        ] {
            let table = read_table(text.as_bytes(), None, None).unwrap();
            assert_eq!(
                (table.heading_line, table.above.len()),
                (line, above),
                "{text}"
            );
        }
        let chosen = read_table(b"x;y\nname;price\nplum;2\n", None, Some(1)).unwrap();
        assert_eq!(chosen.headings, ["x", "y"]);
    }

    #[test]
    fn what_is_no_table_is_refused_with_a_reason() {
        assert_eq!(read_table(b"", None, None), Err(TableError::Empty));
        assert_eq!(read_table(b"a;b\n", None, None), Err(TableError::NoRows));
        assert!(matches!(
            read_table(b"PK\x03\x04\x00\x00", None, None),
            Err(TableError::NotText { at: 5 })
        ));
    }
}
