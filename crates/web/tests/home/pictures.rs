//! Pictures: looked at, kept, shown, given out, removed.

use crate::at_home::Home;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_model::{MOST_PICTURE_BYTES, PictureOf};
use tower::ServiceExt;

/// The program's own icons: true pictures, from 180 to 512 pixels.
const ICON: &[u8] = include_bytes!("../../src/assets/icon-192.png");
const LARGER: &[u8] = include_bytes!("../../src/assets/icon-512.png");

const FORM: &str = "multipart/form-data; boundary=edge";

fn as_form(bytes: &[u8]) -> Vec<u8> {
    let mut body = b"--edge\r\nContent-Disposition: form-data; name=\"picture\"; filename=\"a.png\"\r\nContent-Type: image/png\r\n\r\n".to_vec();
    body.extend(bytes);
    body.extend(b"\r\n--edge--\r\n");
    body
}

async fn word(home: &Home, says: &str, reward: &str) -> String {
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", says), ("reward", reward)]).await;
    answer.kept().to.split('?').next().unwrap().to_owned()
}

#[tokio::test]
async fn a_picture_is_kept_shown_and_given_out_as_what_it_is() {
    let home = Home::new().await;
    let animal = format!("/people/animal/{}", home.animal);
    let rope = home.reward("play", "rope", &[]).await;
    let tug = word(&home, "tug", &rope).await;
    let rope = format!("/people/reward/{rope}");
    home.page("/people").await.says("<svg class=\"picture\"").does_not_say("/pictures/");
    for card in [&animal, &rope] {
        home.page(card).await.says("accept=\"image/*\"").says("for=\"picture-file\"").does_not_say("capture");
        home.post_bytes(&format!("{card}/picture"), FORM, as_form(ICON)).await.kept();
    }
    let story = home.story().await;
    let shown = story.pictures();
    let of_animal = shown[&PictureOf::Animal { animal: home.animal }];
    assert_eq!((of_animal.media_type.name(), of_animal.width, of_animal.height), ("image/png", 192, 192));
    let at = format!("/pictures/{}", of_animal.sha256);
    for page in
        [animal.as_str(), &rope, "/people", "/sheets/rules", "/sheets/labels", &format!("/a/{}/words", home.animal)]
    {
        home.page(page).await.says(&format!("src=\"{at}\""));
    }
    // The animal itself stands beside the title, and is named for who does not see it.
    for page in ["today", "likes", "words"] {
        let page = home.page(&format!("/a/{}/{page}", home.animal)).await;
        let (_, head) = page.text.split_once("<main").unwrap();
        let (head, _) = head.split_once("<h1>").expect("a title");
        assert!(head.contains(&format!("src=\"{at}\"")) && head.contains("alt=\"Picture of Pip\""), "{head}");
    }
    // A word shows its own, where it has one.
    home.post_bytes(&format!("{tug}/picture"), "image/png", LARGER.to_vec()).await.kept();
    let labels = home.page("/sheets/labels").await.says("width=\"512\"").text.clone();
    let (_, sheet) = labels.split_once("<main").unwrap();
    assert!(!sheet.contains(&at), "{sheet}");
    // What it asks for shows that in a likes test, where it has none of its own.
    home.page(&rope).await.says("width=\"192\"");
    home.post(&format!("{rope}/picture/remove"), &[]).await.kept();
    let ball = home.reward("play", "ball", &[]).await;
    let rope_id = rope.rsplit('/').next().unwrap();
    let pair = home.post(&format!("/a/{}/likes/pair", home.animal), &[("left", rope_id), ("right", &ball)]).await;
    home.page(&pair.kept().to).await.says("width=\"512\"").says("<svg class=\"picture\"");
    home.post_bytes(&format!("{rope}/picture"), FORM, as_form(ICON)).await.kept();

    let request = Request::get(&at).header(header::HOST, "localhost").body(Body::empty()).unwrap();
    let (told, body) = home.app.clone().oneshot(request).await.unwrap().into_parts();
    assert_eq!(body.collect().await.unwrap().to_bytes(), ICON);
    assert_eq!(told.headers["content-type"], "image/png");
    assert_eq!(told.headers["x-content-type-options"], "nosniff");
    assert!(told.headers["cache-control"].to_str().unwrap().contains("immutable"));

    home.post(&format!("{tug}/picture/remove"), &[]).await.kept();
    home.page("/sheets/labels").await.says(&at);
    home.page(&format!("/a/{}/log", home.animal)).await.says("Picture of");
}

#[tokio::test]
async fn what_is_no_fit_picture_is_refused_in_words_and_kept_nowhere() {
    let home = Home::new().await;
    let to = format!("/people/animal/{}/picture", home.animal);
    let mut large = ICON.to_vec();
    large.resize(MOST_PICTURE_BYTES + 1, 0);
    // Its header says 2,000 pixels across.
    let mut wide = ICON.to_vec();
    wide[16..20].copy_from_slice(&2000_u32.to_be_bytes());
    // A chunk of camera data put behind the header.
    let mut taken = ICON[..33].to_vec();
    taken.extend([0, 0, 0, 2]);
    taken.extend(b"eXIfMM");
    taken.extend([0; 4]);
    taken.extend(&ICON[33..]);
    let drawn = b"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\" height=\"9\"><script>1</script></svg>".to_vec();
    let cases: [(Vec<u8>, &str); 7] = [
        (Vec::new(), "is missing"),
        (b"GIF89a\x01\0\x01\0\0\0\0;".to_vec(), "choose a JPEG, PNG or WebP"),
        (drawn, "choose a JPEG, PNG or WebP"),
        (ICON[..40].to_vec(), "choose a JPEG, PNG or WebP"),
        (large, "at most 300 kB"),
        (wide, "is 2,000 by 192 pixels, at most 1,024 each way"),
        (taken, "a camera\u{2019}s notes"),
    ];
    for (bytes, why) in cases {
        home.post_bytes(&to, FORM, as_form(&bytes)).await.refused().says("Picture").says(why);
    }
    assert!(home.story().await.pictures().is_empty());
    assert!(home.state.store.clips().await.unwrap().is_empty());
    // A recording is stored like a picture and is given out as none.
    let hash = home.state.store.put_clip(b"RIFF no picture".to_vec()).await.unwrap();
    for nowhere in
        [format!("/pictures/{hash}"), "/pictures/..%2Fsayso.db".into(), format!("/pictures/{}", "0".repeat(64))]
    {
        assert_eq!(home.get(&nowhere).await.status, StatusCode::NOT_FOUND, "{nowhere}");
    }
}
