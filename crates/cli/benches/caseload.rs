//! The coach's desk on a server: opened while nothing is kept yet, again, after a restart, and beside events as homes write them (sessions,
//! presses, deliveries, now and then a sign) at a steady rate, with the work that keeps lines up to date under way. Beside it, in the same
//! run, a page of one home.
//!
//! `cargo bench -p sayso --bench caseload -- --homes 500 --events 400`; `--quick` is a small one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_precision_loss, missing_docs)]

use axum::Router;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_cluster::Cluster;
use sayso_host::{Host, HostConfig, SESSION_COOKIE};
use sayso_lab::host::fill::{Order, fill};
use sayso_model::*;
use sayso_people::db::Taker;
use sayso_people::{Allowed, Capability, OsSecrets, Part, Role, Scope, Secret};
use sayso_store::{Appended, Database};
use sayso_web::state::machine_clock;
use std::sync::Arc;
use std::time::{Duration, Instant};
use tower::ServiceExt;
use uuid::Uuid;

/// Taps a second.
const RATE: u64 = 300;
/// Openings of which the middle is told.
const TIMES: usize = 20;

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let quick = args.iter().any(|a| a == "--quick");
    let number = |name: &str, usual: u32| after(name).map_or(usual, |n| n.parse().expect("a number"));
    let (homes, events) = if quick { (12, 100) } else { (number("--homes", 500), number("--events", 400)) };
    let seconds = if quick { 1 } else { u64::from(number("--seconds", 20)) };
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().unwrap();
    let cluster = Cluster::start(true).unwrap();
    let address = cluster.address("postgres", "postgres");
    println!(
        "{} cores, {homes} homes of {events} records",
        std::thread::available_parallelism().map_or(0, usize::from)
    );
    runtime.block_on(async {
        let order = Order { database: address.clone(), homes, events, seed: 1, end: None };
        let all = fill(&order, &|_| {}).await.unwrap();
        let (coach, keeper) = shared(&address, &all).await;
        let host = open(&address).await;
        let app = sayso_host::app(Arc::clone(&host));
        println!("nothing kept yet:   {}", spread(vec![desk(&app, &coach).await.0]));
        let keeping = tokio::spawn(sayso_host::keep_desks(Arc::clone(&host)));
        let begun = Instant::now();
        while desk(&app, &coach).await.1 {
            tokio::time::sleep(Duration::from_millis(200)).await;
        }
        println!("all kept after      {:.1} s", begun.elapsed().as_secs_f64());
        let mut again = Vec::new();
        for _ in 0..TIMES {
            again.push(desk(&app, &coach).await.0);
        }
        println!("again:              {}", spread(again));
        keeping.abort();
        let another = open(&address).await;
        let begun_anew = sayso_host::app(Arc::clone(&another));
        println!("after a restart:    {}", spread(vec![desk(&begun_anew, &coach).await.0]));
        another.close().await;
        let keeping = tokio::spawn(sayso_host::keep_desks(Arc::clone(&host)));
        beside_taps(&host, &app, &coach, &all, seconds).await;
        keeping.abort();
        println!("a page of one home: {}", spread(vec![today(&app, &host, all[0], &keeper).await]));
        host.close().await;
    });
}

async fn open(address: &str) -> Arc<Host> {
    let config = HostConfig::here(Database::at(address), "http://localhost/".parse().unwrap());
    Arc::new(Host::open(&config).await.unwrap())
}

/// All homes share their figures with a club; its coach, and a keeper of the first of them.
async fn shared(address: &str, all: &[HomeId]) -> (Secret, Secret) {
    let host = open(address).await;
    let (people, now) = (&host.people, host.now());
    let take = |secret: Secret| async move {
        let name = Label::new("Someone").unwrap();
        let (taker, from) = (Taker::New { name: &name, language: Language::En }, Uuid::now_v7().to_string());
        people.take_invitation(&secret, taker, &from, "bench", now, &mut OsSecrets).await.unwrap().session.unwrap()
    };
    let (_, secret) = people.invite_first_keeper(now, &mut OsSecrets).await.unwrap();
    let (server, _) = take(secret).await;
    let hosts = people.may_on_server(&server, Capability::Host, now).await.unwrap();
    let club = people.open_club(&hosts, &Label::new("Meadow Club").unwrap(), now, &mut OsSecrets).await.unwrap();
    let invited = async |scope, role| {
        let part = Part::new(scope, role, None, None).unwrap();
        people.invite(&hosts, &part, now, &mut OsSecrets).await.unwrap().1
    };
    let (club_keeper, _) = take(invited(Scope::Club(club), Role::ClubKeeper).await).await;
    let by = people.may_in_club(&club_keeper, Capability::ManageClub, club, now).await.unwrap();
    let part = Part::new(Scope::Club(club), Role::Coach, None, None).unwrap();
    let (_, coach) = take(people.invite(&by, &part, now, &mut OsSecrets).await.unwrap().1).await;
    for home in all {
        people.open_home(&hosts, *home, now).await.unwrap();
        let scope = Scope::Home(*home);
        let leave = Allowed {
            capability: Capability::Consent,
            account: server.account,
            scope,
            role: Role::Keeper,
            person: None,
        };
        let consent = Consent::CoachFigures { to: Coach::Club { club } };
        let given = event(*home, None, ConsentGiven { consent, words_version: Consent::WORDS, holds: None }, now);
        host.server.home(*home).append(vec![given.clone()]).await.unwrap();
        people.witness(&leave, &given, now).await.unwrap();
    }
    let (_, keeper) = take(invited(Scope::Home(all[0]), Role::Keeper).await).await;
    host.close().await;
    (coach, keeper)
}

fn event(home: HomeId, animal: Option<AnimalId>, body: impl Into<sayso_model::Body>, at: Moment) -> Event {
    Event {
        id: EventId(Uuid::now_v7()),
        home,
        animal,
        person: None,
        happened_at: at,
        zone: Zone::utc(),
        recorded_at: at,
        source: Source::Tap,
        body: body.into(),
    }
}

async fn get(app: &Router, token: &Secret, path: &str) -> (Duration, String) {
    let request = Request::get(path).header(header::HOST, "localhost");
    let request = request.header(header::COOKIE, format!("{SESSION_COOKIE}={}", token.reveal()));
    let begun = Instant::now();
    let answer = app.clone().oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
    assert_eq!(answer.status(), StatusCode::OK, "{path}");
    let body = answer.into_body().collect().await.unwrap().to_bytes();
    (begun.elapsed(), String::from_utf8_lossy(&body).into_owned())
}

/// The desk once; whether something newer was written than stands on it.
async fn desk(app: &Router, coach: &Secret) -> (Duration, bool) {
    let (took, body) = get(app, coach, "/desk").await;
    assert!(body.contains("data-test=\"how-many\""));
    (took, body.contains("data-test=\"behind\""))
}

async fn today(app: &Router, host: &Host, home: HomeId, keeper: &Secret) -> Duration {
    let animal = host.server.home(home).story(home).await.unwrap().animals().into_keys().next().unwrap();
    get(app, keeper, &format!("/a/{animal}/today")).await.0
}

/// A home that writes: of which animal and word, and where it is in its session.
struct Writes {
    home: HomeId,
    animal: AnimalId,
    word: WordId,
    session: SessionId,
    press: EventId,
    step: usize,
}

/// Of so many events of all homes one is a sign, and of so many signs one is a strong one.
const SIGN_IN: u64 = 300;
const STRONG_IN: u64 = 4;
/// Events of a session: its start, a press and what is given for it as often as fits, its end.
const SESSION: usize = 12;

impl Writes {
    async fn of(host: &Host, home: HomeId) -> Self {
        let story = host.server.home(home).story(home).await.unwrap();
        let animal = story.animals().into_keys().next().unwrap();
        let word = story.words_of(animal).first().unwrap().word;
        let (session, press) = (SessionId(Uuid::now_v7()), EventId(Uuid::now_v7()));
        Self { home, animal, word, session, press, step: 0 }
    }

    /// The next event, as the Board writes them one after the other; now and then a sign.
    fn next(&mut self, n: u64) -> Event {
        let (word, session) = (self.word, Some(self.session));
        let body: sayso_model::Body = if n % SIGN_IN == SIGN_IN / 2 {
            let level = if (n / SIGN_IN).is_multiple_of(STRONG_IN) { SignLevel::Strong } else { SignLevel::Mild };
            Sign { sign: Note::new("turns its head away").unwrap(), level, when: When::During, session }.into()
        } else {
            let step = self.step;
            self.step = (step + 1) % SESSION;
            match step {
                0 => {
                    self.session = SessionId(Uuid::now_v7());
                    SessionStart { session: self.session, purpose: Purpose::Showing, words: vec![word], room: None }
                        .into()
                }
                last if last == SESSION - 1 => SessionEnd { session: self.session, reason: EndReason::Done }.into(),
                odd if odd % 2 == 1 => Press {
                    word,
                    by: if odd % 4 == 1 { PressedBy::Person } else { PressedBy::Animal },
                    certainty: Probability::clamped(1.0),
                    accident: Accident::No,
                    place: None,
                    speed: None,
                    stream: None,
                    session,
                }
                .into(),
                _ => Delivery {
                    answers: Some(self.press),
                    word,
                    answer: Answer::Given,
                    alternative: None,
                    delay_s: Some(Seconds::clamped(1.5)),
                    then: Some(Then::Took),
                    then_word: None,
                    session,
                }
                .into(),
            }
        };
        let event = event(self.home, Some(self.animal), body, machine_clock());
        if matches!(event.body, sayso_model::Body::Press(_)) {
            self.press = event.id;
        }
        event
    }
}

/// Events written into all homes in turn, as homes write them, and the desk opened every half second.
async fn beside_taps(host: &Arc<Host>, app: &Router, coach: &Secret, all: &[HomeId], seconds: u64) {
    let mut writes = Vec::new();
    for home in all {
        writes.push(Writes::of(host, *home).await);
    }
    let host = Arc::clone(host);
    let writing = tokio::spawn(async move {
        let begun = Instant::now();
        let mut running = tokio::task::JoinSet::new();
        for n in 0..RATE * seconds {
            let due = begun + Duration::from_secs_f64(n as f64 / RATE as f64);
            tokio::time::sleep_until(due.into()).await;
            let (place, host) = ((n as usize * 7) % writes.len(), Arc::clone(&host));
            let event = writes[place].next(n);
            running.spawn(async move {
                let outcome = host.server.home(event.home).append(vec![event]).await.unwrap();
                assert!(matches!(outcome[..], [Appended::New]), "{outcome:?}");
                due.elapsed()
            });
        }
        let mut took = Vec::new();
        while let Some(done) = running.join_next().await {
            took.push(done.unwrap());
        }
        took
    });
    let (mut took, mut behind) = (Vec::new(), 0);
    while !writing.is_finished() {
        let (one, is_behind) = desk(app, coach).await;
        took.push(one);
        behind += usize::from(is_behind);
        tokio::time::sleep(Duration::from_millis(500)).await;
    }
    println!(
        "beside {RATE} events a second for {seconds} s: {}; {behind} openings said that something newer was written",
        spread(took)
    );
    println!("those events:       {}", spread(writing.await.unwrap()));
}

fn spread(mut took: Vec<Duration>) -> String {
    took.sort();
    let at = |share: f64| took[((took.len() - 1) as f64 * share).round() as usize].as_secs_f64() * 1_000.0;
    format!("n = {}, p50 {:.1} ms, p95 {:.1} ms, most {:.1} ms", took.len(), at(0.5), at(0.95), at(1.0))
}
