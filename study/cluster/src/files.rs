//! Whether a machine sees the tables that a plan reads, asked before any of it is read. The engine itself takes a file that is not
//! there for a table without rows when it plans.

use async_trait::async_trait;
use ballista_core::JobId;
use ballista_executor::execution_engine::{DefaultExecutionEngine, ExecutionEngine, QueryStageExecutor};
use datafusion::catalog::Session;
use datafusion::common::tree_node::TreeNodeRecursion;
use datafusion::common::{Result, exec_err};
use datafusion::datasource::listing::ListingTable;
use datafusion::datasource::physical_plan::FileScanConfig;
use datafusion::datasource::source::DataSourceExec;
use datafusion::datasource::source_as_provider;
use datafusion::execution::context::QueryPlanner;
use datafusion::logical_expr::LogicalPlan;
use datafusion::object_store::{self, local::LocalFileSystem};
use datafusion::physical_plan::ExecutionPlan;
use datafusion::physical_planner::{DefaultPhysicalPlanner, PhysicalPlanner};
use datafusion::prelude::SessionConfig;
use std::path::PathBuf;
use std::sync::Arc;

/// The engine's own way of working, after a look at the files.
pub(crate) struct Looking {
    engine: DefaultExecutionEngine,
    /// Under which name others know this executor.
    called: String,
}

impl Looking {
    pub(crate) fn new(called: String) -> Self {
        Self { engine: DefaultExecutionEngine::new(), called }
    }
}

impl ExecutionEngine for Looking {
    fn create_query_stage_exec(
        &self,
        job: JobId,
        stage: usize,
        task: usize,
        outputs: Vec<usize>,
        plan: Arc<dyn ExecutionPlan>,
        work: &str,
        config: &SessionConfig,
    ) -> Result<Arc<dyn QueryStageExecutor>> {
        seen(&plan, &self.called)?;
        self.engine.create_query_stage_exec(job, stage, task, outputs, plan, work, config)
    }
}

/// The scheduler's planner: the engine's own, after a look at the files.
#[derive(Debug)]
pub(crate) struct LookingPlanner;

#[async_trait]
impl QueryPlanner for LookingPlanner {
    async fn create_physical_plan(&self, plan: &LogicalPlan, session: &dyn Session) -> Result<Arc<dyn ExecutionPlan>> {
        plan.apply_with_subqueries(|node| {
            let LogicalPlan::TableScan(scan) = node else { return Ok(TreeNodeRecursion::Continue) };
            let table = source_as_provider(&scan.source)?;
            let Some(files) = table.downcast_ref::<ListingTable>() else { return Ok(TreeNodeRecursion::Continue) };
            for url in files.table_paths() {
                looked_at(url.prefix(), "the scheduler")?;
            }
            Ok(TreeNodeRecursion::Continue)
        })?;
        DefaultPhysicalPlanner::default().create_physical_plan(plan, session).await
    }
}

/// Where a file lies and how many bytes it has here.
fn looked_at(file: &object_store::path::Path, who: &str) -> Result<(PathBuf, u64)> {
    let path = LocalFileSystem::new().path_to_filesystem(file)?;
    match std::fs::metadata(&path) {
        Ok(here) => Ok((path, here.len())),
        Err(why) => exec_err!("{who} does not see {}: {why}", path.display()),
    }
}

/// Whether every file of a plan lies here, as long as it was where the plan was made.
fn seen(plan: &Arc<dyn ExecutionPlan>, called: &str) -> Result<()> {
    let scan = plan.downcast_ref::<DataSourceExec>().map(DataSourceExec::data_source);
    if let Some(scan) = scan.and_then(|source| source.downcast_ref::<FileScanConfig>()) {
        for file in scan.file_groups.iter().flat_map(|group| group.files()) {
            let (path, here) = looked_at(&file.object_meta.location, &format!("executor {called}"))?;
            if here != file.object_meta.size {
                let there = file.object_meta.size;
                return exec_err!("{} has {here} bytes at executor {called}, {there} at the scheduler", path.display());
            }
        }
    }
    plan.children().into_iter().try_for_each(|child| seen(child, called))
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use datafusion::dataframe::DataFrameWriteOptions;
    use datafusion::prelude::{ParquetReadOptions, SessionContext};
    use study_cohort::{AgeBand, Animal, animals_batch};

    #[tokio::test]
    async fn a_file_that_is_elsewhere_or_another_is_told_before_it_is_read() {
        let dir = tempfile::tempdir().unwrap();
        let path = dir.path().join("animals and more.parquet");
        let name = path.to_str().unwrap();
        let animal = Animal { household: 0, animal: 0, species: "dog", age_band: AgeBand::Unknown, until_s: 9 };
        let context = SessionContext::new();
        let table = context.read_batch(animals_batch(0, &[animal]).unwrap()).unwrap();
        let options = DataFrameWriteOptions::new().with_single_file_output(true);
        table.write_parquet(name, options, None).await.unwrap();
        let table = context.read_parquet(name, ParquetReadOptions::default()).await.unwrap();
        let logical = table.logical_plan().clone();
        let plan = LookingPlanner.create_physical_plan(&logical, &context.state()).await.unwrap();
        assert!(seen(&plan, "b").is_ok());
        std::fs::write(&path, "another").unwrap();
        assert!(seen(&plan, "b").unwrap_err().to_string().contains("has 7 bytes at executor b"));
        std::fs::remove_file(&path).unwrap();
        let told = seen(&plan, "b").unwrap_err().to_string();
        assert!(told.contains("executor b does not see") && told.contains(name), "{told}");
        // Of a scheduler that never saw it there would be an answer from no rows.
        let table = LookingPlanner.create_physical_plan(&logical, &context.state()).await;
        let told = table.map(|_| ()).unwrap_err().to_string();
        assert!(told.contains("the scheduler does not see") && told.contains(name), "{told}");
    }
}
