//! Persons who teach in a rehearsal, more or less well, and what they change.

use sayso_model::SignLevel;
use sayso_rehearse::Change;
use sayso_sim::Chance;
use sayso_sim::rehearsal::{Does, Rehearsal, Run, Setup, Thing, Told, What};

/// How far towards the best a person comes who changes something.
const STEP: f64 = 0.6;

/// How somebody teaches.
#[derive(Clone, Copy, Debug)]
pub struct Person {
    /// Middle seconds from press to thing.
    pub delay_s: f64,
    /// Seconds between showings.
    pub gap_s: f64,
    /// Probability that a showing is of the favourite word rather than of the next.
    pub favours: f64,
    /// Probabilities of doing well.
    pub waits_for_it: f64,
    pub answers: f64,
    pub lets_go: f64,
    pub heeds: f64,
    pub lets_eat: f64,
    /// Calls a minute for no reason.
    pub calls: f64,
    /// Whether it goes on after the animal left.
    pub goes_on: bool,
}

impl Person {
    pub fn drawn(c: &mut Chance) -> Self {
        Self {
            delay_s: c.lognormal(3.5, 0.4).clamp(0.6, 10.0),
            gap_s: c.between(4.0, 16.0),
            favours: c.between(0.0, 0.8),
            waits_for_it: c.between(0.2, 0.9),
            answers: c.between(0.3, 1.0),
            lets_go: c.between(0.2, 1.0),
            heeds: c.between(0.2, 1.0),
            lets_eat: c.between(0.2, 1.0),
            calls: c.between(0.0, 3.0),
            goes_on: false,
        }
    }

    /// Shows by the clock, at once gives, and looks at nothing that the animal does.
    pub const fn by_the_clock(gap_s: f64) -> Self {
        Self {
            delay_s: 0.6,
            gap_s,
            favours: 0.0,
            waits_for_it: 0.0,
            answers: 0.0,
            lets_go: 0.0,
            heeds: 0.0,
            lets_eat: 0.0,
            calls: 0.0,
            goes_on: true,
        }
    }

    /// Changes one habit.
    pub fn changes(&mut self, what: &Change) {
        let towards = |now: &mut f64, best: f64| *now += STEP * (best - *now);
        match what {
            Change::StepAway | Change::Pause => towards(&mut self.heeds, 1.0),
            Change::LetGo => {
                towards(&mut self.lets_go, 1.0);
                self.goes_on = false;
            }
            Change::LetEat => towards(&mut self.lets_eat, 1.0),
            Change::DoNotPush { .. } => towards(&mut self.calls, 0.0),
            Change::Answer => towards(&mut self.answers, 1.0),
            Change::Sooner { .. } => towards(&mut self.delay_s, 0.8),
            Change::WhenThere { .. } => towards(&mut self.waits_for_it, 1.0),
            Change::Slower => self.gap_s *= 1.5,
            Change::Oftener => self.gap_s = (self.gap_s * 0.6).max(4.0),
            Change::Even { .. } => towards(&mut self.favours, 0.0),
            // Nothing of this is done in the exercise at hand, or seen by these persons.
            Change::Wait
            | Change::Wanted { .. }
            | Change::AfterWait
            | Change::Vet
            | Change::GiveOftener { .. }
            | Change::UsedUp { .. }
            | Change::Shorter { .. }
            | Change::LetChoose
            | Change::Soften { .. }
            | Change::Longer { .. }
            | Change::MoreInvitations
            | Change::MorePairs
            | Change::Instead { .. }
            | Change::Give
            | Change::Try
            | Change::Stay
            | Change::TooSoon
            | Change::CarryOn => {}
        }
    }
}

/// What a person may change, for those who change something whatever it is.
pub fn any_change(c: &mut Chance) -> Change {
    let all = [
        Change::StepAway,
        Change::LetGo,
        Change::LetEat,
        Change::DoNotPush { times: 1 },
        Change::Answer,
        Change::Sooner { delay_s: 3.0 },
        Change::WhenThere { invited: false },
        Change::Oftener,
        Change::Even { most: Thing::Treat, least: Thing::Ball },
    ];
    let at = c.below(all.len());
    all[at].clone()
}

/// What a person is about to do.
struct Plan {
    person: Person,
    next_show: u32,
    turn: usize,
    due: Vec<(u32, Does)>,
    paused_until: u32,
    eats: bool,
    counted: usize,
}

fn ms(seconds: f64) -> u32 {
    (seconds.max(0.0) * 1000.0) as u32
}

impl Plan {
    /// What is seen, and what the person makes of it.
    fn sees(&mut self, told: &Told, c: &mut Chance) {
        let now = told.at_ms;
        match told.what {
            What::Took(_) => self.eats = true,
            What::Finished(_) | What::Ignored(_) => self.eats = false,
            What::Pressed(thing) if c.coin(self.person.answers) => {
                self.due.push((now + ms(c.lognormal(self.person.delay_s, 0.3)), Does::Give(thing)));
            }
            What::Leaves if self.person.goes_on => {}
            What::Leaves => {
                self.due.clear();
                if c.coin(self.person.lets_go) {
                    self.due.push((now + 3_000, Does::End));
                } else {
                    self.due.push((now + 600, if c.coin(0.5) { Does::Block } else { Does::Call }));
                    self.due.push((now + 9_000, Does::End));
                }
            }
            What::Sign(sign) if c.coin(self.person.heeds) => {
                self.paused_until = now + 6_000;
                if sign.level == SignLevel::Strong {
                    self.due = vec![(now + 800, Does::Back), (now + 2_000, Does::End)];
                }
            }
            _ => {}
        }
    }

    fn acts(&mut self, live: &mut Rehearsal, c: &mut Chance) {
        let now = live.now_ms();
        while self.counted < live.told().len() {
            let told = live.told()[self.counted];
            self.counted += 1;
            self.sees(&told, c);
        }
        self.due.sort_by_key(|(at, _)| *at);
        while self.due.first().is_some_and(|(at, _)| *at <= now) {
            let (_, does) = self.due.remove(0);
            live.does(does);
        }
        if now < self.paused_until {
            return;
        }
        if c.coin(self.person.calls / 600.0) {
            live.does(Does::Call);
        }
        let busy = !self.due.is_empty() || (self.eats && c.coin(self.person.lets_eat));
        if now < self.next_show || busy {
            return;
        }
        self.next_show = now + ms(self.person.gap_s * c.between(0.7, 1.3));
        if !live.is_there() && c.coin(self.person.waits_for_it) {
            // Looks again in a while.
            self.next_show = now + 1_500;
            return;
        }
        let thing = if c.coin(self.person.favours) { Thing::Treat } else { Thing::ALL[self.turn % 3] };
        self.turn += 1;
        live.does(Does::Show(thing));
        self.due.push((now + ms(c.lognormal(self.person.delay_s, 0.3)), Does::Give(thing)));
    }
}

pub fn session(person: Person, setup: Setup, knows: Option<[f64; 4]>, c: &mut Chance) -> Run {
    let mut live = Rehearsal::new(setup);
    if let Some(logits) = knows {
        live = live.knowing(logits);
    }
    let mut plan =
        Plan { person, next_show: 2_000, turn: 0, due: Vec::new(), paused_until: 0, eats: false, counted: 0 };
    while !live.is_over() {
        plan.acts(&mut live, c);
        live.step();
    }
    live.ends()
}
