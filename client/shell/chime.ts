/** Two falling tones, low enough to carry through fans; coined here. */
const TONES_HZ = [660, 495] as const;
const TONE_S = 0.35;
const LOUD = 0.4;

let speaker: AudioContext | null = null;

/** One call: two tones, once. A browser lets a page sound only after it was first touched. */
export function chime(): void {
  speaker ??= new AudioContext();
  const from = speaker.currentTime;
  TONES_HZ.forEach((hz, n) => {
    if (speaker) tone(speaker, hz, from + n * TONE_S);
  });
}

function tone(on: AudioContext, hz: number, at: number): void {
  const voice = on.createOscillator();
  const loudness = on.createGain();
  voice.frequency.value = hz;
  loudness.gain.setValueAtTime(LOUD, at);
  loudness.gain.exponentialRampToValueAtTime(0.001, at + TONE_S);
  voice.connect(loudness).connect(on.destination);
  voice.start(at);
  voice.stop(at + TONE_S);
}
