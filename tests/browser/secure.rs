//! Over HTTPS with the home's own certificate: what plain HTTP on a phone cannot do.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, plain_word, story, taps};
use sayso_model::{Body, Press, PressedBy};

#[tokio::test(flavor = "multi_thread")]
async fn a_phone_that_trusts_the_home_reloads_the_board_while_the_notebook_is_gone() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let who = animal(&before);
    let pad = format!("pad-{}", plain_word(&before, who).says);
    let mut server = Server::start_with(dir.path(), 0, &["--lan", "--secure"]);
    let code = server.said("Pairing code for a phone (good for 15 minutes): ").await;
    let host = gethostname::gethostname().into_string().unwrap().to_lowercase();
    let host = host.split('.').next().unwrap().to_owned();
    let url = |path: &str| format!("https://{host}.local:{}{path}", server.port);
    let browser = Browser::trusting(PHONE, &dir.path().join("home-authority.pem")).await;
    browser.goto(&url("/pair")).await;
    browser.css("#code").await.send_keys(&code).await.unwrap();
    browser.follow("main form button").await;
    browser.goto(&url(&format!("/a/{who}/board"))).await;
    browser.until("a page that came safely", "return isSecureContext && !!navigator.mediaDevices").await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.tap(&pad).await;
    browser.until("a kept page", "return caches.match(location.href).then((kept) => !!kept)").await;
    server.kill();
    browser.page.refresh().await.unwrap();
    browser.until("the board", "return !!document.querySelector('[data-state=\"session\"]')").await;
    browser.tap(&pad).await;
    server.restart();
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    browser.all_sent().await;
    browser.close().await;
    server.kill();
    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let presses = new.iter().filter(|e| matches!(e.body, Body::Press(Press { by: PressedBy::Person, .. }))).count();
    let deliveries = new.iter().filter(|e| matches!(e.body, Body::Delivery(_))).count();
    assert_eq!((presses, deliveries), (1, 1), "the tap made while it was gone answers the one before");
}
