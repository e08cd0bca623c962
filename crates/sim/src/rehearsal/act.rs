//! What a person does in a rehearsal, and how it is written in an address.

use super::thing::Thing;
use std::fmt::Write as _;

/// Most acts of one rehearsal.
const MOST_ACTS: usize = 400;

/// One thing that a person does.
#[derive(Clone, Copy, PartialEq, Eq, Hash, Debug)]
pub enum Does {
    /// Presses a button and says its word.
    Show(Thing),
    /// Gives a thing.
    Give(Thing),
    /// Offers a thing in view, and begins to wait.
    Offer(Thing),
    /// Holds out two things, one on each side, and waits which is chosen.
    Two,
    /// Says the word again, or points.
    Again,
    /// Answers a press with "not now".
    NotNow,
    /// Answers a press with "not now", and gives something else.
    Instead(Thing),
    /// Fetches the things and keeps them at hand.
    Ready,
    /// Makes the buttons softer.
    Softer,
    /// Closes windows and doors.
    Quiet,
    /// Calls or lures the animal.
    Call,
    /// Stands in its way.
    Block,
    /// Steps away and leaves it in peace.
    Back,
    /// Ends.
    End,
}

impl Does {
    /// Whether it asks something of the animal.
    #[must_use]
    pub const fn asks(self) -> bool {
        matches!(self, Self::Show(_) | Self::Offer(_) | Self::Two | Self::Again | Self::Call | Self::Block)
    }

    /// The thing it is about.
    #[must_use]
    pub const fn thing(self) -> Option<Thing> {
        match self {
            Self::Show(thing) | Self::Give(thing) | Self::Offer(thing) | Self::Instead(thing) => Some(thing),
            _ => None,
        }
    }

    /// Its name, for messages.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Show(_) => "show",
            Self::Give(_) => "give",
            Self::Offer(_) => "offer",
            Self::Two => "two",
            Self::Again => "again",
            Self::NotNow => "not-now",
            Self::Instead(_) => "instead",
            Self::Ready => "ready",
            Self::Softer => "softer",
            Self::Quiet => "quiet",
            Self::Call => "call",
            Self::Block => "block",
            Self::Back => "back",
            Self::End => "end",
        }
    }

    const fn letter(self) -> char {
        match self {
            Self::Show(_) => 's',
            Self::Give(_) => 'g',
            Self::Offer(_) => 'o',
            Self::Two => 't',
            Self::Again => 'a',
            Self::NotNow => 'n',
            Self::Instead(_) => 'i',
            Self::Ready => 'r',
            Self::Softer => 'f',
            Self::Quiet => 'q',
            Self::Call => 'c',
            Self::Block => 'b',
            Self::Back => 'w',
            Self::End => 'e',
        }
    }

    fn read(text: &str) -> Option<Self> {
        let mut letters = text.chars();
        let letter = letters.next()?;
        let place = letters.as_str();
        let thing = || place.parse::<usize>().ok().filter(|_| place.len() == 1).and_then(Thing::at);
        match letter {
            's' => thing().map(Self::Show),
            'g' => thing().map(Self::Give),
            'o' => thing().map(Self::Offer),
            'i' => thing().map(Self::Instead),
            _ if !place.is_empty() => None,
            't' => Some(Self::Two),
            'a' => Some(Self::Again),
            'n' => Some(Self::NotNow),
            'r' => Some(Self::Ready),
            'f' => Some(Self::Softer),
            'q' => Some(Self::Quiet),
            'c' => Some(Self::Call),
            'b' => Some(Self::Block),
            'w' => Some(Self::Back),
            'e' => Some(Self::End),
            _ => None,
        }
    }
}

/// What a person does, and when.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub struct Act {
    /// Milliseconds since the rehearsal began.
    pub at_ms: u32,
    /// What.
    pub does: Does,
}

/// Why acts cannot be read.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[non_exhaustive]
pub enum ActsError {
    /// More than a rehearsal takes.
    #[error("{found} acts, more than {MOST_ACTS}")]
    TooMany {
        /// How many there are.
        found: usize,
    },
    /// None of the acts.
    #[error(
        "{item:?} is no act; a letter, the place of a thing where it has one, a full stop, milliseconds, as in s0.1200"
    )]
    NoAct {
        /// What was found.
        item: String,
    },
    /// Earlier than the one before it, or after the end of the exercise.
    #[error("{item:?} comes before the act before it, or after {most_ms} ms")]
    OutOfTime {
        /// What was found.
        item: String,
        /// The longest of the exercise.
        most_ms: u32,
    },
}

/// Reads acts as [`written`] writes them; an empty text is none.
///
/// # Errors
/// [`ActsError`].
pub fn read(text: &str, most_ms: u32) -> Result<Vec<Act>, ActsError> {
    if text.is_empty() {
        return Ok(Vec::new());
    }
    let found = text.split('_').count();
    if found > MOST_ACTS {
        return Err(ActsError::TooMany { found });
    }
    let mut acts: Vec<Act> = Vec::with_capacity(found);
    for item in text.split('_') {
        let short = || item.chars().take(20).collect::<String>();
        let read = || {
            let (does, at) = item.split_once('.')?;
            Some(Act { at_ms: at.parse().ok()?, does: Does::read(does)? })
        };
        let act = read().ok_or_else(|| ActsError::NoAct { item: short() })?;
        if act.at_ms > most_ms || acts.last().is_some_and(|last| last.at_ms > act.at_ms) {
            return Err(ActsError::OutOfTime { item: short(), most_ms });
        }
        acts.push(act);
    }
    Ok(acts)
}

/// Acts as an address carries them: `s0.1200_g0.2100_e.60000`.
#[must_use]
pub fn written(acts: &[Act]) -> String {
    let mut text = String::new();
    for act in acts {
        if !text.is_empty() {
            text.push('_');
        }
        text.push(act.does.letter());
        // Writing to a String cannot fail.
        if let Some(thing) = act.does.thing() {
            let _ = write!(text, "{}", thing.place());
        }
        let _ = write!(text, ".{}", act.at_ms);
    }
    text
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_again_and_the_rest_refused() {
        let acts = [
            Act { at_ms: 1200, does: Does::Show(Thing::Ball) },
            Act { at_ms: 1200, does: Does::Give(Thing::Ball) },
            Act { at_ms: 9000, does: Does::Back },
        ];
        assert_eq!(written(&acts), "s1.1200_g1.1200_w.9000");
        assert_eq!(read(&written(&acts), 10_000).unwrap(), acts);
        assert_eq!(read("", 10_000).unwrap(), []);
        for wrong in ["s.1", "s4.1", "e0.1", "s0", "s0.-1", "x.1", "s00.1", "_", "s\u{e9}.1"] {
            assert!(matches!(read(wrong, 10_000), Err(ActsError::NoAct { .. })), "{wrong}");
        }
        for late in ["e.10001", "w.5_w.4"] {
            assert!(matches!(read(late, 10_000), Err(ActsError::OutOfTime { .. })), "{late}");
        }
        let many = vec!["w.1"; MOST_ACTS + 1].join("_");
        assert_eq!(read(&many, 10_000), Err(ActsError::TooMany { found: MOST_ACTS + 1 }));
    }
}
