//! May this account do this, here, now? Denied unless the table grants it.

// A new kind of place or grant must be decided on here.
#![deny(clippy::wildcard_enum_match_arm)]

use crate::capability::Capability;
use crate::membership::{Membership, Scope, Who};
use crate::role::{Role, ScopeKind};
use crate::table::{Grant, grant};
use sayso_model::consents::{Consents, consents};
use sayso_model::talks::{Passed, Talk, passed, talks};
use sayso_model::{AccountId, ClubId, Coach, Consent, ConsentPurpose, EventId, HomeId, Moment, PersonId, Story, Zone};
use std::collections::BTreeSet;

/// What of a home decides who may do what in it.
#[derive(Clone, Debug)]
pub struct HomeNow {
    /// Which.
    pub home: HomeId,
    /// Its zone, by which days count.
    pub zone: Zone,
    /// Its open consents.
    pub consents: Consents,
    /// Events that this server saw being written by whom they name: givings of consent, and what coaches proposed.
    pub witnessed: BTreeSet<EventId>,
    /// By what the writing of one coach passed on to another, as far as it was read: [`HomeNow::with_talk`].
    pub passed: Vec<Passed>,
}

impl HomeNow {
    /// A home as its log tells it. Of its givings of consent only those count that a keeper wrote under the eyes of this
    /// server, `witnessed`.
    #[must_use]
    pub fn of(home: HomeId, story: &Story, witnessed: &BTreeSet<EventId>, at: Moment) -> Self {
        let consents = consents(story, at).only(|given| witnessed.contains(&given));
        Self { home, zone: story.zone(), consents, witnessed: witnessed.clone(), passed: Vec::new() }
    }

    /// The same with what its whole log says of coaches who took another's place.
    #[must_use]
    pub fn with_talk(self, story: &Story, at: Moment) -> Self {
        Self { passed: self.passed_among(&talks(story, at)), ..self }
    }

    /// Hand-overs and covers to which the home agreed, and which this server saw being proposed.
    #[must_use]
    pub fn passed_among(&self, all: &[Talk<'_>]) -> Vec<Passed> {
        passed(all).into_iter().filter(|p| self.witnessed.contains(&p.agreement)).collect()
    }
}

/// Leave to do one thing.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Allowed {
    /// To do what.
    pub capability: Capability,
    /// Who.
    pub account: AccountId,
    /// Where.
    pub scope: Scope,
    /// By which role.
    pub role: Role,
    /// Who the account is in the home's log, if anyone.
    pub person: Option<PersonId>,
}

impl Allowed {
    /// That it is leave to do this.
    ///
    /// # Errors
    /// [`Denied::NotByRole`].
    pub fn is_for(&self, capability: Capability) -> Result<(), Denied> {
        if self.capability == capability { Ok(()) } else { Err(Denied::NotByRole(capability)) }
    }

    /// That it is leave to do this in that place.
    ///
    /// # Errors
    /// [`Denied::NotByRole`].
    pub fn is_for_at(&self, capability: Capability, scope: Scope) -> Result<(), Denied> {
        if self.scope == scope { self.is_for(capability) } else { Err(Denied::NotByRole(capability)) }
    }
}

/// Why not.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
pub enum Denied {
    /// There is no such place, or none that the account has to do with: to whoever asks the two are one.
    #[error("there is nothing here")]
    NothingHere,
    /// The account has to do with the place, but its role does not reach so far.
    #[error("the role does not reach to {}", .0.name())]
    NotByRole(Capability),
    /// It is not one of the sitter's days.
    #[error("this is not one of the days agreed")]
    NotToday,
    /// It names another account than the one that writes.
    #[error("it is not in the account's own name")]
    NotYourName,
    /// The sign-in is too old for this.
    #[error("{} needs a fresh sign-in", .0.name())]
    NotFresh(Capability),
}

/// Whether an account may do something in a home at a moment. `known` is none where there is no such home.
///
/// # Errors
/// [`Denied`], unless the table grants it.
pub fn may(
    who: &Who,
    capability: Capability,
    home: HomeId,
    known: Option<&HomeNow>,
    at: Moment,
) -> Result<Allowed, Denied> {
    let Some(known) = known.filter(|k| k.home == home) else { return Err(Denied::NothingHere) };
    let mut denied = Denied::NothingHere;
    for has in fitting(who) {
        let role = has.part.role();
        match has.part.scope() {
            Scope::Home(of) if of == home => {
                if denied == Denied::NothingHere {
                    denied = Denied::NotByRole(capability);
                }
                match of_a_home(grant(role, capability), has, known, at) {
                    Some(true) => return Ok(allowed(who, capability, has)),
                    Some(false) => denied = Denied::NotToday,
                    None => {}
                }
            }
            Scope::Club(club) if role == Role::Coach => {
                let coaches = [Coach::Club { club }, Coach::Account { account: who.account }];
                if denied == Denied::NothingHere && coaches.iter().any(|coach| known.consents.any_to(*coach)) {
                    denied = Denied::NotByRole(capability);
                }
                if grant(role, capability) == Grant::WithConsent
                    && let Some(purpose) = capability.opened_by()
                    && coaches.iter().any(|coach| opened(&known.consents, purpose, *coach))
                {
                    return Ok(Allowed { scope: Scope::Home(home), ..allowed(who, capability, has) });
                }
            }
            Scope::Home(_) | Scope::Club(_) | Scope::Server => {}
        }
    }
    Err(denied)
}

/// Roles that fit their place; others are no roles.
fn fitting(who: &Who) -> impl Iterator<Item = &Membership> {
    who.memberships.iter().filter(|m| m.account == who.account && m.part.role().scope() == m.part.scope().kind())
}

/// What a grant comes to in a home: yes, not today, or no.
fn of_a_home(grant: Grant, has: &Membership, home: &HomeNow, at: Moment) -> Option<bool> {
    match grant {
        Grant::Yes => Some(true),
        Grant::OnDays => Some(has.part.days().is_some_and(|days| days.hold(at, &home.zone))),
        Grant::No | Grant::WithConsent => None,
    }
}

/// Whether a home's consent opens a purpose to a coach.
fn opened(open: &Consents, purpose: ConsentPurpose, to: Coach) -> bool {
    match purpose {
        ConsentPurpose::CoachFigures => open.is_open(Consent::CoachFigures { to }),
        ConsentPurpose::CoachLog => open.is_open(Consent::CoachLog { to }),
        ConsentPurpose::CoachSnippets => open.is_open(Consent::CoachSnippets { to }),
        ConsentPurpose::Norms | ConsentPurpose::Research => false,
    }
}

const fn allowed(who: &Who, capability: Capability, has: &Membership) -> Allowed {
    let part = has.part;
    Allowed { capability, account: who.account, scope: part.scope(), role: part.role(), person: part.person() }
}

/// Whether an account may do something in a club.
///
/// # Errors
/// [`Denied`], unless the table grants it.
pub fn may_in_club(who: &Who, capability: Capability, club: ClubId) -> Result<Allowed, Denied> {
    elsewhere(who, capability, Scope::Club(club))
}

/// Whether an account may do something on the server.
///
/// # Errors
/// [`Denied`], unless the table grants it.
pub fn may_on_server(who: &Who, capability: Capability) -> Result<Allowed, Denied> {
    elsewhere(who, capability, Scope::Server)
}

fn elsewhere(who: &Who, capability: Capability, scope: Scope) -> Result<Allowed, Denied> {
    let mut denied = Denied::NothingHere;
    for has in fitting(who).filter(|m| m.part.scope() == scope) {
        if capability.scope() == scope.kind()
            && scope.kind() != ScopeKind::Home
            && grant(has.part.role(), capability) == Grant::Yes
        {
            return Ok(allowed(who, capability, has));
        }
        denied = Denied::NotByRole(capability);
    }
    Err(denied)
}

/// One who can see something of a home.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Sees {
    /// Who.
    pub account: AccountId,
    /// What.
    pub capability: Capability,
    /// By which role.
    pub role: Role,
}

/// Who can see what of a home at a moment, by asking [`may`] for each: there is no second rule. `accounts` are all that may
/// have to do with it: its members, and coaches it shares with.
#[must_use]
pub fn who_can_see(home: &HomeNow, accounts: &[Who], at: Moment) -> Vec<Sees> {
    let ask = |who: &Who, capability: Capability| {
        let leave = may(who, capability, home.home, Some(home), at).ok()?;
        Some(Sees { account: who.account, capability, role: leave.role })
    };
    let looks = || Capability::ALL.iter().copied().filter(|c| c.looks());
    accounts.iter().flat_map(|who| looks().filter_map(move |capability| ask(who, capability))).collect()
}
