//! What stands in the cup, from the bottom up, by volume.

use super::frustum::Frustum;
use crate::balance::{Balance, Lens, LineShare, Measurand, ice_volume};
use crate::book::{Book, Form, LineId, Role, Stage};
use crate::quantity::name_as_shown;

/// Part by which the fill may exceed the liquid before ice is seen to stand out of it: the liquid's expansion between
/// 20 °C and serving is within it.
const EXPANSION: f64 = 0.04;

/// Least volume that makes a layer, ml.
const LEAST: f64 = 0.05;

/// How a layer is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Texture {
    /// Dissolved, or lying smoothly.
    Smooth,
    /// Pieces: pearls, cubes.
    Pieces,
    /// Foam or cream on top.
    Foam,
}

/// One line's part of the cup.
#[derive(Clone, Debug, PartialEq)]
pub struct Layer {
    /// The line.
    pub line: LineId,
    /// Name of the ingredient.
    pub name: String,
    /// Its role.
    pub role: Role,
    /// Volume in the cup, ml.
    pub millilitres: f64,
    /// Its part of the lens figure, against the line that brings most; `None` when not known.
    pub lens_part: Option<f64>,
    /// How it is drawn.
    pub texture: Texture,
}

/// Everything in the cup.
#[derive(Clone, Debug, PartialEq)]
pub struct Filling {
    /// From the bottom up.
    pub layers: Vec<Layer>,
    /// Volume from the bottom to the surface of the mixed drink, ml.
    pub surface: f64,
    /// Volume of the toppings under it, ml.
    pub toppings: f64,
    /// Volume that ice takes in the mixed drink, ml.
    pub ice: f64,
    /// Volume up to which ice stands out of the liquid, ml; none beyond `surface` when it does not.
    pub ice_top: f64,
    /// The line that the ice is from.
    pub ice_line: Option<LineId>,
    /// Volume that the cup would have to hold, ml.
    pub filled: f64,
    /// Names of lines whose volume nobody knows.
    pub not_known: Vec<String>,
}

/// The filling of the cup by a balance, seen through a lens.
pub fn filling(book: &Book, balance: &Balance, lens: Lens, cup: &Frustum) -> Filling {
    let parts = Parts::new(book, balance, lens);
    let of_stage = |stage| parts.of_stage(stage);
    let (toppings, on_top) = (
        total(&of_stage(Stage::Topping)),
        total(&of_stage(Stage::OnTop)),
    );
    let served = balance.figures.of[Measurand::ServingTemperature.slot()];
    let ice = ice_volume(balance.figures.of[Measurand::IceLeft.slot()], served).max(0.0);
    let at_reference = balance
        .figures
        .get(Measurand::Volume)
        .unwrap_or(0.0)
        .max(0.0)
        + ice;
    let fill = balance
        .figures
        .get(Measurand::Fill)
        .map(|percent| percent / 100.0 * cup.capacity());
    let filled = fill.unwrap_or(toppings + at_reference + on_top);
    let from_fill = filled - toppings - on_top;
    let ice_stands_out = from_fill > at_reference * (1.0 + EXPANSION);
    // The fill is at serving temperature; without a bed of ice above it, it says best how high the drink stands.
    let mixed = if ice_stands_out {
        at_reference
    } else {
        from_fill.max(0.0)
    };
    let mut layers = of_stage(Stage::Topping);
    layers.extend(parts.mixed(mixed));
    layers.extend(of_stage(Stage::OnTop));
    layers.retain(|layer| layer.millilitres > LEAST);
    let surface = toppings + mixed;
    Filling {
        layers,
        surface,
        toppings,
        ice,
        ice_top: if ice_stands_out {
            filled - on_top
        } else {
            surface
        },
        ice_line: parts.ice_line(),
        filled,
        not_known: parts.not_known(),
    }
}

fn total(layers: &[Layer]) -> f64 {
    layers.iter().map(|layer| layer.millilitres).sum()
}

/// The shares of the lines with what is needed to draw them.
struct Parts<'parts> {
    book: &'parts Book,
    balance: &'parts Balance,
    lens: Lens,
    most: f64,
}

impl<'parts> Parts<'parts> {
    fn new(book: &'parts Book, balance: &'parts Balance, lens: Lens) -> Self {
        let shares = balance.lines.iter().filter_map(|line| line.through(lens));
        Self {
            book,
            balance,
            lens,
            most: shares.map(f64::abs).fold(0.0, f64::max),
        }
    }

    fn layer(&self, share: &LineShare, millilitres: f64) -> Layer {
        let ingredient = self.book.ingredient(&share.ingredient);
        let pieces = ingredient.is_some_and(|ingredient| ingredient.form == Form::Pieces);
        let texture = match share.stage {
            Stage::OnTop => Texture::Foam,
            Stage::Topping if pieces => Texture::Pieces,
            _ => Texture::Smooth,
        };
        let part = |value: f64| {
            if self.most > 0.0 {
                value.abs() / self.most
            } else {
                0.0
            }
        };
        Layer {
            line: share.line.clone(),
            name: ingredient.map_or_else(
                || share.ingredient.to_string(),
                |ingredient| name_as_shown(&ingredient.name).into_owned(),
            ),
            role: share.role,
            millilitres,
            lens_part: share.through(self.lens).map(part),
            texture,
        }
    }

    fn of_stage(&self, stage: Stage) -> Vec<Layer> {
        let lines = self.balance.lines.iter().filter(|line| line.stage == stage);
        lines
            .filter_map(|line| Some(self.layer(line, line.millilitres.filter(|ml| *ml > 0.0)?)))
            .collect()
    }

    /// The mixed lines, scaled to the volume that the drink takes. What the others leave is ice and the water of molten ice.
    fn mixed(&self, volume: f64) -> Vec<Layer> {
        let lines: Vec<(&LineShare, f64)> = self
            .balance
            .lines
            .iter()
            .filter(|line| line.stage == Stage::Mixed)
            .filter_map(|line| Some((line, line.millilitres.filter(|ml| *ml > 0.0)?)))
            .collect();
        let is_ice = |line: &LineShare| line.role == Role::Ice;
        let sum = |ice: bool| -> f64 {
            lines
                .iter()
                .filter(|(line, _)| is_ice(line) == ice)
                .map(|(_, millilitres)| millilitres)
                .sum()
        };
        let (liquid, ice) = (sum(false), sum(true));
        // Strained ice stays behind, so its own volume does not count; without ice the lines share what there is.
        let left_for_ice = if ice > 0.0 {
            (volume - liquid).max(0.0)
        } else {
            0.0
        };
        let scale = |part: f64, whole: f64| if whole > 0.0 { part / whole } else { 0.0 };
        let (liquid_scale, ice_scale) = (
            scale(volume - left_for_ice, liquid),
            scale(left_for_ice, ice),
        );
        let mut layers: Vec<Layer> = lines
            .iter()
            .map(|(line, millilitres)| {
                self.layer(
                    line,
                    millilitres
                        * if is_ice(line) {
                            ice_scale
                        } else {
                            liquid_scale
                        },
                )
            })
            .collect();
        // Ice floats.
        layers.sort_by_key(|layer| layer.role == Role::Ice);
        layers
    }

    fn ice_line(&self) -> Option<LineId> {
        self.balance
            .lines
            .iter()
            .find(|line| line.role == Role::Ice)
            .map(|line| line.line.clone())
    }

    fn not_known(&self) -> Vec<String> {
        let lines = self
            .balance
            .lines
            .iter()
            .filter(|line| line.millilitres.is_none());
        lines.map(|line| self.layer(line, 0.0).name).collect()
    }
}
