//! A server with one home, its keeper, a club and a coach; asked through the whole application.

use crate::cluster::Cluster;
use crate::fresh;
use axum::Router;
use axum::body::Body;
use axum::http::{HeaderMap, Request, StatusCode, header};
use http_body_util::BodyExt;
use sayso_host::{Host, HostConfig, Mail, SESSION_COOKIE};
use sayso_model::*;
use sayso_people::db::{Joined, Taker};
use sayso_people::{Capability, Days, OsSecrets, Part, Scope, Secret};
use sayso_store::Database;
use sayso_web::state::machine_clock;
use sqlx::Connection;
use sqlx::postgres::PgConnection;
use std::sync::atomic::{AtomicU32, Ordering};
use std::sync::{Arc, LazyLock};
use tower::ServiceExt;
use uuid::Uuid;

pub static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

pub use sayso_people::Role as Has;

/// Someone signed in.
#[derive(Clone)]
pub struct Signed {
    pub token: Secret,
    pub account: AccountId,
}

/// An answer.
#[derive(Debug)]
pub struct Answer {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: String,
}

impl Answer {
    /// Where it leads.
    pub fn to(&self) -> &str {
        self.headers.get(header::LOCATION).map_or("", |to| to.to_str().unwrap())
    }

    /// What stands in elements marked so for tests.
    pub fn marked(&self, test: &str) -> Vec<&str> {
        let mark = format!("data-test=\"{test}\"");
        let marked = self.body.split(&mark).skip(1);
        marked.map(|rest| rest.split_once('>').unwrap().1.split('<').next().unwrap()).collect()
    }

    pub fn holds(&self, text: &str) -> bool {
        self.body.contains(text)
    }
}

pub struct House {
    pub host: Arc<Host>,
    pub app: Router,
    pub address: String,
    pub home: HomeId,
    pub animal: AnimalId,
    pub person: PersonId,
    pub server: Signed,
    pub keeper: Signed,
    cards: AtomicU32,
}

/// Its connections go with it: what is left of a hundred houses is more than a database takes.
impl Drop for House {
    fn drop(&mut self) {
        tokio::task::block_in_place(|| tokio::runtime::Handle::current().block_on(self.host.close()));
    }
}

pub fn label(text: &str) -> Label {
    Label::new(text).unwrap()
}

pub async fn open(address: &str) -> Host {
    let config = HostConfig::here(Database::at(address), "http://localhost/".parse().unwrap());
    Host::open(&config).await.unwrap()
}

pub async fn take(host: &Host, secret: &Secret, name: &str) -> Result<Joined, sayso_people::Error> {
    let taker = Taker::New { name: &label(name), language: Language::En };
    host.people.take_invitation(secret, taker, "192.0.2.1", "test", host.now(), &mut OsSecrets).await
}

fn signed(joined: Joined) -> Signed {
    let (session, token) = joined.session.unwrap();
    Signed { token, account: session.account }
}

pub fn event(home: HomeId, body: impl Into<Body_>) -> Event {
    let now = machine_clock().plus_seconds(-60.0);
    Event {
        id: EventId(Uuid::now_v7()),
        home,
        animal: None,
        person: None,
        happened_at: now,
        zone: Zone::utc(),
        recorded_at: now,
        source: Source::Tap,
        body: body.into(),
    }
}
type Body_ = sayso_model::Body;

impl House {
    pub async fn new() -> Self {
        Self::with(Mail::Printed).await
    }

    /// One that sends mail.
    pub async fn with(mail: Mail) -> Self {
        let address = fresh::database(&CLUSTER).await;
        let here = HostConfig::here(Database::at(&address), "http://localhost/".parse().unwrap());
        let host = Arc::new(Host::open(&HostConfig { mail, ..here }).await.unwrap());
        let (_, secret) = host.people.invite_first_keeper(host.now(), &mut OsSecrets).await.unwrap();
        let server = signed(take(&host, &secret, "Server keeper").await.unwrap());
        let (home, animal, person) = (HomeId(Uuid::now_v7()), AnimalId(Uuid::now_v7()), PersonId(Uuid::now_v7()));
        let store = host.server.found(home).await.unwrap();
        let card = AnimalCard::new(animal, label("Tarn"), Species::Dog);
        store
            .append(vec![
                event(home, HomeCard { name: label("Birch House"), zone: Zone::utc() }),
                event(home, PersonCard::new(person, label("Mora"), Role::Home)),
                Event { animal: Some(animal), ..event(home, card) },
            ])
            .await
            .unwrap();
        let app = sayso_host::app(Arc::clone(&host));
        let nobody = server.clone();
        let mut house =
            Self { host, app, address, home, animal, person, server, keeper: nobody, cards: AtomicU32::new(0) };
        let hosts = house.on_server(Capability::Host).await;
        house.host.people.open_home(&hosts, home, house.host.now()).await.unwrap();
        let part = Part::new(Scope::Home(home), Has::Keeper, None, None).unwrap();
        let (_, secret) = house.host.people.invite(&hosts, &part, house.host.now(), &mut OsSecrets).await.unwrap();
        house.keeper = signed(take(&house.host, &secret, "Ilda").await.unwrap());
        house
    }

    /// A home of the server in which nothing is written, and its keeper.
    pub async fn newcomer(&self) -> (HomeId, Signed) {
        let made = self.post(&self.server, "/server/homes", "count=1").await;
        let joined = take(&self.host, &secret_of(made.marked("link")[0]), "Ana").await.unwrap();
        let home = joined.part.scope().home().unwrap();
        (home, signed(joined))
    }

    /// Such a home that shares its figures with a club.
    pub async fn newcomer_who_shares(&self, club: ClubId) -> (HomeId, Signed) {
        let (home, keeper) = self.newcomer().await;
        let form = format!("home={home}&purpose=coach_figures&club={club}&words={}", Consent::WORDS);
        let given = self.post(&keeper, "/sharing/consent", &form).await;
        assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
        (home, keeper)
    }

    /// The house shares its figures with a club.
    pub async fn shares_figures(&self, club: ClubId) {
        let given = self.post(&self.keeper, "/sharing/consent", &self.consent("coach_figures", club)).await;
        assert_eq!(given.status, StatusCode::SEE_OTHER, "{}", given.body);
    }

    /// The one role of someone.
    pub async fn role_of(&self, who: &Signed) -> sayso_people::MembershipId {
        self.host.people.who(who.account).await.unwrap().memberships[0].id
    }

    /// Another process of the same server.
    pub async fn another(&self) -> Router {
        sayso_host::app(Arc::new(open(&self.address).await))
    }

    /// Another one that was given what other homes did.
    pub async fn with_norms(&self, norms: sayso_norms::Release) -> Router {
        let mut config = HostConfig::here(Database::at(&self.address), "http://localhost/".parse().unwrap());
        config.norms = Some(Arc::new(norms));
        sayso_host::app(Arc::new(Host::open(&config).await.unwrap()))
    }

    /// Another one that lives some seconds later.
    pub async fn later(&self, clock: fn() -> Moment) -> Router {
        sayso_host::app(Arc::new(open(&self.address).await.with_clock(clock)))
    }

    pub async fn on_server(&self, capability: Capability) -> sayso_people::Allowed {
        let session = self.host.people.session(&self.server.token, self.host.now()).await.unwrap().unwrap();
        self.host.people.may_on_server(&session, capability, self.host.now()).await.unwrap()
    }

    /// Someone whom the keeper invites by the page.
    pub async fn joined(&self, role: Has, name: &str) -> Signed {
        let days = match role {
            Has::Sitter => {
                let today = self.host.now().day(&Zone::utc());
                Some(Days::every(today.plus(-1), today.plus(1)))
            }
            _ => None,
        };
        self.joined_on(role, days, name).await
    }

    pub async fn joined_on(&self, role: Has, days: Option<Days>, name: &str) -> Signed {
        let secret = self.invited(role, days).await;
        signed(take(&self.host, &secret, name).await.unwrap())
    }

    /// The secret of an invitation made by the page.
    pub async fn invited(&self, role: Has, days: Option<Days>) -> Secret {
        // One card is one account's: who comes next has a new one.
        let nth = if role.writes_as_itself() { self.cards.fetch_add(1, Ordering::Relaxed) } else { 0 };
        let whose = match (role.writes_as_itself(), nth) {
            (false, _) => String::new(),
            (true, 0) => format!("&person={}", self.person),
            (true, nth) => format!("&new_person=Person+{nth}"),
        };
        let mut form = format!("home={}&role={}{whose}", self.home, role.name());
        if let Some(days) = days {
            form.push_str(&format!("&first={}&last={}", days.first, days.last));
            for bit in (0..7).filter(|bit| days.weekdays & (1 << bit) != 0) {
                form.push_str(&format!("&weekdays={bit}"));
            }
        }
        let made = self.post(&self.keeper, "/sharing/invite", &form).await;
        assert_eq!(made.status, StatusCode::OK, "{}", made.body);
        secret_of(made.marked("link")[0])
    }

    /// A club with a coach, and its keeper.
    pub async fn club(&self) -> (ClubId, Signed, Signed) {
        self.club_of_name("Meadow+Club").await
    }

    /// A club of that name, as a form writes it, with a coach, and its keeper.
    pub async fn club_of_name(&self, name: &str) -> (ClubId, Signed, Signed) {
        let made = self.post(&self.server, "/server/clubs", &format!("name={name}")).await;
        assert_eq!(made.status, StatusCode::OK, "{}", made.body);
        let keeper = signed(take(&self.host, &secret_of(made.marked("link")[0]), "Club keeper").await.unwrap());
        let who = self.host.people.who(keeper.account).await.unwrap();
        let club = who.memberships[0].part.scope().club().unwrap();
        let made = self.post(&keeper, &format!("/club/{club}/invite"), "role=coach").await;
        let coach = signed(take(&self.host, &secret_of(made.marked("link")[0]), "Brook").await.unwrap());
        (club, keeper, coach)
    }

    pub async fn get(&self, who: &Signed, path: &str) -> Answer {
        asked(&self.app, Some(who), "GET", path, None).await
    }

    pub async fn post(&self, who: &Signed, path: &str, form: &str) -> Answer {
        asked(&self.app, Some(who), "POST", path, Some((FORM, form))).await
    }

    /// Addresses of the animal.
    pub fn about(&self, page: &str) -> String {
        format!("/a/{}/{page}", self.animal)
    }

    /// A connection past the program, to look at what is stored.
    pub async fn count(&self, sql: &'static str) -> i64 {
        let mut db = PgConnection::connect(&self.address).await.unwrap();
        sqlx::query_scalar(sql).bind(self.home.0).fetch_one(&mut db).await.unwrap()
    }

    /// The form by which consent is given or taken back.
    pub fn consent(&self, purpose: &str, club: ClubId) -> String {
        format!("home={}&purpose={purpose}&club={club}&words={}", self.home, Consent::WORDS)
    }
}

pub const FORM: &str = "application/x-www-form-urlencoded";
pub const JSON: &str = "application/json";

pub async fn asked(app: &Router, who: Option<&Signed>, how: &str, path: &str, body: Option<(&str, &str)>) -> Answer {
    let mut request = Request::builder().method(how).uri(path).header(header::HOST, "localhost");
    request = request.header("sec-fetch-site", "same-origin");
    if let Some(who) = who {
        request = request.header(header::COOKIE, format!("{SESSION_COOKIE}={}", who.token.reveal()));
    }
    let request = match body {
        Some((kind, body)) => request.header(header::CONTENT_TYPE, kind).body(Body::from(body.to_owned())),
        None => request.body(Body::empty()),
    };
    let answer = app.clone().oneshot(request.unwrap()).await.unwrap();
    let (status, headers) = (answer.status(), answer.headers().clone());
    let body = answer.into_body().collect().await.unwrap().to_bytes();
    Answer { status, headers, body: String::from_utf8_lossy(&body).into_owned() }
}

/// The secret in a link.
pub fn secret_of(link: &str) -> Secret {
    Secret::typed(link.trim().rsplit('/').next().unwrap())
}
