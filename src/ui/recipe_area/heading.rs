//! The heading of the sheet: name, version and state, and what holds for the whole drink.

use egui::{Button, Rect, RichText, Sense, Ui, vec2};

use crate::book::{Change, Recipe, State, VesselId, VesselKind};
use crate::edit::{Edit, FieldName, Focus};
use crate::quantity::ShownUnit;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::dialog::Dialog;
use crate::ui::field::{Field, draft_error_ui, take_keyboard};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::icons::{Icon, paint};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::unseen::unseen_ui;
use crate::ui::view_state::ViewState;
use crate::ui::widgets::{choice_ui, word_menu_ui};
use crate::workbench::Action;

pub(super) fn heading_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    ui.spacing_mut().item_spacing.y = grid::TIGHT;
    name_ui(ui, screen, view, actions);
    version_ui(ui, screen, view, actions);
    setting_ui(ui, screen, view, actions);
}

/// Nothing is called nothing.
fn not_empty(speaker: Speaker<'_>, text: &str) -> Result<String, &'static str> {
    let text = text.trim();
    if text.is_empty() {
        Err(speaker.word("recipe-sheet-name-missing"))
    } else {
        Ok(text.to_owned())
    }
}

fn name_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    let (rect, _) = ui.allocate_exact_size(vec2(ui.available_width(), 42.0), Sense::hover());
    let (key, speaker) = (screen.field(FieldName::NAME), screen.speaker);
    let name = speaker.word("recipe-sheet-name");
    let field = Field::new(key.clone(), name, &screen.recipe.name).style(TypeStyle::Title);
    let outcome = field.show(
        ui,
        rect.translate(vec2(-4.0, 0.0)),
        &mut view.drafts,
        actions,
    );
    let read = |text: &str| not_empty(speaker, text);
    if let Some(name) = outcome.read(&mut view.drafts, read) {
        let edit = Edit::RenameRecipe {
            recipe: screen.recipe.id.clone(),
            name,
        };
        actions.push(Action::edit(edit, key.clone()));
    }
    if outcome.left_empty {
        let sentence = speaker.word("recipe-sheet-name-stays");
        view.drafts.refuse(&key, &screen.recipe.name, sentence);
    }
    let what = speaker.word("recipe-sheet-the-name");
    unseen_ui(ui, 0.0, what, &screen.recipe.name, TypeStyle::Title);
    draft_error_ui(ui, &view.drafts, &key);
}

fn version_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let version = screen
        .shown
        .version
        .as_ref()
        .and_then(|id| screen.recipe.version(id));
    ui.horizontal(|ui| {
        if let Some(version) = version {
            let key = Focus::VersionName(screen.recipe.id.clone(), version.id.clone());
            let name = speaker.word("recipe-sheet-version-name");
            let field = Field::new(key.clone(), name, &version.name).style(TypeStyle::Strong);
            let width = field
                .width(ui, &view.drafts)
                .min(ui.available_width() - 130.0)
                .max(80.0);
            let (rect, _) = ui.allocate_exact_size(vec2(width, grid::TARGET), Sense::hover());
            let outcome = field.show(
                ui,
                rect.translate(vec2(-4.0, 0.0)),
                &mut view.drafts,
                actions,
            );
            let read = |text: &str| not_empty(speaker, text);
            if let Some(name) = outcome.read(&mut view.drafts, read) {
                let (recipe, version) = (screen.recipe.id.clone(), version.id.clone());
                actions.push(Action::edit(
                    Edit::RenameVersion {
                        recipe,
                        version,
                        name,
                    },
                    key,
                ));
            }
        } else {
            ui.label(
                RichText::new(speaker.word("version-original"))
                    .font(TypeStyle::Strong.font_id())
                    .color(palette.text_strong),
            );
        }
        state_ui(ui, screen, view, actions);
    });
}

fn state_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    let (palette, speaker) = (theme::palette(ui.visuals()), screen.speaker);
    let version = screen.shown.version.as_ref();
    let Some(state) = screen.recipe.state_of(version) else {
        return;
    };
    let is_only_marked = screen.recipe.is_only_marked(version);
    if state == State::Approved && !is_only_marked {
        let (rect, _) = ui.allocate_exact_size(vec2(grid::ICON, grid::TARGET), Sense::hover());
        paint(
            ui.painter(),
            Rect::from_center_size(rect.center(), vec2(14.0, 14.0)),
            Icon::Lock,
            palette.text_quiet,
        );
    }
    let is_empty = screen.balance.resolved.lines().next().is_none();
    let name = speaker.word("recipe-sheet-state");
    let focus = screen.field("state");
    let word = speaker.state_of(screen.recipe, version);
    word_menu_ui(ui, &focus, name, word, |ui| {
        for other in State::ALL {
            if other == State::Approved && is_empty {
                let button = Button::new(speaker.word("recipe-sheet-approve"));
                ui.add_enabled(false, button)
                    .on_disabled_hover_text(speaker.word("recipe-sheet-no-ingredients"));
                continue;
            }
            let words = if other == State::Approved {
                speaker.word("recipe-sheet-approve")
            } else {
                speaker.state(other)
            };
            if !ui.add(Button::selectable(other == state, words)).clicked()
                || other == state && other != State::Approved
            {
                continue;
            }
            if other == State::Approved {
                view.dialog = Some(Dialog::approve(screen));
            } else {
                let (recipe, version) = (screen.shown.recipe.clone(), screen.shown.version.clone());
                let edit = Edit::SetState {
                    recipe,
                    version,
                    state: other,
                };
                actions.push(Action::edit(edit, focus.clone()));
            }
        }
    });
    if state == State::Approved {
        let words = speaker.word("recipe-sheet-change-makes-version");
        ui.label(
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
    }
}

/// From this width of the sheet on the row has wider gaps, in points.
const ROOMY: f32 = 560.0;

/// Cup, shaker, temperature and price in one quiet row.
fn setting_ui(ui: &mut Ui, screen: &Screen<'_>, view: &mut ViewState, actions: &mut Vec<Action>) {
    let (resolved, speaker) = (&screen.balance.resolved, screen.speaker);
    ui.horizontal_wrapped(|ui| {
        let gap = if ui.available_width() < ROOMY {
            grid::TIGHT + 2.0
        } else {
            grid::EASY
        };
        ui.spacing_mut().item_spacing = vec2(gap, 0.0);
        vessel_ui(ui, screen, VesselKind::Cup, actions);
        vessel_ui(ui, screen, VesselKind::Shaker, actions);
        if resolved.shaker.is_some() {
            let mut strained = resolved.strained;
            let words = speaker.word("recipe-sheet-strain");
            let words = RichText::new(words).font(TypeStyle::Small.font_id());
            let response = ui.checkbox(&mut strained, words);
            let focus = screen.field("strained");
            take_keyboard(ui, &focus, &response);
            if response.changed() {
                let change = Change::Strained(strained);
                actions.push(Action::edit(screen.shown.change(change), focus));
            }
        }
        let celsius = screen.speaker.units.of("°C");
        let drinking = Number {
            field: "drinking-temperature",
            before: speaker.word("recipe-sheet-compare-taste"),
            term: Some(Term::DrinkingTemperature),
            name: &say!(speaker, "recipe-sheet-drinking-temperature", unit: celsius.symbol),
            unit: celsius,
            value: resolved.drinking_temperature,
            hint: speaker.digits(&celsius.digits(screen.balance.drinking_temperature, 1)),
            decimals: 1,
            room: 196.0,
        };
        drinking.show(ui, screen, view, actions, Change::DrinkingTemperature);
        let price = Number {
            field: "menu-price",
            before: speaker.word("recipe-sheet-price"),
            term: None,
            name: speaker.word("recipe-sheet-menu-price"),
            unit: screen.speaker.units.of(&screen.book.settings.currency),
            value: resolved.menu_price,
            hint: "–".to_owned(),
            decimals: 2,
            room: 92.0,
        };
        price.show(ui, screen, view, actions, Change::MenuPrice);
    });
    for field in ["drinking-temperature", "menu-price"] {
        draft_error_ui(ui, &view.drafts, &screen.field(field));
    }
}

fn vessel_ui(ui: &mut Ui, screen: &Screen<'_>, kind: VesselKind, actions: &mut Vec<Action>) {
    let (resolved, speaker) = (&screen.balance.resolved, screen.speaker);
    let (focus, label, current, none) = match kind {
        VesselKind::Shaker => (
            "shaker",
            "recipe-sheet-shaker",
            resolved.shaker.as_ref(),
            "recipe-sheet-no-shaker",
        ),
        _ => (
            "cup",
            "recipe-sheet-cup",
            resolved.cup.as_ref(),
            "recipe-sheet-no-cup",
        ),
    };
    let focus = screen.field(focus);
    let [label, none] = [label, none].map(|message| speaker.word(message));
    let words = match current {
        None => none.to_owned(),
        Some(id) if kind == VesselKind::Shaker => {
            say!(speaker, "recipe-sheet-shaken-in", shaker: speaker.vessel(id))
        }
        Some(id) => speaker.vessel(id),
    };
    // A drink may be mixed in a jug as well; a cup is only ever a cup.
    let fits =
        |other: VesselKind| other == kind || kind == VesselKind::Shaker && other == VesselKind::Jug;
    let without = (kind == VesselKind::Shaker || may_lose_its_cup(screen)).then_some(None);
    let vessels = screen.book.vessels.iter();
    let vessels = vessels.filter(|vessel| fits(vessel.kind));
    let all = without
        .into_iter()
        .chain(vessels.map(|vessel| Some(vessel.id.clone())));
    let word = |id: &Option<VesselId>| {
        id.as_ref()
            .map_or_else(|| none.to_owned(), |id| speaker.vessel(id))
    };
    word_menu_ui(ui, &focus, label, &words, |ui| {
        let edit = match (choice_ui(ui, all, &current.cloned(), word), kind) {
            (Some(taken), VesselKind::Shaker) => screen.shown.change(Change::Shaker(taken)),
            (Some(Some(taken)), _) => screen.shown.change(Change::Cup(taken)),
            (Some(None), _) => Edit::PutRecipe(Recipe {
                cup: None,
                ..screen.recipe.clone()
            }),
            (None, _) => return,
        };
        actions.push(Action::edit(edit, focus.clone()));
    });
}

/// A batch has no cup. No version can say that it has none, and what is approved keeps the one that it was tasted in.
fn may_lose_its_cup(screen: &Screen<'_>) -> bool {
    let recipe = screen.recipe;
    let mut states = recipe.versions.iter().map(|version| version.state);
    screen.shown.version.is_none()
        && recipe.approvals.is_empty()
        && recipe.state != State::Approved
        && states.all(|state| state != State::Approved)
}

/// A number with a word before it and a unit behind; an empty field states nothing.
struct Number<'number> {
    field: &'static str,
    before: &'static str,
    term: Option<Term>,
    name: &'number str,
    unit: ShownUnit<'number>,
    value: Option<f64>,
    hint: String,
    decimals: usize,
    /// Width of the whole, in points.
    room: f32,
}

/// Width of the field, in points.
const FIELD: f32 = 44.0;
/// The same for a figure of one more digit, such as a temperature in °F, in points.
const FIELD_OF_MORE: f32 = 54.0;

impl Number<'_> {
    fn field_width(&self) -> f32 {
        if self.unit.is_metric() {
            FIELD
        } else {
            FIELD_OF_MORE
        }
    }

    fn show(
        &self,
        ui: &mut Ui,
        screen: &Screen<'_>,
        view: &mut ViewState,
        actions: &mut Vec<Action>,
        change: impl FnOnce(Option<f64>) -> Change,
    ) {
        let palette = theme::palette(ui.visuals());
        let small = |words: &str| {
            RichText::new(words)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet)
        };
        let room = self.room + self.field_width() - FIELD;
        ui.allocate_ui(vec2(room, grid::TARGET), |ui| {
            ui.horizontal(|ui| {
                ui.spacing_mut().item_spacing.x = grid::TIGHT;
                ui.label(small(self.before)).explained(self.term);
                let key = screen.field(self.field);
                let shown = self
                    .value
                    .map(|value| {
                        screen
                            .speaker
                            .digits(&self.unit.digits(value, self.decimals))
                    })
                    .unwrap_or_default();
                let outcome = Field::number(key.clone(), self.name, shown)
                    .hint(&self.hint)
                    .show_in(
                        ui,
                        vec2(self.field_width(), grid::TARGET),
                        &mut view.drafts,
                        actions,
                    );
                let read = |text: &str| {
                    self.unit
                        .read_optional(text)
                        .map_err(|error| screen.speaker.number_error(&error))
                };
                if let Some(value) = outcome.read(&mut view.drafts, read) {
                    actions.push(Action::edit(screen.shown.change(change(value)), key));
                }
                ui.label(small(self.unit.symbol));
            });
        });
    }
}
