//! A new home on a server, from the link of its invitation to the first showing, on a phone that keeps passkeys.

use crate::first::Person;
use crate::harness::{Browser, PHONE};
use crate::hosted::Hosted;
use crate::phone::{NARROW, STAND_IN};
use crate::{accessibility, phone};
use sayso_model::{Delivery, Press, PressedBy};
use serde_json::json;
use std::time::Instant;

/// What may be asked of a person from the link to the first showing.
const MOST_TAPS: usize = 25;
const MOST_FIELDS: usize = 4;
/// What it may take, in seconds, of a person who needs so long from one tap to the next: as docs/lab/host.md says. How long people
/// need was not measured.
const MOST_SECONDS: f64 = 120.0;
const A_TAP_SECONDS: f64 = 0.4;

/// A device that keeps passkeys and whose person always shows a finger (W3C Web Authentication, level 3, section 11).
async fn keeps_passkeys(browser: &Browser) {
    browser.devtools("WebAuthn.enable", json!({ "enableUI": false })).await;
    let options = json!({
        "protocol": "ctap2", "transport": "internal", "hasResidentKey": true, "hasUserVerification": true,
        "isUserVerified": true, "automaticPresenceSimulation": true,
    });
    browser.devtools("WebAuthn.addVirtualAuthenticator", json!({ "options": options })).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn from_the_invitation_to_the_first_showing_takes_no_more_than_25_taps() {
    let server = Hosted::start().await;
    let (home, link) = server.invitation().await;
    let browser = Browser::open(PHONE).await;
    keeps_passkeys(&browser).await;
    let mut person = Person { browser: &browser, taps: 0, fields: 0 };
    let begin = Instant::now();
    browser.goto(&server.url(&link)).await;
    browser.picture("joining-1-invited").await;
    person.types("name", "Ilda").await;
    person.next("[data-test=join]").await;
    browser.picture("joining-2-welcome").await;
    person.next("[data-test=make-passkey]").await;
    browser.picture("joining-3-start").await;
    let you = browser.css("#you").await.prop("value").await.unwrap();
    assert_eq!(you.as_deref(), Some("Ilda"), "the name is known");
    person.types("animal", "Bo").await;
    person.next("form button.primary").await;
    person.shows_first("joining").await;
    let (taps, fields, seconds) = (person.taps, person.fields, begin.elapsed().as_secs_f64());
    browser.picture("joining-7-shown").await;
    let with_taps = seconds + taps as f64 * A_TAP_SECONDS;
    println!(
        "from the invitation to the first showing: {taps} taps, {fields} fields, {with_taps:.1} s with 0.4 s a tap"
    );
    assert!(with_taps <= MOST_SECONDS, "{with_taps:.1} s");
    let story = server.story(home).await;
    let bo = *story.animals().keys().next().unwrap();
    assert!(story.of::<Press>(bo).any(|p| p.part.by == PressedBy::Person));
    assert_eq!(story.of::<Delivery>(bo).count(), 1);
    assert!(taps <= MOST_TAPS && fields <= MOST_FIELDS, "{taps} taps, {fields} fields");

    // Out, and in again by the passkey.
    browser.goto(&server.url("/account")).await;
    browser.picture("joining-8-account").await;
    browser.follow("[data-test=sign-out]").await;
    browser.picture("joining-9-sign-in").await;
    browser.follow("[data-test=passkey]").await;
    browser.until("Today", "return /^\\/a\\/.*\\/today$/.test(location.pathname)").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_makes_no_passkey_is_told_so_and_goes_on() {
    let server = Hosted::start().await;
    let (_, link) = server.invitation().await;
    let browser = Browser::open(PHONE).await;
    browser.goto(&server.url(&link)).await;
    browser.css("[name=name]").await.send_keys("Ilda").await.unwrap();
    browser.follow("[data-test=join]").await;
    // As the device answers where its question is put away.
    let cancelled = "navigator.credentials.create = () => Promise.reject(new DOMException('', 'NotAllowedError'))";
    browser.page.execute(cancelled, vec![]).await.unwrap();
    browser.tap("make-passkey").await;
    let said = browser.css("[data-passkey] [role=alert]").await.text().await.unwrap();
    assert!(said.contains("passkey"), "{said}");
    browser.follow("[data-test=later]").await;
    browser.css("#animal").await;
    browser.close().await;
}

#[tokio::test(flavor = "multi_thread")]
async fn pages_of_people_can_be_read_and_reached_and_pass_the_rules() {
    let server = Hosted::start().await;
    let (_, link) = server.invitation().await;
    let browser = Browser::open(PHONE).await;
    keeps_passkeys(&browser).await;
    let mut wrong = Vec::new();
    let secret = "0".repeat(64);
    let before = ["/sign-in".to_owned(), link.clone(), format!("/sign-in/link/{secret}"), format!("/join/{secret}")];
    let after =
        ["/welcome?to=/start", "/account", "/account/erase", "/sign-in?again=yes&to=/account"].map(str::to_owned);
    for pages in [before, after] {
        for page in &pages {
            wrong.extend(accessibility::faults(&browser, &server.url(page), page).await);
            browser.resize(NARROW).await;
            for language in [STAND_IN, "de"] {
                phone::reads_at(&browser, &server.url("/"), language).await;
                browser.goto(&server.url(page)).await;
                browser.css("main").await;
                browser
                    .picture(&format!("people-{language}-{}", page.split(['?', '0']).next().unwrap().replace('/', "_")))
                    .await;
                wrong.extend(phone::faults(&browser, &format!("{page} ({language})")).await);
            }
            browser.resize(PHONE).await;
            phone::reads_at(&browser, &server.url("/"), "en").await;
        }
        if pages.contains(&link) {
            browser.goto(&server.url(&link)).await;
            browser.css("[name=name]").await.send_keys("Ilda").await.unwrap();
            browser.follow("[data-test=join]").await;
            browser.follow("[data-test=make-passkey]").await;
        }
    }
    browser.close().await;
    assert!(wrong.is_empty(), "{} faults:\n{}", wrong.len(), wrong.join("\n"));
}

/// Puts a tap that waits and one that was sent beside what the board remembers, as the board keeps them.
const KEPT_HERE: &str = "
    const open = new Promise((ready) => {
        const asked = indexedDB.open('sayso', 1);
        asked.onupgradeneeded = () => {
            const out = asked.result.createObjectStore('out', { keyPath: 'n', autoIncrement: true });
            out.createIndex('id', 'id', { unique: true });
            out.createIndex('state', 'state');
            asked.result.createObjectStore('memo');
        };
        asked.onsuccess = () => ready(asked.result);
    });
    const db = await open;
    const tx = db.transaction(['out', 'memo'], 'readwrite');
    tx.objectStore('out').add({ id: 'waits', state: 'waiting', event: { id: 'waits' } });
    tx.objectStore('out').add({ id: 'gone', state: 'sent', event: { id: 'gone' } });
    tx.objectStore('memo').put({ seen: 1 }, 'pad-x');
    await new Promise((done) => { tx.oncomplete = done; });
    db.close();
    await (await caches.open('sayso-pad-1')).put('/a/x/board', new Response('the board'));
    return true;";

/// What is still there: ids of taps, keys of the memo, caches.
const LEFT_HERE: &str = "
    const db = await new Promise((ready) => {
        const asked = indexedDB.open('sayso', 1);
        asked.onsuccess = () => ready(asked.result);
    });
    const got = (ask) => new Promise((ready) => { ask.onsuccess = () => ready(ask.result); });
    const tx = db.transaction(['out', 'memo']);
    const out = (await got(tx.objectStore('out').getAll())).map((row) => row.id);
    const memo = await got(tx.objectStore('memo').getAllKeys());
    db.close();
    return JSON.stringify([out, memo, await caches.keys()]);";

async fn run(browser: &Browser, script: &str) -> serde_json::Value {
    browser.page.execute(&format!("return (async () => {{{script}}})();"), vec![]).await.unwrap()
}

#[tokio::test(flavor = "multi_thread")]
async fn signing_out_leaves_only_what_was_not_sent_and_needs_the_network() {
    let server = Hosted::start().await;
    let (_, link) = server.invitation().await;
    let browser = Browser::open(PHONE).await;
    keeps_passkeys(&browser).await;
    browser.goto(&server.url(&link)).await;
    browser.css("[name=name]").await.send_keys("Ilda").await.unwrap();
    browser.follow("[data-test=join]").await;
    browser.follow("[data-test=make-passkey]").await;
    browser.goto(&server.url("/account")).await;
    assert_eq!(run(&browser, KEPT_HERE).await, json!(true));
    let network =
        |offline: bool| json!({ "offline": offline, "latency": 0, "downloadThroughput": -1, "uploadThroughput": -1 });
    browser.devtools("Network.enable", json!({})).await;
    browser.devtools("Network.emulateNetworkConditions", network(true)).await;
    browser.tap("sign-out").await;
    browser.until("told so", "return document.querySelector('[data-offline]')?.hidden === false").await;
    browser.picture("signing-out-offline").await;
    browser.devtools("Network.emulateNetworkConditions", network(false)).await;
    browser.follow("[data-test=sign-out]").await;
    browser.until("the sign-in", "return location.pathname === '/sign-in'").await;
    browser.until("what waits is offered", "return document.querySelector('#unsent')?.hidden === false").await;
    let said = browser.css("#unsent").await.text().await.unwrap();
    assert!(said.contains("Sign in again") && !said.to_lowercase().contains("pair"), "{said}");
    browser.picture("signing-out-unsent").await;
    assert_eq!(run(&browser, LEFT_HERE).await, json!(r#"[["waits"],[],[]]"#));
    browser.close().await;
}
