// How a session ends, and what it amounts to: what was shown, pressed and given, and what may still be given.

import { button, el, openSheet } from "./dom.js";
import { letGo } from "./settle.js";
import { endBySign } from "./signs.js";
import { LATELY_MS, summary } from "./sitting.js";
import { say } from "./say.js";

/** @import { Body, EndReason, Pad, Panel, PressedBy } from "../../client-checks/client" */

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
    [say("client-board-end-done"), "done"],
    ...(word
      ? [/** @type {[string, EndReason]} */ ([say("client-board-end-word", { word: word.says }), "closing_word"])]
      : []),
    [say("client-board-end-left", { name: pad.now.name }), "animal_left"],
    [say("client-board-end-strong"), "strong_sign"],
    [say("client-board-end-interrupted"), "interrupted"],
  ];
  openSheet(say("client-board-end-because"), (close) =>
    reasons.map(([text, reason]) =>
      button(
        text,
        `end-${reason}`,
        () => {
          close();
          // A sign that was noted already is not noted again.
          if (reason === "strong_sign" && pad.view.stop !== "strong") return endBySign(pad, session);
          pad.note([{ kind: "session_end", session, reason }]);
          return letGo(pad);
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
    pad.note(bodies);
    return letGo(pad);
  };
  openSheet(word.says, (close) =>
    /** @type {[string, PressedBy][]} */ ([
      [say("client-board-closing-me"), "person"],
      [say("client-board-closing-animal", { name: pad.now.name }), "animal"],
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
      .map(([word, n]) => say("client-board-word-times", { word: pad.says(word), n }))
      .join(", ");
  /**
   * A word and how often; what looked like a stumble is said with it.
   * @param {[string, number]} counted
   */
  const pressed = ([word, n]) => {
    const times = say("client-board-word-times", { word: pad.says(word), n });
    const stumbled = s.stumbled[word] ?? 0;
    return stumbled > 0 ? say("client-board-stumbled", { times, n: stumbled === n ? 0 : stumbled }) : times;
  };
  const own = Object.entries(s.pressed).map(pressed);
  const minutes = Math.round(s.minutes ?? 0);
  const { name } = pad.now;
  return {
    key: `sum-${session}-${JSON.stringify(s)}`,
    build: () => [
      el(
        "div",
        { class: "sum", "data-test": "summary", "data-tell": true },
        el(
          "p",
          {},
          el("strong", {}, minutes > 0 ? say("client-board-over-minutes", { n: minutes }) : say("client-board-over")),
        ),
        el("p", {}, say("client-board-sum-shown", { list: list(s.shown) || say("client-board-sum-nothing") })),
        own.length > 0 && el("p", {}, say("client-board-sum-pressed", { name, list: own.join(", ") })),
        Object.keys(s.invited).length > 0 && el("p", {}, say("client-board-sum-invited", { list: list(s.invited) })),
        s.undrawn && el("p", { class: "quiet", "data-test": "not-drawn" }, say("client-board-not-drawn")),
        s.presses > 0 && el("p", {}, say("client-board-sum-given", { given: s.given, all: s.presses })),
        s.waiting.length > 0 &&
          el(
            "p",
            { "data-test": "sum-waiting" },
            say("client-board-sum-waiting", { list: s.waiting.map((e) => pad.says(e.body.word)).join(", ") }),
          ),
        button(say("client-board-put-away"), "summary-seen", () => pad.setMemo({ seen: session })),
      ),
    ],
  };
}
