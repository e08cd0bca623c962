//! A row of the log as it is stored, and whether its columns say what its content says.

use crate::damage::{DamagedRow, RowDamage};
use sayso_model::{Event, EventId, Kind};
use serde::Deserialize;
use uuid::Uuid;

/// A row of the table `event`.
#[derive(Clone, PartialEq, Eq, Debug, sqlx::FromRow)]
pub(crate) struct Row {
    pub seq: i64,
    pub id: Uuid,
    #[sqlx(rename = "household")]
    pub home: Uuid,
    pub kind: String,
    pub amends: Option<Uuid>,
    /// The event as JSON: the truth. The other columns only help to find it.
    pub content: String,
}

/// What every version writes of an event; whatever else there is, is passed over.
#[derive(Deserialize)]
pub(crate) struct Envelope {
    pub id: Uuid,
    #[serde(alias = "household")]
    pub home: Uuid,
    body: Head,
}

#[derive(Deserialize)]
struct Head {
    kind: String,
    #[serde(default)]
    of: Option<serde_json::Value>,
}

impl Envelope {
    /// The envelope of an event as JSON; none where it is no event.
    pub fn of(json: &str) -> Option<Self> {
        serde_json::from_str(json).ok()
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
    pub fn fault(&self) -> Option<RowDamage> {
        let Some(says) = Envelope::of(&self.content) else { return Some(RowDamage::NoEvent) };
        let differs = |column: &'static str| Some(RowDamage::Column(column));
        if says.id != self.id {
            differs("id")
        } else if says.home != self.home {
            differs("home")
        } else if says.kind() != self.kind {
            differs("kind")
        } else if says.amends() != self.amends && (Kind::named(&self.kind).is_some() || says.amends().is_some()) {
            // A kind of a later version may amend in a way this one does not know.
            differs("amends")
        } else {
            None
        }
    }

    /// The event, as far as this version understands it: none where a later version wrote it.
    ///
    /// # Errors
    /// What is wrong, naming the row, where it is no event at all or its columns contradict it.
    pub fn event(&self) -> Result<Option<Event>, DamagedRow> {
        match serde_json::from_str(&self.content) {
            Ok(event) => Ok(Some(event)),
            Err(_) => self.named_fault().map_or(Ok(None), Err),
        }
    }

    /// What is wrong with the row, with its name.
    pub fn named_fault(&self) -> Option<DamagedRow> {
        self.fault().map(|what| DamagedRow { id: EventId(self.id), seq: self.seq, what })
    }
}
