//! The state of a version and the approvals that are kept can disagree: whatever reads either says what is so.

#![allow(
    clippy::unwrap_used,
    reason = "a test ends at the first thing that is not as expected"
)]

use evensip::book::{
    Approval, ApprovalMark, Book, Finding, FindingKind, Place, Recipe, RecipeId, Resolved, State,
    VersionId, findings, resolve,
};
use evensip::book_file::parse;
use evensip::cards::{CardKind, CardRequest, Drink, OnMenu, card, drinks_of_menu, menu_figures};
use evensip::say::Speaker;
use evensip::ui::Area;
use proptest::prelude::*;

use crate::arbitrary_book::Dice;
use crate::at_the_window::{MIDDLE, WindowBuilder, click, go, rows, says, settle, show};
use crate::cards::options;
use crate::sample::sample;

/// The recipe itself and its versions.
fn versions(recipe: &Recipe) -> Vec<Option<VersionId>> {
    let versions = recipe.versions.iter();
    std::iter::once(None)
        .chain(versions.map(|version| Some(version.id.clone())))
        .collect()
}

/// A book whose drinks have any state, beside any approvals: none, of what they are, of what they were.
fn shuffled(seed: u64) -> Book {
    let mut dice = Dice(seed);
    let mut book = sample();
    for recipe in &book.clone().recipes {
        let mut recipe = (**recipe).clone();
        recipe.approvals.clear();
        for version in versions(&recipe) {
            let state = dice.pick(&State::ALL);
            match &version {
                None => recipe.state = state,
                Some(id) => {
                    let mut all = recipe.versions.iter_mut();
                    all.find(|version| version.id == *id).unwrap().state = state;
                }
            }
            for _ in 0..dice.below(3) {
                let mut resolved = resolve(&recipe, version.as_ref()).0;
                if dice.coin() {
                    resolved.menu_price = Some(99.0);
                }
                recipe.approvals.push(Approval {
                    version: version.clone(),
                    date: "2026-05-04".to_owned(),
                    by: "Wren".to_owned(),
                    reason: String::new(),
                    tasted_at: None,
                    resolved,
                    tasted_with: None,
                });
            }
        }
        book.recipes.put(recipe);
    }
    book
}

/// Worked out here once more: the latest approval of this very version, if there is one.
fn latest<'recipe>(
    recipe: &'recipe Recipe,
    version: Option<&VersionId>,
) -> Option<&'recipe Approval> {
    let mut latest = None;
    for approval in &recipe.approvals {
        if approval.version.as_ref() == version {
            latest = Some(approval);
        }
    }
    latest
}

/// What a check has to say of the approval of a version.
fn expected(state: State, latest: Option<&Approval>, now: &Resolved) -> Option<&'static str> {
    match (state, latest) {
        (State::Approved, None) => Some("marked-only"),
        (State::Approved, Some(approval)) if approval.resolved != *now => {
            Some("changed-since-approval")
        }
        _ => None,
    }
}

fn is_of_approval(finding: &Finding) -> bool {
    matches!(
        finding.kind,
        FindingKind::MarkedOnly | FindingKind::ChangedSinceApproval { .. }
    )
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_reads_a_state_agrees_with_the_approvals_that_are_kept(seed in any::<u64>()) {
        let book = shuffled(seed);
        let mut found: Vec<(Place, &str)> = findings(&book)
            .into_iter()
            .filter(is_of_approval)
            .map(|finding| (finding.place, finding.kind.key()))
            .collect();
        let rows = menu_figures(&book);
        let mut approved = 0;
        for recipe in &book.recipes {
            for version in versions(recipe) {
                let now = resolve(recipe, version.as_ref()).0;
                let state = recipe.state_of(version.as_ref()).unwrap();
                let latest = latest(recipe, version.as_ref());
                let place = match &version {
                    None => Place::Recipe(recipe.id.clone(), "state"),
                    Some(id) => Place::Version(recipe.id.clone(), id.clone()),
                };
                if let Some(key) = expected(state, latest, &now) {
                    let at = found.iter().position(|one| *one == (place.clone(), key));
                    prop_assert!(at.is_some(), "{place:?} {key}");
                    found.remove(at.unwrap());
                }
                let is_approved = state == State::Approved
                    && latest.is_some_and(|approval| approval.resolved == now);
                let drink = Drink { recipe: recipe.id.clone(), version: version.clone() };
                if let Some(row) = rows.iter().find(|row| row.drink == drink) {
                    prop_assert_eq!(row.is_approved(), is_approved);
                    prop_assert_eq!(row.mark == Some(ApprovalMark::Nothing), state == State::Approved && latest.is_none());
                    if is_approved {
                        approved += 1;
                    }
                }
                let document = card(&book, &CardRequest::Counter(drink), &options()).unwrap();
                prop_assert_eq!(document.is_unapproved, !is_approved, "{}", document.revision);
                // A day is said of nothing that was not approved on one.
                let has_day = document.revision.contains("2026-05-04");
                prop_assert_eq!(has_day, latest.is_some(), "{}", document.revision);
            }
        }
        prop_assert!(found.is_empty(), "{found:?}");
        let menu = card(&book, &CardRequest::Menu(OnMenu::Approved), &options());
        prop_assert_eq!(menu.is_ok(), approved > 0);
        prop_assert!(menu.iter().all(|menu| !menu.is_unapproved && menu.kind == CardKind::Menu));
    }
}

#[test]
fn what_is_only_marked_approved_is_told_so_wherever_its_state_is_read() {
    let mut book = parse(include_str!("../shops/millrace.ron")).unwrap().0;
    let lantern = RecipeId::new("barley-lantern").unwrap();
    let mut recipe = book.recipe(&lantern).unwrap().as_ref().clone();
    recipe.approvals.clear();
    book.recipes.put(recipe);
    let found: Vec<Finding> = findings(&book).into_iter().filter(is_of_approval).collect();
    assert_eq!(found.len(), 1, "{found:?}");
    let words = Speaker::new(&book).finding(&found[0]);
    assert!(
        words.contains("no approval with a day and a person is kept"),
        "{words}"
    );
    assert_eq!(drinks_of_menu(&book).len(), menu_figures(&book).len());

    let mut window = WindowBuilder::of(MIDDLE).with_book(book).open();
    show(&mut window, "barley-lantern", None);
    assert!(says(&window, "Barley Lantern, no approval"));
    assert!(says(
        &window,
        "marked approved, but no approval with a day and a person is kept"
    ));
    assert!(!says(&window, "No version has been approved"));
    show(&mut window, "quince-lamp", None);
    assert!(says(&window, "No version has been approved"));
    go(&mut window, Area::Compare);
    click(&mut window, "The whole menu");
    settle(&mut window);
    click(&mut window, "All");
    let of_table = rows(&window, "no approval");
    let row = of_table.iter().find(|row| row.contains("menu price"));
    assert!(
        row.is_some_and(|row| row.starts_with("Barley Lantern")),
        "{of_table:?}"
    );
}
