// Where everybody is at a moment of a routine, and which moment it is so many seconds later. Times are half counts, places units of the drawing.
const clamp = (value, least, most) => Math.min(most, Math.max(least, value));

/** "count 14&"; before count 1 the click of the count-in, "click 3". */
const countText = time => {
  const counted = (time < 0 && time >= -8) ? time + 8 : time;
  return (counted === time ? "count " : "click ") + (Math.floor(counted / 2) + 1) + (Math.floor(counted) % 2 === 0 ? "" : "&");
};

const momentsOf = course => {
  "use strict";
  /** The two keyframes around a moment, and how far between them it lies. */
  function between(frames, time) {
    let i = frames.length - 1;
    while (i > 0 && frames[i][0] > time) i--;
    const [a, b] = [frames[i], frames[Math.min(i + 1, frames.length - 1)]];
    const share = b[0] > a[0] ? clamp((time - a[0]) / (b[0] - a[0]), 0, 1) : 0;
    return [a, b, share];
  }

  const mix = (a, b, share) => a + (b - a) * share;

  function placeOf(performer, time) {
    const [a, b, share] = between(performer.ways, time);
    return [mix(a[1], b[1], share), mix(a[2], b[2], share)];
  }

  /** Where somebody is drawn, and whether that is where they are: who is off the drawing stands at its edge, on the line to the mark. */
  function held([x, y], [markX, markY]) {
    const [left, top, right, bottom] = course.inner;
    const share = Math.min(1,
      x < left ? (markX - left) / (markX - x) : x > right ? (right - markX) / (x - markX) : 1,
      y < top ? (markY - top) / (markY - y) : y > bottom ? (bottom - markY) / (y - markY) : 1);
    return [markX + (x - markX) * share, markY + (y - markY) * share, share === 1];
  }

  /** Half counts that a fall takes, and getting up. */
  const [FALLS, RISES] = [2, 1];

  /** The body of somebody who is on the way down or up, and how much of it is on the floor; null for who stands or lies. */
  function onTheWay(performer, time) {
    const down = performer.bodies.find(b => b[0] > time && b[0] - time < FALLS);
    if (down) return [down, 1 - (down[0] - time) / FALLS];
    const up = performer.bodies.findLast(b => b[1] >= 0 && b[1] <= time && time - b[1] < RISES);
    return up ? [up, 1 - (time - up[1]) / RISES] : null;
  }

  const bodyAt = (performer, time) => performer.bodies.findLast(b => b[0] <= time && (b[1] < 0 || b[1] > time));

  function facingOf(performer, time, x, y, mark) {
    if (performer.turns.length > 0) {
      const [a, b, share] = between(performer.turns, time);
      return mix(a[1], b[1], share);
    }
    return Math.atan2(mark[0] - x, y - mark[1]) * 180 / Math.PI;
  }

  function metres(performer, time, mark) {
    const [x, y] = placeOf(performer, time);
    return (Math.hypot(x - mark[0], y - mark[1]) / course.metre).toFixed(1);
  }

  const moveAt = time => course.moves.findLast(m => m[0] <= time) ?? null;

  /** Where it is so many seconds later: by the one tempo, or through passages and held counts. */
  function after(state, seconds) {
    if (!course.clock) return state.at + seconds * course.tempo / 30;
    const clock = course.clock;
    if (state.at !== state.timed) {
      const i = clamp(Math.floor(state.at) - clock[0][0], 0, clock.length - 1);
      const next = clock[Math.min(i + 1, clock.length - 1)];
      state.seconds = state.at === clock[i][0] ? clock[i][1] : clock[i][2] + (state.at - clock[i][0]) * (next[1] - clock[i][2]);
    }
    state.seconds += seconds;
    const last = Math.max(0, clock.findLastIndex(c => c[1] <= state.seconds));
    const [moment, , goes] = clock[last];
    const lasts = last + 1 < clock.length ? clock[last + 1][1] - goes : 30 / course.tempo;
    state.timed = moment + Math.max(0, state.seconds - goes) / lasts;
    return state.timed;
  }

  return { placeOf, held, onTheWay, bodyAt, facingOf, metres, moveAt, after };
};
