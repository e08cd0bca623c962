//! What has served its time is deleted.

use super::People;
use super::desk::REMEMBERED_DAYS;
use crate::error::Error;
use sayso_model::Moment;

impl People {
    /// Deletes what has served its time; how many rows. Any process may do so at any time.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn sweep(&self, now: Moment) -> Result<u64, Error> {
        let past = |days: f64| now.plus_seconds(-days * 86_400.0).millis();
        let kept_days = f64::from(self.lifetimes.kept_days);
        let idle = now.plus_seconds(-self.lifetimes.idle_s - kept_days * 86_400.0).millis();
        let mut deleted = 0;
        for (sql, before) in [
            ("DELETE FROM people.ceremony WHERE expires_at < $1", now.millis()),
            ("DELETE FROM people.errand WHERE expires_at < $1", past(1.0)),
            ("DELETE FROM people.attempt WHERE expires_at < $1", now.millis()),
            ("DELETE FROM people.link WHERE expires_at < $1", past(1.0)),
            ("DELETE FROM people.invitation WHERE LEAST(expires_at, used_at, ended_at) < $1", past(kept_days)),
            ("DELETE FROM people.session WHERE LEAST(expires_at, ended_at) < $1", past(kept_days)),
            ("DELETE FROM people.session WHERE seen_at < $1", idle),
            ("DELETE FROM people.parted WHERE at < $1", past(kept_days)),
            ("DELETE FROM people.notebook WHERE key IS NULL AND expires_at < $1", past(1.0)),
            ("DELETE FROM people.notebook WHERE ended_at < $1", past(f64::from(self.lifetimes.looks_days))),
            ("DELETE FROM people.tiding WHERE at < $1", past(2.0 * kept_days)),
            ("DELETE FROM people.tidings_stop WHERE at < $1", past(f64::from(self.lifetimes.stop_days))),
            ("DELETE FROM people.aside WHERE until < $1", past(REMEMBERED_DAYS)),
            ("DELETE FROM people.look WHERE last_at < $1", past(f64::from(self.lifetimes.looks_days))),
            ("DELETE FROM people.look_left WHERE at < $1", past(f64::from(self.lifetimes.looks_days))),
        ] {
            deleted += sqlx::query(sql).bind(before).execute(&self.pool).await?.rows_affected();
        }
        // What a coach kept about a home that shares nothing any more.
        for sql in [
            "DELETE FROM people.spoken k WHERE NOT EXISTS
                 (SELECT 1 FROM people.witness w WHERE w.home = k.home AND w.ended_at IS NULL)",
            "DELETE FROM people.aside k WHERE NOT EXISTS
                 (SELECT 1 FROM people.witness w WHERE w.home = k.home AND w.ended_at IS NULL)",
            "DELETE FROM people.mark k WHERE NOT EXISTS
                 (SELECT 1 FROM people.witness w WHERE w.home = k.home AND w.ended_at IS NULL)",
        ] {
            deleted += sqlx::query(sql).execute(&self.pool).await?.rows_affected();
        }
        Ok(deleted)
    }
}
