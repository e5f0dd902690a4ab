/** One look of cells: the places of its parts in the lists, counted from 0. */
interface Look {
  readonly format?: number;
  readonly font?: number;
  readonly fill?: number;
  readonly border?: number;
  /** The alignment's attributes. */
  readonly align?: string;
  readonly protection?: string;
}

interface Looks {
  readonly formats?: readonly string[];
  readonly fonts?: readonly string[];
  readonly fills?: readonly string[];
  readonly borders?: readonly string[];
  readonly cells: readonly Look[];
  readonly conditions?: readonly string[];
}

const FIRST_FORMAT = 164;
const list = (name: string, parts: readonly string[]) => `<${name} count="${parts.length}">${parts.join('')}</${name}>`;

/** A font's element from what is said beside its usual size and name. */
export const font = (said: string, size = 11, name = 'Calibri') =>
  `<font>${said.replace(/<color.*/, '')}<sz val="${size}"/>${/<color.*/.exec(said)?.[0] ?? ''}<name val="${name}"/></font>`;
export const solid = (rgb: string) =>
  `<fill><patternFill patternType="solid"><fgColor rgb="FF${rgb}"/><bgColor indexed="64"/></patternFill></fill>`;
export const lines = (sides: Readonly<Record<string, string>>) =>
  `<border>${['left', 'right', 'top', 'bottom']
    .map((side) => (sides[side] ? `<${side} style="${sides[side]}"><color rgb="FF112233"/></${side}>` : `<${side}/>`))
    .join('')}<diagonal/></border>`;

/** What stands in the styles' element. The first look is the usual one; looks of cells follow from 1 on. */
export function looks({ formats = [], fonts = [], fills = [], borders = [], cells, conditions = [] }: Looks): string {
  const own = cells.map(({ format, font: f, fill, border, align, protection }) => {
    const inside = `${align ? `<alignment ${align}/>` : ''}${protection ? `<protection ${protection}/>` : ''}`;
    const said = `numFmtId="${format === undefined ? 0 : FIRST_FORMAT + format}" fontId="${f === undefined ? 0 : f + 1}" fillId="${fill === undefined ? 0 : fill + 2}" borderId="${border === undefined ? 0 : border + 1}" xfId="0"`;
    return `<xf ${said} applyNumberFormat="1" applyFont="1" applyFill="1" applyBorder="1"${align ? ' applyAlignment="1"' : ''}${protection ? ' applyProtection="1"' : ''}>${inside}</xf>`;
  });
  return [
    formats.length > 0
      ? list(
          'numFmts',
          formats.map(
            (code, n) => `<numFmt numFmtId="${FIRST_FORMAT + n}" formatCode="${code.replaceAll('"', '&quot;')}"/>`,
          ),
        )
      : '',
    list('fonts', [font(''), ...fonts]),
    list('fills', ['none', 'gray125'].map((kind) => `<fill><patternFill patternType="${kind}"/></fill>`).concat(fills)),
    list('borders', [lines({}), ...borders]),
    '<cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs>',
    list('cellXfs', ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>', ...own]),
    '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles>',
    list('dxfs', conditions),
  ].join('');
}
