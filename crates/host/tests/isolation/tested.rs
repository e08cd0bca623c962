//! What a home has tested and tries: tests of likes, a check and a trial of a change, so that pages that name them are asked with ids
//! that are there.

use sayso_host::Host;
use sayso_model::{
    AssessmentId, Body, CaseDesign, CaseExpected, CaseMeasure, CaseQuestion, CaseUnit, DesignId, DesignPlan, Event,
    EventId, HomeId, LikeOutcome, LikeTrial, LikesFormat, LikesTest, ProbeDesign, ProbeId, ProbePlan, ProbeResponse,
    ProbeTrial, Source,
};
use uuid::Uuid;

/// Tests of likes, one over and one under way, a check, each with an answer that a person noted, and a trial.
pub async fn tested(host: &Host, home: HomeId) {
    let store = host.server.home(home);
    let (story, now) = (store.story(home).await.unwrap(), host.now());
    let animal = story.animals().into_keys().find(|a| story.words_by_place(*a).len() > 1).unwrap();
    let other = story.people().into_keys().next().unwrap();
    let event = |body: Body| Event {
        id: EventId(Uuid::now_v7()),
        home,
        animal: Some(animal),
        person: Some(other),
        happened_at: now,
        zone: story.zone(),
        recorded_at: now,
        source: Source::Tap,
        body,
    };
    let rewards: Vec<_> = story.rewards().into_keys().take(2).collect();
    let words: Vec<_> = story.words_by_place(animal).into_iter().map(|w| w.word).take(2).collect();
    let mut all = Vec::new();
    for rounds in [1, 2] {
        let (assessment, format) = (AssessmentId(Uuid::now_v7()), LikesFormat::Paired);
        all.push(event(LikesTest { assessment, format, rewards: rewards.clone(), rounds, seed: 5 }.into()));
        let result = LikeOutcome::Chose { reward: rewards[0] };
        let offered = rewards.clone();
        all.push(event(LikeTrial { assessment, format, round: 1, offered, result }.into()));
    }
    let (probe, target) = (ProbeId(Uuid::now_v7()), words[0]);
    let plan =
        ProbePlan { probe, design: ProbeDesign::PickForWord, words, choices: 2, trials: 6, seed: 7, blind: true };
    all.push(event(plan.into()));
    let response = ProbeResponse::Chose { word: target, after_s: None };
    all.push(event(ProbeTrial { probe, trial: 1, target, blind: true, response }.into()));
    let trial = DesignPlan {
        trial: DesignId(Uuid::now_v7()),
        design: CaseDesign::Reversal,
        question: CaseQuestion::QuieterButton,
        label: None,
        measure: CaseMeasure::OwnPresses,
        expected: CaseExpected::More,
        words: vec![target],
        animals: Vec::new(),
        unit: CaseUnit::Day,
        first: now.day(&story.zone()),
        points: 16,
        phases: 4,
        least: 3,
        apart: 0,
        criteria: Vec::new(),
        seed: 3,
        proposal: None,
    };
    all.push(event(trial.into()));
    let outcomes = store.append(all).await.unwrap();
    assert!(outcomes.iter().all(|o| *o == sayso_store::Appended::New), "{outcomes:?}");
}
