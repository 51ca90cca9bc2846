import { type ReactNode, useMemo } from "react";
import { encode } from "uqr";

/** A text as a QR code (ISO/IEC 18004), dark on white whatever the page looks like, with the four cells of quiet around it. */
export default function QrCode({ text, label }: { readonly text: string; readonly label: string }): ReactNode {
  const { path, size } = useMemo(() => {
    const { data } = encode(text, { border: 4 });
    const cells = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])));
    return { path: cells.join(""), size: data.length };
  }, [text]);
  return (
    <svg className="qr" viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label} shapeRendering="crispEdges">
      <path d={path} fill="currentColor" />
    </svg>
  );
}
