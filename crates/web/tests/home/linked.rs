//! The page of the link, where there is no server to be reached; with one: `crates/host/tests/sharing/linked`.

use crate::at_home::Home;
use axum::http::StatusCode;
use sayso_linked::{LINK_FILE, PROGRESS_FILE};

#[tokio::test]
async fn a_text_that_is_none_of_a_server_is_told_and_kept_and_nothing_is_linked() {
    let home = Home::new().await;
    assert!(home.page("/people").await.text.contains("href=\"/linked\""));
    assert!(home.page("/linked").await.text.contains("data-test=\"begin\""));
    for (text, told) in [
        ("", "is not what a server shows"),
        ("https://sayso.example/linked", "is not what a server shows"),
        ("http://sayso.example/linked#00", "is not https"),
        // Nothing listens there.
        ("http://127.0.0.1:9/linked#00", "The server is not reached"),
    ] {
        let answer = home.post("/linked", &[("link", text)]).await;
        assert_eq!(answer.status, StatusCode::UNPROCESSABLE_ENTITY, "{text}");
        assert!(answer.text.contains(told) && answer.text.contains(text), "{text}: {}", answer.text);
    }
    for path in ["/linked/yes", "/linked/again", "/linked/end"] {
        assert_eq!(home.post(path, &[]).await.status, StatusCode::UNPROCESSABLE_ENTITY, "{path}");
    }
    assert!(!home.state.store.dir().join(LINK_FILE).exists());
}

#[tokio::test]
async fn an_empty_notebook_may_be_begun_by_a_link() {
    let home = Home::empty().await;
    assert!(home.page("/linked").await.text.contains("data-test=\"begin\""));
}

#[tokio::test]
async fn a_file_that_holds_no_link_is_named_and_unlinking_takes_it_away() {
    let home = Home::new().await;
    let dir = home.state.store.dir().to_owned();
    std::fs::write(dir.join(LINK_FILE), "{").unwrap();
    let page = home.page("/linked").await;
    assert!(page.text.contains(LINK_FILE) && page.text.contains("data-test=\"unlink\""), "{}", page.text);
    // The rest of the notebook is as ever.
    home.page("/talk").await;
    let ended = home.post("/linked/end", &[]).await;
    assert!(ended.text.contains("data-test=\"not-told\""), "{}", ended.text);
    assert!(!dir.join(LINK_FILE).exists() && !dir.join(PROGRESS_FILE).exists());
}
