-- Which of the rows of one record is in force.

-- Two rows say the same when all their values are the same, however they were written (93350 and
-- 93350.0, another order of columns), so values are compared after they were read.
CREATE TABLE stored_rows AS
SELECT 'machines' AS kind, inbox, digest, line, to_json([vessel, machine]) AS key,
  to_json({a: vessel_name, b: kind_of_machine, c: model, d: cylinders, e: places_per_cylinder,
    f: counter_digits, g: in_service_on, h: records_from}) AS content,
  NULL::TIMESTAMP AS revised_at, NULL::VARCHAR AS status
FROM machine_rows WHERE well_formed
UNION ALL
SELECT 'hours', inbox, digest, line, to_json([vessel, machine, read_at::VARCHAR, kind_of_reading]),
  to_json({a: value, b: remark}), NULL, NULL
FROM reading_rows WHERE well_formed
UNION ALL
SELECT 'overhauls', inbox, digest, line, to_json([vessel, overhaul]),
  to_json({a: machine, b: component, c: unit, d: place, e: removed_serial, f: fitted_serial,
    g: done_at, h: removed_at, i: fitted_at, j: machine_hours, k: reason, l: opening_pressure_bar,
    m: test_result, n: lap_count, o: remark, p: status, q: revised_at}),
  revised_at, status
FROM overhaul_rows WHERE well_formed
UNION ALL
SELECT 'findings', inbox, digest, line, to_json([vessel, overhaul, part, mode_no::VARCHAR]),
  to_json({a: opened, b: found, c: action, d: revealed, e: hours_since_new, f: n_fitted,
    g: n_failed, h: part_number, i: remark, j: status, k: revised_at}),
  revised_at, status
FROM finding_rows WHERE well_formed;

-- A version is dated by its first arrival: sent again in an old export it must not come back into
-- force over the correction that replaced it.
CREATE TABLE versions AS
SELECT *,
  count(*) OVER (PARTITION BY kind, key, content) AS times_sent,
  row_number() OVER (PARTITION BY kind, key, content ORDER BY inbox, digest, line) AS sending
FROM stored_rows
QUALIFY sending = 1;

-- In force is the version revised last, one without a date of revision coming before any with
-- one; where that does not decide, the one that arrived last.
CREATE TABLE ranked_versions AS
SELECT *, row_number() OVER (
    PARTITION BY kind, key ORDER BY revised_at DESC NULLS LAST, inbox DESC, digest DESC, line DESC) AS rank
FROM versions;

CREATE VIEW recounted_census AS
SELECT kind,
  count(*) FILTER (rank = 1 AND status IS NULL) AS current,
  sum(times_sent - 1)::BIGINT AS duplicate,
  count(*) FILTER (rank > 1) AS superseded,
  count(*) FILTER (rank = 1 AND status = 'cancelled') AS withdrawn
FROM ranked_versions
GROUP BY kind;

-- A record whose version in force is a cancellation does not exist.
CREATE VIEW in_force AS
SELECT kind, inbox, digest, line FROM ranked_versions WHERE rank = 1 AND status IS NULL;

CREATE TABLE machines AS FROM machine_rows SEMI JOIN in_force USING (kind, inbox, digest, line) WHERE well_formed;
CREATE TABLE readings AS FROM reading_rows SEMI JOIN in_force USING (kind, inbox, digest, line) WHERE well_formed;
CREATE TABLE overhauls AS FROM overhaul_rows SEMI JOIN in_force USING (kind, inbox, digest, line) WHERE well_formed;
CREATE TABLE findings AS FROM finding_rows SEMI JOIN in_force USING (kind, inbox, digest, line) WHERE well_formed;
