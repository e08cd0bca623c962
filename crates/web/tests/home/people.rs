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
