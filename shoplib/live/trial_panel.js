// The practice bench of any joint: cautions, the scales to set, test joints, the log, and what came of the pair.

function render({ model, el }) {
  const bench = begun(model, el);
  const { id, get, box } = bench;
  const which = element("p", { class: "shop-exercise-standing" }, box);
  const task = element("ul", { class: "shop-practice-task shop-practice-columns", "aria-label": "What is to be cut" }, box);
  const { all, send, shows, end } = staged(model, bench, {
    next: [["Cut another: new boards", "another"], ["Another machine", "machine"]],
    caption: "Log of test joints, to copy onto the practice sheet",
    said: (told) => told.lines,
  });

  const first = group(all, "1. The boards");
  button(element("div", { class: "shop-practice-buttons" }, first), "Measure the boards", () => send({ press: "boards" }));
  const boards = element("p", {}, first);

  const second = group(all, "2. What is set");
  const fields = new Map(get("fields").map((each) => [
    each.name, lengthRow(second, id, each, { unit: each.unit, word: each.word }, send),
  ]));

  const third = group(all, "3. Test joints, in offcuts");
  const tests = element("div", { class: "shop-practice-buttons" }, third);
  button(tests, "Cut a test joint", () => send({ press: "test" }));
  button(tests, "Measure it", () => send({ press: "measure" }));
  button(tests, "Put it together", () => send({ press: "fit" }));

  const fourth = group(all, "4. The pair");
  const way = chooser(fourth, `${id}-way`, "How it is cut", get("ways"), () => send({ press: "lay", way: way.value }));
  button(element("div", { class: "shop-practice-buttons" }, fourth), "Cut the pair", () => send({ press: "cut" }));

  function showTask() {
    task.replaceChildren();
    for (const line of get("task")) element("li", {}, task, line);
  }

  keepKeys(box, fields);
  return followed(model, [
    ["change:task", showTask],
    ["change:fields", () => { for (const each of get("fields")) fields.get(each.name).show(each); }],
    ["change:boards", () => { writeWhole(boards, get("boards")); boards.hidden = get("boards") === ""; }],
    ["change:which", () => { which.textContent = get("which"); }],
    ["change:way", () => { way.value = get("way"); }],
    ...shows,
  ], end);
}

export default { render };
