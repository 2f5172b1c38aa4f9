// Laying a cut list out by hand: choose a part, choose where it goes, lay it; a free place can be pointed at too.

function render({ model, el }) {
  const id = `shop-layout-${Date.now().toString(36)}-${(made += 1)}`;
  const get = (name) => model.get(name);
  const box = element("section", { class: "shop-exercise shop-practice shop-layout shop-awake", "aria-labelledby": `${id}-title` }, el);
  element("p", { class: "shop-exercise-title", id: `${id}-title` }, box, get("title"));
  if (get("note")) element("p", { class: "shop-exercise-note" }, box, get("note"));
  element("p", {}, box, get("task"));
  const stage = element("div", { class: "shop-practice-stage" }, box);
  const work = element("div", {}, stage);
  const seen = element("div", { class: "shop-practice-seen" }, stage);
  const said = element("div", { class: "shop-exercise-said", role: "status" }, seen);
  const first = element("div", {}, seen);
  const result = element("div", { class: "shop-practice-result", role: "region", "aria-label": "What came of it" }, box);
  const others = element("div", { class: "shop-layout-others" }, box);
  const figures = element("div", {}, box);
  let waiting = 0;

  function send(content) {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      said.dataset.kind = "waiting";
      said.textContent = "Waiting for the kernel. If nothing comes: menu Run, then Run All Cells.";
    }, 1500);
    model.send(content);
  }

  const which = group(work, "1. Which part");
  /** One of several to choose from, its text to be written beside it. */
  function choice(parent, name, value, press) {
    const row = element("label", { class: "shop-layout-choice" }, parent);
    const radio = element("input", { type: "radio", name, value }, row);
    radio.addEventListener("change", press);
    return { radio, text: element("span", {}, row) };
  }

  const parts = get("parts").map((_, number) =>
    choice(which, `${id}-part`, String(number), () => send({ press: "part", part: number })));

  const there = group(work, "2. Where it goes");
  const places = element("div", { role: "radiogroup", "aria-label": "Place" }, there);
  const tick = element("label", { class: "shop-practice-tick" }, element("div", { class: "shop-practice-row" }, there));
  const turned = element("input", { type: "checkbox" }, tick);
  element("span", {}, tick, "Turned: its grain across the sheet");
  turned.addEventListener("change", () => send({ press: "turn", turned: turned.checked }));
  const way = chooser(there, `${id}-way`, "First cut", get("ways"), () => send({ press: "way", way: way.value }));
  const lays = element("div", { class: "shop-practice-buttons" }, there);
  button(lays, "Lay it there", () => send({ press: "lay" }));
  button(lays, "Lay as many as the strip holds", () => send({ press: "along" }));
  element("p", { class: "shop-layout-hint" }, there, "Or point at a free place in the drawing: the part is laid there.");

  const strip = element("details", {}, there);
  element("summary", {}, strip, "Cut a strip off that place first");
  const kind = chooser(strip, `${id}-kind`, "Cut", get("kinds"), () => {});
  const size = lengthRow(strip, id, { name: "strip", label: "Width of the strip" },
    { unit: get("unit"), word: get("unit_word") }, () => {});
  button(element("div", { class: "shop-practice-buttons" }, strip), "Cut the strip off",
    () => send({ press: "strip", way: kind.value, text: size.field.value }));

  const back = element("div", { class: "shop-practice-buttons" }, work);
  const takeBack = button(back, "Take the last move back", () => send({ press: "back" }));
  const again = button(back, "Start again", () => send({ press: "again" }));
  const best = button(back, "Show one of the best", () => send({ press: "best" }));
  const mine = button(back, "Back to my layout", () => send({ press: "mine" }));
  const retry = button(back, "Let me try again", () => send({ press: "again" }));

  const saw = group(work, "Saw and sheet");
  const fields = new Map(get("fields").map((each) => [
    each.name, lengthRow(saw, id, each, { unit: get("unit"), word: get("unit_word") }, send),
  ]));
  size.take = (entered) => { // nothing is cut because the field was left
    if (entered) send({ press: "strip", way: kind.value, text: size.field.value });
  };

  /** A button that is about to go hands its focus on to the one that comes in its place. */
  function swap(goes, comes) {
    const held = document.activeElement === goes;
    goes.hidden = true;
    comes.hidden = false;
    if (held) comes.focus();
  }

  function showBest() {
    const shown = get("best_shown");
    if (shown) swap(best, mine);
    const anew = document.activeElement === retry;
    if (!shown) swap(mine, best);
    retry.hidden = !shown;
    takeBack.hidden = again.hidden = shown;
    for (const node of [which, there, saw]) node.disabled = shown;
    if (anew && !shown) (parts.find(({ radio }) => radio.checked) || parts[0]).radio.focus();
  }

  function showPlaces() {
    const held = places.contains(document.activeElement);
    places.replaceChildren();
    for (const [value, text] of get("places")) {
      const radio = choice(places, `${id}-place`, value, () => send({ press: "place", place: value })).radio;
      writeWhole(radio.nextSibling, text);
    }
    showPlace();
    if (held) (places.querySelector("input:checked") || parts[0].radio).focus();
  }

  function showPlace() {
    for (const radio of places.querySelectorAll("input")) radio.checked = radio.value === get("place");
  }

  function showChoice() {
    get("parts").forEach(({ text, left }, number) => {
      writeWhole(parts[number].text, text);
      parts[number].radio.checked = number === get("part");
      parts[number].text.parentNode.dataset.left = left ? "some" : "none";
    });
    turned.checked = get("turned");
    way.value = get("way");
  }

  function showPictures() {
    const [next, ...more] = get("pictures");
    drawIn(first, next ? [next] : []);
    drawIn(others, more);
  }

  function drawIn(parent, drawn) {
    while (parent.children.length > drawn.length) parent.lastChild.remove();
    drawn.forEach(({ svg, alt }, number) => {
      const node = parent.children[number] || element("div", { class: "shop-layout-picture", role: "img" }, parent);
      if (node.shown !== svg) node.innerHTML = node.shown = svg; // only a drawing that changed is replaced
      node.setAttribute("aria-label", alt);
    });
  }

  box.addEventListener("click", (event) => {
    const name = event.target.closest?.(".shop-layout-picture path")?.querySelector("title")?.textContent;
    if (name && !which.disabled) send({ press: "point", name });
  });

  function showResult() {
    const { heading, good, lines } = get("result");
    result.replaceChildren();
    result.hidden = !heading;
    if (!heading) return;
    result.dataset.kind = good ? "good" : "mend";
    const top = element("p", { class: "shop-exercise-title" }, result);
    element("span", { "aria-hidden": "true" }, top, `${GOOD[good]} `);
    element("span", {}, top, heading);
    const list = element("ul", {}, result);
    for (const line of lines) element("li", {}, list, line);
  }

  function showFigures() {
    figures.replaceChildren();
    table(figures, "How it stands", get("figures"));
  }

  function showSaid() {
    clearTimeout(waiting);
    delete said.dataset.kind;
    said.replaceChildren();
    for (const line of get("said").lines) element("p", {}, said, line);
  }

  keepKeys(box, new Map([...fields, ["strip", size]]));
  return followed(model, [
    ["change:places", showPlaces], ["change:place", showPlace],
    ["change:parts", showChoice], ["change:part", showChoice], ["change:turned", showChoice], ["change:way", showChoice],
    ["change:fields", () => { for (const each of get("fields")) fields.get(each.name).show(each); }],
    ["change:strip", () => { size.show(get("strip")); }],
    ["change:pictures", showPictures], ["change:figures", showFigures],
    ["change:best_shown", showBest], ["change:result", showResult],
    ["change:said", showSaid],
  ], () => clearTimeout(waiting));
}

export default { render };
