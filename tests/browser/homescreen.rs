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

#[tokio::test(flavor = "multi_thread")]
async fn any_other_page_says_what_works_and_what_waits_while_nothing_answers() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let (today, board, log) = (format!("/a/{who}/today"), format!("/a/{who}/board"), format!("/a/{who}/log"));
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/glossary")).await;
    browser.page.execute("document.cookie = 'sayso_language=de; path=/'", vec![]).await.unwrap();
    browser.goto(&server.url(&board)).await;
    browser.until("the board ready", "return document.querySelector('#board').dataset.offline === 'ready'").await;
    kept(&browser, &board).await;
    kept(&browser, "/offline").await;
    browser
        .until(
            "all saved",
            "return document.querySelector('[data-test=outbox-text]').textContent === 'Alles gespeichert'",
        )
        .await;

    server.kill();
    browser.goto(&server.url(&log)).await;
    let said = browser.text("offline").await;
    assert!(said.contains("Inzwischen nimmt das Brett Eingaben an") && said.contains("Hier wartet nichts"), "{said}");
    browser.picture("offline").await;
    // Only what this device kept is offered: Today was never opened here.
    let links = "return [...document.querySelectorAll('#offline a[data-kept]')].map((a) => a.pathname)";
    browser.until("one link", &format!("{links}.length === 1")).await;
    assert_eq!(browser.page.execute(links, vec![]).await.unwrap(), json!([board]));

    // The Board does not claim what nobody confirmed, and counts what waits.
    browser.goto(&server.url(&board)).await;
    browser.until("the board", "return document.querySelector('#board').dataset.ready === 'yes'").await;
    let told = "return document.querySelector('[data-test=outbox-text]').textContent";
    browser.until("no answer", &format!("{told}.includes('Keine Antwort')")).await;
    let told_now = browser.text("outbox-text").await;
    assert!(told_now.contains("Alles bisher Getippte ist übergeben"), "{told_now}");
    browser.tap("mode-day").await;
    browser.press("[data-part=pads] .pad:not([disabled])").await;
    browser.until("one waits", &format!("{told}.includes('1 sicher hier')")).await;
    browser.picture("board-offline").await;
    browser.goto(&server.url("/people")).await;
    browser
        .until(
            "it says so",
            "return document.querySelector('[data-test=waiting]').textContent.startsWith('1 Eingabe wartet')",
        )
        .await;

    // Once it answers, the page itself comes.
    server.restart();
    browser.goto(&server.url(&log)).await;
    browser.css("h1").await;
    assert!(browser.page.find(fantoccini::Locator::Css("#offline")).await.is_err());
    browser.goto(&server.url(&today)).await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_form_that_cannot_be_sent_says_so_and_keeps_what_was_typed() {
    let dir = demo_dir();
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let home = server.url("/people/home");
    browser.goto(&home).await;
    let name = browser.css("[name=name]").await;
    name.clear().await.unwrap();
    name.send_keys("The yellow house").await.unwrap();
    server.kill();
    browser.press("main form .primary").await;
    browser.until("told so", "return document.querySelector('[data-offline]')?.hidden === false").await;
    browser.picture("form-offline").await;
    let typed = "return document.querySelector('[name=name]').value";
    assert_eq!(browser.page.execute(typed, vec![]).await.unwrap(), json!("The yellow house"));

    server.restart();
    browser.follow("main form .primary").await;
    browser.goto(&home).await;
    assert_eq!(browser.page.execute(typed, vec![]).await.unwrap(), json!("The yellow house"));
    browser.close().await;
}
