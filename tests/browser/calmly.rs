//! After a strong sign nothing that was pressed is urged: it may still be given.

use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::session::{at_board, run, with_swaps};
use serde_json::json;

/// What is asked, and whether a button of it comes first.
const ASKS: &str = "const panel = document.querySelector('[data-part=panel]');
return [panel.querySelector('.tell').innerText, panel.querySelectorAll('button.primary').length];";

#[tokio::test(flavor = "multi_thread")]
async fn after_a_growl_neither_a_drawn_swap_nor_an_answer_is_urged() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    at_board(&browser, &server, with_swaps(&before)).await;
    browser.tap("mode-day").await;
    let words = run(
        &browser,
        "return [...document.querySelectorAll('.pad[data-test^=pad-]:not(:disabled)')].map((p) => p.dataset.test)",
    )
    .await;
    let words: Vec<String> = serde_json::from_value(words).unwrap();
    let mut drawn = false;
    for pad in &words {
        browser.tap(pad).await;
        browser
            .until(
                "what is asked",
                "return Boolean(document.querySelector('[data-test=swap-give], [data-test^=answer-]'))",
            )
            .await;
        let asks = run(&browser, "return Boolean(document.querySelector('[data-test=swap-give]'))").await;
        if asks == json!(true) {
            browser.tap("swap-give").await;
            browser.find("swap-given").await;
            drawn = true;
            break;
        }
        browser.tap("undo-last").await;
    }
    assert!(drawn, "a word of {words:?} has a partner");
    assert_eq!(run(&browser, ASKS).await[1], json!(1), "before, it is given first of all");
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    browser.tap("stop-here-done").await;
    browser
        .until("it is not urged", "return document.querySelector('[data-part=panel]').innerText.includes('No hurry')")
        .await;
    browser.picture("calmly-drawn").await;
    assert_eq!(run(&browser, ASKS).await[1], json!(0));
    // It may still be given, and is noted.
    browser.tap("swap-given").await;
    browser.until("given", "return !document.querySelector('[data-test=swap-given]')").await;
    browser.all_sent().await;
    browser.close().await;
}
