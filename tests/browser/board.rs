//! The Board's screen: pads lie as the board lies, and all that is needed in a session fits it, from 2 to 60 words.

use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::phone::{STAND_IN, reads};
use fantoccini::Locator;
use sayso_model::{
    AnimalCard, AnimalId, BoardLayout, Body, Event, EventId, HomeCard, HomeId, Label, MediaType, Moment, Note, Picture,
    PictureCard, PictureOf, Placed, RewardCard, RewardId, Source, Species, Stage, StageChoice, WordCard, WordId, Zone,
};
use sayso_store::{Appended, Store};
use serde_json::{Value, json};
use tempfile::TempDir;
use uuid::Uuid;

const SMALL: (u32, u32) = (360, 640);
const TABLET: (u32, u32) = (768, 1024);
const DESK: (u32, u32) = (1280, 850);
const SAYS: [&str; 12] =
    ["apple", "ball", "scratch", "garden", "tug", "lap", "walk", "brush", "water", "sniff", "music", "all done"];

/// Long words for boards of more words than those: one of these, and one of those.
const LONG: [[&str; 7]; 2] = [
    ["Garten", "Kuschel", "Spiel", "Wasser", "Leckerli", "Sofa", "Streichel"],
    ["zeit", "platz", "runde", "pause", "decke", "kiste", " holen"],
];

/// A picture, 192 by 192 pixels: the program's own icon.
const ICON: &[u8] = include_bytes!("../../crates/web/src/assets/icon-192.png");

/// A home of one dog with so many words, the first two of them to be shown, the last one closing.
pub struct Home {
    pub dir: TempDir,
    pub animal: AnimalId,
}

impl Home {
    /// `board` is rows and columns, with the words row by row but for one blank place after the first. Every second word
    /// has a picture.
    pub async fn new(words: usize, board: Option<(u8, u8)>) -> Self {
        Self::with(words, board, false).await
    }

    /// The same, where what words bring has long names, food too.
    async fn with(words: usize, board: Option<(u8, u8)>, long_names: bool) -> Self {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        let home = HomeId(Uuid::now_v7());
        let at: Moment = "2026-03-01T08:00:00Z".parse().unwrap();
        let animal = AnimalId(Uuid::now_v7());
        let event = |body: Body| Event {
            id: EventId(Uuid::now_v7()),
            home,
            animal: matches!(body, Body::StageChoice(_)).then_some(animal),
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body,
        };
        let label = |text: &str| Label::new(text).unwrap();
        let card: AnimalCard = serde_json::from_value(json!({
            "animal": animal, "name": "Pip", "species": Species::Dog, "weight_kg": 12.0, "life_stage": "neutered_adult", "active": true
        }))
        .unwrap();
        let apple: RewardCard = serde_json::from_value(json!({
            "reward": RewardId(Uuid::now_v7()), "name": "apple with seeds", "reward_kind": "food", "kcal_per_piece": 2.0, "most_per_day": 12
        }))
        .unwrap();
        let ball: RewardCard = serde_json::from_value(
            json!({ "reward": RewardId(Uuid::now_v7()), "name": "the ball", "reward_kind": "play" }),
        )
        .unwrap();
        let hedgehog: RewardCard = serde_json::from_value(json!({
            "reward": RewardId(Uuid::now_v7()), "name": "the squeaky orange hedgehog from the upstairs cupboard", "reward_kind": "play"
        }))
        .unwrap();
        let crisps: RewardCard = serde_json::from_value(json!({
            "reward": RewardId(Uuid::now_v7()), "name": "dried sweet potato crisps", "reward_kind": "food", "kcal_per_piece": 1.5
        }))
        .unwrap();
        let mut things = vec![apple, ball];
        things.extend([hedgehog, crisps].into_iter().filter(|_| long_names));
        let brings: Vec<RewardId> = things.iter().map(|r| r.reward).collect();
        let says: Vec<String> = (0..words)
            .map(|w| {
                if w + 1 == words && words > 2 {
                    "all done".to_owned()
                } else if w < 11 {
                    SAYS[w].to_owned()
                } else {
                    format!("{}{}", LONG[0][w % 7], LONG[1][w / 7 % 7])
                }
            })
            .collect();
        let cards: Vec<WordCard> = says
            .iter()
            .enumerate()
            .map(|(w, says)| WordCard {
                word: WordId(Uuid::now_v7()),
                says: label(says),
                means: None,
                // A card without its answers is filled in before anything is planned.
                answer: Some(Note::new("Give it at once").unwrap()),
                not_now: Some(Note::new("Not now").unwrap()),
                reward: Some(if w == 0 { brings[0] } else { brings[1 + w % (brings.len() - 1)] }),
                closing: says == "all done",
                animals: Vec::new(),
                active: true,
            })
            .collect();
        let mut events =
            vec![event(HomeCard { name: label("The house"), zone: Zone::utc() }.into()), event(card.into())];
        events.extend(things.into_iter().map(|r| event(r.into())));
        events.extend(cards.iter().map(|c| event(c.clone().into())));
        events.extend(
            cards[..2].iter().map(|c| event(StageChoice { word: c.word, stage: Stage::Show, because: None }.into())),
        );
        if let Some((rows, columns)) = board {
            let places = (0..rows).flat_map(|r| (0..columns).map(move |c| (r, c))).enumerate().filter(|(i, _)| *i != 1);
            let placed = places.zip(&cards).map(|((_, (row, column)), w)| Placed { word: w.word, row, column });
            events.push(event(BoardLayout { rows, columns, language: None, words: placed.collect() }.into()));
        }
        let sha256 = store.put_clip(ICON.to_vec()).await.unwrap().to_string();
        let picture = Picture { sha256, media_type: MediaType::Png, width: 192, height: 192 };
        events.extend(cards.iter().skip(1).step_by(2).map(|c| {
            event(PictureCard { shows: PictureOf::Word { word: c.word }, picture: Some(picture.clone()) }.into())
        }));
        events.push(event(PictureCard { shows: PictureOf::Animal { animal }, picture: Some(picture) }.into()));
        for outcome in store.append(events).await.unwrap() {
            assert_eq!(outcome, Appended::New);
        }
        store.close().await.unwrap();
        Self { dir, animal }
    }
}

/// Why a session cannot be held on this screen without scrolling: all controls must lie in it, not over each other, and
/// be large enough.
const FAULTS: &str = "
const board = document.getElementById('board');
const top = document.querySelector('header.top').getBoundingClientRect().bottom;
const nav = document.querySelector('nav.thumb').getBoundingClientRect();
const end = nav.height > 0 ? nav.top : innerHeight;
const all = [...document.querySelectorAll('.stage button')].filter((b) => b.checkVisibility({ visibilityProperty: true }));
const name = (b) => b.dataset.test ?? b.textContent;
const faults = [];
if (window.scrollY > 0) faults.push(`scrolled by ${scrollY}`);
for (const b of all) {
  const r = b.getBoundingClientRect();
  if (r.top < top - 1 || r.bottom > end + 1) faults.push(`${name(b)} lies at ${r.top} to ${r.bottom} of ${top} to ${end}`);
  if (r.height < 43.5 || r.width < 43.5) faults.push(`${name(b)} is ${r.width} by ${r.height}`);
  const spots = [0.5, 3 / r.height, 1 - 3 / r.height].map((y) => document.elementFromPoint(r.left + r.width / 2, r.top + y * r.height));
  const hit = spots.find((h) => h && !b.contains(h));
  if (hit) faults.push(`${name(b)} is covered by ${hit.outerHTML.slice(0, 80)}`);
  for (const s of [b, ...b.querySelectorAll('span')]) {
    if (s.textContent.trim() && parseFloat(getComputedStyle(s).fontSize) < 12) faults.push(`${name(b)} in ${getComputedStyle(s).fontSize}`);
  }
}
const head = document.querySelector('header.top .picture')?.getBoundingClientRect();
if (!head || head.height < 43 || head.width < 43) faults.push(`the animal's picture at the head is ${head?.width} by ${head?.height}`);
if (top > 55) faults.push(`the bar above takes ${top}`);
for (const img of document.querySelectorAll('.stage .pad img')) {
  const pad = img.closest('.pad');
  if (!img.checkVisibility({ visibilityProperty: true })) continue;
  if (!img.complete || img.naturalWidth === 0) faults.push(`${name(pad)}: its picture did not come`);
  const r = img.getBoundingClientRect(), p = pad.getBoundingClientRect();
  if (r.width < 15 || r.left < p.left || r.right > p.right || r.top < p.top || r.bottom > p.bottom) faults.push(`${name(pad)}: its picture is ${r.width} wide at ${r.left}, ${r.top}`);
  // As large as the pad allows: two thirds of what its words leave, the smaller way.
  const says = pad.querySelector('.says').getBoundingClientRect();
  const below = [...pad.querySelectorAll('.says, .does, .gives')].filter((s) => s.checkVisibility()).reduce((sum, s) => sum + s.offsetHeight, 0);
  const room = says.left > r.right || says.right < r.left ? p.height - 10 : p.height - below - 16;
  if (Math.min(r.width, r.height) < 0.66 * Math.min(room, 0.44 * p.width)) faults.push(`${name(pad)}: its picture is ${r.width} by ${r.height} in ${p.width} by ${p.height}`);
  for (const s of pad.querySelectorAll('.says, .does, .gives')) {
    if (!s.checkVisibility()) continue;
    const range = document.createRange();
    range.selectNodeContents(s);
    if ([...range.getClientRects()].some((t) => t.width > 0 && t.left < r.right && t.right > r.left && t.top + 2 < r.bottom && t.bottom - 2 > r.top)) faults.push(`${name(pad)}: its picture covers ${s.className} ${s.textContent}`);
  }
}
for (const s of document.querySelectorAll('.stage .pad .says, .zones button > span')) {
  if (!s.checkVisibility({ visibilityProperty: true })) continue;
  const text = s.firstChild;
  const top = (i) => { const range = document.createRange(); range.setStart(text, i); range.setEnd(text, i + 1); return range.getBoundingClientRect(); };
  for (let i = 1; i < text.data.length; i += 1) {
    const pair = text.data.slice(i - 1, i + 1);
    // A line may end after a space or at a hyphen, nowhere else.
    if (/[\\s\\u00ad-]/.test(pair[0]) || /\\s/.test(pair[1])) continue;
    if (top(i).top > top(i - 1).bottom - 2) faults.push(`${text.data} is broken before ${text.data.slice(i)}`);
  }
  if (s.matches('.zones span')) continue;
  if (s.scrollWidth > s.clientWidth + 1 || s.scrollHeight > s.clientHeight + 2) faults.push(`${text.data} is cut: ${s.scrollWidth} of ${s.clientWidth}, ${s.scrollHeight} of ${s.clientHeight}`);
  const face = s.closest('.face').getBoundingClientRect();
  if (s.getBoundingClientRect().bottom > face.bottom + 1) faults.push(`${text.data} runs out of its pad`);
}
// What a tap does, and what the word brings, is there whole or not at all.
for (const s of document.querySelectorAll('.stage .pad :is(.does, .gives)')) {
  if (!s.checkVisibility({ visibilityProperty: true }) || !s.textContent) continue;
  const r = s.getBoundingClientRect(), face = s.closest('.face').getBoundingClientRect();
  if (s.scrollWidth > s.clientWidth + 1 || s.scrollHeight > s.clientHeight + 2) faults.push(`${s.textContent} is cut: ${s.scrollWidth} of ${s.clientWidth}, ${s.scrollHeight} of ${s.clientHeight}`);
  if (r.top < face.top - 1 || r.bottom > face.bottom + 1) faults.push(`${s.textContent} runs out of its pad: ${r.top} to ${r.bottom} of ${face.top} to ${face.bottom}`);
}
if (document.documentElement.scrollWidth > document.documentElement.clientWidth) faults.push('scrolls sideways');
return faults;";

async fn faults(browser: &Browser) -> Vec<String> {
    let found = browser.page.execute(FAULTS, vec![]).await.unwrap();
    found.as_array().into_iter().flatten().filter_map(Value::as_str).map(str::to_owned).collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_session_fits_the_screen_from_two_words_to_sixty() {
    let mut wrong = Vec::new();
    let browser = Browser::open(PHONE).await;
    // Words, rows and columns of the board.
    for (words, board) in [
        (2, None),
        (7, Some((2, 4))),
        (9, None),
        (12, None),
        (15, Some((3, 6))),
        (30, None),
        (30, Some((5, 7))),
        (60, Some((6, 11))),
    ] {
        let home = Home::with(words, board, true).await;
        let server = Server::start(home.dir.path(), 0);
        let board_name = board.map_or_else(|| "loose".to_owned(), |(rows, columns)| format!("{rows}x{columns}"));
        let page = server.url(&format!("/a/{}/board", home.animal));
        // All languages where room is scarcest.
        let languages: &[&str] = match words {
            9 => &["en", "de", "es", "fr", "pt", STAND_IN],
            12 => &["en", "de", STAND_IN],
            30 => &["de"],
            _ => &["en", STAND_IN],
        };
        for language in languages {
            browser.resize(PHONE).await;
            reads(&browser, &server, language).await;
            browser.goto(&page).await;
            if *language == languages[0] {
                browser.tap("start").await;
            }
            browser.find("act-joined").await;
            let sizes = [(PHONE, "phone"), (SMALL, "small"), (TABLET, "tablet"), (DESK, "desk")];
            for (size, name) in &sizes[..if *language == languages[0] { 4 } else { 2 }] {
                browser.resize(*size).await;
                browser.page.execute("window.scrollTo(0, 0)", vec![]).await.unwrap();
                tokio::time::sleep(std::time::Duration::from_millis(300)).await;
                browser.picture(&format!("board-{words}-{board_name}-{name}-{language}")).await;
                let found = faults(&browser).await;
                wrong.extend(found.into_iter().map(|f| format!("{words} words, {name}, {language}: {f}")));
            }
        }
        reads(&browser, &server, "en").await;
        browser.goto(&page).await;
        browser.find("act-joined").await;
        for (size, name) in [(PHONE, "phone"), (SMALL, "small")] {
            if words < 30 || (words == 30 && size == PHONE && board.is_none()) {
                continue;
            }
            browser.resize(size).await;
            browser.tap("zone-0").await;
            browser.find("whole").await;
            tokio::time::sleep(std::time::Duration::from_millis(300)).await;
            browser.picture(&format!("board-{words}-{}-zone-{name}", board.is_some())).await;
            wrong.extend(faults(&browser).await.into_iter().map(|f| format!("{words} words, a zone, {name}: {f}")));
            browser.press("[data-part=pads] .pad:not(.elsewhere, :disabled)").await;
            browser.find("given").await;
            browser.tap("given").await;
            browser.tap("then-took").await;
            browser.tap("whole").await;
            browser.find("zone-0").await;
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

#[tokio::test(flavor = "multi_thread")]
async fn pads_lie_where_the_buttons_lie_and_blank_places_stay() {
    let home = Home::new(4, Some((2, 3))).await;
    let server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let script = "return [...document.querySelectorAll('[data-part=pads] > *')].map((c) => { const r = c.getBoundingClientRect(); return [c.querySelector('.says')?.textContent ?? '', Math.round(r.left), Math.round(r.top)]; })";
    // Left on the floor is left on the screen, also where the words run from right to left.
    for language in ["en", STAND_IN] {
        reads(&browser, &server, language).await;
        browser.goto(&server.url(&format!("/a/{}/board", home.animal))).await;
        browser.find("start").await;
        let cells = browser.page.execute(script, vec![]).await.unwrap();
        let cells: Vec<(String, i64, i64)> = serde_json::from_value(cells).unwrap();
        let says: Vec<&str> = cells.iter().map(|c| c.0.as_str()).collect();
        assert_eq!(says, ["apple", "", "ball", "scratch", "all done", ""], "before any session too");
        for (i, (_, left, top)) in cells.iter().enumerate() {
            assert_eq!((*left, *top), (cells[i % 3].1, cells[i / 3 * 3].2), "place {i}");
        }
        assert!(cells[0].1 < cells[1].1 && cells[1].1 < cells[2].1 && cells[0].2 < cells[3].2, "{language}: {cells:?}");
    }
    browser.close().await;
}

/// Sum of the layout shifts that no person's input explains, as the browser itself counts them.
const SHIFT: &str = "const done = arguments[0];
let sum = 0;
new PerformanceObserver((l) => { for (const e of l.getEntries()) if (!e.hadRecentInput) sum += e.value; }).observe({ type: 'layout-shift', buffered: true });
setTimeout(() => done(sum), 2500);";

#[tokio::test(flavor = "multi_thread")]
async fn nothing_jumps_while_the_page_comes() {
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut shifts = Vec::new();
    for (animal, size) in story.animals().keys().flat_map(|animal| [(animal, PHONE), (animal, SMALL)]) {
        browser.resize(size).await;
        let board = server.url(&format!("/a/{animal}/board"));
        for mode in ["showing", "invitation", "day"] {
            browser.goto(&board).await;
            browser.tap(&format!("mode-{mode}")).await;
            browser.goto(&board).await;
            browser.until("the board", "return document.getElementById('board').dataset.ready === 'yes'").await;
            let shift = browser.page.execute_async(SHIFT, vec![]).await.unwrap().as_f64().unwrap();
            shifts.push((size.0, mode, (shift * 1000.0).round() / 1000.0));
        }
    }
    // Opened in a rest, with the note above the mat; of swaps too, where some were agreed. Over a slow network: what the page
    // shows before its scripts come is seen.
    let slow = json!({ "offline": false, "latency": 300, "downloadThroughput": -1, "uploadThroughput": -1 });
    browser.devtools("Network.enable", json!({})).await;
    browser.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
    browser.devtools("Network.emulateNetworkConditions", slow).await;
    let mut notes = 0;
    for animal in story.animals().keys() {
        let board = server.url(&format!("/a/{animal}/board"));
        browser.goto(&board).await;
        browser.tap("mode-showing").await;
        browser.tap("start").await;
        browser.tap("act-sign").await;
        browser.tap("sign-strong").await;
        browser.tap("stop-end").await;
        browser.find("rests").await;
        browser.all_sent().await;
        for (size, mode) in [PHONE, SMALL].into_iter().flat_map(|s| ["showing", "invitation", "day"].map(|m| (s, m))) {
            browser.resize(size).await;
            browser.tap(&format!("mode-{mode}")).await;
            browser.goto(&board).await;
            browser.until("the board", "return document.getElementById('board').dataset.ready === 'yes'").await;
            let shift = browser.page.execute_async(SHIFT, vec![]).await.unwrap().as_f64().unwrap();
            notes += usize::from(browser.page.find(Locator::Css("[data-test=swaps-over]")).await.is_ok());
            shifts.push((size.0, mode, (shift * 1000.0).round() / 1000.0));
        }
    }
    assert!(notes > 0, "the demo has agreed swaps");
    // That the browser does count: something put in above moves all else.
    let push = "const d = document.createElement('div'); d.style.height = '300px'; document.body.prepend(d);";
    let moved = browser.page.execute_async(&format!("{push}{SHIFT}"), vec![]).await.unwrap().as_f64().unwrap();
    assert!(moved > 0.1, "{moved}");
    browser.close().await;
    println!("layout shift: {shifts:?}");
    assert!(shifts.iter().all(|(.., s)| *s < 0.1), "{shifts:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn letters_twice_as_large_leave_every_tab_and_pad_in_reach() {
    let browser = Browser::open(PHONE).await;
    for (words, board) in [(2, None), (4, None), (4, Some((3, 2))), (7, Some((2, 4)))] {
        let home = Home::new(words, board).await;
        let server = Server::start(home.dir.path(), 0);
        browser.goto(&server.url(&format!("/a/{}/board", home.animal))).await;
        browser.tap("start").await;
        browser.find("act-joined").await;
        browser.page.execute("document.documentElement.style.fontSize = '200%'", vec![]).await.unwrap();
        tokio::time::sleep(std::time::Duration::from_millis(400)).await;
        browser.picture(&format!("board-large-letters-{words}-{}", board.is_some())).await;
        let script = "const out = [];
          if (document.documentElement.scrollWidth > document.documentElement.clientWidth) out.push('scrolls sideways');
          for (const t of document.querySelectorAll('nav.thumb > ul > li')) {
            const r = t.getBoundingClientRect();
            if (r.left < -1 || r.right > innerWidth + 1 || r.bottom > innerHeight + 1) out.push(`${t.textContent} at ${r.left} to ${r.right}`);
          }
          for (const p of document.querySelectorAll('[data-part=pads] .pad')) {
            if (arguments[0] && p.getBoundingClientRect().right > innerWidth) out.push(`${p.dataset.test} runs off to the right`);
            p.scrollIntoView({ block: 'center' });
            const r = p.getBoundingClientRect();
            const hit = document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2);
            if (!p.contains(hit)) out.push(`${p.dataset.test} is covered by ${hit?.outerHTML.slice(0, 80)}`);
          }
          // Of the frame only one line of tabs stays on the screen.
          window.scrollTo(0, document.body.scrollHeight);
          const bar = document.querySelector('nav.thumb').offsetHeight, head = document.querySelector('header.top').getBoundingClientRect();
          if (bar > 64) out.push(`the tabs are ${bar} px high`);
          if (head.bottom > 0) out.push(`the head stays, to ${head.bottom}`);
          for (const t of document.querySelectorAll('nav.thumb > ul > li > :is(a, details)')) {
            if (t.scrollWidth > t.clientWidth + 1 || t.offsetWidth < 44) out.push(`${t.textContent} in ${t.clientWidth}`);
          }
          return out;";
        // Two columns need no frame that moves sideways, also on the narrowest phone.
        for size in [PHONE, SMALL] {
            browser.resize(size).await;
            tokio::time::sleep(std::time::Duration::from_millis(400)).await;
            let found = browser.page.execute(script, vec![json!(words <= 4)]).await.unwrap();
            assert_eq!(found, json!([]), "{words} words, {}", size.0);
        }
        browser.resize(PHONE).await;
    }
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn the_boards_editor_shows_every_word_whole() {
    let home = Home::new(7, Some((2, 4))).await;
    let server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{}/words/board", home.animal))).await;
    browser.css("#board select").await;
    let script = "const pen = document.createElement('canvas').getContext('2d');
      return [...document.querySelectorAll('#board select')].filter((s) => {
        const style = getComputedStyle(s);
        pen.font = `${style.fontSize} ${style.fontFamily}`;
        return pen.measureText(s.selectedOptions[0].text).width > s.clientWidth - parseFloat(style.paddingLeft) - parseFloat(style.paddingRight);
      }).map((s) => s.selectedOptions[0].text);";
    let cut = browser.page.execute(script, vec![]).await.unwrap();
    browser.close().await;
    assert_eq!(cut, json!([]));
}
