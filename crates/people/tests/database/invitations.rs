//! An invitation is taken once, in its time, by whoever holds its link.

use crate::database::Database;
use crate::together::*;
use sayso_people::db::Taker;
use sayso_people::*;

#[tokio::test(flavor = "multi_thread")]
async fn of_many_takers_at_once_in_two_processes_one_gets_it() {
    let (db, _, keeper, stories) = one_home().await;
    let leave = db.people.may(&keeper.session, Capability::ManagePeople, home(1), &stories, at(0)).await.unwrap();
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let (_, secret) = db.people.invite(&leave, &part, at(0), &mut OsSecrets).await.unwrap();
    let other = db.another().await;
    let mut all = tokio::task::JoinSet::new();
    for n in 0..10 {
        let (people, secret) = (if n % 2 == 0 { db.people.clone() } else { other.clone() }, secret.clone());
        all.spawn(async move { take(&people, &secret, &format!("Taker {n}"), at(1)).await });
    }
    let results = all.join_all().await;
    assert_eq!(results.iter().filter(|r| r.is_ok()).count(), 1);
    assert!(results.iter().filter_map(|r| r.as_ref().err()).all(|e| matches!(e, Error::NotValid)));
    assert_eq!(db.people.members(Scope::Home(home(1))).await.unwrap().len(), 2);
    // Who lost has no account either.
    let accounts: i64 =
        sqlx::query_scalar("SELECT count(*) FROM people.account").fetch_one(&mut db.look().await).await.unwrap();
    assert_eq!(accounts, 3);
}

#[tokio::test(flavor = "multi_thread")]
async fn it_ends_with_its_time_when_taken_back_and_with_the_role_of_who_wrote_it() {
    let (db, _, keeper, stories) = one_home().await;
    let part = |role| Part::new(Scope::Home(home(1)), role, None, None).unwrap();
    let second = joined(&db, &keeper, &stories, part(Role::Keeper), "Mora").await;
    let leave = db.people.may(&second.session, Capability::ManagePeople, home(1), &stories, at(1)).await.unwrap();
    let invite = async || db.people.invite(&leave, &part(Role::Member), at(1), &mut OsSecrets).await.unwrap();
    let (first, in_time) = invite().await;
    let span = db.people.lifetimes().invitation_s as i64;
    assert_eq!(db.people.invitation(&in_time, at(span)).await.unwrap(), first);
    assert!(matches!(db.people.invitation(&in_time, at(1 + span)).await, Err(Error::NotValid)));
    assert!(matches!(take(&db.people, &in_time, "Late", at(1 + span)).await, Err(Error::NotValid)));
    assert!(db.people.end_invitation(&leave, first.id, at(2)).await.unwrap());
    assert!(matches!(take(&db.people, &in_time, "Late", at(3)).await, Err(Error::NotValid)));
    let (_, orphan) = invite().await;
    let seconds = db.people.who(second.session.account).await.unwrap().memberships[0].id;
    db.people.end_own_membership(second.session.account, seconds, at(4)).await.unwrap();
    assert!(matches!(take(&db.people, &orphan, "Late", at(5)).await, Err(Error::NotValid)));
    assert!(db.people.invitations(Scope::Home(home(1)), at(5)).await.unwrap().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn who_has_a_role_there_leaves_it_for_another() {
    let (db, _, keeper, stories) = one_home().await;
    let leave = db.people.may(&keeper.session, Capability::ManagePeople, home(1), &stories, at(0)).await.unwrap();
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let (_, secret) = db.people.invite(&leave, &part, at(0), &mut OsSecrets).await.unwrap();
    let mine = Taker::Known(&keeper.session);
    let told = db.people.take_invitation(&secret, mine, "192.0.2.1", "test", at(1), &mut OsSecrets).await;
    assert!(matches!(told, Err(Error::Taken)));
    assert!(take(&db.people, &secret, "Mora", at(2)).await.is_ok(), "it still holds");
}

#[tokio::test(flavor = "multi_thread")]
async fn leave_in_one_place_invites_to_no_other() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let keeper = keeper_of(&db, &server, home(1)).await;
    keeper_of(&db, &server, home(2)).await;
    let stories = Stories::with(&[home(1), home(2)]);
    let leave = db.people.may(&keeper.session, Capability::ManagePeople, home(1), &stories, at(0)).await.unwrap();
    let other = db.people.may(&keeper.session, Capability::Record, home(1), &stories, at(0)).await.unwrap();
    for (by, scope, role) in [
        (&leave, Scope::Home(home(2)), Role::Member),
        (&leave, Scope::Server, Role::ServerKeeper),
        (&other, Scope::Home(home(1)), Role::Member),
    ] {
        let part = Part::new(scope, role, None, None).unwrap();
        let told = db.people.invite(by, &part, at(0), &mut OsSecrets).await;
        assert!(matches!(told, Err(Error::Denied(Denied::NotByRole(_)))), "{scope:?}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn who_hosts_cannot_let_itself_into_a_home_that_has_or_had_a_keeper() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let host = db.people.may_on_server(&server.session, Capability::Host, at(0)).await.unwrap();
    db.people.open_home(&host, home(1), at(0)).await.unwrap();
    let part = Part::new(Scope::Home(home(1)), Role::Keeper, None, None).unwrap();
    // Two links are written before anyone comes: the second is worth nothing once the first is taken.
    let (_, first) = db.people.invite(&host, &part, at(0), &mut OsSecrets).await.unwrap();
    let (_, second) = db.people.invite(&host, &part, at(0), &mut OsSecrets).await.unwrap();
    take(&db.people, &first, "Ilda", at(1)).await.unwrap();
    let mine = Taker::Known(&server.session);
    let told = db.people.take_invitation(&second, mine, "192.0.2.1", "test", at(2), &mut OsSecrets).await;
    assert!(matches!(told, Err(Error::Taken)));
    assert!(matches!(db.people.invite(&host, &part, at(2), &mut OsSecrets).await, Err(Error::Taken)));
    let member = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let told = db.people.invite(&host, &member, at(2), &mut OsSecrets).await;
    assert!(matches!(told, Err(Error::Denied(_))));
    assert!(matches!(db.people.invite_first_keeper(at(2), &mut OsSecrets).await, Err(Error::Taken)));
}
