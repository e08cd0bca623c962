//! What the tests do together: a server with a keeper, homes with theirs, and the stories of homes.

use crate::database::Database;
use sayso_model::*;
use sayso_people::capability::Capability;
use sayso_people::db::{Homes, Joined, Taker};
use sayso_people::*;
use sayso_people::{Role, Session};
use std::collections::BTreeMap;
use std::error::Error as StdError;
use std::sync::{Arc, Mutex};
use uuid::Uuid;

pub fn at(second: i64) -> Moment {
    Moment::clamped(1_800_000_000_000).plus_seconds(second as f64)
}

pub fn label(text: &str) -> Label {
    Label::new(text).unwrap()
}

pub const fn home(n: u128) -> HomeId {
    HomeId(Uuid::from_u128(n))
}

/// Stories of homes, as another floor would keep them; and for which of them anyone asked.
#[derive(Default)]
pub struct Stories {
    logs: Mutex<BTreeMap<HomeId, Vec<Event>>>,
    pub asked: Mutex<Vec<HomeId>>,
}

impl Stories {
    pub fn with(homes: &[HomeId]) -> Self {
        let stories = Self::default();
        for of in homes {
            stories.logs.lock().unwrap().insert(*of, Vec::new());
        }
        stories
    }

    pub fn append(&self, event: Event) {
        self.logs.lock().unwrap().entry(event.home).or_default().push(event);
    }
}

impl Homes for Stories {
    async fn opens(&self, home: HomeId) -> Result<Option<Arc<Story>>, Box<dyn StdError + Send + Sync>> {
        self.asked.lock().unwrap().push(home);
        let log = self.logs.lock().unwrap().get(&home).cloned();
        Ok(log.map(|events| Arc::new(Story::from_events(events))))
    }
}

/// Someone signed in.
pub struct Signed {
    pub session: Session,
    pub token: Secret,
}

pub fn signed(joined: Joined) -> Signed {
    let (session, token) = joined.session.expect("a new account is signed in");
    Signed { session, token }
}

pub async fn take(people: &People, secret: &Secret, name: &str, now: Moment) -> Result<Joined, Error> {
    let taker = Taker::New { name: &label(name), language: Language::En };
    people.take_invitation(secret, taker, "192.0.2.1", "test", now, &mut OsSecrets).await
}

/// The server's first keeper.
pub async fn server_keeper(db: &Database) -> Signed {
    let (_, secret) = db.people.invite_first_keeper(at(0), &mut OsSecrets).await.unwrap();
    signed(take(&db.people, &secret, "Server keeper", at(0)).await.unwrap())
}

/// A home with its first keeper.
pub async fn keeper_of(db: &Database, server: &Signed, of: HomeId) -> Signed {
    let host = db.people.may_on_server(&server.session, Capability::Host, at(0)).await.unwrap();
    db.people.open_home(&host, of, at(0)).await.unwrap();
    let part = Part::new(Scope::Home(of), Role::Keeper, None, None).unwrap();
    let (_, secret) = db.people.invite(&host, &part, at(0), &mut OsSecrets).await.unwrap();
    signed(take(&db.people, &secret, "Ilda", at(0)).await.unwrap())
}

/// A database in which one home begins: the server's keeper, the home's, and where its story is read.
pub async fn one_home() -> (Database, Signed, Signed, Stories) {
    let db = Database::new().await;
    let server = server_keeper(&db).await;
    let keeper = keeper_of(&db, &server, home(1)).await;
    (db, server, keeper, Stories::with(&[home(1)]))
}

/// Someone whom the keeper of a home invites to a role there.
pub async fn joined(db: &Database, keeper: &Signed, stories: &Stories, part: Part, name: &str) -> Signed {
    let of = part.scope().home().unwrap();
    let leave = db.people.may(&keeper.session, Capability::ManagePeople, of, stories, at(1)).await.unwrap();
    let (_, secret) = db.people.invite(&leave, &part, at(1), &mut OsSecrets).await.unwrap();
    signed(take(&db.people, &secret, name, at(1)).await.unwrap())
}

/// A club with its keeper and a coach.
pub async fn club_with_coach(db: &Database, server: &Signed) -> (ClubId, Signed, Signed) {
    let host = db.people.may_on_server(&server.session, Capability::Host, at(0)).await.unwrap();
    let club = db.people.open_club(&host, &label("Meadow Club"), at(0), &mut OsSecrets).await.unwrap();
    let part = Part::new(Scope::Club(club), Role::ClubKeeper, None, None).unwrap();
    let (_, secret) = db.people.invite(&host, &part, at(0), &mut OsSecrets).await.unwrap();
    let keeper = signed(take(&db.people, &secret, "Club keeper", at(0)).await.unwrap());
    let manages = db.people.may_in_club(&keeper.session, Capability::ManageClub, club, at(0)).await.unwrap();
    let part = Part::new(Scope::Club(club), Role::Coach, None, None).unwrap();
    let (_, secret) = db.people.invite(&manages, &part, at(0), &mut OsSecrets).await.unwrap();
    (club, keeper, signed(take(&db.people, &secret, "Coach", at(0)).await.unwrap()))
}

pub fn event(n: u128, of: HomeId, second: i64, body: impl Into<Body>) -> Event {
    Event {
        id: EventId(Uuid::from_u128(n)),
        home: of,
        animal: None,
        person: None,
        happened_at: at(second),
        zone: Zone::utc(),
        recorded_at: at(second),
        source: Source::Tap,
        body: body.into(),
    }
}

pub fn is_denied(result: Result<Allowed, Error>) -> Denied {
    match result {
        Err(Error::Denied(why)) => why,
        other => panic!("{other:?}"),
    }
}
