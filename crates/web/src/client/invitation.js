// An invitation: something is offered, then a wait, then the person shows it and gives it. Not pressing is no mistake.
// What to offer is drawn, in rounds; a person may choose it too, which proves nothing.

import { care } from "./care.js";
import { button, el, slots, tell, text } from "./dom.js";
import { CLEAR, done, drop, event, given, result, round, set, since, state, tenths, took } from "./inviting.js";
import * as rounds from "./round.js";
import { padState as showState } from "./showing.js";

/** @import { Going, InvitationMemo, OpenRound, Pad, Way } from "../../client-checks/client" */

/** @type {[Way, string][]} */
const KINDS = [
  ["offer_in_view", "The thing is visible"],
  ["ask_and_point", "Ask and point"],
  ["ask_between_two", "This or that?"],
];
const WAITS = [3, 5, 8, 10, 15, 20, 30];

/** @type {(string | undefined)[]} */
const STEPS = ["waiting", "late", "after", "shown", "left"];
/**
 * @param {Pad} pad
 * @param {InvitationMemo} s
 */
const going = (pad, s) => s.step === "waiting" || s.step === "late" || (STEPS.includes(s.step) && Boolean(event(pad)));

/** @param {Pad} pad */
export const padsHidden = (pad) => {
  const s = state(pad);
  return !going(pad, s) && (!s.myself || Boolean(round(pad)));
};

/**
 * @param {Pad} pad
 * @param {string} word
 */
export function padState(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") return { does: "It pressed", count: "" };
  if (s.step === "after") {
    if (pad.view.pending[word]) return showState(pad, word);
    return { off: true, does: "" };
  }
  if (going(pad, s)) return { off: true, does: "" };
  if (word === s.word) return { name: "chosen", does: "Offered ✓" };
  if (word === s.other && s.way === "ask_between_two") return { name: "chosen", does: "Or this ✓" };
  return { does: "Offer this" };
}

/**
 * @param {Pad} pad
 * @param {string} word
 */
export function tap(pad, word) {
  const s = state(pad);
  if (s.step === "waiting") {
    if (since(pad) <= (s.wait ?? pad.now.wait_s))
      return result(pad, { outcome: "pressed", word, after_s: tenths(since(pad)) });
    return set(pad, { step: "late", late: word, tappedAt: Date.now() });
  }
  if (s.step === "after") {
    const press = pad.view.pending[word];
    return press && given(pad, press);
  }
  if (going(pad, s)) return undefined;
  if (s.way === "ask_between_two" && s.word && s.word !== word) return set(pad, { other: word });
  return set(pad, { word, other: undefined });
}

/** @param {Pad} pad */
export function panel(pad) {
  const s = state(pad);
  const build = s.step && { waiting, late, after, shown, left }[s.step];
  if (build && going(pad, s)) return build(pad, /** @type {Going} */ (s));
  const open = round(pad);
  if (open)
    return rounds.call(pad, open, {
      offered: () => offered(pad, open),
      skip: () => drop(pad, { round: open.round, number: open.next }),
    });
  if (s.myself) return setUp(pad, s);
  const options = { way: drawnWay(s), wait: s.wait ?? pad.now.wait_s };
  return rounds.setUp(pad, options, [ways(pad, options.way, KINDS.slice(0, 2)), waits(pad, options.wait)], () =>
    set(pad, { myself: true }),
  );
}

/**
 * How a drawn word is offered: never between two, since one alone is drawn.
 * @param {InvitationMemo} s
 * @returns {Way}
 */
const drawnWay = (s) => (s.way === "ask_and_point" ? s.way : "offer_in_view");

/**
 * A call was offered: the wait begins.
 * @param {Pad} pad
 * @param {OpenRound} open
 */
const offered = (pad, open) => {
  const s = state(pad);
  const asked = { way: drawnWay(s), wait: s.wait ?? pad.now.wait_s };
  return set(pad, {
    ...CLEAR,
    ...asked,
    step: "waiting",
    at: Date.now(),
    word: open.word,
    other: undefined,
    call: { round: open.round, number: open.next },
  });
};

/**
 * @param {Pad} pad
 * @param {Way} way
 * @param {[Way, string][]} kinds
 */
const ways = (pad, way, kinds) =>
  el(
    "div",
    { class: kinds.length === 2 ? "row even" : "then three" },
    ...kinds.map(([k, t]) => button(t, `way-${k}`, () => set(pad, { way: k }), { "aria-pressed": String(way === k) })),
  );

/**
 * @param {Pad} pad
 * @param {number} wait
 */
const waits = (pad, wait) =>
  el(
    "label",
    { class: "inline" },
    "Wait ",
    el(
      "select",
      {
        "data-test": "wait",
        onchange: (/** @type {{ target: HTMLSelectElement }} */ e) => set(pad, { wait: Number(e.target.value) }),
      },
      ...WAITS.map((w) =>
        el(
          "option",
          { value: String(w), selected: w === wait },
          `${w} seconds${w === pad.now.wait_s ? " (usual)" : ""}`,
        ),
      ),
    ),
  );

/**
 * @param {Pad} pad
 * @param {InvitationMemo} s
 */
function setUp(pad, s) {
  const way = s.way ?? "offer_in_view";
  const wait = s.wait ?? pad.now.wait_s;
  const ready = s.word && pad.word(s.word) && (way !== "ask_between_two" || (s.other && s.other !== s.word));
  return {
    key: `setup-${way}-${wait}-${s.word}-${s.other}-${pad.view.session}-${pad.view.joined}`,
    build: () =>
      [
        pad.now.rest &&
          el(
            "p",
            { class: "caution" },
            el("strong", {}, "Rest today. "),
            "Strong signs were seen; do not invite today.",
          ),
        ways(pad, way, KINDS),
        waits(pad, wait),
        pad.view.session &&
          !pad.view.joined &&
          el("p", { class: "quiet" }, "It has not joined this session. Offer only to an animal that is there."),
        button(
          ready
            ? `Offered ${pad.says(s.word)}${way === "ask_between_two" ? ` or ${pad.says(s.other)}` : ""}: start the wait`
            : way === "ask_between_two"
              ? "Choose two words below"
              : "Choose a word below",
          "offer",
          () => set(pad, { ...CLEAR, step: "waiting", at: Date.now(), way, wait }),
          { class: "primary wide tall", disabled: !ready },
        ),
        el(
          "p",
          { class: "quiet" },
          "Your own choice: kept as an everyday record. It may suggest something; it proves nothing.",
        ),
        button(
          "Draw a round instead",
          "round-instead",
          () => set(pad, { myself: false, word: undefined, other: undefined }),
          { class: "wide" },
        ),
      ].filter(Boolean),
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function waiting(pad, s) {
  const within = () => (since(pad) <= s.wait ? { after_s: tenths(since(pad)) } : {});
  const calls = rounds.known(pad.now, pad.memo)?.calls ?? "";
  const nothing = button("Nothing came", "nothing", () => result(pad, { outcome: "nothing_by_wait" }), {
    class: "primary later",
  });
  const asks = el("p", {});
  return {
    key: `waiting-${s.at}`,
    build: () => [
      tell(
        el(
          "p",
          { class: "count", "aria-hidden": "true" },
          el("span", { class: "count-down", "data-test": "count-down" }),
          el("progress", { max: s.wait, value: 0 }),
        ),
        s.call &&
          el("p", { class: "quiet num" }, `${s.call.number} of ${calls} · `, el("strong", {}, pad.says(s.word))),
        asks,
      ),
      care(pad, pad.rewardOf(s.word)),
      slots({
        give: nothing,
        took: button("Asked its own way", "without-button", () =>
          result(pad, { outcome: "without_button", ...within() }),
        ),
        away: button("Went away", "invitation-left", () => result(pad, { outcome: "left", ...within() })),
        more: button("Cancel this one", "invitation-drop", () => drop(pad, s.call)),
      }),
    ],
    // The end of the wait is said once, and its answer appears where room was kept for it.
    tick: (/** @type {HTMLElement} */ node) => {
      const left = s.wait - since(pad);
      text(node.querySelector(".count-down"), left > 0 ? `${left.toFixed(1)} s` : "0 s");
      const bar = node.querySelector("progress");
      if (bar) bar.value = Math.min(s.wait, since(pad));
      node.querySelector(".later")?.classList.toggle("now", left <= 0);
      text(
        asks,
        left <= 0
          ? "The wait is over. That is no mistake: show it yourself now."
          : `${s.wait} seconds: keep still and say nothing more. Tap the word it presses.`,
      );
    },
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function late(pad, s) {
  return {
    key: `late-${s.tappedAt}`,
    build: () => [
      tell(
        el(
          "p",
          {},
          "It pressed ",
          el("strong", {}, pad.says(s.late)),
          `. Before the ${s.wait} seconds were over, or after?`,
        ),
      ),
      care(pad, undefined),
      slots({
        took: button("Just in time", "late-in-time", () =>
          result(pad, { outcome: "pressed", word: s.late ?? s.word, after_s: s.wait }, s.tappedAt),
        ),
        ignored: button("After the wait", "late-after", () => result(pad, { outcome: "nothing_by_wait" }, s.tappedAt)),
      }),
    ],
  };
}

/**
 * @param {Pad} pad
 * @param {Going} s
 */
function after(pad, s) {
  const press = Object.values(pad.view.pending).find((e) => e.body.word === (s.press ?? s.word));
  const own = s.press ? `It pressed ${pad.says(s.press)}. Give it now, and tap Given.` : undefined;
  return {
    key: `after-${s.id}-${press?.id}`,
    build: () => [
      tell(
        el(
          "p",
          {},
          own ??
            (press ? "Give it now, and tap Given." : "Show it yourself and give it: press the button, say the word."),
        ),
      ),
      care(pad, pad.rewardOf(s.press ?? s.word)),
      slots({
        give: press && button("Given", "invitation-given", () => given(pad, press), { class: "primary" }),
        show:
          !press &&
          button(`I press ${pad.says(s.word)}`, "invitation-show", () => pad.press(s.word, "person"), {
            class: "primary",
          }),
        more: button("Could not give", "invitation-not-given", () => done(pad)),
      }),
    ],
  };
}

/** @param {Pad} pad */
function shown(pad) {
  return {
    key: `took-${state(pad).id}`,
    build: () => [
      tell(
        el("p", {}, `Did ${pad.now.name} take it?`),
        el("p", { class: "quiet" }, `We count it only if ${pad.now.name} wanted it.`),
      ),
      care(pad, undefined),
      slots({
        took: button("Took it", "took-yes", () => took(pad, true), { class: "primary" }),
        ignored: button("Did not take it", "took-no", () => took(pad, false)),
        more: button("Did not see", "took-unseen", () => took(pad, undefined)),
      }),
    ],
  };
}

/** @param {Pad} pad */
function left(pad) {
  const s = state(pad);
  const stopRound = async () => {
    const open = round(pad);
    await done(pad);
    if (open) await rounds.stop(pad, open); // it may have grown too old meanwhile
  };
  const goesOn = Boolean(s.call && round(pad));
  return {
    key: `left-${s.id}`,
    build: () => [
      tell(
        el(
          "p",
          { class: "stop" },
          el("strong", {}, "It has left. "),
          "Let it go; do not lure or call it back. Leaving is an answer.",
        ),
      ),
      care(pad, undefined),
      slots({
        show: goesOn && button("Stop the round", "round-stop", stopRound, { class: "primary" }),
        more: button(goesOn ? "It came back by itself" : "Done", "invitation-done", () => done(pad)),
      }),
    ],
  };
}
