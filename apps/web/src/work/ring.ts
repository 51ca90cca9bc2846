let audio: AudioContext | undefined;

/** Three short tones, and a shake where the device can. */
export function ring(): void {
  navigator.vibrate?.([300, 150, 300, 150, 300]);
  audio ??= new AudioContext();
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
