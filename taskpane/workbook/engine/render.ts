export { type BaseObject, type Group, Layer, Scene } from '@univerjs/engine-render';
