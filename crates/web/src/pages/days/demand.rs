//! Markup of demand and readiness.

use crate::chart::{Axis, Lines, Series, lines, nice_axis};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::demand::Demand;
use sayso_advisor::readiness::Ready;
use sayso_methods::demand::answers::Answer;
use sayso_methods::learning::readiness::Readiness;
use sayso_methods::words::{NextReason, NextWord};
use sayso_wording::figures::{estimate, finding};
use sayso_wording::sounds::likeness;
use sayso_wording::{Locale, say};

/// Bursts listed.
const LISTED: usize = 5;

/// Readiness over its sessions.
#[allow(clippy::cast_precision_loss)]
pub fn readiness(page: &AnimalPage, r: &Ready) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    let points = r.by_session.iter().enumerate().map(|(i, (_, p))| ((i + 1) as f64, *p, None)).collect();
    let share = finding(locale, &r.now);
    let state = match r.likeliest {
        Readiness::Away => "away",
        Readiness::Warming => "warming",
        Readiness::Ready => "ready",
    };
    let told = if r.sure() {
        say!(locale, days::readiness_told, name = name, state = state, share = share)
    } else {
        say!(locale, days::readiness_open, name = name, share = share)
    };
    html! {
        (lines(locale, &Lines {
            title: say!(locale, days::readiness_title),
            told: told.clone(),
            x: nice_axis(locale, &say!(locale, days::session_axis), 0.0, r.by_session.len().max(1) as f64),
            y: Axis::share(locale, &say!(locale, days::ready)),
            series: vec![Series { points, ..Series::default() }],
            level: None,
            mark: None,
            band: String::new(),
        }))
        p { (told) " " (say!(locale, days::readiness_from)) }
    }
}

/// Demand: steady stretches, bursts, what follows answers, gaps.
pub fn demand(page: &AnimalPage, d: &Demand) -> Markup {
    let (locale, today) = (&page.locale, page.now.day(&page.zone));
    html! {
        @if d.stretches.is_empty() { p { (say!(locale, days::no_demand)) } }
        @else {
            p { (say!(locale, days::stretches, name = &page.card.name)) }
            ul { @for s in &d.stretches {
                li { (say!(locale, days::stretch, first = locale.day_near(s.first, today), last = locale.day_near(s.last, today), rate = finding(locale, &s.rate))) }
            } }
        }
        @if !d.bursts.is_empty() {
            p { (say!(locale, days::bursts)) " " (say!(locale, days::burst_may_come)) }
            ul {
                @for b in d.bursts.iter().take(LISTED) {
                    @let seconds = locale.seconds(b.to.seconds_since(b.from));
                    li { (say!(locale, days::burst, when = locale.weekday_date_time(b.from, &page.zone), presses = b.presses, seconds = seconds)) }
                }
            }
        }
        @if !d.after.is_empty() {
            div.scroll tabindex="0" role="region" aria-label=(say!(locale, days::after_answers)) {
                table {
                    caption { (say!(locale, days::after_each)) }
                    thead { tr {
                        th scope="col" { (say!(locale, days::answer_head)) }
                        th scope="col" { (say!(locale, days::pressed_again)) }
                        th scope="col" { (say!(locale, days::against_given)) }
                    } }
                    tbody {
                        @for a in &d.after {
                            tr {
                                th scope="row" { (say!(locale, days::answer, answer = answer(a.answer))) }
                                td { (finding(locale, &a.again)) }
                                td { @match a.against_given.as_ref().filter(|_| a.again.n >= sayso_advisor::estimate::TOO_EARLY) {
                                    Some(r) => (say!(locale, days::times_as_fast, times = estimate(locale, r))),
                                    None => "\u{2013}",
                                } }
                            }
                        }
                    }
                }
            }
        }
        @if !d.unvoiced.is_empty() {
            p { (say!(locale, days::unvoiced)) }
            ul { @for u in &d.unvoiced { li { (say!(locale, days::named_figure, what = &u.says, figure = finding(locale, &u.per_week))) } } }
        }
        @match &d.next {
            Err(why) => p.quiet { (why) },
            Ok(next) => @if !next.suggestions.is_empty() || next.hold.is_some() {
                h3 { (say!(locale, days::next_words)) }
                @if let Some((used, all)) = next.hold { p { (say!(locale, days::hold, used = used, all = all)) } }
                ul { @for w in &next.suggestions { li { (suggestion(locale, w)) @for how in &w.sounds_like { "; " (likeness(locale, how)) } } } }
            }
        }
    }
}

const fn answer(answer: Answer) -> &'static str {
    match answer {
        Answer::Yes => "given",
        Answer::No => "declined",
        Answer::Alternative => "alternative",
        Answer::Missed => "missed",
    }
}

fn suggestion(locale: &Locale, word: &NextWord) -> String {
    let one = |x: f64| locale.number(x, 1);
    match word.why {
        NextReason::Gap { asked, per_week, interval: i } => say!(
            locale,
            days::next_gap,
            word = &word.says,
            asked = asked,
            rate = one(per_week),
            low = one(i.low),
            high = one(i.high)
        ),
        NextReason::HighDemand { presses, per_hour, interval: i } => say!(
            locale,
            days::next_demand,
            word = &word.says,
            rate = one(per_hour),
            low = one(i.low),
            high = one(i.high),
            n = presses
        ),
        NextReason::HighArousal { ended_high, of, interval: i } => say!(
            locale,
            days::next_arousal,
            word = &word.says,
            ended = ended_high,
            of = of,
            low = locale.percent(i.low),
            high = locale.percent(i.high)
        ),
    }
}
