//! Cautions of a drink.

use super::{Speaker, say};
use crate::balance::published::serving::{
    BREWED_TEA_HOURS, CAFFEINE_SINGLE_DOSE_MG, CAFFEINE_SLEEP_MG, COLD_HOLDING_UK_CELSIUS,
    COLD_HOLDING_US_CELSIUS, HIGH_CAFFEINE_MG_PER_LITRE, HOT_HOLDING_UK_CELSIUS,
    HOT_HOLDING_US_CELSIUS, VERY_HOT_CELSIUS,
};
use crate::balance::{
    Against, CaffeineDose, CautionFact, Claim, Contradiction, HOT_FOR_A_WIDE_STRAW, Hot, KeptAt,
    Mention, NamedWords, NotKnown, ScaldBound, ScaldTime, Since, StatementKind, UseWithin,
};

impl Speaker<'_> {
    /// A caution as a clause, without the word of its kind before it and without a full stop behind it.
    pub fn caution(&self, fact: &CautionFact) -> String {
        match fact {
            CautionFact::TooHot(hot) => self.too_hot(hot),
            CautionFact::HotThroughWideStraw(hot) => say!(
                self,
                "caution-hot-through-wide-straw",
                celsius: self.temperature(hot.celsius, 0),
                limit: self.temperature(HOT_FOR_A_WIDE_STRAW, 0)
            ),
            CautionFact::Scalds(hot) => self.scalds(hot),
            CautionFact::Allergens(summary) => {
                say!(self, "caution-allergens", clauses: self.allergen_summary(summary))
            }
            CautionFact::StatementsContradict(named) => {
                say!(self, "caution-statements-contradict", named: self.named(named))
            }
            CautionFact::ClaimsContradicted(found) => {
                let claims = found.iter().map(|found| self.contradiction(found));
                let claims = self.different_clauses(claims);
                say!(self, "caution-claims-contradicted", claims: claims)
            }
            CautionFact::Choking(pieces) => {
                say!(self, "caution-choking", ingredients: self.ingredients(pieces))
            }
            CautionFact::KeptAt(kept) => {
                let kept = self.different_clauses(kept.iter().map(|kept| self.kept_at(kept)));
                say!(self, "caution-kept-at", kept: kept)
            }
            CautionFact::UseWithin(rules) => {
                let has_rule = rules.iter().any(|rule| rule.hours.is_some());
                let rules = self.different_clauses(rules.iter().map(|rule| self.use_within(rule)));
                if has_rule {
                    say!(self, "caution-use-within", rules: rules)
                } else {
                    say!(self, "caution-no-use-rules", rules: rules)
                }
            }
            CautionFact::Curdles { acid, is_complete } => {
                let acid = self.at_least(self.in_unit(*acid, "g", 2), *is_complete);
                say!(self, "caution-curdles", acid: acid)
            }
            CautionFact::MayCurdle { acid_not_stated } => {
                let silent = self.ingredients(acid_not_stated);
                say!(self, "caution-may-curdle", ingredients: silent)
            }
            CautionFact::Caffeine {
                milligrams,
                is_complete,
                dose,
                per_litre,
            } => {
                let caffeine = self.at_least(self.in_unit(*milligrams, "mg", 0), *is_complete);
                let lines = self.caffeine_lines(*is_complete, *dose, *per_litre);
                say!(self, "caution-caffeine", caffeine: caffeine, lines: lines)
            }
            CautionFact::CaffeineNotKnown(silent) if silent.is_empty() => {
                self.word("caution-caffeine-not-known-at-all").to_owned()
            }
            CautionFact::CaffeineNotKnown(silent) => {
                let silent = self.ingredients(silent);
                say!(self, "caution-caffeine-not-known", ingredients: silent)
            }
            CautionFact::Additives(mentions) => {
                let mentions = self.clauses(mentions.iter().map(|mention| self.mention(mention)));
                say!(self, "caution-additives", mentions: mentions)
            }
            CautionFact::Undissolved {
                found,
                most,
                celsius,
            } => say!(
                self,
                "caution-undissolved",
                sucrose: self.in_unit(*found, "g", 0),
                whole: self.in_unit(100.0, "g", 0),
                most: self.in_unit(*most, "g", 0),
                celsius: self.temperature(*celsius, 0)
            ),
            CautionFact::RunsOver { cup, fill, most } => say!(
                self,
                "caution-runs-over",
                fill: self.in_unit(*fill, "%", 0),
                cup: self.vessel(cup),
                most: self.in_unit(*most, "%", 0)
            ),
            CautionFact::NotKnown(gaps) => {
                let gaps: Vec<&str> = gaps.iter().map(|gap| self.gap(*gap)).collect();
                say!(self, "caution-not-known", gaps: self.and(&gaps))
            }
        }
    }

    fn too_hot(&self, hot: &Hot) -> String {
        let celsius = self.temperature(hot.celsius, 0);
        let limit = self.temperature(VERY_HOT_CELSIUS, 0);
        match self.scald_times(hot) {
            Some((adult, child)) => say!(
                self,
                "caution-too-hot-burns",
                celsius: celsius,
                limit: limit,
                adult: adult,
                child: child
            ),
            None => say!(self, "caution-too-hot", celsius: celsius, limit: limit),
        }
    }

    fn scalds(&self, hot: &Hot) -> String {
        let celsius = self.temperature(hot.celsius, 0);
        match self.scald_times(hot) {
            Some((adult, child)) => say!(
                self,
                "caution-scalds-burns",
                celsius: celsius,
                adult: adult,
                child: child
            ),
            None => say!(self, "caution-scalds", celsius: celsius),
        }
    }

    /// The times of adults and of small children; "sooner" where none is published for children.
    fn scald_times(&self, hot: &Hot) -> Option<(String, String)> {
        let adult = self.scald_time(hot.adult?);
        let child = hot.child.map(|child| self.scald_time(child));
        Some((adult, child.unwrap_or_else(|| "sooner".to_owned())))
    }

    /// "at most 3 s", "less than 0.5 s".
    fn scald_time(&self, time: ScaldTime) -> String {
        let seconds = self.in_unit(time.seconds, "s", decimals_of(time.seconds));
        match time.bound {
            ScaldBound::AtMost => say!(self, "scald-time-at-most", time: seconds),
            ScaldBound::LessThan => say!(self, "scald-time-less-than", time: seconds),
        }
    }

    fn contradiction(&self, found: &Contradiction) -> String {
        let name = self.ingredient(&found.ingredient);
        let claim = match found.claim {
            Claim::Vegan => "vegan",
            Claim::DairyFree => "dairy-free",
            Claim::Allergens => "allergens",
        };
        match &found.against {
            Against::Allergen(allergen) => say!(
                self,
                "claim-against-allergen",
                ingredient: name,
                claim: claim,
                allergen: self.allergen(*allergen)
            ),
            Against::HoneySugars => {
                say!(self, "claim-against-honey", ingredient: name, claim: claim)
            }
            Against::MilkSugars => {
                say!(self, "claim-against-milk-sugars", ingredient: name, claim: claim)
            }
            Against::NotDairyFree => {
                say!(self, "claim-against-not-dairy-free", ingredient: name, claim: claim)
            }
            Against::Part(part) => say!(
                self,
                "claim-against-part",
                ingredient: name,
                claim: claim,
                part: self.ingredient(part)
            ),
            Against::EveryPart => {
                say!(self, "claim-against-every-part", ingredient: name, claim: claim)
            }
            Against::AllergenOfPart(part, allergen) => say!(
                self,
                "claim-against-allergen-of-part",
                ingredient: name,
                allergen: self.allergen(*allergen),
                part: self.ingredient(part)
            ),
        }
    }

    fn kept_at(&self, kept: &KeptAt) -> String {
        let name = self.ingredient(&kept.ingredient);
        let celsius = self.temperature(kept.celsius, 0);
        if kept.is_warm {
            say!(
                self,
                "kept-warm",
                ingredient: name,
                celsius: celsius,
                uk: self.temperature(HOT_HOLDING_UK_CELSIUS, 0),
                us: self.temperature(HOT_HOLDING_US_CELSIUS, 0)
            )
        } else {
            say!(
                self,
                "kept-cold",
                ingredient: name,
                celsius: celsius,
                uk: self.temperature(COLD_HOLDING_UK_CELSIUS, 0),
                us: self.temperature(COLD_HOLDING_US_CELSIUS, 0)
            )
        }
    }

    fn use_within(&self, rule: &UseWithin) -> String {
        let name = self.ingredient(&rule.ingredient);
        let shown = |hours: f64| self.in_unit(hours, "h", decimals_of(hours));
        let limit = shown(BREWED_TEA_HOURS);
        match (rule.since, rule.hours) {
            (Since::Brewing, Some(hours)) if hours > BREWED_TEA_HOURS => say!(
                self,
                "use-long-after-brewing",
                ingredient: name,
                time: shown(hours),
                limit: limit
            ),
            (Since::Brewing, Some(hours)) => {
                say!(self, "use-within-of-brewing", ingredient: name, time: shown(hours))
            }
            (Since::Brewing, None) => {
                say!(self, "use-not-stated-after-brewing", ingredient: name, limit: limit)
            }
            (Since::Making, Some(hours)) => {
                say!(self, "use-within-of-making", ingredient: name, time: shown(hours))
            }
            (Since::Making, None) => say!(self, "use-not-stated-after-making", ingredient: name),
            (Since::Opening, Some(hours)) => {
                say!(self, "use-within-of-opening", ingredient: name, time: shown(hours))
            }
            (Since::Opening, None) => say!(self, "use-not-stated-after-opening", ingredient: name),
        }
    }

    fn caffeine_lines(
        &self,
        is_complete: bool,
        dose: Option<CaffeineDose>,
        per_litre: Option<f64>,
    ) -> String {
        let dose = dose.map(|dose| match dose {
            CaffeineDose::Single => say!(
                self,
                "caffeine-above-single-dose",
                limit: self.in_unit(CAFFEINE_SINGLE_DOSE_MG, "mg", 0)
            ),
            CaffeineDose::Sleep => say!(
                self,
                "caffeine-may-disturb-sleep",
                limit: self.in_unit(CAFFEINE_SLEEP_MG, "mg", 0)
            ),
        });
        let per_litre = per_litre.map(|per_litre| {
            let caffeine = self.at_least(self.in_unit(per_litre, "mg/l", 0), is_complete);
            let limit = self.in_unit(HIGH_CAFFEINE_MG_PER_LITRE, "mg/l", 0);
            say!(self, "caffeine-high-content", caffeine: caffeine, limit: limit)
        });
        self.clauses(dose.into_iter().chain(per_litre))
    }

    fn mention(&self, mention: &Mention) -> String {
        let named = self.named(&mention.named);
        match mention.kind {
            StatementKind::Phenylalanine => say!(self, "mention-phenylalanine", named: named),
            StatementKind::ChildrenColour => say!(self, "mention-children-colour", named: named),
            StatementKind::Polyol => say!(self, "mention-polyol", named: named),
            StatementKind::Quinine => say!(self, "mention-quinine", named: named),
            StatementKind::Caffeine => say!(self, "mention-caffeine", named: named),
            StatementKind::Sweetener => say!(self, "mention-sweetener", named: named),
            StatementKind::Allergen(allergen) => say!(
                self,
                "mention-allergen",
                allergen: self.allergen(allergen),
                named: named
            ),
            StatementKind::Animal => say!(self, "mention-animal", named: named),
            StatementKind::PerhapsAnimal => say!(self, "mention-perhaps-animal", named: named),
        }
    }

    /// "Ondry creamer: “caseinate, milk”", ingredient by ingredient: what stands on a pack is quoted, never translated.
    fn named(&self, named: &[NamedWords]) -> String {
        self.clauses(named.iter().map(|named| {
            let name = self.ingredient(&named.ingredient);
            say!(self, "caution-named", ingredient: name, words: &named.words)
        }))
    }

    fn gap(&self, gap: NotKnown) -> &'static str {
        match gap {
            NotKnown::Figure(measurand) => self.measurand(measurand),
            NotKnown::Vegan => self.word("gap-vegan"),
        }
    }
}

fn decimals_of(value: f64) -> usize {
    usize::from(value.fract() != 0.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::balance::AllergenSummary;
    use crate::book::{Allergen, IngredientId, VesselId};
    use crate::quantity::{DisplayUnits, TemperatureUnit, VolumeUnit};

    fn id(text: &str) -> IngredientId {
        IngredientId::new(text).unwrap()
    }

    fn said(fact: &CautionFact) -> String {
        Speaker::without_book().caution(fact)
    }

    #[test]
    fn heat_is_told_with_the_times_that_are_published() {
        let adult = ScaldTime {
            seconds: 1.0,
            bound: ScaldBound::LessThan,
        };
        let hot = Hot {
            celsius: 81.2,
            adult: Some(adult),
            child: None,
        };
        let burns = "a spill scalds (adult skin burns to the second degree or deeper in less than 1\u{a0}s, that of small children \
                     even sooner)";
        let too_hot = said(&CautionFact::TooHot(hot));
        assert!(
            too_hot.starts_with("81\u{a0}°C when served, above 65\u{a0}°C: too hot"),
            "{too_hot}"
        );
        assert!(too_hot.contains(burns), "{too_hot}");
        assert!(too_hot.ends_with("follow your local code"), "{too_hot}");
        let unknown = Hot { adult: None, ..hot };
        assert_eq!(
            said(&CautionFact::Scalds(unknown)),
            "81\u{a0}°C when served: a spill scalds; close the cup, and follow your local code"
        );
        let units = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            volume: VolumeUnit::FluidOunces,
        };
        let straw = CautionFact::HotThroughWideStraw(hot);
        let fahrenheit = Speaker::without_book().in_units(units).caution(&straw);
        assert!(
            fahrenheit.starts_with("178\u{a0}°F through a wide straw, above 140\u{a0}°F:"),
            "{fahrenheit}"
        );
    }

    #[test]
    fn cautions_of_what_is_in_a_drink_name_ingredients_and_sources() {
        let summary = AllergenSummary {
            contains: [Allergen::Milk].into(),
            ..AllergenSummary::default()
        };
        let holding = KeptAt {
            ingredient: id("milk"),
            celsius: 12.0,
            is_warm: false,
        };
        let rule = |hours| UseWithin {
            ingredient: id("tea"),
            since: Since::Brewing,
            hours,
        };
        let contradiction = Contradiction {
            ingredient: id("batch"),
            claim: Claim::Vegan,
            against: Against::Part(id("milk")),
        };
        let named = NamedWords {
            ingredient: id("drops"),
            words: "E 951".to_owned(),
        };
        let mention = Mention {
            kind: StatementKind::Sweetener,
            named: vec![named],
        };
        for (fact, expected) in [
            (
                CautionFact::Allergens(summary),
                "contains milk. By ingredients only: shared shakers, scoops and blenders can leave traces; follow your local code",
            ),
            (
                CautionFact::KeptAt(vec![holding.clone(), holding]),
                "milk at 12\u{a0}°C: if it is kept at that temperature, cold holding needs at most 8\u{a0}°C (UK) or 5\u{a0}°C (US); follow your \
                 local code",
            ),
            (
                CautionFact::UseWithin(vec![rule(Some(3.5)), rule(None)]),
                "tea: use within 3.5\u{a0}h of brewing; tea: the shop states no holding rule; the Tea Council of the USA says 8\u{a0}h after \
                 brewing at most. By the shop's own rules; follow your local code",
            ),
            (
                CautionFact::ClaimsContradicted(vec![contradiction]),
                "the book contradicts itself: batch is entered as vegan, but milk in it is not; read the packs before you tell a \
                 guest",
            ),
            (
                CautionFact::Curdles {
                    acid: 0.3,
                    is_complete: false,
                },
                "at least 0.30\u{a0}g of acid per 100 ml may curdle the milk or soy: add it last and cold, and serve at once",
            ),
            (
                CautionFact::Caffeine {
                    milligrams: 210.0,
                    is_complete: true,
                    dose: Some(CaffeineDose::Single),
                    per_litre: None,
                },
                "210\u{a0}mg of caffeine: above the single dose of 200\u{a0}mg for adults (EFSA 2015); less for pregnant women and children",
            ),
            (
                CautionFact::Additives(vec![mention]),
                "according to the ingredient lists, you may have to mention: with sweetener(s) (drops: “E 951”); read the packs, and \
                 follow your local code",
            ),
            (
                CautionFact::RunsOver {
                    cup: VesselId::new("cup").unwrap(),
                    fill: 104.0,
                    most: 95.0,
                },
                "104\u{a0}% of cup, but only 95\u{a0}% fits below its rim and closure: it runs over; use less or a larger cup",
            ),
            (
                CautionFact::NotKnown(vec![NotKnown::Vegan]),
                "not known: whether it is vegan; read the labels before you tell a guest",
            ),
        ] {
            assert_eq!(said(&fact), expected);
        }
    }
}
