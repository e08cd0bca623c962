//! The account page.

use crate::key::Key;
use crate::server::Server;
use crate::sign_in::with_address;
use sayso_people::Role;

fn between<'a>(text: &'a str, begin: &str, end: &str) -> Vec<&'a str> {
    text.split(begin).skip(1).map(|rest| rest.split(end).next().unwrap()).collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn name_and_language_are_ones_own() {
    let server = Server::new().await;
    let mut wren = server.keeper().await;
    let page = wren.get("/account").await.text;
    assert!(page.contains("no way back in yet") && page.contains("Keeper of the server"), "{page}");
    assert_eq!(wren.post("/account", &[("name", "Ilda"), ("language", "de")]).await.status, 303);
    let page = wren.get("/account").await.text;
    assert!(page.contains("Dein Konto") && page.contains(r#"value="Ilda""#), "{page}");
    let wrong = wren.post("/account", &[("name", ""), ("language", "de")]).await;
    assert_eq!(wrong.status, 422);
    assert_eq!(wren.post("/account", &[("name", "x"), ("language", "xx")]).await.status, 422);
    assert_eq!(wren.post("/account", &[("name", "x"), ("id", "1")]).await.status, 422);
    assert!(wren.get("/account").await.text.contains(r#"value="Ilda""#));
}

#[tokio::test(flavor = "multi_thread")]
async fn passkeys_are_listed_and_forgotten() {
    let server = Server::new().await;
    let mut wren = server.keeper().await;
    let mut key = Key::made(&mut wren, "my phone").await;
    let page = wren.get("/account").await.text;
    assert!(page.contains("my phone") && page.contains("Not used yet") && !page.contains("no way back"), "{page}");
    assert_eq!(key.signs_in(&mut server.browser(), "/").await.status, 200);
    let page = wren.get("/account").await.text;
    assert!(!page.contains("Not used yet"), "{page}");
    let credential = between(&page, r#"name="credential" value=""#, "\"")[0].to_owned();
    let forget = wren.post("/account/passkey/forget", &[("credential", &credential)]).await;
    assert_eq!(forget.to.as_deref(), Some("/account"));
    assert!(!wren.get("/account").await.text.contains("my phone"));
    assert_eq!(key.signs_in(&mut server.browser(), "/").await.status, 403);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_passkey_without_a_name_is_told_by_its_device_in_the_language_of_whoever_reads() {
    let server = Server::new().await;
    let mut wren = server.keeper().await;
    let mut key = Key::made(&mut wren, "  ").await;
    let page = wren.get("/account").await.text;
    assert!(page.contains("<strong>An iPhone</strong>"), "{page}");
    wren.post("/account", &[("name", "Wren"), ("language", "de")]).await;
    let page = wren.get("/account").await.text;
    assert!(page.contains("<strong>Ein iPhone</strong>") && !page.contains("An iPhone"), "{page}");
    assert_eq!(key.signs_in(&mut server.browser(), "/").await.status, 200);
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_shows_that_it_is_them_is_asked_for_no_address() {
    const AGAIN: &str = "/sign-in?again=yes&to=/account";
    let mut server = Server::new().await;
    let mut ilda = with_address(&mut server).await;
    let page = ilda.get(AGAIN).await.text;
    assert!(page.contains("Send a link to ilda@home.example") && !page.contains(r#"type="email""#), "{page}");
    let sent = ilda.post("/sign-in/link", &[("email", "ilda@home.example"), ("to", "/account")]).await;
    assert!(sent.status == 200 && !sent.text.contains("another-address"), "{}", sent.text);
    assert_eq!(server.post.next().await.to, "ilda@home.example");
    // Who has another way and no address is offered none.
    let other = Server::new().await;
    let mut wren = other.keeper().await;
    Key::made(&mut wren, "my phone").await;
    let page = wren.get(AGAIN).await.text;
    assert!(page.contains("data-test=\"passkey\"") && !page.contains("/sign-in/link"), "{page}");
    // Nobody is known yet: the address is asked for.
    assert!(other.browser().get("/sign-in").await.text.contains(r#"type="email""#));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_address_is_proved_by_its_own_account_alone() {
    let mut server = Server::new().await;
    let mut ilda = with_address(&mut server).await;
    assert!(ilda.get("/account").await.text.contains("ilda@home.example"));
    ilda.post("/account", &[("name", "Ilda"), ("language", "de")]).await;
    assert_eq!(ilda.post("/account/email", &[("email", "other@home.example")]).await.status, 200);
    let letter = server.post.next().await;
    assert!(!letter.head.contains("List-Unsubscribe"), "whoever asked for it does not stop it: {}", letter.head);
    assert!(letter.text.contains("Minuten") && letter.text.contains("tu nichts"), "{}", letter.text);
    let link = letter.path();
    let out = server.browser().get(&link).await;
    assert_eq!((out.status, out.to.as_deref()), (401, None), "the secret is not handed on in an address");
    assert_eq!(server.browser().post(&link, &[]).await.status, 401);
    let home = server.session(&ilda).await;
    let who = server.host.people.who(home.account).await.unwrap();
    let home = who.memberships[0].part.scope().home().unwrap();
    let mut robin = server.joined(&server.link_by(&ilda, home, Role::Member).await, "Robin").await;
    assert_eq!(robin.post(&link, &[]).await.status, 404, "another account");
    assert_eq!(ilda.get(&link).await.status, 200);
    assert!(ilda.get("/account").await.text.contains("ilda@home.example"), "looking does nothing");
    assert_eq!(ilda.post(&link, &[]).await.to.as_deref(), Some("/account"));
    assert_eq!(ilda.post(&link, &[]).await.status, 404, "once");
    assert!(ilda.get("/account").await.text.contains("other@home.example"));
    // Whoever reads the mail of an address may be told that another account has it.
    robin.post("/account/email", &[("email", "other@home.example")]).await;
    let link = server.post.next().await.path();
    assert_eq!(robin.post(&link, &[]).await.status, 409);
    assert_eq!(ilda.post("/account/email/forget", &[]).await.status, 303);
    assert!(!ilda.get("/account").await.text.contains("other@home.example"));
    let none = ilda.post("/account/email", &[("email", "x")]).await;
    assert_eq!(none.status, 422);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_letter_that_could_not_be_sent_to_ones_own_address_is_told() {
    let server = Server::without_post().await;
    let mut wren = server.keeper().await;
    let told = wren.post("/account/email", &[("email", "wren@home.example")]).await;
    assert!(told.status == 503 && told.text.contains(r#"data-test="not-sent""#), "{}", told.text);
    // Whoever only asks for a link to sign in is not told whether one was to go.
    let asked = server.browser().post("/sign-in/link", &[("email", "wren@home.example")]).await;
    assert_eq!(asked.status, 200, "{}", asked.text);
}

#[tokio::test(flavor = "multi_thread")]
async fn sessions_are_listed_and_ended() {
    let server = Server::new().await;
    let mut wren = server.keeper().await;
    let mut key = Key::made(&mut wren, "").await;
    let mut others = [server.browser(), server.browser(), server.browser()];
    for other in &mut others {
        assert_eq!(key.signs_in(other, "/").await.status, 200);
    }
    let page = wren.get("/account").await.text;
    assert_eq!(page.matches(r#"data-test="session""#).count(), 4);
    let ids: Vec<String> = between(&page, r#"name="id" value=""#, "\"").into_iter().map(str::to_owned).collect();
    let first = ids.iter().find(|id| page.contains(&format!(r#"value="{id}">End it"#))).unwrap();
    assert_eq!(wren.post("/account/session/end", &[("id", first)]).await.status, 303);
    let mut hold = 0;
    for other in &mut others {
        hold += usize::from(other.get("/account").await.status == 200);
    }
    assert_eq!(hold, 2, "one was ended");
    // Ended meanwhile is ended; what is no session, or none of theirs, is told in words.
    assert_eq!(wren.post("/account/session/end", &[("id", first)]).await.status, 303);
    for junk in ["x", "", "0191e2a0-0000-7000-8000-000000000000"] {
        for path in ["/account/session/end", "/account/role/leave"] {
            let told = wren.post(path, &[("id", junk)]).await;
            assert!((403..=404).contains(&told.status), "{path} {junk}: {}", told.status);
            assert!(!told.text.contains("UUID") && !told.text.contains("deserialize"), "{}", told.text);
        }
        let told = wren.post("/account/session/end", &[("id", junk)]).await;
        assert!(told.status == 404 && told.text.contains("no such session"), "{}", told.text);
    }
    let whole = wren.post("/account", &[("name", &"x".repeat(3_000_000))]).await;
    assert_eq!(whole.status, 413, "{}", whole.text);
    assert_eq!(wren.post("/account/session/others", &[]).await.status, 303);
    for other in &mut others {
        assert_eq!(other.get("/account").await.status, 303);
    }
    assert_eq!(wren.get("/account").await.status, 200);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_role_is_left_and_an_account_erased_but_not_the_last_keepers() {
    let server = Server::new().await;
    let keeper = server.keeper().await;
    let (home, link) = server.home_link(&keeper).await;
    let mut ilda = server.joined(&link, "Ilda").await;
    assert_eq!(ilda.post("/start", &crate::join::START).await.status, 303);
    let role = |page: &str| {
        let roles = page.split(r#"data-test="role""#).nth(1).unwrap();
        between(roles, r#"name="id" value=""#, "\"")[0].to_owned()
    };
    let page = ilda.get("/account").await.text;
    let last = ilda.post("/account/role/leave", &[("id", &role(&page))]).await;
    assert!(last.status == 409 && last.text.contains("last keeper"), "{}", last.text);
    // Before the tap it says what stands in the way, and the ways out.
    let asked = ilda.get("/account/erase").await.text;
    for way in ["/sharing/invite?home=", "/sharing/leave?home="] {
        assert!(asked.contains(&format!("{way}{home}")), "{asked}");
    }
    assert!(!asked.contains(r#"data-test="erase""#), "{asked}");
    assert_eq!(ilda.post("/account/erase", &[]).await.status, 409);
    assert_eq!(ilda.get("/account").await.status, 200);
    let mut robin = server.joined(&server.link_by(&ilda, home, Role::Member).await, "Robin").await;
    let (hers, his) = (role(&ilda.get("/account").await.text), role(&robin.get("/account").await.text));
    assert_eq!(robin.post("/account/role/leave", &[("id", &hers)]).await.status, 403, "somebody else's");
    assert_eq!(robin.post("/account/role/leave", &[("id", &his)]).await.to.as_deref(), Some("/account"));
    assert!(robin.get("/account").await.text.contains("no role here"));
    let asked = robin.get("/account/erase").await.text;
    assert!(asked.contains("30 days") && asked.contains(r#"data-test="erase""#), "{asked}");
    let erased = robin.post("/account/erase", &[]).await;
    assert!(erased.status == 200 && robin.token().is_none(), "{}", erased.text);
    let account = server.session(&ilda).await.account;
    assert!(server.host.people.account(account).await.unwrap().is_some());
    assert_eq!(server.host.people.members(sayso_people::Scope::Home(home)).await.unwrap().len(), 1);
}
