//! Advice in words: what to do, because of what, how sure, what would change it, what to watch out for. `name` is the animal's.

mod act;
mod because;
mod brief;
mod caution;
mod figures;
mod said;

pub use act::{act, hint};
pub use because::because;
pub use brief::{agreed_way, back_because, brief, step_because};
pub use caution::{caution, change};
pub use figures::{known, lean, length};
pub use said::{bearing, cause, held, lately, next, planned, running, stage_name, sure, topic};

use crate::Locale;
use sayso_advisor::NamedWord;

/// `“ball”, “water” and “walk”`.
fn words(locale: &Locale, words: &[NamedWord]) -> String {
    locale.names(&words.iter().map(|w| w.says.as_str()).collect::<Vec<_>>())
}
