//! Every tap is safe at once: kept on the device, sent in order, arriving once, with the server killed in between.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, plain_word, story, taps};
use sayso_model::{Body, Press, PressedBy};
use std::collections::BTreeSet;

/// Taps in all; each pair is a press and its delivery.
const TAPS: usize = 100;

#[tokio::test(flavor = "multi_thread")]
async fn a_hundred_taps_arrive_once_though_the_server_is_killed_and_restarted() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let who = animal(&before);
    let word = plain_word(&before, who).says.to_string();
    let mut server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    let pad = format!("pad-{word}");
    for tap in 0..TAPS {
        match tap {
            30 => server.kill(),
            // The page is loaded again while the server is gone: the browser's own copy of it must do.
            60 => {
                browser.page.refresh().await.unwrap();
                browser.until("the board", "return !!document.querySelector('[data-state=\"session\"]')").await;
            }
            80 => server.restart(),
            _ => {}
        }
        browser.tap(&pad).await;
        // Two touches within a third of a second count as a tremble.
        tokio::time::sleep(std::time::Duration::from_millis(420)).await;
    }
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    browser.all_sent().await;
    browser.close().await;
    server.kill();

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let ids: BTreeSet<_> = new.iter().map(|e| e.id).collect();
    assert_eq!(ids.len(), new.len(), "no event twice");
    let presses = new.iter().filter(|e| matches!(e.body, Body::Press(Press { by: PressedBy::Person, .. }))).count();
    let deliveries = new.iter().filter(|e| matches!(e.body, Body::Delivery(_))).count();
    assert_eq!((presses, deliveries), (TAPS / 2, TAPS / 2), "each tap is one event");
    let starts = new.iter().filter(|e| matches!(e.body, Body::SessionStart(_))).count();
    let ends = new.iter().filter(|e| matches!(e.body, Body::SessionEnd(_))).count();
    assert_eq!((starts, ends), (1, 1));
    // In order: every delivery answers the press before it.
    for e in &new {
        if let Body::Delivery(d) = &e.body {
            let press = new.iter().find(|p| Some(p.id) == d.answers).expect("the press it answers arrived");
            assert!(press.happened_at <= e.happened_at);
        }
    }
}
