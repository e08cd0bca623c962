//! The sheets of a check: the order for the setter, places without words for the scorer. Both follow from the plan, so that they
//! print the same again at any time.

use super::{said, sheet};
use crate::sheet::{Block, Cell, Look, Paragraph, Row, Sheet, Table};
use sayso_advisor::Case;
use sayso_advisor::advice::NamedWord;
use sayso_advisor::checks::{PER_SITTING, PlannedTrial, order, thing};
use sayso_model::{AnimalCard, ProbeDesign, ProbeId, ProbePlan, WordId};
use sayso_wording::checks::{design, place, roles};
use sayso_wording::signs::stress;
use sayso_wording::{Locale, Message, say};

/// Beside what is asked for in a trial, so that it is not told by bold letters alone.
const ASKED_FOR: &str = "\u{2022}";

/// For whoever sets a check up: what to lay out, hide or play in each trial. The last check planned where none is named; none
/// where there is no such check.
#[must_use]
pub fn check_setter(case: &Case<'_>, probe: Option<ProbeId>, locale: Locale) -> Option<Sheet> {
    let about = About::new(case, probe, &locale)?;
    let (l, name) = (&locale, about.animal.name.as_str());
    let only = say!(l, checks::for_setter, only = say!(l, checks::for_setter_only));
    let mut blocks = vec![about.plan_line(), Paragraph::block("", only, Look::Boxed)];
    let role = |role: sayso_wording::checks::Role| (format!("{} \u{b7} {}", role.who, role.knows), role.does);
    blocks.push(Block::Facts(roles(l, name, about.plan).into_iter().map(role).collect()));
    if about.plan.design == ProbeDesign::PressUnderCovers {
        blocks.push(Paragraph::block("", say!(l, checks::goes_by_place), Look::Quiet));
    }
    blocks.push(kindly(l, about.animal));
    if let Some(text) = &about.animal.cautions {
        blocks.push(Paragraph::block(say!(l, checks::health), text.as_str(), Look::Boxed));
    }
    let rewards = case.story().rewards();
    let things = about.plan.words.iter().filter_map(|w| rewards.get(&case.story().words().get(w)?.reward?).copied());
    blocks.extend(things.filter_map(|reward| said::caution(l, about.animal, reward)));
    if about.plan.design.places_drawn() {
        blocks.push(Paragraph::block("", say!(l, checks::mark_asked_for, mark = ASKED_FOR), Look::Quiet));
    }
    blocks.extend(about.whose_left());
    blocks.extend(about.sittings(&about.setters_head(), |trial| about.laid_out(trial)));
    Some(about.sheet(say!(l, checks::setters_sheet), blocks))
}

/// For whoever scores a check: a box to cross for each place. It names no word.
#[must_use]
pub fn check_scorer(case: &Case<'_>, probe: Option<ProbeId>, locale: Locale) -> Option<Sheet> {
    let about = About::new(case, probe, &locale)?;
    let (l, name) = (&locale, about.animal.name.as_str());
    let (nothing, away) = (say!(l, checks::nothing), say!(l, checks::away));
    let places = order(about.plan).ok().and_then(|drawn| drawn.first().map(|t| t.laid_out.len())).unwrap_or(0);
    let mut head = vec![say!(l, checks::column_number)];
    head.extend(about.places(places));
    let cross = say!(l, checks::cross, name = name, nothing = nothing.as_str(), away = away.as_str());
    head.extend([nothing, away, say!(l, checks::column_seconds)]);
    let mut blocks = vec![about.plan_line(), Paragraph::block("", cross, Look::Plain)];
    blocks.extend(about.whose_left());
    blocks.extend([Paragraph::block("", say!(l, checks::do_not_look), Look::Plain), kindly(l, about.animal)]);
    let boxes = |_: &PlannedTrial| {
        let crossed = std::iter::repeat_n(Cell { crossed: true, ..Cell::default() }, places + 2);
        crossed.chain([Cell::default()]).collect()
    };
    blocks.extend(about.sittings(&head, boxes));
    Some(about.sheet(say!(l, checks::scorers_sheet), blocks))
}

/// The rules that keep the animal well.
fn kindly(l: &Locale, animal: &AnimalCard) -> Block {
    let (stop, signs) = (say!(l, checks::kindly_stop), stress(l, animal.species));
    let text = say!(l, checks::kindly, name = &animal.name, stop = stop, signs = signs);
    Paragraph::block("", text, Look::Boxed)
}

/// A check and whose it is.
struct About<'c, 'a> {
    case: &'c Case<'a>,
    animal: &'c AnimalCard,
    plan: &'c ProbePlan,
    l: &'c Locale,
}

impl<'c, 'a> About<'c, 'a> {
    fn new(case: &'c Case<'a>, probe: Option<ProbeId>, l: &'c Locale) -> Option<Self> {
        let animal = *case.story().animals().get(&case.animal())?;
        let mut plans = case.story().of::<ProbePlan>(case.animal());
        let plan = plans.rfind(|p| probe.is_none_or(|probe| p.part.probe == probe))?.part;
        Some(Self { case, animal, plan, l })
    }

    fn sheet(&self, title: String, mut blocks: Vec<Block>) -> Sheet {
        let again = say!(self.l, checks::prints_again, seed = self.plan.seed.to_string());
        blocks.push(Paragraph::block("", again, Look::Quiet));
        sheet(self.case.story(), self.case.now(), *self.l, title, blocks)
    }

    /// Whose check it is, its design and its length.
    fn plan_line(&self) -> Block {
        let (l, plan) = (self.l, self.plan);
        let rest = format!("{} \u{b7} {}", design(l, plan.design), say!(l, checks::trials, trials = plan.trials));
        Paragraph::block(format!("{} \u{b7}", self.animal.name), rest, Look::Plain)
    }

    fn says(&self, word: WordId) -> String {
        NamedWord::of(self.case.story(), word).says
    }

    fn thing(&self, word: WordId) -> String {
        thing(self.case.story(), word)
    }

    /// A table a sitting, with room for when and who.
    fn sittings(&self, head: &[String], cells: impl Fn(&PlannedTrial) -> Vec<Cell>) -> Vec<Block> {
        let l = self.l;
        let drawn = match order(self.plan) {
            Ok(drawn) => drawn,
            Err(why) => return vec![Paragraph::block("", say!(l, checks::cannot_draw, why = why.say(l)), Look::Plain)],
        };
        let mut blocks = Vec::new();
        for (at, sitting) in drawn.chunks(PER_SITTING).enumerate() {
            blocks.push(Block::Heading(say!(l, checks::sitting, number = at + 1)));
            blocks.push(Block::ToWrite(say!(l, checks::date_and_who)));
            let row = |trial: &PlannedTrial| {
                let mut all = vec![Cell::from(l.number(f64::from(trial.number), 0))];
                all.extend(cells(trial));
                Row { word: None, cells: all }
            };
            let rows = sitting.iter().map(row).collect();
            blocks.push(Block::Table(Table { caption: String::new(), head: head.to_vec(), rows, whole: true }));
        }
        blocks
    }

    /// Each place, and of the first on whose left it is, where things lie in places and not on buttons that stay.
    fn places(&self, many: usize) -> Vec<String> {
        let (l, design) = (self.l, self.plan.design);
        let named = |at| match place(l, design, at) {
            first if at == 1 && design.places_drawn() => {
                format!("{first} ({})", say!(l, checks::left, name = self.animal.name.as_str()))
            }
            other => other,
        };
        (1..=many).map(named).collect()
    }

    /// That left and right are the animal's.
    fn whose_left(&self) -> Option<Block> {
        let said = || say!(self.l, checks::whose_left, name = self.animal.name.as_str());
        self.plan.design.places_drawn().then(|| Paragraph::block("", said(), Look::Quiet))
    }

    fn setters_head(&self) -> Vec<String> {
        let (l, plan) = (self.l, self.plan);
        let mut head = vec![say!(l, checks::column_number)];
        let places = self.places(usize::from(plan.choices));
        match plan.design {
            ProbeDesign::PickForWord => head.push(say!(l, checks::column_play)),
            _ => head.push(say!(l, checks::column_hide)),
        }
        match plan.design {
            ProbeDesign::PickForWord | ProbeDesign::PressUnderCovers => head.extend(places),
            ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => head.push(say!(l, checks::column_button)),
        }
        head
    }

    fn laid_out(&self, trial: &PlannedTrial) -> Vec<Cell> {
        let strong = |text: String| Cell { strong: true, ..Cell::from(text) };
        let (first, lies): (String, fn(&Self, WordId) -> String) = match self.plan.design {
            ProbeDesign::PickForWord => (self.says(trial.word), Self::thing),
            ProbeDesign::PressUnderCovers => (self.thing(trial.word), Self::says),
            ProbeDesign::PressForThing | ProbeDesign::WrongDelivery => {
                let button = format!("{} ({})", trial.right_place + 1, self.says(trial.word));
                return vec![strong(self.thing(trial.word)), button.into()];
            }
        };
        let places = trial.laid_out.iter().enumerate().map(|(at, word)| {
            let named = lies(self, *word);
            if at == trial.right_place { strong(format!("{named} {ASKED_FOR}")) } else { named.into() }
        });
        [strong(first)].into_iter().chain(places).collect()
    }
}
