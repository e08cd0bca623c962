//! What has the focus is seen: no bar that stays on the screen lies over it (WCAG 2.2, 2.4.11), in usual and in large letters.

use crate::every_page::{every_page, prepared};
use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use serde_json::Value;

/// Controls that lie under a bar once they have the focus, going down the page and up again.
const UNDER: &str = "
const seen = (e) => e.checkVisibility({ visibilityProperty: true }) && e.getBoundingClientRect().width > 1;
const all = [...document.querySelectorAll('main :is(a[href], button, summary, select, textarea, input:not([type=hidden]))')].filter((e) => seen(e) && !e.disabled);
const out = [];
for (const order of [all, [...all].reverse()]) {
  for (const e of order) {
    e.focus();
    if (document.activeElement !== e) continue;
    const r = e.getBoundingClientRect();
    if (r.height > innerHeight / 2) continue;
    const hidden = [r.top + 2, r.bottom - 2].map((y) => {
      const over = document.elementFromPoint(Math.min(Math.max(r.left + r.width / 2, 1), innerWidth - 1), y);
      return over?.closest('nav.thumb, header.top')?.className ?? (y < 0 || y > innerHeight ? 'the edge' : '');
    });
    // Of what is written in several lines the browser brings the line of the caret into view: it is seen in part.
    const faulty = e.matches('textarea') ? hidden.every(Boolean) : hidden.some(Boolean);
    if (faulty) out.push(`${e.outerHTML.slice(0, 90)} at ${Math.round(r.top)} to ${Math.round(r.bottom)} of ${innerHeight} is under ${hidden}`);
  }
}
return [...new Set(out)];";

#[tokio::test(flavor = "multi_thread")]
async fn no_bar_lies_over_what_has_the_focus() {
    let dir = demo_dir();
    let about = prepared(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let pages = every_page(&browser, &server, &about).await;
    let mut wrong = Vec::new();
    for path in &pages {
        for letters in ["100%", "200%"] {
            browser.goto(&server.url(path)).await;
            browser.css("main").await;
            let larger = format!("document.documentElement.style.fontSize = '{letters}'");
            browser.page.execute(&larger, vec![]).await.unwrap();
            tokio::time::sleep(std::time::Duration::from_millis(200)).await;
            let found = browser.page.execute(UNDER, vec![]).await.unwrap();
            let found = found.as_array().into_iter().flatten().filter_map(Value::as_str);
            wrong.extend(found.map(|f| format!("{path} ({letters}): {f}")));
        }
    }
    browser.close().await;
    assert!(pages.len() > 30, "{} pages", pages.len());
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_asked_for_has_the_focus_once_it_is_answered() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for (page, tick) in [("checks/new", "[name=words]:not(:checked)"), ("designs/new", "[name=words]:not(:checked)")] {
        browser.goto(&server.url(&format!("/a/{who}/{page}"))).await;
        for _ in 0..2 {
            browser.press(tick).await;
        }
        let ask = "button[value=count]";
        if page == "designs/new" {
            browser.press("[name=question]").await;
        }
        browser.follow(ask).await;
        let focus = browser.page.execute("return document.activeElement?.id", vec![]).await.unwrap();
        assert_eq!(focus, "counted", "{page}");
        let seen = "const r = document.activeElement.getBoundingClientRect(); return r.top >= 0 && r.top < innerHeight";
        assert_eq!(browser.page.execute(seen, vec![]).await.unwrap(), true, "{page}: it is seen");
        browser.picture(&format!("counted-{}", page.split('/').next().unwrap())).await;
    }
    browser.close().await;
}
