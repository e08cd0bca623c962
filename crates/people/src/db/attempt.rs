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
