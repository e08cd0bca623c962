//! At a mild sign a pause is right: nobody is blamed for what was left undone by it, and whoever goes on at once is told so.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

mod common;

use common::{run as by_hand, you};
use sayso_model::SignLevel;
use sayso_rehearse::{Change, Conduct, change, conduct};
use sayso_sim::rehearsal::{Character, Does, Exercise, Rehearsal, Run, Setup, SignSeen, Thing, What};

const BALL: Thing = Thing::Ball;
const MILD: What = What::Sign(SignSeen { level: SignLevel::Mild, id: "looks-away" });

fn run(exercise: Exercise, told: &[(u32, What)]) -> Run {
    let whole = [&[(0, What::Joined)], told].concat();
    by_hand(Setup { seed: 1, character: Character::Eager, exercise }, 60_000, &whole)
}

fn of(exercise: Exercise, told: &[(u32, What)]) -> Conduct {
    conduct(&run(exercise, told))
}

fn named(exercise: Exercise, told: &[(u32, What)]) -> Change {
    let run = run(exercise, told);
    change(&conduct(&run), &run).change
}

/// An invitation at 10 s whose wait is kept, with a sign in or after it.
fn waited(sign_ms: u32) -> Vec<(u32, What)> {
    let mut told = vec![(10_000, you(Does::Offer(BALL))), (15_000, What::WaitOver(BALL)), (sign_ms, MILD)];
    told.sort_by_key(|(at_ms, _)| *at_ms);
    told
}

#[test]
fn a_mild_sign_in_or_after_a_wait_ends_what_would_come_after_it() {
    let shown = |at_ms| [(at_ms, you(Does::Show(BALL))), (at_ms + 900, you(Does::Give(BALL)))];
    let after = |told: &[(u32, What)]| {
        let share = of(Exercise::Inviting, told).after_wait;
        (share.value, share.n)
    };
    assert_eq!(after(&waited(30_000)), (Some(0.0), 1), "long after it");
    for sign_ms in [11_000, 14_600, 15_500, 19_900] {
        let told = waited(sign_ms);
        let mild = of(Exercise::Inviting, &told).mild;
        assert_eq!((after(&told), mild.value), ((None, 0), Some(1.0)), "{sign_ms}");
        assert_ne!(named(Exercise::Inviting, &told), Change::AfterWait);
        // Whoever shows once the pause is over has done well; whoever does at once is told to pause.
        let paused = [&told[..], &shown(sign_ms.max(15_000) + 5_100)].concat();
        assert_eq!(of(Exercise::Inviting, &paused).mild.value, Some(1.0), "{sign_ms}");
        assert_ne!(after(&paused).0, Some(0.0), "{sign_ms}");
        let at_once = [&told[..], &shown((sign_ms + 700).max(15_100))].concat();
        assert_eq!(named(Exercise::Inviting, &at_once), Change::Pause, "{sign_ms}");
    }
    // It was at ease again within the wait, and five seconds were not over.
    let mut eased = [&waited(11_000)[..], &[(14_000, What::Eases)]].concat();
    eased.sort_by_key(|(at_ms, _)| *at_ms);
    assert_eq!(after(&eased), (None, 0));
    // One from before the invitation ends it where it stands still when the wait is over.
    let stands = [(2_000, MILD), (10_000, you(Does::Offer(BALL))), (15_000, What::WaitOver(BALL))];
    assert_eq!(after(&stands), (None, 0));
    let over = [(2_000, MILD), (8_000, What::Eases), (10_000, you(Does::Offer(BALL))), (15_000, What::WaitOver(BALL))];
    assert_eq!(after(&over), (Some(0.0), 1));
}

#[test]
fn a_pause_at_a_mild_sign_that_came_with_the_press_is_not_one_without_giving() {
    let paid = |told: &[(u32, What)]| {
        let share = of(Exercise::Free, told).paid;
        (share.value, share.n)
    };
    let show = |at_ms| (at_ms, you(Does::Show(BALL)));
    assert_eq!(paid(&[show(10_000)]), (Some(0.0), 1));
    for sign_ms in [10_000, 12_000, 14_900] {
        assert_eq!(paid(&[show(10_000), (sign_ms, MILD)]), (None, 0), "{sign_ms}");
        let later = [show(10_000), (sign_ms, MILD), show(30_000), (30_900, you(Does::Give(BALL)))];
        assert_eq!(paid(&later), (Some(1.0), 1), "{sign_ms}");
    }
    assert_eq!(paid(&[show(10_000), (15_000, MILD)]), (Some(0.0), 1), "there was time for it");
    // Given all the same, it counts; something else is still not what the button says.
    assert_eq!(paid(&[show(10_000), (10_000, MILD), (10_900, you(Does::Give(BALL)))]), (Some(1.0), 1));
    assert_eq!(paid(&[show(10_000), (10_000, MILD), (10_900, you(Does::Give(Thing::Out)))]), (Some(0.0), 1));
    let goes_on = [show(10_000), (10_000, MILD), show(11_500), (12_300, you(Does::Give(BALL)))];
    assert_eq!(named(Exercise::Free, &goes_on), Change::Pause);
}

/// A person who does as the page says: invites what is there and at ease, waits, answers, shows and gives after the wait, and pauses
/// at a sign until it is at ease again.
fn as_told(setup: Setup) -> Run {
    let mut live = Rehearsal::new(setup);
    let (mut seen, mut next, mut turn) = (0, 2_000, 0);
    let (mut stands, mut waits, mut signed) = (false, None, 0);
    let mut due: Vec<(u32, Does)> = Vec::new();
    while !live.is_over() {
        let now = live.now_ms();
        let fresh = live.told()[seen..].to_vec();
        seen = live.told().len();
        for told in fresh {
            match told.what {
                What::Person(Does::Offer(_)) => waits = Some(told.at_ms),
                What::Pressed(thing) => {
                    (waits, next) = (None, now + 15_000);
                    due = vec![(now + 900, Does::Give(thing))];
                }
                What::Sign(_) => {
                    (stands, signed, next) = (true, now, now + 8_000);
                    due.retain(|(_, does)| matches!(does, Does::Give(_)));
                }
                What::Eases => stands = false,
                What::Leaves | What::Gone => (stands, waits, due, next) = (false, None, Vec::new(), now + 8_000),
                What::WaitOver(thing) => {
                    if !stands && waits.take().is_some_and(|from| signed < from) {
                        due = vec![(now + 700, Does::Show(thing)), (now + 1_500, Does::Give(thing))];
                    }
                    next = now + 15_000;
                }
                _ => {}
            }
        }
        if let Some(at) = due.iter().position(|(at_ms, _)| *at_ms <= now) {
            let (_, does) = due.remove(at);
            live.does(does);
        } else if now >= next && !stands && live.is_there() {
            (next, turn) = (now + 15_000, turn + 1);
            live.does(Does::Offer(Thing::ALL[turn % 4]));
        }
        live.step();
    }
    live.ends()
}

#[test]
fn whoever_pauses_as_the_page_says_is_told_neither_to_pause_nor_that_the_wait_ended_in_nothing() {
    let mut with_sign = 0;
    for seed in 0..60 {
        for character in [Character::Wary, Character::Quick, Character::Old] {
            let run = as_told(Setup { seed, character, exercise: Exercise::Inviting });
            let c = conduct(&run);
            with_sign += usize::from(c.signs > 0);
            for figure in [&c.after_wait, &c.paid, &c.mild] {
                assert!(figure.value.is_none_or(|share| share >= 1.0), "{character:?} {seed}: {:?}", run.told);
            }
        }
    }
    assert!(with_sign > 20, "{with_sign}");
}
