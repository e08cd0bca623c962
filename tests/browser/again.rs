//! A form that comes too late for its sender's sign-in stands there again as it was sent; what a home has to know at once stands where
//! its people look first.

use crate::accessibility;
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{self, NARROW};
use crate::talking::joins;

#[tokio::test(flavor = "multi_thread")]
async fn what_was_typed_stands_there_again_after_one_showed_who_one_is() {
    let server = Hosted::start().await;
    let (home, keeper_link, ..) = server.home_and_club().await;
    let keeper = Browser::open(PHONE).await;
    joins(&keeper, &server, &keeper_link, "Ilda").await;
    keeper.goto(&server.url("/account")).await;
    keeper.follow("[data-test=make-codes]").await;
    let code = keeper.css("[data-test=codes] li").await.text().await.unwrap();

    keeper.goto(&server.url("/sharing/invite")).await;
    keeper.css("#new_person").await.send_keys("Robin").await.unwrap();
    keeper.press("[name=role][value=observer]").await;
    server.sign_ins_grow_old().await;
    keeper.follow("form[action='/sharing/invite'] button.primary").await;
    keeper.find("not-kept").await;
    keeper.picture("again-not-kept").await;
    keeper.press("details summary").await;
    keeper.css("#code").await.send_keys(&code).await.unwrap();
    keeper.follow("[data-test=use-code]").await;
    keeper.until("back at the form", "return location.pathname === '/sharing/invite'").await;
    keeper.find("again").await;
    let held = "return document.querySelector('#new_person').value === 'Robin'
        && document.querySelector('[name=role][value=observer]').checked";
    keeper.until("what was typed", held).await;
    keeper.picture("again-form").await;
    keeper.follow("form[action='/sharing/invite'] button.primary").await;
    keeper.find("link").await;
    // Once: the next one who opens the form begins anew.
    keeper.goto(&server.url("/sharing/invite")).await;
    keeper.until("an empty form", "return document.querySelector('#new_person').value === ''").await;
    assert!(server.story(home).await.people().into_values().any(|card| card.name.as_str() == "Robin"));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_invitation_for_a_home_that_lost_its_way_in_is_seen_first_and_reads_on_a_narrow_phone() {
    let server = Hosted::start().await;
    let (home, keeper_link, ..) = server.home_and_club().await;
    let keeper = Browser::open(PHONE).await;
    joins(&keeper, &server, &keeper_link, "Ilda").await;
    server.invites_anew(home).await;
    let animal = server.story(home).await.animals().into_keys().next().unwrap();
    let (today, board) = (format!("/a/{animal}/today"), format!("/a/{animal}/board"));
    let mut wrong = Vec::new();
    for (name, path) in [("today", today.as_str()), ("board", board.as_str()), ("homes", "/homes")] {
        keeper.goto(&server.url(path)).await;
        keeper.find("news").await;
        keeper.picture(&format!("news-{name}")).await;
        wrong.extend(accessibility::faults(&keeper, &server.url(path), path).await);
        keeper.resize(NARROW).await;
        wrong.extend(phone::faults(&keeper, path).await);
        keeper.resize(PHONE).await;
    }
    assert!(wrong.is_empty(), "{wrong:?}");
    keeper.goto(&server.url(&board)).await;
    keeper.follow("[data-test=see-to]").await;
    keeper.find("refuse-anew").await;
}
