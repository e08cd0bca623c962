//! Homes: denied without reading, left for good, looked at and told.

use crate::database::Database;
use crate::together::*;
use sayso_model::Label;
use sayso_people::db::{HomeState, Looker};
use sayso_people::*;

#[tokio::test(flavor = "multi_thread")]
async fn a_foreign_home_is_denied_as_an_unknown_one_and_neither_is_read() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let ilda = keeper_of(&db, &server, home(1)).await;
    keeper_of(&db, &server, home(2)).await;
    let (_, club_keeper, coach) = club_with_coach(&db, &server).await;
    let stories = Stories::with(&[home(1), home(2)]);
    for asker in [&ilda, &server, &club_keeper, &coach] {
        for capability in Capability::ALL {
            for of in [home(2), home(3)] {
                let told = db.people.may(&asker.session, *capability, of, &stories, at(1)).await;
                assert_eq!(is_denied(told), Denied::NothingHere, "{capability:?}");
            }
        }
    }
    assert!(stories.asked.lock().unwrap().is_empty(), "what is not read takes no time");
    assert!(db.people.may(&ilda.session, Capability::SeeLog, home(1), &stories, at(1)).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_left_is_gone_for_everyone_and_stays_refused() {
    let (db, server, ilda, stories) = one_home().await;
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let mora = joined(&db, &ilda, &stories, part, "Mora").await;
    let manage = db.people.may(&ilda.session, Capability::ManagePeople, home(1), &stories, at(2)).await.unwrap();
    let (_, open) = db.people.invite(&manage, &part, at(2), &mut OsSecrets).await.unwrap();
    assert!(matches!(db.people.leave(&manage, at(3)).await, Err(Error::Denied(_))), "that is other leave");
    let told = is_denied(db.people.may(&mora.session, Capability::Leave, home(1), &stories, at(3)).await);
    assert_eq!(told, Denied::NotByRole(Capability::Leave));
    let leave = db.people.may(&ilda.session, Capability::Leave, home(1), &stories, at(3)).await.unwrap();
    db.people.leave(&leave, at(3)).await.unwrap();
    assert!(matches!(db.people.leave(&leave, at(3)).await, Err(Error::Left)));
    assert_eq!(db.people.home_state(home(1)).await.unwrap(), HomeState::Left);
    for who in [&ilda, &mora] {
        let told = db.people.may(&who.session, Capability::SeeToday, home(1), &stories, at(4)).await;
        assert_eq!(is_denied(told), Denied::NothingHere);
        assert!(db.people.session(&who.token, at(4)).await.unwrap().unwrap().renew);
    }
    assert!(matches!(take(&db.people, &open, "Late", at(4)).await, Err(Error::NotValid)));
    for table in ["membership", "invitation", "witness", "look"] {
        let count = sqlx::AssertSqlSafe(format!("SELECT count(*) FROM people.{table} WHERE home = $1"));
        let left: i64 = sqlx::query_scalar(count).bind(home(1).0).fetch_one(&mut db.look().await).await.unwrap();
        assert_eq!(left, 0, "{table}");
    }
    let host = db.people.may_on_server(&server.session, Capability::Host, at(5)).await.unwrap();
    assert!(matches!(db.people.open_home(&host, home(1), at(5)).await, Err(Error::Left)));
    assert!(matches!(db.people.invite(&host, &first_keeper(), at(5), &mut OsSecrets).await, Err(Error::Left)));
    assert!(db.people.account(ilda.session.account).await.unwrap().is_some(), "people keep their accounts");
}

fn first_keeper() -> Part {
    Part::new(Scope::Home(home(1)), Role::Keeper, None, None).unwrap()
}

#[tokio::test(flavor = "multi_thread")]
async fn looks_of_others_are_noted_by_the_hour_those_of_the_home_are_not() {
    let (db, _, ilda, stories) = one_home().await;
    let today = at(0).day(&sayso_model::Zone::utc());
    let person = Some(sayso_model::PersonId(uuid::Uuid::from_u128(5)));
    let days = Some(Days::every(today, today.plus(2)));
    let part = Part::new(Scope::Home(home(1)), Role::Sitter, person, days).unwrap();
    let sitter = joined(&db, &ilda, &stories, part, "Sitter").await;
    let hour = 3_600;
    let polled = (30..90).step_by(2).map(|second| (&sitter, Capability::SeeRules, second));
    for (who, capability, second) in [
        (&ilda, Capability::SeeLog, 5),
        (&sitter, Capability::SeeToday, 5),
        (&sitter, Capability::SeeToday, 65),
        (&sitter, Capability::Record, 66),
        // A quarter of an hour later it is another look.
        (&sitter, Capability::SeeToday, 65 + hour / 4),
        (&sitter, Capability::SeeToday, hour + 5),
    ]
    .into_iter()
    .chain(polled)
    {
        assert!(db.people.may(&who.session, capability, home(1), &stories, at(second)).await.is_ok());
    }
    assert!(db.people.may(&sitter.session, Capability::SeeLog, home(1), &stories, at(71)).await.is_err());
    let looks = db.people.looks(home(1), 100).await.unwrap();
    let told: Vec<(&str, i64)> = looks.iter().map(|l| (l.capability.as_str(), l.times)).collect();
    assert_eq!(told, [("see_today", 1), ("see_today", 2), ("see_rules", 1), ("record", 1)]);
    let own = Looker::Account(sitter.session.account, Label::new("Sitter").unwrap());
    assert!(looks.iter().all(|l| l.who == own));
    assert_eq!((looks[1].first_at, looks[1].last_at), (at(5), at(65 + hour / 4)));
    // Erased, the person is nobody's to name; that a sitter looked at what, and on which day, stays with the home.
    db.people.erase_account(sitter.session.account, at(2 * hour)).await.unwrap();
    let looks = db.people.looks(home(1), 100).await.unwrap();
    let told: Vec<(&str, i64)> = looks.iter().map(|l| (l.capability.as_str(), l.times)).collect();
    assert_eq!(told, [("record", 1), ("see_rules", 1), ("see_today", 3)]);
    assert!(looks.iter().all(|l| l.who == Looker::Left(Role::Sitter)), "{looks:?}");
    let utc = sayso_model::Zone::utc();
    assert!(looks.iter().all(|l| l.first_at.day(&utc) == at(5).day(&utc) && l.first_at == l.last_at), "{looks:?}");
    // As long as any other.
    let kept = i64::from(db.people.lifetimes().looks_days) * 86_400;
    db.people.sweep(at(kept - 86_400)).await.unwrap();
    assert_eq!(db.people.looks(home(1), 100).await.unwrap().len(), 3);
    db.people.sweep(at(kept + 86_400)).await.unwrap();
    assert!(db.people.looks(home(1), 100).await.unwrap().is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_sitters_days_end_and_begin_by_themselves() {
    let (db, _, ilda, stories) = one_home().await;
    let tomorrow = at(0).day(&sayso_model::Zone::utc()).plus(1);
    let person = Some(sayso_model::PersonId(uuid::Uuid::from_u128(5)));
    let part = Part::new(Scope::Home(home(1)), Role::Sitter, person, Some(Days::every(tomorrow, tomorrow))).unwrap();
    let sitter = joined(&db, &ilda, &stories, part, "Sitter").await;
    let start = tomorrow.start(&sayso_model::Zone::utc());
    let ask = async |now| db.people.may(&sitter.session, Capability::SeeToday, home(1), &stories, now).await;
    assert_eq!(is_denied(ask(start.plus_seconds(-1.0)).await), Denied::NotToday);
    assert!(ask(start).await.is_ok());
    assert_eq!(is_denied(ask(start.plus_seconds(86_400.0)).await), Denied::NotToday);
}

#[tokio::test(flavor = "multi_thread")]
async fn the_first_keeper_reaches_a_home_in_which_nothing_is_written_yet() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let ilda = keeper_of(&db, &server, home(1)).await;
    let nothing = Stories::default();
    assert!(db.people.may(&ilda.session, Capability::SettleHome, home(1), &nothing, at(1)).await.is_ok());
    let told = db.people.may(&server.session, Capability::SettleHome, home(1), &nothing, at(1)).await;
    assert_eq!(is_denied(told), Denied::NothingHere);
}
