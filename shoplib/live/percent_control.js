// One whole percentage, asked for with a slider and a box that always show the same value.

function render({ model, el }) {
  const low = model.get("low");
  const high = model.get("high");
  const root = document.createElement("div");
  root.className = "shop-length";
  const label = document.createElement("span");
  label.className = "shop-length-label";
  label.textContent = model.get("label");
  const slider = document.createElement("input");
  slider.type = "range";
  slider.className = "shop-length-slider";
  slider.setAttribute("aria-label", model.get("label"));
  const box = document.createElement("span");
  box.className = "shop-length-box";
  const text = document.createElement("input");
  text.type = "number";
  text.setAttribute("aria-label", `${model.get("label")}, percent`);
  for (const input of [slider, text]) Object.assign(input, { min: low, max: high, step: 1 });
  const unit = document.createElement("span");
  unit.textContent = "%";
  box.append(text, unit);
  root.append(label, box, slider);
  el.append(root);

  const show = () => {
    slider.value = model.get("value");
    slider.setAttribute("aria-valuetext", `${model.get("value")} %`);
    text.value = model.get("value");
  };
  const take = (value) => {
    const whole = Math.round(Number(value));
    if (value !== "" && whole >= low && whole <= high) {
      model.set("value", whole);
      model.save_changes();
    }
    show();
  };
  slider.addEventListener("input", () => take(slider.value));
  text.addEventListener("change", () => take(text.value));
  // JupyterLab would take the arrow keys and Enter for itself.
  root.addEventListener("keydown", (event) => {
    event.stopPropagation();
    if (event.key === "Enter") take(text.value);
  });
  model.on("change:value", show);
  show();
  return () => model.off("change:value", show);
}

export default { render };
