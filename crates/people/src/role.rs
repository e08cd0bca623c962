//! Roles: what someone is in a home, in a club, on the server.

use serde::{Deserialize, Serialize};

/// A role, each in places of one kind.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// In a home: everything, also consent and leaving.
    Keeper,
    /// In a home: logs and sees.
    Member,
    /// In a home: logs on the days agreed, sees Today and the house rules.
    Sitter,
    /// In a home: scores without seeing what others scored.
    Observer,
    /// In a club: sees what homes share.
    Coach,
    /// In a club: who belongs to it.
    ClubKeeper,
    /// On the server: which homes and clubs it has. Never sees a home's data by this role.
    ServerKeeper,
}

/// A kind of place.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
pub enum ScopeKind {
    /// A home.
    Home,
    /// A club.
    Club,
    /// The server itself.
    Server,
}

impl Role {
    /// Every role.
    pub const ALL: [Self; 7] =
        [Self::Keeper, Self::Member, Self::Sitter, Self::Observer, Self::Coach, Self::ClubKeeper, Self::ServerKeeper];

    /// Its name in tables and documents.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Keeper => "keeper",
            Self::Member => "member",
            Self::Sitter => "sitter",
            Self::Observer => "observer",
            Self::Coach => "coach",
            Self::ClubKeeper => "club_keeper",
            Self::ServerKeeper => "server_keeper",
        }
    }

    /// The role of that name.
    #[must_use]
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|role| role.name() == name)
    }

    /// Where one has it.
    #[must_use]
    pub const fn scope(self) -> ScopeKind {
        match self {
            Self::Keeper | Self::Member | Self::Sitter | Self::Observer => ScopeKind::Home,
            Self::Coach | Self::ClubKeeper => ScopeKind::Club,
            Self::ServerKeeper => ScopeKind::Server,
        }
    }

    /// Whether it keeps its place, which must never be without such a one once it had one.
    #[must_use]
    pub const fn keeps(self) -> bool {
        matches!(self, Self::Keeper | Self::ClubKeeper | Self::ServerKeeper)
    }

    /// Whether it holds only on agreed days.
    #[must_use]
    pub const fn has_days(self) -> bool {
        matches!(self, Self::Sitter)
    }

    /// Whether it writes only under its own name in the home.
    #[must_use]
    pub const fn writes_as_itself(self) -> bool {
        matches!(self, Self::Sitter | Self::Observer)
    }

    /// Whether its looks are noted for the keepers of the home. People of the home are not watched by one another.
    #[must_use]
    pub const fn looks_are_noted(self) -> bool {
        match self {
            Self::Keeper | Self::Member => false,
            Self::Sitter | Self::Observer | Self::Coach | Self::ClubKeeper | Self::ServerKeeper => true,
        }
    }
}
