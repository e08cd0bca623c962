//! A word's recording taken with the browser's microphone.

use crate::harness::{Browser, PHONE, Server, has_module, story};
use crate::listen::Notebook;
use crate::sounds::{RATE, add, bed, say};
use sayso_listen::{Clip, stretches};

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
    // The proof: the microphone plays the same button again.
    browser.tap("prove").await;
    browser.until("proved", "return document.getElementById('proof').dataset.outcome === 'heard'").await;
    assert!(browser.text("proof-state").await.starts_with("Heard. Ready."), "{}", browser.text("proof-state").await);
    browser.picture("proved").await;
    browser.close().await;
    drop(server);

    let (_, story) = story(notebook.dir.path()).await;
    assert_eq!(story.heard_presses().count(), 0, "a proof is no press");
    let clip = story.clips().into_values().find(|c| c.word == notebook.words[1]).expect("a recording").clone();
    let true_s = say(1, 0).len() as f64 / RATE as f64;
    assert!((clip.seconds.get() - true_s).abs() < 0.25, "{} s, in truth {true_s} s", clip.seconds.get());
}

/// What the proof of word 1 said while something sounded.
async fn proof(browser: &Browser, server: &Server, notebook: &Notebook) -> (String, String) {
    browser.goto(&server.url(&format!("/a/{}/words/card/{}", notebook.animal, notebook.words[1]))).await;
    browser.tap("prove").await;
    let over = "return !['listening', 'judging', undefined].includes(document.getElementById('proof').dataset.outcome)";
    browser.until("judged", over).await;
    let outcome = browser.css("#proof").await.attr("data-outcome").await.unwrap().unwrap();
    (outcome, browser.text("proof-state").await)
}

/// A room in which this sounds.
fn sounding(x: &[f32]) -> Vec<f32> {
    let mut sound = bed(6, 0.0005, 2);
    add(&mut sound, x, 1.5, 0.5);
    sound
}

#[tokio::test(flavor = "multi_thread")]
async fn a_fresh_saying_and_another_button_are_told_from_the_recording() {
    let notebook = Notebook::new(2, 2).await;
    let server = Server::start(notebook.dir.path(), 0);
    let browser = Browser::hearing(PHONE, &notebook.sound(&sounding(&say(1, 4)))).await;
    let (outcome, said) = proof(&browser, &server, &notebook).await;
    assert_eq!(outcome, "another_sound", "{said}");
    assert!(said.contains("not a voice"), "{said}");
    browser.picture("proof-another-sound").await;
    browser.close().await;
    // Where the browser cannot hear by itself, the notebook does.
    let browser = Browser::sending(PHONE, &notebook.sound(&sounding(&say(0, 0)))).await;
    let (outcome, said) = proof(&browser, &server, &notebook).await;
    assert_eq!(outcome, "another_word", "{said}");
    assert!(said.contains("word 0") && said.contains("word 1"), "{said}");
    browser.close().await;
    drop(server);
    let (_, story) = story(notebook.dir.path()).await;
    assert_eq!(story.heard_presses().count(), 0, "a proof is no press");
}

const STEP: &str = "return document.getElementById('buttons').dataset.step";

#[tokio::test(flavor = "multi_thread")]
async fn all_buttons_are_recorded_in_one_go_named_kept_and_proved() {
    // What counts the sounds while they are recorded.
    if !has_module() {
        return;
    }
    let notebook = Notebook::new(3, 0).await;
    let server = Server::start(notebook.dir.path(), 0);
    let mut sound = bed(12, 0.0005, 2);
    // A voice comes third: a sound too many.
    for (x, t) in [(say(0, 0), 1.5), (say(1, 0), 4.5), (say(9, 0), 7.0), (say(2, 0), 9.5)] {
        add(&mut sound, &x, t, 0.5);
    }
    let browser = Browser::hearing(PHONE, &notebook.sound(&sound)).await;
    browser.goto(&server.url(&format!("/a/{}/words/record", notebook.animal))).await;
    browser.picture("buttons-begin").await;
    browser.tap("buttons-go").await;
    browser.until("recording", &format!("{STEP} === 'record'")).await;
    browser.picture("buttons-record").await;
    let all =
        "return document.querySelector('[data-test=buttons-state]').textContent.startsWith('4 sounds for 3 words')";
    browser.until("four sounds", all).await;
    browser.tap("buttons-go").await;
    browser.until("cut", &format!("{STEP} === 'name'")).await;
    let names = || async {
        let script = "return [...document.querySelectorAll('[data-test=sound]')].map((s) => s.dataset.name).join()";
        browser.page.execute(script, vec![]).await.unwrap().as_str().unwrap().to_owned()
    };
    assert_eq!(names().await, "word 0,word 1,word 2,");
    assert!(browser.text("buttons-state").await.starts_with("More sounds (4) than words (3)"));
    browser.tap("drop-2").await;
    assert_eq!(names().await, "word 0,word 1,,word 2");
    assert!(browser.text("buttons-state").await.starts_with("As many sounds as words (3)"));
    browser.picture("buttons-name").await;
    browser.tap("buttons-keep").await;
    browser.until("kept", &format!("{STEP} === 'prove'")).await;
    browser.tap("prove").await;
    browser.find("proof-next").await;
    assert!(browser.text("proof-state").await.starts_with("Heard. Ready."));
    browser.picture("buttons-prove").await;
    browser.tap("proof-next").await;
    browser.tap("proof-skip").await;
    browser.tap("proof-skip").await;
    browser.until("done", &format!("{STEP} === 'done'")).await;
    assert_eq!(browser.text("buttons-state").await, "Proved: 1 of 3 were heard surely.");
    browser.close().await;
    drop(server);
    let (_, story) = story(notebook.dir.path()).await;
    assert_eq!(story.heard_presses().count(), 0, "no proof is a press");
    let mut cut = stretches(&Clip::from_samples("", sound, RATE as u32).unwrap()).sounds;
    cut.remove(2);
    for (w, word) in notebook.words.iter().enumerate() {
        let clip = story.clips().into_values().find(|c| c.word == *word).expect("a recording").clone();
        // As the same sound is cut without a browser between; `crates/listen/tests/engine/stretches.rs` holds that to the truth.
        let cut_s = (cut[w].to - cut[w].from) as f64 / RATE as f64;
        assert!((clip.seconds.get() - cut_s).abs() < 0.1, "word {w}: {} s, cut here {cut_s}", clip.seconds.get());
    }
}
