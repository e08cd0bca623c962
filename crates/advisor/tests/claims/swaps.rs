//! Agreed swaps: what comes after another thing was given than asked for.

use crate::log::{Log, word, words};
use sayso_methods::understanding::ladder::Rung;
use sayso_model::{Answer, Delivery, Press, PressedBy, RewardId, SwapDraw, SwapId, SwapPlan, Then, draw};
use serde_json::json;
use uuid::Uuid;

/// Presses of two words; `again` tells whether the same button is pressed again after the thing came.
fn swapped(log: &mut Log, days: u16, ignores: bool, then: Option<Then>, mut again: impl FnMut(&mut Log, bool) -> bool) {
    let swap = SwapId(log.id());
    log.write(SwapPlan { swap, words: words(2), one_in: draw::ONE_IN, days });
    let begun = log.at;
    let press_body =
        |n: usize| -> Press { serde_json::from_value(json!({ "word": word(n), "by": PressedBy::Animal })).unwrap() };
    for _ in 0..usize::from(days) * 30 {
        log.at = log.at.plus_seconds(86_400.0 / 31.0 - 240.0);
        if log.at.seconds_since(begun) > f64::from(days) * 86_400.0 - 600.0 {
            break;
        }
        let n = log.below(2);
        let press = log.write(press_body(n));
        let partner = draw::partner(&words(2), draw::block(begun, log.at).unwrap(), word(n)).unwrap();
        let is_swapped = draw::swapped(swap, press, draw::ONE_IN);
        let give = if is_swapped { partner } else { word(n) };
        log.write(SwapDraw { swap, press, word: word(n), give });
        let other = is_swapped && !ignores;
        let delivery: Delivery = serde_json::from_value(json!({
            "answers": press,
            "word": word(n),
            "answer": if other { Answer::Alternative } else { Answer::Given },
            "then": then,
            "alternative": other.then(|| RewardId(Uuid::from_u128(200 + 1 - n as u128))),
        }))
        .unwrap();
        log.write(delivery);
        if again(log, is_swapped) {
            log.at = log.at.plus_seconds(-50.0);
            log.write(press_body(n));
            log.at = log.at.plus_seconds(-10.0);
        }
    }
    log.at = log.at.plus_seconds(86_400.0);
}

#[test]
fn pressing_again_after_swaps_holds_against_habit_and_pressing_again_anyway_does_not() {
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, Some(Then::Took), |log, swapped| swapped && log.below(10) < 7);
    let found = log.read().animal;
    assert_eq!(found.verdict.rung, Rung::HoldsAgainstHabit, "{found:?}");
    assert!(found.swaps.departed == 0 && found.swaps.swapped > 50, "{found:?}");
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, Some(Then::Took), |log, _| log.below(10) < 7);
    assert_eq!(log.read().animal.verdict.rung, Rung::FitsChance);
    // Draws that are not carried out cannot speak for anything.
    let mut log = Log::with(2);
    swapped(&mut log, 28, true, Some(Then::Took), |log, swapped| swapped && log.below(10) < 7);
    let ignored = log.read().animal;
    assert!(ignored.swaps.departed > 50 && ignored.verdict.rung <= Rung::FitsChance, "{ignored:?}");
    // Nor can answers after which nobody wrote down what it did: presses may be missing as well.
    let mut log = Log::with(2);
    swapped(&mut log, 28, false, None, |log, swapped| swapped && log.below(10) < 7);
    assert!(log.read().animal.verdict.rung <= Rung::FitsChance);
}
