//! The notebook on the phone's home screen: it can be put there, and opens while nothing answers.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use serde_json::json;

/// Waits until this device keeps a page.
async fn kept(browser: &Browser, path: &str) {
    let script =
        format!("return caches.open('sayso-pad-1').then((c) => c.match('{path}')).then((found) => Boolean(found))");
    browser.until(&format!("{path} kept"), &script).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn it_can_be_put_on_the_home_screen_and_opens_there_while_nothing_answers() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let (today, board) = (format!("/a/{who}/today"), format!("/a/{who}/board"));
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&today)).await;
    kept(&browser, &today).await;
    let told = browser.devtools("Page.getInstallabilityErrors", json!({})).await;
    assert_eq!(told["installabilityErrors"], json!([]), "{told}");
    let manifest = browser.devtools("Page.getAppManifest", json!({})).await;
    assert_eq!(manifest["errors"], json!([]), "{manifest}");
    assert!(manifest["url"].as_str().unwrap().ends_with("/manifest.webmanifest"), "{manifest}");

    server.kill();
    browser.goto(&server.url("/last")).await;
    let said = browser.text("earlier").await;
    assert!(said.contains("gives no answer") && said.contains(':'), "{said}");
    assert!(browser.page.current_url().await.unwrap().path().ends_with("/today"));
    browser.picture("today-earlier").await;

    // Once it answers again, nothing says so any more; the page is in the person's language.
    server.restart();
    browser.page.execute("document.cookie = 'sayso_language=de; path=/'", vec![]).await.unwrap();
    browser.goto(&server.url("/last")).await;
    browser.css("h1").await;
    assert!(browser.page.find(fantoccini::Locator::Css("[data-test=earlier]")).await.is_err());
    // The board was open last, and takes taps without an answer.
    browser.goto(&server.url(&board)).await;
    browser.until("the board ready", "return document.querySelector('#board').dataset.offline === 'ready'").await;
    kept(&browser, &board).await;
    server.kill();
    browser.goto(&server.url("/last")).await;
    browser.until("the board", "return document.querySelector('#board').dataset.ready === 'yes'").await;
    assert!(browser.page.current_url().await.unwrap().path().ends_with("/board"));
    browser.goto(&server.url(&today)).await;
    let said = browser.text("earlier").await;
    assert!(said.contains("antwortet nicht"), "{said}");
    browser.close().await;
}
