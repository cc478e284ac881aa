//! What the window asks in a sheet of its own, with what has been typed into it.

use super::Screen;
use crate::book::{RecipeId, VersionId};
use crate::quantity::name_as_shown;
use crate::say::say;
use crate::workbench::Home;

/// A dialog with what has been typed into it.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Dialog {
    /// Which book to open.
    Open {
        /// The typed path.
        path: String,
    },
    /// Where to save.
    SaveAs {
        /// The typed path.
        path: String,
    },
    /// Approve a version.
    Approve(Approving),
    /// Find anything in the book.
    LookUp,
    /// The keys.
    Keys,
}

/// What is asked before a version is approved.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Approving {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version, or the recipe itself.
    pub version: Option<VersionId>,
    /// "Hazelthwaite, as written".
    pub name: String,
    /// Who.
    pub by: String,
    /// Why.
    pub reason: String,
    /// Temperature at which it was tasted, as typed.
    pub tasted_at: String,
}

impl Dialog {
    /// Which book to open.
    pub(super) fn open_book(home: &Home) -> Self {
        Self::Open { path: typed(home) }
    }

    /// Where to save.
    pub(super) fn save_as(home: &Home) -> Self {
        Self::SaveAs { path: typed(home) }
    }

    /// Approve the version in hand.
    pub(super) fn approve(screen: &Screen<'_>) -> Self {
        let version = screen
            .shown
            .version
            .as_ref()
            .and_then(|id| screen.recipe.version(id));
        let speaker = screen.speaker;
        let recipe = &screen.recipe.name;
        let name = match version {
            Some(version) => {
                say!(speaker, "dialog-version", recipe: recipe, version: &version.name)
            }
            None => say!(speaker, "dialog-original", recipe: recipe),
        };
        Self::Approve(Approving {
            recipe: screen.recipe.id.clone(),
            version: screen.shown.version.clone(),
            name: name_as_shown(&name).into_owned(),
            by: screen
                .recipe
                .approvals
                .last()
                .map(|last| last.by.clone())
                .unwrap_or_default(),
            reason: String::new(),
            tasted_at: speaker.digits(
                &speaker
                    .units
                    .of("°C")
                    .digits(screen.balance.drinking_temperature, 1),
            ),
        })
    }
}

fn typed(home: &Home) -> String {
    match home {
        Home::File(path) => path.display().to_string(),
        Home::Nowhere(_) => String::new(),
    }
}
