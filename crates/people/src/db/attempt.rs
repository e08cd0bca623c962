//! How often something was tried, counted in the database so that several processes count together.

use super::People;
use crate::error::Error;
use crate::secret::SecretHash;
use sayso_model::Moment;

impl People {
    /// Counts an attempt for one thing (an account, an e-mail address) and from one network address, known or not.
    ///
    /// # Errors
    /// [`Error::TooOften`] where either was tried too often in this window.
    pub(super) async fn attempt(&self, way: &str, what: Option<&str>, from: &str, now: Moment) -> Result<(), Error> {
        let most = &self.lifetimes;
        let from_one = self.count(&format!("{way} from {from}"), now).await? > i64::from(most.most_from_one);
        let for_one = match what {
            Some(what) => self.count(&format!("{way} for {what}"), now).await? > i64::from(most.most_for_one),
            None => false,
        };
        if from_one || for_one { Err(Error::TooOften) } else { Ok(()) }
    }

    /// Counts an attempt for one thing by one who asks: so many from one network address, and by whoever knows nothing of it
    /// only so many from all of them together, so that many strangers cannot bury it in letters. `known` is whoever showed that it
    /// is theirs; strangers do not hold them off.
    ///
    /// # Errors
    /// [`Error::TooOften`].
    pub(super) async fn attempt_by(
        &self,
        way: &str,
        what: &str,
        from: &str,
        known: bool,
        now: Moment,
    ) -> Result<(), Error> {
        let most = &self.lifetimes;
        let from_one = self.count(&format!("{way} from {from}"), now).await? > i64::from(most.most_from_one);
        let both = format!("{way} for {what} from {from}");
        if self.count(&both, now).await? > i64::from(most.most_for_one) || from_one {
            // Not counted for the others: one who asks and asks does not hold them off.
            return Err(Error::TooOften);
        }
        let all = self.count(&format!("{way} for {what}"), now).await?;
        if all > i64::from(most.most_for_one_by_all) && !known { Err(Error::TooOften) } else { Ok(()) }
    }

    async fn count(&self, what: &str, now: Moment) -> Result<i64, Error> {
        let window = now.plus_seconds(self.lifetimes.window_s).millis() - now.millis();
        let begins = now.millis() - now.millis().rem_euclid(window.max(1));
        let times = sqlx::query_scalar(
            "INSERT INTO people.attempt AS a (what, begins, times, expires_at) VALUES ($1, $2, 1, $3)
             ON CONFLICT (what, begins) DO UPDATE SET times = a.times + 1 RETURNING times",
        )
        .bind(SecretHash::of(what).bytes().as_slice())
        .bind(begins)
        .bind(begins + window)
        .fetch_one(&self.pool)
        .await?;
        Ok(times)
    }
}
