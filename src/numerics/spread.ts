/**
 * How uncertain a fitted figure is that depends on several fitted parameters.
 * @param columns of the Jacobian: each parameter's derivative of the curve, at every point.
 * @returns for a gradient of the figure by those parameters, its standard error over the residual standard
 * deviation: the square root of gᵀ (JᵀJ)⁻¹ g. Not finite where the points cannot tell the parameters apart.
 */
export function errorScale(columns: readonly Float64Array[]): (gradient: readonly number[]) => number {
  const upper = triangle(columns.map((column) => Float64Array.from(column)));
  return (gradient) => {
    const solved: number[] = [];
    for (const [row, wanted] of gradient.entries()) {
      const known = solved.reduce((sum, value, column) => sum + value * (upper[column]?.[row] as number), 0);
      solved.push((wanted - known) / (upper[row]?.[row] as number));
    }
    return Math.hypot(...solved);
  };
}

/** R of J = QR by modified Gram–Schmidt: J itself is never squared, so near-equal columns cost half the digits only. */
function triangle(columns: readonly Float64Array[]): readonly (readonly number[])[] {
  const rows: number[][] = [];
  for (const [index, column] of columns.entries()) {
    const length = Math.hypot(...column);
    const row = new Array<number>(columns.length).fill(0);
    row[index] = length;
    for (let later = index + 1; later < columns.length; later++) {
      const other = columns[later] as Float64Array;
      const along = column.reduce((sum, value, point) => sum + (value / length) * (other[point] as number), 0);
      row[later] = along;
      for (let point = 0; point < other.length; point++) {
        other[point] = (other[point] as number) - (along * (column[point] as number)) / length;
      }
    }
    rows.push(row);
  }
  return rows;
}
