//! Likes tests from start to ranking.

use crate::at_home::{Answer, Home};
use sayso_model::{Feed, LikeOutcome, LikeTrial, LikesFormat, LikesTest};
use std::collections::BTreeMap;

async fn begin(home: &Home, format: &str, rewards: &[String], rounds: &str) -> String {
    let mut pairs = vec![("format", format), ("rounds", rounds), ("stands", "yes")];
    pairs.extend(rewards.iter().map(|r| ("rewards", r.as_str())));
    let answer = home.post(&format!("/a/{}/likes/new", home.animal), &pairs).await;
    answer.kept().to.clone()
}

/// The things offered, from its left to its right, as the page's buttons name them.
fn offered(page: &Answer) -> Vec<String> {
    page.text
        .split("name=\"answer\" value=\"")
        .skip(1)
        .map(|s| s[..s.find('"').unwrap()].to_owned())
        .filter(|v| v.len() == 36)
        .collect()
}

fn number(page: &Answer) -> String {
    let at = page.text.split("name=\"number\" value=\"").nth(1).expect("a trial");
    at[..at.find('"').unwrap()].to_owned()
}

async fn four(home: &Home) -> Vec<String> {
    let mut all = Vec::new();
    all.push(home.reward("food", "cooked chicken", &[("kcal_per_piece", "3")]).await);
    all.push(home.reward("play", "ball", &[]).await);
    all.push(home.reward("touch", "scratch", &[]).await);
    all.push(home.reward("rest", "bed", &[]).await);
    all
}

#[tokio::test]
async fn a_paired_test_runs_from_start_to_ranking() {
    let home = Home::new().await;
    let all = four(&home).await;
    let test = begin(&home, "paired", &all, "2").await;
    let mut lefts = vec![0; 4];
    let place = |r: &String| all.iter().position(|a| a == r).unwrap();
    for i in 1..=12 {
        let page = home.page(&test).await;
        page.says(&format!("Trial {i} of 12")).says("Pip’s left").says("Pip’s right").says("is on your right");
        let two = offered(&page);
        lefts[place(&two[0])] += 1;
        // It likes what comes first in the list best, always.
        let choice = two.iter().min_by_key(|r| place(r)).unwrap();
        home.post(&format!("{test}/trial"), &[("number", &number(&page)), ("answer", choice)]).await.kept();
    }
    assert_eq!(lefts, [3, 3, 3, 3], "sides are balanced over two rounds");
    home.page(&test).await.says("All trials are done").says("See the ranking");
    let likes = home.page(&format!("/a/{}/likes", home.animal)).await;
    likes
        .says("12 trials")
        .says("Ranking")
        .says("<svg")
        .says("The choices agree with each other")
        .says("Taken from Pip’s left")
        .says("Tests so far");
    let order: Vec<usize> = ["cooked chicken", "ball", "scratch", "bed"]
        .iter()
        .map(|n| likes.text.find(&format!(">{n} <")).unwrap())
        .collect();
    assert!(order.is_sorted(), "best liked first");
    // The six pieces of chicken it took were counted against the day.
    let story = home.story().await;
    let eaten: f64 = story.of::<Feed>(home.animal).map(|f| f.part.kcal.get()).sum();
    assert_eq!(eaten, 18.0);
    home.page(&format!("/sheets/{}/likes", home.animal)).await.says("From 12 trials");
    // The log names the sides as the test did, and none where one thing lay there alone.
    home.page(&format!("/a/{}/log", home.animal)).await.says("(Pip’s left)").says("(Pip’s right)");
    let single = begin(&home, "single", &all[..1], "1").await;
    let page = home.page(&single).await;
    page.does_not_say("Pip’s left");
    home.post(&format!("{single}/trial"), &[("number", &number(&page)), ("answer", "none")]).await.kept();
    home.page(&format!("/a/{}/log", home.animal)).await.says("Offered “cooked chicken”: ");
}

#[tokio::test]
async fn none_and_walking_away_are_answers_and_the_last_tap_can_be_taken_back() {
    let home = Home::new().await;
    let all = four(&home).await;
    let test = begin(&home, "paired", &all[..2], "3").await;
    for answer in ["none", "away"] {
        let page = home.page(&test).await;
        home.post(&format!("{test}/trial"), &[("number", &number(&page)), ("answer", answer)]).await.kept();
    }
    home.page(&test).await.says("Last: ").says("Pip walked away, and that is an answer");
    let page = home.page(&test).await;
    home.post(&format!("{test}/trial"), &[("number", &number(&page)), ("answer", &all[0])]).await.kept();
    let story = home.story().await;
    assert_eq!(story.of::<Feed>(home.animal).count(), 1);
    let last = story.of::<LikeTrial>(home.animal).next_back().unwrap().id().to_string();
    home.post(&format!("{test}/undo"), &[("trial", &last)]).await.kept();
    let story = home.story().await;
    let outcomes: Vec<_> = story.of::<LikeTrial>(home.animal).map(|t| t.part.result.clone()).collect();
    assert_eq!(outcomes, [LikeOutcome::ChoseNone, LikeOutcome::WalkedAway]);
    assert_eq!(story.of::<Feed>(home.animal).count(), 0, "the food counted with it is taken back too");
    // Undone twice, or an old page sent again: nothing more is taken back.
    let again = home.post(&format!("{test}/undo"), &[("trial", &last)]).await;
    assert!(again.kept().to.ends_with("twice=yes"));
    assert_eq!(home.story().await.of::<LikeTrial>(home.animal).count(), 2);
    // The trial comes up again.
    home.page(&test).await.says("Trial 3 of 3");
}

#[tokio::test]
async fn a_double_tap_is_one_answer_and_a_thing_not_offered_is_none() {
    let home = Home::new().await;
    let all = four(&home).await;
    let test = begin(&home, "paired", &all[..3], "1").await;
    let page = home.page(&test).await;
    let (n, two) = (number(&page), offered(&page));
    let other = all[..3].iter().find(|r| !two.contains(r)).unwrap();
    home.post(&format!("{test}/trial"), &[("number", &n), ("answer", other)])
        .await
        .refused()
        .says("one of the things offered");
    for _ in 0..2 {
        home.post(&format!("{test}/trial"), &[("number", &n), ("answer", &two[0])]).await.kept();
    }
    assert_eq!(home.story().await.of::<LikeTrial>(home.animal).count(), 1);
    home.page(&format!("{test}?twice=yes")).await.says("nothing was changed");
}

#[tokio::test]
async fn a_row_without_putting_back_shrinks_and_ends_when_it_turns_away() {
    let home = Home::new().await;
    let all = four(&home).await;
    let test = begin(&home, "multiple", &all, "1").await;
    let first = home.page(&test).await;
    let row = offered(&first);
    assert_eq!(row.len(), 4);
    home.post(&format!("{test}/trial"), &[("number", &number(&first)), ("answer", &row[2])]).await.kept();
    let second = home.page(&test).await;
    assert_eq!(offered(&second).len(), 3);
    assert!(!offered(&second).contains(&row[2]));
    home.post(&format!("{test}/trial"), &[("number", &number(&second)), ("answer", "away")]).await.kept();
    home.page(&test).await.says("All trials are done");
}

#[tokio::test]
async fn free_access_takes_seconds_with_or_without_the_stopwatch() {
    let home = Home::new().await;
    let all = four(&home).await;
    let test = begin(&home, "free_access", &all[..2], "1").await;
    let page = home.page(&test).await;
    page.says("stopwatch.js").says("Seconds the things were there").says("pieces eaten");
    let (a, b) = (format!("seconds-{}", all[0]), format!("seconds-{}", all[1]));
    let pieces = format!("pieces-{}", all[0]);
    let n = number(&page);
    home.post(
        &format!("{test}/trial"),
        &[("number", &n), ("observed_s", "300"), (&a, "400"), (&b, "20"), ("answer", "observed")],
    )
    .await
    .refused()
    .says("are more than the time")
    .says("value=\"400\"");
    home.post(&format!("{test}/trial"), &[("number", &n), (&a, "4"), ("answer", "observed")])
        .await
        .refused()
        .says("is missing");
    assert_eq!(home.story().await.of::<LikeTrial>(home.animal).count(), 0);
    home.post(
        &format!("{test}/trial"),
        &[("number", &n), ("observed_s", "300"), (&a, "120,5"), (&b, ""), (&pieces, "2"), ("answer", "observed")],
    )
    .await
    .kept();
    let story = home.story().await;
    let trial = story.of::<LikeTrial>(home.animal).next().unwrap();
    let LikeOutcome::Observed { observed_s, engaged } = &trial.part.result else { panic!("{:?}", trial.part.result) };
    assert_eq!(observed_s.get(), 300.0);
    assert_eq!(engaged.iter().map(|e| e.seconds.get()).sum::<f64>(), 120.5);
    assert_eq!(story.of::<Feed>(home.animal).next().unwrap().part.kcal.get(), 6.0);
    home.page(&format!("/a/{}/likes", home.animal)).await.says("share of the time busy with it");
}

#[tokio::test]
async fn a_test_needs_a_format_rewards_and_rounds() {
    let home = Home::new().await;
    let all = four(&home).await;
    let to = format!("/a/{}/likes/new", home.animal);
    home.post(&to, &[("format", "paired"), ("rewards", &all[0]), ("rounds", "1")])
        .await
        .refused()
        .says("must be 2 to 12 things, not 1");
    home.post(&to, &[("format", "guess"), ("rewards", &all[0]), ("rewards", &all[1]), ("rounds", "0")])
        .await
        .refused()
        .says("must be one of")
        .says("must be a whole number from 1 to 20");
    home.post(&to, &[("rewards", &all[0]), ("rounds", "")])
        .await
        .refused()
        .says("is missing")
        .says("1 is a good start");
    assert_eq!(home.story().await.of::<LikesTest>(home.animal).count(), 0);
    assert_eq!(home.get(&format!("/a/{}/likes/test/{}", home.animal, all[0])).await.status, 404);
}

#[tokio::test]
async fn a_suggested_pair_is_laid_out_as_suggested() {
    let home = Home::new().await;
    let all = four(&home).await;
    for (left, right) in [(&all[1], &all[2]), (&all[2], &all[1]), (&all[1], &all[3]), (&all[3], &all[0])] {
        let to = home.post(&format!("/a/{}/likes/pair", home.animal), &[("left", left), ("right", right)]).await;
        let page = home.page(&to.kept().to).await;
        assert_eq!(offered(&page), [left.clone(), right.clone()]);
    }
    home.post(&format!("/a/{}/likes/pair", home.animal), &[("left", &all[1]), ("right", &all[1])]).await.refused();
}

#[tokio::test]
async fn a_food_that_became_forbidden_is_not_offered_again() {
    let home = Home::new().await;
    let all = four(&home).await;
    let to = format!("/people/animal/{}", home.animal);
    // Xylitol is "never" for dogs and parrots, no more than "avoid" for cats: as a cat's food it is kept.
    home.post(&to, &[("name", "Pip"), ("species", "cat"), ("active", "yes")]).await.kept();
    let gum = home.reward("food", "xylitol paste", &[("kcal_per_piece", "1")]).await;
    home.page("/people").await.says("no cause for alarm").does_not_say("Never give this to Pip");
    home.post(&to, &[("name", "Pip"), ("species", "dog"), ("active", "yes")]).await.kept();
    let page = home.page(&format!("/a/{}/likes/new", home.animal)).await;
    page.says("Never give this to Pip").does_not_say(&gum);
    home.post(
        &format!("/a/{}/likes/new", home.animal),
        &[("format", "paired"), ("rounds", "1"), ("rewards", &all[0]), ("rewards", &gum)],
    )
    .await
    .refused();
    let story = home.story().await;
    assert!(story.of::<LikesTest>(home.animal).all(|t| t.part.format != LikesFormat::Paired));
}

#[tokio::test]
async fn what_cannot_be_held_up_is_offered_by_a_stand_in_or_timed_freely() {
    let home = Home::new().await;
    let ball = home.reward("play", "ball", &[]).await;
    let garden = home.reward("exploring", "garden", &[]).await;
    let new = format!("/a/{}/likes/new", home.animal);
    let ticked = |reward: &str| format!("value=\"{reward}\" checked");
    let asked = home.page(&new).await;
    asked.says("cannot be held up").says(&ticked(&ball)).does_not_say(&ticked(&garden));
    // Nothing is typed that could be checked when it is saved.
    asked.does_not_say("when you save it").says("Not a complete list");
    home.page(&format!("{new}?format=free_access")).await.says(&ticked(&garden));
    let both = [("format", "paired"), ("rounds", "1"), ("rewards", &*ball), ("rewards", &*garden)];
    home.post(&new, &both).await.refused().says("“garden” cannot be held up").says("name=\"stands\"");
    assert_eq!(home.story().await.of::<LikesTest>(home.animal).count(), 0, "not without a word");
    let test = begin(&home, "paired", &[ball.clone(), garden.clone()], "1").await;
    home.page(&test)
        .await
        .says("“garden” cannot be held up beside another thing")
        .says(&format!("/people/reward/{garden}"))
        .says("likes/new?format=free_access");
    home.post(
        &format!("/people/reward/{garden}"),
        &[("kind", "exploring"), ("name", "garden"), ("stand_in", "the lead"), ("active", "yes")],
    )
    .await
    .kept();
    home.page(&test)
        .await
        .says("offer the lead for it")
        .says("shown as: the lead")
        .does_not_say("beside another thing");
    home.page(&format!("/a/{}/likes/new?format=free_access", home.animal))
        .await
        .says("value=\"free_access\" required checked");
    // What can be given at the board after all can be held up too.
    home.post(
        &format!("/people/reward/{garden}"),
        &[("kind", "exploring"), ("name", "garden"), ("at_board", "yes"), ("active", "yes")],
    )
    .await
    .kept();
    home.page(&test).await.does_not_say("held up");
}

/// Words of the page between tags.
fn plain(html: &str) -> String {
    html.replace(['\u{2068}', '\u{2069}'], "")
}

#[tokio::test]
async fn what_cannot_be_held_up_is_offered_by_what_stands_for_it() {
    let home = Home::new().await;
    let rub = home.reward("touch", "belly rub", &[]).await;
    let ball = home.reward("play", "ball", &[]).await;
    let cheese = home.reward("play", "rope, long", &[]).await;
    let pair = |left: &str, right: &str| {
        let (home, left, right) = (&home, left.to_owned(), right.to_owned());
        async move {
            let to = format!("/a/{}/likes/pair", home.animal);
            let test = home.post(&to, &[("left", &left), ("right", &right)]).await;
            home.page(&test.kept().to).await
        }
    };
    pair(&ball, &cheese).await.says("hold both alike").does_not_say("cannot be held up");
    let page = pair(&rub, &ball).await;
    page.does_not_say("hold both alike").says("or what stands for it, alike");
    assert!(plain(&page.text).contains("“belly rub” cannot be held up"), "{}", page.text);
    // Its card asks what stands for it, and the test then says so.
    let card = format!("/people/reward/{rub}");
    home.page(&card).await.says("name=\"stand_in\"");
    let kept = [("kind", "touch"), ("name", "belly rub"), ("active", "yes"), ("stand_in", "the soft brush")];
    home.post(&card, &kept).await.kept();
    let page = pair(&rub, &ball).await;
    page.says("shown as");
    assert!(plain(&page.text).contains("offer the soft brush for it"), "{}", page.text);
}

#[tokio::test]
async fn enough_for_now_and_the_next_pair_are_never_both_proposed() {
    let home = Home::new().await;
    let all = four(&home).await;
    let (mut asked, mut enough) = (0, 0);
    // It likes all the same: of two things now the one, now the other. Nothing is ever settled, and at sixty choices it is enough.
    let mut last: BTreeMap<[String; 2], String> = BTreeMap::new();
    for _ in 0..6_u32 {
        let test = begin(&home, "paired", &all, "2").await;
        for _ in 0..12_u32 {
            let page = home.page(&test).await;
            let mut two: [String; 2] = offered(&page).try_into().unwrap();
            two.sort();
            let choice = two.iter().find(|one| last.get(&two) != Some(one)).unwrap().clone();
            last.insert(two, choice.clone());
            home.post(&format!("{test}/trial"), &[("number", &number(&page)), ("answer", &choice)]).await.kept();
        }
        let page = home.page(&format!("/a/{}/likes", home.animal)).await;
        let (says_enough, offers) = (page.text.contains("enough for now"), page.text.contains("likes/pair"));
        assert!(!(says_enough && offers), "both at once: {}", page.text);
        (asked, enough) = (asked + usize::from(offers), enough + usize::from(says_enough));
    }
    assert!(asked > 0 && enough > 0, "{asked} asked for more, {enough} enough for now");
}

#[tokio::test]
async fn no_test_is_offered_on_the_day_after_a_growl() {
    use sayso_model::{Event, EventId, Note, Sign, SignLevel, When};
    let home = Home::new().await;
    four(&home).await;
    let likes = format!("/a/{}/likes", home.animal);
    home.page(&likes).await.says("New test");
    let first = home.story().await.ledger().all().next().unwrap().clone();
    let sign = Sign { sign: Note::new("growl").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
    let yesterday = "2026-03-01T11:00:00Z".parse().unwrap();
    let growl = Event {
        id: EventId(uuid::Uuid::now_v7()),
        animal: Some(home.animal),
        happened_at: yesterday,
        body: sign.into(),
        ..first
    };
    home.state.store.append(vec![growl]).await.unwrap();
    home.page(&likes).await.does_not_say("New test").says("strong signs of stress were noted");
    home.page(&format!("{likes}/new")).await.does_not_say("<form method=\"post\"");
}
