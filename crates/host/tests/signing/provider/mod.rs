//! Signing in by an identity provider: what holds, and all that does not.

mod served;

use crate::browser::{Answer, Browser};
use crate::key::Key;
use crate::server::Server;
use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use sayso_people::Role;
use serde_json::{Value, json};
use served::{Asked, CLIENT, Claims, Provider, SECRET};

const ERRAND: &str = "__Host-sayso_errand";

/// Sets out, and what the browser was led to ask for.
async fn sets_out(browser: &mut Browser, path: &str) -> Asked {
    let led = browser.get(path).await;
    assert_eq!(led.status, 303, "{}", led.text);
    assert!(led.cookies[0].ends_with("; HttpOnly; SameSite=Lax; Secure"), "{:?}", led.cookies);
    Asked::of(led.to.as_deref().unwrap())
}

/// Comes back from the provider's page.
async fn comes_back(browser: &mut Browser, path: &str) -> Answer {
    browser.site = "cross-site";
    let answer = browser.get(path).await;
    browser.site = "same-origin";
    answer
}

/// Someone who joined and linked the account, and signed in nowhere else.
async fn linked(server: &Server, provider: &Provider, subject: &str) -> Browser {
    let keeper = server.keeper().await;
    let (_, link) = server.home_link(&keeper).await;
    let mut ilda = server.joined(&link, "Ilda").await;
    let asked = sets_out(&mut ilda, "/account/provider?to=/account").await;
    let done = comes_back(&mut ilda, &provider.back(&provider.claims(subject, &asked), &asked)).await;
    assert_eq!((done.status, done.to.as_deref()), (303, Some("/account")), "{}", done.text);
    ilda
}

/// A new browser comes back with what the provider says; `twist` decides what that is.
async fn tries(server: &Server, provider: &Provider, twist: impl FnOnce(&mut Claims)) -> (Browser, Answer) {
    let mut phone = server.browser();
    let asked = sets_out(&mut phone, "/sign-in/provider?to=/account").await;
    let mut claims = provider.claims("ilda-7", &asked);
    twist(&mut claims);
    let answer = comes_back(&mut phone, &provider.back(&claims, &asked)).await;
    (phone, answer)
}

fn refused(browser: &Browser, answer: &Answer) {
    assert_eq!(answer.status, 403, "{}", answer.text);
    assert!(answer.text.contains("did not sign you in") && browser.token().is_none(), "{}", answer.text);
    assert!(answer.text.contains(r#"data-test="send-link""#), "the other ways are beside it");
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_linked_the_account_signs_in_by_it() {
    let provider = Provider::open().await;
    let server = Server::by(provider.config()).await;
    assert_eq!(provider.asked(), 0, "nobody asks it before someone chooses it");
    let mut ilda = linked(&server, &provider, "ilda-7").await;
    let page = ilda.get("/account").await.text;
    assert!(page.contains(r#"data-test="linked""#) && !page.contains("no way back"), "{page}");
    let mut phone = server.browser();
    assert!(phone.get("/sign-in?to=/account").await.text.contains("Sign in with the club"));
    let asked = sets_out(&mut phone, "/sign-in/provider?to=/account").await;
    let sent = |name: &str| asked.all.get(name).map(String::as_str);
    assert_eq!((sent("response_type"), sent("client_id")), (Some("code"), Some(CLIENT)));
    assert_eq!(
        (sent("code_challenge_method"), sent("scope")),
        (Some("S256"), Some("openid")),
        "no name and no address"
    );
    assert_eq!(sent("redirect_uri"), Some("https://sayso.example/sign-in/provider/back"));
    assert_eq!((sent("max_age"), sent("prompt")), (Some("900"), None));
    let done = comes_back(&mut phone, &provider.back(&provider.claims("ilda-7", &asked), &asked)).await;
    assert_eq!((done.status, done.to.as_deref()), (303, Some("/account")), "{}", done.text);
    assert!(!phone.cookies.contains_key(ERRAND), "the errand is over");
    assert!(phone.get("/account").await.text.contains("Ilda"));
    assert_eq!(phone.post("/account/codes", &[]).await.status, 200, "it was proved just now");
    // Keys change, and are fetched anew.
    provider.changes_keys();
    let (mut other, done) = tries(&server, &provider, |_| ()).await;
    assert_eq!(done.status, 303, "{}", done.text);
    assert_eq!(other.get("/account").await.status, 200);
    // Once it is forgotten nothing leads in.
    assert_eq!(other.post("/account/provider/forget", &[]).await.status, 303);
    let (phone, gone) = tries(&server, &provider, |_| ()).await;
    assert!(gone.status == 403 && gone.text.contains("No account here is linked") && phone.token().is_none());
}

#[tokio::test(flavor = "multi_thread")]
async fn what_does_not_hold_is_refused() {
    let provider = Provider::open().await;
    let server = Server::by(provider.config()).await;
    linked(&server, &provider, "ilda-7").await;
    let set = |name: &'static str, value: Value| move |claims: &mut Claims| drop(claims.insert(name.into(), value));
    let past = sayso_web::state::machine_clock().millis() / 1_000 - 10;
    for (name, value) in [
        ("nonce", json!("0001-0203")),
        ("nonce", Value::Null),
        ("aud", json!("another server")),
        ("aud", json!([CLIENT, "another server"])),
        ("exp", json!(past)),
        ("iss", json!("http://127.0.0.1:1/club")),
        ("sub", json!("x".repeat(256))),
        ("sub", json!("")),
    ] {
        let told = format!("{name} {value}");
        let (phone, answer) = tries(&server, &provider, set(name, value)).await;
        assert_eq!(answer.status, 403, "{told}");
        refused(&phone, &answer);
    }
    // Signed by another key, by nobody, by the secret that both know, or changed afterwards.
    let stranger = Provider::open().await;
    let head = |alg: &str| json!({ "alg": alg, "kid": "one" });
    for way in ["other key", "none", "shared secret", "changed"] {
        let mut phone = server.browser();
        let asked = sets_out(&mut phone, "/sign-in/provider?to=/").await;
        let claims = provider.claims("ilda-7", &asked);
        let part = |value: Value| URL_SAFE_NO_PAD.encode(value.to_string());
        let body = part(Value::Object(claims.clone()));
        let token = match way {
            "other key" => stranger.signed(&head("ES256"), &claims),
            "none" => format!("{}.{body}.", part(head("none"))),
            "shared secret" => {
                let said = format!("{}.{body}", part(head("HS256")));
                let key = ring::hmac::Key::new(ring::hmac::HMAC_SHA256, SECRET.as_bytes());
                format!("{said}.{}", URL_SAFE_NO_PAD.encode(ring::hmac::sign(&key, said.as_bytes()).as_ref()))
            }
            _ => {
                let right = provider.signed(&head("ES256"), &provider.claims("somebody", &asked));
                let mut parts = right.split('.');
                format!("{}.{body}.{}", parts.next().unwrap(), parts.nth(1).unwrap())
            }
        };
        let answer = comes_back(&mut phone, &provider.back_with(token, &asked)).await;
        refused(&phone, &answer);
    }
    let (mut phone, done) = tries(&server, &provider, |_| ()).await;
    assert!(done.status == 303 && phone.get("/account").await.status == 200, "and what holds is not");
}

#[tokio::test(flavor = "multi_thread")]
async fn the_way_back_is_this_browsers_and_once() {
    let provider = Provider::open().await;
    let server = Server::by(provider.config()).await;
    linked(&server, &provider, "ilda-7").await;
    let lost = |browser: &Browser, answer: &Answer| {
        assert!(answer.status == 403 && answer.text.contains("cannot be finished"), "{}", answer.text);
        assert!(browser.token().is_none());
    };
    // Another state, and none.
    let mut phone = server.browser();
    let asked = sets_out(&mut phone, "/sign-in/provider?to=/").await;
    let path = provider.back(&provider.claims("ilda-7", &asked), &asked);
    let mut other = phone.clone();
    let wrong = comes_back(&mut other, &path.replace(&asked.state, "0000-1111")).await;
    lost(&other, &wrong);
    let none = comes_back(&mut phone.clone(), "/sign-in/provider/back").await;
    lost(&phone, &none);
    // Another browser, that never set out or set out by itself.
    let mut victim = server.browser();
    lost(&victim, &comes_back(&mut victim.clone(), &path).await);
    sets_out(&mut victim, "/sign-in/provider?to=/").await;
    lost(&victim, &comes_back(&mut victim.clone(), &path).await);
    // Who set out comes back, once: the code, the state and the errand are used up.
    let before = phone.clone();
    assert_eq!(comes_back(&mut phone, &path).await.status, 303);
    let mut again = before.clone();
    let answer = comes_back(&mut again, &path).await;
    lost(&again, &answer);
    // A code that was used, with an errand of its own.
    let mut thief = server.browser();
    let own = sets_out(&mut thief, "/sign-in/provider?to=/").await;
    let answer = comes_back(&mut thief, &path.replace(&asked.state, &own.state)).await;
    refused(&thief, &answer);
    // A code that was not used yet, taken from another's address: PKCE.
    let mut other = server.browser();
    let theirs = sets_out(&mut other, "/sign-in/provider?to=/").await;
    let stolen = provider.back(&provider.claims("ilda-7", &theirs), &theirs);
    let own = sets_out(&mut thief, "/sign-in/provider?to=/").await;
    let answer = comes_back(&mut thief, &stolen.replace(&theirs.state, &own.state)).await;
    refused(&thief, &answer);
    // The person said no there, and someone else sends the browser back.
    for told in ["error=access_denied", "code=x&iss=https%3A%2F%2Felsewhere.example"] {
        let mut phone = server.browser();
        let asked = sets_out(&mut phone, "/sign-in/provider?to=/").await;
        let answer = comes_back(&mut phone, &format!("/sign-in/provider/back?state={}&{told}", asked.state)).await;
        refused(&phone, &answer);
    }
    // Nobody is sent there by another site's page.
    let mut led = server.browser();
    led.site = "cross-site";
    assert_eq!(led.get("/sign-in/provider?to=/").await.status, 403);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_address_links_nobody_and_one_of_theirs_is_one_of_ours() {
    let provider = Provider::open().await;
    let mut server = Server::by(provider.config()).await;
    let mut ilda = linked(&server, &provider, "ilda-7").await;
    ilda.post("/account/email", &[("email", "ilda@home.example")]).await;
    let proof = server.post.next().await.path();
    assert_eq!(ilda.post(&proof, &[]).await.status, 303);
    // Someone else there says they have her address.
    let (mut phone, answer) =
        tries(&server, &provider, |claims| drop(claims.insert("sub".into(), json!("robin-8")))).await;
    assert!(answer.status == 403 && answer.text.contains("No account here is linked"), "{}", answer.text);
    assert!(phone.token().is_none() && phone.get("/account").await.to.is_some());
    // Another account cannot take hers, nor she a second one.
    let who = server.host.people.who(server.session(&ilda).await.account).await.unwrap();
    let home = who.memberships[0].part.scope().home().unwrap();
    let mut robin = server.joined(&server.link_by(&ilda, home, Role::Member).await, "Robin").await;
    for (browser, subject) in [(&mut robin, "ilda-7"), (&mut ilda, "robin-8")] {
        let asked = sets_out(browser, "/account/provider?to=/account").await;
        assert_eq!(asked.all.get("prompt").map(String::as_str), Some("login"));
        let answer = comes_back(browser, &provider.back(&provider.claims(subject, &asked), &asked)).await;
        assert!(answer.status == 409 && answer.text.contains("Nothing was linked"), "{}", answer.text);
    }
    // Signed out meanwhile, or somebody else by now: the link is not theirs.
    let asked = sets_out(&mut robin, "/account/provider?to=/account").await;
    let path = provider.back(&provider.claims("robin-9", &asked), &asked);
    let mut swapped = ilda.clone();
    swapped.cookies.insert(ERRAND.into(), robin.cookies[ERRAND].clone());
    assert!(comes_back(&mut swapped, &path).await.to.unwrap().starts_with("/sign-in"));
    let (phone, answer) = tries(&server, &provider, |claims| drop(claims.insert("sub".into(), json!("robin-9")))).await;
    assert!(answer.status == 403 && phone.token().is_none());
    // Erased with the account.
    assert_eq!(
        server.browser().get("/account/provider?to=/").await.to.as_deref(),
        Some("/sign-in?to=/account/provider")
    );
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sign_in_there_of_hours_ago_is_not_fresh_here() {
    let provider = Provider::open().await;
    let server = Server::by(provider.config()).await;
    linked(&server, &provider, "ilda-7").await;
    let hours_ago = sayso_web::state::machine_clock().millis() / 1_000 - 7_200;
    for said in [json!(hours_ago), Value::Null] {
        let (mut phone, done) = tries(&server, &provider, |claims| {
            if said.is_null() {
                claims.remove("auth_time");
            } else {
                claims.insert("auth_time".into(), said.clone());
            }
        })
        .await;
        assert_eq!(done.status, 303);
        assert_eq!(phone.get("/account").await.status, 200);
        let led = phone.post("/account/codes", &[]).await;
        assert_eq!(led.to.as_deref(), Some("/sign-in?again=yes&to=/account"));
        // Asked once more, and still not proved: the other ways are offered.
        let asked = sets_out(&mut phone, "/sign-in/provider?to=/account").await;
        let mut claims = provider.claims("ilda-7", &asked);
        claims.insert("auth_time".into(), json!(hours_ago));
        let told = comes_back(&mut phone, &provider.back(&claims, &asked)).await;
        assert!(told.status == 403 && told.text.contains("did not say that you proved"), "{}", told.text);
        assert_eq!(phone.get("/account/provider?to=/").await.to.as_deref(), Some("/sign-in?again=yes&to=/account"));
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_provider_that_is_away_hinders_no_other_way() {
    let provider = Provider::open().await;
    let mut server = Server::by(provider.config()).await;
    let mut keeper = server.keeper().await;
    let mut key = Key::made(&mut keeper, "").await;
    keeper.post("/account/email", &[("email", "wren@home.example")]).await;
    let proof = server.post.next().await.path();
    assert_eq!(keeper.post(&proof, &[]).await.status, 303);
    let codes = keeper.post("/account/codes", &[]).await.text;
    let code = codes.split("class=\"code\">").nth(1).unwrap().split('<').next().unwrap().to_owned();
    let mut on_the_way = server.browser();
    let asked = sets_out(&mut on_the_way, "/sign-in/provider?to=/").await;
    let path = provider.back(&provider.claims("wren-1", &asked), &asked);
    provider.goes();
    let told = comes_back(&mut on_the_way, &path).await;
    assert!(told.status == 503 && told.text.contains("does not answer just now"), "{}", told.text);
    // Another process, that never reached it.
    let other = Server::by(provider.config()).await;
    let told = other.browser().get("/sign-in/provider?to=/").await;
    assert!(told.status == 503 && told.text.contains(r#"data-test="send-link""#), "{}", told.text);
    assert_eq!(key.signs_in(&mut server.browser(), "/").await.status, 200);
    let mut phone = server.browser();
    assert_eq!(phone.post("/sign-in/code", &[("code", &code), ("to", "/account")]).await.status, 303);
    let mut mailed = server.browser();
    assert_eq!(mailed.post("/sign-in/link", &[("email", "wren@home.example"), ("to", "/")]).await.status, 200);
    let link = server.post.next().await.path();
    assert_eq!(mailed.post(&link, &[]).await.status, 303);
}

#[tokio::test(flavor = "multi_thread")]
async fn without_a_provider_there_is_nothing_of_it() {
    let server = Server::new().await;
    let mut keeper = server.keeper().await;
    assert!(!keeper.get("/account").await.text.contains("provider"));
    assert!(!server.browser().get("/sign-in").await.text.contains("provider"));
    for path in ["/sign-in/provider?to=/", "/sign-in/provider/back?code=x&state=y", "/account/provider?to=/"] {
        assert_eq!(keeper.get(path).await.status, 404, "{path}");
    }
}
