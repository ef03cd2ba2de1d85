package leadline.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MethodsTest {

  private static final String LIFE = "lower,upper,entry,weight\n";

  @TempDir private Path folder;

  @Test
  void noTwoMethodsShareAWord() {
    assertEquals(Methods.words().size(), new HashSet<>(Methods.words()).size());
    assertEquals(Methods.words().size(), Methods.lines().size());
  }

  @Test
  void eachSetAndEachGroupHasResultsOfItsOwnInOrderOfFirstAppearance() throws IOException {
    JsonNode results =
        run("rate", "set,group,failures,exposure\nz,b,1,10\na,b,2,10\nz,a,3,10\nz,b,4,10\n");
    List<String> names = new ArrayList<>();
    results.fieldNames().forEachRemaining(name -> names.add(name));
    assertEquals(
        List.of("z.b.rate.mle", "z.a.rate.mle", "a.b.rate.mle"),
        names.stream().filter(name -> name.endsWith("rate.mle")).toList());
    assertEquals("[0.1,0.4]", results.get("z.b.rate.mle").toString());
  }

  /** Source: Kaplan and Meier 1958, two ends of four, worked by hand. */
  @Test
  void undefinedAndInfiniteNumbersAreStrings() throws IOException {
    JsonNode results = run("kaplan-meier", LIFE + "5,5,,1\n7,7,,1\n");
    assertEquals("[0.5,0.0]", results.get("km.surv").toString());
    assertEquals("NaN", results.get("km.se_greenwood").get(1).textValue());
    JsonNode none = run("kaplan-meier", LIFE + "5,,,3\n");
    assertEquals("Infinity", none.get("km.median_first").textValue());
    assertEquals("[]", none.get("km.surv").toString());
    JsonNode noFailure = run("rate", "failures,exposure\n0,10\n");
    assertEquals("Infinity", noFailure.get("mtbf.estimate").get(0).textValue());
    assertEquals("NaN", noFailure.get("mtbf.failure_upper").get(0).textValue());
  }

  /** Source: the definitions of weight and of delayed entry. */
  @Test
  void rowOrderSplitWeightsAndEntryAtZeroChangeNothing() throws IOException {
    JsonNode one = run("kaplan-meier", LIFE + "5,5,,3\n7,,,2\n9,9,2,1\n");
    JsonNode other = run("kaplan-meier", LIFE + "9,9,2,1\n5,5,0,2\n7,,0,2\n5,5,,1\n");
    assertEquals(one, other);
  }

  /** Source: the definition: what went before the age is not looked at. */
  @Test
  void survivalGivenAnAgeLooksAtLaterLivesOnly() throws IOException {
    EstimateSettings settings = EstimateSettings.none().with(Setting.CONDITIONAL_ON, List.of("4"));
    String lives = LIFE + "3,3,,1\n4,,,1\n5,5,,1\n6,6,5.5,1\n8,,,2\n";
    JsonNode given =
        new ObjectMapper().readTree(Methods.run("kaplan-meier", file(lives), settings).json());
    assertEquals(run("kaplan-meier", LIFE + "5,5,4,1\n6,6,5.5,1\n8,,4,2\n"), given);
  }

  /** Source: the usual 95 % is the narrower of two confidences; a row's own stands above both. */
  @Test
  void aRowsOwnConfidenceStandsAboveTheSetting() throws IOException {
    EstimateSettings settings = EstimateSettings.none().with(Setting.CONF, List.of("0.8"));
    String json =
        Methods.run("rate", file("failures,exposure,conf\n5,10,\n5,10,0.95\n"), settings).json();
    JsonNode upper = new ObjectMapper().readTree(json).get("rate.upper");
    JsonNode usual = run("rate", "failures,exposure\n5,10\n").get("rate.upper");
    assertTrue(upper.get(0).doubleValue() < upper.get(1).doubleValue());
    assertEquals(usual.get(0), upper.get(1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          rate         | failures,exposure,colour;1,10,red | 1 | colour   | knows no such column
          rate         | failures;1                        | 1 | exposure | the file has none
          rate         | failures,failures;1,2             | 1 | failures | this column twice
          rate         | failures,exposure;1,10;2          | 3 | exposure | the header has 2 columns
          rate         | failures,exposure;1.5,10          | 2 | failures | must be a whole number
          rate         | failures,exposure;-1,10           | 2 | failures | must be 0 or more
          rate         | failures,exposure;1,0             | 2 | exposure | must be more than 0
          rate         | failures,exposure;1,1e999         | 2 | exposure | no number
          rate         | failures,exposure;1,0x1p3         | 2 | exposure | no number
          rate         | failures,exposure;1,              | 2 | exposure | a number is missing
          rate         | failures,exposure,conf;1,10,1     | 2 | conf     | must lie between 0 and 1
          proportion   | x,n;1,2;3,2                       | 3 | x        | must not be more than n
          proportion   | x,n;0,0                           | 2 | n        | must be 1 or more
          kaplan-meier | lower,upper,entry,weight;5,4,,1   | 2 | upper    | less than lower
          kaplan-meier | lower,upper,entry,weight;5,6,,1   | 2 | upper    | exact and right-censored
          kaplan-meier | lower,upper,entry,weight;5,5,5,1  | 2 | entry    | not before the end
          kaplan-meier | lower,upper,entry,weight;5,,6,1   | 2 | entry    | not before the end
          kaplan-meier | lower,upper,entry,weight;5,,,0    | 2 | weight   | must be more than 0
          kaplan-meier | lower,upper,entry,weight;5,,,1.5  | 2 | weight   | must be a whole number
          rate-ratio   | x1,t1,x2,t2;2e9,1,2e9,1           | 2 | x1       | too many events
          failure-finding | shape,scale,interval,tested;1,1,1,2 | 2 | tested | at most 1
          spares-ageing | shape,scale,age,ahead,weight;1,1,0,1,0 | 2 | weight | there is no part
          adjust-p     | p;0.1;1.2                         | 3 | p        | must be at most 1
          """)
  void oneSentenceSaysFileLineColumnAndFault(
      String method, String lines, int line, String column, String fault) throws IOException {
    UnusableData unusable =
        assertThrows(UnusableData.class, () -> run(method, lines.replace(';', '\n') + "\n"));
    String message = String.valueOf(unusable.getMessage());
    String place = folder.resolve("data.csv") + ", line " + line + ", column " + column + ": ";
    assertTrue(message.startsWith(place), message);
    assertTrue(message.contains(fault), message);
    assertTrue(message.endsWith("."), message);
  }

  @Test
  void whatIsNoFileOfDataIsRefused() {
    assertThrows(UnusableData.class, () -> run("rate", ""));
    assertThrows(UnusableData.class, () -> run("rate", "failures,exposure\n"));
    assertThrows(UnusableData.class, () -> run("rates", "failures,exposure\n1,1\n"));
    assertThrows(UnusableData.class, () -> DataFile.read(folder.resolve("none.csv")));
    assertThrows(UnusableData.class, () -> DataFile.read(folder));
  }

  private JsonNode run(String method, String text) throws IOException {
    return new ObjectMapper()
        .readTree(Methods.run(method, file(text), EstimateSettings.none()).json());
  }

  private DataFile file(String text) throws IOException {
    return DataFile.read(Files.writeString(folder.resolve("data.csv"), text));
  }
}
