//! What was typed into a form, kept as it was typed until it is right: a page shown again still holds every word.

use crate::error::{Error, Refusal, Wrong};
use crate::form::Form;
use crate::reading::{self, Reader};
use axum::extract::{FromRequest, Request};
use axum::http::StatusCode;
use axum::response::{IntoResponse, Response};
use maud::Markup;
use sayso_model::units::OutOfRange;
use sayso_model::{Day, Label, Note, ShortNote};
use sayso_wording::{Locale, Words, faults, words};
use std::str::FromStr;

/// The fields of a form by name, in order, and what is wrong with them, said to whoever sent it.
#[derive(Clone, Debug)]
pub struct Typed {
    pairs: Vec<(String, String)>,
    wrong: Vec<Wrong>,
    reader: Locale,
}

impl Default for Typed {
    /// Nothing typed yet; faults are in English unless [`Typed::read_by`] says otherwise.
    fn default() -> Self {
        Self { pairs: Vec::new(), wrong: Vec::new(), reader: Locale::ENGLISH }
    }
}

impl<S: Send + Sync> FromRequest<S> for Typed {
    type Rejection = Error;

    async fn from_request(request: Request, state: &S) -> Result<Self, Error> {
        // The page before it in the handler's arguments knows the person; a form without a page goes by the device.
        let known = request.extensions().get::<Reader>().and_then(Reader::known);
        let reader = known.unwrap_or_else(|| reading::locale(request.headers(), None));
        let Form(pairs) = Form::<Vec<(String, String)>>::from_request(request, state).await?;
        Ok(Self { pairs, wrong: Vec::new(), reader })
    }
}

impl Typed {
    /// Who reads what is wrong.
    #[must_use]
    pub const fn read_by(mut self, reader: Locale) -> Self {
        self.reader = reader;
        self
    }

    /// How whoever sent it reads.
    #[must_use]
    pub const fn reader(&self) -> &Locale {
        &self.reader
    }

    /// Fills a field, as when a card is opened for editing.
    #[must_use]
    pub fn with(mut self, name: &str, value: impl ToString) -> Self {
        self.pairs.push((name.to_owned(), value.to_string()));
        self
    }

    /// Fills a field where there is something to fill it with.
    #[must_use]
    pub fn with_some(self, name: &str, value: Option<impl ToString>) -> Self {
        match value {
            Some(value) => self.with(name, value),
            None => self,
        }
    }

    /// Refuses fields the form does not have.
    ///
    /// # Errors
    /// [`Error::Refused`] naming the first such field.
    pub fn only(self, names: &[&str]) -> Result<Self, Error> {
        match self.pairs.iter().find(|(n, _)| !names.contains(&n.as_str())) {
            Some((name, _)) => Err(Error::refused(name, words!(faults::unknown_field))),
            None => Ok(self),
        }
    }

    /// The text of a field, trimmed; empty where there is none.
    #[must_use]
    pub fn text(&self, name: &str) -> &str {
        self.pairs.iter().find(|(n, _)| n == name).map_or("", |(_, v)| v.trim())
    }

    /// Every value of a field that may be ticked several times.
    pub fn all<'a>(&'a self, name: &'a str) -> impl Iterator<Item = &'a str> {
        self.pairs.iter().filter(move |(n, _)| n == name).map(|(_, v)| v.trim())
    }

    /// Whether a box is ticked.
    #[must_use]
    pub fn ticked(&self, name: &str) -> bool {
        !self.text(name).is_empty()
    }

    /// Notes what is wrong with a field.
    pub fn wrong(&mut self, name: &str, what: impl Into<Words>) {
        self.wrong.push(Wrong { field: name.to_owned(), what: what.into() });
    }

    /// Takes over the problems found by a check of the whole event.
    pub fn take(&mut self, refused: impl Into<Refusal>) {
        for p in refused.into().0 {
            let name = p.field.strip_prefix("body.").unwrap_or(&p.field).to_owned();
            self.wrong.push(Wrong { field: name, what: p.what });
        }
    }

    /// Whether events were kept; what was refused is noted beside its field.
    ///
    /// # Errors
    /// Any error but a refusal.
    pub fn kept(&mut self, kept: Result<(), Error>) -> Result<bool, Error> {
        match kept {
            Ok(()) => Ok(true),
            Err(Error::Refused(problems)) => {
                self.take(problems);
                Ok(false)
            }
            Err(other) => Err(other),
        }
    }

    /// Whether nothing is wrong so far.
    #[must_use]
    pub const fn right(&self) -> bool {
        self.wrong.is_empty()
    }

    /// What is wrong with a field.
    #[must_use]
    pub fn problem(&self, name: &str) -> Option<String> {
        self.wrong.iter().find(|p| p.field == name).map(|p| p.what.say(&self.reader))
    }

    /// Everything that is wrong.
    #[must_use]
    pub fn problems(&self) -> &[Wrong] {
        &self.wrong
    }

    /// What is wrong with a field, as a sentence with the field's name.
    #[must_use]
    pub fn sentence(&self, name: &str) -> Option<String> {
        self.wrong.iter().find(|p| p.field == name).map(|p| faults::at(&self.reader, name, &p.what))
    }

    /// A value through its own checked constructor.
    pub fn checked<T, E: Into<Words>>(&mut self, name: &str, value: Result<T, E>) -> Option<T> {
        value.map_err(|e| self.wrong(name, e)).ok()
    }

    /// A needed one-line text.
    pub fn label(&mut self, name: &str) -> Option<Label> {
        let label = Label::new(self.text(name));
        self.checked(name, label)
    }

    /// A one-line text that may be left out.
    pub fn label_or_none(&mut self, name: &str) -> Option<Label> {
        if self.text(name).is_empty() { None } else { self.label(name) }
    }

    /// A text of several lines that may be left out.
    pub fn note_or_none(&mut self, name: &str) -> Option<Note> {
        self.text_or_none(name, Note::new)
    }

    /// A short text of several lines that may be left out.
    pub fn short_or_none(&mut self, name: &str) -> Option<ShortNote> {
        self.text_or_none(name, ShortNote::new)
    }

    fn text_or_none<T, E: Into<Words>>(&mut self, name: &str, new: impl Fn(&str) -> Result<T, E>) -> Option<T> {
        let text = self.text(name);
        if text.is_empty() {
            return None;
        }
        let text = new(text);
        self.checked(name, text)
    }

    /// A quantity that may be left out; a decimal comma is read as a point.
    pub fn quantity<T>(&mut self, name: &str, new: impl Fn(f64) -> Result<T, OutOfRange>) -> Option<T> {
        let number = self.number(name)?;
        self.checked(name, new(number))
    }

    /// A number that may be left out; a decimal comma is read as a point.
    pub fn number(&mut self, name: &str) -> Option<f64> {
        let text = self.text(name).replace(',', ".");
        if text.is_empty() {
            return None;
        }
        match text.parse::<f64>() {
            Ok(n) if n.is_finite() => Some(n),
            _ => {
                self.wrong(name, words!(faults::number, text = text));
                None
            }
        }
    }

    /// A whole number that may be left out.
    pub fn whole(&mut self, name: &str, from: u16, to: u16) -> Option<u16> {
        let text = self.text(name).to_owned();
        if text.is_empty() {
            return None;
        }
        let read = text.parse().ok().filter(|n| (from..=to).contains(n));
        if read.is_none() {
            self.wrong(name, words!(faults::whole, low = from.to_string(), high = to.to_string(), text = text));
        }
        read
    }

    /// A needed whole number.
    pub fn whole_needed(&mut self, name: &str, from: u16, to: u16) -> Option<u16> {
        if self.text(name).is_empty() {
            self.wrong(name, words!(faults::missing));
        }
        self.whole(name, from, to)
    }

    /// A needed day from the first to the last of those that may be; `otherwise` says which.
    pub fn day_within(&mut self, name: &str, (first, last): (Day, Day), otherwise: impl Into<Words>) -> Option<Day> {
        let day = self.text(name).parse().ok().filter(|day| (first..=last).contains(day));
        if day.is_none() {
            self.wrong(name, otherwise);
        }
        day
    }

    /// One of a list by its name, which has to be chosen.
    pub fn one_needed<T: Copy>(&mut self, name: &str, all: &[T], named: impl Fn(T) -> &'static str) -> Option<T> {
        if self.text(name).is_empty() {
            self.wrong(name, words!(faults::missing_choose));
        }
        self.one_of(name, all, named)
    }

    /// One of a list by its name; empty is none.
    pub fn one_of<T: Copy>(&mut self, name: &str, all: &[T], named: impl Fn(T) -> &'static str) -> Option<T> {
        let text = self.text(name).to_owned();
        if text.is_empty() {
            return None;
        }
        let found = all.iter().copied().find(|t| named(*t) == text);
        if found.is_none() {
            let names: Vec<&str> = all.iter().map(|t| named(*t)).collect();
            self.wrong(name, words!(faults::one_of, names = names.join(", ")));
        }
        found
    }

    /// The known ids that were ticked.
    pub fn ids<T: FromStr>(&mut self, name: &str, known: impl Fn(&T) -> bool) -> Vec<T> {
        let texts: Vec<String> = self.all(name).filter(|t| !t.is_empty()).map(str::to_owned).collect();
        let read: Vec<T> = texts.iter().filter_map(|t| t.parse().ok()).filter(|id| known(id)).collect();
        if read.len() < texts.len() {
            self.wrong(name, words!(faults::unknown_id));
        }
        read
    }

    /// A known id that may be left out.
    pub fn id<T: FromStr>(&mut self, name: &str, known: impl Fn(&T) -> bool) -> Option<T> {
        self.ids(name, known).into_iter().next()
    }
}

/// The page again, for what was typed to be put right.
pub fn again(page: Markup) -> Response {
    (StatusCode::UNPROCESSABLE_ENTITY, page).into_response()
}

/// An id out of an address.
///
/// # Errors
/// [`Error::NotFound`] where it is none.
pub fn named<T: FromStr>(text: &str, what: &'static str) -> Result<T, Error> {
    text.parse().map_err(|_| Error::NotFound(words!(errors::no_such, what = what)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use sayso_model::Kilograms;

    #[test]
    fn a_decimal_comma_is_a_point_and_a_wrong_number_keeps_its_text() {
        let mut typed = Typed::default().with("weight_kg", " 4,5 ").with("share", "much");
        assert_eq!(typed.quantity("weight_kg", Kilograms::new).map(Kilograms::get), Some(4.5));
        assert!(typed.right());
        assert_eq!(typed.number("share"), None);
        assert_eq!((typed.text("share"), typed.problem("share").is_some()), ("much", true));
        assert_eq!(Typed::default().with("w", "NaN").number("w"), None);
    }

    #[test]
    fn unknown_fields_and_ids_are_refused() {
        assert!(Typed::default().with("other", "1").only(&["name"]).is_err());
        let mut typed = Typed::default().with("words", "not an id");
        assert!(typed.ids::<sayso_model::WordId>("words", |_| true).is_empty() && !typed.right());
    }
}
