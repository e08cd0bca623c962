//! What a phone keeps of a home ends with its leave to write there: a coach's keeps nothing, a phone of a home that left lets go.

use crate::accessibility;
use crate::harness::PHONE;
use crate::hosted::Hosted;
use crate::phone::{self, NARROW};
use crate::talking::keeper_and_coach;
use serde_json::json;

fn is_kept(path: &str) -> String {
    format!("return caches.open('sayso-pad-1').then((c) => c.match('{path}')).then((found) => Boolean(found))")
}

/// Whether any page of a home is kept.
const NONE_KEPT: &str = "return caches.open('sayso-pad-1').then((c) => c.keys())
    .then((all) => !all.some((r) => new URL(r.url).pathname.startsWith('/a/')))";

#[tokio::test(flavor = "multi_thread")]
async fn a_coachs_phone_keeps_no_page_and_one_of_a_home_that_left_lets_go() {
    let server = Hosted::start().await;
    let (home, keeper_link, club, coach_link) = server.home_and_club().await;
    let (keeper, coach) = keeper_and_coach(&server, (&keeper_link, club, &coach_link), PHONE).await;
    let animal = server.story(home).await.animals().into_keys().next().unwrap();
    let (today, board) = (format!("/a/{animal}/today"), format!("/a/{animal}/board"));

    // What an earlier version kept for the coach goes, and nothing comes in its place.
    coach.goto(&server.url(&today)).await;
    let watched = "return navigator.serviceWorker.ready.then(() => navigator.serviceWorker.controller !== null)";
    coach.until("the worker", watched).await;
    let put = format!(
        "return caches.open('sayso-pad-1').then((c) => c.put('{today}', new Response('Today'))).then(() => true)"
    );
    coach.page.execute(&put, vec![]).await.unwrap();
    coach.goto(&server.url(&today)).await;
    coach.until("nothing kept for a coach", NONE_KEPT).await;
    coach.goto(&server.url(&today)).await;
    coach.css("main").await;
    let kept = coach.page.execute(&is_kept("/offline"), vec![]).await.unwrap();
    assert_eq!(kept, json!(false), "nor the page that names the home's animals");

    keeper.goto(&server.url(&today)).await;
    keeper.until("Today kept", &is_kept(&today)).await;
    keeper.goto(&server.url(&board)).await;
    keeper.until("the board kept", &is_kept(&board)).await;
    // New pages of a home can be read and reached.
    let mut wrong = Vec::new();
    for path in [format!("/a/{animal}/scored"), "/sharing/invite".to_owned(), "/homes".to_owned()] {
        wrong.extend(accessibility::faults(&keeper, &server.url(&path), &path).await);
        keeper.resize(NARROW).await;
        keeper.goto(&server.url(&path)).await;
        keeper.picture(&format!("left-page-{}", path.rsplit('/').next().unwrap())).await;
        wrong.extend(phone::faults(&keeper, &path).await);
        keeper.resize(PHONE).await;
    }
    assert!(wrong.is_empty(), "{wrong:?}");
    keeper.goto(&server.url(&board)).await;
    keeper.until("the board", "return document.querySelector('#board').dataset.ready === 'yes'").await;
    server.leaves(home).await;

    // The Board that is open says so, and not that nothing answers.
    keeper.page.execute("document.dispatchEvent(new Event('visibilitychange'))", vec![]).await.unwrap();
    let says = "return document.querySelector('[data-test=outbox-text]').textContent.includes('has left this server')";
    keeper.until("told that the home left", says).await;
    keeper.picture("left-board").await;
    keeper.until("nothing of the animal kept", NONE_KEPT).await;

    // A page that was kept is asked for: led away, its copy goes. Taps that wait are offered, then cleared.
    keeper.page.execute(&put, vec![]).await.unwrap();
    keeper.goto(&server.url(&today)).await;
    keeper.until("led to the homes", "return location.pathname === '/homes'").await;
    keeper.until("no copy of Today", NONE_KEPT).await;
    let waits = format!(
        "return new Promise((done) => {{
            const asked = indexedDB.open('sayso', 1);
            asked.onsuccess = () => {{
                const tx = asked.result.transaction('out', 'readwrite');
                const event = {{ id: 'waits', home: '{home}', body: {{ kind: 'press' }} }};
                tx.objectStore('out').add({{ id: 'waits', tap: 'waits', state: 'refused', event, at: Date.now() }});
                tx.oncomplete = () => {{ asked.result.close(); done(true); }};
            }};
        }})"
    );
    keeper.page.execute(&waits, vec![]).await.unwrap();
    keeper.goto(&server.url("/homes")).await;
    keeper.until("what waits is offered", "return document.querySelector('#unsent')?.hidden === false").await;
    let said = keeper.css("#unsent").await.text().await.unwrap();
    assert!(said.contains("cannot be sent") && !said.contains("Sign in again"), "{said}");
    keeper.picture("left-homes").await;
    keeper.page.execute("window.confirm = () => true", vec![]).await.unwrap();
    keeper.tap("save-unsent").await;
    keeper.tap("clear-copy").await;
    let cleared = "return document.querySelector('[data-test=clear-copy]') === null";
    keeper.until("cleared", cleared).await;
    keeper.goto(&server.url("/homes")).await;
    keeper.until("nothing to offer", "return document.querySelector('#unsent')?.hidden === true").await;
    coach.close().await;
    keeper.close().await;
}
