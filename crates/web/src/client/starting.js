// How a session begins: its start, what a tap before it means, and the question first on a day of rest.

import { button, el, openSheet } from "./dom.js";
import { restUntil } from "./rest.js";
import { uuid7 } from "./uuid.js";
import { minutes, say, time } from "./say.js";

/** @import { Body, Pad, Panel } from "../../client-checks/client" */

/**
 * What a tap before a session means.
 * @param {Pad} pad
 * @param {string} word
 */
export function before(pad, word) {
  openSheet(pad.says(word), (close) => {
    /**
     * @param {string} text
     * @param {string} test
     * @param {() => unknown} does
     * @param {Record<string, any>} [props]
     */
    const choice = (text, test, does, props) =>
      button(
        text,
        test,
        () => {
          close();
          does();
        },
        { class: "wide", ...props },
      );
    // On a day on which Today has it answered alone, that is what a tap is most likely to mean.
    const answers = Boolean(pad.now.pause) || restUntil(pad) !== undefined;
    const primary = (/** @type {boolean} */ is) => (is ? { class: "primary wide" } : {});
    const shows =
      !restUntil(pad) &&
      choice(say("client-board-start-with"), "before-start", () => start(pad, undefined, word), primary(!answers));
    const pressed = choice(
      say("client-board-animal-pressed", { name: pad.now.name }),
      "before-pressed",
      () => pad.press(word, "animal"),
      primary(answers),
    );
    return [
      el("p", { class: "quiet" }, say("client-board-no-session")),
      ...(answers ? [pressed, shows] : [shows, pressed]),
    ];
  });
}

/**
 * Starts a session with the words planned for it; with a word, its first press too.
 * @param {Pad} pad
 * @param {string} [room]
 * @param {string} [word]
 */
async function start(pad, room, word) {
  const session = uuid7();
  const plan = pad.plan(session);
  const words = Object.keys(plan.showings);
  /** @type {Body[]} */
  const bodies = [{ kind: "session_start", session, purpose: "showing", words, ...(room ? { room } : {}) }];
  if (word) bodies.push({ kind: "press", word, by: "person", certainty: 1, accident: "no", session });
  await pad.note(bodies, { memo: [`pad-${pad.now.animal}`, { ...pad.memo, plan, mode: "showing" }] });
  await pad.setMemo({ plan, mode: "showing" });
}

/**
 * What stands where no session runs: what is asked still, and the start with how long it is planned.
 * @param {Pad} pad
 * @param {Panel | undefined} asks
 * @returns {Panel}
 */
export function startPanel(pad, asks) {
  const room = el("input", { maxLength: 60, autocomplete: "off", "data-test": "room" });
  const rest = restUntil(pad);
  const most = pad.minutes();
  const pause = rest ? undefined : pad.now.pause;
  return {
    key: `start-${asks?.key}-${rest}-${pause?.until}-${Boolean(pause)}-${most}-${pad.now.words.length}-${pad.now.person}`,
    build: () =>
      [
        ...(asks?.build() ?? []),
        !pad.now.person &&
          el(
            "p",
            {},
            `${say("client-board-no-name")} `,
            el("a", { href: `/who?back=${encodeURIComponent(location.pathname)}` }, say("client-board-who")),
          ),
        pause &&
          el(
            "p",
            { class: "small", "data-test": "pause" },
            pause.until
              ? say("client-board-pause-until", {
                  name: pad.now.name,
                  time: time(Date.parse(pause.until), pad.now.zone),
                })
              : say("client-board-enough-today", { name: pad.now.name }),
          ),
        !asks &&
          el(
            "p",
            { class: "quiet small", "data-warns": "battery" },
            say("client-board-watch-chewing", { battery: pad.now.battery, name: pad.now.name }),
          ),
        !pause && pad.now.words.length > 0 && el("label", { class: "inline" }, `${say("client-board-room")} `, room),
        // A board without words leads to where they are chosen; there is nothing to begin.
        pad.now.words.length > 0 &&
          (rest
            ? button(
                say("client-board-start-anyway"),
                "start-anyway",
                () => atEase(pad, () => start(pad, room.value.trim())),
                { class: "small" },
              )
            : button(
                pause
                  ? say("client-board-start-more")
                  : most === undefined
                    ? say("client-board-start")
                    : say("client-board-start-most", { n: minutes(most) }),
                "start",
                () => start(pad, room.value.trim()),
                { class: pause ? "wide tall" : "primary wide tall" },
              )),
      ].filter(Boolean),
  };
}

/**
 * Does what is like a session; on a day of rest only after a question.
 * @param {Pad} pad
 * @param {() => unknown} does
 * @param {string} [test]
 */
export function atEase(pad, does, test = "start") {
  if (!restUntil(pad)) return does();
  const { name } = pad.now;
  const ask =
    test === "start" ? say("client-board-start-at-ease", { name }) : say("client-board-offer-at-ease", { name });
  return openSheet(say("client-board-rest-better"), (close) => [
    el("p", { class: "caution" }, `${say("client-board-rest-sure", { name })} ${say("client-board-whom-to-ask")}`),
    button(say("client-board-let-rest", { name }), "rest-keep", close, { class: "primary wide" }),
    button(
      ask,
      test,
      () => {
        close();
        does();
      },
      { class: "wide" },
    ),
  ]);
}
