import { type BaseObject, type Group, Layer, Scene } from '../render.js';
import { nextTask } from './nextTask.js';

const layer = Layer.prototype;
const scene = Scene.prototype;

/** The engine's own ways. */
export const bare = { addObject: layer.addObject, getObject: scene.getObject };

/** A layer's word that it is drawn anew soon, which it keeps to itself. */
interface Pending {
  _debounceDirtyFunc?: (() => void) | null;
}

/**
 * Adding very many parts to what is drawn.
 * What: a formula with 450 references is entered at once; each reference gets a frame of a dozen parts. Expected: a time that
 * grows with the number of parts. Got: for each part all that is drawn is sorted, copied and gone through in search of it,
 * and drawing is put off anew, by a channel of its own: half a minute.
 */
export function mendManyFrames(): void {
  let adding: ReadonlySet<string> = new Set();

  layer.addObject = function (this: Layer, one: BaseObject) {
    const before = adding;
    // Parts of a group that is not there yet are not there either.
    if ('getObjects' in one) adding = new Set((one as Group).getObjects().map(({ oKey }) => oKey));
    try {
      return bare.addObject.call(this, one);
    } finally {
      adding = before;
    }
  };
  scene.getObject = function (this: Scene, key: string) {
    if (adding.has(key)) return undefined;
    for (const own of this.getLayers())
      for (const one of own.getObjects()) if (one.oKey === key && !one.isInGroup && one.visible) return one;
    return undefined;
  };
  layer.makeDirtyWithDebounce = function (this: Layer, state = true) {
    const pending = this as unknown as Pending;
    if (state && pending._debounceDirtyFunc) return;
    pending._debounceDirtyFunc?.();
    pending._debounceDirtyFunc = nextTask(() => {
      pending._debounceDirtyFunc = null;
      this.makeDirty(state);
    });
  };
}
