//! Markup of Evidence.

use crate::chart::{Axis, Bar, Lines, Series, Whisker, bars, lines, nice_axis, waiting, whiskers};
use crate::page::LearnerPage;
use maud::{Markup, html};
use sayso_advisor::claim_text::{rivals_of, tests_of};
use sayso_advisor::evidence::{After, Evidence};
use sayso_advisor::stages::Standing;
use sayso_advisor::stuck::Weighed;
use sayso_methods::learning::curve::LearningCurve;
use sayso_model::{Day, LearnerId};
use std::collections::BTreeMap;

/// Days drawn in charts by day.
const DRAWN_DAYS: i32 = 42;

/// Every word in one picture.
pub fn list(learner: LearnerId, words: &[Standing]) -> Markup {
    let rows: Vec<Whisker> = words
        .iter()
        .map(|w| Whisker {
            name: w.says.clone(),
            value: w.response.value,
            interval: w.response.low.zip(w.response.high),
            n: w.response.n,
        })
        .collect();
    html! {
        p { a.link href=(format!("/l/{learner}/checks")) { "Planned checks of understanding" } }
        p { a.link href="/agreement" { "Do two people see the same?" } }
        @if words.is_empty() {
            p { "No words yet. " a href=(format!("/l/{learner}/words")) { "Choose first words" } "." }
        } @else {
            (whiskers(
                "Pressed when invited and wanted",
                "For each word the share of invitations in which it pressed, of those in which it wanted the thing, with 95 % intervals.",
                &Axis::share("share pressed"),
                None,
                &rows,
            ))
            p.quiet { "Only invitations in which it joined and took the thing count. Not pressing is never read as not understanding." }
            ul.links {
                @for w in words {
                    li { a href=(format!("/l/{learner}/evidence/{}", w.word)) { (w.says) } span.quiet { " \u{2013} " (w.stage.name()) ", shown " (w.showings) " times" } }
                }
            }
        }
    }
}

/// One word.
pub fn word(page: &LearnerPage, e: &Evidence, causes: &[Weighed]) -> Markup {
    html! {
        p.lead data-test="sentence" { (e.sentence) }
        section.card {
            h2.first { "Stage: " (e.standing.stage.name()) }
            @if e.standing.figures_say != e.standing.stage {
                p { "The figures point to " strong { (e.standing.figures_say.name()) } "." }
            }
            ul { @for b in &e.standing.because { li { (b) } } }
            @if !e.standing.would_change.is_empty() {
                p { "What would change it: " (e.standing.would_change.join("; ")) "." }
            }
        }
        h2 { "Invitations" }
        (invitations(e))
        @match &e.curve {
            Ok(curve) => (learning(curve, &e.curve_days)),
            Err(why) => p.quiet { "Learning curve: " (why) "." },
        }
        (waiting("Time to press", "these invitations", &e.waiting))
        h2 { "Showings and own presses" }
        (by_day("Showings a day", "showings", page.now.day(&page.zone), &e.showings_by_day))
        p { "Delivered after the press (middle value): " strong { (e.standing.delay) } "." }
        (by_day("Own presses a day", "presses", page.now.day(&page.zone), &e.presses_by_day))
        h2 { "What it did then" }
        (after(e))
        p { "Took what was given for this word: " strong { (e.uptake.this) } "; for the other words: " (e.uptake.others) "."
            @if let Some(p) = e.uptake.p { " Fisher's exact test, two-sided: p = " (format!("{p:.3}")) "." } }
        @if e.stumbles.n > 0 { p { "Own presses that looked like a stumble, of those judged: " (e.stumbles) "." } }
        (claim(page, e))
        details {
            summary { "If it does not get on: what may be behind it" }
            ul {
                @for w in causes {
                    li { strong { (w.cause.words()) } ": " (w.bearing.words()) ". " (w.evidence.text)
                        @if let Some(f) = &w.evidence.figure { " " (f) } }
                }
            }
        }
        p { a.link href="/methods" { "How these figures are computed" } }
    }
}

fn claim(page: &LearnerPage, e: &Evidence) -> Markup {
    html! {
        h2 { "What may be said" }
        @match &e.claim {
            Err(why) => p { (why) },
            Ok(claim) => {
                p.lead data-test="claim" { "\u{201c}" (claim.says) "\u{201d}: " (claim.verdict.words()) "." }
                @let open: Vec<_> = rivals_of(claim).into_iter().filter(|r| r.open).collect();
                @if !open.is_empty() {
                    p { "Not ruled out:" }
                    ul { @for r in &open { li { (r.rival) " (" (r.standing) ")" } } }
                    p { a.button href=(format!("/l/{}/checks/new?words={}", page.id, claim.word)) data-test="plan-check" { "Plan a check" } }
                }
                details {
                    summary { "The tests behind it" }
                    @if tests_of(claim).is_empty() { p { "No test could be made yet." } }
                    ul { @for t in tests_of(claim) { li { (t) } } }
                    @if let Some(p) = claim.verdict.adjusted_p {
                        p { "Smallest p after correction over all words and tests of this animal: " (format!("{p:.4}")) "." }
                    }
                    ul { @for r in rivals_of(claim).iter().filter(|r| !r.open) { li { (r.rival) ": " (r.standing) } } }
                }
            }
        }
    }
}

fn invitations(e: &Evidence) -> Markup {
    let i = e.invitations;
    html! {
        dl.facts {
            dt { "Wanted it: pressed" } dd { (i.pressed) " of " (i.usable) " \u{2013} " (e.standing.response) }
            @if i.without_button > 0 { dt { "Wanted it: asked its own way" } dd { (i.without_button) } }
            dt { "Did not want it then, or left" } dd { (i.not_wanted) " (not counted)" }
            dt { "Asked for something else" } dd { (i.asked_other) " (not counted)" }
            @if i.unrecorded > 0 { dt { "Not recorded whether it took it" } dd { (i.unrecorded) " (not counted)" } }
        }
    }
}

#[allow(clippy::cast_precision_loss)]
fn learning(curve: &LearningCurve, days: &[Day]) -> Markup {
    let points =
        curve.points.iter().enumerate().map(|(i, p)| ((i + 1) as f64, p.p, Some((p.lower, p.upper)))).collect();
    let told = match curve.learning_trial {
        Some(trial) => {
            let day = days.get(trial - 1).map_or_else(String::new, |d| format!(" ({d})"));
            format!("From invitation {trial}{day} on the band stays above chance (n = {}).", curve.n)
        }
        None => format!(
            "The band does not stay above chance yet; that does not mean that nothing was learnt (n = {}).",
            curve.n
        ),
    };
    html! {
        (lines(&Lines {
            title: "Learning curve".into(),
            told: told.clone(),
            x: nice_axis("invitation (wanted)", 0.0, curve.points.len().max(1) as f64),
            y: Axis::share("pressed"),
            series: vec![Series { name: "probability".into(), points, steps: false, dots: false }],
            level: Some((curve.chance, "chance".into())),
            band: "90 % band".into(),
        }))
        p { (told) }
    }
}

#[allow(clippy::cast_precision_loss)]
fn by_day(title: &str, what: &str, today: Day, counts: &BTreeMap<Day, usize>) -> Markup {
    let all: Vec<Bar> = (0..DRAWN_DAYS)
        .map(|i| today.plus(i - DRAWN_DAYS + 1))
        .map(|day| Bar {
            tick: if day.weekday() == 0 { day.to_string()[5..].to_owned() } else { String::new() },
            name: day.to_string(),
            value: counts.get(&day).copied().unwrap_or(0) as f64,
            interval: None,
            n: None,
        })
        .collect();
    let total: usize = counts.values().sum();
    let told = format!("{total} {what} in all; the last six weeks by day.");
    bars(title, &told, "day (Mondays named)", what, &all)
}

fn after(e: &Evidence) -> Markup {
    let row = |name: &str, a: &After| {
        html! {
            tr { th scope="row" { (name) } td.num { (a.took) } td.num { (a.ignored) } td.num { (a.left) } td.num { (a.pressed_again) } td.num { (a.unrecorded) } }
        }
    };
    html! {
        div.scroll tabindex="0" role="region" aria-label="What it did after answers" {
            table {
                thead { tr { th scope="col" { "After" } th.num scope="col" { "took" } th.num scope="col" { "ignored" } th.num scope="col" { "left" } th.num scope="col" { "again" } th.num scope="col" { "not seen" } } }
                tbody {
                    (row("given", &e.after_given))
                    (row("not now", &e.after_declined))
                }
            }
        }
        p.quiet { "Own presses answered: given " (e.answers.given) ", partly " (e.answers.partly) ", not now " (e.answers.declined)
            ", another thing " (e.answers.alternative) ", missed or not recorded " (e.answers.missed) "." }
    }
}
