//! A server with two homes and people of every role in the first of them.

use crate::cluster::Cluster;
use crate::fresh;
use axum::Router;
use axum::body::Body;
use axum::http::{Request, Response, StatusCode, header};
use http_body_util::BodyExt;
use sayso_host::{Host, HostConfig, SESSION_COOKIE};
use sayso_model::{ClubId, Consent, ConsentGiven, Event, EventId, HomeId, Label, Language, Source, Story};
use sayso_people::db::{Joined, Taker};
use sayso_people::{Allowed, Capability, Days, OsSecrets, Part, Role, Scope, Secret, table};
use sayso_store::Database;
use sayso_web::state::machine_clock;
use std::collections::BTreeSet;
use std::sync::{Arc, LazyLock};
use tower::ServiceExt;

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

/// Who asks.
#[derive(Clone, Debug)]
pub struct Asker {
    pub name: &'static str,
    /// The role in the first home or its club, where there is one.
    pub role: Option<Role>,
    pub token: Option<Secret>,
}

pub struct House {
    pub host: Arc<Host>,
    address: String,
    pub app: Router,
    pub home: HomeId,
    pub story: Arc<Story>,
    pub other: HomeId,
    pub other_story: Arc<Story>,
    pub club: ClubId,
}

pub fn label(text: &str) -> Label {
    Label::new(text).unwrap()
}

pub async fn host(address: &str) -> Arc<Host> {
    let config = HostConfig::here(Database::at(address), "http://localhost/".parse().unwrap());
    Arc::new(Host::open(&config).await.unwrap())
}

async fn take(host: &Host, secret: &Secret, name: &str) -> Joined {
    let taker = Taker::New { name: &label(name), language: Language::En };
    host.people.take_invitation(secret, taker, "192.0.2.1", "test", host.now(), &mut OsSecrets).await.unwrap()
}

/// Some days of the demo, as a home of its own.
async fn lived_in(host: &Host, seed: u64) -> (HomeId, Arc<Story>) {
    let mut plan = sayso_sim::demo_home(machine_clock());
    plan.days = 8;
    let simulated = sayso_sim::simulate(&plan, seed, machine_clock()).unwrap();
    let home = simulated.events[0].home;
    let store = host.server.found(home).await.unwrap();
    for events in simulated.events.chunks(500) {
        store.append(events.to_vec()).await.unwrap();
    }
    (home, store.story(home).await.unwrap())
}

impl House {
    pub async fn new() -> Self {
        let address = fresh::database(&CLUSTER).await;
        let host = host(&address).await;
        let app = sayso_host::app(Arc::clone(&host));
        let (home, story) = lived_in(&host, 1).await;
        let (other, other_story) = lived_in(&host, 2).await;
        assert_ne!(home, other);
        Self { host, address, app, home, story, other, other_story, club: ClubId(uuid::Uuid::nil()) }
    }

    /// The server begins anew: nothing of any home is in its memory.
    pub async fn begins_anew(&mut self) {
        self.host = host(&self.address).await;
        self.app = sayso_host::app(Arc::clone(&self.host));
    }

    async fn invited(&self, by: &Asker, capability: Capability, part: Part) -> Joined {
        let session = self.host.people.session(by.token.as_ref().unwrap(), self.host.now()).await.unwrap().unwrap();
        let who = self.host.people.who(session.account).await.unwrap();
        let held =
            who.memberships.iter().find(|m| table::grant(m.part.role(), capability) == table::Grant::Yes).unwrap();
        let by = Allowed {
            capability,
            account: session.account,
            scope: held.part.scope(),
            role: held.part.role(),
            person: held.part.person(),
        };
        let (_, secret) = self.host.people.invite(&by, &part, self.host.now(), &mut OsSecrets).await.unwrap();
        take(&self.host, &secret, "Someone").await
    }

    /// Everyone: one of each role in the first home or around it, a stranger who keeps the other home, and nobody.
    pub async fn people(&mut self) -> Vec<Asker> {
        let (_, secret) = self.host.people.invite_first_keeper(self.host.now(), &mut OsSecrets).await.unwrap();
        let server = asker("server keeper", Some(Role::ServerKeeper), take(&self.host, &secret, "Server").await);
        let (people, now) = (&self.host.people, self.host.now());
        let session = people.session(server.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let hosts = people.may_on_server(&session, Capability::Host, now).await.unwrap();
        people.open_home(&hosts, self.home, now).await.unwrap();
        people.open_home(&hosts, self.other, now).await.unwrap();
        self.club = people.open_club(&hosts, &label("Meadow Club"), now, &mut OsSecrets).await.unwrap();
        let home = Scope::Home(self.home);
        let person = self.story.people().into_values().next_back().map(|p| p.person);
        let today = self.host.now().day(&self.story.zone());
        let agreed = Days::every(today.plus(-1), today.plus(1));
        let past = Days::every(today.plus(-9), today.plus(-8));
        let part = |scope, role, person, days| Part::new(scope, role, person, days).unwrap();
        let keeper = part(home, Role::Keeper, None, None);
        let keeper = asker("keeper", Some(Role::Keeper), self.invited(&server, Capability::Host, keeper).await);
        let others = part(Scope::Home(self.other), Role::Keeper, None, None);
        let stranger = asker("keeper of another home", None, self.invited(&server, Capability::Host, others).await);
        let club_keeper = part(Scope::Club(self.club), Role::ClubKeeper, None, None);
        let club_keeper =
            asker("club keeper", Some(Role::ClubKeeper), self.invited(&server, Capability::Host, club_keeper).await);
        let coach = part(Scope::Club(self.club), Role::Coach, None, None);
        let coach = asker("coach", Some(Role::Coach), self.invited(&club_keeper, Capability::ManageClub, coach).await);
        let mut all = vec![server, stranger, club_keeper, coach];
        for (name, part) in [
            ("member", part(home, Role::Member, None, None)),
            ("sitter", part(home, Role::Sitter, person, Some(agreed))),
            ("sitter of other days", part(home, Role::Sitter, person, Some(past))),
            ("observer", part(home, Role::Observer, person, None)),
        ] {
            let role = if name == "sitter of other days" { None } else { Some(part.role()) };
            all.push(asker(name, role, self.invited(&keeper, Capability::ManagePeople, part).await));
        }
        all.push(keeper);
        all.push(Asker { name: "nobody", role: None, token: None });
        all
    }

    /// Whoever keeps the other home makes someone a member of it.
    pub async fn joins_the_other(&self, stranger: &Asker, someone: &Asker) {
        self.comes_to_the_other(stranger, someone, Role::Member).await;
    }

    /// Or a keeper of it.
    pub async fn keeps_the_other(&self, stranger: &Asker, someone: &Asker) {
        self.comes_to_the_other(stranger, someone, Role::Keeper).await;
    }

    /// A club that none of them has to do with.
    pub async fn another_club(&self, server: &Asker) -> ClubId {
        let (people, now) = (&self.host.people, self.host.now());
        let session = people.session(server.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let hosts = people.may_on_server(&session, Capability::Host, now).await.unwrap();
        people.open_club(&hosts, &label("Harbour Club"), now, &mut OsSecrets).await.unwrap()
    }

    async fn comes_to_the_other(&self, stranger: &Asker, someone: &Asker, role: Role) {
        let (people, now) = (&self.host.people, self.host.now());
        let session = people.session(someone.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let keeper = people.session(stranger.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let by = Allowed {
            capability: Capability::ManagePeople,
            account: keeper.account,
            scope: Scope::Home(self.other),
            role: Role::Keeper,
            person: None,
        };
        let part = Part::new(Scope::Home(self.other), role, None, None).unwrap();
        let (_, secret) = people.invite(&by, &part, now, &mut OsSecrets).await.unwrap();
        let taker = Taker::Known(&session);
        people.take_invitation(&secret, taker, "192.0.2.1", "test", now, &mut OsSecrets).await.unwrap();
    }

    /// How many rules a home has.
    pub async fn rules(&self, home: HomeId) -> usize {
        self.host.server.home(home).story(home).await.unwrap().rules().len()
    }

    pub async fn ask(&self, asker: &Asker, request: Request<Body>) -> Response<Body> {
        let mut request = request;
        let headers = request.headers_mut();
        headers.insert(header::HOST, "localhost".parse().unwrap());
        if let Some(token) = &asker.token {
            let cookie = format!("{SESSION_COOKIE}={}; sayso_home={}", token.reveal(), self.home);
            headers.insert(header::COOKIE, cookie.parse().unwrap());
        }
        self.app.clone().oneshot(request).await.unwrap()
    }

    pub async fn get(&self, asker: &Asker, path: &str) -> (StatusCode, String) {
        let answer = self.ask(asker, Request::get(path).body(Body::empty()).unwrap()).await;
        let status = answer.status();
        let body = answer.into_body().collect().await.unwrap().to_bytes();
        (status, String::from_utf8_lossy(&body).into_owned())
    }

    pub async fn post(&self, asker: &Asker, path: &str, body: &str, kind: &str) -> (StatusCode, String) {
        let request = Request::post(path).header(header::CONTENT_TYPE, kind).body(Body::from(body.to_owned())).unwrap();
        let answer = self.ask(asker, request).await;
        let status = answer.status();
        let body = answer.into_body().collect().await.unwrap().to_bytes();
        (status, String::from_utf8_lossy(&body).into_owned())
    }

    /// The first home opens something to the club, as its page does.
    pub async fn consent(&self, keeper: &Asker, consent: Consent) {
        let (people, now) = (&self.host.people, self.host.now());
        let session = people.session(keeper.token.as_ref().unwrap(), now).await.unwrap().unwrap();
        let who = people.who(session.account).await.unwrap();
        let by = Allowed {
            capability: Capability::Consent,
            account: session.account,
            scope: Scope::Home(self.home),
            role: who.memberships[0].part.role(),
            person: None,
        };
        let event = Event {
            id: EventId(uuid::Uuid::now_v7()),
            home: self.home,
            animal: None,
            person: None,
            happened_at: now,
            zone: self.story.zone(),
            recorded_at: now,
            source: Source::Tap,
            body: ConsentGiven { consent, words_version: Consent::WORDS, holds: None }.into(),
        };
        self.host.server.home(self.home).append(vec![event.clone()]).await.unwrap();
        people.witness(&by, &event, now).await.unwrap();
    }
}

/// Ids of a home, as they stand in addresses and answers.
pub fn ids(story: &Story) -> BTreeSet<String> {
    let mut found: BTreeSet<String> = story.animals().into_keys().map(|id| id.to_string()).collect();
    found.extend(story.words().into_keys().map(|id| id.to_string()));
    found.extend(story.rewards().into_keys().map(|id| id.to_string()));
    found.extend(story.people().into_keys().map(|id| id.to_string()));
    found.extend(story.rules().into_keys().map(|id| id.to_string()));
    found.extend(story.ledger().all().map(|event| event.id.to_string()));
    found
}

fn asker(name: &'static str, role: Option<Role>, joined: Joined) -> Asker {
    let (_, token) = joined.session.unwrap();
    Asker { name, role, token: Some(token) }
}
