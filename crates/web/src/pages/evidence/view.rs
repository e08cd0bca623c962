//! Markup of one word's evidence.

use crate::chart::{Axis, Bar, Lines, Series, bars, lines, nice_axis};
use crate::page::AnimalPage;
use crate::pages::talk::write_about_chart;
use maud::{Markup, html};
use sayso_advisor::estimate::{Estimate, TOO_EARLY};
use sayso_advisor::evidence::{After, Evidence, GIVEN_WITHIN_S};
use sayso_advisor::generalise::Setting;
use sayso_advisor::stuck::Weighed;
use sayso_methods::learning::curve::LearningCurve;
use sayso_model::{Day, TalkAbout, WordChart};
use sayso_people::Capability;
use sayso_wording::advice::{bearing, because, cause, change};
use sayso_wording::claims::{by_ladder, of_animal, rivals_of, tests_of};
use sayso_wording::evidence::{above_chance, chance, left_out, presses_more, sentence, waited};
use sayso_wording::figures::{finding, none};
use sayso_wording::generalise::{compares, which};
use sayso_wording::{Locale, Message, events, say};
use std::collections::BTreeMap;

/// Days drawn in charts by day.
const DRAWN_DAYS: i32 = 42;

/// One word. What ends a session is neither held up nor drawn in rounds: nobody waits for it.
pub fn word(page: &AnimalPage, e: &Evidence, causes: &[Weighed]) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    html! {
        p.lead data-test="sentence" { (sentence(locale, name, e)) }
        section.card {
            h2.first { (say!(locale, evidence::stage, stage = events::stage(locale, e.standing.stage))) }
            @if e.standing.figures_say != e.standing.stage {
                p { strong { (say!(locale, evidence::figures_point, stage = events::stage(locale, e.standing.figures_say))) } }
                p { a.link href=(crate::layout::Tab::Today.href(Some(page.id))) { (say!(locale, evidence::step_on_today)) } }
            }
            ul { @for b in &e.standing.because { li { (because(locale, name, b)) } } }
            @if !e.standing.would_change.is_empty() {
                p { (say!(locale, today::change_our_mind)) }
                ul { @for c in &e.standing.would_change { li { (change(locale, name, c)) } } }
            }
        }
        @if !e.standing.closing { (claim(page, e)) }
        (measured(page, e))
        @if !e.standing.closing { (behind(page, causes)) }
        (crate::pages::others::of_word(page, e.standing.word))
        (crate::pages::talk::write_about(page, e.standing.word))
        p { a.link href="/methods" { (say!(locale, evidence::how_computed)) } }
    }
}

/// Every figure of the word.
fn measured(page: &AnimalPage, e: &Evidence) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    let first = e.showings_by_day.keys().chain(e.presses_by_day.keys()).min().copied();
    let days = drawn(first, page.now.day(&page.zone));
    html! {
        h2 { (say!(locale, evidence::invitations)) }
        (invitations(locale, name, e))
        @match &e.curve {
            Ok(curve) if curve.n < TOO_EARLY => p.quiet { (say!(locale, evidence::curve_few, n = curve.n)) },
            Ok(curve) => (chart(page, e, WordChart::Curve, &learning(locale, curve))),
            Err(why) => p.quiet { (say!(locale, evidence::no_curve, why = why.say(locale))) },
        }
        @if let Some(waited) = waited(locale, &e.waiting) { p { (waited) } }
        h2 { (say!(locale, evidence::showings_presses)) }
        (chart(page, e, WordChart::Showings, &by_day(locale, [say!(locale, evidence::showings_a_day), say!(locale, evidence::showings)], &days, &e.showings_by_day)))
        p { (say!(locale, evidence::delivered, delay = finding(locale, &e.standing.delay))) }
        (chart(page, e, WordChart::Presses, &by_day(locale, [say!(locale, evidence::presses_a_day), say!(locale, evidence::presses)], &days, &e.presses_by_day)))
        @if let Some(out) = left_out(locale, e.left_out) { p data-test="left-out" { (out) } }
        h2 { (say!(locale, evidence::then, name = name)) }
        (after(page, e))
        p { (say!(locale, evidence::uptake, this = finding(locale, &e.uptake.this), others = finding(locale, &e.uptake.others)))
            @if let Some(p) = e.uptake.p.filter(|_| e.uptake.this.n >= TOO_EARLY && e.uptake.others.n >= TOO_EARLY) {
                " " (say!(locale, evidence::fisher, p = locale.p(p)))
            } }
        @if e.stumbles.n >= TOO_EARLY { p { (say!(locale, evidence::stumbles, share = finding(locale, &e.stumbles))) } }
    }
}

/// A chart at its own place on the page and, for a coach, the way to write about it.
fn chart(page: &AnimalPage, e: &Evidence, chart: WordChart, drawn: &Markup) -> Markup {
    html! {
        div id=(format!("chart-{}", chart.name())) {
            (drawn)
            (write_about_chart(page, &TalkAbout::WordChart { word: e.standing.word, chart }))
        }
    }
}

/// What may hold it up.
fn behind(page: &AnimalPage, causes: &[Weighed]) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    html! {
        details {
            summary { (say!(locale, evidence::causes)) }
            ul {
                @for w in causes {
                    li { strong { (cause(locale, name, w.cause)) } (locale.colon("", "")) (bearing(locale, w.bearing)) "."
                        @for fact in &w.evidence { " " (because(locale, name, fact)) } }
                }
            }
        }
    }
}

fn claim(page: &AnimalPage, e: &Evidence) -> Markup {
    let (locale, name) = (&page.locale, page.card.name.as_str());
    html! {
        h2 { (say!(locale, evidence::may_be_said)) }
        @match &e.claim {
            Err(why) => p { (why.say(locale)) },
            Ok((claim, animal)) => {
                @for (what, said) in by_ladder(locale, claim, &page.zone) {
                    p.lead data-test="claim" { (say!(locale, evidence::claim, word = &claim.says, what = what, said = said)) }
                }
                @let within = locale.set_seconds(GIVEN_WITHIN_S);
                p { (say!(locale, evidence::fidelity, seconds = within, share = finding(locale, &e.fidelity))) }
                p data-test="claim-animal" { (say!(locale, evidence::claim_animal, name = name, said = of_animal(locale, animal, &page.zone))) }
                @let (open, closed): (Vec<_>, Vec<_>) = rivals_of(locale, claim).into_iter().partition(|r| r.open);
                @let tests = tests_of(locale, claim);
                @if !open.is_empty() {
                    p { (say!(locale, evidence::not_ruled_out)) }
                    ul { @for r in &open { li { (say!(locale, evidence::rival, rival = &r.rival, standing = &r.standing)) } } }
                }
                @if page.may(Capability::Plan) { p { a.button href=(format!("/a/{}/checks/new?words={}", page.id, claim.word)) data-test="plan-check" { (say!(locale, evidence::plan_check)) } } }
                details {
                    summary { (say!(locale, evidence::behind_it)) }
                    @if tests.is_empty() { p { (say!(locale, evidence::nothing_drawn)) } }
                    ul { @for t in tests { li { (t) } } }
                    p { (say!(locale, evidence::a_bet)) }
                    @if open.is_empty() && closed.is_empty() { p { (say!(locale, claims::nothing_to_explain)) } }
                    @if !closed.is_empty() {
                        p { (say!(locale, evidence::made_unlikely)) }
                        ul { @for r in &closed { li { (say!(locale, evidence::rival, rival = &r.rival, standing = &r.standing)) } } }
                    }
                }
            }
        }
    }
}

fn settings(locale: &Locale, name: &str, rows: &[Setting]) -> Markup {
    html! {
        @if !rows.is_empty() {
            details {
                summary { (say!(locale, evidence::elsewhere)) }
                div.scroll tabindex="0" role="region" aria-label=(say!(locale, evidence::settings)) {
                    table {
                        thead { tr {
                            th scope="col" { (say!(locale, evidence::compared_what)) }
                            th scope="col" { (say!(locale, evidence::which)) }
                            th scope="col" { (say!(locale, evidence::pressed_of_wanted, name = name)) }
                            th scope="col" { (say!(locale, evidence::right_of_presses)) }
                        } }
                        tbody { @for r in rows { tr {
                            td { (compares(locale, r.compares)) }
                            th scope="row" { (which(locale, &r.which)) }
                            td { @if r.pressed.n > 0 { (finding(locale, &r.pressed)) } }
                            td { @if r.right.n > 0 { (finding(locale, &r.right)) } }
                        } } }
                    }
                }
                p.quiet { (say!(locale, evidence::settings_note)) }
            }
        }
    }
}

fn invitations(locale: &Locale, name: &str, e: &Evidence) -> Markup {
    let (i, s) = (e.invitations, &e.standing);
    let of = |k: usize, n: usize, share: &Estimate| match n {
        0 => none(locale),
        _ => say!(locale, evidence::k_of_n, k = k, n = n, figure = finding(locale, share)),
    };
    html! {
        dl.facts {
            dt { (say!(locale, evidence::pressed_of_wanted, name = name)) }
            dd { (of(i.pressed, i.wanted, &s.response)) }
            dt { (say!(locale, evidence::right_of_presses)) }
            dd { (of(i.right, i.presses, &s.right)) @if let Some(more) = presses_more(locale, name, e) { ". " (more) } }
            dt { (say!(locale, evidence::chance)) }
            dd { (chance(locale, &s.chance)) "." @if i.presses > 0 { " " (say!(locale, evidence::above_chance, above = above_chance(e))) } }
            @if i.without_button > 0 { dt { (say!(locale, evidence::without_button)) } dd { (i.without_button) } }
            dt { (say!(locale, evidence::not_wanted)) }
            dd { (say!(locale, evidence::not_counted, n = i.not_wanted)) }
            @if i.unrecorded > 0 {
                dt { (say!(locale, evidence::unrecorded)) }
                dd { (say!(locale, evidence::not_counted_wanted, n = i.unrecorded)) }
            }
        }
        (settings(locale, name, &e.settings))
    }
}

#[allow(clippy::cast_precision_loss)]
fn learning(locale: &Locale, curve: &LearningCurve) -> Markup {
    let points =
        curve.points.iter().enumerate().map(|(i, p)| ((i + 1) as f64, p.p, Some((p.lower, p.upper)))).collect();
    // A second verdict, by another rule, would speak against the one under chance that holds whenever it is read.
    let told = say!(locale, evidence::curve_told, n = curve.n);
    html! {
        (lines(locale, &Lines {
            title: say!(locale, evidence::curve),
            told: told.clone(),
            x: nice_axis(locale, &say!(locale, evidence::press_axis), 0.0, curve.points.len().max(1) as f64),
            y: Axis::share(locale, &say!(locale, evidence::right_of_presses)),
            series: vec![Series { points, ..Series::default() }],
            level: Some((curve.chance, say!(locale, evidence::chance))),
            mark: None,
            band: say!(locale, evidence::band),
        }))
        p { (told) }
    }
}

/// The days that are drawn: the last six weeks, from the word's first record on. Before it nothing could be noted.
struct Drawn {
    days: Vec<Day>,
    /// Whether the word began within them.
    begins: bool,
}

fn drawn(first: Option<Day>, today: Day) -> Drawn {
    let from = today.plus(1 - DRAWN_DAYS);
    let begins = first.is_some_and(|first| first > from);
    let from = first.map_or(today, |first| first.max(from)).min(today);
    Drawn { days: (0..=today.days_since(from)).map(|i| from.plus(i)).collect(), begins }
}

#[allow(clippy::cast_precision_loss)]
fn by_day(locale: &Locale, [title, what]: [String; 2], drawn: &Drawn, counts: &BTreeMap<Day, usize>) -> Markup {
    let all: Vec<Bar> = drawn
        .days
        .iter()
        .copied()
        .map(|day| Bar {
            tick: if day.weekday() == 0 { locale.day_of_month(day) } else { String::new() },
            name: locale.weekday_date(day),
            value: counts.get(&day).copied().unwrap_or(0) as f64,
            interval: None,
            n: None,
        })
        .collect();
    let n = counts.values().sum::<usize>();
    if n == 0 {
        return html! { p.quiet { (locale.colon(&title, &none(locale))) } };
    }
    let began =
        drawn.days.first().filter(|_| drawn.begins).map_or_else(|| "before".to_owned(), |day| locale.date(*day));
    let told = say!(locale, evidence::by_day_told, n = n, began = began);
    html! {
        (bars(locale, &title, &told, &say!(locale, evidence::day_axis), &what, &all))
        p.quiet { (told) }
    }
}

fn after(page: &AnimalPage, e: &Evidence) -> Markup {
    let locale = &page.locale;
    let named = |name: &str| say!(locale, evidence::after, after = name);
    let row = |name: &str, a: &After| {
        html! {
            tr { th scope="row" { (named(name)) } td.num { (a.took) } td.num { (a.ignored) } td.num { (a.left) } td.num { (a.pressed_again) } td.num { (a.unrecorded) } }
        }
    };
    let a = &e.answers;
    let counts = [
        ("given", a.given),
        ("partly", a.partly),
        ("declined", a.declined),
        ("alternative", a.alternative),
        ("missed", a.missed),
    ];
    // What never happened is not told.
    let there = counts.iter().filter(|(_, times)| *times > 0);
    let answers: Vec<String> =
        there.map(|(answer, times)| say!(locale, evidence::answer_times, answer = *answer, times = *times)).collect();
    html! {
        div.scroll tabindex="0" role="region" aria-label=(say!(locale, evidence::after_region, name = &page.card.name)) {
            table {
                thead { tr {
                    th scope="col" { (named("after")) }
                    @for what in ["took", "ignored", "left", "again", "unseen"] { th.num scope="col" { (named(what)) } }
                } }
                tbody {
                    (row("given", &e.after_given))
                    (row("declined", &e.after_declined))
                }
            }
        }
        @if !answers.is_empty() { p.quiet { (say!(locale, evidence::answers, parts = locale.and(&answers))) } }
    }
}
