// A showing session: press, say, give. The animal may come, look, press or go; all of it is noted, nothing is asked.

import { button, el, openSheet } from "./dom.js";
import { isFood } from "./sitting.js";
import { withSign } from "./swaps.js";
import { uuid7 } from "./uuid.js";

/** @import { Child, EndReason, Pad, SignLevel, Then, Told } from "../../client-checks/client" */

export const actions = true;

/**
 * Pads are for a running session.
 * @param {Pad} pad
 */
export const padsHidden = (pad) => !pad.view.session;

/**
 * A press waiting for its delivery makes the pad the place to note that.
 * @param {Pad} pad
 * @param {string} word
 */
export function padState(pad, word) {
  const press = pad.view.pending[word];
  if (!press) return { does: "I press" };
  const seconds = ((Date.now() - Date.parse(press.happened_at)) / 1000).toFixed(1);
  return {
    name: "give",
    does: "Given",
    count: press.body.by === "animal" ? `it pressed ${seconds} s ago` : `pressed ${seconds} s ago`,
  };
}

/**
 * First tap: the person pressed. Second: it was given.
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const press = pad.view.pending[word];
  return press ? pad.deliver(press) : pad.press(word, "person");
}

/**
 * The animal opts in.
 * @param {Pad} pad
 */
export function joined(pad) {
  const { session, startedAt } = pad.view;
  if (session === undefined || startedAt === undefined) return undefined;
  const after = Math.round((Date.now() - startedAt) / 100) / 10;
  const first = !pad.view.joined && after >= 0 && after <= 86_400 ? { after_s: after } : {};
  return pad.note([{ kind: "joining", session, ...first }]);
}

/**
 * Start, or what follows the last delivery.
 * @param {Pad} pad
 */
export function panel(pad) {
  if (!pad.view.session) return startPanel(pad);
  return (
    thenPanel(pad) ?? {
      key: "showing",
      build: () => [
        el("p", { class: "quiet" }, "Press, say the word, give at once: tap as you press, tap again as you give."),
      ],
    }
  );
}

/** @param {Pad} pad */
function startPanel(pad) {
  const room = el("input", { maxLength: 60, autocomplete: "off", "data-test": "room" });
  const start = () => {
    const name = room.value.trim();
    return pad.note([{ kind: "session_start", session: uuid7(), purpose: "showing", ...(name ? { room: name } : {}) }]);
  };
  return {
    key: `start-${pad.now.rest}-${pad.now.words.length}-${pad.now.person}`,
    build: () =>
      [
        !pad.now.person &&
          el(
            "p",
            {},
            "Taps are noted without a name here. ",
            el("a", { href: `/who?back=${encodeURIComponent(location.pathname)}` }, "Who are you?"),
          ),
        pad.now.rest &&
          el(
            "p",
            { class: "caution" },
            el("strong", {}, "Rest today. "),
            "Strong signs were seen. Go on answering presses; show another day.",
          ),
        pad.now.words.length === 0
          ? el("p", {}, "There are no words on this board yet. Add one under Words first.")
          : button("Start showing", "start", start, { class: "primary wide tall" }),
        pad.now.words.length > 0 && el("label", { class: "inline" }, "Room, if not the usual ", room),
        el(
          "p",
          { class: "quiet" },
          "Watch for chewing: batteries and small parts are dangerous. ",
          pad.now.battery,
          " Keep the sound soft, and stop if it startles.",
        ),
      ].filter(Boolean),
  };
}

/**
 * What the animal did after the last delivery, and a second piece of food.
 * @param {Pad} pad
 * @param {number} [within]
 */
export function thenPanel(pad, within = 30_000) {
  const last = pad.view.last;
  if (!last || last.body.then || Date.now() - Date.parse(last.happened_at) > within) return undefined;
  if (!["given", "partly", "alternative"].includes(last.body.answer)) return undefined;
  // A later press comes first: it waits for its own giving.
  if (Object.values(pad.view.pending).some((press) => press.happened_at > last.happened_at)) return undefined;
  const reward = last.body.alternative ? pad.reward(last.body.alternative) : pad.rewardOf(last.body.word);
  /**
   * @param {string} text
   * @param {Then} then
   * @param {string} test
   */
  const did = (text, then, test) => button(text, test, () => pad.amend(last, { then }));
  return {
    key: `then-${last.id}`,
    build: () => [
      el(
        "p",
        {},
        `${last.body.alternative ? (reward?.name ?? "Something else") : pad.says(last.body.word)} given. What did ${pad.now.name} do?`,
      ),
      el(
        "div",
        { class: "then" },
        did("Took it", "took", "then-took"),
        did("Ignored it", "ignored", "then-ignored"),
        did("Left", "left", "then-left"),
        button("Pressed again…", "then-again", () => pressedAgain(pad, last)),
        isFood(reward) &&
          button(
            "+1 piece",
            "piece-more",
            () =>
              pad.note([{ kind: "feed", reward: reward.id, pieces: 1, kcal: reward.kcal, ...pad.in() }], { hold: 0 }),
            { "aria-label": "One piece more was given" },
          ),
      ),
    ],
  };
}

/**
 * Which word it pressed again; that press is noted too.
 * @param {Pad} pad
 * @param {Told<"delivery">} delivery
 */
export function pressedAgain(pad, delivery) {
  chooseWord(pad, "Which word did it press?", async (word) => {
    await pad.amend(delivery, { then: "pressed_again", then_word: word });
    await pad.press(word, "animal");
  });
}

/**
 * A sheet with all words.
 * @param {Pad} pad
 * @param {string} title
 * @param {(word: string) => void} chosen
 * @param {(close: () => void) => Child[]} [extra]
 */
export function chooseWord(pad, title, chosen, extra = () => []) {
  openSheet(title, (close) => [
    ...extra(close),
    el(
      "div",
      { class: "pads small" },
      ...pad.now.words.map((w) =>
        button(
          w.says,
          `choose-${w.says}`,
          () => {
            close();
            chosen(w.id);
          },
          { class: "pad" },
        ),
      ),
    ),
  ]);
}

/**
 * The row of things that happen in a session.
 * @param {Pad} pad
 * @param {string} name
 */
export function action(pad, name) {
  const { session } = pad.view;
  if (!session) return undefined;
  switch (name) {
    case "joined":
      return joined(pad);
    case "left":
      return pad.note([{ kind: "leaving", session }]);
    case "looked":
      return chooseWord(
        pad,
        "What did it look at?",
        (word) => pad.note([{ kind: "look", word, session }]),
        (close) => [
          button(
            "The board as a whole",
            "look-board",
            () => {
              close();
              pad.note([{ kind: "look", session }]);
            },
            { class: "wide" },
          ),
        ],
      );
    case "brushed":
      return chooseWord(pad, "Which button, without sounding it?", (word) =>
        pad.note([{ kind: "brush", word, session }]),
      );
    case "pressed":
      return animalPressed(pad);
    case "sign":
      return signs(pad);
    case "end":
      return end(pad);
    default:
      return undefined;
  }
}

/** @param {Pad} pad */
function animalPressed(pad) {
  let stumble = false;
  chooseWord(
    pad,
    `Which word did ${pad.now.name} press?`,
    (word) => pad.press(word, "animal", { accident: stumble ? "likely" : "unsure" }),
    () => [
      el("p", { class: "quiet" }, "Answer it like any other, also by accident: give it, and tap Given."),
      button(
        "It looked like a stumble",
        "stumble",
        (e) => {
          stumble = !stumble;
          /** @type {HTMLElement} */ (e.currentTarget).setAttribute("aria-pressed", String(stumble));
        },
        { class: "wide", "aria-pressed": "false" },
      ),
    ],
  );
}

/** @type {[SignLevel, string][]} */
const LEVELS = [
  ["strong", "Strong: stop"],
  ["mild", "Mild"],
  ["joining", "At ease, taking part"],
];

/**
 * What is seen of its body language. A strong sign stops agreed swaps in the same tap.
 * @param {Pad} pad
 */
export function signs(pad) {
  openSheet("What do you see?", (close) => [
    el("p", { class: "quiet" }, "One sign means little; read the whole body and the situation."),
    ...LEVELS.flatMap(([level, title]) => {
      const own = pad.now.signs.filter((s) => s.level === level);
      const seen = (/** @type {string} */ sign) => {
        close();
        pad.note([{ kind: "sign", sign, level, when: "during", ...pad.in() }, ...withSign(pad, level)]);
      };
      return [
        el("h3", {}, title),
        ...own.map((s) => button(s.sign, `sign-${level}`, () => seen(s.sign), { class: `wide sign ${level}` })),
        button(
          "Something else",
          `sign-${level}-other`,
          () => {
            const words = prompt("What did you see?")?.trim();
            if (words) seen(words.slice(0, 2000));
          },
          { class: "wide" },
        ),
      ];
    }),
  ]);
}

/** @param {Pad} pad */
function end(pad) {
  const { session } = pad.view;
  if (session === undefined) return;
  const closing = pad.now.words.find((w) => w.closing);
  /**
   * @param {string} text
   * @param {EndReason} reason
   */
  const over = (text, reason) => (/** @type {() => void} */ close) =>
    button(
      text,
      `end-${reason}`,
      () => {
        close();
        pad.note([{ kind: "session_end", session, reason }]);
      },
      { class: "wide" },
    );
  openSheet("End the session because…", (close) =>
    [
      over("The plan is done", "done"),
      over(closing ? `Closing word: ${closing.says}` : "A closing word was said", "closing_word"),
      over(`${pad.now.name} left`, "animal_left"),
      over("A strong sign", "strong_sign"),
      over("Something came up", "interrupted"),
    ].map((make) => make(close)),
  );
}
