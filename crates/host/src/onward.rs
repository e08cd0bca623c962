//! The own page on which one goes on.

use sayso_web::pages::who::own_path;
use serde::{Deserialize, Serialize};

/// As a form or an address asks for it.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Onward {
    to: Option<String>,
}

impl Onward {
    /// Its path; the start where another site's is asked for, or none.
    pub fn path(self) -> String {
        own_path(self.to)
    }
}

/// As a script is told it.
#[derive(Serialize)]
pub struct Led {
    to: String,
}

impl Led {
    /// To what was asked for, where it is an own page.
    pub fn to(asked: Option<String>) -> Self {
        Self { to: own_path(asked) }
    }
}
