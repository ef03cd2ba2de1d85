package leadline.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import leadline.quantity.ReportMonth;

/**
 * What the texts of a job file mean; a text that means nothing is an error of its setting.
 *
 * @param file the job file, to whose folder paths are relative
 * @param now the moment of reading
 */
record SettingMeanings(Path file, Instant now) {

  Optional<Path> path(Setting setting) {
    return setting.text().flatMap(text -> path(text, setting));
  }

  Optional<ReportMonth> month(Setting setting) {
    ReportMonth lastWhole = ReportMonth.lastWholeBefore(now);
    Optional<ReportMonth> month =
        setting
            .text()
            .map(text -> text.equals("last-whole-month") ? lastWhole : ReportMonth.parse(text));
    month
        .filter(given -> given.compareTo(lastWhole) > 0)
        .ifPresent(
            given ->
                setting.error(
                    "the month `%s` has not ended; allowed are months up to %s"
                        .formatted(given, lastWhole)));
    return month;
  }

  Optional<Instant> moment(Setting setting) {
    Optional<Instant> moment = setting.text().flatMap(text -> moment(text, setting));
    moment
        .filter(given -> given.isAfter(now))
        .ifPresent(
            given ->
                setting.error(
                    "the moment `%s` has not come; allowed are moments up to now, %s"
                        .formatted(given, now)));
    return moment;
  }

  private Optional<Path> path(String text, Setting setting) {
    try {
      return Optional.of(file.toAbsolutePath().resolveSibling(text).normalize());
    } catch (InvalidPathException e) {
      setting.error("this is no path of this machine: " + e.getReason());
      return Optional.empty();
    }
  }

  private static Optional<Instant> moment(String text, Setting setting) {
    try {
      return Optional.of(OffsetDateTime.parse(text).toInstant());
    } catch (DateTimeParseException e) {
      setting.error("`%s` is no moment of the calendar".formatted(text));
      return Optional.empty();
    }
  }
}
