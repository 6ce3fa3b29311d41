-- A portfolio with rows of every table, as it was kept once. It is never changed: later programs have to read it.
PRAGMA application_id = 1280198212;
PRAGMA user_version = 40;
CREATE TABLE clients (
  id TEXT PRIMARY KEY,
  name TEXT NOT NULL,
  email TEXT NOT NULL,
  phone TEXT NOT NULL,
  address TEXT NOT NULL,
  notes TEXT NOT NULL,
  sample INTEGER NOT NULL CHECK (sample IN (0, 1)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;
CREATE TABLE projects (
  id TEXT PRIMARY KEY,
  client_id TEXT NOT NULL REFERENCES clients (id),
  name TEXT NOT NULL,
  units TEXT NOT NULL,
  currency TEXT NOT NULL,
  locale TEXT NOT NULL,
  practice TEXT CHECK (practice IS NULL OR json_valid(practice)),
  price_book TEXT CHECK (price_book IS NULL OR json_valid(price_book)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;
CREATE TABLE rooms (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  "use" TEXT NOT NULL,
  facing TEXT,
  climate TEXT NOT NULL,
  ceiling INTEGER CHECK (ceiling >= 0),
  drafts TEXT NOT NULL CHECK (json_valid(drafts)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
, privacy TEXT, budget TEXT) STRICT;
CREATE TABLE openings (
  id TEXT PRIMARY KEY,
  room_id TEXT NOT NULL REFERENCES rooms (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  width INTEGER CHECK (width >= 0),
  height INTEGER CHECK (height >= 0),
  sill INTEGER CHECK (sill >= 0),
  at INTEGER CHECK (at >= 0),
  glazing TEXT NOT NULL,
  heat_source_below INTEGER NOT NULL CHECK (heat_source_below IN (0, 1)),
  measured TEXT NOT NULL,
  notes TEXT NOT NULL,
  drafts TEXT NOT NULL CHECK (json_valid(drafts)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;
CREATE TABLE treatments (
  id TEXT PRIMARY KEY,
  opening_id TEXT NOT NULL REFERENCES openings (id),
  position INTEGER NOT NULL,
  name TEXT NOT NULL,
  quantity INTEGER NOT NULL CHECK (quantity > 0),
  face TEXT,
  kind TEXT NOT NULL,
  make TEXT NOT NULL CHECK (json_valid(make)),
  stacks TEXT NOT NULL CHECK (json_valid(stacks)),
  practice TEXT CHECK (practice IS NULL OR json_valid(practice)),
  drafts TEXT NOT NULL CHECK (json_valid(drafts)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
, decision TEXT CHECK (decision IN ('good', 'better', 'best', 'declined'))) STRICT;
CREATE TABLE cloths (
  id TEXT PRIMARY KEY,
  project_id TEXT REFERENCES projects (id),
  code TEXT NOT NULL,
  name TEXT NOT NULL,
  role TEXT NOT NULL,
  family TEXT NOT NULL,
  width INTEGER CHECK (width >= 0),
  usable_width INTEGER CHECK (usable_width >= 0),
  "match" TEXT NOT NULL,
  repeat_vertical INTEGER CHECK (repeat_vertical >= 0),
  repeat_horizontal INTEGER CHECK (repeat_horizontal >= 0),
  cut_on_repeat INTEGER NOT NULL CHECK (cut_on_repeat IN (0, 1)),
  one_way INTEGER NOT NULL CHECK (one_way IN (0, 1)),
  bolt INTEGER CHECK (bolt >= 0),
  order_step INTEGER CHECK (order_step >= 0),
  least_order INTEGER CHECK (least_order >= 0),
  railroad INTEGER NOT NULL CHECK (railroad IN (0, 1)),
  content TEXT CHECK (content IS NULL OR json_valid(content)),
  weight TEXT,
  colour TEXT,
  shade TEXT,
  visible TEXT CHECK (visible IS NULL OR json_valid(visible)),
  uv TEXT CHECK (uv IS NULL OR json_valid(uv)),
  solar TEXT CHECK (solar IS NULL OR json_valid(solar)),
  price TEXT,
  supplier TEXT NOT NULL,
  notes TEXT NOT NULL,
  drafts TEXT NOT NULL CHECK (json_valid(drafts)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
, known TEXT CHECK (known IS NULL OR json_valid(known))) STRICT;
CREATE TABLE settings (
  key TEXT PRIMARY KEY,
  value TEXT NOT NULL CHECK (json_valid(value)),
  updated_at TEXT NOT NULL
) STRICT;
CREATE TABLE proposals (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  number TEXT NOT NULL,
  year INTEGER NOT NULL,
  ordinal INTEGER NOT NULL,
  revision INTEGER NOT NULL CHECK (revision > 0),
  state TEXT NOT NULL,
  date TEXT NOT NULL,
  valid_until TEXT NOT NULL,
  created_at TEXT NOT NULL,
  program_version TEXT NOT NULL,
  currency TEXT NOT NULL,
  locale TEXT NOT NULL,
  total_good INTEGER NOT NULL,
  total_better INTEGER NOT NULL,
  total_best INTEGER NOT NULL,
  pages INTEGER NOT NULL CHECK (pages > 0),
  sample INTEGER NOT NULL CHECK (sample IN (0, 1)),
  UNIQUE (number, revision),
  UNIQUE (year, ordinal, revision),
  UNIQUE (project_id, revision)
) STRICT;
CREATE TABLE proposal_files (
  proposal_id TEXT PRIMARY KEY REFERENCES proposals (id),
  pdf BLOB NOT NULL,
  sha256 TEXT NOT NULL CHECK (length(sha256) = 64),
  job_file TEXT NOT NULL CHECK (json_valid(job_file)),
  result TEXT NOT NULL CHECK (json_valid(result)),
  paper TEXT NOT NULL CHECK (json_valid(paper))
) STRICT;
CREATE TABLE paper_places (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  proposal_id TEXT NOT NULL REFERENCES proposals (id),
  path TEXT NOT NULL,
  at TEXT NOT NULL
) STRICT;
CREATE TABLE mail_drafts (
  id TEXT PRIMARY KEY,
  proposal_id TEXT NOT NULL REFERENCES proposals (id),
  recipient TEXT NOT NULL,
  subject TEXT NOT NULL,
  body TEXT NOT NULL,
  created_at TEXT NOT NULL
) STRICT;
CREATE TABLE history (
  id INTEGER PRIMARY KEY AUTOINCREMENT,
  at TEXT NOT NULL,
  project_id TEXT,
  client_id TEXT,
  entity TEXT NOT NULL,
  entity_id TEXT NOT NULL,
  verb TEXT NOT NULL,
  changes TEXT NOT NULL CHECK (json_valid(changes))
) STRICT;
CREATE TABLE remnants (
  id TEXT PRIMARY KEY,
  project_id TEXT REFERENCES projects (id),
  cloth TEXT NOT NULL,
  name TEXT NOT NULL,
  length INTEGER CHECK (length >= 0),
  width INTEGER CHECK (width >= 0),
  dye_lot TEXT NOT NULL,
  starts_at INTEGER CHECK (starts_at >= 0),
  notes TEXT NOT NULL,
  drafts TEXT NOT NULL CHECK (json_valid(drafts)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;
CREATE TABLE cuttings (
  id TEXT PRIMARY KEY,
  project_id TEXT NOT NULL REFERENCES projects (id),
  cloth TEXT NOT NULL,
  bolts TEXT NOT NULL CHECK (json_valid(bolts)),
  flaws TEXT NOT NULL CHECK (json_valid(flaws)),
  fixed TEXT NOT NULL CHECK (json_valid(fixed)),
  
  created_at TEXT NOT NULL,
  updated_at TEXT NOT NULL,
  removed_at TEXT
) STRICT;
CREATE INDEX projects_of_client ON projects (client_id);
CREATE INDEX rooms_of_project ON rooms (project_id);
CREATE INDEX openings_of_room ON openings (room_id);
CREATE INDEX treatments_of_opening ON treatments (opening_id);
CREATE UNIQUE INDEX cloth_codes ON cloths (ifnull(project_id, ''), code) WHERE removed_at IS NULL;
CREATE INDEX paper_places_of_proposal ON paper_places (proposal_id);
CREATE INDEX mail_drafts_of_proposal ON mail_drafts (proposal_id);
CREATE INDEX history_of_project ON history (project_id, id);
CREATE INDEX history_of_client ON history (client_id, id);
CREATE INDEX remnants_of_cloth ON remnants (cloth);
CREATE UNIQUE INDEX cutting_of_cloth ON cuttings (project_id, cloth) WHERE removed_at IS NULL;
INSERT INTO clients ("id", "name", "email", "phone", "address", "notes", "sample", "created_at", "updated_at", "removed_at") VALUES ('id-00001', 'Ada Fenn', 'ada@example.com', '', 'Larch House
1 Example Lane
(an invented household)', 'Says: "84 1/2"; ''gauche''', 0, '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:03.000Z', NULL);
INSERT INTO projects ("id", "client_id", "name", "units", "currency", "locale", "practice", "price_book", "created_at", "updated_at", "removed_at") VALUES ('id-00002', 'id-00001', 'Imported job', 'in', 'USD', 'en-US', '{"fullness":{},"headingAllowance":{},"remnant":{},"leastFullness":{},"spacing":{},"tab":{},"pocket":{},"hang":{},"band":{},"motor":{},"stackback":{},"lining":{},"interlining":{},"valance":{},"cornice":{},"swags":{},"romanShade":{},"bedSkirt":{},"showerCurtain":{},"fullnessOver":"whole","bottomHem":"8 in","sideHem":"3 in","hemsInWidth":false,"seam":"0 in","squaring":"0 in","shrinkage":0,"widthRounding":"up","repeatRule":"whole","orderFrom":"plan","orderExtra":"one-repeat","orderStep":"9 in","bracketSpacing":"48 in","pleatsPerWidth":5,"pleatsClothWidth":"54 in","puddleHem":"4 in","sheer":{"bottomHem":"10 in","sideHem":"2 in"}}', '"example"', '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:16.000Z', NULL);
INSERT INTO rooms ("id", "project_id", "position", "name", "use", "facing", "climate", "ceiling", "drafts", "created_at", "updated_at", "removed_at", "privacy", "budget") VALUES ('id-00004', 'id-00002', 0, 'Nursery', 'nursery', 'E', 'cold', 877824, '{}', '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:07.000Z', NULL, 'night', 'careful');
INSERT INTO rooms ("id", "project_id", "position", "name", "use", "facing", "climate", "ceiling", "drafts", "created_at", "updated_at", "removed_at", "privacy", "budget") VALUES ('id-00007', 'id-00002', 1, 'Room', 'living', NULL, 'mixed', NULL, '{}', '2026-11-25T12:00:04.000Z', '2026-11-25T12:00:05.000Z', '2026-11-25T12:00:05.000Z', NULL, NULL);
INSERT INTO openings ("id", "room_id", "position", "name", "width", "height", "sill", "at", "glazing", "heat_source_below", "measured", "notes", "drafts", "created_at", "updated_at", "removed_at") VALUES ('id-00005', 'id-00004', 0, 'East window', 487680, 438912, 215392, 195072, 'double', 0, 'rough', '', '{}', '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:02.000Z', NULL);
INSERT INTO treatments ("id", "opening_id", "position", "name", "quantity", "face", "kind", "make", "stacks", "practice", "drafts", "created_at", "updated_at", "removed_at", "decision") VALUES ('id-00006', 'id-00005', 0, 'Panels', 1, 'larch-stripe', 'panels', '{"kind":"panels","heading":"pinch-pleat","arrangement":"pair","mountWhere":"wall","mountAbove":32512,"rodWidth":585216,"finishedLength":682752,"fullness":2500,"returnLeft":28448,"returnRight":28448,"overlap":28448,"halfWidths":null,"extras":{}}', '{"good":{"face":null,"behind":["std-white"]},"better":{"face":null,"behind":["inter-med","std-white"]},"best":{"face":null,"behind":["soft-blackout"]}}', NULL, '{}', '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:08.000Z', NULL, 'better');
INSERT INTO cloths ("id", "project_id", "code", "name", "role", "family", "width", "usable_width", "match", "repeat_vertical", "repeat_horizontal", "cut_on_repeat", "one_way", "bolt", "order_step", "least_order", "railroad", "content", "weight", "colour", "shade", "visible", "uv", "solar", "price", "supplier", "notes", "drafts", "created_at", "updated_at", "removed_at", "known") VALUES ('id-00003', 'id-00002', 'larch-stripe', 'Larch stripe', 'face', 'print', 438912, NULL, 'straight', 219456, 219456, 0, 0, NULL, NULL, NULL, 0, '{"cotton":100}', '7 oz/yd2', '#c9b79a', NULL, '{"transmittance":0.3,"reflectance":0.55}', NULL, NULL, '42.00/yd', '', '', '{}', '2026-11-25T12:00:02.000Z', '2026-11-25T12:00:02.000Z', NULL, NULL);
INSERT INTO cloths ("id", "project_id", "code", "name", "role", "family", "width", "usable_width", "match", "repeat_vertical", "repeat_horizontal", "cut_on_repeat", "one_way", "bolt", "order_step", "least_order", "railroad", "content", "weight", "colour", "shade", "visible", "uv", "solar", "price", "supplier", "notes", "drafts", "created_at", "updated_at", "removed_at", "known") VALUES ('id-00008', NULL, 'reed-linen', 'Reed linen', 'face', 'plain', NULL, NULL, 'none', NULL, NULL, 0, 0, NULL, NULL, NULL, 0, '{"linen":55,"cotton":45}', NULL, NULL, NULL, NULL, NULL, NULL, '58.50/yd', '', '', '{}', '2026-11-25T12:00:06.000Z', '2026-11-25T12:00:06.000Z', NULL, '{"thickness":0.4,"sources":{"thickness":"measured"}}');
INSERT INTO settings ("key", "value", "updated_at") VALUES ('letterhead', '{"name":"Reed & Rye","lines":["2 Example Lane"]}', '2026-11-25T12:00:01.000Z');
INSERT INTO settings ("key", "value", "updated_at") VALUES ('practice', '{"bottomHem":"8 in"}', '2026-11-25T12:00:01.000Z');
INSERT INTO proposals ("id", "project_id", "number", "year", "ordinal", "revision", "state", "date", "valid_until", "created_at", "program_version", "currency", "locale", "total_good", "total_better", "total_best", "pages", "sample") VALUES ('id-00011', 'id-00002', '2026-001', 2026, 1, 1, 'sent', '2026-11-25', '2026-12-25', '2026-11-25T12:00:12.000Z', '0.0.0-test', 'USD', 'en-US', 174829, 197509, 197369, 4, 0);
INSERT INTO proposal_files ("proposal_id", "pdf", "sha256", "job_file", "result", "paper") VALUES ('id-00011', x'255044462d312e37207374616e647320666f7220746865207061706572', 'a982f1067afc2cb5d7a9b4880608055e7194973ae37cce5c7b8cffeb4dc4e4b2', '{
  "linenfold": 1,
  "units": "in",
  "currency": "USD",
  "locale": "en-US",
  "client": {
    "name": "Ada Fenn",
    "email": "ada@example.com",
    "address": "Larch House\n1 Example Lane\n(an invented household)",
    "notes": "Says: \"84 1/2\"; ''gauche''"
  },
  "project": "Imported job",
  "letterhead": {
    "name": "Reed & Rye",
    "lines": [
      "2 Example Lane"
    ]
  },
  "proposal": {
    "number": "2026-001",
    "date": "2026-11-25",
    "validUntil": "2026-12-25",
    "terms": "The deposit named at the end is due when you accept, the balance at installation.\nEverything is made to order from these measurements and cannot be returned or exchanged once the cloth is cut.\nWhoever measured answers for the measurements: what we measured and made wrong we make again.\nCloth and hardware that you supply yourself are used at your own risk.\nCloth differs a little from dye lot to dye lot and from any sample. Please approve a cutting of the lot where that matters.\nPrices of cloth and freight are confirmed again before we order; should they have risen, we ask you first.",
    "cancellation": "Notice of cancellation: in many places a client who signs at home may withdraw within some days.\nThe law of the place where you live decides whether, until when and how, and it comes before these terms.\nTo withdraw, write to us, naming the number of this proposal, before that time has passed.",
    "tierNames": {
      "good": "Good",
      "better": "Better",
      "best": "Best"
    }
  },
  "practice": {
    "bottomHem": "8 in",
    "fullness": {},
    "fullnessOver": "whole",
    "headingAllowance": {},
    "puddleHem": "4 in",
    "sideHem": "3 in",
    "hemsInWidth": false,
    "seam": "0 in",
    "squaring": "0 in",
    "shrinkage": 0,
    "leastFullness": {},
    "widthRounding": "up",
    "repeatRule": "whole",
    "orderFrom": "plan",
    "orderExtra": "one-repeat",
    "orderStep": "9 in",
    "remnant": {},
    "bracketSpacing": "48 in",
    "pleatsPerWidth": 5,
    "pleatsClothWidth": "54 in",
    "spacing": {},
    "tab": {},
    "pocket": {},
    "hang": {},
    "band": {},
    "motor": {},
    "sheer": {
      "bottomHem": "10 in",
      "sideHem": "2 in"
    },
    "stackback": {},
    "lining": {},
    "interlining": {},
    "valance": {},
    "cornice": {},
    "swags": {},
    "romanShade": {},
    "bedSkirt": {},
    "showerCurtain": {}
  },
  "priceBook": "example",
  "cloth": [
    {
      "id": "larch-stripe",
      "name": "Larch stripe",
      "width": 54,
      "repeat": {
        "vertical": 27,
        "horizontal": 27,
        "match": "straight",
        "cutOnRepeat": false
      },
      "railroad": false,
      "content": {
        "cotton": 100
      },
      "weight": "7 oz/yd2",
      "colour": "#c9b79a",
      "transmittance": 0.3,
      "reflectance": 0.55,
      "price": "42.00/yd",
      "role": "face",
      "family": "print"
    }
  ],
  "cutting": {
    "flaws": [
      {
        "cloth": "larch-stripe",
        "on": "bolt 1",
        "from": 720,
        "to": 774
      }
    ],
    "fixed": [
      {
        "cloth": "larch-stripe",
        "treatment": "Nursery/East window/Panels",
        "cut": 2,
        "on": "bolt 1",
        "at": 0
      }
    ]
  },
  "rooms": [
    {
      "name": "Nursery",
      "use": "nursery",
      "facing": "E",
      "climate": "cold",
      "privacy": "night",
      "budget": "careful",
      "ceiling": 108,
      "openings": [
        {
          "name": "East window",
          "width": 60,
          "height": 54,
          "sill": 26.5,
          "at": 24,
          "glazing": "double",
          "heatSourceBelow": false,
          "measured": "rough",
          "treatments": [
            {
              "name": "Panels",
              "face": "larch-stripe",
              "quantity": 1,
              "stacks": {
                "good": {
                  "behind": [
                    "std-white"
                  ]
                },
                "better": {
                  "behind": [
                    "inter-med",
                    "std-white"
                  ]
                },
                "best": {
                  "behind": [
                    "soft-blackout"
                  ]
                }
              },
              "decision": "better",
              "kind": "panels",
              "heading": "pinch-pleat",
              "arrangement": "pair",
              "mount": {
                "where": "wall",
                "above": 4
              },
              "rodWidth": 72,
              "finishedLength": 84,
              "fullness": 2.5,
              "return": {
                "left": 3.5,
                "right": 3.5
              },
              "overlap": 3.5
            }
          ]
        }
      ]
    }
  ]
}', '{"linenfold":1,"units":"in","currency":"USD","exampleRates":true,"treatments":[{"path":"Nursery/East window/Panels","kind":"panels","finished":{"width":82.5,"length":84},"advised":{"tier":"best","why":"Soft blackout answers this nursery best: nothing seen from outside by night and nearly dark by day."},"notChosen":{"behind":["blackout-3-pass"],"why":"Three-pass blackout was left out: this blackout is stiff: it pleats and gathers badly. A soft blackout folds like cloth."},"tiers":{"good":{"stack":{"face":"larch-stripe","behind":["std-white"]},"chosen":null,"title":"Standard lining","says":"A white lining behind the face. By day the window glows, the cloth''s colours stay true and nearly two thirds of the fading is kept off.","takeoff":[{"cloth":"larch-stripe","name":"Larch stripe","role":"face","layer":0,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":2.4727,"plainCut":100,"cutLength":108,"repeatsPerCut":4,"length":432,"yards":12,"metres":10.9728,"planYards":11.7778,"planMetres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"grams":3307.4},{"cloth":"std-white","name":"Standard lining, white","role":"lining","layer":1,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":null,"plainCut":90,"cutLength":90,"repeatsPerCut":null,"length":360,"yards":10,"metres":9.144,"planYards":10,"planMetres":9.144,"orderYards":10,"orderMetres":9.144,"grams":1658.3}],"weight":{"grams":4965.8},"stackback":{"least":12,"usual":14,"most":16},"rodToClear":{"rod":95,"widths":5},"readings":{"light":0.154185,"lightWithGlass":0.128183,"lightInRoom":0.135348,"colourShift":2.51869,"warmth":0.116667,"fade":0.65367,"body":2.4},"ranges":{"lightInRoom":[0.0879327,0.169479],"warmth":[0.0933333,0.14],"light":[0.10279,0.185022],"lightWithGlass":[0.0840693,0.155855],"fade":[0.556871,0.771563],"colourShift":[2.01495,3.14836],"body":[1.6,3.2]},"words":{"light":{"words":"glows","figure":"about 15 %","rests":"layers and glass composed with every reflection between them; cloth values typical, assumed"},"colour":{"words":"true","figure":"","rests":"a white lining, or none, shows the true colour by day (common practice)"},"warmth":{"words":"more","figure":"21 to 29 %","rests":"less heat lost through the glass when drawn; a range, since the edges decide: it closes at the sides and at the top or the floor"},"fade":{"words":"nearly two thirds kept off","figure":"65 %","rests":"light that reaches the back of the face, weighted by its damage (CIE 89/3), against the same face unlined"},"body":{"words":"medium","figure":"","rests":"about 11.1 oz/yd² in all, and how firmly each layer holds it; a judgement, not a test"}},"assumed":["larch-stripe.uv.transmittance","larch-stripe.uv.reflectance","larch-stripe.solar.transmittance","larch-stripe.solar.reflectance","std-white.transmittance","std-white.reflectance","std-white.uv.transmittance","std-white.uv.reflectance","std-white.solar.transmittance","std-white.solar.reflectance","std-white.weight"],"advice":[{"rule":"cords-child","level":"caution","says":"No cord, loop or tieback within a child''s reach: to be drawn by hand or wand. The cot stands clear of cloth and pole.","rests":"looped and reachable cords strangle; local product-safety law and certified parts decide; United States: ANSI/WCMA A100.1-2022, for goods made on or after 1 June 2024, has no free-hanging operating cord on custom goods; 16 CFR 1120.3(e) and (f) stand"},{"rule":"nursery-not-dark","level":"caution","says":"Not dark: a nursery needs a blackout lining for daytime sleep.","rests":"common practice: a nursery must be dark; computed light through the cloth"},{"rule":"condensation","level":"caution","says":"On a cold night this glass is wet even bare, and wetter behind so tight a stack: clear the window by day and air the room against mould.","rests":"computed: glass behind the drapery is below the dew point of the room (ISO 13788, from memory)"},{"rule":"button-cells","level":"note","says":"Should a motor work it: keep the battery cover of the remote screwed shut, for a swallowed button cell burns within hours.","rests":"button cells are a swallowing hazard; common practice"},{"rule":"escape-window","level":"note","says":"Where this window is the way out in a fire it has to open freely behind the cloth.","rests":"common practice"},{"rule":"lamps-show-shadows","level":"note","says":"By night, whoever stands close to it before a lamp throws a shadow that the street can see.","rests":"common practice: whoever stands in the dark sees into the light; a sheer hides by day and not by night"},{"rule":"finish-to-glass","level":"note","says":"The lustrous, water-shedding side of the lining faces the glass.","rests":"common practice"},{"rule":"seams-show-through","level":"note","says":"At noon seams and hem turns show as darker lines through a pale face; interlining hides them.","rests":"common practice"},{"rule":"lining-slows-fading","level":"praise","says":"Keeps about 65 % of the sun''s fading from the back of the face.","rests":"computed: CIE 89/3 damage behind the same glass, against unlined"},{"rule":"white-keeps-true","level":"praise","says":"A white lining keeps the colours true by day, and lined windows look alike from the street.","rests":"common practice; computed colour difference by spectra"},{"rule":"overlap-on-rings","level":"note","says":"Panels on rings butt, with no more than an inch of overlap: a true overlap needs a track with a master arm. Say which rod it is.","rests":"common practice: rings on a pole butt, 0 to 1 in"}],"price":{"total":166048,"lines":[{"label":"Larch stripe, 12¾ yd","kind":"cloth","amount":107100,"formula":"12.75 yd × 42.00 × 2"},{"label":"Standard lining, white, 10 yd","kind":"cloth","amount":13000,"formula":"10 yd × 6.50 × 2"},{"label":"Making, 4 widths","kind":"labour","amount":15200,"formula":"4 × 38.00"},{"label":"Putting up","kind":"labour","amount":4500,"formula":"1 × 45.00"},{"label":"Rod, 79 in","kind":"hardware","amount":8888,"formula":"6.5833 ft × 9.00 × 1.5"},{"label":"Brackets, 3","kind":"hardware","amount":6300,"formula":"3 × 14.00 × 1.5"},{"label":"Finials, 2","kind":"hardware","amount":3600,"formula":"2 × 12.00 × 1.5"},{"label":"Rings, 24","kind":"hardware","amount":5400,"formula":"24 × 1.50 × 1.5"},{"label":"Heading tape, 5.67 yd","kind":"notions","amount":935,"formula":"5.6667 yd × 1.10 × 1.5"},{"label":"Hooks, 24","kind":"notions","amount":720,"formula":"24 × 0.20 × 1.5"},{"label":"Weights, 6","kind":"notions","amount":405,"formula":"6 × 0.45 × 1.5"}]},"offer":null,"working":[{"id":"finished-width","label":"width with returns and overlap","formula":"72 + 3½ + 3½ + 3½","value":"82½","rests":"rod face, both returns, the whole overlap"},{"id":"flat-width","label":"flat width","formula":"82½ × 2.5","value":"206¼","rests":"fullness as written; practice: fullness over whole"},{"id":"widths","label":"widths","formula":"206¼ ÷ 54 = 3.82, up to whole widths","value":"4","rests":"practice: up to whole widths, hems and seams left out"},{"id":"fullness-made","label":"fullness made","formula":"(4 × 54 − 4 × 3) ÷ 82½","value":"2.47","rests":"side hems and seams taken off"},{"id":"plain-cut","label":"cut before repeat","formula":"84 + 8 + 8","value":"100","rests":"practice: heading of lined pinch-pleat, bottom hem"},{"id":"points","label":"pleats in a piece","formula":"5 × 2","value":"10","rests":"practice: pleats in a width, half widths round down"},{"id":"pleat","label":"cloth in a pleat","formula":"(flat − finished) ÷ 10","value":"≈6 1/16","rests":"returns and overlap hang flat"},{"id":"pleat-space","label":"space between pleats","formula":"(finished − return − half overlap) ÷ 9","value":"4","rests":"shared out in eighths at the table"},{"id":"stackback","label":"stackback, each","formula":"4 × 6 to 8 ÷ 2","value":"14 (12 to 16)","rests":"practice: wall that a width takes drawn back, lined; sources differ threefold, so the range is told"},{"id":"glass-clear","label":"clear between the stacks","formula":"72 − 2 × 14","value":"44","rests":"the opening is 60: drawn back, the panels cover 16 of it"},{"id":"rod-to-clear","label":"rod that clears the opening","formula":"60 + 2 × 17½, with 5 widths","value":"95","rests":"solved: a longer rod takes more widths, and they stack deeper"},{"id":"repeats","label":"repeats in a cut","formula":"100 ÷ 27 = 3.7, up","value":"4","rests":"practice: up to whole repeats"},{"id":"cut-length","label":"cut length","formula":"4 × 27","value":"108","rests":"straight match"},{"id":"laid-out","label":"laid out","formula":"3 × 108 + 100; by the chart 12 yd","value":"11.78 yd","rests":"4 cuts, this treatment alone, the first in phase"},{"id":"order","label":"order","formula":"11.78 yd + ¾ yd, up to ¼ yd","value":"12¾ yd","rests":"practice: from the layout, one repeat extra"},{"id":"layer-1-widths","label":"Standard lining, white, widths","formula":"as wide as the face","value":"4","rests":"seams line up with the face"},{"id":"layer-1-cut","label":"Standard lining, white, cut","formula":"84 + 3 + 4 − 1","value":"90","rests":"practice: lining heading, hem and how much shorter it hangs"},{"id":"layer-1-order","label":"Standard lining, white, order","formula":"10 yd + 0 yd, up to ¼ yd","value":"10 yd","rests":"practice: from the layout, nothing extra"},{"id":"rod","label":"rod","formula":"72 + 3½ + 3½","value":"79","rests":"rod face and both returns"},{"id":"brackets","label":"brackets","formula":"72 ÷ 48 = 1.5, up, and 1","value":"3","rests":"practice: the widest span between two brackets"},{"id":"fixings","label":"rings, and as many hooks","formula":"(10 pleats + 2 ends) × 2 panels","value":"24","rests":"one for a pleat and one for each end"},{"id":"heading-tape","label":"heading tape or buckram","formula":"204","value":"5.67 yd","rests":"the flat width as made, side hems off"},{"id":"weights","label":"weights","formula":"2 × 2 + 2","value":"6","rests":"two corners of each panel and one at every join, in pouches; never lead"},{"id":"billable-widths","label":"billable widths","formula":"4, up","value":"4","rests":"the widths made"},{"id":"weight","label":"weight on the rod","formula":"Larch stripe 3307 g at 237 g/m² + Standard lining, white 1658 g at 140 g/m²","value":"10.9 lb","rests":"made width × length with the hems that stay in; hardware left out"},{"id":"light","label":"light through the cloth","formula":"passed / sent back: Larch stripe 0.3 / 0.55, Standard lining, white 0.35 / 0.58; composed with D = 1 − Rb × Rf","value":"0.154","rests":"layer composition (Stokes), visible light, flat cloth"},{"id":"light-with-glass","label":"with the glass","formula":"glass 0.691 / 0.249 before 0.154 / 0.679","value":"0.128","rests":"two generic 3 mm clear panes composed"},{"id":"open-share","label":"open share round the cloth","formula":"sides 0.00104, top 0.0108, bottom 0.000192 and centre 0.000656","value":"0.0127","rests":"gaps typical, assumed: half to double"},{"id":"light-in-room","label":"light in the room","formula":"(1 − 0.0127) × 0.128 + 0.0127 × 0.691","value":"0.135","rests":"edges and needle holes added to the cloth"},{"id":"colour-shift","label":"colour by day against lamplight","formula":"CIEDE2000 of Lab (76.1, 2.6, 19.6) and (76.1, 4.0, 24.2)","value":"2.5","rests":"D65, 2 degrees, 400 to 700 nm by 20 nm, both at Y = 50 (Sharma, Wu, Dalal 2005)"},{"id":"warmth","label":"added resistance when drawn","formula":"close: 0.0933 to 0.14, cloth itself 0.0167","value":"0.12 m²K/W (R 0.7)","rests":"range over public sources by how it closes, at most 0.33"},{"id":"u-value","label":"window with it","formula":"1 ÷ (1 ÷ 2.9 + 0.0933 to 0.14)","value":"2.06 to 2.28 W/m²K","rests":"reference glazing B of EN 14501 (from memory)"},{"id":"heat-saved","label":"heat loss saved","formula":"1 − 2.28 ÷ 2.9 to 1 − 2.06 ÷ 2.9","value":"21 % to 29 %","rests":"of the loss through the glass, while drawn"},{"id":"glass-temperature","label":"glass on a winter night","formula":"20 − (0.13 + 0.117) ÷ (1 ÷ 2.9 + 0.117) × (20 − (-10))","value":"4.0 °C (3.3 to 4.7), bare 8.7 °C; dew point 9.3 °C at 50 %: wet even bare","rests":"ISO 13788 (from memory); night and humidity assumed"},{"id":"summer","label":"sun let in when drawn","formula":"g 0.76 × (1 − 0.76 × 0.512 − 0.337 × 2.64 ÷ 30) = 0.44; ÷ 0.76, over 100 % of the window, folds counted","value":"58 % of the bare window''s, of all sun 34 % to 46 %","rests":"EN 13363-1, internal device, G = 1 ÷ (1 ÷ U + 1 ÷ 30); the street side of the stack; it reads from 0.02 low to 0.10 high"},{"id":"fade","label":"fading kept off","formula":"1 − 0.232 ÷ 0.67","value":"65 %","rests":"CIE 89/3 over 300 to 700 nm; ultraviolet is 35 % of it behind this glass"},{"id":"body","label":"body","formula":"7.0 oz/yd² × 0.6 + 4.1 oz/yd² (light) × 0.45","value":"2.4 of 5","rests":"a judgement from weight and family or hand, not a test"},{"id":"hang-weight","label":"weight as it hangs","formula":"the layers as the take-off weighs them, hems with them","value":"11 lb; 3 brackets, about 3.6 lb each","rests":"guidance: the rod maker''s rating and a competent installer decide"}]},"better":{"stack":{"face":"larch-stripe","behind":["inter-med","std-white"]},"chosen":null,"title":"Interlined","says":"A soft flannel between the face and a white lining. By day the light is dim, the cloth''s colours look a touch warmer and nearly nine tenths of the fading is kept off.","takeoff":[{"cloth":"larch-stripe","name":"Larch stripe","role":"face","layer":0,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":2.4727,"plainCut":100,"cutLength":108,"repeatsPerCut":4,"length":432,"yards":12,"metres":10.9728,"planYards":11.7778,"planMetres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"grams":3307.4},{"cloth":"inter-med","name":"Medium interlining","role":"interlining","layer":1,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":null,"plainCut":88,"cutLength":88,"repeatsPerCut":null,"length":352,"yards":9.7778,"metres":8.9408,"planYards":9.7778,"planMetres":8.9408,"orderYards":10,"orderMetres":9.144,"grams":2432.2},{"cloth":"std-white","name":"Standard lining, white","role":"lining","layer":2,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":null,"plainCut":90,"cutLength":90,"repeatsPerCut":null,"length":360,"yards":10,"metres":9.144,"planYards":10,"planMetres":9.144,"orderYards":10,"orderMetres":9.144,"grams":1658.3}],"weight":{"grams":7398},"stackback":{"least":16,"usual":20,"most":24},"rodToClear":{"rod":130,"widths":7},"readings":{"light":0.0652845,"lightWithGlass":0.0548675,"lightInRoom":0.0629662,"colourShift":4.35268,"warmth":0.158333,"fade":0.873719,"body":3.2},"ranges":{"lightInRoom":[0.0339103,0.108665],"warmth":[0.126667,0.19],"light":[0.0360149,0.10852],"lightWithGlass":[0.0297007,0.0934508],"fade":[0.780471,0.930972],"colourShift":[3.48215,5.44085],"body":[2.4,4]},"words":{"light":{"words":"dim","figure":"about 7 %","rests":"layers and glass composed with every reflection between them; cloth values typical, assumed"},"colour":{"words":"a touch warmer","figure":"","rests":"interlining is off-white, so the face looks a little warmer by day (common practice)"},"warmth":{"words":"clearly more","figure":"27 to 36 %","rests":"less heat lost through the glass when drawn; a range, since the edges decide: it closes at the sides and at the top or the floor"},"fade":{"words":"nearly nine tenths kept off","figure":"87 %","rests":"light that reaches the back of the face, weighted by its damage (CIE 89/3), against the same face unlined"},"body":{"words":"full","figure":"","rests":"about 17.3 oz/yd² in all, and how firmly each layer holds it; a judgement, not a test"}},"assumed":["larch-stripe.uv.transmittance","larch-stripe.uv.reflectance","larch-stripe.solar.transmittance","larch-stripe.solar.reflectance","inter-med.transmittance","inter-med.reflectance","inter-med.uv.transmittance","inter-med.uv.reflectance","inter-med.solar.transmittance","inter-med.solar.reflectance","inter-med.weight","std-white.transmittance","std-white.reflectance","std-white.uv.transmittance","std-white.uv.reflectance","std-white.solar.transmittance","std-white.solar.reflectance","std-white.weight"],"advice":[{"rule":"cords-child","level":"caution","says":"No cord, loop or tieback within a child''s reach: to be drawn by hand or wand. The cot stands clear of cloth and pole.","rests":"looped and reachable cords strangle; local product-safety law and certified parts decide; United States: ANSI/WCMA A100.1-2022, for goods made on or after 1 June 2024, has no free-hanging operating cord on custom goods; 16 CFR 1120.3(e) and (f) stand"},{"rule":"nursery-not-dark","level":"caution","says":"Dim, not dark: interlining alone does not make a nursery dark for daytime sleep.","rests":"common practice: a nursery must be dark; computed light through the cloth"},{"rule":"condensation","level":"caution","says":"On a cold night this glass is wet even bare, and wetter behind so tight a stack: clear the window by day and air the room against mould.","rests":"computed: glass behind the drapery is below the dew point of the room (ISO 13788, from memory)"},{"rule":"button-cells","level":"note","says":"Should a motor work it: keep the battery cover of the remote screwed shut, for a swallowed button cell burns within hours.","rests":"button cells are a swallowing hazard; common practice"},{"rule":"escape-window","level":"note","says":"Where this window is the way out in a fire it has to open freely behind the cloth.","rests":"common practice"},{"rule":"interlining-dry-clean","level":"note","says":"What is interlined is dry-cleaned, never washed.","rests":"common practice"},{"rule":"finish-to-glass","level":"note","says":"The lustrous, water-shedding side of the lining faces the glass.","rests":"common practice"},{"rule":"interlining-tint","level":"note","says":"Interlining is off-white, so by day the face looks a little warmer, even with a white lining.","rests":"common practice; computed colour difference by spectra"},{"rule":"private-by-night","level":"praise","says":"Drawn by night it shows the street nothing but a glow at its edges, lamps on or off.","rests":"common practice: whoever stands in the dark sees into the light; a sheer hides by day and not by night"},{"rule":"lining-slows-fading","level":"praise","says":"Keeps about 87 % of the sun''s fading from the back of the face.","rests":"computed: CIE 89/3 damage behind the same glass, against unlined"},{"rule":"overlap-on-rings","level":"note","says":"Panels on rings butt, with no more than an inch of overlap: a true overlap needs a track with a master arm. Say which rod it is.","rests":"common practice: rings on a pole butt, 0 to 1 in"}],"price":{"total":187648,"lines":[{"label":"Larch stripe, 12¾ yd","kind":"cloth","amount":107100,"formula":"12.75 yd × 42.00 × 2"},{"label":"Medium interlining, 10 yd","kind":"cloth","amount":18000,"formula":"10 yd × 9.00 × 2"},{"label":"Standard lining, white, 10 yd","kind":"cloth","amount":13000,"formula":"10 yd × 6.50 × 2"},{"label":"Making, 4 widths","kind":"labour","amount":15200,"formula":"4 × 38.00"},{"label":"Interlining, 4 widths","kind":"labour","amount":3600,"formula":"4 × 9.00"},{"label":"Putting up","kind":"labour","amount":4500,"formula":"1 × 45.00"},{"label":"Rod, 79 in","kind":"hardware","amount":8888,"formula":"6.5833 ft × 9.00 × 1.5"},{"label":"Brackets, 3","kind":"hardware","amount":6300,"formula":"3 × 14.00 × 1.5"},{"label":"Finials, 2","kind":"hardware","amount":3600,"formula":"2 × 12.00 × 1.5"},{"label":"Rings, 24","kind":"hardware","amount":5400,"formula":"24 × 1.50 × 1.5"},{"label":"Heading tape, 5.67 yd","kind":"notions","amount":935,"formula":"5.6667 yd × 1.10 × 1.5"},{"label":"Hooks, 24","kind":"notions","amount":720,"formula":"24 × 0.20 × 1.5"},{"label":"Weights, 6","kind":"notions","amount":405,"formula":"6 × 0.45 × 1.5"}]},"offer":null,"working":[{"id":"finished-width","label":"width with returns and overlap","formula":"72 + 3½ + 3½ + 3½","value":"82½","rests":"rod face, both returns, the whole overlap"},{"id":"flat-width","label":"flat width","formula":"82½ × 2.5","value":"206¼","rests":"fullness as written; practice: fullness over whole"},{"id":"widths","label":"widths","formula":"206¼ ÷ 54 = 3.82, up to whole widths","value":"4","rests":"practice: up to whole widths, hems and seams left out"},{"id":"fullness-made","label":"fullness made","formula":"(4 × 54 − 4 × 3) ÷ 82½","value":"2.47","rests":"side hems and seams taken off"},{"id":"plain-cut","label":"cut before repeat","formula":"84 + 8 + 8","value":"100","rests":"practice: heading of lined pinch-pleat, bottom hem"},{"id":"points","label":"pleats in a piece","formula":"5 × 2","value":"10","rests":"practice: pleats in a width, half widths round down"},{"id":"pleat","label":"cloth in a pleat","formula":"(flat − finished) ÷ 10","value":"≈6 1/16","rests":"returns and overlap hang flat"},{"id":"pleat-space","label":"space between pleats","formula":"(finished − return − half overlap) ÷ 9","value":"4","rests":"shared out in eighths at the table"},{"id":"stackback","label":"stackback, each","formula":"4 × 8 to 12 ÷ 2","value":"20 (16 to 24)","rests":"practice: wall that a width takes drawn back, interlined; sources differ threefold, so the range is told"},{"id":"glass-clear","label":"clear between the stacks","formula":"72 − 2 × 20","value":"32","rests":"the opening is 60: drawn back, the panels cover 28 of it"},{"id":"rod-to-clear","label":"rod that clears the opening","formula":"60 + 2 × 35, with 7 widths","value":"130","rests":"solved: a longer rod takes more widths, and they stack deeper"},{"id":"repeats","label":"repeats in a cut","formula":"100 ÷ 27 = 3.7, up","value":"4","rests":"practice: up to whole repeats"},{"id":"cut-length","label":"cut length","formula":"4 × 27","value":"108","rests":"straight match"},{"id":"laid-out","label":"laid out","formula":"3 × 108 + 100; by the chart 12 yd","value":"11.78 yd","rests":"4 cuts, this treatment alone, the first in phase"},{"id":"order","label":"order","formula":"11.78 yd + ¾ yd, up to ¼ yd","value":"12¾ yd","rests":"practice: from the layout, one repeat extra"},{"id":"layer-1-widths","label":"Medium interlining, widths","formula":"as wide as the face","value":"4","rests":"seams line up with the face"},{"id":"layer-1-cut","label":"Medium interlining, cut","formula":"84 + 4","value":"88","rests":"practice: interlining heading, hem and how much shorter it hangs"},{"id":"layer-1-order","label":"Medium interlining, order","formula":"9.78 yd + 0 yd, up to ¼ yd","value":"10 yd","rests":"practice: from the layout, nothing extra"},{"id":"layer-2-widths","label":"Standard lining, white, widths","formula":"as wide as the face","value":"4","rests":"seams line up with the face"},{"id":"layer-2-cut","label":"Standard lining, white, cut","formula":"84 + 3 + 4 − 1","value":"90","rests":"practice: lining heading, hem and how much shorter it hangs"},{"id":"layer-2-order","label":"Standard lining, white, order","formula":"10 yd + 0 yd, up to ¼ yd","value":"10 yd","rests":"practice: from the layout, nothing extra"},{"id":"rod","label":"rod","formula":"72 + 3½ + 3½","value":"79","rests":"rod face and both returns"},{"id":"brackets","label":"brackets","formula":"72 ÷ 48 = 1.5, up, and 1","value":"3","rests":"practice: the widest span between two brackets"},{"id":"fixings","label":"rings, and as many hooks","formula":"(10 pleats + 2 ends) × 2 panels","value":"24","rests":"one for a pleat and one for each end"},{"id":"heading-tape","label":"heading tape or buckram","formula":"204","value":"5.67 yd","rests":"the flat width as made, side hems off"},{"id":"weights","label":"weights","formula":"2 × 2 + 2","value":"6","rests":"two corners of each panel and one at every join, in pouches; never lead"},{"id":"billable-widths","label":"billable widths","formula":"4, up","value":"4","rests":"the widths made"},{"id":"weight","label":"weight on the rod","formula":"Larch stripe 3307 g at 237 g/m² + Medium interlining 2432 g at 210 g/m² + Standard lining, white 1658 g at 140 g/m²","value":"16.3 lb","rests":"made width × length with the hems that stay in; hardware left out"},{"id":"light","label":"light through the cloth","formula":"passed / sent back: Larch stripe 0.3 / 0.55, Medium interlining 0.25 / 0.62, Standard lining, white 0.35 / 0.58; composed with D = 1 − Rb × Rf","value":"0.0653","rests":"layer composition (Stokes), visible light, flat cloth"},{"id":"light-with-glass","label":"with the glass","formula":"glass 0.691 / 0.249 before 0.0653 / 0.715","value":"0.0549","rests":"two generic 3 mm clear panes composed"},{"id":"open-share","label":"open share round the cloth","formula":"sides 0.00104, top 0.0108, bottom 0.000192 and centre 0.000656","value":"0.0127","rests":"gaps typical, assumed: half to double"},{"id":"light-in-room","label":"light in the room","formula":"(1 − 0.0127) × 0.0549 + 0.0127 × 0.691","value":"0.063","rests":"edges and needle holes added to the cloth"},{"id":"colour-shift","label":"colour by day against lamplight","formula":"CIEDE2000 of Lab (76.1, 3.0, 20.6) and (76.1, 5.0, 29.7)","value":"4.4","rests":"D65, 2 degrees, 400 to 700 nm by 20 nm, both at Y = 50 (Sharma, Wu, Dalal 2005)"},{"id":"warmth","label":"added resistance when drawn","formula":"close: 0.127 to 0.19, cloth itself 0.0583","value":"0.16 m²K/W (R 0.9)","rests":"range over public sources by how it closes, at most 0.33"},{"id":"u-value","label":"window with it","formula":"1 ÷ (1 ÷ 2.9 + 0.127 to 0.19)","value":"1.87 to 2.12 W/m²K","rests":"reference glazing B of EN 14501 (from memory)"},{"id":"heat-saved","label":"heat loss saved","formula":"1 − 2.12 ÷ 2.9 to 1 − 1.87 ÷ 2.9","value":"27 % to 36 %","rests":"of the loss through the glass, while drawn"},{"id":"glass-temperature","label":"glass on a winter night","formula":"20 − (0.13 + 0.158) ÷ (1 ÷ 2.9 + 0.158) × (20 − (-10))","value":"2.8 °C (2.1 to 3.7), bare 8.7 °C; dew point 9.3 °C at 50 %: wet even bare","rests":"ISO 13788 (from memory); night and humidity assumed"},{"id":"summer","label":"sun let in when drawn","formula":"g 0.76 × (1 − 0.76 × 0.525 − 0.407 × 2.64 ÷ 30) = 0.43; ÷ 0.76, over 100 % of the window, folds counted","value":"57 % of the bare window''s, of all sun 33 % to 45 %","rests":"EN 13363-1, internal device, G = 1 ÷ (1 ÷ U + 1 ÷ 30); the street side of the stack; it reads from 0.02 low to 0.10 high"},{"id":"fade","label":"fading kept off","formula":"1 − 0.0847 ÷ 0.67","value":"87 %","rests":"CIE 89/3 over 300 to 700 nm; ultraviolet is 35 % of it behind this glass"},{"id":"body","label":"body","formula":"7.0 oz/yd² × 0.6 + 6.2 oz/yd² × 0.5 + 4.1 oz/yd² (light) × 0.45","value":"3.2 of 5","rests":"a judgement from weight and family or hand, not a test"},{"id":"hang-weight","label":"weight as it hangs","formula":"the layers as the take-off weighs them, hems with them","value":"16 lb; 3 brackets, about 5.4 lb each","rests":"guidance: the rod maker''s rating and a competent installer decide"}]},"best":{"stack":{"face":"larch-stripe","behind":["soft-blackout"]},"chosen":null,"title":"Soft blackout","says":"A soft blackout lining behind the face. Nearly dark by day, the face looks almost as it does by night and it fades very little.","takeoff":[{"cloth":"larch-stripe","name":"Larch stripe","role":"face","layer":0,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":2.4727,"plainCut":100,"cutLength":108,"repeatsPerCut":4,"length":432,"yards":12,"metres":10.9728,"planYards":11.7778,"planMetres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"grams":3307.4},{"cloth":"soft-blackout","name":"Soft blackout, white","role":"lining","layer":1,"widths":4,"railroaded":false,"cuts":4,"fullnessMade":null,"plainCut":90,"cutLength":90,"repeatsPerCut":null,"length":360,"yards":10,"metres":9.144,"planYards":10,"planMetres":9.144,"orderYards":10,"orderMetres":9.144,"grams":2724.4}],"weight":{"grams":6031.8},"stackback":{"least":12,"usual":14,"most":16},"rodToClear":{"rod":95,"widths":5},"readings":{"light":0.0239617,"lightWithGlass":0.0199402,"lightInRoom":0.0284838,"colourShift":2.63499,"warmth":0.122917,"fade":0.949645,"body":2.9},"ranges":{"lightInRoom":[0.0176028,0.0467675],"warmth":[0.0983333,0.1475],"light":[0.0159744,0.0359425],"lightWithGlass":[0.0132886,0.029935],"fade":[0.924425,0.966438],"colourShift":[2.108,3.29374],"body":[2.1,3.7]},"words":{"light":{"words":"nearly dark","figure":"about 2 %","rests":"layers and glass composed with every reflection between them; cloth values typical, assumed"},"colour":{"words":"nearly as by night","figure":"","rests":"colour difference CIEDE2000 under D65, face by daylight through the stack against the face lit from the room; spectra estimated from the shades"},"warmth":{"words":"more","figure":"22 to 30 %","rests":"less heat lost through the glass when drawn; a range, since the edges decide: it closes at the sides and at the top or the floor"},"fade":{"words":"nearly all kept off","figure":"95 %","rests":"light that reaches the back of the face, weighted by its damage (CIE 89/3), against the same face unlined"},"body":{"words":"medium","figure":"","rests":"about 13.8 oz/yd² in all, and how firmly each layer holds it; a judgement, not a test"}},"assumed":["larch-stripe.uv.transmittance","larch-stripe.uv.reflectance","larch-stripe.solar.transmittance","larch-stripe.solar.reflectance","soft-blackout.transmittance","soft-blackout.reflectance","soft-blackout.uv.transmittance","soft-blackout.uv.reflectance","soft-blackout.solar.transmittance","soft-blackout.solar.reflectance","soft-blackout.weight"],"advice":[{"rule":"cords-child","level":"caution","says":"No cord, loop or tieback within a child''s reach: to be drawn by hand or wand. The cot stands clear of cloth and pole.","rests":"looped and reachable cords strangle; local product-safety law and certified parts decide; United States: ANSI/WCMA A100.1-2022, for goods made on or after 1 June 2024, has no free-hanging operating cord on custom goods; 16 CFR 1120.3(e) and (f) stand"},{"rule":"soft-blackout-nearly-dark","level":"caution","says":"Nearly dark, not dark: by day the sun is still seen. For daytime sleep add black cloth between face and lining.","rests":"common practice: a soft blackout stops about 95 %; the remedy is face, interlining, black cloth, lining"},{"rule":"condensation","level":"caution","says":"On a cold night this glass is wet even bare, and wetter behind so tight a stack: clear the window by day and air the room against mould.","rests":"computed: glass behind the drapery is below the dew point of the room (ISO 13788, from memory)"},{"rule":"button-cells","level":"note","says":"Should a motor work it: keep the battery cover of the remote screwed shut, for a swallowed button cell burns within hours.","rests":"button cells are a swallowing hazard; common practice"},{"rule":"escape-window","level":"note","says":"Where this window is the way out in a fire it has to open freely behind the cloth.","rests":"common practice"},{"rule":"sew-a-sample","level":"note","says":"Soft blackout closes round the needle; a sewn sample held to the light shows how well.","rests":"common practice: dark linings differ, so sew through a sample and hold it to the light"},{"rule":"lighter-edges","level":"note","says":"Side hems, seams and the hem below the lining stay lighter than the rest.","rests":"common practice: behind any blackout"},{"rule":"match-content","level":"note","says":"The lining (soft blackout, white) is of other fibres than the face: layers that shrink differently pucker at the hem, so wash or steam a sample of both before cutting.","rests":"common practice: a cotton face wants cotton behind it, a blend a blend, and polyester hardly shrinks where cotton does; difference in shrinkage puckers a hem"},{"rule":"coated-side","level":"note","says":"Which side of a coated lining faces the glass differs by maker: it is noted on the work order.","rests":"common practice"},{"rule":"thermal-stress","level":"note","says":"A tight, dense or black stack before sunny glass heats it unevenly: ask the glazier first, above all about coated or wired glass.","rests":"thermal stress in some glass behind tight stacks"},{"rule":"private-by-night","level":"praise","says":"Drawn by night it shows the street nothing but a glow at its edges, lamps on or off.","rests":"common practice: whoever stands in the dark sees into the light; a sheer hides by day and not by night"},{"rule":"soft-blackout-folds","level":"praise","says":"A soft blackout drapes well and folds like cloth.","rests":"common practice"},{"rule":"lining-slows-fading","level":"praise","says":"Keeps about 95 % of the sun''s fading from the back of the face.","rests":"computed: CIE 89/3 damage behind the same glass, against unlined"},{"rule":"overlap-on-rings","level":"note","says":"Panels on rings butt, with no more than an inch of overlap: a true overlap needs a track with a master arm. Say which rod it is.","rests":"common practice: rings on a pole butt, 0 to 1 in"}],"price":{"total":187448,"lines":[{"label":"Larch stripe, 12¾ yd","kind":"cloth","amount":107100,"formula":"12.75 yd × 42.00 × 2"},{"label":"Soft blackout, white, 10 yd","kind":"cloth","amount":32000,"formula":"10 yd × 16.00 × 2"},{"label":"Making, 4 widths","kind":"labour","amount":15200,"formula":"4 × 38.00"},{"label":"Blackout, 4 widths","kind":"labour","amount":2400,"formula":"4 × 6.00"},{"label":"Putting up","kind":"labour","amount":4500,"formula":"1 × 45.00"},{"label":"Rod, 79 in","kind":"hardware","amount":8888,"formula":"6.5833 ft × 9.00 × 1.5"},{"label":"Brackets, 3","kind":"hardware","amount":6300,"formula":"3 × 14.00 × 1.5"},{"label":"Finials, 2","kind":"hardware","amount":3600,"formula":"2 × 12.00 × 1.5"},{"label":"Rings, 24","kind":"hardware","amount":5400,"formula":"24 × 1.50 × 1.5"},{"label":"Heading tape, 5.67 yd","kind":"notions","amount":935,"formula":"5.6667 yd × 1.10 × 1.5"},{"label":"Hooks, 24","kind":"notions","amount":720,"formula":"24 × 0.20 × 1.5"},{"label":"Weights, 6","kind":"notions","amount":405,"formula":"6 × 0.45 × 1.5"}]},"offer":null,"working":[{"id":"finished-width","label":"width with returns and overlap","formula":"72 + 3½ + 3½ + 3½","value":"82½","rests":"rod face, both returns, the whole overlap"},{"id":"flat-width","label":"flat width","formula":"82½ × 2.5","value":"206¼","rests":"fullness as written; practice: fullness over whole"},{"id":"widths","label":"widths","formula":"206¼ ÷ 54 = 3.82, up to whole widths","value":"4","rests":"practice: up to whole widths, hems and seams left out"},{"id":"fullness-made","label":"fullness made","formula":"(4 × 54 − 4 × 3) ÷ 82½","value":"2.47","rests":"side hems and seams taken off"},{"id":"plain-cut","label":"cut before repeat","formula":"84 + 8 + 8","value":"100","rests":"practice: heading of lined pinch-pleat, bottom hem"},{"id":"points","label":"pleats in a piece","formula":"5 × 2","value":"10","rests":"practice: pleats in a width, half widths round down"},{"id":"pleat","label":"cloth in a pleat","formula":"(flat − finished) ÷ 10","value":"≈6 1/16","rests":"returns and overlap hang flat"},{"id":"pleat-space","label":"space between pleats","formula":"(finished − return − half overlap) ÷ 9","value":"4","rests":"shared out in eighths at the table"},{"id":"stackback","label":"stackback, each","formula":"4 × 6 to 8 ÷ 2","value":"14 (12 to 16)","rests":"practice: wall that a width takes drawn back, lined; sources differ threefold, so the range is told"},{"id":"glass-clear","label":"clear between the stacks","formula":"72 − 2 × 14","value":"44","rests":"the opening is 60: drawn back, the panels cover 16 of it"},{"id":"rod-to-clear","label":"rod that clears the opening","formula":"60 + 2 × 17½, with 5 widths","value":"95","rests":"solved: a longer rod takes more widths, and they stack deeper"},{"id":"repeats","label":"repeats in a cut","formula":"100 ÷ 27 = 3.7, up","value":"4","rests":"practice: up to whole repeats"},{"id":"cut-length","label":"cut length","formula":"4 × 27","value":"108","rests":"straight match"},{"id":"laid-out","label":"laid out","formula":"3 × 108 + 100; by the chart 12 yd","value":"11.78 yd","rests":"4 cuts, this treatment alone, the first in phase"},{"id":"order","label":"order","formula":"11.78 yd + ¾ yd, up to ¼ yd","value":"12¾ yd","rests":"practice: from the layout, one repeat extra"},{"id":"layer-1-widths","label":"Soft blackout, white, widths","formula":"as wide as the face","value":"4","rests":"seams line up with the face"},{"id":"layer-1-cut","label":"Soft blackout, white, cut","formula":"84 + 3 + 4 − 1","value":"90","rests":"practice: lining heading, hem and how much shorter it hangs"},{"id":"layer-1-order","label":"Soft blackout, white, order","formula":"10 yd + 0 yd, up to ¼ yd","value":"10 yd","rests":"practice: from the layout, nothing extra"},{"id":"rod","label":"rod","formula":"72 + 3½ + 3½","value":"79","rests":"rod face and both returns"},{"id":"brackets","label":"brackets","formula":"72 ÷ 48 = 1.5, up, and 1","value":"3","rests":"practice: the widest span between two brackets"},{"id":"fixings","label":"rings, and as many hooks","formula":"(10 pleats + 2 ends) × 2 panels","value":"24","rests":"one for a pleat and one for each end"},{"id":"heading-tape","label":"heading tape or buckram","formula":"204","value":"5.67 yd","rests":"the flat width as made, side hems off"},{"id":"weights","label":"weights","formula":"2 × 2 + 2","value":"6","rests":"two corners of each panel and one at every join, in pouches; never lead"},{"id":"billable-widths","label":"billable widths","formula":"4, up","value":"4","rests":"the widths made"},{"id":"weight","label":"weight on the rod","formula":"Larch stripe 3307 g at 237 g/m² + Soft blackout, white 2724 g at 230 g/m²","value":"13.3 lb","rests":"made width × length with the hems that stay in; hardware left out"},{"id":"light","label":"light through the cloth","formula":"passed / sent back: Larch stripe 0.3 / 0.55, Soft blackout, white 0.05 / 0.68; composed with D = 1 − Rb × Rf","value":"0.024","rests":"layer composition (Stokes), visible light, flat cloth"},{"id":"light-with-glass","label":"with the glass","formula":"glass 0.691 / 0.249 before 0.024 / 0.682","value":"0.0199","rests":"two generic 3 mm clear panes composed"},{"id":"open-share","label":"open share round the cloth","formula":"sides 0.00104, top 0.0108, bottom 0.000192 and centre 0.000656","value":"0.0127","rests":"gaps typical, assumed: half to double"},{"id":"light-in-room","label":"light in the room","formula":"(1 − 0.0127) × 0.0199 + 0.0127 × 0.691","value":"0.0285","rests":"edges and needle holes added to the cloth"},{"id":"colour-shift","label":"colour by day against lamplight","formula":"CIEDE2000 of Lab (76.1, 2.9, 20.3) and (76.1, 4.4, 25.3)","value":"2.6","rests":"D65, 2 degrees, 400 to 700 nm by 20 nm, both at Y = 50 (Sharma, Wu, Dalal 2005)"},{"id":"warmth","label":"added resistance when drawn","formula":"close: 0.0983 to 0.147, cloth itself 0.0229","value":"0.12 m²K/W (R 0.7)","rests":"range over public sources by how it closes, at most 0.33"},{"id":"u-value","label":"window with it","formula":"1 ÷ (1 ÷ 2.9 + 0.0983 to 0.147)","value":"2.03 to 2.26 W/m²K","rests":"reference glazing B of EN 14501 (from memory)"},{"id":"heat-saved","label":"heat loss saved","formula":"1 − 2.26 ÷ 2.9 to 1 − 2.03 ÷ 2.9","value":"22 % to 30 %","rests":"of the loss through the glass, while drawn"},{"id":"glass-temperature","label":"glass on a winter night","formula":"20 − (0.13 + 0.123) ÷ (1 ÷ 2.9 + 0.123) × (20 − (-10))","value":"3.8 °C (3.1 to 4.5), bare 8.7 °C; dew point 9.3 °C at 50 %: wet even bare","rests":"ISO 13788 (from memory); night and humidity assumed"},{"id":"summer","label":"sun let in when drawn","formula":"g 0.76 × (1 − 0.76 × 0.47 − 0.504 × 2.64 ÷ 30) = 0.45; ÷ 0.76, over 100 % of the window, folds counted","value":"60 % of the bare window''s, of all sun 35 % to 47 %","rests":"EN 13363-1, internal device, G = 1 ÷ (1 ÷ U + 1 ÷ 30); the street side of the stack; it reads from 0.02 low to 0.10 high"},{"id":"fade","label":"fading kept off","formula":"1 − 0.0338 ÷ 0.67","value":"95 %","rests":"CIE 89/3 over 300 to 700 nm; ultraviolet is 35 % of it behind this glass"},{"id":"body","label":"body","formula":"7.0 oz/yd² × 0.6 + 6.8 oz/yd² (middling) × 0.55","value":"2.9 of 5","rests":"a judgement from weight and family or hand, not a test"},{"id":"hang-weight","label":"weight as it hangs","formula":"the layers as the take-off weighs them, hems with them","value":"13 lb; 3 brackets, about 4.4 lb each","rests":"guidance: the rod maker''s rating and a competent installer decide"}]}}}],"plan":[{"cloth":"larch-stripe","tier":"good","yards":11.7778,"metres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"handbookYards":12,"handbookMetres":10.9728,"bound":11.7778,"aloneYards":11.7778,"orderAloneYards":12.75,"bolts":1},{"cloth":"std-white","tier":"good","yards":10,"metres":9.144,"orderYards":10,"orderMetres":9.144,"handbookYards":10,"handbookMetres":9.144,"bound":10,"aloneYards":10,"orderAloneYards":10,"bolts":1},{"cloth":"larch-stripe","tier":"better","yards":11.7778,"metres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"handbookYards":12,"handbookMetres":10.9728,"bound":11.7778,"aloneYards":11.7778,"orderAloneYards":12.75,"bolts":1},{"cloth":"inter-med","tier":"better","yards":9.7778,"metres":8.9408,"orderYards":10,"orderMetres":9.144,"handbookYards":9.7778,"handbookMetres":8.9408,"bound":9.7778,"aloneYards":9.7778,"orderAloneYards":10,"bolts":1},{"cloth":"std-white","tier":"better","yards":10,"metres":9.144,"orderYards":10,"orderMetres":9.144,"handbookYards":10,"handbookMetres":9.144,"bound":10,"aloneYards":10,"orderAloneYards":10,"bolts":1},{"cloth":"larch-stripe","tier":"best","yards":11.7778,"metres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"handbookYards":12,"handbookMetres":10.9728,"bound":11.7778,"aloneYards":11.7778,"orderAloneYards":12.75,"bolts":1},{"cloth":"soft-blackout","tier":"best","yards":10,"metres":9.144,"orderYards":10,"orderMetres":9.144,"handbookYards":10,"handbookMetres":9.144,"bound":10,"aloneYards":10,"orderAloneYards":10,"bolts":1}],"accepted":[{"cloth":"larch-stripe","yards":11.7778,"metres":10.7696,"orderYards":12.75,"orderMetres":11.6586,"handbookYards":12,"handbookMetres":10.9728,"bound":11.7778,"aloneYards":11.7778,"orderAloneYards":12.75,"bolts":1},{"cloth":"inter-med","yards":9.7778,"metres":8.9408,"orderYards":10,"orderMetres":9.144,"handbookYards":9.7778,"handbookMetres":8.9408,"bound":9.7778,"aloneYards":9.7778,"orderAloneYards":10,"bolts":1},{"cloth":"std-white","yards":10,"metres":9.144,"orderYards":10,"orderMetres":9.144,"handbookYards":10,"handbookMetres":9.144,"bound":10,"aloneYards":10,"orderAloneYards":10,"bolts":1}],"totals":{"good":{"net":166048,"taxes":[{"name":"Example tax","amount":8781}],"tax":8781,"total":174829,"deposit":87415},"better":{"net":187648,"taxes":[{"name":"Example tax","amount":9861}],"tax":9861,"total":197509,"deposit":98755},"best":{"net":187448,"taxes":[{"name":"Example tax","amount":9921}],"tax":9921,"total":197369,"deposit":98685}},"warnings":[]}', '{}');
INSERT INTO paper_places ("id", "proposal_id", "path", "at") VALUES (1, 'id-00011', '/home/ada/papers/Ada Fenn/2026-001.pdf', '2026-11-25T12:00:13.000Z');
INSERT INTO mail_drafts ("id", "proposal_id", "recipient", "subject", "body", "created_at") VALUES ('id-00012', 'id-00011', 'ada@example.com', 'Your proposal', 'Dear Ada', '2026-11-25T12:00:14.000Z');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (1, '2026-11-25T12:00:01.000Z', NULL, NULL, 'settings', 'settings', 'edited', '{"letterhead":{"before":{"name":"","lines":[]},"after":{"name":"Reed & Rye","lines":["2 Example Lane"]}},"practice":{"before":{},"after":{"bottomHem":"8 in"}}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (2, '2026-11-25T12:00:02.000Z', 'id-00002', 'id-00001', 'project', 'id-00002', 'imported', '{"client":{"before":null,"after":"Ada Fenn"},"rooms":{"before":null,"after":1},"openings":{"before":null,"after":1},"cloth":{"before":null,"after":1}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (3, '2026-11-25T12:00:03.000Z', NULL, 'id-00001', 'client', 'id-00001', 'edited', '{"notes":{"before":"","after":"Says: \"84 1/2\"; ''gauche''"}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (4, '2026-11-25T12:00:04.000Z', 'id-00002', 'id-00001', 'room', 'id-00007', 'added', '{"projectId":{"before":null,"after":"id-00002"},"position":{"before":null,"after":1},"name":{"before":null,"after":"Room"},"use":{"before":null,"after":"living"},"facing":{"before":null,"after":null},"climate":{"before":null,"after":"mixed"},"privacy":{"before":null,"after":null},"budget":{"before":null,"after":null},"ceiling":{"before":null,"after":null},"drafts":{"before":null,"after":{}}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (5, '2026-11-25T12:00:05.000Z', 'id-00002', 'id-00001', 'room', 'id-00007', 'removed', '{}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (6, '2026-11-25T12:00:06.000Z', NULL, NULL, 'cloth', 'id-00008', 'added', '{"projectId":{"before":null,"after":null},"code":{"before":null,"after":"reed-linen"},"name":{"before":null,"after":"Reed linen"},"role":{"before":null,"after":"face"},"family":{"before":null,"after":"plain"},"width":{"before":null,"after":null},"usableWidth":{"before":null,"after":null},"match":{"before":null,"after":"none"},"repeatVertical":{"before":null,"after":null},"repeatHorizontal":{"before":null,"after":null},"cutOnRepeat":{"before":null,"after":false},"oneWay":{"before":null,"after":false},"bolt":{"before":null,"after":null},"orderStep":{"before":null,"after":null},"leastOrder":{"before":null,"after":null},"railroad":{"before":null,"after":false},"content":{"before":null,"after":{"linen":55,"cotton":45}},"weight":{"before":null,"after":null},"colour":{"before":null,"after":null},"shade":{"before":null,"after":null},"visible":{"before":null,"after":null},"uv":{"before":null,"after":null},"solar":{"before":null,"after":null},"streetReflectance":{"before":null,"after":null},"spectra":{"before":null,"after":null},"transmittanceWithin":{"before":null,"after":null},"thickness":{"before":null,"after":0.4},"shrinkage":{"before":null,"after":null},"needle":{"before":null,"after":null},"care":{"before":null,"after":null},"flame":{"before":null,"after":null},"hand":{"before":null,"after":null},"sources":{"before":null,"after":{"thickness":"measured"}},"price":{"before":null,"after":"58.50/yd"},"supplier":{"before":null,"after":""},"notes":{"before":null,"after":""},"drafts":{"before":null,"after":{}}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (7, '2026-11-25T12:00:07.000Z', 'id-00002', 'id-00001', 'room', 'id-00004', 'edited', '{"privacy":{"before":null,"after":"night"},"budget":{"before":null,"after":"careful"}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (8, '2026-11-25T12:00:08.000Z', 'id-00002', 'id-00001', 'treatment', 'id-00006', 'edited', '{"decision":{"before":null,"after":"better"}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (9, '2026-11-25T12:00:09.000Z', NULL, NULL, 'remnant', 'id-00009', 'added', '{"projectId":{"before":null,"after":null},"cloth":{"before":null,"after":"reed-linen"},"name":{"before":null,"after":"End of the hall"},"length":{"before":null,"after":731520},"width":{"before":null,"after":null},"dyeLot":{"before":null,"after":"A7"},"startsAt":{"before":null,"after":null},"notes":{"before":null,"after":""},"drafts":{"before":null,"after":{}}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (10, '2026-11-25T12:00:10.000Z', 'id-00002', 'id-00001', 'cutting', 'id-00010', 'added', '{"projectId":{"before":null,"after":"id-00002"},"cloth":{"before":null,"after":"larch-stripe"},"bolts":{"before":null,"after":[]},"flaws":{"before":null,"after":[{"on":"bolt 1","from":5852160,"to":6291072}]},"fixed":{"before":null,"after":[{"treatmentId":"id-00006","cut":2,"on":"bolt 1","at":0,"x":null}]}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (11, '2026-11-25T12:00:12.000Z', 'id-00002', 'id-00001', 'proposal', 'id-00011', 'made', '{"number":{"before":null,"after":"2026-001"},"revision":{"before":null,"after":1},"totals":{"before":null,"after":{"good":174829,"better":197509,"best":197369}}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (12, '2026-11-25T12:00:13.000Z', 'id-00002', 'id-00001', 'proposal', 'id-00011', 'written', '{"file":{"before":null,"after":"/home/ada/papers/Ada Fenn/2026-001.pdf"}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (13, '2026-11-25T12:00:14.000Z', 'id-00002', 'id-00001', 'mail', 'id-00012', 'written', '{"to":{"before":null,"after":"ada@example.com"},"subject":{"before":null,"after":"Your proposal"}}');
INSERT INTO history ("id", "at", "project_id", "client_id", "entity", "entity_id", "verb", "changes") VALUES (14, '2026-11-25T12:00:16.000Z', 'id-00002', 'id-00001', 'proposal', 'id-00011', 'edited', '{"state":{"before":"made","after":"sent"}}');
INSERT INTO remnants ("id", "project_id", "cloth", "name", "length", "width", "dye_lot", "starts_at", "notes", "drafts", "created_at", "updated_at", "removed_at") VALUES ('id-00009', NULL, 'reed-linen', 'End of the hall', 731520, NULL, 'A7', NULL, '', '{}', '2026-11-25T12:00:09.000Z', '2026-11-25T12:00:09.000Z', NULL);
INSERT INTO cuttings ("id", "project_id", "cloth", "bolts", "flaws", "fixed", "created_at", "updated_at", "removed_at") VALUES ('id-00010', 'id-00002', 'larch-stripe', '[]', '[{"on":"bolt 1","from":5852160,"to":6291072}]', '[{"treatmentId":"id-00006","cut":2,"on":"bolt 1","at":0,"x":null}]', '2026-11-25T12:00:10.000Z', '2026-11-25T12:00:10.000Z', NULL);
CREATE TRIGGER clients_keep_sample BEFORE UPDATE OF sample ON clients WHEN OLD.sample IS NOT NEW.sample
BEGIN SELECT RAISE(ABORT, 'a client cannot become or cease to be a sample'); END;
CREATE TRIGGER proposals_true_sample BEFORE INSERT ON proposals
WHEN NEW.sample IS NOT (
  SELECT clients.sample FROM projects JOIN clients ON clients.id = projects.client_id WHERE projects.id = NEW.project_id
)
BEGIN SELECT RAISE(ABORT, 'a proposal is a sample only when its client is one'); END;
CREATE TRIGGER proposals_frozen BEFORE UPDATE OF
  id, project_id, number, year, ordinal, revision, date, valid_until, created_at, program_version, currency, locale,
  total_good, total_better, total_best, pages, sample
ON proposals
BEGIN SELECT RAISE(ABORT, 'a proposal is frozen: only its state may change'); END;
CREATE TRIGGER proposals_stay BEFORE DELETE ON proposals WHEN OLD.sample = 0
BEGIN SELECT RAISE(ABORT, 'a proposal is never deleted'); END;
CREATE TRIGGER proposal_files_frozen BEFORE UPDATE ON proposal_files
BEGIN SELECT RAISE(ABORT, 'the files of a proposal are frozen'); END;
CREATE TRIGGER proposal_files_stay BEFORE DELETE ON proposal_files
WHEN (SELECT sample FROM proposals WHERE id = OLD.proposal_id) IS NOT 1
BEGIN SELECT RAISE(ABORT, 'the files of a proposal are never deleted'); END;
CREATE TRIGGER history_frozen BEFORE UPDATE ON history
BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END;
CREATE TRIGGER history_stays BEFORE DELETE ON history
BEGIN SELECT RAISE(ABORT, 'history is only ever added to'); END;
