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

impl std::str::FromStr for ScoreScale {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        match text {
            "names" => Ok(Self::Names),
            "steps" => Ok(Self::Steps),
            "numbers" => Ok(Self::Numbers),
            _ => Err(format!("\"{text}\" is none of names, steps, numbers")),
        }
    }
}
