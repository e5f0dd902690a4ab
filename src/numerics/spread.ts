/**
 * How uncertain a fitted figure is that depends on several fitted parameters.
 * @param columns of the Jacobian: each parameter's derivative of the curve, at every point.
 * @returns for a gradient of the figure by those parameters, its standard error over the residual standard
 * deviation: the square root of gᵀ (JᵀJ)⁻¹ g. Not finite where the points cannot tell the parameters apart.
 */
export function errorScale(columns: readonly Float64Array[]): (gradient: readonly number[]) => number {
  const solve = solver(columns);
  return (gradient) => Math.hypot(...solve(gradient).solved);
}

/** How much such a figure follows each point: J (JᵀJ)⁻¹ g. */
export function figureWeights(columns: readonly Float64Array[]): (gradient: readonly number[]) => Float64Array {
  const solve = solver(columns);
  return (gradient) => {
    const { solved, axes } = solve(gradient);
    return (axes[0] as Float64Array).map((_, point) =>
      solved.reduce((sum, share, axis) => sum + share * (axes[axis]?.[point] as number), 0),
    );
  };
}

/** Solves Rᵀ q = g, with R and the axes Q of J = QR. */
function solver(columns: readonly Float64Array[]) {
  const { upper, axes } = triangle(columns.map((column) => Float64Array.from(column)));
  return (gradient: readonly number[]) => {
    const solved: number[] = [];
    for (const [row, wanted] of gradient.entries()) {
      const known = solved.reduce((sum, value, column) => sum + value * (upper[column]?.[row] as number), 0);
      solved.push((wanted - known) / (upper[row]?.[row] as number));
    }
    return { solved, axes };
  };
}

/** J = QR by modified Gram–Schmidt: J itself is never squared, so near-equal columns cost half the digits only. */
function triangle(columns: readonly Float64Array[]) {
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
  return {
    upper: rows as readonly (readonly number[])[],
    axes: columns.map((column, index) => column.map((one) => one / (rows[index]?.[index] as number))),
  };
}
