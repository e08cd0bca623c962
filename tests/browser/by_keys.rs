//! A plan is written by a coach and accepted by a home with Tab, arrows and Enter alone, on a phone's width and a desk's, in two languages.

use crate::caseload::{key, tabs_to};
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::reads_at;
use crate::talking::keeper_and_coach;
use sayso_model::{Event, EventId, WordCard};
use uuid::Uuid;

const TAB: &str = "\u{e004}";
const ENTER: &str = "\u{e007}";
const DOWN: &str = "\u{e015}";
const SCREEN: (u32, u32) = (1280, 800);
/// Whether whoever looks sees where the focus is.
const SEEN: &str = "const e = document.activeElement; const r = e.getBoundingClientRect();
return e.matches(':focus-visible') && r.height > 0 && r.bottom > 0 && r.top < innerHeight;";

/// Tab to what tests know by that name, where the focus is to be seen; Enter, and the page that follows.
async fn enters(browser: &Browser, test: &str, then: &str) {
    tabs_to(browser, test).await;
    let seen = browser.page.execute(SEEN, vec![]).await.unwrap();
    assert_eq!(seen, true, "the focus on {test} is not seen");
    key(browser, ENTER).await;
    browser.until(then, &format!("return !!document.querySelector('{then}')")).await;
    browser.keeps_its_size().await;
}

/// Tab to a field, and the option after the one that stands there.
async fn next_option(browser: &Browser, name: &str) {
    for _ in 0..40 {
        let at = browser.page.execute("return document.activeElement?.name ?? ''", vec![]).await.unwrap();
        if at == name {
            return key(browser, DOWN).await;
        }
        key(browser, TAB).await;
    }
    panic!("Tab does not reach {name}");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_plan_is_sent_and_accepted_by_keys_alone_in_two_languages() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), SCREEN).await;
    let story = server.story(home).await;
    let animal = story.animals().into_keys().max_by_key(|a| story.words_of(*a).len()).unwrap();
    // One of its words ends sessions: beside the fields it says so.
    let card = (*story.words_of(animal).last().unwrap()).clone();
    let pattern = story.ledger().all().find(|e| e.animal.is_some()).unwrap().clone();
    let (id, at) = (EventId(Uuid::now_v7()), sayso_web::state::machine_clock().plus_seconds(-60.0));
    let body = WordCard { closing: true, ..card }.into();
    server.writes(home, vec![Event { id, happened_at: at, recorded_at: at, body, ..pattern }]).await;
    for (language, size, says) in [("en", SCREEN, "3 minutes"), ("de", PHONE, "3 Minuten")] {
        for browser in [&keeper, &coach] {
            browser.resize(size).await;
            reads_at(browser, &server.url("/"), language).await;
        }
        coach.goto(&server.url(&format!("/a/{animal}/today"))).await;
        enters(&coach, "write", "[data-test=write-plan]").await;
        enters(&coach, "write-plan", "[name=word_1]").await;
        next_option(&coach, "word_1").await;
        next_option(&coach, "way_1").await;
        let chosen = coach.page.execute("return document.querySelector('[name=way_1]').value", vec![]).await.unwrap();
        assert_eq!(chosen, "show");
        coach.css("[data-test=first] li").await;
        coach.picture(&format!("keys-plan-{language}")).await;
        enters(&coach, "send", "[data-standing=open]").await;
        // The home, from its Today.
        keeper.goto(&server.url(&format!("/a/{animal}/today"))).await;
        enters(&keeper, "from-coach", "[data-standing=open]").await;
        enters(&keeper, "accepted", "[data-standing=accepted]").await;
        keeper.until("nothing waits", "return !document.querySelector('[data-standing=open]')").await;
        keeper.picture(&format!("keys-agreed-{language}")).await;
        keeper.goto(&server.url(&format!("/a/{animal}/today"))).await;
        let agreed = keeper.text("agreed").await;
        assert!(agreed.contains(says), "{agreed}");
    }
    coach.close().await;
    keeper.close().await;
}
