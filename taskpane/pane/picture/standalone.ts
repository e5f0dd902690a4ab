/** What the page's style sheets settle and a picture on its own would lose. */
const PROPERTIES = [
  'fill',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'opacity',
] as const;

const NAMESPACE = 'http://www.w3.org/2000/svg';

/** A drawing of the page as a document of its own, in the colours in which it is seen. */
export function standalone(drawing: SVGSVGElement, ground: string): string {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const seen = [...drawing.querySelectorAll('*')];
  for (const [index, element] of [...copy.querySelectorAll('*')].entries()) {
    const style = getComputedStyle(seen[index] as Element);
    for (const name of PROPERTIES) element.setAttribute(name, style.getPropertyValue(name));
    element.removeAttribute('class');
  }
  const { width, height } = drawing.viewBox.baseVal;
  const background = document.createElementNS(NAMESPACE, 'rect');
  for (const [name, value] of Object.entries({ width, height, fill: ground })) {
    background.setAttribute(name, String(value));
  }
  copy.prepend(background);
  for (const name of copy.getAttributeNames()) if (name !== 'viewBox') copy.removeAttribute(name);
  copy.setAttribute('width', String(width));
  copy.setAttribute('height', String(height));
  return new XMLSerializer().serializeToString(copy);
}

/** Twice as many pixels as on the page, so that the picture stays sharp in a report. */
const SHARPNESS = 2;

/** The drawing as a PNG. Rejects where the browser cannot draw it. */
export async function asPng(svg: string): Promise<Blob> {
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = image.naturalWidth * SHARPNESS;
    canvas.height = image.naturalHeight * SHARPNESS;
    canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
    return await new Promise((resolve, reject) =>
      canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('The picture could not be drawn.')))),
    );
  } finally {
    URL.revokeObjectURL(address);
  }
}
