//! `evensip balance`: the balance of a recipe, of a version, or of all of them.

use std::process::ExitCode;

use serde_json::Value;

use super::{
    BalanceArguments, Failure, json, open, print, print_json, print_json_list, recipe_called,
    report_errors, text, version_called,
};
use crate::balance::{balance_version, difference, standard_balance};
use crate::book::{Book, Recipe, VersionId};

pub(super) fn run(arguments: &BalanceArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    let mut wanted: Vec<(&Recipe, Option<VersionId>)> = Vec::new();
    match &arguments.recipe {
        Some(id) => {
            let recipe = recipe_called(&book, id)?;
            wanted.push((
                recipe,
                version_called(recipe, arguments.version.as_deref())?,
            ));
        }
        None => {
            for recipe in &book.recipes {
                wanted.push((recipe, None));
                wanted.extend(
                    recipe
                        .versions
                        .iter()
                        .map(|version| (recipe.as_ref(), Some(version.id.clone()))),
                );
            }
        }
    }
    if arguments.json && arguments.all {
        // Each is written before the next is worked out: ten thousand of them take no more room than one.
        let documents = wanted
            .into_iter()
            .map(|(recipe, version)| document(&book, recipe, version.as_ref()));
        print_json_list(documents)?;
        return Ok(report_errors(&findings));
    }
    for (recipe, version) in wanted {
        if arguments.json {
            print_json(&document(&book, recipe, version.as_ref()))?;
        } else {
            print(&sheet(&book, recipe, version.as_ref()))?;
        }
    }
    Ok(report_errors(&findings))
}

fn document(book: &Book, recipe: &Recipe, version: Option<&VersionId>) -> Value {
    let Some(balance) = balance_version(book, recipe, version) else {
        return Value::Null;
    };
    let standard = standard_balance(book, recipe, version);
    let difference = standard.map(|(standard, _)| difference(&book.settings, &standard, &balance));
    json::balance(
        book,
        recipe.id.as_str(),
        version,
        &balance,
        difference.as_ref(),
    )
}

fn sheet(book: &Book, recipe: &Recipe, version: Option<&VersionId>) -> String {
    let Some(balance) = balance_version(book, recipe, version) else {
        return String::new();
    };
    let standard = standard_balance(book, recipe, version);
    let difference = standard.map(|(standard, _)| difference(&book.settings, &standard, &balance));
    let version = version
        .and_then(|id| recipe.version(id))
        .map_or("as written", |version| version.name.as_str());
    let title = format!("{} — {version}", recipe.name);
    text::balance(book, &title, &balance, difference.as_ref())
}
