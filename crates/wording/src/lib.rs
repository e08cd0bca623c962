//! Words for people. Every text that a person reads stands in a message catalogue (Project Fluent), one folder a language;
//! how numbers, dates, times and lists are written comes from CLDR data by way of ICU4X.
//!
//! A message of `catalogues/en/today.ftl` with the id `today-shown` and the argument `$times` is said by
//! `say!(locale, today::shown, times = 3)`; a message or an argument that does not exist does not compile.
//!
//! Knows nothing of pages, commands or the log.

pub mod advice;
pub mod agreement;
pub mod calendar;
mod catalogue;
pub mod checks;
pub mod claims;
pub mod consents;
pub mod designs;
pub mod desk;
pub mod errors;
pub mod events;
pub mod evidence;
pub mod faults;
pub mod figures;
pub mod followed;
pub mod generalise;
pub mod hazards;
mod lacking;
pub mod lessons;
mod locale;
pub mod meeting;
mod message;
mod numbers;
pub mod on_card;
pub mod others;
pub mod patterns;
pub mod pictures;
pub mod practice;
pub mod programme;
pub mod ration;
pub mod recording;
pub mod signs;
mod sound_files;
pub mod sounds;
pub mod talk;
mod times;
mod value;
pub mod wanted;

/// One type a message, made from the English catalogue.
// Types are named as the messages are.
#[allow(non_camel_case_types, rustdoc::bare_urls, rustdoc::invalid_html_tags, rustdoc::broken_intra_doc_links)]
pub mod text {
    include!(concat!(env!("OUT_DIR"), "/messages.rs"));
}

pub use catalogue::{by_id, client};
pub use locale::{Direction, Locale};
pub use message::{Message, Worded, Words};
pub use value::Value;

/// Says a message: `say!(locale, file::message, argument = value)`. Arguments are numbers, which are written as in the
/// language and decide its plural, or texts.
#[macro_export]
macro_rules! say {
    ($locale:expr, $file:ident :: $message:ident $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::Message::say(&$crate::text::$file::$message { $($name: $crate::Value::from($value)),* }, $locale)
    };
}

/// A message that is said later: `words!(errors::no_such, what = name)` is [`Words`]. Its arguments must be owned.
#[macro_export]
macro_rules! words {
    ($file:ident :: $message:ident $(, $name:ident = $value:expr)* $(,)?) => {
        $crate::Words::from($crate::text::$file::$message { $($name: $crate::Value::from($value)),* })
    };
}
