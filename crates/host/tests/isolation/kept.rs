//! What a home keeps under a hash or an id that no event has: recordings, pictures, files that wait to be taken in.

use crate::foreign::{FORM, alike};
use crate::house::{Asker, House};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use uuid::Uuid;

/// Addresses that name such, all asked here.
pub const BY_HASH_OR_ID: [&str; 6] = [
    "/a/{animal}/ear/{clip}",
    "/a/{animal}/words/card/{word}/recording/{clip}",
    "/clips/{hash}",
    "/pictures/{hash}",
    "/exchange/{id}",
    "/exchange/{id}/away",
];

/// A true picture.
const PICTURE: &[u8] = include_bytes!("../../../web/src/assets/icon-192.png");

/// Half a second of a tone that rises, 16 bits at 16 kHz.
fn recording() -> Vec<u8> {
    let samples: Vec<u8> = (0..8_000)
        .map(|n| f64::from(n) / 16_000.0)
        .flat_map(|t| ((20_000.0 * (2.0 * std::f64::consts::PI * (400.0 + 900.0 * t) * t).sin()) as i16).to_le_bytes())
        .collect();
    let size = u32::try_from(samples.len()).unwrap();
    let mut file = b"RIFF".to_vec();
    file.extend((36 + size).to_le_bytes());
    file.extend(b"WAVEfmt \x10\0\0\0\x01\0\x01\0");
    file.extend(16_000_u32.to_le_bytes());
    file.extend(32_000_u32.to_le_bytes());
    file.extend(b"\x02\0\x10\0data");
    file.extend(size.to_le_bytes());
    file.extend(samples);
    file
}

async fn sent(house: &House, asker: &Asker, path: &str, kind: &str, body: Vec<u8>) -> String {
    let request = Request::post(path).header(header::CONTENT_TYPE, kind).body(Body::from(body)).unwrap();
    let answer = house.ask(asker, request).await;
    let (told, body) = answer.into_parts();
    let body = body.collect().await.unwrap().to_bytes();
    assert_eq!(told.status, StatusCode::SEE_OTHER, "{path}: {}", String::from_utf8_lossy(&body));
    told.headers[header::LOCATION].to_str().unwrap().to_owned()
}

#[tokio::test(flavor = "multi_thread")]
async fn what_another_home_keeps_by_hash_or_id_answers_as_if_it_were_nowhere() {
    let mut house = House::new().await;
    let people = house.people().await;
    let stranger = people.iter().find(|p| p.name == "keeper of another home").unwrap();
    let first = |story: &sayso_model::Story| {
        let animal = story.animals().into_keys().next().unwrap();
        (animal, story.words().into_keys().next().unwrap())
    };
    let (other_animal, other_word) = first(&house.other_story);
    let card = format!("/a/{other_animal}/words/card/{other_word}");
    sent(&house, stranger, &format!("{card}/recording"), "audio/wav", recording()).await;
    sent(&house, stranger, &format!("/people/animal/{other_animal}/picture"), "image/png", PICTURE.to_vec()).await;
    let file = "--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"one.csv\"\r\n\r\nwhen\n\r\n--x--\r\n";
    let brings = format!("/exchange?home={}", house.other);
    let waits = sent(&house, stranger, &brings, "multipart/form-data; boundary=x", file.into()).await;
    let story = house.host.server.home(house.other).story(house.other).await.unwrap();
    let clip = story.clips().into_values().find(|card| card.active && card.word == other_word).unwrap();
    let picture = story.pictures().into_values().next().unwrap().sha256.clone();
    let brought = waits.split(['/', '?']).nth(2).unwrap();

    let (animal, word) = first(&house.story);
    let unknown_hash = "5".repeat(64);
    let unknown = Uuid::now_v7().to_string();
    let id = clip.clip.to_string();
    let pairs = [
        (format!("/a/{animal}/ear/"), clip.sha256.as_str(), unknown_hash.as_str(), ""),
        (format!("/a/{animal}/words/card/{word}/recording/"), &id, &unknown, ""),
        ("/clips/".to_owned(), &clip.sha256, &unknown_hash, ""),
        ("/pictures/".to_owned(), &picture, &unknown_hash, ""),
        ("/exchange/".to_owned(), brought, &unknown, ""),
        ("/exchange/".to_owned(), brought, &unknown, "/away"),
    ];
    assert_eq!(pairs.len(), BY_HASH_OR_ID.len());
    for asker in people.iter().filter(|p| p.token.is_some() && p.name != stranger.name) {
        for (before, there, nowhere, after) in &pairs {
            let of = |id: &str| format!("{before}{id}{after}");
            alike(&house, asker, &of(there), &of(nowhere), "").await;
        }
    }
    // Whose they are finds each of them there, still, and a recording taken out of use is so by its own people alone.
    let own = [format!("/a/{other_animal}/ear/{}", clip.sha256), format!("/clips/{}", clip.sha256)];
    for path in own.into_iter().chain([format!("/pictures/{picture}"), format!("/exchange/{brought}")]) {
        let path = format!("{path}?home={}", house.other);
        assert_eq!(house.get(stranger, &path).await.0, StatusCode::OK, "{path}");
    }
    let story = house.host.server.home(house.other).story(house.other).await.unwrap();
    assert!(story.clips().values().any(|card| card.clip == clip.clip && card.active));
    let away = format!("/exchange/{brought}/away?home={}", house.other);
    assert_eq!(house.post(stranger, &away, "", FORM).await.0, StatusCode::SEE_OTHER);
    assert_ne!(house.get(stranger, &waits).await.0, StatusCode::OK);
}
