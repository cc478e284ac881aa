//! Hostile books have a budget: every command ends within its time and memory, with an answer or with a sentence.
//!
//! Four hundred books meet a command each, in turn; `EVENSIP_HOSTILE=9000` gives so many books to every command.

#![cfg(target_os = "linux")]

use std::fs;
use std::path::Path;
use std::process::Command;

use crate::arbitrary_book::Dice;

/// Address space of a command, KiB; 512 MB.
const MEMORY: &str = "524288";

/// Processor time of a command, s. Without optimisation the program is several times as slow as it is for a person.
const SECONDS: &str = if cfg!(debug_assertions) { "15" } else { "5" };

/// Commands on the book `B`, with a recipe `hob-and-ember`; what they write goes to `O`.
const COMMANDS: [&str; 23] = [
    "check B",
    "check B --json",
    "check B --history",
    "balance B --all",
    "balance B --all --json",
    "balance B --recipe hob-and-ember --json",
    "ladder B --recipe hob-and-ember",
    "last-sip B --recipe hob-and-ember --json",
    "cups B --recipe hob-and-ember --json",
    "why-off B --recipe hob-and-ember --weight 400 --brix 9 --json",
    "swap B --recipe hob-and-ember --replace tambrel-chestnut --with ketterby-chestnut --json",
    "supply B --offer tambrel-chestnut=tambrel-chestnut,ketterby-chestnut --json",
    "card B --recipe hob-and-ember --out O.html",
    "card B --recipe hob-and-ember --out O.md",
    "card B --recipe hob-and-ember --out O.csv",
    "card B --recipe hob-and-ember --out O.json",
    "card B --recipe hob-and-ember --kind training --out O.html",
    "card B --kind menu --out O.html",
    "card B --recipe hob-and-ember --paper a5 --out O.pdf",
    "card B --kind menu --paper a5 --out O.pdf",
    "card B --kind ladder --recipe hob-and-ember --out O.pdf",
    "bring-in B L.csv",
    "bring-in B B",
];

const NUMBERS: [&str; 12] = [
    "0.0",
    "-0.0",
    "-1.0",
    "1e-300",
    "1e300",
    "-1e300",
    "5e-324",
    "99999999999.0",
    "0.0000001",
    "inf",
    "NaN",
    "1e9",
];

/// A book in which some numbers, words and lines are others.
fn mutated(text: &str, dice: &mut Dice) -> String {
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    for _ in 0..=dice.below(6) {
        let at = dice.below(lines.len());
        match dice.below(8) {
            0 => lines.truncate(at.max(1)),
            1 => {
                lines.remove(at);
            }
            2 => lines.insert(at, lines[dice.below(lines.len())].clone()),
            3 => {
                let copied = lines[at].clone();
                let times = 1 + dice.below(300);
                lines.splice(at..at, std::iter::repeat_n(copied, times));
            }
            4 => {
                let long = format!("\"{}", "é".repeat(1 + dice.below(3000)));
                lines[at] = lines[at].replacen('"', &long, 1);
            }
            _ => {
                let line = &lines[at];
                let is_digit = |c: char| c.is_ascii_digit();
                if let Some(from) = line.find(is_digit) {
                    let rest = &line[from..];
                    let length = rest
                        .find(|c: char| !c.is_ascii_digit() && c != '.')
                        .unwrap_or(rest.len());
                    let number = dice.pick(&NUMBERS);
                    lines[at] = format!("{}{number}{}", &line[..from], &rest[length..]);
                }
            }
        }
        if lines.len() < 2 {
            break;
        }
    }
    lines.join("\n")
}

/// What is wrong with how the commands answer a book; `folder` is for it alone.
fn faults(folder: &Path, seed: usize, commands: usize) -> Vec<String> {
    let sample = include_str!("../../sample-books/harrowmere.ron");
    let mut dice = Dice(seed as u64 ^ 0x0b0d);
    let (book, list, out) = (folder.join("B.ron"), folder.join("L.csv"), folder.join("O"));
    fs::write(&book, mutated(sample, &mut dice)).unwrap();
    fs::write(
        &list,
        "name,price,pack\nPlum powder,1e308,1 g\nFig,-1,0 kg\n",
    )
    .unwrap();
    let limits = format!("ulimit -v {MEMORY}; ulimit -t {SECONDS}; exec \"$0\" \"$@\"");
    let mut faults = Vec::new();
    for number in 0..commands {
        let command = COMMANDS[(seed + number) % COMMANDS.len()];
        let words = command.split(' ').map(|word| match word {
            "B" => book.display().to_string(),
            "L.csv" => list.display().to_string(),
            word if word.starts_with("O.") => format!("{}{}", out.display(), &word[1..]),
            word => word.to_owned(),
        });
        let output = Command::new("sh")
            .args(["-c", &limits, env!("CARGO_BIN_EXE_evensip")])
            .args(words)
            .env_remove("DISPLAY")
            .env_remove("WAYLAND_DISPLAY")
            .output()
            .unwrap();
        let said = String::from_utf8_lossy(&output.stderr);
        let is_answer = matches!(output.status.code(), Some(0..=2));
        let is_said =
            output.status.success() || !said.trim().is_empty() || !output.stdout.is_empty();
        if !is_answer || !is_said || said.contains("panicked") {
            let said: String = said.chars().take(200).collect();
            faults.push(format!("{seed}, {command}: {} {said}", output.status));
        }
    }
    faults
}

#[test]
fn every_command_answers_a_hostile_book_within_its_budget() {
    let asked: Option<usize> = std::env::var("EVENSIP_HOSTILE")
        .ok()
        .and_then(|text| text.parse().ok());
    let books = asked.unwrap_or(400);
    let commands = asked.map_or(1, |_| COMMANDS.len());
    let threads = std::thread::available_parallelism().map_or(1, usize::from);
    let found: Vec<String> = std::thread::scope(|scope| {
        let work = |first: usize| {
            let folder = tempfile::tempdir().unwrap();
            let seeds = (first..books).step_by(threads);
            seeds
                .flat_map(|seed| faults(folder.path(), seed, commands))
                .collect::<Vec<String>>()
        };
        let running: Vec<_> = (0..threads)
            .map(|first| scope.spawn(move || work(first)))
            .collect();
        running
            .into_iter()
            .flat_map(|thread| thread.join().unwrap())
            .collect()
    });
    assert!(found.is_empty(), "{}", found.join("\n"));
}
