// An ordinary day: the animal pressed; how was it answered, and what did it do then?

import { care } from "./care.js";
import { button, el, openSheet, slots, tell } from "./dom.js";
import { pressedAgain, thenPanel } from "./showing.js";
import * as swaps from "./swaps.js";

/** @import { Answer, Pad, Then, Told } from "../../client-checks/client" */

const WAITING_MS = 120_000;

/**
 * @param {Pad} pad
 * @param {string} word
 */
export const padState = (pad, word) => {
  const press = waiting(pad);
  return { does: "It pressed", name: press?.body.word === word ? "give" : "idle" };
};

/**
 * The animal pressed this.
 * @param {Pad} pad
 * @param {string} word
 */
export const tap = (pad, word) => pad.press(word, "animal");

/**
 * The last press of the animal that has no answer yet.
 * @param {Pad} pad
 */
function waiting(pad) {
  return Object.values(pad.view.pending)
    .filter((e) => e.body.by === "animal" && Date.now() - Date.parse(e.happened_at) < WAITING_MS)
    .sort((a, b) => Date.parse(a.happened_at) - Date.parse(b.happened_at))
    .at(-1);
}

/** @param {Pad} pad */
export function panel(pad) {
  const press = waiting(pad);
  if (press) return swaps.panel(pad, press) ?? answerPanel(pad, press);
  const last = pad.view.last;
  if (
    last &&
    !last.body.then &&
    last.body.answer === "declined" &&
    Date.now() - Date.parse(last.happened_at) < 60_000
  ) {
    return afterNo(pad, last);
  }
  return (
    thenPanel(pad, 60_000) ?? {
      key: "day",
      build: () => [
        tell(el("p", { class: "quiet" }, `Tap the word ${pad.now.name} pressed.`)),
        care(pad, undefined),
        slots({}),
      ],
    }
  );
}

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 */
function answerPanel(pad, press) {
  const { word } = press.body;
  const card = pad.word(word);
  const reward = pad.rewardOf(word);
  const later = swaps.notNow(pad, press);
  const gives = !reward?.never && !later;
  /**
   * @param {string} text
   * @param {Answer} name
   * @param {Record<string, any>} [props]
   */
  const answer = (text, name, props) => button(text, `answer-${name}`, () => pad.deliver(press, name), props);
  return {
    key: `answer-${press.id}-${press.body.accident}-${later}`,
    build: () => [
      tell(
        el("p", {}, `${pad.now.name} pressed `, el("strong", {}, pad.says(word)), ". How was it answered?"),
        reward?.never && el("p", { class: "stop" }, el("strong", {}, "Do not give it. "), reward.never),
        card?.answer && el("p", { class: "quiet" }, `Everyone here: ${card.answer}`),
        card?.not_now && el("p", { class: "quiet" }, `For not now, everyone says: ${card.not_now}`),
      ),
      care(pad, reward),
      slots({
        give: gives
          ? answer("Given", "given", { class: "primary" })
          : later && button("Give after all", "swap-again", () => swaps.again(pad)),
        away: button(
          "A stumble?",
          "stumble",
          () => pad.amend(press, { accident: press.body.accident === "likely" ? "unsure" : "likely" }),
          { "aria-pressed": String(press.body.accident === "likely"), "aria-label": "It looked like a stumble" },
        ),
        show: gives && answer("Partly", "partly"),
        no: answer("Not now", "declined"),
        other: button("Something else…", "answer-alternative", () => alternative(pad, press)),
        more: answer("Missed", "missed"),
      }),
    ],
  };
}

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 */
function alternative(pad, press) {
  const own = pad.word(press.body.word)?.reward;
  const others = pad.now.rewards.filter((r) => !r.never && r.id !== own && pad.ration.pieces(r) !== 0);
  openSheet("What instead?", (close) => [
    others.length === 0 && el("p", {}, "There is nothing else on the cards."),
    ...others.map((r) =>
      button(
        r.name,
        "alternative",
        () => {
          close();
          pad.deliver(press, "alternative", { alternative: r.id });
        },
        { class: "wide" },
      ),
    ),
  ]);
}

/**
 * @param {Pad} pad
 * @param {Told<"delivery">} delivery
 */
function afterNo(pad, delivery) {
  /**
   * @param {string} text
   * @param {Then} then
   */
  const did = (text, then) => button(text, `then-${then}`, () => pad.amend(delivery, { then }));
  return {
    key: `no-${delivery.id}`,
    build: () => [
      tell(
        el("p", {}, `Not now. What did ${pad.now.name} do?`),
        el(
          "p",
          { class: "quiet" },
          "If it guards, growls or snaps: give space, stop, and ask a qualified behaviour professional.",
        ),
      ),
      care(pad, undefined),
      slots({
        ignored: did("Let it be", "ignored"),
        away: did("Went away", "left"),
        more: button("Pressed again…", "then-again", () => pressedAgain(pad, delivery)),
      }),
    ],
  };
}
