package leadline.page;

import static leadline.page.Tables.having;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadline.fleet.Catalogue;
import leadline.publish.Numbers;
import leadline.summary.EvidenceColumns;
import leadline.summary.PartFindings;
import leadline.summary.SharedColumns;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/** Parts of which the records carry no figure of the whole fleet. */
final class RefusedFigures implements Decision {

  @Override
  public String heading() {
    return "Parts not opened as a routine";
  }

  @Override
  public List<Block.Point> points(Tables tables, Catalogue catalogue) {
    return Stream.of(
            point(
                parts(tables, catalogue, Verdict.SELECTIVE_OPENING),
                "The share found failed speaks only of those opened, which may be chosen by their"
                    + " condition: %s. Decide %s."),
            point(
                parts(tables, catalogue, Verdict.INSUFFICIENT),
                "Never opened on record: %s. Decide %s."))
        .flatMap(Optional::stream)
        .toList();
  }

  /** Where nothing was overhauled there is nothing to decide. */
  private static List<TableRow> parts(Tables tables, Catalogue catalogue, Verdict verdict) {
    return catalogue.components().stream()
        .flatMap(
            component ->
                Subject.ofFleet(tables, component.name())
                    .rows(PartFindings.SPEC, having(EvidenceColumns.VERDICT, verdict.word()))
                    .stream())
        .filter(row -> row.need(PartFindings.OVERHAULED) > 0)
        .toList();
  }

  private static Optional<Block.Point> point(List<TableRow> parts, String sentence) {
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Point(
                sentence.formatted(
                    parts.stream()
                        .map(RefusedFigures::withCounts)
                        .collect(Collectors.joining("; ")),
                    parts.size() == 1
                        ? "whether every overhaul is to open it"
                        : "which of them every overhaul is to open"),
                parts.stream().map(RefusedFigures::link).toList()));
  }

  private static String withCounts(TableRow row) {
    return "%s (opened at %s of %s)"
        .formatted(
            name(row),
            Numbers.count(row.need(PartFindings.OPENED)),
            Named.counted(row.need(PartFindings.OVERHAULED), "overhaul"));
  }

  private static Page.Link link(TableRow row) {
    return new Page.Link(
        "#" + RowIds.part(row.need(SharedColumns.COMPONENT), row.need(SharedColumns.PART)),
        name(row));
  }

  private static String name(TableRow row) {
    return Named.words(row.need(SharedColumns.COMPONENT))
        + ", "
        + Named.words(row.need(SharedColumns.PART));
  }
}
