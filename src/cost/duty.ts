/** What duty is levied on: customs commonly take the value with freight and insurance to the border. */
export const dutyOn = {
  kind: 'choice',
  of: ['goods', 'goods and freight'],
  label: 'Duty on',
  preset: 'goods',
  help: 'Whether the freight bears duty, too, as in the usual customs value with freight and insurance to the border: ask your forwarder.',
} as const;

interface Bought {
  /** Per kg, after discount. */
  readonly goods: number;
  readonly freight: number;
  readonly duty: number;
  readonly dutyOn: (typeof dutyOn.of)[number];
}

/** Goods, freight and duty, per kg. */
export const withDuty = ({ goods, freight, duty, dutyOn }: Bought): number =>
  dutyOn === 'goods' ? goods * (1 + duty) + freight : (goods + freight) * (1 + duty);

/** Where the usual basis of duty is laid down. */
export const DUTY_SOURCE =
  'Customs value with transport and insurance to the border: Regulation (EU) No 952/2013, article 71(1)(e); without them in the United States, 19 U.S.C. 1401a(b)(4) (both from memory).';
