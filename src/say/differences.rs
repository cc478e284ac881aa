//! How two books, two items or two states of a recipe differ.

use super::{Speaker, say};
use crate::book::{
    Amount, Book, BookDifference, Carried, Change, Differences, Entry, IdKind, IngredientId,
    ItemChange, ItemDetail, ItemDifference, ItemId, LineId, MergeNote, Side, Temperature, VesselId,
};
use crate::quantity::excerpt;

/// Longest note, instruction or name of an ingredient that is repeated, in characters.
const TEXT: usize = 80;

/// Longest name of an item, in characters.
const NAME: usize = 40;

/// How many names are told before the rest is counted.
const NAMED: usize = 3;

/// How many lines of a version are told before the rest is counted.
const LINES: usize = 4;

impl Speaker<'_> {
    /// "2 recipes changed (Pear Drift, Snowgate), 1 ingredient added (Plum syrup)".
    pub fn book_difference(&self, difference: &BookDifference) -> String {
        if difference.is_empty() {
            return self.word("difference-none").to_owned();
        }
        let mut parts = Vec::new();
        let mut rest = difference.items.as_slice();
        while let Some(first) = rest.first() {
            let kind = std::mem::discriminant(&first.item);
            let is_of_kind = |item: &ItemDifference| std::mem::discriminant(&item.item) == kind;
            let of_kind = rest.iter().take_while(|item| is_of_kind(item)).count();
            let (group, others) = rest.split_at(of_kind);
            for change in [ItemChange::Changed, ItemChange::Added, ItemChange::Removed] {
                parts.extend(self.group(group, change));
            }
            rest = others;
        }
        let reordered = difference.reordered.iter();
        parts.extend(reordered.map(|kind| self.another_order(*kind)));
        parts.join(", ")
    }

    /// Items of a kind that stand in another order.
    pub fn another_order(&self, kind: IdKind) -> String {
        say!(self, "difference-order", kind: kind.key())
    }

    fn group(&self, group: &[ItemDifference], change: ItemChange) -> Option<String> {
        let of_change = || group.iter().filter(move |item| item.change == change);
        let first = of_change().next()?;
        let count = of_change().count();
        let mut names: Vec<String> = of_change()
            .take(NAMED)
            .map(|item| excerpt(&item.name, NAME))
            .collect();
        if count > NAMED {
            names.push(say!(self, "difference-more-names", count: count - NAMED));
        }
        let (names, change) = (names.join(", "), change.word());
        Some(match &first.item {
            ItemId::Settings => self.word("difference-settings").to_owned(),
            ItemId::Ingredient(_) => {
                say!(self, "difference-ingredients", count: count, change: change, names: names)
            }
            ItemId::Measure(_) => {
                say!(self, "difference-measures", count: count, change: change, names: names)
            }
            ItemId::Vessel(_) => {
                say!(self, "difference-vessels", count: count, change: change, names: names)
            }
            ItemId::Recipe(_) => {
                say!(self, "difference-recipes", count: count, change: change, names: names)
            }
            ItemId::Tasting(_) => {
                say!(self, "difference-tastings", count: count, change: change, names: names)
            }
        })
    }

    /// What is otherwise inside an item than in another book, a clause each: all of it, or what some of its fields tell.
    pub fn item_changes(&self, before: &Book, item: &ItemId, fields: &[&str]) -> Vec<String> {
        let mut details = Book::item_differences(before, self.book, item);
        details.retain(|detail| fields.is_empty() || detail.is_of(fields));
        let clauses = details.iter().flat_map(|detail| match detail {
            ItemDetail::Lines(lines) => self.differences(lines),
            ItemDetail::Field(field) => self.field_changes(before, item, field),
            other => vec![self.item_detail(other)],
        });
        clauses.collect()
    }

    fn item_detail(&self, detail: &ItemDetail) -> String {
        match detail {
            ItemDetail::Field(field) => self.item_field(field).to_owned(),
            ItemDetail::Name { before, after } => say!(
                self,
                "detail-name",
                after: excerpt(after, NAME),
                before: excerpt(before, NAME),
            ),
            ItemDetail::State { before, after } => {
                say!(self, "detail-state", after: self.state(*after), before: self.state(*before))
            }
            ItemDetail::Lines(lines) => self.differences(lines).join("; "),
            ItemDetail::VersionAdded { name, lines } => {
                let name = excerpt(name, NAME);
                match self.first_lines(lines.as_deref()) {
                    None => say!(self, "detail-version-added", name: name),
                    Some(lines) => {
                        say!(self, "detail-version-added-with", name: name, lines: lines)
                    }
                }
            }
            ItemDetail::VersionChanged {
                name,
                fields,
                lines,
            } => {
                let name = excerpt(name, NAME);
                let fields = self.item_fields(fields).join(", ");
                match self.first_lines(lines.as_deref()) {
                    None => say!(self, "detail-version-changed", name: name, fields: fields),
                    Some(lines) => say!(
                        self,
                        "detail-version-changed-with",
                        name: name,
                        fields: fields,
                        lines: lines,
                    ),
                }
            }
            ItemDetail::VersionRemoved { name } => {
                say!(self, "detail-version-removed", name: excerpt(name, NAME))
            }
            ItemDetail::Approvals { before, after } => {
                say!(self, "detail-approvals", after: *after, before: *before)
            }
        }
    }

    /// The names of fields, by their names in the file.
    pub fn item_fields(&self, fields: &[&str]) -> Vec<&'static str> {
        fields.iter().map(|field| self.item_field(field)).collect()
    }

    /// What a merge did beside taking from either side what was changed.
    pub fn merge_note(&self, note: &MergeNote) -> String {
        let named = |name: &str| excerpt(name, NAME);
        match note {
            MergeNote::Kept {
                name,
                removed_by,
                needed_by_name,
                ..
            } => {
                let (name, by) = (named(name), named(needed_by_name));
                match removed_by {
                    Side::Mine => say!(self, "merge-kept-here", name: name, by: by),
                    Side::Theirs => say!(self, "merge-kept-in-file", name: name, by: by),
                }
            }
            MergeNote::TakenWhole { items, taken } => {
                let names: Vec<String> = items.iter().map(|(_, name)| named(name)).collect();
                let names = self.and(&names);
                match taken {
                    Side::Mine => say!(self, "merge-whole-here", names: names),
                    Side::Theirs => say!(self, "merge-whole-in-file", names: names),
                }
            }
        }
    }

    /// The name of a field, by its name in the file.
    pub(super) fn item_field(&self, field: &str) -> &'static str {
        self.word(&format!("item-field-{}", field.replace('_', "-")))
    }

    fn first_lines(&self, lines: Option<&Differences>) -> Option<String> {
        let mut clauses = self.differences(lines.filter(|lines| !lines.is_empty())?);
        let more = clauses.len().saturating_sub(LINES);
        clauses.truncate(LINES);
        if more > 0 {
            clauses.push(say!(self, "detail-more-lines", count: more));
        }
        Some(clauses.join("; "))
    }

    /// What leads from one state of a recipe to another, a clause for each change.
    pub fn differences(&self, differences: &Differences) -> Vec<String> {
        let changes = differences.changes.iter();
        let mut clauses: Vec<String> = changes
            .map(|change| self.changed(differences, change))
            .collect();
        if differences.cup_taken_away {
            let before = self.vessel_or_none(differences.before.cup.as_ref());
            clauses.push(say!(self, "recipe-no-cup", before: before));
        }
        clauses
    }

    fn changed(&self, of: &Differences, change: &Change) -> String {
        match change {
            Change::Ingredient(id, to) => {
                let before = of.before.line(id);
                say!(
                    self,
                    "line-ingredient",
                    after: self.short_ingredient(to),
                    before: before.map_or_else(String::new, |line| self.short_ingredient(&line.ingredient)),
                )
            }
            Change::Instruction(id, to) => say!(
                self,
                "line-instruction",
                after: excerpt(to, TEXT),
                before: instruction(of, id),
            ),
            Change::Add(behind, entry) => self.added(of, behind.as_ref(), entry),
            Change::Remove(id) => match of.before.line(id) {
                Some(line) => say!(
                    self,
                    "line-removed",
                    ingredient: self.short_ingredient(&line.ingredient),
                    amount: self.line_amount(&line.amount),
                ),
                None => say!(self, "line-instruction-removed", text: instruction(of, id)),
            },
            Change::Move(id, None) => {
                say!(self, "line-moved-first", line: self.line_name(of, id))
            }
            Change::Move(id, Some(behind)) => say!(
                self,
                "line-moved",
                line: self.line_name(of, id),
                place: self.line_name(of, behind),
            ),
            Change::Cup(to) => say!(
                self,
                "recipe-cup",
                after: self.vessel_or_none(Some(to)),
                before: self.vessel_or_none(of.before.cup.as_ref()),
            ),
            Change::Shaker(to) => say!(
                self,
                "recipe-shaker",
                after: self.vessel_or_none(to.as_ref()),
                before: self.vessel_or_none(of.before.shaker.as_ref()),
            ),
            Change::Strained(true) => self.word("recipe-strained").to_owned(),
            Change::Strained(false) => self.word("recipe-not-strained").to_owned(),
            Change::DrinkingTemperature(to) => {
                let said =
                    |celsius| self.celsius_or(celsius, "recipe-drinking-temperature-of-shop");
                say!(
                    self,
                    "recipe-drinking-temperature",
                    after: said(*to),
                    before: said(of.before.drinking_temperature),
                )
            }
            Change::SugarLevel(to) => {
                let said = |percent: Option<f64>| self.in_unit(percent.unwrap_or(100.0), "%", 0);
                say!(self, "recipe-sugar-level", after: said(*to), before: said(of.before.sugar_level))
            }
            Change::MenuPrice(to) => {
                let said = |price: Option<f64>| match price {
                    None => self.word("line-nothing").to_owned(),
                    Some(price) => {
                        format!("{} {}", self.book.settings.currency, self.number(price, 2))
                    }
                };
                say!(
                    self,
                    "recipe-menu-price",
                    after: said(*to),
                    before: said(of.before.menu_price),
                )
            }
            Change::Amount(id, _)
            | Change::Temperature(id, _)
            | Change::Role(id, _)
            | Change::Stage(id, _)
            | Change::Carried(id, _)
            | Change::Note(id, _) => self.changed_line(of, id, change),
        }
    }

    fn added(&self, of: &Differences, behind: Option<&LineId>, entry: &Entry) -> String {
        let place = behind.map(|id| self.line_name(of, id));
        match (entry, place) {
            (Entry::Line(line), place) => {
                let ingredient = self.short_ingredient(&line.ingredient);
                let amount = self.line_amount(&line.amount);
                match place {
                    None => {
                        say!(self, "line-added-first", ingredient: ingredient, amount: amount)
                    }
                    Some(place) => say!(
                        self,
                        "line-added",
                        ingredient: ingredient,
                        amount: amount,
                        place: place,
                    ),
                }
            }
            (Entry::Instruction(added), None) => {
                say!(self, "line-instruction-added-first", text: excerpt(&added.text, TEXT))
            }
            (Entry::Instruction(added), Some(place)) => say!(
                self,
                "line-instruction-added",
                text: excerpt(&added.text, TEXT),
                place: place,
            ),
        }
    }

    /// A change of one field of a line.
    fn changed_line(&self, of: &Differences, id: &LineId, change: &Change) -> String {
        let line = self.line_name(of, id);
        let Some(before) = of.before.line(id) else {
            return line;
        };
        match change {
            Change::Amount(_, to) => say!(
                self,
                "line-amount",
                line: line,
                after: self.line_amount(to),
                before: self.line_amount(&before.amount),
            ),
            Change::Temperature(_, to) => say!(
                self,
                "line-temperature",
                line: line,
                after: self.stated_or(*to, "line-as-stored"),
                before: self.stated_or(before.temperature, "line-as-stored"),
            ),
            Change::Role(_, to) => {
                say!(self, "line-role", line: line, after: self.role(*to), before: self.role(before.role))
            }
            Change::Stage(_, to) => {
                say!(self, "line-stage", line: line, after: self.stage(*to), before: self.stage(before.stage))
            }
            Change::Carried(_, to) => say!(
                self,
                "line-carried",
                line: line,
                after: self.carried(to.as_ref()),
                before: self.carried(before.carried.as_ref()),
            ),
            Change::Note(_, to) => say!(
                self,
                "line-note",
                line: line,
                after: self.note(to),
                before: self.note(&before.note),
            ),
            _ => line,
        }
    }

    /// The ingredient of a line as it is in the second state, or its instruction.
    fn line_name(&self, of: &Differences, id: &LineId) -> String {
        match of.line(id) {
            Some(line) => self.short_ingredient(&line.ingredient),
            None => say!(self, "line-named-instruction", text: instruction(of, id)),
        }
    }

    fn line_amount(&self, amount: &Amount) -> String {
        self.amount(amount)
    }

    fn short_ingredient(&self, id: &IngredientId) -> String {
        excerpt(&self.ingredient(id), TEXT)
    }

    fn vessel_or_none(&self, id: Option<&VesselId>) -> String {
        match id {
            None => self.word("line-nothing").to_owned(),
            Some(id) => excerpt(&self.vessel(id), TEXT),
        }
    }

    fn celsius_or(&self, celsius: Option<f64>, word: &str) -> String {
        match celsius {
            None => self.word(word).to_owned(),
            Some(celsius) => self.temperature(celsius, 1),
        }
    }

    fn stated_or(&self, stated: Option<Temperature>, word: &str) -> String {
        match stated {
            None => self.word(word).to_owned(),
            Some(stated) => self.stated_temperature(stated, 1),
        }
    }

    fn carried(&self, carried: Option<&Carried>) -> String {
        match carried {
            None => self.word("line-carried-nothing").to_owned(),
            Some(carried) => say!(
                self,
                "line-carried-syrup",
                amount: self.line_amount(&Amount::Grams(carried.grams)),
                ingredient: self.short_ingredient(&carried.ingredient),
            ),
        }
    }

    /// A text of a person, or that there is none.
    pub(super) fn note(&self, note: &str) -> String {
        if note.is_empty() {
            self.word("line-nothing").to_owned()
        } else {
            say!(self, "line-note-text", text: excerpt(note, TEXT))
        }
    }
}

fn instruction(of: &Differences, id: &LineId) -> String {
    excerpt(of.instruction(id).unwrap_or_default(), TEXT)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Line, Resolved, Role, Stage, differences_between};
    use crate::quantity::{DisplayUnits, TemperatureUnit};
    use crate::say::Language;

    fn line(id: &str, grams: f64) -> Entry {
        Entry::Line(Line {
            id: LineId::new(id).unwrap(),
            ingredient: IngredientId::new(id).unwrap(),
            amount: Amount::Grams(grams),
            temperature: None,
            role: Role::Water,
            stage: Stage::Mixed,
            carried: None,
            note: String::new(),
        })
    }

    #[test]
    fn every_field_of_every_item_has_a_name() {
        use crate::book::Settings;
        let changed = Settings {
            shop: "Harrowmere".into(),
            room_temperature: 30.0.into(),
            sales_tax_percent: Some(7.5),
            ..Settings::default()
        };
        let with_changed = Book {
            settings: changed,
            ..Book::default()
        };
        let changes = |speaker: Speaker<'_>| {
            let speaker = speaker.about(&with_changed);
            speaker.item_changes(&Book::default(), &ItemId::Settings, &[])
        };
        assert_eq!(
            changes(Speaker::without_book()),
            [
                "name of the shop: “Harrowmere” instead of none",
                "room temperature: 30\u{a0}°C instead of 22\u{a0}°C",
                "sales tax: 7.5\u{a0}% instead of not stated",
            ]
        );
        let fahrenheit = DisplayUnits {
            temperature: TemperatureUnit::Fahrenheit,
            ..DisplayUnits::METRIC
        };
        let german = Speaker::without_book()
            .in_units(fahrenheit)
            .in_language(Language::from_code("de").unwrap());
        assert_eq!(
            changes(german)[1..],
            [
                "Raumtemperatur: 86\u{a0}°F, vorher 71,6\u{a0}°F",
                "Umsatzsteuer: 7,5\u{a0}%, vorher nicht angegeben",
            ]
        );
        // Those of the file are the fields that can differ; the speaker stops at one without a name.
        let source = include_str!("../book/field_differences.rs");
        let lists = ["fields!(", "differing!("].into_iter();
        let lists = lists.flat_map(|opening| source.split(opening).skip(1));
        let mut count = 0;
        for list in lists.filter_map(|list| list.split_once('{')?.1.split_once('}')) {
            let is_around = |c: char| c.is_whitespace() || c == '[' || c == ']';
            for field in list.0.split(',').map(|field| field.trim_matches(is_around)) {
                let is_name =
                    !field.is_empty() && field.chars().all(|c| c.is_ascii_lowercase() || c == '_');
                if is_name {
                    assert!(
                        !Speaker::without_book().item_field(field).is_empty(),
                        "{field}"
                    );
                    count += 1;
                }
            }
        }
        assert!(count > 60, "{count}");
    }

    #[test]
    fn a_change_is_told_with_what_was_before() {
        let state = |entries: Vec<Entry>| Resolved {
            entries,
            ..Resolved::default()
        };
        let before = state(vec![line("a", 1.0), line("b", 1.0)]);
        let after = state(vec![line("b", 1.0), line("a", 2.5), line("c", 3.0)]);
        let book = Book::default();
        let speaker = Speaker::new(&book);
        assert_eq!(
            speaker.differences(&differences_between(&before, &after)),
            [
                "a: 2½ g instead of 1 g",
                "b moved to the beginning",
                "c, 3 g, added after a"
            ]
        );
        let back = differences_between(&after, &before);
        assert!(
            speaker
                .differences(&back)
                .contains(&"c removed (3 g)".to_owned())
        );
    }
}
