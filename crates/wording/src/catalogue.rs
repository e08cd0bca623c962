//! The catalogues, read once, and how a message becomes a text.

use crate::locale::Locale;
use crate::numbers;
use crate::value::Value;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use fluent_syntax::parser;
use sayso_model::Language;
use serde_json::{Value as Json, json};
use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::LazyLock;

include!(concat!(env!("OUT_DIR"), "/sources.rs"));

type Bundle = FluentBundle<FluentResource>;

struct Catalogues {
    by_language: BTreeMap<Language, Bundle>,
    pseudo: Bundle,
}

static CATALOGUES: LazyLock<Catalogues> = LazyLock::new(|| Catalogues {
    by_language: Language::ALL.into_iter().map(|l| (l, bundle(l, None))).collect(),
    pseudo: bundle(Language::En, Some(stretched)),
});

fn sources(language: Language) -> &'static [(&'static str, &'static str)] {
    SOURCES.iter().find(|(tag, _)| *tag == language.tag()).map_or(&[], |(_, files)| files)
}

fn bundle(language: Language, transform: Option<fn(&str) -> Cow<'_, str>>) -> Bundle {
    let mut bundle = FluentBundle::new_concurrent(vec![language.tag().parse().unwrap_or_default()]);
    // Marks around every argument are needed only where directions mix.
    bundle.set_use_isolating(transform.is_some());
    bundle.set_formatter(Some(numbers::in_message));
    bundle.set_transform(transform);
    for (_, text) in sources(language) {
        // A test reads every file of every language; what could not be read would be said in English.
        let (Ok(resource) | Err((resource, _))) = FluentResource::try_new((*text).to_owned());
        bundle.add_resource_overriding(resource);
    }
    bundle
}

/// What a message says. Where a language lacks it, English says it; a test holds every language to the English messages.
pub(crate) fn say(locale: &Locale, id: &str, arguments: &[(&'static str, &Value<'_>)]) -> String {
    let mut given = FluentArgs::with_capacity(arguments.len());
    for (name, value) in arguments {
        given.set(*name, value.to_fluent());
    }
    let own = if locale.pseudo { Some(&CATALOGUES.pseudo) } else { CATALOGUES.by_language.get(&locale.language) };
    let english = CATALOGUES.by_language.get(&Language::En);
    for bundle in own.into_iter().chain(english) {
        if let Some(pattern) = bundle.get_message(id).and_then(|m| m.value()) {
            let text = bundle.format_pattern(pattern, Some(&given), &mut Vec::new()).into_owned();
            return one_stop(text, arguments);
        }
    }
    id.to_owned()
}

/// The full stop of an argument, such as the date "26. Nov.", ends the sentence as well.
fn one_stop(text: String, arguments: &[(&'static str, &Value<'_>)]) -> String {
    let stops = arguments.iter().filter_map(|(_, value)| match value {
        Value::Text(text) if text.ends_with('.') => Some(text),
        _ => None,
    });
    stops.fold(text, |text, stop| text.replace(&format!("{stop}."), stop))
}

/// What a message without arguments says, for what finds its messages by name, as commands and arguments do. None where
/// English has no such message.
#[must_use]
pub fn by_id(locale: &Locale, id: &str) -> Option<String> {
    let known = CATALOGUES.by_language.get(&Language::En).is_some_and(|english| english.has_message(id));
    known.then(|| say(locale, id, &[]))
}

/// English, a third longer, its letters marked, so that a layout that only fits English shows, and so does a text that is in
/// no catalogue.
fn stretched(text: &str) -> Cow<'_, str> {
    let mut longer = String::with_capacity(text.len() * 2);
    for (i, c) in text.chars().enumerate() {
        longer.push(match c {
            'a' => 'á',
            'e' => 'ë',
            'i' => 'ï',
            'o' => 'ö',
            'u' => 'ü',
            'A' => 'Å',
            'E' => 'É',
            'S' => 'Š',
            other => other,
        });
        // One letter in three is said twice.
        if c.is_alphabetic() && i % 3 == 2 {
            longer.push(c);
        }
    }
    Cow::Owned(longer)
}

/// The messages that the client's scripts say, as JSON: by id an array of parts, each a text, `{"v": name}` for an argument,
/// or `{"s": name, "o": {category: parts}}` for a choice by an argument. Files whose name begins with `client` hold them.
#[must_use]
pub fn client(locale: &Locale) -> Json {
    let transform: fn(&str) -> Cow<'_, str> = if locale.pseudo { stretched } else { |text| Cow::Borrowed(text) };
    let mut all = serde_json::Map::new();
    for language in [Language::En, locale.language] {
        for (_, text) in sources(language).iter().filter(|(name, _)| name.starts_with("client")) {
            let (Ok(resource) | Err((resource, _))) = parser::parse(*text);
            for entry in resource.body {
                if let Entry::Message(message) = entry
                    && let Some(pattern) = message.value
                {
                    all.insert(message.id.name.to_owned(), parts(&pattern, transform));
                }
            }
        }
    }
    Json::Object(all)
}

fn parts(pattern: &Pattern<&str>, transform: fn(&str) -> Cow<'_, str>) -> Json {
    let all = pattern.elements.iter().map(|element| match element {
        PatternElement::TextElement { value } => json!(transform(value)),
        PatternElement::Placeable { expression } => match expression {
            Expression::Inline(inline) => of_inline(inline),
            Expression::Select { selector, variants } => {
                let choices: serde_json::Map<String, Json> = variants
                    .iter()
                    .map(|v| {
                        let (VariantKey::Identifier { name: key } | VariantKey::NumberLiteral { value: key }) = v.key;
                        (key.to_owned(), parts(&v.value, transform))
                    })
                    .collect();
                let InlineExpression::VariableReference { id } = selector else { return json!("") };
                json!({ "s": id.name, "o": choices })
            }
        },
    });
    Json::Array(all.collect())
}

fn of_inline(inline: &InlineExpression<&str>) -> Json {
    match inline {
        InlineExpression::VariableReference { id } => json!({ "v": id.name }),
        InlineExpression::StringLiteral { value } => {
            json!(fluent_syntax::unicode::unescape_unicode_to_string(value))
        }
        InlineExpression::NumberLiteral { value } => json!(value),
        InlineExpression::Placeable { expression } => match &**expression {
            Expression::Inline(inner) => of_inline(inner),
            Expression::Select { .. } => json!(""),
        },
        // Not among what a client message may use: a test says so.
        InlineExpression::FunctionReference { .. }
        | InlineExpression::MessageReference { .. }
        | InlineExpression::TermReference { .. } => json!(""),
    }
}

#[cfg(test)]
mod tests;
#[cfg(test)]
mod typography;
