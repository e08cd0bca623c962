//! A notebook whose file was damaged while it was served.

use crate::web::{Ids, Web, noon};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_web::access::Access;
use sayso_web::store::Store;
use sayso_web::{AppState, app};
use std::sync::Arc;
use tower::ServiceExt;

#[tokio::test]
async fn a_damaged_notebook_says_so_on_the_page_with_the_remedy() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    for _ in 0..5 {
        web.events(&(0..100).map(|_| ids.press()).collect::<Vec<_>>()).await;
    }
    let Web { app: served, dir, .. } = web;
    drop(served);
    let file = dir.path().join("sayso.db");
    // Everything into the one file, and a store that has read none of it yet.
    Store::open(dir.path()).await.unwrap().close().await.unwrap();
    let store = Store::open(dir.path()).await.unwrap();
    let mut bytes = std::fs::read(&file).unwrap();
    assert!(bytes.len() > 3 * 4096);
    bytes[4096..].fill(0xA5);
    // In place: whoever has it open sees it.
    let mut open = std::fs::OpenOptions::new().write(true).open(&file).unwrap();
    std::io::Write::write_all(&mut open, &bytes).unwrap();
    let wal = dir.path().join("sayso.db-wal");
    if wal.exists() {
        std::fs::OpenOptions::new().write(true).truncate(true).open(wal).unwrap();
    }
    let state = AppState::new(Arc::new(store), Access::this_machine()).with_clock(noon);
    for (path, json) in [(format!("/a/{}/today", ids.animal), false), ("/api/events".to_owned(), true)] {
        let request = Request::get(&path).header(header::HOST, "localhost").body(Body::empty()).unwrap();
        let answer = app(state.clone()).oneshot(request).await.unwrap();
        assert_eq!(answer.status(), StatusCode::INTERNAL_SERVER_ERROR, "{path}");
        let text = String::from_utf8(answer.into_body().collect().await.unwrap().to_bytes().to_vec()).unwrap();
        assert!(text.contains("sayso.db") && text.contains("backup"), "{path}: {text}");
        assert_eq!(text.starts_with('{'), json, "{path}");
    }
}
