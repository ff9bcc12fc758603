// Makes elements; a null among what is inside is left out.
export const at = id => document.getElementById(id);

export const make = (tag, own = {}, ...inside) => {
  const made = Object.assign(document.createElement(tag), own);
  made.append(...inside.filter(i => i !== null && i !== undefined));
  return made;
};

export const button = (text, act, label) => {
  const made = make('button', { type: 'button', textContent: text });
  if (label) made.setAttribute('aria-label', label);
  made.addEventListener('click', act);
  return made;
};

/** An element of a drawing. */
export const shape = (kind, own, ...inside) => {
  const made = document.createElementNS('http://www.w3.org/2000/svg', kind);
  for (const [name, value] of Object.entries(own)) made.setAttribute(name, value);
  made.append(...inside);
  return made;
};

const signs = { unsafe: (x, y) => `M${x - 6},${y + 11}L${x},${y}L${x + 6},${y + 11}Z`, broken: (x, y) => `M${x - 5},${y + 1}h10v10h-10Z`, rough: (x, y) => `M${x - 6},${y + 6}L${x},${y}L${x + 6},${y + 6}L${x},${y + 12}Z` };

/** The sign of something that is found, its upper middle at a place of a drawing. */
export function foundAt(finding, x, y) {
  const title = shape('title', {});
  title.textContent = `${finding.move ? `move ${finding.move}: ` : ''}${finding.severity}, ${finding.rule}`;
  return shape('path', { class: `found-at ${finding.severity}`, d: signs[finding.severity](x, y) }, title);
}

/** Markup that the program has drawn. */
export const drawn = markup => {
  const body = new DOMParser().parseFromString(markup, 'text/html').body;
  return [...body.childNodes].map(n => document.importNode(n, true));
};

/** The letter of a key, also where Alt makes another sign of it. */
export const letter = e => (/^[a-z]$/i.test(e.key) ? e.key : e.code.replace(/^Key/, '')).toLowerCase();

export const many = (number, one, several = one + 's') => `${number} ${number === 1 ? one : several}`;
