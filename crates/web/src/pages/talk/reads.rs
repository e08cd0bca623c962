//! What of the talk a coach reads. Whoever reads it has the home's open consent to its figures besides; this decides only whose
//! writing is theirs:
//!
//! - what they wrote themselves;
//! - what was written in the name of a club they coach in, while the home shares with that club in words that say so;
//! - what passed on to them: with the home that was handed over, up to that moment, or of whom they cover, on those days; where a keeper
//!   of the home accepted that, and this server saw it being proposed. With that they go on: they may end it, too;
//! - what who stood in for them wrote on those days, also when they are back: it was written in their place.

use crate::leave::Leave;
use crate::page::Page;
use sayso_model::talks::{Passed, Talk, reaches};

/// Whether a coach reads one of them; `passed` is what passed on in this home.
pub fn may(page: &Page, leave: &Leave, passed: &[Passed], talk: &Talk<'_>) -> bool {
    talk.part.from.account == leave.who.account
        || talk.part.club.is_some_and(|club| leave.reads_of(club))
        || goes_on(page, leave, passed, talk)
}

/// Whether a coach goes on with what another one wrote.
pub fn goes_on(page: &Page, leave: &Leave, passed: &[Passed], talk: &Talk<'_>) -> bool {
    let (wrote, today) = ((talk.part.from.account, talk.event.happened_at), page.now.day(&page.zone));
    reaches(passed, wrote, leave.who.account, (today, &page.zone))
}
