/** A sheet of squared paper: row by row from below, 0 metal, 1 mould, 2 chill. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly squares: Uint8Array;
}

export const sheetSize = { width: 24, height: 16 } as const;
const letters = 'abc';

/** A web standing on a web, to begin with. */
export function emptyTee(): Sheet {
  const { width, height } = sheetSize;
  const squares = new Uint8Array(width * height).fill(1);
  for (let j = 2; j < 6; j += 1) squares.fill(0, j * width + 3, j * width + 21);
  for (let j = 6; j < 14; j += 1) squares.fill(0, j * width + 10, j * width + 14);
  return { width, height, squares };
}

/** `b51a18b6…`: runs of alike squares. */
export function writeSquares({ squares }: Sheet): string {
  let text = '';
  for (let from = 0; from < squares.length;) {
    let to = from;
    while (to < squares.length && squares[to] === squares[from]) to += 1;
    text += `${letters[squares[from]!]!}${to - from}`;
    from = to;
  }
  return text;
}

/** The sheet a text stands for; undefined when it is none. */
export function readSquares(text: string): Sheet | undefined {
  const { width, height } = sheetSize;
  if (!/^(?:[abc]\d{1,4})+$/.test(text)) return undefined;
  const squares: number[] = [];
  for (const [, letter = '', count = ''] of text.matchAll(/([abc])(\d+)/g)) {
    if (squares.length + Number(count) > width * height) return undefined;
    for (let n = 0; n < Number(count); n += 1) squares.push(letters.indexOf(letter));
  }
  return squares.length === width * height ? { width, height, squares: Uint8Array.from(squares) } : undefined;
}

/** Fewest squares of metal side by side, along or up, anywhere. */
export function thinnestOf({ width, height, squares }: Sheet): number {
  let least = Infinity;
  const runs = (count: number, length: number, at: (line: number, n: number) => number): void => {
    for (let line = 0; line < count; line += 1) {
      let run = 0;
      for (let n = 0; n <= length; n += 1) {
        if (n < length && squares[at(line, n)] === 0) run += 1;
        else if (run > 0) {
          least = Math.min(least, run);
          run = 0;
        }
      }
    }
  };
  runs(height, width, (j, i) => i + width * j);
  runs(width, height, (i, j) => i + width * j);
  return least;
}
