//! Pages on a phone, in languages whose words are longer or run the other way, and with letters twice as large.

use crate::every_page::{every_page, growled, prepared, signed, unheld};
use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use sayso_model::SignLevel;
use serde_json::{Value, json};

/// The narrowest phone in use.
pub const NARROW: (u32, u32) = (360, 640);
/// A page and a half of a phone: what Today may take.
const TODAY_PX: i64 = 1_300;
/// The stand-in for a language: English a third longer, from right to left.
pub const STAND_IN: &str = "pseudo";

/// Sets the language this browser reads a server's pages in.
pub async fn reads(browser: &Browser, server: &Server, language: &str) {
    reads_at(browser, &server.url("/"), language).await;
}

/// The same at another address.
pub async fn reads_at(browser: &Browser, url: &str, language: &str) {
    let cookie = json!({ "name": "sayso_language", "value": language, "url": url });
    browser.devtools("Network.setCookie", cookie).await;
}

/// Words of Today that neither have a line in the open nor stand in the summary of those folded.
const UNNAMED: &str = "
const folded = document.querySelector('[data-test=more-words] > summary')?.textContent ?? '';
return [...document.querySelectorAll('details.word')].filter((w) => !w.checkVisibility() || w.closest('[data-test=more-words]'))
  .map((w) => w.querySelector('strong').textContent).filter((says) => !folded.includes(says));";

/// A day on which three things concern its wellbeing.
const THREE: &str = "a growl, guarding and something swallowed";

#[tokio::test(flavor = "multi_thread")]
async fn today_is_a_screen_and_a_half_at_most_for_every_animal() {
    let mut heights = Vec::new();
    let cases = [
        ("calm", None, true),
        ("before a session", None, false),
        ("growled", Some(3.0), true),
        ("growled, before a session", Some(3.0), false),
        ("growled today", Some(0.0), true),
        (THREE, Some(0.0), true),
    ];
    for (how, days_ago, held) in cases {
        let dir = demo_dir();
        let (_, story) = story(dir.path()).await;
        if !held {
            unheld(dir.path()).await;
        }
        if let Some(days_ago) = days_ago {
            growled(dir.path(), story.animals().into_keys(), days_ago).await;
            let also = [("guards food, a thing or the button", 1.0), ("swallowed something that is no food", 2.0)];
            for (sign, days_ago) in also.into_iter().filter(|_| how == THREE) {
                signed(dir.path(), story.animals().into_keys(), days_ago, (sign, SignLevel::Mild)).await;
            }
        }
        let server = Server::start(dir.path(), 0);
        let browser = Browser::open(PHONE).await;
        for language in ["en", "de", "es", "fr", "pt", STAND_IN] {
            reads(&browser, &server, language).await;
            for (animal, card) in story.animals() {
                browser.goto(&server.url(&format!("/a/{animal}/today"))).await;
                browser.css("[data-test=next] .act").await;
                let look = |script| browser.page.execute(script, vec![]);
                let said = look("return document.documentElement.lang").await.unwrap();
                assert!(language == STAND_IN || said == language, "{said}");
                let warned = look("return document.querySelectorAll('main > .stop').length").await.unwrap();
                assert!(days_ago.is_none() || warned.as_u64() == Some(1), "a growl stands at the top, in one card");
                let further = look("return document.querySelectorAll('main > .stop .also > li').length").await.unwrap();
                let next = look("return document.querySelector('[data-test=next] .act').textContent").await.unwrap();
                assert!(!(how == THREE && language == "en" && next.as_str().unwrap().contains("No session")), "{next}");
                assert!(how != THREE || further.as_u64() >= Some(2), "what else there is are lines of it");
                let planned =
                    look("return Boolean(document.querySelector('[data-test=next] .primary'))").await.unwrap();
                assert!(held || planned == json!(true), "{how}: a session stands there");
                browser.picture(&format!("today-{how}-{language}-{}", card.name)).await;
                // What has no line of its own is named.
                let unnamed = look(UNNAMED).await.unwrap();
                assert_eq!(unnamed.as_array().map(Vec::len), Some(0), "{how}, {language}, {}: {unnamed}", card.name);
                let height = look("return document.scrollingElement.scrollHeight").await.unwrap();
                heights.push((how, language, card.name.to_string(), height.as_i64().unwrap()));
            }
        }
        browser.close().await;
    }
    println!("height of Today at 390 px: {heights:?}");
    assert!(heights.len() >= 18, "{heights:?}");
    assert!(heights.iter().all(|(.., height)| *height <= TODAY_PX), "{heights:?}");
}

/// What cannot be read or reached: a page wider than the screen, text cut at the side, a tab or a control under something
/// else or beyond the edge. What scrolls in a frame of its own may be wider.
const OUT_OF_REACH: &str = "
const out = [];
const name = (e) => e.outerHTML.replace(/\\s+/g, ' ').slice(0, 140);
const seen = (e) => e.checkVisibility({ visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: true });
const room = document.documentElement.clientWidth;
const hides = (v) => v === 'hidden' || v === 'clip';
const aside = (e) => e.closest('.unseen, .skip, svg, [hidden], option, optgroup, main:has(#board) > h1');
const wide = document.scrollingElement.scrollWidth;
if (wide > room) {
  const body = document.body.getBoundingClientRect();
  const beyond = (e) => { const r = e.getBoundingClientRect(); return r.left < body.left - 1 || r.right > body.right + 1; };
  const widest = [...document.querySelectorAll('body *')].filter((e) => seen(e) && !aside(e) && !e.closest('.scroll, nav.thumb') && beyond(e));
  out.push(`scrolls sideways: ${wide} of ${room}: ${widest.slice(-3).map(name).join(' | ')}`);
}
for (const e of document.querySelectorAll('body *')) {
  if (!seen(e) || aside(e) || e.matches('input, select')) continue;
  const style = getComputedStyle(e);
  if (style.clipPath !== 'none') continue;
  if (hides(style.overflowX) && e.scrollWidth > e.clientWidth + 1) out.push(`cut: ${e.scrollWidth} of ${e.clientWidth}: ${name(e)}`);
}
const hit = (e) => {
  const r = e.getBoundingClientRect();
  if (r.left < -1 || r.right > room + 1) return `from ${Math.round(r.left)} to ${Math.round(r.right)}`;
  const at = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
  return at && (e.contains(at) || at.contains(e) || at.closest('label')?.contains(e)) ? '' : `under ${at ? name(at) : 'nothing'}`;
};
// On a desk's screen the tabs are those at the side, which the page shows in their place.
const bar = innerWidth < 960;
const tabs = [...document.querySelectorAll('nav.thumb > ul > li')].filter((t) => bar || seen(t));
for (const t of tabs) {
  const why = hit(t);
  if (why || t.getBoundingClientRect().bottom > innerHeight + 1) out.push(`tab ${t.textContent.slice(0, 20)} ${why}`);
}
if (bar && document.querySelector('nav.thumb') && tabs.length !== 5) out.push(`${tabs.length} tabs`);
for (const e of document.querySelectorAll('main :is(a, button, summary, select, textarea, input:not([type=hidden]))')) {
  if (!seen(e) || aside(e) || e.disabled) continue;
  if (getComputedStyle(e).display === 'inline') continue;
  e.scrollIntoView({ block: 'center', inline: 'nearest' });
  const why = hit(e);
  if (why) out.push(`out of reach, ${why}: ${name(e)}`);
}
scrollTo(0, 0);
return out;";

/// What of the page cannot be read or reached.
pub async fn faults(browser: &Browser, what: &str) -> Vec<String> {
    let found = browser.page.execute(OUT_OF_REACH, vec![]).await.unwrap();
    let found: Vec<&str> = found.as_array().expect("a list").iter().filter_map(Value::as_str).collect();
    found.iter().map(|f| format!("{what}: {f}")).collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn every_page_can_be_read_and_reached_in_longer_words_and_larger_letters() {
    let dir = demo_dir();
    let about = prepared(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let pages = every_page(&browser, &server, &about).await;
    let mut wrong = Vec::new();
    // German has the longest single words.
    for (language, runs) in [(STAND_IN, "rtl"), ("de", "ltr")] {
        reads(&browser, &server, language).await;
        for path in &pages {
            browser.goto(&server.url(path)).await;
            browser.css("main").await;
            let turned = browser.page.execute("return getComputedStyle(document.documentElement).direction", vec![]);
            assert_eq!(turned.await.unwrap(), runs, "{path}");
            wrong.extend(faults(&browser, &format!("{path} ({language})")).await);
            browser.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
            // Until what follows the size of the letters has followed.
            tokio::time::sleep(std::time::Duration::from_millis(200)).await;
            browser.picture(&format!("large-{language}-{}", path.replace('/', "_"))).await;
            wrong.extend(faults(&browser, &format!("{path} ({language}, 200 %)")).await);
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Words of headings, buttons and names of figures that a line ends within, without a hyphen. What is drawn for screen readers
/// only has no width.
const BROKEN_WORDS: &str = r"
const out = [];
document.querySelectorAll('details').forEach((d) => (d.open = true));
const names = 'h1, h2, h3, dt, th, button, a.button, summary, label, legend, caption';
const walker = document.createTreeWalker(document.querySelector('main'), NodeFilter.SHOW_TEXT);
for (let text = walker.nextNode(); text; text = walker.nextNode()) {
  const of = text.parentElement.closest(names);
  if (!of || !of.checkVisibility() || of.clientWidth <= 1 || text.parentElement.closest('.unseen, svg, .pads')) continue;
  for (const word of text.data.matchAll(/[\p{L}\p{N}’]{4,}/gu)) {
    const range = document.createRange();
    range.setStart(text, word.index);
    range.setEnd(text, word.index + word[0].length);
    const lines = new Set([...range.getClientRects()].filter((r) => r.width > 0.5).map((r) => Math.round(r.top)));
    if (lines.size > 1) out.push(`${word[0]} in ${of.tagName}`);
  }
}
return out;";

#[tokio::test(flavor = "multi_thread")]
async fn no_german_word_of_a_name_or_button_is_broken_on_a_small_phone() {
    let dir = demo_dir();
    let about = prepared(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(NARROW).await;
    let pages = every_page(&browser, &server, &about).await;
    reads(&browser, &server, "de").await;
    let mut broken = Vec::new();
    for page in &pages {
        browser.goto(&server.url(page)).await;
        let found = browser.page.execute(BROKEN_WORDS, vec![]).await.unwrap();
        broken.extend(found.as_array().unwrap().iter().map(|word| format!("{page}: {word}")));
    }
    browser.close().await;
    assert!(pages.len() > 30 && broken.is_empty(), "{} pages: {broken:#?}", pages.len());
}

/// Opens a word of Today: whether no sign stands before its name, and the name above all that is said of it.
const OPENED: &str = "
const word = document.querySelector('details.word');
word.open = true;
const summary = word.querySelector('summary');
const sign = getComputedStyle(summary, '::before').content;
const tops = [...summary.children].map((part) => part.getBoundingClientRect());
const head = summary.querySelector('.head').getBoundingClientRect();
const step = summary.querySelector('.step').getBoundingClientRect();
const more = [...word.children].filter((part) => part !== summary && part.checkVisibility()).map((part) => part.getBoundingClientRect().top);
return [sign, head.top === Math.min(...tops.map((r) => r.top)), head.bottom <= step.top + 1, more.length > 0 && more.every((top) => top >= step.bottom - 1)];";

#[tokio::test(flavor = "multi_thread")]
async fn an_opened_word_of_today_keeps_its_name_above_its_step() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for animal in story.animals().into_keys() {
        browser.goto(&server.url(&format!("/a/{animal}/today"))).await;
        browser.css("details.word").await;
        let opened = browser.page.execute(OPENED, vec![]).await.unwrap();
        assert_eq!(opened, json!(["none", true, true, true]), "no sign, the name first, its step, then the rest");
        browser.picture(&format!("opened-{animal}")).await;
    }
    browser.close().await;
}

/// Columns of the board's editor, how wide it is, how wide the page leaves it, and words wider than their list.
const EDITOR: &str = "
const table = document.querySelector('table.board.edited');
const pen = document.createElement('canvas').getContext('2d');
const cut = [...table.querySelectorAll('select')].filter((list) => {
  pen.font = getComputedStyle(list).font;
  return pen.measureText(list.selectedOptions[0].textContent).width > list.clientWidth;
});
return [table.rows[0].cells.length, table.parentElement.scrollWidth, table.parentElement.clientWidth, cut.length];";

#[tokio::test(flavor = "multi_thread")]
async fn five_columns_of_the_boards_editor_are_seen_whole_on_a_phone() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for language in ["en", "de"] {
        reads(&browser, &server, language).await;
        for animal in story.animals().into_keys() {
            browser.goto(&server.url(&format!("/a/{animal}/words/board"))).await;
            browser.css("table.board.edited").await;
            let found = browser.page.execute(EDITOR, vec![]).await.unwrap();
            let (columns, wide, room, cut): (u64, u64, u64, u64) = serde_json::from_value(found).unwrap();
            assert_eq!(columns, 5, "the demo's board");
            assert!(wide <= room && cut == 0, "{language}: {wide} of {room}, {cut} words cut");
        }
    }
    browser.close().await;
}
