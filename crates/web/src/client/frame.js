// On every page: keeps room for the bars above and below as tall as they are, so that neither lies over what has the focus,
// also in large letters, where they take several rows; and opens for paper what is folded on the screen.

/** @type {HTMLElement | null} */
const head = document.querySelector("header.top");
/** @type {HTMLElement | null} */
const bar = document.querySelector("nav.thumb");
const measure = () => {
  const { style } = document.documentElement;
  style.setProperty("--top", `${head?.offsetHeight ?? 0}px`);
  // What a phone's own edge takes is added where the room is kept.
  const edge = bar ? parseFloat(getComputedStyle(bar).paddingBottom) : 0;
  style.setProperty("--bar", `${(bar?.offsetHeight ?? 0) - (bar?.offsetHeight ? edge : 0)}px`);
};
const watch = new ResizeObserver(measure);
for (const node of [head, bar]) if (node) watch.observe(node);
measure();

// Paper has no taps: what is folded is open on it, and folded again afterwards.
/** @type {HTMLDetailsElement[]} */
let folded = [];
addEventListener("beforeprint", () => {
  folded = [...document.querySelectorAll("main details:not(.print-sheet *)")].filter(
    /** @returns {node is HTMLDetailsElement} */ (node) => node instanceof HTMLDetailsElement && !node.open,
  );
  for (const fold of folded) fold.open = true;
});
addEventListener("afterprint", () => {
  for (const fold of folded) fold.open = false;
});
