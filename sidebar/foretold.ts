// Foretells a text bit by bit from what stood before it. What packs and what unpacks ask the same model, so that only what was
// not foretold has to travel (context mixing, common practice). It has to come to the same in every browser: nothing but sums,
// products and quotients, which all of them round alike; Math.exp or a power would not do.

export type Foretold = {
  /** Of CERTAIN, how sure it is that the next bit is a 1; never 0 and never CERTAIN. */
  readonly chance: () => number;
  readonly learn: (bit: number) => void;
};

export const CERTAIN = 65536;

/** Runs of last bytes that what comes next is looked for by; besides, by the word so far, and by the last signs. */
const RUNS = [1, 2, 4];
const KINDS = RUNS.length + 2;
/** Room for what was seen after all contexts, 8 MB; half of it makes the page 5 KB longer. A power of 2. */
const ROOM = 1 << 21;
/** Each half byte after a context has a place there: which one it is, then 15 bits as they may come. */
const PLACE = 16;
/** Of a bit: in 22 bits by how much it is rather a 1 than a 0, in 10 how often it was seen. */
const SEEN = 1023;
const SURE = 1 << 21;
/** The oftener a bit was seen, the less the next time changes: tuned, as what follows, by the length of the page. */
const SETTLED = 25;
const CHANGES = Float32Array.from({ length: SETTLED + 1 }, (_, seen) => 1 / (seen + 1.1));
const FIRST_WEIGHT = 0.3;
const LEARNING = 0.008;

/** Shares p by ln(p ÷ (1 − p)), in steps of 1 ÷ FINE up to 12 either way; and the other way round. */
const FINE = 256;
const FURTHEST = 12 * FINE;
const SHARES = new Float32Array(2 * FURTHEST + 1);
const LOGITS = new Float32Array(4096);
// e to the power of 1 ÷ FINE, by its series
const STEP = 1 + (1 + (1 + 1 / (3 * FINE)) / (2 * FINE)) / FINE;
for (let at = 0, odds = 1; at <= FURTHEST; at++, odds *= STEP) {
  SHARES[FURTHEST + at] = odds / (1 + odds);
  SHARES[FURTHEST - at] = 1 / (1 + odds);
}
for (let share = 0, at = 0; share < LOGITS.length; share++) {
  while (at < 2 * FURTHEST && (SHARES[at] ?? 0) * LOGITS.length < share + 0.5) at++;
  LOGITS[share] = (at - FURTHEST) / FINE;
}

/** Letters, digits and what else names are made of; the rest are signs. */
const IN_WORDS = Array.from({ length: 256 }, (_, code) => code > 127 || /[\w$]/.test(String.fromCharCode(code)));

const hashed = (value: number, next: number): number => {
  const product = Math.imul(value + next + 1, 0x2f0b4c47);
  return product ^ (product >>> 15);
};

/** What stood before a byte, as one number for each kind of context. */
function contextsOf(): { readonly now: Int32Array; readonly add: (code: number) => void } {
  const now = new Int32Array(KINDS);
  const before = new Uint8Array(Math.max(...RUNS));
  let word = 0;
  let letters = 0;
  let signs = 0;
  const add = (code: number) => {
    before.copyWithin(1, 0);
    before[0] = code;
    word = IN_WORDS[code] ? hashed(word, code) : 0;
    letters = IN_WORDS[code] ? letters + 1 : 0;
    if (!IN_WORDS[code]) signs = ((signs << 8) | code) & 0xffffff;
    let run = 0;
    for (let kind = 0, at = 0; kind < RUNS.length; kind++) {
      for (; at < (RUNS[kind] ?? 0); at++) run = hashed(run, before[at] ?? 0);
      now[kind] = run;
    }
    now[RUNS.length] = word;
    now[RUNS.length + 1] = hashed(signs, letters);
  };
  return { now, add };
}

export function foretold(): Foretold {
  const contexts = contextsOf();
  const known = new Int32Array(ROOM);
  const weights = new Float32Array(KINDS * 256).fill(FIRST_WEIGHT);
  const places = new Int32Array(KINDS);
  const inputs = new Float32Array(KINDS);
  /** The bits so far of this byte, and of this half of it, after a 1. */
  let byte = 1;
  let half = 1;
  let share = 0;

  const find = () => {
    for (let kind = 0; kind < KINDS; kind++) {
      const key = hashed(Math.imul((contexts.now[kind] ?? 0) + kind, 0x3d4d51cb), Math.imul(byte, 0x2c1b3c6d));
      const place = key & (ROOM - PLACE);
      const check = Math.imul(key, 0x1e3779b1);
      places[kind] = place;
      if (known[place] === check) continue;
      known.fill(0, place, place + PLACE);
      known[place] = check;
    }
  };
  find();

  return {
    chance() {
      const first = byte * KINDS;
      let sum = 0;
      for (let kind = 0; kind < KINDS; kind++) {
        const input = LOGITS[((known[(places[kind] ?? 0) + half] ?? 0) >> 20) + LOGITS.length / 2] ?? 0;
        inputs[kind] = input;
        sum += input * (weights[first + kind] ?? 0);
      }
      share = SHARES[Math.max(0, Math.min(2 * FURTHEST, Math.round(sum * FINE) + FURTHEST))] ?? 0;
      return Math.max(1, Math.min(CERTAIN - 1, Math.floor(share * CERTAIN)));
    },
    learn(bit) {
      const first = byte * KINDS;
      const wrong = (bit - share) * LEARNING;
      const wanted = bit === 1 ? SURE - 1 : -SURE;
      for (let kind = 0; kind < KINDS; kind++) {
        weights[first + kind] = (weights[first + kind] ?? 0) + wrong * (inputs[kind] ?? 0);
        const at = (places[kind] ?? 0) + half;
        const was = known[at] ?? 0;
        const seen = was & SEEN;
        const rather = was >> 10;
        const nearer = rather + Math.trunc((wanted - rather) * (CHANGES[seen] ?? 0));
        known[at] = (nearer << 10) | (seen < SETTLED ? seen + 1 : seen);
      }
      byte = byte * 2 + bit;
      half = half * 2 + bit;
      if (half < PLACE) return;
      half = 1;
      if (byte > 255) {
        contexts.add(byte & 255);
        byte = 1;
      }
      find();
    },
  };
}
