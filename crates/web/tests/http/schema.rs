//! The published schema and the notebook must agree on what an event is.

use crate::web::{Ids, Web, id};
use serde_json::{Value, json};

fn samples(ids: &Ids) -> Vec<Value> {
    let s = id();
    let mut all = ids.cards();
    all.extend([
        json!({ "kind": "session_start", "session": s, "purpose": "showing", "words": [ids.word] }),
        json!({ "kind": "joining", "session": s, "after_s": 3.5 }),
        json!({ "kind": "leaving", "session": s }),
        json!({ "kind": "session_end", "session": s, "reason": "animal_left" }),
        json!({ "kind": "press", "word": ids.word, "by": "animal", "place": { "row": 0, "column": 1 }, "session": s }),
        json!({ "kind": "delivery", "word": ids.word, "answer": "given", "delay_s": 1.2, "then": "took", "session": s }),
        json!({ "kind": "look", "session": s }),
        json!({ "kind": "brush", "word": ids.word }),
        json!({ "kind": "invitation", "word": ids.word, "way": "offer_in_view", "wait_s": 5.0,
            "result": { "outcome": "pressed", "word": ids.word, "after_s": 2.0 }, "shown": false, "took": true }),
        json!({ "kind": "invitation", "word": ids.word, "way": "ask_and_point", "wait_s": 5.0, "result": { "outcome": "nothing_by_wait" } }),
        json!({ "kind": "catch", "word": ids.word, "how": "looked at it", "shown": true }),
        json!({ "kind": "sign", "sign": "turns head away", "level": "mild", "when": "during" }),
        json!({ "kind": "feed", "reward": ids.reward, "pieces": 1, "kcal": 3.5 }),
        json!({ "kind": "remark", "text": "a remark" }),
        json!({ "kind": "withdrawal", "of": id() }),
        json!({ "kind": "correction", "of": id(), "body": { "kind": "remark", "text": "better" } }),
    ].map(|body| ids.event(body)));
    all
}

/// Each with one thing wrong that a schema can tell.
fn wrong(ids: &Ids) -> Vec<Value> {
    let change = |path: &str, value: Option<Value>| {
        let mut event = ids.press();
        let (parent, name) = path.rsplit_once('/').unwrap();
        let object = event.pointer_mut(parent).unwrap().as_object_mut().unwrap();
        match value {
            Some(value) => object.insert(name.to_owned(), value),
            None => object.remove(name),
        };
        event
    };
    vec![
        change("/colour", Some(json!("red"))),
        change("/body/colour", Some(json!("red"))),
        change("/body/kind", Some(json!("dance"))),
        change("/body/kind", None),
        change("/body/by", Some(json!("cat"))),
        change("/body/word", None),
        change("/body/word", Some(json!(5))),
        change("/id", None),
        change("/source", Some(json!("guess"))),
        change("/home", None),
        change("/body", Some(json!("press"))),
        change("/body/certainty", Some(json!("sure"))),
    ]
}

#[tokio::test]
async fn the_schema_accepts_what_the_notebook_accepts_and_refuses_what_it_refuses() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    let document = web.get("/api/openapi.json").await.json();
    assert_eq!(document["openapi"], "3.1.0");
    let schema = json!({ "$ref": "#/components/schemas/Event", "components": document["components"] });
    let validator = jsonschema::draft202012::options().build(&schema).unwrap();

    let good = samples(&ids);
    for event in &good {
        let errors: Vec<String> = validator.iter_errors(event).map(|e| e.to_string()).collect();
        assert!(errors.is_empty(), "{event}: {errors:?}");
    }
    for outcome in web.events(&good).await.json().as_array().unwrap() {
        assert_eq!(outcome["result"], "new", "{outcome}");
    }
    let bad = wrong(&ids);
    for event in &bad {
        assert!(!validator.is_valid(event), "the schema takes {event}");
    }
    for (outcome, event) in web.events(&bad).await.json().as_array().unwrap().iter().zip(&bad) {
        assert_eq!(outcome["result"], "refused", "the notebook takes {event}");
        assert!(!outcome["problems"][0]["what"].as_str().unwrap().is_empty());
    }
}

#[tokio::test]
async fn every_path_of_the_document_is_there_and_answers_are_as_described() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let document = web.get("/api/openapi.json").await.json();
    let with =
        |name: &str| json!({ "$ref": format!("#/components/schemas/{name}"), "components": document["components"] });
    for (path, methods) in document["paths"].as_object().unwrap() {
        if let Some(get) = methods.get("get") {
            let answer = web.get(&path.replace("{animal}", &ids.animal)).await;
            // A web socket, asked plainly, is there but does not open.
            let wanted = if get["responses"].get("101").is_some() { 400 } else { 200 };
            assert_eq!(answer.status, wanted, "{path}: {}", answer.text);
        }
    }
    let listing = web.get("/api/events").await.json();
    assert!(jsonschema::draft202012::options().build(&with("Listing")).unwrap().is_valid(&listing));
    let outcome = web.events(&[json!(1)]).await.json()[0].clone();
    assert!(jsonschema::draft202012::options().build(&with("Outcome")).unwrap().is_valid(&outcome), "{outcome}");
    let failure = web.post("/api/events", "{").await.json();
    assert!(jsonschema::draft202012::options().build(&with("Failure")).unwrap().is_valid(&failure));
    assert!(web.get("/api").await.text.contains("/api/import/preview"));
}
