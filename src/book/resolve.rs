//! From a recipe and a version to plain lines.

use std::collections::BTreeMap;

use super::{
    Change, Entry, Finding, FindingKind, IdKind, Line, LineId, Place, Recipe, Version, VersionId,
    VesselId,
};

/// A version with all its changes carried out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Resolved {
    /// Lines and instructions in order.
    pub entries: Vec<Entry>,
    /// The cup.
    pub cup: Option<VesselId>,
    /// What it is shaken or mixed in before it is poured.
    pub shaker: Option<VesselId>,
    /// Whether the ice stays behind in the shaker.
    pub strained: bool,
    /// Temperature at which it is tasted, °C.
    pub drinking_temperature: Option<f64>,
    /// Price on the menu, sales tax included.
    pub menu_price: Option<f64>,
}

impl Resolved {
    /// The lines in order, without the instructions.
    pub fn lines(&self) -> impl Iterator<Item = &Line> {
        self.entries.iter().filter_map(Entry::line)
    }

    /// The line of this id.
    pub fn line(&self, id: &LineId) -> Option<&Line> {
        self.lines().find(|line| line.id == *id)
    }

    fn position(&self, id: &LineId) -> Option<usize> {
        self.entries.iter().position(|entry| entry.id() == id)
    }

    /// Whether a line or instruction has this id.
    pub fn has_entry(&self, id: &LineId) -> bool {
        self.position(id).is_some()
    }

    /// Carries out changes in order and tells of each whether it had a target.
    pub(super) fn apply_each(&mut self, changes: &[Change]) -> Vec<bool> {
        changes.iter().map(|change| self.apply(change)).collect()
    }

    /// Carries out one change. `false` when its target is gone; nothing has changed then.
    pub fn apply(&mut self, change: &Change) -> bool {
        match change {
            Change::Ingredient(id, to) => self.change_line(id, |line| line.ingredient = to.clone()),
            Change::Amount(id, to) => self.change_line(id, |line| line.amount = to.clone()),
            Change::Temperature(id, to) => self.change_line(id, |line| line.temperature = *to),
            Change::Role(id, to) => self.change_line(id, |line| line.role = *to),
            Change::Stage(id, to) => self.change_line(id, |line| line.stage = *to),
            Change::Carried(id, to) => self.change_line(id, |line| line.carried.clone_from(to)),
            Change::Note(id, to) => self.change_line(id, |line| line.note.clone_from(to)),
            Change::Instruction(id, to) => self.change_instruction(id, to),
            Change::Add(after, entry) => self.add(after.as_ref(), entry),
            Change::Remove(id) => self
                .position(id)
                .map(|at| self.entries.remove(at))
                .is_some(),
            Change::Move(id, after) => self.move_entry(id, after.as_ref()),
            Change::Cup(to) => set(&mut self.cup, Some(to.clone())),
            Change::Shaker(to) => set(&mut self.shaker, to.clone()),
            Change::Strained(to) => set(&mut self.strained, *to),
            Change::DrinkingTemperature(to) => set(&mut self.drinking_temperature, *to),
            Change::MenuPrice(to) => set(&mut self.menu_price, *to),
        }
    }

    fn change_line(&mut self, id: &LineId, change: impl FnOnce(&mut Line)) -> bool {
        let mut lines = self.entries.iter_mut().filter_map(|entry| match entry {
            Entry::Line(line) => Some(line),
            Entry::Instruction(_) => None,
        });
        lines.find(|line| line.id == *id).map(change).is_some()
    }

    fn change_instruction(&mut self, id: &LineId, to: &str) -> bool {
        for entry in &mut self.entries {
            if let Entry::Instruction(instruction) = entry
                && instruction.id == *id
            {
                to.clone_into(&mut instruction.text);
                return true;
            }
        }
        false
    }

    /// Where something behind `after` goes; `None` when `after` is gone.
    fn place_behind(&self, after: Option<&LineId>) -> Option<usize> {
        match after {
            None => Some(0),
            Some(id) => self.position(id).map(|at| at + 1),
        }
    }

    fn add(&mut self, after: Option<&LineId>, entry: &Entry) -> bool {
        match self.place_behind(after) {
            Some(at) if self.position(entry.id()).is_none() => {
                self.entries.insert(at, entry.clone());
                true
            }
            _ => false,
        }
    }

    fn move_entry(&mut self, id: &LineId, after: Option<&LineId>) -> bool {
        if after == Some(id) || self.place_behind(after).is_none() {
            return false;
        }
        let Some(from) = self.position(id) else {
            return false;
        };
        let entry = self.entries.remove(from);
        // The place is looked up again: taking the entry out may have shifted it.
        let to = self.place_behind(after).unwrap_or(self.entries.len());
        self.entries.insert(to, entry);
        true
    }
}

fn set<T>(field: &mut T, to: T) -> bool {
    *field = to;
    true
}

impl Recipe {
    /// The recipe itself, without any version.
    pub fn plain(&self) -> Resolved {
        Resolved {
            entries: self.entries.clone(),
            cup: self.cup.clone(),
            shaker: self.shaker.clone(),
            strained: self.strained,
            drinking_temperature: self.drinking_temperature,
            menu_price: self.menu_price,
        }
    }
}

/// What a version builds on: the lines before its own changes are carried out.
pub(super) fn resolve_base(recipe: &Recipe, version: &VersionId) -> Resolved {
    let mut resolved = recipe.plain();
    let lineage = recipe.lineage(Some(version));
    for (_, version) in versions_of(recipe, &lineage[1..]) {
        if let Some(version) = version {
            resolved.apply_each(&version.changes);
        }
    }
    resolved
}

/// The versions of a lineage, that furthest down first.
fn versions_of<'recipe, 'ids>(
    recipe: &'recipe Recipe,
    lineage: &'ids [Option<VersionId>],
) -> impl Iterator<Item = (&'ids VersionId, Option<&'recipe Version>)> {
    let index: BTreeMap<&VersionId, &Version> = if lineage.len() > FEW {
        let versions = recipe.versions.iter().rev();
        versions.map(|version| (&version.id, version)).collect()
    } else {
        BTreeMap::new()
    };
    let is_indexed = lineage.len() > FEW;
    lineage.iter().rev().flatten().map(move |id| {
        let found = if is_indexed {
            index.get(id).copied()
        } else {
            recipe.version(id)
        };
        (id, found)
    })
}

/// So many versions are looked for one by one; for more an index is made.
const FEW: usize = 8;

/// The plain lines of a version (of the recipe itself for `None`), with a finding for every change whose target is gone
/// and for a version that is missing. Changes of the version furthest down the lineage come first.
pub fn resolve(recipe: &Recipe, version: Option<&VersionId>) -> (Resolved, Vec<Finding>) {
    let mut resolved = recipe.plain();
    let mut findings = Vec::new();
    let lineage = recipe.lineage(version);
    for (id, found) in versions_of(recipe, &lineage) {
        match found {
            Some(version) => findings.extend(recipe.carried_out(&mut resolved, version)),
            None => findings.push(Finding::error(
                Place::Recipe(recipe.id.clone(), "versions"),
                FindingKind::Dangling {
                    kind: IdKind::Version,
                    id: id.to_string(),
                    nearest: Vec::new(),
                },
            )),
        }
    }
    (resolved, findings)
}

impl Change {
    /// The line or instruction that it is about, if it is about one.
    pub fn target(&self) -> Option<&LineId> {
        match self {
            Self::Ingredient(id, _)
            | Self::Amount(id, _)
            | Self::Temperature(id, _)
            | Self::Role(id, _)
            | Self::Stage(id, _)
            | Self::Carried(id, _)
            | Self::Note(id, _)
            | Self::Instruction(id, _)
            | Self::Remove(id)
            | Self::Move(id, _) => Some(id),
            Self::Add(_, entry) => Some(entry.id()),
            Self::Cup(_)
            | Self::Shaker(_)
            | Self::Strained(_)
            | Self::DrinkingTemperature(_)
            | Self::MenuPrice(_) => None,
        }
    }

    /// The line or instruction behind which it puts something.
    pub fn anchor(&self) -> Option<&LineId> {
        match self {
            Self::Add(after, _) | Self::Move(_, after) => after.as_ref(),
            _ => None,
        }
    }

    /// The same change, which puts what it adds or moves behind another line, or at the beginning.
    #[must_use]
    pub(super) fn anchored_behind(self, after: Option<LineId>) -> Self {
        match self {
            Self::Add(_, entry) => Self::Add(after, entry),
            Self::Move(id, _) => Self::Move(id, after),
            other => other,
        }
    }

    /// Whether it changes which lines there are, or their order.
    pub(super) fn is_of_order(&self) -> bool {
        matches!(self, Self::Add(..) | Self::Remove(_) | Self::Move(..))
    }

    /// Whether it says another value of what the other change is about.
    pub(super) fn is_of_same_field(&self, other: &Self) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
            && self.target() == other.target()
    }

    /// What it changes.
    pub fn field(&self) -> ChangedField {
        match self {
            Self::Ingredient(..) => ChangedField::Ingredient,
            Self::Amount(..) => ChangedField::Amount,
            Self::Temperature(..) => ChangedField::Temperature,
            Self::Role(..) => ChangedField::Role,
            Self::Stage(..) => ChangedField::Stage,
            Self::Carried(..) => ChangedField::CarriedSyrup,
            Self::Note(..) => ChangedField::Note,
            Self::Instruction(..) => ChangedField::Instruction,
            Self::Add(..) => ChangedField::AddedLine,
            Self::Remove(..) => ChangedField::RemovedLine,
            Self::Move(..) => ChangedField::Order,
            Self::Cup(_) => ChangedField::Cup,
            Self::Shaker(_) => ChangedField::Shaker,
            Self::Strained(_) => ChangedField::Straining,
            Self::DrinkingTemperature(_) => ChangedField::DrinkingTemperature,
            Self::MenuPrice(_) => ChangedField::MenuPrice,
        }
    }
}

/// What a change of a recipe changes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ChangedField {
    /// The ingredient of a line.
    Ingredient,
    /// The amount of a line.
    Amount,
    /// The temperature of a line.
    Temperature,
    /// The role of a line.
    Role,
    /// Where a line goes in.
    Stage,
    /// The syrup that sticks to what a line adds.
    CarriedSyrup,
    /// The note on a line.
    Note,
    /// The text of an instruction.
    Instruction,
    /// A line that is added.
    AddedLine,
    /// A line that is removed.
    RemovedLine,
    /// The order of the lines.
    Order,
    /// The cup.
    Cup,
    /// The shaker.
    Shaker,
    /// Whether the ice is strained off.
    Straining,
    /// The temperature at which the drink is compared.
    DrinkingTemperature,
    /// The price on the menu.
    MenuPrice,
}
