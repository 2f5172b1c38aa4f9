// Stands before the script of a practice bench: what the benches of all joints are built from.
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

/** A table; where the page is narrow each row is a list of its cells, each after the head of its column.
 *
 * The roles are written out, because a browser forgets those of a table that is laid out as blocks.
 */
function table(parent, caption, { head, rows }) {
  const wide = element("div", { class: "shop-practice-wide", role: "region", tabindex: "0", "aria-label": caption }, parent);
  const node = element("table", { class: "shop-practice-table", role: "table" }, wide);
  element("caption", {}, node, caption);
  const top = element("tr", { role: "row" }, element("thead", { role: "rowgroup" }, node));
  for (const cell of head) element("th", { scope: "col", role: "columnheader" }, top, cell);
  const body = element("tbody", { role: "rowgroup" }, node);
  for (const cells of rows) {
    const row = element("tr", { role: "row" }, body);
    cells.forEach((cell, number) => {
      const kind = number ? ["td", { role: "cell" }] : ["th", { scope: "row", role: "rowheader" }];
      element("span", {}, element(kind[0], { ...kind[1], "data-head": head[number] }, row), cell);
    });
  }
}

/** The cautions: what every hand needs first in sight, all of them in a fold directly below. */
function cautions(parent, { heading, first, all }) {
  const warned = element("div", { class: "shop-practice-cautions", role: "group", "aria-label": "Cautions" }, parent);
  element("p", { class: "shop-exercise-heading" }, warned, `\u25B2 ${heading}`);
  const list = element("ul", { class: "shop-practice-columns" }, warned);
  for (const line of first) element("li", {}, list, line);
  const fold = element("details", {}, warned);
  element("summary", {}, fold, `All ${all.reduce((count, part) => count + part.lines.length, 0)} cautions`);
  const columns = element("div", { class: "shop-practice-columns" }, fold);
  for (const part of all) section(columns, part);
}

/** A row with a text field: `take` sends what is typed when it is left, or at Enter. */
function lengthRow(parent, id, { name, label }, { unit, word }, send) {
  const row = element("div", { class: "shop-practice-row" }, parent);
  element("label", { for: `${id}-${name}` }, row, label);
  const cell = element("span", { class: "shop-practice-cell" }, row);
  const holder = element("span", { class: "shop-exercise-field" }, cell);
  const field = element("input", {
    type: "text", id: `${id}-${name}`, autocomplete: "off", spellcheck: "false",
    "aria-label": `${label}, typed in ${word}`, "aria-describedby": `${id}-${name}-stands ${id}-${name}-fault`,
  }, holder);
  element("span", { "aria-hidden": "true" }, holder, unit);
  const stands = element("span", { id: `${id}-${name}-stands` }, cell);
  const fault = element("span", { class: "shop-practice-fault", id: `${id}-${name}-fault` }, row);
  const one = { field, stands, fault, sent: "" };
  one.take = (again) => {
    if (!again && field.value === one.sent) return; // leaving the field after Enter
    one.sent = field.value;
    send({ press: "enter", name, text: field.value });
  };
  one.show = (told) => {
    if (document.activeElement !== field || !told.typed) field.value = one.sent = told.typed;
    stands.textContent = told.stands;
    stands.hidden = !told.stands;
    writeWhole(fault, told.fault);
    field.setAttribute("aria-invalid", String(told.fault !== ""));
  };
  field.addEventListener("change", () => one.take(false));
  return one;
}

/** JupyterLab would take letters and Enter for itself; saving stays its own. */
function keepKeys(box, fields) {
  box.addEventListener("keydown", (event) => {
    if (!((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s")) event.stopPropagation();
    const typed = [...fields.values()].find((one) => one.field === event.target);
    if (event.key === "Enter" && typed) {
      event.preventDefault();
      typed.take(true);
    }
  });
}

/** What came of the pair: a heading that says whether it is good, pictures, and sentences. */
function cameOfIt(result, { heading, good, pictures, sections }) {
  result.dataset.kind = good ? "good" : "mend";
  const top = element("p", { class: "shop-exercise-title", tabindex: "-1" }, result);
  element("span", { "aria-hidden": "true" }, top, `${GOOD[good]} `);
  element("span", {}, top, heading);
  const drawn = element("div", { class: "shop-practice-pictures" }, result);
  for (const each of pictures) image(drawn, each);
  const told = element("div", { class: "shop-practice-columns" }, result);
  for (const part of sections) section(told, part);
  return top;
}

/** The head of a bench: its title, a note, and the cautions before all else. */
function begun(model, el) {
  const id = `shop-practice-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-practice shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  cautions(box, get("cautions"));
  return { id, get, box };
}

/** Where the work is done, and where it is seen: `all` holds what is done before the pair is cut.
 *
 * `next` are the buttons that begin anew, each its text and what it sends; `said` gives the lines of an answer, `more`
 * adds to the result. `shows` follows the traits that every bench has.
 */
function staged(model, { get, box }, { next, caption, said: lines, more = () => {} }) {
  const stage = element("div", { class: "shop-practice-stage" }, box);
  const work = element("div", {}, stage);
  const seen = element("div", { class: "shop-practice-seen" }, stage);
  const all = element("div", {}, work);
  let waiting = 0;
  let anew = false; // the first control can take the focus only once the kernel has answered

  function send(content) {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      said.dataset.kind = "waiting";
      said.textContent = "Waiting for the kernel. If nothing comes: menu Run, then Run All Cells.";
    }, 1500);
    model.send(content);
  }

  const again = element("div", { class: "shop-practice-buttons" }, work);
  for (const [text, press] of next) {
    button(again, text, () => {
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
    for (const line of lines(get("said"))) element("p", {}, said, line);
    if (anew) setTimeout(() => all.querySelector("button").focus()); // after all else that came with it is shown
    anew = false;
  }

  function showPicture() {
    picture.replaceChildren();
    if (get("picture").source) image(picture, get("picture"));
  }

  function showLog() {
    log.replaceChildren();
    if (get("log").rows.length) table(log, caption, get("log"));
  }

  function showModel() {
    knows.replaceChildren();
    for (const part of get("model")) section(knows, part);
  }

  function showResult() {
    const held = all.contains(document.activeElement);
    const done = get("result");
    result.replaceChildren();
    result.hidden = !done.heading;
    for (const node of all.querySelectorAll("fieldset")) node.disabled = Boolean(done.heading);
    if (!done.heading) return;
    const top = cameOfIt(result, done);
    more(result, done);
    if (held) top.focus(); // what was pressed is no longer there to press
  }

  const shows = [
    ["change:said", showSaid], ["change:picture", showPicture], ["change:log", showLog], ["change:model", showModel],
    ["change:result", showResult],
  ];
  return { all, send, shows, end: () => clearTimeout(waiting) };
}

/** A row with a list to choose from: each of `options` is a value and its text. */
function chooser(parent, id, text, options, press) {
  const row = element("div", { class: "shop-practice-row" }, parent);
  element("label", { for: id }, row, text);
  const list = element("select", { id }, row);
  for (const [value, told] of options) element("option", { value }, list, told);
  list.addEventListener("change", press);
  return list;
}

/** Follows the traits of a model as long as the bench is shown. */
function followed(model, follow, end) {
  for (const [name, act] of follow) {
    model.on(name, act);
    act();
  }
  return () => {
    end();
    for (const [name, act] of follow) model.off(name, act);
  };
}

