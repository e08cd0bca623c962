//! How things are shown: which picture they have, and in which order words stand.

use crate::cards::{BoardLayout, Picture, PictureCard, PictureOf, WordCard};
use crate::id::AnimalId;
use crate::story::Story;
use std::collections::BTreeMap;

impl Story {
    /// Active words taught to one animal, by their place on the board; words off the board last, by what they say.
    #[must_use]
    pub fn words_by_place(&self, animal: AnimalId) -> Vec<&WordCard> {
        let places = self.board().map(BoardLayout::places).unwrap_or_default();
        let mut words = self.words_of(animal);
        words.sort_by_key(|w| places.get(&w.word).copied().unwrap_or((u8::MAX, u8::MAX)));
        words
    }

    /// The pictures that things have now.
    #[must_use]
    pub fn pictures(&self) -> BTreeMap<PictureOf, &Picture> {
        let all = self.cards(|c: &PictureCard| c.shows);
        all.into_iter().filter_map(|(of, card)| Some((of, card.picture.as_ref()?))).collect()
    }

    /// The picture of a thing; a word without one of its own shows what is given for it, and a thing without one the word
    /// that asks for it.
    #[must_use]
    pub fn picture_of(&self, of: PictureOf) -> Option<&Picture> {
        let own = |of| self.newest_card(|c: &PictureCard| c.shows == of)?.picture.as_ref();
        let given = || match of {
            PictureOf::Word { word } => {
                let reward = self.newest_card(|c: &WordCard| c.word == word)?.reward?;
                own(PictureOf::Reward { reward })
            }
            PictureOf::Reward { reward } => {
                let mut asking = self.words().into_values().filter(|w| w.active && w.reward == Some(reward));
                asking.find_map(|w| own(PictureOf::Word { word: w.word }))
            }
            PictureOf::Animal { .. } => None,
        };
        own(of).or_else(given)
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use crate::cards::MediaType;
    use crate::event::Source;
    use crate::event::{Body, Event};
    use crate::id::{EventId, HomeId, RewardId, WordId};
    use crate::text::Label;
    use crate::time::{Moment, Zone};
    use uuid::Uuid;

    #[test]
    fn a_word_shows_its_own_newest_picture_else_that_of_what_is_given() {
        let (word, reward) = (WordId(Uuid::from_u128(1)), RewardId(Uuid::from_u128(2)));
        let at = |s: f64| "2026-01-01T08:00:00Z".parse::<Moment>().unwrap().plus_seconds(s);
        let event = |n: u8, body: Body| Event {
            id: EventId(Uuid::from_u128(u128::from(n) + 10)),
            home: HomeId(Uuid::from_u128(9)),
            animal: None,
            person: None,
            happened_at: at(f64::from(n)),
            recorded_at: at(f64::from(n)),
            zone: Zone::utc(),
            source: Source::Tap,
            body,
        };
        let taken =
            |sha256: &str| Some(Picture { sha256: sha256.to_owned(), media_type: MediaType::Png, width: 9, height: 9 });
        let shows = |shows, picture| Body::from(PictureCard { shows, picture });
        let of = PictureOf::Word { word };
        let says = Label::new("ball").unwrap();
        let mut events = vec![
            event(1, WordCard { reward: Some(reward), ..WordCard::new(word, says) }.into()),
            event(2, shows(PictureOf::Reward { reward }, taken("given"))),
        ];
        let shown = |events: &[Event]| {
            let story = Story::from_events(events.iter().cloned());
            story.picture_of(of).map(|p| p.sha256.clone())
        };
        assert_eq!(shown(&events[..1]), None);
        assert_eq!(shown(&events).as_deref(), Some("given"));
        events.extend([event(3, shows(of, taken("own"))), event(4, shows(of, taken("later")))]);
        assert_eq!(shown(&events).as_deref(), Some("later"));
        events.reverse();
        assert_eq!(shown(&events).as_deref(), Some("later"), "in any order of arrival");
        events.push(event(5, shows(of, None)));
        assert_eq!(shown(&events).as_deref(), Some("given"), "its own was removed");
    }
}
