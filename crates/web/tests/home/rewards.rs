//! Cards of rewards: foods that are refused, what they hold, ideas, and what stands for them.

use crate::at_home::Home;

#[tokio::test]
async fn a_food_the_list_forbids_is_refused_with_the_reason_and_a_doubtful_one_is_kept_with_its_caution() {
    let home = Home::new().await;
    let food = |name| [("kind", "food"), ("name", name), ("kcal_per_piece", "3")];
    home.post("/people/reward/new", &food("raisins, organic"))
        .await
        .refused()
        .says("Raisins, organic can poison dogs. Not added.")
        .does_not_say("name=\"kcal_per_piece\"")
        .says("kidney failure")
        .says("Merck Veterinary Manual")
        .says("raisins, organic");
    home.post("/people/reward/new", &food("choclate drops")).await.refused().says("chocolate");
    // A slip of the kind brings it in no other way; what is only named after it may stay.
    let play = |name| [("kind", "play"), ("name", name)];
    home.post("/people/reward/new", &play("Grapes")).await.refused().says("names a food that must never be given");
    assert!(home.story().await.rewards().is_empty());
    home.post("/people/reward/new", &play("a ball like grapes")).await.kept();
    // "Add another" keeps what was typed before it asks for the next.
    let mut another = food("plain rice").to_vec();
    another.push(("then", "another"));
    let next = home.post("/people/reward/new", &another).await;
    assert!(next.kept().to.starts_with("/people/reward/new?kind=food&kept="), "{}", next.to);
    assert!(home.story().await.rewards().values().any(|r| r.name.as_str() == "plain rice"));
    let kept = home.post("/people/reward/new", &food("cheddar")).await;
    home.page(&kept.kept().to).await.says("Care, for Pip").says("cheese").says("Not a complete list");
    home.page("/people").await.says("Care, for Pip");
}

#[tokio::test]
async fn energy_is_worked_out_from_weight_and_the_figures_source_is_told() {
    let home = Home::new().await;
    home.page("/people/reward/new?kind=food").await.says("from the USDA table").says("cheddar: 403 kcal per 100 g");
    let id = home
        .reward("food", "cooked chicken, plain", &[("grams_per_piece", "2"), ("food", "chicken_breast_cooked")])
        .await;
    let story = home.story().await;
    let card = story.rewards().into_values().find(|r| r.reward.to_string() == id).unwrap().clone();
    assert_eq!(card.kcal_per_piece.unwrap().get(), 3.3);
    home.post("/people/reward/new", &[("kind", "food"), ("name", "carrot")])
        .await
        .refused()
        .says("is missing; give it, or the grams of a piece");
    home.post("/people/reward/new", &[("kind", "play"), ("name", "ball"), ("kcal_per_piece", "3")])
        .await
        .refused()
        .says("is only for food");
    home.post(
        "/people/reward/new",
        &[("kind", "play"), ("name", "ball"), ("seconds_to_deliver", "-4"), ("most_per_day", "0")],
    )
    .await
    .refused()
    .says("must be a number from 0 to 86400")
    .says("must be a whole number from 1 to 1000");
}

#[tokio::test]
async fn ideas_are_added_with_a_tap_each_and_never_twice() {
    let home = Home::new().await;
    let to = format!("/a/{}/ideas", home.animal);
    home.page(&to)
        .await
        .says("What might Pip like?")
        .says("value=\"cheese\"")
        .says("lactose")
        .says("Tug and Squeaky toy: Not for an animal that guards food or toys");
    home.post(&to, &[]).await.refused().says("not ticked yet");
    home.post(&to, &[("ideas", "grapes")]).await.refused().says("does not know");
    let four = [("ideas", "cheese"), ("ideas", "tug"), ("ideas", "rub"), ("ideas", "garden")];
    let kept = home.post(&to, &four).await;
    assert!(kept.kept().to.ends_with("/words"), "on to the words: {}", kept.to);
    let story = home.story().await;
    let cheese = story.rewards().into_values().find(|r| r.name.as_str().starts_with("Cheese")).unwrap().clone();
    assert_eq!((story.rewards().len(), cheese.kcal_per_piece.unwrap().get()), (4, 4.0));
    home.page(&to).await.does_not_say("value=\"cheese\"").says("value=\"ball\"");
    // An old page sent again adds nothing.
    home.post(&to, &four).await.kept();
    assert_eq!(home.story().await.rewards().len(), 4);
    home.page(&format!("{to}?instead={}", cheese.reward)).await.says("Try something else of its kind");
}

#[tokio::test]
async fn cheese_tug_rub_and_garden_are_proposed_under_the_readers_own_words() {
    use sayso_model::Language::{De, En, Es, Fr, Pt};
    for (language, words) in [
        (En, ["cheese", "tug", "rub", "garden"]),
        (Es, ["queso", "tira", "caricia", "jardín"]),
        (De, ["Käse", "Zerren", "Kraulen", "Garten"]),
        (Fr, ["fromage", "tire", "caresse", "jardin"]),
        (Pt, ["queijo", "puxa", "carinho", "jardim"]),
    ] {
        let mut home = Home::new().await;
        home.reads(language);
        let ideas = [("ideas", "cheese"), ("ideas", "tug"), ("ideas", "rub"), ("ideas", "garden")];
        home.post(&format!("/a/{}/ideas", home.animal), &ideas).await.kept();
        let story = home.story().await;
        let case = sayso_advisor::Case::new(&story, home.animal, sayso_web::state::machine_clock());
        let mut proposed: Vec<String> =
            story.rewards().into_values().map(|r| sayso_advisor::first_words::label_of(&case, r, language)).collect();
        proposed.sort();
        let mut should = words.map(str::to_owned);
        should.sort();
        assert_eq!(proposed, should, "{language:?}");
        // So says the page that proposes first words; the dog's weight is not known, so food and garden are told as left out.
        let page = home.page(&format!("/a/{}/words", home.animal)).await;
        for word in words {
            page.says(word);
        }
    }
}

#[tokio::test]
async fn what_is_listed_under_another_label_is_no_idea_and_a_tap_makes_one_card() {
    let home = Home::new().await;
    let to = format!("/a/{}/ideas", home.animal);
    home.reward("food", "two carrot slices", &[("kcal_per_piece", "1")]).await;
    home.page(&to).await.does_not_say("value=\"carrot\"").says("value=\"apple\"").says("value=\"tug\"");
    home.page("/people/reward/new?kind=food").await.does_not_say("Carrot, a thin slice").says("Apple without core");
    home.post(&to, &[("ideas", "carrot"), ("ideas", "tug")]).await.kept();
    let only = |story: &sayso_model::Story| {
        let tug = story.rewards().into_values().find(|r| r.name.as_str() == "Tug").unwrap().clone();
        (story.rewards().len(), tug)
    };
    let (count, tug) = only(&*home.story().await);
    assert_eq!(count, 2, "the carrot is there already");
    // Put away and called otherwise, it is still the card of its idea.
    let card = format!("/people/reward/{}", tug.reward);
    home.post(&card, &[("kind", "play"), ("name", "Tug")]).await.kept();
    home.post(&to, &[("ideas", "tug")]).await.kept();
    assert_eq!(only(&*home.story().await), (2, tug.clone()));
    home.post(&card, &[("kind", "play"), ("name", "Rope game"), ("active", "yes")]).await.kept();
    home.page(&to).await.does_not_say("value=\"tug\"").says("value=\"ball\"");
}

#[tokio::test]
async fn a_rewards_card_says_where_it_can_be_given_and_what_stands_for_it() {
    let home = Home::new().await;
    home.page("/people/reward/new?kind=exploring")
        .await
        .says("Can it be given at the board?")
        .says("as usual for its kind: no")
        .says("Garden");
    let id = home.reward("exploring", "window", &[("at_board", "yes"), ("stand_in", "the cushion")]).await;
    let story = home.story().await;
    let card = story.rewards().into_values().find(|r| r.reward.to_string() == id).unwrap().clone();
    assert_eq!((card.at_board, card.stand_in.unwrap().to_string()), (Some(true), "the cushion".to_owned()));
    home.page(&format!("/people/reward/{id}")).await.says("value=\"yes\" selected").says("value=\"the cushion\"");
    home.page("/people").await.says("can be given at the board").says("the cushion stands for it");
}

#[tokio::test]
async fn another_of_the_same_kind_is_asked_for_below_the_cautions_of_the_one_kept() {
    let home = Home::new().await;
    let typed = [("name", "peanut butter"), ("kind", "food"), ("kcal_per_piece", "5"), ("then", "another")];
    let kept = home.post("/people/reward/new", &typed).await;
    let to = kept.kept().to.clone();
    assert!(to.starts_with("/people/reward/new?kind=food&kept="), "{to}");
    let next = home.page(&to).await;
    next.says("Saved.")
        .says("peanut butter: 5.00 kcal a piece")
        .says("Care, for Pip")
        .says("name=\"name\" value=\"\"")
        .says("autofocus");
    // Asked for by itself, nothing was kept and nothing takes the focus.
    home.page("/people/reward/new?kind=food").await.does_not_say("Saved.").does_not_say("autofocus");
    home.page("/people/reward/new?kind=food&kept=nothing").await.does_not_say("Saved.");
}

#[tokio::test]
async fn what_kills_as_a_toy_is_said_where_it_is_typed_and_as_food_it_is_refused() {
    let home = Home::new().await;
    let cat = [("name", "Mio"), ("species", "cat")];
    home.post("/people/animal/new", &cat).await.kept();
    for (kind, name, says) in [
        ("play", "ball of wool", "the gut bunches up"),
        ("play", "Laserpointer", "the light can never be caught"),
        ("play", "antler", "harder than teeth"),
        ("food", "corn cob", "has to be cut out"),
        ("food", "Lilie", "the kidneys fail within days"),
    ] {
        let typed = [("kind", kind), ("name", name)];
        let answer = home.post("/people/reward/new", &typed).await;
        if kind == "food" {
            answer.refused().says(says);
        } else {
            home.page(&answer.kept().to.clone()).await.says("Care, for ").says(says);
        }
    }
    let ball = home.post("/people/reward/new", &[("kind", "play"), ("name", "ball")]).await;
    home.page(&ball.kept().to.clone()).await.does_not_say("Care, for ");
}
