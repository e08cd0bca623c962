//! One turn: what the server has and the notebook lacks comes here, what the notebook has and the server lacks goes there.
//!
//! Each side goes on from a place in the other's log, batch by batch, and the place is kept after each. Whatever happens in
//! between, the same batch is only brought once more, and stands there already. What came from the other side is not sent back:
//! where nothing else came in between, the place moves on past it.

use crate::fault::{Hindrance, LinkError};
use crate::kept;
use crate::letters::{
    ABOUT, About, BringsEvents, Came, EVENTS, GivesEvents, MOST_BYTES, MOST_EVENTS, Outcomes, Spot, Stop, Why,
};
use crate::media;
use crate::there::There;
use crate::work::Work;
use sayso_model::{EventId, Fault, Moment, Problems};
use sayso_store::{Appended, AtOnce, Revision, Store, Taken};
use serde::Deserialize;
use serde_json::value::RawValue;

/// Where something was held, all is gone through again after so many seconds: the other side may have been updated, or lack nothing
/// any more.
const AGAIN_S: f64 = 86_400.0;

/// What a turn came to.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Turned {
    /// The notebook is not linked, nobody said yes yet, or it was unlinked meanwhile: nothing is sent.
    Nothing,
    /// The server takes nothing any more.
    Stopped(Stop),
    /// Both hold what the other does, but for what is held.
    Agreed,
}

/// Does one turn and keeps how far it got.
///
/// # Errors
/// [`LinkError`] of what hinders; it is kept, too, for the page.
pub async fn turn(store: &Store, now: Moment) -> Result<Turned, LinkError> {
    let Some(link) = kept::link(store.dir())? else { return Ok(Turned::Nothing) };
    let Some(sends) = link.sends else { return Ok(Turned::Nothing) };
    let progress = kept::progress(store.dir(), &link)?;
    if let Some(stop) = progress.stopped {
        return Ok(Turned::Stopped(stop));
    }
    let there = There::new(link.address()?, Some(link.key.clone()))?;
    let mut work = Work { store, there, link, sends, progress, now };
    let (done, came) = match work.all().await {
        Ok(()) => {
            work.progress.agreed_at = Some(now);
            work.progress.failures = 0;
            work.progress.hinders = None;
            (true, Ok(Turned::Agreed))
        }
        Err(LinkError::NotLinked) => return Ok(Turned::Nothing),
        Err(LinkError::Stopped(stop)) => {
            work.progress.stopped = Some(stop);
            work.progress.hinders = None;
            (true, Ok(Turned::Stopped(stop)))
        }
        Err(why) => {
            work.progress.failures = work.progress.failures.saturating_add(1);
            work.progress.hinders = Some(Hindrance { kind: why.hinders(), said: why.to_string() });
            (false, Err(why))
        }
    };
    match work.keep() {
        Err(LinkError::NotLinked) => Ok(Turned::Nothing),
        Err(why) if done => Err(why),
        _ => came,
    }
}

impl Work<'_> {
    async fn all(&mut self) -> Result<(), LinkError> {
        self.is_this_log().await?;
        self.receive().await?;
        self.send().await?;
        self.still()?;
        let about: About = self.there.get(ABOUT).await?;
        kept::keep_witnessed(self.store.dir(), &about.witnessed)?;
        self.progress.about = Some(about);
        media::both_ways(self).await
    }

    /// Where this log is not the one that was sent (an older copy was put in its place), or it is time, all is gone through again.
    async fn is_this_log(&mut self) -> Result<(), LinkError> {
        let here = self.progress.here;
        let other = here.at > 0 && self.store.id_at(Revision(here.at)).await? != here.is;
        if other || self.progress.again_at.is_some_and(|at| at <= self.now) {
            self.progress.begin_anew();
        }
        Ok(())
    }

    /// What the server's log holds after the place that was reached.
    async fn receive(&mut self) -> Result<(), LinkError> {
        loop {
            self.still()?;
            let from = self.progress.there;
            let is = from.is.map(|id| format!("&is={id}")).unwrap_or_default();
            let gives: GivesEvents = self.there.get(&format!("{EVENTS}?after={}{is}", from.at)).await?;
            self.still()?;
            if gives.anew && from.at > 0 {
                // It may lack what it was sent since, too.
                self.progress.begin_anew();
            }
            let events: Vec<&str> = gives.events.iter().map(|event| event.get()).collect();
            let taken = self.store.taken(&events, self.link.home_there, self.link.home_here).await?;
            let mut new = 0;
            for Taken { id, kind, came } in taken {
                match came {
                    Appended::New => new += 1,
                    Appended::Duplicate => {}
                    Appended::Conflict => self.progress.lacks.add(id, &kind, Why::Differs),
                    Appended::Refused(problems) => self.progress.lacks.add(id, &kind, why_not_taken(&problems)),
                }
            }
            self.progress.received += u64::try_from(new).unwrap_or(0);
            let grown = self.store.revision().await?;
            if new > 0 && self.progress.here.at + new == grown.0 {
                self.progress.here = Spot::of(self.store, grown).await?;
            }
            self.progress.there = gives.up_to;
            self.plan_again();
            self.keep()?;
            if !gives.more {
                return Ok(());
            }
        }
    }

    /// What this log holds after the place that was reached.
    async fn send(&mut self) -> Result<(), LinkError> {
        let most = AtOnce { events: MOST_EVENTS, bytes: MOST_BYTES };
        let (mut new, mut held_new) = (0, false);
        loop {
            let from = Revision(self.progress.here.at);
            let given = self.store.given(self.link.home_here, from, self.link.home_there, most).await?;
            if !given.events.is_empty() {
                let (came, grown) = self.bring(&given.events).await?;
                let fresh = came.iter().filter(|came| **came == Came::New).count();
                for ((id, json), came) in given.events.iter().zip(came) {
                    held_new |= came == Came::Out(Why::Lacks);
                    self.progress.went(*id, &kind_of(json), came);
                }
                let fresh = i64::try_from(fresh).unwrap_or(i64::MAX);
                if fresh > 0 && self.progress.there.at + fresh == grown.at {
                    self.progress.there = grown;
                }
                new += fresh;
            }
            self.progress.here = Spot::of(self.store, given.up_to).await?;
            self.plan_again();
            self.keep()?;
            if !given.more {
                break;
            }
        }
        // What something lacked may have come after it.
        if held_new && new > 0 {
            self.progress.again_at = Some(self.now);
        }
        Ok(())
    }

    async fn bring(&self, events: &[(EventId, String)]) -> Result<(Vec<Came>, Spot), LinkError> {
        let raw = |json: &String| RawValue::from_string(json.clone());
        let all: Result<Vec<_>, _> = events.iter().map(|(_, json)| raw(json)).collect();
        let letter = BringsEvents { events: all.map_err(|why| LinkError::Strange(why.to_string()))? };
        self.still()?;
        let Outcomes { came, up_to } = self.there.post(EVENTS, &letter).await?;
        if came.len() == events.len() {
            return Ok((came, up_to));
        }
        Err(LinkError::Strange(format!("{} answers to {} events", came.len(), events.len())))
    }

    fn plan_again(&mut self) {
        let held = self.progress.held.total() + self.progress.lacks.total() > 0;
        if held && self.progress.again_at.is_none() {
            self.progress.again_at = Some(self.now.plus_seconds(AGAIN_S));
        }
    }
}

/// Why this log does not take an event, as far as there is a word for it.
fn why_not_taken(Problems(found): &Problems) -> Why {
    match found.first().map(|problem| &problem.fault) {
        Some(Fault::OtherHome(_)) => Why::OtherHome,
        Some(Fault::NotWritten) => Why::Unread,
        _ => Why::Unsound,
    }
}

/// The kind of an event, whichever version wrote it.
fn kind_of(json: &str) -> String {
    #[derive(Deserialize)]
    struct Says {
        body: Kind,
    }
    #[derive(Deserialize)]
    struct Kind {
        kind: String,
    }
    serde_json::from_str::<Says>(json).map(|says| says.body.kind).unwrap_or_default()
}
