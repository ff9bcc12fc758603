// The lines of blows on the floor plan. Times are half counts, places units of the drawing.
const blowsOf = course => {
  "use strict";
  /** Who hits whom at this moment: a line from one to the other, whole when it lands, dashed and barred when it is stopped. */
  function blows(time, places) {
    const drawn = [];
    course.performers.forEach((performer, p) => {
      for (const [contact, on, lands] of performer.contacts) {
        if (time < contact || time >= contact + 1) continue;
        const [[x, y], [toX, toY]] = [places[p], places[on]];
        const path = document.createElementNS("http://www.w3.org/2000/svg", "path");
        const far = Math.max(1, Math.hypot(toX - x, toY - y));
        const [dx, dy] = [(toX - x) / far, (toY - y) / far];
        // Beside the two signs, which it would hide where they stand close: in a bow on the side where nobody else stands.
        const others = places.filter((_, i) => i !== p && i !== on && course.performers[i].figures[clamp(Math.floor(time) - course.from, 0, course.performers[i].figures.length - 1)] !== "A");
        const room = side => Math.min(...others.map(([oX, oY]) => Math.hypot((x + toX) / 2 - dy * 30 * side - oX, (y + toY) / 2 + dx * 30 * side - oY)), 1e6);
        const side = room(1) >= room(-1) ? 1 : -1;
        const at = (along, aside) => `${(x + dx * along - dy * aside * side).toFixed(1)},${(y + dy * along + dx * aside * side).toFixed(1)}`;
        const bow = `M${at(0, 22)}Q${at(far / 2, 42)} ${at(far, 24)}`;
        path.setAttribute("d", bow + (lands ? `M${at(far - 12, 27)}L${at(far, 24)}L${at(far - 3, 37)}` : `M${at(far - 5, 33)}L${at(far + 5, 15)}`));
        path.setAttribute("class", lands ? "blow" : "blow stopped");
        drawn.push(path);
        if (lands) drawn.push(sparkAt(toX, toY));
      }
    });
    return drawn;
  }

  /** Rays round whom a blow hits, and round nobody else; their sign stays to be read. */
  function sparkAt(x, y) {
    const rays = document.createElementNS("http://www.w3.org/2000/svg", "path");
    const end = (i, far) => `${(x + Math.sin(i * Math.PI / 6) * far).toFixed(1)},${(y - Math.cos(i * Math.PI / 6) * far).toFixed(1)}`;
    rays.setAttribute("d", Array.from({ length: 12 }, (_, i) => `M${end(i, 21)}L${end(i, i % 2 ? 26 : 31)}`).join(""));
    rays.setAttribute("class", "spark");
    return rays;
  }

  return blows;
};
