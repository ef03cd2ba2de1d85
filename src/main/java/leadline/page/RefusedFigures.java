package leadline.page;

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
                    + " condition: %s. Decide which of them every overhaul is to open."),
            point(
                parts(tables, catalogue, Verdict.INSUFFICIENT),
                "Never opened on record: %s. Decide which of them are to be opened."))
        .flatMap(Optional::stream)
        .toList();
  }

  private static String parts(Tables tables, Catalogue catalogue, Verdict verdict) {
    return catalogue.components().stream()
        .flatMap(
            component -> Subject.ofFleet(tables, component.name()).rows(PartFindings.SPEC).stream())
        .filter(row -> row.need(EvidenceColumns.VERDICT).equals(verdict.word()))
        .map(RefusedFigures::name)
        .collect(Collectors.joining("; "));
  }

  private static String name(TableRow row) {
    return Named.words(row.need(SharedColumns.COMPONENT))
        + ", "
        + Named.words(row.need(SharedColumns.PART))
        + " ("
        + Numbers.count(row.need(PartFindings.OPENED))
        + " of "
        + Numbers.count(row.need(PartFindings.OVERHAULED))
        + " overhauls)";
  }

  private static Optional<Block.Point> point(String parts, String sentence) {
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Point(sentence.formatted(parts), "#findings-table", "Findings by part"));
  }
}
