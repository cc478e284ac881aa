//! The painted widgets: what they say to a screen reader and what they do when clicked.

use std::sync::Arc;

use eframe::egui::vec2;
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT as _, Queryable as _};
use evensip::balance::{Balance, Lens};
use evensip::book::{Book, IngredientId, LineId, Recipe, RecipeId, VersionId};
use evensip::edit::{self, Edit};
use evensip::say::Speaker;
use evensip::swap::{Answer, Question, answer_with};
use evensip::ui::theme;
use evensip::ui::widgets::cup::{Frustum, filling};
use evensip::ui::{Drafts, Screen, swap_area, widgets};
use evensip::workbench::{Action, BalanceOf, Shown, Standard, StandardOf, Workbench};

/// One version of a sample drink with everything that a view reads.
pub(crate) struct Scene {
    workbench: Workbench,
    pub(crate) book: Arc<Book>,
    pub(crate) recipe: Arc<Recipe>,
    pub(crate) shown: Shown,
    pub(crate) balance: Arc<Balance>,
    pub(crate) standard: Option<Arc<Standard>>,
    pub(crate) lens: Lens,
    pub(crate) lit: Option<LineId>,
}

impl Scene {
    pub(crate) fn new(recipe: &str, version: Option<&str>) -> Self {
        let workbench = Workbench::with_sample();
        let shown = Shown {
            recipe: RecipeId::new(recipe).expect(recipe),
            version: version.map(|version| VersionId::new(version).expect(version)),
        };
        let answers = workbench.answers();
        let balance = answers.to(&BalanceOf(shown.clone())).expect(recipe);
        let standard = answers.to(&StandardOf(shown.clone()));
        let book = workbench.book().clone();
        let recipe = book.recipe(&shown.recipe).expect("named above").clone();
        Self {
            workbench,
            book,
            recipe,
            shown,
            balance,
            standard,
            lens: Lens::Sugar,
            lit: None,
        }
    }

    pub(crate) fn screen(&self) -> Screen<'_> {
        Screen {
            book: &self.book,
            answers: self.workbench.answers(),
            shown: &self.shown,
            recipe: &self.recipe,
            balance: &self.balance,
            standard: self.standard.as_deref(),
            findings: &[],
            lens: self.lens,
            speaker: evensip::say::Speaker::new(&self.book),
            lit: self.lit.as_ref(),
        }
    }
}

fn question(scene: &Scene, replace: &str, with: &str) -> Question {
    Question {
        recipe: scene.shown.recipe.clone(),
        version: scene.shown.version.clone(),
        replace: IngredientId::new(replace).expect(replace),
        with: IngredientId::new(with).expect(with),
        adjust: None,
    }
}

fn looks(scene: &Scene, answer: Option<Answer>) -> swap_area::SwapLooks {
    answer.map_or_else(swap_area::SwapLooks::default, |answer| {
        swap_area::SwapLooks::answered(&scene.book, answer)
    })
}

/// The swap area of a scene that is answered in every frame, as the window does it.
struct Swapping {
    scene: Scene,
    state: swap_area::SwapState,
    actions: Vec<Action>,
}

fn swapping(scene: Scene) -> Harness<'static, Swapping> {
    let swapping = Swapping {
        scene,
        state: swap_area::SwapState::default(),
        actions: Vec::new(),
    };
    Harness::builder()
        .with_size(vec2(1150.0, 1000.0))
        .with_context_setup(theme::install)
        .build_ui_state(
            |ui,
             Swapping {
                 scene,
                 state,
                 actions,
             }| {
                let answer =
                    state.asked.question.as_ref().and_then(|question| {
                        answer_with(&scene.book, question, &state.asked.demands)
                    });
                let looks = looks(scene, answer);
                let mut drafts = Drafts::default();
                swap_area::swap_area_ui(ui, &scene.screen(), &looks, state, &mut drafts, actions);
            },
            swapping,
        )
}

/// A harness in which chestnut powder of one brand has been swapped for the other.
fn swapped() -> Harness<'static, Swapping> {
    let mut harness = swapping(Scene::new("hob-and-ember", None));
    harness
        .get_by_label("Replace Tambrel chestnut powder")
        .click();
    harness.run();
    harness.get_by_label("Find a replacement").focus();
    harness.run();
    harness
        .get_by_label("Find a replacement")
        .type_text("ketterby chest");
    harness.run();
    harness
        .get_by_label("With Ketterby chestnut powder")
        .click();
    harness.run();
    harness.run();
    harness
}

#[test]
fn an_empty_swap_says_what_to_do() {
    let harness = swapping(Scene::new("hob-and-ember", None));
    assert!(
        harness
            .query_by_label_contains("Choose an ingredient and its replacement")
            .is_some()
    );
    assert!(
        harness
            .query_by_label("First choose the ingredient to replace.")
            .is_some()
    );
}

#[test]
fn ingredients_of_the_same_role_are_offered_first() {
    let mut harness = swapping(Scene::new("hob-and-ember", None));
    harness
        .get_by_label("Replace Ondry non-dairy creamer")
        .click();
    harness.run();
    let top = |name: &str| harness.get_by_label(name).rect().top();
    assert!(top("With Velloom rice creamer") < top("With Black tea, brewed"));
    assert!(
        harness
            .query_by_label("With Ondry non-dairy creamer")
            .is_none()
    );
}

#[test]
fn a_suggestion_is_read_in_counter_measures_and_kept_as_a_new_version() {
    let mut harness = swapped();
    assert!(
        harness
            .query_by_label_contains("By equal measures, Ketterby chestnut powder gives")
            .is_some()
    );
    let change = "Tambrel chestnut powder 2½ scoops → Ketterby chestnut powder 2 scoops";
    assert!(harness.query_by_label(change).is_some(), "{change}");
    assert!(
        harness
            .query_all_by_label_contains("Level against the standard")
            .count()
            >= 3
    );
    harness.get_by_label("Keep as new version").click();
    harness.run();
    let Swapping {
        scene,
        state,
        actions,
    } = harness.state();
    let [Action::Edit { edits, .. }] = actions.as_slice() else {
        panic!("{actions:?}")
    };
    let [edit @ Edit::AddVersion { version, .. }] = edits.as_slice() else {
        panic!("{edits:?}")
    };
    assert_eq!(version.name, "with Ketterby chestnut powder");
    assert_eq!(state.show_version.as_ref(), Some(&version.id));
    let after = edit::apply(&scene.book, edit).expect("the recipe is there");
    let before = scene.recipe.as_ref();
    let kept = after.recipe(&before.id).expect("still there");
    assert_eq!(kept.entries, before.entries);
    assert_eq!(kept.approvals, before.approvals);
    assert_eq!(kept.versions.len(), before.versions.len() + 1);
}

#[test]
fn the_plain_swap_can_be_kept_under_a_name_of_its_own() {
    let mut harness = swapped();
    harness.get_by_label("Keep the plain swap").click();
    harness.run();
    let [Action::Edit { edits, .. }] = harness.state().actions.as_slice() else {
        panic!("one edit")
    };
    let [Edit::AddVersion { version, .. }] = edits.as_slice() else {
        panic!("{edits:?}")
    };
    assert_eq!(version.name, "Ketterby chestnut powder, equal measures");
}

#[test]
fn a_gap_gives_its_reason_and_nothing_to_keep_but_the_plain_swap() {
    let mut harness = swapping(Scene::new("hob-and-ember", None));
    harness.state_mut().state.asked.question = Some(question(
        &harness.state().scene,
        "ondry-creamer",
        "velloom-oat-creamer",
    ));
    harness.run();
    assert!(
        harness
            .query_by_label_contains("No suggestion: the sweetness of the swap is not known")
            .is_some()
    );
    assert!(harness.query_by_label("Keep as new version").is_none());
    assert!(
        harness
            .query_by_label_contains("sweetness: not known")
            .is_some()
    );
}

#[test]
fn every_line_can_be_held_or_let_move() {
    let mut harness = swapped();
    harness.get_by_label("Show conditions").click();
    harness.run();
    let tick = |harness: &mut Harness<'static, Swapping>, line: &str| {
        harness
            .get_by(|node| {
                node.role() == egui::Role::CheckBox && node.label().as_deref() == Some(line)
            })
            .click();
        harness.run();
    };
    for line in ["Ketterby chestnut powder", "Tambrel pear syrup", "Water"] {
        tick(&mut harness, line);
    }
    assert_eq!(harness.state().state.asked.demands.locked.len(), 3);
    tick(&mut harness, "Water");
    let demands = &harness.state().state.asked.demands;
    assert_eq!((demands.locked.len(), demands.unlocked.len()), (2, 1));
}

#[test]
fn the_level_tells_every_axis_in_words() {
    let scene = Scene::new("hob-and-ember", Some("oat"));
    let difference = scene
        .standard
        .as_ref()
        .expect("approved")
        .difference
        .clone();
    let harness = Harness::builder()
        .with_context_setup(theme::install)
        .build_ui(|ui| {
            widgets::level_ui(ui, &difference, "the standard", Speaker::without_book());
        });
    let words = harness
        .get_by_label_contains("Level against the standard")
        .accesskit_node()
        .label()
        .expect("a label");
    assert!(words.contains("sweetness: not known"), "{words}");
    for axis in &difference.axes {
        assert!(words.contains(axis.axis.word()), "{words}");
    }
}

#[test]
fn a_click_on_a_layer_goes_to_its_line() {
    let scene = Scene::new("ninebell", None);
    let clicked: Option<LineId> = None;
    let mut harness = Harness::builder()
        .with_size(vec2(420.0, 360.0))
        .with_context_setup(theme::install)
        .build_ui_state(
            |ui, clicked: &mut Option<LineId>| {
                if let Some(line) = widgets::cup_ui(ui, &scene.screen(), vec2(400.0, 330.0)) {
                    *clicked = Some(line);
                }
            },
            clicked,
        );
    harness.get_by_label_contains("go to Pearls").click();
    harness.run();
    assert_eq!(harness.state().as_ref().map(LineId::as_str), Some("pearls"));
}

#[test]
fn a_partial_figure_is_a_lower_bound_with_the_name_of_the_gap() {
    let scene = Scene::new("hob-and-ember", Some("oat"));
    let mut harness = Harness::builder()
        .with_size(vec2(440.0, 1000.0))
        .with_context_setup(theme::install)
        .build_ui(|ui| {
            widgets::figure_list_ui(ui, &scene.screen());
        });
    let sugar = harness.get_by_label_contains("total sugar: at least");
    assert!(
        sugar
            .accesskit_node()
            .label()
            .is_some_and(|words| words.contains("not stated: Velloom oat creamer"))
    );
    sugar.click();
    harness.run();
    assert!(
        harness
            .query_by_label_contains("What makes it uncertain")
            .is_some()
    );
}

#[test]
fn the_layers_of_every_sample_drink_add_up_to_what_the_cup_holds() {
    let book = Workbench::with_sample().book().clone();
    for recipe in &book.recipes {
        let scene = Scene::new(recipe.id.as_str(), None);
        let vessel = scene
            .balance
            .resolved
            .cup
            .as_ref()
            .and_then(|id| book.vessel(id));
        let cup = Frustum::of(vessel.map(AsRef::as_ref));
        let filling = filling(&book, &scene.balance, Lens::Sugar, &cup);
        let sum: f64 = filling.layers.iter().map(|layer| layer.millilitres).sum();
        let ice_above = filling.ice_top - filling.surface;
        // Layers below a twentieth of a millilitre are not drawn.
        let off = (sum + ice_above - filling.filled).abs();
        assert!(
            off < 0.5,
            "{}: {sum} and {ice_above} make {}",
            recipe.name,
            filling.filled
        );
        assert!(
            filling.layers.iter().all(|layer| layer.millilitres > 0.0),
            "{}",
            recipe.name
        );
    }
}

#[test]
fn every_cause_of_doubt_has_a_sentence_that_names_no_id() {
    let book = Workbench::with_sample().book().clone();
    for recipe in &book.recipes {
        let scene = Scene::new(recipe.id.as_str(), None);
        for contribution in &scene.balance.contributions {
            let words = Speaker::new(&book)
                .cause(&scene.balance, &contribution.cause)
                .what;
            let hyphenated = book
                .ingredients
                .iter()
                .map(|ingredient| ingredient.id.as_str());
            let named = hyphenated
                .filter(|id| id.contains('-'))
                .find(|id| words.contains(id));
            assert!(!words.is_empty() && named.is_none(), "{words}");
        }
    }
}
