//! The brewing planner: water and leaf for so much tea, or the tea that comes off so much leaf.

use egui::Ui;

use super::InServing;
use super::brewing_model::{self, BrewPlan, BrewQuestion, LEAF_GRAMS_PER_MILLILITRE, Way};
use super::sheet::{self, Fact};
use super::teas::{Teas, teas_ui};
use super::typed::{self, Range, TypedError, TypedField};
use crate::balance::published::serving::BREWED_TEA_HOURS;
use crate::balance::{BrewError, DayMinute, Infusion};
use crate::book::{Ingredient, IngredientId, Nutrient};
use crate::edit::Edit;
use crate::quantity::{DisplayUnits, Uncertain, name_as_shown, rounded, show_number};
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::field::draft_error_ui;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::view_state::Drafts;
use crate::ui::words;
use crate::workbench::Action;

/// Parts of leaf that dissolve.
const EXTRACTION: Range = Range {
    from: 0.1,
    to: 60.0,
    unit: "%",
};
/// What leaf may keep back.
const RETENTION: Range = Range {
    from: 0.0,
    to: 20.0,
    unit: "g/g",
};
/// Caffeine that leaf may give off.
const CAFFEINE: Range = Range {
    from: 0.0,
    to: 100.0,
    unit: "mg/g",
};
/// Strengths that can be brewed.
const STRENGTH: Range = Range {
    from: 0.01,
    to: 10.0,
    unit: "g/100 g",
};
/// Hours that tea may be held.
const HOLDING: Range = Range {
    from: 0.0,
    to: 1000.0,
    unit: "h",
};
/// A millilitre of water or tea is taken as a gram.
const WATER_GRAMS_PER_MILLILITRE: f64 = 1.0;

/// The fields of the planner.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Asked {
    Ready,
    Strength,
    Water,
    Leaf,
    Pot,
    Start,
    Holding,
    Extraction,
    Retention,
    Caffeine,
}

/// How many fields there are.
const FIELDS: usize = 10;

/// What the planner remembers between frames; none of it is kept in the book.
#[derive(Default)]
pub(super) struct BrewingState {
    tea: Option<IngredientId>,
    teas: Teas,
    infusion: Option<Infusion>,
    is_from_leaf: bool,
    text: [String; FIELDS],
    /// The last question with its answer, so that a frame in which nothing was typed works nothing out.
    known: Option<(BrewQuestion, Result<BrewPlan, BrewError>)>,
}

pub(super) fn brewing_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut InServing<'_>,
    actions: &mut Vec<Action>,
) {
    let mut state = std::mem::take(&mut view.state.brewing);
    choices_ui(ui, screen, &mut state);
    ui.add_space(grid::TIGHT);
    let tea = state
        .tea
        .as_ref()
        .and_then(|id| screen.book.ingredient(id))
        .map(AsRef::as_ref);
    fields_ui(ui, tea, &mut state, &mut view.drafts, actions);
    ui.add_space(grid::NEAR);
    match question(tea, &state) {
        Ok(question) => {
            if state
                .known
                .as_ref()
                .is_none_or(|(known, _)| *known != question)
            {
                let answer = brewing_model::plan(&question);
                state.known = Some((question, answer));
            }
            if let Some((question, answer)) = &state.known {
                answer_ui(ui, tea, question, answer, screen.speaker.units, actions);
            }
        }
        Err(missing) => sheet::quiet_ui(ui, missing),
    }
    view.state.brewing = state;
}

/// Which tea, how it is brewed, and which way round it is planned.
fn choices_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut BrewingState) {
    teas_ui(ui, screen.book, &mut state.teas, &mut state.tea);
    let infusions: Vec<(Infusion, String)> = Infusion::ALL
        .into_iter()
        .map(|infusion| {
            (
                infusion,
                Speaker::without_book().infusion(infusion).to_owned(),
            )
        })
        .collect();
    let mut infusion = state.infusion.unwrap_or(Infusion::Hot);
    sheet::choice_ui(ui, "Infusion", &mut infusion, &infusions);
    state.infusion = Some(infusion);
    let ways = [
        (false, "from the tea you need".to_owned()),
        (true, "so much leaf is brewed".to_owned()),
    ];
    sheet::choice_ui(ui, "Plan", &mut state.is_from_leaf, &ways);
}

impl BrewingState {
    fn text(&self, asked: Asked) -> &str {
        &self.text[asked as usize]
    }

    fn infusion(&self) -> Infusion {
        self.infusion.unwrap_or(Infusion::Hot)
    }
}

/// Reads the text of a field only to say what is wrong with it.
fn judged(asked: Asked, text: &str) -> Result<(), TypedError> {
    match asked {
        Asked::Ready | Asked::Water | Asked::Pot => {
            typed::read_grams(text, WATER_GRAMS_PER_MILLILITRE).map(drop)
        }
        Asked::Leaf => typed::read_grams(text, LEAF_GRAMS_PER_MILLILITRE).map(drop),
        Asked::Strength => STRENGTH.read(text).map(drop),
        Asked::Start => typed::read_time_of_day(text).map(drop),
        Asked::Holding => HOLDING.read(text).map(drop),
        Asked::Extraction => EXTRACTION.read(text).map(drop),
        Asked::Retention => RETENTION.read(text).map(drop),
        Asked::Caffeine => CAFFEINE.read(text).map(drop),
    }
}

/// What stands round a field.
struct Words {
    asked: Asked,
    before: &'static str,
    name: &'static str,
    hint: String,
    unit: &'static str,
}

fn fields_ui(
    ui: &mut Ui,
    tea: Option<&Ingredient>,
    state: &mut BrewingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let usual = state.infusion().usual();
    let field = |asked, before, name, hint: String, unit| Words {
        asked,
        before,
        name,
        hint,
        unit,
    };
    let mut fields = if state.is_from_leaf {
        vec![
            field(
                Asked::Water,
                "water",
                "Water of the brew",
                String::new(),
                "g or ml",
            ),
            field(
                Asked::Leaf,
                "leaf",
                "Leaf of the brew",
                String::new(),
                "g, or ml as it is poured",
            ),
        ]
    } else {
        let strength = usual_strength(tea, state)
            .map(|strength| show_number(strength, 2))
            .unwrap_or_default();
        vec![
            field(
                Asked::Ready,
                "ready tea",
                "Ready tea",
                String::new(),
                "g or ml",
            ),
            field(
                Asked::Strength,
                "strength",
                "Strength of the tea",
                strength,
                "g tea solids in 100 g",
            ),
        ]
    };
    let holding = tea
        .and_then(|tea| tea.opened_life_hours)
        .map(|hours| show_number(hours, 0))
        .unwrap_or_default();
    let percent = show_number(usual.extraction.value * 100.0, 0);
    fields.extend([
        field(
            Asked::Pot,
            "a pot holds",
            "Water that a pot holds",
            "one pot".to_owned(),
            "g or ml of water",
        ),
        field(
            Asked::Start,
            "brewing starts at",
            "Time when the water is poured on",
            "hh:mm".to_owned(),
            "",
        ),
        field(
            Asked::Holding,
            "keep for",
            "Hours that the tea is held",
            holding,
            "h",
        ),
        field(
            Asked::Extraction,
            "extracted from the leaf",
            "Part of the leaf that dissolves",
            percent,
            "% of it",
        ),
        field(
            Asked::Retention,
            "leaf keeps back",
            "Water that a gram of leaf keeps back",
            show_number(usual.retention.value, 1),
            "g of water per gram of leaf",
        ),
        field(
            Asked::Caffeine,
            "caffeine of the leaf",
            "Caffeine of a gram of leaf",
            "–".to_owned(),
            "mg a gram",
        ),
    ]);
    for words in fields {
        field_ui(ui, &words, state, drafts, actions);
    }
}

fn field_ui(
    ui: &mut Ui,
    words: &Words,
    state: &mut BrewingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let key = format!("brewing {:?}", words.asked);
    let field = TypedField {
        key: &key,
        words: words.before,
        name: words.name,
        shown: state.text(words.asked).to_owned(),
        hint: &words.hint,
        unit: words.unit,
    };
    let outcome = field.show(ui, drafts, actions);
    if let Some(text) = &outcome.changed {
        state.text[words.asked as usize].clone_from(text);
    }
    outcome.read(&key, drafts, |text| judged(words.asked, text));
    draft_error_ui(ui, drafts, &key);
}

/// The strength while none is typed: that of the tea in the book, or of the reference brew.
fn usual_strength(tea: Option<&Ingredient>, state: &BrewingState) -> Option<f64> {
    if state.infusion() == Infusion::Reference {
        let extraction = EXTRACTION
            .read(state.text(Asked::Extraction))
            .ok()
            .flatten();
        return brewing_model::reference_strength(&brewing_model::method(
            Infusion::Reference,
            extraction,
            None,
        ));
    }
    tea?.composition
        .get(Nutrient::TeaSolids)
        .map(|figure| figure.value)
        .filter(|strength| *strength > 0.0)
}

/// What is asked, or what is still to be typed.
fn question(tea: Option<&Ingredient>, state: &BrewingState) -> Result<BrewQuestion, &'static str> {
    const UNREAD: &str = "One field can't be read. Correct it to see the result.";
    let number = |range: Range, asked| range.read(state.text(asked)).map_err(|_| UNREAD);
    let grams = |asked, density| typed::read_grams(state.text(asked), density).map_err(|_| UNREAD);
    let way = if state.is_from_leaf {
        let water = grams(Asked::Water, WATER_GRAMS_PER_MILLILITRE)?;
        let leaf = grams(Asked::Leaf, LEAF_GRAMS_PER_MILLILITRE)?;
        let (water, leaf) = water
            .zip(leaf)
            .ok_or("Enter the amounts of water and leaf.")?;
        Way::FromLeaf { water, leaf }
    } else {
        let ready = grams(Asked::Ready, WATER_GRAMS_PER_MILLILITRE)?
            .ok_or("Type how much tea is wanted.")?;
        let typed = number(STRENGTH, Asked::Strength)?;
        let strength = typed.or_else(|| usual_strength(tea, state));
        Way::ForTea {
            ready,
            strength: strength
                .ok_or("Type how strong the tea should be, or choose a tea of the book.")?,
        }
    };
    let holding = number(HOLDING, Asked::Holding)?.or_else(|| tea?.opened_life_hours);
    Ok(BrewQuestion {
        infusion: state.infusion(),
        way,
        extraction: number(EXTRACTION, Asked::Extraction)?,
        retention: number(RETENTION, Asked::Retention)?,
        caffeine: number(CAFFEINE, Asked::Caffeine)?,
        pot: grams(Asked::Pot, WATER_GRAMS_PER_MILLILITRE)?,
        start: typed::read_time_of_day(state.text(Asked::Start)).map_err(|_| UNREAD)?,
        holding,
    })
}

fn answer_ui(
    ui: &mut Ui,
    tea: Option<&Ingredient>,
    question: &BrewQuestion,
    answer: &Result<BrewPlan, BrewError>,
    units: DisplayUnits,
    actions: &mut Vec<Action>,
) {
    let plan = match answer {
        Ok(plan) => plan,
        Err(error) => {
            let error = Speaker::without_book().brew_error(error);
            sheet::off_ui(ui, format!("This brew is not possible: {error}."));
            return;
        }
    };
    let facts = facts(plan);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, value, unit) in &facts {
            sheet::fact_ui(ui, name, value, unit);
        }
    });
    let speaker = words::speaker(ui.ctx());
    copy_ui(ui, "brewing", || {
        sheet::facts_as_table(speaker, facts.into_iter().chain(time_facts(plan)))
    });
    sheet::words_ui(ui, times_words(question, plan));
    let method = &plan.method;
    sheet::quiet_ui(
        ui,
        format!(
            "Water at {}, {}. Figures: {}. One millilitre of tea or water counts as 1 g, one of leaf as {} g.",
            units.temperature(method.water_celsius, 0),
            steep_words(method.steep_minutes),
            Speaker::without_book().infusion_source(method.infusion),
            show_number(LEAF_GRAMS_PER_MILLILITRE, 2)
        ),
    );
    if let Some(tea) = tea {
        use_ui(ui, tea, plan, actions);
    }
}

fn steep_words(minutes: f64) -> String {
    if minutes < 120.0 {
        format!("{} min on the leaf", show_number(minutes, 0))
    } else {
        format!("{} h on the leaf", show_number(minutes / 60.0, 0))
    }
}

/// Water and leaf, of each pot when there are several, and the tea that comes of them.
fn facts(plan: &BrewPlan) -> Vec<Fact<'static>> {
    let grams = |grams: f64| Value::digits(rounded(grams, None).value);
    let figure = |figure: Uncertain| Value::known(figure, 3);
    let fact = |name: &str, value: Value, unit: &'static str| (name.to_owned(), value, unit);
    let mut facts = Vec::new();
    let pots = plan.batches.filter(|batches| batches.count > 1);
    if let Some(pots) = pots {
        facts.push(fact("pots", Value::digits(pots.count.to_string()), ""));
        facts.push(fact("water of each pot", grams(pots.each.water), "g"));
        facts.push(fact("leaf of each pot", grams(pots.each.leaf), "g"));
    }
    let of_all = if pots.is_some() { " of all pots" } else { "" };
    facts.push(fact(
        &format!("water{of_all}"),
        grams(plan.whole.water),
        "g",
    ));
    facts.push(fact(&format!("leaf{of_all}"), grams(plan.whole.leaf), "g"));
    let found = &plan.found;
    let caffeine = found.caffeine.map_or_else(
        || Value::not_known("caffeine of the leaf: not stated"),
        figure,
    );
    facts.extend([
        fact("ready tea", figure(found.ready), "g"),
        fact("kept back by the leaf", figure(found.retained), "g"),
        fact("strength", figure(found.strength), "g/100 g"),
        fact("caffeine", caffeine, "mg"),
    ]);
    facts
}

/// When it is ready and until when it may be used; what is not known of them says the sentence below the facts.
fn time_facts(plan: &BrewPlan) -> Vec<Fact<'static>> {
    let ready = plan.times.map(|times| ("ready at", times.ready));
    let use_by = plan.times.and_then(|times| times.use_by);
    let use_by = use_by.map(|use_by| ("use by", use_by));
    let of = |(name, time): (&str, DayMinute)| {
        (
            name.to_owned(),
            Value::digits(Speaker::without_book().day_minute(time)),
            "",
        )
    };
    ready.into_iter().chain(use_by).map(of).collect()
}

fn times_words(question: &BrewQuestion, plan: &BrewPlan) -> String {
    let Some(times) = plan.times else {
        return "Type when the water is poured on to see when it is ready.".to_owned();
    };
    let speaker = Speaker::without_book();
    match (times.use_by, question.holding) {
        (Some(use_by), Some(hours)) => {
            let beyond = if hours > BREWED_TEA_HOURS {
                format!(
                    " Published guidance holds brewed tea no longer than {} h.",
                    show_number(BREWED_TEA_HOURS, 0)
                )
            } else {
                String::new()
            };
            format!(
                "Ready at {}, use by {} ({} h held).{beyond}",
                speaker.day_minute(times.ready),
                speaker.day_minute(use_by),
                show_number(hours, 1)
            )
        }
        _ => format!(
            "Ready at {}. Use by: the book states no holding time; published guidance is no longer than {} h.",
            speaker.day_minute(times.ready),
            show_number(BREWED_TEA_HOURS, 0)
        ),
    }
}

/// Carries the strength into every drink that is made with the tea.
fn use_ui(ui: &mut Ui, tea: &Ingredient, plan: &BrewPlan, actions: &mut Vec<Action>) {
    let name = tea.full_name();
    let name = name_as_shown(&name);
    if tea.house_made.is_some() {
        sheet::quiet_ui(
            ui,
            format!("{name} is house-made: its recipe gives these figures."),
        );
        return;
    }
    let Some(changed) = brewing_model::with_figures(tea, plan) else {
        sheet::quiet_ui(
            ui,
            format!(
                "{name} states its figures per 100 ml, and no density to turn these into them."
            ),
        );
        return;
    };
    let evidence = if plan.is_measured {
        "measured"
    } else {
        "assumed"
    };
    ui.add_space(grid::TIGHT);
    let words = format!("Use these figures for {name}");
    let hint = format!(
        "water, tea solids and, where it is known, caffeine of 100 g, entered as {evidence}"
    );
    if ui.button(words).on_hover_text(&hint).clicked() {
        actions.push(Action::edit(
            Edit::PutIngredient(changed),
            format!("brewing {}", tea.id),
        ));
    }
    sheet::quiet_ui(ui, format!("Changes every drink made with it: {hint}."));
}
