//! Whatever is sent: an answer in words, never a panic, never a failure of ours.

use crate::web::{Ids, Web};
use axum::body::Body;
use axum::http::{Request, header};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json};

fn any_json() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(|x| json!(x)),
        any::<i64>().prop_map(Value::from),
        ".{0,20}".prop_map(Value::from),
        prop_oneof![
            Just("press"),
            Just("correction"),
            Just("animal"),
            Just("2026-03-02T11:00:00Z"),
            Just("Europe/Berlin")
        ]
        .prop_map(Value::from),
    ];
    leaf.prop_recursive(4, 40, 6, |inner| {
        let name = prop_oneof![
            Just("id".to_owned()),
            Just("body".to_owned()),
            Just("kind".to_owned()),
            Just("of".to_owned()),
            ".{0,8}"
        ];
        prop_oneof![
            prop::collection::vec(inner.clone(), 0..6).prop_map(Value::from),
            prop::collection::vec((name, inner), 0..6).prop_map(|pairs| Value::Object(pairs.into_iter().collect())),
        ]
    })
}

/// A sound event with one value somewhere replaced by anything.
fn disturbed() -> impl Strategy<Value = Value> {
    let places = [
        "/id",
        "/home",
        "/animal",
        "/happened_at",
        "/zone",
        "/source",
        "/body",
        "/body/kind",
        "/body/word",
        "/body/by",
        "/body/certainty",
    ];
    (prop::sample::select(places.to_vec()), any_json()).prop_map(|(place, value)| {
        let mut event = Ids::new().press();
        if let Some(slot) = event.pointer_mut(place) {
            *slot = value;
        }
        event
    })
}

fn body() -> impl Strategy<Value = Vec<u8>> {
    prop_oneof![
        prop::collection::vec(any::<u8>(), 0..400),
        any_json().prop_map(|v| v.to_string().into_bytes()),
        prop::collection::vec(disturbed(), 0..4).prop_map(|v| Value::from(v).to_string().into_bytes()),
        (1..400_usize).prop_map(|n| "[".repeat(n).into_bytes()),
        "[a-z_]{1,9}=.{0,40}(&[a-z_]{1,9}=.{0,40}){0,4}".prop_map(String::into_bytes),
    ]
}

#[test]
fn no_body_makes_the_notebook_fail() {
    let runtime = tokio::runtime::Runtime::new().unwrap();
    let (web, ids) = runtime.block_on(async {
        let (web, ids) = (Web::this_machine().await, Ids::new());
        web.events(&ids.cards()).await;
        (web, ids)
    });
    let paths = [
        "/api/events".to_owned(),
        "/api/import/preview?format=jsonl".to_owned(),
        "/api/import/commit?format=csv".to_owned(),
        "/start".to_owned(),
        "/who".to_owned(),
        "/pair".to_owned(),
        format!("/a/{}/log/withdraw", ids.animal),
        format!("/a/{}/log/{}", ids.animal, ids.word),
        "/a/x/log/withdraw".to_owned(),
    ];
    let mut runner = TestRunner::new(Config { cases: 400, failure_persistence: None, ..Config::default() });
    let inputs = (prop::sample::select(paths.to_vec()), body());
    runner
        .run(&inputs, |(path, body)| {
            let answer = runtime.block_on(web.post(&path, body));
            prop_assert!(!answer.status.is_server_error(), "{path}: {} {}", answer.status, answer.text);
            Ok(())
        })
        .unwrap();
}

#[test]
fn no_address_or_header_makes_the_notebook_fail() {
    let runtime = tokio::runtime::Runtime::new().unwrap();
    let web = runtime.block_on(Web::home_network());
    let mut runner = TestRunner::new(Config { cases: 300, failure_persistence: None, ..Config::default() });
    let inputs = ("[!-~]{0,60}", "[ -~]{0,60}", "[ -~]{0,60}");
    runner
        .run(&inputs, |(path, host, cookie)| {
            let Ok(request) = Request::get(format!("/{path}"))
                .header(header::HOST, host)
                .header(header::COOKIE, format!("sayso_paired={cookie}; sayso_person={cookie}"))
                .body(Body::empty())
            else {
                return Ok(());
            };
            let answer = runtime.block_on(web.send(request));
            prop_assert!(!answer.status.is_server_error(), "{path}: {}", answer.status);
            Ok(())
        })
        .unwrap();
}
