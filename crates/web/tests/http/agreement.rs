use crate::web::{Ids, Web};
use serde_json::json;

/// Two people noted the same sessions: their records are picked, all or some of them, and compared.
#[tokio::test]
async fn what_two_people_noted_is_picked_and_compared() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    assert!(web.get("/agreement").await.text.contains("No two people have noted the same session"));
    let other = crate::web::id();
    web.events(&[ids.event(json!({ "kind": "person_card", "person": other, "name": "Ben", "role": "home" }))]).await;
    let (mut noted, mut sessions) = (Vec::new(), Vec::new());
    for hour in [8, 9] {
        let session = crate::web::id();
        let start = json!({ "kind": "session_start", "session": session, "purpose": "showing" });
        let mut start = ids.event(start);
        start["happened_at"] = json!(format!("2026-03-01T0{hour}:00:00Z"));
        web.events(&[start]).await;
        for minute in 10..20 {
            for (person, second) in [(ids.person.to_string(), 0), (other.clone(), 1)] {
                // In the second session Ben notes nothing from minute 15 on.
                if hour == 9 && minute >= 15 && person == other && minute != 19 {
                    continue;
                }
                let mut press = ids.press();
                press["person"] = json!(person);
                press["body"]["session"] = json!(session);
                press["happened_at"] = json!(format!("2026-03-01T0{hour}:{minute}:0{second}Z"));
                noted.push(press);
            }
        }
        sessions.push(session);
    }
    web.events(&noted).await;
    let page = web.get("/agreement").await.text;
    let link = page.split("href=\"").find(|rest| rest.contains("noted=presses")).expect("a pair to pick");
    let link = link.split('"').next().unwrap().replace("&amp;", "&");
    let all = web.get(&link).await.text;
    assert!(all.contains("They scored 80% (56% to 94%, from 20 records) alike."), "{all}");
    assert!(all.contains("not noted") && all.contains("4 times"), "{all}");
    let first = web.get(&format!("{link}&of={}", sessions[0])).await.text;
    assert!(first.contains("They scored 100% (69% to 100%, from 10 records) alike."), "{first}");
    let wrong = web.get(&link.replace("noted=presses", "noted=naps")).await;
    assert_eq!(wrong.status, axum::http::StatusCode::UNPROCESSABLE_ENTITY);
}
