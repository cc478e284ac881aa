//! The brewing planner: water and leaf for so much tea, or the tea that comes off so much leaf.

use egui::Ui;

use super::brewing_facts;
use super::brewing_model::{self, BrewPlan, BrewQuestion, TeaInHand, Way};
use super::brewing_use::use_ui;
use super::sheet;
use super::teas::teas_ui;
use super::typed::{self, LABEL, Range, TypedError};
use crate::balance::{Brew, BrewError, BrewMethod, HouseBrew, Infusion};
use crate::book::{Form, IngredientId, Nutrient};
use crate::edit::{FieldName, Focus};
use crate::quantity::Uncertain;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::grid;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::NumberRow;
use crate::ui::widgets::pick_list::PickList;
use crate::workbench::{Action, HouseBrewOf, reference_brew};

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
/// Minutes that leaf may steep.
const STEEPING: Range = Range {
    from: 0.0,
    to: 10_080.0,
    unit: "min",
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
    Minutes,
    Holding,
    Extraction,
    Retention,
    Caffeine,
}

/// How many fields there are.
const FIELDS: usize = 11;

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
    let house = tea.and_then(|tea| screen.answers.to(&HouseBrewOf(tea.id.clone())));
    let house = house.as_deref();
    let leaf = match house {
        Some(house) => screen.book.ingredient(&house.leaf).map(AsRef::as_ref),
        None => tea.filter(|tea| tea.form == Form::Leaf),
    };
    let tea = TeaInHand { tea, house, leaf };
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
            if let Some((question, Ok(plan))) = &state.known {
                brewing_facts::answer_ui(ui, screen, tea, question, plan);
                if let Some(begun) = use_ui(ui, screen, tea, plan, actions) {
                    state.tea = Some(begun);
                }
            } else if let Some((_, Err(error))) = &state.known {
                let reason = screen.speaker.brew_error(error);
                let words = say!(screen.speaker, "serving-brewing-not-possible", reason: reason);
                sheet::off_ui(ui, words);
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
    let of_house = state
        .tea
        .clone()
        .and_then(|id| screen.answers.to(&HouseBrewOf(id)));
    let before = state.infusion_of(of_house.as_deref());
    let mut infusion = before;
    let name = speaker.word("serving-brewing-infusion");
    sheet::choice_ui(ui, name, &mut infusion, &infusions);
    if infusion != before {
        state.infusion = Some(infusion);
    }
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

    /// The one that was chosen, else that of the house.
    fn infusion_of(&self, house: Option<&HouseBrew>) -> Infusion {
        let of_house = || house.map(|house| house.method.infusion);
        self.infusion.or_else(of_house).unwrap_or(Infusion::Hot)
    }
}

/// Reads the text of a field only to say what is wrong with it.
fn judged(asked: Asked, text: &str) -> Result<(), TypedError> {
    match asked {
        Asked::Ready | Asked::Water | Asked::Pot => {
            typed::read_grams(text, WATER_GRAMS_PER_MILLILITRE).map(drop)
        }
        Asked::Leaf => typed::read_grams(text, 1.0).map(drop),
        Asked::Strength => STRENGTH.read(text).map(drop),
        Asked::Start => typed::read_time_of_day(text).map(drop),
        Asked::Minutes => STEEPING.read(text).map(drop),
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
            Self::Minutes => ["serving-brewing-minutes", "serving-brewing-minutes-named"],
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
            Self::Minutes => return STEEPING.unit,
            Self::Holding => return HOLDING.unit,
            Self::Extraction => "serving-brewing-extraction-unit",
            Self::Retention => "serving-brewing-retention-unit",
            Self::Caffeine => "serving-brewing-caffeine-unit",
        })
    }

    /// What is taken while nothing is typed.
    fn hint(self, speaker: Speaker<'_>, tea: TeaInHand<'_>, state: &BrewingState) -> String {
        let usual = usual(tea, state);
        let number = |value: Option<f64>, decimals| {
            let written = value.map(|value| speaker.number(value, decimals));
            written.unwrap_or_default()
        };
        let batch = tea.house.map(|house| house.brew);
        match self {
            Self::Ready => String::new(),
            Self::Water => number(batch.map(|brew| brew.water), 0),
            Self::Leaf => number(batch.map(|brew| brew.leaf), 1),
            Self::Strength => number(usual_strength(tea, state), 2),
            Self::Pot => speaker.word("serving-brewing-pot-hint").to_owned(),
            Self::Start => speaker.word("serving-brewing-start-hint").to_owned(),
            Self::Minutes => number(Some(usual.steep_minutes), 0),
            Self::Holding => number(keeps(tea), 0),
            Self::Extraction => number(Some(usual.extraction.value * 100.0), 0),
            Self::Retention => number(Some(usual.retention.value), 1),
            Self::Caffeine => "–".to_owned(),
        }
    }
}

/// How the infusion usually is.
fn usual(tea: TeaInHand<'_>, state: &BrewingState) -> BrewMethod {
    brewing_model::usual_method(tea.house, state.infusion_of(tea.house))
}

/// How long the tea keeps by the book, hours.
fn keeps(tea: TeaInHand<'_>) -> Option<f64> {
    let tea = tea.tea?;
    let made = tea.house_made.as_ref();
    let of_batch = made.and_then(|made| made.shelf_life_hours);
    tea.opened_life_hours.or(of_batch)
}

fn fields_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    tea: TeaInHand<'_>,
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
        Asked::Minutes,
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

/// The strength while none is typed: that of the batch, of the tea in the book, or of the reference brew.
fn usual_strength(tea: TeaInHand<'_>, state: &BrewingState) -> Option<f64> {
    let usual = usual(tea, state);
    if let Some(house) = tea.house {
        return brewing_model::strength(&house.brew, &usual);
    }
    if usual.infusion == Infusion::Reference || tea.leaf.is_some() {
        let extraction = EXTRACTION
            .read(state.text(Asked::Extraction))
            .ok()
            .flatten();
        let method = brewing_model::method(&usual, extraction, None);
        return brewing_model::strength(&reference_brew(), &method);
    }
    tea.tea?
        .composition
        .get(Nutrient::TeaSolids)
        .map(|figure| figure.value)
        .filter(|strength| *strength > 0.0)
}

/// What is asked, or the message with what is still to be typed.
fn question(tea: TeaInHand<'_>, state: &BrewingState) -> Result<BrewQuestion, &'static str> {
    const UNREAD: &str = "serving-brewing-unread";
    let number = |range: Range, asked| range.read(state.text(asked)).map_err(|_| UNREAD);
    let grams = |asked| {
        typed::read_grams(state.text(asked), WATER_GRAMS_PER_MILLILITRE).map_err(|_| UNREAD)
    };
    let way = if state.is_from_leaf {
        let batch = tea.house.map(|house| house.brew);
        let density = brewing_model::leaf_density(tea.leaf);
        let leaf = typed::read_mass(state.text(Asked::Leaf), density).map_err(|_| UNREAD)?;
        let of_batch = |brew: Brew| Uncertain {
            value: brew.leaf,
            u: brew.leaf_u,
        };
        let leaf = leaf.or_else(|| batch.map(of_batch));
        let water = grams(Asked::Water)?.or_else(|| batch.map(|brew| brew.water));
        let (water, leaf) = water.zip(leaf).ok_or("serving-brewing-no-amounts")?;
        Way::FromLeaf { water, leaf }
    } else {
        let ready = grams(Asked::Ready)?.ok_or("serving-brewing-no-tea")?;
        let typed = number(STRENGTH, Asked::Strength)?;
        let strength = typed.or_else(|| usual_strength(tea, state));
        Way::ForTea {
            ready,
            strength: strength.ok_or("serving-brewing-no-strength")?,
        }
    };
    let holding = number(HOLDING, Asked::Holding)?.or_else(|| keeps(tea));
    Ok(BrewQuestion {
        usual: usual(tea, state),
        way,
        extraction: number(EXTRACTION, Asked::Extraction)?,
        retention: number(RETENTION, Asked::Retention)?,
        minutes: number(STEEPING, Asked::Minutes)?,
        caffeine: number(CAFFEINE, Asked::Caffeine)?,
        pot: grams(Asked::Pot)?,
        start: typed::read_time_of_day(state.text(Asked::Start)).map_err(|_| UNREAD)?,
        holding,
    })
}
