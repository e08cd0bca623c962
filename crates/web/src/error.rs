//! Errors at the edge: what was wrong and what would be right, in words; internals go to the log, not to the page.

use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use sayso_model::{Problem, Problems};
use sayso_people::Denied;
use sayso_store::RowProblem;
use sayso_wording::wanted::wrong;
use sayso_wording::{Locale, Message, Words, words};
use serde::Serialize;
use std::fmt;

/// Everything a handler can answer besides success.
#[derive(Debug, thiserror::Error)]
#[non_exhaustive]
pub enum Error {
    /// The request cannot be read.
    #[error("{0}")]
    BadRequest(Words),
    /// More bytes than this address takes.
    #[error("more than {0} bytes at once")]
    TooLarge(usize),
    /// The request can be read, but its content does not hold.
    #[error("{0}")]
    Refused(Refusal),
    /// There is no such thing.
    #[error("{0}")]
    NotFound(Words),
    /// This device has not been paired.
    #[error("not paired")]
    NotPaired,
    /// Nobody is signed in, on a server of many homes.
    #[error("not signed in")]
    NotSignedIn,
    /// The sign-in is too old for this.
    #[error("needs a fresh sign-in")]
    NotFresh,
    /// Not allowed from here.
    #[error("{0}")]
    Forbidden(Words),
    /// Too many tries.
    #[error("too many tries; {0} seconds to wait")]
    TooMany(u64),
    /// There is no notebook yet; pages lead to set-up.
    #[error("no home yet")]
    NoHome,
    /// Cannot be done just now; trying again later may help.
    #[error("{0}")]
    Unavailable(Words),
    /// The notebook cannot grow.
    #[error("the disk is full")]
    DiskFull,
    /// The notebook's files are not as they must be; the words name the file and the remedy. Logged too.
    #[error("{0}")]
    Damaged(Words),
    /// Something here went wrong. Logged, not shown.
    #[error("{0}")]
    Internal(#[source] Box<dyn std::error::Error + Send + Sync>),
}

impl Error {
    /// One thing wrong with what was sent.
    pub fn refused(field: impl Into<String>, what: impl Into<Words>) -> Self {
        Self::Refused(Refusal(vec![Wrong { field: field.into(), what: what.into() }]))
    }

    /// A failure of ours.
    pub fn internal(error: impl Into<Box<dyn std::error::Error + Send + Sync>>) -> Self {
        Self::Internal(error.into())
    }

    /// What it says to whoever asked.
    pub fn words(&self) -> Words {
        match self {
            Self::BadRequest(words)
            | Self::NotFound(words)
            | Self::Forbidden(words)
            | Self::Unavailable(words)
            | Self::Damaged(words) => words.clone(),
            Self::Refused(wrong) => wrong.to_string().into(),
            Self::TooLarge(most) => words!(errors::too_large, bytes = *most),
            Self::NotPaired => words!(errors::not_paired),
            Self::NotSignedIn => words!(host::not_signed_in),
            Self::NotFresh => words!(host::not_fresh),
            Self::TooMany(seconds) => words!(errors::too_many, seconds = *seconds),
            Self::NoHome => words!(errors::no_home),
            Self::DiskFull => words!(errors::disk_full),
            Self::Internal(_) => words!(errors::internal),
        }
    }

    const fn status(&self) -> StatusCode {
        match self {
            Self::BadRequest(_) => StatusCode::BAD_REQUEST,
            Self::TooLarge(_) => StatusCode::PAYLOAD_TOO_LARGE,
            Self::Refused(_) => StatusCode::UNPROCESSABLE_ENTITY,
            Self::NotFound(_) => StatusCode::NOT_FOUND,
            Self::NotPaired | Self::NotSignedIn => StatusCode::UNAUTHORIZED,
            Self::Forbidden(_) | Self::NotFresh => StatusCode::FORBIDDEN,
            Self::TooMany(_) => StatusCode::TOO_MANY_REQUESTS,
            Self::NoHome => StatusCode::CONFLICT,
            Self::Unavailable(_) => StatusCode::SERVICE_UNAVAILABLE,
            Self::DiskFull => StatusCode::INSUFFICIENT_STORAGE,
            Self::Damaged(_) | Self::Internal(_) => StatusCode::INTERNAL_SERVER_ERROR,
        }
    }
}

/// Stands in an address one is led to for the path one came from.
pub(crate) const FROM: &str = "{from}";
/// Stands in such an address for that something had been sent.
pub(crate) const SENT: &str = "{sent}";

impl Error {
    /// Where a page leads instead of telling.
    const fn leads(&self) -> Option<&'static str> {
        match self {
            Self::NotPaired => Some("/pair"),
            Self::NotSignedIn => Some("/sign-in?to={from}"),
            Self::NotFresh => Some("/sign-in?again=yes{sent}&to={from}"),
            Self::NoHome => Some("/start"),
            _ => None,
        }
    }
}

impl From<Denied> for Error {
    fn from(why: Denied) -> Self {
        match why {
            Denied::NothingHere => Self::NotFound(words!(errors::no_such_page)),
            Denied::NotByRole(_) => Self::Forbidden(words!(host::not_by_role)),
            Denied::NotToday => Self::Forbidden(words!(host::not_today)),
            Denied::NotYourName => Self::Forbidden(words!(host::not_your_name)),
            Denied::NotFresh(_) => Self::NotFresh,
        }
    }
}

/// What is wrong with one field, said when it is known who reads it.
#[derive(Clone, Debug)]
pub struct Wrong {
    /// Path of the field.
    pub field: String,
    /// What was found and what would be right.
    pub what: Words,
}

/// Everything wrong with what was sent. Displayed in English, for logs and programs.
#[derive(Clone, Debug)]
pub struct Refusal(pub Vec<Wrong>);

impl fmt::Display for Refusal {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let all: Vec<String> = self.0.iter().map(|w| format!("{}: {}", w.field, w.what)).collect();
        f.write_str(&all.join("; "))
    }
}

impl From<Problems> for Refusal {
    fn from(Problems(found): Problems) -> Self {
        Self(found.into_iter().map(|p| Wrong { field: p.field, what: p.fault.into() }).collect())
    }
}

/// What programs read of a problem that came as a text and has no message of its own.
const OTHER: &str = "other";

/// The kind of a message, for programs.
pub fn kind_of(message: &impl Message) -> &'static str {
    message.kind().unwrap_or(OTHER)
}

/// The kind of some words, for programs: that of their message.
fn kind(words: &Words) -> &'static str {
    words.kind().unwrap_or(OTHER)
}

/// A problem as the API tells it.
#[derive(Clone, Debug, Serialize)]
pub struct ProblemJson {
    /// Path of the field.
    pub field: String,
    /// Which problem it is, the same in every language.
    pub kind: &'static str,
    /// What was found and what would be right.
    pub what: String,
}

impl ProblemJson {
    /// Of an event that could be read.
    pub fn of(l: &Locale, p: &Problem) -> Self {
        Self { field: p.field.clone(), kind: kind_of(&p.fault), what: p.fault.say(l) }
    }

    /// Of an event that could not be read.
    pub fn of_unread(l: &Locale, p: &RowProblem) -> Self {
        Self { field: p.field.clone(), kind: kind_of(p), what: wrong(l, p) }
    }

    fn of_wrong(l: &Locale, w: &Wrong) -> Self {
        Self { field: w.field.clone(), kind: kind(&w.what), what: w.what.say(l) }
    }
}

/// An error on its way to being told; [`crate::told::in_words`] makes a page or JSON of it.
#[derive(Clone, Debug)]
pub(crate) struct Told {
    pub error: Words,
    pub problems: Vec<Wrong>,
    /// Where a page leads instead.
    pub leads: Option<&'static str>,
    /// What goes to the log.
    pub log: Option<String>,
}

/// The same as the API tells it.
#[derive(Clone, Debug, Serialize)]
pub(crate) struct ToldJson {
    error: String,
    kind: &'static str,
    #[serde(skip_serializing_if = "Vec::is_empty")]
    problems: Vec<ProblemJson>,
}

impl Told {
    pub fn json(self, locale: &Locale) -> ToldJson {
        let problems: Vec<ProblemJson> = self.problems.iter().map(|w| ProblemJson::of_wrong(locale, w)).collect();
        if problems.is_empty() {
            return ToldJson { error: self.error.say(locale), kind: kind(&self.error), problems };
        }
        let error: Vec<String> = problems.iter().map(|p| format!("{}: {}", p.field, p.what)).collect();
        ToldJson { error: error.join("; "), kind: "refused", problems }
    }
}

impl IntoResponse for Error {
    fn into_response(self) -> Response {
        let log = match &self {
            Self::Internal(source) => Some(chain(source.as_ref())),
            Self::Damaged(what) | Self::Unavailable(what) => Some(what.to_string()),
            _ => None,
        };
        let problems = match &self {
            Self::Refused(Refusal(wrong)) => wrong.clone(),
            _ => Vec::new(),
        };
        let (mut response, leads) = (self.status().into_response(), self.leads());
        if let Self::TooMany(seconds) = self {
            response.headers_mut().insert(header::RETRY_AFTER, seconds.into());
        }
        response.extensions_mut().insert(Told { error: self.words(), problems, leads, log });
        response
    }
}

/// An error with what caused it.
fn chain(error: &dyn std::error::Error) -> String {
    let mut words = error.to_string();
    let mut source = error.source();
    while let Some(cause) = source {
        let cause_words = cause.to_string();
        // Many errors repeat their cause in their own words.
        if !words.contains(&cause_words) {
            words = format!("{words}: {cause_words}");
        }
        source = cause.source();
    }
    words
}
