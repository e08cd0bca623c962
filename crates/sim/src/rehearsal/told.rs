//! What can be seen and heard in a rehearsal, moment by moment.

use super::act::Does;
use super::thing::Thing;
use sayso_model::{SignLevel, Species};

/// One moment.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Told {
    /// Milliseconds since it began.
    pub at_ms: u32,
    /// What happened.
    pub what: What,
}

/// What happened.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum What {
    /// The person did something.
    Person(Does),
    /// The animal looks up from where it is.
    LooksUp,
    /// It sets out for the board.
    Comes,
    /// It is at the board.
    Joined,
    /// It looks at a button.
    Looks(Thing),
    /// It touched a button that did not sound.
    Brushed(Thing),
    /// It pressed a button.
    Pressed(Thing),
    /// It took what was given.
    Took(Thing),
    /// It has finished with it.
    Finished(Thing),
    /// It did not take what was given.
    Ignored(Thing),
    /// It turns to something else in the room.
    Wanders,
    /// It leaves.
    Leaves,
    /// It is gone.
    Gone,
    /// The way was barred.
    Barred,
    /// A sign of what it feels.
    Sign(SignSeen),
    /// It is at ease again.
    Eases,
    /// The wait of an invitation is over.
    WaitOver(Thing),
    /// A press of its own got no answer.
    Unanswered(Thing),
    /// Two things are held out: on its left and on its right.
    Held(Thing, Thing),
    /// It chose one of them.
    Chose(Thing),
    /// It chose neither.
    ChoseNone,
    /// Something bangs outside.
    Noise,
    /// It starts back from the sound of a button.
    Startled(Thing),
    /// The person goes to fetch what is not at hand.
    Fetches(Thing),
    /// The person is back with it.
    Fetched(Thing),
}

impl What {
    /// Its name, for messages and drawings.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Person(does) => does.name(),
            Self::LooksUp => "looks-up",
            Self::Comes => "comes",
            Self::Joined => "joined",
            Self::Looks(_) => "looks",
            Self::Brushed(_) => "brushed",
            Self::Pressed(_) => "pressed",
            Self::Took(_) => "took",
            Self::Finished(_) => "finished",
            Self::Ignored(_) => "ignored",
            Self::Wanders => "wanders",
            Self::Leaves => "leaves",
            Self::Gone => "gone",
            Self::Barred => "barred",
            Self::Sign(_) => "sign",
            Self::Eases => "eases",
            Self::WaitOver(_) => "wait-over",
            Self::Unanswered(_) => "unanswered",
            Self::Held(..) => "held",
            Self::Chose(_) => "chose",
            Self::ChoseNone => "chose-none",
            Self::Noise => "noise",
            Self::Startled(_) => "startled",
            Self::Fetches(_) => "fetches",
            Self::Fetched(_) => "fetched",
        }
    }

    /// The thing it is about.
    #[must_use]
    pub const fn thing(self) -> Option<Thing> {
        match self {
            Self::Person(does) => does.thing(),
            Self::Looks(t)
            | Self::Brushed(t)
            | Self::Pressed(t)
            | Self::Took(t)
            | Self::Finished(t)
            | Self::Ignored(t)
            | Self::WaitOver(t)
            | Self::Unanswered(t)
            | Self::Chose(t)
            | Self::Startled(t)
            | Self::Fetches(t)
            | Self::Fetched(t) => Some(t),
            _ => None,
        }
    }
}

/// A sign that is seen.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct SignSeen {
    /// How strong.
    pub level: SignLevel,
    /// Its id among the facts of body language; `leans-away` of a parrot stands there not.
    pub id: &'static str,
}

/// A parrot's mild sign, of which the facts of body language have none: it leans away from what is offered.
pub const LEANS_AWAY: &str = "leans-away";

/// Signs of a species at a level, while it eats or not.
pub(super) const fn signs(species: Species, strong: bool, eats: bool) -> &'static [&'static str] {
    match (species, strong, eats) {
        (Species::Dog, true, true) => &["guards", "growl"],
        (Species::Dog, true, false) => &["freezes", "eye-whites", "tail-tucked", "growl"],
        (Species::Dog, false, _) => &["lip-lick", "turns-away", "sniffs-floor", "lifts-paw"],
        (Species::Cat, true, _) => &["tail-lashes", "ears-flat", "crouches", "hiss"],
        (Species::Cat, false, _) => &["tail-tip", "ears-sideways", "skin-ripples"],
        (Species::Parrot, true, _) => &["feathers-tight", "pupils-pin", "lunges"],
        (Species::Rabbit, true, _) => &["freezes-flat", "thumps"],
        (Species::Parrot | Species::Rabbit | Species::Other, ..) => &[LEANS_AWAY],
    }
}
