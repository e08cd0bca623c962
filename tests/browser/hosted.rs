//! A server of many homes of one's own for each test, on a database server of the tests' own.

use crate::cluster::Cluster;
use sayso_host::{Host, HostConfig, links};
use sayso_model::{HomeId, Label, Language, Story};
use sayso_people::db::Taker;
use sayso_people::{Capability, OsSecrets, Part, Role, Scope};
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
    _cluster: Cluster,
}

impl Hosted {
    pub async fn start() -> Self {
        let cluster = Cluster::start(false);
        let listener = TcpListener::bind((Ipv4Addr::LOCALHOST, 0)).await.unwrap();
        let at = listener.local_addr().unwrap();
        let database = Database::at(cluster.address("postgres", "postgres"));
        let config = HostConfig::here(database, format!("http://localhost:{}", at.port()).parse().unwrap());
        let host = Arc::new(Host::open(&config).await.unwrap());
        let (app, patience) = (sayso_host::app(Arc::clone(&host)), config.patience);
        let runs = tokio::spawn(async move {
            let bounds = Bounds::of_this_process();
            connections::run(listener, app, None, (patience, bounds), std::future::pending()).await;
        });
        Self { host, runs, _cluster: cluster }
    }

    pub fn url(&self, path: &str) -> String {
        links::page(&self.host.public_url, path.trim_start_matches('/'))
    }

    /// A new home, and the path of its first keeper's link.
    pub async fn invitation(&self) -> (HomeId, String) {
        let (people, now) = (&self.host.people, self.host.now());
        let (_, first) = people.invite_first_keeper(now, &mut OsSecrets).await.unwrap();
        let (name, language) = (Label::new("Wren").unwrap(), Language::En);
        let taker = Taker::New { name: &name, language };
        let keeper = people.take_invitation(&first, taker, "", "", now, &mut OsSecrets).await.unwrap();
        let (session, _) = keeper.session.unwrap();
        let by = people.may_on_server(&session, Capability::Host, now).await.unwrap();
        let home = HomeId(Uuid::now_v7());
        self.host.server.found(home).await.unwrap();
        people.open_home(&by, home, now).await.unwrap();
        let part = Part::new(Scope::Home(home), Role::Keeper, None, None).unwrap();
        let (_, secret) = people.invite(&by, &part, now, &mut OsSecrets).await.unwrap();
        (home, format!("/join/{}", secret.reveal()))
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
