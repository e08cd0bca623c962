//! Laying a board out: what moves and what stays, why, and absurd input.

use proptest::prelude::*;
use sayso_methods::board::*;
use sayso_model::Place;

fn at(row: u8, column: u8) -> Place {
    Place { row, column }
}

fn word(says: &str, known: f64, place: Option<Place>) -> BoardWord {
    BoardWord { says: says.to_owned(), presses: 5.0, known, at: place, stays: false }
}

fn grid(rows: u8, columns: u8) -> Grid {
    Grid { rows, columns, closed: Vec::new() }
}

fn steps(a: Place, b: Place) -> f64 {
    f64::from(a.row.abs_diff(b.row)).hypot(f64::from(a.column.abs_diff(b.column)))
}

#[test]
fn a_well_known_board_stays_as_it_is_and_a_new_word_goes_beside() {
    let words = [
        word("ball", 1.0, Some(at(1, 0))),
        word("outside", 1.0, Some(at(1, 1))),
        word("tug", 0.8, Some(at(1, 2))),
        word("hug", 0.0, None),
    ];
    let found = plan(&words, &grid(2, 6), &Wishes::default(), &Effort::default()).unwrap();
    assert!(found.moves.is_empty(), "{:?}", found.moves);
    for i in 0..3 {
        assert_eq!(Some(found.places[i]), words[i].at);
    }
    assert!(steps(found.places[3], found.places[2]) > 2.0, "{:?}", found.places);
    assert!(matches!(found.proof, Proof::Best { .. }));
}

#[test]
fn a_first_board_keeps_words_that_sound_nearly_alike_apart_and_no_two_side_by_side() {
    for says in [["rub", "tug", "cheese"], ["tug", "cheese", "rub"], ["cheese", "rub", "tug"]] {
        let words = says.map(|s| word(s, 0.0, None));
        let found = plan(&words, &grid(2, 3), &Wishes::default(), &Effort::default()).unwrap();
        let place = |of: &str| found.places[says.iter().position(|s| *s == of).unwrap()];
        assert!(steps(place("rub"), place("tug")) >= 2.0, "{says:?} {:?}", found.places);
        for (a, b) in [("rub", "cheese"), ("tug", "cheese")] {
            assert!(steps(place(a), place(b)) > 1.0, "{says:?} {:?}", found.places);
        }
    }
}

#[test]
fn a_hardly_known_word_moves_away_from_its_sound_alike_and_says_so() {
    let words =
        [word("tug", 1.0, Some(at(0, 0))), word("hug", 0.1, Some(at(0, 1))), word("water", 1.0, Some(at(0, 5)))];
    let found = plan(&words, &grid(1, 6), &Wishes::default(), &Effort::default()).unwrap();
    assert_eq!(found.moves.len(), 1);
    let moved = &found.moves[0];
    assert_eq!((moved.says.as_str(), moved.reason, moved.other), ("hug", MoveReason::Alike, Some(0)));
    assert_eq!(moved.from, Place { row: 0, column: 1 });
    assert!(found.cost.total() < found.if_none_move.unwrap().total());
    assert!(moved.after.moving > 0.0);
}

#[test]
fn a_word_that_must_stay_stays_whatever_it_costs() {
    let mut words = [word("tug", 0.0, Some(at(0, 0))), word("hug", 0.0, Some(at(0, 1)))];
    words.iter_mut().for_each(|w| w.stays = true);
    let found = plan(&words, &grid(1, 6), &Wishes::default(), &Effort::default()).unwrap();
    assert_eq!(found.places, [at(0, 0), at(0, 1)]);
    assert!(found.moves.is_empty());
}

#[test]
fn related_words_are_near_and_a_word_used_often_is_in_reach() {
    let mut words: Vec<BoardWord> = ["ball", "frisbee", "water"].map(|w| word(w, 0.0, None)).to_vec();
    words[2].presses = 90.0;
    let wishes = Wishes { related: vec![Pair { a: 0, b: 1, degree: 1.0 }], ..Wishes::default() };
    let found = plan(&words, &grid(4, 3), &wishes, &Effort::default()).unwrap();
    assert_eq!(found.places[2].row, 3, "the last row is the animal's: {:?}", found.places);
    assert!(steps(found.places[0], found.places[1]) <= 1.5, "{:?}", found.places);
}

#[test]
fn closed_places_stay_empty_and_brushed_pairs_part() {
    let words = [word("ball", 0.0, Some(at(0, 0))), word("water", 0.0, Some(at(0, 1)))];
    let board = Grid { rows: 1, columns: 5, closed: vec![at(0, 2), at(0, 4)] };
    let wishes = Wishes { brushed: vec![Pair { a: 0, b: 1, degree: 1.0 }], ..Wishes::default() };
    let found = plan(&words, &board, &wishes, &Effort::default()).unwrap();
    assert!(steps(found.places[0], found.places[1]) > 1.5 && !found.places.contains(&at(0, 2)), "{:?}", found.places);
    assert!(found.moves.iter().any(|m| m.reason == MoveReason::Accident));
}

#[test]
fn recordings_that_sound_alike_part_whatever_their_words() {
    let words = [word("ball", 0.0, Some(at(0, 0))), word("outside", 0.0, Some(at(0, 1)))];
    let wishes = Wishes { heard_alike: vec![Pair { a: 1, b: 0, degree: 0.9 }], ..Wishes::default() };
    let found = plan(&words, &grid(1, 6), &wishes, &Effort::default()).unwrap();
    assert!(steps(found.places[0], found.places[1]) >= 4.0, "{:?}", found.places);
    assert!(found.moves.iter().any(|m| m.reason == MoveReason::Alike), "{:?}", found.moves);
}

#[test]
fn thirty_words_get_a_layout_that_is_the_same_each_time() {
    let names = [
        "ball", "walk", "talk", "water", "food", "tug", "hug", "mad", "bad", "outside", "inside", "play", "bed", "car",
        "come", "yes", "rest", "snack", "catch", "help", "potty", "music", "morning", "later", "door", "more", "toy",
        "park", "bark", "treat",
    ];
    let mut words: Vec<BoardWord> = names.map(|w| word(w, 0.0, None)).to_vec();
    words.iter_mut().zip(0_u8..).for_each(|(w, i)| w.presses = f64::from(i % 7));
    let found = plan(&words, &grid(5, 6), &Wishes::default(), &Effort::default()).unwrap();
    assert_eq!(found, plan(&words, &grid(5, 6), &Wishes::default(), &Effort::default()).unwrap());
    let side_by_side = |a: &str, b: &str| {
        let index = |w: &str| names.iter().position(|n| *n == w).unwrap();
        steps(found.places[index(a)], found.places[index(b)]) < 1.5
    };
    for (a, b) in [("walk", "talk"), ("tug", "hug"), ("mad", "bad"), ("park", "bark"), ("door", "more")] {
        assert!(!side_by_side(a, b), "{a} and {b} are side by side");
    }
    assert!(matches!(found.proof, Proof::Found { bound, .. } if bound <= found.cost.total() + 1e-9));
}

#[test]
fn degenerate_boards_have_typed_answers() {
    let (wishes, effort) = (Wishes::default(), Effort::default());
    assert!(plan(&[], &grid(1, 1), &wishes, &effort).unwrap().places.is_empty());
    assert!(matches!(plan(&[], &grid(0, 3), &wishes, &effort), Err(PlanError::Grid { .. })));
    assert!(matches!(plan(&[], &grid(21, 3), &wishes, &effort), Err(PlanError::Grid { .. })));
    let one = word("ball", 0.0, None);
    let two = [one.clone(), one.clone()];
    assert!(matches!(plan(&two, &grid(1, 1), &wishes, &effort), Err(PlanError::Placing(_))));
    assert_eq!(plan(&two, &grid(1, 2), &wishes, &effort).unwrap().places.len(), 2, "the same word twice");
    let off = word("ball", 0.0, Some(at(7, 7)));
    assert_eq!(plan(&[off], &grid(1, 2), &wishes, &effort), Err(PlanError::At(0)));
    let same = [word("ball", 0.0, Some(at(0, 0))), word("water", 0.0, Some(at(0, 0)))];
    assert_eq!(plan(&same, &grid(1, 2), &wishes, &effort), Err(PlanError::At(1)));
    let odd = BoardWord { presses: f64::NAN, ..one.clone() };
    assert!(matches!(plan(&[odd], &grid(1, 2), &wishes, &effort), Err(PlanError::Word { word: 0, .. })));
    let pair = Wishes { related: vec![Pair { a: 0, b: 0, degree: 1.0 }], ..Wishes::default() };
    assert!(matches!(plan(&[one], &grid(1, 2), &pair, &effort), Err(PlanError::Pair { .. })));
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    #[test]
    fn any_board_gets_every_word_a_place_of_its_own_or_a_typed_refusal(
        words in proptest::collection::vec((".{0,6}", 0.0..50.0_f64, 0.0..=1.0_f64, proptest::option::of((0..4_u8, 0..4_u8)), any::<bool>()), 0..7),
        rows in 1..4_u8,
        columns in 1..4_u8,
        weight in any::<f64>(),
    ) {
        let words: Vec<BoardWord> = words.into_iter().map(|(says, presses, known, place, stays)| BoardWord {
            says, presses, known, at: place.map(|(r, c)| at(r, c)), stays,
        }).collect();
        let mut wishes = Wishes::default();
        if weight.is_sign_negative() {
            wishes.weights.alike = weight;
        }
        if let Ok(found) = plan(&words, &grid(rows, columns), &wishes, &Effort::default()) {
            let mut seen = std::collections::BTreeSet::new();
            for (place, word) in found.places.iter().zip(&words) {
                prop_assert!(seen.insert(*place) && place.row < rows && place.column < columns);
                prop_assert!(!word.stays || word.at.is_none_or(|now| now == *place));
            }
            prop_assert!(found.cost.total().is_finite());
            prop_assert!(found.if_none_move.is_none_or(|p| found.cost.total() <= p.total() + 1e-9));
        }
    }
}
