/** What a page must hold for its folder to be taken for an earlier gallery. */
export const MARK = '<meta name="generator" content="Rangecall gallery">';

export interface Pictured {
  readonly kind: string;
  readonly title: string;
  readonly picture: string;
  readonly files: readonly string[];
}

const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`);
const link = (path: string): string => `<a href="${encodeURI(path)}">${escaped(path.split("/").at(-1) ?? path)}</a>`;

const image = (path: string, alt: string): string => `<img src="${encodeURI(path)}" alt="${escaped(alt)}" loading="lazy">`;
/** A file below its card: a picture as itself. */
const caption = (path: string): string => `<figcaption>${link(path)}${path.endsWith(".png") ? `<br>${image(path, path)}` : ""}</figcaption>`;
const figure = ({ title, picture, files }: Pictured): string => `<figure>${image(picture, title)}${files.map(caption).join("")}</figure>`;

interface Look {
  readonly heading: string;
  /** The page that shows the same cards otherwise. */
  readonly other: { readonly page: string; readonly name: string };
}

/** The page that lists every picture under its kind, and every file. */
export function galleryPage(pictured: readonly Pictured[], samples: readonly string[], { heading, other }: Look): string {
  const kinds = [...new Set(pictured.map(({ kind }) => kind))].sort();
  const sections = kinds.map((kind) => {
    const own = pictured.filter((one) => one.kind === kind);
    return `<h2 id="${escaped(kind)}">${escaped(kind)} (${own.length})</h2>\n<div>${own.map(figure).join("\n")}</div>`;
  });
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8">${MARK}<title>Rangecall: ${escaped(heading)}</title>
<style>body{font:15px sans-serif;margin:24px}div{display:flex;flex-wrap:wrap;align-items:flex-start;gap:16px}figure{margin:0}img{border:1px solid #ccc;max-width:390px}</style></head>
<body>
<h1>${escaped(heading)}</h1>
<p><a href="${other.page}">${escaped(other.name)}</a></p>
<p>${kinds.map((kind) => `<a href="#${encodeURIComponent(kind)}">${escaped(kind)}</a>`).join(" · ")}</p>
<h2>Samples of files</h2>
<div>${samples.map((path) => `<figure>${caption(path)}</figure>`).join("\n")}</div>
${sections.join("\n")}
</body>
</html>
`;
}
