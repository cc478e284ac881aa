//! What is wrong with a book, and where.

use super::{Speaker, say};
use crate::book::{
    AgainstClaim, ChangedField, FigureName, FigureRange, Finding, FindingKind, Held, IngredientId,
    MeasureId, MeasureKind, Miscalled, NamedUnit, Place, SlotKind, StatedClaim, Unfinished,
    YieldLimit, resolve,
};
use crate::quantity::{excerpt, show_compact};

/// Longest name that is repeated, in characters.
const NAME: usize = 60;

/// Longest chain of ids that is written out; of a longer one the beginning and the end are.
const CHAIN: usize = 12;

impl Speaker<'_> {
    /// That nobody knows what a use of a measure, or a millilitre, weighs, and what to do: a clause without a capital and a stop.
    pub(super) fn no_mass(&self, ingredient: &IngredientId, measure: Option<&MeasureId>) -> String {
        let ingredient = self.ingredient(ingredient);
        match measure {
            Some(measure) => {
                let measure = self.measure(measure);
                say!(self, "finding-no-mass-of-use", measure: measure, ingredient: ingredient)
            }
            None => say!(self, "finding-no-mass-of-volume", ingredient: ingredient),
        }
    }

    /// What is wrong and where, with the ids of the file.
    pub fn finding(&self, finding: &Finding) -> String {
        format!(
            "{}: {}",
            self.place(&finding.place),
            self.finding_kind(&finding.kind)
        )
    }

    /// Where in a book something stands, by the names of things; a file has their ids ([`Self::place`]).
    pub fn place_by_name(&self, place: &Place) -> String {
        let named = |kind: &str, name: String| say!(self, "place-named", kind: kind, name: name);
        match place {
            Place::Settings => self.word("place-settings").to_owned(),
            Place::Ingredient(id, _) => named("ingredient", self.ingredient(id)),
            Place::Measure(id, _) => named("measure", self.measure(id)),
            Place::Vessel(id, _) => named("vessel", self.vessel(id)),
            Place::Recipe(id, _) => named("recipe", self.recipe(id)),
            Place::Version(id, version) => named("recipe", self.drink(id, Some(version))),
            Place::Line(id, version, line) => {
                let recipe = self.book.recipe(id);
                let resolved = recipe.map(|recipe| resolve(recipe, version.as_ref()).0);
                let line = resolved.as_ref().and_then(|resolved| resolved.line(line));
                let drink = self.drink(id, version.as_ref());
                match line {
                    Some(line) => {
                        let ingredient = self.ingredient(&line.ingredient);
                        say!(self, "place-named-line", ingredient: ingredient, drink: drink)
                    }
                    None => named("recipe", drink),
                }
            }
            Place::Tasting(id, _) => named("tasting", self.tasting(id)),
            Place::Approval(id, number) => {
                say!(self, "place-named-approval", recipe: self.recipe(id), number: *number)
            }
        }
    }

    /// Where in a book something stands, with the ids of the file.
    pub fn place(&self, place: &Place) -> String {
        match place {
            Place::Settings => self.word("place-settings").to_owned(),
            Place::Ingredient(id, field) => {
                say!(self, "place-ingredient", id: id.as_str(), field: *field)
            }
            Place::Measure(id, field) => {
                say!(self, "place-measure", id: id.as_str(), field: *field)
            }
            Place::Vessel(id, field) => say!(self, "place-vessel", id: id.as_str(), field: *field),
            Place::Recipe(id, field) => say!(self, "place-recipe", id: id.as_str(), field: *field),
            Place::Line(recipe, None, line) => {
                say!(self, "place-line", recipe: recipe.as_str(), line: line.as_str())
            }
            Place::Line(recipe, Some(version), line) => say!(
                self,
                "place-line-of-version",
                recipe: recipe.as_str(),
                version: version.as_str(),
                line: line.as_str(),
            ),
            Place::Version(recipe, version) => say!(
                self,
                "place-version",
                recipe: recipe.as_str(),
                version: version.as_str(),
            ),
            Place::Tasting(id, field) => {
                say!(self, "place-tasting", id: id.as_str(), field: *field)
            }
            Place::Approval(recipe, number) => {
                say!(self, "place-approval", recipe: recipe.as_str(), number: *number)
            }
        }
    }

    /// What is wrong.
    #[expect(clippy::too_many_lines, reason = "a sentence for each kind")]
    pub fn finding_kind(&self, kind: &FindingKind) -> String {
        let compact = |value: f64, unit: &str| self.compact(value, unit);
        let tenths = |value: f64, unit: &str| self.compact((value * 10.0).round() / 10.0, unit);
        match kind {
            FindingKind::Dangling { kind, id, nearest } => {
                let kind = kind.key();
                if nearest.is_empty() {
                    say!(self, "finding-dangling", kind: kind, id: id)
                } else {
                    let nearest = self.or(&quoted(nearest));
                    say!(self, "finding-dangling-near", kind: kind, id: id, nearest: nearest)
                }
            }
            FindingKind::DuplicateInRecipe { id } => {
                say!(self, "finding-duplicate-in-recipe", id: id)
            }
            FindingKind::VersionCycle { chain } => {
                say!(self, "finding-version-cycle", chain: self.chain(chain))
            }
            FindingKind::HouseMadeCycle { chain } => {
                say!(self, "finding-house-made-cycle", chain: self.chain(chain))
            }
            FindingKind::ChangeWithoutTarget { field } => {
                say!(self, "finding-change-without-target", field: self.changed_field(*field))
            }
            FindingKind::OutOfRange { what, value, range } => {
                self.out_of_range(what, *value, *range)
            }
            FindingKind::Unfinished(what) => self.unfinished(what),
            FindingKind::ImpossibleYield { grams, limit } => {
                let grams = compact(*grams, "g");
                match limit {
                    YieldLimit::WhatGoesIn => say!(self, "finding-yield-over-input", grams: grams),
                    YieldLimit::Solids => say!(self, "finding-yield-under-solids", grams: grams),
                }
            }
            FindingKind::SumOverWhole { parts, sum, whole } => {
                let parts: Vec<&str> = parts.iter().map(|part| self.nutrient(*part)).collect();
                say!(
                    self,
                    "finding-sum-over-whole",
                    parts: self.and(&parts),
                    sum: tenths(*sum, "g"),
                    whole: compact(*whole, "g"),
                )
            }
            FindingKind::PartOverWhole {
                part,
                part_value,
                whole,
                whole_value,
            } => {
                say!(
                    self,
                    "finding-part-over-whole",
                    part: self.nutrient(*part),
                    part_value: compact(*part_value, part.unit()),
                    whole: self.nutrient(*whole),
                    whole_value: compact(*whole_value, whole.unit()),
                )
            }
            FindingKind::SizeNotAsCalled { name, miscalled } => say!(
                self,
                "finding-size-not-as-called",
                name: name,
                miscalled: self.miscalled(*miscalled),
            ),
            FindingKind::ReadingsDisagree { least, most } => say!(
                self,
                "finding-readings-disagree",
                least: tenths(*least, ""),
                most: tenths(*most, "g"),
            ),
            FindingKind::NeverCalibrated => self.word("finding-never-calibrated").to_owned(),
            FindingKind::TooManySlots { kind, count, limit } => match kind {
                SlotKind::Flavours => {
                    say!(self, "finding-too-many-flavours", count: *count, limit: *limit)
                }
                SlotKind::HighPotencySweeteners => {
                    say!(self, "finding-too-many-sweeteners", count: *count, limit: *limit)
                }
            },
            FindingKind::SeveralFillAmounts => self.word("finding-several-fill-amounts").to_owned(),
            FindingKind::NoMass {
                ingredient,
                measure,
            } => self.no_mass(ingredient, measure.as_ref()),
            FindingKind::HiddenCharacters { shown } => {
                say!(self, "finding-hidden-characters", shown: shown)
            }
            FindingKind::NoDate { found } => say!(self, "finding-no-date", found: found),
            FindingKind::EnergyNotOfComposition {
                stated,
                from,
                to,
                percent,
                fits_as_kilocalories,
            } => {
                let off = self.energy_off(*percent);
                let stated = compact(*stated, "kJ");
                let (from, to) = (compact(from.round(), ""), compact(to.round(), "kJ"));
                if *fits_as_kilocalories {
                    say!(self, "finding-energy-in-kilocalories", stated: stated, off: off, from: from, to: to)
                } else {
                    say!(self, "finding-energy", stated: stated, off: off, from: from, to: to)
                }
            }
            FindingKind::DensityNotOfComposition {
                what,
                stated,
                low,
                high,
            } => say!(
                self,
                "finding-density",
                what: self.figure_name(what),
                stated: compact(*stated, "g/ml"),
                low: self.number(*low, 2),
                high: self.in_unit(*high, "g/ml", 2),
            ),
            FindingKind::ClaimNotCarried { claim, against } => say!(
                self,
                "finding-claim-not-carried",
                claim: self.stated_claim(*claim),
                against: self.against_claim(against),
            ),
            FindingKind::StalePrice {
                date,
                months,
                newest,
            } => {
                say!(self, "finding-stale-price", date: date, count: *months, newest: newest)
            }
            FindingKind::NoLongerSold { ingredient } => {
                say!(self, "finding-no-longer-sold", ingredient: self.ingredient(ingredient))
            }
            FindingKind::MoreAnswersThanPeople { answers, named } => say!(
                self,
                "finding-more-answers-than-people",
                answers: answers.to_string(),
                named: named.to_string(),
            ),
            FindingKind::TooManyToCheck => self.word("finding-too-many-to-check").to_owned(),
            FindingKind::MoreFindings { listed } => {
                say!(self, "finding-more-findings", count: *listed)
            }
            FindingKind::FillOutOfReach => self.word("finding-fill-out-of-reach").to_owned(),
            FindingKind::NotALeaf => self.word("finding-not-a-leaf").to_owned(),
            FindingKind::NoCup => self.word("finding-no-cup").to_owned(),
            FindingKind::MarkedOnly => self.word("finding-marked-only").to_owned(),
            FindingKind::ChangedSinceApproval { date } => {
                say!(self, "finding-changed-since-approval", day: excerpt(date, NAME))
            }
        }
    }

    fn out_of_range(&self, what: &FigureName, value: f64, range: FigureRange) -> String {
        say!(
            self,
            "finding-out-of-range",
            what: self.figure_name(what),
            value: self.compact(value, range.unit),
            least: self.compact_digits(range.least, range.unit),
            most: self.compact(range.most, range.unit),
        )
    }

    fn unfinished(&self, what: &Unfinished) -> String {
        match what {
            Unfinished::EmptyReading => self.word("finding-empty-reading").to_owned(),
            Unfinished::SugarFractions { sum } => {
                say!(self, "finding-sugar-fractions", sum: self.compact(*sum, ""))
            }
            Unfinished::Window { what, from, to } => say!(
                self,
                "finding-window-reversed",
                what: self.figure_name(what),
                from: self.compact_digits(*from, "°C"),
                to: self.compact(*to, "°C"),
            ),
            Unfinished::NoStep(axis) => {
                say!(self, "finding-no-step", axis: excerpt(&self.axis(axis), NAME))
            }
            Unfinished::MoreRightThanPeople { people, right } => say!(
                self,
                "finding-more-right-than-people",
                right: right.to_string(),
                people: people.to_string(),
            ),
            Unfinished::NotTwoCups { cups } => say!(self, "finding-not-two-cups", count: *cups),
            Unfinished::NoSuchCup { cup, cups } => {
                say!(self, "finding-no-such-cup", cup: cup.to_string(), count: *cups)
            }
        }
    }

    /// ", 24 % too low"; nothing when it can't be told.
    fn energy_off(&self, percent: Option<f64>) -> String {
        let Some(percent) = percent else {
            return String::new();
        };
        let shown = self.compact(percent.abs().round(), "%");
        if percent < 0.0 {
            say!(self, "finding-energy-too-low", percent: shown)
        } else {
            say!(self, "finding-energy-too-high", percent: shown)
        }
    }

    fn stated_claim(&self, claim: StatedClaim) -> &'static str {
        self.word(match claim {
            StatedClaim::DairyFree => "claim-dairy-free",
            StatedClaim::Vegan => "claim-vegan",
            StatedClaim::AllergensListed => "claim-allergens-listed",
        })
    }

    fn against_claim(&self, against: &AgainstClaim) -> String {
        let name = |part| excerpt(&self.ingredient(part), NAME);
        match against {
            AgainstClaim::Contains(allergen) => {
                say!(self, "against-contains", allergen: self.allergen(*allergen))
            }
            AgainstClaim::Lactose => self.word("against-lactose").to_owned(),
            AgainstClaim::Honey => self.word("against-honey").to_owned(),
            AgainstClaim::NotDairyFree => self.word("against-not-dairy-free").to_owned(),
            AgainstClaim::PartContains(part, allergen) => {
                say!(self, "against-part-contains", part: name(part), allergen: self.allergen(*allergen))
            }
            AgainstClaim::PartIsNot(part) => say!(self, "against-part-is-not", part: name(part)),
        }
    }

    /// A measure that is not of its stated size, and what may have happened.
    pub fn miscalled(&self, miscalled: Miscalled) -> String {
        let number = self.count(miscalled.called.number);
        let count: usize = if miscalled.called.number > 1.0 { 2 } else { 1 };
        let size = match miscalled.called.unit {
            NamedUnit::Millilitre => say!(self, "size-millilitre", number: number),
            NamedUnit::Teaspoon => say!(self, "size-teaspoon", number: number, count: count),
            NamedUnit::Tablespoon => say!(self, "size-tablespoon", number: number, count: count),
            NamedUnit::Cup => say!(self, "size-cup", number: number, count: count),
            NamedUnit::FluidOunce => say!(self, "size-fluid-ounce", number: number),
            NamedUnit::Pint => say!(self, "size-pint", number: number, count: count),
            NamedUnit::Quart => say!(self, "size-quart", number: number, count: count),
        };
        let found = self.compact((miscalled.found_ml * 10.0).round() / 10.0, "ml");
        if miscalled.held == Held::AsSetDown {
            return say!(self, "miscalled-as-entered", size: size, found: found);
        }
        let cause = self.word(match (miscalled.called.unit, miscalled.kind) {
            (NamedUnit::Teaspoon | NamedUnit::Tablespoon, _)
            | (NamedUnit::Millilitre, MeasureKind::Spoon) => "miscalled-spoon",
            (NamedUnit::Cup, _) => "miscalled-cup",
            (NamedUnit::FluidOunce, _) => "miscalled-fluid-ounce",
            (NamedUnit::Pint | NamedUnit::Quart, _) => "miscalled-pint",
            (NamedUnit::Millilitre, _) => "miscalled-volume",
        });
        say!(self, "miscalled-by-readings", size: size, found: found, cause: cause)
    }

    /// The name of a figure, as the subject of a sentence.
    pub fn figure_name(&self, name: &FigureName) -> String {
        let message = match name {
            FigureName::Nutrient(nutrient) => {
                return say!(self, "book-figure-nutrient", nutrient: self.nutrient(*nutrient));
            }
            FigureName::Level(level) => return say!(self, "book-figure-level", level: level),
            FigureName::NoticeableStep(axis) => {
                return say!(self, "book-figure-noticeable-step", axis: excerpt(&self.axis(axis), NAME));
            }
            FigureName::StepFloor(axis) => {
                return say!(self, "book-figure-step-floor", axis: excerpt(&self.axis(axis), NAME));
            }
            FigureName::AxisWeight(axis) => {
                return say!(self, "book-figure-axis-weight", axis: excerpt(&self.axis(axis), NAME));
            }
            FigureName::Amount => "book-figure-amount",
            FigureName::Temperature => "book-figure-temperature",
            FigureName::CarriedSyrup => "book-figure-carried-syrup",
            FigureName::MenuPrice => "book-figure-menu-price",
            FigureName::DrinkingTemperature => "book-figure-drinking-temperature",
            FigureName::SugarLevel => "book-figure-sugar-level",
            FigureName::Uncertainty => "book-figure-uncertainty",
            FigureName::FreeSugarFraction => "book-figure-free-sugar-fraction",
            FigureName::SugarFraction => "book-figure-sugar-fraction",
            FigureName::DextroseEquivalent => "book-figure-dextrose-equivalent",
            FigureName::Density => "book-figure-density",
            FigureName::BulkDensity => "book-figure-bulk-density",
            FigureName::PackPrice => "book-figure-pack-price",
            FigureName::EarlierPackPrice => "book-figure-earlier-pack-price",
            FigureName::PackContent => "book-figure-pack-content",
            FigureName::Waste => "book-figure-waste",
            FigureName::Yield => "book-figure-yield",
            FigureName::Extraction => "book-figure-extraction",
            FigureName::SteepingTime => "book-figure-steeping-time",
            FigureName::Volume => "book-figure-volume",
            FigureName::Mass => "book-figure-mass",
            FigureName::Increment => "book-figure-increment",
            FigureName::Reading => "book-figure-reading",
            FigureName::UsesInReading => "book-figure-uses-in-reading",
            FigureName::ReadingTime => "book-figure-reading-time",
            FigureName::Capacity => "book-figure-capacity",
            FigureName::SpecificHeat => "book-figure-specific-heat",
            FigureName::CoolingTime => "book-figure-cooling-time",
            FigureName::CoolingFactor => "book-figure-cooling-factor",
            FigureName::Price => "book-figure-price",
            FigureName::Height => "book-figure-height",
            FigureName::BottomDiameter => "book-figure-bottom-diameter",
            FigureName::TopDiameter => "book-figure-top-diameter",
            FigureName::HeadRoom => "book-figure-head-room",
            FigureName::RoomTemperature => "book-figure-room-temperature",
            FigureName::RefrigeratorTemperature => "book-figure-refrigerator-temperature",
            FigureName::HotDrinkingTemperature => "book-figure-hot-drinking-temperature",
            FigureName::IcedDrinkingTemperature => "book-figure-iced-drinking-temperature",
            FigureName::IceTemperature => "book-figure-ice-temperature",
            FigureName::IceBulkDensity => "book-figure-ice-bulk-density",
            FigureName::IceMeltRate => "book-figure-ice-melt-rate",
            FigureName::IceLeft => "book-figure-ice-left",
            FigureName::HotWindow => "book-figure-hot-window",
            FigureName::IcedWindow => "book-figure-iced-window",
            FigureName::SalesTax => "book-figure-sales-tax",
            FigureName::Tasters => "book-figure-tasters",
            FigureName::TimesAsMuch => "book-figure-times-as-much",
            FigureName::TastedTimes => "book-figure-tasted-times",
            FigureName::DoubtTimes => "book-figure-doubt-times",
            FigureName::ScaleStep => "book-figure-scale-step",
            FigureName::ThermometerError => "book-figure-thermometer-error",
            FigureName::MarkError => "book-figure-mark-error",
        };
        self.word(message).to_owned()
    }

    /// What a change of a recipe changes.
    pub fn changed_field(&self, field: ChangedField) -> &'static str {
        self.word(match field {
            ChangedField::Ingredient => "changed-ingredient",
            ChangedField::Amount => "changed-amount",
            ChangedField::Temperature => "changed-temperature",
            ChangedField::Role => "changed-role",
            ChangedField::Stage => "changed-stage",
            ChangedField::CarriedSyrup => "changed-carried-syrup",
            ChangedField::Note => "changed-note",
            ChangedField::Instruction => "changed-instruction",
            ChangedField::AddedLine => "changed-added-line",
            ChangedField::RemovedLine => "changed-removed-line",
            ChangedField::Order => "changed-order",
            ChangedField::Cup => "changed-cup",
            ChangedField::Shaker => "changed-shaker",
            ChangedField::Straining => "changed-straining",
            ChangedField::DrinkingTemperature => "changed-drinking-temperature",
            ChangedField::MenuPrice => "changed-menu-price",
            ChangedField::SugarLevel => "changed-sugar-level",
        })
    }

    fn chain(&self, ids: &[String]) -> String {
        if ids.len() <= CHAIN {
            return ids.join(" → ");
        }
        let left_out = say!(self, "finding-chain-left-out", count: ids.len() - CHAIN);
        let (begin, end) = (ids[..CHAIN - 1].join(" → "), &ids[ids.len() - 1]);
        format!("{begin} → {left_out} → {end}")
    }

    /// A metric figure with as few digits as it needs, in the unit that the person reads.
    pub(super) fn compact(&self, metric: f64, unit: &str) -> String {
        let digits = self.compact_digits(metric, unit);
        match self.units.of(unit).symbol {
            "" => digits,
            symbol => format!("{digits} {symbol}"),
        }
    }

    /// The digits of it alone.
    pub(super) fn compact_digits(&self, metric: f64, unit: &str) -> String {
        let shown = self.units.of(unit);
        if !shown.is_metric() {
            return shown.trimmed(metric, 1);
        }
        let text = show_compact(metric);
        let text = match text.strip_prefix('-') {
            Some(magnitude) => format!("−{magnitude}"),
            None => text,
        };
        // A power of ten is written alike everywhere.
        if text.contains('e') {
            return text;
        }
        self.localised(&text, metric)
    }
}

/// Ids between backticks.
fn quoted(ids: &[String]) -> Vec<String> {
    ids.iter().map(|id| format!("`{id}`")).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Axis, IngredientId, RecipeId, VersionId};
    use crate::quantity::{DisplayUnits, TemperatureUnit};

    fn said(kind: &FindingKind) -> String {
        Speaker::without_book().finding_kind(kind)
    }

    #[test]
    fn a_finding_says_what_is_wrong_and_what_to_do() {
        let out_of_range = FindingKind::OutOfRange {
            what: FigureName::DrinkingTemperature,
            value: 120.5,
            range: FigureRange::new(-10.0, 100.0, "°C"),
        };
        for (kind, words) in [
            (
                out_of_range.clone(),
                "the drinking temperature is 120.5 °C; it must be −10 to 100 °C",
            ),
            (
                FindingKind::OutOfRange {
                    what: FigureName::MenuPrice,
                    value: -1e308,
                    range: FigureRange::new(0.0, 1e5, ""),
                },
                "the menu price is −1e308; it must be 0 to 100000",
            ),
            (
                FindingKind::Unfinished(Unfinished::NoStep(Axis::Flavour("pear".into()))),
                "the noticeable step of pear is 0; enter a fraction or a floor above 0",
            ),
            (
                FindingKind::EnergyNotOfComposition {
                    stated: 1400.0,
                    from: 1849.6,
                    to: 2300.0,
                    percent: Some(-24.2),
                    fits_as_kilocalories: false,
                },
                "the stated energy is 1400 kJ, 24 % too low; the composition gives 1850 to 2300 kJ (Regulation (EU) 1169/2011, \
                 Annex XIV); check both",
            ),
            (
                FindingKind::ClaimNotCarried {
                    claim: StatedClaim::DairyFree,
                    against: AgainstClaim::PartIsNot(IngredientId::new("foam").unwrap()),
                },
                "it is stated to be dairy-free, but it is made with foam, which is stated not to be; correct one of the two",
            ),
            (
                FindingKind::StalePrice {
                    date: "2025-05-03".into(),
                    months: 12,
                    newest: "2026-05-04".into(),
                },
                "the price is from 2025-05-03, 12 months before the newest date in the book, 2026-05-04; ask for a new price",
            ),
        ] {
            assert_eq!(said(&kind), words);
        }
        let fahrenheit = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        let speaker = Speaker::without_book().in_units(fahrenheit);
        assert_eq!(
            speaker.finding_kind(&out_of_range),
            "the drinking temperature is 248.9 °F; it must be 14 to 212 °F"
        );
    }

    #[test]
    fn a_long_loop_is_told_by_its_ends() {
        let chain = (0..30).map(|at| format!("v{at}")).collect();
        let said = said(&FindingKind::VersionCycle { chain });
        assert!(said.contains("v10 → … (18 more) → v29;"), "{said}");
    }

    #[test]
    fn a_place_has_the_ids_of_the_file() {
        let recipe = || RecipeId::new("pear-drift").unwrap();
        let version = VersionId::new("hot").unwrap();
        let speaker = Speaker::without_book();
        assert_eq!(
            speaker.place(&Place::Version(recipe(), version)),
            "recipe `pear-drift`, version `hot`"
        );
        let syrup = IngredientId::new("pear-syrup").unwrap();
        assert_eq!(
            speaker.place(&Place::Ingredient(syrup, "bulk_density")),
            "ingredient `pear-syrup`, bulk density"
        );
        assert_eq!(
            speaker.place(&Place::Recipe(recipe(), "menu_price")),
            "recipe `pear-drift`, menu_price"
        );
    }

    #[test]
    fn a_measure_that_is_not_of_its_size_is_told_with_what_may_have_happened() {
        let miscalled = |number, unit, held| Miscalled {
            kind: MeasureKind::Spoon,
            called: crate::book::CalledSize { number, unit },
            found_ml: 7.04,
            held,
        };
        let speaker = Speaker::without_book();
        let spoon = miscalled(5.0, NamedUnit::Millilitre, Held::ByReadings);
        assert_eq!(
            speaker.miscalled(spoon),
            "its stated size is 5 ml, but its readings give 7 ml; it may be bigger or heaped, or grams were entered as \
             millilitres (5 ml of a 77 °Brix syrup weigh about 7 g)"
        );
        let spoons = miscalled(1.5, NamedUnit::Teaspoon, Held::AsSetDown);
        assert_eq!(
            speaker.miscalled(spoons),
            "its name says 1½ teaspoons, but 7 ml is entered; correct one of the two"
        );
    }
}
