//! The commands about the book as a whole.

use super::shelf_list;
use crate::book::Book;
use crate::ui::area::{Area, Navigation};
use crate::ui::commands::UiCommand;
use crate::ui::dialog::Dialog;
use crate::ui::view_state::ViewState;
use crate::workbench::{Action, Command, Home, Intent};

/// Carries out a command about the book as a whole; `false` when it is about the recipe.
pub(in crate::ui) fn carry_out(
    command: UiCommand,
    book: &Book,
    view: &mut ViewState,
    home: &Home,
    actions: &mut Vec<Action>,
) -> bool {
    match command {
        UiCommand::NewRecipe => shelf_list::add_recipe(book, view, actions),
        UiCommand::NewBook => actions.push(Action::Command(Command::Do(Intent::New))),
        UiCommand::OpenBook => view.dialog = Some(Dialog::open_book(home)),
        // The system asks; where it has no dialog, ours does.
        UiCommand::SaveAs => actions.push(Action::Command(Command::PickSave)),
        UiCommand::Save => match home {
            Home::File(_) => actions.push(Action::Command(Command::Save)),
            Home::Nowhere(_) => actions.push(Action::Command(Command::PickSave)),
        },
        UiCommand::Undo => actions.push(Action::Command(Command::Undo)),
        UiCommand::Redo => actions.push(Action::Command(Command::Redo)),
        UiCommand::LookUp => {
            view.navigation.push(Navigation::LookUp);
            view.dialog = Some(Dialog::LookUp);
        }
        UiCommand::ShowKeys => view.dialog = Some(Dialog::Keys),
        UiCommand::OtherDegrees => {
            view.units.temperature = view.units.temperature.other();
            view.drafts.clear();
        }
        UiCommand::OtherVolumes => {
            view.units.volume = view.units.volume.other();
            view.drafts.clear();
        }
        UiCommand::Back => view.area = Area::Recipe,
        UiCommand::GoTo(area) => view.go(area, Navigation::ByKey(area)),
        _ => return false,
    }
    true
}
