package leadline.cli;

import java.nio.file.Path;
import java.util.Locale;
import leadline.lake.Damage;
import leadline.lake.Disagreement;
import leadline.lake.Lake;
import leadline.lake.LakeException;
import leadline.lake.Recount;

/** Counts a lake again, and says where it contradicts itself. */
final class LakeCheck {

  private final Console console;

  LakeCheck(Console console) {
    this.console = console;
  }

  /**
   * Whether every count agrees.
   *
   * @throws LakeException where there is no lake, or a file of it cannot be used
   */
  boolean agrees(Path folder) {
    try (Lake lake = Lake.open(folder)) {
      Recount recount = Recount.of(lake);
      recount.disagreements().stream().map(Disagreement::sentence).forEach(console.out()::println);
      console
          .out()
          .printf(
              Locale.ROOT,
              "%s: batches %,d, files %,d, runs %,d, counts that differ %,d%n",
              folder,
              recount.batches().size(),
              recount.batches().stream().mapToLong(batch -> batch.files().size()).sum(),
              recount.runs().size(),
              recount.disagreements().size());
      return recount.disagreements().isEmpty();
    } catch (RuntimeException fault) {
      throw Damage.in(folder.toAbsolutePath(), fault)
          .map(RuntimeException.class::cast)
          .orElse(fault);
    }
  }
}
