//! How a plan goes that was agreed: what the log has of it, beside what was agreed. Facts and counts; whether it helps, carefully.

use super::case;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::agreed::{BEFORE_DAYS, Doing, Kept, doing};
use sayso_model::talks::{Standing, Talk};
use sayso_model::{AnimalId, PlanWay, Proposed};
use sayso_people::Capability;
use sayso_wording::figures::finding;
use sayso_wording::talk::dose;
use sayso_wording::{Locale, say};

/// How an agreed plan goes, or went; nothing for anything else.
pub fn going(page: &Page, talk: &Talk<'_>) -> Markup {
    let (Proposed::Plan { lines, last_day }, Some(animal), Some(at)) =
        (&talk.part.proposes, talk.event.animal, talk.agreed_at)
    else {
        return html! {};
    };
    let l = &page.locale;
    let doing = doing(&case(page, animal), lines, at, *last_day);
    html! {
        div data-test="going" {
            p.quiet { (say!(l, talk::since, since = l.date(at.day(&page.zone)), last = l.date(*last_day))) }
            ul.short {
                @for kept in &doing.lines { li data-test="kept" { (told(l, &doing, kept)) } }
                @if doing.no_record > 0 { li.quiet data-test="no-record" { (say!(l, talk::no_record, days = doing.no_record)) } }
            }
            @if talk.standing == Standing::Accepted || talk.standing == (Standing::Ended { accepted: true }) {
                (helps(page, animal, &doing))
            }
        }
    }
}

const fn way(way: Option<PlanWay>) -> &'static str {
    match way {
        None => "any",
        Some(PlanWay::Show) => "show",
        Some(PlanWay::OfferInView | PlanWay::AskAndPoint | PlanWay::AskBetweenTwo) => "invite",
    }
}

fn told(l: &Locale, doing: &Doing, kept: &Kept) -> String {
    let (word, dose) = (&kept.word.says, dose(l, &kept.line));
    if doing.days == 0 {
        return say!(l, talk::not_begun, word = word, dose = dose);
    }
    let way = way(kept.line.way);
    let told = say!(
        l,
        talk::kept,
        way = way,
        word = word,
        on = kept.on_days,
        days = doing.days,
        times = kept.times,
        dose = dose
    );
    if kept.sessions == 0 {
        return told;
    }
    // Minutes of some of the sessions would look like those of all.
    let sessions = if kept.timed == kept.sessions {
        let minutes = l.number((kept.seconds / 60.0).round(), 0);
        say!(l, talk::sessions_timed, sessions = kept.sessions, minutes = minutes)
    } else {
        say!(l, talk::sessions, sessions = kept.sessions)
    };
    format!("{told} {sessions}")
}

/// Figures before and since, with what they cannot tell.
fn helps(page: &Page, animal: AnimalId, doing: &Doing) -> Markup {
    let l = &page.locale;
    let two = |kept: &Kept| {
        let of = |(before, since)| (finding(l, before), finding(l, since));
        (of((&kept.pressed.0, &kept.pressed.1)), of((&kept.right.0, &kept.right.1)))
    };
    html! {
        details data-test="helps" {
            summary { (say!(l, talk::does_it_help)) }
            ul {
                @for kept in &doing.lines {
                    @let ((pressed_before, pressed), (right_before, right)) = two(kept);
                    li { (say!(l, talk::pressed, word = &kept.word.says, since = pressed, days = BEFORE_DAYS, before = pressed_before)) }
                    li { (say!(l, talk::right, word = &kept.word.says, since = right, days = BEFORE_DAYS, before = right_before)) }
                }
            }
            p { (say!(l, talk::other_causes)) }
            @if page.may(Capability::Plan) {
                p { a.link href=(format!("/a/{animal}/designs/new")) { (say!(l, talk::to_trial)) } }
            }
        }
    }
}
