/**
 * Every published work that a number in the engine stands on, cited by key.
 *
 * `standing` says how the work was seen: `read` in the work itself, `read-second-hand` in somebody
 * else's quotation of it, `from-memory`, or `data` computed here from an open data set. A row of a
 * table carries its own standing, because one work may have been read in part only.
 */
export type Standing = 'read' | 'read-second-hand' | 'from-memory' | 'data';

export interface Reference {
  readonly authors: string;
  readonly year: number;
  readonly title: string;
  /** Journal, publisher or issuing body, with volume and pages where known. */
  readonly where: string;
  /** DOI or address; null where neither was seen. */
  readonly link: string | null;
  readonly standing: Standing;
}

const reference = (
  authors: string,
  year: number,
  title: string,
  where: string,
  link: string | null,
  standing: Standing,
): Reference => ({ authors, year, title, where, link, standing });

export const REFERENCES = {
  'alduchov-1996': reference(
    'Alduchov, O. A.; Eskridge, R. E.',
    1996,
    'Improved Magnus Form Approximation of Saturation Vapor Pressure',
    'Journal of Applied Meteorology 35, 601-609',
    null,
    'read-second-hand',
  ),
  'allen-1998': reference(
    'Allen, R. G.; Pereira, L. S.; Raes, D.; Smith, M.',
    1998,
    'Crop Evapotranspiration: Guidelines for Computing Crop Water Requirements, chapter 3',
    'FAO Irrigation and Drainage Paper 56',
    'https://www.fao.org/4/x0490e/x0490e07.htm',
    'read-second-hand',
  ),
  'astm-d1909': reference(
    'ASTM International',
    2013,
    'D1909: Standard Tables of Commercial Moisture Regains and Commercial Allowances for Textile Fibers',
    'ASTM',
    'https://standards.iteh.ai/catalog/standards/astm/526800ff-f85c-49bf-97a1-ba9bd9fe4e50/astm-d1909-04',
    'read-second-hand',
  ),
  'astm-d2402': reference(
    'ASTM International',
    2018,
    'D2402: Standard Test Method for Water Retention of Textile Fibers (Centrifuge Procedure)',
    'ASTM',
    null,
    'from-memory',
  ),
  'austria-allowances-1975': reference(
    'Republic of Austria',
    1975,
    'Textilpflegekennzeichnungsverordnung, Anlage 2: Feuchtigkeitszuschläge',
    'BGBl. 1975, in force since 1 July 1975',
    'https://www.ris.bka.gv.at',
    'read',
  ),
  'ball-weight-notes': reference(
    'A yarn maker',
    2023,
    'Ball weight: what a ball of wool weighs in dry, usual and damp air',
    'Maker’s notes for knitters',
    'https://stage.langyarns.com/en/Stories-by-LANGYARNS/Blog/Blog-post/102-BALL-WEIGHT',
    'read',
  ),
  'cgpm-1901': reference(
    'General Conference on Weights and Measures',
    1901,
    'Declaration on the unit of mass and on the definition of weight; conventional value of g',
    '3rd CGPM',
    null,
    'from-memory',
  ),
  'cyc-body-sizes': reference(
    'Craft Yarn Council',
    2022,
    'Standard body measurements and sizing',
    'Craft Yarn Council, standards and guidelines',
    'https://www.craftyarncouncil.com/standards/body-sizing',
    'from-memory',
  ),
  'cyc-yarn-weights': reference(
    'Craft Yarn Council',
    2022,
    'Standard Yarn Weight System',
    'Craft Yarn Council, standards and guidelines',
    'https://craftyarncouncil.com/blog/ydkwydk-guide-yarn-weights',
    'read',
  ),
  'ding-2023': reference(
    'Ding, X.; Sanchez, V.; Bertoldi, K.; Rycroft, C. H.',
    2023,
    'Unravelling the mechanics of knitted fabrics through hierarchical geometric representation',
    'arXiv 2307.12360',
    'https://arxiv.org/abs/2307.12360',
    'read-second-hand',
  ),
  'en-13402-3': reference(
    'European Committee for Standardization',
    2004,
    'EN 13402-3: Size designation of clothes. Part 3: Measurements and intervals',
    'CEN',
    'https://en.wikipedia.org/wiki/EN_13402',
    'read-second-hand',
  ),
  'eu-1007-2011': reference(
    'European Parliament and Council',
    2011,
    'Regulation (EU) No 1007/2011 on textile fibre names, Annex IX: agreed allowances',
    'Official Journal of the European Union L 272/1',
    'https://eur-lex.europa.eu/eli/reg/2011/1007/oj',
    'read-second-hand',
  ),
  'fletcher-roberts-1952': reference(
    'Fletcher, H. M.; Roberts, S. H.',
    1952,
    'The Geometry of Plain and Rib Knit Cotton Fabrics and Its Relation to Shrinkage in Laundering',
    'Textile Research Journal 22 (abstract read)',
    null,
    'read',
  ),
  'fourt-1951': reference(
    'Fourt, L.; Sookne, A. M.; Frishman, D.; Harris, M.',
    1951,
    'The Rate of Drying of Fabrics',
    'Textile Research Journal 21, 26-33 (abstract read)',
    'https://scilit.com/publications/08ed97e2b09675bb27b560c654ef340e',
    'read',
  ),
  'gate-2015': reference(
    'Graduate Aptitude Test in Engineering',
    2015,
    'Textile Engineering and Fibre Science paper, question 54',
    'GATE',
    'https://www.textiletriangle.com/gate-textile/question-paper/2015-2/tf/54-2/',
    'read',
  ),
  'guggenheim-1966': reference(
    'Guggenheim, E. A.',
    1966,
    'Applications of Statistical Mechanics, chapter 11: sorption in several layers',
    'Clarendon Press, Oxford',
    null,
    'from-memory',
  ),
  'iso-5077': reference(
    'International Organization for Standardization',
    2007,
    'ISO 5077: Textiles. Determination of dimensional change in washing and drying',
    'ISO (quoted at length by a test-equipment maker and a standards shop)',
    null,
    'read-second-hand',
  ),
  'knapton-1968': reference(
    'Knapton, J. J. F.; Ahrens, F. J.; Ingenthron, W. W.; Fong, W.',
    1968,
    'The Dimensional Properties of Knitted Wool Fabrics, Part I: The Plain-Knitted Structure',
    'Textile Research Journal 38, 999-1012',
    null,
    'read-second-hand',
  ),
  'knit-goods-notes': reference(
    'Fibres to Fabrics',
    2013,
    'Shrinkage of knitted goods: 3 % is about one garment size',
    'Textile course notes, January 2013',
    'https://fibres2fabrics.blogspot.com/',
    'read',
  ),
  'kurbak-2016': reference(
    'Kurbak, A.',
    2016,
    'Geometrical models for weft-knitted fabrics: jamming of the plain loop',
    'Textile Research Journal (title from memory)',
    'https://doi.org/10.1177/0040517516641358',
    'read',
  ),
  'morton-hearle-2008': reference(
    'Morton, W. E.; Hearle, J. W. S.',
    2008,
    'Physical Properties of Textile Fibres, 4th ed., tables 5.1 (density) and 11.1 (swelling)',
    'Woodhead Publishing',
    null,
    'read',
  ),
  'munden-1959': reference(
    'Munden, D. L.',
    1959,
    'The Geometry and Dimensional Properties of Plain-Knit Fabrics',
    'Journal of the Textile Institute 50, T448-T471; table in Spencer, Knitting Technology, 3rd ed. (2001), p. 281',
    null,
    'read-second-hand',
  ),
  'needle-charts': reference(
    'Several authors, in agreement',
    2024,
    'Published conversion charts of knitting-needle sizes: US, metric, old UK',
    'Charts in common circulation; no standard was found',
    null,
    'read',
  ),
  'peirce-1937': reference(
    'Peirce, F. T.',
    1937,
    'The Geometry of Cloth Structure',
    'Journal of the Textile Institute 28, T45; diameter rule quoted in textile calculation notes',
    'http://textilecalculation.blogspot.com/2015/04/relation-between-yarn-dia-and-yarn-count.html',
    'read-second-hand',
  ),
  'peirce-1947': reference(
    'Peirce, F. T.',
    1947,
    'Geometrical Principles Applicable to the Design of Functional Fabrics',
    'Textile Research Journal 17, 123-147',
    null,
    'from-memory',
  ),
  'pillay-1963': reference(
    'Pillay, K. P. R.',
    1963,
    'Strength and stiffness of cotton yarn, wet and dry (title from memory)',
    'Quoted in the literature on cotton yarns',
    null,
    'read-second-hand',
  ),
  'poincloux-2018': reference(
    'Poincloux, S.; Adda-Bedia, M.; Lechenault, F.',
    2018,
    'Geometry and Elasticity of a Knitted Fabric',
    'Physical Review X 8, 021075',
    'https://arxiv.org/abs/1801.08355',
    'read-second-hand',
  ),
  'shuvo-2020': reference(
    'Shuvo, I. I.',
    2020,
    'Fibre attributes and mapping the cultivar influence of different industrial cellulosic crops (cotton, hemp, flax, and canola) on textile properties, table 10',
    'Bioresources and Bioprocessing 7 (quotes ASTM D1909-13 and Morton and Hearle 2008)',
    'https://doi.org/10.1186/s40643-020-00339-1',
    'read',
  ),
  'singal-2024': reference(
    'Singal, K.; Dimitriyev, M. S.; Gonzalez, S. E.; Cachine, A. P.; Quinn, S.; Matsumoto, E. A.',
    2024,
    'Programming mechanics in knitted materials, stitch by stitch',
    'Nature Communications 15, 2622',
    'https://doi.org/10.1038/s41467-024-46498-z',
    'read-second-hand',
  ),
  'singal-2024-data': reference(
    'sabetta (repository owner)',
    2023,
    'stitch-by-stitch: uniaxial pulls of knitted strips, data set of Singal et al. 2024',
    'Open data, MIT licence; notice beside the table',
    'https://github.com/sabetta/stitch-by-stitch',
    'data',
  ),
  'sonntag-1990': reference(
    'Sonntag, D.',
    1990,
    'Important new Values of the Physical Constants of 1986, Vapour Pressure Formulations based on the ITS-90, and Psychrometer Formulae',
    'Zeitschrift für Meteorologie 40, 340-344 (title from memory)',
    null,
    'read-second-hand',
  ),
  'steele-1958': reference(
    'Steele, R.',
    1958,
    'Factors Affecting the Drying of Apparel Fabrics, Part I',
    'Textile Research Journal 28 (abstract read; author from memory)',
    'https://scilit.com/publications/09e4fdf04dbce97975f60b30cff4c7d4',
    'read',
  ),
  'stull-2011': reference(
    'Stull, R.',
    2011,
    'Wet-Bulb Temperature from Relative Humidity and Air Temperature',
    'Journal of Applied Meteorology and Climatology 50, 2267-2269',
    null,
    'from-memory',
  ),
  'textile-regain-notes': reference(
    'Textile calculation notes',
    2015,
    'Standard moisture regain and moisture content of textile fibres',
    'Course notes',
    'https://textilecalculation.blogspot.com/2015/08/standard-moisture-regain-and-moisture.html',
    'read',
  ),
  'wool-training-notes': reference(
    'Anonymous',
    2016,
    'Wool shrinkage: training notes for makers of wool garments',
    'Course notes',
    'https://ro.scribd.com/document/336614289/wool-shrinkage',
    'read',
  ),
  'wortmann-1984': reference(
    'Wortmann, F.-J.; Rigby, B. J.; Phillips, D. G.',
    1984,
    'Glass transition temperature of wool as a function of regain',
    'Textile Research Journal 54, 6-8',
    null,
    'from-memory',
  ),
  'yarn-metres-sheet': reference(
    'Anonymous',
    2020,
    'Yarn conversions: metres per 100 g by class',
    'A published conversion sheet',
    'https://cdn.shopify.com/s/files/1/1218/2756/files/Crochet_hook_yarn_and_stitch_conversions_metres_PDF_2.pdf',
    'read',
  ),
} as const satisfies Readonly<Record<string, Reference>>;

export type ReferenceKey = keyof typeof REFERENCES;

/** Where a row of a table comes from. `source` is null only for what rests on no work at all. */
export type Cited =
  | { readonly source: ReferenceKey; readonly standing: Standing }
  | { readonly source: null; readonly standing: 'from-memory' | 'assumption' };

/** One line for a list of sources: `Munden, D. L. (1959) The Geometry …. Journal …`. */
export const citationOf = (key: ReferenceKey): string => {
  const { authors, year, title, where } = REFERENCES[key];
  return `${authors} (${year}) ${title}. ${where}.`;
};
