//! The drink as it is served: how it cools or stands, what is declared of it, what it costs, and the tea that is brewed for it.

mod brewing;
mod brewing_facts;
mod brewing_model;
mod brewing_use;
mod cooling;
mod cooling_plot;
mod cost;
mod guests;
mod last_sip;
mod last_sip_plot;
mod melting;
mod nutrition;
mod one_cup;
mod readings;
mod record;
mod sheet;
mod teas;
mod typed;
mod yardsticks;

use egui::{Align, Button, RichText, Ui};

use super::Screen;
use super::area_of_work::{AreaOfWork, Desk};
use super::theme::{self, TypeStyle, grid};
use super::view_state::{Drafts, ViewState};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::ui::words;
use crate::workbench::{Action, Serving, ServingOf};

/// From this width of the sheet on there are two columns, in points.
const TWO_COLUMNS: f32 = 232.0 * grid::STEP;
/// From this width on there are three, in points.
const THREE_COLUMNS: f32 = 360.0 * grid::STEP;

/// The sheets of this area.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sheet {
    Cooling,
    Ice,
    LastSip,
    Nutrition,
    Yardsticks,
    Guests,
    Cost,
    OneCup,
    Brewing,
}

impl Sheet {
    /// All of them, in the order in which they are read in one column.
    const ALL: [Self; 9] = [
        Self::Cooling,
        Self::Ice,
        Self::LastSip,
        Self::Nutrition,
        Self::Yardsticks,
        Self::Guests,
        Self::Cost,
        Self::OneCup,
        Self::Brewing,
    ];

    /// The message with its heading.
    fn message(self) -> &'static str {
        match self {
            Self::Cooling => "serving-sheet-cooling",
            Self::Ice => "serving-sheet-ice",
            Self::LastSip => "serving-sheet-last-sip",
            Self::Nutrition => "serving-sheet-nutrition",
            Self::Yardsticks => "serving-sheet-yardsticks",
            Self::Guests => "serving-sheet-guests",
            Self::Cost => "serving-sheet-cost",
            Self::OneCup => "serving-sheet-one-cup",
            Self::Brewing => "serving-sheet-brewing",
        }
    }
}

/// What the sheets remember between frames.
#[derive(Default)]
pub(super) struct ServingState {
    /// The sheet that was asked for and is not in sight yet.
    wanted: Option<Sheet>,
    /// A thermometer reading of which only one half has been typed.
    begun: readings::BegunReading,
    /// Weighings of ice.
    weighings: melting::Weighings,
    /// What was read of a cup that is off.
    cup: one_cup::CupTexts,
    /// Minutes on the way to the guest, as they are typed.
    on_the_way: String,
    /// The tea that is planned.
    brewing: brewing::BrewingState,
}

impl AreaOfWork for ServingState {
    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
        if let Some(screen) = desk.drink
            && let Some(serving) = screen.answers.to(&ServingOf(screen.shown.clone()))
        {
            serving_area_ui(ui, screen, &serving, self, &mut view.drafts, actions);
        }
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

/// The version in hand as it is served.
fn serving_area_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    serving: &Serving,
    state: &mut ServingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    title_ui(ui, screen, state);
    let columns = columns_of(ui.available_width());
    let gaps = (columns.len() - 1) as f32 * grid::FAR;
    let each = (ui.available_width() - gaps) / columns.len() as f32;
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = grid::FAR;
        for sheets in columns {
            ui.vertical(|ui| {
                ui.set_width(each);
                for sheet in *sheets {
                    sheet_ui(ui, *sheet, screen, serving, state, drafts, actions);
                }
            });
        }
    });
    ui.add_space(grid::APART);
    state.wanted = None;
}

/// Which drink it is, and the way to each sheet.
fn title_ui(ui: &mut Ui, screen: &Screen<'_>, state: &mut ServingState) {
    let speaker = screen.speaker;
    let palette = theme::palette(ui.visuals());
    let version = screen
        .shown
        .version
        .as_ref()
        .and_then(|id| screen.recipe.version(id));
    let version = version.map_or(speaker.word("serving-original").into(), |version| {
        name_as_shown(&version.name)
    });
    let cup = screen
        .balance
        .resolved
        .cup
        .as_ref()
        .and_then(|id| screen.book.vessel(id));
    let cup = cup.map_or(speaker.word("serving-no-cup").into(), |cup| {
        name_as_shown(&cup.name)
    });
    let name = RichText::new(name_as_shown(&screen.recipe.name)).font(TypeStyle::Title.font_id());
    ui.label(name.color(palette.text_strong));
    ui.label(
        RichText::new(say!(speaker, "serving-version-and-cup", version: version, cup: cup))
            .color(palette.text_quiet),
    );
    ui.horizontal_wrapped(|ui| {
        ui.spacing_mut().item_spacing = egui::vec2(grid::TIGHT, 0.0);
        ui.spacing_mut().button_padding.x = grid::TIGHT;
        for sheet in Sheet::ALL
            .into_iter()
            .filter(|sheet| *sheet != Sheet::Ice || screen.balance.iced)
        {
            let name = speaker.word(sheet.message());
            let words = RichText::new(name).font(TypeStyle::Small.font_id());
            let button = Button::new(words.color(palette.accent)).frame_when_inactive(false);
            let button = ui
                .add(button)
                .accessible_name(say!(speaker, "serving-go-to", sheet: name));
            if button.clicked() {
                state.wanted = Some(sheet);
            }
        }
    });
}

/// Which sheets stand below each other in a width.
fn columns_of(width: f32) -> &'static [&'static [Sheet]] {
    use Sheet::{Brewing, Cooling, Cost, Guests, Ice, LastSip, Nutrition, OneCup, Yardsticks};
    if width < TWO_COLUMNS {
        &[&Sheet::ALL]
    } else if width < THREE_COLUMNS {
        &[
            &[Cooling, Ice, LastSip, OneCup, Brewing],
            &[Nutrition, Yardsticks, Guests, Cost],
        ]
    } else {
        &[
            &[Cooling, Ice, LastSip],
            &[Nutrition, Yardsticks, OneCup],
            &[Guests, Cost, Brewing],
        ]
    }
}

/// A sheet under its heading, set apart from what stands above it; comes into sight when it was asked for.
fn sheet_ui(
    ui: &mut Ui,
    sheet: Sheet,
    screen: &Screen<'_>,
    serving: &Serving,
    state: &mut ServingState,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    if sheet == Sheet::Ice && !screen.balance.iced {
        return;
    }
    ui.add_space(grid::APART);
    let heading = words::heading_ui(ui, screen.speaker.word(sheet.message()));
    if state.wanted == Some(sheet) {
        heading.scroll_to_me(Some(Align::TOP));
    }
    match sheet {
        Sheet::Cooling => {
            let begun = &mut state.begun;
            let mut view = readings::InReadings { begun, drafts };
            cooling::cooling_ui(ui, screen, serving, &mut view, actions);
        }
        Sheet::Ice => {
            let weighings = &mut state.weighings;
            melting::melting_ui(ui, screen, serving, weighings, drafts, actions);
        }
        Sheet::LastSip => {
            let on_the_way = &mut state.on_the_way;
            last_sip::last_sip_ui(ui, screen, on_the_way, drafts, actions);
        }
        Sheet::Nutrition => nutrition::nutrition_ui(ui, screen, serving),
        Sheet::Yardsticks => yardsticks::yardsticks_ui(ui, screen, serving, actions),
        Sheet::Guests => guests::guests_ui(ui, screen, serving),
        Sheet::Cost => cost::cost_ui(ui, screen, serving),
        Sheet::OneCup => one_cup::one_cup_ui(ui, screen, &mut state.cup, drafts, actions),
        Sheet::Brewing => brewing::brewing_ui(ui, screen, &mut state.brewing, drafts, actions),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_sheet_stands_once_in_every_width() {
        for width in [600.0, 1000.0, 2000.0] {
            let mut shown: Vec<Sheet> = columns_of(width)
                .iter()
                .flat_map(|sheets| sheets.iter().copied())
                .collect();
            assert_eq!(shown.len(), Sheet::ALL.len(), "{width}");
            shown.retain(|sheet| !Sheet::ALL.contains(sheet));
            assert_eq!(shown, [], "{width}");
        }
    }
}
