//! A home in which nothing is written yet is left, given up and invited to as any other.

use crate::house::{House, secret_of, take};
use axum::http::StatusCode;
use sayso_people::db::HomeState;

#[tokio::test(flavor = "multi_thread")]
async fn an_empty_home_invites_and_leaves_at_once() {
    let house = House::new().await;
    let (home, ana) = house.newcomer().await;
    let form = house.get(&ana, "/sharing/invite").await;
    assert_eq!((form.status, form.marked("not-begun").len()), (StatusCode::OK, 1), "{}", form.body);
    assert!(form.holds("value=\"member\"") && !form.holds("value=\"sitter\""));
    let sitter = house.post(&ana, "/sharing/invite", &format!("home={home}&role=sitter")).await;
    assert_eq!(sitter.status, StatusCode::UNPROCESSABLE_ENTITY);
    let made = house.post(&ana, "/sharing/invite", &format!("home={home}&role=member")).await;
    assert_eq!(made.status, StatusCode::OK, "{}", made.body);
    assert_eq!(house.get(&ana, "/sharing").await.marked("invited").len(), 1);
    let page = house.get(&ana, "/sharing/leave").await;
    assert!(
        page.status == StatusCode::OK && !page.holds("name=\"name\"") && !page.holds("archive.tar"),
        "{}",
        page.body
    );
    let gone = house.post(&ana, "/sharing/leave", &format!("home={home}")).await;
    assert_eq!((gone.status, gone.marked("erased").len()), (StatusCode::OK, 1), "{}", gone.body);
    assert_eq!(house.host.people.home_state(home).await.unwrap(), HomeState::Left);
    assert!(take(&house.host, &secret_of(made.marked("link")[0]), "Late").await.is_err());
}

#[tokio::test(flavor = "multi_thread")]
async fn whoever_keeps_an_empty_home_alone_may_go_and_it_goes_along() {
    let house = House::new().await;
    for way in ["/account/role/leave", "/homes/end", "/account/erase"] {
        let (home, ana) = house.newcomer().await;
        let role = house.role_of(&ana).await;
        let form = match way {
            "/account/role/leave" => format!("id={role}"),
            "/homes/end" => format!("membership={role}"),
            _ => String::new(),
        };
        // Not while someone else belongs to it.
        let made = house.post(&ana, "/sharing/invite", &format!("home={home}&role=member")).await;
        let other = take(&house.host, &secret_of(made.marked("link")[0]), "Other").await.unwrap();
        let told = house.post(&ana, way, &form).await;
        assert!(matches!(told.status.as_u16(), 409 | 422), "{way}: {}", told.body);
        assert_eq!(house.host.people.home_state(home).await.unwrap(), HomeState::Here, "{way}");
        let account = other.session.unwrap().0.account;
        house.host.people.erase_account(account, house.host.now()).await.unwrap();
        let went = house.post(&ana, way, &form).await;
        assert!(matches!(went.status.as_u16(), 200 | 303), "{way}: {}", went.body);
        assert_eq!(house.host.people.home_state(home).await.unwrap(), HomeState::Left, "{way}");
        assert_eq!(house.host.people.account(ana.account).await.unwrap().is_some(), way != "/account/erase");
    }
    // Where something is written it stays as it was.
    let role = house.role_of(&house.keeper).await;
    let told = house.post(&house.keeper, "/account/role/leave", &format!("id={role}")).await;
    assert_eq!(told.status, StatusCode::CONFLICT);
    // And a role that is somebody else's is told as that.
    let other = house.joined(crate::house::Has::Member, "Mora").await;
    let told = house.post(&other, "/account/role/leave", &format!("id={role}")).await;
    assert!(told.status == StatusCode::FORBIDDEN && told.holds("no such role"), "{}", told.body);
    assert!(house.get(&other, "/account/erase").await.holds("href=\"/sharing\""));
}
