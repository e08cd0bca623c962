//! What may be said of an animal with 100 000 presses, thousands of drawn rounds and a year of swaps: how long a visit takes,
//! and after a new press. The reference is the fold of the same events into a story, in the same run.
//!
//! `cargo bench -p sayso-advisor --bench claims` (add `-- --presses 10000` for a quick look).
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

use sayso_advisor::{Case, claims, evidence, stages};
use sayso_model::{
    Body, Call, Event, EventId, Invitation, InvitationKind, InvitationResult, Moment, Press, Round, RoundId, Seconds,
    Story, SwapDraw, SwapId, SwapPlan, WordId, draw,
};
use std::time::Instant;
use uuid::Uuid;

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let presses: usize = after("--presses").and_then(|n| n.parse().ok()).unwrap_or(100_000);
    let now: Moment = "2026-11-25T18:00:00Z".parse().unwrap();
    let mut events = sayso_sim::scale(1, presses, now).events;
    let base = Story::from_events(events.iter().cloned());
    let who = *base.animals().keys().next().unwrap();
    let words: Vec<WordId> = base.words_of(who).iter().map(|w| w.word).collect();
    let like = events.iter().find(|e| matches!(e.body, Body::Press(_))).unwrap().clone();
    let mut next = 1_u128;
    let mut write = |at: Moment, body: Body| {
        next += 1;
        let id = EventId(Uuid::from_u128(next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835)));
        Event { id, happened_at: at, recorded_at: at, body, ..like.clone() }
    };
    let seconds = |s| Seconds::new(s).unwrap();
    let mut drawn = Vec::new();
    for n in 0..presses / 40 {
        let round = RoundId(Uuid::from_u128(1 + n as u128 * 0x1234_5678_9ABC_DEF1));
        let begun = now.plus_seconds(-3_600.0 * (n as f64 + 2.0));
        drawn.push(write(begun, Round { round, words: words.clone(), calls: draw::CALLS, session: None }.into()));
        for number in 1..=draw::CALLS {
            let word = draw::called(round, number, &words).unwrap();
            let pressed = words[(n + usize::from(number) * 7) % words.len()];
            let result = InvitationResult::Pressed { word: pressed, after_s: seconds(2.0) };
            let (way, wait_s, call) = (InvitationKind::OfferInView, seconds(5.0), Some(Call { round, number }));
            let at = begun.plus_seconds(f64::from(number) * 20.0);
            let body = Invitation {
                word,
                other: None,
                way,
                wait_s,
                result,
                shown: true,
                took: Some(true),
                session: None,
                call,
            };
            drawn.push(write(at, body.into()));
        }
    }
    let (swap, begun) = (SwapId(Uuid::from_u128(77)), now.plus_seconds(-365.0 * 86_400.0));
    let plan = SwapPlan { swap, words: words.clone(), one_in: draw::ONE_IN, days: 364 };
    drawn.push(write(begun, plan.into()));
    for press in base.of::<Press>(who).filter(|p| p.at() > begun) {
        let body = SwapDraw { swap, press: press.id(), word: press.part.word, give: press.part.word };
        drawn.push(write(press.at().plus_seconds(0.5), body.into()));
    }
    let newest = Press { word: words[0], ..base.of::<Press>(who).next().unwrap().part.clone() };
    let newest = write(now.plus_seconds(-5.0), newest.into());
    println!("{} events, {} of them drawn", events.len() + drawn.len(), drawn.len());
    events.extend(drawn);
    let (mut story, fold) = timed(|| Story::from_events(events.iter().cloned()));
    println!("reference: fold into a story        {fold:>8.1} ms");
    let tell = |story: &Story, when: &str| {
        let times = [
            ("claims", best(|| drop(claims::claims(&Case::new(story, who, now)).unwrap()))),
            ("standings of all words", best(|| drop(stages::standings(&Case::new(story, who, now)).to_vec()))),
            ("evidence of one word", best(|| drop(evidence::evidence(&Case::new(story, who, now), words[0]).unwrap()))),
        ];
        for (what, ms) in times {
            println!("{what:<24} {when:<14} {ms:>8.1} ms  ({:.2} of the fold)", ms / fold);
        }
    };
    tell(&story, "");
    story.add(newest);
    tell(&story, "a press later");
}

fn timed<T>(run: impl FnOnce() -> T) -> (T, f64) {
    let begun = Instant::now();
    let out = run();
    (out, begun.elapsed().as_secs_f64() * 1000.0)
}

fn best(run: impl Fn()) -> f64 {
    (0..5).map(|_| timed(&run).1).fold(f64::INFINITY, f64::min)
}
