let audio: AudioContext | undefined;

/** Gets the sound ready while a finger is on the screen: later a browser may refuse to begin with it. */
export function readyToRing(): void {
  try {
    audio ??= new AudioContext();
    void audio.resume();
  } catch {
    // A device without sound still shakes and shows.
  }
}

/** Three short tones, and a shake where the device can. */
export function ring(): void {
  navigator.vibrate?.([300, 150, 300, 150, 300]);
  readyToRing();
  if (audio === undefined) return;
  for (const at of [0, 0.45, 0.9]) {
    const tone = audio.createOscillator();
    const volume = audio.createGain();
    tone.frequency.value = 880;
    volume.gain.setValueAtTime(0.25, audio.currentTime + at);
    volume.gain.exponentialRampToValueAtTime(0.001, audio.currentTime + at + 0.35);
    tone.connect(volume).connect(audio.destination);
    tone.start(audio.currentTime + at);
    tone.stop(audio.currentTime + at + 0.4);
  }
}
