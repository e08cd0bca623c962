// An offer that still waits for its end: whoever goes on to something else is asked what came of it first. Left alone, "nothing
// came" would be missing from the log, and what is left in it would look better than it was.

import { button, el, openSheet } from "./dom.js";
import { done, drop, result, since, state, toShowing } from "./inviting.js";
import { say } from "./say.js";

/** @import { Pad } from "../../client-checks/client" */

/**
 * Whether an offer waits for its end.
 * @param {Pad} pad
 */
export const waits = (pad) => state(pad).step === "waiting" || state(pad).step === "late";

/**
 * Goes on, once it is known what came of an offer.
 * @param {Pad} pad
 * @param {() => unknown} goOn
 */
export function settled(pad, goOn) {
  const s = state(pad);
  if (!waits(pad)) return goOn();
  // After a strong sign nobody is asked what came of an offer.
  if (pad.view.stop === "strong") {
    letGo(pad);
    return goOn();
  }
  const over = since(pad) > (s.wait ?? pad.now.wait_s);
  return openSheet(say("client-board-still-offered", { word: pad.says(s.word) }), (close) => {
    /** @param {() => Promise<unknown>} first */
    const then = (first) => async () => {
      close();
      await first();
      await done(pad); // what was held for the answers is sent
      goOn();
    };
    return [
      el("p", { class: "quiet" }, say("client-board-still-offered-why", { name: pad.now.name })),
      over &&
        button(
          say("client-board-nothing-came"),
          "settle-nothing",
          then(() => result(pad, { outcome: "nothing_by_wait" }, s.tappedAt)),
          { class: "primary wide" },
        ),
      button(
        say("client-board-left-offer"),
        "settle-left",
        then(() => result(pad, { outcome: "left" }, s.tappedAt)),
        { class: "wide" },
      ),
      button(
        say("client-board-cancel-one"),
        "settle-cancel",
        then(() => drop(pad, s.call)),
        { class: "wide" },
      ),
    ];
  });
}

/**
 * Once a session is over, nothing is asked of an invitation any more; what was held for the answer is sent. An offer that still
 * waits was cut off by what ended the session: what would have come of it nobody knows, so it is not noted; a press is.
 * @param {Pad} pad
 */
export const letGo = (pad) => (waits(pad) ? drop(pad, state(pad).call) : done(pad));

/**
 * A strong sign that fell in the wait cuts an offer off, whoever noted it.
 * @param {Pad} pad
 */
export const cutOff = (pad) => {
  const { at = Infinity } = state(pad);
  return waits(pad) && pad.strong.some((seen) => seen >= at) ? letGo(pad) : undefined;
};

/**
 * After a strong sign nothing waits for an end any more, and what was chosen to be offered is not.
 * @param {Pad} pad
 */
export const closeOffer = (pad) => {
  if (waits(pad)) return letGo(pad);
  return state(pad).step ? undefined : pad.setMemo(toShowing(pad));
};
