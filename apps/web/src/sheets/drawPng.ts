/** Pixels for each unit of a picture, so that it is sharp in print and on fine screens. */
const SCALE = 2;

/** A picture as PNG on white, drawn by the browser. Rejects where the browser can't draw it. */
export async function drawPng(svg: string): Promise<Blob> {
  const picture = new Image();
  picture.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await picture.decode();
  const canvas = document.createElement("canvas");
  canvas.width = picture.naturalWidth * SCALE;
  canvas.height = picture.naturalHeight * SCALE;
  const context = canvas.getContext("2d");
  if (context === null) throw new Error("the browser gives no canvas");
  context.fillStyle = "#ffffff";
  context.fillRect(0, 0, canvas.width, canvas.height);
  context.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob === null ? reject(new Error("the picture is too large")) : resolve(blob)),
      "image/png",
    ),
  );
}
