//! The scheduler: makes a physical plan of a question, deals its parts to executors, deals them anew where one is lost.

use crate::address::{host, reached_as};
use crate::asking::knowing;
use crate::error::ClusterError;
use crate::executor::HEARTBEAT_S;
use crate::files::LookingPlanner;
use ballista_core::utils::default_session_builder;
use ballista_scheduler::cluster::BallistaCluster;
use ballista_scheduler::config::{SchedulerConfig, TaskDistributionPolicy};
use ballista_scheduler::scheduler_process::{create_scheduler, start_grpc_service_with_listener};
use datafusion::common::Result as EngineResult;
use datafusion::execution::{SessionState, SessionStateBuilder};
use datafusion::prelude::SessionConfig;
use datafusion_proto::protobuf::{LogicalPlanNode, PhysicalPlanNode};
use std::net::SocketAddr;
use std::sync::Arc;
use tokio::net::TcpListener;

/// How a scheduler runs.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Scheduler {
    /// Where it listens; port 0: any that is free.
    pub bind: SocketAddr,
    /// Under which name or number executors reach it, where that is not `bind`.
    pub advertise: Option<String>,
    /// Seconds after which an executor that was not heard of is given up and its work dealt anew.
    pub lost_after_s: u64,
}

impl Scheduler {
    /// Runs until the process ends; `ready` hears where it listens.
    ///
    /// # Errors
    /// [`ClusterError`].
    pub async fn run(self, ready: impl FnOnce(SocketAddr)) -> Result<(), ClusterError> {
        let least = 2 * HEARTBEAT_S;
        if self.lost_after_s <= least {
            return Err(ClusterError::TooSoon { least, heartbeat: HEARTBEAT_S });
        }
        let advertise = reached_as(self.bind.ip(), self.advertise)?;
        let failed = |why| ClusterError::Bind { address: self.bind, why };
        let listener = TcpListener::bind(self.bind).await.map_err(failed)?;
        let address = listener.local_addr().map_err(failed)?;
        let config = Arc::new(config(address, advertise, self.lost_after_s));
        config.validate()?;
        let cluster = BallistaCluster::new_from_config(&config).await?;
        let scheduler = create_scheduler::<LogicalPlanNode, PhysicalPlanNode>(cluster, config).await?;
        ready(address);
        Ok(start_grpc_service_with_listener(listener, scheduler).await?)
    }
}

fn config(address: SocketAddr, advertise: String, lost_after_s: u64) -> SchedulerConfig {
    SchedulerConfig {
        bind_host: host(address.ip()),
        bind_port: address.port(),
        external_host: advertise,
        executor_timeout_seconds: lost_after_s,
        expire_dead_executor_interval_seconds: HEARTBEAT_S,
        no_executors_grace_period_seconds: lost_after_s,
        task_distribution: TaskDistributionPolicy::RoundRobin,
        override_session_builder: Some(Arc::new(session)),
        ..SchedulerConfig::default()
    }
}

/// What plans are made with.
fn session(config: SessionConfig) -> EngineResult<SessionState> {
    let state = SessionStateBuilder::new_from_existing(default_session_builder(config)?);
    knowing(state.with_query_planner(Arc::new(LookingPlanner)).build())
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::asking::on_cluster;
    use datafusion::physical_plan::ExecutionPlan;
    use datafusion::physical_plan::joins::{HashJoinExec, PartitionMode};
    use datafusion::prelude::SessionContext;
    use study_cohort::{AgeBand, Animal, Kind, Question, Row, WordKind, animals_batch, ask, events_batch};

    /// Of each join of tables, whether animals are on its left and both sides are dealt.
    fn joins(plan: &Arc<dyn ExecutionPlan>, found: &mut Vec<bool>) {
        if let Some(join) = plan.downcast_ref::<HashJoinExec>() {
            let animals = join.left().schema().column_with_name("species").is_some();
            found.push(animals && *join.partition_mode() == PartitionMode::Partitioned);
        }
        plan.children().into_iter().for_each(|child| joins(child, found));
    }

    #[tokio::test]
    async fn animals_are_on_the_building_side_of_a_plan_for_many_machines_whatever_the_sizes() {
        let context = SessionContext::new_with_state(session(on_cluster(study_cohort::config(4))).unwrap());
        let animal =
            |household| Animal { household, animal: 0, species: "dog", age_band: AgeBand::Unknown, until_s: 9 };
        let animals: Vec<Animal> = (0..200_000).map(animal).collect();
        let row = Row { word: Some((0, WordKind::ALL[0])), ..Row::new(0, 0, 0, 0, Kind::Press) };
        for question in Question::ALL {
            let events = context.read_batch(events_batch(0, &[row]).unwrap()).unwrap();
            let animals = context.read_batch(animals_batch(0, &animals).unwrap()).unwrap();
            let plan = ask(question, events, animals).unwrap().create_physical_plan().await.unwrap();
            let mut found = Vec::new();
            joins(&plan, &mut found);
            assert!(!found.is_empty() && found.into_iter().all(|holds| holds), "{}", question.name());
        }
    }
}
