//! Plans on many machines.

use crate::args::{Ask, Executor, Scheduler};
use crate::ask::asked;
use crate::failed::Failed;
use datafusion::arrow::array::RecordBatch;
use datafusion::prelude::SessionConfig;
use std::io::Write;
use std::net::IpAddr;
use std::time::Duration;
use study_cluster::{Address, Trouble, context, open_to_others, trouble, warn_on_stderr};
use study_export::Dataset;

/// The longest time between two attempts, in seconds.
const LONGEST_WAIT_S: u64 = 16;

/// Runs a scheduler.
pub fn scheduler(order: Scheduler) -> Result<(), Failed> {
    warn_on_stderr();
    warn_if_open(order.bind.ip());
    let scheduler =
        study_cluster::Scheduler { bind: order.bind, advertise: order.advertise, lost_after_s: order.lost_after };
    Ok(runtime()?.block_on(scheduler.run(|address| say(&format!("scheduler: {address}"))))?)
}

/// Runs an executor.
pub fn executor(order: Executor) -> Result<(), Failed> {
    warn_on_stderr();
    warn_if_open(order.bind);
    let executor = study_cluster::Executor {
        scheduler: order.scheduler,
        bind: order.bind,
        data_port: order.data_port,
        order_port: order.order_port,
        advertise: order.advertise,
        threads: order.threads,
        work: order.work,
    };
    Ok(runtime()?.block_on(executor.run(|work| say(&format!("executor: {}", work.display()))))?)
}

/// The answer of a cluster. Where the scheduler is lost it is asked anew, a little later each time.
pub async fn answer(order: &Ask, scheduler: &Address, config: SessionConfig) -> Result<Vec<RecordBatch>, Failed> {
    // Others are in other folders.
    let dir = order.dir.canonicalize().map_err(|why| Failed::Path { path: order.dir.clone(), why })?;
    let tables = Dataset::open(&dir)?;
    // Made here, where the tables are seen as well; a plan knows no scheduler's session and can be sent to the next.
    let plan = asked(&context(scheduler, config)?, order.question, &tables).await?;
    let again = order.cluster.again;
    let mut asked = 0;
    loop {
        let why = match plan.clone().collect().await {
            Ok(answer) => return Ok(answer),
            Err(why) => why,
        };
        if trouble(&why) == Trouble::Failed {
            return Err(Failed::OnCluster { scheduler: scheduler.clone(), why, dir });
        }
        if asked == again {
            return Err(Failed::NoScheduler { scheduler: scheduler.clone(), times: asked + 1, why });
        }
        let wait = LONGEST_WAIT_S.min(1 << asked.min(10));
        asked += 1;
        eprintln!(
            "study: the scheduler at {scheduler} is not reached or was lost ({why}); asked anew in {wait} s ({asked} of {again})"
        );
        tokio::time::sleep(Duration::from_secs(wait)).await;
    }
}

fn runtime() -> Result<tokio::runtime::Runtime, Failed> {
    tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(Failed::Threads)
}

/// For whoever started it: where it is. That nobody listens is no reason to end.
fn say(line: &str) {
    let mut out = std::io::stdout().lock();
    let _ = writeln!(out, "{line}").and_then(|()| out.flush());
}

fn warn_if_open(bind: IpAddr) {
    if open_to_others(bind) {
        eprintln!(
            "study: whoever reaches {bind} can read the tables and have work done here; nobody is asked who they are. Only in a \
             network of one's own."
        );
    }
}
