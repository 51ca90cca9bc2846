import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import wasmUrl from "zxing-wasm/reader/zxing_reader.wasm?url";

// The reader would else be asked of another server.
prepareZXingModule({ overrides: { locateFile: (name: string) => (name.endsWith(".wasm") ? wasmUrl : name) } });

/** The first number of goods in a picture of a pack; undefined where none can be read. */
export async function readBars(picture: ImageData): Promise<string | undefined> {
  const found = await readBarcodes(picture, {
    formats: ["EAN-13", "EAN-8", "UPC-A", "UPC-E", "ITF-14"],
    maxNumberOfSymbols: 1,
    tryHarder: true,
  });
  return found.find(({ isValid }) => isValid)?.text;
}
