//! What is wrong with the book: a sentence and a place each, the errors first.

use egui::{Button, Label, RichText, Ui};

use super::BookInHand;
use crate::book::{Finding, Place, RecipeId, Severity, VersionId};
use crate::quantity::name_as_shown;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::{Area, ViewState};
use crate::ui::words::heading_ui;
use crate::workbench::Shown;

pub(super) fn findings_ui(ui: &mut Ui, in_hand: &BookInHand<'_>, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    ui.label(
        RichText::new("Findings")
            .font(TypeStyle::Title.font_id())
            .color(palette.text_strong),
    );
    if in_hand.findings.is_empty() {
        ui.label("Nothing is wrong with this book.");
    }
    for severity in [Severity::Error, Severity::Warning] {
        let of_kind: Vec<&Finding> = in_hand
            .findings
            .iter()
            .filter(|finding| finding.severity == severity)
            .collect();
        if of_kind.is_empty() {
            continue;
        }
        ui.add_space(grid::EASY);
        let words = match severity {
            Severity::Error => "Errors: figures that need these are not known",
            Severity::Warning => "Worth a look",
        };
        heading_ui(ui, words);
        for finding in of_kind {
            finding_ui(ui, finding, in_hand, view);
        }
    }
    if !in_hand.findings.is_empty() {
        ui.add_space(grid::NEAR);
        copy_ui(ui, "findings", || as_table(in_hand.findings));
    }
}

/// The findings in their order on the screen.
fn as_table(findings: &[Finding]) -> Table {
    let mut table = Table::new(["severity", "place", "finding"]);
    for severity in [Severity::Error, Severity::Warning] {
        for finding in findings.iter().filter(|one| one.severity == severity) {
            table.row([
                Cell::words(severity.word()),
                Cell::words(&finding.place.to_string()),
                Cell::words(&finding.kind.to_string()),
            ]);
        }
    }
    table
}

fn finding_ui(ui: &mut Ui, finding: &Finding, in_hand: &BookInHand<'_>, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    ui.add(Label::new(RichText::new(finding.kind.to_string()).color(palette.text_normal)).wrap());
    ui.horizontal(|ui| {
        let place = RichText::new(finding.place.to_string())
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        ui.label(place);
        if let Some((recipe, version)) = recipe_of(&finding.place)
            && let Some(named) = in_hand.book.recipe(recipe)
        {
            let words = format!("Go to {}", name_as_shown(&named.name));
            if ui
                .add(Button::new(words).frame_when_inactive(false))
                .clicked()
            {
                view.show(Shown {
                    recipe: recipe.clone(),
                    version: version.cloned(),
                });
                view.area = Area::Recipe;
                if let Place::Line(_, _, line) = &finding.place {
                    view.line_in_hand = Some(line.clone());
                }
            }
        }
    });
    ui.add_space(grid::TIGHT);
}

fn recipe_of(place: &Place) -> Option<(&RecipeId, Option<&VersionId>)> {
    match place {
        Place::Recipe(recipe, _) | Place::Approval(recipe, _) => Some((recipe, None)),
        Place::Line(recipe, version, _) => Some((recipe, version.as_ref())),
        Place::Version(recipe, version) => Some((recipe, Some(version))),
        Place::Settings | Place::Ingredient(..) | Place::Measure(..) | Place::Vessel(..) => None,
    }
}
