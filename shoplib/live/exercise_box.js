// One exercise: question, what is given, a field or several, three buttons, and a place where the feedback is said.
// Text goes in as text, never as HTML: part of it is what the learner typed.

const MARKS = { right: "\u2713", slip: "\u25B2", other: "\u25B2" };
let made = 0;

/** Keeps a number and its unit on one line. */
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
  const id = `shop-exercise-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, `Exercise: ${get("title")}`);
  const standing = element("p", { class: "shop-exercise-standing" }, box);
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  element("p", { id: `${id}-question` }, box, get("question"));

  if (get("facts").length) {
    const table = element("table", { class: "shop-exercise-facts" }, box);
    element("caption", {}, table, "What is given");
    const rows = element("tbody", {}, table);
    for (const [what, text] of get("facts")) {
      const row = element("tr", {}, rows);
      element("th", { scope: "row" }, row, what);
      element("td", {}, row, text);
    }
  }

  const form = element("form", { class: "shop-exercise-form", novalidate: "" }, box);
  const several = get("fields");
  const asked = several.length ? several : [["", "Your answer"]];
  if (several.length) form.classList.add("shop-exercise-several");
  const fields = new Map(asked.map(([name, label], number) => {
    element("label", { for: `${id}-answer-${number}` }, form, label);
    const holder = element("span", { class: "shop-exercise-field" }, form);
    const field = element("input", {
      type: "text", id: `${id}-answer-${number}`, autocomplete: "off", spellcheck: "false",
      "aria-label": `${label} in ${get("unit_word")}`, "aria-describedby": `${id}-question`,
    }, holder);
    element("span", { "aria-hidden": "true" }, holder, get("unit"));
    return [name, field];
  }));
  const buttons = element("span", { class: "shop-exercise-buttons" }, form);
  element("button", { type: "submit" }, buttons, "Check");
  const hint = element("button", { type: "button" }, buttons);
  const working = element("button", { type: "button", "aria-expanded": "false" }, buttons, "Show working");

  const said = element("div", { class: "shop-exercise-said", role: "status" }, box);
  const picture = element("div", { class: "shop-exercise-picture" }, box);
  const hints = element("ol", { class: "shop-exercise-hints", "aria-live": "polite", "aria-label": "Hints" }, box);
  const lines = element("div", { class: "shop-exercise-working", "aria-live": "polite" }, box);
  let waiting = 0;

  function press(what) {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      said.dataset.kind = "waiting";
      said.textContent = "Waiting for the kernel. If nothing comes: menu Run, then Run All Cells.";
    }, 1500);
    const typed = Object.fromEntries([...fields].map(([name, field]) => [name, field.value]));
    model.send(several.length ? { press: what, answers: typed } : { press: what, answer: typed[""] });
  }

  /** The kernel has answered, though what is shown may be the same as before. */
  function heard() {
    clearTimeout(waiting);
    if (said.dataset.kind === "waiting") showSaid();
  }

  function showSaid() {
    const { kind, heading, parts, items } = get("said");
    said.replaceChildren();
    delete said.dataset.kind;
    if (!kind) return;
    said.dataset.kind = kind;
    const first = element("p", {}, said);
    element("span", { "aria-hidden": "true" }, first, `${MARKS[kind] || "\u25CB"} `);
    element("strong", {}, first, `${heading}.`);
    for (const part of parts) element("p", {}, said, part);
    for (const item of items) {
      element("p", { class: "shop-exercise-item" }, said, item.label);
      for (const part of item.parts) element("p", {}, said, part);
    }
  }

  function showPicture() {
    const { source, alt } = get("picture");
    picture.replaceChildren();
    picture.hidden = !source;
    if (source) element("img", { src: source, alt }, picture);
  }

  function showHints() {
    hint.textContent = get("hints_left");
    const shown = get("hints");
    hint.setAttribute("aria-disabled", String(!get("more_hints"))); // it keeps the focus that it may have
    for (const text of shown.slice(hints.children.length)) element("li", {}, hints, text);
    hints.hidden = shown.length === 0;
  }

  function showWorking() {
    const text = get("working");
    lines.replaceChildren();
    lines.hidden = text.length === 0;
    working.setAttribute("aria-expanded", String(text.length > 0));
    if (text.length) element("p", { class: "shop-exercise-heading" }, lines, "Working");
    for (const line of text) element("p", {}, lines, line);
    const own = get("own_working");
    if (!own.length) return;
    const folded = element("details", {}, lines);
    element("summary", {}, folded, "The sums of the workbook itself, down to what was given");
    for (const line of own) element("p", {}, folded, line);
  }

  function showStanding() {
    const text = get("standing");
    standing.hidden = text === "";
    standing.textContent = text && `${text.startsWith("right") ? MARKS.right : "\u25CB"} ${text}`;
  }

  function showAnswer() {
    for (const [name, field] of fields) {
      const given = (several.length ? get("answers")[name] : get("answer")) ?? "";
      if (given !== field.value && document.activeElement !== field) field.value = given;
    }
  }

  form.addEventListener("submit", (event) => {
    event.preventDefault();
    press("check");
  });
  hint.addEventListener("click", () => {
    if (get("more_hints")) press("hint");
  });
  working.addEventListener("click", () => press("working"));
  // JupyterLab would take letters and Enter for itself; saving stays its own.
  box.addEventListener("keydown", (event) => {
    if (!((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s")) event.stopPropagation();
    if (event.key === "Enter" && [...fields.values()].includes(event.target)) {
      event.preventDefault();
      press("check");
    }
  });

  const follow = [
    ["change:said", showSaid], ["change:hints", showHints], ["change:hints_left", showHints],
    ["change:more_hints", showHints],
    ["change:working", showWorking], ["change:answer", showAnswer],
    ["change:answers", showAnswer], ["change:picture", showPicture],
    ["change:standing", showStanding], ["change:heard", heard],
  ];
  for (const [name, show] of follow) {
    model.on(name, show);
    show();
  }
  return () => {
    clearTimeout(waiting);
    for (const [name, show] of follow) model.off(name, show);
  };
}

export default { render };
