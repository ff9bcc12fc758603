// Fields of the form over the brief.
import { make } from './make.js';

export const line = (label, ...inside) => make('div', { className: 'cast-line' }, make('span', { className: 'cast-label', textContent: label }), make('div', { className: 'cast-fields' }, ...inside.filter(i => i !== null)));

/** An object with another value for one of its fields; without that field where the value is empty. */
export const set = (object, name, value) => { const next = { ...object, [name]: value }; if (value === null || value === '') delete next[name]; return next; };

/** What somebody made of a base, on top of what it has become meanwhile: only what differs from the base is taken over. */
export function rebased(base, next, now) {
  if (JSON.stringify(base) === JSON.stringify(next)) return now;
  const all = [base, next, now];
  if (all.every(Array.isArray)) return all.every(o => o.length === base.length) ? next.map((_, i) => rebased(base[i], next[i], now[i])) : next;
  if (!all.every(o => o && typeof o === 'object' && !Array.isArray(o))) return next;
  return Object.fromEntries([...new Set([...Object.keys(now), ...Object.keys(next)])].map(k => [k, rebased(base[k], next[k], now[k])]).filter(([, v]) => v !== undefined));
}

/** One to write in, or a choice: words, or pairs of a value and how it reads. */
export function field(id, label, value, changed, kind = 'text', choices = null) {
  const input = choices ? make('select', {}, ...choices.map(c => make('option', { value: Array.isArray(c) ? c[0] : c, textContent: Array.isArray(c) ? c[1] : c }))) : make('input', { type: 'text', autocomplete: 'off', inputMode: kind });
  input.id = id;
  input.value = value ?? '';
  input.setAttribute('aria-label', label);
  input.addEventListener('change', () => changed(kind === 'decimal' ? input.value.trim() === '' ? null : Number(input.value.replace(',', '.')) : input.value));
  return input;
}

/** One to tick. */
export function tick(id, text, label, on, changed) {
  const input = make('input', { type: 'checkbox', id, checked: Boolean(on) });
  input.setAttribute('aria-label', label);
  input.addEventListener('change', () => changed(input.checked || null));
  return make('label', {}, input, text);
}
