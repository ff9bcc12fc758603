// A fight and what an offer makes of it over time, small: weight as it is (line) and as it would be (bars), and the moves of both, what differs marked and joined.
import { shape } from './make.js';

const [wide, tall, foot, row] = [320, 74, 40, 7];

/** Both as { end, weight, moves }; pairs as [was, now, same], numbers from 0 and −1 for none; stretch in half counts. */
export function curve(was, now, pairs, stretch) {
  const end = Math.max(1, was.end, now.end);
  const most = Math.max(1, ...was.weight, ...now.weight);
  const x = moment => Math.round(wide * Math.min(end, Math.max(0, moment)) / end * 10) / 10;
  const y = weight => Math.round((foot - (foot - 4) * weight / most) * 10) / 10;
  const others = pairs.filter(([a, b, same]) => !same || (was.moves[a] && now.moves[b] && was.moves[a][0] !== now.moves[b][0]));
  const svg = shape('svg', { viewBox: `0 0 ${wide} ${tall}`, role: 'img', 'aria-label': `Over time: ${others.length} of ${pairs.length} moves are others or at another count; the fight ends at count ${now.end / 2 + 1} instead of ${was.end / 2 + 1}.` });
  now.weight.forEach((w, i) => { if (w) svg.append(shape('rect', { class: 'heft', x: x(i * stretch) + 0.5, y: y(w), width: Math.max(0.5, x((i + 1) * stretch) - x(i * stretch) - 1), height: foot - y(w) })); });
  svg.append(shape('path', { class: 'before', d: was.weight.map((w, i) => `${i ? 'V' : 'M0,'}${y(w)}H${x((i + 1) * stretch)}`).join('') }));
  const moves = (of, which, top) => of.moves.forEach(([from, to], i) => {
    const differs = others.some(p => p[which] === i);
    svg.append(shape('rect', { class: `move${differs ? ' differs' : ''}`, x: x(from), y: top, width: Math.max(1.5, x(to) - x(from) - 0.8), height: row }));
  });
  moves(was, 0, foot + 6);
  moves(now, 1, tall - row - 2);
  for (const [a, b, same] of others) if (same && was.moves[a] && now.moves[b]) svg.append(shape('path', { class: 'joined', d: `M${x(was.moves[a][0])},${foot + 6 + row}L${x(now.moves[b][0])},${tall - row - 2}` }));
  return svg;
}
