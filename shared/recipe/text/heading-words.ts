// The words of headings: what they head, and which stage they name.
import { singularName } from "../../base/words.ts";
import { PREFERMENT_WORDS } from "../../larder/kind-words.ts";
import type { StageRole } from "./description.ts";

/** What follows such a heading, if it is no stage. */
export type Mode = "ingredients" | "method" | "nutrition" | "note" | "equipment" | "web page";

export const MODES: readonly (readonly [Mode, RegExp])[] = [
  [
    "ingredients",
    /^(?:the )?(?:(?:dry|wet|liquid|other|main|bread|dough )?\s*ingredients?(?: list)?|zutaten|ingr[eé]dients?|what you(?:'ll| will)? need|you will need|for the recipe|recipe)$/,
  ],
  [
    "method",
    /^(?:the )?(?:method|directions?|instructions?|preparation|procedure|process|steps?|how to (?:make|bake)\b.*|what to do|make it|zubereitung|mixing|mixing method|make-?up|bake|baking|to make(?: it| the \w+)?|schedule|timeline|production)$/,
  ],
  ["nutrition", /^nutrition(?:al)?(?: facts| info(?:rmation)?| per \w+)?$/],
  ["equipment", /^(?:special )?(?:equipment|tools|you(?:'ll| will) also need|utensils)$/],
  [
    "note",
    /^(?:(?:recipe|baker'?s?|cook'?s?) )?(?:notes?|tips?(?: and tricks)?|storage|variations?|faqs?|make ahead|substitutions?)$/,
  ],
  [
    "web page",
    /^(?:comments?|reviews?|leave a (?:comment|reply|review)|related(?: recipes| posts)?|you (?:may|might) also like|\d+ (?:comments|responses|replies)|about (?:me|the author)|more recipes)$/,
  ],
];

/** Words that say what a part is; the first that fits decides. */
export const ROLES: readonly (readonly [StageRole, RegExp])[] = [
  [
    "overall",
    /\b(?:overall|total (?:formula|dough|recipe)|whole formula|complete formula|full formula|total dough formula|formula total)\b/,
  ],
  [
    "egg wash",
    /\b(?:egg ?wash|eggwash|wash|dorure|doratura|zum bestreichen|bestreichen|till pensling|pensling|pensla|para pintar|para pincelar|smeren)\b/,
  ],
  [
    "roll-in",
    /\b(?:roll ?in|rolling in|lamination|laminating|beurrage|tourrage|tourage|butter block|fold in butter|locked in|lock in|butter for folding|laminate|roll in fat|folding butter|folding fat|layering|folding|tourieren|ziehbutter|tourierbutter|sfogliatura)\b/,
  ],
  ["icing", /\b(?:icing|frosting|glaze|fondant|drizzle|glacage)\b/],
  [
    "filling",
    /\b(?:filling|frangipane|pastry cream|creme patissiere|custard|ganache|jam|curd|compote|swirl|spread|smear|schmear|remonce|remoulade|puree|cream|cheese mixture|fruit mixture|nut mixture|recheio|relleno|ripieno|garniture|fourrage|fullung|vulling|fyld|fyllning|nadzienie|farcitura|farce)\b/,
  ],
  [
    "topping",
    /\b(?:topping|streusel|crumble|crumb|decoration|decorate|finish|finishing|garnish|crust|sprinkle|cross|crosse|crossing|meringue|whipped cream|sauce|sprinkling|coating|coat|cobertura|belag|copertura|nappage|streusel|kruszonka|zum bestreuen|bestreuen|glasur|zuckerguss|condimento)\b|^cheese(?: mix)?$/,
  ],
  [
    "dusting",
    /\b(?:dusting|zum bestauben|bestauben|zum ausrollen|ausrollen|fur die form|pour le moule|per la teglia|bench flour|for the (?:bench|tin|pan|tray|counter|work surface)|greasing|to serve|for serving)\b/,
  ],
  ["part", /^(?:for )?(?:the )?(?:boiling|poaching|frying|deep frying|lye|lye bath|boiling bath|water bath|bath)$/],
  [
    "soaker",
    /\b(?:soaker|scald|tangzhong|yudane|water roux|porridge|mash|gelatini[sz]ed|altus|soaked grain|soak|quellstuck|bruhstuck|kochstuck|trempage)\b/,
  ],
];
const OLD_DOUGH =
  "old dough|pate fermentee|fermented dough|pre ferment|vorteig|anstellgut|vorstufe|mother|chef|leaven|sauerteig|lievito|madre|desem|refresher|refreshment|rafraichi|discard|zakwas?|surdeg|surdej|fordeg|fordej|voordeeg|esponja|masa madre|pasta madre|prefermento|zaczyn";
export const PREFERMENT = new RegExp(`\\b(?:${PREFERMENT_WORDS.join("|")}|${OLD_DOUGH})\\b`);
export const DOUGH =
  /^(?:(?:the|final|main|first|1st|2nd|third|3rd|bread|bun|roll|pizza|sweet|rich|basic|base|second|last|actual|loaf|brioche|cake|cookie|biscuit|pastry|tart)\s+)*(?:dough|final|final mix|main mix|mix|batter|mixing|cake|sponge cake|base|final dough formula|main|pastry|paste|shortcrust|shell|bread|day 2|next day|dough mix|dough formula|formula|dough ingredient|detrempe|dough final|pate|pate finale|pate a \w+|\w*teig|petrissage|petrissee|impasto|impasto finale|massa|masa|masa final|deeg|dej|deg|ciasto|ciasto wlasciwe|masa principal|next morning|day two|next day add|next morning add|add next day|then add|tag 2|jour 2|giorno 2|dia 2|dag 2|dzien 2)$/;
/** A part of the ingredients that goes in at some time of the mixing. */
export const GROUP =
  /^(?:(?:dry|wet|liquid|other|remaining|rest|additional|main)\s*(?:ingredient|stuff|mix|group)?s?|add ?in|mix ?in|inclusion|addition|add later|later addition|group [a-d\d]|creaming|hold back|bassinage|delayed|autolyse|minor|major|scale|flour|liquid|fat|sugar|leavening|spice|fruit)$/;
export const QUALIFIERS = new Set(
  singularName(
    [
      "the for a of and with to in my our ingredient ingredients ripe liquid stiff firm white dark rye wheat whole wholewheat",
      "wholemeal spelt overnight young mature active build first second third 1st 2nd 3rd stage mix mixture formula recipe",
      "final main sweet rich day night before morning evening dough make made step phase part preferment starter sourdough",
      "culture seed feed refreshment sponge poolish biga levain hot cold grain mixed linseed ripened lively bubbly wild natural",
      "yeast yeasted german italian french fed refreshed matured ripening rested type b c i ii iii one two three chocolate",
      "cinnamon vanilla cheese almond apple lemon sugar butter cream egg honey nut pecan walnut raisin custard top on optional",
      "royal simple powdered basic full fresh bun crossing",
    ].join(" "),
  ).split(" "),
);
