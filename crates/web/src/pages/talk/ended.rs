//! Whether what a coach wrote to the home, what is done about it and what is answered is still read, and since when not: sharing ends, what
//! was agreed stays.

use super::{is_home, is_open_to};
use crate::page::Page;
use maud::{Markup, html};
use sayso_model::consents::{Consents, last_ended};
use sayso_model::talks::{Passed, Talk, hands};
use sayso_model::{Coach, Consent, Moment};
use sayso_wording::say;

/// It is read by nobody.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Ended {
    /// Since when; unknown where nobody closed it, as in a notebook that shares nothing.
    pub since: Option<Moment>,
}

/// Whether something is read by no coach any more: neither by who wrote it, nor by the club in whose name, nor by who goes on with it.
/// Nothing where a coach asks, who reads it.
pub fn ended(page: &Page, (passed, open): (&[Passed], &Consents), talk: &Talk<'_>) -> Option<Ended> {
    if !is_home(page) {
        return None;
    }
    let (account, club) = (talk.part.from.account, talk.part.club);
    // Written in no club's name, it may be read through any that its author coaches in.
    let reads = |coach: Coach| match coach {
        Coach::Account { account: of } => of == account,
        Coach::Club { club: of } => club.is_none_or(|club| club == of),
    };
    let figures = |consent: Consent| matches!(consent, Consent::CoachFigures { to } if reads(to));
    let wrote = (account, talk.event.happened_at);
    let goes_on = hands(passed, wrote, page.now.day(&page.zone)).iter().any(|p| is_open_to(open, p));
    if goes_on || open.open().any(|(consent, _)| figures(consent)) {
        return None;
    }
    Some(Ended { since: last_ended(&page.story, figures, page.now) })
}

/// That it is not read, on its card.
pub fn told(page: &Page, talk: &Talk<'_>, ended: Ended) -> Markup {
    let (l, name) = (&page.locale, &talk.part.from.name);
    html! {
        p.note data-test="not-read" {
            @match ended.since {
                Some(at) => (say!(l, talk::not_read, name = name, day = l.weekday_date(at.day(&page.zone)))),
                None => (say!(l, talk::not_read_now, name = name)),
            }
        }
    }
}
