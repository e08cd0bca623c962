//! One press heard by two devices: each microphone notes it, it is counted once.
//!
//! The clocks of two devices are compared by the presses themselves: the shift at which most presses of the same words
//! fall together. Own method; what it may take for one press is bounded below.

use crate::body::{Press, PressedBy};
use crate::event::{Event, Part, Source};
use crate::id::{AnimalId, EventId, StreamId, WordId};
use crate::marks::Week;
use crate::shelf::Key;
use crate::time::Moment;
use crate::twice::SAME_PRESS_S;
use imbl::OrdMap;
use std::collections::{BTreeMap, BTreeSet};
use std::sync::Arc;

/// Clocks of two devices are taken to differ by no more than this, in seconds.
pub const CLOCKS_APART_S: f64 = 30.0;
/// Presses that still differ by more than this once the clocks are compared are two, in seconds.
const COMPARED_S: f64 = 0.5;
/// So many presses must fall together before they tell how the clocks differ, and half of what the device that heard
/// less heard.
const ENOUGH: usize = 3;

/// What one device noted of one press.
#[derive(Clone, PartialEq, Debug)]
struct Noted {
    at: Moment,
    id: EventId,
    word: WordId,
    animal: Option<AnimalId>,
    by: PressedBy,
    certainty: f64,
}

/// A stream within a week, so that what is counted in a week follows from that week.
type Place = (Week, StreamId);

/// Heard presses by the stream they were heard in, and which of them are one.
#[derive(Clone, Default, Debug)]
pub(crate) struct Ears {
    streams: OrdMap<Place, OrdMap<Key, Noted>>,
    /// For each event that stands with others for one press: all of them, the one that counts first.
    together: OrdMap<EventId, Arc<[EventId]>>,
}

impl Ears {
    /// Of standing events; those not heard in a stream are passed over.
    pub(crate) fn of<'a>(events: impl Iterator<Item = &'a Event>) -> Self {
        let mut ears = Self::default();
        for (place, noted) in events.filter_map(noted) {
            ears.streams.entry(place).or_default().insert((noted.at, noted.id), noted);
        }
        let mut left: BTreeSet<Place> = ears.streams.keys().copied().collect();
        while let Some(place) = left.first().copied() {
            let all = ears.around(place);
            all.iter().for_each(|p| _ = left.remove(p));
            ears.join(all);
        }
        ears
    }

    /// All events that stand for the press of this one, the one that counts first; none where it stands alone.
    pub(crate) fn with(&self, id: EventId) -> &[EventId] {
        self.together.get(&id).map_or(&[], |all| all)
    }

    /// An event stands now, or stands otherwise than `before`.
    pub(crate) fn turn(&mut self, before: Option<&Event>, now: Option<&Event>) {
        let before = before.and_then(noted);
        let now = now.and_then(noted);
        let places = || [&before, &now].into_iter().flatten().map(|(place, _)| *place);
        // Those it hung together with, and those it hangs together with now.
        let mut all: BTreeSet<Place> = places().flat_map(|p| self.around(p)).collect();
        if let Some((place, old)) = &before {
            self.split(old.id);
            if let Some(stream) = self.streams.get_mut(place) {
                stream.remove(&(old.at, old.id));
                if stream.is_empty() {
                    self.streams.remove(place);
                }
            }
        }
        if let Some((place, new)) = now.clone() {
            self.streams.entry(place).or_default().insert((new.at, new.id), new);
        }
        all.extend(places().flat_map(|p| self.around(p)).collect::<Vec<_>>());
        let weeks: BTreeSet<Week> = all.iter().map(|(week, _)| *week).collect();
        for week in weeks {
            self.join(all.iter().copied().filter(|(w, _)| *w == week).collect());
        }
    }

    /// A press that stood with others stands alone, and each of them.
    fn split(&mut self, id: EventId) {
        if let Some(all) = self.together.remove(&id) {
            all.iter().for_each(|other| _ = self.together.remove(other));
        }
    }

    /// The streams whose presses may hang together with those of one, itself among them if it is there.
    fn around(&self, place: Place) -> Vec<Place> {
        let (week, _) = place;
        let ends = |s: &OrdMap<Key, Noted>| Some((s.get_min()?.0.0, s.get_max()?.0.0));
        let of_week = self.streams.range((week, StreamId::LEAST)..).take_while(|((w, _), _)| *w == week);
        let mut rest: Vec<_> = of_week.filter_map(|(p, s)| ends(s).map(|(from, to)| (*p, from, to))).collect();
        rest.sort_by_key(|(place, from, _)| (*from, *place));
        // In order of their beginnings, those that hang together follow one another.
        let mut chain: Vec<Place> = Vec::new();
        let mut end: Option<Moment> = None;
        for (p, from, to) in rest {
            let apart = end.is_some_and(|end| from.seconds_since(end) > CLOCKS_APART_S);
            if apart {
                if chain.contains(&place) {
                    break;
                }
                chain.clear();
            }
            end = Some(if apart { to } else { end.map_or(to, |e| e.max(to)) });
            chain.push(p);
        }
        if chain.contains(&place) { chain } else { Vec::new() }
    }

    /// Looks anew at which presses of some streams are one.
    fn join(&mut self, mut places: Vec<Place>) {
        places.sort_unstable();
        let streams: Vec<Vec<Noted>> =
            places.iter().filter_map(|p| self.streams.get(p)).map(|s| s.values().cloned().collect()).collect();
        streams.iter().flatten().for_each(|n| self.split(n.id));
        if streams.len() < 2 {
            return;
        }
        let mut links: Vec<(f64, [(usize, usize); 2])> = Vec::new();
        for (i, one) in streams.iter().enumerate() {
            for (j, other) in streams.iter().enumerate().skip(i + 1) {
                let (shift_s, within_s) = shift_s(one, other).map_or((0.0, SAME_PRESS_S), |shift| (shift, COMPARED_S));
                links.extend(near(one, other, (shift_s.abs() + within_s).min(CLOCKS_APART_S)).filter_map(
                    |(a, b, apart_s)| {
                        let off_s = (apart_s - shift_s).abs();
                        let one_press = off_s <= within_s && may_be_one(&one[a], &other[b]);
                        one_press.then_some((off_s, [(i, a), (j, b)]))
                    },
                ));
            }
        }
        let id = |(s, n): (usize, usize)| streams[s][n].id;
        links.sort_by(|a, b| a.0.total_cmp(&b.0).then_with(|| a.1.map(id).cmp(&b.1.map(id))));
        for group in groups(&links) {
            let mut all: Vec<&Noted> = group.into_iter().map(|(s, n)| &streams[s][n]).collect();
            all.sort_by(|a, b| {
                let judged = |n: &Noted| n.by == PressedBy::Unknown;
                judged(a).cmp(&judged(b)).then(b.certainty.total_cmp(&a.certainty)).then(a.id.cmp(&b.id))
            });
            let ids: Arc<[EventId]> = all.iter().map(|n| n.id).collect();
            ids.iter().for_each(|id| _ = self.together.insert(*id, Arc::clone(&ids)));
        }
    }
}

fn noted(event: &Event) -> Option<(Place, Noted)> {
    let press = Press::of(&event.body).filter(|_| event.source == Source::Heard)?;
    let noted = Noted {
        at: event.happened_at,
        id: event.id,
        word: press.word,
        animal: event.animal,
        by: press.by,
        certainty: press.certainty.get(),
    };
    Some(((Week::of(event.happened_at), press.stream?), noted))
}

/// Whether nothing that was told of two presses speaks against their being one.
fn may_be_one(a: &Noted, b: &Noted) -> bool {
    let animals = a.animal.is_none() || b.animal.is_none() || a.animal == b.animal;
    animals && (a.by == b.by || a.by == PressedBy::Unknown || b.by == PressedBy::Unknown)
}

/// Presses of the same word no further apart than `most_s`: their places, and by how much the other is later.
fn near<'a>(one: &'a [Noted], other: &'a [Noted], most_s: f64) -> impl Iterator<Item = (usize, usize, f64)> + 'a {
    one.iter().enumerate().flat_map(move |(i, a)| {
        let from = other.partition_point(|b| a.at.seconds_since(b.at) > most_s);
        let inside = other[from..].iter().enumerate().take_while(move |(_, b)| b.at.seconds_since(a.at) <= most_s);
        inside.filter(|(_, b)| b.word == a.word).map(move |(k, b)| (i, from + k, b.at.seconds_since(a.at)))
    })
}

/// By how many seconds the other's clock is ahead, as far as the presses tell.
fn shift_s(one: &[Noted], other: &[Noted]) -> Option<f64> {
    let mut apart: Vec<f64> = near(one, other, CLOCKS_APART_S).map(|(_, _, d)| d).collect();
    apart.sort_by(f64::total_cmp);
    let mut best: Option<(usize, f64)> = None;
    let mut to = 0;
    for from in 0..apart.len() {
        while to < apart.len() && apart[to] - apart[from] <= COMPARED_S {
            to += 1;
        }
        let middle = apart[from + (to - from) / 2];
        let better = |(n, at): (usize, f64)| to - from > n || (to - from == n && middle.abs() < at.abs());
        if best.is_none_or(better) {
            best = Some((to - from, middle));
        }
    }
    let (together, shift) = best?;
    // How many each heard while the other listened too.
    let common = |of: &[Noted], with: &[Noted]| match (with.first(), with.last()) {
        (Some(first), Some(last)) => of
            .iter()
            .filter(|n| first.at.seconds_since(n.at) <= CLOCKS_APART_S && n.at.seconds_since(last.at) <= CLOCKS_APART_S)
            .count(),
        _ => 0,
    };
    let least = common(one, other).min(common(other, one));
    (together >= ENOUGH && 2 * together >= least).then_some(shift)
}

/// Presses linked to one another, the nearest first; a device notes each press once, so two of one stream never meet.
fn groups(links: &[(f64, [(usize, usize); 2])]) -> Vec<Vec<(usize, usize)>> {
    let mut groups: Vec<Vec<(usize, usize)>> = Vec::new();
    let mut of: BTreeMap<(usize, usize), usize> = BTreeMap::new();
    for (_, ends) in links {
        let [a, b] = ends.map(|end| {
            *of.entry(end).or_insert_with(|| {
                groups.push(vec![end]);
                groups.len() - 1
            })
        });
        if a == b || groups[a].iter().any(|(s, _)| groups[b].iter().any(|(t, _)| s == t)) {
            continue;
        }
        let moved = std::mem::take(&mut groups[b]);
        moved.iter().for_each(|end| _ = of.insert(*end, a));
        groups[a].extend(moved);
    }
    groups.retain(|g| g.len() > 1);
    groups
}
