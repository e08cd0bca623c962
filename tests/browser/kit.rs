//! Recording a button with the page for it, and what the laboratory makes of the file.

use crate::harness::{Browser, PATIENCE, PHONE, Server};
use crate::listen::Notebook;
use crate::sounds::{add, bed, room, say};
use fantoccini::Locator;
use sayso_lab::hearing::kit::archive::Kit;
use sayso_lab::hearing::kit::{Order, kit};
use serde_json::json;

/// The page counts down to the first press, and from press to press, in so many seconds.
const EVERY_S: f64 = 6.0;
/// A finger is as late.
const LATE_S: f64 = 0.3;

#[tokio::test(flavor = "multi_thread")]
async fn a_button_is_recorded_into_one_file_that_the_laboratory_reads() {
    let notebook = Notebook::new(1, 0).await;
    let server = Server::start(notebook.dir.path(), 0);
    // Close by the press at 2.5 s is recorded; at a distance nobody marks it, and those after it follow the countdown.
    let mut sound = bed(70, 0.0005, 2);
    add(&mut sound, &say(1, 0), 2.5, 0.5);
    for k in 1..=10 {
        add(&mut sound, &room(&say(1, 0), 0.2, 9), EVERY_S * f64::from(k) + LATE_S, 0.3);
    }
    let browser = Browser::hearing(PHONE, &notebook.sound(&sound)).await;
    browser.goto(&server.url(&format!("/a/{}/listen", notebook.animal))).await;
    browser.follow("a[href='/record-kit']").await;

    let saved = json!({ "behavior": "allow", "downloadPath": notebook.dir.path() });
    browser.devtools("Browser.setDownloadBehavior", saved).await;
    browser.tap("kit-clip").await;
    assert!(browser.text("kit-clip-said").await.starts_with("First agree above"), "nothing without consent");
    for (field, words) in [("kit-word", "word 1"), ("kit-button", "round, large"), ("kit-phone", "small, new")] {
        browser.css(&format!("#{field}")).await.send_keys(words).await.unwrap();
    }
    browser.tap("kit-clip").await;
    assert!(browser.text("kit-clip-said").await.starts_with("First agree above"), "nor with all but consent");
    browser.tap("kit-agreed").await;
    browser.tap("kit-take").await;
    assert_eq!(browser.text("kit-take-said").await, "First record “word 1” close by.");
    browser.tap("kit-clip").await;
    let close = "return document.querySelector('[data-test=kit-clip-said]').textContent.includes('close by: ')";
    browser.until("the button close by", close).await;
    browser.tap("kit-take").await;
    let marked = "return /^[3-9] presses marked/.test(document.querySelector('[data-test=kit-take-said]').textContent)";
    browser.until("three presses marked", marked).await;
    browser.picture("kit-counting").await;
    tokio::time::sleep(std::time::Duration::from_secs_f64(EVERY_S - 1.0)).await;
    browser.tap("kit-stop").await;
    browser.find("kit-kept").await;
    browser.tap("kit-save").await;
    let said = browser.text("kit-save-said").await;
    assert!(said.contains("It is on this device only; nothing was sent."), "{said}");
    browser.picture("kit-saved").await;
    let link = browser.page.find(Locator::Css("[data-test=kit-file]")).await.unwrap();
    let name = link.attr("download").await.unwrap().unwrap();
    assert!(name.starts_with("sayso-kit-") && name.ends_with(".tar"), "{name}");
    let path = notebook.dir.path().join(&name);
    let deadline = std::time::Instant::now() + PATIENCE;
    while !path.exists() {
        assert!(std::time::Instant::now() < deadline, "{name} was not saved");
        tokio::time::sleep(std::time::Duration::from_millis(100)).await;
    }
    // Nothing was asked of the notebook or sent to it once the page was there.
    let sent = "return performance.getEntriesByType('resource').filter((r) => ['fetch', 'xmlhttprequest', 'beacon'].includes(r.initiatorType)).map((r) => r.name)";
    assert_eq!(browser.page.execute(sent, vec![]).await.unwrap(), json!([]));
    browser.close().await;

    let manifest = Kit::read(&path).unwrap().manifest;
    assert!(manifest.consent.text.starts_with("Everyone who can be heard agrees"), "{manifest:?}");
    assert!(manifest.consent.at <= manifest.made_at && !manifest.consent.publish && !manifest.microphone.processed());
    assert_eq!(manifest.made_by, concat!("sayso ", env!("CARGO_PKG_VERSION")));
    let scores = kit(&Order { files: vec![path], weights: None, out: None }).unwrap();
    let all = scores.all();
    eprintln!("{}", scores.tables());
    assert!(all.presses >= 3, "{all:?}");
    // Every marked press is heard; the one at 2.5 s, which nobody marked, is the only one besides.
    assert_eq!((all.heard, all.wrong), (all.presses, 1), "{all:?}");
    assert!(all.from_mark_s.iter().all(|s| (-0.5..1.0).contains(s)), "{all:?}");
    assert_eq!(all.from_rise_s.len(), all.heard);
    assert!(all.from_rise_s.iter().all(|s| s.abs() < 0.05), "{all:?}");
}
