//! The engine builds its table of a join on the left: there the animals must stand, for events are a thousand times as many.

use crate::made::{frame, tables};
use datafusion::physical_plan::ExecutionPlan;
use datafusion::physical_plan::joins::HashJoinExec;
use datafusion::prelude::{SessionConfig, SessionContext};
use std::sync::Arc;
use study_cohort::*;

/// Columns of the tables below a part of a plan.
fn read_below(plan: &Arc<dyn ExecutionPlan>) -> Vec<String> {
    if plan.children().is_empty() {
        return plan.schema().fields().iter().map(|field| field.name().clone()).collect();
    }
    plan.children().into_iter().flat_map(read_below).collect()
}

fn joins(plan: &Arc<dyn ExecutionPlan>, found: &mut Vec<(Vec<String>, Vec<String>)>) {
    if let Some(join) = plan.downcast_ref::<HashJoinExec>() {
        found.push((read_below(join.left()), read_below(join.right())));
    }
    plan.children().into_iter().for_each(|child| joins(child, found));
}

/// What is read on both sides of each join of a question, where there are far fewer events than animals.
async fn sides(question: Question, config: SessionConfig) -> Vec<(Vec<String>, Vec<String>)> {
    let (rows, _) = tables(1);
    let animal = |household| Animal { household, animal: 0, species: "dog", age_band: AgeBand::Unknown, until_s: 9 };
    let animals: Vec<Animal> = (0..200_000).map(animal).collect();
    let context = SessionContext::new_with_config(config);
    let events = frame(&context, vec![events_batch(0, &rows[..20]).unwrap()]);
    let animals = frame(&context, vec![animals_batch(0, &animals).unwrap()]);
    let plan = ask(question, events, animals).unwrap().create_physical_plan().await.unwrap();
    let mut found = Vec::new();
    joins(&plan, &mut found);
    found
}

fn animals_alone(columns: &[String]) -> bool {
    columns.iter().any(|name| name == "species") && !columns.iter().any(|name| name == "kind")
}

#[tokio::test]
async fn animals_are_on_the_building_side_whatever_the_sizes() {
    for question in Question::ALL {
        for threads in [1, 4] {
            let found = sides(question, config(threads)).await;
            let of_events: Vec<_> =
                found.iter().filter(|(left, right)| animals_alone(left) || animals_alone(right)).collect();
            assert!(!of_events.is_empty(), "{} joins nothing to animals", question.name());
            for (left, right) in of_events {
                assert!(animals_alone(left), "{}: {left:?} built, {right:?} streamed", question.name());
            }
        }
    }
}

#[tokio::test]
async fn left_to_itself_the_engine_would_turn_some_round() {
    let itself = SessionConfig::new().with_target_partitions(4);
    let mut turned = 0;
    for question in Question::ALL {
        turned += sides(question, itself.clone()).await.iter().filter(|(left, _)| !animals_alone(left)).count();
    }
    assert!(turned > 1, "the setting is not needed any more");
}
