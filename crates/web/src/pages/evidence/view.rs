//! Markup of Evidence.

use crate::chart::{Axis, Bar, Lines, Series, Whisker, bars, lines, nice_axis, waiting, whiskers};
use crate::page::AnimalPage;
use maud::{Markup, html};
use sayso_advisor::Estimate;
use sayso_advisor::claim_text::{by_ladder, of_animal, rivals_of, tests_of};
use sayso_advisor::evidence::{After, Evidence, GIVEN_WITHIN_S};
use sayso_advisor::generalise::Setting;
use sayso_advisor::stages::Standing;
use sayso_advisor::stuck::Weighed;
use sayso_methods::learning::curve::LearningCurve;
use sayso_model::{AnimalId, Day};
use sayso_wording::advice::{bearing, because, cause, chance};
use std::collections::BTreeMap;

/// Days drawn in charts by day.
const DRAWN_DAYS: i32 = 42;

/// Every word in one picture.
pub fn list(animal: AnimalId, words: &[Standing]) -> Markup {
    let rows = |figure: fn(&Standing) -> Estimate| -> Vec<Whisker> {
        let row = |w: &Standing| {
            let f = figure(w);
            Whisker { name: w.says.clone(), value: f.value, interval: f.low.zip(f.high), n: f.n }
        };
        words.iter().map(row).collect()
    };
    html! {
        p { a.link href=(format!("/l/{animal}/checks")) { "Planned checks of understanding" } }
        p { a.link href=(format!("/l/{animal}/designs")) { "Does a change help? Trials of a change" } }
        p { a.link href="/agreement" { "Do two people see the same?" } }
        @if words.is_empty() {
            p { "No words yet. " a href=(format!("/l/{animal}/words")) { "Choose first words" } "." }
        } @else {
            (whiskers(
                "Pressed, of wanted",
                "For each word the share of invitations in which it pressed a button, of those in which it wanted the thing, with 95 % intervals.",
                &Axis::share("share pressed"),
                None,
                &rows(|w| w.response),
            ))
            (whiskers(
                "Right, of presses",
                "For each word the share of presses at its invitations that were of this word, with 95 % intervals. One that presses at random presses as much as any, and is right by chance.",
                &Axis::share("share right"),
                Some(1.0 / words.len().max(2) as f64),
                &rows(|w| w.right),
            ))
            p.quiet { "Upright line: chance, one in " (words.len().max(2)) ". Not pressing is never read as not understanding. Intervals hold whenever they are read." }
            ul.links {
                @for w in words {
                    li { a href=(format!("/l/{animal}/evidence/{}", w.word)) { (w.says) } span.quiet { " \u{2013} " (w.stage.name()) ", shown " (w.showings) " times" } }
                }
            }
        }
    }
}

/// One word.
pub fn word(page: &AnimalPage, e: &Evidence, causes: &[Weighed]) -> Markup {
    let (l, name) = (&page.locale, page.card.name.as_str());
    html! {
        p.lead data-test="sentence" { (e.sentence) }
        section.card {
            h2.first { "Stage: " (e.standing.stage.name()) }
            @if e.standing.figures_say != e.standing.stage {
                p { "The figures point to " strong { (e.standing.figures_say.name()) } "." }
            }
            ul { @for b in &e.standing.because { li { (because(l, name, b)) } } }
            @if !e.standing.would_change.is_empty() {
                p { "What would change it:" }
                ul { @for b in &e.standing.would_change { li { (because(l, name, b)) } } }
            }
        }
        h2 { "Invitations" }
        (invitations(page, e))
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
                    li { strong { (cause(l, name, w.cause)) } ": " (bearing(l, w.bearing)) "."
                        @for fact in &w.evidence { " " (because(l, name, fact)) } }
                }
            }
        }
        p { a.link href="/methods" { "How these figures are computed" } }
    }
}

fn claim(page: &AnimalPage, e: &Evidence) -> Markup {
    html! {
        h2 { "What may be said" }
        @match &e.claim {
            Err(why) => p { (why) },
            Ok((claim, animal)) => {
                @for (what, said) in by_ladder(claim, &page.zone) {
                    p.lead data-test="claim" { "\u{201c}" (claim.says) "\u{201d}, " (what) ": " (said) "." }
                }
                p { "Teaching as agreed: given within " (GIVEN_WITHIN_S) " s of the press in " (e.fidelity) " of the showings." }
                p data-test="claim-animal" { (page.card.name) ": " (of_animal(animal, &page.zone)) "." }
                @let open: Vec<_> = rivals_of(claim).into_iter().filter(|r| r.open).collect();
                @if !open.is_empty() {
                    p { "Not ruled out for this word:" }
                    ul { @for r in &open { li { (r.rival) " (" (r.standing) ")" } } }
                }
                p { a.button href=(format!("/l/{}/checks/new?words={}", page.id, claim.word)) data-test="plan-check" { "Plan a check" } }
                details {
                    summary { "What stands behind it" }
                    @if tests_of(claim).is_empty() { p { "Nothing was drawn yet. What a person chose to invite or to give may suggest something; it proves nothing, for a choice follows the hour and the hope." } }
                    ul { @for t in tests_of(claim) { li { (t) } } }
                    p { "Evidence is what a bet against chance would have grown to; it may be read at any time. All words of an animal are judged together." }
                    ul { @for r in rivals_of(claim).iter().filter(|r| !r.open) { li { (r.rival) ": " (r.standing) } } }
                }
            }
        }
    }
}

fn settings(rows: &[Setting]) -> Markup {
    html! {
        @if !rows.is_empty() {
            details {
                summary { "Does it hold elsewhere?" }
                div.scroll tabindex="0" role="region" aria-label="The two figures in different settings" {
                    table {
                        thead { tr { th scope="col" { "Compared" } th scope="col" { "" } th scope="col" { "pressed, of wanted" } th scope="col" { "right, of presses" } } }
                        tbody { @for r in rows { tr { td { (r.kind) } th scope="row" { (r.name) } td { @if r.pressed.n > 0 { (r.pressed) } } td { @if r.right.n > 0 { (r.right) } } } } }
                    }
                }
                p.quiet { "After a button was moved, a habit of place presses the old place: right presses fall. Small numbers say little; no row alone proves anything." }
            }
        }
    }
}

fn invitations(page: &AnimalPage, e: &Evidence) -> Markup {
    let i = e.invitations;
    let s = &e.standing;
    html! {
        dl.facts {
            dt { "Pressed, of wanted" } dd { (i.pressed) " of " (i.wanted) " \u{2013} " (s.response) }
            dt { "Right, of presses" } dd { (i.right) " of " (i.presses) " \u{2013} " (s.right) }
            dt { "Chance" } dd { (chance(&page.locale, &s.chance)) " " @if s.above_chance { "So far more than chance." } @else { "So far not more than chance." } }
            @if i.without_button > 0 { dt { "Wanted it: asked its own way" } dd { (i.without_button) } }
            dt { "Did not want it then, or left" } dd { (i.not_wanted) " (not counted)" }
            @if i.unrecorded > 0 { dt { "Not recorded whether it took it" } dd { (i.unrecorded) " (not counted as wanted)" } }
        }
        (settings(&e.settings))
    }
}

#[allow(clippy::cast_precision_loss)]
fn learning(curve: &LearningCurve, days: &[Day]) -> Markup {
    let points =
        curve.points.iter().enumerate().map(|(i, p)| ((i + 1) as f64, p.p, Some((p.lower, p.upper)))).collect();
    let told = match curve.learning_trial {
        Some(trial) => {
            let day = days.get(trial - 1).map_or_else(String::new, |d| format!(" ({d})"));
            format!("From press {trial}{day} on the band stays above chance (n = {}).", curve.n)
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
            x: nice_axis("press at an invitation", 0.0, curve.points.len().max(1) as f64),
            y: Axis::share("right, of presses"),
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
            ", another thing " (e.answers.alternative) ", missed or not recorded " (e.answers.missed)
            ". An answer counts for the press it was noted for if their times lie within three days; one noted for none, for the last press of its word in the two minutes before." }
    }
}
