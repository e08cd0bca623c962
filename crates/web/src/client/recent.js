// The last taps of this device, to be taken back or put right on the spot.

import { button, el, find, openSheet } from "./dom.js";
import { chooseWord } from "./choose.js";
import { number, say, timeSeconds } from "./say.js";
import * as words from "./words.js";

/** @import { Body, Event, InvitationResult, Kind, Pad } from "../../client-checks/client" */

const MOST = 6;

/**
 * A noted sign in the reader's language: the log holds those of the list in English, others as people wrote them.
 * @param {Pad} pad
 * @param {string} sign
 */
const signSaid = (pad, sign) => pad.now.signs.find((s) => s.sign === sign)?.said ?? sign;

/**
 * What an event says, in a few words.
 * @param {Pad} pad
 * @param {Body} body
 */
export function inWords(pad, body) {
  const says = "word" in body ? pad.says(body.word ?? undefined) : "";
  switch (body.kind) {
    case "press":
      return stumbled(body, say("client-recent-press", { by: body.by, word: says, name: pad.now.name }));
    case "delivery":
      return say("client-recent-delivery", {
        word: says,
        answer: words.answer(body.answer) + (body.then ? `, ${words.then(body.then)}` : ""),
      });
    case "feed":
      return say("client-recent-feed", {
        food: pad.reward(body.reward)?.name ?? body.food ?? say("client-recent-food"),
      });
    case "invitation":
      return say("client-recent-invited", { word: says, came: cameOf(pad, body.result) });
    case "swap_stop":
      return say("client-recent-swaps-stopped");
    case "catch":
      return say("client-recent-asked", { word: says });
    case "brush":
      return say("client-recent-brushed", { word: says });
    case "look":
      return body.word ? say("client-recent-looked-at", { word: says }) : say("client-recent-looked");
    case "sign":
      return say("client-recent-sign", { level: words.level(body.level), sign: signSaid(pad, body.sign) });
    case "session_start":
      return say("client-recent-started");
    case "session_end":
      return say("client-recent-ended", { why: words.end(body.reason, pad.now.name) });
    case "joining":
      return say("client-recent-joined");
    case "leaving":
      return say("client-recent-left");
    case "round":
      return say("client-recent-round", { calls: body.calls });
    case "swap_draw":
      return say("client-recent-drawn", { word: says });
    case "home_card":
    case "person_card":
    case "animal_card":
    case "reward_card":
    case "word_card":
    case "clip_card":
    case "picture_card":
    case "board_layout":
    case "house_rule":
    case "stage_choice":
    case "likes_test":
    case "like_trial":
    case "probe_plan":
    case "probe_trial":
    case "swap_plan":
    case "design_plan":
    case "design_note":
    case "design_stop":
    case "remark":
    case "lesson_read":
    case "consent_given":
    case "consent_taken_back":
    case "proposal":
    case "proposal_answer":
    case "own_plan":
    case "aim_done":
    case "correction":
    case "withdrawal":
      return body.kind.replaceAll("_", " "); // not noted on the pad
    default:
      return unknownKind(body);
  }
}

/**
 * @param {{ accident?: string | null }} press
 * @param {string} said
 */
const stumbled = (press, said) => (press.accident === "likely" ? say("client-recent-stumble", { press: said }) : said);

/**
 * A kind of a later version; with the types of this one there is none.
 * @param {never} body
 */
const unknownKind = (body) => /** @type {Body} */ (body).kind.replaceAll("_", " ");

/**
 * @param {Pad} pad
 * @param {InvitationResult} result
 */
function cameOf(pad, result) {
  switch (result.outcome) {
    case "pressed":
      return say("client-recent-came-pressed", { word: pad.says(result.word), seconds: number(result.after_s, 1) });
    case "without_button":
      return say("client-recent-came-without");
    case "nothing_by_wait":
      return say("client-recent-came-nothing");
    case "left":
      return say("client-recent-came-left");
  }
}

/**
 * What may be done with a tap, by the notebook's own rules; tests/client/shared.test.mjs compares.
 * stands: what was drawn, and what answers it, counts as first recorded, so taking it back would change nothing.
 * back: it is taken back. word: that, or its word put right.
 * @type {Record<Kind, "stands" | "back" | "word">}
 */
export const MAY = {
  home_card: "back",
  person_card: "back",
  animal_card: "back",
  reward_card: "back",
  word_card: "back",
  clip_card: "stands",
  picture_card: "back",
  board_layout: "back",
  house_rule: "back",
  stage_choice: "back",
  session_start: "back",
  joining: "back",
  leaving: "back",
  session_end: "back",
  press: "word",
  delivery: "word",
  look: "word",
  brush: "word",
  invitation: "word",
  catch: "word",
  sign: "back",
  feed: "back",
  likes_test: "back",
  like_trial: "back",
  probe_plan: "stands",
  probe_trial: "stands",
  round: "stands",
  swap_plan: "stands",
  swap_draw: "stands",
  swap_stop: "stands",
  design_plan: "back",
  design_note: "back",
  design_stop: "back",
  remark: "back",
  lesson_read: "back",
  consent_given: "stands",
  consent_taken_back: "stands",
  proposal: "stands",
  proposal_answer: "stands",
  own_plan: "back",
  aim_done: "back",
  correction: "back",
  withdrawal: "back",
};

/**
 * Taps of this device that still stand, newest first.
 * @param {Pad} pad
 */
function taps(pad) {
  const standing = new Map(pad.view.stand.map((e) => [e.id, e]));
  /** @type {Map<string, { tap: string, events: Event[], sent: boolean }>} */
  const groups = new Map();
  for (const row of pad.own) {
    const event = standing.get(row.id);
    // What was heard is no tap: it is judged on its own page, and Undo must take back what a person did last.
    if (!event || event.source === "heard" || row.state === "refused" || MAY[event.body.kind] === "stands") continue;
    const group = groups.get(row.tap) ?? { tap: row.tap, events: [], sent: true };
    group.events.push(event);
    group.sent &&= row.state === "sent";
    groups.set(row.tap, group);
  }
  return [...groups.values()].slice(-MOST).reverse();
}

/**
 * Draws the list anew where it changed.
 * @param {HTMLElement} node
 * @param {Pad} pad
 */
export function drawRecent(node, pad) {
  const all = taps(pad);
  const key = JSON.stringify(all.map((t) => [t.tap, t.sent, t.events.map((e) => e.body)]));
  if (node.dataset.key === key) return;
  node.dataset.key = key;
  node.hidden = all.length === 0;
  find("ol", node).replaceChildren(
    ...all.map((tap) => {
      const main = tap.events[tap.events.length - 1];
      const what = inWords(pad, main.body);
      return el(
        "li",
        { "data-test": "tap" },
        el(
          "span",
          { class: "what" },
          what,
          el(
            "span",
            { class: "quiet" },
            ` ${tap.sent ? timeSeconds(new Date(main.happened_at)) : say("client-recent-kept-here", { time: timeSeconds(new Date(main.happened_at)) })}`,
          ),
        ),
        // There is one Undo on the page, at its one place: it is of the last tap. Older ones are put right or undone here.
        button(say("client-recent-edit"), "fix", () => fix(pad, tap, main), {
          "aria-label": say("client-recent-edit-this", { what }),
        }),
      );
    }),
  );
}

/**
 * Takes back a whole tap. The first records stay in the log.
 * @param {Pad} pad
 * @param {{ events: Event[] }} tap
 */
const undo = (pad, tap) => pad.note(tap.events.map((e) => ({ kind: "withdrawal", of: e.id })));

/**
 * Takes back the last tap, if one can be.
 * @param {Pad} pad
 */
export function undoLast(pad) {
  const [last] = taps(pad);
  return last && undo(pad, last);
}

/**
 * Whether it names a word that can be put right.
 * @param {Body} body
 */
const fixable = (body) => MAY[body.kind] === "word" && "word" in body && Boolean(body.word);

/**
 * @param {Pad} pad
 * @param {Event} event
 * @param {object} change
 */
const correct = (pad, event, change) =>
  pad.note([{ kind: "correction", of: event.id, body: { ...event.body, ...change } }]);

/**
 * @param {Pad} pad
 * @param {{ events: Event[] }} tap
 * @param {Event} event what stands for it
 */
function fix(pad, tap, event) {
  const { body } = event;
  /**
   * @param {string} text
   * @param {object} change
   * @param {() => void} close
   */
  const put = (text, change, close) =>
    button(
      text,
      "fix-choice",
      () => {
        close();
        correct(pad, event, change);
      },
      { class: "wide" },
    );
  openSheet(inWords(pad, body), (close) => [
    fixable(body) &&
      button(
        say("client-recent-another-word"),
        "fix-word",
        () => chooseWord(pad, say("client-recent-which-word"), (word) => correct(pad, event, { word })),
        { class: "wide" },
      ),
    ...(body.kind === "press"
      ? [
          body.by !== "animal" &&
            put(say("client-recent-not-i", { name: pad.now.name }), { by: "animal", accident: "unsure" }, close),
          body.by !== "person" && put(say("client-recent-i-did"), { by: "person", accident: "no" }, close),
          body.accident !== "likely" &&
            body.by === "animal" &&
            put(say("client-recent-it-stumbled"), { accident: "likely" }, close),
          body.accident === "likely" && put(say("client-recent-it-meant"), { accident: "no" }, close),
        ].filter(Boolean)
      : []),
    ...(body.kind === "delivery"
      ? [
          ["given", say("client-recent-was-given")],
          ["partly", say("client-recent-was-partly")],
          ["declined", say("client-recent-was-declined")],
          ["missed", say("client-recent-was-missed")],
        ]
          .filter(([name]) => name !== body.answer)
          .map(([name, words]) => put(words, { answer: name, alternative: undefined }, close))
      : []),
    button(
      say("client-recent-undo"),
      "undo",
      () => {
        close();
        undo(pad, tap);
      },
      { class: "wide" },
    ),
    el("p", { class: "quiet" }, say("client-recent-first-stays")),
  ]);
}
