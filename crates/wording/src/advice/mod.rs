//! Advice in words: what to do, because of what, how sure, what would change it, what to watch out for. `name` is the animal's.

mod act;
mod because;
mod brief;
mod caution;
mod figures;
mod said;

pub use act::{act, hint};
pub use because::because;
pub use brief::brief;
pub use caution::{caution, change};
pub use figures::{known, lean, length};
pub use said::{bearing, cause, good, next, planned, stage_name, sure, topic};

use crate::Locale;
use crate::say;
use sayso_advisor::NamedWord;

/// `“ball”, “water” and “walk”`.
fn words(locale: &Locale, words: &[NamedWord]) -> String {
    quoted(locale, words.iter().map(|w| w.says.as_str()))
}

fn quoted<'a>(locale: &Locale, says: impl Iterator<Item = &'a str>) -> String {
    let said: Vec<String> = says.map(|word| say!(locale, act::quoted, word = word)).collect();
    locale.and(&said)
}
