// Runs on the audio thread: gathers a tenth of a second of sound as 16-bit samples and stamps it with the clock there,
// which is not held up by a busy page.

const BLOCK_S = 0.1;

class Capture extends AudioWorkletProcessor {
  samples = new Int16Array(0);
  filled = 0;
  peak = 0;

  constructor() {
    super();
    this.position = 0;
    this.over = false;
    this.port.onmessage = () => {
      this.over = true;
    };
    this.begin();
  }

  begin() {
    this.samples = new Int16Array(Math.round(sampleRate * BLOCK_S));
    this.filled = 0;
    this.peak = 0;
  }

  /** @param {Float32Array[][]} inputs */
  process([channels = []]) {
    const frames = channels[0]?.length ?? 128;
    for (let i = 0; i < frames; i += 1) {
      let sum = 0;
      for (const channel of channels) sum += channel[i];
      const value = channels.length ? Math.max(-1, Math.min(1, sum / channels.length)) : 0;
      this.peak = Math.max(this.peak, Math.abs(value));
      this.samples[this.filled] = Math.round(value * 32767);
      this.filled += 1;
      if (this.filled === this.samples.length) {
        const { position, samples, peak } = this;
        this.port.postMessage({ position, samples, peak, at: Date.now() }, [samples.buffer]);
        this.position += this.filled;
        this.begin();
      }
    }
    return !this.over;
  }
}

registerProcessor("capture", Capture);
