//! Memberships: which role an account has where.

use crate::id::MembershipId;
use crate::role::{Role, ScopeKind};
use sayso_model::{AccountId, ClubId, Day, HomeId, Moment, PersonId, Zone};

/// A place in which one may have a role.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum Scope {
    /// A home.
    Home(HomeId),
    /// A club.
    Club(ClubId),
    /// The server.
    Server,
}

impl Scope {
    /// Its kind.
    #[must_use]
    pub const fn kind(self) -> ScopeKind {
        match self {
            Self::Home(_) => ScopeKind::Home,
            Self::Club(_) => ScopeKind::Club,
            Self::Server => ScopeKind::Server,
        }
    }

    /// The home, if it is one.
    #[must_use]
    pub const fn home(self) -> Option<HomeId> {
        match self {
            Self::Home(home) => Some(home),
            Self::Club(_) | Self::Server => None,
        }
    }

    /// The club, if it is one.
    #[must_use]
    pub const fn club(self) -> Option<ClubId> {
        match self {
            Self::Club(club) => Some(club),
            Self::Home(_) | Self::Server => None,
        }
    }
}

/// Days agreed with a sitter, both ends included, by the home's clock.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Days {
    /// The first day.
    pub first: Day,
    /// The last day.
    pub last: Day,
    /// Which days of the week: bit 0 is Monday. All seven bits for every day.
    pub weekdays: u8,
}

impl Days {
    /// Every day from the first to the last.
    #[must_use]
    pub const fn every(first: Day, last: Day) -> Self {
        Self { first, last, weekdays: 0b111_1111 }
    }

    /// Whether any day between the first and the last is one of the days of the week.
    #[must_use]
    pub fn hold_any(self) -> bool {
        (0..7).map(|n| self.first.plus(n)).take_while(|day| *day <= self.last).any(|day| self.on(day))
    }

    fn on(self, day: Day) -> bool {
        self.weekdays & (1 << day.weekday()) != 0
    }

    /// Whether a moment lies in a day agreed.
    #[must_use]
    pub fn hold(self, at: Moment, zone: &Zone) -> bool {
        let day = at.day(zone);
        (self.first..=self.last).contains(&day) && self.on(day)
    }
}

/// A role in a place, with what belongs to it. Whoever invites decides it.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Part {
    scope: Scope,
    role: Role,
    person: Option<PersonId>,
    days: Option<Days>,
}

/// Why a role cannot be had so.
#[derive(Clone, Copy, PartialEq, Eq, Debug, thiserror::Error)]
pub enum PartError {
    /// The role is one of places of another kind.
    #[error("{} is no role in a place of this kind", .0.name())]
    OtherScope(Role),
    /// A sitter without days, or days that end before they begin, or without a day of the week.
    #[error("a sitter needs days: a first, a last not before it, and a day of the week")]
    NoDays,
    /// Days for a role that has none.
    #[error("{} has no days", .0.name())]
    DaysOf(Role),
    /// A sitter or an observer who is no person of the home, or a person where there is no home.
    #[error("{} must be a person of the home, if and only if it writes in one", .0.name())]
    Person(Role),
}

impl Part {
    /// A role in a place. `person` is who the account is in the home; a sitter and an observer need one, for they write
    /// only under their own name.
    ///
    /// # Errors
    /// [`PartError`] where role, place, person and days do not go together.
    pub fn new(scope: Scope, role: Role, person: Option<PersonId>, days: Option<Days>) -> Result<Self, PartError> {
        if role.scope() != scope.kind() {
            return Err(PartError::OtherScope(role));
        }
        if (role.writes_as_itself() && person.is_none()) || (scope.home().is_none() && person.is_some()) {
            return Err(PartError::Person(role));
        }
        match (role.has_days(), days) {
            (true, Some(days)) if days.first <= days.last && days.weekdays & 0b111_1111 != 0 => {}
            (true, _) => return Err(PartError::NoDays),
            (false, Some(_)) => return Err(PartError::DaysOf(role)),
            (false, None) => {}
        }
        Ok(Self { scope, role, person, days })
    }

    /// Where.
    #[must_use]
    pub const fn scope(&self) -> Scope {
        self.scope
    }

    /// As what.
    #[must_use]
    pub const fn role(&self) -> Role {
        self.role
    }

    /// Who the account is in the home's log.
    #[must_use]
    pub const fn person(&self) -> Option<PersonId> {
        self.person
    }

    /// On which days, for a sitter.
    #[must_use]
    pub const fn days(&self) -> Option<Days> {
        self.days
    }
}

/// A role that an account has.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Membership {
    /// Its id.
    pub id: MembershipId,
    /// Whose.
    pub account: AccountId,
    /// What.
    pub part: Part,
    /// Since when.
    pub since: Moment,
}

/// An account with the roles it has at this moment.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Who {
    /// The account.
    pub account: AccountId,
    /// Its roles that are not ended.
    pub memberships: Vec<Membership>,
}
