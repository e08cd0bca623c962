//! An invitation with nothing by the wait: shown, given, taken; and never called a mistake.

use crate::every_page::{growled, unheld};
use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story, taps};
use crate::session::at_board;
use sayso_model::{AnimalId, Body, InvitationResult, PressedBy};

/// A phone at the Board, where a person chooses what to offer.
async fn choosing(server: &Server, who: AnimalId) -> Browser {
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&format!("/a/{who}/board"))).await;
    browser.tap("mode-invitation").await;
    browser.tap("choose-myself").await;
    browser
}

#[tokio::test(flavor = "multi_thread")]
async fn nothing_by_the_wait_is_followed_by_showing_and_giving() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let who = animal(&before);
    let card = before.words_of(who)[0];
    let server = Server::start(dir.path(), 0);
    let browser = choosing(&server, who).await;
    let said = browser.text("panel").await;
    assert!(said.contains("it proves nothing"), "{said}");
    browser.tap("way-offer_in_view").await;
    let wait = browser.find("wait").await;
    assert_eq!(wait.prop("value").await.unwrap().as_deref(), Some("5"), "five seconds is the usual wait");
    browser.tap(&format!("pad-{}", card.says)).await;
    browser.tap("offer").await;
    assert!(browser.text("count-down").await.ends_with('s'));
    browser.tap("nothing").await;
    let said = browser.text("panel").await.to_lowercase();
    assert!(said.contains("show it yourself") && !said.contains("wrong") && !said.contains("fail"), "{said}");
    browser.tap("invitation-show").await;
    browser.tap("invitation-given").await;
    browser.tap("took-yes").await;
    browser
        .until(
            "everything sent",
            "const o = document.querySelector('[data-test=outbox]'); return o.dataset.kept === '0'",
        )
        .await;
    browser.close().await;
    drop(server);

    let (_, after) = story(dir.path()).await;
    let new = taps(&after, known);
    let invitation = after.of::<sayso_model::Invitation>(who).next_back().expect("an invitation").part;
    assert_eq!(invitation.result, InvitationResult::NothingByWait);
    assert_eq!((invitation.word, invitation.shown, invitation.took), (card.word, true, Some(true)));
    assert!((invitation.wait_s.get() - 5.0).abs() < 1e-9);
    let shown =
        new.iter().any(|e| matches!(&e.body, Body::Press(p) if p.by == PressedBy::Person && p.word == card.word));
    assert!(shown, "the person's own press was noted");
}

#[tokio::test(flavor = "multi_thread")]
async fn after_a_growl_an_offer_is_asked_about_first_and_warned_of_as_long_as_it_goes_on() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    // Where swaps run, a strong sign asks about them first.
    let calm = |a: &AnimalId| before.of::<sayso_model::SwapPlan>(*a).count() == 0;
    let who = before.animals().into_keys().find(calm).expect("an animal without swaps");
    let card = before.words_of(who)[0];
    growled(dir.path(), std::iter::once(who), 0.0).await;
    let server = Server::start(dir.path(), 0);
    let browser = choosing(&server, who).await;
    browser.tap(&format!("pad-{}", card.says)).await;
    browser.tap("offer").await;
    assert!(browser.text("sheet").await.contains("Rest is better now"));
    browser.picture("offer-at-rest").await;
    browser.tap("rest-keep").await;
    assert!(browser.page.find(fantoccini::Locator::Css("[data-test=count-down]")).await.is_err(), "nothing was begun");
    browser.tap("offer").await;
    browser.tap("offer-anyway").await;
    browser.find("count-down").await;
    assert!(browser.text("rests").await.starts_with("Rest until "));
    browser.picture("wait-at-rest").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn an_open_offer_is_settled_before_anything_else_is_done() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    let known = before.ledger().len();
    let who = animal(&before);
    let card = before.words_of(who)[0];
    let server = Server::start(dir.path(), 0);
    let browser = choosing(&server, who).await;
    browser.tap("way-offer_in_view").await;
    browser.tap(&format!("pad-{}", card.says)).await;
    browser.tap("offer").await;
    // Before the wait is over nobody can say that nothing came.
    browser.tap("mode-showing").await;
    browser.find("settle-left").await;
    assert!(browser.page.find(fantoccini::Locator::Css("[data-test=settle-nothing]")).await.is_err());
    browser.tap("sheet-close").await;
    browser.until("the wait is over", "return Boolean(document.querySelector('.slots .later.now'))").await;
    browser.tap("mode-showing").await;
    browser.picture("still-offered").await;
    browser.tap("settle-nothing").await;
    browser.until("shown now", "return document.querySelector('#board').dataset.mode === 'showing'").await;
    browser.all_sent().await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    let invitations: Vec<_> = after.of::<sayso_model::Invitation>(who).filter(|i| i.part.word == card.word).collect();
    assert_eq!(invitations.last().expect("noted").part.result, InvitationResult::NothingByWait);
    assert_eq!(after.ledger().len(), known + 1);
}

/// Words that the plan has offered first, and how often.
const PLANNED: &str = "
const now = JSON.parse(document.getElementById('board').dataset.now);
const plan = now.plan.filter((p) => p.invitations > 0 && now.words.find((w) => w.id === p.word)?.may_invite);
return plan.map((p) => [p.word, p.invitations, now.words.find((w) => w.id === p.word).says]);";

async fn mode(browser: &Browser, wanted: &str) {
    let there = format!("return document.getElementById('board').dataset.mode === '{wanted}'");
    browser.until(wanted, &there).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_that_today_invites_opens_ready_for_it_and_leads_back_to_showing() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    unheld(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut found = None;
    for who in before.animals().into_keys() {
        at_board(&browser, &server, who).await;
        let planned = browser.page.execute(PLANNED, vec![]).await.unwrap();
        let planned: Vec<(String, u64, String)> = serde_json::from_value(planned).unwrap();
        if let Some(first) = planned.into_iter().next() {
            found = Some((who, first));
            break;
        }
    }
    let (who, (word, times, says)) = found.expect("an animal of the demo has a word to invite");
    let does = format!("return document.querySelector('[data-part=pads] [data-word=\"{word}\"] .does').textContent");
    let pad = format!("[data-part=pads] [data-word=\"{word}\"]");
    browser.tap("mode-showing").await;
    browser.tap("start").await;
    browser.tap("act-joined").await;
    browser.until("joined", "return document.querySelector('[data-test=act-joined]').disabled").await;
    assert!(browser.text("offer-first").await.contains(&says));
    let places = "scrollTo(0, 0); return [...document.querySelectorAll('.pads > *')].map((p) => { const r = p.getBoundingClientRect(); return [r.left, r.top, r.width, r.height].map(Math.round); })";
    let lay = browser.page.execute(places, vec![]).await.unwrap();
    for call in 1..=times {
        assert_eq!(browser.page.execute(&does, vec![]).await.unwrap(), "Offer this", "call {call} of {times}");
        browser.press(&pad).await;
        browser.find("ready").await;
        mode(&browser, "invitation").await;
        if call == 1 {
            browser.picture("invitation-ready").await;
            assert_eq!(browser.page.execute(places, vec![]).await.unwrap(), lay, "no pad moves as it opens");
            // Nothing was noted yet, and it may be left.
            browser.tap("ready-cancel").await;
            mode(&browser, "showing").await;
            browser.press(&pad).await;
        }
        browser.tap("offer").await;
        browser.until("the wait is over", "return Boolean(document.querySelector('.slots .later.now'))").await;
        browser.tap("nothing").await;
        browser.tap("invitation-show").await;
        browser.tap("invitation-given").await;
        browser.tap("took-yes").await;
        mode(&browser, "showing").await;
    }
    browser.picture("invitation-back").await;
    assert_eq!(browser.page.execute(&does, vec![]).await.unwrap(), "I press", "now it is shown");
    browser.press(&pad).await;
    browser.tap("given").await;
    browser.tap("then-took").await;
    browser.tap("act-end").await;
    browser.tap("end-done").await;
    browser.all_sent().await;
    browser.close().await;
    drop(server);
    let (_, after) = story(dir.path()).await;
    let of_word = |i: &sayso_model::Fact<'_, sayso_model::Invitation>| i.part.word.to_string() == word;
    let count = |story: &sayso_model::Story| story.of::<sayso_model::Invitation>(who).filter(of_word).count();
    assert_eq!(count(&after) - count(&before), usize::try_from(times).unwrap());
    let last = after.of::<sayso_model::Invitation>(who).rfind(of_word).unwrap().part;
    assert!(last.session.is_some() && last.shown && last.took == Some(true) && last.call.is_none(), "{last:?}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_word_that_today_invites_may_be_shown_instead() {
    let dir = demo_dir();
    let (_, before) = story(dir.path()).await;
    unheld(dir.path()).await;
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut looked_at = 0;
    for who in before.animals().into_keys() {
        at_board(&browser, &server, who).await;
        let planned = browser.page.execute(PLANNED, vec![]).await.unwrap();
        let planned: Vec<(String, u64, String)> = serde_json::from_value(planned).unwrap();
        let Some((word, ..)) = planned.into_iter().next() else { continue };
        looked_at += 1;
        browser.tap("start").await;
        browser.press(&format!("[data-part=pads] [data-word=\"{word}\"]")).await;
        browser.tap("ready-show").await;
        mode(&browser, "showing").await;
        browser.tap("given").await;
        browser.tap("then-took").await;
        let does =
            format!("return document.querySelector('[data-part=pads] [data-word=\"{word}\"] .does').textContent");
        assert_eq!(browser.page.execute(&does, vec![]).await.unwrap(), "I press", "it is not asked again");
    }
    browser.close().await;
    assert!(looked_at > 0, "an animal of the demo has a word to invite");
}
