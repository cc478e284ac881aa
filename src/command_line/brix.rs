//! `evensip brix`: what a refractometer reading comes to, of a drink or of a product in water.

use std::process::ExitCode;

use clap::ValueEnum;
use serde_json::{Value, json};

use super::{
    BrixArguments, Failure, facts, open, print, print_json, recipe_called, report_errors, speaker,
    version_called,
};
use crate::balance::{Measurand, balance_version};
use crate::quantity::Uncertain;
use crate::tasting::{
    BrixCaution, BrixComparison, BrixReading, Misleading, SolubleSolids, TestSolution,
    brix_cautions, product_solids, soluble_solids,
};

/// Standard uncertainty of a figure on a label, as a share of it (assumed: labels of syrups and powders are means of many lots).
const LABEL_RELATIVE: f64 = 0.03;

/// What misleads a refractometer, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
pub(super) enum HoldsArgument {
    /// Milk or creamer
    Dairy,
    /// Pulp, fibre, cocoa or starch
    Fibre,
}

impl From<HoldsArgument> for Misleading {
    fn from(argument: HoldsArgument) -> Self {
        match argument {
            HoldsArgument::Dairy => Self::Dairy,
            HoldsArgument::Fibre => Self::Fibre,
        }
    }
}

/// What a reading is compared with.
enum Compared {
    Nothing,
    Label(BrixComparison),
    Drink(BrixComparison),
    /// The drink's °Brix is not known.
    Unknown,
}

pub(super) fn run(arguments: &BrixArguments) -> Result<ExitCode, Failure> {
    let reading = BrixReading {
        brix: arguments.reading,
        celsius: arguments.celsius,
        limits: arguments.within,
        misleading: arguments.holds.iter().map(|one| (*one).into()).collect(),
    };
    let read = soluble_solids(&reading)
        .map_err(|outside| Failure::Usage(speaker().brix_outside(&outside)))?;
    let solution = arguments.product.zip(arguments.water);
    let product = solution.and_then(|(product_g, water_g)| {
        product_solids(&read, TestSolution { product_g, water_g })
    });
    if solution.is_some() && product.is_none() {
        return Err(Failure::Usage(
            speaker().word("command-enter-product").to_owned(),
        ));
    }
    let mut code = ExitCode::SUCCESS;
    let mut compared = Compared::Nothing;
    if let Some(label) = arguments.label {
        let of = product.as_ref().unwrap_or(&read);
        let stated = Uncertain::relative(label, LABEL_RELATIVE);
        compared = Compared::Label(BrixComparison::new(of.solids, stated));
    } else if let (Some(path), Some(id)) = (&arguments.book, &arguments.recipe) {
        let (book, findings) = open(path)?;
        let recipe = recipe_called(&book, id)?;
        let version = version_called(recipe, arguments.version.as_deref())?;
        let balance = balance_version(&book, recipe, version.as_ref());
        let known = balance.and_then(|balance| {
            let value = balance.figures.complete(Measurand::Brix)?;
            let u = balance.uncertainty(Measurand::Brix.slot());
            Some(Uncertain { value, u })
        });
        compared = known.map_or(Compared::Unknown, |expected| {
            Compared::Drink(BrixComparison::new(read.solids, expected))
        });
        code = report_errors(&book, &findings);
    }
    let cautions = brix_cautions(&reading, &read, product.as_ref());
    let answer = Answer {
        reading,
        read,
        product,
        compared,
        cautions,
    };
    if arguments.json {
        print_json(&answer.document())?;
    } else {
        print(&answer.sentences())?;
    }
    Ok(code)
}

struct Answer {
    reading: BrixReading,
    read: SolubleSolids,
    product: Option<SolubleSolids>,
    compared: Compared,
    cautions: Vec<BrixCaution>,
}

impl Answer {
    fn comparison(&self) -> Option<String> {
        match &self.compared {
            Compared::Nothing => None,
            Compared::Label(comparison) => Some(speaker().brix_comparison(comparison, true)),
            Compared::Drink(comparison) => Some(speaker().brix_comparison(comparison, false)),
            Compared::Unknown => Some(speaker().brix_not_computed().to_owned()),
        }
    }

    fn sentences(&self) -> String {
        let speaker = speaker();
        let mut said = vec![speaker.brix_read(&self.reading, &self.read)];
        said.extend(
            self.product
                .as_ref()
                .map(|product| speaker.brix_of_product(product)),
        );
        said.extend(self.comparison());
        said.extend(self.cautions.iter().map(|one| speaker.brix_caution(one)));
        said.join("\n")
    }

    fn document(&self) -> Value {
        let comparison = self.comparison().map(|text| {
            let fact = match &self.compared {
                Compared::Label(comparison) | Compared::Drink(comparison) => {
                    facts::brix_comparison(comparison)
                }
                Compared::Nothing | Compared::Unknown => facts::brix_not_computed(),
            };
            fact.beside(json!({ "text": text }))
        });
        let cautions = self.cautions.iter().map(|one| {
            facts::brix_caution(one).beside(json!({ "text": speaker().brix_caution(one) }))
        });
        json!({
            "reading": self.reading.brix,
            "celsius": self.reading.celsius,
            "correction": self.read.correction,
            "brix": solids(&self.read, "°Brix"),
            "product": self.product.as_ref().map(|product| solids(product, "g/100 g")),
            "comparison": comparison,
            "cautions": cautions.collect::<Vec<_>>(),
        })
    }
}

fn solids(solids: &SolubleSolids, unit: &str) -> Value {
    let causes = solids.causes.iter();
    let causes = causes.map(|(cause, u)| json!({ "kind": cause.word(), "u": u }));
    json!({
        "value": solids.solids.value,
        "u": solids.solids.u,
        "unit": unit,
        "causes": causes.collect::<Vec<_>>(),
    })
}
