//! The stage rule: what moves a word on, what moves it back, and what must not count.

use sayso_methods::learning::ground::{Counted, Ground};
use sayso_methods::learning::stage::{InvitationSession, Stage, StageRule, WordFigures, stage};

#[test]
fn not_wanting_is_never_held_against_a_word() {
    let joined = WordFigures {
        prepared: true,
        showings: 40,
        showing_days: 8,
        offered: 20,
        joined: 19,
        ln_e: 30f64.ln(),
        ..WordFigures::default()
    };
    let rule = StageRule::default();
    let session =
        |wanted, pressed, person| InvitationSession { wanted, pressed, presses: pressed, right: pressed, person };
    let at = |invitations: Vec<InvitationSession>| {
        stage(Stage::Invite, &WordFigures { invitations, ..joined.clone() }, &rule).unwrap().stage
    };
    let mastered = vec![session(5, 5, 1), session(6, 6, 2)];
    assert_eq!(at(mastered.clone()), Stage::Converse);
    // Sessions in which it wanted nothing, before, between and after, change nothing.
    let mut idle = vec![session(0, 0, 3)];
    idle.extend([mastered[0], session(0, 0, 1), mastered[1], session(0, 0, 2)]);
    assert_eq!(at(idle), Stage::Converse);
    // One person is not enough; strain comes before everything.
    assert_eq!(at(vec![session(5, 5, 1), session(6, 6, 1)]), Stage::Invite);
    let strained = WordFigures { under_strain: true, invitations: mastered, ..joined.clone() };
    assert_eq!(stage(Stage::Converse, &strained, &rule).unwrap().stage, Stage::Invite);
    // Wanted often and hardly pressed: more showing.
    assert_eq!(at(vec![session(10, 0, 1), session(10, 0, 2)]), Stage::Show);
}

/// Pressing whenever something is wanted, whichever button, is one figure; being right when it presses is the other.
#[test]
fn a_stage_beyond_inviting_needs_both_figures() {
    let figures = |right: u32, ln_e: f64| WordFigures {
        prepared: true,
        showings: 40,
        showing_days: 8,
        offered: 20,
        joined: 19,
        invitations: (0..6)
            .map(|person| InvitationSession { wanted: 5, pressed: 5, presses: 5, right, person: person % 2 })
            .collect(),
        own_presses_taken: 100,
        own_press_days: 30,
        ln_e,
        ..WordFigures::default()
    };
    let rule = StageRule::default();
    let at = |right, e: f64| stage(Stage::Invite, &figures(right, e.ln()), &rule).unwrap().stage;
    assert_eq!(at(5, 25.0), Stage::Converse);
    assert_eq!(at(5, 19.0), Stage::Invite, "right presses may still be chance");
    assert_eq!(at(1, 1.0), Stage::Invite, "it pressed every time, and was right one time in five");
    // Own presses and mastery are there already: what is waited for is being right.
    let waits = stage(Stage::Invite, &figures(5, 19f64.ln()), &rule).unwrap().would_change;
    assert!(matches!(waits[..], [Ground::Right { e: (_, 20.0), .. }]), "{waits:?}");
}

/// What was mastered and is surely lost two weeks and more later goes back to inviting.
#[test]
fn what_did_not_last_is_invited_again() {
    let s = |pressed, right| InvitationSession { wanted: 10, pressed, presses: 10, right, person: 1 };
    let figures = |later| WordFigures {
        prepared: true,
        showings: 40,
        showing_days: 8,
        offered: 20,
        joined: 19,
        invitations: vec![s(10, 10), InvitationSession { person: 2, ..s(10, 10) }],
        ln_e: 5.0,
        later,
        ..WordFigures::default()
    };
    let at = |later| stage(Stage::Converse, &figures(later), &StageRule::default()).unwrap().stage;
    assert_eq!(at(None), Stage::Converse);
    assert_eq!(at(Some(s(9, 9))), Stage::Converse);
    assert_eq!(at(Some(s(10, 3))), Stage::Invite);
    assert_eq!(at(Some(s(3, 10))), Stage::Invite);
}

/// Back a stage, the bar that is missed comes first, before what is reached.
#[test]
fn what_decides_is_said_first() {
    let s = |pressed, right, person| InvitationSession { wanted: 10, pressed, presses: pressed, right, person };
    let figures = |invitations: &[InvitationSession], e: f64| WordFigures {
        prepared: true,
        showings: 40,
        showing_days: 8,
        offered: 20,
        joined: 19,
        invitations: invitations.to_vec(),
        ln_e: e.ln(),
        own_presses_taken: 20,
        own_press_days: 9,
        ..WordFigures::default()
    };
    let first = |figures: &WordFigures| {
        let found = stage(Stage::Converse, figures, &StageRule::default()).unwrap();
        (found.stage, found.because[0])
    };
    // Right whenever it presses, and lately it hardly presses when it wants the thing.
    let fell = figures(&[s(10, 10, 1), s(4, 4, 2)], 40.0);
    let (to, why) = first(&fell);
    assert_eq!(to, Stage::Invite);
    assert!(matches!(why, Ground::Below { counted: Counted::Latest, share: (4, 10), .. }), "{why:?}");
    let Ground::Below { interval, bar, .. } = why else { panic!("{why:?}") };
    assert!(interval.high < bar && (bar - 0.9).abs() < 1e-9, "{why:?}");
    // Pressed and right often enough, by chance for all one knows.
    let (_, why) = first(&figures(&[s(10, 10, 1), s(10, 10, 2)], 19.0));
    assert!(matches!(why, Ground::Right { .. }), "{why:?}");
    // Few sessions at mastery, and few own presses.
    let few = WordFigures { own_presses_taken: 2, ..figures(&[s(8, 8, 1), s(10, 10, 2)], 40.0) };
    assert!(matches!(first(&few).1, Ground::Mastery { sessions: (1, 2), .. }), "{few:?}");
    // It joins too seldom, however often it was shown; and it wanted the thing often and hardly pressed.
    let away = WordFigures { joined: 3, ..few.clone() };
    assert!(matches!(first(&away), (Stage::Show, Ground::Joining { .. })), "{away:?}");
    let silent = WordFigures { own_presses_taken: 0, ..figures(&[s(0, 0, 1), s(0, 0, 2)], 1.0) };
    assert!(matches!(first(&silent), (Stage::Show, Ground::Below { counted: Counted::Wanted, share: (0, 20), .. })));
    // What was mastered and is lost is told by the figure that fell.
    let later = Some(s(10, 3, 1));
    let lost = WordFigures { later, ..figures(&[s(10, 10, 1), s(10, 10, 2)], 40.0) };
    let (to, why) = first(&lost);
    assert!(
        to == Stage::Invite && matches!(why, Ground::Below { counted: Counted::LaterPresses, share: (3, 10), .. }),
        "{why:?}"
    );
}
