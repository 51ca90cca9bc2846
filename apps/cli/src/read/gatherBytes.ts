/** All bytes of a stream; where there are more than `mostBytes` it stops behind them, so that the excess shows. */
export async function gatherBytes(stream: AsyncIterable<Uint8Array>, mostBytes: number): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of stream) {
    pieces.push(piece);
    size += piece.length;
    if (size > mostBytes) break;
  }
  const all = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}
