//! What the brewing planner answers: water, leaf, the tea that comes of them, what is left behind, what it costs and when it is ready.

use egui::Ui;

use super::brewing_model::{self, BrewPlan, BrewQuestion, TeaInHand};
use super::sheet;
use crate::balance::DayMinute;
use crate::balance::published::serving::BREWED_TEA_HOURS;
use crate::quantity::{Uncertain, rounded, show_number};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::value::Value;
use crate::ui::widgets::facts::{Fact, fact_ui, facts_as_table};
use crate::workbench::CostOfGram;

pub(super) fn answer_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tea: TeaInHand<'_>,
    question: &BrewQuestion,
    plan: &BrewPlan,
) {
    let speaker = screen.speaker;
    let mut facts = facts(speaker, plan);
    facts.extend(cost_facts(screen, tea, plan));
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in &facts {
            fact_ui(ui, name, value, unit);
        }
    });
    copy_ui(ui, speaker.word("serving-brewing-table"), || {
        facts_as_table(speaker, facts.into_iter().chain(time_facts(speaker, plan)))
    });
    sheet::words_ui(ui, times_words(speaker, question, plan));
    let method = &plan.method;
    let steep = if method.steep_minutes < 120.0 {
        speaker.in_unit(method.steep_minutes, "min", 0)
    } else {
        speaker.in_unit(method.steep_minutes / 60.0, "h", 0)
    };
    let density = brewing_model::leaf_density(tea.leaf);
    let (temperature, grams) = (
        speaker.temperature(method.water_celsius, 0),
        speaker.uncertain(density, "g"),
    );
    let words = if tea
        .house
        .is_some_and(|house| house.method == question.usual)
    {
        say!(speaker, "serving-brewing-method-of-house", temperature: temperature, time: steep, grams: grams)
    } else {
        let source = speaker.infusion_source(method.infusion);
        say!(speaker, "serving-brewing-method", temperature: temperature, time: steep, source: source, grams: grams)
    };
    sheet::quiet_ui(ui, words);
}

/// What the leaf costs, and the tea by it; nothing while nobody has said which leaf it is.
fn cost_facts<'frame>(
    screen: &Screen<'frame>,
    tea: TeaInHand<'_>,
    plan: &BrewPlan,
) -> Vec<Fact<'frame>> {
    let Some(leaf) = tea.leaf else {
        return Vec::new();
    };
    let (speaker, currency) = (screen.speaker, screen.book.settings.currency.as_str());
    let cost = screen.answers.to(&CostOfGram(leaf.id.clone()));
    let cost = cost.filter(|cost| cost.is_complete);
    let cost = cost.map(|of_gram| of_gram.known * plan.whole.leaf);
    let money = |cost: Option<f64>| {
        cost.map_or_else(
            || Value::not_known(speaker.word("serving-cost-no-price-stated")),
            |cost| Value::digits(show_number(cost, 2)),
        )
    };
    let fact = |name: &str, cost| (speaker.word(name).to_owned(), money(cost), currency);
    let per_100_grams = cost.map(|cost| cost / plan.found.ready.value * 100.0);
    vec![
        fact("serving-brewing-cost", cost),
        fact("serving-brewing-cost-of-tea", per_100_grams),
    ]
}

/// Water and leaf, of each pot when there are several, and the tea that comes of them.
fn facts(speaker: Speaker<'_>, plan: &BrewPlan) -> Vec<Fact<'static>> {
    let grams = |grams: f64| Value::digits(rounded(grams, None).value);
    let figure = |figure: Uncertain| Value::known(figure, 3);
    let fact =
        |name: &str, value: Value, unit: &'static str| (speaker.word(name).to_owned(), value, unit);
    let mut facts = Vec::new();
    let pots = plan.batches.filter(|batches| batches.count > 1);
    if let Some(pots) = pots {
        let count = Value::digits(pots.count.to_string());
        facts.push(fact("serving-brewing-pots", count, ""));
        let (water, leaf) = (grams(pots.each.water), grams(pots.each.leaf));
        facts.push(fact("serving-brewing-water-each", water, "g"));
        facts.push(fact("serving-brewing-leaf-each", leaf, "g"));
    }
    let [water, leaf] = if pots.is_some() {
        ["serving-brewing-water-all", "serving-brewing-leaf-all"]
    } else {
        ["serving-brewing-water", "serving-brewing-leaf"]
    };
    facts.push(fact(water, grams(plan.whole.water), "g"));
    let whole = Uncertain {
        value: plan.whole.leaf,
        u: plan.whole.leaf_u,
    };
    let measured = if whole.u > 0.0 {
        figure(whole)
    } else {
        grams(whole.value)
    };
    facts.push(fact(leaf, measured, "g"));
    let found = &plan.found;
    let caffeine = found.caffeine.map_or_else(
        || Value::not_known(speaker.word("serving-brewing-caffeine-not-stated")),
        figure,
    );
    facts.extend([
        fact("serving-brewing-ready", figure(found.ready), "g"),
        fact("serving-brewing-retained", figure(found.retained), "g"),
        fact("serving-brewing-spent", figure(found.spent), "g"),
        fact(
            "serving-brewing-strength",
            figure(found.strength),
            "g/100 g",
        ),
        fact("measurand-caffeine", caffeine, "mg"),
    ]);
    facts
}

/// When it is ready and until when it may be used; what is not known of them says the sentence below the facts.
fn time_facts(speaker: Speaker<'_>, plan: &BrewPlan) -> Vec<Fact<'static>> {
    let ready = plan
        .times
        .map(|times| ("serving-brewing-ready-at", times.ready));
    let use_by = plan.times.and_then(|times| times.use_by);
    let use_by = use_by.map(|use_by| ("serving-brewing-use-by", use_by));
    let of = |(name, time): (&str, DayMinute)| {
        let time = Value::digits(speaker.day_minute(time));
        (speaker.word(name).to_owned(), time, "")
    };
    ready.into_iter().chain(use_by).map(of).collect()
}

fn times_words(speaker: Speaker<'_>, question: &BrewQuestion, plan: &BrewPlan) -> String {
    let Some(times) = plan.times else {
        return speaker.word("serving-brewing-no-start").to_owned();
    };
    let ready = speaker.day_minute(times.ready);
    let most = speaker.in_unit(BREWED_TEA_HOURS, "h", 0);
    let Some((until, hours)) = times.use_by.zip(question.holding) else {
        return say!(speaker, "serving-brewing-no-holding", ready: ready, most: most);
    };
    let (until, held) = (speaker.day_minute(until), speaker.in_unit(hours, "h", 1));
    if hours > BREWED_TEA_HOURS {
        say!(speaker, "serving-brewing-times-beyond", ready: ready, until: until, hours: held, most: most)
    } else {
        say!(speaker, "serving-brewing-times", ready: ready, until: until, hours: held)
    }
}
