//! A server of many homes of one's own for each test, on a database server of the tests' own.

use crate::cluster::Cluster;
use sayso_host::{Host, HostConfig, Mail, links, send_tidings};
use sayso_model::{
    AccountId, ClubId, Coach, Consent, ConsentGiven, Event, EventId, HomeId, Label, Language, Note, Sign, SignLevel,
    Story, When,
};
use sayso_norms::Release;
use sayso_people::db::Taker;
use sayso_people::{Allowed, Capability, OsSecrets, Part, Role, Scope, Secret, Session};
use sayso_store::Database;
use sayso_web::connections::{self, Bounds};
use std::net::Ipv4Addr;
use std::sync::Arc;
use tokio::net::TcpListener;
use tokio::task::JoinHandle;
use uuid::Uuid;

/// A running server.
pub struct Hosted {
    host: Arc<Host>,
    runs: JoinHandle<()>,
    // Last, for it stops the database.
    cluster: Cluster,
}

impl Hosted {
    pub async fn start() -> Self {
        Self::start_with(|_| {}).await
    }

    /// The same that was given what other homes did.
    pub async fn start_beside(norms: Release) -> Self {
        Self::start_with(|config| config.norms = Some(Arc::new(norms))).await
    }

    /// The same whose mail goes to a server on that port.
    pub async fn start_posting(port: u16) -> Self {
        let (url, from) = (format!("smtp://127.0.0.1:{port}"), "Sayso <sayso@sayso.example>".to_owned());
        Self::start_with(|config| config.mail = Mail::Smtp { url, from }).await
    }

    async fn start_with(set: impl FnOnce(&mut HostConfig)) -> Self {
        let cluster = Cluster::start(false);
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await.unwrap();
        let at = listener.local_addr().unwrap();
        let database = Database::at(cluster.address("postgres", "postgres"));
        let mut config = HostConfig::here(database, format!("http://localhost:{}", at.port()).parse().unwrap());
        set(&mut config);
        let host = Arc::new(Host::open(&config).await.unwrap());
        let (app, patience) = (sayso_host::app(Arc::clone(&host)), config.patience);
        let runs = tokio::spawn(async move {
            let bounds = Bounds::of_this_process();
            connections::run(listener, app, None, (patience, bounds), std::future::pending()).await;
        });
        Self { host, runs, cluster }
    }

    pub fn url(&self, path: &str) -> String {
        links::page(&self.host.public_url, path.trim_start_matches('/'))
    }

    /// A new home, and the path of its first keeper's link.
    pub async fn invitation(&self) -> (HomeId, String) {
        let by = self.hosts().await;
        let home = HomeId(Uuid::now_v7());
        self.host.server.found(home).await.unwrap();
        let link = self.opened(&by, home).await;
        (home, link)
    }

    /// A home of some days, its keeper's link, a club, and the link of a coach in it.
    pub async fn home_and_club(&self) -> (HomeId, String, ClubId, String) {
        let (people, now, by) = (&self.host.people, self.host.now(), self.hosts().await);
        let mut plan = sayso_sim::demo_home(now);
        plan.days = 12;
        let lived = sayso_sim::simulate(&plan, 3, now).unwrap().events;
        let home = lived[0].home;
        let store = self.host.server.found(home).await.unwrap();
        for events in lived.chunks(500) {
            store.append(events.to_vec()).await.unwrap();
        }
        let keeper = self.opened(&by, home).await;
        let club = people.open_club(&by, &Label::new("Meadow Club").unwrap(), now, &mut OsSecrets).await.unwrap();
        let part = Part::new(Scope::Club(club), Role::ClubKeeper, None, None).unwrap();
        let (_, secret) = people.invite(&by, &part, now, &mut OsSecrets).await.unwrap();
        let session = self.taken(&secret, "Heron").await;
        let by = people.may_in_club(&session, Capability::ManageClub, club, now).await.unwrap();
        let part = Part::new(Scope::Club(club), Role::Coach, None, None).unwrap();
        let (_, secret) = people.invite(&by, &part, now, &mut OsSecrets).await.unwrap();
        (home, keeper, club, format!("/join/{}", secret.reveal()))
    }

    /// So many more homes that share their figures with a club: one animal each, of some weeks, some with a trouble.
    pub async fn caseload(&self, club: ClubId, homes: u32) {
        let (people, now) = (&self.host.people, self.host.now());
        let account = people.members(Scope::Server).await.unwrap()[0].membership.account;
        let by = Allowed {
            capability: Capability::Host,
            account,
            scope: Scope::Server,
            role: Role::ServerKeeper,
            person: None,
        };
        for nth in 0..homes {
            let name = Label::new(&format!("Row {}", nth + 1)).unwrap();
            let animal = Label::new(&format!("Pip {}", nth + 1)).unwrap();
            let lived = sayso_sim::troubled_called(4, nth, now, name, animal).run.events;
            let home = lived[0].home;
            let given = ConsentGiven {
                consent: Consent::CoachFigures { to: Coach::Club { club } },
                words_version: Consent::WORDS,
                holds: None,
            };
            let consent = Event {
                id: EventId(Uuid::now_v7()),
                animal: None,
                happened_at: now,
                recorded_at: now,
                body: given.into(),
                ..lived[0].clone()
            };
            // Something is new in each.
            let what = Note::new("guards food, a thing or the button").unwrap();
            let sign = Sign { sign: what, level: SignLevel::Strong, when: When::After, session: None };
            let animal = lived.iter().find_map(|event| event.animal);
            let new = Event { id: EventId(Uuid::now_v7()), animal, body: sign.into(), ..consent.clone() };
            let store = self.host.server.found(home).await.unwrap();
            for events in lived.chunks(500) {
                store.append(events.to_vec()).await.unwrap();
            }
            self.opened(&by, home).await;
            store.append(vec![consent.clone(), new]).await.unwrap();
            let scope = Scope::Home(home);
            let leave = Allowed { capability: Capability::Consent, account, scope, role: Role::Keeper, person: None };
            people.witness(&leave, &consent, now).await.unwrap();
        }
    }

    /// The link of one more coach of a club.
    pub async fn coach_of(&self, club: ClubId) -> String {
        let (people, now) = (&self.host.people, self.host.now());
        let scope = Scope::Club(club);
        let members = people.members(scope).await.unwrap();
        let keeper = members.iter().find(|m| m.membership.part.role() == Role::ClubKeeper).unwrap();
        let (account, capability) = (keeper.membership.account, Capability::ManageClub);
        let by = Allowed { capability, account, scope, role: Role::ClubKeeper, person: None };
        let part = Part::new(scope, Role::Coach, None, None).unwrap();
        let (_, secret) = people.invite(&by, &part, now, &mut OsSecrets).await.unwrap();
        format!("/join/{}", secret.reveal())
    }

    async fn taken(&self, secret: &Secret, name: &str) -> Session {
        let (name, language) = (Label::new(name).unwrap(), Language::En);
        let taker = Taker::New { name: &name, language };
        let (people, now) = (&self.host.people, self.host.now());
        people.take_invitation(secret, taker, "", "", now, &mut OsSecrets).await.unwrap().session.unwrap().0
    }

    /// Leave to open homes and clubs.
    async fn hosts(&self) -> Allowed {
        let (people, now) = (&self.host.people, self.host.now());
        let (_, first) = people.invite_first_keeper(now, &mut OsSecrets).await.unwrap();
        let session = self.taken(&first, "Wren").await;
        people.may_on_server(&session, Capability::Host, now).await.unwrap()
    }

    /// Opens a home that is founded; the path of its first keeper's link.
    async fn opened(&self, by: &Allowed, home: HomeId) -> String {
        let (people, now) = (&self.host.people, self.host.now());
        people.open_home(by, home, now).await.unwrap();
        let part = Part::new(Scope::Home(home), Role::Keeper, None, None).unwrap();
        let (_, secret) = people.invite(by, &part, now, &mut OsSecrets).await.unwrap();
        format!("/join/{}", secret.reveal())
    }

    /// Nobody's sign-in is fresh any more.
    pub async fn sign_ins_grow_old(&self) {
        let database = self.cluster.address("postgres", "postgres");
        let old = "UPDATE people.session SET proved_at = proved_at - 3600000";
        self.cluster.run("psql", &[&database, "-qc", old]);
    }

    /// A keeper of the server invites a new keeper to a home that is said to have lost its way in.
    pub async fn invites_anew(&self, home: HomeId) {
        let (people, now) = (&self.host.people, self.host.now());
        let keepers = people.members(Scope::Server).await.unwrap();
        let by = Allowed {
            capability: Capability::Host,
            account: keepers[0].membership.account,
            scope: Scope::Server,
            role: Role::ServerKeeper,
            person: None,
        };
        people.invite_keeper_anew(&by, home, now, &mut OsSecrets).await.unwrap();
    }

    /// The home leaves, as its keeper's page does it.
    pub async fn leaves(&self, home: HomeId) {
        let (account, scope) = (AccountId(Uuid::now_v7()), Scope::Home(home));
        let by = Allowed { capability: Capability::Leave, account, scope, role: Role::Keeper, person: None };
        self.host.people.leave(&by, self.host.now()).await.unwrap();
        self.host.server.erase(home).await.unwrap();
    }

    /// The letters that are due in so many days go out; how many.
    pub async fn letters_in(&self, days: f64) -> usize {
        send_tidings(&self.host, self.host.now().plus_seconds(days * 86_400.0)).await.unwrap()
    }

    /// What happened in a home, written down by nobody's page.
    pub async fn writes(&self, home: HomeId, events: Vec<Event>) {
        self.host.server.home(home).append(events).await.unwrap();
    }

    /// What a home's log tells.
    pub async fn story(&self, home: HomeId) -> Arc<Story> {
        self.host.server.home(home).story(home).await.unwrap()
    }
}

impl Drop for Hosted {
    fn drop(&mut self) {
        self.runs.abort();
    }
}
