//! A server of one's own for each test, in one cluster for them all.

use crate::browser::Browser;
use crate::cluster::Cluster;
use crate::fresh;
use crate::post::Post;
use axum::Router;
use sayso_host::{Host, HostConfig, Mail, ProviderConfig, Stories};
use sayso_model::{HomeId, Moment};
use sayso_people::{Allowed, Capability, OsSecrets, Part, Role, Scope, Session};
use sayso_store::Database;
use std::sync::{Arc, LazyLock};
use uuid::Uuid;

static CLUSTER: LazyLock<Cluster> = LazyLock::new(|| Cluster::start(false));

/// A server with its mail.
pub struct Server {
    pub host: Arc<Host>,
    pub app: Router,
    pub post: Post,
}

impl Server {
    pub async fn new() -> Self {
        Self::with(None).await
    }

    /// One by a clock of the test's own.
    pub async fn with(clock: Option<fn() -> Moment>) -> Self {
        Self::made(clock, None).await
    }

    /// One by which people may sign in with an identity provider.
    pub async fn by(provider: ProviderConfig) -> Self {
        Self::made(None, Some(provider)).await
    }

    /// One whose server for mail is away.
    pub async fn without_post() -> Self {
        let mut server = Self::made(None, None).await;
        let nobody = Mail::Smtp { url: "smtp://127.0.0.1:1".into(), from: "Sayso <sayso@sayso.example>".into() };
        let database = Database { connections: 4, ..Database::at(fresh::database(&CLUSTER).await) };
        let config = HostConfig {
            mail: nobody,
            behind_proxy: true,
            ..HostConfig::here(database, "https://sayso.example".parse().unwrap())
        };
        server.host = Arc::new(Host::open(&config).await.unwrap());
        server.app = sayso_host::app(Arc::clone(&server.host));
        server
    }

    async fn made(clock: Option<fn() -> Moment>, provider: Option<ProviderConfig>) -> Self {
        crate::secrets::listen();
        let post = Post::open().await;
        let database = Database { connections: 4, ..Database::at(fresh::database(&CLUSTER).await) };
        let config = HostConfig {
            mail: Mail::Smtp {
                url: format!("smtp://127.0.0.1:{}", post.port),
                from: "Sayso <sayso@sayso.example>".into(),
            },
            provider,
            behind_proxy: true,
            ..HostConfig::here(database, "https://sayso.example".parse().unwrap())
        };
        let host = Host::open(&config).await.unwrap();
        let host = Arc::new(match clock {
            Some(clock) => host.with_clock(clock),
            None => host,
        });
        Self { app: sayso_host::app(Arc::clone(&host)), host, post }
    }

    pub fn browser(&self) -> Browser {
        Browser::of(self.app.clone())
    }

    /// The path of the first keeper's link.
    pub async fn first_link(&self) -> String {
        let (_, secret) = self.host.people.invite_first_keeper(self.host.now(), &mut OsSecrets).await.unwrap();
        format!("/join/{}", secret.reveal())
    }

    /// The server's first keeper, signed in.
    pub async fn keeper(&self) -> Browser {
        self.joined(&self.first_link().await, "Wren").await
    }

    /// Someone who joins by a link, with a new account.
    pub async fn joined(&self, link: &str, name: &str) -> Browser {
        let mut browser = self.browser();
        let answer = browser.post(link, &[("name", name)]).await;
        assert_eq!(answer.status, 303, "{}", answer.text);
        browser
    }

    /// The session of someone signed in.
    pub async fn session(&self, browser: &Browser) -> Session {
        let token = browser.token().expect("a session");
        self.host.people.session(&token, self.host.now()).await.unwrap().expect("one that holds")
    }

    async fn hosting(&self, keeper: &Browser) -> Allowed {
        let session = self.session(keeper).await;
        self.host.people.may_on_server(&session, Capability::Host, self.host.now()).await.unwrap()
    }

    /// The link of the first keeper of a new home.
    pub async fn home_link(&self, keeper: &Browser) -> (HomeId, String) {
        let (by, home) = (self.hosting(keeper).await, HomeId(Uuid::now_v7()));
        self.host.server.found(home).await.unwrap();
        self.host.people.open_home(&by, home, self.host.now()).await.unwrap();
        (home, self.invite(&by, Part::new(Scope::Home(home), Role::Keeper, None, None).unwrap()).await)
    }

    /// A link that a keeper of a home writes.
    pub async fn link_by(&self, browser: &Browser, home: HomeId, role: Role) -> String {
        let session = self.session(browser).await;
        let who = self.host.people.who(session.account).await.unwrap();
        let stories = Stories(&self.host.server);
        let known = self.host.people.known_to(&who, home, &stories, self.host.now()).await.unwrap();
        let by = sayso_people::may::may(&who, Capability::ManagePeople, home, known.as_ref(), self.host.now()).unwrap();
        let person = match role.writes_as_itself() {
            true => self.host.server.home(home).story(home).await.unwrap().people().keys().next().copied(),
            false => None,
        };
        self.invite(&by, Part::new(Scope::Home(home), role, person, None).unwrap()).await
    }

    async fn invite(&self, by: &Allowed, part: Part) -> String {
        let (_, secret) = self.host.people.invite(by, &part, self.host.now(), &mut OsSecrets).await.unwrap();
        format!("/join/{}", secret.reveal())
    }
}
