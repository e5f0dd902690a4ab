const SIGN = '[€$£]';
const BEFORE = new RegExp(`^([+\\-−]?)\\s*(${SIGN})\\s*([+\\-−]?)([\\d.,'’\\s].*)$`);
const BEHIND = new RegExp(`^([+\\-−]?)([\\d.,'’\\s]*\\d)\\s*(${SIGN})$`);

export interface Money {
  /** The number alone, as it is read otherwise. */
  readonly number: string;
  readonly sign: '€' | '$' | '£' | undefined;
  readonly behind: boolean;
  /** In brackets, as accountants write what is below zero. */
  readonly bracketed: boolean;
}

/** A number with the sign of a currency, or in brackets; undefined for anything else. */
export function readMoney(typed: string): Money | undefined {
  const text = typed.trim();
  const inner = /^\(([^()]+)\)$/.exec(text)?.[1]?.trim();
  const plain = inner ?? text;
  const [before, behind] = [BEFORE.exec(plain), BEHIND.exec(plain)];
  const sign = (before?.[2] ?? behind?.[3]) as Money['sign'];
  if (inner === undefined && !sign) return undefined;
  if (before?.[1] && before[3]) return undefined;
  const number = before ? `${before[1] || before[3]}${before[4]}` : behind ? `${behind[1]}${behind[2]}` : plain;
  if (inner !== undefined && /^[+\-−]/.test(number)) return undefined;
  return {
    number: inner === undefined ? number : `-${number.trim()}`,
    sign,
    behind: behind !== null,
    bracketed: inner !== undefined,
  };
}

/** The format that shows a number as it was typed. */
export function moneyFormat({ sign, behind, bracketed }: Money, decimals: number): string {
  const number = `#,##0${decimals > 0 ? `.${'0'.repeat(decimals)}` : ''}`;
  const whole = !sign ? number : behind ? `${number} "${sign}"` : `"${sign}"${number}`;
  return bracketed ? `${whole};(${whole})` : !behind && sign ? `${whole};-${whole}` : whole;
}
