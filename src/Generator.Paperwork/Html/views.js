// From where the fight is seen: the choice of the page, its buttons, and on to the next.
const waysToSee = round => {
  "use strict";
  const byId = id => document.getElementById(id);
  const all = [...document.querySelectorAll("[name=seen]")];
  const moves = { "turn-left": [-0.2, 0, 1], "turn-right": [0.2, 0, 1], higher: [0, 0.12, 1], lower: [0, -0.12, 1], nearer: [0, 0, 0.85], farther: [0, 0, 1 / 0.85] };

  function see(name) {
    all.find(v => v.value === name).checked = true;
    byId("stage").toggleAttribute("hidden", name !== "plan");
    byId("turning").hidden = name !== "free" && name !== "above";
    // Seen from straight above one only comes nearer.
    for (const id of Object.keys(moves).slice(0, 4)) byId(id).hidden = name === "above";
    byId("seen-note").hidden = name === "plan";
    round.show(name);
  }

  byId("views").hidden = false;
  byId("views").addEventListener("change", event => see(event.target.value));
  for (const [id, way] of Object.entries(moves)) byId(id).addEventListener("click", () => round.move(...way));
  return () => see(all[(all.findIndex(v => v.checked) + 1) % all.length].value);
};
