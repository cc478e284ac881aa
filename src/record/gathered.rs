//! Everything of a book that was read beside what had been foretold, by class of doubt.

use std::collections::BTreeMap;

use super::scale::{LogLikelihood, OffBy, POINTS, Scale, drawn_out, factors, of_group, scale};
use crate::balance::{measure_foretold, scale_uncertainty};
use crate::book::{
    Book, CupQuantity, DoubtClass, FiledReading, IngredientId, MeasureId, RecipeId, TastingId,
    VersionId,
};
use crate::tasting::foretold_tastings;

/// Readings that a class must have before its doubts are made smaller (assumed).
pub const FROM_READINGS: usize = 10;

/// Readings that it takes to make them larger: one or two may be slips of whoever read or typed (assumed).
const WIDENED_FROM: usize = 3;

/// A tasting is likely enough to count as foretold by this: two standard uncertainties leave as much outside.
const INSIDE: f64 = 0.0455;

/// Every so many factors of the grid a tasting is weighed.
const TASTED_STEP: usize = 16;

/// Where a reading stands in the book.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Source {
    /// A reading of a cup.
    Cup {
        /// The recipe.
        recipe: RecipeId,
        /// The version; none for the recipe itself.
        version: Option<VersionId>,
        /// How many readings of the recipe stand before it.
        place: usize,
        /// What was read.
        what: CupQuantity,
    },
    /// The weighings of one day of a measure.
    Measure {
        /// The measure.
        measure: MeasureId,
        /// What was weighed; water for none.
        ingredient: Option<IngredientId>,
    },
    /// A tasting.
    Tasting(TastingId),
}

/// A reading beside what had been foretold.
#[derive(Clone, Debug, PartialEq)]
pub struct Scored {
    /// Where it stands.
    pub source: Source,
    /// The day; empty where none is stated.
    pub date: String,
    /// Whether it lay within two standard uncertainties, as they were said on that day.
    pub inside: bool,
    /// The same with the doubts of the class multiplied with what the record says.
    pub inside_rescaled: bool,
    /// What was read and foretold, with its standard uncertainty on that day; `None` for a tasting.
    pub figures: Option<(f64, f64, f64)>,
}

/// What a record says of the doubts of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RecordVerdict {
    /// Too few readings to tell.
    TooFew,
    /// The doubts are about as large as they should be.
    Fits,
    /// They are too small.
    TooSmall,
    /// They are too large.
    TooLarge,
}

impl RecordVerdict {
    /// Its key in reports and in the names of messages.
    pub const fn word(self) -> &'static str {
        match self {
            Self::TooFew => "too-few",
            Self::Fits => "fits",
            Self::TooSmall => "too-small",
            Self::TooLarge => "too-large",
        }
    }
}

/// The record of a class of doubt.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassRecord {
    /// The class.
    pub class: DoubtClass,
    /// Its readings by day.
    pub readings: Vec<Scored>,
    /// What they say of the factor on the doubts as they are assumed without a record.
    pub scale: Scale,
    /// What the book multiplies these doubts with.
    pub accepted: f64,
    /// What that means.
    pub verdict: RecordVerdict,
}

impl ClassRecord {
    /// How many readings lay inside.
    pub fn inside(&self) -> usize {
        self.readings.iter().filter(|one| one.inside).count()
    }

    /// How many would have, with the doubts multiplied with what the record says.
    pub fn inside_rescaled(&self) -> usize {
        let inside = |one: &&Scored| one.inside_rescaled;
        self.readings.iter().filter(inside).count()
    }

    /// The factor that the record offers, with two digits behind the point; `None` while what the book has agrees with it.
    pub fn offered(&self) -> Option<f64> {
        let is_wrong = matches!(
            self.verdict,
            RecordVerdict::TooSmall | RecordVerdict::TooLarge
        );
        is_wrong.then(|| (self.scale.times * 100.0).round() / 100.0)
    }
}

/// The record of a book.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    /// Its classes, those without readings left out.
    pub classes: Vec<ClassRecord>,
}

impl Record {
    /// The record of a class.
    pub fn class(&self, class: DoubtClass) -> Option<&ClassRecord> {
        self.classes.iter().find(|one| one.class == class)
    }
}

/// A reading under way.
struct Found {
    source: Source,
    date: String,
    /// With what was foretold in the doubts of that day.
    by: Foretelling,
}

enum Foretelling {
    Figure {
        off_by: OffBy,
        /// What the doubts of the class were multiplied with on that day.
        then: f64,
        read: f64,
        foretold: f64,
        group: String,
    },
    Tasted {
        /// How likely what came out was, at each factor that was tried.
        likely: Box<LogLikelihood>,
        log_probability: Box<LogLikelihood>,
    },
}

/// The record of a book, by class.
pub fn record(book: &Book) -> Record {
    let mut found: BTreeMap<DoubtClass, Vec<Found>> = BTreeMap::new();
    for recipe in &book.recipes {
        for (place, reading) in recipe.readings.iter().enumerate() {
            if let Some(one) = of_cup(&recipe.id, place, reading) {
                found.entry(reading.what.class()).or_default().push(one);
            }
        }
    }
    found
        .entry(DoubtClass::Dose)
        .or_default()
        .extend(weighings(book));
    let tried: Vec<f64> = factors().into_iter().step_by(TASTED_STEP).collect();
    for tasting in foretold_tastings(book, &tried) {
        let likely: Vec<f64> = tasting.foretold.iter().map(|one| one.likely).collect();
        let logs: Vec<f64> = tasting
            .foretold
            .iter()
            .map(|one| one.log_probability)
            .collect();
        let date = book.tasting(&tasting.tasting).map(|one| one.date.clone());
        found.entry(tasting.class).or_default().push(Found {
            source: Source::Tasting(tasting.tasting),
            date: date.unwrap_or_default(),
            by: Foretelling::Tasted {
                likely: Box::new(drawn_out(&likely, TASTED_STEP)),
                log_probability: Box::new(drawn_out(&logs, TASTED_STEP)),
            },
        });
    }
    let classes = found
        .into_iter()
        .filter(|(_, found)| !found.is_empty())
        .map(|(class, found)| of_class(book, class, found));
    Record {
        classes: classes.collect(),
    }
}

/// A reading of a cup; `None` for figures that nobody can have foretold.
fn of_cup(recipe: &RecipeId, place: usize, reading: &FiledReading) -> Option<Found> {
    let FiledReading {
        version,
        what,
        value,
        u,
        foretold,
        foretold_u,
        of_class,
        times,
        ..
    } = reading;
    let all = [value, u, foretold, foretold_u, of_class, times];
    let is_sound = all.iter().all(|number| number.is_finite()) && *times > 0.0;
    if !is_sound || *of_class <= 0.0 || *foretold_u < 0.0 {
        return None;
    }
    let others = (foretold_u * foretold_u - of_class * of_class)
        .max(0.0)
        .sqrt();
    Some(Found {
        source: Source::Cup {
            recipe: recipe.clone(),
            version: version.clone(),
            place,
            what: *what,
        },
        date: reading.date.clone(),
        by: Foretelling::Figure {
            off_by: OffBy {
                off: value - foretold,
                of_class: of_class / times,
                rest: others.hypot(*u),
            },
            then: *times,
            read: *value,
            foretold: *foretold,
            group: format!(
                "{recipe}/{}/{}",
                version.as_ref().map_or("", AsRef::as_ref),
                what.word()
            ),
        },
    })
}

/// The weighings of measures. Each day moves what is foretold of the next one, so that every day is a group of its own.
fn weighings(book: &Book) -> Vec<Found> {
    let instrument = scale_uncertainty(book);
    let mut found = Vec::new();
    for measure in &book.measures {
        for day in measure_foretold(measure) {
            found.push(Found {
                source: Source::Measure {
                    measure: measure.id.clone(),
                    ingredient: day.ingredient.clone(),
                },
                by: Foretelling::Figure {
                    off_by: OffBy {
                        off: day.grams - day.foretold.value,
                        of_class: day.foretold.u,
                        rest: instrument / f64::from(day.uses.max(1)),
                    },
                    then: 1.0,
                    read: day.grams,
                    foretold: day.foretold.value,
                    group: format!("{}/{:?}/{}", measure.id, day.ingredient, day.date),
                },
                date: day.date,
            });
        }
    }
    found
}

fn of_class(book: &Book, class: DoubtClass, mut found: Vec<Found>) -> ClassRecord {
    found.sort_by(|one, other| one.date.cmp(&other.date));
    let accepted = book.settings.doubt_times(class);
    let mut groups: BTreeMap<&str, Vec<OffBy>> = BTreeMap::new();
    let mut likelihoods: Vec<LogLikelihood> = Vec::new();
    for one in &found {
        match &one.by {
            Foretelling::Figure { off_by, group, .. } => {
                groups.entry(group).or_default().push(*off_by);
            }
            Foretelling::Tasted {
                log_probability, ..
            } => likelihoods.push(**log_probability),
        }
    }
    likelihoods.extend(groups.values().map(|group| of_group(group)));
    let scale = scale(&likelihoods);
    let readings: Vec<Scored> = found
        .into_iter()
        .map(|one| one.scored(scale.times, accepted))
        .collect();
    let verdict = if scale.low > accepted && readings.len() >= WIDENED_FROM {
        RecordVerdict::TooSmall
    } else if scale.high < accepted && readings.len() >= FROM_READINGS {
        RecordVerdict::TooLarge
    } else if readings.len() < FROM_READINGS {
        RecordVerdict::TooFew
    } else {
        RecordVerdict::Fits
    };
    ClassRecord {
        class,
        readings,
        scale,
        accepted,
        verdict,
    }
}

impl Found {
    fn scored(self, times: f64, accepted: f64) -> Scored {
        let (inside, inside_rescaled, figures) = match &self.by {
            Foretelling::Figure {
                off_by,
                then,
                read,
                foretold,
                ..
            } => (
                off_by.is_inside(*then),
                off_by.is_inside(times),
                Some((*read, *foretold, off_by.u(*then))),
            ),
            Foretelling::Tasted { likely, .. } => (
                likely[nearest(accepted)] >= INSIDE,
                likely[nearest(times)] >= INSIDE,
                None,
            ),
        };
        Scored {
            source: self.source,
            date: self.date,
            inside,
            inside_rescaled,
            figures,
        }
    }
}

/// The place of the factor of the grid that is nearest to one.
fn nearest(times: f64) -> usize {
    let apart = |at: &usize| (factors()[*at] / times).ln().abs();
    let places = 0..POINTS;
    places
        .min_by(|one, other| apart(one).total_cmp(&apart(other)))
        .unwrap_or(POINTS / 2)
}
