// Shows SVG drawings with one line of message above them. Only a drawing that changed is replaced.

function element(tag, className, parent) {
  const node = document.createElement(tag);
  node.className = className;
  parent.append(node);
  return node;
}

/** Text whose lengths stay on one line. */
function written(text) {
  const part = document.createElement("span");
  writeWhole(part, text);
  return part;
}

/** Keys pressed in the panel are the panel's: JupyterLab would take arrows and Enter for its cells. */
function keep(event) {
  if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s") return;
  event.stopPropagation();
}

/** Once the picture stands on the page, guard the keys of the panel around it, if there is one. */
function guardKeys(el, tries = 100) {
  if (el.isConnected) el.closest(".shop-panel")?.addEventListener("keydown", keep);
  else if (tries) requestAnimationFrame(() => guardKeys(el, tries - 1));
}

function render({ model, el }) {
  el.classList.add("shop-picture", "shop-awake");
  const says = element("p", "shop-picture-says", el);
  says.setAttribute("role", "status");
  const frame = element("div", "shop-picture-frame", el);
  const old = element("p", "shop-picture-old", frame);
  const sheet = element("div", "shop-picture-sheet", frame);
  old.textContent = "Last picture that could be drawn";
  const shown = [];

  function figure() {
    const root = element("figure", "shop-picture-figure", sheet);
    const holder = element("div", "", root);
    holder.setAttribute("role", "img");
    return { root, holder, svg: null };
  }

  /** The message with its lengths as buttons: read out as one sentence, for a button's name is what it says. */
  function say() {
    const message = model.get("message");
    const asked = model.get("asked");
    if (says.textContent === message && says.querySelectorAll("[data-ask]").length === asked.length) return;
    const told = [];
    let at = 0;
    asked.forEach(([start, end], number) => {
      const length = document.createElement("button");
      length.type = "button";
      length.dataset.ask = `message/${number}`;
      length.title = "Why?";
      writeWhole(length, message.slice(start, end));
      told.push(written(message.slice(at, start)), length);
      at = end;
    });
    says.replaceChildren(...told, written(message.slice(at)));
  }

  function draw() {
    const drawings = model.get("drawings");
    while (shown.length > drawings.length) shown.pop().root.remove();
    drawings.forEach((drawing, index) => {
      const place = shown[index] || (shown[index] = figure());
      if (place.svg !== drawing.svg) {
        place.holder.innerHTML = place.svg = drawing.svg;
        place.holder.setAttribute("role", "img"); // working_box.js makes it a group where a size can be picked
      }
      place.holder.setAttribute("aria-label", drawing.alt);
    });
    say();
    el.classList.toggle("shop-picture-stale", model.get("stale"));
    old.hidden = !model.get("stale");
  }

  model.on("change", draw);
  draw();
  guardKeys(el);
  return () => model.off("change", draw);
}

export default { render };
