//! The Board at rest: it is whole on one screen, or the page scrolls as a page; nothing scrolls in a box of its own.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server, demo_dir, story, taps};
use crate::phone::{NARROW, reads};
use crate::session::{at_board, listed, looked, opened, run, with_swaps};
use sayso_model::{Body, EndReason, Event, PressedBy, Sign};
use serde_json::json;
use std::time::Duration;

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

/// What urges a showing, or an invitation, of all that is said on the Board.
const URGES: &str = "
const said = document.querySelector('.stage').innerText.toLowerCase();
return ['show it yourself', 'i press', 'keep still', 'offer this'].filter((urges) => said.includes(urges));";

/// Offers a word that the person chose.
async fn offers(browser: &Browser) {
    browser.tap("mode-invitation").await;
    browser.tap("choose-myself").await;
    browser.tap("pad-ball").await;
    browser.tap("offer").await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_strong_sign_closes_an_offer_that_waits_and_nothing_urges_showing() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    offers(&browser).await;
    browser.find("count-down").await;
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    // At once, while the card that stops still stands.
    browser.until("the offer is closed", "return !document.querySelector('[data-test=count-down]')").await;
    assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
    browser.tap("stop-end").await;
    browser.find("summary").await;
    // Past the end of the wait.
    tokio::time::sleep(Duration::from_secs(6)).await;
    browser.picture("rest-after-offer").await;
    assert_eq!(run(&browser, "return Boolean(document.querySelector('[data-test=count-down]'))").await, json!(false));
    assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
    assert!(browser.text("rests").await.starts_with("Rest until "));
    browser.all_sent().await;
    let (_, after) = story(home.dir.path()).await;
    let new = taps(&after, before.ledger().len());
    assert!(!new.iter().any(|e| matches!(e.body, Body::Invitation(_))), "what would have come of it nobody knows");
    assert!(new.iter().any(|e| matches!(e.body, Body::SessionEnd(_))));
    // What it asks for without a button is given; nobody is told to press for it.
    browser.tap("mode-catch").await;
    browser.tap("pad-tug").await;
    browser.css("[data-test=catch-how]").await;
    browser.picture("rest-catch").await;
    assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
    browser.tap("given").await;
    browser.tap("then-took").await;
    // A tap on the mat is a press to be answered, whatever was chosen to be offered before.
    browser.tap("mode-invitation").await;
    browser.tap("pad-ball").await;
    browser.tap("answer-given").await;
    browser.tap("then-took").await;
    // Offered all the same, a wait without a press still leads to no showing.
    browser.tap("choose-myself").await;
    browser.tap("pad-ball").await;
    browser.tap("offer").await;
    browser.tap("offer-anyway").await;
    browser.until("the wait is over", "return Boolean(document.querySelector('.slots .later.now'))").await;
    assert!(!browser.text("panel").await.contains("show it yourself"));
    browser.tap("nothing").await;
    browser.find("invitation-done").await;
    browser.picture("rest-after-wait").await;
    assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
    browser.tap("invitation-done").await;
    browser.find("rests").await;
    for mode in ["showing", "day"] {
        browser.tap(&format!("mode-{mode}")).await;
        assert_eq!(listed(&browser, URGES).await, Vec::<String>::new(), "{mode}");
    }
    browser.close().await;
    drop(server);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_end_because_of_a_strong_sign_brings_the_rest_and_is_taken_back_with_it() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    // Pressed and not given yet: once it stops, nothing says to give it now.
    browser.tap("pad-apple").await;
    assert!(browser.text("panel").await.contains("give it now"));
    browser.tap("act-end").await;
    browser.tap("end-strong_sign").await;
    browser.picture("end-by-sign").await;
    browser.tap("sign-strong-unsaid").await;
    assert!(browser.text("whom-to-ask").await.contains("behaviour professional"));
    browser.tap("stop-here-done").await;
    browser.find("rests").await;
    assert!(browser.text("rests").await.starts_with("Rest until "));
    browser.picture("rest-after-end").await;
    let urged = "return Boolean(document.querySelector('[data-test=start], [data-test=given].primary'))";
    assert_eq!(run(&browser, urged).await, json!(false));
    assert!(browser.text("panel").await.contains("not given yet") && !browser.text("panel").await.contains("now"));
    // One Undo takes back what the tap noted: the session runs on, and nothing rests.
    browser.tap("undo-last").await;
    browser.until("it goes on", "return document.getElementById('board').dataset.state === 'session'").await;
    assert_eq!(
        run(&browser, "return document.querySelector('[data-test=rests]')?.checkVisibility() ?? false").await,
        json!(false)
    );
    // A sign that was tapped is not asked for again.
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    browser.find("stop-end").await;
    browser.tap("act-end").await;
    browser.tap("end-strong_sign").await;
    browser.find("summary").await;
    assert!(browser.text("rests").await.starts_with("Rest until "));
    browser.all_sent().await;
    browser.close().await;
    drop(server);
    let (_, after) = story(home.dir.path()).await;
    let signs: Vec<_> = after.of::<Sign>(home.animal).collect();
    assert_eq!(signs.len(), 1, "{signs:?}");
    let new = taps(&after, before.ledger().len());
    let ends = |e: &&Event| matches!(&e.body, Body::SessionEnd(s) if s.reason == EndReason::StrongSign);
    assert_eq!(new.iter().filter(ends).count(), 2, "the first was taken back");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_board_opens_once_for_what_today_sends_to_and_keeps_what_was_chosen_on_it() {
    let home = Home::new(2, None).await;
    let (server, browser) = opened(&home).await;
    browser.tap("mode-catch").await;
    let board = server.url(&format!("/a/{}/board", home.animal));
    let mode = async |wanted: &str| {
        let there = format!(
            "const board = document.getElementById('board'); return board?.dataset.ready === 'yes' && board.dataset.mode === '{wanted}' && !location.hash"
        );
        browser.until(wanted, &there).await;
    };
    for (asked, opens) in [("#answer", "day"), ("", "catch"), ("#show", "showing"), ("", "catch"), ("#show", "showing")]
    {
        browser.goto(&server.url("/glossary")).await;
        browser.goto(&format!("{board}{asked}")).await;
        mode(opens).await;
    }
    // What is begun goes on in it, also where the page is loaded again.
    browser.tap("start").await;
    browser.find("act-end").await;
    browser.goto(&server.url("/glossary")).await;
    browser.goto(&board).await;
    mode("showing").await;
    browser.close().await;
    drop(server);
}

#[tokio::test(flavor = "multi_thread")]
async fn outside_a_session_a_strong_sign_closes_an_offer_and_keeps_the_press_after_its_wait() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    offers(&browser).await;
    browser.until("the wait is over", "return Boolean(document.querySelector('.slots .later.now'))").await;
    browser.tap("pad-ball").await;
    browser.find("late-in-time").await;
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    browser.tap("stop-here-done").await;
    let closed = "return !document.querySelector('[data-test=late-in-time], [data-test=count-down]')";
    browser.until("the offer is closed", closed).await;
    assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
    // The press is there to be answered, in every mode.
    for mode in ["showing", "day", "catch", "invitation"] {
        browser.tap(&format!("mode-{mode}")).await;
        browser.css("[data-test=given], [data-test=answer-given]").await;
        browser.picture(&format!("rest-press-{mode}")).await;
    }
    browser.tap("mode-showing").await;
    browser.tap("given").await;
    browser.tap("then-took").await;
    browser.all_sent().await;
    browser.close().await;
    drop(server);
    let (_, after) = story(home.dir.path()).await;
    let new = taps(&after, before.ledger().len());
    let presses: Vec<_> =
        new.iter().filter(|e| matches!(&e.body, Body::Press(p) if p.by == PressedBy::Animal)).collect();
    assert_eq!(presses.len(), 1, "neither lost nor noted twice");
    let answered = |e: &&Event| matches!(&e.body, Body::Delivery(d) if d.answers == Some(presses[0].id));
    assert_eq!(new.iter().filter(answered).count(), 1);
    assert!(!new.iter().any(|e| matches!(e.body, Body::Invitation(_))), "what would have come of it nobody knows");
}

#[tokio::test(flavor = "multi_thread")]
async fn in_a_round_a_strong_sign_leaves_the_mat_to_answer() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut rounds = 0;
    for who in before.animals().into_keys() {
        at_board(&browser, &server, with_swaps(&before)).await;
        browser.tap("mode-invitation").await;
        if run(&browser, "return document.querySelector('[data-test=round-start]')?.disabled ?? true").await
            == json!(true)
        {
            continue;
        }
        rounds += 1;
        browser.tap("round-start").await;
        browser.tap("offer").await;
        browser.find("count-down").await;
        browser.tap("act-sign").await;
        browser.tap("sign-strong").await;
        browser.tap("stop-here-done").await;
        browser.shows("[data-part=pads] .pad:not(:disabled)").await;
        browser.picture(&format!("rest-round-{who}")).await;
        assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
        browser.press("[data-part=pads] .pad:not(:disabled)").await;
        browser.find("answer-given").await;
    }
    browser.close().await;
    assert!(rounds > 0, "the demo has an animal with a round to draw");
}

/// What of the note of a rest is not seen whole at the top of the page, above the mat.
const NOTE: &str = "
const out = [];
const top = document.querySelector('header.top').getBoundingClientRect().bottom;
const mat = document.querySelector('[data-part=mat]').getBoundingClientRect();
const dock = document.querySelector('nav.thumb').getBoundingClientRect().top;
if (scrollY > 0) out.push(`scrolled by ${scrollY}`);
const note = document.querySelector('[data-test=rests]');
const said = note.innerText;
for (const part of ['Rest until', 'qualified behaviour professional', 'Agreed swaps were stopped.']) if (!said.includes(part)) out.push(`no ${part} in ${said}`);
for (const e of [note, ...note.querySelectorAll('p, span, a')]) {
  const r = e.getBoundingClientRect();
  if (r.height === 0 || r.top < top - 1 || r.bottom > dock) out.push(`${e.textContent} lies at ${r.top} to ${r.bottom}`);
  const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
  if (!hit || !(e.contains(hit) || hit.contains(e))) out.push(`${e.textContent} is under ${hit?.outerHTML.slice(0, 80)}`);
}
if (mat.height > 0 && note.getBoundingClientRect().bottom > mat.top) out.push('the note is not above the mat');
if (mat.height > 0 && mat.bottom > dock) out.push(`the mat ends at ${mat.bottom} of ${dock}`);
const away = [...document.querySelectorAll('.stage button')].filter((b) => b.textContent === 'Put away').length;
if (away > 1) out.push(`${away} to put away`);
const given = document.querySelector('[data-test=given]');
if (given && !given.textContent.includes(':')) out.push(`${given.textContent} names no word`);
return out;";

/// What of a session begun after a rest cannot be tapped at once: the mat, what is done, Undo.
const COVERED: &str = "
const out = [];
if (scrollY > 0) out.push(`scrolled by ${scrollY}`);
for (const e of document.querySelectorAll('.modes button, .pads .pad, [data-test=undo-last]')) {
  const r = e.getBoundingClientRect();
  for (const y of [0.15, 0.5, 0.85]) {
    const hit = document.elementFromPoint(r.left + r.width / 2, r.top + y * r.height);
    if (!e.contains(hit)) { out.push(`${e.dataset.test} at ${r.top} to ${r.bottom} is under ${hit?.outerHTML.slice(0, 80)}`); break; }
  }
}
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn where_swaps_were_agreed_the_rest_is_said_above_the_mat_and_covers_nothing_later() {
    let mut wrong = Vec::new();
    for size in [NARROW, PHONE] {
        let dir = demo_dir();
        let (_, before) = story(dir.path()).await;
        let server = Server::start(dir.path(), 0);
        let browser = Browser::open(size).await;
        at_board(&browser, &server, with_swaps(&before)).await;
        browser.tap("start").await;
        browser.tap("act-joined").await;
        browser.shows("[data-part=pads] .pad:not(:disabled)").await;
        browser.find("given").await;
        browser.tap("act-sign").await;
        browser.tap("sign-strong").await;
        run(&browser, "scrollTo(0, document.body.scrollHeight)").await;
        browser.tap("stop-end").await;
        browser.find("summary").await;
        assert_eq!(run(&browser, "return scrollY").await, json!(0), "it ends at the top");
        for mode in ["showing", "invitation", "day", "catch"] {
            browser.tap(&format!("mode-{mode}")).await;
            run(&browser, "scrollTo(0, 0)").await;
            let found = looked(&browser, &format!("rest-swaps-{mode}-{}", size.0), NOTE).await;
            wrong.extend(found.iter().map(|f| format!("{mode}, {size:?}: {f}")));
            // What was pressed and not given may still be given, wherever one is.
            browser.find("given").await;
        }
        browser.tap("mode-showing").await;
        browser.tap("given").await;
        browser.tap("then-took").await;
        browser.tap("mode-invitation").await;
        browser.tap("choose-myself").await;
        browser.until("chosen by hand", "return Boolean(document.querySelector('[data-test=offer]'))").await;
        assert_eq!(listed(&browser, URGES).await, Vec::<String>::new());
        browser.tap("mode-showing").await;
        browser.tap("start-anyway").await;
        browser.tap("start").await;
        browser.find("act-end").await;
        let found = looked(&browser, &format!("rest-begun-{}", size.0), COVERED).await;
        wrong.extend(found.iter().map(|f| format!("begun all the same, {size:?}: {f}")));
        browser.close().await;
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

#[tokio::test(flavor = "multi_thread")]
async fn where_its_scripts_do_not_come_the_board_says_so() {
    let home = Home::new(2, None).await;
    let server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let board = server.url(&format!("/a/{}/board", home.animal));
    browser.goto(&board).await;
    browser.until("the board", "return document.getElementById('board').dataset.ready === 'yes'").await;
    browser.until("nothing is said", "return !document.querySelector('[data-test=unopened]')").await;
    browser.devtools("Network.enable", json!({})).await;
    browser.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
    browser.devtools("Network.setCacheDisabled", json!({ "cacheDisabled": true })).await;
    browser.devtools("Network.setBlockedURLs", json!({ "urls": ["*/board.js*"] })).await;
    browser.goto(&board).await;
    let seen = "const e = document.querySelector('[data-test=unopened]');
        return e.checkVisibility({ visibilityProperty: true }) && e.getBoundingClientRect().height > 20";
    let at_once = browser.page.execute(seen, vec![]).await.unwrap();
    assert_eq!(at_once, false, "while it may still come, nothing is said");
    browser.until("it says that it is not open", seen).await;
    browser.picture("unopened").await;
    browser.close().await;
}
