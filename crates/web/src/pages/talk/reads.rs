//! What of the talk a coach reads. Whoever reads it has the home's open consent to its figures besides; this decides only whose
//! writing is theirs:
//!
//! - what they wrote themselves;
//! - what was written in the name of a club they coach in, while the home shares with that club in words that say so;
//! - what was written by whoever handed the home over to them, up to that moment, or whom they cover, on those days; where a keeper
//!   of the home accepted that, and this server saw it being proposed.

use crate::leave::Leave;
use crate::page::Page;
use sayso_model::Proposed;
use sayso_model::talks::Talk;

/// Whether a coach reads one of them.
pub fn may(page: &Page, leave: &Leave, all: &[Talk<'_>], talk: &Talk<'_>) -> bool {
    let from = &talk.part.from;
    from.account == leave.who.account
        || talk.part.club.is_some_and(|club| leave.reads_of(club))
        || all.iter().filter(|t| t.part.from.account == from.account).any(|t| passes(page, leave, t, talk))
}

/// Whether an agreement passes on to this coach what another wrote.
fn passes(page: &Page, leave: &Leave, agreement: &Talk<'_>, talk: &Talk<'_>) -> bool {
    let Some(at) = agreement.agreed_at.filter(|_| leave.known.witnessed.contains(&agreement.id())) else {
        return false;
    };
    let me = leave.who.account;
    match &agreement.part.proposes {
        Proposed::HandOver { to } => to.account == me && talk.event.happened_at <= at,
        Proposed::Cover { by, first, last } => by.account == me && (*first..=*last).contains(&page.now.day(&page.zone)),
        _ => false,
    }
}
