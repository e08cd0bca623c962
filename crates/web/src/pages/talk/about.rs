//! What a note is about: as the value of a field, read from one, and where it is to be seen.

use sayso_model::{AnimalId, DaysChart, FigurePage, SessionId, SessionStart, Story, TalkAbout, WordChart, WordId};

/// What the value of a field says that a note is about; none for what is not there.
pub fn read_about(story: &Story, text: &str) -> Option<TalkAbout> {
    let word = |id: &str| id.parse::<WordId>().ok().filter(|word| story.words().contains_key(word));
    match text.split_once(':')? {
        ("word", id) => word(id).map(|word| TalkAbout::Word { word }),
        ("session", id) => {
            let session = id.parse::<SessionId>().ok()?;
            let known = story.everyones::<SessionStart>().any(|s| s.part.session == session);
            known.then_some(TalkAbout::Session { session })
        }
        ("page", name) => FigurePage::ALL.iter().find(|p| p.name() == name).map(|page| TalkAbout::Page { page: *page }),
        ("word_chart", rest) => {
            let (name, id) = rest.split_once(':')?;
            let chart = WordChart::ALL.iter().find(|c| c.name() == name)?;
            Some(TalkAbout::WordChart { word: word(id)?, chart: *chart })
        }
        ("days_chart", name) => {
            DaysChart::ALL.iter().find(|c| c.name() == name).map(|chart| TalkAbout::DaysChart { chart: *chart })
        }
        _ => None,
    }
}

/// Where what a note is about is to be seen, for whoever may see figures; of a session there is no page of its own.
pub fn place_of(about: &TalkAbout, animal: AnimalId) -> Option<String> {
    match about {
        TalkAbout::Word { word } => Some(format!("/a/{animal}/evidence/{word}")),
        TalkAbout::Page { page } => Some(format!("/a/{animal}/{}", page.name())),
        TalkAbout::WordChart { word, chart } => Some(format!("/a/{animal}/evidence/{word}#chart-{}", chart.name())),
        TalkAbout::DaysChart { chart } => Some(format!("/a/{animal}/days#chart-{}", chart.name())),
        TalkAbout::Session { .. } => None,
    }
}

/// What a note is about, as the value of a field.
pub fn said_about(about: &TalkAbout) -> String {
    match about {
        TalkAbout::Word { word } => format!("word:{word}"),
        TalkAbout::Session { session } => format!("session:{session}"),
        TalkAbout::Page { page } => format!("page:{}", page.name()),
        TalkAbout::WordChart { word, chart } => format!("word_chart:{}:{word}", chart.name()),
        TalkAbout::DaysChart { chart } => format!("days_chart:{}", chart.name()),
    }
}
