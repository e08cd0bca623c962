//! What a file brings: a notebook moves into an empty home, and nothing it says of consent opens anything.

use crate::house::{Answer, House, Signed, asked, event, label};
use axum::http::StatusCode;
use sayso_model::{
    AnimalCard, AnimalId, Body, Coach, Consent, ConsentGiven, Correction, Event, EventId, HomeCard, HomeId, Note,
    Remark, Source, Species, Zone,
};
use sayso_store::{FileKind, Format, Others, Store};
use sayso_web::leave::admits;
use std::path::Path;
use uuid::Uuid;

fn remark(text: &str) -> Remark {
    Remark { text: Note::new(text).unwrap() }
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_in_a_file_is_a_fault_that_names_its_line() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let consent = Consent::CoachFigures { to: Coach::Club { club } };
    let given = ConsentGiven { consent, words_version: Consent::WORDS, holds: None };
    let corrected = Correction {
        of: EventId(Uuid::now_v7()),
        happened_at: None,
        animal: None,
        body: Box::new(given.clone().into()),
    };
    let rows = [
        event(house.home, remark("Fine")),
        event(house.home, given),
        Event { source: Source::Import, ..event(house.home, corrected) },
    ];
    let file: String = rows.iter().map(|row| serde_json::to_string(row).unwrap() + "\n").collect();
    let sent =
        async |path: &str| asked(&house.app, Some(&house.keeper), "POST", path, Some(("text/plain", &file))).await;
    let preview = sent("/api/import/preview?format=jsonl").await;
    let told: serde_json::Value = serde_json::from_str(&preview.body).unwrap();
    assert_eq!((&told["rows"], &told["new"], &told["bad_rows"]), (&3.into(), &1.into(), &2.into()), "{}", preview.body);
    let lines: Vec<&serde_json::Value> = told["problems"].as_array().unwrap().iter().map(|p| &p["line"]).collect();
    assert_eq!(lines, [&serde_json::Value::from(2), &serde_json::Value::from(3)]);
    assert!(told["problems"][0]["wanted"].as_str().unwrap().contains("opens nothing"), "{}", preview.body);
    let whole = sent("/api/import/commit?format=jsonl").await;
    assert_eq!(whole.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", whole.body);
    let events = "SELECT count(*) FROM sayso.event WHERE home = $1";
    let before = house.count(events).await;
    let rest = sent("/api/import/commit?format=jsonl&skip_bad_rows=true").await;
    assert_eq!(rest.status, StatusCode::OK, "{}", rest.body);
    assert_eq!(house.count(events).await, before + 1, "the sound row alone");
    assert_eq!(house.get(&coach, &house.about("evidence")).await.status, StatusCode::SEE_OTHER);
    // At home a notebook takes in what it once gave.
    let given: Body = ConsentGiven { consent, words_version: Consent::WORDS, holds: None }.into();
    assert!(admits(None)(&given));
}

/// A notebook at home with a home, an animal and a recording; its file in one of the forms.
async fn notebook(dir: &Path, form: &str) -> (Store, HomeId, String) {
    let (home, animal) = (HomeId(Uuid::now_v7()), AnimalId(Uuid::now_v7()));
    let store = Store::open(dir).await.unwrap();
    let card = AnimalCard::new(animal, label("Sorrel"), Species::Dog);
    let events = vec![
        event(home, HomeCard { name: label("Rowan End"), zone: Zone::utc() }),
        Event { animal: Some(animal), ..event(home, card) },
        event(home, remark("At home")),
    ];
    store.append(events).await.unwrap();
    let file = write(&store, dir, form).await;
    (store, home, file)
}

async fn write(store: &Store, dir: &Path, form: &str) -> String {
    let to = dir.join(format!("{}.{form}", Uuid::now_v7()));
    match form {
        "tar" => drop(store.export_archive(&to).await.unwrap()),
        "csv" => drop(store.export_to(Format::Csv, &to).await.unwrap()),
        _ => drop(store.export_to(Format::JsonLines, &to).await.unwrap()),
    }
    std::fs::read_to_string(to).unwrap()
}

/// Brings a file by the page; the preview.
async fn brings(house: &House, who: &Signed, name: &str, file: &str) -> (String, Answer) {
    let body = format!(
        "--cut\r\nContent-Disposition: form-data; name=\"file\"; filename=\"{name}\"\r\n\r\n{file}\r\n--cut--\r\n"
    );
    let kind = Some(("multipart/form-data; boundary=cut", body.as_str()));
    let brought = asked(&house.app, Some(who), "POST", "/exchange", kind).await;
    assert_eq!(brought.status, StatusCode::SEE_OTHER, "{}", brought.body);
    let to = brought.to().to_owned();
    let look = house.get(who, &to).await;
    (to, look)
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_moves_into_an_empty_home_and_back_into_a_notebook() {
    let house = House::new().await;
    for form in ["tar", "jsonl", "csv"] {
        let dir = tempfile::tempdir().unwrap();
        let (store, of, file) = notebook(dir.path(), form).await;
        let (home, ana) = house.newcomer().await;
        let (to, look) = brings(&house, &ana, &format!("all.{form}"), &file).await;
        assert_eq!((look.status, look.marked("moves-in").len()), (StatusCode::OK, 1), "{form}: {}", look.body);
        assert!(look.holds(&of.to_string()) && look.holds("Rowan End") && !look.holds("take_in_other_home"));
        let taken = house.post(&ana, &to, "").await;
        assert_eq!(taken.status, StatusCode::SEE_OTHER, "{form}: {}", taken.body);
        let story = house.host.server.home(home).story(home).await.unwrap();
        assert_eq!(story.home().unwrap().name.as_str(), "Rowan End", "{form}");
        assert_eq!((story.ledger().all().count(), story.animals().len()), (3, 1), "{form}");
        assert!(story.ledger().all().all(|e| e.home == home));
        let animal = *story.animals().keys().next().unwrap();
        assert_eq!(house.get(&ana, &format!("/a/{animal}/today")).await.status, StatusCode::OK);
        // Brought once more, what was written at home since comes over, and nothing twice.
        store.append(vec![event(of, remark("Since"))]).await.unwrap();
        let more = write(&store, dir.path(), form).await;
        let (to, _) = brings(&house, &ana, &format!("more.{form}"), &more).await;
        assert_eq!(house.post(&ana, &to, "").await.status, StatusCode::SEE_OTHER);
        let story = house.host.server.home(home).story(home).await.unwrap();
        assert_eq!(story.ledger().all().count(), 4, "{form}");
        // And back: the server's archive is a notebook.
        let archive = house.get(&ana, "/exchange/archive.tar").await;
        let (back, path) = (tempfile::tempdir().unwrap(), dir.path().join("back.tar"));
        std::fs::write(&path, &archive.body).unwrap();
        let new = Store::open(back.path()).await.unwrap();
        let look = new.look_at(&path, FileKind::Archive).await.unwrap();
        new.take_in(&path, look, Others::Refuse).await.unwrap();
        assert_eq!(new.story(home).await.unwrap().ledger().all().count(), 4, "{form}");
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn a_notebook_of_another_home_is_refused_where_records_are_and_so_is_one_of_several() {
    let house = House::new().await;
    let dir = tempfile::tempdir().unwrap();
    let (store, _, file) = notebook(dir.path(), "jsonl").await;
    let events = "SELECT count(*) FROM sayso.event WHERE home = $1";
    let before = house.count(events).await;
    let (to, look) = brings(&house, &house.keeper, "all.jsonl", &file).await;
    assert_eq!(look.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", look.body);
    assert!(look.holds("only into a home in which nothing is written yet"), "{}", look.body);
    assert_ne!(house.post(&house.keeper, &to, "take_in_other_home=yes").await.status, StatusCode::SEE_OTHER);
    assert_eq!(house.count(events).await, before);
    // Two homes in one file, into an empty one.
    let other = event(HomeId(Uuid::now_v7()), HomeCard { name: label("Alder"), zone: Zone::utc() });
    let two = format!("{file}{}\n", serde_json::to_string(&other).unwrap());
    let (home, ana) = house.newcomer().await;
    let (to, look) = brings(&house, &ana, "two.jsonl", &two).await;
    assert_eq!(look.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", look.body);
    assert!(look.holds("of one home alone") && !look.holds("take_in_other_home"), "{}", look.body);
    assert_ne!(house.post(&ana, &to, "take_in_other_home=yes").await.status, StatusCode::SEE_OTHER);
    assert!(house.host.server.home(home).story(home).await.unwrap().ledger().is_empty());
    store.close().await.unwrap();
}

#[tokio::test(flavor = "multi_thread")]
async fn a_backup_is_not_asked_for_and_told_as_what_it_is() {
    let house = House::new().await;
    let page = house.get(&house.keeper, "/exchange").await;
    assert!(page.holds(".tar") && !page.holds(".sayso"), "{}", page.body);
    let (_, look) = brings(&house, &house.keeper, "all.sayso", "SQLite format 3\0").await;
    assert_eq!(look.status, StatusCode::UNPROCESSABLE_ENTITY, "{}", look.body);
    assert!(look.holds("all.sayso” is a backup of a whole notebook") && look.holds("archive (.tar)"), "{}", look.body);
    assert!(!look.holds("Not allowed"), "{}", look.body);
    let columns = house.get(&house.keeper, "/exchange/columns").await;
    assert!(columns.status == StatusCode::OK && columns.holds("happened_at"), "{}", columns.body);
}
