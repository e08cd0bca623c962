//! `host`: a server of many homes.

mod club;
pub mod restored;

use crate::args::host::{AtDatabase, Hosting, PublicUrl};
use crate::args::{WrongValue, whole};
use crate::commands::serve::now;
use crate::error::CliError;
use crate::out::{note, tell};
use club::{Club, Door, Maker, NotMade};
use sayso_cluster::{Cluster, ClusterError};
use sayso_host::{HostConfig, HostError, HostOpened, Mail, ProviderConfig, links};
use sayso_model::{Label, Moment};
use sayso_norms::Release;
use sayso_notebook::read_norms;
use sayso_people::{Lifetimes, People, Role, Secret};
use sayso_sim::{ClubHome, troubled_called, troubled_home};
use sayso_store::{Database, Server};
use sayso_web::connections::Patience;
use sayso_wording::{Locale, Message, say, words};
use std::net::{Ipv4Addr, SocketAddr, TcpListener};
use std::sync::{Arc, Mutex};
use tokio::task::spawn_blocking;
use url::Url;

/// Variables: what should stand in no list of processes, for it may hold a password, and what stands in one file with it.
pub const DATABASE: &str = "SAYSO_DATABASE";
const DATABASE_OWNER: &str = "SAYSO_DATABASE_OWNER";
const PUBLIC_URL: &str = "SAYSO_PUBLIC_URL";
const SMTP: &str = "SAYSO_SMTP";
const MAIL_FROM: &str = "SAYSO_MAIL_FROM";
const BACKUP_DAYS: &str = "SAYSO_BACKUP_DAYS";
const OIDC_ISSUER: &str = "SAYSO_OIDC_ISSUER";
const OIDC_CLIENT_ID: &str = "SAYSO_OIDC_CLIENT_ID";
const OIDC_NAME: &str = "SAYSO_OIDC_NAME";
/// What the identity provider shares with this server.
const OIDC_SECRET: &str = "SAYSO_OIDC_SECRET";
/// By which other machines see the server's figures.
const METRICS_TOKEN: &str = "SAYSO_METRICS_TOKEN";

/// Homes of the demo.
const HOMES: u32 = 40;
/// Homes at the beginning that stay without a trouble: those that have people in the demo.
const UNTROUBLED: usize = 4;
/// Homes between two lines that say how far it is.
const TOLD_EVERY: usize = 10;
/// Links of the demo hold for a week, as its invitations would.
const LINKS_S: f64 = 7.0 * 86_400.0;

/// The value of a flag, else of a variable that is set and not empty.
pub fn given(flag: Option<&String>, variable: &str) -> Option<String> {
    flag.cloned().or_else(|| std::env::var(variable).ok()).filter(|value| !value.is_empty())
}

/// What a flag says, else a variable that is set and not empty, which is read as the flag is.
fn read<T: Clone>(
    l: &Locale,
    flag: Option<&T>,
    variable: &'static str,
    reads: impl Fn(&str) -> Result<T, WrongValue>,
) -> Result<Option<T>, CliError> {
    let Some(value) = given(None, variable).filter(|_| flag.is_none()) else { return Ok(flag.cloned()) };
    reads(&value).map(Some).map_err(|why| {
        CliError::said(words!(usage::wrong_value, argument = variable, value = value, wanted = why.say(l)))
    })
}

/// The database that the flags say, else the variables. What is wrong with an address is told without it: it may hold a password.
pub fn database(at: &AtDatabase) -> Result<Database, CliError> {
    let address = given(at.database.as_ref(), DATABASE);
    let address = address.ok_or_else(|| CliError::said(words!(command_host::no_database)))?;
    let owner = given(at.database_owner.as_ref(), DATABASE_OWNER);
    let postgres = |url: &String| url.starts_with("postgres://") || url.starts_with("postgresql://");
    for (address, flag) in [(Some(&address), "--database"), (owner.as_ref(), "--database-owner")] {
        if address.is_some_and(|address| !postgres(address)) {
            return Err(CliError::said(words!(command_host::not_postgres, flag = flag)));
        }
    }
    Ok(Database { owner, ..Database::at(address) })
}

/// What is asked for by flags, variables or files: read before anything is begun, so that what is wrong is told at once.
struct Given {
    mail: Mail,
    provider: Option<ProviderConfig>,
    norms: Option<Arc<Release>>,
    lifetimes: Lifetimes,
    metrics_token: Option<Secret>,
}

/// Hosts many homes until told to stop.
pub async fn host(l: &Locale, asked: &Hosting) -> Result<(), CliError> {
    let given = Given {
        mail: mail(asked)?,
        provider: provider(l, asked)?,
        norms: norms(asked)?,
        lifetimes: lifetimes(l, asked)?,
        metrics_token: given(None, METRICS_TOKEN).map(|token| Secret::typed(&token)),
    };
    if asked.demo {
        return demo(l, asked, given).await;
    }
    let database = database(&asked.at)?;
    let public_url = read(l, asked.public_url.as_ref(), PUBLIC_URL, str::parse::<PublicUrl>)?;
    let public_url = public_url.ok_or_else(|| CliError::said(words!(command_host::no_public_url)))?;
    let l = *l;
    let url = public_url.0.clone();
    let opened = Arc::new(move |opened: &HostOpened| announce(&l, &url, opened));
    serve(&l, asked, database, public_url.0, given, opened).await
}

fn mail(asked: &Hosting) -> Result<Mail, CliError> {
    match (given(asked.smtp.as_ref(), SMTP), given(asked.mail_from.as_ref(), MAIL_FROM)) {
        (Some(url), Some(from)) => Ok(Mail::Smtp { url, from }),
        (None, None) => Ok(Mail::Printed),
        (Some(_), None) => Err(CliError::said(words!(command_host::smtp_alone))),
        (None, Some(_)) => Err(CliError::said(words!(command_host::mail_from_alone))),
    }
}

/// The identity provider, where there is one.
fn provider(l: &Locale, asked: &Hosting) -> Result<Option<ProviderConfig>, CliError> {
    let (issuer, client_id) = (&asked.oidc_issuer, &asked.oidc_client_id);
    let (issuer, client_id) = (given(issuer.as_ref(), OIDC_ISSUER), given(client_id.as_ref(), OIDC_CLIENT_ID));
    match (issuer, client_id, given(asked.oidc_name.as_ref(), OIDC_NAME), given(None, OIDC_SECRET)) {
        (None, None, None, None) => Ok(None),
        (Some(issuer), Some(client_id), Some(name), Some(client_secret)) => Ok(Some(ProviderConfig {
            issuer,
            client_id,
            client_secret,
            name: Label::new(&name).map_err(|e| CliError::flag("--oidc-name", e.say(l)))?,
        })),
        _ => Err(CliError::said(words!(command_host::oidc_incomplete))),
    }
}

/// What every home is laid beside. A file that cannot be used stops the start: nobody is laid beside other figures than those meant.
fn norms(asked: &Hosting) -> Result<Option<Arc<Release>>, CliError> {
    let read = asked.norms.as_deref().map(read_norms).transpose()?;
    Ok(read.map(|read| Arc::new(read.release)))
}

/// How long things hold, with what whoever keeps the server says of its backups.
fn lifetimes(l: &Locale, asked: &Hosting) -> Result<Lifetimes, CliError> {
    let usual = Lifetimes::default();
    let days = read(l, asked.backup_days.as_ref(), BACKUP_DAYS, whole)?;
    Ok(Lifetimes { backup_days: days.map_or(usual.backup_days, |days| u32::from(days.get())), ..usual })
}

async fn serve(
    l: &Locale,
    asked: &Hosting,
    database: Database,
    public_url: Url,
    given: Given,
    opened: Arc<dyn Fn(&HostOpened) + Send + Sync>,
) -> Result<(), CliError> {
    let Given { mail, provider, norms, lifetimes, metrics_token } = given;
    if matches!(mail, Mail::Printed) {
        tell!(l, command_host::mail_printed);
        tracing::warn!("No mail is sent: it is printed to the terminal.");
    }
    let database = Database {
        connections: u32::from(asked.connections.get()),
        most_story_bytes: usize::from(asked.story_mb.get()) << 20,
        ..database
    };
    let config = HostConfig {
        database,
        public_url,
        at: SocketAddr::new(asked.listen, asked.port),
        mail,
        provider,
        behind_proxy: asked.behind_proxy,
        metrics_token,
        lifetimes,
        norms,
        patience: Patience::default(),
        opened,
    };
    Ok(sayso_host::host(config).await?)
}

fn announce(l: &Locale, url: &Url, opened: &HostOpened) {
    tell!(l, command_host::open, url = url.as_str(), at = opened.at.to_string());
    if let Some(link) = &opened.first_keeper {
        tell!(l, command_host::first_keeper, url = link.as_str());
    }
    tell!(l, command_serve::stop);
}

/// Serves an invented club on a database server of its own, which goes with it.
async fn demo(l: &Locale, asked: &Hosting, given: Given) -> Result<(), CliError> {
    // Filling takes a while: what would fail after it is tried before.
    let at = SocketAddr::new(asked.listen, asked.port);
    super::try_port(at).map_err(|source| HostError::Port { at, source })?;
    note!(l, command_host::database_starting);
    // Held to the end: dropping it stops and removes it.
    let cluster = spawn_blocking(|| Cluster::start(true)).await.map_err(CliError::below)??;
    let database = Database::at(cluster.address("postgres", "postgres"));
    let made = fill(l, &database, asked.seed).await?;
    // Its address stands in links, so it must be known before it is opened.
    let port = if asked.port == 0 { free_port()? } else { asked.port };
    let public_url: Url = format!("http://localhost:{port}/").parse().map_err(CliError::below)?;
    let asked = Hosting { port, ..asked.clone() };
    let (said, url, is_printed) = (*l, public_url.clone(), matches!(given.mail, Mail::Printed));
    let opened = Arc::new(move |opened: &HostOpened| {
        announce(&said, &url, opened);
        doors(&said, &url, &made, is_printed);
    });
    let served = serve(l, &asked, database, public_url, given, opened).await;
    let gone = spawn_blocking(|| drop(cluster)).await.map_err(CliError::below);
    served.and(gone)
}

fn free_port() -> std::io::Result<u16> {
    Ok(TcpListener::bind((Ipv4Addr::LOCALHOST, 0))?.local_addr()?.port())
}

async fn fill(l: &Locale, database: &Database, seed: u64) -> Result<Club, CliError> {
    let now = now();
    note!(l, command_host::simulating, n = HOMES);
    let homes = spawn_blocking(move || invented(seed, now)).await.map_err(CliError::below)?;
    let server = Server::open(database).await?;
    let lifetimes = Lifetimes { link_s: LINKS_S, most_from_one: u32::MAX, ..Lifetimes::default() };
    let people = People::at(&database.address, lifetimes, 2).await.map_err(NotMade::People)?;
    let all = homes.len();
    let told = |done: usize| {
        if done.is_multiple_of(TOLD_EVERY) {
            note!(l, command_host::filling, done = done, all = all);
        }
    };
    let club = Maker { server: &server, people: &people, language: l.language, now, came: Mutex::default() }
        .make(homes, &told)
        .await?;
    server.close().await;
    people.close().await;
    note!(l, command_host::invented, homes = club.homes, events = club.events);
    Ok(club)
}

/// A club in which some homes have a trouble: those of the second and last of four, which share figures with the coach.
fn invented(seed: u64, now: Moment) -> Vec<ClubHome> {
    let mut homes = sayso_sim::club(seed, HOMES, now);
    let mut numbers = (0_u32..).filter(|number| !troubled_home(seed, *number).0.troubles.is_empty());
    for home in homes.iter_mut().skip(UNTROUBLED).skip(1).step_by(2) {
        let truth = &home.run.truth.home;
        let Some((number, animal)) = numbers.next().zip(truth.animals.first()) else { break };
        home.run = troubled_called(seed, number, now, truth.name.clone(), animal.name.clone()).run;
    }
    homes
}

fn doors(l: &Locale, url: &Url, club: &Club, is_printed: bool) {
    tell!();
    tell!(l, command_host::doors);
    for door in &club.doors {
        tell!("{}", as_whom(l, door));
        tell!("  {}", links::sign_in(url, &door.secret));
    }
    if is_printed {
        tell!(l, command_host::doors_again);
    } else {
        tell!(l, command_host::doors_once);
    }
}

fn as_whom(l: &Locale, door: &Door) -> String {
    let of: Vec<&str> = door.of.iter().map(|name| name.as_str()).collect();
    let (name, email, of) = (door.name.as_str(), door.email.as_str(), l.and(&of));
    match door.role {
        Role::ServerKeeper => say!(l, command_host::as_server_keeper, name = name, email = email),
        Role::ClubKeeper => say!(l, command_host::as_club_keeper, name = name, email = email, of = of),
        Role::Coach => say!(l, command_host::as_coach, name = name, email = email, of = of),
        Role::Keeper => say!(l, command_host::as_keeper, name = name, email = email, of = of),
        Role::Member => say!(l, command_host::as_member, name = name, email = email, of = of),
        Role::Sitter => say!(l, command_host::as_sitter, name = name, email = email, of = of),
        Role::Observer => say!(l, command_host::as_observer, name = name, email = email, of = of),
    }
}

impl From<ClusterError> for CliError {
    fn from(why: ClusterError) -> Self {
        Self::said(match why {
            ClusterError::NotInstalled => words!(command_host::not_installed),
            ClusterError::Folder(why) => words!(command_host::no_folder, why = why.to_string()),
            ClusterError::NotRun { program, source } => {
                words!(command_host::not_run, program = program, why = source.to_string())
            }
            ClusterError::Failed { program, said } => words!(command_host::failed, program = program, said = said),
            other => return Self::below(other),
        })
    }
}

impl From<NotMade> for CliError {
    fn from(why: NotMade) -> Self {
        match why {
            NotMade::Store(why) => why.into(),
            other => Self::said(words!(command_host::not_made, why = other.to_string())),
        }
    }
}
