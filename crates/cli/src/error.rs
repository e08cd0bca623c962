//! What can go wrong at the command line, in words.

/// An error of a command.
#[derive(Debug, thiserror::Error)]
pub enum CliError {
    /// The notebook.
    #[error(transparent)]
    Store(#[from] sayso_store::StoreError),
    /// Opening a notebook.
    #[error(transparent)]
    Notebook(#[from] sayso_notebook::NoNotebook),
    /// Writing into it.
    #[error(transparent)]
    NotKept(#[from] sayso_notebook::NotKept),
    /// A name that stands for nothing in it.
    #[error(transparent)]
    NotNamed(#[from] sayso_notebook::NotNamed),
    /// Serving.
    #[error(transparent)]
    Serve(#[from] sayso_web::ServeError),
    /// The paired devices.
    #[error(transparent)]
    Paired(#[from] sayso_web::access::PairedError),
    /// Printing.
    #[error(transparent)]
    Paper(#[from] sayso_paper::PaperError),
    /// Files and terminals.
    #[error("{0}")]
    Io(#[from] std::io::Error),
    /// A file, and what is wrong with it.
    #[error("{}: {source}", path.display())]
    File {
        /// Which file.
        path: std::path::PathBuf,
        /// What is wrong.
        source: std::io::Error,
    },
    /// Anything said in words.
    #[error("{0}")]
    Said(String),
}

impl CliError {
    /// An error in words.
    pub fn said(what: impl Into<String>) -> Self {
        Self::Said(what.into())
    }
}
