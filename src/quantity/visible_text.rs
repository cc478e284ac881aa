//! Characters that a person can't see, and text in which they can be seen.

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
