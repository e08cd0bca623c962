//! The pad: a delivery completed after it was sent, the stop after a strong sign, and putting right in the log.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, plain_word, story, taps};
use sayso_model::{Body, EndReason, Press, PressedBy, SessionEnd, SignLevel, Then};

const ALL_SENT: &str = "const o = document.querySelector('[data-test=outbox]'); return o.dataset.kept === '0' && Number(o.dataset.sent) > 0";

#[tokio::test(flavor = "multi_thread")]
async fn what_it_did_then_completes_a_delivery_also_after_that_was_sent() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let (known, who) = (before.ledger().len(), animal(&before));
    let card = plain_word(&before, who);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("start").await;
    let pad = format!("pad-{}", card.says);
    browser.tap(&pad).await;
    browser.until("to be given", "return !!document.querySelector('.pad[data-state=give]')").await;
    tokio::time::sleep(std::time::Duration::from_millis(420)).await;
    browser.tap(&pad).await;
    browser.find("then-took").await;
    let kept = "return Number(document.querySelector('[data-test=outbox]').dataset.kept) >= 1";
    browser.until("the delivery waits for what follows", kept).await;
    browser.until("it is sent without", ALL_SENT).await;
    browser.tap("then-took").await;
    browser.until("the answer is sent", "return !document.querySelector('[data-test=then-took]')").await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let first: Vec<_> =
        new.iter().filter_map(|e| if let Body::Delivery(d) = &e.body { Some((e.id, d.then)) } else { None }).collect();
    assert_eq!(first.len(), 1, "one delivery");
    assert_eq!(first[0].1, None, "it left before it was told");
    assert!(new.iter().any(|e| matches!(&e.body, Body::Correction(c) if c.of == first[0].0)));
    let standing = after.ledger().standing(first[0].0).unwrap();
    let Body::Delivery(now) = &standing.body else { panic!("a delivery") };
    assert_eq!((now.then, now.word), (Some(Then::Took), card.word));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_strong_sign_says_stop_and_ends_the_session() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let (known, who) = (before.ledger().len(), animal(&before));
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    let said = browser.text("stop").await;
    assert!(said.starts_with("Stop now.") && said.contains("do not lure"), "{said}");
    assert!(browser.page.find(fantoccini::Locator::Css("[data-test=stop-carry-on]")).await.is_err(), "no going on");
    // What lies beside the card shows nothing while it stops; the words are there again once the session is over.
    let live =
        "return [...document.querySelectorAll('[data-part=pads] [data-word]')].filter((b) => !b.disabled).length";
    browser.until("no pad is live", &live.replace(".length", ".length === 0")).await;
    browser.tap("stop-end").await;
    browser.until("no session", "return document.getElementById('board').dataset.state === 'idle'").await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    assert!(new.iter().any(|e| matches!(&e.body, Body::Sign(s) if s.level == SignLevel::Strong)));
    assert!(new.iter().any(|e| matches!(&e.body, Body::SessionEnd(SessionEnd { reason: EndReason::StrongSign, .. }))));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_press_is_put_right_in_the_log_and_its_first_record_stays() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let press = before.of::<Press>(who).rfind(|f| f.part.by == PressedBy::Person).unwrap();
    let (id, was) = (press.id(), press.part.clone());
    let later = press.at().plus_seconds(1.0);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/log?before={later}"))).await;
    browser.follow(&format!("#e{id} [data-test=log-fix]")).await;
    browser.css("select[name=by]").await.select_by_value("animal").await.unwrap();
    browser.css("select[name=accident]").await.select_by_value("likely").await.unwrap();
    browser.follow("[data-test=log-save]").await;
    // The newest events are shown; this one may be further down.
    browser.goto(&server.url(&format!("/a/{who}/log?before={later}"))).await;
    let entry = browser.css(&format!("#e{id}[data-state=corrected]")).await.text().await.unwrap();
    assert!(entry.contains("looked like a stumble") && entry.contains("First noted"), "{entry}");
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let now = after.of::<Press>(who).find(|f| f.id() == id).expect("it stands").part.clone();
    assert_eq!((now.by, now.word), (PressedBy::Animal, was.word));
    assert_eq!(after.ledger().first(id).unwrap().body, before.ledger().first(id).unwrap().body);
}
