// An ordinary day: the animal pressed; how was it answered, and what did it do then?

import { care } from "./care.js";
import { button, el, openSheet, slots, tell } from "./dom.js";
import { urges } from "./rest.js";
import { givePanel, pressedAgain, thenPanel } from "./showing.js";
import * as swaps from "./swaps.js";
import { say } from "./say.js";

/** @import { Answer, Pad, Panel, Then, Told } from "../../client-checks/client" */

const WAITING_MS = 120_000;

/**
 * @param {Pad} pad
 * @param {string} word
 */
export const padState = (pad, word) => {
  const press = waiting(pad);
  const does = say("client-board-it-pressed", { name: pad.now.name });
  return press?.body.word === word ? { name: "give", does, count: "" } : { does };
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

/**
 * What is asked of a press and its answer; undefined where nothing is.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function asks(pad) {
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
  return thenPanel(pad, 60_000);
}

/**
 * @param {Pad} pad
 * @returns {Panel}
 */
export const panel = (pad) =>
  asks(pad) ??
  // What was shown and not given before is still there to be given.
  givePanel(pad) ?? {
    key: "day",
    build: () => [
      tell(el("p", { class: "quiet" }, say("client-board-tap-pressed", { name: pad.now.name }))),
      care(pad, undefined),
      slots({}),
    ],
  };

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
  const now = urges(pad, press);
  /**
   * @param {string} text
   * @param {Answer} name
   * @param {Record<string, any>} [props]
   */
  const answer = (text, name, props) => button(text, `answer-${name}`, () => pad.deliver(press, name), props);
  return {
    key: `answer-${press.id}-${press.body.accident}-${later}-${now}`,
    build: () => [
      tell(
        el("p", {}, say("client-board-how-answered", { name: pad.now.name, word: pad.says(word) })),
        reward?.never && el("p", { class: "stop" }, say("client-board-never", { why: reward.never })),
        card?.answer && el("p", { class: "quiet" }, say("client-board-everyone", { answer: card.answer })),
        card?.not_now && el("p", { class: "quiet" }, say("client-board-everyone-not-now", { answer: card.not_now })),
      ),
      care(pad, reward),
      slots({
        give: gives
          ? answer(say("client-board-given"), "given", { class: now ? "primary" : "" })
          : later && button(say("client-board-after-all"), "swap-again", () => swaps.again(pad)),
        away: button(
          say("client-board-stumble-short"),
          "stumble",
          () => pad.amend(press, { accident: press.body.accident === "likely" ? "unsure" : "likely" }),
          { "aria-pressed": String(press.body.accident === "likely"), "aria-label": say("client-board-stumble") },
        ),
        show: gives && answer(say("client-board-partly"), "partly"),
        no: answer(say("client-board-not-now"), "declined"),
        other: button(say("client-board-else-instead"), "answer-alternative", () => alternative(pad, press)),
        more: answer(say("client-board-missed"), "missed"),
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
  openSheet(say("client-board-what-instead"), (close) => [
    others.length === 0 && el("p", {}, say("client-board-nothing-else")),
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
        el("p", {}, say("client-board-not-now-then", { name: pad.now.name })),
        el("p", { class: "quiet" }, say("client-board-guards", { name: pad.now.name })),
      ),
      care(pad, undefined),
      slots({
        ignored: did(say("client-board-let-it-be"), "ignored"),
        away: did(say("client-board-without-it"), "left"),
        more: button(say("client-board-pressed-again"), "then-again", () => pressedAgain(pad, delivery)),
      }),
    ],
  };
}
