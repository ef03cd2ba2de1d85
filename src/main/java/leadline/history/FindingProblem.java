package leadline.history;

import java.util.Set;
import java.util.stream.Collectors;
import leadline.fleet.FoundWord;
import leadline.fleet.OverhaulId;
import leadline.fleet.Written;
import leadline.origin.Origin;
import leadline.problem.Problem;
import leadline.quantity.RunningHours;

/** A contradiction in, or a question about, the findings of a part at an overhaul. */
public sealed interface FindingProblem extends Problem {

  OverhaulId overhaul();

  String part();

  @Override
  default String vessel() {
    return overhaul().vessel();
  }

  @Override
  default String record() {
    return overhaul().overhaul() + " " + part();
  }

  /** A finding of an overhaul that is not on record. It counts nowhere. */
  record FindingWithoutOverhaul(OverhaulId overhaul, String part, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "Which overhaul does the finding of the %s belong to?".formatted(part);
    }

    @Override
    public String evidence() {
      return "The finding of the %s belongs to overhaul %s, which was not received."
          .formatted(part, overhaul.overhaul());
    }

    @Override
    public String request() {
      return "Send that row.";
    }
  }

  /** A finding of a part that the overhauled component does not have. It counts nowhere. */
  record PartNotOfComponent(OverhaulId overhaul, String part, String component, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "Which part is meant?";
    }

    @Override
    public String evidence() {
      return "A %s has no %s.".formatted(component, part);
    }

    @Override
    public String request() {
      return "Send the right part, or the right component of the overhaul.";
    }
  }

  /** A condition is stated of a part that is not said to have been opened. */
  record FoundWithoutOpened(OverhaulId overhaul, String part, Set<FoundWord> found, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "Was part %s opened?".formatted(part);
    }

    @Override
    public String evidence() {
      return ("Part %s is said to be %s, but not to have been opened, so that it counts as not"
              + " inspected.")
          .formatted(part, words(found));
    }

    @Override
    public String request() {
      return "Say whether it was opened.";
    }
  }

  /** A part found missing. */
  record PartMissing(OverhaulId overhaul, String part, Origin origin) implements FindingProblem {
    @Override
    public String question() {
      return "Was part %s left out, or did it break and get lost?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Part %s was found missing, which counts neither as failed nor as working."
          .formatted(part);
    }

    @Override
    public String request() {
      return "Say whether it was left out when last assembled, or broke and was lost.";
    }
  }

  /** A part found broken or cracked, which no work on it mends, and not renewed. */
  record BrokenAndKept(OverhaulId overhaul, String part, Set<FoundWord> found, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "Was part %s left in, or was a new one fitted?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Part %s was found %s, and no renewal is on record.".formatted(part, words(found));
    }

    @Override
    public String request() {
      return "Send the finding again with the action renewed or, if it was not broken, with what was"
          + " found.";
    }
  }

  /** A part whose function was lost, on which nothing on record was done. */
  record FailedAndUntouched(OverhaulId overhaul, String part, Set<FoundWord> found, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "What was done to part %s?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Part %s was found %s, and nothing on record mended it.".formatted(part, words(found));
    }

    @Override
    public String request() {
      return "Send the finding again with what was done: cleaned, lapped, adjusted or renewed.";
    }
  }

  /** The stated age of a part against the age rebuilt from its records, which is used. */
  record AgesDisagree(
      OverhaulId overhaul, String part, RunningHours written, RunningHours rebuilt, Origin origin)
      implements FindingProblem {
    @Override
    public String question() {
      return "How old was part %s?".formatted(part);
    }

    @Override
    public String evidence() {
      return "Part %s is said to be %s h old, while its records give %s h, which are used."
          .formatted(part, written, rebuilt);
    }

    @Override
    public String request() {
      return "Say whether a renewal is missing from the records, or send the right age.";
    }
  }

  private static String words(Set<FoundWord> found) {
    return found.stream().sorted().map(Written::word).collect(Collectors.joining(" and "));
  }
}
