// Whose press was it? A press that was heard is asked about while the moment is fresh; one tap answers. Left alone, it
// stays a press of which nobody said who made it.

import { button, el } from "./dom.js";
import { isA } from "./sitting.js";
import { say } from "./say.js";

/** @import { Event, Of, Pad, Panel, PressedBy, Told } from "../../client-checks/client" */

const ASKED_MS = 45_000;

/** @param {Event} event */
const ms = (event) => Date.parse(event.happened_at);

/**
 * The newest heard press that nobody has spoken of: no tap tells the same press, and it was not judged.
 * @param {Pad} pad
 * @param {number} at
 * @returns {Told<"press"> | undefined}
 */
export function open(pad, at) {
  const presses = pad.view.stand.filter(isA("press"));
  const spoken = presses.filter((p) => p.body.by !== "unknown");
  const judged = new Set(pad.own.map(({ event: { body } }) => ("of" in body ? body.of : undefined)));
  // Heard of no animal yet, where several use the board.
  const nobodys = pad.own
    .filter((r) => r.state !== "refused" && r.event.animal === undefined && !judged.has(r.id))
    .map((r) => r.event)
    .filter(isA("press"));
  return [...presses, ...nobodys]
    .filter((p) => p.source === "heard" && p.body.by === "unknown" && pad.word(p.body.word))
    .filter((p) => at - ms(p) < ASKED_MS)
    .filter((p) => !spoken.some((s) => same(pad, s, p)))
    .sort((a, b) => ms(a) - ms(b))
    .at(-1);
}

/**
 * Whether two tellings are of one press, by the notebook's own rule.
 * @param {Pad} pad
 * @param {Told<"press">} a
 * @param {Told<"press">} b
 */
const same = (pad, a, b) => a.body.word === b.body.word && Math.abs(ms(a) - ms(b)) <= 1000 * pad.now.same_press_s;

/**
 * Who most likely pressed: while words are shown it is the person, else the animal.
 * @param {Pad} pad
 * @param {string} mode
 * @returns {PressedBy}
 */
export const likely = (pad, mode) => (pad.view.session && mode === "showing" ? "person" : "animal");

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 * @param {PressedBy} by
 */
function settle(pad, press, by) {
  /** @type {Partial<Of<"press">>} */
  const change = { by, accident: by === "person" ? "no" : "unsure" };
  if (press.animal) return pad.amend(press, change);
  const body = { ...press.body, ...change };
  return pad.note([{ kind: "correction", of: press.id, ...(by === "animal" ? { animal: pad.now.animal } : {}), body }]);
}

/**
 * The question, if one is open.
 * @param {Pad} pad
 * @param {string} mode
 * @returns {Panel | undefined}
 */
export function whose(pad, mode) {
  const press = open(pad, Date.now());
  if (!press) return undefined;
  const first = likely(pad, mode);
  /**
   * @param {PressedBy} by
   * @param {string} text
   */
  const choice = (by, text) =>
    button(text, `whose-${by}`, () => settle(pad, press, by), { class: by === first ? "primary" : "" });
  const word = pad.says(press.body.word);
  return {
    key: `whose-${press.id}-${first}`,
    build: () => [
      el("p", {}, say("client-board-whose", { word })),
      choice("animal", pad.now.name),
      choice("person", say("client-board-whose-me")),
    ],
  };
}
