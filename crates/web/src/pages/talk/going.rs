//! How a plan goes that was agreed: what the log has of it, beside what was agreed. Facts and counts; whether it helps, carefully.

use super::case;
use crate::page::Page;
use maud::{Markup, html};
use sayso_advisor::agreed::{BEFORE_DAYS, Doing, Kept, doing};
use sayso_model::talks::Talk;
use sayso_model::{AnimalId, Day, Moment, PlanLine, Proposed};
use sayso_people::Capability;
use sayso_wording::figures::finding;
use sayso_wording::say;
use sayso_wording::talk::kept as kept_line;

/// How an agreed plan goes, or went; nothing for anything else.
pub fn going(page: &Page, talk: &Talk<'_>) -> Markup {
    let (Proposed::Plan { lines, last_day }, Some(animal), Some(at)) =
        (&talk.part.proposes, talk.event.animal, talk.agreed_at)
    else {
        return html! {};
    };
    going_of(page, animal, (lines, at, *last_day), talk.standing.is_agreed())
}

/// How a plan goes, or went, that holds since a moment.
pub fn going_of(page: &Page, animal: AnimalId, plan: (&[PlanLine], Moment, Day), tells_figures: bool) -> Markup {
    let (lines, at, last_day) = plan;
    let l = &page.locale;
    let doing = doing(&case(page, animal), lines, at, last_day);
    html! {
        div data-test="going" {
            p.quiet { (say!(l, talk::since, since = l.date(at.day(&page.zone)), last = l.date(last_day))) }
            ul.short {
                @for kept in &doing.lines { li data-test="kept" { (kept_line(l, doing.days, kept)) } }
                @if doing.no_record > 0 { li.quiet data-test="no-record" { (say!(l, talk::no_record, days = doing.no_record)) } }
            }
            @if tells_figures { (helps(page, animal, &doing)) }
        }
    }
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
