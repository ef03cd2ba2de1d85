package leadline.job;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.UUID;

/** Names for batches and runs, never given twice. */
final class Identifiers {

  private static final DateTimeFormatter SECONDS =
      DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private Identifiers() {}

  static String next(Clock clock) {
    return SECONDS.format(Instant.now(clock)) + "-" + UUID.randomUUID().toString().substring(0, 8);
  }
}
