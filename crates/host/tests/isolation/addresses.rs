//! Every address by every role.

use crate::house::{Asker, House, ids};
use axum::http::{Method, StatusCode};
use sayso_host::asked::{AnyOf, TABLE};
use sayso_model::event::Part as _;
use sayso_model::{Coach, Consent, DesignPlan, Kind, LikesTest, ProbePlan, Story};
use sayso_people::table::{Grant, grant};
use sayso_people::{Capability, Role};
use sayso_web::page::is_common;

/// An address with ids of a home that are there, where it has such.
pub fn filled(route: &str, story: &Story) -> String {
    let animal = story.animals().into_keys().next().unwrap();
    let word = story.words().into_keys().next().unwrap();
    let reward = story.rewards().into_keys().next().unwrap();
    let person = story.people().into_keys().next().unwrap();
    let rule = story.rules().into_keys().next().unwrap();
    let first = |kind: Kind| story.as_recorded(kind).next();
    let likes = first(Kind::LikesTest).and_then(|e| LikesTest::of(&e.body)).map(|t| t.assessment.to_string());
    let probe = first(Kind::ProbePlan).and_then(|e| ProbePlan::of(&e.body)).map(|t| t.probe.to_string());
    let design = first(Kind::DesignPlan).and_then(|e| DesignPlan::of(&e.body)).map(|t| t.trial.to_string());
    let event = first(Kind::Press).map(|e| e.id.to_string());
    let none = || uuid::Uuid::nil().to_string();
    route
        .replace("{animal}", &animal.to_string())
        .replace("{word}", &word.to_string())
        .replace("{reward}", &reward.to_string())
        .replace("{person}", &person.to_string())
        .replace("{rule}", &rule.to_string())
        .replace("{assessment}", &likes.unwrap_or_else(none))
        .replace("{probe}", &probe.unwrap_or_else(none))
        .replace("{trial}", &design.unwrap_or_else(none))
        .replace("{event}", &event.unwrap_or_else(none))
        .replace("{id}", &none())
        .replace("{clip}", &none())
        .replace("{hash}", &"0".repeat(64))
        .replace("{page}", "likes-pairs")
        .replace("{*rest}", "today")
}

/// Whether the table of roles opens an address to someone; consent to figures is open, to the log and sounds it is not.
fn opens(asker: &Asker, any_of: AnyOf) -> bool {
    let Some(role) = asker.role else { return false };
    any_of.iter().any(|capability| match grant(role, *capability) {
        Grant::Yes => role.scope() == sayso_people::role::ScopeKind::Home,
        Grant::OnDays => true,
        Grant::WithConsent => {
            matches!(capability, Capability::SeeFigures | Capability::SeeToday | Capability::Advise)
        }
        Grant::No => false,
    })
}

fn is_denied(status: StatusCode, body: &str) -> bool {
    // A role that does not reach so far, or a home that one has nothing to do with.
    status == StatusCode::FORBIDDEN
        || (status == StatusCode::NOT_FOUND && body.contains("There is nothing at this address"))
}

#[tokio::test]
async fn each_address_is_open_to_whom_the_table_says_and_to_nobody_else() {
    let mut house = House::new().await;
    let people = house.people().await;
    let keeper = people.iter().find(|p| p.role == Some(Role::Keeper)).unwrap().clone();
    house.consent(&keeper, Consent::CoachFigures { to: Coach::Club { club: house.club } }).await;
    let (mut asked, mut opened, mut common) = (0, 0, 0);
    // Its ids, and what it is called.
    let mut ids = ids(&house.story);
    ids.insert(house.home.to_string());
    ids.extend(house.story.home().map(|card| card.name.to_string()));
    for (route, reading, writing) in TABLE {
        let path = filled(route, &house.story);
        // Who keeps another home comes to that: see `foreign`.
        for asker in people.iter().filter(|p| p.name != "keeper of another home") {
            let (status, body) = house.get(asker, &path).await;
            // Who belongs to no home reads what holds nothing of any.
            let homeless = matches!(asker.role, Some(Role::ServerKeeper | Role::ClubKeeper));
            if homeless && is_common(&Method::GET, &path) {
                assert!(status != StatusCode::INTERNAL_SERVER_ERROR, "{path} by {}", asker.name);
                assert!(status == StatusCode::OK || status == StatusCode::NOT_FOUND, "{path} by {}", asker.name);
                for of_home in &ids {
                    assert!(!body.contains(of_home.as_str()), "{path} tells {} of {of_home}", asker.name);
                }
                common += 1;
            } else {
                check(asker, "GET", &path, reading, status, &body);
            }
            // What is sent is no form and no event: whoever is let in is told so, and nothing is written.
            let (wrote, told) = house.post(asker, &path, "%", "application/x-www-form-urlencoded").await;
            if *route != "/api/events" {
                check(asker, "POST", &path, writing, wrote, &told);
            }
            asked += 2;
            opened += usize::from(opens(asker, reading)) + usize::from(opens(asker, writing));
        }
    }
    eprintln!("{asked} asked, {opened} open");
    assert!(asked > 1_500 && opened > 300, "{asked} asked, {opened} open");
    assert!(common >= 16, "{common}");
}

fn check(asker: &Asker, method: &str, path: &str, any_of: AnyOf, status: StatusCode, body: &str) {
    let what =
        format!("{method} {path} by {}: {status} {}", asker.name, body.rsplit("<main").next().unwrap_or_default());
    assert!(status != StatusCode::INTERNAL_SERVER_ERROR, "{what}");
    if asker.token.is_none() {
        // JSON says so, pages lead to the sign-in.
        assert!(status == StatusCode::UNAUTHORIZED || status == StatusCode::SEE_OTHER, "{what}");
        return;
    }
    match opens(asker, any_of) {
        true => assert!(!is_denied(status, body), "{what}"),
        false => {
            let nowhere = status == StatusCode::SEE_OTHER && body.is_empty();
            assert!(is_denied(status, body) || nowhere, "{what}");
        }
    }
}
