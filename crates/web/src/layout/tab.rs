//! The pages of the navigation, and who finds which.

use crate::page::Page;
use sayso_model::AnimalId;
use sayso_people::Capability;
use sayso_wording::{Locale, say};

/// The program's own name, the same in every language.
pub const NAME: &str = "Sayso";

/// The pages of the navigation.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tab {
    /// What to do now and why.
    Today,
    /// The live pad.
    Board,
    /// Likes tests.
    Likes,
    /// Cards, clips, places.
    Words,
    /// What presses tell.
    Evidence,
    /// Days and trends.
    Days,
    /// Newest events, with undo.
    Log,
    /// Home and coach.
    People,
    /// Things to print.
    Sheets,
    /// Lessons for whoever teaches.
    Learn,
    /// A page outside the navigation.
    None,
}

impl Tab {
    /// Those in thumb's reach on a phone.
    pub(super) const NEAR: [Self; 4] = [Self::Today, Self::Board, Self::Words, Self::Evidence];
    /// Those behind "More" on a phone.
    pub(super) const FAR: [Self; 6] = [Self::Likes, Self::Days, Self::Log, Self::People, Self::Sheets, Self::Learn];
    /// All, as they stand in the navigation.
    pub const ALL: [Self; 10] = [
        Self::Today,
        Self::Board,
        Self::Likes,
        Self::Words,
        Self::Evidence,
        Self::Days,
        Self::Log,
        Self::People,
        Self::Sheets,
        Self::Learn,
    ];

    /// Its name on the page.
    #[must_use]
    pub fn name(self, l: &Locale) -> String {
        match self {
            Self::Today => say!(l, frame::today),
            Self::Board => say!(l, frame::board),
            Self::Likes => say!(l, frame::likes),
            Self::Words => say!(l, frame::words),
            Self::Evidence => say!(l, frame::evidence),
            Self::Days => say!(l, frame::days),
            Self::Log => say!(l, frame::log),
            Self::People => say!(l, frame::people),
            Self::Sheets => say!(l, frame::sheets),
            Self::Learn => say!(l, frame::learn),
            Self::None => NAME.to_owned(),
        }
    }

    /// Of these any opens it, on a server of many homes.
    #[must_use]
    pub const fn opened_by(self) -> &'static [Capability] {
        match self {
            Self::Today => &[Capability::SeeToday],
            Self::Board => &[Capability::Record],
            Self::Likes | Self::Words | Self::Evidence | Self::Days => &[Capability::SeeFigures],
            Self::People => &[Capability::SeePeople],
            Self::Log => &[Capability::SeeLog],
            Self::Sheets => &[Capability::SeeRules, Capability::SeeFigures],
            // Whoever has anything to do with the home.
            Self::Learn => &[
                Capability::Record,
                Capability::SeeToday,
                Capability::SeeFigures,
                Capability::SeeLog,
                Capability::HearSnippets,
                Capability::SeePeople,
            ],
            Self::None => &[],
        }
    }

    /// Whether whoever asks may open it.
    #[must_use]
    pub fn is_open(self, page: &Page) -> bool {
        self.opened_by().iter().any(|capability| page.may(*capability))
    }

    /// Where one is led who opens the home: the first page that is open; none where there is none.
    #[must_use]
    pub fn first(page: &Page) -> Option<Self> {
        Self::ALL.into_iter().find(|tab| tab.is_open(page))
    }

    /// Its address, for one animal where it is about one.
    #[must_use]
    pub fn href(self, animal: Option<AnimalId>) -> String {
        let about = |page: &str| animal.map_or_else(|| "/people".to_owned(), |l| format!("/a/{l}/{page}"));
        match self {
            Self::Today => about("today"),
            Self::Board => about("board"),
            Self::Likes => about("likes"),
            Self::Words => about("words"),
            Self::Evidence => about("evidence"),
            Self::Days => about("days"),
            Self::Log => about("log"),
            Self::People => "/people".into(),
            Self::Sheets => "/sheets".into(),
            Self::Learn => "/learn".into(),
            Self::None => "/".into(),
        }
    }
}
