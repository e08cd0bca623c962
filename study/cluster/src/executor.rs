//! An executor: works on parts of plans and keeps what it hands on in a folder of its own.

use crate::address::{Address, host, reached_as};
use crate::error::ClusterError;
use crate::files::Looking;
use ballista_core::registry::BallistaFunctionRegistry;
use ballista_executor::executor_process::{ExecutorProcessConfig, start_executor_process};
use ballista_executor::health::ExecutorHealth;
use std::net::{IpAddr, SocketAddr, TcpListener};
use std::path::{Path, PathBuf};
use std::sync::Arc;
use std::time::{Duration, Instant};
use study_cohort::aggregates;
use tempfile::TempDir;
use tokio::net::TcpStream;

/// How often an executor says that it is there, in seconds. It ends itself when nobody heard it five times.
pub(crate) const HEARTBEAT_S: u64 = 2;

/// How long it waits for a scheduler that is being started, in seconds.
const PATIENCE_S: u64 = 30;

/// How an executor runs.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Executor {
    /// For whom.
    pub scheduler: Address,
    /// Where it listens.
    pub bind: IpAddr,
    /// Port of what it hands on; 0: any that is free.
    pub data_port: u16,
    /// Port of orders to it; 0: any that is free.
    pub order_port: u16,
    /// Under which name or number the others reach it, where that is not `bind`.
    pub advertise: Option<String>,
    /// Parts that it works on at a time.
    pub threads: usize,
    /// Folder in which the folder of what it hands on is made; none: where temporary files lie.
    pub work: Option<PathBuf>,
}

impl Executor {
    /// Runs until the process is told to end; `ready` hears the folder of what is handed on, once the scheduler knows of it. The
    /// folder goes with it.
    ///
    /// # Errors
    /// [`ClusterError`].
    pub async fn run(self, ready: impl FnOnce(&Path)) -> Result<(), ClusterError> {
        let advertise = reached_as(self.bind, self.advertise)?;
        let work = private_folder(self.work.as_deref());
        let work = work.map_err(ClusterError::Work)?;
        reached(&self.scheduler).await?;
        let health = ExecutorHealth::new();
        let (port, grpc_port) = ports(self.bind, [self.data_port, self.order_port])?;
        let mut functions = BallistaFunctionRegistry::default();
        functions.aggregate_functions.extend(aggregates().into_iter().map(|one| (one.name().to_owned(), one)));
        let process = start_executor_process(Arc::new(ExecutorProcessConfig {
            bind_host: host(self.bind),
            external_host: Some(advertise.clone()),
            port,
            grpc_port,
            scheduler_host: self.scheduler.host.clone(),
            scheduler_port: self.scheduler.port,
            vcores: self.threads.max(1),
            work_dir: Some(work.path().to_string_lossy().into_owned()),
            executor_heartbeat_interval_seconds: HEARTBEAT_S,
            override_function_registry: Some(Arc::new(functions)),
            override_execution_engine: Some(Arc::new(Looking::new(advertise.clone()))),
            health: health.clone(),
            ..ExecutorProcessConfig::default()
        }));
        let known = async {
            while !health.is_ready() {
                tokio::time::sleep(Duration::from_millis(50)).await;
            }
            ready(work.path());
            std::future::pending().await
        };
        tokio::select! {
            ended = process => ended?,
            never = known => never,
        }
        if health.is_ready() { Ok(()) } else { Err(ClusterError::Left(self.scheduler)) }
    }
}

/// A folder that nobody else on this machine can look into.
fn private_folder(within: Option<&Path>) -> std::io::Result<TempDir> {
    let mut made = tempfile::Builder::new();
    made.prefix("study-executor-");
    #[cfg(unix)]
    made.permissions(std::os::unix::fs::PermissionsExt::from_mode(0o700));
    made.tempdir_in(within.unwrap_or(&std::env::temp_dir()))
}

/// Waits until somebody listens there.
async fn reached(scheduler: &Address) -> Result<(), ClusterError> {
    let begin = Instant::now();
    let mut told = false;
    loop {
        let why = match TcpStream::connect((scheduler.host.trim_matches(['[', ']']), scheduler.port)).await {
            Ok(_) => return Ok(()),
            Err(why) => why,
        };
        if begin.elapsed() >= Duration::from_secs(PATIENCE_S) {
            return Err(ClusterError::Unreached { scheduler: scheduler.clone(), seconds: PATIENCE_S, why });
        }
        if !told {
            log::warn!("no scheduler is reached at {scheduler} yet ({why}); it is tried for {PATIENCE_S} s");
            told = true;
        }
        tokio::time::sleep(Duration::from_millis(200)).await;
    }
}

/// The ports, those of 0 being free ones. The engine takes none that is open already, so between here and there another might come.
fn ports(bind: IpAddr, [data, order]: [u16; 2]) -> Result<(u16, u16), ClusterError> {
    let free = |port: u16| {
        let address = SocketAddr::new(bind, port);
        let taken = TcpListener::bind(address).and_then(|at| Ok((at.local_addr()?.port(), at)));
        taken.map_err(|why| ClusterError::Bind { address, why })
    };
    // Both are held until both are known.
    let (data, order) = (free(data)?, free(order)?);
    Ok((data.0, order.0))
}
