// A round: words to hand are ticked, then the notebook draws which to offer, call by call. Ending early is always fine.

import { button, el } from "./dom.js";
import { called } from "./draw.js";
import { restUntil } from "./rest.js";
import { resting } from "./resting.js";
import { isFood } from "./sitting.js";
import { uuid7 } from "./uuid.js";
import { say } from "./say.js";

/** @import { Child, Memo, Now, OpenRound, Pad, RoundMemo, Way, WordNow } from "../../client-checks/client" */

export const CALLS = 4;
export const OPEN_MS = 3_600_000; // a round that is not carried on is over after this
const LATELY_MS = 600_000;
/** @type {WordNow["stage"][]} */
const ASKED = ["invite", "converse"];

/**
 * The round as this device and the notebook know it, the later begun of two: { round, words, calls, begun, next, stopped }. Pure.
 * @param {Pick<Now, "round">} now
 * @param {Pick<Memo, "round">} memo
 * @returns {RoundMemo | undefined}
 */
export function known(now, memo) {
  const own = memo.round;
  const there = now.round && { ...now.round, begun: Date.parse(now.round.begun) };
  if (!own || !there) return own ?? there ?? undefined;
  if (own.round === there.round) return { ...own, next: Math.max(own.next, there.next) };
  return own.begun > there.begun ? own : there;
}

/**
 * The round that may be gone on with, with the word its next call draws; undefined if there is none. Pure.
 * @param {Pick<Now, "round">} now
 * @param {Pick<Memo, "round">} memo
 * @param {number} at
 * @returns {OpenRound | undefined}
 */
export function openRound(now, memo, at) {
  const round = known(now, memo);
  if (!round || round.stopped || round.next > round.calls || at >= round.begun + OPEN_MS) return undefined;
  const word = called(round.round, round.next, round.words);
  return word === undefined ? undefined : { ...round, word };
}

/**
 * The round after the call of that number, whatever came of it. A call is never drawn twice. Pure.
 * @param {RoundMemo} round
 * @param {number} number
 */
export const past = (round, number) => ({ ...round, word: undefined, next: Math.max(round.next, number + 1) });

/**
 * Why a word cannot be drawn now; undefined if it can.
 * @param {Pad} pad
 * @param {WordNow} word
 */
function notToHand(pad, word) {
  const reward = pad.reward(word.reward);
  if (!reward) return say("client-board-no-thing");
  if (reward.never) return say("client-board-never-given");
  const pieces = pad.ration.pieces(reward);
  // Each call may come to it.
  return pieces !== undefined && pieces < CALLS ? say("client-board-too-few", { n: pieces }) : undefined;
}

/**
 * Whether a round can be drawn now: of one word alone nothing is drawn, and on a day of rest nothing is invited.
 * @param {Pad} pad
 */
export const canDraw = (pad) =>
  !restUntil(pad) && pad.words.filter((w) => !w.closing && w.may_invite && !notToHand(pad, w)).length > 1;

/** Letters of a word that leave room for three beside each other on a phone. */
const SHORT = 7;

/**
 * Ticking what is to hand. `options` are way and wait; `parts` what chooses them.
 * @param {Pad} pad
 * @param {{ way: Way, wait: number }} options
 * @param {Child[]} parts
 * @param {() => void} chooseMyself
 */
export function setUp(pad, options, parts, chooseMyself) {
  const rest = restUntil(pad);
  // What Today leaves alone, shows or mends is not offered here either.
  const words = pad.words.filter((w) => !w.closing && w.may_invite);
  const others = pad.words.filter((w) => !w.closing && !w.may_invite && ASKED.includes(w.stage)).map((w) => w.says);
  // The plan's words are those Today names; a draw needs two, and more may be invited.
  const beside = words.filter((w) => !pad.invites().includes(w.id)).map((w) => w.says);
  const why = new Map(words.map((w) => [w.id, notToHand(pad, w)]));
  const left = words.filter((w) => !why.get(w.id));
  const last = known(pad.now, pad.memo);
  const lately = last && Date.now() - last.begun < LATELY_MS + OPEN_MS && (last.stopped || last.next > last.calls);
  const short = words.every((w) => w.says.length <= SHORT && !why.get(w.id));
  const ticked = () => left.filter((w) => isTicked(pad, w)).map((w) => w.id);
  /**
   * @param {WordNow} word
   * @param {boolean} away
   */
  const aside = ({ id, draws }, away) => {
    const others = (/** @type {string[]} */ list = []) => list.filter((w) => w !== id);
    pad.setMemo({
      aside: [...others(pad.memo.aside), ...(away ? [id] : [])],
      beside: [...others(pad.memo.beside), ...(away || draws ? [] : [id])],
    });
  };
  return {
    key: `round-${rest}-${pad.view.stop}-${options.way}-${options.wait}-${[...why].join()}-${words.map((w) => Number(w.draws)).join("")}-${beside}-${others}-${last?.round}-${last?.stopped}-${pad.view.session}-${pad.view.joined}`,
    build: () =>
      [
        resting(pad),
        lately &&
          el(
            "p",
            { class: "quiet", "data-test": "round-over" },
            last.stopped ? say("client-board-round-short") : say("client-board-round-done", { n: last.calls }),
          ),
        ...(rest
          ? []
          : left.length < 2
            ? [
                el(
                  "p",
                  { "data-test": "round-needs-two" },
                  words.length === 0 && others.length === 0 && pad.words.some((w) => !w.closing)
                    ? say("client-board-none-to-invite", { name: pad.now.name })
                    : words.length < 2
                      ? say("client-board-needs-two", {
                          list: words.map((w) => w.says).join(", ") || say("client-board-none-yet"),
                        })
                      : say("client-board-needs-two-food"),
                ),
              ]
            : [
                el("p", {}, say("client-board-round-of", { n: CALLS })),
                el(
                  "fieldset",
                  { class: short ? "hand short" : "hand" },
                  el("legend", { class: "unseen" }, say("client-board-to-hand")),
                  ...words.map((w) => tickBox(pad, w, why.get(w.id), aside)),
                ),
                ...parts,
              ]),
        !rest &&
          beside.length > 0 &&
          el(
            "p",
            { class: "quiet small", "data-test": "round-beside" },
            say("client-board-beside-plan", { list: beside.join(", ") }),
          ),
        !rest &&
          others.length > 0 &&
          el(
            "p",
            { class: "quiet small", "data-test": "round-others" },
            say("client-board-other-step", { list: others.join(", ") }),
          ),
        el(
          "div",
          { class: "row go" },
          left.length >= 2 &&
            !rest &&
            button(say("client-board-round-start"), "round-start", () => start(pad, ticked(), options), {
              class: "primary tall",
            }),
          button(say("client-board-choose-myself"), "choose-myself", chooseMyself),
        ),
      ].filter(Boolean),
    tick: (/** @type {HTMLElement} */ node) => {
      /** @type {HTMLButtonElement | null} */
      const go = node.querySelector("[data-test=round-start]");
      if (go) go.disabled = ticked().length < 2;
    },
  };
}

/**
 * Whether a round draws the word: the plan says so, or a person does.
 * @param {Pad} pad
 * @param {WordNow} word
 */
const isTicked = (pad, { id, draws }) =>
  draws ? !(pad.memo.aside ?? []).includes(id) : (pad.memo.beside ?? []).includes(id);

/**
 * @param {Pad} pad
 * @param {WordNow} word
 * @param {string | undefined} why
 * @param {(word: WordNow, away: boolean) => void} aside
 */
function tickBox(pad, word, why, aside) {
  return el(
    "label",
    {},
    el("input", {
      type: "checkbox",
      "data-test": `hand-${word.says}`,
      checked: !why && isTicked(pad, word),
      disabled: Boolean(why),
      onchange: (/** @type {{ target: HTMLInputElement }} */ e) => aside(word, !e.target.checked),
    }),
    el("span", {}, word.says, why && el("span", { class: "hint" }, why)),
  );
}

/**
 * Writes the round down, then lets its first word be seen.
 * @param {Pad} pad
 * @param {string[]} words
 * @param {{ way: Way, wait: number }} options
 */
async function start(pad, words, options) {
  const where = pad.view.session && pad.view.joined ? { session: pad.view.session } : {};
  const event = pad.event({ kind: "round", round: uuid7(), words, calls: CALLS, ...where });
  const { round, calls } = event.body;
  const change = { round: { round, words, calls, begun: Date.parse(event.happened_at), next: 1 }, invitation: options };
  await pad.note([event], { memo: [`pad-${pad.now.animal}`, { ...pad.memo, ...change }] });
  await pad.setMemo(change);
}

/**
 * Ends it where it is.
 * @param {Pad} pad
 * @param {RoundMemo | OpenRound} round
 */
export const stop = (pad, round) => pad.setMemo({ round: { ...round, word: undefined, stopped: true } });

/**
 * One call: what to offer. `offered` starts the wait.
 * @param {Pad} pad
 * @param {OpenRound} round
 * @param {{ offered: () => void, skip: () => void }} options
 */
export function call(pad, round, { offered, skip }) {
  const reward = pad.rewardOf(round.word);
  const spent = isFood(reward) && pad.ration.pieces(reward) === 0;
  const off = spent || Boolean(reward?.never);
  const rest = restUntil(pad);
  const ends = button(
    say("client-board-stop-round"),
    "round-stop",
    () => stop(pad, round),
    rest ? { class: "primary wide tall" } : {},
  );
  return {
    key: `call-${round.round}-${round.next}-${off}-${rest}-${pad.view.session}-${pad.view.joined}`,
    build: () =>
      rest
        ? [el("p", { class: "stop" }, say("client-board-stop-here", { name: pad.now.name })), ends]
        : [
            el(
              "p",
              { class: "quiet num", "data-test": "round-at" },
              say("client-board-round-at", { n: round.next, all: round.calls }),
            ),
            el(
              "p",
              { class: "offer-word", "data-test": "round-offer" },
              `${say("client-board-offer-label")} `,
              el("strong", {}, pad.says(round.word)),
            ),
            off &&
              el("p", { class: "caution" }, say(reward?.never ? "client-board-must-not" : "client-board-none-left")),
            ...(reward?.cautions ?? []).map((c) => el("p", { class: "caution" }, c)),
            pad.view.session &&
              !pad.view.joined &&
              el("p", { class: "quiet" }, say("client-board-only-there", { name: pad.now.name })),
            el("p", { class: "quiet" }, say("client-board-may-leave", { name: pad.now.name })),
            el("div", { class: "row even" }, button(say("client-board-cancel-one"), "round-skip", skip), ends),
            button(say("client-board-offered-start"), "offer", offered, { class: "primary wide tall", disabled: off }),
          ].filter(Boolean),
  };
}
