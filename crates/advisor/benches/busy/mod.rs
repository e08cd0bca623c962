//! A busy home over years: an animal with very many presses of its own, and all that people note beside them.

use sayso_model::order::order;
use sayso_model::{
    AnimalId, Body, Call, Event, EventId, Moment, Press, ProbePlan, RewardId, RoundId, SessionId, Source, Story,
    WordId, draw,
};
use serde_json::{Value, json};
use uuid::Uuid;

/// The home's records and who they are about.
pub struct Home {
    pub events: Vec<Event>,
    pub who: AnimalId,
    pub words: Vec<WordId>,
    /// A press of this moment, not yet among the events.
    pub newest: Event,
}

struct Pen {
    like: Event,
    next: u128,
    out: Vec<Event>,
}

impl Pen {
    fn id(&mut self) -> Uuid {
        self.next += 1;
        Uuid::from_u128(self.next.wrapping_mul(0x9E37_79B9_7F4A_7C15_F39C_C060_5CED_C835))
    }

    fn write(&mut self, at: Moment, body: Value) -> EventId {
        let (id, body) = (EventId(self.id()), serde_json::from_value::<Body>(body).unwrap());
        self.out.push(Event { id, happened_at: at, recorded_at: at, body, ..self.like.clone() });
        id
    }
}

/// `presses` own presses up to `now`. To each session come two showings and two invitations; each week a round, each
/// half-year a check, each year a likes test and a trial of a change over its last month.
pub fn home(presses: usize, now: Moment) -> Home {
    let mut events = sayso_sim::scale(1, presses, now).events;
    // A microphone listens too: a third of the presses come from it.
    events.iter_mut().filter(|e| matches!(e.body, Body::Press(_))).step_by(3).for_each(|e| e.source = Source::Heard);
    let cards = Story::from_events(events.iter().take(200).cloned());
    let who = *cards.animals().keys().next().unwrap();
    let words: Vec<WordId> = cards.words_of(who).iter().map(|w| w.word).collect();
    let rewards: Vec<RewardId> = cards.rewards_of(who).iter().map(|r| r.reward).collect();
    let like = events.iter().find(|e| matches!(e.body, Body::Press(_))).unwrap().clone();
    let mut sessions: Vec<(Moment, SessionId)> = Vec::new();
    for e in &events {
        if let Body::SessionStart(s) = &e.body {
            sessions.push((e.happened_at, s.session));
        }
    }
    let mut pen = Pen { like, next: 1, out: Vec::new() };
    for (n, word) in words.iter().enumerate() {
        let body = json!({ "kind": "clip_card", "clip": pen.id(), "word": word, "seconds": 0.8,
            "sha256": format!("{:064x}", n + 1) });
        pen.write(sessions[0].0, body);
    }
    for (n, (begun, session)) in sessions.iter().copied().enumerate() {
        sitting(&mut pen, &words, begun, session, n);
        let noon = begun.plus_seconds(4.0 * 3_600.0);
        if n % 7 == 3 {
            round(&mut pen, &words, noon, n);
        }
        if n % 180 == 90 {
            check(&mut pen, &words, noon, n);
        }
        if n % 365 == 200 {
            liked(&mut pen, &rewards, noon);
        }
        if n % 365 == 300 || n + 40 == sessions.len() {
            let first = noon.day(&pen.like.zone).plus(1);
            let trial = pen.id();
            pen.write(
                noon,
                json!({ "kind": "design_plan", "trial": trial, "design": "reversal", "question": "new_place",
                "measure": "own_presses", "expected": "more", "unit": "day", "first": first, "points": 30, "phases": 4,
                "least": 5, "seed": n }),
            );
        }
    }
    events.append(&mut pen.out);
    let press = events.iter().find_map(|e| match &e.body {
        Body::Press(p) => Some(p.clone()),
        _ => None,
    });
    let press = Press { word: words[0], session: None, ..press.unwrap() };
    let at = now.plus_seconds(-5.0);
    let newest = Event { id: EventId(pen.id()), happened_at: at, recorded_at: at, body: press.into(), ..pen.like };
    Home { events, who, words, newest }
}

fn sitting(pen: &mut Pen, words: &[WordId], begun: Moment, session: SessionId, n: usize) {
    for k in 0..2 {
        let (at, word) = (begun.plus_seconds(20.0 + 15.0 * k as f64), words[(n + k) % words.len()]);
        let shown = pen.write(at, json!({ "kind": "press", "word": word, "by": "person", "session": session }));
        pen.write(
            at.plus_seconds(3.0),
            json!({ "kind": "delivery", "answers": shown, "word": word, "answer": "given",
            "delay_s": 3.0, "then": "took", "session": session }),
        );
        let (at, pressed) = (at.plus_seconds(40.0), words[(n + k + usize::from(n.is_multiple_of(5))) % words.len()]);
        let result = json!({ "outcome": "pressed", "word": pressed, "after_s": 2.0 + (n % 7) as f64 });
        pen.write(
            at,
            json!({ "kind": "invitation", "word": word, "way": "offer_in_view", "wait_s": 10.0,
            "result": result, "shown": true, "took": !n.is_multiple_of(6), "session": session }),
        );
    }
}

fn round(pen: &mut Pen, words: &[WordId], at: Moment, n: usize) {
    let round = RoundId(pen.id());
    pen.write(at, json!({ "kind": "round", "round": round, "words": words, "calls": draw::CALLS }));
    for number in 1..=draw::CALLS {
        let word = draw::called(round, number, words).unwrap();
        let pressed = if (n + usize::from(number)).is_multiple_of(3) { words[n % words.len()] } else { word };
        let result = json!({ "outcome": "pressed", "word": pressed, "after_s": 2.0 });
        let call = Call { round, number };
        pen.write(
            at.plus_seconds(f64::from(number) * 20.0),
            json!({ "kind": "invitation", "word": word,
            "way": "offer_in_view", "wait_s": 5.0, "result": result, "shown": true, "took": true, "call": call }),
        );
    }
}

fn check(pen: &mut Pen, words: &[WordId], at: Moment, n: usize) {
    let plan: ProbePlan = serde_json::from_value(json!({ "probe": pen.id(), "design": "pick_for_word",
        "words": &words[..3], "choices": 2, "trials": 24, "seed": n, "blind": n % 360 == 90 }))
    .unwrap();
    let mut body = serde_json::to_value(&plan).unwrap();
    body["kind"] = json!("probe_plan");
    pen.write(at, body);
    for (i, t) in order(&plan).unwrap().into_iter().enumerate() {
        let other = *t.laid_out.iter().find(|w| **w != t.word).unwrap();
        let chosen = if i % 4 == 0 { other } else { t.word };
        pen.write(
            at.plus_seconds(60.0 + 40.0 * i as f64),
            json!({ "kind": "probe_trial", "probe": plan.probe,
            "trial": t.number, "target": t.word, "blind": plan.blind,
            "response": { "outcome": "chose", "word": chosen, "after_s": 3.0 } }),
        );
    }
}

fn liked(pen: &mut Pen, rewards: &[RewardId], at: Moment) {
    let assessment = pen.id();
    pen.write(
        at,
        json!({ "kind": "likes_test", "assessment": assessment, "format": "paired", "rewards": rewards,
        "rounds": 1, "seed": 5 }),
    );
    let mut i = 0.0;
    for (a, left) in rewards.iter().enumerate() {
        for right in &rewards[a + 1..] {
            i += 1.0;
            let chosen = if (i as usize).is_multiple_of(3) { right } else { left };
            pen.write(
                at.plus_seconds(30.0 * i),
                json!({ "kind": "like_trial", "assessment": assessment,
                "format": "paired", "round": 1, "offered": [left, right],
                "result": { "outcome": "chose", "reward": chosen } }),
            );
        }
    }
}
