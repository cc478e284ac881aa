//! What stands in a field of an item, in a few words: so that two states of it can be told apart.

use super::{Speaker, say};
use crate::balance::{AllergenSummary, Verdict};
use crate::book::{
    AllergenStatement, Book, Composition, Diet, Figure, Filling, HouseMade, Ingredient, ItemId,
    Level, Measure, Nominal, Nutrient, Price, Settings, Shape, Tasting, TemperatureWindow, Vessel,
};
use crate::quantity::excerpt;

/// Longest value of a field, in characters.
const VALUE: usize = 120;

impl Speaker<'_> {
    /// What a field holds in this book instead of what it held before, a clause each; its name alone where a few words do not
    /// tell the two apart.
    pub(super) fn field_changes(&self, before: &Book, item: &ItemId, field: &str) -> Vec<String> {
        let earlier = self.about(before);
        let name = self.item_field(field);
        if let (ItemId::Ingredient(id), "composition") = (item, field)
            && let (Some(before), Some(after)) = (before.ingredient(id), self.book.ingredient(id))
        {
            return self.composition_changes(&before.composition, &after.composition);
        }
        let values = earlier
            .field_value(item, field)
            .zip(self.field_value(item, field));
        let clause = values.and_then(|(before, after)| self.instead(name, &before, &after));
        vec![clause.unwrap_or_else(|| name.to_owned())]
    }

    fn instead(&self, field: &str, before: &str, after: &str) -> Option<String> {
        let (before, after) = (excerpt(before, VALUE), excerpt(after, VALUE));
        (before != after).then(|| {
            say!(
                self,
                "detail-field",
                field: field,
                after: after,
                before: before,
            )
        })
    }

    fn composition_changes(&self, before: &Composition, after: &Composition) -> Vec<String> {
        let value = |of: &Composition, nutrient: Nutrient| {
            self.stated_figure(of.get(nutrient), nutrient.unit())
        };
        let figures = Nutrient::ALL.into_iter().filter_map(|nutrient| {
            let (before, after) = (value(before, nutrient), value(after, nutrient));
            self.instead(self.nutrient(nutrient), &before, &after)
        });
        let mut clauses: Vec<String> = figures.collect();
        let same_figures = Composition {
            printed: after.printed.clone(),
            ..before.clone()
        };
        if same_figures != *after || clauses.is_empty() {
            clauses.push(self.item_field("composition").to_owned());
        }
        clauses
    }

    /// The value of a field by its name in the file; `None` for lists that a few words do not tell, and for what else is said
    /// of a recipe.
    fn field_value(&self, item: &ItemId, field: &str) -> Option<String> {
        match item {
            ItemId::Settings => self.settings_value(&self.book.settings, field),
            ItemId::Ingredient(id) => self.ingredient_value(self.book.ingredient(id)?, field),
            ItemId::Measure(id) => self.measure_value(self.book.measure(id)?, field),
            ItemId::Vessel(id) => self.vessel_value(self.book.vessel(id)?, field),
            ItemId::Tasting(id) => self.tasting_value(self.book.tasting(id)?, field),
            ItemId::Recipe(id) => {
                let recipe = self.book.recipe(id)?;
                (field == "note").then(|| self.note(&recipe.note))
            }
        }
    }

    fn settings_value(&self, settings: &Settings, field: &str) -> Option<String> {
        Some(match field {
            "shop" => self.note(&settings.shop),
            "note" => self.note(&settings.note),
            "currency" => self.note(&settings.currency),
            "room_temperature" => self.stated_temperature(settings.room_temperature, 4),
            "refrigerator_temperature" => self.short(settings.refrigerator_temperature, "°C"),
            "ice_temperature" => self.short(settings.ice_temperature, "°C"),
            "hot_drinking_temperature" => self.short(settings.hot_drinking_temperature, "°C"),
            "iced_drinking_temperature" => self.short(settings.iced_drinking_temperature, "°C"),
            "hot_window" => self.window(settings.hot_window),
            "iced_window" => self.window(settings.iced_window),
            "ice_bulk_density" => self.short(settings.ice_bulk_density, "g/ml"),
            "ice_melt_rate" => self.stated(settings.ice_melt_rate, "g/min"),
            "ice_left" => self.stated(settings.ice_left, "%"),
            "sales_tax_percent" => self.stated(settings.sales_tax_percent, "%"),
            "sugar_levels" => self.levels(&settings.sugar_levels()),
            "ice_levels" => self.levels(&settings.ice_levels()),
            "yardsticks" => {
                let names = settings.yardsticks.iter();
                let names: Vec<&str> = names.map(|one| self.yardstick(*one)).collect();
                self.list(&names)
            }
            _ => return None,
        })
    }

    fn ingredient_value(&self, ingredient: &Ingredient, field: &str) -> Option<String> {
        Some(match field {
            "name" => self.note(&ingredient.name),
            "brand" => self.note(&ingredient.brand),
            "supplier" => self.note(&ingredient.supplier),
            "lot" => self.note(&ingredient.lot),
            "statement" => self.note(&ingredient.statement),
            "note" => self.note(&ingredient.note),
            "role" => self.role(ingredient.role).to_owned(),
            "form" => self.form(ingredient.form).to_owned(),
            "density" => self.stated_figure(ingredient.density, "g/ml"),
            "bulk_density" => self.stated_figure(ingredient.bulk_density, "g/ml"),
            "temperature" => ingredient.temperature.map_or_else(
                || self.not_stated(),
                |stated| self.stated_temperature(stated, 4),
            ),
            "allergens" => self.allergen_statement(ingredient.allergens.as_ref()),
            "diet" => self.diet(ingredient.diet),
            "no_longer_sold" => self.sold(ingredient.no_longer_sold).to_owned(),
            "opened_life_hours" => self.stated(ingredient.opened_life_hours, "h"),
            "price" => self.price_of(ingredient.price.as_ref()),
            "house_made" => self.batch(ingredient.house_made.as_ref()),
            _ => return None,
        })
    }

    fn measure_value(&self, measure: &Measure, field: &str) -> Option<String> {
        Some(match field {
            "name" => self.note(&measure.name),
            "note" => self.note(&measure.note),
            "kind" => self.measure_kind(measure.kind).to_owned(),
            "filling" => self.filling(measure.filling).to_owned(),
            "readings" => say!(self, "detail-readings", count: measure.readings.len()),
            "nominal" => match measure.nominal {
                Some(Nominal::Volume(millilitres)) => self.short(millilitres, "ml"),
                Some(Nominal::Mass(grams)) => self.short(grams, "g"),
                None => self.not_stated(),
            },
            "increment" => {
                let increment = measure.increment.map(|increment| self.count(increment));
                increment.unwrap_or_else(|| self.not_stated())
            }
            "temperature" => match measure.temperature {
                Some(stated) => self.stated_temperature(stated, 4),
                None => self.not_stated(),
            },
            _ => return None,
        })
    }

    fn vessel_value(&self, vessel: &Vessel, field: &str) -> Option<String> {
        Some(match field {
            "name" => self.note(&vessel.name),
            "note" => self.note(&vessel.note),
            "kind" => self.vessel_kind(vessel.kind).to_owned(),
            "capacity" => self.short(vessel.capacity, "ml"),
            "shape" => self.shape(vessel.shape),
            "mass" => self.stated(vessel.mass, "g"),
            "specific_heat" => self.stated(vessel.specific_heat, "kJ/(kg K)"),
            "temperature" => self.stated(vessel.temperature, "°C"),
            "cooling_minutes" => self.stated(vessel.cooling_minutes, "min"),
            "price" => {
                let price = vessel.price.map(|price| self.money(price));
                price.unwrap_or_else(|| self.not_stated())
            }
            "closures" => {
                let closures = vessel.closures.iter();
                let words: Vec<&str> = closures.map(|one| self.closure(one.kind)).collect();
                self.list(&words)
            }
            "serviceware" => {
                let wares = vessel.serviceware.iter();
                let words: Vec<&str> = wares.map(|one| self.serviceware(one.kind)).collect();
                self.list(&words)
            }
            _ => return None,
        })
    }

    fn tasting_value(&self, tasting: &Tasting, field: &str) -> Option<String> {
        Some(match field {
            "date" => self.note(&tasting.date),
            "people" => self.list(&tasting.people),
            "reason" => self.note(&tasting.reason),
            "outcome" => self.tasting_outcome(tasting.outcome),
            "counts" => self.tasting_counts(tasting.counts).to_owned(),
            _ => return None,
        })
    }

    fn not_stated(&self) -> String {
        self.word("counter-not-stated").to_owned()
    }

    /// A value in the unit that is read, with as few digits as it needs.
    fn short(&self, metric: f64, unit: &str) -> String {
        let shown = self.units.of(unit);
        let decimals = if shown.is_metric() { 4 } else { 1 };
        let digits = self.digits(&shown.trimmed(metric, decimals));
        format!("{digits}\u{a0}{}", shown.symbol)
    }

    fn stated(&self, metric: Option<f64>, unit: &str) -> String {
        metric.map_or_else(|| self.not_stated(), |metric| self.short(metric, unit))
    }

    fn stated_figure(&self, figure: Option<Figure>, unit: &str) -> String {
        let Some(figure) = figure else {
            return self.not_stated();
        };
        let value = match figure.u {
            Some(u) => self.figure(figure.value, Some(u), unit),
            None => self.short(figure.value, unit),
        };
        format!("{value} ({})", self.evidence_kind(figure.evidence))
    }

    fn list(&self, words: &[impl AsRef<str>]) -> String {
        if words.is_empty() {
            self.word("line-nothing").to_owned()
        } else {
            self.and(words)
        }
    }

    fn levels(&self, levels: &[Level]) -> String {
        let levels = levels.iter().map(|level| {
            let (name, percent) = (self.level_name(level), self.percent_of(level));
            if name == percent {
                name
            } else {
                format!("{name} ({percent})")
            }
        });
        self.list(&levels.collect::<Vec<String>>())
    }

    fn window(&self, window: TemperatureWindow) -> String {
        let (from, to) = (self.short(window.from, "°C"), self.short(window.to, "°C"));
        say!(self, "detail-range", from: from, to: to)
    }

    fn allergen_statement(&self, statement: Option<&AllergenStatement>) -> String {
        let Some(statement) = statement else {
            return self.not_stated();
        };
        self.allergen_summary(&AllergenSummary {
            contains: statement.contains.iter().copied().collect(),
            may_contain: statement.may_contain.iter().copied().collect(),
            ..AllergenSummary::default()
        })
    }

    /// Whether it can still be bought.
    pub fn sold(&self, no_longer_sold: bool) -> &'static str {
        self.word(if no_longer_sold {
            "ingredient-no-longer-sold"
        } else {
            "ingredient-still-sold"
        })
    }

    /// Words that are set, quieter, behind the name of an ingredient, with the mark of one that is no longer sold.
    pub fn beside_name(&self, ingredient: &Ingredient, words: &str) -> String {
        let mark = ingredient.no_longer_sold.then(|| self.sold(true));
        let words = (!words.is_empty()).then_some(words);
        let parts: Vec<&str> = words.into_iter().chain(mark).collect();
        parts.join(" · ")
    }

    fn diet(&self, diet: Diet) -> String {
        let verdict = |claim: Option<bool>| match claim {
            Some(true) => self.verdict(Verdict::Yes).to_owned(),
            Some(false) => self.verdict(Verdict::No).to_owned(),
            None => self.not_stated(),
        };
        say!(
            self,
            "detail-diet",
            vegan: verdict(diet.vegan),
            dairy_free: verdict(diet.dairy_free),
        )
    }

    fn price_of(&self, price: Option<&Price>) -> String {
        let Some(price) = price else {
            return self.not_stated();
        };
        let content = self.pack(price.content);
        let money = self.money(price.pack);
        let mut parts = vec![say!(self, "ingredient-price-for", price: money, content: content)];
        if price.waste_percent != 0.0 {
            let percent = self.short(price.waste_percent, "%");
            parts.push(say!(self, "detail-waste", percent: percent));
        }
        parts.extend(price.date.clone());
        parts.join(", ")
    }

    fn batch(&self, batch: Option<&HouseMade>) -> String {
        let Some(batch) = batch else {
            return self.word("line-nothing").to_owned();
        };
        let grams = self.short(batch.yield_grams.value, "g");
        say!(self, "detail-batch", recipe: self.recipe(&batch.recipe), grams: grams)
    }

    fn shape(&self, shape: Option<Shape>) -> String {
        let Some(shape) = shape else {
            return self.not_stated();
        };
        say!(
            self,
            "detail-shape",
            height: self.short(shape.height, "mm"),
            bottom: self.short(shape.bottom, "mm"),
            top: self.short(shape.top, "mm"),
        )
    }

    /// How a measure is filled.
    pub fn filling(&self, filling: Filling) -> &'static str {
        self.word(match filling {
            Filling::Levelled => "counter-measure-level",
            Filling::Heaped => "counter-measure-heaped",
        })
    }
}
