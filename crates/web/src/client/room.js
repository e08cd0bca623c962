// The room of a rehearsal, drawn anew for each frame: the animal moves, a button lights, a sign shows.

import { find } from "./dom.js";
import { whereabouts } from "./rehearsal.js";

/** @import { Moments, StandsNow } from "../../client-checks/client" */

/** Whether motion is not wanted. */
const still = matchMedia("(prefers-reduced-motion)");

/**
 * @param {Element} svg
 */
export function makeRoom(svg) {
  const animal = find("[data-part=animal]", svg);
  const turned = find("[data-part=turned]", svg);
  const parts = { mild: find("[data-part=mild]", svg), strong: find("[data-part=strong]", svg) };
  const pushes = { calls: find("[data-part=calls]", svg), bars: find("[data-part=bars]", svg) };
  const given = find("[data-part=given]", svg);
  /** @type {[Element[], Element[]]} */
  const hands = [
    [...svg.querySelectorAll("[data-hand=left] [data-held]")],
    [...svg.querySelectorAll("[data-hand=right] [data-held]")],
  ];
  const knobs = [...svg.querySelectorAll("[data-knob]")];
  let last = "";
  let moved = "";
  let faces = "";

  /**
   * @param {Element} node
   * @param {boolean} seen
   */
  const see = (node, seen) => node.setAttribute("visibility", seen ? "visible" : "hidden");

  return {
    /**
     * @param {Moments} moments
     * @param {StandsNow} stands
     * @param {number} t
     */
    draw(moments, stands, t) {
      const { x, y, turn } = whereabouts(moments, t, still.matches);
      // In units of the drawing; what is as it was is not said again: then nothing is drawn.
      const to = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`;
      if (to !== moved) animal.style.transform = moved = to;
      const way = `rotate(${turn.toFixed(0)}deg)`;
      if (way !== faces) turned.style.transform = faces = way;
      const now = `${stands.sign} ${stands.lies} ${stands.lit?.thing} ${stands.calls} ${stands.bars} ${stands.pair}`;
      if (now === last) return;
      last = now;
      see(parts.mild, stands.sign === "mild");
      see(parts.strong, stands.sign === "strong");
      see(given, stands.lies && !stands.pair);
      hands.forEach((hand, side) => hand.forEach((thing, place) => see(thing, stands.pair?.[side] === place)));
      see(pushes.calls, stands.calls);
      see(pushes.bars, stands.bars);
      knobs.forEach((knob, i) => knob.classList.toggle("lit", stands.lit?.thing === i));
    },
  };
}

/** Lines of what happened that are kept, to be scrolled through. */
const LINES = 40;

/**
 * Says what happened since it was last asked, each moment once.
 * @param {Element} log
 */
export function makeCaptions(log) {
  const list = find("ol", log);
  /** @type {Set<string>} */
  const said = new Set();
  /** @type {import("../../client-checks/client").Moment[]} */
  let seen = [];
  let next = 0; // of those, which is to come
  return {
    /**
     * @param {import("../../client-checks/client").Moment[]} told
     * @param {number} t
     */
    say(told, t) {
      // Told anew, something may have come in between; else all before was gone through.
      if (told !== seen) [seen, next] = [told, 0];
      if (next >= told.length || told[next].at > t) return;
      // Whoever reads what was before is left there.
      const reads = log.scrollTop + log.clientHeight < log.scrollHeight - 4;
      for (; next < told.length && told[next].at <= t; next += 1) {
        const m = told[next];
        const key = `${m.at} ${m.what} ${m.thing ?? ""}`;
        if (!m.says || said.has(key)) continue;
        said.add(key);
        const line = document.createElement("li");
        line.textContent = m.says;
        line.dataset.what = m.what;
        if (m.level) line.dataset.level = m.level;
        list.append(line);
      }
      while (list.children.length > LINES) list.firstElementChild?.remove();
      if (!reads) log.scrollTop = log.scrollHeight;
    },
    clear() {
      said.clear();
      seen = [];
      list.replaceChildren();
    },
  };
}
