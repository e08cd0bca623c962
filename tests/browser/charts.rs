//! Evidence, Days and Log on a phone, in English, in German and in the stand-in: the picture comes first, nothing scrolls
//! sideways, and the page is short until somebody asks for more.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use serde_json::json;

/// As narrow as a phone gets.
const NARROW: (u32, u32) = (360, 640);

async fn number(browser: &Browser, script: &str) -> f64 {
    browser.page.execute(script, vec![]).await.unwrap().as_f64().unwrap()
}

async fn in_language(browser: &Browser, server: &Server, language: &str, path: &str) {
    browser.goto(&server.url("/methods")).await;
    let set = "document.cookie = `sayso_language=${arguments[0]};path=/`";
    browser.page.execute(set, vec![json!(language)]).await.unwrap();
    browser.goto(&server.url(path)).await;
}

const HEIGHT: &str = "return document.documentElement.scrollHeight";
const SIDEWAYS: &str = "return document.documentElement.scrollWidth - document.documentElement.clientWidth";

#[tokio::test(flavor = "multi_thread")]
async fn pictures_come_first_and_pages_are_short() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let words = story.words_of(who).len();
    let server = Server::start(dir.path(), 0);
    for size in [PHONE, NARROW] {
        let browser = Browser::open(size).await;
        for language in ["en", "de", "pseudo"] {
            for (name, path) in [
                ("evidence", format!("/a/{who}/evidence")),
                ("days", format!("/a/{who}/days")),
                ("log", format!("/a/{who}/log")),
                ("patterns", format!("/a/{who}/patterns")),
                ("agreement", "/agreement".to_owned()),
            ] {
                in_language(&browser, &server, language, &path).await;
                browser.css("main h1").await;
                let sideways = number(&browser, SIDEWAYS).await;
                assert!(sideways <= 0.0, "{name} in {language} at {size:?} scrolls {sideways} px sideways");
                browser.picture(&format!("{name}-{language}-{}", size.0)).await;
            }

            in_language(&browser, &server, language, &format!("/a/{who}/evidence")).await;
            let rows = number(&browser, "return document.querySelectorAll('[data-test=overview-word]').length").await;
            assert_eq!(rows as usize, words, "a row a word in {language}");
            let top = "return document.querySelector('[data-test=overview]').getBoundingClientRect().top";
            let top = number(&browser, top).await;
            assert!(top < 200.0, "the picture opens the page in {language}, not {top} px down");

            in_language(&browser, &server, language, &format!("/a/{who}/days")).await;
            browser.css("[data-test=calendar] td a").await;
            let height = number(&browser, HEIGHT).await;
            println!("days in {language} at {size:?}: {height} px");
            assert!(height <= 3.0 * 844.0, "Days in {language} at {size:?} is {height} px high, its details folded");
        }
        browser.close().await;
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_row_leads_to_the_word_and_a_day_to_its_log() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/evidence"))).await;
    let says = browser.css("[data-test=overview-word] .says").await.text().await.unwrap();
    browser.follow("[data-test=overview-word]").await;
    assert!(browser.css("main h1").await.text().await.unwrap().contains(&says));

    browser.goto(&server.url(&format!("/a/{who}/days"))).await;
    browser.follow("[data-test=calendar] td a").await;
    let address = browser.page.current_url().await.unwrap();
    assert!(address.path().ends_with("/log") && address.query().unwrap().starts_with("day="), "{address}");
    browser.find("log-filtered").await;
    browser.close().await;
}
