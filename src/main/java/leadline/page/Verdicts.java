package leadline.page;

import leadline.fleet.Written;
import leadline.publish.VerdictInWords;
import leadline.summary.EvidenceColumns;
import leadline.summary.TableRow;
import leadline.summary.Verdict;

/** A row's verdict for people. */
final class Verdicts {

  private Verdicts() {}

  static String of(TableRow row) {
    String word = row.need(EvidenceColumns.VERDICT);
    String meaning =
        Written.read(Verdict.class, word)
            .map(VerdictInWords::of)
            .orElseThrow(() -> new IllegalStateException("no verdict: " + word));
    return meaning.isEmpty() ? word : word + ": " + meaning;
  }
}
