use crate::web::{Ids, Web, id};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use serde_json::{Value, json};

#[tokio::test]
async fn each_event_is_answered_for_itself() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let good = ids.press();
    let mut conflict = good.clone();
    conflict["body"]["by"] = json!("person");
    let mut unknown_field = ids.press();
    unknown_field["body"]["colour"] = json!("red");
    let mut no_animal = ids.event(json!({ "kind": "leaving", "session": id() }));
    no_animal.as_object_mut().unwrap().remove("animal");
    let answer = web
        .events(&[good.clone(), good.clone(), conflict, unknown_field.clone(), no_animal, json!(7), ids.press()])
        .await;
    assert_eq!(answer.status, StatusCode::OK, "{}", answer.text);
    let all = answer.json();
    let results: Vec<&str> = all.as_array().unwrap().iter().map(|o| o["result"].as_str().unwrap()).collect();
    assert_eq!(results, ["new", "duplicate", "conflict", "refused", "refused", "refused", "new"]);
    assert_eq!(all[3]["id"], unknown_field["id"]);
    assert_eq!(all[3]["problems"][0]["field"], "body.colour", "{all}");
    assert_eq!(all[3]["problems"][0]["kind"], "wanted-no-such-field");
    assert!(all[3]["problems"][0]["what"].as_str().unwrap().contains("red"), "{all}");
    assert_eq!(all[4]["problems"][0]["kind"], "faults-no-animal");
    assert_eq!(all[4]["problems"][0]["field"], "animal");
    assert_eq!(all[5]["id"], Value::Null);
    let again = web.events(&[good]).await.json();
    assert_eq!(again[0]["result"], "duplicate");
}

#[tokio::test]
async fn problems_are_told_in_the_language_asked_for_with_a_kind_that_stays() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let mut wrong = ids.press();
    wrong["body"]["by"] = json!("dog");
    let sent = json!([wrong]).to_string();
    let table = "kind,happened_at\npres,2026-03-01 18:30\n";
    let mut said = std::collections::BTreeSet::new();
    for language in ["en", "es", "de", "fr", "pt"] {
        let post = async |path: &str, body: &str| {
            let request = Request::post(path)
                .header(header::HOST, "localhost:8080")
                .header(header::CONTENT_TYPE, "application/json")
                .header(header::ACCEPT_LANGUAGE, language);
            web.send(request.body(Body::from(body.to_owned())).unwrap()).await.json()
        };
        let all = post("/api/events", &sent).await;
        let problem = &all[0]["problems"][0];
        assert_eq!((&problem["field"], &problem["kind"]), (&json!("body.by"), &json!("wanted-one-of")), "{all}");
        let seen = post("/api/import/preview?format=csv", table).await;
        assert_eq!(seen["problems"][0]["kind"], "wanted-one-of", "{seen}");
        let failed = post("/api/events", "[").await;
        assert_eq!(failed["kind"], "errors-no-array", "{failed}");
        for text in [&problem["what"], &seen["problems"][0]["wanted"], &failed["error"]] {
            assert!(said.insert(text.as_str().unwrap().to_owned()), "twice: {text}");
        }
    }
}

#[tokio::test]
async fn a_body_that_is_no_json_is_told_by_line_and_column() {
    let web = Web::this_machine().await;
    let answer = web.post("/api/events", "[\n  {\"id\": }\n]").await;
    assert_eq!(answer.status, StatusCode::BAD_REQUEST);
    let error = answer.json()["error"].as_str().unwrap().to_owned();
    assert!(error.contains("line 2") && error.contains("column"), "{error}");
    for bad in ["", "{}", "null", "[", "\u{0}", "[1,]"] {
        assert_eq!(web.post("/api/events", bad).await.status, StatusCode::BAD_REQUEST, "{bad:?}");
    }
    assert_eq!(web.post("/api/events", "[]").await.json(), json!([]));
    assert_eq!(web.post("/api/events", vec![0xff, 0xfe]).await.status, StatusCode::BAD_REQUEST);
}

#[tokio::test]
async fn requests_have_their_limits() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let many: Vec<Value> = (0..501).map(|_| ids.press()).collect();
    let answer = web.events(&many).await;
    assert_eq!(answer.status, StatusCode::BAD_REQUEST);
    assert!(answer.text.contains("500"));
    assert_eq!(web.events(&many[..500]).await.status, StatusCode::OK);
    let large = format!("[{}]", " ".repeat(1 << 20));
    let answer = web.post("/api/events", large).await;
    assert_eq!(answer.status, StatusCode::PAYLOAD_TOO_LARGE);
    assert!(answer.json()["error"].as_str().unwrap().contains("1,048,576"));
}

#[tokio::test]
async fn events_come_back_in_order_of_arrival() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let sent: Vec<Value> = (0..5).map(|_| ids.press()).collect();
    web.events(&sent).await;
    let first = web.get("/api/events?limit=3").await.json();
    let next = first["next"].as_i64().unwrap();
    let rest = web.get(&format!("/api/events?after={next}&limit=3")).await.json();
    assert_eq!(rest["next"], Value::Null);
    let got: Vec<&Value> =
        first["events"].as_array().unwrap().iter().chain(rest["events"].as_array().unwrap()).collect();
    let ids: Vec<&Value> = got.iter().map(|e| &e["event"]["id"]).collect();
    assert_eq!(ids, sent.iter().map(|e| &e["id"]).collect::<Vec<_>>());
    for bad in ["after=-1", "limit=0", "limit=1001", "after=x", "page=2"] {
        assert_eq!(web.get(&format!("/api/events?{bad}")).await.status, StatusCode::BAD_REQUEST, "{bad}");
    }
}

#[tokio::test]
async fn an_export_goes_back_in_whole() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let mut sent = ids.cards();
    sent.push(ids.press());
    web.events(&sent).await;
    for (path, format) in [("/api/export.jsonl", "jsonl"), ("/api/export.csv", "csv")] {
        let file = web.get(path).await;
        assert_eq!(file.status, StatusCode::OK);
        assert!(file.header("content-disposition").starts_with("attachment"));
        let other = Web::this_machine().await;
        let seen = other.post(&format!("/api/import/preview?format={format}"), file.text.clone()).await.json();
        assert_eq!((&seen["rows"], &seen["new"], &seen["bad_rows"]), (&json!(6), &json!(6), &json!(0)), "{seen}");
        assert_eq!(other.get("/api/events").await.json()["events"], json!([]), "a preview stores nothing");
        let done = other.post(&format!("/api/import/commit?format={format}"), file.text.clone()).await;
        assert_eq!(done.json(), json!({ "new": 6, "duplicates": 0 }), "{}", done.text);
        let back = other.get("/api/export.jsonl").await.text;
        assert_eq!(back, web.get("/api/export.jsonl").await.text);
    }
    assert_eq!(web.post("/api/import/preview?format=xls", "x").await.status, StatusCode::BAD_REQUEST);
    let bad = web.post("/api/import/commit?format=jsonl", "{\"kind\": 1}\n").await;
    assert_eq!(bad.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", bad.text);
}

#[tokio::test]
async fn after_midnight_the_pad_still_gets_what_a_session_needs_and_when_a_rest_ends() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    // It is one o'clock at night there.
    let mut home = ids.event(json!({ "kind": "home_card", "name": "The house", "zone": "Pacific/Auckland" }));
    home["recorded_at"] = json!("2026-03-02T11:30:00Z");
    let at = |when: &str, body: Value| {
        let mut event = ids.event(body);
        event["happened_at"] = json!(when);
        event
    };
    let session = id();
    let begun = at(
        "2026-03-02T10:50:00Z",
        json!({ "kind": "session_start", "session": session, "purpose": "showing", "words": [] }),
    );
    let ended =
        at("2026-03-02T10:55:00Z", json!({ "kind": "session_end", "session": session, "reason": "strong_sign" }));
    let growl = at(
        "2026-03-02T10:54:00Z",
        json!({ "kind": "sign", "sign": "growl", "level": "strong", "when": "during", "session": session }),
    );
    let earlier = at("2026-03-02T10:20:00Z", json!({ "kind": "look" }));
    let days_ago =
        at("2026-02-27T10:00:00Z", json!({ "kind": "sign", "sign": "hid", "level": "strong", "when": "during" }));
    web.events(&[home, begun.clone(), growl.clone(), ended.clone(), earlier]).await;
    let pad = web.get(&format!("/api/board/{}", ids.animal)).await.json();
    let told: Vec<&Value> = pad["today"].as_array().unwrap().iter().map(|e| &e["id"]).collect();
    assert_eq!(told, [&begun["id"], &growl["id"], &ended["id"]], "of the last hour and a half");
    assert_eq!(pad["rest_until"], "2026-03-02T22:54:00.000Z", "twelve hours, though its day is over");
    assert_eq!(pad["strong"], json!([]));
    web.events(&[days_ago]).await;
    let pad = web.get(&format!("/api/board/{}", ids.animal)).await.json();
    assert_eq!(pad["strong"], json!(["2026-02-27T10:00:00.000Z"]));
    assert_eq!(pad["rest_until"], "2026-03-05T11:00:00.000Z", "until a week after the first of two days");
}

#[tokio::test]
async fn the_pad_counts_the_ration_of_the_day_over_all_devices() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let feed = ids.event(json!({ "kind": "feed", "reward": ids.reward, "pieces": 1, "kcal": 3.5 }));
    let mut yesterday = ids.event(json!({ "kind": "feed", "reward": ids.reward, "pieces": 1, "kcal": 3.5 }));
    yesterday["happened_at"] = json!("2026-03-01T11:00:00Z");
    web.events(&[feed.clone(), yesterday]).await;
    let pad = web.get(&format!("/api/board/{}", ids.animal)).await.json();
    assert_eq!(pad["today"].as_array().unwrap().iter().map(|e| &e["id"]).collect::<Vec<_>>(), [&feed["id"]]);
    assert!(pad["ration"]["budget_kcal"].as_f64().unwrap() > 10.0, "{}", pad["ration"]);
    assert_eq!(pad["words"][0]["says"], "chicken");
    assert!(pad["signs"].as_array().unwrap().iter().any(|s| s["level"] == "strong"));
    let page = web.get(&format!("/a/{}/board", ids.animal)).await;
    assert!(page.text.contains("pad-chicken") && page.text.contains("Safe at the board"));
    assert_eq!(web.get(&format!("/api/board/{}", id())).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn failures_are_json_under_api_and_pages_elsewhere() {
    let web = Web::this_machine().await;
    assert!(web.get("/api/nothing").await.json()["error"].is_string());
    assert!(web.get("/nothing").await.text.contains("<h1>Not here</h1>"));
    let wrong = web.post("/api/openapi.json", "").await;
    assert_eq!(wrong.status, StatusCode::METHOD_NOT_ALLOWED);
    assert!(wrong.json()["error"].is_string());
    let front = web.get("/").await;
    assert_eq!((front.status, front.header("location")), (StatusCode::SEE_OTHER, "/start"));
}
