//! How drinks differ in taste, and amounts as the counter says them.

use super::{Argument, Speaker, say};
use crate::balance::{AxisDifference, CautionKind, Measurand, Taste};
use crate::book::{Axis, Role};

impl Speaker<'_> {
    /// What an axis of taste is called; a flavour has the name that the shop gave it.
    pub fn axis(&self, axis: &Axis) -> String {
        let measurand = match axis {
            Axis::Flavour(name) => return self.shop_word(name).to_owned(),
            Axis::Temperature => return self.word("axis-temperature").to_owned(),
            Axis::Sweetness => Measurand::Sweetness,
            Axis::TeaStrength => Measurand::TeaStrength,
            Axis::Creaminess => Measurand::Creaminess,
            Axis::Acidity => Measurand::Acidity,
            Axis::Body => Measurand::Body,
            Axis::Volume => Measurand::Volume,
        };
        self.measurand(measurand).to_owned()
    }

    /// "sweeter", "more chestnut".
    pub fn more(&self, axis: &Axis) -> String {
        let message = match axis {
            Axis::Flavour(name) => {
                return say!(self, "axis-flavour-more", flavour: self.shop_word(name));
            }
            Axis::Sweetness => "axis-sweetness-more",
            Axis::TeaStrength => "axis-tea-strength-more",
            Axis::Creaminess => "axis-creaminess-more",
            Axis::Acidity => "axis-acidity-more",
            Axis::Body => "axis-body-more",
            Axis::Temperature => "axis-temperature-more",
            Axis::Volume => "axis-volume-more",
        };
        self.word(message).to_owned()
    }

    /// "less sweet", "less chestnut".
    pub fn less(&self, axis: &Axis) -> String {
        let message = match axis {
            Axis::Flavour(name) => {
                return say!(self, "axis-flavour-less", flavour: self.shop_word(name));
            }
            Axis::Sweetness => "axis-sweetness-less",
            Axis::TeaStrength => "axis-tea-strength-less",
            Axis::Creaminess => "axis-creaminess-less",
            Axis::Acidity => "axis-acidity-less",
            Axis::Body => "axis-body-less",
            Axis::Temperature => "axis-temperature-less",
            Axis::Volume => "axis-volume-less",
        };
        self.word(message).to_owned()
    }

    /// "sweeter by 1.9 steps", for a change that is more than nothing.
    pub fn axis_change(&self, axis: &Axis, steps: f64) -> String {
        let change = self.comparative(axis, steps);
        let tens = if decimals_of_steps(steps) == 2 {
            100.0
        } else {
            10.0
        };
        let count = Argument::Count((tens * steps.abs()).round() / tens);
        say!(self, "axis-changes", change: change, count: count, steps: self.steps(steps))
    }

    /// "sweeter" or "less sweet", by the sign.
    pub(super) fn comparative(&self, axis: &Axis, steps: f64) -> String {
        if steps > 0.0 {
            self.more(axis)
        } else {
            self.less(axis)
        }
    }

    /// "sweeter by 1.9 steps", "the same", "not known": how a drink is against its standard, by the band of one step.
    pub fn against_standard(&self, difference: &AxisDifference) -> String {
        match difference.taste().zip(difference.steps) {
            None => self.word("axis-not-known").to_owned(),
            Some((Taste::Same, _)) => self.word("axis-same").to_owned(),
            Some((_, steps)) => self.axis_change(&difference.axis, steps),
        }
    }

    /// "less sweet", "the same", "sweeter".
    pub fn taste(&self, taste: Taste, axis: &Axis) -> String {
        match taste {
            Taste::Less => self.less(axis),
            Taste::Same => self.word("axis-same").to_owned(),
            Taste::More => self.more(axis),
        }
    }

    /// The size of a difference with one decimal; with two just beyond a step, so that nothing off the level reads as "1.0".
    pub fn steps(&self, steps: f64) -> String {
        self.number(steps.abs(), decimals_of_steps(steps))
    }

    /// What a caution is about.
    pub fn caution_kind(&self, kind: CautionKind) -> &'static str {
        self.word(match kind {
            CautionKind::Heat => "caution-kind-heat",
            CautionKind::Allergen => "caution-kind-allergen",
            CautionKind::Choking => "caution-kind-choking",
            CautionKind::Curdling => "caution-kind-curdling",
            CautionKind::Caffeine => "caution-kind-caffeine",
            CautionKind::Additive => "caution-kind-additive",
            CautionKind::Holding => "caution-kind-holding",
            CautionKind::Undissolved => "caution-kind-undissolved",
            CautionKind::Fill => "caution-kind-fill",
            CautionKind::Unknown => "caution-kind-unknown",
        })
    }

    /// What an ingredient is for in a drink.
    pub fn role(&self, role: Role) -> &'static str {
        self.word(match role {
            Role::Base => "role-base",
            Role::Flavour => "role-flavour",
            Role::Creamer => "role-creamer",
            Role::Sweetener => "role-sweetener",
            Role::Tea => "role-tea",
            Role::Water => "role-water",
            Role::Ice => "role-ice",
            Role::Topping => "role-topping",
            Role::Garnish => "role-garnish",
        })
    }
}

fn decimals_of_steps(steps: f64) -> usize {
    let size = steps.abs();
    if size > 1.0 && size < 1.05 { 2 } else { 1 }
}
