//! The approvals of a recipe: when, by whom and why, what changed between any two, and the way back to one.

use egui::{Button, ComboBox, Label, RichText, Ui};

use super::differences::sentences_ui;
use crate::book::{Approval, ApprovalRecord, Recipe, RecipeId};
use crate::edit::Focus;
use crate::quantity::excerpt;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::{quiet_ui, small_heading_ui};
use crate::workbench::{Action, Command};

/// Longest name or reason in a line, in characters.
const TEXT: usize = 120;

/// Which two approvals are compared, as long as the recipe in hand has them.
#[derive(Default)]
pub(in crate::ui) struct ComparedApprovals(Option<TwoApprovals>);

/// Two approvals by their numbers from 1; `None` is the version in hand as it is now.
struct TwoApprovals {
    recipe: RecipeId,
    from: usize,
    to: Option<usize>,
}

/// The approvals, the newest first.
pub(in crate::ui) fn approvals_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    compared: &mut ComparedApprovals,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let history = screen.recipe.approval_history();
    if history.is_empty() {
        return;
    }
    ui.add_space(grid::EASY);
    small_heading_ui(ui, screen.speaker.word("safekeeping-approvals"));
    for record in history.iter().rev() {
        approval_ui(ui, screen, record, view, actions);
    }
    compare_ui(ui, screen, compared);
}

/// "original" or the name of the version.
fn version_name(speaker: Speaker<'_>, recipe: &Recipe, approval: &Approval) -> String {
    match &approval.version {
        None => speaker.word("version-original").to_owned(),
        Some(id) => recipe
            .version(id)
            .map_or_else(|| id.to_string(), |version| excerpt(&version.name, TEXT)),
    }
}

fn approval_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    record: &ApprovalRecord<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let approval = record.approval;
    let date = excerpt(&approval.date, TEXT);
    let version = version_name(speaker, screen.recipe, approval);
    let by = excerpt(&approval.by, TEXT);
    let words = match approval.tasted_at {
        Some(celsius) => say!(
            speaker,
            "safekeeping-approval-tasted",
            date: date,
            version: version,
            by: by,
            temperature: speaker.temperature(celsius, 0),
        ),
        None => {
            say!(speaker, "safekeeping-approval", date: date, version: version, by: by)
        }
    };
    ui.add(Label::new(RichText::new(words).color(palette.text_normal)).wrap());
    if !approval.reason.is_empty() {
        quiet_ui(ui, &approval.reason);
    }
    if let (Some(follows), Some(differences)) = (record.follows, &record.differences) {
        let before = &screen.recipe.approvals[follows - 1];
        let date = excerpt(&before.date, TEXT);
        if differences.is_empty() {
            quiet_ui(ui, &say!(speaker, "safekeeping-since-nothing", date: date));
        } else {
            ui.indent(("since", record.number), |ui| {
                quiet_ui(ui, &say!(speaker, "safekeeping-since", date: date));
                sentences_ui(ui, &speaker.differences(differences));
            });
        }
    }
    ui.scope(|ui| {
        ui.spacing_mut().button_padding.x = 0.0;
        let text = RichText::new(speaker.word("safekeeping-make-draft"))
            .font(TypeStyle::Small.font_id())
            .color(palette.accent);
        let response = ui
            .add(Button::new(text).frame_when_inactive(false))
            .on_hover_text(speaker.word("safekeeping-make-draft-hint"))
            .accessible_name(say!(
                speaker,
                "safekeeping-make-draft-of",
                date: excerpt(&approval.date, TEXT)
            ));
        let key = Focus::Approval(screen.recipe.id.clone(), record.number - 1);
        if view.focus_wanted.take_if(|wanted| *wanted == key).is_some() {
            response.request_focus();
            response.scroll_to_me(Some(egui::Align::Center));
        }
        if response.clicked() {
            actions.push(Action::Command(Command::GoBackToApproval {
                recipe: screen.recipe.id.clone(),
                number: record.number,
            }));
        }
    });
    ui.add_space(grid::TIGHT);
}

/// What changed between any two states of the recipe that were approved, or from one of them to the version in hand.
fn compare_ui(ui: &mut Ui, screen: &Screen<'_>, kept: &mut ComparedApprovals) {
    let (recipe, speaker) = (screen.recipe, screen.speaker);
    let count = recipe.approvals.len();
    let of_recipe = kept.0.take_if(|compared| compared.recipe == recipe.id);
    let mut compared = of_recipe.unwrap_or_else(|| TwoApprovals {
        recipe: recipe.id.clone(),
        from: count,
        to: None,
    });
    // An approval that undo has taken back.
    compared.from = compared.from.clamp(1, count);
    compared.to = compared.to.filter(|to| *to <= count);
    let words = |number: Option<usize>| match number {
        None => speaker.word("safekeeping-version-in-hand").to_owned(),
        Some(number) => {
            let approval = &recipe.approvals[number - 1];
            say!(
                speaker,
                "safekeeping-numbered-approval",
                number: number,
                date: excerpt(&approval.date, TEXT),
                version: version_name(speaker, recipe, approval),
            )
        }
    };
    ui.add_space(grid::NEAR);
    ui.horizontal_wrapped(|ui| {
        quiet_ui(ui, speaker.word("safekeeping-changed-from"));
        ComboBox::from_id_salt("compare from")
            .selected_text(words(Some(compared.from)))
            .width(200.0)
            .show_ui(ui, |ui| {
                for number in 1..=count {
                    ui.selectable_value(&mut compared.from, number, words(Some(number)));
                }
            })
            .response
            .accessible_name(speaker.word("safekeeping-changed-from"));
        quiet_ui(ui, speaker.word("safekeeping-to"));
        ComboBox::from_id_salt("compare to")
            .selected_text(words(compared.to))
            .width(200.0)
            .show_ui(ui, |ui| {
                ui.selectable_value(&mut compared.to, None, words(None));
                for number in 1..=count {
                    ui.selectable_value(&mut compared.to, Some(number), words(Some(number)));
                }
            })
            .response
            .accessible_name(speaker.word("safekeeping-changed-to"));
    });
    let differences = match compared.to {
        None => recipe.compare_with_approval(compared.from, screen.shown.version.as_ref()),
        Some(to) => recipe.compare_approvals(compared.from, to),
    };
    if let Some(differences) = differences {
        if differences.is_empty() {
            quiet_ui(ui, speaker.word("safekeeping-nothing-changed"));
        } else {
            sentences_ui(ui, &speaker.differences(&differences));
        }
    }
    kept.0 = Some(compared);
}
