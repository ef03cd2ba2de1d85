package leadline.summary;

import java.time.Instant;
import java.util.List;
import leadline.problem.Problem;

/** What each vessel is asked: one row for each contradiction that nothing known settles. */
public final class VesselQueries implements VesselTable {

  public static final TableColumn<String> VESSEL = TableColumn.key("vessel", "the vessel asked");
  public static final TableColumn<String> QUERY =
      TableColumn.key(
          "query", "the question's identifier: the same as long as the question is open");
  public static final TableColumn<String> KIND =
      TableColumn.text("kind", "the kind of contradiction, such as broken-and-kept");
  public static final TableColumn<String> RECORD =
      TableColumn.text("record", "the record in question, as the ship names it");
  public static final TableColumn<String> OVERHAUL =
      TableColumn.remark("overhaul", "the overhaul, where the record is one or a finding of one");
  public static final TableColumn<String> MACHINE =
      TableColumn.remark("machine", "the machine, where the record names one");
  public static final TableColumn<String> COMPONENT =
      TableColumn.remark("component", "the component, where the record names one");
  public static final TableColumn<String> PART =
      TableColumn.remark("part", "the part, where the record names one");
  public static final TableColumn<String> QUESTION =
      TableColumn.text("question", "the question in one sentence");
  public static final TableColumn<String> EVIDENCE =
      TableColumn.text(
          "evidence", "what the records say and what was made of it; export files and lines");
  public static final TableColumn<String> SETTLED_BY =
      TableColumn.text("settled_by", "what the ship does to settle it");
  public static final TableColumn<Instant> FIRST_ASKED =
      TableColumn.moment(
          "first_asked",
          "when the batch with the latest of the records in contradiction was committed, or what is"
              + " missing became due");
  public static final TableColumn<Long> AGE_DAYS =
      TableColumn.count("age_days", "whole days from first_asked to known_at");

  public static final TableSpec SPEC =
      TableSpec.of(
          "vessel_queries",
          "What each vessel is asked: every contradiction in its records, until records settle it.",
          List.of(
              SharedColumns.MONTH,
              SharedColumns.KNOWN_AT,
              VESSEL,
              QUERY,
              KIND,
              RECORD,
              OVERHAUL,
              MACHINE,
              COMPONENT,
              PART,
              QUESTION,
              EVIDENCE,
              SETTLED_BY,
              FIRST_ASKED,
              AGE_DAYS));

  @Override
  public TableSpec spec() {
    return SPEC;
  }

  /** The oldest first. */
  @Override
  public List<TableRow> rows(VesselAccount vessel, Edition edition) {
    QuerySubjects subjects = new QuerySubjects(vessel.records());
    return OpenQuery.of(vessel).stream().map(query -> row(query, subjects, edition)).toList();
  }

  private static TableRow row(OpenQuery query, QuerySubjects subjects, Edition edition) {
    Problem problem = query.problem();
    QuerySubjects.Subject subject = subjects.of(problem.origin());
    return edition
        .row(SPEC)
        .with(VESSEL, problem.vessel())
        .with(QUERY, problem.query())
        .with(KIND, problem.kind())
        .with(RECORD, problem.record())
        .with(OVERHAUL, subjects.overhaul(problem))
        .with(MACHINE, subject.machine())
        .with(COMPONENT, subject.component().or(problem::componentUnnamed))
        .with(PART, subject.part())
        .with(QUESTION, problem.question())
        .with(EVIDENCE, query.evidence())
        .with(SETTLED_BY, problem.request())
        .with(FIRST_ASKED, query.firstAsked())
        .with(AGE_DAYS, query.ageDays(edition.knownAt()))
        .build();
  }
}
