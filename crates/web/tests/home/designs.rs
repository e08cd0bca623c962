//! Trials of a change from plan to what may be said.

use crate::at_home::Home;
use sayso_advisor::designs::{Standing, Trial, report, trial};
use sayso_model::{
    Accident, Body, CaseCondition, CaseDesign, DesignNote, DesignPlan, DesignStop, Event, EventId, Moment, Note, Press,
    PressedBy, Probability, Sign, SignLevel, When, WordId,
};
use sayso_web::app;
use uuid::Uuid;

/// The trial begins the day after the notebook's noon of 2 March; this is long after it.
fn after() -> Moment {
    "2026-05-20T12:00:00Z".parse().unwrap()
}

/// The eleventh day.
fn midway() -> Moment {
    "2026-03-13T12:00:00Z".parse().unwrap()
}

fn at(home: &mut Home, clock: fn() -> Moment) {
    home.app = app(home.state.clone().with_clock(clock));
}

async fn word(home: &Home, says: &str) -> String {
    let reward = home.reward("play", &format!("the {says} thing"), &[]).await;
    let answer = home.post(&format!("/a/{}/words/new", home.animal), &[("says", says), ("reward", &reward)]).await;
    answer.kept().to.split(['/', '?']).nth(5).unwrap().to_owned()
}

fn filled<'a>(more: &[(&'a str, &'a str)]) -> Vec<(&'a str, &'a str)> {
    let mut pairs = vec![
        ("question", "quieter_button"),
        ("label", ""),
        ("design", "proposed"),
        ("measure", "own_presses"),
        ("expected", "more"),
        ("unit", "day"),
        ("first", "2026-03-03"),
        ("points", "28"),
        ("phases", "4"),
        ("least", "5"),
        ("apart", "3"),
        ("criteria", ""),
        ("step", "plan"),
    ];
    for (name, _) in more {
        pairs.retain(|(n, _)| n != name);
    }
    pairs.extend_from_slice(more);
    pairs
}

async fn planned(home: &Home, more: &[(&str, &str)]) -> String {
    home.post(&format!("/a/{}/designs/new", home.animal), &filled(more)).await.kept().to.clone()
}

async fn plan(home: &Home) -> (Event, DesignPlan) {
    let story = home.story().await;
    let fact = story.of::<DesignPlan>(home.animal).next_back().unwrap();
    (fact.event.clone(), fact.part.clone())
}

/// An event like the plan's, at noon of a day of the trial (from 0).
fn on(like: &Event, plan: &DesignPlan, day: i32, second: u32, body: impl Into<Body>) -> Event {
    let noon = plan.first.plus(day).start(&like.zone).plus_seconds(12.0 * 3600.0 + f64::from(second));
    Event { id: EventId(Uuid::now_v7()), happened_at: noon, recorded_at: noon, body: body.into(), ..like.clone() }
}

fn press(word: WordId) -> Press {
    Press {
        word,
        by: PressedBy::Animal,
        certainty: Probability::clamped(1.0),
        accident: Accident::No,
        place: None,
        speed: None,
        stream: None,
        session: None,
    }
}

/// Logs presses for every day but `skipped`: `usual` of them, or `changed` where the change was drawn.
async fn live(home: &Home, words: &[WordId], skipped: Option<u16>, usual: u32, changed: u32) {
    let (like, plan) = plan(home).await;
    let story = home.story().await;
    let trial: Trial<'_> = trial(&story, home.animal, plan.trial).unwrap().unwrap();
    let mut events = Vec::new();
    for (lane, word) in words.iter().enumerate() {
        for point in (1..=plan.points).filter(|p| Some(*p) != skipped) {
            let lane = if trial.lanes.len() > 1 { lane } else { 0 };
            let drawn = trial.drawn(lane, point);
            // A day has a press or two more than the next of its condition, so that not all are alike and the mean of a
            // condition hardly goes by the order that was drawn.
            let alike = (1..=point).filter(|p| trial.drawn(lane, *p) == drawn).count();
            let wobble = u32::try_from(alike % 3).unwrap();
            let n = wobble + if drawn == Some(CaseCondition::Changed) { changed } else { usual };
            events.extend((0..n).map(|k| on(&like, &plan, i32::from(point) - 1, k, press(*word))));
        }
    }
    home.state.store.append(events).await.unwrap();
}

#[tokio::test]
async fn a_trial_is_counted_before_it_is_planned_and_shows_no_later_day() {
    let home = Home::new().await;
    word(&home, "frisbee").await;
    let new = format!("/a/{}/designs/new", home.animal);
    home.page(&new).await.says("A quieter button").says("may leave at any time");
    let counted = home.post(&new, &filled(&[("step", "count")])).await;
    // 28 points in 4 phases of at least 5: C(11, 3) orders.
    counted.says("165").says("0.0061").says("meets the standards").says("Plan it and draw the order");
    assert_eq!(home.story().await.of::<DesignPlan>(home.animal).count(), 0, "counting plans nothing");
    let to = planned(&home, &[]).await;
    home.page(&to).await.says("It begins on 3 Mar 2026").says("Everything as usual").says("Later days are not shown");
    home.page(&format!("/a/{}/designs", home.animal)).await.says("Does a quieter button help?").says("begins on");
    home.page(&format!("/a/{}/evidence", home.animal)).await.says("/designs");
    home.page(&format!("/a/{}/checks", home.animal)).await.says("/designs");
}

#[tokio::test]
async fn wrong_plans_are_refused_and_keep_what_was_typed() {
    let home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let new = format!("/a/{}/designs/new", home.animal);
    for (more, what) in [
        (vec![("points", "19")], "must be 20 to 120"),
        (vec![("points", "some")], "must be a whole number"),
        (vec![("points", "")], "is missing"),
        (vec![("first", "2026-03-02")], "the order is drawn before it begins"),
        (vec![("first", "soon")], "is not a day"),
        (vec![("phases", "1")], "must be 2 to 8"),
        (vec![("question", "other")], "says what is changed"),
        (vec![("question", "magic")], "must be one of"),
        (vec![("design", "multiple_baseline"), ("words", frisbee.as_str())], "must name 2 to 8"),
        (vec![("design", "changing_criterion"), ("criteria", "6; 4; 2")], "a criterion is for people"),
        (
            vec![("design", "changing_criterion"), ("measure", "delivery_delay"), ("criteria", "6; fast")],
            "numbers of seconds",
        ),
        (
            vec![("design", "changing_criterion"), ("measure", "delivery_delay"), ("criteria", "6; 4")],
            "one for each phase after the first",
        ),
        (vec![("words", "nonsense")], "does not know"),
    ] {
        home.post(&new, &filled(&more)).await.refused().says(what);
    }
    home.post(&new, &filled(&[("question", "other"), ("label", "<b>x")])).await.kept();
    assert_eq!(home.post(&new, &filled(&[("seed", "1")])).await.status, 422);
    let unknown = format!("/a/{}/designs/{}", home.animal, Uuid::nil());
    assert_eq!(home.get(&unknown).await.status, 404);
}

#[tokio::test]
async fn a_second_trial_of_the_same_measure_on_the_same_days_says_so_where_it_is_planned_and_on_both() {
    let home = Home::new().await;
    let (frisbee, squeaker) = (word(&home, "frisbee").await, word(&home, "squeaker").await);
    let new = format!("/a/{}/designs/new", home.animal);
    // Nothing is chosen beforehand, and what is missing is said.
    home.page(&new)
        .await
        .does_not_say("required checked value=\"quieter")
        .does_not_say("value=\"quieter_button\" required checked");
    home.post(&new, &filled(&[("question", ""), ("step", "count")])).await.refused().says("href=\"#question\"");
    let first = planned(&home, &[("words", &frisbee)]).await;
    home.page(&first).await.does_not_say("data-test=\"beside\"");
    let other = [("question", "other"), ("label", "a softer mat"), ("step", "count")];
    let counted = |more: Vec<(&'static str, String)>| {
        let (home, new) = (&home, new.clone());
        async move {
            let mut fields: Vec<(&str, &str)> = other.to_vec();
            fields.extend(more.iter().map(|(name, value)| (*name, value.as_str())));
            home.post(&new, &filled(&fields)).await.text
        }
    };
    let said = counted(vec![]).await;
    assert!(said.contains("data-test=\"beside\"") && said.contains(&first), "{said}");
    assert!(said.contains("Does a quieter button help? 3 Mar 2026 to 30 Mar 2026"), "{said}");
    assert!(said.contains("begin on 31 Mar 2026 or later"), "{said}");
    // Another measure, other words, other days: each can be told apart.
    for apart in
        [("measure", "stress_signs".to_owned()), ("words", squeaker.clone()), ("first", "2026-03-31".to_owned())]
    {
        let said = counted(vec![apart.clone()]).await;
        assert!(said.contains("id=\"counted\"") && !said.contains("data-test=\"beside\""), "{apart:?}: {said}");
    }
    let second = planned(&home, &other[..2]).await;
    for (own, others) in [(&first, &second), (&second, &first)] {
        home.page(own).await.says("data-test=\"beside\"").says(others).says("Neither can be told apart");
    }
    // One that is stopped before a day of it was over took no day.
    home.post(&format!("{second}/stop"), &[("reason", "other"), ("why", "")]).await.kept();
    home.page(&first).await.does_not_say("data-test=\"beside\"");
    let said = counted(vec![]).await;
    assert!(!said.contains(&second), "{said}");
}

#[tokio::test]
async fn a_change_that_helps_is_found_and_said_with_its_orders() {
    let mut home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let to = planned(&home, &[("words", &frisbee)]).await;
    live(&home, &[frisbee.parse().unwrap()], Some(1), 2, 6).await;
    at(&mut home, midway);
    let page = home.page(&to).await;
    page.says("point 11 of 28").says("Figures so far").says("Nothing is claimed before the end");
    page.does_not_say("possible orders (p").does_not_say("Orders as extreme");
    at(&mut home, after);
    let (_, plan) = plan(&home).await;
    let story = home.story().await;
    let found = trial(&story, home.animal, plan.trial).unwrap().unwrap();
    let report = report(&story, &found, after());
    assert_eq!((report.standing.clone(), report.done, report.missing), (Standing::Finished, (28, 28), 1));
    let tested = report.tested.as_ref().unwrap();
    assert!(tested.test.exact && tested.test.orders == 165 && tested.test.p < 0.05, "{tested:?}");
    let difference = tested.difference.unwrap();
    let (low, high) = (difference.low.unwrap(), difference.high.unwrap());
    assert!(low <= 4.0 && 4.0 <= high && low > 0.0 && difference.n == 27, "{difference:?}");
    home.page(&to)
        .await
        .says(&format!("{} of 165 possible orders", tested.test.as_extreme))
        .says("with Pip, in these weeks")
        .says("1 of 28 points over have no value")
        .says("NAP")
        .says("Tau-U")
        .says("celeration")
        .says("class=\"phase\"")
        .says("harder to hear from a quieter button")
        .does_not_say("proves");
}

#[tokio::test]
async fn no_difference_is_not_read_as_no_effect() {
    let mut home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let to = planned(&home, &[("expected", "either")]).await;
    live(&home, &[frisbee.parse().unwrap()], None, 3, 3).await;
    at(&mut home, after);
    home.page(&to).await.says("it may well be chance").says("does not show that the change does nothing");
}

#[tokio::test]
async fn words_change_one_after_the_other_and_conditions_in_quick_turn() {
    let mut home = Home::new().await;
    let mut words = Vec::new();
    for says in ["frisbee", "squeaker", "tunnel"] {
        words.push(word(&home, says).await);
    }
    let ticked: Vec<(&str, &str)> =
        [("question", "new_place")].into_iter().chain(words.iter().map(|w| ("words", w.as_str()))).collect();
    let to = planned(&home, &ticked).await;
    assert_eq!(plan(&home).await.1.design, CaseDesign::MultipleBaseline);
    let ids: Vec<WordId> = words.iter().map(|w| w.parse().unwrap()).collect();
    live(&home, &ids, None, 1, 5).await;
    at(&mut home, after);
    // 3! orders of the words times 5 starts each.
    home.page(&to).await.says("of 750 possible orders").says("squeaker").says("meets the standards");
    at(&mut home, || "2026-03-02T12:00:00Z".parse().unwrap());
    let to = planned(
        &home,
        &[("question", "faster_delivery"), ("points", "14"), ("measure", "delivery_delay"), ("expected", "less")],
    )
    .await;
    assert_eq!(plan(&home).await.1.design, CaseDesign::AlternatingTreatments);
    at(&mut home, after);
    home.page(&to).await.says("a condition has no observation yet").says("does not meet the standards");
}

#[tokio::test]
async fn goals_are_for_people() {
    let mut home = Home::new().await;
    word(&home, "frisbee").await;
    let to = planned(
        &home,
        &[
            ("question", "faster_delivery"),
            ("design", "changing_criterion"),
            ("measure", "delivery_delay"),
            ("expected", "less"),
            ("criteria", "6; 4; 2,5"),
        ],
    )
    .await;
    at(&mut home, || "2026-03-30T12:00:00Z".parse().unwrap());
    home.page(&to).await.says("deliver within 2.5 s");
}

#[tokio::test]
async fn a_strong_sign_under_the_change_ends_the_trial_and_a_person_may_stop_it() {
    let mut home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let to = planned(&home, &[]).await;
    live(&home, &[frisbee.parse().unwrap()], None, 2, 6).await;
    let (like, drawn) = plan(&home).await;
    let (point, usual) = {
        let story = home.story().await;
        let trial = trial(&story, home.animal, drawn.trial).unwrap().unwrap();
        let first = |c| (1..=28).find(|p| trial.drawn(0, *p) == Some(c)).unwrap();
        (first(CaseCondition::Changed), first(CaseCondition::Usual))
    };
    let sign = |point: u16| {
        let body =
            Sign { sign: Note::new("hid").unwrap(), level: SignLevel::Strong, when: When::During, session: None };
        on(&like, &drawn, i32::from(point) - 1, 60, body)
    };
    // Under the usual condition the trial goes on.
    home.state.store.append(vec![sign(usual)]).await.unwrap();
    at(&mut home, after);
    home.page(&to).await.says("possible orders (p").does_not_say("ended by");
    home.state.store.append(vec![sign(point)]).await.unwrap();
    home.page(&to)
        .await
        .says("Stopped: a strong sign of stress")
        .says("does not meet the standards")
        .says("No test")
        .does_not_say("possible orders (p");
    // Another trial, stopped by a person.
    at(&mut home, || "2026-03-02T12:00:00Z".parse().unwrap());
    let to = planned(&home, &[]).await;
    home.post(&format!("{to}/stop"), &[("reason", "boredom"), ("why", "")]).await.refused().says("must be one of");
    home.post(&format!("{to}/stop"), &[("reason", "not_kept"), ("why", "We were away.")]).await.kept();
    assert_eq!(home.story().await.of::<DesignStop>(home.animal).count(), 1);
    home.page(&to).await.says("it could not be kept up").does_not_say("Stop this trial now");
}

#[tokio::test]
async fn what_was_in_force_is_noted_and_told_but_the_test_goes_by_the_draw() {
    let mut home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let to = planned(&home, &[]).await;
    live(&home, &[frisbee.parse().unwrap()], None, 2, 6).await;
    at(&mut home, midway);
    let note = format!("{to}/note");
    home.post(&note, &[("lane", "0"), ("point", "12"), ("in_force", "usual")]).await.refused().says("from 1 to 11");
    home.post(&note, &[("lane", "4"), ("point", "2"), ("in_force", "usual")]).await.refused();
    // The first points are usual in every order.
    home.post(&note, &[("lane", "0"), ("point", "2"), ("in_force", "changed"), ("because", "guests")]).await.kept();
    assert_eq!(home.story().await.of::<DesignNote>(home.animal).count(), 1);
    at(&mut home, after);
    home.page(&to).await.says("1 point with another condition than the one drawn").says("possible orders (p");
}

#[tokio::test]
async fn an_order_drawn_too_late_is_never_tested() {
    let mut home = Home::new().await;
    let frisbee = word(&home, "frisbee").await;
    let to = planned(&home, &[]).await;
    live(&home, &[frisbee.parse().unwrap()], None, 2, 6).await;
    let (like, drawn) = plan(&home).await;
    let other = DesignPlan { seed: drawn.seed ^ 1, ..drawn };
    let correction =
        sayso_model::Correction { of: like.id, happened_at: None, animal: None, body: Box::new(other.into()) };
    let event = Event { id: EventId(Uuid::now_v7()), body: correction.into(), ..like };
    home.state.store.append(vec![event]).await.unwrap();
    at(&mut home, after);
    home.page(&to).await.says("the plan was changed later").does_not_say("possible orders (p");
}
