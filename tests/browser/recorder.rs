//! A word's recording taken with the browser's microphone.

use crate::harness::{Browser, PHONE, Server, story};
use crate::listen::Notebook;
use crate::sounds::{RATE, add, bed, say};

#[tokio::test(flavor = "multi_thread")]
async fn a_word_is_recorded_heard_kept_and_checked() {
    let notebook = Notebook::new(2, 1).await;
    let server = Server::start(notebook.dir.path(), 0);
    // The word twice within what is recorded at most, as the first may be missed while the microphone opens.
    let mut sound = bed(6, 0.0005, 2);
    add(&mut sound, &say(1, 0), 1.5, 0.5);
    let browser = Browser::hearing(PHONE, &notebook.sound(&sound)).await;
    let card = format!("/a/{}/words/card/{}", notebook.animal, notebook.words[1]);
    browser.goto(&server.url(&card)).await;
    browser.tap("record").await;
    browser
        .until(
            "recording",
            "return document.querySelector('[data-test=record-state]').textContent.startsWith('Recording')",
        )
        .await;
    browser.picture("recording").await;
    browser.find("record-keep").await;
    let said = browser.text("record-state").await;
    assert!(said.contains("silence at both ends cut off"), "{said}");
    assert!(browser.find("record-play").await.attr("src").await.unwrap().unwrap().starts_with("blob:"));
    browser.follow("[data-test=record-keep]").await;
    let page = browser.css("#recording").await.text().await.unwrap();
    assert!(page.contains("Waveform") && page.contains("the other one"), "{page}");
    browser.picture("recorded").await;
    browser.close().await;
    drop(server);

    let (_, story) = story(notebook.dir.path()).await;
    let clip = story.clips().into_values().find(|c| c.word == notebook.words[1]).expect("a recording").clone();
    let true_s = say(1, 0).len() as f64 / RATE as f64;
    assert!((clip.seconds.get() - true_s).abs() < 0.25, "{} s, in truth {true_s} s", clip.seconds.get());
}
