// The practice bench: cautions, controls in the order of the work, the last test cut, the log, and what came of it.
// Text goes in as text, never as HTML: part of it is what the learner typed.

const GOOD = { true: "\u2713", false: "\u25B2" };
let made = 0;

function element(tag, attributes, parent, text) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  if (text) writeWhole(node, text);
  parent.append(node);
  return node;
}

function button(parent, text, press) {
  const node = element("button", { type: "button" }, parent, text);
  node.addEventListener("click", press);
  return node;
}

function group(parent, title) {
  const node = element("fieldset", {}, parent);
  element("legend", {}, node, title);
  return node;
}

function image(parent, { source, alt }) {
  element("img", { src: source, alt }, parent);
}

/** A heading, and sentences below it as a list, or as steps. */
function section(parent, { heading, lines, steps }) {
  const node = element("section", {}, parent);
  element("p", { class: "shop-exercise-heading" }, node, heading);
  const list = element(steps ? "ol" : "ul", {}, node);
  for (const line of lines) element("li", {}, list, line);
}

function table(parent, caption, { head, rows }) {
  const wide = element("div", { class: "shop-practice-wide", role: "region", tabindex: "0", "aria-label": caption }, parent);
  const node = element("table", { class: "shop-practice-table" }, wide);
  element("caption", {}, node, caption);
  const top = element("tr", {}, element("thead", {}, node));
  for (const cell of head) element("th", { scope: "col" }, top, cell);
  const body = element("tbody", {}, node);
  for (const [first, ...rest] of rows) {
    const row = element("tr", {}, body);
    element("th", { scope: "row" }, row, first);
    for (const cell of rest) element("td", {}, row, cell);
  }
}

function render({ model, el }) {
  const id = `shop-practice-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-practice shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  const warned = element("div", { class: "shop-practice-cautions", role: "group", "aria-label": "Cautions" }, box);
  element("p", { class: "shop-exercise-heading" }, warned, "\u25B2 Cautions for a real saw with a stacked dado set");
  const columns = element("div", { class: "shop-practice-columns" }, warned);
  for (const part of get("cautions")) section(columns, part);
  const task = element("p", { id: `${id}-task` }, box);
  const which = element("p", { class: "shop-exercise-standing" }, box);

  const stage = element("div", { class: "shop-practice-stage" }, box);
  const work = element("div", {}, stage);
  const seen = element("div", { class: "shop-practice-seen" }, stage);
  let waiting = 0;

  function send(content) {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      said.dataset.kind = "waiting";
      said.textContent = "Waiting for the kernel. If nothing comes: menu Run, then Run All Cells.";
    }, 1500);
    model.send(content);
  }

  const all = element("div", {}, work); // everything that is done before the pair is cut
  const first = group(all, "1. The sheet");
  const measureSheet = button(element("div", { class: "shop-practice-buttons" }, first), "Measure the sheet", () => send({ press: "sheet" }));
  const sheet = element("p", {}, first);

  const second = group(all, "2. The saw");
  function chooser(parent, name, text, options, press) {
    const row = element("div", { class: "shop-practice-row" }, parent);
    element("label", { for: `${id}-${name}` }, row, text);
    const list = element("select", { id: `${id}-${name}` }, row);
    for (const [value, told] of options) element("option", { value }, list, told);
    list.addEventListener("change", press);
    return list;
  }
  const sets = chooser(second, "set", "Cutters", get("sets").map((name) => [name, name]), () => send({ press: "set", name: sets.value }));
  const fields = new Map(get("fields").map(({ name, label }) => {
    const row = element("div", { class: "shop-practice-row" }, second);
    element("label", { for: `${id}-${name}` }, row, label);
    const cell = element("span", { class: "shop-practice-cell" }, row);
    const holder = element("span", { class: "shop-exercise-field" }, cell);
    const field = element("input", {
      type: "text", id: `${id}-${name}`, autocomplete: "off", spellcheck: "false",
      "aria-label": `${label}, typed in ${get("unit_word")}`, "aria-describedby": `${id}-${name}-stands ${id}-${name}-fault`,
    }, holder);
    element("span", { "aria-hidden": "true" }, holder, get("unit"));
    const stands = element("span", { id: `${id}-${name}-stands` }, cell);
    const fault = element("span", { class: "shop-practice-fault", id: `${id}-${name}-fault` }, row);
    const one = { field, stands, fault, sent: "" };
    one.take = (again) => {
      if (!again && field.value === one.sent) return; // leaving the field after Enter
      one.sent = field.value;
      send({ press: "enter", name, text: field.value });
    };
    field.addEventListener("change", () => one.take(false));
    return [name, one];
  }));
  const arranged = element("p", {}, second);
  const other = button(second, "", () => send({ press: "other" }));
  const stackRow = fields.get("stack").field.closest(".shop-practice-row");
  stackRow.after(arranged, other);
  const pressRow = element("div", { class: "shop-practice-row" }, second);
  const tick = element("label", { class: "shop-practice-tick" }, pressRow);
  const down = element("input", { type: "checkbox" }, tick);
  tick.append(" Push blocks press each panel down right over the cutter");
  down.addEventListener("change", () => send({ press: "down", down: down.checked }));

  const third = group(all, "3. Test cuts, in an offcut");
  const tests = element("div", { class: "shop-practice-buttons" }, third);
  button(tests, "Make a test cut", () => send({ press: "test" }));
  button(tests, "Measure it", () => send({ press: "measure" }));
  button(tests, "Try the fit", () => send({ press: "fit" }));

  const fourth = group(all, "4. The pair");
  const lay = () => send({ press: "lay", way: way.value, side: side.value });
  const side = chooser(fourth, "side", "This side", get("sides").map((name) => [name, name]), lay);
  const way = chooser(fourth, "way", "goes over the cutter", get("ways"), lay);
  button(element("div", { class: "shop-practice-buttons" }, fourth), "Cut the pair", () => send({ press: "cut" }));

  const next = element("div", { class: "shop-practice-buttons" }, work);
  let anew = false; // the first control can take the focus only once the kernel has answered
  for (const [text, press] of [["Cut another: a new sheet", "another"], ["A new saw", "saw"]]) {
    button(next, text, () => {
      anew = true;
      send({ press });
    });
  }

  const said = element("div", { class: "shop-exercise-said", role: "status" }, seen);
  const picture = element("div", { class: "shop-exercise-picture" }, seen);
  const log = element("div", {}, box);
  const result = element("div", { class: "shop-practice-result", role: "region", "aria-label": "What came of it" }, box);
  const known = element("details", {}, box);
  element("summary", {}, known, "What this bench knows and what it leaves out");
  const knows = element("div", { class: "shop-practice-columns" }, known);

  function showSaid() {
    clearTimeout(waiting);
    delete said.dataset.kind;
    said.replaceChildren();
    if (get("said").text) element("p", {}, said, get("said").text);
    if (anew) setTimeout(() => measureSheet.focus()); // after all else that came with it is shown
    anew = false;
  }

  function showFields() {
    for (const { name, typed, stands, fault } of get("fields")) {
      const one = fields.get(name);
      if (document.activeElement !== one.field || !typed) one.field.value = one.sent = typed;
      one.stands.textContent = stands;
      one.stands.hidden = !stands;
      writeWhole(one.fault, fault);
      one.field.setAttribute("aria-invalid", String(fault !== ""));
    }
  }

  function showChosen() {
    sets.value = get("chosen");
    down.checked = get("pressed");
    side.value = get("side");
    way.value = get("way");
  }

  function text(node, name) {
    return () => {
      writeWhole(node, get(name));
      node.hidden = get(name) === "";
    };
  }

  function showOther() {
    writeWhole(other, `Put on instead: ${get("other")}`);
    other.hidden = get("other") === "";
  }

  function showPicture() {
    picture.replaceChildren();
    if (get("picture").source) image(picture, get("picture"));
  }

  function showLog() {
    log.replaceChildren();
    if (get("log").rows.length) table(log, "Log, to copy onto the practice sheet", get("log"));
  }

  function showModel() {
    knows.replaceChildren();
    for (const part of get("model")) section(knows, part);
  }

  function showResult() {
    const { heading, good, pictures, sections, fits } = get("result");
    const held = all.contains(document.activeElement);
    result.replaceChildren();
    result.hidden = !heading;
    for (const node of all.querySelectorAll("fieldset")) node.disabled = Boolean(heading);
    if (!heading) return;
    result.dataset.kind = good ? "good" : "mend";
    const top = element("p", { class: "shop-exercise-title", tabindex: "-1" }, result);
    element("span", { "aria-hidden": "true" }, top, `${GOOD[good]} `);
    element("span", {}, top, heading);
    const drawn = element("div", { class: "shop-practice-pictures" }, result);
    for (const each of pictures) image(drawn, each);
    const told = element("div", { class: "shop-practice-columns" }, result);
    for (const part of sections) section(told, part);
    table(result, "The fits", fits);
    if (held) top.focus(); // what was pressed is no longer there to press
  }

  // JupyterLab would take letters and Enter for itself; saving stays its own.
  box.addEventListener("keydown", (event) => {
    if (!((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s")) event.stopPropagation();
    const typed = [...fields.values()].find((one) => one.field === event.target);
    if (event.key === "Enter" && typed) {
      event.preventDefault();
      typed.take(true);
    }
  });

  const follow = [
    ["change:said", showSaid], ["change:fields", showFields], ["change:sheet", text(sheet, "sheet")],
    ["change:task", text(task, "task")], ["change:which", text(which, "which")],
    ["change:arranged", text(arranged, "arranged")], ["change:other", showOther],
    ["change:chosen change:pressed change:side change:way", showChosen], ["change:picture", showPicture],
    ["change:log", showLog], ["change:model", showModel], ["change:result", showResult],
  ];
  for (const [name, act] of follow) {
    model.on(name, act);
    act();
  }
  return () => {
    clearTimeout(waiting);
    for (const [name, act] of follow) model.off(name, act);
  };
}

export default { render };
