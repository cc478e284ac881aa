//! What is wrong with the book: a sentence and a place each, the errors first.

use egui::{Label, RichText, Ui};

use super::area::{Area, Navigation};
use super::area_of_work::{AreaOfWork, Desk};
use super::book_in_hand::BookInHand;
use super::drifted_list::drifted_ui;
use super::spreadsheet::{Cell, Table, copy_ui};
use super::tall_list::TallList;
use super::theme::{self, TypeStyle, grid};
use super::view_state::ViewState;
use super::widgets::name::name_button_ui;
use super::words::{capitalised, heading_ui};
use crate::book::{Book, Finding, ItemId, Place, RecipeId, Severity, TastingId};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::workbench::{Action, Shown};

/// The rows of the list.
#[derive(Default)]
pub(super) struct FindingsState {
    list: TallList,
}

impl AreaOfWork for FindingsState {
    fn needs_drink(&self) -> bool {
        false
    }

    fn ui(&mut self, ui: &mut Ui, desk: Desk<'_>, view: &mut ViewState, _: &mut Vec<Action>) {
        findings_ui(ui, desk.in_hand, &mut self.list, view);
    }

    fn forget_book(&mut self) {
        *self = Self::default();
    }
}

fn findings_ui(ui: &mut Ui, in_hand: &BookInHand<'_>, list: &mut TallList, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    let speaker = in_hand.speaker;
    ui.label(
        RichText::new(speaker.word("shell-findings"))
            .font(TypeStyle::Title.font_id())
            .color(palette.text_strong),
    );
    drifted_ui(ui, speaker, in_hand.drifted, view);
    if in_hand.findings.is_empty() {
        ui.label(speaker.word("shell-findings-none"));
    }
    let rows = rows(in_hand.findings);
    list.in_sheet_ui(ui, rows.len(), |ui, at| match rows[at] {
        Row::Heading(message) => {
            ui.add_space(grid::EASY);
            heading_ui(ui, speaker.word(message));
        }
        Row::Finding(finding) => finding_ui(ui, finding, in_hand, view),
    });
    if !in_hand.findings.is_empty() {
        ui.add_space(grid::NEAR);
        let of = speaker.word("shell-findings-table");
        copy_ui(ui, of, || as_table(speaker, in_hand.findings));
    }
}

/// A row of the list.
#[derive(Clone, Copy)]
enum Row<'finding> {
    /// The message of a heading.
    Heading(&'static str),
    Finding(&'finding Finding),
}

/// The findings under their headings, errors first.
fn rows(findings: &[Finding]) -> Vec<Row<'_>> {
    let under = |severity: Severity, heading: &'static str| {
        let of_kind = findings.iter().filter(move |one| one.severity == severity);
        let mut of_kind = of_kind.map(Row::Finding).peekable();
        let heading = of_kind.peek().map(|_| Row::Heading(heading));
        heading.into_iter().chain(of_kind)
    };
    under(Severity::Error, "shell-findings-errors")
        .chain(under(Severity::Warning, "shell-findings-warnings"))
        .collect()
}

/// The findings in their order on the screen.
fn as_table(speaker: Speaker<'_>, findings: &[Finding]) -> Table {
    let mut table = Table::new([
        speaker.word("shell-column-severity"),
        speaker.word("shell-column-place"),
        speaker.word("shell-column-finding"),
    ]);
    for severity in [Severity::Error, Severity::Warning] {
        for finding in findings.iter().filter(|one| one.severity == severity) {
            table.row([
                Cell::words(speaker.severity(severity)),
                Cell::words(&speaker.place_by_name(&finding.place)),
                Cell::words(&speaker.finding_kind(&finding.kind)),
            ]);
        }
    }
    table
}

fn finding_ui(ui: &mut Ui, finding: &Finding, in_hand: &BookInHand<'_>, view: &mut ViewState) {
    let palette = theme::palette(ui.visuals());
    let speaker = in_hand.speaker;
    let sentence = capitalised(&speaker.finding_kind(&finding.kind));
    ui.add(Label::new(RichText::new(sentence).color(palette.text_normal)).wrap());
    ui.horizontal_wrapped(|ui| {
        let place = RichText::new(speaker.place_by_name(&finding.place))
            .font(TypeStyle::Small.font_id())
            .color(palette.text_quiet);
        ui.label(place);
        if let Some(words) = way_words(speaker, &finding.place) {
            let colour = palette.text_normal;
            if name_button_ui(ui, &words, TypeStyle::Body, colour, false).clicked() {
                go_to(speaker.book, &finding.place, view);
            }
        }
    });
    ui.add_space(grid::TIGHT);
}

/// The way to what the place belongs to, when the book has it.
fn way_words(speaker: Speaker<'_>, place: &Place) -> Option<String> {
    let book = speaker.book;
    let name = match place {
        Place::Settings => return Some(speaker.word("shell-go-to-settings").to_owned()),
        Place::Ingredient(id, _) => book.ingredient(id)?.full_name(),
        Place::Measure(id, _) => book.measure(id)?.name.clone(),
        Place::Vessel(id, _) => book.vessel(id)?.name.clone(),
        Place::Tasting(id, _) => book.recipe(first_drink(book, id)?)?.name.clone(),
        Place::Recipe(id, _)
        | Place::Approval(id, _)
        | Place::Line(id, ..)
        | Place::Version(id, _) => book.recipe(id)?.name.clone(),
    };
    Some(say!(speaker, "shell-go-to", name: name_as_shown(&name)))
}

/// The drink that a tasting is about: its first cup that is one.
fn first_drink<'book>(book: &'book Book, id: &TastingId) -> Option<&'book RecipeId> {
    let mut cups = book.tasting(id)?.cups.iter();
    cups.find_map(|cup| cup.recipe.as_ref().filter(|id| book.recipe(id).is_some()))
}

fn go_to(book: &Book, place: &Place, view: &mut ViewState) {
    let (recipe, version) = match place {
        Place::Settings => {
            view.go(Area::Counter, Navigation::Item(ItemId::Settings));
            return;
        }
        Place::Ingredient(id, _) => return at_counter(ItemId::Ingredient(id.clone()), view),
        Place::Measure(id, _) => return at_counter(ItemId::Measure(id.clone()), view),
        Place::Vessel(id, _) => return at_counter(ItemId::Vessel(id.clone()), view),
        Place::Tasting(id, _) => match first_drink(book, id) {
            Some(recipe) => (recipe, None),
            None => return,
        },
        Place::Recipe(recipe, _) | Place::Approval(recipe, _) => (recipe, None),
        Place::Line(recipe, version, _) => (recipe, version.as_ref()),
        Place::Version(recipe, version) => (recipe, Some(version)),
    };
    view.show(Shown {
        recipe: recipe.clone(),
        version: version.cloned(),
    });
    view.area = Area::Recipe;
    if let Place::Line(_, _, line) = place {
        view.line_in_hand = Some(line.clone());
    }
}

fn at_counter(item: ItemId, view: &mut ViewState) {
    view.go(Area::Counter, Navigation::Item(item));
}
