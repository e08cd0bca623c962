//! Accounts and the schema.

use crate::database::Database;
use crate::together::*;
use sayso_people::*;
use sqlx::Row;

#[tokio::test(flavor = "multi_thread")]
async fn several_processes_bring_an_empty_database_up_to_date_at_once() {
    let db = Database::new().await;
    let mut past = db.look().await;
    sqlx::query("DROP SCHEMA people CASCADE").execute(&mut past).await.unwrap();
    let mut all = tokio::task::JoinSet::new();
    for _ in 0..6 {
        let options = db.options.clone();
        all.spawn(async move { People::open(options, Lifetimes::default(), 2).await.map(|_| ()) });
    }
    for opened in all.join_all().await {
        opened.unwrap();
    }
    server_keeper(&db).await;
}

#[tokio::test(flavor = "multi_thread")]
async fn an_erased_account_leaves_nothing_behind() {
    let (db, _, keeper, stories) = one_home().await;
    let part = Part::new(Scope::Home(home(1)), Role::Member, None, None).unwrap();
    let member = joined(&db, &keeper, &stories, part, "Mora").await;
    db.people.new_recovery_codes(&member.session, at(2), &mut OsSecrets).await.unwrap();
    let told = db.people.erase_account(keeper.session.account, at(3)).await;
    assert!(matches!(told, Err(Error::LastKeeper)));
    assert!(db.people.session(&keeper.token, at(3)).await.unwrap().is_some(), "refused as a whole");
    db.people.erase_account(member.session.account, at(3)).await.unwrap();
    assert!(db.people.session(&member.token, at(3)).await.unwrap().is_none());
    assert!(db.people.account(member.session.account).await.unwrap().is_none());
    for table in ["membership", "session", "recovery", "passkey", "link", "look", "invitation"] {
        let column = if table == "invitation" { "made_by" } else { "account" };
        let count = sqlx::AssertSqlSafe(format!("SELECT count(*) FROM people.{table} WHERE {column} = $1"));
        let row = sqlx::query(count).bind(member.session.account.0).fetch_one(&mut db.look().await).await.unwrap();
        assert_eq!(row.get::<i64, _>(0), 0, "{table}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn no_secret_is_stored_as_it_is() {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let host = db.people.may_on_server(&server.session, Capability::Host, at(0)).await.unwrap();
    db.people.open_home(&host, home(1), at(0)).await.unwrap();
    let part = Part::new(Scope::Home(home(1)), Role::Keeper, None, None).unwrap();
    let (_, invitation) = db.people.invite(&host, &part, at(0), &mut OsSecrets).await.unwrap();
    let codes = db.people.new_recovery_codes(&server.session, at(0), &mut OsSecrets).await.unwrap();
    let mut all = String::new();
    for table in ["session", "invitation", "recovery", "link"] {
        let rows = sqlx::AssertSqlSafe(format!("SELECT t::text AS row FROM people.{table} t"));
        for row in sqlx::query(rows).fetch_all(&mut db.look().await).await.unwrap() {
            all.push_str(&row.get::<String, _>("row"));
        }
    }
    assert!(all.len() > 500, "{all}");
    for secret in codes.iter().chain([&server.token, &invitation]) {
        let plain: String = secret.reveal().chars().filter(|c| *c != '-').collect();
        assert!(!all.contains(&plain) && !all.contains(secret.reveal()));
    }
}
