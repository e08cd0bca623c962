//! What held a word up that did not get on: the truth, how it showed, and what the notebook would have said from the records of the
//! weeks before and of this session.

use sayso_advisor::stuck::{Cause, Weighed, differential};
use sayso_advisor::{Case, Estimate, Unit, estimate::median};
use sayso_model::{AnimalId, Label, Moment, Story, WordId};
use sayso_sim::Cause as Holds;
use sayso_sim::rehearsal::{Does, Hidden, Run, Setup, Thing, Told, Weeks, What, weeks, written_of};

/// Causes to choose among: those that can be found out at the board in a few minutes.
pub const NAMEABLE: [Cause; 6] =
    [Cause::NotWanted, Cause::TooLittle, Cause::TooLate, Cause::Avoided, Cause::TimeOrPlace, Cause::Health];
/// Days of records that are told beforehand.
const DAYS: i32 = 21;
/// Milliseconds after a noise in which a sign goes with it.
const WITH_MS: u32 = 2_000;

/// What came out.
#[derive(Clone, PartialEq, Debug)]
pub struct Found {
    /// The word.
    pub word: Thing,
    /// What holds it up.
    pub cause: Cause,
    /// How it showed in this rehearsal.
    pub shown: Shown,
    /// Whether the person put it right before it had shown at all.
    pub put_right: bool,
    /// What the notebook says of each cause, those that the records speak for first.
    pub said: Vec<Weighed>,
}

/// How a cause showed.
#[derive(Clone, PartialEq, Debug)]
pub enum Shown {
    /// So often, of so many.
    Share(Estimate),
    /// So many seconds.
    Seconds(Estimate),
    /// So few times in the three weeks before, and so many times here.
    Showings {
        /// Before.
        before: usize,
        /// Here.
        here: usize,
    },
}

impl Shown {
    /// Whether there was anything to be seen of it.
    #[must_use]
    pub const fn is_seen(&self) -> bool {
        match self {
            Self::Share(figure) | Self::Seconds(figure) => figure.n > 0,
            Self::Showings { here, .. } => *here > 0,
        }
    }
}

/// The cause as the notebook knows it; none of what a rehearsal does not hide.
const fn known(cause: Holds) -> Option<Cause> {
    match cause {
        Holds::RewardNotWanted => Some(Cause::NotWanted),
        Holds::TooLittleShowing => Some(Cause::TooLittle),
        Holds::DelayTooLong => Some(Cause::TooLate),
        Holds::DeviceAvoided => Some(Cause::Avoided),
        Holds::PlaceOrNoise => Some(Cause::TimeOrPlace),
        Holds::Unwell => Some(Cause::Health),
        Holds::SoundsAlike | Holds::AnsweredDifferently => None,
    }
}

/// What the notebook has of the weeks before; none in an exercise that hides nothing.
#[must_use]
pub fn before(setup: Setup, name: &Label, says: &[Label; 4]) -> Option<Weeks> {
    weeks(setup, name, says)
}

/// How often each word was shown in the three weeks before, by its place.
#[must_use]
pub fn shown_before(weeks: &Weeks) -> [usize; 4] {
    let story = Story::from_events(weeks.events.clone());
    counted(&Case::new(&story, weeks.whose.animal, weeks.whose.begins), &weeks.whose.words)
}

fn counted(case: &Case<'_>, words: &[WordId; 4]) -> [usize; 4] {
    let from = case.since(DAYS);
    words.map(|word| case.totals().of(word).shown.iter().filter(|s| s.at >= from).count())
}

/// What held the word up in a rehearsal with these weeks before; none where nothing is hidden.
#[must_use]
pub fn found(run: &Run, weeks: &Weeks) -> Option<Found> {
    let hidden = run.setup.hides()?;
    let cause = known(hidden.cause)?;
    let mut events = weeks.events.clone();
    let session = written_of(run, &weeks.whose);
    events.extend(session.events);
    let (animal, word): (AnimalId, WordId) = (weeks.whose.animal, weeks.whose.words[hidden.word.place()]);
    let story = Story::from_events(events);
    let now: Moment = session.ends;
    let said = differential(&Case::new(&story, animal, now), word);
    let first = shown_before(weeks);
    let shown = shown(run, hidden, first[hidden.word.place()]);
    Some(Found { word: hidden.word, cause, shown, put_right: put_right(run, hidden), said })
}

/// Whether the person did what undoes it before there was anything to be seen of it.
fn put_right(run: &Run, hidden: Hidden) -> bool {
    let undoes = match hidden.cause {
        Holds::DelayTooLong => Does::Ready,
        Holds::DeviceAvoided => Does::Softer,
        Holds::PlaceOrNoise => Does::Quiet,
        _ => return false,
    };
    let Some(at) = run.told.iter().position(|t| t.what == What::Person(undoes)) else { return false };
    let shows = |(i, t): (usize, &Told)| match hidden.cause {
        Holds::DelayTooLong => matches!(t.what, What::Fetches(_)),
        Holds::DeviceAvoided => matches!(t.what, What::Startled(_)),
        _ => t.what == What::Noise && minded(run, i),
    };
    !run.told[..at].iter().enumerate().any(shows)
}

/// Whether a sign, or going away, went with the noise at that place of what was told.
fn minded(run: &Run, noise: usize) -> bool {
    let until = run.told[noise].at_ms + WITH_MS;
    let mut soon = run.told[noise + 1..].iter().take_while(|t| t.at_ms <= until);
    soon.any(|t| matches!(t.what, What::Sign(_) | What::Leaves))
}

/// How a cause showed in this rehearsal.
fn shown(run: &Run, hidden: Hidden, before: usize) -> Shown {
    let word = hidden.word;
    let share = |all: Vec<bool>| {
        let k = all.iter().filter(|is| **is).count();
        Shown::Share(if all.is_empty() { Estimate::unknown(Unit::Share) } else { Estimate::share(k, all.len()) })
    };
    let told = || run.told.iter();
    match hidden.cause {
        Holds::RewardNotWanted => {
            let left = told().filter_map(|t| match t.what {
                What::Took(thing) | What::Chose(thing) if thing == word => Some(false),
                What::Ignored(thing) if thing == word => Some(true),
                // One of two is that of the word, whichever pair it is.
                What::Chose(_) | What::ChoseNone => Some(true),
                _ => None,
            });
            share(left.collect())
        }
        Holds::DelayTooLong => {
            let mut since = None;
            let mut all = Vec::new();
            for Told { at_ms, what } in told().copied() {
                match what {
                    What::Fetches(_) => since = Some(at_ms),
                    What::Fetched(_) => all.extend(since.take().map(|since| f64::from(at_ms - since) / 1000.0)),
                    _ => {}
                }
            }
            Shown::Seconds(median(&all, Unit::Seconds))
        }
        Holds::DeviceAvoided => {
            let pressed = |t: &Told| t.what == What::Person(Does::Show(word));
            let started = run.told.windows(2).filter(|w| pressed(&w[0]));
            share(started.map(|w| w[1].what == What::Startled(word)).collect())
        }
        Holds::PlaceOrNoise => {
            let noises = told().enumerate().filter(|(_, t)| t.what == What::Noise);
            share(noises.map(|(i, _)| minded(run, i)).collect())
        }
        Holds::Unwell => {
            let left = told().filter_map(|t| match t.what {
                What::Took(_) | What::Chose(_) => Some(false),
                What::Ignored(_) | What::ChoseNone => Some(true),
                _ => None,
            });
            share(left.collect())
        }
        Holds::TooLittleShowing | Holds::SoundsAlike | Holds::AnsweredDifferently => {
            Shown::Showings { before, here: told().filter(|t| t.what == What::Person(Does::Show(word))).count() }
        }
    }
}
