//! Files that go out: whole, piece by piece, and beside pages that are read.

use crate::at_home::Home;
use crate::exchange::{DIARY, FORM, as_form, bring, events, held};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_web::access::Access;
use sayso_web::computing::file_turn;
use sayso_web::store::Store;
use sayso_web::{AppState, app};
use std::sync::Arc;
use tower::ServiceExt;

#[cfg(unix)]
#[tokio::test]
async fn a_notebook_that_may_only_be_read_goes_out_and_takes_nothing_in() {
    use std::os::unix::fs::PermissionsExt;
    let home = Home::new().await;
    let (dir, before) = (home.state.store.dir().to_owned(), events(&home).await);
    home.state.store.close().await.unwrap();
    std::fs::set_permissions(dir.join("sayso.db"), std::fs::Permissions::from_mode(0o400)).unwrap();
    let store = Arc::new(Store::open(&dir).await.unwrap());
    assert!(store.is_read_only());
    let served = app(AppState::new(store, Access::this_machine()));
    let ask = |request: Request<Body>| served.clone().oneshot(request);
    let get = |path: &str| Request::get(path).header(header::HOST, "localhost").body(Body::empty()).unwrap();
    let lines = ask(get("/api/export.jsonl")).await.unwrap().into_body().collect().await.unwrap().to_bytes();
    assert_eq!(lines.iter().filter(|byte| **byte == b'\n').count(), before);
    for path in ["/api/export.csv", "/exchange/archive.tar", "/exchange/backup.sayso"] {
        assert_eq!(ask(get(path)).await.unwrap().status(), StatusCode::OK, "{path}");
    }
    let brought = Request::post("/exchange").header(header::HOST, "localhost").header(header::CONTENT_TYPE, FORM);
    let answer = ask(brought.body(Body::from(as_form("diary.csv", DIARY.as_bytes()))).unwrap()).await.unwrap();
    assert_eq!(answer.status(), StatusCode::SERVICE_UNAVAILABLE);
    let told = answer.into_body().collect().await.unwrap().to_bytes();
    assert!(String::from_utf8_lossy(&told).contains("may only be read here"));
}

#[tokio::test]
async fn events_go_out_piece_by_piece() {
    let home = Home::new().await;
    let mut table = DIARY.to_owned();
    for n in 0..2_000 {
        table.push_str(&format!("remark,2026-03-01 12:{:02},Pip,Robin,number {n}\n", n % 60));
    }
    home.post(&bring(&home, "diary.csv", table.as_bytes()).await, &[]).await.kept();
    for path in ["/api/export.csv", "/api/export.jsonl"] {
        let request = Request::get(path).header(header::HOST, "localhost").body(Body::empty()).unwrap();
        let answer = home.app.clone().oneshot(request).await.unwrap();
        let said: usize = answer.headers()[header::CONTENT_LENGTH].to_str().unwrap().parse().unwrap();
        assert_eq!(held(&home), 0, "{path}: nothing is left in the folder while it is sent");
        let (mut body, mut whole, mut largest) = (answer.into_body(), Vec::new(), 0);
        while let Some(frame) = body.frame().await {
            let piece = frame.unwrap().into_data().unwrap();
            largest = largest.max(piece.len());
            whole.extend_from_slice(&piece);
        }
        assert_eq!(whole.len(), said, "{path}");
        assert!(largest <= 64 << 10 && said > 100_000, "{path}: a piece of {largest} bytes of {said}");
        assert!(String::from_utf8(whole).unwrap().contains("number 1999"), "{path}");
    }
}

#[tokio::test]
async fn files_being_made_keep_no_page_waiting() {
    let home = Arc::new(Home::new().await);
    let preview = bring(&home, "diary.csv", DIARY.as_bytes()).await;
    // As though a large file were being made: nobody else's is begun.
    let turn = file_turn().await;
    let paths = ["/exchange/archive.tar", "/exchange/backup.sayso", "/api/export.csv", "/api/export.jsonl", &preview];
    let many = paths.iter().cycle().take(64).map(|path| {
        let (home, path) = (Arc::clone(&home), (*path).to_owned());
        tokio::spawn(async move { home.get(&path).await.status })
    });
    let many: Vec<_> = many.collect();
    for _ in 0..100 {
        tokio::task::yield_now().await;
    }
    home.page("/people").await;
    home.page("/exchange").await;
    assert!(many.iter().all(|one| !one.is_finished()), "all wait for the file");
    drop(turn);
    for one in many {
        assert_eq!(one.await.unwrap(), StatusCode::OK);
    }
}
