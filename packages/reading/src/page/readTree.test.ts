import { expect, test } from "vitest";
import { elementsOf, textOf } from "./PageElement.ts";
import { readTree } from "./readTree.ts";

function outline(html: string): string {
  const tell = (element: ReturnType<typeof readTree>["root"]): string => {
    const within = element.children
      .map((child) => (typeof child === "string" ? child.trim() : tell(child)))
      .filter(Boolean);
    return within.length > 0 ? `${element.name}(${within.join(" ")})` : element.name;
  };
  return readTree(html)
    .root.children.map((child) => (typeof child === "string" ? child.trim() : tell(child)))
    .join(" ");
}

test("ends that may be left out are put in", () => {
  expect(outline("<ul><li>a<li>b<ul><li>c</ul></ul>")).toBe("ul(li(a) li(b ul(li(c))))");
  expect(outline("<p>a<p>b<div>c</div>")).toBe("p(a) p(b) div(c)");
  expect(outline("<table><tr><td>a<td>b<tr><td>c</table>")).toBe("table(tr(td(a) td(b)) tr(td(c)))");
});

test("elements that hold nothing are not waited for", () => {
  expect(outline("<div>a<br>b<meta itemprop=x content=y>c</div>d")).toBe("div(a br b meta c) d");
});

test("the end of a bold stretch does not end the block around it", () => {
  expect(outline("<div><b>a<div>b</b>c</div>d</div>e")).toBe("div(b(a div(bc) d)) e");
});

test("an end without a beginning ends nothing", () => {
  expect(outline("<div>a</span></p>b</div>")).toBe("div(ab)");
});

test("handlers of scripts are not even kept", () => {
  const elements = [...elementsOf(readTree('<a onclick="alert(1)" href="x" style="y" itemprop="z">t</a>').root)];
  expect([...(elements[1]?.attributes.keys() ?? [])]).toEqual(["href", "itemprop"]);
});

test("only scripts that hold data are kept, comments and pictures are cut out", () => {
  const html = `<!-- <p>a --><script>var b = "<p>c</p>";</script><script type="application/ld+json">{"d":"</p>"}</script><STYLE>e{}</STYLE><p>f</p>`;
  const { root } = readTree(html);
  expect(outline(html)).toBe('script script({"d":"</p>"}) style p(f)');
  expect(textOf(root).trim()).toBe("f");
});

test("a comment or script that never ends is not cut out with all that follows", () => {
  expect(outline("<p>a</p><script>b")).toBe("p(a) script(b)");
});

test("depth and number of elements are limited, and the limits told", () => {
  const deep = readTree(`${"<div>".repeat(10_000)}x${"</div>".repeat(10_000)}<p>y</p>`);
  expect(deep.issues.map(({ code }) => code)).toEqual(["page-too-deep"]);
  expect(textOf(deep.root).trim().split(/\s+/)).toEqual(["x", "y"]);
  expect(deep.root.children.length).toBe(2);
  expect(readTree("<b></b>".repeat(60_000)).issues.map(({ code }) => code)).toEqual(["page-too-large"]);
  expect(readTree("x".repeat(1_100_000)).issues.map(({ code }) => code)).toEqual(["page-too-long"]);
});
