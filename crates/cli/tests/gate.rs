//! What the README says about testing is what the gate does.
#![allow(clippy::unwrap_used)]

const README: &str = include_str!("../../../README.md");
const RUN: &str = include_str!("../../../.ci/run");

#[test]
fn the_gate_runs_the_test_command_of_the_readme() {
    let section = README.split_once("\n## Tests\n").unwrap().1;
    let block = section.split_once("```sh\n").unwrap().1.split_once("```").unwrap().0;
    let commands: Vec<&str> = block.lines().collect();
    assert_eq!(commands.len(), 1, "one command, which also installs what it needs: {commands:?}");
    let steps = RUN.lines().filter(|line| line.starts_with("step "));
    assert_eq!(steps.filter(|line| line.ends_with(&format!(" {}", commands[0]))).count(), 1, "{}", commands[0]);
}
