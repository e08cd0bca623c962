//! People: every form kept and refused, hazards, nothing lost.

use crate::at_home::Home;
use sayso_model::{AnimalCard, LifeStage, Role, Species};

#[tokio::test]
async fn a_animal_is_made_with_its_food_for_the_day() {
    let home = Home::new().await;
    home.post(
        "/people/animal/new",
        &[
            ("name", "Mo"),
            ("species", "cat"),
            ("age_years", "3"),
            ("age_months", "6"),
            ("weight_kg", "4,5"),
            ("life_stage", "neutered_adult"),
            ("reward_percent", "8"),
            ("limits", "hears poorly"),
            ("cautions", "no fish"),
        ],
    )
    .await
    .kept();
    let story = home.story().await;
    let mo = story.animals().into_values().find(|l| l.name.as_str() == "Mo").unwrap().clone();
    assert_eq!((mo.species, mo.life_stage, mo.born_estimated), (Species::Cat, Some(LifeStage::NeuteredAdult), true));
    assert_eq!(mo.born.unwrap().to_string(), "2022-09-01");
    assert_eq!((mo.weight_kg.unwrap().get(), mo.reward_share.unwrap().get()), (4.5, 0.08));
    // 70 x 4.5^0.75 = 216.3 kcal, times 1.2 = 259.5; 8 % of that.
    home.page("/people")
        .await
        .says("260 kcal a day")
        .says("21 kcal")
        .says("hears poorly")
        .says("no fish")
        .says("about 3 years old");
}

#[tokio::test]
async fn what_was_typed_stays_and_each_wrong_field_is_named() {
    let home = Home::new().await;
    let answer = home
        .post(
            "/people/animal/new",
            &[
                ("name", "Whisker & Co"),
                ("species", "cat"),
                ("weight_kg", "heavy"),
                ("life_stage", "puppy"),
                ("reward_percent", "30"),
                ("born", "2024-02-30"),
            ],
        )
        .await;
    answer
        .refused()
        .says("Whisker &amp; Co")
        .says("value=\"heavy\"")
        .says("must be a number such as 4.5")
        .says("does not fit a cat")
        .says("must be more than 0 and at most 10")
        .says("is not a day such as");
    assert_eq!(home.story().await.animals().len(), 1);
}

#[tokio::test]
async fn an_edit_is_a_new_version_and_the_first_stays_in_the_log() {
    let home = Home::new().await;
    let to = format!("/people/animal/{}", home.animal);
    home.page(&to).await.says("value=\"Pip\"");
    home.post(
        &to,
        &[
            ("name", "Pip"),
            ("species", "dog"),
            ("weight_kg", "22"),
            ("life_stage", "neutered_adult"),
            ("active", "yes"),
        ],
    )
    .await
    .kept();
    let story = home.story().await;
    assert_eq!(story.animals()[&home.animal].weight_kg.unwrap().get(), 22.0);
    let versions = story.of::<AnimalCard>(home.animal).count();
    assert_eq!(versions, 2);
    home.post(&to, &[("name", ""), ("species", "dog")]).await.refused().says("must not be empty");
    assert_eq!(home.story().await.of::<AnimalCard>(home.animal).count(), 2);
}

#[tokio::test]
async fn a_puppy_is_fed_by_its_share_of_the_grown_weight_or_not_reckoned_at_all() {
    let home = Home::new().await;
    let to = format!("/people/animal/{}", home.animal);
    let puppy = [("name", "Pip"), ("species", "dog"), ("active", "yes"), ("weight_kg", "10"), ("life_stage", "puppy")];
    home.post(&to, &puppy).await.kept();
    home.page("/people").await.says("share of the weight it will have grown").says("Type it in");
    // 70 x 10^0.75 = 393.6 kcal, times 3 below half of 30 kg, times 2 near the 12 kg of a smaller dog.
    for (grown, kcal) in [("30", "1,181 kcal a day"), ("15", "984 kcal a day"), ("12", "787 kcal a day")] {
        home.post(&to, &[&puppy[..], &[("adult_weight_kg", grown)]].concat()).await.kept();
        home.page("/people").await.says(kcal).says("FEDIAF 2021");
    }
    home.page(&to).await.says("value=\"12\"").says("weight once grown").does_not_say("4 months");
    home.post(&to, &[&puppy[..], &[("adult_weight_kg", "9")]].concat()).await.refused().says("less than the 10.0 kg");
}

#[tokio::test]
async fn where_nothing_can_be_computed_a_veterinarian_is_named() {
    let home = Home::new().await;
    home.page("/people").await.says("ask a veterinarian").says("Type it in");
    let to = format!("/people/animal/{}", home.animal);
    let parrot = [("name", "Pip"), ("species", "parrot"), ("active", "yes")];
    home.post(&to, &parrot).await.kept();
    home.page("/people").await.says("there is no formula here for a parrot");
    home.post(&to, &[&parrot[..], &[("day_kcal", "60")]].concat()).await.kept();
    home.page("/people").await.says("typed in, as a veterinarian set it").says("6 kcal");
    home.post(&to, &[&parrot[..], &[("day_kcal", "0")]].concat()).await.refused().says("must be more than 0");
}

#[tokio::test]
async fn people_come_and_go_and_keep_their_names() {
    let home = Home::new().await;
    home.post("/people/person/new", &[("name", "Kim"), ("role", "coach")]).await.kept();
    let story = home.story().await;
    let kim = story.people().into_values().find(|t| t.name.as_str() == "Kim").unwrap().clone();
    assert_eq!((kim.role, kim.active), (Role::Coach, true));
    let to = format!("/people/person/{}", kim.person);
    home.page(&to).await.says("value=\"Kim\"");
    home.post(&to, &[("name", "Kim"), ("role", "coach")]).await.kept();
    home.page("/people").await.says("No longer in use (1)");
    home.post("/people/person/new", &[("name", "A"), ("role", "boss")]).await.refused().says("must be one of");
    home.post("/people/person/new", &[("name", "A")]).await.refused().says("is missing");
    assert_eq!(home.get("/people/person/none").await.status, 404);
}

#[tokio::test]
async fn the_home_can_be_renamed_and_moved() {
    let home = Home::new().await;
    home.page("/people/home").await.says("The house by the park").says("Europe/Berlin");
    home.post("/people/home", &[("name", "By the sea"), ("zone", "america/asuncion")]).await.kept();
    home.page("/people").await.says("By the sea").says("America/Asuncion");
    home.post("/people/home", &[("name", "By the sea"), ("zone", "Atlantis")])
        .await
        .refused()
        .says("is not an IANA time zone")
        .says("value=\"Atlantis\"");
}

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
async fn text_from_people_is_never_markup() {
    let home = Home::new().await;
    let nasty = "<img src=x onerror=alert(1)>";
    let id = home.reward("play", nasty, &[]).await;
    home.post("/people/rule/new", &[("text", nasty)]).await.kept();
    home.post("/people/person/new", &[("name", nasty), ("role", "visitor")]).await.kept();
    for path in [
        "/people".to_owned(),
        format!("/people/reward/{id}"),
        "/sheets/rules".into(),
        format!("/a/{}/likes/new", home.animal),
    ] {
        home.page(&path).await.does_not_say("<img").says("&lt;img");
    }
    home.post("/people/rule/new", &[("text", " ")]).await.refused().says("is missing");
    home.post("/people/rule/new", &[("text", nasty), ("word", "\"><script>")]).await.refused().does_not_say("<script>");
}

#[tokio::test]
async fn fields_a_form_does_not_have_are_refused() {
    let home = Home::new().await;
    home.post("/people/person/new", &[("name", "A"), ("role", "coach"), ("admin", "yes")])
        .await
        .refused()
        .says("is not a field of this form");
}

#[tokio::test]
async fn the_way_to_the_first_session_is_shown_until_it_is_gone() {
    let home = Home::new().await;
    home.page("/people").await.says("Setting up for Pip").says("0 of 4 needed steps done");
    for (i, name) in ["ball", "tug", "outside", "scratch"].iter().enumerate() {
        home.reward(["play", "play", "exploring", "touch"][i], name, &[]).await;
    }
    home.page("/people").await.says("1 of 4 needed steps done");
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
async fn weights_are_typed_in_the_persons_unit_and_kept_in_kilograms() {
    let home = Home::new().await;
    let story = home.story().await;
    let me = story.people().into_values().next().unwrap().clone();
    let person = [("name", "Robin"), ("role", "home"), ("weight_unit", "lb"), ("active", "yes")];
    home.post(&format!("/people/person/{}", me.person), &person).await.kept();
    let food = format!("/people/animal/{}/food", home.animal);
    home.page(&food).await.says("Weight, pounds").says("Step 1 of 4");
    let kept = home.post(&food, &[("weight_kg", "44"), ("life_stage", "neutered_adult")]).await;
    assert!(kept.kept().to.ends_with("/ideas"), "on to what it might like: {}", kept.to);
    assert_eq!(home.story().await.animals()[&home.animal].weight_kg.unwrap().get(), 19.96);
    home.page("/people").await.says("44.0 lb");
    home.page(&format!("/people/animal/{}", home.animal)).await.says("value=\"44\"");
    home.post(&food, &[("weight_kg", "heavy"), ("day_kcal", "0")])
        .await
        .refused()
        .says("value=\"heavy\"")
        .says("must be more than 0");
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
async fn a_notebook_is_begun_on_one_form_that_keeps_what_was_typed() {
    let home = Home::empty().await;
    home.page("/start").await.says("Tell us who lives here").says("Where you live (sets midnight)");
    let begun = [("you", "Ilda"), ("animal", "Bo"), ("species", "rabbit"), ("others", "Robin, Sam ,")];
    home.post("/start", &[&begun[..], &[("zone", "")]].concat())
        .await
        .refused()
        .says("value=\"Robin, Sam ,\"")
        .says("is not an IANA time zone")
        .says("<details open");
    let kept = home.post("/start", &[&begun[..], &[("zone", "Europe/Lisbon")]].concat()).await;
    assert!(kept.kept().to.ends_with("/food"), "{}", kept.to);
    let id = home.state.store.home().await.unwrap().unwrap();
    let story = home.state.store.story(id).await.unwrap();
    let mut people: Vec<_> = story.people().into_values().map(|p| p.name.to_string()).collect();
    people.sort();
    assert_eq!(people, ["Ilda", "Robin", "Sam"]);
    assert_eq!(story.home().unwrap().name.as_str(), "Ilda\u{2019}s home");
}

#[tokio::test]
async fn a_wrong_form_in_german_says_so_in_german_beside_its_field() {
    let home = Home::new().await;
    let me = format!("/people/person/{}", home.story().await.people().keys().next().unwrap());
    home.post(&me, &[("name", "Ada"), ("role", "home"), ("language", "de"), ("active", "yes")]).await.kept();
    home.post("/people/animal/new", &[("name", "Mo"), ("species", "cat"), ("weight_kg", "viel")])
        .await
        .refused()
        .says("Noch nicht gespeichert.")
        .says("muss eine Zahl wie 4,5 sein, nicht")
        .says("id=\"weight_kg-wrong\">")
        .does_not_say("must be a number")
        .does_not_say("Not kept yet");
    // The page of faults too, for what no form sends.
    home.post("/people/animal/new", &[("colour", "red")]).await.refused().says("ist kein Feld dieses Formulars");
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

#[tokio::test]
async fn a_puppys_grown_weight_is_asked_for_once_and_then_let_be() {
    let home = Home::new().await;
    let to = format!("/people/animal/{}/food", home.animal);
    let puppy = [("weight_kg", "6"), ("life_stage", "puppy")];
    let asked = home.post(&to, &puppy).await;
    asked.refused().says("<details open>").says("save once more without it").says("name=\"asked\"");
    home.post(&to, &[puppy[0], puppy[1], ("asked", "yes")]).await.kept();
    home.page(&to).await.says("<details open>");
    home.post(&to, &[puppy[0], puppy[1], ("adult_weight_kg", "20")]).await.kept();
    home.post(&to, &[("weight_kg", "20"), ("life_stage", "neutered_adult")]).await.kept();
}
