//! What scores are: names, steps or numbers.

/// What the scores are.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Default)]
pub enum ScoreScale {
    /// Names without order.
    #[default]
    Names,
    /// Numbers of which only the order counts.
    Steps,
    /// Numbers whose differences count.
    Numbers,
}

/// A text that is no scale.
#[derive(Clone, PartialEq, Eq, Debug, thiserror::Error)]
#[error("\"{0}\" is none of names, steps, numbers")]
pub struct NoScale(pub String);

impl std::str::FromStr for ScoreScale {
    type Err = NoScale;

    fn from_str(text: &str) -> Result<Self, NoScale> {
        match text {
            "names" => Ok(Self::Names),
            "steps" => Ok(Self::Steps),
            "numbers" => Ok(Self::Numbers),
            _ => Err(NoScale(text.to_owned())),
        }
    }
}
