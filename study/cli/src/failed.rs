//! What can go wrong, in words.

/// Why a command did not come to its end.
#[derive(Debug, thiserror::Error)]
pub enum Failed {
    /// Of the tables.
    #[error(transparent)]
    Export(#[from] study_export::ExportError),
    /// Of a database of which nobody said where it is.
    #[error("where is the database? Give --database URL, or set SAYSO_DATABASE")]
    NoDatabase,
    /// Of the engine.
    #[error("the engine: {0}")]
    Engine(#[from] datafusion::error::DataFusionError),
    /// Of the answer, as it is written.
    #[error("the answer cannot be written: {0}")]
    Written(#[from] datafusion::arrow::error::ArrowError),
    /// Of whoever reads the answer.
    #[error("the answer cannot be handed on: {0}")]
    Out(std::io::Error),
    /// Of the machine.
    #[error("no threads can be had: {0}")]
    Threads(std::io::Error),
    /// Of a scheduler or an executor.
    #[cfg(feature = "cluster")]
    #[error(transparent)]
    Cluster(#[from] study_cluster::ClusterError),
    /// Of the work of others.
    #[cfg(feature = "cluster")]
    #[error("the cluster of {scheduler}: {why}\nThe scheduler and every executor must see {dir} under this path.")]
    OnCluster {
        /// Whose.
        scheduler: study_cluster::Address,
        /// Why.
        why: datafusion::error::DataFusionError,
        /// What is asked.
        dir: std::path::PathBuf,
    },
    /// Of a scheduler that does not come back.
    #[cfg(feature = "cluster")]
    #[error("the scheduler at {scheduler} was not reached, or lost, {times} times: {why}")]
    NoScheduler {
        /// Which.
        scheduler: study_cluster::Address,
        /// How often it was asked.
        times: u32,
        /// Why, the last time.
        why: datafusion::error::DataFusionError,
    },
    /// Of a folder whose whole path is not known.
    #[cfg(feature = "cluster")]
    #[error("{path}: {why}")]
    Path {
        /// Which.
        path: std::path::PathBuf,
        /// Why.
        why: std::io::Error,
    },
    /// Of a release.
    #[error(transparent)]
    Norms(#[from] study_norms::NormsFault),
    /// Of a release's files.
    #[error(transparent)]
    NormsFile(#[from] study_norms::files::FileFault),
    /// Of a file that is no release.
    #[error("{path}: {why}")]
    NoRelease {
        /// Which.
        path: std::path::PathBuf,
        /// Why.
        why: String,
    },
    /// Of a file's name.
    #[error("{path} must end in .{ending}")]
    Ending {
        /// Which.
        path: std::path::PathBuf,
        /// How it must end.
        ending: &'static str,
    },
    /// Of the program's own file, whose hash stands in a release.
    #[error("the program's own file cannot be read: {0}")]
    Program(std::io::Error),
    /// Of a table of a release.
    #[error("the table cannot be written: {0}")]
    Parquet(datafusion::parquet::errors::ParquetError),
    /// Of a list that is not of these households.
    #[error(
        "no household of these rows is in the list of those who agree: it may be of other names; nothing was spent"
    )]
    NobodyAgrees,
}
