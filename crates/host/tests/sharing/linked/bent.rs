//! What somebody who has a notebook's key could try: consent, another's name, another home, a hand-over, wrong ids and times, a flood.

use super::book::{Served, code, remark};
use crate::house::{Answer, Has, House, JSON, Signed, event, label};
use axum::Router;
use axum::body::Body as HttpBody;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_linked::letters::{Came, Outcomes, Why};
use sayso_model::*;
use sayso_store::Revision;
use sayso_web::state::machine_clock;
use tower::ServiceExt;
use uuid::Uuid;

/// A key by which somebody asks as a notebook does.
pub async fn key(house: &House) -> String {
    let code = code(house, &house.keeper, house.home).await;
    let letter = format!(r#"{{"code":"{code}","name":"Somebody","home":"{}","known":[]}}"#, house.home);
    let told = crate::house::asked(&house.app, None, "POST", "/linked/key", Some((JSON, &letter))).await;
    let gives: serde_json::Value = serde_json::from_str(&told.body).unwrap();
    gives["key"].as_str().unwrap().to_owned()
}

async fn ask(app: &Router, key: &str, how: &str, path: &str, body: String) -> Answer {
    let request = Request::builder().method(how).uri(path).header(header::HOST, "localhost");
    let request = request.header(header::AUTHORIZATION, format!("Bearer {key}")).header(header::CONTENT_TYPE, JSON);
    let answer = app.clone().oneshot(request.body(HttpBody::from(body)).unwrap()).await.unwrap();
    let (status, headers) = (answer.status(), answer.headers().clone());
    let body = answer.into_body().collect().await.unwrap().to_bytes();
    Answer { status, headers, body: String::from_utf8_lossy(&body).into_owned() }
}

pub async fn about(app: &Router, key: &str) -> Answer {
    ask(app, key, "GET", "/linked/about", String::new()).await
}

fn letter(events: &[String]) -> String {
    format!(r#"{{"events":[{}]}}"#, events.join(","))
}

async fn bring_raw(house: &House, key: &str, events: &[String]) -> Vec<Came> {
    let told = ask(&house.app, key, "POST", "/linked/events", letter(events)).await;
    assert_eq!(told.status, StatusCode::OK, "{}", told.body);
    serde_json::from_str::<Outcomes>(&told.body).unwrap().came
}

async fn bring(house: &House, key: &str, events: &[Event]) -> Vec<Came> {
    let raw: Vec<String> = events.iter().map(|event| serde_json::to_string(event).unwrap()).collect();
    bring_raw(house, key, &raw).await
}

fn out(why: Why) -> Came {
    Came::Out(why)
}

fn proposal(house: &House, coach: &Signed, proposes: Proposed) -> Event {
    let from = Author { account: coach.account, name: label("Brook") };
    let text = ShortNote::new("In the coach's name.").ok();
    event(house.home, Proposal { from, proposes, text, takes_up: None, club: None })
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_gives_no_consent_and_takes_none_back() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let key = key(&house).await;
    let consent = Consent::CoachFigures { to: Coach::Club { club } };
    let given = || ConsentGiven { consent, words_version: Consent::WORDS, holds: None };
    let said = remark(house.home, "Only a remark.");
    let came = bring(
        &house,
        &key,
        &[
            event(house.home, given()),
            said.clone(),
            event(
                house.home,
                Correction { of: said.id, happened_at: None, animal: None, body: Box::new(given().into()) },
            ),
            Event { source: Source::Import, ..event(house.home, given()) },
        ],
    )
    .await;
    assert_eq!(came, [out(Why::Consent), Came::New, out(Why::Consent), out(Why::Consent)]);
    assert_eq!(
        house.get(&coach, &house.about("evidence")).await.to(),
        "/homes",
        "nothing opened: there is no home to see"
    );

    // What a keeper gave by the page stands, whatever the notebook brings about it.
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::OK);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let giving = story.as_recorded(Kind::ConsentGiven).next().unwrap().clone();
    let came = bring(
        &house,
        &key,
        &[
            event(house.home, ConsentTakenBack { consent, given: giving.id }),
            event(house.home, Withdrawal { of: giving.id, because: None }),
            event(
                house.home,
                Correction { of: giving.id, happened_at: None, animal: None, body: Box::new(said.body.clone()) },
            ),
            giving.clone(),
            Event {
                body: ConsentGiven { consent: Consent::CoachLog { to: Coach::Club { club } }, ..given() }.into(),
                ..giving
            },
        ],
    )
    .await;
    let refused = out(Why::Consent);
    assert_eq!(came, [refused, refused, refused, Came::Known, out(Why::Differs)]);
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::OK, "nothing closed");
    assert_eq!(house.get(&coach, &house.about("log")).await.status, StatusCode::FORBIDDEN, "nothing more opened");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_writes_in_nobodys_name_and_accepts_no_hand_over() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    let key = key(&house).await;
    let note = || Proposed::Note { about: None };
    // A coach's own, and one to hand over, in the log.
    let to = Author { account: house.keeper.account, name: label("Ilda") };
    let (own, over) = (proposal(&house, &coach, note()), proposal(&house, &coach, Proposed::HandOver { to }));
    house.host.server.home(house.home).append(vec![own.clone(), over.clone()]).await.unwrap();
    let answers = |to: EventId, reply: Reply, by: Option<Author>| {
        event(house.home, ProposalAnswer { to, reply, text: ShortNote::new("Yes.").ok(), by, rehearsed: None })
    };
    let keeper = Author { account: house.keeper.account, name: label("Ilda") };
    let unknown = EventId(Uuid::now_v7());
    let came = bring(
        &house,
        &key,
        &[
            proposal(&house, &coach, note()),
            proposal(&house, &house.keeper, note()),
            event(house.home, Withdrawal { of: own.id, because: None }),
            answers(own.id, Reply::Said, Some(keeper.clone())),
            answers(over.id, Reply::Accepted, None),
            answers(unknown, Reply::Accepted, None),
            // What people at home do: they answer, and put right what they wrote.
            answers(own.id, Reply::Said, None),
        ],
    )
    .await;
    let (coach_s, consent) = (out(Why::Coach), out(Why::Consent));
    assert_eq!(came, [coach_s, coach_s, coach_s, coach_s, consent, out(Why::Lacks), Came::New]);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let all = talks::talks(&story, machine_clock());
    assert!(all.iter().all(|talk| !talk.standing.is_agreed()) && all.len() == 2, "{all:?}");
    // The same acceptance does not get in ahead of what it accepts by way of a member either.
    let member = house.joined(Has::Member, "Mora").await;
    let sent = serde_json::to_string(&[answers(EventId(Uuid::now_v7()), Reply::Accepted, None)]).unwrap();
    let told = crate::house::asked(&house.app, Some(&member), "POST", "/api/events", Some((JSON, &sent))).await;
    assert!(told.holds("refused"), "{}", told.body);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_reaches_one_home_and_no_other_thing() {
    let house = House::new().await;
    let (other, other_keeper) = house.newcomer().await;
    let key = key(&house).await;
    let far = Event { happened_at: machine_clock().plus_seconds(3.0 * 86_400.0), ..remark(house.home, "Ahead.") };
    let end = Event { recorded_at: Moment::clamped(i64::MAX), ..remark(house.home, "At the end of time.") };
    let standing = house.host.server.home(house.home).story(house.home).await.unwrap();
    let standing = standing.ledger().all().next().unwrap().clone();
    let moved = Correction {
        of: standing.id,
        happened_at: Some(machine_clock().plus_seconds(3.0 * 86_400.0)),
        animal: None,
        body: Box::new(standing.body.clone()),
    };
    let events = [
        remark(other, "Into another home."),
        far,
        end,
        event(house.home, moved),
        Event { id: standing.id, ..remark(house.home, "In place of another.") },
        event(house.home, Withdrawal { of: EventId(Uuid::now_v7()), because: None }),
        // Needs its animal.
        event(
            house.home,
            SessionStart {
                session: SessionId(Uuid::now_v7()),
                purpose: Purpose::Showing,
                words: Vec::new(),
                room: None,
            },
        ),
    ];
    let expected =
        [Why::OtherHome, Why::Ahead, Why::Ahead, Why::Ahead, Why::Differs, Why::Lacks, Why::Unsound].map(out);
    assert_eq!(bring(&house, &key, &events).await, expected);
    assert_eq!(house.host.server.home(other).revision().await.unwrap(), Revision(0));
    let sound = serde_json::to_string(&remark(house.home, "Sound.")).unwrap();
    let raw = [
        "17".to_owned(),
        "{}".into(),
        sound.replace("\"remark\"", "\"hum\""),
        sound.replacen("\"id\":\"", "\"id\":\"zz", 1),
        sound.clone(),
        sound,
    ];
    let unread = out(Why::Unread);
    assert_eq!(bring_raw(&house, &key, &raw).await, [unread, unread, unread, unread, Came::New, Came::Known]);

    // The key opens nothing else: no page, no other door, no other home's sound.
    for (how, path) in
        [("GET", "/exchange/archive.tar"), ("GET", "/sharing"), ("POST", "/api/events"), ("GET", "/a/x/today")]
    {
        let told = ask(&house.app, &key, how, path, "[]".into()).await;
        assert!([StatusCode::UNAUTHORIZED, StatusCode::SEE_OTHER].contains(&told.status), "{path}: {told:?}");
    }
    let hash = house.host.server.home(house.home).put_clip(vec![1, 2, 3]).await.unwrap();
    let told = ask(&house.app, &key, "GET", &format!("/linked/media/{hash}"), String::new()).await;
    assert_eq!(told.status, StatusCode::NOT_FOUND, "no card names it");
    let told = ask(&house.app, &key, "POST", &format!("/linked/media/{hash}"), "abc".into()).await;
    assert_eq!(told.status, StatusCode::NOT_FOUND);
    // No page of another keeper ends it, and no key but its own is worth anything.
    let id = house.host.people.notebooks(house.home, machine_clock()).await.unwrap()[0].id;
    let path = format!("/sharing/notebooks/{id}/end");
    house.post(&other_keeper, &path, &format!("home={other}")).await;
    assert_eq!(about(&house.app, &key).await.status, StatusCode::OK);
    for wrong in ["", "0", &"0".repeat(64), &key[1..]] {
        assert_eq!(about(&house.app, wrong).await.status, StatusCode::UNAUTHORIZED, "{wrong}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_flood_is_refused_whole_and_hinders_nobody() {
    let house = House::new().await;
    let _served = Served::start(&house, 0).await;
    let key = key(&house).await;
    let log = house.host.server.home(house.home);
    let before = log.revision().await.unwrap();
    let many: Vec<String> = (0..501).map(|_| serde_json::to_string(&remark(house.home, "x")).unwrap()).collect();
    let told = ask(&house.app, &key, "POST", "/linked/events", letter(&many)).await;
    assert_eq!(told.status, StatusCode::BAD_REQUEST, "{}", told.body);
    let long = remark(house.home, &"y".repeat(1_500));
    let large: Vec<String> = (0..499)
        .map(|_| serde_json::to_string(&Event { id: EventId(Uuid::now_v7()), ..long.clone() }).unwrap())
        .collect();
    let large = letter(&[large.clone(), large].concat());
    assert!(large.len() > sayso_web::MOST_BODY);
    let told = ask(&house.app, &key, "POST", "/linked/events", large).await;
    assert_eq!(told.status, StatusCode::PAYLOAD_TOO_LARGE, "{}", told.body);
    assert_eq!(log.revision().await.unwrap(), before, "nothing of either was taken");
    // A member's tap gets in beside a notebook that brings batch after batch.
    let member = house.joined(Has::Member, "Mora").await;
    let batches = async {
        for _ in 0..6 {
            let batch: Vec<Event> = (0..500).map(|n| remark(house.home, &format!("Batch {n}"))).collect();
            assert!(bring(&house, &key, &batch).await.iter().all(|came| *came == Came::New));
        }
    };
    let taps = async {
        for n in 0..6 {
            let tap = serde_json::to_string(&[remark(house.home, &format!("Tap {n}"))]).unwrap();
            let told = crate::house::asked(&house.app, Some(&member), "POST", "/api/events", Some((JSON, &tap))).await;
            assert!(told.holds("\"new\""), "{}", told.body);
        }
    };
    tokio::join!(batches, taps);
    assert_eq!(log.revision().await.unwrap().0, before.0 + 3_006);
}
