//! In whose language a page is written.

use crate::cookie::cookie;
use axum::extract::FromRequestParts;
use axum::http::HeaderMap;
use axum::http::header::{ACCEPT, ACCEPT_LANGUAGE};
use axum::http::request::Parts;
use sayso_model::{Language, PersonCard};
use sayso_wording::Locale;
use std::convert::Infallible;
use std::sync::{Arc, OnceLock};

/// Name of the cookie that says which language this device is read in, for whoever has not chosen on their own card.
pub const LANGUAGE_COOKIE: &str = "sayso_language";

/// The value of the cookie that stands for the stand-in language of the layout's tests.
const PSEUDO: &str = "pseudo";

/// How whoever asks reads: as their card says, else the device, else the browser.
#[must_use]
pub fn locale(headers: &HeaderMap, person: Option<&PersonCard>) -> Locale {
    let device = cookie(headers, LANGUAGE_COOKIE);
    if device == Some(PSEUDO) {
        return Locale::PSEUDO;
    }
    let browser = headers.get(ACCEPT_LANGUAGE).and_then(|value| value.to_str().ok());
    // A language that the device was given comes before the browser's; where it is the same, the browser tells more.
    let known = device.and_then(Language::of_tag).filter(|known| Locale::chosen(None, browser).language != *known);
    Locale::chosen(person, known.map(Language::tag).or(browser))
}

/// How somebody reads whose account says in which language: the device's comes before it. The clock is that of the language where the
/// browser is set to another one; the unit is the browser's.
#[must_use]
pub fn of_account(headers: &HeaderMap, language: Language) -> Locale {
    let told = locale(headers, None);
    if cookie(headers, LANGUAGE_COOKIE).is_none() { told.in_language(language) } else { told }
}

/// How somebody reads the pages of a home: by their card there; on a server whoever it has no card of, or one without a language, as a
/// coach, by their account, with that language's clock, as far as the card says none of its own.
#[must_use]
pub fn in_home(headers: &HeaderMap, card: Option<&PersonCard>, of_account: Option<Locale>) -> Locale {
    let by_card = locale(headers, card);
    match (card.and_then(|card| card.language), of_account) {
        (None, Some(account)) => {
            let clock = card.and_then(|card| card.clock).unwrap_or(account.clock);
            Locale { clock, weight_unit: by_card.weight_unit, ..account }
        }
        _ => by_card,
    }
}

/// Whether a script asks for JSON where a person would get a page.
#[must_use]
pub fn asks_json(headers: &HeaderMap) -> bool {
    headers.get(ACCEPT).is_some_and(|asked| asked.as_bytes().starts_with(b"application/json"))
}

/// How whoever made a request reads, once the page knows, and on a server who they are: for what is told by others than the page.
#[derive(Clone, Debug, Default)]
pub struct Reader {
    locale: Arc<OnceLock<Locale>>,
    account: Arc<OnceLock<String>>,
}

impl Reader {
    /// Notes it.
    pub fn is(&self, locale: Locale) {
        self.locale.get_or_init(|| locale);
    }

    /// How they read, if a page has said so.
    #[must_use]
    pub fn known(&self) -> Option<Locale> {
        self.locale.get().copied()
    }

    /// Notes what the account is called that asks a server.
    pub fn is_signed_in(&self, account: &str) {
        self.account.get_or_init(|| account.to_owned());
    }

    /// What the account is called, on a server and signed in.
    #[must_use]
    pub fn account(&self) -> Option<&str> {
        self.account.get().map(String::as_str)
    }
}

/// How whoever asks reads, on pages without a home.
pub struct Reads(pub Locale);

impl<S: Send + Sync> FromRequestParts<S> for Reads {
    type Rejection = Infallible;

    async fn from_request_parts(parts: &mut Parts, _: &S) -> Result<Self, Infallible> {
        Ok(Self(locale(&parts.headers, None)))
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use axum::http::HeaderValue;
    use sayso_model::Clock;

    #[test]
    fn a_chosen_language_brings_its_clock_and_leaves_the_unit() {
        let mut headers = HeaderMap::new();
        headers.insert(ACCEPT_LANGUAGE, HeaderValue::from_static("en-US,en;q=0.9"));
        let read = of_account(&headers, Language::De);
        assert_eq!((read.language, read.clock), (Language::De, Clock::Hours24));
        assert_eq!(read.weight_unit, locale(&headers, None).weight_unit);
        let at_home = |card: Option<&PersonCard>| in_home(&headers, card, Some(read));
        assert_eq!((at_home(None).language, at_home(None).clock), (Language::De, Clock::Hours24));
        let label = sayso_model::Label::new("Ines").unwrap();
        let card = PersonCard::new(sayso_model::PersonId(uuid::Uuid::from_u128(1)), label, sayso_model::Role::Home);
        assert_eq!(at_home(Some(&card)).clock, Clock::Hours24);
        let own_clock = PersonCard { clock: Some(Clock::Hours12), ..card.clone() };
        assert_eq!(
            (at_home(Some(&own_clock)).language, at_home(Some(&own_clock)).clock),
            (Language::De, Clock::Hours12)
        );
        let speaks = PersonCard { language: Some(Language::Fr), ..card };
        assert_eq!(at_home(Some(&speaks)).language, Language::Fr);
        let own = of_account(&headers, Language::En);
        assert_eq!((own.language, own.clock), (Language::En, Clock::Hours12));
    }
}
