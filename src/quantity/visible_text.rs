//! Characters that a person can't see, and text in which they can be seen.

use std::borrow::Cow;

use unicode_segmentation::UnicodeSegmentation as _;

/// Control characters, separators of lines, and marks that turn the direction of a text (Unicode UAX #9).
pub fn is_hidden(character: char) -> bool {
    character.is_control()
        || matches!(character, '\u{61c}' | '\u{200b}' | '\u{200e}'..='\u{200f}' | '\u{2028}'..='\u{202e}')
        || matches!(character, '\u{2060}'..='\u{206f}' | '\u{feff}')
}

/// The beginning of a text of unknown origin as a message may show it: at most `length` characters, hidden ones escaped.
pub fn excerpt(text: &str, length: usize) -> String {
    let mut excerpt = String::new();
    for character in text.chars().take(length) {
        if is_hidden(character) {
            excerpt.extend(character.escape_default());
        } else {
            excerpt.push(character);
        }
    }
    if text.chars().nth(length).is_some() {
        excerpt.push('…');
    }
    excerpt
}

/// Most characters of a name that are laid out: more than any place for a name has room for, and few enough that a window
/// full of them costs nothing.
const SHOWN_NAME: usize = 200;

/// A name as screens show it: on one line, hidden characters escaped, at most 200 characters and an ellipsis.
/// Where it can be typed, it stays what it is.
pub fn name_as_shown(name: &str) -> Cow<'_, str> {
    let is_long = name.len() > SHOWN_NAME && name.chars().nth(SHOWN_NAME).is_some();
    if !is_long && !name.chars().any(is_hidden) {
        return Cow::Borrowed(name);
    }
    Cow::Owned(excerpt(name, SHOWN_NAME))
}

/// A name in the room that there is: whole where it fits, else its beginning and its end with an ellipsis between, as much of
/// them as fits. Names that are told apart by their last word stay apart.
pub fn cut_in_the_middle(name: &str, mut fits: impl FnMut(&str) -> bool) -> Cow<'_, str> {
    if fits(name) {
        return Cow::Borrowed(name);
    }
    let pieces: Vec<&str> = name.graphemes(true).collect();
    let cut = |kept: usize| {
        let head = pieces[..kept.div_ceil(2)].concat();
        let tail = pieces[pieces.len() - kept / 2..].concat();
        format!("{}…{}", head.trim_end(), tail.trim_start())
    };
    // The most pieces with which it fits; a wider name never fits where a narrower one does not.
    let (mut fitting, mut too_many) = (0, pieces.len());
    while too_many - fitting > 1 {
        let half = usize::midpoint(fitting, too_many);
        if fits(&cut(half)) {
            fitting = half;
        } else {
            too_many = half;
        }
    }
    Cow::Owned(cut(fitting))
}

/// A text of several lines in which hidden characters are escaped; only the ends of its lines stay what they are.
pub fn visible(text: &str) -> String {
    let mut visible = String::with_capacity(text.len());
    for character in text.chars() {
        if character != '\n' && is_hidden(character) {
            visible.extend(character.escape_default());
        } else {
            visible.push(character);
        }
    }
    visible
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_turns_or_hides_text_is_written_out() {
        assert_eq!(visible("a\nb\u{202e}c\u{7}"), "a\nb\\u{202e}c\\u{7}");
        assert_eq!(excerpt("a\nb\u{200f}", 10), "a\\nb\\u{200f}");
        assert_eq!(name_as_shown("a\nb\u{200f}"), "a\\nb\\u{200f}");
        assert!(matches!(name_as_shown("Earl é 茶 ½"), Cow::Borrowed(_)));
        assert_eq!(visible("Earl é 茶 ½"), "Earl é 茶 ½");
        let long = "茶".repeat(5000);
        assert_eq!(name_as_shown(&long).chars().count(), SHOWN_NAME + 1);
        assert!(name_as_shown(&long).ends_with('…'));
    }

    #[test]
    fn a_name_is_cut_only_where_it_has_no_room_and_by_the_middle() {
        let in_room = |name: &str, room: usize| {
            let fits = |text: &str| text.graphemes(true).count() <= room;
            cut_in_the_middle(name, fits).into_owned()
        };
        assert_eq!(in_room("Barley Lantern, iced", 20), "Barley Lantern, iced");
        assert_eq!(in_room("Barley Lantern, iced", 11), "Barley…iced");
        assert_eq!(in_room("Barley Lantern, iced", 1), "…");
        assert_eq!(in_room("", 0), "");
        for name in [
            "Barley Lantern, half sugar",
            "烤大麥燈籠奶茶",
            "a\u{301}e\u{301}i\u{301}o\u{301}u\u{301}",
        ] {
            let whole = name.graphemes(true).count();
            for room in 1..whole {
                let cut = in_room(name, room);
                assert!(cut.graphemes(true).count() <= room, "{cut}");
                let (head, tail) = cut.split_once('…').unwrap();
                assert!(name.starts_with(head) && name.ends_with(tail), "{cut}");
                // Nothing more would fit, but for the spaces beside the ellipsis.
                assert!(cut.graphemes(true).count() + 3 >= room, "{cut} {room}");
            }
            assert_eq!(in_room(name, whole), name);
        }
    }
}
