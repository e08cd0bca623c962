// Making and changing elements without markup in strings.

/** An element with properties, attributes (names with a dash, `role`, `class`) and children. */
export function el(tag, props = {}, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(props)) {
    if (value === undefined || value === false) continue;
    if (name.startsWith("on")) node.addEventListener(name.slice(2), value);
    else if (name in node && !name.includes("-")) node[name] = value;
    else node.setAttribute(name, value === true ? "" : value);
  }
  node.append(...children.filter((c) => c !== undefined && c !== false && c !== ""));
  return node;
}

/** A button with a stable name for tests. */
export const button = (text, test, onclick, props = {}) => el("button", { type: "button", "data-test": test, onclick, ...props }, text);

/** Sets text only where it differs, so that screen readers are not told the same again. */
export function text(node, value) {
  if (node && node.textContent !== value) node.textContent = value;
}

let sheet; // the one that is open

/** A sheet from the bottom with a title and things to choose from; `fill(close)` gives its content. */
export function openSheet(title, fill) {
  closeSheet();
  const close = () => closeSheet(mine);
  const heading = el("h2", { id: "sheet-title" }, title);
  const mine = el(
    "dialog",
    { class: "sheet", "aria-labelledby": "sheet-title", "data-test": "sheet", onclose: close },
    heading,
    el("div", { class: "stack" }, ...fill(close)),
    button("Close", "sheet-close", close, { class: "wide" }),
  );
  sheet = mine;
  document.body.append(mine);
  mine.showModal();
}

// A sheet tells of its closing only after the next one may have opened; it must close none but itself.
function closeSheet(which = sheet) {
  if (which === sheet) sheet = undefined;
  if (which?.open) which.close();
  which?.remove();
}
