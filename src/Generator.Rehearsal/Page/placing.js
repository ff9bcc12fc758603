// Everything on the floor that has a handle: where it is, how that is said, and what placing it asks for. In metres from the mark towards 3 o'clock and 12.
const smallest = 0.1;
const corner = 0.3;

const clockOf = (x, y) => {
  const half = Math.round(((Math.atan2(x, y) * 180 / Math.PI + 360) % 360) / 15) % 24;
  return `${Math.floor(half / 2) || 12}${half % 2 ? ':30' : ''}`;
};
const halfOf = clock => { const [h, m] = clock.split(':'); return (Number(h) % 12) * 2 + (m ? 1 : 0); };
const clockAt = half => { const h = ((half % 24) + 24) % 24; return `${Math.floor(h / 2) || 12}${h % 2 ? ':30' : ''}`; };
const round = (value, step = smallest) => Math.round(Math.round(value / step) * step * 100) / 100;
export const clamp = (value, least, most) => Math.min(most, Math.max(least, value));
export const polar = (clock, far) => [Math.sin(halfOf(clock) * Math.PI / 12) * far, Math.cos(halfOf(clock) * Math.PI / 12) * far];

/** Where something is put that was dropped at a place. */
export const snapped = (thing, [x, y]) => thing.round ? [clockOf(x, y), clamp(round(Math.hypot(x, y)), thing.least, thing.most)] : [round(x), round(y)];

/** Where something comes to by an arrow key: a step round the clock or towards it, or across and along. */
export const nudged = (thing, [x, y], [across, along], by) => thing.round
  ? [clockAt(halfOf(thing.clock) + across), clamp(round(Number(thing.far) + along * smallest * by), thing.least, thing.most)]
  : [round(x + across * smallest * by), round(y + along * smallest * by)];

/** What has a handle: the attackers and, on the whole floor, everything else of the brief. */
export function placed(state, whole, recastFrom, put) {
  const brief = state.brief;
  const recast = recastFrom(brief);
  const [markX, markY] = brief.floor.mark;
  const attackers = state.attackers.map((a, i) => ({
    key: `a${i}`, name: a.name, round: true, clock: a.bearing ?? a.drawn, far: a.distance ?? a.far, least: 1, most: 20,
    says: (c, d) => `${a.name} opens at ${c} o'clock, ${d.toFixed(1)} m`,
    put: (c, d) => put(i, c, Math.round(d * 100)),
  }));
  if (!whole) return attackers;
  const sides = (x, y) => `${(x + markX).toFixed(1)} m from the 9 o'clock side, ${(y + markY).toFixed(1)} m from the 6 o'clock side`;
  const onFloor = ([x, y], beyond = 0, size = {}) => ({ x: clamp(round(x + markX), -beyond, brief.floor.width + beyond - (size.width ?? 0)), y: clamp(round(y + markY), -beyond, brief.floor.depth + beyond - (size.depth ?? 0)) });

  // A mat is taken by its corner, because people stand in its middle.
  const held = (t, list) => list === 'mats' ? [Math.min(corner, t.width / 2), Math.min(corner, t.depth / 2)] : [(t.width ?? 0) / 2, (t.depth ?? 0) / 2];
  const standing = (list, word, beyond = 0) => (brief.floor[list] ?? []).map((t, i) => {
    const [inX, inY] = held(t, list);
    return {
      key: `${list}${i}`, name: t.name, at: [t.x - markX + inX, t.y - markY + inY],
      says: (x, y) => `${t.name}: ${sides(x - inX, y - inY)}`,
      put: (x, y) => recast(`where ${t.name} ${word}`, { ...brief, floor: { ...brief.floor, [list]: brief.floor[list].map((o, j) => j === i ? { ...o, ...onFloor([x - inX, y - inY], beyond, o) } : o) } }),
    };
  });
  const cameras = (brief.cameras ?? []).map((c, i) => ({
    key: `camera${i}`, name: c.name, round: true, clock: c.bearing, far: c.distance, least: 1, most: 200,
    says: (clock, d) => `${c.name} at ${clock} o'clock, ${d.toFixed(1)} m from the mark`,
    put: (clock, d) => recast(`where ${c.name} stands`, { ...brief, cameras: brief.cameras.map((o, j) => j === i ? { ...o, bearing: clock, distance: d } : o) }),
  }));
  const props = (brief.props ?? []).flatMap((p, i) => p.with ? [] : [{
    key: `prop${i}`, name: p.name, at: [p.x - markX, p.y - markY],
    says: (x, y) => `${p.name}: ${sides(x, y)}`,
    put: (x, y) => recast(`where ${p.name} lies`, { ...brief, props: brief.props.map((o, j) => j === i ? { ...o, ...onFloor([x, y]) } : o) }),
  }]);

  // The first of several marks is the floor's own.
  const own = (x, y) => { const to = onFloor([x, y]); return { ...brief.floor, mark: [to.x, to.y] }; };
  const marks = brief.marks?.length > 0 ? brief.marks.map((m, i) => ({
    key: `mark${i}`, name: m.name, at: [m.x - markX, m.y - markY],
    says: (x, y) => `mark ${m.name}: ${sides(x, y)}`,
    put: (x, y) => recast(`where ${m.name} is`, { ...brief, ...(i === 0 ? { floor: own(x, y) } : {}), marks: brief.marks.map((o, j) => j === i ? { ...o, ...onFloor([x, y]) } : o) }),
  })) : [{
    key: 'mark', name: brief.hero.name, at: [0, 0],
    says: (x, y) => `${brief.hero.name}'s mark: ${sides(x, y)}`,
    put: (x, y) => recast(`where ${brief.hero.name} stands`, { ...brief, floor: own(x, y) }),
  }];
  return [...standing('mats', 'lies'), ...marks, ...attackers, ...standing('obstacles', 'stands'), ...standing('waysIn', 'is', 3), ...cameras, ...props];
}
