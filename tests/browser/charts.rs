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

/// What does not keep its place in letters twice as large: a figure beside its name where there is no room for both, days that
/// lie over each other, charts side by side, a word of the map in two pieces.
const CROWDED: &str = r"
const out = [];
const box = (e) => e.getBoundingClientRect();
for (const d of document.querySelectorAll('dl.facts')) {
  const [dt, dd] = [d.querySelector('dt'), d.querySelector('dd')].map(box);
  if (dd.top < dt.bottom - 1) out.push(`${d.querySelector('dt').textContent} stands beside its figure, ${dd.width} px wide`);
}
const days = [...document.querySelectorAll('.calendar td a')];
for (const a of days) {
  if (a.scrollHeight > a.clientHeight + 1) out.push(`a day is cut: ${a.scrollHeight} of ${a.clientHeight}`);
  const under = days.find((b) => Math.abs(box(b).left - box(a).left) < 2 && box(b).top > box(a).top && box(b).top < box(a).bottom - 1);
  if (under) out.push('a day lies over the one below it');
}
const minis = [...document.querySelectorAll('.mini')].map(box);
if (minis.some((m, i) => i > 0 && m.top < minis[i - 1].bottom - 1)) out.push('charts stand side by side');
for (const says of document.querySelectorAll('table.map strong')) {
  for (const word of says.textContent.matchAll(/\S+/g)) {
    const range = document.createRange();
    range.setStart(says.firstChild, word.index);
    range.setEnd(says.firstChild, word.index + word[0].length);
    if (range.getClientRects().length > 1) out.push(`${word[0]} is broken on the map`);
  }
}
return [out, document.querySelectorAll('dl.facts').length + days.length, document.scrollingElement.scrollWidth];";

#[tokio::test(flavor = "multi_thread")]
async fn in_large_letters_there_is_one_column_and_nothing_lies_over_anything() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for language in ["en", "de"] {
        for page in ["words", "days", "evidence"] {
            in_language(&browser, &server, language, &format!("/a/{who}/{page}")).await;
            browser.css("main h1").await;
            let small = browser.page.execute(CROWDED, vec![]).await.unwrap();
            assert_eq!(small[2], json!(PHONE.0), "{page} in {language}");
            browser.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
            let large = browser.page.execute(CROWDED, vec![]).await.unwrap();
            browser.picture(&format!("large-{page}-{language}")).await;
            assert_eq!((&large[0], &large[2]), (&json!([]), &json!(PHONE.0)), "{page} in {language}");
            assert!(page == "evidence" || large[1].as_u64() > Some(5), "{page} holds what is looked at");
            if page == "words" {
                assert_ne!(small[0], json!([]), "in small letters there is room for both");
            }
        }
    }
    browser.close().await;
}
