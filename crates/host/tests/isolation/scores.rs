//! Who scores sees neither what others scored nor what a check has drawn.

use crate::house::{Asker, House};
use axum::http::StatusCode;
use sayso_model::{Body, Event, EventId, LikeTrial, LikesTest, PersonId, ProbePlan, ProbeTrial};
use uuid::Uuid;

fn marked(page: &str, test: &str) -> usize {
    page.matches(&format!("data-test=\"{test}\"")).count()
}

/// Answers by their ids, with who noted each.
type Answers = Vec<(EventId, Option<PersonId>)>;

/// The tests and checks of a home by their pages, each with the ids of its answers and who noted them.
fn pages(house: &House) -> Vec<(String, Answers)> {
    let (story, mut all) = (&house.story, Vec::new());
    for animal in story.animals().into_keys() {
        for test in story.of::<LikesTest>(animal) {
            let of = test.part.assessment;
            let trials = story.of::<LikeTrial>(animal).filter(|t| t.part.assessment == of);
            all.push((format!("/a/{animal}/likes/test/{of}"), trials.map(|t| (t.id(), t.person())).collect()));
        }
        for plan in story.of::<ProbePlan>(animal) {
            let of = plan.part.probe;
            let trials = story.of::<ProbeTrial>(animal).filter(|t| t.part.probe == of);
            all.push((format!("/a/{animal}/checks/{of}/presenter"), trials.map(|t| (t.id(), t.person())).collect()));
        }
    }
    all
}

#[tokio::test]
async fn who_scores_sees_no_answer_of_others_and_nothing_drawn() {
    let mut house = House::new().await;
    let people = house.people().await;
    let one = |name: &str| -> Asker { people.iter().find(|p| p.name == name).unwrap().clone() };
    let (keeper, observer, sitter) = (one("keeper"), one("observer"), one("sitter"));
    let own = house.story.people().into_values().next_back().map(|p| p.person);
    let all = pages(&house);
    let mut shown = 0;
    for (path, trials) in &all {
        let (status, kept) = house.get(&keeper, path).await;
        assert_eq!(status, StatusCode::OK, "{path}");
        let of_others = trials.iter().filter(|(_, by)| *by != own);
        shown += of_others.clone().filter(|(id, _)| kept.contains(&id.to_string())).count();
        for asker in [&observer, &sitter] {
            let (status, page) = house.get(asker, path).await;
            assert_eq!(status, StatusCode::OK, "{} {path}", asker.name);
            for (id, _) in of_others.clone() {
                assert!(!page.contains(&id.to_string()), "{} {path}", asker.name);
            }
            if trials.iter().all(|(_, by)| *by != own) {
                assert!(!page.contains("<table"), "{} {path}", asker.name);
            }
            // Nothing is offered that is closed.
            for closed in ["/likes\"", "/checks/", "/people/", "/sheet\"", "/setter\""] {
                let offered = page.split("<main").nth(1).unwrap().split("href=\"").skip(1);
                let offered = offered.map(|rest| &rest[..=rest.find('"').unwrap()]);
                for link in offered.filter(|link| link.contains(closed)) {
                    let (status, _) = house.get(asker, link.trim_end_matches('"')).await;
                    assert_eq!(status, StatusCode::OK, "{} is led from {path} to {link}", asker.name);
                }
            }
        }
    }
    assert!(shown > 2 && all.iter().any(|(path, _)| path.contains("/checks/")), "a keeper sees what others noted");
    for (path, _) in all.iter().filter(|(path, _)| path.contains("/checks/")) {
        for drawn in ["setter", "sheet", "sheet.pdf"] {
            let path = path.replace("presenter", drawn);
            assert_eq!(house.get(&keeper, &path).await.0, StatusCode::OK);
            for asker in [&observer, &sitter] {
                assert_eq!(house.get(asker, &path).await.0, StatusCode::FORBIDDEN, "{} {path}", asker.name);
            }
        }
        let scorers = path.replace("presenter", "scorer");
        assert_eq!(house.get(&observer, &scorers).await.0, StatusCode::OK);
    }
}

#[tokio::test]
async fn what_one_scored_oneself_has_its_page_and_its_undo() {
    let mut house = House::new().await;
    let people = house.people().await;
    let observer = people.iter().find(|p| p.name == "observer").unwrap();
    let own = house.story.people().into_values().next_back().map(|p| p.person);
    let all = house.story.animals().into_keys().flat_map(|animal| house.story.of::<LikeTrial>(animal).last());
    let first = all.last().unwrap().event.clone();
    let Body::LikeTrial(trial) = &first.body else { panic!("{first:?}") };
    let (animal, test) = (first.animal.unwrap(), trial.assessment);
    let board = house.get(observer, &format!("/a/{animal}/board")).await.1;
    let path = format!("/a/{animal}/scored");
    assert!(marked(&board, "own-scores") == 1 && board.contains(&path) && !board.contains("/sheet\""), "{board}");
    let before = house.get(observer, &path).await;
    assert_eq!(before.0, StatusCode::OK);
    let noted = Event { id: EventId(Uuid::now_v7()), person: own, recorded_at: house.host.now(), ..first.clone() };
    let noted = Event { happened_at: house.host.now(), ..noted };
    house.host.server.home(house.home).append(vec![noted.clone()]).await.unwrap();
    let after = house.get(observer, &path).await.1;
    assert_eq!(marked(&after, "scored"), marked(&before.1, "scored") + 1);
    let page = house.get(observer, &format!("/a/{animal}/likes/test/{test}")).await.1;
    assert!(page.contains(&format!("name=\"trial\" value=\"{}\"", noted.id)), "{page}");
    let form = format!("trial={}", noted.id);
    let kind = "application/x-www-form-urlencoded";
    let undone = house.post(observer, &format!("/a/{animal}/likes/test/{test}/undo"), &form, kind).await;
    assert_eq!(undone.0, StatusCode::SEE_OTHER, "{}", undone.1);
    assert_eq!(marked(&house.get(observer, &path).await.1, "scored"), marked(&before.1, "scored"));
}

#[tokio::test]
async fn a_look_by_who_only_writes_is_told_by_its_page_and_a_tap_is_no_look() {
    let mut house = House::new().await;
    let people = house.people().await;
    let animal = house.story.animals().into_keys().next().unwrap();
    let looks = async || house.host.people.looks(house.home, 50).await.unwrap();
    for name in ["observer", "sitter", "member"] {
        let asker = people.iter().find(|p| p.name == name).unwrap();
        let before = looks().await;
        let told =
            house.post(asker, &format!("/a/{animal}/designs/x/note"), "", "application/x-www-form-urlencoded").await;
        assert_ne!(told.0, StatusCode::FORBIDDEN);
        assert_eq!(looks().await, before, "{name} wrote");
        assert_eq!(house.get(asker, &format!("/a/{animal}/board")).await.0, StatusCode::OK);
        let noted = looks().await.len() - before.len();
        assert_eq!(noted, usize::from(name != "member"), "{name} looked");
    }
    let pages: Vec<(String, String)> = looks().await.into_iter().map(|l| (l.capability, l.page)).collect();
    assert!(pages.iter().all(|page| *page == ("record".to_owned(), "board".to_owned())), "{pages:?}");
}
