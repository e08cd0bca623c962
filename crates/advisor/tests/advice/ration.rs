//! What is left to give today: the day's energy and what a card allows, whichever is less.

use sayso_advisor::ration::ration;
use sayso_model::{
    AnimalCard, AnimalId, Body, Event, EventId, Feed, HomeCard, HomeId, Kcal, Label, Moment, RewardCard, RewardId,
    Source, Species, Story, Zone,
};
use uuid::Uuid;

fn pieces(most_per_day: Option<u16>, fed: &[u16]) -> Option<u32> {
    let (home, animal, reward) =
        (HomeId(Uuid::from_u128(1)), AnimalId(Uuid::from_u128(2)), RewardId(Uuid::from_u128(3)));
    let at: Moment = "2026-03-01T12:00:00Z".parse().unwrap();
    let mut n = 10;
    let mut event = |body: Body| {
        n += 1;
        Event {
            id: EventId(Uuid::from_u128(n)),
            home,
            animal: matches!(body, Body::Feed(_)).then_some(animal),
            person: None,
            happened_at: at,
            zone: Zone::utc(),
            recorded_at: at,
            source: Source::Tap,
            body,
        }
    };
    let card = AnimalCard {
        day_kcal: Some(Kcal::new(1000.0).unwrap()),
        ..AnimalCard::new(animal, Label::new("Pip").unwrap(), Species::Dog)
    };
    let sprig: RewardCard = serde_json::from_value(serde_json::json!({
        "reward": reward, "name": "carrot", "reward_kind": "food", "kcal_per_piece": 2.0, "most_per_day": most_per_day
    }))
    .unwrap();
    let mut events = vec![
        event(HomeCard { name: Label::new("home").unwrap(), zone: Zone::utc() }.into()),
        event(card.clone().into()),
        event(sprig.into()),
    ];
    for n in fed {
        let kcal = Kcal::new(f64::from(*n) * 2.0).unwrap();
        let feed = Feed { reward: Some(reward), food: None, pieces: Some(*n), grams: None, kcal, session: None };
        events.push(event(feed.into()));
    }
    ration(&Story::from_events(events), &card, at).rewards[0].pieces
}

#[test]
fn what_its_card_allows_in_a_day_bounds_what_energy_leaves() {
    // A tenth of 1,000 kcal is 50 pieces of 2.
    assert_eq!(pieces(None, &[]), Some(50));
    assert_eq!(pieces(Some(12), &[]), Some(12));
    assert_eq!(pieces(Some(12), &[2, 1]), Some(9));
    assert_eq!(pieces(Some(12), &[20]), Some(0));
    assert_eq!(pieces(Some(60), &[2]), Some(48));
}
