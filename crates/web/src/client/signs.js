// What is seen of the animal's body language: which sign, and what a strong one brings with it.

import { button, el, openSheet } from "./dom.js";
import { closeOffer, letGo, waits } from "./settle.js";
import { withStrong } from "./swaps.js";
import { say } from "./say.js";

/** @import { Body, Pad, SignLevel } from "../../client-checks/client" */

/** @type {SignLevel[]} */
const LEVELS = ["strong", "mild", "joining"];

/**
 * A strong sign with no session to stop: what to do now, and whom to ask.
 * @param {Pad} pad
 */
function stopHere(pad) {
  navigator.vibrate?.([120, 60, 120]);
  openSheet(say("client-board-stop-here", { name: pad.now.name }), (close) => [
    el("p", { class: "stop", "data-test": "whom-to-ask" }, say("client-board-whom-to-ask")),
    button(say("client-board-done"), "stop-here-done", close, { class: "wide" }),
  ]);
}

/**
 * A sign seen now, to be noted.
 * @param {Pad} pad
 * @param {string} sign
 * @param {SignLevel} level
 * @returns {Body}
 */
const seenNow = (pad, sign, level) => ({ kind: "sign", sign, level, when: "during", ...pad.in() });

/**
 * Notes a strong sign; agreed swaps stop in the same tap, and so does the session where its end is noted with it. A press after
 * the wait of an offer that is closed by it is noted before it, as a tap of its own: one Undo takes back the sign, not the press.
 * @param {Pad} pad
 * @param {string} sign
 * @param {Body[]} [end]
 */
export async function noteStrong(pad, sign, end = []) {
  // In a session that goes on the pad itself stops; else it is said here.
  if (!pad.view.session || end.length > 0) stopHere(pad);
  if (waits(pad)) await letGo(pad);
  await pad.note([seenNow(pad, sign, "strong"), ...withStrong(pad), ...end]);
  return end.length > 0 ? letGo(pad) : closeOffer(pad);
}

/**
 * The signs of one level to choose from, and one in one's own words.
 * @param {Pad} pad
 * @param {SignLevel} level
 * @param {(sign: string) => unknown} seen
 */
const choices = (pad, level, seen) => [
  ...pad.now.signs
    .filter((s) => s.level === level)
    .map((s) => button(s.said, `sign-${level}`, () => seen(s.sign), { class: `wide sign ${level}` })),
  button(
    say(`client-board-other-${level}`),
    `sign-${level}-other`,
    () => {
      const words = prompt(say("client-board-saw-what"))?.trim();
      if (words) seen(words.slice(0, 2000));
    },
    { class: "wide" },
  ),
];

/**
 * What is seen of its body language. A strong sign stops agreed swaps in the same tap.
 * @param {Pad} pad
 */
export function signs(pad) {
  openSheet(say("client-board-see-what"), (close) => [
    el("p", { class: "quiet" }, say("client-board-one-sign")),
    ...LEVELS.flatMap((level) => {
      const seen = (/** @type {string} */ sign) => {
        close();
        return level === "strong" ? noteStrong(pad, sign) : pad.note([seenNow(pad, sign, level)]);
      };
      return [el("h3", {}, say(`client-board-level-${level}`)), ...choices(pad, level, seen)];
    }),
  ]);
}

/**
 * Which strong sign ends the session: rest, and whom to ask, follow from a sign. Noted with the end, in one tap; whoever cannot
 * say which ends it all the same.
 * @param {Pad} pad
 * @param {string} session
 */
export function endBySign(pad, session) {
  openSheet(say("client-board-see-what"), (close) => {
    const seen = (/** @type {string} */ sign) => {
      close();
      return noteStrong(pad, sign, [{ kind: "session_end", session, reason: "strong_sign" }]);
    };
    return [
      el("p", { class: "quiet" }, say("client-board-end-by-sign")),
      ...choices(pad, "strong", seen),
      button(say("client-board-cannot-say"), "sign-strong-unsaid", () => seen(say("client-board-end-strong")), {
        class: "wide",
      }),
    ];
  });
}
