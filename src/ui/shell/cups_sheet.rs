//! A hundred cups of the drink in hand, below its level: how many taste like the standard, axis by axis, and what would help.

use egui::{Label, RichText, Ui};

use super::state::CupsState;
use crate::cups::{AxisCups, Cups, CupsRemark, OfAHundred};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::icons::{Icon, icon_button};
use crate::ui::swap_area::{Parts, progress_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::cup_strip::{StripWords, cup_strip_ui};
use crate::ui::widgets::level::LevelMark;
use crate::ui::words::{self, capitalised, quiet_ui, subheading_ui};
use crate::workbench::{Action, LookState};

/// More than 99, but not all.
const OVER_99: &str = ">99";

/// The way to the cups, and the cups.
pub(super) fn cups_sheet_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    state: &mut CupsState,
    actions: &mut Vec<Action>,
) {
    let speaker = screen.speaker;
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let (icon, name) = if state.is_open {
            (Icon::ChevronDown, "cups-hide")
        } else {
            (Icon::ChevronRight, "cups-show")
        };
        let name = speaker.word(name);
        if icon_button(ui, icon, name, name).clicked() {
            state.is_open = !state.is_open;
        }
        let palette = theme::palette(ui.visuals());
        ui.label(RichText::new(speaker.word("cups-title")).color(palette.text_normal));
    });
    if !state.is_open {
        return;
    }
    let top = ui.cursor().top();
    match state.look.current() {
        Some(Some(cups)) => {
            found_ui(ui, speaker, cups);
            state.height = ui.cursor().top() - top;
        }
        Some(None) => {
            quiet_ui(ui, speaker.word("cups-nothing-in-it"));
        }
        None => {
            if state.look.state == LookState::Stopped {
                progress_ui(ui, state.look.state, Parts::Amounts, actions);
            } else {
                quiet_ui(ui, speaker.word("cups-drawing"));
            }
            // What stands below stays where it was when the cups come.
            let used = ui.cursor().top() - top;
            ui.add_space((state.height - used).max(0.0));
        }
    }
}

fn found_ui(ui: &mut Ui, speaker: Speaker<'_>, cups: &Cups) {
    let palette = theme::palette(ui.visuals());
    let remarks = cups.remarks();
    let said = |remark: &CupsRemark| speaker.cups_remark(cups, remark);
    let (first, rest) = remarks.split_at(1);
    for remark in first {
        let words = RichText::new(said(remark)).font(TypeStyle::Strong.font_id());
        ui.add(Label::new(words.color(palette.text_strong)).wrap());
    }
    ui.add_space(grid::TIGHT);
    ui.scope(|ui| {
        ui.spacing_mut().item_spacing.y = grid::TIGHT / 2.0;
        for axis in cups.axes.iter().filter(|axis| axis.counts) {
            strip_ui(ui, speaker, axis);
        }
    });
    quiet_ui(ui, speaker.word("cups-strip-about"));
    let helps =
        |remark: &&CupsRemark| matches!(remark, CupsRemark::Helps(_) | CupsRemark::NothingHelps);
    let is_off =
        |remark: &&CupsRemark| matches!(remark, CupsRemark::RecipeOff(_) | CupsRemark::NotKnown(_));
    for remark in rest.iter().filter(is_off) {
        words::paragraph_ui(ui, said(remark), palette.off_level);
    }
    if rest.iter().any(|remark| helps(&remark)) {
        subheading_ui(ui, speaker.word("cups-what-helps"));
    }
    for (place, remark) in rest.iter().filter(helps).enumerate() {
        let words = match remark {
            CupsRemark::Helps(_) => {
                let place = speaker.number((place + 1) as f64, 0);
                say!(speaker, "cups-help-in-place", place: place, help: said(remark))
            }
            _ => said(remark),
        };
        words::paragraph_ui(ui, words, palette.text_normal);
    }
    ui.add_space(grid::TIGHT);
    for remark in rest
        .iter()
        .filter(|remark| !helps(remark) && !is_off(remark))
    {
        quiet_ui(ui, &said(remark));
    }
}

fn strip_ui(ui: &mut Ui, speaker: Speaker<'_>, axis: &AxisCups) {
    let within = axis.within.map_or(0.0, |share| share.value);
    let count = |share: f64| speaker.of_a_hundred(OfAHundred::of(share));
    let [less, more] = axis.off;
    let sentence = say!(
        speaker,
        "cups-strip",
        axis: capitalised(&speaker.axis(&axis.axis)),
        within: count(within),
        less: count(less),
        fewer: speaker.less(&axis.axis),
        more: count(more),
        further: speaker.more(&axis.axis),
    );
    let digits = match OfAHundred::of(within) {
        OfAHundred::Over99 => OVER_99.to_owned(),
        _ => speaker.number((100.0 * within).round(), 0),
    };
    let words = StripWords {
        name: LevelMark::name_of(&axis.axis, speaker),
        count: &digits,
        sentence: &sentence,
    };
    cup_strip_ui(ui, axis, &words);
}
