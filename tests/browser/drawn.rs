//! What the notebook draws: a round left in the middle and gone on with, and an answer while swaps are agreed.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story, taps};
use sayso_model::{
    AnimalId, Answer, Body, Invitation, InvitationResult, Round, SignLevel, Story, SwapDraw, SwapEnd, SwapPlan,
    WordCard, draw,
};

const ALL_SENT: &str = "const o = document.querySelector('[data-test=outbox]'); return o.dataset.kept === '0'";

/// An animal with two words that can be drawn, and the words: those that Today invites.
fn invited(story: &Story) -> (AnimalId, Vec<WordCard>) {
    let who = animal(story);
    let now = story.ledger().all().map(|e| e.happened_at).max().unwrap();
    let case = sayso_advisor::Case::new(story, who, now);
    let today = sayso_advisor::today::today(&case).expect("an animal");
    let drawn = |w: &&WordCard| !w.closing && w.reward.is_some() && today.may_invite(w.word);
    (who, story.words_of(who).into_iter().filter(drawn).cloned().collect())
}

/// Waits for a call of the round and gives the number and the word it offers.
async fn offered(browser: &Browser, number: u16) -> String {
    let there = format!(
        "const n = document.querySelector('[data-test=round-at]'); return !!n && n.textContent === '{number} of 4'"
    );
    browser.until(&format!("call {number}"), &there).await;
    browser.text("round-offer").await.trim_start_matches("Offer:").trim().to_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_round_is_drawn_left_in_the_middle_and_gone_on_with() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let (who, words) = invited(&before);
    assert!(words.len() >= 2, "{words:?}");
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let board = server.url(&format!("/a/{who}/board"));
    browser.goto(&board).await;
    browser.tap("mode-invitation").await;
    browser.find("round-start").await;
    browser.picture("round-start").await;
    // What Today shows, mends or leaves alone is not there to be ticked.
    let boxes = "return [...document.querySelectorAll('.hand input')].map((b) => b.dataset.test).sort()";
    let mut should: Vec<String> = words.iter().map(|w| format!("hand-{}", w.says)).collect();
    should.sort();
    assert_eq!(browser.page.execute(boxes, vec![]).await.unwrap(), serde_json::json!(should));
    assert!(words.len() < before.words_of(who).len(), "the demo has words with another step");
    browser.tap("round-start").await;

    let first = offered(&browser, 1).await;
    browser.picture("round-call").await;
    browser.tap("offer").await;
    browser.tap(&format!("pad-{first}")).await;
    browser.tap("invitation-given").await;
    browser.tap("took-yes").await;
    // Not offered after all: the next word, and the outcome stays unknown.
    offered(&browser, 2).await;
    browser.tap("round-skip").await;
    // Reloaded in the middle, it goes on where it was.
    offered(&browser, 3).await;
    browser.until("all is sent", ALL_SENT).await;
    browser.goto(&board).await;
    offered(&browser, 3).await;
    browser.tap("offer").await;
    browser.tap("invitation-left").await;
    // The panel is drawn anew once the tap is kept.
    let told = "return document.querySelector('[data-test=panel]').innerText.includes('do not lure or call')";
    browser.until("what to do when it left is said", told).await;
    browser.picture("round-left").await;
    browser.tap("round-stop").await;
    assert!(browser.text("round-over").await.contains("It counts little; that is all"));
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    assert!(matches!(new[0].body, Body::Round(_)), "the round is written down before anything else");
    let round = after.of::<Round>(who).next_back().unwrap().part.clone();
    assert_eq!(round.calls, draw::CALLS);
    assert!(round.words.len() >= 2 && round.words.iter().all(|w| words.iter().any(|c| c.word == *w)));
    let calls: Vec<&Invitation> = after
        .of::<Invitation>(who)
        .map(|i| i.part)
        .filter(|i| i.call.is_some_and(|c| c.round == round.round))
        .collect();
    assert_eq!(calls.iter().map(|i| i.call.unwrap().number).collect::<Vec<_>>(), [1, 3]);
    for call in &calls {
        assert_eq!(Some(call.word), draw::called(round.round, call.call.unwrap().number, &round.words));
    }
    assert!(matches!(calls[0].result, InvitationResult::Pressed { word, .. } if word == calls[0].word));
    assert_eq!(calls[0].took, Some(true));
    assert!(matches!(calls[1].result, InvitationResult::Left { .. }));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_growl_in_the_middle_of_a_round_is_noted_and_ends_it() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let (who, _) = invited(&before);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("start").await;
    browser.find("act-joined").await;
    browser.tap("mode-invitation").await;
    browser.tap("round-start").await;
    offered(&browser, 1).await;
    assert!(browser.text("panel").await.contains("Offer only to an animal that is there"));
    browser.tap("act-joined").await;
    let there = "return !document.querySelector('[data-test=panel]').textContent.includes('Offer only')";
    browser.until("it is there", there).await;
    browser.tap("offer").await;
    browser.find("count-down").await;
    browser.tap("act-sign").await;
    browser.tap("sign-strong").await;
    browser.tap("stop-end").await;
    let stop = "return document.querySelector('[data-test=panel]').textContent.includes('Stop here')";
    browser.until("nothing more is offered", stop).await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let sign = new.iter().find_map(|e| if let Body::Sign(s) = &e.body { Some(s) } else { None }).expect("a sign");
    assert!(sign.level == SignLevel::Strong && sign.session.is_some());
    assert!(new.iter().any(|e| matches!(&e.body, Body::Joining(_))));
}

#[tokio::test(flavor = "multi_thread")]
async fn a_round_begun_on_another_device_goes_on_here() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let (who, _) = invited(&before);
    let server = Server::start(dir.path(), 0);
    let board = server.url(&format!("/a/{who}/board"));
    let first = Browser::open(PHONE).await;
    first.goto(&board).await;
    first.tap("mode-invitation").await;
    first.tap("round-start").await;
    offered(&first, 1).await;
    first.tap("offer").await;
    first.tap("invitation-left").await;
    first.tap("invitation-done").await;
    let word = offered(&first, 2).await;
    first.until("all is sent", ALL_SENT).await;
    first.close().await;
    let second = Browser::open(PHONE).await;
    second.goto(&board).await;
    second.tap("mode-invitation").await;
    assert_eq!(offered(&second, 2).await, word);
    second.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn while_swaps_are_agreed_the_draw_comes_first_and_a_strong_sign_stops_them() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let who = animal(&before);
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/swaps"))).await;
    // The demo may have agreed to some; a person may stop them at any time.
    if browser.page.find(fantoccini::Locator::Css("[data-test=swaps-running]")).await.is_ok() {
        browser.follow("button[value=home]").await;
    }
    browser.find("swaps-begin").await;
    browser.picture("swaps").await;
    // Two things that are no food, or food where there is no other.
    let ticked = "const all = [...document.querySelectorAll('input[name=words]')]; const on = all.filter((b) => b.checked); \
                  for (const b of all) b.checked = false; \
                  for (const b of [...on, ...all.filter((b) => !on.includes(b))].slice(0, 2)) b.checked = true; return all.length >= 2";
    browser.until("two words ticked", ticked).await;
    browser.press("input[name=home]").await;
    browser.page.execute("document.querySelector('input[name=one_in]').value = '4'", vec![]).await.unwrap();
    browser.follow("[data-test=swaps-begin]").await;
    browser.find("swaps-running").await;
    browser.picture("swaps-running").await;
    let (_, agreed) = story(dir.path()).await;
    let plan = agreed.of::<SwapPlan>(who).next_back().expect("a plan").part.clone();
    let says = |w| agreed.words()[&w].says.to_string();
    let known = agreed.ledger().len();

    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("mode-day").await;
    // "Not now" draws nothing.
    browser.tap(&format!("pad-{}", says(plan.words[0]))).await;
    browser.picture("swap-ask").await;
    browser.tap("swap-not-now").await;
    browser.tap("answer-declined").await;
    let (mut swaps, mut tries) = (0, 0);
    // Until a swap came: missing it this often has a chance of 1 in 100,000.
    while swaps == 0 && tries < 40 {
        tries += 1;
        tokio::time::sleep(std::time::Duration::from_millis(420)).await;
        browser.tap(&format!("pad-{}", says(plan.words[tries % 2]))).await;
        browser.tap("swap-give").await;
        let said = browser.text("swap-drawn").await;
        if said.starts_with("This time give") {
            swaps += 1;
            assert!(said.contains(&says(plan.words[1 - tries % 2])) && said.ends_with("instead"), "{said}");
            browser.picture("swap-instead").await;
        }
        browser.tap("swap-given").await;
        browser.tap("then-took").await;
    }
    assert_eq!(swaps, 1);
    browser.tap("swaps-sign").await;
    browser.tap("sign-strong").await;
    browser.tap("stop-here-done").await;
    assert_eq!(browser.text("swaps-over").await, "Agreed swaps were stopped.");
    browser.picture("swaps-stopped").await;
    // And the next press is answered as ever.
    browser.tap(&format!("pad-{}", says(plan.words[0]))).await;
    browser.find("answer-given").await;
    browser.until("all is sent", ALL_SENT).await;
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let draws: Vec<SwapDraw> =
        after.of::<SwapDraw>(who).map(|d| d.part.clone()).filter(|d| d.swap == plan.swap).collect();
    assert_eq!(draws.len(), tries);
    for d in &draws {
        let swapped = draw::swapped(plan.swap, d.press, plan.one_in);
        let other = draw::partner(&plan.words, 0, d.word).unwrap();
        assert_eq!(d.give, if swapped { other } else { d.word });
        let came = new.iter().find_map(|e| match &e.body {
            Body::Delivery(came) if came.answers == Some(d.press) => Some(came),
            _ => None,
        });
        let came = came.expect("a delivery");
        let (answer, reward) =
            if swapped { (Answer::Alternative, after.words()[&other].reward) } else { (Answer::Given, None) };
        assert_eq!((came.answer, came.alternative), (answer, reward));
    }
    let sign = new.iter().position(|e| matches!(&e.body, Body::Sign(s) if s.level == SignLevel::Strong));
    let stop = new.iter().position(|e| matches!(&e.body, Body::SwapStop(s) if s.reason == SwapEnd::Signs));
    assert!(sign.is_some() && sign.map(|at| at + 1) == stop, "one tap for both: {sign:?}, {stop:?}");
}
