//! What can go wrong, in words.

/// Why a command did not come to its end.
#[derive(Debug, thiserror::Error)]
pub enum Failed {
    /// Of the tables.
    #[error(transparent)]
    Export(#[from] study_export::ExportError),
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
}
