//! `evensip balance`: the balance of a recipe, of a version, or of all of them.

use std::process::ExitCode;

use serde_json::Value;

use super::{
    BalanceArguments, Failure, json, open, print, print_json, print_json_list, recipe_called,
    report_errors, speaker, text, version_called,
};
use crate::balance::{Balance, Difference, VersionBalances, difference};
use crate::book::{Book, Recipe, VersionId};

pub(super) fn run(arguments: &BalanceArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    if let Some(id) = &arguments.recipe {
        let recipe = recipe_called(&book, id)?;
        let version = version_called(recipe, arguments.version.as_deref())?;
        for one in every(&book, recipe, std::iter::once(version.as_ref())) {
            if arguments.json {
                print_json(&one.document(&book))?;
            } else {
                print(&one.sheet(&book))?;
            }
        }
        return Ok(report_errors(&book, &findings));
    }
    // Each is written before the next is worked out: ten thousand of them take no more room than one.
    let all = book.recipes.iter().flat_map(|recipe| {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        every(&book, recipe, std::iter::once(None).chain(versions))
    });
    if arguments.json {
        print_json_list(all.map(|one| one.document(&book)))?;
    } else {
        for one in all {
            print(&one.sheet(&book))?;
        }
    }
    Ok(report_errors(&book, &findings))
}

/// A version with its balance, beside its standard.
struct Balanced<'book> {
    recipe: &'book Recipe,
    version: Option<&'book VersionId>,
    balance: Balance,
    difference: Option<Difference>,
}

fn every<'book>(
    book: &'book Book,
    recipe: &'book Recipe,
    versions: impl Iterator<Item = Option<&'book VersionId>>,
) -> impl Iterator<Item = Balanced<'book>> {
    let mut balances = VersionBalances::new(book, recipe);
    versions.filter_map(move |version| {
        let balance = balances.balance(version)?;
        let standard = balances.standard(version);
        Some(Balanced {
            recipe,
            version,
            difference: standard.map(|standard| difference(&book.settings, &standard, &balance)),
            balance,
        })
    })
}

impl Balanced<'_> {
    fn document(&self, book: &Book) -> Value {
        let recipe = self.recipe.id.as_str();
        json::balance(
            book,
            recipe,
            self.version,
            &self.balance,
            self.difference.as_ref(),
        )
    }

    fn sheet(&self, book: &Book) -> String {
        let version = self.version.and_then(|id| self.recipe.version(id));
        let version = version.map_or_else(
            || speaker().word("command-original"),
            |version| version.name.as_str(),
        );
        let title = format!("{} — {version}", self.recipe.name);
        text::balance(book, &title, &self.balance, self.difference.as_ref())
    }
}
