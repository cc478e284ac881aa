//! The messages of one language, and how it writes lists and decimals.

use std::str::FromStr as _;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_list::ListFormatter;
use icu_list::options::{ListFormatterOptions, ListLength};
use icu_locale_core::Locale;
use rustc_hash::FxHashMap;
use unic_langid::LanguageIdentifier;

use super::Argument;

/// A language, read from its files.
pub(super) struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    /// The messages that choose nothing, put together without a formatter: a frame says some hundred of them.
    plain: FxHashMap<String, Plain>,
    decimals: Option<DecimalFormatter>,
    and: Option<ListFormatter>,
    or: Option<ListFormatter>,
}

impl Catalogue {
    pub(super) fn new<'text>(
        code_of_folder: &str,
        texts: impl Iterator<Item = &'text str>,
    ) -> Self {
        let language = LanguageIdentifier::from_str(code_of_folder).unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // Texts of both directions are marked where they are laid out; here the marks would end up in files and commands.
        bundle.set_use_isolating(false);
        let mut plain = FxHashMap::default();
        for text in texts {
            // What can't be read is left out, and English stands in; a test keeps every file readable.
            let resource =
                FluentResource::try_new(text.to_owned()).unwrap_or_else(|(resource, errors)| {
                    debug_assert!(errors.is_empty(), "{code_of_folder}: {errors:?}");
                    resource
                });
            plain.extend(plain_messages(&resource));
            let added = bundle.add_resource(resource);
            debug_assert!(added.is_ok(), "{code_of_folder}: {added:?}");
        }
        // Lists differ within a language: "a, b, and c" in one country, "a, b and c" in another.
        let code = plain.get("language-locale").and_then(Plain::word);
        let code = code.unwrap_or(code_of_folder);
        let locale = Locale::from_str(code).unwrap_or(Locale::UNKNOWN);
        let lists = ListFormatterOptions::default().with_length(ListLength::Wide);
        let mut decimals = DecimalFormatterOptions::default();
        decimals.grouping_strategy = Some(GroupingStrategy::Never);
        Self {
            bundle,
            plain,
            decimals: DecimalFormatter::try_new((&locale).into(), decimals).ok(),
            and: ListFormatter::try_new_and((&locale).into(), lists).ok(),
            or: ListFormatter::try_new_or((&locale).into(), lists).ok(),
        }
    }

    pub(super) fn word(&self, message: &str) -> Option<&str> {
        self.plain.get(message)?.word()
    }

    pub(super) fn say(
        &self,
        message: &str,
        arguments: &[(&'static str, Argument<'_>)],
    ) -> Option<String> {
        let plain = self.plain.get(message);
        plain
            .and_then(|plain| plain.with(arguments))
            .or_else(|| self.formatted(message, arguments))
    }

    /// A message as the formatter of the notation says it.
    fn formatted(
        &self,
        message: &str,
        arguments: &[(&'static str, Argument<'_>)],
    ) -> Option<String> {
        let pattern = self.bundle.get_message(message)?.value()?;
        let mut values = FluentArgs::with_capacity(arguments.len());
        for (name, argument) in arguments {
            let value = match argument {
                Argument::Text(text) => FluentValue::String(text.as_ref().into()),
                Argument::Count(count) => FluentValue::from(*count),
            };
            values.set(*name, value);
        }
        let mut errors = Vec::new();
        let said = self
            .bundle
            .format_pattern(pattern, Some(&values), &mut errors);
        debug_assert!(errors.is_empty(), "{message}: {errors:?}");
        Some(said.into_owned())
    }

    /// Digits with a point and without a sign, as this language writes them.
    pub(super) fn decimal(&self, digits: &str) -> Option<String> {
        let decimal = Decimal::from_str(digits).ok()?;
        Some(self.decimals.as_ref()?.format(&decimal).to_string())
    }

    /// "a, b and c".
    pub(super) fn and(&self, items: &[&str]) -> String {
        join(self.and.as_ref(), items)
    }

    /// "a, b or c".
    pub(super) fn or(&self, items: &[&str]) -> String {
        join(self.or.as_ref(), items)
    }
}

fn join(formatter: Option<&ListFormatter>, items: &[&str]) -> String {
    match formatter {
        Some(formatter) => formatter.format(items.iter()).to_string(),
        None => items.join(", "),
    }
}

/// A message that chooses nothing: texts, and arguments between them.
struct Plain(Vec<Piece>);

enum Piece {
    Text(String),
    /// The name of an argument.
    Argument(String),
}

impl Plain {
    /// The text, where there is nothing else.
    fn word(&self) -> Option<&str> {
        match self.0.as_slice() {
            [Piece::Text(text)] => Some(text),
            _ => None,
        }
    }

    /// The message with its arguments; `None` where one is missing, or a count, which is for the formatter.
    fn with(&self, arguments: &[(&'static str, Argument<'_>)]) -> Option<String> {
        let mut said = String::new();
        for piece in &self.0 {
            said.push_str(match piece {
                Piece::Text(text) => text,
                Piece::Argument(name) => match arguments.iter().find(|(known, _)| known == name)? {
                    (_, Argument::Text(text)) => text,
                    (_, Argument::Count(_)) => return None,
                },
            });
        }
        Some(said)
    }
}

/// The messages that choose nothing.
fn plain_messages(resource: &FluentResource) -> impl Iterator<Item = (String, Plain)> {
    use fluent_syntax::ast::{Entry, Expression, InlineExpression, PatternElement};
    resource.entries().filter_map(|entry| {
        let Entry::Message(message) = entry else {
            return None;
        };
        let mut pieces = Vec::new();
        for element in &message.value.as_ref()?.elements {
            match element {
                PatternElement::TextElement { value } => match pieces.last_mut() {
                    Some(Piece::Text(text)) => text.push_str(value),
                    _ => pieces.push(Piece::Text((*value).to_owned())),
                },
                PatternElement::Placeable {
                    expression: Expression::Inline(InlineExpression::VariableReference { id }),
                } => pieces.push(Piece::Argument(id.name.to_owned())),
                PatternElement::Placeable { .. } => return None,
            }
        }
        Some((message.id.name.to_owned(), Plain(pieces)))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "
word = Sugar
one = { $amount } of { $what }, { $amount }
lines = First
    second { $what }
chosen = { $count ->
    [one] { $count } cup
   *[other] { $count } cups
}
counted = { $count } of { $what }
quoted = { \"{\" }{ $what }
";

    #[test]
    fn what_chooses_nothing_is_said_as_the_formatter_says_it() {
        let catalogue = Catalogue::new("en", std::iter::once(TEXT));
        let text = |text: &'static str| Argument::Text(text.into());
        let arguments = [
            ("amount", text("2 g")),
            ("count", Argument::Count(2.0)),
            ("what", text("a < b { $amount }")),
        ];
        for message in ["word", "one", "lines", "chosen", "counted", "quoted"] {
            let formatted = catalogue.formatted(message, &arguments);
            assert!(formatted.is_some(), "{message}");
            assert_eq!(catalogue.say(message, &arguments), formatted, "{message}");
        }
        assert_eq!(catalogue.word("word"), Some("Sugar"));
        assert_eq!(catalogue.word("one"), None);
        assert_eq!(catalogue.say("missing", &arguments), None);
    }
}
