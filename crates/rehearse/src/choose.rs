//! The one thing to change next time: what the animal feels first, then what would have taught it most.

use crate::change::{Change, felt_delay};
use crate::conduct::Conduct;
use crate::counted::each;
use crate::gain::{Gain, most, room};
use crate::there::{TooLong, had_enough, is_there_at_last, left_over, too_long};
use sayso_advisor::Estimate;
use sayso_sim::Cause;
use sayso_sim::rehearsal::{Does, Exercise, INVITATIONS, Over, Run, TREATS, Thing, What};

/// Seconds from press to thing that are soon enough. Children's studies keep to two (see `docs/methods/rehearsal.md`).
const SOON_S: f64 = 2.0;
/// Showings a minute that leave time to take and to breathe.
const MOST_A_MINUTE: f64 = 12.0;
/// Showings of a full rehearsal of press, say, give, at the least.
const FEWEST: usize = 6;
/// Times each thing is held out before anything is said of what it likes, at the least.
const FEWEST_HELD: usize = 5;
/// Pairs, and invitations with their wait and what comes after it, a minute of its time at the board, that leave time to take and to
/// breathe. Ours (common practice, no source).
const PAIRS_A_MINUTE: f64 = 6.0;
const INVITATIONS_A_MINUTE: f64 = 3.0;
/// Kinds of things tried with a word that does not get on, at the least.
const FEWEST_TRIES: usize = 3;
/// Invitations before anything is said of where the animal was, at the least.
const FEWEST_INVITED: usize = 3;
/// Presses of an evening before it is ended by hand, at the least.
const FEWEST_ASKED: usize = 10;
/// Presses left without an answer that are told before anything is compared, where they are more than were answered.
const LEFT: usize = 2;
/// Presses of which none was given what it says, at the least.
const FEWEST_REFUSED: usize = 3;
/// A fall of a word that is told.
const SEEN: f64 = 0.005;
/// Of what is given, this much is to be taken: else it was not there, or did not want it.
const TAKEN: f64 = 0.6;

/// What pushes the animal or passes over a sign, the gravest first: it stands before what only disturbs.
const GRAVE: [Change; 3] = [Change::StepAway, Change::LetGo, Change::Pause];
/// What disturbs it, the gravest first.
const DISTURBS: [Change; 3] = [Change::LetEat, Change::Wait, Change::LetChoose];

/// The one thing to change, with what it would have brought where that can be worked out.
#[must_use]
pub fn change(conduct: &Conduct, run: &Run) -> Gain {
    let (exercise, c) = (run.setup.exercise, conduct);
    // Nothing that is done at a board mends that, and whatever else was done stands behind it.
    if !c.is_empty() && run.setup.hides().is_some_and(|hidden| hidden.cause == Cause::Unwell) {
        return Gain::of(Change::Vet);
    }
    if let Some(felt) = felt(conduct).or_else(|| long(run)) {
        return Gain::of(felt);
    }
    if c.is_empty() && !let_it_go(c, run) {
        return Gain::of(Change::TooSoon);
    }
    if exercise == Exercise::Leaving && c.leaving.n == 0 {
        return Gain::of(Change::Stay);
    }
    if wants_more(&c.paid) {
        return Gain::of(Change::Give);
    }
    if c.invited_there.n >= FEWEST_INVITED && c.invited_there.value.is_some_and(|share| share < TAKEN) {
        return Gain::of(Change::WhenThere { invited: true });
    }
    if wants_more(&c.after_wait) {
        return Gain::of(Change::AfterWait);
    }
    if mostly_left(c) {
        return Gain::worked_out(c, run, Change::Answer);
    }
    if let Some(most) = most(c, run, teaching(c, run.setup.exercise)) {
        return most;
    }
    Gain::of(rest(c, run))
}

/// Whether this is about letting it go, it was let go, and the person stepped away or ended after it had gone: that is all there is to do.
fn let_it_go(c: &Conduct, run: &Run) -> bool {
    let gone = run.told.iter().position(|t| t.what == What::Leaves);
    let done = |from: usize| run.told[from..].iter().any(|t| matches!(t.what, What::Person(Does::Back | Does::End)));
    run.setup.exercise == Exercise::Leaving && !wants_more(&c.leaving) && gone.is_some_and(done)
}

/// What the animal feels.
fn felt(c: &Conduct) -> Option<Change> {
    let first = |all: [Change; 3]| all.into_iter().find(|change| change.rests_on(c).is_some_and(wants_more));
    let push = |done: usize| (done > 0).then_some(Change::DoNotPush { times: c.pushes + c.again });
    let hasty = c.pace.n >= FEWEST && c.pace.value.is_some_and(|pace| pace > MOST_A_MINUTE);
    // Saying it again in the midst of a wait is a wait cut short, and that says it more nearly.
    let said_again = || push(c.again);
    first(GRAVE)
        .or_else(|| feared(c))
        .or_else(|| push(c.pushes))
        .or_else(|| first(DISTURBS))
        .or_else(said_again)
        .or_else(|| hasty.then_some(Change::Slower))
}

/// That it grew long.
fn long(run: &Run) -> Option<Change> {
    let TooLong { after_s, left } = too_long(run)?;
    Some(Change::Shorter { after_s, stays_s: run.traits.stays_s, left })
}

/// The button that was pressed most although the animal had started back from it.
fn feared(c: &Conduct) -> Option<Change> {
    let word = Thing::ALL.into_iter().max_by_key(|word| c.frightened[word.place()])?;
    let times = c.frightened[word.place()];
    (times > 0).then_some(Change::Soften { word, times })
}

/// What would teach it faster, as far as it is not as it should be.
fn teaching(c: &Conduct, exercise: Exercise) -> Vec<Change> {
    let mut all = Vec::new();
    if wants_more(&c.answered) {
        all.push(Change::Answer);
    }
    if let Some(delay_s) = felt_delay(c).value.filter(|d| *d > SOON_S) {
        all.push(Change::Sooner { delay_s });
    }
    if c.taken.n >= 4 && c.taken.value.is_some_and(|taken| taken < TAKEN) {
        // Who invites has seen to where it is already; who showed only at the board, too.
        let invited = exercise == Exercise::Inviting;
        let there = invited || !wants_more(&c.shown_there);
        all.push(if there { Change::Wanted { invited } } else { Change::WhenThere { invited } });
    }
    all
}

/// What is left where nothing of that is.
fn rest(c: &Conduct, run: &Run) -> Change {
    let exercise = run.setup.exercise;
    if let Some(word) = fell(run) {
        return if used_up(run, word) { Change::UsedUp { word } } else { Change::GiveOftener { word, fell: true } };
    }
    if let Some(word) = never_given(c) {
        return Change::GiveOftener { word, fell: false };
    }
    if let Some(word) = always_declined(c) {
        return Change::Instead { word };
    }
    if exercise == Exercise::Stuck && c.tries < FEWEST_TRIES {
        return Change::Try;
    }
    // Who ended could have gone on only if the animal was at ease; who let the time run out could have held out more while it was there.
    let could_hold = || match run.over.1 {
        Over::Ended => at_ease(c, run),
        _ => left_over(run, PAIRS_A_MINUTE, each(run, |what| what == What::Person(Does::Two)).count()) >= 1.0,
    };
    if exercise == Exercise::Likes && c.chosen.iter().any(|(_, held)| *held < FEWEST_HELD) && could_hold() {
        return Change::MorePairs;
    }
    if exercise == Exercise::Showing && c.showings() < FEWEST && c.signs == 0 {
        if let Some(after_s) = ended_s(c, run) {
            return Change::Longer { after_s, evening: false };
        }
        if room(c, run) >= 1.0 {
            return Change::Oftener;
        }
    }
    // Fewer than can be judged, but to nobody is no invitation.
    if exercise == Exercise::Inviting && c.invited_there.value.is_some_and(|share| share < TAKEN) {
        return Change::WhenThere { invited: true };
    }
    let even = || uneven(c, exercise).filter(|_| exercise != Exercise::Stuck);
    ended_early(c, run).or_else(even).unwrap_or(Change::CarryOn)
}

/// Whether it was there to the end, had not left once, and showed no sign: whoever then stops could have gone on.
fn at_ease(c: &Conduct, run: &Run) -> bool {
    c.signs == 0 && is_there_at_last(run) && !run.told.iter().any(|t| t.what == What::Leaves)
}

/// Seconds after which it was ended by hand, though the animal was at ease and had not had enough.
fn ended_s(c: &Conduct, run: &Run) -> Option<f64> {
    (run.over.1 == Over::Ended && at_ease(c, run) && !had_enough(run)).then(|| f64::from(run.over.0) / 1000.0)
}

/// Of exercises in which little was done though there was room for more: ended by hand while the animal was at ease, or, of
/// invitations, with the time run out. What is left to do.
fn ended_early(c: &Conduct, run: &Run) -> Option<Change> {
    let more = || (c.invited < INVITATIONS).then_some(Change::MoreInvitations);
    if run.setup.exercise == Exercise::Inviting && run.over.1 == Over::Time {
        return more().filter(|_| left_over(run, INVITATIONS_A_MINUTE, c.invited) >= 1.0);
    }
    let after_s = ended_s(c, run)?;
    let asked: usize = c.declined.iter().map(|(_, all)| all).sum();
    match run.setup.exercise {
        Exercise::Inviting => more(),
        Exercise::Evening => (asked < FEWEST_ASKED).then_some(Change::Longer { after_s, evening: true }),
        _ => None,
    }
}

/// Whether it asked in vain oftener than not.
fn mostly_left(c: &Conduct) -> bool {
    c.answered.n >= LEFT && c.answered.value.is_some_and(|share| share < 0.5)
}

/// The word declined most, where no press of any word was given what it says.
fn never_given(c: &Conduct) -> Option<Thing> {
    let (no, all) = c.declined.iter().fold((0, 0), |sum, of| (sum.0 + of.0, sum.1 + of.1));
    let most = || Thing::ALL.into_iter().max_by_key(|word| c.declined[word.place()].0);
    if no >= FEWEST_REFUSED && no == all { most() } else { None }
}

/// A word whose presses were all declined, three at the least, where nothing else was given.
fn always_declined(c: &Conduct) -> Option<Thing> {
    let any_other = c.alternatives.value.is_some_and(|share| share > 0.0);
    Thing::ALL.into_iter().filter(|_| !any_other).find(|word| {
        let (no, all) = c.declined[word.place()];
        no >= FEWEST_REFUSED && no == all
    })
}

/// The word that fell most, as far as whole per cent show it.
fn fell(run: &Run) -> Option<Thing> {
    let (before, after) = run.understood();
    let by = |word: &Thing| before[word.place()] - after[word.place()];
    Thing::ALL.into_iter().filter(|word| by(word) >= SEEN).max_by(|a, b| by(a).total_cmp(&by(b)))
}

/// Whether all of a word's things that there were had been given.
fn used_up(run: &Run, word: Thing) -> bool {
    let given =
        run.told.iter().filter(|t| matches!(t.what, What::Person(Does::Give(of) | Does::Instead(of)) if of == word));
    run.setup.exercise == Exercise::Evening && word == Thing::Treat && given.count() >= TREATS
}

/// Two shown words of which one was shown more than twice as often, and twice more. Where words are to share the showings and only one
/// was shown, another is the one that was shown least.
fn uneven(c: &Conduct, exercise: Exercise) -> Option<Change> {
    let shown = || Thing::ALL.into_iter().filter(|word| c.balance[word.place()] > 0);
    let most = shown().max_by_key(|word| c.balance[word.place()])?;
    let alone = exercise == Exercise::Showing && shown().count() == 1;
    let other = || Thing::ALL.into_iter().find(|word| *word != most);
    let least = if alone { other() } else { shown().min_by_key(|word| c.balance[word.place()]) }?;
    let (more, less) = (c.balance[most.place()], c.balance[least.place()]);
    (more > 2 * less && more >= less + 3).then_some(Change::Even { most, least })
}

/// Whether a share is less than the whole of what was counted.
fn wants_more(share: &Estimate) -> bool {
    share.value.is_some_and(|value| value < 1.0)
}
