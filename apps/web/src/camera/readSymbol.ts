import { prepareZXingModule, type ReadInputBarcodeFormat, readBarcodes } from "zxing-wasm/reader";
import wasmUrl from "zxing-wasm/reader/zxing_reader.wasm?url";

// The reader would else be asked of another server.
prepareZXingModule({ overrides: { locateFile: (name: string) => (name.endsWith(".wasm") ? wasmUrl : name) } });

/** What is looked for: the number of goods under the bars of a pack, or a text in a QR code. */
export type Symbols = "goods" | "qr";

const FORMATS: Readonly<Record<Symbols, ReadInputBarcodeFormat[]>> = {
  goods: ["EAN-13", "EAN-8", "UPC-A", "UPC-E", "ITF-14"],
  qr: ["QRCode"],
};

/** The first such number or text in a picture; undefined where none can be read. */
export async function readSymbol(picture: ImageData, symbols: Symbols): Promise<string | undefined> {
  const found = await readBarcodes(picture, { formats: FORMATS[symbols], maxNumberOfSymbols: 1, tryHarder: true });
  return found.find(({ isValid }) => isValid)?.text;
}
