//! A plan for every word in every way, as a home could have agreed to it: whether Today would bring it in place of what comes first.

use crate::experiments::advice::seen::Seen;
use sayso_advisor::agreed::{Stands, stands};
use sayso_advisor::stages::Standing;
use sayso_advisor::steps::{Step, WordStep};
use sayso_advisor::today::{Next, Today};
use sayso_model::{PlanLine, PlanWay, Stage};

/// Counts them for one word.
pub(crate) fn read_plans(seen: &mut Seen, today: &Today, standing: &Standing, step: &WordStep) {
    // By the records: it ends sessions, the figures point back to showing, or sessions rest.
    let back = standing.figures_say < Stage::Invite && standing.stage >= Stage::Invite;
    let not_invited = standing.closing || back;
    let first = matches!(step.step, Step::Rest | Step::Avoided | Step::SetUp | Step::Mend) || today.next == Next::Rest;
    for way in PlanWay::ALL.iter().copied().map(Some).chain([None]) {
        let line = PlanLine { word: standing.word, way, minutes: PlanLine::MOST_MINUTES, times: PlanLine::MOST_TIMES };
        let in_its_place = matches!(stands(step, &line), Stands::Instead { .. });
        // Nor does it say, beside such a word, that it is to be invited.
        let beside = stands(step, &line) == Stands::Beside && line.invites();
        seen.agreed += 1;
        seen.agreed_first +=
            usize::from((in_its_place && first) || (line.invites() && not_invited && (in_its_place || beside)));
    }
}
