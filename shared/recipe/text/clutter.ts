// What web pages put around a recipe.

import { singularName } from "../../base/words.ts";
import type { IgnoredReason } from "./description.ts";

const LABELLED =
  /^(?:prep(?:aration)?|cook(?:ing)?|bake|baking|total|active|passive|inactive|resting|rest|rising|proofing|additional|ready in|hands[- ]on|chill(?:ing)?|wait)(?: ?\/ ?\w+)?(?: ?time)?\s*[:–-]?\s*(?:\d|overnight|an?\b)[^.]{0,30}$/i;
const TIME_LABEL = /\btime\b\s*[:–-]?|^(?:total|active|prep|cook|ready in|additional|inactive|passive)\b/i;
const ABOUT =
  /^(?:author|by|course|cuisine|category|categories|keywords?|calories|diet|difficulty|skill level|level|rating|published|updated|posted|last modified|source|adapted|servings?|serves|serving size|cost|video|photo(?:graph)?(?:s|y)?|image|credit|copyright|tags?|share|filed under|language)\b\s*(?:[:|–-]|by\b|in\b|from\b|\d|on\b)/i;
const ALONE_WORDS = [
  "print(?: recipe| this recipe)?|pin(?: it| recipe| this)?|save(?: recipe| this)?|share(?: this(?: recipe)?)?|jump to (?:recipe|video)|skip to (?:content|recipe)|rate(?: this recipe)?|advertisement|ad|sponsored|subscribe|sign up|log ?in|menu|home|recipes|search|email|facebook|twitter|instagram|pinterest|whatsapp|cook mode(?: prevent.*)?|us customary(?: ?[-–|/] ?metric)?|metric",
  "imperial|us|scale|1x|2x|3x|(?:1x )?(?:2x )?3x|view recipe|continue reading|read more|add to (?:collection|favou?rites|cart)|deselect all|select all|show (?:images|photos)|hide images|step[- ]by[- ]step photos?|watch.{0,30}|did you make this.{0,40}|tag (?:me|us|@).{0,50}|follow (?:me|us).{0,40}|let me know.{0,60}|enjoy!?|keep(?: your)? screen (?:on|awake).*",
  String.raw`leave a (?:comment|reply|review)|reviews?|comments?|\d+ comments?|loved? this recipe\??|more (?:recipes|like this).*|related.*|next|previous|back to top|all rights reserved.*|©.*|servings?|yield`,
];
const ALONE = new RegExp(`^(?:${ALONE_WORDS.join("|")})$`, "i");
const LOUD =
  /jump to (?:the )?recipe|print (?:this )?recipe|https?:\/\/|www\.|@\w+\.\w|★|☆|\b\d(?:\.\d+)? from \d+|\bvotes?\b|\bratings?\b|\bcookies? (?:policy|settings)|affiliate|newsletter|click here|\bsubscribe\b/i;
const NUTRITION =
  /^(?:calories|energy|carb(?:ohydrate)?s?|total fat|fat|saturated fat|saturates|trans fat|polyunsaturated fat|monounsaturated fat|cholesterol|sodium|potassium|fib(?:er|re)|sugars?|protein|vitamin [a-z]|calcium|iron|kcal|salt)\s*[:–-]?\s*\d+(?:[.,]\d+)?\s*(?:k?cal|kj|m?g|µg|mcg|iu|%)\b(?:\s*\(?\d+\s*%\)?)?$/i;

/** "Home » Bread » Rolls", "4.9 (87 reviews)", "by Somebody | Updated March 3", "Cups Grams". */
const TRAIL = /^[^\d»›]+(?:\s[»›>/]\s[^\d»›]+){1,5}$/;
const RATED = /^\W*\d(?:[.,]\d+)?\W*(?:\/\s?5|out of 5)?\W*\(?\s*\d+\s*(?:reviews?|ratings?|votes?|comments?)\b/i;
const BYLINE = /^by \p{Lu}[^.]*?(?:[|·•]|\bupdated\b|\bon \p{Lu}|\d{4}\b).*$|^(?:updated|published|posted)\b/iu;
const UNIT_SWITCH = /^(?:(?:cups?|grams?|ounces?|metric|imperial|us|volume|weight|ml)\b\W*){2,}$/i;

/** "Date: 12/03/24  Baker: night shift": who made it and when. */
export const OF_THE_PAPER =
  /^(?:date|baker|prepared by|made by|shift|rev(?:ision)?|version|ref(?:erence)?|document|doc|page|approved|issue[d]?|department|line)\b(?:\s*(?:no|nr|by|on|number))?\.?\s*[:#]/i;

/** What a mill is asked to deliver. */
const ORDERED = /\b\d+\s(?:sacks?|pallets?|cases?|crates?|drums?)\s(?:of\s)?\p{L}/iu;

/** Why a line is none of the recipe; undefined where it may be. `nutrition` is only sure in a row of such lines. */
export function clutterIn(text: string): IgnoredReason | undefined {
  if (LOUD.test(text) || RATED.test(text) || BYLINE.test(text) || UNIT_SWITCH.test(text)) return "web page";
  if (OF_THE_PAPER.test(text)) return "note";
  if (ORDERED.test(text) && !/\d\s?(?:k?g|oz|lbs?)(?!\p{L})/iu.test(text)) return "no ingredient";
  if (TRAIL.test(text) && text.length < 90 && !/\s\/\s/.test(text)) return "web page";
  if (/^(?:calories|cholesterol|sodium|trans fat|saturated fat|potassium|carbohydrates?|kcal)\b\s*:?\s*\d/i.test(text))
    return "nutrition";
  if (LABELLED.test(text) && TIME_LABEL.test(text)) return "web page";
  const isCounted =
    /^servings?\b.*\b(?:loaf|loaves|rolls?|buns?|pieces?|pcs|cookies|muffins?|bagels?|baguettes?|scones?|pizzas?|pretzels?|flatbreads?|cakes?)\b/i;
  if (isCounted.test(text)) return undefined;
  if (/^(?:serves|servings?)\b\s*:?\s*(?:about|approx\.?)?\s*[\d–-]/i.test(text)) return "web page";
  if (ABOUT.test(text) && text.length < 100) return "web page";
  return ALONE.test(text.trim()) ? "web page" : undefined;
}

/** "Step 3" over its step. */
export const isStepNumber = (text: string): boolean => /^(?:step|schritt|étape)\s*\d{1,2}[.:)]?$/i.test(text);

export const isNutrition = (text: string): boolean => NUTRITION.test(text);

const TOTAL =
  /^(?:grand |sub-?)?(?:total|sum|gesamt(?:gewicht)?|totals?|total dough|dough (?:required|needed|to make)|(?:required|wanted) dough|dough total|batter (?:weight|total)|total batter|mix weight|batch total|dough weight|batch weight|total weight|total formula|total batch|yield weight|sum total|summe|somme|somma|suma|totale|totaal|insgesamt|total yield|total %|total percent(?:age)?|tot)\b/i;

/** Whether a row adds up the others: "Total 13 794", "Dough weight: 1,720 g". */
export function isTotal(text: string): boolean {
  if (!TOTAL.test(text)) return false;
  const words = singularName(text.replace(/[\d.,:=%|()]+/g, " "))
    .split(" ")
    .filter((word) => word.length > 0 && !/^(?:k?g|gram|oz|lb|kilo|x|ml|#)$/.test(word));
  return words.every((word) =>
    /^(?:grand|sub|subtotal|required|needed|wanted|total|sum|summe|somme|somma|suma|totale|totaal|insgesamt|dough|batter|weight|batch|yield|formula|mass|tot|gesamt|gesamtgewicht|percent|percentage|of|all|ingredient|the|mix|amount|wt|baker|bakers'?|for|recipe|poolish|levain|biga|preferment|sponge|final|starter|soaker|overall|filling|topping|-|–|—)$/.test(
      word,
    ),
  );
}
