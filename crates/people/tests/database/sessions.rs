//! Sessions hold as long as they should and end at once.

use crate::database::Database;
use crate::together::*;
use sayso_people::*;

const DAY: i64 = 86_400;

#[tokio::test(flavor = "multi_thread")]
async fn a_session_ends_unused_after_a_while_and_used_at_its_latest() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let holds = async |second| db.people.session(&keeper.token, at(second)).await.unwrap().is_some();
    let idle = db.people.lifetimes().idle_s as i64;
    assert!(holds(idle - 1).await, "which is a use");
    assert!(holds(2 * idle - 2).await);
    assert!(!holds(3 * idle - 2).await, "unused for as long as may be");
    let keeper = {
        let codes = db.people.new_recovery_codes(&keeper.session, at(0), &mut OsSecrets).await.unwrap();
        db.people.use_recovery_code(&codes[0], "192.0.2.9", "test", at(0), &mut OsSecrets).await.unwrap()
    };
    let latest = db.people.lifetimes().session_s as i64;
    for day in 1..latest / DAY {
        assert!(db.people.session(&keeper.1, at(day * DAY)).await.unwrap().is_some());
    }
    assert!(db.people.session(&keeper.1, at(latest)).await.unwrap().is_none());
}

#[tokio::test(flavor = "multi_thread")]
async fn ended_in_one_process_it_is_ended_in_the_other() {
    let db = Database::new().await;
    let (other, keeper) = (db.another().await, server_keeper(&db).await);
    let account = keeper.session.account;
    let codes = db.people.new_recovery_codes(&keeper.session, at(0), &mut OsSecrets).await.unwrap();
    let mut more = Vec::new();
    for code in &codes[..3] {
        more.push(other.use_recovery_code(code, "192.0.2.9", "a phone", at(1), &mut OsSecrets).await.unwrap());
    }
    assert_eq!(db.people.sessions(account, at(2)).await.unwrap().len(), 4);
    assert!(other.session(&more[0].1, at(2)).await.unwrap().is_some());
    assert!(db.people.end_session(account, more[0].0.id, at(2)).await.unwrap());
    assert!(other.session(&more[0].1, at(2)).await.unwrap().is_none());
    // Ended twice it is ended as before, and of what never was there is nothing to end.
    assert!(db.people.end_session(account, more[0].0.id, at(3)).await.unwrap());
    assert!(other.session(&more[0].1, at(3)).await.unwrap().is_none());
    assert!(!db.people.end_session(account, SessionId(uuid::Uuid::nil()), at(3)).await.unwrap());
    // Nobody ends a stranger's.
    let stranger = keeper_of(&db, &keeper, home(1)).await;
    assert!(!db.people.end_session(stranger.session.account, more[1].0.id, at(2)).await.unwrap());
    assert_eq!(db.people.end_other_sessions(&more[1].0, at(3)).await.unwrap(), 2);
    assert_eq!(other.sessions(account, at(3)).await.unwrap().len(), 1);
    assert!(other.session(&keeper.token, at(3)).await.unwrap().is_none());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_new_token_ends_the_old_one_and_only_one_of_many_gets_it() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let mut all = tokio::task::JoinSet::new();
    for n in 0..8 {
        let (people, token) = (if n % 2 == 0 { db.people.clone() } else { db.another().await }, keeper.token.clone());
        all.spawn(async move { people.renew(&token, at(5), &mut OsSecrets).await });
    }
    let mut new: Vec<_> = all.join_all().await.into_iter().filter_map(Result::ok).collect();
    assert_eq!(new.len(), 1);
    let (session, token) = new.remove(0);
    assert_eq!(session.id, keeper.session.id);
    assert!(db.people.session(&keeper.token, at(5)).await.unwrap().is_none());
    assert!(db.people.session(&token, at(5)).await.unwrap().is_some());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_change_of_roles_asks_for_a_new_token() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let keeper = keeper_of(&db, &server, home(1)).await;
    let fresh = db.people.session(&keeper.token, at(0)).await.unwrap().unwrap();
    assert!(!fresh.renew);
    let stories = Stories::with(&[home(1)]);
    let member = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let mora = joined(&db, &keeper, &stories, member, "Mora").await;
    assert!(!mora.session.renew);
    let leave = db.people.may(&keeper.session, Capability::ManagePeople, home(1), &stories, at(2)).await.unwrap();
    let hers = db.people.who(mora.session.account).await.unwrap().memberships[0].id;
    let more = Part::new(Scope::Home(home(1)), Role::Keeper, None, None).unwrap();
    db.people.change_membership(&leave, hers, &more, at(2), &mut OsSecrets).await.unwrap();
    assert!(db.people.session(&mora.token, at(3)).await.unwrap().unwrap().renew);
    let (renewed, _) = db.people.renew(&mora.token, at(3), &mut OsSecrets).await.unwrap();
    assert!(!renewed.renew);
}

#[tokio::test(flavor = "multi_thread")]
async fn what_needs_a_fresh_sign_in_is_refused_to_an_old_one() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let fresh = db.people.lifetimes().fresh_s as i64;
    assert!(db.people.may_on_server(&keeper.session, Capability::Host, at(fresh - 1)).await.is_ok());
    let told = is_denied(db.people.may_on_server(&keeper.session, Capability::Host, at(fresh)).await);
    assert_eq!(told, Denied::NotFresh(Capability::Host));
    assert!(db.people.may_on_server(&keeper.session, Capability::SeeServer, at(fresh)).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn how_one_signs_in_is_changed_only_by_a_fresh_sign_in() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let old = at(db.people.lifetimes().fresh_s as i64);
    let passkeys = Passkeys::new(&url::Url::parse("https://sayso.example").unwrap(), "Sayso").unwrap();
    let email = Email::new("keeper@example.org").unwrap();
    let (people, session) = (&db.people, &keeper.session);
    let stale = |told: Option<Error>| matches!(told, Some(Error::NotFresh));
    people.new_recovery_codes(session, at(0), &mut OsSecrets).await.unwrap();
    assert!(stale(people.new_recovery_codes(session, old, &mut OsSecrets).await.err()));
    assert!(stale(people.begin_passkey(&passkeys, session, old, &mut OsSecrets).await.err()));
    assert!(stale(people.forget_passkey(session, &[1], old).await.err()));
    assert!(stale(people.ask_proof(session, &email, "192.0.2.1", old, &mut OsSecrets).await.err()));
    assert!(stale(people.forget_email(session, old).await.err()));
}

#[tokio::test(flavor = "multi_thread")]
async fn the_first_way_in_waits_for_no_sign_in_that_nothing_could_make() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let old = db.people.lifetimes().fresh_s as i64;
    let passkeys = Passkeys::new(&url::Url::parse("https://sayso.example").unwrap(), "Sayso").unwrap();
    let email = Email::new("keeper@example.org").unwrap();
    let (people, session) = (&db.people, &keeper.session);
    let begun = people.begin_passkey(&passkeys, session, at(old), &mut OsSecrets).await;
    assert!(begun.is_ok(), "{:?}", begun.err());
    assert!(people.ask_proof(session, &email, "192.0.2.1", at(old), &mut OsSecrets).await.is_ok());
    let codes = people.new_recovery_codes(session, at(old), &mut OsSecrets).await.unwrap();
    // From now on there is something to show it by.
    let stale = |told: Option<Error>| matches!(told, Some(Error::NotFresh));
    assert!(stale(people.new_recovery_codes(session, at(old + 1), &mut OsSecrets).await.err()));
    assert!(stale(people.ask_proof(session, &email, "192.0.2.1", at(old + 1), &mut OsSecrets).await.err()));
    let again = people.use_recovery_code(&codes[0], "192.0.2.9", "test", at(old + 2), &mut OsSecrets).await.unwrap();
    assert!(people.new_recovery_codes(&again.0, at(old + 3), &mut OsSecrets).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_keeper_of_the_server_ends_all_sessions_of_an_account() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let ilda = keeper_of(&db, &server, home(1)).await;
    let host = db.people.may_on_server(&server.session, Capability::Host, at(0)).await.unwrap();
    assert!(db.people.end_all_sessions(&host, ilda.session.account, at(1)).await.is_err());
    let manage = db.people.may_on_server(&server.session, Capability::ManageServer, at(0)).await.unwrap();
    assert_eq!(db.people.end_all_sessions(&manage, ilda.session.account, at(1)).await.unwrap(), 1);
    assert!(db.people.session(&ilda.token, at(1)).await.unwrap().is_none());
}
