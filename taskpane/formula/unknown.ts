/** A part of a formula that only the workbook itself can calculate, and which part that is. */
export class Unknown {
  constructor(
    readonly kind: 'function' | 'reference' | 'operator' | 'missing',
    readonly what: string,
  ) {}
}
