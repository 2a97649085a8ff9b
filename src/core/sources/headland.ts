import { source, type Source } from './source.ts';

/** Works that checks on the headland, loads and records rest on, by id; those of the engine's other parts are in `bibliography.ts`. */
export const HEADLAND_SOURCES = {
  'deveau-2009': source('Deveau, J.', '2009', 'Sprayer calibration and nozzle wear', 'Ontario ministry of agriculture', 'one minute per nozzle, fan off, pressure read while flowing; 10 % over new: the whole set; before and mid-season'),
  'florida-manual': source('Florida applicator examination manual', 'n.d.', 'Calibration', 'p. 213', 'nozzles more than 10 % from the mean are replaced; refill over a 660-ft course'),
  'luxembourg-vine': source('Luxembourg ministry, vine advisory', 'n.d.', 'Sprayer check', '', 'nozzles more than 15 % apart: clean, else replace; all off alike: set the pressure and catch again'),
  'ucce-preseason': source('University of California Cooperative Extension', 'n.d.', 'Pre-season airblast calibration', '', 'timed speed rather than the display; land per minute'),
  'iso-16122-3': source('ISO', '2015', 'ISO 16122-3 Inspection of sprayers in use, bush and tree crops', '', 'kinds of check and tolerances as remembered; its text was not read', 'memory'),
  'iso-16119-3': source('ISO', '2013', 'ISO 16119-3 Environmental requirements for sprayers, bush and tree crops', '', 'rinse water ten times the residual or a tenth of the tank', 'summary'),
  'eu-2023-564': source('European Commission', '2023', 'Implementing Regulation (EU) 2023/564', '', 'content and form of records of the use of plant protection products; taken from summaries, its annex was not read'),
  'eu-1107-2009': source('European Union', '2009', 'Regulation (EC) No 1107/2009, Article 67', '', 'product, time, dose, area and crop are recorded; taken from summaries'),
  'us-7-cfr-110-3': source('US Code of Federal Regulations', 'n.d.', '7 CFR 110.3', '', 'records of restricted-use products; taken from summaries'),
  'us-40-cfr-171-303': source('US Code of Federal Regulations', 'n.d.', '40 CFR 171.303(b)(7)', '', 'records of commercial applicators; taken from summaries'),
  'us-40-cfr-170': source('US Code of Federal Regulations', 'n.d.', '40 CFR 170.122', '', 'what is displayed for workers; since moved to 170.311, as remembered; taken from summaries'),
  'idaho-agriculture': source('Idaho State Department of Agriculture', 'n.d.', 'Records of restricted-use products', '', 'kept for two years'),
  'private-standards': source('private farm-assurance schemes', 'n.d.', 'Fields of spray records', '', 'crop and variety, field, date and end time, trade name, active ingredient, pre-harvest interval'),
  'ndsu-weed-guide': source('North Dakota State University', '2021', 'Weed control guide', 'NDSU Extension', 'order of mixing: agitate, soluble powders, dry powders, liquid flowables, emulsifiables, solutions'),
  'neapmg-1996': source('University of Vermont', '1996', 'New England apple pest management guide', '1996-97', 'concentration factor; dose by flow rather than by acres per tank'),
  'awri-2010': source('Australian Wine Research Institute', '2010', 'Calibrating vineyard sprayers', '', 'label rate per 100 L times the dilute volume sets the product, dilute or concentrate'),
  'pesticide-handbook': source('Agrochemical and Pesticide Safety Handbook', 'n.d.', 'Calculations', '', 'product is the rate of active ingredient over its fraction'),
  'niederholzer-2023': source('Niederholzer, F.; University of California Cooperative Extension', '2023', 'Advice on air-blast sprayers in mature orchards, as summarised', '', '65 to 80 % of the flow through the top half of the open nozzles, larger ones where the canopy is thickest'),
  'brann-1965': source('Brann, J. L.', '1965', 'Journal Paper 1429', 'New York State Agricultural Experiment Station', 'about 70 % from the top positions of a low radial machine in trees of 20 to 25 ft, as quoted later')
} as const satisfies Record<string, Source>;
