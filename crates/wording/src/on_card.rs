//! What a word's card says before anybody has written on it, and the same in the reader's language for as long as nobody has. See
//! `docs/decisions/what-stays-as-it-is-said.md`.

use crate::{Locale, say};
use sayso_model::{Language, Note, RewardCard, Story, WordCard};

/// The three texts of a word's card.
#[derive(Clone, PartialEq, Eq, Default, Debug)]
pub struct OnCard {
    /// What it asks for or tells.
    pub means: Option<String>,
    /// How everyone answers it.
    pub answer: Option<String>,
    /// What everyone says and does where the answer is "not now".
    pub not_now: Option<String>,
}

/// What a card with this label for this thing says by itself.
#[must_use]
pub fn proposed(l: &Locale, reward: Option<&RewardCard>, says: &str) -> OnCard {
    OnCard {
        means: reward.map(|r| say!(l, words::asks_for, name = &r.name)),
        answer: Some(say!(l, words::give, says = says)),
        not_now: Some(not_now(l, &said(l))),
    }
}

/// Everyone says the same to the animal: the words of whoever made the card, in whatever language the rest is read.
fn not_now(l: &Locale, said: &str) -> String {
    say!(l, words::not_now, said = said)
}

fn said(l: &Locale) -> String {
    say!(l, words::not_now_said)
}

/// The texts of a card as whoever reads them does: what the program proposed, and nobody edited, in their language; what a
/// person wrote as it is.
#[must_use]
pub fn read(l: &Locale, story: &Story, card: &WordCard) -> OnCard {
    let text = |note: &Option<Note>| note.as_ref().map(ToString::to_string);
    let kept = OnCard { means: text(&card.means), answer: text(&card.answer), not_now: text(&card.not_now) };
    if kept == OnCard::default() {
        return kept;
    }
    let reward = card.reward.and_then(|r| story.rewards().get(&r).copied());
    let own = proposed(l, reward, card.says.as_str());
    // Mostly a card is read in the language that it was made in.
    if kept == own {
        return kept;
    }
    let texts = Language::ALL.map(|language| {
        let of = Locale::of(language);
        (proposed(&of, reward, card.says.as_str()), said(&of))
    });
    let shown = |kept: &Option<Note>, text: fn(&OnCard) -> &Option<String>, own: &dyn Fn(&str) -> Option<String>| {
        let kept = kept.as_ref()?.as_str();
        let from = texts.iter().find(|(proposed, _)| text(proposed).as_deref() == Some(kept));
        Some(from.and_then(|(_, said)| own(said)).unwrap_or_else(|| kept.to_owned()))
    };
    OnCard {
        means: shown(&card.means, |t| &t.means, &|_| own.means.clone()),
        answer: shown(&card.answer, |t| &t.answer, &|_| own.answer.clone()),
        not_now: shown(&card.not_now, |t| &t.not_now, &|said| Some(not_now(l, said))),
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;
    use sayso_model::{Body, Event, EventId, HomeId, Label, Moment, RewardId, RewardKind, Source, WordId, Zone};
    use uuid::Uuid;

    fn home(card: &WordCard, reward: &RewardCard) -> Story {
        let at: Moment = "2026-03-01T10:00:00Z".parse().unwrap();
        let event = |n: u128, body: Body| Event {
            id: EventId(Uuid::from_u128(n)),
            home: HomeId(Uuid::from_u128(1)),
            animal: None,
            person: None,
            happened_at: at,
            zone: Zone::new("Europe/Berlin").unwrap(),
            recorded_at: at,
            source: Source::Tap,
            body,
        };
        Story::from_events(vec![event(2, reward.clone().into()), event(3, card.clone().into())])
    }

    #[test]
    fn what_nobody_edited_is_read_in_the_readers_language_and_what_is_said_to_the_animal_stays() {
        let reward = RewardCard::new(RewardId(Uuid::from_u128(7)), Label::new("Käse").unwrap(), RewardKind::Food);
        let german = proposed(&Locale::of(Language::De), Some(&reward), "Käse");
        let note = |text: &Option<String>| text.as_ref().map(|t| Note::new(t).unwrap());
        let mut card = WordCard {
            word: WordId(Uuid::from_u128(8)),
            says: Label::new("Käse").unwrap(),
            means: note(&german.means),
            answer: note(&german.answer),
            not_now: note(&german.not_now),
            reward: Some(reward.reward),
            closing: false,
            animals: Vec::new(),
            active: true,
        };
        let own = |text: &str| Some(text.to_owned());
        let english = read(&Locale::ENGLISH, &home(&card, &reward), &card);
        assert_eq!(english.means, own("asks for: Käse"));
        assert_eq!(english.answer, own("Give what “Käse” asks for."));
        assert_eq!(english.not_now, own("“Jetzt nicht”, once and calmly; offer something else."));
        assert_eq!(read(&Locale::of(Language::De), &home(&card, &reward), &card), german);
        // A person's words stay, and so does what was proposed for a thing that has another name by now.
        card.answer = Note::new("Gib ein Stück.").ok();
        let renamed = RewardCard { name: Label::new("Gouda").unwrap(), ..reward.clone() };
        let english = read(&Locale::ENGLISH, &home(&card, &renamed), &card);
        assert_eq!((english.answer, english.means), (own("Gib ein Stück."), german.means));
    }
}
