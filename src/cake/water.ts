import { temperature } from '../quantities.js';

export const IAPWS_SOURCE =
  'IAPWS SR6-08, Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa (2011), valid from −20 to 110 °C.';

/** Water as it is met in practice: the release reaches further on both sides, into supercooled and superheated water. */
export const waterTemperature = {
  ...temperature,
  limit: [0, 100],
  usual: [0, 90],
  help: 'Of the water.',
  source:
    'Limits: water freezes at 0 °C and boils at about 100 °C at atmospheric pressure. Usual range: common practice, no source.',
} as const;
