//! Nothing is left without a keeper.

use crate::database::Database;
use crate::together::*;
use sayso_people::*;

#[tokio::test(flavor = "multi_thread")]
async fn of_two_last_keepers_who_go_at_once_one_stays() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let stories = Stories::with(&(1..=6).map(home).collect::<Vec<_>>());
    for n in 1..=6 {
        let first = keeper_of(&db, &server, home(n)).await;
        let part = Part::new(Scope::Home(home(n)), Role::Keeper, None, None).unwrap();
        let second = joined(&db, &first, &stories, part, "Mora").await;
        let other = db.another().await;
        let go = async |people: &People, who: &Signed| {
            let account = who.session.account;
            let role = people.who(account).await.unwrap().memberships[0].id;
            people.end_own_membership(account, role, at(2)).await
        };
        let (a, b) = tokio::join!(go(&db.people, &first), go(&other, &second));
        assert_eq!([a.is_ok(), b.is_ok()].iter().filter(|ok| **ok).count(), 1);
        assert!([a, b].into_iter().any(|r| matches!(r, Err(Error::LastKeeper))));
        assert_eq!(db.people.members(Scope::Home(home(n))).await.unwrap().len(), 1);
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn roles_of_another_place_are_out_of_reach() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let (ilda, other) = (keeper_of(&db, &server, home(1)).await, keeper_of(&db, &server, home(2)).await);
    let stories = Stories::with(&[home(1), home(2)]);
    let leave = db.people.may(&ilda.session, Capability::ManagePeople, home(1), &stories, at(1)).await.unwrap();
    let theirs = db.people.who(other.session.account).await.unwrap().memberships[0].id;
    assert!(matches!(db.people.end_membership(&leave, theirs, at(1)).await, Err(Error::NotValid)));
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let told = db.people.change_membership(&leave, theirs, &part, at(1), &mut OsSecrets).await;
    assert!(matches!(told, Err(Error::NotValid)));
    let told = db.people.end_own_membership(ilda.session.account, theirs, at(1)).await;
    assert!(matches!(told, Err(Error::NotValid)));
    assert_eq!(db.people.members(Scope::Home(home(2))).await.unwrap().len(), 1);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_role_that_ended_is_worth_nothing_at_the_next_request() {
    let (db, _, ilda, stories) = one_home().await;
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let mora = joined(&db, &ilda, &stories, part, "Mora").await;
    let other = db.another().await;
    assert!(other.may(&mora.session, Capability::SeeLog, home(1), &stories, at(2)).await.is_ok());
    let leave = db.people.may(&ilda.session, Capability::ManagePeople, home(1), &stories, at(2)).await.unwrap();
    let hers = db.people.who(mora.session.account).await.unwrap().memberships[0].id;
    db.people.end_membership(&leave, hers, at(2)).await.unwrap();
    let told = other.may(&mora.session, Capability::SeeLog, home(1), &stories, at(2)).await;
    assert_eq!(is_denied(told), Denied::NothingHere);
}
