//! The messages of one language, and how it writes lists and decimals.

use std::collections::BTreeMap;
use std::str::FromStr as _;

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use icu_decimal::DecimalFormatter;
use icu_decimal::input::Decimal;
use icu_decimal::options::{DecimalFormatterOptions, GroupingStrategy};
use icu_list::ListFormatter;
use icu_list::options::{ListFormatterOptions, ListLength};
use icu_locale_core::Locale;
use unic_langid::LanguageIdentifier;

use super::Argument;

/// A language, read from its files.
pub(super) struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    /// The messages without arguments, which need no formatting.
    words: BTreeMap<String, String>,
    decimals: Option<DecimalFormatter>,
    and: Option<ListFormatter>,
    or: Option<ListFormatter>,
}

impl Catalogue {
    pub(super) fn new<'text>(code: &str, texts: impl Iterator<Item = &'text str>) -> Self {
        let language = LanguageIdentifier::from_str(code).unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        // Texts of both directions are marked where they are laid out; here the marks would end up in files and commands.
        bundle.set_use_isolating(false);
        let mut words = BTreeMap::new();
        for text in texts {
            // What can't be read is left out, and English stands in; a test keeps every file readable.
            let resource =
                FluentResource::try_new(text.to_owned()).unwrap_or_else(|(resource, errors)| {
                    debug_assert!(errors.is_empty(), "{code}: {errors:?}");
                    resource
                });
            words.extend(plain_messages(&resource));
            let added = bundle.add_resource(resource);
            debug_assert!(added.is_ok(), "{code}: {added:?}");
        }
        // Lists differ within a language: "a, b, and c" in one country, "a, b and c" in another.
        let code = words.get("language-locale").map_or(code, String::as_str);
        let locale = Locale::from_str(code).unwrap_or(Locale::UNKNOWN);
        let lists = ListFormatterOptions::default().with_length(ListLength::Wide);
        let mut decimals = DecimalFormatterOptions::default();
        decimals.grouping_strategy = Some(GroupingStrategy::Never);
        Self {
            bundle,
            words,
            decimals: DecimalFormatter::try_new((&locale).into(), decimals).ok(),
            and: ListFormatter::try_new_and((&locale).into(), lists).ok(),
            or: ListFormatter::try_new_or((&locale).into(), lists).ok(),
        }
    }

    pub(super) fn word(&self, message: &str) -> Option<&str> {
        self.words.get(message).map(String::as_str)
    }

    pub(super) fn say(
        &self,
        message: &str,
        arguments: &[(&'static str, Argument<'_>)],
    ) -> Option<String> {
        if let Some(word) = self.word(message) {
            return Some(word.to_owned());
        }
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

/// The messages that consist of text alone.
fn plain_messages(resource: &FluentResource) -> impl Iterator<Item = (String, String)> {
    use fluent_syntax::ast::{Entry, PatternElement};
    resource.entries().filter_map(|entry| {
        let Entry::Message(message) = entry else {
            return None;
        };
        let elements = message.value.as_ref()?.elements.iter();
        let text: Option<String> = elements
            .map(|element| match element {
                PatternElement::TextElement { value } => Some(*value),
                PatternElement::Placeable { .. } => None,
            })
            .collect();
        Some((message.id.name.to_owned(), text?))
    })
}
