//! Time zones by name. Their rules come from the time zone database bundled with `jiff`, never from the machine.

use super::error::TimeError;
use jiff::tz::{TimeZone, TimeZoneDatabase};
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::collections::HashMap;
use std::fmt;
use std::hash::{Hash, Hasher};
use std::sync::{OnceLock, PoisonError, RwLock};

/// A time zone by its IANA name. Equal zones are one in memory, so a clone costs nothing and rules are at hand.
#[derive(Clone, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(with = "String"))]
#[serde(try_from = "String", into = "String")]
pub struct Zone(&'static Known);

struct Known {
    name: String,
    rules: TimeZone,
}

fn database() -> &'static TimeZoneDatabase {
    static BUNDLED: OnceLock<TimeZoneDatabase> = OnceLock::new();
    BUNDLED.get_or_init(TimeZoneDatabase::bundled)
}

/// Zones met so far by the database's own spelling: at most as many as it has.
static MET: OnceLock<RwLock<HashMap<&'static str, Zone>>> = OnceLock::new();

impl Zone {
    /// The zone of that name.
    ///
    /// # Errors
    /// [`TimeError::NotAZone`] where the database has no such name.
    pub fn new(name: &str) -> Result<Self, TimeError> {
        if let Some(met) = Self::met(name) {
            return Ok(met);
        }
        let rules = database().get(name).map_err(|_| TimeError::NotAZone(name.to_owned()))?;
        // The database answers whatever the case; keep its own spelling so that equal zones are equal.
        let name = rules.iana_name().unwrap_or(name).to_owned();
        Ok(Self::meet(&name, rules))
    }

    /// Coordinated universal time.
    #[must_use]
    pub fn utc() -> Self {
        Self::met("UTC").unwrap_or_else(|| Self::meet("UTC", TimeZone::UTC))
    }

    fn met(name: &str) -> Option<Self> {
        MET.get_or_init(RwLock::default).read().unwrap_or_else(PoisonError::into_inner).get(name).cloned()
    }

    fn meet(name: &str, rules: TimeZone) -> Self {
        let mut met = MET.get_or_init(RwLock::default).write().unwrap_or_else(PoisonError::into_inner);
        if let Some(zone) = met.get(name) {
            return zone.clone();
        }
        let known: &'static Known = Box::leak(Box::new(Known { name: name.to_owned(), rules }));
        met.insert(&known.name, Self(known));
        Self(known)
    }

    /// The IANA name.
    #[must_use]
    pub fn name(&self) -> &str {
        &self.0.name
    }

    /// Every name the database has, for pages to offer.
    #[must_use]
    pub fn all() -> Vec<String> {
        database().available().map(|name| name.as_str().to_owned()).collect()
    }

    pub(super) const fn rules(&self) -> &'static TimeZone {
        &self.0.rules
    }
}

impl PartialEq for Zone {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.0, other.0)
    }
}

impl Eq for Zone {}

impl PartialOrd for Zone {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Zone {
    fn cmp(&self, other: &Self) -> Ordering {
        self.name().cmp(other.name())
    }
}

impl Hash for Zone {
    fn hash<H: Hasher>(&self, state: &mut H) {
        self.name().hash(state);
    }
}

impl fmt::Debug for Zone {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("Zone").field(&self.name()).finish()
    }
}

impl TryFrom<String> for Zone {
    type Error = TimeError;
    fn try_from(s: String) -> Result<Self, TimeError> {
        Self::new(&s)
    }
}

impl From<Zone> for String {
    fn from(zone: Zone) -> Self {
        zone.name().to_owned()
    }
}
