//! Messages with markup in their places, as a link or a figure in bold.

use maud::{Markup, PreEscaped, html};
use sayso_wording::Value;

/// Marks a place; both are for private use in Unicode and come in no text.
const OPEN: char = '\u{e000}';
const CLOSE: char = '\u{e001}';

/// Pieces of markup that a message will hold.
#[derive(Default)]
pub struct Places(Vec<Markup>);

/// What may stand in a place: markup, or whatever a message takes.
pub trait Placed<'a> {
    /// As an argument of the message.
    fn placed(self, places: &mut Places) -> Value<'a>;
}

impl<'a> Placed<'a> for Markup {
    fn placed(self, places: &mut Places) -> Value<'a> {
        places.0.push(self);
        Value::from(format!("{OPEN}{}{CLOSE}", places.0.len() - 1))
    }
}

macro_rules! plain {
    ($($of:ty),*) => { $(
        impl<'a> Placed<'a> for $of {
            fn placed(self, _: &mut Places) -> Value<'a> {
                Value::from(self)
            }
        }
    )* };
}
plain!(&'a str, String, &'a String, u8, u16, u32, u64, usize, i32, i64, f64);

impl Places {
    /// The message with its markup; its own text is escaped.
    #[must_use]
    pub fn fill(&self, text: &str) -> Markup {
        let mut parts = text.split(OPEN);
        let first = parts.next().unwrap_or_default();
        html! {
            (first)
            @for part in parts {
                @match part.split_once(CLOSE) {
                    Some((place, after)) => {
                        @let markup = place.parse().ok().and_then(|p: usize| self.0.get(p));
                        @if let Some(markup) = markup { (PreEscaped(&markup.0)) }
                        // A full stop within it, as of the time "7:06 a. m.", ends the sentence as well.
                        (after.strip_prefix('.').filter(|_| markup.is_some_and(stops)).unwrap_or(after))
                    }
                    None => (part)
                }
            }
        }
    }
}

/// Whether the text of a piece of markup ends with a full stop.
fn stops(markup: &Markup) -> bool {
    let mut text = markup.0.trim_end();
    while text.ends_with('>') {
        let Some(tag) = text.rfind('<') else { break };
        text = &text[..tag];
    }
    text.ends_with('.')
}

/// Says a message with markup among its arguments: `rich!(locale, today::at_most, minutes = html! { strong { (3) } })`.
#[macro_export]
macro_rules! rich {
    ($locale:expr, $file:ident :: $message:ident $(, $name:ident = $value:expr)* $(,)?) => {{
        let mut places = $crate::rich::Places::default();
        let text = ::sayso_wording::Message::say(&::sayso_wording::text::$file::$message {
            $($name: $crate::rich::Placed::placed($value, &mut places)),*
        }, $locale);
        places.fill(&text)
    }};
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markup_stands_in_its_place_and_text_is_escaped() {
        let mut places = Places::default();
        let said = |value: Value<'_>| match value {
            Value::Text(text) => text.into_owned(),
            Value::Number(number) => number.to_string(),
        };
        let a = said(html! { b { "<1>" } }.placed(&mut places));
        let b = said("x".placed(&mut places));
        assert_eq!(places.fill(&format!("A & {a} or {b}.")).0, "A &amp; <b>&lt;1&gt;</b> or x.");
        assert_eq!(places.fill(&format!("{a}.")).0, "<b>&lt;1&gt;</b>.");
        let time = said(html! { span.num { "7:06 a. m." } }.placed(&mut places));
        assert_eq!(
            places.fill(&format!("Hasta las {time}. Luego")).0,
            "Hasta las <span class=\"num\">7:06 a. m.</span> Luego"
        );
        assert_eq!(places.fill("\u{e000}9\u{e001} \u{e000}x").0, " x");
    }
}
