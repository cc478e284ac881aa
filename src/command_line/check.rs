//! `evensip check`: every problem of a book, with its place.

use std::fmt::Write as _;
use std::process::ExitCode;

use serde_json::json;

use super::{CheckArguments, Failure, complain, json::finding, print, print_json};
use crate::book::Severity;
use crate::book_file;

pub(super) fn run(arguments: &CheckArguments) -> Result<ExitCode, Failure> {
    let loaded = match book_file::load(&arguments.book) {
        Ok(loaded) => loaded,
        Err(error) => {
            if arguments.json {
                let problems: Vec<String> = error.to_string().lines().map(str::to_owned).collect();
                print_json(&json!({ "opens": false, "problems": problems, "errors": problems.len(), "warnings": 0 }))?;
            }
            complain(&error.to_string());
            return Ok(ExitCode::from(1));
        }
    };
    let count = |severity| loaded.findings.iter().filter(|finding| finding.severity == severity).count();
    let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
    if arguments.json {
        let problems: Vec<_> = loaded.findings.iter().map(finding).collect();
        print_json(&json!({ "opens": true, "problems": problems, "errors": errors, "warnings": warnings }))?;
    } else {
        let mut text = String::new();
        for finding in &loaded.findings {
            let _ = writeln!(text, "{}: {finding}", finding.severity.word());
        }
        let book = &loaded.book;
        let counts = [
            counted(book.ingredients.len(), "ingredient"),
            counted(book.measures.len(), "measure"),
            counted(book.vessels.len(), "vessel"),
            counted(book.recipes.len(), "recipe"),
        ];
        let (errors, warnings) = (counted(errors, "error"), counted(warnings, "warning"));
        let _ = writeln!(text, "{}: {errors}, {warnings}", counts.join(", "));
        print(&text)?;
    }
    Ok(if errors == 0 { ExitCode::SUCCESS } else { ExitCode::from(1) })
}

/// "1 recipe", "13 recipes".
fn counted(count: usize, word: &str) -> String {
    format!("{count} {word}{}", if count == 1 { "" } else { "s" })
}
