//! Because of what: facts with their figures.

use super::{Below, Lack, NamedWord};
use crate::estimate::Estimate;
use sayso_model::{Day, Moment, Zone};
use serde::Serialize;

/// A sign that is not over with the day.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Lasting {
    /// A growl, snap or bite; a hiss, swat or lunge.
    Threat,
    /// Guarding food, a thing or the button.
    Guarding,
    /// Swallowing something that is no food.
    Swallowing,
}

/// Food given today.
#[derive(Clone, Copy, PartialEq, Debug, Serialize)]
pub struct Feed {
    /// Energy given, kcal.
    pub given_kcal: f64,
    /// Feeds.
    pub feeds: usize,
    /// Energy for rewards, kcal.
    pub budget_kcal: f64,
}

/// A fact that speaks for an advice, or a figure that would change one.
#[derive(Clone, PartialEq, Debug, Serialize)]
#[serde(tag = "because", rename_all = "snake_case")]
pub enum Because {
    /// Strong signs of stress.
    StrongSigns {
        /// Today.
        today: usize,
        /// In the days looked back on.
        count: usize,
        /// On so many of them.
        on_days: usize,
        /// Days looked back on.
        days: i32,
        /// The last, as it was written down.
        last: String,
    },
    /// Until when sessions rest for them, if nothing more is seen.
    RestsUntil {
        /// When they may be held again.
        until: Moment,
        /// Where the home is.
        zone: Zone,
    },
    /// Signs that are not over with the day.
    LastingSigns {
        /// Which.
        sign: Lasting,
        /// How many in the days looked back on.
        count: usize,
        /// Days looked back on.
        days: i32,
        /// The last, as it was written down.
        last: String,
        /// Its day.
        last_on: Day,
    },
    /// They come back week by week.
    Recurring {
        /// Which.
        sign: Lasting,
        /// Weeks with one.
        weeks: usize,
        /// Weeks looked at.
        of: usize,
    },
    /// Sessions it left, of those it had joined lately.
    LeftSessions {
        /// The share.
        share: Estimate,
        /// Left.
        left: usize,
    },
    /// Share of the week's sessions with a mild sign.
    MildSigns {
        /// The share.
        share: Estimate,
    },
    /// A sudden change in own presses.
    SuddenChange {
        /// Over the last two days.
        now: Estimate,
        /// Over the four weeks before.
        before: Estimate,
    },
    /// Food rewards given today.
    FoodGiven(Feed),
    /// Rewards listed.
    RewardsListed {
        /// How many.
        rewards: usize,
    },
    /// None of the rewards was tested.
    NoLikesTest {
        /// Rewards listed.
        rewards: usize,
    },
    /// Likes are tested, and no word is on the board.
    NoWordYet {
        /// Trials of likes tests.
        trials: usize,
    },
    /// No allowance can be worked out.
    NoAllowance,
    /// The card lacks something; people who answer alike make a word easier to learn (common practice, no source).
    CardLacks {
        /// What.
        lacks: Vec<Lack>,
    },
    /// A replay that slows down.
    Slowing {
        /// The word.
        word: NamedWord,
        /// By how much.
        by: Estimate,
        /// Chance that it slows more than healthy buttons do.
        probability: f64,
        /// Days looked back on.
        days: f64,
    },
    /// A word not heard while others were.
    Silent {
        /// The word.
        word: NamedWord,
        /// Day it was last heard; none where never.
        last_on: Option<Day>,
        /// Days of silence.
        days: f64,
        /// Times other words were heard meanwhile.
        others: usize,
        /// Presses a day before.
        before: Option<Estimate>,
    },
    /// Noted by hand meanwhile: it sounds, but no longer like its recording.
    NotedByHand {
        /// The word.
        word: NamedWord,
        /// How often.
        times: usize,
    },
    /// A flat battery, a broken button, a new recording, or no use for the word: nothing about what the animal knows.
    SilentCauses,
    /// The last likes test is old.
    TestOld {
        /// Days since.
        days: f64,
        /// Days after which half is taken as forgotten (common practice, no source).
        half_life_days: f64,
    },
    /// The best few are not known well enough.
    BestUnclear {
        /// Best so far.
        best: Vec<String>,
        /// Probability that no other is clearly better.
        probability: f64,
        /// Choices behind it.
        choices: u64,
    },
    /// What came when the word was invited and its thing wanted: one fact in counts, whoever asks.
    WhenWanted {
        /// Pressed this word.
        this: usize,
        /// Pressed another.
        other: usize,
        /// Pressed none; that is no failure.
        none: usize,
    },
    /// Right presses, of presses at its invitations.
    Right {
        /// The share.
        share: Estimate,
        /// Right.
        right: usize,
        /// Share of presses of this word when others are invited.
        elsewhere: Estimate,
        /// Whether that is more than chance.
        above_chance: bool,
    },
    /// Showings so far.
    Showings {
        /// Showings.
        showings: u32,
        /// Wanted before inviting.
        wanted: u32,
        /// Days with showings.
        days: u32,
        /// Wanted.
        days_wanted: u32,
    },
    /// Sessions joined, of sessions begun in four weeks.
    Joining {
        /// The share.
        share: Estimate,
        /// Joined.
        joined: usize,
        /// What it should clearly reach before inviting.
        floor: f64,
    },
    /// Sessions in a row at mastery.
    Mastery {
        /// In a row, up to the latest.
        sessions: u32,
        /// Wanted.
        sessions_wanted: u32,
        /// People in them.
        people: u32,
        /// Wanted.
        people_wanted: u32,
        /// Share pressed and right a session must reach.
        share: f64,
    },
    /// Presses of its own accord, taken.
    OwnPresses {
        /// Presses.
        presses: u32,
        /// Wanted.
        wanted: u32,
        /// Days with one.
        days: u32,
        /// Wanted.
        days_wanted: u32,
    },
    /// A share that misses its bar.
    Below(Below),
    /// Two weeks and more after mastery.
    Later {
        /// Pressed.
        pressed: u32,
        /// Of wanted.
        wanted: u32,
        /// Right.
        right: u32,
        /// Of presses.
        presses: u32,
        /// Wanted invitations needed to say anything.
        needed: u32,
    },
    /// Strong signs on several days in sessions with this word.
    Strain,
    /// The word's reward or answer is not settled.
    NotPrepared,
    /// The word ends sessions: no wish, so nobody waits for it.
    EndsSessions,
    /// The records contradict themselves.
    Contradiction {
        /// In the method's words.
        why: String,
    },
    /// No recording of the word was checked.
    NoRecordingChecked,
    /// What the check of its recording found; it does not tell what an animal makes out (Higaki 2025).
    Recording {
        /// Its length.
        seconds: f64,
        /// Plainly too short.
        short: bool,
        /// Plainly quieter than the others.
        quiet: bool,
    },
    /// Taken, of what was given for this word.
    Taken {
        /// The share.
        share: Estimate,
        /// Days looked back on.
        days: i32,
        /// Below this it counts as not wanted.
        bar: f64,
    },
    /// Showings a day.
    ShowingsADay {
        /// The rate.
        rate: Estimate,
        /// Days looked back on.
        days: i32,
        /// Below this there is too little of it.
        bar: f64,
    },
    /// From press to delivery, the middle value.
    Delay {
        /// Seconds.
        seconds: Estimate,
        /// Above this it comes too late.
        bar: f64,
    },
    /// Looks, brushes and own presses that went to this button.
    Near {
        /// The share.
        share: Estimate,
        /// Its share of the showings.
        expected: f64,
    },
    /// More own presses this week than in the four weeks before, beyond chance.
    ComesMore {
        /// This week.
        now: usize,
        /// In the four weeks before.
        before: usize,
    },
    /// Too few sessions at different times of day.
    TooFewHours,
    /// Hours at which it is least at ease.
    UneasyHours {
        /// From this local hour.
        from: u8,
        /// To this one.
        to: u8,
        /// Joined in these hours.
        here: Estimate,
        /// Joined at others.
        elsewhere: Estimate,
        /// Corrected for picking the hours.
        p: f64,
        /// Days looked back on.
        days: i32,
    },
    /// Too few days to see a change.
    TooFewDays,
    /// A fall lately in joining, ease, presses and taking together. The records cannot show health.
    LateFall {
        /// How many days lately.
        days: usize,
        /// Joined lately.
        lately: Estimate,
        /// Joined before.
        before: Estimate,
        /// Corrected for picking the day.
        p: f64,
    },
    /// It is the only word.
    OnlyWord,
    /// The word that sounds most like it.
    Sounds {
        /// What that says.
        nearest: String,
        /// Whether the two sound too much alike.
        too_alike: bool,
        /// Pressed another word, of its presses when invited.
        others: Estimate,
    },
    /// Fewer than two people with enough answers.
    TooFewPeople,
    /// Delays of the two people who answer most.
    PeopleDelay {
        /// Their names.
        people: [String; 2],
        /// Middle seconds of each.
        seconds: [Estimate; 2],
        /// Rank-sum test.
        p: f64,
    },
    /// What the two people who answer most give.
    PeopleGive {
        /// Their names.
        people: [String; 2],
        /// Share of presses each gives for.
        share: [Estimate; 2],
        /// Fisher's exact test.
        p: f64,
    },
    /// Own presses a day of one word.
    ManyPresses {
        /// The rate.
        rate: Estimate,
        /// Above this demand counts as high.
        bar: f64,
        /// Days looked back on.
        days: i32,
    },
    /// Share of its presses answered with the thing.
    GivenShare {
        /// The share.
        share: Estimate,
    },
    /// Multiple schedule with signals (Hanley, Iwata & Thompson 2001); the first step is from memory, those between ours.
    SignalledTimes,
    /// Words in use that were never checked.
    NeverChecked {
        /// How many.
        words: usize,
    },
    /// A check that was begun.
    CheckOpen {
        /// Trials carried out.
        done: usize,
        /// Trials planned.
        of: usize,
    },
}
