//! Asking a cluster: a context whose plans run there.

use crate::address::Address;
use ballista_core::extension::{SessionConfigExt, SessionStateExt};
use datafusion::common::{DataFusionError, Result};
use datafusion::execution::{FunctionRegistry, SessionState, SessionStateBuilder};
use datafusion::prelude::{SessionConfig, SessionContext};
use study_cohort::aggregates;

/// A context whose plans run on a cluster. Nothing is connected until something is asked.
///
/// # Errors
/// Where the engine cannot be set so.
pub fn context(scheduler: &Address, config: SessionConfig) -> Result<SessionContext> {
    let state = SessionStateBuilder::new().with_default_features().with_config(on_cluster(config)).build();
    let state = knowing(state.upgrade_for_ballista(format!("http://{scheduler}"))?)?;
    Ok(SessionContext::new_with_state(state))
}

/// The same with the aggregates of the study, by whose names they stand in plans.
pub(crate) fn knowing(mut state: SessionState) -> Result<SessionState> {
    for aggregate in aggregates() {
        state.register_udaf(aggregate)?;
    }
    Ok(state)
}

/// What a plan on a cluster needs beside. No join is turned round here either: the engine would gather the smaller side at every
/// machine and by its own estimates take the right one for it, and so would its planning anew after each stage.
pub(crate) fn on_cluster(config: SessionConfig) -> SessionConfig {
    config
        .upgrade_for_ballista()
        .with_ballista_adaptive_query_planner(false)
        .with_ballista_broadcast_join_threshold_bytes(0)
        .with_ballista_broadcast_join_threshold_rows(0)
        .set_bool("datafusion.optimizer.prefer_hash_join", true)
        .set_u64("datafusion.optimizer.hash_join_single_partition_threshold", 0)
        .set_u64("datafusion.optimizer.hash_join_single_partition_threshold_rows", 0)
        // A machine that fell silent is noticed soon.
        .set_u64("ballista.client.grpc_http2_keepalive_interval_seconds", 10)
        .set_u64("ballista.client.io_retry_wait_time_ms", 500)
}

/// Why no answer came.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Trouble {
    /// The scheduler, or an executor with the answer, was not reached: it may be asked anew.
    Lost,
    /// The work itself failed: it would again.
    Failed,
}

/// What stood in the way. The engine hands failures of the work on as text, under the job's name; all else is of the connection.
#[must_use]
pub fn trouble(why: &DataFusionError) -> Trouble {
    let text = why.to_string();
    let of_work = text.contains("Job ") && text.contains(" failed: ");
    let of_plan = matches!(why.find_root(), DataFusionError::Plan(_) | DataFusionError::Internal(_));
    if of_work || of_plan { Trouble::Failed } else { Trouble::Lost }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_failed_by_itself_is_not_asked_anew() {
        let engine = |text: &str| DataFusionError::Execution(text.to_owned());
        assert_eq!(trouble(&engine("Job 7 failed: executor b does not see /tables/a.parquet")), Trouble::Failed);
        assert_eq!(trouble(&DataFusionError::Plan("no such column".to_owned())), Trouble::Failed);
        assert_eq!(trouble(&engine("Stream closed without job completing")), Trouble::Lost);
        assert_eq!(trouble(&engine("status: Unavailable, transport error")), Trouble::Lost);
    }
}
