//! How long things hold, and how often one may try. Decided here in one place; `docs/decisions/people.md` says why.

/// Spans in seconds, and counts.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Lifetimes {
    /// A session that nobody uses ends, seconds.
    pub idle_s: f64,
    /// A session ends, seconds.
    pub session_s: f64,
    /// A sign-in is fresh, seconds.
    pub fresh_s: f64,
    /// A link sent by e-mail, seconds.
    pub link_s: f64,
    /// An invitation, seconds.
    pub invitation_s: f64,
    /// The code by which a notebook at home is linked, seconds.
    pub notebook_code_s: f64,
    /// A linked notebook that is not heard of is unlinked, days.
    pub notebook_idle_days: u32,
    /// An invitation of a new keeper to a home that lost its way in waits before it opens, seconds.
    pub rescue_waits_s: f64,
    /// A passkey being registered or asked for, seconds.
    pub ceremony_s: f64,
    /// The window in which attempts are counted, seconds.
    pub window_s: f64,
    /// Attempts in a window for one account or e-mail address.
    pub most_for_one: u32,
    /// Letters in a window to one e-mail address, asked for by all who did not show that it is theirs.
    pub most_for_one_by_all: u32,
    /// Attempts in a window from one network address.
    pub most_from_one: u32,
    /// Days that looks are kept, and the hash of an unlinked notebook's key.
    pub looks_days: u32,
    /// Days that used and expired links, invitations and sessions stay, and that a home left for whoever belonged to it: so that someone
    /// can be told what became of them.
    pub kept_days: u32,
    /// Days that the link in a letter stops further letters.
    pub stop_days: u32,
    /// Days that backups of the server hold what was erased: told to people who leave.
    pub backup_days: u32,
}

impl Default for Lifetimes {
    fn default() -> Self {
        const DAY: f64 = 86_400.0;
        Self {
            idle_s: 14.0 * DAY,
            session_s: 90.0 * DAY,
            fresh_s: 15.0 * 60.0,
            link_s: 10.0 * 60.0,
            invitation_s: 7.0 * DAY,
            notebook_code_s: 60.0 * 60.0,
            // A summer away, and more: what waits at home is not lost by it.
            notebook_idle_days: 180,
            // Long enough for whoever is still in to see it and refuse.
            rescue_waits_s: 2.0 * DAY,
            ceremony_s: 5.0 * 60.0,
            window_s: 15.0 * 60.0,
            most_for_one: 5,
            most_for_one_by_all: 20,
            // A whole course may join by one network.
            most_from_one: 100,
            looks_days: 400,
            kept_days: 30,
            stop_days: 400,
            backup_days: 30,
        }
    }
}

/// How many recovery codes make a set.
pub const RECOVERY_CODES: usize = 8;
