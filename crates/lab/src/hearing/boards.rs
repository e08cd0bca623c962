//! Boards made from a seed, that hear sound in which nothing is pressed.

use super::scenes::signal::RATE;
use super::scenes::{Button, Home, board};
use crate::error::{LabError, told};
use sayso_listen::{Clip, Enrolled, ListenError, Pace, Speeds, Weights};
use sayso_sim::Chance;
use serde::{Deserialize, Serialize};
use std::sync::Arc;

/// Speeds to listen for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, clap::ValueEnum)]
#[serde(rename_all = "snake_case")]
pub enum Range {
    /// 90 to 108 %.
    Wide,
    /// 94 to 104 %.
    Usual,
    /// One per cent on either side of each clip's own, which is drawn from 97.5 to 103 %.
    Narrow,
}

impl Range {
    /// The speeds for a clip; `own` is its button's.
    fn around(self, own: f64) -> Speeds {
        match self {
            Self::Wide => Speeds::WIDE,
            Self::Usual => Speeds::USUAL,
            Self::Narrow => Speeds::around(own, Speeds::LEAST_WIDTH),
        }
    }

    /// A button's clip, to be listened for at them.
    pub(crate) fn clip(self, button: &Button, own: f64) -> Result<Clip, ListenError> {
        let clip = Clip::from_samples(button.word.clone(), button.clip.clone(), RATE as u32)?;
        Ok(clip.at_speeds(self.around(own)))
    }
}

/// Boards that hear everything: words and home.
pub(crate) const BOARDS: [(u16, Home); 3] = [(4, Home::Flat), (12, Home::House), (30, Home::Flat)];

/// One of them, ready to hear.
pub(crate) struct Board {
    pub(crate) buttons: Vec<Button>,
    pub(crate) enrolled: Arc<Enrolled>,
}

/// All of them, their recordings following from the seed.
pub(crate) fn boards(seed: u64, speeds: Range, weights: &Weights) -> Result<Vec<Board>, LabError> {
    let one = |(i, (words, home)): (usize, &(u16, Home))| {
        let buttons = board(seed.wrapping_add(1_000 * (i as u64 + 1)), *home, *words);
        let mut c = Chance::new(seed, 50 + i as u64);
        let clips: Result<Vec<Clip>, _> = buttons.iter().map(|b| speeds.clip(b, c.between(0.975, 1.03))).collect();
        let enrolled = Enrolled::with_weights(&clips.map_err(told)?, Pace::File, weights.clone());
        Ok(Board { buttons, enrolled: Arc::new(enrolled.map_err(told)?) })
    };
    BOARDS.iter().enumerate().map(one).collect()
}
