import type { Alignment } from './bookLook.js';
import { attribute, isTrue, whole, type XmlElement } from './readXml.js';

const ACROSS = ['left', 'center', 'right', 'justify'] as const;
const DOWN = ['top', 'center', 'bottom'] as const;
const STACKED = 255;

/** Degrees upwards; a file counts those downwards on from 90. */
function turnOf(word: string | undefined): Alignment['turned'] {
  const turn = whole(word) ?? 0;
  if (turn === STACKED) return 'stacked';
  if (turn === 0 || turn > 180) return undefined;
  return turn <= 90 ? turn : 90 - turn;
}

/** Where the content of a cell stands, and whether it has a way of standing that the grid has not. */
export function alignmentOf(
  element: XmlElement | undefined,
  indented: boolean,
): { readonly align?: Alignment; readonly odd: boolean } {
  const [horizontal = 'general', vertical = 'bottom'] = ['horizontal', 'vertical'].map((name) =>
    attribute(element, name),
  );
  // An indent counts from the left where nothing else is said, so that the left need not be said.
  const across = indented && horizontal === 'left' ? undefined : ACROSS.find((one) => one === horizontal);
  const down = DOWN.find((one) => one === vertical && attribute(element, 'vertical') !== undefined);
  const turned = turnOf(attribute(element, 'textRotation'));
  const align: Alignment = {
    ...(across ? { across } : {}),
    ...(down ? { down } : {}),
    ...(isTrue(attribute(element, 'wrapText')) ? { wrap: true } : {}),
    ...(turned === undefined ? {} : { turned }),
  };
  const known =
    (horizontal === 'general' || ACROSS.some((one) => one === horizontal)) && DOWN.some((one) => one === vertical);
  return {
    ...(Object.keys(align).length > 0 ? { align } : {}),
    odd: !known || isTrue(attribute(element, 'shrinkToFit')),
  };
}
