//! Links by e-mail and recovery codes: used once, in their time, telling nothing of who has an account.

use crate::database::Database;
use crate::together::*;
use sayso_people::letter::{Addressed, Letter};
use sayso_people::mail::{Mail, Mailer, Printed};
use sayso_people::*;

const FROM: &str = "192.0.2.7";

fn secret(letter: Addressed) -> Secret {
    match letter.letter {
        Letter::Rescue { .. } | Letter::Tidings { .. } => panic!("holds no secret"),
        Letter::SignIn { secret, .. } | Letter::Prove { secret, .. } => secret,
    }
}

/// Gives an account an address, by the link that proves it.
async fn proved(db: &Database, who: &Signed, email: &Email) {
    let asked = db.people.ask_proof(&who.session, email, FROM, at(0), &mut OsSecrets).await.unwrap();
    let secret = secret(asked.letter().unwrap());
    assert_eq!(db.people.prove_email(&who.session, &secret, at(1)).await.unwrap(), *email);
    assert!(matches!(db.people.prove_email(&who.session, &secret, at(1)).await, Err(Error::NotValid)), "once");
}

#[tokio::test(flavor = "multi_thread")]
async fn of_many_who_open_a_link_at_once_one_is_signed_in() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let email = Email::new(" Keeper@Example.ORG ").unwrap();
    proved(&db, &keeper, &email).await;
    let asked = db.people.ask_link(&email, None, FROM, at(10), &mut OsSecrets).await.unwrap().letter().unwrap();
    assert_eq!(asked.to.as_str(), "keeper@example.org");
    let (link, other) = (secret(asked), db.another().await);
    let mut all = tokio::task::JoinSet::new();
    for n in 0..10 {
        let (people, link) = (if n % 2 == 0 { db.people.clone() } else { other.clone() }, link.clone());
        all.spawn(async move { people.use_link(&link, "test", at(11), &mut OsSecrets).await });
    }
    let in_now: Vec<_> = all.join_all().await.into_iter().filter_map(Result::ok).collect();
    assert_eq!(in_now.len(), 1);
    assert_eq!(in_now[0].0.account, keeper.session.account);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_link_is_short_lived_and_does_one_thing() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let email = Email::new("keeper@example.org").unwrap();
    proved(&db, &keeper, &email).await;
    let span = db.people.lifetimes().link_s as i64;
    let link = async |second| {
        let asked = db.people.ask_link(&email, None, FROM, at(second), &mut OsSecrets).await.unwrap();
        secret(asked.letter().unwrap())
    };
    let late = link(10).await;
    assert!(matches!(db.people.use_link(&late, "test", at(10 + span), &mut OsSecrets).await, Err(Error::NotValid)));
    let in_time = link(20).await;
    assert!(db.people.use_link(&in_time, "test", at(19 + span), &mut OsSecrets).await.is_ok());
    // A link that proves an address signs nobody in, and the other way round; nor is it another account's.
    let new = Email::new("new@example.org").unwrap();
    let asked = db.people.ask_proof(&keeper.session, &new, FROM, at(30), &mut OsSecrets).await.unwrap();
    let proof = secret(asked.letter().unwrap());
    assert!(matches!(db.people.use_link(&proof, "test", at(31), &mut OsSecrets).await, Err(Error::NotValid)));
    let plain = link(2_000).await;
    assert!(matches!(db.people.prove_email(&keeper.session, &plain, at(2_001)).await, Err(Error::NotValid)));
    let other = keeper_of(&db, &keeper, home(1)).await;
    assert!(matches!(db.people.prove_email(&other.session, &proof, at(31)).await, Err(Error::NotValid)));
    assert!(db.people.prove_email(&keeper.session, &proof, at(31)).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn an_unknown_address_gets_the_same_answer_the_same_rows_and_the_same_limit() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let known = Email::new("keeper@example.org").unwrap();
    proved(&db, &keeper, &known).await;
    let unknown = Email::new("nobody@example.org").unwrap();
    let rows = async || -> i64 {
        sqlx::query_scalar("SELECT (SELECT count(*) FROM people.link) * 1000 + (SELECT count(*) FROM people.attempt)")
            .fetch_one(&mut db.look().await)
            .await
            .unwrap()
    };
    let mut grown = Vec::new();
    for (email, from) in [(&known, "192.0.2.20"), (&unknown, "192.0.2.21")] {
        let before = rows().await;
        let mut let_in = 0;
        for n in 0..8 {
            let_in += i32::from(db.people.ask_link(email, None, from, at(100 + n), &mut OsSecrets).await.is_ok());
        }
        grown.push((rows().await - before, let_in));
    }
    assert_eq!(grown[0], grown[1]);
    assert_eq!(grown[0].1, db.people.lifetimes().most_for_one as i32);
    // Another process counts the same attempts; a later window begins anew.
    let other = db.another().await;
    let told = other.ask_link(&known, None, "192.0.2.20", at(109), &mut OsSecrets).await;
    assert!(matches!(told, Err(Error::TooOften)));
    let next = db.people.lifetimes().window_s as i64 + 109;
    assert!(other.ask_link(&known, None, "192.0.2.20", at(next), &mut OsSecrets).await.is_ok());
}

#[tokio::test(flavor = "multi_thread")]
async fn a_stranger_who_asks_and_asks_holds_off_nobody_else() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let email = Email::new("keeper@example.org").unwrap();
    proved(&db, &keeper, &email).await;
    let ask = async |before: Option<&Secret>, from: &str, second: i64| {
        db.people.ask_link(&email, before, from, at(second), &mut OsSecrets).await.is_ok()
    };
    for n in 0..200 {
        ask(None, "192.0.2.30", 100 + n).await;
    }
    assert!(ask(None, "192.0.2.31", 301).await, "its owner, from elsewhere");
    // Many strangers together: the letters end, for them.
    let mut letters = 0;
    for n in 0..200 {
        letters += u32::from(ask(None, &format!("198.51.100.{}", n / 4), 302 + n).await);
    }
    let most = db.people.lifetimes().most_for_one_by_all;
    assert!(letters < most && letters > most / 2, "{letters}");
    assert!(!ask(None, "192.0.2.31", 510).await, "a stranger by now");
    assert!(ask(Some(&keeper.token), "192.0.2.31", 511).await, "the browser that was signed in as its owner");
    db.people.end_session(keeper.session.account, keeper.session.id, at(512)).await.unwrap();
    assert!(ask(Some(&keeper.token), "192.0.2.31", 513).await, "also when that is over");
    let other = keeper_of(&db, &keeper, home(1)).await;
    assert!(!ask(Some(&other.token), "192.0.2.32", 514).await, "not somebody else's");
}

#[tokio::test(flavor = "multi_thread")]
async fn one_network_address_asks_for_many_only_so_often() {
    let db = Database::new().await;
    let most = db.people.lifetimes().most_from_one;
    let mut let_in = 0;
    for n in 0..most + 5 {
        let email = Email::new(&format!("person{n}@example.org")).unwrap();
        let_in += u32::from(db.people.ask_link(&email, None, FROM, at(0), &mut OsSecrets).await.is_ok());
    }
    assert_eq!(let_in, most);
}

#[tokio::test(flavor = "multi_thread")]
async fn an_address_is_one_accounts() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let other = keeper_of(&db, &server, home(1)).await;
    let email = Email::new("one@example.org").unwrap();
    proved(&db, &server, &email).await;
    let asked = db.people.ask_proof(&other.session, &email, FROM, at(5), &mut OsSecrets).await.unwrap();
    let told = db.people.prove_email(&other.session, &secret(asked.letter().unwrap()), at(6)).await;
    assert!(matches!(told, Err(Error::Taken)));
    for bad in ["", "keeper", "keeper@", "a b@example.org", "a@example.org\nBcc: b@example.org"] {
        assert!(matches!(Email::new(bad), Err(Error::Email)), "{bad:?}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_recovery_code_works_once_however_many_try_and_a_new_set_ends_the_old() {
    let db = Database::new().await;
    let keeper = server_keeper(&db).await;
    let account = keeper.session.account;
    let old = db.people.new_recovery_codes(&keeper.session, at(0), &mut OsSecrets).await.unwrap();
    let other = db.another().await;
    let mut all = tokio::task::JoinSet::new();
    for n in 0..10 {
        let (people, code) = (if n % 2 == 0 { db.people.clone() } else { other.clone() }, old[0].clone());
        all.spawn(async move { people.use_recovery_code(&code, FROM, "test", at(1), &mut OsSecrets).await });
    }
    assert_eq!(all.join_all().await.iter().filter(|r| r.is_ok()).count(), 1);
    assert_eq!(db.people.recovery_codes_left(account).await.unwrap(), 7);
    let new = db.people.new_recovery_codes(&keeper.session, at(2), &mut OsSecrets).await.unwrap();
    assert!(matches!(
        db.people.use_recovery_code(&old[1], FROM, "t", at(3), &mut OsSecrets).await,
        Err(Error::NotValid)
    ));
    let typed = Secret::typed(&new[1].reveal().to_uppercase().replace('-', " "));
    assert!(db.people.use_recovery_code(&typed, FROM, "t", at(3), &mut OsSecrets).await.is_ok());
}

#[tokio::test]
async fn mail_is_printed_while_working_on_the_program() {
    let (subject, text) = ("Hello".into(), "One line".into());
    let mail = Mail { to: Email::new("a@example.org").unwrap(), subject, text, stop: None };
    Printed.send(&mail).await.unwrap();
}
