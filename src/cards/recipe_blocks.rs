//! The blocks that several cards share: steps, facts, cautions, small print.

use super::document::{Block, CautionLine, Fact, StageSteps, StepRow};
use super::figure_words::{balance_words, name_of, names_of, with_uncertainty};
use super::request::{CardError, Drink};
use crate::balance::{Balance, LineShare, Measurand, VersionBalances, caution_words};
use crate::book::{Allergen, Amount, Book, ClosureKind, Entry, Line, Recipe, Stage};
use crate::quantity::show_number;

/// How far a line may differ from the shelf that its ingredient stands on without being told, K.
const SAME_TEMPERATURE: f64 = 0.5;

/// A drink with its balance.
pub(super) struct Made<'book> {
    pub(super) book: &'book Book,
    pub(super) recipe: &'book Recipe,
    pub(super) drink: &'book Drink,
    pub(super) balance: Balance,
}

impl<'book> Made<'book> {
    pub(super) fn new(book: &'book Book, drink: &'book Drink) -> Result<Self, CardError> {
        Self::of(
            drink,
            &mut VersionBalances::new(book, drink.recipe_in(book)?),
            book,
        )
    }

    fn of(
        drink: &'book Drink,
        balances: &mut VersionBalances<'book>,
        book: &'book Book,
    ) -> Result<Self, CardError> {
        let recipe = balances.recipe();
        let balance = balances.balance(drink.version.as_ref());
        Ok(Self {
            book,
            recipe,
            drink,
            balance: balance.ok_or_else(|| CardError::NoRecipe(drink.recipe.clone()))?,
        })
    }

    /// Drinks that stand by recipe.
    pub(super) fn each(book: &'book Book, drinks: &'book [Drink]) -> Result<Vec<Self>, CardError> {
        let mut made = Vec::new();
        for of_recipe in drinks.chunk_by(|one, other| one.recipe == other.recipe) {
            let mut balances = VersionBalances::new(book, of_recipe[0].recipe_in(book)?);
            for drink in of_recipe {
                made.push(Self::of(drink, &mut balances, book)?);
            }
        }
        Ok(made)
    }

    /// The name of its version.
    pub(super) fn version_name(&self) -> &'book str {
        super::approval_words::version_name(self.recipe, self.drink.version.as_ref())
    }

    /// Name of the recipe and, for a version, of the version.
    pub(super) fn name(&self) -> String {
        match &self.drink.version {
            None => self.recipe.name.clone(),
            Some(_) => format!("{} — {}", self.recipe.name, self.version_name()),
        }
    }

    /// Its version and approval.
    pub(super) fn revision(&self) -> String {
        super::approval_words::revision(
            self.recipe,
            self.drink.version.as_ref(),
            &self.balance.resolved,
        )
    }

    pub(super) fn words(&self, measurand: Measurand) -> String {
        balance_words(self.book, &self.balance, measurand)
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
            Some((grams, u)) => {
                let digits = crate::quantity::rounded_at_most(grams, u, 1);
                format!("{}\u{a0}g", digits.value)
            }
            None => "weight not known".to_owned(),
        }
    }

    /// What a line weighs, with its uncertainty.
    pub(super) fn grams_with_uncertainty(&self, line: &Line) -> String {
        let share = self.share(line, false);
        match share.and_then(|share| Some((share.grams?, share.u_grams))) {
            Some((grams, u)) => with_uncertainty(grams, u, "g"),
            None => "not known".to_owned(),
        }
    }

    fn step(&self, line: &Line) -> StepRow {
        let measure = match &line.amount {
            Amount::Count(_, id) => self
                .book
                .measure(id)
                .map_or_else(|| id.to_string(), |measure| measure.name.clone()),
            _ => String::new(),
        };
        let mut remarks = Vec::new();
        if let Some(celsius) = line.temperature
            && (celsius - self.book.settings.room_temperature).abs() > SAME_TEMPERATURE
        {
            remarks.push(format!("at {}\u{a0}°C", show_number(celsius, 0)));
        }
        if let Some(carried) = &line.carried {
            remarks.push(format!(
                "brings {}\u{a0}g of {}",
                show_number(carried.grams, 0),
                name_of(self.book, &carried.ingredient)
            ));
        }
        if !line.note.is_empty() {
            remarks.push(line.note.clone());
        }
        StepRow::Line {
            amount: self.book.amount_words(&line.amount),
            measure,
            name: name_of(self.book, &line.ingredient),
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
                    let row = StepRow::Instruction(instruction.text.clone());
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
        let vessel = |id: &Option<crate::book::VesselId>| {
            id.as_ref()
                .and_then(|id| self.book.vessel(id))
                .map(|vessel| vessel.name.clone())
        };
        match stage {
            Stage::Mixed => match vessel(&self.balance.resolved.shaker) {
                Some(shaker) if self.balance.resolved.strained => {
                    format!("Mixed in the {shaker}, strained into the cup")
                }
                Some(shaker) => format!("Mixed in the {shaker}, poured into the cup"),
                None => match vessel(&self.balance.resolved.cup) {
                    Some(cup) => format!("Mixed in the {cup}"),
                    None => "Mixed".to_owned(),
                },
            },
            Stage::Topping => "In the cup".to_owned(),
            Stage::OnTop => "On top".to_owned(),
            Stage::Steeped => "Steeped and taken out".to_owned(),
        }
    }

    /// Cup and closure: "paper cup 500, lid".
    pub(super) fn cup(&self) -> String {
        let Some(cup) = self.balance.resolved.cup.as_ref() else {
            return "none named".to_owned();
        };
        let Some(cup) = self.book.vessel(cup) else {
            return cup.to_string();
        };
        let closure = cup.usual_closure().map(|closure| match closure.kind {
            ClosureKind::Open => "open",
            ClosureKind::Lid => "with a lid",
            ClosureKind::Film => "sealed with film",
        });
        match closure {
            Some(closure) => format!("{}, {closure}", cup.name),
            None => cup.name.clone(),
        }
    }

    /// What the counter has to know at a glance.
    pub(super) fn facts(&self) -> Vec<Fact> {
        let mut facts = vec![Fact::new("cup", self.cup())];
        let mut add = |measurand: Measurand| {
            facts.push(Fact::new(measurand.word(), self.words(measurand)));
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
        let allergens = &self.balance.allergens;
        let words = |list: &std::collections::BTreeSet<Allergen>| {
            let words: Vec<&str> = list.iter().map(|allergen| allergen.word()).collect();
            words.join(", ")
        };
        let unstated = names_of(self.book, &allergens.not_stated);
        let mut facts = Vec::new();
        if !allergens.contains.is_empty() {
            facts.push(Fact::new("contains", words(&allergens.contains)));
        }
        if !allergens.may_contain.is_empty() {
            facts.push(Fact::new("may contain", words(&allergens.may_contain)));
        }
        if !unstated.is_empty() {
            facts.push(Fact::new("allergens not stated by", unstated));
        } else if allergens.contains.is_empty() {
            facts.push(Fact::new(
                "contains",
                "none of the fourteen allergens, as the packs state it",
            ));
        }
        facts.push(Fact::new(
            "vegan, by ingredients",
            self.balance.vegan.word(),
        ));
        facts
    }

    /// Its cautions.
    pub(super) fn cautions(&self) -> Vec<CautionLine> {
        let cautions = self.balance.cautions.iter();
        cautions
            .map(|caution| CautionLine {
                kind: caution.kind().word().to_owned(),
                text: caution_words(self.book, &caution.fact),
            })
            .collect()
    }
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

/// The small print under every card.
pub(super) fn footnotes() -> Block {
    Block::Footnotes(vec![
        "± is one standard uncertainty. Allergens and diets are by ingredients, as their packs state them; shared shakers, \
         scoops and blenders carry traces. This sheet informs and claims no compliance: follow your local code."
            .to_owned(),
    ])
}
