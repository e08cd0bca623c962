//! The stage rule: what moves a word on, what moves it back, and what must not count.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)]

use sayso_methods::learning::stage::{InvitationSession, Stage, StageRule, WordFigures, stage};

#[test]
fn not_wanting_is_never_held_against_a_word() {
    let joined = WordFigures {
        prepared: true,
        showings: 40,
        showing_days: 8,
        offered: 20,
        joined: 19,
        ..WordFigures::default()
    };
    let rule = StageRule::default();
    let session = |wanted, pressed, teacher| InvitationSession { wanted, pressed, teacher };
    let at = |invitations: Vec<InvitationSession>| {
        stage(Stage::Invite, &WordFigures { invitations, ..joined.clone() }, &rule).unwrap().stage
    };
    let mastered = vec![session(5, 5, 1), session(6, 5, 2)];
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
