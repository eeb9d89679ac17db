// What each fault of an unsound rulebook says. The keys are the closed list of codes and the arguments are the facts that each carries,
// so that a sentence can never speak of a number that the check did not find.

const percent = (ppm: number): string => `${Number((ppm / 10_000).toFixed(4))} %`;
const ph = (x100: number): string => (x100 / 100).toFixed(2);

/** Faults of lists, references, sums and windows, wherever they stand. */
const EVERYWHERE = {
  'duplicate-id': (f: { id: string }) => `The id “${f.id}” is taken by an earlier entry: give each its own.`,
  'duplicate-code': (f: { code: string }) => `The code “${f.code}” is taken by an earlier entry: give each its own.`,
  'duplicate-rule-id': (f: { id: string }) => `Another rule has the id “${f.id}” and a reason could not tell them apart: rename one.`,
  'repeated-entry': (f: { entry: string }) => `“${f.entry}” stands here twice: keep one.`,
  'empty-list': (f: { what: string }) => `There is no ${f.what}: add at least one.`,
  'unknown-reference': (f: { what: string; id: string }) => `There is no ${f.what} “${f.id}”: add it or name another.`,
  'out-of-range': (f: { found: number; least: number; most: number }) => `${f.found} makes no sense here: give ${f.least} to ${f.most}.`,
  'sum-not-whole': (f: { foundPpm: number }) => `The shares sum to ${f.foundPpm} ppm: make them sum to exactly 1000000.`,
  'zero-share': (f: { id: string }) => `“${f.id}” has a share of 0: give its share or take it out.`,
  'window-reversed': (f: { minPhX100: number; maxPhX100: number }) =>
    `The window runs from pH ${ph(f.minPhX100)} to ${ph(f.maxPhX100)}: the lower end must be less.`,
  'window-too-narrow': (f: { materialId: string; minPhX100: number; maxPhX100: number; needX100: number }) =>
    `Base and “${f.materialId}” share pH ${ph(f.minPhX100)} to ${ph(f.maxPhX100)}; the prediction needs a window of ${ph(f.needX100)}: widen one or drop it.`,
  'acidity-length': (f: { foundCount: number }) => `The need table has ${f.foundCount} numbers: give 13, for pH 3.0, 3.5 … 9.0.`,
  'acidity-falls': (f: { atPhX100: number }) =>
    `The need falls at pH ${ph(f.atPhX100)}: a higher pH never needs less alkali; measure again.`,
  'acidity-missing': (f: { materialId: string }) =>
    `“${f.materialId}” has no need table and the stock none of its own: measure one of them.`,
};

/** Faults of what is bought and how it stands at the bench. */
const MATERIALS = {
  'oil-absorption-missing': () => 'A powder must be wetted: give its oil absorption.',
  'colour-index-missing': () => 'A pigment is labelled by its colour index: give it for a substance of this material.',
  'tag-missing': (f: { tag: string; because: string }) =>
    `The material is of “${f.because}” but has no tag “${f.tag}”, so nobody could avoid it: add the tag.`,
  'exposure-missing': () => 'A margin of safety is demanded but no exposure figure is given: every jar with it stays undecided.',
  'no-water-substance': () => 'Solubility is counted against water, but no substance is marked as water: mark it.',
  'unpreserved-life': (f: { foundHours: number; mostHours: number }) =>
    `An unpreserved aqueous stock lives at most ${f.mostHours} h; this says ${f.foundHours}: shorten it or preserve the stock.`,
  'unpreserved-life-missing': (f: { mostHours: number }) =>
    `An unpreserved aqueous stock must say how long it lives, at most ${f.mostHours} h.`,
  'made-here-long': (f: { foundHours: number; usualHours: number }) =>
    `A solution made at the bench usually lives ${f.usualHours} h; this says ${f.foundHours}: shorten it or hold proof.`,
  'dry-stock-wet': (f: { materialId: string }) => `“${f.materialId}” is not dry: change how the stock is preserved.`,
  'powder-not-in-paste': (f: { materialId: string }) => `“${f.materialId}” clumps unless it is wetted in oil: add this stock to the paste.`,
  'heat-not-premix': () => 'What needs heat reaches the bench only as a premix: name its carrier, or drop the heat.',
  'blend-single': () => 'A blend holds several materials: add them or take the mark off.',
  'blend-not-dry': (f: { materialId: string }) => `“${f.materialId}” is no dry powder: a blend holds dry powders only.`,
  'blend-no-shade': () => 'No shade has exactly the ratio of this blend: correct the blend or the shade (all shares in whole ppm).',
  'caution-wrong-audience': (f: { cautionId: string; audience: string }) =>
    `The caution “${f.cautionId}” is not for ${f.audience}: name another.`,
};

/** Faults of the base and its preservation. */
const BASE = {
  'wetting-oil-outside-base': (f: { materialId: string; neededPpm: number; foundPpm: number }) =>
    `The wetting oil takes ${f.neededPpm} ppm of “${f.materialId}” but the base holds ${f.foundPpm}: it is held back from the base.`,
  'wetting-oil-not-oil': (f: { materialId: string }) => `“${f.materialId}” is no oil and wets no powder: take another.`,
  'ceiling-under-allowance': (f: { ceilingPpm: number; allowancePpm: number }) =>
    `The ceiling ${percent(f.ceilingPpm)} lies under the allowance ${percent(f.allowancePpm)}: raise it.`,
  'base-ph-outside-window': (f: { minPhX100: number; maxPhX100: number }) =>
    `By its need table the base alone is not surely within pH ${ph(f.minPhX100)} to ${ph(f.maxPhX100)}: correct the table or the window.`,
  'base-over-cap': (f: { cap: string; found: number; most: number }) =>
    `The base alone brings ${f.found} of ${f.most}: raise the cap “${f.cap}” or change the base.`,
  'base-over-gentle': (f: { foundUnits: number; mostUnits: number }) =>
    `The base alone has ${f.foundUnits} units of irritancy, the gentle set at most ${f.mostUnits}: no mask could be gentle.`,
  'base-over-person-cap': (f: { capId: string; foundPpm: number; maxPpm: number }) =>
    `The base alone holds ${f.foundPpm} ppm where “${f.capId}” allows ${f.maxPpm}: this answer would leave no mask.`,
  'base-holds-excluded': (f: { tag: string; materialId: string }) =>
    `“${f.materialId}” of the base carries the tag “${f.tag}”: whoever gives this answer can have no mask at all.`,
  'base-over-limit': (f: { limitId: string; foundPpm: number; maxPpm: number }) =>
    `The base alone holds ${f.foundPpm} ppm where “${f.limitId}” allows ${f.maxPpm}: change the base.`,
  'base-over-coming-limit': (f: { limitId: string; foundPpm: number; maxPpm: number; fromDay: string }) =>
    `From ${f.fromDay} “${f.limitId}” allows ${f.maxPpm} ppm and the base alone holds ${f.foundPpm}: plan the change.`,
  'base-over-pair-limit': (f: { foundPpm: number; maxPpm: number }) =>
    `The base alone holds ${f.foundPpm} ppm where this judgement allows ${f.maxPpm}: no jar could pass.`,
  'base-breaks-rule': (f: { ruleId: string }) => `The base alone breaks the class rule “${f.ruleId}”: no jar could pass.`,
  'base-pair-never': () => 'Both materials stand in the base: “never” would refuse every jar.',
  'base-class-never': (f: { firstMaterialId: string; secondMaterialId: string }) =>
    `“${f.firstMaterialId}” and “${f.secondMaterialId}” stand together in the base although their classes never may: judge the pair by itself.`,
  'no-evidence': (f: { what: string }) => `Nothing proves ${f.what}: name the evidence.`,
  'evidence-wrong-kind': (f: { evidenceId: string; kind: string }) => `“${f.evidenceId}” is no ${f.kind} study: name one.`,
  'preservative-diluted': (f: { substanceId: string; foundPpm: number; minPpm: number }) =>
    `At full allowance ${f.foundPpm} ppm of “${f.substanceId}” are left; ${f.minPpm} are proven: raise it or lower the allowance.`,
};

/** Faults of what can be chosen. */
const OFFERS = {
  'shade-too-many-parts': (f: { foundCount: number; mostCount: number }) =>
    `A shade has at most ${f.mostCount} powders, this one ${f.foundCount}: drop some.`,
  'shade-not-powder': (f: { materialId: string }) => `“${f.materialId}” is no insoluble powder or pigment: a shade holds nothing else.`,
  'over-allowance': (f: { foundPpm: number; maxPpm: number }) =>
    `This alone takes ${percent(f.foundPpm)} of the jar, the allowance is ${percent(f.maxPpm)}: lower it.`,
  'no-stock': (f: { materialId: string }) => `No stock brings “${f.materialId}” (neat, or a premix that names it first): add one.`,
  'share-not-whole': (f: { materialId: string; levelPpm: number }) =>
    `${f.levelPpm} ppm of “${f.materialId}” come out in whole ppm with none of its stocks: change the level or a stock.`,
  'levels-not-ascending': (f: { levelPpm: number }) => `The level ${f.levelPpm} ppm must be more than the one before it: sort the levels.`,
  'benefit-over-whole': (f: { concernId: string; foundMilli: number }) =>
    `A benefit is at most 1000 thousandths; “${f.concernId}” has ${f.foundMilli}.`,
  'benefit-not-concave': (f: { concernId: string; levelPpm: number }) =>
    `For “${f.concernId}” each ppm up to ${f.levelPpm} ppm does more than the ones before: the search needs benefits that flatten.`,
  'claims-missing': () => 'A customer is told one good and one less good thing about every active: name both texts.',
  'adjuster-benefit': () => 'An adjuster only moves the pH: take its benefits away, or make it an active.',
  'over-legal-limit': (f: { limitId: string; foundPpm: number; maxPpm: number }) =>
    `With its tolerance this brings ${f.foundPpm} ppm where “${f.limitId}” allows ${f.maxPpm}: lower it or narrow its tolerance.`,
  'over-coming-limit': (f: { limitId: string; foundPpm: number; maxPpm: number; fromDay: string }) =>
    `From ${f.fromDay} “${f.limitId}” allows ${f.maxPpm} ppm and this brings ${f.foundPpm} with its tolerance: plan the change.`,
  'shade-not-approved': (f: { shadeId: string }) => `No scope approves the shade “${f.shadeId}”: it will not be offered.`,
  'active-not-approved': (f: { activeId: string; levelPpm: number }) =>
    `No scope approves “${f.activeId}” at ${percent(f.levelPpm)}: it will not be offered.`,
  'price-zero': () => 'The price is 0: is it given away?',
};

/** Faults of verdicts, rules, scopes and the law. */
const JUDGEMENTS = {
  'pair-with-itself': (f: { materialId: string }) => `“${f.materialId}” is judged with itself: name another second material.`,
  'duplicate-pair': (f: { earlierId: string }) => `The same two are judged by “${f.earlierId}”: keep one.`,
  'limit-missing': () => 'The verdict is “limit” but nothing is limited: give at least one bound.',
  'limit-on-other-verdict': (f: { verdict: string }) => `The verdict “${f.verdict}” has no limit: take it out or change the verdict.`,
  'caution-missing': () => 'The verdict is “caution” but no caution is named: name it.',
  'caution-unspoken': (f: { verdict: string; cautionId: string }) =>
    `With the verdict “${f.verdict}” nobody would see “${f.cautionId}”: change the verdict to “caution”.`,
  'looser-than-class': (f: { classJudgementId: string }) =>
    `This is looser than “${f.classJudgementId}”: name it as overridden, with evidence, or be as strict.`,
  'override-without-evidence': (f: { classJudgementId: string }) => `Overriding “${f.classJudgementId}” needs evidence: name it.`,
  'override-idle': (f: { classJudgementId: string }) =>
    `“${f.classJudgementId}” does not speak of these two materials: take the override out.`,
  'rule-idle': (f: { absent: string }) => `No material is “${f.absent}”, so this never speaks: is a class or tag missing on a material?`,
  'scope-no-shades': () => 'The scope approves no shade and so nothing: name the shades.',
  'scope-refuses-all': () => 'The scope names no shade and no active and would refuse everything: name what it refuses.',
  'unknown-level': (f: { activeId: string; levelPpm: number }) => `“${f.activeId}” has no level ${f.levelPpm} ppm: name one of its levels.`,
  'scope-most-actives': (f: { foundCount: number; mostCount: number }) =>
    `The scope says ${f.foundCount} actives, the base takes ${f.mostCount}: lower it.`,
  'dates-reversed': (f: { fromDay: string; untilDay: string }) => `The row begins ${f.fromDay} after it ends ${f.untilDay}: swap the days.`,
  'limit-without-kinds': () => 'The row holds for no kind of product: name at least one.',
  'no-limit-row': (f: { substanceId: string; marketId: string }) =>
    `“${f.substanceId}” is restricted elsewhere but has no row for ${f.marketId}: add one, or make sure that the law there is silent.`,
  'colourant-not-listed': (f: { materialId: string; marketId: string }) =>
    `Nothing of “${f.materialId}” may give colour in ${f.marketId} by these rows: masks with it will be refused there.`,
  'responsible-person-blank': (f: { marketId: string; what: string }) =>
    `The responsible person for ${f.marketId} has no ${f.what}: fill it in.`,
};

/** Faults of questions, cautions, texts, sizes and scales. */
const SHOP = {
  'one-answer-only': (f: { foundCount: number }) => `One answer may be chosen, but the most is ${f.foundCount}: set it to 1.`,
  'most-over-options': (f: { mostCount: number; optionsCount: number }) =>
    `${f.mostCount} answers may be chosen out of ${f.optionsCount}: lower it.`,
  'skip-not-exclusive': () => 'Skipping cannot stand beside other answers: make it exclusive.',
  'several-skips': () => 'One way to skip is enough: keep one.',
  'skips-backwards': (f: { questionId: string }) =>
    `“${f.questionId}” does not come after this question: only later questions can be skipped.`,
  'effect-empty': () => 'The answer excludes no tag: name the tags or take the effect out.',
  'concern-never-wished': (f: { concernId: string }) => `No answer wishes for “${f.concernId}”: it can never count.`,
  'caution-no-place': () => 'The caution is shown nowhere: name its places.',
  'caution-no-label-text': () => 'The caution stands on the label but has no short form: name its label text.',
  'must-tick-staff': () => 'Only a customer can be asked to tick a caution: it is for staff.',
  'must-tick-not-at-kiosk': () => 'A caution is ticked at the kiosk: add that place.',
  'caution-wrong-place': (f: { place: string }) => `Staff do not stand at “${f.place}”: show it on the card or at the bench.`,
  'caution-idle': () => 'Nothing ever owes this caution: give it a trigger or name it in a rule or an answer.',
  'currency-code': (f: { found: string }) => `“${f.found}” is no currency code: give three capitals (ISO 4217), like EUR.`,
  'missing-text': (f: { textId: string; lang: string; usedAt: string }) =>
    `The text “${f.textId}” is missing in “${f.lang}” (used at ${f.usedAt}): write it.`,
  'missing-name': (f: { lang: string }) => `The name is missing in “${f.lang}”, a language on sale: write it.`,
  'missing-staff-name': (f: { lang: string }) => `The name is missing in “${f.lang}”: staff will read it in another language.`,
  'overage-under-loss': (f: { overageUg: number; lossUg: number }) =>
    `The overage of ${f.overageUg} µg does not cover the vessel's loss of ${f.lossUg}: raise it.`,
  'vessel-too-small': (f: { needUl: number; capacityUl: number }) =>
    `The batch takes ${f.needUl} µL, the vessel holds ${f.capacityUl}: name a larger one.`,
  'label-not-for-size': (f: { labelSizeId: string; jarSizeId: string }) =>
    `“${f.labelSizeId}” does not fit “${f.jarSizeId}”: name another label, or add the size to what it fits.`,
  'check-weight-over-capacity': (f: { massUg: number; capacityUg: number }) =>
    `The check weight of ${f.massUg} µg is more than the scale holds (${f.capacityUg}): name a lighter one.`,
  'too-few-check-weights': (f: { foundCount: number; leastCount: number }) =>
    `${f.foundCount} check weights are named: fitness needs ${f.leastCount}.`,
};

export const SOUNDNESS_MESSAGES = { ...EVERYWHERE, ...MATERIALS, ...BASE, ...OFFERS, ...JUDGEMENTS, ...SHOP };

/** The closed list of codes. */
export type SoundnessCode = keyof typeof SOUNDNESS_MESSAGES;
