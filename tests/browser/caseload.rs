//! The coach's desk in a browser: by keyboard alone, on a phone and on a desk's screen, in two languages, by the rules; and a home whose
//! consent is taken back while the coach looks is gone at the next key.

use crate::accessibility;
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{self, NARROW, STAND_IN};
use crate::talking::{keeper_and_coach, turns_figures};
use sayso_model::{AnimalId, Body, Event, EventId, Note, Sign, SignLevel, Source, When, Withdrawal};
use serde_json::json;
use uuid::Uuid;

/// A desk's screen.
const SCREEN: (u32, u32) = (1280, 900);
/// What has the focus, by what tests know it by.
const FOCUSED: &str = "return document.activeElement?.dataset?.test ?? ''";

async fn focused(browser: &Browser) -> String {
    browser.page.execute(FOCUSED, vec![]).await.unwrap().as_str().unwrap_or_default().to_owned()
}

/// A key pressed where the focus is.
async fn key(browser: &Browser, key: &str) {
    browser.page.active_element().await.unwrap().send_keys(key).await.unwrap();
}

/// Tab until what tests know by that name has the focus.
async fn tabs_to(browser: &Browser, test: &str) {
    for _ in 0..40 {
        if focused(browser).await == test {
            return;
        }
        key(browser, "\u{e004}").await;
    }
    panic!("Tab does not reach {test}");
}

async fn count(browser: &Browser, test: &str) -> usize {
    let script = format!("return document.querySelectorAll('[data-test={test}]').length");
    browser.page.execute(&script, vec![]).await.unwrap().as_u64().unwrap() as usize
}

#[tokio::test(flavor = "multi_thread")]
async fn the_desk_is_worked_by_keyboard_alone_and_holds_by_the_rules() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    // One animal guards something; of another a growl was written down and taken back.
    let story = server.story(home).await;
    let animals: Vec<AnimalId> = story.animals().into_keys().collect();
    let at = sayso_web::state::machine_clock().plus_seconds(-3600.0);
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap().clone();
    let event = |animal: AnimalId, body: Body| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(animal),
        happened_at: at,
        recorded_at: at,
        source: Source::Tap,
        body,
        ..pattern.clone()
    };
    let sign = |what: &str| Sign {
        sign: Note::new(what).unwrap(),
        level: SignLevel::Strong,
        when: When::After,
        session: None,
    };
    let growl = event(animals[1], sign("growl").into());
    let back = event(animals[1], Withdrawal { of: growl.id, because: None }.into());
    let guards = event(animals[0], sign("guards food, a thing or the button").into());
    server.writes(home, vec![growl, back, guards]).await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), SCREEN).await;
    // From the club's page by its link.
    coach.goto(&server.url(&format!("/club/{club}"))).await;
    coach.follow("[data-test=to-desk]").await;
    let rows = count(&coach, "row").await;
    assert_eq!(rows, 2, "both animals stand on the desk");
    coach.picture("caseload-1280").await;
    // Into the list, to the last row and back, with letters and arrows.
    tabs_to(&coach, "open").await;
    let at = "return [...document.querySelectorAll('.desk-row')].indexOf(document.activeElement.closest('.desk-row'))";
    for (pressed, place) in [("j", 1), ("j", 1), ("k", 0), ("\u{e015}", 1), ("\u{e013}", 0), ("k", 0)] {
        key(&coach, pressed).await;
        let now = coach.page.execute(at, vec![]).await.unwrap().as_u64().unwrap() as usize;
        assert_eq!(now, place, "{pressed:?}");
    }
    // Put aside by a letter, but never what is about safety; the focus stays in the list.
    key(&coach, "a").await;
    assert_eq!((count(&coach, "row").await, count(&coach, "put").await), (rows, 0));
    key(&coach, "j").await;
    key(&coach, "a").await;
    coach.css("[data-test=put]").await;
    coach.picture("caseload-put").await;
    coach.until("a row has the focus", "return document.activeElement?.dataset?.test === 'open'").await;
    coach.page.execute("document.activeElement.blur()", vec![]).await.unwrap();
    tabs_to(&coach, "back").await;
    key(&coach, "\u{e007}").await;
    coach.until("is back", "return !document.querySelector('[data-test=put]')").await;
    assert_eq!(count(&coach, "row").await, rows);
    // Enter opens the animal's Today.
    tabs_to(&coach, "open").await;
    key(&coach, "\u{e007}").await;
    coach.until("Today is open", "return location.pathname.endsWith('/today')").await;
    // The week, and that they spoke.
    coach.goto(&server.url("/desk/week")).await;
    coach.picture("caseload-week-1280").await;
    let news = count(&coach, "news").await;
    assert!(news > 0);
    if count(&coach, "no-news").await == 0 {
        tabs_to(&coach, "spoken").await;
        key(&coach, "\u{e007}").await;
        coach.until("they spoke", "return document.body.textContent.includes('Since you spoke') || !!document.querySelector('[data-test=no-news]')").await;
    }
    let pages = ["/desk", "/desk/week", "/desk/changes", "/desk?kind=none"];
    let wrong = faults_of(&server, (&keeper, &coach), &pages, async |reader| {
        reader.css("[data-test=to-week]").await;
    })
    .await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    // Taken back while the coach looks: gone at the next tap.
    coach.goto(&server.url("/desk")).await;
    turns_figures(&keeper, &server, club).await;
    coach.follow("[data-test=to-week]").await;
    assert_eq!((count(&coach, "news").await, count(&coach, "no-news").await), (0, 1));
    coach.goto(&server.url("/desk")).await;
    assert_eq!((count(&coach, "row").await, count(&coach, "none").await), (0, 1));
    coach.close().await;
    keeper.close().await;
}

/// Faults of pages as the coach sees them, by the rules and by their width: at each size, and in two languages more. `opened` is done on each once it is
/// there.
async fn faults_of(
    server: &Hosted,
    (keeper, coach): (&Browser, &Browser),
    pages: &[&str],
    opened: impl AsyncFn(&Browser),
) -> Vec<String> {
    let mut wrong = Vec::new();
    let session = coach.page.get_named_cookie(sayso_host::SESSION_COOKIE).await.unwrap().value().to_owned();
    for (size, what) in [(SCREEN, "screen"), (PHONE, "phone"), (NARROW, "narrow")] {
        let reader = keeper.another(size).await;
        let cookie = json!({ "name": sayso_host::SESSION_COOKIE, "value": session, "url": server.url("/") });
        reader.devtools("Network.setCookie", cookie).await;
        for path in pages {
            wrong.extend(accessibility::faults(&reader, &server.url(path), &format!("{path} ({what})")).await);
            for language in [STAND_IN, "de", "en"] {
                phone::reads_at(&reader, &server.url("/"), language).await;
                reader.goto(&server.url(path)).await;
                opened(&reader).await;
                reader.picture(&format!("caseload-{what}-{language}-{}", path.replace(['/', '?', '='], "_"))).await;
                let wide = "return [document.documentElement.scrollWidth, document.documentElement.clientWidth]";
                let wide = reader.page.execute(wide, vec![]).await.unwrap();
                // A bar to scroll by may take some of it.
                assert!((size.0 - 20..=size.0).contains(&(wide[1].as_u64().unwrap() as u32)), "{wide}");
                if wide[0] != wide[1] {
                    wrong.push(format!("{path} ({what}, {language}): scrolls sideways, {wide}"));
                }
            }
        }
        reader.close().await;
    }
    wrong
}

/// A word shown twice a day for sixty days, and not pressed.
fn not_pressed(pattern: &Event, animal: AnimalId) -> Vec<Event> {
    let now = sayso_web::state::machine_clock();
    let event = |at: sayso_model::Moment, body: serde_json::Value| Event {
        id: EventId(Uuid::now_v7()),
        animal: Some(animal),
        happened_at: at,
        recorded_at: at,
        source: Source::Tap,
        body: serde_json::from_value(body).unwrap(),
        ..pattern.clone()
    };
    let word = Uuid::now_v7();
    let card = json!({ "kind": "word_card", "word": word, "says": "rope", "answer": "Tug.", "not_now": "Later." });
    let mut all = vec![Event { animal: None, ..event(now.plus_seconds(-61.0 * 86_400.0), card) }];
    for nth in 0..120 {
        let at = now.plus_seconds(-43_200.0 * f64::from(nth + 1));
        let press = event(at, json!({ "kind": "press", "word": word, "by": "person" }));
        let given = json!({ "kind": "delivery", "answers": press.id, "word": word, "answer": "given", "then": "took" });
        all.extend([event(at.plus_seconds(2.0), given), press]);
    }
    all
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_outside_the_middle_of_comparable_homes_is_told_with_whose_figures_these_are() {
    let norms = sayso_norms::Release::read(include_str!("../norms/invented.sayso-norms")).unwrap();
    let server = Hosted::start_beside(Some(norms)).await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let story = server.story(home).await;
    let dog = story.animals().into_values().find(|card| card.species == sayso_model::Species::Dog).unwrap().animal;
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap();
    server.writes(home, not_pressed(pattern, dog)).await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let path = "/desk?kind=outside";
    let wrong = faults_of(&server, (&keeper, &coach), &[path], async |reader| {
        reader.press("[data-test=whose-figures] summary").await;
    })
    .await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
    coach.goto(&server.url(path)).await;
    let need = coach.text("need").await;
    assert!(need.contains("Outside the middle nine tenths of 66 comparable homes: no press of “rope” yet"), "{need}");
    coach.press("[data-test=whose-figures] summary").await;
    assert!(coach.text("whose-figures").await.contains("From the release “Invented homes”"));
    turns_figures(&keeper, &server, club).await;
    coach.goto(&server.url(path)).await;
    assert_eq!(count(&coach, "row").await, 0);
    coach.close().await;
    keeper.close().await;
}
