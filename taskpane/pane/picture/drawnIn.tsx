import type { Texts } from '../../texts/texts.js';
import { BarChart } from './BarChart.js';
import { layOutBars } from './barLayout.js';
import { Chart } from './Chart.js';
import { layOut, type Room } from './layout.js';
import type { Picture } from './picture.js';

/** The drawing for a room, and how high it is. */
export function drawnIn(room: Room, picture: Picture, words: Texts['picture']) {
  if ('bars' in picture) {
    const layout = layOutBars(picture.bars, room);
    return { height: layout.height, drawing: <BarChart layout={layout} bars={picture.bars} /> };
  }
  const layout = layOut(picture, room);
  return { height: layout.height, drawing: <Chart layout={layout} x={picture.x} words={words} /> };
}
