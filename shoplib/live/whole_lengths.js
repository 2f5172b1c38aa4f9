// Stands before the script of a widget that writes sentences: a line breaks between lengths, never inside one.
const WHOLE_LENGTH = /\(?[+-]?\d[\d./]*(?: \d+\/\d+)? (?:in|mm)\b\)?/g;

/** Writes text into a node, each length in a span that stays on one line; the text itself is not changed. */
function writeWhole(node, text) {
  node.replaceChildren();
  let at = 0;
  for (const found of text.matchAll(WHOLE_LENGTH)) {
    node.append(text.slice(at, found.index));
    const whole = document.createElement("span");
    whole.className = "shop-whole";
    whole.textContent = found[0];
    node.append(whole);
    at = found.index + found[0].length;
  }
  node.append(text.slice(at));
}

