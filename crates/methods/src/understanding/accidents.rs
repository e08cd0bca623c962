//! Accidents by place: how many presses are explained by a slip from a neighbouring place or by a brush.
//!
//! Method ours, from standard parts: a mixture of deliberate presses (at the learner's usual frequencies) and slips (to a
//! neighbouring place), fitted by maximum likelihood, which is concave in the share of slips; interval by the likelihood
//! ratio (Wilks 1938, Ann Math Stat 9:60); shares added with Zou & Donner's 2008 recovery of variances (Stat Med
//! 27:1693). Page: `docs/methods/understanding.md`.
//!
//! A learner that means two words whose places lie side by side looks like one that slips: a large share says "look at
//! the board", not "these presses do not count".

use super::{UnderstandingError, sessions};
use crate::stats::{Interval, Level};

/// A contact with a place on the board, sounded or not.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contact {
    /// Session (sitting) number; contacts of a session stand together.
    pub session: usize,
    /// Seconds, not decreasing within a session.
    pub time: f64,
    /// Place on the board, from 0 up.
    pub place: usize,
    /// True for a press that sounded, false for a brush that did not.
    pub sounded: bool,
}

/// A share with its interval and the presses it was judged from.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Most likely share, 0 to 1.
    pub share: f64,
    /// 95 % interval.
    pub interval: Interval,
    /// Presses judged.
    pub n: u64,
}

/// One place.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PlaceAccidents {
    /// Presses that sounded here.
    pub presses: u64,
    /// Share of them explained by slips and brushes; `None` without a press. The interval follows the doubt about how
    /// common slips are on the whole board.
    pub share: Option<Share>,
    /// Brushes here that did not sound.
    pub brushes: u64,
}

/// Accidents on the board.
#[derive(Debug, Clone, PartialEq)]
pub struct Accidents {
    /// Share of slips among presses that came quickly after a press at another place; `None` if there were none.
    pub after_press: Option<Share>,
    /// Share of slips among presses that came quickly after a brush; `None` if there were none.
    pub after_brush: Option<Share>,
    /// Share of all presses explained by either.
    pub overall: Share,
    /// By place.
    pub places: Vec<PlaceAccidents>,
}

/// Which kind of contact came just before.
#[derive(Clone, Copy, PartialEq)]
enum Before {
    Press,
    Brush,
}

/// A press that could be a slip: its chance under "deliberate" and under "slip".
struct Candidate {
    place: usize,
    before: Before,
    deliberate: f64,
    slip: f64,
}

/// Judges all presses. `neighbours[a]` lists the places next to place `a`; `within` is the longest pause, in seconds, after
/// which a contact can still be a slip (1.5 is common practice, no source).
///
/// # Errors
/// [`UnderstandingError::NoObservations`] without a press, [`UnderstandingError::OutOfRange`] for an unknown place, a time
/// that is not finite or a negative pause, [`UnderstandingError::TimeGoesBack`], [`UnderstandingError::SessionsMixed`].
///
/// ```
/// use sayso_methods::understanding::accidents::{Contact, accidents};
/// let press = |k: u32, place| Contact { session: 0, time: 60.0 * f64::from(k), place, sounded: true };
/// let slow: Vec<Contact> = (0..30).map(|k| press(k, (k % 3) as usize)).collect();
/// let found = accidents(&slow, &[vec![1], vec![0, 2], vec![1]], 1.5)?;
/// assert_eq!(found.overall.share, 0.0);
/// # Ok::<(), sayso_methods::understanding::UnderstandingError>(())
/// ```
pub fn accidents(
    contacts: &[Contact],
    neighbours: &[Vec<usize>],
    within: f64,
) -> Result<Accidents, UnderstandingError> {
    check(contacts, neighbours, within)?;
    let size = neighbours.len();
    let mut after: Vec<Option<usize>> = vec![None; contacts.len()];
    for range in sessions(contacts.iter().map(|contact| contact.session))? {
        for at in range.start + 1..range.end {
            let gap = contacts[at].time - contacts[at - 1].time;
            if gap < 0.0 {
                return Err(UnderstandingError::TimeGoesBack { at });
            }
            if gap <= within {
                after[at] = Some(at - 1);
            }
        }
    }
    // How often each place is pressed with no contact just before: the learner's deliberate frequencies.
    let mut usual = vec![0.5; size];
    let (mut presses, mut brushes) = (vec![0u64; size], vec![0u64; size]);
    for (contact, before) in contacts.iter().zip(&after) {
        if !contact.sounded {
            brushes[contact.place] += 1;
            continue;
        }
        presses[contact.place] += 1;
        if before.is_none() {
            usual[contact.place] += 1.0;
        }
    }
    let all: u64 = presses.iter().sum();
    if all == 0 {
        return Err(UnderstandingError::NoObservations);
    }
    let total: f64 = usual.iter().sum();
    let candidates: Vec<Candidate> = contacts
        .iter()
        .zip(&after)
        .filter(|(contact, _)| contact.sounded)
        .filter_map(|(contact, before)| {
            let before = contacts[(*before)?];
            let near = &neighbours[before.place];
            let next_to = f64::from(u8::from(near.contains(&contact.place)));
            if before.sounded {
                // Pressing the same place again at once is no slip to a neighbour; nor can one slip where there is none.
                (contact.place != before.place && !near.is_empty()).then(|| Candidate {
                    place: contact.place,
                    before: Before::Press,
                    deliberate: usual[contact.place] / (total - usual[before.place]),
                    slip: next_to / near.len() as f64,
                })
            } else {
                let here = f64::from(u8::from(contact.place == before.place));
                Some(Candidate {
                    place: contact.place,
                    before: Before::Brush,
                    deliberate: usual[contact.place] / total,
                    slip: (here + next_to) / (1 + near.len()) as f64,
                })
            }
        })
        .collect();

    let of = |kind: Before| candidates.iter().filter(|candidate| candidate.before == kind).collect::<Vec<_>>();
    let after_press = share_of_slips(&of(Before::Press));
    let after_brush = share_of_slips(&of(Before::Brush));
    let places = (0..size)
        .map(|place| {
            let here = |pick: fn(&Share) -> f64| {
                let sum: f64 = candidates
                    .iter()
                    .filter(|candidate| candidate.place == place)
                    .map(|candidate| {
                        let share = if candidate.before == Before::Press { &after_press } else { &after_brush };
                        candidate.posterior(share.as_ref().map_or(0.0, pick))
                    })
                    .sum();
                sum / presses[place] as f64
            };
            let share = (presses[place] > 0).then(|| Share {
                share: here(|share| share.share),
                interval: Interval {
                    low: here(|s| s.interval.low),
                    high: here(|s| s.interval.high),
                    level: Level::P95,
                },
                n: presses[place],
            });
            PlaceAccidents { presses: presses[place], share, brushes: brushes[place] }
        })
        .collect();
    Ok(Accidents { overall: add(&[after_press, after_brush], all), after_press, after_brush, places })
}

fn check(contacts: &[Contact], neighbours: &[Vec<usize>], within: f64) -> Result<(), UnderstandingError> {
    if !(within.is_finite() && within >= 0.0) {
        return Err(UnderstandingError::OutOfRange { what: "pause", value: within });
    }
    let size = neighbours.len();
    if let Some(&place) = neighbours.iter().flatten().find(|place| **place >= size) {
        return Err(UnderstandingError::OutOfRange { what: "neighbouring place", value: place as f64 });
    }
    for contact in contacts {
        if contact.place >= size {
            return Err(UnderstandingError::OutOfRange { what: "place", value: contact.place as f64 });
        }
        if !contact.time.is_finite() {
            return Err(UnderstandingError::OutOfRange { what: "time of a contact", value: contact.time });
        }
    }
    Ok(())
}

impl Candidate {
    /// Probability that this press was a slip, given how common slips are.
    fn posterior(&self, share: f64) -> f64 {
        let slip = share * self.slip;
        slip / (slip + (1.0 - share) * self.deliberate).max(f64::MIN_POSITIVE)
    }
}

/// Maximum likelihood share of slips and its likelihood-ratio interval.
fn share_of_slips(candidates: &[&Candidate]) -> Option<Share> {
    if candidates.is_empty() {
        return None;
    }
    let log_likelihood = |share: f64| -> f64 {
        let one = |c: &&Candidate| ((1.0 - share) * c.deliberate + share * c.slip).max(f64::MIN_POSITIVE).ln();
        candidates.iter().map(one).sum()
    };
    let slope = |share: f64| -> f64 {
        let one = |c: &&Candidate| {
            (c.slip - c.deliberate) / ((1.0 - share) * c.deliberate + share * c.slip).max(f64::MIN_POSITIVE)
        };
        candidates.iter().map(one).sum()
    };
    // Concave: the maximum is an end or where the slope passes zero.
    let bisect = |mut low: f64, mut high: f64, above: &dyn Fn(f64) -> bool| {
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if above(middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        0.5 * (low + high)
    };
    let share = if slope(0.0) <= 0.0 {
        0.0
    } else if slope(1.0) >= 0.0 {
        1.0
    } else {
        bisect(0.0, 1.0, &|x| slope(x) > 0.0)
    };
    let level = Level::P95;
    let limit = log_likelihood(share) - 0.5 * level.z().powi(2);
    let inside = |x: f64| log_likelihood(x) >= limit;
    let low = if inside(0.0) { 0.0 } else { bisect(0.0, share, &|x| !inside(x)) };
    let high = if inside(1.0) { 1.0 } else { bisect(share, 1.0, &inside) };
    Some(Share { share, interval: Interval { low, high, level }, n: candidates.len() as u64 })
}

/// Slips of each kind as a share of all presses.
fn add(kinds: &[Option<Share>], all: u64) -> Share {
    let (mut share, mut below, mut above) = (0.0, 0.0, 0.0);
    for kind in kinds.iter().flatten() {
        let weight = kind.n as f64 / all as f64;
        share += weight * kind.share;
        below += (weight * (kind.share - kind.interval.low)).powi(2);
        above += (weight * (kind.interval.high - kind.share)).powi(2);
    }
    let interval =
        Interval { low: (share - below.sqrt()).max(0.0), high: (share + above.sqrt()).min(1.0), level: Level::P95 };
    Share { share, interval, n: all }
}
