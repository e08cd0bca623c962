//! From an empty notebook to the first showing, counted in taps and typed fields, on the phone.

use crate::harness::{Browser, PHONE, Server, story};
use sayso_model::{Body, Delivery, Press, PressedBy};

/// What may be asked of a person before the first showing.
const MOST_TAPS: usize = 40;
const MOST_FIELDS: usize = 12;

/// A person who taps and types, and keeps count.
pub struct Person<'a> {
    pub browser: &'a Browser,
    pub taps: usize,
    pub fields: usize,
}

impl Person<'_> {
    pub async fn tap(&mut self, css: &str) {
        self.taps += 1;
        self.browser.press(css).await;
    }

    pub async fn next(&mut self, css: &str) {
        self.taps += 1;
        self.browser.follow(css).await;
    }

    /// A field is tapped, then typed into.
    pub async fn types(&mut self, name: &str, text: &str) {
        self.taps += 1;
        self.fields += 1;
        self.browser.css(&format!("[name={name}]")).await.send_keys(text).await.unwrap();
    }

    /// A list is opened by one tap, its line taken by another.
    pub async fn chooses(&mut self, name: &str, value: &str) {
        self.taps += 2;
        self.browser.css(&format!("select[name={name}]")).await.select_by_value(value).await.unwrap();
    }

    /// From the page about food, which follows the set-up, to the first showing. Pictures are of a tour of that name.
    pub async fn shows_first(&mut self, tour: &str) {
        // How much food.
        self.types("weight_kg", "20").await;
        self.chooses("life_stage", "neutered_adult").await;
        self.browser.picture(&format!("{tour}-2-food")).await;
        self.next("main form button.primary").await;
        // What Bo might like: each a tap.
        for idea in ["cheese", "tug", "rub", "garden"] {
            self.tap(&format!("label.chip:has([value={idea}])")).await;
        }
        self.browser.picture(&format!("{tour}-3-ideas")).await;
        self.next("main form button.primary").await;
        // First words as proposed.
        self.browser.picture(&format!("{tour}-4-words")).await;
        self.next("main form.card button.primary").await;
        // Places as proposed.
        self.browser.picture(&format!("{tour}-5-places")).await;
        self.next("main form button.primary").await;
        // The board, and the first showing.
        self.tap("[data-test=start]").await;
        self.browser.picture(&format!("{tour}-6-board")).await;
        self.tap("[data-test=pad-cheese]").await;
        self.browser.until("to be given", "return !!document.querySelector('.pad[data-state=give]')").await;
        // A second touch at once would be taken for a slip.
        tokio::time::sleep(std::time::Duration::from_millis(420)).await;
        self.tap("[data-test=pad-cheese]").await;
        self.tap("[data-test=then-took]").await;
        self.browser.all_sent().await;
    }
}

#[tokio::test(flavor = "multi_thread")]
async fn the_first_showing_takes_no_more_than_40_taps_and_12_fields() {
    let dir = tempfile::tempdir().unwrap();
    let server = Server::start(dir.path(), 0);
    let browser = Browser::open(PHONE).await;
    let mut person = Person { browser: &browser, taps: 0, fields: 0 };
    browser.goto(&server.url("/")).await;
    browser.picture("first-1-start").await;
    person.types("you", "Ilda").await;
    person.types("animal", "Bo").await;
    person.types("others", "Robin, Sam").await;
    let zone = browser.css("[data-zone-name]").await.text().await.unwrap();
    assert!(!zone.is_empty(), "the browser guesses where they live");
    person.next("form button.primary").await;
    person.shows_first("first").await;
    let (taps, fields) = (person.taps, person.fields);
    browser.close().await;
    drop(server);
    println!("from an empty notebook to the first showing: {taps} taps, {fields} fields");
    assert!(taps <= MOST_TAPS && fields <= MOST_FIELDS, "{taps} taps, {fields} fields");

    let (_, story) = story(dir.path()).await;
    let bo = *story.animals().keys().next().unwrap();
    let mut says: Vec<_> = story.words_of(bo).iter().map(|w| w.says.to_string()).collect();
    says.sort();
    assert_eq!(says, ["cheese", "rub", "tug"], "short labels, and never the garden");
    assert_eq!(story.people().len(), 3);
    assert!(story.of::<Press>(bo).any(|p| p.part.by == PressedBy::Person));
    assert_eq!(story.of::<Delivery>(bo).count(), 1);
    assert!(story.ledger().all().all(|e| !matches!(&e.body, Body::Withdrawal(_))));
}
