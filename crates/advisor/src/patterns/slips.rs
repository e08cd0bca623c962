//! Which presses look like slips: quick ones beside the button touched before, or on one just brushed.

use super::board::Board;
use super::{says, sittings};
use crate::estimate::{Estimate, Unit};
use crate::observe::Answered;
use sayso_methods::understanding::UnderstandingError;
use sayso_methods::understanding::accidents::{Contact, Share, accidents};
use sayso_model::{Accident, AnimalId, Brush, Moment, Story, WordId};
use std::collections::BTreeSet;

/// Longest pause after another contact, in seconds, after which a press can still be a slip (common practice, no source).
pub const WITHIN_S: f64 = 1.5;

/// Slips at one button.
#[derive(Clone, PartialEq, Debug)]
pub struct AtPlace {
    /// The word there.
    pub says: String,
    /// Share of its own presses that slips explain; the count is the presses.
    pub share: Estimate,
    /// Contacts that did not sound it.
    pub brushes: u64,
}

/// Presses that look like slips.
#[derive(Clone, PartialEq, Debug)]
pub struct Slips {
    /// Share of all own presses; nothing where none came quickly after another contact.
    pub share: Estimate,
    /// Own presses judged quick enough to be one.
    pub quick: u64,
    /// By button, the most presses first.
    pub places: Vec<AtPlace>,
    /// Share that somebody who was there took for a slip, of those somebody judged.
    pub judged: Estimate,
    /// From when on; nothing where there is no board.
    pub since: Option<Moment>,
    /// Own presses looked at.
    pub presses: usize,
    /// Why there is nothing to tell where there is a board.
    pub lacking: Option<UnderstandingError>,
}

/// Slips since the buttons have lain where they lie.
pub(super) fn slips(
    story: &Story,
    animal: AnimalId,
    own: &[Answered<'_>],
    board: Option<&Board>,
    now: Moment,
) -> Slips {
    let unknown = Estimate::unknown(Unit::Share);
    let from = board.map(|b| b.since);
    let own: Vec<&Answered<'_>> = own.iter().filter(|a| from.is_none_or(|from| a.press.at() >= from)).collect();
    let marked = |what: fn(Accident) -> bool| own.iter().filter(|a| what(a.press.part.accident)).count();
    let judged = Estimate::share(marked(|a| a == Accident::Likely), marked(|a| a != Accident::Unsure));
    let nothing = |lacking: Option<UnderstandingError>| Slips {
        share: unknown,
        quick: 0,
        places: Vec::new(),
        judged,
        since: from,
        presses: own.len(),
        lacking,
    };
    let Some(board) = board else { return nothing(None) };
    let mut touched: Vec<(Moment, WordId, bool)> =
        own.iter().map(|a| (a.press.at(), a.press.part.word, true)).collect();
    let brushes = story.of::<Brush>(animal).filter(|b| b.at() >= board.since && b.at() <= now);
    touched.extend(brushes.map(|b| (b.at(), b.part.word, false)));
    touched.sort();
    let words: Vec<WordId> = touched.iter().map(|t| t.1).collect::<BTreeSet<_>>().into_iter().collect();
    let at: Vec<Moment> = touched.iter().map(|t| t.0).collect();
    let first = at.first().copied().unwrap_or(now);
    let contacts: Vec<Contact> = sittings(&at)
        .into_iter()
        .zip(&touched)
        .map(|(session, (at, word, sounded))| Contact {
            session,
            time: at.seconds_since(first),
            place: words.partition_point(|w| w < word),
            sounded: *sounded,
        })
        .collect();
    let beside = |a: WordId| (0..words.len()).filter(|b| board.steps(a, words[*b]) == 1).collect::<Vec<_>>();
    let neighbours: Vec<Vec<usize>> = words.iter().map(|w| beside(*w)).collect();
    let found = match accidents(&contacts, &neighbours, WITHIN_S) {
        Ok(found) => found,
        Err(why) => return nothing(Some(why)),
    };
    let quick: u64 = [found.after_press, found.after_brush].iter().flatten().map(|s| s.n).sum();
    if quick == 0 {
        return nothing(None);
    }
    let mut places: Vec<AtPlace> = found
        .places
        .iter()
        .zip(&words)
        .filter(|(_, word)| board.holds(**word))
        .filter_map(|(place, word)| {
            Some(AtPlace { says: says(story, *word), share: shown(place.share?), brushes: place.brushes })
        })
        .collect();
    places.sort_by(|a, b| b.share.n.cmp(&a.share.n).then_with(|| a.says.cmp(&b.says)));
    let share = shown(found.overall);
    Slips { share, quick, places, judged, since: from, presses: own.len(), lacking: None }
}

fn shown(share: Share) -> Estimate {
    Estimate::with(share.share, share.interval, usize::try_from(share.n).unwrap_or(usize::MAX), Unit::Share)
}
