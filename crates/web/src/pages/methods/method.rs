//! What the page of methods tells of one.

use sayso_wording::Locale;

/// What is said to a reader.
pub type Said = fn(&Locale) -> String;

/// One method.
#[derive(Clone, Copy, Debug)]
pub struct Method {
    /// The question it answers.
    pub answers: Said,
    /// How.
    pub name: Said,
    /// Whose it is: citations, each with its year, parted by semicolons.
    pub source: &'static str,
    /// What more is to be said of where it comes from.
    pub note: Option<Said>,
    /// Pages that show it, by the last part of their address.
    pub pages: &'static [&'static str],
    /// Commands that tell it.
    pub commands: &'static [&'static str],
    /// Its page under `/methods`.
    pub page: &'static str,
    /// Where it is computed, below `sayso_methods`.
    pub code: &'static [&'static str],
}
