//! What the client's own checks read: written by the notebook's own functions, and current. To write it anew:
//! `SAYSO_WRITE_SHARED=1 cargo test -p sayso-web --test http shared`

use sayso_advisor::Case;
use sayso_advisor::observe::showings;
use sayso_advisor::ration::{RewardLeft, ration};
use sayso_advisor::rest::{LEAST_REST_S, rests_until};
use sayso_methods::ration::{Feed as Given, left_today};
use sayso_model::*;
use sayso_web::api::openapi;
use sayso_web::pages::board::{drawn, now::STILL_NEEDED_S};
use sayso_web::pages::log::word_can_be_put_right;
use sayso_web::pages::swaps::running::running;
use serde_json::{Value, json};
use std::collections::BTreeMap;
use uuid::Uuid;

/// Compares a file with what it should hold, or writes it where that is asked for.
fn current(file: &str, should: &Value) {
    current_text(file, &(serde_json::to_string_pretty(should).unwrap() + "\n"));
}

fn current_text(file: &str, text: &str) {
    let path = format!("{}/{file}", env!("CARGO_MANIFEST_DIR"));
    if std::env::var_os("SAYSO_WRITE_SHARED").is_some() {
        std::fs::write(&path, text).unwrap();
    }
    let is = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        is == text,
        "{file} is not current; write it anew: SAYSO_WRITE_SHARED=1 cargo test -p sayso-web --test http shared"
    );
}

#[test]
fn what_the_client_says_is_current() {
    let english = sayso_wording::client(&sayso_wording::Locale::ENGLISH);
    current("tests/fixtures/text.en.json", &english);
    // The messages and their arguments, for the client's types.
    let mut types =
        String::from("// Written by tests/http/shared.rs from the catalogues.\n\nexport interface Messages {\n");
    for (id, parts) in english.as_object().unwrap() {
        let mut names = std::collections::BTreeSet::new();
        arguments(parts, &mut names);
        let fields: Vec<String> = names.iter().map(|n| format!("{n}: string | number")).collect();
        types += &format!(
            "  \"{id}\": {{{}}};\n",
            if fields.is_empty() { String::new() } else { format!(" {} ", fields.join("; ")) }
        );
    }
    current_text("client-checks/messages.d.ts", &(types + "}\n"));
}

/// The names of the arguments among the parts of a message.
fn arguments(parts: &Value, names: &mut std::collections::BTreeSet<String>) {
    for part in parts.as_array().into_iter().flatten() {
        names.extend(part["v"].as_str().or(part["s"].as_str()).map(str::to_owned));
        part["o"].as_object().into_iter().flatten().for_each(|(_, inner)| arguments(inner, names));
    }
}

#[test]
fn the_document_the_clients_types_come_from_is_current() {
    current("client-checks/openapi.json", openapi::document());
}

#[test]
fn the_rules_the_client_shares_are_current() {
    let rules = json!({
        "about": "Rules that exist here and in the client. Written by tests/http/shared.rs from the notebook's functions; read by tests/client/shared.test.mjs.",
        "constants": {
            "session_open_s": session::OPEN_FOR_S,
            "still_needed_s": STILL_NEEDED_S,
            "least_rest_s": LEAST_REST_S,
            "round_open_s": drawn::OPEN_FOR_S,
            "calls": draw::CALLS,
            "partner_days": draw::PARTNER_DAYS,
        },
        "kinds": kinds(),
        "standing": standing(),
        "sessions": sessions(),
        "rest": rest(),
        "rations": rations(),
        "swaps": swaps(),
        "day": day(),
    });
    current("tests/fixtures/shared.json", &rules);
}

/// What may be done with an event once it is noted, by kind.
fn kinds() -> Value {
    let may = |body: &Body| match (body.about().as_recorded, word_can_be_put_right(body)) {
        (true, false) => "stands",
        (false, false) => "back",
        (false, true) => "word",
        (true, true) => panic!("{}: its word can be put right, and counts as first recorded", body.kind().name()),
    };
    let undrawn = |body: &Body| match body {
        // One that was drawn counts as first recorded; the pad's table is about kinds.
        Body::Invitation(i) => Invitation { call: None, ..i.clone() }.into(),
        other => other.clone(),
    };
    let samples = sayso_sim::samples();
    let all: BTreeMap<_, _> = samples.iter().map(|e| (e.body.kind().name(), may(&undrawn(&e.body)))).collect();
    json!(all)
}

const HOME: HomeId = HomeId(Uuid::from_u128(1));
const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(2));
const WORD: WordId = WordId(Uuid::from_u128(3));
const OTHER: WordId = WordId(Uuid::from_u128(4));
const SESSION: SessionId = SessionId(Uuid::from_u128(5));
const SWAP: SwapId = SwapId(Uuid::from_u128(6));

/// Seconds after noon of a day.
fn at(seconds: f64) -> Moment {
    "2026-03-02T12:00:00Z".parse::<Moment>().unwrap().plus_seconds(seconds)
}

fn id(n: u128) -> EventId {
    EventId(Uuid::from_u128(n))
}

fn event(n: u128, seconds: f64, body: impl Into<Body>) -> Event {
    Event {
        id: id(n),
        home: HOME,
        animal: Some(ANIMAL),
        person: None,
        happened_at: at(seconds),
        zone: Zone::utc(),
        recorded_at: at(seconds),
        source: Source::Tap,
        body: body.into(),
    }
}

fn press(word: WordId) -> Press {
    Press {
        word,
        by: PressedBy::Animal,
        certainty: Probability::new(1.0).unwrap(),
        accident: Accident::Unsure,
        place: None,
        speed: None,
        stream: None,
        session: None,
    }
}

fn correction(of: u128, word: WordId) -> Correction {
    Correction { of: id(of), happened_at: None, animal: None, body: Box::new(press(word).into()) }
}

fn withdrawal(of: u128) -> Withdrawal {
    Withdrawal { of: id(of), because: None }
}

/// What stands: of several amendments the last by when it was recorded, then by id, from the same home.
fn standing() -> Value {
    let first = || event(10, 0.0, press(WORD));
    let moved = Correction {
        happened_at: Some(at(-90.0)),
        animal: Some(AnimalId(Uuid::from_u128(9))),
        ..correction(10, OTHER)
    };
    let foreign = Event { home: HomeId(Uuid::from_u128(77)), ..event(13, 9.0, withdrawal(10)) };
    let cases = [
        ("nothing is said of it", vec![first()]),
        ("put right", vec![first(), event(11, 1.0, correction(10, OTHER))]),
        ("taken back", vec![first(), event(11, 1.0, withdrawal(10))]),
        (
            "put right, then taken back",
            vec![first(), event(11, 1.0, correction(10, OTHER)), event(12, 2.0, withdrawal(10))],
        ),
        (
            "taken back, then put right",
            vec![first(), event(12, 1.0, withdrawal(10)), event(11, 2.0, correction(10, OTHER))],
        ),
        ("at one moment, by id", vec![first(), event(12, 1.0, withdrawal(10)), event(11, 1.0, correction(10, OTHER))]),
        ("by milliseconds", vec![first(), event(12, 1.0, withdrawal(10)), event(11, 1.001, correction(10, OTHER))]),
        ("moved to another time and animal", vec![first(), event(20, -60.0, press(OTHER)), event(11, 1.0, moved)]),
        (
            "an amendment cannot be amended",
            vec![first(), event(11, 1.0, withdrawal(10)), event(12, 2.0, withdrawal(11))],
        ),
        ("of an event that is not there", vec![first(), event(11, 1.0, withdrawal(99))]),
        ("another home has no say", vec![first(), foreign]),
    ];
    cases
        .into_iter()
        .map(|(what, events)| {
            let mut ledger = Ledger::default();
            for e in &events {
                ledger.insert(e.clone());
            }
            let mut stands: Vec<_> = events.iter().filter_map(|e| ledger.standing(e.id)).collect();
            stands.sort_by_key(|e| (e.happened_at, e.id));
            let stands: Vec<&Event> = stands.iter().map(|e| &**e).collect();
            json!({ "what": what, "events": events, "stands": stands })
        })
        .collect()
}

/// Which session is open at a moment.
fn sessions() -> Value {
    let start = |n: u128, s: f64, session: SessionId| {
        event(n, s, SessionStart { session, purpose: Purpose::Showing, words: Vec::new(), room: None })
    };
    let end = |n: u128, s: f64| event(n, s, SessionEnd { session: SESSION, reason: EndReason::Done });
    let second = SessionId(Uuid::from_u128(8));
    let cases = [
        ("begun", vec![start(10, 0.0, SESSION)], 60.0),
        ("a millisecond before it is too old", vec![start(10, 0.0, SESSION)], session::OPEN_FOR_S - 0.001),
        ("too old", vec![start(10, 0.0, SESSION)], session::OPEN_FOR_S),
        ("ended", vec![start(10, 0.0, SESSION), end(11, 30.0)], 60.0),
        ("its end taken back", vec![start(10, 0.0, SESSION), end(11, 30.0), event(12, 40.0, withdrawal(11))], 60.0),
        ("the later begun", vec![start(10, 0.0, SESSION), start(11, 20.0, second)], 60.0),
        ("by a clock a little ahead", vec![start(10, 59.0, SESSION)], 0.0),
        ("by a clock far ahead", vec![start(10, 600.0, SESSION)], 0.0),
    ];
    cases
        .into_iter()
        .map(|(what, events, now)| {
            let story = Story::from_events(events.clone());
            let open = story.sessions(ANIMAL).iter().rev().find(|s| s.open(at(now))).map(Session::id);
            json!({ "what": what, "events": events, "now": at(now), "open": open })
        })
        .collect()
}

/// Until when sessions rest after signs, in the home's zone.
fn rest() -> Value {
    let (berlin, auckland) = (Zone::new("Europe/Berlin").unwrap(), Zone::new("Pacific/Auckland").unwrap());
    let home = |zone: &Zone| event(9, 0.0, HomeCard { name: Label::new("The house").unwrap(), zone: zone.clone() });
    let sign = |n: u128, when: &str, level: SignLevel| Event {
        happened_at: when.parse().unwrap(),
        recorded_at: when.parse().unwrap(),
        ..event(n, 0.0, Sign { sign: Note::new("seen").unwrap(), level, when: When::During, session: None })
    };
    let (strong, mild, ease) = (SignLevel::Strong, SignLevel::Mild, SignLevel::Joining);
    let (noon, late) = ("2026-03-02T11:00:00Z", "2026-03-02T22:30:00Z");
    let two = vec![sign(10, "2026-02-27T08:00:00Z", strong), sign(11, noon, strong)];
    let cases = [
        ("nothing seen", &berlin, vec![], noon),
        ("mild signs", &berlin, vec![sign(10, noon, mild), sign(11, noon, mild)], "2026-03-02T11:30:00Z"),
        ("a strong sign at noon rests the day", &berlin, vec![sign(10, noon, strong)], "2026-03-02T22:59:00Z"),
        ("and no more", &berlin, vec![sign(10, noon, strong)], "2026-03-02T23:00:00Z"),
        ("at ease later", &berlin, vec![sign(10, noon, strong), sign(11, late, ease)], late),
        (
            "shortly before midnight it rests twelve hours",
            &berlin,
            vec![sign(10, late, strong)],
            "2026-03-02T23:30:00Z",
        ),
        ("to the last of them", &berlin, vec![sign(10, late, strong)], "2026-03-03T10:29:59Z"),
        ("and no more then", &berlin, vec![sign(10, late, strong)], "2026-03-03T10:30:00Z"),
        ("midnight is the home's", &auckland, vec![sign(10, noon, strong)], "2026-03-03T10:59:00Z"),
        ("a day of 23 hours", &berlin, vec![sign(10, "2026-03-28T23:30:00Z", strong)], "2026-03-29T21:30:00Z"),
        ("on two days of the week", &berlin, two.clone(), "2026-03-04T12:00:00Z"),
        ("until the earlier is a week ago", &berlin, two.clone(), "2026-03-05T22:59:00Z"),
        ("and no longer", &berlin, two, "2026-03-05T23:00:00Z"),
        ("taken back", &berlin, vec![sign(10, noon, strong), event(11, 9.0, withdrawal(10))], late),
        ("not seen yet", &berlin, vec![sign(10, late, strong)], noon),
    ];
    cases
        .into_iter()
        .map(|(what, zone, signs, now)| {
            let events: Vec<Event> = std::iter::once(home(zone)).chain(signs).collect();
            let story = Story::from_events(events.clone());
            let until = rests_until(&Case::new(&story, ANIMAL, now.parse().unwrap()));
            json!({ "what": what, "events": events, "zone": zone, "now": now, "until": until })
        })
        .collect()
}

/// What is left of the day's energy for rewards, and in whole pieces.
fn rations() -> Value {
    let cases: [(Option<f64>, &[f64], f64); 8] = [
        (Some(14.0), &[3.5, 3.5], 3.5),
        (Some(14.0), &[], 3.5),
        (Some(14.0), &[20.0], 3.5),
        (Some(1.0), &[0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1], 0.1),
        (Some(0.3), &[0.1], 0.1),
        (Some(10.0), &[0.01], 5.0),
        (Some(10.0), &[1.0], 0.0),
        (None, &[1.0], 2.0),
    ];
    cases.into_iter().map(|(budget, fed, piece)| {
        let given: Vec<Given<PersonId>> = fed.iter().map(|k| Given { person: None, kcal: Kcal::new(*k).ok() }).collect();
        let left = budget.map(|b| left_today(Kcal::new(b).unwrap(), &given));
        let pieces = left.as_ref().and_then(|l| l.pieces(Kcal::new(piece).unwrap()).ok());
        json!({ "budget_kcal": budget, "fed_kcal": fed, "piece_kcal": piece, "left_kcal": left.map(|l| l.left_kcal), "pieces": pieces })
    }).collect()
}

/// Whether agreed swaps run at a moment.
fn swaps() -> Value {
    let plan = || event(10, 0.0, SwapPlan { swap: SWAP, words: vec![WORD, OTHER], one_in: draw::ONE_IN, days: 4 });
    let stop = |s: f64| event(11, s, SwapStop { swap: SWAP, reason: SwapEnd::Home });
    let days = 4.0 * 86_400.0;
    let cases = [
        ("not yet", vec![plan()], -1.0),
        ("from the first moment", vec![plan()], 0.0),
        ("to the last", vec![plan()], days - 0.001),
        ("over", vec![plan()], days),
        ("not stopped yet", vec![plan()], 99.0),
        ("stopped", vec![plan(), stop(100.0)], 100.0),
        ("the stop taken back counts all the same", vec![plan(), stop(100.0), event(12, 101.0, withdrawal(11))], 200.0),
    ];
    cases.into_iter().map(|(what, events, now)| {
        let story = Story::from_events(events.clone());
        json!({ "what": what, "events": events, "now": at(now), "running": running(&story, ANIMAL, at(now)).is_some() })
    }).collect()
}

/// The day with most showings, of those on which something was put right, of a simulated home: what stands, what was shown, what is left to give.
fn day() -> Value {
    let log = sayso_sim::demo(7, at(0.0));
    let story = Story::from_events(log.events.clone());
    let zone = story.zone();
    let mut counts: BTreeMap<(AnimalId, Day), usize> = BTreeMap::new();
    for animal in story.animals().into_keys() {
        for a in
            showings(&Case::new(&story, animal, Moment::clamped(i64::MAX)).answered_since(Moment::clamped(0)), None)
        {
            *counts.entry((animal, a.press.at().day(&zone))).or_default() += 1;
        }
    }
    let amended = |animal: AnimalId, day: Day| {
        let mut firsts = story.ledger().all().filter_map(|e| story.ledger().first(e.body.amends()?));
        firsts.any(|e| e.animal == Some(animal) && e.happened_at.day(&zone) == day)
    };
    let ((animal, day), _) = counts.into_iter().filter(|((a, d), _)| amended(*a, *d)).max_by_key(|(_, n)| *n).unwrap();
    let end = day.plus(1).start(&zone);
    let of_day = |e: &Event| e.animal == Some(animal) && e.happened_at.day(&zone) == day;
    let events: Vec<&Event> = story
        .ledger()
        .all()
        .filter(|e| match e.body.amends() {
            Some(of) => story.ledger().first(of).is_some_and(of_day),
            None => of_day(e),
        })
        .collect();
    let mut shown: BTreeMap<WordId, usize> = BTreeMap::new();
    for a in showings(&Case::new(&story, animal, end).answered_since(Moment::clamped(0)), None)
        .iter()
        .filter(|a| a.press.at().day(&zone) == day)
    {
        *shown.entry(a.press.part.word).or_default() += 1;
    }
    let stands: Vec<EventId> = events.iter().filter_map(|e| story.ledger().standing(e.id)).map(|e| e.id).collect();
    let today = ration(&story, story.animals()[&animal], end.plus_seconds(-1.0));
    let cards = story.rewards();
    let most = |id| cards.get(&id).and_then(|r| r.most_per_day);
    let piece = |r: &RewardLeft| json!({ "id": r.reward, "kcal": r.kcal_per_piece, "most_per_day": most(r.reward), "pieces": r.pieces });
    let pieces: Vec<Value> = today.rewards.iter().map(piece).collect();
    json!({
        "events": events, "now": end, "stands": stands, "shown": shown, "budget_kcal": today.budget_kcal,
        "given_kcal": today.given_kcal, "left_kcal": today.left_kcal, "pieces": pieces,
    })
}
