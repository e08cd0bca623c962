//! People and permission: accounts, sessions, roles, consent. Knows no pages; every page and address asks it. Denies unless
//! the one table ([`table`]) grants.
//!
//! The pure part (roles, capabilities, [`may`](may::may), [`needs`](needs::needs)) takes time and secrets as arguments. What must
//! last stands in PostgreSQL, in a schema of its own, so that several processes of a server are one.
//!
//! Two features, both on unless left out: `passkeys` (their cryptography) and `mail` (sending it). Whoever only asks what a home agreed
//! to needs neither.

pub mod capability;
pub mod closing;
pub mod db;
pub mod email;
pub mod error;
pub mod id;
pub mod letter;
pub mod lifetimes;
#[cfg(feature = "mail")]
pub mod mail;
pub mod may;
pub mod membership;
pub mod needs;
pub mod role;
pub mod secret;
pub mod table;
pub mod tidings;

pub use capability::Capability;
pub use closing::{Closed, Closings, NoClosings};
#[cfg(feature = "passkeys")]
pub use db::Passkeys;
pub use db::{People, Session};
pub use email::Email;
pub use error::Error;
pub use id::{CeremonyId, InvitationId, MembershipId, NotebookId, SessionId};
pub use lifetimes::Lifetimes;
pub use may::{Allowed, Denied, HomeNow, Sees};
pub use membership::{Days, Membership, Part, PartError, Scope, Who};
pub use role::Role;
pub use secret::{OsSecrets, Secret, SecretHash, Secrets};
