//! The page before a meeting.

use crate::{DEMO, TALKED, animals, before_meeting, now, read, texts};
use sayso_advisor::Case;
use sayso_advisor::steps::steps;
use sayso_model::talks::talks;
use sayso_model::{
    AccountId, AnimalId, Author, Body, Event, EventId, Label, Language, Note, OwnPlan, PlanLine, PlanWay, Proposal,
    ProposalAnswer, Proposed, Reply, Sign, SignLevel, Stage, StageChoice, Story, When, WordCard, WordId,
};
use sayso_paper::{Paper, Sheet, meeting};
use sayso_wording::{Locale, say};

#[test]
fn the_page_before_a_meeting_is_one_page_however_much_was_said() {
    let mut longer = Vec::new();
    for (language, animal) in Language::ALL.into_iter().flat_map(|l| animals().into_iter().map(move |a| (l, a))) {
        let pages = read(&before_meeting(animal, Locale::of(language)), Paper::A4).get_pages().len();
        if pages != 1 {
            longer.push(format!("{language:?}, {animal}: {pages} pages"));
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
}

#[test]
fn the_page_before_a_meeting_tells_what_was_agreed_to_those_who_may_know() {
    let animal = animals()[0];
    let told = texts(&before_meeting(animal, Locale::ENGLISH).blocks).join("\n");
    for said in
        ["What was agreed", "From Brook, agreed on", "own plan of", "was shown on", "Open questions", "Does it roll"]
    {
        assert!(told.contains(said), "{said} is not in\n{told}");
    }
    // What the home said stands there, newest first: a "no" with its words, and its question.
    let (no, asked) = (told.find("Not this week: we are away"), told.find("Shall we close it for a week"));
    assert!(no.is_some() && no < asked && told.contains("The home said no on"), "{told}");
    assert_eq!(told.matches("agreed on").count() + told.matches("own plan of").count(), 3, "the rest is counted");
    assert!(told.contains("1 more, not on this page.") && !told.contains("0 more"), "{told}");
    let case = Case::new(&TALKED, animal, now());
    let untold = texts(&meeting(&case, Locale::ENGLISH, None, None).unwrap().blocks).join("\n");
    assert!(!untold.contains("Brook") && !untold.contains("What was agreed"), "{untold}");
    // Since a chosen day, if it is one of the last twelve weeks.
    let today = now().day(case.zone());
    let since = |day| texts(&meeting(&case, Locale::ENGLISH, Some(day), None).unwrap().blocks).join("\n");
    assert!(since(today.plus(-30)).contains("The 31 days before"));
    assert_eq!(since(today.plus(1)), untold);
    assert_eq!(since(today.plus(-84)), untold);
}

#[test]
fn beside_a_line_that_waits_for_its_words_step_the_page_says_what_comes_first() {
    let (animal, word) = (animals()[0], WordId(uuid::Uuid::from_u128(7)));
    // A word that is to be invited and was never shown: its step goes back to showing.
    let known = DEMO.words_of(animal).into_iter().find(|card| !card.closing).unwrap();
    let told = |way: PlanWay| {
        let mut story = Story::clone(&DEMO);
        let pattern = DEMO.ledger().all().next().unwrap().clone();
        let last_day = now().day(&DEMO.zone()).plus(2);
        let line = PlanLine { word, way: Some(way), minutes: 3, times: 3 };
        let bodies: [Body; 3] = [
            WordCard { word, says: Label::new("hammock").unwrap(), ..known.clone() }.into(),
            StageChoice { word, stage: Stage::Invite, because: None }.into(),
            OwnPlan { lines: vec![line], last_day }.into(),
        ];
        for (n, body) in (1..).zip(bodies) {
            let (id, at) = (EventId(uuid::Uuid::from_u128(n)), now().plus_seconds(-86_400.0 + n as f64));
            story.add(Event { id, animal: Some(animal), happened_at: at, recorded_at: at, body, ..pattern.clone() });
        }
        let case = Case::new(&story, animal, now());
        texts(&meeting(&case, Locale::ENGLISH, None, Some(&talks(&story, now()))).unwrap().blocks).join("\n")
    };
    let (waits, goes) = (told(PlanWay::AskAndPoint), told(PlanWay::Show));
    assert!(waits.contains("“hammock”: Today says:") && waits.contains("the plan waits for it"), "{waits}");
    assert!(goes.contains("hammock") && !goes.contains("the plan waits for it"), "{goes}");
}

/// A story of the demo with two plans of a coach for three words each and one of the home's own for six, whose cards were made so many
/// hours ago, and with a growl today.
fn planned_and_growled(of: &Story, animal: AnimalId, made: f64) -> Story {
    let mut story = Story::clone(of);
    let (mut n, pattern) = (10_000_u128, DEMO.ledger().all().next().unwrap().clone());
    let mut put = |hours: f64, body: Body| {
        n += 1;
        let (id, at) = (EventId(uuid::Uuid::from_u128(n)), now().plus_seconds(hours * -3_600.0));
        story.add(Event { id, animal: Some(animal), happened_at: at, recorded_at: at, body, ..pattern.clone() });
        id
    };
    let known = DEMO.words_of(animal);
    let named = known.iter().find(|card| !card.closing).unwrap();
    let words: Vec<WordId> = (1..=12).map(|n| WordId(uuid::Uuid::from_u128(900 + n))).collect();
    for (n, word) in (1..).zip(&words) {
        let says = Label::new(&format!("hammock {n}")).unwrap();
        put(made, WordCard { word: *word, says, closing: n == 7, ..WordCard::clone(named) }.into());
        put(made - 1.0, StageChoice { word: *word, stage: Stage::Invite, because: None }.into());
    }
    let lines = |words: &[WordId]| -> Vec<PlanLine> {
        let way = Some(PlanWay::AskAndPoint);
        words.iter().map(|word| PlanLine { word: *word, way, minutes: 3, times: 3 }).collect()
    };
    let last_day = now().day(&DEMO.zone()).plus(2);
    let from = Author { account: AccountId(uuid::Uuid::nil()), name: Label::new("Brook").unwrap() };
    for (hours, words) in [(60.0, &words[..3]), (50.0, &words[3..6])] {
        let proposes = Proposed::Plan { lines: lines(words), last_day };
        let plan = Proposal { from: from.clone(), proposes, text: None, takes_up: None, club: None };
        let to = put(hours, plan.into());
        let yes = ProposalAnswer { to, reply: Reply::Accepted, text: None, by: None, rehearsed: None };
        put(hours - 1.0, yes.into());
    }
    put(40.0, OwnPlan { lines: lines(&words[6..]), last_day }.into());
    let sign = Note::new("growl").unwrap();
    put(1.0, Sign { sign, level: SignLevel::Strong, when: When::During, session: None }.into());
    story
}

#[test]
fn the_page_before_a_meeting_says_a_rest_once_however_many_lines_wait_for_it() {
    let mut longer = Vec::new();
    for animal in animals() {
        let story = planned_and_growled(&DEMO, animal, 400.0);
        let (case, said) = (Case::new(&story, animal, now()), talks(&story, now()));
        let waiting = steps(&case).iter().filter(|step| step.word.says.starts_with("hammock")).count();
        assert_eq!(waiting, 12, "all of them have a step, which is to rest");
        let sheet = |locale| meeting(&case, locale, None, Some(&said)).unwrap();
        let told = texts(&sheet(Locale::ENGLISH).blocks).join("\n");
        assert!(!told.contains("the plan waits for it") && told.contains("hammock 8"), "{told}");
        assert!(told.contains("4 more, not on this page."), "{told}");
        assert_eq!(
            told.matches("nobody waits for it").count(),
            1,
            "of the word that ends sessions, also in a rest: {told}"
        );
        for (language, paper) in Language::ALL.into_iter().flat_map(|l| [(l, Paper::A4), (l, Paper::Letter)]) {
            let pages = read(&sheet(Locale::of(language)), paper).get_pages().len();
            if pages != 1 {
                longer.push(format!("{language:?}, {paper:?}, {animal}: {pages} pages"));
            }
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
}

#[test]
fn with_much_that_is_new_agreed_open_and_unsafe_paper_leaves_out_more_rather_than_go_on() {
    let (mut longer, mut would_go_on) = (Vec::new(), 0);
    for animal in animals() {
        let story = planned_and_growled(&TALKED, animal, 70.0);
        let (case, said) = (Case::new(&story, animal, now()), talks(&story, now()));
        for (language, paper) in Language::ALL.into_iter().flat_map(|l| [(l, Paper::A4), (l, Paper::Letter)]) {
            let sheet = meeting(&case, Locale::of(language), None, Some(&said)).unwrap();
            let whole = Sheet { shorter: Vec::new(), ..sheet.clone() };
            let (pages, without) = (read(&sheet, paper).get_pages().len(), read(&whole, paper).get_pages().len());
            if pages != 1 {
                longer.push(format!("{language:?}, {paper:?}, {animal}: {pages} pages"));
            }
            would_go_on += usize::from(without > 1);
            // What is unsafe is never left out.
            assert!(
                sheet
                    .shorter
                    .iter()
                    .all(|blocks| texts(blocks).iter().any(|t| t == &say!(&sheet.locale, meeting::safety)))
            );
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
    assert!(would_go_on > 4, "{would_go_on}: nothing here needs the shorter forms");
}
