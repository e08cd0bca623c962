//! Values of arguments read so that what is wrong with one is known by type, and told in the reader's language.

use clap::builder::{PossibleValuesParser, TypedValueParser};
use sayso_model::time::TimeError;
use sayso_norms::NoStudyName;
use sayso_wording::{Locale, Message, say};
use std::fmt;
use std::num::{NonZeroU16, ParseFloatError};
use std::str::FromStr;

/// What is wrong with a value, by what should stand there.
#[derive(Clone, PartialEq, Eq, Debug)]
pub enum WrongValue {
    /// A whole number in this range.
    Whole { low: u64, high: u64 },
    /// A number.
    Number,
    /// An address of this machine.
    Address,
    /// An id.
    Id,
    /// One of these.
    OneOf(Vec<String>),
    /// Where browsers find a server.
    PublicUrl,
    /// What a home is called in rows.
    StudyName,
    /// A time or a day.
    Time(TimeError),
}

impl From<NoStudyName> for WrongValue {
    fn from(_: NoStudyName) -> Self {
        Self::StudyName
    }
}

impl Message for WrongValue {
    /// What should stand there; of a time, what is wrong with it.
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Whole { low, high } => say!(l, usage::whole, low = low.to_string(), high = high.to_string()),
            Self::Number => say!(l, usage::number),
            Self::Address => say!(l, usage::address),
            Self::Id => say!(l, usage::id),
            Self::PublicUrl => say!(l, usage::public_url),
            Self::StudyName => say!(l, usage::study_name),
            Self::OneOf(known) => say!(l, usage::one_of, known = known.join(", ")),
            Self::Time(why) => why.say(l),
        }
    }
}

impl fmt::Display for WrongValue {
    /// In English, for the log.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.say(&Locale::ENGLISH))
    }
}

impl std::error::Error for WrongValue {}

impl From<TimeError> for WrongValue {
    fn from(why: TimeError) -> Self {
        Self::Time(why)
    }
}

impl From<ParseFloatError> for WrongValue {
    fn from(_: ParseFloatError) -> Self {
        Self::Number
    }
}

impl From<std::net::AddrParseError> for WrongValue {
    fn from(_: std::net::AddrParseError) -> Self {
        Self::Address
    }
}

impl From<uuid::Error> for WrongValue {
    fn from(_: uuid::Error) -> Self {
        Self::Id
    }
}

/// Whole numbers that an argument takes.
pub trait Whole: FromStr {
    /// Least and most.
    const RANGE: (u64, u64);
}

macro_rules! whole {
    ($($type:ty),*) => { $(
        impl Whole for $type {
            const RANGE: (u64, u64) = (<$type>::MIN as u64, <$type>::MAX as u64);
        }
    )* };
}
whole!(u16, u32, u64);

impl Whole for NonZeroU16 {
    const RANGE: (u64, u64) = (1, u16::MAX as u64);
}

/// Reads a whole number.
pub fn whole<T: Whole>(text: &str) -> Result<T, WrongValue> {
    let (low, high) = T::RANGE;
    text.parse().map_err(|_| WrongValue::Whole { low, high })
}

/// Reads a value of a type that says by type why it is none.
pub fn typed<T: FromStr>(text: &str) -> Result<T, WrongValue>
where
    T::Err: Into<WrongValue>,
{
    text.parse().map_err(Into::into)
}

/// Reads one of some names; help and refusals list them.
pub fn one_of<T: FromStr + Clone + Send + Sync + 'static>(
    names: &'static [&'static str],
) -> impl TypedValueParser<Value = T> {
    let wrong = || WrongValue::OneOf(names.iter().map(|n| (*n).to_owned()).collect());
    PossibleValuesParser::new(names).try_map(move |text| text.parse().map_err(|_| wrong()))
}

/// Reads one of a vocabulary by its name on the wire; help and refusals list them.
pub fn by_name<T: Copy + Send + Sync + 'static>(
    all: &'static [T],
    name: fn(T) -> &'static str,
) -> impl TypedValueParser<Value = T> {
    let names = PossibleValuesParser::new(all.iter().map(|t| name(*t)));
    let wrong = move || WrongValue::OneOf(all.iter().map(|t| name(*t).to_owned()).collect());
    names.try_map(move |text| all.iter().copied().find(|t| name(*t) == text).ok_or_else(wrong))
}
