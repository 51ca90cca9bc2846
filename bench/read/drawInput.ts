import { createDraw, type Draw } from "../menu/Draw.ts";
import type { ReaderName } from "./fuzzReaders.ts";
import { SAMPLES } from "./fuzzSamples.ts";

/** What broke readers elsewhere: markup, unseen characters, keys that reach a prototype, numbers beyond all bounds, depth. */
const INSERTS: readonly string[] = [
  "<script>alert(1)</script>",
  "<img src=x onerror=alert(1)>",
  "&lt;script&gt;alert(1)&lt;/script&gt;",
  "&amp;lt;b&amp;gt;",
  "\\u003cscript\\u003e",
  "<scr<script>ipt>",
  "<!--",
  "-->",
  "<![CDATA[",
  "]]>",
  "</script>",
  "<template><li>",
  "\u202e\u2066\u200f",
  "\u200b\u200c\u200d\ufeff\u2060",
  "\u0000\u001b[31m\u0007",
  "\u009b2J",
  "\ud800",
  "\udfff",
  "\u2028\u2029",
  "e\u0301\u0301\u0301\u0301",
  '"__proto__":{"polluted":1},',
  '"constructor":{"prototype":{"polluted":1}},',
  "__proto__",
  "constructor",
  "toString",
  "hasOwnProperty",
  "1e999",
  "-0",
  "-1",
  "NaN",
  "1/0",
  "0/0",
  "½½½",
  "1 1/2/3",
  "PT99999999999999H",
  "99999999999999999999",
  "0.00000000000000000001",
  "1,234,567,890.12",
  '"',
  "'",
  "\\",
  "{",
  "}",
  "[",
  "]",
  ",",
  ";",
  ":",
  "\t",
  "\n",
  "\r\n",
  "x",
  " x ",
  "kg",
  "total",
  "-",
];

/** Pieces that are put in many times over, to find what costs more than its length. */
const RUNS: readonly string[] = [
  "9",
  "[",
  "{",
  '{"a":',
  "<div>",
  "<b><i>",
  "</p>",
  "(",
  ")",
  " ",
  "a ",
  "1 ",
  "1/",
  "½",
  ",",
  ".",
  "-",
  '"',
  '""',
  "\n",
  "<",
  "&",
  "&lt;",
  "or ",
  "and ",
  "2 x ",
  "10 minutes ",
  "0.00 ",
  "<li>",
  "<!--",
  "e\u0301",
  "\u200b",
  "\u202e",
  "total 1.00\n",
  '<div itemscope itemtype="https://schema.org/Recipe">',
  "<table><tr><td>",
];

const MOST_RUN = 4000;
/** Once in so many runs one is so long that what costs the square of its length is seen too. */
const LONG_RUN_SHARE = 0.02;
const LONG_RUN_CHARACTERS = 60_000;

/** An input for a reader from seed and number: bytes by chance, a sample as it is mutated, or a run of one piece in a sample. */
export function drawInput(reader: ReaderName, seed: number, number: number): Uint8Array {
  const draw = createDraw((seed * 1_000_003 + number * 7919) >>> 0);
  const kind = draw();
  if (kind < 0.08) return Uint8Array.from({ length: draw.whole(0, 400) }, () => draw.whole(0, 255));
  if (kind < 0.12) return encode(drawText(draw, draw.whole(0, 300)));
  const sample = draw.pick(SAMPLES[reader]);
  if (kind < 0.15) return encode(putRun(sample, draw));
  let text = sample;
  for (let left = draw.whole(1, 8); left > 0; left--) text = mutate(text, draw);
  return draw() < 0.05 ? breakBytes(encode(text), draw) : encode(text);
}

function mutate(text: string, draw: Draw): string {
  const at = draw.whole(0, text.length);
  const way = draw();
  if (way < 0.2) return text.slice(0, at) + text.slice(at + draw.whole(1, 30));
  if (way < 0.3) return text.slice(0, at) + text.slice(Math.max(0, at - draw.whole(1, 60)));
  if (way < 0.4) return text.slice(0, at) + drawText(draw, draw.whole(1, 6)) + text.slice(at);
  if (way < 0.5) return swapPieces(text, draw);
  if (way < 0.6) return text.replace(/\d+(?:[.,]\d+)?/g, (number) => (draw() < 0.3 ? drawNumber(draw) : number));
  return text.slice(0, at) + draw.pick(INSERTS) + text.slice(at + (draw() < 0.5 ? 0 : draw.whole(0, 12)));
}

function swapPieces(text: string, draw: Draw): string {
  const [a = 0, b = 0, c = 0] = [0, 0, 0].map(() => draw.whole(0, text.length)).sort((x, y) => x - y);
  return text.slice(0, a) + text.slice(b, c) + text.slice(a, b) + text.slice(c);
}

function putRun(text: string, draw: Draw): string {
  const at = draw.whole(0, text.length);
  const piece = draw.pick(RUNS);
  const times = draw() < LONG_RUN_SHARE ? Math.ceil(LONG_RUN_CHARACTERS / piece.length) : draw.whole(20, MOST_RUN);
  return text.slice(0, at) + piece.repeat(times) + text.slice(at);
}

function drawNumber(draw: Draw): string {
  const plain = String(draw.whole(0, 10 ** draw.whole(0, 9)));
  return draw.pick([
    plain,
    `-${plain}`,
    `${plain}.${plain}`,
    `${plain},5`,
    `${plain}e${plain}`,
    "0",
    "9".repeat(draw.whole(1, 400)),
  ]);
}

/** Characters of all planes by chance, lone halves of a pair among them. */
function drawText(draw: Draw, length: number): string {
  const tops = [0x7f, 0x2ff, 0x2fff, 0xffff, 0x10ffff] as const;
  return Array.from({ length }, () => String.fromCodePoint(draw.whole(0, draw.pick(tops)))).join("");
}

function breakBytes(bytes: Uint8Array, draw: Draw): Uint8Array {
  const broken = bytes.slice();
  for (let left = draw.whole(1, 6); left > 0 && broken.length > 0; left--) {
    broken[draw.whole(0, broken.length - 1)] = draw.whole(0, 255);
  }
  return broken;
}

/** As UTF-8 or, lone halves of a pair kept as what they become in it. */
function encode(text: string): Uint8Array {
  return Buffer.from(text, "utf8");
}
