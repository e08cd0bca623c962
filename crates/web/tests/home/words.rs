//! Words: cards, first words, stages, the board.

use crate::at_home::Home;
use sayso_model::{Stage, StageChoice, WordCard};

async fn word(home: &Home, says: &str, more: &[(&str, &str)]) -> String {
    let mut pairs = vec![("says", says)];
    pairs.extend_from_slice(more);
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &pairs).await;
    answer.kept().to.split(['/', '?']).nth(5).unwrap().to_owned()
}

#[tokio::test]
async fn a_card_is_made_and_a_change_is_a_new_version() {
    let home = Home::new().await;
    let ball = home.reward("play", "ball", &[]).await;
    let id = word(
        &home,
        "ball",
        &[("means", "asks for the ball"), ("answer", "Throw it once."), ("not_now", "Say not now."), ("reward", &ball)],
    )
    .await;
    let to = format!("/a/{}/words/card/{id}", home.animal);
    home.page(&to)
        .await
        .says("Throw it once.")
        .says("Stage with Pip")
        .says("Not pressing is never counted as not understanding");
    home.post(&to, &[("says", "ball"), ("answer", "Throw it twice."), ("active", "yes"), ("closing", "yes")])
        .await
        .kept();
    let story = home.story().await;
    let card = story.words_of(home.animal)[0].clone();
    assert_eq!(
        (card.answer.unwrap().as_str().to_owned(), card.closing, card.reward),
        ("Throw it twice.".into(), true, None)
    );
    assert_eq!(story.unassigned::<WordCard>().count(), 2, "cards belong to the household");
    home.page(&format!("/a/{}/words", home.animal)).await.says("closing word").says("Throw it twice.");
}

#[tokio::test]
async fn wrong_cards_are_refused_in_words_and_keep_what_was_typed() {
    let home = Home::new().await;
    word(&home, "ball", &[]).await;
    let to = format!("/a/{}/words/new", home.animal);
    home.post(&to, &[("says", "BALL"), ("means", "the <b>ball</b>")])
        .await
        .refused()
        .says("is on another button already")
        .says("the &lt;b&gt;ball&lt;/b&gt;")
        .does_not_say("<b>ball");
    home.post(&to, &[("says", "")]).await.refused().says("must not be empty");
    home.post(&to, &[("says", "tug"), ("reward", "nothing")]).await.refused().says("does not know");
    home.post(&to, &[("says", "tug"), ("colour", "red")]).await.refused().says("is not a field of this form");
    assert_eq!(home.story().await.words().len(), 1);
}

#[tokio::test]
async fn words_that_sound_alike_are_told() {
    let home = Home::new().await;
    word(&home, "walk", &[]).await;
    let talk = word(&home, "talk", &[]).await;
    home.page(&format!("/a/{}/words/card/{talk}", home.animal))
        .await
        .says("Sounds much like another word here")
        .says("1 of 3 sounds differs");
    let page = home.page(&format!("/a/{}/words", home.animal)).await;
    assert_eq!(page.text.matches("1 of 3 sounds differs").count(), 1, "each pair once");
}

#[tokio::test]
async fn words_are_compared_in_the_language_chosen_for_the_board() {
    let home = Home::new().await;
    let vaca = word(&home, "vaca", &[]).await;
    word(&home, "baca", &[]).await;
    let card = format!("/a/{}/words/card/{vaca}", home.animal);
    home.page(&card).await.says("vaca / baca: 1 of 4 sounds differs");
    let to = format!("/a/{}/words/board", home.animal);
    home.post(&to, &[("rows", "2"), ("columns", "3"), ("language", "xx")]).await.refused().says("must be one of");
    home.post(&to, &[("rows", "2"), ("columns", "3"), ("language", "es")]).await.kept();
    home.page(&card).await.says("the same sounds (pronunciation guessed)");
    // A form from before the choice leaves it as it is.
    home.post(&to, &[("rows", "2"), ("columns", "3")]).await.kept();
    assert_eq!(home.story().await.language_of_words(), sayso_model::Language::Es);
    home.page(&to).await.says("Language of the words").says("<option value=\"es\" selected>");
}

#[tokio::test]
async fn first_words_are_proposed_with_reasons_and_become_cards() {
    let home = Home::new().await;
    let to = format!("/a/{}/words", home.animal);
    home.page(&to).await.says("First words").says("No proposal");
    let ball = home.reward("play", "ball", &[("seconds_to_deliver", "10")]).await;
    let scratch = home.reward("touch", "chest scratch", &[("says", "scratch"), ("seconds_to_deliver", "10")]).await;
    home.reward("exploring", "a long walk", &[("says", "park"), ("seconds_to_deliver", "900")]).await;
    home.reward("rest", "tall ball", &[("says", "bawl"), ("seconds_to_deliver", "10")]).await;
    let page = home.page(&to).await;
    page.says("Take these words").says("Left out, and why").says("cannot be given at the board again and again");
    page.says("No likes test yet").says("is a guess here").does_not_say("grapes");
    home.post(&format!("{to}/first"), &[]).await.refused().says("must be 1 to 3 words");
    home.post(&format!("{to}/first"), &[("rewards", &ball), ("rewards", &scratch)]).await.kept();
    let story = home.story().await;
    let says: Vec<_> = story.words_of(home.animal).iter().map(|w| w.says.to_string()).collect();
    assert_eq!(says, ["ball", "scratch"]);
    let answers: Vec<_> = story.words_of(home.animal).iter().map(|w| w.answer.clone().unwrap().to_string()).collect();
    assert_eq!(answers, ["Give what “ball” asks for.", "Give what “scratch” asks for."]);
    // Sent twice, the words are there once: they have a card already.
    home.post(&format!("{to}/first"), &[("rewards", &ball)]).await.refused();
    assert_eq!(home.story().await.words().len(), 2);
}

#[tokio::test]
async fn how_often_a_day_is_said_once_with_its_reason() {
    let home = Home::new().await;
    home.reward("play", "ball", &[("seconds_to_deliver", "10"), ("most_per_day", "5")]).await;
    home.reward("touch", "chest scratch", &[("says", "scratch"), ("seconds_to_deliver", "20")]).await;
    home.page(&format!("/a/{}/words", home.animal))
        .await
        // One short sentence in sight; what limits it stands behind the tap.
        .says("<summary>At most about 5 times a day</summary>")
        .says("Its card allows no more.")
        .says("<summary>At most about 8 times a day</summary>")
        .says("More does not fit into five minutes at the board.")
        .does_not_say("fits the day");
}

#[tokio::test]
async fn a_reward_has_one_label_on_every_page_and_the_answer_names_it() {
    let home = Home::new().await;
    let to = format!("/a/{}/words", home.animal);
    let tub = home.reward("play", "tub", &[("seconds_to_deliver", "10")]).await;
    let rub = home.reward("touch", "belly rub", &[("seconds_to_deliver", "10")]).await;
    // "Rub" would sound like the tub.
    home.page(&to).await.says("value=\"belly\"").does_not_say("value=\"rub\"");
    home.page(&format!("{to}/new?reward={rub}")).await.says("value=\"belly\"").says("Give what “belly” asks for.");
    let typed = format!("says-{tub}");
    home.post(&format!("{to}/first"), &[("rewards", &tub), (&typed, "splash"), ("rewards", &rub)]).await.kept();
    let answers: Vec<_> = home.story().await.words().values().map(|w| w.answer.clone().unwrap().to_string()).collect();
    assert!(
        answers.contains(&"Give what “splash” asks for.".to_owned())
            && answers.contains(&"Give what “belly” asks for.".to_owned()),
        "{answers:?}"
    );
}

#[tokio::test]
async fn the_board_leads_to_words_and_warns_of_what_its_buttons_bring_only() {
    let home = Home::new().await;
    let (board, words) = (format!("/a/{}/board", home.animal), format!("/a/{}/words", home.animal));
    let cheese = home.reward("food", "cheese cube", &[("kcal_per_piece", "4")]).await;
    home.reward("food", "bacon bit", &[("kcal_per_piece", "4")]).await;
    let tug = home.reward("play", "tug", &[]).await;
    let page = home.page(&board).await;
    let said = page.text.split("data-test=\"no-words\"").nth(1).and_then(|after| after.split("</p>").next());
    assert!(said.is_some_and(|said| said.contains(&format!("href=\"{words}\""))), "{said:?}");
    page.does_not_say("data-test=\"care-of\"");
    home.post(&format!("{words}/new"), &[("says", "tug"), ("reward", &tug)]).await.kept();
    home.page(&board).await.does_not_say("data-test=\"no-words\"").does_not_say("data-test=\"care-of\"");
    home.post(&format!("{words}/new"), &[("says", "cheese"), ("reward", &cheese)]).await.kept();
    home.page(&board)
        .await
        .says("data-test=\"care-of\">cheese cube: only a little")
        .does_not_say("\"care-of\">bacon bit");
}

#[tokio::test]
async fn labels_are_proposed_short_and_can_be_edited_before_they_are_taken() {
    let home = Home::new().await;
    let to = format!("/a/{}/words", home.animal);
    let rub = home.reward("touch", "belly rub", &[]).await;
    let tug = home.reward("play", "Tug with the long rope", &[]).await;
    let page = home.page(&to).await;
    page.says("value=\"rub\"").says("value=\"tug\"").does_not_say("value=\"belly rub\"");
    let (rub_says, tug_says) = (format!("says-{rub}"), format!("says-{tug}"));
    let both = [("rewards", rub.as_str()), ("rewards", tug.as_str())];
    home.post(
        &format!("{to}/first"),
        &[&both[..], &[(rub_says.as_str(), "pull"), (tug_says.as_str(), "PULL")]].concat(),
    )
    .await
    .refused()
    .says("is on another button already");
    let kept = home
        .post(&format!("{to}/first"), &[&both[..], &[(rub_says.as_str(), "tickle"), (tug_says.as_str(), "")]].concat())
        .await;
    assert!(kept.kept().to.ends_with("/words/board"), "the next step follows: {}", kept.to);
    let mut says: Vec<_> = home.story().await.words_of(home.animal).iter().map(|w| w.says.to_string()).collect();
    says.sort();
    assert_eq!(says, ["tickle", "tug"]);
    // Places are filled in on a board never drawn, and once kept the board follows.
    let board = home.page(&format!("{to}/board")).await;
    assert_eq!(board.text.matches("\" selected>t").count(), 2, "{}", board.text);
    let story = home.story().await;
    let word = story.words_of(home.animal)[0].word.to_string();
    let kept = home.post(&format!("{to}/board"), &[("rows", "1"), ("columns", "2"), ("place-0-0", &word)]).await;
    assert!(kept.kept().to.ends_with("/board") && !kept.to.contains("words"), "{}", kept.to);
}

#[tokio::test]
async fn a_stage_is_set_by_hand_beside_the_figures() {
    let home = Home::new().await;
    let id = word(&home, "ball", &[]).await;
    let to = format!("/a/{}/words/card/{id}", home.animal);
    home.post(&format!("{to}/stage"), &[("stage", "invite"), ("because", "The coach says so.")]).await.kept();
    let story = home.story().await;
    let choice = story.of::<StageChoice>(home.animal).next().unwrap();
    assert_eq!(
        (choice.part.stage, choice.part.because.as_ref().unwrap().as_str()),
        (Stage::Invite, "The coach says so.")
    );
    home.page(&to).await.says("The figures point to").says("Now: <strong>invite");
    home.post(&format!("{to}/stage"), &[("stage", "expert")])
        .await
        .refused()
        .says("must be one of: prepare, show, invite, converse");
    home.post(&format!("{to}/stage"), &[]).await.refused().says("is missing");
}

#[tokio::test]
async fn the_board_keeps_known_words_where_they_are_unless_told_twice() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball", &[]).await, word(&home, "walk", &[]).await);
    let to = format!("/a/{}/words/board", home.animal);
    let size = [("rows", "2"), ("columns", "3")];
    let with = |more: &[(&'static str, &str)]| -> Vec<(String, String)> {
        size.iter().chain(more).map(|(n, v)| ((*n).to_owned(), (*v).to_owned())).collect()
    };
    let post = async |pairs: Vec<(String, String)>| {
        let pairs: Vec<(&str, &str)> = pairs.iter().map(|(n, v)| (n.as_str(), v.as_str())).collect();
        home.post(&to, &pairs).await
    };
    post(with(&[("place-0-0", &ball), ("place-1-2", &ball)])).await.refused().says("stands in row 1, place 1 already");
    post(with(&[("place-0-0", &ball)])).await.kept();
    // A new word beside it is no move.
    post(with(&[("place-0-0", &ball), ("place-0-2", &walk)])).await.kept();
    post(with(&[("place-1-1", &ball), ("place-0-2", &walk)]))
        .await
        .refused()
        .says("This would move")
        .says("to row 2, place 2");
    post(with(&[("place-0-2", &walk)])).await.refused().says("off the board");
    let story = home.story().await;
    let board = story.board().unwrap();
    assert!(board.words.iter().any(|p| p.word.to_string() == ball && (p.row, p.column) == (0, 0)));
    post(with(&[("place-1-1", &ball), ("place-0-2", &walk), ("move", "yes")])).await.kept();
    home.page(&format!("/a/{}/words", home.animal)).await.says("Where they are").says("ball");
    home.post(&to, &[("rows", "99"), ("columns", "3")]).await.refused().says("must be a whole number from 1 to 20");
    post(with(&[("place-20-0", &ball)])).await.refused().says("is not a field of this form");
}

#[tokio::test]
async fn another_size_of_the_board_or_a_proposal_loses_no_pick() {
    let home = Home::new().await;
    let (ball, walk) = (word(&home, "ball", &[]).await, word(&home, "walk", &[]).await);
    let to = format!("/a/{}/words/board", home.animal);
    let picked = |page: &str, id: &str| page.contains(&format!("value=\"{id}\" selected"));
    let larger = home.post(&to, &[("rows", "3"), ("columns", "4"), ("place-0-1", &ball), ("step", "size")]).await;
    assert_eq!(larger.status, 200);
    assert!(picked(&larger.text, &ball) && larger.text.contains("name=\"place-2-3\""));
    assert!(home.story().await.board().is_none(), "nothing was kept yet");
    let proposed = home.post(&to, &[("rows", "3"), ("columns", "4"), ("place-0-1", &ball), ("step", "propose")]).await;
    assert!(picked(&proposed.text, &ball) && picked(&proposed.text, &walk));
    // A word on a place that the board would no longer have is not dropped.
    home.post(&to, &[("rows", "1"), ("columns", "1"), ("place-0-1", &ball), ("step", "keep")])
        .await
        .refused()
        .says("holds a word");
}

#[tokio::test]
async fn a_first_board_of_three_words_has_none_side_by_side() {
    let home = Home::new().await;
    let mut ids = Vec::new();
    for says in ["cheese", "rub", "tug"] {
        ids.push(word(&home, says, &[]).await);
    }
    let page = home.page(&format!("/a/{}/words/board?rows=2&columns=3", home.animal)).await;
    let at = |id: &String| {
        let n = page.text[..page.text.find(&format!("{id}\" selected")).unwrap()].matches("<select id=\"place").count()
            as i32;
        ((n - 1) / 3, (n - 1) % 3)
    };
    let places: Vec<(i32, i32)> = ids.iter().map(at).collect();
    for (i, a) in places.iter().enumerate() {
        for b in &places[..i] {
            assert!((a.0 - b.0).abs() + (a.1 - b.1).abs() > 1, "{places:?}");
        }
    }
    let (rub, tug) = (places[1], places[2]);
    assert_eq!((rub.1 - tug.1).abs(), 2, "they sound nearly alike: {places:?}");
}

#[tokio::test]
async fn places_are_proposed_for_new_words_and_the_others_stay() {
    let home = Home::new().await;
    let ball = word(&home, "ball", &[]).await;
    let to = format!("/a/{}/words/board", home.animal);
    home.post(&to, &[("rows", "1"), ("columns", "6"), ("place-0-0", &ball)]).await.kept();
    let bawl = word(&home, "bawl", &[]).await;
    let page = home.page(&format!("{to}?propose=yes")).await;
    let chosen: Vec<&str> = page
        .text
        .split(" selected")
        .map(|s| &s[s.len().saturating_sub(37)..s.len() - 1])
        .filter(|s| *s == ball || *s == bawl)
        .collect();
    assert_eq!(chosen, [ball.as_str(), bawl.as_str()]);
    let at = |id: &str| page.text[..page.text.find(&format!("{id}\" selected")).unwrap()].matches("<select").count();
    assert!(at(&bawl) - at(&ball) >= 3, "words that sound the same stand apart");
    home.page(&format!("{to}?rows=1&columns=1&propose=yes")).await.says("cannot be proposed");
}

#[tokio::test]
async fn on_the_way_to_the_first_session_recording_can_wait() {
    let home = Home::new().await;
    let later = "data-test=\"later\"";
    let record = format!("/a/{}/words/record", home.animal);
    home.page(&record).await.does_not_say(later);
    word(&home, "ball", &[]).await;
    let page = home.page(&record).await;
    page.says(later).says("Later").says("Today keeps a line for it");
    let to =
        page.text.split(later).next().unwrap().rsplit("href=\"").next().unwrap().split('"').next().unwrap().to_owned();
    home.page(&to).await.says("<h1");
    assert!(!to.contains("record"), "it goes on: {to}");
}

#[tokio::test]
async fn what_nobody_edited_on_a_card_is_read_in_the_readers_language() {
    let home = Home::new().await;
    let ball = home.reward("play", "ball", &[]).await;
    let new = home.page(&format!("/a/{}/words/new?reward={ball}", home.animal)).await;
    new.says("asks for: ball");
    let texts = [
        ("means", "asks for: ball"),
        ("answer", "Give what “ball” asks for."),
        ("not_now", "“Not now”, once and calmly; offer something else."),
        ("reward", &ball),
    ];
    word(&home, "ball", &texts).await;
    // Whoever writes reads German from here on.
    let person = *home.story().await.people().keys().next().unwrap();
    let german = [("name", "Ada"), ("role", "home"), ("language", "de"), ("active", "yes")];
    home.post(&format!("/people/person/{person}"), &german).await.kept();
    let card = home.story().await.words_of(home.animal)[0].word;
    for path in [
        format!("/a/{}/words", home.animal),
        format!("/a/{}/words/card/{card}", home.animal),
        "/sheets/rules".to_owned(),
        format!("/a/{}/board", home.animal),
    ] {
        let page = home.page(&path).await;
        page.says("Gib, worum „ball“ bittet.").says("„Not now“").does_not_say("Give what");
    }
    // One that a person wrote stays as it is.
    let edited = [("says", "ball"), ("answer", "Throw it once."), ("active", "yes")];
    home.post(&format!("/a/{}/words/card/{card}", home.animal), &edited).await.kept();
    home.page("/sheets/rules").await.says("Throw it once.");
}
