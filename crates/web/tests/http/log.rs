use crate::web::{Ids, Web};
use axum::http::StatusCode;
use serde_json::json;

#[tokio::test]
async fn what_is_taken_back_or_put_right_keeps_its_first_record() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let press = ids.press();
    let (id, log) = (press["id"].as_str().unwrap().to_owned(), format!("/a/{}/log", ids.animal));
    web.events(&[press]).await;
    assert!(web.get(&log).await.text.contains("Momo pressed chicken"));

    // Each control says of which entry it is, for who hears them one after the other.
    let said = web.get(&log).await.text;
    assert!(said.contains("aria-label=\"Edit: Momo pressed chicken"), "{said}");

    assert_eq!(web.post(&format!("{log}/withdraw"), format!("of={id}")).await.status, StatusCode::SEE_OTHER);
    let after = web.get(&log).await.text;
    assert!(after.contains("Undone: ") && after.contains("Momo pressed chicken"));

    assert_eq!(web.post(&format!("{log}/bring-back"), format!("of={id}")).await.status, StatusCode::SEE_OTHER);
    assert!(!web.get(&log).await.text.contains("Undone: "));

    let fix = format!("day=2026-03-02&time=11%3A59%3A30&word={}&by=person&accident=no", ids.word);
    let fixed = web.post(&format!("{log}/{id}"), fix).await;
    assert_eq!(fixed.status, StatusCode::SEE_OTHER, "{}", fixed.text);
    let page = web.get(&log).await.text;
    assert!(page.contains("Shown: pressed chicken") && page.contains("First noted: Momo pressed chicken"));
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
    let path = format!("/a/{}/log/{}", ids.animal, press["id"].as_str().unwrap());
    web.events(&[press]).await;
    let before = web.get("/api/export.jsonl").await.text;
    for bad in [
        "day=2026-03-02&time=25%3A00&by=person&accident=no",
        "day=2026-02-30&time=10%3A00&by=person&accident=no",
        "day=2026-03-03&time=10%3A00&by=person&accident=no",
        "day=2026-03-02&time=10%3A00&by=nobody&accident=no",
        "day=2026-03-02&time=10%3A00&by=person&accident=no&word=x",
        "day=2026-03-02&time=10%3A00&by=person&accident=no&other=1",
    ] {
        assert_eq!(web.post(&path, bad).await.status, StatusCode::UNPROCESSABLE_ENTITY, "{bad}");
    }
    assert_eq!(web.get("/api/export.jsonl").await.text, before);
    assert_eq!(web.get(&format!("/a/{}/log/{}", ids.animal, crate::web::id())).await.status, StatusCode::NOT_FOUND);
    assert_eq!(web.get(&format!("/a/{}/log/x", ids.animal)).await.status, StatusCode::BAD_REQUEST);
}

/// A clock that was ahead wrote a withdrawal and a card; what is done now counts all the same.
#[tokio::test]
async fn what_a_clock_ahead_wrote_does_not_outlast_what_is_done_now() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let press = ids.press();
    let (id, log) = (press["id"].as_str().unwrap().to_owned(), format!("/a/{}/log", ids.animal));
    let mut back = ids.event(json!({ "kind": "withdrawal", "of": id }));
    back["recorded_at"] = json!("2091-01-01T00:00:00Z");
    let mut card = ids.event(json!({ "kind": "person_card", "person": ids.person, "name": "Ahead", "role": "home" }));
    card["happened_at"] = json!("2091-01-01T00:00:00Z");
    web.events(&[press, back, card]).await;
    assert!(web.get(&log).await.text.contains("Undone: "));
    web.post(&format!("{log}/bring-back"), format!("of={id}")).await;
    assert!(!web.get(&log).await.text.contains("Undone: "), "brought back");
    web.post(&format!("{log}/withdraw"), format!("of={id}")).await;
    assert!(web.get(&log).await.text.contains("Undone: "), "taken back again");

    let renamed = web.post(&format!("/people/person/{}", ids.person), "name=Bea&role=home&active=yes").await;
    assert_eq!(renamed.status, StatusCode::SEE_OTHER, "{}", renamed.text);
    let people = web.get("/people").await.text;
    assert!(people.contains("Bea") && !people.contains("Ahead"), "the card written last counts");
}

#[tokio::test]
async fn what_cannot_be_changed_any_more_is_told() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let press = ids.press();
    let (id, log) = (press["id"].as_str().unwrap().to_owned(), format!("/a/{}/log", ids.animal));
    let mut back = ids.event(json!({ "kind": "withdrawal", "of": id }));
    back["recorded_at"] = json!("2199-12-31T23:59:59.999Z");
    web.events(&[press, back]).await;
    let answer = web.post(&format!("{log}/bring-back"), format!("of={id}")).await;
    assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(answer.text.contains("can be changed no more"), "{}", answer.text);
}

#[tokio::test]
async fn events_dated_after_now_are_told_on_today_and_log() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let pages = [format!("/a/{}/today", ids.animal), format!("/a/{}/log", ids.animal)];
    for page in &pages {
        assert!(!web.get(page).await.text.contains("dated after now"), "{page}");
    }
    let mut ahead = [ids.press(), ids.press()];
    ahead[0]["happened_at"] = json!("2026-03-05T09:30:00Z");
    ahead[1]["happened_at"] = json!("2031-01-01T00:00:00Z");
    let first = format!("/a/{0}/log?event={1}#e{1}", ids.animal, ahead[0]["id"].as_str().unwrap());
    web.events(&ahead).await;
    for page in &pages {
        let text = web.get(page).await.text;
        assert!(text.contains("2 events are dated after now.") && text.contains(&first), "{page}: {text}");
        assert!(text.contains("Thu 5 Mar, 10:30:00") && text.contains("Ann"), "{page}");
    }
}

#[tokio::test]
async fn the_log_opens_at_an_event_and_shows_what_surrounds_it() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let presses: Vec<_> = (0..200)
        .map(|i| {
            let mut press = ids.press();
            press["happened_at"] = json!(format!("2026-03-01T10:{:02}:{:02}Z", i / 60, i % 60));
            press
        })
        .collect();
    web.events(&presses).await;
    let place = |i: usize| format!("id=\"e{}\"", presses[i].get("id").unwrap().as_str().unwrap());
    let asked = presses[50]["id"].as_str().unwrap();
    let page = web.get(&format!("/a/{}/log?event={asked}", ids.animal)).await.text;
    for i in [60, 50, 20] {
        assert!(page.contains(&place(i)), "{i}");
    }
    assert!(!page.contains(&place(100)) && page.contains("Newest") && page.contains("Older"));
    let none = web.get(&format!("/a/{}/log?event={}", ids.animal, crate::web::id())).await;
    assert_eq!(none.status, StatusCode::NOT_FOUND);
}

/// What a form cannot put right it does not ask for: it would be left as it was without a word.
#[tokio::test]
async fn a_form_asks_only_for_what_it_can_put_right() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let stage = ids.event(json!({ "kind": "stage_choice", "word": ids.word, "stage": "invite" }));
    let (press, log) = (ids.press(), format!("/a/{}/log", ids.animal));
    web.events(&[press.clone(), stage.clone()]).await;
    let form =
        async |event: &serde_json::Value| web.get(&format!("{log}/{}", event["id"].as_str().unwrap())).await.text;
    let asks_word = |text: &str| text.contains("name=\"word\"");
    assert!(asks_word(&form(&press).await));
    let stage = form(&stage).await;
    assert!(stage.contains("name=\"time\"") && !asks_word(&stage), "{stage}");
}

/// A file that knows days but no times gives many events one moment.
#[tokio::test]
async fn older_leads_to_every_event_of_one_moment() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let remarks: Vec<_> =
        (0..100).map(|n| ids.event(json!({ "kind": "remark", "text": format!("remark number {n}.") }))).collect();
    assert!(remarks.iter().all(|e| e["happened_at"] == remarks[0]["happened_at"]));
    web.events(&remarks).await;
    let (mut address, mut read) = (Some(format!("/a/{}/log", ids.animal)), String::new());
    for _ in 0..4 {
        let Some(next) = address else { break };
        let page = web.get(&next).await;
        assert_eq!(page.status, StatusCode::OK, "{next}: {}", page.text);
        let older = page.text.split_once("\">Older<").map(|(before, _)| before.rsplit('"').next().unwrap());
        address = older.map(|href| href.replace("&amp;", "&"));
        read.push_str(&page.text);
    }
    assert_eq!(address, None, "it comes to an end");
    for n in 0..100 {
        assert_eq!(read.matches(&format!("remark number {n}.</p>")).count(), 1, "remark {n}");
    }
    let log = format!("/a/{}/log", ids.animal);
    let at = remarks[0]["happened_at"].as_str().unwrap();
    assert!(!web.get(&format!("{log}?before={at}")).await.text.contains("remark number"), "before all of that moment");
    let alone = web.get(&format!("{log}?id={}", remarks[0]["id"].as_str().unwrap())).await;
    assert_eq!(alone.status, StatusCode::BAD_REQUEST);
    assert!(alone.text.contains("before"), "{}", alone.text);
}

/// Each way of choosing leaves the others out, in an address that stays, and names what it does.
#[tokio::test]
async fn the_log_is_chosen_by_day_kind_word_and_person_and_read_both_ways() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let noted: Vec<_> = (0..150)
        .map(|i| {
            let mut press = ids.press();
            press["happened_at"] = json!(format!("2026-03-01T10:{:02}:{:02}Z", i / 60, i % 60));
            press
        })
        .collect();
    let mut remark = ids.event(json!({ "kind": "remark", "text": "It rained." }));
    remark["happened_at"] = json!("2026-02-27T09:00:00Z");
    remark["person"] = json!(null);
    web.events(&noted).await;
    web.events(&[remark]).await;
    let log = format!("/a/{}/log", ids.animal);
    let count = |text: &str| text.matches("data-test=\"log-entry\"").count();
    let shows = async |query: &str| web.get(&format!("{log}?{query}")).await;
    assert_eq!(count(&shows("day=2026-02-27&kind=&word=&person=").await.text), 1);
    assert_eq!(count(&shows("kind=other").await.text), 1);
    assert_eq!(count(&shows("day=2026-02-28").await.text), 0);
    let pressed = shows(&format!("kind=presses&word={}&person={}", ids.word, ids.person)).await.text;
    assert!(count(&pressed) == 60 && !pressed.contains("It rained."), "{pressed}");
    for wrong in ["kind=naps", "day=tomorrow", "word=ball", "person=Ann"] {
        assert_eq!(shows(wrong).await.status, StatusCode::UNPROCESSABLE_ENTITY, "{wrong}");
    }
    // What no page asks for makes a broken address, as it does everywhere.
    assert_eq!(shows("more=1").await.status, StatusCode::BAD_REQUEST);

    // To the end by "Older", and back by "Newer": every page holds the choice, and none is lost either way.
    let to = |text: &str, rel: &str| {
        let link = text.split("<a ").find(|a| a.contains(&format!("rel=\"{rel}\"")))?;
        let (_, href) = link.split_once("href=\"")?;
        Some(href.split('"').next()?.replace("&amp;", "&"))
    };
    let mut page = shows("kind=presses").await.text;
    let mut all = count(&page);
    let mut pages = 1;
    while let Some(next) = to(&page, "next") {
        assert!(next.contains("kind=presses"), "{next}");
        page = web.get(&next).await.text;
        all += count(&page);
        pages += 1;
    }
    assert_eq!((all, pages), (150, 3));
    let mut back = count(&page);
    while let Some(before) = to(&page, "prev") {
        page = web.get(&before).await.text;
        back += count(&page);
    }
    assert_eq!(back, 150, "the way back holds as many");

    // Each is named for those who hear a list of links.
    let labels: std::collections::BTreeSet<&str> =
        page.split("aria-label=\"Edit: ").skip(1).filter_map(|rest| rest.split('"').next()).collect();
    assert_eq!(labels.len(), count(&page), "no two links read the same");
}

/// Of every entry only the clock stands below the day's heading; seconds of a column have as many decimals.
#[tokio::test]
async fn the_log_is_read_day_by_day_and_seconds_compare() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    let at = |day: &str, body| {
        let mut event = ids.event(body);
        event["happened_at"] = json!(format!("{day}T10:00:00Z"));
        event
    };
    let given = |after: f64| json!({ "kind": "delivery", "word": ids.word, "answer": "given", "delay_s": after });
    web.events(&[at("2026-02-27", given(1.0)), at("2026-02-27", given(1.3)), at("2026-03-01", given(12.4))]).await;
    let page = web.get(&format!("/a/{}/log", ids.animal)).await.text;
    let days: Vec<&str> = page.split("<section class=\"day\"><h2>").skip(1).collect();
    let named: Vec<&str> = days.iter().filter_map(|d| d.split('<').next()).collect();
    assert_eq!(named, ["Mon 2 Mar", "Sun 1 Mar", "Fri 27 Feb"], "{page}");
    assert_eq!(days[2].matches("data-test=\"log-entry\"").count(), 2);
    assert!(days[2].contains("after 1.0 s") && days[2].contains("after 1.3 s"), "{}", days[2]);
    assert!(days[1].contains("after 12 s") && days[1].contains("<p class=\"quiet\">11:00:00 · Ann"), "{}", days[1]);
}
