//! The pictures of the README, taken at phone size while walking through the pages as a newcomer would.
//!
//! `docs/tour/make` keeps them (`SAYSO_TOUR` names the folder); otherwise they are only taken and looked at for being there.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use std::path::PathBuf;

/// A page of one flat colour packs into less than this many bytes at this size.
const BLANK: usize = 12_000;

#[tokio::test(flavor = "multi_thread")]
async fn every_page_of_the_tour_shows_something() {
    let keep = std::env::var_os("SAYSO_TOUR").map(PathBuf::from);
    let dir = demo_dir();
    let (_, story) = story(dir.path()).await;
    let who = animal(&story);
    // The word shown most has most to show.
    let words = story.words_of(who);
    let word = words
        .iter()
        .max_by_key(|w| story.of::<sayso_model::Press>(who).filter(|p| p.part.word == w.word).count())
        .unwrap();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let shot = async |name: &str| {
        let png = browser.page.screenshot().await.unwrap();
        assert!(png.len() > BLANK, "{name} looks blank: {} bytes", png.len());
        if let Some(folder) = &keep {
            std::fs::write(folder.join(format!("{name}.png")), &png).unwrap();
        }
    };
    for (name, path) in [
        ("today", format!("/a/{who}/today")),
        ("likes", format!("/a/{who}/likes")),
        ("words", format!("/a/{who}/words")),
        ("evidence", format!("/a/{who}/evidence")),
        ("days", format!("/a/{who}/days")),
        ("sheets", "/sheets".to_owned()),
    ] {
        browser.goto(&server.url(&path)).await;
        browser.css("main h1").await;
        shot(name).await;
    }
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.shows(&format!("[data-test=\"pad-{}\"]", word.says)).await;
    browser.page.execute("window.scrollTo(0, 0)", vec![]).await.unwrap();
    shot("board").await;
    browser.close().await;
}
