//! What can be wrong with a time, a zone or a day.

/// What is wrong with a time, zone or day.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum TimeError {
    /// Not an RFC 3339 time.
    #[error("\"{0}\" is not a time such as 2026-03-01T18:30:00Z")]
    NotATime(String),
    /// A time no living notebook can hold.
    #[error("the time {0} lies outside the years 2000 to 2199")]
    OutOfRange(String),
    /// Not a name in the IANA database.
    #[error("\"{0}\" is not an IANA time zone such as Europe/Berlin")]
    NotAZone(String),
    /// Not a calendar day.
    #[error("\"{0}\" is not a day such as 2026-03-01")]
    NotADay(String),
}
