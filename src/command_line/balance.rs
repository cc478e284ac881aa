//! `evensip balance`: the balance of a recipe, of a version, or of all of them.

use std::process::ExitCode;

use rayon::prelude::*;
use serde_json::Value;

use super::{
    BalanceArguments, Failure, json, list_text, open, print, print_json, print_json_list,
    recipe_called, report_errors, speaker, text, version_called,
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
    if arguments.json {
        let text = |one: &Balanced<'_>| list_text(&one.document(&book));
        print_json_list(texts_of_all(&book, text))?;
    } else {
        for text in texts_of_all(&book, |one| one.sheet(&book)) {
            print(&text)?;
        }
    }
    Ok(report_errors(&book, &findings))
}

/// Recipes that are worked out beside each other before their texts are written: ten thousand take no more room than these.
const AT_ONCE: usize = 64;

/// The texts of every version of every recipe in the order of the book, worked out on all cores.
fn texts_of_all(
    book: &Book,
    text: impl Fn(&Balanced<'_>) -> String + Sync,
) -> impl Iterator<Item = String> {
    let parts = book.recipes.iter().as_slice().chunks(AT_ONCE);
    parts.flat_map(move |part| {
        let texts = part.par_iter().map(|recipe| {
            let versions = recipe.versions.iter().map(|version| Some(&version.id));
            let all = every(book, recipe, std::iter::once(None).chain(versions));
            all.map(|one| text(&one)).collect::<Vec<_>>()
        });
        texts.collect::<Vec<_>>().into_iter().flatten()
    })
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
