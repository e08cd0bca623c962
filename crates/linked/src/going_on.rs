//! Turn after turn, beside whatever else the program does.

use crate::kept::LINK_FILE;
use crate::turn::{Turned, turn};
use sayso_model::Moment;
use sayso_store::{Revision, Store};
use std::path::Path;
use std::time::{Duration, Instant, SystemTime};

/// How often it is looked whether there is anything to do: a look at a file, and where it is there one at the log.
const LOOKS_EVERY: Duration = Duration::from_secs(2);
/// How often the server is asked where nothing happened here.
const ASKS_EVERY: Duration = Duration::from_secs(60);
/// After a turn that failed: at first, and at most.
const FIRST_PAUSE: Duration = Duration::from_secs(5);
const LONGEST_PAUSE: Duration = Duration::from_secs(15 * 60);

/// What was there at the last turn.
#[derive(Clone, Copy, PartialEq, Eq)]
struct Seen {
    link: Option<SystemTime>,
    grown: Revision,
}

/// Goes on until it is dropped.
pub async fn go_on(store: Store, clock: fn() -> Moment) {
    let (mut last, mut due, mut failed) = (None, Instant::now(), 0_u32);
    loop {
        let link = stamp(&store.dir().join(LINK_FILE));
        if link.is_some() && !store.is_read_only() {
            // What cannot be read is told by the turn.
            let seen = Seen { link, grown: store.revision().await.unwrap_or_default() };
            let decided = last.is_none_or(|last: Seen| last.link != seen.link);
            let grew = last.is_some_and(|last| last.grown != seen.grown) && failed == 0;
            if decided || grew || Instant::now() >= due {
                match turn(&store, clock()).await {
                    Ok(Turned::Agreed | Turned::Nothing) => failed = 0,
                    Ok(Turned::Stopped(stop)) => {
                        if decided {
                            tracing::warn!("The server takes nothing from this notebook any more ({}).", stop.name());
                        }
                        failed = 0;
                    }
                    Err(why) => {
                        tracing::warn!("Notebook and server do not agree yet: {why}");
                        failed = failed.saturating_add(1);
                    }
                }
                due = Instant::now() + pause(failed);
                last = Some(Seen { grown: store.revision().await.unwrap_or_default(), ..seen });
            }
        } else {
            (last, failed) = (None, 0);
        }
        tokio::time::sleep(LOOKS_EVERY).await;
    }
}

/// How long until the next turn, by how many failed since one did not.
fn pause(failed: u32) -> Duration {
    match failed {
        0 => ASKS_EVERY,
        failed => FIRST_PAUSE.saturating_mul(1 << (failed - 1).min(16)).min(LONGEST_PAUSE),
    }
}

fn stamp(file: &Path) -> Option<SystemTime> {
    std::fs::metadata(file).and_then(|meta| meta.modified()).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_waits_longer_after_each_failure_and_never_longer_than_a_quarter_of_an_hour() {
        assert_eq!(pause(0), ASKS_EVERY);
        assert_eq!([pause(1), pause(2), pause(3)].map(|p| p.as_secs()), [5, 10, 20]);
        assert!((1..200).all(|n| pause(n) <= pause(n + 1) && pause(n) <= LONGEST_PAUSE));
        assert_eq!(pause(u32::MAX), LONGEST_PAUSE);
    }
}
