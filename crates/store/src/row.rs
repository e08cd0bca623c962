//! A row of the log as it is stored, and whether its columns say what its content says.

use sayso_model::Kind;
use serde::Deserialize;
use uuid::Uuid;

/// The columns of [`Row`], in its order.
pub(crate) const COLUMNS: &str = "seq, id, household, kind, amends, content";

/// A row of the table `event`.
#[derive(Clone, PartialEq, Eq, Debug, sqlx::FromRow)]
pub(crate) struct Row {
    pub seq: i64,
    pub id: Uuid,
    pub household: Uuid,
    pub kind: String,
    pub amends: Option<Uuid>,
    /// The event as JSON: the truth. The other columns only help to find it.
    pub content: String,
}

/// What every version writes of an event; whatever else there is, is passed over.
#[derive(Deserialize)]
pub(crate) struct Envelope {
    pub id: Uuid,
    pub household: Uuid,
    body: Head,
}

#[derive(Deserialize)]
struct Head {
    kind: String,
    #[serde(default)]
    of: Option<serde_json::Value>,
}

impl Envelope {
    /// The envelope of an event as JSON, or what is wrong with it.
    pub fn of(json: &str) -> Result<Self, String> {
        serde_json::from_str(json).map_err(|e| e.to_string())
    }

    /// The kind's name, which this version may not know.
    pub fn kind(&self) -> &str {
        &self.body.kind
    }

    /// The event it amends, where it is of a kind that amends.
    pub fn amends(&self) -> Option<Uuid> {
        let amending = [Kind::Correction.name(), Kind::Withdrawal.name()].contains(&self.kind());
        self.body.of.as_ref().filter(|_| amending).and_then(|of| of.as_str()?.parse().ok())
    }
}

impl Row {
    /// What is wrong with the row, if anything: its content is no event, or a column says otherwise than it.
    pub fn fault(&self) -> Option<String> {
        let says = match Envelope::of(&self.content) {
            Ok(says) => says,
            Err(why) => return Some(format!("its content is no event: {why}")),
        };
        let differs = |column: &str| Some(format!("its column {column} says otherwise than its content"));
        if says.id != self.id {
            differs("id")
        } else if says.household != self.household {
            differs("household")
        } else if says.kind() != self.kind {
            differs("kind")
        } else if says.amends() != self.amends && (Kind::named(&self.kind).is_some() || says.amends().is_some()) {
            // A kind of a later version may amend in a way this one does not know.
            differs("amends")
        } else {
            None
        }
    }
}
