//! Markup of demand and readiness.

use crate::chart::{Axis, Lines, Series, lines, nice_axis};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::Caution;
use sayso_advisor::demand::Demand;
use sayso_advisor::readiness::Ready;
use sayso_wording::advice;

/// Bursts listed.
const LISTED: usize = 5;

/// Readiness over its sessions.
#[allow(clippy::cast_precision_loss)]
pub fn readiness(page: &AnimalPage, ready: Option<&Ready>) -> Markup {
    let Some(r) = ready else { return html! {} };
    let points = r.by_session.iter().enumerate().map(|(i, (_, p))| ((i + 1) as f64, *p, None)).collect();
    let told = advice::readiness(&page.locale, page.card.name.as_str(), r);
    html! {
        h2 { "Readiness" }
        (lines(&Lines {
            title: "Probability of being ready, by session".into(),
            told: told.clone(),
            x: nice_axis("session, oldest first", 0.0, r.by_session.len().max(1) as f64),
            y: Axis::share("ready"),
            series: vec![Series { name: "ready".into(), points, steps: false, dots: false }],
            level: None,
            band: String::new(),
        }))
        p { (told) " From joining, time to come and signs together (a hidden-state model)." }
    }
}

/// Demand: steady stretches, bursts, what follows answers, gaps.
pub fn demand(page: &AnimalPage, d: &Demand) -> Markup {
    let l = &page.locale;
    html! {
        h2 { "Demand" }
        @if d.stretches.is_empty() { p { "No own presses in this time, so nothing can be said about demand (n = 0)." } }
        @else {
            p { "Stretches in which it pressed at a steady rate:" }
            ul { @for s in &d.stretches { li { (s.first) " to " (s.last) ": " (s.rate) } } }
        }
        @if !d.bursts.is_empty() {
            p { "Bursts of the last four weeks, faster than usual. " (advice::caution(l, page.card.name.as_str(), Caution::BurstMayCome)) }
            ul {
                @for b in d.bursts.iter().take(LISTED) {
                    @let at = b.from.local(&page.zone);
                    li { (at.date()) " " (format!("{:02}:{:02}", at.hour(), at.minute())) ": " (b.presses) " presses in "
                        (format!("{:.0}", b.to.seconds_since(b.from))) " s" }
                }
            }
        }
        @if !d.after.is_empty() {
            div.scroll tabindex="0" role="region" aria-label="What followed answers" {
                table {
                    caption { "After each kind of answer" }
                    thead { tr { th scope="col" { "Answer" } th scope="col" { "pressed again within ten minutes" } th scope="col" { "next press against \u{201c}given\u{201d}" } } }
                    tbody {
                        @for a in &d.after {
                            tr {
                                th scope="row" { (advice::answer(l, a.answer)) }
                                td { (a.again) }
                                td { @match &a.against_given { Some(r) => { (r) " times as fast" } None => "\u{2013}" } }
                            }
                        }
                    }
                }
            }
        }
        @if !d.unvoiced.is_empty() {
            p { "Asked for without a button, a week:" }
            ul { @for u in &d.unvoiced { li { (u.says) ": " (u.per_week) } } }
        }
        @if !d.next_words.is_empty() || d.hold.is_some() {
            h3 { "Words that could come next" }
            @if let Some(why) = &d.hold { p { (advice::hold(l, why)) } }
            ul { @for w in &d.next_words { li { @for said in advice::next_word(l, w) { (said) " " } } } }
        }
    }
}
