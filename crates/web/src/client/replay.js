// A rehearsal that is over, watched again: in the room, and as a line that wanders over the drawing of the whole.

import { find } from "./dom.js";
import { standing } from "./rehearsal.js";
import { makeCaptions, makeRoom } from "./room.js";

/** @import { Moments } from "../../client-checks/client" */

/** @type {HTMLElement} */
const root = find("#replay");
/** @type {Moments} */
const moments = JSON.parse(root.dataset.moments ?? "{}");
const watch = find("[data-part=watch]", root);
const again = find("[data-part=again]", root);
const room = makeRoom(find("[data-part=room]", root));
const captions = makeCaptions(find("[data-part=captions]", root));
const mark = find("[data-part=moment]", root);
// The line of time, as it is drawn.
const rule = find("line.rule", root);
const [left, right] = [Number(rule.getAttribute("x1")), Number(rule.getAttribute("x2"))];
let began = 0;
let run = 0;

/** @param {number} mine Which showing this frame belongs to. */
function frame(mine) {
  if (mine !== run) return;
  const t = Math.min(performance.now() - began, moments.over_ms);
  room.draw(moments, standing(moments.told, t), t);
  captions.say(moments.told, t);
  const x = String(left + (right - left) * (t / Math.max(1, moments.over_ms)));
  mark.setAttribute("x1", x);
  mark.setAttribute("x2", x);
  root.dataset.at = String(Math.round(t));
  if (t < moments.over_ms) requestAnimationFrame(() => frame(mine));
}

watch.addEventListener("click", () => {
  captions.clear();
  again.hidden = false;
  mark.setAttribute("visibility", "visible");
  began = performance.now();
  run += 1;
  frame(run);
});
watch.hidden = false;
