//! The blocks that several cards share: steps, facts, cautions, small print.

use super::document::{Block, CautionLine, Fact, StageSteps, StepRow};
use super::figure_words::{balance_words, with_uncertainty};
use super::request::{CardError, Drink};
use crate::balance::{AllergenSummary, Balance, LineShare, Measurand, Verdict, VersionBalances};
use crate::book::{
    Allergen, Amount, ClosureKind, Confirmation, Entry, Line, Recipe, Resolved, Role, Stage,
    VesselId,
};
use crate::say::{Language, Speaker, say};

/// How far a line may differ from the room without being told, K.
const SAME_TEMPERATURE: f64 = 0.5;

/// A drink with its balance.
pub(super) struct Made<'book> {
    pub(super) speaker: Speaker<'book>,
    pub(super) recipe: &'book Recipe,
    pub(super) drink: &'book Drink,
    pub(super) balance: Balance,
}

impl<'book> Made<'book> {
    pub(super) fn new(speaker: Speaker<'book>, drink: &'book Drink) -> Result<Self, CardError> {
        let recipe = drink.recipe_in(speaker.book)?;
        Self::of(
            speaker,
            drink,
            &mut VersionBalances::new(speaker.book, recipe),
        )
    }

    fn of(
        speaker: Speaker<'book>,
        drink: &'book Drink,
        balances: &mut VersionBalances<'book>,
    ) -> Result<Self, CardError> {
        let recipe = balances.recipe();
        let balance = balances.balance(drink.version.as_ref());
        Ok(Self {
            speaker,
            recipe,
            drink,
            balance: balance.ok_or_else(|| CardError::NoRecipe(drink.recipe.clone()))?,
        })
    }

    /// Drinks that stand by recipe.
    pub(super) fn each(
        speaker: Speaker<'book>,
        drinks: &'book [Drink],
    ) -> Result<Vec<Self>, CardError> {
        let mut made = Vec::new();
        for of_recipe in drinks.chunk_by(|a, b| a.recipe == b.recipe) {
            let recipe = of_recipe[0].recipe_in(speaker.book)?;
            let mut balances = VersionBalances::new(speaker.book, recipe);
            for drink in of_recipe {
                made.push(Self::of(speaker, drink, &mut balances)?);
            }
        }
        Ok(made)
    }

    /// The name of its version.
    pub(super) fn version_name(&self) -> &'book str {
        super::approval_words::version_name(&self.speaker, self.recipe, self.drink.version.as_ref())
    }

    /// The name of the recipe.
    pub(super) fn recipe_name(&self) -> &'book str {
        self.text(&self.recipe.name)
    }

    /// Name of the recipe and, for a version, of the version.
    pub(super) fn name(&self) -> String {
        match &self.drink.version {
            None => self.recipe_name().to_owned(),
            Some(_) => format!("{} — {}", self.recipe_name(), self.version_name()),
        }
    }

    /// The note on the recipe.
    pub(super) fn note(&self) -> &'book str {
        self.text(&self.recipe.note)
    }

    /// A text of the recipe as the card says it.
    fn text<'text>(&self, text: &'text str) -> &'text str
    where
        'book: 'text,
    {
        self.speaker.recipe_text(self.recipe, text)
    }

    /// Its version and approval.
    pub(super) fn revision(&self) -> String {
        super::approval_words::revision(
            &self.speaker,
            self.recipe,
            self.drink.version.as_ref(),
            &self.balance.resolved,
        )
    }

    /// Whether it is what was approved.
    pub(super) fn is_approved(&self) -> bool {
        let version = self.drink.version.as_ref();
        self.recipe
            .standing(version, &self.balance.resolved)
            .is_approved()
    }

    pub(super) fn words(&self, measurand: Measurand) -> String {
        balance_words(&self.speaker, &self.balance, measurand)
    }

    fn share(&self, line: &Line, carried: bool) -> Option<&LineShare> {
        self.balance
            .lines
            .iter()
            .find(|share| share.line == line.id && share.carried == carried)
    }

    /// What a line weighs: "17.6 g"; says so when nobody knows.
    pub(super) fn grams(&self, line: &Line) -> String {
        let share = self.share(line, false);
        match share.and_then(|share| Some((share.grams?, share.u_grams))) {
            Some((grams, u)) => self.speaker.rounded(grams, u, 1, "g"),
            None => self.speaker.word("weight-not-known").to_owned(),
        }
    }

    /// What a line weighs, with its uncertainty.
    pub(super) fn grams_with_uncertainty(&self, line: &Line) -> String {
        let share = self.share(line, false);
        match share.and_then(|share| Some((share.grams?, share.u_grams))) {
            Some((grams, u)) => with_uncertainty(&self.speaker, grams, u, "g"),
            None => self.speaker.word("card-figure-not-known").to_owned(),
        }
    }

    /// The temperature that somebody has to bring about: that of the line, that of water, that of what comes hot. What comes
    /// cold comes from its shelf.
    fn told_temperature(&self, line: &Line) -> Option<String> {
        let room = self.speaker.book.settings.room_temperature.celsius();
        if let Some(stated) = line.temperature {
            let is_told = (stated.celsius() - room).abs() > SAME_TEMPERATURE;
            return is_told.then(|| self.speaker.stated_temperature(stated, 0));
        }
        let celsius = self.share(line, false)?.celsius;
        let beyond_room = celsius - room;
        let is_told = if line.role == Role::Water {
            beyond_room.abs() > SAME_TEMPERATURE
        } else {
            beyond_room > SAME_TEMPERATURE
        };
        is_told.then(|| self.speaker.temperature(celsius, 0))
    }

    fn step(&self, line: &Line) -> StepRow {
        let measure = match &line.amount {
            Amount::Count(_, id) => self.speaker.measure(id),
            _ => String::new(),
        };
        let mut remarks = Vec::new();
        if let Some(temperature) = self.told_temperature(line) {
            remarks.push(say!(self.speaker, "line-at-temperature", temperature: temperature));
        }
        if let Some(carried) = &line.carried {
            remarks.push(say!(
                self.speaker,
                "line-brings",
                mass: self.speaker.in_unit(carried.grams, "g", 0),
                ingredient: self.speaker.ingredient(&carried.ingredient),
            ));
        }
        if !line.note.is_empty() {
            remarks.push(self.text(&line.note).to_owned());
        }
        StepRow::Line {
            amount: self.speaker.amount(&line.amount),
            measure,
            name: self.speaker.ingredient(&line.ingredient),
            grams: self.grams(line),
            remarks,
        }
    }

    /// What is done, stage by stage: lines that follow each other in one stage stand together with the instructions between
    /// and behind them.
    pub(super) fn steps(&self) -> Block {
        let mut stages: Vec<(Stage, StageSteps)> = Vec::new();
        let mut before_any: Vec<StepRow> = Vec::new();
        for entry in &self.balance.resolved.entries {
            match entry {
                Entry::Instruction(instruction) => {
                    let row = StepRow::Instruction(self.text(&instruction.text).to_owned());
                    match stages.last_mut() {
                        Some((_, steps)) => steps.rows.push(row),
                        None => before_any.push(row),
                    }
                }
                Entry::Line(line) => {
                    let row = self.step(line);
                    match stages.last_mut() {
                        Some((stage, steps)) if *stage == line.stage => steps.rows.push(row),
                        _ => {
                            let mut rows = std::mem::take(&mut before_any);
                            rows.push(row);
                            let title = self.stage_title(line.stage);
                            stages.push((line.stage, StageSteps { title, rows }));
                        }
                    }
                }
            }
        }
        if !before_any.is_empty() {
            let title = self.stage_title(Stage::Mixed);
            let rows = before_any;
            stages.push((Stage::Mixed, StageSteps { title, rows }));
        }
        Block::Steps(stages.into_iter().map(|(_, steps)| steps).collect())
    }

    fn stage_title(&self, stage: Stage) -> String {
        let speaker = &self.speaker;
        let Resolved {
            shaker,
            cup,
            strained,
            ..
        } = &self.balance.resolved;
        let name = |id: &Option<VesselId>| {
            let vessel = id.as_ref().filter(|id| speaker.book.vessel(id).is_some());
            vessel.map(|id| speaker.vessel(id))
        };
        match (stage, name(shaker), name(cup)) {
            (Stage::Mixed, Some(shaker), _) if *strained => {
                say!(speaker, "card-stage-mixed-strained", shaker: shaker)
            }
            (Stage::Mixed, Some(shaker), _) => {
                say!(speaker, "card-stage-mixed-shaker", shaker: shaker)
            }
            (Stage::Mixed, None, Some(cup)) => say!(speaker, "card-stage-mixed-cup", cup: cup),
            (Stage::Mixed, None, None) => speaker.word("card-stage-mixed").to_owned(),
            (Stage::Topping, ..) => speaker.word("card-stage-in-cup").to_owned(),
            (Stage::OnTop, ..) => speaker.word("card-stage-on-top").to_owned(),
            (Stage::Steeped, ..) => self.steeping_minutes().map_or_else(
                || speaker.word("card-stage-steeped").to_owned(),
                |minutes| {
                    let minutes = speaker.count(minutes);
                    say!(speaker, "card-stage-steeped-for", minutes: minutes)
                },
            ),
        }
    }

    /// How long leaf steeps in what is made by this recipe; `None` where nobody says, or one thing steeps longer than another.
    fn steeping_minutes(&self) -> Option<f64> {
        let mut minutes = self
            .speaker
            .book
            .ingredients
            .iter()
            .filter_map(|item| item.house_made.as_ref())
            .filter(|made| made.recipe == self.recipe.id)
            .map(|made| made.steep_minutes);
        let first = minutes.next()??;
        minutes.all(|other| other == Some(first)).then_some(first)
    }

    /// Cup and closure: "paper cup 500, with a lid".
    pub(super) fn cup(&self) -> String {
        let Some(id) = self.balance.resolved.cup.as_ref() else {
            return self.speaker.word("cup-not-named").to_owned();
        };
        let name = self.speaker.vessel(id);
        let cup = self.speaker.book.vessel(id);
        match cup
            .and_then(|cup| cup.usual_closure())
            .map(|closure| closure.kind)
        {
            Some(ClosureKind::Open) => say!(self.speaker, "cup-open", cup: name),
            Some(ClosureKind::Lid) => say!(self.speaker, "cup-with-lid", cup: name),
            Some(ClosureKind::Film) => say!(self.speaker, "cup-sealed", cup: name),
            None => name,
        }
    }

    /// What the counter has to know at a glance.
    pub(super) fn facts(&self) -> Vec<Fact> {
        let mut facts = vec![Fact::new(self.speaker.word("fact-cup"), self.cup())];
        let mut add = |measurand: Measurand| {
            facts.push(Fact::new(
                self.speaker.measurand(measurand),
                self.words(measurand),
            ));
        };
        add(Measurand::ServingTemperature);
        if self.balance.iced {
            add(Measurand::IceLeft);
        }
        add(Measurand::Volume);
        add(Measurand::TotalSugar);
        add(Measurand::EnergyKcal);
        facts.extend(self.diet_facts());
        facts
    }

    /// Allergens and diets, by ingredients.
    pub(super) fn diet_facts(&self) -> Vec<Fact> {
        diet_facts(&self.speaker, &self.balance.allergens, self.balance.vegan)
    }

    /// Its cautions.
    pub(super) fn cautions(&self) -> Vec<CautionLine> {
        let cautions = self.balance.cautions.iter();
        cautions
            .map(|caution| CautionLine {
                kind: self.speaker.caution_kind(caution.kind()).to_owned(),
                text: beside_english(&self.speaker, |speaker| speaker.caution(&caution.fact)),
            })
            .collect()
    }
}

/// Allergens and diets of one drink or of several together, by ingredients.
pub(super) fn diet_facts(
    speaker: &Speaker<'_>,
    allergens: &AllergenSummary,
    vegan: Verdict,
) -> Vec<Fact> {
    let mut facts = Vec::new();
    if !allergens.contains.is_empty() {
        let contains = |speaker: &Speaker<'_>| speaker.allergens(&allergens.contains);
        let value = beside_english(speaker, contains);
        facts.push(Fact::strong(speaker.word("fact-contains"), value));
    }
    let mut add = |name, value: String| facts.push(Fact::new(speaker.word(name), value));
    if !allergens.may_contain.is_empty() {
        let may = |speaker: &Speaker<'_>| speaker.allergens(&allergens.may_contain);
        add("fact-may-contain", beside_english(speaker, may));
    }
    if !allergens.not_stated.is_empty() {
        add(
            "fact-allergens-not-stated",
            speaker.ingredients(&allergens.not_stated),
        );
    }
    for (some, silent) in allergens.silences() {
        let value = |speaker: &Speaker<'_>| {
            let ingredients = speaker.ingredients(silent);
            let allergens = speaker.allergens(&some);
            say!(speaker, "allergens-not-stated-some", ingredients: ingredients, allergens: allergens)
        };
        add("fact-allergens-not-stated", beside_english(speaker, value));
    }
    if allergens.is_complete() && allergens.contains.is_empty() {
        let settings = &speaker.book.settings;
        let is_annex = settings.listed_allergens() == Allergen::ANNEX;
        let none = if is_annex {
            "contains-none"
        } else {
            "contains-none-listed"
        };
        add("fact-contains", speaker.word(none).to_owned());
    }
    add("fact-vegan", speaker.verdict(vegan).to_owned());
    facts
}

/// The cautions of several drinks; each names those that it is about.
pub(super) fn cautions_of_all(made: &[&Made<'_>]) -> Vec<CautionLine> {
    let mut found: Vec<(CautionLine, Vec<String>)> = Vec::new();
    for one in made {
        for caution in one.cautions() {
            match found.iter_mut().find(|(known, _)| *known == caution) {
                Some((_, whose)) => whose.push(one.name()),
                None => found.push((caution, vec![one.name()])),
            }
        }
    }
    let several = made.len() > 1;
    found
        .into_iter()
        .map(|(caution, whose)| CautionLine {
            text: if several {
                format!("{}: {}", whose.join(", "), caution.text)
            } else {
                caution.text.clone()
            },
            ..caution
        })
        .collect()
}

/// What someone's health may depend on, with the English beside it as long as no one of the shop has confirmed the translation.
pub(super) fn beside_english<'book>(
    speaker: &Speaker<'book>,
    words: impl Fn(&Speaker<'book>) -> String,
) -> String {
    let text = words(speaker);
    if !needs_english(speaker) {
        return text;
    }
    let english = words(&speaker.in_english());
    say!(speaker, "card-beside-english", text: text, english: english)
}

/// Whether the English has to stand beside what someone's health may depend on.
pub(super) fn needs_english(speaker: &Speaker<'_>) -> bool {
    speaker.language != Language::ENGLISH && confirmation(speaker).is_none()
}

/// Who has confirmed the words of the card; none for English, which needs nobody.
pub(super) fn confirmation<'book>(speaker: &Speaker<'book>) -> Option<&'book Confirmation> {
    let code = speaker.language.code();
    let found = speaker.book.settings.confirmation_in(code);
    found.filter(|_| speaker.language != Language::ENGLISH)
}

/// The small print under every card.
pub(super) fn footnotes(speaker: &Speaker<'_>) -> Block {
    let mut lines = vec![speaker.word("card-small-print").to_owned()];
    if needs_english(speaker) {
        lines.push(speaker.word("card-not-confirmed").to_owned());
    } else if let Some(Confirmation { by, date, .. }) = confirmation(speaker) {
        lines.push(say!(speaker, "card-confirmed", person: by, day: date));
    }
    Block::Footnotes(lines)
}
