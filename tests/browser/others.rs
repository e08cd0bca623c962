//! Others on a phone, in English and in German: nothing scrolls sideways, and the drawing shows others and where this animal is.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use serde_json::json;

const INVENTED: &str = include_str!("../norms/invented.sayso-norms");

/// How far the page scrolls sideways; in each drawing whether there is a band, and whether a name leaves the drawing or lies over
/// an axis' numbers.
const DRAWN: &str = r"
const box = (e) => e.getBoundingClientRect();
const charts = [...document.querySelectorAll('[data-test=others-word] figure.chart svg')];
const out = [];
for (const svg of charts) {
  if (!svg.querySelector('.band')) out.push('no band');
  if (!svg.querySelector('line.level')) out.push('no mark');
  for (const text of svg.querySelectorAll('text')) {
    if (box(text).left < box(svg).left - 1 || box(text).right > box(svg).right + 1) out.push(`outside: ${text.textContent}`);
  }
}
return [document.documentElement.scrollWidth - document.documentElement.clientWidth, charts.length, out];";

#[tokio::test(flavor = "multi_thread")]
async fn others_stand_beside_each_word_on_a_phone() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/others"))).await;
    assert!(browser.text("no-release").await.contains("sayso norms import"));
    browser.picture("others-none").await;
    std::fs::write(dir.path().join(sayso_notebook::CURRENT_NORMS), INVENTED).unwrap();
    for (language, said) in [("en", "homes with dogs"), ("de", "Haushalten mit Hunden")] {
        let set = "document.cookie = `sayso_language=${arguments[0]};path=/`";
        browser.page.execute(set, vec![json!(language)]).await.unwrap();
        // From where a person finds it.
        browser.goto(&server.url(&format!("/a/{who}/evidence"))).await;
        browser.follow(&format!("main a[href='/a/{who}/others']")).await;
        assert!(browser.text("half").await.contains(said));
        let drawn = browser.page.execute(DRAWN, vec![]).await.unwrap();
        browser.picture(&format!("others-{language}")).await;
        assert_eq!((&drawn[0], &drawn[2]), (&json!(0), &json!([])), "{language}");
        assert!(drawn[1].as_u64() > Some(1), "{drawn}");
        assert!(!browser.text("source").await.is_empty());
    }
    browser.close().await;
}
