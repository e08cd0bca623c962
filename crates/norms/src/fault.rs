//! Why a release cannot be used.

/// What is wrong with a release, and where.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
pub enum ReleaseFault {
    /// More text than any release has.
    #[error("it has {bytes} bytes; a release has {most} at most")]
    Large {
        /// How long it is.
        bytes: usize,
        /// How long it may be.
        most: usize,
    },
    /// Bytes that are no text.
    #[error("it is no text in UTF-8")]
    NoText,
    /// Not JSON, or not of this form.
    #[error("{field}: {why}")]
    Form {
        /// The field, as a path from the top; `.` where it is the whole.
        field: String,
        /// Why.
        why: String,
    },
    /// A value that cannot be.
    #[error("{field} is {found}: it must be {wanted}")]
    Value {
        /// The field, as a path from the top.
        field: String,
        /// What stands there.
        found: String,
        /// What would be right.
        wanted: String,
    },
}

/// Where one is within a release while it is checked: a path from the top.
#[derive(Clone, Copy)]
pub(crate) struct At<'a> {
    above: Option<&'a At<'a>>,
    name: &'a str,
    number: Option<usize>,
}

impl<'a> At<'a> {
    pub(crate) const fn top(name: &'a str) -> Self {
        Self { above: None, name, number: None }
    }

    pub(crate) const fn field(&'a self, name: &'a str) -> Self {
        Self { above: Some(self), name, number: None }
    }

    pub(crate) const fn item(&'a self, number: usize) -> Self {
        Self { above: Some(self), name: "", number: Some(number) }
    }

    fn path(&self) -> String {
        let mut path = self.above.map(Self::path).unwrap_or_default();
        match self.number {
            Some(number) => path.push_str(&format!("[{number}]")),
            None if path.is_empty() => path.push_str(self.name),
            None => {
                path.push('.');
                path.push_str(self.name);
            }
        }
        path
    }

    /// Holds that something is so.
    pub(crate) fn must(
        &self,
        holds: bool,
        found: impl std::fmt::Display,
        wanted: impl std::fmt::Display,
    ) -> Result<(), ReleaseFault> {
        if holds {
            return Ok(());
        }
        Err(ReleaseFault::Value { field: self.path(), found: found.to_string(), wanted: wanted.to_string() })
    }

    /// Holds that a number is a share.
    pub(crate) fn share(&self, share: f64) -> Result<(), ReleaseFault> {
        self.must((0.0..=1.0).contains(&share), share, "a share, from 0 to 1")
    }

    /// Holds that a share and both ends of its interval are shares, and that it lies within.
    pub(crate) fn interval(&self, share: f64, low: f64, high: f64) -> Result<(), ReleaseFault> {
        for (name, share) in [("share", share), ("low", low), ("high", high)] {
            self.field(name).share(share)?;
        }
        let within = low <= share && share <= high;
        self.field("share").must(within, share, format!("within its interval, {low} to {high}"))
    }

    /// Holds that a text is short and plain.
    pub(crate) fn line(&self, text: &str, most: usize) -> Result<(), ReleaseFault> {
        let long = text.chars().count();
        self.must((1..=most).contains(&long), format!("{long} characters long"), format!("1 to {most}"))?;
        let plain = !text.chars().any(char::is_control) && text.trim() == text;
        self.must(plain, format!("{text:?}"), "one line without spaces at its ends")
    }
}
