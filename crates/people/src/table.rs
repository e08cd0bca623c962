//! The one table of who may do what. `docs/roles.md` is made of it.

use crate::capability::Capability;
use crate::role::Role;

/// What a role has of a capability.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Grant {
    /// Nothing.
    No,
    /// It.
    Yes,
    /// It, on the days agreed, by the home's clock.
    OnDays,
    /// It, in homes whose consent to it is open.
    WithConsent,
}

/// What `role` has of `capability`. No wildcard: a new role or capability is decided on for each of the other.
#[must_use]
#[deny(clippy::wildcard_enum_match_arm, clippy::match_wildcard_for_single_variants)]
#[rustfmt::skip]
pub const fn grant(role: Role, capability: Capability) -> Grant {
    use Capability as C;
    match role {
        Role::Keeper => match capability {
            C::SeeToday | C::SeeRules | C::SeeFigures | C::SeeLog | C::HearSnippets | C::SeeOwnScores | C::Record
            | C::RecordForOthers | C::MendOwn | C::Mend | C::ChangeCards | C::Plan | C::Agree | C::SettleHome | C::Import
            | C::Export | C::SeePeople | C::ManagePeople | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave => Grant::Yes,
            C::Advise | C::SeeClub | C::SeeDesk | C::ManageClub | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::Member => match capability {
            C::SeeToday | C::SeeRules | C::SeeFigures | C::SeeLog | C::HearSnippets | C::SeeOwnScores | C::Record
            | C::RecordForOthers | C::MendOwn | C::Mend | C::ChangeCards | C::Plan | C::Agree | C::SeePeople => Grant::Yes,
            C::Advise | C::SettleHome | C::Import | C::Export | C::ManagePeople | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave | C::SeeClub | C::SeeDesk | C::ManageClub
            | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::Sitter => match capability {
            C::SeeToday | C::SeeRules | C::SeeOwnScores | C::Record | C::MendOwn => Grant::OnDays,
            C::SeeFigures | C::SeeLog | C::HearSnippets | C::RecordForOthers | C::Mend | C::ChangeCards
            | C::Plan | C::Advise | C::Agree | C::SettleHome | C::Import | C::Export | C::SeePeople | C::ManagePeople
            | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave | C::SeeClub | C::SeeDesk | C::ManageClub | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::Observer => match capability {
            C::SeeOwnScores | C::Record | C::MendOwn => Grant::Yes,
            C::SeeToday | C::SeeRules | C::SeeFigures | C::SeeLog | C::HearSnippets | C::RecordForOthers | C::Mend
            | C::ChangeCards | C::Plan | C::Advise | C::Agree | C::SettleHome | C::Import | C::Export | C::SeePeople
            | C::ManagePeople | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave | C::SeeClub | C::SeeDesk | C::ManageClub | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::Coach => match capability {
            C::SeeToday | C::SeeFigures | C::SeeLog | C::HearSnippets | C::Advise => Grant::WithConsent,
            C::SeeClub | C::SeeDesk => Grant::Yes,
            C::SeeRules | C::SeeOwnScores | C::Record | C::RecordForOthers | C::MendOwn | C::Mend | C::ChangeCards
            | C::Plan | C::Agree | C::SettleHome | C::Import | C::Export | C::SeePeople | C::ManagePeople | C::Consent
            | C::TakeBack | C::LinkNotebook | C::Leave | C::ManageClub | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::ClubKeeper => match capability {
            C::SeeClub | C::ManageClub => Grant::Yes,
            C::SeeToday | C::SeeRules | C::SeeFigures | C::SeeLog | C::HearSnippets | C::SeeOwnScores | C::Record
            | C::RecordForOthers | C::MendOwn | C::Mend | C::ChangeCards | C::Plan | C::Advise | C::Agree | C::SettleHome
            | C::Import | C::Export | C::SeePeople | C::ManagePeople | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave | C::SeeDesk | C::Host | C::SeeServer | C::ManageServer => Grant::No,
        },
        Role::ServerKeeper => match capability {
            C::Host | C::SeeServer | C::ManageServer => Grant::Yes,
            C::SeeToday | C::SeeRules | C::SeeFigures | C::SeeLog | C::HearSnippets | C::SeeOwnScores | C::Record
            | C::RecordForOthers | C::MendOwn | C::Mend | C::ChangeCards | C::Plan | C::Advise | C::Agree | C::SettleHome
            | C::Import | C::Export | C::SeePeople | C::ManagePeople | C::Consent | C::TakeBack | C::LinkNotebook | C::Leave | C::SeeClub | C::SeeDesk | C::ManageClub => Grant::No,
        },
    }
}

/// What a notebook at home may bring that a keeper linked to the home: what people who live with the animal write down, under
/// whosever name, and what amends that. Nothing that opens the home to anyone, nothing in the name of an account, nobody's role. It is
/// no role: nobody has it, and it is asked for by [`crate::needs::notebook_may_append`] alone.
#[must_use]
#[deny(clippy::wildcard_enum_match_arm, clippy::match_wildcard_for_single_variants)]
pub const fn notebook_brings(capability: Capability) -> bool {
    use Capability as C;
    match capability {
        C::Record
        | C::RecordForOthers
        | C::MendOwn
        | C::Mend
        | C::ChangeCards
        | C::Plan
        | C::Agree
        | C::SettleHome
        | C::Import => true,
        C::SeeToday
        | C::SeeRules
        | C::SeeFigures
        | C::SeeLog
        | C::HearSnippets
        | C::SeeOwnScores
        | C::Advise
        | C::Export
        | C::SeePeople
        | C::ManagePeople
        | C::Consent
        | C::TakeBack
        | C::LinkNotebook
        | C::Leave
        | C::SeeClub
        | C::SeeDesk
        | C::ManageClub
        | C::Host
        | C::SeeServer
        | C::ManageServer => false,
    }
}

/// The page of roles, in Markdown.
#[must_use]
pub fn roles_page() -> String {
    let mut page = String::from(INTRO);
    page.push_str("| capability | what | ");
    page.push_str(&Role::ALL.map(Role::name).join(" | ").replace('_', " "));
    page.push_str(" |\n| --- | --- |");
    page.push_str(&" --- |".repeat(Role::ALL.len()));
    page.push('\n');
    for capability in Capability::ALL {
        let mark = if capability.needs_fresh() { " *" } else { "" };
        page.push_str(&format!("| `{}`{mark} | {} |", capability.name(), capability.means().trim()));
        for role in Role::ALL {
            page.push_str(match grant(role, *capability) {
                Grant::No => " |",
                Grant::Yes => " yes |",
                Grant::OnDays => " on agreed days |",
                Grant::WithConsent => " with the home's consent |",
            });
        }
        page.push('\n');
    }
    let brings: Vec<String> = Capability::ALL
        .iter()
        .filter(|capability| notebook_brings(**capability))
        .map(|capability| format!("`{}`", capability.name()))
        .collect();
    page.push_str(LINKED);
    page.push_str(&brings.join(", "));
    page.push_str(".\n");
    page.push_str(SOUNDS);
    page
}

const INTRO: &str = "\
# Roles

Who may do what on a server of many homes. This page is made of the table in `crates/people/src/table.rs`; a test compares.
What is not granted is denied. A home that one has nothing to do with answers as a home that does not exist.

`*` needs a sign-in of the last minutes. Days of a sitter are those of the home's zone. A coach needs a role in a club and
the home's consent to that purpose, to the coach or to the club; it ends at once when either does. Everyone may end an own role, own
sessions and an own account. Keepers of the server see no home's data by that role; whoever has the machine's disk in hand can
read what is stored on it, and no table changes that.

";

const SOUNDS: &str = "
A server of many homes keeps no sounds of presses ([why](decisions/two-stores.md#what-a-server-does-not-have)): `hear_snippets` opens nothing there, and its pages
neither ask for that consent nor tell of it.
";

const LINKED: &str = "
A notebook at home that a keeper linked to a home takes that home's log along, and brings what these take, and nothing else
([why](decisions/linked.md)): ";
