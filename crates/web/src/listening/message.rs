//! What a listening page and the notebook say to each other, besides the samples.

use sayso_model::{EventId, Moment};
use serde::{Deserialize, Serialize};
use uuid::Uuid;

/// From the page. Samples come as binary messages: the position of the first frame since the stream began (64 bits,
/// little-endian), then signed 16-bit samples of one channel.
#[derive(Debug, Deserialize)]
#[serde(rename_all = "snake_case", deny_unknown_fields)]
pub enum FromPage {
    /// A stream begins, or goes on after the connection was lost.
    Begin(Begin),
    /// Whether the sound around unsure presses is kept from now on.
    KeepUnsure(bool),
    /// The stream ends; what is still to be decided is decided.
    End,
}

/// A stream.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Begin {
    /// Named by the page; the same when it goes on.
    pub stream: Uuid,
    /// When its first frame sounded, by the page's clock.
    pub began: Moment,
    /// Frames a second.
    pub rate: u32,
    /// Whether only the animal in the address uses the board.
    #[serde(default)]
    pub only: bool,
    /// Whether the sound around unsure presses is kept.
    #[serde(default)]
    pub keep_unsure: bool,
    /// Whether to listen here even where another page listens; that one then stops.
    #[serde(default)]
    pub take: bool,
}

/// To the page.
#[derive(Debug, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum ToPage {
    /// Send samples.
    Go {
        /// From this position, where the notebook still has the stream; from the first the page has, where not.
        from: Option<u64>,
        /// What the buttons say that are listened for.
        words: Vec<String>,
        /// What buttons say whose recording has no sound.
        left_out: Vec<String>,
    },
    /// Samples before this position need not be sent again.
    Upto(u64),
    /// A press.
    Heard(HeardPress),
    /// Another page listens to this board, since then.
    Busy(Moment),
    /// Another page took over.
    Taken,
    /// The stream is over; all of it was heard.
    Ended,
    /// Presses cannot be stored just now, and why; they wait. None once they are stored.
    Trouble(Option<String>),
    /// The stream cannot go on, and why.
    Wrong(String),
}

/// A press as it is told to the page.
#[derive(Debug, Serialize)]
pub struct HeardPress {
    /// Its event; none where it was in the log before.
    pub id: Option<EventId>,
    /// What the button says.
    pub says: String,
    /// When its sound began.
    pub at: Moment,
    /// Probability that it was this.
    pub confidence: f64,
    /// `new`, `known` (in the log before) or `tapped` (somebody tapped it too, so it counts once).
    pub state: &'static str,
    /// Whether its sound is kept for judging.
    pub kept: bool,
}
