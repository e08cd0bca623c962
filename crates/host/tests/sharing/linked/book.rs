//! A notebook at home, and a server on a port that it can be linked to.

use crate::house::{House, Signed};
use sayso_host::{Host, HostConfig};
use sayso_linked::{Address, Asked, LinkError, Turned};
use sayso_model::*;
use sayso_store::{AtOnce, Database, Revision, Store};
use sayso_web::connections::{self, Bounds, Patience};
use sayso_web::state::machine_clock;
use std::collections::BTreeMap;
use std::net::Ipv4Addr;
use std::sync::Arc;
use tempfile::TempDir;
use tokio::net::TcpListener;
use tokio::task::JoinHandle;

/// A process of the house's server that notebooks reach.
pub struct Served {
    pub port: u16,
    runs: JoinHandle<()>,
}

impl Served {
    pub async fn start(house: &House, port: u16) -> Self {
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, port)).await.unwrap();
        let port = listener.local_addr().unwrap().port();
        let url = format!("http://localhost:{port}/").parse().unwrap();
        let config = HostConfig::here(Database::at(&house.address), url);
        let app = sayso_host::app(Arc::new(Host::open(&config).await.unwrap()));
        let runs = tokio::spawn(async move {
            let bounds = (Patience::default(), Bounds::of_this_process());
            connections::run(listener, app, None, bounds, std::future::pending()).await;
        });
        Self { port, runs }
    }

    pub fn address(&self) -> Address {
        Address::new(&format!("http://localhost:{}", self.port)).unwrap()
    }

    /// It is away from here on.
    pub async fn away(&mut self) {
        self.runs.abort();
        let _ = (&mut self.runs).await;
    }
}

/// A code that a keeper makes by the page.
pub async fn code(house: &House, keeper: &Signed, home: HomeId) -> String {
    let made = house.post(keeper, "/sharing/notebooks/new", &format!("home={home}")).await;
    assert_eq!(made.status, axum::http::StatusCode::OK, "{}", made.body);
    let link = made.marked("link")[0].to_owned();
    let (_, code) = Address::with_code(&link).unwrap();
    code
}

pub struct Book {
    pub dir: TempDir,
    pub store: Store,
}

impl Book {
    pub async fn empty() -> Self {
        let dir = tempfile::tempdir().unwrap();
        let store = Store::open(dir.path()).await.unwrap();
        Self { dir, store }
    }

    /// One in which some days of an invented home stand.
    pub async fn lived(days: u32, seed: u64) -> Self {
        let book = Self::empty().await;
        let now = machine_clock();
        let mut plan = sayso_sim::demo_home(now);
        plan.days = days;
        for events in sayso_sim::simulate(&plan, seed, now).unwrap().events.chunks(500) {
            book.store.append(events.to_vec()).await.unwrap();
        }
        book
    }

    pub async fn home(&self) -> HomeId {
        self.store.home().await.unwrap().unwrap()
    }

    pub async fn link(&self, served: &Served, code: String) -> Result<sayso_linked::Link, LinkError> {
        let asked = Asked { address: served.address(), code, name: "Kitchen".into(), home: None };
        sayso_linked::begin(&self.store, asked).await
    }

    /// Links it and says yes.
    pub async fn linked(&self, house: &House, served: &Served, (home, keeper): &(HomeId, Signed)) {
        self.link(served, code(house, keeper, *home).await).await.unwrap();
        self.yes(false);
    }

    pub fn yes(&self, media: bool) {
        sayso_linked::say_yes(&self.store, media, media).unwrap();
    }

    pub async fn turn(&self) -> Result<Turned, LinkError> {
        sayso_linked::turn(&self.store, machine_clock()).await
    }

    pub async fn state(&self) -> sayso_linked::State {
        sayso_linked::state(&self.store).await.unwrap().unwrap()
    }

    /// A remark of now, put into the notebook.
    pub async fn remarks(&self, text: &str) -> Event {
        let event = remark(self.home().await, text);
        self.store.append(vec![event.clone()]).await.unwrap();
        event
    }
}

pub fn remark(home: HomeId, text: &str) -> Event {
    crate::house::event(home, Remark { text: Note::new(text).unwrap() })
}

/// All that stands in a home's log, letter for letter but for whose it is.
pub async fn all(store: &Store, home: HomeId) -> BTreeMap<EventId, String> {
    let nobody = HomeId(uuid::Uuid::nil());
    let (mut found, mut after, mut count) = (BTreeMap::new(), Revision(0), 0);
    loop {
        let given = store.given(home, after, nobody, AtOnce { events: 5_000, bytes: usize::MAX }).await.unwrap();
        count += given.events.len();
        found.extend(given.events);
        after = given.up_to;
        if !given.more {
            assert_eq!(count, found.len(), "none stands there twice");
            return found;
        }
    }
}
