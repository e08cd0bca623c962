// A showing session: press, say, give. The animal may come, look, press or go; all of it is noted, nothing is asked.

import { care } from "./care.js";
import { chooseWord } from "./choose.js";
import { button, el, slots, tell } from "./dom.js";
import { due, isDue, ready } from "./due.js";
import { closing, end } from "./ending.js";
import { settled } from "./settle.js";
import { restUntil, urges } from "./rest.js";
import { signs } from "./signs.js";
import { isFood } from "./sitting.js";
import { before, startPanel } from "./starting.js";
import { minutes, number, say } from "./say.js";

/** @import { Pad, Panel, Stop, Then, Told, WordNow } from "../../client-checks/client" */

/**
 * A press waiting for its delivery makes the pad the place to note that.
 * @param {Pad} pad
 * @param {string} word
 */
export function padState(pad, word) {
  const press = pad.view.pending[word];
  // The card that stops hides some pads: nothing is shown on one that is still in sight.
  if (!press && pad.view.stop) return { off: true, does: "" };
  // Nothing is shown while sessions rest: before one is begun a tap only asks whether the animal pressed.
  if (!press && !pad.view.session && restUntil(pad))
    return { does: say("client-board-it-pressed", { name: pad.now.name }) };
  if (!press) return { does: say(offersFirst(pad, word) ? "client-board-offer-this" : "client-board-i-press") };
  const seconds = (Date.now() - Date.parse(press.happened_at)) / 1000;
  const count = say("client-board-seconds", { s: number(seconds, seconds < 10 ? 1 : 0) });
  return { name: "give", does: say("client-board-given"), count };
}

/**
 * First tap: the person pressed. Second: it was given. Before a session it is asked what the tap means; a word that the plan
 * offers first opens ready for that.
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const press = pad.view.pending[word];
  if (press) return pad.deliver(press);
  if (offersFirst(pad, word)) return ready(pad, word);
  return pad.view.session ? pad.press(word, "person") : before(pad, word);
}

/**
 * The animal opts in; once, until it has gone again.
 * @param {Pad} pad
 */
export function joined(pad) {
  const { session, startedAt, here } = pad.view;
  if (session === undefined || startedAt === undefined || here) return undefined;
  const after = Math.round((Date.now() - startedAt) / 100) / 10;
  const first = !pad.view.joined && after >= 0 && after <= 86_400 ? { after_s: after } : {};
  return pad.note([{ kind: "joining", session, ...first }]);
}

/**
 * Whether the session runs as long as it was planned at most. Nothing follows from it: it is said.
 * @param {Pad} pad
 */
export const reached = (pad) => {
  const [most, from] = [pad.minutes(), pad.view.startedAt];
  return most !== undefined && from !== undefined && Date.now() - from >= most * 60_000;
};

/**
 * Whether the plan has it offered before it is shown; not once the session has run its time.
 * @param {Pad} pad
 * @param {string} word
 */
const offersFirst = (pad, word) => !reached(pad) && isDue(pad, word);

/**
 * What waits to be given, what follows the last delivery, and before a session its start.
 * @param {Pad} pad
 * @returns {Panel}
 */
export function panel(pad) {
  const asks = givePanel(pad) ?? thenPanel(pad);
  if (!pad.view.session) return startPanel(pad, asks);
  const most = pad.minutes();
  const offers = due(pad)
    .map((id) => pad.says(id))
    .join(", ");
  const enough = most !== undefined && reached(pad);
  return (
    asks ?? {
      key: `showing-${enough}-${offers}-${pad.view.stop}`,
      build: () => [
        tell(
          el(
            "p",
            { class: "quiet", "data-test": enough ? "enough" : undefined },
            pad.view.stop
              ? stopSaid(pad, pad.view.stop)
              : enough
                ? say("client-board-enough", { n: minutes(most) })
                : say("client-board-tap-twice"),
          ),
          !enough &&
            !pad.view.stop &&
            offers &&
            el("p", { class: "quiet", "data-test": "offer-first" }, say("client-board-offer-first", { list: offers })),
        ),
        care(pad, undefined),
        slots({}),
      ],
    }
  );
}

/**
 * Why to stop, in a word or two.
 * @param {Pad} pad
 * @param {Stop} stop
 */
export const stopSaid = (pad, stop) =>
  stop === "left" ? say("client-board-stop-left", { name: pad.now.name }) : say(`client-board-stop-${stop}`);

/**
 * The newest press that waits for its thing.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function givePanel(pad) {
  const press = Object.values(pad.view.pending)
    .sort((a, b) => Date.parse(a.happened_at) - Date.parse(b.happened_at))
    .at(-1);
  if (!press) return undefined;
  const { word, by } = press.body;
  const reward = pad.rewardOf(word);
  // Before a session what asks may be scrolled away: the button names its word.
  const given = pad.view.session ? say("client-board-given") : say("client-board-given-word", { word: pad.says(word) });
  const now = urges(pad, press);
  const told = { word: pad.says(word), name: pad.now.name };
  const asks = !now
    ? "client-board-give-calmly"
    : by === "animal"
      ? "client-board-give-pressed"
      : "client-board-give-shown";
  return {
    key: `give-${press.id}-${given}-${now}`,
    build: () => [
      tell(
        reward?.never
          ? el("p", { class: "stop" }, say("client-board-never", { why: reward.never }))
          : el("p", {}, say(asks, told)),
      ),
      care(pad, reward),
      slots({
        give: !reward?.never && button(given, "given", () => pad.deliver(press), { class: now ? "primary" : "" }),
        no: by === "animal" && button(say("client-board-not-now"), "not-now", () => pad.deliver(press, "declined")),
      }),
    ],
  };
}

/**
 * What the animal did after the last delivery, and a second piece of food.
 * @param {Pad} pad
 * @param {number} [within]
 * @returns {Panel | undefined}
 */
export function thenPanel(pad, within = 30_000) {
  const last = pad.view.last;
  if (!last || last.body.then || pad.memo.unseen === last.id || Date.now() - Date.parse(last.happened_at) > within)
    return undefined;
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
  const given = last.body.alternative ? (reward?.name ?? say("client-board-something-else")) : pad.says(last.body.word);
  return {
    key: `then-${last.id}`,
    build: () => [
      tell(el("p", {}, say("client-board-then-what", { given, name: pad.now.name }))),
      care(pad, reward),
      slots({
        took: did(say("client-board-took"), "took", "then-took"),
        ignored: did(say("client-board-ignored"), "ignored", "then-ignored"),
        away: did(say("client-board-without-it"), "left", "then-left"),
        other:
          isFood(reward) &&
          button(
            say("client-board-one-more"),
            "piece-more",
            () =>
              pad.note([{ kind: "feed", reward: reward.id, pieces: 1, kcal: reward.kcal, ...pad.in() }], { hold: 0 }),
            { "aria-label": say("client-board-one-more-given") },
          ),
        more: button(say("client-board-pressed-again"), "then-again", () => pressedAgain(pad, last)),
      }),
    ],
  };
}

/**
 * Which word it pressed again; that press is noted too.
 * @param {Pad} pad
 * @param {Told<"delivery">} delivery
 */
export function pressedAgain(pad, delivery) {
  chooseWord(pad, say("client-board-which-pressed", { name: pad.now.name }), async (word) => {
    await pad.amend(delivery, { then: "pressed_again", then_word: word });
    await pad.press(word, "animal");
  });
}

/**
 * The row of things that happen in a session.
 * @param {Pad} pad
 * @param {string} name
 */
export function action(pad, name) {
  const { session } = pad.view;
  // A growl is no matter of sessions.
  if (name === "sign") return signs(pad);
  if (!session) return undefined;
  switch (name) {
    case "joined":
      return joined(pad);
    case "left":
      return pad.note([{ kind: "leaving", session }]);
    case "looked":
      return chooseWord(
        pad,
        say("client-board-which-looked", { name: pad.now.name }),
        (word) => pad.note([{ kind: "look", word, session }]),
        (close) => [
          button(
            say("client-board-whole-board"),
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
      return chooseWord(pad, say("client-board-which-brushed"), (word) => pad.note([{ kind: "brush", word, session }]));
    case "pressed":
      return animalPressed(pad);
    case "closing":
      return settled(pad, () => closing(pad));
    case "end":
      return settled(pad, () => end(pad));
    default:
      return undefined;
  }
}

/** @param {Pad} pad */
function animalPressed(pad) {
  let stumble = false;
  chooseWord(
    pad,
    say("client-board-which-pressed", { name: pad.now.name }),
    (word) => pad.press(word, "animal", { accident: stumble ? "likely" : "unsure" }),
    () => [
      el("p", { class: "quiet" }, say("client-board-answer-any")),
      button(
        say("client-board-stumble"),
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

/**
 * The parts of what a showing session asks, of a word: to be measured, never shown.
 * @param {Pad} pad
 * @param {WordNow} long
 * @returns {ReturnType<Panel["build"]>[]}
 */
export function openings(pad, long) {
  const { name } = pad.now;
  const texts = [
    say("client-board-give-calmly", { word: long.says, name }),
    say("client-board-give-pressed", { word: long.says, name }),
    say("client-board-give-shown", { word: long.says }),
    say("client-board-then-what", { given: long.says, name }),
  ];
  return texts.map((said) => [tell(el("p", {}, said)), care(pad, undefined), slots({})]);
}
