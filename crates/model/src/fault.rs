//! What can be wrong with an event, as values: said in English here, for logs, files and programs; the words for people
//! stand in the catalogues.

use crate::body::CaseMeasure;
use crate::id::HomeId;
use crate::species::{LifeStage, Species};
use crate::text::TextError;
use crate::time::TimeError;
use crate::too_late::TooLate;
use crate::units::OutOfRange;

/// What is wrong with one field, with what was found and what would be right.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
pub enum Fault {
    /// An event of a home that is not here, or that whoever writes has nothing to do with.
    #[error("is not a home you can write in here; it may have left")]
    NotYourHome,
    /// An event that whoever writes may not write in this role.
    #[error("is not for your role in this home")]
    NotYourRole,
    /// Consent, which is given on its page alone, where its words are read.
    #[error("is given on the page “Who can see this” alone, where its words are read")]
    OnItsPage,
    /// A line of a plan that would invite a word which ends sessions.
    #[error("invites a word that ends sessions: nobody waits for that one; it must be “show” or left out")]
    InvitesClosing,
    /// An event in the name of another account than the one that is signed in.
    #[error("must be the account that is signed in, under its own name")]
    NotYourAccount,
    /// An event of a sitter on a day that was not agreed.
    #[error("must come on one of the days agreed with you")]
    NotYourDay,
    /// An event about no animal, of a kind that needs one.
    #[error("is missing; this kind of event is about one animal")]
    NoAnimal,
    /// A whole number out of its range.
    #[error("must be {low} to {high}, not {found}")]
    Range {
        /// Least.
        low: u64,
        /// Most.
        high: u64,
        /// What was found.
        found: u64,
    },
    /// A number that is too small.
    #[error("must be at least {least}, not {found}")]
    TooFew {
        /// Least.
        least: usize,
        /// What was found.
        found: usize,
    },
    /// A list that is too short or too long.
    #[error("must name {low} to {high}, not {found}")]
    HowMany {
        /// Fewest.
        low: usize,
        /// Most.
        high: usize,
        /// How many it names.
        found: usize,
    },
    /// Seconds that are too short or too long.
    #[error("must be {low} to {high} seconds, not {found}")]
    Seconds {
        /// Least.
        low: f64,
        /// Most.
        high: f64,
        /// What was found.
        found: f64,
    },
    /// A list in which one thing stands twice.
    #[error("names one twice")]
    Twice,
    /// A correction of a correction.
    #[error("must not itself be a correction or withdrawal; correct the first event again")]
    AmendsAmendment,
    /// Another thing given, though the answer was not that.
    #[error("goes only with answer \"alternative\"")]
    NotAlternative,
    /// A stretch that ends before it begins.
    #[error("must end after it begins")]
    EndsFirst,
    /// A coach who would hand a home over to nobody else.
    #[error("must be another coach")]
    OwnSuccessor,
    /// A second press, though there was none.
    #[error("goes only with then \"pressed_again\"")]
    NotPressedAgain,
    /// A second word, though it was not asked between two, or none though it was.
    #[error("names the second word of \"ask_between_two\", and only of that")]
    NotBetweenTwo,
    /// The same word a second time.
    #[error("must be another word")]
    SameWord,
    /// A press of an invitation that came after it was over.
    #[error("lies beyond the wait of {wait_s} s; log it as an ordinary press")]
    AfterTheWait {
        /// How long was waited, in seconds.
        wait_s: f64,
    },
    /// Food without a name.
    #[error("is missing; say what was given, or name a reward")]
    NoFood,
    /// A label of a trial that has a name already, or none where it needs one.
    #[error("says what is changed where the question is \"other\", and only there")]
    LabelOfOther,
    /// What is measured is not counted word by word.
    #[error("\"{}\" is not counted word by word; name animals instead", .0.name())]
    NotByWord(CaseMeasure),
    /// Animals in a design over words.
    #[error("are only for a multiple baseline over animals")]
    OnlyOverAnimals,
    /// A criterion for an animal.
    #[error("must be \"delivery_delay\": a criterion is for people, never for the animal")]
    CriterionForPeople,
    /// Too many or too few criteria.
    #[error("must be one for each phase after the first, not {found}")]
    CriterionAPhase {
        /// How many there are.
        found: usize,
    },
    /// Criteria in another design.
    #[error("are only for a changing criterion")]
    OnlyWithCriterion,
    /// A thing chosen that was not there.
    #[error("was not offered in this trial")]
    NotOffered,
    /// A choice noted in free access.
    #[error("free access is scored by time: use \"observed\"")]
    FreeByTime,
    /// Times noted in a test of choices.
    #[error("\"observed\" is only for free access")]
    OnlyFree,
    /// Time with a thing that was not there, or noted twice.
    #[error("must be one of the offered things, once")]
    OfferedOnce,
    /// Longer with a thing than it was there.
    #[error("is more than the {observed_s} s observed")]
    LongerThanObserved {
        /// How long the things were there, in seconds.
        observed_s: f64,
    },
    /// Too many or too few swaps.
    #[error("must be {low} to {high}, not {found}; more swaps than one in four tire an animal")]
    SwapsOneIn {
        /// Least.
        low: u16,
        /// Most.
        high: u16,
        /// What was found.
        found: u16,
    },
    /// More of the day's food as rewards than is safe unasked.
    #[error("must be at most {most}; ask a veterinarian for more")]
    RewardShare {
        /// The largest share, 0 to 1.
        most: f64,
    },
    /// A stage of life that this species does not have.
    #[error("{} is not for a {}", .stage.name(), .species.name())]
    StageOfOther {
        /// The stage.
        stage: LifeStage,
        /// The species.
        species: Species,
    },
    /// A puppy heavier than it will be.
    #[error("is {grown} kg, less than the {now} kg this puppy weighs; correct one, or choose a grown stage")]
    GrownLessThanNow {
        /// Grown weight, in kg.
        grown: f64,
        /// Weight, in kg.
        now: f64,
    },
    /// Food without its energy.
    #[error("is missing; food needs the energy of one piece, in kcal")]
    NoEnergy,
    /// Energy of what is no food.
    #[error("is only for food")]
    OnlyFood,
    /// No SHA-256.
    #[error("must be 64 hexadecimal digits")]
    NotAHash,
    /// A word beside the board.
    #[error("row {row} column {column} is off the board")]
    OffBoard {
        /// Row, from 0.
        row: u8,
        /// Column, from 0.
        column: u8,
    },
    /// Two words in one place.
    #[error("row {row} column {column} is taken twice")]
    PlaceTwice {
        /// Row, from 0.
        row: u8,
        /// Column, from 0.
        column: u8,
    },
    /// A word in two places.
    #[error("stands in two places")]
    TwoPlaces,
    /// The id of another event.
    #[error("belongs to another event already; send it again as a new one")]
    IdTaken,
    /// A text that is none.
    #[error(transparent)]
    Text(#[from] TextError),
    /// A quantity out of the range of its unit.
    #[error(transparent)]
    Quantity(#[from] OutOfRange),
    /// A time that is none.
    #[error(transparent)]
    Time(#[from] TimeError),
    /// An event that cannot come to count.
    #[error(transparent)]
    Late(#[from] TooLate),
    /// The home is another than the notebook's.
    #[error(
        "is {0}, another home than this notebook's; to keep several in one notebook, import a file of its events and say so"
    )]
    OtherHome(HomeId),
    /// An event of too many bytes.
    #[error("is too long: {bytes} bytes, where {most} are the most")]
    TooLong {
        /// Bytes it has.
        bytes: usize,
        /// Most it may have.
        most: usize,
    },
    /// An event that cannot be written as JSON.
    #[error("cannot be written as JSON")]
    NotWritten,
}

impl Fault {
    /// A whole number that is not from `low` to `high`.
    pub(crate) fn range(low: impl Into<u64>, high: impl Into<u64>, found: impl Into<u64>) -> Self {
        Self::Range { low: low.into(), high: high.into(), found: found.into() }
    }
}
