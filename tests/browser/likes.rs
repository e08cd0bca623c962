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
    browser.goto(&server.url(&format!("/a/{who}/likes/new"))).await;
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
    // Two of them cannot be held up: it asks before it goes on without what stands for them.
    browser.press("#stands input").await;
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

/// Where the answers stand on the page: their values and boxes in pixels, from the top of the page.
const BOXES: &str = "return [...document.querySelectorAll('button[name=answer]')].map((b) => { const r = b.getBoundingClientRect(); \
    return { value: b.value, box: [r.left, r.top + scrollY, r.width, r.height].map(Math.round) }; })";

/// Where the button that takes the last answer back begins and ends, from the top of the page.
const UNDO: &str = "const r = document.querySelector('form.last button')?.getBoundingClientRect(); \
    return r && [r.top + scrollY, r.bottom + scrollY].map(Math.round);";

/// Things of a pair that are not whole on the screen without scrolling, and names that are cut.
const OUT_OF_SIGHT: &str = "
    const end = document.querySelector('nav.thumb').getBoundingClientRect().top;
    const all = [...document.querySelectorAll('button.pick')];
    return all.flatMap((b) => {
      const r = b.getBoundingClientRect(), name = b.querySelector('strong').textContent;
      const cut = [b, ...b.children].some((e) => !e.matches('svg') && (e.scrollWidth > e.clientWidth + 1 && e.clientWidth > 0 || e.getBoundingClientRect().bottom > r.bottom + 1));
      return [all.length !== 2 && `${all.length} things`, cut && `${name} is cut`, (scrollY > 0 || r.bottom > end) && `${name} ends at ${r.bottom} of ${end}`].filter(Boolean);
    });";

/// A box: left, top, width, height.
type Place = [i64; 4];

/// The boxes of the things offered, in order, and those of the two answers without a choice.
async fn boxes(browser: &Browser) -> (Vec<Place>, Vec<Place>) {
    browser.css("button.pick").await;
    let all = browser.page.execute(BOXES, vec![]).await.unwrap();
    let read = |wanted: bool| {
        let all = all.as_array().unwrap().iter();
        let without = |b: &&serde_json::Value| matches!(b["value"].as_str(), Some("none" | "away")) == wanted;
        all.filter(without).map(|b| [0, 1, 2, 3].map(|i| b["box"][i].as_i64().unwrap())).collect()
    };
    (read(false), read(true))
}

#[tokio::test(flavor = "multi_thread")]
async fn the_answers_stay_in_their_places_from_trial_to_trial() {
    let dir = demo_dir();
    let (home, before) = story(dir.path()).await;
    let who = animal(&before);
    // One with a caution, one with a long name, one that cannot be held up, one with a stand-in.
    let card = |n: u128, name: &str, kind| {
        let id = sayso_model::RewardId(uuid::Uuid::from_u128(n));
        sayso_model::RewardCard::new(id, sayso_model::Label::new(name).unwrap(), kind)
    };
    let mut cheese = card(91, "cheese", sayso_model::RewardKind::Food);
    cheese.kcal_per_piece = Some(sayso_model::Kcal::clamped(4.0));
    let mut out = card(93, "going out", sayso_model::RewardKind::Exploring);
    out.stand_in = Some(sayso_model::Label::new("the lead").unwrap());
    let long = card(92, "the squeaky orange hedgehog from the upstairs cupboard", sayso_model::RewardKind::Play);
    let rewards = [cheese, long, out, card(94, "garden", sayso_model::RewardKind::Exploring)];
    let store = sayso_store::Store::open(dir.path()).await.unwrap();
    let pattern = before.ledger().all().find(|e| e.animal.is_none()).unwrap().clone();
    let id = || sayso_model::EventId(uuid::Uuid::now_v7());
    let mut events: Vec<_> = rewards
        .iter()
        .map(|r| sayso_model::Event { id: id(), home, body: r.clone().into(), ..pattern.clone() })
        .collect();
    let tests: Vec<_> = [LikesFormat::Paired, LikesFormat::Multiple]
        .into_iter()
        .map(|format| sayso_model::LikesTest {
            assessment: sayso_model::AssessmentId(uuid::Uuid::now_v7()),
            format,
            rewards: rewards.iter().map(|r| r.reward).collect(),
            rounds: 1,
            seed: 7,
        })
        .collect();
    events.extend(tests.iter().map(|t| sayso_model::Event {
        id: id(),
        animal: Some(who),
        body: t.clone().into(),
        ..pattern.clone()
    }));
    store.append(events).await.unwrap();
    store.close().await.unwrap();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut words = String::new();
    for (test, trials) in tests.iter().zip([6, 4]) {
        browser.goto(&server.url(&format!("/a/{who}/likes/test/{}", test.assessment))).await;
        let (places, rest) = boxes(&browser).await;
        let mut undone: Option<serde_json::Value> = None;
        assert_eq!(rest.len(), 2);
        for trial in 0..trials {
            let (now, rest_now) = boxes(&browser).await;
            assert_eq!(now[..], places[..now.len()], "trial {trial} of {:?}", test.format);
            assert_eq!(rest_now, rest, "trial {trial} of {:?}", test.format);
            // Undo has one place, in sight without scrolling.
            let undo = browser.page.execute(UNDO, vec![]).await.unwrap();
            if trial > 0 {
                let at = *undone.get_or_insert_with(|| undo.clone()) == undo;
                assert!(at && undo[1].as_i64().unwrap() <= 844 - 56, "trial {trial} of {:?}: {undo}", test.format);
            }
            words.push_str(&browser.css("main").await.text().await.unwrap());
            browser.picture(&format!("likes-{}-{trial}", test.format.name())).await;
            // The second trial of pairs is left: the longest note comes with it.
            let away = test.format == LikesFormat::Paired && trial == 1;
            browser.follow(if away { "button[value=away]" } else { "button.pick" }).await;
        }
    }
    // Nothing of a name is cut, and in letters twice as large both things of a pair are in sight without scrolling.
    browser.page.execute("document.documentElement.style.fontSize = '100%'", vec![]).await.unwrap();
    let pair = sayso_model::AssessmentId(uuid::Uuid::now_v7());
    drop(server);
    let store = sayso_store::Store::open(dir.path()).await.unwrap();
    let mut two = card(95, "Chicken, cooked, pea-sized", sayso_model::RewardKind::Food);
    two.kcal_per_piece = Some(sayso_model::Kcal::clamped(1.0));
    let test = sayso_model::LikesTest {
        assessment: pair,
        format: LikesFormat::Paired,
        rewards: vec![two.reward, rewards[0].reward],
        rounds: 1,
        seed: 7,
    };
    let event = |animal, body| sayso_model::Event { id: id(), home, animal, body, ..pattern.clone() };
    store.append(vec![event(None, two.into()), event(Some(who), test.into())]).await.unwrap();
    store.close().await.unwrap();
    let server = Server::start(dir.path(), 0);
    for size in [(360, 780), PHONE] {
        browser.resize(size).await;
        for letters in ["100%", "200%"] {
            browser.goto(&server.url(&format!("/a/{who}/likes/test/{pair}"))).await;
            browser.css("button.pick").await;
            browser
                .page
                .execute(&format!("document.documentElement.style.fontSize = '{letters}'"), vec![])
                .await
                .unwrap();
            tokio::time::sleep(std::time::Duration::from_millis(400)).await;
            browser.picture(&format!("likes-letters-{}-{letters}", size.0)).await;
            let out = browser.page.execute(OUT_OF_SIGHT, vec![]).await.unwrap();
            assert_eq!(out, serde_json::json!([]), "{letters} at {} wide", size.0);
        }
    }
    browser.close().await;
    drop(server);
    for said in ["“garden” cannot be held up", "offer the lead for it", "shown as: the lead", "that is an answer"] {
        assert!(words.contains(said), "{said}");
    }
}
