//! Quantities that carry their unit. Each is finite and in range from the moment it exists:
//! the constructor, and therefore deserialisation, refuses anything else.

use borsh::io::{Error, ErrorKind, Read, Result, Write};
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A number outside the range its unit allows.
#[derive(Clone, PartialEq, Debug, thiserror::Error)]
#[error("{unit} must be a number from {low} to {high}, not {found}")]
#[non_exhaustive]
pub struct OutOfRange {
    /// Name of the unit.
    pub unit: &'static str,
    /// Smallest allowed value.
    pub low: f64,
    /// Largest allowed value.
    pub high: f64,
    /// What was given.
    pub found: f64,
}

macro_rules! unit {
    ($($(#[$doc:meta])* $name:ident, $unit:literal, $low:literal ..= $high:literal);+ $(;)?) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, PartialEq, PartialOrd, Debug, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[cfg_attr(feature = "schema", schemars(with = "f64"))]
        #[serde(try_from = "f64", into = "f64")]
        pub struct $name(f64);

        impl $name {
            /// The value, checked.
            ///
            /// # Errors
            /// [`OutOfRange`] where the value is not finite or not in the unit's range.
            pub fn new(value: f64) -> std::result::Result<Self, OutOfRange> {
                if value.is_finite() && ($low..=$high).contains(&value) {
                    Ok(Self(value))
                } else {
                    Err(OutOfRange { unit: $unit, low: $low, high: $high, found: value })
                }
            }

            /// The bare number, in this unit.
            #[must_use]
            pub const fn get(self) -> f64 {
                self.0
            }

            /// The nearest allowed value; not-a-number becomes the lowest.
            #[must_use]
            pub const fn clamped(value: f64) -> Self {
                if value.is_nan() { Self($low) } else { Self(value.clamp($low, $high)) }
            }
        }

        impl TryFrom<f64> for $name {
            type Error = OutOfRange;
            fn try_from(value: f64) -> std::result::Result<Self, OutOfRange> {
                Self::new(value)
            }
        }

        impl From<$name> for f64 {
            fn from(value: $name) -> f64 {
                value.0
            }
        }

        impl BorshSerialize for $name {
            fn serialize<W: Write>(&self, to: &mut W) -> Result<()> {
                BorshSerialize::serialize(&self.0, to)
            }
        }

        impl BorshDeserialize for $name {
            fn deserialize_reader<R: Read>(from: &mut R) -> Result<Self> {
                Self::new(f64::deserialize_reader(from)?).map_err(|e| Error::new(ErrorKind::InvalidData, e))
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                self.0.fmt(f)
            }
        }
    )+};
}

unit! {
    /// A length of time in seconds, up to a day.
    Seconds, "seconds", 0.0..=86_400.0;
    /// Energy in kilocalories.
    Kcal, "kcal", 0.0..=20_000.0;
    /// Food in grams.
    Grams, "grams", 0.0..=20_000.0;
    /// Body weight in kilograms.
    Kilograms, "kilograms", 0.005..=1_500.0;
    /// A probability or degree of certainty.
    Probability, "a probability", 0.0..=1.0;
    /// A playback speed against the recording: 1 is as recorded.
    Ratio, "a speed ratio", 0.25..=4.0;
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn out_of_range_numbers_are_refused_when_made_and_when_read() {
        assert!(Seconds::new(-1.0).is_err());
        assert!(Seconds::new(f64::NAN).is_err());
        assert!(Kcal::new(f64::INFINITY).is_err());
        assert!(serde_json::from_str::<Probability>("1.5").is_err());
        assert_eq!(serde_json::from_str::<Probability>("0.5").ok(), Probability::new(0.5).ok());
    }

    #[test]
    fn clamping_never_yields_a_value_out_of_range() {
        assert_eq!(Probability::clamped(f64::NAN).get(), 0.0);
        assert_eq!(Probability::clamped(7.0).get(), 1.0);
    }
}
