//! An invitation with nothing by the wait: shown, given, taken; and never called a mistake.

use crate::harness::{Browser, PHONE, Server, animal, demo_dir, story, taps};
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
