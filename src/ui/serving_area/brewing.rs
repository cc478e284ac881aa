//! The brewing planner: water and leaf for so much tea, or the tea that comes off so much leaf.

use egui::Ui;

use super::brewing_model::{self, BrewPlan, BrewQuestion, LEAF_GRAMS_PER_MILLILITRE, Way};
use super::sheet;
use super::teas::teas_ui;
use super::typed::{self, LABEL, Range, TypedError};
use crate::balance::published::serving::BREWED_TEA_HOURS;
use crate::balance::{BrewError, DayMinute, Infusion};
use crate::book::{Evidence, Ingredient, IngredientId, ItemId, Nutrient};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::{Uncertain, name_as_shown, rounded};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::field::take_keyboard;
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::grid;
use crate::ui::value::Value;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::facts::{Fact, fact_ui, facts_as_table};
use crate::ui::widgets::form::NumberRow;
use crate::ui::widgets::pick_list::PickList;
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
    teas: PickList,
    infusion: Option<Infusion>,
    is_from_leaf: bool,
    text: [String; FIELDS],
    /// The last question with its answer, so that a frame in which nothing was typed works nothing out.
    known: Option<(BrewQuestion, Result<BrewPlan, BrewError>)>,
}

pub(super) fn brewing_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut BrewingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    choices_ui(ui, screen, state);
    ui.add_space(grid::TIGHT);
    let tea = state.tea.clone();
    let tea = tea.and_then(|id| screen.book.ingredient(&id));
    let tea = tea.map(AsRef::as_ref);
    fields_ui(ui, screen.speaker, tea, state, drafts, actions);
    ui.add_space(grid::NEAR);
    match question(tea, state) {
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
                answer_ui(ui, screen, tea, question, answer, actions);
            }
        }
        Err(missing) => sheet::quiet_ui(ui, screen.speaker.word(missing)),
    }
}

/// Which tea, how it is brewed, and which way round it is planned.
fn choices_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut BrewingState) {
    let speaker = screen.speaker;
    teas_ui(ui, screen, &mut state.teas, &mut state.tea);
    let infusions = Infusion::ALL.map(|infusion| (infusion, speaker.infusion(infusion).to_owned()));
    let mut infusion = state.infusion();
    let name = speaker.word("serving-brewing-infusion");
    sheet::choice_ui(ui, name, &mut infusion, &infusions);
    state.infusion = Some(infusion);
    let ways = [
        (false, "serving-brewing-for-tea"),
        (true, "serving-brewing-from-leaf"),
    ];
    let ways = ways.map(|(is_from_leaf, words)| (is_from_leaf, speaker.word(words).to_owned()));
    let name = speaker.word("serving-brewing-plan");
    sheet::choice_ui(ui, name, &mut state.is_from_leaf, &ways);
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

impl Asked {
    /// The messages with the words before the field and with its name.
    fn messages(self) -> [&'static str; 2] {
        match self {
            Self::Ready => ["serving-brewing-ready", "serving-brewing-ready-named"],
            Self::Strength => ["serving-brewing-strength", "serving-brewing-strength-named"],
            Self::Water => ["serving-brewing-water", "serving-brewing-water-named"],
            Self::Leaf => ["serving-brewing-leaf", "serving-brewing-leaf-named"],
            Self::Pot => ["serving-brewing-pot", "serving-brewing-pot-named"],
            Self::Start => ["serving-brewing-start", "serving-brewing-start-named"],
            Self::Holding => ["serving-brewing-holding", "serving-brewing-holding-named"],
            Self::Extraction => [
                "serving-brewing-extraction",
                "serving-brewing-extraction-named",
            ],
            Self::Retention => [
                "serving-brewing-retention",
                "serving-brewing-retention-named",
            ],
            Self::Caffeine => ["serving-brewing-caffeine", "serving-brewing-caffeine-named"],
        }
    }

    /// The unit behind the field.
    fn unit(self, speaker: Speaker<'_>) -> &'static str {
        speaker.word(match self {
            Self::Ready | Self::Water => "serving-brewing-ready-unit",
            Self::Strength => "serving-brewing-strength-unit",
            Self::Leaf => "serving-brewing-leaf-unit",
            Self::Pot => "serving-brewing-pot-unit",
            Self::Start => return "",
            Self::Holding => return HOLDING.unit,
            Self::Extraction => "serving-brewing-extraction-unit",
            Self::Retention => "serving-brewing-retention-unit",
            Self::Caffeine => "serving-brewing-caffeine-unit",
        })
    }

    /// What is taken while nothing is typed.
    fn hint(self, speaker: Speaker<'_>, tea: Option<&Ingredient>, state: &BrewingState) -> String {
        let usual = state.infusion().usual();
        let number = |value: Option<f64>, decimals| {
            let written = value.map(|value| speaker.number(value, decimals));
            written.unwrap_or_default()
        };
        match self {
            Self::Ready | Self::Water | Self::Leaf => String::new(),
            Self::Strength => number(usual_strength(tea, state), 2),
            Self::Pot => speaker.word("serving-brewing-pot-hint").to_owned(),
            Self::Start => speaker.word("serving-brewing-start-hint").to_owned(),
            Self::Holding => number(tea.and_then(|tea| tea.opened_life_hours), 0),
            Self::Extraction => number(Some(usual.extraction.value * 100.0), 0),
            Self::Retention => number(Some(usual.retention.value), 1),
            Self::Caffeine => "–".to_owned(),
        }
    }
}

fn fields_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    tea: Option<&Ingredient>,
    state: &mut BrewingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let first = if state.is_from_leaf {
        [Asked::Water, Asked::Leaf]
    } else {
        [Asked::Ready, Asked::Strength]
    };
    let others = [
        Asked::Pot,
        Asked::Start,
        Asked::Holding,
        Asked::Extraction,
        Asked::Retention,
        Asked::Caffeine,
    ];
    for asked in first.into_iter().chain(others) {
        let hint = asked.hint(speaker, tea, state);
        let [words, name] = asked.messages().map(|message| speaker.word(message));
        let row = NumberRow {
            focus: Focus::Question(FieldName::at("brewing", asked as usize)),
            words,
            words_width: LABEL,
            term: None,
            name,
            shown: state.text(asked).to_owned(),
            hint: &hint,
            unit: asked.unit(speaker),
        };
        row.ask_ui(ui, drafts, actions, |text| {
            text.clone_into(&mut state.text[asked as usize]);
            judged(asked, text)
        });
    }
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

/// What is asked, or the message with what is still to be typed.
fn question(tea: Option<&Ingredient>, state: &BrewingState) -> Result<BrewQuestion, &'static str> {
    const UNREAD: &str = "serving-brewing-unread";
    let number = |range: Range, asked| range.read(state.text(asked)).map_err(|_| UNREAD);
    let grams = |asked, density| typed::read_grams(state.text(asked), density).map_err(|_| UNREAD);
    let way = if state.is_from_leaf {
        let water = grams(Asked::Water, WATER_GRAMS_PER_MILLILITRE)?;
        let leaf = grams(Asked::Leaf, LEAF_GRAMS_PER_MILLILITRE)?;
        let (water, leaf) = water.zip(leaf).ok_or("serving-brewing-no-amounts")?;
        Way::FromLeaf { water, leaf }
    } else {
        let ready =
            grams(Asked::Ready, WATER_GRAMS_PER_MILLILITRE)?.ok_or("serving-brewing-no-tea")?;
        let typed = number(STRENGTH, Asked::Strength)?;
        let strength = typed.or_else(|| usual_strength(tea, state));
        Way::ForTea {
            ready,
            strength: strength.ok_or("serving-brewing-no-strength")?,
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
    screen: &Screen<'_>,
    tea: Option<&Ingredient>,
    question: &BrewQuestion,
    answer: &Result<BrewPlan, BrewError>,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let plan = match answer {
        Ok(plan) => plan,
        Err(error) => {
            let reason = speaker.brew_error(error);
            let words = say!(speaker, "serving-brewing-not-possible", reason: reason);
            sheet::off_ui(ui, words);
            return;
        }
    };
    let facts = facts(speaker, plan);
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
    sheet::quiet_ui(
        ui,
        say!(
            speaker,
            "serving-brewing-method",
            temperature: speaker.temperature(method.water_celsius, 0),
            time: steep,
            source: speaker.infusion_source(method.infusion),
            grams: speaker.in_unit(LEAF_GRAMS_PER_MILLILITRE, "g", 2)
        ),
    );
    if let Some(tea) = tea {
        use_ui(ui, screen, tea, plan, actions);
    }
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
    facts.push(fact(leaf, grams(plan.whole.leaf), "g"));
    let found = &plan.found;
    let caffeine = found.caffeine.map_or_else(
        || Value::not_known(speaker.word("serving-brewing-caffeine-not-stated")),
        figure,
    );
    facts.extend([
        fact("serving-brewing-ready", figure(found.ready), "g"),
        fact("serving-brewing-retained", figure(found.retained), "g"),
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

/// Carries the strength into every drink that is made with the tea.
fn use_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    tea: &Ingredient,
    plan: &BrewPlan,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let name = tea.full_name();
    let name = name_as_shown(&name);
    if tea.house_made.is_some() {
        sheet::quiet_ui(ui, say!(speaker, "serving-brewing-house-made", tea: name));
        return;
    }
    let Some(changed) = brewing_model::with_figures(tea, plan) else {
        sheet::quiet_ui(ui, say!(speaker, "serving-brewing-no-density", tea: name));
        return;
    };
    let evidence = speaker.evidence_kind(if plan.is_measured {
        Evidence::Measured
    } else {
        Evidence::Assumed
    });
    ui.add_space(grid::TIGHT);
    let words = say!(speaker, "serving-brewing-use", tea: name);
    let does = say!(speaker, "serving-brewing-use-does", evidence: evidence);
    let focus = screen.serving(ItemId::Ingredient(tea.id.clone()), "brewing");
    let response = ui.button(words).on_hover_text(&does);
    take_keyboard(ui, &focus, &response);
    if response.clicked() {
        actions.push(Action::edit(Edit::PutIngredient(changed), focus));
    }
    sheet::quiet_ui(ui, does);
}
