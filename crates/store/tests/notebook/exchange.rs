//! Files out and in again, and what is said about files that are not right.

use crate::common::*;
use sayso_model::*;
use sayso_store::{Appended, Format, ImportOptions, Imported, Others, Preview, Revision, Store, StoreError};
use std::collections::BTreeMap;

async fn store() -> (tempfile::TempDir, Store) {
    let dir = tempfile::tempdir().unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    (dir, store)
}

async fn all(store: &Store) -> BTreeMap<EventId, Event> {
    store.events(Revision(0), usize::MAX).await.unwrap().into_iter().map(|l| (l.event.id, l.event)).collect()
}

async fn look(store: &Store, text: &str) -> Preview {
    let options = ImportOptions { format: Format::Csv, home: Some(home()) };
    store.preview(text.as_bytes(), &options).await.unwrap()
}

/// The problems of a file as "line field: found; wanted".
fn told(preview: &Preview) -> Vec<String> {
    preview.problems.iter().map(ToString::to_string).collect()
}

/// A household with names.
async fn named_home() -> (tempfile::TempDir, Store) {
    let (dir, store) = store().await;
    let card = |n, body: Body| Event { animal: None, ..event(n, "2026-01-01T08:00:00Z", body) };
    let animal = AnimalCard::new(rex(), Label::new("Rex").unwrap(), Species::Dog);
    let word = |n: u128, says: &str| WordCard::new(WordId(id(n)), Label::new(says).unwrap());
    let out = store
        .append(vec![
            card(900, home_card("Europe/Berlin").into()),
            card(901, animal.into()),
            card(902, word(7, "walk").into()),
            card(903, word(8, "water").into()),
        ])
        .await
        .unwrap();
    assert!(out.iter().all(|o| *o == Appended::New));
    (dir, store)
}

#[tokio::test]
async fn everything_exported_and_imported_is_the_same_set_of_events() {
    let (_dir, one) = store().await;
    let mut events = sayso_sim::samples();
    // Awkward values: formulas, quotes, line breaks, floats that need every digit, times between seconds.
    let first = events.iter().find(|e| e.body.kind() == Kind::Remark).unwrap().clone();
    for (n, text) in
        ["=1+1", "'=1", "a \"quoted\", one; two\nthree", "-5", "[1]", "true", "x|y", "＝a"].into_iter().enumerate()
    {
        let remark = Remark { text: Note::new(text).unwrap() };
        let id = EventId(id(0x9_0000 + n as u128));
        events.push(Event {
            id,
            happened_at: first.happened_at.plus_seconds(0.001),
            body: remark.into(),
            ..first.clone()
        });
    }
    let delivery = Delivery {
        answers: None,
        word: WordId(id(7)),
        answer: Answer::Given,
        alternative: None,
        delay_s: Some(Seconds::new(0.1 + 0.2).unwrap()),
        then: None,
        then_word: None,
        session: None,
    };
    let of = first.id;
    let inner =
        Correction { of, happened_at: Some(first.happened_at), animal: first.animal, body: Box::new(delivery.into()) };
    events.push(Event { id: EventId(id(0x9_1000)), body: inner.into(), ..first });
    one.append(events.clone()).await.unwrap();
    let wanted = all(&one).await;
    assert_eq!(wanted.len(), events.len());
    for format in [Format::JsonLines, Format::Csv] {
        let mut file = Vec::new();
        assert_eq!(one.export(format, &mut file).await.unwrap(), events.len());
        let (_dir, two) = store().await;
        let preview = two.preview(&file, &ImportOptions { format, home: None }).await.unwrap();
        assert_eq!(told(&preview), Vec::<String>::new(), "{}", String::from_utf8_lossy(&file));
        assert_eq!(preview.new, events.len());
        assert!(all(&two).await.is_empty(), "a preview stores nothing");
        two.commit(preview, Others::Refuse).await.unwrap();
        assert_eq!(all(&two).await, wanted);
        // Once more adds nothing.
        let again = two.preview(&file, &ImportOptions { format, home: None }).await.unwrap();
        assert_eq!((again.new, again.duplicates, again.bad_rows), (0, events.len(), 0));
        assert_eq!(two.commit(again, Others::Refuse).await.unwrap(), Imported { new: 0, duplicates: events.len() });
    }
}

#[tokio::test]
async fn a_puppy_s_grown_weight_goes_in_and_out_and_earlier_names_are_read() {
    let (_dir, store) = named_home().await;
    let csv = "kind,happened_at,animal_card.animal,name,species,life_stage,weight_kg,adult_weight_kg\n\
               animal_card,2026-03-01T18:30:00Z,Rex,Rex,dog,puppy,8,24.5\n";
    let preview = look(&store, csv).await;
    assert_eq!(told(&preview), Vec::<String>::new());
    store.commit(preview, Others::Refuse).await.unwrap();
    let card = store.story(home()).await.unwrap().animals()[&rex()].clone();
    assert_eq!(card.adult_weight_kg.map(Kilograms::get), Some(24.5));
    for format in [Format::JsonLines, Format::Csv] {
        let mut file = Vec::new();
        store.export(format, &mut file).await.unwrap();
        let text = String::from_utf8(file).unwrap();
        assert!(text.contains("adult_weight_kg") && text.contains("24.5"), "{text}");
    }
    let smaller = csv.replace("24.5", "7").replace("18:30", "18:31");
    assert!(told(&look(&store, &smaller).await).join(" ").contains("adult_weight_kg"));
    let earlier = "kind,happened_at,animal_card.animal,name,species,life_stage,weight_kg\n\
                   animal_card,2026-03-02T18:30:00Z,Rex,Rex,dog,puppy_under_4_months,8\n";
    let preview = look(&store, earlier).await;
    assert_eq!(told(&preview), Vec::<String>::new());
    store.commit(preview, Others::Refuse).await.unwrap();
    let card = store.story(home()).await.unwrap().animals()[&rex()].clone();
    assert_eq!((card.life_stage, card.adult_weight_kg), (Some(LifeStage::PuppyUnder4Months), None));
}

#[tokio::test]
async fn a_hand_written_table_with_names_and_local_times_is_read() {
    let (_dir, store) = named_home().await;
    let csv = "kind;happened_at;animal;word;by;answer;delay_s;body.kind\r\n\
               press;2026-03-01 18:30;rex;Walk;animal;;;\r\n\
               press;2026-03-01 18:30;rex;Walk;animal;;;\r\n\
               ;;;;;;;\r\n\
               delivery;2026-07-01T18:30:05;Rex;water;;given;1.5;\r\n";
    let csv = format!("\u{feff}{csv}");
    let preview = look(&store, &csv).await;
    assert_eq!(told(&preview), Vec::<String>::new());
    assert_eq!((preview.rows, preview.new, preview.duplicates), (3, 3, 0));
    assert_eq!(preview.kinds, BTreeMap::from([("press", 2), ("delivery", 1)]));
    store.commit(preview, Others::Refuse).await.unwrap();
    let story = store.story(home()).await.unwrap();
    let presses: Vec<_> = story.of::<Press>(rex()).map(|f| (f.part.word, f.at().to_string(), f.source())).collect();
    let wanted = (WordId(id(7)), "2026-03-01T17:30:00.000Z".to_owned(), Source::Import);
    assert_eq!(presses, [wanted.clone(), wanted]);
    let delivery = story.of::<Delivery>(rex()).next().unwrap();
    assert_eq!(delivery.at().to_string(), "2026-07-01T16:30:05.000Z");
    assert_eq!(delivery.part.delay_s, Seconds::new(1.5).ok());
    // The same file again, and a longer one of which it is a part.
    let again = look(&store, &csv).await;
    assert_eq!((again.new, again.duplicates), (0, 3));
    let longer = look(&store, &format!("{csv}press;2026-03-01 18:30;rex;Walk;animal;;;\n")).await;
    assert_eq!((longer.new, longer.duplicates), (1, 3));
}

#[tokio::test]
async fn a_file_may_bring_its_own_cards_and_use_their_names() {
    let (_dir, store) = store().await;
    let table = |zone: &str| {
        format!(
            "kind,happened_at,animal,name,species,says,word,by,session,purpose,home_card.zone\n\
             press,2026-01-02 09:00,Momo,,,,food,animal,morning 1,,\n\
             home_card,2026-01-01T00:00:00Z,,Home,,,,,,,{zone}\n\
             animal_card,2026-01-01T00:00:00Z,,Momo,cat,,,,,,\n\
             word_card,2026-01-01T00:00:00Z,,,,food,,,,,\n\
             session_start,2026-01-02 08:59,Momo,,,,,,Morning 1,showing,\n"
        )
    };
    // Without the household's zone, local times cannot be read.
    let problems = told(&look(&store, &table("")).await);
    assert!(problems.iter().any(|p| p.starts_with("line 3, home_card.zone: wanted a value")), "{problems:?}");
    assert!(problems.iter().any(|p| p.starts_with("line 2, happened_at:") && p.contains("offset")), "{problems:?}");
    let preview = look(&store, &table("Asia/Tokyo")).await;
    assert_eq!(told(&preview), Vec::<String>::new());
    store.commit(preview, Others::Refuse).await.unwrap();
    let story = store.story(home()).await.unwrap();
    let momo = *story.animals().keys().next().unwrap();
    let press = story.of::<Press>(momo).next().unwrap();
    assert_eq!(press.at().to_string(), "2026-01-02T00:00:00.000Z", "nine o'clock in Tokyo");
    assert!(story.words().contains_key(&press.part.word));
    assert_eq!(press.part.session, Some(story.sessions(momo)[0].id()));
}

#[tokio::test]
async fn each_problem_names_its_line_field_finding_and_remedy() {
    let (_dir, store) = named_home().await;
    let csv = "kind,happened_at,animal,word,by,answer,delay_s,pieces\n\
               press,2026-03-01 18:30,Rex,wlak,animal,,,\n\
               press,2026-10-25 02:30,Rex,walk,animal,,,\n\
               pres,2026-03-01 18:30,Rex,walk,animal,,,\n\
               press,2026-03-01 18:30,Rex,walk,dog,,,\n\
               press,2026-03-01 18:30,Rex,walk,animal,given,,\n\
               delivery,2026-03-01 18:30,Rex,walk,,given,\"1,5\",\n\
               delivery,2026-03-01 18:30,Rex,walk,,given,-1,\n\
               delivery,2026-03-01 18:30,Rex,walk,,,1,\n\
               leaving,2026-03-01 18:30,Rex,,,,,\n\
               press,2026-03-01 18:30,Rex,walk,animal\n\
               press,2026-03-01 18:30,Rex,walk,animal,,,\n";
    let preview = look(&store, csv).await;
    let wanted = [
        (2, "word", "wlak", "walk, water"),
        (3, "happened_at", "2026-10-25 02:30", "comes twice"),
        (4, "kind", "pres", "one of:"),
        (5, "by", "dog", "one of: animal, person, unknown"),
        (6, "answer", "given", "press has no such field"),
        (7, "delay_s", "1,5", "a number with a point"),
        (8, "delay_s", "-1", "0 to 86400"),
        (9, "answer", "", "one of: given"),
        (10, "session", "", "a value"),
        (11, "row", "5", "8 cells"),
    ];
    for (problem, (line, field, found, part)) in preview.problems.iter().zip(wanted) {
        assert_eq!((problem.line, problem.field.as_str(), problem.found.as_str()), (line, field, found));
        // Numbers in the model's own words come as 86400.0 or 86400.
        assert!(problem.wanted.to_string().contains(part), "{problem}");
    }
    assert_eq!((preview.rows, preview.bad_rows, preview.new), (11, 10, 1));
    let before = store.revision().await.unwrap();
    let refused = store.commit(preview.clone(), Others::Refuse).await.unwrap_err();
    assert!(matches!(refused, StoreError::NotImported(_)), "{refused}");
    assert_eq!(store.revision().await.unwrap(), before, "nothing half-imported");
    assert_eq!(
        store.commit(preview.without_bad_rows(), Others::Refuse).await.unwrap(),
        Imported { new: 1, duplicates: 0 }
    );
}

#[tokio::test]
async fn files_that_are_no_tables_are_refused_in_words() {
    let (_dir, store) = named_home().await;
    let csv = "kind,happened_at,animal,word,by\npress,2026-03-01 18:30,Rex,wälk,animal\n";
    let utf16: Vec<u8> = csv.encode_utf16().flat_map(u16::to_le_bytes).collect();
    let marked: Vec<u8> = [0xff, 0xfe].into_iter().chain(utf16.clone()).collect();
    let latin1: Vec<u8> = csv.chars().map(|c| u8::try_from(c as u32).unwrap()).collect();
    let long = format!("{csv}{}\n", "x".repeat(300_000));
    let cases: [(&[u8], &str); 9] = [
        (&utf16, "UTF-8"),
        (&marked, "UTF-8"),
        (&latin1, "Latin-1"),
        (long.as_bytes(), "line: found \"300000\"; wanted at most"),
        (b"", "a first row"),
        (b"colour,size\nred,2\n", "a column such as"),
        (b"kind,word\npress,walk\n", "happened_at"),
        (b"kind,kind,happened_at\n", "each column once"),
        (b"kind,happened_at,text\nremark,2026-03-01 18:30,\"never closed\nremark,2026-03-01 18:31,x\n", "closed"),
    ];
    let options = ImportOptions { format: Format::Csv, home: None };
    for (bytes, part) in cases {
        let preview = store.preview(bytes, &options).await.unwrap();
        assert_eq!(preview.new, 0);
        assert!(told(&preview).join("\n").contains(part), "{part}: {:?}", told(&preview));
        assert!(store.commit(preview, Others::Refuse).await.is_err());
    }
    let options = ImportOptions { format: Format::JsonLines, home: None };
    for (json, part) in [
        ("{\"a\":1", "as JSON"),
        ("[1]", "JSON object"),
        ("{}", "one of: "),
        (
            "{\"happened_at\":\"2026-03-01T10:00:00Z\",\"body\":{\"kind\":\"remark\",\"text\":\"  \"}}",
            "must not be empty",
        ),
        (
            "{\"happened_at\":\"2026-03-01T10:00:00Z\",\"bdy\":{},\"body\":{\"kind\":\"remark\",\"text\":\"a\"}}",
            "no such field",
        ),
    ] {
        let preview = store.preview(json.as_bytes(), &options).await.unwrap();
        assert!(told(&preview).join("\n").contains(part), "{part}: {:?}", told(&preview));
    }
}

#[tokio::test]
async fn an_id_taken_by_another_event_is_a_problem_and_a_late_conflict_undoes_the_import() {
    let (_dir, store) = named_home().await;
    let line = |n: u128, text: &str| {
        let remark = Remark { text: Note::new(text).unwrap() };
        serde_json::to_string(&event(n, "2026-03-01T10:00:00Z", remark)).unwrap()
    };
    let options = ImportOptions { format: Format::JsonLines, home: None };
    let file = [line(1, "a"), line(2, "b"), line(1, "c"), line(2, "b")].join("\n");
    let preview = store.preview(file.as_bytes(), &options).await.unwrap();
    assert_eq!((preview.new, preview.duplicates, preview.bad_rows), (2, 1, 1));
    assert_eq!((preview.problems[0].line, preview.problems[0].field.as_str()), (3, "id"));

    let file = [line(3, "a"), line(4, "b")].join("\n");
    let preview = store.preview(file.as_bytes(), &options).await.unwrap();
    let late = event(4, "2026-03-01T10:00:00Z", Remark { text: Note::new("other").unwrap() });
    store.append(vec![late]).await.unwrap();
    let before = store.revision().await.unwrap();
    assert!(matches!(store.commit(preview, Others::Refuse).await, Err(StoreError::NotImported(_))));
    assert_eq!(store.revision().await.unwrap(), before);
}
