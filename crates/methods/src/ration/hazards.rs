//! Is a food named in free text dangerous to this species? Level, reason and source come from the facts.
//!
//! Source: the hazards facts (`sayso_model::facts`), each entry with its own source; names and spellings from memory.
//! The list is not complete: "not on the list" never means "safe".

use super::aliases::{ALIASES, OTHER_THINGS, Sure};
use super::wording::{Found, Name, find, food_words};
use sayso_model::facts::{self, FoodHazard, GivenAs};
use sayso_model::{Language, Species};
use std::sync::OnceLock;

/// How bad, from "a little is fine" to "never".
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum FoodLevel {
    /// A little only.
    Little,
    /// Better not.
    Avoid,
    /// Never: it cannot be chosen as a reward.
    Never,
}

impl FoodLevel {
    // A level nobody foresaw is read as the worst; the facts' own tests hold that there is none.
    fn of(hazard: &FoodHazard) -> Self {
        match hazard.level.as_str() {
            "little" => Self::Little,
            "avoid" => Self::Avoid,
            _ => Self::Never,
        }
    }

    /// The level as the facts name it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Little => "little",
            Self::Avoid => "avoid",
            Self::Never => "never",
        }
    }
}

/// How a listed food was found in the text.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Debug)]
pub enum Match {
    /// The text says it holds none.
    SaysWithout,
    /// Foods of this name sometimes hold it.
    MayHold,
    /// It is named, misspelt.
    Spelling,
    /// It is named.
    Named,
}

/// A listed food found in the text.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Finding {
    /// How bad.
    pub level: FoodLevel,
    /// The words of the text that point at it.
    pub words: String,
    /// What they were read as.
    pub read_as: String,
    /// How sure the reading is.
    pub how: Match,
    /// The facts' entry: item, reason, source, status, species.
    pub fact: &'static FoodHazard,
}

impl Finding {
    /// Whether the food is it, rather than may be it.
    pub fn is_certain(&self) -> bool {
        matches!(self.how, Match::Named | Match::Spelling)
    }
}

/// What the list says about a food named in free text.
#[derive(Clone, PartialEq, Eq, Debug)]
pub struct Verdict {
    /// For whom.
    pub species: Species,
    /// Whether the list has entries for this species at all.
    pub species_listed: bool,
    /// Listed foods found, worst and surest first; empty means not on the list, which is not the same as safe.
    pub findings: Vec<Finding>,
    /// The same for foods listed for other species only.
    pub elsewhere: Vec<Finding>,
}

impl Verdict {
    /// The worst level of a food that is certainly in it; none if nothing listed is.
    pub fn level(&self) -> Option<FoodLevel> {
        self.findings.iter().filter(|f| f.is_certain()).map(|f| f.level).max()
    }

    /// What to say with every verdict.
    pub fn note(&self) -> &'static str {
        facts::hazards_note()
    }
}

/// Looks a food up. An empty or unreadable text gives a verdict without findings.
///
/// ```
/// use sayso_methods::ration::{FoodLevel, look_up};
/// use sayso_model::Species;
/// let verdict = look_up(Species::Dog, "Raisin bread");
/// assert_eq!(verdict.level(), Some(FoodLevel::Never));
/// assert_eq!(verdict.findings[0].fact.why, "kidney failure; dose unpredictable");
/// assert_eq!(look_up(Species::Dog, "carrot").level(), None);
/// ```
pub fn look_up(species: Species, text: &str) -> Verdict {
    look_up_as(GivenAs::Food, species, text)
}

/// The same of something given to eat, or to play with or chew.
///
/// ```
/// use sayso_methods::ration::{FoodLevel, look_up, look_up_as};
/// use sayso_model::{Species, facts::GivenAs};
/// assert_eq!(look_up_as(GivenAs::Thing, Species::Cat, "ball of wool").level(), Some(FoodLevel::Avoid));
/// assert_eq!(look_up(Species::Cat, "string cheese").level(), Some(FoodLevel::Little));
/// ```
pub fn look_up_as(given: GivenAs, species: Species, text: &str) -> Verdict {
    let words = masked(food_words(text));
    let mut here: Vec<Finding> = Vec::new();
    for term in terms().iter().filter(|t| t.fact.given_as.contains(&given)) {
        let Some((found, start)) = find(&term.name, &words) else { continue };
        let how = match (found, term.sure) {
            (Found::Without, _) => Match::SaysWithout,
            (_, Sure::May) => Match::MayHold,
            (Found::Misspelt, Sure::Is) => Match::Spelling,
            (Found::Written, Sure::Is) => Match::Named,
        };
        let finding = Finding {
            level: FoodLevel::of(term.fact),
            words: words[start..start + term.name.words.len()].join(" "),
            read_as: term.reads.clone(),
            how,
            fact: term.fact,
        };
        match here.iter_mut().find(|f| std::ptr::eq(f.fact, finding.fact)) {
            Some(known) if known.how < how => *known = finding,
            Some(_) => {}
            None => here.push(finding),
        }
    }
    here.sort_by_key(|f| std::cmp::Reverse((f.is_certain(), f.level, f.how)));
    let (findings, elsewhere) = here.into_iter().partition(|f| f.fact.species.contains(&species));
    Verdict { species, species_listed: !facts::food_hazards(species).is_empty(), findings, elsewhere }
}

struct Term {
    name: Name,
    reads: String,
    sure: Sure,
    fact: &'static FoodHazard,
}

// Terms of the facts and of the aliases, cut once.
fn terms() -> &'static [Term] {
    static TERMS: OnceLock<Vec<Term>> = OnceLock::new();
    TERMS.get_or_init(|| {
        let mut terms = Vec::new();
        for fact in facts::all_food_hazards() {
            for (reads, sure) in fact_terms(&fact.item) {
                for (language, rows) in ALIASES {
                    for (_, sure, names) in rows.iter().filter(|(of, ..)| *of == reads) {
                        let names = names.split(", ").flat_map(|name| Name::all(language, name));
                        terms.extend(names.map(|name| Term { name, reads: reads.clone(), sure: *sure, fact }));
                    }
                }
                let names = Name::all(Language::En, &reads);
                terms.extend(names.into_iter().map(|name| Term { name, reads: reads.clone(), sure, fact }));
            }
        }
        terms
    })
}

// "a, b (c), also in some d and e" reads: a, b and c are it; d and e may hold it.
fn fact_terms(item: &str) -> Vec<(String, Sure)> {
    const MANNER: [&str; 3] = ["raw", "cooked", "powdered"];
    let mut terms = Vec::new();
    for part in item.split([',', '(', ')']).map(str::trim) {
        if let Some(holders) = part.strip_prefix("also in some ") {
            terms.extend(holders.split(" and ").map(|h| (h.to_owned(), Sure::May)));
            continue;
        }
        let manner = part.split([' ']).all(|w| w == "or" || MANNER.contains(&w));
        let name = part.trim_end_matches(" in quantity");
        if !name.is_empty() && !manner {
            terms.push((name.to_owned(), Sure::Is));
        }
    }
    terms
}

// Phrases that are another thing are replaced or blanked, so that what stands beside them is still read.
fn masked(mut words: Vec<String>) -> Vec<String> {
    static PHRASES: OnceLock<Vec<(Vec<String>, Vec<String>)>> = OnceLock::new();
    let cut = || OTHER_THINGS.iter().map(|(of, reads)| (food_words(of), food_words(reads))).collect();
    for (phrase, reads) in PHRASES.get_or_init(cut) {
        while let Some(start) = words.windows(phrase.len()).position(|w| w == phrase) {
            // A blank keeps what stood around the phrase apart.
            let put = if reads.is_empty() { vec![String::new()] } else { reads.clone() };
            words.splice(start..start + phrase.len(), put);
        }
    }
    words
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    #[test]
    fn every_alias_points_at_a_term_of_the_facts() {
        let known: Vec<String> =
            facts::all_food_hazards().iter().flat_map(|f| fact_terms(&f.item)).map(|(t, _)| t).collect();
        assert!(!known.is_empty());
        for (of, _, names) in ALIASES.iter().flat_map(|(_, rows)| *rows) {
            assert!(known.iter().any(|t| t == of), "no fact has the term {of:?}");
            assert!(names.split(", ").all(|n| !food_words(n).is_empty()), "{names}");
        }
    }

    #[test]
    fn facts_are_cut_into_their_terms() {
        assert_eq!(
            fact_terms("xylitol (birch sugar), also in some nut butters and gum"),
            [
                ("xylitol".to_owned(), Sure::Is),
                ("birch sugar".to_owned(), Sure::Is),
                ("nut butters".to_owned(), Sure::May),
                ("gum".to_owned(), Sure::May)
            ]
        );
        let onion: Vec<String> =
            fact_terms("onion, chives (raw, cooked or powdered)").into_iter().map(|(t, _)| t).collect();
        assert_eq!(onion, ["onion", "chives"]);
        assert_eq!(fact_terms("cooked bones").len(), 1);
    }

    #[test]
    fn every_food_of_the_facts_is_found_under_its_own_name() {
        for fact in facts::all_food_hazards() {
            for ((term, sure), given) in
                fact_terms(&fact.item).into_iter().flat_map(|t| fact.given_as.iter().map(move |g| (t.clone(), *g)))
            {
                for species in &fact.species {
                    let verdict = look_up_as(given, *species, &term);
                    assert!(
                        verdict.findings.iter().any(|f| f.fact == fact && f.is_certain() == (sure == Sure::Is)),
                        "{term:?} for {species:?}"
                    );
                }
            }
        }
    }

    #[test]
    fn everyday_names_reach_their_level() {
        use FoodLevel::{Avoid, Little, Never};
        let cases = [
            (Species::Dog, "cheddar cheese", Some(Little)),
            (Species::Dog, "Milk Chocolate", Some(Never)),
            (Species::Dog, "dark choc drops", Some(Never)),
            (Species::Dog, "raisin bread", Some(Never)),
            (Species::Dog, "sugar-free gum", Some(Never)),
            (Species::Dog, "onions", Some(Never)),
            (Species::Cat, "garlic bread", Some(Never)),
            (Species::Dog, "avacado toast", Some(Avoid)),
            (Species::Parrot, "avacado toast", Some(Never)),
            (Species::Parrot, "salted peanuts", Some(Never)),
            (Species::Dog, "salted peanuts", Some(Avoid)),
            (Species::Rabbit, "toast", Some(Avoid)),
            (Species::Dog, "chicken", None),
            (Species::Dog, "apple slices", None),
            // One core is no alarm, and no treat.
            (Species::Dog, "apple cores", Some(Avoid)),
            (Species::Dog, "cherry pits", Some(Never)),
            (Species::Dog, "cream of tartar", Some(Never)),
            (Species::Cat, "tamarind paste", Some(Never)),
            (Species::Dog, "hops", Some(Never)),
            (Species::Dog, "shop biscuit", None),
            (Species::Dog, "chops", None),
            (Species::Cat, "mouldy bread", Some(Never)),
            (Species::Dog, "black walnut", Some(Never)),
            (Species::Dog, "walnuts", None),
            (Species::Cat, "nutmeg", Some(Avoid)),
            (Species::Parrot, "sugar-free gum", Some(Never)),
            (Species::Cat, "xylitol", Some(Avoid)),
            (Species::Dog, "coconut milk", None),
            (Species::Dog, "pineapple", None),
            (Species::Dog, "grapefruit", None),
            (Species::Dog, "unsalted peanuts", None),
            (Species::Cat, "yoghurt", Some(Little)),
            (Species::Other, "chocolate", None),
            (Species::Dog, "", None),
            (Species::Dog, "🐾", None),
        ];
        for (species, text, level) in cases {
            assert_eq!(look_up(species, text).level(), level, "{text:?} for {species:?}");
        }
    }

    #[test]
    fn what_kills_as_a_toy_or_chew_is_named_in_every_language_and_a_food_of_that_name_is_not() {
        let things = [
            (
                Species::Cat,
                "strings",
                "string;ball of wool;ribbon;tinsel;Wollknäuel;Schnur;Faden;Wolle;Lametta;ficelle;ruban;pelote de laine;lana;hilo;cinta;barbante;novelo;fita",
            ),
            (Species::Cat, "laser", "laser pointer;Laserpointer;pointeur laser;puntero láser;ponteira laser"),
            (Species::Dog, "hard-chews", "antler chew;Hirschgeweih;bois de cerf;cornamenta;chifre"),
            (Species::Dog, "rawhide", "rawhide bone;Büffelhautknochen;peau de buffle;cuero crudo;couro cru"),
            (Species::Dog, "corn-cob", "corn cob;Maiskolben;épi de maïs;mazorca;espiga de milho"),
            (Species::Dog, "cooked-bones", "cooked bones"),
        ];
        for (species, id, names) in things {
            for name in names.split(';') {
                let found = look_up_as(GivenAs::Thing, species, name).findings;
                assert!(found.iter().any(|f| f.fact.id == id && f.is_certain()), "{id}: {name:?} gives {found:?}");
            }
        }
        for name in ["ball", "feather wand", "rope tug", "Ball", "balle", "pelota", "bola", "crinkle tunnel"] {
            assert!(look_up_as(GivenAs::Thing, Species::Cat, name).findings.is_empty(), "{name}");
        }
        for name in ["Lily petals", "Lilie", "Lilien", "lis", "lirio", "lírio"] {
            assert_eq!(look_up(Species::Cat, name).level(), Some(FoodLevel::Never), "{name}");
        }
        assert!(look_up(Species::Cat, "string beans").findings.is_empty());
    }

    #[test]
    fn a_food_listed_for_others_only_is_told_apart_from_an_unlisted_one() {
        let verdict = look_up(Species::Other, "chocolate");
        assert!(!verdict.species_listed && verdict.findings.is_empty());
        assert!(verdict.elsewhere.iter().any(|f| f.level == FoodLevel::Never));
        assert!(look_up(Species::Cat, "sugar free gum").elsewhere.iter().any(|f| f.read_as == "xylitol"));
    }

    #[test]
    fn a_misspelt_food_is_found_and_a_label_is_to_be_read() {
        let misspelt = look_up(Species::Dog, "choclate");
        assert!(misspelt.level() == Some(FoodLevel::Never) && misspelt.findings[0].how == Match::Spelling);
        let label = look_up(Species::Dog, "xylitol-free peanut butter");
        assert!(label.level().is_none() && label.findings.iter().any(|f| f.read_as == "xylitol"));
    }
}
