// The practice bench of the dado: cautions, controls in the order of the work, the last test cut, the log, and what
// came of it.

function render({ model, el }) {
  const bench = begun(model, el);
  const { id, get, box } = bench;
  const task = element("p", { id: `${id}-task` }, box);
  const which = element("p", { class: "shop-exercise-standing" }, box);
  const { all, send, shows, end } = staged(model, bench, {
    next: [["Cut another: a new sheet", "another"], ["A new saw", "saw"]],
    caption: "Log, to copy onto the practice sheet",
    said: (told) => (told.text ? [told.text] : []),
    more: (result, done) => table(result, "The fits", done.fits),
  });

  const first = group(all, "1. The sheet");
  button(element("div", { class: "shop-practice-buttons" }, first), "Measure the sheet", () => send({ press: "sheet" }));
  const sheet = element("p", {}, first);

  const second = group(all, "2. The saw");
  const sets = chooser(second, `${id}-set`, "Cutters", [], () => send({ press: "set", name: sets.value }));
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
  const side = chooser(fourth, `${id}-side`, "This side", get("sides").map((name) => [name, name]), lay);
  const way = chooser(fourth, `${id}-way`, "goes over the cutter", get("ways"), lay);
  button(element("div", { class: "shop-practice-buttons" }, fourth), "Cut the pair", () => send({ press: "cut" }));

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

  keepKeys(box, fields);
  return followed(model, [
    ["change:fields", showFields], ["change:sheet", text(sheet, "sheet")], ["change:task", text(task, "task")],
    ["change:which", text(which, "which")], ["change:arranged", text(arranged, "arranged")],
    ["change:other", showOther], ["change:sets", showSets],
    ["change:chosen change:pressed change:side change:way", showChosen], ...shows,
  ], end);
}

export default { render };
