//! What of a desk is to be seen: kinds of need, own marks, text, what was put aside; page by page.

use crate::asker::Asker;
use crate::fault::told;
use crate::pages::desk::open::{Key, Opened};
use sayso_advisor::desk::{ASIDE_DAYS, About, Need, Row};
use sayso_model::{HomeId, Label};
use sayso_web::Error;
use sayso_web::typed::Typed;
use serde::Deserialize;
use std::collections::BTreeMap;
use url::form_urlencoded::Serializer;

/// Where the desk is.
pub const PATH: &str = "/desk";
/// Its page of what is new.
pub const WEEK: &str = "/desk/week";
/// Its page of what followed changes.
pub const CHANGES: &str = "/desk/changes";

/// A page of the desk.
#[derive(Clone, Copy, PartialEq, Eq, Debug)]
pub enum Tab {
    /// What each animal needs.
    Needs,
    /// What is new since coach and home spoke.
    Week,
    /// What followed changes.
    Changes,
}

impl Tab {
    /// Where it is.
    pub const fn path(self) -> &'static str {
        match self {
            Self::Needs => PATH,
            Self::Week => WEEK,
            Self::Changes => CHANGES,
        }
    }
}

/// Animals on one page.
pub const ON_A_PAGE: usize = 20;
/// Days for which something may be put aside, those of one tap first.
pub const DAYS: [u16; 3] = [ASIDE_DAYS, 3, 28];

/// Kinds of need in their order, each by its name.
pub const KINDS: [(About, &str); 11] = [
    (About::Safety, "safety"),
    (About::TakenBack, "taken_back"),
    (About::Change, "change"),
    (About::Leaves, "leaves"),
    (About::Silent, "silent"),
    (About::Held, "held"),
    (About::Ration, "ration"),
    (About::Ready, "ready"),
    (About::Check, "check"),
    (About::Little, "little"),
    (About::Outside, "outside"),
];
/// Animals about which a home answered something that was not looked at.
pub const ANSWERS: &str = "answers";
/// Animals without a need.
pub const NONE: &str = "none";
/// What was put aside.
pub const ASIDE: &str = "aside";

/// As an address says it; forms send it along, so that one stays where one was.
#[derive(Clone, PartialEq, Eq, Debug, Default, Deserialize)]
#[serde(default)]
pub struct Asked {
    /// A kind of need, `answers`, `none` or `aside`; empty for all that is not put aside.
    pub kind: String,
    /// An own mark.
    pub mark: String,
    /// Text in the name of a home or an animal, or a word.
    pub find: String,
    /// The page, from 1.
    pub page: usize,
    /// An animal of which something was put aside just now.
    pub put: String,
    /// Whether a home was gone when something was to be done about it.
    pub gone: String,
}

/// Fields by which forms send it along.
pub const FIELDS: [&str; 4] = ["kind", "mark_shown", "find", "page"];

impl Asked {
    /// As a form sent it along.
    pub fn sent(typed: &Typed) -> Self {
        let text = |name| typed.text(name).to_owned();
        let page = typed.text("page").parse().unwrap_or(1);
        Self { kind: text("kind"), mark: text("mark_shown"), find: text("find"), page, ..Self::default() }
    }

    /// Its values, in the order of [`FIELDS`].
    pub fn values(&self) -> [String; 4] {
        [self.kind.clone(), self.mark.clone(), self.find.clone(), self.page.max(1).to_string()]
    }

    /// Its address.
    pub fn address(&self, path: &str) -> String {
        let mut query = Serializer::new(String::new());
        let pairs = [
            ("kind", &self.kind),
            ("mark", &self.mark),
            ("find", &self.find),
            ("put", &self.put),
            ("gone", &self.gone),
        ];
        pairs.into_iter().filter(|(_, value)| !value.is_empty()).for_each(|(name, value)| {
            query.append_pair(name, value);
        });
        if self.page > 1 {
            query.append_pair("page", &self.page.to_string());
        }
        let query = query.finish();
        if query.is_empty() { path.to_owned() } else { format!("{path}?{query}") }
    }

    /// The same on another page.
    pub fn at(&self, page: usize) -> String {
        Self { page, put: String::new(), gone: String::new(), ..self.clone() }.address(PATH)
    }
}

/// An animal with the needs that are told of it here, the first first.
pub struct Shown<'a> {
    /// Which.
    pub key: Key,
    /// Needs.
    pub needs: Vec<&'a Need>,
}

/// What was chosen, and how many there are of each kind.
pub struct Chosen {
    /// As asked.
    pub asked: Asked,
    /// Own marks of homes.
    pub marks: BTreeMap<HomeId, Label>,
    /// Animals with a need of each kind that is not put aside, in the order of [`KINDS`].
    pub counts: [usize; KINDS.len()],
    /// Animals without any need, and those of which something is put aside.
    pub without: usize,
    /// See there.
    pub aside: usize,
}

impl Chosen {
    /// What was asked of a desk.
    ///
    /// # Errors
    /// Where the database fails.
    pub async fn of(asker: &Asker, opened: &Opened, asked: Asked) -> Result<Self, Error> {
        let marks = asker.host.people.marks(asker.signed.account.id).await.map_err(told)?;
        let has = |row: &Row<Key>, about| row.needs.iter().any(|n| n.about == about && !n.is_aside());
        let counts = KINDS.map(|(about, _)| opened.rows.iter().filter(|row| has(row, about)).count());
        let without = opened.rows.iter().filter(|row| row.needs.is_empty()).count();
        let aside = opened.rows.iter().filter(|row| row.needs.iter().any(|n| n.is_aside())).count();
        Ok(Self { asked, marks, counts, without, aside })
    }

    /// Animals that fit, in the desk's order, each with what of it is to be told.
    pub fn shown<'a>(&self, opened: &'a Opened) -> Vec<Shown<'a>> {
        let kind = KINDS.iter().find(|(_, name)| *name == self.asked.kind).map(|(about, _)| *about);
        let is = |name| self.asked.kind == name;
        let (none, aside, answers) = (is(NONE), is(ASIDE), is(ANSWERS));
        let answered = |(home, animal): Key| opened.has_answered((home, Some(animal)));
        let fits = |row: &'a Row<Key>| {
            let mut needs: Vec<&Need> = row.needs.iter().filter(|n| n.is_aside() == aside).collect();
            // What was asked for comes first.
            needs.sort_by_key(|need| kind.is_some_and(|about| need.about != about));
            let right = match kind {
                Some(about) => needs.first().is_some_and(|need| need.about == about),
                None if none => row.needs.is_empty(),
                None if answers => answered(row.key),
                // What a home answered is told of an animal that needs nothing, too, after all that need something.
                None => !needs.is_empty() || !aside && answered(row.key),
            };
            (right && self.names(opened, row.key)).then_some(Shown { key: row.key, needs })
        };
        opened.rows.iter().filter_map(fits).collect()
    }

    /// Whether mark and text fit.
    pub fn names(&self, opened: &Opened, key: Key) -> bool {
        let (mark, find) = (&self.asked.mark, self.asked.find.trim().to_lowercase());
        let marked = mark.is_empty() || self.marks.get(&key.0).is_some_and(|own| own.as_str() == mark);
        let Some(animal) = opened.animal(key) else { return false };
        let holds = |text: &str| text.to_lowercase().contains(&find);
        marked
            && (find.is_empty()
                || holds(opened.found.home(key.0))
                || holds(&animal.name)
                || animal
                    .line
                    .words
                    .iter()
                    .filter_map(|w| opened.found.words(key.0).get(&w.word))
                    .any(|says| holds(says)))
    }
}
