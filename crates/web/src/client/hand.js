// The pad in a hand: a trembling finger counts once, and what does not fit a screen flows instead of lying over the pads.

const TWICE_MS = 350; // a second touch this soon at the same spot is a tremble, not a second tap
const NEAR_PX = 24;
const MOST_OF_SCREEN = 0.6; // a dock taller than this would leave too little to see above it

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
 * Keeps room for the bar of pages as tall as it is, and lets the dock flow where large letters make it too tall.
 * @param {HTMLElement} root
 */
export function fit(root) {
  /** @type {HTMLElement | null} */
  const dock = root.querySelector("[data-part=dock]");
  /** @type {HTMLElement | null} */
  const bar = document.querySelector("nav.thumb");
  /** @type {HTMLElement | null} */
  const top = document.querySelector("header.top");
  const measure = () => {
    const heights = { bar: bar?.offsetHeight ?? 0, top: top?.offsetHeight ?? 0 };
    const style = document.documentElement.style;
    for (const [name, px] of Object.entries(heights)) style.setProperty(`--${name}`, `${px}px`);
    const room = window.innerHeight - heights.bar - heights.top;
    root.classList.toggle("flows", (dock?.offsetHeight ?? 0) > MOST_OF_SCREEN * room);
  };
  const watch = new ResizeObserver(measure);
  for (const node of [dock, bar, top, document.documentElement]) if (node) watch.observe(node);
}
