// Says why a size of the panel is what it is. Whatever carries data-ask can be picked: a button of a table, of a
// closing sum or of a sentence, or a dimension of a drawing. In a drawing the arrow keys go from one to the next.

function element(tag, className, parent, text) {
  const node = document.createElement(tag);
  node.className = className;
  if (text) node.textContent = text;
  parent.append(node);
  return node;
}

/** The dimensions of the drawing that a node stands in. */
const dimensions = (node) => [...node.closest("svg").querySelectorAll("[data-ask]")];

/** What a dimension, or a label of several lines, says. */
const words = (node) => (node.children.length ? [...node.children] : [node]).map((line) => line.textContent).join(" ");

const PLACES = [
  ["svg", "in a drawing"], ["td", "in a table"], [":is(.shop-picture-says, .shop-findings)", "in a sentence"],
  [".shop-sums", "in a closing sum"],
];

/** Where a number can be picked on this panel; nothing where none can. */
function offer(panel) {
  const places = PLACES.filter(([selector]) => panel?.querySelector(`${selector} [data-ask]`)).map(([, told]) => told);
  if (!places.length) return "";
  const last = places.pop();
  return `Pick a number, ${places.length ? `${places.join(", ")} or ` : ""}${last}, to see why it is what it is.`;
}

/** Make the dimensions of each drawing reachable: one is a stop for Tab, arrows go on from there. */
function reach(panel) {
  for (const svg of panel.querySelectorAll(".shop-picture-figure svg")) {
    const found = [...svg.querySelectorAll("[data-ask]")];
    if (!found.length || found[0].hasAttribute("tabindex")) continue;
    // A picture may hold nothing that can be picked; a group may. Its words stay on the frame around it.
    svg.parentElement.setAttribute("role", "group");
    svg.setAttribute("role", "presentation");
    found.forEach((text, index) => {
      text.setAttribute("role", "button");
      text.setAttribute("tabindex", index ? "-1" : "0");
      text.setAttribute("aria-label", `${words(text)}: why?`);
    });
  }
}

function render({ model, el }) {
  const box = element("section", "shop-working", el);
  box.setAttribute("aria-label", "Why");
  const hint = element("p", "shop-working-hint", box);
  const said = element("div", "shop-working-said", box);
  said.setAttribute("role", "status");
  const close = element("button", "shop-working-close", box, "Close");
  close.type = "button";
  let panel = null;
  let last = null; // what was picked, to go back to

  function pick(target) {
    last = target;
    model.send({ ask: target.dataset.ask });
  }

  function onClick(event) {
    const target = event.target.closest?.("[data-ask]");
    if (target) pick(target);
  }

  function onKey(event) {
    const target = event.target.closest?.("svg [data-ask]");
    if (!target) return;
    const all = dimensions(target);
    const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
    if (step) {
      const next = all[(all.indexOf(target) + step + all.length) % all.length];
      target.setAttribute("tabindex", "-1");
      next.setAttribute("tabindex", "0");
      next.focus();
    } else if (event.key === "Enter" || event.key === " ") {
      pick(target);
    } else return;
    event.preventDefault();
    event.stopPropagation();
  }

  function show() {
    const lines = model.get("lines");
    said.replaceChildren();
    hint.textContent = offer(panel);
    hint.hidden = lines.length > 0 || !hint.textContent;
    close.hidden = lines.length === 0;
    if (!lines.length) return;
    element("p", "shop-heading", said, "Why");
    const list = element("ol", "", said);
    for (const line of lines) writeWhole(element("li", "", list), line);
    box.scrollIntoView({ block: "nearest" });
  }

  close.addEventListener("click", () => {
    // A move of a slider since then made the tables and drawings anew: the same size by the name that it now has.
    const again = last?.isConnected ? last : panel?.querySelector(`[data-ask="${CSS.escape(model.get("asked"))}"]`);
    model.send({ ask: "" });
    (again ?? panel?.querySelector("input, select, button"))?.focus();
  });

  const watch = new MutationObserver(() => reach(panel));
  function settle(tries = 100) {
    panel = el.isConnected ? el.closest(".shop-panel") : null;
    if (!panel) {
      if (tries) requestAnimationFrame(() => settle(tries - 1));
      return;
    }
    panel.addEventListener("click", onClick);
    panel.addEventListener("keydown", onKey);
    for (const sheet of panel.querySelectorAll(".shop-picture-sheet")) {
      watch.observe(sheet, { childList: true, subtree: true });
    }
    reach(panel);
    show();
  }

  model.on("change:lines", show);
  show();
  settle();
  return () => {
    watch.disconnect();
    panel?.removeEventListener("click", onClick);
    panel?.removeEventListener("keydown", onKey);
    model.off("change:lines", show);
  };
}

export default { render };
