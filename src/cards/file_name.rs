//! Names of exported files: made from names of drinks, safe in any folder of any system.

use super::document::Document;

/// Longest stem, in bytes: most file systems stop at 255 with the ending, and copies want room for " (2)".
const LONGEST_STEM: usize = 120;

/// Names that a Windows folder can't have, whatever the ending.
const DEVICES: [&str; 22] = [
    "con", "prn", "aux", "nul", "com1", "com2", "com3", "com4", "com5", "com6", "com7", "com8",
    "com9", "lpt1", "lpt2", "lpt3", "lpt4", "lpt5", "lpt6", "lpt7", "lpt8", "lpt9",
];

/// A file name for a document: "hob-ember-iced-counter.pdf". Letters and digits of any script stay; everything else,
/// separators of folders and leading dots among it, becomes a single hyphen.
pub fn file_name(document: &Document, ending: &str) -> String {
    let words = format!(
        "{} {} {}",
        document.title,
        document.subtitle,
        document.kind.key()
    );
    let mut stem = String::new();
    for character in words.chars() {
        let kept = character.is_alphanumeric() || is_mark(character);
        if kept {
            let small: String = character.to_lowercase().collect();
            if stem.len() + small.len() > LONGEST_STEM {
                break;
            }
            stem.push_str(&small);
        } else if !stem.is_empty() && !stem.ends_with('-') {
            stem.push('-');
        }
    }
    let stem = stem.trim_matches('-');
    let stem = if stem.is_empty() { "card" } else { stem };
    let stem = if DEVICES.contains(&stem) {
        format!("{stem}-card")
    } else {
        stem.to_owned()
    };
    format!("{stem}.{ending}")
}

/// Vowel signs and the like of Indic, Thai, Arabic and Hebrew script, without which a name is another word.
fn is_mark(character: char) -> bool {
    matches!(character, '\u{300}'..='\u{36f}' | '\u{591}'..='\u{5bd}' | '\u{64b}'..='\u{65f}')
        || matches!(character, '\u{900}'..='\u{dff}' | '\u{e31}'..='\u{e4e}' | '\u{1000}'..='\u{109f}')
}

#[cfg(test)]
mod tests {
    use super::*;

    fn named(title: &str, subtitle: &str) -> String {
        let document = Document {
            title: title.into(),
            subtitle: subtitle.into(),
            ..Document::default()
        };
        file_name(&document, "pdf")
    }

    #[test]
    fn a_name_never_leads_out_of_its_folder() {
        for (title, subtitle, expected) in [
            ("Hob & Ember", "iced", "hob-ember-iced-counter.pdf"),
            ("../../etc/passwd", "", "etc-passwd-counter.pdf"),
            ("C:\\x", "\0\n", "c-x-counter.pdf"),
            ("...", "", "counter.pdf"),
            ("焙茶鲜奶", "冰", "焙茶鲜奶-冰-counter.pdf"),
            ("a\u{202e}fdp", "", "a-fdp-counter.pdf"),
        ] {
            assert_eq!(named(title, subtitle), expected);
        }
        assert!(named(&"長".repeat(500), "").len() <= LONGEST_STEM + 4);
    }
}
