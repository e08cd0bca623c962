//! Paired devices: listed, ended one by one, and told what is wrong with their file.

use crate::web::{Answer, Ids, Web};
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use sayso_web::access::{Access, PairedError};
use std::sync::Arc;

const HOST: &str = "192.168.1.5:8080";

async fn ask(web: &Web, method: &str, path: &str, cookie: &str, body: &str) -> Answer {
    let request = Request::builder().method(method).uri(path).header(header::HOST, HOST).header(header::COOKIE, cookie);
    let request = request.header(header::USER_AGENT, "Mozilla/5.0 (Linux; Android 15)");
    let request = request.header(header::CONTENT_TYPE, "application/x-www-form-urlencoded");
    web.send(request.body(Body::from(body.to_owned())).unwrap()).await
}

async fn pair(web: &Web, name: &str) -> String {
    ask(web, "GET", "/pair", "", "").await;
    let code = web.codes.lock().unwrap().last().unwrap().clone();
    let paired = ask(web, "POST", "/pair", "", &format!("code={code}&name={name}")).await;
    assert_eq!(paired.status, StatusCode::SEE_OTHER, "{}", paired.text);
    paired.header("set-cookie").split(';').next().unwrap().to_owned()
}

/// The id in the form that ends a device.
fn id_of(page: &str, name: &str) -> String {
    let card = page.split("data-test=\"device\"").find(|c| c.contains(name)).unwrap();
    card.split("value=\"").nth(1).unwrap().split('"').next().unwrap().to_owned()
}

#[tokio::test]
async fn each_device_is_listed_and_ended_by_itself() {
    let (web, ids) = (Web::home_network().await, Ids::new());
    let (lost, mine) = (pair(&web, "").await, pair(&web, "Ann%27s+phone").await);
    let put = Request::post("/api/events").header(header::HOST, HOST).header(header::COOKIE, &mine);
    web.send(put.body(Body::from(serde_json::to_vec(&ids.cards()).unwrap())).unwrap()).await;

    let page = ask(&web, "GET", "/devices", &mine, "").await;
    assert_eq!(page.status, StatusCode::OK, "{}", page.text);
    assert!(page.text.contains("An Android device") && page.text.contains("Ann's phone</strong> (this device)"));
    assert!(page.text.contains("Paired 2 Mar 2026 13:00. Last seen 2 Mar 2026 13:00."), "{}", page.text);

    let ended = format!("id={}", id_of(&page.text, "An Android device"));
    assert_eq!(ask(&web, "POST", "/devices/end", "", &ended).await.header("location"), "/pair", "not by a stranger");
    assert_eq!(ask(&web, "GET", "/api/events", &lost, "").await.status, StatusCode::OK);
    assert_eq!(ask(&web, "POST", "/devices/end", &mine, &ended).await.header("location"), "/devices");
    assert_eq!(ask(&web, "GET", "/api/events", &lost, "").await.status, StatusCode::UNAUTHORIZED);
    assert_eq!(ask(&web, "GET", "/api/events", &mine, "").await.status, StatusCode::OK);
    assert_eq!(ask(&web, "POST", "/devices/end", &mine, &ended).await.status, StatusCode::NOT_FOUND);
}

#[tokio::test]
async fn where_nobody_pairs_the_page_says_so() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    assert!(web.get("/devices").await.text.contains("this machine alone"));
}

#[test]
fn a_damaged_file_is_named_with_the_remedy() {
    let dir = tempfile::tempdir().unwrap();
    let file = dir.path().join("paired.json");
    std::fs::write(&file, "[{]").unwrap();
    let error = Access::home_network(&file, Arc::new(|_, _| ())).unwrap_err();
    assert!(matches!(error, PairedError::Content { .. }));
    let said = error.to_string();
    assert!(
        said.contains(file.to_str().unwrap()) && said.contains("line 1 column") && said.contains("delete it"),
        "{said}"
    );
}
