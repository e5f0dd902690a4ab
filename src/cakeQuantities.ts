import { quantity } from './quantity.js';

export const cakeDensity = quantity({
  label: 'Cake density',
  unit: 'kg/m³',
  limit: [20, 2000],
  usual: [100, 420],
  help: 'Dry solids in each m³ of wet cake.',
  source:
    'Usual range: perlite cakes 100–270, other powders’ cakes 230–420 kg/m³ (trade association sheet); drinking-water rules (Minnesota 4720.3950) imply 308.',
});

export const cakeLoad = quantity({
  label: 'Cake load',
  unit: 'kg/m²',
  limit: [0, 100],
  usual: [0.5, 9],
  help: 'Dry solids on each m² of septum, precoat included.',
  source: 'Usual range from memory of brewing textbooks: up to 6–9 kg/m² where the cake space is full.',
});

export const septumRadius = quantity({
  label: 'Septum radius',
  unit: 'mm',
  limit: [0, 10_000],
  usual: [0, 35],
  preset: 0,
  help: 'Half the outer diameter of a candle; 0 (as is a blank cell) for a flat septum.',
  source: 'Usual range: common practice, no source.',
});

export const permeability = quantity({
  label: 'Permeability',
  unit: 'darcy',
  limit: [1e-20, 20],
  help: 'Fitted from your own logs, or measured: a clean powder’s rated figure holds only for the clean powder.',
  source:
    'The limits only keep out slips of the keyboard. Clean diatomite: natural about 0.07, calcined 0.06–0.5, flux-calcined 0.8–5 darcy (Hendricks, Fundamentals of Water Treatment Unit Processes, 2011, Table 14.1).',
});

export const cakeResistance = quantity({
  label: 'Cake resistance',
  unit: 'm/kg',
  limit: [1e6, 1e32],
  help: 'Specific resistance of the cake as it forms, with yeast and haze in it; where it is compressible, at 1 bar.',
  source: 'The limits only keep out slips of the keyboard; the figure is your own.',
});

export const viscosity = quantity({
  label: 'Viscosity',
  unit: 'mPa·s',
  limit: [0.1, 1000],
  usual: [2.2, 3.5],
  help: 'Of the beer at filter temperature, not the laboratory’s at 20 °C.',
  source: 'Usual range from memory: lager of 12 °P 2.5–3.2 mPa·s at 0 °C.',
});

export const beerSolids = quantity({
  label: 'Beer solids',
  unit: 'g/hL',
  limit: [0, 5000],
  usual: [3, 100],
  help: 'Dry yeast and haze that each hL of beer brings to the cake.',
  source:
    'Usual range: 1 to 10 million cells per mL alone bring 3 to 30 g/hL (SOLIDSLOAD); above that, common practice, no source.',
});
