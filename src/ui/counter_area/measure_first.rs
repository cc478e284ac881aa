//! What to measure first: what narrows the drinks of the book most, with the way to the form where it is entered.

use egui::{Label, RichText, ScrollArea, Ui};

use super::item::CounterItem;
use super::state::CounterState;
use crate::balance::{Cause, Doubtful, ToMeasure};
use crate::edit::{FieldName, Focus, Which};
use crate::say::{Speaker, say};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::widgets::form::{section_ui, wrapped_link_ui};
use crate::ui::words::{capitalised, quiet_ui};
use crate::workbench::MeasureFirst;

/// Most rows: who has done these has other drinks by then.
const MOST: usize = 10;

pub(super) fn measure_first_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    state: &mut CounterState,
    view: &mut ViewState,
) {
    let look = state.measure_first.clone();
    section_ui(ui, speaker.word("measure-first"));
    let Some(first) = look.found else {
        quiet_ui(ui, speaker.word("measure-first-looking"));
        return;
    };
    quiet_ui(ui, &about(speaker, &first));
    ui.add_space(grid::TIGHT);
    ScrollArea::vertical()
        .id_salt("measure first")
        .auto_shrink(false)
        .show(ui, |ui| {
            for found in first.found.iter().take(MOST) {
                if row_ui(ui, speaker, found) {
                    go_to(found, state, view);
                }
            }
        });
}

fn about(speaker: Speaker<'_>, first: &MeasureFirst) -> String {
    if first.drinks == 0 {
        return speaker.word("measure-first-no-drinks").to_owned();
    }
    if first.found.is_empty() {
        return speaker.word("measure-first-nothing").to_owned();
    }
    let drinks = if first.are_approved {
        "approved"
    } else {
        "all"
    };
    say!(speaker, "measure-first-about", drinks: drinks, count: first.drinks)
}

/// What is doubtful, what would narrow it, and what that does; tells whether it is pressed.
fn row_ui(ui: &mut Ui, speaker: Speaker<'_>, found: &ToMeasure) -> bool {
    let palette = theme::palette(ui.visuals());
    let (what, narrow) = match &found.what {
        Doubtful::NoMass(ingredient, measure) => {
            let ingredient = speaker.ingredient(ingredient);
            let words = match measure {
                Some(measure) => {
                    let measure = speaker.measure(measure);
                    say!(speaker, "measure-first-unweighed", ingredient: ingredient, measure: measure)
                }
                None => say!(speaker, "measure-first-no-density", ingredient: ingredient),
            };
            (words, None)
        }
        Doubtful::Cause(cause) => {
            let words = speaker.cause(&found.balance, cause);
            (words.what, words.narrow)
        }
    };
    let is_pressed = wrapped_link_ui(ui, &capitalised(&what)).clicked();
    let does = match found.part {
        Some(part) => {
            let percent = percent_words(speaker, part);
            say!(speaker, "measure-first-narrows", percent: percent, count: found.drinks)
        }
        None => say!(speaker, "measure-first-needed", count: found.drinks),
    };
    let words = match narrow {
        Some(narrow) => {
            say!(speaker, "measure-first-row", narrow: capitalised(&narrow), does: does)
        }
        None => capitalised(&does),
    };
    let small = RichText::new(words).font(TypeStyle::Small.font_id());
    ui.add(Label::new(small.color(palette.text_quiet)).wrap());
    ui.add_space(grid::NEAR);
    is_pressed
}

fn percent_words(speaker: Speaker<'_>, part: f64) -> String {
    let percent = 100.0 * part;
    speaker.number(percent, usize::from(percent < 10.0))
}

/// The form where it is entered, with the keyboard in its field where there is one.
fn go_to(found: &ToMeasure, state: &mut CounterState, view: &mut ViewState) {
    let field = match &found.what {
        Doubtful::NoMass(_, None) => Some("bulk".into()),
        Doubtful::NoMass(_, Some(_)) => None,
        Doubtful::Cause(cause) => field_of(cause),
    };
    if let Some(field) = field {
        view.focus_wanted = Some(Focus::Field(found.item.clone(), field));
    }
    if let Some(item) = CounterItem::of(&found.item) {
        state.show(item);
    }
}

fn field_of(cause: &Cause) -> Option<FieldName> {
    Some(match cause {
        Cause::Composition(_, nutrient) => FieldName::of("label", Which::Nutrient(*nutrient)),
        Cause::SugarSplit(_) => "profile".into(),
        Cause::Density(_) => "density".into(),
        Cause::BulkDensity(_) => "bulk".into(),
        Cause::FreeSugars(_) => "free".into(),
        Cause::Yield(_) => "yield".into(),
        Cause::Extraction(_) => "extraction".into(),
        Cause::Temperature(_) | Cause::MeasureTemperature(_) => "temperature".into(),
        _ => return None,
    })
}
