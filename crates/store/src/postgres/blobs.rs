//! A home's recordings and pictures. Two homes with the same bytes each have their own.

use crate::clips::{self, ClipHash};
use crate::damage::ClipFault;
use crate::error::StoreError;
use crate::postgres::home::{HomeLog, WRITE_PATIENCE};

impl HomeLog {
    /// Stores a recording; one that is there already is left alone, a damaged one is written anew.
    pub async fn put_clip(&self, bytes: &[u8]) -> Result<ClipHash, StoreError> {
        let hash = clips::sized(bytes)?;
        if matches!(self.clip(&hash).await, Ok(Some(_))) {
            return Ok(hash);
        }
        let in_place = || {
            sqlx::query(
                "INSERT INTO sayso.blob (home, hash, bytes) VALUES ($1, decode($2, 'hex'), $3) \
                 ON CONFLICT (home, hash) DO UPDATE SET bytes = excluded.bytes",
            )
            .bind(self.home.0)
            .bind(hash.as_str())
            .bind(bytes)
        };
        self.put(WRITE_PATIENCE, in_place).await?;
        Ok(hash)
    }

    /// A recording, compared with its name.
    pub async fn clip(&self, hash: &ClipHash) -> Result<Option<Vec<u8>>, StoreError> {
        let named = || {
            sqlx::query_as("SELECT bytes FROM sayso.blob WHERE home = $1 AND hash = decode($2, 'hex')")
                .bind(self.home.0)
                .bind(hash.as_str())
        };
        let bytes = self.found(named).await?.pop().map(|(bytes,): (Vec<u8>,)| bytes);
        match bytes {
            Some(bytes) if ClipHash::of(&bytes) != *hash => {
                Err(StoreError::BadClip { sha256: hash.to_string(), what: ClipFault::OtherContent })
            }
            sound => Ok(sound),
        }
    }

    /// The names of all of them.
    pub async fn clips(&self) -> Result<Vec<ClipHash>, StoreError> {
        let all = || {
            sqlx::query_as("SELECT encode(hash, 'hex') FROM sayso.blob WHERE home = $1 ORDER BY hash").bind(self.home.0)
        };
        let names: Vec<(String,)> = self.found(all).await?;
        names.iter().map(|(name,)| name.parse()).collect()
    }
}
