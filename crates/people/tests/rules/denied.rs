//! A home that one has nothing to do with answers as one that does not exist.

use crate::made::*;
use proptest::prelude::*;
use sayso_model::*;
use sayso_people::Role;
use sayso_people::may::may;
use sayso_people::*;

fn any_part() -> impl Strategy<Value = Part> {
    // In home 1 or 2, club 1 or 2, on the server.
    (0_usize..Role::ALL.len(), 1_u128..=2).prop_map(|(role, n)| {
        let role = Role::ALL[role];
        let plain = part(role);
        let scope = match plain.scope() {
            Scope::Home(_) => Scope::Home(home(n)),
            Scope::Club(_) => Scope::Club(club(n)),
            Scope::Server => Scope::Server,
        };
        Part::new(scope, role, plain.person(), plain.days()).unwrap()
    })
}

proptest! {
    #[test]
    fn denials_for_unknown_and_foreign_homes_are_equal(
        parts in prop::collection::vec(any_part(), 0..5), shared in any::<bool>(), capability in 0..Capability::ALL.len(),
    ) {
        // Home 3 is nobody's here, and shares with others at most; home 4 does not exist.
        let to = Coach::Club { club: club(9) };
        let events = if shared { vec![event(1, home(3), -5, given(Consent::CoachLog { to }))] } else { Vec::new() };
        let foreign = home_now(home(3), events, at(0));
        let asker = who(account(1), &parts);
        let capability = Capability::ALL[capability];
        let of_foreign = may(&asker, capability, home(3), Some(&foreign), at(0));
        let of_unknown = may(&asker, capability, home(4), None, at(0));
        prop_assert_eq!(of_foreign, of_unknown);
        prop_assert_eq!(of_unknown, Err(Denied::NothingHere));
        let said = |e: Result<Allowed, Denied>| e.unwrap_err().to_string();
        prop_assert_eq!(said(of_foreign), said(of_unknown));
    }

    #[test]
    fn what_is_known_of_another_home_opens_nothing(capability in 0..Capability::ALL.len()) {
        let keeper = who(account(1), &[part(Role::Keeper)]);
        let other = home_now(home(2), Vec::new(), at(0));
        let asked = may(&keeper, Capability::ALL[capability], home(1), Some(&other), at(0));
        prop_assert_eq!(asked, Err(Denied::NothingHere));
    }
}
