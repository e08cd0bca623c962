//! `link` and `unlink`.

use super::notebook::{existing_store, open_store};
use super::serve::now;
use crate::error::CliError;
use crate::out::{note, tell};
use sayso_linked::{Address, Asked, LinkError, NotAnAddress, State};
use sayso_model::Zone;
use sayso_store::Store;
use sayso_web::linking::{held, hinders, said};
use sayso_wording::{Locale, say};
use std::path::Path;

/// What is asked of a link.
#[derive(Debug)]
pub struct Linking {
    /// A server's address, where it does not stand in front of the code.
    pub server: Option<String>,
    /// A code, or the whole text that the server shows, to begin one.
    pub code: Option<String>,
    /// Whether somebody says yes to what goes there.
    pub yes: bool,
    /// To pictures as well.
    pub pictures: bool,
    /// To recordings of words as well.
    pub recordings: bool,
    /// Whether to send and fetch once, now.
    pub now: bool,
}

fn told(why: LinkError) -> CliError {
    CliError::said(said(why))
}

/// Links a notebook, says yes to it, does a turn, as asked; and says how the link stands.
pub async fn link(l: &Locale, dir: &Path, asked: Linking) -> Result<(), CliError> {
    // An empty notebook may be begun by what comes from the server.
    let store = if asked.code.is_some() { open_store(dir).await? } else { existing_store(dir).await? };
    let done = of(l, &store, asked).await;
    store.close().await?;
    done
}

/// Where the server is and the code: both stand in the text that it shows.
fn address(server: Option<&str>, text: &str) -> Result<(Address, String), NotAnAddress> {
    match server {
        Some(server) if !text.contains('#') => Ok((Address::new(server)?, text.to_owned())),
        _ => Address::with_code(text),
    }
}

async fn of(l: &Locale, store: &Store, asked: Linking) -> Result<(), CliError> {
    if let Some(text) = asked.code {
        let (address, code) = address(asked.server.as_deref(), &text).map_err(|why| told(why.into()))?;
        let name = match store.home().await? {
            Some(home) => store.story(home).await?.home().map(|card| card.name.to_string()),
            None => None,
        };
        let asked = Asked { address, code, name: name.unwrap_or_default(), home: None };
        sayso_linked::begin(store, asked).await.map_err(told)?;
    }
    if asked.yes {
        sayso_linked::say_yes(store, asked.pictures, asked.recordings).map_err(told)?;
    }
    // How it stands is told also where the turn failed; then that is told besides.
    let turned = if asked.now { sayso_linked::turn(store, now()).await.map(drop) } else { Ok(()) };
    match sayso_linked::state(store).await.map_err(told)? {
        Some(state) => {
            let zone = match store.home().await? {
                Some(home) => store.story(home).await?.zone(),
                None => Zone::utc(),
            };
            stands(l, &state, &zone);
        }
        None => tell!(l, linked::not_linked),
    }
    turned.map_err(told)
}

fn stands(l: &Locale, state: &State, zone: &Zone) {
    let progress = &state.progress;
    let whole = |n: u64| usize::try_from(n).unwrap_or(usize::MAX);
    let name = if progress.name().is_empty() { say!(l, linked::unnamed) } else { progress.name().to_owned() };
    tell!(l, linked::with, home = name, url = &state.link.server);
    if state.link.sends.is_none() {
        tell!(l, linked::goes_all);
        tell!(l, linked::goes_who);
        match &progress.about {
            None => tell!(l, linked::coaches_unknown),
            Some(about) if about.coaches.is_empty() => tell!(l, linked::no_coach),
            Some(about) => tell!(l, linked::coaches, names = l.and(&about.coaches)),
        }
        if let Some(about) = progress.about.as_ref().filter(|about| about.records > 0) {
            tell!(l, linked::comes, count = about.records);
        }
        tell!(l, linked::sound_stays);
        tell!(l, linked::not_yet_command);
        return;
    }
    if let Some(stop) = progress.stopped {
        tell!(l, linked::stopped, why = stop.name());
    } else if let Some(hindrance) = &progress.hinders {
        tell!("{} ({})", hinders(l, hindrance), hindrance.said);
    }
    match progress.agreed_at {
        Some(at) => tell!(l, linked::agreed, when = l.weekday_date_time(at, zone)),
        None => tell!(l, linked::never_agreed),
    }
    tell!(l, linked::waits, count = whole(state.waits));
    tell!(
        l,
        linked::moved,
        sent = whole(progress.sent),
        received = whole(progress.received),
        media = whole(progress.media)
    );
    for (all, title) in [(&progress.held, say!(l, linked::held_title)), (&progress.lacks, say!(l, linked::lacks_title))]
    {
        if all.total() > 0 {
            tell!("{title}:");
            for (why, count) in &all.counts {
                tell!("- {}", held(l, *why, *count));
            }
        }
    }
}

/// Unlinks a notebook.
pub async fn unlink(l: &Locale, dir: &Path) -> Result<(), CliError> {
    let store = existing_store(dir).await?;
    let ended = sayso_linked::end(&store).await.map_err(told);
    store.close().await?;
    let ended = ended?;
    tell!(l, linked::ended);
    if ended.waited > 0 {
        tell!(l, linked::never_went, count = ended.waited);
    }
    if !ended.told {
        note!(l, linked::not_told);
    }
    Ok(())
}
