// The practice bench of the dado: cautions, controls in the order of the work, the last test cut, the log, and what
// came of it.

function render({ model, el }) {
  const id = `shop-practice-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-practice shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  cautions(box, get("cautions"));
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
  const sets = chooser(second, "set", "Cutters", [], () => send({ press: "set", name: sets.value }));
  const typedIn = { unit: get("unit"), word: get("unit_word") };
  const fields = new Map(get("fields").map((each) => [each.name, lengthRow(second, id, each, typedIn, send)]));
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
    for (const each of get("fields")) fields.get(each.name).show(each);
  }

  function showSets() {
    sets.replaceChildren();
    for (const name of get("sets")) element("option", { value: name }, sets, name);
    sets.value = get("chosen");
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
    const held = all.contains(document.activeElement);
    const done = get("result");
    result.replaceChildren();
    result.hidden = !done.heading;
    for (const node of all.querySelectorAll("fieldset")) node.disabled = Boolean(done.heading);
    if (!done.heading) return;
    const top = cameOfIt(result, done);
    table(result, "The fits", done.fits);
    if (held) top.focus(); // what was pressed is no longer there to press
  }

  keepKeys(box, fields);

  const follow = [
    ["change:said", showSaid], ["change:fields", showFields], ["change:sheet", text(sheet, "sheet")],
    ["change:task", text(task, "task")], ["change:which", text(which, "which")],
    ["change:arranged", text(arranged, "arranged")], ["change:other", showOther],
    ["change:sets", showSets], ["change:chosen change:pressed change:side change:way", showChosen], ["change:picture", showPicture],
    ["change:log", showLog], ["change:model", showModel], ["change:result", showResult],
  ];
  return followed(model, follow, () => clearTimeout(waiting));
}

export default { render };
