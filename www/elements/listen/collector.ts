/** Runs where the browser works sound, and hands what the microphone gives to the page, block by block. */
declare class AudioWorkletProcessor { readonly port: MessagePort }
declare function registerProcessor(name: string, processor: typeof AudioWorkletProcessor): void;

class Collector extends AudioWorkletProcessor {
  process([microphone]: readonly (readonly Float32Array[])[]): boolean {
    const [channel] = microphone ?? [];
    if (channel !== undefined) this.port.postMessage(channel.slice());
    return true;
  }
}

registerProcessor('collector', Collector);

export {};
