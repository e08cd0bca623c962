//! What a file brings of consent opens nothing on a server, and whoever reads it in is told so.

use crate::house::{House, asked, event};
use axum::http::StatusCode;
use sayso_model::{Body, Coach, Consent, ConsentGiven, Correction, Event, EventId, Note, Remark, Source};
use sayso_web::leave::admits;
use uuid::Uuid;

fn remark(text: &str) -> Remark {
    Remark { text: Note::new(text).unwrap() }
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_in_a_file_is_a_fault_that_names_its_line() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let consent = Consent::CoachFigures { to: Coach::Club { club } };
    let given = ConsentGiven { consent, words_version: Consent::WORDS };
    let corrected = Correction {
        of: EventId(Uuid::now_v7()),
        happened_at: None,
        animal: None,
        body: Box::new(given.clone().into()),
    };
    let rows = [
        event(house.home, remark("Fine")),
        event(house.home, given),
        Event { source: Source::Import, ..event(house.home, corrected) },
    ];
    let file: String = rows.iter().map(|row| serde_json::to_string(row).unwrap() + "\n").collect();
    let sent =
        async |path: &str| asked(&house.app, Some(&house.keeper), "POST", path, Some(("text/plain", &file))).await;
    let preview = sent("/api/import/preview?format=jsonl").await;
    let told: serde_json::Value = serde_json::from_str(&preview.body).unwrap();
    assert_eq!((&told["rows"], &told["new"], &told["bad_rows"]), (&3.into(), &1.into(), &2.into()), "{}", preview.body);
    let lines: Vec<&serde_json::Value> = told["problems"].as_array().unwrap().iter().map(|p| &p["line"]).collect();
    assert_eq!(lines, [&serde_json::Value::from(2), &serde_json::Value::from(3)]);
    assert!(told["problems"][0]["wanted"].as_str().unwrap().contains("opens nothing"), "{}", preview.body);
    let whole = sent("/api/import/commit?format=jsonl").await;
    assert_eq!(whole.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", whole.body);
    let events = "SELECT count(*) FROM sayso.event WHERE home = $1";
    let before = house.count(events).await;
    let rest = sent("/api/import/commit?format=jsonl&skip_bad_rows=true").await;
    assert_eq!(rest.status, StatusCode::OK, "{}", rest.body);
    assert_eq!(house.count(events).await, before + 1, "the sound row alone");
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::SEE_OTHER);
    // At home a notebook takes in what it once gave.
    let given: Body = ConsentGiven { consent, words_version: Consent::WORDS }.into();
    assert!(admits(None)(&given));
}
