//! Planned checks from plan to what may be said.

mod alone;

use crate::at_home::{Answer, Home};
use sayso_advisor::checks::{Next, PlannedTrial, next_trial, order};
use sayso_model::{Feed, ProbeDesign, ProbePlan, ProbeResponse, ProbeTrial, SignLevel};

async fn word(home: &Home, kind: &str, says: &str, more: &[(&str, &str)]) -> String {
    let reward = home.reward(kind, &format!("the {says} thing"), more).await;
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", says), ("reward", &reward)]).await;
    answer.kept().to.split(['/', '?']).nth(5).unwrap().to_owned()
}

async fn three(home: &Home) -> Vec<String> {
    vec![
        word(home, "food", "zucchini", &[("kcal_per_piece", "2")]).await,
        word(home, "play", "frisbee", &[]).await,
        word(home, "play", "squeaker", &[]).await,
    ]
}

fn filled<'a>(words: &'a [String], more: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    let mut pairs =
        vec![("design", "pick_for_word"), ("choices", "2"), ("rate", "90"), ("who", "two"), ("step", "plan")];
    for (name, value) in more {
        pairs.retain(|(n, _)| n != name);
        pairs.push((name, value));
    }
    pairs.extend(words.iter().map(|w| ("words", w.as_str())));
    pairs
}

async fn planned(home: &Home, words: &[String], more: &[(&str, &str)]) -> String {
    home.post(&format!("/a/{}/checks/new", home.animal), &filled(words, more)).await.kept().to.clone()
}

async fn plan(home: &Home) -> ProbePlan {
    home.story().await.of::<ProbePlan>(home.animal).next_back().unwrap().part.clone()
}

async fn next(home: &Home) -> Option<PlannedTrial> {
    let plan = plan(home).await;
    match next_trial(&*home.story().await, home.animal, plan.probe).unwrap().unwrap() {
        Next::Trial(trial) => Some(trial),
        Next::Done => None,
    }
}

async fn tap(home: &Home, check: &str, number: u16, answer: &str, more: &[(&str, &str)]) -> Answer {
    let number = number.to_string();
    let mut pairs = vec![("number", number.as_str()), ("answer", answer)];
    pairs.extend_from_slice(more);
    home.post(&format!("{check}/trial"), &pairs).await
}

#[tokio::test]
async fn a_check_is_counted_before_it_is_planned() {
    let home = Home::new().await;
    let words = three(&home).await;
    let new = format!("/a/{}/checks/new", home.animal);
    home.page(&new).await.says("Right at least, in %");
    home.page(&format!("{new}?words={}", words[1])).await.says(&format!("value=\"{}\" checked", words[1]));
    let counted = home.post(&new, &filled(&words, &[("step", "count")])).await;
    assert_eq!(counted.status, 200);
    // The answer stands beside the button: that is where the page opens again.
    counted.says("/checks/new#counted").says("id=\"counted\"");
    counted.says("for each of 3 words").says("Exact binomial").says("step\" value=\"plan\"");
    assert_eq!(home.story().await.of::<ProbePlan>(home.animal).count(), 0, "counting plans nothing");
    planned(&home, &words, &[]).await;
    let plan = plan(&home).await;
    assert_eq!((plan.design, plan.choices, plan.blind), (ProbeDesign::PickForWord, 2, true));
    let size = sayso_advisor::checks::size(3, 2, 0.9).unwrap();
    assert_eq!(u64::from(plan.trials), size.trials);
    counted
        .says(&format!("Plan these {} trials", plan.trials))
        .says(&format!("{} right of {}", size.critical, size.per_word));
}

#[tokio::test]
async fn wrong_plans_are_refused_and_keep_what_was_typed() {
    let home = Home::new().await;
    let words = three(&home).await;
    let new = format!("/a/{}/checks/new", home.animal);
    let send = |words: Vec<String>, more: Vec<(&'static str, &'static str)>| {
        let (new, home) = (new.clone(), &home);
        async move { home.post(&new, &filled(&words, &more)).await }
    };
    send(words[..1].to_vec(), vec![]).await.refused().says("must be 2 to 8, not 1");
    send(words.clone(), vec![("choices", "4")]).await.refused().says("at most the number of words");
    send(words.clone(), vec![("choices", "1")]).await.refused().says("whole number from 2");
    send(words.clone(), vec![("rate", "50")]).await.refused().says("above chance");
    send(words.clone(), vec![("rate", "50.5")]).await.refused().says("too close to chance");
    send(words.clone(), vec![("rate", "<b>much")]).await.refused().says("&lt;b&gt;much").does_not_say("<b>much");
    send(words.clone(), vec![("who", "nobody")]).await.refused().says("say who will be there");
    send(words.clone(), vec![("design", "wrong_delivery")]).await.refused().says("must be one of");
    send(words.clone(), vec![("step", "run")]).await.refused();
    send(words.clone(), vec![("seed", "1")]).await.refused().says("is not a field");
    send(vec!["nonsense".into(), words[0].clone()], vec![]).await.refused().says("does not know");
    let story = home.story().await;
    let frisbee = story.words_of(home.animal).into_iter().find(|w| w.says.as_str() == "frisbee").unwrap();
    let thing = frisbee.reward.unwrap().to_string();
    let twin = home.post(&format!("/a/{}/words/new", home.animal), &[("says", "again"), ("reward", &thing)]).await;
    let twin = twin.kept().to.split(['/', '?']).nth(5).unwrap().to_owned();
    send(vec![words[1].clone(), twin], vec![]).await.refused().says("for the same thing");
    assert_eq!(home.story().await.of::<ProbePlan>(home.animal).count(), 0);
    for wrong in ["x", "01890000-0000-7000-8000-000000000000"] {
        for page in ["", "/setter", "/presenter", "/sheet", "/scorer"] {
            assert_eq!(home.get(&format!("/a/{}/checks/{wrong}{page}", home.animal)).await.status, 404);
        }
    }
}

#[tokio::test]
async fn sheets_print_the_same_order_again_and_the_scorers_holds_no_word() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words, &[("choices", "3")]).await;
    let all = order(&plan(&home).await).unwrap();
    let sheet = home.page(&format!("{check}/sheet")).await;
    assert_eq!(sheet.text, home.page(&format!("{check}/sheet")).await.text);
    // Row by row: the number, the word to play, and the right thing marked in its place.
    let rows: Vec<&str> = sheet.text.split("<tr>").skip(1).filter(|row| !row.contains("scope=\"col\"")).collect();
    assert_eq!(rows.len(), all.len());
    let story = home.story().await;
    let cards = story.words();
    for (row, trial) in rows.iter().zip(&all) {
        let says = cards[&trial.word].says.as_str();
        let cells = row.split("<td ").skip(1).map(|c| &c[c.find('>').unwrap() + 1..c.find("</td>").unwrap()]);
        let cells: Vec<&str> = cells.collect();
        assert_eq!(cells[0], format!("<strong>{says}</strong>"));
        assert_eq!(cells[1 + trial.right_place], format!("<strong>the {says} thing \u{2022}</strong>"));
        assert_eq!(cells.iter().filter(|c| c.contains('\u{2022}')).count(), 1);
    }
    sheet.says("For the setter only").says("must not know").says("Stop at any sign of stress").says("seed");
    let scorer = home.page(&format!("{check}/scorer")).await;
    scorer.says("Place 3").says("Nothing").says("Went away").says("Sitting 1");
    for says in ["zucchini", "frisbee", "squeaker", "\u{2022}"] {
        scorer.does_not_say(says);
    }
}

#[tokio::test]
async fn the_presenters_page_never_holds_the_answer() {
    let home = Home::new().await;
    let words = three(&home).await;
    for design in ["pick_for_word", "press_under_covers", "press_for_thing"] {
        let check = planned(&home, &words, &[("design", design)]).await;
        for answer in ["1", "2", "nothing", "left", "1", "2"] {
            let trial = next(&home).await.unwrap();
            let page = home.page(&format!("{check}/presenter")).await;
            for (id, says) in words.iter().zip(["zucchini", "frisbee", "squeaker"]) {
                page.does_not_say(says).does_not_say(id);
            }
            page.does_not_say("the one asked for")
                .says("value=\"1\"")
                .says("value=\"2\"")
                .says("Nothing")
                .says("Went away");
            // Which side of a place is meant must not be taken for having left.
            page.does_not_say(">Left<");
            // The setter's page says where the right one goes.
            let setter = home.page(&format!("{check}/setter")).await;
            let says = home.story().await.words()[&trial.word].says.to_string();
            setter.says(&format!("Trial {} of", trial.number)).says(&format!("the {says} thing"));
            tap(&home, &check, trial.number, answer, &[]).await.kept();
        }
        // Also when an answer is put right or sent twice.
        let n = next(&home).await.unwrap().number;
        let wrong = tap(&home, &check, n, "1", &[("after_s", "soon")]).await;
        wrong.refused().says("soon");
        let twice = home.page(&format!("{check}/presenter?twice=yes")).await;
        for page in [&wrong, &twice] {
            for says in ["zucchini", "frisbee", "squeaker"] {
                page.does_not_say(says);
            }
        }
    }
}

#[tokio::test]
async fn nothing_and_left_are_kept_apart_and_the_last_tap_can_be_taken_back() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words, &[]).await;
    tap(&home, &check, 1, "nothing", &[]).await.kept();
    tap(&home, &check, 2, "left", &[]).await.kept();
    home.page(&format!("{check}/presenter")).await.says("Pip went away, and that is an answer");
    // On until food is chosen, which is counted, then taken back with its answer.
    let mut fed = 0;
    for number in 3.. {
        let trial = next(&home).await.unwrap();
        assert_eq!(trial.number, number);
        let food = trial.laid_out.iter().position(|w| w.to_string() == words[0]);
        let place = (food.unwrap_or(0) + 1).to_string();
        tap(&home, &check, number, &place, &[("after_s", "2,5")]).await.kept();
        fed = home.story().await.of::<Feed>(home.animal).count();
        if fed > 0 {
            break;
        }
    }
    assert_eq!(fed, 1);
    let before = next(&home).await.unwrap().number;
    let story = home.story().await;
    let last = story.of::<ProbeTrial>(home.animal).next_back().unwrap();
    let ProbeResponse::Chose { after_s, .. } = last.part.response else { panic!("a choice") };
    assert_eq!(after_s.map(|s| s.get()), Some(2.5));
    let id = last.id().to_string();
    home.post(&format!("{check}/undo"), &[("trial", &id)]).await.kept();
    let story = home.story().await;
    assert_eq!(story.of::<Feed>(home.animal).count(), 0);
    assert_eq!(next(&home).await.unwrap().number, before, "its first answer is used up");
    let again = home.post(&format!("{check}/undo"), &[("trial", &id)]).await;
    assert!(again.kept().to.ends_with("twice=yes"));
    assert_eq!(home.story().await.of::<ProbeTrial>(home.animal).count(), usize::from(before - 2));
    // An answer to a trial that is over changes nothing; a place that is not there is refused.
    assert!(tap(&home, &check, 1, "1", &[]).await.kept().to.ends_with("twice=yes"));
    for answer in ["3", "0", "-1", "right", ""] {
        tap(&home, &check, before, answer, &[]).await.refused().says("must be a place from 1 to 2");
    }
    home.page(&check)
        .await
        .says("1 trial taken back: counted as wrong")
        .says("Nothing: ")
        .says("Neither counts as wrong");
}

/// Runs all that is left, always right, or as `place` says.
async fn run(home: &Home, check: &str, place: impl Fn(&PlannedTrial) -> String, most: usize, more: &[(&str, &str)]) {
    for _ in 0..most {
        let Some(trial) = next(home).await else { return };
        tap(home, check, trial.number, &place(&trial), more).await.kept();
    }
}

fn right(trial: &PlannedTrial) -> String {
    (trial.right_place + 1).to_string()
}

#[tokio::test]
async fn a_check_may_be_read_before_its_end_and_is_judged_with_all_others() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words[..2], &[]).await;
    let order = order(&plan(&home).await).unwrap();
    let trials = order.len();
    run(&home, &check, right, trials - 1, &[("after_s", "2")]).await;
    let page = home.page(&check).await;
    page.says(&format!("{} of {trials} trials", trials - 1)).says("What was begun stays in the pool");
    page.does_not_say("stands up to a blind check").does_not_say("What may be said");
    run(&home, &check, right, 1, &[]).await;
    let of_each = |w: &String| order.iter().filter(|t| t.word.to_string() == *w).count();
    let told = |n: usize| format!("Pip went for this {n} times, and it was the one asked for in {n}");
    let page = home.page(&check).await;
    page.says("Finished as planned")
        .says(&told(of_each(&words[0])))
        .says(&told(of_each(&words[1])))
        .says("exact binomial")
        .says("Bayes factor")
        .says("within 2.0 s")
        .says("stands up to a blind check")
        .does_not_say("Not as planned");
    home.page(&format!("{check}/presenter")).await.says("trials are done");
    home.page(&format!("/a/{}/checks", home.animal)).await.says("Finished as planned");
    home.page(&format!("/a/{}/evidence/{}", home.animal, words[0])).await.says("stands up to a blind check");
}

#[tokio::test]
async fn who_knew_the_answer_is_told_and_no_blind_check_is_claimed() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words[..2], &[]).await;
    let trials = plan(&home).await.trials;
    run(&home, &check, right, 500, &[("knew", "yes")]).await;
    home.page(&check)
        .await
        .says("but not as planned")
        .says(&format!("{trials} trials in which the person with the animal knew the answer"))
        .says("nothing can be said yet")
        .does_not_say("stands up to a blind check");
    // Every word right every other time: at chance, and said without denying anything.
    let check = planned(&home, &words[1..], &[]).await;
    let times = std::cell::RefCell::new(std::collections::BTreeMap::new());
    let half = |t: &PlannedTrial| {
        let mut times = times.borrow_mut();
        let nth = times.entry(t.word).or_insert(0);
        *nth += 1;
        (if *nth % 2 == 0 { t.right_place + 1 } else { 2 - t.right_place }).to_string()
    };
    run(&home, &check, half, 500, &[]).await;
    home.page(&check).await.says("speaks for nothing either way").does_not_say("does not understand");
}

#[tokio::test]
async fn pressing_is_read_by_rearranging_and_a_day_of_stress_stops_it() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words, &[("design", "press_for_thing"), ("choices", "")]).await;
    assert_eq!(plan(&home).await.choices, 3);
    home.page(&format!("{check}/presenter")).await.says("Button 3");
    home.page(&format!("{check}/sheet")).await.says("Hide");
    run(&home, &check, right, 1000, &[]).await;
    home.page(&check)
        .await
        .says("presses kept as they were")
        .does_not_say("Bayes factor")
        .says("Buttons keep their places, so a habit of place looks the same");
    let sign = sayso_model::Sign {
        sign: sayso_model::Note::new("hid under the table").unwrap(),
        level: SignLevel::Strong,
        when: sayso_model::When::During,
        session: None,
    };
    let event = {
        let story = home.story().await;
        let mut event = story.of::<ProbePlan>(home.animal).next().unwrap().event.clone();
        event.id = sayso_model::EventId("01890000-0000-7000-8000-000000000009".parse().unwrap());
        event.body = sign.into();
        event
    };
    home.state.store.append(vec![event]).await.unwrap();
    let new = format!("/a/{}/checks/new", home.animal);
    home.page(&new).await.says("Not today").does_not_say("How many trials?");
    for page in ["/setter", "/presenter"] {
        home.page(&format!("{check}{page}")).await.says("Stop here");
    }
}

#[tokio::test]
async fn buttons_under_covers_lie_as_drawn_for_the_helper_and_unseen_by_the_presenter() {
    let home = Home::new().await;
    let words = three(&home).await;
    let new = format!("/a/{}/checks/new", home.animal);
    home.page(&new).await.says("swapped under covers as drawn before each trial").says("it may suggest and no more");
    let check = planned(&home, &words, &[("design", "press_under_covers"), ("choices", "3")]).await;
    let drawn = plan(&home).await;
    assert_eq!((drawn.design, drawn.choices), (ProbeDesign::PressUnderCovers, 3));
    let all = order(&drawn).unwrap();
    let places: std::collections::BTreeSet<_> = all.iter().map(|t| t.right_place).collect();
    assert_eq!(places.len(), 3, "places are drawn anew");
    let story = home.story().await;
    let says = |w| story.words()[&w].says.to_string();
    let sheet = home.page(&format!("{check}/sheet")).await;
    for t in &all {
        let row: String = t.laid_out.iter().enumerate().fold(String::new(), |row, (at, w)| {
            let cell = if at == t.right_place { format!("<strong>{} \u{2022}</strong>", says(*w)) } else { says(*w) };
            let left = if at == 0 { " (Pip’s left)" } else { "" };
            format!("{row}<td data-label=\"Place {}{left}\">{cell}</td>", at + 1)
        });
        sheet.says(&format!(
            "<th scope=\"row\">{}</th><td data-label=\"Hide\"><strong>the {} thing</strong></td>{row}",
            t.number,
            says(t.word)
        ));
    }
    let setter = home.page(&format!("{check}/setter")).await;
    setter.says("Under the covers").says(&format!("Its button lies in place {}", all[0].right_place + 1));
    home.page(&format!("{check}/scorer")).await.says("Place 3");
    // By place, which the presenter taps, the word that lay there is noted.
    tap(&home, &check, 1, "2", &[]).await.kept();
    let story = home.story().await;
    let ProbeResponse::Chose { word, .. } = story.of::<ProbeTrial>(home.animal).next_back().unwrap().part.response
    else {
        panic!("a choice")
    };
    assert_eq!(word, all[0].laid_out[1]);
    home.page(&format!("{check}/presenter")).await.says("stays in the record and counts as wrong");
    // A new one says what becomes of this one.
    home.page(&new).await.says("Not finished:").says("one wrong is charged for the answer not recorded");
    home.page(&check).await.says("at chance here, and that is no failure");
}

#[tokio::test]
async fn buttons_that_keep_their_places_may_suggest_and_no_more() {
    let home = Home::new().await;
    let words = three(&home).await;
    let check = planned(&home, &words, &[("design", "press_for_thing")]).await;
    home.page(&check).await.says("it may suggest and no more").says("Swapped under covers, it could show it");
    home.page(&format!("/a/{}/checks/new", home.animal)).await.does_not_say("one wrong is charged");
}
