//! A rehearsal written down as the Board would have: so that the same figures are made of it as of real use. These events are
//! of no home; nobody keeps them.

use super::act::Does;
use super::deeds::answered;
use super::run::Run;
use super::thing::Thing;
use super::told::What;
use sayso_model::{
    Accident, AnimalId, Answer, Body, Brush, Delivery, Event, EventId, HomeId, Look, Moment, Press, PressedBy,
    Probability, Seconds, Source, Then, WordId, Zone,
};
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
    // The press that waits for its thing: the animal's own before the person's.
    let (mut own, mut shown): (Option<Waiting>, Option<Waiting>) = (None, None);
    for (i, told) in run.told.iter().enumerate() {
        let ms = told.at_ms;
        match told.what {
            What::Pressed(thing) => own = Some((write(ms, press(thing, PressedBy::Animal)), thing, ms)),
            What::Person(Does::Show(thing)) => {
                shown = Some((write(ms, press(thing, PressedBy::Person)), thing, ms));
            }
            What::Person(Does::Give(given)) => {
                if let Some(((id, pressed, since), _)) = answered(given, (&mut own, &mut shown), |(_, of, _)| *of)
                    && let Some(came) = comes_at(run, i)
                {
                    let answer = if given == pressed { Answer::Given } else { Answer::Alternative };
                    write(came, delivery((id, word(pressed)), answer, came - since, then(run, i)));
                }
            }
            What::Person(Does::NotNow) => {
                if let Some((id, pressed, since)) = own.take() {
                    write(ms, delivery((id, word(pressed)), Answer::Declined, ms - since, None));
                }
            }
            What::Person(Does::Instead(_)) => {
                if let Some((id, pressed, since)) = own.take()
                    && let Some(came) = comes_at(run, i)
                {
                    write(came, delivery((id, word(pressed)), Answer::Alternative, came - since, then(run, i)));
                }
            }
            What::Unanswered(_) => own = None,
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

type Waiting = (EventId, Thing, u32);

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
    let after = &run.told[given + 1..];
    if !matches!(after.first().map(|t| t.what), Some(What::Fetches(_))) {
        return Some(run.told[given].at_ms);
    }
    let mut after = after.iter().take_while(|t| !matches!(t.what, What::Person(Does::Give(_) | Does::Instead(_))));
    after.find(|t| matches!(t.what, What::Fetched(_))).map(|t| t.at_ms)
}

/// What it did with what was given at that place of what was told.
fn then(run: &Run, given: usize) -> Option<Then> {
    for told in run.told.iter().skip(given + 1) {
        match told.what {
            What::Took(_) => return Some(Then::Took),
            What::Ignored(_) => return Some(Then::Ignored),
            What::Leaves => return Some(Then::Left),
            What::Person(Does::Give(_) | Does::Instead(_)) => return None,
            _ => {}
        }
    }
    None
}
