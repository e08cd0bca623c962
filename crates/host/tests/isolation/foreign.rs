//! With another home's ids: what is there answers as what is not.

use crate::addresses::filled;
use crate::house::House;
use axum::http::StatusCode;
use sayso_host::asked::TABLE;

/// An address with an id that is nowhere in the place of one that is there.
fn nowhere(path: &str, animal: &str) -> String {
    path.replace(animal, &uuid::Uuid::now_v7().to_string())
}

#[tokio::test]
async fn another_homes_addresses_answer_as_if_there_were_no_such_home() {
    let mut house = House::new().await;
    let people = house.people().await;
    let stranger = people.iter().find(|p| p.name == "keeper of another home").unwrap();
    let own = house.other_story.animals().into_keys().next().unwrap().to_string();
    let mut compared = 0;
    for (route, ..) in TABLE.iter().filter(|line| line.0.contains('{')) {
        let path = filled(route, &house.story);
        // Ids of a home stand in the address: for each of them one that is nowhere.
        let unknown = house.ids().iter().fold(path.clone(), |path, id| nowhere(&path, id));
        if unknown == path {
            continue;
        }
        for method in ["GET", "POST"] {
            let of = |path: String| {
                let (house, stranger) = (&house, stranger);
                async move {
                    match method {
                        "GET" => house.get(stranger, &path).await,
                        _ => house.post(stranger, &path, "", "application/x-www-form-urlencoded").await,
                    }
                }
            };
            let (there, nothing) = (of(path.clone()).await, of(unknown.clone()).await);
            assert_eq!(there.0, nothing.0, "{method} {path}");
            let plain = |text: &str, path: &str| text.replace(path, "");
            assert_eq!(plain(&there.1, &path), plain(&nothing.1, &unknown), "{method} {path}");
            compared += 1;
        }
    }
    // What is the stranger's own is there.
    assert_eq!(house.get(stranger, &format!("/a/{own}/today")).await.0, StatusCode::OK);
    eprintln!("{compared} pairs compared");
    assert!(compared > 120, "{compared}");
}
