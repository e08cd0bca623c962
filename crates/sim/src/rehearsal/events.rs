//! A rehearsal written down as the Board would have: so that the same figures are made of it as of real use. These events are
//! of no home; nobody keeps them.

use super::act::Does;
use super::answering::answers;
use super::run::Run;
use super::thing::Thing;
use super::told::{Told, What};
use sayso_model::{
    Accident, AnimalId, Answer, Body, Brush, Delivery, Event, EventId, HomeId, Look, Moment, Press, PressedBy,
    Probability, Seconds, Source, Then, WordId, Zone,
};
use std::collections::{BTreeMap, VecDeque};
use uuid::Uuid;

/// Presses and answers of a rehearsal.
#[derive(Clone, Debug)]
pub struct Written {
    /// The events.
    pub events: Vec<Event>,
    /// Whose they are.
    pub animal: AnimalId,
    /// The first moment.
    pub begins: Moment,
    /// The last.
    pub ends: Moment,
}

impl Written {
    /// The word of a thing.
    #[must_use]
    pub const fn word(thing: Thing) -> WordId {
        WordId(Uuid::from_u128(0x100 + thing.place() as u128))
    }
}

const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(1));
const HOME: HomeId = HomeId(Uuid::from_u128(2));
/// Any moment will do: nothing in a rehearsal knows the date.
const BEGINS_MS: i64 = 1_800_000_000_000;

/// Of which home, animal and words a rehearsal is written down, and from which moment on.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Whose {
    /// The home.
    pub home: HomeId,
    /// The animal.
    pub animal: AnimalId,
    /// The words, by place.
    pub words: [WordId; 4],
    /// The first moment.
    pub begins: Moment,
    /// Where midnight is.
    pub zone: Zone,
}

/// Writes it down. Whose thing did not come is a press without a delivery.
#[must_use]
pub fn written_down(run: &Run) -> Written {
    let words = Thing::ALL.map(Written::word);
    written_of(run, &Whose { home: HOME, animal: ANIMAL, words, begins: Moment::clamped(BEGINS_MS), zone: Zone::utc() })
}

/// The same as one more session of an animal.
#[must_use]
pub fn written_of(run: &Run, whose: &Whose) -> Written {
    let at = |ms: u32| whose.begins.plus_seconds(f64::from(ms) / 1000.0);
    let word = |thing: Thing| whose.words[thing.place()];
    let press = |thing: Thing, by| press(word(thing), by);
    let mut events: Vec<Event> = Vec::new();
    let mut write = |ms: u32, body: Body| {
        let id = EventId(Uuid::from_u128(0x1000 + events.len() as u128));
        let (at, zone) = (at(ms), whose.zone.clone());
        events.push(Event {
            id,
            home: whose.home,
            animal: Some(whose.animal),
            person: None,
            happened_at: at,
            zone,
            recorded_at: at,
            source: Source::Tap,
            body,
        });
        id
    };
    let answers = answers(&run.told);
    let mut pressed: BTreeMap<usize, EventId> = BTreeMap::new();
    // What was answered at a place: the press, the word that it was of, and since when it waited.
    let waited = |pressed: &BTreeMap<usize, EventId>, i: usize| {
        let press = answers.get(&i)?.press;
        let told = run.told.get(press)?;
        Some((*pressed.get(&press)?, told.what.thing()?, told.at_ms))
    };
    for (i, told) in run.told.iter().enumerate() {
        let ms = told.at_ms;
        match told.what {
            What::Pressed(thing) => {
                pressed.insert(i, write(ms, press(thing, PressedBy::Animal)));
            }
            What::Person(Does::Show(thing)) => {
                pressed.insert(i, write(ms, press(thing, PressedBy::Person)));
            }
            What::Person(Does::Give(given) | Does::Instead(given)) => {
                if let Some((id, of, since)) = waited(&pressed, i)
                    && let Some(came) = comes_at(run, i)
                {
                    let instead = matches!(told.what, What::Person(Does::Instead(_))) || given != of;
                    let answer = if instead { Answer::Alternative } else { Answer::Given };
                    write(came, delivery((id, word(of)), answer, came - since, then(run, i)));
                }
            }
            What::Person(Does::NotNow) => {
                if let Some((id, of, since)) = waited(&pressed, i) {
                    write(ms, delivery((id, word(of)), Answer::Declined, ms - since, None));
                }
            }
            What::Looks(thing) => {
                write(ms, Look { word: Some(word(thing)), session: None }.into());
            }
            What::Brushed(thing) => {
                write(ms, Brush { word: word(thing), session: None }.into());
            }
            _ => {}
        }
    }
    Written { events, animal: whose.animal, begins: whose.begins, ends: at(run.over.0) }
}

fn press(word: WordId, by: PressedBy) -> Body {
    let accident = if by == PressedBy::Person { Accident::No } else { Accident::Unsure };
    let certainty = Probability::clamped(1.0);
    Press { word, by, certainty, accident, place: None, speed: None, stream: None, session: None }.into()
}

fn delivery((id, word): (EventId, WordId), answer: Answer, after_ms: u32, then: Option<Then>) -> Body {
    Delivery {
        answers: Some(id),
        word,
        answer,
        alternative: None,
        delay_s: Some(Seconds::clamped(f64::from(after_ms) / 1000.0)),
        then,
        then_word: None,
        session: None,
    }
    .into()
}

/// Milliseconds at which what was given at that place of what was told came: at once, or when it was fetched; none where fetching it
/// never came to its end.
fn comes_at(run: &Run, given: usize) -> Option<u32> {
    let fetched = |i: usize| matches!(run.told.get(i + 1).map(|t| t.what), Some(What::Fetches(_)));
    if !fetched(given) {
        return Some(run.told[given].at_ms);
    }
    let came = outcome(run, given, fetched, |what| matches!(what, What::Fetched(_)))?;
    (came.what != What::Leaves).then_some(came.at_ms)
}

/// What it did with what was given at that place of what was told.
fn then(run: &Run, given: usize) -> Option<Then> {
    match outcome(run, given, |_| true, |what| matches!(what, What::Took(_) | What::Ignored(_)))?.what {
        What::Took(_) => Some(Then::Took),
        What::Ignored(_) => Some(Then::Ignored),
        _ => Some(Then::Left),
    }
}

/// What ended what was given at that place: of things of one kind the first given ends first; or it left before that.
fn outcome(run: &Run, given: usize, waits: impl Fn(usize) -> bool, ends: impl Fn(What) -> bool) -> Option<&Told> {
    let thing = run.told[given].what.thing();
    let mut open = VecDeque::new();
    for (i, told) in run.told.iter().enumerate() {
        let same = told.what.thing() == thing;
        match told.what {
            What::Leaves if open.contains(&given) => return Some(told),
            What::Leaves => open.clear(),
            What::Person(Does::Give(_) | Does::Instead(_)) if same && waits(i) => open.push_back(i),
            what if same && ends(what) && open.pop_front() == Some(given) => return Some(told),
            _ => {}
        }
    }
    None
}
