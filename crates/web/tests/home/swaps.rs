//! Agreed swaps and open rounds: from the form to the board, and stopped at any time.

use crate::at_home;

use crate::at_home::Home;
use sayso_model::{
    AnimalCard, Answer, Delivery, Event, EventId, Invitation, InvitationKind, InvitationResult, Press, Seconds,
    SwapDraw, SwapEnd, SwapPlan, SwapStop, WordId, draw,
};
use serde_json::Value;

async fn word(home: &Home, kind: &str, says: &str) -> WordId {
    let more: &[(&str, &str)] = if kind == "food" { &[("kcal_per_piece", "2")] } else { &[] };
    let reward = home.reward(kind, &format!("the {says} thing"), more).await;
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", says), ("reward", &reward)]).await;
    answer.kept().to.split(['/', '?']).nth(5).unwrap().parse().unwrap()
}

fn page(home: &Home) -> String {
    format!("/a/{}/swaps", home.animal)
}

async fn agree(home: &Home, words: &[WordId], more: &[(&str, &str)]) -> at_home::Answer {
    let words: Vec<String> = words.iter().map(ToString::to_string).collect();
    let mut pairs = vec![("days", "28"), ("one_in", "8"), ("home", "yes")];
    for (name, value) in more {
        pairs.retain(|(n, _)| n != name);
        pairs.push((name, value));
    }
    pairs.extend(words.iter().map(|w| ("words", w.as_str())));
    home.post(&page(home), &pairs).await
}

async fn plan(home: &Home) -> SwapPlan {
    home.story().await.of::<SwapPlan>(home.animal).next_back().unwrap().part.clone()
}

async fn board(home: &Home) -> Value {
    serde_json::from_str(&home.page(&format!("/api/board/{}", home.animal)).await.text).unwrap()
}

/// An event as the board sends it.
async fn note(home: &Home, body: impl Into<sayso_model::Body>) -> EventId {
    let story = home.story().await;
    let like = story.everyones::<AnimalCard>().next().unwrap().event.clone();
    let event = Event { id: EventId(uuid::Uuid::now_v7()), animal: Some(home.animal), body: body.into(), ..like };
    let sent = home.post_bytes("/api/events", "application/json", serde_json::to_vec(&[&event]).unwrap()).await;
    assert!(sent.text.contains("\"new\""), "{}", sent.text);
    event.id
}

#[tokio::test]
async fn swaps_are_explained_agreed_shown_on_the_board_and_stopped() {
    let home = Home::new().await;
    let words = [word(&home, "play", "frisbee").await, word(&home, "touch", "brush").await];
    let food = word(&home, "food", "zucchini").await;
    let asked = home.page(&page(&home)).await;
    asked.says("Your choice, for Pip").says("Stop at signs of stress").says("Food is not ticked").says("value=\"28\"");
    asked.says(&format!("value=\"{}\" checked", words[0])).does_not_say(&format!("value=\"{food}\" checked"));
    assert_eq!(board(&home).await["swap"], Value::Null);

    agree(&home, &words, &[]).await.kept();
    let agreed = plan(&home).await;
    assert_eq!((agreed.words.len(), agreed.one_in, agreed.days), (2, draw::ONE_IN, 28));
    let now = board(&home).await;
    assert_eq!(now["swap"]["swap"], agreed.swap.to_string());
    assert_eq!(now["swap"]["one_in"], 8);
    assert_eq!(now["swap"]["begins"], "2026-03-02T12:00:00.000Z");
    assert!(now["swap"]["ends"].as_str().unwrap().starts_with("2026-03-30T12:00:00"), "{now}");
    home.page(&page(&home)).await.says("Swaps are running").says("Days left: 28");
    agree(&home, &words, &[]).await.refused().says("take part in swaps already");

    let swap = agreed.swap.to_string();
    home.post(&format!("{}/stop", page(&home)), &[("swap", &swap), ("reason", "tired")])
        .await
        .refused()
        .says("home, signs");
    home.post(&format!("{}/stop", page(&home)), &[("swap", &swap), ("reason", "signs")]).await.kept();
    home.post(&format!("{}/stop", page(&home)), &[("swap", &swap), ("reason", "signs")]).await.kept();
    let story = home.story().await;
    let stops: Vec<&SwapStop> = story.of::<SwapStop>(home.animal).map(|s| s.part).collect();
    assert_eq!(stops.iter().map(|s| s.reason).collect::<Vec<_>>(), [SwapEnd::Signs], "stopping twice stops once");
    assert_eq!(board(&home).await["swap"], Value::Null);
    home.page(&page(&home)).await.says("because of signs of stress").says("Begin the swaps");
    home.page(&format!("/a/{}/log", home.animal)).await.says("Swaps stopped because of signs of stress");
}

#[tokio::test]
async fn what_cannot_be_agreed_says_why() {
    let home = Home::new().await;
    let words = [word(&home, "play", "frisbee").await, word(&home, "touch", "brush").await];
    agree(&home, &words[..1], &[]).await.refused().says("must be 2 or more, not 1");
    agree(&home, &words, &[("home", "")]).await.refused().says("must agree");
    agree(&home, &words, &[("days", "3")]).await.refused().says("from 4 to 366");
    agree(&home, &words, &[("days", "")]).await.refused().says("are missing");
    agree(&home, &words, &[("one_in", "3")]).await.refused().says("from 4 to 50");
    agree(&home, &words, &[("seed", "1")]).await.refused().says("is not a field");
    let thing = home.story().await.words()[&words[0]].reward.unwrap().to_string();
    let twin = home.post(&format!("/a/{}/words/new", home.animal), &[("says", "disc"), ("reward", &thing)]).await;
    let twin: WordId = twin.kept().to.split(['/', '?']).nth(5).unwrap().parse().unwrap();
    agree(&home, &[words[0], twin], &[]).await.refused().says("for the same thing");
    // A closing word takes no part.
    let closing = [("says", "all done"), ("closing", "yes"), ("reward", &*home.reward("rest", "bed", &[]).await)];
    let closing = home.post(&format!("/a/{}/words/new", home.animal), &closing).await;
    let closing: WordId = closing.kept().to.split(['/', '?']).nth(5).unwrap().parse().unwrap();
    home.page(&page(&home)).await.does_not_say(&closing.to_string());
    agree(&home, &[words[0], closing], &[]).await.refused();
    assert_eq!(home.story().await.of::<SwapPlan>(home.animal).count(), 0);
}

#[tokio::test]
async fn a_plan_taken_back_in_the_log_still_runs_until_it_is_stopped() {
    let home = Home::new().await;
    let words = [word(&home, "play", "frisbee").await, word(&home, "touch", "brush").await];
    agree(&home, &words, &[]).await.kept();
    let id = home.story().await.of::<SwapPlan>(home.animal).next().unwrap().id().to_string();
    home.post(&format!("/a/{}/log/withdraw", home.animal), &[("of", &id)]).await.kept();
    home.page(&page(&home)).await.says("Swaps are running");
    assert!(board(&home).await["swap"].is_object());
}

#[tokio::test]
async fn answers_are_counted_as_drawn_or_not() {
    let home = Home::new().await;
    let words = [word(&home, "play", "frisbee").await, word(&home, "touch", "brush").await];
    agree(&home, &words, &[]).await.kept();
    let plan = plan(&home).await;
    let other = home.story().await.words()[&words[1]].reward;
    let mut swapped = 0;
    for i in 0..24 {
        let press = Press {
            word: words[0],
            by: sayso_model::PressedBy::Animal,
            certainty: sayso_model::Probability::clamped(1.0),
            accident: sayso_model::Accident::Unsure,
            place: None,
            speed: None,
            stream: None,
            session: None,
        };
        let press = note(&home, press).await;
        let is = draw::swapped(plan.swap, press, plan.one_in);
        swapped += usize::from(is);
        let give = if is { words[1] } else { words[0] };
        note(&home, SwapDraw { swap: plan.swap, press, word: words[0], give }).await;
        let (answer, alternative) = if is { (Answer::Alternative, other) } else { (Answer::Given, None) };
        let delivery = Delivery {
            answers: Some(press),
            word: words[0],
            answer: if i == 0 { Answer::Missed } else { answer },
            alternative: if i == 0 { None } else { alternative },
            delay_s: None,
            then: None,
            then_word: None,
            session: None,
        };
        note(&home, delivery).await;
    }
    let shown = home.page(&page(&home)).await;
    shown.says("<dt>Answers drawn</dt><dd class=\"num\">24</dd>");
    shown.says(&format!("<dt>Of those, another thing</dt><dd class=\"num\">{swapped}</dd>"));
    shown.says("23 of 24").says("can count against, never for");
}

#[tokio::test]
async fn the_board_hears_of_a_round_and_of_its_next_call() {
    let home = Home::new().await;
    let words = vec![word(&home, "play", "frisbee").await, word(&home, "touch", "brush").await];
    assert_eq!(board(&home).await["round"], Value::Null);
    let round = sayso_model::RoundId(uuid::Uuid::now_v7());
    note(&home, sayso_model::Round { round, words: words.clone(), calls: 4, session: None }).await;
    let now = board(&home).await;
    assert_eq!((now["round"]["round"].as_str(), now["round"]["next"].as_u64()), (Some(&*round.to_string()), Some(1)));
    // The second call was not offered after all.
    for number in [1, 3] {
        let call = Invitation {
            word: draw::called(round, number, &words).unwrap(),
            other: None,
            way: InvitationKind::OfferInView,
            wait_s: Seconds::clamped(5.0),
            result: InvitationResult::NothingByWait,
            shown: true,
            took: None,
            session: None,
            call: Some(sayso_model::Call { round, number }),
        };
        note(&home, call).await;
    }
    assert_eq!(board(&home).await["round"]["next"], 4);
    home.page(&format!("/a/{}/log", home.animal)).await.says("Round of 4 begun").says("drawn, call 3");
}
