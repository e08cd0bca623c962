//! How the pages' figures age: what a first visit, a second one and one after a new press cost in a home of many years.
//! The reference is the fold of the same events into a story, in the same run.
//!
//! `cargo bench -p sayso-advisor --bench age` (add `-- --presses 10000` for a quick look).
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::cast_precision_loss, clippy::cast_possible_truncation)]
#![allow(missing_docs)]

mod busy;

use sayso_advisor::{
    Case, Sums, buttons, checks, claims, days, demand, designs, evidence, first_words, likes, ration, readiness,
    stages, stuck, today, welfare,
};
use sayso_model::{DesignPlan, EventId, Moment, ProbePlan, Story, WordId};
use std::hint::black_box;
use std::time::Instant;
use uuid::Uuid;

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let sizes = after("--presses").and_then(|n| n.parse().ok()).map_or(vec![40_000, 120_000, 400_000], |n| vec![n]);
    for presses in sizes {
        let now: Moment = "2026-11-25T18:00:00Z".parse().unwrap();
        let busy::Home { events, who, words, mut newest } = busy::home(presses, now);
        let n = events.len();
        let (mut story, fold) = timed(|| Story::from_events(events));
        println!("{n} events, {presses} of them own presses; reference: their fold into a story {fold:.0} ms");
        // Pages of one home share their sums; the first visit of each is one to a server that was just started.
        let sums = Sums::default();
        let visit = |story: &Story, page: Page, sums: &Sums| {
            timed(|| page(&Case::new(story, who, now).with(sums.clone()), words[0])).1
        };
        for (at, (name, page)) in pages().into_iter().enumerate() {
            let (first, second) = (visit(&story, page, &Sums::default()), best(|| visit(&story, page, &sums)));
            let pressed = best(|| {
                newest.id = EventId(Uuid::from_u128(newest.id.0.as_u128().wrapping_add(1 + at as u128)));
                newest.happened_at = now.plus_seconds(-60.0 + at as f64);
                story.add(newest.clone());
                visit(&story, page, &sums)
            });
            println!(
                "{name:<20} first {first:>8.1} ms ({:>6.3} of the fold)  again {second:>7.1} ms  after a press {pressed:>7.1} ms ({:.4})",
                first / fold,
                pressed / fold
            );
        }
    }
}

type Page = fn(&Case<'_>, WordId);

fn pages() -> Vec<(&'static str, Page)> {
    vec![
        ("Today", |c, _| drop(black_box(today::today(c)))),
        ("Evidence of a word", |c, w| drop(black_box((evidence::evidence(c, w), stuck::differential(c, w))))),
        ("Words", |c, _| drop(black_box(stages::standings(c).to_vec()))),
        ("/api/evidence", |c, _| drop(black_box((claims::claims(c).unwrap(), stages::standings(c).len())))),
        ("Checks", |c, _| {
            for p in c.story().of::<ProbePlan>(c.animal()) {
                black_box(checks::report(c, p.part.probe));
            }
            black_box(claims::claims(c).unwrap());
        }),
        ("Days, 28", |c, _| drop(black_box((days::days(c, 28), demand::demand(c, 28), readiness::readiness(c))))),
        ("Days, 365", |c, _| drop(black_box((days::days(c, 365), demand::demand(c, 365), readiness::readiness(c))))),
        ("Likes", |c, _| drop(black_box(likes::likes(c)))),
        ("First words", |c, _| drop(black_box(first_words::first_words(c, "en")))),
        ("Designs", |c, _| {
            for p in c.story().of::<DesignPlan>(c.animal()) {
                let trial = designs::trial(c.story(), c.animal(), p.part.trial).unwrap().unwrap();
                black_box((trial.standing(c.story(), c.now()), trial.today(c.story(), c.now())));
            }
        }),
        ("Designs, one", |c, _| {
            let plan = c.story().of::<DesignPlan>(c.animal()).next_back().unwrap();
            let trial = designs::trial(c.story(), c.animal(), plan.part.trial).unwrap().unwrap();
            black_box(designs::report(c.story(), &trial, c.now()));
        }),
        ("Heard", |c, _| drop(black_box(buttons::buttons(c.story(), c.now(), c.sums())))),
        ("Board, People", |c, _| {
            let card = (*c.story().animals().get(&c.animal()).unwrap()).clone();
            black_box((ration::ration(c.story(), &card, c.now()), welfare::rest_today(c), stages::standings(c).len()));
        }),
        ("Sheets, progress", |c, _| {
            black_box((days::days(c, 84), stages::standings(c).len(), welfare::welfare(c), likes::likes(c)));
        }),
    ]
}

/// What `run` took, in ms: of the processor where the system tells, for others share the machine; else by the clock.
fn timed<T>(run: impl FnOnce() -> T) -> (T, f64) {
    let of_thread = || {
        let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
        told.split(' ').next()?.parse::<f64>().ok().map(|ns| ns / 1e6)
    };
    let (begun, before) = (Instant::now(), of_thread());
    let out = run();
    let clock = begun.elapsed().as_secs_f64() * 1000.0;
    (out, before.zip(of_thread()).map_or(clock, |(before, after)| after - before))
}

/// The best of three: others share the machine.
fn best(mut run: impl FnMut() -> f64) -> f64 {
    (0..3).map(|_| run()).fold(f64::INFINITY, f64::min)
}
