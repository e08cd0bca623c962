//! A learner with very many presses over years, for benchmarks.

use crate::animal::Liking;
use crate::chance::Chance;
use crate::clock::at_hour;
use crate::demo::demo_home;
use crate::fixed::note;
use crate::home::Home;
use crate::run::Simulated;
use crate::truth::{PressTruth, SessionTruth, TrueDay, Why};
use crate::world::{World, seconds};
use sayso_model::*;
use std::collections::BTreeSet;

/// Presses a day of a learner that converses.
const PER_DAY: usize = 36;
/// Share of presses that mean what they say.
const MEANT: f64 = 0.85;
/// Share of sessions joined.
const JOINS: f64 = 0.75;

/// A learner with exactly `presses` presses of its own, answered, over as many years as that takes at 36 a day.
///
/// A short cut, not the full model: knowledge, likes and demand stand still. About two and a half events a press.
#[must_use]
pub fn scale(seed: u64, presses: usize, end: Moment) -> Simulated {
    let home = scale_home(presses, end);
    let zone = home.zone.clone();
    let last = end.day(&zone);
    // Yesterday is the last day: it is over whatever the hour of `end`.
    let first = last.plus(-i32::try_from(home.days).unwrap_or(i32::MAX));
    let begin = at_hour(first, 5.0, &zone);
    let mut w = World::new(&home, seed, begin, end);
    w.write_cards(begin);
    w.write_day_cards(0, first, begin);
    let mut c = Chance::new(seed, 31);
    let words = home.words.len();
    let wants: Vec<f64> = home.animals[0].likes.iter().map(|l| l.strength.exp()).collect();
    let days = usize::try_from(home.days).unwrap_or(1);
    let mut true_days = Vec::new();
    for number in 0..days {
        let day = first.plus(i32::try_from(number).unwrap_or(i32::MAX));
        let today = presses * (number + 1) / days - presses * number / days;
        session(&mut w, &mut c, at_hour(day, 8.0, &zone), seed);
        let start = at_hour(day, 9.0, &zone);
        let mut times: Vec<f64> = (0..today).map(|_| c.between(0.0, 12.5 * 3600.0)).collect();
        times.sort_by(f64::total_cmp);
        for t in times {
            let wanted = c.pick(&wants).unwrap_or(0);
            let word = if c.coin(MEANT) { wanted } else { c.below(words) };
            press(&mut w, &mut c, start.plus_seconds(t), wanted, word);
        }
        if number + 1 == days {
            true_days.push(TrueDay {
                animal: 0,
                day,
                mood: 0.0,
                understanding: vec![MEANT; words],
                wanting: wants.iter().map(|x| x / (1.0 + x)).collect(),
                showings: vec![0; words],
            });
        }
    }
    let events = w.pen.take();
    let written: BTreeSet<EventId> = events.iter().map(|e| e.id).collect();
    let truth = w.into_truth(true_days, &written);
    Simulated { events, truth }
}

fn scale_home(presses: usize, end: Moment) -> Home {
    let mut home = demo_home(end);
    home.days = u32::try_from(presses.div_ceil(PER_DAY).clamp(1, 9_000)).unwrap_or(9_000);
    home.animals.truncate(1);
    home.words.truncate(6);
    home.rewards.truncate(6);
    for w in &mut home.words {
        w.introduced = 0;
        w.shown_from = 0;
        w.closing = false;
    }
    for r in &mut home.rewards {
        r.animals.clear();
    }
    home.rules.clear();
    home.remarks.clear();
    home.stuck.clear();
    let animal = &mut home.animals[0];
    animal.likes = [1.2, 0.8, 1.5, 0.2, 0.6, -0.5].map(Liking::of).to_vec();
    animal.plan.likes.clear();
    animal.plan.probes.clear();
    home
}

/// One offered session a day, joined three times in four.
fn session(w: &mut World<'_>, c: &mut Chance, at: Moment, seed: u64) {
    let session = SessionId(w.pen.fresh(at));
    let person = usize::from(seed % 2 == 1 && c.coin(0.3));
    w.note(0, person, at, SessionStart { session, purpose: Purpose::Showing, words: Vec::new(), room: None });
    w.sessions.push(SessionTruth { session, animal: 0, join: JOINS, mood: 0.0 });
    let mut over = at.plus_seconds(90.0);
    if c.coin(JOINS) {
        let after = c.lognormal(9.0, 0.6).min(200.0);
        w.note(0, person, at.plus_seconds(after), Joining { session, after_s: Some(seconds(after)) });
        if c.coin(0.3) {
            let sign = Sign {
                sign: note("loose body, soft tail"),
                level: SignLevel::Joining,
                when: When::During,
                session: Some(session),
            };
            w.note(0, person, at.plus_seconds(after + 20.0), sign);
        }
        over = at.plus_seconds(after + c.between(120.0, 400.0));
    }
    w.note(0, person, over, SessionEnd { session, reason: EndReason::Done });
}

fn press(w: &mut World<'_>, c: &mut Chance, at: Moment, wanted: usize, word: usize) {
    let person = c.below(w.cfg.people.len());
    let body = Press {
        word: w.ids.words[word],
        by: PressedBy::Animal,
        certainty: Probability::clamped(1.0),
        accident: Accident::No,
        place: Some(w.cfg.words[word].place),
        speed: None,
        stream: None,
        session: None,
    };
    let id = w.note(0, person, at, body);
    let why = if word == wanted { Why::Meant } else { Why::Habit };
    w.presses.insert(id, PressTruth { animal: 0, why, wanted: Some(wanted), pressed: word });
    let delay = c.lognormal(w.cfg.people[person].delay_s, 0.35).min(60.0);
    let answer = if c.coin(0.85) { Answer::Given } else { Answer::Declined };
    let took = c.coin(if word == wanted { 0.92 } else { 0.5 });
    let then = if answer == Answer::Given && took { Then::Took } else { Then::Ignored };
    let over = at.plus_seconds(delay);
    let body = Delivery {
        answers: Some(id),
        word: w.ids.words[word],
        answer,
        alternative: None,
        delay_s: Some(seconds(delay)),
        then: Some(then),
        then_word: None,
        session: None,
    };
    w.note(0, person, over, body);
    if then == Then::Took {
        w.eats(0, w.cfg.words[word].reward, person, over.plus_seconds(1.0), None);
    }
}
