//! The names of the shop's levels of sugar and ice, and what they mean.

use egui::{RichText, Ui, vec2};

use crate::book::{Level, NamedLevel, Settings};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::{parse_up_to, show_compact, show_editable};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::field::{Field, draft_error_ui};
use crate::ui::icons::{self, Icon};
use crate::ui::theme::{self, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::subheading_ui;
use crate::workbench::Action;

/// Width of the field for a name, in points.
const NAME: f32 = 42.0 * grid::STEP;
/// Width of the field for a percentage, in points.
const PERCENT: f32 = 16.0 * grid::STEP;
/// Most levels of a kind.
const MOST: usize = 12;

/// Which list of the settings.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// Of the added sweetness.
    Sugar,
    /// Of the ice.
    Ice,
}

impl Kind {
    /// What it is called in messages.
    fn key(self) -> &'static str {
        match self {
            Self::Sugar => "sugar",
            Self::Ice => "ice",
        }
    }

    /// The field of the name of a level, from 0.
    fn name(self, at: usize) -> Focus {
        Focus::Level(match self {
            Self::Sugar => FieldName::sugar_level(at),
            Self::Ice => FieldName::ice_level(at),
        })
    }

    /// The field of its percentage.
    fn percent(self, at: usize) -> Focus {
        let name = match self {
            Self::Sugar => "sugar-percent",
            Self::Ice => "ice-percent",
        };
        Focus::Level(FieldName::at(name, at))
    }

    /// The levels with the names that are read: a change of one keeps all of them.
    fn of(self, settings: &Settings, speaker: Speaker<'_>) -> Vec<NamedLevel> {
        let levels = match self {
            Self::Sugar => settings.sugar_levels(),
            Self::Ice => settings.ice_levels(),
        };
        let named = |level: &Level| NamedLevel {
            name: speaker.level_name(level),
            percent: level.percent,
        };
        levels.iter().map(named).collect()
    }

    fn with(self, settings: &Settings, levels: Vec<NamedLevel>) -> Settings {
        let mut settings = settings.clone();
        match self {
            Self::Sugar => settings.sugar_levels = levels,
            Self::Ice => settings.ice_levels = levels,
        }
        settings
    }
}

/// The lists, folded away until they are wanted.
pub(super) fn levels_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    is_open: &mut bool,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.horizontal(|ui| {
        ui.spacing_mut().item_spacing.x = grid::TIGHT;
        let (icon, words) = if *is_open {
            (Icon::ChevronDown, "variations-names-hide")
        } else {
            (Icon::ChevronRight, "variations-names-show")
        };
        let words = screen.speaker.word(words);
        if icons::icon_button(ui, icon, words, words).clicked() {
            *is_open = !*is_open;
        }
        let palette = theme::palette(ui.visuals());
        let words = screen.speaker.word("variations-names");
        ui.label(RichText::new(words).color(palette.text_quiet));
    });
    if *is_open {
        list_ui(ui, screen, Kind::Sugar, view, actions);
        ui.add_space(grid::NEAR);
        list_ui(ui, screen, Kind::Ice, view, actions);
    }
}

fn list_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    kind: Kind,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    let settings = &screen.book.settings;
    let speaker = screen.speaker;
    let levels = kind.of(settings, speaker);
    subheading_ui(ui, &say!(speaker, "variations-names-of", kind: kind.key()));
    let mut wanted = levels.clone();
    // Another level is the last of them; what is taken away comes back where it was.
    let mut focus = kind.name(levels.len());
    for (index, level) in levels.iter().enumerate() {
        let number = (index + 1).to_string();
        ui.horizontal(|ui| {
            let key = kind.name(index);
            let name = say!(speaker, "variations-level-name", kind: kind.key(), number: &number);
            let field = Field::new(key.clone(), &name, &level.name).underlined();
            let size = vec2(NAME, grid::TARGET);
            let outcome = field.show_in(ui, size, &mut view.drafts, actions);
            if let Some(name) = outcome.read(&mut view.drafts, |text| read_name(speaker, text)) {
                wanted[index].name = name;
                focus = key;
            }
            let key = kind.percent(index);
            let name = say!(speaker, "variations-level-percent", kind: kind.key(), number: &number);
            let shown = show_editable(level.percent, 4);
            let outcome = Field::number(key.clone(), &name, shown).show_in(
                ui,
                vec2(PERCENT, grid::TARGET),
                &mut view.drafts,
                actions,
            );
            let read = |text: &str| read_percent(speaker, text);
            if let Some(percent) = outcome.read(&mut view.drafts, read) {
                wanted[index].percent = percent;
                focus = key;
            }
            ui.label(RichText::new("%").color(palette.text_quiet));
            let name = say!(speaker, "variations-level-remove", kind: kind.key(), number: &number);
            if levels.len() > 1 && icons::icon_button(ui, Icon::Delete, &name, &name).clicked() {
                wanted.remove(index);
                focus = kind.name(index);
                view.drafts.clear();
            }
        });
        for key in [kind.name(index), kind.percent(index)] {
            draft_error_ui(ui, &view.drafts, &key);
        }
    }
    let add = say!(speaker, "variations-level-add", kind: kind.key());
    if ui
        .add_enabled(levels.len() < MOST, egui::Button::new(add))
        .clicked()
    {
        wanted.push(NamedLevel {
            name: say!(speaker, "variations-new-level", number: (levels.len() + 1).to_string()),
            percent: 50.0,
        });
    }
    if wanted != levels {
        let settings = kind.with(settings, wanted);
        actions.push(Action::edit(Edit::SetSettings(settings), focus));
    }
}

fn read_name(speaker: Speaker<'_>, text: &str) -> Result<String, String> {
    let text = text.trim();
    if text.is_empty() {
        return Err(speaker.word("variations-level-without-name").to_owned());
    }
    Ok(text.to_owned())
}

/// Twice as sweet as the standard is the most that a level can be.
const MOST_PERCENT: f64 = 200.0;

fn read_percent(speaker: Speaker<'_>, text: &str) -> Result<f64, String> {
    let text = text.trim().trim_end_matches('%').trim();
    let found = parse_up_to(text, MOST_PERCENT).map_err(|error| speaker.number_error(&error))?;
    if (0.0..=MOST_PERCENT).contains(&found) {
        Ok(found)
    } else {
        let found = speaker.digits(&show_compact(found));
        let most = speaker.in_unit(MOST_PERCENT, "%", 0);
        Err(say!(speaker, "variations-percent-out-of-range", found: found, most: most))
    }
}
