import { xoroshiro128plusFromState } from "pure-rand/generator/xoroshiro128plus";

/** Bijective mixing of 32 bits (the finalizer of MurmurHash3, public domain). */
function mix(value: number): number {
  const a = Math.imul(value ^ (value >>> 16), 0x85ebca6b);
  const b = Math.imul(a ^ (a >>> 13), 0xc2b2ae35);
  return b ^ (b >>> 16);
}

const GOLDEN = 0x9e3779b9;

/**
 * The random numbers of one job in one sample: the same whatever else is on the bench, so that two benches that differ
 * in one job are compared on the same luck.
 *
 * @param key - `order` and `job` name the job, `sample` counts from 0
 * @returns a source of uniform numbers above 0 and below 1, in steps of 2⁻³²
 */
export function jobStream(key: { readonly seed: number; readonly sample: number; readonly order: number; readonly job: number }): () => number {
  let state = mix(key.seed | 0);
  for (const part of [key.sample, key.order, key.job]) state = mix(state ^ mix((part | 0) + GOLDEN));
  const words = [1, 2, 3, 4].map((n) => mix(state + Math.imul(n, GOLDEN)));
  const source = xoroshiro128plusFromState(words);
  return () => ((source.next() >>> 0) + 0.5) / 4294967296;
}
