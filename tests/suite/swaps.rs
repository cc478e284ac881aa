//! Swaps of the sample book: what comes back, what is right hot and wrong iced, what can't be done and why.

use evensip::balance::{Difference, Measurand, difference};
use evensip::book::{
    Allergen, Amount, Axis, Book, IngredientId, Level, LevelName, LineId, RecipeId, Settings,
    VersionId, VesselId,
};
use evensip::edit::apply;
use evensip::say::Speaker;
use evensip::swap::{
    Answer, CapKind, ComparedDrink, Demands, Forbidden, Impossible, LineLimit, NoLevels, Obstacle,
    Question, Reason, SuggestionKind, answer, answer_with, everywhere, iced, ladder, resize,
    with_ice_level,
};

use crate::sample::{balance_of, figure, sample};

fn ingredient(id: &str) -> IngredientId {
    IngredientId::new(id).unwrap()
}

fn question(recipe: &str, replace: &str, with: &str) -> Question {
    Question {
        recipe: RecipeId::new(recipe).unwrap(),
        version: None,
        replace: ingredient(replace),
        with: ingredient(with),
        adjust: None,
    }
}

/// Line and amount of every move of the suggestion of a kind.
fn moves(answer: &Answer, kind: SuggestionKind) -> Vec<(String, f64)> {
    let suggestion = answer
        .suggestions
        .iter()
        .find(|one| one.kind == kind || one.also.contains(&kind))
        .unwrap();
    let amount =
        |amount: &Option<Amount>| amount.as_ref().map_or(Some(0.0), Amount::number).unwrap();
    suggestion
        .moves
        .iter()
        .map(|moved| (moved.line.to_string(), amount(&moved.to)))
        .collect()
}

#[test]
fn the_powder_pair_by_hand_is_the_first_suggestion() {
    // Two scoops of Tambrel hold 2 × 8.8 g × 58 % = 10.2 g of sugar, two of Ketterby 2 × 9.6 g × 71 % = 13.6 g. A spoon of the
    // house sweetener holds 9.7 g × 77 % = 7.5 g: half a spoon less takes 3.7 g of the 3.4 g too many away.
    let book = sample();
    let answer = answer(
        &book,
        &question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap();
    assert_eq!(answer.suggestions[0].kind, SuggestionKind::FewestChanges);
    assert_eq!(
        moves(&answer, SuggestionKind::FewestChanges),
        [("sweetener".to_owned(), 0.5)]
    );
    assert!(answer.proven_optimal);
    let said = Speaker::new(&book).suggestion(&answer, &answer.suggestions[0]);
    assert!(said.contains("1 → ½ spoon"), "{said}");
}

#[test]
fn the_swap_of_the_first_walk_is_as_the_readme_says() {
    let book = sample();
    let answer = answer(
        &book,
        &question("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap();
    let sweetness = |difference: &Difference| {
        let axis = difference
            .axes
            .iter()
            .find(|axis| axis.axis == Axis::Sweetness);
        axis.and_then(|axis| axis.steps).unwrap()
    };
    let plain = sweetness(&answer.plain_difference);
    assert!((plain - 2.1).abs() < 0.05, "{plain}");
    let first = &answer.suggestions[0];
    assert_eq!(first.kind, SuggestionKind::FewestChanges);
    let said = Speaker::new(&book).suggestion(&answer, first);
    assert!(said.contains("2½ → 2 scoops"), "{said}");
    assert_eq!(first.difference.within_one_step(), Some(true));
}

#[test]
fn answers_differ_in_kind_and_each_is_best_at_its_own() {
    let book = sample();
    let answer = answer(
        &book,
        &question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap();
    let of = |kind: SuggestionKind| {
        answer
            .suggestions
            .iter()
            .find(|one| one.kind == kind || one.also.contains(&kind))
            .unwrap()
    };
    let closest = of(SuggestionKind::ClosestTaste);
    for one in &answer.suggestions {
        assert!(
            one.difference.distance.unwrap() >= closest.difference.distance.unwrap() - 0.05,
            "{:?}",
            one.kind
        );
        assert_eq!(
            one.difference.within_one_step(),
            Some(true),
            "{:?}",
            one.kind
        );
        assert!(of(SuggestionKind::FewestChanges).moves.len() <= one.moves.len());
        let cost = |one: &evensip::swap::Suggestion| figure(&one.balance, Measurand::Cost);
        assert!(cost(of(SuggestionKind::Cheapest)) <= cost(one) + 0.01);
        let sugar = |one: &evensip::swap::Suggestion| figure(&one.balance, Measurand::TotalSugar);
        assert!(sugar(of(SuggestionKind::LeastSugar)) <= sugar(one) + 0.25);
    }
    assert!(answer.evaluated < 1000, "{} evaluated", answer.evaluated);
    assert!(answer.pruned() > 0.99);
}

#[test]
fn swapping_back_returns_to_the_standard() {
    let book = sample();
    let there = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let answer_there = answer(&book, &there).unwrap();
    let recipe = book.recipe(&there.recipe).unwrap();
    let kept = &answer_there.suggestions[0];
    let (edit, version) = answer_there.accept(recipe, &kept.changes, "with the other brand");
    let book = apply(&book, &edit).unwrap();
    let back = Question {
        version: Some(version),
        replace: there.with.clone(),
        with: there.replace.clone(),
        ..there
    };
    let answer_back = answer(&book, &back).unwrap();
    let closest = answer_back
        .suggestions
        .iter()
        .find(|one| one.kind == SuggestionKind::ClosestTaste || !one.also.is_empty())
        .unwrap();
    assert!(
        closest.difference.distance.unwrap() < 1e-9,
        "{:?}",
        closest.difference.distance
    );
    let amounts = |balance: &evensip::balance::Balance| -> Vec<(LineId, Amount)> {
        balance
            .resolved
            .lines()
            .map(|line| (line.id.clone(), line.amount.clone()))
            .collect()
    };
    assert_eq!(amounts(&closest.balance), amounts(&answer_back.standard));
    // Keeping a suggestion leaves the approved drink as it was.
    assert_eq!(
        balance_of(&book, "hazelthwaite", None),
        balance_of(&sample(), "hazelthwaite", None)
    );
}

#[test]
fn a_fructose_syrup_that_is_matched_iced_is_not_sweet_enough_hot() {
    // Fructose is 1.437 times as sweet as sucrose at 5 °C (Tsuzuki & Yamazaki 1953, value from memory) and as sweet at 57.8 °C
    // (assumed). Of the syrup's sugar 55 % are fructose: 0.45·0.75 + 0.55·RS gives 1.128 cold and 0.8875 hot.
    let book = sample();
    let hot = VersionId::new("hot").unwrap();
    let recipe = book.recipe(&RecipeId::new("pear-drift").unwrap()).unwrap();
    let cold = balance_of(&book, "pear-drift", None);
    let warm = balance_of(&book, "pear-drift", Some("hot"));
    let sweetness_per_sugar = |balance: &evensip::balance::Balance| {
        figure(balance, Measurand::Sweetness)
            / (figure(balance, Measurand::TotalSugar) / figure(balance, Measurand::Volume))
    };
    let ratio = sweetness_per_sugar(&warm) / sweetness_per_sugar(&cold);
    assert!((ratio - 0.8875 / 1.128).abs() < 0.01, "{ratio}");
    // The same swap, to the sucrose syrup: iced it needs more of it than hot, and the iced answer is too sweet in the hot drink.
    let mut asked = question("pear-drift", "ketterby-pear-syrup", "tambrel-pear-syrup");
    asked.adjust = Some(vec![LineId::new("pear").unwrap()]);
    let iced = answer(&book, &asked).unwrap();
    assert_eq!(iced.plain_difference.axes[0].axis, Axis::Sweetness);
    assert!(iced.plain_difference.axes[0].steps.unwrap() < -2.0);
    let presses = moves(&iced, SuggestionKind::ClosestTaste)[0].1;
    let mut lines = warm.resolved.clone();
    let (pear, syrup) = (
        LineId::new("pear").unwrap(),
        ingredient("tambrel-pear-syrup"),
    );
    let pump = evensip::book::MeasureId::new("tambrel-pear-pump").unwrap();
    assert!(lines.apply(&evensip::book::Change::Ingredient(pear.clone(), syrup)));
    assert!(lines.apply(&evensip::book::Change::Amount(
        pear,
        Amount::Count(presses, pump)
    )));
    let place = evensip::book::Place::Recipe(recipe.id.clone(), "lines");
    let taken_over = evensip::balance::balance(&book, lines, &place);
    let off = difference(&book.settings, &warm, &taken_over);
    assert!(
        off.axes[0].steps.unwrap() > 1.0,
        "iced answer in the hot drink: {:?} steps",
        off.axes[0].steps
    );
    assert!(recipe.version(&hot).is_some());
}

#[test]
fn what_both_drinks_share_cancels_in_the_uncertainty_of_their_difference() {
    // Both drinks use the same pump for the same syrup; its calibration is off in both alike.
    let book = sample();
    let answer = answer(
        &book,
        &question("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut"),
    )
    .unwrap();
    let pear = answer
        .plain_difference
        .axes
        .iter()
        .find(|axis| axis.axis == Axis::Flavour("pear".to_owned()))
        .unwrap();
    let alone = |balance: &evensip::balance::Balance| {
        balance
            .axis(&Axis::Flavour("pear".to_owned()))
            .unwrap()
            .u
            .unwrap()
            / pear.step
    };
    let independent = alone(&answer.standard).hypot(alone(&answer.plain));
    assert!(
        pear.u_steps.unwrap() < 0.8 * independent,
        "{:?} against {independent}",
        pear.u_steps
    );
    assert!(pear.u_steps.unwrap() >= pear.scatter_steps.unwrap() - 1e-9);
}

#[test]
fn an_unknown_sugar_is_not_guessed_and_the_reason_says_what_to_measure() {
    let book = sample();
    let answer = answer(
        &book,
        &question("hob-and-ember", "ondry-creamer", "velloom-oat-creamer"),
    )
    .unwrap();
    assert!(answer.suggestions.is_empty());
    let missing = vec![ingredient("velloom-oat-creamer")];
    let drink = ComparedDrink::PlainSwap;
    assert_eq!(
        answer.reasons,
        [Reason::SweetnessNotKnown { drink, missing }]
    );
}

fn reasons_with(demands: &Demands, asked: &Question) -> Vec<Reason> {
    let answer = answer_with(&sample(), asked, demands).unwrap();
    assert!(
        answer.suggestions.is_empty(),
        "{:?}",
        answer.suggestions[0].moves
    );
    answer.reasons
}

#[test]
fn impossible_demands_give_their_reason() {
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let powder_fixed = |most_sugar_per_100_ml| Demands {
        most_sugar_per_100_ml,
        limits: vec![LineLimit {
            line: LineId::new("powder").unwrap(),
            least: Some(2.0),
            most: Some(2.0),
            increment: None,
        }],
        ..Demands::default()
    };
    let broken = |demands: &Demands, asked: &Question| -> Forbidden {
        match reasons_with(demands, asked).swap_remove(0) {
            Reason::Impossible(Impossible::Forbidden(forbidden)) => forbidden,
            other => panic!("{other:?}"),
        }
    };
    let cap = broken(&powder_fixed(Some(1.5)), &asked);
    let carrier = cap.carrier.unwrap();
    assert!(matches!(
        cap.obstacle,
        Obstacle::Cap {
            kind: CapKind::Sugar,
            most: 1.5,
            ..
        }
    ));
    assert_eq!(carrier.ingredient, ingredient("ketterby-chestnut"));
    assert!((carrier.amount - 13.6).abs() < 0.05, "{}", carrier.amount);
    // The Ondry creamer contains caseinate, whatever else is swapped.
    let hob = question("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut");
    let without = Demands {
        without: vec![Allergen::Milk],
        ..Demands::default()
    };
    let creamer = || vec![ingredient("ondry-creamer")];
    let milk = Reason::Contains {
        ingredients: creamer(),
        allergen: Allergen::Milk,
    };
    assert_eq!(reasons_with(&without, &hob), [milk]);
    let vegan = Demands {
        keep_vegan: true,
        ..Demands::default()
    };
    let not_vegan = Reason::NotVegan {
        ingredients: creamer(),
        is_known: true,
    };
    assert_eq!(reasons_with(&vegan, &hob), [not_vegan]);
    let hotter = Demands {
        temperature: Some(evensip::book::TemperatureWindow {
            from: 90.0,
            to: 95.0,
        }),
        ..Demands::default()
    };
    assert!(matches!(
        broken(&hotter, &asked).obstacle,
        Obstacle::Temperature { celsius, window } if celsius < window.from
    ));
    let cheap = Demands {
        most_cost: Some(0.10),
        ..Demands::default()
    };
    assert!(matches!(
        broken(&cheap, &asked).obstacle,
        Obstacle::Cap { kind: CapKind::Cost, most: 0.10, found } if found > 0.10
    ));
}

#[test]
fn a_cup_that_is_too_small_is_named() {
    let mut book = sample();
    let mut small = book
        .vessel(&VesselId::new("paper-cup-500").unwrap())
        .unwrap()
        .as_ref()
        .clone();
    small.capacity = 90.0;
    book.vessels.put(small);
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let answer = answer(&book, &asked).unwrap();
    assert!(answer.suggestions.is_empty());
    assert!(
        matches!(
            answer.reasons[0],
            Reason::Impossible(
                Impossible::LeastOverfills { fill, room }
                    | Impossible::Forbidden(Forbidden {
                        obstacle: Obstacle::Cup { fill, room },
                        ..
                    })
            ) if fill > room
        ),
        "{:?}",
        answer.reasons
    );
}

#[test]
fn a_locked_line_stays_and_a_limited_one_keeps_its_limits() {
    let book = sample();
    let asked = question("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut");
    let line = |id: &str| LineId::new(id).unwrap();
    let demands = Demands {
        locked: vec![line("sweetener")],
        limits: vec![LineLimit {
            line: line("milk"),
            least: Some(40.0),
            most: Some(45.0),
            increment: None,
        }],
        ..Demands::default()
    };
    let answer = answer_with(&book, &asked, &demands).unwrap();
    for suggestion in &answer.suggestions {
        assert!(
            suggestion
                .moves
                .iter()
                .all(|moved| moved.line != line("sweetener"))
        );
        let milk = suggestion
            .balance
            .resolved
            .line(&line("milk"))
            .unwrap()
            .amount
            .number()
            .unwrap();
        assert!((40.0..=45.0).contains(&milk), "{milk} ml");
    }
}

#[test]
fn a_vegan_conversion_swaps_several_at_once() {
    let book = sample();
    let asked = question("hob-and-ember", "ondry-creamer", "velloom-rice-creamer");
    let demands = Demands {
        also: vec![(
            ingredient("tambrel-chestnut"),
            ingredient("ketterby-chestnut"),
        )],
        keep_vegan: true,
        ..Demands::default()
    };
    let answer = answer_with(&book, &asked, &demands).unwrap();
    assert_eq!(answer.swapped.len(), 2);
    for suggestion in &answer.suggestions {
        assert_eq!(suggestion.balance.vegan, evensip::balance::Verdict::Yes);
        assert!(
            suggestion.difference.distance.unwrap()
                <= answer.plain_difference.distance.unwrap() + 1e-9
        );
    }
}

#[test]
fn a_discontinued_powder_is_reviewed_in_every_recipe_that_uses_it() {
    let book = sample();
    let (old, new) = (
        ingredient("tambrel-chestnut"),
        ingredient("ketterby-chestnut"),
    );
    let items = everywhere(&book, &old, &new);
    let uses = |book: &Book, recipe: &RecipeId, version: Option<&VersionId>| {
        evensip::book::resolve(book.recipe(recipe).unwrap(), version)
            .0
            .lines()
            .any(|line| line.ingredient == old)
    };
    assert!(items.len() >= 4, "{}", items.len());
    let mut changed = book.clone();
    for item in &items {
        assert!(uses(&book, &item.recipe, item.version.as_ref()));
        let recipe = book.recipe(&item.recipe).unwrap();
        if let Some(first) = item.answer.suggestions.first() {
            let name = Speaker::new(&book).swapped_version(&item.answer);
            let (edit, _) = item.answer.accept(recipe, &first.changes, &name);
            changed = apply(&changed, &edit).unwrap();
        }
    }
    let hob = changed
        .recipe(&RecipeId::new("hob-and-ember").unwrap())
        .unwrap();
    assert!(hob.versions.len() > book.recipe(&hob.id).unwrap().versions.len());
}

#[test]
fn the_ladder_goes_down_to_the_floor_that_the_powder_carries() {
    let book = sample();
    let recipe = book
        .recipe(&RecipeId::new("hazelthwaite").unwrap())
        .unwrap();
    let ladder = ladder(&book, recipe, None, &Settings::default().sugar_levels()).unwrap();
    // Without the spoon of syrup, 19.6 − 7.5 = 12.1 g are left.
    assert!((figure(&ladder.floor, Measurand::TotalSugar) - 12.1).abs() < 0.2);
    let sugar: Vec<f64> = ladder
        .rungs
        .iter()
        .map(|rung| figure(&rung.drink.as_ref().unwrap().balance, Measurand::TotalSugar))
        .collect();
    assert!(sugar.windows(2).all(|pair| pair[0] > pair[1]), "{sugar:?}");
    assert!((sugar[0] - figure(&ladder.standard, Measurand::TotalSugar)).abs() < 1e-9);
    assert!((sugar[4] - figure(&ladder.floor, Measurand::TotalSugar)).abs() < 0.1);
    assert!(
        ladder
            .rungs
            .iter()
            .all(|rung| rung.drink.as_ref().unwrap().proven_optimal)
    );
}

#[test]
fn a_larger_cup_holds_the_same_taste() {
    let book = sample();
    let recipe = book
        .recipe(&RecipeId::new("hazelthwaite").unwrap())
        .unwrap();
    let large = resize(
        &book,
        recipe,
        None,
        &VesselId::new("paper-cup-700").unwrap(),
    )
    .unwrap()
    .unwrap();
    assert_eq!(
        large.difference.within_one_step(),
        Some(true),
        "{}",
        Speaker::new(&book).adapted(&large)
    );
    let standard = balance_of(&book, "hazelthwaite", None);
    let ratio = figure(&large.balance, Measurand::Volume) / figure(&standard, Measurand::Volume);
    assert!((1.3..1.5).contains(&ratio), "{ratio}");
}

#[test]
fn melted_ice_is_made_up_for_when_a_hot_drink_is_iced() {
    let book = sample();
    let recipe = book
        .recipe(&RecipeId::new("hazelthwaite").unwrap())
        .unwrap();
    let cup = VesselId::new("pet-cup-500").unwrap();
    let drink = iced(&book, recipe, None, Some(&cup)).unwrap().unwrap();
    assert!(drink.balance.iced);
    assert!(figure(&drink.balance, Measurand::ServingTemperature) <= book.settings.iced_window.to);
    let strength = |axis: &Axis| {
        drink
            .difference
            .axes
            .iter()
            .find(|found| found.axis == *axis)
            .and_then(|found| found.steps)
            .unwrap()
    };
    for axis in [
        Axis::Sweetness,
        Axis::TeaStrength,
        Axis::Flavour("chestnut".to_owned()),
    ] {
        assert!(
            strength(&axis).abs() <= 1.0,
            "{axis:?}: {}",
            strength(&axis)
        );
    }
}

#[test]
fn less_ice_is_filled_up_without_losing_strength() {
    let book = sample();
    let recipe = book.recipe(&RecipeId::new("pear-drift").unwrap()).unwrap();
    let half = with_ice_level(&book, recipe, None, 50.0).unwrap().unwrap();
    let standard = balance_of(&book, "pear-drift", None);
    let sweetness = half
        .difference
        .axes
        .iter()
        .find(|axis| axis.axis == Axis::Sweetness)
        .unwrap();
    assert!(
        sweetness.steps.unwrap().abs() <= 1.0,
        "{}",
        Speaker::new(&book).adapted(&half)
    );
    let fill = |balance: &evensip::balance::Balance| figure(balance, Measurand::Fill);
    assert!(
        (fill(&half.balance) - fill(&standard)).abs() < 5.0,
        "{} {}",
        fill(&half.balance),
        fill(&standard)
    );
}

/// None, bounds on the sweetener, a cap on sugar, no sweetener that comes or goes.
fn narrow_demands() -> Vec<Demands> {
    let limits = |least, most| {
        vec![LineLimit {
            line: LineId::new("sweetener").unwrap(),
            least,
            most,
            increment: None,
        }]
    };
    let mut all_demands = vec![Demands::default()];
    for (least, most) in [
        (Some(1.5), None),
        (None, Some(0.25)),
        (Some(1.0), Some(1.0)),
    ] {
        all_demands.push(Demands {
            limits: limits(least, most),
            ..Demands::default()
        });
    }
    all_demands.push(Demands {
        most_sugar_per_100_ml: Some(3.0),
        ..Demands::default()
    });
    all_demands.push(Demands {
        may_leave_out_sweetener: false,
        may_add_sweetener: false,
        ..Demands::default()
    });
    all_demands
}

/// What is said to stand in the way does: the bound is a bound, the other step is possible and does what is said of it.
#[test]
fn what_stands_in_the_way_of_an_axis_is_so() {
    use evensip::swap::Hindrance;
    let book = sample();
    let all_demands = narrow_demands();
    let swaps = [
        ("hazelthwaite", "tambrel-chestnut", "ketterby-chestnut"),
        ("hob-and-ember", "tambrel-chestnut", "ketterby-chestnut"),
        ("hob-and-ember", "ondry-creamer", "velloom-oat-creamer"),
        ("hob-and-ember", "tambrel-pear-syrup", "ketterby-pear-syrup"),
        ("hob-and-ember", "tambrel-pear-syrup", "ginger-syrup"),
    ];
    let mut seen = std::collections::BTreeSet::new();
    for (recipe, replace, with) in swaps {
        for demands in &all_demands {
            let asked = question(recipe, replace, with);
            let Some(found) = answer_with(&book, &asked, demands) else {
                continue;
            };
            for suggestion in &found.suggestions {
                let at = |line: &LineId| {
                    found
                        .adjustable
                        .iter()
                        .position(|one| one.line.id == *line)
                        .unwrap()
                };
                for short in &suggestion.shortfalls {
                    assert!(short.steps.abs() > 1.0);
                    let steps_on = |at: usize, step: i32| {
                        let mut point = suggestion.point.clone();
                        point[at] += step;
                        let nearby = found.nearby(&book, &point).unwrap();
                        let steps = |axis: &Axis| {
                            let mut axes = nearby.difference.axes.iter();
                            axes.find(|one| one.axis == *axis).and_then(|one| one.steps)
                        };
                        (steps(&short.axis), nearby.obstacle.clone(), point[at])
                    };
                    // A line that is left out may take its flavour along.
                    let is_nearer = |steps: Option<f64>| {
                        steps.is_none_or(|steps| steps.abs() < short.steps.abs())
                    };
                    match &short.why {
                        Hindrance::AtMost { line, .. } => {
                            let (steps, _, count) = steps_on(at(line), 1);
                            assert!(
                                is_nearer(steps) && count > found.adjustable[at(line)].range.high
                            );
                            seen.insert("most");
                        }
                        Hindrance::AtLeast { line, .. } => {
                            let (steps, _, count) = steps_on(at(line), -1);
                            assert!(
                                is_nearer(steps) && count < found.adjustable[at(line)].range.low
                            );
                            seen.insert("least");
                        }
                        Hindrance::Forbidden { line, more, .. } => {
                            let (steps, obstacle, _) =
                                steps_on(at(line), if *more { 1 } else { -1 });
                            assert!(is_nearer(steps) && obstacle.is_some());
                            seen.insert("forbidden");
                        }
                        Hindrance::PushesOthers {
                            line, more, axes, ..
                        } => {
                            let (steps, obstacle, count) =
                                steps_on(at(line), if *more { 1 } else { -1 });
                            let range = found.adjustable[at(line)].range;
                            assert!(
                                is_nearer(steps)
                                    && obstacle.is_none()
                                    && !axes.contains(&short.axis)
                            );
                            assert!((range.low..=range.high).contains(&count));
                            seen.insert("others");
                        }
                        Hindrance::TooCoarse { line, .. } => {
                            let both = [-1, 1].map(|step| steps_on(at(line), step).0);
                            let crosses = |steps: &Option<f64>| {
                                steps.is_some_and(|steps| steps.signum() != short.steps.signum())
                            };
                            assert!(both.iter().any(crosses), "{short:?}: {both:?}");
                            seen.insert("coarse");
                        }
                        Hindrance::BringsSugar { .. } | Hindrance::NoLine => {
                            seen.insert("none");
                        }
                    }
                }
            }
        }
    }
    assert!(
        seen.contains("others") && (seen.contains("least") || seen.contains("most")),
        "{seen:?}"
    );
}

#[test]
fn a_level_that_is_not_reached_says_what_stands_in_the_way() {
    let book = sample();
    for recipe in book.recipes.iter().filter(|recipe| recipe.cup.is_some()) {
        let levels = [0.0, 50.0, 100.0, 150.0, 200.0].map(|percent| Level {
            name: LevelName::Percent,
            percent,
        });
        let found = ladder(&book, recipe, None, &levels).unwrap();
        for rung in &found.rungs {
            let Ok(drink) = &rung.drink else { continue };
            for short in &drink.shortfalls {
                assert!(short.steps.abs() > 1.0);
                // Nothing is taken below none, and nothing is said of a line that the drink never had.
                if let evensip::swap::Hindrance::AtLeast { line, amount, .. } = &short.why {
                    assert_eq!(
                        drink.balance.resolved.line(line).map(|line| &line.amount),
                        Some(amount)
                    );
                }
            }
            let said = Speaker::new(&book).adapted(drink);
            assert_eq!(
                said.contains(": "),
                !drink.shortfalls.is_empty(),
                "{} at {} %: {said}",
                recipe.id,
                rung.level.percent,
            );
        }
    }
}

#[test]
fn a_sweetener_that_fills_the_cup_is_no_rung_and_no_floor() {
    let mut book = sample();
    let id = RecipeId::new("hazelthwaite").unwrap();
    let mut recipe = book.recipe(&id).unwrap().as_ref().clone();
    let sweeteners: Vec<LineId> = recipe
        .plain()
        .lines()
        .filter(|line| line.role == evensip::book::Role::Sweetener)
        .map(|line| line.id.clone())
        .collect();
    assert!(!sweeteners.is_empty());
    for line in sweeteners {
        let fill = evensip::book::Change::Amount(line, Amount::FillTo(350.0));
        evensip::book::put_change(&mut recipe, None, &fill).unwrap();
    }
    recipe.approvals.clear();
    book.recipes.put(recipe.clone());
    let found = ladder(&book, &recipe, None, &Settings::default().sugar_levels()).unwrap();
    assert!(found.rungs.is_empty());
    assert!(
        matches!(found.reasons.as_slice(), [NoLevels::NotInSteps { .. }]),
        "{:?}",
        found.reasons
    );
    assert_eq!(found.floor.figures, found.standard.figures);
}

/// Whatever is made of a drink, the version that keeps it has the very lines that were shown.
#[test]
fn what_is_kept_is_what_was_shown() {
    let book = sample();
    let mut kept = 0;
    for recipe in book
        .recipes
        .iter()
        .filter(|recipe| recipe.cup.is_some())
        .take(6)
    {
        let versions = recipe.versions.iter().map(|version| Some(&version.id));
        for version in std::iter::once(None).chain(versions).take(3) {
            let cups = book
                .vessels
                .iter()
                .filter(|vessel| vessel.kind == evensip::book::VesselKind::Cup);
            let resized = cups
                .take(2)
                .filter_map(|cup| resize(&book, recipe, version, &cup.id));
            let iced = iced(&book, recipe, version, None);
            for drink in resized.chain(iced).filter_map(Result::ok) {
                let (edit, id) = drink.accept(recipe, version, "kept");
                let after = apply(&book, &edit).unwrap();
                let lines = evensip::book::resolve(after.recipe(&recipe.id).unwrap(), Some(&id));
                assert_eq!(lines.0, drink.balance.resolved, "{}", recipe.id);
                assert_eq!(lines.1, []);
                kept += 1;
            }
        }
    }
    assert!(kept > 5, "{kept}");
}
