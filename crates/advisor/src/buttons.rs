//! The buttons themselves, by what was heard of them: a battery that tires, a word that has fallen silent.

use crate::advice::{Act, Advice, Because, Caution, Change, NamedWord, Reason, Sure, Topic};
use crate::estimate::{Estimate, Unit};
use crate::heard::Heard;
use crate::rate::rate;
use crate::sums::Sums;
use sayso_listen::{HeardDays, SilentWord, SpeedAt, TiredBattery, silent_words, tired_among};
use sayso_methods::stats::{Clumping, Count};
use sayso_model::{AnimalId, Body, Fact, Kind, Moment, Press, Source, Story, WordId};
use std::collections::BTreeMap;

/// Days of silence after which a word is named, and without any word heard before nothing is said at all.
const SILENT_DAYS: f64 = 7.0;
/// Days over which slowing is looked for: a battery changed longer ago should not blur it.
const SLOWING_DAYS: f64 = 28.0;
const DAY_S: f64 = 86_400.0;

/// One word's button.
#[derive(Clone, PartialEq, Debug)]
pub struct Button<T> {
    /// The word.
    pub word: WordId,
    /// What it says.
    pub says: String,
    /// What was found.
    pub found: T,
}

/// What hearing tells about the buttons of a household.
#[derive(Clone, PartialEq, Debug, Default)]
pub struct Buttons {
    /// Those whose replay slows down.
    pub tired: Vec<Button<TiredBattery>>,
    /// Those not heard for days while others were.
    pub silent: Vec<Button<SilentWord>>,
}

/// One word that is listened for.
struct Listened {
    word: WordId,
    says: String,
    /// When its recording came into use; what was heard before was heard by another.
    from: Moment,
    heard: Vec<Heard>,
}

/// Every word in use with a recording in use, and its heard presses up to `now`.
fn listened(story: &Story, now: Moment, all: &[Heard]) -> Vec<Listened> {
    let words = story.words();
    let mut from: BTreeMap<WordId, Moment> = BTreeMap::new();
    for event in story.as_recorded(Kind::ClipCard) {
        if let Body::ClipCard(clip) = &event.body {
            let at = from.entry(clip.word).or_insert(event.recorded_at);
            *at = (*at).max(event.recorded_at);
        }
    }
    let in_use: Vec<WordId> = story.clips().values().filter(|c| c.active).map(|c| c.word).collect();
    let mut found: Vec<Listened> = from
        .into_iter()
        .filter(|(word, _)| in_use.contains(word))
        .filter_map(|(word, from)| {
            let card = words.get(&word).filter(|c| c.active)?;
            Some(Listened { word, says: card.says.to_string(), from, heard: Vec::new() })
        })
        .collect();
    if found.is_empty() {
        return found;
    }
    for heard in all.iter().filter(|h| h.at <= now) {
        // A sound of earlier days may be listened to later: what counts is with which recording it was heard.
        let of = found.iter_mut().find(|l| l.word == heard.word && heard.recorded_at >= l.from);
        if let Some(of) = of {
            of.heard.push(*heard);
        }
    }
    found
}

/// The buttons' state at `now`, by the presses heard with the recordings now in use.
///
/// Nothing is said when nothing was heard in the week before `now`: then nobody listens.
#[must_use]
pub fn buttons(story: &Story, now: Moment, kept: &Sums) -> Buttons {
    found(story, now, &kept.heard(story))
}

fn found(story: &Story, now: Moment, heard: &[Heard]) -> Buttons {
    let words = listened(story, now, heard);
    let all = || words.iter().flat_map(|l| &l.heard).map(|h| h.at);
    let (Some(first), Some(last)) = (all().min(), all().max()) else { return Buttons::default() };
    if now.seconds_since(last) > SILENT_DAYS * DAY_S {
        return Buttons::default();
    }
    let told = |word: &str| words.iter().find(|l| l.word.to_string() == word).map(|l| (l.word, l.says.clone()));
    let slowing: Vec<Fact<'_, Press>> = story.heard_between(now.plus_seconds(-SLOWING_DAYS * DAY_S), now).collect();
    let speeds: Vec<(String, Vec<SpeedAt>)> = words
        .iter()
        .map(|l| {
            let recent = slowing.iter().filter(|f| f.part.word == l.word && f.event.recorded_at >= l.from);
            let at = |f: &Fact<Press>| {
                let time_s = f.at().seconds_since(first);
                f.part.speed.map(|s| SpeedAt { time_s, speed: s.get(), confidence: f.part.certainty.get() })
            };
            (l.word.to_string(), recent.filter_map(at).collect())
        })
        .collect();
    let tired = tired_among(&speeds).into_iter().filter_map(|found| {
        let (word, says) = told(&found.word)?;
        Some(Button { word, says, found })
    });
    let day = |at: Moment| at.seconds_since(first) / DAY_S;
    let days: Vec<HeardDays> = words
        .iter()
        .map(|l| {
            // Sounds of days before the enrolment may have been listened to afterwards.
            let from_day = l.heard.iter().map(|h| h.at).chain([l.from]).min().map_or(0.0, day).max(0.0);
            let days = l.heard.iter().map(|h| day(h.at)).collect();
            HeardDays { word: l.word.to_string(), from_day, days }
        })
        .collect();
    let silent = silent_words(&days, day(last), SILENT_DAYS).into_iter().filter_map(|found| {
        let (word, says) = told(&found.word)?;
        Some(Button { word, says, found })
    });
    Buttons { tired: tired.collect(), silent: silent.collect() }
}

/// [`buttons`] as advice: about the words of one animal, or of all.
#[must_use]
pub fn advice(story: &Story, animal: Option<AnimalId>, now: Moment, kept: &Sums) -> Vec<Advice> {
    let of_it = animal.map(|l| story.words_of(l).iter().map(|w| w.word).collect::<Vec<_>>());
    let counts = |word: &WordId| of_it.as_ref().is_none_or(|w| w.contains(word));
    let heard = kept.heard(story);
    let Buttons { mut tired, mut silent } = found(story, now, &heard);
    tired.retain(|b| counts(&b.word));
    silent.retain(|b| counts(&b.word));
    let mut advice = Vec::new();
    if !tired.is_empty() {
        advice.push(tired_advice(&tired, &heard));
    }
    if !silent.is_empty() {
        advice.push(silent_advice(story, now, &silent, &heard));
    }
    advice
}

impl<T> Button<T> {
    fn named(&self) -> NamedWord {
        NamedWord { word: self.word, says: self.says.clone() }
    }
}

fn names<T>(buttons: &[Button<T>]) -> Vec<NamedWord> {
    buttons.iter().map(Button::named).collect()
}

/// Each word's own advice about its button.
pub(crate) fn advice_by_word(story: &Story, now: Moment, kept: &Sums) -> Vec<Advice> {
    let heard = kept.heard(story);
    let Buttons { tired, silent } = found(story, now, &heard);
    let tired = tired.iter().map(|b| tired_advice(std::slice::from_ref(b), &heard));
    let silent = silent.iter().map(|b| silent_advice(story, now, std::slice::from_ref(b), &heard));
    tired.chain(silent).collect()
}

fn heard_of(all: &[Heard], word: WordId) -> Vec<Heard> {
    let mut heard: Vec<Heard> = all.iter().filter(|h| h.word == word).copied().collect();
    heard.sort_by_key(|h| (h.at, h.id));
    heard
}

fn tired_advice(tired: &[Button<TiredBattery>], all: &[Heard]) -> Advice {
    let because = tired.iter().map(|button| {
        let t = &button.found;
        let half = 1.96 * t.standard_error;
        let by = Estimate {
            value: Some(t.slowed_by),
            low: Some((t.slowed_by - half).max(0.0)),
            high: Some(t.slowed_by + half),
            n: t.n,
            unit: Unit::Share,
        };
        let word = button.named();
        let fact = Because::Slowing { word, by, probability: t.probability.min(0.99), days: SLOWING_DAYS };
        Reason::from_events(fact, heard_of(all, button.word).iter().map(|h| h.id))
    });
    let sure = if tired.iter().all(|b| b.found.probability > 0.99) { Sure::Very } else { Sure::Fairly };
    let act = Act::CheckBatteries { words: names(tired) };
    let advice = Advice::new(Topic::SetUp, act, because.collect(), sure, Change::UsualSpeed).caution(Caution::Battery);
    match tired {
        [one] => advice.about(one.word),
        _ => advice,
    }
}

fn silent_advice(story: &Story, now: Moment, silent: &[Button<SilentWord>], all: &[Heard]) -> Advice {
    let zone = story.zone();
    let mut because: Vec<Reason> = Vec::new();
    for button in silent {
        let (word, s) = (button.word, &button.found);
        let heard = heard_of(all, word);
        let last = heard.last().filter(|_| s.ever).map(|h| h.at);
        let fact = Because::Silent {
            word: button.named(),
            last_on: last.map(|at| at.day(&zone)),
            days: s.days_silent,
            others: s.others_heard,
            before: rate_before(&heard).filter(|_| s.ever),
        };
        because.push(fact.into());
        let from = last.or_else(|| all.iter().map(|h| h.at).min());
        let told = from
            .into_iter()
            .flat_map(|from| story.everyones_between::<Press>(from, now).filter(move |f| f.at() > from));
        let times = told.filter(|f| f.event.source != Source::Heard && f.part.word == word).count();
        if times > 0 {
            because.push(Because::NotedByHand { word: button.named(), times }.into());
        }
    }
    because.push(Because::SilentCauses.into());
    let sure = if silent.iter().all(|b| b.found.ever) { Sure::Fairly } else { Sure::Little };
    let act = Act::CheckSilent { words: names(silent) };
    let advice = Advice::new(Topic::SetUp, act, because, sure, Change::HeardAgain).caution(Caution::Battery);
    match silent {
        [one] => advice.about(one.word),
        _ => advice,
    }
}

/// Presses a day from the first heard to the last, which begins the count and so is left out of it.
fn rate_before(heard: &[Heard]) -> Option<Estimate> {
    let (first, last) = (heard.first()?.at, heard.last()?.at);
    let count = Count::new(heard.len() as u64 - 1, last.seconds_since(first) / DAY_S).ok()?;
    let days = |at: Moment| at.seconds_since(first) / DAY_S;
    let times: Vec<f64> = heard.iter().map(|press| days(press.at)).collect();
    let clumping = Clumping::of_times(&times, days(last)).ok()?;
    Some(Estimate { n: heard.len(), ..rate(count, clumping, Unit::PerDay) })
}
