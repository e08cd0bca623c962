//! What was closed on a server, as a list that is kept apart from its backups: a backup that is brought back opens all of it again, and
//! by the list it is closed anew. It holds random ids and hashes, no name and no secret.
//!
//! A line each, as CSV: what, its id, when. The last line says how many there are and when the list was written, so that one that was
//! cut off is known.

use crate::id::MembershipId;
use sayso_model::{AccountId, HomeId, Moment};
use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::str::FromStr;
use uuid::Uuid;

/// The first line.
const HEAD: &str = "what,id,at";
/// Of which kind the last line is.
const END: &str = "end";

/// What was closed.
#[derive(Clone, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Closed {
    /// A home that left.
    Home(HomeId),
    /// An account that was erased.
    Account(AccountId),
    /// A role that ended.
    Role(MembershipId),
    /// A passkey that was removed: the SHA-256 of its id, in hexadecimal.
    Passkey(String),
}

impl Closed {
    /// Its kind and its id, as they are written.
    pub(crate) fn named(&self) -> (&'static str, String) {
        match self {
            Self::Home(id) => ("home", id.to_string()),
            Self::Account(id) => ("account", id.to_string()),
            Self::Role(id) => ("role", id.to_string()),
            Self::Passkey(hash) => ("passkey", hash.clone()),
        }
    }

    /// What is written so; none where it is nothing that is known.
    pub(crate) fn read(what: &str, id: &str) -> Option<Self> {
        let hash =
            || (id.len() == 64 && id.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'))).then(|| id.to_owned());
        match what {
            "home" => id.parse().ok().map(Self::Home),
            "account" => id.parse().ok().map(Self::Account),
            "role" => Uuid::parse_str(id).ok().map(|id| Self::Role(MembershipId(id))),
            "passkey" => hash().map(Self::Passkey),
            _ => None,
        }
    }
}

/// What was closed on a server until a moment.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Closings {
    /// When the list was written.
    pub at: Moment,
    /// What, and when.
    pub all: BTreeMap<Closed, Moment>,
}

impl Closings {
    /// With what another list holds besides: what is closed stays closed.
    #[must_use]
    pub fn with(mut self, other: Self) -> Self {
        for (what, at) in other.all {
            self.all.entry(what).or_insert(at);
        }
        self
    }

    /// As it is kept.
    #[must_use]
    pub fn write(&self) -> String {
        let mut text = format!("{HEAD}\n");
        let mut line = |what: &str, id: &str, at: Moment| {
            // Writing into a text does not fail.
            let _ = writeln!(text, "{what},{id},{at}");
        };
        for (closed, at) in &self.all {
            let (what, id) = closed.named();
            line(what, &id, *at);
        }
        line(END, &self.all.len().to_string(), self.at);
        text
    }
}

/// Why a text is no list of what was closed.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
pub enum NoClosings {
    /// It does not begin as one does.
    #[error("line 1 must be {HEAD}")]
    Head,
    /// A line that cannot be read, counted from 1.
    #[error("line {0} cannot be read: home, account, role or passkey, its id, and when")]
    Line(usize),
    /// Its last line is missing, or counts other than it holds.
    #[error("it is cut off: the last line must be {END}, how many lines there are, and when it was written")]
    CutOff,
}

impl FromStr for Closings {
    type Err = NoClosings;

    fn from_str(text: &str) -> Result<Self, NoClosings> {
        let mut lines = text.lines().map(str::trim_end).enumerate().filter(|(_, line)| !line.is_empty());
        if lines.next().is_none_or(|(_, line)| line != HEAD) {
            return Err(NoClosings::Head);
        }
        let mut all = BTreeMap::new();
        for (found, (before, line)) in lines.by_ref().enumerate() {
            let wrong = NoClosings::Line(before + 1);
            let mut parts = line.split(',');
            let (Some(what), Some(id), Some(at), None) = (parts.next(), parts.next(), parts.next(), parts.next())
            else {
                return Err(wrong);
            };
            let at: Moment = at.parse().map_err(|_| wrong)?;
            if what == END {
                let whole = id == found.to_string() && lines.next().is_none();
                return if whole { Ok(Self { at, all }) } else { Err(NoClosings::CutOff) };
            }
            all.insert(Closed::read(what, id).ok_or(wrong)?, at);
        }
        Err(NoClosings::CutOff)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn some() -> Closings {
        let id = Uuid::from_u128(7);
        let all = [
            Closed::Home(HomeId(id)),
            Closed::Account(AccountId(id)),
            Closed::Role(MembershipId(id)),
            Closed::Passkey("0a".repeat(32)),
        ];
        Closings { at: Moment::clamped(2_000), all: all.into_iter().map(|one| (one, Moment::clamped(1_000))).collect() }
    }

    #[test]
    fn a_list_is_read_as_it_was_written() {
        let written = some().write();
        assert_eq!(written.parse(), Ok(some()), "{written}");
        assert_eq!(written.replace('\n', "\r\n").parse(), Ok(some()), "as another system ends lines");
        let none = Closings { at: Moment::clamped(5), all: BTreeMap::new() };
        assert_eq!(none.write().parse(), Ok(none));
    }

    #[test]
    fn one_that_was_cut_off_or_spoilt_is_no_list() {
        let written = some().write();
        let lines: Vec<&str> = written.lines().collect();
        for kept in 1..lines.len() {
            let cut = lines[..kept].join("\n");
            assert_eq!(cut.parse::<Closings>(), Err(NoClosings::CutOff), "{cut}");
        }
        let without_one = [&lines[..2], &lines[3..]].concat().join("\n");
        assert_eq!(without_one.parse::<Closings>(), Err(NoClosings::CutOff));
        assert_eq!("".parse::<Closings>(), Err(NoClosings::Head));
        assert_eq!("id,left_at\n".parse::<Closings>(), Err(NoClosings::Head));
        for bad in ["club,x,y", "home,7,1970-01-01T00:00:01Z", "passkey,0a,1970-01-01T00:00:01Z", "home"] {
            let text = format!("{HEAD}\n{bad}\n");
            assert_eq!(text.parse::<Closings>(), Err(NoClosings::Line(2)), "{bad}");
        }
    }

    #[test]
    fn what_one_list_lacks_another_brings() {
        let more = Closed::Home(HomeId(Uuid::from_u128(8)));
        let older = Closings { at: Moment::clamped(1), all: [(more.clone(), Moment::clamped(1))].into() };
        let both = some().with(older);
        assert_eq!((both.at, both.all.len()), (Moment::clamped(2_000), 5));
        assert!(both.all.contains_key(&more));
    }
}
