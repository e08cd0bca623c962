//! Markup of how a rehearsal went: the one thing to change, the figures of real use, what was true, and the whole of it again.

use super::asked::{Asked, REHEARSE, address, another, elsewhere};
use super::captions::{name, word};
use super::drawn::{happens, room};
use super::lessons;
use super::line::line;
use super::list::simulation;
use super::moments;
use super::stage::handed;
use super::stuck;
use crate::layout::{Tab, layout_with};
use crate::page::Page;
use crate::pages::talk::share;
use maud::{Markup, html};
use sayso_advisor::stuck::Cause;
use sayso_advisor::{Estimate, Unit};
use sayso_model::SignLevel;
use sayso_rehearse::{Change, Conduct, Gain, Truth, change, conduct, truth};
use sayso_sim::rehearsal::{Character, Exercise, INVITATIONS, Run, Setup, Thing, What};
use sayso_wording::figures::{counted, finding};
use sayso_wording::{Locale, say};

/// How much oftener or more rarely it may ask without that being told.
const LITTLE: f64 = 0.05;

pub fn view(page: &Page, asked: &Asked, named: Option<Cause>) -> Markup {
    let (l, setup) = (&page.locale, asked.setup);
    let run = asked.run();
    let conduct = conduct(&run);
    let next = change(&conduct, &run);
    let held_up = stuck::held_up(l, &run);
    let json = serde_json::to_string(&moments::of(l, &run)).unwrap_or_default();
    layout_with(
        page,
        Tab::Learn,
        &say!(l, rehearse::went),
        &["client/replay.js", "client/hand-on.js"],
        html! {
            p.lead { (say!(l, rehearse::exercise, which = setup.exercise.name())) " · " (say!(l, rehearse::character, who = setup.character.name())) }
            (simulation(l))
            @if let Some(found) = &held_up { (stuck::answer(l, &run, found, named)) }
            (next_time(l, &run, &conduct, &next))
            (cautions(l, &run))
            (lessons::next(page, &next.change, setup.exercise))
            @if let Some(found) = &held_up { (stuck::notebook(l, &run, found)) }
            (measured(l, setup, &conduct))
            (share(page, setup, &conduct, &asked.acts))
            (what_was_true(l, &run, &conduct))
            (again(l, &run, &json))
            nav.stack.after aria-label=(say!(l, rehearse::title)) {
                a.button.primary href=(address(page, setup, "", &[])) data-test="same" { (say!(l, rehearse::same)) }
                a.button href=(another(page, setup)) data-test="another" { (say!(l, rehearse::another, name = name(l, setup.character))) }
                a.link href=(page.of_home(REHEARSE)) { (say!(l, rehearse::all)) }
            }
            (handed(l, &say!(l, rehearse::show_on), &say!(l, rehearse::show_on_what), &elsewhere(setup, "/went", &asked.acts)))
        },
    )
}

/// The one thing to change, because of what, and what would change that.
fn next_time(l: &Locale, run: &Run, conduct: &Conduct, next: &Gain) -> Markup {
    let change = &next.change;
    let name = name(l, run.setup.character);
    let (more, less) = named(l, change);
    // Whoever finds out what it likes teaches nothing.
    let because = match change {
        Change::CarryOn if run.setup.exercise == Exercise::Likes && conduct.held.n > 0 => "carry-on-likes",
        // A pair that was chosen from while the person made room tells nothing of holding still, yet it was a choice.
        Change::CarryOn if run.setup.exercise == Exercise::Likes && conduct.chosen.iter().all(|(_, n)| *n == 0) => {
            "carry-on-no-choice"
        }
        _ => change.because(),
    };
    let (act, because) = (
        say!(
            l,
            rehearse::change,
            change = change.because(),
            name = name.as_str(),
            word = more.as_str(),
            least = less.as_str()
        ),
        say!(
            l,
            rehearse::because,
            change = because,
            name = name.as_str(),
            word = more.as_str(),
            figure = figure(l, change, conduct)
        ),
    );
    html! {
        section.card.advice data-test="change" data-change=(change.name()) {
            h2.first { (say!(l, rehearse::one_thing)) }
            p.act { (act) }
            p { (because) }
            @if let Some((was, would)) = next.brings(run) {
                p data-test="gain" {
                    @if matches!(change, Change::Answer) { (say!(l, rehearse::gain_given, was = l.percent(was), would = l.percent(would))) }
                    @else { (say!(l, rehearse::gain, was = l.percent(was), would = l.percent(would))) }
                }
            }
            @if !matches!(change, Change::CarryOn | Change::TooSoon) { p.quiet { (say!(l, rehearse::would_change)) } }
        }
    }
}

/// Words that a change is about: the one there is too much of, and the one there is too little of.
fn named(l: &Locale, change: &Change) -> (String, String) {
    match change {
        Change::Even { most, least } => (word(l, *most), word(l, *least)),
        Change::Instead { word: of }
        | Change::GiveOftener { word: of, .. }
        | Change::UsedUp { word: of }
        | Change::Soften { word: of, .. } => (word(l, *of), String::new()),
        // No word, but the seconds after which it grows long.
        Change::Shorter { stays_s, .. } => (l.seconds(*stays_s), String::new()),
        _ => (String::new(), String::new()),
    }
}

/// The figure that a change rests on.
fn figure(l: &Locale, change: &Change, c: &Conduct) -> String {
    match (change.rests_on(c), change) {
        (Some(share), _) if share.unit == Unit::Share => counted(l, share),
        (Some(estimate), _) => finding(l, estimate),
        (None, Change::MorePairs) => c.chosen.iter().map(|(_, held)| held).sum::<usize>().div_euclid(2).to_string(),
        (None, Change::MoreInvitations) => say!(l, rehearse::k_of_n, k = c.invited, n = INVITATIONS),
        (None, Change::DoNotPush { times }) => say!(l, rehearse::times, times = *times),
        (None, Change::Instead { word } | Change::GiveOftener { word, .. } | Change::UsedUp { word }) => {
            let (no, all) = c.declined[word.place()];
            say!(l, rehearse::k_of_n, k = no, n = all)
        }
        (None, Change::Even { .. }) => balance(l, c),
        (None, Change::Oftener) => c.showings().to_string(),
        (None, Change::Soften { times, .. }) => say!(l, rehearse::times, times = *times),
        (None, Change::Longer { after_s, .. } | Change::Shorter { after_s, .. }) => l.seconds(*after_s),
        (None, Change::Try) => c.tries.to_string(),
        (None, _) => String::new(),
    }
}

fn balance(l: &Locale, c: &Conduct) -> String {
    let shown = Thing::ALL.into_iter().filter(|t| c.balance[t.place()] > 0);
    let all: Vec<String> = shown
        .map(|t| {
            say!(l, rehearse::count, word = word(l, t), times = say!(l, rehearse::times, times = c.balance[t.place()]))
        })
        .collect();
    l.and(&all)
}

/// What to do in life, and whom to ask, where it was like this here.
fn cautions(l: &Locale, run: &Run) -> Markup {
    let strong = run.told.iter().any(|t| matches!(t.what, What::Sign(s) if s.level == SignLevel::Strong));
    html! {
        @if strong { p.stop data-test="care-strong" { (say!(l, rehearse::care_strong)) } }
        @if run.setup.character == Character::Guards { p.caution data-test="care-guards" { (say!(l, rehearse::care_guards)) } }
    }
}

/// The figures of real use: each with its count, and its interval where it is an estimate.
fn measured(l: &Locale, setup: Setup, c: &Conduct) -> Markup {
    let name = name(l, setup.character);
    let shares = [
        ("paid", &c.paid),
        ("taken", &c.taken),
        ("invited-there", &c.invited_there),
        ("waits", &c.waits),
        ("after-wait", &c.after_wait),
        ("held", &c.held),
        ("answered", &c.answered),
        ("alternatives", &c.alternatives),
        ("leaving", &c.leaving),
        ("mild", &c.mild),
        ("strong", &c.strong),
        ("eaten", &c.eaten),
    ];
    let mut rows: Vec<(&str, String)> = Vec::new();
    for (which, figure) in [("delay", &c.delay), ("answer-delay", &c.answer_delay), ("pace", &c.pace)] {
        if figure.n > 0 {
            rows.push((which, finding(l, figure)));
        }
    }
    if c.showings() > 0 {
        rows.push(("balance", balance(l, c)));
    }
    rows.extend(shares.into_iter().filter(|(_, share)| share.n > 0).map(|(which, share)| (which, counted(l, share))));
    if c.given + c.pressed == 0 && !matches!(setup.exercise, Exercise::Likes | Exercise::Leaving) {
        rows.push(("given", say!(l, rehearse::times, times = c.given)));
    }
    let pushes = c.pushes + c.again;
    if pushes > 0 {
        rows.push(("pushes", say!(l, rehearse::times, times = pushes)));
    }
    let chosen = Thing::ALL.into_iter().filter(|t| c.chosen[t.place()].1 > 0).map(|t| {
        let (k, n) = c.chosen[t.place()];
        (t, counted(l, &Estimate::share(k, n)))
    });
    html! {
        h2 { (say!(l, rehearse::measured)) }
        p.quiet { (say!(l, rehearse::measured_what)) }
        dl.facts.num data-test="measured" {
            @for (which, figure) in &rows {
                dt { (say!(l, rehearse::row, which = *which, name = name.as_str())) }
                dd data-test=(format!("row-{which}")) { (figure) }
            }
            @for (thing, figure) in chosen {
                dt { (say!(l, rehearse::chosen, word = word(l, thing))) }
                dd data-test=(format!("chosen-{}", thing.name())) { (figure) }
            }
        }
    }
}

/// What the simulation knows.
fn what_was_true(l: &Locale, run: &Run, c: &Conduct) -> Markup {
    let name = name(l, run.setup.character);
    let mut liked = Thing::ALL;
    liked.sort_by(|a, b| run.likes[b.place()].total_cmp(&run.likes[a.place()]));
    html! {
        h2 { (say!(l, rehearse::truth)) }
        @if run.setup.exercise != Exercise::Likes { p.quiet { (say!(l, rehearse::truth_what, name = name.as_str())) } (understood(l, &truth(run))) }
        p { (say!(l, rehearse::liked, name = name.as_str(), things = l.and(&liked.map(|t| word(l, t))))) }
        @if run.setup.exercise == Exercise::Likes { (told_by_pairs(l, c, liked[0])) }
        @if run.setup.exercise == Exercise::Evening { (demand(l, &name, run)) }
    }
}

/// How what was chosen most stands to what is liked most, and why a few pairs cannot tell.
fn told_by_pairs(l: &Locale, c: &Conduct, liked: Thing) -> Markup {
    // Shares as cross products: of k in n against k' in n'.
    let (of, held) = (|t: Thing| c.chosen[t.place()], |t: &Thing| c.chosen[t.place()].1 > 0);
    let no_less = |a: Thing, b: Thing| of(a).0 * of(b).1 >= of(b).0 * of(a).1;
    let shown: Vec<Thing> = Thing::ALL.into_iter().filter(held).collect();
    let most: Vec<Thing> = shown.iter().copied().filter(|a| shown.iter().all(|b| no_less(*a, *b))).collect();
    let Some(times) = shown.iter().map(|t| of(*t).1).max().filter(|_| most.iter().any(|t| of(*t).0 > 0)) else {
        return html! {};
    };
    let same = if most == [liked] { "yes" } else { "no" };
    let chosen: Vec<String> = most.iter().map(|t| word(l, *t)).collect();
    let times = say!(l, rehearse::times, times = times);
    html! {
        p data-test="likes-told" { (say!(l, rehearse::likes_told, same = same, chosen = l.and(&chosen), liked = word(l, liked), times = times)) }
    }
}

/// For what it asks more often or less often than before; a little either way is neither.
fn demand(l: &Locale, name: &str, run: &Run) -> Markup {
    let of = |is: fn(f64) -> bool| -> Vec<String> {
        Thing::ALL.into_iter().filter(|t| is(run.demand[t.place()])).map(|t| word(l, t)).collect()
    };
    let (more, less) = (of(|by| by > 1.0 + LITTLE), of(|by| by < 1.0 - LITTLE));
    html! {
        div data-test="demand" {
            @if !more.is_empty() { p { (say!(l, rehearse::asks_more, name = name, things = l.and(&more))) } }
            @if !less.is_empty() { p { (say!(l, rehearse::asks_less, name = name, things = l.and(&less))) } }
            @if more.is_empty() && less.is_empty() { p { (say!(l, rehearse::asks_same, name = name)) } }
        }
    }
}

/// Chances of a meant press, by word.
fn understood(l: &Locale, truth: &Truth) -> Markup {
    html! {
        div.scroll tabindex="0" role="region" aria-label=(say!(l, rehearse::truth)) {
            table.truth data-test="truth" {
                thead { tr { @for head in [say!(l, rehearse::of_word), say!(l, rehearse::before), say!(l, rehearse::after), say!(l, rehearse::sooner)] { th scope="col" { (head) } } } }
                tbody {
                    @for thing in Thing::ALL {
                        tr {
                            th scope="row" { (word(l, thing)) }
                            @for share in [truth.before, truth.after, truth.sooner] { td.num { (l.percent(share[thing.place()])) } }
                        }
                    }
                }
            }
        }
    }
}

/// The line of it, and the room to watch it again.
fn again(l: &Locale, run: &Run, json: &str) -> Markup {
    html! {
        section.rehearse #replay data-test="replay" data-moments=(json) data-name=(name(l, run.setup.character)) {
            (line(l, run))
            button type="button" data-part="watch" data-test="watch" hidden { (say!(l, rehearse::watch)) }
            div data-part="again" hidden {
                (room(l, run.setup, run.begins_at))
                (happens(l, "off"))
            }
        }
    }
}
