use super::anew;
use super::around::{Names, Near};
use super::past::{Giving, Past, Stand};
use crate::asker::{Asker, HOME, Inside};
use crate::news;
use crate::pages::said::{days, role, shows};
use maud::{Markup, html};
use sayso_model::{Coach, Consent, Day, Moment};
use sayso_people::db::{Invited, Looked, Looker, Notebook, Rescue};
use sayso_people::{Capability, Part};
use sayso_web::Page;
use sayso_web::layout::{Tab, layout};
use sayso_wording::{Locale, say};

/// What the page tells.
pub struct Told {
    /// Everyone who has to do with the home.
    pub near: Vec<Near>,
    /// Who looked, newest first.
    pub looks: Vec<Looked>,
    /// Invitations that nobody has taken yet.
    pub invitations: Vec<Invited>,
    /// By which keepers of the server let someone in, where the home had lost its way in.
    pub rescues: Vec<Rescue>,
    /// When the server was last brought back from a backup.
    pub restored_at: Option<Moment>,
    /// Whether a consent that this ended waits to be given anew.
    pub waits: bool,
    /// Notebooks at home that are linked.
    pub notebooks: Vec<Notebook>,
    /// Givings of consent.
    pub past: Past,
    /// Names of those they are for.
    pub names: Names,
}

pub fn view(asker: &Asker, inside: &Inside, told: &Told) -> Markup {
    let (page, l) = (&inside.page, &inside.page.locale);
    layout(
        page,
        Tab::None,
        &say!(l, frame::who_sees),
        html! {
            (anew::told(asker, page, &told.rescues))
            (restored(asker, page, told))
            (who_sees(page, told))
            (consents(page, told))
            @if page.may(Capability::LinkNotebook) || !told.notebooks.is_empty() { (notebooks(page, &told.notebooks)) }
            (looks(page, told))
            (people(asker, page, told))
            @if page.may(Capability::Leave) {
                section {
                    h2 { (say!(l, sharing::leaving)) }
                    p { (say!(l, sharing::leaving_short)) }
                    p { a.button href="/sharing/leave" { (say!(l, sharing::leave)) } }
                }
            }
        },
    )
}

/// That the server was brought back from a backup, and what that ended: for some weeks, longer where a consent waits to be given anew.
fn restored(asker: &Asker, page: &Page, told: &Told) -> Markup {
    let l = &page.locale;
    let at = told.restored_at.filter(|at| told.waits || news::is_lately(&asker.host, *at, page.now));
    html! {
        @if let Some(at) = at {
            p.caution data-test="restored" { (say!(l, sharing::restored, at = l.weekday_date_time(at, &page.zone))) }
        }
    }
}

fn who_sees(page: &Page, told: &Told) -> Markup {
    let l = &page.locale;
    html! {
        section #who {
            p { (say!(l, sharing::who_intro)) }
            ul.plain { @for near in &told.near {
                li.line data-test="sees" {
                    span {
                        strong { (near.name) } " " span.quiet { (as_what(page, near)) }
                        span.hint {
                            @if near.sees.is_empty() { (say!(l, sharing::sees_nothing)) }
                            @else {
                                @let all: Vec<String> = near.sees.iter().map(|c| shows(l, *c)).collect();
                                (say!(l, sharing::sees, what = l.and(&all)))
                            }
                        }
                    }
                }
            } }
            p.quiet { (say!(l, sharing::nobody_else)) " " (say!(l, sharing::keepers_see)) }
        }
    }
}

/// Notebooks at home, each of which holds what the home holds.
fn notebooks(page: &Page, notebooks: &[Notebook]) -> Markup {
    let l = &page.locale;
    html! {
        section #notebooks {
            h2 { (say!(l, linked::notebooks)) }
            p data-test="notebooks" { (say!(l, linked::how_many, count = notebooks.len())) }
            @if page.may(Capability::LinkNotebook) {
                div.row {
                    @if !notebooks.is_empty() { a.button href="/sharing/notebooks" { (say!(l, linked::see)) } }
                    a.button href="/sharing/notebooks/new" data-test="make-code" { (say!(l, linked::make_code)) }
                }
            }
        }
    }
}

/// By which role someone comes.
fn as_what(page: &Page, near: &Near) -> String {
    let l = &page.locale;
    match &near.member {
        Some(member) => with_part(page, &member.membership.part),
        None => say!(l, sharing::coach_of, clubs = l.and(&near.clubs)),
    }
}

/// A role with its days and the person of the home, in a few words.
pub fn with_part(page: &Page, part: &Part) -> String {
    let l = &page.locale;
    let mut told = role(l, part.role());
    if let Some(person) = part.person().and_then(|id| page.story.people().get(&id).map(|card| card.name.to_string())) {
        told = say!(l, sharing::as_person, role = told, name = person);
    }
    match part.days() {
        Some(agreed) => format!("{told}; {}", days(l, agreed)),
        None => told,
    }
}

fn looks(page: &Page, told: &Told) -> Markup {
    let l = &page.locale;
    let mut by_day: Vec<(Day, Vec<&Looked>)> = Vec::new();
    for look in &told.looks {
        let day = look.last_at.day(&page.zone);
        match by_day.last_mut() {
            Some((of, looks)) if *of == day => looks.push(look),
            _ => by_day.push((day, vec![look])),
        }
    }
    html! {
        section #looks {
            h2 { (say!(l, sharing::looked)) }
            p.quiet { (say!(l, sharing::looked_how)) }
            @if by_day.is_empty() { p data-test="no-looks" { (say!(l, sharing::looked_none)) } }
            @for (day, looks) in &by_day {
                h3 { (l.weekday_date(*day)) }
                ul.plain { @for look in looks { li data-test="look" { (one_look(page, look)) } } }
            }
        }
    }
}

fn one_look(page: &Page, look: &Looked) -> String {
    let l = &page.locale;
    let what = Capability::ALL.iter().find(|c| c.name() == look.capability);
    // One that a later version noted keeps its own name.
    let what = what.map_or_else(|| look.capability.clone(), |c| shows(l, *c));
    let what = if look.page.is_empty() { what } else { say!(l, sharing::page, page = look.page.as_str()) };
    let name = match &look.who {
        Looker::Account(_, name) => name,
        Looker::Left(as_what) => {
            return say!(l, sharing::look_left, role = role(l, *as_what), what = what, times = look.times);
        }
    };
    let (from, to) = (l.time(look.first_at, &page.zone), l.time(look.last_at, &page.zone));
    let when = if from == to { from } else { say!(l, sharing::between, from = from, to = to) };
    say!(l, sharing::look, when = when, who = name, what = what, times = look.times)
}

fn people(asker: &Asker, page: &Page, told: &Told) -> Markup {
    let (l, manages) = (&page.locale, page.may(Capability::ManagePeople));
    html! {
        section #people {
            h2 { (say!(l, sharing::people)) }
            ul.plain { @for (near, member) in told.near.iter().filter_map(|n| Some((n, n.member.as_ref()?))) {
                li.line data-test="member" {
                    span { strong { (near.name) } " " span.quiet { (with_part(page, &member.membership.part)) }
                        @if near.who.account == asker.signed.account.id { " " span.quiet { (say!(l, sharing::you)) } } }
                    @if manages {
                        a.button href=(format!("/sharing/people/{}", member.membership.id)) aria-label=(say!(l, sharing::change_of, name = &near.name)) { (say!(l, sharing::change)) }
                    }
                }
            } }
            @if manages { p { a.button.primary href="/sharing/invite" { (say!(l, sharing::invite)) } } }
            @if !told.invitations.is_empty() {
                h3 { (say!(l, sharing::open_invitations)) }
                ul.plain { @for invited in &told.invitations {
                    li.line data-test="invited" {
                        span { (with_part(page, &invited.part)) span.hint { (say!(l, sharing::holds, until = l.weekday_date_time(invited.expires_at, &page.zone))) } }
                        @if manages {
                            form method="post" action=(format!("/sharing/invitations/{}/end", invited.id)) {
                                input type="hidden" name=(HOME) value=(page.home);
                                button { (say!(l, sharing::end_invitation)) }
                            }
                        }
                    }
                } }
            }
        }
    }
}

fn consents(page: &Page, told: &Told) -> Markup {
    let l = &page.locale;
    let open: Vec<&Giving> = told.past.all.iter().filter(|one| one.stand == Stand::Open).collect();
    let before: Vec<&Giving> = told.past.all.iter().filter(|one| one.stand != Stand::Open).collect();
    html! {
        section #consent {
            h2 { (say!(l, sharing::consent)) }
            @if open.is_empty() { p data-test="nothing-open" { (say!(l, sharing::consent_none)) } }
            ul.plain { @for one in &open {
                li data-test="open" { (given(page, &told.names, one))
                    @if one.words_are_newer(l) { span.hint data-test="newer-words" { (say!(l, sharing::words_newer)) } } }
            } }
            @if page.may(Capability::Consent) { p { a.button href="/sharing/consent" { (say!(l, sharing::consent_change)) } } }
            @if page.may(Capability::TakeBack) && told.past.standing(page.now).next().is_some() {
                p { a.button href="/sharing/end" data-test="end-all" { (say!(l, sharing::end_all)) } }
            }
            @if !before.is_empty() {
                details { summary { (say!(l, sharing::consent_before)) }
                    ul { @for one in &before { li data-test="before" { (given(page, &told.names, one)) } } } }
            }
        }
    }
}

/// A giving with its dates.
fn given(page: &Page, names: &Names, one: &Giving) -> String {
    let l = &page.locale;
    let date = |at: Moment| l.weekday_date_time(at, &page.zone);
    let what = to_what(l, names, one.consent);
    let what = say!(l, sharing::words_of, what = what, number = one.words);
    match one.stand {
        Stand::Open => match one.until {
            Some(until) => say!(l, sharing::given_until, what = what, at = date(one.at), until = date(until)),
            None => say!(l, sharing::given, what = what, at = date(one.at)),
        },
        Stand::Away(stretch) => {
            say!(
                l,
                sharing::given_for,
                what = what,
                at = date(one.at),
                from = date(stretch.from),
                until = date(stretch.until)
            )
        }
        Stand::TakenBack(at) => say!(l, sharing::taken_back, what = what, at = date(one.at), ended = date(at)),
        Stand::Restored => say!(l, sharing::ended_by_restore, what = what, at = date(one.at)),
        Stand::Nothing => say!(l, sharing::opens_nothing, what = what, at = date(one.at)),
    }
}

/// What a consent is to, in a few words.
pub fn to_what(l: &Locale, names: &Names, consent: Consent) -> String {
    let who = names.get(consent.coach()).map_or_else(|| nameless(l, consent.coach()), str::to_owned);
    say!(l, sharing::purpose, purpose = consent.purpose().name(), who = who)
}

/// Someone who is not here any more.
fn nameless(l: &Locale, coach: Option<Coach>) -> String {
    let kind = if matches!(coach, Some(Coach::Club { .. })) { "club" } else { "coach" };
    say!(l, sharing::nameless, kind = kind)
}
