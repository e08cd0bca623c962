//! `closings` and `restored`: what was closed on a server stays closed, also where a backup of its database is brought back.

use super::database;
use crate::args::restored::{BroughtBack, Listing};
use crate::commands::serve::now;
use crate::error::CliError;
use crate::out::tell;
use sayso_host::HostError;
use sayso_model::Moment;
use sayso_people::db::{Restored, Standing};
use sayso_people::{Closings, Lifetimes, NoClosings, People};
use sayso_store::{Database, Server, StoreError, keep_private};
use sayso_wording::{Locale, Words, words};
use std::collections::{BTreeMap, BTreeSet};
use std::io::ErrorKind;
use std::path::Path;

async fn people(at: &Database) -> Result<People, CliError> {
    Ok(People::at(&at.address, Lifetimes::default(), 2).await.map_err(HostError::from)?)
}

/// The same of a database on which nothing is open that was closed since a backup: it was not brought back, or that was seen to.
pub async fn people_in_place(at: &Database) -> Result<People, CliError> {
    let people = people(at).await?;
    match people.standing().await.map_err(HostError::from)? {
        Standing::Same => Ok(people),
        Standing::Elsewhere => Err(HostError::Elsewhere.into()),
    }
}

fn list(path: &Path) -> Result<Closings, CliError> {
    let text = std::fs::read_to_string(path).map_err(|why| CliError::file(path, why))?;
    let wrong = |why: NoClosings| {
        let file = path.display().to_string();
        CliError::said(match why {
            NoClosings::Head => words!(command_host::closings_head, file = file),
            NoClosings::Line(line) => words!(command_host::closings_line, file = file, line = line),
            NoClosings::CutOff => words!(command_host::closings_cut_off, file = file),
        })
    };
    text.parse().map_err(wrong)
}

/// Writes the list of what was closed, beside what it held already.
pub async fn closings(l: &Locale, asked: &Listing) -> Result<(), CliError> {
    let to = asked.to.as_path();
    let before = match list(to) {
        Err(_) if matches!(to.metadata(), Err(why) if why.kind() == ErrorKind::NotFound) => None,
        read => Some(read?),
    };
    let people = people(&database(&asked.at)?).await?;
    if people.standing().await.map_err(HostError::from)? == Standing::Elsewhere {
        return Err(CliError::said(words!(command_host::closings_elsewhere, file = to.display().to_string())));
    }
    let now = people.closings(now()).await.map_err(HostError::from)?;
    people.close().await;
    let all = match before {
        Some(before) => now.with(before),
        None => now,
    };
    keep_private(to, all.write().as_bytes())?;
    tell!(l, command_host::closings, n = all.all.len(), file = to.display().to_string());
    Ok(())
}

/// Closes anew what was closed since the backup that was brought back.
pub async fn restored(l: &Locale, asked: &BroughtBack) -> Result<(), CliError> {
    let at = database(&asked.at)?;
    let given = asked.what.closings.as_deref().map(list).transpose()?;
    let people = people(&at).await?;
    if asked.what.nothing_lost {
        people.nothing_lost().await.map_err(HostError::from)?;
        people.close().await;
        tell!(l, command_host::nothing_lost);
        return Ok(());
    }
    let noticed = people.standing().await.map_err(HostError::from)? == Standing::Elsewhere;
    if !noticed && !asked.yes {
        return Err(CliError::said(words!(command_host::restored_not_noticed)));
    }
    // Opened first: where its tables cannot be brought up to date, nothing is done.
    let server = Server::open(&at).await?;
    let known = given.unwrap_or(Closings { at: Moment::clamped(0), all: BTreeMap::new() });
    let done = people.restored(&known, now()).await.map_err(HostError::from)?;
    erase(&people, &server).await?;
    server.close().await;
    people.close().await;
    told(l, asked.what.closings.is_some().then_some(known.at), &done);
    Ok(())
}

/// Logs of homes that left. What is cut off here, the server's first sweep finishes.
async fn erase(people: &People, server: &Server) -> Result<(), CliError> {
    let left: BTreeSet<_> = people.left_homes().await.map_err(HostError::from)?.into_iter().collect();
    for home in server.homes().await?.into_iter().filter(|home| left.contains(home)) {
        match server.erase(home).await {
            Ok(()) | Err(StoreError::NoSuchHome(_)) => {}
            Err(why) => return Err(why.into()),
        }
    }
    Ok(())
}

fn told(l: &Locale, list_of: Option<Moment>, done: &Restored) {
    tell!(
        l,
        command_host::restored_list_closed,
        homes = done.homes,
        accounts = done.accounts,
        roles = done.roles,
        passkeys = done.passkeys
    );
    tell!(
        l,
        command_host::restored_all_closed,
        sessions = done.sessions,
        invitations = done.invitations,
        calendars = done.calendars,
        notebooks = done.notebooks,
        consents = done.consents
    );
    let open: Words = match list_of {
        Some(at) => words!(command_host::restored_list_of, at = at.to_string()),
        None => words!(command_host::restored_no_list),
    };
    tell!("{}", open.say(l));
    if done.without_keeper > 0 {
        tell!(l, command_host::restored_without_keeper, n = done.without_keeper);
    }
    tell!(l, command_host::restored_start);
}
