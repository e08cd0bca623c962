//! What a troubled home writes down: signs that last, the day from which nothing is written, and what is left out.

use super::kinds::{Keeps, Trouble, Troubled};
use crate::chance::Chance;
use crate::pen::uuid_at;
use crate::run::Simulated;
use sayso_model::*;
use std::collections::{BTreeMap, BTreeSet};

const DAY_S: f64 = 86_400.0;

/// The log of a home as it is kept.
pub(super) fn as_kept(mut run: Simulated, is: &Troubled, end: Moment, c: &mut Chance) -> Simulated {
    thin(&mut run.events, is.keeps, c);
    for (trouble, _) in &is.troubles {
        match trouble {
            Trouble::Silent => {
                let last = end.plus_seconds(-DAY_S * c.between(7.0, 25.0));
                run.events.retain(|e| e.recorded_at <= last);
            }
            Trouble::StrongSigns => strong(&mut run, end, c),
            Trouble::Guarding => {
                let days: Vec<f64> = (0..=c.below(3)).map(|_| c.between(0.1, 26.0)).collect();
                sign(&mut run, &days, "guards food, a thing or the button", end, c);
            }
            _ => {}
        }
    }
    run.events.sort_by_key(|e| (e.recorded_at, e.id));
    let kept: BTreeSet<EventId> = run.events.iter().map(|e| e.id).collect();
    run.truth.presses.retain(|id, _| kept.contains(id));
    run
}

/// Growls in most of the last weeks, a growl lately, or strong signs on several days of the last week.
fn strong(run: &mut Simulated, end: Moment, c: &mut Chance) {
    let (days, text): (Vec<f64>, &str) = match c.below(3) {
        0 => ((0..5).map(|week| 7.0 * f64::from(week) + c.between(0.5, 6.0)).collect(), "growl"),
        1 => (vec![c.between(0.2, 20.0)], "growl"),
        _ => (vec![c.between(0.05, 0.3), c.between(1.5, 3.0), c.between(3.5, 5.5)], "tail tucked, crouching"),
    };
    sign(run, &days, text, end, c);
}

/// Strong signs so many days before the end, written at once.
fn sign(run: &mut Simulated, days: &[f64], text: &str, end: Moment, c: &mut Chance) {
    let Some(first) = run.events.iter().map(|e| e.happened_at).min() else { return };
    let (ids, zone) = (&run.truth.ids, run.truth.home.zone.clone());
    let Ok(sign) = Note::new(text) else { return };
    for back in days {
        let at = end.plus_seconds(-DAY_S * back);
        if at < first {
            continue;
        }
        let body = Sign { sign: sign.clone(), level: SignLevel::Strong, when: When::During, session: None };
        run.events.push(Event {
            id: EventId(uuid_at(at, c)),
            home: ids.home,
            animal: ids.animals.first().copied(),
            person: ids.people.first().copied(),
            happened_at: at,
            zone: zone.clone(),
            recorded_at: at.plus_seconds(5.0),
            source: Source::Tap,
            body: body.into(),
        });
    }
}

/// Leaves out what this home does not write down. Cards stay, and amendments go with what they amend.
fn thin(events: &mut Vec<Event>, keeps: Keeps, c: &mut Chance) {
    if keeps == Keeps::All {
        return;
    }
    let share = c.between(0.15, 0.35);
    let mut days: BTreeMap<Day, bool> = BTreeMap::new();
    let mut kept: BTreeSet<EventId> = BTreeSet::new();
    for event in events.iter().filter(|e| e.body.amends().is_none()) {
        let day = event.happened_at.day(&event.zone);
        let on = *days.entry(day).or_insert_with(|| c.coin(share));
        let coin = c.coin(share);
        let card = event.animal.is_none() && !matches!(event.body, Body::Press(_) | Body::Delivery(_));
        let keep = card
            || matches!(event.body, Body::StageChoice(_))
            || match keeps {
                Keeps::All => true,
                Keeps::FewDays => on,
                Keeps::FewRecords => coin,
                Keeps::OnlyPresses => matches!(&event.body, Body::Press(p) if p.by != PressedBy::Person),
            };
        if keep {
            kept.insert(event.id);
        }
    }
    events.retain(|e| kept.contains(&e.body.amends().unwrap_or(e.id)));
}
