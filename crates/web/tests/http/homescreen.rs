//! What a phone is told of the notebook for its home screen, and where it opens.

use crate::web::{Ids, Web};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use serde_json::Value;
use tower::ServiceExt;

async fn asked(web: &Web, path: &str, name: header::HeaderName, value: &str) -> crate::web::Answer {
    let request = Request::get(path).header(header::HOST, "localhost").header(name, value);
    web.send(request.body(Body::empty()).unwrap()).await
}

/// Content type and content of a file.
async fn file(web: &Web, path: &str) -> (String, Vec<u8>) {
    let request = Request::get(path).header(header::HOST, "localhost").body(Body::empty()).unwrap();
    let (told, body) = web.app.clone().oneshot(request).await.unwrap().into_parts();
    let kind = told.headers[header::CONTENT_TYPE].to_str().unwrap().to_owned();
    (kind, body.collect().await.unwrap().to_bytes().to_vec())
}

/// Width and height in a PNG's header.
fn size(png: &[u8]) -> String {
    assert_eq!(&png[..8], b"\x89PNG\r\n\x1a\n");
    let at = |i: usize| u32::from_be_bytes(png[i..i + 4].try_into().unwrap());
    format!("{}x{}", at(16), at(20))
}

#[tokio::test]
async fn the_manifest_names_icons_that_are_there_in_the_persons_language() {
    let web = Web::this_machine().await;
    let answer = web.get("/manifest.webmanifest").await;
    assert_eq!((answer.status, answer.header("content-type")), (StatusCode::OK, "application/manifest+json"));
    let told = answer.json();
    assert_eq!(
        (&told["start_url"], &told["display"], &told["lang"]),
        (&"/last".into(), &"standalone".into(), &"en".into())
    );
    let icons = told["icons"].as_array().unwrap();
    for (side, purpose) in [("192x192", "any"), ("512x512", "any"), ("192x192", "maskable"), ("512x512", "maskable")] {
        let icon = icons.iter().find(|i| i["sizes"] == side && i["purpose"] == purpose).expect(purpose);
        let (kind, bytes) = file(&web, icon["src"].as_str().unwrap()).await;
        assert_eq!((kind.as_str(), size(&bytes).as_str()), ("image/png", side));
    }
    let mut said: Vec<Value> = vec![told["description"].clone()];
    for language in ["es", "de", "fr", "pt"] {
        let told = asked(&web, "/manifest.webmanifest", header::ACCEPT_LANGUAGE, language).await.json();
        assert_eq!(told["lang"], language);
        assert!(!said.contains(&told["description"]), "{told}");
        said.push(told["description"].clone());
    }
    let pseudo = asked(&web, "/manifest.webmanifest", header::COOKIE, "sayso_language=pseudo").await.json();
    assert_eq!(pseudo["dir"], "rtl");
}

#[tokio::test]
async fn every_page_leads_to_the_manifest_and_an_icon_for_phones_that_read_none() {
    let web = Web::this_machine().await;
    let page = web.get("/start").await.text;
    assert!(page.contains("rel=\"manifest\" href=\"/manifest.webmanifest\""), "{page}");
    assert_eq!(page.matches("name=\"theme-color\"").count(), 2, "one for light, one for dark");
    let touch = page.split("rel=\"apple-touch-icon\" href=\"").nth(1).unwrap().split('"').next().unwrap();
    assert_eq!(size(&file(&web, touch).await.1), "180x180");
}

#[tokio::test]
async fn it_opens_where_one_was_last() {
    let web = Web::this_machine().await;
    let ids = Ids::new();
    assert_eq!(web.events(&ids.cards()).await.status, StatusCode::OK);
    let (today, board) = (format!("/a/{}/today", ids.animal), format!("/a/{}/board", ids.animal));
    assert_eq!(web.get("/last").await.header("location"), today, "nothing was open yet");
    let set = |answer: &crate::web::Answer| answer.header("set-cookie").split(';').next().unwrap().to_owned();
    let opened = web.get(&board).await;
    assert_eq!(set(&opened), format!("sayso_last={board}"));
    assert!(opened.header("set-cookie").contains("HttpOnly;SameSite=Strict"));
    let again = asked(&web, &board, header::COOKIE, &set(&opened)).await;
    assert_eq!(again.header("set-cookie"), "", "known already");
    assert_eq!(asked(&web, "/last", header::COOKIE, &set(&opened)).await.header("location"), board);
    assert_eq!(set(&asked(&web, &today, header::COOKIE, &set(&opened)).await), format!("sayso_last={today}"));
    for elsewhere in ["//evil.example", "/a/0197a1b2-0000-7000-8000-000000000001/board", "/devices"] {
        let answer = asked(&web, "/last", header::COOKIE, &format!("sayso_last={elsewhere}")).await;
        assert_eq!(answer.header("location"), today, "{elsewhere}");
    }
}

#[tokio::test]
async fn addresses_of_earlier_versions_lead_on() {
    let web = Web::this_machine().await;
    let answer = web.get("/l/0197a1b2-0000-7000-8000-000000000001/days?days=70").await;
    assert_eq!(
        (answer.status, answer.header("location")),
        (StatusCode::PERMANENT_REDIRECT, "/a/0197a1b2-0000-7000-8000-000000000001/days?days=70")
    );
}
