//! What to watch out for.

use serde::Serialize;

/// What to watch out for.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Caution {
    /// Ask a veterinarian and a qualified behaviour professional; follow local law on animals that bite.
    AskBoth,
    /// If such signs come back, or without a cause one can see, ask both.
    AskIfBack,
    /// Such signs came back: ask both.
    AskNow,
    /// Call a veterinarian at once, and do not make it vomit unless told to.
    CallVetNow,
    /// Something was swallowed on an earlier day: small things out of reach; call a veterinarian at once if it is unwell.
    AskVetUnlessSeen,
    /// Take nothing from it by force; keep children away.
    TakeNothing,
    /// Leaving is an answer: do not call or lure it back.
    LeavingIsAnswer,
    /// A single sign means little.
    SingleSign,
    /// A sudden change may be illness: see a veterinarian.
    MayBeIllness,
    /// Individuals of one weight need very different amounts: watch the body, ask a veterinarian.
    IndividualsDiffer,
    /// Batteries where no animal or child reaches them; what to do when one is swallowed.
    Battery,
    /// Not pressing says nothing about what it understands; after a sudden change see a veterinarian first.
    NotPressing,
    /// It may come and go as it likes.
    ComesAndGoes,
    /// When answers change, a burst of presses may come first (Lerman & Iwata 1995).
    BurstMayCome,
    /// Never for water, toilet, pain or fear; if it guards, growls or bites, stop and ask.
    NeverForNeeds,
}
