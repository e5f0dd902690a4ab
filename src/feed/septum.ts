import { cakeDensity, septumRadius } from '../quantities.js';

/** What cake depth and cake load both read. */
export const septum = { density: cakeDensity, radius: septumRadius } as const;

export const CYLINDER_SOURCE = 'Volume of a hollow cylinder over the area of its inner face.';
