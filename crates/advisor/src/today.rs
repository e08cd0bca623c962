//! Today: what to do now, for how long, and because of which figures. Welfare first.

use crate::advice::{Advice, Reason, Sure, Topic};
use crate::buttons;
use crate::case::Case;
use crate::estimate::Estimate;
use crate::likes::{LikesReport, likes};
use crate::plan::{Plan, plan};
use crate::ration::{Ration, ration};
use crate::stages::{Standing, joining_recent, reasons, standings};
use crate::stuck::stuck;
use crate::thinning::thinning;
use crate::welfare::{rest_today, welfare};
use sayso_model::facts::BATTERY_EMERGENCY;
use sayso_model::{AnimalCard, AnimalId, Moment, Stage, Story};

/// Everything the Today page shows.
#[derive(Clone, Debug)]
pub struct Today {
    /// The animal.
    pub animal: AnimalCard,
    /// The moment it holds for.
    pub now: Moment,
    /// Advice, most important first.
    pub advice: Vec<Advice>,
    /// Where each word stands.
    pub words: Vec<Standing>,
    /// The next session; none while sessions rest or nothing is to be shown.
    pub plan: Option<Plan>,
    /// The day's rewards.
    pub ration: Ration,
    /// Share of sessions joined over four weeks.
    pub joining: Estimate,
}

/// What to do at `now`; none for an animal the story does not know.
#[must_use]
pub fn today(case: &Case<'_>) -> Option<Today> {
    let (story, animal, now) = (case.story(), case.animal(), case.now());
    let card = (*story.animals().get(&animal)?).clone();
    let words = standings(case).to_vec();
    let ration = ration(story, &card, now);
    let likes = likes(case);
    let rest = rest_today(case);
    let plan = if rest { None } else { plan(case) };
    let (joined, begun) = joining_recent(case);
    let joining = Estimate::share(joined, begun);

    let mut advice = welfare(case);
    advice.extend(ration_advice(&ration));
    advice.extend(set_up(story, animal, &words, &ration, &likes));
    advice.extend(buttons::advice(story, Some(animal), now, case.sums()));
    advice.extend(likes_advice(&likes));
    advice.extend(stuck(case));
    advice.extend(thinning(case));
    if let Some(plan) = &plan {
        advice.push(show_advice(plan));
    }
    if !rest {
        advice.extend(words.iter().filter_map(|w| stage_advice(w, joining)));
    }
    advice.sort_by_key(|a| a.topic);
    Some(Today { animal: card, now, advice, words, plan, ration, joining })
}

fn ration_advice(ration: &Ration) -> Option<Advice> {
    let over = ration.over_kcal > 0.0;
    let spent = ration.left_kcal.is_some_and(|left| left <= 0.0);
    (over || spent).then(|| {
        let text = format!(
            "{:.0} kcal given in {} feeds today; the day's rewards are {:.0} kcal.",
            ration.given_kcal,
            ration.feeds,
            ration.budget_kcal.unwrap_or(0.0)
        );
        Advice::new(
            Topic::Ration,
            "No more food rewards today: use play, touch or exploring.",
            vec![Reason::said(text)],
            Sure::Fairly,
            "Midnight, or an allowance a veterinarian sets.",
        )
        .caution("Individuals of one weight may need up to three times as much or as little; watch the body and ask a veterinarian.")
    })
}

fn set_up(story: &Story, animal: AnimalId, words: &[Standing], ration: &Ration, likes: &LikesReport) -> Vec<Advice> {
    let mut found = Vec::new();
    let mut say = |act: &str, because: String, change: &str| {
        found.push(Advice::new(Topic::SetUp, act, vec![Reason::said(because)], Sure::Very, change));
    };
    let rewards = story.rewards_of(animal).len();
    if rewards < 2 {
        say(
            "List what it may want: food, play, touch, training, exploring, rest.",
            format!("{rewards} rewards are listed; a likes test compares at least two."),
            "Two or more rewards listed.",
        );
    } else if likes.trials == 0 {
        say(
            "Hold a likes test.",
            format!("{rewards} rewards are listed and none has been tested (n = 0)."),
            "A likes test recorded.",
        );
    } else if words.is_empty() {
        say(
            "Choose two or three first words.",
            format!("{} trials of likes tests are recorded, and no word is on the board yet.", likes.trials),
            "A word card made.",
        );
    }
    if let Some(why) = &ration.refusal {
        say("Set the day's food allowance.", why.clone(), "An allowance typed in, or what is missing filled in.");
    }
    for card in story.words_of(animal) {
        if card.answer.is_none() || card.not_now.is_none() {
            say(
                &format!(
                    "Write on the card of \u{201c}{}\u{201d} how everyone answers it, and what to say for \u{201c}not now\u{201d}.",
                    card.says
                ),
                "People who answer alike make a word easier to learn (common practice, no source).".to_owned(),
                "The card filled in.",
            );
        }
    }
    found
}

fn likes_advice(likes: &LikesReport) -> Option<Advice> {
    likes.retest.as_ref().map(|why| {
        Advice::new(
            Topic::Likes,
            "Hold a short likes test before the next sessions.",
            vec![Reason::said(why.clone())],
            Sure::Little,
            "A test in the last weeks whose ranking agrees with the one before.",
        )
    })
}

fn show_advice(plan: &Plan) -> Advice {
    let list: Vec<String> =
        plan.words.iter().map(|w| format!("\u{201c}{}\u{201d} about {} times", w.says, w.showings)).collect();
    let mut because: Vec<Reason> = plan
        .words
        .iter()
        .map(|w| Reason::said(format!("\u{201c}{}\u{201d}: shown {} times today; least shown first.", w.says, w.today)))
        .collect();
    because.push(Reason::said(format!("Length: {}.", plan.minutes_because)));
    because.push(Reason::figure("Pace of its sessions.", plan.pace));
    if let Some(best) = plan.times.first() {
        because.push(Reason::figure(
            format!("It joined most between {} and {} o'clock.", best.from, best.to),
            best.joining,
        ));
    }
    Advice::new(
        Topic::Show,
        format!("Show {}: press, say, deliver. Stop while it still wants more.", list.join(", ")),
        because,
        if plan.pace.n >= 6 { Sure::Fairly } else { Sure::Little },
        "Leaving or a strong sign ends it at once; other words once these are shown as often.",
    )
    .minutes(plan.minutes)
    .caution(format!(
        "It may come and go as it likes. Keep buttons' battery covers screwed shut and watch an animal that chews. {BATTERY_EMERGENCY}"
    ))
}

fn stage_advice(word: &Standing, joining: Estimate) -> Option<Advice> {
    let says = &word.says;
    let change = word.would_change.join("; ");
    let mut because = reasons(word);
    because.push(Reason::figure("Share of sessions joined in four weeks.", joining));
    let (topic, act) = match (word.stage, word.figures_say) {
        (stage, figures) if figures < stage => (
            Topic::Stuck,
            format!("Go back to \u{201c}{}\u{201d} with \u{201c}{says}\u{201d}; that is no loss.", figures.name()),
        ),
        (Stage::Prepare | Stage::Show, Stage::Invite) => (
            Topic::Invite,
            format!(
                "Begin inviting \u{201c}{says}\u{201d}: offer, wait five seconds (common practice), then show it yourself and give it."
            ),
        ),
        (Stage::Prepare | Stage::Show | Stage::Invite, Stage::Converse) => (
            Topic::Converse,
            format!("\u{201c}{says}\u{201d} is ready for conversation: leave it to the animal and answer every press."),
        ),
        (Stage::Invite, Stage::Invite) => (
            Topic::Invite,
            format!(
                "Invite \u{201c}{says}\u{201d} once or twice among the showings; whatever comes, show it and give it."
            ),
        ),
        (Stage::Converse, _) => (
            Topic::Converse,
            format!("Answer every press of \u{201c}{says}\u{201d}, also with \u{201c}not now\u{201d}."),
        ),
        _ => return None,
    };
    let sure = if word.response.n >= 10 { Sure::Fairly } else { Sure::Little };
    Some(Advice::new(topic, act, because, sure, change).about(word.word))
}
