//! A picture taken with the phone: made small in the page, seen on the card, in a likes test, and after a move.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, sayso, story};
use sayso_model::{MediaType, PictureOf, RewardKind};
use serde_json::Value;
use std::path::Path;

/// A photo as a phone writes it: 1600 by 1200 pixels, held upright, with a camera's notes. Drawn by the browser.
async fn photo(browser: &Browser, to: &Path) {
    let script = "const c = Object.assign(document.createElement('canvas'), { width: 1600, height: 1200 }); \
                  const x = c.getContext('2d'); const g = x.createLinearGradient(0, 0, 1600, 1200); \
                  g.addColorStop(0, '#d8b15a'); g.addColorStop(1, '#3c6e8f'); x.fillStyle = g; x.fillRect(0, 0, 1600, 1200); \
                  x.fillStyle = '#fff8e0'; x.beginPath(); x.arc(500, 500, 280, 0, 7); x.fill(); \
                  const data = atob(c.toDataURL('image/jpeg', 0.9).split(',')[1]); \
                  return Array.from(data, (b) => b.charCodeAt(0))";
    let drawn: Vec<u8> = serde_json::from_value(browser.page.execute(script, vec![]).await.unwrap()).unwrap();
    // Exif: the first directory with one entry, orientation 6, turn right by a quarter.
    let notes = b"\xff\xe1\0\x22Exif\0\0MM\0\x2a\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0";
    let mut bytes = drawn[..2].to_vec();
    bytes.extend(notes);
    bytes.extend(&drawn[2..]);
    std::fs::write(to, bytes).unwrap();
}

/// Takes the photo on a card and keeps it.
async fn take(browser: &Browser, url: &str, photo: &Path) {
    browser.goto(url).await;
    let input = browser.css("#picture input[type=file]").await;
    assert_eq!(input.attr("accept").await.unwrap().as_deref(), Some("image/*"));
    // A phone asks then whether to take one or to choose one.
    assert!(input.attr("capture").await.unwrap().is_none());
    input.send_keys(photo.to_str().unwrap()).await.unwrap();
    browser.until("made small", "return Boolean(document.querySelector('form[data-picture]').dataset.small)").await;
    browser.css("#picture canvas").await;
    browser.follow("[data-test=picture-keep]").await;
    seen(browser, "[data-test=picture-kept]").await;
}

/// Waits until every picture of that kind is drawn, there being one at least.
async fn seen(browser: &Browser, css: &str) {
    let script = format!(
        "const all = [...document.querySelectorAll('{css}')]; all.forEach((i) => i.scrollIntoView()); \
         return all.length > 0 && all.every((i) => i.complete && i.naturalWidth > 0)"
    );
    browser.until(&format!("{css} drawn"), &script).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_picture_is_taken_seen_on_card_and_test_and_moves_along() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let words = before.words_of(who);
    let mut rewards: Vec<_> = before.rewards_of(who).iter().map(|r| r.reward).collect();
    // Those first that a word asks for.
    rewards.sort_by_key(|r| !words.iter().any(|w| w.reward == Some(*r)));
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/people")).await;
    let aside = tempfile::tempdir().unwrap();
    let file = aside.path().join("photo.jpg");
    photo(&browser, &file).await;

    take(&browser, &server.url(&format!("/people/animal/{who}")), &file).await;
    browser.press("#picture h2").await;
    browser.picture("picture-card").await;
    for reward in &rewards[..2] {
        take(&browser, &server.url(&format!("/people/reward/{reward}")), &file).await;
    }
    browser.goto(&server.url("/people")).await;
    seen(&browser, ".card img.picture").await;
    browser.picture("picture-people").await;
    browser.press("#rewards h2").await;
    browser.picture("picture-rewards").await;

    // A likes test of the two.
    browser.goto(&server.url(&format!("/a/{who}/likes/new"))).await;
    browser.press("input[value=paired]").await;
    for b in browser.page.find_all(fantoccini::Locator::Css("input[type=checkbox]")).await.unwrap() {
        let value = b.attr("value").await.unwrap().unwrap();
        let wanted = rewards[..2].iter().any(|r| r.to_string() == value);
        if b.is_selected().await.unwrap() != wanted {
            browser.press(&format!("input[value=\"{value}\"]")).await;
        }
    }
    browser.follow("main form button.primary").await;
    // They cannot be held up: it asks before it goes on without what stands for them.
    browser.press("#stands input").await;
    browser.follow("main form button.primary").await;
    browser.css("button.pick").await;
    seen(&browser, "button.pick img.picture").await;
    let picks = browser.page.find_all(fantoccini::Locator::Css("button.pick img.picture")).await.unwrap();
    assert_eq!(picks.len(), 2);
    browser.press("#lay").await;
    browser.picture("picture-likes").await;
    browser.follow("button.pick img.picture + strong").await;
    browser.goto(&server.url("/sheets/labels")).await;
    seen(&browser, ".labels img.picture").await;
    browser.press(".labels img.picture").await;
    browser.picture("picture-labels").await;
    drop(server);

    // Made small and turned upright; what the camera wrote is gone.
    let (_, after) = story(dir.path()).await;
    let kept = after.pictures()[&PictureOf::Animal { animal: who }].clone();
    assert_eq!((kept.media_type, kept.width, kept.height), (MediaType::Webp, 384, 512));
    let stored = std::fs::read(dir.path().join("clips").join(&kept.sha256)).unwrap();
    assert!(stored.len() < 100_000, "{} bytes", stored.len());
    assert!(!stored.windows(4).any(|w| w.eq_ignore_ascii_case(b"exif")));

    // Out of this notebook as an archive, into an empty one.
    let archive = aside.path().join("all.tar");
    let run = |args: &[&str]| {
        let done = sayso().args(args).output().unwrap();
        assert!(done.status.success(), "{args:?}: {}", String::from_utf8_lossy(&done.stderr));
    };
    let (from, to) = (dir.path().to_str().unwrap(), aside.path().join("new"));
    run(&["export", "--data", from, "--form", "tar", "--to", archive.to_str().unwrap()]);
    std::fs::create_dir(&to).unwrap();
    run(&["import", "--data", to.to_str().unwrap(), "--yes", archive.to_str().unwrap()]);
    run(&["check", "--data", to.to_str().unwrap()]);
    let server = Server::start(&to, 0);
    browser.goto(&server.url(&format!("/people/animal/{who}"))).await;
    seen(&browser, "[data-test=picture-kept]").await;
    // Gone from the card once it is removed.
    browser.follow("[data-test=picture-remove]").await;
    assert!(browser.page.find(fantoccini::Locator::Css("[data-test=picture-kept]")).await.is_err());
    browser.close().await;
}

/// What stands in a field, and whether a box is ticked.
async fn field(browser: &Browser, css: &str, what: &str) -> Value {
    browser.page.execute(&format!("return document.querySelector('{css}').{what}"), vec![]).await.unwrap()
}

#[tokio::test(flavor = "multi_thread")]
async fn what_was_typed_on_a_card_outlasts_its_picture() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let reward = before.rewards_of(who).into_iter().find(|r| r.kind == RewardKind::Food).unwrap().clone();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/people")).await;
    let aside = tempfile::tempdir().unwrap();
    let file = aside.path().join("photo.jpg");
    photo(&browser, &file).await;
    let card = server.url(&format!("/people/reward/{}", reward.reward));
    browser.goto(&card).await;
    browser.css("[name=says]").await.clear().await.unwrap();
    browser.css("[name=says]").await.send_keys("nibble").await.unwrap();
    browser.css("select[name=at_board]").await.select_by_value("no").await.unwrap();
    browser.press("input[name=already_said]").await;
    let ticked = field(&browser, "[name=already_said]", "checked").await;
    browser.css("#picture input[type=file]").await.send_keys(file.to_str().unwrap()).await.unwrap();
    browser.until("made small", "return Boolean(document.querySelector('form[data-picture]').dataset.small)").await;
    browser.follow("[data-test=picture-keep]").await;
    seen(&browser, "[data-test=picture-kept]").await;
    assert_eq!(field(&browser, "[name=says]", "value").await, "nibble");
    assert_eq!(field(&browser, "[name=at_board]", "value").await, "no");
    assert_eq!(field(&browser, "[name=already_said]", "checked").await, ticked);
    browser.follow("[data-test=picture-remove]").await;
    assert_eq!(field(&browser, "[name=says]", "value").await, "nibble", "as long as it is not saved");
    // Saved, it is on the card; nothing is left to be put back.
    browser.follow("main form button.primary").await;
    browser.goto(&card).await;
    assert_eq!(field(&browser, "[name=says]", "value").await, "nibble");
    assert_eq!(browser.page.execute("return sessionStorage.length", vec![]).await.unwrap(), 0);
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    assert_eq!(after.rewards()[&reward.reward].says.as_ref().map(ToString::to_string).as_deref(), Some("nibble"));
}

#[tokio::test(flavor = "multi_thread")]
async fn another_one_is_added_of_the_same_kind_at_once() {
    let dir = demo_dir();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url("/people/reward/new?kind=play")).await;
    browser.css("[name=name]").await.send_keys("knotted sock").await.unwrap();
    browser.follow("button[value=another]").await;
    browser.picture("another-reward").await;
    assert_eq!(field(&browser, "[name=kind]", "value").await, "play");
    assert_eq!(field(&browser, "[name=name]", "value").await, "");
    assert_eq!(browser.page.execute("return document.activeElement.name", vec![]).await.unwrap(), "name");
    assert!(browser.css("main [role=status]").await.text().await.unwrap().contains("Saved."));
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    assert!(after.rewards().values().any(|r| r.name.as_str() == "knotted sock" && r.kind == RewardKind::Play));
}
