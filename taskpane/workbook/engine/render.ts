export {
  type BaseObject,
  type Group,
  IRenderManagerService,
  Layer,
  Scene,
  SHEET_VIEWPORT_KEY,
} from '@univerjs/engine-render';
