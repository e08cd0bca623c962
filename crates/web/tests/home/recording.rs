//! Recordings of words: taken in, checked, drawn and played.

use crate::sounds;

use crate::at_home::Home;
use axum::http::StatusCode;

async fn word(home: &Home, says: &str) -> String {
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", says)]).await;
    let id = answer.kept().to.split(['/', '?']).nth(5).unwrap().to_owned();
    format!("/a/{}/words/card/{id}", home.animal)
}

fn as_form(sound: &[u8]) -> Vec<u8> {
    let mut body = b"--edge\r\nContent-Disposition: form-data; name=\"sound\"; filename=\"a.wav\"\r\nContent-Type: audio/wav\r\n\r\n".to_vec();
    body.extend(sound);
    body.extend(b"\r\n--edge--\r\n");
    body
}

const FORM: &str = "multipart/form-data; boundary=edge";

#[tokio::test]
async fn a_recording_is_taken_checked_drawn_and_played() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball").await, word(&home, "walk").await);
    home.page(&ball).await.says("No recording is kept here").does_not_say("<audio");
    let sound = sounds::wav(&sounds::say(0, 0));
    home.post_bytes(&format!("{ball}/recording"), FORM, as_form(&sound)).await.kept();
    home.post_bytes(&format!("{walk}/recording"), "audio/wav", sounds::wav(&sounds::say(1, 0))).await.kept();
    let story = home.story().await;
    let card = story.clips().into_values().find(|c| ball.ends_with(&c.word.to_string())).unwrap().clone();
    assert!((card.seconds.get() - sounds::say(0, 0).len() as f64 / 16_000.0).abs() < 1e-6 && card.lufs.is_some());
    let page = home.page(&ball).await;
    page.says("Listen for yourself: play it on its button from another room")
        .says(&format!("src=\"/clips/{}\"", card.sha256))
        .says("<path")
        .says("the other one")
        .says("Most like \u{201c}walk\u{201d}");
    let played = home.get(&format!("/clips/{}", card.sha256)).await;
    assert_eq!(played.status, StatusCode::OK);
    assert!(played.text.starts_with("RIFF"));
}

#[tokio::test]
async fn the_same_sound_for_two_words_is_pointed_out_and_a_new_one_takes_its_place() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball").await, word(&home, "walk").await);
    let sound = sounds::wav(&sounds::say(0, 0));
    home.post_bytes(&format!("{ball}/recording"), "audio/wav", sound.clone()).await.kept();
    home.post_bytes(&format!("{walk}/recording"), "audio/wav", sound.clone()).await.kept();
    home.page(&walk).await.says("Nearly the same sound as \u{201c}ball\u{201d}");
    home.post_bytes(&format!("{walk}/recording"), "audio/wav", sounds::wav(&sounds::say(1, 0))).await.kept();
    home.page(&walk).await.does_not_say("Nearly the same sound");
    let story = home.story().await;
    assert_eq!(story.clips().into_values().filter(|c| c.active).count(), 2);
    // The very same sound again changes nothing.
    let before = home.state.store.revision().await.unwrap();
    home.post_bytes(&format!("{ball}/recording"), "audio/wav", sound).await.kept();
    assert_eq!(home.state.store.revision().await.unwrap(), before);
}

#[tokio::test]
async fn what_is_no_recording_is_refused_in_words_and_kept_nowhere() {
    let home = Home::new().await;
    let to = format!("{}/recording", word(&home, "ball").await);
    home.post_bytes(&to, "audio/wav", vec![7; 5000]).await.refused().says("it is no sound file that can be read");
    home.post_bytes(&to, "audio/wav", sounds::wav(&[0.0; 16_000])).await.refused().says("silent");
    home.post_bytes(&to, FORM, as_form(b"")).await.refused().says("choose a sound file");
    let long: Vec<f32> = sounds::say(0, 0).into_iter().cycle().take(6 * 16_000).collect();
    home.post_bytes(&to, "audio/wav", sounds::wav(&long)).await.refused().says("6.00 s");
    let large = home.post_bytes(&to, "audio/wav", vec![0; 17 << 20]).await;
    assert_eq!(large.status, StatusCode::PAYLOAD_TOO_LARGE);
    large.says("16,777,216 bytes");
    assert!(home.story().await.clips().is_empty());
    assert!(home.state.store.clips().await.unwrap().is_empty());
    for nowhere in ["/clips/..%2Fsayso.db", &format!("/clips/{}", "0".repeat(64))] {
        assert_eq!(home.get(nowhere).await.status, StatusCode::NOT_FOUND, "{nowhere}");
    }
}

/// Clips of a word, in use or not.
async fn clips(home: &Home, word: &str, active: bool) -> Vec<String> {
    let story = home.story().await;
    let all = story.clips().into_values().filter(|c| word.ends_with(&c.word.to_string()) && c.active == active);
    all.map(|c| c.clip.to_string()).collect()
}

#[tokio::test]
async fn two_buttons_of_one_word_have_a_recording_each_and_former_ones_stay() {
    let home = Home::new().await;
    let ball = word(&home, "ball").await;
    let to = |replaces: &str| format!("{ball}/recording?replaces={replaces}");
    home.post_bytes(&to(""), "audio/wav", sounds::wav(&sounds::say(0, 0))).await.kept();
    let first = clips(&home, &ball, true).await.remove(0);
    home.post_bytes(&to("none"), "audio/wav", sounds::wav(&sounds::say(1, 0))).await.kept();
    assert_eq!(clips(&home, &ball, true).await.len(), 2);
    home.page(&ball).await.says("Button 1 of 2").says("Button 2 of 2").says("Another button with the same word");
    // Only the named one gives way.
    home.post_bytes(&to(&first), "audio/wav", sounds::wav(&sounds::say(2, 0))).await.kept();
    assert_eq!(clips(&home, &ball, false).await, std::slice::from_ref(&first));
    assert_eq!(clips(&home, &ball, true).await.len(), 2);
    home.page(&ball).await.says("Former recordings (1)");
    // What is listened for names one word with two clips.
    let heard = home.get(&format!("/a/{}/ear", home.animal)).await;
    assert_eq!(heard.text.matches("\"says\":\"ball\"").count(), 2, "{}", heard.text);
    let put = |clip: &str| format!("{ball}/recording/{clip}");
    home.post(&put(&first), &[("active", "yes")]).await.kept();
    assert_eq!(clips(&home, &ball, true).await.len(), 3);
    home.post(&put(&first), &[]).await.kept();
    assert_eq!(clips(&home, &ball, false).await, [first]);
    // A new recording in place of all of them.
    home.post_bytes(&to(""), "audio/wav", sounds::wav(&sounds::say(3, 0))).await.kept();
    assert_eq!((clips(&home, &ball, true).await.len(), clips(&home, &ball, false).await.len()), (1, 3));
    for wrong in [to("7"), to(&uuid::Uuid::now_v7().to_string())] {
        let answer = home.post_bytes(&wrong, "audio/wav", sounds::wav(&sounds::say(4, 0))).await;
        assert_eq!(answer.status, StatusCode::NOT_FOUND, "{wrong}");
    }
}

#[tokio::test]
async fn a_script_is_told_in_json_what_the_check_found() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball").await, word(&home, "walk").await);
    let sound = sounds::wav(&sounds::say(0, 0));
    let told = home.post_for_json(&format!("{ball}/recording"), sound.clone()).await;
    assert_eq!(told.status, StatusCode::OK, "{}", told.text);
    told.says("\"findings\":[]");
    home.post_for_json(&format!("{walk}/recording"), sound).await.says("Nearly the same sound as \u{201c}ball\u{201d}");
    let refused = home.post_for_json(&format!("{walk}/recording"), sounds::wav(&[0.0; 16_000])).await;
    assert_eq!(refused.status, StatusCode::UNPROCESSABLE_ENTITY);
    refused.says("silent").does_not_say("<html");
}

#[tokio::test]
async fn a_proof_press_is_judged_and_nothing_is_noted() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball").await, word(&home, "walk").await);
    let at = |card: &str| format!("/a/{}/words/prove/{}", home.animal, card.rsplit('/').next().unwrap());
    let mut scene = sounds::bed(5, 0.001, 3);
    sounds::add(&mut scene, &sounds::say(0, 0), 1.5, 0.4);
    let press = sounds::wav(&scene);
    let without = home.post_for_json(&at(&ball), press.clone()).await;
    assert_eq!(without.status, StatusCode::SERVICE_UNAVAILABLE, "{}", without.text);
    home.post_bytes(&format!("{ball}/recording"), "audio/wav", sounds::wav(&sounds::say(0, 0))).await.kept();
    home.post_bytes(&format!("{walk}/recording"), "audio/wav", sounds::wav(&sounds::say(1, 0))).await.kept();
    let before = home.state.store.revision().await.unwrap();
    home.post_for_json(&at(&ball), press.clone()).await.says("\"outcome\":\"heard\"");
    let word = ball.rsplit('/').next().unwrap().to_owned();
    home.post_for_json(&at(&walk), press).await.says("\"outcome\":\"another_word\"").says(&word);
    home.post_for_json(&at(&walk), sounds::wav(&[0.0; 16_000])).await.says("\"outcome\":\"nothing\"");
    home.post_for_json(&at(&ball), vec![7; 900]).await.refused();
    assert_eq!(home.state.store.revision().await.unwrap(), before, "nothing is noted");
}

#[tokio::test]
async fn several_buttons_in_one_sound_are_cut_apart() {
    let home = Home::new().await;
    let all = format!("/a/{}/words/record", home.animal);
    home.page(&all).await.says("There are no words on this board yet");
    word(&home, "ball").await;
    word(&home, "walk").await;
    home.page(&all).await.says("Press the 2 buttons").says("batter").says("client/buttons.js");
    home.page(&format!("/a/{}/words", home.animal)).await.says(&all);
    // Longer than any single recording.
    let mut scene = sounds::bed(64, 0.001, 3);
    for (w, t) in [(0, 2.0), (1, 61.0)] {
        sounds::add(&mut scene, &sounds::say(w, 0), t, 0.4);
    }
    let cut = home.post_for_json(&format!("/a/{}/words/cut", home.animal), sounds::wav(&scene)).await;
    assert_eq!(cut.text.matches("\"from\":").count(), 2, "{}", cut.text);
}
