import { source, type Source } from './source.ts';

/** Works that the model of air and spray rests on, by id; loaded with it. */
export const SPRAY_SOURCES = {
  'pergher-2013': source('Pergher, G.; et al.', '2013', 'Tunnel sprayer in a vertically trained vineyard, as summarised', '', 'total deposit 14.8 to 53.9 % of what was applied at leaf layer indices of 0.69 to 2.74, to which G was fitted'),
  'petroff-2009': source('Petroff, A.; Zhang, L.; Pryor, S. C.; Belot, Y.', '2009', 'An extended dry deposition model for aerosols onto broadleaf canopies', 'Journal of Aerosol Science', 'impaction on broad leaves (St/(St + 0.47))²'),
  'petroff-2008': source('Petroff, A.; Mailliat, A.; Amielh, M.; Anselmet, F.', '2008', 'Aerosol dry deposition on vegetative canopies', 'Atmospheric Environment', 'impaction on needles and cylinders (St/(St + 0.6))²'),
  'katul-2004': source('Katul, G. G.; et al.', '2004', 'One- and two-equation models for canopy turbulence', 'Boundary-Layer Meteorology', 'drag coefficient 0.2, displacement 0.67 H, from an implementation of it'),
  'rajaratnam-1976': source('Rajaratnam, N.', '1976', 'Turbulent jets', 'Elsevier', 'decay and spread of plane jets', 'memory'),
  'pope-2000': source('Pope, S. B.', '2000', 'Turbulent flows', 'Cambridge University Press', 'spread of plane and round jets', 'memory'),
  'witze-dwyer-1976': source('Witze, P. O.; Dwyer, H. A.', '1976', 'The turbulent radial jet', 'Journal of Fluid Mechanics', 'spread of radial jets about 0.10', 'memory'),
  'ricou-spalding-1961': source('Ricou, F. P.; Spalding, D. B.', '1961', 'Measurements of entrainment by axisymmetrical turbulent jets', 'Journal of Fluid Mechanics', 'Q/Q0 = 0.32 x/D', 'memory'),
  'schiller-naumann-1933': source('Schiller, L.; Naumann, A.', '1933', 'Über die grundlegenden Berechnungen bei der Schwerkraftaufbereitung', 'Zeitschrift des VDI', 'drag of a sphere 24/Re (1 + 0.15 Re^0.687)', 'memory'),
  'gunn-kinzer-1949': source('Gunn, R.; Kinzer, G. D.', '1949', 'The terminal velocity of fall for water droplets in stagnant air', 'Journal of Meteorology', 'terminal speeds', 'memory'),
  'amsden-1962': source('Amsden, R. C.', '1962', 'Reducing the evaporation of sprays', 'Agricultural Aviation', 'life of a drop d²/(80 ΔT)', 'memory'),
  'matthews-methods': source('Matthews, G. A.', 'n.d.', 'Pesticide application methods', '', 'lifetimes of drops', 'memory'),
  'cionco-1978': source('Cionco, R. M.', '1978', 'Analysis of canopy index values for various canopy densities', 'Boundary-Layer Meteorology', 'decay of wind in canopies', 'memory'),
  'cross-2001': source('Cross, J. V.; Walklate, P. J.; Murray, R. A.; Richardson, G. M.', '2001', 'Spray deposits and losses in different sized apple trees from an axial fan orchard sprayer: 2. Effects of spray quality', 'Crop Protection 20:333', 'hollow cones of 156, 198 and 237 µm'),
  'air-in-canopies': source('ASABE, USDA-ARS group', 'n.d.', 'Air velocity distributions inside tree canopies from a variable-rate air-assisted sprayer', '', 'front-to-back ratio of peak speed 1.59 at LAI 2.5'),
  'xu-2022': source('Xu; et al.', '2022', 'Air flow in orchard canopies', 'Agronomy 12:3072', 'at least 2 m/s in the canopy'),
  'rautmann-2001': source('Rautmann, D.; Streloke, M.; Winkler, R.', '2001', 'New basic drift values in the authorization procedure for plant protection products', 'Mitteilungen BBA 383:133–141', 'early against late sedimenting drift'),
  'cross-2003': source('Cross, J. V.; et al.', '2003', 'Effect of air flow, as quoted second-hand', 'Crop Protection', 'low air cuts drift by 55 to 93 %', 'memory'),
  'mcartney-2008': source('McArtney, S. J.; Obermiller, J. D.', '2008', 'Nozzles and wind in an apple orchard, as summarised', 'HortTechnology 18:365', 'with 0 to 4 mph across the rows the cover of the canopy falls by up to a half, most above 8 ft'),
  'swiechowski-2004': source('Świechowski, W.; et al.', '2004', 'Air in apple canopies, as summarised', 'EJPAU 7(2) #03', 'forward speed is called decisive for how far air goes in; no figures at hand'),
  'berk-2020': source('Berk, P.; et al.', '2020', 'Leaf area of apple trees from a laser scanner', 'Computers and Electronics in Agriculture 169:105158', 'correlation with leaf area 0.88 for the number of points and 0.80 for the volume, on 20 trees in 8 parts each', 'summary')
} as const satisfies Record<string, Source>;
