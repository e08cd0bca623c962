//! The Board in a hand: the plan of Today, places that stay, what is said and felt, keys, and how a session ends.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story, taps};
use crate::phone::{NARROW, reads};
use crate::session::{listed, opened, run};
use sayso_model::{Body, PressedBy};
use serde_json::json;
use std::time::Duration;

const ALL_SENT: &str = "const o = document.querySelector('[data-test=outbox]'); return o.dataset.kept === '0' && Number(o.dataset.sent) > 0";
/// Two touches at one spot within a third of a second count as a tremble.
const A_MOMENT: Duration = Duration::from_millis(420);

#[tokio::test(flavor = "multi_thread")]
async fn todays_plan_stands_on_the_pads_and_the_closing_word_in_its_corner() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    let count = "return document.querySelector('[data-test=pad-apple] .count').textContent";
    let aimed = run(&browser, count).await.as_str().unwrap().to_owned();
    let aim: u32 = aimed.strip_prefix("0 of ").unwrap_or_else(|| panic!("no planned word: {aimed}")).parse().unwrap();
    let ringed = "return [...document.querySelectorAll('[data-part=pads] .planned .says')].map((s) => s.textContent)";
    assert_eq!(run(&browser, ringed).await, json!(["apple", "ball", "garden"]));
    // A tap before the start asks what it means; starting by it notes the press too.
    browser.tap("pad-apple").await;
    browser.tap("before-start").await;
    browser.tap("given").await;
    browser.until("one of them", &format!("{count} === '1 of {aim}'")).await;
    browser.tap("then-took").await;
    browser.find("act-closing").await;
    let corner = "const r = (t) => document.querySelector(`[data-test=${t}]`).getBoundingClientRect(); return r('act-closing').bottom >= r('act-joined').bottom && r('act-end').right >= r('act-joined').right";
    assert_eq!(run(&browser, corner).await, json!(true));
    browser.tap("act-closing").await;
    browser.tap("closing-person").await;
    browser.find("summary").await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);
    let (_, after) = story(home.dir.path()).await;
    let new = taps(&after, before.ledger().len());
    let planned = new.iter().find_map(|e| if let Body::SessionStart(s) = &e.body { Some(s.words.len()) } else { None });
    assert_eq!(planned, Some(3), "the start says which words were planned");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_session_ends_with_its_sum_and_a_press_not_given_may_still_be_given() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    // Joined is joined: until it goes away a second tap says nothing.
    browser.until("it is there", "return document.querySelector('[data-test=act-joined]').disabled").await;
    run(&browser, "document.querySelector('[data-test=act-joined]').click()").await;
    browser.tap("pad-ball").await;
    browser.tap("given").await;
    browser.tap("then-took").await;
    browser.tap("pad-scratch").await;
    browser.find("given").await;
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    let said = browser.text("summary").await;
    browser.picture("board-summary").await;
    for part in ["Shown: ball once, scratch once", "Given: 1 of 2", "Not given yet: scratch"] {
        assert!(said.contains(part), "{said}");
    }
    tokio::time::sleep(A_MOMENT).await;
    // What was answered in between puts it off; it comes back.
    browser.tap("mode-day").await;
    browser.tap("pad-ball").await;
    browser.tap("answer-missed").await;
    browser.tap("given").await;
    browser
        .until(
            "all given",
            "return document.querySelector('[data-test=summary]').textContent.includes('Given: 2 of 2')",
        )
        .await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);
    let (_, after) = story(home.dir.path()).await;
    let new = taps(&after, before.ledger().len());
    let of = |kind: fn(&Body) -> bool| new.iter().filter(|e| kind(&e.body)).count();
    assert_eq!(of(|b| matches!(b, Body::Joining(_))), 1);
    assert_eq!(of(|b| matches!(b, Body::Delivery(_))), 3);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_stops_a_session_is_on_the_screen_wherever_one_has_scrolled() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    let seen = "const s = document.querySelector('[data-test=stop]'); if (s.hidden) return false;
      return [s, ...s.querySelectorAll('button')].every((b) => { const r = b.getBoundingClientRect();
        const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
        return r.top >= 0 && r.bottom <= innerHeight && s.contains(hit); })";
    for (what, tap) in [("it has left", "act-left"), ("a growl", "act-sign")] {
        run(&browser, "window.scrollTo(0, document.body.scrollHeight)").await;
        run(&browser, &format!("document.querySelector('[data-test={tap}]').click()")).await;
        if tap == "act-sign" {
            run(&browser, "document.querySelector('[data-test=sign-strong]').click()").await;
            browser
                .until(
                    "it says stop",
                    "return document.querySelector('[data-test=stop]').textContent.includes('Stop now')",
                )
                .await;
        }
        browser.until(what, seen).await;
        browser.picture(&format!("board-stop-{tap}")).await;
        if tap == "act-left" {
            run(&browser, "document.querySelector('[data-test=stop-back]').click()").await;
            browser.until("it came back", "return document.querySelector('[data-test=stop]').hidden").await;
        }
    }
    browser.close().await;
}

/// Where every button and pad lies that can be seen, by its name.
const PLACES: &str = "window.scrollTo(0, 0); const at = {}; for (const b of document.querySelectorAll('.stage button')) if (b.checkVisibility({ visibilityProperty: true }) && b.dataset.test) { const r = b.getBoundingClientRect(); at[b.dataset.test] = [Math.round(r.left), Math.round(r.top)]; } return at;";

#[tokio::test(flavor = "multi_thread")]
async fn buttons_keep_their_places_and_a_wait_is_said_only_twice() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    let mut seen = serde_json::Map::new();
    let mut keep = async |when: &str| {
        let at = run(&browser, PLACES).await;
        for (name, place) in at.as_object().unwrap() {
            let was = seen.entry(name.clone()).or_insert_with(|| place.clone());
            assert_eq!(was, place, "{name}, {when}");
        }
    };
    // Through a showing of a food with a caution, as the thumb sees it.
    browser.tap("start").await;
    browser.find("act-joined").await;
    keep("at the start").await;
    browser.tap("pad-apple").await;
    browser.find("given").await;
    browser.find("care").await;
    browser.picture("board-caution").await;
    keep("pressed").await;
    browser.tap("given").await;
    browser.find("then-took").await;
    keep("given").await;
    browser.tap("then-took").await;
    browser.until("taken", "return !document.querySelector('[data-test=then-took]')").await;
    keep("taken").await;
    browser.tap("pad-ball").await;
    browser.find("given").await;
    keep("another").await;
    // Through a wait, before and after its end.
    browser.tap("mode-invitation").await;
    browser.tap("choose-myself").await;
    browser.tap("pad-ball").await;
    browser.tap("offer").await;
    browser.find("invitation-left").await;
    let first = run(&browser, PLACES).await;
    let said = "return document.querySelector('[data-test=said]').textContent";
    run(&browser, "window.heard = []; new MutationObserver(() => heard.push(document.querySelector('[data-test=said]').textContent)).observe(document.querySelector('[data-test=said]'), { childList: true, characterData: true, subtree: true })").await;
    assert!(run(&browser, said).await.as_str().unwrap().contains("keep still"));
    browser.picture("board-wait").await;
    browser.find("nothing").await;
    let heard = run(&browser, "return heard").await;
    assert!(heard.as_array().unwrap().len() <= 1, "a countdown that speaks: {heard}");
    let then = run(&browser, PLACES).await;
    for (name, place) in first.as_object().unwrap() {
        assert_eq!(then.get(name), Some(place), "{name} after the wait");
    }
    assert!(
        run(&browser, said).await.as_str().unwrap().contains("No mistake. Tap “Nothing came”, then show it yourself")
    );
    // The order for the ear is the order for the eye.
    let order = "const all = ['.modes', '[data-part=mat]', '[data-part=panel]'].map((s) => document.querySelector(s)); return all.every((n, i) => i === 0 || (all[i - 1].compareDocumentPosition(n) & 4 && all[i - 1].getBoundingClientRect().top < n.getBoundingClientRect().top))";
    assert_eq!(run(&browser, order).await, json!(true));
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn keys_stand_for_taps_the_focus_stays_and_each_tap_is_felt() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_, before) = story(home.dir.path()).await;
    let (server, browser) = opened(&home).await;
    run(&browser, "window.felt = []; Object.defineProperty(navigator, 'vibrate', { value: (how) => felt.push(how) })")
        .await;
    let key = async |key: &str| {
        let active = browser.page.active_element().await.unwrap();
        active.send_keys(key).await.unwrap();
    };
    let focused = "return document.getElementById('board').contains(document.activeElement)";
    run(&browser, "document.querySelector('[data-test=start]').focus()").await;
    key("\u{e007}").await;
    browser.find("act-joined").await;
    browser.until("the focus stays", focused).await;
    key("j").await;
    browser.until("it joined", "return document.querySelector('[data-test=act-joined]').disabled").await;
    browser.until("the focus stays", focused).await;
    key("2").await;
    browser.until("pressed", "return document.querySelector('[data-test=pad-ball]').dataset.state === 'give'").await;
    assert_eq!(run(&browser, "return felt").await, json!([10, 10, 10]), "start, joined, press");
    key("u").await;
    browser.until("undone", "return document.querySelector('[data-test=pad-ball]').dataset.state === 'idle'").await;
    tokio::time::sleep(A_MOMENT).await;
    key("2").await;
    browser.find("given").await;
    run(&browser, "document.querySelector('[data-test=given]').focus()").await;
    key("\u{e007}").await;
    browser.find("then-took").await;
    browser.until("the focus stays", focused).await;
    run(&browser, "document.querySelector('[data-test=then-took]').focus()").await;
    key("\u{e007}").await;
    browser.until("taken", "return !document.querySelector('[data-test=then-took]')").await;
    browser.until("the focus stays", focused).await;
    key("s").await;
    browser.tap("sheet-close").await;
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    browser.find("start").await;
    browser.until("the focus stays", focused).await;
    // While something is typed, letters are letters.
    browser.find("room").await.send_keys("jl2").await.unwrap();
    assert_eq!(browser.find("room").await.prop("value").await.unwrap().as_deref(), Some("jl2"));
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);
    let (_, after) = story(home.dir.path()).await;
    let new = taps(&after, before.ledger().len());
    let presses = new.iter().filter(|e| matches!(&e.body, Body::Press(p) if p.by == PressedBy::Person)).count();
    assert_eq!(presses, 2, "one of them undone");
}

#[tokio::test(flavor = "multi_thread")]
async fn something_else_instead_is_never_the_thing_itself() {
    let home = Home::new(7, Some((2, 4))).await;
    let (_server, browser) = opened(&home).await;
    browser.tap("mode-day").await;
    browser.tap("pad-ball").await;
    browser.tap("answer-alternative").await;
    let offered = "return [...document.querySelectorAll('[data-test=alternative]')].map((b) => b.textContent)";
    assert_eq!(run(&browser, offered).await, json!(["apple with seeds"]));
    browser.close().await;
}

/// Contrast of each text on a pad with what lies under it (WCAG 2.2, 1.4.3: 4.5 at the least), by its class.
const CONTRAST: &str = "
const pad = document.querySelector('[data-part=pads] [data-state=give]');
const rgb = (c) => c.match(/[\\d.]+/g).map(Number);
const light = (c) => { const [r, g, b] = rgb(c).map((v) => { const s = v / 255; return s <= 0.04045 ? s / 12.92 : ((s + 0.055) / 1.055) ** 2.4; }); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
const under = getComputedStyle(pad).backgroundColor;
if (rgb(under)[3] === 0) return [['nothing under it', 1]];
return [...pad.querySelectorAll('span')].filter((s) => s.textContent.trim()).map((s) => {
  const [a, b] = [light(getComputedStyle(s).color), light(under)];
  return [s.className, (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)];
});";

#[tokio::test(flavor = "multi_thread")]
async fn a_pressed_pad_can_be_read_whatever_its_words_stage() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{}/board", animal(&story)))).await;
    browser.tap("start").await;
    browser.find("act-joined").await;
    // A planned word, and one that is not yet to be shown.
    for kind in ["planned", "unready"] {
        browser.shows(&format!(".pads .{kind}")).await;
        browser.find("given").await;
        for scheme in ["light", "dark"] {
            browser.colours(scheme).await;
            let found: Vec<(String, f64)> = serde_json::from_value(run(&browser, CONTRAST).await).unwrap();
            assert!(found.iter().any(|(what, _)| what == "says"), "{found:?}");
            assert!(found.iter().all(|(_, contrast)| *contrast >= 4.5), "{kind}, {scheme}: {found:?}");
        }
        browser.tap("given").await;
        browser.tap("then-took").await;
    }
    browser.close().await;
}

/// What on a pressed pad is cut or broken over lines, and whether its seconds are seen.
const PRESSED: &str = "
const pad = document.querySelector('[data-part=pads] [data-state=give]');
const seen = [...pad.querySelectorAll('.count, .does')].filter((s) => s.checkVisibility() && s.textContent.trim());
const out = seen.filter((s) => s.scrollWidth > s.clientWidth + 1 || s.offsetHeight > 1.6 * parseFloat(getComputedStyle(s).fontSize)).map((s) => `${s.textContent}: ${s.scrollWidth} of ${s.clientWidth}, ${s.offsetHeight} high`);
if (!seen.some((s) => s.matches('.count') && /\\d/.test(s.textContent))) out.push('no seconds');
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn a_pressed_pad_shows_its_seconds_and_breaks_no_word_on_small_phones() {
    let mut wrong = Vec::new();
    for board in [(2, 4), (3, 5), (3, 6)] {
        let home = Home::new(7, Some(board)).await;
        let (server, browser) = opened(&home).await;
        for language in ["en", "de", "es", "fr", "pt"] {
            reads(&browser, &server, language).await;
            browser.goto(&server.url(&format!("/a/{}/board", home.animal))).await;
            if language == "en" {
                browser.tap("start").await;
            }
            browser.find("act-joined").await;
            browser.tap("pad-ball").await;
            browser.find("given").await;
            for size in [NARROW, PHONE] {
                browser.resize(size).await;
                tokio::time::sleep(A_MOMENT).await;
                browser.picture(&format!("pressed-{}-{language}-{}", board.1, size.0)).await;
                let found = listed(&browser, PRESSED).await;
                wrong.extend(found.iter().map(|f| format!("{} columns, {language}, {}: {f}", board.1, size.0)));
            }
            browser.tap("given").await;
            browser.tap("then-took").await;
        }
        browser.close().await;
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
