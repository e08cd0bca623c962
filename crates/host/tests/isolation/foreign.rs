//! With another home's ids: what is there answers as what is not, whoever asks.

use crate::addresses::filled;
use crate::house::{Asker, House, ids};
use axum::http::StatusCode;
use sayso_host::asked::TABLE;
use sayso_model::HomeId;
use sayso_people::{Capability, OsSecrets, Part, Role, Scope};
use std::collections::BTreeSet;
use uuid::Uuid;

const FORM: &str = "application/x-www-form-urlencoded";

/// An address with an id that is nowhere in the place of each that is there.
fn nowhere(path: &str, ids: &BTreeSet<String>) -> String {
    let unknown = |part: &str| ids.contains(part).then(|| Uuid::now_v7().to_string());
    path.split('/').map(|part| unknown(part).unwrap_or_else(|| part.to_owned())).collect::<Vec<_>>().join("/")
}

/// Reads and writes both addresses, and holds one answer against the other.
async fn alike(house: &House, asker: &Asker, there: &str, unknown: &str, form: &str) {
    for method in ["GET", "POST"] {
        let of = |path: String| async move {
            let (status, body) = match method {
                "GET" => house.get(asker, &path).await,
                _ => house.post(asker, &path, form, FORM).await,
            };
            // What is asked for may be said back, as it was asked.
            let said = path.split(['/', '=']).filter(|part| part.parse::<Uuid>().is_ok());
            (status, said.fold(body, |body, id| body.replace(id, "")))
        };
        let (one, other) = (of(there.to_owned()).await, of(unknown.to_owned()).await);
        assert_eq!(one.0, other.0, "{method} {there} by {}", asker.name);
        assert_eq!(one.1, other.1, "{method} {there} by {}", asker.name);
    }
}

#[tokio::test]
async fn another_homes_addresses_answer_as_if_there_were_no_such_home() {
    let mut house = House::new().await;
    let people = house.people().await;
    let mut compared = 0;
    for asker in people.iter().filter(|p| p.token.is_some()) {
        // Each asks for what is not theirs: who keeps the other home for the first, those of the first for the other.
        let story = if asker.name == "keeper of another home" { &house.story } else { &house.other_story };
        let ids = ids(story);
        for (route, ..) in TABLE.iter().filter(|line| line.0.contains('{')) {
            let path = filled(route, story);
            let unknown = nowhere(&path, &ids);
            if unknown == path {
                continue;
            }
            alike(&house, asker, &path, &unknown, "").await;
            compared += 2;
        }
    }
    // What is one's own is there.
    let stranger = people.iter().find(|p| p.name == "keeper of another home").unwrap();
    let own = house.other_story.animals().into_keys().next().unwrap();
    assert_eq!(house.get(stranger, &format!("/a/{own}/today")).await.0, StatusCode::OK);
    eprintln!("{compared} pairs compared");
    assert!(compared > 1_000, "{compared}");
}

/// What people made in a home: a role, an open invitation, a linked notebook.
struct Made {
    role: Uuid,
    invitation: Uuid,
    notebook: Uuid,
}

impl Made {
    async fn by(house: &House, keeper: &Asker, home: HomeId) -> Self {
        let (people, now) = (&house.host.people, house.host.now());
        let session = people.session(keeper.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let home = Scope::Home(home);
        let by = |capability| sayso_people::Allowed {
            capability,
            account: session.account,
            scope: home,
            role: Role::Keeper,
            person: None,
        };
        let part = Part::new(home, Role::Member, None, None).unwrap();
        let manages = by(Capability::ManagePeople);
        people.invite(&manages, &part, now, &mut OsSecrets).await.unwrap();
        let invitation = people.invitations(home, now).await.unwrap()[0].id.0;
        let links = by(Capability::LinkNotebook);
        let (_, code) = people.make_notebook_code(&links, now, &mut OsSecrets).await.unwrap();
        let (notebook, _) = people.link_notebook(&code, "At home", now, &mut OsSecrets).await.unwrap();
        let role = people.members(home).await.unwrap()[0].membership.id.0;
        Self { role, invitation, notebook: notebook.id.0 }
    }
}

#[tokio::test]
async fn what_people_made_in_another_home_answers_as_if_it_were_nowhere_and_stays() {
    let mut house = House::new().await;
    let people = house.people().await;
    let stranger = people.iter().find(|p| p.name == "keeper of another home").unwrap();
    let others = Made::by(&house, stranger, house.other).await;
    let entry = house.other_story.ledger().all().next().unwrap().id.0;
    let addresses = [
        ("/sharing/people/{id}", others.role),
        ("/sharing/people/{id}/end", others.role),
        ("/sharing/invitations/{id}/end", others.invitation),
        ("/sharing/anew/{id}/refuse", others.invitation),
        ("/sharing/notebooks/{id}/end", others.notebook),
        ("/sharing/handed/{id}", entry),
        ("/sharing/with/{id}", house.other.0),
        ("/desk/programmes/{id}", entry),
        ("/desk/hand-over?home={id}", house.other.0),
        ("/people?home={id}", house.other.0),
    ];
    // As their own pages send it: a form of a home that they have to do with.
    let form = format!("home={}", house.home);
    let mut compared = 0;
    for asker in people.iter().filter(|p| p.token.is_some() && p.name != stranger.name) {
        for (address, id) in addresses {
            let of = |id: Uuid| address.replace("{id}", &id.to_string());
            alike(&house, asker, &of(id), &of(Uuid::now_v7()), &form).await;
            compared += 2;
        }
    }
    assert_eq!(compared, 8 * addresses.len() * 2);
    // And nothing was ended by it,
    let (at, now) = (Scope::Home(house.other), house.host.now());
    assert_eq!(house.host.people.members(at).await.unwrap().len(), 1);
    assert_eq!(house.host.people.invitations(at, now).await.unwrap().len(), 1);
    assert_eq!(house.host.people.notebooks(house.other, now).await.unwrap().len(), 1);
    // which the same form does with what is one's own.
    let keeper = people.iter().find(|p| p.role == Some(Role::Keeper)).unwrap();
    let own = Made::by(&house, keeper, house.home).await;
    for path in [format!("invitations/{}/end", own.invitation), format!("notebooks/{}/end", own.notebook)] {
        let (status, body) = house.post(keeper, &format!("/sharing/{path}"), &form, FORM).await;
        assert_eq!(status, StatusCode::SEE_OTHER, "{path}: {body}");
    }
    assert_eq!(house.host.people.invitations(Scope::Home(house.home), now).await.unwrap().len(), 0);
    assert_eq!(house.host.people.notebooks(house.home, now).await.unwrap().len(), 0);
}
