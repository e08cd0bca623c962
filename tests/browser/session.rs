//! A session on the Board from its start to its sum: how long it is planned, what stops it, one Undo at one place, and what it
//! came to, whatever was being done.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use crate::phone::{NARROW, reads};
use sayso_model::{AnimalId, Story, SwapPlan};
use serde_json::{Value, json};
use std::time::Duration;

const DESK: (u32, u32) = (1280, 850);

pub async fn run(browser: &Browser, script: &str) -> Value {
    browser.page.execute(script, vec![]).await.unwrap()
}

pub async fn opened(home: &Home) -> (Server, Browser) {
    let server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    at_board(&browser, &server, home.animal).await;
    (server, browser)
}

/// Opens an animal's Board and waits until it is ready.
pub async fn at_board(browser: &Browser, server: &Server, animal: AnimalId) {
    browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
    browser.until("the board", "return document.getElementById('board').dataset.ready === 'yes'").await;
}

/// The animal of the demo with which swaps were agreed.
pub fn with_swaps(story: &Story) -> AnimalId {
    let agreed = |animal: &AnimalId| story.of::<SwapPlan>(*animal).next().is_some();
    story.animals().into_keys().find(agreed).expect("the demo has agreed swaps")
}

/// What a script lists.
pub async fn listed(browser: &Browser, script: &str) -> Vec<String> {
    serde_json::from_value(run(browser, script).await).expect("a list of texts")
}

/// What a script lists once the page has been measured, with a picture.
pub async fn looked(browser: &Browser, picture: &str, script: &str) -> Vec<String> {
    tokio::time::sleep(Duration::from_millis(300)).await;
    browser.picture(picture).await;
    listed(browser, script).await
}

#[tokio::test(flavor = "multi_thread")]
async fn how_long_is_planned_stands_at_the_start_and_is_said_quietly_when_it_is_reached() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    let start = browser.text("start").await;
    let most = run(&browser, "return JSON.parse(document.getElementById('board').dataset.now).minutes").await;
    assert_eq!(start, format!("Start showing: {most} min at most"), "as Today says it");
    browser.tap("start").await;
    browser.find("act-joined").await;
    assert_eq!(browser.text("planned-time").await, format!("of {most} min"));
    let stopped = "return document.querySelector('[data-test=stop]').hidden";
    // So much later.
    run(&browser, &format!("const real = Date.now; Date.now = () => real() + {most} * 60_000 - 20_000")).await;
    tokio::time::sleep(Duration::from_millis(600)).await;
    assert_eq!(browser.text("planned-time").await, format!("of {most} min"), "not yet");
    run(&browser, "const real = Date.now; Date.now = () => real() + 25_000").await;
    assert!(browser.text("enough").await.contains("a good moment to end"));
    assert_eq!(browser.text("planned-time").await, format!("of {most} min ✓"));
    browser.picture("session-enough").await;
    // Nothing stops, and the next word may still be shown.
    assert_eq!(run(&browser, stopped).await, json!(true));
    browser.tap("pad-ball").await;
    browser.find("given").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn what_a_session_came_to_is_told_in_every_mode() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    let mut told = Vec::new();
    for mode in ["showing", "invitation", "day", "catch"] {
        browser.tap("mode-showing").await;
        browser.tap("start").await;
        browser.find("act-joined").await;
        browser.tap("pad-ball").await;
        browser.tap("given").await;
        browser.tap("then-took").await;
        browser.tap(&format!("mode-{mode}")).await;
        browser.tap("act-end").await;
        browser.tap("end-done").await;
        told.push(browser.text("summary").await);
        browser.picture(&format!("summary-{mode}")).await;
        browser.tap("summary-seen").await;
        browser.until("put away", "return !document.querySelector('[data-test=summary]')").await;
    }
    browser.close().await;
    assert!(told[0].contains("Shown: ball once") && told[0].contains("Given: 1 of 1"), "{told:?}");
    assert!(told.iter().all(|t| *t == told[0]), "{told:?}");
}

/// Controls of a session that cannot be tapped, or only after scrolling: all of what is asked, of what can be noted, of the line above;
/// and those of the card that stops it.
const COVERED: &str = "
const card = document.querySelector('[data-test=stop]');
if (card.hidden) return ['no card'];
const all = [...document.querySelectorAll('.status button, .panel button, .actions button, [data-test=stop] button')];
const out = [];
for (const b of all.filter((b) => b.checkVisibility({ visibilityProperty: true }))) {
  const r = b.getBoundingClientRect();
  for (const y of [0.15, 0.5, 0.85]) {
    const hit = document.elementFromPoint(r.left + r.width / 2, r.top + y * r.height);
    if (!b.contains(hit)) { out.push(`${b.dataset.test ?? b.textContent} at ${Math.round(r.top)} to ${Math.round(r.bottom)} lies under ${hit?.outerHTML.slice(0, 60)}`); break; }
  }
}
if (!card.textContent.trim()) out.push('it says nothing');
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn the_card_that_stops_covers_nothing_that_is_still_needed() {
    let home = Home::new(7, Some((2, 4))).await;
    let (server, browser) = opened(&home).await;
    let board = server.url(&format!("/a/{}/board", home.animal));
    let mut wrong = Vec::new();
    let mut look = async |what: &str, wanted: &str| {
        for size in [NARROW, PHONE, DESK] {
            browser.resize(size).await;
            run(&browser, "scrollTo(0, 0)").await;
            tokio::time::sleep(Duration::from_millis(400)).await;
            browser.picture(&format!("stop-{what}-{}", size.0)).await;
            let found: Vec<String> = serde_json::from_value(run(&browser, COVERED).await).unwrap();
            wrong.extend(found.iter().map(|f| format!("{what}, {}: {f}", size.0)));
            let there = format!("return Boolean(document.querySelector('[data-test={wanted}]')?.checkVisibility())");
            assert_eq!(run(&browser, &there).await, json!(true), "{what}: {wanted}");
        }
        browser.resize(PHONE).await;
    };
    for language in ["en", "de"] {
        reads(&browser, &server, language).await;
        browser.goto(&board).await;
        // It left without what was given, a growl after that.
        browser.tap("mode-showing").await;
        browser.tap(if language == "en" { "start" } else { "start-anyway" }).await;
        if language == "de" {
            browser.press("dialog [data-test=start]").await;
        }
        browser.tap("act-joined").await;
        browser.tap("pad-apple").await;
        browser.tap("given").await;
        browser.find("then-left").await;
        browser.tap("act-left").await;
        browser.find("stop-back").await;
        look(&format!("left-{language}"), "then-left").await;
        browser.tap("act-sign").await;
        browser.tap("sign-strong").await;
        browser.find("whom-to-ask").await;
        look(&format!("strong-{language}"), "then-left").await;
        browser.tap("stop-end").await;
        browser.until("it has ended", "return document.querySelector('[data-test=stop]').hidden").await;
        let rest = browser.text("rests").await;
        assert!(rest.contains(if language == "en" { "Rest until " } else { "Ruhe bis " }), "{rest}");
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// The controls that are called Undo and can be seen, with where they are.
const UNDOS: &str = "return [...document.querySelectorAll('button')].filter((b) => b.textContent.trim() === 'Undo' && b.checkVisibility({ visibilityProperty: true })).map((b) => { const r = b.getBoundingClientRect(); return [r.right, r.top].map(Math.round); })";

#[tokio::test(flavor = "multi_thread")]
async fn there_is_one_undo_and_it_never_moves() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for size in [NARROW, PHONE, DESK] {
        browser.resize(size).await;
        at_board(&browser, &server, who).await;
        let mut seen: Vec<(String, Value)> = Vec::new();
        let mut look = async |what: String| {
            run(&browser, "scrollTo(0, 0)").await;
            tokio::time::sleep(Duration::from_millis(300)).await;
            seen.push((what, run(&browser, UNDOS).await));
        };
        for mode in ["invitation", "day", "catch", "showing"] {
            browser.tap(&format!("mode-{mode}")).await;
            look(format!("{mode} before")).await;
        }
        browser.tap("start").await;
        browser.find("act-joined").await;
        // Every kind of thing: food, touch, what is done.
        for word in story.words_of(who).iter().filter(|w| !w.closing && w.reward.is_some()).take(5) {
            browser.shows(&format!("[data-part=pads] [data-word=\"{}\"]", word.word)).await;
            browser.find("given").await;
            look(format!("{} pressed", word.says)).await;
            browser.tap("given").await;
            browser.find("then-took").await;
            look(format!("{} given", word.says)).await;
            browser.tap("then-took").await;
        }
        browser.tap("mode-invitation").await;
        browser.tap("choose-myself").await;
        look("choosing".into()).await;
        browser.tap("mode-showing").await;
        browser.tap("act-end").await;
        browser.tap("end-done").await;
        browser.find("summary").await;
        look("over".into()).await;
        assert_eq!(seen[0].1.as_array().map(Vec::len), Some(1), "{}: {seen:?}", size.0);
        assert!(seen.iter().all(|(_, at)| *at == seen[0].1), "{}: {seen:#?}", size.0);
        // What an earlier tap was is put right, or undone, by its Edit.
        browser.tap("undo-last").await;
        browser.until("it goes on", "return document.getElementById('board').dataset.state === 'session'").await;
        browser.tap("act-end").await;
        browser.tap("end-done").await;
        browser.tap("summary-seen").await;
        browser.tap("mode-invitation").await;
        browser.tap("round-instead").await;
    }
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_round_draws_the_words_that_todays_plan_invites() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut drawn = 0;
    for animal in story.animals().into_keys() {
        browser.goto(&server.url(&format!("/a/{animal}/today"))).await;
        browser.css("[data-test=next] .act").await;
        browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
        browser.tap("mode-invitation").await;
        browser.find("panel").await;
        tokio::time::sleep(Duration::from_millis(300)).await;
        browser.picture(&format!("round-{animal}")).await;
        let told = run(
            &browser,
            "const now = JSON.parse(document.getElementById('board').dataset.now);
             const boxes = [...document.querySelectorAll('[data-test^=hand-]')];
             const says = (list) => list.map((w) => w.says);
             return {
               ticked: boxes.filter((b) => b.checked).map((b) => b.dataset.test.slice(5)),
               off: boxes.filter((b) => b.disabled).map((b) => b.dataset.test.slice(5)),
               draws: says(now.words.filter((w) => w.draws)),
               may: says(now.words.filter((w) => w.may_invite && !w.closing)),
             };",
        )
        .await;
        let list = |of: &str| -> Vec<String> { serde_json::from_value(told[of].clone()).unwrap() };
        let (ticked, off, draws, may) = (list("ticked"), list("off"), list("draws"), list("may"));
        if ticked.is_empty() {
            continue;
        }
        drawn += 1;
        let wanted: Vec<String> = draws.iter().filter(|w| !off.contains(w)).cloned().collect();
        assert_eq!(ticked, wanted, "{told}");
        assert!(draws.iter().all(|w| may.contains(w)), "{told}");
    }
    browser.close().await;
    assert!(drawn > 0, "no animal of the demo has a round to draw");
}
