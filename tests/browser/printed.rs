//! Sheets as the browser prints them: one page where one is enough.

use crate::harness::{Browser, Server, demo_dir};
use crate::phone::reads;
use serde_json::json;

/// A desk: who prints, prints from there.
const DESK: (u32, u32) = (1280, 850);

/// How many pages the browser prints of what it shows, on paper of this size in inches.
async fn pages(browser: &Browser, (width, height): (f64, f64)) -> usize {
    let asked = json!({ "paperWidth": width, "paperHeight": height, "preferCSSPageSize": false });
    let printed = browser.devtools("Page.printToPDF", asked).await["data"].clone();
    let bytes = "return Array.from(atob(arguments[0]), (c) => c.charCodeAt(0))";
    let bytes: Vec<u8> = serde_json::from_value(browser.page.execute(bytes, vec![printed]).await.unwrap()).unwrap();
    lopdf::Document::load_mem(&bytes).unwrap().get_pages().len()
}

#[tokio::test(flavor = "multi_thread")]
async fn the_rules_of_the_demo_take_one_page_in_every_language() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(DESK).await;
    let mut longer = Vec::new();
    for language in ["en", "de", "es", "fr", "pt"] {
        reads(&browser, &server, language).await;
        browser.goto(&server.url("/sheets/rules")).await;
        browser.css(".print-sheet").await;
        browser.picture(&format!("printed-rules-{language}")).await;
        for (paper, size) in [("A4", (8.27, 11.69)), ("Letter", (8.5, 11.0))] {
            match pages(&browser, size).await {
                1 => {}
                more => longer.push(format!("{language}, {paper}: {more} pages")),
            }
        }
    }
    browser.close().await;
    assert!(longer.is_empty(), "{longer:?}");
}
