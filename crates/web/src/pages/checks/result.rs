//! What came out of a check, and what may be said.

use super::says;
use crate::chart::{Axis, Whisker, whiskers};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::checks::{Report, WordResult};
use sayso_advisor::claims::claims;
use sayso_model::ProbePlan;
use sayso_wording::claims::may_be_said as may_be_said_of;

/// Open when all planned trials were carried out; before that folded away, with the reason.
pub fn result(page: &AnimalPage, plan: &ProbePlan, r: &Report) -> Markup {
    html! {
        @if r.carried_out == 0 { p.quiet { "Nothing was carried out yet (n = 0)." } }
        @else if r.finished() {
            h2 { "What came out" }
            (figures(page, plan, r))
            (may_be_said(page, plan))
        } @else {
            details {
                summary { "Figures so far" }
                p.quiet { "Read it whenever you like, go on or stop: the evidence is made for that. What was begun stays in the pool." }
                (figures(page, plan, r))
            }
        }
    }
}

fn figures(page: &AnimalPage, plan: &ProbePlan, r: &Report) -> Markup {
    let rows: Vec<Whisker> = r
        .words
        .iter()
        .map(|w| Whisker {
            name: says(page, w.word),
            value: w.right.value,
            interval: w.right.low.zip(w.right.high),
            n: w.right.n,
        })
        .collect();
    let told: Vec<String> = r.words.iter().map(|w| format!("{}: {}", says(page, w.word), w.right)).collect();
    html! {
        (whiskers(&page.locale, "Right, of choices made", &told.join("; "), &Axis::share(&page.locale, "share right"), Some(r.chance), &rows))
        p.quiet { "Upright line: chance, " (format!("{:.0} %", 100.0 * r.chance)) ". Bars: 95 % intervals that hold whenever they are read. For each word: of the times it went for it, how often it was the one asked for; a favourite is right by chance only. n counts first answers; those taken back count as wrong." }
        ul.plain { @for w in &r.words { li { (word(page, plan, r, w)) } } }
    }
}

fn word(page: &AnimalPage, plan: &ProbePlan, r: &Report, w: &WordResult) -> Markup {
    let n = w.right.n;
    let pressing = !plan.design.places_drawn();
    html! {
        h3 { (says(page, w.word)) }
        p { @if n == 0 { "No choice was made (n = 0); that says nothing either way." } @else { "It went for this " (n) " times, and it was the one asked for in " (w.k) ": " (w.right) "." }
            " Nothing: " (w.nothing) ". Went away: " (w.left) ". Neither counts as wrong." }
        @if let Some(p) = w.p {
            p { @if pressing { "Does this button go with what was shown (things dealt anew at random, presses kept as they were)? p = " (small(p)) ". Read it with the share right." }
                @else { "Against chance (" (format!("{:.0} %", 100.0 * r.chance)) ", exact binomial, one-sided): p = " (small(p)) ", n = " (n) "." } }
        }
        @if let Some(factor) = w.bayes_factor { p { (bayes(factor, n)) } }
        @let [(right, right_n), (wrong, wrong_n)] = w.seconds;
        @if let Some(s) = right { p { "Half of the right choices came within " (format!("{s:.1}")) " s (n = " (right_n) " timed)."
            @if let Some(s) = wrong { " Half of the wrong ones within " (format!("{s:.1}")) " s (n = " (wrong_n) ")." }
            @if let Some(l) = &w.latency { " Right against wrong, rank sum, two-sided: p = " (small(l.p_two_sided)) "." } } }
    }
}

fn small(p: f64) -> String {
    if p < 0.0001 { "less than 0.0001".to_owned() } else { format!("{p:.4}") }
}

fn bayes(factor: f64, n: usize) -> String {
    let times = |x: f64| {
        if x >= 1000.0 {
            "more than 1000".to_owned()
        } else if x >= 10.0 {
            format!("{x:.0}")
        } else {
            format!("{x:.1}")
        }
    };
    if factor >= 1.0 {
        format!(
            "Bayes factor {} (n = {n}): so many times likelier if its share is anywhere above chance than by chance.",
            times(factor)
        )
    } else {
        format!(
            "Bayes factor 1 to {} (n = {n}): so many times likelier by chance than if its share is anywhere above chance.",
            times(1.0 / factor)
        )
    }
}

/// From all records of the animal together, corrected; a check alone is not judged apart.
fn may_be_said(page: &AnimalPage, plan: &ProbePlan) -> Markup {
    html! {
        h2 { "What may be said" }
        @match claims(&page.case()) {
            Err(why) => p { (why) },
            Ok(all) => {
                ul { @for c in all.words.iter().filter(|c| plan.words.contains(&c.word)) {
                    li { a href=(format!("/l/{}/evidence/{}", page.id, c.word)) { "\u{201c}" (c.says) "\u{201d}" } ": " (may_be_said_of(&page.locale, c, &page.zone)) "." }
                } }
                p.quiet { "Judged over all words and all checks ever begun together, so that many tests and many readings do not add up to a false claim."
                    @if !plan.design.places_drawn() { " " (super::plan::SUGGESTS) } }
            }
        }
    }
}
