// A drill: one picture and one field after another. Enter checks; once the answer is right, Enter goes on.
// Text goes in as text, never as HTML: part of it is what the learner typed.

const MARKS = { right: "\u2713", slip: "\u25B2", other: "\u25B2", "wrong unit": "\u25B2" };
let made = 0;

function unbroken(text) {
  return text.replace(/(\d) (?=\d+\/\d|(?:in|mm)\b)/g, "$1\u00a0");
}

function element(tag, attributes, parent, text) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  if (text) node.textContent = unbroken(text);
  parent.append(node);
  return node;
}

function render({ model, el }) {
  const id = `shop-drill-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-drill shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  const standing = element("p", { class: "shop-exercise-standing" }, box);
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  element("p", {}, box, get("question"));
  const place = element("p", { class: "shop-exercise-heading", "aria-live": "polite", id: `${id}-place` }, box);
  const picture = element("div", { class: "shop-exercise-picture", id: `${id}-picture` }, box);
  const form = element("form", { class: "shop-exercise-form", novalidate: "" }, box);
  element("label", { for: `${id}-answer` }, form, "The tape says");
  const holder = element("span", { class: "shop-exercise-field" }, form);
  const field = element("input", {
    type: "text", id: `${id}-answer`, autocomplete: "off", spellcheck: "false",
    "aria-label": `The tape says, in ${get("unit_word")}`, "aria-describedby": `${id}-place ${id}-picture`,
  }, holder);
  element("span", { "aria-hidden": "true" }, holder, get("unit"));
  const buttons = element("span", { class: "shop-exercise-buttons" }, form);
  const go = element("button", { type: "submit" }, buttons, "Check");
  const show = element("button", { type: "button" }, buttons, "Show me");
  const said = element("div", { class: "shop-exercise-said", role: "status" }, box);
  const done = element("p", { class: "shop-exercise-heading", "aria-live": "polite" }, box);
  let waiting = 0;

  function press(what) {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      said.dataset.kind = "waiting";
      said.textContent = "Waiting for the kernel. If nothing comes: menu Run, then Run All Cells.";
    }, 1500);
    model.send({ press: what, answer: field.value });
  }

  function goOn() {
    press(get("answered") ? "next" : "check");
  }

  function showSaid() {
    clearTimeout(waiting);
    const { kind, heading, parts } = get("said");
    said.replaceChildren();
    if (!kind) return;
    said.dataset.kind = kind;
    const first = element("p", {}, said);
    element("span", { "aria-hidden": "true" }, first, `${MARKS[kind] || "\u25CB"} `);
    element("strong", {}, first, `${heading}.`);
    for (const part of parts) element("p", {}, said, part);
  }

  function showPicture() {
    const { source, alt } = get("picture");
    picture.replaceChildren();
    if (source) element("img", { src: source, alt }, picture);
  }

  function showPlace() {
    place.textContent = get("place");
  }

  function showAnswered() {
    go.textContent = get("answered") ? "Next" : "Check";
    show.disabled = get("answered");
  }

  function showDone() {
    done.hidden = get("done") === "";
    done.textContent = get("done");
  }

  function showStanding() {
    const text = get("standing");
    standing.hidden = text === "";
    standing.textContent = text && `${text.startsWith("right") ? MARKS.right : "\u25CB"} ${text}`;
  }

  function begin() {
    clearTimeout(waiting);
    field.value = "";
  }

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    goOn();
  });
  show.addEventListener("click", () => {
    press("show");
    field.focus();
  });
  // JupyterLab would take letters and Enter for itself; saving stays its own.
  box.addEventListener("keydown", (event) => {
    if (!((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s")) event.stopPropagation();
    if (event.key === "Enter" && event.target === field) {
      event.preventDefault();
      goOn();
    }
  });

  const follow = [
    ["change:said", showSaid], ["change:picture", showPicture], ["change:place", showPlace],
    ["change:answered", showAnswered], ["change:done", showDone], ["change:standing", showStanding],
  ];
  for (const [name, act] of follow) {
    model.on(name, act);
    act();
  }
  model.on("change:turn", begin);
  return () => {
    clearTimeout(waiting);
    for (const [name, act] of follow) model.off(name, act);
    model.off("change:turn", begin);
  };
}

export default { render };
