//! Small vocabularies, each with its names on the wire.

use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};

macro_rules! plain_enum {
    ($($(#[$doc:meta])* $name:ident { $($(#[$vdoc:meta])* $variant:ident => $wire:literal $(was $earlier:literal)?),+ $(,)? })+) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(rename_all = "snake_case")]
        pub enum $name { $($(#[$vdoc])* $(#[serde(alias = $earlier)])? $variant),+ }

        impl $name {
            /// Every value.
            pub const ALL: &'static [Self] = &[$(Self::$variant),+];

            /// The name on the wire.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$variant => $wire),+ }
            }
        }
    )+};
}

plain_enum! {
    /// What a session is for.
    Purpose {
        /// Showing words.
        Showing => "showing",
        /// Invitations.
        Inviting => "inviting",
        /// A likes test.
        Likes => "likes",
        /// A planned check of understanding.
        Probe => "probe",
    }
    /// Why a session ended.
    EndReason {
        /// The plan was done.
        Done => "done",
        /// The animal left and was let go.
        AnimalLeft => "animal_left" was "learner_left",
        /// Body language said stop.
        StrongSign => "strong_sign",
        /// A closing word was used.
        ClosingWord => "closing_word",
        /// Something else came up.
        Interrupted => "interrupted",
    }
    /// Who pressed.
    PressedBy {
        /// The animal.
        Animal => "animal" was "learner",
        /// A person, to show.
        Person => "person" was "teacher",
        /// Nobody saw.
        Unknown => "unknown",
    }
    /// Whether a press looked meant.
    Accident {
        /// It looked meant.
        No => "no",
        /// It looked like a stumble. It is answered all the same.
        Likely => "likely",
        /// Cannot tell.
        Unsure => "unsure",
    }
    /// How a press was answered.
    Answer {
        /// The thing was given.
        Given => "given",
        /// Some of it was given.
        Partly => "partly",
        /// "Not now".
        Declined => "declined",
        /// "Not now, but this".
        Alternative => "alternative",
        /// Nobody answered in time.
        Missed => "missed",
    }
    /// What the animal did after the answer.
    Then {
        /// Took what was given.
        Took => "took",
        /// Did not care for it.
        Ignored => "ignored",
        /// Went away.
        Left => "left",
        /// Pressed again.
        PressedAgain => "pressed_again",
    }
    /// How an opportunity was offered.
    InvitationKind {
        /// The thing is in view.
        OfferInView => "offer_in_view",
        /// "What would you like?", and a point to the board.
        AskAndPoint => "ask_and_point",
        /// "This or that?"
        AskBetweenTwo => "ask_between_two",
    }
    /// How strong a sign is.
    SignLevel {
        /// The animal takes part.
        Joining => "joining",
        /// A mild sign of stress.
        Mild => "mild",
        /// A strong sign of stress: end the session.
        Strong => "strong",
    }
    /// When a sign was seen.
    When {
        /// Before the session.
        Before => "before",
        /// During it.
        During => "during",
        /// After it.
        After => "after",
    }
    /// Formats of a likes test (preference assessment).
    LikesFormat {
        /// One item at a time (Pace et al. 1985).
        Single => "single",
        /// Two at a time (Fisher et al. 1992).
        Paired => "paired",
        /// All at once, without replacement (DeLeon & Iwata 1996).
        Multiple => "multiple",
        /// All at once, time with each measured (Roane et al. 1998).
        FreeAccess => "free_access",
    }
    /// Designs of a check of understanding.
    ProbeDesign {
        /// The animal is asked for the one of several things a hidden or absent thing calls for; pressed word scored.
        PressForThing => "press_for_thing",
        /// A word is played and the animal picks among things.
        PickForWord => "pick_for_word",
        /// As `press_for_thing`, with the buttons swapped under covers before each trial, as drawn: who answers does not know
        /// which button lies where.
        PressUnderCovers => "press_under_covers",
        /// What was pressed is delivered, or another thing; corrections scored.
        WrongDelivery => "wrong_delivery",
    }
    /// Single-case designs: how a change is tried on one animal.
    CaseDesign {
        /// Usual and changed in turn, phase by phase.
        Reversal => "reversal",
        /// Several words or animals, each changed once, one after the other.
        MultipleBaseline => "multiple_baseline",
        /// Usual and changed in quick turn, point by point.
        AlternatingTreatments => "alternating_treatments",
        /// A criterion for people, moved step by step.
        ChangingCriterion => "changing_criterion",
    }
    /// What is changed in a trial of a change.
    CaseQuestion {
        /// The buttons sound more softly.
        QuieterButton => "quieter_button",
        /// The board or a button stands elsewhere.
        NewPlace => "new_place",
        /// What was asked for comes sooner.
        FasterDelivery => "faster_delivery",
        /// Another word is on the board.
        AnotherWord => "another_word",
        /// Something else, with a label.
        Other => "other",
    }
    /// What is measured at each point of a trial of a change.
    CaseMeasure {
        /// The animal's own presses.
        OwnPresses => "own_presses",
        /// Share of sessions joined.
        JoinedShare => "joined_share",
        /// Seconds to the press when invited and wanted, at most the wait.
        TimeToPress => "time_to_press",
        /// Share pressed of invitations in which the thing was wanted.
        PressedShare => "pressed_share",
        /// Mild and strong signs of stress.
        StressSigns => "stress_signs",
        /// Seconds from press to delivery: what people do.
        DeliveryDelay => "delivery_delay",
    }
    /// Which way a change is expected to go, said before it begins.
    CaseExpected {
        /// More of what is measured.
        More => "more",
        /// Less of it.
        Less => "less",
        /// Either.
        Either => "either",
    }
    /// What one point of a trial of a change is.
    CaseUnit {
        /// A day of the household.
        Day => "day",
        /// A session for showing or inviting.
        Session => "session",
    }
    /// Which condition is in force.
    CaseCondition {
        /// As always.
        Usual => "usual",
        /// With the change.
        Changed => "changed",
    }
    /// What a home may give consent to.
    ConsentPurpose {
        /// A coach sees figures.
        CoachFigures => "coach_figures",
        /// A coach sees the log.
        CoachLog => "coach_log",
        /// A coach hears snippets.
        CoachSnippets => "coach_snippets",
        /// Figures count in the norms of many homes.
        Norms => "norms",
        /// Records may be given to studies.
        Research => "research",
    }
    /// Why a trial of a change was stopped before its end.
    CaseStop {
        /// Body language said stop.
        StrongSign => "strong_sign",
        /// The change did harm, or would be unkind to go on with.
        NotGood => "not_good",
        /// It could not be kept up.
        NotKept => "not_kept",
        /// Another reason.
        Other => "other",
    }
    /// How a word of a plan is worked on: what the log can tell apart.
    PlanWay {
        /// Shown by a person.
        Show => "show",
        /// Invited by the thing in view.
        OfferInView => "offer_in_view",
        /// Invited by asking and pointing.
        AskAndPoint => "ask_and_point",
        /// Invited by asking between two.
        AskBetweenTwo => "ask_between_two",
    }
    /// A page of figures.
    FigurePage {
        /// Evidence.
        Evidence => "evidence",
        /// Days.
        Days => "days",
        /// Patterns.
        Patterns => "patterns",
        /// Likes.
        Likes => "likes",
    }
    /// A chart of one word's evidence.
    WordChart {
        /// The learning curve.
        Curve => "curve",
        /// Showings a day.
        Showings => "showings",
        /// Own presses a day.
        Presses => "presses",
    }
    /// A chart of the page Days.
    DaysChart {
        /// Own presses by hour.
        Hours => "hours",
        /// Own presses by day of the week.
        Weekdays => "weekdays",
        /// Sessions joined, by week.
        Joining => "joining",
        /// From press to giving, by week.
        Delay => "delay",
    }
    /// A figure of a rehearsal.
    RehearsalMeasure {
        /// Seconds from the person's press to giving.
        Delay => "delay",
        /// Seconds from the animal's press to giving.
        AnswerDelay => "answer_delay",
        /// Of what was shown and given: taken.
        Taken => "taken",
        /// Of invitations: their wait was kept.
        Waits => "waits",
        /// Of pairs held out: it was left to choose.
        Held => "held",
        /// Of its presses: answered.
        Answered => "answered",
        /// Of times "not now" was said: something else was given.
        Alternatives => "alternatives",
        /// Of leavings: honoured.
        Leaving => "leaving",
        /// Of mild signs: heeded.
        Mild => "mild",
        /// Of strong signs: heeded.
        Strong => "strong",
        /// Of things taken: had in peace.
        Eaten => "eaten",
    }
    /// How a home answers a coach.
    Reply {
        /// Yes.
        Accepted => "accepted",
        /// No.
        Declined => "declined",
        /// With words alone.
        Said => "said",
    }
}

impl ProbeDesign {
    /// Whether the places are drawn anew for each trial: of the things laid out, or of the buttons under their covers.
    /// Where they are not, a habit of place cannot be told from an answer.
    #[must_use]
    pub const fn places_drawn(self) -> bool {
        matches!(self, Self::PickForWord | Self::PressUnderCovers)
    }
}

impl Accident {
    pub(super) const fn unsure() -> Self {
        Self::Unsure
    }
}
