//! From the text's own structs to the book: checks every id and number, and remembers where each one stands.

mod counter;
mod ingredient;
mod recipe;

use std::collections::BTreeMap;

use super::error::{FilePlace, LoadProblem, Step};
use super::{format_v1 as file, scan};
use crate::book::{
    self, Axis, Book, IdError, IdKind, IngredientId, Instruments, Item, LineId, MOST_LINES,
    MeasureId, NamedLevel, RecipeId, Settings, Shelf, StepSetting, TemperatureWindow, VersionId,
    VesselId,
};

/// How many problems get their line looked up: each costs a walk through the text.
const WITH_LINE: usize = 20;

/// How many problems are kept. Whoever has more has another problem.
const KEPT: usize = 1000;

/// The book of a file, or every id and number that can't be taken.
pub(super) fn book_from_file(file: file::Book, text: &str) -> Result<Book, Vec<LoadProblem>> {
    let mut checker = Checker {
        text,
        steps: Vec::new(),
        problems: Vec::new(),
    };
    checker.duplicates(
        IdKind::Ingredient,
        "ingredients",
        file.ingredients.iter().map(|item| item.id.as_str()),
    );
    checker.duplicates(
        IdKind::Measure,
        "measures",
        file.measures.iter().map(|item| item.id.as_str()),
    );
    checker.duplicates(
        IdKind::Vessel,
        "vessels",
        file.vessels.iter().map(|item| item.id.as_str()),
    );
    checker.duplicates(
        IdKind::Recipe,
        "recipes",
        file.recipes.iter().map(|item| item.id.as_str()),
    );
    let book = Book {
        settings: checker.within("settings", |checker| settings(checker, file.settings)),
        ingredients: shelf(checker.items(
            "ingredients",
            file.ingredients,
            |item| &item.id,
            ingredient::ingredient,
        )),
        measures: shelf(checker.items(
            "measures",
            file.measures,
            |item| &item.id,
            counter::measure,
        )),
        vessels: shelf(checker.items("vessels", file.vessels, |item| &item.id, counter::vessel)),
        recipes: shelf(checker.items("recipes", file.recipes, |item| &item.id, recipe::recipe)),
    };
    if checker.problems.is_empty() {
        Ok(book)
    } else {
        Err(checker.problems)
    }
}

/// An id that can be read from text.
trait ReadId: Sized {
    fn read(text: &str) -> Result<Self, IdError>;
    /// Stands in for one that could not be read, so that the reading goes on and finds the other problems.
    fn stand_in() -> Self;
}

macro_rules! read_id {
    ($($id:ident),+) => {
        $(impl ReadId for $id {
            fn read(text: &str) -> Result<Self, IdError> {
                Self::new(text)
            }
            fn stand_in() -> Self {
                Self::from_name("", |_| false)
            }
        })+
    };
}

read_id!(
    IngredientId,
    MeasureId,
    VesselId,
    RecipeId,
    LineId,
    VersionId
);

/// Where the reading is, and what it has found.
struct Checker<'text> {
    text: &'text str,
    steps: Vec<Step>,
    problems: Vec<LoadProblem>,
}

impl Checker<'_> {
    /// Does something inside a field.
    fn within<T>(&mut self, field: &'static str, read: impl FnOnce(&mut Self) -> T) -> T {
        self.steps.push(Step::Field(field));
        let value = read(self);
        self.steps.pop();
        value
    }

    /// Reads a list of a recipe, whose entries are few; of too many none is read.
    fn bounded<T, U>(
        &mut self,
        field: &'static str,
        items: Vec<T>,
        label: impl Fn(&T) -> &str,
        read: impl FnMut(&mut Self, T) -> U,
    ) -> Vec<U> {
        let count = items.len();
        if count <= MOST_LINES {
            return self.items(field, items, label, read);
        }
        self.within(field, |checker| {
            checker.report(|place| LoadProblem::TooMany { count, place });
        });
        Vec::new()
    }

    /// Reads the items of a list, each under its label.
    fn items<T, U>(
        &mut self,
        field: &'static str,
        items: Vec<T>,
        label: impl Fn(&T) -> &str,
        mut read: impl FnMut(&mut Self, T) -> U,
    ) -> Vec<U> {
        self.within(field, |checker| {
            let numbered = items.into_iter().enumerate();
            numbered
                .map(|(index, item)| {
                    checker.steps.push(Step::Item {
                        index,
                        label: label(&item).to_owned(),
                    });
                    let value = read(checker, item);
                    checker.steps.pop();
                    value
                })
                .collect()
        })
    }

    fn place(&self, steps: Vec<Step>) -> FilePlace {
        let line = (self.problems.len() < WITH_LINE).then(|| scan::line_of(self.text, &steps));
        FilePlace { line, steps }
    }

    fn report(&mut self, problem: impl FnOnce(FilePlace) -> LoadProblem) {
        if self.problems.len() < KEPT {
            let place = self.place(self.steps.clone());
            self.problems.push(problem(place));
        }
    }

    fn number(&mut self, field: &'static str, found: f64) -> f64 {
        if !found.is_finite() {
            self.within(field, |checker| {
                checker.report(|place| LoadProblem::NotFinite { found, place });
            });
        }
        found
    }

    fn optional_number(&mut self, field: &'static str, found: Option<f64>) -> Option<f64> {
        found.map(|found| self.number(field, found))
    }

    fn figure(&mut self, field: &'static str, found: &file::Figure) -> book::Figure {
        book::Figure {
            value: self.number(field, found.value),
            evidence: found.evidence.into(),
            u: self.optional_number(field, found.u),
        }
    }

    fn id<I: ReadId>(&mut self, field: &'static str, text: &str) -> I {
        I::read(text).unwrap_or_else(|error| {
            self.within(field, |checker| {
                checker.report(|place| LoadProblem::BadId { error, place });
            });
            I::stand_in()
        })
    }

    fn optional_id<I: ReadId>(&mut self, field: &'static str, text: Option<&String>) -> Option<I> {
        text.map(|text| self.id(field, text))
    }

    /// Reports every item whose id an earlier item of the list has.
    fn duplicates<'ids>(
        &mut self,
        kind: IdKind,
        list: &'static str,
        ids: impl Iterator<Item = &'ids str>,
    ) {
        let mut first_of = BTreeMap::new();
        for (index, id) in ids.enumerate() {
            let first = *first_of.entry(id).or_insert(index);
            if first != index && self.problems.len() < KEPT {
                let place_of = |index| {
                    self.place(vec![
                        Step::Field(list),
                        Step::Item {
                            index,
                            label: id.to_owned(),
                        },
                    ])
                };
                let (first, second) = (place_of(first), place_of(index));
                self.problems.push(LoadProblem::DuplicateId {
                    kind,
                    id: id.to_owned(),
                    first,
                    second,
                });
            }
        }
    }
}

/// The items as a shelf. It can only fail for ids that have been reported before, and then the shelf is not used.
fn shelf<T: Item>(items: Vec<T>) -> Shelf<T> {
    Shelf::from_items(items).unwrap_or_default()
}

fn settings(checker: &mut Checker<'_>, found: file::Settings) -> Settings {
    let usual = Settings::default();
    let mut number =
        |field, found: Option<f64>, usual| checker.optional_number(field, found).unwrap_or(usual);
    Settings {
        shop: found.shop,
        note: found.note,
        currency: found.currency.unwrap_or(usual.currency),
        room_temperature: number(
            "room_temperature",
            found.room_temperature,
            usual.room_temperature,
        ),
        refrigerator_temperature: number(
            "refrigerator_temperature",
            found.refrigerator_temperature,
            usual.refrigerator_temperature,
        ),
        ice_temperature: number(
            "ice_temperature",
            found.ice_temperature,
            usual.ice_temperature,
        ),
        hot_drinking_temperature: number(
            "hot_drinking_temperature",
            found.hot_drinking_temperature,
            usual.hot_drinking_temperature,
        ),
        iced_drinking_temperature: number(
            "iced_drinking_temperature",
            found.iced_drinking_temperature,
            usual.iced_drinking_temperature,
        ),
        ice_bulk_density: number(
            "ice_bulk_density",
            found.ice_bulk_density,
            usual.ice_bulk_density,
        ),
        hot_window: window(checker, "hot_window", found.hot_window).unwrap_or(usual.hot_window),
        iced_window: window(checker, "iced_window", found.iced_window).unwrap_or(usual.iced_window),
        ice_melt_rate: checker.optional_number("ice_melt_rate", found.ice_melt_rate),
        sales_tax_percent: checker.optional_number("sales_tax_percent", found.sales_tax_percent),
        instruments: checker.within("instruments", |checker| Instruments {
            scale_grams: checker.optional_number("scale_grams", found.instruments.scale_grams),
            thermometer_kelvin: checker
                .optional_number("thermometer_kelvin", found.instruments.thermometer_kelvin),
            jug_percent: checker.optional_number("jug_percent", found.instruments.jug_percent),
        }),
        steps: checker.items("steps", found.steps, |_| "", step_setting),
        yardsticks: found.yardsticks.into_iter().map(Into::into).collect(),
        sugar_levels: checker.items("sugar_levels", found.sugar_levels, |_| "", named_level),
        ice_levels: checker.items("ice_levels", found.ice_levels, |_| "", named_level),
    }
}

fn window(
    checker: &mut Checker<'_>,
    field: &'static str,
    found: Option<file::TemperatureWindow>,
) -> Option<TemperatureWindow> {
    let found = found?;
    checker.within(field, |checker| {
        Some(TemperatureWindow {
            from: checker.number("from", found.from),
            to: checker.number("to", found.to),
        })
    })
}

fn named_level(checker: &mut Checker<'_>, found: file::NamedLevel) -> NamedLevel {
    NamedLevel {
        name: found.name,
        percent: checker.number("percent", found.percent),
    }
}

fn step_setting(checker: &mut Checker<'_>, found: file::StepSetting) -> StepSetting {
    let axis = match found.axis {
        file::Axis::Sweetness => Axis::Sweetness,
        file::Axis::TeaStrength => Axis::TeaStrength,
        file::Axis::Flavour(name) => Axis::Flavour(name),
        file::Axis::Creaminess => Axis::Creaminess,
        file::Axis::Acidity => Axis::Acidity,
        file::Axis::Body => Axis::Body,
        file::Axis::Temperature => Axis::Temperature,
        file::Axis::Volume => Axis::Volume,
    };
    StepSetting {
        axis,
        fraction: checker.number("fraction", found.fraction),
        floor: checker.number("floor", found.floor),
        weight: checker.number("weight", found.weight),
    }
}
