//! No coach sees anything without consent, whatever happened before.

use crate::made::*;
use proptest::prelude::*;
use sayso_model::*;
use sayso_people::Role;
use sayso_people::may::{may, who_can_see};
use sayso_people::*;
use std::collections::BTreeSet;

const COACH: AccountId = account(7);

/// One thing that happens around a home and a coach.
#[derive(Clone, Copy, Debug)]
enum Step {
    JoinClub(u128),
    LeaveClub(u128),
    /// By a keeper, witnessed.
    Give(u8, bool),
    /// By anyone, in any way, unseen by the server.
    Slip(u8, bool),
    TakeBack(usize),
    Undo(usize),
    Turn(usize, u8),
}

fn any_step() -> impl Strategy<Value = Step> {
    prop_oneof![
        (1_u128..3).prop_map(Step::JoinClub),
        (1_u128..3).prop_map(Step::LeaveClub),
        (0_u8..5, any::<bool>()).prop_map(|(c, club)| Step::Give(c, club)),
        (0_u8..5, any::<bool>()).prop_map(|(c, club)| Step::Slip(c, club)),
        (0_usize..12).prop_map(Step::TakeBack),
        (0_usize..12).prop_map(Step::Undo),
        (0_usize..12, 0_u8..5).prop_map(|(n, c)| Step::Turn(n, c)),
    ]
}

fn consent(kind: u8, to_club: bool) -> Consent {
    let to = if to_club { Coach::Club { club: club(1) } } else { Coach::Account { account: COACH } };
    match kind {
        0 => Consent::CoachFigures { to },
        1 => Consent::CoachLog { to },
        2 => Consent::CoachSnippets { to },
        3 => Consent::Norms,
        _ => Consent::Research,
    }
}

const SEES: [(u8, Capability); 5] = [
    (0, Capability::SeeToday),
    (0, Capability::SeeFigures),
    (0, Capability::Advise),
    (1, Capability::SeeLog),
    (2, Capability::HearSnippets),
];

proptest! {
    #[test]
    fn a_coach_sees_only_by_a_role_in_a_club_and_a_consent_that_a_keeper_gave_and_nobody_took_back(
        steps in prop::collection::vec(any_step(), 0..16),
    ) {
        let (mut clubs, mut log, mut witnessed) = (BTreeSet::new(), Vec::<Event>::new(), BTreeSet::new());
        // The plain book: which givings hold.
        let mut holds: Vec<(EventId, Consent)> = Vec::new();
        for (n, step) in steps.into_iter().enumerate() {
            let (now, next) = (n as i64, n as u128 + 1);
            let nth = |of: usize| log.get(of).map(|e| (e.id, e.body.clone()));
            match step {
                Step::JoinClub(n) => { clubs.insert(n); }
                Step::LeaveClub(n) => { clubs.remove(&n); }
                Step::Give(kind, to_club) => {
                    let what = consent(kind, to_club);
                    log.push(event(next, home(1), now, given(what)));
                    witnessed.insert(EventId(id(next)));
                    holds.push((EventId(id(next)), what));
                }
                Step::Slip(kind, to_club) => log.push(event(next, home(1), now, given(consent(kind, to_club)))),
                Step::TakeBack(of) => if let Some((of, Body::ConsentGiven(given))) = nth(of) {
                    let back = ConsentTakenBack { consent: given.consent, given: of };
                    log.push(event(next, home(1), now, back));
                    holds.retain(|(_, what)| *what != given.consent);
                },
                Step::Undo(of) => if let Some((of, _)) = nth(of) {
                    log.push(event(next, home(1), now, Withdrawal { of, because: None }));
                    holds.retain(|(id, _)| *id != of);
                },
                Step::Turn(of, kind) => if let Some((of, _)) = nth(of) {
                    let body = Box::new(given(consent(kind, false)).into());
                    log.push(event(next, home(1), now, Correction { of, happened_at: None, animal: None, body }));
                    holds.retain(|(id, _)| *id != of);
                },
            }
            let story = Story::from_events(log.clone());
            let known = HomeNow::of(home(1), &story, &witnessed, at(now));
            let parts: Vec<Part> = clubs
                .iter()
                .map(|n| Part::new(Scope::Club(club(*n)), Role::Coach, None, None).unwrap())
                .collect();
            let coach = who(COACH, &parts);
            for (kind, capability) in SEES {
                let own = holds.iter().any(|(_, what)| *what == consent(kind, false)) && !clubs.is_empty();
                let of_club = holds.iter().any(|(_, what)| *what == consent(kind, true)) && clubs.contains(&1);
                let sees = may(&coach, capability, home(1), Some(&known), at(now)).is_ok();
                prop_assert_eq!(sees, own || of_club, "{:?}", capability);
            }
            for capability in Capability::ALL {
                let leave = may(&coach, *capability, home(1), Some(&known), at(now));
                prop_assert!(leave.is_err() || SEES.iter().any(|(_, c)| c == capability));
                if clubs.is_empty() {
                    prop_assert_eq!(leave, Err(Denied::NothingHere));
                }
            }
        }
    }
}

#[test]
fn who_can_see_is_what_each_may_see() {
    let to = Coach::Account { account: COACH };
    let known = home_now(home(1), vec![event(1, home(1), -5, given(Consent::CoachFigures { to }))], at(0));
    let everyone = [
        who(account(1), &[part(Role::Keeper)]),
        who(account(2), &[part(Role::Sitter)]),
        who(account(3), &[part(Role::Observer)]),
        who(COACH, &[part(Role::Coach)]),
        who(account(8), &[part(Role::Coach)]),
        who(account(9), &[part(Role::ServerKeeper)]),
    ];
    let told = who_can_see(&known, &everyone, at(0));
    let of = |n: AccountId| told.iter().filter(|s| s.account == n).map(|s| s.capability).collect::<Vec<_>>();
    assert_eq!(of(COACH), [Capability::SeeToday, Capability::SeeFigures, Capability::Advise]);
    assert_eq!(of(account(2)), [Capability::SeeToday, Capability::SeeRules, Capability::Record]);
    assert_eq!(of(account(3)), [Capability::Record], "the Board alone");
    for nobody in [8, 9] {
        assert!(of(account(nobody)).is_empty());
    }
    assert!(of(account(1)).contains(&Capability::HearSnippets));
}
