/** A fenced block of a page: what follows the fence, and the text inside of it. */
export type Fence = {
  readonly language: string;
  readonly words: readonly string[];
  readonly text: string;
  readonly line: number;
};

/** Every fenced block of a page, in its order. */
export function fencesOf(page: string): Fence[] {
  const found: Fence[] = [];
  let open: { info: string; line: number; body: string[] } | null = null;
  for (const [index, line] of page.split('\n').entries()) {
    const fence = /^```(.*)$/.exec(line);
    if (fence && open === null) {
      open = { info: fence[1] ?? '', line: index + 1, body: [] };
    } else if (fence && open) {
      const [language = '', ...words] = open.info.trim().split(/ +/);
      found.push({ language, words, text: open.body.join('\n'), line: open.line });
      open = null;
    } else open?.body.push(line);
  }
  return found;
}

/** Links of a page to other files of the project, without what follows the `#`. */
export function linksOf(page: string): { readonly target: string; readonly heading: string }[] {
  const prose = page.replaceAll(/^```[\s\S]*?^```$/gm, '');
  return [...prose.matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target = '']) => target)
    .filter((target) => !/^[a-z]+:/.test(target))
    .map((target) => {
      const [file = '', heading = ''] = target.split('#');
      return { target: file, heading };
    });
}

/** The anchor that a heading gets where Markdown is shown. */
export const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');
