// The practice bench of any joint: cautions, the scales to set, test joints, the log, and what came of the pair.

function render({ model, el }) {
  const id = `shop-practice-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-practice shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  cautions(box, get("cautions"));
  const which = element("p", { class: "shop-exercise-standing" }, box);
  const task = element("ul", { class: "shop-practice-task shop-practice-columns", "aria-label": "What is to be cut" }, box);

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
  const first = group(all, "1. The boards");
  const measureBoards = button(element("div", { class: "shop-practice-buttons" }, first), "Measure the boards", () => send({ press: "boards" }));
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
  const row = element("div", { class: "shop-practice-row" }, fourth);
  element("label", { for: `${id}-way` }, row, "How it is cut");
  const way = element("select", { id: `${id}-way` }, row);
  for (const [value, told] of get("ways")) element("option", { value }, way, told);
  way.addEventListener("change", () => send({ press: "lay", way: way.value }));
  button(element("div", { class: "shop-practice-buttons" }, fourth), "Cut the pair", () => send({ press: "cut" }));

  const next = element("div", { class: "shop-practice-buttons" }, work);
  let anew = false; // the first control can take the focus only once the kernel has answered
  for (const [text, press] of [["Cut another: new boards", "another"], ["Another machine", "machine"]]) {
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
    for (const line of get("said").lines) element("p", {}, said, line);
    if (anew) setTimeout(() => measureBoards.focus()); // after all else that came with it is shown
    anew = false;
  }

  function showTask() {
    task.replaceChildren();
    for (const line of get("task")) element("li", {}, task, line);
  }

  function showPicture() {
    picture.replaceChildren();
    if (get("picture").source) image(picture, get("picture"));
  }

  function showLog() {
    log.replaceChildren();
    if (get("log").rows.length) table(log, "Log of test joints, to copy onto the practice sheet", get("log"));
  }

  function showModel() {
    knows.replaceChildren();
    for (const part of get("model")) section(knows, part);
  }

  function showResult() {
    const done = get("result");
    const held = all.contains(document.activeElement);
    result.replaceChildren();
    result.hidden = !done.heading;
    for (const node of all.querySelectorAll("fieldset")) node.disabled = Boolean(done.heading);
    if (!done.heading) return;
    const top = cameOfIt(result, done);
    if (held) top.focus(); // what was pressed is no longer there to press
  }

  keepKeys(box, fields);
  return followed(model, [
    ["change:said", showSaid], ["change:task", showTask],
    ["change:fields", () => { for (const each of get("fields")) fields.get(each.name).show(each); }],
    ["change:boards", () => { writeWhole(boards, get("boards")); boards.hidden = get("boards") === ""; }],
    ["change:which", () => { which.textContent = get("which"); }],
    ["change:way", () => { way.value = get("way"); }],
    ["change:picture", showPicture], ["change:log", showLog], ["change:model", showModel],
    ["change:result", showResult],
  ], () => clearTimeout(waiting));
}

export default { render };
