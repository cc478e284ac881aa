//! Tastings that the book keeps, and what they say of its ingredients.

use super::{Speaker, say};
use crate::book::{TastedCup, TastedFactor, Tasting, TastingOutcome};
use crate::quantity::{Uncertain, name_as_shown};
use crate::tasting::{DrinkEffect, Learned, Proposal, SetAside, WeighedTasting};

impl Speaker<'_> {
    /// What came out of a tasting, in a few words.
    pub fn tasting_outcome(&self, outcome: TastingOutcome) -> String {
        match outcome {
            TastingOutcome::Said => self.word("tasting-outcome-said").to_owned(),
            TastingOutcome::Triangle { people, right }
            | TastingOutcome::DuoTrio { people, right }
            | TastingOutcome::Pair { people, right }
            | TastingOutcome::PairEitherWay { people, right } => say!(
                self,
                "tasting-outcome-chosen",
                test: outcome.word(),
                right: right.to_string(),
                people: people.to_string(),
            ),
            TastingOutcome::Matched { people } => {
                say!(self, "tasting-outcome-matched", people: people as usize)
            }
            TastingOutcome::PassedAsEqual { people } => {
                say!(self, "tasting-outcome-passed-as-equal", people: people as usize)
            }
            TastingOutcome::About { times, .. } => {
                say!(self, "tasting-outcome-about", times: self.trimmed(times, "", 2))
            }
        }
    }

    /// Whether a tasting counts as evidence.
    pub fn tasting_counts(&self, counts: bool) -> &'static str {
        self.word(if counts {
            "tasting-counts"
        } else {
            "tasting-counts-not"
        })
    }

    /// What was in a cup: the name of a drink, or so much of what.
    pub fn tasted_cup(&self, cup: &TastedCup) -> String {
        if let Some(recipe) = &cup.recipe {
            return self.drink(recipe, cup.version.as_ref());
        }
        let lines = cup.lines.lines();
        let parts: Vec<String> = lines
            .map(|line| {
                let amount = self.amount(&line.amount);
                let ingredient = self.ingredient(&line.ingredient);
                say!(self, "tasting-cup-part", amount: amount, ingredient: ingredient)
            })
            .collect();
        if parts.is_empty() {
            return self.word("tasting-cup-empty").to_owned();
        }
        self.and(&parts)
    }

    /// Who tasted, as the shop writes it.
    pub fn tasters(&self, tasting: &Tasting) -> String {
        let people = tasting.people.iter();
        let people: Vec<_> = people.map(|person| name_as_shown(person)).collect();
        self.and(&people)
    }

    /// What of an ingredient a tasting tells.
    pub fn tasted_factor(&self, what: &TastedFactor) -> String {
        self.axis(&what.axis())
    }

    /// What all tastings together say of a figure, and what is done about it so far.
    pub fn tasting_proposal(&self, proposal: &Proposal) -> String {
        let ingredient = self.ingredient(&proposal.factor.ingredient);
        let what = self.tasted_factor(&proposal.factor.what);
        if proposal.is_reference() {
            return say!(self, "tasting-proposal-reference", ingredient: ingredient, what: what);
        }
        let (value, u) = (proposal.times, proposal.u);
        let mut said = say!(
            self,
            "tasting-proposal",
            ingredient: ingredient,
            what: what,
            times: self.uncertain(Uncertain { value, u }, ""),
            before: self.in_unit(proposal.before * 100.0, "%", 0),
        );
        let count = proposal.tastings.len();
        said.push(' ');
        said.push_str(&say!(self, "tasting-proposal-rests", count: count));
        if let Some((value, u)) = proposal.taken {
            let times = self.uncertain(Uncertain { value, u }, "");
            said.push(' ');
            said.push_str(&say!(self, "tasting-proposal-taken", times: times));
        }
        said
    }

    /// What is to be said of a tasting that counts; nothing of one that fits.
    pub fn weighed_tasting(&self, weighed: &WeighedTasting) -> Option<String> {
        let tasting = super::capitalised(&self.tasting(&weighed.tasting));
        match &weighed.likely {
            Ok(likely) => weighed.contradicts.then(|| {
                let chance = self.probability(*likely);
                say!(self, "tasting-contradicts", tasting: tasting, chance: chance)
            }),
            Err(reason) => Some(self.says_nothing(&tasting, reason)),
        }
    }

    fn says_nothing(&self, tasting: &str, reason: &SetAside) -> String {
        match reason {
            SetAside::NothingCounted => {
                say!(self, "tasting-aside-nothing-counted", tasting: tasting)
            }
            SetAside::Unfinished => say!(self, "tasting-aside-unfinished", tasting: tasting),
            SetAside::NoAxis => say!(self, "tasting-aside-no-axis", tasting: tasting),
            SetAside::OtherAxis(axis) => {
                say!(self, "tasting-aside-other-axis", tasting: tasting, axis: self.axis(axis))
            }
            SetAside::NotKnown(axis) => {
                say!(self, "tasting-aside-not-known", tasting: tasting, axis: self.axis(axis))
            }
            SetAside::Changed(ingredients) => say!(
                self,
                "tasting-aside-changed",
                tasting: tasting,
                ingredients: self.ingredients(ingredients),
            ),
            SetAside::NothingDiffers => {
                say!(self, "tasting-aside-nothing-differs", tasting: tasting)
            }
        }
    }

    /// What keeps all that is said from being of use; nothing where the tastings were weighed.
    pub fn not_learned(&self, learned: &Learned) -> Option<&'static str> {
        if learned.tastings.is_empty() {
            Some(self.word("tasting-nothing-learned"))
        } else if learned.settled {
            None
        } else {
            Some(self.word("tasting-not-settled"))
        }
    }

    /// What becomes of a drink when a figure is taken over.
    pub fn drink_effect(&self, effect: &DrinkEffect) -> String {
        let drink = self.drink(&effect.recipe, effect.version.as_ref());
        let taste = &effect.taste;
        let axis = self.axis(&taste.axis);
        let value = |value: Option<f64>| match value {
            Some(value) => self.in_unit(value, taste.axis.unit(), 2),
            None => self.word("axis-not-known").to_owned(),
        };
        let (before, after) = (value(taste.standard), value(taste.value));
        let change = match taste.steps {
            None => self.word("axis-not-known").to_owned(),
            Some(steps) if steps.abs() < 0.05 => self.word("axis-same").to_owned(),
            Some(steps) => self.axis_change(&taste.axis, steps),
        };
        match effect.off_before.zip(effect.off_after) {
            None => say!(
                self,
                "tasting-effect",
                drink: drink,
                axis: axis,
                before: before,
                after: after,
                change: change,
            ),
            Some((off_before, off_after)) => say!(
                self,
                "tasting-effect-standard",
                drink: drink,
                axis: axis,
                before: before,
                after: after,
                change: change,
                off_before: self.number(off_before, 1),
                off_after: self.number(off_after, 1),
            ),
        }
    }

    /// That nothing becomes of any drink.
    pub fn no_effect(&self) -> &'static str {
        self.word("tasting-effect-none")
    }
}
