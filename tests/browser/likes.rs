//! A paired likes test from start to ranking, on the phone.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story};
use sayso_model::{LikeTrial, LikesFormat};

#[tokio::test(flavor = "multi_thread")]
async fn a_paired_test_is_held_with_one_tap_a_choice() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let had = before.of::<LikeTrial>(who).count();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/l/{who}/likes/new"))).await;
    browser.press("input[value=paired]").await;
    // Keep three things: three pairs a round.
    let boxes = browser.page.find_all(fantoccini::Locator::Css("input[type=checkbox]")).await.unwrap();
    for (i, b) in boxes.iter().enumerate() {
        if b.is_selected().await.unwrap() != (i < 3) {
            browser.press(&format!("input[value=\"{}\"]", b.attr("value").await.unwrap().unwrap())).await;
        }
    }
    let rounds = browser.css("[name=rounds]").await;
    browser.page.execute("arguments[0].value = '1'", vec![serde_json::to_value(&rounds).unwrap()]).await.unwrap();
    browser.follow("main form button.primary").await;
    for trial in 0..3 {
        browser.css("button.pick").await;
        let picks = browser.page.find_all(fantoccini::Locator::Css("button.pick")).await.unwrap();
        assert_eq!(picks.len(), 2, "two things side by side");
        let value = if trial == 2 { "none".to_owned() } else { picks[0].attr("value").await.unwrap().unwrap() };
        browser.follow(&format!("button[value=\"{value}\"]")).await;
    }
    assert!(
        browser.page.find_all(fantoccini::Locator::Css("button.pick")).await.unwrap().is_empty(),
        "three pairs end it"
    );
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let trials: Vec<_> = after.of::<LikeTrial>(who).map(|t| t.part.clone()).collect();
    assert_eq!(trials.len(), had + 3);
    let new = &trials[had..];
    assert!(new.iter().all(|t| t.format == LikesFormat::Paired && t.offered.len() == 2));
    // Each thing twice, once on each side: three things in three pairs.
    let first: Vec<_> = new.iter().map(|t| t.offered[0]).collect();
    assert!(first.iter().all(|r| first.iter().filter(|o| *o == r).count() == 1), "sides are balanced");
    let report = sayso_advisor::likes::likes(&sayso_advisor::Case::new(&after, who, new_moment(&after)));
    assert!(report.trials >= 3 && report.no_choice >= 1);
}

fn new_moment(story: &sayso_model::Story) -> sayso_model::Moment {
    story.ledger().all().map(|e| e.recorded_at).max().unwrap().plus_seconds(60.0)
}
