//! Rows for norms: of homes that agree, by a keeper's own giving under the server's eyes, under names that only a key tells.

use crate::house::{House, event};
use axum::http::StatusCode;
use sayso_host::{NormRows, RowsKey, Stories, norm_rows};
use sayso_model::draw::heads;
use sayso_model::{Body, Consent, ConsentGiven, Event, Kind, Label, WordCard, WordId};
use sayso_norms::SummaryRow;
use sayso_people::Capability;
use serde_json::json;
use uuid::Uuid;

async fn rows(house: &House, key: u8) -> NormRows {
    let key = RowsKey::new(&[key; 32]).unwrap();
    norm_rows(&house.host.server, &house.host.people, &key, house.host.now()).await.unwrap()
}

/// A person shows a word twice; the animal has not pressed it yet.
async fn show(house: &House) {
    shown(house, false).await;
}

/// The same, and whether the animal pressed it then.
async fn shown(house: &House, pressed: bool) {
    // One that is asked of the stage in which it is shown: the other it has not come to.
    let asked = std::iter::repeat_with(|| WordId(Uuid::now_v7())).find(|word| heads(house.animal, *word));
    let word = asked.unwrap();
    let card = WordCard::new(word, Label::new("wick").unwrap());
    let of_animal = |body: serde_json::Value| {
        let body: Body = serde_json::from_value(body).unwrap();
        Event { animal: Some(house.animal), ..event(house.home, body) }
    };
    let mut events = vec![event(house.home, card)];
    for _ in 0..2 {
        let press = of_animal(json!({ "kind": "press", "word": word, "by": "person" }));
        let given = json!({ "kind": "delivery", "answers": press.id, "word": word, "answer": "given" });
        events.extend([press, of_animal(given)]);
    }
    if pressed {
        let own = of_animal(json!({ "kind": "press", "word": word, "by": "animal" }));
        events.push(Event { happened_at: own.happened_at.plus_seconds(5.0), ..own });
    }
    house.host.server.home(house.home).append(events).await.unwrap();
}

/// The columns of a row, by name.
fn columns(rows: &NormRows) -> Vec<String> {
    let row = serde_json::to_value(&rows.rows[0]).unwrap();
    row.as_object().unwrap().keys().cloned().collect()
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_is_in_from_its_giving_to_its_taking_back() {
    let house = House::new().await;
    show(&house).await;
    house.newcomer().await;
    let none = rows(&house, 1).await;
    assert_eq!((none.homes, none.agreed.len(), none.rows.len()), (2, 0, 0));
    // What came into the log by another way opens nothing.
    let slipped_in = event(house.home, ConsentGiven { consent: Consent::Norms, words_version: 1, holds: None });
    house.host.server.home(house.home).append(vec![slipped_in]).await.unwrap();
    assert_eq!(rows(&house, 1).await, none);
    let form = format!("home={}&purpose=norms&words={}", house.home, Consent::WORDS);
    let given = house.post(&house.keeper, "/sharing/consent", &form).await;
    assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
    let open = rows(&house, 1).await;
    assert_eq!((open.agreed.len(), open.rows.len()), (1, 1));
    let row = &open.rows[0];
    assert_eq!((row.exposures, row.pressed, row.learner, row.word), (2, false, 0, 1));
    assert_eq!(row.household, open.agreed[0]);
    // Another key, another name; the same, the same; and nothing of the home in it.
    assert_eq!(rows(&house, 1).await, open);
    assert_ne!(rows(&house, 2).await.agreed, open.agreed);
    let text = sayso_norms::write_rows(&open.rows).unwrap();
    for own in [house.home.to_string(), house.animal.to_string(), "Birch".into(), "Tarn".into(), "wick".into()] {
        assert!(!text.contains(&own), "{own} is in {text}");
    }
    let back = house.post(&house.keeper, "/sharing/consent/back", &form).await;
    assert_eq!(back.status, StatusCode::SEE_OTHER, "{}", back.body);
    assert_eq!(rows(&house, 1).await, none);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_row_holds_what_the_words_of_the_consent_name_and_earlier_words_keep_counting() {
    let house = House::new().await;
    shown(&house, true).await;
    // Given to the third version, which did not name the fields yet.
    let (people, now) = (&house.host.people, house.host.now());
    let session = people.session(&house.keeper.token, now).await.unwrap().unwrap();
    let by = people.may(&session, Capability::Consent, house.home, &Stories(&house.host.server), now).await.unwrap();
    let given = event(house.home, ConsentGiven { consent: Consent::Norms, words_version: 3, holds: None });
    house.host.server.home(house.home).append(vec![given.clone()]).await.unwrap();
    people.witness(&by, &given, now).await.unwrap();
    let open = rows(&house, 1).await;
    assert_eq!((open.agreed.len(), open.rows.len()), (1, 1), "what was agreed to holds");
    // Whoever adds a column writes new words: nobody agreed to more than these.
    let mut named = vec![
        "form",
        "household",
        "learner",
        "word",
        "species",
        "age_band",
        "word_kind",
        "exposures",
        "pressed",
        "days",
        "watched",
        "invited",
        "joined",
    ];
    named.sort_unstable();
    let mut fields = columns(&open);
    fields.sort_unstable();
    assert_eq!(fields, named, "neither hours nor a stage: those words did not name them");
    assert_eq!((open.rows[0].form, open.rows[0].pressed), (SummaryRow::WITHOUT_HOURS, true));
    // The home is shown both: the words as they are, and those it agreed to.
    let page = house.get(&house.keeper, "/sharing/consent").await;
    assert!(page.holds("how often it was shown before its first press"), "{}", page.body);
    assert!(page.holds("one drawn by lot from all"), "{}", page.body);
    assert!(page.holds("whole days in it until a later stage was chosen"), "{}", page.body);
    assert!(page.holds("one to six times, or seven times or more"), "{}", page.body);
    assert!(page.holds("seconds since the animal’s first showing"), "{}", page.body);
    assert!(page.holds("You agreed to version 3") && page.holds("one home among many, without names"), "{}", page.body);
    assert_eq!(page.body.matches("data-test=\"words-given\"").count(), 1, "{}", page.body);
    assert!(house.get(&house.keeper, "/sharing").await.holds("The words are more exact since then."));
    // One button agrees to the words as they are: the earlier giving is taken back and a new one stands, in that order.
    assert_eq!(page.marked("agree-newer").len(), 1, "{}", page.body);
    let form = format!("home={}&purpose=norms&club=&words={}", house.home, Consent::WORDS);
    let old = house
        .post(&house.keeper, "/sharing/consent", &form.replace(&format!("words={}", Consent::WORDS), "words=3"))
        .await;
    assert_eq!(old.status, StatusCode::UNPROCESSABLE_ENTITY, "only words that were shown: {}", old.body);
    let done = house.post(&house.keeper, "/sharing/consent", &form).await;
    assert_eq!(done.status, StatusCode::SEE_OTHER, "{}", done.body);
    let page = house.get(&house.keeper, "/sharing/consent").await;
    assert!(page.marked("agree-newer").is_empty() && !page.holds("You agreed to version 3"), "{}", page.body);
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    let open = sayso_model::consents::consents(&story, house.host.now());
    let held: Vec<u16> = open.open().flat_map(|(_, given)| given.iter().map(|one| one.words_version)).collect();
    assert_eq!(held, [Consent::WORDS], "one giving, of the words as they are");
    assert_eq!(story.as_recorded(Kind::ConsentTakenBack).count(), 1);
    // Sent once more it changes nothing.
    house.post(&house.keeper, "/sharing/consent", &form).await;
    let story = house.host.server.home(house.home).story(house.home).await.unwrap();
    assert_eq!(story.as_recorded(Kind::ConsentTakenBack).count(), 1);
    // Of the words as they are now the hours of one press and the days in one stage come in, and nothing else; a week is not over yet.
    let open = rows(&house, 1).await;
    assert_eq!((open.rows.len(), open.rows[0].form), (1, SummaryRow::FORM));
    named.extend(["hours", "stage"]);
    named.sort_unstable();
    let mut fields = columns(&open);
    fields.sort_unstable();
    assert_eq!(fields, named);
}

#[test]
fn a_short_key_is_none() {
    assert!(RowsKey::new(&[1; 31]).is_none() && RowsKey::new(&[1; 32]).is_some());
}
