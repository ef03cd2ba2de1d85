-- Running hours of each registered machine, in whole tenths of an hour so that nothing is rounded
-- twice, and from when to when the machine is observed.

-- A ship changes the counter after reading the old one, so at one moment the new counter's first
-- reading comes last.
CREATE TABLE ordered_readings AS
SELECT vessel, machine, counter_digits, read_at, value, kind_of_reading,
  row_number() OVER (PARTITION BY vessel, machine ORDER BY read_at, kind_of_reading = 'replaced') AS n
FROM readings
SEMI JOIN machines USING (vessel, machine)
JOIN (SELECT vessel, machine, counter_digits FROM machines) USING (vessel, machine);

-- One reading after the other, because whether a reading is possible depends on the last one that
-- was: no machine runs backwards, nor more than 25 h a day (a ship's day when clocks are set back).
-- A fall that is a possible increment once the counter has passed its last digit is a roll-over.
-- A new counter's first reading adds nothing: what the old one ran since its last reading nobody
-- recorded. The first reading of all is where the series begins.
CREATE TABLE hour_series AS
WITH RECURSIVE
steps AS (
  SELECT vessel, machine, n, read_at, value AS meter, value AS hours, true AS trusted, read_at AS trusted_at
  FROM ordered_readings WHERE n = 1
  UNION ALL
  SELECT vessel, machine, n, read_at,
    CASE WHEN possible THEN next_meter ELSE meter END,
    CASE WHEN possible THEN hours + increment ELSE hours END,
    possible,
    CASE WHEN possible THEN read_at ELSE trusted_at END
  FROM (
    SELECT *, increment BETWEEN 0 AND most AS possible
    FROM (
      SELECT *,
        CASE kind_of_reading
          WHEN 'total' THEN next_meter
          WHEN 'replaced' THEN 0
          ELSE CASE
            WHEN next_meter < meter AND next_meter - meter + around <= most THEN next_meter - meter + around
            ELSE next_meter - meter END
        END AS increment
      FROM (
        SELECT steps.* EXCLUDE (n, read_at), later.n, later.read_at, later.kind_of_reading,
          later.value AS next_meter,
          10 * 10 ** later.counter_digits AS around,
          epoch(later.read_at - trusted_at) / 3600 * 10 * 25 / 24 AS most
        FROM steps
        JOIN ordered_readings AS later
          ON later.vessel = steps.vessel AND later.machine = steps.machine AND later.n = steps.n + 1
      )
    )
  )
)
SELECT vessel, machine, read_at, any_value(hours::BIGINT) AS hours
FROM steps WHERE trusted
GROUP BY vessel, machine, read_at;

-- The golden month ends with 2024-12-31. A window is open at its start and closed at its end.
CREATE TABLE windows AS
FROM (VALUES
  ('since-start', NULL::TIMESTAMP, TIMESTAMP '2025-01-01'),
  ('12-months', TIMESTAMP '2024-01-01', TIMESTAMP '2025-01-01'),
  ('month', TIMESTAMP '2024-12-01', TIMESTAMP '2025-01-01')
) AS listed ("window", opens, closes);

CREATE TABLE observed AS
SELECT "window", vessel, machine,
  greatest(opens, min(read_at), any_value(records_from)) AS starts,
  least(closes, max(read_at)) AS ends
FROM machines JOIN hour_series USING (vessel, machine) CROSS JOIN windows
GROUP BY "window", opens, closes, vessel, machine
HAVING starts < ends;

-- The moments at which hours are asked for: where windows begin and end, and every removal and
-- fitting, since a reading wrongly trusted may leave no trace at the windows' ends.
CREATE TABLE moments AS
SELECT vessel, machine, starts AS moment FROM observed
UNION SELECT vessel, machine, ends FROM observed
UNION SELECT vessel, machine, unnest([coalesce(removed_at, done_at), coalesce(fitted_at, done_at)]) FROM overhauls
UNION SELECT vessel, machine, unnest([TIMESTAMP '2024-01-01', TIMESTAMP '2024-12-01']) FROM machines;

-- A straight line between the trusted readings before and after, rounded half up to a tenth.
CREATE MACRO seconds(later, earlier) AS epoch(later - earlier)::HUGEINT;
CREATE TABLE hours_at AS
SELECT moments.vessel, moments.machine, moment,
  CASE WHEN before.read_at = after.read_at THEN before.hours
    ELSE before.hours
      + (2 * (after.hours - before.hours) * seconds(moment, before.read_at) + seconds(after.read_at, before.read_at))
        // (2 * seconds(after.read_at, before.read_at))
  END::BIGINT AS hours
FROM moments
ASOF JOIN hour_series AS before
  ON before.vessel = moments.vessel AND before.machine = moments.machine AND before.read_at <= moment
ASOF JOIN hour_series AS after
  ON after.vessel = moments.vessel AND after.machine = moments.machine AND after.read_at >= moment;

CREATE TABLE machine_hours_run AS
SELECT "window", vessel, machine, starts, ends, at_end.hours - at_start.hours AS hours
FROM observed
JOIN hours_at AS at_start USING (vessel, machine)
JOIN hours_at AS at_end USING (vessel, machine)
WHERE at_start.moment = starts AND at_end.moment = ends;

-- Every component of the fleet is one of a main engine, and every machine of the fleet is one.
CREATE TABLE positions AS
FROM (VALUES ('fuel-injector', 'place'), ('exhaust-valve', 'unit'), ('starting-air-valve', 'unit')) AS listed (component, per);

-- One machine a vessel, so the strata of a machine are its vessel, its model and the fleet.
CREATE TABLE members AS
SELECT 'fleet' AS level, 'all' AS stratum, vessel, machine FROM machines
UNION ALL SELECT 'model', model, vessel, machine FROM machines
UNION ALL SELECT 'vessel', vessel, vessel, machine FROM machines;

-- The hours are tenths.
CREATE VIEW recounted_exposure AS
SELECT "window", level, stratum, component,
  sum(hours * cylinders * CASE per WHEN 'place' THEN places_per_cylinder ELSE 1 END)::BIGINT / 10 AS exposure_h
FROM machine_hours_run
JOIN machines USING (vessel, machine)
JOIN members USING (vessel, machine)
CROSS JOIN positions
WHERE kind_of_machine = 'main-engine'
GROUP BY ALL;

CREATE VIEW recounted_exposure_since_start AS FROM recounted_exposure WHERE "window" = 'since-start';
