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

let sheet;

/** A sheet from the bottom with a title and things to choose from; `fill(close)` gives its content. */
export function openSheet(title, fill) {
  closeSheet();
  const close = () => closeSheet();
  const heading = el("h2", { id: "sheet-title" }, title);
  sheet = el(
    "dialog",
    { class: "sheet", "aria-labelledby": "sheet-title", "data-test": "sheet", onclose: () => closeSheet() },
    heading,
    el("div", { class: "stack" }, ...fill(close)),
    button("Close", "sheet-close", close, { class: "wide" }),
  );
  document.body.append(sheet);
  sheet.showModal();
}

/** Closes the sheet if one is open. */
export function closeSheet() {
  const open = sheet;
  sheet = undefined;
  if (open) {
    if (open.open) open.close();
    open.remove();
  }
}
