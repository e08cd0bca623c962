//! Texts with line breaks of any system, and characters that cannot be seen; events as lists; archives.

use crate::common::*;
use sayso_model::*;
use sayso_store::{
    Appended, ArchiveFault, Format, ImportOptions, NotRead, Others, Revision, Store, StoreError, Wanted,
    events_of_archive, read_event,
};

fn json(event: &Event) -> String {
    serde_json::to_string(event).unwrap()
}

#[tokio::test]
async fn hidden_characters_are_refused_by_field_wherever_they_come_in_and_read_where_they_stand() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let card = Event { animal: None, ..event(1, "2026-03-01T10:00:00Z", home_card("UTC")) };
    let bad = json(&card).replace("\"Home\"", "\"Ho\u{200B}me\"");
    let read = read_event(&bad).unwrap();
    match &store.append(vec![read.clone()]).await.unwrap()[0] {
        Appended::Refused(Problems(found)) => {
            assert_eq!(found.len(), 1);
            assert_eq!(found[0].field, "body.name");
            assert!(found[0].fault.to_string().contains("U+200B"), "{}", found[0].fault);
        }
        other => panic!("{other:?}"),
    }
    let options = ImportOptions { format: Format::JsonLines, home: None };
    let preview = store.preview(bad.as_bytes(), &options).await.unwrap();
    assert_eq!((preview.new, preview.problems[0].field.as_str()), (0, "body.name"));
    // A remark in two directions stays; one that turns what follows does not, within a correction either.
    let remark = |text: &str| event(2, "2026-03-01T10:00:00Z", Remark { text: Note::new(text).unwrap() });
    let marked = remark("שלום\u{200F} ok");
    assert_eq!(store.append(vec![marked.clone()]).await.unwrap(), [Appended::New]);
    let turned = event(3, "2026-03-01T10:00:00Z", correction(&marked, marked.body.clone()));
    let turned = read_event(&json(&turned).replace("שלום\u{200F}", "\u{202E}שלום")).unwrap();
    match &store.append(vec![turned]).await.unwrap()[0] {
        Appended::Refused(Problems(found)) => assert_eq!(found[0].field, "body.body.text"),
        other => panic!("{other:?}"),
    }
    // One that stands in a log since before is read, backed up and restored.
    let mut db =
        sqlx::ConnectOptions::connect(&sqlx::sqlite::SqliteConnectOptions::new().filename(dir.path().join("sayso.db")))
            .await
            .unwrap();
    sqlx::query("INSERT INTO event (id, household, kind, content) VALUES ($1, $2, 'home_card', $3)")
        .bind(card.id.0)
        .bind(card.home.0)
        .bind(&bad)
        .execute(&mut db)
        .await
        .unwrap();
    let name = store.story(home()).await.unwrap().home().unwrap().name.to_string();
    assert_eq!(name, "Ho\u{200B}me");
    assert_eq!(store.append(vec![read]).await.unwrap().len(), 1);
    assert_eq!(store.preview(bad.as_bytes(), &options).await.unwrap().duplicates, 1);
}

#[tokio::test]
async fn line_breaks_of_any_system_are_kept_as_one() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let plain = event(1, "2026-03-01T10:00:00Z", Remark { text: Note::new("one\ntwo").unwrap() });
    let windows = json(&plain).replace("one\\ntwo", "one\\r\\ntwo");
    assert!(windows.contains("\\r\\n"));
    let read = read_event(&windows).unwrap();
    assert_eq!(read, plain);
    assert_eq!(store.append(vec![read]).await.unwrap(), [Appended::New]);
    assert_eq!(store.append(vec![plain]).await.unwrap(), [Appended::Duplicate]);
    let table = "kind,happened_at,text\r\nremark,2026-03-01T11:00:00Z,\"three\r\nfour\"\r\n";
    let options = ImportOptions { format: Format::Csv, home: None };
    let preview = store.preview(table.as_bytes(), &options).await.unwrap();
    assert_eq!(preview.problems, []);
    store.commit(preview, Others::Refuse).await.unwrap();
    let texts: Vec<String> =
        store.story(home()).await.unwrap().everyones::<Remark>().map(|f| f.part.text.to_string()).collect();
    assert!(texts.contains(&"three\nfour".to_owned()), "{texts:?}");
}

#[test]
fn a_list_where_an_object_belongs_is_refused_in_words() {
    let sound = event(1, "2026-03-01T10:00:00Z", Press { place: Some(Place { row: 1, column: 2 }), ..press(7) });
    let text = json(&sound);
    assert_eq!(read_event(&text).unwrap(), sound);
    for (bad, field) in [
        (format!("[{text}]"), ""),
        ("[\"x\"]".to_owned(), ""),
        (text.replace("{\"row\":1,\"column\":2}", "[1,2]"), "body.place"),
        ("7".to_owned(), ""),
    ] {
        assert_ne!(bad, text);
        let NotRead(found) = read_event(&bad).unwrap_err();
        assert_eq!(found[0].field, field, "{bad}");
        assert!(found[0].wanted.to_string().contains("from { to }"), "{}", found[0]);
    }
    let NotRead(found) = read_event(&text.replace("\"by\"", "\"bye\"")).unwrap_err();
    let told: Vec<&str> = found.iter().map(|p| p.field.as_str()).collect();
    assert!(told.contains(&"body.by") && told.contains(&"body.bye"), "{found:?}");
}

#[test]
fn what_does_not_fit_is_told_by_its_field_and_by_what_would_be_right() {
    let text = json(&event(1, "2026-03-01T10:00:00Z", press(7)));
    let changed = |field: &str, value: serde_json::Value| {
        let mut event: serde_json::Value = serde_json::from_str(&text).unwrap();
        let (object, name) = match field.strip_prefix("body.") {
            Some(name) => (&mut event["body"], name),
            None => (&mut event, field),
        };
        object[name] = value;
        event.to_string()
    };
    for (field, value, part) in [
        ("id", serde_json::json!("x"), "a UUID"),
        ("id", serde_json::json!(7), "a text"),
        ("happened_at", serde_json::json!("2026-03-01 10:00"), "2026-03-01T18:30:00Z"),
        ("zone", serde_json::json!("Mars"), "Europe/Berlin"),
        ("source", serde_json::json!("rumour"), "one of: "),
        ("body.kind", serde_json::json!("pres"), "one of: "),
        ("body.word", serde_json::json!(null), "a value"),
        ("body.by", serde_json::json!("dog"), "one of: animal, person, unknown"),
        ("body.colour", serde_json::json!("red"), "no such field; there are: "),
        ("body.certainty", serde_json::json!("sure"), "a number"),
        ("body.certainty", serde_json::json!(2), "from 0 to 1"),
    ] {
        let NotRead(found) = read_event(&changed(field, value)).unwrap_err();
        let here = found.iter().find(|p| p.field == field).unwrap_or_else(|| panic!("{field}: {found:?}"));
        assert!(here.wanted.to_string().contains(part), "{here}");
    }
    let NotRead(found) = read_event("{\"id\": ").unwrap_err();
    assert_eq!((found.len(), &*found[0].wanted), (1, &Wanted::Json { column: 7 }));
}

#[tokio::test]
async fn an_archive_carries_events_and_recordings() {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(&dir.path().join("one")).await.unwrap();
    store.append((0..5).map(|n| event(n, "2026-03-01T10:00:00Z", press(7))).collect()).await.unwrap();
    let hash = store.put_clip(vec![5; 70_000]).await.unwrap();
    let bad = store.put_clip(b"damaged soon".to_vec()).await.unwrap();
    std::fs::write(store.dir().join("clips").join(bad.as_str()), "x").unwrap();
    let file = dir.path().join("all.tar");
    let done = store.export_archive(&file).await.unwrap();
    assert_eq!((done.events, done.clips, done.damaged_clips), (5, 1, 1));
    assert!(matches!(store.export_archive(&file).await, Err(StoreError::Exists(_))));

    let other = Store::open(&dir.path().join("two")).await.unwrap();
    let (events, recordings) = events_of_archive(&file).unwrap();
    assert_eq!(recordings, 1);
    let options = ImportOptions { format: Format::JsonLines, home: None };
    let preview = other.preview(&events, &options).await.unwrap();
    assert_eq!(other.commit(preview, Others::Refuse).await.unwrap().new, 5);
    let brought = other.take_recordings(&file).await.unwrap();
    assert_eq!((brought.new, brought.known, brought.damaged), (1, 0, 0));
    assert_eq!(other.take_recordings(&file).await.unwrap().known, 1);
    assert_eq!(other.clip(&hash).await.unwrap().unwrap(), vec![5; 70_000]);
    assert_eq!(other.events(Revision(0), 9).await.unwrap().len(), 5);

    // A sound turned over by one bit is left out; an archive cut short, or none at all, is refused.
    let bytes = std::fs::read(&file).unwrap();
    let (hurt, cut, none) = (dir.path().join("hurt.tar"), dir.path().join("cut.tar"), dir.path().join("none.tar"));
    let mut turned = bytes.clone();
    let at = turned.windows(100).position(|w| w == [5; 100]).unwrap();
    turned[at + 500] ^= 1;
    std::fs::write(&hurt, turned).unwrap();
    assert_eq!(other.take_recordings(&hurt).await.unwrap().damaged, 1);
    std::fs::write(&cut, &bytes[..bytes.len() / 2]).unwrap();
    std::fs::write(&none, "no archive at all").unwrap();
    for bad in [cut, none] {
        let refused = events_of_archive(&bad).unwrap_err();
        assert!(matches!(refused, StoreError::BadArchive { .. }), "{refused}");
    }
}

#[tokio::test]
async fn an_archive_of_countless_entries_or_with_holes_is_read_once() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("many.tar");
    let mut out = tar::Builder::new(std::io::BufWriter::new(std::fs::File::create(&file).unwrap()));
    // Read anew for each of them, this would take hours.
    for n in 0..20_000 {
        let mut header = tar::Header::new_ustar();
        header.set_size(0);
        header.set_mode(0o600);
        out.append_data(&mut header, format!("recordings/{n:064}"), &[][..]).unwrap();
    }
    out.into_inner().unwrap();
    let store = Store::open(&dir.path().join("one")).await.unwrap();
    let brought = store.take_recordings(&file).await.unwrap();
    assert_eq!((brought.new, brought.known, brought.damaged), (0, 0, 20_000));
    // A file with holes is larger than what there is of it; it is passed over, and the archive then has no events.
    let file = dir.path().join("holes.tar");
    let mut out = tar::Builder::new(std::fs::File::create(&file).unwrap());
    let mut holes = tar::Header::new_gnu();
    holes.set_entry_type(tar::EntryType::GNUSparse);
    holes.set_size(0);
    let sparse = holes.as_gnu_mut().unwrap();
    sparse.set_real_size(1 << 30);
    sparse.sparse[0].set_offset(1 << 30);
    sparse.sparse[0].set_length(0);
    out.append_data(&mut holes, "events.jsonl", &[][..]).unwrap();
    out.into_inner().unwrap();
    let refused = events_of_archive(&file).unwrap_err();
    assert!(matches!(refused, StoreError::BadArchive { what: ArchiveFault::Lacks(_), .. }), "{refused}");
}
