//! The Board on a phone: whole before a session and in every mode, in large letters, and still under a strong sign.

use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::phone::{NARROW, reads};
use crate::session::looked;
use fantoccini::Locator;
use serde_json::json;

/// Columns of the mat that are seen whole, its rows, those that are seen whole, and how wide the page is.
const SHAPE: &str = "
const end = document.querySelector('nav.thumb').getBoundingClientRect().top;
const pads = [...document.querySelectorAll('.pads > *')].map((p) => p.getBoundingClientRect());
const count = (all, of) => new Set(all.map((r) => Math.round(of(r)))).size;
const columns = count(pads.filter((r) => r.left >= 0 && r.right <= innerWidth), (r) => r.left);
const seen = count(pads.filter((r) => r.bottom <= end), (r) => r.top);
return [columns, count(pads, (r) => r.top), seen, document.scrollingElement.scrollWidth];";

#[tokio::test(flavor = "multi_thread")]
async fn in_large_letters_the_mat_keeps_its_rows_and_three_columns() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let board = story.board().expect("a board");
    assert!(board.columns > 3 && board.rows > 1, "the demo's board is wider than a phone in large letters");
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for animal in story.animals().into_keys() {
        browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
        browser.find("start").await;
        browser.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
        browser.until("the dock flows", "return document.getElementById('board').classList.contains('flows')").await;
        let shape = browser.page.execute(SHAPE, vec![]).await.unwrap();
        let rows = u64::from(board.rows);
        assert_eq!(shape, json!([3, rows, rows, PHONE.0]), "columns, rows, rows seen, width");
    }
    browser.close().await;
}

/// What of the Board before a session is not whole on the screen: a place on the mat, a tab of what is done, the field of
/// the room, the start.
const BEFORE: &str = "
const out = [];
const top = document.querySelector('header.top').getBoundingClientRect().bottom;
const end = document.querySelector('nav.thumb').getBoundingClientRect().top;
const dock = document.querySelector('.dock').getBoundingClientRect();
const mat = [...document.querySelectorAll('.pads > *')];
if (mat.length === 0) out.push('no mat');
for (const e of [...mat, ...document.querySelectorAll('.modes button, [data-test=start], [data-test=room]')]) {
  const r = e.getBoundingClientRect();
  const what = e.textContent || e.dataset.test || 'a blank place';
  if (r.top < top - 1 || r.bottom > end + 1) out.push(`${what} lies at ${r.top} to ${r.bottom} of ${top} to ${end}`);
  if (mat.includes(e) && r.bottom > dock.top + 1) out.push(`${what} ends at ${r.bottom} under the dock at ${dock.top}`);
  if (e.scrollWidth > e.clientWidth + 1) out.push(`${what} is cut: ${e.scrollWidth} of ${e.clientWidth}`);
}
// In a pause no room is asked for: another session is not what is proposed.
const pause = document.querySelector('[data-test=pause]');
const room = document.querySelector('[data-test=room]')?.getBoundingClientRect().width;
if (!pause && !room) out.push('no room is asked for');
if (room < 120) out.push(`the room has ${room} px`);
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn the_board_before_a_session_is_whole_on_the_narrowest_phone() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let mut wrong = Vec::new();
    for language in ["en", "de", "es", "fr", "pt"] {
        reads(&browser, &server, language).await;
        for (animal, card) in story.animals() {
            browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
            browser.find("start").await;
            let found = looked(&browser, &format!("board-before-{language}-{}", card.name), BEFORE).await;
            wrong.extend(found.iter().map(|f| format!("{language}, {}: {f}", card.name)));
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// What of the Board is not whole on the screen, whatever is being done: a place on the mat, a tab of what is done, the row
/// of what happens in a session, or the one thing to tap next. What scrolls under that may lie beyond the edge.
const WHOLE: &str = "
const out = [];
const board = document.getElementById('board');
const top = document.querySelector('header.top').getBoundingClientRect().bottom;
const end = document.querySelector('nav.thumb').getBoundingClientRect().top;
const seen = (e) => e.checkVisibility({ visibilityProperty: true });
if (board.classList.contains('flows')) out.push('the dock flows');
if (scrollY > 0) out.push(`scrolled by ${scrollY}`);
const all = [...document.querySelectorAll('.pads > *, .modes button, .actions button, .slots .primary, [data-test=start], [data-test=round-start]')].filter(seen);
for (const e of all) {
  const r = e.getBoundingClientRect();
  const what = e.dataset.test || e.textContent || 'a blank place';
  if (r.top < top - 1 || r.bottom > end + 1 || r.left < 0 || r.right > innerWidth) out.push(`${what} lies at ${r.left}, ${r.top} to ${r.right}, ${r.bottom} of ${top} to ${end}`);
  const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
  if (e.matches('button') && !(e.matches('.slots .primary') && e.closest('.tight, .longer')) && hit && !e.contains(hit)) out.push(`${what} is under ${hit.outerHTML.slice(0, 80)}`);
}
const rows = new Set([...document.querySelectorAll('.modes button')].map((b) => Math.round(b.getBoundingClientRect().top)));
if (rows.size !== 1) out.push(`the modes lie in ${rows.size} rows`);
if (board.dataset.state === 'session') for (const act of ['joined', 'sign', 'end']) if (!all.includes(document.querySelector(`[data-test=act-${act}]`))) out.push(`no ${act}`);
return out;";

/// Where every pad lies on the page.
const PADS: &str = "return [...document.querySelectorAll('.pads > *')].map((p) => { const r = p.getBoundingClientRect(); return [r.left, r.top + scrollY, r.width, r.height].map(Math.round); })";

#[tokio::test(flavor = "multi_thread")]
async fn in_every_mode_and_after_a_session_the_board_stays_whole() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let mut wrong = Vec::new();
    // The shortest and the longest words.
    for language in ["en", "de"] {
        reads(&browser, &server, language).await;
        for (animal, card) in story.animals() {
            let mut look = async |when: &str| {
                for size in [NARROW, PHONE] {
                    browser.resize(size).await;
                    browser.page.execute("scrollTo(0, 0)", vec![]).await.unwrap();
                    let picture = format!("whole-{language}-{}-{when}-{}", card.name, size.0);
                    let found = looked(&browser, &picture, WHOLE).await;
                    wrong.extend(found.iter().map(|f| format!("{language}, {}, {when}, {}: {f}", card.name, size.0)));
                }
            };
            browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
            browser.tap("mode-invitation").await;
            look("invitation before").await;
            browser.tap("mode-showing").await;
            browser.tap("start").await;
            browser.find("act-joined").await;
            for mode in ["invitation", "day", "catch", "showing"] {
                browser.tap(&format!("mode-{mode}")).await;
                look(mode).await;
            }
            browser.shows(".pads .planned").await;
            browser.tap("given").await;
            browser.tap("then-took").await;
            browser.shows(".pads .planned").await;
            browser.find("given").await;
            look("pressed").await;
            browser.tap("act-end").await;
            browser.tap("end-done").await;
            browser.find("summary").await;
            look("over").await;
            // The next one begins without what this one leaves.
            browser.tap("given").await;
            browser.tap("summary-seen").await;
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Whether what is asked is whole without scrolling in its place, and every place of the mat stands clear of the dock.
const UNCUT: &str = "
const asked = document.querySelector('[data-part=asked]');
const dock = document.querySelector('.dock').getBoundingClientRect();
const pads = [...document.querySelectorAll('.pads > *')].map((p) => p.getBoundingClientRect());
return [asked.scrollHeight <= asked.clientHeight + 1, pads.length > 0 && pads.every((r) => r.bottom <= dock.top + 1)];";

#[tokio::test(flavor = "multi_thread")]
async fn a_strong_sign_moves_no_pad_and_rest_comes_before_a_session() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let mut notices = 0;
    for animal in story.animals().into_keys() {
        browser.goto(&server.url(&format!("/a/{animal}/board"))).await;
        browser.tap("start").await;
        browser.tap("act-joined").await;
        browser.until("joined", "return document.querySelector('[data-test=act-joined]').disabled").await;
        browser.tap("mode-catch").await;
        browser.until("drawn", "return document.getElementById('board').dataset.mode === 'catch'").await;
        let before = browser.page.execute(PADS, vec![]).await.unwrap();
        browser.tap("act-sign").await;
        browser.tap("sign-strong").await;
        browser.find("stop-end").await;
        browser.picture(&format!("strong-{animal}")).await;
        assert_eq!(browser.page.execute(PADS, vec![]).await.unwrap(), before, "a pad moved");
        browser.tap("stop-end").await;
        browser.until("it has ended", "return document.querySelector('[data-test=stop]').hidden").await;
        browser.find("summary").await;
        browser.picture(&format!("over-{animal}")).await;
        // Where swaps were agreed, that they were stopped is a line of the note above what the session came to.
        notices +=
            usize::from(browser.page.find(Locator::Css("[data-test=rests] [data-test=swaps-over]")).await.is_ok());
        let order = "const [caution, mat, sum] = ['[data-test=rests]', '[data-part=mat]', '[data-test=summary]'].map((s) => document.querySelector(s).getBoundingClientRect()); return caution.height > 0 && sum.height > 0 && caution.bottom <= mat.top && mat.bottom <= sum.top";
        assert_eq!(browser.page.execute(order, vec![]).await.unwrap(), json!(true), "both, the caution first");
        let away =
            "return [...document.querySelectorAll('.stage button')].filter((b) => b.textContent === 'Put away').length";
        assert_eq!(browser.page.execute(away, vec![]).await.unwrap(), json!(1), "one thing to put away");
        let uncut = browser.page.execute(UNCUT, vec![]).await.unwrap();
        assert_eq!(uncut, json!([true, true]), "what is asked is whole, and no pad lies under the dock");
        browser.tap("mode-showing").await;
        browser.find("start-anyway").await;
        browser.picture(&format!("rest-{animal}")).await;
        let filled = "return [...document.querySelectorAll('[data-part=panel] .primary, [data-test=start]')].map((b) => b.dataset.test)";
        assert_eq!(browser.page.execute(filled, vec![]).await.unwrap(), json!([]), "nothing urges a session");
        // It asks first, and letting it be is the larger button.
        browser.tap("start-anyway").await;
        browser.picture(&format!("rest-asked-{animal}")).await;
        assert!(browser.text("sheet").await.contains("comes freely"));
        browser.tap("rest-keep").await;
        let state = "return document.getElementById('board').dataset.state";
        assert_eq!(browser.page.execute(state, vec![]).await.unwrap(), "idle");
        browser.tap("start-anyway").await;
        browser.tap("start").await;
        browser.find("act-end").await;
    }
    browser.close().await;
    assert!(notices > 0, "the demo has agreed swaps");
}
