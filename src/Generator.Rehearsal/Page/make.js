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

/** Markup that the program has drawn. */
export const drawn = markup => {
  const body = new DOMParser().parseFromString(markup, 'text/html').body;
  return [...body.childNodes].map(n => document.importNode(n, true));
};

/** The letter of a key, also where Alt makes another sign of it. */
export const letter = e => (/^[a-z]$/i.test(e.key) ? e.key : e.code.replace(/^Key/, '')).toLowerCase();

export const many = (number, one, several = one + 's') => `${number} ${number === 1 ? one : several}`;
