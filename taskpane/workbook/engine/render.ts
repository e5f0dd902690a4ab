export { type BaseObject, type Group, Layer, Scene, SHEET_VIEWPORT_KEY } from '@univerjs/engine-render';
