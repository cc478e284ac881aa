//! What is said of a drink made in another way: with less sugar, in another cup, iced, hot, or with less ice.

use super::swap::largest;
use super::{Speaker, say};
use crate::balance::{Balance, Measurand};
use crate::book::{Amount, IngredientId, Level, LevelName, Resolved, UsualIce};
use crate::quantity::show_compact;
use crate::swap::{
    Adaptation, Adapted, MatrixColumn, MatrixIce, Means, NoLevels, Offer, Unadaptable,
};

impl Speaker<'_> {
    /// What a level of sugar or ice is called.
    pub fn level_name(&self, level: &Level) -> String {
        match &level.name {
            LevelName::OfShop(name) => name.clone(),
            LevelName::Percent => self.percent_of(level),
            LevelName::Ice(usual) => self.usual_ice(*usual).to_owned(),
        }
    }

    /// "12.5 %", as the counter says it and a version is named.
    pub(super) fn percent_of(&self, level: &Level) -> String {
        format!("{} %", self.digits(&show_compact(level.percent)))
    }

    /// What a level of ice is called by a shop that names none.
    pub(super) fn usual_ice(&self, usual: UsualIce) -> &'static str {
        self.word(match usual {
            UsualIce::Less => "variations-less-ice",
            UsualIce::Little => "variations-little-ice",
            UsualIce::No => "variations-no-ice",
        })
    }

    /// What became of a drink, in sentences with figures.
    pub fn adapted(&self, drink: &Adapted) -> String {
        let figure = |measurand: Measurand| drink.balance.figures.of[measurand.slot()];
        let volume = || self.volume(figure(Measurand::Volume), 0);
        let mut sentences = Vec::new();
        match drink.adaptation {
            Adaptation::ToStandard => sentences.push(self.remaining(drink, "standard")),
            Adaptation::SugarLevel { floor_sugar } => {
                sentences.push(self.sugar_and_floor(&drink.balance, floor_sugar));
                sentences.push(self.remaining(drink, "level"));
            }
            Adaptation::Cup { ratio, fill } => {
                sentences.push(say!(self, "variation-cup", ratio: self.number(ratio, 2)));
                sentences.push(match fill {
                    Some(fill) => {
                        say!(self, "variation-fill", volume: volume(), fill: self.in_unit(fill, "%", 0))
                    }
                    None => say!(self, "variation-fill-not-known", volume: volume()),
                });
                sentences.push(self.remaining(drink, "cup"));
            }
            Adaptation::Iced => {
                sentences.push(self.ice_left(&drink.balance));
                sentences.push(self.remaining(drink, "hot"));
                sentences.push(self.word("variation-taste-iced").to_owned());
            }
            Adaptation::IceLevel { standard_volume } => {
                sentences.push(self.ice_left(&drink.balance));
                let before = self.volume(standard_volume, 0);
                sentences.push(say!(self, "variation-ice", volume: volume(), standard: before));
                sentences.push(self.remaining(drink, "level"));
            }
            Adaptation::Hot { poured_at } => {
                let served = self.temperature(figure(Measurand::ServingTemperature), 1);
                let poured = self.temperature(poured_at, 0);
                sentences.push(say!(self, "variation-hot", poured: poured, served: served));
                sentences.push(self.remaining(drink, "iced"));
                sentences.push(self.word("variation-taste-hot").to_owned());
            }
        }
        sentences.join(" ")
    }

    /// The sugar of a level, and how much of it no level takes out.
    fn sugar_and_floor(&self, balance: &Balance, floor: Option<f64>) -> String {
        let (sugar, nothing) = (self.sugar_of(balance), self.in_unit(0.0, "g", 1));
        let floor = floor.map(|floor| self.in_unit(floor, "g", 1));
        let others = match &floor {
            None => "not-known",
            Some(floor) if *floor == nothing && sugar == nothing => "no-sugar",
            Some(floor) if *floor == nothing => "none",
            Some(floor) if *floor == sugar => "all",
            Some(_) => "part",
        };
        let floor = floor.unwrap_or_default();
        say!(self, "variation-sugar", others: others, sugar: sugar, floor: floor)
    }

    fn ice_left(&self, balance: &Balance) -> String {
        let figure = |measurand: Measurand| balance.figures.of[measurand.slot()];
        let served = self.temperature(figure(Measurand::ServingTemperature), 1);
        let ice = self.in_unit(figure(Measurand::IceLeft), "g", 0);
        say!(self, "variation-ice-left", served: served, ice: ice)
    }

    /// How far the drink is from what it is compared with, and what stands in the way.
    fn remaining(&self, drink: &Adapted, compared: &str) -> String {
        let difference = &drink.difference;
        let beyond = largest(difference).filter(|(_, steps)| steps.abs() > 1.0);
        let Some((axis, steps)) = beyond else {
            let known = if difference.not_compared().next().is_none() {
                "all"
            } else {
                "part"
            };
            return say!(self, "variation-within", compared: compared, known: known);
        };
        let (change, size) = (self.comparative(axis, steps), self.number(steps.abs(), 1));
        let mut shortfalls = drink.shortfalls.iter();
        let short = shortfalls.find(|short| short.axis == *axis);
        match (short, drink.adaptation) {
            (Some(short), Adaptation::SugarLevel { .. }) => {
                let why = self.hindrance(&short.why);
                say!(self, "variation-beyond-because", change: change, steps: size, why: why)
            }
            _ => say!(self, "variation-beyond", compared: compared, change: change, steps: size),
        }
    }

    /// By what a level of sugar is had that whole measures miss: "with ½ press of Tambrel pear syrup".
    pub fn means(&self, means: &Means) -> String {
        match means {
            Means::PartOfMeasure { sweetener } => {
                say!(self, "level-by-part", ingredient: self.ingredient(sweetener))
            }
            Means::OtherMeasure { sweetener, measure } => {
                let (ingredient, measure) = (self.ingredient(sweetener), self.measure(measure));
                say!(self, "level-by-measure", ingredient: ingredient, measure: measure)
            }
            Means::Scale { sweetener } => {
                say!(self, "level-by-scale", ingredient: self.ingredient(sweetener))
            }
            Means::OtherSweetener { sweetener } => {
                say!(self, "level-by-sweetener", ingredient: self.ingredient(sweetener))
            }
        }
    }

    /// What comes near a level that whole measures miss, as a sentence. `lines` are those that it is made from.
    pub fn offer(&self, level: &Level, offer: &Offer, lines: &Resolved) -> String {
        let drink = &offer.drink;
        let all = [&drink.balance.resolved, lines];
        let moves: Vec<String> = drink
            .moves
            .iter()
            .map(|moved| self.line_move(moved, &all))
            .collect();
        say!(
            self,
            "level-offer",
            level: self.level_name(level),
            means: self.means(&offer.means),
            moves: moves.join(", "),
            sugar: self.sugar_of(&drink.balance),
        )
    }

    /// A size with an amount of ice: "clear cup 500, iced".
    pub fn matrix_column(&self, column: &MatrixColumn) -> String {
        let cup = match &column.cup {
            Some(cup) => self.vessel(cup),
            None => self.word("cup-not-named").to_owned(),
        };
        match &column.ice {
            MatrixIce::AsItStands => cup,
            MatrixIce::Iced => say!(self, "matrix-iced", cup: cup),
            MatrixIce::Level(level) => {
                say!(self, "matrix-ice", cup: cup, level: self.level_name(level))
            }
        }
    }

    fn not_in_whole_measures(&self, sweeteners: &[(IngredientId, Amount)]) -> String {
        let steps: Vec<String> = sweeteners
            .iter()
            .map(|(id, step)| {
                let (ingredient, amount) = (self.ingredient(id), self.amount(step));
                say!(self, "variation-step", ingredient: ingredient, amount: amount)
            })
            .collect();
        say!(self, "variation-not-in-whole-measures", steps: self.and(&steps))
    }

    /// Why a drink can't be made in another way: a clause without a capital and a stop.
    pub fn unadaptable(&self, reason: &Unadaptable) -> String {
        let message = match reason {
            Unadaptable::NotInWholeMeasures { sweeteners } => {
                return self.not_in_whole_measures(sweeteners);
            }
            Unadaptable::NoCup => "variation-no-cup",
            Unadaptable::AlreadyIced => "variation-already-iced",
            Unadaptable::NoIceInBook => "variation-no-ice-in-book",
            Unadaptable::NoIce => "variation-no-ice",
            Unadaptable::IceFills => "variation-ice-fills",
            Unadaptable::NothingPouredHot => "variation-nothing-poured-hot",
            Unadaptable::Impossible(impossible) => return self.swap_impossible(impossible),
        };
        self.word(message).to_owned()
    }

    /// Why a drink has no sugar levels: a clause without a capital and a stop.
    pub fn no_levels(&self, reason: &NoLevels) -> String {
        match reason {
            NoLevels::NotWeighed(line) => self.no_mass(&line.ingredient, line.measure.as_ref()),
            NoLevels::SweetnessNotKnown { missing } => {
                say!(self, "levels-sweetness-not-known", ingredients: self.ingredients(missing))
            }
            NoLevels::NoSweetener { sugar } => {
                say!(self, "levels-no-sweetener", sugar: self.in_unit(*sugar, "g", 1))
            }
            NoLevels::NotInSteps { sweeteners } => {
                say!(self, "levels-not-in-steps", count: sweeteners.len(), ingredients: self.ingredients(sweeteners))
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::IngredientId;
    use crate::swap::Impossible;

    #[test]
    fn what_can_not_be_made_is_told_with_what_to_do() {
        let speaker = Speaker::without_book();
        for (reason, words) in [
            (
                Unadaptable::NoCup,
                "the recipe has no cup: choose one first",
            ),
            (
                Unadaptable::Impossible(Impossible::LeastOverfills {
                    fill: 120.4,
                    room: 95.0,
                }),
                "the cup is too small: even with the smallest amounts it is 120\u{a0}% full, and 95\u{a0}% is the limit",
            ),
        ] {
            assert_eq!(speaker.unadaptable(&reason), words);
        }
        let sweeteners = ["honey", "syrup"].map(|id| IngredientId::new(id).unwrap());
        assert_eq!(
            speaker.no_levels(&NoLevels::NotInSteps {
                sweeteners: sweeteners.to_vec()
            }),
            "honey and syrup can’t be reduced step by step: enter their amounts in grams, millilitres or a measure of the shop"
        );
    }
}
