//! The Board in letters twice as large, and that no pad moves while a session runs.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server};
use crate::phone::NARROW;
use crate::session::{looked, opened, run};
use serde_json::{Value, json};
use std::time::Duration;

/// The reader's own letters, as a browser is set to them: pages' media queries count in them, too.
pub const TWICE: &str = "--blink-settings=defaultFontSize=32";
const TABLET: (u32, u32) = (768, 1024);

/// Planned words that are cut, and those of which no pad is in sight from edge to edge.
const PLANNED: &str = "
const out = [];
const seen = (e) => e.checkVisibility({ visibilityProperty: true });
const all = [...document.querySelectorAll('.board-place .planned')].filter(seen);
const whole = (pad) => { const r = pad.getBoundingClientRect(); return r.left >= 0 && r.right <= innerWidth; };
for (const word of new Set(all.map((pad) => pad.dataset.word))) {
  const pads = all.filter((pad) => pad.dataset.word === word && whole(pad));
  if (pads.length === 0) out.push(`${word} is out of sight`);
  for (const pad of pads) {
    const range = document.createRange();
    range.selectNodeContents(pad.querySelector('.says'));
    const [text, box] = [range.getBoundingClientRect(), pad.getBoundingClientRect()];
    if (text.top < box.top || text.bottom > box.bottom) out.push(`${pad.textContent} is cut: ${text.top} to ${text.bottom} in ${box.top} to ${box.bottom}`);
    if (box.height < 88) out.push(`${pad.textContent} has ${box.height} px`);
  }
}
if (all.length === 0) out.push('nothing is planned');
const pads = document.querySelector('[data-part=pads]');
const on = seen(pads) && pads.scrollWidth > pads.clientWidth + 1;
if (on !== seen(document.querySelector('[data-test=goes-on]'))) out.push(`goes on sideways: ${on}`);
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn in_letters_twice_as_large_planned_words_are_whole_and_in_sight() {
    let browser = Browser::open_with(PHONE, &[TWICE]).await;
    let mut wrong = Vec::new();
    for (words, board) in [(9, (3, 5)), (15, (4, 5)), (30, (6, 10))] {
        let home = Home::new(words, Some(board)).await;
        let server = Server::start(home.dir.path(), 0);
        browser.goto(&server.url(&format!("/a/{}/board", home.animal))).await;
        browser.tap("start").await;
        browser.find("act-joined").await;
        for size in [PHONE, NARROW, TABLET] {
            browser.resize(size).await;
            let found = looked(&browser, &format!("large-{words}-{}", size.0), PLANNED).await;
            wrong.extend(found.iter().map(|f| format!("{words} words, {}: {f}", size.0)));
        }
        browser.resize(PHONE).await;
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Where the pads in sight lie.
const PLACES: &str = "scrollTo(0, 0); return [...document.querySelectorAll('[data-part=pads] > *')].filter((p) => p.checkVisibility()).map((p) => { const r = p.getBoundingClientRect(); return [r.left, r.top, r.width, r.height].map(Math.round); })";

#[tokio::test(flavor = "multi_thread")]
async fn no_pad_moves_or_grows_while_a_session_runs() {
    let browser = Browser::open(NARROW).await;
    for (words, board) in [(30, (6, 5)), (7, (2, 4))] {
        let home = Home::new(words, Some(board)).await;
        let server = Server::start(home.dir.path(), 0);
        browser.goto(&server.url(&format!("/a/{}/board", home.animal))).await;
        browser.tap("start").await;
        browser.find("act-joined").await;
        if words == 30 {
            browser.tap("zone-0").await;
        }
        tokio::time::sleep(Duration::from_millis(300)).await;
        let before = run(&browser, PLACES).await;
        let look = async |when: &str| {
            tokio::time::sleep(Duration::from_millis(300)).await;
            assert_eq!(run(&browser, PLACES).await, before, "{words} words, {when}");
        };
        browser.press("[data-part=pads] .pad:not(.elsewhere)").await;
        browser.find("given").await;
        look("pressed").await;
        browser.tap("given").await;
        browser.find("then-took").await;
        look("given").await;
        browser.tap("then-took").await;
        browser.tap("mode-invitation").await;
        browser.tap("choose-myself").await;
        browser.press("[data-part=pads] .pad:not(.elsewhere)").await;
        look("chosen").await;
        browser.tap("offer").await;
        look("waiting").await;
        tokio::time::sleep(Duration::from_millis(5_300)).await;
        look("the wait is over").await;
    }
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn where_nothing_may_be_invited_the_mat_stays_and_answers() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    browser.tap("mode-invitation").await;
    browser.find("round-needs-two").await;
    browser.tap("pad-ball").await;
    browser.tap("answer-given").await;
    browser.find("then-took").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn which_word_was_pressed_is_chosen_at_its_place_and_no_word_is_broken() {
    let home = Home::new(9, Some((2, 5))).await;
    let (_server, browser) = opened(&home).await;
    browser.tap("start").await;
    browser.tap("act-pressed").await;
    browser.find("choose-scratch").await;
    let rows = |of: &str| {
        format!(
            "return [...document.querySelectorAll('{of} > *')].filter((p) => p.checkVisibility()).map((p) => [p.querySelector('.says')?.textContent ?? '', p.querySelector('.says')?.getClientRects().length ?? 0]);"
        )
    };
    let chosen = run(&browser, &rows("dialog .pads")).await;
    let mat = run(&browser, &rows("[data-part=pads]")).await;
    let says = |cells: &Value| cells.as_array().unwrap().iter().map(|cell| cell[0].clone()).collect::<Vec<_>>();
    assert_eq!(says(&chosen), says(&mat), "as the board lies, its blank place too");
    let broken = "return [...document.querySelectorAll('dialog .says')].filter((s) => { const r = document.createRange(); r.selectNodeContents(s); return !s.textContent.includes(' ') && new Set([...r.getClientRects()].map((x) => Math.round(x.top))).size > 1; }).map((s) => s.textContent)";
    assert_eq!(run(&browser, broken).await, json!([]));
    browser.tap("choose-scratch").await;
    browser.find("given").await;
    browser.close().await;
}
