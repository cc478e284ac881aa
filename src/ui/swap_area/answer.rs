//! The answer to a swap: three drinks side by side, each with its figures and its level.

use egui::{Align, Color32, Label, Layout, Response, RichText, Ui};

use super::accept;
use super::figures::figures_ui;
use super::model;
use super::state::SwapState;
use crate::balance::{Balance, Difference};
use crate::quantity::show_grouped;
use crate::say::{Argument, Speaker, say};
use crate::swap::{Answer, Suggestion};
use crate::ui::Screen;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::spreadsheet::copy_ui;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::{level_height, level_ui};
use crate::ui::words::capitalised;
use crate::workbench::{Action, SwapFound};

/// The narrowest column, in points: a level with its labels.
const COLUMN: f32 = 66.0 * grid::STEP;
/// From this width on running text would be too wide to read, in points.
const TEXT_WIDTH: f32 = 180.0 * grid::STEP;

/// Reasons that are shown before the others are asked for.
const FIRST_REASONS: usize = 2;
/// Room for the table of suggestions, in points.
const CHOICE: f32 = 145.0 * grid::STEP;
/// Room for the sentences beside it, in points.
const SENTENCES: f32 = 100.0 * grid::STEP;

/// One of the drinks that are compared.
struct AnsweredDrink<'answer> {
    title: String,
    balance: &'answer Balance,
    difference: &'answer Difference,
    /// What changes against the version in hand.
    changes: Vec<String>,
    kind: Kind<'answer>,
}

enum Kind<'answer> {
    Standard,
    Plain,
    Suggestion(&'answer Suggestion),
}

/// Standard, plain swap and suggestion.
pub(super) fn side_by_side_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    found: &SwapFound,
    chosen: Option<&Suggestion>,
    is_current: bool,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let answer = &found.answer;
    if answer.suggestions.is_empty() {
        // With suggestions the two drinks stand in their table.
        let table = screen.speaker.word("swap-screen-standard-and-plain");
        copy_ui(ui, table, || model::as_table(screen, answer));
    }
    let drinks = drinks(screen, found, chosen);
    let fits = |columns: usize| {
        ui.available_width() >= COLUMN * columns as f32 + grid::APART * (columns as f32 - 1.0)
    };
    // Where there is no room for all, the standard gives up its level first: it is the line in the others.
    let (in_line, in_columns) = if fits(drinks.len()) {
        drinks.split_at(0)
    } else {
        drinks.split_at(1)
    };
    let columns = if fits(in_columns.len()) {
        in_columns.len()
    } else {
        1
    };
    for drink in in_line {
        in_line_ui(ui, screen, drink);
        ui.add_space(grid::APART);
    }
    for drinks in in_columns.chunks(columns) {
        ui.scope(|ui| {
            ui.spacing_mut().item_spacing.x = grid::APART;
            let gaps = grid::APART * (drinks.len() - 1) as f32;
            let width = (ui.available_width() - gaps) / drinks.len() as f32;
            // One title may be broken: the figures and levels of all stay in line.
            let heights = Heights::of(ui, screen.speaker, answer, drinks, width);
            ui.columns(drinks.len(), |columns| {
                for (ui, drink) in columns.iter_mut().zip(drinks) {
                    ui.with_layout(Layout::top_down(Align::Min), |ui| {
                        filled_up(ui, heights.title, |ui| title_ui(ui, drink).rect.height());
                        let drink = (drink, &heights);
                        drink_ui(ui, screen, answer, drink, is_current, state, actions);
                    });
                }
            });
        });
        ui.add_space(grid::APART);
    }
}

/// What the drink is called before anything is brought back.
fn plain_title(answer: &Answer) -> &'static str {
    if answer.question.brings_back() {
        "swap-screen-as-it-is-made"
    } else {
        "swap-screen-plain-swap"
    }
}

fn title_height(ui: &Ui, drink: &AnsweredDrink<'_>, width: f32) -> f32 {
    let (title, font) = (drink.title.clone(), TypeStyle::Heading.font_id());
    ui.fonts_mut(|fonts| fonts.layout(title, font, Color32::PLACEHOLDER, width))
        .size()
        .y
}

/// The most that the parts of drinks side by side need, in points: what follows each part stands in one line, the buttons too.
#[derive(Default)]
struct Heights {
    title: f32,
    level: f32,
    changes: f32,
}

impl Heights {
    fn of(
        ui: &Ui,
        speaker: Speaker<'_>,
        answer: &Answer,
        drinks: &[AnsweredDrink<'_>],
        width: f32,
    ) -> Self {
        let line = line_words(speaker, answer);
        let mut heights = Self::default();
        for drink in drinks {
            let level = level_height(ui, drink.difference, line, width, speaker);
            heights.title = heights.title.max(title_height(ui, drink, width));
            heights.level = heights.level.max(level);
            heights.changes = heights.changes.max(changes_height(ui, drink, width));
        }
        heights
    }
}

fn changes_height(ui: &Ui, drink: &AnsweredDrink<'_>, width: f32) -> f32 {
    let gap = ui.spacing().item_spacing.y;
    let font = TypeStyle::Body.font_id();
    let heights = drink.changes.iter().map(|change| {
        let laid_out =
            ui.painter()
                .layout(change.clone(), font.clone(), Color32::PLACEHOLDER, width);
        laid_out.size().y + gap
    });
    heights.sum()
}

/// Draws a part, which says how high it came out, and leaves the room that others beside it need more.
fn filled_up(ui: &mut Ui, height: f32, part: impl FnOnce(&mut Ui) -> f32) {
    let taken = part(ui);
    ui.add_space((height - taken).max(0.0));
}

/// The name of a drink; standard and plain swap are terms.
fn title_ui(ui: &mut Ui, drink: &AnsweredDrink<'_>) -> Response {
    let palette = theme::palette(ui.visuals());
    let title = RichText::new(&drink.title).font(TypeStyle::Heading.font_id());
    let term = match drink.kind {
        Kind::Standard => Some(Term::Standard),
        Kind::Plain => Some(Term::PlainSwap),
        Kind::Suggestion(_) => None,
    };
    ui.label(title.color(palette.text_strong)).explained(term)
}

/// A drink as its name and its figures in one line.
fn in_line_ui(ui: &mut Ui, screen: &Screen<'_>, drink: &AnsweredDrink<'_>) {
    let palette = theme::palette(ui.visuals());
    title_ui(ui, drink);
    let figures = model::compared(screen, drink.balance, None);
    let words: Vec<String> = figures
        .iter()
        .map(|compared| {
            format!(
                "{} {}",
                compared.row.name,
                compared.row.figure(screen.speaker)
            )
        })
        .collect();
    ui.add(Label::new(RichText::new(words.join(" · ")).color(palette.text_normal)).wrap());
}

fn drinks<'answer>(
    screen: &Screen<'_>,
    found: &'answer SwapFound,
    chosen: Option<&'answer Suggestion>,
) -> Vec<AnsweredDrink<'answer>> {
    let answer = &found.answer;
    let before = &screen.balance.resolved;
    let speaker = screen.speaker;
    let changes = |after: &Balance| model::changes_in_words(speaker, before, &after.resolved);
    let mut drinks = vec![
        AnsweredDrink {
            title: speaker.word("swap-screen-standard").to_owned(),
            balance: &answer.standard,
            difference: &found.level,
            changes: Vec::new(),
            kind: Kind::Standard,
        },
        AnsweredDrink {
            title: speaker.word(plain_title(answer)).to_owned(),
            balance: &answer.plain,
            difference: &answer.plain_difference,
            changes: changes(&answer.plain),
            kind: Kind::Plain,
        },
    ];
    drinks.extend(chosen.map(|suggestion| AnsweredDrink {
        title: capitalised(&model::kind_words(speaker, suggestion)),
        balance: &suggestion.balance,
        difference: &suggestion.difference,
        changes: changes(&suggestion.balance),
        kind: Kind::Suggestion(suggestion),
    }));
    drinks
}

/// The suggestions and what was found, side by side where there is room; the one that is looked at.
pub(super) fn choice_and_sentences_ui<'answer>(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &'answer Answer,
    state: &mut SwapState,
) -> Option<&'answer Suggestion> {
    if answer.suggestions.is_empty() || ui.available_width() < CHOICE + SENTENCES {
        let chosen = choice_ui(ui, screen, answer, state);
        sentences_ui(ui, screen, answer, chosen, state);
        return chosen;
    }
    ui.horizontal_top(|ui| {
        ui.spacing_mut().item_spacing.x = grid::FAR;
        let chosen = ui.vertical(|ui| choice_ui(ui, screen, answer, state)).inner;
        ui.vertical(|ui| {
            ui.spacing_mut().item_spacing.x = grid::NEAR;
            sentences_ui(ui, screen, answer, chosen, state);
        });
        chosen
    })
    .inner
}

/// The suggestions by what each is best at, with what speaks for each; the one that is looked at.
fn choice_ui<'answer>(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &'answer Answer,
    state: &mut SwapState,
) -> Option<&'answer Suggestion> {
    let last = answer.suggestions.len().saturating_sub(1);
    state.suggestion = state.suggestion.min(last);
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    if !answer.suggestions.is_empty() {
        egui::Grid::new("suggestions")
            .spacing([grid::APART, grid::TIGHT])
            .show(ui, |ui| {
                let heads = [
                    (speaker.word("swap-screen-column-suggestion"), None),
                    ("", None),
                    (
                        speaker.word("swap-screen-column-overall"),
                        Some(Term::Distance),
                    ),
                    (speaker.word("swap-screen-column-sugar"), None),
                    (speaker.word("swap-screen-column-cost"), None),
                ];
                for (head, term) in heads {
                    ui.label(RichText::new(head).color(palette.text_quiet))
                        .explained(term);
                }
                ui.end_row();
                for (at, suggestion) in answer.suggestions.iter().enumerate() {
                    let words = model::kind_words(speaker, suggestion);
                    let merits = model::merits(screen, answer, suggestion);
                    let is_chosen = at == state.suggestion;
                    let response = ui.selectable_label(is_chosen, &words);
                    for merit in &merits {
                        ui.label(RichText::new(merit).color(palette.text_normal));
                    }
                    ui.end_row();
                    if response.clicked() && !is_chosen {
                        state.suggestion = at;
                        state.begin_anew();
                    }
                }
            });
        let table = speaker.word("swap-screen-suggestions");
        copy_ui(ui, table, || model::as_table(screen, answer));
        ui.add_space(grid::NEAR);
    }
    answer.suggestions.get(state.suggestion)
}

/// What the search found, in sentences; gaps and reasons plainly.
fn sentences_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    chosen: Option<&Suggestion>,
    state: &mut SwapState,
) {
    let palette = theme::palette(ui.visuals());
    let put = |ui: &mut Ui, words: &str, colour: egui::Color32| {
        ui.add(Label::new(RichText::new(words).color(colour)).wrap())
    };
    let speaker = screen.speaker;
    ui.scope(|ui| {
        ui.set_max_width(TEXT_WIDTH.min(ui.available_width()));
        ui.spacing_mut().item_spacing.y = grid::TIGHT;
        if let Some(suggestion) = chosen {
            let words = speaker.suggestion(answer, suggestion);
            put(ui, &words, palette.text_strong);
            let words = scatter_words(speaker, suggestion.within_scatter, &suggestion.difference);
            put(ui, words, palette.text_normal).explained(Term::Scatter);
        }
        let shown = if state.all_reasons {
            answer.reasons.len()
        } else {
            FIRST_REASONS
        };
        for reason in answer.reasons.iter().take(shown) {
            let reason = &speaker.swap_reason(reason);
            if answer.suggestions.is_empty() {
                let words = say!(speaker, "swap-screen-no-suggestion", reason: reason);
                put(ui, &words, palette.caution);
            } else {
                let words = format!("{}.", capitalised(reason));
                put(ui, &words, palette.text_normal);
            }
        }
        let more = answer.reasons.len().saturating_sub(shown);
        let words = say!(speaker, "swap-screen-show-more", count: more);
        if more > 0 && ui.button(words).clicked() {
            state.all_reasons = true;
        }
        let after = chosen.map_or(&answer.plain, |suggestion| &suggestion.balance);
        let diet = model::diet_words(speaker, &answer.standard, after);
        let changes = diet.len() > 1 || answer.standard.allergens != after.allergens;
        let colour = if changes {
            palette.text_strong
        } else {
            palette.text_quiet
        };
        put(ui, &format!("{}.", diet.join(". ")), colour);
        let small = RichText::new(search_words(speaker, answer)).font(TypeStyle::Small.font_id());
        ui.add(Label::new(small.color(palette.text_quiet)).wrap());
    });
}

/// What the difference that is left is against the counter's own scatter.
pub(super) fn scatter_words(
    speaker: Speaker<'_>,
    within_scatter: Option<bool>,
    difference: &Difference,
) -> &'static str {
    speaker.word(match (within_scatter, difference.within_one_step()) {
        (Some(true), _) => "swap-screen-within-scatter",
        (None, _) => "swap-screen-within-scatter-known",
        (Some(false), Some(true)) => "swap-screen-beyond-scatter-within-step",
        (Some(false), _) => "swap-screen-beyond-scatter",
    })
}

/// What the suggestions are compared with, and whether a better one is possible.
fn search_words(speaker: Speaker<'_>, answer: &Answer) -> String {
    let standard = speaker.word(if answer.standard_is_approved {
        "swap-screen-compared-with-approved"
    } else {
        "swap-screen-compared-with-itself"
    });
    if answer.evaluated == 0 {
        return standard.to_owned();
    }
    let proof = if answer.proven_optimal {
        "swap-screen-proven"
    } else {
        "swap-screen-not-proven"
    };
    let number = show_grouped(answer.candidates);
    let count = Argument::Count(answer.candidates);
    let proof = speaker.say(proof, &[("count", count), ("number", number.into())]);
    format!("{standard} {proof}")
}

fn drink_ui(
    ui: &mut Ui,
    screen: &Screen<'_>,
    answer: &Answer,
    (drink, heights): (&AnsweredDrink<'_>, &Heights),
    is_current: bool,
    state: &mut SwapState,
    actions: &mut Vec<Action>,
) {
    let palette = theme::palette(ui.visuals());
    ui.spacing_mut().item_spacing.x = grid::NEAR;
    let is_standard = matches!(drink.kind, Kind::Standard);
    let speaker = screen.speaker;
    let standard = (!is_standard).then_some(&*answer.standard);
    let figures = model::compared(screen, drink.balance, standard);
    figures_ui(ui, speaker, &figures);
    ui.add_space(grid::EASY);
    let line = line_words(speaker, answer);
    filled_up(ui, heights.level, |ui| {
        level_ui(ui, drink.difference, line, speaker).rect.height()
    });
    ui.add_space(grid::EASY);
    if !is_standard {
        filled_up(ui, heights.changes, |ui| {
            let top = ui.next_widget_position().y;
            for change in &drink.changes {
                ui.add(Label::new(RichText::new(change).color(palette.text_strong)).wrap());
            }
            ui.next_widget_position().y - top
        });
        if drink.changes.is_empty() {
            let words = speaker.word("swap-screen-no-line-changes");
            ui.label(RichText::new(words).color(palette.text_quiet));
        }
        ui.add_space(grid::NEAR);
    }
    // Nothing is kept while another answer is looked for.
    ui.add_enabled_ui(is_current, |ui| match &drink.kind {
        Kind::Standard => {}
        Kind::Plain => accept::plain_ui(ui, screen, answer, state, actions),
        Kind::Suggestion(suggestion) => {
            let wanted = accept::wanted_name(screen, answer, suggestion, state);
            accept::main_ui(
                ui,
                screen,
                answer,
                &suggestion.changes,
                &wanted,
                state,
                actions,
            );
        }
    });
}

/// What the line of the level is.
pub(in crate::ui) fn line_words(speaker: Speaker<'_>, answer: &Answer) -> &'static str {
    speaker.word(if answer.standard_is_approved {
        "swap-screen-the-standard"
    } else {
        "swap-screen-this-version"
    })
}
