//! Nobody is blamed for ending where the animal had ended, nor for what could not be seen yet.
#![allow(clippy::unwrap_used, clippy::expect_used, missing_docs)]

mod common;

use common::{run as by_hand, you};
use sayso_model::SignLevel;
use sayso_rehearse::{Change, change, conduct};
use sayso_sim::rehearsal::{Character, Does, Exercise, Over, Run, Setup, SignSeen, Thing, What, play, read};

const BALL: Thing = Thing::Ball;

fn setup(exercise: Exercise, character: Character, seed: u64) -> Setup {
    Setup { seed, character, exercise }
}

/// A rehearsal as the engine plays it.
fn played(exercise: Exercise, character: Character, seed: u64, acts: &str) -> Run {
    play(setup(exercise, character, seed), &read(acts, 300_000).unwrap())
}

/// The one thing to change.
fn named(run: &Run) -> Change {
    change(&conduct(run), run).change
}

#[test]
fn who_ends_because_the_animal_left_is_not_told_to_stay() {
    // It leaves at 12.4 s.
    let showing = played(Exercise::Showing, Character::Eager, 4, "s0.5000_g0.5600_e.20000");
    assert_eq!(conduct(&showing).leaving.value, Some(1.0));
    assert_eq!(named(&showing), Change::CarryOn);
    // The same, ended while it is still there.
    let stays = played(Exercise::Showing, Character::Eager, 4, "s0.5000_g0.5600_e.12000");
    assert_eq!(named(&stays), Change::Longer { after_s: 12.0, evening: false });

    let pairs = played(Exercise::Likes, Character::Eager, 4, "t.5000_e.13000");
    assert!(pairs.told.iter().any(|t| t.what == What::Leaves));
    assert_eq!(named(&pairs), Change::CarryOn);
    assert_eq!(named(&played(Exercise::Likes, Character::Eager, 4, "t.5000_e.9000")), Change::MorePairs);
}

#[test]
fn who_ends_an_evening_once_it_has_set_out_again_has_left_it_its_end() {
    let told = |leaves: &[(u32, What)]| {
        let begin = [
            (0, What::Joined),
            (1_000, What::Pressed(BALL)),
            (2_000, you(Does::Give(BALL))),
            (2_500, What::Took(BALL)),
        ];
        let whole = [&begin, leaves, &[(40_000, you(Does::End))]].concat();
        let evening = setup(Exercise::Evening, Character::Eager, 1);
        Run { over: (40_000, Over::Ended), ..by_hand(evening, 40_000, &whole) }
    };
    assert_eq!(named(&told(&[(20_000, What::Leaves), (35_000, What::Comes)])), Change::CarryOn);
    assert_eq!(named(&told(&[])), Change::Longer { after_s: 40.0, evening: true });
}

#[test]
fn who_ended_early_is_told_to_stay_and_above_the_bound_nobody_is_told_to_show_more() {
    let word = |i: u32| if i.is_multiple_of(2) { Thing::Ball } else { Thing::Out };
    let shown = |i| [(1_000 + i * 8_000, you(Does::Show(word(i)))), (1_900 + i * 8_000, you(Does::Give(word(i))))];
    let five: Vec<_> = [(0, What::Joined)].into_iter().chain((0..5).flat_map(shown)).collect();
    let of = |over| named(&Run { over, ..by_hand(setup(Exercise::Showing, Character::Eager, 1), 60_000, &five) });
    assert_eq!(of((42_000, Over::Ended)), Change::Longer { after_s: 42.0, evening: false });
    assert_eq!(of((42_000, Over::Time)), Change::CarryOn, "7.1 a minute");
    assert_eq!(of((90_000, Over::Time)), Change::Oftener, "3.3 a minute");
}

#[test]
fn who_ends_an_exercise_with_little_done_is_not_praised() {
    let ended = |exercise, at: u32, told: &[(u32, What)]| {
        let whole = [&[(0, What::Joined)], told, &[(at, you(Does::End))]].concat();
        named(&Run { over: (at, Over::Ended), ..by_hand(setup(exercise, Character::Eager, 1), 60_000, &whole) })
    };
    let invited = |n: u32| -> Vec<(u32, What)> {
        (0..n)
            .flat_map(|i| {
                let (at, ball) = (1_000 + i * 15_000, Thing::Ball);
                [
                    (at, you(Does::Offer(ball))),
                    (at + 2_000, What::Pressed(ball)),
                    (at + 2_900, you(Does::Give(ball))),
                    (at + 3_500, What::Took(ball)),
                ]
            })
            .collect()
    };
    assert_eq!(ended(Exercise::Inviting, 20_000, &invited(1)), Change::MoreInvitations);
    assert_eq!(ended(Exercise::Inviting, 7_000, &[(6_000, you(Does::Offer(Thing::Ball)))]), Change::MoreInvitations);
    assert_eq!(ended(Exercise::Inviting, 90_000, &invited(5)), Change::CarryOn);
    // Nobody was there to be invited.
    let nobody = [(500, What::Wanders), (6_000, you(Does::Offer(Thing::Ball)))];
    assert_eq!(ended(Exercise::Inviting, 7_000, &nobody), Change::WhenThere { invited: true });
    let evening = |n: u32| invited(n).into_iter().filter(|(_, what)| !matches!(what, What::Person(Does::Offer(_))));
    let evening = |n| evening(n).collect::<Vec<_>>();
    assert_eq!(ended(Exercise::Evening, 9_000, &evening(1)), Change::Longer { after_s: 9.0, evening: true });
    assert_eq!(ended(Exercise::Evening, 170_000, &evening(10)), Change::CarryOn);
    // Whom it left, and who ends then, has done right.
    let left = [evening(1), vec![(20_000, What::Leaves)]].concat();
    assert_eq!(ended(Exercise::Evening, 24_000, &left), Change::CarryOn);
}

#[test]
fn who_shows_on_its_way_back_is_not_said_to_have_gone_on_once_it_was_back() {
    let acts = |acts| played(Exercise::Free, Character::Old, 1, acts);
    let run = acts("s0.173900_g0.174700_e.182900");
    let share = conduct(&run).leaving;
    assert_eq!((share.value, share.n), (Some(1.0), 1));
    let left = |run| matches!(named(run), Change::Shorter { left: true, .. } | Change::LetGo);
    assert!(!left(&run), "{:?}", named(&run));
    // Whoever asks again at the board has gone on.
    let longer = acts("s0.173900_g0.174700_s0.200000_g0.200800_e.210000");
    assert!(left(&longer), "{:?}", longer.told);
}

#[test]
fn what_is_asked_before_it_could_be_seen_is_no_fault() {
    // It turns to go at 37.5 s, 50 ms before the press.
    let acts = |at: u32| format!("s0.9000_g0.9700_s1.{at}_g1.38800_e.45000");
    let seen = |at| played(Exercise::Leaving, Character::Guards, 2, &acts(at));
    assert_ne!(named(&seen(37_550)), Change::LetGo);
    assert_eq!(conduct(&seen(37_550)).leaving.value, Some(1.0));
    assert_eq!(named(&seen(38_200)), Change::LetGo);

    // A leaving, a mild sign, a thing taken, a start: each half a second and a whole one before the next press.
    let mild = What::Sign(SignSeen { level: SignLevel::Mild, id: "looks-away" });
    let figures = |what: What, after_ms: u32| {
        let told = [(0, What::Joined), (10_000, what), (10_000 + after_ms, you(Does::Show(BALL)))];
        conduct(&by_hand(setup(Exercise::Free, Character::Eager, 1), 60_000, &told))
    };
    for (after_ms, whole) in [(599, true), (600, false)] {
        let share = Some(f64::from(u8::from(whole)));
        assert_eq!(figures(What::Leaves, after_ms).leaving.value, share);
        assert_eq!(figures(mild, after_ms).mild.value, share);
        assert_eq!(figures(What::Took(Thing::Treat), after_ms).eaten.value, share);
        assert_eq!(figures(What::Startled(BALL), after_ms).frightened[BALL.place()] == 0, whole);
    }
    // An invitation just as it goes tells nothing; one to an empty room was not.
    let invited = |told: &[(u32, What)]| {
        conduct(&by_hand(setup(Exercise::Inviting, Character::Eager, 1), 60_000, told)).invited_there.value
    };
    let offer = |at| (at, you(Does::Offer(BALL)));
    assert_eq!(invited(&[(0, What::Joined), (10_000, What::Leaves), offer(10_599)]), None);
    assert_eq!(invited(&[(0, What::Joined), (10_000, What::Leaves), offer(10_600)]), Some(0.0));
    assert_eq!(invited(&[(0, What::Wanders), offer(300)]), Some(0.0));
}

#[test]
fn who_invites_or_shows_where_it_is_is_told_to_do_so_with_what_it_wants() {
    let one = |i: u32, takes: bool| {
        let at = 1_000 + i * 20_000;
        let then = if takes { What::Took(BALL) } else { What::Ignored(BALL) };
        [
            (at, you(Does::Offer(BALL))),
            (at + 5_000, What::WaitOver(BALL)),
            (at + 6_000, you(Does::Show(BALL))),
            (at + 6_900, you(Does::Give(BALL))),
            (at + 8_000, then),
        ]
    };
    let after = |exercise, first: &[(u32, What)], taken: u32| {
        let whole = (0..5).flat_map(|i| one(i, i < taken));
        by_hand(
            setup(exercise, Character::Eager, 1),
            180_000,
            &[(0, What::Joined)].into_iter().chain(first.iter().copied()).chain(whole).collect::<Vec<_>>(),
        )
    };
    let told = |exercise, taken| after(exercise, &[], taken);
    assert_eq!(named(&told(Exercise::Inviting, 1)), Change::Wanted { invited: true });
    assert_eq!(named(&told(Exercise::Inviting, 5)), Change::CarryOn);
    assert_eq!(conduct(&told(Exercise::Free, 1)).shown_there.value, Some(1.0));
    assert_eq!(named(&told(Exercise::Free, 1)), Change::Wanted { invited: false });
    // Shown once while it was elsewhere, or on its way; what was under way as it turned away tells nothing.
    let away = |shown_ms, comes_ms| {
        let first = [(0, What::Wanders), (shown_ms, you(Does::Show(BALL))), (shown_ms + 100, you(Does::Give(BALL)))];
        let mut first =
            [&first[..], &[(comes_ms, What::Comes), (900, What::Joined), (950, What::Ignored(BALL))]].concat();
        first.sort_by_key(|(at_ms, _)| *at_ms);
        named(&after(Exercise::Free, &first, 1))
    };
    assert_eq!(away(700, 850), Change::WhenThere { invited: false });
    assert_eq!(away(700, 650), Change::WhenThere { invited: false });
    assert_eq!(away(500, 650), Change::Wanted { invited: false });
}

#[test]
fn what_was_under_way_when_it_pressed_left_or_showed_a_sign_tells_nothing_of_giving_or_waiting() {
    let out = Thing::Out;
    let of = |exercise, told: &[(u32, What)]| {
        let whole = [&[(0, What::Joined)], told].concat();
        conduct(&by_hand(setup(exercise, Character::Eager, 1), 60_000, &whole))
    };
    let mild = What::Sign(SignSeen { level: SignLevel::Mild, id: "looks-away" });
    for news in [What::Pressed(out), What::Leaves, mild] {
        for (after_ms, counts) in [(599, 0), (600, 1)] {
            let at = 10_000 + after_ms;
            // Shown, and nothing given.
            let shown = [(10_000, news), (at, you(Does::Show(BALL))), (at + 6_000, you(Does::Back))];
            let paid = of(Exercise::Free, &shown).paid;
            assert_eq!(
                (paid.value, paid.n),
                if counts == 0 { (None, 0) } else { (Some(0.0), 1) },
                "{news:?}, {after_ms}"
            );
            // Invited, and shown before the wait was over.
            let offered = [(10_000, news), (at, you(Does::Offer(BALL))), (at + 1_500, you(Does::Show(out)))];
            let waits = of(Exercise::Inviting, &offered).waits;
            // Nothing waits for one that has left, whenever that could be seen.
            let tells_nothing = counts == 0 || news == What::Leaves;
            assert_eq!(
                (waits.value, waits.n),
                if tells_nothing { (None, 0) } else { (Some(0.0), 1) },
                "{news:?}, {after_ms}"
            );
        }
        // What was done well all the same is counted, unless it had left.
        let counts = if news == What::Leaves { (None, 0) } else { (Some(1.0), 1) };
        let well = [(10_000, news), (10_300, you(Does::Show(BALL))), (11_000, you(Does::Give(BALL)))];
        let paid = of(Exercise::Free, &well).paid;
        assert_eq!((paid.value, paid.n), counts, "{news:?}");
        let kept = [(10_000, news), (10_300, you(Does::Offer(BALL))), (15_300, What::WaitOver(BALL))];
        let waits = of(Exercise::Inviting, &kept).waits;
        assert_eq!((waits.value, waits.n), counts, "{news:?}");
    }
}

#[test]
fn an_invitation_under_way_when_it_pressed_ends_with_the_answer_and_is_no_wait_in_vain() {
    let of = |seed, acts| {
        let run = played(Exercise::Inviting, Character::Eager, seed, acts);
        let offer = run.told.iter().find(|t| matches!(t.what, What::Person(Does::Offer(_)))).unwrap().at_ms;
        let just = |t: &&sayso_sim::rehearsal::Told| (offer - 600..=offer).contains(&t.at_ms);
        assert!(run.told.iter().filter(just).any(|t| matches!(t.what, What::Pressed(_))), "{:?}", run.told);
        run
    };
    // Its own press is answered by what it asked for, or by something else: nothing waits on.
    for (seed, acts) in
        [(3, "o2.16400_g1.17100_e.36100"), (1, "o3.37300_g2.38400_e.51300"), (3, "o2.16400_i3.17100_e.22000")]
    {
        let run = of(seed, acts);
        assert!(!run.told.iter().any(|t| matches!(t.what, What::WaitOver(_))), "{acts}: {:?}", run.told);
        let c = conduct(&run);
        assert_eq!((c.after_wait.n, c.waits.n, c.eaten.value.unwrap_or(1.0)), (0, 0, 1.0), "{acts}");
        // A word that was declined fell, and that is told first.
        let told = named(&run);
        assert!(matches!(told, Change::MoreInvitations | Change::GiveOftener { fell: true, .. }), "{acts}: {told:?}");
    }
    // Whose press got no more than "not now" is invited still; that nothing comes of the wait then is not told.
    let run = of(3, "o2.16400_n.17100_e.36100");
    assert!(run.told.iter().any(|t| matches!(t.what, What::WaitOver(_))), "{:?}", run.told);
    assert_eq!(conduct(&run).after_wait.n, 0);
    let well = of(3, "o2.16400_n.17100_s2.22000_g2.22700_e.36100");
    assert_eq!((conduct(&well).after_wait.value, conduct(&well).after_wait.n), (Some(1.0), 1));
}

#[test]
fn an_invitation_under_way_when_it_left_is_not_praised() {
    let run = played(Exercise::Inviting, Character::Quick, 1, "o1.153900_e.162600");
    let leaves = run.told.iter().find(|t| t.what == What::Leaves).unwrap().at_ms;
    assert!((153_301..=153_900).contains(&leaves), "{leaves}");
    let c = conduct(&run);
    assert_eq!((c.waits.n, c.invited_there.n, c.paid.n, c.invited), (0, 0, 0, 1));
}

#[test]
fn an_invitation_ends_as_the_animal_leaves_and_nothing_asks_to_show_after_it() {
    let pressed_after = "_s1.43207_g1.43916_e.48017";
    let run = |more: &str| played(Exercise::Leaving, Character::Eager, 5, &format!("o1.36789{more}"));
    let left = run(pressed_after);
    let leaves = left.told.iter().find(|t| t.what == What::Leaves).unwrap().at_ms;
    assert!((36_789..41_789).contains(&leaves), "within the wait: {leaves}");
    assert!(!left.told.iter().any(|t| matches!(t.what, What::WaitOver(_))), "{:?}", left.told);
    // Whoever lets it be has nothing left to do.
    assert_eq!(named(&run("_e.48017")), Change::CarryOn);
    assert_eq!(conduct(&run("_e.48017")).waits.value, Some(1.0));
    // An invitation to one that had left has no wait, kept or not.
    let gone = played(Exercise::Leaving, Character::Eager, 5, "o1.45000_e.52000");
    assert!(!gone.told.iter().any(|t| matches!(t.what, What::WaitOver(_))), "{:?}", gone.told);
    assert_eq!((conduct(&gone).waits.n, conduct(&gone).leaving.value), (0, Some(0.0)));
}

#[test]
fn where_time_ran_out_with_little_done_more_is_asked_for_only_where_there_was_room() {
    assert_eq!(named(&played(Exercise::Likes, Character::Eager, 1, "t.8000")), Change::MorePairs);
    let invited = [
        (0, What::Joined),
        (10_000, you(Does::Offer(BALL))),
        (12_000, What::Pressed(BALL)),
        (12_800, you(Does::Give(BALL))),
        (13_500, What::Took(BALL)),
    ];
    let one = |more: &[(u32, What)]| {
        named(&by_hand(setup(Exercise::Inviting, Character::Eager, 1), 180_000, &[&invited, more].concat()))
    };
    assert_eq!(one(&[]), Change::MoreInvitations);
    assert_eq!(one(&[(20_000, What::Leaves)]), Change::CarryOn);
    // Three a minute of its time at the board, until it shows a sign: room for a second one from 40 s on.
    assert_eq!(one(&[(39_900, What::Leaves)]), Change::CarryOn);
    assert_eq!(one(&[(40_000, What::Leaves)]), Change::MoreInvitations);
    let mild = What::Sign(SignSeen { level: SignLevel::Mild, id: "looks-away" });
    assert_eq!(one(&[(39_900, mild)]), Change::CarryOn);
    assert_eq!(one(&[(40_000, mild)]), Change::MoreInvitations);
}

#[test]
fn one_invitation_is_too_few_though_it_left_later_and_came_back() {
    let acts = "o1.7700_g1.10100_g0.34900_g3.40400_g0.42200_g0.179100";
    let run = played(Exercise::Inviting, Character::Eager, 5, acts);
    assert!(run.told.iter().any(|t| t.what == What::Leaves));
    assert_eq!(named(&run), Change::MoreInvitations);
}

#[test]
fn who_held_out_pairs_for_as_long_as_it_was_there_is_not_told_to_hold_out_more() {
    let pairs = |character, seed, acts| {
        let run = played(Exercise::Likes, character, seed, acts);
        assert!(!run.stays, "{:?}", run.told);
        named(&run)
    };
    let ten = "t.17200_t.25500_t.32500_t.44300_t.53600_t.61900_t.69300_t.79500_t.86200_t.96500";
    assert_eq!(pairs(Character::Wary, 3, ten), Change::CarryOn);
    let eleven = "t.12300_t.21200_t.30700_t.35400_t.42700_t.53100_t.62600_t.68800_t.73100_t.83400_t.94400";
    assert_eq!(pairs(Character::Old, 11, eleven), Change::CarryOn);
    // Of these only the first five: there was room for more.
    let five = "t.17200_t.25500_t.32500_t.44300_t.53600";
    let run = played(Exercise::Likes, Character::Wary, 3, five);
    assert_eq!(named(&run), Change::MorePairs, "{:?}", run.told);
}

// What was held out, or lay there, as the animal left tells nothing of the person.

#[test]
fn what_was_held_out_as_it_left_is_no_choice_and_no_haste() {
    // Held out at 7 s; it goes at 7.6 s, and the next pair is held out once it is back.
    let run = played(Exercise::Likes, Character::Old, 206, "t.7000_t.16400_e.30000");
    let leaves = run.told.iter().find(|t| t.what == What::Leaves).unwrap().at_ms;
    let comes = run.told.iter().find(|t| t.what == What::Comes && t.at_ms > leaves).unwrap().at_ms;
    assert!((7_000..16_400).contains(&leaves) && comes < 16_400, "{:?}", run.told);
    let c = conduct(&run);
    assert_eq!(c.held.value, Some(1.0), "{:?}", run.told);
    assert_eq!(c.held.n, 1);
    assert_eq!(c.chosen.iter().map(|(_, held)| held).sum::<usize>(), 2, "one pair");

    let told = |more: &[(u32, What)]| {
        let first = [(0, What::Joined), (1_000, you(Does::Two)), (1_000, What::Held(BALL, Thing::Out))];
        conduct(&by_hand(setup(Exercise::Likes, Character::Eager, 1), 60_000, &[&first, more].concat()))
    };
    let next = [(20_000, you(Does::Two)), (20_000, What::Held(BALL, Thing::Treat)), (22_000, What::Chose(BALL))];
    let left = [&[(1_500, What::Leaves), (9_000, What::Comes), (12_000, What::Joined)][..], &next].concat();
    assert_eq!((told(&left).held.value, told(&left).held.n), (Some(1.0), 1));
    assert_eq!(told(&left).chosen[BALL.place()], (1, 1));
    // Whoever holds out the next while it still chooses has not held still.
    assert_eq!((told(&next).held.value, told(&next).held.n), (Some(0.5), 2));
}

#[test]
fn what_lay_there_as_it_left_is_not_said_to_have_been_left_untaken() {
    // It goes at 29 s, before it can take what was given at 28.7 s.
    let acts = "s0.3000_g0.3700_s1.12000_g1.12700_s0.21000_g0.21700";
    let run = played(Exercise::Leaving, Character::Eager, 7, &format!("{acts}_s0.28100_g0.28700_e.35000"));
    assert!(run.told.iter().any(|t| t.what == What::Leaves && (28_700..30_000).contains(&t.at_ms)), "{:?}", run.told);
    let without = played(Exercise::Leaving, Character::Eager, 7, &format!("{acts}_e.35000"));
    assert_eq!(conduct(&run).taken, conduct(&without).taken);
    assert_eq!(named(&run), named(&without));

    let taken = |told: &[(u32, What)]| {
        let whole = [&[(0, What::Joined)], told].concat();
        let share = conduct(&by_hand(setup(Exercise::Free, Character::Eager, 1), 60_000, &whole)).taken;
        (share.value, share.n)
    };
    let show = (10_000, you(Does::Show(BALL)));
    let give = (10_800, you(Does::Give(BALL)));
    assert_eq!(taken(&[show, give, (11_400, What::Ignored(BALL))]), (Some(0.0), 1));
    assert_eq!(taken(&[show, give, (11_200, What::Leaves)]), (None, 0));
    // It left before the thing came, or just before the press.
    assert_eq!(taken(&[show, (10_500, What::Leaves), give, (12_800, What::Ignored(BALL))]), (None, 0));
    assert_eq!(taken(&[(9_401, What::Leaves), show, give, (12_800, What::Ignored(BALL))]), (None, 0));
    assert_eq!(taken(&[(9_400, What::Leaves), show, give, (12_800, What::Ignored(BALL))]), (Some(0.0), 1));
}
