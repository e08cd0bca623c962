use super::{Colleague, Done, PATH};
use crate::asker::Asker;
use maud::{Markup, html};
use sayso_model::{HomeId, ShortNote};
use sayso_people::db::Cover;
use sayso_web::fields::{area, day, radios, summary};
use sayso_web::typed::Typed;
use sayso_wording::{Locale, say};

fn choice(l: &Locale, typed: &Typed, all: &[Colleague]) -> Markup {
    let options: Vec<_> =
        all.iter().map(|c| (c.account.to_string(), html! { (c.name.as_str()) span.hint { (c.of) } })).collect();
    radios(typed, "colleague", &say!(l, colleagues::who), "", &options)
}

pub fn page(asker: &Asker, all: &[Colleague], covers: &[Cover], typed: &Typed, done: &Done) -> Markup {
    let l = &asker.locale();
    let me = asker.signed.account.id;
    asker.framed(
        &say!(l, colleagues::title),
        html! {
            (summary(typed))
            @if let (Some(asked), Some(open)) = (done.asked, done.open) {
                p.note role="status" data-test="done" { (say!(l, colleagues::done, asked = asked, open = open)) }
            }
            p { (say!(l, colleagues::intro)) }
            @if all.is_empty() { p data-test="alone" { (say!(l, colleagues::alone)) } }
            @for cover in covers {
                @let (first, last) = (l.date(cover.first), l.date(cover.last));
                div.line data-test="cover" {
                    p {
                        @if cover.away.account == me { (say!(l, colleagues::covered_by, name = &cover.covers.name, first = first, last = last)) }
                        @else { (say!(l, colleagues::you_cover, name = &cover.away.name, first = first, last = last)) }
                    }
                    @if cover.away.account == me {
                        form method="post" action="/desk/cover/end" { button name="cover" value=(cover.id) { (say!(l, colleagues::end)) } }
                    }
                }
            }
            @if !all.is_empty() {
                section {
                    h2 { (say!(l, colleagues::cover)) }
                    p { (say!(l, colleagues::cover_how)) }
                    form method="post" action="/desk/cover" .stack {
                        (choice(l, typed, all))
                        div.row.even {
                            (day(typed, "first", &say!(l, colleagues::first), ""))
                            (day(typed, "last", &say!(l, colleagues::last), ""))
                        }
                        button.primary.wide data-test="cover-me" { (say!(l, colleagues::cover_me)) }
                    }
                }
            }
            p { a href="/desk" { (say!(l, club::to_desk)) } }
        },
    )
}

pub fn hand_over(asker: &Asker, home: HomeId, name: &str, all: &[Colleague], typed: &Typed) -> Markup {
    let l = &asker.locale();
    asker.framed(
        &say!(l, colleagues::hand_over_title, home = name),
        html! {
            (summary(typed))
            p { (say!(l, colleagues::hand_over_how)) }
            @if all.is_empty() { p data-test="alone" { (say!(l, colleagues::alone)) } }
            @else {
                form method="post" action="/desk/hand-over" .stack {
                    input type="hidden" name="home" value=(home);
                    (choice(l, typed, all))
                    (area(typed, "text", &say!(l, talk::field_text), &say!(l, talk::if_you_like, most = ShortNote::MOST)))
                    button.primary.wide data-test="propose" { (say!(l, colleagues::propose)) }
                }
            }
            p { a href=(PATH) { (say!(l, colleagues::title)) } }
        },
    )
}
