//! The board: a grid of places, and which word lies where.

use crate::id::WordId;
use crate::reading::Language;
use borsh::{BorshDeserialize, BorshSerialize};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One place on the board; rows and columns count from 0.
#[derive(
    Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize,
)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Place {
    /// Row from the top.
    pub row: u8,
    /// Column from the left.
    pub column: u8,
}

/// A word at a place.
#[derive(Clone, Copy, PartialEq, Eq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Placed {
    /// The word.
    pub word: WordId,
    /// Row from the top.
    pub row: u8,
    /// Column from the left.
    pub column: u8,
}

/// A grid of rectangular places and the words on it. The latest layout counts.
#[derive(Clone, PartialEq, Debug, Serialize, Deserialize, BorshSerialize, BorshDeserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct BoardLayout {
    /// Rows, 1 to 20.
    pub rows: u8,
    /// Columns, 1 to 20.
    pub columns: u8,
    /// Words on it.
    pub words: Vec<Placed>,
    /// Language of the words; none where nobody chose.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub language: Option<Language>,
}

impl BoardLayout {
    /// Row and column of each word on it.
    #[must_use]
    pub fn places(&self) -> BTreeMap<WordId, (u8, u8)> {
        self.words.iter().map(|p| (p.word, (p.row, p.column))).collect()
    }
}
