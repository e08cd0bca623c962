//! Signing in and out.

use crate::browser::Browser;
use crate::key::Key;
use crate::server::Server;
use sayso_model::Moment;
use sayso_web::state::machine_clock;
use serde_json::json;
use std::sync::atomic::{AtomicI64, Ordering};

const ILDA: &str = "ilda@home.example";

/// Someone with an address that was proved, and the browser used for it.
pub async fn with_address(server: &mut Server) -> Browser {
    let keeper = server.keeper().await;
    let (_, link) = server.home_link(&keeper).await;
    let mut ilda = server.joined(&link, "Ilda").await;
    assert_eq!(ilda.post("/account/email", &[("email", ILDA)]).await.status, 200);
    let proof = server.post.next().await;
    assert_eq!(proof.to, ILDA);
    assert_eq!(ilda.post(&proof.path(), &[]).await.to.as_deref(), Some("/account"));
    ilda
}

#[tokio::test(flavor = "multi_thread")]
async fn a_mailed_link_signs_in_once_and_only_by_its_button() {
    let mut server = Server::new().await;
    with_address(&mut server).await;
    let mut phone = server.browser();
    let page = phone.get("/account").await;
    assert_eq!(page.to.as_deref(), Some("/sign-in?to=/account"));
    let head = phone.head("/sign-in?to=/account").await;
    assert_eq!((head.status, head.text.as_str()), (200, ""), "as for the page, without it");
    let page = phone.get("/sign-in?to=/account").await;
    assert!(page.status == 200 && page.text.contains(r#"name="to" value="/account""#), "{}", page.text);
    let sent = phone.post("/sign-in/link", &[("email", " Ilda@Home.example "), ("to", "/account")]).await;
    assert!(sent.status == 200 && sent.cookies.is_empty(), "{}", sent.text);
    let link = server.post.next().await.path();
    let (path, onward) = link.split_once('?').unwrap();
    assert_eq!(onward, "to=/account");
    // A mail program looks at it, more than once.
    for _ in 0..3 {
        let looked = server.browser().get(&link).await;
        assert!(looked.status == 200 && looked.cookies.is_empty() && looked.text.contains(path), "{}", looked.text);
    }
    let signed_in = phone.post(path, &[("to", "/account")]).await;
    assert_eq!((signed_in.status, signed_in.to.as_deref()), (303, Some("/account")));
    let [cookie] = signed_in.cookies.as_slice() else { panic!("{:?}", signed_in.cookies) };
    let (pair, flags) = cookie.split_once("; ").unwrap();
    assert_eq!(flags, "Path=/; Max-Age=7776000; HttpOnly; SameSite=Lax; Secure");
    assert_eq!(pair.split_once('=').map(|(name, value)| (name, value.len())), Some(("__Host-sayso_session", 64)));
    assert!(phone.get("/account").await.text.contains("Ilda"));
    let mut other = server.browser();
    let looked = other.get(path).await;
    assert!(looked.status == 404 && looked.text.contains("does not hold"), "told before anyone taps: {}", looked.text);
    let again = other.post(path, &[("to", "/")]).await;
    let unknown = other.post(&format!("/sign-in/link/{}", "0".repeat(64)), &[]).await;
    assert_eq!((again.status, &again), (404, &unknown), "used and unknown are one");
    assert!(other.token().is_none());
}

#[tokio::test(flavor = "multi_thread")]
async fn nothing_tells_whether_anybody_has_an_address() {
    let mut server = Server::new().await;
    with_address(&mut server).await;
    let nobody = "nobody@home.example";
    let (mut one, mut other) = (server.browser(), server.browser());
    other.from = "192.0.2.2".into();
    for _ in 0..5 {
        let known = one.post("/sign-in/link", &[("email", ILDA), ("to", "/")]).await;
        let mut unknown = other.post("/sign-in/link", &[("email", nobody), ("to", "/")]).await;
        // Each reads the address that was typed, and the way to another.
        assert!(known.text.contains(ILDA) && known.text.contains("data-test=\"another-address\""), "{}", known.text);
        assert!(unknown.text.contains(nobody), "{}", unknown.text);
        unknown.text = unknown.text.replace(nobody, ILDA);
        assert_eq!((known.status, &known), (200, &unknown));
    }
    let known = one.post("/sign-in/link", &[("email", ILDA), ("to", "/")]).await;
    let unknown = other.post("/sign-in/link", &[("email", nobody), ("to", "/")]).await;
    assert_eq!((known.status, known.retry_after.as_deref(), &known), (429, Some("900"), &unknown));
    for _ in 0..5 {
        assert_eq!(server.post.next().await.to, ILDA);
    }
    assert!(server.post.is_empty(), "nobody else has mail");
    let none = one.post("/sign-in/link", &[("email", "no address"), ("to", "/")]).await;
    assert!(none.status == 422 && none.text.contains("no address"), "what was typed stays: {}", none.text);
    let more = one.post("/sign-in/link", &[("email", ILDA), ("account", "1")]).await;
    assert_eq!(more.status, 422, "unknown fields are refused");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_recovery_code_signs_in_once_and_guessing_ends() {
    let server = Server::new().await;
    let mut keeper = server.keeper().await;
    let page = keeper.post("/account/codes", &[]).await;
    let codes: Vec<String> =
        page.text.split("class=\"code\">").skip(1).map(|rest| rest.split('<').next().unwrap().to_owned()).collect();
    assert_eq!(codes.len(), 8);
    let mut phone = server.browser();
    // As it is typed from paper.
    let typed = codes[0].replace('-', " ").to_uppercase();
    let signed_in = phone.post("/sign-in/code", &[("code", &typed), ("to", "/account")]).await;
    assert_eq!((signed_in.status, signed_in.to.as_deref()), (303, Some("/account")));
    assert!(phone.get("/account").await.text.contains("7 are left"));
    let mut other = server.browser();
    let used = other.post("/sign-in/code", &[("code", &codes[0]), ("to", "/")]).await;
    let wrong = other.post("/sign-in/code", &[("code", "0000-0000"), ("to", "/")]).await;
    assert_eq!((used.status, &used), (422, &wrong), "used and unknown are one");
    assert!(!used.text.contains(&codes[0]), "it is not shown again");
    let most = server.host.people.lifetimes().most_from_one;
    let mut tries: u32 = 3;
    let last = loop {
        let answer = other.post("/sign-in/code", &[("code", "0000-0000"), ("to", "/")]).await;
        tries += 1;
        if answer.status != 422 || tries > most + 10 {
            break answer;
        }
    };
    assert_eq!((last.status, tries), (429, most + 1), "so many in a quarter of an hour");
    let held = other.post("/sign-in/code", &[("code", &codes[1]), ("to", "/")]).await;
    assert_eq!(held.status, 429, "a right one too");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_passkey_signs_in_and_a_challenge_is_answered_once() {
    let server = Server::new().await;
    let mut keeper = server.keeper().await;
    let mut key = Key::made(&mut keeper, "").await;
    assert!(keeper.get("/account").await.text.contains("An iPhone"), "named after the device");
    let mut phone = server.browser();
    let answer = key.answer(&mut phone, "/account").await;
    let done = phone.json("/sign-in/passkey/done", &answer).await;
    assert_eq!((done.status, done.json()), (200, json!({ "to": "/account" })));
    assert!(done.cookies[0].ends_with("; HttpOnly; SameSite=Lax; Secure"), "{:?}", done.cookies);
    assert_eq!(phone.get("/account").await.status, 200);
    let again = server.browser().json("/sign-in/passkey/done", &answer).await;
    assert_eq!((again.status, again.json()["kind"].clone()), (403, json!("sign-in-passkey-unknown")));
    assert!(again.cookies.is_empty());
    // An answer to another challenge, and one by a key nobody has.
    let mut other = server.browser();
    let (first, mut second) = (key.answer(&mut other, "/").await, key.answer(&mut other, "/").await);
    second["ceremony"] = first["ceremony"].clone();
    assert_eq!(other.json("/sign-in/passkey/done", &second).await.json()["kind"], "sign-in-passkey-unknown");
    let mut stranger = key.answer(&mut other, "/").await;
    stranger["answer"]["rawId"] = json!("AAAA");
    assert_eq!(other.json("/sign-in/passkey/done", &stranger).await.json()["kind"], "sign-in-passkey-unknown");
    let broken = other.json("/sign-in/passkey/done", &json!({ "ceremony": 1 })).await;
    assert_eq!((broken.status, broken.json()["kind"].clone()), (400, json!("errors-request-broken")));
    let elsewhere = key.signs_in(&mut other, "//evil.example").await;
    assert_eq!(elsewhere.json(), json!({ "to": "/" }), "own pages only");
    let mut guess = server.browser();
    guess.from = "192.0.2.9".into();
    for _ in 0..server.host.people.lifetimes().most_from_one {
        assert_eq!(guess.json("/sign-in/passkey", &json!({})).await.status, 200);
    }
    assert_eq!(guess.json("/sign-in/passkey", &json!({})).await.status, 429);
}

#[tokio::test(flavor = "multi_thread")]
async fn signing_in_ends_the_session_of_before_and_signing_out_this_one() {
    let server = Server::new().await;
    let mut keeper = server.keeper().await;
    let mut key = Key::made(&mut keeper, "my phone").await;
    let before = keeper.clone();
    assert_eq!(keeper.get("/sign-in?to=/account").await.to.as_deref(), Some("/account"), "is signed in already");
    let again = keeper.get("/sign-in?again=yes&to=/account").await;
    assert!(again.status == 200 && !again.text.contains("forgotten.js"), "nothing kept here is cleared");
    assert_eq!(key.signs_in(&mut keeper, "/account").await.status, 200);
    assert_eq!(before.clone().get("/account").await.to.as_deref(), Some("/sign-in?to=/account"), "it has ended");
    assert_eq!(keeper.get("/account").await.status, 200);
    let held = keeper.clone();
    let out = keeper.post("/sign-out", &[]).await;
    assert_eq!((out.status, out.to.as_deref()), (303, Some("/sign-in")));
    assert!(keeper.token().is_none() && out.cookies[0].contains("Max-Age=0"), "{:?}", out.cookies);
    assert_eq!(held.clone().get("/account").await.status, 303, "its token is worth nothing");
    assert_eq!(server.browser().get("/pair").await.to.as_deref(), Some("/sign-in"));
    let page = server.browser().get("/sign-in?to=//evil.example").await;
    assert!(page.text.contains(r#"name="to" value="/""#) && !page.text.contains("evil"));
    assert!(page.text.contains("forgotten.js"), "what this device kept is cleared");
}

#[tokio::test(flavor = "multi_thread")]
async fn a_write_from_another_site_does_nothing() {
    let server = Server::new().await;
    let mut keeper = server.keeper().await;
    for site in ["cross-site", "same-site"] {
        keeper.site = site;
        for path in ["/sign-out", "/account/session/others", "/account/erase", "/sign-in/link", "/account/codes"] {
            assert_eq!(keeper.post(path, &[]).await.status, 403, "{path}");
        }
        assert_eq!(keeper.json("/account/passkey", &json!({})).await.status, 403);
    }
    keeper.site = "same-origin";
    assert_eq!(keeper.get("/account").await.status, 200);
}

static LATER: AtomicI64 = AtomicI64::new(0);

fn clock() -> Moment {
    machine_clock().plus_seconds(LATER.load(Ordering::Relaxed) as f64)
}

#[tokio::test(flavor = "multi_thread")]
async fn what_is_too_old_does_not_hold() {
    let mut server = Server::with(Some(clock)).await;
    let ilda = with_address(&mut server).await;
    let mut key = Key::made(&mut ilda.clone(), "").await;
    let mut phone = server.browser();
    phone.post("/sign-in/link", &[("email", ILDA), ("to", "/")]).await;
    let link = server.post.next().await.path();
    let answer = key.answer(&mut phone, "/").await;
    LATER.store(601, Ordering::Relaxed);
    assert_eq!(phone.post(&link, &[]).await.status, 404);
    assert_eq!(phone.json("/sign-in/passkey/done", &answer).await.status, 403);
    // A quarter of an hour after signing in.
    LATER.store(901, Ordering::Relaxed);
    let again = Some("/sign-in?again=yes&to=/account");
    for (path, fields) in [
        ("/account/codes", &[][..]),
        ("/account/email", &[("email", "new@home.example")]),
        ("/account/email/forget", &[]),
    ] {
        assert_eq!(ilda.clone().post(path, fields).await.to.as_deref(), again, "{path}");
    }
    let asked = ilda.clone().json("/account/passkey", &json!({})).await;
    assert_eq!((asked.status, asked.json()["kind"].clone()), (403, json!("host-not-fresh")));
    let erase = ilda.clone().get("/account/erase").await;
    assert_eq!(erase.to.as_deref(), Some("/sign-in?again=yes&to=/account/erase"));
    assert_eq!(ilda.clone().post("/account/erase", &[]).await.to, erase.to);
    let mut fresh = ilda.clone();
    assert_eq!(key.signs_in(&mut fresh, "/account").await.status, 200);
    assert_eq!(fresh.post("/account/codes", &[]).await.status, 200);
    // Two weeks unused.
    LATER.store(901 + 14 * 86_400 + 60, Ordering::Relaxed);
    assert_eq!(fresh.get("/account").await.to.as_deref(), Some("/sign-in?to=/account"));
}
