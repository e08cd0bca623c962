use crate::web::{Ids, Web};
use axum::body::Body;
use axum::extract::ConnectInfo;
use axum::http::{Request, StatusCode, header};
use sayso_web::access::Access;
use sayso_web::secure::Peer;
use std::sync::Arc;

fn post(host: &str, extra: &[(&str, &str)]) -> Request<Body> {
    let mut request =
        Request::post("/api/events").header(header::HOST, host).header(header::CONTENT_TYPE, "application/json");
    for (name, value) in extra {
        request = request.header(*name, *value);
    }
    request.body(Body::from("[]")).unwrap()
}

#[tokio::test]
async fn writes_from_another_sites_page_are_not_taken() {
    let web = Web::this_machine().await;
    let host = "localhost:8080";
    let taken: [&[(&str, &str)]; 4] = [
        &[],
        &[("origin", "http://localhost:8080")],
        &[("sec-fetch-site", "same-origin"), ("origin", "http://localhost:8080")],
        &[("sec-fetch-site", "none")],
    ];
    for headers in taken {
        assert_eq!(web.send(post(host, headers)).await.status, StatusCode::OK, "{headers:?}");
    }
    let not: [&[(&str, &str)]; 6] = [
        &[("origin", "http://evil.example")],
        &[("origin", "null")],
        &[("origin", "http://localhost:9999")],
        &[("sec-fetch-site", "cross-site")],
        &[("sec-fetch-site", "same-site")],
        &[("sec-fetch-site", "cross-site"), ("origin", "http://localhost:8080")],
    ];
    for headers in not {
        assert_eq!(web.send(post(host, headers)).await.status, StatusCode::FORBIDDEN, "{headers:?}");
    }
}

#[tokio::test]
async fn a_socket_opened_by_another_sites_page_is_not_taken() {
    let web = Web::this_machine().await;
    let request = |origin: &str| {
        Request::get("/who")
            .header(header::HOST, "localhost")
            .header(header::UPGRADE, "websocket")
            .header("origin", origin)
    };
    let foreign = web.send(request("http://evil.example").body(Body::empty()).unwrap()).await;
    assert_eq!(foreign.status, StatusCode::FORBIDDEN);
    let own = web.send(request("http://localhost").body(Body::empty()).unwrap()).await;
    assert_ne!(own.status, StatusCode::FORBIDDEN);
}

#[tokio::test]
async fn names_that_are_not_this_machine_are_not_answered() {
    let web = Web::this_machine().await;
    for host in ["evil.example", "192.168.1.5:8080", "localhost.evil.example", ""] {
        let request = Request::get("/api/events").header(header::HOST, host).body(Body::empty()).unwrap();
        assert_eq!(web.send(request).await.status, StatusCode::FORBIDDEN, "{host}");
    }
    assert_eq!(web.send(Request::get("/api/events").body(Body::empty()).unwrap()).await.status, StatusCode::FORBIDDEN);
}

#[tokio::test]
async fn every_answer_has_the_safe_headers() {
    let web = Web::this_machine().await;
    for path in ["/start", "/nothing", "/api/events", "/api/nothing", "/sw.js"] {
        let answer = web.get(path).await;
        let policy = answer.header("content-security-policy");
        assert!(policy.contains("script-src 'self'") && policy.contains("frame-ancestors 'none'"), "{path}");
        // Modules of our own may be compiled; no text becomes script.
        assert!(!policy.replace("'wasm-unsafe-eval'", "").contains("unsafe"), "{path}");
        assert_eq!(answer.header("x-content-type-options"), "nosniff", "{path}");
    }
}

#[tokio::test]
async fn files_may_be_kept_for_ever_under_their_hash_only() {
    let web = Web::this_machine().await;
    for name in sayso_web::assets::names() {
        let answer = web.get(&sayso_web::assets::asset(name)).await;
        assert_eq!(answer.status, StatusCode::OK, "{name}");
        assert!(answer.header("cache-control").contains("immutable"), "{name}");
    }
    let old = web.get("/assets/0000000000000000/assets/base.css").await;
    assert_eq!((old.status, old.header("cache-control")), (StatusCode::OK, "no-store"));
    assert_eq!(web.get("/assets/x/../../Cargo.toml").await.status, StatusCode::NOT_FOUND);
    assert!(web.get("/start").await.header("cache-control").contains("no-store"));
}

fn pair(code: &str, from: &str) -> Request<Body> {
    let mut request = Request::post("/pair")
        .header(header::HOST, "192.168.1.5:8080")
        .header(header::CONTENT_TYPE, "application/x-www-form-urlencoded")
        .body(Body::from(format!("code={code}")))
        .unwrap();
    request.extensions_mut().insert(ConnectInfo(Peer { address: from.parse().unwrap(), safe: false }));
    request
}

fn with_cookie(path: &str, cookie: &str) -> Request<Body> {
    Request::get(path)
        .header(header::HOST, "192.168.1.5:8080")
        .header(header::COOKIE, cookie)
        .body(Body::empty())
        .unwrap()
}

#[tokio::test]
async fn a_device_of_the_home_network_pairs_once_and_stays_paired_over_a_restart() {
    let web = Web::home_network().await;
    let stranger = web.send(with_cookie("/api/events", "")).await;
    assert_eq!(stranger.status, StatusCode::UNAUTHORIZED);
    assert!(stranger.json()["error"].as_str().unwrap().contains("/pair"));
    let page = web.send(with_cookie("/start", "")).await;
    assert_eq!((page.status, page.header("location")), (StatusCode::SEE_OTHER, "/pair"));
    assert_eq!(web.send(with_cookie("/api/events", "sayso_paired=guess")).await.status, StatusCode::UNAUTHORIZED);

    assert_eq!(web.send(with_cookie("/pair", "")).await.status, StatusCode::OK);
    let code = web.codes.lock().unwrap()[0].clone();
    assert!(code.replace('-', "").len() >= 8);
    let wrong = web.send(pair("AAAAA-AAAAA", "192.168.1.9:5000")).await;
    assert_eq!(wrong.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(wrong.header("set-cookie").is_empty());
    let right = web.send(pair(&code.to_lowercase(), "192.168.1.9:5000")).await;
    assert_eq!(right.status, StatusCode::SEE_OTHER, "{}", right.text);
    let cookie = right.header("set-cookie").to_owned();
    assert!(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), "{cookie}");
    let cookie = cookie.split(';').next().unwrap();
    assert_eq!(web.send(with_cookie("/api/events", cookie)).await.status, StatusCode::OK);

    let kept = web.dir.path().join("paired.json");
    let again = Access::home_network(&kept, Arc::new(|_, _| ())).unwrap();
    assert!(again.admits(cookie.split_once('=').map(|c| c.1), crate::web::noon()));
    assert!(!std::fs::read_to_string(kept).unwrap().contains(cookie.split_once('=').unwrap().1));
}

#[tokio::test]
async fn guessing_codes_is_slowed_per_address_and_over_all() {
    let web = Web::home_network().await;
    web.send(with_cookie("/pair", "")).await;
    for _ in 0..5 {
        assert_eq!(web.send(pair("AAAAAAAAAA", "192.168.1.66:1")).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    }
    let slowed = web.send(pair("AAAAAAAAAA", "192.168.1.66:2")).await;
    assert_eq!(slowed.status, StatusCode::TOO_MANY_REQUESTS);
    assert!(slowed.header("retry-after").parse::<u64>().unwrap() > 0);
    // The right code does not help either while slowed; another address is free to try.
    let code = web.codes.lock().unwrap()[0].clone();
    assert_eq!(web.send(pair(&code, "192.168.1.66:3")).await.status, StatusCode::TOO_MANY_REQUESTS);
    for i in 0..45 {
        let from = format!("192.168.2.{i}:1");
        assert_eq!(web.send(pair("AAAAAAAAAA", &from)).await.status, StatusCode::UNPROCESSABLE_ENTITY);
    }
    assert_eq!(web.send(pair(&code, "192.168.3.1:1")).await.status, StatusCode::TOO_MANY_REQUESTS);
}

#[tokio::test]
async fn forgetting_all_devices_shuts_them_out() {
    let web = Web::home_network().await;
    web.send(with_cookie("/pair", "")).await;
    let code = web.codes.lock().unwrap()[0].clone();
    let cookie = web.send(pair(&code, "10.0.0.2:1")).await.header("set-cookie").split(';').next().unwrap().to_owned();
    let forget = |cookie: &str| {
        Request::post("/pair/forget")
            .header(header::HOST, "kitchen.local")
            .header(header::COOKIE, cookie)
            .body(Body::empty())
            .unwrap()
    };
    assert_eq!(web.send(forget("sayso_paired=none")).await.header("location"), "/pair", "a stranger is led to pairing");
    assert_eq!(web.send(with_cookie("/api/events", &cookie)).await.status, StatusCode::OK, "and has forgotten nobody");
    web.send(forget(&cookie)).await;
    assert_eq!(web.send(with_cookie("/api/events", &cookie)).await.status, StatusCode::UNAUTHORIZED);
}

#[tokio::test]
async fn on_this_machine_nobody_needs_to_pair() {
    let (web, ids) = (Web::this_machine().await, Ids::new());
    web.events(&ids.cards()).await;
    assert!(web.get("/pair").await.text.contains("no device needs pairing"));
    assert_eq!(web.get("/who").await.status, StatusCode::OK);
}
