//! A notebook at home is linked to its home on a server, on a phone: by the code, with a yes, until it is unlinked.

use crate::accessibility;
use crate::harness::{Browser, PHONE, Server, demo_dir};
use crate::hosted::Hosted;
use fantoccini::Locator;
use serde_json::json;
use std::time::Duration;

/// Asks for the page again until it says so.
async fn says(browser: &Browser, at: &str, test: &str, text: &str) {
    for _ in 0..120 {
        browser.goto(at).await;
        if let Ok(found) = browser.page.find(Locator::Css(&format!("[data-test={test}]"))).await
            && found.text().await.unwrap_or_default().contains(text)
        {
            return;
        }
        tokio::time::sleep(Duration::from_millis(500)).await;
    }
    panic!("{test} never said {text:?}: {}", browser.css("main").await.text().await.unwrap());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_is_linked_by_a_code_goes_after_a_yes_and_is_unlinked() {
    let (hosted, dir) = (Hosted::start().await, demo_dir());
    let (home, link) = hosted.invitation().await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    // On the server: the keeper joins, and makes a code.
    browser.goto(&hosted.url(&link)).await;
    browser.css("[name=name]").await.send_keys("Ilda").await.unwrap();
    browser.follow("[data-test=join]").await;
    browser.goto(&hosted.url("/sharing")).await;
    browser.picture("linked-1-none").await;
    browser.follow("[data-test=make-code]").await;
    browser.picture("linked-2-before").await;
    browser.follow("[data-test=make]").await;
    browser.picture("linked-3-code").await;
    let text = browser.text("link").await;
    assert!(text.contains("/linked#"), "{text}");

    // At home, by hand: from the people of the home to the page, the text pasted.
    let at = server.url("/linked");
    browser.goto(&server.url("/people")).await;
    browser.follow("[data-test=linked]").await;
    browser.picture("linked-4-begin").await;
    browser.css("#link").await.send_keys("https://sayso.example").await.unwrap();
    browser.follow("[data-test=begin]").await;
    let wrong = browser.css("main").await.text().await.unwrap();
    assert!(wrong.contains("is not what a server shows"), "{wrong}");
    let fill = "document.querySelector('[name=link]').value = arguments[0]";
    browser.page.execute(fill, vec![json!(text)]).await.unwrap();
    browser.follow("[data-test=begin]").await;
    assert!(browser.text("not-yet").await.contains("Nothing written here has been sent yet"));
    browser.picture("linked-5-not-yet").await;
    assert!(hosted.story(home).await.ledger().is_empty(), "nothing went before the yes");
    browser.press("[name=pictures]").await;
    browser.follow("[data-test=yes]").await;

    // It goes by itself, and the page tells when the two agree.
    says(&browser, &at, "agreed", "last agreed").await;
    says(&browser, &at, "waits", "Nothing waits").await;
    browser.picture("linked-6-agreed").await;
    assert!(browser.text("coaches").await.contains("No coach"));
    let ticked = browser.css("[name=pictures]").await.prop("checked").await.unwrap();
    assert_eq!(ticked.as_deref(), Some("true"));
    let (_, lived) = crate::harness::story(dir.path()).await;
    assert_eq!(hosted.story(home).await.ledger().all().count(), lived.ledger().all().count());

    for (url, path) in [
        (at.clone(), "/linked"),
        (hosted.url("/sharing/notebooks"), "/sharing/notebooks"),
        (hosted.url("/linked"), "the code's page"),
    ] {
        assert_eq!(accessibility::faults(&browser, &url, path).await, Vec::<String>::new());
    }
    browser.picture("linked-8-listed").await;
    browser.goto(&at).await;

    // Unlinked: both pages say so.
    browser.follow("[data-test=unlink]").await;
    assert!(browser.text("ended").await.contains("unlinked"));
    assert!(browser.page.find(Locator::Css("[data-test=not-told]")).await.is_err(), "the server was told");
    browser.picture("linked-7-unlinked").await;
    browser.goto(&hosted.url("/sharing/notebooks")).await;
    browser.find("no-notebook").await;
    browser.goto(&at).await;
    browser.find("begin").await;
    browser.close().await;
}
