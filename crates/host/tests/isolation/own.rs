//! The server's own addresses by every role: consent, people, clubs, the desk, the server, accounts.

use crate::house::{Asker, House};
use crate::table::routes_of;
use axum::http::StatusCode;
use sayso_people::table::{Grant, grant};
use sayso_people::{Capability as C, Role};
use std::collections::BTreeSet;
use std::path::Path;

/// What an address takes.
#[derive(Clone, Copy)]
enum Takes {
    /// Whoever asks, signed in or not: a way in, or what a secret in the address opens.
    Anyone,
    /// An account: what it shows is the account's own.
    Account,
    /// One of these by a role in the home that the browser is about.
    Home(&'static [C]),
    /// By a role in the club.
    Club(C),
    /// Whoever coaches in some club.
    Coach,
    /// By a role on the server.
    Server(C),
    /// The key of a linked notebook, which no browser has.
    Key,
    /// No such method; on pages that a form leads to, a way back to the page.
    Nothing,
}
use Takes::{Account, Anyone, Club, Coach, Home, Key, Nothing, Server};

/// Address, reading, writing.
#[rustfmt::skip]
const OWN: &[(&str, Takes, Takes)] = &[
    ("/linked/key", Nothing, Key),
    ("/linked/events", Key, Key),
    ("/linked/about", Key, Nothing),
    ("/linked/media", Key, Nothing),
    ("/linked/media/{hash}", Key, Key),
    ("/linked/end", Nothing, Key),
    ("/account", Account, Account),
    ("/account/passkey", Nothing, Account),
    ("/account/passkey/done", Nothing, Account),
    ("/account/passkey/forget", Nothing, Account),
    ("/account/email", Nothing, Account),
    ("/account/email/forget", Nothing, Account),
    ("/account/email/{secret}", Account, Account),
    // No identity provider here; with one: `signing`.
    ("/account/provider", Nothing, Nothing),
    ("/account/provider/forget", Nothing, Account),
    ("/account/codes", Nothing, Account),
    ("/account/news", Nothing, Account),
    ("/account/session/end", Nothing, Account),
    ("/account/session/others", Nothing, Account),
    ("/account/role/leave", Nothing, Account),
    ("/account/erase", Account, Account),
    ("/calendar/{address}", Anyone, Nothing),
    ("/calendar", Home(&[C::Agree, C::Advise]), Nothing),
    ("/calendar/new", Home(&[C::Agree, C::Advise]), Home(&[C::Agree, C::Advise])),
    ("/calendar/end", Nothing, Home(&[C::Agree, C::Advise])),
    ("/desk/calendar", Coach, Nothing),
    ("/desk/calendar/new", Coach, Coach),
    ("/desk/calendar/end", Nothing, Coach),
    ("/club/{club}", Club(C::SeeClub), Nothing),
    ("/club/{club}/invite", Nothing, Club(C::ManageClub)),
    ("/club/{club}/end", Nothing, Club(C::ManageClub)),
    ("/club/{club}/invitations/end", Nothing, Club(C::ManageClub)),
    ("/desk/colleagues", Coach, Nothing),
    ("/desk/cover", Nothing, Coach),
    ("/desk/cover/end", Nothing, Coach),
    ("/desk/hand-over?home={id}", Coach, Coach),
    ("/desk", Coach, Nothing),
    ("/desk/week", Coach, Nothing),
    ("/desk/changes", Coach, Nothing),
    ("/desk/aside", Nothing, Coach),
    ("/desk/back", Nothing, Coach),
    ("/desk/mark", Nothing, Coach),
    ("/desk/spoken", Nothing, Coach),
    ("/desk/programmes", Coach, Nothing),
    ("/desk/programmes/new", Coach, Coach),
    ("/desk/programmes/{programme}", Coach, Nothing),
    ("/desk/programmes/{programme}/propose", Nothing, Coach),
    ("/desk/programmes/{programme}/close", Nothing, Coach),
    ("/homes", Account, Account),
    ("/homes/end", Nothing, Account),
    ("/join/{secret}", Anyone, Anyone),
    ("/welcome", Account, Nothing),
    ("/letters/stop/{secret}", Anyone, Anyone),
    ("/sharing/notebooks", Home(&[C::LinkNotebook]), Nothing),
    ("/sharing/notebooks/new", Home(&[C::LinkNotebook]), Home(&[C::LinkNotebook])),
    ("/sharing/notebooks/{id}/end", Nothing, Home(&[C::LinkNotebook])),
    ("/linked", Anyone, Nothing),
    ("/server", Server(C::SeeServer), Nothing),
    ("/server/homes", Nothing, Server(C::Host)),
    ("/server/homes/link", Nothing, Server(C::Host)),
    ("/server/homes/anew", Nothing, Server(C::Host)),
    ("/server/clubs", Nothing, Server(C::Host)),
    ("/server/clubs/link", Nothing, Server(C::Host)),
    ("/server/keepers", Nothing, Server(C::ManageServer)),
    ("/server/keepers/end", Nothing, Server(C::ManageServer)),
    ("/server/sessions", Nothing, Server(C::ManageServer)),
    ("/server/finish", Nothing, Server(C::ManageServer)),
    // Whoever belongs to no home sees what is theirs to know.
    ("/sharing", Account, Nothing),
    ("/sharing/invite", Home(&[C::ManagePeople]), Home(&[C::ManagePeople])),
    ("/sharing/invitations/{id}/end", Nothing, Home(&[C::ManagePeople])),
    ("/sharing/anew/{id}/refuse", Nothing, Home(&[C::SeePeople])),
    ("/sharing/people/{membership}", Home(&[C::ManagePeople]), Home(&[C::ManagePeople])),
    ("/sharing/people/{membership}/end", Nothing, Home(&[C::ManagePeople])),
    ("/sharing/consent", Home(&[C::TakeBack]), Home(&[C::Consent])),
    ("/sharing/consent/back", Nothing, Home(&[C::TakeBack])),
    ("/sharing/end", Home(&[C::TakeBack]), Home(&[C::TakeBack])),
    ("/sharing/handed/{proposal}", Home(&[C::Consent]), Home(&[C::Consent])),
    ("/sharing/with?club={club}", Home(&[C::Consent]), Nothing),
    ("/sharing/with/{club}", Home(&[C::Consent]), Nothing),
    ("/sharing/with/{club}/{coach}", Home(&[C::Consent]), Nothing),
    ("/sharing/leave", Home(&[C::Leave]), Home(&[C::Leave])),
    ("/sign-in", Anyone, Nothing),
    ("/sign-in/passkey", Nothing, Anyone),
    ("/sign-in/passkey/done", Nothing, Anyone),
    ("/sign-in/link", Nothing, Anyone),
    ("/sign-in/link/{secret}", Anyone, Anyone),
    ("/sign-in/code", Nothing, Anyone),
    ("/sign-in/provider", Anyone, Nothing),
    ("/sign-in/provider/back", Anyone, Nothing),
    ("/sign-out", Nothing, Account),
    ("/pair", Anyone, Nothing),
];

fn has(role: Role, capability: C) -> bool {
    match grant(role, capability) {
        Grant::Yes | Grant::OnDays => true,
        // Nothing is shared in this test.
        Grant::WithConsent | Grant::No => false,
    }
}

impl Takes {
    /// Whether it lets this account in.
    fn lets(self, asker: &Asker) -> bool {
        let by = |capability| asker.role.is_some_and(|role| has(role, capability));
        match self {
            Anyone | Account => true,
            Home(any_of) => any_of.iter().any(|capability| by(*capability)),
            Club(capability) | Server(capability) => by(capability),
            Coach => by(C::SeeDesk),
            Key | Nothing => false,
        }
    }
}

fn denied(status: StatusCode, body: &str) -> bool {
    status == StatusCode::FORBIDDEN
        || status == StatusCode::UNAUTHORIZED
        || (status == StatusCode::NOT_FOUND && body.contains("There is nothing at this address"))
}

#[test]
fn every_own_address_of_the_server_is_decided_on() {
    let src = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut routes = BTreeSet::new();
    for folder in ["pages", "linked"] {
        routes.extend(routes_of(&src.join(folder)));
    }
    let decided: BTreeSet<String> = OWN.iter().filter_map(|line| Some(line.0.split('?').next()?.to_owned())).collect();
    assert_eq!(decided.len(), OWN.len(), "an address stands twice");
    let open: Vec<_> = routes.difference(&decided).collect();
    let gone: Vec<_> = decided.difference(&routes).collect();
    assert!(open.is_empty(), "say here what these take: {open:?}");
    assert!(gone.is_empty(), "these are no addresses any more: {gone:?}");
}

#[tokio::test]
async fn each_own_address_is_open_to_whom_its_line_says_and_to_nobody_else() {
    let mut house = House::new().await;
    let people = house.people().await;
    let (mut asked, mut opened) = (0, 0);
    let nil = uuid::Uuid::nil().to_string();
    for (route, reading, writing) in OWN {
        let path = route
            .replace("{club}", &house.club.to_string())
            .replace("{hash}", &"0".repeat(64))
            .replace("{secret}", "nothing")
            .replace("{address}", "nothing")
            .replace("{id}", &nil);
        let names_nothing = path.contains('{') || path.contains(&nil);
        let path =
            path.split('/').map(|part| if part.starts_with('{') { &nil } else { part }).collect::<Vec<_>>().join("/");
        // Who keeps another home comes to pages about that: see `foreign`.
        for asker in people.iter().filter(|p| {
            p.name != "keeper of another home" || !matches!((reading, writing), (Home(_), _) | (_, Home(_)))
        }) {
            for (method, takes) in [("GET", *reading), ("POST", *writing)] {
                let lets = takes.lets(asker);
                // What is let in is written elsewhere: here it would end the sessions this is asked with.
                if method == "POST" && lets && asker.token.is_some() {
                    continue;
                }
                let (status, body) = match method {
                    "GET" => house.get(asker, &path).await,
                    _ => house.post(asker, &path, "", "application/x-www-form-urlencoded").await,
                };
                let what = format!(
                    "{method} {path} by {}: {status} {}",
                    asker.name,
                    body.rsplit("<main").next().unwrap_or_default()
                );
                assert!(status != StatusCode::INTERNAL_SERVER_ERROR, "{what}");
                asked += 1;
                let led_away = status == StatusCode::SEE_OTHER;
                match takes {
                    Anyone => assert!(status != StatusCode::UNAUTHORIZED && !denied(status, ""), "{what}"),
                    Key => assert!(denied(status, &body) || status == StatusCode::BAD_REQUEST, "{what}"),
                    Nothing => {
                        assert!(led_away || denied(status, &body) || status == StatusCode::METHOD_NOT_ALLOWED, "{what}")
                    }
                    _ if asker.token.is_none() => assert!(denied(status, &body) || led_away, "{what}"),
                    _ if !lets => assert!(denied(status, &body), "{what}"),
                    _ if names_nothing => assert!(status != StatusCode::FORBIDDEN, "{what}"),
                    _ => {
                        assert!(!denied(status, &body), "{what}");
                        opened += 1;
                    }
                }
            }
        }
    }
    eprintln!("{asked} asked, {opened} open");
    assert!(asked > 1_300 && opened > 70, "{asked} asked, {opened} open");
}

#[tokio::test]
async fn what_a_club_opens_is_not_open_by_a_role_in_another_club() {
    let mut house = House::new().await;
    let people = house.people().await;
    let other = house.another_club(people.iter().find(|p| p.role == Some(Role::ServerKeeper)).unwrap()).await;
    let mut asked = 0;
    for (route, reading, writing) in OWN.iter().filter(|line| line.0.contains("{club}") && line.0.starts_with("/club"))
    {
        let path = route.replace("{club}", &other.to_string());
        for asker in people.iter().filter(|p| p.token.is_some() && p.role != Some(Role::ServerKeeper)) {
            for (method, takes) in [("GET", reading), ("POST", writing)] {
                if matches!(takes, Nothing) {
                    continue;
                }
                let (status, body) = match method {
                    "GET" => house.get(asker, &path).await,
                    _ => house.post(asker, &path, "", "application/x-www-form-urlencoded").await,
                };
                assert!(denied(status, &body), "{method} {path} by {}: {status}", asker.name);
                asked += 1;
            }
        }
    }
    assert!(asked > 20, "{asked}");
}
