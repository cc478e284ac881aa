//! The plain lines of a version, and how a change is carried out on them.

use super::{Change, Entry, Line, LineId, VesselId};

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
    /// The part of the added sweetness that it is made with, percent of what guests get who ask for nothing; all of it when none
    /// is stated.
    pub sugar_level: Option<f64>,
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
            Change::SugarLevel(to) => set(&mut self.sugar_level, *to),
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

pub(super) fn set<T>(field: &mut T, to: T) -> bool {
    *field = to;
    true
}
