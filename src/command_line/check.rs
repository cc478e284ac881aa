//! `evensip check`: every problem of a book, with its place.

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
            text.push_str(&format!("{}: {finding}\n", finding.severity.word()));
        }
        let book = &loaded.book;
        text.push_str(&format!(
            "{} ingredients, {} measures, {} vessels, {} recipes: {errors} errors, {warnings} warnings\n",
            book.ingredients.len(),
            book.measures.len(),
            book.vessels.len(),
            book.recipes.len()
        ));
        print(&text)?;
    }
    Ok(if errors == 0 { ExitCode::SUCCESS } else { ExitCode::from(1) })
}
