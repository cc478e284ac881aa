//! The last message: what was saved, or why something failed, until it is dismissed.

use egui::{Align, Frame, Label, Layout, Margin, Panel, RichText, Ui};

use crate::ui::icons::{Icon, icon_button};
use crate::ui::theme::{self, TypeStyle};
use crate::ui::words::speaker;
use crate::workbench::{Action, Command, Message};

pub(super) fn message_ui(ui: &mut Ui, message: Option<&Message>, actions: &mut Vec<Action>) {
    let Some(message) = message else { return };
    let palette = theme::palette(ui.visuals());
    let (text, colour, fill) = match message {
        Message::Done(text) | Message::Taken(text) => {
            (text, palette.text_normal, palette.selection)
        }
        Message::Failed(text) => (text, palette.off_level, palette.stripe),
    };
    let frame = Frame::new()
        .fill(fill)
        .inner_margin(Margin::symmetric(16, 4));
    Panel::top("message")
        .resizable(false)
        .show_separator_line(false)
        .frame(frame)
        .show(ui, |ui| {
            ui.with_layout(Layout::right_to_left(Align::Min), |ui| {
                let speaker = speaker(ui.ctx());
                let name = speaker.word("shell-dismiss-message");
                let hover = speaker.word("shell-dismiss");
                if icon_button(ui, Icon::Delete, name, hover).clicked() {
                    actions.push(Action::Command(Command::DismissMessage));
                }
                let can_take_back = matches!(message, Message::Taken(_));
                if can_take_back && ui.button(speaker.word("shell-take-back")).clicked() {
                    actions.push(Action::Command(Command::Undo));
                }
                ui.with_layout(Layout::left_to_right(Align::Center), |ui| {
                    ui.add(
                        Label::new(
                            RichText::new(text)
                                .font(TypeStyle::Body.font_id())
                                .color(colour),
                        )
                        .wrap(),
                    );
                });
            });
        });
}
