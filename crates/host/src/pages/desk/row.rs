//! One animal of a desk: its first need with what it rests on, small figures, and what one tap does.

use crate::desk::{Found, HomeAnswer, InHand, KeptAnimal};
use crate::pages::desk::asked::{Asked, DAYS, FIELDS};
use crate::pages::desk::figures::{figures, share as part_of};
use crate::pages::desk::open::{Key, Unheard};
use maud::{Markup, html};
use sayso_advisor::desk::{About, Need, Since};
use sayso_model::{HomeId, Label, Moment, WordId, Zone};
use sayso_norms::Release;
use sayso_wording::advice::sure;
use sayso_wording::desk::{Names, need as told_need, put, until, why};
use sayso_wording::others::source;
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;

/// Words whose presses are drawn beside the rest; more stand on the animal's own pages.
const WORDS: usize = 6;
/// Answers of the home that are told one by one.
const ANSWERS: usize = 3;

/// What a row is made of.
pub struct Of<'a> {
    /// How the coach reads.
    pub l: &'a Locale,
    /// The time of the request.
    pub now: Moment,
    /// What is shown of the desk.
    pub asked: &'a Asked,
    /// The animal.
    pub key: Key,
    /// What is known of it.
    pub animal: &'a KeptAnimal,
    /// What its home is called.
    pub home: String,
    /// What the buttons there say.
    pub words: &'a BTreeMap<WordId, String>,
    /// Proposals that the coach goes on with.
    pub goes_on: &'a InHand,
    /// The coach's own mark of the home.
    pub mark: Option<&'a Label>,
    /// What the home answered and what another coach wrote in this one's place, that the coach has not looked at.
    pub unheard: Option<&'a Unheard>,
    /// What other homes did, where the server was told.
    pub norms: Option<&'a Release>,
}

/// What a button says, by what is kept.
pub fn says(l: &Locale, words: &BTreeMap<WordId, String>) -> impl Fn(WordId) -> String {
    let (words, nameless) = (words.clone(), say!(l, desk_page::nameless));
    move |word| words.get(&word).cloned().unwrap_or_else(|| nameless.clone())
}

/// What a home is called.
pub fn called(l: &Locale, found: &Found, home: HomeId) -> String {
    match found.home(home) {
        "" => say!(l, desk_page::nameless_home),
        name => name.to_owned(),
    }
}

/// The address of a page about the animal, which says in which home.
pub fn page((home, animal): Key, name: &str) -> String {
    format!("/a/{animal}/{name}?home={home}")
}

/// Fields that keep one where one was.
pub fn along(asked: &Asked) -> Markup {
    html! { @for (name, value) in FIELDS.iter().zip(asked.values()) { input type="hidden" name=(name) value=(value); } }
}

/// Name and home, leading to the animal's Today.
pub fn whose(of: &Of<'_>) -> Markup {
    html! {
        h2 { a.open href=(page(of.key, "today")) data-test="open" { (of.animal.name) } " " span.quiet { (of.home) } }
        @if let Some(mark) = of.mark { p.mark data-test="mark" { (mark.as_str()) } }
    }
}

/// A row.
pub fn row(of: &Of<'_>, needs: &[&Need]) -> Markup {
    let l = of.l;
    let says = says(l, of.words);
    let names = Names { animal: &of.animal.name, says: &says };
    let (first, more) = (needs.first(), needs.get(1..).unwrap_or_default());
    html! {
        li.desk-row id=(format!("r-{}", of.key.1)) data-test="row" {
            div.who-is { (whose(of)) }
            div.need {
                @match first {
                    Some(need) => (told(of, &names, need)),
                    None => p.quiet { (say!(l, desk_page::nothing_needed)) },
                }
                @if let Some(new) = of.unheard { ul.answers { (unheard(l, (of.key.0, &of.animal.line.zone), new, &says)) } }
            }
            (figures(l, &of.animal.line, of.now, &says, WORDS))
            (kept(of))
            (practised(of))
            div.does {
                div.row {
                    a.link href=(page(of.key, "evidence")) { (say!(l, frame::evidence)) }
                    a.link href=(format!("/talk?home={}", of.key.0)) { (say!(l, talk::title)) }
                    @if let Some(need) = first { (one_tap(of, need)) }
                }
                details {
                    summary { (say!(l, desk_page::more, count = more.len())) }
                    @for need in more { div.further { (told(of, &names, need)) (one_tap(of, need)) } }
                    @if let Some(need) = first.filter(|need| need.about != About::Safety && !need.is_aside()) {
                        (put_aside(of, need, &DAYS[1..], false))
                        p.hint { (say!(l, desk_page::aside_ends)) }
                    }
                    (own(of))
                }
            }
        }
    }
}

/// What was written in the coach's place, and what the home answered, since the coach looked at what was agreed: each with the way there; after the first few how many more.
pub fn unheard(
    l: &Locale,
    (home, zone): (HomeId, &Zone),
    Unheard { stood_in, answers }: &Unheard,
    says: &dyn Fn(WordId) -> String,
) -> Markup {
    let more = answers.len().saturating_sub(ANSWERS);
    let unsaid = stood_in.len().saturating_sub(ANSWERS);
    html! {
        @for one in stood_in.iter().take(ANSWERS) {
            li {
                a href=(format!("/talk?home={home}#t-{}", one.proposal)) data-test="stood-in" {
                    (say!(l, desk_page::stood_in, name = &one.by, what = what(l, of_another(&one.kind), &one.words, says), day = l.weekday_date(one.at.day(zone))))
                }
            }
        }
        @if unsaid > 0 { li { a href=(format!("/talk?home={home}")) { (say!(l, desk_page::stood_in_more, count = unsaid)) } } }
        @for one in answers.iter().take(ANSWERS) {
            li {
                a href=(format!("/talk?home={home}#t-{}", one.proposal)) data-test="answer" { (answered(l, one, zone, says)) }
            }
        }
        @if more > 0 { li { a href=(format!("/talk?home={home}")) { (say!(l, desk_page::answers_more, count = more)) } } }
    }
}

fn answered(l: &Locale, one: &HomeAnswer, zone: &Zone, says: &dyn Fn(WordId) -> String) -> String {
    let what = what(l, &one.kind, &one.words, says);
    say!(l, desk_page::answer, reply = one.reply.name(), what = what, day = l.weekday_date(one.at.day(zone)))
}

/// What was proposed, in a few words; what a coach wrote themselves is theirs.
fn what(l: &Locale, kind: &str, words: &[WordId], says: &dyn Fn(WordId) -> String) -> String {
    let words: Vec<String> = words.iter().map(|word| say!(l, talk::about_word, word = says(*word))).collect();
    say!(l, desk_page::answer_what, kind = kind, words = l.and(&words))
}

/// A kind of proposal as another coach's: a note is not the reader's own.
fn of_another(kind: &str) -> &str {
    match kind {
        "note" => "a_note",
        "question" => "a_question",
        kind => kind,
    }
}

/// Whether what was agreed is done: of each plan that the coach goes on with, on how many of its days each of its words was worked on.
fn kept(of: &Of<'_>) -> Markup {
    let l = of.l;
    // The line may be of an earlier day: a plan that is over since has gone.
    let today = of.now.day(&of.animal.line.zone);
    let holds = of.animal.line.agreed.iter().filter(|agreed| agreed.days.last >= today);
    let mine = holds.filter(|agreed| of.goes_on.contains_key(&agreed.proposal));
    html! {
        @for plan in mine {
            @let (days, no_record) = plan.days.so_far(today);
            p.quiet data-test="kept" {
                a href=(format!("/talk?home={}#t-{}", of.key.0, plan.proposal)) {
                    @if days == 0 { (say!(l, desk_page::kept_not_yet, words = plan.lines)) }
                    @else { (say!(l, desk_page::kept, words = plan.lines, days = part_of(l, plan.days.kept, days))) }
                    @if no_record > 0 { " " (say!(l, desk_page::kept_no_record, days = no_record)) }
                }
            }
        }
    }
}

/// What the coach goes on with that was handed over to practise, as far as it was done and shared.
fn practised(of: &Of<'_>) -> Markup {
    let mine = of.animal.line.practices.iter().filter(|practice| of.goes_on.contains_key(&practice.proposal));
    html! {
        @for practice in mine {
            p.quiet data-test="practised" {
                a href=(format!("/talk?home={}#t-{}", of.key.0, practice.proposal)) {
                    (say!(of.l, desk_page::practice, read = practice.read.0, of = practice.read.1, shared = practice.shared))
                }
            }
        }
    }
}

/// A need with what it rests on and what would change it.
fn told(of: &Of<'_>, names: &Names<'_>, need: &Need) -> Markup {
    let l = of.l;
    let safety = need.about == About::Safety;
    html! {
        p.lead.caution[safety] data-test="need" { (told_need(l, names, need)) }
        @for why in why(l, names, need) { p.why { (why) } }
        p.quiet {
            @match need.since {
                Some(Since::Began(day)) => (say!(l, desk_page::since, day = l.weekday_date(day), n = need.n, sure = sure(l, need.sure))),
                Some(Since::AtLeast(day)) => (say!(l, desk_page::at_least_since, day = l.weekday_date(day), n = need.n, sure = sure(l, need.sure))),
                Some(Since::Seen(day)) => (say!(l, desk_page::first_seen, day = l.weekday_date(day), n = need.n, sure = sure(l, need.sure))),
                None => (say!(l, desk_page::from, n = need.n, sure = sure(l, need.sure))),
            }
        }
        p.quiet { (say!(l, desk_page::until, what = until(l, names, need.until))) }
        @if let Some(release) = of.norms.filter(|_| need.about == About::Outside) {
            details data-test="whose-figures" {
                summary { (say!(l, desk_page::whose_figures)) }
                @for sentence in source(l, release) { p { (sentence) } }
                p { a.link href=(page(of.key, "others")) { (say!(l, others::link)) } }
            }
        }
        @if let Some(put) = put(l, need, of.now) { p.quiet data-test=(if need.is_aside() { "aside-since" } else { "was-aside" }) { (put) } }
    }
}

/// Put aside for a week, or brought back: one tap. Safety stays.
fn one_tap(of: &Of<'_>, need: &Need) -> Markup {
    match need.is_aside() {
        true => carried(need).map_or_else(|| html! {}, |(mark, _)| back(of.l, of.asked, of.key, &mark)),
        false if need.about == About::Safety => html! {},
        false => put_aside(of, need, &DAYS[..1], true),
    }
}

/// Put aside for so many days, by a button for each; what gets worse is back before.
fn put_aside(of: &Of<'_>, need: &Need, days: &[u16], by_key: bool) -> Markup {
    let Some((mark, extent)) = carried(need) else { return html! {} };
    html! {
        form.row method="post" action="/desk/aside" {
            (along(of.asked))
            @for (name, value) in [("home", of.key.0.to_string()), ("animal", of.key.1.to_string()), ("need", mark), ("extent", extent)] {
                input type="hidden" name=(name) value=(value);
            }
            @for days in days {
                button name="days" value=(days) data-aside[by_key] data-test="aside" { (say!(of.l, desk_page::put_aside_days, days = usize::from(*days))) }
            }
        }
    }
}

/// By what a need is known, and how far it has gone, as forms carry them.
fn carried(need: &Need) -> Option<(String, String)> {
    serde_json::to_string(&need.mark()).ok().zip(serde_json::to_string(&need.extent()).ok())
}

/// The button that brings back what was put aside.
pub fn back(l: &Locale, asked: &Asked, key: Key, mark: &str) -> Markup {
    html! {
        form method="post" action="/desk/back" {
            (along(asked))
            input type="hidden" name="animal" value=(key.1);
            input type="hidden" name="need" value=(mark);
            button data-test="back" { (say!(l, desk_page::bring_back)) }
        }
    }
}

/// The coach's own mark of a home, in a form of which a page holds one for each name.
pub fn own_mark(l: &Locale, asked: &Asked, (home, name): (HomeId, &str), mark: Option<&Label>) -> Markup {
    let id = format!("mark-{name}");
    html! {
        form.row method="post" action="/desk/mark" {
            (along(asked))
            input type="hidden" name="home" value=(home);
            label for=(id) { (say!(l, desk_page::own_mark)) }
            input id=(id) name="mark" maxlength="40" autocomplete="off" value=(mark.map_or("", Label::as_str));
            button { (say!(l, desk_page::keep_mark)) }
            span.hint { (say!(l, desk_page::own_mark_hint)) }
        }
    }
}

/// The coach's own mark of the home, and that they spoke.
fn own(of: &Of<'_>) -> Markup {
    let l = of.l;
    html! {
        (own_mark(l, of.asked, (of.key.0, &of.key.1.to_string()), of.mark))
        (spoken(of, "desk"))
        p { a.link href=(format!("/desk/hand-over?home={}", of.key.0)) { (say!(l, colleagues::hand_over)) } }
    }
}

/// That coach and home spoke today: from now on the week's view tells what is new since.
pub fn spoken(of: &Of<'_>, from: &str) -> Markup {
    html! {
        form method="post" action="/desk/spoken" {
            (along(of.asked))
            input type="hidden" name="home" value=(of.key.0);
            input type="hidden" name="from" value=(from);
            button data-test="spoken" { (say!(of.l, desk_page::spoken)) }
        }
    }
}
