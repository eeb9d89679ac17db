// Made by test/support/examples/write-examples.ts, never by hand; test/flow/demo-coverage.test.ts asks every request again.
import type { ExampleTable } from './example-table.ts';

export const EXAMPLES: ExampleTable = {
 "day": "2026-11-25",
 "rulebookSha256": "f908d0446b31af778d379f7732b2a8335de53c84d845fa2f54496e76f4065265",
 "counts": [
  {
   "activesCount": 0,
   "variantsCount": 14,
   "permittedCount": 14,
   "byCode": {},
   "byCheck": {},
   "aloneByCheck": {}
  },
  {
   "activesCount": 1,
   "variantsCount": 546,
   "permittedCount": 461,
   "byCode": {
    "level-not-permitted": 14,
    "cap-exceeded": 14,
    "powder-beyond-challenge": 14,
    "wetting-short": 12,
    "pair-limit-sum": 4,
    "pair-never": 43,
    "ph-too-low": 10,
    "ph-too-high": 2,
    "pair-limit-first": 2,
    "approval-refused": 1,
    "not-approved": 6,
    "ph-windows-apart": 6
   },
   "byCheck": {
    "2": 7,
    "3": 48,
    "6": 14,
    "7": 14,
    "8": 18,
    "9": 14,
    "10": 12
   },
   "aloneByCheck": {
    "2": 1,
    "3": 39,
    "6": 13,
    "8": 9
   }
  },
  {
   "activesCount": 2,
   "variantsCount": 10038,
   "permittedCount": 4873,
   "byCode": {
    "allowance-exceeded": 2799,
    "level-not-permitted": 504,
    "cap-exceeded": 690,
    "powder-beyond-challenge": 536,
    "wetting-short": 415,
    "ph-too-high": 793,
    "ph-too-low": 1078,
    "ph-windows-apart": 574,
    "solubility-exceeded": 124,
    "pair-limit-second": 28,
    "law-limit": 28,
    "pair-limit-first": 102,
    "class-rule": 14,
    "pair-never": 1510,
    "pair-limit-sum": 148,
    "pair-limit-ph": 27,
    "approval-refused": 41,
    "not-approved": 210
   },
   "byCheck": {
    "2": 251,
    "3": 1743,
    "4": 14,
    "5": 2799,
    "6": 614,
    "7": 690,
    "8": 2333,
    "9": 536,
    "10": 415,
    "11": 28
   },
   "aloneByCheck": {
    "2": 17,
    "3": 616,
    "5": 1045,
    "6": 80,
    "8": 890,
    "11": 1
   }
  },
  {
   "activesCount": 3,
   "variantsCount": 115598,
   "permittedCount": 13497,
   "byCode": {
    "allowance-exceeded": 91758,
    "ph-too-low": 15766,
    "cap-exceeded": 16152,
    "ph-windows-apart": 14834,
    "level-not-permitted": 8526,
    "powder-beyond-challenge": 9614,
    "wetting-short": 6942,
    "solubility-exceeded": 5886,
    "ph-too-high": 13563,
    "pair-limit-second": 980,
    "law-limit": 980,
    "pair-limit-first": 2234,
    "class-rule": 145,
    "pair-never": 25031,
    "pair-limit-ph": 793,
    "pair-limit-sum": 2572,
    "approval-refused": 783,
    "not-approved": 8257
   },
   "byCheck": {
    "2": 9040,
    "3": 29617,
    "4": 145,
    "5": 91758,
    "6": 13854,
    "7": 16152,
    "8": 42518,
    "9": 9614,
    "10": 6942,
    "11": 980
   },
   "aloneByCheck": {
    "2": 312,
    "3": 2120,
    "5": 30901,
    "6": 671,
    "8": 3459
   }
  }
 ],
 "findings": [
  {
   "id": "unknown-shade",
   "mask": "no-such-shade",
   "circumstances": [
    "asked for by a name that is not in the rules"
   ],
   "request": {
    "variant": "no-such-shade|"
   },
   "facts": {
    "shadeId": "no-such-shade"
   }
  },
  {
   "id": "unknown-active",
   "mask": "Chalk Down · no-such-active 0.1 %",
   "circumstances": [
    "asked for by a name that is not in the rules"
   ],
   "request": {
    "variant": "chalk-down|no-such-active@1000"
   },
   "facts": {
    "activeId": "no-such-active"
   }
  },
  {
   "id": "unknown-level",
   "mask": "Chalk Down · Niacinamide 1.2345 %",
   "circumstances": [
    "asked for at a level that nobody entered"
   ],
   "request": {
    "variant": "chalk-down|niacinamide@12345"
   },
   "facts": {
    "activeId": "niacinamide",
    "levelPpm": 12345
   }
  },
  {
   "id": "too-many-actives",
   "mask": "Chalk Down · Allantoin 0.1 % · Betaine 1 % · Niacinamide 1 % · Panthenol 0.3 %",
   "circumstances": [
    "four actives where the base takes three"
   ],
   "request": {
    "variant": "chalk-down|allantoin@1000+betaine@10000+niacinamide@10000+panthenol@3000"
   },
   "facts": {
    "activesCount": 4,
    "mostActivesCount": 3
   }
  },
  {
   "id": "repeated-part",
   "mask": "Chalk Down · Niacinamide 1 % · Niacinamide 2 %",
   "circumstances": [
    "the same active at two levels"
   ],
   "request": {
    "variant": "chalk-down|niacinamide@10000+niacinamide@20000"
   },
   "facts": {
    "materialId": "niacinamide"
   }
  },
  {
   "id": "no-stock",
   "mask": "Chalk Down · Ectoin 0.5 %",
   "circumstances": [
    "a draft takes the only stock of ectoin away"
   ],
   "request": {
    "variant": "chalk-down|ectoin@5000",
    "changes": [
     {
      "path": [
       "stocks",
       "ectoin-neat"
      ]
     }
    ]
   },
   "facts": {
    "materialId": "ectoin"
   }
  },
  {
   "id": "stock-share-not-whole",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft thins panthenol to 70 %, of which 0.30 % is no whole number of grains"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "stocks",
       "panthenol-75",
       "parts"
      ],
      "value": [
       {
        "materialId": "panthenol",
        "sharePpm": 700000
       },
       {
        "materialId": "water",
        "sharePpm": 300000
       }
      ]
     }
    ]
   },
   "facts": {
    "stockId": "panthenol-75",
    "materialId": "panthenol"
   }
  },
  {
   "id": "netting-below-zero",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft takes the blend away and thins the premix so far that it brings more kaolin than the shade wants"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "stocks",
       "chalk-down-blend"
      ]
     },
     {
      "path": [
       "stocks",
       "titanium-20",
       "parts"
      ],
      "value": [
       {
        "materialId": "titanium-dioxide",
        "sharePpm": 50000
       },
       {
        "materialId": "kaolin",
        "sharePpm": 950000
       }
      ]
     }
    ]
   },
   "facts": {
    "stockId": "kaolin-neat",
    "materialId": "kaolin"
   }
  },
  {
   "id": "netting-not-whole",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft takes the blend away and mixes the premix so that its kaolin is no whole number of grains"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "stocks",
       "chalk-down-blend"
      ]
     },
     {
      "path": [
       "stocks",
       "titanium-20",
       "parts"
      ],
      "value": [
       {
        "materialId": "titanium-dioxide",
        "sharePpm": 200000
       },
       {
        "materialId": "kaolin",
        "sharePpm": 799999
       },
       {
        "materialId": "illite",
        "sharePpm": 1
       }
      ]
     }
    ]
   },
   "facts": {
    "stockId": "kaolin-neat",
    "materialId": "kaolin"
   }
  },
  {
   "id": "not-approved",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft takes every approval away"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "scopes"
      ],
      "value": []
     }
    ]
   },
   "facts": {}
  },
  {
   "id": "approval-refused",
   "mask": "Peat Cut · Allantoin 0.1 % · Bisabolol 0.1 %",
   "circumstances": [],
   "request": {
    "variant": "peat-cut|allantoin@1000+bisabolol@1000"
   },
   "facts": {
    "scopeId": "no-three-soothers-on-charcoal"
   }
  },
  {
   "id": "pair-never",
   "mask": "Chalk Down · Green tea extract 0.1 % · Zinc PCA 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|green-tea@1000+zinc-pca@5000"
   },
   "facts": {
    "firstMaterialId": "zinc-pca",
    "secondMaterialId": "camellia-sinensis-leaf-extract-10"
   }
  },
  {
   "id": "pair-not-judged",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft takes every judgement of classes away"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "classJudgements"
      ],
      "value": []
     }
    ]
   },
   "facts": {
    "firstMaterialId": "caprylic-capric-triglyceride",
    "secondMaterialId": "kaolin"
   }
  },
  {
   "id": "pair-limit-sum",
   "mask": "Dune Grass · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "dune-grass|lactic-acid@10000"
   },
   "facts": {
    "firstMaterialId": "lactic-acid-50",
    "secondMaterialId": "illite",
    "foundPpm": 35000,
    "maxPpm": 25000
   }
  },
  {
   "id": "pair-limit-first",
   "mask": "Slate Ledge · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "slate-ledge|lactic-acid@10000"
   },
   "facts": {
    "firstMaterialId": "lactic-acid-50",
    "secondMaterialId": "montmorillonite",
    "foundPpm": 20000,
    "maxPpm": 10000
   }
  },
  {
   "id": "pair-limit-second",
   "mask": "Chalk Down · Sodium hyaluronate 0.02 % · Zinc PCA 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|sodium-hyaluronate@200+zinc-pca@5000"
   },
   "facts": {
    "firstMaterialId": "zinc-pca",
    "secondMaterialId": "sodium-hyaluronate-1",
    "foundPpm": 20000,
    "maxPpm": 10000
   }
  },
  {
   "id": "pair-limit-ph",
   "mask": "Chalk Down · Green tea extract 0.1 % · Niacinamide 1 % · Urea 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|green-tea@1000+niacinamide@10000+urea@10000"
   },
   "facts": {
    "firstMaterialId": "urea",
    "secondMaterialId": "camellia-sinensis-leaf-extract-10",
    "minPhX100": null,
    "maxPhX100": 600
   }
  },
  {
   "id": "class-rule",
   "mask": "Chalk Down · Mandelic acid 0.75 % · Panthenol 0.75 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|mandelic-acid@7500+panthenol@7500"
   },
   "facts": {
    "firstClass": "vitamin",
    "secondClass": null,
    "minPhX100": 400,
    "maxPhX100": 800
   }
  },
  {
   "id": "allowance-exceeded",
   "mask": "Chalk Down · Allantoin 0.1 % · Potassium azeloyl diglycinate 0.9 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1000+azeloyl-diglycinate@9000"
   },
   "facts": {
    "foundPpm": 55000,
    "maxPpm": 50000
   }
  },
  {
   "id": "level-not-permitted",
   "mask": "Chalk Down · Niacinamide 3 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|niacinamide@30000"
   },
   "facts": {
    "activeId": "niacinamide",
    "levelPpm": 30000
   }
  },
  {
   "id": "solubility-exceeded",
   "mask": "Chalk Down · Betaine 2 % · Caffeine 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|betaine@20000+caffeine@10000"
   },
   "facts": {
    "substanceId": "caffeine",
    "foundPpm": 10000,
    "maxPpm": 9951.288
   }
  },
  {
   "id": "cap-exceeded",
   "mask": "Chalk Down · Bisabolol 0.1 % · Colloidal oatmeal 2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|bisabolol@1000+oatmeal@20000"
   },
   "facts": {
    "cap": "powderPpm",
    "foundUnits": 40000,
    "maxUnits": 30000
   }
  },
  {
   "id": "ph-windows-apart",
   "mask": "Chalk Down · Mandelic acid 0.5 % · Niacinamide 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|mandelic-acid@5000+niacinamide@10000"
   },
   "facts": {
    "lowerOf": "niacinamide",
    "upperOf": "mandelic-acid-40",
    "minPhX100": 500,
    "maxPhX100": 480
   }
  },
  {
   "id": "ph-too-low",
   "mask": "Chalk Down · Caffeine 0.5 % · Mandelic acid 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|caffeine@5000+mandelic-acid@5000"
   },
   "facts": {
    "windowOf": "caffeine",
    "minPhX100": 400,
    "predictedPhX100": 422
   }
  },
  {
   "id": "ph-too-high",
   "mask": "Chalk Down · Betaine 2 % · Lactic acid 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|betaine@20000+lactic-acid@5000"
   },
   "facts": {
    "windowOf": "lactic-acid-50",
    "maxPhX100": 500,
    "predictedPhX100": 475
   }
  },
  {
   "id": "ph-outside-table",
   "mask": "Chalk Down",
   "circumstances": [
    "a draft makes the base so alkaline, and its range so wide, that the answer lies above everything that was titrated"
   ],
   "request": {
    "variant": "chalk-down|",
    "changes": [
     {
      "path": [
       "base",
       "acidity",
       "umolPerKg"
      ],
      "value": [
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000,
       -90000
      ]
     },
     {
      "path": [
       "base",
       "ph"
      ],
      "value": {
       "minPhX100": 330,
       "maxPhX100": 1000
      }
     },
     {
      "path": [
       "materials",
       "kaolin",
       "phFresh"
      ],
      "value": {
       "minPhX100": 300,
       "maxPhX100": 1000
      }
     }
    ]
   },
   "facts": {
    "atPhX100": 970
   }
  },
  {
   "id": "acidity-missing",
   "mask": "Fern Bank",
   "circumstances": [
    "a draft takes the acidity of illite away"
   ],
   "request": {
    "variant": "fern-bank|",
    "changes": [
     {
      "path": [
       "materials",
       "illite",
       "acidity"
      ]
     }
    ]
   },
   "facts": {
    "stockId": "fern-bank-blend"
   }
  },
  {
   "id": "preservative-too-low",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft counts the preservative as proven from 0.88 % upward only"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "base",
       "preservation",
       "preservatives",
       "0",
       "provenMinPpm"
      ],
      "value": 8800
     }
    ]
   },
   "facts": {
    "substanceId": "phenoxyethanol",
    "foundPpm": 8784,
    "minPpm": 8800
   }
  },
  {
   "id": "preservative-ph",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft proves the preservative from pH 6.50 upward only"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "base",
       "preservation",
       "preservatives",
       "0",
       "ph"
      ],
      "value": {
       "minPhX100": 650,
       "maxPhX100": 850
      }
     }
    ]
   },
   "facts": {
    "substanceId": "phenoxyethanol",
    "minPhX100": 650,
    "maxPhX100": 850
   }
  },
  {
   "id": "preservative-undissociated",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft asks for more of an acid preservative than stays active at this pH"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "base",
       "preservation",
       "preservatives",
       "0",
       "weakAcid"
      ],
      "value": {
       "apparentPkaX1000": 4200,
       "minUndissociatedPpm": 2000
      }
     }
    ]
   },
   "facts": {
    "substanceId": "phenoxyethanol",
    "foundPpm": 169.3116,
    "minPpm": 2000
   }
  },
  {
   "id": "powder-beyond-challenge",
   "mask": "Chalk Down · Bisabolol 0.1 % · Colloidal oatmeal 2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|bisabolol@1000+oatmeal@20000"
   },
   "facts": {
    "foundPpm": 40000,
    "maxPpm": 30000
   }
  },
  {
   "id": "swelling-clay-beyond-challenge",
   "mask": "Slate Ledge",
   "circumstances": [
    "a draft counts the challenge test as covering 0.5 % of swelling clay only"
   ],
   "request": {
    "variant": "slate-ledge|",
    "changes": [
     {
      "path": [
       "base",
       "preservation",
       "testedSwellingClayPpm"
      ],
      "value": 5000
     }
    ]
   },
   "facts": {
    "foundPpm": 7200,
    "maxPpm": 5000
   }
  },
  {
   "id": "wetting-short",
   "mask": "Chalk Down · Colloidal oatmeal 2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|oatmeal@20000"
   },
   "facts": {
    "neededPpm": 39750,
    "availablePpm": 38400
   }
  },
  {
   "id": "law-limit",
   "mask": "Cloud Edge · Lactic acid 1 % · Mandelic acid 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "cloud-edge|lactic-acid@10000+mandelic-acid@5000"
   },
   "facts": {
    "marketId": "EU",
    "substanceIds": "lactic-acid, mandelic-acid",
    "foundPpm": 12960.235,
    "maxPpm": 12000,
    "expressedAs": "hydroxy acids as lactic acid"
   }
  },
  {
   "id": "law-colourant",
   "mask": "Peat Cut",
   "circumstances": [
    "a draft counts charcoal as what gives the colour; the US lists none"
   ],
   "request": {
    "variant": "peat-cut|",
    "changes": [
     {
      "path": [
       "materials",
       "charcoal-powder",
       "colours"
      ],
      "value": true
     }
    ]
   },
   "facts": {
    "marketId": "US",
    "substanceId": "charcoal-powder"
   }
  },
  {
   "id": "exposure-margin",
   "mask": "Heather Moor · Allantoin 0.1 % · Tranexamic acid 2 % · Zinc PCA 0.5 %",
   "circumstances": [
    "answers “Chest or back”"
   ],
   "request": {
    "variant": "heather-moor|allantoin@1000+tranexamic-acid@20000+zinc-pca@5000",
    "says": {
     "where": [
      "where-chest"
     ]
    }
   },
   "facts": {
    "substanceId": "tranexamic-acid",
    "marginX100": 7500,
    "floorCount": 100
   }
  },
  {
   "id": "exposure-no-figure",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "a draft takes the safety figures of panthenol away"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "changes": [
     {
      "path": [
       "substances",
       "panthenol",
       "exposure"
      ]
     }
    ]
   },
   "facts": {
    "substanceId": "panthenol"
   }
  },
  {
   "id": "person-excluded",
   "mask": "Cloud Edge · Bisabolol 0.1 % · Salicylic acid 0.25 %",
   "circumstances": [
    "answers “No, for somebody else”"
   ],
   "request": {
    "variant": "cloud-edge|bisabolol@1000+salicylic-acid@2500",
    "says": {
     "who": [
      "who-else"
     ]
    }
   },
   "facts": {
    "tag": "acid"
   }
  },
  {
   "id": "person-cap",
   "mask": "Marl Bed · Betaine 1 % · Panthenol 1.5 %",
   "circumstances": [
    "answers “Tight or dry all over”"
   ],
   "request": {
    "variant": "marl-bed|betaine@10000+panthenol@15000",
    "says": {
     "feel": [
      "feel-tight"
     ]
    }
   },
   "facts": {
    "capId": "swelling-clay-low",
    "foundPpm": 8000,
    "maxPpm": 5000
   }
  },
  {
   "id": "person-mildest",
   "mask": "Chalk Down · Allantoin 0.1 % · Caffeine 1 % · Zinc PCA 1 %",
   "circumstances": [
    "answers “No, for somebody else”"
   ],
   "request": {
    "variant": "chalk-down|allantoin@1000+caffeine@10000+zinc-pca@10000",
    "says": {
     "who": [
      "who-else"
     ]
    }
   },
   "facts": {
    "foundUnits": 200000,
    "maxUnits": 150000
   }
  },
  {
   "id": "cross-contact",
   "mask": "Chalk Down · Panthenol 0.3 %",
   "circumstances": [
    "somebody reacts to oats and milk",
    "a draft sends everybody who avoids oats to the staff",
    "answers “Milk, oats or wheat”"
   ],
   "request": {
    "variant": "chalk-down|panthenol@3000",
    "says": {
     "react": [
      "react-milk-oats"
     ]
    },
    "changes": [
     {
      "path": [
       "crossContacts"
      ],
      "value": []
     }
    ]
   },
   "facts": {
    "tag": "gluten"
   }
  },
  {
   "id": "not-weighable",
   "mask": "Chalk Down · Allantoin 0.1 % · Niacinamide 1 % · Panthenol 0.3 %",
   "circumstances": [
    "30 g jar, only the 0.01 g scale"
   ],
   "request": {
    "variant": "chalk-down|allantoin@1000+niacinamide@10000+panthenol@3000",
    "jarSizeId": "jar-30",
    "bench": "coarse"
   },
   "facts": {
    "stockId": "panthenol-75",
    "exactUg": 128000,
    "leastUg": 150000
   }
  },
  {
   "id": "band-too-narrow",
   "mask": "Chalk Down · Allantoin 0.1 % · Caffeine 1 % · Zinc PCA 1 %",
   "circumstances": [
    "50 g jar, only the 0.01 g scale"
   ],
   "request": {
    "variant": "chalk-down|allantoin@1000+caffeine@10000+zinc-pca@10000",
    "jarSizeId": "jar-50",
    "bench": "coarse"
   },
   "facts": {
    "stockId": "caffeine-neat",
    "limitId": "solubility:caffeine"
   }
  },
  {
   "id": "over-capacity",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "the only scale bears 20 g"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "bench": "small"
   },
   "facts": {
    "stockId": "cream",
    "massUg": 50752000,
    "capacityUg": 20000000
   }
  },
  {
   "id": "vessel-too-small",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "a draft gives this jar a beaker of 40 ml"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "changes": [
     {
      "path": [
       "vessels",
       "beaker-150",
       "capacityUl"
      ],
      "value": 40000
     }
    ]
   },
   "facts": {
    "vesselId": "beaker-150",
    "needUl": 51486,
    "capacityUl": 40000
   }
  },
  {
   "id": "label-too-long",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "a draft chooses a label that holds 120 letters of ingredients"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "changes": [
     {
      "path": [
       "labelSizes",
       "label-90x50",
       "ingredientsCharCount"
      ],
      "value": 120
     }
    ]
   },
   "facts": {
    "labelSizeId": "label-90x50",
    "foundCharCount": 222,
    "maxCharCount": 120
   }
  },
  {
   "id": "no-scale",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "no scale stands on the bench"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "bench": "none"
   },
   "facts": {}
  },
  {
   "id": "no-lot",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "the shelf has no niacinamide"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "shelf": {
     "kind": "without",
     "stockId": "niacinamide-neat"
    }
   },
   "facts": {
    "stockId": "niacinamide-neat",
    "neededUg": 1090000
   }
  },
  {
   "id": "lot-life-short",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "every lot ends in ten days"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "shelf": {
     "kind": "lives",
     "days": 10
    }
   },
   "facts": {
    "stockId": "cream",
    "lifeDays": 10,
    "minDays": 30
   }
  },
  {
   "id": "stopped",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "the shade is on stop"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "shelf": {
     "kind": "stopped",
     "shadeId": "fern-bank"
    }
   },
   "facts": {
    "subjectKind": "shade",
    "subjectId": "fern-bank"
   }
  },
  {
   "id": "base-lot-ph",
   "mask": "Fern Bank · Niacinamide 2 % · Panthenol 0.3 %",
   "circumstances": [
    "the only lot of cream came in at pH 8.90"
   ],
   "request": {
    "variant": "fern-bank|niacinamide@20000+panthenol@3000",
    "shelf": {
     "kind": "cream-at",
     "phX100": 890
    }
   },
   "facts": {
    "lotId": "cream",
    "measuredPhX100": 890
   }
  }
 ],
 "outcomes": [
  {
   "id": "mole",
   "mask": "",
   "circumstances": [
    "answers “A mole or mark that is new or has changed”"
   ],
   "request": {
    "says": {
     "today": [
      "today-mole"
     ]
    }
   }
  },
  {
   "id": "professional",
   "mask": "",
   "circumstances": [
    "answers “A rash, blisters, or wet or crusty patches”"
   ],
   "request": {
    "says": {
     "today": [
      "today-rash"
     ]
    }
   }
  },
  {
   "id": "age",
   "mask": "",
   "circumstances": [
    "answers “Under 16”"
   ],
   "request": {
    "says": {
     "age": [
      "age-under-16"
     ]
    }
   }
  },
  {
   "id": "wait",
   "mask": "",
   "circumstances": [
    "answers “A cut, a scrape or raw skin”"
   ],
   "request": {
    "says": {
     "today": [
      "today-cut"
     ]
    }
   }
  },
  {
   "id": "staff",
   "mask": "",
   "circumstances": [
    "answers “Somewhere else”"
   ],
   "request": {
    "says": {
     "where": [
      "where-else"
     ]
    }
   }
  },
  {
   "id": "none",
   "mask": "",
   "circumstances": [
    "nothing stands on the shelf"
   ],
   "request": {
    "shelf": {
     "kind": "empty"
    }
   }
  },
  {
   "id": "one",
   "mask": "",
   "circumstances": [
    "a draft approves one shade without actives"
   ],
   "request": {
    "changes": [
     {
      "path": [
       "scopes"
      ],
      "value": [
       {
        "id": "one",
        "kind": "approve",
        "shadeIds": [
         "chalk-down"
        ],
        "actives": [],
        "mostActivesCount": 0,
        "evidenceIds": [
         "stability-r2",
         "stability-acids",
         "challenge-r2",
         "patch-r2",
         "drawdown-r2"
        ],
        "reason": "Bracketed by the test jars of the range",
        "by": "formulator",
        "on": "2026-05-19"
       }
      ]
     }
    ]
   }
  },
  {
   "id": "no-active",
   "mask": "",
   "circumstances": [
    "the shelf has shades and base, but no actives"
   ],
   "request": {
    "shelf": {
     "kind": "no-actives"
    }
   }
  }
 ],
 "cautions": [
  {
   "id": "eyes",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "text": "Keep it out of your eyes. If some gets in, rinse with lots of clean water. If it still hurts, get medical help. Take out contact lenses first."
  },
  {
   "id": "broken-skin",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "text": "Do not use it on cut, sore or burnt skin. Wait until the skin is whole again."
  },
  {
   "id": "time",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "text": "Leave it on for 10 minutes. Do not let it dry until it cracks. Rinse with warm water. Use it once a week at most."
  },
  {
   "id": "children",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "text": "Keep it away from children. It is not for anyone under 16."
  },
  {
   "id": "try-first",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "Try a little first. Put a thin dab inside your elbow, leave it 10 minutes, then rinse. Do this twice a day for 7 days. If the skin goes red, itches or swells, do not use the mask."
  },
  {
   "id": "sting",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "Some tingling is common with acids. If it stings or burns, rinse it off at once. Do not use it again."
  },
  {
   "id": "sun",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "This mask has a fruit acid in it. Your skin may burn more easily in the sun. Use sun cream and cover up. Do this on days you use the mask and for 7 days after."
  },
  {
   "id": "sun-us",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "Sunburn Alert: This product contains an alpha hydroxy acid (AHA) that may increase your skin's sensitivity to the sun and particularly the possibility of sunburn. Use a sunscreen, wear protective clothing, and limit sun exposure while using this product and for a week afterwards."
  },
  {
   "id": "salicylic",
   "mask": "Chalk Down · Betaine 1 % · Salicylic acid 0.25 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|betaine@10000+salicylic-acid@2500"
   },
   "text": "This mask has salicylic acid in it. If aspirin makes you react, do not use it. Our staff can show you one that has none."
  },
  {
   "id": "oats",
   "mask": "Chalk Down · Allantoin 0.14 % · Colloidal oatmeal 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1400+oatmeal@5000"
   },
   "text": "This mask has oats in it. If oats or wheat make you react, do not use it."
  },
  {
   "id": "towels",
   "mask": "Dune Grass · Allantoin 0.14 %",
   "circumstances": [],
   "request": {
    "variant": "dune-grass|allantoin@1400"
   },
   "text": "This mask has a strong colour. It may mark light towels. Rinse well."
  },
  {
   "id": "pregnant",
   "mask": "Chalk Down",
   "circumstances": [
    "answers “Yes”"
   ],
   "request": {
    "variant": "chalk-down|",
    "says": {
     "pregnant": [
      "pregnant-yes"
     ]
    }
   },
   "text": "For you while pregnant or breastfeeding. We left out salicylic acid, vitamin A and strong plant oils. We do this to be careful. Ask your midwife or pharmacist if you have any doubt. They can look at the full list with you."
  },
  {
   "id": "ask-pharmacist",
   "mask": "Chalk Down",
   "circumstances": [
    "answers “I am not sure”"
   ],
   "request": {
    "variant": "chalk-down|",
    "says": {
     "doctor": [
      "doctor-unsure"
     ]
    }
   },
   "text": "Ask a pharmacist before you use the mask. They can look at the full list with you."
  },
  {
   "id": "also-made-oats",
   "mask": "Chalk Down",
   "circumstances": [
    "answers “Milk, oats or wheat”"
   ],
   "request": {
    "variant": "chalk-down|",
    "says": {
     "react": [
      "react-milk-oats"
     ]
    }
   },
   "text": "We do not put oats in this mask. We use oats at the same bench and clean our tools after. A trace may still get in."
  },
  {
   "id": "also-made-daisy",
   "mask": "Chalk Down",
   "circumstances": [
    "answers “Daisy, chamomile or ragweed”"
   ],
   "request": {
    "variant": "chalk-down|",
    "says": {
     "react": [
      "react-daisy"
     ]
    }
   },
   "text": "We do not put plants like daisies in this mask. We use some at the same bench and clean our tools after. A trace may still get in."
  },
  {
   "id": "also-made-salicylic",
   "mask": "Chalk Down",
   "circumstances": [
    "answers “Aspirin or salicylic acid”"
   ],
   "request": {
    "variant": "chalk-down|",
    "says": {
     "react": [
      "react-aspirin"
     ]
    }
   },
   "text": "We do not put salicylic acid in this mask. We use it at the same bench and clean our tools after. A trace may still get in."
  },
  {
   "id": "staff-dust",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "text": "These powders make fine dust. Put on your mask and goggles, and switch on the extractor. Lower the scoop before you tip it. Put the lid back at once. Wipe up with a wet cloth. Never sweep or blow the dust."
  },
  {
   "id": "staff-acid",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "This bottle holds strong acid. Wear gloves and goggles. Add it slowly, last of all. If it gets in your eye, rinse for 15 minutes and get help."
  },
  {
   "id": "staff-acid-clay",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "text": "Acid with clay: mix well and measure the pH after 5 minutes."
  }
 ],
 "card": [
  {
   "id": "shade-alone",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "a shade and nothing else"
  },
  {
   "id": "most-actives",
   "mask": "Chalk Down · Allantoin 0.14 % · Potassium azeloyl diglycinate 0.6 % · Ectoin 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1400+azeloyl-diglycinate@6000+ectoin@5000"
   },
   "says": "as many actives as the base takes"
  },
  {
   "id": "full-allowance",
   "mask": "Chalk Down · Betaine 2 % · Bisabolol 0.1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|betaine@20000+bisabolol@1000"
   },
   "says": "at least 4.9 % of additions"
  },
  {
   "id": "adjuster",
   "mask": "Chalk Down · Lactic acid 0.5 % · Panthenol 0.75 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@5000+panthenol@7500"
   },
   "says": "an acid brought back into its window by the buffer"
  },
  {
   "id": "blend",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "a shade weighed as one dry blend"
  },
  {
   "id": "shade-by-parts",
   "mask": "Chalk Down · Allantoin 0.14 % · Potassium azeloyl diglycinate 0.6 % · Ectoin 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1400+azeloyl-diglycinate@6000+ectoin@5000"
   },
   "says": "a shade weighed powder by powder"
  },
  {
   "id": "netted",
   "mask": "Chalk Down · Allantoin 0.14 % · Potassium azeloyl diglycinate 0.6 % · Ectoin 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1400+azeloyl-diglycinate@6000+ectoin@5000"
   },
   "says": "a powder reduced by what a premix brings of it"
  },
  {
   "id": "premix",
   "mask": "Chalk Down · Allantoin 0.1 % · Bisabolol 0.2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1000+bisabolol@2000"
   },
   "says": "something too fine to weigh by itself, as a premix made here"
  },
  {
   "id": "solution",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "a dissolved active, stirred in last"
  },
  {
   "id": "paste-powder",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "powder into the empty vessel"
  },
  {
   "id": "paste-liquid",
   "mask": "Chalk Down · Allantoin 0.1 % · Bisabolol 0.2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1000+bisabolol@2000"
   },
   "says": "an oil-borne stock worked into the paste"
  },
  {
   "id": "wetting-oil",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "the wetting oil"
  },
  {
   "id": "cream",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "the cream in growing portions"
  },
  {
   "id": "boat",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "weighed in a boat"
  },
  {
   "id": "vessel",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "weighed into the vessel"
  },
  {
   "id": "second-person",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "a second person reads the scale"
  },
  {
   "id": "look-alike",
   "mask": "Chalk Down · Allantoin 0.1 % · Niacinamide 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1000+niacinamide@10000"
   },
   "says": "a name printed so that it cannot be taken for another"
  },
  {
   "id": "staff-caution",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "a caution for the mixer"
  },
  {
   "id": "narrow-band",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "a narrower range, near a limit or by rule"
  },
  {
   "id": "pulled-in",
   "mask": "Chalk Down · Allantoin 0.14 % · Centella extract 0.2 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|allantoin@1400+centella@2000"
   },
   "says": "a range whose upper end was pulled in, so that no limit can be broken"
  },
  {
   "id": "split-lot",
   "mask": "Chalk Down",
   "circumstances": [
    "two lots of cream, neither of which has enough"
   ],
   "request": {
    "variant": "chalk-down|",
    "shelf": {
     "kind": "halves",
     "stockId": "cream",
     "grams": 30
    }
   },
   "says": "one line from two lots"
  },
  {
   "id": "several-scales",
   "mask": "Chalk Down · Allantoin 0.14 % · Centella extract 0.2 %",
   "circumstances": [
    "30 g jar"
   ],
   "request": {
    "variant": "chalk-down|allantoin@1400+centella@2000",
    "jarSizeId": "jar-30"
   },
   "says": "two scales on one card"
  },
  {
   "id": "coarse-only",
   "mask": "Chalk Down",
   "circumstances": [
    "only the 0.01 g scale"
   ],
   "request": {
    "variant": "chalk-down|",
    "bench": "coarse"
   },
   "says": "everything on the coarse scale"
  },
  {
   "id": "small-jar",
   "mask": "Chalk Down",
   "circumstances": [
    "30 g jar, only the 0.01 g scale"
   ],
   "request": {
    "variant": "chalk-down|",
    "bench": "coarse",
    "jarSizeId": "jar-30"
   },
   "says": "the smallest jar on the coarse scale"
  },
  {
   "id": "large-jar",
   "mask": "Chalk Down",
   "circumstances": [
    "100 g jar"
   ],
   "request": {
    "variant": "chalk-down|",
    "jarSizeId": "jar-100"
   },
   "says": "the largest jar"
  },
  {
   "id": "fitness",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "the scale is checked"
  },
  {
   "id": "fitness-meter",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "the pH meter is checked too"
  },
  {
   "id": "clearance",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "the bench is cleared"
  },
  {
   "id": "full-clean",
   "mask": "Chalk Down",
   "circumstances": [
    "oats were in the jar before"
   ],
   "request": {
    "variant": "chalk-down|",
    "afterTag": "oat"
   },
   "says": "a full clean after an allergen"
  },
  {
   "id": "protection-dust",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "dust mask and extraction"
  },
  {
   "id": "protection-acid",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "eyes and hands covered for an acid"
  },
  {
   "id": "bind-jar",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "jar and lid are weighed and bound"
  },
  {
   "id": "paste",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "worked to a smooth paste"
  },
  {
   "id": "temperature",
   "mask": "Chalk Down · Caffeine 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|caffeine@5000"
   },
   "says": "the temperature is taken before what heat would spoil"
  },
  {
   "id": "temperature-cool",
   "mask": "Chalk Down · Caffeine 0.5 %",
   "circumstances": [
    "room and stocks at 21 °C"
   ],
   "request": {
    "variant": "chalk-down|caffeine@5000",
    "warmestC": 21
   },
   "says": "no temperature needed: room and stocks are cool"
  },
  {
   "id": "no-temperature",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "nothing that heat would spoil"
  },
  {
   "id": "dissolve",
   "mask": "Chalk Down · Caffeine 0.5 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|caffeine@5000"
   },
   "says": "a soluble powder is dissolved until no grain is left"
  },
  {
   "id": "draw-down",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "a thin draw-down is looked at"
  },
  {
   "id": "ph",
   "mask": "Chalk Down · Lactic acid 1 %",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|lactic-acid@10000"
   },
   "says": "the pH is measured, whatever the day"
  },
  {
   "id": "no-ph",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "no pH is due after the first jar of the day"
  },
  {
   "id": "inspect",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "colour, smell and look"
  },
  {
   "id": "fill",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "filled, and the net weight taken"
  },
  {
   "id": "release",
   "mask": "Chalk Down",
   "circumstances": [],
   "request": {
    "variant": "chalk-down|"
   },
   "says": "labelled and released"
  }
 ]
};
