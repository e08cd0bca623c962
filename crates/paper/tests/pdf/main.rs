//! The PDF, read by another reader: its structure, its fonts, its pages, its words.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, missing_docs)]

mod checks;
mod growl;
mod meeting;
mod sizes;

use checks::of_check;
use lopdf::content::Content;
use lopdf::{Dictionary, Document, Object};
use sayso_advisor::Case;
use sayso_model::talks::talks;
use sayso_model::{
    AccountId, AnimalId, Author, Body, Event, EventId, Label, Language, Moment, OwnPlan, PlanLine, PlanWay, Proposal,
    ProposalAnswer, Proposed, Reply, ShortNote, Story, TalkAbout,
};
use sayso_paper::{
    Block, Cell, Drawn, LabelSize, Paper, Sheet, kit, labels, lessons, likes, meeting, pdf, progress, rules,
};
use sayso_wording::{Locale, say};
use std::collections::BTreeMap;
use std::sync::LazyLock;

fn now() -> Moment {
    "2026-11-25T19:30:00Z".parse().unwrap()
}

static DEMO: LazyLock<Story> = LazyLock::new(|| Story::from_events(sayso_sim::demo(1, now()).events));

/// The demo, in which a coach wrote and the home answered and planned on its own.
static TALKED: LazyLock<Story> = LazyLock::new(|| {
    let mut story = Story::clone(&DEMO);
    let (mut n, pattern) = (0_u128, DEMO.ledger().all().next().unwrap().clone());
    let mut put = |animal: AnimalId, days: f64, body: Body| {
        n += 1;
        let (id, at) = (EventId(uuid::Uuid::from_u128(n)), now().plus_seconds(days * -86_400.0));
        story.add(Event { id, animal: Some(animal), happened_at: at, recorded_at: at, body, ..pattern.clone() });
        id
    };
    for animal in animals() {
        let lines: Vec<PlanLine> = DEMO
            .words_of(animal)
            .iter()
            .take(3)
            .map(|card| PlanLine { word: card.word, way: Some(PlanWay::Show), minutes: 3, times: 3 })
            .collect();
        let last_day = now().day(&DEMO.zone()).plus(2);
        let from = Author { account: AccountId(uuid::Uuid::nil()), name: Label::new("Brook").unwrap() };
        let text = ShortNote::new("Keep it at the board. Does it roll off when nobody is near?").ok();
        let wrote = |proposes: Proposed| Proposal {
            from: from.clone(),
            proposes,
            text: text.clone(),
            takes_up: None,
            club: None,
        };
        let yes = |to| ProposalAnswer { to, reply: Reply::Accepted, text: None, by: None, rehearsed: None }.into();
        for days in [16.0, 9.0] {
            let plan = put(animal, days, wrote(Proposed::Plan { lines: lines.clone(), last_day }).into());
            put(animal, days - 0.1, yes(plan));
        }
        let check = put(animal, 5.0, wrote(Proposed::Check { word: lines[0].word }).into());
        put(animal, 4.9, yes(check));
        put(animal, 8.0, OwnPlan { lines: lines.clone(), last_day }.into());
        let declined = put(animal, 3.0, wrote(Proposed::Likes).into());
        let text = ShortNote::new("Not this week: we are away, and Mora would be alone with both of them.").ok();
        let no = ProposalAnswer { to: declined, reply: Reply::Declined, text, by: None, rehearsed: None };
        put(animal, 2.5, no.into());
        let answered = put(animal, 6.0, wrote(Proposed::Question { about: None }).into());
        let text =
            ShortNote::new("Only when the door is open. Shall we close it for a week, and what do we do at night?")
                .ok();
        let said = ProposalAnswer { to: answered, reply: Reply::Said, text, by: None, rehearsed: None };
        put(animal, 5.5, said.into());
        for word in lines.iter().map(|line| line.word) {
            let about = Some(TalkAbout::Word { word });
            put(animal, 1.0, wrote(Proposed::Question { about }).into());
        }
    }
    story
});

/// The page before a meeting, with all that was said.
fn before_meeting(animal: AnimalId, locale: Locale) -> Sheet {
    meeting(&Case::new(&TALKED, animal, now()), locale, None, Some(&talks(&TALKED, now()))).unwrap()
}

fn animals() -> Vec<AnimalId> {
    DEMO.animals().keys().copied().collect()
}

/// Every sheet of the demo.
fn sheets(locale: Locale) -> Vec<Sheet> {
    let mut all = vec![
        rules(&DEMO, now(), locale),
        labels(&DEMO, now(), locale, LabelSize::Middle),
        kit(&DEMO, now(), locale),
        lessons(&DEMO, now(), locale),
    ];
    for animal in animals() {
        let case = Case::new(&DEMO, animal, now());
        all.push(progress(&case, locale, 28, None).unwrap());
        all.push(likes(&case, locale).unwrap());
        all.push(before_meeting(animal, locale));
        all.extend(of_check(animal, locale));
    }
    all
}

fn read(sheet: &Sheet, paper: Paper) -> Document {
    Document::load_mem(&pdf(sheet, paper, &BTreeMap::new()).unwrap().bytes).unwrap()
}

fn catalog(document: &Document) -> &Dictionary {
    document.catalog().unwrap()
}

fn text(object: &Object) -> String {
    lopdf::decode_text_string(object).unwrap()
}

fn dictionaries(document: &Document) -> impl Iterator<Item = &Dictionary> {
    document.objects.values().filter_map(|o| match o {
        Object::Dictionary(d) => Some(d),
        Object::Stream(s) => Some(&s.dict),
        _ => None,
    })
}

fn of_kind<'a>(document: &'a Document, key: &'a [u8], kind: &'a [u8]) -> Vec<&'a Dictionary> {
    dictionaries(document).filter(|d| d.get(key).is_ok_and(|k| k.as_name().is_ok_and(|n| n == kind))).collect()
}

/// All words of a text, without what stands between them.
fn words(text: &str) -> String {
    text.split_whitespace().collect()
}

fn extracted(document: &Document) -> String {
    let pages: Vec<u32> = document.get_pages().keys().copied().collect();
    words(&document.extract_text(&pages).unwrap())
}

/// The same as one goes on reading over the end of a page: without the feet.
fn unbroken(document: &Document, sheet: &Sheet) -> String {
    let (l, foot, of) = (&sheet.locale, &sheet.foot, document.get_pages().len());
    let mut text = extracted(document);
    for page in 1..=of {
        let foot = say!(l, sheets::foot_page, home = &foot.home, day = &foot.day, page = page, of = of);
        text = text.replacen(&words(&foot), "", 1);
    }
    text
}

fn of_cell(cell: &Cell) -> Vec<String> {
    [vec![cell.text.clone()], cell.hints.clone(), cell.more.clone()].concat()
}

/// Every text of a sheet.
fn texts(blocks: &[Block]) -> Vec<String> {
    let mut all = Vec::new();
    for block in blocks {
        match block {
            Block::Heading(text) => all.push(text.clone()),
            Block::Paragraph(p) => all.extend([p.lead.clone(), p.text.clone()]),
            Block::ToWrite(text) | Block::More { text, .. } => all.push(text.clone()),
            Block::List { items, .. } => all.extend(items.clone()),
            Block::Facts(facts) => all.extend(facts.iter().flat_map(|f| [f.0.clone(), f.1.clone()])),
            Block::Table(t) => {
                all.push(t.caption.clone());
                all.extend(t.head.clone());
                all.extend(t.rows.iter().flat_map(|r| &r.cells).flat_map(of_cell));
            }
            Block::Beside { text, charts } => {
                all.extend(texts(text));
                all.extend(charts.iter().map(|c| c.title.clone()));
            }
            Block::Labels { labels, .. } => all.extend(labels.iter().map(|l| l.says.clone())),
        }
    }
    all
}

#[test]
fn a_screen_reader_finds_language_title_and_structure() {
    for sheet in sheets(Locale::of(Language::De)) {
        let document = read(&sheet, Paper::A4);
        let catalog = catalog(&document);
        assert_eq!(text(catalog.get(b"Lang").unwrap()), "de");
        let marked = catalog.get_deref(b"MarkInfo", &document).unwrap().as_dict().unwrap().get(b"Marked").unwrap();
        assert!(marked.as_bool().unwrap());
        assert!(catalog.get_deref(b"StructTreeRoot", &document).unwrap().as_dict().is_ok());
        let view = catalog.get_deref(b"ViewerPreferences", &document).unwrap().as_dict().unwrap();
        assert!(view.get(b"DisplayDocTitle").unwrap().as_bool().unwrap());
        let info = document.trailer.get_deref(b"Info", &document).unwrap().as_dict().unwrap();
        assert_eq!(text(info.get(b"Title").unwrap()), sheet.title);
        assert_eq!(of_kind(&document, b"S", b"H1").len(), 1);
    }
}

#[test]
fn tables_lists_and_charts_are_tagged_as_what_they_are() {
    let case = Case::new(&DEMO, animals()[0], now());
    let sheet = progress(&case, Locale::ENGLISH, 28, None).unwrap();
    let document = read(&sheet, Paper::A4);
    let table = sheet.blocks.iter().find_map(|b| if let Block::Table(t) = b { Some(t) } else { None }).unwrap();
    let of = |kind: &'static [u8]| of_kind(&document, b"S", kind).len();
    assert_eq!(of(b"Table"), 1);
    assert_eq!(of(b"TR"), table.rows.len() + 1);
    assert_eq!(of(b"TH"), table.head.len() + table.rows.len());
    assert_eq!(of(b"TD"), table.rows.len() * (table.head.len() - 1));
    assert_eq!(of(b"LI"), of(b"LBody"));
    let charts: Vec<_> = sheet
        .blocks
        .iter()
        .filter_map(|b| if let Block::Beside { charts, .. } = b { Some(charts) } else { None })
        .flatten()
        .collect();
    let mut told: Vec<String> =
        of_kind(&document, b"S", b"Figure").iter().map(|f| text(f.get(b"Alt").unwrap())).collect();
    let mut expected: Vec<String> = charts.iter().map(|c| c.told.clone()).collect();
    told.sort();
    expected.sort();
    assert_eq!(told, expected);
    assert!(charts.len() >= 3);
    for chart in charts {
        let (Drawn::Bars { .. } | Drawn::Whiskers { .. }) = &chart.drawn;
        assert!(chart.told.contains(':'));
    }
}

#[test]
fn fonts_are_embedded_and_what_is_said_can_be_read_out_in_five_languages() {
    for language in Language::ALL {
        for sheet in sheets(Locale::of(language)) {
            let document = read(&sheet, Paper::A4);
            let fonts = of_kind(&document, b"Type", b"FontDescriptor");
            assert!(!fonts.is_empty());
            for font in fonts {
                assert!(font.has(b"FontFile2") || font.has(b"FontFile3"), "a font is not embedded");
            }
            let found = unbroken(&document, &sheet);
            assert!(found.contains(&words(&sheet.title)), "{} in {found}", sheet.title);
            for said in texts(&sheet.blocks) {
                assert!(found.contains(&words(&said)), "{language:?}: {said:?} is not in\n{found}");
            }
        }
    }
}

#[test]
fn letters_and_quotation_marks_of_all_languages_have_shapes_and_others_a_stand_in() {
    let mut sheet = rules(&DEMO, now(), Locale::ENGLISH);
    let letters = "ä ö ü ß Ä ñ ¿ ¡ ç œ Œ æ é è ê ë à â î ï ô û ù ã õ á í ó ú « » „ “ ” ‘ ’ – … × % €";
    sheet.blocks = vec![Block::List { items: vec![letters.to_owned()], big: true }];
    assert!(extracted(&read(&sheet, Paper::A4)).contains(&words(letters)));
    // What the typeface lacks, and what a PDF may not hold as text, neither ends the program nor the file.
    let strange = ["\u{1f43e}", "犬", "a\u{0}b", "\u{feff}x", "\u{202e}abc", "e\u{301}", "\u{ad}", &"x".repeat(400)];
    sheet.blocks = vec![Block::List { items: strange.map(str::to_owned).to_vec(), big: false }];
    assert_eq!(read(&sheet, Paper::A4).get_pages().len(), 1);
}

#[test]
fn the_rules_of_the_demo_fit_one_page_on_both_papers() {
    for language in Language::ALL {
        let sheet = rules(&DEMO, now(), Locale::of(language));
        for paper in Paper::ALL {
            let printed = pdf(&sheet, paper, &BTreeMap::new()).unwrap();
            assert_eq!(printed.pages, 1, "{language:?}");
            assert_eq!(Document::load_mem(&printed.bytes).unwrap().get_pages().len(), 1);
        }
    }
}

#[test]
fn the_progress_and_the_likes_of_the_demo_fit_one_page_in_every_language() {
    let mut longer = Vec::new();
    for language in Language::ALL {
        for sheet in animals().into_iter().flat_map(|animal| {
            let case = Case::new(&DEMO, animal, now());
            let locale = Locale::of(language);
            [progress(&case, locale, 28, None).unwrap(), likes(&case, locale).unwrap()]
        }) {
            for paper in Paper::ALL {
                let pages = read(&sheet, paper).get_pages().len();
                if pages != 1 {
                    longer.push(format!("{language:?}, {paper:?}, {}: {pages} pages", sheet.title));
                }
            }
        }
    }
    assert!(longer.is_empty(), "{longer:?}");
}

#[test]
fn a_long_sheet_goes_on_on_further_pages_with_nothing_lost() {
    let mut sheet = rules(&DEMO, now(), Locale::ENGLISH);
    let long: Vec<String> = (0..300).map(|i| format!("rule {i} of many, told at some length")).collect();
    sheet.blocks.push(Block::List { items: long.clone(), big: false });
    let printed = pdf(&sheet, Paper::Letter, &BTreeMap::new()).unwrap();
    assert!(printed.pages > 3);
    let found = extracted(&Document::load_mem(&printed.bytes).unwrap());
    for item in long {
        assert!(found.contains(&words(&item)), "{item}");
    }
    assert!(found.contains(&words(&format!("page {0} of {0}", printed.pages))));
}

#[test]
fn equal_sheets_give_equal_bytes() {
    for (one, two) in sheets(Locale::of(Language::Fr)).iter().zip(sheets(Locale::of(Language::Fr))) {
        assert_eq!(pdf(one, Paper::A4, &BTreeMap::new()).unwrap(), pdf(&two, Paper::A4, &BTreeMap::new()).unwrap());
    }
}

#[test]
fn nothing_is_drawn_in_colour() {
    for sheet in sheets(Locale::ENGLISH) {
        let document = read(&sheet, Paper::A4);
        for page in document.get_pages().values() {
            let content = Content::decode(&document.get_page_content(*page)).unwrap();
            for operation in &content.operations {
                assert!(!["rg", "RG", "k", "K"].contains(&operation.operator.as_str()), "colour on {}", sheet.title);
                let scn = ["sc", "SC", "scn", "SCN"].contains(&operation.operator.as_str());
                assert!(!scn || operation.operands.len() == 1, "colour on {}", sheet.title);
            }
        }
    }
}

#[test]
fn what_to_do_about_a_swallowed_battery_is_said_as_the_facts_say_it() {
    let said = texts(&rules(&DEMO, now(), Locale::ENGLISH).blocks);
    assert!(said.iter().any(|text| text.ends_with(&say!(&Locale::ENGLISH, hazards::battery))));
}

/// One pixel, red: a PNG (ISO/IEC 15948).
const RED: &[u8] = &[
    0x89, b'P', b'N', b'G', 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, b'I', b'H', b'D', b'R', 0, 0, 0, 1, 0, 0, 0, 1, 8, 2,
    0, 0, 0, 0x90, 0x77, 0x53, 0xde, 0, 0, 0, 12, b'I', b'D', b'A', b'T', 0x08, 0xd7, 0x63, 0xf8, 0xcf, 0xc0, 0, 0, 3,
    1, 1, 0, 0x18, 0xdd, 0x8d, 0xb0, 0, 0, 0, 0, b'I', b'E', b'N', b'D', 0xae, 0x42, 0x60, 0x82,
];

#[test]
fn words_stand_with_their_pictures_and_without_those_that_cannot_be_read() {
    for sheet in [rules(&DEMO, now(), Locale::ENGLISH), labels(&DEMO, now(), Locale::ENGLISH, LabelSize::Small)] {
        let [first, second] = sheet.words().into_iter().take(2).collect::<Vec<_>>()[..] else { panic!("two words") };
        let pictures = BTreeMap::from([(first, RED.to_vec()), (second, RED[..40].to_vec())]);
        let printed = pdf(&sheet, Paper::A4, &pictures).unwrap();
        assert_eq!((printed.unread.as_slice(), printed.pages), (&[second][..], 1), "{}", sheet.title);
        let document = Document::load_mem(&printed.bytes).unwrap();
        assert_eq!(of_kind(&document, b"Subtype", b"Image").len(), 1, "{}", sheet.title);
        // Only adorns: every word is still there to be read.
        assert_eq!(extracted(&document), extracted(&read(&sheet, Paper::A4)));
    }
}
