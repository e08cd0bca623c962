// The pad in a hand: a trembling finger counts once, and what does not fit a screen flows instead of lying over the pads.

import { letterPx } from "./dom.js";

const TWICE_MS = 350; // a second touch this soon at the same spot is a tremble, not a second tap
const NEAR_PX = 24;
const LEAST_ROOM_REM = 28; // in letters this large, or a screen this low, dock and mat do not both fit
const LEAST_PLACE_PX = 44; // what a thumb needs
const LEAST_PLACE_REM = 2.75; // what letters need
const GAP_PX = 4;
const DOCK_EDGE_PX = 2;
const LEAST_ASKED_PX = 140; // what is asked and its two rows of answers

/**
 * Lets no second touch through that comes too soon after the first, also where another button has come under the finger.
 * @param {HTMLElement} root
 */
export function once(root) {
  /** @type {{ what: Element | null, x: number, y: number, at: number }} */
  let last = { what: null, x: 0, y: 0, at: -Infinity };
  root.addEventListener(
    "click",
    (event) => {
      const what = /** @type {Element} */ (event.target).closest("button");
      if (!what) return;
      const byHand = event.detail > 0; // a key's click has no place
      const near = byHand && Math.hypot(event.clientX - last.x, event.clientY - last.y) < NEAR_PX;
      const soon = event.timeStamp - last.at < TWICE_MS;
      if (soon && (what === last.what || near)) {
        event.stopImmediatePropagation();
        event.preventDefault();
        return;
      }
      last = { what, x: event.clientX, y: event.clientY, at: event.timeStamp };
    },
    true,
  );
}

/**
 * The least height the mat can have: its rows, each as high as a thumb and the letters need.
 * @param {HTMLElement | null} mat
 */
function least(mat) {
  if (!mat || mat.hidden) return 0;
  const place = Math.max(LEAST_PLACE_PX, LEAST_PLACE_REM * letterPx());
  const beside = getComputedStyle(mat).flexDirection === "row"; // the way back beside an open zone
  const grids = [...mat.children].filter(
    (g) => /** @type {HTMLElement} */ (g).offsetHeight > 0 && !(beside && g.matches(".pinned")),
  );
  const heights = grids.map((g) => {
    if (!g.matches(".pads") && !g.matches(".zones")) return /** @type {HTMLElement} */ (g).offsetHeight;
    const columns = getComputedStyle(g).gridTemplateColumns.split(" ").length;
    const places = [...g.children].filter((p) => /** @type {HTMLElement} */ (p).offsetWidth > 0).length;
    return Math.ceil(places / columns) * (place + GAP_PX) - GAP_PX;
  });
  return heights.reduce((sum, h) => sum + h, 0) + GAP_PX * Math.max(0, heights.length - 1);
}

/**
 * Holds the mat from when the session began, or the screen was turned, as high as it then is at most: no pad moves or grows
 * under a thumb, whatever is asked or opened.
 * @param {HTMLElement} mat
 * @returns {(now: boolean, begins: boolean, most: () => number) => number} how high it is held, 0 where it is not
 */
function holding(mat) {
  let screen = "";
  let high = 0;
  return (now, begins, most) => {
    const at = `${innerWidth} ${innerHeight} ${letterPx()}`;
    if (!now || at !== screen) {
      mat.classList.remove("held");
      high = 0;
    }
    if (!now || mat.hidden) return high;
    if (high === 0 && begins) {
      high = Math.floor(Math.min(mat.offsetHeight, Math.max(least(mat), most())));
      screen = at;
      mat.style.setProperty("--held", `${high}px`);
      mat.classList.add("held");
    }
    return high;
  };
}

/**
 * What is asked takes what mat and buttons leave of the screen and
 * scrolls in it; only large letters and low screens let the dock flow, so that no pad moves when the panel says more.
 * @param {HTMLElement} root
 * @param {(asked: HTMLElement) => number} tallest how tall in px what a session asks can get
 * @returns {() => void} finds out anew
 */
export function fit(root, tallest) {
  /** @param {string} selector */
  const part = (selector) => /** @type {HTMLElement | null} */ (root.querySelector(selector));
  const [dock, mat, asked, panel] = ["dock", "mat", "asked", "panel"].map((name) => part(`[data-part=${name}]`));
  const others = [".status", ".modes", ".rests", ".swaps:not(.laid)", ".actions"];
  /** @type {HTMLElement | null} */
  const bar = document.querySelector("nav.thumb");
  /** @type {HTMLElement | null} */
  const top = document.querySelector("header.top");
  const hold = mat ? holding(mat) : () => 0;
  const measure = () => {
    const { style, classList } = document.documentElement;
    // As tall as the tabs are in as many lines as they take: what follows from it must not change it.
    classList.remove("lean");
    const whole = window.innerHeight - (bar?.offsetHeight ?? 0) - (top?.offsetHeight ?? 0);
    const flows = whole < LEAST_ROOM_REM * letterPx();
    root.classList.toggle("flows", flows);
    const laid = part("[data-part=pads]");
    root.classList.toggle("sideways", flows && laid !== null && laid.scrollWidth > laid.clientWidth + 1);
    // Then the head of the page scrolls away and the tabs keep one line: what is left is for pads and controls.
    classList.toggle("lean", flows);
    const heights = { bar: bar?.offsetHeight ?? 0, top: flows ? 0 : (top?.offsetHeight ?? 0) };
    const room = window.innerHeight - heights.bar - heights.top;
    const taken = others.map((o) => part(o)?.offsetHeight ?? 0).filter((h) => h > 0);
    const free = room - taken.reduce((sum, h) => sum + h + GAP_PX, 0) - GAP_PX - DOCK_EDGE_PX;
    const left = free - least(mat);
    // On a wide screen the mat lies beside the dock.
    const beside = flows || matchMedia("(min-width: 60rem)").matches;
    /** @param {number} px */
    const give = (px) => style.setProperty("--asked-most", `${Math.floor(px)}px`);
    give(left);
    // Without a session nothing waits under the thumb: what does not fit one screen makes the page longer, and is read whole.
    const tall = () => left < LEAST_ASKED_PX || (asked?.scrollHeight ?? 0) > left + 1;
    const longer = root.dataset.state === "idle" && !beside && tall();
    root.classList.toggle("longer", longer);
    // Where in a session not all rows fit, the mat scrolls in its own place, and none lies under the dock.
    const crowded = left < LEAST_ASKED_PX && !flows && !longer;
    const most = () => free - (asked ? tallest(asked) : 0);
    // Until what is known has been read, nobody can say what will be asked.
    const runs = root.dataset.state === "session" && root.dataset.ready === "yes";
    const held = hold(runs && !beside, !crowded, most);
    root.classList.toggle("crowded", crowded);
    if (held > 0) give(mat?.hidden ? left : Math.min(left, free - held));
    // What stops a session lies over the mat, between the line with Undo and what is asked: all that is still needed stays
    // in reach.
    const line = part(".status")?.offsetHeight ?? 0;
    const from = heights.top + (beside ? 0 : line) + GAP_PX;
    const to = window.innerHeight - heights.bar - (beside ? 0 : (dock?.offsetHeight ?? 0)) - GAP_PX;
    style.setProperty("--over-from", `${from}px`);
    style.setProperty("--over-most", `${Math.max(LEAST_ASKED_PX, to - from)}px`);
    asked?.classList.toggle("tight", asked.scrollHeight > asked.clientHeight + 1);
    // What warns stays in sight above the answers, as high as those are.
    style.setProperty("--answers", `${part(".panel > .slots")?.offsetHeight ?? 0}px`);
  };
  const watch = new ResizeObserver(measure);
  const watched = [dock, panel, mat, ...others.map(part), bar, top, document.documentElement];
  for (const node of watched) if (node) watch.observe(node);
  return measure;
}
