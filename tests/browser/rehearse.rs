//! A rehearsal as a person plays it: by taps, by keys and captions alone, and from a seed again.

use crate::accessibility::faults_now;
use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::phone::reads;
use crate::session::run;
use crate::whole::CUT;
use fantoccini::key::Key;
use sayso_model::facts::lessons;
use serde_json::json;
use std::time::Duration;

/// What a person may have to wait for: the animal is in no hurry.
const WAIT: Duration = Duration::from_secs(2);

/// The captions that are in view.
async fn captions(browser: &Browser) -> String {
    browser.text("captions").await
}

async fn key(browser: &Browser, key: &str) {
    let target = browser.page.find(fantoccini::Locator::Css("main")).await.unwrap();
    target.send_keys(key).await.unwrap();
}

#[tokio::test(flavor = "multi_thread")]
async fn an_exercise_from_start_to_feedback_by_taps_and_nothing_is_written() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/rehearse")).await;
    browser.picture("rehearse-list").await;
    browser.follow("[data-test=choose-showing]").await;
    assert!(browser.text("simulation").await.starts_with("A simulation: real animals differ."));
    browser.picture("rehearse-before").await;
    // A day on which nobody presses before it was shown.
    browser.goto(&server.url("/rehearse/showing?character=eager&seed=2")).await;
    browser.tap("start").await;
    for pad in ["pad-treat", "pad-ball", "pad-treat", "pad-out"] {
        browser.tap(pad).await;
        browser.css(&format!("[data-test={pad}][data-state=give]")).await;
        browser.tap(pad).await;
        browser.css(&format!("[data-test={pad}][data-state=idle]")).await;
        tokio::time::sleep(WAIT).await;
    }
    browser.picture("rehearse-runs").await;
    let faults = faults_now(&browser).await;
    assert!(faults.is_empty(), "while it runs: {faults:?}");
    assert!(!captions(&browser).await.is_empty());
    browser.tap("rehearse-end").await;
    browser.find("see").await;
    browser.picture("rehearse-over").await;
    browser.follow("[data-test=see]").await;
    browser.find("change").await;
    let delay = browser.text("row-delay").await;
    assert!(delay.contains("4") && delay.contains("early"), "four showings are too few to say: {delay}");
    assert!(browser.text("measured").await.contains("Showings"));
    // From a notebook at home what is copied is what opens elsewhere, and the page says so.
    let at_home = "return !document.querySelector('[data-at-home]').hidden";
    assert_eq!(run(&browser, at_home).await, json!(true));
    browser.picture("rehearse-went").await;
    browser.resize((1280, 900)).await;
    browser.picture("rehearse-went-wide").await;
    browser.goto(&server.url("/rehearse/free?character=quick&seed=2")).await;
    browser.tap("start").await;
    browser.tap("pad-ball").await;
    browser.picture("rehearse-wide").await;
    browser.resize(PHONE).await;
    browser.goto(&server.url("/rehearse/likes?character=quick&seed=2")).await;
    browser.tap("start").await;
    browser.tap("rehearse-two").await;
    browser
        .until(
            "two things are held out",
            "return document.querySelector('.captions').textContent.includes('On the left:')",
        )
        .await;
    browser.picture("rehearse-likes").await;
    browser.page.back().await.unwrap();
    browser.page.back().await.unwrap();
    browser.find("line").await;
    run(&browser, "document.querySelector('[data-test=line]').scrollIntoView()").await;
    browser.picture("rehearse-line").await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    assert_eq!(before.ledger().all().count(), after.ledger().all().count(), "no event was written");
}

#[tokio::test(flavor = "multi_thread")]
async fn an_exercise_by_keys_and_captions_alone() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    // Somebody wants to go there, within three quarters of a minute.
    browser.goto(&server.url("/rehearse/leaving?character=eager&seed=12")).await;
    browser.until("the script is there", "return document.querySelector('#rehearse').dataset.ready === 'yes'").await;
    run(&browser, "document.querySelector('[data-part=start]').focus()").await;
    let start = browser.page.active_element().await.unwrap();
    start.send_keys(&char::from(Key::Enter).to_string()).await.unwrap();
    browser.css("[data-state=runs]").await;
    // Whoever turned them off presses nothing by them.
    let letters = "const box = document.querySelector('[data-part=letters]'); box.click(); return box.checked";
    assert_eq!(run(&browser, letters).await, json!(false));
    key(&browser, "1").await;
    tokio::time::sleep(Duration::from_millis(300)).await;
    assert!(!captions(&browser).await.contains("You press"), "{}", captions(&browser).await);
    assert_eq!(run(&browser, letters).await, json!(true));
    // Two presses of a key: press and say, then give. What is read is what a screen reader reads.
    for press in ["1", "1"] {
        key(&browser, press).await;
        tokio::time::sleep(Duration::from_millis(500)).await;
    }
    browser.until("it was shown and given", "return (window.all = [...document.querySelectorAll('.captions li')].map((l) => l.textContent).join(' ')).includes('You give: Treat')").await;
    let log = run(&browser, "const l = document.querySelector('[data-part=captions]'); return [l.getAttribute('role'), l.getAttribute('aria-live')]").await;
    assert_eq!(log, json!(["log", "polite"]));
    let leaves = "return [...document.querySelectorAll('.captions li')].some((l) => ['leaves', 'gone'].includes(l.dataset.what))";
    let deadline = tokio::time::Instant::now() + Duration::from_secs(60);
    while run(&browser, leaves).await != json!(true) {
        assert!(tokio::time::Instant::now() < deadline, "nobody left: {}", captions(&browser).await);
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
    browser.picture("rehearse-leaves").await;
    // A slip ends nothing: the key that ends asks to be pressed again.
    key(&browser, "e").await;
    browser
        .until(
            "it asks",
            "return document.querySelector('.captions').textContent.includes('Press E once more to end.')",
        )
        .await;
    assert_eq!(run(&browser, "return document.querySelector('#rehearse').dataset.state").await, json!("runs"));
    key(&browser, "e").await;
    browser.find("see").await;
    // The way on has the focus.
    let see = browser.page.active_element().await.unwrap();
    assert_eq!(see.attr("data-test").await.unwrap().as_deref(), Some("see"));
    run(&browser, "window.leaving = true").await;
    see.send_keys(&char::from(Key::Enter).to_string()).await.unwrap();
    browser.until("the next page", "return !window.leaving && document.readyState === 'complete'").await;
    assert_eq!(browser.text("row-leaving").await, "1 of 1");
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_seed_replays_exactly() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/rehearse/free?character=quick&seed=31")).await;
    browser.tap("start").await;
    for _ in 0..3 {
        browser.tap("pad-ball").await;
        browser.tap("pad-ball").await;
        tokio::time::sleep(WAIT).await;
    }
    // All captions that were shown while it ran.
    browser.tap("rehearse-end").await;
    browser.find("see").await;
    let lived = run(&browser, "return [...document.querySelectorAll('.captions li')].map((l) => l.textContent)").await;
    browser.follow("[data-test=see]").await;
    let address = browser.page.current_url().await.unwrap();
    let list = "return [...document.querySelectorAll('[data-test=list] tbody tr')].map((r) => r.textContent)";
    let first = run(&browser, list).await;
    assert!(first.as_array().unwrap().len() > 6, "{first}");
    browser.goto(address.as_str()).await;
    assert_eq!(first, run(&browser, list).await);
    // What was seen last while it ran is what stands last in the list.
    let lines = lived.as_array().unwrap();
    let last_seen = lines[lines.len() - 2].as_str().unwrap();
    assert!(first.to_string().contains(last_seen), "{last_seen} in {first}");
    browser.tap("watch").await;
    browser.until("it is watched again", "return Number(document.querySelector('#replay').dataset.at) > 1500").await;
    browser.picture("rehearse-again").await;
    browser.close().await;
}

/// Buttons that cannot be tapped where they are drawn: outside the window, or with something else on top.
const COVERED: &str = "
  const all = [...document.querySelectorAll('#rehearse :is([data-word], [data-does])')];
  return all.filter((b) => {
    const r = b.getBoundingClientRect();
    const at = [[r.left + 4, r.top + 4], [r.right - 4, r.bottom - 4], [(r.left + r.right) / 2, (r.top + r.bottom) / 2]];
    return at.some(([x, y]) => !b.contains(document.elementFromPoint(x, y)));
  }).map((b) => b.dataset.test);";

#[tokio::test(flavor = "multi_thread")]
async fn on_small_phones_every_button_of_the_stage_can_be_tapped_and_says_what_it_does() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    for size in [(390, 844), (360, 640), (320, 568), (844, 390), (1366, 650), (1280, 720)] {
        browser.resize(size).await;
        for (exercise, choose) in [
            ("showing", None),
            ("inviting", Some("rehearse-offer")),
            ("evening", None),
            ("stuck", Some("rehearse-offer")),
            ("likes", None),
        ] {
            browser.goto(&server.url(&format!("/rehearse/{exercise}?character=eager&seed=2"))).await;
            browser.tap("start").await;
            browser.css("[data-state=runs]").await;
            assert_eq!(run(&browser, COVERED).await, json!([]), "{exercise} at {size:?}");
            assert_eq!(run(&browser, CUT).await, json!([]), "{exercise} at {size:?}");
            if exercise == "showing" {
                // A press of one's own waits for its thing, with its seconds.
                browser.tap("pad-treat").await;
                browser.css("[data-test=pad-treat][data-state=give]").await;
                assert_eq!(run(&browser, CUT).await, json!([]), "{exercise}, pressed, at {size:?}");
            }
            if let Some(choose) = choose {
                browser.tap(choose).await;
                browser.css("[data-test=pad-ball][data-state=chosen]").await;
                assert_eq!(run(&browser, CUT).await, json!([]), "{exercise} at {size:?}");
                let does =
                    run(&browser, "return document.querySelector('[data-test=pad-ball] .does').textContent").await;
                assert_eq!(does, json!("Invite with this"));
                // Tapped twice by a hasty thumb it is one invitation: the second would have ended the wait.
                run(&browser, "for (const _ of [1, 2]) document.querySelector('[data-test=pad-ball]').click()").await;
                browser.css("[data-test=pad-ball]:is([data-state=waits], [data-state=give])").await;
                assert!(!captions(&browser).await.contains("You press"), "{}", captions(&browser).await);
            }
            browser.picture(&format!("rehearse-{exercise}-{}", size.0)).await;
        }
        browser.goto(&server.url("/rehearse")).await;
        let cut = "return [...document.querySelectorAll('select')].filter((s) => { const c = document.createElement('canvas').getContext('2d'); c.font = getComputedStyle(s).font; \
                   return [...s.options].some((o) => c.measureText(o.text).width > s.clientWidth - 34); }).length";
        assert_eq!(run(&browser, cut).await, json!(0), "no choice is cut at {size:?}");
        browser.picture(&format!("rehearse-list-{}", size.0)).await;
    }
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_stuck_word_is_found_out_by_taps() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/rehearse/stuck?character=eager&seed=3")).await;
    browser.picture("rehearse-stuck-before").await;
    browser.tap("start").await;
    for act in ["rehearse-two", "rehearse-ready", "rehearse-softer", "rehearse-quiet"] {
        browser.tap(act).await;
        tokio::time::sleep(Duration::from_millis(300)).await;
    }
    browser
        .until(
            "the windows are closed",
            "return document.querySelector('.captions').textContent.includes('You close windows and doors.')",
        )
        .await;
    browser.tap("rehearse-end").await;
    browser.find("see").await;
    browser.follow("[data-test=see]").await;
    browser.find("question").await;
    browser.picture("rehearse-stuck-question").await;
    browser.tap("named-too-late").await;
    browser.follow("[data-test=name-it]").await;
    let told = browser.text("held-up").await;
    assert!(told.contains("You said so, and so it was") || told.contains("It was something else"), "{told}");
    browser.press("[data-test=notebook-fold] > summary").await;
    assert!(!browser.text("notebook").await.is_empty());
    browser.picture("rehearse-stuck-went").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_done_shows_at_once_also_while_nothing_answers_and_stays_to_be_read() {
    let dir = demo_dir();
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/rehearse/inviting?character=eager&seed=2")).await;
    // Keys are told where a keyboard is to be expected: on a phone the line leaves room for Start.
    let keys = "const line = document.querySelector('[data-test=keys-before]'); return [line.textContent.includes('O: Invite'), line.checkVisibility()]";
    assert_eq!(run(&browser, keys).await, json!([true, false]));
    browser.tap("start").await;
    assert_eq!(browser.text("invited").await, "Invitation 0 of 5");
    let pads = "return document.querySelector('[data-part=pads]').getBoundingClientRect().top + scrollY";
    let before = run(&browser, pads).await;
    server.kill();
    browser.tap("rehearse-call").await;
    assert!(captions(&browser).await.contains("You call Zip over."));
    // The drawing shows it, too.
    let calls = "return document.querySelector('[data-part=calls]').getAttribute('visibility') === 'visible'";
    browser.until("the call is drawn", calls).await;
    browser.until("it is told that nothing answers", "return !document.querySelector('[data-part=away]').hidden").await;
    assert_eq!(run(&browser, pads).await, before, "no button moves under the thumb");
    browser.tap("rehearse-offer").await;
    browser.tap("pad-ball").await;
    let said = captions(&browser).await;
    assert!(said.contains("You hold in view: Ball. Wait."), "{said}");
    assert_eq!(browser.text("invited").await, "Invitation 1 of 5");
    browser.picture("rehearse-away").await;
    server.restart();
    browser.until("it was sent", "return document.querySelector('[data-part=away]').hidden").await;
    for pad in ["pad-treat", "pad-out", "pad-treat", "pad-out"] {
        browser.tap(pad).await;
        browser.css(&format!("[data-test={pad}][data-state=give]")).await;
        browser.tap(pad).await;
    }
    let log = "const log = document.querySelector('[data-test=captions]'); const style = getComputedStyle(log); \
               return [log.getAttribute('role'), log.tabIndex, style.overflowY, log.querySelectorAll('li').length > 6, \
               log.scrollHeight > log.clientHeight, Math.abs(log.scrollHeight - log.clientHeight - log.scrollTop) < 3]";
    assert_eq!(run(&browser, log).await, json!(["log", 0, "auto", true, true, true]), "the newest is in view");
    browser.tap("rehearse-end").await;
    browser.find("see").await;
    browser.follow("[data-test=see]").await;
    let list = run(&browser, "return document.querySelector('[data-test=list]').textContent").await;
    for said in ["You call Zip over.", "You hold in view: Ball. Wait."] {
        assert!(list.as_str().unwrap().replace(['\u{2068}', '\u{2069}'], "").contains(said), "{said} in {list}");
    }
    browser.close().await;
}

/// What is cut, or lies over something else: text wider or higher than what holds it, parts of the stage over each other.
const OVER: &str = "
  const out = [];
  const seen = (e) => e.checkVisibility({ visibilityProperty: true }) && !e.closest('.unseen, svg, .scroll, [hidden]');
  const name = (e) => `${e.tagName}.${e.className} ${e.textContent.trim().slice(0, 50)}`;
  for (const e of document.querySelectorAll('main :is(button, span, li, p, h1, h2, h3, summary, label, legend, a, dd, dt, kbd)')) {
    if (!seen(e) || !e.textContent.trim()) continue;
    const inline = getComputedStyle(e).display === 'inline';
    if (!inline && e.scrollWidth > e.clientWidth + 1) out.push(`cut: ${e.scrollWidth} of ${e.clientWidth}: ${name(e)}`);
    if (!inline && e.closest('button') && e.scrollHeight > e.clientHeight + 2) out.push(`cut: ${e.scrollHeight} of ${e.clientHeight} high: ${name(e)}`);
  }
  const meet = (all) => all.forEach((a, i) => all.slice(i + 1).forEach((b) => {
    const [r, s] = [a.getBoundingClientRect(), b.getBoundingClientRect()];
    const over = Math.min(r.bottom, s.bottom) - Math.max(r.top, s.top), beside = Math.min(r.right, s.right) - Math.max(r.left, s.left);
    if (over > 2 && beside > 2) out.push(`${name(a)} lies over ${name(b)} by ${Math.round(beside)}, ${Math.round(over)}`);
  }));
  const whole = (e) => seen(e) && e.getBoundingClientRect().height > 0 && e.textContent.trim() !== '';
  meet([...document.querySelectorAll('#rehearse > *')].filter(seen));
  for (const of of document.querySelectorAll('#rehearse :is(.face, .asks, .pads, .actions)')) meet([...of.children].filter(whole));
  const room = document.documentElement.clientWidth;
  if (document.scrollingElement.scrollWidth > room) out.push(`scrolls sideways: ${document.scrollingElement.scrollWidth} of ${room}`);
  return out;";

#[tokio::test(flavor = "multi_thread")]
async fn in_letters_twice_as_large_nothing_of_rehearse_and_learn_is_cut_or_overlaps() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut wrong = Vec::new();
    let look = async |what: String| -> Vec<String> {
        run(&browser, "document.documentElement.style.fontSize = '200%'").await;
        tokio::time::sleep(Duration::from_millis(250)).await;
        browser.picture(&what.replace(['/', ' ', '?'], "_")).await;
        let found = run(&browser, OVER).await;
        found.as_array().unwrap().iter().map(|f| format!("{what}: {}", f.as_str().unwrap())).collect()
    };
    for language in ["en", "de"] {
        reads(&browser, &server, language).await;
        for size in [(390, 844), (360, 640)] {
            browser.resize(size).await;
            let lessons = lessons().iter().map(|lesson| format!("/learn/{}", lesson.id));
            for path in lessons.chain(["/learn".to_owned(), "/rehearse".to_owned()]) {
                browser.goto(&server.url(&path)).await;
                wrong.extend(look(format!("large {language} {} {path}", size.0)).await);
            }
            for exercise in ["likes", "showing", "inviting", "evening", "stuck", "free"] {
                browser.goto(&server.url(&format!("/rehearse/{exercise}?character=old&seed=2"))).await;
                wrong.extend(look(format!("large {language} {} {exercise} before", size.0)).await);
                browser.tap("start").await;
                wrong.extend(look(format!("large {language} {} {exercise} runs", size.0)).await);
                if exercise == "inviting" {
                    for act in ["rehearse-offer", "pad-company"] {
                        browser.tap(act).await;
                        wrong.extend(look(format!("large {language} {} {exercise} {act}", size.0)).await);
                    }
                }
            }
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Its last heading is long: in no language is the column behind it cut.
#[tokio::test(flavor = "multi_thread")]
async fn the_table_of_what_was_true_is_whole_on_a_phone() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut wrong = Vec::new();
    for language in ["en", "es", "de", "fr", "pt"] {
        reads(&browser, &server, language).await;
        browser.goto(&server.url("/rehearse/showing/went?character=quick&seed=5&acts=s0.9000_g0.10000")).await;
        let widths =
            "const all = document.querySelector('.scroll:has(table.truth)'); return [all.scrollWidth, all.clientWidth]";
        let widths = run(&browser, widths).await;
        wrong.extend((widths[0].as_u64() > widths[1].as_u64()).then(|| format!("{language}: {widths}")));
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{wrong:?}");
}
