//! What warns is read whole where one gives: on the lowest phone, in letters twice as large, in every language.

use crate::board::Home;
use crate::harness::{Browser, PHONE, Server};
use crate::large::TWICE;
use crate::phone::{NARROW, reads};
use crate::session::{at_board, looked};
use fantoccini::Locator;

/// What of the panel cannot be read: a caution, or what is asked, of which a line is cut or lies under something else. Beside a
/// caution what the household agreed may go on under it.
const UNREAD: &str = "
const out = [];
const flows = document.getElementById('board').classList.contains('flows');
const warns = document.querySelector('.panel .care button');
const read = [warns, ...document.querySelectorAll(warns ? '.panel .tell p:not(.quiet)' : '.panel .tell p')];
for (const e of read.filter((e) => e?.textContent.trim() && e.checkVisibility() && !e.ariaHidden)) {
  if (flows) e.scrollIntoView({ block: 'center' });
  const range = document.createRange();
  range.selectNodeContents(e);
  const box = e.getBoundingClientRect();
  const text = e.querySelector('span') ?? e;
  if (text.scrollHeight > text.clientHeight + 2) out.push(`${e.textContent}: ${text.scrollHeight} of ${text.clientHeight} px`);
  for (const line of [...range.getClientRects()].filter((r) => r.width > 1)) {
    const hits = [0.15, 0.5, 0.85].map((at) => document.elementFromPoint(line.left + line.width / 2, line.top + line.height * at));
    const seen = hits.every((hit) => hit && (e.contains(hit) || hit.contains(e)));
    if (!seen || line.top < box.top - 2 || line.bottom > box.bottom + 2) out.push(`${e.textContent}: a line at ${Math.round(line.top)} cannot be read`);
  }
}
if (flows) scrollTo(0, 0);
return out;";

/// Words on pads and tabs that are cut, and pads lower than a thumb needs.
const CUT: &str = "
const out = [];
for (const e of document.querySelectorAll('[data-part=pads] :is(.says, .count, .does), .modes button')) {
  if (!e.textContent.trim() || !e.checkVisibility() || getComputedStyle(e).clipPath !== 'none') continue;
  const button = e.closest('button');
  const box = button.getBoundingClientRect();
  const range = document.createRange();
  range.selectNodeContents(e);
  for (const r of range.getClientRects()) {
    const leading = Math.min(3, r.height * 0.12);
    if (r.width > 0 && (r.top + leading < box.top || r.bottom - leading > box.bottom)) out.push(`${e.textContent} is cut: ${r.top} to ${r.bottom} in ${box.top} to ${box.bottom}`);
  }
  if (e.scrollHeight > e.clientHeight + 3) out.push(`${e.textContent} is cut: ${e.scrollHeight} of ${e.clientHeight} high`);
  if (button.scrollWidth > button.clientWidth + 1) out.push(`${button.textContent} is cut: ${button.scrollWidth} of ${button.clientWidth} wide`);
  if (box.height < 43.5) out.push(`${button.textContent} is ${box.height} high`);
}
return out;";

/// A lesson that stands open.
const LESSON: &str =
    "return [...document.querySelectorAll('.first-lesson')].map((l) => `a lesson in a session: ${l.textContent}`)";

/// Where the buttons lie, by their names.
const PLACES: &str = "return [...document.querySelectorAll('.slots button, .actions button, .modes button, [data-part=pads] .pad')].filter((b) => b.checkVisibility({ visibilityProperty: true })).map((b) => { const r = b.getBoundingClientRect(); return `${b.dataset.test} ${b.dataset.test === 'catch-how' ? b.textContent : ''} at ${Math.round(r.left)}, ${Math.round(r.top)}`; })";

/// What is wrong from the start of a session through a showing, an invitation, a "not now" and a catch, all of a food with a
/// caution. Where `stays`, no button may have another place than before.
async fn walked(browser: &Browser, name: &str, stays: bool) -> Vec<String> {
    let mut wrong = Vec::new();
    let mut places = std::collections::BTreeMap::<String, String>::new();
    let mut look = async |when: &str| {
        // A tap may have scrolled there.
        browser.page.execute("scrollTo(0, 0)", vec![]).await.unwrap();
        for script in [UNREAD, CUT, LESSON] {
            let found = looked(browser, &format!("warned-{name}-{when}"), script).await;
            wrong.extend(found.iter().map(|f| format!("{name}, {when}: {f}")));
        }
        for at in looked(browser, &format!("warned-{name}-{when}"), PLACES).await {
            let (what, place) = at.split_once(" at ").unwrap();
            let was = places.entry(what.to_owned()).or_insert_with(|| place.to_owned());
            if stays && was != place {
                wrong.push(format!("{name}, {when}: {what} was at {was} and is at {place}"));
            }
        }
    };
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.tap("pad-apple").await;
    browser.find("given").await;
    browser.find("care").await;
    look("pressed").await;
    browser.tap("given").await;
    browser.find("then-took").await;
    look("given").await;
    browser.tap("then-took").await;
    browser.tap("mode-invitation").await;
    browser.tap("choose-myself").await;
    browser.tap("pad-apple").await;
    browser.tap("offer").await;
    browser.find("care").await;
    look("waiting").await;
    browser.find("nothing").await;
    look("the wait is over").await;
    browser.tap("pad-apple").await;
    browser.tap("late-in-time").await;
    browser.find("invitation-given").await;
    look("it pressed").await;
    browser.tap("invitation-given").await;
    browser.tap("took-yes").await;
    browser.tap("mode-day").await;
    browser.tap("pad-apple").await;
    browser.find("answer-given").await;
    look("answering").await;
    browser.tap("answer-declined").await;
    browser.find("then-ignored").await;
    look("not now").await;
    browser.tap("then-ignored").await;
    browser.tap("mode-catch").await;
    browser.tap("pad-apple").await;
    browser.find("catch-show").await;
    look("it asked").await;
    assert!(browser.page.find(Locator::Css("[data-test=care]")).await.is_ok(), "the caution stands where one gives");
    wrong
}

#[tokio::test(flavor = "multi_thread")]
async fn a_caution_is_read_whole_where_one_gives_on_the_lowest_phone_in_every_language() {
    let mut wrong = Vec::new();
    let cases = [
        ("de", 8, (3, 3)),
        ("en", 8, (3, 3)),
        ("de", 11, (3, 4)),
        ("es", 11, (3, 4)),
        ("fr", 11, (3, 4)),
        ("pt", 11, (3, 4)),
    ];
    for (language, words, board) in cases {
        let home = Home::new(words, Some(board)).await;
        let server = Server::start(home.dir.path(), 0);
        let browser = Browser::open(NARROW).await;
        reads(&browser, &server, language).await;
        at_board(&browser, &server, home.animal).await;
        wrong.extend(walked(&browser, &format!("{language}-{words}"), true).await);
        browser.close().await;
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_caution_is_read_whole_in_letters_twice_as_large() {
    let mut wrong = Vec::new();
    for (language, size) in [("es", NARROW), ("fr", PHONE)] {
        let home = Home::new(7, Some((2, 4))).await;
        let server = Server::start(home.dir.path(), 0);
        let browser = Browser::open_with(size, &[TWICE]).await;
        reads(&browser, &server, language).await;
        at_board(&browser, &server, home.animal).await;
        wrong.extend(walked(&browser, &format!("{language}-large"), false).await);
        browser.close().await;
    }
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}
