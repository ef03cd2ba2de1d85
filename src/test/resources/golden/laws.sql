-- What must hold for every row of the published tables, whatever the records. Each published
-- table is a view of its name. A law whose condition is unknown for a row does not hold for it.
CREATE TABLE laws (law VARCHAR, row VARCHAR, holds BOOLEAN);

CREATE MACRO same(a, b) AS abs(a - b) <= 1e-12 * greatest(abs(a), abs(b));

-- How often components break down

INSERT INTO laws
SELECT 'an overhaul has one reason: breakdowns and condition-based removals together are at most all overhauls',
  r::VARCHAR, (sum(events) OVER (PARTITION BY month, "window", level, stratum, component)) <= eligible
FROM component_rates AS r;

INSERT INTO laws
SELECT 'a rate is events per million hours, and none without hours', r::VARCHAR,
  CASE WHEN exposure_h > 0 THEN same(rate_per_million_h, events * 1e6 / exposure_h) ELSE rate_per_million_h IS NULL END
FROM component_rates AS r;

INSERT INTO laws
SELECT 'no event gives a lower limit of 0 and an upper one above 0', r::VARCHAR,
  rate_per_million_h_lo95 = 0 AND rate_per_million_h_hi95 > 0
FROM component_rates AS r WHERE events = 0 AND exposure_h > 0;

INSERT INTO laws
SELECT 'a vessel is one vessel, the fleet three', r::VARCHAR,
  vessels BETWEEN 0 AND CASE level WHEN 'vessel' THEN 1 ELSE 3 END
FROM component_rates AS r;

INSERT INTO laws
SELECT 'the verdict follows from hours and events', r::VARCHAR,
  verdict = CASE WHEN exposure_h = 0 THEN 'insufficient' WHEN events < 5 THEN 'too-few' ELSE 'ok' END
FROM component_rates AS r;

-- What was found of the parts

INSERT INTO laws
SELECT 'opened or unstated, a part is one of an overhaul', r::VARCHAR, opened + opened_unstated <= overhauled
FROM part_findings AS r;

INSERT INTO laws
SELECT 'failed and rejected exclude each other, and both were opened', r::VARCHAR, failed + rejected <= opened
FROM part_findings AS r;

INSERT INTO laws
SELECT 'what is rejected is renewed', r::VARCHAR, rejected <= renewed AND renewed <= overhauled
FROM part_findings AS r;

INSERT INTO laws
SELECT 'o-rings are never rejected', r::VARCHAR, rejected = 0 FROM part_findings AS r WHERE part = 'o-rings';

INSERT INTO laws
SELECT 'the share failed is of those opened, and none where none was', r::VARCHAR,
  CASE WHEN opened > 0 THEN same(failed_share, failed / opened) ELSE failed_share IS NULL END
FROM part_findings AS r;

INSERT INTO laws
SELECT 'the evidence is what was failed, opened and overhauled', r::VARCHAR,
  events = failed AND inspected = opened AND eligible = overhauled
FROM part_findings AS r;

INSERT INTO laws
SELECT 'the verdict never says more than the openings allow', r::VARCHAR,
  (verdict = 'insufficient') = (opened = 0) AND (verdict <> 'ok' OR failed >= 5) AND (verdict <> 'too-few' OR failed < 5)
FROM part_findings AS r;

INSERT INTO laws
SELECT 'every part of a component was overhauled as often as the component, in the same hours', p::VARCHAR,
  p.overhauled = c.eligible AND p.exposure_h = c.exposure_h AND p.inspected <= c.inspected
FROM part_findings AS p
LEFT JOIN component_rates AS c USING (month, "window", level, stratum, component);

-- How many springs were found broken

INSERT INTO laws
SELECT 'broken springs were opened, opened ones overhauled', r::VARCHAR, broken <= opened AND opened <= overhauled
FROM spring_breakage AS r;

INSERT INTO laws
SELECT 'the evidence is what was broken, opened and overhauled', r::VARCHAR,
  events = broken AND inspected = opened AND eligible = overhauled
FROM spring_breakage AS r;

INSERT INTO laws
SELECT 'the share broken lies between those that the unopened leave possible', r::VARCHAR,
  same(broken_share, broken / opened)
    AND share_if_unopened_sound <= broken_share AND broken_share <= share_if_unopened_broken
FROM spring_breakage AS r WHERE opened > 0;

INSERT INTO laws
SELECT 'without an opening no share broken, without an overhaul no share at all', r::VARCHAR,
  broken_share IS NULL AND (share_if_unopened_sound IS NULL) = (overhauled = 0)
    AND (share_if_unopened_broken IS NULL) = (overhauled = 0)
FROM spring_breakage AS r WHERE opened = 0;

INSERT INTO laws
SELECT 'a band is of 4,000 h, or all, or unknown', r::VARCHAR,
  hours_band IN ('all', 'unknown') OR coalesce(lower_h % 4000 = 0
    AND try_cast(split_part(hours_band, '-', 2) AS BIGINT) = lower_h + 4000, false)
FROM (SELECT hours_band, try_cast(split_part(hours_band, '-', 1) AS BIGINT) AS lower_h FROM spring_breakage) AS r;

INSERT INTO laws
SELECT 'hours are not laid to bands', r::VARCHAR, (exposure_h IS NULL) = (hours_band <> 'all')
FROM spring_breakage AS r;

INSERT INTO laws
SELECT 'the bands add up to all', r::VARCHAR,
  overhauled = coalesce(bands_overhauled, 0) AND opened = coalesce(bands_opened, 0) AND broken = coalesce(bands_broken, 0)
FROM spring_breakage AS r
LEFT JOIN (
  SELECT month, "window", level, stratum, component, part, sum(overhauled) AS bands_overhauled,
    sum(opened) AS bands_opened, sum(broken) AS bands_broken
  FROM spring_breakage WHERE hours_band <> 'all' GROUP BY ALL
) USING (month, "window", level, stratum, component, part)
WHERE hours_band = 'all';

INSERT INTO laws
SELECT 'a spring is a part: both tables count it alike', s::VARCHAR,
  s.overhauled = p.overhauled AND s.opened = p.opened AND s.broken = p.failed
    AND s.exposure_h = p.exposure_h AND s.verdict = p.verdict
FROM spring_breakage AS s
LEFT JOIN part_findings AS p USING (month, "window", level, stratum, component, part)
WHERE hours_band = 'all';

-- What parts were found like, by hours since new

INSERT INTO laws
SELECT 'found parts were opened, opened ones overhauled', r::VARCHAR, times_found <= opened AND opened <= overhauled
FROM findings_by_hours AS r;

INSERT INTO laws
SELECT 'the evidence is what was found, opened and overhauled, without hours', r::VARCHAR,
  events = times_found AND inspected = opened AND eligible = overhauled AND exposure_h IS NULL
FROM findings_by_hours AS r;

INSERT INTO laws
SELECT 'the share found so is of those opened, and lies within its limits', r::VARCHAR,
  CASE WHEN opened > 0
    THEN same(found_share, times_found / opened) AND found_share BETWEEN found_share_lo95 AND found_share_hi95
    ELSE found_share IS NULL END
FROM findings_by_hours AS r;

INSERT INTO laws
SELECT 'the bands of a condition add up to all', r::VARCHAR,
  overhauled = coalesce(bands_overhauled, 0) AND opened = coalesce(bands_opened, 0) AND times_found = coalesce(bands_found, 0)
FROM findings_by_hours AS r
LEFT JOIN (
  SELECT month, level, stratum, component, part, found, sum(overhauled) AS bands_overhauled,
    sum(opened) AS bands_opened, sum(times_found) AS bands_found
  FROM findings_by_hours WHERE hours_band <> 'all' GROUP BY ALL
) USING (month, level, stratum, component, part, found)
WHERE hours_band = 'all';

INSERT INTO laws
SELECT 'a word stands in every band, once it was found in any', r::VARCHAR,
  conditions = words_in_all AND (hours_band <> 'all' OR found = 'failed' OR times_found > 0)
FROM (
  SELECT *, count(*) OVER (PARTITION BY month, level, stratum, component, part, hours_band) AS conditions,
    count(*) FILTER (hours_band = 'all') OVER (PARTITION BY month, level, stratum, component, part) AS words_in_all
  FROM findings_by_hours
) AS r;

INSERT INTO laws
SELECT 'what is broken or cracked has failed', w::VARCHAR, w.times_found <= f.times_found
FROM findings_by_hours AS w
LEFT JOIN (FROM findings_by_hours WHERE found = 'failed') AS f
  USING (month, level, stratum, component, part, hours_band)
WHERE w.found IN ('broken', 'cracked');

INSERT INTO laws
SELECT 'a failed part is one in part_findings too', f::VARCHAR,
  f.overhauled = p.overhauled AND f.opened = p.opened AND f.times_found = p.failed AND f.verdict = p.verdict
FROM findings_by_hours AS f
LEFT JOIN part_findings AS p USING (month, "window", level, stratum, component, part)
WHERE hours_band = 'all' AND found = 'failed';

INSERT INTO laws
SELECT 'a spring is a part in every band: broken is failed', f::VARCHAR,
  f.overhauled = s.overhauled AND f.opened = s.opened AND f.times_found = s.broken
    AND f.found_share IS NOT DISTINCT FROM s.broken_share AND f.verdict = s.verdict
FROM findings_by_hours AS f
LEFT JOIN spring_breakage AS s USING (month, "window", level, stratum, component, part, hours_band)
WHERE found = 'failed' AND part LIKE '%spring';

-- How long components run between overhauls

INSERT INTO laws
SELECT 'an interval is completed by an overhaul', r::VARCHAR, events = completed AND completed <= eligible
FROM overhaul_intervals AS r;

-- In the golden fleet every engine has five cylinders with two injectors each.
INSERT INTO laws
SELECT 'an interval ends with each overhaul, and one runs at each position', i::VARCHAR,
  completed + running + start_unknown = i.eligible + vessels * CASE component WHEN 'fuel-injector' THEN 10 ELSE 5 END
FROM overhaul_intervals AS i
LEFT JOIN component_rates AS c USING (month, "window", level, stratum, component)
WHERE clock = 'position';

INSERT INTO laws
SELECT 'the naive mean needs a completed interval', r::VARCHAR, (naive_mean_h IS NULL) = (completed = 0)
FROM overhaul_intervals AS r;

INSERT INTO laws
SELECT 'the mean is restricted to one and a half policy intervals', r::VARCHAR,
  restricted_to_h = 1.5 * policy_interval_h AND coalesce(restricted_mean_h_hi95, restricted_mean_h, 0) <= restricted_to_h
FROM overhaul_intervals AS r;

INSERT INTO laws
SELECT 'an interval ends for one reason or goes beyond the policy interval', r::VARCHAR,
  abs(planned_share + condition_share + breakdown_share + beyond_interval_share - 1) < 1e-12
FROM overhaul_intervals AS r WHERE beyond_interval_share IS NOT NULL;

INSERT INTO laws
SELECT 'the shares are known together or not at all', r::VARCHAR,
  (planned_share IS NULL) = (beyond_interval_share IS NULL) AND (condition_share IS NULL) = (beyond_interval_share IS NULL)
    AND (breakdown_share IS NULL) = (beyond_interval_share IS NULL)
FROM overhaul_intervals AS r;

INSERT INTO laws
SELECT 'intervals are told since the start only', r::VARCHAR, "window" = 'since-start' FROM overhaul_intervals AS r;

INSERT INTO laws
SELECT 'intervals rest on the overhauls and hours of the component', i::VARCHAR,
  i.eligible = c.eligible AND i.inspected = c.inspected AND i.exposure_h = c.exposure_h
FROM overhaul_intervals AS i
LEFT JOIN component_rates AS c
  ON c.month = i.month AND c."window" = i."window" AND c.level = i.level AND c.stratum = i.stratum
    AND c.component = i.component AND c.endpoint = 'breakdown';

-- Across rows: the models and the vessels both add up to the fleet, and a longer window holds
-- at least what a shorter one does. Counts and hours of all tables, one below the other.

CREATE TABLE additive AS
SELECT 'component_rates' AS source, "window", level, stratum, component, endpoint AS about, name, amount
FROM component_rates UNPIVOT (amount FOR name IN (events, eligible, inspected, exposure_h, vessels))
UNION ALL
SELECT 'part_findings', "window", level, stratum, component, part, name, amount
FROM part_findings UNPIVOT (amount FOR name IN
  (overhauled, opened, opened_unstated, failed, rejected, renewed, exposure_h))
UNION ALL
SELECT 'spring_breakage', "window", level, stratum, component, part || ' ' || hours_band, name, amount
FROM spring_breakage UNPIVOT (amount FOR name IN (overhauled, opened, broken, exposure_h))
UNION ALL
SELECT 'overhaul_intervals', "window", level, stratum, component, clock, name, amount
FROM overhaul_intervals UNPIVOT (amount FOR name IN (completed, running, start_unknown, exposure_h));

INSERT INTO laws
SELECT 'models and vessels both add up to the fleet', r::VARCHAR, fleet = models AND fleet = vessels_together
FROM (
  SELECT source, "window", component, about, name,
    round(sum(amount) FILTER (level = 'fleet'), 1) AS fleet,
    round(sum(amount) FILTER (level = 'model'), 1) AS models,
    round(sum(amount) FILTER (level = 'vessel'), 1) AS vessels_together
  FROM additive GROUP BY ALL
) AS r;

INSERT INTO laws
SELECT 'a longer window holds at least what a shorter one does', r::VARCHAR,
  coalesce(since_start, 0) >= coalesce(twelve_months, 0) AND coalesce(twelve_months, 0) >= coalesce(month, 0)
FROM (
  SELECT source, level, stratum, component, about, name,
    sum(amount) FILTER ("window" = 'since-start') AS since_start,
    sum(amount) FILTER ("window" = '12-months') AS twelve_months,
    sum(amount) FILTER ("window" = 'month') AS month
  FROM additive WHERE source <> 'overhaul_intervals' GROUP BY ALL
) AS r;

-- What the exports brought

INSERT INTO laws
SELECT 'rows read are stored or refused', r::VARCHAR, rows_read = rows_stored + rows_refused FROM intake_log AS r;

INSERT INTO laws
SELECT 'rules are broken by refused rows, each of them by at most all and together by at least as many', r::VARCHAR,
  CASE WHEN rows_refused = 0 THEN rules_broken IS NULL
    ELSE list_max(counts) <= rows_refused AND list_sum(counts) >= rows_refused END
FROM (
  SELECT *, list_transform(regexp_extract_all(rules_broken, '[a-z-]+ ([0-9]+)', 1), n -> n::BIGINT) AS counts
  FROM intake_log
) AS r;

INSERT INTO laws
SELECT 'the log has every file of the manifest, and no other, with its digest and counts', coalesce(l::VARCHAR, m::VARCHAR),
  l.digest = m.digest AND l.rows_read = m.read AND l.rows_stored = m.stored AND l.rows_refused = m.refused
    AND l.committed_at = m.committed_at
FROM (FROM intake_log WHERE standing = 'counts') AS l
FULL JOIN manifest_inputs AS m ON m.batch = l.batch AND m.name = l.file;

INSERT INTO laws
SELECT 'what the log says was stored is what the census of the manifest counts', r::VARCHAR, stored = counted
FROM (
  SELECT (SELECT sum(rows_stored) FROM intake_log WHERE standing = 'counts') AS stored,
    (SELECT sum("current" + duplicate + superseded + withdrawn) FROM manifest_records) AS counted
) AS r;

INSERT INTO laws
SELECT 'a word that is not mapped stands in at least one row of at most as many vessels', r::VARCHAR,
  "rows" >= 1 AND vessels <= "rows" AND (rows > 1 OR (first_batch = last_batch AND first_file = last_file AND first_line = last_line))
FROM unmapped_words AS r;

INSERT INTO laws
SELECT 'a word that is not mapped stands where a file of the log broke a rule of words', u::VARCHAR,
  regexp_matches(f.rules_broken, 'unknown-(word|part|component)') AND regexp_matches(l.rules_broken, 'unknown-(word|part|component)')
FROM unmapped_words AS u
LEFT JOIN intake_log AS f ON f.batch = u.first_batch AND f.file = u.first_file
LEFT JOIN intake_log AS l ON l.batch = u.last_batch AND l.file = u.last_file;
