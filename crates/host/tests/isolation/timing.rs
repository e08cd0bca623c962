//! Does the time of an answer tell whether there is a home? Asked for an id of another home and for one that is nowhere, in turns,
//! by someone who has to do with neither. Run by hand, on a machine that does nothing else; the figures stand in
//! `docs/lab/host.md`: `cargo test --release -p sayso-host --test isolation timing -- --ignored --nocapture`.

use crate::events::remark;
use crate::house::{Asker, House};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use sayso_model::HomeId;
use sayso_people::Role;
use std::time::Instant;

/// Pairs asked for.
const PAIRS: usize = 2_000;
/// Before counting.
const WARM: usize = 100;
/// Two-sided 95% of a normal distribution: with thousands of pairs the mean of their differences is one.
const Z: f64 = 1.959_964;

/// What an event for no home of one's own is told.
const NOT_YOURS: &str = "is not a home you can write in here";

/// Of how much longer the first of each pair took than the second, in microseconds: mean and median, each with its 95% interval. On a
/// machine that does other things too the median says more: a few answers that waited long move the mean.
struct Differences {
    mean: [f64; 3],
    median: [f64; 3],
}

impl Differences {
    fn of(mut all: Vec<f64>) -> Self {
        let n = all.len() as f64;
        let mean = all.iter().sum::<f64>() / n;
        let spread = (all.iter().map(|d| (d - mean).powi(2)).sum::<f64>() / (n - 1.0)).sqrt();
        let half = Z * spread / n.sqrt();
        all.sort_by(f64::total_cmp);
        // By ranks: how many lie below the true median is binomial, n times one half.
        let (middle, ranks) = (all.len() / 2, (Z * n.sqrt() / 2.0).ceil() as usize);
        let median = [all[middle], all[middle - ranks], all[middle + ranks]];
        Self { mean: [mean, mean - half, mean + half], median }
    }
}

/// What tells that a request came as far as asking whose home it is: else nothing was measured.
#[derive(Clone, Copy)]
enum Refused {
    NotFound,
    NotYourHome,
}

impl Refused {
    fn is(self, status: StatusCode, body: &str) -> bool {
        match self {
            Self::NotFound => status == StatusCode::NOT_FOUND,
            Self::NotYourHome => status == StatusCode::OK && body.contains(NOT_YOURS),
        }
    }
}

async fn took(house: &House, asker: &Asker, request: Request<Body>, as_what: Refused) -> f64 {
    let began = Instant::now();
    let answer = house.ask(asker, request).await;
    let status = answer.status();
    let body = axum::body::to_bytes(answer.into_body(), usize::MAX).await.unwrap();
    let took = began.elapsed().as_secs_f64() * 1e6;
    let body = String::from_utf8_lossy(&body);
    assert!(as_what.is(status, &body), "{status} {body}");
    took
}

/// Each pair in an order that changes, so that what the first leaves warm helps either as often.
async fn differences(
    house: &House,
    asker: &Asker,
    as_what: Refused,
    ask: impl Fn(bool) -> Request<Body>,
) -> Differences {
    let mut all = Vec::with_capacity(PAIRS);
    for n in 0..WARM + PAIRS {
        let foreign_first = n % 2 == 0;
        let one = took(house, asker, ask(foreign_first), as_what).await;
        let other = took(house, asker, ask(!foreign_first), as_what).await;
        if n >= WARM {
            all.push(if foreign_first { one - other } else { other - one });
        }
    }
    Differences::of(all)
}

#[tokio::test(flavor = "multi_thread")]
#[ignore = "measures; takes minutes and wants a quiet machine"]
async fn the_time_of_an_answer_tells_of_no_home() {
    let mut house = House::new().await;
    let people = house.people().await;
    let stranger = people.iter().find(|p| p.name == "keeper of another home").unwrap();
    let member = people.iter().find(|p| p.role == Some(Role::Member)).unwrap();
    let animal = house.story.animals().into_keys().next().unwrap().to_string();
    let foreign = house.home.to_string();
    let nowhere = || uuid::Uuid::now_v7().to_string();
    let page = |path: String| Request::get(path).header(header::ACCEPT, "text/html").body(Body::empty()).unwrap();
    // The same event but for its home and its own id.
    let sent = |home: Option<HomeId>, story| {
        let events = [remark(home.unwrap_or_else(|| HomeId(uuid::Uuid::now_v7())), story, None)];
        Request::post("/api/events")
            .header(header::CONTENT_TYPE, "application/json")
            .body(Body::from(serde_json::to_string(&events).unwrap()))
            .unwrap()
    };
    let mut rows = Vec::new();
    let ask = |there: bool| page(format!("/a/{}/today", if there { animal.clone() } else { nowhere() }));
    rows.push(("a page about an animal", differences(&house, stranger, Refused::NotFound, ask).await));
    let ask = |there: bool| page(format!("/people?home={}", if there { foreign.clone() } else { nowhere() }));
    rows.push(("a page that names a home", differences(&house, stranger, Refused::NotFound, ask).await));
    let ask = |there: bool| sent(there.then_some(house.home), &house.story);
    rows.push(("an event, by who keeps another home", differences(&house, stranger, Refused::NotYourHome, ask).await));
    let ask = |there: bool| sent(there.then_some(house.other), &house.other_story);
    rows.push(("an event, by a member of another home", differences(&house, member, Refused::NotYourHome, ask).await));
    // Against which the measure is held: asked the same twice.
    let ask = |_: bool| sent(None, &house.story);
    rows.push(("an event for an unknown home twice", differences(&house, stranger, Refused::NotYourHome, ask).await));
    let ask = |_: bool| page(format!("/people?home={}", nowhere()));
    rows.push(("the same unknown home twice", differences(&house, stranger, Refused::NotFound, ask).await));
    println!("| asked for | median, µs | 95% interval | mean, µs | 95% interval |\n| --- | --- | --- | --- | --- |");
    for (name, d) in rows {
        let told = |[at, low, high]: [f64; 3]| format!("{at:+.0} | {low:+.0} to {high:+.0}");
        println!("| {name} | {} | {} |", told(d.median), told(d.mean));
    }
}
