//! A lesson as a person reads it: answers unfold by a tap, without a script too, and it stays to be read while nothing
//! answers.

use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use sayso_model::LessonRead;
use serde_json::json;

/// An answer of a question: the right one, or another.
fn answer(question: u8, right: &str) -> String {
    format!("[data-test=question-{question}] details[data-right={right}]")
}

/// Opens a lesson from the list, answers both questions and marks it as read.
async fn reads(browser: &Browser, lesson: &str) {
    browser.press(&format!("[data-test=lesson-{lesson}] a")).await;
    browser.css(".drawing svg").await;
    for (question, right) in [(1, "no"), (1, "yes"), (2, "yes")] {
        let answer = answer(question, right);
        browser.press(&format!("{answer} > summary")).await;
        let why = browser.css(&format!("{answer}[open] > p")).await.text().await.unwrap();
        assert!(why.len() > 20, "{why}");
        browser.picture(&format!("lesson-{lesson}-question-{question}-{right}")).await;
    }
    browser.tap("mark-read").await;
    let read = browser.text("read").await;
    assert!(read.starts_with("You read it on"), "{read}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lesson_is_read_answered_and_marked_with_and_without_scripts_and_offline() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/who?back=/learn")).await;
    browser.follow("main form button").await;
    browser.picture("lessons").await;
    browser.press("[data-test=lesson-showing] a").await;
    browser.css(".drawing svg").await;
    browser.picture("lesson-showing").await;
    browser.goto(&server.url("/learn")).await;
    // Of the answers to one question one is open at a time.
    browser.press("[data-test=lesson-inviting] a").await;
    for right in ["no", "yes"] {
        browser.press(&format!("{} > summary", answer(1, right))).await;
    }
    let open = "return document.querySelectorAll('[data-test=question-1] details[open]').length === 1";
    browser.until("one answer open", open).await;

    browser.goto(&server.url("/learn")).await;
    reads(&browser, "showing").await;
    // The booklet is kept with the first lesson, and with it all of them.
    let kept =
        "return caches.open('sayso-pad-1').then((c) => c.match('/learn/booklet')).then((found) => Boolean(found))";
    browser.until("the booklet kept", kept).await;
    server.kill();
    browser.goto(&server.url("/learn/showing")).await;
    let said = browser.text("earlier").await;
    assert!(said.contains("gives no answer"), "{said}");
    browser.goto(&server.url("/learn/stuck")).await;
    browser.css("article#stuck .drawing svg").await;
    assert!(browser.page.current_url().await.unwrap().as_str().ends_with("/learn/booklet#stuck"));
    server.restart();

    // None of our scripts arrives: neither from the notebook nor from what is kept.
    browser.devtools("Network.enable", json!({})).await;
    browser.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
    browser.devtools("Network.setBlockedURLs", json!({ "urls": ["*.js"] })).await;
    browser.goto(&server.url("/learn/booklet")).await;
    browser.css("article#not-now .drawing svg").await;
    let shown = "return document.querySelector('[data-print]').checkVisibility()";
    assert_eq!(browser.page.execute(shown, vec![]).await.unwrap(), json!(false), "a script would show it");
    browser.goto(&server.url("/learn")).await;
    reads(&browser, "not-now").await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    let read: Vec<String> = after.everyones::<LessonRead>().map(|f| f.part.lesson.to_string()).collect();
    assert_eq!((before.everyones::<LessonRead>().count(), read.len()), (0, 2), "{read:?}");
}
