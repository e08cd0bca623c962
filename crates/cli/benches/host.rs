//! A server of many homes, whole: pages of homes read for the first time and again, and taps at a steady rate, through the door
//! and the gate, on a database of its own that waits for the disk. Beside it, in the same run, the same taps one after another.
//!
//! `cargo bench -p sayso --bench host -- --homes 10000 --events 1500` (about 650 bytes an event on the disk); `--database URL`
//! measures one that `lab host fill` filled (with the same `--homes`, `--events`, `--seed`), `--cold` begins with nothing of the
//! database's files in memory (as root, on Linux), `--quick` is a small one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::cast_precision_loss, missing_docs)]

use axum::Router;
use axum::body::{Body, Bytes};
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_cluster::Cluster;
use sayso_host::{Host, HostConfig, SESSION_COOKIE};
use sayso_lab::host::fill::{Order, fill};
use sayso_model::{AnimalId, Event, EventId, HomeId, Label, Language, Note, Remark, Source, Zone};
use sayso_people::db::Taker;
use sayso_people::{Capability, OsSecrets, Part, Role, Scope, Secret};
use sayso_store::Database;
use sayso_web::state::machine_clock;
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};
use tower::ServiceExt;

/// Homes whose pages are read: enough for a 99th percentile, few enough to be let in quickly.
const READ: usize = 200;
/// Seconds in which every home is written to for the first time: what its rows lie on comes from the disk.
const FIRST_S: u64 = 2;
/// Taps a second.
const RATE: u64 = 300;

struct Visitor {
    home: HomeId,
    animal: Option<AnimalId>,
    token: Secret,
}

fn main() {
    let args: Vec<String> = std::env::args().collect();
    let after = |name: &str| args.iter().position(|a| a == name).and_then(|i| args.get(i + 1)).cloned();
    let cold = args.iter().any(|a| a == "--cold");
    let quick = args.iter().any(|a| a == "--quick");
    let number = |name: &str, usual: u32| after(name).map_or(usual, |n| n.parse().expect("a number"));
    let (homes, events) = if quick { (12, 200) } else { (number("--homes", 1_000), number("--events", 1_500)) };
    let seconds = if quick { 1 } else { u64::from(number("--seconds", 20)) };
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build().unwrap();
    // Kept until the end.
    let own = after("--database").is_none().then(|| Cluster::start(true).unwrap());
    let address = after("--database").unwrap_or_else(|| own.as_ref().unwrap().address("postgres", "postgres"));
    println!(
        "{} cores, {homes} homes of {events} records",
        std::thread::available_parallelism().map_or(0, usize::from)
    );
    runtime.block_on(async {
        let order = Order { database: address.clone(), homes, events, seed: u64::from(number("--seed", 1)), end: None };
        let begun = Instant::now();
        let all = if own.is_some() { fill(&order, &|_| {}).await.unwrap() } else { known(&address).await };
        println!("filled or found in {:.0} s", begun.elapsed().as_secs_f64());
        let mut visitors = let_in(&address, &all).await;
        let before = open(&address).await;
        for visitor in &mut visitors {
            visitor.animal = animal(&before, visitor.home).await;
        }
        before.close().await;
        if cold {
            at_rest(own.as_ref().expect("--cold is of a database of its own"));
        }
        // A server that has just begun: no story and no room is in memory. What the database keeps in its own is left to it.
        let host = open(&address).await;
        let app = sayso_host::app(Arc::clone(&host));
        pages(&app, &visitors).await;
        println!("stories in memory: {:.1} MB", host.server.story_bytes() as f64 / 1e6);
        taps(&app, &visitors, seconds).await;
        one_by_one(&app, &visitors[0], if quick { 20 } else { 500 }).await;
        host.close().await;
    });
}

/// The database begins anew and its files are on the disk alone, as after the machine was switched off.
fn at_rest(cluster: &Cluster) {
    cluster.crash().unwrap();
    let synced = std::process::Command::new("sync").status().expect("sync");
    assert!(synced.success(), "{synced}");
    std::fs::write("/proc/sys/vm/drop_caches", "3").expect("letting go of files kept in memory needs root on Linux");
    cluster.up().unwrap();
}

async fn open(address: &str) -> Arc<Host> {
    let config = HostConfig::here(Database::at(address), "http://localhost/".parse().unwrap());
    Arc::new(Host::open(&config).await.unwrap())
}

async fn known(address: &str) -> Vec<HomeId> {
    let server = sayso_store::Server::open(&Database::at(address)).await.unwrap();
    let homes = server.homes().await.unwrap();
    server.close().await;
    homes
}

async fn animal(host: &Host, home: HomeId) -> Option<AnimalId> {
    host.server.home(home).story(home).await.unwrap().animals().into_keys().next()
}

/// A keeper for each of some homes, spread over all.
async fn let_in(address: &str, all: &[HomeId]) -> Vec<Visitor> {
    let host = open(address).await;
    let (people, now) = (&host.people, host.now());
    let take = |secret: Secret| async move {
        let name = Label::new("Someone").unwrap();
        let taker = Taker::New { name: &name, language: Language::En };
        // From many networks: what is held off is guessing from one.
        let from = uuid::Uuid::now_v7().to_string();
        people.take_invitation(&secret, taker, &from, "bench", now, &mut OsSecrets).await.unwrap().session.unwrap()
    };
    let (_, secret) = people.invite_first_keeper(now, &mut OsSecrets).await.expect("a database without people");
    let (server, _) = take(secret).await;
    let hosts = people.may_on_server(&server, Capability::Host, now).await.unwrap();
    let mut visitors = Vec::new();
    for home in all.iter().step_by((all.len() / READ).max(1)).take(READ) {
        people.open_home(&hosts, *home, now).await.unwrap();
        let part = Part::new(Scope::Home(*home), Role::Keeper, None, None).unwrap();
        let (_, secret) = people.invite(&hosts, &part, now, &mut OsSecrets).await.unwrap();
        visitors.push(Visitor { home: *home, animal: None, token: take(secret).await.1 });
    }
    host.close().await;
    visitors
}

async fn ask(app: &Router, visitor: &Visitor, request: Request<Body>) -> (StatusCode, Bytes) {
    let mut request = request;
    let cookie = format!("{SESSION_COOKIE}={}", visitor.token.reveal());
    request.headers_mut().insert(header::COOKIE, cookie.parse().unwrap());
    request.headers_mut().insert(header::HOST, "localhost".parse().unwrap());
    let answer = app.clone().oneshot(request).await.unwrap();
    let status = answer.status();
    (status, answer.into_body().collect().await.unwrap().to_bytes())
}

/// A tap that was let in, for the first time: a refusal would be quick, and is answered as politely.
async fn taken(app: &Router, visitor: &Visitor) {
    let (status, body) = ask(app, visitor, tap(visitor)).await;
    let told = String::from_utf8_lossy(&body);
    assert!(status == StatusCode::OK && told.contains("\"result\":\"new\""), "{status} {told}");
}

/// Today of each home: read for the first time, then again, then again with one tap more.
async fn pages(app: &Router, visitors: &[Visitor]) {
    for what in ["for the first time", "again"] {
        let mut took = Vec::new();
        for visitor in visitors {
            let Some(animal) = visitor.animal else { continue };
            let begun = Instant::now();
            let page = Request::get(format!("/a/{animal}/today")).body(Body::empty()).unwrap();
            let (status, body) = ask(app, visitor, page).await;
            took.push(begun.elapsed());
            assert!(status == StatusCode::OK && body.len() > 1_000, "{status}");
        }
        println!("Today {what}: {}", spread(took));
    }
}

fn tap(visitor: &Visitor) -> Request<Body> {
    let now = machine_clock();
    let event = Event {
        id: EventId(uuid::Uuid::now_v7()),
        home: visitor.home,
        animal: visitor.animal,
        person: None,
        happened_at: now,
        zone: Zone::utc(),
        recorded_at: now,
        source: Source::Tap,
        body: Remark { text: Note::new("It looked at the button.").unwrap() }.into(),
    };
    let body = serde_json::to_string(&[event]).unwrap();
    Request::post("/api/events").header(header::CONTENT_TYPE, "application/json").body(Body::from(body)).unwrap()
}

/// Taps at a steady rate, whatever the answers take: each begins when it is due.
async fn taps(app: &Router, visitors: &[Visitor], seconds: u64) {
    let took = Arc::new(Mutex::new(Vec::new()));
    let begun = Instant::now();
    let mut running = tokio::task::JoinSet::new();
    for n in 0..RATE * seconds {
        let due = begun + Duration::from_secs_f64(n as f64 / RATE as f64);
        tokio::time::sleep_until(due.into()).await;
        let visitor = &visitors[(n as usize * 7) % visitors.len()];
        let (app, took) = (app.clone(), Arc::clone(&took));
        let asker = Visitor { home: visitor.home, animal: visitor.animal, token: visitor.token.clone() };
        running.spawn(async move {
            taken(&app, &asker).await;
            // From when it was due: a late start is the server's too.
            took.lock().unwrap().push((n, due.elapsed()));
        });
    }
    while let Some(done) = running.join_next().await {
        done.unwrap();
    }
    let took = std::mem::take(&mut *took.lock().unwrap());
    let (first, later): (Vec<_>, Vec<_>) = took.iter().partition(|(n, _)| *n < RATE * FIRST_S);
    let all = |some: &[(u64, Duration)]| spread(some.iter().map(|(_, took)| *took).collect());
    println!("{RATE} taps a second for {seconds} s: {}", all(&took));
    println!("of them in the first {FIRST_S} s: {}", all(&first));
    if !later.is_empty() {
        println!("of them after that: {}", all(&later));
    }
}

/// The reference: one tap after another, nothing else under way.
async fn one_by_one(app: &Router, visitor: &Visitor, times: usize) {
    let mut took = Vec::new();
    for _ in 0..times {
        let begun = Instant::now();
        taken(app, visitor).await;
        took.push(begun.elapsed());
    }
    println!("one tap after another: {}", spread(took));
}

fn spread(mut took: Vec<Duration>) -> String {
    took.sort();
    let at = |share: f64| took[((took.len() - 1) as f64 * share).round() as usize].as_secs_f64() * 1_000.0;
    format!(
        "n = {}, p50 {:.1} ms, p95 {:.1} ms, p99 {:.1} ms, most {:.1} ms",
        took.len(),
        at(0.5),
        at(0.95),
        at(0.99),
        at(1.0)
    )
}
