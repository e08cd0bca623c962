//! One page before a meeting with a coach: what is new since a day, what was agreed and what the log has of it, three figures, what is
//! open, and room to write down what is agreed now.

use super::{report, said, sheet};
use crate::sheet::{Block, Cell, Look, Paragraph, Rest, Row, Sheet, Table};
use sayso_advisor::Case;
use sayso_advisor::agreed::doing;
use sayso_advisor::days::days;
use sayso_advisor::meeting::{Figure, MOST_DAYS, Meeting, first_day, meeting as told};
use sayso_advisor::stages::standings;
use sayso_advisor::steps::steps;
use sayso_advisor::welfare::welfare;
use sayso_model::talks::{Answered, Standing, Talk, in_force, own_plans};
use sayso_model::{AnimalCard, Day, EventId, Moment, PlanLine, Proposed, Reply, SignLevel};
use sayso_wording::figures::in_cell;
use sayso_wording::meeting::{measure, new};
use sayso_wording::talk::{firsts, kept, proposed};
use sayso_wording::{Locale, say};

/// How much is told; how many more there are is said.
#[derive(Clone, Copy)]
struct Room {
    /// New things.
    news: usize,
    /// Agreed things.
    agreed: usize,
    /// Lines of all plans together; where there are more, each plan takes as many, with the one that says how many more.
    lines: usize,
    /// Open things between home and coach.
    open: usize,
    /// Of those, answers of the home.
    said: usize,
    /// Things that the records leave open.
    not_known: usize,
    /// Lines to write on.
    to_write: usize,
}

/// The whole, as it stands on a screen.
const WHOLE: Room = Room { news: 7, agreed: 3, lines: 9, open: 4, said: 2, not_known: 3, to_write: 3 };
/// On paper that is too small for it.
const SHORTER: [Room; 2] = [
    Room { news: 3, lines: 6, open: 3, not_known: 1, ..WHOLE },
    Room { news: 2, agreed: 2, lines: 4, open: 2, said: 1, not_known: 1, to_write: 2 },
];

/// The page; none where the case is about no animal of the story. `talks` are those that the reader may see; none leaves out what
/// was agreed, for readers to whom it is not told.
#[must_use]
pub fn meeting(case: &Case<'_>, locale: Locale, since: Option<Day>, talks: Option<&[Talk<'_>]>) -> Option<Sheet> {
    let l = &locale;
    let (story, now) = (case.story(), case.now());
    let card = *story.animals().get(&case.animal())?;
    let all = talks.unwrap_or_default();
    let told = told(case, first_day(case, all, since));
    let mut head = vec![
        Paragraph::block(say!(l, sheets::not_a_diagnosis), say!(l, sheets::own_records), Look::Boxed),
        Block::Facts(facts(case, l, card, &told)),
    ];
    head.extend(safety(case, l, card, &told));
    head.push(Block::Heading(say!(l, meeting::new, day = l.date(told.first))));
    let held = talks.map(|talks| Held::of(case, l, talks, told.first));
    let (figures, open) = (figures(l, &told), Open::of(case, l, card, (all, &told)));
    // Worked out once, laid out for each room.
    let page = |room: Room| {
        let mut blocks = head.clone();
        blocks.push(Block::List { items: news(l, card, &told, room), big: false });
        blocks.extend(more(l, told.news.len(), room.news, Rest::Evidence));
        blocks.extend(held.iter().flat_map(|held| held.blocks(l, room)));
        blocks.extend(figures.iter().cloned());
        blocks.extend(open.blocks(l, room));
        blocks.extend(to_write(l, room));
        blocks
    };
    let title = say!(l, meeting::title, name = &card.name);
    Some(Sheet { shorter: SHORTER.map(page).to_vec(), ..sheet(story, now, locale, title, page(WHOLE)) })
}

fn facts(case: &Case<'_>, l: &Locale, card: &AnimalCard, told: &Meeting) -> Vec<(String, String)> {
    let (first, last) = (l.date(told.first), l.date(case.now().day(case.zone())));
    let mut facts = vec![
        (say!(l, sheets::animal), said::described(l, card, case.now().day(case.zone()))),
        (say!(l, sheets::period), say!(l, sheets::from_to, first = first, last = last, zone = case.zone().name())),
    ];
    facts.extend(card.limits.as_ref().map(|text| (say!(l, sheets::limits), text.to_string())));
    facts.extend(card.cautions.as_ref().map(|text| (say!(l, sheets::health), text.to_string())));
    facts
}

/// Never shortened.
fn safety(case: &Case<'_>, l: &Locale, card: &AnimalCard, told: &Meeting) -> Vec<Block> {
    let advice = welfare(case);
    let signs = |level| told.signs.get(&level).copied().unwrap_or(0);
    let (joining, mild, strong) = (signs(SignLevel::Joining), signs(SignLevel::Mild), signs(SignLevel::Strong));
    if advice.is_empty() && mild + strong == 0 {
        return Vec::new();
    }
    let mut blocks = vec![Block::Heading(say!(l, meeting::safety))];
    let boxed = |advice| Paragraph::block("", said::advice(l, card.name.as_str(), advice), Look::Boxed);
    blocks.extend(advice.iter().map(boxed));
    let counted = say!(l, sheets::signs, joining = joining, mild = mild, strong = strong);
    blocks.push(Paragraph::block("", counted, Look::Plain));
    blocks.push(Paragraph::block("", say!(l, talk::not_a_vet), Look::Plain));
    blocks
}

fn news(l: &Locale, card: &AnimalCard, told: &Meeting, room: Room) -> Vec<String> {
    let mut items = vec![
        say!(l, sheets::noted, noted = told.noted, days = told.days),
        say!(
            l,
            meeting::counts,
            name = &card.name,
            sessions = told.sessions,
            showings = told.showings,
            presses = told.presses
        ),
    ];
    items.extend(told.news.iter().take(room.news).map(|one| new(l, one)));
    if told.news.is_empty() {
        items.push(say!(l, meeting::nothing_new));
    }
    items
}

/// How many are not told here, and where they are.
fn more(l: &Locale, all: usize, told: usize, at: Rest) -> Option<Block> {
    (all > told).then(|| Block::More { text: say!(l, meeting::more, count = all - told), at })
}

/// Something agreed: since when, what is said above it, and its lines where it is a plan.
struct Agreed<'a> {
    at: Moment,
    lead: String,
    plan: Option<(EventId, &'a [PlanLine], Day)>,
}

/// What was agreed and had not ended before the first day, newest first.
fn all_agreed<'a>(case: &'a Case<'_>, l: &Locale, talks: &'a [Talk<'_>], first: Day) -> Vec<Agreed<'a>> {
    let zone = case.zone();
    let held = |t: &&Talk<'_>| t.standing.is_agreed() && t.concerns(case.animal());
    let of_talk = |t: &'a Talk<'_>| {
        let at = t.agreed_at?;
        let plan = match &t.part.proposes {
            Proposed::Plan { lines, last_day } if *last_day >= first => Some((t.id(), lines.as_slice(), *last_day)),
            Proposed::Plan { .. } => return None,
            _ if at.day(zone) < first => return None,
            _ => None,
        };
        let what = proposed(l, case.story(), &t.part.proposes);
        let lead = say!(l, meeting::from, name = &t.part.from.name, day = l.date(at.day(zone)), what = what);
        Some(Agreed { at, lead, plan })
    };
    let mut all: Vec<Agreed<'a>> = talks.iter().filter(held).filter_map(of_talk).collect();
    let own = own_plans(case.story(), case.animal(), case.now()).filter(|plan| plan.part.last_day >= first);
    all.extend(own.map(|plan| Agreed {
        at: plan.at(),
        lead: say!(l, meeting::own, day = l.date(plan.at().day(zone)), last = l.date(plan.part.last_day)),
        plan: Some((plan.id(), plan.part.lines.as_slice(), plan.part.last_day)),
    }));
    all.sort_by_key(|one| std::cmp::Reverse(one.at));
    all
}

/// What was agreed, as far as any room tells it.
struct Held {
    told: Vec<(String, Option<Planned>)>,
    count: usize,
}

/// A plan and what the log has of it.
struct Planned {
    /// Of each line what was done, and what comes before it where it is in force: the next plan is made on this page.
    lines: Vec<(String, Option<String>)>,
    /// That days have no record; none where all have.
    no_record: Option<String>,
}

impl Held {
    fn of(case: &Case<'_>, l: &Locale, talks: &[Talk<'_>], first: Day) -> Self {
        let all = all_agreed(case, l, talks, first);
        let in_force = in_force(case.story(), talks, case.animal(), case.now());
        let steps = if in_force.is_empty() { Vec::new() } else { steps(case) };
        let name = case.story().animals().get(&case.animal()).map_or("", |card| card.name.as_str());
        let planned = |at: Moment, (plan, lines, last_day): (EventId, &[PlanLine], Day)| {
            let doing = doing(case, lines, at, last_day);
            let before = |line: &PlanLine| {
                let holds = in_force.get(&line.word) == Some(&(plan, *line));
                firsts(l, name, &steps, std::iter::once(line).filter(|_| holds)).next()
            };
            let line = |(line, done)| (kept(l, doing.days, done), before(line));
            Planned {
                lines: lines.iter().zip(&doing.lines).map(line).collect(),
                no_record: (doing.no_record > 0).then(|| say!(l, talk::no_record, days = doing.no_record)),
            }
        };
        let count = all.len();
        let told = |one: Agreed<'_>| (one.lead, one.plan.map(|plan| planned(one.at, plan)));
        Self { told: all.into_iter().take(WHOLE.agreed).map(told).collect(), count }
    }

    fn blocks(&self, l: &Locale, room: Room) -> Vec<Block> {
        let mut blocks = vec![Block::Heading(say!(l, meeting::agreed))];
        if self.count == 0 {
            blocks.push(Paragraph::block("", say!(l, meeting::nothing_agreed), Look::Plain));
        }
        let shown = || self.told.iter().take(room.agreed);
        let counts: Vec<usize> = shown().filter_map(|(_, plan)| plan.as_ref().map(|plan| plan.lines.len())).collect();
        let all_fit = counts.iter().sum::<usize>() <= room.lines;
        let each = if all_fit { room.lines } else { room.lines / counts.len().max(1) };
        for (lead, plan) in shown() {
            blocks.push(Paragraph::block("", lead.as_str(), Look::Plain));
            let Some(Planned { lines, no_record }) = plan else { continue };
            let told = if lines.len() > each { each - 1 } else { lines.len() };
            let mut items: Vec<String> = lines.iter().take(told).map(|(done, _)| done.clone()).collect();
            if lines.len() > told {
                items.push(say!(l, meeting::more, count = lines.len() - told));
            }
            items.extend(no_record.clone());
            items.extend(lines.iter().take(told).filter_map(|(_, before)| before.clone()));
            blocks.push(Block::List { items, big: false });
        }
        blocks.extend(more(l, self.count, room.agreed, Rest::Talk));
        blocks
    }
}

fn figures(l: &Locale, told: &Meeting) -> Vec<Block> {
    let head = vec![
        say!(l, meeting::figure),
        say!(l, meeting::since, day = l.date(told.first)),
        say!(l, meeting::before, days = told.days),
    ];
    let row = |figure: &Figure| Row {
        word: None,
        cells: vec![
            Cell::from(measure(l, figure.measure)),
            in_cell(l, &figure.since).into(),
            in_cell(l, &figure.before).into(),
        ],
    };
    vec![
        Block::Heading(say!(l, meeting::figures)),
        Block::Table(Table {
            caption: String::new(),
            head,
            rows: told.figures.iter().map(row).collect(),
            whole: false,
        }),
        Paragraph::block("", say!(l, talk::other_causes), Look::Quiet),
    ]
}

/// What the home said last to something since the first day: its words, and a "no" also without any; newest first.
fn answers<'a>(case: &Case<'_>, l: &Locale, talks: &'a [Talk<'_>], first: Day) -> Vec<String> {
    let says = |answer: &&Answered<'_>| answer.part.text.is_some() || answer.part.reply == Reply::Declined;
    let of_talk = |t: &'a Talk<'_>| {
        let coaches =
            |answer: &&Answered<'_>| answer.part.by.as_ref().is_none_or(|by| by.account != t.part.from.account);
        let last = t.answers.iter().filter(coaches).rfind(says)?;
        (last.event.happened_at.day(case.zone()) >= first).then_some((t, last))
    };
    let mut all: Vec<(&Talk<'_>, &Answered<'_>)> = talks
        .iter()
        .filter(|t| t.concerns(case.animal()) && t.standing != Standing::Withdrawn)
        .filter_map(of_talk)
        .collect();
    all.sort_by_key(|(_, answer)| std::cmp::Reverse((answer.event.happened_at, answer.event.id)));
    let told = |(talk, answer): (&Talk<'_>, &Answered<'_>)| {
        let (what, day) =
            (proposed(l, case.story(), &talk.part.proposes), l.date(answer.event.happened_at.day(case.zone())));
        let said = say!(l, meeting::said, reply = answer.part.reply.name(), what = what, day = day);
        answer.part.text.as_ref().map_or_else(|| said.clone(), |text| l.colon(&said, text.as_str()))
    };
    all.into_iter().map(told).collect()
}

/// What the home said, what waits for an answer, and what the records leave open.
struct Open {
    said: Vec<String>,
    waits: Vec<String>,
    unknown: Vec<String>,
}

impl Open {
    fn of(case: &Case<'_>, l: &Locale, card: &AnimalCard, (talks, told): (&[Talk<'_>], &Meeting)) -> Self {
        let waits = talks.iter().filter(|t| t.standing == Standing::Open && t.concerns(case.animal()));
        let waits = waits.map(|t| {
            let what = proposed(l, case.story(), &t.part.proposes);
            let what = t.part.text.as_ref().map_or_else(|| what.clone(), |text| l.colon(&what, text.as_str()));
            say!(l, events::proposal, name = &t.part.from.name, what = what)
        });
        let length = u16::try_from(told.days).unwrap_or(MOST_DAYS as u16);
        Self {
            said: answers(case, l, talks, told.first),
            waits: waits.collect(),
            unknown: report::open(case, l, card, &days(case, length), standings(case)),
        }
    }

    fn blocks(&self, l: &Locale, room: Room) -> Vec<Block> {
        let Self { said, waits, unknown } = self;
        let heard = said.len().min(room.said);
        let items = said.iter().take(heard).chain(waits.iter().take(room.open - heard));
        let items = items.chain(unknown.iter().take(room.not_known)).cloned().collect();
        let mut blocks = vec![Block::Heading(say!(l, meeting::open)), Block::List { items, big: false }];
        blocks.extend(more(l, said.len() + waits.len(), heard + waits.len().min(room.open - heard), Rest::Talk));
        blocks.extend(more(l, unknown.len(), room.not_known, Rest::Evidence));
        blocks
    }
}

/// Room for what is agreed now.
fn to_write(l: &Locale, room: Room) -> Vec<Block> {
    let head = vec![
        say!(l, meeting::line),
        say!(l, talk::field_word),
        say!(l, talk::field_way),
        say!(l, talk::field_minutes),
        say!(l, talk::field_times),
    ];
    let row = |n: usize| {
        let mut cells = vec![Cell::default(); head.len()];
        if let Some(first) = cells.first_mut() {
            first.text = say!(l, sheets::n, n = n);
        }
        Row { word: None, cells }
    };
    let rows = (1..=room.to_write).map(row).collect();
    let table = Table { caption: say!(l, meeting::to_write), head, rows, whole: false };
    vec![Block::Heading(say!(l, meeting::next)), Block::Table(table)]
}
