//! Which consents of a home are open. Written so that whatever is unclear closes:
//!
//! - only first records count; a giving that was corrected or withdrawn opens nothing, and nothing opens a giving again that was
//!   taken back (a new giving is a new event);
//! - only what a person tapped opens; what was imported, heard or sent by a device does not;
//! - a giving dated ahead opens when its time has come; a taking back closes whatever its date, for clocks are wrong;
//! - what was given for a stretch of time is closed before and after it;
//! - words of a version that is not known here open nothing.
//!
//! Who wrote an event is what a device says. A server of many homes therefore also remembers which givings a keeper of the
//! home wrote under its eyes, and counts no others: [`Consents::only`].

use crate::body::{Coach, Consent, ConsentGiven, ConsentTakenBack};
use crate::event::{Event, Kind, Part, Source};
use crate::id::{ClubId, EventId};
use crate::story::Story;
use crate::time::Moment;
use std::collections::BTreeMap;

/// One giving that stands.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Open {
    /// The event by which it was given.
    pub given: EventId,
    /// When.
    pub at: Moment,
    /// In words of which version.
    pub words_version: u16,
    /// When it ends by itself.
    pub until: Option<Moment>,
}

/// The consents of a home that are open. None is, unless given.
#[derive(Clone, PartialEq, Eq, Default, Debug)]
pub struct Consents(BTreeMap<Consent, Vec<Open>>);

impl Consents {
    /// Whether a consent is open.
    #[must_use]
    pub fn is_open(&self, consent: Consent) -> bool {
        self.0.contains_key(&consent)
    }

    /// Every open consent with the givings that hold it open, oldest first.
    pub fn open(&self) -> impl Iterator<Item = (Consent, &[Open])> {
        self.0.iter().map(|(consent, given)| (*consent, given.as_slice()))
    }

    /// Whether anything is open to a coach.
    #[must_use]
    pub fn any_to(&self, coach: Coach) -> bool {
        self.0.keys().any(|consent| consent.coach() == Some(coach))
    }

    /// Whether coaches of a club may read what others of it wrote to the home: a consent to figures is open to the club, in words that
    /// say so.
    #[must_use]
    pub fn club_reads(&self, club: ClubId) -> bool {
        let given = self.0.get(&Consent::CoachFigures { to: Coach::Club { club } });
        given.into_iter().flatten().any(|open| open.words_version >= Consent::CLUB_READS)
    }

    /// The newest words in which a consent to norms is open: they name what norms may be told. None where there is none.
    #[must_use]
    pub fn norms_words(&self) -> Option<u16> {
        self.0.get(&Consent::Norms)?.iter().map(|open| open.words_version).max()
    }

    /// Only what was given by events that pass.
    #[must_use]
    pub fn only(mut self, passes: impl Fn(EventId) -> bool) -> Self {
        self.0.retain(|_, given| {
            given.retain(|open| passes(open.given));
            !given.is_empty()
        });
        self
    }

    /// What to write down to close a consent, whoever gave it how often.
    #[must_use]
    pub fn closing(&self, consent: Consent) -> Vec<ConsentTakenBack> {
        let given = self.0.get(&consent).into_iter().flatten();
        given.map(|open| ConsentTakenBack { consent, given: open.given }).collect()
    }
}

fn takings(story: &Story) -> Vec<(&Event, &ConsentTakenBack)> {
    let all = story.as_recorded(Kind::ConsentTakenBack);
    all.filter_map(|event| ConsentTakenBack::of(&event.body).map(|part| (event, part))).collect()
}

/// Whether a taking back closes a giving.
fn closes((back, what): (&Event, &ConsentTakenBack), (given, part): (&Event, &ConsentGiven)) -> bool {
    what.given == given.id || (what.consent == part.consent && given.happened_at <= back.happened_at)
}

/// Whether a giving can open anything at all: by hand, in known words, and not changed since.
fn opens(story: &Story, event: &Event, part: &ConsentGiven) -> bool {
    event.source == Source::Tap
        && (1..=Consent::WORDS).contains(&part.words_version)
        && !story.ledger().is_amended(event.id)
}

/// When the last giving of some consents ended, up to a moment: taken back, or its time over, whichever came first.
#[must_use]
pub fn last_ended(story: &Story, of: impl Fn(Consent) -> bool, at: Moment) -> Option<Moment> {
    let taken = takings(story);
    let ends = story.as_recorded(Kind::ConsentGiven).filter_map(|event| {
        let part = ConsentGiven::of(&event.body).filter(|part| of(part.consent) && opens(story, event, part))?;
        let backs = taken.iter().filter(|back| closes(**back, (event, part))).map(|(back, _)| back.happened_at);
        backs.chain(part.holds.map(|stretch| stretch.until)).min()
    });
    ends.filter(|end| *end <= at).max()
}

/// Which consents are open at a moment.
#[must_use]
pub fn consents(story: &Story, at: Moment) -> Consents {
    let taken = takings(story);
    let mut open: BTreeMap<Consent, Vec<Open>> = BTreeMap::new();
    for event in story.as_recorded(Kind::ConsentGiven) {
        let Some(part) = ConsentGiven::of(&event.body) else { continue };
        let counts =
            opens(story, event, part) && event.happened_at <= at && part.holds.is_none_or(|stretch| stretch.holds(at));
        let closed = taken.iter().any(|back| closes(*back, (event, part)));
        if counts && !closed {
            let given = Open {
                given: event.id,
                at: event.happened_at,
                words_version: part.words_version,
                until: part.holds.map(|stretch| stretch.until),
            };
            open.entry(part.consent).or_default().push(given);
        }
    }
    open.values_mut().for_each(|given| given.sort_by_key(|o| (o.at, o.given)));
    Consents(open)
}
