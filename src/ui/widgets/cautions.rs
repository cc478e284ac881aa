//! The cautions: in words, at the foot of every screen, always in the same place. Where they would take much of it, those that
//! nobody is hurt by stand behind a line that counts them.

use std::sync::Arc;

use egui::scroll_area::ScrollBarVisibility;
use egui::style::{ScrollFadeStyle, ScrollStyle};
use egui::text::LayoutJob;
use egui::{Frame, Galley, Label, Margin, RichText, ScrollArea, TextFormat, Ui};

use crate::balance::{AllergenSummary, Balance, Caution, CautionFact};
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::icons::{Icon, sign_ui};
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::words::{capitalised, speaker};

/// Part of the window's height that all cautions may take before some are folded.
const MOST_UNFOLDED: f32 = 0.08;
/// Part of the window's height that cautions take before they scroll, and the least of it in points.
const MOST_PART: f32 = 0.3;
const LEAST_HEIGHT: f32 = 84.0;
/// Height of the line that counts what is folded, with the gap above it, in points.
const FOLD: f32 = 6.0 * grid::STEP;
/// Room left and right of the sentences, in points.
const MARGIN: i8 = 16;
/// Room above and below, in points.
const MARGIN_ABOVE: i8 = 6;
/// Between two cautions, in points.
const GAP: f32 = 2.0;
/// The sign before a sentence with the gap behind it, in points.
const SIGN: f32 = grid::EASY + grid::NEAR;
/// Room for the scroll bar and for "12 more below" beside it, in points.
const MORE: f32 = 27.0 * grid::STEP;

/// The cautions of a drink, laid out for a width: what is measured is what is drawn.
pub(in crate::ui) struct Cautions {
    sentences: Vec<Arc<Galley>>,
    /// Height that they may take together, in points.
    room: f32,
    scrolls: bool,
    /// The words that fold and unfold; `None` where everything has room.
    fold: Option<String>,
    /// Whether those stand behind the last sentence, which leaves room for them, rather than on a line of their own.
    fold_is_behind: bool,
    /// There is nothing yet that cautions could be about.
    is_empty_drink: bool,
}

impl Cautions {
    /// Those of a drink; the ones that fold are among them when `is_open`.
    pub(in crate::ui) fn of_drink(ui: &Ui, screen: &Screen<'_>, is_open: bool) -> Self {
        let (speaker, balance) = (screen.speaker, screen.balance);
        let (firm, folding): (Vec<&Caution>, Vec<&Caution>) = balance
            .cautions
            .iter()
            .partition(|caution| !may_fold(&caution.fact));
        let all: Vec<&Caution> = firm.iter().chain(&folding).copied().collect();
        // What takes much of the height is set smaller, before anything is folded.
        let most = ui.content_rect().height() * MOST_UNFOLDED;
        let set = |style| {
            let laid_out = sentences(ui, speaker, &all, style, room_for_words(ui));
            let height = height_of(&laid_out) + 2.0 * f32::from(MARGIN_ABOVE);
            (laid_out, height <= most)
        };
        let mut style = TypeStyle::Body;
        let (mut laid_out, mut has_room) = set(style);
        if !has_room {
            style = TypeStyle::Small;
            (laid_out, has_room) = set(style);
        }
        let fold =
            (!has_room && !folding.is_empty()).then(|| fold_words(speaker, &folding, is_open));
        if fold.is_some() && !is_open {
            laid_out.truncate(firm.len());
        }
        let shown = &all[..laid_out.len()];
        Self {
            is_empty_drink: balance.resolved.lines().next().is_none(),
            ..Self::arranged(ui, speaker, (shown, laid_out), style, fold)
        }
    }

    /// Those of several drinks by which somebody is hurt, for a place where there is no room for more.
    pub(in crate::ui) fn that_hurt(ui: &Ui, speaker: Speaker<'_>, drinks: &[&Balance]) -> Self {
        let mut shown: Vec<Caution> = Vec::new();
        let mut allergens: Option<AllergenSummary> = None;
        for caution in drinks.iter().flat_map(|drink| &drink.cautions) {
            if let CautionFact::Allergens(of_drink) = &caution.fact {
                allergens = Some(match allergens {
                    Some(before) => before.with(of_drink),
                    None => of_drink.clone(),
                });
            } else if !may_fold(&caution.fact) && !shown.contains(caution) {
                shown.push(caution.clone());
            }
        }
        let fact = allergens.map(CautionFact::Allergens);
        shown.extend(fact.map(|fact| Caution { fact }));
        let shown: Vec<&Caution> = shown.iter().collect();
        let laid_out = sentences(ui, speaker, &shown, TypeStyle::Small, room_for_words(ui));
        Self::arranged(ui, speaker, (&shown, laid_out), TypeStyle::Small, None)
    }

    fn arranged(
        ui: &Ui,
        speaker: Speaker<'_>,
        (shown, laid_out): (&[&Caution], Vec<Arc<Galley>>),
        style: TypeStyle,
        fold: Option<String>,
    ) -> Self {
        let margins = 2.0 * f32::from(MARGIN_ABOVE);
        let last_row = laid_out.last().and_then(|last| last.rows.last());
        let fold_is_behind = fold.as_ref().zip(last_row).is_some_and(|(words, row)| {
            row.rect().width() + grid::APART + fold_width(ui, words) <= room_for_words(ui)
        });
        let has_line = fold.is_some() && !fold_is_behind;
        let most = (ui.content_rect().height() * MOST_PART).max(LEAST_HEIGHT)
            - margins
            - if has_line { FOLD } else { 0.0 };
        let room = height_of(&laid_out);
        let scrolls = room > most;
        let mut arranged = Self {
            sentences: laid_out,
            room,
            scrolls,
            fold_is_behind: fold_is_behind && !scrolls,
            fold,
            is_empty_drink: false,
        };
        if scrolls {
            let narrow = sentences(ui, speaker, shown, style, room_for_words(ui) - MORE);
            // Only whole sentences, so that none is cut in half; one at least.
            let whole = (1..=narrow.len())
                .rev()
                .find(|count| height_of(&narrow[..*count]) <= most)
                .unwrap_or(1);
            arranged.room = height_of(&narrow[..whole]);
            arranged.sentences = narrow;
        }
        arranged
    }

    /// Whether there is nothing to be said.
    pub(in crate::ui) fn is_empty(&self) -> bool {
        self.sentences.is_empty() && self.fold.is_none()
    }

    /// Height with the margins, in points.
    pub(in crate::ui) fn height(&self) -> f32 {
        let has_line = self.fold.is_some() && !self.fold_is_behind;
        let fold = if has_line { FOLD } else { 0.0 };
        (self.room + fold).max(grid::EASY + grid::NEAR) + 2.0 * f32::from(MARGIN_ABOVE)
    }

    pub(in crate::ui) fn show(&self, ui: &mut Ui, is_open: &mut bool) {
        let palette = theme::palette(ui.visuals());
        let is_empty = self.is_empty();
        let fill = if is_empty {
            palette.ground
        } else {
            palette.caution_fill
        };
        let frame = Frame::new()
            .fill(fill)
            .inner_margin(Margin::symmetric(MARGIN, MARGIN_ABOVE));
        frame.show(ui, |ui| {
            ui.set_min_size(ui.available_size());
            ui.spacing_mut().item_spacing.y = GAP;
            if is_empty {
                let speaker = speaker(ui.ctx());
                let words = if self.is_empty_drink {
                    speaker.word("shell-cautions-empty-drink")
                } else {
                    speaker.word("shell-cautions-none")
                };
                ui.label(
                    RichText::new(words)
                        .font(TypeStyle::Small.font_id())
                        .color(palette.text_quiet),
                );
            } else if self.scrolls {
                self.scroll_ui(ui);
            } else {
                self.sentences_ui(ui);
            }
            if let Some(words) = &self.fold
                && self.fold_in_place_ui(ui, words, *is_open)
            {
                *is_open = !*is_open;
                ui.ctx().request_repaint();
            }
        });
    }

    /// The words that fold, behind the last sentence or below it.
    fn fold_in_place_ui(&self, ui: &mut Ui, words: &str, is_open: bool) -> bool {
        if !self.fold_is_behind {
            return fold_ui(ui, words, is_open);
        }
        let last_row = self.sentences.last().and_then(|last| last.rows.last());
        let row = last_row.map_or(FOLD - GAP, |row| row.rect().height());
        let bottom = ui.cursor().top() - GAP;
        let right = ui.max_rect().right();
        let place = egui::Rect::from_min_max(
            egui::pos2(right - fold_width(ui, words), bottom - row - 1.0),
            egui::pos2(right, bottom + 1.0),
        );
        let builder = egui::UiBuilder::new().max_rect(place);
        fold_ui(&mut ui.new_child(builder), words, is_open)
    }

    fn sentences_ui(&self, ui: &mut Ui) {
        for sentence in &self.sentences {
            ui.horizontal_top(|ui| {
                ui.spacing_mut().item_spacing.x = grid::NEAR;
                sign_ui(ui, Icon::Caution, theme::palette(ui.visuals()).caution);
                ui.add(Label::new(sentence.clone()));
            });
        }
    }

    fn scroll_ui(&self, ui: &mut Ui) {
        let palette = theme::palette(ui.visuals());
        let right_top = ui.max_rect().right_top();
        // No fading: every sentence that is there can be read to its end.
        let fade = ScrollFadeStyle {
            strength: 0.0,
            ..ScrollFadeStyle::default()
        };
        ui.spacing_mut().scroll = ScrollStyle {
            bar_width: 8.0,
            foreground_color: true,
            fade,
            ..ScrollStyle::solid()
        };
        let output = ScrollArea::vertical()
            .id_salt("cautions")
            .auto_shrink(false)
            .max_height(self.room)
            .min_scrolled_height(0.0)
            .scroll_bar_visibility(ScrollBarVisibility::AlwaysVisible)
            .show(ui, |ui| self.sentences_ui(ui));
        let hidden = self.below(output.state.clamped_offset().y + output.inner_rect.height());
        if hidden > 0 {
            let place = right_top - egui::vec2(grid::EASY + grid::TIGHT, -self.room);
            let words = say!(speaker(ui.ctx()), "shell-cautions-below", count: hidden);
            let font = TypeStyle::Small.font_id();
            ui.painter().text(
                place,
                egui::Align2::RIGHT_BOTTOM,
                words,
                font,
                palette.caution,
            );
        }
    }

    /// How many sentences end below a height, in points.
    fn below(&self, end: f32) -> usize {
        (1..=self.sentences.len())
            .filter(|count| height_of(&self.sentences[..*count]) > end + 1.0)
            .count()
    }
}

fn height_of(sentences: &[Arc<Galley>]) -> f32 {
    let gaps = GAP * sentences.len().saturating_sub(1) as f32;
    sentences.iter().map(|galley| galley.size().y).sum::<f32>() + gaps
}

/// Whether a caution may stand behind a line that counts it: not one by which somebody is burnt, chokes, or eats what they must
/// not.
fn may_fold(fact: &CautionFact) -> bool {
    match fact {
        CautionFact::TooHot(_)
        | CautionFact::HotThroughWideStraw(_)
        | CautionFact::Scalds(_)
        | CautionFact::Allergens(_)
        | CautionFact::StatementsContradict(_)
        | CautionFact::ClaimsContradicted(_)
        | CautionFact::Choking(_) => false,
        CautionFact::KeptAt(_)
        | CautionFact::UseWithin(_)
        | CautionFact::Curdles { .. }
        | CautionFact::MayCurdle { .. }
        | CautionFact::Caffeine { .. }
        | CautionFact::CaffeineNotKnown(_)
        | CautionFact::Additives(_)
        | CautionFact::Undissolved { .. }
        | CautionFact::RunsOver { .. }
        | CautionFact::NotKnown(_) => true,
    }
}

/// "3 more cautions: caffeine, holding".
fn fold_words(speaker: Speaker<'_>, folding: &[&Caution], is_open: bool) -> String {
    if is_open {
        return speaker.word("shell-cautions-fold").to_owned();
    }
    let mut kinds: Vec<&str> = Vec::new();
    for caution in folding {
        let kind = speaker.caution_kind(caution.kind());
        if !kinds.contains(&kind) {
            kinds.push(kind);
        }
    }
    say!(speaker, "shell-cautions-folded", count: folding.len(), kinds: kinds.join(", "))
}

/// Width of the words that fold with the sign before them, in points.
fn fold_width(ui: &Ui, words: &str) -> f32 {
    let words = words.to_owned();
    let font = TypeStyle::Small.font_id();
    let galley = ui
        .painter()
        .layout_no_wrap(words, font, egui::Color32::PLACEHOLDER);
    galley.size().x + SIGN + 2.0 * grid::TIGHT
}

/// The line that folds and unfolds; `true` when it was pressed.
fn fold_ui(ui: &mut Ui, words: &str, is_open: bool) -> bool {
    let palette = theme::palette(ui.visuals());
    let icon = if is_open {
        Icon::ChevronDown
    } else {
        Icon::ChevronRight
    };
    let line = egui::vec2(ui.available_width(), ui.available_height().min(FOLD - GAP));
    let layout = egui::Layout::left_to_right(egui::Align::Center);
    ui.spacing_mut().interact_size.y = 0.0;
    ui.allocate_ui_with_layout(line, layout, |ui| {
        ui.spacing_mut().item_spacing.x = grid::NEAR;
        ui.spacing_mut().button_padding = egui::vec2(grid::TIGHT, 1.0);
        sign_ui(ui, icon, palette.caution);
        let words = RichText::new(words)
            .font(TypeStyle::Small.font_id())
            .color(palette.caution);
        let button = egui::Button::new(words).frame_when_inactive(false);
        ui.add(button).clicked()
    })
    .inner
}

/// Width that sentences have behind their sign, in points.
fn room_for_words(ui: &Ui) -> f32 {
    ui.available_width() - 2.0 * f32::from(MARGIN) - SIGN
}

fn sentences(
    ui: &Ui,
    speaker: Speaker<'_>,
    cautions: &[&Caution],
    style: TypeStyle,
    width: f32,
) -> Vec<Arc<Galley>> {
    let palette = theme::palette(ui.visuals());
    let of = |caution: &&Caution| {
        let kind = speaker.caution_kind(caution.kind());
        let text = speaker.caution(&caution.fact);
        let mut job = sentence(kind, &text, style, palette);
        job.wrap.max_width = width;
        ui.fonts_mut(|fonts| fonts.layout_job(job))
    };
    cautions.iter().map(of).collect()
}

/// "Allergen contains milk": the kind strong, its reason behind it, with a space for those who have it read to them.
fn sentence(kind: &str, text: &str, style: TypeStyle, palette: &theme::Palette) -> LayoutJob {
    let mut job = LayoutJob::default();
    let set = |style: TypeStyle, color| TextFormat {
        font_id: style.font_id(),
        color,
        ..TextFormat::default()
    };
    // There is one strong style, of the size of the body.
    let strong = match style {
        TypeStyle::Body => TypeStyle::Strong,
        other => other,
    };
    job.append(&capitalised(kind), 0.0, set(strong, palette.caution));
    let text = format!(" {text}");
    job.append(&text, grid::TIGHT, set(style, palette.text_strong));
    job
}
