//! One cup that is off: what was weighed or read of it, and what most likely went wrong.

use egui::Ui;

use super::record::record_ui;
use super::sheet;
use super::typed::{self, LABEL, Range};
use crate::cups::{Measured, WhyOffRemark};
use crate::edit::{FieldName, Focus};
use crate::say::say;
use crate::ui::Screen;
use crate::ui::field::draft_error_ui;
use crate::ui::theme::grid;
use crate::ui::view_state::Drafts;
use crate::ui::widgets::form::label_ui;
use crate::ui::words;
use crate::workbench::{Action, Shown, WhyOffOf};

/// What can be read of a cup.
const fn range(measured: Measured) -> Range {
    let (from, to, unit) = match measured {
        Measured::Weight | Measured::Ice => (0.0, 5000.0, "g"),
        Measured::Temperature => (-10.0, 110.0, "°C"),
        Measured::Brix => (0.0, 95.0, "°Brix"),
    };
    Range { from, to, unit }
}

/// What was read of a cup as it is typed; not kept in the book.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct CupTexts {
    /// The drink that the cup is of.
    of: Option<Shown>,
    texts: [String; Measured::ALL.len()],
}

impl CupTexts {
    /// A cup is of one drink: when another is in hand, its readings are forgotten.
    fn follow(&mut self, shown: &Shown, drafts: &mut Drafts) {
        if self.of.as_ref() != Some(shown) {
            *self = Self {
                of: Some(shown.clone()),
                ..Self::default()
            };
            for at in 0..Measured::ALL.len() {
                drafts.drop(&field(at));
            }
        }
    }
}

/// The field of a reading.
fn field(at: usize) -> Focus {
    Focus::Question(FieldName::at("cup-reading", at))
}

pub(super) fn one_cup_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    texts: &mut CupTexts,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) {
    texts.follow(screen.shown, drafts);
    let speaker = screen.speaker;
    sheet::quiet_ui(ui, speaker.word("serving-cup-about"));
    let mut read = [None; Measured::ALL.len()];
    for (at, measured) in Measured::ALL.into_iter().enumerate() {
        if measured == Measured::Ice && !screen.balance.iced {
            continue;
        }
        read[at] = reading_ui(ui, screen, at, measured, texts, drafts, actions);
    }
    if read.iter().any(Option::is_some) {
        why_ui(ui, screen, read);
    }
    if record_ui(ui, screen, &read, actions) {
        texts.of = None;
    }
}

/// What most likely went wrong.
fn why_ui(ui: &mut Ui, screen: &Screen<'_>, read: [Option<f64>; Measured::ALL.len()]) {
    let speaker = screen.speaker;
    let question = WhyOffOf::new(screen.shown, read);
    let Some(why) = screen.answers.to(&question) else {
        sheet::words_ui(ui, speaker.word("cups-nothing-in-it"));
        return;
    };
    ui.add_space(grid::TIGHT);
    for remark in why.remarks() {
        let said = speaker.why_off_remark(&why, &remark);
        match remark {
            WhyOffRemark::Reading(_) | WhyOffRemark::Others(_) => sheet::quiet_ui(ui, said),
            WhyOffRemark::Unexplained | WhyOffRemark::NothingToCompare => {
                sheet::off_ui(ui, said);
            }
            WhyOffRemark::Likely(_) | WhyOffRemark::CannotTell(_) | WhyOffRemark::Next(_) => {
                sheet::words_ui(ui, said);
            }
        }
    }
}

/// A field for a reading; what can be read in it, in the metric unit.
fn reading_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    at: usize,
    measured: Measured,
    texts: &mut CupTexts,
    drafts: &mut Drafts,
    actions: &mut Vec<Action>,
) -> Option<f64> {
    let speaker = screen.speaker;
    let range = range(measured);
    let key = field(at);
    let (name, named) = (
        say!(speaker, "serving-cup-reading", measured: measured.word()),
        say!(speaker, "serving-cup-reading-named", measured: measured.word()),
    );
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        label_ui(ui, &name, LABEL);
        let shown = texts.texts[at].clone();
        let outcome = typed::cell_ui(ui, key.clone(), &named, shown, drafts, actions);
        if let Some(text) = &outcome.changed {
            texts.texts[at].clone_from(text);
        }
        outcome.read(drafts, |text| range.read_in(text, speaker.units));
        words::quiet_ui(ui, speaker.units.of(range.unit).symbol);
    });
    draft_error_ui(ui, drafts, &key);
    range
        .read_in(&texts.texts[at], speaker.units)
        .ok()
        .flatten()
}
