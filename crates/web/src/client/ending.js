// How a session ends, and what it amounts to: what was shown, pressed and given, and what may still be given.

import { button, el, openSheet } from "./dom.js";
import { summary } from "./sitting.js";

/** @import { Body, EndReason, Pad, Panel, PressedBy } from "../../client-checks/client" */

const LATELY_MS = 1_800_000; // a summary older than this is for the log

/**
 * The sheet that asks why.
 * @param {Pad} pad
 */
export function end(pad) {
  const { session } = pad.view;
  if (session === undefined) return;
  const word = pad.now.words.find((w) => w.closing);
  /** @type {[string, EndReason][]} */
  const reasons = [
    ["The plan is done", "done"],
    [word ? `Closing word: ${word.says}` : "A closing word was said", "closing_word"],
    [`${pad.now.name} went away`, "animal_left"],
    ["A strong sign", "strong_sign"],
    ["Something came up", "interrupted"],
  ];
  openSheet("End the session because…", (close) =>
    reasons.map(([text, reason]) =>
      button(
        text,
        `end-${reason}`,
        () => {
          close();
          pad.note([{ kind: "session_end", session, reason }]);
        },
        { class: "wide" },
      ),
    ),
  );
}

/**
 * The closing word from its corner: who pressed it; the session ends in the same tap.
 * @param {Pad} pad
 */
export function closing(pad) {
  const { session } = pad.view;
  const word = pad.now.words.find((w) => w.closing);
  if (session === undefined || !word) return;
  /** @param {PressedBy} by */
  const over = (by) => {
    const accident = by === "person" ? "no" : "unsure";
    /** @type {Body[]} */
    const bodies = [
      { kind: "press", word: word.id, by, certainty: 1, accident, session },
      { kind: "session_end", session, reason: "closing_word" },
    ];
    return pad.note(bodies);
  };
  openSheet(word.says, (close) =>
    /** @type {[string, PressedBy][]} */ ([
      ["I press it: end the session", "person"],
      [`${pad.now.name} pressed it: end the session`, "animal"],
    ]).map(([text, by]) =>
      button(
        text,
        `closing-${by}`,
        () => {
          close();
          over(by);
        },
        { class: "wide" },
      ),
    ),
  );
}

/**
 * What the session that has just ended amounts to; undefined where there is none, or it was put away.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function sum(pad) {
  const ended = pad.view.ended;
  if (!ended || Date.now() - Date.parse(ended.happened_at) > LATELY_MS) return undefined;
  const { session } = ended.body;
  if (pad.memo.seen === session) return undefined;
  const s = summary(pad.view.stand, session, Date.now());
  /** @param {Record<string, number>} counts */
  const list = (counts) =>
    Object.entries(counts)
      .map(([word, n]) => `${pad.says(word)} ${n === 1 ? "once" : `${n} times`}`)
      .join(", ");
  const minutes = s.minutes === undefined ? undefined : Math.max(0, s.minutes);
  const lasted = minutes === undefined ? "" : ` ${minutes < 1 ? "Under a minute" : `${Math.round(minutes)} min`}.`;
  return {
    key: `sum-${session}-${JSON.stringify(s)}`,
    build: () => [
      el(
        "div",
        { class: "sum", "data-test": "summary", "data-tell": true },
        el("p", {}, el("strong", {}, "The session is over."), lasted),
        el("p", {}, `Shown: ${list(s.shown) || "nothing"}.`),
        Object.keys(s.pressed).length > 0 && el("p", {}, `${pad.now.name} pressed: ${list(s.pressed)}.`),
        s.presses > 0 && el("p", {}, `Given: ${s.given} of ${s.presses}.`),
        s.waiting.length > 0 && el("p", {}, "Not given yet; it may still be given:"),
        button("Put away", "summary-seen", () => pad.setMemo({ seen: session })),
      ),
    ],
  };
}
