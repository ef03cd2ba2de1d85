package leadline.estimate;

import java.util.List;

/** An estimator that the user names by a word. */
interface Method {

  /** What becomes of a {@code group} column. */
  enum Groups {
    /** Each group has results of its own, its name and a dot before theirs. */
    APART,
    /** The method compares the groups. */
    COMPARED
  }

  String word();

  /** What its results' names begin with. */
  List<String> prints();

  /** The data that it reads: the columns of its file. */
  String reads();

  default Groups groups() {
    return Groups.APART;
  }

  /**
   * The results on these data.
   *
   * @throws UnusableData where a column is unknown or missing, a row impossible, or the data as a
   *     whole infeasible
   */
  EstimateResults of(DataFile file, EstimateSettings settings);
}
