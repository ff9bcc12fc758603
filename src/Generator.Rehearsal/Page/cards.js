// What is offered beside the fight, as cards: what is different, in figures and words; seen on floor and time line before one is taken.
import { call } from './talk.js';
import { at, make, button, drawn, many } from './make.js';
import { watch } from './chosen.js';
import { curve } from './curve.js';

const longest = 12;
let hooks;
let state;
let shown = '';
let seen = -1;
let began = null;
let clock = 0;
let laid = [];

export function start(given) {
  hooks = given;
  at('leave').addEventListener('click', async () => {
    const leaves = !state.offers?.running;
    if (await hooks.ask(leaves ? 'leave' : 'stop') && leaves) hooks.back();
  });
  watch(() => look(-1));
}

export function show(next) {
  state = next;
  const offers = next.offers;
  at('offer').hidden = !offers;
  if (offers?.running) { began ??= performance.now(); clock ||= setInterval(works, 500); } else { began = null; clearInterval(clock); clock = 0; }
  at('offer-time').hidden = !offers?.running;
  if (!offers) { shown = ''; laid = []; at('cards').replaceChildren(); look(-1); return; }
  works();
  const folded = offers.causes.filter(c => c.under !== null).length;
  at('offer-head').textContent = offers.causes.length ? 'Folded by cause' : offers.running ? `Looking: ${offers.running}` : offers.cards.length === 0 ? 'No offer' : many(offers.cards.length, 'offer');
  at('leave').textContent = offers.running ? 'Stop' : 'Leave';
  at('offer-words').textContent = offers.causes.length ? (offers.isPresent ? `${folded} of ${offers.causes.length} findings vanish when others are mended, and stand under them.` : 'The fight has changed since, so all findings stand by themselves again.') : offers.running ? 'Go on writing: this works on the fight as it was when it began, and is shown here as it is found.'
    : offers.trouble ?? (offers.isPresent ? 'Nothing changes until one is taken.' : 'The fight has changed since; these can be read, no longer taken.');
  const wanted = `${next.instance} ${offers.number} ${offers.isPresent}`;
  if (wanted === shown) return;
  shown = wanted;

  // What is laid out already stays as it is, with the keys in it and what is seen.
  const now = offers.cards.map(c => JSON.stringify([c, offers.isPresent]));
  const stays = laid.length > 0 && laid.every((c, i) => c === now[i]);
  if (!stays) at('cards').replaceChildren();
  at('cards').append(...offers.cards.slice(stays ? laid.length : 0).map((c, i) => card(c, i + (stays ? laid.length : 0))));
  const isFirst = laid.length === 0 || !stays;
  laid = now;
  if (offers.cards.length === 0) { look(-1); return; }
  pictures(offers.number);
  if (isFirst) {
    if (matchMedia('(max-width: 60rem)').matches) at('offer').scrollIntoView({ block: 'nearest' });
    seen = -1;
    look(offers.isPresent ? 0 : -1);
  } else mark();
}

/** How long it has been at work, and how long it may be. */
function works() {
  const offers = state?.offers;
  if (!offers?.running || began === null) return;
  const seconds = Math.floor((performance.now() - began) / 1000);
  at('offer-time').value = Math.min(offers.seconds, seconds);
  at('offer-time').max = offers.seconds;
  at('offer-time').setAttribute('aria-label', `${seconds} s of at most ${offers.seconds}`);
  at('offer-head').textContent = `Looking: ${offers.running}, ${seconds} s${offers.cards.length ? `, ${offers.cards.length} so far` : ''}`;
}

/** With the keys to the offer that is seen, and back to the move that is chosen. */
export function go() {
  if (at('offer').hidden) return;
  if (at('offer').contains(document.activeElement)) hooks.back();
  else (at('cards').querySelector('.seen .take:enabled, .take:enabled') ?? at('leave')).focus();
}

function card(offer, i) {
  const facts = [
    offer.rows.length ? `${many(offer.rows.length, 'move')} different` : 'no move different', offer.shifted ? `${offer.shifted} at another count` : null,
    offer.grave ? `${offer.grave} unsafe or broken left` : null, many(offer.points, 'point'),
  ].filter(f => f);
  const take = button('Take it', async () => { if (await hooks.ask('take', { revision: state.revision, card: i })) hooks.back(); }, `Take it: offer ${i + 1}, ${offer.name}`);
  take.className = 'take';
  take.disabled = !state.offers.isPresent;
  const look1 = button('See it', () => look(seen === i ? -1 : i), `See it: offer ${i + 1}, on floor and time line`);
  look1.className = 'look';
  const more = offer.rows.slice(longest);
  const li = make('li', { className: 'card' },
    make('h3', { textContent: `${i + 1}. ${offer.name.charAt(0).toUpperCase()}${offer.name.slice(1)}` }), make('p', { className: 'facts', textContent: facts.join(', ') + '.' }),
    offer.remark ? make('p', { textContent: offer.remark }) : null, make('div', { className: 'tools' }, take, look1), make('div', { className: 'curve' }), make('div', { className: 'strip' }),
    make('ul', { className: 'changes' }, ...offer.rows.slice(0, longest).map(change)),
    more.length ? make('details', {}, make('summary', { textContent: `${more.length} more` }), make('ul', { className: 'changes' }, ...more.map(change))) : null,
    offer.gave.length ? make('ul', { className: 'gave' }, ...offer.gave.map(g => make('li', { textContent: g }))) : null);
  return li;
}

const words = m => `${m.count || 'open'}  ${m.attacker ? m.attacker + ': ' : ''}${m.text || 'open'}`;

/** "was" is struck through, "now" stands under it; what is put in or taken out says so. */
export function change({ was, now }) {
  return make('li', {}, make('span', { className: 'which', textContent: now ? `Move ${now.move + 1}` + (was ? '' : ', put in') : `Move ${was.move + 1}, taken out` }),
    was ? make('del', { textContent: words(was) }) : null, now ? make('ins', { textContent: words(now) }) : null);
}

async function pictures(number) {
  try {
    const said = await call('cards');
    if (said.number !== number) return;
    [...at('cards').children].forEach((li, i) => {
      const card = said.cards[i];
      const shown = (f, goes) => make('figure', { className: goes ? 'goes' : '' }, ...drawn(f.svg), make('figcaption', { textContent: `${goes ? 'Goes: move' : 'Move'} ${f.move + 1}: ${f.told}` }));
      li.querySelector('.strip').replaceChildren(...card.goes.map(f => shown(f, true)), ...card.comes.map(f => shown(f, false)));
      li.querySelector('.curve').replaceChildren(...(said.was && card.now ? [curve(said.was, card.now, card.pairs, said.stretch)] : []));
    });
  } catch (fault) { hooks.fault(fault); }
}

/** Shows an offer on floor and time line, or the fight again. */
function look(i) {
  if (i === seen && i < 0) return;
  seen = i;
  const offer = state?.offers?.cards[i];
  hooks.preview(offer ? { of: { card: i }, name: `Offer ${i + 1}`, move: offer.at } : null);
  mark();
}

function mark() {
  [...at('cards').children].forEach((li, j) => {
    li.classList.toggle('seen', j === seen);
    li.querySelector('.look').setAttribute('aria-pressed', String(j === seen));
  });
}
