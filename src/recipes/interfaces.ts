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
export type ClimateName = 'Phoenix, AZ' | 'Los Angeles, CA' | 'Denver, CO' | 'Washington, DC' | 'Miami, FL' | 'Chicago, IL' | 'New Orleans, LA' | 'Portland, ME' | 'Boston, MA' | 'Minneapolis-St. Paul, MN' | 'Portland, OR' | 'Seattle-Tacoma, WA' | 'Cheyenne, WY';

/** What {@link cupDepth} takes. Depth of the cup of a flat-sawn board when its moisture changes, because wood moves more along the rings than across them, and which face goes hollow. For narrow strips cut from it the depth falls with the square of the width. */
export interface CupDepthInput {
  /**
   * width of the board.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 200 mm
   */
  readonly width: Written<'length'>;
  /**
   * species, or a group for the middle of its range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof cupDepth)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * radius of the growth rings at the middle of the board, read off its end.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly ringRadius: Written<'length'>;
  /**
   * moisture at first, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 14 %
   */
  readonly from: InputOf<(typeof cupDepth)['inputs']['from']>;
  /**
   * moisture at last, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof cupDepth)['inputs']['to']>;
}
/** What {@link cupDepth} gives, beside workings, cautions, sources and chart. */
export interface CupDepthOutput {
  /**
   * depth of the hollow at the middle of the board.
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
   * relative humidity of the air.
   * Takes a relative humidity such as "50 %", at least 0 % and at most 100 %.
   * @example 50 %
   */
  readonly humidity: Written<'humidity'>;
}
/** What {@link equilibriumMoisture} gives, beside workings, cautions, sources and chart. */
export interface EquilibriumMoistureOutput {
  /**
   * moisture content the wood comes to.
   */
  readonly moisture: Quantity<'moisture'>;
}

/** What {@link fixingSlots} takes. Travel and slot length at each fixing across a solid top: the top is held along one line, and a fixing travels in proportion to its distance from it. Calculate from the driest to the wettest state it will see. */
export interface FixingSlotsInput {
  /**
   * width of the top across the grain.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 640 mm
   */
  readonly width: Written<'length'>;
  /**
   * where the fixings are, from one edge.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 100 m.
   * @example ["60 mm","320 mm","580 mm"]
   */
  readonly positions?: InputOf<(typeof fixingSlots)['inputs']['positions']>;
  /**
   * distance between fixings, counted from the held line, in place of positions.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly spacing?: Written<'length'>;
  /**
   * least distance of a fixing from the edge, with spacing.
   * Takes a length such as "30 mm", at least 0 mm and at most 1000 mm.
   * @default 30 mm
   */
  readonly edgeDistance?: Written<'length'>;
  /**
   * the line where the top is held: centre, edge (the one measured from), or a distance from that edge.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof fixingSlots)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
  /**
   * movement of the whole width, in place of timber and moistures.
   * Takes a length such as "900 mm", at least -1000 mm and at most 1000 mm.
   */
  readonly movement?: Written<'length'>;
  /**
   * species, or a group.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof fixingSlots)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * how it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof fixingSlots)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * moisture at first, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from?: InputOf<(typeof fixingSlots)['inputs']['from']>;
  /**
   * moisture at last, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 13 %
   */
  readonly to?: InputOf<(typeof fixingSlots)['inputs']['to']>;
  /**
   * slots for the middle figure, or for the most that is expected.
   * Takes one of "middle", "most".
   * @default middle
   */
  readonly allowFor?: 'middle' | 'most';
  /**
   * diameter of the screw or bolt.
   * Takes a length such as "5 mm", more than 0 mm and at most 100 mm.
   * @default 5 mm
   * @example 5 mm
   */
  readonly fastenerDiameter?: Written<'length'>;
  /**
   * spare at each end of a slot.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   */
  readonly margin?: Written<'length'>;
}
/** What {@link fixingSlots} gives, beside workings, cautions, sources and chart. */
export interface FixingSlotsOutput {
  /**
   * movement of the whole width.
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
   * relative humidity of the air.
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
   * temperature of the wood itself.
   * Takes a temperature such as "21 degC", at least -30 °C and at most 90 °C.
   * @example 9.9 degC
   */
  readonly woodTemperature: Written<'temperature'>;
  /**
   * temperature the meter is set for, from its leaflet.
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
   * points added to the reading.
   */
  readonly correction: Quantity<'moisture'>;
}

/** What {@link moistureByWeight} takes. The moisture content of a sample from its mass now and its mass dried in an oven; and the mass it will have at a moisture you wait for. */
export interface MoistureByWeightInput {
  /**
   * mass of the sample as it is.
   * Takes a mass such as "12 kg", more than 0 g and at most 10 000 kg.
   * @example 136 g
   */
  readonly wetMass: Written<'mass'>;
  /**
   * mass of the same sample dried at 103 °C until it loses no more.
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
   * moisture content, of the ovendry mass.
   */
  readonly moisture: Quantity<'moisture'>;
  /**
   * water in the sample.
   */
  readonly water: Quantity<'mass'>;
  /**
   * mass of the sample at the moisture to wait for.
   */
  readonly targetMass?: Quantity<'mass'> | undefined;
}

/** What {@link movementAcross} takes. How much a board or a top of strips widens or narrows when its moisture changes: by published coefficients within 6 to 14 % moisture, by shrinkage from green outside. Positive means wider. */
export interface MovementAcrossInput {
  /**
   * width across the grain at the first moisture; left out where strips are given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 900 mm
   */
  readonly width?: Written<'length'>;
  /**
   * species, or a group for a range; left out where strips are given.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example red oak
   */
  readonly timber?: Exclude<InputOf<(typeof movementAcross)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * how it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   * @example flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof movementAcross)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * moisture at first, or the air the timber rests in.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly from: InputOf<(typeof movementAcross)['inputs']['from']>;
  /**
   * moisture at last, or the air it will come to rest in.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly to: InputOf<(typeof movementAcross)['inputs']['to']>;
  /**
   * strips of a glued top, each of its own timber and sawing; each moves by its own and the sum is the top.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns timber, width, cut?, count?.
   */
  readonly strips?: InputOf<(typeof movementAcross)['inputs']['strips']>;
  /**
   * change of width for each per cent of moisture as a fraction, in place of the published one.
   * Takes a number such as 1.5, more than 0 and at most 0.02.
   */
  readonly coefficient?: Written<'ratio'>;
  /**
   * shrinkage from green to ovendry, in place of the published one.
   * Takes a share such as "15 %", more than 0 % and at most 40 %.
   */
  readonly shrinkage?: Written<'share'>;
  /**
   * moisture at fibre saturation that goes with a shrinkage of your own.
   * Takes a moisture content such as "30 %", at least 15 % and at most 45 %.
   * @default 30 %
   */
  readonly fibreSaturation?: Written<'moisture'>;
  /**
   * the timber's own figures, the rule for softwood lumber by its green size, or the flat rate of EN 336.
   * Takes one of "timber", "softwood lumber", "EN 336".
   * @default timber
   */
  readonly rule?: 'timber' | 'softwood lumber' | 'EN 336';
  /**
   * which size of softwood lumber.
   * Takes one of "width", "thickness".
   * @default width
   */
  readonly face?: 'width' | 'thickness';
  /**
   * where the top is held: along its middle, along one edge, or at a distance from one edge.
   * Takes one of "centre", "edge", or a length such as "900 mm", at least 0 mm and at most 100 m.
   * @default centre
   */
  readonly fixedAt?: Exclude<InputOf<(typeof movementAcross)['inputs']['fixedAt']>, string> | 'centre' | 'edge' | (string & {});
}
/** What {@link movementAcross} gives, beside workings, cautions, sources and chart. */
export interface MovementAcrossOutput {
  /**
   * change of width, positive when it grows.
   */
  readonly change: Quantity<'length'>;
  /**
   * width at the last moisture.
   */
  readonly finalWidth: Quantity<'length'>;
  /**
   * movement of the free edge, the farther one of two.
   */
  readonly perSide: Quantity<'length'>;
  /**
   * change of width, lower end of what is expected.
   */
  readonly low: Quantity<'length'>;
  /**
   * change of width, upper end of what is expected.
   */
  readonly high: Quantity<'length'>;
  /**
   * change of width for each per cent of moisture, as a fraction of the width.
   */
  readonly coefficient?: number | undefined;
  /**
   * moisture at first.
   */
  readonly fromMoisture: Quantity<'moisture'>;
  /**
   * moisture at last.
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
   * length, width and thickness in one.
   * Takes length x width x thickness such as "1950 x 640 x 40 mm", or { length, width, thickness }.
   * @example 1950 x 640 x 40 mm
   */
  readonly dimensions?: InputOf<(typeof pieceWeight)['inputs']['dimensions']>;
  /**
   * length, where dimensions is not given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly length?: Written<'length'>;
  /**
   * width, where dimensions is not given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly width?: Written<'length'>;
  /**
   * thickness, where dimensions is not given.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   */
  readonly thickness?: Written<'length'>;
  /**
   * volume, in place of the sizes.
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
   * species, or a group for a range.
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
   * mass of all the pieces.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * volume of all the pieces.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * density at this moisture.
   */
  readonly density: Quantity<'density'>;
  /**
   * mass, 10th percentile of a group or least printed.
   */
  readonly low?: Quantity<'mass'> | undefined;
  /**
   * mass, 90th percentile of a group or most printed.
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
   * species, or a group for the middle of its range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof restraintStress)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * how it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof restraintStress)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * moisture when it was fixed, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 12 %
   */
  readonly from: InputOf<(typeof restraintStress)['inputs']['from']>;
  /**
   * moisture it comes to, or air.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   * @example 8 %
   */
  readonly to: InputOf<(typeof restraintStress)['inputs']['to']>;
}
/** What {@link restraintStress} gives, beside workings, cautions, sources and chart. */
export interface RestraintStressOutput {
  /**
   * movement prevented, as a share of the width.
   */
  readonly strain: Quantity<'share'>;
  /**
   * stress across the grain.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * stress at which it splits, or in swelling begins to crush.
   */
  readonly strength: Quantity<'stress'>;
  /**
   * share of that strength.
   */
  readonly used: Quantity<'share'>;
  /**
   * tension as it dries, compression as it swells.
   */
  readonly sense: string;
  /**
   * what is to be expected.
   */
  readonly verdict: string;
}

/** What {@link seasonalMovement} takes. Width of a board or top month by month, from twelve months of air: wood follows the air by diffusion across its thickness, slowed by its finish. Give the air of the room it will stand in; the table of places is outdoor air under cover. */
export interface SeasonalMovementInput {
  /**
   * width across the grain, as measured.
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
   * species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber: Exclude<InputOf<(typeof seasonalMovement)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * how it was sawn, or the angle of the rings to the face.
   * Takes "flat-sawn", "quarter-sawn", "rift-sawn", "mixed" where it is not known, or the angle of the rings to the face such as "30 deg" (0 flat-sawn, 90 quarter-sawn).
   * @default flat-sawn
   */
  readonly cut?: Exclude<InputOf<(typeof seasonalMovement)['inputs']['cut']>, string> | 'flat-sawn' | 'quarter-sawn' | 'rift-sawn' | 'mixed' | (string & {});
  /**
   * a place in the data, or twelve months of your own.
   * Takes a place such as "Seattle-Tacoma, WA", or the humidity of the room in winter and in summer such as "winter 35 %, summer 65 %" (a hygrometer left in the room for a week of each season tells it), or twelve months of your own: a list of moistures ("9 %"), or a table or CSV with columns month?, and temperature and humidity, or moisture.
   * @example winter 45 %, summer 70 %
   */
  readonly climate: Exclude<InputOf<(typeof seasonalMovement)['inputs']['climate']>, string> | ClimateName | (string & {});
  /**
   * finish: bare, oiled, varnished on all faces, or open to the air on one face only.
   * Takes one of "bare", "oiled", "one face", "varnished".
   * @default bare
   * @example oiled
   */
  readonly sealing?: 'bare' | 'oiled' | 'one face' | 'varnished';
  /**
   * time constant of the lag, in place of the one calculated from thickness and sealing.
   * Takes a time such as "15 min", at least 0 s and at most 1 000 000 day.
   */
  readonly lag?: Written<'time'>;
  /**
   * moisture when the width was measured, or the air of the workshop; left out it is the mean of the year.
   * Takes a moisture content from 0 to 300 % such as "8 %", or air such as { temperature: "21 degC", humidity: "50 %" }.
   */
  readonly madeAt?: InputOf<(typeof seasonalMovement)['inputs']['madeAt']>;
}
/** What {@link seasonalMovement} gives, beside workings, cautions, sources and chart. */
export interface SeasonalMovementOutput {
  /**
   * greatest width in the year.
   */
  readonly widest: Quantity<'length'>;
  /**
   * least width in the year.
   */
  readonly narrowest: Quantity<'length'>;
  /**
   * difference between the two.
   */
  readonly swing: Quantity<'length'>;
  /**
   * swing, lower end of what is expected.
   */
  readonly swingLow: Quantity<'length'>;
  /**
   * swing, upper end of what is expected.
   */
  readonly swingHigh: Quantity<'length'>;
  /**
   * month in which it is widest.
   */
  readonly widestIn: string;
  /**
   * month in which it is narrowest.
   */
  readonly narrowestIn: string;
  /**
   * least moisture of the wood.
   */
  readonly driest: Quantity<'moisture'>;
  /**
   * greatest moisture of the wood.
   */
  readonly wettest: Quantity<'moisture'>;
  /**
   * time constant of the lag.
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
   * species, or a group for a range.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example white oak
   */
  readonly timber?: Exclude<InputOf<(typeof woodDensity)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * specific gravity on ovendry mass, in place of a timber.
   * Takes a number such as 1.5, at least 0.02 and at most 1.55.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * on which volume that specific gravity was taken.
   * Takes one of "at this moisture", "green", "ovendry".
   * @default at this moisture
   */
  readonly gravityBasis?: 'at this moisture' | 'green' | 'ovendry';
  /**
   * shrinkage of volume from green to ovendry; left out it is the published one, or 26.5 % times the specific gravity.
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
   * density, with its water.
   */
  readonly density: Quantity<'density'>;
  /**
   * specific gravity: ovendry mass on the volume at this moisture.
   */
  readonly specificGravity: number;
  /**
   * density, 10th percentile of a group or least printed.
   */
  readonly low?: Quantity<'density'> | undefined;
  /**
   * density, 90th percentile of a group or most printed.
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
   * price as quoted, by board foot, cubic metre, square metre, metre or piece.
   * Takes a price of 0 or more with what it is for, such as '6.50/bf', '950/m3', '38/m2', '4.20/m' or '12 each'.
   * @example $4.50/bf
   */
  readonly price?: InputOf<(typeof boardMeasure)['inputs']['price']>;
}
/** What {@link boardMeasure} gives, beside workings, cautions, sources and chart. */
export interface BoardMeasureOutput {
  /**
   * board feet of all pieces.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * super feet of all pieces.
   */
  readonly superFeet: Quantity<'superFeet'>;
  /**
   * volume of all pieces.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * length of all pieces end to end.
   */
  readonly linealLength: Quantity<'length'>;
  /**
   * face area of all pieces.
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
   * the boards, in the order they are tallied.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns width, length, thickness, count?.
   * @example [{"width":"6 1/4 in","length":"8 ft","thickness":"2 in"},{"width":"10 in","length":"13 ft","thickness":"1 in","count":2},{"width":"6 in","length":"9 ft","thickness":"5/4 in","count":4}]
   */
  readonly boards: InputOf<(typeof boardTally)['inputs']['boards']>;
  /**
   * which rule the yard goes by.
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
   * board feet of the tally.
   */
  readonly boardFeet: Quantity<'boardFeet'>;
  /**
   * surface measure of the tally.
   */
  readonly surfaceMeasure?: number | undefined;
  /**
   * boards.
   */
  readonly boards: number;
  /**
   * board feet by the sizes as they are.
   */
  readonly bySize: Quantity<'boardFeet'>;
  /**
   * tally over or under the sizes as they are.
   */
  readonly difference: Quantity<'share'>;
  /**
   * The tally, row by row.
   */
  readonly rows: ShownOf<(typeof boardTally)['outputs']['rows']>;
}

/** What {@link clearPieces} takes. Which clear parts to cut from which boards with faults at known places, so that the boards cut are as short as can be in all, with a proven bound beside it. For parts of the boards’ own section. */
export interface ClearPiecesInput {
  /**
   * survey of the pile, a row for each board or kind of board.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, tone?, endLoss?, endLeft?, endRight?, faultsAt?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"A","length":"2.4 m","width":"95 mm","thickness":"45 mm","faultsAt":"800-860; 1700-1730 mm","count":2},{"name":"B","length":"1.9 m","width":"95 mm","thickness":"45 mm","endLeft":"40 mm","faultsAt":"990-1030 mm"}]
   */
  readonly boards: InputOf<(typeof clearPieces)['inputs']['boards']>;
  /**
   * parts to cut, a row each.
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
   * length of the boards cut.
   * Shown in m.
   */
  readonly boardLength: Quantity<'length'>;
  /**
   * no plan cuts less.
   * Shown in m.
   */
  readonly lowerBound: Quantity<'length'>;
  /**
   * proved to be the best.
   */
  readonly optimal: boolean;
  /**
   * length of the parts missing.
   * Shown in m.
   */
  readonly missingLength: Quantity<'length'>;
  /**
   * Cuts, board by board.
   */
  readonly plan: ShownOf<(typeof clearPieces)['outputs']['plan']>;
  /**
   * Parts that the boards do not give.
   */
  readonly missing?: ShownOf<(typeof clearPieces)['outputs']['missing']> | undefined;
}

/** What {@link cuttingPlan} takes. Which parts to cut from which boards so that the fewest boards, the least stock or the least money goes, with a proven bound beside it. For straight crosscuts of clear stock; dock faults first. */
export interface CuttingPlanInput {
  /**
   * parts to cut, a row each.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, length, count?, width?, thickness?.
   * @example [{"name":"leg","length":"860 mm","count":4},{"name":"long rail","length":"1780 mm","count":2},{"name":"short rail","length":"520 mm","count":4},{"name":"brace","length":"690 mm","count":4}]
   */
  readonly parts: InputOf<(typeof cuttingPlan)['inputs']['parts']>;
  /**
   * stock to cut from, a row each length.
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
   * docked from each end of every board before parts are cut.
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
   * what to make least; left out: cost where costs are given, length where lengths differ, else boards.
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
   * share of the boards that is neither part nor offcut worth keeping.
   */
  readonly waste: Quantity<'share'>;
  /**
   * what the plan takes.
   */
  readonly achieved: ShownOf<(typeof cuttingPlan)['outputs']['achieved']>;
  /**
   * what no plan can go below.
   */
  readonly lowerBound: ShownOf<(typeof cuttingPlan)['outputs']['lowerBound']>;
  /**
   * whether the plan is proved to be the best.
   */
  readonly optimal: boolean;
  /**
   * length of the boards cut.
   * Shown in m.
   */
  readonly stockLength: Quantity<'length'>;
  /**
   * length of the parts.
   * Shown in m.
   */
  readonly partsLength: Quantity<'length'>;
  /**
   * length wasted in kerfs, trims and short offcuts.
   * Shown in m.
   */
  readonly wasteLength: Quantity<'length'>;
  /**
   * length of the offcuts worth keeping.
   * Shown in m.
   */
  readonly kept?: Quantity<'length'> | undefined;
  /**
   * cost of the boards cut.
   */
  readonly totalCost?: Quantity<'money'> | undefined;
  /**
   * The boards and their cuts (part, length, distance from the left end).
   */
  readonly plan: ShownOf<(typeof cuttingPlan)['outputs']['plan']>;
  /**
   * How many boards there were, and how many the plan cuts.
   */
  readonly stockUsed: ShownOf<(typeof cuttingPlan)['outputs']['stockUsed']>;
  /**
   * Parts that the stock does not give.
   */
  readonly missing?: ShownOf<(typeof cuttingPlan)['outputs']['missing']> | undefined;
  /**
   * further boards of the longest kind wanted for the missing parts.
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
   * gap in the middle under a straightedge laid across the width.
   * Takes a length such as "0 mm", at least 0 mm and at most 300 mm.
   * @default 0 mm
   * @example 2.5 mm
   */
  readonly cup?: Written<'length'>;
  /**
   * gap in the middle under a line along the length.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 4 mm
   */
  readonly bow?: Written<'length'>;
  /**
   * how far the fourth corner stands up when three lie on a flat bench.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 3 mm
   */
  readonly twist?: Written<'length'>;
  /**
   * cuts along the grain before planing.
   * Takes a whole number such as 0, at least 0 and at most 100.
   * @default 0
   * @example 1
   */
  readonly rips?: Written<'count'>;
  /**
   * cuts across the grain before planing.
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
   * cleaned off each face once flat.
   * Takes a length such as "0 mm", at least 0 mm and at most 20 mm.
   * @default 0 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link flatteningLoss} gives, beside workings, cautions, sources and chart. */
export interface FlatteningLossOutput {
  /**
   * thickness once both faces are flat.
   */
  readonly dressedThickness: Quantity<'length'>;
  /**
   * thickness lost.
   */
  readonly loss: Quantity<'length'>;
  /**
   * width of a piece when flattened.
   */
  readonly pieceWidth: Quantity<'length'>;
  /**
   * length of a piece when flattened.
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
   * surface measure, whole square feet of face.
   * Takes a whole number such as 4, at least 1 and at most 200.
   */
  readonly surfaceMeasure?: Written<'count'>;
  /**
   * width, if the surface measure is not known.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 7 in
   */
  readonly width?: Written<'length'>;
  /**
   * length, if the surface measure is not known.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 8 ft
   */
  readonly length?: Written<'length'>;
}
/** What {@link gradeYield} gives, beside workings, cautions, sources and chart. */
export interface GradeYieldOutput {
  /**
   * cutting units of clear wood that the grade asks for.
   */
  readonly clearUnits: number;
  /**
   * their area.
   */
  readonly area: Quantity<'area'>;
  /**
   * clear share of the face.
   */
  readonly yield: Quantity<'share'>;
  /**
   * surface measure.
   */
  readonly surfaceMeasure: number;
  /**
   * cutting units in the whole face.
   */
  readonly totalUnits: number;
  /**
   * pieces at most in which the clear wood may lie.
   */
  readonly cuttings?: number | undefined;
  /**
   * cutting units asked for if one more piece is taken.
   */
  readonly unitsWithExtraCut?: number | undefined;
  /**
   * least size of a piece.
   */
  readonly leastCutting: string;
  /**
   * least board of the grade.
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
   * treatment mark on the pallet.
   * Takes one of "HT", "DH", "MB", "SF", "none", "stained".
   * @example HT
   */
  readonly mark: 'HT' | 'DH' | 'MB' | 'SF' | 'none' | 'stained';
  /**
   * thickness of the boards, instead of the published one.
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
   * split end lost where nails are pulled.
   * Takes a length such as "40 mm", at least 0 mm and at most 300 mm.
   * @default 40 mm
   */
  readonly splitEnd?: Written<'length'>;
  /**
   * share of boards that break where nails are pulled.
   * Takes a share such as "20 %", at least 0 % and at most 95 %.
   * @default 20 %
   */
  readonly broken?: Written<'share'>;
  /**
   * lost at each cut beside a bearer.
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
   * area of a pallet, nails pulled.
   */
  readonly pulledArea: Quantity<'area'>;
  /**
   * clear length, sawn between bearers.
   */
  readonly sawnLength: Quantity<'length'>;
  /**
   * area of a pallet, sawn between bearers.
   */
  readonly sawnArea: Quantity<'area'>;
  /**
   * mass of the boards of a pallet.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * pallets for the need, nails pulled.
   */
  readonly pallets?: number | undefined;
  /**
   * pallets for the need, sawn.
   */
  readonly palletsSawn?: number | undefined;
  /**
   * The boards as a survey.
   */
  readonly survey: ShownOf<(typeof palletBoards)['outputs']['survey']>;
}

/** What {@link partsCost} takes. What the timber of a list of parts costs, from one price or a price for each material, with waste added. Glue, finish and time are not in it. */
export interface PartsCostInput {
  /**
   * parts, a row each.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name, count?, length, width?, thickness?, material?, price?.
   * @example [{"name":"rail","count":2,"length":"1.8 m","width":"70 mm","thickness":"34 mm"},{"name":"leg","count":4,"length":"860 mm","width":"70 mm","thickness":"34 mm"},{"name":"brace","count":2,"length":"720 mm","width":"45 mm","thickness":"20 mm"}]
   */
  readonly parts: InputOf<(typeof partsCost)['inputs']['parts']>;
  /**
   * price for parts that name no other.
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
   * added to the net quantity for waste, or how the timber comes.
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
   * cost at the lower usual waste.
   */
  readonly low?: Quantity<'money'> | undefined;
  /**
   * cost of the parts alone, without waste.
   */
  readonly netCost: Quantity<'money'>;
  /**
   * added for waste.
   */
  readonly waste: Quantity<'share'>;
  /**
   * volume of the parts whose section is given.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * that volume with waste added.
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
   * usable yield of each piece taken apart so far.
   * Takes two or more amounts of one kind, such as '1.6 m, 1.4 m, 1.7 m' or ['0.8 m2', '0.9 m2'].
   * @example ["1.62 m","1.48 m","1.71 m","1.33 m","1.57 m","1.66 m"]
   */
  readonly sample: InputOf<(typeof pileSampling)['inputs']['sample']>;
  /**
   * usable yield still needed, beyond what the sample gave.
   * Takes an amount of the sample's kind and more than nothing, such as '14 m' or '6 m2'.
   * @example 14 m
   */
  readonly needed: InputOf<(typeof pileSampling)['inputs']['needed']>;
  /**
   * how sure the answer should be.
   * Takes a share such as "90 %", at least 50 % and at most 99.9 %.
   * @default 90 %
   * @example 90 %
   */
  readonly confidence?: Written<'share'>;
}
/** What {@link pileSampling} gives, beside workings, cautions, sources and chart. */
export interface PileSamplingOutput {
  /**
   * pieces to take apart so that the need is met with this confidence.
   */
  readonly piecesToPull: number;
  /**
   * pieces that may already do, if luck holds.
   */
  readonly low: number;
  /**
   * pieces that it may take, if luck fails.
   */
  readonly high: number;
  /**
   * pieces needed at the mean yield.
   */
  readonly expected: number;
  /**
   * mean yield of a piece.
   */
  readonly meanYield: ShownOf<(typeof pileSampling)['outputs']['meanYield']>;
  /**
   * standard deviation of the yields.
   */
  readonly spread: ShownOf<(typeof pileSampling)['outputs']['spread']>;
  /**
   * least that these pieces may give.
   */
  readonly yieldLow: ShownOf<(typeof pileSampling)['outputs']['yieldLow']>;
  /**
   * most that these pieces may give.
   */
  readonly yieldHigh: ShownOf<(typeof pileSampling)['outputs']['yieldHigh']>;
}

/** What {@link pileYield} takes. What a surveyed pile of salvaged boards gives as dressed stock of one thickness: length, area, volume, pieces and yield, and the thickness at which the yield peaks. For where to cut, use the cutting plan. */
export interface PileYieldInput {
  /**
   * survey of the pile, a row for each size and state of board.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, group?, count?, length, width, thickness, endLoss?, faultLength?, faults?, cup?, bow?.
   * @example [{"name":"R1","group":"rafter","count":3,"length":"2310 mm","width":"97 mm","thickness":"47 mm","endLoss":"110 mm","faultLength":"140 mm","faults":2,"cup":"1 mm","bow":"5 mm"},{"name":"R2","group":"rafter","count":4,"length":"1870 mm","width":"98 mm","thickness":"47 mm","endLoss":"120 mm","faultLength":"80 mm","cup":"0.5 mm","bow":"3 mm"},{"name":"F1","group":"floorboard","count":5,"length":"1620 mm","width":"142 mm","thickness":"22 mm","endLoss":"65 mm","faultLength":"120 mm","faults":2,"cup":"1.5 mm","bow":"2 mm"},{"name":"F2","group":"floorboard","count":1,"length":"1340 mm","width":"138 mm","thickness":"19 mm","endLoss":"75 mm","faultLength":"55 mm","cup":"3.5 mm","bow":"3 mm"}]
   */
  readonly boards: InputOf<(typeof pileYield)['inputs']['boards']>;
  /**
   * planed off each face once it is flat.
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
   * taken off each strip in jointing, both edges together.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * finished thickness wanted, or thickness, strip width and piece length.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm, or an object with thickness? (common thickness wanted), width? (finished width of a strip), length? (length of a piece).
   * @example {"width":"42 mm"}
   */
  readonly target?: InputOf<(typeof pileYield)['inputs']['target']>;
  /**
   * whether thick boards are resawn into layers.
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
   * dressed volume as a share of the pile.
   */
  readonly yield: Quantity<'share'>;
  /**
   * dressed pieces.
   */
  readonly pieces: number;
  /**
   * length of the dressed pieces.
   * Shown in m.
   */
  readonly usableLength: Quantity<'length'>;
  /**
   * face area of the dressed pieces.
   */
  readonly area: Quantity<'area'>;
  /**
   * dressed volume.
   */
  readonly volume: Quantity<'volume'>;
  /**
   * volume of the pile as found.
   */
  readonly roughVolume: Quantity<'volume'>;
  /**
   * boards that give nothing at this thickness.
   */
  readonly boardsLeftOut: number;
  /**
   * thickness at which the yield peaks.
   */
  readonly peakThickness: Quantity<'length'>;
  /**
   * yield at that thickness.
   */
  readonly peakYield: Quantity<'share'>;
  /**
   * By group, at the common thickness.
   */
  readonly byGroup: ShownOf<(typeof pileYield)['outputs']['byGroup']>;
  /**
   * Thicknesses at which boards begin to drop out.
   */
  readonly byThickness: ShownOf<(typeof pileYield)['outputs']['byThickness']>;
}

/** What {@link roughToDressed} takes. The dressed size a rough board gives, or the rough size to buy for a wanted one, by planing allowances; and the standard dressed size of nominal softwood. For bent boards calculate the flattening loss first. */
export interface RoughToDressedInput {
  /**
   * rough size, to find the dressed one.
   * Takes an object with thickness (thickness), width (width), length? (length).
   * @example {"thickness":"47 mm","width":"97 mm","length":"1870 mm"}
   */
  readonly rough?: InputOf<(typeof roughToDressed)['inputs']['rough']>;
  /**
   * dressed size, to find the rough one.
   * Takes an object with thickness (thickness), width (width), length? (length).
   */
  readonly dressed?: InputOf<(typeof roughToDressed)['inputs']['dressed']>;
  /**
   * nominal softwood size in inches, such as 2x4.
   * Takes a text of 1 to 200 characters.
   */
  readonly nominal?: string;
  /**
   * sides and edges planed: S1S one side, S1E one edge, S4S all four.
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
   * share of the section planed away.
   */
  readonly planedAway: Quantity<'share'>;
}

/** What {@link topFromPile} takes. Whether a surveyed pile is enough for a glued top, how thick it can be, and which board goes where, with a proof or the gap to one, and what small changes to pile or rules would free. */
export interface TopFromPileInput {
  /**
   * survey of the pile, a row for each board or kind of board.
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
   * thickness of the top; left out: as thick as the pile allows.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 40 mm
   */
  readonly thickness?: Written<'length'>;
  /**
   * how strips lie: a board's width across the top, its thickness across the top, or whichever is better.
   * Takes one of "flat", "on edge", "either".
   * @default either
   */
  readonly lay?: 'flat' | 'on edge' | 'either';
  /**
   * layers glued face to face.
   * Takes a whole number such as 1, at least 1 and at most 4.
   * @default 1
   */
  readonly layers?: Written<'count'>;
  /**
   * spare length for squaring both ends.
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
   * taken off each row in jointing, both edges together.
   * Takes a length such as "3 mm", at least 0 mm and at most 50 mm.
   * @default 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * taken off each slab in jointing after the thicknesser, both edges together.
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
   * widest board the thicknesser takes.
   * Takes a length such as "300 mm", more than 0 mm and at most 5000 mm.
   * @default 300 mm
   */
  readonly widestSlab?: Written<'length'>;
  /**
   * greatest opening of the clamps owned.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly clampReach?: Written<'length'>;
  /**
   * least width of a row once jointed.
   * Takes a length such as "20 mm", at least 0 mm and at most 1000 mm.
   * @default 20 mm
   */
  readonly leastRow?: Written<'length'>;
  /**
   * least length of a piece that shows.
   * Takes a length such as "250 mm", at least 20 mm and at most 5000 mm.
   * @default 250 mm
   */
  readonly leastPiece?: Written<'length'>;
  /**
   * least distance of joints in neighbouring rows.
   * Takes a length such as "150 mm", at least 0 mm and at most 5000 mm.
   * @default 150 mm
   */
  readonly stagger?: Written<'length'>;
  /**
   * most joints in a row.
   * Takes a whole number such as 3, at least 0 and at most 20.
   * @default 3
   */
  readonly maxJoints?: Written<'count'>;
  /**
   * whether a board laid flat may be ripped into several strips; strips on edge always are.
   * Takes one of "no", "yes".
   * @default no
   */
  readonly rip?: 'no' | 'yes';
  /**
   * tones mixed, or apart: a row of one tone, and rows of a tone together.
   * Takes one of "mixed", "apart".
   * @default mixed
   */
  readonly tones?: 'mixed' | 'apart';
  /**
   * faces of the top that show; with one, faults marked "back" stay in a top laid flat.
   * Takes one of "one", "both".
   * @default both
   */
  readonly showFaces?: 'one' | 'both';
  /**
   * least offcut worth keeping; left out: the least piece.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   */
  readonly leastOffcut?: Written<'length'>;
  /**
   * whether to find the curves over thickness and stagger.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly curves?: boolean | 'yes' | 'no';
  /**
   * whether to find what small changes would free.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly whatIfs?: boolean | 'yes' | 'no';
  /**
   * rounds of the search; left out: by the size of the pile.
   * Takes a whole number such as 4, at least 1 and at most 1 000 000 000.
   * @example 300
   */
  readonly rounds?: Written<'count'>;
  /**
   * a last stop for slow machines: longest to search.
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
   * no lay-up can be wider.
   */
  readonly widthBound: Quantity<'length'>;
  /**
   * no top this wide can be thicker.
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
   * timber used, less offcuts kept.
   */
  readonly timber: Quantity<'volume'>;
  /**
   * no top this wide takes less timber.
   */
  readonly timberBound?: Quantity<'volume'> | undefined;
  /**
   * ripped off an edge row.
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
   * least distance of joints between layers.
   */
  readonly layerStagger?: Quantity<'length'> | undefined;
  /**
   * share of the width without joints, worst section.
   */
  readonly bendingShare: Quantity<'share'>;
  /**
   * thickness to calculate sag and bending with.
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
   * Stops and fences, each set once.
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
   * length of the caul between its two clamps.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 640 mm
   */
  readonly length: Written<'length'>;
  /**
   * width of the caul, across its pressing face.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 45 mm
   */
  readonly width: Written<'length'>;
  /**
   * depth of the caul, the way it bends.
   * Takes a length such as "900 mm", at least 5 mm and at most 500 mm.
   * @example 60 mm
   */
  readonly depth: Written<'length'>;
  /**
   * timber or grade of the caul.
   * Takes a grade such as "C24" or "MGP10", or a timber by name such as "Douglas-fir".
   * @example C24
   */
  readonly timber: Exclude<InputOf<(typeof caulCamber)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * force of the clamp at each end.
   * Takes a force such as "2 kN", more than 0 N and at most 50 kN.
   * @example 2 kN
   */
  readonly clampForceEach: Written<'force'>;
}
/** What {@link caulCamber} gives, beside workings, cautions, sources and chart. */
export interface CaulCamberOutput {
  /**
   * crown at the middle, planed off to nothing there and fully at the ends.
   */
  readonly camber: Quantity<'length'>;
  /**
   * bending stress at the middle.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * does the caul bear it?.
   */
  readonly ok: boolean;
  /**
   * stress it may be bent to.
   */
  readonly allowed?: Quantity<'stress'> | undefined;
  /**
   * crown if the timber is stiff for its kind.
   */
  readonly camberLow?: Quantity<'length'> | undefined;
  /**
   * crown if the timber is limber for its kind.
   */
  readonly camberHigh?: Quantity<'length'> | undefined;
  /**
   * press along the caul.
   */
  readonly press: Quantity<'lineLoad'>;
  /**
   * How much to plane off along one half; the other half alike.
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
   * height of the joint: thickness of the slab at an edge joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * clamping pressure on the glue line; or give timberKind.
   * Takes a pressure such as "700 kPa", more than 0 kPa and at most 10 MPa.
   */
  readonly pressure?: Written<'pressure'>;
  /**
   * kind of timber (and glue) whose printed pressure is taken, at the upper end; or give pressure.
   * Takes one of "softwood", "hardwood", "low-density", "high-density", "softwood polyurethane", "hardwood polyurethane".
   * @example softwood
   */
  readonly timberKind?: 'softwood' | 'hardwood' | 'low-density' | 'high-density' | 'softwood polyurethane' | 'hardwood polyurethane';
  /**
   * force that one clamp gives, or a kind of clamp whose force was measured.
   * Takes one of "parallel-jaw clamp", "one-hand trigger bar clamp", "aluminium bar clamp", "3/4 in pipe clamp", "I-beam bar (sash) clamp", or a force such as "2 kN", more than 0 N and at most 100 kN.
   * @example I-beam bar (sash) clamp
   */
  readonly clampForce: Exclude<InputOf<(typeof clampPlan)['inputs']['clampForce']>, string> | 'parallel-jaw clamp' | 'one-hand trigger bar clamp' | 'aluminium bar clamp' | '3/4 in pipe clamp' | 'I-beam bar (sash) clamp' | (string & {});
  /**
   * width of the outermost board, from the edge that is pressed to the first glue line.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 45 mm
   */
  readonly outerWidth: Written<'length'>;
  /**
   * thickness of the pad or batten between clamp and edge.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 20 mm
   */
  readonly pad?: Written<'length'>;
  /**
   * length of the pad along the joint; 0 for a batten that runs all along.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   * @example 60 mm
   */
  readonly padLength?: Written<'length'>;
  /**
   * width of the clamp head along the joint.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   */
  readonly head?: Written<'length'>;
  /**
   * how far the clamps reach: the opening of a bar, the throat of a screw clamp.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 900 mm
   */
  readonly reach?: Written<'length'>;
  /**
   * how far they have to reach: the width of the slab with both pads.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 715 mm
   */
  readonly needReach?: Written<'length'>;
  /**
   * width of the slab between the clamp heads, to check that it stays flat.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 675 mm
   */
  readonly slabWidth?: Written<'length'>;
  /**
   * how far the force is off the middle of the thickness.
   * Takes a length such as "2 mm", at least 0 mm and at most 500 mm.
   * @default 2 mm
   */
  readonly offset?: Written<'length'>;
  /**
   * modulus of elasticity across the grain.
   * Takes a modulus of elasticity such as "300 MPa", more than 0 MPa and at most 10 GPa.
   * @default 300 MPa
   */
  readonly acrossModulus?: Written<'modulus'>;
  /**
   * whether cauls across the slab hold it flat.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly cauls?: boolean | 'yes' | 'no';
  /**
   * the clamps there are, a row each kind.
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
   * distance from clamp to clamp; half of it from either end.
   */
  readonly spacing: Quantity<'length'>;
  /**
   * force that the joint needs.
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
   * force to tighten each clamp to.
   */
  readonly forceEach: Quantity<'force'>;
  /**
   * clamping pressure taken.
   */
  readonly pressure: Quantity<'pressure'>;
  /**
   * length of joint that one clamp presses.
   */
  readonly coverEach: Quantity<'length'>;
  /**
   * do the clamps reach?.
   */
  readonly reachOk?: boolean | undefined;
  /**
   * force at which the slab opens on one face.
   */
  readonly liftForce?: Quantity<'force'> | undefined;
  /**
   * force at which a straight slab bows up.
   */
  readonly bucklingForce?: Quantity<'force'> | undefined;
  /**
   * pressure that the clamps there are reach.
   */
  readonly ownedPressure?: Quantity<'pressure'> | undefined;
  /**
   * clamps there are that reach.
   */
  readonly ownedClamps?: number | undefined;
  /**
   * whether the clamps there are will do.
   */
  readonly ownedVerdict?: string | undefined;
  /**
   * Where the clamps stand, in the order to tighten: from the middle outward.
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
   * height of a joint: the thickness of the slab in edge joints, the width of the boards between faces.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 40 mm
   */
  readonly jointHeight: Written<'length'>;
  /**
   * joints: one less than the strips or layers.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * glue on each spread face.
   * Takes an application rate such as "200 g/m2", more than 0 g/m² and at most 2000 g/m².
   * @default 200 g/m2
   * @example 200 g/m2
   */
  readonly spread?: Written<'applicationRate'>;
  /**
   * faces of a joint that are spread: 1, or 2 when both are wetted at the full spread.
   * Takes a whole number such as 1, at least 1 and at most 2.
   * @default 1
   */
  readonly sides?: Written<'count'>;
  /**
   * added for what is squeezed out or left in the pot.
   * Takes a share such as "0 %", at least 0 % and at most 300 %.
   * @default 0 %
   * @example 10 %
   */
  readonly waste?: Written<'share'>;
  /**
   * density of the glue, from its label.
   * Takes a density such as "1100 kg/m3", at least 500 kg/m³ and at most 2500 kg/m³.
   * @default 1100 kg/m3
   */
  readonly glueDensity?: Written<'density'>;
}
/** What {@link glueQuantity} gives, beside workings, cautions, sources and chart. */
export interface GlueQuantityOutput {
  /**
   * glue to have at hand.
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
   * joints in the whole glue-up.
   * Takes a whole number such as 4, at least 1 and at most 10 000.
   * @example 14
   */
  readonly joints: Written<'count'>;
  /**
   * time to spread one joint and lay it ready.
   * Takes a time such as "15 min", at least 1 s and at most 2 h.
   * @example 45 s
   */
  readonly perJoint: Written<'time'>;
  /**
   * how long spread glue stays wet in the open, from its sheet; at 20 °C when a temperature is given.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   * @example 10 min
   */
  readonly openTime: Written<'time'>;
  /**
   * how long a closed joint may wait for pressure, from the glue’s sheet.
   * Takes a time such as "15 min", more than 0 s and at most 1 day.
   */
  readonly closedTime?: Written<'time'>;
  /**
   * temperature of room and timber; the times are then taken as printed for 20 °C and corrected.
   * Takes a temperature such as "21 degC", at least 0 °C and at most 45 °C.
   * @example 24 degC
   */
  readonly temperature?: Written<'temperature'>;
  /**
   * time to set all clamps of one batch.
   * Takes a time such as "0 min", at least 0 s and at most 2 h.
   * @default 0 min
   * @example 2 min
   */
  readonly clampsUp?: Written<'time'>;
  /**
   * how long the clamps stay on before they serve the next batch.
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
   * most joints that one batch may have.
   */
  readonly jointsPerBatch: number;
  /**
   * open time left over when such a batch is closed.
   */
  readonly spare: Quantity<'time'>;
  /**
   * open time in this air.
   */
  readonly openHere: Quantity<'time'>;
  /**
   * from the first glue to the last clamp off, with one set of clamps.
   */
  readonly total: Quantity<'time'>;
  /**
   * Batches as equal as whole joints allow.
   */
  readonly plan: ShownOf<(typeof glueTiming)['outputs']['plan']>;
}

/** What {@link layerCount} takes. How many boards to glue face to face for a thick top, and how thick to plane each so that the slab is balanced. */
export interface LayerCountInput {
  /**
   * thickness of the finished top.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 54 mm
   */
  readonly topThickness: Written<'length'>;
  /**
   * rough thickness of a board; give that of the thinnest.
   * Takes a length such as "900 mm", more than 0 mm and at most 1000 mm.
   * @example 22 mm
   */
  readonly stripThickness: Written<'length'>;
  /**
   * taken off each of the two faces of a board before gluing.
   * Takes a length such as "1 mm", at least 0 mm and at most 100 mm.
   * @default 1 mm
   * @example 1.5 mm
   */
  readonly planePerFace?: Written<'length'>;
  /**
   * taken off the slab’s thickness in flattening it after a glue-up, both faces together.
   * Takes a length such as "2 mm", at least 0 mm and at most 200 mm.
   * @default 2 mm
   * @example 2 mm
   */
  readonly flattenPerGlueUp?: Written<'length'>;
  /**
   * glue-ups one after another, each followed by a flattening; 1 when all layers are glued at once.
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
   * thickness of the slab once flattened, before the spare is planed off.
   */
  readonly finalThickness: Quantity<'length'>;
  /**
   * thickness to spare over the finished top.
   */
  readonly spare: Quantity<'length'>;
  /**
   * thickness of a layer planed as little as possible.
   */
  readonly layerPlaned: Quantity<'length'>;
  /**
   * thickness to plane every layer to, so that all are alike and nothing is to spare.
   */
  readonly layerBalanced: Quantity<'length'>;
  /**
   * what lies at the middle of the slab.
   */
  readonly middle: string;
}

/** What {@link matchSlabs} takes. Plane all slabs to the thinnest, or shim them up to the thickest: both ways, with the timber lost. */
export interface MatchSlabsInput {
  /**
   * the slabs: thicknesses, or a table with names and sizes.
   * Takes thicknesses such as '41 mm, 42.5 mm, 40 mm', or a table with columns name?, thickness, width?, length?.
   * @example [{"name":"left","thickness":"41.2 mm","width":"225 mm","length":"2 m"},{"name":"middle","thickness":"43.0 mm","width":"225 mm","length":"2 m"},{"name":"right","thickness":"40.6 mm","width":"225 mm","length":"2 m"}]
   */
  readonly slabs: InputOf<(typeof matchSlabs)['inputs']['slabs']>;
  /**
   * least thickness that a slab may end with; thinner ones are shimmed or left out.
   * Takes a length such as "0 mm", at least 0 mm and at most 1000 mm.
   * @default 0 mm
   * @example 38 mm
   */
  readonly minimum?: Written<'length'>;
  /**
   * planed off every slab in any case, both faces together.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   * @example 1 mm
   */
  readonly cleanUp?: Written<'length'>;
}
/** What {@link matchSlabs} gives, beside workings, cautions, sources and chart. */
export interface MatchSlabsOutput {
  /**
   * thickness to plane all to.
   */
  readonly planeAllTo: Quantity<'length'>;
  /**
   * planed off all slabs together, when all are planed.
   */
  readonly loss: Quantity<'length'>;
  /**
   * the same as a share of the slabs that are planed.
   */
  readonly lossShare: Quantity<'share'>;
  /**
   * the same as timber, where widths and lengths are given.
   */
  readonly lossVolume?: Quantity<'volume'> | undefined;
  /**
   * height of the top above the frame when slabs are shimmed instead.
   */
  readonly shimTo: Quantity<'length'>;
  /**
   * all shims together.
   */
  readonly shimTotal: Quantity<'length'>;
  /**
   * planed off all slabs together, when they are shimmed: the cleaning up alone.
   */
  readonly shimLoss: Quantity<'length'>;
  /**
   * Slab by slab, both ways.
   */
  readonly orShims: ShownOf<(typeof matchSlabs)['outputs']['orShims']>;
}

/** What {@link stackUp} takes. How far a glued-up stack may come out off its size: at worst, most likely, and the chance that it falls inside limits. */
export interface StackUpInput {
  /**
   * the parts of the stack.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, nominal, plusMinus?, sd?, count?, setting?.
   * @example [{"name":"strip","nominal":"45 mm","plusMinus":"0.2 mm","setting":"0.1 mm","count":14},{"name":"edge strip","nominal":"12 mm","sd":"0.2 mm"}]
   */
  readonly parts: InputOf<(typeof stackUp)['inputs']['parts']>;
  /**
   * size wanted of the whole stack.
   * Takes a length such as "900 mm", at least -100 m and at most 100 m.
   * @example 642 mm
   */
  readonly target?: Written<'length'>;
  /**
   * limits of the whole stack: a length either way of the target (or, without one, of the nominal size), or { low, high }.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm, or an object with low (least), high (most).
   * @example 1 mm
   */
  readonly limits?: InputOf<(typeof stackUp)['inputs']['limits']>;
  /**
   * standard deviations in a plus-or-minus: 2 where one piece in twenty lies outside it, 3 where one in 370 does.
   * Takes a number such as 2, at least 1 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * how pieces err: normal (most near the middle) or even (any size between the limits is as likely).
   * Takes one of "normal", "even".
   * @default normal
   */
  readonly shape?: 'normal' | 'even';
  /**
   * share of stacks that the interval is to hold.
   * Takes a share such as "95 %", at least 50 % and at most 99.9 %.
   * @default 95 %
   */
  readonly confidence?: Written<'share'>;
  /**
   * seed of the simulation: same seed, same draws.
   * Takes a whole number such as 1, at least 0 and at most 4 000 000 000.
   * @default 1
   */
  readonly seed?: Written<'count'>;
}
/** What {@link stackUp} gives, beside workings, cautions, sources and chart. */
export interface StackUpOutput {
  /**
   * size of the stack when every piece is right.
   */
  readonly nominal: Quantity<'length'>;
  /**
   * off by at most, either way, when every piece errs its most.
   */
  readonly worstCase: Quantity<'length'>;
  /**
   * off by, either way: root of the sum of the squares.
   */
  readonly rss: Quantity<'length'>;
  /**
   * least of the interval that holds that share of stacks.
   */
  readonly low: Quantity<'length'>;
  /**
   * most of that interval.
   */
  readonly high: Quantity<'length'>;
  /**
   * standard deviation of the stack.
   */
  readonly sd: Quantity<'length'>;
  /**
   * chance that the stack falls inside the limits.
   */
  readonly chanceInside?: Quantity<'share'> | undefined;
  /**
   * the same, counted in simulated stacks.
   */
  readonly chanceSimulated?: Quantity<'share'> | undefined;
  /**
   * to shim (negative: to plane off) so that the middle falls on the target.
   */
  readonly shim?: Quantity<'length'> | undefined;
}

/** What {@link stripCount} takes. How many strips a top takes across its width, and in how many slabs to glue them so that each passes the thicknesser. */
export interface StripCountInput {
  /**
   * width of the finished top.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 640 mm
   */
  readonly topWidth: Written<'length'>;
  /**
   * rough width of a strip, as it will stand across the top.
   * Takes a length such as "900 mm", more than 0 mm and at most 2000 mm.
   * @example 48 mm
   */
  readonly stripWidth: Written<'length'>;
  /**
   * taken off each strip in jointing, both edges together.
   * Takes a length such as "3 mm", at least 0 mm and at most 100 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly jointing?: Written<'length'>;
  /**
   * kept for trimming the glued top to width, both edges together.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   * @example 10 mm
   */
  readonly finalTrim?: Written<'length'>;
  /**
   * widest board that the thicknesser takes.
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
   * width of a strip once jointed.
   */
  readonly stripFinished: Quantity<'length'>;
  /**
   * width as glued, before the trim.
   */
  readonly gluedWidth: Quantity<'length'>;
  /**
   * width to spare after the trim.
   */
  readonly spare: Quantity<'length'>;
  /**
   * Slabs to glue first, each narrow enough for the thicknesser.
   */
  readonly slabs: ShownOf<(typeof stripCount)['outputs']['slabs']>;
}

/** What {@link stripLayout} takes. Lays a slab from random lengths: rows filled end to end, joints staggered, like tones kept apart, little wasted. */
export interface StripLayoutInput {
  /**
   * length of the slab, and so of every row.
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
   * the pieces to lay: their lengths, or a table with names, tones and counts.
   * Takes lengths such as '640 mm, 815 mm, 590 mm', or a table with columns name?, length, tone?, count?.
   * @example [{"name":"A","length":"940 mm","tone":"dark","count":4},{"name":"B","length":"815 mm","tone":"light","count":5},{"name":"C","length":"640 mm","tone":"dark","count":6},{"name":"D","length":"555 mm","tone":"light","count":6},{"name":"E","length":"470 mm","tone":"dark","count":6},{"name":"F","length":"390 mm","tone":"light","count":8},{"name":"G","length":"310 mm","tone":"dark","count":4}]
   */
  readonly lengths: InputOf<(typeof stripLayout)['inputs']['lengths']>;
  /**
   * least distance of a joint from any joint in the next row.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   * @example 150 mm
   */
  readonly minStagger: Written<'length'>;
  /**
   * width of a saw cut.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * least length of a piece that is cut, and of an offcut worth keeping; when left out, the stagger, 100 mm at most.
   * Takes a length such as "900 mm", at least 0 mm and at most 5000 mm.
   */
  readonly shortest?: Written<'length'>;
  /**
   * width of a row, for the picture.
   * Takes a length such as "45 mm", more than 0 mm and at most 1000 mm.
   * @default 45 mm
   */
  readonly rowWidth?: Written<'length'>;
  /**
   * how long to search at most.
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
   * the rows, each its pieces from left to right.
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
   * length lost to sawdust and to offcuts too short to keep.
   */
  readonly waste: Quantity<'length'>;
  /**
   * no layout of these pieces can waste less.
   */
  readonly leastWaste: Quantity<'length'>;
  /**
   * least distance of joints in neighbouring rows; the length of the slab where there are none.
   */
  readonly worstStagger: Quantity<'length'>;
  /**
   * length over which like tones lie side by side.
   */
  readonly sameTone: Quantity<'length'>;
  /**
   * left on the pile: pieces not used and offcuts kept.
   */
  readonly unused: Quantity<'length'>;
  /**
   * proven: none wastes less, and no like tones touch.
   */
  readonly optimal: boolean;
}

/** What {@link angledRail} takes. Slope, end cuts, length from point to point and recess outlines of a rail that rises from one upright to another, butted or let in. */
export interface AngledRailInput {
  /**
   * level distance between the uprights.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1310 mm
   */
  readonly run: Written<'length'>;
  /**
   * how much the rail rises from face to face.
   * Takes a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example 620 mm
   */
  readonly rise: Written<'length'>;
  /**
   * section of the rail, such as { width: "35 mm", depth: "60 mm" }.
   * Takes an object with width (thickness of the rail, across the frame), depth (depth of the rail, square to its length).
   * @example {"width":"35 mm","depth":"60 mm"}
   */
  readonly section: InputOf<(typeof angledRail)['inputs']['section']>;
  /**
   * how deep it is let into each upright.
   * Takes a length such as "0 mm", at least 0 mm and at most 500 mm.
   * @default 0 mm
   * @example 12 mm
   */
  readonly recessDepth?: Written<'length'>;
  /**
   * run and rise are measured from face to face (yes) or from middle to middle of the uprights (no).
   * Takes yes or no (true or false).
   * @default true
   */
  readonly betweenFaces?: boolean | 'yes' | 'no';
  /**
   * width of an upright in the plane of the frame; needed from middle to middle, and for the picture.
   * Takes a length such as "70 mm", more than 0 mm and at most 2000 mm.
   * @default 70 mm
   * @example 70 mm
   */
  readonly uprightWidth?: Written<'length'>;
  /**
   * picture fitted to the page, or at full size as a template.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link angledRail} gives, beside workings, cautions, sources and chart. */
export interface AngledRailOutput {
  /**
   * slope of the rail, and of its end cuts off square.
   */
  readonly angle: Quantity<'angle'>;
  /**
   * from long point to long point: the least blank.
   */
  readonly longPoint: Quantity<'length'>;
  /**
   * from short point to short point, along the rail.
   */
  readonly shortPoint: Quantity<'length'>;
  /**
   * along each edge, from cut to cut.
   */
  readonly edgeLength: Quantity<'length'>;
  /**
   * End cuts.
   */
  readonly bevels: ShownOf<(typeof angledRail)['outputs']['bevels']>;
  /**
   * height of the rail where it meets an upright.
   */
  readonly seat: Quantity<'length'>;
  /**
   * Outline of each recess, seen from the side.
   */
  readonly recess?: ShownOf<(typeof angledRail)['outputs']['recess']> | undefined;
  /**
   * width of each recess: the thickness of the rail.
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
   * from each end to the middle of the first biscuit.
   * Takes a length such as "60 mm", more than 0 mm and at most 2000 mm.
   * @default 60 mm
   * @example 75 mm
   */
  readonly endDistance?: Written<'length'>;
  /**
   * greatest spacing, middle to middle.
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
   * middle of each biscuit from the left end.
   */
  readonly positions: ShownOf<(typeof biscuitSpacing)['outputs']['positions']>;
  /**
   * spacing, middle to middle.
   */
  readonly spacing?: Quantity<'length'> | undefined;
  /**
   * glued face of all the biscuits.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * depth of the slot in each part, with 1 mm of room.
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
   * whether they cross, one ends on the other, or both end.
   * Takes one of "crossing", "end", "corner".
   * @default crossing
   */
  readonly at?: 'crossing' | 'end' | 'corner';
  /**
   * picture fitted to the page, or at full size as a template.
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
   * What to knife across each piece.
   */
  readonly shoulders: ShownOf<(typeof halfLap)['outputs']['shoulders']>;
  /**
   * glued face.
   */
  readonly glueArea: Quantity<'area'>;
  /**
   * timber to be cut away, both pieces.
   * Shown in cm3.
   */
  readonly removed: Quantity<'volume'>;
}

/** What {@link jointFit} takes. The chance that a spline, tenon or lap goes into its slot and is not loose, when both sizes vary a little; and the size to plane to. Sizes are taken to vary normally and apart from each other. */
export interface JointFitInput {
  /**
   * the slot, mortise or housing.
   * Takes an object with size (its size), plusMinus (how far it comes out over or under).
   * @example {"size":"6.2 mm","plusMinus":"0.1 mm"}
   */
  readonly slot: InputOf<(typeof jointFit)['inputs']['slot']>;
  /**
   * the spline, tenon or lap.
   * Takes an object with size (its size), plusMinus (how far it comes out over or under).
   * @example {"size":"6.15 mm","plusMinus":"0.1 mm"}
   */
  readonly part: InputOf<(typeof jointFit)['inputs']['part']>;
  /**
   * least clearance that still goes in; negative for a part that may be pressed.
   * Takes a length such as "0 mm", at least -5 mm and at most 50 mm.
   * @default 0 mm
   * @example 0 mm
   */
  readonly tightest?: Written<'length'>;
  /**
   * greatest clearance that the glue still bridges.
   * Takes a length such as "0.15 mm", at least -5 mm and at most 50 mm.
   * @default 0.15 mm
   * @example 0.2 mm
   */
  readonly loosest?: Written<'length'>;
  /**
   * how far a setting that all the joints share may be off, such as the fence, over or under.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly setting?: Written<'length'>;
  /**
   * standard deviations in a plus-or-minus: 2 where one piece in twenty lies outside it, 3 where one in 370 does.
   * Takes a number such as 2, at least 0.5 and at most 6.
   * @default 2
   */
  readonly sigmas?: Written<'ratio'>;
  /**
   * joints that must all go together.
   * Takes a whole number such as 1, at least 1 and at most 10 000.
   * @default 1
   * @example 4
   */
  readonly joints?: Written<'count'>;
}
/** What {@link jointFit} gives, beside workings, cautions, sources and chart. */
export interface JointFitOutput {
  /**
   * chance that it goes in and holds.
   */
  readonly chanceFits: Quantity<'share'>;
  /**
   * chance that it will not go in.
   */
  readonly chanceJams: Quantity<'share'>;
  /**
   * chance that it is loose.
   */
  readonly chanceLoose: Quantity<'share'>;
  /**
   * chance that all the joints fit.
   */
  readonly chanceAll: Quantity<'share'>;
  /**
   * clearance at worst, tight.
   */
  readonly worstTight: Quantity<'length'>;
  /**
   * clearance at worst, loose.
   */
  readonly worstLoose: Quantity<'length'>;
  /**
   * whether even the worst pair fits.
   */
  readonly worstCase: string;
  /**
   * clearance on average.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * standard deviation of the clearance.
   */
  readonly spread: Quantity<'length'>;
  /**
   * size to plane the part to.
   */
  readonly aim: Quantity<'length'>;
  /**
   * chance that it fits when planed to that size.
   */
  readonly chanceAtAim: Quantity<'share'>;
}

/** What {@link mitreGap} takes. How far a mitre gapes, and on which side, from an error of the saw’s tilt, of the fence, or of a board that is not flat; how much a spline pulls in; and from a trial cut how to correct the tilt. */
export interface MitreGapInput {
  /**
   * thickness of the boards at the mitre.
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
   * angle that the joint turns.
   * Takes an angle such as "90 deg", at least 10° and at most 170°.
   * @default 90 deg
   */
  readonly turn?: Written<'angle'>;
  /**
   * error of the tilt at each cut; positive where it is too steep.
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
   * how far the boards are out of flat along the joint.
   * Takes a length such as "0 mm", at least 0 mm and at most 50 mm.
   * @default 0 mm
   */
  readonly outOfFlat?: Written<'length'>;
  /**
   * slabs mitred one by one and joined later.
   * Takes a whole number such as 1, at least 1 and at most 50.
   * @default 1
   * @example 2
   */
  readonly slabs?: Written<'count'>;
  /**
   * how far one cut may differ from the next, either way.
   * Takes an angle such as "0.05 deg", at least 0° and at most 5°.
   * @default 0.05 deg
   */
  readonly cutVariation?: Written<'angle'>;
  /**
   * width of the spline across the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth?: Written<'length'>;
  /**
   * clearance of the spline in its slots.
   * Takes a length such as "0.1 mm", at least 0 mm and at most 5 mm.
   * @default 0.1 mm
   */
  readonly splineClearance?: Written<'length'>;
  /**
   * gap measured at a trial: positive where it is open at the outside.
   * Takes a length such as "900 mm", at least -100 mm and at most 100 mm.
   * @example 1.5 mm
   */
  readonly trialGap?: Written<'length'>;
  /**
   * length over which it was measured.
   * Takes a length such as "500 mm", more than 0 mm and at most 5000 mm.
   * @default 500 mm
   */
  readonly trialLength?: Written<'length'>;
  /**
   * gap that glue still bridges.
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
   * gap at the far end from the fence.
   */
  readonly fenceGap: Quantity<'length'>;
  /**
   * gap at worst, all errors together.
   */
  readonly worst: Quantity<'length'>;
  /**
   * difference of the gap from slab to slab, most.
   */
  readonly step?: Quantity<'length'> | undefined;
  /**
   * gap that the spline lets be pulled shut.
   */
  readonly splineTakes?: Quantity<'length'> | undefined;
  /**
   * turn the tilt at each cut by this; positive is steeper.
   */
  readonly correction?: Quantity<'angle'> | undefined;
}

/** What {@link mitredEnd} takes. The length of strip to glue up for a top with mitred ends that carry its grain down, where to cut it, and how much grain the saw takes at each fold. */
export interface MitredEndInput {
  /**
   * length of the finished top, outside to outside.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly topLength: Written<'length'>;
  /**
   * height of an end, outside.
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
   * width of the saw cut.
   * Takes a length such as "3 mm", at least 0 mm and at most 20 mm.
   * @default 3 mm
   * @example 3 mm
   */
  readonly kerf?: Written<'length'>;
  /**
   * angle between top and end, inside.
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
   * kept at each end of the strip to square it.
   * Takes a length such as "10 mm", at least 0 mm and at most 500 mm.
   * @default 10 mm
   */
  readonly trim?: Written<'length'>;
  /**
   * shaved off the mitres of a fold after the saw, both together.
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
   * grain lost on the show face at a fold.
   */
  readonly grainBreak: Quantity<'length'>;
  /**
   * bevel of each cut.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * width of the waste wedge on the back of a fold.
   */
  readonly wedge: Quantity<'length'>;
  /**
   * length of the top inside, between the ends.
   */
  readonly insideLength: Quantity<'length'>;
  /**
   * Cuts, measured on the show face from the left end of the strip.
   */
  readonly cutPositions: ShownOf<(typeof mitredEnd)['outputs']['cutPositions']>;
}

/** What {@link screwHold} takes. The pull that one or more wood screws hold by thread, steel and head, what is allowed on them, what they hold sideways, and their pilot hole. For seasoned timber; not for structural screws with figures of their own. */
export interface ScrewHoldInput {
  /**
   * species that holds the thread, or "unknown softwood"; or give specificGravity.
   * Takes a timber by name, such as "white oak", "spotted gum" or "unknown hardwood".
   * @example Douglas-fir
   */
  readonly timber?: Exclude<InputOf<(typeof screwHold)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * specific gravity, ovendry, of the piece that holds the thread.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly specificGravity?: Written<'ratio'>;
  /**
   * diameter of the shank, or gauge.
   * Takes a diameter of 1 to 25 mm such as "5 mm", or a gauge from #0 to #24 such as "#8".
   * @example #8
   */
  readonly diameter: InputOf<(typeof screwHold)['inputs']['diameter']>;
  /**
   * length of thread in the piece that holds.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 42 mm
   */
  readonly penetration: Written<'length'>;
  /**
   * screws that share the load.
   * Takes a whole number such as 1, at least 1 and at most 500.
   * @default 1
   * @example 4
   */
  readonly count?: Written<'count'>;
  /**
   * whether the thread is in side grain or end grain.
   * Takes one of "side", "end".
   * @default side
   */
  readonly grain?: 'side' | 'end';
  /**
   * group of the timber for the older rule sideways: II Douglas fir and southern pine, III hemlock and redwood, IV spruce.
   * Takes one of "I", "II", "III", "IV".
   * @example II
   */
  readonly group?: 'I' | 'II' | 'III' | 'IV';
  /**
   * whether it is a hardwood, for the pilot hole; read from the timber if one is given.
   * Takes yes or no (true or false).
   */
  readonly hardwood?: boolean | 'yes' | 'no';
  /**
   * thickness of the piece under the head.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 19 mm
   */
  readonly boardThickness?: Written<'length'>;
  /**
   * specific gravity of the piece under the head; as the other piece without it.
   * Takes a number such as 1.5, at least 0.1 and at most 1.3.
   */
  readonly boardGravity?: Written<'ratio'>;
  /**
   * diameter of the head; twice the shank without it.
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
   * tensile strength of the steel as declared, instead of that of the kind.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 2000 MPa.
   */
  readonly tensile?: Written<'stress'>;
  /**
   * whether holes are drilled for the screws.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly drilled?: boolean | 'yes' | 'no';
}
/** What {@link screwHold} gives, beside workings, cautions, sources and chart. */
export interface ScrewHoldOutput {
  /**
   * load that pulls all the screws out or breaks them.
   */
  readonly withdrawal: Quantity<'force'>;
  /**
   * load allowed along the screws, all of them.
   */
  readonly allowable: Quantity<'force'>;
  /**
   * what decides the load allowed along the screws.
   */
  readonly governedBy: string;
  /**
   * load allowed sideways, all screws.
   */
  readonly lateral?: Quantity<'force'> | undefined;
  /**
   * what decides sideways.
   */
  readonly sideways: string;
  /**
   * load allowed on the thread of one screw.
   */
  readonly thread: Quantity<'force'>;
  /**
   * load allowed on the steel of one screw.
   */
  readonly steel: Quantity<'force'>;
  /**
   * load allowed on the head of one screw.
   */
  readonly head?: Quantity<'force'> | undefined;
  /**
   * diameter at the root of the thread.
   */
  readonly root: Quantity<'length'>;
  /**
   * pilot hole for the thread.
   */
  readonly pilot: Quantity<'length'>;
  /**
   * pilot hole of the printed table.
   */
  readonly pilotAsPrinted?: string | undefined;
  /**
   * hole in the piece that is drawn up.
   */
  readonly clearance: Quantity<'length'>;
  /**
   * specific gravity taken.
   */
  readonly specificGravity: number;
  /**
   * Least distances between screws, to ends and to edges.
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
   * slope of a side from the flat.
   * Takes an angle such as "45 deg", at least 0° and at most 90°.
   * @example 60 deg
   */
  readonly slope: Written<'angle'>;
}
/** What {@link splayedCorner} gives, beside workings, cautions, sources and chart. */
export interface SplayedCornerOutput {
  /**
   * mitre: gauge or saw head off square.
   */
  readonly mitre: Quantity<'angle'>;
  /**
   * bevel: blade off square.
   */
  readonly bevel: Quantity<'angle'>;
  /**
   * lean of a side from upright.
   */
  readonly lean: Quantity<'angle'>;
  /**
   * angle between the faces of two sides.
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
   * width of the spline, across the joint.
   * Takes a length such as "900 mm", more than 0 mm and at most 300 mm.
   * @example 24 mm
   */
  readonly splineWidth: Written<'length'>;
  /**
   * from the inside corner along the mitre face to the middle of the slot.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 16 mm
   */
  readonly fromInside: Written<'length'>;
  /**
   * angle between the two pieces, inside.
   * Takes an angle such as "90 deg", at least 30° and at most 170°.
   * @default 90 deg
   */
  readonly angle?: Written<'angle'>;
  /**
   * room for glue at the bottom of each slot.
   * Takes a length such as "0.5 mm", at least 0 mm and at most 10 mm.
   * @default 0.5 mm
   */
  readonly glueRoom?: Written<'length'>;
  /**
   * least wood to leave on either side.
   * Takes a length such as "5 mm", at least 0 mm and at most 100 mm.
   * @default 5 mm
   */
  readonly leastWall?: Written<'length'>;
  /**
   * picture fitted to the page, or at full size as a template.
   * Takes one of "fitted", "full size".
   * @default fitted
   */
  readonly picture?: 'fitted' | 'full size';
}
/** What {@link splineSlot} gives, beside workings, cautions, sources and chart. */
export interface SplineSlotOutput {
  /**
   * depth of the slot in each piece.
   */
  readonly depth: Quantity<'length'>;
  /**
   * wood left between the slot and the inside face.
   */
  readonly wallInside: Quantity<'length'>;
  /**
   * wood left between the slot and the outside face.
   */
  readonly wallOutside: Quantity<'length'>;
  /**
   * whether both walls are as thick as wanted.
   */
  readonly ok: boolean;
  /**
   * deepest slot that leaves the least wall outside.
   */
  readonly deepest: Quantity<'length'>;
  /**
   * length of the mitre face.
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
   * width, corner to corner as the diagonals are measured.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 1200 mm
   */
  readonly width: Written<'length'>;
  /**
   * height, corner to corner as the diagonals are measured.
   * Takes a length such as "900 mm", more than 0 mm and at most 50 m.
   * @example 800 mm
   */
  readonly height: Written<'length'>;
  /**
   * diagonal from bottom left to top right.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1444 mm
   */
  readonly diagonalA?: Written<'length'>;
  /**
   * diagonal from bottom right to top left.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1440.4 mm
   */
  readonly diagonalB?: Written<'length'>;
  /**
   * instead of diagonals: how far the top right corner stands off a true upright, to the right; to the left is negative.
   * Takes a length such as "900 mm", at least -50 m and at most 50 m.
   */
  readonly cornerOffset?: Written<'length'>;
  /**
   * how far one reading of the tape may be out.
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
   * out of square, by length.
   */
  readonly outPerMetre: Quantity<'slope'>;
  /**
   * how far the top must go along the bottom.
   */
  readonly move: Quantity<'length'>;
  /**
   * what to pull.
   */
  readonly pull: string;
  /**
   * by how much the longer diagonal must get shorter.
   */
  readonly shorten: Quantity<'length'>;
  /**
   * both diagonals when it is square.
   */
  readonly trueDiagonal: Quantity<'length'>;
  /**
   * diagonal A as it is.
   */
  readonly diagonalA: Quantity<'length'>;
  /**
   * diagonal B as it is.
   */
  readonly diagonalB: Quantity<'length'>;
  /**
   * what the tape’s own error could be mistaken for, by length.
   */
  readonly readingAngle: Quantity<'slope'>;
  /**
   * whether it is out of square by more than the tape’s own error.
   */
  readonly sure: boolean;
  /**
   * how badly sides and diagonals agree: as a length of diagonal.
   */
  readonly sidesDiffer?: Quantity<'length'> | undefined;
}

/** What {@link beam} takes. Reactions, shear, moment, sag and stresses of a straight beam with any supports and loads: rails, tops, shelves, brackets. A notch is checked where it is cut. Not for frames or tapered beams. */
export interface BeamInput {
  /**
   * length of the beam from end to end.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * where and how it is held.
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
   * notch or lap cut into the rail, where there is one.
   * Takes an object with at? (from the nearer support to the notch; 0 at the support itself), depth (how deep it is cut), side? (whether it is cut from below or above), length? (how long it is along the rail; as deep as it is, without it), taper? (run of the sloping shoulder for each unit of rise; 0 is square).
   */
  readonly notch?: InputOf<(typeof beam)['inputs']['notch']>;
  /**
   * whether its own weight counts beside the loads.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * category of use: home or office, hall or shop, workshop, shelf or store, permanent, or short; without one the whole load is taken as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place: service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor of a load that stays, instead of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof beam)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share of the imposed load that stays on for months, instead of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * species, or grade; salvaged and not known: "unknown softwood", the default.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof beam)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * structural grade, if there is one; goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof beam)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * bending stress to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * shear stress along the grain to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density, for the own weight, instead of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * who graded the piece and how; needed for a strengthRatio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link beam} gives, beside workings, cautions, sources and chart. */
export interface BeamOutput {
  /**
   * greatest sag when the load comes on.
   */
  readonly maxDeflection: Quantity<'length'>;
  /**
   * greatest sag in the long run.
   */
  readonly longDeflection: Quantity<'length'>;
  /**
   * where it sags most, from the left end.
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
   * bending stress as a share of the stress to stay under.
   */
  readonly bendingUse?: Quantity<'share'> | undefined;
  /**
   * shear stress as a share of the stress to stay under.
   */
  readonly shearUse?: Quantity<'share'> | undefined;
  /**
   * force or moment at the notch as a share of what it carries.
   */
  readonly notchUse?: Quantity<'share'> | undefined;
  /**
   * whether the stresses stay under theirs.
   */
  readonly verdict: string;
  /**
   * second moment of area; where moduli differ, as if all had that of the timber.
   */
  readonly secondMoment: Quantity<'secondMoment'>;
  /**
   * section modulus: moment over greatest bending stress.
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
   * Shear, moment and first sag at the ends, supports, loads and worst places (just right of each).
   */
  readonly diagrams: ShownOf<(typeof beam)['outputs']['diagrams']>;
}

/** What {@link rackingFrame} takes. How far a frame of two legs and a rail sways when pushed along its top, what push it holds and what gives first: members, glued laps, screws or brace. An estimate to compare joints by. */
export interface RackingFrameInput {
  /**
   * from the floor to the middle of the rail.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 850 mm
   */
  readonly height: Written<'length'>;
  /**
   * between the legs, middle to middle.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 560 mm
   */
  readonly width: Written<'length'>;
  /**
   * thickness of the frame by depth of its legs in the plane of the frame.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @example 35 x 70 mm
   */
  readonly section: InputOf<(typeof rackingFrame)['inputs']['section']>;
  /**
   * thickness by depth of the rail, where it differs from the legs.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   */
  readonly rail?: InputOf<(typeof rackingFrame)['inputs']['rail']>;
  /**
   * how the corners are made.
   * Takes one of "glued half lap", "screwed half lap", "stiff", "braced".
   * @default glued half lap
   * @example glued half lap
   */
  readonly joint?: 'glued half lap' | 'screwed half lap' | 'stiff' | 'braced';
  /**
   * stiffness of one corner against turning, instead of the estimate.
   * Takes a rotational stiffness such as "8 kN m/rad", more than 0 N·m/rad and at most 1 000 000 kN·m/rad.
   */
  readonly jointStiffness?: Written<'rotationalStiffness'>;
  /**
   * screws in each corner, or at each end of the brace.
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
   * section of the brace from a foot to the far corner.
   * Takes width by depth such as "45 x 95 mm", or { width, depth }.
   * @default 20 x 45 mm
   */
  readonly brace?: InputOf<(typeof rackingFrame)['inputs']['brace']>;
  /**
   * frames that share the push.
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
   * mass of the piece, for the push of the furniture test.
   * Takes a mass such as "12 kg", more than 0 g and at most 5000 kg.
   * @example 44 kg
   */
  readonly mass?: Written<'mass'>;
  /**
   * whether the top is over 0.46 m² and over 610 mm high.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly largeTop?: boolean | 'yes' | 'no';
  /**
   * species, or grade; salvaged and not known: "unknown softwood", the default.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof rackingFrame)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * structural grade, if there is one; goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof rackingFrame)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * bending stress to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * shear stress along the grain to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density, for the own weight, instead of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * who graded the piece and how; needed for a strengthRatio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link rackingFrame} gives, beside workings, cautions, sources and chart. */
export interface RackingFrameOutput {
  /**
   * what it holds, and what gives first.
   */
  readonly verdict: string;
  /**
   * sway at the top for the push.
   */
  readonly sway: Quantity<'length'>;
  /**
   * push that the weakest part holds.
   */
  readonly pushAllowed?: Quantity<'force'> | undefined;
  /**
   * share of the strength that the push uses.
   */
  readonly use?: Quantity<'share'> | undefined;
  /**
   * sway at the top for each 100 N.
   */
  readonly swayPerForce: Quantity<'length'>;
  /**
   * push for each millimetre of sway.
   */
  readonly stiffness: Quantity<'springRate'>;
  /**
   * stiffness of one corner.
   */
  readonly jointStiffness?: Quantity<'rotationalStiffness'> | undefined;
  /**
   * share of the sway that the corners give.
   */
  readonly shareOfJoints?: Quantity<'share'> | undefined;
  /**
   * push on a leg in the furniture test.
   */
  readonly testForce?: Quantity<'force'> | undefined;
  /**
   * sway under that push.
   */
  readonly testSway?: Quantity<'length'> | undefined;
  /**
   * What the push uses of each part.
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
   * width by depth of the rail, depth in the direction of the load.
   * Takes width by depth such as "45 x 95 mm" (depth in the direction of the load), { width, depth }, a box { width, depth, web, flange }, a bar { diameter }, or pieces { layers: [{ width, depth, modulus? }] } or { beside: [...] }.
   * @example 45 x 95 mm
   */
  readonly section: InputOf<(typeof railSpan)['inputs']['section']>;
  /**
   * load on the rail by length.
   * Takes a load by length such as "450 N/m", more than 0 N/m and at most 1000 kN/m.
   * @example 450 N/m
   */
  readonly load: Written<'lineLoad'>;
  /**
   * how far it may sag: a share of the span or a length.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   * @example L/300
   */
  readonly limit?: InputOf<(typeof railSpan)['inputs']['limit']>;
  /**
   * permanent load by length beside the load, such as the top itself.
   * Takes a load by length such as "0 N/m", at least 0 N/m and at most 1000 kN/m.
   * @default 0 N/m
   */
  readonly permanent?: Written<'lineLoad'>;
  /**
   * whether the rail carries its own weight beside the load.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * notch or lap cut into the rail, where there is one.
   * Takes an object with at? (from the nearer support to the notch; 0 at the support itself), depth (how deep it is cut), side? (whether it is cut from below or above), length? (how long it is along the rail; as deep as it is, without it), taper? (run of the sloping shoulder for each unit of rise; 0 is square).
   */
  readonly notch?: InputOf<(typeof railSpan)['inputs']['notch']>;
  /**
   * category of use: home or office, hall or shop, workshop, shelf or store, permanent, or short; without one the whole load is taken as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place: service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor of a load that stays, instead of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof railSpan)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share of the imposed load that stays on for months, instead of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * species, or grade; salvaged and not known: "unknown softwood", the default.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof railSpan)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * structural grade, if there is one; goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C24
   */
  readonly grade?: Exclude<InputOf<(typeof railSpan)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * bending stress to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * shear stress along the grain to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density, for the own weight, instead of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * who graded the piece and how; needed for a strengthRatio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade.
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
   * longest span for the sag.
   */
  readonly spanByDeflection: Quantity<'length'>;
  /**
   * longest span for the bending stress.
   */
  readonly spanByBending?: Quantity<'length'> | undefined;
  /**
   * longest span for the shear stress.
   */
  readonly spanByShear?: Quantity<'length'> | undefined;
  /**
   * longest span for what the notch leaves.
   */
  readonly spanByNotch?: Quantity<'length'> | undefined;
  /**
   * sag at that span when the load comes on.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * sag at that span in the long run.
   */
  readonly sag: Quantity<'length'>;
  /**
   * bending stress at that span.
   */
  readonly bendingStress: Quantity<'stress'>;
  /**
   * shear stress at that span.
   */
  readonly shearStress: Quantity<'stress'>;
  /**
   * the timber’s figures.
   */
  readonly basis: string;
  /**
   * Over the species of the group.
   */
  readonly range?: ShownOf<(typeof railSpan)['outputs']['range']> | undefined;
}

/** What {@link tipping} takes. Whether a piece of furniture stands when somebody leans on its edge or pushes it, from the masses of its parts and where its feet are. For a level floor and nothing fixed to a wall. */
export interface TippingInput {
  /**
   * the parts and what stands on them.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns name?, mass, position, height?.
   * @example [{"name":"top","mass":"26 kg","position":"200 mm","height":"890 mm"},{"name":"frame","mass":"18 kg","position":"240 mm","height":"450 mm"}]
   */
  readonly parts: InputOf<(typeof tipping)['inputs']['parts']>;
  /**
   * from the front feet to the back feet.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @example 480 mm
   */
  readonly base: Written<'length'>;
  /**
   * how far the front edge stands out before the front feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 120 mm
   */
  readonly overhang?: Written<'length'>;
  /**
   * how far the back edge stands out behind the back feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   * @example 40 mm
   */
  readonly backOverhang?: Written<'length'>;
  /**
   * load down on the edge, front or back.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 400 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * push along the floor, forward or back.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 60 N
   */
  readonly push?: Written<'force'>;
  /**
   * height of the push over the floor.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   * @default 900 mm
   * @example 900 mm
   */
  readonly pushHeight?: Written<'length'>;
  /**
   * how many times the holding moment should be the tipping one, for the forces given.
   * Takes a number such as 1.5, at least 1 and at most 10.
   * @default 1.5
   */
  readonly factor?: Written<'ratio'>;
  /**
   * kind of furniture, for the situations after furniture tests.
   * Takes one of "table", "bench", "low cabinet", "tall cabinet", "drawers".
   * @example table
   */
  readonly piece?: 'table' | 'bench' | 'low cabinet' | 'tall cabinet' | 'drawers';
  /**
   * height of the top over the floor; as pushHeight without it.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly topHeight?: Written<'length'>;
  /**
   * from the feet at one end to those at the other, lengthwise.
   * Takes a length such as "900 mm", more than 0 mm and at most 10 000 mm.
   */
  readonly endBase?: Written<'length'>;
  /**
   * how far each end stands out past those feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 3000 mm.
   * @default 0 mm
   */
  readonly endOverhang?: Written<'length'>;
  /**
   * how far the fronts of open drawers stand out before the front feet.
   * Takes a length such as "0 mm", at least 0 mm and at most 2000 mm.
   * @default 0 mm
   */
  readonly openReach?: Written<'length'>;
  /**
   * how far the floor is out of level, for those situations.
   * Takes an angle such as "1 deg", at least 0° and at most 10°.
   * @default 1 deg
   */
  readonly floorTilt?: Written<'angle'>;
}
/** What {@link tipping} gives, beside workings, cautions, sources and chart. */
export interface TippingOutput {
  /**
   * stands, tips, or not checked.
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
   * how far inside the nearer feet the line of weight and loads falls; negative: it tips.
   */
  readonly margin: Quantity<'length'>;
  /**
   * holding moment over tipping moment, on the worse side; none where nothing tips it.
   */
  readonly factor?: number | undefined;
  /**
   * the side it tips to first.
   */
  readonly worseSide: string;
  /**
   * mass of the whole.
   */
  readonly mass: Quantity<'mass'>;
  /**
   * centre of gravity, behind the front feet.
   */
  readonly centre: Quantity<'length'>;
  /**
   * push at that height that tips it, with the edge load on.
   */
  readonly forceToTip: Quantity<'force'>;
  /**
   * load on the edge alone that tips it.
   */
  readonly edgeLoadToTip?: Quantity<'force'> | undefined;
  /**
   * how far it may be tilted before it falls; where heights are given.
   */
  readonly tilt?: Quantity<'angle'> | undefined;
}

/** What {@link topSag} takes. How far a top or shelf sags between its rails and past the last of them, and the stress in it. The load stands where it does most harm. For other supports use beam. */
export interface TopSagInput {
  /**
   * length of the top in the direction it spans.
   * Takes a length such as "900 mm", more than 0 mm and at most 20 m.
   * @example 1950 mm
   */
  readonly length: Written<'length'>;
  /**
   * width of the top, across the span.
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
   * where rails bear it, from the left end.
   * Takes a list, each a length such as "900 mm", at least 0 mm and at most 20 m.
   * @example ["200 mm","1600 mm"]
   */
  readonly supports: InputOf<(typeof topSag)['inputs']['supports']>;
  /**
   * load by area, where it does most harm.
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
   * one load beside, put where it does most harm: an end that hangs over, or the middle of a bay.
   * Takes a force such as "0 N", at least 0 N and at most 100 kN.
   * @default 0 N
   * @example 800 N
   */
  readonly edgeLoad?: Written<'force'>;
  /**
   * whether the grain runs along the span or across it.
   * Takes one of "along", "across".
   * @default along
   */
  readonly grain?: 'along' | 'across';
  /**
   * how far it may sag between supports; an end that hangs over counts double its length.
   * Takes a share of the span such as "L/300", a length such as "3 mm", or a published limit: "floor members", "roof with plaster ceiling", "roof with other ceiling", "roof without ceiling", "joists under brittle finishes", "joists without brittle finishes", "beams", "adjustable shelf", "cabinet shelf", "shelf, 1/32 in per foot", "shelf, 0.02 in per foot".
   * @default L/300
   */
  readonly limit?: InputOf<(typeof topSag)['inputs']['limit']>;
  /**
   * whether the top carries its own weight beside the load.
   * Takes yes or no (true or false).
   * @default true
   */
  readonly ownWeight?: boolean | 'yes' | 'no';
  /**
   * category of use: home or office, hall or shop, workshop, shelf or store, permanent, or short; without one the whole load is taken as long term.
   * Takes one of "home", "hall", "workshop", "shelf", "permanent", "short".
   * @example hall
   */
  readonly category?: 'home' | 'hall' | 'workshop' | 'shelf' | 'permanent' | 'short';
  /**
   * place: service class 1, 2 or 3 of EN 1995-1-1.
   * Takes one of "heated room", "under cover", "outdoors".
   * @default heated room
   */
  readonly place?: 'heated room' | 'under cover' | 'outdoors';
  /**
   * creep factor of a load that stays, instead of that of the place.
   * Takes a creep factor of 1 to 5, or one of "no creep", "seasoned", "unseasoned", "heated room", "under cover", "outdoors", "seasoned AS", "unseasoned AS", "shelf", "MDF shelf".
   */
  readonly long?: Exclude<InputOf<(typeof topSag)['inputs']['long']>, string> | 'no creep' | 'seasoned' | 'unseasoned' | 'heated room' | 'under cover' | 'outdoors' | 'seasoned AS' | 'unseasoned AS' | 'shelf' | 'MDF shelf' | (string & {});
  /**
   * share of the imposed load that stays on for months, instead of that of the category.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly longShare?: Written<'share'>;
  /**
   * species, or grade; salvaged and not known: "unknown softwood", the default.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   */
  readonly timber?: Exclude<InputOf<(typeof topSag)['inputs']['timber']>, string> | TimberName | GradeName | (string & {});
  /**
   * structural grade, if there is one; goes before the species.
   * Takes a species such as "white oak", a grade such as "C24", "MGP10" or "F17", or "unknown softwood" or "unknown hardwood" for salvaged timber.
   * @example C16
   */
  readonly grade?: Exclude<InputOf<(typeof topSag)['inputs']['grade']>, string> | TimberName | GradeName | (string & {});
  /**
   * modulus of elasticity, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 100 GPa.
   */
  readonly modulus?: Written<'modulus'>;
  /**
   * shear modulus, instead of the published one.
   * Takes a modulus of elasticity such as "9.5 GPa", more than 0 MPa and at most 20 GPa.
   */
  readonly shearModulus?: Written<'modulus'>;
  /**
   * bending stress to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 500 MPa.
   */
  readonly allowableBending?: Written<'stress'>;
  /**
   * shear stress along the grain to stay under at the loads given, instead of the derived one.
   * Takes a stress such as "10 MPa", more than 0 MPa and at most 100 MPa.
   */
  readonly allowableShear?: Written<'stress'>;
  /**
   * density, for the own weight, instead of the published one.
   * Takes a density such as "520 kg/m3", more than 0 kg/m³ and at most 2000 kg/m³.
   */
  readonly density?: Written<'density'>;
  /**
   * examined for knots, sloping grain, holes and rot, and passed; for a species without a grade.
   * Takes yes or no (true or false).
   * @default false
   */
  readonly examined?: boolean | 'yes' | 'no';
  /**
   * who graded the piece and how; needed for a strengthRatio over 26 %.
   * Takes a text of 1 to 200 characters.
   */
  readonly strengthReason?: string;
  /**
   * strength that knots, nail holes and sloping grain leave, of clear wood; for a species without a grade.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   */
  readonly strengthRatio?: Written<'share'>;
}
/** What {@link topSag} gives, beside workings, cautions, sources and chart. */
export interface TopSagOutput {
  /**
   * greatest sag in the long run.
   */
  readonly sag: Quantity<'length'>;
  /**
   * greatest sag when the load comes on.
   */
  readonly firstSag: Quantity<'length'>;
  /**
   * greatest sag between supports, in the long run.
   */
  readonly sagBetween: Quantity<'length'>;
  /**
   * greatest sag of an end that hangs over, in the long run.
   */
  readonly sagAtEnd?: Quantity<'length'> | undefined;
  /**
   * sag allowed where it comes nearest to its limit.
   */
  readonly allowed: Quantity<'length'>;
  /**
   * greatest bending stress.
   */
  readonly stress: Quantity<'stress'>;
  /**
   * whether sag and stress stay under their limits.
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
   * solids by volume, from the data sheet; after thinning, see thinToSolids.
   * Takes a share such as "15 %", more than 0 % and at most 100 %.
   * @example 42 %
   */
  readonly volumeSolids: Written<'share'>;
  /**
   * area that a litre covers in one coat.
   * Takes a coverage such as "12 m2/L", at least 0.1 m²/L and at most 200 m²/L.
   * @example 12 m2/L
   */
  readonly spreadingRate?: Written<'coverage'>;
  /**
   * wet film of one coat, as a comb shows it.
   * Takes a film thickness such as "50 um", at least 1 µm and at most 10 000 µm.
   */
  readonly wetFilm?: Written<'thickness'>;
  /**
   * dry film wanted, all coats together.
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
   * wet film of one coat.
   */
  readonly wetFilm: Quantity<'thickness'>;
  /**
   * dry film, all coats together.
   */
  readonly dryFilm: Quantity<'thickness'>;
  /**
   * area that a litre covers in one coat.
   */
  readonly coverage: Quantity<'coverage'>;
  /**
   * dry film of one coat.
   */
  readonly dryPerCoat: Quantity<'thickness'>;
  /**
   * finish for a square metre, all coats.
   */
  readonly perArea: Quantity<'liquid'>;
}

/** What {@link finishQuantity} takes. How much finish a job takes, coat by coat, and how many tins to buy: from areas or from the dimensions of the pieces. Not for filling grain or for poured coats. */
export interface FinishQuantityInput {
  /**
   * what is coated: a list of areas, or the dimensions of a piece or of several.
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
   * area that a litre covers in one coat, as printed on the tin.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 12 m2/L
   */
  readonly coverage: Written<'coverage'>;
  /**
   * the same for the first coat, on bare wood; default as the others.
   * Takes a coverage such as "12 m2/L", at least 0.5 m²/L and at most 60 m²/L.
   * @example 8 m2/L
   */
  readonly firstCoverage?: Written<'coverage'>;
  /**
   * share of what leaves the tin that never reaches the piece; default that of the method, or none.
   * Takes a share such as "15 %", at least 0 % and at most 95 %.
   */
  readonly loss?: Written<'share'>;
  /**
   * how it is put on, which sets the loss.
   * Takes one of "brush or roller", "HVLP spray", "airless spray", "air-assisted airless spray", "cup gun spray".
   * @example brush or roller
   */
  readonly method?: 'brush or roller' | 'HVLP spray' | 'airless spray' | 'air-assisted airless spray' | 'cup gun spray';
  /**
   * parts of thinner to one part of finish.
   * Takes a number such as 0, at least 0 and at most 20.
   * @default 0
   */
  readonly thinnerParts?: Written<'ratio'>;
  /**
   * the same for the first coat; default as the others.
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
   * to put on one coat.
   * Takes a time such as "30 min", at least 0 s and at most 7 day.
   * @default 30 min
   * @example 30 min
   */
  readonly coatTime?: Written<'time'>;
  /**
   * to wait between coats, as the tin says; with it a time line is drawn.
   * Takes a time such as "15 min", more than 0 s and at most 60 day.
   * @example 12 h
   */
  readonly dryTime?: Written<'time'>;
  /**
   * what it is, such as oil varnish: for the cautions.
   * Takes a text of 1 to 200 characters.
   * @example oil varnish
   */
  readonly finish?: string;
}
/** What {@link finishQuantity} gives, beside workings, cautions, sources and chart. */
export interface FinishQuantityOutput {
  /**
   * finish to mix, all coats.
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
   * left over in the tins.
   */
  readonly spare: Quantity<'liquid'>;
  /**
   * from the first stroke to the last coat dry.
   */
  readonly elapsed?: Quantity<'time'> | undefined;
}

/** What {@link gritSequence} takes. Which grits to sand with, the fewest whose steps are small enough to take the last scratches out. For papers of the FEPA (P) series. */
export interface GritSequenceInput {
  /**
   * the first grit, coarse enough for the worst scratch.
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
   * greatest step: how many times finer the next grit may be.
   * Takes a number such as 1.8, at least 1.1 and at most 4.
   * @default 1.8
   */
  readonly stepRatio?: Written<'ratio'>;
  /**
   * the grits there are; default all of the series.
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
   * holes counted in each sample piece.
   * Takes a list, each a whole number such as 4, at least 0 and at most 10 000.
   * @example [7,4,9,5,6]
   */
  readonly counts: InputOf<(typeof nailHoles)['inputs']['counts']>;
  /**
   * area of one sample piece.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 m².
   * @example 0.2 m2
   */
  readonly sampleArea: Written<'area'>;
  /**
   * area of the whole job.
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
   * filler left over, scraped off and shrunk.
   * Takes a share such as "50 %", at least 0 % and at most 300 %.
   * @default 50 %
   */
  readonly leftOver?: Written<'share'>;
  /**
   * chance that what is made suffices.
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
   * holes to be ready for.
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
   * holes in a square metre.
   */
  readonly perArea: number;
  /**
   * standard deviation of the holes in all.
   */
  readonly spread: number;
}

/** What {@link shellacCut} takes. Flakes and alcohol for a cut of shellac, or the alcohol that thins one cut to a weaker. Cuts are by pounds to the US gallon of alcohol, or grams to the litre. */
export interface ShellacCutInput {
  /**
   * cut wanted: pounds of flakes to a US gallon of alcohol.
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
   * alcohol to make it with.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   * @example 500 mL
   */
  readonly volume?: Written<'liquid'>;
  /**
   * ready-made shellac there is, to thin.
   * Takes an amount of liquid such as "2 L", more than 0 mL and at most 10 000 L.
   */
  readonly existing?: Written<'liquid'>;
  /**
   * cut of the ready-made shellac.
   * Takes a cut such as 2 (pounds to a US gallon of alcohol) or "240 g/L", from 0.05 to 10 lb/gal.
   * Shown in g/L.
   */
  readonly existingCut?: Written<'concentration'>;
}
/** What {@link shellacCut} gives, beside workings, cautions, sources and chart. */
export interface ShellacCutOutput {
  /**
   * flakes, or those already dissolved.
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
   * alcohol to add to what there is.
   */
  readonly addAlcohol?: Quantity<'liquid'> | undefined;
  /**
   * parts of alcohol to one part of what there is.
   */
  readonly partsAlcohol?: number | undefined;
  /**
   * share of the volume that the flakes take.
   */
  readonly solids: Quantity<'share'>;
}

/** What {@link stainTrials} takes. A ladder of test strips for a stain that is thinned or mixed: strengths in steps that look even, the smallest batch your measure allows, and a strip to label. */
export interface StainTrialsInput {
  /**
   * strongest strip, stain in the mix.
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
   * how far the measure may be off, such as half a mark.
   * Takes a volume such as "0.25 mL", more than 0 m³ and at most 0.0001 m³.
   * @default 0.25 mL
   * @example 0.25 mL
   */
  readonly toolError?: Written<'volume'>;
  /**
   * error of a strength that is allowed.
   * Takes a share such as "5 %", at least 0.5 % and at most 50 %.
   * @default 5 %
   */
  readonly strengthError?: Written<'share'>;
  /**
   * least batch that wets a strip.
   * Takes a volume such as "10 mL", more than 0 m³ and at most 0.001 m³.
   * @default 10 mL
   */
  readonly least?: Written<'volume'>;
  /**
   * what it is thinned or mixed with.
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
   * each strip over the one before.
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
   * solids of the finish as it comes, by volume, from its data sheet.
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
   * parts of thinner to one part of finish.
   * Takes a number such as 1.5, at least 0 and at most 1000.
   */
  readonly thinnerParts?: Written<'ratio'>;
}
/** What {@link thinToSolids} gives, beside workings, cautions, sources and chart. */
export interface ThinToSolidsOutput {
  /**
   * parts of thinner to one part of finish.
   */
  readonly thinnerParts: number;
  /**
   * solids of the mix, by volume.
   */
  readonly solids: Quantity<'share'>;
  /**
   * thinner as a share of the mix.
   */
  readonly thinnerShare: Quantity<'share'>;
  /**
   * thinner to a litre of finish.
   */
  readonly perLitre: Quantity<'liquid'>;
}

/** What {@link thinnedVoc} takes. The volatile organic compounds of a finish once thinned, as the rules calculate them, less water and exempt solvent. Not a statement of compliance. */
export interface ThinnedVocInput {
  /**
   * VOC of the finish as it comes, less water, from its label.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1500 g/L.
   * @example 350 g/L
   */
  readonly voc?: Written<'concentration'>;
  /**
   * parts of thinner to one part of finish.
   * Takes a number such as 1.5, at least 0 and at most 100.
   * @example 0.25
   */
  readonly thinnerParts: Written<'ratio'>;
  /**
   * density of a thinner all of which evaporates.
   * Takes a density such as "790 g/L", at least 600 kg/m³ and at most 1600 kg/m³.
   * @default 790 g/L
   * @example 6.6 lb/gal
   */
  readonly density?: Written<'density'>;
  /**
   * VOC of the thinner or second part, where not all of it evaporates; default its density.
   * Takes a mass per volume such as "350 g/L", at least 0 g/L and at most 1600 g/L.
   */
  readonly thinnerVoc?: Written<'concentration'>;
  /**
   * water and exempt solvent in the finish, by volume.
   * Takes a share such as "0 %", at least 0 % and at most 99 %.
   * @default 0 %
   */
  readonly exempt?: Written<'share'>;
  /**
   * water and exempt solvent in the thinner, by volume; water is 100 %.
   * Takes a share such as "0 %", at least 0 % and at most 100 %.
   * @default 0 %
   */
  readonly thinnerExempt?: Written<'share'>;
  /**
   * solids of the finish by mass, where voc is not given.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly solidsByMass?: Written<'share'>;
  /**
   * water in the finish by mass, where voc is not given.
   * Takes a share such as "15 %", at least 0 % and at most 100 %.
   */
  readonly waterByMass?: Written<'share'>;
  /**
   * density of the finish, where voc is not given.
   * Takes a density such as "520 kg/m3", at least 600 kg/m³ and at most 3000 kg/m³.
   */
  readonly finishDensity?: Written<'density'>;
}
/** What {@link thinnedVoc} gives, beside workings, cautions, sources and chart. */
export interface ThinnedVocOutput {
  /**
   * VOC of the mix, less water and exempt solvent.
   */
  readonly voc: Quantity<'concentration'>;
  /**
   * VOC in a litre of the mix as it stands.
   */
  readonly vocAsIs: Quantity<'concentration'>;
  /**
   * VOC of the finish before thinning.
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
   * the parts by name, such as oil 2, varnish 1, spirit 1.
   * Takes named parts such as { oil: ... }, each a number such as 1.5, more than 0 and at most 10 000.
   * @example {"oil":2,"varnish":1,"spirit":1}
   */
  readonly parts: InputOf<(typeof thinningRatio)['inputs']['parts']>;
  /**
   * how much mix is wanted.
   * Takes an amount of liquid such as "2 L" or a mass such as "500 g", more than nothing and at most 1000 m3 or 1000 t.
   * @example 2 L
   */
  readonly batch?: InputOf<(typeof thinningRatio)['inputs']['batch']>;
  /**
   * what is left of each part; a part not named can be bought.
   * Takes named parts such as { oil: ... }, each an amount of liquid such as "2 L" or a mass such as "500 g", at least nothing and at most 1000 m3 or 1000 t.
   */
  readonly have?: InputOf<(typeof thinningRatio)['inputs']['have']>;
  /**
   * whether the parts are of volume or of mass; default as the amounts are given.
   * Takes one of "volume", "mass".
   */
  readonly by?: 'volume' | 'mass';
  /**
   * density of each part, to go between volume and mass.
   * Takes named parts such as { oil: ... }, each a density such as "520 kg/m3", at least 400 kg/m³ and at most 3000 kg/m³.
   */
  readonly densities?: InputOf<(typeof thinningRatio)['inputs']['densities']>;
  /**
   * which part is the thinner; default the one whose name says so, else the last.
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
   * part that runs out first.
   */
  readonly limiting?: string | undefined;
  /**
   * left in the tins afterwards.
   */
  readonly left?: ShownOf<(typeof thinningRatio)['outputs']['left']> | undefined;
  /**
   * to buy.
   */
  readonly toBuy?: ShownOf<(typeof thinningRatio)['outputs']['toBuy']> | undefined;
  /**
   * thinner added, against what it is added to.
   */
  readonly thinnerAdded?: Quantity<'share'> | undefined;
  /**
   * thinner as a share of the mix.
   */
  readonly thinnerShare?: Quantity<'share'> | undefined;
  /**
   * In the order given, into one jug or on one scale.
   */
  readonly pour: ShownOf<(typeof thinningRatio)['outputs']['pour']>;
}

/** What {@link chamfer} takes. Width of a chamfer from the depth of the cutter, or the depth for the width wanted; the flat left on the edge, the passes, and metres and time for a run of parts. */
export interface ChamferInput {
  /**
   * width of the sloping face; or give depth.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   * @example 8 mm
   */
  readonly width?: Written<'length'>;
  /**
   * depth of the cutter down the edge; or give width.
   * Takes a length such as "900 mm", more than 0 mm and at most 200 mm.
   */
  readonly depth?: Written<'length'>;
  /**
   * angle of the chamfer to the face.
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
   * whether both edges of that side are chamfered.
   * Takes yes or no (true or false).
   * @default false
   * @example true
   */
  readonly bothEdges?: boolean | 'yes' | 'no';
  /**
   * depth that one pass takes.
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
   * depth of the cutter down the edge.
   */
  readonly depth: Quantity<'length'>;
  /**
   * flat left on the edge.
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
   * wood taken off, as solid wood.
   * Takes a volume such as "0.02 m3", more than 0 m³ and at most 1000 m³.
   */
  readonly volumeRemoved?: Written<'volume'>;
  /**
   * area planed, where the volume is not given.
   * Takes an area such as "1.2 m2", more than 0 mm² and at most 100 000 m².
   * @example 2.5 m2
   */
  readonly area?: Written<'area'>;
  /**
   * depth taken off that area.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly depth?: Written<'length'>;
  /**
   * density of the timber as it is.
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
   * loose volume of the waste.
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
   * density of the loose waste.
   */
  readonly bulkDensity: Quantity<'density'>;
}

/** What {@link cutterMarks} takes. How close the knife marks stand and how deep the ripple is, from speed, knives and feed, and the feed for the marks wanted. Not for spiral blocks. */
export interface CutterMarksInput {
  /**
   * speed of the cutter block.
   * Takes a speed of rotation such as "6000 rpm", more than 0 rpm and at most 60 000 rpm.
   * @example 6000 rpm
   */
  readonly spindleSpeed: Written<'rotation'>;
  /**
   * knives that cut on the same circle.
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
   * diameter of the cutting circle.
   * Takes a length such as "72 mm", at least 10 mm and at most 1000 mm.
   * @default 72 mm
   */
  readonly cutterDiameter?: Written<'length'>;
  /**
   * fastest feed of the machine.
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
   * distance from one knife mark to the next.
   */
  readonly pitch: Quantity<'length'>;
  /**
   * knife marks by length.
   * Shown in 1/in.
   */
  readonly marksPerInch: Quantity<'marks'>;
  /**
   * depth of the ripple a knife leaves.
   * Shown in um.
   */
  readonly waveDepth: Quantity<'length'>;
  /**
   * feed that gives the marks wanted.
   */
  readonly feedForWanted: Quantity<'speed'>;
  /**
   * speed of the cutting edge.
   * Shown in m/s.
   */
  readonly rimSpeed: Quantity<'speed'>;
}

/** What {@link planingTime} takes. How long a pile takes through the thicknesser, passes and handling counted. For feed by rollers; not for a hand-fed jointer. */
export interface PlaningTimeInput {
  /**
   * length of all pieces together.
   * Takes a length such as "900 mm", more than 0 mm and at most 100 000 m.
   * @example 31.2 m
   */
  readonly totalLength: Written<'length'>;
  /**
   * passes of each piece; default from what is to come off.
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
   * handling a piece, each pass.
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
   * to take off each piece, both faces together.
   * Takes a length such as "900 mm", more than 0 mm and at most 500 mm.
   * @example 6 mm
   */
  readonly removal?: Written<'length'>;
  /**
   * taken off in one pass.
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
   * with timber under the knives.
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
   * what goes into the piece, a line each.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns item, kind?, quantity, unit?, price?, mass?, massEach?, density?.
   * @example [{"item":"rafters, salvaged","kind":"timber","quantity":"0.062 m3","price":"180/m3","density":"500 kg/m3"},{"item":"battens for the frame","kind":"timber","quantity":"11.4 m","price":"1.20/m","mass":"8.2 kg"},{"item":"wood glue","kind":"glue","quantity":"750 mL","price":"14/L","mass":"0.8 kg"},{"item":"oil varnish","kind":"finish","quantity":2,"unit":"tins","price":16.5,"massEach":"0.45 kg"},{"item":"screws 5 x 60","kind":"fixings","quantity":48,"price":0.11,"massEach":"6 g"},{"item":"bench work","kind":"time","quantity":"14.5 h"}]
   */
  readonly lines: InputOf<(typeof bill)['inputs']['lines']>;
  /**
   * price of an hour, for lines of time that have none.
   * Takes a price of 0 or more: for one of the unit the quantity is in, such as 12.50, or with what it is for, such as '4.20/m', '38/m2', '18/L', '9/kg' or '40/h'.
   * @example 24
   */
  readonly hourly?: InputOf<(typeof bill)['inputs']['hourly']>;
  /**
   * added for what was forgotten.
   * Takes a share such as "0 %", at least 0 % and at most 200 %.
   * @default 0 %
   * @example 10 %
   */
  readonly forgotten?: Written<'share'>;
  /**
   * sales tax on the sum.
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
   * added for what was forgotten.
   */
  readonly forgotten?: Quantity<'money'> | undefined;
  /**
   * sales tax.
   */
  readonly tax?: Quantity<'money'> | undefined;
  /**
   * mass, of the lines that have one.
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
   * the works, a row each.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns work?, times, pieces.
   * @example [{"work":"de-nailing","times":"7 min, 11 min, 5 min, 9 min, 8 min","pieces":24},{"work":"docking and planing","times":"4 min, 6 min, 5 min","pieces":24}]
   */
  readonly works: InputOf<(typeof prepTime)['inputs']['works']>;
  /**
   * chance that the job lies in the range.
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
   * cost of the time expected.
   */
  readonly cost?: Quantity<'money'> | undefined;
  /**
   * cost of the most of the range.
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
   * height of the piece, or thickness of a top.
   * Takes a length such as "900 mm", more than 0 mm and at most 5000 mm.
   * @example 60 mm
   */
  readonly height: Written<'length'>;
  /**
   * what it passes, in order.
   * Takes a table (a list of rows, a data frame or a CSV file) with columns kind, first, second?, height?.
   * @example [{"kind":"van","first":"2400 mm","second":"1300 mm","height":"1300 mm"},{"kind":"door","first":"780 mm","height":"1980 mm"},{"kind":"corner","first":"900 mm","second":"1000 mm","height":"2300 mm"}]
   */
  readonly gates: InputOf<(typeof passage)['inputs']['gates']>;
  /**
   * room for hands and padding on each side.
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
   * lifting filter of whom; women carry the lower loads.
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
   * whether it goes in whole.
   */
  readonly fits: boolean;
  /**
   * longest piece of this width and height.
   */
  readonly longest?: Quantity<'length'> | undefined;
  /**
   * parts to make it in.
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
   * people to carry one part.
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
   * height; of a table to sit at, the room under it.
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
   * stature of a child, for the school size.
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
   * share of people whom it suits.
   */
  readonly share: Quantity<'share'>;
  /**
   * height that suits the average person.
   */
  readonly best: Quantity<'length'>;
  /**
   * share whom that height suits.
   */
  readonly bestShare: Quantity<'share'>;
  /**
   * body measure of the 5th percentile, without shoes.
   */
  readonly low: Quantity<'length'>;
  /**
   * body measure of the 95th percentile, without shoes.
   */
  readonly high: Quantity<'length'>;
  /**
   * access for wheelchair users.
   */
  readonly access: string;
  /**
   * school seat for that stature.
   */
  readonly schoolSeat?: Quantity<'length'> | undefined;
  /**
   * school table for that stature.
   */
  readonly schoolTable?: Quantity<'length'> | undefined;
}
