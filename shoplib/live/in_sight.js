// Keeps what a move changes in sight. Beside the controls stand the first drawing and, whole, what else there is
// room for under it; the rest stands below, in full width. Nothing is cut through. On a narrow page the drawing
// lies above the controls and leaves them their part of what is seen of the notebook.

const LEAST = 0.7; // of the height: no drawing beside the controls is made smaller than this by words under it
const ABOVE = [0.5, 0.7]; // of the height, for a drawing above the controls: half, more only to keep letters readable
const READABLE = 0.6; // of the size of the controls' letters
const GAP = 8;
const PAUSE = 120; // milliseconds

function render({ el }) {
  el.style.display = "none";
  let watcher = null;
  let waiting = 0;

  function begin(panel) {
    const one = (selector) => panel.querySelector(selector);
    const scroller = panel.closest(".jp-WindowedPanel-outer") ?? document.documentElement;
    const [stage, column] = [one(".shop-panel-stage"), one(".shop-panel-picture")];
    const [picture, working] = [column.querySelector(".shop-picture"), column.querySelector(".shop-working")];
    const beside = one(".shop-panel-beside");
    const under = [...panel.querySelectorAll(".shop-panel-under")];
    const height = (node) => node.getBoundingClientRect().height;
    const set = (name, pixels) => panel.style.setProperty(name, `${Math.floor(pixels)}px`);

    /** Findings and further drawings, in one of the places where they can stand. */
    const parts = (...places) => places.flatMap((place) => [
      ...place.querySelectorAll(".widget-html, .shop-picture-figure"),
    ]);

    /** How high a drawing must be for its smallest letters to be read. */
    function readable(svg) {
      const letters = [...(svg?.querySelectorAll("text") ?? [])].map((text) => parseFloat(getComputedStyle(text).fontSize));
      const asked = READABLE * parseFloat(getComputedStyle(one(".shop-panel-controls label, .shop-heading")).fontSize);
      return letters.length ? (asked / Math.min(...letters)) * svg.viewBox.baseVal.height : 0;
    }

    function divide() {
      beside.classList.add("shop-measuring");
      const [top, room] = [column.getBoundingClientRect().top, scroller.clientHeight];
      const there = parts(beside);
      const over = there.findIndex((part) => part.getBoundingClientRect().bottom - top > room);
      beside.classList.remove("shop-measuring");
      return over < 0 ? there.length : over;
    }

    function show(fitting) {
      parts(beside).forEach((part, index) => part.classList.toggle("shop-elsewhere", index >= fitting));
      parts(...under).forEach((part, index) => part.classList.toggle("shop-elsewhere", index < fitting));
    }

    /** ipywidgets writes choices with hard spaces; with plain ones a long choice goes on to a second line. */
    function soften() {
      for (const option of panel.querySelectorAll("option")) {
        if (option.text.includes("\u00a0")) option.textContent = option.textContent.replaceAll("\u00a0", " ");
      }
    }

    function fit() {
      soften();
      const room = scroller.clientHeight;
      if (!room || !panel.offsetWidth) return; // not on the page now
      set("--shop-room", room - 5 * GAP);
      const figure = picture.querySelector(".shop-picture-figure");
      const words = height(picture) - (figure ? height(figure) : 0);
      if (getComputedStyle(stage).display === "flex") { // the narrow page: see panel.css
        const [half, most] = ABOVE.map((share) => share * room - words);
        set("--shop-drawing", Math.min(most, Math.max(half, readable(figure?.querySelector("svg")))));
        set("--shop-pinned", height(picture));
        panel.style.removeProperty("--shop-working");
        show(0);
        return;
      }
      set("--shop-pinned", 0);
      set("--shop-working", (1 - LEAST) * room - words - 2 * GAP);
      set("--shop-drawing", Math.max(LEAST * room, room - words - height(working) - 2 * GAP));
      show(divide());
    }

    // A window of another size is seen to at once. While a slider moves, measuring would hold up the drawing: it
    // waits until the moves pause.
    const seenOf = () => `${scroller.clientWidth} ${scroller.clientHeight} ${panel.offsetWidth}`;
    let seen = seenOf();
    watcher = new ResizeObserver(() => {
      const before = seen;
      seen = seenOf();
      clearTimeout(waiting);
      if (seen === before) waiting = setTimeout(fit, PAUSE);
      else fit();
    });
    for (const node of [
      scroller, panel, picture, picture.querySelector(".shop-picture-says"), working, ...beside.children,
    ]) watcher.observe(node);
    fit();
  }

  /** The parts of the panel come to the page one after another. */
  function wait(tries = 200) {
    const panel = el.isConnected ? el.closest(".shop-panel") : null;
    const there = panel && [".shop-working", ".shop-panel-beside .shop-picture", ".shop-panel-under .shop-picture"]
      .every((each) => panel.querySelector(each));
    if (there) begin(panel);
    else if (tries) requestAnimationFrame(() => wait(tries - 1));
  }

  wait();
  return () => {
    clearTimeout(waiting);
    watcher?.disconnect();
  };
}

export default { render };
