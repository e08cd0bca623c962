// What a word brings stands on its pad whole or not at all: in smaller letters where it must be, never cut.

/** From the largest to nothing. */
const STEPS = ["small", "none"];

/**
 * Whether what stands on a face has not room there.
 * @param {HTMLElement} face
 */
const over = (face) => {
  const brings = /** @type {HTMLElement} */ (face.querySelector(".gives"));
  return face.scrollHeight > face.clientHeight + 1 || brings.scrollWidth > brings.clientWidth + 1;
};

/**
 * Fits what the pads bring once what they say has changed, or their size.
 * @param {HTMLElement[]} pads
 * @returns {() => void} looks again
 */
export function brings(pads) {
  const faces = pads.map((pad) => /** @type {HTMLElement} */ (pad.querySelector(".face")));
  let known = "";
  const fit = () => {
    for (const face of faces) delete face.dataset.brings;
    for (const step of STEPS) {
      // All are looked at before one is changed: the page is laid out once a step.
      const full = faces.filter((face) => face.offsetParent && over(face));
      for (const face of full) face.dataset.brings = step;
      if (full.length === 0) break;
    }
  };
  const watch = new ResizeObserver(fit);
  for (const mat of new Set(pads.map((pad) => pad.parentElement))) if (mat) watch.observe(mat);
  return () => {
    const said = pads.map((pad) => {
      const line = (/** @type {string} */ of) => pad.querySelector(`.${of}`)?.textContent;
      return `${pad.hidden}-${pad.dataset.state}-${line("does")}-${line("gives")}`;
    });
    if (said.join() === known) return;
    known = said.join();
    fit();
  };
}
