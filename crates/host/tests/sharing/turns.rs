//! Where one is led, and what one is told, when something has ended, is too old, or is read by a program.

use crate::house::{FORM, Has, House, JSON, Signed, asked, event};
use axum::Router;
use axum::body::Body;
use axum::http::{Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_host::SESSION_COOKIE;
use sayso_model::{Coach, Consent, ConsentGiven, Moment};
use sayso_web::state::machine_clock;
use tower::ServiceExt;

fn twenty_minutes_later() -> Moment {
    machine_clock().plus_seconds(1_200.0)
}

/// As a browser asks, which was about a home and says from where it comes.
async fn browses(
    app: &Router,
    who: &Signed,
    how: &str,
    path: &str,
    more: &[(&str, &str)],
) -> (StatusCode, String, String) {
    let mut cookie = format!("{SESSION_COOKIE}={}", who.token.reveal());
    let mut request = Request::builder().method(how).uri(path).header(header::HOST, "localhost");
    for (name, value) in more {
        if *name == "cookie" {
            cookie.push_str(&format!("; {value}"));
        } else {
            request = request.header(*name, *value);
        }
    }
    let request = request.header(header::COOKIE, cookie).header("sec-fetch-site", "same-origin");
    let answer = app.clone().oneshot(request.body(Body::empty()).unwrap()).await.unwrap();
    let (status, headers) = (answer.status(), answer.headers().clone());
    let to = headers.get(header::LOCATION).map_or(String::new(), |to| to.to_str().unwrap().to_owned());
    let set = headers.get(header::SET_COOKIE).map_or(String::new(), |set| set.to_str().unwrap().to_owned());
    let body = String::from_utf8_lossy(&answer.into_body().collect().await.unwrap().to_bytes()).into_owned();
    (status, format!("{to}{set}"), body)
}

#[tokio::test(flavor = "multi_thread")]
async fn who_reads_the_log_through_a_program_is_told_to_have_read_the_log() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_log", club)).await;
    let read = house.get(&coach, &format!("/api/events?home={}&limit=2", house.home)).await;
    assert_eq!(read.status, StatusCode::OK, "{}", read.body);
    assert!(read.holds("\"next\":"), "the other words of the address hold: {}", read.body);
    let told = house.get(&house.keeper, "/sharing").await;
    assert!(told.marked("look").iter().any(|look| look.contains("Brook, the Log, ")), "{:?}", told.marked("look"));
    let elsewhere = house.get(&coach, &format!("/api/events?home={club}")).await;
    assert_eq!(elsewhere.status, StatusCode::NOT_FOUND);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_form_that_was_sent_too_late_leads_back_to_its_page() {
    let house = House::new().await;
    let (club, club_keeper, _) = house.club().await;
    let later = house.later(twenty_minutes_later).await;
    let page = format!("/club/{club}");
    let invite = format!("/club/{club}/invite");
    for (who, path, from) in [
        (&house.server, "/server/homes", "http://localhost/server"),
        (&house.server, "/server/sessions", "http://localhost/server?x=1"),
        (&club_keeper, invite.as_str(), &format!("http://localhost{page}")),
    ] {
        let (_, to, _) = browses(&later, who, "POST", path, &[("referer", from), ("content-type", FORM)]).await;
        let back = from.trim_start_matches("http://localhost").split('?').next().unwrap();
        assert_eq!(to, format!("/sign-in?again=yes&sent=yes&to={back}"), "{path}");
        // Another site's page is none of ours, and where none is told the start is.
        for more in [&[("referer", "http://elsewhere/server"), ("content-type", FORM)][..], &[("content-type", FORM)]] {
            let (_, to, _) = browses(&later, who, "POST", path, more).await;
            assert_eq!(to, "/sign-in?again=yes&sent=yes&to=/", "{path}");
        }
    }
    // Who comes by the address of a form comes to its page.
    assert_eq!(house.get(&house.server, "/server/homes").await.to(), "/server");
    assert_eq!(house.get(&club_keeper, &invite).await.to(), page);
}

#[tokio::test(flavor = "multi_thread")]
async fn a_home_that_closed_is_told_and_no_other_takes_its_place() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    // The coach keeps a home of their own, which would be next.
    let made = house.post(&house.server, "/server/homes", "count=1").await;
    let own = crate::house::secret_of(made.marked("link")[0]);
    let joined = house.post(&coach, &format!("/join/{}", own.reveal()), "").await;
    assert_eq!(joined.status, StatusCode::SEE_OTHER, "{}", joined.body);
    assert_eq!(house.host.people.who(coach.account).await.unwrap().memberships.len(), 2);
    house.post(&house.keeper, "/sharing/consent", &house.consent("coach_figures", club)).await;
    let chosen = format!("{}={}", sayso_web::page::HOME_COOKIE, house.home);
    let page = [("cookie", chosen.as_str()), ("accept", "text/html")];
    let (status, set, _) = browses(&house.app, &coach, "GET", &house.about("evidence"), &page).await;
    assert_eq!(status, StatusCode::OK);
    // A role is new: from here on another token.
    let token = set.split(&format!("{SESSION_COOKIE}=")).nth(1).unwrap().split(';').next().unwrap();
    let coach = Signed { token: sayso_people::Secret::typed(token), ..coach };
    house.post(&house.keeper, "/sharing/consent/back", &house.consent("coach_figures", club)).await;
    for path in ["/", &house.about("evidence"), "/sharing"] {
        let (status, to, body) = browses(&house.app, &coach, "GET", path, &page).await;
        assert!(
            status == StatusCode::NOT_FOUND && body.contains("not open to you any more"),
            "{path}: {status} {to} {body}"
        );
        assert!(!body.contains("Birch House"), "{body}");
    }
    let (_, set, body) = browses(&house.app, &coach, "GET", "/", &page).await;
    assert!(set.contains(sayso_web::page::HOME_COOKIE) && body.contains("href=\"/homes\""), "once: {set}");
    let (status, ..) = browses(&house.app, &coach, "POST", "/people/home", &page).await;
    assert_eq!(status, StatusCode::NOT_FOUND, "nothing is written into another one");
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_belonged_to_a_home_that_left_is_told_when() {
    let house = House::new().await;
    let other = house.joined(Has::Keeper, "Robin").await;
    let member = house.joined(Has::Member, "Mora").await;
    let page = house.get(&house.keeper, "/sharing/leave").await;
    assert!(page.marked("other-keepers")[0].contains("Robin"), "{}", page.body);
    house.post(&house.keeper, "/sharing/leave", &format!("home={}&name=birch+house", house.home)).await;
    for who in [&other, &member, &house.keeper] {
        let told = house.get(who, "/homes").await;
        assert!(told.marked("parted")[0].contains("left this server on"), "{}", told.body);
        assert!(!told.holds("Birch House"));
    }
    assert!(house.get(&house.server, "/homes").await.marked("parted").is_empty());
}

#[tokio::test(flavor = "multi_thread")]
async fn consent_is_not_given_by_a_program() {
    let house = House::new().await;
    let (club, _, coach) = house.club().await;
    let figures = Consent::CoachFigures { to: Coach::Club { club } };
    let given = event(house.home, ConsentGiven { consent: figures, words_version: Consent::WORDS, holds: None });
    let sent = serde_json::to_string(&[&given]).unwrap();
    let told = asked(&house.app, Some(&house.keeper), "POST", "/api/events", Some((JSON, &sent))).await;
    assert_eq!(told.status, StatusCode::OK);
    assert!(told.holds("\"result\":\"refused\"") && told.holds("on the page"), "{}", told.body);
    assert_eq!(house.get(&coach, &house.about("evidence")).await.to(), "/homes");
    assert!(house.get(&house.keeper, "/sharing").await.marked("before").is_empty(), "nor was it written");
}

#[tokio::test(flavor = "multi_thread")]
async fn sessions_of_an_account_that_is_not_here_are_not_said_to_end() {
    let house = House::new().await;
    let told = house.post(&house.server, "/server/sessions", &format!("account={}", house.home)).await;
    assert_eq!(told.status, StatusCode::UNPROCESSABLE_ENTITY);
    assert!(told.holds("href=\"#account\"") && told.holds("no account here"), "{}", told.body);
    let ended = house.post(&house.server, "/server/sessions", &format!("account={}", house.keeper.account)).await;
    assert_eq!((ended.status, ended.marked("ended").len()), (StatusCode::OK, 1));
}

#[tokio::test(flavor = "multi_thread")]
async fn an_address_that_names_another_server_is_not_answered() {
    let house = House::new().await;
    for (uri, status) in
        [("http://elsewhere/sign-in", StatusCode::FORBIDDEN), ("http://localhost/sign-in", StatusCode::OK)]
    {
        let request = Request::builder().uri(uri).header(header::HOST, "localhost").body(Body::empty()).unwrap();
        assert_eq!(house.app.clone().oneshot(request).await.unwrap().status(), status, "{uri}");
    }
}
