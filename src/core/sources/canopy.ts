import { source, type Source } from './source.ts';

/** Works that photographs and laser files of a canopy rest on, by id; loaded with them. */
export const CANOPY_SOURCES = {
  'otsu-1979': source('Otsu, N.', '1979', 'A threshold selection method from gray-level histograms', 'IEEE Transactions on Systems, Man, and Cybernetics 9:62–66', 'the threshold that parts two classes with the greatest variance between them', 'memory'),
  'monsi-saeki-1953': source('Monsi, M.; Saeki, T.', '1953', 'Über den Lichtfaktor in den Pflanzengesellschaften', 'Japanese Journal of Botany 14:22–52', 'light falls exponentially with the leaf area on its way', 'memory'),
  'nilson-1971': source('Nilson, T.', '1971', 'A theoretical analysis of the frequency of gaps in plant stands', 'Agricultural Meteorology 8:25–38', 'gap fraction of leaves placed at random, and the factor for leaves that stand in clumps', 'memory'),
  'ross-1981': source('Ross, J.', '1981', 'The radiation regime and architecture of plant stands', 'Junk, The Hague', 'leaves that face every way alike show half their area to any view', 'memory'),
  'lang-xiang-1986': source('Lang, A. R. G.; Xiang, Y.', '1986', 'Estimation of leaf area index from transmission of direct sunlight in discontinuous canopies', 'Agricultural and Forest Meteorology 37:229–243', 'the logarithm of a mean gap tells less leaf than the mean of the logarithms', 'memory'),
  'asprs-las': source('ASPRS', '2019', 'LAS specification 1.4', 'R15, and 1.2, 1.3 before it', 'public header, point formats 0 to 10, as remembered; tested against a decoder that is not ours', 'memory'),
  'isenburg-2013': source('Isenburg, M.', '2013', 'LASzip: lossless compression of LiDAR data', 'Photogrammetric Engineering & Remote Sensing 79:209–217', 'that points in a compressed file carry the mark 128 on their format', 'memory')
} as const satisfies Record<string, Source>;
