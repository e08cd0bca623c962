//! What is asked in the five seconds of a wait is read whole, whatever stands on the mat.

use crate::every_page::unheld;
use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::phone::{NARROW, STAND_IN, reads};
use crate::session::{at_board, looked};
use serde_json::json;

/// Lines of what is asked that lie under the answers or out of sight, and whether there are lines at all.
const HIDDEN: &str = "
scrollTo(0, 0);
const asked = document.querySelector('[data-part=asked]');
const frame = asked.getBoundingClientRect();
const end = document.querySelector('nav.thumb').getBoundingClientRect().top;
const slots = asked.querySelector('.slots').getBoundingClientRect();
const out = [];
let lines = 0;
const walker = document.createTreeWalker(asked, NodeFilter.SHOW_TEXT);
for (let text = walker.nextNode(); text; text = walker.nextNode()) {
  const of = text.parentElement;
  if (!text.data.trim() || !of.checkVisibility({ visibilityProperty: true }) || of.closest('.unseen')) continue;
  const range = document.createRange();
  range.selectNodeContents(text);
  for (const line of range.getClientRects()) {
    if (line.width < 1) continue;
    lines += 1;
    if (line.top < frame.top - 1 || line.bottom > Math.min(frame.bottom, end) + 1) out.push(`out of sight: ${text.data}`);
    else if (!of.closest('.slots') && line.bottom > slots.top + 1 && line.top < slots.bottom) out.push(`under the answers: ${text.data}`);
  }
}
if (lines === 0) out.push('nothing is asked');
return out;";

/// Where the pads lie.
const PLACES: &str = "scrollTo(0, 0); return [...document.querySelectorAll('.pads > *')].map((p) => { const r = p.getBoundingClientRect(); return [r.left, r.top, r.width, r.height].map(Math.round); })";
/// Whether a round can be drawn.
const DRAWS: &str = "return Boolean(document.querySelector('[data-test=round-start]'))";

#[tokio::test(flavor = "multi_thread")]
async fn in_a_wait_no_line_of_what_is_asked_is_hidden() {
    let browser = Browser::open(PHONE).await;
    let (mut wrong, mut waits) = (Vec::new(), 0);
    for size in [PHONE, (360, 800), (375, 667), NARROW] {
        browser.resize(size).await;
        for language in ["en", "de"] {
            let dir = demo_dir();
            let (_, story) = story(dir.path()).await;
            unheld(dir.path()).await;
            let server = Server::start(dir.path(), 0);
            reads(&browser, &server, language).await;
            // So low a screen holds up to nine words.
            let fits = |animal| size != NARROW || story.words_of(animal).len() <= 9;
            for (animal, card) in story.animals().into_iter().filter(|(animal, _)| fits(*animal)) {
                let mut look = async |when: &str| {
                    let picture = format!("asked-{language}-{}-{when}-{}x{}", card.name, size.0, size.1);
                    let found = looked(&browser, &picture, HIDDEN).await;
                    wrong.extend(found.iter().map(|f| format!("{language}, {}, {when}, {size:?}: {f}", card.name)));
                };
                at_board(&browser, &server, animal).await;
                browser.tap("mode-showing").await;
                browser.tap("start").await;
                browser.tap("act-joined").await;
                browser.until("joined", "return document.querySelector('[data-test=act-joined]').disabled").await;
                let places = browser.page.execute(PLACES, vec![]).await.unwrap();
                browser.tap("mode-invitation").await;
                browser.until("drawn", "return document.getElementById('board').dataset.mode === 'invitation'").await;
                if browser.page.execute(DRAWS, vec![]).await.unwrap() != json!(true) {
                    continue;
                }
                browser.tap("round-start").await;
                browser.tap("offer").await;
                look("the wait").await;
                browser.until("the wait is over", "return Boolean(document.querySelector('.slots .later.now'))").await;
                look("the wait is over").await;
                assert_eq!(
                    browser.page.execute(PLACES, vec![]).await.unwrap(),
                    places,
                    "a pad moved: {language}, {size:?}"
                );
                browser.tap("nothing").await;
                look("show it").await;
                browser.tap("invitation-show").await;
                look("give it").await;
                browser.tap("invitation-given").await;
                look("given").await;
                browser.tap("took-yes").await;
                waits += 1;
            }
        }
    }
    browser.close().await;
    assert!(waits >= 6, "{waits} waits");
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Of pads at least 90 px high and as narrow as five a row make them: how many there are, and those that do not say what a tap
/// does, whole.
const SILENT: &str = "
const high = [...document.querySelectorAll('.pad[data-state=idle]')].filter((p) => p.offsetHeight >= 90);
const silent = high.filter((p) => {
  const [does, on] = [p.querySelector('.does'), p.getBoundingClientRect()];
  const at = does.getBoundingClientRect();
  return at.height === 0 || does.scrollWidth > does.clientWidth + 1 || at.bottom > on.bottom || !does.textContent;
});
return [high.length, silent.map((p) => p.textContent)];";

#[tokio::test(flavor = "multi_thread")]
async fn a_pad_with_room_for_a_line_says_what_a_tap_does() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    unheld(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut all = 0;
    for language in ["en", "de", "fr"] {
        reads(&browser, &server, language).await;
        for (animal, card) in story.animals() {
            at_board(&browser, &server, animal).await;
            browser.tap("mode-showing").await;
            if language == "en" {
                browser.tap("start").await;
            }
            browser.find("act-joined").await;
            browser.picture(&format!("does-{language}-{}", card.name)).await;
            let found = browser.page.execute(SILENT, vec![]).await.unwrap();
            let (high, silent): (u64, Vec<String>) = serde_json::from_value(found).unwrap();
            assert!(silent.is_empty(), "{language}, {}: {silent:?}", card.name);
            all += high;
        }
    }
    browser.close().await;
    assert!(all > 0, "the demo has a board with pads so high");
}

/// Places of the mat that are not seen whole above the dock, and words that run over their button.
const OVER: &str = "
scrollTo(0, 0);
const dock = document.querySelector('.dock').getBoundingClientRect();
const out = [...document.querySelectorAll('.pads > *')].filter((p) => p.getBoundingClientRect().bottom > dock.top + 1).map((p) => `under the dock: ${p.textContent}`);
for (const button of document.querySelectorAll('.actions button')) {
  const range = document.createRange();
  range.selectNodeContents(button);
  const [on, text] = [button.getBoundingClientRect(), range.getBoundingClientRect()];
  if (text.left < on.left || text.right > on.right || text.bottom > on.bottom) out.push(`over its button: ${button.textContent}`);
}
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn on_the_narrowest_phone_no_row_and_no_word_is_cut_while_a_word_is_given() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    unheld(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let mut wrong = Vec::new();
    for language in ["de", STAND_IN] {
        reads(&browser, &server, language).await;
        for (animal, card) in story.animals() {
            at_board(&browser, &server, animal).await;
            if language == "de" {
                browser.tap("mode-showing").await;
                browser.tap("start").await;
                browser.find("act-joined").await;
                browser.shows("[data-part=pads] .pad[data-state=idle]").await;
            }
            browser.find("given").await;
            let found = looked(&browser, &format!("narrow-{language}-{}", card.name), OVER).await;
            wrong.extend(found.iter().map(|f| format!("{language}, {}: {f}", card.name)));
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
