//! What a home has given consent to, and taken back, by date.

use crate::asker::Inside;
use sayso_model::consents::Open;
use sayso_model::event::Part as _;
use sayso_model::{Consent, ConsentGiven, ConsentTakenBack, EventId, Kind, Moment, Stretch};
use sayso_wording::Locale;
use sayso_wording::consents::asked;

/// What became of a giving.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Stand {
    /// It is open.
    Open,
    /// It was for some days, which are over or to come.
    Away(Stretch),
    /// It was taken back.
    TakenBack(Moment),
    /// It ended because the server was brought back from a backup.
    Restored,
    /// It opens nothing here: no keeper gave it on this server.
    Nothing,
}

/// One giving.
#[derive(Clone, Copy, Debug)]
pub struct Giving {
    /// By which event.
    pub id: EventId,
    /// To what.
    pub consent: Consent,
    /// When.
    pub at: Moment,
    /// The version of the words it was given to.
    pub words: u16,
    /// When it ends by itself.
    pub until: Option<Moment>,
    /// What became of it.
    pub stand: Stand,
}

impl Giving {
    /// Whether other words have come since.
    pub fn words_are_newer(&self, l: &Locale) -> bool {
        let said = |version| asked(l, self.consent.purpose(), version, "");
        said(self.words) != said(Consent::WORDS)
    }

    /// Whether it may be given anew in the newer words. One that ends by itself, as of a cover, is not made one without an end.
    pub fn may_be_renewed(&self, l: &Locale) -> bool {
        self.until.is_none() && self.words_are_newer(l)
    }
}

/// All of them, newest first.
pub struct Past {
    /// The givings.
    pub all: Vec<Giving>,
}

impl Past {
    /// As the home's log tells it and this server witnessed it; `restored` are those that ended because a backup was brought back.
    pub fn of(inside: &Inside, restored: &[EventId]) -> Self {
        let story = &inside.page.story;
        let open: Vec<EventId> =
            inside.known.consents.open().flat_map(|(_, given)| given.iter().map(|open: &Open| open.given)).collect();
        let back: Vec<(EventId, Moment)> = story
            .as_recorded(Kind::ConsentTakenBack)
            .filter_map(|e| ConsentTakenBack::of(&e.body).map(|part| (part.given, e.happened_at)))
            .collect();
        let giving = |event: &sayso_model::Event| {
            let part = ConsentGiven::of(&event.body)?;
            let taken = back.iter().filter(|(given, _)| *given == event.id).map(|(_, at)| *at).min();
            let stand = match taken {
                Some(at) => Stand::TakenBack(at),
                None if open.contains(&event.id) => Stand::Open,
                None if restored.contains(&event.id) => Stand::Restored,
                None => match part.holds {
                    Some(stretch) if !stretch.holds(inside.page.now) => Stand::Away(stretch),
                    _ => Stand::Nothing,
                },
            };
            Some(Giving {
                id: event.id,
                consent: part.consent,
                at: event.happened_at,
                words: part.words_version,
                until: part.holds.map(|stretch| stretch.until),
                stand,
            })
        };
        let mut all: Vec<Giving> = story.as_recorded(Kind::ConsentGiven).filter_map(giving).collect();
        all.sort_by_key(|one| std::cmp::Reverse(one.at));
        Self { all }
    }

    /// Those that open something now, or will by themselves.
    pub fn standing(&self, now: Moment) -> impl Iterator<Item = &Giving> {
        self.all.iter().filter(move |one| match one.stand {
            Stand::Open => true,
            Stand::Away(stretch) => now < stretch.until,
            Stand::TakenBack(_) | Stand::Restored | Stand::Nothing => false,
        })
    }

    /// The first giving by which a consent is open; none where it is not.
    pub fn open(&self, consent: Consent) -> Option<&Giving> {
        let open = self.all.iter().filter(|one| one.consent == consent && one.stand == Stand::Open);
        open.min_by_key(|one| one.at)
    }
}
