// Making elements without ever parsing markup.

type Value = string | number | boolean | null | undefined;
type Child = Node | string | null | undefined | false;

/** Makes an element: `true` sets an empty attribute; `false`, `null` and `undefined` set none. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Record<string, Value> = {},
  ...children: Child[]
): HTMLElementTagNameMap[Tag] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) element.setAttribute(name, "");
    else if (value !== false && value != null) element.setAttribute(name, String(value));
  }
  element.append(...children.filter(isShown));
  return element;
}

/** Makes an element of a picture, in the same way. */
export function drawn(
  tag: string,
  attributes: Record<string, Value> = {},
  ...children: Child[]
): SVGElement {
  const element = document.createElementNS("http://www.w3.org/2000/svg", tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== false && value != null) element.setAttribute(name, String(value));
  }
  element.append(...children.filter(isShown));
  return element;
}

/** A button that does one thing. */
export function button(
  text: Child,
  onPress: () => void,
  attributes: Record<string, Value> = {},
): HTMLButtonElement {
  const element = make("button", { type: "button", ...attributes }, text);
  element.addEventListener("click", onPress);
  return element;
}

/** A list, or nothing when there is nothing to list. */
export function list(
  items: readonly Child[],
  attributes: Record<string, Value> = {},
): HTMLUListElement | null {
  if (items.length === 0) return null;
  return make("ul", attributes, ...items.map((item) => make("li", {}, item)));
}

/** Brings the label of a field into view, so that a person knows what is asked, then focuses it. */
export function focusField(root: ParentNode, path: string): void {
  const found = root.querySelector<HTMLElement>(`#${CSS.escape(path)}`);
  const checked = found?.querySelector<HTMLElement>("input:checked");
  found?.scrollIntoView({ block: "center" });
  (checked ?? found)?.focus({ preventScroll: found !== null && checked === null });
}

function isShown(child: Child): child is Node | string {
  return child !== null && child !== undefined && child !== false;
}
