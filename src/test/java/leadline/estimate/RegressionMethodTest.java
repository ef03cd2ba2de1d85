package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a regression prints, and what it refuses; its figures are those of the reference cases. */
class RegressionMethodTest {

  private static final String LIFE = "lower,upper,entry,weight";
  private static final String THREE_MAKERS =
      LIFE
          + ",group,x_load,note;"
          + "400,400,,1,b,1,;600,600,,1,b,2,;900,,,1,b,3,;"
          + "300,300,,1,a,1,;500,500,,1,a,3,;800,,,1,a,2,;"
          + "0,400,,1,c,2,;400,900,,1,c,1,;900,,,1,c,2,";

  @TempDir private Path folder;

  /** Source: the definition: each word is compared with the first that appears. */
  @Test
  void wordsAreComparedWithTheFirst() throws IOException {
    JsonNode results =
        run(THREE_MAKERS.replace(",note", "").replace(",;", ";").replaceAll(",$", ""));
    assertEquals(
        "[\"group.a\",\"group.c\",\"x_load\"]", results.get("regression.covariates").toString());
    assertEquals("[\"group\",\"x_load\"]", results.get("regression.columns").toString());
  }

  @Test
  void theSettingNamesTheCovariates() throws IOException {
    EstimateSettings load =
        EstimateSettings.none().with(Setting.COVARIATES, List.of("x_load", "note"));
    JsonNode results = run(THREE_MAKERS.replace(",;", ",new;") + "old", load);
    assertEquals("[\"x_load\",\"note.old\"]", results.get("regression.covariates").toString());
    EstimateSettings other = EstimateSettings.none().with(Setting.COVARIATES, List.of("x_age"));
    assertThrows(UnusableData.class, () -> run(THREE_MAKERS, other));
  }

  @Test
  void aGroupThatNeverFailedHasALimit() throws IOException {
    JsonNode results = run(LIFE + ",group;4,4,,1,a;6,6,,1,a;9,,,2,a;5,,,3,b;8,,,3,b");
    assertEquals("no-finite-maximum", results.get("regression.status").textValue());
    assertEquals("separated-covariates", results.get("regression.reason").textValue());
    assertEquals("[\"group.b\"]", results.get("regression.separated").toString());
    assertEquals("[\"zero\"]", results.get("regression.separated_towards").toString());
    double limit = results.get("regression.group.b.hazard_ratio_upper95_one_sided").doubleValue();
    assertTrue(limit > 0 && limit < 2, () -> "limit " + limit);
    assertFalse(results.has("regression.hazard_ratio"));
  }

  @Test
  void covariatesThatSayTheSame() throws IOException {
    JsonNode results = run(LIFE + ",x_a,x_b;4,4,,1,1,2;6,6,,1,2,4;9,,,2,3,6");
    assertEquals("insufficient", results.get("regression.status").textValue());
    assertEquals("[\"x_a\",\"x_b\"]", results.get("regression.collinear").toString());
  }

  @Test
  void withoutAFailureALimitOfSurvivalRemains() throws IOException {
    JsonNode results = run(LIFE + ",group;400,,,5,a;900,,,5,b");
    assertEquals("no-failure", results.get("regression.reason").textValue());
    assertTrue(results.has("regression.age_and_survival_lower95_one_sided"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          lower,upper,entry,weight;4,4,,1                      | 2 | x_...   | no covariate
          lower,upper,entry,weight,load;4,4,,1,2               | 2 | x_...   | no covariate
          lower,upper,entry,weight,load,x_a;4,4,,1,2,3         | 1 | load    | no such column
          lower,upper,entry,weight,x_a;4,4,,1,2;5,5,,1,        | 3 | x_a     | is missing
          lower,upper,entry,weight,x_a;4,4,,1,2;5,5,,1,new     | 3 | x_a     | no number
          lower,upper,entry,weight,x_a;0,0,,1,2                | 2 | upper   | an end at age 0
          """)
  void oneSentenceSaysFileLineColumnAndFault(String lines, int line, String column, String fault) {
    UnusableData unusable = assertThrows(UnusableData.class, () -> run(lines));
    String message = String.valueOf(unusable.getMessage());
    String place = folder.resolve("data.csv") + ", line " + line + ", column " + column + ": ";
    assertTrue(message.startsWith(place), message);
    assertTrue(message.contains(fault), message);
  }

  private JsonNode run(String lines) throws IOException {
    return run(lines, EstimateSettings.none());
  }

  private JsonNode run(String lines, EstimateSettings settings) throws IOException {
    Path file = Files.writeString(folder.resolve("data.csv"), lines.replace(';', '\n') + "\n");
    return new ObjectMapper()
        .readTree(Methods.run("regression", DataFile.read(file), settings).json());
  }
}
