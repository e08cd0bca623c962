//! A home as a pattern for others: the same records under ids of their own.

use crate::error::{LabError, told};
use sayso_model::{Event, HomeId, Moment};
use sayso_sim::{Home, any_home, simulate};
use std::fmt::Write;
use uuid::Uuid;

/// Characters of an id as text.
const ID: usize = 36;
/// How often the length of a run is set anew until it holds the records asked for.
const TRIES: usize = 12;

/// One record, cut at its ids.
#[derive(Debug)]
struct Cut {
    id: Uuid,
    kind: &'static str,
    amends: Option<Uuid>,
    /// Texts, each but the last followed by an id. Escaped for `COPY`.
    parts: Vec<String>,
    ids: Vec<Uuid>,
}

/// The records of a simulated home.
#[derive(Debug)]
pub(super) struct Pattern {
    home: Uuid,
    cuts: Vec<Cut>,
}

impl Pattern {
    /// A home drawn by the seed that has this many records, the last of them about `end`.
    pub fn new(seed: u64, events: usize, end: Moment) -> Result<Self, LabError> {
        let mut home = any_home(seed);
        for _ in 0..TRIES {
            let run = simulate(&home, seed, end).map_err(told)?;
            let there = run.events.len();
            if there >= events {
                let cuts = run.events[..events].iter().map(Cut::of).collect::<Result<_, _>>()?;
                return Ok(Self { home: run.truth.ids.home.0, cuts });
            }
            longer(&mut home, there, events);
        }
        Err(LabError::Refused(format!("home {seed} does not come to {events} records")))
    }

    /// How many records it has.
    pub fn len(&self) -> usize {
        self.cuts.len()
    }

    /// The home that is this one under other ids.
    pub fn home(&self, salt: u64) -> HomeId {
        HomeId(other(self.home, salt))
    }

    /// Writes a record as a row of `sayso.event` (home, seq, id, kind, amends, content), as `COPY` reads text
    /// (<https://www.postgresql.org/docs/current/sql-copy.html>).
    pub fn row(&self, place: usize, salt: u64, to: &mut String) -> Result<(), LabError> {
        let cut = &self.cuts[place];
        let amends = cut.amends.map_or_else(|| "\\N".to_owned(), |of| other(of, salt).to_string());
        let home = other(self.home, salt);
        write!(to, "{home}\t{}\t{}\t{}\t{amends}\t", place + 1, other(cut.id, salt), cut.kind).map_err(told)?;
        for (text, id) in cut.parts.iter().zip(&cut.ids) {
            write!(to, "{text}{}", other(*id, salt)).map_err(told)?;
        }
        to.push_str(cut.parts.last().map_or("", String::as_str));
        to.push('\n');
        Ok(())
    }
}

fn longer(home: &mut Home, there: usize, wanted: usize) {
    let more = wanted as f64 / there.max(1) as f64 * 1.02;
    home.days = (f64::from(home.days) * more).ceil() as u32 + 1;
}

impl Cut {
    fn of(event: &Event) -> Result<Self, LabError> {
        let json = serde_json::to_string(event).map_err(told)?;
        let json = json.replace('\\', "\\\\");
        let (mut parts, mut ids, mut last, mut at) = (Vec::new(), Vec::new(), 0, 0);
        while at + ID <= json.len() {
            // Ids of letters and digits alone: a piece that begins within a character is none.
            match json.get(at..at + ID).and_then(read) {
                Some(id) => {
                    parts.push(json[last..at].to_owned());
                    ids.push(id);
                    at += ID;
                    last = at;
                }
                None => at += 1,
            }
        }
        parts.push(json[last..].to_owned());
        let (kind, amends) = (event.body.kind().name(), event.body.amends().map(|of| of.0));
        Ok(Self { id: event.id.0, kind, amends, parts, ids })
    }
}

/// An id in its usual form.
fn read(text: &str) -> Option<Uuid> {
    let hyphens = [8, 13, 18, 23].iter().all(|i| text.as_bytes()[*i] == b'-');
    hyphens.then(|| Uuid::try_parse(text).ok()).flatten()
}

/// The same id in the home of that salt: of the same millisecond and version 7, all else mixed anew (SplitMix64, Steele et
/// al. 2014).
fn other(id: Uuid, salt: u64) -> Uuid {
    let mix = |mut z: u64| {
        z = z.wrapping_add(0x9E37_79B9_7F4A_7C15);
        z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        z ^ (z >> 31)
    };
    let (high, low) = id.as_u64_pair();
    let first = mix(mix(high ^ salt) ^ low);
    let second = mix(first ^ salt.rotate_left(32));
    let high = (high & 0xFFFF_FFFF_FFFF_0000) | 0x7000 | (first & 0x0FFF);
    Uuid::from_u64_pair(high, (second >> 2) | (1 << 63))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn a_record_comes_back_whole_under_ids_of_its_own() {
        let end = "2026-06-01T19:00:00Z".parse().unwrap();
        let pattern = Pattern::new(5, 300, end).unwrap();
        let events = simulate(&any_home(5), 5, end).unwrap().events;
        let mut one = String::new();
        let mut two = String::new();
        for place in 0..pattern.len() {
            pattern.row(place, 1, &mut one).unwrap();
            pattern.row(place, 2, &mut two).unwrap();
        }
        let read = |rows: &str| -> Vec<Event> {
            rows.lines()
                .map(|row| {
                    let content = row.split('\t').nth(5).unwrap().replace("\\\\", "\\");
                    serde_json::from_str(&content).unwrap()
                })
                .collect()
        };
        let (one, two) = (read(&one), read(&two));
        assert_eq!(one.len(), 300);
        let kinds = |all: &[Event]| all.iter().map(|e| e.body.kind()).collect::<Vec<_>>();
        assert_eq!(kinds(&one), kinds(&two));
        for (a, b) in one.iter().zip(&two) {
            assert!(a.check().is_ok() && a.id != b.id && a.home != b.home && a.recorded_at == b.recorded_at);
            assert_eq!(a.id.0.get_version_num(), 7);
            assert_eq!(a.home, pattern.home(1));
            if let Some(of) = a.body.amends() {
                assert!(one.iter().any(|e| e.id == of));
            }
        }
        assert!(events.iter().all(|e| one.iter().all(|mine| mine.id != e.id)));
    }
}
