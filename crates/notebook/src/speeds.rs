//! The speeds at which each button is listened for, from the presses heard since it was recorded.

use sayso_listen::{SpeedAt, Speeds, speeds_to_listen};
use sayso_model::story::Fact;
use sayso_model::{ClipCard, ClipId, Moment, Press, Story, WordId};
use std::collections::BTreeMap;

/// Days for which a new recording tells a button's speed, and after which a silent button may have any: its battery may have
/// been changed (our own choice).
const KNOWN_DAYS: f64 = 14.0;
const DAY_S: f64 = 86_400.0;

/// The speeds to listen for by recording in use, at a moment. Round a button's own where presses tell it, wide where it was
/// silent for a fortnight, else the usual ones: also where a word has several buttons, since a press does not say which.
#[must_use]
pub fn speeds(story: &Story, now: Moment) -> BTreeMap<ClipId, Speeds> {
    let mut recorded: BTreeMap<ClipId, Moment> = BTreeMap::new();
    for card in story.everyones::<ClipCard>() {
        let first = recorded.entry(card.part.clip).or_insert_with(|| card.at());
        *first = (*first).min(card.at());
    }
    let mut heard: BTreeMap<WordId, Vec<Fact<'_, Press>>> = BTreeMap::new();
    for press in story.heard_between(now.plus_seconds(-KNOWN_DAYS * DAY_S), now) {
        heard.entry(press.part.word).or_default().push(press);
    }
    let in_use: Vec<ClipCard> = story.clips().into_values().filter(|c| c.active).cloned().collect();
    let of = |card: &ClipCard| {
        let since = recorded.get(&card.clip).copied().unwrap_or(now);
        let presses: Vec<SpeedAt> = heard
            .get(&card.word)
            .into_iter()
            .flatten()
            .filter(|p| p.at() >= since)
            .filter_map(|p| {
                let speed = p.part.speed?.get();
                Some(SpeedAt { time_s: p.at().seconds_since(now), speed, confidence: p.part.certainty.get() })
            })
            .collect();
        let buttons = in_use.iter().filter(|c| c.word == card.word).count();
        let new = now.seconds_since(since) <= KNOWN_DAYS * DAY_S;
        match (presses.is_empty(), buttons) {
            (true, _) if !new => Speeds::WIDE,
            (true, _) | (false, 2..) => Speeds::USUAL,
            (false, _) => speeds_to_listen(&presses, 0.0),
        }
    };
    in_use.iter().map(|card| (card.clip, of(card))).collect()
}
