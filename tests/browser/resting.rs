//! The Board at rest: it is whole on one screen, or the page scrolls as a page; nothing scrolls in a box of its own.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server};
use crate::phone::{NARROW, reads};
use crate::session::{at_board, looked};

/// What of a resting Board scrolls in itself, lies under something else, or cannot be reached by scrolling the page.
const BOXED: &str = "
const out = [];
const board = document.getElementById('board');
if (board.dataset.state !== 'idle') out.push('a session runs');
const seen = (e) => e.checkVisibility({ visibilityProperty: true });
for (const e of document.querySelectorAll('.stage, .stage *')) {
  const how = getComputedStyle(e).overflowY;
  if ((how === 'auto' || how === 'scroll') && seen(e) && e.scrollHeight > e.clientHeight + 1) out.push(`${e.className || e.tagName} scrolls in itself: ${e.scrollHeight} of ${e.clientHeight}`);
}
const dock = document.querySelector('.dock').getBoundingClientRect();
const pads = [...document.querySelectorAll('[data-part=pads] > *, .zones > *')].filter(seen);
for (const p of pads) if (p.getBoundingClientRect().bottom > dock.top + 1) out.push(`${p.textContent} lies under the dock`);
const all = [...document.querySelectorAll('.stage button, .stage a, .stage select, .stage .panel p')].filter(seen);
for (const e of all) {
  e.scrollIntoView({ block: 'center' });
  const r = e.getBoundingClientRect();
  const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
  if (r.height > 0 && !(hit && (e.contains(hit) || hit.contains(e)))) out.push(`${e.dataset.test || e.textContent} lies at ${r.top} to ${r.bottom} under ${hit?.outerHTML.slice(0, 60)}`);
}
scrollTo(0, 0);
// A round is drawn without the mat.
if ((pads.length === 0 && !document.querySelector('[data-part=mat]').hidden) || all.length < 6) out.push('nothing is there');
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn at_rest_the_board_is_on_one_screen_or_the_page_scrolls() {
    let browser = Browser::open(PHONE).await;
    let mut wrong = Vec::new();
    for (words, places) in [(2, (1, 3)), (7, (2, 4)), (7, (4, 2)), (15, (4, 4))] {
        for language in ["en", "de"] {
            let home = Home::new(words, Some(places)).await;
            let server = Server::start(home.dir.path(), 0);
            reads(&browser, &server, language).await;
            let mut look = async |when: &str| {
                for size in [NARROW, PHONE] {
                    browser.resize(size).await;
                    let picture = format!("resting-{language}-{words}-{}-{when}-{}", places.1, size.1);
                    let found = looked(&browser, &picture, BOXED).await;
                    wrong.extend(
                        found.iter().map(|f| format!("{words} in {places:?}, {language}, {when}, {size:?}: {f}")),
                    );
                }
            };
            at_board(&browser, &server, home.animal).await;
            for mode in ["invitation", "day", "catch", "showing"] {
                browser.tap(&format!("mode-{mode}")).await;
                look(mode).await;
            }
            browser.tap("start").await;
            browser.tap("act-joined").await;
            browser.tap("pad-apple").await;
            browser.tap("given").await;
            browser.tap("then-took").await;
            // It ends as planned, or by a growl.
            if language == "en" {
                browser.tap("act-end").await;
                browser.tap("end-done").await;
            } else {
                browser.tap("act-sign").await;
                browser.tap("sign-strong").await;
                browser.tap("stop-end").await;
            }
            browser.find("summary").await;
            look("over").await;
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
