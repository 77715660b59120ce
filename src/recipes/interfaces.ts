// Written by src/launch/recipe-interfaces.mjs from the fields of every recipe; do not edit.
import type { Quantity } from '../units/quantity.js';
import type { InputOf } from '../engine/field.js';
import type { ShownOf } from '../engine/output.js';
import type { Written } from '../engine/quantity-field.js';
import type { cupDepth, equilibriumMoisture, fixingSlots, humidityFor, meterCorrection, moistureByWeight, movementAcross, pieceWeight, restraintStress, seasonalMovement, woodDensity, boardMeasure, boardTally, clearPieces, cuttingPlan, flatteningLoss, gradeYield, palletBoards, partsCost, pileSampling, pileYield, roughToDressed, topFromPile, caulCamber, clampPlan, glueQuantity, glueTiming, layerCount, matchSlabs, stackUp, stripCount, stripLayout, angledRail, biscuitSpacing, halfLap, jointFit, mitreGap, mitredEnd, screwHold, splayedCorner, splineSlot, squareness, beam, rackingFrame, railSpan, tipping, topSag, filmBuild, finishQuantity, gritSequence, nailHoles, shellacCut, stainTrials, thinToSolids, thinnedVoc, thinningRatio, chamfer, chipVolume, cutterMarks, planingTime, bill, prepTime, passage, heightsForPeople } from './catalogue.js';

/** Names of timbers and of groups of timbers. */
export type TimberName = 'acacia spp.' | 'African ebony' | 'afrormosia' | 'afzelia' | 'ailanthus' | 'Alaska paper birch' | 'Alaska yellow-cedar' | 'albarco' | 'alder spp.' | 'allegheny chinkapin' | 'allegheny plum' | 'alligator juniper' | 'alpine ash' | 'American basswood' | 'American beech' | 'American chestnut' | 'American elm' | 'American holly' | 'American hornbeam, musclewood' | 'American mangrove' | 'American mountain-ash' | 'American plum' | 'American sycamore' | 'anacua knockaway' | 'andiroba' | 'angelin' | 'angelique' | 'apache pine' | 'apple' | 'apple spp.' | 'arizona alder' | 'arizona cypress' | 'arizona madrone' | 'arizona pine' | 'arizona pinyon pine' | 'arizona sycamore' | 'arizona walnut' | 'arizona white oak' | 'ash spp.' | 'ashe juniper' | 'Atlantic white-cedar' | 'Australian cypress' | 'austrian pine' | 'avodire' | 'azobe' | 'baker or Modoc cypress' | 'balata' | 'balau' | 'baldcypress' | 'baldcypress spp.' | 'balsa' | 'balsam fir' | 'balsam poplar' | 'balsam willow' | 'banak' | 'bangkirai' | 'basswood spp.' | 'bay spp.' | 'bebb willow' | 'beeftree, longleaf blolly' | 'beefwood' | 'belah' | 'belian' | 'benge' | 'bigcone Douglas-fir' | 'bigleaf magnolia' | 'bigleaf maple' | 'bigtooth aspen' | 'bigtooth maple' | 'birch spp.' | 'bishop pine' | 'bitter cherry' | 'bitternut hickory' | 'black ash' | 'black cherry' | 'black cottonwood' | 'black hickory' | 'black locust' | 'black mangrove' | 'black maple' | 'black morrel' | 'black mulberry' | 'black oak' | 'black spruce' | 'black walnut' | 'black willow' | 'blackbead ebony' | 'blackbutt' | 'blackgum' | 'blackjack oak' | 'blue ash' | 'blue oak' | 'blue spruce' | 'bluejack oak' | 'bluewood' | 'bonpland willow' | 'border pinyon' | 'boxelder' | 'brainerd\'s hawthorn' | 'Brazilian rosewood' | 'brewer spruce' | 'broadleaf hawthorn' | 'brush box' | 'bubinga' | 'buckeye, horsechestnut spp.' | 'bur oak' | 'butterbough, inkwood' | 'butternut' | 'buttonwood-mangrove' | 'cabbage palmetto' | 'California black oak' | 'California buckeye' | 'California juniper' | 'California laurel' | 'California live oak' | 'California red fir' | 'California sycamore' | 'California torreya (nutmeg)' | 'California white oak' | 'camphortree' | 'canada plum' | 'canyon live oak' | 'Caribbean pine' | 'carolina ash' | 'carolina basswood' | 'carolina hemlock' | 'carolina silverbell' | 'carrotwood' | 'catalpa spp.' | 'catclaw acacia' | 'cativo' | 'cedar elm' | 'ceiba' | 'chalk maple' | 'cherry and plum spp.' | 'cherrybark oak' | 'chestnut oak' | 'chestnut spp.' | 'chickasaw plum' | 'chihuahuan pine' | 'chinaberry' | 'chinese chestnut' | 'chinese tallowtree' | 'chinkapin oak' | 'chisos oak' | 'chittamwood, gum bumelia' | 'chokecherry' | 'citrus spp.' | 'coastal plain willow' | 'cockspur hawthorn' | 'cocobolo' | 'coconut palm' | 'common persimmon' | 'common pinyon' | 'common serviceberry' | 'corkbark fir' | 'cottonwood and poplar spp.' | 'coulter pine' | 'courbaril' | 'Crow\'s ash' | 'cuangare' | 'cucumbertree' | 'curlleaf mountain-mahogany' | 'cypress' | 'dark red lauan' | 'dark red meranti' | 'degame' | 'delta post oak' | 'desert ironwood' | 'determa' | 'dogwood spp.' | 'Douglas-fir' | 'Douglas-fir spp.' | 'downy hawthorn' | 'drooping juniper' | 'Dundas blackbutt' | 'durand oak' | 'dwarf chinkapin oak' | 'dwarf live oak' | 'dwarf post oak' | 'East Indian ebony' | 'eastern cottonwood' | 'eastern hemlock' | 'eastern hophornbeam' | 'eastern redbud' | 'eastern redcedar' | 'eastern white pine' | 'ekop' | 'elm spp.' | 'emory oak' | 'Engelmann oak' | 'Engelmann spruce' | 'eucalyptus spp.' | 'European alder' | 'European ash' | 'European beech' | 'European birch' | 'European cherry' | 'European elm' | 'European larch' | 'European lime' | 'European maple' | 'European mountain-ash' | 'European oak' | 'European plum' | 'European poplar' | 'European spruce' | 'European sycamore' | 'European walnut' | 'European willow' | 'European-grown Douglas fir' | 'everglades palm, paurotis-palm' | 'false mastic' | 'false tamarind' | 'fanleaf hawthorn' | 'fir spp.' | 'fireberry hawthorn' | 'fishpoison tree' | 'florida fiddlewood' | 'florida maple' | 'florida poisontree' | 'florida silver palm' | 'florida strangler fig' | 'florida thatch palm' | 'florida torreya (nutmeg)' | 'florida yew' | 'flowering dogwood' | 'four-leaf or Parry pinyon pine' | 'foxtail pine' | 'fraser fir' | 'fremont cottonwood' | 'gambel oak' | 'giant chinkapin, golden chinkapin' | 'giant sequoia' | 'ginkgo, maidenhair tree' | 'goncalo alves' | 'grand fir' | 'gray birch' | 'gray oak' | 'gray or California foothill pine' | 'gray sheoak' | 'great Basin bristlecone pine' | 'great leucaene' | 'green ash' | 'greenheart' | 'grey box' | 'grey gum' | 'grey ironbark' | 'gumbo limbo' | 'Gympie messmate' | 'hackberry' | 'hackberry spp.' | 'hawthorn spp.' | 'heart pine' | 'hemlock spp.' | 'hickory spp.' | 'honduras pine' | 'honey mesquite' | 'honeylocust' | 'honeylocust spp.' | 'hoop pine' | 'hura' | 'ilomba' | 'incense-cedar' | 'Indian rosewood' | 'interior live oak' | 'interior north Douglas-fir' | 'interior south Douglas-fir' | 'interior west Douglas-fir' | 'ipe' | 'iroko' | 'jack pine' | 'japanese larch' | 'jarrah' | 'java plum' | 'Jeffrey pine' | 'jelutong' | 'joshua tree' | 'kaneelhart' | 'kapur' | 'karri' | 'kempas' | 'kentucky coffeetree' | 'keruing' | 'key thatch palm' | 'khaya' | 'knobcone pine' | 'larch spp.' | 'largeleaf geigertree' | 'laurel oak' | 'light red lauan' | 'light red meranti' | 'limba' | 'limber pine' | 'little silverbell' | 'live oak' | 'loblolly pine' | 'loblolly-bay' | 'lodgepole pine' | 'lombardy poplar' | 'longleaf pine' | 'low-rainfall eucalypts' | 'macawood' | 'macNab\'s cypress' | 'madrone spp.' | 'magnolia spp.' | 'mahaleb cherry' | 'makore' | 'manbarklak' | 'manchineel' | 'mango' | 'manni' | 'maple spp.' | 'marishballi' | 'melaleuca' | 'meranti' | 'merbau' | 'mersawa' | 'mesquite' | 'mesquite spp.' | 'messmate' | 'mexican blue oak' | 'mexican palmetto' | 'mexican pinyon pine' | 'mimosa, silktree' | 'mockernut hickory' | 'monterey cypress' | 'montezuma baldcypress' | 'mora' | 'mountain ash' | 'mountain hemlock' | 'mountain maple' | 'mountain or Fraser magnolia' | 'mountain-ash spp.' | 'muhuhu' | 'mulberry spp.' | 'myrtle beech' | 'narrow-leaved red ironbark' | 'narrowleaf cottonwood' | 'netleaf hackberry' | 'netleaf oak' | 'new Mexico locust' | 'New Zealand radiata pine' | 'niangon' | 'noble fir' | 'Nordic pine and spruce' | 'northern California black walnut' | 'northern catalpa' | 'northern mountain-ash' | 'northern pin oak' | 'northern red oak' | 'northern white-cedar' | 'northwestern paper birch' | 'norway maple' | 'nutmeg hickory' | 'nuttall oak' | 'oak spp.' | 'obeche' | 'ocote pine' | 'octopus tree, schefflera' | 'ogeechee tupelo' | 'oglethorpe oak' | 'ohio buckeye' | 'okoume' | 'oneseed hawthorn' | 'oneseed juniper' | 'opepe' | 'Oregon ash' | 'Oregon crab apple' | 'Oregon white oak' | 'Osage-orange' | 'other or unknown live tree' | 'other palms' | 'ovangkol' | 'overcup oak' | 'ozark chinkapin' | 'Pacific dogwood' | 'Pacific madrone' | 'Pacific silver fir' | 'Pacific willow' | 'Pacific yew' | 'padauk' | 'painted buckeye' | 'paper birch' | 'papershell pinyon pine' | 'paradisetree' | 'Parana pine' | 'pau marfim' | 'paulownia, empress-tree' | 'pawpaw' | 'peach' | 'peachleaf willow' | 'pear hawthorn' | 'pecan' | 'persimmon spp.' | 'pignut hickory' | 'pin cherry' | 'pin oak' | 'pinchot juniper' | 'pine spp.' | 'pitch pine' | 'plains cottonwood' | 'pond pine' | 'pond-apple' | 'pondcypress' | 'ponderosa pine' | 'Port-Orford-cedar' | 'post oak' | 'prairie crab apple' | 'primavera' | 'pumpkin ash' | 'purpleheart' | 'pyramid magnolia' | 'quaking aspen' | 'radiata pine' | 'ramin' | 'red alder' | 'red bloodwood' | 'red buckeye' | 'red hickory' | 'red mahogany' | 'red maple' | 'red meranti' | 'red mulberry' | 'red pine' | 'red spruce' | 'red stopper' | 'redbay' | 'redberry juniper' | 'redcedar/juniper spp.' | 'redwood' | 'resin birch' | 'river birch' | 'river redgum' | 'rock elm' | 'rocky Mountain bristlecone pine' | 'rocky Mountain juniper' | 'rocky Mountain maple' | 'rose gum' | 'roundleaf serviceberry' | 'royal palm spp.' | 'rubberwood' | 'russian-olive' | 'saltcedar' | 'sand hickory' | 'sand pine' | 'Santa Lucia or bristlecone fir' | 'Santa Maria' | 'Santos mahogany' | 'sapele' | 'sargent\'s cypress' | 'sassafras' | 'scarlet hawthorn' | 'scarlet oak' | 'Scots pine' | 'scouler\'s willow' | 'screwbean mesquite' | 'scrub hickory' | 'scrub oak' | 'sea torchwood' | 'sepetir' | 'september elm' | 'serviceberry spp.' | 'shagbark hickory' | 'shasta red fir' | 'shellbark hickory' | 'sheoak spp.' | 'shingle oak' | 'shortleaf pine' | 'shumard oak' | 'siberian elm' | 'siberian larch' | 'silver fir' | 'silver maple' | 'silver poplar' | 'silverbell spp.' | 'silverleaf oak' | 'silvertop ash' | 'singleleaf pinyon' | 'sipo' | 'Sitka spruce' | 'slash pine' | 'slippery elm' | 'smoketree' | 'soldierwood' | 'sour cherry' | 'sourwood' | 'southern California black walnut' | 'southern catalpa' | 'southern crab apple' | 'southern magnolia' | 'southern red oak' | 'southern redcedar' | 'southern shagbark hickory' | 'southern yellow pine' | 'southwestern white pine' | 'Spanish-cedar' | 'spotted gum' | 'spruce pine' | 'spruce spp.' | 'striped maple' | 'subalpine fir' | 'subalpine larch' | 'sucupira (Bowdichia)' | 'sucupira (Diplotropis)' | 'sugar maple' | 'sugar pine' | 'sugarberry' | 'swamp chestnut oak' | 'swamp cottonwood' | 'swamp tupelo' | 'swamp white oak' | 'swampmahogany' | 'sweet acacia' | 'sweet birch' | 'sweet chestnut' | 'sweet crab apple' | 'sweetbay' | 'sweetgum' | 'sycamore spp.' | 'table Mountain pine' | 'tallowwood' | 'tamarack' | 'tamarind' | 'tanoak' | 'Tasmanian bluegum' | 'teak' | 'tecate cypress' | 'texas ash' | 'texas buckeye' | 'texas madrone' | 'texas mulberry' | 'texas persimmon' | 'texas sophora' | 'texas walnut' | 'thuja spp.' | 'tietongue, pigeon-plum' | 'tornillo' | 'torrey pine' | 'torreya (nutmeg) spp.' | 'true hickory' | 'true mahogany' | 'tungoil tree' | 'tupelo spp.' | 'turkey oak' | 'two-wing silverbell' | 'umbrella magnolia' | 'unknown dead conifer' | 'unknown dead hardwood' | 'utah juniper' | 'velvet ash' | 'velvet mesquite' | 'Virginia pine' | 'Virginia roundleaf birch' | 'wallaba' | 'walnut spp.' | 'washoe pine' | 'water birch' | 'water hickory' | 'water oak' | 'water tupelo' | 'water-elm, planertree' | 'water, laurel and willow oak' | 'waterlocust' | 'weeping willow' | 'wenge' | 'west Indian mahogany' | 'western hemlock' | 'western juniper' | 'western larch' | 'western redcedar' | 'western soapberry' | 'western white pine' | 'white alder' | 'white ash' | 'white basswood' | 'white bully, willow bustic' | 'white fir' | 'white lauan' | 'white mangrove' | 'white meranti' | 'white mulberry' | 'white oak' | 'white spruce' | 'white willow' | 'white-cedar spp.' | 'whitebark pine' | 'wild banyantree, shortleaf fig' | 'willow oak' | 'willow spp.' | 'winged elm' | 'yellow balau' | 'yellow birch' | 'yellow buckeye' | 'yellow meranti' | 'yellow-poplar' | 'yellowwood' | 'yew spp.' | 'young-growth redwood' | 'unknown hardwood' | 'unknown softwood' | 'unknown timber' | 'birches' | 'cherries' | 'eucalypts' | 'elms' | 'pines' | 'walnuts' | 'oaks' | 'ashes' | 'firs' | 'poplars' | 'maples' | 'hickories' | 'spruces' | 'larches';
/** Names of structural grades. */
export type GradeName = 'C14' | 'C16' | 'C18' | 'C20' | 'C22' | 'C24' | 'C27' | 'C30' | 'C35' | 'C40' | 'D30' | 'D40' | 'D50' | 'D60' | 'MGP10' | 'MGP12' | 'MGP15' | 'F5' | 'F7' | 'F8' | 'F11' | 'F14' | 'F17' | 'F27' | 'MGP10 (working stress)' | 'MGP12 (working stress)' | 'MGP15 (working stress)' | 'Hem-Fir No.2 2x-4x' | 'Hem-Fir No.2 Beams & Stringers' | 'Hem-Fir No.2 Posts & Timbers';
/** Places whose outdoor moisture is tabled. */
export type ClimateName = 'Phoenix, AZ' | 'Los Angeles, CA' | 'Denver, CO' | 'Washington, DC' | 'Miami, FL' | 'Chicago, IL' | 'New Orleans, LA' | 'Portland, ME' | 'Boston, MA' | 'Minneapolis-St. Paul, MN' | 'Portland, OR' | 'Seattle-Tacoma, WA' | 'Cheyenne, WY' | 'London, United Kingdom' | 'Paris, France' | 'Amsterdam, Netherlands' | 'Prague, Czechia' | 'Rome, Italy' | 'Barcelona, Spain' | 'Lisbon, Portugal' | 'Athens, Greece';

/** What {@link cupDepth} takes. Depth of the cup of a flat-sawn board when its moisture changes, because wood moves more along the rings than across them, and which face goes hollow. For narrow strips cut from it the depth falls with the square of the width. */
export interface CupDepthInput {
  /**
   * width of the board.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 200 mm
   */
  readonly width: Written<'length'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof cupDepth)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * ring radius.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly ringRadius: Written<'length'>;
  /**
   * starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 14 %
   */
  readonly from: InputOf<(typeof cupDepth)['inputs']['from']>;
  /**
   * final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof cupDepth)['inputs']['to']>;
}
/** What {@link cupDepth} gives, beside workings, cautions, sources and chart. */
export interface CupDepthOutput {
  /**
   * depth of cup.
   */
  readonly cup: Quantity<'length'>;
  /**
   * which face goes hollow.
   */
  readonly side: string;
  /**
   * strain along the rings.
   */
  readonly strainTangential: Quantity<'share'>;
  /**
   * strain across the rings.
   */
  readonly strainRadial: Quantity<'share'>;
}

/** What {@link equilibriumMoisture} takes. The moisture content that wood comes to when it stays in air of one temperature and relative humidity, by the sorption equation of the Wood Handbook. */
export interface EquilibriumMoistureInput {
  /**
   * temperature of the air.
   * Takes a temperature such as "21 degC", at least -40 °C and at most 120 °C.
   * @example 21 degC
   */
  readonly temperature: Written<'temperature'>;
  /**
   * relative humidity.
   * Takes a relative humidity such as "50 %", at least 0 % and at most 100 %.
   * @example 50 %
   */
  readonly humidity: Written<'humidity'>;
}
/** What {@link equilibriumMoisture} gives, beside workings, cautions, sources and chart. */
export interface EquilibriumMoistureOutput {
  /**
   * moisture content.
   */
  readonly moisture: Quantity<'moisture'>;
}

/** What {@link fixingSlots} takes. Travel and slot length at each fixing across a solid top: the top is held along one line, and a fixing travels in proportion to its distance from it. Calculate from the driest to the wettest state it will see. */
export interface FixingSlotsInput {
  /**
   * width of top.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * positions.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 100 m.
   * @example ["60 mm","320 mm","580 mm"]
   */
  readonly positions?: InputOf<(typeof fixingSlots)['inputs']['positions']>;
  /**
   * spacing.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly spacing?: Written<'length'>;
  /**
   * edge distance.
   * Takes a length such as "30 mm", at least 0 mm and at most 1000 mm.
   * @default 30 mm
   */
  readonly edgeDistance?: Written<'length'>;
  /**
   * held at.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof fixingSlots)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
  /**
   * movement.
   * Takes a length such as "900 mm", at least -1000 mm and at most 1000 mm.
   */
  readonly movement?: Written<'length'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof fixingSlots)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * cut.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof fixingSlots)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from?: InputOf<(typeof fixingSlots)['inputs']['from']>;
  /**
   * final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 13 %
   */
  readonly to?: InputOf<(typeof fixingSlots)['inputs']['to']>;
  /**
   * slots for.
   * Takes one of "middle", "most".
   * @default middle
   */
  readonly allowFor?: 'middle' | 'most';
  /**
   * fastener diameter.
   * Takes a length such as "5 mm", more than 0 mm and at most 100 mm.
   * @default 5 mm
   * @example 5 mm
   */
  readonly fastenerDiameter?: Written<'length'>;
  /**
   * spare.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   */
  readonly margin?: Written<'length'>;
}
/** What {@link fixingSlots} gives, beside workings, cautions, sources and chart. */
export interface FixingSlotsOutput {
  /**
   * movement.
   */
  readonly movement: Quantity<'length'>;
  /**
   * longest slot.
   */
  readonly longest: Quantity<'length'>;
  /**
   * Fixings across the top.
   */
  readonly slots: ShownOf<(typeof fixingSlots)['outputs']['slots']>;
}

/** What {@link humidityFor} takes. The relative humidity at which wood rests at a given moisture content: the sorption equation solved the other way round. */
export interface HumidityForInput {
  /**
   * temperature of the air.
   * Takes a temperature such as "21 degC", at least -40 °C and at most 120 °C.
   * @example 20 degC
   */
  readonly temperature: Written<'temperature'>;
  /**
   * moisture content to hold.
   * Takes a moisture content such as "8 %", at least 0 % and at most 40 %.
   * @example 9 %
   */
  readonly moisture: Written<'moisture'>;
}
/** What {@link humidityFor} gives, beside workings, cautions, sources and chart. */
export interface HumidityForOutput {
  /**
   * relative humidity.
   */
  readonly humidity: Quantity<'humidity'>;
}

/** What {@link meterCorrection} takes. The moisture behind the reading of a resistance meter when the wood is colder or warmer than the meter is set for. Apply the maker's correction for the species as well. */
export interface MeterCorrectionInput {
  /**
   * what the meter shows.
   * Takes a moisture content such as "8 %", at least 0 % and at most 120 %.
   * @example 12 %
   */
  readonly reading: Written<'moisture'>;
  /**
   * wood temperature.
   * Takes a temperature such as "21 degC", at least -30 °C and at most 90 °C.
   * @example 9.9 degC
   */
  readonly woodTemperature: Written<'temperature'>;
  /**
   * meter setting.
   * Takes a temperature such as "21.1 degC", at least -10 °C and at most 60 °C.
   * @default 21.1 degC
   */
  readonly calibrationTemperature?: Written<'temperature'>;
}
/** What {@link meterCorrection} gives, beside workings, cautions, sources and chart. */
export interface MeterCorrectionOutput {
  /**
   * moisture content.
   */
  readonly moisture: Quantity<'moisture'>;
  /**
   * correction.
   */
  readonly correction: Quantity<'moisture'>;
}

/** What {@link moistureByWeight} takes. The moisture content of a sample from its mass now and its mass dried in an oven; and the mass it will have at a moisture you wait for. */
export interface MoistureByWeightInput {
  /**
   * mass of sample.
   * Takes a mass such as "12 kg", more than 0 g and at most 10 000 kg.
   * @example 136 g
   */
  readonly wetMass: Written<'mass'>;
  /**
   * oven-dry mass.
   * Takes a mass such as "12 kg", more than 0 g and at most 10 000 kg.
   * @example 100 g
   */
  readonly ovenDryMass: Written<'mass'>;
  /**
   * moisture to wait for.
   * Takes a moisture content such as "8 %", at least 0 % and at most 300 %.
   * @example 10 %
   */
  readonly target?: Written<'moisture'>;
}
/** What {@link moistureByWeight} gives, beside workings, cautions, sources and chart. */
export interface MoistureByWeightOutput {
  /**
   * moisture content.
   */
  readonly moisture: Quantity<'moisture'>;
  /**
   * water in the sample.
   */
  readonly water: Quantity<'mass'>;
  /**
   * target mass.
   */
  readonly targetMass?: Quantity<'mass'> | undefined;
}

/** What {@link movementAcross} takes. How much a board or a top of strips widens or narrows when its moisture changes: by published coefficients within 6 to 14 % moisture, by shrinkage from green outside. Positive means wider. */
export interface MovementAcrossInput {
  /**
   * starting width.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 900 mm
   */
  readonly width?: Written<'length'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example red oak
   */
  readonly timber?: Exclude<InputOf<(typeof movementAcross)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * cut.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   * @example flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof movementAcross)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * starting moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from: InputOf<(typeof movementAcross)['inputs']['from']>;
  /**
   * final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly to: InputOf<(typeof movementAcross)['inputs']['to']>;
  /**
   * strips.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns timber, width, cut?, count?.
   */
  readonly strips?: InputOf<(typeof movementAcross)['inputs']['strips']>;
  /**
   * coefficient.
   * Takes a number such as 1.5, more than 0 and at most 0.02.
   */
  readonly coefficient?: Written<'ratio'>;
  /**
   * shrinkage.
   * Takes a share such as "15 %", more than 0 % and at most 40 %.
   */
  readonly shrinkage?: Written<'share'>;
  /**
   * fibre saturation.
   * Takes a moisture content such as "30 %", at least 15 % and at most 45 %.
   * @default 30 %
   */
  readonly fibreSaturation?: Written<'moisture'>;
  /**
   * method.
   * Takes one of "timber", "softwood lumber", "EN 336".
   * @default timber
   */
  readonly rule?: 'timber' | 'softwood lumber' | 'EN 336';
  /**
   * size of lumber.
   * Takes one of "width", "thickness".
   * @default width
   */
  readonly face?: 'width' | 'thickness';
  /**
   * held at.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof movementAcross)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
}
/** What {@link movementAcross} gives, beside workings, cautions, sources and chart. */
export interface MovementAcrossOutput {
  /**
   * change of width.
   */
  readonly change: Quantity<'length'>;
  /**
   * final width.
   */
  readonly finalWidth: Quantity<'length'>;
  /**
   * edge movement.
   */
  readonly perSide: Quantity<'length'>;
  /**
   * change, low.
   */
  readonly low: Quantity<'length'>;
  /**
   * change, high.
   */
  readonly high: Quantity<'length'>;
  /**
   * coefficient.
   */
  readonly coefficient?: number | undefined;
  /**
   * starting moisture content.
   */
  readonly fromMoisture: Quantity<'moisture'>;
  /**
   * final moisture content.
   */
  readonly toMoisture: Quantity<'moisture'>;
  /**
   * which rule was used.
   */
  readonly ruleUsed: string;
  /**
   * Strip by strip.
   */
  readonly stripChanges?: ShownOf<(typeof movementAcross)['outputs']['stripChanges']> | undefined;
}

/** What {@link pieceWeight} takes. The mass of a board, a pile of boards alike or a glued top, from its size or volume, its timber and its moisture. */
export interface PieceWeightInput {
  /**
   * dimensions.
   * Takes length x width x thickness such as "1950 x 640 x 40 mm", or { length, width, thickness }.
   * @example 1950 x 640 x 40 mm
   */
  readonly dimensions?: InputOf<(typeof pieceWeight)['inputs']['dimensions']>;
  /**
   * length.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly length?: Written<'length'>;
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly width?: Written<'length'>;
  /**
   * thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly thickness?: Written<'length'>;
  /**
   * volume.
   * Takes a volume such as "0.02 m3", more than 0 m³ and at most 1000 m³.
   */
  readonly volume?: Written<'volume'>;
  /**
   * pieces alike.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   */
  readonly count?: Written<'count'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example unknown hardwood
   */
  readonly timber: Exclude<InputOf<(typeof pieceWeight)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * moisture content.
   * Takes a moisture content such as "12 %", at least 0 % and at most 300 %.
   * @default 12 %
   * @example 12 %
   */
  readonly moisture?: Written<'moisture'>;
}
/** What {@link pieceWeight} gives, beside workings, cautions, sources and chart. */
export interface PieceWeightOutput {
  /**
   * mass.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * volume.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * density at this moisture.
   */
  readonly density: Quantity<'density'>;
  /**
   * mass, low.
   */
  readonly low?: Quantity<'mass'> | undefined;
  /**
   * mass, high.
   */
  readonly high?: Quantity<'mass'> | undefined;
}

/** What {@link restraintStress} takes. Strain and stress across the grain of a top held hard along its width while its moisture changes, against the strength of the timber: why a top splits when it is screwed down tight. An estimate that leaves creep out. */
export interface RestraintStressInput {
  /**
   * width across the grain.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof restraintStress)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * cut.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof restraintStress)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * moisture when fixed.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly from: InputOf<(typeof restraintStress)['inputs']['from']>;
  /**
   * final moisture content.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof restraintStress)['inputs']['to']>;
}
/** What {@link restraintStress} gives, beside workings, cautions, sources and chart. */
export interface RestraintStressOutput {
  /**
   * prevented movement.
   */
  readonly strain: Quantity<'share'>;
  /**
   * stress across the grain.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * stress at failure.
   */
  readonly strength: Quantity<'stress'>;
  /**
   * share of that strength.
   */
  readonly used: Quantity<'share'>;
  /**
   * type of stress.
   */
  readonly sense: string;
  /**
   * verdict.
   */
  readonly verdict: string;
}

/** What {@link seasonalMovement} takes. Width of a board or top month by month, from twelve months of air: wood follows the air by diffusion across its thickness, slowed by its finish. Give the air of the room it will stand in; the table of places is outdoor air under cover. */
export interface SeasonalMovementInput {
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof seasonalMovement)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * cut.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof seasonalMovement)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * climate.
   * Takes a place such as "Seattle-Tacoma, WA", or the humidity of the room in winter and in summer such as "winter 35 %, summer 65 %" (a hygrometer left in the room for a week of each season tells it), or twelve months of your own: a list of moistures ("9 %"), or a table or CSV with columns month?, and temperature and humidity, or moisture.
   * @example winter 45 %, summer 70 %
   */
  readonly climate: Exclude<InputOf<(typeof seasonalMovement)['inputs']['climate']>, string> | ClimateName | (string & {});
  /**
   * sealing.
   * Takes one of "bare", "oiled", "one face", "varnished".
   * @default bare
   * @example oiled
   */
  readonly sealing?: 'bare' | 'oiled' | 'one face' | 'varnished';
  /**
   * lag.
   * Takes a time such as "15 min", at least 0 s and at most 1 000 000 day.
   */
  readonly lag?: Written<'time'>;
  /**
   * moisture when made.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   */
  readonly madeAt?: InputOf<(typeof seasonalMovement)['inputs']['madeAt']>;
}
/** What {@link seasonalMovement} gives, beside workings, cautions, sources and chart. */
export interface SeasonalMovementOutput {
  /**
   * greatest width.
   */
  readonly widest: Quantity<'length'>;
  /**
   * least width.
   */
  readonly narrowest: Quantity<'length'>;
  /**
   * difference between the two.
   */
  readonly swing: Quantity<'length'>;
  /**
   * swing, low.
   */
  readonly swingLow: Quantity<'length'>;
  /**
   * swing, high.
   */
  readonly swingHigh: Quantity<'length'>;
  /**
   * widest month.
   */
  readonly widestIn: string;
  /**
   * narrowest month.
   */
  readonly narrowestIn: string;
  /**
   * least moisture.
   */
  readonly driest: Quantity<'moisture'>;
  /**
   * greatest moisture.
   */
  readonly wettest: Quantity<'moisture'>;
  /**
   * lag.
   * Shown in day.
   */
  readonly timeConstant: Quantity<'time'>;
  /**
   * Month by month.
   */
  readonly months: ShownOf<(typeof seasonalMovement)['outputs']['months']>;
}

/** What {@link woodDensity} takes. Density of wood with its water in, and its specific gravity on the volume it has at that moisture, from a species or from a specific gravity. */
export interface WoodDensityInput {
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof woodDensity)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * specific gravity.
   * Takes a number such as 1.5, at least 0.02 and at most 1.55.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * volume basis.
   * Takes one of "at this moisture", "green", "ovendry".
   * @default at this moisture
   */
  readonly gravityBasis?: 'at this moisture' | 'green' | 'ovendry';
  /**
   * volume shrinkage.
   * Takes a share such as "15 %", at least 0 % and at most 40 %.
   */
  readonly volumetricShrinkage?: Written<'share'>;
  /**
   * moisture content.
   * Takes a moisture content such as "12 %", at least 0 % and at most 300 %.
   * @default 12 %
   * @example 12 %
   */
  readonly moisture?: Written<'moisture'>;
}
/** What {@link woodDensity} gives, beside workings, cautions, sources and chart. */
export interface WoodDensityOutput {
  /**
   * density.
   */
  readonly density: Quantity<'density'>;
  /**
   * specific gravity.
   */
  readonly specificGravity: number;
  /**
   * density, low.
   */
  readonly low?: Quantity<'density'> | undefined;
  /**
   * density, high.
   */
  readonly high?: Quantity<'density'> | undefined;
  /**
   * volume of one tonne.
   */
  readonly volumePerTonne: Quantity<'volume'>;
}

/** What {@link boardMeasure} takes. How much timber a stack of equal boards holds, in board feet, super feet, cubic metres and running metres, and what a price comes to by each. Not for round logs. */
export interface BoardMeasureInput {
  /**
   * length of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 m.
   * @example 8 ft
   */
  readonly length: Written<'length'>;
  /**
   * width of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 6 in
   */
  readonly width: Written<'length'>;
  /**
   * thickness of a piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 2 in
   */
  readonly thickness: Written<'length'>;
  /**
   * pieces of this size.
   * Takes a whole number such as 1, at least 1 and at most 1 000 000.
   * @default 1
   * @example 12
   */
  readonly count?: Written<'count'>;
  /**
   * price.
   * Takes a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   * @example $4.50/bf
   */
  readonly price?: InputOf<(typeof boardMeasure)['inputs']['price']>;
}
/** What {@link boardMeasure} gives, beside workings, cautions, sources and chart. */
export interface BoardMeasureOutput {
  /**
   * board feet.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * super feet.
   */
  readonly superFeet: Quantity<'superFeet'>;
  /**
   * volume of all pieces.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * total length.
   */
  readonly linealLength: Quantity<'length'>;
  /**
   * face area.
   */
  readonly surface: Quantity<'area'>;
  /**
   * price of all pieces.
   */
  readonly price?: Quantity<'money'> | undefined;
  /**
   * price by board foot.
   * Shown in money/bf.
   */
  readonly pricePerBoardFoot?: Quantity<'pricePerVolume'> | undefined;
  /**
   * price by cubic metre.
   * Shown in money/m3.
   */
  readonly pricePerCubicMetre?: Quantity<'pricePerVolume'> | undefined;
  /**
   * price by running metre.
   * Shown in money/m.
   */
  readonly pricePerMetre?: Quantity<'pricePerLength'> | undefined;
  /**
   * price of a piece.
   */
  readonly pricePerPiece?: Quantity<'money'> | undefined;
}

/** What {@link boardTally} takes. Board feet of many boards as a yard counts them, by the hardwood rule of surface measure or the softwood rule of nominal sizes, beside what their sizes hold. */
export interface BoardTallyInput {
  /**
   * boards.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns width, length, thickness, count?.
   * @example [{"width":"6 1/4 in","length":"8 ft","thickness":"2 in"},{"width":"10 in","length":"13 ft","thickness":"1 in","count":2},{"width":"6 in","length":"9 ft","thickness":"5/4 in","count":4}]
   */
  readonly boards: InputOf<(typeof boardTally)['inputs']['boards']>;
  /**
   * tally rule.
   * Takes one of "hardwood", "softwood".
   * @default hardwood
   */
  readonly rule?: 'hardwood' | 'softwood';
}
/** What {@link boardTally} gives, beside workings, cautions, sources and chart. */
export interface BoardTallyOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * board feet.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * surface measure.
   */
  readonly surfaceMeasure?: number | undefined;
  /**
   * boards.
   */
  readonly boards: number;
  /**
   * exact board feet.
   */
  readonly bySize: Quantity<'boardFeet'>;
  /**
   * difference.
   */
  readonly difference: Quantity<'share'>;
  /**
   * Tally.
   */
  readonly rows: ShownOf<(typeof boardTally)['outputs']['rows']>;
}

/** What {@link clearPieces} takes. Which clear parts to cut from which boards with faults at known places, so that the boards cut are as short as can be in all, with a proven bound beside it. For parts of the boards’ own section. */
export interface ClearPiecesInput {
  /**
   * boards.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, tone?, endLoss?, endLeft?, endRight?, faultsAt?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"A","length":"2.4 m","width":"95 mm","thickness":"45 mm","faultsAt":"800-860; 1700-1730 mm","count":2},{"name":"B","length":"1.9 m","width":"95 mm","thickness":"45 mm","endLeft":"40 mm","faultsAt":"990-1030 mm"}]
   */
  readonly boards: InputOf<(typeof clearPieces)['inputs']['boards']>;
  /**
   * parts.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?.
   * @example [{"name":"rail","length":"780 mm","count":3},{"name":"brace","length":"420 mm","count":4}]
   */
  readonly parts: InputOf<(typeof clearPieces)['inputs']['parts']>;
  /**
   * saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * longest to search.
   * Takes a time such as "20 s", at least 0.05 s and at most 30 min.
   * @default 20 s
   */
  readonly timeLimit?: Written<'time'>;
}
/** What {@link clearPieces} gives, beside workings, cautions, sources and chart. */
export interface ClearPiecesOutput {
  /**
   * boards cut.
   */
  readonly boardsCut: number;
  /**
   * board length.
   * Shown in m.
   */
  readonly boardLength: Quantity<'length'>;
  /**
   * no plan cuts less.
   * Shown in m.
   */
  readonly lowerBound: Quantity<'length'>;
  /**
   * proved best.
   */
  readonly optimal: boolean;
  /**
   * missing length.
   * Shown in m.
   */
  readonly missingLength: Quantity<'length'>;
  /**
   * Cuts, board by board.
   */
  readonly plan: ShownOf<(typeof clearPieces)['outputs']['plan']>;
  /**
   * Missing parts.
   */
  readonly missing?: ShownOf<(typeof clearPieces)['outputs']['missing']> | undefined;
}

/** What {@link cuttingPlan} takes. Which parts to cut from which boards so that the fewest boards, the least stock or the least cost results, with a proven bound beside it. For straight crosscuts of clear stock; dock faults first. */
export interface CuttingPlanInput {
  /**
   * parts.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?, width?, thickness?.
   * @example [{"name":"leg","length":"860 mm","count":4},{"name":"long rail","length":"1780 mm","count":2},{"name":"short rail","length":"520 mm","count":4},{"name":"brace","length":"690 mm","count":4}]
   */
  readonly parts: InputOf<(typeof cuttingPlan)['inputs']['parts']>;
  /**
   * stock.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?, cost?, width?, thickness?.
   * @example [{"name":"batten, long","length":"2700 mm","count":4},{"name":"batten, short","length":"2100 mm","count":6}]
   */
  readonly stock: InputOf<(typeof cuttingPlan)['inputs']['stock']>;
  /**
   * saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * trim, each end.
   * Takes a length such as "0 mm", at least 0 mm and at most 5000 mm.
   * @default 0 mm
   * @example 15 mm
   */
  readonly trimEachEnd?: Written<'length'>;
  /**
   * least offcut worth keeping.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 300 mm
   */
  readonly keepOffcut?: Written<'length'>;
  /**
   * minimise.
   * Takes one of "boards", "length", "cost".
   */
  readonly aim?: 'boards' | 'length' | 'cost';
  /**
   * longest to search.
   * Takes a time such as "20 s", at least 0.05 s and at most 2 h.
   * @default 20 s
   */
  readonly timeLimit?: Written<'time'>;
}
/** What {@link cuttingPlan} gives, beside workings, cautions, sources and chart. */
export interface CuttingPlanOutput {
  /**
   * boards cut.
   */
  readonly boardsUsed: number;
  /**
   * waste share.
   */
  readonly waste: Quantity<'share'>;
  /**
   * what the plan takes.
   */
  readonly achieved: ShownOf<(typeof cuttingPlan)['outputs']['achieved']>;
  /**
   * lower bound.
   */
  readonly lowerBound: ShownOf<(typeof cuttingPlan)['outputs']['lowerBound']>;
  /**
   * proved.
   */
  readonly optimal: boolean;
  /**
   * length cut.
   * Shown in m.
   */
  readonly stockLength: Quantity<'length'>;
  /**
   * length of the parts.
   * Shown in m.
   */
  readonly partsLength: Quantity<'length'>;
  /**
   * wasted length.
   * Shown in m.
   */
  readonly wasteLength: Quantity<'length'>;
  /**
   * offcuts kept.
   * Shown in m.
   */
  readonly kept?: Quantity<'length'> | undefined;
  /**
   * cost.
   */
  readonly totalCost?: Quantity<'money'> | undefined;
  /**
   * Boards and cuts.
   */
  readonly plan: ShownOf<(typeof cuttingPlan)['outputs']['plan']>;
  /**
   * Boards used.
   */
  readonly stockUsed: ShownOf<(typeof cuttingPlan)['outputs']['stockUsed']>;
  /**
   * Missing parts.
   */
  readonly missing?: ShownOf<(typeof cuttingPlan)['outputs']['missing']> | undefined;
  /**
   * boards to add.
   */
  readonly boardsShort?: number | undefined;
}

/** What {@link flatteningLoss} takes. How thin a cupped, bowed or twisted board gets by planing it flat, and what ripping or crosscutting it first saves. Not for kinks, nor for a bend along the edge. */
export interface FlatteningLossInput {
  /**
   * rough thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 22 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * width as found.
   * Takes a length such as "900 mm", more than 0 mm and at most 3000 mm.
   * @example 142 mm
   */
  readonly width: Written<'length'>;
  /**
   * length as found.
   * Takes a length such as "900 mm", more than 0 mm and at most 30 m.
   * @example 1.93 m
   */
  readonly length: Written<'length'>;
  /**
   * cup.
   * Takes a length such as "0 mm", at least 0 mm and at most 300 mm.
   * @default 0 mm
   * @example 2.5 mm
   */
  readonly cup?: Written<'length'>;
  /**
   * bow.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 4 mm
   */
  readonly bow?: Written<'length'>;
  /**
   * twist.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 3 mm
   */
  readonly twist?: Written<'length'>;
  /**
   * rip cuts.
   * Takes a whole number such as 0, at least 0 and at most 100.
   * @default 0
   * @example 1
   */
  readonly rips?: Written<'count'>;
  /**
   * crosscuts.
   * Takes a whole number such as 0, at least 0 and at most 100.
   * @default 0
   * @example 1
   */
  readonly crosscuts?: Written<'count'>;
  /**
   * saw kerf.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * clean-up.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link flatteningLoss} gives, beside workings, cautions, sources and chart. */
export interface FlatteningLossOutput {
  /**
   * flattened thickness.
   */
  readonly dressedThickness: Quantity<'length'>;
  /**
   * thickness lost.
   */
  readonly loss: Quantity<'length'>;
  /**
   * piece width.
   */
  readonly pieceWidth: Quantity<'length'>;
  /**
   * piece length.
   */
  readonly pieceLength: Quantity<'length'>;
  /**
   * Loss by cause.
   */
  readonly byCause: ShownOf<(typeof flatteningLoss)['outputs']['byCause']>;
}

/** What {@link gradeYield} takes. How much clear wood a hardwood grade promises in a board, as cutting units and as an area, and in how many pieces at most. Not for softwood or strength grades. */
export interface GradeYieldInput {
  /**
   * grade of the board.
   * Takes one of "FAS", "F1F", "Selects", "No.1 Common", "No.2A Common", "No.2B Common", "No.3A Common", "No.3B Common".
   * @example No.1 Common
   */
  readonly grade: 'FAS' | 'F1F' | 'Selects' | 'No.1 Common' | 'No.2A Common' | 'No.2B Common' | 'No.3A Common' | 'No.3B Common';
  /**
   * surface measure.
   * Takes a whole number such as 4, at least 1 and at most 200.
   */
  readonly surfaceMeasure?: Written<'count'>;
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 7 in
   */
  readonly width?: Written<'length'>;
  /**
   * length.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 8 ft
   */
  readonly length?: Written<'length'>;
}
/** What {@link gradeYield} gives, beside workings, cautions, sources and chart. */
export interface GradeYieldOutput {
  /**
   * clear units needed.
   */
  readonly clearUnits: number;
  /**
   * their area.
   */
  readonly area: Quantity<'area'>;
  /**
   * clear share.
   */
  readonly yield: Quantity<'share'>;
  /**
   * surface measure.
   */
  readonly surfaceMeasure: number;
  /**
   * units in face.
   */
  readonly totalUnits: number;
  /**
   * most cuttings.
   */
  readonly cuttings?: number | undefined;
  /**
   * units, extra cutting.
   */
  readonly unitsWithExtraCut?: number | undefined;
  /**
   * least cutting.
   */
  readonly leastCutting: string;
  /**
   * least board.
   */
  readonly leastBoard: string;
  /**
   * face that decides.
   */
  readonly face: string;
}

/** What {@link palletBoards} takes. What a kind of pallet gives: boards with their nails pulled or sawn between the bearers, clear lengths, area and weight, pallets for a need, and what its treatment mark allows. */
export interface PalletBoardsInput {
  /**
   * kind of pallet.
   * Takes one of "48 x 40 pallet", "FIN pallet".
   * @example 48 x 40 pallet
   */
  readonly kind: '48 x 40 pallet' | 'FIN pallet';
  /**
   * treatment mark.
   * Takes one of "HT", "DH", "MB", "SF", "none", "stained".
   * @example HT
   */
  readonly mark: 'HT' | 'DH' | 'MB' | 'SF' | 'none' | 'stained';
  /**
   * thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 60 mm.
   */
  readonly thickness?: Written<'length'>;
  /**
   * bearers under a board.
   * Takes a whole number such as 3, at least 2 and at most 5.
   * @default 3
   */
  readonly bearers?: Written<'count'>;
  /**
   * width of a bearer.
   * Takes a length such as "38 mm", more than 0 mm and at most 200 mm.
   * @default 38 mm
   */
  readonly bearerWidth?: Written<'length'>;
  /**
   * split end.
   * Takes a length such as "40 mm", at least 0 mm and at most 300 mm.
   * @default 40 mm
   */
  readonly splitEnd?: Written<'length'>;
  /**
   * boards broken.
   * Takes a share such as "20 %", at least 0 % and at most 95 %.
   * @default 20 %
   */
  readonly broken?: Written<'share'>;
  /**
   * loss per cut.
   * Takes a length such as "5 mm", at least 0 mm and at most 50 mm.
   * @default 5 mm
   */
  readonly cutLoss?: Written<'length'>;
  /**
   * density of the boards.
   * Takes a density such as "450 kg/m3", more than 0 kg/m³ and at most 1500 kg/m³.
   * @default 450 kg/m3
   */
  readonly density?: Written<'density'>;
  /**
   * area of boards needed.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 1000 m².
   * @example 3 m2
   */
  readonly need?: Written<'area'>;
}
/** What {@link palletBoards} gives, beside workings, cautions, sources and chart. */
export interface PalletBoardsOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * what the mark allows.
   */
  readonly allowed: string;
  /**
   * boards of a pallet.
   */
  readonly boards: number;
  /**
   * clear length, nails pulled.
   */
  readonly pulledLength: Quantity<'length'>;
  /**
   * area, pulled.
   */
  readonly pulledArea: Quantity<'area'>;
  /**
   * length, sawn.
   */
  readonly sawnLength: Quantity<'length'>;
  /**
   * area, sawn.
   */
  readonly sawnArea: Quantity<'area'>;
  /**
   * mass of boards.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * pallets, pulled.
   */
  readonly pallets?: number | undefined;
  /**
   * pallets, sawn.
   */
  readonly palletsSawn?: number | undefined;
  /**
   * Survey.
   */
  readonly survey: ShownOf<(typeof palletBoards)['outputs']['survey']>;
}

/** What {@link partsCost} takes. What the timber of a list of parts costs, from one price or a price for each material, with waste added. Glue, finish and time are not in it. */
export interface PartsCostInput {
  /**
   * parts.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name, count?, length, width?, thickness?, material?, price?.
   * @example [{"name":"rail","count":2,"length":"1.8 m","width":"70 mm","thickness":"34 mm"},{"name":"leg","count":4,"length":"860 mm","width":"70 mm","thickness":"34 mm"},{"name":"brace","count":2,"length":"720 mm","width":"45 mm","thickness":"20 mm"}]
   */
  readonly parts: InputOf<(typeof partsCost)['inputs']['parts']>;
  /**
   * price.
   * Takes a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   * @example €680/m3
   */
  readonly price?: InputOf<(typeof partsCost)['inputs']['price']>;
  /**
   * price of each material.
   * Takes named parts such as { oil: ... }, each a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   */
  readonly prices?: InputOf<(typeof partsCost)['inputs']['prices']>;
  /**
   * waste.
   * Takes a share such as "15 %", at least 0 % and at most 1000 %, or one of "softwood scantlings", "square-edge hardwood", "waney-edge boards", "very wasteful logs", "plywood", "veneers".
   * @default 0 %
   * @example square-edge hardwood
   */
  readonly waste?: Exclude<InputOf<(typeof partsCost)['inputs']['waste']>, string> | 'softwood scantlings' | 'square-edge hardwood' | 'waney-edge boards' | 'very wasteful logs' | 'plywood' | 'veneers' | (string & {});
}
/** What {@link partsCost} gives, beside workings, cautions, sources and chart. */
export interface PartsCostOutput {
  /**
   * cost of all parts.
   */
  readonly total: Quantity<'money'>;
  /**
   * cost, low waste.
   */
  readonly low?: Quantity<'money'> | undefined;
  /**
   * net cost.
   */
  readonly netCost: Quantity<'money'>;
  /**
   * added for waste.
   */
  readonly waste: Quantity<'share'>;
  /**
   * net volume.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * volume to buy.
   */
  readonly volumeToBuy: Quantity<'volume'>;
  /**
   * By part, waste included.
   */
  readonly byPart: ShownOf<(typeof partsCost)['outputs']['byPart']>;
}

/** What {@link pileSampling} takes. How many more pallets or boards to take apart for what is still needed, judged by a few already done. For pieces like those sampled; not for a pile sorted best first. */
export interface PileSamplingInput {
  /**
   * sample.
   * Takes two or more amounts of one kind, such as '1.6 m, 1.4 m, 1.7 m' or ['0.8 m2', '0.9 m2'].
   * @example ["1.62 m","1.48 m","1.71 m","1.33 m","1.57 m","1.66 m"]
   */
  readonly sample: InputOf<(typeof pileSampling)['inputs']['sample']>;
  /**
   * still needed.
   * Takes an amount of the sample's kind and more than nothing, such as '14 m' or '6 m2'.
   * @example 14 m
   */
  readonly needed: InputOf<(typeof pileSampling)['inputs']['needed']>;
  /**
   * confidence.
   * Takes a share such as "90 %", at least 50 % and at most 99.9 %.
   * @default 90 %
   * @example 90 %
   */
  readonly confidence?: Written<'share'>;
}
/** What {@link pileSampling} gives, beside workings, cautions, sources and chart. */
export interface PileSamplingOutput {
  /**
   * pieces to break down.
   */
  readonly piecesToPull: number;
  /**
   * pieces, low.
   */
  readonly low: number;
  /**
   * pieces, high.
   */
  readonly high: number;
  /**
   * pieces, mean.
   */
  readonly expected: number;
  /**
   * mean yield.
   */
  readonly meanYield: ShownOf<(typeof pileSampling)['outputs']['meanYield']>;
  /**
   * spread of yields.
   */
  readonly spread: ShownOf<(typeof pileSampling)['outputs']['spread']>;
  /**
   * yield, low.
   */
  readonly yieldLow: ShownOf<(typeof pileSampling)['outputs']['yieldLow']>;
  /**
   * yield, high.
   */
  readonly yieldHigh: ShownOf<(typeof pileSampling)['outputs']['yieldHigh']>;
}

/** What {@link pileYield} takes. What a surveyed pile of salvaged boards gives as dressed stock of one thickness: length, area, volume, pieces and yield, and the thickness at which the yield peaks. For where to cut, use the cutting plan. */
export interface PileYieldInput {
  /**
   * boards.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, endLoss?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"R1","group":"rafter","count":3,"length":"2310 mm","width":"97 mm","thickness":"47 mm","endLoss":"110 mm","faultLength":"140 mm","faults":2,"cup":"1 mm","bow":"5 mm"},{"name":"R2","group":"rafter","count":4,"length":"1870 mm","width":"98 mm","thickness":"47 mm","endLoss":"120 mm","faultLength":"80 mm","cup":"0.5 mm","bow":"3 mm"},{"name":"F1","group":"floorboard","count":5,"length":"1620 mm","width":"142 mm","thickness":"22 mm","endLoss":"65 mm","faultLength":"120 mm","faults":2,"cup":"1.5 mm","bow":"2 mm"},{"name":"F2","group":"floorboard","count":1,"length":"1340 mm","width":"138 mm","thickness":"19 mm","endLoss":"75 mm","faultLength":"55 mm","cup":"3.5 mm","bow":"3 mm"}]
   */
  readonly boards: InputOf<(typeof pileYield)['inputs']['boards']>;
  /**
   * planing allowance.
   * Takes a length such as "1 mm", at least 0 mm and at most 20 mm.
   * @default 1 mm
   * @example 1 mm
   */
  readonly plane?: Written<'length'>;
  /**
   * saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * target.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm, or an object with thickness? (common thickness wanted), width? (strip width), length? (length of a piece).
   * @example {"width":"42 mm"}
   */
  readonly target?: InputOf<(typeof pileYield)['inputs']['target']>;
  /**
   * resaw.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly resaw?: boolean | 'yes' | 'no';
}
/** What {@link pileYield} gives, beside workings, cautions, sources and chart. */
export interface PileYieldOutput {
  /**
   * common thickness.
   */
  readonly commonThickness: Quantity<'length'>;
  /**
   * yield.
   */
  readonly yield: Quantity<'share'>;
  /**
   * dressed pieces.
   */
  readonly pieces: number;
  /**
   * usable length.
   * Shown in m.
   */
  readonly usableLength: Quantity<'length'>;
  /**
   * area.
   */
  readonly area: Quantity<'area'>;
  /**
   * dressed volume.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * rough volume.
   */
  readonly roughVolume: Quantity<'volume'>;
  /**
   * boards left out.
   */
  readonly boardsLeftOut: number;
  /**
   * best thickness.
   */
  readonly peakThickness: Quantity<'length'>;
  /**
   * yield at that thickness.
   */
  readonly peakYield: Quantity<'share'>;
  /**
   * By group.
   */
  readonly byGroup: ShownOf<(typeof pileYield)['outputs']['byGroup']>;
  /**
   * By thickness.
   */
  readonly byThickness: ShownOf<(typeof pileYield)['outputs']['byThickness']>;
}

/** What {@link roughToDressed} takes. The dressed size a rough board gives, or the rough size to buy for a wanted one, by planing allowances; and the standard dressed size of nominal softwood. For bent boards calculate the flattening loss first. */
export interface RoughToDressedInput {
  /**
   * rough size.
   * Takes an object with thickness (thickness), width (width), length? (length).
   * @example {"thickness":"47 mm","width":"97 mm","length":"1870 mm"}
   */
  readonly rough?: InputOf<(typeof roughToDressed)['inputs']['rough']>;
  /**
   * dressed size.
   * Takes an object with thickness (thickness), width (width), length? (length).
   */
  readonly dressed?: InputOf<(typeof roughToDressed)['inputs']['dressed']>;
  /**
   * nominal size.
   * Takes a text of 1 to 200 characters.
   */
  readonly nominal?: string;
  /**
   * surfacing.
   * Takes one of "S1S", "S2S", "S1E", "S2E", "S1S1E", "S2S1E", "S1S2E", "S4S".
   * @default S4S
   * @example S4S
   */
  readonly faces?: 'S1S' | 'S2S' | 'S1E' | 'S2E' | 'S1S1E' | 'S2S1E' | 'S1S2E' | 'S4S';
  /**
   * planing allowances.
   * Takes an object with face? (taken off each face), edge? (taken off each edge), end? (docked from each end).
   * @default {}
   */
  readonly allowances?: InputOf<(typeof roughToDressed)['inputs']['allowances']>;
}
/** What {@link roughToDressed} gives, beside workings, cautions, sources and chart. */
export interface RoughToDressedOutput {
  /**
   * rough thickness.
   */
  readonly roughThickness?: Quantity<'length'> | undefined;
  /**
   * rough width.
   */
  readonly roughWidth?: Quantity<'length'> | undefined;
  /**
   * rough length.
   */
  readonly roughLength?: Quantity<'length'> | undefined;
  /**
   * dressed thickness.
   */
  readonly dressedThickness: Quantity<'length'>;
  /**
   * dressed width.
   */
  readonly dressedWidth: Quantity<'length'>;
  /**
   * dressed length.
   */
  readonly dressedLength?: Quantity<'length'> | undefined;
  /**
   * thickness if dressed green.
   */
  readonly greenThickness?: Quantity<'length'> | undefined;
  /**
   * width if dressed green.
   */
  readonly greenWidth?: Quantity<'length'> | undefined;
  /**
   * planed away.
   */
  readonly planedAway: Quantity<'share'>;
}

/** What {@link topFromPile} takes. Whether a surveyed pile is enough for a glued top, how thick it can be, and which board goes where, with a proof or the gap to one, and what small changes to pile or rules would free. */
export interface TopFromPileInput {
  /**
   * boards.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, tone?, endLoss?, endLeft?, endRight?, faultsAt?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"R1","length":"2.48 m","width":"98 mm","thickness":"48 mm","endLeft":"60 mm","endRight":"70 mm","faultsAt":"1120-1210 mm","count":3},{"name":"R3","length":"2.31 m","width":"97 mm","thickness":"47 mm","endLeft":"50 mm","endRight":"60 mm","count":3},{"name":"R7","length":"1.87 m","width":"98 mm","thickness":"47 mm","endLeft":"60 mm","endRight":"60 mm","bow":"2 mm","count":4},{"name":"R9","length":"1.64 m","width":"97 mm","thickness":"47 mm","endLeft":"40 mm","endRight":"45 mm","count":3}]
   */
  readonly boards: InputOf<(typeof topFromPile)['inputs']['boards']>;
  /**
   * length of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1.95 m
   */
  readonly topLength: Written<'length'>;
  /**
   * width of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * thickness.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness?: Written<'length'>;
  /**
   * lay.
   * Takes one of "flat", "on edge", "either".
   * @default either
   */
  readonly lay?: 'flat' | 'on edge' | 'either';
  /**
   * layers.
   * Takes a whole number such as 1, at least 1 and at most 4.
   * @default 1
   */
  readonly layers?: Written<'count'>;
  /**
   * squaring allowance.
   * Takes a length such as "40 mm", at least 0 mm and at most 500 mm.
   * @default 40 mm
   */
  readonly spare?: Written<'length'>;
  /**
   * planed off each face.
   * Takes a length such as "1 mm", at least 0 mm and at most 20 mm.
   * @default 1 mm
   */
  readonly plane?: Written<'length'>;
  /**
   * jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * slab jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly slabJointing?: Written<'length'>;
  /**
   * saw kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * thicknesser width.
   * Takes a length such as "300 mm", more than 0 mm and at most 5000 mm.
   * @default 300 mm
   */
  readonly widestSlab?: Written<'length'>;
  /**
   * clamp opening.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly clampReach?: Written<'length'>;
  /**
   * least row width.
   * Takes a length such as "20 mm", at least 0 mm and at most 1000 mm.
   * @default 20 mm
   */
  readonly leastRow?: Written<'length'>;
  /**
   * least piece.
   * Takes a length such as "250 mm", at least 20 mm and at most 5000 mm.
   * @default 250 mm
   */
  readonly leastPiece?: Written<'length'>;
  /**
   * stagger.
   * Takes a length such as "150 mm", at least 0 mm and at most 5000 mm.
   * @default 150 mm
   */
  readonly stagger?: Written<'length'>;
  /**
   * joints per row.
   * Takes a whole number such as 3, at least 0 and at most 20.
   * @default 3
   */
  readonly maxJoints?: Written<'count'>;
  /**
   * rip flat boards.
   * Takes one of "no", "yes".
   * @default no
   */
  readonly rip?: 'no' | 'yes';
  /**
   * tones.
   * Takes one of "mixed", "apart".
   * @default mixed
   */
  readonly tones?: 'mixed' | 'apart';
  /**
   * faces that show.
   * Takes one of "one", "both".
   * @default both
   */
  readonly showFaces?: 'one' | 'both';
  /**
   * least offcut.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   */
  readonly leastOffcut?: Written<'length'>;
  /**
   * curves.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly curves?: boolean | 'yes' | 'no';
  /**
   * what-ifs.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly whatIfs?: boolean | 'yes' | 'no';
  /**
   * rounds.
   * Takes a whole number such as 4, at least 1 and at most 1 000 000 000.
   * @example 300
   */
  readonly rounds?: Written<'count'>;
  /**
   * time limit.
   * Takes a time such as "60 s", at least 0.05 s and at most 30 min.
   * @default 60 s
   */
  readonly timeLimit?: Written<'time'>;
  /**
   * seed of the search.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link topFromPile} gives, beside workings, cautions, sources and chart. */
export interface TopFromPileOutput {
  /**
   * is the pile enough?.
   */
  readonly verdict: string;
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * thickness of the top.
   */
  readonly thickness: Quantity<'length'>;
  /**
   * width found.
   */
  readonly foundWidth: Quantity<'length'>;
  /**
   * width bound.
   */
  readonly widthBound: Quantity<'length'>;
  /**
   * thickness bound.
   */
  readonly thicknessBound?: Quantity<'length'> | undefined;
  /**
   * how it is proved.
   */
  readonly proof: string;
  /**
   * search done in full.
   */
  readonly complete: boolean;
  /**
   * how the strips lie.
   */
  readonly lay: string;
  /**
   * rows.
   */
  readonly rowCount: number;
  /**
   * boards cut.
   */
  readonly boardsCut: number;
  /**
   * timber used.
   */
  readonly timber: Quantity<'volume'>;
  /**
   * timber bound.
   */
  readonly timberBound?: Quantity<'volume'> | undefined;
  /**
   * edge trim.
   */
  readonly surplus?: Quantity<'length'> | undefined;
  /**
   * what is missing.
   */
  readonly missing?: string | undefined;
  /**
   * least stagger.
   */
  readonly worstStagger?: Quantity<'length'> | undefined;
  /**
   * least layer stagger.
   */
  readonly layerStagger?: Quantity<'length'> | undefined;
  /**
   * jointless width.
   */
  readonly bendingShare: Quantity<'share'>;
  /**
   * bending thickness.
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
   * Stops and fences.
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

/** What {@link caulCamber} takes. How much crown to plane on a caul so that, clamped at its ends, it presses evenly along its whole length. */
export interface CaulCamberInput {
  /**
   * length.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 640 mm
   */
  readonly length: Written<'length'>;
  /**
   * width.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 45 mm
   */
  readonly width: Written<'length'>;
  /**
   * depth.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 60 mm
   */
  readonly depth: Written<'length'>;
  /**
   * timber.
   * Takes a grade such as "C24" or "MGP10", or a timber by name such as "Douglas-fir".
   * @example C24
   */
  readonly timber: Exclude<InputOf<(typeof caulCamber)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * examined.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * clamp force.
   * Takes a force such as "2 kN", more than 0 N and at most 50 kN.
   * @example 2 kN
   */
  readonly clampForceEach: Written<'force'>;
}
/** What {@link caulCamber} gives, beside workings, cautions, sources and chart. */
export interface CaulCamberOutput {
  /**
   * camber.
   */
  readonly camber: Quantity<'length'>;
  /**
   * bending stress.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * strong enough.
   */
  readonly ok: boolean;
  /**
   * allowed stress.
   */
  readonly allowed?: Quantity<'stress'> | undefined;
  /**
   * camber, stiff timber.
   */
  readonly camberLow?: Quantity<'length'> | undefined;
  /**
   * camber, flexible timber.
   */
  readonly camberHigh?: Quantity<'length'> | undefined;
  /**
   * press along the caul.
   */
  readonly press: Quantity<'lineLoad'>;
  /**
   * Planing one half.
   */
  readonly marks: ShownOf<(typeof caulCamber)['outputs']['marks']>;
}

/** What {@link clampPlan} takes. How many clamps a glue-up takes, by force and by spacing, and where each stands, alternately below and above. */
export interface ClampPlanInput {
  /**
   * length of the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 2 m
   */
  readonly length: Written<'length'>;
  /**
   * joint height.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * pressure.
   * Takes a pressure such as "700 kPa", more than 0 kPa and at most 10 MPa.
   */
  readonly pressure?: Written<'pressure'>;
  /**
   * kind of timber.
   * Takes one of "softwood", "hardwood", "low-density", "high-density", "softwood polyurethane", "hardwood polyurethane".
   * @example softwood
   */
  readonly timberKind?: 'softwood' | 'hardwood' | 'low-density' | 'high-density' | 'softwood polyurethane' | 'hardwood polyurethane';
  /**
   * clamp.
   * Takes one of "parallel-jaw clamp", "one-hand trigger bar clamp", "aluminium bar clamp", "3/4 in pipe clamp", "I-beam bar (sash) clamp", or a force such as "2 kN", more than 0 N and at most 100 kN.
   * @example I-beam bar (sash) clamp
   */
  readonly clampForce: Exclude<InputOf<(typeof clampPlan)['inputs']['clampForce']>, string> | 'parallel-jaw clamp' | 'one-hand trigger bar clamp' | 'aluminium bar clamp' | '3/4 in pipe clamp' | 'I-beam bar (sash) clamp' | (string & {});
  /**
   * edge board width.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 45 mm
   */
  readonly outerWidth: Written<'length'>;
  /**
   * pad thickness.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 20 mm
   */
  readonly pad?: Written<'length'>;
  /**
   * pad length.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 60 mm
   */
  readonly padLength?: Written<'length'>;
  /**
   * clamp head width.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   */
  readonly head?: Written<'length'>;
  /**
   * clamp reach.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 900 mm
   */
  readonly reach?: Written<'length'>;
  /**
   * reach needed.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 715 mm
   */
  readonly needReach?: Written<'length'>;
  /**
   * slab width.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 675 mm
   */
  readonly slabWidth?: Written<'length'>;
  /**
   * force offset.
   * Takes a length such as "2 mm", at least 0 mm and at most 500 mm.
   * @default 2 mm
   */
  readonly offset?: Written<'length'>;
  /**
   * modulus across grain.
   * Takes a modulus of elasticity such as "300 MPa", more than 0 MPa and at most 10 GPa.
   * @default 300 MPa
   */
  readonly acrossModulus?: Written<'modulus'>;
  /**
   * cauls.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly cauls?: boolean | 'yes' | 'no';
  /**
   * clamps owned.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns kind?, force?, count?, reach?.
   */
  readonly owned?: InputOf<(typeof clampPlan)['inputs']['owned']>;
}
/** What {@link clampPlan} gives, beside workings, cautions, sources and chart. */
export interface ClampPlanOutput {
  /**
   * clamps.
   */
  readonly clamps: number;
  /**
   * spacing.
   */
  readonly spacing: Quantity<'length'>;
  /**
   * force needed.
   */
  readonly totalForce: Quantity<'force'>;
  /**
   * what decides the count.
   */
  readonly governedBy: string;
  /**
   * clamps by force.
   */
  readonly byForce: number;
  /**
   * clamps by spacing.
   */
  readonly bySpacing: number;
  /**
   * force per clamp.
   */
  readonly forceEach: Quantity<'force'>;
  /**
   * clamping pressure taken.
   */
  readonly pressure: Quantity<'pressure'>;
  /**
   * length per clamp.
   */
  readonly coverEach: Quantity<'length'>;
  /**
   * do the clamps reach?.
   */
  readonly reachOk?: boolean | undefined;
  /**
   * lifting force.
   */
  readonly liftForce?: Quantity<'force'> | undefined;
  /**
   * buckling force.
   */
  readonly bucklingForce?: Quantity<'force'> | undefined;
  /**
   * pressure reached.
   */
  readonly ownedPressure?: Quantity<'pressure'> | undefined;
  /**
   * clamps that reach.
   */
  readonly ownedClamps?: number | undefined;
  /**
   * clamps owned.
   */
  readonly ownedVerdict?: string | undefined;
  /**
   * Clamps in order.
   */
  readonly positions: ShownOf<(typeof clampPlan)['outputs']['positions']>;
}

/** What {@link glueQuantity} takes. How much glue the joints take, by mass and by volume, from their area and the spread. */
export interface GlueQuantityInput {
  /**
   * length of a joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 2 m
   */
  readonly jointLength: Written<'length'>;
  /**
   * joint height.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * joints.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * spread.
   * Takes an application rate such as "200 g/m2", more than 0 g/m² and at most 2000 g/m².
   * @default 200 g/m2
   * @example 200 g/m2
   */
  readonly spread?: Written<'applicationRate'>;
  /**
   * spread faces.
   * Takes a whole number such as 1, at least 1 and at most 2.
   * @default 1
   */
  readonly sides?: Written<'count'>;
  /**
   * waste.
   * Takes a share such as "0 %", at least 0 % and at most 300 %.
   * @default 0 %
   * @example 10 %
   */
  readonly waste?: Written<'share'>;
  /**
   * glue density.
   * Takes a density such as "1100 kg/m3", at least 500 kg/m³ and at most 2500 kg/m³.
   * @default 1100 kg/m3
   */
  readonly glueDensity?: Written<'density'>;
}
/** What {@link glueQuantity} gives, beside workings, cautions, sources and chart. */
export interface GlueQuantityOutput {
  /**
   * glue needed.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * the same by volume.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * area to spread.
   */
  readonly area: Quantity<'area'>;
  /**
   * glue for one joint.
   */
  readonly massPerJoint: Quantity<'mass'>;
}

/** What {@link glueTiming} takes. Will the glue skin before the clamps are on? How many joints go in one batch, and how many batches it takes. */
export interface GlueTimingInput {
  /**
   * joints.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * time per joint.
   * Takes a time such as "15 min", at least 1 s and at most 2 h.
   * @example 45 s
   */
  readonly perJoint: Written<'time'>;
  /**
   * open time.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   * @example 10 min
   */
  readonly openTime: Written<'time'>;
  /**
   * closed time.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   */
  readonly closedTime?: Written<'time'>;
  /**
   * temperature.
   * Takes a temperature such as "21 degC", at least 0 °C and at most 45 °C.
   * @example 24 degC
   */
  readonly temperature?: Written<'temperature'>;
  /**
   * clamping time.
   * Takes a time such as "0 min", at least 0 s and at most 2 h.
   * @default 0 min
   * @example 2 min
   */
  readonly clampsUp?: Written<'time'>;
  /**
   * hold.
   * Takes a time such as "30 min", at least 0 s and at most 7 day.
   * @default 30 min
   * @example 40 min
   */
  readonly hold?: Written<'time'>;
}
/** What {@link glueTiming} gives, beside workings, cautions, sources and chart. */
export interface GlueTimingOutput {
  /**
   * batches.
   */
  readonly batches: number;
  /**
   * joints per batch.
   */
  readonly jointsPerBatch: number;
  /**
   * spare time.
   */
  readonly spare: Quantity<'time'>;
  /**
   * open time here.
   */
  readonly openHere: Quantity<'time'>;
  /**
   * time in all.
   */
  readonly total: Quantity<'time'>;
  /**
   * Batches.
   */
  readonly plan: ShownOf<(typeof glueTiming)['outputs']['plan']>;
}

/** What {@link layerCount} takes. How many boards to glue face to face for a thick top, and how thick to plane each so that the slab is balanced. */
export interface LayerCountInput {
  /**
   * top thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 54 mm
   */
  readonly topThickness: Written<'length'>;
  /**
   * board thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 22 mm
   */
  readonly stripThickness: Written<'length'>;
  /**
   * planing per face.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   * @example 1.5 mm
   */
  readonly planePerFace?: Written<'length'>;
  /**
   * flattening.
   * Takes a length such as "2 mm", at least 0 mm and at most 200 mm.
   * @default 2 mm
   * @example 2 mm
   */
  readonly flattenPerGlueUp?: Written<'length'>;
  /**
   * glue-ups.
   * Takes a whole number such as 1, at least 1 and at most 999.
   * @default 1
   */
  readonly glueUps?: Written<'count'>;
}
/** What {@link layerCount} gives, beside workings, cautions, sources and chart. */
export interface LayerCountOutput {
  /**
   * layers.
   */
  readonly layers: number;
  /**
   * flattened thickness.
   */
  readonly finalThickness: Quantity<'length'>;
  /**
   * spare thickness.
   */
  readonly spare: Quantity<'length'>;
  /**
   * layer, least planed.
   */
  readonly layerPlaned: Quantity<'length'>;
  /**
   * layer, all alike.
   */
  readonly layerBalanced: Quantity<'length'>;
  /**
   * middle of the slab.
   */
  readonly middle: string;
}

/** What {@link matchSlabs} takes. Plane all slabs to the thinnest, or shim them up to the thickest: both ways, with the timber lost. */
export interface MatchSlabsInput {
  /**
   * slabs.
   * Takes thicknesses such as '41 mm, 42.5 mm, 40 mm', or a table with columns name?, thickness, width?, length?.
   * @example [{"name":"left","thickness":"41.2 mm","width":"225 mm","length":"2 m"},{"name":"middle","thickness":"43.0 mm","width":"225 mm","length":"2 m"},{"name":"right","thickness":"40.6 mm","width":"225 mm","length":"2 m"}]
   */
  readonly slabs: InputOf<(typeof matchSlabs)['inputs']['slabs']>;
  /**
   * least thickness.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 38 mm
   */
  readonly minimum?: Written<'length'>;
  /**
   * clean-up.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   * @example 1 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link matchSlabs} gives, beside workings, cautions, sources and chart. */
export interface MatchSlabsOutput {
  /**
   * plane all to.
   */
  readonly planeAllTo: Quantity<'length'>;
  /**
   * planed off.
   */
  readonly loss: Quantity<'length'>;
  /**
   * share planed off.
   */
  readonly lossShare: Quantity<'share'>;
  /**
   * timber planed off.
   */
  readonly lossVolume?: Quantity<'volume'> | undefined;
  /**
   * shimmed height.
   */
  readonly shimTo: Quantity<'length'>;
  /**
   * all shims together.
   */
  readonly shimTotal: Quantity<'length'>;
  /**
   * planed off, shimmed.
   */
  readonly shimLoss: Quantity<'length'>;
  /**
   * Slab by slab.
   */
  readonly orShims: ShownOf<(typeof matchSlabs)['outputs']['orShims']>;
}

/** What {@link stackUp} takes. How far a glued-up stack may come out off its size: at worst, most likely, and the chance that it falls inside limits. */
export interface StackUpInput {
  /**
   * parts.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, nominal, plusMinus?, sd?, count?, setting?.
   * @example [{"name":"strip","nominal":"45 mm","plusMinus":"0.2 mm","setting":"0.1 mm","count":14},{"name":"edge strip","nominal":"12 mm","sd":"0.2 mm"}]
   */
  readonly parts: InputOf<(typeof stackUp)['inputs']['parts']>;
  /**
   * target.
   * Takes a length such as "900 mm", at least -100 m and at most 100 m.
   * @example 642 mm
   */
  readonly target?: Written<'length'>;
  /**
   * limits.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm, or an object with low (least), high (most).
   * @example 1 mm
   */
  readonly limits?: InputOf<(typeof stackUp)['inputs']['limits']>;
  /**
   * standard deviations.
   * Takes a number such as 2, at least 1 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * distribution.
   * Takes one of "normal", "even".
   * @default normal
   */
  readonly shape?: 'normal' | 'even';
  /**
   * share held.
   * Takes a share such as "95 %", at least 50 % and at most 99.9 %.
   * @default 95 %
   */
  readonly confidence?: Written<'share'>;
  /**
   * seed.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link stackUp} gives, beside workings, cautions, sources and chart. */
export interface StackUpOutput {
  /**
   * nominal stack.
   */
  readonly nominal: Quantity<'length'>;
  /**
   * worst case.
   */
  readonly worstCase: Quantity<'length'>;
  /**
   * likely error.
   */
  readonly rss: Quantity<'length'>;
  /**
   * interval.
   */
  readonly low: Quantity<'length'>;
  /**
   * most of that interval.
   */
  readonly high: Quantity<'length'>;
  /**
   * spread of stack.
   */
  readonly sd: Quantity<'length'>;
  /**
   * chance inside limits.
   */
  readonly chanceInside?: Quantity<'share'> | undefined;
  /**
   * chance, simulated.
   */
  readonly chanceSimulated?: Quantity<'share'> | undefined;
  /**
   * shim.
   */
  readonly shim?: Quantity<'length'> | undefined;
}

/** What {@link stripCount} takes. How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser. */
export interface StripCountInput {
  /**
   * top width.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 640 mm
   */
  readonly topWidth: Written<'length'>;
  /**
   * rough strip width.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 48 mm
   */
  readonly stripWidth: Written<'length'>;
  /**
   * jointing allowance.
   * Takes a length such as "3 mm", at least 0 mm and at most 100 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * trim.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   * @example 10 mm
   */
  readonly finalTrim?: Written<'length'>;
  /**
   * thicknesser width.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 330 mm
   */
  readonly machineWidth?: Written<'length'>;
}
/** What {@link stripCount} gives, beside workings, cautions, sources and chart. */
export interface StripCountOutput {
  /**
   * strips across the top.
   */
  readonly strips: number;
  /**
   * jointed width.
   */
  readonly stripFinished: Quantity<'length'>;
  /**
   * glued width.
   */
  readonly gluedWidth: Quantity<'length'>;
  /**
   * spare width.
   */
  readonly spare: Quantity<'length'>;
  /**
   * Slabs to glue first.
   */
  readonly slabs: ShownOf<(typeof stripCount)['outputs']['slabs']>;
}

/** What {@link stripLayout} takes. Lays a slab from random lengths: rows filled end to end, joints staggered, like tones kept apart, little wasted. */
export interface StripLayoutInput {
  /**
   * top length.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 2 m
   */
  readonly topLength: Written<'length'>;
  /**
   * rows side by side.
   * Takes a whole number such as 4, at least 1 and at most 200.
   * @example 8
   */
  readonly rows: Written<'count'>;
  /**
   * pieces.
   * Takes lengths such as '640 mm, 815 mm, 590 mm', or a table with columns name?, length, tone?, count?.
   * @example [{"name":"A","length":"940 mm","tone":"dark","count":4},{"name":"B","length":"815 mm","tone":"light","count":5},{"name":"C","length":"640 mm","tone":"dark","count":6},{"name":"D","length":"555 mm","tone":"light","count":6},{"name":"E","length":"470 mm","tone":"dark","count":6},{"name":"F","length":"390 mm","tone":"light","count":8},{"name":"G","length":"310 mm","tone":"dark","count":4}]
   */
  readonly lengths: InputOf<(typeof stripLayout)['inputs']['lengths']>;
  /**
   * stagger.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly minStagger: Written<'length'>;
  /**
   * kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * shortest piece.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   */
  readonly shortest?: Written<'length'>;
  /**
   * row width.
   * Takes a length such as "45 mm", more than 0 mm and at most 1000 mm.
   * @default 45 mm
   */
  readonly rowWidth?: Written<'length'>;
  /**
   * time limit.
   * Takes a time such as "1 s", at least 0.05 s and at most 10 min.
   * @default 1 s
   * @example 500 ms
   */
  readonly timeLimit?: Written<'time'>;
  /**
   * seed of the search.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link stripLayout} gives, beside workings, cautions, sources and chart. */
export interface StripLayoutOutput {
  /**
   * rows.
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
   * saw cuts.
   */
  readonly cutCount: number;
  /**
   * waste.
   */
  readonly waste: Quantity<'length'>;
  /**
   * least waste.
   */
  readonly leastWaste: Quantity<'length'>;
  /**
   * worst stagger.
   */
  readonly worstStagger: Quantity<'length'>;
  /**
   * like tones touching.
   */
  readonly sameTone: Quantity<'length'>;
  /**
   * left over.
   */
  readonly unused: Quantity<'length'>;
  /**
   * proved.
   */
  readonly optimal: boolean;
}

/** What {@link angledRail} takes. Slope, end cuts, length from point to point and recess outlines of a rail that rises from one upright to another, butted or let in. */
export interface AngledRailInput {
  /**
   * run.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1310 mm
   */
  readonly run: Written<'length'>;
  /**
   * rise.
   * Takes a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example 620 mm
   */
  readonly rise: Written<'length'>;
  /**
   * section.
   * Takes an object with width (thickness), depth (depth).
   * @example {"width":"35 mm","depth":"60 mm"}
   */
  readonly section: InputOf<(typeof angledRail)['inputs']['section']>;
  /**
   * housing depth.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 12 mm
   */
  readonly recessDepth?: Written<'length'>;
  /**
   * face to face.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly betweenFaces?: boolean | 'yes' | 'no';
  /**
   * upright width.
   * Takes a length such as "70 mm", more than 0 mm and at most 2000 mm.
   * @default 70 mm
   * @example 70 mm
   */
  readonly uprightWidth?: Written<'length'>;
  /**
   * scale of drawing.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link angledRail} gives, beside workings, cautions, sources and chart. */
export interface AngledRailOutput {
  /**
   * slope.
   */
  readonly angle: Quantity<'angle'>;
  /**
   * length over points.
   */
  readonly longPoint: Quantity<'length'>;
  /**
   * length inside points.
   */
  readonly shortPoint: Quantity<'length'>;
  /**
   * edge length.
   */
  readonly edgeLength: Quantity<'length'>;
  /**
   * End cuts.
   */
  readonly bevels: ShownOf<(typeof angledRail)['outputs']['bevels']>;
  /**
   * plumb height.
   */
  readonly seat: Quantity<'length'>;
  /**
   * Outline of each recess.
   */
  readonly recess?: ShownOf<(typeof angledRail)['outputs']['recess']> | undefined;
  /**
   * recess width.
   */
  readonly recessWidth?: Quantity<'length'> | undefined;
}

/** What {@link biscuitSpacing} takes. Where the biscuits of a joint go, evenly spaced, how many there are and the glued face they add. Biscuits line a joint up; in an edge joint long grain to long grain the glue holds without them. */
export interface BiscuitSpacingInput {
  /**
   * length of the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * end distance.
   * Takes a length such as "60 mm", more than 0 mm and at most 2000 mm.
   * @default 60 mm
   * @example 75 mm
   */
  readonly endDistance?: Written<'length'>;
  /**
   * greatest spacing.
   * Takes a length such as "200 mm", more than 0 mm and at most 2000 mm.
   * @default 200 mm
   * @example 225 mm
   */
  readonly spacing?: Written<'length'>;
  /**
   * size of biscuit.
   * Takes one of "0", "10", "20".
   * @default 20
   * @example 20
   */
  readonly size?: '0' | '10' | '20';
}
/** What {@link biscuitSpacing} gives, beside workings, cautions, sources and chart. */
export interface BiscuitSpacingOutput {
  /**
   * biscuits.
   */
  readonly count: number;
  /**
   * positions.
   */
  readonly positions: ShownOf<(typeof biscuitSpacing)['outputs']['positions']>;
  /**
   * spacing.
   */
  readonly spacing?: Quantity<'length'> | undefined;
  /**
   * glued area.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * slot depth.
   */
  readonly slotDepth: Quantity<'length'>;
  /**
   * length of a biscuit.
   */
  readonly biscuitLength: Quantity<'length'>;
}

/** What {@link halfLap} takes. How deep to cut a half lap, how far apart its shoulders are and at which angle, and its glued face. Both pieces of one thickness, faces flush. */
export interface HalfLapInput {
  /**
   * width of piece A.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 70 mm
   */
  readonly widthA: Written<'length'>;
  /**
   * width of piece B.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 45 mm
   */
  readonly widthB: Written<'length'>;
  /**
   * thickness of both.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 35 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * angle between the pieces.
   * Takes an angle such as "90 deg", at least 10° and at most 90°.
   * @default 90 deg
   * @example 60 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * kind of halving.
   * Takes one of "crossing", "end", "corner".
   * @default crossing
   */
  readonly at?: 'crossing' | 'end' | 'corner';
  /**
   * scale of drawing.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link halfLap} gives, beside workings, cautions, sources and chart. */
export interface HalfLapOutput {
  /**
   * depth of each half.
   */
  readonly depth: Quantity<'length'>;
  /**
   * Shoulder lines to knife.
   */
  readonly shoulders: ShownOf<(typeof halfLap)['outputs']['shoulders']>;
  /**
   * glued face.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * timber removed.
   * Shown in cm3.
   */
  readonly removed: Quantity<'volume'>;
}

/** What {@link jointFit} takes. The chance that a spline, tenon or lap goes into its slot and is not loose, when both sizes vary a little; and the size to plane to. Sizes are taken to vary normally and apart from each other. */
export interface JointFitInput {
  /**
   * slot.
   * Takes an object with size (its size), plusMinus (plus or minus).
   * @example {"size":"6.2 mm","plusMinus":"0.1 mm"}
   */
  readonly slot: InputOf<(typeof jointFit)['inputs']['slot']>;
  /**
   * part.
   * Takes an object with size (its size), plusMinus (plus or minus).
   * @example {"size":"6.15 mm","plusMinus":"0.1 mm"}
   */
  readonly part: InputOf<(typeof jointFit)['inputs']['part']>;
  /**
   * least clearance.
   * Takes a length such as "0 mm", at least -5 mm and at most 50 mm.
   * @default 0 mm
   * @example 0 mm
   */
  readonly tightest?: Written<'length'>;
  /**
   * greatest clearance.
   * Takes a length such as "0.15 mm", at least -5 mm and at most 50 mm.
   * @default 0.15 mm
   * @example 0.2 mm
   */
  readonly loosest?: Written<'length'>;
  /**
   * shared setting.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly setting?: Written<'length'>;
  /**
   * standard deviations.
   * Takes a number such as 2, at least 0.5 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * joints.
   * Takes a whole number such as 1, at least 1 and at most 10 000.
   * @default 1
   * @example 4
   */
  readonly joints?: Written<'count'>;
}
/** What {@link jointFit} gives, beside workings, cautions, sources and chart. */
export interface JointFitOutput {
  /**
   * chance of a fit.
   */
  readonly chanceFits: Quantity<'share'>;
  /**
   * chance too tight.
   */
  readonly chanceJams: Quantity<'share'>;
  /**
   * chance too loose.
   */
  readonly chanceLoose: Quantity<'share'>;
  /**
   * chance all fit.
   */
  readonly chanceAll: Quantity<'share'>;
  /**
   * tightest clearance.
   */
  readonly worstTight: Quantity<'length'>;
  /**
   * loosest clearance.
   */
  readonly worstLoose: Quantity<'length'>;
  /**
   * worst pair.
   */
  readonly worstCase: string;
  /**
   * clearance on average.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * spread of clearance.
   */
  readonly spread: Quantity<'length'>;
  /**
   * size to aim for.
   */
  readonly aim: Quantity<'length'>;
  /**
   * chance when aimed.
   */
  readonly chanceAtAim: Quantity<'share'>;
}

/** What {@link mitreGap} takes. How far a mitre gapes, and on which side, from an error of the saw’s tilt, of the fence, or of a board that is not flat; how much a spline pulls in; and from a trial cut how to correct the tilt. */
export interface MitreGapInput {
  /**
   * thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * length of the joint.
   * Takes a length such as "640 mm", more than 0 mm and at most 5000 mm.
   * @default 640 mm
   * @example 640 mm
   */
  readonly length?: Written<'length'>;
  /**
   * turn.
   * Takes an angle such as "90 deg", at least 10° and at most 170°.
   * @default 90 deg
   */
  readonly turn?: Written<'angle'>;
  /**
   * bevel error.
   * Takes an angle such as "0.2 deg", at least -10° and at most 10°.
   * @default 0.2 deg
   * @example 0.2 deg
   */
  readonly bevelError?: Written<'angle'>;
  /**
   * error of the fence.
   * Takes an angle such as "0 deg", at least -10° and at most 10°.
   * @default 0 deg
   */
  readonly fenceError?: Written<'angle'>;
  /**
   * out of flat.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly outOfFlat?: Written<'length'>;
  /**
   * slabs.
   * Takes a whole number such as 1, at least 1 and at most 50.
   * @default 1
   * @example 2
   */
  readonly slabs?: Written<'count'>;
  /**
   * cut variation.
   * Takes an angle such as "0.05 deg", at least 0° and at most 5°.
   * @default 0.05 deg
   */
  readonly cutVariation?: Written<'angle'>;
  /**
   * spline width.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth?: Written<'length'>;
  /**
   * spline clearance.
   * Takes a length such as "0.1 mm", at least 0 mm and at most 5 mm.
   * @default 0.1 mm
   */
  readonly splineClearance?: Written<'length'>;
  /**
   * trial gap.
   * Takes a length such as "900 mm", at least -100 mm and at most 100 mm.
   * @example 1.5 mm
   */
  readonly trialGap?: Written<'length'>;
  /**
   * trial length.
   * Takes a length such as "500 mm", more than 0 mm and at most 5000 mm.
   * @default 500 mm
   */
  readonly trialLength?: Written<'length'>;
  /**
   * acceptable gap.
   * Takes a length such as "0.15 mm", at least 0 mm and at most 5 mm.
   * @default 0.15 mm
   */
  readonly acceptable?: Written<'length'>;
}
/** What {@link mitreGap} gives, beside workings, cautions, sources and chart. */
export interface MitreGapOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * gap from the tilt.
   */
  readonly gap: Quantity<'length'>;
  /**
   * where it opens.
   */
  readonly opensAt: string;
  /**
   * fence gap.
   */
  readonly fenceGap: Quantity<'length'>;
  /**
   * worst gap.
   */
  readonly worst: Quantity<'length'>;
  /**
   * largest step.
   */
  readonly step?: Quantity<'length'> | undefined;
  /**
   * spline allowance.
   */
  readonly splineTakes?: Quantity<'length'> | undefined;
  /**
   * correction.
   */
  readonly correction?: Quantity<'angle'> | undefined;
}

/** What {@link mitredEnd} takes. The length of strip to glue up for a top with mitred ends that carry its grain down, where to cut it, and how much grain the saw takes at each fold. */
export interface MitredEndInput {
  /**
   * top length.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly topLength: Written<'length'>;
  /**
   * end height.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 900 mm
   */
  readonly endHeight: Written<'length'>;
  /**
   * thickness of the strip.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * kerf.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * inside angle.
   * Takes an angle such as "90 deg", at least 60° and at most 170°.
   * @default 90 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * ends that fold down.
   * Takes a whole number such as 2, at least 1 and at most 2.
   * @default 2
   */
  readonly ends?: Written<'count'>;
  /**
   * squaring allowance.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   */
  readonly trim?: Written<'length'>;
  /**
   * mitre allowance.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly shave?: Written<'length'>;
}
/** What {@link mitredEnd} gives, beside workings, cautions, sources and chart. */
export interface MitredEndOutput {
  /**
   * length to glue up.
   */
  readonly stripLength: Quantity<'length'>;
  /**
   * grain lost.
   */
  readonly grainBreak: Quantity<'length'>;
  /**
   * bevel of each cut.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * waste wedge.
   */
  readonly wedge: Quantity<'length'>;
  /**
   * inside length.
   */
  readonly insideLength: Quantity<'length'>;
  /**
   * Cuts.
   */
  readonly cutPositions: ShownOf<(typeof mitredEnd)['outputs']['cutPositions']>;
}

/** What {@link screwHold} takes. The pull that one or more wood screws hold by thread, steel and head, what is allowed on them, what they hold sideways, and their pilot hole. For seasoned timber; not for structural screws with figures of their own. */
export interface ScrewHoldInput {
  /**
   * timber.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example Douglas-fir
   */
  readonly timber?: Exclude<InputOf<(typeof screwHold)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * specific gravity.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * size.
   * Takes a diameter of 1 to 25 mm such as "5 mm", or a gauge from #0 to #24 such as "#8".
   * @example #8
   */
  readonly diameter: InputOf<(typeof screwHold)['inputs']['diameter']>;
  /**
   * thread length.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 42 mm
   */
  readonly penetration: Written<'length'>;
  /**
   * screws.
   * Takes a whole number such as 1, at least 1 and at most 500.
   * @default 1
   * @example 4
   */
  readonly count?: Written<'count'>;
  /**
   * grain.
   * Takes one of "side", "end".
   * @default side
   */
  readonly grain?: 'side' | 'end';
  /**
   * timber group.
   * Takes one of "I", "II", "III", "IV".
   * @example II
   */
  readonly group?: 'I' | 'II' | 'III' | 'IV';
  /**
   * hardwood.
   * Takes yes or no (true or false).
   */
  readonly hardwood?: boolean | 'yes' | 'no';
  /**
   * head-side thickness.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 19 mm
   */
  readonly boardThickness?: Written<'length'>;
  /**
   * head-side gravity.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly boardGravity?: Written<'ratio'>;
  /**
   * head diameter.
   * Takes a length such as "900 mm", more than 0 mm and at most 60 mm.
   */
  readonly headDiameter?: Written<'length'>;
  /**
   * steel of the screw.
   * Takes one of "mild steel", "brass", "hardened".
   * @default mild steel
   */
  readonly steel?: 'mild steel' | 'brass' | 'hardened';
  /**
   * steel strength.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 2000 MPa.
   */
  readonly tensile?: Written<'stress'>;
  /**
   * predrilled.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly drilled?: boolean | 'yes' | 'no';
}
/** What {@link screwHold} gives, beside workings, cautions, sources and chart. */
export interface ScrewHoldOutput {
  /**
   * breaking load.
   */
  readonly withdrawal: Quantity<'force'>;
  /**
   * allowed pull.
   */
  readonly allowable: Quantity<'force'>;
  /**
   * limited by.
   */
  readonly governedBy: string;
  /**
   * allowed sideways.
   */
  readonly lateral?: Quantity<'force'> | undefined;
  /**
   * what decides sideways.
   */
  readonly sideways: string;
  /**
   * thread, one screw.
   */
  readonly thread: Quantity<'force'>;
  /**
   * steel, one screw.
   */
  readonly steel: Quantity<'force'>;
  /**
   * head, one screw.
   */
  readonly head?: Quantity<'force'> | undefined;
  /**
   * root diameter.
   */
  readonly root: Quantity<'length'>;
  /**
   * pilot hole.
   */
  readonly pilot: Quantity<'length'>;
  /**
   * pilot hole, printed.
   */
  readonly pilotAsPrinted?: string | undefined;
  /**
   * clearance hole.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * specific gravity taken.
   */
  readonly specificGravity: number;
  /**
   * Least screw distances.
   */
  readonly distances: ShownOf<(typeof screwHold)['outputs']['distances']>;
}

/** What {@link splayedCorner} takes. Mitre and bevel for the corners of a frame, hopper or box of equal sides that slope; slope 0° is flat on the bench, 90° upright. */
export interface SplayedCornerInput {
  /**
   * number of sides.
   * Takes a whole number such as 4, at least 3 and at most 100.
   * @example 6
   */
  readonly sides: Written<'count'>;
  /**
   * slope.
   * Takes an angle such as "45 deg", at least 0° and at most 90°.
   * @example 60 deg
   */
  readonly slope: Written<'angle'>;
}
/** What {@link splayedCorner} gives, beside workings, cautions, sources and chart. */
export interface SplayedCornerOutput {
  /**
   * mitre setting.
   */
  readonly mitre: Quantity<'angle'>;
  /**
   * bevel setting.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * lean.
   */
  readonly lean: Quantity<'angle'>;
  /**
   * dihedral angle.
   */
  readonly between: Quantity<'angle'>;
}

/** What {@link splineSlot} takes. Depth of a spline’s slot cut square to a mitre face, the walls it leaves to the inside and the outside, and how deep it may be. */
export interface SplineSlotInput {
  /**
   * thickness of the pieces.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * thickness of the spline.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 mm.
   * @example 6 mm
   */
  readonly splineThickness: Written<'length'>;
  /**
   * spline width.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth: Written<'length'>;
  /**
   * slot position.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 16 mm
   */
  readonly fromInside: Written<'length'>;
  /**
   * inside angle.
   * Takes an angle such as "90 deg", at least 30° and at most 170°.
   * @default 90 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * glue space.
   * Takes a length such as "0.5 mm", at least 0 mm and at most 10 mm.
   * @default 0.5 mm
   */
  readonly glueRoom?: Written<'length'>;
  /**
   * least wall.
   * Takes a length such as "5 mm", at least 0 mm and at most 100 mm.
   * @default 5 mm
   */
  readonly leastWall?: Written<'length'>;
  /**
   * scale of drawing.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link splineSlot} gives, beside workings, cautions, sources and chart. */
export interface SplineSlotOutput {
  /**
   * slot depth.
   */
  readonly depth: Quantity<'length'>;
  /**
   * inside wall.
   */
  readonly wallInside: Quantity<'length'>;
  /**
   * outside wall.
   */
  readonly wallOutside: Quantity<'length'>;
  /**
   * walls thick enough.
   */
  readonly ok: boolean;
  /**
   * deepest slot.
   */
  readonly deepest: Quantity<'length'>;
  /**
   * mitre face.
   */
  readonly faceLength: Quantity<'length'>;
  /**
   * bevel of the mitre.
   */
  readonly bevel: Quantity<'angle'>;
}

/** What {@link squareness} takes. How far a frame or carcase is out of square from its diagonals or from one corner, which way to pull it and how far, and whether the tape’s own error hides it. Opposite sides must be equal. */
export interface SquarenessInput {
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 1200 mm
   */
  readonly width: Written<'length'>;
  /**
   * height.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 800 mm
   */
  readonly height: Written<'length'>;
  /**
   * diagonal A.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1444 mm
   */
  readonly diagonalA?: Written<'length'>;
  /**
   * diagonal B.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1440.4 mm
   */
  readonly diagonalB?: Written<'length'>;
  /**
   * lean.
   * Takes a length such as "900 mm", at least -50 m and at most 50 m.
   */
  readonly cornerOffset?: Written<'length'>;
  /**
   * tape error.
   * Takes a length such as "0.5 mm", at least 0 mm and at most 20 mm.
   * @default 0.5 mm
   */
  readonly readingError?: Written<'length'>;
}
/** What {@link squareness} gives, beside workings, cautions, sources and chart. */
export interface SquarenessOutput {
  /**
   * out of square.
   */
  readonly outOfSquare: Quantity<'angle'>;
  /**
   * out of square.
   */
  readonly outPerMetre: Quantity<'slope'>;
  /**
   * push along.
   */
  readonly move: Quantity<'length'>;
  /**
   * what to pull.
   */
  readonly pull: string;
  /**
   * pull across.
   */
  readonly shorten: Quantity<'length'>;
  /**
   * true diagonal.
   */
  readonly trueDiagonal: Quantity<'length'>;
  /**
   * diagonal A.
   */
  readonly diagonalA: Quantity<'length'>;
  /**
   * diagonal B.
   */
  readonly diagonalB: Quantity<'length'>;
  /**
   * error of measuring.
   */
  readonly readingAngle: Quantity<'slope'>;
  /**
   * measurable.
   */
  readonly sure: boolean;
  /**
   * misfit of readings.
   */
  readonly sidesDiffer?: Quantity<'length'> | undefined;
}

/** What {@link beam} takes. Reactions, shear, moment, sag and stresses of a straight beam with any supports and loads: rails, tops, shelves, brackets. A notch is checked where it is cut. Not for frames or tapered beams. */
export interface BeamInput {
  /**
   * length.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * supports.
   * Takes a list of supports such as { position: "0 mm", kind: "pinned" }; kinds are pinned, fixed and spring (with stiffness), and turning is a spring against turning.
   * @example [{"position":"150 mm"},{"position":"1600 mm"}]
   */
  readonly supports: InputOf<(typeof beam)['inputs']['supports']>;
  /**
   * what stands on it.
   * Takes a list of loads, as text ("10 kN at 500 mm", "2 kN/m from 0 mm to 600 mm", "450 N/m") or as parts: { position, force }, { load } from end to end, { from, to, load, loadTo? }, or { position, moment }.
   * @example [{"load":"450 N/m"},{"position":"1950 mm","force":"400 N"}]
   */
  readonly loads: InputOf<(typeof beam)['inputs']['loads']>;
  /**
   * its cross-section.
   * Takes width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }.
   * @example 45 x 95 mm
   */
  readonly section: InputOf<(typeof beam)['inputs']['section']>;
  /**
   * notch.
   * Takes an object with at? (position), depth (depth), side? (side), length? (length), taper? (shoulder slope).
   */
  readonly notch?: InputOf<(typeof beam)['inputs']['notch']>;
  /**
   * own weight.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * category of use.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof beam)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share that stays.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * timber.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof beam)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * grade.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof beam)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * allowed bending stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * allowed shear stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * graded by.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength ratio.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link beam} gives, beside workings, cautions, sources and chart. */
export interface BeamOutput {
  /**
   * first sag.
   */
  readonly maxDeflection: Quantity<'length'>;
  /**
   * long-term sag.
   */
  readonly longDeflection: Quantity<'length'>;
  /**
   * place of greatest sag.
   */
  readonly deflectionAt: Quantity<'length'>;
  /**
   * greatest bending moment.
   */
  readonly maxMoment: Quantity<'moment'>;
  /**
   * where that is.
   */
  readonly momentAt: Quantity<'length'>;
  /**
   * greatest shear force.
   */
  readonly maxShear: Quantity<'force'>;
  /**
   * where that is.
   */
  readonly shearAt: Quantity<'length'>;
  /**
   * steepest slope.
   */
  readonly maxSlope: Quantity<'angle'>;
  /**
   * greatest bending stress.
   */
  readonly bendingStress: Quantity<'stress'>;
  /**
   * greatest shear stress.
   */
  readonly shearStress: Quantity<'stress'>;
  /**
   * share of bending.
   */
  readonly bendingUse?: Quantity<'share'> | undefined;
  /**
   * share of shear.
   */
  readonly shearUse?: Quantity<'share'> | undefined;
  /**
   * share at the notch.
   */
  readonly notchUse?: Quantity<'share'> | undefined;
  /**
   * strong enough.
   */
  readonly verdict: string;
  /**
   * second moment.
   */
  readonly secondMoment: Quantity<'secondMoment'>;
  /**
   * section modulus.
   */
  readonly sectionModulus: Quantity<'sectionModulus'>;
  /**
   * the timber’s figures.
   */
  readonly basis: string;
  /**
   * What the supports carry.
   */
  readonly reactions: ShownOf<(typeof beam)['outputs']['reactions']>;
  /**
   * Along the beam.
   */
  readonly diagrams: ShownOf<(typeof beam)['outputs']['diagrams']>;
}

/** What {@link rackingFrame} takes. How far a frame of two legs and a rail sways when pushed along its top, what push it holds and what gives first: members, glued laps, screws or brace. An estimate to compare joints by. */
export interface RackingFrameInput {
  /**
   * rail height.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 850 mm
   */
  readonly height: Written<'length'>;
  /**
   * leg distance.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 560 mm
   */
  readonly width: Written<'length'>;
  /**
   * section.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @example 35 x 70 mm
   */
  readonly section: InputOf<(typeof rackingFrame)['inputs']['section']>;
  /**
   * rail section.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   */
  readonly rail?: InputOf<(typeof rackingFrame)['inputs']['rail']>;
  /**
   * corners.
   * Takes one of "glued half lap", "screwed half lap", "stiff", "braced".
   * @default glued half lap
   * @example glued half lap
   */
  readonly joint?: 'glued half lap' | 'screwed half lap' | 'stiff' | 'braced';
  /**
   * corner stiffness.
   * Takes a rotational stiffness such as "8 kN m/rad", more than 0 N·m/rad and at most 1 000 000 kN·m/rad.
   */
  readonly jointStiffness?: Written<'rotationalStiffness'>;
  /**
   * screws.
   * Takes a whole number such as 2, at least 1 and at most 20.
   * @default 2
   */
  readonly screws?: Written<'count'>;
  /**
   * diameter of those screws.
   * Takes a length such as "5 mm", at least 2 mm and at most 16 mm.
   * @default 5 mm
   */
  readonly screwDiameter?: Written<'length'>;
  /**
   * brace section.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @default 20 x 45 mm
   */
  readonly brace?: InputOf<(typeof rackingFrame)['inputs']['brace']>;
  /**
   * frames.
   * Takes a whole number such as 1, at least 1 and at most 20.
   * @default 1
   * @example 2
   */
  readonly frames?: Written<'count'>;
  /**
   * push along the top.
   * Takes a force such as "100 N", more than 0 N and at most 100 kN.
   * @default 100 N
   * @example 100 N
   */
  readonly push?: Written<'force'>;
  /**
   * mass.
   * Takes a mass such as "12 kg", more than 0 g and at most 5000 kg.
   * @example 44 kg
   */
  readonly mass?: Written<'mass'>;
  /**
   * large and high.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly largeTop?: boolean | 'yes' | 'no';
  /**
   * timber.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof rackingFrame)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * grade.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof rackingFrame)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * allowed bending stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * allowed shear stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * graded by.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength ratio.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link rackingFrame} gives, beside workings, cautions, sources and chart. */
export interface RackingFrameOutput {
  /**
   * verdict.
   */
  readonly verdict: string;
  /**
   * sway.
   */
  readonly sway: Quantity<'length'>;
  /**
   * push allowed.
   */
  readonly pushAllowed?: Quantity<'force'> | undefined;
  /**
   * share of strength.
   */
  readonly use?: Quantity<'share'> | undefined;
  /**
   * sway per 100 N.
   */
  readonly swayPerForce: Quantity<'length'>;
  /**
   * stiffness.
   */
  readonly stiffness: Quantity<'springRate'>;
  /**
   * stiffness of one corner.
   */
  readonly jointStiffness?: Quantity<'rotationalStiffness'> | undefined;
  /**
   * share from corners.
   */
  readonly shareOfJoints?: Quantity<'share'> | undefined;
  /**
   * test push.
   */
  readonly testForce?: Quantity<'force'> | undefined;
  /**
   * sway under that push.
   */
  readonly testSway?: Quantity<'length'> | undefined;
  /**
   * Parts.
   */
  readonly parts: ShownOf<(typeof rackingFrame)['outputs']['parts']>;
  /**
   * the timber’s figures.
   */
  readonly basis: string;
}

/** What {@link railSpan} takes. The longest span of a rail between two supports for a load spread evenly: by sag, by bending and by shear, and which of them decides. For other loads and supports use beam. */
export interface RailSpanInput {
  /**
   * section.
   * Takes width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }.
   * @example 45 x 95 mm
   */
  readonly section: InputOf<(typeof railSpan)['inputs']['section']>;
  /**
   * load.
   * Takes a load by length such as "450 N/m", more than 0 N/m and at most 1000 kN/m.
   * @example 450 N/m
   */
  readonly load: Written<'lineLoad'>;
  /**
   * sag limit.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   * @example L/300
   */
  readonly limit?: InputOf<(typeof railSpan)['inputs']['limit']>;
  /**
   * permanent load.
   * Takes a load by length such as "0 N/m", at least 0 N/m and at most 1000 kN/m.
   * @default 0 N/m
   */
  readonly permanent?: Written<'lineLoad'>;
  /**
   * own weight.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * notch.
   * Takes an object with at? (position), depth (depth), side? (side), length? (length), taper? (shoulder slope).
   */
  readonly notch?: InputOf<(typeof railSpan)['inputs']['notch']>;
  /**
   * category of use.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof railSpan)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share that stays.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * timber.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof railSpan)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * grade.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C24
   */
  readonly grade?: Exclude<InputOf<(typeof railSpan)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * allowed bending stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * allowed shear stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * graded by.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength ratio.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link railSpan} gives, beside workings, cautions, sources and chart. */
export interface RailSpanOutput {
  /**
   * longest span.
   */
  readonly span: Quantity<'length'>;
  /**
   * what decides.
   */
  readonly governedBy: string;
  /**
   * span by sag.
   */
  readonly spanByDeflection: Quantity<'length'>;
  /**
   * span by bending.
   */
  readonly spanByBending?: Quantity<'length'> | undefined;
  /**
   * span by shear.
   */
  readonly spanByShear?: Quantity<'length'> | undefined;
  /**
   * span by notch.
   */
  readonly spanByNotch?: Quantity<'length'> | undefined;
  /**
   * first sag.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * long-term sag.
   */
  readonly sag: Quantity<'length'>;
  /**
   * bending stress.
   */
  readonly bendingStress: Quantity<'stress'>;
  /**
   * shear stress.
   */
  readonly shearStress: Quantity<'stress'>;
  /**
   * the timber’s figures.
   */
  readonly basis: string;
  /**
   * Species of the group.
   */
  readonly range?: ShownOf<(typeof railSpan)['outputs']['range']> | undefined;
}

/** What {@link tipping} takes. Whether a piece of furniture stands when somebody leans on its edge or pushes it, from the masses of its parts and where its feet are. For a level floor and nothing fixed to a wall. */
export interface TippingInput {
  /**
   * parts.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, mass, position, height?.
   * @example [{"name":"top","mass":"26 kg","position":"200 mm","height":"890 mm"},{"name":"frame","mass":"18 kg","position":"240 mm","height":"450 mm"}]
   */
  readonly parts: InputOf<(typeof tipping)['inputs']['parts']>;
  /**
   * base.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 480 mm
   */
  readonly base: Written<'length'>;
  /**
   * front overhang.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 120 mm
   */
  readonly overhang?: Written<'length'>;
  /**
   * back overhang.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 40 mm
   */
  readonly backOverhang?: Written<'length'>;
  /**
   * edge load.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 400 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * push.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 60 N
   */
  readonly push?: Written<'force'>;
  /**
   * push height.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @default 900 mm
   * @example 900 mm
   */
  readonly pushHeight?: Written<'length'>;
  /**
   * safety factor.
   * Takes a number such as 1.5, at least 1 and at most 10.
   * @default 1.5
   */
  readonly factor?: Written<'ratio'>;
  /**
   * kind of furniture.
   * Takes one of "table", "bench", "low cabinet", "tall cabinet", "drawers".
   * @example table
   */
  readonly piece?: 'table' | 'bench' | 'low cabinet' | 'tall cabinet' | 'drawers';
  /**
   * top height.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly topHeight?: Written<'length'>;
  /**
   * base length.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly endBase?: Written<'length'>;
  /**
   * end overhang.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   */
  readonly endOverhang?: Written<'length'>;
  /**
   * open drawers.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   */
  readonly openReach?: Written<'length'>;
  /**
   * floor slope.
   * Takes an angle such as "1 deg", at least 0° and at most 10°.
   * @default 1 deg
   */
  readonly floorTilt?: Written<'angle'>;
}
/** What {@link tipping} gives, beside workings, cautions, sources and chart. */
export interface TippingOutput {
  /**
   * verdict.
   */
  readonly verdict: string;
  /**
   * what pushes it over.
   */
  readonly answer: string;
  /**
   * What was checked.
   */
  readonly checks?: ShownOf<(typeof tipping)['outputs']['checks']> | undefined;
  /**
   * stability margin.
   */
  readonly margin: Quantity<'length'>;
  /**
   * safety.
   */
  readonly factor?: number | undefined;
  /**
   * weaker side.
   */
  readonly worseSide: string;
  /**
   * mass of the whole.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * centre of gravity.
   */
  readonly centre: Quantity<'length'>;
  /**
   * tipping push.
   */
  readonly forceToTip: Quantity<'force'>;
  /**
   * tipping edge load.
   */
  readonly edgeLoadToTip?: Quantity<'force'> | undefined;
  /**
   * tilt angle.
   */
  readonly tilt?: Quantity<'angle'> | undefined;
}

/** What {@link topSag} takes. How far a top or shelf sags between its rails and past the last of them, and the stress in it. The load stands where it does most harm. For other supports use beam. */
export interface TopSagInput {
  /**
   * span length.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * thickness of the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * supports.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example ["200 mm","1600 mm"]
   */
  readonly supports: InputOf<(typeof topSag)['inputs']['supports']>;
  /**
   * load.
   * Takes a load by area such as "1.5 kPa", at least 0 kPa and at most 1000 kPa.
   * @example 1.5 kPa
   */
  readonly load?: Written<'areaLoad'>;
  /**
   * a published load instead.
   * Takes one of "books", "general shelf", "cabinet shelf", "dwelling floor".
   */
  readonly use?: 'books' | 'general shelf' | 'cabinet shelf' | 'dwelling floor';
  /**
   * point load.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 800 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * grain.
   * Takes one of "along", "across".
   * @default along
   */
  readonly grain?: 'along' | 'across';
  /**
   * sag limit.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   */
  readonly limit?: InputOf<(typeof topSag)['inputs']['limit']>;
  /**
   * own weight.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * category of use.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof topSag)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share that stays.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * timber.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof topSag)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * grade.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof topSag)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * allowed bending stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * allowed shear stress.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * graded by.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength ratio.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link topSag} gives, beside workings, cautions, sources and chart. */
export interface TopSagOutput {
  /**
   * long-term sag.
   */
  readonly sag: Quantity<'length'>;
  /**
   * first sag.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * sag between supports.
   */
  readonly sagBetween: Quantity<'length'>;
  /**
   * sag of overhang.
   */
  readonly sagAtEnd?: Quantity<'length'> | undefined;
  /**
   * sag allowed.
   */
  readonly allowed: Quantity<'length'>;
  /**
   * greatest bending stress.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * verdict.
   */
  readonly ok: boolean;
  /**
   * why.
   */
  readonly verdict: string;
  /**
   * the timber’s figures.
   */
  readonly basis: string;
}

/** What {@link filmBuild} takes. How thick a film a finish leaves, wet and dry, and how far a litre goes, from its solids. For film finishes; not for oils that soak in. */
export interface FilmBuildInput {
  /**
   * solids by volume.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 42 %
   */
  readonly volumeSolids: Written<'share'>;
  /**
   * coverage.
   * Takes a coverage such as "12 m2/L", at least 0.1 m²/L and at most 200 m²/L.
   * @example 12 m2/L
   */
  readonly spreadingRate?: Written<'coverage'>;
  /**
   * wet film.
   * Takes a film thickness such as "50 um", at least 1 µm and at most 10 000 µm.
   */
  readonly wetFilm?: Written<'thickness'>;
  /**
   * dry film wanted.
   * Takes a film thickness such as "50 um", at least 0.1 µm and at most 50 000 µm.
   */
  readonly targetFilm?: Written<'thickness'>;
  /**
   * number of like coats.
   * Takes a whole number such as 1, at least 1 and at most 100.
   * @default 1
   * @example 3
   */
  readonly coats?: Written<'count'>;
}
/** What {@link filmBuild} gives, beside workings, cautions, sources and chart. */
export interface FilmBuildOutput {
  /**
   * wet film.
   */
  readonly wetFilm: Quantity<'thickness'>;
  /**
   * dry film.
   */
  readonly dryFilm: Quantity<'thickness'>;
  /**
   * coverage.
   */
  readonly coverage: Quantity<'coverage'>;
  /**
   * dry film per coat.
   */
  readonly dryPerCoat: Quantity<'thickness'>;
  /**
   * finish per square metre.
   */
  readonly perArea: Quantity<'liquid'>;
}

/** What {@link finishQuantity} takes. How much finish a job takes, coat by coat, and how many tins to buy: from areas or from the dimensions of the pieces. Not for filling grain or for poured coats. */
export interface FinishQuantityInput {
  /**
   * surfaces.
   * Takes an object with length (length of the piece), width (width of the piece), thickness (thickness of the piece), faces? (which faces are coated), count? (how many such pieces), or a list, each an area such as "1.2 m2", more than 0 mm² and at most 100 000 m², or an object with length (length of the piece), width (width of the piece), thickness (thickness of the piece), faces? (which faces are coated), count? (how many such pieces).
   * @example {"length":"1.95 m","width":"640 mm","thickness":"42 mm"}
   */
  readonly surfaces: InputOf<(typeof finishQuantity)['inputs']['surfaces']>;
  /**
   * number of coats.
   * Takes a whole number such as 4, at least 1 and at most 50.
   * @example 3
   */
  readonly coats: Written<'count'>;
  /**
   * coverage.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 12 m2/L
   */
  readonly coverage: Written<'coverage'>;
  /**
   * coverage, first coat.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 8 m2/L
   */
  readonly firstCoverage?: Written<'coverage'>;
  /**
   * loss in application.
   * Takes a share such as "15 %", at least 0 % and at most 95 %.
   */
  readonly loss?: Written<'share'>;
  /**
   * method.
   * Takes one of "brush or roller", "HVLP spray", "airless spray", "air-assisted airless spray", "cup gun spray".
   * @example brush or roller
   */
  readonly method?: 'brush or roller' | 'HVLP spray' | 'airless spray' | 'air-assisted airless spray' | 'cup gun spray';
  /**
   * parts of thinner.
   * Takes a number such as 0, at least 0 and at most 20.
   * @default 0
   */
  readonly thinnerParts?: Written<'ratio'>;
  /**
   * thinner, first coat.
   * Takes a number such as 1.5, at least 0 and at most 20.
   * @example 0.5
   */
  readonly firstThinnerParts?: Written<'ratio'>;
  /**
   * what a tin holds.
   * Takes an amount of liquid such as "1 L", at least 10 mL and at most 1000 L.
   * @default 1 L
   * @example 500 mL
   */
  readonly tinSize?: Written<'liquid'>;
  /**
   * time per coat.
   * Takes a time such as "30 min", at least 0 s and at most 7 day.
   * @default 30 min
   * @example 30 min
   */
  readonly coatTime?: Written<'time'>;
  /**
   * drying time.
   * Takes a time such as "15 min", more than 0 s and at most 60 day.
   * @example 12 h
   */
  readonly dryTime?: Written<'time'>;
  /**
   * kind of finish.
   * Takes a text of 1 to 200 characters.
   * @example oil varnish
   */
  readonly finish?: string;
}
/** What {@link finishQuantity} gives, beside workings, cautions, sources and chart. */
export interface FinishQuantityOutput {
  /**
   * finish to mix.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * mix for each coat.
   */
  readonly perCoat: ShownOf<(typeof finishQuantity)['outputs']['perCoat']>;
  /**
   * tins to buy.
   */
  readonly tins: number;
  /**
   * finish from the tins.
   */
  readonly finish: Quantity<'liquid'>;
  /**
   * thinner.
   */
  readonly thinner: Quantity<'liquid'>;
  /**
   * area of one coat.
   */
  readonly area: Quantity<'area'>;
  /**
   * in the tins bought.
   */
  readonly bought: Quantity<'liquid'>;
  /**
   * left in the tins.
   */
  readonly spare: Quantity<'liquid'>;
  /**
   * time in all.
   */
  readonly elapsed?: Quantity<'time'> | undefined;
}

/** What {@link gritSequence} takes. Which grits to sand with, the fewest whose steps are small enough to take the last scratches out. For papers of the FEPA (P) series. */
export interface GritSequenceInput {
  /**
   * first grit.
   * Takes a FEPA grit such as "P80", from P12 to P2500.
   * @example P80
   */
  readonly from: InputOf<(typeof gritSequence)['inputs']['from']>;
  /**
   * the last grit.
   * Takes a FEPA grit such as "P80", from P12 to P2500.
   * @example P220
   */
  readonly to: InputOf<(typeof gritSequence)['inputs']['to']>;
  /**
   * greatest step.
   * Takes a number such as 1.8, at least 1.1 and at most 4.
   * @default 1.8
   */
  readonly stepRatio?: Written<'ratio'>;
  /**
   * grits in stock.
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
   * the sequence.
   */
  readonly grades: string;
  /**
   * grits.
   */
  readonly count: number;
  /**
   * the largest step.
   */
  readonly largestStep: number;
}

/** What {@link nailHoles} takes. From counts on a few sample pieces: how many nail holes the job has, how many to be ready for, and the filler or plugs they take. */
export interface NailHolesInput {
  /**
   * counts.
   * Takes a list, each a whole number such as 4, at least 0 and at most 10 000.
   * @example [7,4,9,5,6]
   */
  readonly counts: InputOf<(typeof nailHoles)['inputs']['counts']>;
  /**
   * sample area.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 m².
   * @example 0.2 m2
   */
  readonly sampleArea: Written<'area'>;
  /**
   * area.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 1000 m².
   * @example 1.3 m2
   */
  readonly area: Written<'area'>;
  /**
   * width of a hole.
   * Takes a length such as "5 mm", more than 0 mm and at most 30 mm.
   * @default 5 mm
   * @example 5 mm
   */
  readonly holeWidth?: Written<'length'>;
  /**
   * depth that is filled.
   * Takes a length such as "10 mm", more than 0 mm and at most 100 mm.
   * @default 10 mm
   * @example 12 mm
   */
  readonly depth?: Written<'length'>;
  /**
   * filled or plugged.
   * Takes one of "filler", "plugs".
   * @default filler
   */
  readonly method?: 'filler' | 'plugs';
  /**
   * filler lost.
   * Takes a share such as "50 %", at least 0 % and at most 300 %.
   * @default 50 %
   */
  readonly leftOver?: Written<'share'>;
  /**
   * certainty.
   * Takes a share such as "90 %", at least 50 % and at most 99.9 %.
   * @default 90 %
   */
  readonly certainty?: Written<'share'>;
  /**
   * what goes over it.
   * Takes one of "clear", "stain", "paint".
   * @default clear
   */
  readonly finish?: 'clear' | 'stain' | 'paint';
}
/** What {@link nailHoles} gives, beside workings, cautions, sources and chart. */
export interface NailHolesOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * holes expected in all.
   */
  readonly expected: number;
  /**
   * holes to fill.
   */
  readonly ready: number;
  /**
   * filler to mix.
   * Shown in mL.
   */
  readonly filler?: Quantity<'volume'> | undefined;
  /**
   * plugs to cut.
   */
  readonly plugs?: number | undefined;
  /**
   * holes per area.
   */
  readonly perArea: number;
  /**
   * standard deviation.
   */
  readonly spread: number;
}

/** What {@link shellacCut} takes. Flakes and alcohol for a cut of shellac, or the alcohol that thins one cut to a weaker. Cuts are by pounds to the US gallon of alcohol, or grams to the litre. */
export interface ShellacCutInput {
  /**
   * cut wanted.
   * Takes a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal.
   * Shown in g/L.
   * @example 2
   */
  readonly cut: Written<'concentration'>;
  /**
   * flakes there are.
   * Takes a mass such as "12 kg", more than 0 g and at most 1000 kg.
   */
  readonly flakes?: Written<'mass'>;
  /**
   * alcohol.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   * @example 500 mL
   */
  readonly volume?: Written<'liquid'>;
  /**
   * ready-made shellac.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   */
  readonly existing?: Written<'liquid'>;
  /**
   * cut as bought.
   * Takes a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal.
   * Shown in g/L.
   */
  readonly existingCut?: Written<'concentration'>;
}
/** What {@link shellacCut} gives, beside workings, cautions, sources and chart. */
export interface ShellacCutOutput {
  /**
   * flakes.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * alcohol in all.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * shellac made.
   */
  readonly made: Quantity<'liquid'>;
  /**
   * alcohol to add.
   */
  readonly addAlcohol?: Quantity<'liquid'> | undefined;
  /**
   * parts of alcohol.
   */
  readonly partsAlcohol?: number | undefined;
  /**
   * volume of the flakes.
   */
  readonly solids: Quantity<'share'>;
}

/** What {@link stainTrials} takes. A ladder of test strips for a stain that is thinned or mixed: strengths in steps that look even, the smallest batch your measure allows, and a strip to label. */
export interface StainTrialsInput {
  /**
   * strongest strip.
   * Takes a share such as "100 %", more than 0 % and at most 100 %.
   * @default 100 %
   * @example 100 %
   */
  readonly strongest?: Written<'share'>;
  /**
   * weakest strip.
   * Takes a share such as "12.5 %", more than 0 % and at most 100 %.
   * @default 12.5 %
   * @example 12.5 %
   */
  readonly weakest?: Written<'share'>;
  /**
   * strips.
   * Takes a whole number such as 4, at least 2 and at most 12.
   * @default 4
   * @example 4
   */
  readonly strips?: Written<'count'>;
  /**
   * tool error.
   * Takes a volume such as "0.25 mL", more than 0 m³ and at most 0.0001 m³.
   * @default 0.25 mL
   * @example 0.25 mL
   */
  readonly toolError?: Written<'volume'>;
  /**
   * allowed error.
   * Takes a share such as "5 %", at least 0.5 % and at most 50 %.
   * @default 5 %
   */
  readonly strengthError?: Written<'share'>;
  /**
   * least batch.
   * Takes a volume such as "10 mL", more than 0 m³ and at most 0.001 m³.
   * @default 10 mL
   */
  readonly least?: Written<'volume'>;
  /**
   * thinner.
   * Takes a text of 1 to 200 characters.
   * @default thinner
   */
  readonly thinner?: string;
}
/** What {@link stainTrials} gives, beside workings, cautions, sources and chart. */
export interface StainTrialsOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * step.
   */
  readonly step: number;
  /**
   * batch of each strip.
   * Shown in mL.
   */
  readonly batch: Quantity<'volume'>;
  /**
   * stain for all strips.
   * Shown in mL.
   */
  readonly stain: Quantity<'volume'>;
  /**
   * The strips, weakest first.
   */
  readonly ladder: ShownOf<(typeof stainTrials)['outputs']['ladder']>;
}

/** What {@link thinToSolids} takes. The solids a finish has once thinned, or how much thinner brings it to the solids wanted. By volume; not for two-pack finishes beyond what their maker allows. */
export interface ThinToSolidsInput {
  /**
   * solids as bought.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 42 %
   */
  readonly volumeSolids: Written<'share'>;
  /**
   * solids wanted after thinning.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 28 %
   */
  readonly target?: Written<'share'>;
  /**
   * parts of thinner.
   * Takes a number such as 1.5, at least 0 and at most 1000.
   */
  readonly thinnerParts?: Written<'ratio'>;
}
/** What {@link thinToSolids} gives, beside workings, cautions, sources and chart. */
export interface ThinToSolidsOutput {
  /**
   * parts of thinner.
   */
  readonly thinnerParts: number;
  /**
   * solids of the mix.
   */
  readonly solids: Quantity<'share'>;
  /**
   * share of thinner.
   */
  readonly thinnerShare: Quantity<'share'>;
  /**
   * thinner per litre.
   */
  readonly perLitre: Quantity<'liquid'>;
}

/** What {@link thinnedVoc} takes. The volatile organic compounds of a finish once thinned, as the rules calculate them, less water and exempt solvent. Not a statement of compliance. */
export interface ThinnedVocInput {
  /**
   * VOC as bought.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1500 g/L.
   * @example 350 g/L
   */
  readonly voc?: Written<'concentration'>;
  /**
   * parts of thinner.
   * Takes a number such as 1.5, at least 0 and at most 100.
   * @example 0.25
   */
  readonly thinnerParts: Written<'ratio'>;
  /**
   * density of thinner.
   * Takes a density such as "790 g/L", at least 600 kg/m³ and at most 1600 kg/m³.
   * @default 790 g/L
   * @example 6.6 lb/gal
   */
  readonly density?: Written<'density'>;
  /**
   * VOC of thinner.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1600 g/L.
   */
  readonly thinnerVoc?: Written<'concentration'>;
  /**
   * exempt share, finish.
   * Takes a share such as "0 %", at least 0 % and at most 99 %.
   * @default 0 %
   */
  readonly exempt?: Written<'share'>;
  /**
   * exempt share, thinner.
   * Takes a share such as "0 %", at least 0 % and at most 100 %.
   * @default 0 %
   */
  readonly thinnerExempt?: Written<'share'>;
  /**
   * solids by mass.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly solidsByMass?: Written<'share'>;
  /**
   * water by mass.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly waterByMass?: Written<'share'>;
  /**
   * density of finish.
   * Takes a density such as "520 kg/m3", at least 600 kg/m³ and at most 3000 kg/m³.
   */
  readonly finishDensity?: Written<'density'>;
}
/** What {@link thinnedVoc} gives, beside workings, cautions, sources and chart. */
export interface ThinnedVocOutput {
  /**
   * VOC of the mix.
   */
  readonly voc: Quantity<'concentration'>;
  /**
   * VOC per litre.
   */
  readonly vocAsIs: Quantity<'concentration'>;
  /**
   * VOC before thinning.
   */
  readonly before: Quantity<'concentration'>;
  /**
   * what the thinner adds.
   */
  readonly rise: Quantity<'concentration'>;
}

/** What {@link thinningRatio} takes. How much of each part to pour or weigh for a batch, or the most that what is left in the tins will make. Not for two-pack finishes with a hardener. */
export interface ThinningRatioInput {
  /**
   * parts of the mix.
   * Takes named parts such as { oil: ... }, each a number such as 1.5, more than 0 and at most 10 000.
   * @example {"oil":2,"varnish":1,"spirit":1}
   */
  readonly parts: InputOf<(typeof thinningRatio)['inputs']['parts']>;
  /**
   * amount wanted.
   * Takes an amount of liquid such as "2 L" or a mass such as "500 g", more than nothing and at most 1000 m3 or 1000 t.
   * @example 2 L
   */
  readonly batch?: InputOf<(typeof thinningRatio)['inputs']['batch']>;
  /**
   * in stock.
   * Takes named parts such as { oil: ... }, each an amount of liquid such as "2 L" or a mass such as "500 g", at least nothing and at most 1000 m3 or 1000 t.
   */
  readonly have?: InputOf<(typeof thinningRatio)['inputs']['have']>;
  /**
   * parts by.
   * Takes one of "volume", "mass".
   */
  readonly by?: 'volume' | 'mass';
  /**
   * densities.
   * Takes named parts such as { oil: ... }, each a density such as "520 kg/m3", at least 400 kg/m³ and at most 3000 kg/m³.
   */
  readonly densities?: InputOf<(typeof thinningRatio)['inputs']['densities']>;
  /**
   * thinner.
   * Takes a text of 1 to 200 characters.
   */
  readonly thinner?: string;
}
/** What {@link thinningRatio} gives, beside workings, cautions, sources and chart. */
export interface ThinningRatioOutput {
  /**
   * amount of each part.
   */
  readonly amounts: ShownOf<(typeof thinningRatio)['outputs']['amounts']>;
  /**
   * the mix in all.
   */
  readonly total: ShownOf<(typeof thinningRatio)['outputs']['total']>;
  /**
   * limiting part.
   */
  readonly limiting?: string | undefined;
  /**
   * left in the tins.
   */
  readonly left?: ShownOf<(typeof thinningRatio)['outputs']['left']> | undefined;
  /**
   * to buy.
   */
  readonly toBuy?: ShownOf<(typeof thinningRatio)['outputs']['toBuy']> | undefined;
  /**
   * thinner added.
   */
  readonly thinnerAdded?: Quantity<'share'> | undefined;
  /**
   * share of thinner.
   */
  readonly thinnerShare?: Quantity<'share'> | undefined;
  /**
   * Pouring order.
   */
  readonly pour: ShownOf<(typeof thinningRatio)['outputs']['pour']>;
}

/** What {@link chamfer} takes. Width of a chamfer from the depth of the cutter, or the depth for the width wanted; the flat left on the edge, the passes, and metres and time for a run of parts. */
export interface ChamferInput {
  /**
   * width.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   * @example 8 mm
   */
  readonly width?: Written<'length'>;
  /**
   * depth.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   */
  readonly depth?: Written<'length'>;
  /**
   * angle.
   * Takes an angle such as "45 deg", at least 5° and at most 85°.
   * @default 45 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * thickness at the edge.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 40 mm
   */
  readonly thickness: Written<'length'>;
  /**
   * both edges.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly bothEdges?: boolean | 'yes' | 'no';
  /**
   * depth per pass.
   * Takes a length such as "3 mm", more than 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly passDepth?: Written<'length'>;
  /**
   * length of a chamfer.
   * Takes a length such as "1 m", more than 0 mm and at most 50 m.
   * @default 1 m
   * @example 1950 mm
   */
  readonly length?: Written<'length'>;
  /**
   * chamfers on each part.
   * Takes a whole number such as 1, at least 1 and at most 100.
   * @default 1
   * @example 4
   */
  readonly each?: Written<'count'>;
  /**
   * parts.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   */
  readonly parts?: Written<'count'>;
  /**
   * feed by hand.
   * Takes a speed such as "2 m/min", more than 0 m/min and at most 60 m/min.
   * @default 2 m/min
   */
  readonly feed?: Written<'speed'>;
}
/** What {@link chamfer} gives, beside workings, cautions, sources and chart. */
export interface ChamferOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * width of the chamfer.
   */
  readonly width: Quantity<'length'>;
  /**
   * taken off the face.
   */
  readonly alongFace: Quantity<'length'>;
  /**
   * depth.
   */
  readonly depth: Quantity<'length'>;
  /**
   * flat left.
   */
  readonly flat: Quantity<'length'>;
  /**
   * passes.
   */
  readonly passes: number;
  /**
   * run of all chamfers.
   * Shown in m.
   */
  readonly run: Quantity<'length'>;
  /**
   * time at the cutter.
   */
  readonly time: Quantity<'time'>;
}

/** What {@link chipVolume} takes. The mass and the loose volume of shavings or sawdust from the wood taken off, and the bags they fill. */
export interface ChipVolumeInput {
  /**
   * wood removed.
   * Takes a volume such as "0.02 m3", more than 0 m³ and at most 1000 m³.
   */
  readonly volumeRemoved?: Written<'volume'>;
  /**
   * area planed.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 000 m².
   * @example 2.5 m2
   */
  readonly area?: Written<'area'>;
  /**
   * depth removed.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly depth?: Written<'length'>;
  /**
   * density of timber.
   * Takes a density such as "520 kg/m3", at least 50 kg/m³ and at most 1500 kg/m³.
   * @example 520 kg/m3
   */
  readonly density: Written<'density'>;
  /**
   * what it becomes.
   * Takes one of "planer shavings", "sawdust".
   * @default planer shavings
   */
  readonly waste?: 'planer shavings' | 'sawdust';
  /**
   * what a bag holds.
   * Takes an amount of liquid such as "100 L", at least 1 L and at most 10 000 L.
   * @default 100 L
   */
  readonly bagSize?: Written<'liquid'>;
}
/** What {@link chipVolume} gives, beside workings, cautions, sources and chart. */
export interface ChipVolumeOutput {
  /**
   * mass of the waste.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * loose volume.
   */
  readonly volume: Quantity<'liquid'>;
  /**
   * as solid wood.
   */
  readonly solid: Quantity<'liquid'>;
  /**
   * bags.
   */
  readonly bags: number;
  /**
   * loose density.
   */
  readonly bulkDensity: Quantity<'density'>;
}

/** What {@link cutterMarks} takes. How close the knife marks stand and how deep the ripple is, from speed, knives and feed, and the feed for the marks wanted. Not for spiral blocks. */
export interface CutterMarksInput {
  /**
   * cutter block speed.
   * Takes a speed of rotation such as "6000 rpm", more than 0 rpm and at most 60 000 rpm.
   * @example 6000 rpm
   */
  readonly spindleSpeed: Written<'rotation'>;
  /**
   * knives.
   * Takes a whole number such as 4, at least 1 and at most 24.
   * @example 4
   */
  readonly knives: Written<'count'>;
  /**
   * feed of the timber.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   * @example 60 ft/min
   */
  readonly feed: Written<'speed'>;
  /**
   * cutting diameter.
   * Takes a length such as "72 mm", at least 10 mm and at most 1000 mm.
   * @default 72 mm
   */
  readonly cutterDiameter?: Written<'length'>;
  /**
   * fastest feed.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   */
  readonly mostFeed?: Written<'speed'>;
  /**
   * marks wanted.
   * Takes marks by length such as "20 1/in", at least 1 1/in and at most 200 1/in.
   * @default 20 1/in
   */
  readonly wanted?: Written<'marks'>;
}
/** What {@link cutterMarks} gives, beside workings, cautions, sources and chart. */
export interface CutterMarksOutput {
  /**
   * knife mark pitch.
   */
  readonly pitch: Quantity<'length'>;
  /**
   * knife marks by length.
   * Shown in 1/in.
   */
  readonly marksPerInch: Quantity<'marks'>;
  /**
   * ripple depth.
   * Shown in um.
   */
  readonly waveDepth: Quantity<'length'>;
  /**
   * feed for marks wanted.
   */
  readonly feedForWanted: Quantity<'speed'>;
  /**
   * cutting speed.
   * Shown in m/s.
   */
  readonly rimSpeed: Quantity<'speed'>;
}

/** What {@link planingTime} takes. How long a pile takes through the thicknesser, passes and handling counted. For feed by rollers; not for a hand-fed jointer. */
export interface PlaningTimeInput {
  /**
   * total length.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 000 m.
   * @example 31.2 m
   */
  readonly totalLength: Written<'length'>;
  /**
   * passes.
   * Takes a whole number such as 4, at least 1 and at most 1000.
   */
  readonly passes?: Written<'count'>;
  /**
   * feed of the machine.
   * Takes a speed such as "6 m/min", more than 0 m/min and at most 300 m/min.
   * @example 6 m/min
   */
  readonly feed: Written<'speed'>;
  /**
   * handling time.
   * Takes a time such as "15 s", at least 0 s and at most 1 h.
   * @default 15 s
   * @example 15 s
   */
  readonly handling?: Written<'time'>;
  /**
   * how many pieces.
   * Takes a whole number such as 1, at least 1 and at most 100 000.
   * @default 1
   * @example 16
   */
  readonly pieces?: Written<'count'>;
  /**
   * to take off.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly removal?: Written<'length'>;
  /**
   * depth per pass.
   * Takes a length such as "1 mm", more than 0 mm and at most 20 mm.
   * @default 1 mm
   * @example 1 mm
   */
  readonly depthPerPass?: Written<'length'>;
}
/** What {@link planingTime} gives, beside workings, cautions, sources and chart. */
export interface PlaningTimeOutput {
  /**
   * in all.
   */
  readonly time: Quantity<'time'>;
  /**
   * passes of each piece.
   */
  readonly passes: number;
  /**
   * cutting time.
   */
  readonly cutting: Quantity<'time'>;
  /**
   * handling.
   */
  readonly handlingTime: Quantity<'time'>;
  /**
   * length that runs through.
   * Shown in m.
   */
  readonly run: Quantity<'length'>;
}

/** What {@link bill} takes. What a piece costs, weighs and takes in hours: timber, glue, finish, fixings and time in one table. An estimate for the maker, not an invoice. */
export interface BillInput {
  /**
   * lines of the bill.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns item, kind?, quantity, unit?, price?, mass?, massEach?, density?.
   * @example [{"item":"rafters, salvaged","kind":"timber","quantity":"0.062 m3","price":"180/m3","density":"500 kg/m3"},{"item":"battens for the frame","kind":"timber","quantity":"11.4 m","price":"1.20/m","mass":"8.2 kg"},{"item":"wood glue","kind":"glue","quantity":"750 mL","price":"14/L","mass":"0.8 kg"},{"item":"oil varnish","kind":"finish","quantity":2,"unit":"tins","price":16.5,"massEach":"0.45 kg"},{"item":"screws 5 x 60","kind":"fixings","quantity":48,"price":0.11,"massEach":"6 g"},{"item":"bench work","kind":"time","quantity":"14.5 h"}]
   */
  readonly lines: InputOf<(typeof bill)['inputs']['lines']>;
  /**
   * price of an hour.
   * Takes a price of 0 or more: for one of the unit the quantity is in, such as 12.50, or with what it is for, such as '4.20/m', '38/m2', '18/L', '9/kg' or '40/h'.
   * @example 24
   */
  readonly hourly?: InputOf<(typeof bill)['inputs']['hourly']>;
  /**
   * contingency.
   * Takes a share such as "0 %", at least 0 % and at most 200 %.
   * @default 0 %
   * @example 10 %
   */
  readonly forgotten?: Written<'share'>;
  /**
   * sales tax.
   * Takes a share such as "0 %", at least 0 % and at most 100 %.
   * @default 0 %
   */
  readonly tax?: Written<'share'>;
}
/** What {@link bill} gives, beside workings, cautions, sources and chart. */
export interface BillOutput {
  /**
   * cost in all.
   */
  readonly total: Quantity<'money'>;
  /**
   * the lines together.
   */
  readonly subtotal: Quantity<'money'>;
  /**
   * contingency.
   */
  readonly forgotten?: Quantity<'money'> | undefined;
  /**
   * sales tax.
   */
  readonly tax?: Quantity<'money'> | undefined;
  /**
   * mass.
   */
  readonly mass?: Quantity<'mass'> | undefined;
  /**
   * hours of work.
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

/** What {@link prepTime} takes. Hours of de-nailing, docking, planing and the like, foretold from a few timed pieces, with the range to plan for and what it costs. */
export interface PrepTimeInput {
  /**
   * operations.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns work?, times, pieces.
   * @example [{"work":"de-nailing","times":"7 min, 11 min, 5 min, 9 min, 8 min","pieces":24},{"work":"docking and planing","times":"4 min, 6 min, 5 min","pieces":24}]
   */
  readonly works: InputOf<(typeof prepTime)['inputs']['works']>;
  /**
   * certainty.
   * Takes a share such as "80 %", at least 50 % and at most 99 %.
   * @default 80 %
   */
  readonly certainty?: Written<'share'>;
  /**
   * cost of an hour.
   * Takes an amount of money such as 12.50, at least 0.00 and at most 10 000.00.
   * @example 18
   */
  readonly hourly?: Written<'money'>;
}
/** What {@link prepTime} gives, beside workings, cautions, sources and chart. */
export interface PrepTimeOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * time expected.
   * Shown in h.
   */
  readonly expected: Quantity<'time'>;
  /**
   * least of the range.
   * Shown in h.
   */
  readonly low: Quantity<'time'>;
  /**
   * most of the range.
   * Shown in h.
   */
  readonly high: Quantity<'time'>;
  /**
   * cost.
   */
  readonly cost?: Quantity<'money'> | undefined;
  /**
   * highest cost.
   */
  readonly costHigh?: Quantity<'money'> | undefined;
  /**
   * Work by work.
   */
  readonly works: ShownOf<(typeof prepTime)['outputs']['works']>;
}

/** What {@link passage} takes. Whether a counter, top or bench goes round corners, through doors and into a van: lying, on edge or tilted; where to divide it if not, and how many people carry it. */
export interface PassageInput {
  /**
   * length of the piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * width of the piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * height.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 60 mm
   */
  readonly height: Written<'length'>;
  /**
   * passages.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns kind, first, second?, height?.
   * @example [{"kind":"van","first":"2400 mm","second":"1300 mm","height":"1300 mm"},{"kind":"door","first":"780 mm","height":"1980 mm"},{"kind":"corner","first":"900 mm","second":"1000 mm","height":"2300 mm"}]
   */
  readonly gates: InputOf<(typeof passage)['inputs']['gates']>;
  /**
   * hand room.
   * Takes a length such as "20 mm", at least 0 mm and at most 500 mm.
   * @default 20 mm
   */
  readonly spare?: Written<'length'>;
  /**
   * mass of the piece.
   * Takes a mass such as "12 kg", more than 0 g and at most 2000 kg.
   * @example 38 kg
   */
  readonly mass?: Written<'mass'>;
  /**
   * carriers.
   * Takes one of "men", "women".
   * @default women
   */
  readonly carriers?: 'men' | 'women';
}
/** What {@link passage} gives, beside workings, cautions, sources and chart. */
export interface PassageOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * goes in whole.
   */
  readonly fits: boolean;
  /**
   * longest piece.
   */
  readonly longest?: Quantity<'length'> | undefined;
  /**
   * parts.
   */
  readonly parts: number;
  /**
   * length of one part.
   */
  readonly partLength: Quantity<'length'>;
  /**
   * mass of one part.
   */
  readonly partMass?: Quantity<'mass'> | undefined;
  /**
   * carriers needed.
   */
  readonly people?: number | undefined;
  /**
   * Place by place.
   */
  readonly gates: ShownOf<(typeof passage)['outputs']['gates']>;
}

/** What {@link heightsForPeople} takes. Whom a height of counter, bench, stool or table suits, by published body measures; the height that suits most; access for wheelchair users; school sizes by stature. */
export interface HeightsForPeopleInput {
  /**
   * what it is.
   * Takes one of "standing, light work", "standing, heavy work", "standing, fine work", "seat", "room for the knees".
   * @default standing, light work
   * @example standing, light work
   */
  readonly use?: 'standing, light work' | 'standing, heavy work' | 'standing, fine work' | 'seat' | 'room for the knees';
  /**
   * height.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 950 mm
   */
  readonly height: Written<'length'>;
  /**
   * for whom.
   * Takes one of "adults", "men", "women".
   * @default adults
   */
  readonly people?: 'adults' | 'men' | 'women';
  /**
   * thickness of the shoes.
   * Takes a length such as "25 mm", at least 0 mm and at most 100 mm.
   * @default 25 mm
   */
  readonly shoes?: Written<'length'>;
  /**
   * stature.
   * Takes a length such as "900 mm", at least 800 mm and at most 2070 mm.
   */
  readonly stature?: Written<'length'>;
}
/** What {@link heightsForPeople} gives, beside workings, cautions, sources and chart. */
export interface HeightsForPeopleOutput {
  /**
   * in one sentence.
   */
  readonly sentence: string;
  /**
   * share suited.
   */
  readonly share: Quantity<'share'>;
  /**
   * best height.
   */
  readonly best: Quantity<'length'>;
  /**
   * share at best.
   */
  readonly bestShare: Quantity<'share'>;
  /**
   * 5th percentile.
   */
  readonly low: Quantity<'length'>;
  /**
   * 95th percentile.
   */
  readonly high: Quantity<'length'>;
  /**
   * access for wheelchair users.
   */
  readonly access: string;
  /**
   * school seat.
   */
  readonly schoolSeat?: Quantity<'length'> | undefined;
  /**
   * school table.
   */
  readonly schoolTable?: Quantity<'length'> | undefined;
}
