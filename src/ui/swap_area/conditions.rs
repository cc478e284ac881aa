//! What is asked beside the swap: which lines may move and how far, and what the drink must keep.

use egui::{Button, Checkbox, Label, RichText, Ui};

use super::limits;
use super::state::{SwapState, Way};
use crate::book::{Allergen, TemperatureWindow};
use crate::edit::{FieldName, Focus, Which};
use crate::quantity::{DisplayUnits, ShownUnit, show_compact, show_editable};
use crate::say::{Speaker, say};
use crate::swap::{Answer, Demands};
use crate::ui::Screen;
use crate::ui::glossary::Term;
use crate::ui::icons::{self, Icon};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::{NumberRow, label_width};
use crate::ui::words::capitalised;
use crate::workbench::Action;

/// From this width on lines and demands stand side by side, in points.
const SIDE_BY_SIDE: f32 = 215.0 * grid::STEP;
/// Width of the lines, in points.
const LINES: f32 = 122.0 * grid::STEP;
/// The conditions in one line, or open.
pub(super) fn conditions_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: Option<&Answer>,
    state: &mut SwapState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let is_open = state.conditions_open;
    let of_one_recipe = state.way != Way::Everywhere;
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let (icon, words) = if is_open {
            (Icon::ChevronDown, "swap-screen-conditions-hide")
        } else {
            (Icon::ChevronRight, "swap-screen-conditions-show")
        };
        let words = screen.speaker.word(words);
        if icons::icon_button(ui, icon, words, words).clicked() {
            state.conditions_open = !is_open;
        }
        let summary = summary(screen.speaker, answer, &state.asked.demands);
        ui.vertical(|ui| {
            ui.add_space(grid::TIGHT);
            ui.add(Label::new(RichText::new(summary).color(palette.text_quiet)).wrap());
        });
    });
    if !is_open {
        return;
    }
    ui.add_space(grid::TIGHT);
    if !of_one_recipe {
        demands_ui(ui, screen, &mut state.asked.demands, drafts, actions);
    } else if ui.available_width() >= SIDE_BY_SIDE {
        ui.horizontal_top(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            ui.vertical(|ui| {
                ui.set_width(LINES);
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                limits::limits_ui(
                    ui,
                    screen,
                    answer,
                    &mut state.asked.demands,
                    drafts,
                    actions,
                );
            });
            ui.vertical(|ui| {
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                demands_ui(ui, screen, &mut state.asked.demands, drafts, actions);
            });
        });
    } else {
        limits::limits_ui(
            ui,
            screen,
            answer,
            &mut state.asked.demands,
            drafts,
            actions,
        );
        ui.add_space(grid::NEAR);
        demands_ui(ui, screen, &mut state.asked.demands, drafts, actions);
    }
    let clear = screen.speaker.word("swap-screen-conditions-clear");
    if state.asked.demands != usual(&state.asked.demands) && ui.button(clear).clicked() {
        state.asked.demands = usual(&state.asked.demands);
        drafts.clear();
    }
    ui.add_space(grid::NEAR);
}

/// No conditions; the pairs that are swapped stay.
fn usual(demands: &Demands) -> Demands {
    Demands {
        also: demands.also.clone(),
        ..Demands::default()
    }
}

/// "may change: milk, water · conditions: vegan, at most 5 g of sugar per 100 ml".
fn summary(speaker: Speaker<'_>, answer: Option<&Answer>, demands: &Demands) -> String {
    let adjustable = answer.iter().flat_map(|answer| &answer.adjustable);
    let lines: Vec<String> = adjustable
        .map(|adjustable| speaker.ingredient(&adjustable.line.ingredient))
        .collect();
    let (lines, conditions) = (lines.join(", "), conditions(speaker, demands).join(", "));
    match (lines.is_empty(), conditions.is_empty()) {
        (true, true) => speaker.word("swap-screen-summary-nothing").to_owned(),
        (true, false) => say!(speaker, "swap-screen-summary-no-lines", conditions: conditions),
        (false, true) => say!(speaker, "swap-screen-summary-no-conditions", lines: lines),
        (false, false) => {
            say!(speaker, "swap-screen-summary", lines: lines, conditions: conditions)
        }
    }
}

/// What the drink must keep, each condition by itself.
fn conditions(speaker: Speaker<'_>, demands: &Demands) -> Vec<String> {
    let vegan = speaker.word("swap-screen-condition-vegan");
    let mut words: Vec<String> = Vec::new();
    words.extend(demands.keep_vegan.then(|| vegan.to_owned()));
    words.extend(demands.without.iter().map(|allergen| {
        let allergen = speaker.allergen(*allergen);
        say!(speaker, "swap-screen-condition-without", allergen: allergen)
    }));
    let figure = |value: f64, unit: &str| {
        let digits = speaker.digits(&show_compact(value));
        format!("{digits}\u{a0}{unit}")
    };
    words.extend(
        demands
            .most_sugar_per_100_ml
            .map(|most| say!(speaker, "swap-screen-condition-sugar", most: figure(most, "g"))),
    );
    words.extend(
        demands
            .most_energy_kj
            .map(|most| say!(speaker, "swap-screen-condition-energy", most: figure(most, "kJ"))),
    );
    words.extend(demands.most_cost.map(|most| {
        let most = figure(most, &speaker.book.settings.currency);
        say!(speaker, "swap-screen-condition-cost", most: most)
    }));
    words.extend(
        demands
            .most_fill
            .map(|most| say!(speaker, "swap-screen-condition-fill", most: figure(most, "%"))),
    );
    words.extend(demands.temperature.map(|window| {
        let from = speaker.units.of("°C").trimmed(window.from, 1);
        let (from, to) = (speaker.digits(&from), speaker.trimmed(window.to, "°C", 1));
        say!(speaker, "swap-screen-condition-served", from: from, to: to)
    }));
    let lines = demands.locked.len() + demands.limits.len();
    words.extend((lines > 0).then(|| say!(speaker, "swap-screen-condition-lines", count: lines)));
    words
}

fn demands_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    demands: &mut Demands,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let heading = RichText::new(speaker.word("swap-screen-must"));
    ui.label(heading.color(palette.text_quiet));
    let vegan = speaker.word("swap-screen-must-vegan");
    ui.add(Checkbox::new(&mut demands.keep_vegan, vegan));
    without_ui(ui, screen, demands);
    let currency = screen.book.settings.currency.clone();
    let caps: [(&'static str, &str, &str, &mut Option<f64>, f64); 4] = [
        (
            "sugar",
            speaker.word("swap-screen-most-sugar"),
            "g",
            &mut demands.most_sugar_per_100_ml,
            100.0,
        ),
        (
            "energy",
            speaker.word("swap-screen-most-energy"),
            "kJ",
            &mut demands.most_energy_kj,
            100_000.0,
        ),
        (
            "cost",
            speaker.word("swap-screen-most-cost"),
            &currency,
            &mut demands.most_cost,
            100_000.0,
        ),
        (
            "fill",
            speaker.word("swap-screen-most-fill"),
            "%",
            &mut demands.most_fill,
            100.0,
        ),
    ];
    let metric = DisplayUnits::METRIC;
    let words = caps.iter().map(|(_, words, ..)| *words);
    let served = ["swap-screen-served-least", "swap-screen-served-most"];
    let words_width = label_width(ui, words.chain(served.map(|words| speaker.word(words))));
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        for (name, words, unit, cap, most) in caps {
            let asked = Capped {
                focus: demand_focus(screen, name),
                words,
                words_width,
                term: None,
                unit: metric.of(unit),
                range: (0.0, most),
            };
            asked.ui(ui, speaker, cap, drafts, actions);
        }
        let temperature = &mut demands.temperature;
        temperature_ui(ui, screen, words_width, temperature, drafts, actions);
    });
}

/// The field of something that the drink must keep.
fn demand_focus(screen: &Screen<'_>, name: &'static str) -> Focus {
    let which = Which::Recipe(screen.recipe.id.clone());
    Focus::Question(FieldName::of(name, which))
}

/// The two rows of the serving temperature.
fn temperature_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    words_width: f32,
    temperature: &mut Option<TemperatureWindow>,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    let settings = &screen.book.settings;
    let unit = screen.speaker.units.of("°C");
    let shop = if screen.balance.iced {
        settings.iced_window
    } else {
        settings.hot_window
    };
    let mut from = temperature.map(|window| window.from);
    let mut to = temperature.map(|window| window.to);
    for (end, words, value) in [
        ("served-from", "swap-screen-served-least", &mut from),
        ("served-to", "swap-screen-served-most", &mut to),
    ] {
        let asked = Capped {
            focus: demand_focus(screen, end),
            words: speaker.word(words),
            words_width,
            term: Some(Term::ServingWindow),
            unit,
            range: (-20.0, 120.0),
        };
        asked.ui(ui, speaker, value, drafts, actions);
    }
    *temperature = match (from, to) {
        (None, None) => None,
        (from, to) => Some(TemperatureWindow {
            from: from.unwrap_or(shop.from),
            to: to.unwrap_or(shop.to),
        }),
    };
}

/// The allergens that no ingredient may contain: those of the drink first, the others in a menu.
fn without_ui(ui: &mut Ui, screen: &Screen<'_>, demands: &mut Demands) {
    let set = |demands: &mut Demands, allergen: Allergen, wanted: bool| {
        demands.without.retain(|other| *other != allergen);
        if wanted {
            demands.without.push(allergen);
        }
    };
    let speaker = screen.speaker;
    ui.horizontal_wrapped(|ui| {
        ui.label(speaker.word("swap-screen-must-without"));
        let of_drink = &screen.balance.allergens.contains;
        let listed = screen.book.settings.listed_allergens();
        for allergen in Allergen::ALL {
            let is_asked = demands.without.contains(&allergen);
            if !is_asked && !of_drink.contains(&allergen) {
                continue;
            }
            let mut wanted = is_asked;
            let checkbox = Checkbox::new(&mut wanted, speaker.allergen(allergen));
            if ui.add(checkbox).changed() {
                set(demands, allergen, wanted);
            }
        }
        let menu = egui::containers::menu::MenuButton::from_button(Button::new(
            speaker.word("swap-screen-allergens"),
        ));
        menu.ui(ui, |ui| {
            for allergen in listed {
                let mut wanted = demands.without.contains(&allergen);
                let name = speaker.allergen(allergen);
                let name = say!(speaker, "swap-screen-condition-without", allergen: name);
                if ui.add(Checkbox::new(&mut wanted, name)).changed() {
                    set(demands, allergen, wanted);
                }
            }
        });
    });
}

/// A number that may be left empty.
struct Capped<'capped> {
    focus: Focus,
    words: &'capped str,
    words_width: f32,
    term: Option<Term>,
    unit: ShownUnit<'capped>,
    /// What it can be.
    range: (f64, f64),
}

impl Capped<'_> {
    fn ui(
        self,
        ui: &mut Ui,
        speaker: Speaker<'_>,
        value: &mut Option<f64>,
        drafts: &mut Drafts,
        actions: &mut Vec<Action>,
    ) {
        let (unit, range) = (self.unit, self.range);
        let row = NumberRow {
            focus: self.focus,
            words: self.words,
            words_width: self.words_width,
            term: self.term,
            name: &capitalised(self.words),
            shown: value.map_or_else(String::new, |value| show_in(unit, value)),
            hint: speaker.word("swap-screen-any"),
            unit: unit.symbol,
        };
        let read = |text: &str| read_number(speaker, text, unit, range);
        if let Some(asked) = row.ask_ui(ui, drafts, actions, read) {
            *value = asked;
        }
    }
}

/// A figure with as few digits as it needs.
fn show_in(unit: ShownUnit<'_>, value: f64) -> String {
    if unit.is_metric() {
        show_editable(value, 4)
    } else {
        unit.trimmed(value, 1)
    }
}

/// Reads a number within a range; `None` for an empty text.
fn read_number(
    speaker: Speaker<'_>,
    text: &str,
    unit: ShownUnit<'_>,
    (from, to): (f64, f64),
) -> Result<Option<f64>, String> {
    let text = text.trim();
    if text.is_empty() {
        return Ok(None);
    }
    let found = unit
        .read(text)
        .map_err(|error| speaker.number_error(&error))?;
    if (from..=to).contains(&found) {
        return Ok(Some(found));
    }
    let [found, from, to] = [found, from, to].map(|value| speaker.digits(&show_in(unit, value)));
    Err(say!(speaker, "swap-screen-out-of-range", found: found, from: from, to: to))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_empty_field_asks_for_nothing_and_nonsense_says_what_is_expected() {
        let speaker = Speaker::without_book();
        assert_eq!(
            read_number(speaker, "  ", DisplayUnits::METRIC.of(""), (0.0, 100.0)),
            Ok(None)
        );
        assert_eq!(
            read_number(speaker, "5,5", DisplayUnits::METRIC.of(""), (0.0, 100.0)),
            Ok(Some(5.5))
        );
        assert_eq!(
            read_number(
                speaker,
                "5500 mg",
                DisplayUnits::METRIC.of("g"),
                (0.0, 100.0)
            ),
            Ok(Some(5.5))
        );
        let error =
            read_number(speaker, "-3", DisplayUnits::METRIC.of(""), (0.0, 100.0)).unwrap_err();
        assert!(error.contains("enter 0 to 100"), "{error}");
        assert!(read_number(speaker, "little", DisplayUnits::METRIC.of(""), (0.0, 100.0)).is_err());
    }
}
