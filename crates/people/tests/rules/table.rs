//! The table of roles, and the page made of it.

use crate::made::*;
use sayso_people::may::{may, may_in_club, may_on_server};
use sayso_people::role::ScopeKind;
use sayso_people::table::{Grant, grant, roles_page};
use sayso_people::*;

const PAGE: &str = include_str!("../../../../docs/roles.md");

#[test]
fn the_page_of_roles_is_the_table() {
    if std::env::var_os("SAYSO_WRITE_SHARED").is_some() {
        let path = concat!(env!("CARGO_MANIFEST_DIR"), "/../../docs/roles.md");
        std::fs::write(path, roles_page()).unwrap();
        return;
    }
    assert_eq!(PAGE, roles_page(), "SAYSO_WRITE_SHARED=1 cargo test -p sayso-people --test rules writes it");
}

#[test]
fn what_is_asked_is_what_the_page_says_for_every_role_and_capability() {
    let open = [
        given(sayso_model::Consent::CoachFigures { to: sayso_model::Coach::Club { club: club(1) } }),
        given(sayso_model::Consent::CoachLog { to: sayso_model::Coach::Club { club: club(1) } }),
        given(sayso_model::Consent::CoachSnippets { to: sayso_model::Coach::Club { club: club(1) } }),
    ];
    let open = open.into_iter().zip(1..).map(|(body, n)| event(n, home(1), -10, body)).collect();
    let (closed, open) = (home_now(home(1), Vec::new(), at(0)), home_now(home(1), open, at(0)));
    // Read from the page, so that table, page and answers hang together.
    let rows = PAGE.lines().filter(|l| l.starts_with("| `"));
    let mut seen = 0;
    for (row, capability) in rows.zip(Capability::ALL) {
        let cells: Vec<&str> = row.trim_matches('|').split('|').map(str::trim).collect();
        assert!(cells[0].contains(&format!("`{}`", capability.name())));
        for (role, cell) in Role::ALL.into_iter().zip(&cells[2..]) {
            seen += 1;
            let asker = who(account(1), &[part(role)]);
            let ask = |known: &HomeNow, at| match capability.scope() {
                ScopeKind::Home => may(&asker, *capability, home(1), Some(known), at).is_ok(),
                ScopeKind::Club => may_in_club(&asker, *capability, club(1)).is_ok(),
                ScopeKind::Server => may_on_server(&asker, *capability).is_ok(),
            };
            let answers = (ask(&closed, at(0)), ask(&open, at(0)), ask(&open, at(86_400 * 3)));
            let expected = match *cell {
                "" => (false, false, false),
                "yes" => (true, true, true),
                "on agreed days" => (true, true, false),
                "with the home's consent" => (false, true, true),
                other => panic!("{other}"),
            };
            assert_eq!(answers, expected, "{role:?} {capability:?}");
        }
    }
    assert_eq!(seen, Role::ALL.len() * Capability::ALL.len());
}

#[test]
fn what_the_roles_are_for_holds() {
    let all = |role: Role| Capability::ALL.iter().copied().filter(move |c| grant(role, *c) != Grant::No);
    assert!(all(Role::ServerKeeper).all(|c| c.scope() == ScopeKind::Server), "the server's keeper sees no home");
    assert!(all(Role::ClubKeeper).all(|c| c.scope() == ScopeKind::Club));
    // All of a home but what is a coach's: whoever lives there need not propose to themselves.
    let of_homes = Capability::ALL.iter().filter(|c| c.scope() == ScopeKind::Home && **c != Capability::Advise);
    assert_eq!(all(Role::Keeper).collect::<Vec<_>>(), of_homes.copied().collect::<Vec<_>>());
    for (capability, has) in
        [(Capability::Advise, vec![Role::Coach]), (Capability::Agree, vec![Role::Keeper, Role::Member])]
    {
        let who: Vec<Role> = Role::ALL.into_iter().filter(|r| grant(*r, capability) != Grant::No).collect();
        assert_eq!(who, has, "{capability:?}");
    }
    for capability in
        [Capability::Consent, Capability::TakeBack, Capability::Leave, Capability::ManagePeople, Capability::SettleHome]
    {
        let who: Vec<Role> = Role::ALL.into_iter().filter(|r| grant(*r, capability) != Grant::No).collect();
        assert_eq!(who, [Role::Keeper], "{capability:?}");
    }
    let sees = |role: Role| all(role).filter(|c| c.looks()).collect::<Vec<_>>();
    assert_eq!(sees(Role::Observer), [Capability::Record], "the Board, where one writes");
    assert_eq!(sees(Role::Sitter), [Capability::SeeToday, Capability::SeeRules, Capability::Record]);
    for capability in all(Role::Coach).filter(|c| c.scope() == ScopeKind::Home) {
        assert_eq!(grant(Role::Coach, capability), Grant::WithConsent);
        assert!(capability.opened_by().is_some(), "a consent opens {capability:?}");
    }
    for capability in Capability::ALL.iter().filter(|c| c.opened_by().is_some()) {
        assert!(capability.looks(), "a look of a coach at {capability:?} is noted");
    }
}

#[test]
fn a_role_does_not_stand_in_a_place_of_another_kind() {
    for role in Role::ALL {
        for scope in [Scope::Home(home(1)), Scope::Club(club(1)), Scope::Server] {
            let person = scope.home().map(|_| sayso_model::PersonId(id(3)));
            let made = Part::new(scope, role, person, part(role).days());
            assert_eq!(made.is_ok(), scope.kind() == role.scope(), "{role:?} {scope:?}");
        }
        assert_eq!(Role::named(role.name()), Some(role));
    }
    let bad = Part::new(Scope::Home(home(1)), Role::Sitter, Some(sayso_model::PersonId(id(3))), None);
    assert_eq!(bad, Err(PartError::NoDays));
    assert!(Part::new(Scope::Home(home(1)), Role::Observer, None, None).is_err(), "scores under its own name");
}
