import type { CANOPY_SOURCES } from './canopy.ts';
import type { COMPARISON_SOURCES } from './comparison.ts';
import type { HEADLAND_SOURCES } from './headland.ts';
import type { SEASON_SOURCES } from './season.ts';
import type { SPRAY_SOURCES } from './spray.ts';
import { source, type Source } from './source.ts';

export type { Source };

/** The bibliography, by id. */
export const SOURCES = {
  'penn-state-tree-fruit': source('Penn State Extension', 'current', 'Tree Fruit Production Guide', 'Pennsylvania State University', 'tree-row volume; standard orchard of 20 × 23 × 35 ft at 400 gal/acre, hence 0.7 gal/1000 ft³'),
  'landers-trv': source('Landers, A.', 'n.d.', 'Tree row volume', 'Cornell University, NYSAES Geneva, factsheet', 'US formula, density factor 0.7 to 1.0, concentration factor'),
  'canada-trv': source('Canadian provincial agriculture ministry', 'n.d.', 'Tree-Row-Volume: concept, calculations and application', 'metric factsheet', 'metric formula; 3343 L/ha on 35 676 m³/ha; multipliers 1.0, 0.85, 0.75'),
  'rutgers-1998': source('Rutgers Cooperative Extension', '1998', 'Tree fruit production recommendations', 'Rutgers University', 'early season 0.25–0.35 gal/1000 ft³ against 0.70 at full foliage'),
  'sutton-unrath-1984': source('Sutton, T. B.; Unrath, C. R.', '1984', 'Evaluation of the tree-row-volume concept with density adjustments in relation to spray deposits in apple orchards', 'Plant Disease 68:480–484', 'smallest trees received less deposit under a proportional rate'),
  'sutton-unrath-1988': source('Sutton, T. B.; Unrath, C. R.', '1988', 'Evaluation of the tree-row-volume model for full-season pesticide application on apples', 'Plant Disease 72:629–632', 'higher early deposit is no reason to cut the rate per hectare'),
  'toews-friessleben-2012': source('Toews, R.-B.; Frießleben, R.', '2012', 'Dose rate expression – need for harmonization and consequences of the leaf wall area approach', 'Erwerbs-Obstbau', 'leaf wall area; 8000–19 000 m²/ha in German apple'),
  'eppo-pp1-239': source('EPPO', '2021', 'PP 1/239(3) Dose expression for plant protection products', 'EPPO Bulletin 51(1)', 'that leaf wall area is a dose expression; its text was not read'),
  'bvl-2012': source('BVL', '2012', 'Pflanzenschutzmittel-Verzeichnis', 'ch. 3.1', 'water of 100 to 500 L/ha per metre of crown height'),
  'arenenberg-2011': source('BBZ Arenenberg', '2011', 'Notice on crop-adapted dosing', '22 August 2011', '10 000 m³/ha goes with 1600 L/ha single strength or 400 L/ha four-fold'),
  'swiss-register-2026': source('Swiss plant protection product register', '2026', 'Register entry notes', '3 February 2026', 'rates for fruit trees refer to 10 000 m³/ha and must be adapted to the tree volume'),
  'ruegg-viret-1999': source('Rüegg, J.; Viret, O.', '1999', 'Crop-adapted dosing in fruit growing', 'as cited by Agroscope 2006', 'tree-row-volume basis of Swiss fruit dosing; the straight line is from memory', 'memory'),
  'furness-1998': source('Furness, G. O.; Magarey, P. A.; Miller, P. H.; Drew, H. J.', '1998', 'Fruit tree and vine sprayer calibration based on canopy size and length of row: unit canopy row method', 'Crop Protection 17(8)', 'unit canopy row: 1 m high, 1 m wide, 100 m of row', 'summary', 'doi:10.1016/S0261-2194(98)00064-7'),
  'furness-thompson': source('Furness, G. O.; Thompson, A. J.', 'n.d.', 'Using point of first run-off to set spray volume', 'CIGR Ejournal, art. 1247', '25 L per 100 m of row per metre of canopy height in citrus; run-off from 50–60'),
  'bound-boucher': source('Bound, S.', 'n.d.', 'chapter in Production Practices and Quality Assessment of Food Crops, vol. 1, p. 96, citing Boucher 1999', '', 'litres to run-off per 1000 m³: 75 dormant, 100 low or early, 125 medium, 150 high density'),
  'wilton-nz': source('Wilton, J.', 'n.d.', 'Thinner application notes', "Hawke's Bay Fruitgrowers' Association", '1 L per 10 m³ of canopy in apple'),
  'chen-zhu-2012': source('Chen, Y.; Zhu, H.; Ozkan, H. E.', '2012', 'Development of a variable-rate sprayer with laser scanning sensor', 'Transactions of the ASABE 55:773–781', '0.13 L per m³ of occupied canopy', 'memory'),
  'walklate-2003': source('Walklate, P. J.; Cross, J. V.; Richardson, G. M.; et al.', '2003', 'A generic method of pesticide dose expression: application to broadcast spraying of apple trees', 'Annals of Applied Biology', 'dose index from a crop length scale; leaf area as one of them'),
  'walklate-cross-2012': source('Walklate, P. J.; Cross, J. V.', '2012', 'An examination of Leaf-Wall-Area dose expression', 'Crop Protection 35:132–134', 'that leaf wall area ignores width and density'),
  'forshey-1987': source('Forshey, C. G.; Weires, R. W.; VanKirk, J. R.', '1987', 'Seasonal development of the leaf canopy of McIntosh apple trees', 'HortScience 22(5):881', 'leaf area at full bloom 10 %, at petal fall 23 % of the final area; eight times full bloom four weeks later'),
  'herrington-1981': source('Herrington, P. J.; Mapother, H. R.; Stringer, A.', '1981', 'Spray retention and distribution on apple trees', 'Pesticide Science', 'share of spray retained by bare and leafed trees'),
  'error-propagation': source('GUM, JCGM 100', '2008', 'Evaluation of measurement data: guide to the expression of uncertainty in measurement', 'clause 5.2', 'first-order propagation with correlation', 'memory'),
  'student-1908': source('Student', '1908', 'The probable error of a mean', 'Biometrika 6:1–25', 't distribution', 'memory'),
  'pat-gardonne': source('PAT Gardonne', '2015', 'Sheet 7: sprayer setting', 'France', 'V = 600·Q/(v·W)'),
  'drome-2021': source("Chambre d'agriculture de la Drôme", '2021', 'Sprayer setting in orchards', '', 'v = 360/t over 100 m'),
  'sqrt-law': source('Bernoulli; Torricelli', '', 'Orifice flow', 'general hydraulics', 'flow follows the square root of pressure', 'memory'),
  'iso-10625': source('ISO', '2018', 'Equipment for crop protection: sprayer nozzles, colour coding for identification', 'ISO 10625', 'sizes, colours and nominal flows, quoted from memory; the text was not read', 'memory', 'ISO 10625'),
  'nebraska-2016': source('University of Nebraska Extension', '2016', 'Nozzles: selection and sizing', '', 'flow of a liquid = flow of water / √(specific gravity)'),
  'comite-citricos-2024': source('Comité de Cítricos (Chile)', '2024', 'Citrus spraying manual', 'p. 53', 'hollow cones 5 to 15 bar; at least 0.30 m from nozzle to leaf'),
  'texas-worksheet': source('Texas A&M AgriLife Extension', 'n.d.', 'Winegrape air-blast calibration worksheet', '', 'other nozzles when the sum is more than 10 % off'),
  'ozkan-2021': source('Ozkan, H. E.', '2021', 'Orchard sprayer calibration', 'Ohio State University Extension FABE-537', 'adjust when more than 5 % from the intended volume'),
  'lwk-nrw': source('Landwirtschaftskammer Nordrhein-Westfalen (Kramer)', 'n.d.', 'Setting air-blast sprayers', '', 'the tallest trees set the upper limit; shut nozzles in pairs'),
  'ucce-airblast': source('Niederholzer, F.; Milliron, L.; University of California Cooperative Extension', '2023', 'Pre-season air-blast calibration', '', 'ribbon at the tree top as the judge of air and speed'),
  'landers-air': source('Landers, A.', 'n.d.', 'Air volume and canopy', 'Cornell University', 'spray-laden air replaces the air in the canopy and spends itself there'),
  'balsari-2002': source('Balsari, P.; Marucco, P.; Oggero, G.', '2002', 'Spray application in Italian apple orchards', 'ASAE paper 021002', '30 000 m³/h at 6 km/h as a plausible case', 'summary', 'doi:10.13031/2013.9337'),
  'fan-laws': source('general fan engineering', '', 'Affinity laws', '', 'flow ∝ speed, pressure ∝ speed², power ∝ speed³', 'memory'),
  'fao-56': source('Allen, R. G.; Pereira, L. S.; Raes, D.; Smith, M.', '1998', 'Crop evapotranspiration', 'FAO Irrigation and Drainage Paper 56', 'saturation vapour pressure, psychrometric constant, pressure by altitude', 'memory'),
  'bom-delta-t': source('Australian Bureau of Meteorology', 'n.d.', 'Delta T guidance', 'as reported', '2 to 8 °C preferred, not above 10 °C'),
  'grdc-10': source('GRDC', '2025', 'Spray Application Manual', 'modules 10.2, 10.3 and 10.8', 'assume an inversion from one to two hours before sunset to an hour after sunrise; measure at the site'),
  'waikato-plan': source('Waikato Regional Council', 'n.d.', 'Regional plan 6.2.9', '', 'low hazard 1–3 m/s; high below 1 or above 6 m/s'),
  'austria-chambers': source('Austrian chambers of agriculture (Köppl)', '2021', 'Drift advice', '', 'wind up to 5 m/s with drift-reducing nozzles, 3 m/s without'),
  'tuebingen-2023': source('Landratsamt Tübingen', '2023', 'District spraying advice', '', 'avoid above 25 °C, above 5 m/s, below 50 % humidity'),
  'holownicki-2000': source('Hołownicki, R.; et al.', '2000', 'Variation of spray deposit and loss with air-jet directions applied in orchards', 'Journal of Agricultural Engineering Research', 'spouts 20° upward deposit more and lose less than conventional'),
  'duga-2015': source('Duga, A. T.; et al.', '2015', 'Spray deposition profiles in pome fruit trees', 'Crop Protection 67:200–213', 'aiming nozzles at the target always helps'),
  'waac-concentration': source('Washington State', 'current', 'WAC 16-228-1225', '', 'less water than the label states is not allowed there'),
  geometry: source('geometry', '', 'plane trigonometry', '', 'ray from nozzle to canopy outline', 'work'),
  arithmetic: source('arithmetic', '', 'definition', '', 'exact by definition of the units', 'work'),
  'asabe-d497': source('ASABE', 'n.d.', 'D497 Agricultural machinery management data', '', 'field efficiency of sprayers', 'memory'),
  'habit': source('common practice', '', 'no citable source', '', 'value in general use', 'memory')
} as const satisfies Record<string, Source>;

/** Of these and of those that are loaded with the headland, the spray model, the season, photographs and laser files, and the comparison of strategies. */
export type SourceId = keyof typeof SOURCES | keyof typeof HEADLAND_SOURCES | keyof typeof SPRAY_SOURCES | keyof typeof SEASON_SOURCES | keyof typeof CANOPY_SOURCES | keyof typeof COMPARISON_SOURCES;
