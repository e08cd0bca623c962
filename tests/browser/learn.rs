//! A lesson as a person reads it: answers unfold by a tap, without a script too, and it stays to be read while nothing
//! answers.

use crate::board::Home;
use crate::every_page::growled;
use crate::harness::{Browser, PHONE, Server, demo_dir, story};
use crate::phone::NARROW;
use crate::session::at_board;
use sayso_model::{Event, EventId, Label, LessonRead, PersonCard, PersonId, Role};
use sayso_store::Store;
use serde_json::json;
use uuid::Uuid;

/// An answer of a question: the right one, or another.
fn answer(question: u8, right: &str) -> String {
    format!("[data-test=question-{question}] details[data-right={right}]")
}

/// Opens a lesson from the list, answers both questions and marks it as read.
async fn reads(browser: &Browser, lesson: &str) {
    browser.press(&format!("[data-test=lesson-{lesson}] a")).await;
    browser.css(".drawing svg").await;
    for (question, right) in [(1, "no"), (1, "yes"), (2, "yes")] {
        let answer = answer(question, right);
        browser.press(&format!("{answer} > summary")).await;
        let why = browser.css(&format!("{answer}[open] > p")).await.text().await.unwrap();
        assert!(why.len() > 20, "{why}");
        browser.picture(&format!("lesson-{lesson}-question-{question}-{right}")).await;
    }
    browser.tap("mark-read").await;
    let read = browser.text("read").await;
    assert!(read.starts_with("You read it on"), "{read}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_lesson_is_read_answered_and_marked_with_and_without_scripts_and_offline() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/who?back=/learn")).await;
    browser.follow("main form button").await;
    browser.picture("lessons").await;
    browser.press("[data-test=lesson-showing] a").await;
    browser.css(".drawing svg").await;
    browser.picture("lesson-showing").await;
    browser.goto(&server.url("/learn")).await;
    // Of the answers to one question one is open at a time.
    browser.press("[data-test=lesson-inviting] a").await;
    for right in ["no", "yes"] {
        browser.press(&format!("{} > summary", answer(1, right))).await;
    }
    let open = "return document.querySelectorAll('[data-test=question-1] details[open]').length === 1";
    browser.until("one answer open", open).await;

    browser.goto(&server.url("/learn")).await;
    reads(&browser, "showing").await;
    // The booklet is kept with the first lesson, and with it all of them.
    let kept =
        "return caches.open('sayso-pad-1').then((c) => c.match('/learn/booklet')).then((found) => Boolean(found))";
    browser.until("the booklet kept", kept).await;
    server.kill();
    browser.goto(&server.url("/learn/showing")).await;
    let said = browser.text("earlier").await;
    assert!(said.contains("gives no answer"), "{said}");
    browser.goto(&server.url("/learn/stuck")).await;
    browser.css("article#stuck .drawing svg").await;
    assert!(browser.page.current_url().await.unwrap().as_str().ends_with("/learn/booklet#stuck"));
    // Rehearsing needs the notebook; what stands in its place leads to what does not.
    browser.goto(&server.url("/rehearse")).await;
    assert_eq!(browser.text("read-lessons").await, "Read the lessons");
    browser.follow("[data-test=read-lessons]").await;
    browser.css("article#stuck .drawing svg").await;
    server.restart();

    // None of our scripts arrives: neither from the notebook nor from what is kept.
    browser.devtools("Network.enable", json!({})).await;
    browser.devtools("Network.setBypassServiceWorker", json!({ "bypass": true })).await;
    browser.devtools("Network.setBlockedURLs", json!({ "urls": ["*.js"] })).await;
    browser.goto(&server.url("/learn/booklet")).await;
    browser.css("article#not-now .drawing svg").await;
    let shown = "return document.querySelector('[data-print]').checkVisibility()";
    assert_eq!(browser.page.execute(shown, vec![]).await.unwrap(), json!(false), "a script would show it");
    browser.goto(&server.url("/learn")).await;
    reads(&browser, "not-now").await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    let read: Vec<String> = after.everyones::<LessonRead>().map(|f| f.part.lesson.to_string()).collect();
    assert_eq!((before.everyones::<LessonRead>().count(), read.len()), (0, 2), "{read:?}");
}

/// What the lesson that stands open says; nothing where none does.
async fn open_lesson(browser: &Browser) -> Option<String> {
    let lesson = browser.page.find(fantoccini::Locator::Css(".first-lesson")).await.ok()?;
    Some(lesson.text().await.unwrap())
}

/// Waits until no lesson stands open.
async fn none_open(browser: &Browser) {
    browser.until("no lesson stands open", "return !document.querySelector('.first-lesson')").await;
}

#[tokio::test(flavor = "multi_thread")]
async fn first_times_at_the_board_open_their_lesson_once_and_never_where_an_animal_waits() {
    let home = Home::new(7, None).await;
    let mut server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let board = server.url(&format!("/a/{}/board", home.animal));
    browser.goto(&board).await;
    browser.find("first-session").await;
    let said = open_lesson(&browser).await.unwrap();
    assert!(said.contains("Press, say, give") && said.contains("Stay within"), "{said}");
    // The start is there, too: nothing is locked.
    browser.find("start").await;
    browser.picture("lesson-first-session").await;
    let before = "return [...document.querySelectorAll('.first-lesson :is(.caution, ol)')].map((e) => e.localName)";
    assert_eq!(browser.page.execute(before, vec![]).await.unwrap(), json!(["p", "ol"]), "the caution before the steps");
    // On a small phone, too, the ways past it and the pads are on the screen as it opens.
    browser.resize(NARROW).await;
    browser.page.execute("scrollTo(0, 0)", vec![]).await.unwrap();
    tokio::time::sleep(std::time::Duration::from_millis(300)).await;
    browser.picture("lesson-first-session-narrow").await;
    let whole = "const end = document.querySelector('nav.thumb').getBoundingClientRect().top; \
                 return ['start', 'lesson-read', 'lesson-later', 'pad-ball'].filter((test) => { \
                   const node = document.querySelector(`[data-test=${test}]`), r = node.getBoundingClientRect(); \
                   return r.bottom > end + 1 || !node.contains(document.elementFromPoint(r.left + r.width / 2, r.top + r.height / 2)); \
                 })";
    assert_eq!(browser.page.execute(whole, vec![]).await.unwrap(), json!([]));
    browser.resize(PHONE).await;
    // It stands where a session is begun, and not where presses are answered.
    browser.tap("mode-day").await;
    none_open(&browser).await;
    browser.tap("mode-showing").await;
    browser.find("first-session").await;
    browser.tap("lesson-later").await;
    none_open(&browser).await;
    browser.goto(&board).await;
    browser.find("start").await;
    assert_eq!(open_lesson(&browser).await, None, "once is once");
    // The rest without the notebook.
    browser.until("the page kept", "return document.querySelector('#board').dataset.offline === 'ready'").await;
    server.kill();
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.tap("mode-invitation").await;
    browser.tap("choose-myself").await;
    browser.tap("pad-ball").await;
    browser.tap("offer").await;
    // The animal presses within the wait: what waits comes first.
    browser.tap("pad-ball").await;
    browser.find("invitation-given").await;
    assert_eq!(open_lesson(&browser).await, None);
    browser.tap("invitation-given").await;
    browser.tap("took-yes").await;
    browser.find("first-invitation").await;
    browser.picture("lesson-first-invitation").await;
    browser.tap("mode-day").await;
    browser.tap("pad-ball").await;
    none_open(&browser).await;
    browser.tap("answer-declined").await;
    browser.find("first-not_now").await;
    // What is asked after a "not now" is asked below it.
    browser.find("then-ignored").await;
    browser.picture("lesson-first-not-now").await;
    browser.tap("lesson-later").await;
    none_open(&browser).await;
    browser.tap("then-ignored").await;
    browser.tap("pad-ball").await;
    browser.tap("answer-declined").await;
    browser.find("then-ignored").await;
    assert_eq!(open_lesson(&browser).await, None, "the second one opens nothing");
    server.restart();
    browser.all_sent().await;

    // A press that was noted is answered; nothing is read then.
    let home = Home::new(7, None).await;
    let other = Server::start(home.dir.path(), 0);
    let second = browser.another(PHONE).await;
    second.goto(&other.url(&format!("/a/{}/board", home.animal))).await;
    second.find("first-session").await;
    second.tap("pad-ball").await;
    second.tap("before-pressed").await;
    second.find("not-now").await;
    assert_eq!(open_lesson(&second).await, None);
    second.tap("given").await;
    second.tap("then-took").await;
    second.find("start").await;
    assert_eq!(open_lesson(&second).await, None, "it does not come back after a press");
    // On a day of rest a session can be begun all the same: the lesson stands there, below the caution.
    let home = Home::new(7, None).await;
    // Its records are of one moment; the sign is of just now.
    let records: sayso_model::Moment = "2026-03-01T08:00:00Z".parse().unwrap();
    let since = std::time::SystemTime::UNIX_EPOCH.elapsed().unwrap().as_secs_f64() - records.millis() as f64 / 1000.0;
    growled(home.dir.path(), [home.animal].into_iter(), -(since - 60.0) / 86_400.0).await;
    let third = Server::start(home.dir.path(), 0);
    second.goto(&third.url(&format!("/a/{}/board", home.animal))).await;
    second.find("start-anyway").await;
    second.find("first-session").await;
    let order = "const [rest, lesson] = ['[data-test=whom-to-ask]', '.first-lesson'].map((s) => document.querySelector(s)); \
                 return !!(rest.compareDocumentPosition(lesson) & Node.DOCUMENT_POSITION_FOLLOWING)";
    assert_eq!(second.page.execute(order, vec![]).await.unwrap(), json!(true));
    second.close().await;
    browser.close().await;
}

/// Notes two people of a home.
async fn two_people(home: &Home) -> [PersonId; 2] {
    let people = ["Ida", "Ole"].map(|name| (PersonId(Uuid::now_v7()), Label::new(name).unwrap()));
    let (_, story) = story(home.dir.path()).await;
    let pattern = story.ledger().all().find(|e| e.animal.is_none()).unwrap();
    let events = people.iter().map(|(person, name)| Event {
        id: EventId(Uuid::now_v7()),
        body: PersonCard::new(*person, name.clone(), Role::Home).into(),
        ..pattern.clone()
    });
    let store = Store::open(home.dir.path()).await.unwrap();
    store.append(events.collect()).await.unwrap();
    store.close().await.unwrap();
    people.map(|(person, _)| person)
}

/// Says who holds the device.
async fn holds(browser: &Browser, server: &Server, person: PersonId) {
    browser.goto(&server.url("/who")).await;
    browser.follow(&format!("form button[value='{person}']")).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_comes_second_on_a_day_gets_their_own_first_lesson() {
    let home = Home::new(7, None).await;
    let [ida, ole] = two_people(&home).await;
    let server = Server::start(home.dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    holds(&browser, &server, ida).await;
    at_board(&browser, &server, home.animal).await;
    browser.find("first-session").await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.tap("pad-ball").await;
    browser.tap("given").await;
    browser.tap("then-took").await;
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    browser.all_sent().await;
    at_board(&browser, &server, home.animal).await;
    browser.find("start").await;
    assert_eq!(open_lesson(&browser).await, None, "whoever showed has no first session before them");

    // On a device of their own, and on the one that was handed over.
    let second = browser.another(PHONE).await;
    for device in [&second, &browser] {
        holds(device, &server, ole).await;
        at_board(device, &server, home.animal).await;
        let said = device.text("first-session").await;
        assert!(said.contains("Press, say, give"), "{said}");
    }
    second.picture("lesson-second-person").await;
    // A press that they answered themselves was another beginning, today and on a page opened anew.
    second.tap("pad-ball").await;
    second.tap("before-pressed").await;
    second.tap("given").await;
    second.tap("then-took").await;
    second.all_sent().await;
    at_board(&second, &server, home.animal).await;
    second.find("start").await;
    assert_eq!(open_lesson(&second).await, None, "it does not come back after a press");
    second.close().await;
    browser.close().await;
}
