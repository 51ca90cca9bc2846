/** Modules of a digit in the left half by parity, and in the right half. **Source**: GS1 General Specifications, 5.2.1. */
const ODD = [
  "0001101",
  "0011001",
  "0010011",
  "0111101",
  "0100011",
  "0110001",
  "0101111",
  "0111011",
  "0110111",
  "0001011",
];
const EVEN = ODD.map((modules) => flip(reverse(modules)));
const RIGHT = ODD.map(flip);
/** Which digits of the left half are of even parity, by the first digit. **Source**: as above. */
const PARITY = ["000000", "001011", "001101", "001110", "010011", "011001", "011100", "010101", "010110", "011010"];
const [WIDTH, HEIGHT, MODULE] = [640, 480, 4];

/** The modules of a number of 13 digits (EAN-13) from left to right: true is a bar. */
function toBars(digits: string): boolean[] {
  const [first, ...rest] = [...digits].map(Number);
  const left = rest.slice(0, 6).map((digit, at) => (PARITY[first as number]?.[at] === "1" ? EVEN : ODD)[digit]);
  const right = rest.slice(6).map((digit) => RIGHT[digit]);
  return [...`101${left.join("")}01010${right.join("")}101`].map((module) => module === "1");
}

/** A film of one picture in YUV4MPEG2, such as a camera would give of a pack with that number. */
export function drawBars(digits: string): Buffer {
  const bars = toBars(digits);
  const quiet = (WIDTH - bars.length * MODULE) / 2;
  const row = Buffer.alloc(WIDTH, 235);
  for (const [at, isBar] of bars.entries()) if (isBar) row.fill(16, quiet + at * MODULE, quiet + (at + 1) * MODULE);
  const blank = Buffer.alloc(WIDTH, 235);
  const rows = Array.from({ length: HEIGHT }, (_, y) => (y > HEIGHT / 4 && y < (HEIGHT * 3) / 4 ? row : blank));
  const colour = Buffer.alloc((WIDTH * HEIGHT) / 2, 128);
  return Buffer.concat([
    Buffer.from(`YUV4MPEG2 W${WIDTH} H${HEIGHT} F10:1 Ip A1:1 C420jpeg\nFRAME\n`),
    ...rows,
    colour,
  ]);
}

function reverse(modules: string): string {
  return [...modules].reverse().join("");
}

function flip(modules: string): string {
  return [...modules].map((module) => (module === "1" ? "0" : "1")).join("");
}
