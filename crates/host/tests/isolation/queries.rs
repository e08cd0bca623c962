//! A query that cannot be read is told in our words at every address that reads one, never in those of a library.

use crate::addresses::filled;
use crate::house::House;
use crate::table::routes_of;
use axum::http::StatusCode;
use sayso_host::asked::TABLE;
use sayso_people::Role;
use std::collections::BTreeSet;
use std::path::Path;

/// What the libraries that read queries say.
const THEIRS: [&str; 4] = ["deserialize", "missing field", "unknown field", "invalid type"];

#[tokio::test]
async fn what_is_missing_or_wrong_in_an_address_is_told_in_our_words() {
    let mut house = House::new().await;
    let people = house.people().await;
    let own = routes_of(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src/pages"));
    // Programs that ask under /api are told which field, besides.
    let homes = TABLE.iter().map(|(route, ..)| (*route).to_owned()).filter(|route| !route.starts_with("/api"));
    let routes: BTreeSet<String> = own.into_iter().chain(homes).collect();
    let mut told = BTreeSet::new();
    for route in &routes {
        let path = filled(route, &house.story).replace("{club}", &house.club.to_string());
        let path = path.split('/').map(|part| if part.starts_with('{') { "nothing" } else { part });
        let path = path.collect::<Vec<_>>().join("/");
        for asker in people.iter().filter(|p| matches!(p.role, Some(Role::Keeper | Role::Coach))) {
            for query in ["", "?no_such_field=1", "?home=%ff&no_such_field=%"] {
                let (status, body) = house.get(asker, &format!("{path}{query}")).await;
                let what = format!("{path}{query} by {}: {status} {body}", asker.name);
                assert!(!status.is_server_error(), "{what}");
                assert!(THEIRS.iter().all(|theirs| !body.contains(theirs)), "{what}");
                if status == StatusCode::BAD_REQUEST {
                    assert!(body.contains("Something in this address is missing or cannot be read"), "{what}");
                    told.insert(route.clone());
                }
            }
        }
    }
    eprintln!("{} of {} addresses refuse such a query: {told:?}", told.len(), routes.len());
    assert!(told.contains("/desk/hand-over") && told.contains("/a/{animal}/days"), "{told:?}");
    assert!(told.len() >= 10, "{} {told:?}", told.len());
}
