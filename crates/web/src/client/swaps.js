// Agreed swaps: when something is going to be given, the notebook draws what. The draw is on disk before anybody sees it.

import { button, el, slots, tell } from "./dom.js";
import { canGive, care } from "./care.js";
import { block, partner, swapped } from "./draw.js";
import { restUntil, urges } from "./rest.js";
import { isA, stopReason } from "./sitting.js";
import { say } from "./say.js";

/** @import { Event, Now, Of, Pad, Panel, Stop, SwapNow, Told } from "../../client-checks/client" */

const LATELY_MS = 600_000;

/**
 * How swaps stand: { plan, signs, seen, stopped, by }; undefined where none run and none was stopped lately. Pure.
 * signs: strong or mild, seen since they began; seen: when the last such sign was. stopped: the last stop, if swaps are over because
 * of signs; by: the signs of it that still stand.
 * @param {Pick<Now, "swap">} now
 * @param {Event[]} stand
 * @param {number} at
 * @param {number} [carriedOnAt]
 */
export function standing(now, stand, at, carriedOnAt = 0) {
  const stops = stand.filter(isA("swap_stop"));
  const plan = now.swap;
  const begins = plan ? Date.parse(plan.begins) : Infinity;
  if (plan && at >= begins && at < Date.parse(plan.ends) && !stops.some((e) => e.body.swap === plan.swap)) {
    const signs = stand.filter(isA("sign")).filter((e) => Date.parse(e.happened_at) >= begins);
    return {
      plan,
      signs: stopReason(signs, carriedOnAt),
      seen: Math.max(...signs.filter((e) => e.body.level !== "joining").map((e) => Date.parse(e.happened_at))),
    };
  }
  const stopped = stops.filter((e) => e.body.reason === "signs" && at - Date.parse(e.happened_at) < LATELY_MS).at(-1);
  if (!stopped) return undefined;
  const before = stand.filter(isA("sign")).filter((e) => Date.parse(e.happened_at) <= Date.parse(stopped.happened_at));
  return { stopped, by: stopReason(before, carriedOnAt) };
}

/**
 * What is drawn for a press: { partner, give }; undefined where its word has no partner now. Pure.
 * @param {SwapNow} plan
 * @param {string} press
 * @param {string} word
 * @param {number} at
 */
export function drawFor(plan, press, word, at) {
  const now = block(Date.parse(plan.begins), at);
  const other = now === undefined ? undefined : partner(plan.words, now, word);
  return other && { partner: other, give: swapped(plan.swap, press, plan.one_in) ? other : word };
}

/** @param {Pad} pad */
const state = (pad) => standing(pad.now, pad.view.stand, Date.now(), pad.memo.swapsOnAt);

/**
 * What a strong sign brings with it: swaps stop at once.
 * @param {Pad} pad
 * @returns {Of<"swap_stop">[]}
 */
export function withStrong(pad) {
  const plan = state(pad)?.plan;
  return plan ? [{ kind: "swap_stop", swap: plan.swap, reason: "signs" }] : [];
}

/**
 * The panel for a press that something is or may be drawn for; undefined where it is answered as ever.
 * @param {Pad} pad
 * @param {Told<"press">} press
 */
export function panel(pad, press) {
  const own = pad.memo.swap?.press === press.id ? pad.memo.swap.is : undefined;
  const drawn = pad.view.stand.filter(isA("swap_draw")).find((e) => e.body.press === press.id);
  if (drawn) return own === "failed" ? undefined : give(pad, press, drawn.body);
  const { plan, signs } = state(pad) ?? {};
  if (!plan || signs || restUntil(pad) || own === "not_now") return undefined;
  const { word } = press.body;
  const draw = drawFor(plan, press.id, word, Date.now());
  // Settled before anything is drawn.
  const given = (/** @type {string} */ of) => canGive(pad, pad.rewardOf(of));
  if (!draw || pad.word(word)?.closing || !given(word) || !given(draw.partner)) return undefined;
  return ask(pad, press, plan);
}

/**
 * Whether a person said "not now" to a press that something could be drawn for; they may think again.
 * @param {Pad} pad
 * @param {Told<"press">} press
 */
export const notNow = (pad, press) => pad.memo.swap?.press === press.id && pad.memo.swap.is === "not_now";
/** @param {Pad} pad */
export const again = (pad) => pad.setMemo({ swap: undefined });

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 * @param {SwapNow} plan
 */
function ask(pad, press, plan) {
  const { word } = press.body;
  const draw = async () => {
    const at = Date.now();
    const drawn = drawFor(plan, press.id, word, at);
    // Partners change at a turn of days; then it is answered as ever.
    if (drawn)
      await pad.note([pad.event({ kind: "swap_draw", swap: plan.swap, press: press.id, word, give: drawn.give }, at)]);
  };
  return {
    key: `swap-ask-${press.id}`,
    build: () => [
      tell(el("p", {}, say("client-board-swap-ask", { name: pad.now.name, word: pad.says(word) }))),
      slots({
        show: button(say("client-board-give"), "swap-give", draw, { class: "primary" }),
        no: button(say("client-board-not-now-more"), "swap-not-now", () =>
          pad.setMemo({ swap: { press: press.id, is: "not_now" } }),
        ),
      }),
    ],
  };
}

/**
 * @param {Pad} pad
 * @param {Told<"press">} press
 * @param {Of<"swap_draw">} drawn
 */
function give(pad, press, drawn) {
  const other = drawn.give !== drawn.word;
  const reward = pad.rewardOf(drawn.give);
  const name = reward && reward.name !== pad.says(drawn.give) ? ` (${reward.name})` : "";
  const given = () => (other ? pad.deliver(press, "alternative", { alternative: reward?.id }) : pad.deliver(press));
  const off = !canGive(pad, pad.rewardOf(drawn.give));
  const now = urges(pad, press);
  const picture = pad.word(drawn.give)?.picture;
  return {
    key: `swap-give-${press.id}-${off}-${now}`,
    build: () => [
      tell(
        el(
          "p",
          { class: "offer-word", "data-test": "swap-drawn" },
          Boolean(picture) && el("img", { class: "picture", src: picture, alt: "" }),
          now
            ? say(other ? "client-board-swap-instead" : "client-board-swap-give", {
                thing: `${pad.says(drawn.give)}${name}`,
              })
            : say("client-board-give-calmly", { name: pad.now.name, word: pad.says(drawn.give) }),
        ),
        other && el("p", { class: "quiet" }, say("client-board-swap-as-always", { name: pad.now.name })),
        off && el("p", { class: "caution" }, say("client-board-swap-no-more")),
      ),
      care(pad, reward),
      slots({
        give: button(say("client-board-given"), "swap-given", given, { class: now ? "primary" : "", disabled: off }),
        more: button(say("client-board-could-not-give"), "swap-not-given", () =>
          pad.setMemo({ swap: { press: press.id, is: "failed" } }),
        ),
      }),
    ],
  };
}

/**
 * @param {Pad} pad
 * @param {SwapNow} plan
 */
const stop = (pad, plan) => pad.note([{ kind: "swap_stop", swap: plan.swap, reason: "signs" }]);

/** @param {Stop} signs */
const asked = (signs) => say(signs === "strong" ? "client-board-swaps-strong" : "client-board-swaps-mild");

/**
 * What the note of the rest says of them, in a line; undefined where it has nothing to say.
 * @param {Pad} pad
 * @returns {Panel | undefined}
 */
export function atRest(pad) {
  const now = state(pad);
  if (now?.stopped) {
    const page = { href: `/a/${pad.now.animal}/swaps`, "data-test": "swaps-over" };
    return { key: now.stopped.id, build: () => [el("p", {}, el("a", page, say("client-board-swaps-over")))] };
  }
  if (!now?.plan || !now.signs) return undefined;
  const { plan, signs } = now;
  const stops = () => button(say("client-board-swaps-stop"), "swaps-stop", () => stop(pad, plan), { class: "primary" });
  return {
    key: `asks-${plan.swap}-${signs}`,
    build: () => [el("div", { class: "line" }, el("span", {}, asked(signs)), stops())],
  };
}

/**
 * The strip above the pads: what runs, and stopping it where signs were seen; undefined where there is nothing to say. In a
 * session it tells only of what came up in it: all before was said before it began. While sessions rest, their note tells it.
 * @param {Pad} pad
 * @param {boolean} inAnswer
 * @param {() => void} sign
 */
export function strip(pad, inAnswer, sign) {
  const now = state(pad);
  if (!now || (now.plan && !now.signs && !inAnswer)) return undefined;
  const { session, startedAt = 0 } = pad.view;
  const came = now.stopped ? Date.parse(now.stopped.happened_at) : now.signs ? now.seen : undefined;
  if (came !== undefined && (session ? came < startedAt : restUntil(pad))) return undefined;
  const page = el("a", { href: `/a/${pad.now.animal}/swaps` }, say("client-board-swaps-link"));
  if (now.stopped) {
    const { id } = now.stopped;
    if (pad.memo.swapsSeen === id) return undefined;
    // It goes by itself; what lies over the mat can be put away.
    const seen = () => button(say("client-board-put-away"), "swaps-seen", () => pad.setMemo({ swapsSeen: id }));
    return {
      key: `stopped-${id}-${session}-${now.by}`,
      alert: true,
      build: () => [
        el("p", {}, `${say(now.by ? "client-board-swaps-stopped" : "client-board-swaps-taken-back")} `, page),
        session && seen(),
      ],
    };
  }
  const { plan, signs } = now;
  if (signs) {
    return {
      key: `signs-${plan.swap}-${signs}`,
      alert: true,
      build: () => [
        el("p", {}, asked(signs)),
        el(
          "div",
          { class: "row even" },
          button(say("client-board-swaps-stop"), "swaps-stop", () => stop(pad, plan), { class: "primary" }),
          signs === "mild" &&
            button(say("client-board-at-ease", { name: pad.now.name }), "swaps-on", () =>
              pad.setMemo({ swapsOnAt: Date.now() }),
            ),
        ),
      ],
    };
  }
  return {
    key: `running-${plan.swap}-${pad.view.session}`,
    build: () => [
      el(
        "div",
        { class: "line" },
        el("span", { class: "quiet" }, page, `: ${say("client-board-swaps-run", { n: plan.one_in })}`),
        // A session has its own.
        !pad.view.session && button(say("client-board-sign"), "swaps-sign", sign),
        button(say("client-board-stop"), "swaps-end", () => location.assign(`/a/${pad.now.animal}/swaps`)),
      ),
    ],
  };
}
