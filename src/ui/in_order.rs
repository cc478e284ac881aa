//! Keys and clicks in the order in which they were made.
//!
//! A slow machine hands over several of them for one frame. Commands are looked for before the fields are drawn, and a field takes
//! all letters of a frame wherever the keyboard went in between: a save would write the state before the letters typed ahead of it.
//! What decides something therefore gets a frame of its own.

use std::collections::VecDeque;

use egui::{Context, Event, Key, RawInput, Ui};

/// What an event is to those beside it in a frame.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Part {
    /// Letters and what moves among them: as many in a frame as there are.
    Typing,
    /// A command, or a key that moves the keyboard elsewhere.
    Deciding,
    /// A press of the pointer, which moves the keyboard too.
    Pointing,
    /// Nothing that could be in the wrong order.
    Other,
}

fn part(event: &Event) -> Part {
    match event {
        Event::Text(_) | Event::Ime(_) | Event::Paste(_) => Part::Typing,
        Event::Copy | Event::Cut => Part::Deciding,
        Event::PointerButton { .. } => Part::Pointing,
        Event::Key {
            key,
            pressed: true,
            modifiers,
            ..
        } => {
            let held = modifiers.ctrl || modifiers.command || modifiers.alt;
            let moves = matches!(
                key,
                Key::Tab
                    | Key::Enter
                    | Key::Escape
                    | Key::Insert
                    | Key::ArrowUp
                    | Key::ArrowDown
                    | Key::F1
            );
            if held || moves {
                Part::Deciding
            } else {
                Part::Typing
            }
        }
        _ => Part::Other,
    }
}

/// A key that is held down: one press more or less in a frame decides nothing, and a queue of them would run on after the key.
fn repeats(one: &Event, other: &Event) -> bool {
    match (one, other) {
        (
            Event::Key { key, modifiers, .. },
            Event::Key {
                key: again,
                modifiers: held,
                repeat: true,
                ..
            },
        ) => (key, modifiers) == (again, held),
        _ => false,
    }
}

/// How many events from the beginning belong into one frame.
fn first_frame<'event>(events: impl Iterator<Item = &'event Event>) -> usize {
    let mut last: Option<(Part, &Event)> = None;
    let mut count = 0;
    for event in events {
        let this = part(event);
        if this != Part::Other {
            if let Some((before, earlier)) = last {
                let goes_together =
                    before == this && this != Part::Deciding || repeats(earlier, event);
                if !goes_together {
                    break;
                }
            }
            last = Some((this, event));
        }
        count += 1;
    }
    count
}

/// Holds back what belongs into a later frame.
#[derive(Default)]
pub(super) struct InOrder {
    waiting: VecDeque<Event>,
}

impl egui::Plugin for InOrder {
    fn debug_name(&self) -> &'static str {
        "events in order"
    }

    fn input_hook(&mut self, ctx: &Context, input: &mut RawInput) {
        self.waiting.extend(input.events.drain(..));
        let count = first_frame(self.waiting.iter());
        input.events.extend(self.waiting.drain(..count));
        if !self.waiting.is_empty() {
            ctx.request_repaint();
        }
    }

    fn on_end_pass(&mut self, ui: &mut Ui) {
        if !self.waiting.is_empty() {
            ui.ctx().request_repaint();
        }
    }
}

#[cfg(test)]
mod tests {
    use egui::Modifiers;

    use super::*;

    fn key(key: Key, modifiers: Modifiers, repeat: bool) -> Event {
        Event::Key {
            key,
            physical_key: None,
            pressed: true,
            repeat,
            modifiers,
        }
    }

    fn frames(events: &[Event]) -> Vec<usize> {
        let mut rest = events;
        let mut counts = Vec::new();
        while !rest.is_empty() {
            let count = first_frame(rest.iter());
            counts.push(count);
            rest = &rest[count..];
        }
        counts
    }

    #[test]
    fn a_command_gets_a_frame_of_its_own_and_letters_share_one() {
        let letter = |text: &str| Event::Text(text.to_owned());
        let save = || key(Key::S, Modifiers::COMMAND, false);
        assert_eq!(frames(&[letter("1"), letter("6"), save()]), [2, 1]);
        let enter = key(Key::Enter, Modifiers::NONE, false);
        assert_eq!(
            frames(&[save(), letter("1"), enter, save(), letter("2")]),
            [1, 1, 1, 1, 1]
        );
        // The pointer may come, press and let go in one frame; what is typed behind that is typed elsewhere.
        let moved = Event::PointerMoved(egui::Pos2::ZERO);
        let button = |pressed| Event::PointerButton {
            pos: egui::Pos2::ZERO,
            button: egui::PointerButton::Primary,
            pressed,
            modifiers: Modifiers::NONE,
        };
        assert_eq!(
            frames(&[letter("1"), moved, button(true), button(false), letter("2")]),
            [2, 2, 1]
        );
    }

    #[test]
    fn a_key_that_is_held_down_makes_no_queue() {
        let down = |repeat| key(Key::ArrowDown, Modifiers::NONE, repeat);
        assert_eq!(frames(&[down(false), down(true), down(true)]), [3]);
        assert_eq!(frames(&[down(false), down(false)]), [1, 1]);
    }

    #[test]
    fn no_event_is_lost_or_overtakes_another() {
        let mut number = 7_u64;
        for _ in 0..2000 {
            let events: Vec<Event> = (0..12)
                .map(|_| {
                    number = number
                        .wrapping_mul(6_364_136_223_846_793_005)
                        .wrapping_add(1);
                    match number >> 61 {
                        0 | 1 => Event::Text(number.to_string()),
                        2 => key(Key::S, Modifiers::COMMAND, false),
                        3 => key(Key::Tab, Modifiers::NONE, number & 1 == 0),
                        4 => Event::PointerGone,
                        5 => Event::Copy,
                        _ => key(Key::A, Modifiers::NONE, false),
                    }
                })
                .collect();
            let counts = frames(&events);
            assert!(counts.iter().all(|count| *count > 0));
            assert_eq!(counts.iter().sum::<usize>(), events.len());
            let mut at = 0;
            for count in counts {
                let frame = &events[at..at + count];
                at += count;
                let parts = frame.iter().map(part).filter(|part| *part != Part::Other);
                let parts: Vec<Part> = parts.collect();
                assert!(parts.windows(2).all(|two| two[0] == two[1]));
            }
        }
    }
}
