//! What every handler of the server shares.

use crate::answers::Answers;
use crate::config::{HostConfig, Mail};
use crate::desk::Desks;
use crate::fault::HostError;
use crate::provider::Provider;
use crate::rooms::Rooms;
use sayso_model::Moment;
use sayso_norms::Release;
use sayso_people::db::Standing;
use sayso_people::mail::{Mail as Letter, MailError, Mailer, Printed, Smtp};
use sayso_people::{Passkeys, People, Secret, SecretHash};
use sayso_store::Server;
use sayso_web::layout::NAME;
use sayso_web::state::machine_clock;
use std::sync::Arc;
use url::Url;

/// A server of many homes.
#[derive(Debug)]
pub struct Host {
    /// The homes' logs.
    pub server: Server,
    /// Who may do what.
    pub people: People,
    /// Passkeys of this address.
    pub passkeys: Passkeys,
    /// The address people open, without a path.
    pub public_url: Url,
    /// The identity provider by which people may sign in besides.
    pub provider: Option<Provider>,
    /// Whether the caller's address is the last of `X-Forwarded-For`.
    pub behind_proxy: bool,
    pub(crate) rooms: Rooms,
    pub(crate) answers: Answers,
    pub(crate) desks: Desks,
    pub(crate) metrics_token: Option<SecretHash>,
    pub(crate) norms: Option<Arc<Release>>,
    post: Post,
    clock: fn() -> Moment,
}

#[derive(Debug)]
enum Post {
    Printed(Printed),
    Smtp(Box<Smtp>),
}

/// Of the connections to the database of homes, one in so many is added for that of people.
const PEOPLE_SHARE: u32 = 2;

impl Host {
    /// Opens the databases, which several processes may do at once.
    ///
    /// # Errors
    /// [`HostError`] where the public address, the databases or the mail settings do not hold.
    pub async fn open(config: &HostConfig) -> Result<Self, HostError> {
        let public_url = config.public_url.clone();
        let local = public_url.host_str() == Some("localhost");
        if public_url.scheme() != "https" && !(public_url.scheme() == "http" && local) {
            return Err(HostError::PublicUrl(public_url.to_string()));
        }
        let post = match &config.mail {
            Mail::Printed => Post::Printed(Printed),
            Mail::Smtp { url, from } => Post::Smtp(Box::new(Smtp::new(url, from)?)),
        };
        let provider = config.provider.as_ref().map(|provider| Provider::new(provider, &public_url)).transpose()?;
        let passkeys = Passkeys::new(&public_url, NAME)?;
        let server = Server::open(&config.database).await?;
        let connections = (config.database.connections / PEOPLE_SHARE).max(2);
        let people = People::at(&config.database.address, config.lifetimes, connections).await?;
        // What was closed since a backup was made must be closed again before anybody is let in.
        if people.standing().await? == Standing::Elsewhere {
            return Err(HostError::Elsewhere);
        }
        Ok(Self {
            server,
            people,
            passkeys,
            provider,
            public_url,
            behind_proxy: config.behind_proxy,
            rooms: Rooms::default(),
            answers: Answers::default(),
            desks: Desks::default(),
            metrics_token: config.metrics_token.as_ref().map(Secret::hash),
            norms: config.norms.clone(),
            post,
            clock: machine_clock,
        })
    }

    /// The same on another clock, for tests.
    #[must_use]
    pub fn with_clock(self, clock: fn() -> Moment) -> Self {
        Self { clock, ..self }
    }

    /// The time now.
    #[must_use]
    pub fn now(&self) -> Moment {
        (self.clock)()
    }

    pub(crate) fn clock(&self) -> fn() -> Moment {
        self.clock
    }

    /// Whether browsers come over HTTPS, so that cookies may say so.
    #[must_use]
    pub fn is_safe(&self) -> bool {
        self.public_url.scheme() == "https"
    }

    /// Whether mail goes to people, and not to a terminal.
    #[must_use]
    pub const fn has_post(&self) -> bool {
        matches!(self.post, Post::Smtp(_))
    }

    /// Hands a mail over.
    ///
    /// # Errors
    /// [`MailError`] where it was not taken.
    pub async fn send(&self, mail: &Letter) -> Result<(), MailError> {
        match &self.post {
            Post::Printed(printed) => printed.send(mail).await,
            Post::Smtp(smtp) => smtp.send(mail).await,
        }
    }

    /// Closes both databases.
    pub async fn close(&self) {
        self.server.close().await;
        self.people.close().await;
    }
}
