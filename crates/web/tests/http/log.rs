use crate::web::{Ids, Web};
use axum::http::StatusCode;

#[tokio::test]
async fn what_is_taken_back_or_put_right_keeps_its_first_record() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let press = ids.press();
    let (id, log) = (press["id"].as_str().unwrap().to_owned(), format!("/l/{}/log", ids.learner));
    web.events(&[press]).await;
    assert!(web.get(&log).await.text.contains("The animal pressed chicken"));

    assert_eq!(web.post(&format!("{log}/withdraw"), format!("of={id}")).await.status, StatusCode::SEE_OTHER);
    let after = web.get(&log).await.text;
    assert!(after.contains("Taken back: ") && after.contains("The animal pressed chicken"));

    assert_eq!(web.post(&format!("{log}/bring-back"), format!("of={id}")).await.status, StatusCode::SEE_OTHER);
    assert!(!web.get(&log).await.text.contains("Taken back: "));

    let fix = format!("day=2026-03-02&time=11%3A59%3A30&word={}&by=teacher&accident=no", ids.word);
    let fixed = web.post(&format!("{log}/{id}"), fix).await;
    assert_eq!(fixed.status, StatusCode::SEE_OTHER, "{}", fixed.text);
    let page = web.get(&log).await.text;
    assert!(page.contains("Shown: pressed chicken") && page.contains("First noted: The animal pressed chicken"));
    let all = web.get("/api/events").await.json();
    let correction = &all["events"].as_array().unwrap().last().unwrap()["event"]["body"];
    assert_eq!(
        (correction["kind"].as_str(), correction["happened_at"].as_str()),
        (Some("correction"), Some("2026-03-02T10:59:30.000Z"))
    );
}

#[tokio::test]
async fn a_wrong_fix_is_told_and_nothing_is_kept() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let press = ids.press();
    let path = format!("/l/{}/log/{}", ids.learner, press["id"].as_str().unwrap());
    web.events(&[press]).await;
    let before = web.get("/api/export.jsonl").await.text;
    for bad in [
        "day=2026-03-02&time=25%3A00&by=teacher&accident=no",
        "day=2026-02-30&time=10%3A00&by=teacher&accident=no",
        "day=2026-03-03&time=10%3A00&by=teacher&accident=no",
        "day=2026-03-02&time=10%3A00&by=nobody&accident=no",
        "day=2026-03-02&time=10%3A00&by=teacher&accident=no&word=x",
        "day=2026-03-02&time=10%3A00&by=teacher&accident=no&other=1",
    ] {
        assert_eq!(web.post(&path, bad).await.status, StatusCode::UNPROCESSABLE_ENTITY, "{bad}");
    }
    assert_eq!(web.get("/api/export.jsonl").await.text, before);
    assert_eq!(web.get(&format!("/l/{}/log/{}", ids.learner, crate::web::id())).await.status, StatusCode::NOT_FOUND);
    assert_eq!(web.get(&format!("/l/{}/log/x", ids.learner)).await.status, StatusCode::BAD_REQUEST);
}
