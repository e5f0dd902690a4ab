import type { Page } from 'playwright-core';

export interface Clip {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How each pixel of a part of the page stands out from the pixel in its lower left corner: WCAG 2.2, contrast ratio. */
export async function contrasts(page: Page, clip: Clip): Promise<readonly number[]> {
  const shot = (await page.screenshot({ clip })).toString('base64');
  return page.evaluate(async (png) => {
    const image = new Image();
    image.src = `data:image/png;base64,${png}`;
    await image.decode();
    const { width, height } = image;
    const drawing = new OffscreenCanvas(width, height).getContext('2d');
    if (!drawing) throw new Error('Nothing can be drawn.');
    drawing.drawImage(image, 0, 0);
    const { data } = drawing.getImageData(0, 0, width, height);
    const channel = (at: number) => {
      const share = (data[at] ?? 0) / 255;
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
    };
    const light = (at: number) => 0.2126 * channel(at) + 0.7152 * channel(at + 1) + 0.0722 * channel(at + 2);
    const ground = light((height - 1) * width * 4);
    return Array.from({ length: width * height }, (_, pixel) => {
      const own = light(pixel * 4);
      return (Math.max(own, ground) + 0.05) / (Math.min(own, ground) + 0.05);
    });
  }, shot);
}

/** How a colour such as `#4e5565` stands out from white: WCAG 2.2, contrast ratio. */
export function contrastOnWhite(colour: string): number {
  const [red = 0, green = 0, blue = 0] = (colour.match(/[0-9a-f]{2}/gi) ?? []).map((two) => {
    const share = Number.parseInt(two, 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 1.05 / (0.2126 * red + 0.7152 * green + 0.0722 * blue + 0.05);
}
