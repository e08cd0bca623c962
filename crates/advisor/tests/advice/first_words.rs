//! First words for a new home, and how its own deliveries take the place of what is usual.

use sayso_advisor::Case;
use sayso_advisor::first_words::{
    Basis, FirstWords, Liked, MEASURED_FROM, Proposed, Reason, Why, first_words, label_of,
};
use sayso_model::facts::ideas;
use sayso_model::*;
use uuid::Uuid;

const ANIMAL: AnimalId = AnimalId(Uuid::from_u128(7));

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

fn event(n: u128, at: Moment, body: impl Into<Body>) -> Event {
    let body = body.into();
    Event {
        id: EventId(Uuid::from_u128(n)),
        home: HomeId(Uuid::from_u128(1)),
        animal: matches!(body, Body::AnimalCard(_) | Body::Press(_) | Body::Delivery(_)).then_some(ANIMAL),
        person: None,
        happened_at: at,
        recorded_at: at,
        zone: Zone::new("Europe/Lisbon").unwrap(),
        source: Source::Tap,
        body,
    }
}

fn reward(n: u128, name: &str, kind: RewardKind) -> RewardCard {
    let mut card = RewardCard::new(RewardId(Uuid::from_u128(n)), Label::new(name).unwrap(), kind);
    card.kcal_per_piece = (kind == RewardKind::Food).then(|| Kcal::clamped(4.0));
    card
}

/// A new notebook: cheese, tug, belly rub and garden, and nothing tested.
fn walk() -> Vec<RewardCard> {
    vec![
        reward(11, "Cheese cube", RewardKind::Food),
        reward(12, "tug", RewardKind::Play),
        reward(13, "belly rub", RewardKind::Touch),
        reward(14, "Garden", RewardKind::Exploring),
    ]
}

fn home(weight: Option<f64>, rewards: &[RewardCard]) -> Vec<Event> {
    let begin = now().plus_seconds(-40.0 * 86_400.0);
    let mut dog = AnimalCard::new(ANIMAL, Label::new("Bo").unwrap(), Species::Dog);
    dog.weight_kg = weight.map(Kilograms::clamped);
    dog.life_stage = Some(LifeStage::NeuteredAdult);
    let mut all = vec![event(100, begin, dog)];
    all.extend(rewards.iter().enumerate().map(|(i, r)| event(200 + i as u128, begin, r.clone())));
    all
}

fn found(events: Vec<Event>) -> FirstWords {
    first_words(&Case::new(&Story::from_events(events), ANIMAL, now()), sayso_model::Language::En)
}

fn proposed<'a>(found: &'a FirstWords, says: &str) -> &'a Proposed {
    let best = found.best.as_ref().expect("a proposal");
    best.words.iter().find(|w| w.says == says).unwrap_or_else(|| panic!("{says} is not among {best:?}"))
}

#[test]
fn a_new_notebook_gets_cheese_tug_and_rub_and_never_the_garden() {
    let words = found(home(Some(20.0), &walk()));
    let mut says: Vec<&str> = words.best.as_ref().unwrap().words.iter().map(|w| w.says.as_str()).collect();
    says.sort_unstable();
    assert_eq!(says, ["cheese", "rub", "tug"]);
    let garden = words.left_out.iter().find(|l| l.says == "garden").unwrap();
    assert_eq!(garden.why, Why::Choice(Reason::NotAtBoard));
    assert!(words.alternatives.iter().all(|c| c.words.iter().all(|w| w.says != "garden")));
    for w in &words.best.as_ref().unwrap().words {
        assert_eq!((w.given.seconds_from, &w.liked), (Basis::Usual, &Liked::Untested), "a guess, and said to be one");
    }
    // Each kind takes its own time, not one time for all.
    let seconds = |says| proposed(&words, says).seconds;
    assert!(seconds("cheese") < seconds("rub") && seconds("rub") < seconds("tug"));
}

#[test]
fn a_food_for_a_little_only_gives_way_to_one_as_good() {
    for names in [["cheese", "chicken"], ["chicken", "cheese"]] {
        let mut rewards = walk();
        rewards[0].name = Label::new(names[0]).unwrap();
        rewards.push(reward(15, names[1], RewardKind::Food));
        rewards[4].kcal_per_piece = rewards[0].kcal_per_piece;
        let words = found(home(Some(20.0), &rewards));
        proposed(&words, "chicken");
        let cheese = words.left_out.iter().find(|l| l.says == "cheese").unwrap();
        assert_eq!(cheese.why, Why::Choice(Reason::AsGood { cautioned: true }), "{names:?}");
    }
}

#[test]
fn a_reward_is_proposed_under_one_label_wherever_that_is() {
    // "Rub" would sound like the tub, so the belly gives the name.
    let mut rewards = walk();
    rewards[1] = reward(12, "tub", RewardKind::Play);
    let story = Story::from_events(home(Some(20.0), &rewards));
    let case = Case::new(&story, ANIMAL, now());
    let found = first_words(&case, sayso_model::Language::En);
    let choices = found.best.iter().chain(&found.alternatives).flat_map(|c| &c.words).map(|w| (w.reward, &w.says));
    let all: Vec<_> = choices.chain(found.left_out.iter().map(|l| (l.reward, &l.says))).collect();
    assert!(all.iter().any(|(_, says)| *says == "belly"), "{all:?}");
    for (id, says) in all {
        let card = rewards.iter().find(|r| r.reward == id).unwrap();
        assert_eq!(*says, label_of(&case, card, sayso_model::Language::En));
    }
}

#[test]
fn what_the_card_says_goes_before_what_is_usual_for_the_kind() {
    let mut rewards = walk();
    rewards[3].at_board = Some(true);
    rewards[3].seconds_to_deliver = Some(Seconds::clamped(6.0));
    rewards[1].at_board = Some(false);
    rewards[2].says = Some(Label::new("tickle").unwrap());
    let words = found(home(Some(20.0), &rewards));
    assert_eq!((proposed(&words, "garden").seconds, proposed(&words, "garden").given.seconds_from), (6.0, Basis::Card));
    assert!(words.left_out.iter().any(|l| l.says == "tug" && l.why == Why::Choice(Reason::NotAtBoard)));
    assert_eq!(proposed(&words, "tickle").kind, RewardKind::Touch);
}

#[test]
fn food_without_an_allowance_is_left_out_with_that_reason() {
    let words = found(home(None, &walk()));
    assert!(words.left_out.iter().any(|l| l.says == "cheese" && l.why == Why::NoAllowance));
    proposed(&words, "tug");
    let mut rewards = walk();
    rewards[0].name = Label::new("grapes").unwrap();
    let words = found(home(None, &rewards));
    let grapes = words.left_out.iter().find(|l| l.says == "grapes").unwrap();
    assert!(matches!(&grapes.why, Why::Never(why) if why.iter().any(|c| c.fact.id == "grapes")), "{grapes:?}");
}

/// Tug given for a word that was taken off since, so many times a day, 6 s after the press.
fn given(rewards: &[RewardCard], days: u32, a_day: u32) -> Vec<Event> {
    let mut all = home(Some(20.0), rewards);
    let word = WordId(Uuid::from_u128(50));
    let card = WordCard {
        word,
        says: Label::new("rope").unwrap(),
        means: None,
        answer: None,
        not_now: None,
        reward: Some(RewardId(Uuid::from_u128(12))),
        closing: false,
        animals: Vec::new(),
        active: false,
    };
    all.push(event(300, now().plus_seconds(-39.0 * 86_400.0), card));
    for i in 0..days * a_day {
        let at = now().plus_seconds(-86_400.0 * f64::from(1 + i / a_day) + 60.0 * f64::from(i % a_day));
        let (press, answer) = (1000 + 2 * u128::from(i), 1001 + 2 * u128::from(i));
        let by = PressedBy::Unknown;
        let pressed = Press {
            word,
            by,
            certainty: Probability::clamped(1.0),
            accident: Accident::No,
            place: None,
            speed: None,
            stream: None,
            session: None,
        };
        all.push(event(press, at, pressed));
        let answers = Some(EventId(Uuid::from_u128(press)));
        let delivery = Delivery {
            answers,
            word,
            answer: Answer::Given,
            alternative: None,
            delay_s: Some(Seconds::clamped(6.0)),
            then: None,
            then_word: None,
            session: None,
        };
        all.push(event(answer, at.plus_seconds(6.0), delivery));
    }
    all
}

#[test]
fn the_homes_own_deliveries_replace_the_guess_from_five_on() {
    let few = found(given(&walk(), 1, MEASURED_FROM as u32 - 1));
    assert_eq!(proposed(&few, "tug").given.seconds_from, Basis::Usual);
    let usual = proposed(&few, "tug").seconds;
    let one_day = found(given(&walk(), 1, 5));
    let tug = proposed(&one_day, "tug");
    assert_eq!((tug.given.seconds_from, tug.given.per_day_from), (Basis::Measured { n: 5 }, Basis::Usual));
    assert_eq!(tug.seconds, usual + 3.0, "6 s to the giving where 3 s are usual; how long it lasts stays");
    let days = found(given(&walk(), 6, 4));
    let tug = proposed(&days, "tug");
    assert_eq!((tug.given.per_day, tug.given.per_day_from), (4, Basis::Measured { n: 6 }));
    // Another game takes its time from this one until it has its own.
    let mut rewards = walk();
    rewards.push(reward(15, "ball", RewardKind::Play));
    rewards[1].active = false;
    let ball = found(given(&rewards, 6, 4));
    assert_eq!(proposed(&ball, "ball").given.seconds_from, Basis::MeasuredKind { n: 24 });
    // A limit people set holds, also where more was given.
    let mut rewards = walk();
    rewards[1].most_per_day = Some(3);
    let limited = found(given(&rewards, 6, 4));
    assert_eq!(
        (proposed(&limited, "tug").given.per_day, proposed(&limited, "tug").given.per_day_from),
        (3, Basis::Card)
    );
}

#[test]
fn labels_sound_apart_from_each_other_and_from_the_board() {
    let mut rewards = walk();
    // "tug" and "hug" sound alike; the other word of the name is taken.
    rewards[2].name = Label::new("bear hug").unwrap();
    let words = found(home(Some(20.0), &rewards));
    let says: Vec<&str> = words.best.as_ref().unwrap().words.iter().map(|w| w.says.as_str()).collect();
    assert!(says.contains(&"tug") && says.contains(&"bear") && says.len() == 3, "{says:?}");
}

#[test]
fn no_idea_to_try_is_dangerous_for_its_species() {
    use sayso_advisor::ration::{food_cautions, forbidden};
    for species in Species::ALL {
        for i in ideas(species) {
            let card = reward(1, &i.name, i.kind);
            assert_eq!(forbidden(species, &card), None, "{} for a {}", i.name, species.name());
            // What is only for a little, such as cheese, says so where it is offered.
            if i.key == "cheese" {
                assert!(!food_cautions(species, &i.name).is_empty());
            }
        }
    }
    let grapes = reward(1, "grapes", RewardKind::Food);
    assert!(forbidden(Species::Dog, &grapes).is_some(), "the check can fail");
}
