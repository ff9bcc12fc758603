// The click of the counts.
const clickSound = () => {
  "use strict";
  let sound = null;

  /** Sounds one click, a higher one where something begins. */
  return function click(first) {
    if (!window.AudioContext) return;
    sound ??= new AudioContext();
    const now = sound.currentTime;
    const [tone, gain] = [sound.createOscillator(), sound.createGain()];
    tone.frequency.value = first ? 1600 : 1000;
    gain.gain.setValueAtTime(0.4, now);
    gain.gain.exponentialRampToValueAtTime(0.001, now + 0.06);
    tone.connect(gain).connect(sound.destination);
    tone.start(now);
    tone.stop(now + 0.07);
  };
};
