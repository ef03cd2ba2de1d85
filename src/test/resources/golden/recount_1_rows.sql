-- The golden exports as their ships wrote them, cut into cells, and the rows that hold together.
-- Needs the variable exports: the folder that holds the inboxes.
SET TimeZone = 'UTC';

-- Word lists written down here a second time, from the trade's tables and not from the catalogue:
-- a slip in the catalogue must show as a difference.
CREATE TABLE parts (component VARCHAR, part VARCHAR, shape VARCHAR, routine BOOLEAN);
INSERT INTO parts
SELECT component, unnest(names), shape, routine
FROM (VALUES
  ('fuel-injector', 'fit', false, ['nozzle', 'spindle-guide', 'cutoff-slide', 'thrust-piece', 'foot', 'nrv-seat', 'shims', 'head-bore']),
  ('fuel-injector', 'fit', true, ['o-rings']),
  ('fuel-injector', 'spring', false, ['main-spring', 'nrv-spring']),
  ('exhaust-valve', 'fit', false, ['spindle', 'seat', 'guide-bush', 'air-piston-seal']),
  ('exhaust-valve', 'spring', false, ['safety-valve-spring']),
  ('starting-air-valve', 'fit', false, ['spindle-seat', 'piston']),
  ('starting-air-valve', 'spring', false, ['valve-spring'])
) AS listed (component, shape, routine, names);

CREATE TABLE found_words (word VARCHAR, means VARCHAR);
INSERT INTO found_words VALUES
  ('sound', 'working'), ('missing', 'a question'),
  ('worn', 'beyond limit'), ('scored', 'beyond limit'), ('corroded', 'beyond limit'),
  ('eroded', 'beyond limit'), ('deformed', 'beyond limit'),
  ('broken', 'failed'), ('cracked', 'failed'),
  -- a spring cannot leak, stick or be blocked
  ('stuck', 'failed unless a spring'), ('leaking', 'failed unless a spring'), ('blocked', 'failed unless a spring');

-- Inboxes are ingested in the order of their names. A file whose bytes were ingested before is
-- not read again, so its rows are not even duplicates.
CREATE TABLE files AS
SELECT
  parse_filename(parse_dirpath(filename)) AS inbox,
  parse_filename(filename) AS file,
  regexp_extract(parse_filename(filename), '^[a-z]+') AS kind,
  sha256(content) AS digest,
  content
FROM read_text(getvariable('exports') || '/*/*.csv')
WHERE kind IN ('machines', 'hours', 'overhauls', 'findings')
QUALIFY row_number() OVER (PARTITION BY digest ORDER BY inbox, file) = 1;

-- Lines are cut here and not by read_csv, which refuses a whole file for one quote left open.
-- No cell of the golden fleet holds a line break, so a line with an odd number of quotes is a
-- line whose quote never closes, and the next one is a row of its own.
CREATE TABLE lines AS
SELECT inbox, file, kind, digest, line, rtrim(text, chr(13)) AS text
FROM (
  SELECT
    inbox, file, kind, digest,
    unnest(string_split(ltrim(content, chr(65279)), chr(10))) AS text,
    generate_subscripts(string_split(content, chr(10)), 1) AS line
  FROM files
)
WHERE trim(rtrim(text, chr(13))) <> '';

CREATE MACRO cells_of(text) AS list_transform(
  regexp_extract_all(text || ',', '("(?:[^"]|"")*"|[^,]*),', 1),
  lambda cell: nullif(trim(
    CASE WHEN starts_with(cell, '"') THEN replace(cell[2:-2], '""', '"') ELSE cell END), ''));

CREATE TABLE cut_rows AS
SELECT
  inbox, file, kind, digest, line,
  (length(text) - length(replace(text, '"', ''))) % 2 = 0 AS quotes_close,
  header, cells_of(text) AS cells
FROM lines
JOIN (SELECT inbox, file, cells_of(text) AS header FROM lines WHERE line = 1) USING (inbox, file)
WHERE line > 1;

CREATE TABLE raw_rows AS
SELECT
  inbox, file, kind, digest, line,
  CASE WHEN quotes_close AND len(cells) = len(header)
    THEN map(header, cells) ELSE map([]::VARCHAR[], []::VARCHAR[]) END AS cell,
  quotes_close AND len(cells) = len(header) AS whole
FROM cut_rows;

-- A day without a time is over at 24:00 UTC of that day. The fleet is ingested after
-- 20 January 2025, so a later day than that month's end has not come yet.
CREATE MACRO is_empty_or_past_day(text) AS
  text IS NULL OR coalesce(regexp_matches(text, '^\d{4}-\d\d-\d\d$')
    AND try_cast(text AS DATE) <= DATE '2025-01-31', false);
CREATE MACRO end_of(text) AS (try_cast(text AS DATE) + INTERVAL 1 DAY)::TIMESTAMP;
CREATE MACRO start_of(text) AS try_cast(text AS DATE)::TIMESTAMP;
CREATE MACRO tenths(text) AS round(try_cast(text AS DECIMAL(18, 3)) * 10)::BIGINT;
CREATE MACRO is_empty_or_hours(text) AS text IS NULL OR coalesce(try_cast(text AS DECIMAL(18, 3)) >= 0, false);
CREATE MACRO is_empty_or_count(text) AS text IS NULL OR coalesce(try_cast(text AS INTEGER) >= 0, false);
CREATE MACRO is_empty_or_among(text, words) AS text IS NULL OR list_contains(words, text);

CREATE TABLE machine_rows AS
SELECT *, vessel IS NOT NULL AND machine IS NOT NULL AND kind_of_machine IS NOT NULL
  AND model IS NOT NULL AND whole AS well_formed
FROM (
  SELECT
    inbox, file, kind, digest, line, whole,
    cell['vessel'] AS vessel, cell['vessel_name'] AS vessel_name, cell['machine'] AS machine,
    cell['kind'] AS kind_of_machine, cell['model'] AS model,
    cell['cylinders']::INTEGER AS cylinders, cell['places_per_cylinder']::INTEGER AS places_per_cylinder,
    cell['counter_digits']::INTEGER AS counter_digits,
    cell['in_service_on'] AS in_service_on, start_of(cell['records_from']) AS records_from
  FROM raw_rows WHERE kind = 'machines'
);

CREATE TABLE reading_rows AS
SELECT
  inbox, file, kind, digest, line,
  cell['vessel'] AS vessel, cell['machine'] AS machine, end_of(cell['read_at']) AS read_at,
  tenths(cell['hours']) AS value, cell['kind'] AS kind_of_reading, cell['remark'] AS remark,
  whole AND vessel IS NOT NULL AND machine IS NOT NULL
    AND cell['read_at'] IS NOT NULL AND is_empty_or_past_day(cell['read_at'])
    AND cell['hours'] IS NOT NULL AND is_empty_or_hours(cell['hours'])
    AND coalesce(kind_of_reading IN ('counter', 'total', 'replaced'), false) AS well_formed
FROM raw_rows WHERE kind = 'hours';

CREATE TABLE overhaul_rows AS
SELECT
  inbox, file, kind, digest, line,
  cell['vessel'] AS vessel, cell['overhaul'] AS overhaul, cell['machine'] AS machine,
  cell['component'] AS component, try_cast(cell['unit'] AS INTEGER) AS unit, try_cast(cell['place'] AS INTEGER) AS place,
  cell['removed_serial'] AS removed_serial, cell['fitted_serial'] AS fitted_serial,
  end_of(cell['done_on']) AS done_at, end_of(cell['removed_on']) AS removed_at, end_of(cell['fitted_on']) AS fitted_at,
  tenths(cell['machine_hours']) AS machine_hours, cell['reason'] AS reason,
  try_cast(cell['opening_pressure_bar'] AS DOUBLE) AS opening_pressure_bar, cell['test_result'] AS test_result,
  try_cast(cell['lap_count'] AS INTEGER) AS lap_count, cell['remark'] AS remark,
  cell['status'] AS status, end_of(cell['revised_at']) AS revised_at,
  whole AND vessel IS NOT NULL AND overhaul IS NOT NULL AND machine IS NOT NULL
    AND coalesce(component IN (SELECT parts.component FROM parts), false)
    AND cell['done_on'] IS NOT NULL AND is_empty_or_past_day(cell['done_on'])
    AND is_empty_or_past_day(cell['removed_on']) AND is_empty_or_past_day(cell['fitted_on'])
    AND is_empty_or_count(cell['unit']) AND is_empty_or_count(cell['place'])
    AND is_empty_or_hours(cell['machine_hours'])
    AND coalesce(reason IN ('planned', 'condition', 'breakdown', 'test-only'), false)
    AND is_empty_or_hours(cell['opening_pressure_bar']) AND is_empty_or_count(cell['lap_count'])
    AND is_empty_or_among(test_result, ['passed', 'failed'])
    AND is_empty_or_among(status, ['cancelled']) AND is_empty_or_past_day(cell['revised_at']) AS well_formed
FROM raw_rows WHERE kind = 'overhauls';

CREATE TABLE finding_rows AS
SELECT
  inbox, file, kind, digest, line,
  cell['vessel'] AS vessel, cell['overhaul'] AS overhaul, cell['part'] AS part,
  coalesce(try_cast(cell['mode_no'] AS INTEGER), 1) AS mode_no,
  cell['opened'] AS opened, cell['found'] AS found, cell['action'] AS action, cell['revealed'] AS revealed,
  tenths(cell['hours_since_new']) AS hours_since_new,
  try_cast(cell['n_fitted'] AS INTEGER) AS n_fitted, try_cast(cell['n_failed'] AS INTEGER) AS n_failed,
  cell['part_number'] AS part_number, cell['remark'] AS remark,
  cell['status'] AS status, end_of(cell['revised_at']) AS revised_at,
  whole AND vessel IS NOT NULL AND overhaul IS NOT NULL
    AND coalesce(part IN (SELECT parts.part FROM parts), false) AND is_empty_or_count(cell['mode_no'])
    AND is_empty_or_among(opened, ['yes', 'no'])
    AND (found IS NULL OR found IN (SELECT word FROM found_words))
    AND is_empty_or_among(action, ['none', 'cleaned', 'lapped', 'adjusted', 'renewed'])
    AND is_empty_or_among(revealed, ['at-opening', 'in-service'])
    AND is_empty_or_hours(cell['hours_since_new'])
    AND is_empty_or_count(cell['n_fitted']) AND is_empty_or_count(cell['n_failed'])
    AND is_empty_or_among(status, ['cancelled']) AND is_empty_or_past_day(cell['revised_at']) AS well_formed
FROM raw_rows WHERE kind = 'findings';

CREATE VIEW recounted_files AS
SELECT inbox, file AS name, digest, count(*) AS read, count(*) FILTER (well_formed) AS stored,
  count(*) FILTER (NOT well_formed) AS refused
FROM (
  SELECT inbox, file, digest, well_formed FROM machine_rows
  UNION ALL SELECT inbox, file, digest, well_formed FROM reading_rows
  UNION ALL SELECT inbox, file, digest, well_formed FROM overhaul_rows
  UNION ALL SELECT inbox, file, digest, well_formed FROM finding_rows
)
GROUP BY ALL;
