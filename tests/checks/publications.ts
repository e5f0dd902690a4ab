import type { PublishedCheck } from './check.js';

/**
 * Every publication that a check takes a figure from, and how the sources of its checks begin. One book, paper, article,
 * regulation or data set counts once, however many of its tables or sections are used.
 */
export const PUBLICATIONS: readonly (readonly [title: string, ...beginnings: readonly string[]])[] = [
  ['IAPWS SR6-08, liquid water at 0.1 MPa', 'IAPWS SR6-08'],
  ['Korson, Drost-Hansen and Millero 1969, viscosity of water', 'Korson'],
  ['Perry’s Chemical Engineers’ Handbook, 9th edition', 'Perry’s'],
  ['Tanaka et al., Metrologia 38 (2001) 301, density of water', 'density of air-free water'],
  ['McCabe, Smith and Harriott, Unit Operations of Chemical Engineering', 'McCabe'],
  ['Geankoplis, Transport Processes and Unit Operations', 'Geankoplis'],
  ['Coulson and Richardson, Chemical Engineering volume 2', 'Coulson'],
  ['Sen, J. Am. Stat. Assoc. 63 (1968) 1379', 'P. K. Sen'],
  ['NIST Statistical Reference Datasets, Norris', 'NIST'],
  ['Ahmed, Reservoir Engineering Handbook', 'Ahmed'],
  ['Oil Well Testing Handbook', 'Oil Well'],
  ['Student 1908, sleep data, as in R’s documentation of t.test', 'Student, Biometrika'],
  ['Hendricks, Fundamentals of Water Treatment Unit Processes, 2011', 'Hendricks'],
  ['Drinking-water rules of Minnesota, 4720.3950', 'drinking-water rules'],
  ['Unit database of Debian units 2.22', 'unit database'],
  ['27 CFR part 25 (beer): barrels and cases', '27 CFR 25.', 'reckoned from 27 CFR 25.11'],
  ['27 CFR part 7 (labelling of malt beverages)', '27 CFR 7.'],
  ['29 CFR 1910.1000 (air contaminants)', '29 CFR 1910.1000'],
  ['Regulation (EU) No 1169/2011, Annex II', 'Regulation (EU)'],
  ['National Physical Laboratory (UK), Haze measurements in beer', 'National Physical Laboratory'],
  ['MBAA Technical Quarterly 1976, tq76ab36', 'MBAA Technical Quarterly 1976'],
  ['MBAA Technical Quarterly, tq85ab11', 'MBAA Technical Quarterly, tq85ab11'],
  ['ASBC Methods of Analysis, Beer-35', 'ASBC'],
  ['MEBAK, B-420-02-900, forcing test', 'MEBAK'],
  ['Beer-quality handbook of 2009, pages 85–109', 'beer-quality handbook'],
  ['R documentation of SSasymp, on Loblolly data of Kung 1986', 'R documentation'],
  ['Agricultural extension columns on shrink', 'agricultural extension columns'],
  ['Alberta Agriculture, pricing forages', 'Alberta'],
  ['University of California, Higginbotham, Buying or selling wet forages', 'University of California'],
  ['trade-marine.com, Bone dry metric ton explained', 'trade-marine.com'],
  ['beefconsultant.com, value of silage based on moisture content', 'beefconsultant.com, Calculating'],
  ['beefconsultant.com, dry forage against silage', 'beefconsultant.com, dry forage'],
  ['NDSU Extension, What value for standing corn crop silage?', 'NDSU'],
  ['Nebraska Extension (tsenews.net), price of hay', 'Nebraska'],
  ['temap.com, Air dry calculators', 'Air-dry tonne'],
  ['d.calculator.city, Dry basis calculator', 'd.calculator.city'],
  ['water-chemistry.in, How to calculate detention time', 'water-chemistry.in'],
  ['calculatorfriend.com, Detention time calculator', 'calculatorfriend.com'],
  ['voltexam.com, Water treatment math for the operator exam', 'voltexam.com'],
  ['dhl.com, UK import tax and duty', 'dhl.com'],
  ['Van den Berg and Van Landschoot, Cerevisia 28 (2003) 25', 'Van den Berg'],
  ['Premier Training, bookkeeping course, chapter 2', 'Premier Training'],
  ['wastewatertreatment-system.com, dewatered sludge', 'wastewatertreatment-system.com'],
];

/** The publication that a check's figure comes from; undefined where it was reckoned by hand or from definitions alone. */
export const publicationOf = ({ source }: Pick<PublishedCheck, 'source'>): string | undefined =>
  PUBLICATIONS.find(([, ...beginnings]) => beginnings.some((one) => source.startsWith(one)))?.[0];
