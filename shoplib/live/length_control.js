// One length, asked for with a slider and a text box that always show the same value.
//
// Lengths are whole ticks (1/80 000 mm); every sum below stays under 2^53, so it is exact.
// The box reads the plain ways of writing a length itself. What it does not know, or what lies
// outside the limits, goes to the kernel, which owns the reader and its sentences.

const TICKS = { in: 2032000, mm: 80000 };
const FINEST = { in: TICKS.in / 2000, mm: TICKS.mm / 100 };
const LEAST_REST = { in: TICKS.in / 500, mm: TICKS.mm / 20 };
const SHORTEST = TICKS.mm / 100; // below this the kernel has something to say
const WORDS = { in: "inches", mm: "millimetres" };
const UNIT_NAMES = {
  in: "in", inch: "in", inches: "in", '"': "in", "\u2033": "in", "\u201d": "in", mm: "mm",
};

/** Shortest decimal of numerator / denominator where it ends, without trailing zeros. */
function decimal(numerator, denominator) {
  let digits = 0;
  let scale = 1;
  while ((numerator * scale) % denominator !== 0) {
    scale *= 10;
    digits += 1;
  }
  return ((numerator * scale) / denominator / scale).toFixed(digits);
}

/** Shortest decimal that reads back to the same tick. */
function shortestDecimal(ticks, size) {
  for (let digits = 1, scale = 10; ; digits += 1, scale *= 10) {
    const near = Math.round((ticks * scale) / size);
    if (Math.round((near * size) / scale) === ticks) return (near / scale).toFixed(digits);
  }
}

function fraction(steps, parts) {
  let whole = Math.floor(steps / parts);
  let top = steps % parts;
  if (top === 0) return String(whole);
  while (top % 2 === 0) {
    top /= 2;
    parts /= 2;
  }
  return whole ? `${whole} ${top}/${parts}` : `${top}/${parts}`;
}

function toStep(ticks, step) {
  return Math.round(ticks / step) * step;
}

/** A measured thickness is a decimal, never a shop fraction, and nothing finer than a caliper reads. */
export function writeMeasured(ticks, unit, named) {
  const shown = toStep(ticks, FINEST[unit]) || ticks;
  const number = shortestDecimal(shown, TICKS[unit]).replace(/\.0$/, "");
  return named ? `${number} ${unit}` : number;
}

/** The text of a length as write_brief of the measure room has it; `named` puts the unit behind it. */
export function write(ticks, unit, finest, named) {
  if (ticks < finest) return writeMeasured(ticks, unit, named);
  const size = TICKS[unit];
  const steps = toStep(ticks, finest) / finest;
  const rest = ticks - steps * finest;
  const number = unit === "in" ? fraction(steps, size / finest) : decimal(steps * finest, size);
  const text = named ? `${number} ${unit}` : number;
  if (Math.abs(rest) < LEAST_REST[unit]) return text;
  const shown = shortestDecimal(Math.abs(toStep(rest, FINEST[unit])), size);
  return `${text} (${rest < 0 ? "-" : "+"}${shown} ${unit})`;
}

/** Ticks of a plainly written length, or null where the kernel has to read it. */
export function read(text, unit) {
  const plain = text.trim().toLowerCase();
  const parts = plain.match(/^(?:(\d{1,5})(?:\s+|-))?(\d{1,2})\/(\d{1,2})\s*([a-z"\u2033\u201d]*)$/);
  if (parts) {
    const size = TICKS[parts[4] ? UNIT_NAMES[parts[4]] : unit];
    const [whole, top, bottom] = [Number(parts[1] || 0), Number(parts[2]), Number(parts[3])];
    if (size !== TICKS.in || ![2, 4, 8, 16, 32, 64].includes(bottom) || top === 0 || top >= bottom) return null;
    return whole * size + (top * size) / bottom;
  }
  const number = plain.match(/^(\d{1,5})(?:\.(\d{1,4}))?\s*([a-z"\u2033\u201d]*)$/);
  if (!number) return null;
  const size = TICKS[number[3] ? UNIT_NAMES[number[3]] : unit];
  if (!size) return null;
  const digits = number[2] || "";
  const exact = Number(number[1] + digits) * size;
  const scale = 10 ** digits.length;
  if (exact % scale !== 0) return null;
  const ticks = exact / scale;
  return ticks === 0 || ticks >= SHORTEST ? ticks : null;
}

function element(tag, attributes, parent) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) node.setAttribute(name, value);
  parent.append(node);
  return node;
}

function render({ model, el }) {
  const id = `shop-length-${Math.random().toString(36).slice(2)}`; // every control has a module of its own
  el.classList.add("shop-length");
  const label = element("label", { class: "shop-length-label", for: id }, el);
  const slider = element("input", { type: "range", id, step: "any", class: "shop-length-slider" }, el);
  const holder = element("span", { class: "shop-length-box" }, el);
  const box = element("input", {
    type: "text", autocomplete: "off", spellcheck: "false", "aria-describedby": `${id}-says`,
  }, holder);
  const unitText = element("span", { "aria-hidden": "true" }, holder);
  const says = element("span", { class: "shop-length-says", id: `${id}-says`, role: "status" }, el);
  let typing = false; // the box holds text that is not the value: leave it alone
  let waiting = 0;

  const get = (name) => model.get(name);
  const clamp = (ticks) => Math.min(get("high"), Math.max(get("low"), ticks));

  const written = (named) => (get("measured")
    ? writeMeasured(get("ticks"), get("unit"), named)
    : write(get("ticks"), get("unit"), get("finest"), named));

  function complain(sentence) {
    clearTimeout(waiting);
    says.textContent = sentence;
    box.setAttribute("aria-invalid", sentence ? "true" : "false");
  }

  function showValue() {
    slider.min = get("low");
    slider.max = get("high");
    slider.value = get("ticks");
    slider.setAttribute("aria-valuetext", written(true));
    if (!typing) {
      box.value = written(false);
      box.size = Math.max(9, box.value.length); // room for a rest in brackets
    }
  }

  function showRest() {
    label.textContent = get("label");
    unitText.textContent = get("unit");
    box.setAttribute("aria-label", `${get("label")}, typed in ${WORDS[get("unit")]}`);
    slider.disabled = box.disabled = !get("enabled");
    showValue();
  }

  function setTicks(ticks) {
    typing = false;
    complain("");
    if (ticks !== get("ticks")) {
      model.set("ticks", ticks);
      model.save_changes();
    }
    showValue();
  }

  function move(way, distance) {
    // A value between two steps first goes back to the step behind it, so that moves land on steps.
    const steps = get("ticks") / get("step");
    const from = (way > 0 ? Math.floor(steps) : Math.ceil(steps)) * get("step");
    setTicks(clamp(from + way * distance));
  }

  function take() {
    if (!typing) return;
    if (box.value.trim() === written(false)) { // what is shown may be rounded; the value is not
      typing = false;
      complain("");
      return;
    }
    const ticks = read(box.value, get("unit"));
    if (ticks !== null && ticks >= get("low") && ticks <= get("high")) {
      setTicks(ticks);
      return;
    }
    model.send({ read: box.value });
    waiting = setTimeout(() => { says.textContent = "Waiting for the kernel to read this."; }, 700);
  }

  function onAnswer(answer) {
    if (answer.do === "focus") slider.focus();
    if (answer.read === undefined || answer.read !== box.value) return; // typed on since
    if (answer.problem) {
      complain(answer.problem);
    } else {
      typing = false;
      complain("");
      showValue();
    }
  }

  function onKey(event) {
    // JupyterLab would take arrows, Enter and letters for itself; saving stays its own.
    if (!((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "s")) event.stopPropagation();
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const inBox = event.target === box;
    const moves = {
      ArrowUp: () => move(1, get("step")), ArrowDown: () => move(-1, get("step")),
      PageUp: () => move(1, get("page")), PageDown: () => move(-1, get("page")),
    };
    if (inBox) {
      moves.Enter = take;
      moves.Escape = () => { typing = false; complain(""); showValue(); };
    } else {
      Object.assign(moves, {
        ArrowRight: moves.ArrowUp, ArrowLeft: moves.ArrowDown,
        Home: () => setTicks(get("low")), End: () => setTicks(get("high")), Enter: () => {},
      });
    }
    if (!moves[event.key]) return;
    event.preventDefault();
    moves[event.key]();
  }

  slider.addEventListener("input", () => {
    const step = get("step");
    setTicks(clamp(Math.round(Number(slider.value) / step) * step));
  });
  box.addEventListener("input", () => { typing = true; complain(""); });
  box.addEventListener("change", take);
  el.addEventListener("keydown", onKey);
  model.on("change:ticks change:low change:high", showValue);
  model.on("change:label change:unit change:finest change:enabled", showRest);
  model.on("msg:custom", onAnswer);
  showRest();
  return () => {
    clearTimeout(waiting);
    model.off("change:ticks change:low change:high", showValue);
    model.off("change:label change:unit change:finest change:enabled", showRest);
    model.off("msg:custom", onAnswer);
  };
}

export default { render };
