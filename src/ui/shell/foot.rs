//! The line at the foot of the window: whether something is unsaved, and what was done or why it failed, until it is dismissed.
//!
//! It is always there and always as high, so that nothing moves when there is something to tell; what is longer than the line
//! grows over the sheet, above the cautions.

use egui::{
    Align, Align2, Area, Frame, Id, Label, Layout, Margin, Order, Panel, Rect, RichText, Sense, Ui,
    pos2, vec2,
};

use crate::ui::book_in_hand::BookInHand;
use crate::ui::icons::{Icon, icon_button};
use crate::ui::safekeeping;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::view_state::ViewState;
use crate::ui::words::speaker;
use crate::workbench::{Action, Command, Message};

/// Height of the line, in points.
const HEIGHT: f32 = grid::TARGET;

/// Room left and right, in points.
const MARGIN: i8 = 16;

/// The line itself; hands back where there is room for what is told.
pub(super) fn foot_ui(ui: &mut Ui, in_hand: &BookInHand<'_>) -> Rect {
    let palette = theme::palette(ui.visuals());
    let frame = Frame::new()
        .fill(palette.ground)
        .inner_margin(Margin::symmetric(MARGIN, 0));
    let panel = Panel::bottom("foot")
        .exact_size(HEIGHT)
        .resizable(false)
        .frame(frame)
        .show(ui, |ui| {
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                unsaved_ui(ui, in_hand);
                ui.min_rect().right()
            })
            .inner
        });
    let line = panel.response.rect;
    Rect::from_min_max(pos2(panel.inner + grid::EASY, line.top()), line.max)
}

/// What is told, in the room for it; what needs more stands above the cautions, whose top this is. `height` is that of the last
/// frame.
pub(super) fn told_ui(
    ui: &Ui,
    in_hand: &BookInHand<'_>,
    (line, cautions): (Rect, f32),
    height: &mut f32,
    view: &mut ViewState,
    actions: &mut Vec<Action>,
) {
    if in_hand.message.is_none() && !safekeeping::has_strip(in_hand) {
        return;
    }
    let bottom = if *height > line.height() + 1.0 {
        cautions
    } else {
        line.bottom()
    };
    let told = Area::new(Id::unique("told at the foot"))
        .order(Order::Middle)
        .movable(false)
        .constrain(false)
        .fade_in(false)
        .pivot(Align2::RIGHT_BOTTOM)
        .fixed_pos(pos2(line.right(), bottom))
        .show(ui.ctx(), |ui| {
            ui.set_width(line.width());
            ui.spacing_mut().item_spacing.y = 0.0;
            safekeeping::strip_ui(ui, in_hand, view, actions);
            if let Some(message) = in_hand.message {
                message_ui(ui, message, actions);
            }
        });
    let now = told.response.rect.height();
    if (now - *height).abs() > 0.5 {
        *height = now;
        ui.ctx().request_repaint();
    }
}

/// Takes the same room whether something is unsaved or not.
fn unsaved_ui(ui: &mut Ui, in_hand: &BookInHand<'_>) {
    let palette = theme::palette(ui.visuals());
    let words = in_hand.speaker.word("strip-unsaved");
    let font = TypeStyle::Small.font_id();
    ui.spacing_mut().item_spacing.x = grid::TIGHT;
    let (dot, _) = ui.allocate_exact_size(vec2(grid::NEAR, grid::NEAR), Sense::hover());
    if in_hand.unsaved {
        ui.painter()
            .circle_filled(dot.center(), 3.0, palette.caution);
        ui.label(RichText::new(words).font(font).color(palette.caution));
    } else {
        let galley = ui
            .painter()
            .layout_no_wrap(words.to_owned(), font, palette.caution);
        ui.allocate_exact_size(galley.size(), Sense::hover());
    }
}

fn message_ui(ui: &mut Ui, message: &Message, actions: &mut Vec<Action>) {
    let palette = theme::palette(ui.visuals());
    let (text, colour, fill) = match message {
        Message::Done(text) => (text, palette.text_normal, palette.selection),
        Message::Failed(text) => (text, palette.off_level, palette.stripe),
    };
    let frame = Frame::new()
        .fill(fill)
        .inner_margin(Margin::symmetric(MARGIN, 0));
    frame.show(ui, |ui| {
        ui.set_min_height(HEIGHT);
        let line = vec2(ui.available_width(), HEIGHT);
        ui.allocate_ui_with_layout(line, Layout::right_to_left(Align::Min), |ui| {
            let speaker = speaker(ui.ctx());
            let name = speaker.word("shell-dismiss-message");
            let hover = speaker.word("shell-dismiss");
            if icon_button(ui, Icon::Delete, name, hover).clicked() {
                actions.push(Action::Command(Command::DismissMessage));
            }
            ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                let words = RichText::new(text).font(TypeStyle::Body.font_id());
                ui.add(Label::new(words.color(colour)).wrap());
            });
        });
    });
}
