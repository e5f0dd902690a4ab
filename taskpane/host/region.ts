export interface Region {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

/** Everything around a cell up to the next empty rows and columns. */
export function around(
  row: number,
  column: number,
  isEmpty: (row: number, column: number) => boolean,
  most: Region,
): Region {
  const region = { top: row, bottom: row, left: column, right: column };
  const blank = (top: number, bottom: number, left: number, right: number) => {
    if (top < most.top || bottom > most.bottom || left < most.left || right > most.right) return true;
    for (let r = top; r <= bottom; r += 1) for (let c = left; c <= right; c += 1) if (!isEmpty(r, c)) return false;
    return true;
  };
  for (;;) {
    const { top, bottom, left, right } = region;
    if (!blank(bottom + 1, bottom + 1, left, right)) region.bottom += 1;
    else if (!blank(top - 1, top - 1, left, right)) region.top -= 1;
    else if (!blank(top, bottom, right + 1, right + 1)) region.right += 1;
    else if (!blank(top, bottom, left - 1, left - 1)) region.left -= 1;
    else return region;
  }
}
