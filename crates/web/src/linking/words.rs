//! What goes wrong with a link, in the reader's language. What the network said of it is told beside it where it is kept, and goes to
//! the log else.

use sayso_linked::LinkError;
use sayso_linked::NotAnAddress;
use sayso_linked::letters::Why;
use sayso_wording::{Locale, Words, say, words};

/// What is wrong, and what would put it right.
#[must_use]
pub fn said(why: LinkError) -> Words {
    match why {
        LinkError::Store(why) => Words::from(why),
        LinkError::Address(NotAnAddress::Unread(text)) => words!(linked::no_address, text = text),
        LinkError::Address(NotAnAddress::Unsafe(url)) => words!(linked::unsafe_address, url = url),
        LinkError::Damaged { file, why } => words!(linked::damaged, file = file.display().to_string(), why = why),
        LinkError::Linked(url) => words!(linked::already, url = url),
        LinkError::NotLinked => words!(linked::not_linked),
        LinkError::Code => words!(linked::bad_code),
        LinkError::OtherHome => words!(linked::other_home),
        LinkError::TooOften => words!(linked::too_often),
        LinkError::Stopped(stop) => words!(linked::stopped, why = stop.name()),
        other => {
            tracing::warn!("{other}");
            words!(linked::unreached, kind = other.hinders().name())
        }
    }
}

/// What hinders for now.
#[must_use]
pub fn hinders(l: &Locale, hindrance: &sayso_linked::Hindrance) -> String {
    say!(l, linked::hinders, kind = hindrance.kind.name())
}

/// How many records do not stand on the other side, and why.
#[must_use]
pub fn held(l: &Locale, why: Why, count: u64) -> String {
    say!(l, linked::held, why = why.name(), count = count)
}
