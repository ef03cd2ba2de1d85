package leadline.estimate;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A column that may bear on how soon lives end: one of numbers is a covariate; one of words becomes
 * a covariate for each word but the first, 1 where the row has that word, else 0.
 *
 * @param words in order of first appearance; empty for numbers
 */
record CovariateColumn(String name, List<String> words) {

  /** Columns so named are covariates where the setting names none. */
  private static final String PREFIX = "x_";

  static List<CovariateColumn> of(DataFile file, EstimateSettings settings) {
    Optional<List<String>> chosen = settings.words(Setting.COVARIATES);
    List<String> names = chosen.orElse(named(file)).stream().distinct().toList();
    if (names.isEmpty()) {
      throw file.infeasible(
          PREFIX + "...", "no covariate: neither this, nor group, nor the setting covariates");
    }
    for (String name : names) {
      if (!file.header().has(name)) {
        throw settings.unusable(Setting.COVARIATES, "the file has no column " + name);
      }
    }
    return names.stream().map(name -> of(file, name)).toList();
  }

  /** The file's group, if it has groups, and those whose name begins as covariates' do. */
  static List<String> named(DataFile file) {
    return file.header().columns().stream()
        .filter(column -> column.equals(DataFile.GROUP) || column.startsWith(PREFIX))
        .toList();
  }

  /** The first row tells whether these are numbers; the names of groups are words. */
  private static CovariateColumn of(DataFile file, String name) {
    for (DataRow row : file.rows()) {
      if (!row.states(name)) {
        throw row.impossible(name, "a number or word is missing");
      }
    }
    boolean areNumbers = !name.equals(DataFile.GROUP) && file.rows().get(0).isNumber(name);
    return new CovariateColumn(
        name,
        areNumbers
            ? List.of()
            : file.rows().stream().map(row -> row.word(name)).distinct().toList());
  }

  /** Names of its covariates. */
  List<String> covariates() {
    return words.isEmpty()
        ? List.of(name)
        : othersThanTheFirst().map(word -> name + "." + word).toList();
  }

  List<Double> values(DataRow row) {
    return words.isEmpty()
        ? List.of(row.number(name))
        : othersThanTheFirst().map(word -> row.word(name).equals(word) ? 1.0 : 0.0).toList();
  }

  private Stream<String> othersThanTheFirst() {
    return words.stream().skip(1);
  }
}
