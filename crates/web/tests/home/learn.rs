//! Learn: every lesson whole on its page, a mark for who has read it, one lesson offered where it fits.

use crate::at_home::Home;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use sayso_model::facts::lessons;
use sayso_model::{
    Body as Content, Event, EventId, Kind, Language, LessonRead, Moment, PersonId, Purpose, SessionId, SessionStart,
    Source, Zone,
};
use sayso_wording::Locale;
use sayso_wording::lessons::told;
use tower::ServiceExt;
use uuid::Uuid;

/// A text as it stands in a page.
fn in_html(text: &str) -> String {
    text.replace('&', "&amp;").replace('"', "&quot;").replace('<', "&lt;")
}

/// Whoever is marked as having read a lesson, by how many standing events say so.
async fn marks(home: &Home) -> usize {
    home.story().await.everyones::<LessonRead>().count()
}

#[tokio::test]
async fn every_lesson_stands_on_its_page_with_all_its_parts() {
    let home = Home::new().await;
    let list = home.page("/learn").await;
    for lesson in lessons() {
        let told = told(&Locale::ENGLISH, lesson, Some("Pip"));
        list.says(&format!("href=\"/learn/{}\"", lesson.id)).says(&in_html(&told.title)).says(&in_html(&told.short));
        let page = home.page(&format!("/learn/{}", lesson.id)).await;
        page.says("role=\"img\"").says(&format!("aria-label=\"{}\"", in_html(&told.drawing))).says("<svg");
        for text in told.steps.iter().chain([&told.mistake, &told.care]).chain(&told.unknown) {
            page.says(&in_html(text));
        }
        for asked in &told.questions {
            page.says(&in_html(&asked.question));
            for answer in &asked.answers {
                page.says(&in_html(&answer.says)).says(&in_html(&answer.why));
            }
        }
        for fact in &told.rests_on {
            page.says(&in_html(fact));
        }
        page.says("All else here is common practice, no source.");
        // An answer unfolds in the browser by itself; what can be sent is the mark alone.
        let answers: usize = told.questions.iter().map(|q| q.answers.len()).sum();
        assert_eq!(page.text.matches("<details class=\"answer\"").count(), answers, "{}", lesson.id);
        assert_eq!(page.text.matches("<form").count(), 1, "{}", lesson.id);
        assert_eq!(page.text.matches("data-right=\"yes\"").count(), 2, "{}", lesson.id);
    }
}

#[tokio::test]
async fn lessons_follow_each_other_and_none_is_locked() {
    let home = Home::new().await;
    let ids: Vec<&str> = lessons().iter().map(|l| l.id.as_str()).collect();
    for pair in ids.windows(2) {
        home.page(&format!("/learn/{}", pair[0])).await.says(&format!("href=\"/learn/{}\" rel=\"next\"", pair[1]));
        home.page(&format!("/learn/{}", pair[1])).await.says(&format!("href=\"/learn/{}\" rel=\"prev\"", pair[0]));
    }
    home.page("/learn").await.does_not_say("disabled");
    assert_eq!(home.get("/learn/no-such").await.status, StatusCode::NOT_FOUND);
    assert_eq!(home.post("/learn/no-such", &[("read", "yes")]).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn a_mark_is_made_once_seen_by_the_home_and_taken_back() {
    let home = Home::new().await;
    home.page("/learn").await.does_not_say("Read by");
    home.page("/learn/showing").await.says("I have read it");
    let kept = home.post("/learn/showing", &[("read", "yes")]).await;
    assert_eq!((kept.kept().to.as_str(), marks(&home).await), ("/learn/showing", 1));
    home.post("/learn/showing", &[("read", "yes")]).await.kept();
    assert_eq!(marks(&home).await, 1, "read is read, however often it is said");
    home.page("/learn").await.says("Read by Robin");
    home.page("/learn/showing").await.says("You read it on").does_not_say("I have read it");
    home.page(&format!("/a/{}/log", home.animal)).await.says("Lesson read: Press, say, give");
    home.post("/learn/showing", &[("read", "no")]).await.kept();
    home.page("/learn").await.does_not_say("Read by");
    // Nothing vanishes from the log.
    let story = home.story().await;
    let recorded = story.ledger().all().filter(|e| e.body.kind() == Kind::LessonRead).count();
    assert_eq!((marks(&home).await, recorded), (0, 1));
    home.post("/learn/showing", &[("read", "perhaps")]).await.refused();
}

/// At home no coach handed anything over: there is nothing to tick, and a form that says so all the same keeps its day and its sense.
#[tokio::test]
async fn a_mark_is_shown_and_hidden_without_losing_its_day() {
    let home = Home::new().await;
    home.page("/learn/body")
        .await
        .does_not_say("show-coach")
        .says("data-test=\"signs\"")
        .says("Rabbit: no mild sign is known");
    home.post("/learn/body", &[("show", "yes")]).await.kept();
    assert_eq!(marks(&home).await, 0, "who has read nothing shows nothing");
    home.post("/learn/body", &[("read", "yes")]).await.kept();
    let shown = async || -> Vec<(bool, Moment)> {
        home.story().await.everyones::<LessonRead>().map(|fact| (fact.part.shown, fact.at())).collect()
    };
    let first = shown().await;
    assert!(matches!(first.as_slice(), [(false, _)]), "{first:?}");
    for show in [true, false] {
        home.post("/learn/body", &[("show", if show { "yes" } else { "no" })]).await.kept();
        assert_eq!(shown().await, [(show, first[0].1)]);
    }
    home.post("/learn/body", &[("read", "no")]).await.kept();
    assert!(shown().await.is_empty());
}

#[tokio::test]
async fn who_has_not_said_who_they_are_reads_and_marks_nothing() {
    let home = Home::new().await;
    let ask = |request: axum::http::request::Builder, body: &'static str| {
        let request = request.header(header::HOST, "localhost");
        let request = request.header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
        home.app.clone().oneshot(request.body(Body::from(body)).unwrap())
    };
    let read = ask(Request::get("/learn/showing"), "").await.unwrap();
    let text = axum::body::to_bytes(read.into_body(), 1 << 20).await.unwrap();
    let text = String::from_utf8_lossy(&text);
    assert!(text.contains("/who?back=/learn/showing") && !text.contains("I have read it"), "{text}");
    let refused = ask(Request::post("/learn/showing"), "read=yes").await.unwrap();
    assert_eq!((refused.status(), marks(&home).await), (StatusCode::UNPROCESSABLE_ENTITY, 0));
}

#[tokio::test]
async fn the_animal_is_named_where_it_is_known() {
    let home = Home::new().await;
    home.page("/learn/wants").await.says("Finding out what Pip wants");
    home.post("/people/animal/new", &[("name", "Mo"), ("species", "cat")]).await.kept();
    home.page("/learn/wants").await.says("Finding out what your animal wants").does_not_say("what Pip wants");
    let of_pip = format!("/learn/wants?animal={}", home.animal);
    // The lesson after it is about Pip as well.
    let next = format!("/learn/first-words?animal={}\" rel=\"next\"", home.animal);
    home.page(&of_pip).await.says("Finding out what Pip wants").says(&next);
    home.page("/learn/wants?animal=nobody").await.says("what your animal wants");
    let back = home.post(&of_pip, &[("read", "yes")]).await;
    assert_eq!(back.kept().to, of_pip);
}

#[tokio::test]
async fn the_booklet_holds_every_lesson_and_the_answers_at_its_end() {
    let home = Home::new().await;
    let page = home.page("/learn/booklet").await;
    assert_eq!(page.text.matches("<article class=\"booklet\"").count(), lessons().len());
    assert_eq!(page.text.matches("<svg xmlns").count(), lessons().len());
    let (before, answers) = page.text.split_once("id=\"answers\"").expect("answers stand apart");
    for lesson in lessons() {
        for asked in told(&Locale::ENGLISH, lesson, Some("Pip")).questions {
            for answer in asked.answers {
                assert!(before.contains(&in_html(&answer.says)) && !before.contains(&in_html(&answer.why)));
                assert!(answers.contains(&in_html(&answer.why)), "{}", answer.why);
            }
        }
    }
}

#[tokio::test]
async fn today_offers_the_lesson_of_the_next_step_until_it_was_read() {
    let home = Home::new().await;
    let today = format!("/a/{}/today", home.animal);
    let offered = async || {
        let text = home.page(&today).await.text;
        let links: Vec<String> = text
            .split("<a class=\"link lesson\" href=\"")
            .skip(1)
            .map(|rest| rest.split(['?', '"']).next().unwrap().to_owned())
            .collect();
        assert!(links.len() < 2, "one at most: {links:?}");
        links.first().cloned()
    };
    let first = offered().await.expect("a lesson for the first step");
    home.post(&first, &[("read", "yes")]).await.kept();
    assert_ne!(offered().await, Some(first.clone()), "what was read is not offered again");
    home.post(&first, &[("read", "no")]).await.kept();
    assert_eq!(offered().await, Some(first));
}

#[tokio::test]
async fn the_board_offers_its_lesson_before_the_first_session() {
    let home = Home::new().await;
    let board = format!("/a/{}/board", home.animal);
    home.page(&board).await.says("href=\"/learn/showing?animal=");
    for read in ["showing", "coming-going", "body", "brushed", "own-way"] {
        home.post(&format!("/learn/{read}"), &[("read", "yes")]).await.kept();
    }
    home.page(&board).await.does_not_say("/learn/showing?animal=").does_not_say("link lesson");
}

#[tokio::test]
async fn first_times_that_lie_ahead_of_whoever_holds_the_device_bring_their_lesson_with_the_board() {
    let home = Home::new().await;
    let board = format!("/api/board/{}", home.animal);
    let ahead = async || -> Vec<String> {
        let now: serde_json::Value = serde_json::from_str(&home.page(&board).await.text).unwrap();
        let lessons = now["lessons"].as_array().unwrap();
        for lesson in lessons {
            // The short form is whole: it is read offline, too.
            assert!(lesson["steps"].as_array().unwrap().len() >= 3 && !lesson["care"].as_str().unwrap().is_empty());
            assert!(lesson["address"].as_str().unwrap().starts_with("/learn/"), "{lesson}");
        }
        lessons.iter().map(|lesson| lesson["at"].as_str().unwrap().to_owned()).collect()
    };
    assert_eq!(ahead().await, ["session", "invitation", "not_now"]);
    home.post("/learn/inviting", &[("read", "yes")]).await.kept();
    assert_eq!(ahead().await, ["session", "not_now"], "what was read does not open");
    let me = *home.story().await.people().keys().next().unwrap();
    let append = async |person, body: Content| {
        let now: Moment = "2026-03-02T11:00:00Z".parse().unwrap();
        let event = Event {
            id: EventId(Uuid::now_v7()),
            home: home.home,
            animal: Some(home.animal),
            person: Some(person),
            happened_at: now,
            zone: Zone::utc(),
            recorded_at: now,
            source: Source::Tap,
            body,
        };
        home.state.store.append(vec![event]).await.unwrap();
    };
    let session =
        || SessionStart { session: SessionId(Uuid::now_v7()), purpose: Purpose::Showing, words: vec![], room: None };
    append(PersonId(Uuid::now_v7()), session().into()).await;
    assert_eq!(ahead().await, ["session", "not_now"], "somebody else's first session is not one's own");
    append(me, session().into()).await;
    assert_eq!(ahead().await, ["not_now"]);
}

#[tokio::test]
async fn lessons_are_read_in_the_readers_language() {
    let home = Home::new().await;
    for language in Language::ALL {
        let request = Request::get("/learn/showing")
            .header(header::HOST, "localhost")
            .header(header::COOKIE, format!("sayso_language={}", language.tag()));
        let answer = home.app.clone().oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
        let text = axum::body::to_bytes(answer.into_body(), 1 << 20).await.unwrap();
        let text = String::from_utf8_lossy(&text).into_owned();
        let told = told(&Locale::of(language), &lessons()[5], Some("Pip"));
        assert!(text.contains(&in_html(&told.steps[0])) && text.contains(&in_html(&told.title)), "{language:?}");
    }
}
