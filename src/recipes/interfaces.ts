// Written by src/launch/recipe-interfaces.mjs from the fields of every recipe; do not edit.
import type { Quantity } from '../units/quantity.js';
import type { InputOf } from '../engine/field.js';
import type { DocumentedAsyncRecipe, DocumentedRecipe, InPlaceOf } from '../engine/documented-recipe.js';
import type { ShownOf } from '../engine/output.js';
import type { ResultMethods } from '../engine/result-types.js';
import type { Written } from '../engine/quantity-field.js';
import type { cupDepth, equilibriumMoisture, fixingSlots, humidityFor, meterCorrection, moistureByWeight, movementAcross, pieceWeight, restraintStress, seasonalMovement, woodDensity, boardMeasure, boardTally, clearPieces, cuttingPlan, flatteningLoss, gradeYield, palletBoards, partsCost, pileSampling, pileYield, roughToDressed, topFromPile, caulCamber, clampPlan, glueQuantity, glueTiming, layerCount, matchSlabs, slabStack, stackUp, stripCount, stripLayout, angledRail, biscuitSpacing, halfLap, jointFit, mitreGap, mitredEnd, postCasing, screwHold, splayedCorner, splineSlot, squareness, beam, rackingFrame, railSpan, tipping, topSag, filmBuild, finishQuantity, gritSequence, nailHoles, shellacCut, stainTrials, thinToSolids, thinnedVoc, thinningRatio, chamfer, chipVolume, cutterMarks, planingTime, bill, prepTime, passage, heightsForPeople } from './catalogue.js';

/** Names of timbers and of groups of timbers. */
export type TimberName = 'acacia spp.' | 'African ebony' | 'afrormosia' | 'afzelia' | 'ailanthus' | 'Alaska paper birch' | 'Alaska yellow-cedar' | 'albarco' | 'alder spp.' | 'allegheny chinkapin' | 'allegheny plum' | 'alligator juniper' | 'alpine ash' | 'American basswood' | 'American beech' | 'American chestnut' | 'American elm' | 'American holly' | 'American hornbeam, musclewood' | 'American mangrove' | 'American mountain-ash' | 'American plum' | 'American sycamore' | 'anacua knockaway' | 'andiroba' | 'angelin' | 'angelique' | 'apache pine' | 'apple' | 'apple spp.' | 'arizona alder' | 'arizona cypress' | 'arizona madrone' | 'arizona pine' | 'arizona pinyon pine' | 'arizona sycamore' | 'arizona walnut' | 'arizona white oak' | 'ash spp.' | 'ashe juniper' | 'Atlantic white-cedar' | 'Australian cypress' | 'austrian pine' | 'avodire' | 'azobe' | 'baker or Modoc cypress' | 'balata' | 'balau' | 'baldcypress' | 'baldcypress spp.' | 'balsa' | 'balsam fir' | 'balsam poplar' | 'balsam willow' | 'banak' | 'bangkirai' | 'basswood spp.' | 'bay spp.' | 'bebb willow' | 'beeftree, longleaf blolly' | 'beefwood' | 'belah' | 'belian' | 'benge' | 'bigcone Douglas-fir' | 'bigleaf magnolia' | 'bigleaf maple' | 'bigtooth aspen' | 'bigtooth maple' | 'birch spp.' | 'bishop pine' | 'bitter cherry' | 'bitternut hickory' | 'black ash' | 'black cherry' | 'black cottonwood' | 'black hickory' | 'black locust' | 'black mangrove' | 'black maple' | 'black morrel' | 'black mulberry' | 'black oak' | 'black spruce' | 'black walnut' | 'black willow' | 'blackbead ebony' | 'blackbutt' | 'blackgum' | 'blackjack oak' | 'blue ash' | 'blue oak' | 'blue spruce' | 'bluejack oak' | 'bluewood' | 'bonpland willow' | 'border pinyon' | 'boxelder' | 'brainerd\'s hawthorn' | 'Brazilian rosewood' | 'brewer spruce' | 'broadleaf hawthorn' | 'brush box' | 'bubinga' | 'buckeye, horsechestnut spp.' | 'bur oak' | 'butterbough, inkwood' | 'butternut' | 'buttonwood-mangrove' | 'cabbage palmetto' | 'California black oak' | 'California buckeye' | 'California juniper' | 'California laurel' | 'California live oak' | 'California red fir' | 'California sycamore' | 'California torreya (nutmeg)' | 'California white oak' | 'camphortree' | 'canada plum' | 'canyon live oak' | 'Caribbean pine' | 'carolina ash' | 'carolina basswood' | 'carolina hemlock' | 'carolina silverbell' | 'carrotwood' | 'catalpa spp.' | 'catclaw acacia' | 'cativo' | 'cedar elm' | 'ceiba' | 'chalk maple' | 'cherry and plum spp.' | 'cherrybark oak' | 'chestnut oak' | 'chestnut spp.' | 'chickasaw plum' | 'chihuahuan pine' | 'chinaberry' | 'chinese chestnut' | 'chinese tallowtree' | 'chinkapin oak' | 'chisos oak' | 'chittamwood, gum bumelia' | 'chokecherry' | 'citrus spp.' | 'coastal plain willow' | 'cockspur hawthorn' | 'cocobolo' | 'coconut palm' | 'common persimmon' | 'common pinyon' | 'common serviceberry' | 'corkbark fir' | 'cottonwood and poplar spp.' | 'coulter pine' | 'courbaril' | 'Crow\'s ash' | 'cuangare' | 'cucumbertree' | 'curlleaf mountain-mahogany' | 'cypress' | 'dark red lauan' | 'dark red meranti' | 'degame' | 'delta post oak' | 'desert ironwood' | 'determa' | 'dogwood spp.' | 'Douglas-fir' | 'Douglas-fir spp.' | 'downy hawthorn' | 'drooping juniper' | 'Dundas blackbutt' | 'durand oak' | 'dwarf chinkapin oak' | 'dwarf live oak' | 'dwarf post oak' | 'East Indian ebony' | 'eastern cottonwood' | 'eastern hemlock' | 'eastern hophornbeam' | 'eastern redbud' | 'eastern redcedar' | 'eastern white pine' | 'ekop' | 'elm spp.' | 'emory oak' | 'Engelmann oak' | 'Engelmann spruce' | 'eucalyptus spp.' | 'European alder' | 'European ash' | 'European beech' | 'European birch' | 'European cherry' | 'European elm' | 'European larch' | 'European lime' | 'European maple' | 'European mountain-ash' | 'European oak' | 'European plum' | 'European poplar' | 'European spruce' | 'European sycamore' | 'European walnut' | 'European willow' | 'European-grown Douglas fir' | 'everglades palm, paurotis-palm' | 'false mastic' | 'false tamarind' | 'fanleaf hawthorn' | 'fir spp.' | 'fireberry hawthorn' | 'fishpoison tree' | 'florida fiddlewood' | 'florida maple' | 'florida poisontree' | 'florida silver palm' | 'florida strangler fig' | 'florida thatch palm' | 'florida torreya (nutmeg)' | 'florida yew' | 'flowering dogwood' | 'four-leaf or Parry pinyon pine' | 'foxtail pine' | 'fraser fir' | 'fremont cottonwood' | 'gambel oak' | 'giant chinkapin, golden chinkapin' | 'giant sequoia' | 'ginkgo, maidenhair tree' | 'goncalo alves' | 'grand fir' | 'gray birch' | 'gray oak' | 'gray or California foothill pine' | 'gray sheoak' | 'great Basin bristlecone pine' | 'great leucaene' | 'green ash' | 'greenheart' | 'grey box' | 'grey gum' | 'grey ironbark' | 'gumbo limbo' | 'Gympie messmate' | 'hackberry' | 'hackberry spp.' | 'hawthorn spp.' | 'heart pine' | 'hemlock spp.' | 'hickory spp.' | 'honduras pine' | 'honey mesquite' | 'honeylocust' | 'honeylocust spp.' | 'hoop pine' | 'hura' | 'ilomba' | 'incense-cedar' | 'Indian rosewood' | 'interior live oak' | 'interior north Douglas-fir' | 'interior south Douglas-fir' | 'interior west Douglas-fir' | 'ipe' | 'iroko' | 'jack pine' | 'japanese larch' | 'jarrah' | 'java plum' | 'Jeffrey pine' | 'jelutong' | 'joshua tree' | 'kaneelhart' | 'kapur' | 'karri' | 'kempas' | 'kentucky coffeetree' | 'keruing' | 'key thatch palm' | 'khaya' | 'knobcone pine' | 'larch spp.' | 'largeleaf geigertree' | 'laurel oak' | 'light red lauan' | 'light red meranti' | 'limba' | 'limber pine' | 'little silverbell' | 'live oak' | 'loblolly pine' | 'loblolly-bay' | 'lodgepole pine' | 'lombardy poplar' | 'longleaf pine' | 'low-rainfall eucalypts' | 'macawood' | 'macNab\'s cypress' | 'madrone spp.' | 'magnolia spp.' | 'mahaleb cherry' | 'makore' | 'manbarklak' | 'manchineel' | 'mango' | 'manni' | 'maple spp.' | 'marishballi' | 'melaleuca' | 'meranti' | 'merbau' | 'mersawa' | 'mesquite' | 'mesquite spp.' | 'messmate' | 'mexican blue oak' | 'mexican palmetto' | 'mexican pinyon pine' | 'mimosa, silktree' | 'mockernut hickory' | 'monterey cypress' | 'montezuma baldcypress' | 'mora' | 'mountain ash' | 'mountain hemlock' | 'mountain maple' | 'mountain or Fraser magnolia' | 'mountain-ash spp.' | 'muhuhu' | 'mulberry spp.' | 'myrtle beech' | 'narrow-leaved red ironbark' | 'narrowleaf cottonwood' | 'netleaf hackberry' | 'netleaf oak' | 'new Mexico locust' | 'New Zealand radiata pine' | 'niangon' | 'noble fir' | 'Nordic pine and spruce' | 'northern California black walnut' | 'northern catalpa' | 'northern mountain-ash' | 'northern pin oak' | 'northern red oak' | 'northern white-cedar' | 'northwestern paper birch' | 'norway maple' | 'nutmeg hickory' | 'nuttall oak' | 'oak spp.' | 'obeche' | 'ocote pine' | 'octopus tree, schefflera' | 'ogeechee tupelo' | 'oglethorpe oak' | 'ohio buckeye' | 'okoume' | 'oneseed hawthorn' | 'oneseed juniper' | 'opepe' | 'Oregon ash' | 'Oregon crab apple' | 'Oregon white oak' | 'Osage-orange' | 'other or unknown live tree' | 'other palms' | 'ovangkol' | 'overcup oak' | 'ozark chinkapin' | 'Pacific dogwood' | 'Pacific madrone' | 'Pacific silver fir' | 'Pacific willow' | 'Pacific yew' | 'padauk' | 'painted buckeye' | 'paper birch' | 'papershell pinyon pine' | 'paradisetree' | 'Parana pine' | 'pau marfim' | 'paulownia, empress-tree' | 'pawpaw' | 'peach' | 'peachleaf willow' | 'pear hawthorn' | 'pecan' | 'persimmon spp.' | 'pignut hickory' | 'pin cherry' | 'pin oak' | 'pinchot juniper' | 'pine spp.' | 'pitch pine' | 'plains cottonwood' | 'pond pine' | 'pond-apple' | 'pondcypress' | 'ponderosa pine' | 'Port-Orford-cedar' | 'post oak' | 'prairie crab apple' | 'primavera' | 'pumpkin ash' | 'purpleheart' | 'pyramid magnolia' | 'quaking aspen' | 'radiata pine' | 'ramin' | 'red alder' | 'red bloodwood' | 'red buckeye' | 'red hickory' | 'red mahogany' | 'red maple' | 'red meranti' | 'red mulberry' | 'red pine' | 'red spruce' | 'red stopper' | 'redbay' | 'redberry juniper' | 'redcedar/juniper spp.' | 'redwood' | 'resin birch' | 'river birch' | 'river redgum' | 'rock elm' | 'rocky Mountain bristlecone pine' | 'rocky Mountain juniper' | 'rocky Mountain maple' | 'rose gum' | 'roundleaf serviceberry' | 'royal palm spp.' | 'rubberwood' | 'russian-olive' | 'saltcedar' | 'sand hickory' | 'sand pine' | 'Santa Lucia or bristlecone fir' | 'Santa Maria' | 'Santos mahogany' | 'sapele' | 'sargent\'s cypress' | 'sassafras' | 'scarlet hawthorn' | 'scarlet oak' | 'Scots pine' | 'scouler\'s willow' | 'screwbean mesquite' | 'scrub hickory' | 'scrub oak' | 'sea torchwood' | 'sepetir' | 'september elm' | 'serviceberry spp.' | 'shagbark hickory' | 'shasta red fir' | 'shellbark hickory' | 'sheoak spp.' | 'shingle oak' | 'shortleaf pine' | 'shumard oak' | 'siberian elm' | 'siberian larch' | 'silver fir' | 'silver maple' | 'silver poplar' | 'silverbell spp.' | 'silverleaf oak' | 'silvertop ash' | 'singleleaf pinyon' | 'sipo' | 'Sitka spruce' | 'slash pine' | 'slippery elm' | 'smoketree' | 'soldierwood' | 'sour cherry' | 'sourwood' | 'southern California black walnut' | 'southern catalpa' | 'southern crab apple' | 'southern magnolia' | 'southern red oak' | 'southern redcedar' | 'southern shagbark hickory' | 'southern yellow pine' | 'southwestern white pine' | 'Spanish-cedar' | 'spotted gum' | 'spruce pine' | 'spruce spp.' | 'striped maple' | 'subalpine fir' | 'subalpine larch' | 'sucupira (Bowdichia)' | 'sucupira (Diplotropis)' | 'sugar maple' | 'sugar pine' | 'sugarberry' | 'swamp chestnut oak' | 'swamp cottonwood' | 'swamp tupelo' | 'swamp white oak' | 'swampmahogany' | 'sweet acacia' | 'sweet birch' | 'sweet chestnut' | 'sweet crab apple' | 'sweetbay' | 'sweetgum' | 'sycamore spp.' | 'table Mountain pine' | 'tallowwood' | 'tamarack' | 'tamarind' | 'tanoak' | 'Tasmanian bluegum' | 'teak' | 'tecate cypress' | 'texas ash' | 'texas buckeye' | 'texas madrone' | 'texas mulberry' | 'texas persimmon' | 'texas sophora' | 'texas walnut' | 'thuja spp.' | 'tietongue, pigeon-plum' | 'tornillo' | 'torrey pine' | 'torreya (nutmeg) spp.' | 'true hickory' | 'true mahogany' | 'tungoil tree' | 'tupelo spp.' | 'turkey oak' | 'two-wing silverbell' | 'umbrella magnolia' | 'unknown dead conifer' | 'unknown dead hardwood' | 'utah juniper' | 'velvet ash' | 'velvet mesquite' | 'Virginia pine' | 'Virginia roundleaf birch' | 'wallaba' | 'walnut spp.' | 'washoe pine' | 'water birch' | 'water hickory' | 'water oak' | 'water tupelo' | 'water-elm, planertree' | 'water, laurel and willow oak' | 'waterlocust' | 'weeping willow' | 'wenge' | 'west Indian mahogany' | 'western hemlock' | 'western juniper' | 'western larch' | 'western redcedar' | 'western soapberry' | 'western white pine' | 'white alder' | 'white ash' | 'white basswood' | 'white bully, willow bustic' | 'white fir' | 'white lauan' | 'white mangrove' | 'white meranti' | 'white mulberry' | 'white oak' | 'white spruce' | 'white willow' | 'white-cedar spp.' | 'whitebark pine' | 'wild banyantree, shortleaf fig' | 'willow oak' | 'willow spp.' | 'winged elm' | 'yellow balau' | 'yellow birch' | 'yellow buckeye' | 'yellow meranti' | 'yellow-poplar' | 'yellowwood' | 'yew spp.' | 'young-growth redwood' | 'unknown hardwood' | 'unknown softwood' | 'unknown timber' | 'birches' | 'cherries' | 'eucalypts' | 'elms' | 'pines' | 'walnuts' | 'oaks' | 'ashes' | 'firs' | 'poplars' | 'maples' | 'hickories' | 'spruces' | 'larches';
/** Names of structural grades. */
export type GradeName = 'C14' | 'C16' | 'C18' | 'C20' | 'C22' | 'C24' | 'C27' | 'C30' | 'C35' | 'C40' | 'D30' | 'D40' | 'D50' | 'D60' | 'MGP10' | 'MGP12' | 'MGP15' | 'F5' | 'F7' | 'F8' | 'F11' | 'F14' | 'F17' | 'F27' | 'MGP10 (working stress)' | 'MGP12 (working stress)' | 'MGP15 (working stress)' | 'Hem-Fir No.2 2x-4x' | 'Hem-Fir No.2 Beams & Stringers' | 'Hem-Fir No.2 Posts & Timbers';
/** Places whose outdoor moisture is tabled. */
export type ClimateName = 'Phoenix, AZ' | 'Los Angeles, CA' | 'Denver, CO' | 'Washington, DC' | 'Miami, FL' | 'Chicago, IL' | 'New Orleans, LA' | 'Portland, ME' | 'Boston, MA' | 'Minneapolis-St. Paul, MN' | 'Portland, OR' | 'Seattle-Tacoma, WA' | 'Cheyenne, WY' | 'London, United Kingdom' | 'Paris, France' | 'Amsterdam, Netherlands' | 'Prague, Czechia' | 'Rome, Italy' | 'Lisbon, Portugal' | 'Athens, Greece' | 'Albacete, Spain' | 'Alicante, Spain' | 'Almería, Spain' | 'Ávila, Spain' | 'Badajoz, Spain' | 'Barcelona, Spain' | 'Bilbao, Spain' | 'Burgos, Spain' | 'Cáceres, Spain' | 'Cádiz, Spain' | 'Castellón, Spain' | 'Ceuta, Spain' | 'Ciudad Real, Spain' | 'Córdoba, Spain' | 'A Coruña, Spain' | 'Cuenca, Spain' | 'Girona, Spain' | 'Granada, Spain' | 'Guadalajara, Spain' | 'Huelva, Spain' | 'Huesca, Spain' | 'Jaén, Spain' | 'León, Spain' | 'Lleida, Spain' | 'Logroño, Spain' | 'Lugo, Spain' | 'Madrid, Spain' | 'Málaga, Spain' | 'Melilla, Spain' | 'Murcia, Spain' | 'Ourense, Spain' | 'Oviedo, Spain' | 'Palencia, Spain' | 'Palma de Mallorca, Spain' | 'Las Palmas, Spain' | 'Pamplona, Spain' | 'Pontevedra, Spain' | 'San Sebastián, Spain' | 'Salamanca, Spain' | 'Santa Cruz de Tenerife, Spain' | 'Santander, Spain' | 'Segovia, Spain' | 'Sevilla, Spain' | 'Soria, Spain' | 'Tarragona, Spain' | 'Teruel, Spain' | 'Toledo, Spain' | 'Valencia, Spain' | 'Valladolid, Spain' | 'Vitoria, Spain' | 'Zamora, Spain' | 'Zaragoza, Spain' | 'Vancouver, Canada' | 'Calgary, Canada' | 'Toronto, Canada' | 'Montréal, Canada' | 'Tokyo, Japan' | 'New Delhi, India' | 'Melbourne, Australia';

/** What {@link cupDepth} takes. Depth of the cup of a flat-sawn board when its moisture changes, because wood moves more along the rings than across them, and which face goes hollow. For narrow strips cut from it the depth falls with the square of the width. */
export interface CupDepthInput {
  /**
   * Width of the board.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 200 mm
   */
  readonly width: Written<'length'>;
  /**
   * Timber. A species, or a group for the middle of its range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof cupDepth)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Ring radius. Radius of the growth rings at the middle of the board, read off its end.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly ringRadius: Written<'length'>;
  /**
   * Starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 14 %
   */
  readonly from: InputOf<(typeof cupDepth)['inputs']['from']>;
  /**
   * Final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof cupDepth)['inputs']['to']>;
}
/** What {@link cupDepth} gives, beside workings, cautions, sources and chart. */
export interface CupDepthOutput {
  /**
   * Depth of cup. Depth of the hollow at the middle of the board.
   */
  readonly cup: Quantity<'length'>;
  /**
   * Which face goes hollow.
   */
  readonly side: string;
  /**
   * Strain along the rings.
   */
  readonly strainTangential: Quantity<'share'>;
  /**
   * Strain across the rings.
   */
  readonly strainRadial: Quantity<'share'>;
}
/** An answer of {@link cupDepth}. */
export interface CupDepthResult extends CupDepthOutput, ResultMethods {}

/** What {@link equilibriumMoisture} takes. The moisture content that wood comes to when it stays in air of one temperature and relative humidity, by the sorption equation of the Wood Handbook. */
export interface EquilibriumMoistureInput {
  /**
   * Temperature of the air.
   * Takes a temperature such as "21 degC", at least -40 °C and at most 120 °C.
   * @example 21 degC
   */
  readonly temperature: Written<'temperature'>;
  /**
   * Relative humidity. Relative humidity of the air.
   * Takes a relative humidity such as "50 %", at least 0 % and at most 100 %.
   * @example 50 %
   */
  readonly humidity: Written<'humidity'>;
}
/** What {@link equilibriumMoisture} gives, beside workings, cautions, sources and chart. */
export interface EquilibriumMoistureOutput {
  /**
   * Moisture content. Moisture content that wood comes to in this air.
   */
  readonly moisture: Quantity<'moisture'>;
}
/** An answer of {@link equilibriumMoisture}. */
export interface EquilibriumMoistureResult extends EquilibriumMoistureOutput, ResultMethods {}

/** What {@link fixingSlots} takes. Travel and slot length at each fixing across a solid top: the top is held along one line, and a fixing travels in proportion to its distance from it. Calculate from the driest to the wettest state it will see. */
export interface FixingSlotsInput {
  /**
   * Width of top. Width across the grain.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Positions. Distances of the fixings from one edge.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 100 m.
   * @example ["60 mm","320 mm","580 mm"]
   */
  readonly positions?: InputOf<(typeof fixingSlots)['inputs']['positions']>;
  /**
   * Spacing. Distance between fixings counted from the held line; give it in place of positions.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly spacing?: Written<'length'>;
  /**
   * Edge distance. Least distance of a fixing from the edge; used with a spacing.
   * Takes a length such as "30 mm", at least 0 mm and at most 1000 mm.
   * @default 30 mm
   */
  readonly edgeDistance?: Written<'length'>;
  /**
   * Held at. Centre, edge (the one measured from), or a distance from that edge.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof fixingSlots)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
  /**
   * Movement. Movement of the whole width; give it in place of timber and moistures.
   * Takes a length such as "900 mm", at least -1000 mm and at most 1000 mm.
   */
  readonly movement?: Written<'length'>;
  /**
   * Timber. A species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof fixingSlots)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Cut. How it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof fixingSlots)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * Starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from?: InputOf<(typeof fixingSlots)['inputs']['from']>;
  /**
   * Final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 13 %
   */
  readonly to?: InputOf<(typeof fixingSlots)['inputs']['to']>;
  /**
   * Slots for. Slots for the middle figure, or for the most that is expected.
   * Takes one of "middle", "most".
   * @default middle
   */
  readonly allowFor?: 'middle' | 'most';
  /**
   * Fastener diameter. Diameter of the screw or bolt.
   * Takes a length such as "5 mm", more than 0 mm and at most 100 mm.
   * @default 5 mm
   * @example 5 mm
   */
  readonly fastenerDiameter?: Written<'length'>;
  /**
   * Spare. Free length at each end of a slot.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   */
  readonly margin?: Written<'length'>;
}
/** What {@link fixingSlots} gives, beside workings, cautions, sources and chart. */
export interface FixingSlotsOutput {
  /**
   * Movement. Movement of the whole width.
   */
  readonly movement: Quantity<'length'>;
  /**
   * Longest slot.
   */
  readonly longest: Quantity<'length'>;
  /**
   * Fixings across the top.
   */
  readonly slots: ShownOf<(typeof fixingSlots)['outputs']['slots']>;
}
/** An answer of {@link fixingSlots}. */
export interface FixingSlotsResult extends FixingSlotsOutput, ResultMethods {}

/** What {@link humidityFor} takes. The relative humidity at which wood rests at a given moisture content: the sorption equation solved the other way round. */
export interface HumidityForInput {
  /**
   * Temperature of the air.
   * Takes a temperature such as "21 degC", at least -40 °C and at most 120 °C.
   * @example 20 degC
   */
  readonly temperature: Written<'temperature'>;
  /**
   * Moisture content to hold.
   * Takes a moisture content such as "8 %", at least 0 % and at most 40 %.
   * @example 9 %
   */
  readonly moisture: Written<'moisture'>;
}
/** What {@link humidityFor} gives, beside workings, cautions, sources and chart. */
export interface HumidityForOutput {
  /**
   * Relative humidity. Relative humidity of the air.
   */
  readonly humidity: Quantity<'humidity'>;
}
/** An answer of {@link humidityFor}. */
export interface HumidityForResult extends HumidityForOutput, ResultMethods {}

/** What {@link meterCorrection} takes. The moisture behind the reading of a resistance meter when the wood is colder or warmer than the meter is set for. Apply the maker's correction for the species as well. */
export interface MeterCorrectionInput {
  /**
   * What the meter shows.
   * Takes a moisture content such as "8 %", at least 0 % and at most 120 %.
   * @example 12 %
   */
  readonly reading: Written<'moisture'>;
  /**
   * Wood temperature. Temperature of the wood itself, not of the room.
   * Takes a temperature such as "21 degC", at least -30 °C and at most 90 °C.
   * @example 9.9 degC
   */
  readonly woodTemperature: Written<'temperature'>;
  /**
   * Meter setting. Temperature that the meter is set for, from its leaflet.
   * Takes a temperature such as "21.1 degC", at least -10 °C and at most 60 °C.
   * @default 21.1 degC
   */
  readonly calibrationTemperature?: Written<'temperature'>;
}
/** What {@link meterCorrection} gives, beside workings, cautions, sources and chart. */
export interface MeterCorrectionOutput {
  /**
   * Moisture content.
   */
  readonly moisture: Quantity<'moisture'>;
  /**
   * Correction. Points added to the reading.
   */
  readonly correction: Quantity<'moisture'>;
}
/** An answer of {@link meterCorrection}. */
export interface MeterCorrectionResult extends MeterCorrectionOutput, ResultMethods {}

/** What {@link moistureByWeight} takes. The moisture content of a sample from its mass now and its mass dried in an oven; and the mass it will have at a moisture you wait for. */
export interface MoistureByWeightInput {
  /**
   * Mass of sample. Mass of the sample as it is.
   * Takes a mass such as "12 kg", more than 0 g and at most 10 000 kg.
   * @example 136 g
   */
  readonly wetMass: Written<'mass'>;
  /**
   * Oven-dry mass. Mass of the same sample dried at 103 °C until it loses no more.
   * Takes a mass such as "12 kg", more than 0 g and at most 10 000 kg.
   * @example 100 g
   */
  readonly ovenDryMass: Written<'mass'>;
  /**
   * Moisture to wait for.
   * Takes a moisture content such as "8 %", at least 0 % and at most 300 %.
   * @example 10 %
   */
  readonly target?: Written<'moisture'>;
}
/** What {@link moistureByWeight} gives, beside workings, cautions, sources and chart. */
export interface MoistureByWeightOutput {
  /**
   * Moisture content. Mass of water as a share of the oven-dry mass.
   */
  readonly moisture: Quantity<'moisture'>;
  /**
   * Water in the sample.
   */
  readonly water: Quantity<'mass'>;
  /**
   * Target mass. Mass of the sample at the moisture to wait for.
   */
  readonly targetMass?: Quantity<'mass'> | undefined;
}
/** An answer of {@link moistureByWeight}. */
export interface MoistureByWeightResult extends MoistureByWeightOutput, ResultMethods {}

/** What {@link movementAcross} takes. How much a board or a top of strips widens or narrows when its moisture changes: by published coefficients within 6 to 14 % moisture, by shrinkage from green outside. Positive means wider. */
export interface MovementAcrossInput {
  /**
   * Starting width. Width across the grain at the starting moisture; leave it out where strips are given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 900 mm
   */
  readonly width?: Written<'length'>;
  /**
   * Timber. A species, or a group for a range; leave it out where strips are given.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example red oak
   */
  readonly timber?: Exclude<InputOf<(typeof movementAcross)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Cut. How it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   * @example flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof movementAcross)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * Starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from: InputOf<(typeof movementAcross)['inputs']['from']>;
  /**
   * Final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly to: InputOf<(typeof movementAcross)['inputs']['to']>;
  /**
   * Strips. Strips of a glued top, each of its own timber and sawing; their movements are added.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns timber, width, cut?, count?.
   */
  readonly strips?: InputOf<(typeof movementAcross)['inputs']['strips']>;
  /**
   * Coefficient. Change of width for each per cent of moisture, as a fraction; give it in place of the published one.
   * Takes a number such as 1.5, more than 0 and at most 0.02.
   */
  readonly coefficient?: Written<'ratio'>;
  /**
   * Shrinkage. Shrinkage from green to oven-dry; give it in place of the published one.
   * Takes a share such as "15 %", more than 0 % and at most 40 %.
   */
  readonly shrinkage?: Written<'share'>;
  /**
   * Fibre saturation. Moisture at fibre saturation that goes with a shrinkage of your own.
   * Takes a moisture content such as "30 %", at least 15 % and at most 45 %.
   * @default 30 %
   */
  readonly fibreSaturation?: Written<'moisture'>;
  /**
   * Method. The timber's own figures, the rule for softwood lumber by its green size, or the flat rate of EN 336.
   * Takes one of "timber", "softwood lumber", "EN 336".
   * @default timber
   */
  readonly rule?: 'timber' | 'softwood lumber' | 'EN 336';
  /**
   * Size of lumber. Which size the rule for softwood lumber is for.
   * Takes one of "width", "thickness".
   * @default width
   */
  readonly face?: 'width' | 'thickness';
  /**
   * Held at. Along its middle, along one edge, or at a distance from one edge.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof movementAcross)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
}
/** What {@link movementAcross} gives, beside workings, cautions, sources and chart. */
export interface MovementAcrossOutput {
  /**
   * Change of width. Positive when it grows.
   */
  readonly change: Quantity<'length'>;
  /**
   * Final width. Width at the final moisture.
   */
  readonly finalWidth: Quantity<'length'>;
  /**
   * Edge movement. Movement of the free edge, the farther one of two.
   */
  readonly perSide: Quantity<'length'>;
  /**
   * Change, low. Lower end of what is expected.
   */
  readonly low: Quantity<'length'>;
  /**
   * Change, high. Upper end of what is expected.
   */
  readonly high: Quantity<'length'>;
  /**
   * Coefficient. Change of width for each per cent of moisture, as a fraction of the width.
   */
  readonly coefficient?: number | undefined;
  /**
   * Starting moisture content.
   */
  readonly fromMoisture: Quantity<'moisture'>;
  /**
   * Final moisture content.
   */
  readonly toMoisture: Quantity<'moisture'>;
  /**
   * Which rule was used.
   */
  readonly ruleUsed: string;
  /**
   * Strip by strip.
   */
  readonly stripChanges?: ShownOf<(typeof movementAcross)['outputs']['stripChanges']> | undefined;
}
/** An answer of {@link movementAcross}. */
export interface MovementAcrossResult extends MovementAcrossOutput, ResultMethods {}

/** What {@link pieceWeight} takes. The mass of a board, a pile of boards alike or a glued top, from its size or volume, its timber and its moisture. */
export interface PieceWeightInput {
  /**
   * Dimensions.
   * Takes length x width x thickness such as "1950 x 640 x 40 mm", or { length, width, thickness }.
   * @example 1950 x 640 x 40 mm
   */
  readonly dimensions?: InputOf<(typeof pieceWeight)['inputs']['dimensions']>;
  /**
   * Length.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly length?: Written<'length'>;
  /**
   * Width.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly width?: Written<'length'>;
  /**
   * Thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly thickness?: Written<'length'>;
  /**
   * Volume. Give it in place of the sizes.
   * Takes a volume such as "0.02 m3", more than 0 m³ and at most 1000 m³.
   */
  readonly volume?: Written<'volume'>;
  /**
   * Pieces alike.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   */
  readonly count?: Written<'count'>;
  /**
   * Timber. A species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example unknown hardwood
   */
  readonly timber: Exclude<InputOf<(typeof pieceWeight)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Moisture content.
   * Takes a moisture content such as "12 %", at least 0 % and at most 300 %.
   * @default 12 %
   * @example 12 %
   */
  readonly moisture?: Written<'moisture'>;
}
/** What {@link pieceWeight} gives, beside workings, cautions, sources and chart. */
export interface PieceWeightOutput {
  /**
   * Mass. Mass of all pieces.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * Volume. Volume of all pieces.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * Density at this moisture.
   */
  readonly density: Quantity<'density'>;
  /**
   * Mass, low. Lower end: 10th percentile of a group, or the least printed.
   */
  readonly low?: Quantity<'mass'> | undefined;
  /**
   * Mass, high. Upper end: 90th percentile of a group, or the most printed.
   */
  readonly high?: Quantity<'mass'> | undefined;
}
/** An answer of {@link pieceWeight}. */
export interface PieceWeightResult extends PieceWeightOutput, ResultMethods {}

/** What {@link restraintStress} takes. Strain and stress across the grain of a top held hard along its width while its moisture changes, against the strength of the timber: why a top splits when it is screwed down tight. An estimate that leaves creep out. */
export interface RestraintStressInput {
  /**
   * Width across the grain.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Timber. A species, or a group for the middle of its range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof restraintStress)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Cut. How it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof restraintStress)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * Moisture when fixed.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly from: InputOf<(typeof restraintStress)['inputs']['from']>;
  /**
   * Final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof restraintStress)['inputs']['to']>;
}
/** What {@link restraintStress} gives, beside workings, cautions, sources and chart. */
export interface RestraintStressOutput {
  /**
   * Prevented movement. Movement that is prevented, as a share of the width.
   */
  readonly strain: Quantity<'share'>;
  /**
   * Stress across the grain.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * Stress at failure. Stress at which it splits, or in swelling begins to crush.
   */
  readonly strength: Quantity<'stress'>;
  /**
   * Share of that strength.
   */
  readonly used: Quantity<'share'>;
  /**
   * Type of stress. Tension as it dries, compression as it swells.
   */
  readonly sense: string;
  /**
   * Verdict. What to expect.
   */
  readonly verdict: string;
}
/** An answer of {@link restraintStress}. */
export interface RestraintStressResult extends RestraintStressOutput, ResultMethods {}

/** What {@link seasonalMovement} takes. Width of a board or top month by month, from twelve months of air: wood follows the air by diffusion across its thickness, slowed by its finish. Give the air of the room it will stand in; the table of places is outdoor air under cover. */
export interface SeasonalMovementInput {
  /**
   * Width. Width across the grain as measured.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Timber. A species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof seasonalMovement)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Cut. How it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof seasonalMovement)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * Climate.
   * Takes a place such as "Seattle-Tacoma, WA", or the humidity of the room in winter and in summer such as "winter 35 %, summer 65 %" (a hygrometer left in the room for a week of each season tells it), or twelve months of your own: a list of moistures ("9 %"), or a table or CSV with columns month?, and temperature and humidity, or moisture.
   * @example winter 45 %, summer 70 %
   */
  readonly climate: Exclude<InputOf<(typeof seasonalMovement)['inputs']['climate']>, string> | ClimateName | (string & {});
  /**
   * Sealing. Bare, oiled, varnished on all faces, or open to the air on one face only.
   * Takes one of "bare", "oiled", "one face", "varnished".
   * @default bare
   * @example oiled
   */
  readonly sealing?: 'bare' | 'oiled' | 'one face' | 'varnished';
  /**
   * Lag. Time constant; give it in place of the one calculated from thickness and sealing.
   * Takes a time such as "15 min", at least 0 s and at most 1 000 000 day.
   */
  readonly lag?: Written<'time'>;
  /**
   * Moisture when made.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   */
  readonly madeAt?: InputOf<(typeof seasonalMovement)['inputs']['madeAt']>;
}
/** What {@link seasonalMovement} gives, beside workings, cautions, sources and chart. */
export interface SeasonalMovementOutput {
  /**
   * Greatest width. Greatest width in the year.
   */
  readonly widest: Quantity<'length'>;
  /**
   * Least width. Least width in the year.
   */
  readonly narrowest: Quantity<'length'>;
  /**
   * Difference between the two.
   */
  readonly swing: Quantity<'length'>;
  /**
   * Swing, low. Lower end of what is expected.
   */
  readonly swingLow: Quantity<'length'>;
  /**
   * Swing, high. Upper end of what is expected.
   */
  readonly swingHigh: Quantity<'length'>;
  /**
   * Widest month. Month in which it is widest.
   */
  readonly widestIn: string;
  /**
   * Narrowest month. Month in which it is narrowest.
   */
  readonly narrowestIn: string;
  /**
   * Least moisture. Least moisture content of the wood in the year.
   */
  readonly driest: Quantity<'moisture'>;
  /**
   * Greatest moisture. Greatest moisture content of the wood in the year.
   */
  readonly wettest: Quantity<'moisture'>;
  /**
   * Lag. Time constant with which the wood follows the air.
   * Shown in day.
   */
  readonly timeConstant: Quantity<'time'>;
  /**
   * Month by month.
   */
  readonly months: ShownOf<(typeof seasonalMovement)['outputs']['months']>;
}
/** An answer of {@link seasonalMovement}. */
export interface SeasonalMovementResult extends SeasonalMovementOutput, ResultMethods {}

/** What {@link woodDensity} takes. Density of wood with its water in, and its specific gravity on the volume it has at that moisture, from a species or from a specific gravity. */
export interface WoodDensityInput {
  /**
   * Timber. A species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof woodDensity)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Specific gravity. On oven-dry mass; give it in place of a timber.
   * Takes a number such as 1.5, at least 0.02 and at most 1.55.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * Volume basis. Volume on which that specific gravity was taken.
   * Takes one of "at this moisture", "green", "ovendry".
   * @default at this moisture
   */
  readonly gravityBasis?: 'at this moisture' | 'green' | 'ovendry';
  /**
   * Volume shrinkage. From green to oven-dry; leave it out to take the published one, or 26.5 % times the specific gravity.
   * Takes a share such as "15 %", at least 0 % and at most 40 %.
   */
  readonly volumetricShrinkage?: Written<'share'>;
  /**
   * Moisture content.
   * Takes a moisture content such as "12 %", at least 0 % and at most 300 %.
   * @default 12 %
   * @example 12 %
   */
  readonly moisture?: Written<'moisture'>;
}
/** What {@link woodDensity} gives, beside workings, cautions, sources and chart. */
export interface WoodDensityOutput {
  /**
   * Density. Density of the wood with its water.
   */
  readonly density: Quantity<'density'>;
  /**
   * Specific gravity. Oven-dry mass on the volume at this moisture.
   */
  readonly specificGravity: number;
  /**
   * Density, low. Lower end: 10th percentile of a group, or the least printed.
   */
  readonly low?: Quantity<'density'> | undefined;
  /**
   * Density, high. Upper end: 90th percentile of a group, or the most printed.
   */
  readonly high?: Quantity<'density'> | undefined;
  /**
   * Volume of one tonne.
   */
  readonly volumePerTonne: Quantity<'volume'>;
}
/** An answer of {@link woodDensity}. */
export interface WoodDensityResult extends WoodDensityOutput, ResultMethods {}

/** What {@link boardMeasure} takes. How much timber a stack of equal boards holds, in board feet, super feet, cubic metres and running metres, and what a price comes to by each. Not for round logs. */
export interface BoardMeasureInput {
  /**
   * Length of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 m.
   * @example 8 ft
   */
  readonly length: Written<'length'>;
  /**
   * Width of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 6 in
   */
  readonly width: Written<'length'>;
  /**
   * Thickness of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 2 in
   */
  readonly thickness: Written<'length'>;
  /**
   * Pieces of this size.
   * Takes a whole number such as 1, at least 1 and at most 1 000 000.
   * @default 1
   * @example 12
   */
  readonly count?: Written<'count'>;
  /**
   * Price. As quoted, by board foot, cubic metre, square metre, metre or piece.
   * Takes a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   * @example $4.50/bf
   */
  readonly price?: InputOf<(typeof boardMeasure)['inputs']['price']>;
}
/** What {@link boardMeasure} gives, beside workings, cautions, sources and chart. */
export interface BoardMeasureOutput {
  /**
   * Board feet. Board feet of all pieces.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * Super feet. Super feet of all pieces.
   */
  readonly superFeet: Quantity<'superFeet'>;
  /**
   * Volume of all pieces.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * Total length. Length of all pieces end to end.
   */
  readonly linealLength: Quantity<'length'>;
  /**
   * Face area. Face area of all pieces.
   */
  readonly surface: Quantity<'area'>;
  /**
   * Price of all pieces.
   */
  readonly price?: Quantity<'money'> | undefined;
  /**
   * Price by board foot.
   * Shown in money/bf.
   */
  readonly pricePerBoardFoot?: Quantity<'pricePerVolume'> | undefined;
  /**
   * Price by cubic metre.
   * Shown in money/m3.
   */
  readonly pricePerCubicMetre?: Quantity<'pricePerVolume'> | undefined;
  /**
   * Price by running metre.
   * Shown in money/m.
   */
  readonly pricePerMetre?: Quantity<'pricePerLength'> | undefined;
  /**
   * Price of a piece.
   */
  readonly pricePerPiece?: Quantity<'money'> | undefined;
}
/** An answer of {@link boardMeasure}. */
export interface BoardMeasureResult extends BoardMeasureOutput, ResultMethods {}

/** What {@link boardTally} takes. Board feet of many boards as a yard counts them, by the hardwood rule of surface measure or the softwood rule of nominal sizes, beside what their sizes hold. */
export interface BoardTallyInput {
  /**
   * Boards. In the order in which they are tallied.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns width, length, thickness, count?.
   * @example [{"width":"6 1/4 in","length":"8 ft","thickness":"2 in"},{"width":"10 in","length":"13 ft","thickness":"1 in","count":2},{"width":"6 in","length":"9 ft","thickness":"5/4 in","count":4}]
   */
  readonly boards: InputOf<(typeof boardTally)['inputs']['boards']>;
  /**
   * Tally rule. Rule of measuring that the yard goes by.
   * Takes one of "hardwood", "softwood".
   * @default hardwood
   */
  readonly rule?: 'hardwood' | 'softwood';
}
/** What {@link boardTally} gives, beside workings, cautions, sources and chart. */
export interface BoardTallyOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Board feet. Board feet of the tally.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * Surface measure. Surface measure of the whole tally.
   */
  readonly surfaceMeasure?: number | undefined;
  /**
   * Boards.
   */
  readonly boards: number;
  /**
   * Exact board feet. Board feet by the sizes as they are, without rounding.
   */
  readonly bySize: Quantity<'boardFeet'>;
  /**
   * Difference. Tally over or under the sizes as they are.
   */
  readonly difference: Quantity<'share'>;
  /**
   * Tally. One row for each board.
   */
  readonly rows: ShownOf<(typeof boardTally)['outputs']['rows']>;
}
/** An answer of {@link boardTally}. */
export interface BoardTallyResult extends BoardTallyOutput, ResultMethods {}

/** What {@link clearPieces} takes. Which clear parts to cut from which boards with faults at known places, so that the boards cut are as short as can be in all, with a proven bound beside it. For parts of the boards’ own section. */
export interface ClearPiecesInput {
  /**
   * Boards. Survey of the pile with a row for each board or kind of board.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, tone?, endLoss?, endLeft?, endRight?, faultsAt?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"A","length":"2.4 m","width":"95 mm","thickness":"45 mm","faultsAt":"800-860; 1700-1730 mm","count":2},{"name":"B","length":"1.9 m","width":"95 mm","thickness":"45 mm","endLeft":"40 mm","faultsAt":"990-1030 mm"}]
   */
  readonly boards: InputOf<(typeof clearPieces)['inputs']['boards']>;
  /**
   * Parts. Parts to cut with a row for each size.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?.
   * @example [{"name":"rail","length":"780 mm","count":3},{"name":"brace","length":"420 mm","count":4}]
   */
  readonly parts: InputOf<(typeof clearPieces)['inputs']['parts']>;
  /**
   * Saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Longest to search.
   * Takes a time such as "20 s", at least 0.05 s and at most 30 min.
   * @default 20 s
   */
  readonly timeLimit?: Written<'time'>;
}
/** What {@link clearPieces} gives, beside workings, cautions, sources and chart. */
export interface ClearPiecesOutput {
  /**
   * Boards cut.
   */
  readonly boardsCut: number;
  /**
   * Board length. Length of all boards cut.
   * Shown in m.
   */
  readonly boardLength: Quantity<'length'>;
  /**
   * No plan cuts less.
   * Shown in m.
   */
  readonly lowerBound: Quantity<'length'>;
  /**
   * Proved best. Whether the plan is proved to be the best.
   */
  readonly optimal: boolean;
  /**
   * Missing length. Length of all parts missing.
   * Shown in m.
   */
  readonly missingLength: Quantity<'length'>;
  /**
   * Cuts, board by board.
   */
  readonly plan: ShownOf<(typeof clearPieces)['outputs']['plan']>;
  /**
   * Missing parts. Parts that the boards do not give.
   */
  readonly missing?: ShownOf<(typeof clearPieces)['outputs']['missing']> | undefined;
}
/** An answer of {@link clearPieces}. */
export interface ClearPiecesResult extends ClearPiecesOutput, ResultMethods {}

/** What {@link cuttingPlan} takes. Which parts to cut from which boards so that the fewest boards, the least stock or the least cost results, with a proven bound beside it. For straight crosscuts of clear stock; dock faults first. */
export interface CuttingPlanInput {
  /**
   * Parts. One row for each part to cut.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?, width?, thickness?.
   * @example [{"name":"leg","length":"860 mm","count":4},{"name":"long rail","length":"1780 mm","count":2},{"name":"short rail","length":"520 mm","count":4},{"name":"brace","length":"690 mm","count":4}]
   */
  readonly parts: InputOf<(typeof cuttingPlan)['inputs']['parts']>;
  /**
   * Stock. One row for each length of board to cut from.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?, cost?, width?, thickness?.
   * @example [{"name":"batten, long","length":"2700 mm","count":4},{"name":"batten, short","length":"2100 mm","count":6}]
   */
  readonly stock: InputOf<(typeof cuttingPlan)['inputs']['stock']>;
  /**
   * Saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Trim, each end. Docked from each end of every board before parts are cut.
   * Takes a length such as "0 mm", at least 0 mm and at most 5000 mm.
   * @default 0 mm
   * @example 15 mm
   */
  readonly trimEachEnd?: Written<'length'>;
  /**
   * Least offcut worth keeping.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 300 mm
   */
  readonly keepOffcut?: Written<'length'>;
  /**
   * Minimise. What to keep least; leave it out for cost where costs are given, length where lengths differ, else boards.
   * Takes one of "boards", "length", "cost".
   */
  readonly aim?: 'boards' | 'length' | 'cost';
  /**
   * Longest to search.
   * Takes a time such as "20 s", at least 0.05 s and at most 2 h.
   * @default 20 s
   */
  readonly timeLimit?: Written<'time'>;
}
/** What {@link cuttingPlan} gives, beside workings, cautions, sources and chart. */
export interface CuttingPlanOutput {
  /**
   * Boards cut.
   */
  readonly boardsUsed: number;
  /**
   * Waste share. Share of the boards that is neither part nor offcut worth keeping.
   */
  readonly waste: Quantity<'share'>;
  /**
   * What the plan takes.
   */
  readonly achieved: ShownOf<(typeof cuttingPlan)['outputs']['achieved']>;
  /**
   * Lower bound.
   */
  readonly lowerBound: ShownOf<(typeof cuttingPlan)['outputs']['lowerBound']>;
  /**
   * Proved. Whether the plan is proved to be the best.
   */
  readonly optimal: boolean;
  /**
   * Length cut. Length of the boards that the plan cuts.
   * Shown in m.
   */
  readonly stockLength: Quantity<'length'>;
  /**
   * Length of the parts.
   * Shown in m.
   */
  readonly partsLength: Quantity<'length'>;
  /**
   * Wasted length. Length lost in kerfs, trims and short offcuts.
   * Shown in m.
   */
  readonly wasteLength: Quantity<'length'>;
  /**
   * Offcuts kept. Length of the offcuts worth keeping.
   * Shown in m.
   */
  readonly kept?: Quantity<'length'> | undefined;
  /**
   * Cost. Cost of the boards that the plan cuts.
   */
  readonly totalCost?: Quantity<'money'> | undefined;
  /**
   * Boards and cuts. Part, length and distance from the left end.
   */
  readonly plan: ShownOf<(typeof cuttingPlan)['outputs']['plan']>;
  /**
   * Boards used. How many boards there were, and how many the plan cuts.
   */
  readonly stockUsed: ShownOf<(typeof cuttingPlan)['outputs']['stockUsed']>;
  /**
   * Missing parts. Parts that the stock does not give.
   */
  readonly missing?: ShownOf<(typeof cuttingPlan)['outputs']['missing']> | undefined;
  /**
   * Boards to add. Further boards of the longest kind needed for the missing parts.
   */
  readonly boardsShort?: number | undefined;
}
/** An answer of {@link cuttingPlan}. */
export interface CuttingPlanResult extends CuttingPlanOutput, ResultMethods {}

/** What {@link flatteningLoss} takes. How thin a cupped, bowed or twisted board gets by planing it flat, and what ripping or crosscutting it first saves. Not for kinks, nor for a bend along the edge. */
export interface FlatteningLossInput {
  /**
   * Rough thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 22 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Width as found.
   * Takes a length such as "900 mm", more than 0 mm and at most 3000 mm.
   * @example 142 mm
   */
  readonly width: Written<'length'>;
  /**
   * Length as found.
   * Takes a length such as "900 mm", more than 0 mm and at most 30 m.
   * @example 1.93 m
   */
  readonly length: Written<'length'>;
  /**
   * Cup. Gap in the middle under a straightedge laid across the width.
   * Takes a length such as "0 mm", at least 0 mm and at most 300 mm.
   * @default 0 mm
   * @example 2.5 mm
   */
  readonly cup?: Written<'length'>;
  /**
   * Bow. Gap in the middle under a line along the length.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 4 mm
   */
  readonly bow?: Written<'length'>;
  /**
   * Twist. How far the fourth corner stands up when three lie on a flat bench.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 3 mm
   */
  readonly twist?: Written<'length'>;
  /**
   * Rip cuts. Cuts along the grain before planing.
   * Takes a whole number such as 0, at least 0 and at most 100.
   * @default 0
   * @example 1
   */
  readonly rips?: Written<'count'>;
  /**
   * Crosscuts. Cuts across the grain before planing.
   * Takes a whole number such as 0, at least 0 and at most 100.
   * @default 0
   * @example 1
   */
  readonly crosscuts?: Written<'count'>;
  /**
   * Saw kerf.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Clean-up. Planed off each face once it is flat.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link flatteningLoss} gives, beside workings, cautions, sources and chart. */
export interface FlatteningLossOutput {
  /**
   * Flattened thickness. Thickness once both faces are flat.
   */
  readonly dressedThickness: Quantity<'length'>;
  /**
   * Thickness lost.
   */
  readonly loss: Quantity<'length'>;
  /**
   * Piece width. Width of a piece when flattened.
   */
  readonly pieceWidth: Quantity<'length'>;
  /**
   * Piece length. Length of a piece when flattened.
   */
  readonly pieceLength: Quantity<'length'>;
  /**
   * Loss by cause.
   */
  readonly byCause: ShownOf<(typeof flatteningLoss)['outputs']['byCause']>;
}
/** An answer of {@link flatteningLoss}. */
export interface FlatteningLossResult extends FlatteningLossOutput, ResultMethods {}

/** What {@link gradeYield} takes. How much clear wood a hardwood grade promises in a board, as cutting units and as an area, and in how many pieces at most. Not for softwood or strength grades. */
export interface GradeYieldInput {
  /**
   * Grade of the board.
   * Takes one of "FAS", "F1F", "Selects", "No.1 Common", "No.2A Common", "No.2B Common", "No.3A Common", "No.3B Common".
   * @example No.1 Common
   */
  readonly grade: 'FAS' | 'F1F' | 'Selects' | 'No.1 Common' | 'No.2A Common' | 'No.2B Common' | 'No.3A Common' | 'No.3B Common';
  /**
   * Surface measure. Whole square feet of face.
   * Takes a whole number such as 4, at least 1 and at most 200.
   */
  readonly surfaceMeasure?: Written<'count'>;
  /**
   * Width. Needed where the surface measure is not given.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 7 in
   */
  readonly width?: Written<'length'>;
  /**
   * Length. Needed where the surface measure is not given.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 8 ft
   */
  readonly length?: Written<'length'>;
}
/** What {@link gradeYield} gives, beside workings, cautions, sources and chart. */
export interface GradeYieldOutput {
  /**
   * Clear units needed. Cutting units of clear wood that the grade requires.
   */
  readonly clearUnits: number;
  /**
   * Their area.
   */
  readonly area: Quantity<'area'>;
  /**
   * Clear share. Clear wood as a share of the face.
   */
  readonly yield: Quantity<'share'>;
  /**
   * Surface measure.
   */
  readonly surfaceMeasure: number;
  /**
   * Units in face. Cutting units in the whole face.
   */
  readonly totalUnits: number;
  /**
   * Most cuttings. Most pieces that the clear wood may lie in.
   */
  readonly cuttings?: number | undefined;
  /**
   * Units, extra cutting. Cutting units required if one more piece is taken.
   */
  readonly unitsWithExtraCut?: number | undefined;
  /**
   * Least cutting. Least size of a clear piece.
   */
  readonly leastCutting: string;
  /**
   * Least board. Least board of the grade.
   */
  readonly leastBoard: string;
  /**
   * Face that decides.
   */
  readonly face: string;
}
/** An answer of {@link gradeYield}. */
export interface GradeYieldResult extends GradeYieldOutput, ResultMethods {}

/** What {@link palletBoards} takes. What a kind of pallet gives: boards with their nails pulled or sawn between the bearers, clear lengths, area and weight, pallets for a need, and what its treatment mark allows. */
export interface PalletBoardsInput {
  /**
   * Kind of pallet.
   * Takes one of "48 x 40 pallet", "FIN pallet".
   * @example 48 x 40 pallet
   */
  readonly kind: '48 x 40 pallet' | 'FIN pallet';
  /**
   * Treatment mark. Treatment mark stamped on the pallet.
   * Takes one of "HT", "DH", "MB", "SF", "none", "stained".
   * @example HT
   */
  readonly mark: 'HT' | 'DH' | 'MB' | 'SF' | 'none' | 'stained';
  /**
   * Thickness. Thickness of the boards, in place of the published one.
   * Takes a length such as "900 mm", more than 0 mm and at most 60 mm.
   */
  readonly thickness?: Written<'length'>;
  /**
   * Bearers under a board.
   * Takes a whole number such as 3, at least 2 and at most 5.
   * @default 3
   */
  readonly bearers?: Written<'count'>;
  /**
   * Width of a bearer.
   * Takes a length such as "38 mm", more than 0 mm and at most 200 mm.
   * @default 38 mm
   */
  readonly bearerWidth?: Written<'length'>;
  /**
   * Split end. Length of split end lost where nails are pulled.
   * Takes a length such as "40 mm", at least 0 mm and at most 300 mm.
   * @default 40 mm
   */
  readonly splitEnd?: Written<'length'>;
  /**
   * Boards broken. Share of boards that break where nails are pulled.
   * Takes a share such as "20 %", at least 0 % and at most 95 %.
   * @default 20 %
   */
  readonly broken?: Written<'share'>;
  /**
   * Loss per cut. Length lost at each cut beside a bearer.
   * Takes a length such as "5 mm", at least 0 mm and at most 50 mm.
   * @default 5 mm
   */
  readonly cutLoss?: Written<'length'>;
  /**
   * Density of the boards.
   * Takes a density such as "450 kg/m3", more than 0 kg/m³ and at most 1500 kg/m³.
   * @default 450 kg/m3
   */
  readonly density?: Written<'density'>;
  /**
   * Area of boards needed.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 1000 m².
   * @example 3 m2
   */
  readonly need?: Written<'area'>;
}
/** What {@link palletBoards} gives, beside workings, cautions, sources and chart. */
export interface PalletBoardsOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * What the mark allows.
   */
  readonly allowed: string;
  /**
   * Boards of a pallet.
   */
  readonly boards: number;
  /**
   * Clear length, nails pulled.
   */
  readonly pulledLength: Quantity<'length'>;
  /**
   * Area, pulled. Board area of one pallet where nails are pulled.
   */
  readonly pulledArea: Quantity<'area'>;
  /**
   * Length, sawn. Clear length of a board sawn between bearers.
   */
  readonly sawnLength: Quantity<'length'>;
  /**
   * Area, sawn. Board area of one pallet sawn between bearers.
   */
  readonly sawnArea: Quantity<'area'>;
  /**
   * Mass of boards. Mass of the boards of one pallet.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * Pallets, pulled. Pallets needed where nails are pulled.
   */
  readonly pallets?: number | undefined;
  /**
   * Pallets, sawn. Pallets needed where boards are sawn between bearers.
   */
  readonly palletsSawn?: number | undefined;
  /**
   * Survey. The boards as rows of a survey.
   */
  readonly survey: ShownOf<(typeof palletBoards)['outputs']['survey']>;
}
/** An answer of {@link palletBoards}. */
export interface PalletBoardsResult extends PalletBoardsOutput, ResultMethods {}

/** What {@link partsCost} takes. What the timber of a list of parts costs, from one price or a price for each material, with waste added. Glue, finish and time are not in it. */
export interface PartsCostInput {
  /**
   * Parts. One row for each part.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name, count?, length, width?, thickness?, material?, price?.
   * @example [{"name":"rail","count":2,"length":"1.8 m","width":"70 mm","thickness":"34 mm"},{"name":"leg","count":4,"length":"860 mm","width":"70 mm","thickness":"34 mm"},{"name":"brace","count":2,"length":"720 mm","width":"45 mm","thickness":"20 mm"}]
   */
  readonly parts: InputOf<(typeof partsCost)['inputs']['parts']>;
  /**
   * Price. For parts that name no other.
   * Takes a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   * @example €680/m3
   */
  readonly price?: InputOf<(typeof partsCost)['inputs']['price']>;
  /**
   * Price of each material.
   * Takes named parts such as { oil: ... }, each a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   */
  readonly prices?: InputOf<(typeof partsCost)['inputs']['prices']>;
  /**
   * Waste. Share added to the net quantity, or how the timber is sold.
   * Takes a share such as "15 %", at least 0 % and at most 1000 %, or one of "softwood scantlings", "square-edge hardwood", "waney-edge boards", "very wasteful logs", "plywood", "veneers".
   * @default 0 %
   * @example square-edge hardwood
   */
  readonly waste?: Exclude<InputOf<(typeof partsCost)['inputs']['waste']>, string> | 'softwood scantlings' | 'square-edge hardwood' | 'waney-edge boards' | 'very wasteful logs' | 'plywood' | 'veneers' | (string & {});
}
/** What {@link partsCost} gives, beside workings, cautions, sources and chart. */
export interface PartsCostOutput {
  /**
   * Cost of all parts.
   */
  readonly total: Quantity<'money'>;
  /**
   * Cost, low waste. Cost at the lower usual waste.
   */
  readonly low?: Quantity<'money'> | undefined;
  /**
   * Net cost. Cost of the parts without waste.
   */
  readonly netCost: Quantity<'money'>;
  /**
   * Added for waste.
   */
  readonly waste: Quantity<'share'>;
  /**
   * Net volume. Volume of the parts whose section is given.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * Volume to buy. Net volume with waste added.
   */
  readonly volumeToBuy: Quantity<'volume'>;
  /**
   * By part, waste included.
   */
  readonly byPart: ShownOf<(typeof partsCost)['outputs']['byPart']>;
}
/** An answer of {@link partsCost}. */
export interface PartsCostResult extends PartsCostOutput, ResultMethods {}

/** What {@link pileSampling} takes. How many more pallets or boards to take apart for what is still needed, judged by a few already done. For pieces like those sampled; not for a pile sorted best first. */
export interface PileSamplingInput {
  /**
   * Sample.
   * Takes two or more amounts of one kind, such as '1.6 m, 1.4 m, 1.7 m' or ['0.8 m2', '0.9 m2'].
   * @example ["1.62 m","1.48 m","1.71 m","1.33 m","1.57 m","1.66 m"]
   */
  readonly sample: InputOf<(typeof pileSampling)['inputs']['sample']>;
  /**
   * Still needed.
   * Takes an amount of the sample's kind and more than nothing, such as '14 m' or '6 m2'.
   * @example 14 m
   */
  readonly needed: InputOf<(typeof pileSampling)['inputs']['needed']>;
  /**
   * Confidence. How sure the answer should be.
   * Takes a share such as "90 %", at least 50 % and at most 99.9 %.
   * @default 90 %
   * @example 90 %
   */
  readonly confidence?: Written<'share'>;
}
/** What {@link pileSampling} gives, beside workings, cautions, sources and chart. */
export interface PileSamplingOutput {
  /**
   * Pieces to break down. Pieces to take apart so that the need is met with this confidence.
   */
  readonly piecesToPull: number;
  /**
   * Pieces, low. Pieces that may already be enough.
   */
  readonly low: number;
  /**
   * Pieces, high. Pieces that may be needed.
   */
  readonly high: number;
  /**
   * Pieces, mean. Pieces needed at the mean yield.
   */
  readonly expected: number;
  /**
   * Mean yield.
   */
  readonly meanYield: ShownOf<(typeof pileSampling)['outputs']['meanYield']>;
  /**
   * Spread of yields.
   */
  readonly spread: ShownOf<(typeof pileSampling)['outputs']['spread']>;
  /**
   * Yield, low.
   */
  readonly yieldLow: ShownOf<(typeof pileSampling)['outputs']['yieldLow']>;
  /**
   * Yield, high.
   */
  readonly yieldHigh: ShownOf<(typeof pileSampling)['outputs']['yieldHigh']>;
}
/** An answer of {@link pileSampling}. */
export interface PileSamplingResult extends PileSamplingOutput, ResultMethods {}

/** What {@link pileYield} takes. What a surveyed pile of salvaged boards gives as dressed stock of one thickness: length, area, volume, pieces and yield, and the thickness at which the yield peaks. For where to cut, use the cutting plan. */
export interface PileYieldInput {
  /**
   * Boards. Survey of the pile with a row for each size and state of board.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, endLoss?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"R1","group":"rafter","count":3,"length":"2310 mm","width":"97 mm","thickness":"47 mm","endLoss":"110 mm","faultLength":"140 mm","faults":2,"cup":"1 mm","bow":"5 mm"},{"name":"R2","group":"rafter","count":4,"length":"1870 mm","width":"98 mm","thickness":"47 mm","endLoss":"120 mm","faultLength":"80 mm","cup":"0.5 mm","bow":"3 mm"},{"name":"F1","group":"floorboard","count":5,"length":"1620 mm","width":"142 mm","thickness":"22 mm","endLoss":"65 mm","faultLength":"120 mm","faults":2,"cup":"1.5 mm","bow":"2 mm"},{"name":"F2","group":"floorboard","count":1,"length":"1340 mm","width":"138 mm","thickness":"19 mm","endLoss":"75 mm","faultLength":"55 mm","cup":"3.5 mm","bow":"3 mm"}]
   */
  readonly boards: InputOf<(typeof pileYield)['inputs']['boards']>;
  /**
   * Planing allowance. Planed off each face once it is flat.
   * Takes a length such as "1 mm", at least 0 mm and at most 20 mm.
   * @default 1 mm
   * @example 1 mm
   */
  readonly plane?: Written<'length'>;
  /**
   * Saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Jointing allowance. Taken off each strip in jointing, both edges together.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * Target. Finished thickness, or thickness, strip width and piece length.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm, or an object with thickness? (common thickness wanted), width? (strip width), length? (length of a piece).
   * @example {"width":"42 mm"}
   */
  readonly target?: InputOf<(typeof pileYield)['inputs']['target']>;
  /**
   * Resaw. Whether thick boards are resawn into layers.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly resaw?: boolean | 'yes' | 'no';
}
/** What {@link pileYield} gives, beside workings, cautions, sources and chart. */
export interface PileYieldOutput {
  /**
   * Common thickness.
   */
  readonly commonThickness: Quantity<'length'>;
  /**
   * Yield. Dressed volume as a share of the pile.
   */
  readonly yield: Quantity<'share'>;
  /**
   * Dressed pieces.
   */
  readonly pieces: number;
  /**
   * Usable length. Length of the dressed pieces.
   * Shown in m.
   */
  readonly usableLength: Quantity<'length'>;
  /**
   * Area. Face area of the dressed pieces.
   */
  readonly area: Quantity<'area'>;
  /**
   * Dressed volume.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * Rough volume. Volume of the pile as found.
   */
  readonly roughVolume: Quantity<'volume'>;
  /**
   * Boards left out. Boards that give nothing at this thickness.
   */
  readonly boardsLeftOut: number;
  /**
   * Best thickness. Thickness at which the yield is greatest.
   */
  readonly peakThickness: Quantity<'length'>;
  /**
   * Yield at that thickness.
   */
  readonly peakYield: Quantity<'share'>;
  /**
   * By group. At the common thickness.
   */
  readonly byGroup: ShownOf<(typeof pileYield)['outputs']['byGroup']>;
  /**
   * By thickness. Thicknesses at which boards begin to drop out.
   */
  readonly byThickness: ShownOf<(typeof pileYield)['outputs']['byThickness']>;
}
/** An answer of {@link pileYield}. */
export interface PileYieldResult extends PileYieldOutput, ResultMethods {}

/** What {@link roughToDressed} takes. The dressed size a rough board gives, or the rough size to buy for a wanted one, by planing allowances; and the standard dressed size of nominal softwood. For bent boards calculate the flattening loss first. */
export interface RoughToDressedInput {
  /**
   * Rough size.
   * Takes an object with thickness (thickness), width (width), length? (length).
   * @example {"thickness":"47 mm","width":"97 mm","length":"1870 mm"}
   */
  readonly rough?: InputOf<(typeof roughToDressed)['inputs']['rough']>;
  /**
   * Dressed size.
   * Takes an object with thickness (thickness), width (width), length? (length).
   */
  readonly dressed?: InputOf<(typeof roughToDressed)['inputs']['dressed']>;
  /**
   * Nominal size. Softwood size in inches, such as 2x4.
   * Takes a text of 1 to 200 characters.
   */
  readonly nominal?: string;
  /**
   * Surfacing. S1S one side, S1E one edge, S4S all four.
   * Takes one of "S1S", "S2S", "S1E", "S2E", "S1S1E", "S2S1E", "S1S2E", "S4S".
   * @default S4S
   * @example S4S
   */
  readonly faces?: 'S1S' | 'S2S' | 'S1E' | 'S2E' | 'S1S1E' | 'S2S1E' | 'S1S2E' | 'S4S';
  /**
   * Planing allowances.
   * Takes an object with face? (taken off each face), edge? (taken off each edge), end? (docked from each end).
   * @default {}
   */
  readonly allowances?: InputOf<(typeof roughToDressed)['inputs']['allowances']>;
}
/** What {@link roughToDressed} gives, beside workings, cautions, sources and chart. */
export interface RoughToDressedOutput {
  /**
   * Rough thickness.
   */
  readonly roughThickness?: Quantity<'length'> | undefined;
  /**
   * Rough width.
   */
  readonly roughWidth?: Quantity<'length'> | undefined;
  /**
   * Rough length.
   */
  readonly roughLength?: Quantity<'length'> | undefined;
  /**
   * Dressed thickness.
   */
  readonly dressedThickness: Quantity<'length'>;
  /**
   * Dressed width.
   */
  readonly dressedWidth: Quantity<'length'>;
  /**
   * Dressed length.
   */
  readonly dressedLength?: Quantity<'length'> | undefined;
  /**
   * Thickness if dressed green.
   */
  readonly greenThickness?: Quantity<'length'> | undefined;
  /**
   * Width if dressed green.
   */
  readonly greenWidth?: Quantity<'length'> | undefined;
  /**
   * Planed away. Share of the section that is planed away.
   */
  readonly planedAway: Quantity<'share'>;
}
/** An answer of {@link roughToDressed}. */
export interface RoughToDressedResult extends RoughToDressedOutput, ResultMethods {}

/** What {@link topFromPile} takes. Whether a surveyed pile is enough for a glued top, how thick it can be, and which board goes where, with a proof or the gap to one, and what small changes to pile or rules would free. */
export interface TopFromPileInput {
  /**
   * Boards. Survey of the pile with a row for each board or kind of board.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, tone?, endLoss?, endLeft?, endRight?, faultsAt?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"R1","length":"2.48 m","width":"98 mm","thickness":"48 mm","endLeft":"60 mm","endRight":"70 mm","faultsAt":"1120-1210 mm","count":3},{"name":"R3","length":"2.31 m","width":"97 mm","thickness":"47 mm","endLeft":"50 mm","endRight":"60 mm","count":3},{"name":"R7","length":"1.87 m","width":"98 mm","thickness":"47 mm","endLeft":"60 mm","endRight":"60 mm","bow":"2 mm","count":4},{"name":"R9","length":"1.64 m","width":"97 mm","thickness":"47 mm","endLeft":"40 mm","endRight":"45 mm","count":3}]
   */
  readonly boards: InputOf<(typeof topFromPile)['inputs']['boards']>;
  /**
   * Length of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1.95 m
   */
  readonly topLength: Written<'length'>;
  /**
   * Width of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Thickness. Leave it out for a top as thick as the pile allows.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness?: Written<'length'>;
  /**
   * Lay. A board's width across the top, its thickness across the top, or whichever is better.
   * Takes one of "flat", "on edge", "either".
   * @default either
   */
  readonly lay?: 'flat' | 'on edge' | 'either';
  /**
   * Layers. Layers glued face to face.
   * Takes a whole number such as 1, at least 1 and at most 4.
   * @default 1
   */
  readonly layers?: Written<'count'>;
  /**
   * Squaring allowance.
   * Takes a length such as "40 mm", at least 0 mm and at most 500 mm.
   * @default 40 mm
   */
  readonly spare?: Written<'length'>;
  /**
   * Planed off each face.
   * Takes a length such as "1 mm", at least 0 mm and at most 20 mm.
   * @default 1 mm
   */
  readonly plane?: Written<'length'>;
  /**
   * Jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * Slab jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly slabJointing?: Written<'length'>;
  /**
   * Saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Thicknesser width. Widest board that the thicknesser takes.
   * Takes a length such as "300 mm", more than 0 mm and at most 5000 mm.
   * @default 300 mm
   */
  readonly widestSlab?: Written<'length'>;
  /**
   * Clamp opening. Greatest opening of the clamps owned.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly clampReach?: Written<'length'>;
  /**
   * Least row width.
   * Takes a length such as "20 mm", at least 0 mm and at most 1000 mm.
   * @default 20 mm
   */
  readonly leastRow?: Written<'length'>;
  /**
   * Least piece. Least length of a piece that shows.
   * Takes a length such as "250 mm", at least 20 mm and at most 5000 mm.
   * @default 250 mm
   */
  readonly leastPiece?: Written<'length'>;
  /**
   * Stagger.
   * Takes a length such as "150 mm", at least 0 mm and at most 5000 mm.
   * @default 150 mm
   */
  readonly stagger?: Written<'length'>;
  /**
   * Joints per row. Most joints in one row.
   * Takes a whole number such as 3, at least 0 and at most 20.
   * @default 3
   */
  readonly maxJoints?: Written<'count'>;
  /**
   * Rip flat boards. Whether a board laid flat may be ripped into several strips; boards on edge always are.
   * Takes one of "no", "yes".
   * @default no
   */
  readonly rip?: 'no' | 'yes';
  /**
   * Tones. Mixed, or apart: one tone to a row and rows of a tone together.
   * Takes one of "mixed", "apart".
   * @default mixed
   */
  readonly tones?: 'mixed' | 'apart';
  /**
   * Faces that show. With one, faults marked "back" stay in a top laid flat.
   * Takes one of "one", "both".
   * @default both
   */
  readonly showFaces?: 'one' | 'both';
  /**
   * Least offcut. Least offcut worth keeping; leave it out to take the least piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   */
  readonly leastOffcut?: Written<'length'>;
  /**
   * Curves. Whether to find the curves over thickness and stagger.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly curves?: boolean | 'yes' | 'no';
  /**
   * What-ifs. Whether to find what small changes would give.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly whatIfs?: boolean | 'yes' | 'no';
  /**
   * Rounds. Rounds of the search; leave it out to go by the size of the pile.
   * Takes a whole number such as 4, at least 1 and at most 1 000 000 000.
   * @example 300
   */
  readonly rounds?: Written<'count'>;
  /**
   * Time limit. Longest time to search, a last stop for slow machines.
   * Takes a time such as "60 s", at least 0.05 s and at most 30 min.
   * @default 60 s
   */
  readonly timeLimit?: Written<'time'>;
  /**
   * Seed of the search.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link topFromPile} gives, beside workings, cautions, sources and chart. */
export interface TopFromPileOutput {
  /**
   * Is the pile enough?.
   */
  readonly verdict: string;
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Thickness of the top.
   */
  readonly thickness: Quantity<'length'>;
  /**
   * Width found.
   */
  readonly foundWidth: Quantity<'length'>;
  /**
   * Width bound. No lay-up can be wider.
   */
  readonly widthBound: Quantity<'length'>;
  /**
   * Thickness bound. No top of this width can be thicker.
   */
  readonly thicknessBound?: Quantity<'length'> | undefined;
  /**
   * How it is proved.
   */
  readonly proof: string;
  /**
   * Search done in full.
   */
  readonly complete: boolean;
  /**
   * How the strips lie.
   */
  readonly lay: string;
  /**
   * Rows.
   */
  readonly rowCount: number;
  /**
   * Boards cut.
   */
  readonly boardsCut: number;
  /**
   * Timber used. Timber used less the offcuts kept.
   */
  readonly timber: Quantity<'volume'>;
  /**
   * Timber bound. No top of this width takes less timber.
   */
  readonly timberBound?: Quantity<'volume'> | undefined;
  /**
   * Edge trim. Width ripped off an edge row.
   */
  readonly surplus?: Quantity<'length'> | undefined;
  /**
   * What is missing.
   */
  readonly missing?: string | undefined;
  /**
   * Least stagger.
   */
  readonly worstStagger?: Quantity<'length'> | undefined;
  /**
   * Least layer stagger. Least distance of joints between layers.
   */
  readonly layerStagger?: Quantity<'length'> | undefined;
  /**
   * Jointless width. Share of the width without joints at the worst section.
   */
  readonly bendingShare: Quantity<'share'>;
  /**
   * Bending thickness. Thickness to calculate sag and bending with.
   */
  readonly thicknessForBending: Quantity<'length'>;
  /**
   * Rows.
   */
  readonly rows: ShownOf<(typeof topFromPile)['outputs']['rows']>;
  /**
   * Board by board.
   */
  readonly cuts: ShownOf<(typeof topFromPile)['outputs']['cuts']>;
  /**
   * Slabs, glued first.
   */
  readonly slabs: ShownOf<(typeof topFromPile)['outputs']['slabs']>;
  /**
   * Glue-ups.
   */
  readonly glueUps: ShownOf<(typeof topFromPile)['outputs']['glueUps']>;
  /**
   * Stops and fences. Each set once.
   */
  readonly setups: ShownOf<(typeof topFromPile)['outputs']['setups']>;
  /**
   * Pieces.
   */
  readonly pieces: ShownOf<(typeof topFromPile)['outputs']['pieces']>;
  /**
   * Left over.
   */
  readonly leftOver: ShownOf<(typeof topFromPile)['outputs']['leftOver']>;
  /**
   * Width over thickness.
   */
  readonly curve: ShownOf<(typeof topFromPile)['outputs']['curve']>;
  /**
   * Waste over stagger.
   */
  readonly staggerCurve?: ShownOf<(typeof topFromPile)['outputs']['staggerCurve']> | undefined;
  /**
   * What small changes free.
   */
  readonly whatIfs?: ShownOf<(typeof topFromPile)['outputs']['whatIfs']> | undefined;
  /**
   * Boards that give nothing.
   */
  readonly useless?: ShownOf<(typeof topFromPile)['outputs']['useless']> | undefined;
}
/** An answer of {@link topFromPile}. */
export interface TopFromPileResult extends TopFromPileOutput, ResultMethods {}

/** What {@link caulCamber} takes. How much crown to plane on a caul so that, clamped at its ends, it presses evenly along its whole length. */
export interface CaulCamberInput {
  /**
   * Length. Length of the caul between its two clamps.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 640 mm
   */
  readonly length: Written<'length'>;
  /**
   * Width. Width of the caul across its pressing face.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 45 mm
   */
  readonly width: Written<'length'>;
  /**
   * Depth. Depth of the caul in the direction it bends.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 60 mm
   */
  readonly depth: Written<'length'>;
  /**
   * Timber. Timber or grade of the caul.
   * Takes a grade such as "C24" or "MGP10", or a timber by name such as "Douglas-fir".
   * @example C24
   */
  readonly timber: Exclude<InputOf<(typeof caulCamber)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Clamp force. Force of the clamp at each end.
   * Takes a force such as "2 kN", more than 0 N and at most 50 kN.
   * @example 2 kN
   */
  readonly clampForceEach: Written<'force'>;
}
/** What {@link caulCamber} gives, beside workings, cautions, sources and chart. */
export interface CaulCamberOutput {
  /**
   * Camber. Planed off to nothing at the middle and fully at the ends.
   */
  readonly camber: Quantity<'length'>;
  /**
   * Bending stress. Bending stress at the middle.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * Strong enough. Whether the caul carries the stress.
   */
  readonly ok: boolean;
  /**
   * Allowed stress. Stress that it may be bent to.
   */
  readonly allowed?: Quantity<'stress'> | undefined;
  /**
   * Camber, stiff timber. Camber if the timber is stiffer than average.
   */
  readonly camberLow?: Quantity<'length'> | undefined;
  /**
   * Camber, flexible timber. Camber if the timber is more flexible than average.
   */
  readonly camberHigh?: Quantity<'length'> | undefined;
  /**
   * Press along the caul.
   */
  readonly press: Quantity<'lineLoad'>;
  /**
   * Planing one half. How much to plane off along one half; the other half is alike.
   */
  readonly marks: ShownOf<(typeof caulCamber)['outputs']['marks']>;
}
/** An answer of {@link caulCamber}. */
export interface CaulCamberResult extends CaulCamberOutput, ResultMethods {}

/** What {@link clampPlan} takes. How many clamps a glue-up takes, by force and by spacing, and where each stands, alternately below and above. */
export interface ClampPlanInput {
  /**
   * Length of the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 2 m
   */
  readonly length: Written<'length'>;
  /**
   * Joint height. Thickness of the slab at an edge joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * Pressure. Clamping pressure on the glue line; or give the kind of timber.
   * Takes a pressure such as "700 kPa", more than 0 kPa and at most 10 MPa.
   */
  readonly pressure?: Written<'pressure'>;
  /**
   * Kind of timber. Kind of timber and glue whose printed pressure is taken, at the upper end; or give the pressure.
   * Takes one of "softwood", "hardwood", "low-density", "high-density", "softwood polyurethane", "hardwood polyurethane".
   * @example softwood
   */
  readonly timberKind?: 'softwood' | 'hardwood' | 'low-density' | 'high-density' | 'softwood polyurethane' | 'hardwood polyurethane';
  /**
   * Clamp. Force that one clamp gives, or a kind of clamp whose force was measured.
   * Takes one of "parallel-jaw clamp", "one-hand trigger bar clamp", "aluminium bar clamp", "3/4 in pipe clamp", "I-beam bar (sash) clamp", or a force such as "2 kN", more than 0 N and at most 100 kN.
   * @example I-beam bar (sash) clamp
   */
  readonly clampForce: Exclude<InputOf<(typeof clampPlan)['inputs']['clampForce']>, string> | 'parallel-jaw clamp' | 'one-hand trigger bar clamp' | 'aluminium bar clamp' | '3/4 in pipe clamp' | 'I-beam bar (sash) clamp' | (string & {});
  /**
   * Edge board width. From the edge that is pressed to the first glue line.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 45 mm
   */
  readonly outerWidth: Written<'length'>;
  /**
   * Pad thickness. Thickness of the pad or batten between clamp and edge.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 20 mm
   */
  readonly pad?: Written<'length'>;
  /**
   * Pad length. Length of the pad along the joint; 0 for a batten that runs all along.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 60 mm
   */
  readonly padLength?: Written<'length'>;
  /**
   * Clamp head width. Width of the clamp head along the joint.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   */
  readonly head?: Written<'length'>;
  /**
   * Clamp reach. Opening of a bar clamp, or throat of a screw clamp.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 900 mm
   */
  readonly reach?: Written<'length'>;
  /**
   * Reach needed. Width of the slab with both pads.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 715 mm
   */
  readonly needReach?: Written<'length'>;
  /**
   * Slab width. Between the clamp heads, to check that the slab stays flat.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 675 mm
   */
  readonly slabWidth?: Written<'length'>;
  /**
   * Force offset. How far the force is off the middle of the thickness.
   * Takes a length such as "2 mm", at least 0 mm and at most 500 mm.
   * @default 2 mm
   */
  readonly offset?: Written<'length'>;
  /**
   * Modulus across grain. Modulus of elasticity across the grain.
   * Takes a modulus of elasticity such as "300 MPa", more than 0 MPa and at most 10 GPa.
   * @default 300 MPa
   */
  readonly acrossModulus?: Written<'modulus'>;
  /**
   * Cauls. Whether cauls across the slab hold it flat.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly cauls?: boolean | 'yes' | 'no';
  /**
   * Clamps owned. The clamps in the workshop with a row for each kind.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns kind?, force?, count?, reach?.
   */
  readonly owned?: InputOf<(typeof clampPlan)['inputs']['owned']>;
}
/** What {@link clampPlan} gives, beside workings, cautions, sources and chart. */
export interface ClampPlanOutput {
  /**
   * Clamps.
   */
  readonly clamps: number;
  /**
   * Spacing. From clamp to clamp, and half of it from either end.
   */
  readonly spacing: Quantity<'length'>;
  /**
   * Force needed. Force that the joint needs.
   */
  readonly totalForce: Quantity<'force'>;
  /**
   * What decides the count.
   */
  readonly governedBy: string;
  /**
   * Clamps by force.
   */
  readonly byForce: number;
  /**
   * Clamps by spacing.
   */
  readonly bySpacing: number;
  /**
   * Force per clamp. Force to tighten each clamp to.
   */
  readonly forceEach: Quantity<'force'>;
  /**
   * Clamping pressure taken.
   */
  readonly pressure: Quantity<'pressure'>;
  /**
   * Length per clamp. Length of joint that one clamp presses.
   */
  readonly coverEach: Quantity<'length'>;
  /**
   * Do the clamps reach?.
   */
  readonly reachOk?: boolean | undefined;
  /**
   * Lifting force. Force at which the slab opens on one face.
   */
  readonly liftForce?: Quantity<'force'> | undefined;
  /**
   * Buckling force. Force at which a straight slab bows up.
   */
  readonly bucklingForce?: Quantity<'force'> | undefined;
  /**
   * Pressure reached. Pressure that the clamps owned give.
   */
  readonly ownedPressure?: Quantity<'pressure'> | undefined;
  /**
   * Clamps that reach. How many of the clamps owned reach.
   */
  readonly ownedClamps?: number | undefined;
  /**
   * Clamps owned. Whether the clamps owned are enough.
   */
  readonly ownedVerdict?: string | undefined;
  /**
   * Glue-up in stages. Where too few of the clamps owned reach over the whole slab.
   */
  readonly stages?: ShownOf<(typeof clampPlan)['outputs']['stages']> | undefined;
  /**
   * Clamps in order. Where the clamps stand, in the order to tighten: from the middle outward.
   */
  readonly positions: ShownOf<(typeof clampPlan)['outputs']['positions']>;
}
/** An answer of {@link clampPlan}. */
export interface ClampPlanResult extends ClampPlanOutput, ResultMethods {}

/** What {@link glueQuantity} takes. How much glue the joints take, by mass and by volume, from their area and the spread. */
export interface GlueQuantityInput {
  /**
   * Length of a joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 2 m
   */
  readonly jointLength: Written<'length'>;
  /**
   * Joint height. Thickness of the slab in edge joints, width of the boards between faces.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * Joints. One less than the strips or layers.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * Spread. Glue on each spread face.
   * Takes an application rate such as "200 g/m2", more than 0 g/m² and at most 2000 g/m².
   * @default 200 g/m2
   * @example 200 g/m2
   */
  readonly spread?: Written<'applicationRate'>;
  /**
   * Spread faces. Faces of a joint that are spread: 1, or 2 when both get the full spread.
   * Takes a whole number such as 1, at least 1 and at most 2.
   * @default 1
   */
  readonly sides?: Written<'count'>;
  /**
   * Waste. Added for what is squeezed out or left in the pot.
   * Takes a share such as "0 %", at least 0 % and at most 300 %.
   * @default 0 %
   * @example 10 %
   */
  readonly waste?: Written<'share'>;
  /**
   * Glue density. From the label of the glue.
   * Takes a density such as "1100 kg/m3", at least 500 kg/m³ and at most 2500 kg/m³.
   * @default 1100 kg/m3
   */
  readonly glueDensity?: Written<'density'>;
}
/** What {@link glueQuantity} gives, beside workings, cautions, sources and chart. */
export interface GlueQuantityOutput {
  /**
   * Glue needed. Glue to have at hand.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * The same by volume.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * Area to spread.
   */
  readonly area: Quantity<'area'>;
  /**
   * Glue for one joint.
   */
  readonly massPerJoint: Quantity<'mass'>;
}
/** An answer of {@link glueQuantity}. */
export interface GlueQuantityResult extends GlueQuantityOutput, ResultMethods {}

/** What {@link glueTiming} takes. Will the glue skin before the clamps are on? How many joints go in one batch, and how many batches it takes. */
export interface GlueTimingInput {
  /**
   * Joints. Joints in the whole glue-up.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * Time per joint. Time to spread one joint and lay it ready.
   * Takes a time such as "15 min", at least 1 s and at most 2 h.
   * @example 45 s
   */
  readonly perJoint: Written<'time'>;
  /**
   * Open time. How long spread glue stays wet in the open, from its data sheet; at 20 °C when a temperature is given.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   * @example 10 min
   */
  readonly openTime: Written<'time'>;
  /**
   * Closed time. How long a closed joint may wait for pressure, from the glue’s data sheet.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   */
  readonly closedTime?: Written<'time'>;
  /**
   * Temperature. Of air and timber; the times are then taken as printed for 20 °C and corrected.
   * Takes a temperature such as "21 degC", at least 0 °C and at most 45 °C.
   * @example 24 degC
   */
  readonly temperature?: Written<'temperature'>;
  /**
   * Clamping time. Time to set all clamps of one batch.
   * Takes a time such as "0 min", at least 0 s and at most 2 h.
   * @default 0 min
   * @example 2 min
   */
  readonly clampsUp?: Written<'time'>;
  /**
   * Hold. How long the clamps stay on before they serve the next batch.
   * Takes a time such as "30 min", at least 0 s and at most 7 day.
   * @default 30 min
   * @example 40 min
   */
  readonly hold?: Written<'time'>;
}
/** What {@link glueTiming} gives, beside workings, cautions, sources and chart. */
export interface GlueTimingOutput {
  /**
   * Batches.
   */
  readonly batches: number;
  /**
   * Joints per batch. Most joints that one batch may have.
   */
  readonly jointsPerBatch: number;
  /**
   * Spare time. Open time left over when such a batch is closed.
   */
  readonly spare: Quantity<'time'>;
  /**
   * Open time here. Open time at this temperature.
   */
  readonly openHere: Quantity<'time'>;
  /**
   * Time in all. From the first glue to the last clamp off, with one set of clamps.
   */
  readonly total: Quantity<'time'>;
  /**
   * Batches. As equal as whole joints allow.
   */
  readonly plan: ShownOf<(typeof glueTiming)['outputs']['plan']>;
}
/** An answer of {@link glueTiming}. */
export interface GlueTimingResult extends GlueTimingOutput, ResultMethods {}

/** What {@link layerCount} takes. How many boards to glue face to face for a thick top, and how thick to plane each so that the slab is balanced. */
export interface LayerCountInput {
  /**
   * Top thickness. Thickness of the finished top.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 54 mm
   */
  readonly topThickness: Written<'length'>;
  /**
   * Board thickness. Rough thickness of the thinnest board.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 22 mm
   */
  readonly stripThickness: Written<'length'>;
  /**
   * Planing per face. Taken off each of the two faces of a board before gluing.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   * @example 1.5 mm
   */
  readonly planePerFace?: Written<'length'>;
  /**
   * Flattening. Taken off the slab after a glue-up, both faces together.
   * Takes a length such as "2 mm", at least 0 mm and at most 200 mm.
   * @default 2 mm
   * @example 2 mm
   */
  readonly flattenPerGlueUp?: Written<'length'>;
  /**
   * Glue-ups. Glue-ups one after another, each followed by a flattening; 1 when all layers are glued at once.
   * Takes a whole number such as 1, at least 1 and at most 999.
   * @default 1
   */
  readonly glueUps?: Written<'count'>;
}
/** What {@link layerCount} gives, beside workings, cautions, sources and chart. */
export interface LayerCountOutput {
  /**
   * Layers.
   */
  readonly layers: number;
  /**
   * Flattened thickness. Thickness of the slab once flattened, before the spare is planed off.
   */
  readonly finalThickness: Quantity<'length'>;
  /**
   * Spare thickness. Thickness to spare over the finished top.
   */
  readonly spare: Quantity<'length'>;
  /**
   * Layer, least planed. Thickness of a layer planed as little as possible.
   */
  readonly layerPlaned: Quantity<'length'>;
  /**
   * Layer, all alike. Thickness to plane every layer to, so that all are alike and nothing is to spare.
   */
  readonly layerBalanced: Quantity<'length'>;
  /**
   * Middle of the slab. Whether a layer or a glue line lies there.
   */
  readonly middle: string;
}
/** An answer of {@link layerCount}. */
export interface LayerCountResult extends LayerCountOutput, ResultMethods {}

/** What {@link matchSlabs} takes. Plane all slabs to the thinnest, or shim them up to the thickest: both ways, with the timber lost. */
export interface MatchSlabsInput {
  /**
   * Slabs.
   * Takes thicknesses such as '41 mm, 42.5 mm, 40 mm', or a table with columns name?, thickness, width?, length?.
   * @example [{"name":"left","thickness":"41.2 mm","width":"225 mm","length":"2 m"},{"name":"middle","thickness":"43.0 mm","width":"225 mm","length":"2 m"},{"name":"right","thickness":"40.6 mm","width":"225 mm","length":"2 m"}]
   */
  readonly slabs: InputOf<(typeof matchSlabs)['inputs']['slabs']>;
  /**
   * Least thickness. Least thickness that a slab may end with; thinner ones are shimmed or left out.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 38 mm
   */
  readonly minimum?: Written<'length'>;
  /**
   * Clean-up. Planed off every slab in any case, both faces together.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   * @example 1 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link matchSlabs} gives, beside workings, cautions, sources and chart. */
export interface MatchSlabsOutput {
  /**
   * Plane all to. Thickness to plane all slabs to.
   */
  readonly planeAllTo: Quantity<'length'>;
  /**
   * Planed off. Planed off all slabs together, when all are planed.
   */
  readonly loss: Quantity<'length'>;
  /**
   * Share planed off. Planed off as a share of the slabs that are planed.
   */
  readonly lossShare: Quantity<'share'>;
  /**
   * Timber planed off. Volume planed off, where widths and lengths are given.
   */
  readonly lossVolume?: Quantity<'volume'> | undefined;
  /**
   * Shimmed height. Height of the top above the frame when slabs are shimmed instead.
   */
  readonly shimTo: Quantity<'length'>;
  /**
   * All shims together.
   */
  readonly shimTotal: Quantity<'length'>;
  /**
   * Planed off, shimmed. Planed off all slabs together when they are shimmed, which is the clean-up alone.
   */
  readonly shimLoss: Quantity<'length'>;
  /**
   * Slab by slab. Planed and shimmed.
   */
  readonly orShims: ShownOf<(typeof matchSlabs)['outputs']['orShims']>;
}
/** An answer of {@link matchSlabs}. */
export interface MatchSlabsResult extends MatchSlabsOutput, ResultMethods {}

/** What {@link slabStack} takes. Several slabs glued at once in one set of clamps, or one panel with edges and faces pressed at once: clamps and reach, pressure on each joint, packing for a shorter or thinner slab, and whether all closes in time. */
export interface SlabStackInput {
  /**
   * Way. Slabs one upon another with release paper between, or one panel with edges and faces pressed at once.
   * Takes one of "stack", "two-way".
   * @default stack
   */
  readonly way?: 'stack' | 'two-way';
  /**
   * Slabs. The slabs of one glue-up with a row for each.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns length, width, thickness, glueLines?, thinnest?.
   * @example [{"length":"1950 mm","width":"320 mm","thickness":"40 mm","glueLines":1},{"length":"1950 mm","width":"320 mm","thickness":"40 mm","glueLines":1},{"length":"1800 mm","width":"320 mm","thickness":"38 mm","glueLines":1}]
   */
  readonly slabs: InputOf<(typeof slabStack)['inputs']['slabs']>;
  /**
   * Pressure. Clamping pressure on the glue line; or give the kind of timber.
   * Takes a pressure such as "700 kPa", more than 0 kPa and at most 10 MPa.
   * @example 200 kPa
   */
  readonly pressure?: Written<'pressure'>;
  /**
   * Kind of timber. Kind of timber and glue whose printed pressure is taken, at the upper end; or give the pressure.
   * Takes one of "softwood", "hardwood", "low-density", "high-density", "softwood polyurethane", "hardwood polyurethane".
   */
  readonly timberKind?: 'softwood' | 'hardwood' | 'low-density' | 'high-density' | 'softwood polyurethane' | 'hardwood polyurethane';
  /**
   * Clamp. Force that one clamp gives, or a kind of clamp whose force was measured.
   * Takes one of "parallel-jaw clamp", "one-hand trigger bar clamp", "aluminium bar clamp", "3/4 in pipe clamp", "I-beam bar (sash) clamp", or a force such as "2 kN", more than 0 N and at most 100 kN.
   * @example I-beam bar (sash) clamp
   */
  readonly clampForce: Exclude<InputOf<(typeof slabStack)['inputs']['clampForce']>, string> | 'parallel-jaw clamp' | 'one-hand trigger bar clamp' | 'aluminium bar clamp' | '3/4 in pipe clamp' | 'I-beam bar (sash) clamp' | (string & {});
  /**
   * Caul thickness. Depth of the cauls under and over the stack, in the direction of the press.
   * Takes a length such as "60 mm", at least 5 mm and at most 500 mm.
   * @default 60 mm
   */
  readonly caulThickness?: Written<'length'>;
  /**
   * Clamp head width. Width of the clamp head along the joint.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   */
  readonly head?: Written<'length'>;
  /**
   * Clamp reach. Opening of a bar clamp, or throat of a screw clamp.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 300 mm
   */
  readonly reach?: Written<'length'>;
  /**
   * Force offset. How far the force is off the middle of the thickness.
   * Takes a length such as "2 mm", at least 0 mm and at most 500 mm.
   * @default 2 mm
   */
  readonly offset?: Written<'length'>;
  /**
   * Time per line. Time to spread one glue line and lay it together.
   * Takes a time such as "15 min", at least 1 s and at most 2 h.
   * @example 1.5 min
   */
  readonly perLine: Written<'time'>;
  /**
   * Open time. How long spread glue stays wet in the open, from its data sheet; at 20 °C when a temperature is given.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   * @example 8 min
   */
  readonly openTime: Written<'time'>;
  /**
   * Closed time. How long a closed joint may wait for pressure; the open time where none is given.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   * @example 15 min
   */
  readonly closedTime?: Written<'time'>;
  /**
   * Clamping time. Time to set all clamps.
   * Takes a time such as "3 min", at least 0 s and at most 2 h.
   * @default 3 min
   */
  readonly clampsUp?: Written<'time'>;
  /**
   * Temperature. Of air and timber; the times are then taken as printed for 20 °C and corrected.
   * Takes a temperature such as "21 degC", at least 0 °C and at most 45 °C.
   */
  readonly temperature?: Written<'temperature'>;
}
/** What {@link slabStack} gives, beside workings, cautions, sources and chart. */
export interface SlabStackOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Force. Through the stack, or at the edges of the panel.
   */
  readonly force: Quantity<'force'>;
  /**
   * Clamps.
   */
  readonly clamps: number;
  /**
   * Pairs of cauls. One under and one over, each with a clamp at both ends.
   */
  readonly cauls: number;
  /**
   * Force per clamp.
   */
  readonly forceEach: Quantity<'force'>;
  /**
   * Force, caul clamps. Force of each clamp of the cauls that hold a panel flat.
   */
  readonly caulForceEach?: Quantity<'force'> | undefined;
  /**
   * Reach needed. Slabs with the cauls, or the width of the panel.
   */
  readonly reachNeeded: Quantity<'length'>;
  /**
   * Do the clamps reach?.
   */
  readonly reachOk?: boolean | undefined;
  /**
   * Slab by slab.
   */
  readonly joints: ShownOf<(typeof slabStack)['outputs']['joints']>;
  /**
   * Closes in time. Whether all may be glued in one go.
   */
  readonly inTime: boolean;
  /**
   * Spare time. Least time left over; below zero it is too late.
   */
  readonly spare: Quantity<'time'>;
  /**
   * Spreading order. From the bottom up, the slab with most glue lines first.
   */
  readonly order: ShownOf<(typeof slabStack)['outputs']['order']>;
  /**
   * Glue-ups. Into how many goes the clock divides the joints.
   */
  readonly batches: number;
}
/** An answer of {@link slabStack}. */
export interface SlabStackResult extends SlabStackOutput, ResultMethods {}

/** What {@link stackUp} takes. How far a glued-up stack may come out off its size: at worst, most likely, and the chance that it falls inside limits. */
export interface StackUpInput {
  /**
   * Parts. Parts of the stack.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, nominal, plusMinus?, sd?, count?, setting?.
   * @example [{"name":"strip","nominal":"45 mm","plusMinus":"0.2 mm","setting":"0.1 mm","count":14},{"name":"edge strip","nominal":"12 mm","sd":"0.2 mm"}]
   */
  readonly parts: InputOf<(typeof stackUp)['inputs']['parts']>;
  /**
   * Target. Size wanted of the whole stack.
   * Takes a length such as "900 mm", at least -100 m and at most 100 m.
   * @example 642 mm
   */
  readonly target?: Written<'length'>;
  /**
   * Limits. A length either way of the target (or, without one, of the nominal size), or { low, high }.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm, or an object with low (least), high (most).
   * @example 1 mm
   */
  readonly limits?: InputOf<(typeof stackUp)['inputs']['limits']>;
  /**
   * Standard deviations. How many a plus-or-minus stands for: 2 where one piece in twenty lies outside it, 3 where one in 370 does.
   * Takes a number such as 2, at least 1 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * Distribution. Normal (most near the middle) or even (any size between the limits is as likely).
   * Takes one of "normal", "even".
   * @default normal
   */
  readonly shape?: 'normal' | 'even';
  /**
   * Share held. Share of stacks that the interval should hold.
   * Takes a share such as "95 %", at least 50 % and at most 99.9 %.
   * @default 95 %
   */
  readonly confidence?: Written<'share'>;
  /**
   * Seed. The same seed gives the same draws.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link stackUp} gives, beside workings, cautions, sources and chart. */
export interface StackUpOutput {
  /**
   * Nominal stack. Size of the stack when every piece is right.
   */
  readonly nominal: Quantity<'length'>;
  /**
   * Worst case. Off by at most, either way, when every piece errs its most.
   */
  readonly worstCase: Quantity<'length'>;
  /**
   * Likely error. Root of the sum of the squares, either way.
   */
  readonly rss: Quantity<'length'>;
  /**
   * Interval. Interval that holds that share of stacks.
   */
  readonly low: Quantity<'length'>;
  /**
   * Most of that interval.
   */
  readonly high: Quantity<'length'>;
  /**
   * Spread of stack. Standard deviation of the stack.
   */
  readonly sd: Quantity<'length'>;
  /**
   * Chance inside limits. Chance that the stack falls inside the limits.
   */
  readonly chanceInside?: Quantity<'share'> | undefined;
  /**
   * Chance, simulated. Counted in simulated stacks.
   */
  readonly chanceSimulated?: Quantity<'share'> | undefined;
  /**
   * Shim. So that the middle falls on the target; negative is to be planed off.
   */
  readonly shim?: Quantity<'length'> | undefined;
}
/** An answer of {@link stackUp}. */
export interface StackUpResult extends StackUpOutput, ResultMethods {}

/** What {@link stripCount} takes. How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser. */
export interface StripCountInput {
  /**
   * Top width. Width of the finished top.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 640 mm
   */
  readonly topWidth: Written<'length'>;
  /**
   * Rough strip width. Rough width of a strip as it will lie across the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 48 mm
   */
  readonly stripWidth: Written<'length'>;
  /**
   * Jointing allowance. Taken off each strip in jointing, both edges together.
   * Takes a length such as "3 mm", at least 0 mm and at most 100 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * Trim. Kept for trimming the glued top to width, both edges together.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   * @example 10 mm
   */
  readonly finalTrim?: Written<'length'>;
  /**
   * Thicknesser width. Widest board that the thicknesser takes.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 330 mm
   */
  readonly machineWidth?: Written<'length'>;
}
/** What {@link stripCount} gives, beside workings, cautions, sources and chart. */
export interface StripCountOutput {
  /**
   * Strips across the top.
   */
  readonly strips: number;
  /**
   * Jointed width. Width of a strip once jointed.
   */
  readonly stripFinished: Quantity<'length'>;
  /**
   * Glued width. Width as glued, before the trim.
   */
  readonly gluedWidth: Quantity<'length'>;
  /**
   * Spare width. Width to spare after the trim.
   */
  readonly spare: Quantity<'length'>;
  /**
   * Slabs to glue first. Each narrow enough for the thicknesser.
   */
  readonly slabs: ShownOf<(typeof stripCount)['outputs']['slabs']>;
}
/** An answer of {@link stripCount}. */
export interface StripCountResult extends StripCountOutput, ResultMethods {}

/** What {@link stripLayout} takes. Lays a slab from random lengths: rows filled end to end, joints staggered, like tones kept apart, little wasted. */
export interface StripLayoutInput {
  /**
   * Top length. Length of the slab, and so of every row.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 2 m
   */
  readonly topLength: Written<'length'>;
  /**
   * Rows side by side.
   * Takes a whole number such as 4, at least 1 and at most 200.
   * @example 8
   */
  readonly rows: Written<'count'>;
  /**
   * Pieces.
   * Takes lengths such as '640 mm, 815 mm, 590 mm', or a table with columns name?, length, tone?, count?.
   * @example [{"name":"A","length":"940 mm","tone":"dark","count":4},{"name":"B","length":"815 mm","tone":"light","count":5},{"name":"C","length":"640 mm","tone":"dark","count":6},{"name":"D","length":"555 mm","tone":"light","count":6},{"name":"E","length":"470 mm","tone":"dark","count":6},{"name":"F","length":"390 mm","tone":"light","count":8},{"name":"G","length":"310 mm","tone":"dark","count":4}]
   */
  readonly lengths: InputOf<(typeof stripLayout)['inputs']['lengths']>;
  /**
   * Stagger. Least distance of a joint from any joint in the next row.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly minStagger: Written<'length'>;
  /**
   * Kerf. Width of a saw cut.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Shortest piece. Least length of a piece that is cut and of an offcut worth keeping; leave it out to take the stagger, 100 mm at most.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   */
  readonly shortest?: Written<'length'>;
  /**
   * Row width. For the drawing.
   * Takes a length such as "45 mm", more than 0 mm and at most 1000 mm.
   * @default 45 mm
   */
  readonly rowWidth?: Written<'length'>;
  /**
   * Time limit. Longest time to search.
   * Takes a time such as "1 s", at least 0.05 s and at most 10 min.
   * @default 1 s
   * @example 500 ms
   */
  readonly timeLimit?: Written<'time'>;
  /**
   * Seed of the search.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link stripLayout} gives, beside workings, cautions, sources and chart. */
export interface StripLayoutOutput {
  /**
   * Rows. Each row with its pieces from left to right.
   */
  readonly rows: ShownOf<(typeof stripLayout)['outputs']['rows']>;
  /**
   * The rows in words.
   */
  readonly plan: ShownOf<(typeof stripLayout)['outputs']['plan']>;
  /**
   * Pieces to cut.
   */
  readonly cuts: ShownOf<(typeof stripLayout)['outputs']['cuts']>;
  /**
   * Saw cuts.
   */
  readonly cutCount: number;
  /**
   * Waste. Length lost to sawdust and to offcuts too short to keep.
   */
  readonly waste: Quantity<'length'>;
  /**
   * Least waste. No layout of these pieces can waste less.
   */
  readonly leastWaste: Quantity<'length'>;
  /**
   * Worst stagger. Least distance of joints in neighbouring rows; the length of the slab where there are none.
   */
  readonly worstStagger: Quantity<'length'>;
  /**
   * Like tones touching. Length over which like tones lie side by side.
   */
  readonly sameTone: Quantity<'length'>;
  /**
   * Left over. Pieces not used and offcuts kept.
   */
  readonly unused: Quantity<'length'>;
  /**
   * Proved. None wastes less, and no like tones touch.
   */
  readonly optimal: boolean;
}
/** An answer of {@link stripLayout}. */
export interface StripLayoutResult extends StripLayoutOutput, ResultMethods {}

/** What {@link angledRail} takes. Slope, end cuts, length from point to point and recess outlines of a rail that rises from one upright to another, butted or let in. */
export interface AngledRailInput {
  /**
   * Run. Level distance between the uprights.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1310 mm
   */
  readonly run: Written<'length'>;
  /**
   * Rise. How much the rail rises from face to face.
   * Takes a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example 620 mm
   */
  readonly rise: Written<'length'>;
  /**
   * Section. Thickness and depth of the rail, such as { width: "35 mm", depth: "60 mm" }.
   * Takes an object with width (thickness), depth (depth).
   * @example {"width":"35 mm","depth":"60 mm"}
   */
  readonly section: InputOf<(typeof angledRail)['inputs']['section']>;
  /**
   * Housing depth. How deep the rail is let into each upright.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 12 mm
   */
  readonly recessDepth?: Written<'length'>;
  /**
   * Face to face. Yes where run and rise go from face to face, no from middle to middle of the uprights.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly betweenFaces?: boolean | 'yes' | 'no';
  /**
   * Upright width. Width of an upright in the plane of the frame; needed from middle to middle, and for the drawing.
   * Takes a length such as "70 mm", more than 0 mm and at most 2000 mm.
   * @default 70 mm
   * @example 70 mm
   */
  readonly uprightWidth?: Written<'length'>;
  /**
   * Scale of drawing. Fitted to the page, or at full size as a template.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link angledRail} gives, beside workings, cautions, sources and chart. */
export interface AngledRailOutput {
  /**
   * Slope. Slope of the rail, and of its end cuts off square.
   */
  readonly angle: Quantity<'angle'>;
  /**
   * Length over points. From long point to long point, the least blank.
   */
  readonly longPoint: Quantity<'length'>;
  /**
   * Length inside points. From short point to short point, along the rail.
   */
  readonly shortPoint: Quantity<'length'>;
  /**
   * Edge length. Along each edge, from cut to cut.
   */
  readonly edgeLength: Quantity<'length'>;
  /**
   * End cuts.
   */
  readonly bevels: ShownOf<(typeof angledRail)['outputs']['bevels']>;
  /**
   * Plumb height. Height of the rail where it meets an upright.
   */
  readonly seat: Quantity<'length'>;
  /**
   * Outline of each recess. Seen from the side.
   */
  readonly recess?: ShownOf<(typeof angledRail)['outputs']['recess']> | undefined;
  /**
   * Recess width. Width of each recess, which is the thickness of the rail.
   */
  readonly recessWidth?: Quantity<'length'> | undefined;
}
/** An answer of {@link angledRail}. */
export interface AngledRailResult extends AngledRailOutput, ResultMethods {}

/** What {@link biscuitSpacing} takes. Where the biscuits of a joint go, evenly spaced, how many there are and the glued face they add. Biscuits line a joint up; in an edge joint long grain to long grain the glue holds without them. */
export interface BiscuitSpacingInput {
  /**
   * Length of the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * End distance. From each end to the middle of the first biscuit.
   * Takes a length such as "60 mm", more than 0 mm and at most 2000 mm.
   * @default 60 mm
   * @example 75 mm
   */
  readonly endDistance?: Written<'length'>;
  /**
   * Greatest spacing. From middle to middle.
   * Takes a length such as "200 mm", more than 0 mm and at most 2000 mm.
   * @default 200 mm
   * @example 225 mm
   */
  readonly spacing?: Written<'length'>;
  /**
   * Size of biscuit.
   * Takes one of "0", "10", "20".
   * @default 20
   * @example 20
   */
  readonly size?: '0' | '10' | '20';
}
/** What {@link biscuitSpacing} gives, beside workings, cautions, sources and chart. */
export interface BiscuitSpacingOutput {
  /**
   * Biscuits.
   */
  readonly count: number;
  /**
   * Positions. Middle of each biscuit from the left end.
   */
  readonly positions: ShownOf<(typeof biscuitSpacing)['outputs']['positions']>;
  /**
   * Spacing. From middle to middle.
   */
  readonly spacing?: Quantity<'length'> | undefined;
  /**
   * Glued area. Glued face of all the biscuits.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * Slot depth. Depth of the slot in each part, with 1 mm to spare.
   */
  readonly slotDepth: Quantity<'length'>;
  /**
   * Length of a biscuit.
   */
  readonly biscuitLength: Quantity<'length'>;
}
/** An answer of {@link biscuitSpacing}. */
export interface BiscuitSpacingResult extends BiscuitSpacingOutput, ResultMethods {}

/** What {@link halfLap} takes. How deep to cut a half lap, how far apart its shoulders are at which angle, and what the cut pieces and the glued face carry. Both pieces of one thickness, faces flush. */
export interface HalfLapInput {
  /**
   * Width of piece A.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 70 mm
   */
  readonly widthA: Written<'length'>;
  /**
   * Width of piece B.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 45 mm
   */
  readonly widthB: Written<'length'>;
  /**
   * Thickness of both.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 35 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Angle between the pieces.
   * Takes an angle such as "90 deg", at least 10° and at most 90°.
   * @default 90 deg
   * @example 60 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * Kind of halving. Whether they cross, one ends on the other, or both end.
   * Takes one of "crossing", "end", "corner".
   * @default crossing
   */
  readonly at?: 'crossing' | 'end' | 'corner';
  /**
   * Timber. Timber or structural grade of both pieces; salvaged timber that is not known is "unknown softwood".
   * Takes a grade such as "C24" or "MGP10", or a timber by name such as "Douglas-fir".
   * @default unknown softwood
   */
  readonly timber?: Exclude<InputOf<(typeof halfLap)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Category of use. How the piece is used; leave it out to take the load as permanent.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * Place. Where the piece stands.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * Moment in plane. Moment that turns one piece on the other, from a push along the frame.
   * Takes a moment such as "120 N m", at least 0 N·m and at most 100 kN·m.
   * @example 8 N m
   */
  readonly moment?: Written<'moment'>;
  /**
   * Force across. Force that shifts one piece on the other.
   * Takes a force such as "2 kN", at least 0 N and at most 1000 kN.
   */
  readonly force?: Written<'force'>;
  /**
   * Scale of drawing. Fitted to the page, or at full size as a template.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link halfLap} gives, beside workings, cautions, sources and chart. */
export interface HalfLapOutput {
  /**
   * Depth of each half.
   */
  readonly depth: Quantity<'length'>;
  /**
   * Shoulder lines to knife. What to knife across each piece.
   */
  readonly shoulders: ShownOf<(typeof halfLap)['outputs']['shoulders']>;
  /**
   * Glued face.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * Timber removed. Timber to be cut away from both pieces.
   * Shown in cm3.
   */
  readonly removed: Quantity<'volume'>;
  /**
   * Moments at the lap. Working moments, where the strength is known.
   */
  readonly strength?: ShownOf<(typeof halfLap)['outputs']['strength']> | undefined;
  /**
   * Force, glued face. Force across the glued face by rolling shear, glue sound.
   */
  readonly shearForce?: Quantity<'force'> | undefined;
  /**
   * Twist, glued face. Moment in the plane that the glued face carries.
   */
  readonly twist?: Quantity<'moment'> | undefined;
  /**
   * Share of strength. Largest share of strength that the moment and force given use.
   */
  readonly use?: Quantity<'share'> | undefined;
  /**
   * Strong enough.
   */
  readonly verdict: string;
}
/** An answer of {@link halfLap}. */
export interface HalfLapResult extends HalfLapOutput, ResultMethods {}

/** What {@link jointFit} takes. The chance that a spline, tenon or lap goes into its slot and is not loose, when both sizes vary a little; and the size to plane to. Sizes are taken to vary normally and apart from each other. */
export interface JointFitInput {
  /**
   * Slot.
   * Takes an object with size (its size), plusMinus (plus or minus).
   * @example {"size":"6.2 mm","plusMinus":"0.1 mm"}
   */
  readonly slot: InputOf<(typeof jointFit)['inputs']['slot']>;
  /**
   * Part.
   * Takes an object with size (its size), plusMinus (plus or minus).
   * @example {"size":"6.15 mm","plusMinus":"0.1 mm"}
   */
  readonly part: InputOf<(typeof jointFit)['inputs']['part']>;
  /**
   * Least clearance. Least clearance that still goes in; negative for a part that may be pressed.
   * Takes a length such as "0 mm", at least -5 mm and at most 50 mm.
   * @default 0 mm
   * @example 0 mm
   */
  readonly tightest?: Written<'length'>;
  /**
   * Greatest clearance. Greatest clearance that the glue still bridges.
   * Takes a length such as "0.15 mm", at least -5 mm and at most 50 mm.
   * @default 0.15 mm
   * @example 0.2 mm
   */
  readonly loosest?: Written<'length'>;
  /**
   * Shared setting. How far a setting that all the joints share, such as the fence, may be off, over or under.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly setting?: Written<'length'>;
  /**
   * Standard deviations. How many a plus-or-minus stands for: 2 where one piece in twenty lies outside it, 3 where one in 370 does.
   * Takes a number such as 2, at least 0.5 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * Joints. Joints that must all go together.
   * Takes a whole number such as 1, at least 1 and at most 10 000.
   * @default 1
   * @example 4
   */
  readonly joints?: Written<'count'>;
}
/** What {@link jointFit} gives, beside workings, cautions, sources and chart. */
export interface JointFitOutput {
  /**
   * Chance of a fit. Chance that it goes in and holds.
   */
  readonly chanceFits: Quantity<'share'>;
  /**
   * Chance too tight. Chance that it will not go in.
   */
  readonly chanceJams: Quantity<'share'>;
  /**
   * Chance too loose. Chance that it is loose.
   */
  readonly chanceLoose: Quantity<'share'>;
  /**
   * Chance all fit. Chance that all the joints fit.
   */
  readonly chanceAll: Quantity<'share'>;
  /**
   * Tightest clearance. Clearance of the worst pair, tight.
   */
  readonly worstTight: Quantity<'length'>;
  /**
   * Loosest clearance. Clearance of the worst pair, loose.
   */
  readonly worstLoose: Quantity<'length'>;
  /**
   * Worst pair. Whether even the worst pair fits.
   */
  readonly worstCase: string;
  /**
   * Clearance on average.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * Spread of clearance. Standard deviation of the clearance.
   */
  readonly spread: Quantity<'length'>;
  /**
   * Size to aim for. Size to plane the part to.
   */
  readonly aim: Quantity<'length'>;
  /**
   * Chance when aimed. Chance that it fits when planed to that size.
   */
  readonly chanceAtAim: Quantity<'share'>;
}
/** An answer of {@link jointFit}. */
export interface JointFitResult extends JointFitOutput, ResultMethods {}

/** What {@link mitreGap} takes. How far a mitre gapes, and on which side, from an error of the saw’s tilt, of the fence, or of a board that is not flat; how much a spline pulls in; and from a trial cut how to correct the tilt. */
export interface MitreGapInput {
  /**
   * Thickness. Thickness of the boards at the mitre.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Length of the joint.
   * Takes a length such as "640 mm", more than 0 mm and at most 5000 mm.
   * @default 640 mm
   * @example 640 mm
   */
  readonly length?: Written<'length'>;
  /**
   * Turn. Angle that the joint turns.
   * Takes an angle such as "90 deg", at least 10° and at most 170°.
   * @default 90 deg
   */
  readonly turn?: Written<'angle'>;
  /**
   * Bevel error. Error of the tilt at each cut; positive where it is too steep.
   * Takes an angle such as "0.2 deg", at least -10° and at most 10°.
   * @default 0.2 deg
   * @example 0.2 deg
   */
  readonly bevelError?: Written<'angle'>;
  /**
   * Error of the fence.
   * Takes an angle such as "0 deg", at least -10° and at most 10°.
   * @default 0 deg
   */
  readonly fenceError?: Written<'angle'>;
  /**
   * Out of flat. How far the boards are out of flat along the joint.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly outOfFlat?: Written<'length'>;
  /**
   * Slabs. Slabs mitred one by one and joined later.
   * Takes a whole number such as 1, at least 1 and at most 50.
   * @default 1
   * @example 2
   */
  readonly slabs?: Written<'count'>;
  /**
   * Cut variation. How far one cut may differ from the next, either way.
   * Takes an angle such as "0.05 deg", at least 0° and at most 5°.
   * @default 0.05 deg
   */
  readonly cutVariation?: Written<'angle'>;
  /**
   * Spline width. Width of the spline across the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth?: Written<'length'>;
  /**
   * Spline clearance. Clearance of the spline in its slots.
   * Takes a length such as "0.1 mm", at least 0 mm and at most 5 mm.
   * @default 0.1 mm
   */
  readonly splineClearance?: Written<'length'>;
  /**
   * Trial gap. Gap measured at a trial; positive where it is open at the outside.
   * Takes a length such as "900 mm", at least -100 mm and at most 100 mm.
   * @example 1.5 mm
   */
  readonly trialGap?: Written<'length'>;
  /**
   * Trial length. Length over which the gap was measured.
   * Takes a length such as "500 mm", more than 0 mm and at most 5000 mm.
   * @default 500 mm
   */
  readonly trialLength?: Written<'length'>;
  /**
   * Acceptable gap. Gap that glue still bridges.
   * Takes a length such as "0.15 mm", at least 0 mm and at most 5 mm.
   * @default 0.15 mm
   */
  readonly acceptable?: Written<'length'>;
}
/** What {@link mitreGap} gives, beside workings, cautions, sources and chart. */
export interface MitreGapOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Gap from the tilt.
   */
  readonly gap: Quantity<'length'>;
  /**
   * Where it opens.
   */
  readonly opensAt: string;
  /**
   * Fence gap. Gap at the far end from the error of the fence.
   */
  readonly fenceGap: Quantity<'length'>;
  /**
   * Worst gap. Gap with all errors together at their worst.
   */
  readonly worst: Quantity<'length'>;
  /**
   * Largest step. Largest difference of the gap from slab to slab.
   */
  readonly step?: Quantity<'length'> | undefined;
  /**
   * Spline allowance. Gap that the spline lets be pulled shut.
   */
  readonly splineTakes?: Quantity<'length'> | undefined;
  /**
   * Correction. Turn the tilt of each cut by this; positive is steeper.
   */
  readonly correction?: Quantity<'angle'> | undefined;
}
/** An answer of {@link mitreGap}. */
export interface MitreGapResult extends MitreGapOutput, ResultMethods {}

/** What {@link mitredEnd} takes. The length of strip to glue up for a top with mitred ends that carry its grain down, where to cut it, and how much grain the saw takes at each fold. */
export interface MitredEndInput {
  /**
   * Top length. Length of the finished top, outside to outside.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly topLength: Written<'length'>;
  /**
   * End height. Height of an end, outside.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 900 mm
   */
  readonly endHeight: Written<'length'>;
  /**
   * Thickness of the strip.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Kerf. Width of the saw cut.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * Inside angle. Angle between top and end, inside.
   * Takes an angle such as "90 deg", at least 60° and at most 170°.
   * @default 90 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * Ends that fold down.
   * Takes a whole number such as 2, at least 1 and at most 2.
   * @default 2
   */
  readonly ends?: Written<'count'>;
  /**
   * Squaring allowance. Kept at each end of the strip for squaring it.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   */
  readonly trim?: Written<'length'>;
  /**
   * Mitre allowance. Planed off the two mitres of a fold after the saw.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly shave?: Written<'length'>;
}
/** What {@link mitredEnd} gives, beside workings, cautions, sources and chart. */
export interface MitredEndOutput {
  /**
   * Length to glue up.
   */
  readonly stripLength: Quantity<'length'>;
  /**
   * Grain lost. Length lost on the show face at a fold.
   */
  readonly grainBreak: Quantity<'length'>;
  /**
   * Bevel of each cut.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * Waste wedge. Width of the waste wedge on the back of a fold.
   */
  readonly wedge: Quantity<'length'>;
  /**
   * Inside length. Length of the top inside, between the ends.
   */
  readonly insideLength: Quantity<'length'>;
  /**
   * Cuts. Measured on the show face from the left end of the strip.
   */
  readonly cutPositions: ShownOf<(typeof mitredEnd)['outputs']['cutPositions']>;
}
/** An answer of {@link mitredEnd}. */
export interface MitredEndResult extends MitredEndOutput, ResultMethods {}

/** What {@link postCasing} takes. Boxing in a post or a leg with boards: widths for butt, mitred and rebated corners, the face that chamfers leave, room for an uneven post and for movement, and the boards to cut. */
export interface PostCasingInput {
  /**
   * Width of the post. Measured at its widest place, across the front.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 95 mm
   */
  readonly width: Written<'length'>;
  /**
   * Depth of the post. Measured at its deepest place, from front to back.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 95 mm
   */
  readonly depth: Written<'length'>;
  /**
   * Height. Height of the post that is boxed in.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 840 mm
   */
  readonly height: Written<'length'>;
  /**
   * Board thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 mm.
   * @example 19 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Corner. How the boards meet: front over the sides, mitred, or the sides let into a rebate of the front.
   * Takes one of "butt", "mitred", "rebated".
   * @default butt
   * @example mitred
   */
  readonly corner?: 'butt' | 'mitred' | 'rebated';
  /**
   * Rebate depth. How far the sides go into the front; half of its thickness where none is given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 mm.
   */
  readonly rebate?: Written<'length'>;
  /**
   * Clearance. Room between post and boards on each side.
   * Takes a length such as "3 mm", at least 0 mm and at most 100 mm.
   * @default 3 mm
   */
  readonly clearance?: Written<'length'>;
  /**
   * Uneven post. How far the post leans, bows or twists over its height, in all.
   * Takes a length such as "0 mm", at least 0 mm and at most 200 mm.
   * @default 0 mm
   * @example 4 mm
   */
  readonly uneven?: Written<'length'>;
  /**
   * Chamfer. Taken off either face at every outside corner, at 45 degrees.
   * Takes a length such as "0 mm", at least 0 mm and at most 100 mm.
   * @default 0 mm
   * @example 5 mm
   */
  readonly chamfer?: Written<'length'>;
  /**
   * Floor gap. Room under the boards, so that they do not stand in wet.
   * Takes a length such as "3 mm", at least 0 mm and at most 200 mm.
   * @default 3 mm
   */
  readonly floorGap?: Written<'length'>;
  /**
   * Trim. Left longer on each board, to be cut to the post.
   * Takes a length such as "20 mm", at least 0 mm and at most 500 mm.
   * @default 20 mm
   */
  readonly trim?: Written<'length'>;
  /**
   * Posts.
   * Takes a whole number such as 1, at least 1 and at most 1000.
   * @default 1
   * @example 4
   */
  readonly posts?: Written<'count'>;
  /**
   * Timber. Species of the boards, for how much they move.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example Douglas-fir
   */
  readonly timber?: Exclude<InputOf<(typeof postCasing)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Moisture change. How far the moisture of the boards goes down or up over a year, in points of moisture.
   * Takes a share such as "4 %", at least 0 % and at most 20 %.
   * @default 4 %
   */
  readonly moistureChange?: Written<'share'>;
}
/** What {@link postCasing} gives, beside workings, cautions, sources and chart. */
export interface PostCasingOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Front board width. Width of the front and back boards.
   */
  readonly frontWidth: Quantity<'length'>;
  /**
   * Side board width.
   */
  readonly sideWidth: Quantity<'length'>;
  /**
   * Outside width. Width of the whole casing from the front.
   */
  readonly outsideWidth: Quantity<'length'>;
  /**
   * Outside depth. Depth of the whole casing from the side.
   */
  readonly outsideDepth: Quantity<'length'>;
  /**
   * Front face left. Flat face between the chamfers, from the front.
   */
  readonly frontFace: Quantity<'length'>;
  /**
   * Side face left. Flat face between the chamfers, from the side.
   */
  readonly sideFace: Quantity<'length'>;
  /**
   * Chamfer width.
   */
  readonly chamferFace?: Quantity<'length'> | undefined;
  /**
   * Mitre left. Length of mitre that a chamfer leaves for glue.
   */
  readonly mitreLeft?: Quantity<'length'> | undefined;
  /**
   * Movement. How far the widest board swells or shrinks across.
   */
  readonly movement?: Quantity<'length'> | undefined;
  /**
   * Clearance left. Room on each side once the boards have shrunk; below zero they press on the post.
   */
  readonly clearanceLeft?: Quantity<'length'> | undefined;
  /**
   * Boards to cut. For all posts, with the trim.
   */
  readonly boards: ShownOf<(typeof postCasing)['outputs']['boards']>;
  /**
   * Area of boards. Of all boards, without waste.
   */
  readonly area: Quantity<'area'>;
}
/** An answer of {@link postCasing}. */
export interface PostCasingResult extends PostCasingOutput, ResultMethods {}

/** What {@link screwHold} takes. The pull that one or more wood screws hold by thread, steel and head, what is allowed on them, what they hold sideways, and their pilot hole. For seasoned timber; not for structural screws with figures of their own. */
export interface ScrewHoldInput {
  /**
   * Timber. Species that holds the thread, or "unknown softwood"; or give the specific gravity.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example Douglas-fir
   */
  readonly timber?: Exclude<InputOf<(typeof screwHold)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Specific gravity. Oven-dry specific gravity of the piece that holds the thread.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * Size. Diameter of the shank, or gauge.
   * Takes a diameter of 1 to 25 mm such as "5 mm", or a gauge from #0 to #24 such as "#8".
   * @example #8
   */
  readonly diameter: InputOf<(typeof screwHold)['inputs']['diameter']>;
  /**
   * Thread length. Length of thread in the piece that holds.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 42 mm
   */
  readonly penetration: Written<'length'>;
  /**
   * Screws. Screws that share the load.
   * Takes a whole number such as 1, at least 1 and at most 500.
   * @default 1
   * @example 4
   */
  readonly count?: Written<'count'>;
  /**
   * Grain. Whether the thread is in side grain or end grain.
   * Takes one of "side", "end".
   * @default side
   */
  readonly grain?: 'side' | 'end';
  /**
   * Timber group. For the older rule sideways: II Douglas fir and southern pine, III hemlock and redwood, IV spruce.
   * Takes one of "I", "II", "III", "IV".
   * @example II
   */
  readonly group?: 'I' | 'II' | 'III' | 'IV';
  /**
   * Hardwood. For the pilot hole; read from the timber if one is given.
   * Takes yes or no (true or false).
   */
  readonly hardwood?: boolean | 'yes' | 'no';
  /**
   * Head-side thickness. Thickness of the piece under the head.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 19 mm
   */
  readonly boardThickness?: Written<'length'>;
  /**
   * Head-side gravity. Specific gravity of the piece under the head; leave it out where it is that of the other piece.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly boardGravity?: Written<'ratio'>;
  /**
   * Head diameter. Leave it out for twice the shank.
   * Takes a length such as "900 mm", more than 0 mm and at most 60 mm.
   */
  readonly headDiameter?: Written<'length'>;
  /**
   * Steel of the screw.
   * Takes one of "mild steel", "brass", "hardened".
   * @default mild steel
   */
  readonly steel?: 'mild steel' | 'brass' | 'hardened';
  /**
   * Steel strength. Tensile strength as declared; give it in place of that of the kind.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 2000 MPa.
   */
  readonly tensile?: Written<'stress'>;
  /**
   * Predrilled. Whether holes are drilled for the screws.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly drilled?: boolean | 'yes' | 'no';
  /**
   * Show breaking load. Whether the average load at which the screws come out is shown too; nothing is designed by it.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly breaking?: boolean | 'yes' | 'no';
}
/** What {@link screwHold} gives, beside workings, cautions, sources and chart. */
export interface ScrewHoldOutput {
  /**
   * Breaking load. Mean load that ends the hold.
   */
  readonly withdrawal?: Quantity<'force'> | undefined;
  /**
   * Allowed pull. Load allowed along all the screws.
   */
  readonly allowable: Quantity<'force'>;
  /**
   * Limited by. What decides the load allowed along the screws.
   */
  readonly governedBy: string;
  /**
   * Allowed sideways. Load allowed sideways on all screws.
   */
  readonly lateral?: Quantity<'force'> | undefined;
  /**
   * What decides sideways.
   */
  readonly sideways: string;
  /**
   * Thread, one screw. Load allowed on the thread of one screw.
   */
  readonly thread: Quantity<'force'>;
  /**
   * Steel, one screw. Load allowed on the steel of one screw.
   */
  readonly steel: Quantity<'force'>;
  /**
   * Head, one screw. Load allowed on the head of one screw.
   */
  readonly head?: Quantity<'force'> | undefined;
  /**
   * Root diameter. Diameter at the root of the thread.
   */
  readonly root: Quantity<'length'>;
  /**
   * Pilot hole. Drill size for the thread.
   */
  readonly pilot: Quantity<'length'>;
  /**
   * Pilot hole, printed. Pilot hole of the printed table.
   */
  readonly pilotAsPrinted?: string | undefined;
  /**
   * Clearance hole. Hole in the piece that is drawn up.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * Specific gravity taken.
   */
  readonly specificGravity: number;
  /**
   * Least screw distances. Between screws, to ends and to edges.
   */
  readonly distances: ShownOf<(typeof screwHold)['outputs']['distances']>;
}
/** An answer of {@link screwHold}. */
export interface ScrewHoldResult extends ScrewHoldOutput, ResultMethods {}

/** What {@link splayedCorner} takes. Mitre and bevel for the corners of a frame, hopper or box of equal sides that slope; slope 0° is flat on the bench, 90° upright. */
export interface SplayedCornerInput {
  /**
   * Number of sides.
   * Takes a whole number such as 4, at least 3 and at most 100.
   * @example 6
   */
  readonly sides: Written<'count'>;
  /**
   * Slope. Slope of a side from the flat.
   * Takes an angle such as "45 deg", at least 0° and at most 90°.
   * @example 60 deg
   */
  readonly slope: Written<'angle'>;
}
/** What {@link splayedCorner} gives, beside workings, cautions, sources and chart. */
export interface SplayedCornerOutput {
  /**
   * Mitre setting. Gauge or saw head off square.
   */
  readonly mitre: Quantity<'angle'>;
  /**
   * Bevel setting. Blade off square.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * Lean. Lean of a side from upright.
   */
  readonly lean: Quantity<'angle'>;
  /**
   * Dihedral angle. Angle between the faces of two sides.
   */
  readonly between: Quantity<'angle'>;
}
/** An answer of {@link splayedCorner}. */
export interface SplayedCornerResult extends SplayedCornerOutput, ResultMethods {}

/** What {@link splineSlot} takes. Depth of a spline’s slot cut square to a mitre face, the walls it leaves to the inside and the outside, and how deep it may be. */
export interface SplineSlotInput {
  /**
   * Thickness of the pieces.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Thickness of the spline.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 mm.
   * @example 6 mm
   */
  readonly splineThickness: Written<'length'>;
  /**
   * Spline width. Width of the spline across the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth: Written<'length'>;
  /**
   * Slot position. From the inside corner along the mitre face to the middle of the slot.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 16 mm
   */
  readonly fromInside: Written<'length'>;
  /**
   * Inside angle. Angle between the two pieces, inside.
   * Takes an angle such as "90 deg", at least 30° and at most 170°.
   * @default 90 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * Glue space. Space for glue at the bottom of each slot.
   * Takes a length such as "0.5 mm", at least 0 mm and at most 10 mm.
   * @default 0.5 mm
   */
  readonly glueRoom?: Written<'length'>;
  /**
   * Least wall. Least wood to leave on either side.
   * Takes a length such as "5 mm", at least 0 mm and at most 100 mm.
   * @default 5 mm
   */
  readonly leastWall?: Written<'length'>;
  /**
   * Scale of drawing. Fitted to the page, or at full size as a template.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link splineSlot} gives, beside workings, cautions, sources and chart. */
export interface SplineSlotOutput {
  /**
   * Slot depth. Depth of the slot in each piece.
   */
  readonly depth: Quantity<'length'>;
  /**
   * Inside wall. Wood left between the slot and the inside face.
   */
  readonly wallInside: Quantity<'length'>;
  /**
   * Outside wall. Wood left between the slot and the outside face.
   */
  readonly wallOutside: Quantity<'length'>;
  /**
   * Walls thick enough. Whether both walls are as thick as wanted.
   */
  readonly ok: boolean;
  /**
   * Deepest slot. Deepest slot that leaves the least wall outside.
   */
  readonly deepest: Quantity<'length'>;
  /**
   * Mitre face. Length of the mitre face.
   */
  readonly faceLength: Quantity<'length'>;
  /**
   * Bevel of the mitre.
   */
  readonly bevel: Quantity<'angle'>;
}
/** An answer of {@link splineSlot}. */
export interface SplineSlotResult extends SplineSlotOutput, ResultMethods {}

/** What {@link squareness} takes. How far a frame or carcase is out of square from its diagonals or from one corner, which way to pull it and how far, and whether the tape’s own error hides it. Opposite sides must be equal. */
export interface SquarenessInput {
  /**
   * Width. Corner to corner, as the diagonals are measured.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 1200 mm
   */
  readonly width: Written<'length'>;
  /**
   * Height. Corner to corner, as the diagonals are measured.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 800 mm
   */
  readonly height: Written<'length'>;
  /**
   * Diagonal A. From bottom left to top right.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1444 mm
   */
  readonly diagonalA?: Written<'length'>;
  /**
   * Diagonal B. From bottom right to top left.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1440.4 mm
   */
  readonly diagonalB?: Written<'length'>;
  /**
   * Lean. In place of diagonals: how far the top right corner stands to the right of a true upright.
   * Takes a length such as "900 mm", at least -50 m and at most 50 m.
   */
  readonly cornerOffset?: Written<'length'>;
  /**
   * Tape error. How far one reading of the tape may be out.
   * Takes a length such as "0.5 mm", at least 0 mm and at most 20 mm.
   * @default 0.5 mm
   */
  readonly readingError?: Written<'length'>;
}
/** What {@link squareness} gives, beside workings, cautions, sources and chart. */
export interface SquarenessOutput {
  /**
   * Out of square.
   */
  readonly outOfSquare: Quantity<'angle'>;
  /**
   * Out of square. Out of square, as a length.
   */
  readonly outPerMetre: Quantity<'slope'>;
  /**
   * Push along. How far the top must go along the bottom.
   */
  readonly move: Quantity<'length'>;
  /**
   * What to pull.
   */
  readonly pull: string;
  /**
   * Pull across. By how much the longer diagonal must get shorter.
   */
  readonly shorten: Quantity<'length'>;
  /**
   * True diagonal. Both diagonals when it is square.
   */
  readonly trueDiagonal: Quantity<'length'>;
  /**
   * Diagonal A. From bottom left to top right, as it is.
   */
  readonly diagonalA: Quantity<'length'>;
  /**
   * Diagonal B. From bottom right to top left, as it is.
   */
  readonly diagonalB: Quantity<'length'>;
  /**
   * Error of measuring. What the tape’s own error could be mistaken for, as a length.
   */
  readonly readingAngle: Quantity<'slope'>;
  /**
   * Measurable. Whether it is out of square by more than the tape’s own error.
   */
  readonly sure: boolean;
  /**
   * Misfit of readings. How badly sides and diagonals agree, as a length of diagonal.
   */
  readonly sidesDiffer?: Quantity<'length'> | undefined;
}
/** An answer of {@link squareness}. */
export interface SquarenessResult extends SquarenessOutput, ResultMethods {}

/** What {@link beam} takes. Reactions, shear, moment, sag and stresses of a straight beam with any supports and loads: rails, tops, shelves, brackets. A notch is checked where it is cut. Not for frames or tapered beams. */
export interface BeamInput {
  /**
   * Length. Length of the beam from end to end.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * Supports. Where and how it is held.
   * Takes a list of supports such as { position: "0 mm", kind: "pinned" }; kinds are pinned, fixed and spring (with stiffness), and turning is a spring against turning.
   * @example [{"position":"150 mm"},{"position":"1600 mm"}]
   */
  readonly supports: InputOf<(typeof beam)['inputs']['supports']>;
  /**
   * What stands on it.
   * Takes a list of loads, as text ("10 kN at 500 mm", "2 kN/m from 0 mm to 600 mm", "450 N/m") or as parts: { position, force }, { load } from end to end, { from, to, load, loadTo? }, or { position, moment }.
   * @example [{"load":"450 N/m"},{"position":"1950 mm","force":"400 N"}]
   */
  readonly loads: InputOf<(typeof beam)['inputs']['loads']>;
  /**
   * Its cross-section.
   * Takes width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }.
   * @example 45 x 95 mm
   */
  readonly section: InputOf<(typeof beam)['inputs']['section']>;
  /**
   * Notch. Notch or lap cut into the rail, where there is one.
   * Takes an object with at? (position), depth (depth), side? (side), length? (length), taper? (shoulder slope).
   */
  readonly notch?: InputOf<(typeof beam)['inputs']['notch']>;
  /**
   * Own weight. Whether its own weight counts beside the loads.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * Category of use. Home or office, hall or shop, workshop, shelf or store, permanent, or short; leave it out to take the whole load as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * Place. Service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * Creep factor. For a load that stays; give it in place of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof beam)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * Share that stays. Share of the imposed load that stays on for months; give it in place of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * Timber. Species or grade; for salvaged timber that is not known "unknown softwood".
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof beam)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Grade. Structural grade, if there is one; it goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof beam)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * Modulus of elasticity. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * Shear modulus. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * Allowed bending stress. Bending stress to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * Allowed shear stress. Shear stress along the grain to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * Density. For the own weight; give it in place of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Graded by. Who graded the piece and how; needed for a strength ratio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * Strength ratio. Strength that knots, nail holes and sloping grain leave, as a share of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link beam} gives, beside workings, cautions, sources and chart. */
export interface BeamOutput {
  /**
   * First sag. Greatest sag when the load comes on.
   */
  readonly maxDeflection: Quantity<'length'>;
  /**
   * Long-term sag. Greatest sag in the long run.
   */
  readonly longDeflection: Quantity<'length'>;
  /**
   * Place of greatest sag. From the left end.
   */
  readonly deflectionAt: Quantity<'length'>;
  /**
   * Greatest bending moment.
   */
  readonly maxMoment: Quantity<'moment'>;
  /**
   * Where that is.
   */
  readonly momentAt: Quantity<'length'>;
  /**
   * Greatest shear force.
   */
  readonly maxShear: Quantity<'force'>;
  /**
   * Where that is.
   */
  readonly shearAt: Quantity<'length'>;
  /**
   * Steepest slope.
   */
  readonly maxSlope: Quantity<'angle'>;
  /**
   * Greatest bending stress.
   */
  readonly bendingStress: Quantity<'stress'>;
  /**
   * Greatest shear stress.
   */
  readonly shearStress: Quantity<'stress'>;
  /**
   * Share of bending. Bending stress as a share of the stress to stay under.
   */
  readonly bendingUse?: Quantity<'share'> | undefined;
  /**
   * Share of shear. Shear stress as a share of the stress to stay under.
   */
  readonly shearUse?: Quantity<'share'> | undefined;
  /**
   * Share at the notch. Force or moment at the notch as a share of what it carries.
   */
  readonly notchUse?: Quantity<'share'> | undefined;
  /**
   * Glue-line stress. Greatest shear stress at a glue line of glued layers or a box.
   */
  readonly glueStress?: Quantity<'stress'> | undefined;
  /**
   * Share of glue line. Glue-line stress as a share of half of the wood’s shear stress to stay under.
   */
  readonly glueUse?: Quantity<'share'> | undefined;
  /**
   * Strong enough. Whether the stresses stay under their limits.
   */
  readonly verdict: string;
  /**
   * Second moment. Second moment of area; where moduli differ, as if all had that of the timber.
   */
  readonly secondMoment: Quantity<'secondMoment'>;
  /**
   * Section modulus. Moment over greatest bending stress.
   */
  readonly sectionModulus: Quantity<'sectionModulus'>;
  /**
   * The timber’s figures.
   */
  readonly basis: string;
  /**
   * What the supports carry.
   */
  readonly reactions: ShownOf<(typeof beam)['outputs']['reactions']>;
  /**
   * Along the beam. Shear, moment and first sag at the ends, supports, loads and worst places, just right of each.
   */
  readonly diagrams: ShownOf<(typeof beam)['outputs']['diagrams']>;
}
/** An answer of {@link beam}. */
export interface BeamResult extends BeamOutput, ResultMethods {}

/** What {@link rackingFrame} takes. How far a frame of two legs and a rail sways when pushed along its top, what push it holds and what gives first: members, glued laps, screws or brace. An estimate to compare joints by. */
export interface RackingFrameInput {
  /**
   * Rail height. From the floor to the middle of the rail.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 850 mm
   */
  readonly height: Written<'length'>;
  /**
   * Leg distance. Between the legs, middle to middle.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 560 mm
   */
  readonly width: Written<'length'>;
  /**
   * Section. Thickness of the frame by depth of its legs in the plane of the frame.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @example 35 x 70 mm
   */
  readonly section: InputOf<(typeof rackingFrame)['inputs']['section']>;
  /**
   * Rail section. Thickness by depth of the rail, where it differs from the legs.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   */
  readonly rail?: InputOf<(typeof rackingFrame)['inputs']['rail']>;
  /**
   * Corners. How the corners are made.
   * Takes one of "glued half lap", "screwed half lap", "stiff", "braced".
   * @default glued half lap
   * @example glued half lap
   */
  readonly joint?: 'glued half lap' | 'screwed half lap' | 'stiff' | 'braced';
  /**
   * Corner stiffness. Stiffness of one corner against turning; give it in place of the estimate.
   * Takes a rotational stiffness such as "8 kN m/rad", more than 0 N·m/rad and at most 1 000 000 kN·m/rad.
   */
  readonly jointStiffness?: Written<'rotationalStiffness'>;
  /**
   * Screws. In each corner, or at each end of the brace.
   * Takes a whole number such as 2, at least 1 and at most 20.
   * @default 2
   */
  readonly screws?: Written<'count'>;
  /**
   * Diameter of those screws.
   * Takes a length such as "5 mm", at least 2 mm and at most 16 mm.
   * @default 5 mm
   */
  readonly screwDiameter?: Written<'length'>;
  /**
   * Brace section. Section of the brace from a foot to the far corner.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @default 20 x 45 mm
   */
  readonly brace?: InputOf<(typeof rackingFrame)['inputs']['brace']>;
  /**
   * Frames. Frames that share the push.
   * Takes a whole number such as 1, at least 1 and at most 20.
   * @default 1
   * @example 2
   */
  readonly frames?: Written<'count'>;
  /**
   * Push along the top.
   * Takes a force such as "100 N", more than 0 N and at most 100 kN.
   * @default 100 N
   * @example 100 N
   */
  readonly push?: Written<'force'>;
  /**
   * Mass. For the push of the furniture test.
   * Takes a mass such as "12 kg", more than 0 g and at most 5000 kg.
   * @example 44 kg
   */
  readonly mass?: Written<'mass'>;
  /**
   * Large and high. Whether the top is over 0.46 m² and over 610 mm high.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly largeTop?: boolean | 'yes' | 'no';
  /**
   * Timber. Species or grade; for salvaged timber that is not known "unknown softwood".
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof rackingFrame)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Grade. Structural grade, if there is one; it goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof rackingFrame)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * Modulus of elasticity. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * Shear modulus. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * Allowed bending stress. Bending stress to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * Allowed shear stress. Shear stress along the grain to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * Density. For the own weight; give it in place of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Graded by. Who graded the piece and how; needed for a strength ratio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * Strength ratio. Strength that knots, nail holes and sloping grain leave, as a share of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link rackingFrame} gives, beside workings, cautions, sources and chart. */
export interface RackingFrameOutput {
  /**
   * Verdict. What the frame holds, and what gives first.
   */
  readonly verdict: string;
  /**
   * Sway. Sway at the top for the push.
   */
  readonly sway: Quantity<'length'>;
  /**
   * Push allowed. Push that the weakest part holds.
   */
  readonly pushAllowed?: Quantity<'force'> | undefined;
  /**
   * Share of strength. Share of the strength that the push uses.
   */
  readonly use?: Quantity<'share'> | undefined;
  /**
   * Sway per 100 N. Sway at the top for each 100 N.
   */
  readonly swayPerForce: Quantity<'length'>;
  /**
   * Stiffness. Push for each millimetre of sway.
   */
  readonly stiffness: Quantity<'springRate'>;
  /**
   * Stiffness of one corner.
   */
  readonly jointStiffness?: Quantity<'rotationalStiffness'> | undefined;
  /**
   * Share from corners. Share of the sway that the corners give.
   */
  readonly shareOfJoints?: Quantity<'share'> | undefined;
  /**
   * Test push. Push on a leg in the furniture test.
   */
  readonly testForce?: Quantity<'force'> | undefined;
  /**
   * Sway under that push.
   */
  readonly testSway?: Quantity<'length'> | undefined;
  /**
   * Parts. What the push uses of the strength of each part.
   */
  readonly parts: ShownOf<(typeof rackingFrame)['outputs']['parts']>;
  /**
   * The timber’s figures.
   */
  readonly basis: string;
}
/** An answer of {@link rackingFrame}. */
export interface RackingFrameResult extends RackingFrameOutput, ResultMethods {}

/** What {@link railSpan} takes. The longest span of a rail between two supports for a load spread evenly: by sag, by bending and by shear, and which of them decides. For other loads and supports use beam. */
export interface RailSpanInput {
  /**
   * Section. Width by depth of the rail, depth in the direction of the load.
   * Takes width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }.
   * @example 45 x 95 mm
   */
  readonly section: InputOf<(typeof railSpan)['inputs']['section']>;
  /**
   * Load. Load on the rail by length.
   * Takes a load by length such as "450 N/m", more than 0 N/m and at most 1000 kN/m.
   * @example 450 N/m
   */
  readonly load: Written<'lineLoad'>;
  /**
   * Sag limit. A share of the span or a length.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   * @example L/300
   */
  readonly limit?: InputOf<(typeof railSpan)['inputs']['limit']>;
  /**
   * Permanent load. By length beside the load, such as the top itself.
   * Takes a load by length such as "0 N/m", at least 0 N/m and at most 1000 kN/m.
   * @default 0 N/m
   */
  readonly permanent?: Written<'lineLoad'>;
  /**
   * Own weight. Whether the rail carries its own weight beside the load.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * Notch. Notch or lap cut into the rail, where there is one.
   * Takes an object with at? (position), depth (depth), side? (side), length? (length), taper? (shoulder slope).
   */
  readonly notch?: InputOf<(typeof railSpan)['inputs']['notch']>;
  /**
   * Category of use. Home or office, hall or shop, workshop, shelf or store, permanent, or short; leave it out to take the whole load as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * Place. Service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * Creep factor. For a load that stays; give it in place of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof railSpan)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * Share that stays. Share of the imposed load that stays on for months; give it in place of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * Timber. Species or grade; for salvaged timber that is not known "unknown softwood".
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof railSpan)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Grade. Structural grade, if there is one; it goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C24
   */
  readonly grade?: Exclude<InputOf<(typeof railSpan)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * Modulus of elasticity. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * Shear modulus. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * Allowed bending stress. Bending stress to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * Allowed shear stress. Shear stress along the grain to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * Density. For the own weight; give it in place of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Graded by. Who graded the piece and how; needed for a strength ratio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * Strength ratio. Strength that knots, nail holes and sloping grain leave, as a share of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link railSpan} gives, beside workings, cautions, sources and chart. */
export interface RailSpanOutput {
  /**
   * Longest span.
   */
  readonly span: Quantity<'length'>;
  /**
   * What decides.
   */
  readonly governedBy: string;
  /**
   * Span by sag. Longest span for the sag.
   */
  readonly spanByDeflection: Quantity<'length'>;
  /**
   * Span by bending. Longest span for the bending stress.
   */
  readonly spanByBending?: Quantity<'length'> | undefined;
  /**
   * Span by shear. Longest span for the shear stress.
   */
  readonly spanByShear?: Quantity<'length'> | undefined;
  /**
   * Span by glue line. Longest span for the shear at a glue line of glued layers or a box.
   */
  readonly spanByGlue?: Quantity<'length'> | undefined;
  /**
   * Span by notch. Longest span for what the notch leaves.
   */
  readonly spanByNotch?: Quantity<'length'> | undefined;
  /**
   * First sag. Sag at that span when the load comes on.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * Long-term sag. Sag at that span in the long run.
   */
  readonly sag: Quantity<'length'>;
  /**
   * Bending stress. Bending stress at that span.
   */
  readonly bendingStress: Quantity<'stress'>;
  /**
   * Shear stress. Shear stress at that span.
   */
  readonly shearStress: Quantity<'stress'>;
  /**
   * The timber’s figures.
   */
  readonly basis: string;
  /**
   * Species of the group. Over the species of the group.
   */
  readonly range?: ShownOf<(typeof railSpan)['outputs']['range']> | undefined;
}
/** An answer of {@link railSpan}. */
export interface RailSpanResult extends RailSpanOutput, ResultMethods {}

/** What {@link tipping} takes. Whether a piece of furniture stands when somebody leans on its edge or pushes it, from the masses of its parts and where its feet are. For a level floor and nothing fixed to a wall. */
export interface TippingInput {
  /**
   * Parts. Parts of the piece and what stands on them.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, mass, position, height?.
   * @example [{"name":"top","mass":"26 kg","position":"200 mm","height":"890 mm"},{"name":"frame","mass":"18 kg","position":"240 mm","height":"450 mm"}]
   */
  readonly parts: InputOf<(typeof tipping)['inputs']['parts']>;
  /**
   * Base. From the front feet to the back feet.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 480 mm
   */
  readonly base: Written<'length'>;
  /**
   * Front overhang. How far the front edge stands out before the front feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 120 mm
   */
  readonly overhang?: Written<'length'>;
  /**
   * Back overhang. How far the back edge stands out behind the back feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 40 mm
   */
  readonly backOverhang?: Written<'length'>;
  /**
   * Edge load. Load down on the edge, front or back.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 400 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * Push. Level push, forward or back.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 60 N
   */
  readonly push?: Written<'force'>;
  /**
   * Push height. Height of the push over the floor.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @default 900 mm
   * @example 900 mm
   */
  readonly pushHeight?: Written<'length'>;
  /**
   * Safety factor. How many times the restoring moment should be the overturning moment, for the forces given.
   * Takes a number such as 1.5, at least 1 and at most 10.
   * @default 1.5
   */
  readonly factor?: Written<'ratio'>;
  /**
   * Kind of furniture. For the situations after furniture tests.
   * Takes one of "table", "bench", "low cabinet", "tall cabinet", "drawers".
   * @example table
   */
  readonly piece?: 'table' | 'bench' | 'low cabinet' | 'tall cabinet' | 'drawers';
  /**
   * Top height. Height of the top over the floor; leave it out where it is the height of the push.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly topHeight?: Written<'length'>;
  /**
   * Base length. From the feet at one end to those at the other, lengthwise.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly endBase?: Written<'length'>;
  /**
   * End overhang. How far each end stands out past those feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   */
  readonly endOverhang?: Written<'length'>;
  /**
   * Open drawers. How far the fronts of open drawers stand out before the front feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   */
  readonly openReach?: Written<'length'>;
  /**
   * Floor slope. How far the floor is out of level, for those situations.
   * Takes an angle such as "1 deg", at least 0° and at most 10°.
   * @default 1 deg
   */
  readonly floorTilt?: Written<'angle'>;
}
/** What {@link tipping} gives, beside workings, cautions, sources and chart. */
export interface TippingOutput {
  /**
   * Verdict. Stands, tips, or not checked.
   */
  readonly verdict: string;
  /**
   * What pushes it over.
   */
  readonly answer: string;
  /**
   * What was checked.
   */
  readonly checks?: ShownOf<(typeof tipping)['outputs']['checks']> | undefined;
  /**
   * Stability margin. How far inside the nearer feet the line of weight and loads falls; negative means that it tips.
   */
  readonly margin: Quantity<'length'>;
  /**
   * Safety. Restoring over overturning moment on the worse side; none where nothing tips it.
   */
  readonly factor?: number | undefined;
  /**
   * Weaker side. The side it tips to first.
   */
  readonly worseSide: string;
  /**
   * Mass of the whole.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * Centre of gravity. Behind the front feet.
   */
  readonly centre: Quantity<'length'>;
  /**
   * Tipping push. Push at that height that tips it with the edge load on.
   */
  readonly forceToTip: Quantity<'force'>;
  /**
   * Tipping edge load. Load on the edge alone that tips it.
   */
  readonly edgeLoadToTip?: Quantity<'force'> | undefined;
  /**
   * Tilt angle. How far it may be tilted before it falls, where heights are given.
   */
  readonly tilt?: Quantity<'angle'> | undefined;
}
/** An answer of {@link tipping}. */
export interface TippingResult extends TippingOutput, ResultMethods {}

/** What {@link topSag} takes. How far a top or shelf sags between its rails and past the last of them, and the stress in it. The load stands where it does most harm. For other supports use beam. */
export interface TopSagInput {
  /**
   * Span length. Length of the top in the direction it spans.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * Width. Width of the top across the span.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Thickness of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Supports. Where rails carry it, from the left end.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example ["200 mm","1600 mm"]
   */
  readonly supports: InputOf<(typeof topSag)['inputs']['supports']>;
  /**
   * Load. By area, where it does most harm.
   * Takes a load by area such as "1.5 kPa", at least 0 kPa and at most 1000 kPa.
   * @example 1.5 kPa
   */
  readonly load?: Written<'areaLoad'>;
  /**
   * A published load instead.
   * Takes one of "books", "general shelf", "cabinet shelf", "dwelling floor".
   */
  readonly use?: 'books' | 'general shelf' | 'cabinet shelf' | 'dwelling floor';
  /**
   * Point load. One load beside, put where it does most harm: an overhanging end, or the middle of a bay.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 800 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * Grain. Whether the grain runs along the span or across it.
   * Takes one of "along", "across".
   * @default along
   */
  readonly grain?: 'along' | 'across';
  /**
   * Sag limit. How far it may sag between supports; an overhanging end counts double its length.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   */
  readonly limit?: InputOf<(typeof topSag)['inputs']['limit']>;
  /**
   * Own weight. Whether the top carries its own weight beside the load.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * Category of use. Home or office, hall or shop, workshop, shelf or store, permanent, or short; leave it out to take the whole load as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * Place. Service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * Creep factor. For a load that stays; give it in place of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof topSag)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * Share that stays. Share of the imposed load that stays on for months; give it in place of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * Timber. Species or grade; for salvaged timber that is not known "unknown softwood".
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof topSag)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * Grade. Structural grade, if there is one; it goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof topSag)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * Modulus of elasticity. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * Shear modulus. Give it in place of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * Allowed bending stress. Bending stress to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * Allowed shear stress. Shear stress along the grain to stay under at the loads given; give it in place of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * Density. For the own weight; give it in place of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * Examined. Examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * Graded by. Who graded the piece and how; needed for a strength ratio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * Strength ratio. Strength that knots, nail holes and sloping grain leave, as a share of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link topSag} gives, beside workings, cautions, sources and chart. */
export interface TopSagOutput {
  /**
   * Long-term sag. Greatest sag in the long run.
   */
  readonly sag: Quantity<'length'>;
  /**
   * First sag. Greatest sag when the load comes on.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * Sag between supports. Greatest sag between supports in the long run.
   */
  readonly sagBetween: Quantity<'length'>;
  /**
   * Sag of overhang. Greatest sag of an overhanging end in the long run.
   */
  readonly sagAtEnd?: Quantity<'length'> | undefined;
  /**
   * Sag allowed. Sag allowed where it comes nearest to its limit.
   */
  readonly allowed: Quantity<'length'>;
  /**
   * Greatest bending stress.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * Verdict. Whether sag and stress stay under their limits.
   */
  readonly ok: boolean;
  /**
   * Why.
   */
  readonly verdict: string;
  /**
   * The timber’s figures.
   */
  readonly basis: string;
}
/** An answer of {@link topSag}. */
export interface TopSagResult extends TopSagOutput, ResultMethods {}

/** What {@link filmBuild} takes. How thick a film a finish leaves, wet and dry, and how far a litre goes, from its solids. For film finishes; not for oils that soak in. */
export interface FilmBuildInput {
  /**
   * Solids by volume. From the data sheet; for a thinned finish use thinToSolids first.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 42 %
   */
  readonly volumeSolids: Written<'share'>;
  /**
   * Coverage. Area that one litre covers in one coat, also called spreading rate.
   * Takes a coverage such as "12 m2/L", at least 0.1 m²/L and at most 200 m²/L.
   * @example 12 m2/L
   */
  readonly spreadingRate?: Written<'coverage'>;
  /**
   * Wet film. Thickness of one coat as a wet film comb shows it.
   * Takes a film thickness such as "50 um", at least 1 µm and at most 10 000 µm.
   */
  readonly wetFilm?: Written<'thickness'>;
  /**
   * Dry film wanted. Thickness of all coats together once dry.
   * Takes a film thickness such as "50 um", at least 0.1 µm and at most 50 000 µm.
   */
  readonly targetFilm?: Written<'thickness'>;
  /**
   * Number of like coats.
   * Takes a whole number such as 1, at least 1 and at most 100.
   * @default 1
   * @example 3
   */
  readonly coats?: Written<'count'>;
}
/** What {@link filmBuild} gives, beside workings, cautions, sources and chart. */
export interface FilmBuildOutput {
  /**
   * Wet film. Thickness of one coat before it dries.
   */
  readonly wetFilm: Quantity<'thickness'>;
  /**
   * Dry film. Thickness of all coats together once dry.
   */
  readonly dryFilm: Quantity<'thickness'>;
  /**
   * Coverage. Area that one litre covers in one coat, also called spreading rate.
   */
  readonly coverage: Quantity<'coverage'>;
  /**
   * Dry film per coat. Thickness of one coat once dry.
   */
  readonly dryPerCoat: Quantity<'thickness'>;
  /**
   * Finish per square metre. Finish for one square metre with all its coats.
   */
  readonly perArea: Quantity<'liquid'>;
}
/** An answer of {@link filmBuild}. */
export interface FilmBuildResult extends FilmBuildOutput, ResultMethods {}

/** What {@link finishQuantity} takes. How much finish a job takes, coat by coat, and how many tins to buy: from areas or from the dimensions of the pieces. Not for filling grain or for poured coats. */
export interface FinishQuantityInput {
  /**
   * Surfaces. A list of areas, or the dimensions of a piece or of several.
   * Takes an object with length (length of the piece), width (width of the piece), thickness (thickness of the piece), faces? (which faces are coated), count? (how many such pieces), or a list, each an area such as "1.2 m2", more than 0 mm² and at most 100 000 m², or an object with length (length of the piece), width (width of the piece), thickness (thickness of the piece), faces? (which faces are coated), count? (how many such pieces).
   * @example {"length":"1.95 m","width":"640 mm","thickness":"42 mm"}
   */
  readonly surfaces: InputOf<(typeof finishQuantity)['inputs']['surfaces']>;
  /**
   * Number of coats.
   * Takes a whole number such as 4, at least 1 and at most 50.
   * @example 3
   */
  readonly coats: Written<'count'>;
  /**
   * Coverage. Area that one litre covers in one coat, as printed on the tin; also called spreading rate.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 12 m2/L
   */
  readonly coverage: Written<'coverage'>;
  /**
   * Coverage, first coat. Coverage on bare wood; leave it out where it is that of the other coats.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 8 m2/L
   */
  readonly firstCoverage?: Written<'coverage'>;
  /**
   * Loss in application. Share of what leaves the tin that never reaches the piece; leave it out to take that of the method.
   * Takes a share such as "15 %", at least 0 % and at most 95 %.
   */
  readonly loss?: Written<'share'>;
  /**
   * Method. How the finish is put on, which sets the usual loss.
   * Takes one of "brush or roller", "HVLP spray", "airless spray", "air-assisted airless spray", "cup gun spray".
   * @example brush or roller
   */
  readonly method?: 'brush or roller' | 'HVLP spray' | 'airless spray' | 'air-assisted airless spray' | 'cup gun spray';
  /**
   * Parts of thinner. Parts of thinner to one part of finish.
   * Takes a number such as 0, at least 0 and at most 20.
   * @default 0
   */
  readonly thinnerParts?: Written<'ratio'>;
  /**
   * Thinner, first coat. Parts of thinner in the first coat; leave it out where it is that of the other coats.
   * Takes a number such as 1.5, at least 0 and at most 20.
   * @example 0.5
   */
  readonly firstThinnerParts?: Written<'ratio'>;
  /**
   * What a tin holds.
   * Takes an amount of liquid such as "1 L", at least 10 mL and at most 1000 L.
   * @default 1 L
   * @example 500 mL
   */
  readonly tinSize?: Written<'liquid'>;
  /**
   * Time per coat. Time to put on one coat.
   * Takes a time such as "30 min", at least 0 s and at most 7 day.
   * @default 30 min
   * @example 30 min
   */
  readonly coatTime?: Written<'time'>;
  /**
   * Drying time. Time to wait between coats as the tin says; with it a time line is drawn.
   * Takes a time such as "15 min", more than 0 s and at most 60 day.
   * @example 12 h
   */
  readonly dryTime?: Written<'time'>;
  /**
   * Kind of finish. Such as "oil varnish"; it chooses the cautions.
   * Takes a text of 1 to 200 characters.
   * @example oil varnish
   */
  readonly finish?: string;
}
/** What {@link finishQuantity} gives, beside workings, cautions, sources and chart. */
export interface FinishQuantityOutput {
  /**
   * Finish to mix. Finish with its thinner for all coats.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * Mix for each coat.
   */
  readonly perCoat: ShownOf<(typeof finishQuantity)['outputs']['perCoat']>;
  /**
   * Tins to buy.
   */
  readonly tins: number;
  /**
   * Finish from the tins.
   */
  readonly finish: Quantity<'liquid'>;
  /**
   * Thinner.
   */
  readonly thinner: Quantity<'liquid'>;
  /**
   * Area of one coat.
   */
  readonly area: Quantity<'area'>;
  /**
   * In the tins bought.
   */
  readonly bought: Quantity<'liquid'>;
  /**
   * Left in the tins. What remains in the tins bought.
   */
  readonly spare: Quantity<'liquid'>;
  /**
   * Time in all. From the first stroke until the last coat is dry.
   */
  readonly elapsed?: Quantity<'time'> | undefined;
}
/** An answer of {@link finishQuantity}. */
export interface FinishQuantityResult extends FinishQuantityOutput, ResultMethods {}

/** What {@link gritSequence} takes. Which grits to sand with, the fewest whose steps are small enough to take the last scratches out. For papers of the FEPA (P) series. */
export interface GritSequenceInput {
  /**
   * First grit.
   * Takes a FEPA grit such as "P80", from P12 to P2500.
   * @example P80
   */
  readonly from: InputOf<(typeof gritSequence)['inputs']['from']>;
  /**
   * The last grit.
   * Takes a FEPA grit such as "P80", from P12 to P2500.
   * @example P220
   */
  readonly to: InputOf<(typeof gritSequence)['inputs']['to']>;
  /**
   * Greatest step. How many times finer the next grit may be.
   * Takes a number such as 1.8, at least 1.1 and at most 4.
   * @default 1.8
   */
  readonly stepRatio?: Written<'ratio'>;
  /**
   * Grits in stock. Leave it out to choose from all grits of the series.
   * Takes a list, each a FEPA grit such as "P80", from P12 to P2500.
   */
  readonly grits?: InputOf<(typeof gritSequence)['inputs']['grits']>;
}
/** What {@link gritSequence} gives, beside workings, cautions, sources and chart. */
export interface GritSequenceOutput {
  /**
   * Sand in this order.
   */
  readonly steps: ShownOf<(typeof gritSequence)['outputs']['steps']>;
  /**
   * The sequence.
   */
  readonly grades: string;
  /**
   * Grits.
   */
  readonly count: number;
  /**
   * The largest step.
   */
  readonly largestStep: number;
}
/** An answer of {@link gritSequence}. */
export interface GritSequenceResult extends GritSequenceOutput, ResultMethods {}

/** What {@link nailHoles} takes. From counts on a few sample pieces: how many nail holes the job has, how many to be ready for, and the filler or plugs they take. */
export interface NailHolesInput {
  /**
   * Counts. Holes counted in each sample piece.
   * Takes a list, each a whole number such as 4, at least 0 and at most 10 000.
   * @example [7,4,9,5,6]
   */
  readonly counts: InputOf<(typeof nailHoles)['inputs']['counts']>;
  /**
   * Sample area. Area of one sample piece.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 m².
   * @example 0.2 m2
   */
  readonly sampleArea: Written<'area'>;
  /**
   * Area. Area of the whole job.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 1000 m².
   * @example 1.3 m2
   */
  readonly area: Written<'area'>;
  /**
   * Width of a hole.
   * Takes a length such as "5 mm", more than 0 mm and at most 30 mm.
   * @default 5 mm
   * @example 5 mm
   */
  readonly holeWidth?: Written<'length'>;
  /**
   * Depth that is filled.
   * Takes a length such as "10 mm", more than 0 mm and at most 100 mm.
   * @default 10 mm
   * @example 12 mm
   */
  readonly depth?: Written<'length'>;
  /**
   * Filled or plugged.
   * Takes one of "filler", "plugs".
   * @default filler
   */
  readonly method?: 'filler' | 'plugs';
  /**
   * Filler lost. Share of the filler left over, scraped off and shrunk.
   * Takes a share such as "50 %", at least 0 % and at most 300 %.
   * @default 50 %
   */
  readonly leftOver?: Written<'share'>;
  /**
   * Certainty. Chance that what is made is enough.
   * Takes a share such as "90 %", at least 50 % and at most 99.9 %.
   * @default 90 %
   */
  readonly certainty?: Written<'share'>;
  /**
   * What goes over it.
   * Takes one of "clear", "stain", "paint".
   * @default clear
   */
  readonly finish?: 'clear' | 'stain' | 'paint';
}
/** What {@link nailHoles} gives, beside workings, cautions, sources and chart. */
export interface NailHolesOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Holes expected in all.
   */
  readonly expected: number;
  /**
   * Holes to fill. Holes to be ready for.
   */
  readonly ready: number;
  /**
   * Filler to mix.
   * Shown in mL.
   */
  readonly filler?: Quantity<'liquid'> | undefined;
  /**
   * Plugs to cut.
   */
  readonly plugs?: number | undefined;
  /**
   * Holes per area. Holes in a square metre.
   */
  readonly perArea: number;
  /**
   * Standard deviation. Standard deviation of the number of holes.
   */
  readonly spread: number;
}
/** An answer of {@link nailHoles}. */
export interface NailHolesResult extends NailHolesOutput, ResultMethods {}

/** What {@link shellacCut} takes. Flakes and alcohol for a cut of shellac, or the alcohol that thins one cut to a weaker. Cuts are by pounds to the US gallon of alcohol, or grams to the litre. */
export interface ShellacCutInput {
  /**
   * Cut wanted. Pounds of flakes to a US gallon of alcohol.
   * Takes a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal.
   * Shown in g/L.
   * @example 2
   */
  readonly cut: InputOf<(typeof shellacCut)['inputs']['cut']>;
  /**
   * Flakes there are.
   * Takes a mass such as "12 kg", more than 0 g and at most 1000 kg.
   */
  readonly flakes?: Written<'mass'>;
  /**
   * Alcohol. Alcohol to dissolve the flakes in.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   * @example 500 mL
   */
  readonly volume?: Written<'liquid'>;
  /**
   * Ready-made shellac. Volume of ready-made shellac to be thinned.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   */
  readonly existing?: Written<'liquid'>;
  /**
   * Cut as bought. Cut of the ready-made shellac.
   * Takes a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal.
   * Shown in g/L.
   */
  readonly existingCut?: InputOf<(typeof shellacCut)['inputs']['existingCut']>;
}
/** What {@link shellacCut} gives, beside workings, cautions, sources and chart. */
export interface ShellacCutOutput {
  /**
   * Flakes. Flakes to weigh out, or those already dissolved.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * Alcohol in all.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * Shellac made.
   */
  readonly made: Quantity<'liquid'>;
  /**
   * Alcohol to add. Alcohol to add to what is there.
   */
  readonly addAlcohol?: Quantity<'liquid'> | undefined;
  /**
   * Parts of alcohol. Parts of alcohol to one part of what is there.
   */
  readonly partsAlcohol?: number | undefined;
  /**
   * Volume of the flakes. Share of the volume that the flakes take up.
   */
  readonly solids: Quantity<'share'>;
}
/** An answer of {@link shellacCut}. */
export interface ShellacCutResult extends ShellacCutOutput, ResultMethods {}

/** What {@link stainTrials} takes. A ladder of test strips for a stain that is thinned or mixed: strengths in steps that look even, the smallest batch your measure allows, and a strip to label. */
export interface StainTrialsInput {
  /**
   * Strongest strip. Share of stain in the mix of the strongest strip.
   * Takes a share such as "100 %", more than 0 % and at most 100 %.
   * @default 100 %
   * @example 100 %
   */
  readonly strongest?: Written<'share'>;
  /**
   * Weakest strip.
   * Takes a share such as "12.5 %", more than 0 % and at most 100 %.
   * @default 12.5 %
   * @example 12.5 %
   */
  readonly weakest?: Written<'share'>;
  /**
   * Strips.
   * Takes a whole number such as 4, at least 2 and at most 12.
   * @default 4
   * @example 4
   */
  readonly strips?: Written<'count'>;
  /**
   * Tool error. How far the measure may be off, such as half a mark.
   * Takes an amount of liquid such as "0.25 mL", more than 0 mL and at most 100 mL.
   * @default 0.25 mL
   * @example 0.25 mL
   */
  readonly toolError?: Written<'liquid'>;
  /**
   * Allowed error. Error of a strength that is allowed.
   * Takes a share such as "5 %", at least 0.5 % and at most 50 %.
   * @default 5 %
   */
  readonly strengthError?: Written<'share'>;
  /**
   * Least batch. Least batch that wets a strip.
   * Takes an amount of liquid such as "10 mL", more than 0 mL and at most 1 L.
   * @default 10 mL
   */
  readonly least?: Written<'liquid'>;
  /**
   * Thinner. What the stain is thinned or mixed with.
   * Takes a text of 1 to 200 characters.
   * @default thinner
   */
  readonly thinner?: string;
}
/** What {@link stainTrials} gives, beside workings, cautions, sources and chart. */
export interface StainTrialsOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Step. Strength of each strip over the one before.
   */
  readonly step: number;
  /**
   * Batch of each strip.
   * Shown in mL.
   */
  readonly batch: Quantity<'liquid'>;
  /**
   * Stain for all strips.
   * Shown in mL.
   */
  readonly stain: Quantity<'liquid'>;
  /**
   * The strips, weakest first.
   */
  readonly ladder: ShownOf<(typeof stainTrials)['outputs']['ladder']>;
}
/** An answer of {@link stainTrials}. */
export interface StainTrialsResult extends StainTrialsOutput, ResultMethods {}

/** What {@link thinToSolids} takes. The solids a finish has once thinned, or how much thinner brings it to the solids wanted. By volume; not for two-pack finishes beyond what their maker allows. */
export interface ThinToSolidsInput {
  /**
   * Solids as bought. Solids by volume of the finish as bought, from its data sheet.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 42 %
   */
  readonly volumeSolids: Written<'share'>;
  /**
   * Solids wanted after thinning.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 28 %
   */
  readonly target?: Written<'share'>;
  /**
   * Parts of thinner. Parts of thinner to one part of finish.
   * Takes a number such as 1.5, at least 0 and at most 1000.
   */
  readonly thinnerParts?: Written<'ratio'>;
}
/** What {@link thinToSolids} gives, beside workings, cautions, sources and chart. */
export interface ThinToSolidsOutput {
  /**
   * Parts of thinner. Parts of thinner to one part of finish.
   */
  readonly thinnerParts: number;
  /**
   * Solids of the mix. Solids of the mix by volume.
   */
  readonly solids: Quantity<'share'>;
  /**
   * Share of thinner. Thinner as a share of the mix.
   */
  readonly thinnerShare: Quantity<'share'>;
  /**
   * Thinner per litre. Thinner to one litre of finish.
   */
  readonly perLitre: Quantity<'liquid'>;
}
/** An answer of {@link thinToSolids}. */
export interface ThinToSolidsResult extends ThinToSolidsOutput, ResultMethods {}

/** What {@link thinnedVoc} takes. The volatile organic compounds of a finish once thinned, as the rules calculate them, less water and exempt solvent. Not a statement of compliance. */
export interface ThinnedVocInput {
  /**
   * VOC as bought. VOC of the finish as bought, less water, from its label.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1500 g/L.
   * @example 350 g/L
   */
  readonly voc?: InputOf<(typeof thinnedVoc)['inputs']['voc']>;
  /**
   * Parts of thinner. Parts of thinner to one part of finish.
   * Takes a number such as 1.5, at least 0 and at most 100.
   * @example 0.25
   */
  readonly thinnerParts: Written<'ratio'>;
  /**
   * Density of thinner. For a thinner that evaporates completely.
   * Takes a density such as "790 g/L", at least 600 kg/m³ and at most 1600 kg/m³.
   * @default 790 g/L
   * @example 6.6 lb/gal
   */
  readonly density?: Written<'density'>;
  /**
   * VOC of thinner. For a thinner or second part that does not evaporate completely.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1600 g/L.
   */
  readonly thinnerVoc?: InputOf<(typeof thinnedVoc)['inputs']['thinnerVoc']>;
  /**
   * Exempt share, finish. Water and exempt solvent in the finish, by volume.
   * Takes a share such as "0 %", at least 0 % and at most 99 %.
   * @default 0 %
   */
  readonly exempt?: Written<'share'>;
  /**
   * Exempt share, thinner. Water and exempt solvent in the thinner by volume; for water 100 %.
   * Takes a share such as "0 %", at least 0 % and at most 100 %.
   * @default 0 %
   */
  readonly thinnerExempt?: Written<'share'>;
  /**
   * Solids by mass. Needed where the VOC is not given.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly solidsByMass?: Written<'share'>;
  /**
   * Water by mass. Needed where the VOC is not given.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly waterByMass?: Written<'share'>;
  /**
   * Density of finish. Needed where the VOC is not given.
   * Takes a density such as "520 kg/m3", at least 600 kg/m³ and at most 3000 kg/m³.
   */
  readonly finishDensity?: Written<'density'>;
}
/** What {@link thinnedVoc} gives, beside workings, cautions, sources and chart. */
export interface ThinnedVocOutput {
  /**
   * VOC of the mix. Less water and exempt solvent, the figure that rules set a limit to.
   */
  readonly voc: Quantity<'concentration'>;
  /**
   * VOC per litre. VOC in one litre of the mix with its water.
   */
  readonly vocAsIs: Quantity<'concentration'>;
  /**
   * VOC before thinning. VOC of the finish as bought.
   */
  readonly before: Quantity<'concentration'>;
  /**
   * What the thinner adds.
   */
  readonly rise: Quantity<'concentration'>;
}
/** An answer of {@link thinnedVoc}. */
export interface ThinnedVocResult extends ThinnedVocOutput, ResultMethods {}

/** What {@link thinningRatio} takes. How much of each part to pour or weigh for a batch, or the most that what is left in the tins will make. Not for two-pack finishes with a hardener. */
export interface ThinningRatioInput {
  /**
   * Parts of the mix. Names and parts, such as oil 2, varnish 1, spirit 1.
   * Takes named parts such as { oil: ... }, each a number such as 1.5, more than 0 and at most 10 000.
   * @example {"oil":2,"varnish":1,"spirit":1}
   */
  readonly parts: InputOf<(typeof thinningRatio)['inputs']['parts']>;
  /**
   * Amount wanted. How much of the mix is wanted.
   * Takes an amount of liquid such as "2 L" or a mass such as "500 g", more than nothing and at most 1000 m3 or 1000 t.
   * @example 2 L
   */
  readonly batch?: InputOf<(typeof thinningRatio)['inputs']['batch']>;
  /**
   * In stock. What is left of each part; a part that is not named can be bought.
   * Takes named parts such as { oil: ... }, each an amount of liquid such as "2 L" or a mass such as "500 g", at least nothing and at most 1000 m3 or 1000 t.
   */
  readonly have?: InputOf<(typeof thinningRatio)['inputs']['have']>;
  /**
   * Parts by. Whether the parts are of volume or of mass; leave it out to go by the amounts given.
   * Takes one of "volume", "mass".
   */
  readonly by?: 'volume' | 'mass';
  /**
   * Densities. Density of each part, for going between volume and mass.
   * Takes named parts such as { oil: ... }, each a density such as "520 kg/m3", at least 400 kg/m³ and at most 3000 kg/m³.
   */
  readonly densities?: InputOf<(typeof thinningRatio)['inputs']['densities']>;
  /**
   * Thinner. Which part is the thinner; leave it out where its name tells.
   * Takes a text of 1 to 200 characters.
   */
  readonly thinner?: string;
}
/** What {@link thinningRatio} gives, beside workings, cautions, sources and chart. */
export interface ThinningRatioOutput {
  /**
   * Amount of each part.
   */
  readonly amounts: ShownOf<(typeof thinningRatio)['outputs']['amounts']>;
  /**
   * The mix in all.
   */
  readonly total: ShownOf<(typeof thinningRatio)['outputs']['total']>;
  /**
   * Limiting part. The part that runs out first.
   */
  readonly limiting?: string | undefined;
  /**
   * Left in the tins. What remains of each part afterwards.
   */
  readonly left?: ShownOf<(typeof thinningRatio)['outputs']['left']> | undefined;
  /**
   * To buy.
   */
  readonly toBuy?: ShownOf<(typeof thinningRatio)['outputs']['toBuy']> | undefined;
  /**
   * Thinner added. Thinner as a share of what it is added to.
   */
  readonly thinnerAdded?: Quantity<'share'> | undefined;
  /**
   * Share of thinner. Thinner as a share of the mix.
   */
  readonly thinnerShare?: Quantity<'share'> | undefined;
  /**
   * Pouring order. Poured in this order into one jug or on one scale.
   */
  readonly pour: ShownOf<(typeof thinningRatio)['outputs']['pour']>;
}
/** An answer of {@link thinningRatio}. */
export interface ThinningRatioResult extends ThinningRatioOutput, ResultMethods {}

/** What {@link chamfer} takes. Width of a chamfer from the depth of the cutter, or the depth for the width wanted; the flat left on the edge, the passes, and metres and time for a run of parts. */
export interface ChamferInput {
  /**
   * Width. Width of the sloping face; or give the depth.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   * @example 8 mm
   */
  readonly width?: Written<'length'>;
  /**
   * Depth. Depth of the chamfer down the edge; or give the width.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   */
  readonly depth?: Written<'length'>;
  /**
   * Angle. Angle of the chamfer to the face.
   * Takes an angle such as "45 deg", at least 5° and at most 85°.
   * @default 45 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * Thickness at the edge.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * Both edges. Whether both edges of that side are chamfered.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly bothEdges?: boolean | 'yes' | 'no';
  /**
   * Depth per pass. Depth that one pass takes.
   * Takes a length such as "3 mm", more than 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly passDepth?: Written<'length'>;
  /**
   * Length of a chamfer.
   * Takes a length such as "1 m", more than 0 mm and at most 50 m.
   * @default 1 m
   * @example 1950 mm
   */
  readonly length?: Written<'length'>;
  /**
   * Chamfers on each part.
   * Takes a whole number such as 1, at least 1 and at most 100.
   * @default 1
   * @example 4
   */
  readonly each?: Written<'count'>;
  /**
   * Parts.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   */
  readonly parts?: Written<'count'>;
  /**
   * Feed by hand.
   * Takes a speed such as "2 m/min", more than 0 m/min and at most 60 m/min.
   * @default 2 m/min
   */
  readonly feed?: Written<'speed'>;
}
/** What {@link chamfer} gives, beside workings, cautions, sources and chart. */
export interface ChamferOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Width of the chamfer.
   */
  readonly width: Quantity<'length'>;
  /**
   * Taken off the face.
   */
  readonly alongFace: Quantity<'length'>;
  /**
   * Depth. Depth of the chamfer down the edge.
   */
  readonly depth: Quantity<'length'>;
  /**
   * Flat left. Flat left on the edge.
   */
  readonly flat: Quantity<'length'>;
  /**
   * Passes.
   */
  readonly passes: number;
  /**
   * Run of all chamfers.
   * Shown in m.
   */
  readonly run: Quantity<'length'>;
  /**
   * Time at the cutter.
   */
  readonly time: Quantity<'time'>;
}
/** An answer of {@link chamfer}. */
export interface ChamferResult extends ChamferOutput, ResultMethods {}

/** What {@link chipVolume} takes. The mass and the loose volume of shavings or sawdust from the wood taken off, and the bags they fill. */
export interface ChipVolumeInput {
  /**
   * Wood removed. Volume taken off, as solid wood.
   * Takes a volume such as "0.02 m3", more than 0 m³ and at most 1000 m³.
   */
  readonly volumeRemoved?: Written<'volume'>;
  /**
   * Area planed. Needed where the volume is not given.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 000 m².
   * @example 2.5 m2
   */
  readonly area?: Written<'area'>;
  /**
   * Depth removed. Depth taken off the area.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly depth?: Written<'length'>;
  /**
   * Density of timber. Density at the moisture it has.
   * Takes a density such as "520 kg/m3", at least 50 kg/m³ and at most 1500 kg/m³.
   * @example 520 kg/m3
   */
  readonly density: Written<'density'>;
  /**
   * What it becomes.
   * Takes one of "planer shavings", "sawdust".
   * @default planer shavings
   */
  readonly waste?: 'planer shavings' | 'sawdust';
  /**
   * What a bag holds.
   * Takes an amount of liquid such as "100 L", at least 1 L and at most 10 000 L.
   * @default 100 L
   */
  readonly bagSize?: Written<'liquid'>;
}
/** What {@link chipVolume} gives, beside workings, cautions, sources and chart. */
export interface ChipVolumeOutput {
  /**
   * Mass of the waste.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * Loose volume. Volume of the chips as they fall.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * As solid wood.
   */
  readonly solid: Quantity<'liquid'>;
  /**
   * Bags.
   */
  readonly bags: number;
  /**
   * Loose density. Density of the chips as they fall.
   */
  readonly bulkDensity: Quantity<'density'>;
}
/** An answer of {@link chipVolume}. */
export interface ChipVolumeResult extends ChipVolumeOutput, ResultMethods {}

/** What {@link cutterMarks} takes. How close the knife marks stand and how deep the ripple is, from speed, knives and feed, and the feed for the marks wanted. Not for spiral blocks. */
export interface CutterMarksInput {
  /**
   * Cutter block speed. Turns of the cutter block in a minute.
   * Takes a speed of rotation such as "6000 rpm", more than 0 rpm and at most 60 000 rpm.
   * @example 6000 rpm
   */
  readonly spindleSpeed: Written<'rotation'>;
  /**
   * Knives. Knives that cut on the same circle.
   * Takes a whole number such as 4, at least 1 and at most 24.
   * @example 4
   */
  readonly knives: Written<'count'>;
  /**
   * Feed of the timber.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   * @example 60 ft/min
   */
  readonly feed: Written<'speed'>;
  /**
   * Cutting diameter. Diameter of the circle that the knife edges run on.
   * Takes a length such as "72 mm", at least 10 mm and at most 1000 mm.
   * @default 72 mm
   */
  readonly cutterDiameter?: Written<'length'>;
  /**
   * Fastest feed. Fastest feed that the machine has.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   */
  readonly mostFeed?: Written<'speed'>;
  /**
   * Marks wanted.
   * Takes marks by length such as "20 1/in", at least 1 1/in and at most 200 1/in.
   * @default 20 1/in
   */
  readonly wanted?: Written<'marks'>;
}
/** What {@link cutterMarks} gives, beside workings, cautions, sources and chart. */
export interface CutterMarksOutput {
  /**
   * Knife mark pitch. Distance from one knife mark to the next.
   */
  readonly pitch: Quantity<'length'>;
  /**
   * Knife marks by length.
   * Shown in 1/in.
   */
  readonly marksPerInch: Quantity<'marks'>;
  /**
   * Ripple depth. Depth of the wave that each knife leaves.
   * Shown in um.
   */
  readonly waveDepth: Quantity<'length'>;
  /**
   * Feed for marks wanted. Feed speed that gives the marks wanted.
   */
  readonly feedForWanted: Quantity<'speed'>;
  /**
   * Cutting speed. Speed of the knife edge.
   * Shown in m/s.
   */
  readonly rimSpeed: Quantity<'speed'>;
}
/** An answer of {@link cutterMarks}. */
export interface CutterMarksResult extends CutterMarksOutput, ResultMethods {}

/** What {@link planingTime} takes. How long a pile takes through the thicknesser, passes and handling counted. For feed by rollers; not for a hand-fed jointer. */
export interface PlaningTimeInput {
  /**
   * Total length. Length of all pieces together.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 000 m.
   * @example 31.2 m
   */
  readonly totalLength: Written<'length'>;
  /**
   * Passes. Passes of each piece; leave it out to work them out from what comes off.
   * Takes a whole number such as 4, at least 1 and at most 1000.
   */
  readonly passes?: Written<'count'>;
  /**
   * Feed of the machine.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   * @example 6 m/min
   */
  readonly feed: Written<'speed'>;
  /**
   * Handling time. Time to handle one piece for each pass.
   * Takes a time such as "15 s", at least 0 s and at most 1 h.
   * @default 15 s
   * @example 15 s
   */
  readonly handling?: Written<'time'>;
  /**
   * How many pieces.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   * @example 16
   */
  readonly pieces?: Written<'count'>;
  /**
   * To take off. Thickness to take off each piece, both faces together.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly removal?: Written<'length'>;
  /**
   * Depth per pass. Thickness taken off in one pass.
   * Takes a length such as "1 mm", more than 0 mm and at most 20 mm.
   * @default 1 mm
   * @example 1 mm
   */
  readonly depthPerPass?: Written<'length'>;
}
/** What {@link planingTime} gives, beside workings, cautions, sources and chart. */
export interface PlaningTimeOutput {
  /**
   * In all.
   */
  readonly time: Quantity<'time'>;
  /**
   * Passes of each piece.
   */
  readonly passes: number;
  /**
   * Cutting time. Time with timber under the knives.
   */
  readonly cutting: Quantity<'time'>;
  /**
   * Handling.
   */
  readonly handlingTime: Quantity<'time'>;
  /**
   * Length that runs through.
   * Shown in m.
   */
  readonly run: Quantity<'length'>;
}
/** An answer of {@link planingTime}. */
export interface PlaningTimeResult extends PlaningTimeOutput, ResultMethods {}

/** What {@link bill} takes. What a piece costs, weighs and takes in hours: timber, glue, finish, fixings and time in one table. An estimate for the maker, not an invoice. */
export interface BillInput {
  /**
   * Lines of the bill. One row for each thing that goes into the piece.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns item, kind?, quantity, unit?, price?, mass?, massEach?, density?.
   * @example [{"item":"rafters, salvaged","kind":"timber","quantity":"0.062 m3","price":"180/m3","density":"500 kg/m3"},{"item":"battens for the frame","kind":"timber","quantity":"11.4 m","price":"1.20/m","mass":"8.2 kg"},{"item":"wood glue","kind":"glue","quantity":"750 mL","price":"14/L","mass":"0.8 kg"},{"item":"oil varnish","kind":"finish","quantity":2,"unit":"tins","price":16.5,"massEach":"0.45 kg"},{"item":"screws 5 x 60","kind":"fixings","quantity":48,"price":0.11,"massEach":"6 g"},{"item":"bench work","kind":"time","quantity":"14.5 h"}]
   */
  readonly lines: InputOf<(typeof bill)['inputs']['lines']>;
  /**
   * Price of an hour. Used for lines of time that have no price of their own.
   * Takes a price of 0 or more: for one of the unit the quantity is in, such as 12.50, or with what it is for, such as '4.20/m', '38/m2', '18/L', '9/kg' or '40/h'.
   * @example 24
   */
  readonly hourly?: InputOf<(typeof bill)['inputs']['hourly']>;
  /**
   * Contingency. A share added to the sum for what was forgotten.
   * Takes a share such as "0 %", at least 0 % and at most 200 %.
   * @default 0 %
   * @example 10 %
   */
  readonly forgotten?: Written<'share'>;
  /**
   * Sales tax. Share of the sum.
   * Takes a share such as "0 %", at least 0 % and at most 100 %.
   * @default 0 %
   */
  readonly tax?: Written<'share'>;
}
/** What {@link bill} gives, beside workings, cautions, sources and chart. */
export interface BillOutput {
  /**
   * Cost in all.
   */
  readonly total: Quantity<'money'>;
  /**
   * The lines together.
   */
  readonly subtotal: Quantity<'money'>;
  /**
   * Contingency. A share added to the sum for what was forgotten.
   */
  readonly forgotten?: Quantity<'money'> | undefined;
  /**
   * Sales tax.
   */
  readonly tax?: Quantity<'money'> | undefined;
  /**
   * Mass. Mass of the lines that have one.
   */
  readonly mass?: Quantity<'mass'> | undefined;
  /**
   * Hours of work.
   * Shown in h.
   */
  readonly time?: Quantity<'time'> | undefined;
  /**
   * By sort.
   */
  readonly byKind: ShownOf<(typeof bill)['outputs']['byKind']>;
  /**
   * Line by line.
   */
  readonly lines: ShownOf<(typeof bill)['outputs']['lines']>;
}
/** An answer of {@link bill}. */
export interface BillResult extends BillOutput, ResultMethods {}

/** What {@link prepTime} takes. Hours of de-nailing, docking, planing and the like, foretold from a few timed pieces, with the range to plan for and what it costs. */
export interface PrepTimeInput {
  /**
   * Operations. One row for each operation.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns work?, times, pieces.
   * @example [{"work":"de-nailing","times":"7 min, 11 min, 5 min, 9 min, 8 min","pieces":24},{"work":"docking and planing","times":"4 min, 6 min, 5 min","pieces":24}]
   */
  readonly works: InputOf<(typeof prepTime)['inputs']['works']>;
  /**
   * Certainty. Chance that the job lies in the range.
   * Takes a share such as "80 %", at least 50 % and at most 99 %.
   * @default 80 %
   */
  readonly certainty?: Written<'share'>;
  /**
   * Cost of an hour.
   * Takes an amount of money such as 12.50, at least 0.00 and at most 10 000.00.
   * @example 18
   */
  readonly hourly?: Written<'money'>;
}
/** What {@link prepTime} gives, beside workings, cautions, sources and chart. */
export interface PrepTimeOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Time expected.
   * Shown in h.
   */
  readonly expected: Quantity<'time'>;
  /**
   * Least of the range.
   * Shown in h.
   */
  readonly low: Quantity<'time'>;
  /**
   * Most of the range.
   * Shown in h.
   */
  readonly high: Quantity<'time'>;
  /**
   * Cost. Cost of the time expected.
   */
  readonly cost?: Quantity<'money'> | undefined;
  /**
   * Highest cost. Cost of the longest time of the range.
   */
  readonly costHigh?: Quantity<'money'> | undefined;
  /**
   * Work by work.
   */
  readonly works: ShownOf<(typeof prepTime)['outputs']['works']>;
}
/** An answer of {@link prepTime}. */
export interface PrepTimeResult extends PrepTimeOutput, ResultMethods {}

/** What {@link passage} takes. Whether a counter, top or bench goes round corners, through doors and into a van: lying, on edge or tilted; where to divide it if not, and how many people carry it. */
export interface PassageInput {
  /**
   * Length of the piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * Width of the piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * Height. Height of the piece, or thickness of a top.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 60 mm
   */
  readonly height: Written<'length'>;
  /**
   * Passages. What the piece passes, in order.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns kind, first, second?, height?.
   * @example [{"kind":"van","first":"2400 mm","second":"1300 mm","height":"1300 mm"},{"kind":"door","first":"780 mm","height":"1980 mm"},{"kind":"corner","first":"900 mm","second":"1000 mm","height":"2300 mm"}]
   */
  readonly gates: InputOf<(typeof passage)['inputs']['gates']>;
  /**
   * Hand room. Room for hands and padding on each side.
   * Takes a length such as "20 mm", at least 0 mm and at most 500 mm.
   * @default 20 mm
   */
  readonly spare?: Written<'length'>;
  /**
   * Mass of the piece.
   * Takes a mass such as "12 kg", more than 0 g and at most 2000 kg.
   * @example 38 kg
   */
  readonly mass?: Written<'mass'>;
  /**
   * Carriers. Whose lifting limits are taken; those of women are lower.
   * Takes one of "men", "women".
   * @default women
   * @example men
   */
  readonly carriers?: 'men' | 'women';
}
/** What {@link passage} gives, beside workings, cautions, sources and chart. */
export interface PassageOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Goes in whole. Whether the piece passes in one part.
   */
  readonly fits: boolean;
  /**
   * Longest piece. Longest piece of this width and height that passes.
   */
  readonly longest?: Quantity<'length'> | undefined;
  /**
   * Parts. Parts to make the piece in.
   */
  readonly parts: number;
  /**
   * Length of one part.
   */
  readonly partLength: Quantity<'length'>;
  /**
   * Mass of one part.
   */
  readonly partMass?: Quantity<'mass'> | undefined;
  /**
   * Carriers needed. People to carry one part.
   */
  readonly people?: number | undefined;
  /**
   * Place by place.
   */
  readonly gates: ShownOf<(typeof passage)['outputs']['gates']>;
}
/** An answer of {@link passage}. */
export interface PassageResult extends PassageOutput, ResultMethods {}

/** What {@link heightsForPeople} takes. Whom a height of counter, bench, stool or table suits, by published body measures; the height that suits most; access for wheelchair users; school sizes by the lower leg. */
export interface HeightsForPeopleInput {
  /**
   * What it is.
   * Takes one of "standing, light work", "standing, heavy work", "standing, fine work", "seat", "room for the knees".
   * @default standing, light work
   * @example standing, light work
   */
  readonly use?: 'standing, light work' | 'standing, heavy work' | 'standing, fine work' | 'seat' | 'room for the knees';
  /**
   * Height. Height to check; of a table to sit at, the room under it.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 950 mm
   */
  readonly height: Written<'length'>;
  /**
   * For whom.
   * Takes one of "adults", "men", "women".
   * @default adults
   */
  readonly people?: 'adults' | 'men' | 'women';
  /**
   * Thickness of the shoes.
   * Takes a length such as "25 mm", at least 0 mm and at most 100 mm.
   * @default 25 mm
   */
  readonly shoes?: Written<'length'>;
  /**
   * Lower leg. Of a child who sits in shoes: from the floor to the back of the knee, for the school size.
   * Takes a length such as "900 mm", at least 260 mm and at most 600 mm.
   */
  readonly lowerLeg?: Written<'length'>;
}
/** What {@link heightsForPeople} gives, beside workings, cautions, sources and chart. */
export interface HeightsForPeopleOutput {
  /**
   * In one sentence.
   */
  readonly sentence: string;
  /**
   * Share suited. Share of people whom the height suits.
   */
  readonly share: Quantity<'share'>;
  /**
   * Best height. Height that suits the average person.
   */
  readonly best: Quantity<'length'>;
  /**
   * Share at best. Share of people whom the best height suits.
   */
  readonly bestShare: Quantity<'share'>;
  /**
   * 5th percentile. Body measure of the 5th percentile, without shoes.
   */
  readonly low: Quantity<'length'>;
  /**
   * 95th percentile. Body measure of the 95th percentile, without shoes.
   */
  readonly high: Quantity<'length'>;
  /**
   * Access for wheelchair users.
   */
  readonly access: string;
  /**
   * School seat. Height of a school seat for that leg.
   */
  readonly schoolSeat?: Quantity<'length'> | undefined;
  /**
   * School table. Height of a school table for that leg.
   */
  readonly schoolTable?: Quantity<'length'> | undefined;
}
/** An answer of {@link heightsForPeople}. */
export interface HeightsForPeopleResult extends HeightsForPeopleOutput, ResultMethods {}

/** Every recipe, its call with the interfaces above. */
export interface DocumentedRecipes {
  readonly cupDepth: InPlaceOf<typeof cupDepth, DocumentedRecipe<CupDepthInput, CupDepthResult, (typeof cupDepth)['inputs'], (typeof cupDepth)['outputs']>>;
  readonly equilibriumMoisture: InPlaceOf<typeof equilibriumMoisture, DocumentedRecipe<EquilibriumMoistureInput, EquilibriumMoistureResult, (typeof equilibriumMoisture)['inputs'], (typeof equilibriumMoisture)['outputs']>>;
  readonly fixingSlots: InPlaceOf<typeof fixingSlots, DocumentedRecipe<FixingSlotsInput, FixingSlotsResult, (typeof fixingSlots)['inputs'], (typeof fixingSlots)['outputs']>>;
  readonly humidityFor: InPlaceOf<typeof humidityFor, DocumentedRecipe<HumidityForInput, HumidityForResult, (typeof humidityFor)['inputs'], (typeof humidityFor)['outputs']>>;
  readonly meterCorrection: InPlaceOf<typeof meterCorrection, DocumentedRecipe<MeterCorrectionInput, MeterCorrectionResult, (typeof meterCorrection)['inputs'], (typeof meterCorrection)['outputs']>>;
  readonly moistureByWeight: InPlaceOf<typeof moistureByWeight, DocumentedRecipe<MoistureByWeightInput, MoistureByWeightResult, (typeof moistureByWeight)['inputs'], (typeof moistureByWeight)['outputs']>>;
  readonly movementAcross: InPlaceOf<typeof movementAcross, DocumentedRecipe<MovementAcrossInput, MovementAcrossResult, (typeof movementAcross)['inputs'], (typeof movementAcross)['outputs']>>;
  readonly pieceWeight: InPlaceOf<typeof pieceWeight, DocumentedRecipe<PieceWeightInput, PieceWeightResult, (typeof pieceWeight)['inputs'], (typeof pieceWeight)['outputs']>>;
  readonly restraintStress: InPlaceOf<typeof restraintStress, DocumentedRecipe<RestraintStressInput, RestraintStressResult, (typeof restraintStress)['inputs'], (typeof restraintStress)['outputs']>>;
  readonly seasonalMovement: InPlaceOf<typeof seasonalMovement, DocumentedRecipe<SeasonalMovementInput, SeasonalMovementResult, (typeof seasonalMovement)['inputs'], (typeof seasonalMovement)['outputs']>>;
  readonly woodDensity: InPlaceOf<typeof woodDensity, DocumentedRecipe<WoodDensityInput, WoodDensityResult, (typeof woodDensity)['inputs'], (typeof woodDensity)['outputs']>>;
  readonly boardMeasure: InPlaceOf<typeof boardMeasure, DocumentedRecipe<BoardMeasureInput, BoardMeasureResult, (typeof boardMeasure)['inputs'], (typeof boardMeasure)['outputs']>>;
  readonly boardTally: InPlaceOf<typeof boardTally, DocumentedRecipe<BoardTallyInput, BoardTallyResult, (typeof boardTally)['inputs'], (typeof boardTally)['outputs']>>;
  readonly clearPieces: InPlaceOf<typeof clearPieces, DocumentedAsyncRecipe<ClearPiecesInput, ClearPiecesResult, (typeof clearPieces)['inputs'], (typeof clearPieces)['outputs']>>;
  readonly cuttingPlan: InPlaceOf<typeof cuttingPlan, DocumentedAsyncRecipe<CuttingPlanInput, CuttingPlanResult, (typeof cuttingPlan)['inputs'], (typeof cuttingPlan)['outputs']>>;
  readonly flatteningLoss: InPlaceOf<typeof flatteningLoss, DocumentedRecipe<FlatteningLossInput, FlatteningLossResult, (typeof flatteningLoss)['inputs'], (typeof flatteningLoss)['outputs']>>;
  readonly gradeYield: InPlaceOf<typeof gradeYield, DocumentedRecipe<GradeYieldInput, GradeYieldResult, (typeof gradeYield)['inputs'], (typeof gradeYield)['outputs']>>;
  readonly palletBoards: InPlaceOf<typeof palletBoards, DocumentedRecipe<PalletBoardsInput, PalletBoardsResult, (typeof palletBoards)['inputs'], (typeof palletBoards)['outputs']>>;
  readonly partsCost: InPlaceOf<typeof partsCost, DocumentedRecipe<PartsCostInput, PartsCostResult, (typeof partsCost)['inputs'], (typeof partsCost)['outputs']>>;
  readonly pileSampling: InPlaceOf<typeof pileSampling, DocumentedRecipe<PileSamplingInput, PileSamplingResult, (typeof pileSampling)['inputs'], (typeof pileSampling)['outputs']>>;
  readonly pileYield: InPlaceOf<typeof pileYield, DocumentedRecipe<PileYieldInput, PileYieldResult, (typeof pileYield)['inputs'], (typeof pileYield)['outputs']>>;
  readonly roughToDressed: InPlaceOf<typeof roughToDressed, DocumentedRecipe<RoughToDressedInput, RoughToDressedResult, (typeof roughToDressed)['inputs'], (typeof roughToDressed)['outputs']>>;
  readonly topFromPile: InPlaceOf<typeof topFromPile, DocumentedAsyncRecipe<TopFromPileInput, TopFromPileResult, (typeof topFromPile)['inputs'], (typeof topFromPile)['outputs']>>;
  readonly caulCamber: InPlaceOf<typeof caulCamber, DocumentedRecipe<CaulCamberInput, CaulCamberResult, (typeof caulCamber)['inputs'], (typeof caulCamber)['outputs']>>;
  readonly clampPlan: InPlaceOf<typeof clampPlan, DocumentedRecipe<ClampPlanInput, ClampPlanResult, (typeof clampPlan)['inputs'], (typeof clampPlan)['outputs']>>;
  readonly glueQuantity: InPlaceOf<typeof glueQuantity, DocumentedRecipe<GlueQuantityInput, GlueQuantityResult, (typeof glueQuantity)['inputs'], (typeof glueQuantity)['outputs']>>;
  readonly glueTiming: InPlaceOf<typeof glueTiming, DocumentedRecipe<GlueTimingInput, GlueTimingResult, (typeof glueTiming)['inputs'], (typeof glueTiming)['outputs']>>;
  readonly layerCount: InPlaceOf<typeof layerCount, DocumentedRecipe<LayerCountInput, LayerCountResult, (typeof layerCount)['inputs'], (typeof layerCount)['outputs']>>;
  readonly matchSlabs: InPlaceOf<typeof matchSlabs, DocumentedRecipe<MatchSlabsInput, MatchSlabsResult, (typeof matchSlabs)['inputs'], (typeof matchSlabs)['outputs']>>;
  readonly slabStack: InPlaceOf<typeof slabStack, DocumentedRecipe<SlabStackInput, SlabStackResult, (typeof slabStack)['inputs'], (typeof slabStack)['outputs']>>;
  readonly stackUp: InPlaceOf<typeof stackUp, DocumentedRecipe<StackUpInput, StackUpResult, (typeof stackUp)['inputs'], (typeof stackUp)['outputs']>>;
  readonly stripCount: InPlaceOf<typeof stripCount, DocumentedRecipe<StripCountInput, StripCountResult, (typeof stripCount)['inputs'], (typeof stripCount)['outputs']>>;
  readonly stripLayout: InPlaceOf<typeof stripLayout, DocumentedAsyncRecipe<StripLayoutInput, StripLayoutResult, (typeof stripLayout)['inputs'], (typeof stripLayout)['outputs']>>;
  readonly angledRail: InPlaceOf<typeof angledRail, DocumentedRecipe<AngledRailInput, AngledRailResult, (typeof angledRail)['inputs'], (typeof angledRail)['outputs']>>;
  readonly biscuitSpacing: InPlaceOf<typeof biscuitSpacing, DocumentedRecipe<BiscuitSpacingInput, BiscuitSpacingResult, (typeof biscuitSpacing)['inputs'], (typeof biscuitSpacing)['outputs']>>;
  readonly halfLap: InPlaceOf<typeof halfLap, DocumentedRecipe<HalfLapInput, HalfLapResult, (typeof halfLap)['inputs'], (typeof halfLap)['outputs']>>;
  readonly jointFit: InPlaceOf<typeof jointFit, DocumentedRecipe<JointFitInput, JointFitResult, (typeof jointFit)['inputs'], (typeof jointFit)['outputs']>>;
  readonly mitreGap: InPlaceOf<typeof mitreGap, DocumentedRecipe<MitreGapInput, MitreGapResult, (typeof mitreGap)['inputs'], (typeof mitreGap)['outputs']>>;
  readonly mitredEnd: InPlaceOf<typeof mitredEnd, DocumentedRecipe<MitredEndInput, MitredEndResult, (typeof mitredEnd)['inputs'], (typeof mitredEnd)['outputs']>>;
  readonly postCasing: InPlaceOf<typeof postCasing, DocumentedRecipe<PostCasingInput, PostCasingResult, (typeof postCasing)['inputs'], (typeof postCasing)['outputs']>>;
  readonly screwHold: InPlaceOf<typeof screwHold, DocumentedRecipe<ScrewHoldInput, ScrewHoldResult, (typeof screwHold)['inputs'], (typeof screwHold)['outputs']>>;
  readonly splayedCorner: InPlaceOf<typeof splayedCorner, DocumentedRecipe<SplayedCornerInput, SplayedCornerResult, (typeof splayedCorner)['inputs'], (typeof splayedCorner)['outputs']>>;
  readonly splineSlot: InPlaceOf<typeof splineSlot, DocumentedRecipe<SplineSlotInput, SplineSlotResult, (typeof splineSlot)['inputs'], (typeof splineSlot)['outputs']>>;
  readonly squareness: InPlaceOf<typeof squareness, DocumentedRecipe<SquarenessInput, SquarenessResult, (typeof squareness)['inputs'], (typeof squareness)['outputs']>>;
  readonly beam: InPlaceOf<typeof beam, DocumentedRecipe<BeamInput, BeamResult, (typeof beam)['inputs'], (typeof beam)['outputs']>>;
  readonly rackingFrame: InPlaceOf<typeof rackingFrame, DocumentedRecipe<RackingFrameInput, RackingFrameResult, (typeof rackingFrame)['inputs'], (typeof rackingFrame)['outputs']>>;
  readonly railSpan: InPlaceOf<typeof railSpan, DocumentedRecipe<RailSpanInput, RailSpanResult, (typeof railSpan)['inputs'], (typeof railSpan)['outputs']>>;
  readonly tipping: InPlaceOf<typeof tipping, DocumentedRecipe<TippingInput, TippingResult, (typeof tipping)['inputs'], (typeof tipping)['outputs']>>;
  readonly topSag: InPlaceOf<typeof topSag, DocumentedRecipe<TopSagInput, TopSagResult, (typeof topSag)['inputs'], (typeof topSag)['outputs']>>;
  readonly filmBuild: InPlaceOf<typeof filmBuild, DocumentedRecipe<FilmBuildInput, FilmBuildResult, (typeof filmBuild)['inputs'], (typeof filmBuild)['outputs']>>;
  readonly finishQuantity: InPlaceOf<typeof finishQuantity, DocumentedRecipe<FinishQuantityInput, FinishQuantityResult, (typeof finishQuantity)['inputs'], (typeof finishQuantity)['outputs']>>;
  readonly gritSequence: InPlaceOf<typeof gritSequence, DocumentedRecipe<GritSequenceInput, GritSequenceResult, (typeof gritSequence)['inputs'], (typeof gritSequence)['outputs']>>;
  readonly nailHoles: InPlaceOf<typeof nailHoles, DocumentedRecipe<NailHolesInput, NailHolesResult, (typeof nailHoles)['inputs'], (typeof nailHoles)['outputs']>>;
  readonly shellacCut: InPlaceOf<typeof shellacCut, DocumentedRecipe<ShellacCutInput, ShellacCutResult, (typeof shellacCut)['inputs'], (typeof shellacCut)['outputs']>>;
  readonly stainTrials: InPlaceOf<typeof stainTrials, DocumentedRecipe<StainTrialsInput, StainTrialsResult, (typeof stainTrials)['inputs'], (typeof stainTrials)['outputs']>>;
  readonly thinToSolids: InPlaceOf<typeof thinToSolids, DocumentedRecipe<ThinToSolidsInput, ThinToSolidsResult, (typeof thinToSolids)['inputs'], (typeof thinToSolids)['outputs']>>;
  readonly thinnedVoc: InPlaceOf<typeof thinnedVoc, DocumentedRecipe<ThinnedVocInput, ThinnedVocResult, (typeof thinnedVoc)['inputs'], (typeof thinnedVoc)['outputs']>>;
  readonly thinningRatio: InPlaceOf<typeof thinningRatio, DocumentedRecipe<ThinningRatioInput, ThinningRatioResult, (typeof thinningRatio)['inputs'], (typeof thinningRatio)['outputs']>>;
  readonly chamfer: InPlaceOf<typeof chamfer, DocumentedRecipe<ChamferInput, ChamferResult, (typeof chamfer)['inputs'], (typeof chamfer)['outputs']>>;
  readonly chipVolume: InPlaceOf<typeof chipVolume, DocumentedRecipe<ChipVolumeInput, ChipVolumeResult, (typeof chipVolume)['inputs'], (typeof chipVolume)['outputs']>>;
  readonly cutterMarks: InPlaceOf<typeof cutterMarks, DocumentedRecipe<CutterMarksInput, CutterMarksResult, (typeof cutterMarks)['inputs'], (typeof cutterMarks)['outputs']>>;
  readonly planingTime: InPlaceOf<typeof planingTime, DocumentedRecipe<PlaningTimeInput, PlaningTimeResult, (typeof planingTime)['inputs'], (typeof planingTime)['outputs']>>;
  readonly bill: InPlaceOf<typeof bill, DocumentedRecipe<BillInput, BillResult, (typeof bill)['inputs'], (typeof bill)['outputs']>>;
  readonly prepTime: InPlaceOf<typeof prepTime, DocumentedRecipe<PrepTimeInput, PrepTimeResult, (typeof prepTime)['inputs'], (typeof prepTime)['outputs']>>;
  readonly passage: InPlaceOf<typeof passage, DocumentedRecipe<PassageInput, PassageResult, (typeof passage)['inputs'], (typeof passage)['outputs']>>;
  readonly heightsForPeople: InPlaceOf<typeof heightsForPeople, DocumentedRecipe<HeightsForPeopleInput, HeightsForPeopleResult, (typeof heightsForPeople)['inputs'], (typeof heightsForPeople)['outputs']>>;
}
